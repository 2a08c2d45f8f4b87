"""The four aircraft of the story and their engines, as they stand when the record begins."""

from chance import Chance
from craft import Battery, Craft
from engine import TP_9, TS_40, TS_62, Engine


class Fleet:
    def __init__(self):
        self.low, self.fen, self.two, self.tur = _low(), _fen(), _two(), _tur()
        self.loaner = Engine(TS_40, "E-3077", 24.0, Chance(3077))
        self.loaner.idle_margin = 25.0
        self.batteries = {craft.name: Battery(Chance(50 + number))
                          for number, craft in enumerate(self.all())}

    def all(self):
        return (self.low, self.fen, self.two, self.tur)


def _low():
    """The losing engine: 4 C per 100 h, all of it wear."""
    craft = Craft("ZZ-LOW", 28412, "collective", 44103)
    engine = Engine(TS_40, "E-3001", 38.0, Chance(3001))
    engine.wear = 4.0
    engine.idle_margin = 34.0
    craft.engines = {"engine 1": engine}
    craft.chance = Chance(1)
    craft.lengths = (3, 4, 5, 6, 7, 8, 9, 10, 12, 14)
    craft.counts = [(0.12, 6, "lift"), (0.01, 1, "torque event")]
    craft.pilots = ("A. Fenwick", "A. Fenwick", "J. Marrable")
    craft.has_start_readings = True
    return craft


def _fen():
    """The washed engine, with a disc inside that runs out before its module."""
    craft = Craft("ZZ-FEN", 19906, "collective", 19906)
    engine = Engine(TS_40, "E-3002", 27.0, Chance(3002))
    engine.wear, engine.fouling = 0.5, 1.5
    craft.engines = {"engine 1": engine}
    craft.chance = Chance(2)
    craft.lengths = (3, 4, 5, 5, 6, 7, 8, 9, 11, 13)
    craft.counts = [(0.03, 2, "run-on landing"), (0.02, 4, '"bucket drops"')]
    craft.pilots = ("J. Marrable", "A. Fenwick")
    craft.has_start_readings = True
    return craft


def _two():
    """A twin whose second engine has a worn power turbine."""
    craft = Craft("ZZ-TWO", 41275, '"flight"', 4122)
    one = Engine(TS_62, "E-4001", 31.0, Chance(4001))
    two = Engine(TS_62, "E-4002", 33.0, Chance(4002))
    one.idle_margin, two.idle_margin = 30.0, 29.0
    two.power_turbine = 0.8
    craft.engines = {"engine 1": one, "engine 2": two}
    craft.chance = Chance(3)
    craft.lengths = (4, 5, 6, 7, 8, 9, 10, 12, 13, 16)
    craft.torques = (56, 74)
    craft.counts = [(0.10, 4, "transition"), (0.08, 5, "hoist lift")]
    craft.pilots = ("R. Ossory", "J. Marrable")
    craft.has_times = True
    return craft


def _tur():
    """A turboprop whose torque gauge reads low for a while."""
    craft = Craft("ZZ-TUR", 60330, '"flight"', 60330)
    engine = Engine(TP_9, "E-5001", 32.0, Chance(5001))
    engine.wear = 0.2
    craft.engines = {"engine 1": engine}
    craft.chance = Chance(4)
    craft.lengths = (5, 6, 7, 8, 9, 10, 11, 12, 14, 16)
    craft.altitudes = (8000, 9000, 10000, 11000, 12000)
    craft.torques = (70, 86)
    craft.counts = [(1.0, 1, "full cycle"), (0.15, 3, "abbreviated cycle")]
    craft.pilots = ("R. Ossory", "D. Larch")
    return craft

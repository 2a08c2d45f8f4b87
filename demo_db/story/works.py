"""What happened once to ZZ-LOW and ZZ-FEN, each on its day, before that day's flights."""

import datetime

from paper import tenths
from upkeep import MECHANIC


def on(year, month, day):
    return datetime.date(year, month, day)


# When the engine of ZZ-LOW was away, and a loaner flew in its place.
AWAY = (on(2023, 11, 13), on(2024, 3, 18))
# ZZ-FEN: the battery goes, a hot start, a new battery; and the wash.
BATTERY_FROM = on(2024, 11, 4)
WEAK_STARTS = 25
WASH = on(2024, 9, 9)
METER_CHANGE = on(2025, 4, 8)
BLADE = on(2024, 7, 1)
LAST_HOT_START = on(2026, 2, 25)


class Mornings:
    """Events that each have their day; a subclass fills `mornings`."""

    def __init__(self, paper, fleet):
        self.paper = paper
        self.fleet = fleet
        self.mornings = {}

    def say(self, words):
        return self.paper.say(words)

    def note(self, words):
        self.paper.note(words)

    def morning(self, day):
        event = self.mornings.get(day)
        if event:
            event(day)


class Works(Mornings):
    """The single events. Each method is called on the morning of its day."""

    def __init__(self, paper, fleet):
        super().__init__(paper, fleet)
        self.own_engine = None
        self.mornings = {
            AWAY[0]: self.engine_goes, AWAY[1]: self.engine_returns,
            on(2024, 10, 2): self.low_plan, on(2025, 2, 18): self.low_missing,
            on(2025, 8, 12): self.low_limit_lowered, on(2025, 10, 6): self.low_exceeded,
            BLADE: self.blade, WASH: self.wash, METER_CHANGE: self.meter,
            on(2023, 6, 14): self.directive_first, on(2024, 8, 27): self.directive_again,
            on(2025, 9, 30): self.directive_last,
        }

    def engine_goes(self, day):
        low = self.fleet.low
        self.own_engine = low.engines["engine 1"]
        self.note("The engine of ZZ-LOW goes away for its gearbox; a loaner flies in its place.")
        self.say(f"{day} {self.own_engine.name()} removed from {low.subject()} engine 1, "
                 f'{low.airframe()}, because "metal in the gearbox oil"')
        loaner = self.fleet.loaner
        self.say(f"{day} {loaner.name()} is made 2015-05-07")
        self.say(f"{day} {loaner.name()} brings forward 905.0 h, 1004 starts, "
                 '1004 gas-generator cycles, 905.0 h since overhaul, basis "loan agreement"')
        self.say(f"{day} directive D-23-07 done on {loaner.name()}, {MECHANIC}, "
                 'paper "loan agreement"')
        self.say(f"{day} {loaner.name()} fitted to {low.subject()} engine 1, {low.airframe()}")
        low.engines["engine 1"] = loaner

    def engine_returns(self, day):
        low = self.fleet.low
        self.note("The own engine comes back as it went: nothing was done that moves its margin.")
        self.say(f"{day} {self.fleet.loaner.name()} removed from {low.subject()} engine 1, "
                 f'{low.airframe()}, because "returned to its owner"')
        self.say(f"{day} {self.own_engine.name()} fitted to {low.subject()} engine 1, "
                 f'{low.airframe()}, paper "release 77-24"')
        low.engines["engine 1"] = self.own_engine

    def directive_first(self, day):
        for craft in (self.fleet.low, self.fleet.fen):
            self.directive(day, craft)

    directive_again = directive_last = directive_first

    def directive(self, day, craft):
        engine = craft.engines["engine 1"]
        self.say(f"{day} directive D-23-07 done on {engine.name()}, {craft.airframe()}, "
                 f"{MECHANIC}, before the first flight")

    def low_plan(self, day):
        self.say(f"{day} aircraft ZZ-LOW plans 15.0 h a month, from {day}, to 2026-12-31")

    def low_missing(self, day):
        low = self.fleet.low
        self.note("0.6 h stand on the meter, and nobody knows of a flight.")
        self.say(f"{day} aircraft ZZ-LOW unaccounted 0.6 h, {low.run(6)}")

    def low_limit_lowered(self, day):
        self.note("The life of the blades is lowered.")
        self.say(f"{day} part number PN-4411 retires at 2250.0 h since new, "
                 'on model "Larkwing 5", class airworthiness limitation, '
                 'source "Larkwing 5 limitations", revision "5", '
                 f"instead of entry {self.fleet.blade_limit}")

    def low_exceeded(self, day):
        self.note("Too much torque for some seconds, looked into two days later.")
        engine = self.fleet.low.engines["engine 1"]
        name = self.say(f"{day} aircraft ZZ-LOW engine 1 {engine.serial} exceeded torque 106 % "
                        "for 7 s")
        self.say(f"{day + datetime.timedelta(days=2)} entry {name} looked into, "
                 f'"gearbox and mast inspected, nothing found", {MECHANIC}')

    def blade(self, day):
        fen = self.fleet.fen
        self.note("A blade of ZZ-FEN leaves before its life ends.")
        self.say(f'{day} part PN-4411 B-22 removed from {fen.subject()} "main rotor blade 2", '
                 f'{fen.airframe()}, with {tenths(fen.hours)} h since new, '
                 'because "life nearly used"')
        self.say(f'{day} part PN-4411 B-31 is "main rotor blade", made 2019-02-01')
        self.say(f'{day} part PN-4411 B-31 fitted to {fen.subject()} "main rotor blade 2", '
                 f'{fen.airframe()}, with 150.0 h since new, paper "form 31"')

    def wash(self, day):
        fen = self.fleet.fen
        engine = fen.engines["engine 1"]
        self.note("The wash, a new filter, and a ground run after it.")
        self.say(f'{day} part FL-9 F-1 removed from {fen.subject()} "inlet filter", '
                 f'{fen.airframe()}, because "used up"')
        self.say(f'{day} part FL-9 F-2 is "inlet filter"')
        self.say(f'{day} part FL-9 F-2 fitted to {fen.subject()} "inlet filter", '
                 f"{fen.airframe()}")
        self.say(f"{day} {engine.name()} washed")
        self.say(f"{day} aircraft ZZ-FEN engine 1 {engine.serial} ran 0.3 h, 1 start")
        engine.wash()

    def meter(self, day):
        fen = self.fleet.fen
        self.note("A new collective meter; the total does not jump.")
        self.say(f"{day} aircraft ZZ-FEN changed collective meter, out {tenths(fen.reading)}, "
                 f"in 0.2, {fen.airframe()}")
        fen.reading = 2

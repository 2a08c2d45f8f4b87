"""The engine model from which all readings of the story come. Everything in it is invented.

A new engine at shaft power as TRUE torque t (%), pressure altitude p (ft), outside air o (C):

    temperature  allowed(t, p, o) - margin,  allowed = base + 2.7 t + 0.004 p + 1.6 o
                                                       + 0.00002 p t + 0.002 t o       [C]
    gas generator  (79.2 + 0.19 tc) theta^0.5                                           [%]
    fuel           (65 + 1.86 tc) size delta theta^0.65                                 [lb/h]

with tc = t / (delta theta^0.5). `allowed` has no square in it, so the chart that is typed in from
it gives it back exactly between its lines.

What moves the readings, by engine hours h since the record begins, sizes in C of temperature; how
gas generator and fuel go with it is the usual pattern of each cause:

    wear of the hot section   `wear` C per 100 h           Ng -0.034 %,  fuel +0.074 % a C
    fouled compressor         `fouling` C per 100 h        Ng +0.063 %,  fuel +0.077 % a C
    a wash                    takes `WASH_GAIN` C of fouling back
    worn power turbine        `power_turbine` % per 100 h  +2.2 C, Ng +0.15 %, fuel +0.70 % each %
    torque gauge low          shows 0.95 of the true torque, so the pilot sets more power
    bleed heat on             +8 C

The temperature's error has a deviation of 2.5 C and a lag-1 coefficient of 0.2; Ng 0.15 %, fuel
0.6 %. The idle temperature stands `idle_margin` below its limit, moves by 0.4 of what the cruise
temperature is moved by, does not follow the air, and has an error of 2.5 C.
"""

from dataclasses import dataclass

from air import delta, theta
from chance import Lagged

WASH_GAIN = 9.0  # C
BLEED_HEAT = 8.0  # C
DEVIATION = 2.5  # C
FOLLOWS = 0.2  # lag-1 coefficient
IDLE_LIMIT = 560  # C


@dataclass(frozen=True)
class Model:
    name: str
    base: float  # C, of the chart
    size: float  # of the fuel flow
    torques: tuple  # %, of the chart's lines
    altitudes: tuple  # ft
    airs: tuple  # C

    def allowed(self, torque, altitude, air):
        return (self.base + 2.7 * torque + 0.004 * altitude + 1.6 * air
                + 0.00002 * altitude * torque + 0.002 * torque * air)


TS_40 = Model("TS-40", 445.0, 1.0, (60, 70, 80, 90), (0, 4000, 8000), (-30, -10, 10, 30, 40))
TS_62 = Model("TS-62", 470.0, 1.3, (50, 60, 70, 80), (0, 4000, 8000), (-30, -10, 10, 30, 40))
TP_9 = Model("TP-9", 480.0, 1.9, (60, 70, 80, 90), (6000, 10000, 14000), (-50, -30, -10, 10, 20))


@dataclass
class Setting:
    """What the pilot sets and writes down."""

    torque: float  # % shown
    altitude: int
    air: int
    is_bleed_on: bool = False
    minutes: int = 5  # steady


class Engine:
    """An engine with its truth: what it loses, and how it reads."""

    def __init__(self, model, serial, margin, chance):
        self.model = model
        self.serial = serial
        self.margin = margin  # C at the beginning, in cruise
        self.idle_margin = 27.0
        self.wear = 0.3  # C per 100 h
        self.fouling = 0.0  # C per 100 h
        self.power_turbine = 0.0  # % per 100 h
        self.washed = 0.0  # C taken back
        self.gauge_shows = 1.0  # of the true torque
        self.hours = 0.0  # since the record begins
        self.chance = chance
        self.error = Lagged(chance, DEVIATION, FOLLOWS)

    def name(self):
        return f"engine {self.model.name} {self.serial}"

    def wash(self):
        self.washed += WASH_GAIN

    def _lost(self):
        """C lost to wear, to fouling, and % lost in the power turbine."""
        hundreds = self.hours / 100.0
        return (self.wear * hundreds, self.fouling * hundreds - self.washed,
                self.power_turbine * hundreds)

    def cruise(self, setting):
        """Temperature, gas generator and fuel as the gauges show them."""
        worn, fouled, turbine = self._lost()
        true_torque = setting.torque / self.gauge_shows
        heat = BLEED_HEAT if setting.is_bleed_on else 0.0
        unsteady = -4.0 if setting.minutes < 3 else 0.0
        temperature = (self.model.allowed(true_torque, setting.altitude, setting.air)
                       - self.margin + worn + fouled + 2.2 * turbine + heat + unsteady
                       + self.error.next())
        warm, thin = theta(setting.air), delta(setting.altitude)
        power = true_torque / (thin * warm ** 0.5)
        speed = ((79.2 + 0.19 * power) * warm ** 0.5 - 0.034 * worn + 0.063 * fouled
                 + 0.15 * turbine + self.chance.normal(0.15))
        share = 1.0 + (0.074 * worn + 0.077 * fouled + 0.70 * turbine) / 100.0
        fuel = ((65.0 + 1.86 * power) * self.model.size * thin * warm ** 0.65 * share
                * (1.0 + self.chance.normal(0.006)))
        return round(temperature), round(10 * speed), round(fuel)

    def idle(self):
        worn, fouled, turbine = self._lost()
        return round(IDLE_LIMIT - self.idle_margin + 0.4 * (worn + fouled + 2.2 * turbine)
                     + self.chance.normal(2.5))

"""An aircraft of the story: where it stands, what it flies, and the readings taken in it."""

from air import outside_air
from engine import Setting
from paper import counted, tenths


class Craft:
    """Hours and meter in tenths of an hour."""

    def __init__(self, name, hours, meter, reading):
        self.name = name
        self.hours = hours
        self.meter = meter  # its name; empty: the clock counts
        self.reading = reading
        self.landings = 0  # since the record begins
        self.starts = 0
        self.flights = 0
        self.engines = {}  # place to engine
        self.chance = None
        self.lengths = ()  # of flights, in tenths
        self.altitudes = (2000, 3000, 4000, 5000)
        self.torques = (70, 84)
        self.pilots = ("A. Fenwick",)
        self.share_of_days = 0.35
        self.counts = []  # (share of flights, most, noun)
        self.has_start_readings = False
        self.has_times = False

    def subject(self):
        return f"aircraft {self.name}"

    def airframe(self):
        return f"airframe {tenths(self.hours)} h"

    def run(self, length, missing=0):
        """Counts hours, the engines' too; gives the words of the meter."""
        start = self.reading + missing
        self.hours += length
        for engine in self.engines.values():
            engine.hours += length / 10.0
        if not self.meter:
            return ""
        self.reading = start + length
        return f"{self.meter} meter {tenths(start)} to {tenths(self.reading)}"

    def flight(self, day, length=None, words=None, missing=0):
        """The sentence of one flight, without its point."""
        length = length or self.chance.pick(self.lengths)
        words = words or self.count_words()
        run = self.run(length, missing)
        self.flights += 1
        parts = [f"{day} {self.subject()} flew {tenths(length)} h", words, run]
        if self.has_times and not self.meter:
            parts.append(self.times(length))
        parts.append(f'pilot "{self.chance.pick(self.pilots)}"')
        return ", ".join(part for part in parts if part)

    def count_words(self):
        landings = self.chance.pick((1, 1, 1, 2, 2, 3))
        self.starts += 1
        self.landings += landings
        words = ["1 start", counted(landings, "landing")]
        for share, most, noun in self.counts:
            if self.chance.happens(share):
                words.append(counted(self.chance.whole(1, most), noun))
        return ", ".join(words)

    def times(self, length):
        """Take-off and landing in UTC; the flights of a day follow each other."""
        off = self.clock + self.chance.whole(20, 50)
        self.clock = off + 6 * length
        return f"took off {clock(off)}, landed {clock(self.clock)}"

    def begin_day(self):
        self.clock = 15 * 60

    def start_reading(self, day, air, battery):
        """What the gauges showed at the first start of a day."""
        engine = self.engines["engine 1"]
        on_ground_power = air <= -9
        volts = 28.0 + self.chance.normal(0.1) if on_ground_power else battery.volts(air)
        lowest = volts - (5.2 if on_ground_power else battery.drop()) + self.chance.normal(0.3)
        weak = max(0.0, 20.0 - lowest)
        peak = round(731 + 9.0 * weak + 0.5 * (air - 9) + self.chance.normal(6.0))
        words = [f"battery {volts:.1f} V", f"lowest {lowest:.1f} V", f"outside air {air} C",
                 f"residual {self.chance.whole(0, 4) * 10 + max(air, 0)} C",
                 f"light-off in {round(4 + 0.3 * weak + self.chance.share())} s",
                 f"peak {peak} C",
                 f"idle in {round(23 + 1.2 * weak + self.chance.normal(1.0))} s",
                 f"generator {28.1 + self.chance.normal(0.1):.1f} V",
                 "power from ground power" if on_ground_power else "power from battery"]
        return self.reading_head(day, "engine 1", engine) + " started, " + ", ".join(words)

    def reading_head(self, day, place, engine):
        return f"{day} {self.subject()} {place} {engine.serial}"

    def cruise_readings(self, day):
        """One set of readings: the same minute for all engines."""
        altitude = self.chance.pick(self.altitudes) + 100 * self.chance.whole(-4, 4)
        torque = self.chance.whole(*self.torques)
        if self.chance.happens(0.02):
            torque = max(self.engines["engine 1"].model.torques) + self.chance.whole(1, 4)
        setting = Setting(torque, altitude, outside_air(day, altitude, self.chance))
        setting.is_bleed_on = self.chance.happens(0.02)
        if self.chance.happens(0.02):
            setting.minutes = self.chance.whole(1, 2)
        return [self.cruise_reading(day, place, setting) for place in sorted(self.engines)]

    def cruise_reading(self, day, place, setting):
        engine = self.engines[place]
        temperature, speed, fuel = engine.cruise(setting)
        bleed = "on" if setting.is_bleed_on else "off"
        return (f"{self.reading_head(day, place, engine)} cruise {setting.altitude} ft, "
                f"outside air {setting.air} C, torque {setting.torque} %, "
                f"gas generator {tenths(speed)} %, temperature {temperature} C, "
                f"fuel {fuel} lb/h, bleed {bleed}, steady {setting.minutes} min")

    def idle_readings(self, day):
        air = outside_air(day, 3000, self.chance)
        return [f"{self.reading_head(day, place, engine)} idle outside air {air} C, "
                f"temperature {engine.idle()} C, bleed off, steady 3 min"
                for place, engine in sorted(self.engines.items())]


class Battery:
    """A starter battery: 25.6 V and a drop of 5.4 V when well; each weak start takes its share."""

    def __init__(self, chance):
        self._chance = chance
        self.weak_starts = 0

    def volts(self, air):
        return (25.6 - 0.06 * max(0, self.weak_starts) + 0.01 * (air - 9)
                + self._chance.normal(0.12))

    def drop(self):
        return 5.4 + 0.10 * max(0, self.weak_starts)

    def renew(self):
        """A new battery; it does not go weak again in this story."""
        self.weak_starts = -1


def clock(minutes):
    return f"{minutes // 60:02d}:{minutes % 60:02d}Z"

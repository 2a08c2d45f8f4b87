"""The days, one after another: work in the morning, flights, and the readings taken in them."""

import datetime

from air import outside_air
from things import BEGIN
from upkeep import MECHANIC, annual_morning, review_morning
from works import BATTERY_FROM, LAST_HOT_START, WEAK_STARTS
from works_two import AWAY_DAYS, GAUGE_FLIGHTS, GAUGE_FROM

LAST = datetime.date(2026, 3, 4)


class Life:
    def __init__(self, paper, fleet, upkeep, works):
        self.paper = paper
        self.fleet = fleet
        self.upkeep = upkeep
        self.works = works
        self.gauge_flights = 0

    def live(self):
        day = datetime.date.fromisoformat(BEGIN) + datetime.timedelta(days=1)
        month = 0
        while day <= LAST:
            if day.month != month:
                month = day.month
                self.paper.note()
                self.paper.note(f"{day:%B %Y}")
            self.morning(day)
            for craft in self.fleet.all():
                craft.begin_day()
                self.fly(craft, day)
            day += datetime.timedelta(days=1)

    def morning(self, day):
        annual_morning(self.paper, self.fleet, day)
        review_morning(self.paper, self.fleet, day)
        for works in self.works:
            works.morning(day)
        if day.weekday() < 5:
            for each in self.upkeep:
                each.morning(self.paper, day)

    def fly(self, craft, day):
        is_flown = craft.chance.happens(0.45 if day.weekday() < 5 else 0.15)
        if day == LAST_HOT_START and craft is self.fleet.low:
            self.last_hot_start(craft, day)
        elif craft is self.fleet.tur and AWAY_DAYS[0] <= day <= AWAY_DAYS[1]:
            return
        elif is_flown:
            self.first_start(craft, day)
        else:
            return
        for _ in range(craft.chance.pick((1, 2, 2, 2, 3))):
            self.one_flight(craft, day)

    def one_flight(self, craft, day):
        self.gauge(craft, day)
        if craft is self.fleet.two and craft.flights % 97 == 96:
            words = "1 start on engine 1, 2 starts on engine 2, 1 landing"
            self.paper.say(craft.flight(day, None, words) + ', remark "engine 2 took two starts"')
        else:
            self.paper.say(craft.flight(day))
        readings = []
        if craft.flights % 3 == 0:
            readings = craft.cruise_readings(day)
        if craft.flights % 5 == 0:
            readings += craft.idle_readings(day)
        for reading in readings:
            self.paper.say(reading)

    def gauge(self, craft, day):
        """The torque gauge of ZZ-TUR reads 5 % low for 25 flights; then it is changed."""
        if craft is not self.fleet.tur or day < GAUGE_FROM:
            return
        engine = craft.engines["engine 1"]
        if self.gauge_flights < GAUGE_FLIGHTS:
            self.gauge_flights += 1
            engine.gauge_shows = 0.95
        elif engine.gauge_shows < 1.0:
            engine.gauge_shows = 1.0
            self.paper.note("The torque gauge was found 5 % low and changed.")
            self.paper.say(f"{day} {engine.name()} torque gauge changed")

    def first_start(self, craft, day):
        if not craft.has_start_readings:
            return
        air = outside_air(day, 3000, craft.chance)
        battery = self.fleet.batteries[craft.name]
        is_weak = craft is self.fleet.fen and day >= BATTERY_FROM and battery.weak_starts >= 0
        if is_weak:
            battery.weak_starts += 1
        if is_weak and battery.weak_starts == WEAK_STARTS:
            self.hot_start(craft, day, battery)
            return
        self.paper.say(craft.start_reading(day, air, battery))

    def hot_start(self, craft, day, battery):
        """The last of the weak starts: too hot for too long, looked into, a new battery."""
        self.paper.note("The weak battery ends in a hot start, which was looked into.")
        head = craft.reading_head(day, "engine 1", craft.engines["engine 1"])
        name = self.paper.say(
            f"{head} started, battery 23.6 V, lowest 15.4 V, outside air -4 C, residual 30 C, "
            "light-off in 7 s, peak 842 C, above 810 C for 12 s, idle in 33 s, generator 28.1 V, "
            "power from battery")
        self.paper.say(f'{day} entry {name} looked into, "turbine inspected, battery changed", '
                       f"{MECHANIC}")
        self.paper.say(f'{day} part SB-2 A-5 removed from aircraft ZZ-FEN "starter battery", '
                       f'{craft.airframe()}, because "weak"')
        self.paper.say(f'{day} part SB-2 A-6 is "starter battery", made 2024-09-01')
        self.paper.say(f'{day} part SB-2 A-6 fitted to aircraft ZZ-FEN "starter battery", '
                       f"{craft.airframe()}")
        battery.renew()

    def last_hot_start(self, craft, day):
        self.paper.note("A hot start that nobody has looked into.")
        head = craft.reading_head(day, "engine 1", craft.engines["engine 1"])
        self.paper.say(
            f"{head} started, battery 25.1 V, lowest 19.6 V, outside air -6 C, residual 40 C, "
            "light-off in 5 s, peak 836 C, above 810 C for 14 s, idle in 27 s, generator 28.0 V, "
            "power from battery")

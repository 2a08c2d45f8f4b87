"""What happened once to the twin and to the turboprop, and how mistakes were put right."""

import datetime

from paper import tenths
from upkeep import MECHANIC, ROTORS
from works import Mornings, on

DEAD_METER = on(2024, 8, 19)
LATE_FLIGHT = on(2025, 6, 10)
LATE_WORK = on(2025, 6, 18)
LATE_ENTRY = on(2025, 7, 2)
AWAY_DAYS = (on(2023, 7, 7), on(2023, 7, 9))
GAUGE_FROM = on(2025, 5, 12)
GAUGE_FLIGHTS = 25


class WorksOfTwins(Mornings):
    """The single events of ZZ-TWO and ZZ-TUR, and the corrections."""

    def __init__(self, paper, fleet):
        super().__init__(paper, fleet)
        self.late = 7  # tenths flown on the late sheet
        self.mornings = {
            DEAD_METER: self.meter_dies, LATE_WORK: self.late_work, LATE_ENTRY: self.late_entry,
            on(2025, 12, 9): self.storage_begins, on(2023, 9, 12): self.corrected_twice,
            on(2024, 4, 22): self.struck, on(2024, 2, 6): self.two_exceeded,
            on(2023, 5, 2): self.programme_ends, on(2024, 5, 6): self.hoist_cable,
            on(2025, 12, 3): self.tried, on(2025, 1, 31): self.person_leaves,
            on(2026, 2, 2): self.storage_again, AWAY_DAYS[1]: self.days_away,
        }

    def meter_dies(self, day):
        two = self.fleet.two
        self.note("The meter of ZZ-TWO stands still; from here the clock counts.")
        self.say(f'{day} aircraft ZZ-TWO lost "flight" meter at {tenths(two.reading)}')
        self.say(f"{day} aircraft ZZ-TWO counts airframe hours from clock")
        two.meter = ""

    def late_work(self, day):
        two = self.fleet.two
        self.note("The shop's total holds a flight whose sheet has not come yet.")
        stated = two.hours + self.late
        self.say(f"{day} part DM-8 D-3 removed from {two.subject()} \"pylon damper\", "
                 f"airframe {tenths(stated)} h, because \"leaks\", "
                 f'although "{tenths(stated)} h were stated and the flights sum to '
                 f'{tenths(two.hours)} h" because "a sheet of last week has not come yet"')
        self.say(f'{day} part DM-8 D-4 is "pylon damper"')
        self.say(f"{day} part DM-8 D-4 fitted to {two.subject()} \"pylon damper\", "
                 "with 0 transitions since new, before the first flight")

    def late_entry(self, day):
        two = self.fleet.two
        self.note("The late sheet: a flight of three weeks ago, before the work of 18 June.")
        self.say(f"{LATE_FLIGHT} aircraft ZZ-TWO flew {tenths(self.late)} h, 1 start, 1 landing, "
                 f'2 transitions, pilot "R. Ossory", paper "sheet 211", '
                 f'remark "came with the mail of {day}"')
        two.run(self.late)

    def storage_begins(self, day):
        self.say(f'{day} {ROTORS} done on aircraft ZZ-TWO, {MECHANIC}, before the first flight')

    storage_again = storage_begins

    def corrected_twice(self, day):
        low = self.fleet.low
        self.note("A flight typed with one landing, corrected to three, and then to four.")
        flight = low.flight(day, 9, "1 start, 1 landing")
        name = self.say(flight)
        three = flight.replace("1 landing", "3 landings")
        second = self.say(f"{day + datetime.timedelta(days=1)} entry {name} corrected because "
                          f'"two landings were left out": {three}')
        four = flight.replace("1 landing", "4 landings")
        self.say(f"{day + datetime.timedelta(days=3)} entry {second} corrected because "
                 f'"the pilot counted again": {four}')

    def struck(self, day):
        one, two = self.fleet.two.engines["engine 1"], self.fleet.two.engines["engine 2"]
        self.note("A ground run entered for the wrong engine, struck, and said again.")
        name = self.say(f"{day} aircraft ZZ-TWO engine 1 {one.serial} ran 0.2 h, 1 start")
        self.say(f'{day} entry {name} struck because "it was engine 2"')
        self.say(f"{day} aircraft ZZ-TWO engine 2 {two.serial} ran 0.2 h, 1 start")

    def two_exceeded(self, day):
        name = self.say(f"{day} aircraft ZZ-TWO engine 1 E-4001 exceeded gas generator 105 % "
                        "for 12 s")
        self.say(f"{day} entry {name} looked into, "
                 f'"engine inspected after overspeed, nothing found", {MECHANIC}')

    def programme_ends(self, day):
        self.say(f'{day} task "progressive inspection" on aircraft ZZ-TUR ends, '
                 'because "annual and 300-hour service instead"')

    def hoist_cable(self, day):
        self.say(f'{day} task "hoist cable" done on aircraft ZZ-TWO, {MECHANIC}, '
                 "before the first flight")

    def tried(self, day):
        self.say(f'{day} aircraft ZZ-TUR engine 1 E-5001 tried 2 starts, remark "no light-off"')

    def person_leaves(self, day):
        self.say(f'{day} person "D. Larch" ends, because "moved away"')
        self.fleet.tur.pilots = ("R. Ossory",)

    def days_away(self, day):
        tur = self.fleet.tur
        self.note("Three days away, written down as one.")
        words = "6 starts, 6 flights, 6 landings, 6 full cycles"
        self.say(f"{tur.flight(day, 71, words)}, since {AWAY_DAYS[0]}")

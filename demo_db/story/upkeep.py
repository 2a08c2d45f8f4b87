"""Work that comes round: inspections by hours and by the calendar, directives, reviews."""

import datetime

from paper import tenths

MECHANIC = 'by "B. Quill"'


class ByHours:
    """A task done in the morning after so many hours, now and then a little late."""

    def __init__(self, craft, task, every, extra=""):
        self.craft = craft
        self.task = task
        self.every = every  # tenths of an hour
        self.extra = extra
        self.done_at = None
        self.turn = 0

    def do(self, paper, day, at=None):
        at = self.craft.hours if at is None else at
        paper.say(f"{day} {self.task} done on {self.craft.subject()}, airframe {tenths(at)} h, "
                  f"{MECHANIC}{self.extra}")
        self.done_at = at

    def morning(self, paper, day):
        late = (-12, 8, -25, 31)[self.turn % 4]  # tenths
        if self.craft.hours - self.done_at < self.every + late:
            return
        self.turn += 1
        self.do(paper, day)


class ByDays:
    """A task done every so many days; it stops at a day, for one that is overdue at the end."""

    def __init__(self, craft, task, days, until=None):
        self.craft = craft
        self.task = task
        self.days = days
        self.until = until
        self.done_on = None

    def do(self, paper, day):
        paper.say(f"{day} {self.task} done on {self.craft.subject()}, {MECHANIC}, "
                  "before the first flight")
        self.done_on = day

    def morning(self, paper, day):
        if self.until and day > self.until:
            return
        if (day - self.done_on).days >= self.days:
            self.do(paper, day)


ANNUAL = 'inspection "annual inspection"'
HUNDRED = 'inspection "100-hour inspection"'
PHASE = 'inspection "phase inspection"'
SERVICE = 'service "300-hour service"'
ROTORS = 'storage step "turn the rotors"'


def upkeep_of(fleet):
    """What comes round, with what was done before the record begins."""
    return [ByHours(fleet.low, HUNDRED, 1000, ", returned to service"),
            ByHours(fleet.fen, HUNDRED, 1000, ', method "part 43 appendix D"'),
            ByHours(fleet.two, PHASE, 1500, ', second inspection by "M. Tansley"'),
            ByHours(fleet.tur, SERVICE, 2900)]


def annuals_of(fleet):
    """Done each year; of ZZ-TUR the one of February 2026 is missing."""
    return {fleet.low: (2022, 9, 14), fleet.fen: (2022, 11, 8), fleet.two: (2022, 6, 2),
            fleet.tur: (2023, 2, 20)}


def begin_upkeep(paper, fleet, upkeep):
    paper.note()
    paper.note("Done before this record begins")
    before = (283, 640, 912, None)
    for each, tenths_ago in zip(upkeep, before):
        each.done_at = each.craft.hours - (tenths_ago or 0)
        if tenths_ago is not None:
            each.do(paper, datetime.date(2023, 1, 17), each.done_at)
    for craft, (year, month, day) in annuals_of(fleet).items():
        paper.say(f"{datetime.date(year, month, day)} {ANNUAL} done on {craft.subject()}, "
                  f'{MECHANIC}, paper "annual of {year}"')
    paper.say(f'2023-03-06 task "hoist cable" done on aircraft ZZ-TWO, {MECHANIC}, '
              "before the first flight")
    paper.note("ZZ-TUR came with a status sheet and no record of what was done.")
    paper.say(f"2023-03-06 {SERVICE} on aircraft ZZ-TUR is next due at "
              f'airframe {tenths(fleet.tur.hours + 1400)} h or 2024-05-31, basis "status sheet"')


def annual_morning(paper, fleet, day):
    for craft, (_, month, number) in annuals_of(fleet).items():
        is_forgotten = craft is fleet.tur and day.year == 2026
        if (day.month, day.day) == (month, number) and not is_forgotten:
            paper.say(f"{day} {ANNUAL} done on {craft.subject()}, {craft.airframe()}, "
                      f"{MECHANIC}, returned to service, before the first flight")


def review_morning(paper, fleet, day):
    """Directives and limitations are looked through each quarter, and in February 2026."""
    is_last = (day.year, day.month, day.day) == (2026, 2, 23)
    if not is_last and not (day.day == 5 and day.month in (1, 4, 7, 10)):
        return
    for craft in fleet.all():
        paper.say(f'{day} {craft.subject()} reviewed "directives and limitations", '
                  f'revision "{day:%Y-%m}", by "M. Tansley"')

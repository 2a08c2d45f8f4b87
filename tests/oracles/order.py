"""The order of one day (design 4): per aircraft by the meter or total stated; entries without one
by clock time; then as their writer wrote them, work after the flights written before it.

Work that states the airframe's total stands where the total agreed in the book as it was when the
work was written, so it moves with what is entered later about the flights before it."""

from chains import knew
from used import USES, service_hours

WORKS = ("fitted", "removed", "overhauled")
EARLY, LATE = "early", "late"


def aircraft_of(thing, hosts):
    while thing is not None and thing[0] != "aircraft":
        thing = hosts[thing][0] if thing in hosts else None
    return thing


def began(said):
    """The minute in UTC at which it began, if it tells."""
    return said.says.get("took off", said.minute) if said.kind == "flew" else said.minute


class Meter:
    """The source meter of one aircraft on one day; a new one goes on where the old one stopped."""

    def __init__(self, name, changed):
        self.name = name
        self.changed = changed

    def run(self, said):
        """From and to, of a new meter too as if it had gone on; None if it states no run. The old
        one ended at `out`, the new one began at `in`: which is nearer says which it was."""
        run = said.says["meters"].get(self.name) if self.name else None
        if run is None or self.changed is None:
            return run
        out, into = self.changed["out"], self.changed["in"]
        if abs(run[0] - into) < abs(run[1] - out):
            return run[0] - into + out, run[1] - into + out
        return run

    def even(self, reading):
        """One reading, in the same way."""
        if self.changed is None:
            return reading
        out, into = self.changed["out"], self.changed["in"]
        return reading - into + out if abs(reading - into) < abs(reading - out) else reading


def is_told_before(one, other, meter):
    """Whether meter, flag or clock say that the first use came before the second; None: nothing
    tells."""
    flags = [("before the first flight" in fact.said.says,
              "after the last flight" in fact.said.says) for fact in (one, other)]
    if flags[0] != flags[1]:
        return flags[0][0] or flags[1][1]
    runs = [meter.run(fact.said) for fact in (one, other)]
    if runs[0] and runs[1] and runs[0] != runs[1]:
        return runs[0] < runs[1]
    times = [began(fact.said) for fact in (one, other)]
    if times[0] is not None and times[1] is not None and times[0] != times[1]:
        return times[0] < times[1]
    return None


def uses_in_order(uses, meter):
    """Each in the order of writing, put before the first that it is told to come before."""
    ordered = []
    for use in uses:
        at = len(ordered)
        for place, other in enumerate(ordered):
            if is_told_before(use, other, meter):
                at = place
                break
        ordered.insert(at, use)
    return ordered


class DayOrder:
    """Orders the happenings of a day, given where everything was fitted when the day began."""

    def __init__(self, book, facts, sources, policy=EARLY):
        self.book = book
        self.sources = sources
        self.policy = policy
        self.is_ambiguous = False
        self.changes = {}
        for fact in facts:
            if fact.said.kind == "changed":
                self.changes[(fact.said.about, fact.said.day)] = fact.said.says

    def meter(self, aircraft, day):
        name = self.sources.on(aircraft, day)["meter"]
        changed = self.changes.get((aircraft, day))
        return Meter(name, changed if changed and changed["meter"] == name else None)

    def uses_of(self, facts, aircraft, day):
        uses = [fact for fact in facts
                if fact.said.kind in USES and fact.said.about == aircraft and fact.said.day == day]
        return uses_in_order(uses, self.meter(aircraft, day))

    def of(self, day, facts, hosts):
        """The uses and works of the day in their order."""
        works = [fact for fact in facts if fact.said.kind in WORKS]
        crafts = dict.fromkeys(fact.said.about for fact in facts if fact.said.kind in USES)
        uses = {craft: self.uses_of(facts, craft, day) for craft in crafts}
        if not works:
            return [fact for row in uses.values() for fact in row]
        works, places = self.place(works, uses, hosts)
        ordered = []
        done = dict.fromkeys(crafts, 0)
        for work in works:
            craft, after = places[work.root.name]
            if craft in done and after > done[craft]:
                ordered += uses[craft][done[craft]:after]
                done[craft] = after
            ordered.append(work)
        for craft in crafts:
            ordered += uses[craft][done[craft]:]
        return ordered

    def place(self, works, uses, hosts):
        """The works in their order, and for each its aircraft and the uses that come before it."""
        for _ in range(len(works) + 1):
            places = self.places(works, uses, hosts)
            swapped = False
            for at in range(len(works) - 1):
                if self.is_later(works[at], works[at + 1], places):
                    works[at], works[at + 1] = works[at + 1], works[at]
                    swapped = True
                    break
            if not swapped:
                return works, places
        return works, self.places(works, uses, hosts)

    @staticmethod
    def is_later(one, other, places):
        first, second = places[one.root.name], places[other.root.name]
        if first[0] == second[0] and first[0] is not None and first[1] != second[1]:
            return first[1] > second[1]
        times = one.said.minute, other.said.minute
        return None not in times and times[0] > times[1]

    def places(self, works, uses, hosts):
        hosts = dict(hosts)
        found = {}
        for work in works:
            said = work.said
            start = said.about if said.kind == "overhauled" else said.says["host"]
            craft = aircraft_of(start, hosts)
            found[work.root.name] = (craft, self.after(work, craft, uses.get(craft, [])))
            if said.kind == "fitted":
                hosts[said.about] = (said.says["host"], said.says["place"])
            elif said.kind == "removed":
                hosts.pop(said.about, None)
        return found

    def after(self, work, craft, uses):
        """How many of the aircraft's uses of the day come before the work."""
        if craft is None or not uses:
            return 0
        says = work.said.says
        if "before the first flight" in says:
            return 0
        if "after the last flight" in says:
            return len(uses)
        met = self.met_total(work, craft, uses)
        if met is None:
            met = self.met_reading(work, craft, uses)
        if met is None:
            met = self.by_clock(work, uses)
        return self.as_written(work, uses) if met is None else met

    def met_total(self, work, craft, uses):
        """Behind the uses that made the stated total in the book as it was then."""
        stated = work.said.says.get("airframe")
        if stated is None:
            return None
        day = work.said.day
        facts = self.book.facts(seen_by=work.by)  # as it was when the total was written
        total = self.airframe_before(facts, craft, day)
        if total is None:
            return None
        then = self.uses_of(facts, craft, day)
        source = self.sources.on(craft, day)
        before = None if total != stated * 1000 else set()
        behind = set()
        for fact in then:
            total += service_hours(fact.said, source)
            behind = behind | {fact.root.name}
            if total == stated * 1000:
                before = behind
        if before is None:
            return None
        places = [at for at, use in enumerate(uses) if use.root.name in before]
        return places[-1] + 1 if places else 0

    def airframe_before(self, facts, craft, day):
        """The airframe's total at the start of a day; None where none is on record."""
        total = None
        for fact in facts:
            said = fact.said
            if said.kind == "forward" and said.about == craft and said.day <= day:
                stated = [figure for clock, figure, _ in said.says["had"] if clock == "h"]
                total = stated[0][0] if stated else None
        if total is None:
            return None
        for fact in facts:
            said = fact.said
            if said.kind in USES and said.about == craft and said.day < day:
                total += service_hours(said, self.sources.on(craft, said.day))
        return total

    def met_reading(self, work, craft, uses):
        meter = self.meter(craft, work.said.day)
        if "meter" not in work.said.says or work.said.says["meter"][0] != meter.name:
            return None
        reading = meter.even(work.said.says["meter"][1])
        runs = [meter.run(use.said) for use in uses]
        before = [at for at, run in enumerate(runs) if run and run[1] <= reading]
        return before[-1] + 1 if before else 0

    @staticmethod
    def by_clock(work, uses):
        times = [began(use.said) for use in uses]
        if work.said.minute is None or None in times:
            return None
        return sum(1 for time in times if time < work.said.minute)

    def as_written(self, work, uses):
        """After the uses written before it; those of another writer who did not know of it, and
        whom its writer did not know, may be on either side."""
        after = 0
        for at, use in enumerate(uses):
            if knew(work.root, use.root):
                after = at + 1
            elif not knew(use.root, work.root):
                self.is_ambiguous = True
                if self.policy == LATE:
                    after = at + 1
        return after

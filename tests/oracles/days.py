"""The walk: one state that moves forward through the days, happening by happening, for each thing
on whatever aircraft it is. Never a sum over a span: a total as of a day is the state at its end."""

import dataclasses
import datetime

from amounts import AT_LEAST, EXACT, HOUR, NOBODY_KNOWS, UNKNOWN, ZERO
from counting import CountingRules
from order import EARLY, WORKS, DayOrder
from spread import Log, Shares, begins_after, rides
from state import State
from used import USES, Sources, count, hours_at, on_meter, service_hours, speaks_of, takes

# Each of them takes one rule away when its name is given to `without`, to show what it is worth.
SWITCHES = ("same-day swap", "late flight", "nested move", "loan", "corrected fit",
            "struck removal", "meter change", "unknown child", "changed limit", "recount",
            "two corrections")


def as_entered(facts):
    """As if a flight could not be entered late: none before what was entered before it."""
    found, last = [], datetime.date.min
    for fact in facts:
        if fact.said.kind in USES and fact.said.day < last:
            said = dataclasses.replace(fact.said, day=last)
            fact = dataclasses.replace(fact, said=said)
        last = max(last, fact.said.day)
        found.append(fact)
    return found


def is_rounded(clock, figure, now):
    """Whether tenths of an hour are only the rounding of what is on record to the second."""
    tenth = HOUR * 100
    return (clock == "h" and now[1] == EXACT and figure[0] % tenth == 0 and now[0] % tenth
            and abs(figure[0] - now[0]) <= tenth // 2)


def clocks_of(facts):
    """Every clock that a history speaks of."""
    found = {"h", "starts", "flights", "landings"}
    for fact in facts:
        says = fact.said.says
        for clock, *_ in says.get("had", []) + says.get("with", []):
            found.add(clock)
        found.update(clock for clock, _ in says.get("counts", {}))
        found.update(term["clock"] for term in says.get("terms", []) if "clock" in term)
        if "counter" in says:
            found.add(says["counter"])
    return found


def things_of(facts):
    """Every thing on record, aircraft first."""
    found = []
    for fact in facts:
        said = fact.said
        for thing in (said.about, said.says.get("host")):
            if thing and thing[0] in ("aircraft", "engine", "part") and thing not in found:
                found.append(thing)
    return sorted(found)


class Walk:
    """Walks to the end of a day; what is asked of it later is in `state`."""

    def __init__(self, book, as_of, policy=EARLY, choose=None, without=(), clocks=()):
        self.without = frozenset(without)
        facts = book.facts(choose=choose, without=self.chains_without(book))
        if "late flight" in self.without:
            facts = as_entered(facts)
        self.facts = [fact for fact in facts if fact.said.day <= as_of]
        self.book = book
        self.as_of = as_of
        self.clocks = sorted({*clocks_of(self.facts), *clocks})
        self.things = things_of(self.facts)
        self.sources = Sources(self.facts)
        self.rules = CountingRules(self.facts, book.root_of, self.without)
        self.models = {fact.said.about: fact.said.says["model"] for fact in self.facts
                       if fact.said.kind == "is" and fact.said.about[0] == "aircraft"}
        self.state = State(self.things)
        self.order = DayOrder(book, self.facts, self.sources, policy)
        self.after_days = self.days_after_which()
        self.last_reading = {}
        self.log = Log()
        # What each kind of work does; every other kind that is walked is use.
        self.happenings = {"fitted": self.fit, "removed": self.remove, "overhauled": self.overhaul}
        self.step()

    def chains_without(self, book):
        names = set()
        if "struck removal" in self.without:
            names.add("struck")
        for entry in book.entries:
            if entry.said.kind != "corrected":
                continue
            kind = entry.said.says["instead"].kind
            target = book.named[entry.said.says["target"]]
            if "corrected fit" in self.without and kind == "fitted":
                names.add(entry.name)
            if "two corrections" in self.without and target.said.kind == "corrected":
                names.add(entry.name)
        return names

    def days_after_which(self):
        found = set()
        for fact in self.facts:
            for term in fact.said.says.get("terms", []):
                if "clock" in term and isinstance(term["since"], datetime.date):
                    found.add(term["since"])
        return sorted(found)

    def step(self):
        """One day after another."""
        by_day = {}
        for fact in self.facts:
            if fact.said.kind in (*USES, *WORKS, "forward"):
                by_day.setdefault(fact.said.day, []).append(fact)
        waiting = list(self.after_days)
        for day in sorted(by_day):
            while waiting and waiting[0] < day:
                self.count_from(waiting.pop(0))
            self.live(day, by_day[day])
        for day in waiting:
            if day <= self.as_of:
                self.count_from(day)

    def count_from(self, day):
        """From the end of this day a further count begins, for what is on record by then."""
        self.state.has[day] = {thing: dict.fromkeys(self.clocks, ZERO)
                               for thing in self.state.on_record}

    def live(self, day, facts):
        for fact in facts:
            if fact.said.kind == "forward":
                self.bring_forward(fact.said)
        moving = [fact for fact in facts if fact.said.kind != "forward"]
        if "same-day swap" in self.without:
            moving.sort(key=lambda fact: fact.said.kind in USES)
        else:
            moving = self.order.of(day, moving, self.state.hosts)
        for fact in moving:
            self.happenings.get(fact.said.kind, self.use)(fact.said)

    # What a thing has when it comes on record.

    def bring_forward(self, said):
        if said.about[0] == "aircraft":
            self.log.begins.setdefault(said.about, said.day)
        if said.about not in self.state.has["new"]:
            self.begin(said.about, said.says["had"], said.says["unknown"])
        else:
            self.restate(said.about, said.says["had"], said.says["unknown"])

    def begin(self, thing, had, unknown=()):
        """A clock that nobody stated is not known, unless the thing had run no hours at all."""
        self.state.on_record.add(thing)
        if not had and not unknown:
            return
        hours = [figure for clock, figure, since in had if clock == "h" and since == "new"]
        start = ZERO if hours and hours[0] == ZERO else NOBODY_KNOWS
        if "unknown child" in self.without:
            start = ZERO
        for basis in ("new", "overhaul"):
            mine = self.state.has[basis].setdefault(thing, {})
            for clock in self.clocks:
                mine.setdefault(clock, start)
        if start == ZERO:
            for day in set(self.state.has) - {"new", "overhaul", "fitting"}:
                self.state.has[day].setdefault(thing, dict.fromkeys(self.clocks, ZERO))
        self.state_outright(thing, had)
        if start != ZERO or ("h", "new") in unknown:
            self.state.came_used.add(thing)
        for clock, since in unknown:
            self.state.stated.add((since, thing, clock))
            if "unknown child" not in self.without:
                self.state.has[since][thing][clock] = NOBODY_KNOWS

    def state_outright(self, thing, had):
        """What is stated first on a clock is where its total begins."""
        for clock, figure, since in had:
            if (since, thing, clock) not in self.state.stated:
                self.state.stated.add((since, thing, clock))
                self.state.based.add((since, thing, clock))
                self.state.has[since][thing][clock] = figure

    def restate(self, thing, had, unknown):
        """Brought forward again: it never makes a thing younger (docs/decisions 0021)."""
        for clock, figure, since in had:
            now = self.state.figure(since, thing, clock)
            is_more = figure[0] > now[0] if now[1] == EXACT else figure[0] >= now[0]
            if now[1] != UNKNOWN and (not is_more or is_rounded(clock, figure, now)):
                continue
            self.state.has[since].setdefault(thing, {})[clock] = figure
            if (clock, since) == ("h", "new"):
                self.state.came_used.add(thing)
                self.state.ran_on[thing].clear()
            self.state.based.add((since, thing, clock))
            self.state.silent.pop((since, thing, clock), None)
        for clock, since in unknown:
            value, sure = self.state.figure(since, thing, clock)
            self.state.has[since].setdefault(thing, {})[clock] = value, max(sure, AT_LEAST)

    # Work.

    def note_move(self, said):
        """What is where, and what the airframe has, before a move."""
        craft = self.state.way(said.says.get("host", said.about))[0][-1]
        self.log.add(said, self.state.hosts, (craft, self.state.figure("new", craft, "h")))

    def fit(self, said):
        self.note_move(said)
        thing, state = said.about, self.state
        if thing not in state.has["new"]:
            self.begin(thing, said.says["with"])
        elif thing not in state.stay_began:
            self.state_outright(thing, said.says["with"])
        state.hosts[thing] = (said.says["host"], said.says["place"])
        state.moved()
        state.stay_began[thing] = said.day
        state.from_nothing("fitting", thing, self.clocks)
        state.root_when_fitted[thing] = state.way(thing)[0][-1]
        self.note_models(thing)

    def remove(self, said):
        self.note_move(said)
        self.state.hosts.pop(said.about, None)
        self.state.moved()

    def note_models(self, moved):
        """On which models of aircraft and engines each thing has been."""
        for thing in self.things:
            way, place = self.state.way(thing)
            if moved not in way:
                continue
            model = self.models.get(way[-1])
            if len(way) > 1 and way[-1][0] == "aircraft" and not place.startswith("engine "):
                self.state.been_outside_engines.add(thing)
            if len(way) > 1 and model:
                self.state.first_root.setdefault(thing, way[-1])
                engines = [host[1] for host in way[1:] if host[0] == "engine"]
                self.state.models_been[thing].update([model, *engines])
            for host in way[1:]:
                self.state.last_of_kind[thing, host[0]] = host

    def overhaul(self, said):
        self.note_move(said)
        self.state.overhauled[said.about] = said.day
        self.state.from_nothing("overhaul", said.about, self.clocks)

    # Use.

    def use(self, said):
        source = self.sources.on(said.about, said.day)
        by_way = {}
        self.state.spoken.update((said.about, clock) for clock in self.clocks
                                 if speaks_of(said, clock))
        moves = self.log.within(said)
        self.log.note_use(said)
        shares = Shares(said, service_hours(said, source), moves, lambda ride: self.amounts(
            said, source, list(ride.way), ride.place, by_way))
        for thing in self.things:
            if moves and thing[0] != "aircraft":
                self.use_through(moves, thing, shares)
                continue
            way, place = self.state.way(thing)
            if "nested move" in self.without and len(way) > 2:
                way = way[:-1] + [self.state.root_when_fitted.get(thing)]
            if way[-1] != said.about:
                continue
            if "loan" in self.without and self.state.first_root.get(thing, way[-1]) != way[-1]:
                continue
            amounts = self.amounts(said, source, way, place, by_way)
            if takes(said, place):
                self.state.take(thing, amounts)
                self.note_run(thing, way, amounts)
            self.state.note_silence(thing, amounts, said.about)

    def use_through(self, moves, thing, shares):
        """A use of several days, through the moves within them."""
        its = rides(thing, moves, self.state.hosts)
        for basis in self.state.has:
            amounts = shares.of(its, begins_after(basis, thing, moves))
            if amounts is not None:
                self.state.take(thing, amounts, (basis,))
                for ride in its if basis == "new" else ():
                    self.note_run(thing, ride.way, amounts)
                self.state.note_silence(thing, amounts, shares.said.about, (basis,))

    def note_run(self, thing, way, amounts):
        """On the models of which engine and aircraft it ran hours."""
        if any(clock == "h" and figure != ZERO for clock, figure, _ in amounts):
            models = [host[1] if host[0] == "engine" else self.models.get(host) for host in way
                      if host and host[0] != "part"]
            self.state.ran_on[thing].add(frozenset(models))

    def amounts(self, said, source, way, place, by_way):
        """What a thing uses of it, clock by clock; things of one place and under the same rules
        use the same."""
        scopes = [scope for scope in self.scopes(way) if scope in self.rules.scopes]
        key = (place, *scopes)
        if key not in by_way:
            by_way[key] = [(clock, self.amount(said, source, clock, place, scopes),
                            self.rules.ever(scopes, clock)) for clock in self.clocks]
        return by_way[key]

    def amount(self, said, source, clock, place, scopes):
        if clock == "h":
            figure = hours_at(said, source, place)
            return self.without_step(said, source, figure)
        if clock.startswith("h by "):
            return on_meter(said, source, clock[len("h by "):-len(" meter")])
        ways = self.rules.during(scopes, clock, said) if clock in self.rules.counters else [()]
        return count(said, clock, place, ways)

    def without_step(self, said, source, figure):
        """Switched off, a new meter is read as if it were the old one."""
        run = said.says["meters"].get(source["meter"]) if "meter change" in self.without else None
        if run is None:
            return figure
        last = self.last_reading.get((said.about, said.day, said.says["hours"]), None)
        if last is None:
            last = self.last_reading.get(said.about, run[0])
            self.last_reading[(said.about, said.day, said.says["hours"])] = last
            self.last_reading[said.about] = run[1]
        return (run[1] - last) * source["factor"], figure[1]

    def scopes(self, way):
        """Whose rules count: the thing's own, its part number's or model's, then its host's."""
        for thing in way:
            yield thing
            if thing[0] == "engine":
                yield ("model", thing[1])
            elif thing[0] == "part":
                yield ("part number", thing[1])
            elif thing in self.models:
                yield ("model", self.models[thing])

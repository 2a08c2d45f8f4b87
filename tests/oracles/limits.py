"""What is left of each limit of each thing at the end of a walk (design 5 and 6)."""

import datetime

from amounts import (AT_LEAST, EXACT, HOUR, UNKNOWN, ZERO, add, days_later, end_of_month, months_later,
                     quarter_after)
from sentences import thing_text

OK, SOON, NOT_KNOWN, DUE, OVER = range(5)
STATES = ("ok", "soon", "not known", "due", "over")
SOON_HOURS, SOON_COUNT, SOON_DAYS = 25 * HOUR * 1000, 25 * 1000, 30


class Limits:
    """The limits that hold at the end of a walk, and for each thing what is left of them."""

    def __init__(self, walk):
        self.walk = walk
        self.facts = [fact for fact in walk.facts if fact.said.kind == "limit"]
        self.replaced = self.replaced_ones()

    def replaced_ones(self):
        if "changed limit" in self.walk.without:
            news = [fact for fact in self.facts if "instead" in fact.said.says]
            return {fact.root.name for fact in news}
        return {self.walk.book.root_of(fact.said.says["instead"])
                for fact in self.facts if "instead" in fact.said.says}

    def of(self, thing):
        """The limits laid upon the thing itself, its part number or its model."""
        scopes = set(self.walk.scopes([thing]))
        return [fact for fact in self.facts
                if fact.said.about in scopes and fact.root.name not in self.replaced]

    def items(self, thing):
        """(limit, sides, state) of each that holds (docs/decisions 0023 and 0030). Nobody states
        in these histories how a life is shared among models."""
        found = []
        mine = self.of(thing)
        shared = self.shared(thing, mine)
        for fact in mine:
            model = fact.said.says.get("on model")
            is_borne = model is None or self.is_borne(model)
            if fact in shared:
                found.append((fact, None, NOT_KNOWN))
                continue
            if model is not None and is_borne and not self.is_held_to(thing, model):
                continue
            sides = [self.side(thing, term, fact) for term in fact.said.says["terms"]]
            if not is_borne:
                sides = [side | {"left": None, "state": NOT_KNOWN, "due": None} for side in sides]
            found.append((fact, sides, self.state(fact, sides)))
        return found

    def shared(self, thing, mine):
        """The limits among which its life would have to be shared: it came under several models'
        here, or may have before this record, and they would leave it otherwise than that of now."""
        apart = [fact for fact in mine if self.is_borne(fact.said.says.get("on model"))]
        of_models = [fact for fact in apart if "on model" in fact.said.says]
        may_be_any = thing in self.walk.state.came_used
        met = self.walk.state.models_been.get(thing, set())
        under = [fact for fact in of_models if may_be_any or fact.said.says["on model"] in met
                 or self.is_held_to(thing, fact.said.says["on model"])]
        same = [fact for fact in apart if fact in under
                or (of_models and "on model" not in fact.said.says and self.is_of_new_hours(fact))]
        now = [hours_of(fact) for fact in same if "on model" not in fact.said.says
               or self.is_held_to(thing, fact.said.says["on model"])]
        elsewhere = [fact for fact in under if not self.is_held_to(thing, fact.said.says["on model"])]
        if not under or not (elsewhere or may_be_any or self.walk.state.ran_on[thing]):
            return []
        if any(not now or hours_of(fact) < min(now) for fact in elsewhere):
            return same
        wholes = [self.whole_on(models, same) for models in self.walk.state.ran_on[thing]]
        if may_be_any:
            wholes.append(min(hours_of(fact) for fact in same))
        return same if any(whole != min(now) for whole in wholes) else []

    @staticmethod
    def is_of_new_hours(fact):
        return [(term["clock"], term["since"]) for term in fact.said.says["terms"]
                if "period" not in term] == [("h", "new")]

    @staticmethod
    def whole_on(models, limits):
        """The smallest limit that held where it ran; where none did, the smallest of all."""
        there = [hours_of(fact) for fact in limits
                 if fact.said.says.get("on model") in (None, *models)]
        return min(there or [hours_of(fact) for fact in limits])

    def models_of_kind(self, kind):
        """The model of each engine, or of each aircraft of which it is on record."""
        if kind == "aircraft":
            return self.walk.models
        return {thing: thing[1] for thing in self.walk.things if thing[0] == kind}

    def is_borne(self, model):
        """Whether anything on record is of the model; None is no model, and holds on all."""
        return model is None or any(model in self.models_of_kind(kind).values() for kind in ("engine", "aircraft"))

    def is_held_to(self, thing, model):
        """Whether the engine or the aircraft in which it is, or was last, is of the model; or it
        was in none, or that one's model is not on record."""
        for kind in ("engine", "aircraft"):
            models = self.models_of_kind(kind)
            last = self.walk.state.last_of_kind.get((thing, kind))
            if model in models.values() and models.get(last, model) == model:
                return True
        return False

    @staticmethod
    def state(fact, sides):
        """The worst side of a first, the best of a latest; but what is not known blocks."""
        states = [side["state"] for side in sides]
        if fact.said.says["latest"] and NOT_KNOWN not in states:
            return min(states)
        return NOT_KNOWN if fact.said.says["latest"] else max(states)

    def side(self, thing, term, fact):
        exceeding = fact.said.says["exceeding"]
        if "period" in term:
            return self.calendar_side(thing, term, exceeding)
        figure = self.used(thing, term)
        side = {"used": figure, "clock": term["clock"], "due": None}
        if figure[1] == UNKNOWN:
            return side | {"left": None, "state": NOT_KNOWN}
        left = term["amount"] - figure[0]
        is_hours = term["clock"].startswith("h")
        near = SOON_HOURS if is_hours else SOON_COUNT
        state = state_of(left, near, exceeding)
        if figure[1] == AT_LEAST and state < NOT_KNOWN:
            state = NOT_KNOWN  # what is left at most may be none (docs/decisions 0024)
        side |= {"left": left, "state": state}
        if term["clock"] == "h":
            side["due"] = self.due_airframe(thing, left, figure)
        return side

    def used(self, thing, term):
        if isinstance(term["since"], datetime.date) and term["since"] > self.walk.as_of:
            return ZERO  # it begins to count only then
        return self.walk.state.figure(term["since"], thing, term["clock"])

    def due_airframe(self, thing, left, figure):
        """At which total of the airframe, while the thing is aboard."""
        way, _ = self.walk.state.way(thing)
        if way[-1][0] != "aircraft":
            return None
        total = add(self.walk.state.figure("new", way[-1], "h"), figure)
        return None if total[1] == UNKNOWN else total[0] - figure[0] + left

    def calendar_side(self, thing, term, exceeding):
        last = self.last_legal(thing, term)
        side = {"used": None, "clock": "days", "due": None}
        if last is None:
            return side | {"left": None, "state": NOT_KNOWN}
        left = (last - self.walk.as_of).days
        return side | {"left": left, "due": last, "state": state_of(left, SOON_DAYS, exceeding)}

    def last_legal(self, thing, term):
        number, unit = term["period"]
        begins, is_quarter = self.basis_day(thing, term["since"])
        if begins is None:
            return None
        if unit == "day":
            return days_later(begins, number)
        last = months_later(begins, number * 12 if unit == "year" else number)
        if unit == "calendar month":
            return end_of_month(last)
        # A shelf clock starts at the first day of a quarter: the day before its anniversary.
        return days_later(last, -1) if is_quarter else last

    def basis_day(self, thing, since):
        if isinstance(since, datetime.date):
            return since, False
        if since == "overhaul":
            return self.walk.state.overhauled.get(thing), False
        if since == "fitting":
            return self.walk.state.stay_began.get(thing), False
        says = {}
        for fact in self.walk.facts:
            if fact.said.kind == "is" and fact.said.about == thing:
                says |= fact.said.says
        if since == "manufacture" and "cured" in says and "made" not in says:
            return quarter_after(says["cured"]), True
        word = {"manufacture": "made", "release": "released"}.get(since, since)
        return says.get(word), False


def hours_of(fact):
    return fact.said.says["terms"][0]["amount"]


def state_of(left, near, exceeding):
    if left < 0:
        return OVER
    if left == 0:
        return SOON if exceeding else DUE
    return SOON if left <= near else OK


def side_text(side):
    """`left 3600000 at most|state|due`, as answers write it."""
    if side["left"] is None:
        return "left unknown|not known|-"
    sure = side["used"][1] if side["used"] else EXACT
    most = " at most" if sure == AT_LEAST else ""
    return f"left {side['left']}{most}|{STATES[side['state']]}|{side['due'] or '-'}"


def limit_lines(walk):
    """The answers about limits, by what they are about. Of limits that differ from model to model
    nothing is known, in one answer for all of them."""
    limits, found = Limits(walk), {}
    for thing in walk.things:
        shared = []
        for fact, sides, state in limits.items(thing):
            name = f"{fact.root.name[0]}-{fact.root.name[1]}|{thing_text(thing)}"
            if sides is None:
                shared.append(name)
                continue
            found[f"item {name}"] = STATES[state]
            for number, side in enumerate(sides):
                found[f"side {name}|{number}"] = side_text(side)
        if shared:
            found[f"shared {', '.join(sorted(shared))}"] = STATES[NOT_KNOWN]
    return found

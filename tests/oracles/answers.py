"""What the walk answers about a history, in the words of life_answers."""

from amounts import figure_text
from days import Walk
from limits import STATES, limit_lines
from order import EARLY, LATE
from sentences import thing_text


def totals(walk, clocks):
    """Totals of everything, but for those of which the pages say nothing: the starts of what is in
    no engine's place, where a flight or a ground run names the engines."""
    found = {}
    for thing in walk.things:
        for clock in clocks:
            if clock in ("starts", "cycles") and is_outside_engines(walk, thing):
                continue
            for basis in ("new", "overhaul", "fitting"):
                if basis == "fitting" and thing not in walk.state.stay_began:
                    continue
                figure = walk.state.figure(basis, thing, clock)
                found[f"total {thing_text(thing)}|{clock}|{basis}"] = figure_text(figure)
    return found


def is_outside_engines(walk, thing):
    return thing in walk.state.been_outside_engines or thing[0] == "aircraft"


def places(walk):
    """Where everything is at the end of the walk."""
    found = {}
    for thing in walk.things:
        host = walk.state.hosts.get(thing)
        found[f"where {thing_text(thing)}"] = f"{thing_text(host[0])}|{host[1]}" if host else "-"
    return found


def answers_of(walk, clocks):
    return totals(walk, clocks) | places(walk) | limit_lines(walk)


class Answers:
    """The answers about one day of a history. Where a person must decide, by each decision: of
    two corrections made apart, and of an order within a day that nothing tells."""

    def __init__(self, book, day, clocks, without=()):
        self.questions = set()
        apart = [values for values in book.apart().values()
                 if any(value.said.says["instead"].day <= day for value in values)]
        self.each = []
        for choose in choices(apart):
            walk = Walk(book, day, EARLY, choose, without, clocks)
            self.each.append(answers_of(walk, clocks))
            if walk.order.is_ambiguous:
                self.questions.add("order within a day")
                self.each.append(answers_of(Walk(book, day, LATE, choose, without, clocks), clocks))
        if apart:
            self.questions.add("two corrections")

    def lines(self):
        """What each decision would answer, by what is asked; where nothing is left to decide, or
        all agree, one answer. A life that is open after one decision is open until it is made."""
        found = {}
        keys = set().union(*self.each)
        lives = {name for key in keys if key.startswith("shared ") for name in key[7:].split(", ")}
        for key in sorted(key for key in keys if limit_of(key) not in lives):
            values = [lines.get(key) for lines in self.each]
            found[key] = tuple(dict.fromkeys(values))
        return found


def limit_of(key):
    """The limit and the thing that an answer is about; none where it is about something else."""
    kind, _, about = key.partition(" ")
    return {"item": about, "side": about.rpartition("|")[0]}.get(kind)


def choices(apart):
    """For corrections made apart: each of them taken once; None where there are none."""
    if not apart:
        return [None]
    return [lambda values, at=at: values[min(at, len(values) - 1)]
            for at in range(max(len(values) for values in apart))]


def left_in(side):
    """What a side has left; what is not known comes before everything."""
    word = side.split("|")[0].split(" ")[1]
    return -10**18 if word == "unknown" else int(word)


SEVERITY = {state: at for at, state in enumerate(STATES)}


def is_safe(key, values, got):
    """Where a person must decide, an answer may promise no more than the worst decision."""
    if got is None or None in values:
        return got in values
    if key.startswith("side "):
        return left_in(got) <= min(left_in(value) for value in values)
    if key.startswith("item "):
        return SEVERITY[got] >= max(SEVERITY[value] for value in values)
    return True  # totals follow one of the decisions; the question stands beside them

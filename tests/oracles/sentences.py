"""The sentences of a history, read by a grammar of their own: only what histories and cases about
lives say, and only as it is written canonically. What it does not know it refuses.

A thing is ("aircraft", registration), ("engine", model, serial) or ("part", number, serial); a
scope is a thing, ("model", name) or ("part number", name). A clock is "h", "h by M meter" or the
plural of a counter; a counter of the operator's own keeps its quotes."""

import functools
import re
from dataclasses import dataclass, field
from typing import Optional

from amounts import AT_LEAST, BY_DEFAULT, EXACT, day_of, seconds, thousandths

NAME = r'(?:"(?:[^"\\]|\\.)*"|[A-Z0-9/-]+)'
PLACE = r'(?:engine \d|"(?:[^"\\]|\\.)*")'
HOURS = r"\d+(?:\.\d+|:\d\d(?::\d\d)?)?"
NUMBER = r"\d+(?:\.\d+)?"
COUNTERS = {
    "start": "starts", "flight": "flights", "landing": "landings", "lift": "lifts",
    "transition": "transitions", "torque event": "torque events", "hoist lift": "hoist lifts",
    "run-on landing": "run-on landings", "gas-generator cycle": "gas-generator cycles",
    "power-turbine cycle": "power-turbine cycles", "full cycle": "full cycles",
    "abbreviated cycle": "abbreviated cycles", "cycle": "cycles",
}
BASES = {"new": "new", "overhaul": "overhaul", "fitting": "fitting", "release": "release",
         "manufacture": "manufacture", "first certificate": "first certificate"}
THING = (rf"aircraft {NAME}|engine {NAME} {NAME}|part number {NAME}|part {NAME} {NAME}"
         rf"|model {NAME}|entry [0-9A-Z]+-\d+")
IGNORED = ("task ", "inspection ", "directive ", "service ", "storage step ", "record ", "person ")


class Unreadable(Exception):
    """A sentence that this grammar does not know."""


@dataclass
class Said:
    """One sentence: its day, its minute in UTC if it tells one, its kind and what it says."""
    day: object
    minute: Optional[int]
    kind: str
    about: tuple
    says: dict = field(default_factory=dict)


def bare(name):
    return name[1:-1].replace('\\"', '"') if name.startswith('"') else name


def clauses_of(text):
    """The clauses between commas; a comma inside quotes ends none."""
    return [piece.strip() for piece in re.findall(r'(?:"(?:[^"\\]|\\.)*"|[^,"])+', text)]


def thing_of(text):
    """A thing, a scope or an entry's name, as a tuple."""
    match = re.fullmatch(rf"(aircraft|engine|part number|part|model|entry) ({NAME})(?: ({NAME}))?",
                         text)
    if not match:
        raise Unreadable(text)
    return tuple(bare(piece) for piece in match.groups() if piece)


@functools.lru_cache(maxsize=1000)
def thing_text(thing):
    """The name as sentences write it; every name of a history can stand bare, or is quoted."""
    return " ".join([thing[0]] + [name_text(name) for name in thing[1:]])


def name_text(name):
    return name if re.fullmatch(r"[A-Z0-9/-]*[A-Z][A-Z0-9/-]*", name) else f'"{name}"'


def counter_of(text):
    if text.startswith('"'):
        return text
    plural = COUNTERS.get(text, text)
    if plural not in COUNTERS.values():
        raise Unreadable(text)
    return plural


def minute_of(text):
    """09:11-07:00 or 09:11Z as the minute in UTC, which may lie outside the day."""
    match = re.fullmatch(r"(\d\d):(\d\d)(?:Z|([+-])(\d\d):(\d\d))", text)
    if not match:
        raise Unreadable(text)
    minute = int(match[1]) * 60 + int(match[2])
    shift = int(match[4]) * 60 + int(match[5]) if match[3] else 0
    return minute + shift if match[3] == "-" else minute - shift


def amount_of(text):
    """(clock, amount) of `1820.4 h`, `12.0 h by tach meter`, `2101 starts`."""
    match = re.fullmatch(rf"({HOURS}) h(?: by ({NAME}|[a-z-]+) meter)?", text)
    if match:
        clock = f"h by {bare(match[2])} meter" if match[2] else "h"
        return clock, seconds(match[1]) * 1000
    match = re.fullmatch(rf'({NUMBER}) ("[^"]*"|[a-z -]+)', text)
    if not match:
        raise Unreadable(text)
    return counter_of(match[2]), thousandths(match[1])


def had_of(text):
    """(clock, figure, basis) of what a thing has, since new or since overhaul."""
    sure = EXACT
    for words, grade in (("at least ", AT_LEAST), ("by default ", BY_DEFAULT)):
        if text.startswith(words):
            text, sure = text[len(words):], grade
    match = re.fullmatch(r"(.*?)(?: since (new|overhaul))?", text)
    clock, amount = amount_of(match[1])
    return clock, (amount, sure), match[2] or "new"


def term_of(text):
    """One amount of a limit with what it counts from: a basis, or a day after which."""
    match = re.fullmatch(r"(.*) (?:since ([a-z ]+)|after (\d{4}-\d\d-\d\d))", text)
    if not match:
        raise Unreadable(text)
    since = BASES[match[2]] if match[2] else day_of(match[3])
    period = re.fullmatch(r"(\d+) (day|calendar month|month|year)s?", match[1])
    if period:
        return {"period": (int(period[1]), period[2]), "since": since}
    clock, amount = amount_of(match[1])
    return {"clock": clock, "amount": amount, "since": since}


def read_is(rest, _):
    says = {}
    for clause in clauses_of(rest):
        for word in ("made", "released", "cured", "first certificate", "model"):
            if clause.startswith(word + " "):
                value = clause[len(word) + 1:]
                says[word] = value if word == "cured" else bare(value)
    for word in ("made", "released", "first certificate"):
        if word in says:
            says[word] = day_of(says[word])
    return says


def read_forward(rest, _):
    says = {"had": [], "meters": {}, "unknown": []}
    for clause in clauses_of(rest):
        if clause.startswith(("basis ", "put together from ")):
            continue
        if clause.startswith("airframe "):
            says["had"].append(had_of(clause[len("airframe "):]))
            continue
        meter = re.fullmatch(rf"({NAME}|[a-z-]+) meter ({HOURS})", clause)
        unknown = re.fullmatch(r"(.*?)(?: since (overhaul|new))? unknown", clause)
        if meter:
            says["meters"][bare(meter[1])] = seconds(meter[2])
        elif unknown:
            clock = "h" if unknown[1] == "hours" else counter_of(unknown[1])
            says["unknown"].append((clock, unknown[2] or "new"))
        else:
            says["had"].append(had_of(clause))
    return says


FLAGS = ("before the first flight", "after the last flight", "by clock", "for hire")


def read_use(rest, _):
    """What was flown, run, tried or is unaccounted for."""
    says = {"hours": None, "hours at": {}, "counts": {}, "meters": {}}
    for clause in clauses_of(rest):
        if clause in FLAGS:
            says[clause] = True
        elif clause.startswith(("pilot ", "blocks ", "remark ")):
            continue
        elif re.match(r"(took off|landed|since) ", clause):
            word, _, value = clause.rpartition(" ")
            says[word] = day_of(value) if word == "since" else minute_of(value)
        else:
            read_used(clause, says)
    return says


def read_used(clause, says):
    run = re.fullmatch(rf"({NAME}|[a-z-]+) meter ({HOURS}) to ({HOURS})", clause)
    if run:
        says["meters"][bare(run[1])] = (seconds(run[2]), seconds(run[3]))
        return
    match = re.fullmatch(rf"(.*?)(?: on ({PLACE}))?", clause)
    clock, amount = amount_of(match[1])
    place = bare(match[2]) if match[2] else None
    if clock != "h":
        says["counts"][(clock, place)] = amount
    elif place:
        says["hours at"][place] = amount // 1000
    else:
        says["hours"] = amount // 1000


def read_work(rest, _):
    """Fitted, removed or overhauled: where, what is stated, and what it has."""
    match = re.match(rf"(?:to|from) (?:({THING}) ({PLACE}))?", rest)
    says = {"with": []}
    if match:
        says["host"], says["place"] = thing_of(match[1]), bare(match[2])
        rest = rest[match.end():].lstrip(", ")
    for clause in clauses_of(rest):
        meter = re.fullmatch(rf"({NAME}|[a-z-]+) meter ({HOURS})", clause)
        if clause in FLAGS:
            says[clause] = True
        elif clause.startswith(("because ", "paper ", "by ", "remark ")):
            continue
        elif clause.startswith(("airframe ", "engine ")):
            word, value, _ = clause.split(" ")
            says[word] = seconds(value)
        elif meter:
            says["meter"] = (bare(meter[1]), seconds(meter[2]))
        else:
            says["with"].append(had_of(clause.removeprefix("with ")))
    return says


def read_source(rest, _):
    match = re.fullmatch(rf"(?:({NAME}|[a-z-]+) meter|clock)(?:, factor ({NUMBER}))?", rest)
    return {"meter": bare(match[1]) if match[1] else None, "is clock": not match[1],
            "factor": thousandths(match[2]) if match[2] else 1000}


def read_changed(rest, _):
    match = re.match(rf"({NAME}|[a-z-]+) meter, out ({HOURS}), in ({HOURS})", rest)
    return {"meter": bare(match[1]), "out": seconds(match[2]), "in": seconds(match[3])}


def replaced_by(clause):
    match = re.fullmatch(r"instead of entry ([0-9A-Z]+)-(\d+)", clause)
    return (match[1], int(match[2])) if match else None


def read_rule(rest, _):
    counter, *clauses = clauses_of(rest)
    says = {"counter": counter_of(counter), "each": []}
    for clause in clauses:
        each = re.fullmatch(rf"({NUMBER}) each (start|flight|landing)", clause)
        if each:
            says["each"].append((thousandths(each[1]), each[2] + "s"))
        elif clause.startswith("also for flights since "):
            says["also since"] = day_of(clause[-10:])
        elif replaced_by(clause):
            says["instead"] = replaced_by(clause)
        elif not clause.startswith("source "):
            raise Unreadable(clause)
    return says


def read_limit(rest, verb):
    terms, *clauses = clauses_of(rest)
    says = {"exceeding": verb.endswith("exceeding"), "latest": terms.startswith("the latest of ")}
    pieces = terms.removeprefix("the latest of ")
    says["terms"] = [term_of(piece)
                     for piece in pieces.split(" and " if says["latest"] else " or ")]
    for clause in clauses:
        if clause.startswith("on model "):
            says["on model"] = bare(clause[len("on model "):])
        elif replaced_by(clause):
            says["instead"] = replaced_by(clause)
        elif not clause.startswith(("class ", "source ", "revision ")):
            raise Unreadable(clause)
    return says


def read_nothing(_rest, _verb):
    return {}


KINDS = [
    ("counts airframe hours from ", "source", read_source),
    ("counts ", "rule", read_rule),
    ("changed ", "changed", read_changed),
    ("lost ", "lost", read_nothing),
    ("brings forward ", "forward", read_forward),
    ("retires at ", "limit", read_limit), ("overhaul at ", "limit", read_limit),
    ("retires when exceeding ", "limit", read_limit),
    ("overhaul when exceeding ", "limit", read_limit),
    ("on condition", "on condition", read_nothing),
    ("flew ", "flew", read_use), ("unaccounted ", "unaccounted", read_use),
    ("fitted ", "fitted", read_work), ("removed ", "removed", read_work),
    ("overhauled", "overhauled", read_work),
    ("is ", "is", read_is),
    ("has ", "place", read_nothing), ("reviewed ", "nothing", read_nothing),
    ("plans ", "nothing", read_nothing),
    ("started", "nothing", read_nothing),
]


def read(text):
    """The sentence as a Said; raises Unreadable."""
    match = re.fullmatch(r"(\d{4}-\d\d-\d\d) (?:(\d\d:\d\d\S*) )?(.*)\.", text)
    if not match:
        raise Unreadable(text)
    day, minute = day_of(match[1]), minute_of(match[2]) if match[2] else None
    if re.match(r'record "[^"]*" counts work when signed', match[3]):
        raise Unreadable(text)
    if match[3].startswith(IGNORED):
        return Said(day, minute, "nothing", ())
    if match[3].startswith("entry "):
        return read_about_entry(day, match[3])
    return read_fact(day, minute, match[3])


def read_about_entry(day, text):
    match = re.fullmatch(r'entry ([0-9A-Z]+)-(\d+) (corrected|struck) because "[^"]*"(?:: (.*))?',
                         text)
    if not match:
        raise Unreadable(text)
    says = {"target": (match[1], int(match[2]))}
    if match[3] == "corrected":
        says["instead"] = read(match[4] + ".")
    return Said(day, None, match[3], ("entry",), says)


def read_fact(day, minute, text):
    # A class and a name, so that `engine 1` behind an aircraft is a place.
    match = re.match(rf"({THING}) (?:(engine \d)(?: ({NAME}))? (ran|tried|started))?", text)
    if not match:
        raise Unreadable(text)
    about, rest = thing_of(match[1]), text[match.end():].strip()
    if match[4]:
        if match[4] == "started":
            return Said(day, minute, "nothing", about)
        says = read_use(rest.lstrip(", "), "")
        says["place"] = match[2]
        return Said(day, minute, match[4], about, says)
    for verb, kind, reads in KINDS:
        if rest.startswith(verb):
            said = reads(rest[len(verb):].lstrip(", "), verb.strip())
            return Said(day, minute, kind, about, said)
    raise Unreadable(text)

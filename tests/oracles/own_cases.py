#!/usr/bin/env python3
"""The figures of case files that concern lives, from this engine alone: what a case expects of
`history THING`, `lives` and the limits in `due` is worked out here and compared.

  own_cases.py FOLDER-OR-FILE …

The program under test is not asked. Prints each difference; fails on any, and if nothing of what it
was given could be checked."""

import datetime
import os
import re
import shlex
import sys

from amounts import AT_LEAST, UNKNOWN, day_of, seconds, thousandths
from chains import Book
from days import Walk
from history import Pen, entry_text
from limits import NOT_KNOWN, STATES, Limits
from sentences import PLACE, Unreadable, clauses_of, counter_of, thing_text

TODAY = datetime.date(2025, 3, 10)


class Differs(Exception):
    """An answer that is not what the case expects."""


class Case:
    """One case: what was said so far, and its questions one after another."""

    def __init__(self, path):
        self.path = path
        self.pen = Pen()
        self.labels = {}
        self.today = TODAY
        self.checked = 0
        self.asked = None

    def run(self):
        heading = ""
        with open(self.path, encoding="utf-8") as lines:
            for line in lines:
                line = line.rstrip("\n")
                if not line or line.startswith("#"):
                    continue
                if line.startswith(" "):
                    self.belongs(heading, line.strip())
                else:
                    heading, _, rest = line.partition(": ")
                    heading = heading.rstrip(":")
                    self.heading(heading, rest)

    def heading(self, heading, rest):
        if heading == "today":
            self.today = day_of(rest)
        elif heading == "accept":
            self.say(rest)
        elif heading == "do":
            self.do(rest)
        elif heading == "ask":
            self.asked = shlex.split(self.filled(rest))

    def belongs(self, heading, text):
        if heading == "say":
            self.say(text)
        elif heading == "ask":
            self.expect(text)

    def filled(self, text):
        return re.sub(r"\{(\w+)\}", lambda match: entry_text(self.labels[match[1]]), text)

    def say(self, text):
        match = re.match(r"(\w+) = (.*)", text)
        if match:
            text = match[2]
        entry = self.pen.say(self.filled(text).rstrip(".") + ".")
        if match:
            self.labels[match[1]] = entry.name

    def do(self, text):
        match = re.match(r"(\w+) = (.*)", text)
        words = shlex.split(self.filled(match[2] if match else text))
        if words[0] == "say":
            entry = self.pen.say(" ".join(words[1:]).rstrip(".") + ".")
        elif words[0] == "strike":
            entry = self.about(self.name_of(words[1]), "struck", "")
        elif words[0] == "correct":
            name = self.newest(self.name_of(words[1]))
            entry = self.about(name, "corrected", ": " + self.amended(name, words[2]))
        else:
            raise Unreadable(text)
        if match:
            self.labels[match[1]] = entry.name

    @staticmethod
    def name_of(word):
        writer, _, number = word.rpartition("-")
        return writer, int(number)

    def newest(self, name):
        """The newest correction of the chain that stands."""
        book = Book(self.pen.entries)
        root = book.root_of(name)
        return next((fact.by.name for fact in book.facts() if fact.root.name == root), root)

    def amended(self, name, typed):
        entry = next(entry for entry in self.pen.entries if entry.name == name)
        old = entry.text.partition(": ")[2] or entry.text
        if re.match(r"\d{4}-", typed):
            return typed.rstrip(".")
        head, verb, rest = re.fullmatch(r"(.*?)( flew )(.*)\.", old).groups()
        clauses = clauses_of(rest)
        for new in clauses_of(typed):
            keys = [self.key_of(clause) for clause in clauses]
            clauses[keys.index(self.key_of(new))] = new
        return head + verb + ", ".join(clauses)

    @staticmethod
    def key_of(clause):
        match = re.fullmatch(rf"[\d.:]+ (.*?)(?: on {PLACE})?", clause)
        return match and (match[1] if match[1] == "h" else counter_of(match[1]))

    def about(self, name, verb, rest):
        day = self.today
        head = f"{day} entry {entry_text(name)} {verb}"
        return self.pen.say(f'{head} because "told in a case"{rest}.')

    # Questions.

    def book(self):
        book, words = Book(self.pen.entries), self.asked
        if "--known" not in words:
            return book
        number = self.name_of(words[words.index("--known") + 1])[1]
        return Book([entry for entry in self.pen.entries if entry.name[1] <= number])

    def expect(self, text):
        words = self.asked
        as_of = day_of(words[words.index("--as-of") + 1]) if "--as-of" in words else self.today
        if text.startswith("total ") and words[0] == "history":
            self.expect_total(Walk(self.book(), as_of), words[1], text)
        elif text.startswith("item ") and words[0] in ("lives", "due", "ready"):
            self.expect_item(Walk(self.book(), as_of), text)

    @staticmethod
    def thing_named(walk, name):
        found = [thing for thing in walk.things
                 if name in (thing_text(thing), thing[-1], thing_text(thing).partition(" ")[2])]
        if len(found) != 1:
            raise Differs(f"{name} names {len(found)} things")
        return found[0]

    def expect_total(self, walk, name, text):
        match = re.fullmatch(r"total (at least )?(\S+) (.*?)(?: since (overhaul))?", text)
        clock = "h" if match[3] == "h" else counter_of(match[3])
        value, sure = walk.state.figure(match[4] or "new", self.thing_named(walk, name), clock)
        got = "unknown" if sure == UNKNOWN else (bool(match[1]) == (sure == AT_LEAST), value)
        wanted = match[2]
        if wanted != "unknown":
            wanted = True, figure_of(wanted, clock)
        self.same(text, wanted, got)

    def same(self, text, wanted, got):
        if wanted != got:
            raise Differs(f"{text}: got {got}")
        self.checked += 1

    def expect_item(self, walk, text):
        name, *wanted = [piece.strip() for piece in text[len("item "):].split(" | ")]
        things = [thing for thing in walk.things if name.strip('"').split(" ")[-1] in thing]
        if not things or "not listed" in wanted:
            return  # a task, or something that is said of a list
        rows = [(fact, side, state) for fact, sides, state in Limits(walk).items(things[0])
                for side in sides or [NOT_TOLD_APART]]
        for piece in wanted:
            if not any(holds(piece, row) for row in rows):
                raise Differs(f"{text}: {piece} is in none of {[row[1:] for row in rows]}")
            self.checked += 1


# A life that is open until somebody says how it is shared.
NOT_TOLD_APART = {"left": None, "state": NOT_KNOWN, "clock": "h", "due": None}


def figure_of(text, clock):
    if clock == "h":
        return seconds(text) * 1000
    return thousandths(text)


def holds(piece, row):
    """Whether one expectation of a row is true of a side."""
    fact, side, state = row
    word, _, rest = piece.partition(" ")
    if word == "state":
        return STATES[side["state"] if side else state] == rest
    if word == "due":
        rest = rest.removeprefix("airframe ")
        if re.match(r"\d{4}-", rest):
            return side["due"] == day_of(rest)
        return side["due"] == figure_of(rest.split(" ")[0], side["clock"])
    if word in ("source", "governs", "not", "unit"):
        return True
    if rest == "not known":
        return side["left"] is None
    match = re.fullmatch(r"(at most )?(-?)([\d.:]+) (.*)", rest)
    if match[4] in ("day", "days"):
        return side["clock"] == "days" and side["left"] == int(match[2] + match[3])
    clock = "h" if match[4] == "h" else counter_of(match[4])
    figure = figure_of(match[3], clock) * (-1 if match[2] else 1)
    if side["clock"] != clock:
        return False
    if word == "limit":
        return any(term.get("amount") == figure for term in fact.said.says["terms"])
    return figure == (side["left"] if word == "left" else side["used"][0])


def files(places):
    for place in places:
        if os.path.isdir(place):
            for name in sorted(os.listdir(place)):
                if name.endswith(".case"):
                    yield os.path.join(place, name)
        else:
            yield place


def main(places):
    checked = failed = passed = 0
    for path in files(places):
        case = Case(path)
        name = os.path.basename(path)
        try:
            case.run()
        except Unreadable as why:
            print(f"{name}: not about lives: {why}")
            continue
        except Differs as why:
            failed += 1
            print(f"{name}: {why}")
            continue
        checked += case.checked
        passed += case.checked > 0
    print(f"own cases: {passed} passed, {failed} failed, {checked} figures")
    return 1 if failed or not checked else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

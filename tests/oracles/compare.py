#!/usr/bin/env python3
"""Holds the program's answers about lives against those of the engine in this folder, over
histories that are drawn with the hard shapes by design.

  compare.py --answers PROGRAM [--first N] [--count N] [--show N]

PROGRAM is life_answers. TIMEWORN_SEED=N takes the histories from N on, TIMEWORN_LONG=1 ten times as
many. --show prints a history and stops. Prints how often each shape was drawn and bit. Fails on any
difference, which is cut down to what is needed for it and printed as a case, and if a shape bites
in fewer than four of a hundred histories."""

import argparse
import os
import re
import subprocess
import sys

from answers import Answers, is_safe, left_in
from cut import cut_down
from open_points import OPEN, open_point
from shapes import SHAPES, make
from world import CLOCKS

AT_ONCE = 250  # histories for one start of the program
SHOWN = 5      # differences that are cut down and printed
WITHOUT = {name: (name,) for name in SHAPES}


def with_clocks(history):
    """The text of a history with the clocks that are asked for."""
    head, _, rest = history.text().partition("\n")
    return "\n".join([head] + [f"clock {clock}" for clock in CLOCKS] + [rest])


def ask_program(program, histories):
    """The program's answers: for each history, by day and what is asked."""
    done = subprocess.run([program], input="".join(with_clocks(one) for one in histories),
                          capture_output=True, text=True, check=False)
    if done.returncode:
        raise SystemExit(f"{program} broke off: {done.stderr}\nafter {done.stdout[-200:]}")
    found = []
    for line in done.stdout.splitlines():
        if line.startswith("history "):
            found.append({})
        elif line != "end":
            key, _, value = line.partition(" = ")
            found[-1][(key[:10], key[11:])] = value
    return found


def own_answers(history):
    """This engine's answers, with what must be asked about."""
    book = history.book()
    lines, questions = {}, set()
    for day in history.days:
        answers = Answers(book, day, CLOCKS)
        lines |= {(str(day), key): value for key, value in answers.lines().items()}
        questions |= {(str(day), question) for question in answers.questions}
    return lines, questions


def differences(own, theirs):
    """What the two engines say differently: (day, key, own, theirs)."""
    lines, questions = own
    found, seen = [], set()
    for (day, key), values in lines.items():
        if key.startswith("shared "):
            seen |= {(day, "item " + name) for name in key[len("shared "):].split(", ")}
            found += differs_shared(day, key, theirs)
            continue
        seen.add((day, key))
        got = theirs.get((day, key))
        if not (got == values[0] if len(values) == 1 else is_safe(key, values, got)):
            found.append((day, key, " or ".join(str(value) for value in values), got))
    asked = {(day, key.removeprefix("question ")) for day, key in theirs
             if key.startswith("question ")}
    found += [(day, "question " + name, (day, name) in questions, (day, name) in asked)
              for day, name in sorted(questions ^ asked)]
    found += [(*key, None, value) for key, value in theirs.items()
              if key[1].startswith("item ") and key not in seen]
    return sorted(found, key=str)


def differs_shared(day, key, theirs):
    """One of the limits at least must be told, and none of them may have anything left."""
    names = key[len("shared "):].split(", ")
    told = [theirs[(day, "item " + name)] for name in names if (day, "item " + name) in theirs]
    sides = [value for (when, what), value in theirs.items() if when == day
             and what.startswith("side ") and what[5:].rpartition("|")[0] in names]
    is_right = set(told) == {"not known"} and all(left_in(side) < -10**17 for side in sides)
    return [] if is_right else [(day, key, "not known", f"{told} {sides}")]


def bites(history, shape, own):
    """Whether the answers on the last day would be others without the rule of the shape."""
    leave_out = history.lines_of_shape.get(shape, ())
    last = history.days[-1]
    others = Answers(history.book(leave_out), last, CLOCKS, WITHOUT[shape])
    mine = {key[1]: value for key, value in own[0].items() if key[0] == str(last)}
    return others.lines() != mine


class Tally:
    """How often each shape was drawn, and how often it mattered."""

    def __init__(self):
        self.histories = 0
        self.drawn = dict.fromkeys(SHAPES, 0)
        self.biting = dict.fromkeys(SHAPES, 0)
        self.open = dict.fromkeys(OPEN, 0)

    def count(self, history, own):
        self.histories += 1
        for shape in history.shapes:
            self.drawn[shape] += 1
            self.biting[shape] += bites(history, shape, own)

    def table(self):
        rows = [f"{'shape':20}{'drawn':>8}{'biting':>8}"]
        rows += [f"{name:20}{self.drawn[name]:8}{self.biting[name]:8}" for name in SHAPES]
        rows += [f"{'open':20}{number:16}  {name}" for name, number in self.open.items()]
        return "\n".join(rows)

    def settled(self, found, history, own):
        """Counts what belongs to open points; what is left is new."""
        points = [open_point(one, history, own) for one in found]
        for name in set(points) - {None}:
            self.open[name] += 1
        return [one for one, point in zip(found, points) if point is None]

    def faults(self):
        found = [f"{name} bites too seldom" for name in self.too_seldom()]
        return found + [f"{name} occurs no more: take it out of open_points.py"
                        for name, number in self.open.items() if not number]

    def too_seldom(self):
        return [name for name in SHAPES if self.biting[name] * 100 < self.histories * 4]


def what(key):
    """What an answer is about, without the names of entries, which change as lines go."""
    return re.sub(r"[0-9A-Z]{5}-\d+", "", key)


def asked_about(theirs):
    """What the program asks about: a history that is cut down to one with other questions is no
    longer the same, since a sentence without which another makes no sense is gone."""
    return {key for _, key in theirs if key.startswith("question ")}


def show_difference(program, history, found):
    """The smallest history in which the engines still differ, with both answers."""
    about = {what(key) for _, key, *_ in found}
    asked = asked_about(ask_program(program, [history])[0])
    tally = Tally()

    def still(candidate):
        try:
            own = own_answers(candidate)
            theirs = ask_program(program, [candidate])[0]
            others = tally.settled(differences(own, theirs), candidate, own)
            return asked_about(theirs) <= asked and any(what(key) in about for _, key, *_ in others)
        except (SystemExit, AssertionError, KeyError, ValueError):
            return False

    small = cut_down(history, still)
    own = own_answers(small)
    found = tally.settled(differences(own, ask_program(program, [small])[0]), small, own)
    print(f"\nhistory {history.number} ({', '.join(history.shapes)}), cut down; "
          f"TIMEWORN_SEED={history.number} draws it first")
    print(small.case())
    for day, key, own, theirs in found:
        print(f"# {day} {key}: this engine {own}; the program {theirs}")


def compare(program, first, count):
    tally, differing = Tally(), []
    for begin in range(first, first + count, AT_ONCE):
        histories = [make(number) for number in range(begin, min(begin + AT_ONCE, first + count))]
        for history, theirs in zip(histories, ask_program(program, histories), strict=True):
            own = own_answers(history)
            tally.count(history, own)
            found = tally.settled(differences(own, theirs), history, own)
            if found:
                differing.append(history.number)
                if len(differing) <= SHOWN:
                    show_difference(program, history, found)
    print(tally.table())
    print(f"oracles: {tally.histories} histories from {first}, {len(differing)} differ"
          + (f": {differing[:50]}" if differing else ""))
    faults = tally.faults() if count >= 500 else []
    for fault in faults:
        print(fault)
    return 1 if differing or faults else 0


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--answers", required=True)
    parser.add_argument("--first", type=int, default=1)
    parser.add_argument("--count", type=int, default=5000)
    parser.add_argument("--show", type=int)
    asked = parser.parse_args()
    if asked.show:
        print(make(asked.show).text())
        return 0
    times = 10 if os.environ.get("TIMEWORN_LONG") == "1" else 1
    count = asked.count * times
    first = int(os.environ.get("TIMEWORN_SEED", 1)) + (asked.first - 1) * times
    print(f"seed {first}")
    return compare(asked.answers, first, count)


if __name__ == "__main__":
    sys.exit(main())

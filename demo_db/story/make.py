#!/usr/bin/env python3
"""Writes story.record: three years of an invented operator, one sentence a line.

The chance in it is fixed, so the same bytes come out every time:

    python3 demo_db/story/make.py > demo_db/story.record

engine.py states the engine model; ../README.md tells the stories. All of it is invented: aircraft,
engines, makers, part numbers, limits, sources, people.
"""

import sys

sys.dont_write_bytecode = True

from crafts import Fleet  # noqa: E402
from days import Life  # noqa: E402
from paper import Paper  # noqa: E402
from rules import begin_rules, share_lives  # noqa: E402
from things import (  # noqa: E402
    begin_fen, begin_low, begin_people, begin_tur, begin_two, sign_on_paper,
)
from upkeep import begin_upkeep, upkeep_of  # noqa: E402
from works import Works  # noqa: E402
from works_two import WorksOfTwins  # noqa: E402


def written():
    """The whole record as lines."""
    paper = Paper()
    fleet = Fleet()
    paper.note("Three Winters, an invented operator: three years of four aircraft.")
    paper.note("Made by story/make.py; README.md here tells the stories.")
    paper.note()
    begin_people(paper)
    begin_low(paper, fleet.low)
    begin_fen(paper, fleet.fen)
    begin_two(paper, fleet.two)
    begin_tur(paper, fleet.tur)
    begin_rules(paper)
    fleet.blade_limit = paper.name_of("part number PN-4411 retires")
    upkeep = upkeep_of(fleet)
    begin_upkeep(paper, fleet, upkeep)
    Life(paper, fleet, upkeep, (Works(paper, fleet), WorksOfTwins(paper, fleet))).live()
    sign_on_paper(paper)
    share_lives(paper)
    return paper


def main():
    print("\n".join(written().lines))


if __name__ == "__main__":
    main()

#!/usr/bin/env python3
"""Prints the table of ../README.md: each kind, counter, class, policy, state and story, with the
first entry that shows it and words of its sentence. A test holds the table to the record.

    python3 demo_db/story/table.py
"""

import sys

sys.dont_write_bytecode = True

from make import written  # noqa: E402
from paper import FIRST_NUMBER, WRITER  # noqa: E402

# The name in its sort, and words that stand in the sentence: the first that has them is named.
KINDS = (
    ("base-joins", "joins, days in"), ("person-holds", "holds certificate"),
    ("person-ends", '" ends, because "moved away"'), ("aircraft-is", 'is model "Stiltwing 2"'),
    ("engine-is", "E-3001 is made"), ("part-is", 'is "emergency beacon battery"'),
    ("has-place", "has optional place"), ("brings-forward", "brings forward airframe"),
    ("counts-hours", "counts airframe hours from clock"),
    ("meter-changed", "changed collective meter"), ("meter-lost", 'lost "flight" meter'),
    ("counting-rule", "0.5 each landing"), ("limit", "MOD-2 overhaul at"),
    ("mixed-limit", "retires when full cycles"),
    ("shares-by-fractions", "DM-8 shares lives by fractions"),
    ("shorter-limit-stays", "PN-4411 shares lives, shorter limit"),
    ("on-condition", "SB-2 on condition"), ("task", '"hoist cable" on'),
    ("task-ends", "ZZ-TUR ends, because"), ("next-due", "is next due at"),
    ("temperature-limit", "TS-40 idle limit"), ("chart-row", "for cruise at 4000 ft and 10 C"),
    ("start-limit", "TS-40 start limit"), ("start-check", "start check, battery"),
    ("exceedance-limit", "TS-62 exceedance limit"), ("trend-settings", "trend, floor 10 C"),
    ("plan", "plans 15.0 h a month"), ("reviewed", "reviewed"), ("flew", "flew"),
    ("ran", "ran 0.2 h"), ("tried", "tried 2 starts"), ("unaccounted", "unaccounted 0.6 h"),
    ("started", "started, battery"), ("reading", "E-3001 cruise"),
    ("exceeded", "exceeded torque"),
    ("looked-into", "looked into"), ("engine-event", "washed"),
    ("done", "done on"), ("fitted", "fitted to"), ("removed", "removed from"),
    ("overhauled", "overhauled"), ("corrected", "corrected because"), ("struck", "struck because"),
    ("key-ends", 'ends, because "laptop lost"'), ("signed", "signed on paper"),
    ("counts-work", "counts work when recorded"),
)
COUNTERS = (
    ("starts", "1 start,"), ("flights", "6 flights, 6 landings"),
    ("landings", "3 landings, collective"),
    ("lifts", "4 lifts,"), ("transitions", "3 transitions"), ("torque events", "1 torque event,"),
    ("hoist lifts", "5 hoist lifts"), ("run-on landings", "1 run-on landing,"),
    ("gas-generator cycles", "counts gas-generator cycles"),
    ("power-turbine cycles", "counts power-turbine cycles"), ("full cycles", "1 full cycle,"),
    ("abbreviated cycles", "2 abbreviated cycles"), ("cycles", "TP-9 counts cycles"),
    ("own", '3 "bucket drops"'),
)
CLASSES = (
    ("airworthiness limitation", "class airworthiness limitation"), ("life", "class life"),
    ("overhaul", "class overhaul"), ("shelf", "class shelf"), ("service", "class service"),
)
TASK_CLASSES = (
    ("task", 'task "progressive inspection" on aircraft ZZ-TUR every'),
    ("inspection", 'inspection "annual inspection" on'),
    ("service", 'service "300-hour service" on aircraft ZZ-TUR every'),
    ("storage step", 'storage step "turn the rotors" on'),
    ("directive", "directive D-23-07 on model"),
)
POLICIES = (
    ("next from done", "every 100.0 h since done"), ("next from due", "next from due"),
    ("excess counts", "excess counts"), ("over to the shop", "to reach the shop"),
    ("whichever comes first", "every 300.0 h or 18 months"),
    ("first at", "first at the latest of"), ("once", "first at 250.0 h after"),
    ("stated next due", "is next due at"), ("any of its terms", "or 9000 gas-generator cycles"),
    ("the latest of its terms", "at the latest of 150.0 h"),
    ("when exceeding", "retires when exceeding"),
    ("on one model", 'on model "Larkwing 5"'),
    ("instead of an entry", "instead of entry"),
)
STATES = (
    ("ok", 'inspection "100-hour inspection" on aircraft ZZ-LOW'),
    ("soon", "SH-7 retires at 190 run-on landings"),
    ("due", 'storage step "turn the rotors" on aircraft ZZ-TWO every'),
    ("over", 'inspection "annual inspection" on aircraft ZZ-TUR every'),
    ("not known", "LG-2 overhaul at 5000 flights"),
)
STORIES = (
    ("the losing engine", "E-3001 cruise"), ("its loaner comes", "E-3077 fitted to"),
    ("it comes back", 'paper "release 77-24"'),
    ("the wash", "E-3002 washed"), ("the disc in the module", "T1 D-91 fitted to part MOD-2 M-61"),
    ("the module in the engine", "MOD-2 M-61 fitted to engine"),
    ("the meter change", "changed collective meter, out"),
    ("the dead meter", 'lost "flight" meter at'),
    ("the worn power turbine", "engine 2 E-4002 cruise"),
    ("the low torque gauge, changed", "E-5001 torque gauge changed"),
    ("the annual that was the last", "2025-02-20 inspection \"annual inspection\" done"),
    ("late paper", 'paper "sheet 211"'), ("work that knew of it", "sum to"),
    ("the first correction", '"two landings were left out"'),
    ("the correction of that", '"the pilot counted again"'), ("the strike", '"it was engine 2"'),
    ("the unknown spare", "B-95 brings forward hours unknown"),
    ("the hot start of the weak battery", "peak 842 C"),
    ("it was looked into", '"turbine inspected, battery changed"'),
    ("the hot start that stands", "peak 836 C"),
    ("the exceedance looked into", '"gearbox and mast inspected, nothing found"'),
    ("landing gear without its hours", "LG-2 L-8 fitted to"),
)
SORTS = (("kind", KINDS), ("counter", COUNTERS), ("limit class", CLASSES),
         ("task class", TASK_CLASSES), ("policy", POLICIES), ("state", STATES),
         ("story", STORIES))


def rows(sentences):
    yield "| what | which | entry | words in it |"
    yield "|---|---|---|---|"
    yield f"| kind | record-begins | {WRITER}-1 | begins, language 1 |"
    for sort, names in SORTS:
        for name, words in names:
            found = [at for at, said in enumerate(sentences) if words in said]
            if not found:
                sys.exit(f"No sentence shows {sort} {name}: {words}")
            yield f"| {sort} | {name} | {WRITER}-{FIRST_NUMBER + found[0]} | {words} |"


if __name__ == "__main__":
    print("\n".join(rows(written().sentences)))

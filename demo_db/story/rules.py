"""What the approved data ask for, all of it invented: limits, charts, checks and tasks."""

from engine import IDLE_LIMIT, TP_9, TS_40, TS_62
from things import BEGIN

LIMITS = (
    'model TS-40 overhaul at 3500.0 h since overhaul, class overhaul, source "TS-40 manual 5-10"',
    'model TS-62 overhaul at 3000.0 h since overhaul, class overhaul, source "TS-62 manual 5-10"',
    'model TP-9 overhaul at 3600.0 h since overhaul, class overhaul, source "TP-9 manual 5-10"',
    "part number MOD-2 overhaul at 3500.0 h since overhaul, class overhaul, "
    'source "TS-40 manual 5-10"',
    "part number T1 retires at 6000.0 h since new or 9000 gas-generator cycles since new, "
    'class life, source "TS-40 manual 5-20"',
    "part number P4 retires at 12000 power-turbine cycles since new, class life, "
    'source "TS-62 manual 5-20"',
    "part number W3 retires at 9000 full cycles since new or 4000 abbreviated cycles since new "
    'or 12000 cycles since new, class life, source "TP-9 manual 5-20"',
    'part number PN-4411 retires at 2300.0 h since new, on model "Larkwing 5", '
    'class airworthiness limitation, source "Larkwing 5 limitations", revision "4"',
    "part number GB-12 overhaul at 3000.0 h since overhaul or 300 torque events since overhaul, "
    'class overhaul, source "Larkwing 5 manual 5-10"',
    "part number GB-62 overhaul at 2500.0 h since overhaul, class overhaul, "
    'source "Stiltwing 2 manual 5-10"',
    'part number HK-3 retires at 3000 lifts since new, class service, source "hook card"',
    'part number SH-7 retires at 190 run-on landings since new, class service, '
    'source "Larkwing 5 manual 5-10"',
    'part number BK-1 retires at 4000 "bucket drops" since new, class service, '
    'source "bucket card"',
    "part number FL-9 retires when exceeding 450.0 h since fitting, class service, "
    'source "filter card"',
    'part number BAT-1 retires at 5 years since manufacture, class shelf, source "beacon card"',
    'part number HO-5 overhaul at 1100 hoist lifts since overhaul, class service, '
    'source "hoist card"',
    'part number DM-8 retires at 9000 transitions since new, class life, '
    'source "Stiltwing 2 limitations"',
    "part number PR-55 overhaul at 3000.0 h since overhaul or 5 years since overhaul, "
    'class overhaul, source "propeller manual 61-10"',
    'part number ST-4 overhaul at 1500 starts since overhaul, class overhaul, '
    'source "Ganderel 1 manual 5-10"',
    'part number LG-2 overhaul at 5000 flights since overhaul or 4000.0 h since overhaul, '
    'class overhaul, source "Ganderel 1 manual 5-10"',
    'part number SB-2 on condition, source "Larkwing 5 manual 24-30"',
    "model TS-40 counts gas-generator cycles, 1 each start, 0.5 each landing, "
    'source "TS-40 manual 5-20"',
    'model TS-62 counts power-turbine cycles, 1 each flight, source "TS-62 manual 5-20"',
    'model TP-9 counts cycles, 1 each start, 0.25 each landing, source "TP-9 manual 5-20"',
)

CHECKS = (
    'model TS-40 start limit 810 C for 10 s, start limit 870 C for 0 s, '
    'source "Larkwing 5 flight manual 2-4"',
    "model TS-40 start check, battery at least 24.5 V, lowest at least 17 V, "
    "light-off within 8 s, peak at most 790 C, idle within 30 s, generator 27.5 to 28.8 V, "
    'source "Larkwing 5 flight manual 4-2"',
    "model TS-40 exceedance limit temperature 780 C for 10 s, "
    'exceedance limit torque 100 % for 5 s, source "Larkwing 5 flight manual 2-5"',
    "model TS-62 exceedance limit torque 104 % for 5 s, "
    'exceedance limit gas generator 104 % for 10 s, source "Stiltwing 2 flight manual 2-5"',
    'model TS-62 start limit 830 C for 8 s, source "Stiltwing 2 flight manual 2-4"',
    'model TP-9 start limit 850 C for 5 s, source "Ganderel 1 flight manual 2-4"',
)

TASKS = (
    'inspection "annual inspection" on aircraft ZZ-LOW every 12 calendar months',
    'inspection "annual inspection" on aircraft ZZ-FEN every 12 calendar months',
    'inspection "annual inspection" on aircraft ZZ-TWO every 12 calendar months',
    'inspection "annual inspection" on aircraft ZZ-TUR every 12 calendar months',
    'inspection "100-hour inspection" on aircraft ZZ-LOW every 100.0 h since done, '
    "excess counts, over 10.0 h to reach the shop",
    'inspection "100-hour inspection" on aircraft ZZ-FEN every 100.0 h since done, '
    "excess counts, over 10.0 h to reach the shop",
    'inspection "phase inspection" on aircraft ZZ-TWO every 150.0 h, next from due',
    'service "300-hour service" on aircraft ZZ-TUR every 300.0 h or 18 months',
    'task "hoist cable" on aircraft ZZ-TWO every 200 hoist lifts',
    'storage step "turn the rotors" on aircraft ZZ-TWO every 30 days',
    'task "progressive inspection" on aircraft ZZ-TUR every 50.0 h',
    "directive D-23-07 on model TS-40 first at the latest of 150.0 h after 2023-03-06 and "
    '500.0 h since new, every 200.0 h since done, source "directive D-23-07", revision "1"',
    'directive D-25-11 on part number PR-55 first at 250.0 h after 2025-11-03, '
    'source "directive D-25-11", revision "1"',
)


def chart_rows(model, name, source):
    """The maker's chart for cruise, one sentence for each altitude and air."""
    for altitude in model.altitudes:
        for air in model.airs:
            points = " and ".join(f"{model.allowed(torque, altitude, air):.1f}".removesuffix(".0")
                                  + f" C at {torque} %" for torque in model.torques)
            yield (f'model {model.name} chart "{name}" for cruise at {altitude} ft and {air} C '
                   f'allows {points}, source "{source}"')


# Said last, so that the entries before them keep their numbers.
SHARED = (
    "part number W3 retires when full cycles / 20000 + abbreviated cycles / 9000 reach 1, "
    'class life, source "TP-9 manual 5-20"',
    'part number PN-4411 shares lives, shorter limit stays, source "Larkwing 5 limitations"',
    'part number DM-8 shares lives by fractions, source "Stiltwing 2 limitations"',
)


def share_lives(paper):
    paper.note()
    paper.note("Lives that several counters or models use up together")
    for sentence in SHARED:
        paper.say(f"{BEGIN} {sentence}")


def begin_rules(paper):
    paper.note()
    paper.note("What the approved data ask for (all of it invented)")
    for limit in LIMITS:
        paper.say(f"{BEGIN} {limit}")
    for model, source in ((TS_40, "Larkwing 5 flight manual 5-12"),
                          (TS_62, "Stiltwing 2 flight manual 5-9"),
                          (TP_9, "Ganderel 1 flight manual 5-4")):
        paper.note(f"The chart of {model.name}")
        for row in chart_rows(model, "C1", source):
            paper.say(f"{BEGIN} {row}")
        paper.say(f'{BEGIN} model {model.name} idle limit {IDLE_LIMIT} C, source "{source}"')
        paper.say(f"{BEGIN} model {model.name} trend, floor 10 C, steady at least 3 min, "
                  "serial correlation 0.2")
    paper.note("Starts and exceedances")
    for check in CHECKS:
        paper.say(f"{BEGIN} {check}")
    paper.note("What is to be done")
    for task in TASKS:
        if "source" in task:
            paper.say(f"{BEGIN if 'D-25' not in task else '2025-11-03'} {task}")
        else:
            paper.say(f'{BEGIN} {task}, source "maintenance programme"')

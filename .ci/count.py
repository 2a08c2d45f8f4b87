"""Adds up the test cases of all executables that ctest ran, and closes with `N passed, N failed`.

Usage: count.py BUILD/results.xml ... [NAME=passed|failed ...]

Each executable closes with `cases: N passed, N failed`. One without such a line counts as one case.
One that ctest calls failed while its own line tells of no failure (a leak found at exit, a crash, a
timeout) counts as one failure more, so that nothing that went wrong is lost in the sum.
"""

import os
import re
import sys
import xml.etree.ElementTree as ElementTree

CASES = re.compile(r"^cases: (\d+) passed, (\d+) failed\s*$", re.MULTILINE)


def cases_of(test):
    """What one executable comes to: (passed, failed)."""
    lines = CASES.findall(test.findtext("system-out") or "")
    passed = sum(int(line[0]) for line in lines)
    failed = sum(int(line[1]) for line in lines)
    has_passed = test.get("status") == "run"
    if has_passed and not lines:
        passed = 1
    if not has_passed and failed == 0:
        failed = 1
    return passed, failed


def counts_of(results):
    """What the executables of one build come to, by name."""
    counts = {}
    try:
        for test in ElementTree.parse(results).getroot().iter("testcase"):
            counts[test.get("name")] = cases_of(test)
    except (OSError, ElementTree.ParseError) as trouble:
        print(f"The results of ctest cannot be read: {trouble}")
    return counts or {"any test at all": (0, 1)}


def main(*given):
    counts = {}
    for one in given:
        if one.endswith(".xml"):
            build = os.path.basename(os.path.dirname(one))
            for name, count in counts_of(one).items():
                counts[f"{name}, {build}"] = count
        else:
            name, _, outcome = one.rpartition("=")
            counts[name] = (1, 0) if outcome == "passed" else (0, 1)

    for name, (passed, failed) in counts.items():
        print(f"{name}: {passed} passed, {failed} failed")
    all_passed = sum(count[0] for count in counts.values())
    all_failed = sum(count[1] for count in counts.values())
    print(f"{all_passed} passed, {all_failed} failed")
    return 1 if all_failed else 0


sys.exit(main(*sys.argv[1:]))

"""Where the program is known to answer otherwise than the pages ask. Each is counted and printed; the
comparison fails as soon as one occurs no more, so that it is taken out here."""

import re

from cut import names_in


def is_off_since_fitting(day, key, history, own):
    """design 5: off the aircraft a life is frozen, and since fitting restarts at each fitting. The
    program shows a limit since fitting as unused as soon as the thing is off."""
    if not key.startswith(("side ", "item ")):
        return False
    name, thing = key[len("side "):].split("|")[:2]
    where = own[0].get((day, "where " + thing), ())
    names = names_in(history.lines)
    return "-" in where and " since fitting" in history.lines[names.index(name)][1]


def is_newest_of_two_corrections(day, key, _history, own):
    """practice.md C5: of two corrections made apart the one with less life left counts until it is
    decided. The program takes one of them for everything."""
    if (day, "two corrections") not in own[1]:
        return False
    # If the one that it takes is of a later day, it does not even ask.
    return key == "question two corrections" or len(own[0].get((day, key), ())) > 1


def is_due_beside_not_known(day, key, _history, own):
    """design 7: no beats not known, for limits too. With one side due and another not known the
    program heads the limit with not known."""
    return key.startswith("item ") and own[0].get((day, key)) == ("due",)


def is_before_its_own_rule(day, key, history, own):
    """design 4: a rule holds from its day. On days before a disc's own rule the rule of its engine
    counted; the program counts nothing there once the disc has one."""
    about_disc = "|cycles|" in key or key.startswith(("side ", "item "))
    return about_disc and "part DI-3 D-7" in key and any(
        line[0] == "say" and "part number DI-3 counts cycles" in line[1]
        and "2026-01-01 part" not in line[1] for line in history.lines)


def is_within_a_flight_of_days(_day, key, history, _own):
    """design 4: a rule holds from its day. Which of the flights of several days came before it
    nobody can tell, so the dearer rule counts; the program takes the rule of the last day."""
    said = [line[1] for line in history.lines if line[0] == "say"]
    spans = [(text[-11:-1], text[:10]) for text in said if re.search(r", since \S+\.$", text)]
    days = re.findall(r"also for flights since (\S{10})", "\n".join(said))
    is_read = "|cycles|" in key or key.startswith(("side ", "item "))
    return is_read and any(first < day <= last for day in days for first, last in spans)


OPEN = {
    "a rule from within a flight of several days": is_within_a_flight_of_days,
    "due beside not known": is_due_beside_not_known,
    "before a disc's own counting rule": is_before_its_own_rule,
    "a limit since fitting of what is off": is_off_since_fitting,
    "of two corrections made apart not the safer": is_newest_of_two_corrections,
}


def open_point(difference, history, own):
    """The name of the point to which a difference belongs; None if it is a new one."""
    day, key, *_ = difference
    for name, belongs in OPEN.items():
        if belongs(day, key, history, own):
            return name
    return None

"""Where the program is known to answer otherwise than the pages ask. Each is counted and printed; the
comparison fails as soon as one occurs no more, so that it is taken out here."""

def is_newest_of_two_corrections(day, key, _history, own):
    """practice.md C5: of two corrections made apart the one with less life left counts until it is
    decided. The program takes one of them for everything."""
    if (day, "two corrections") not in own[1]:
        return False
    # If the one that it takes is of a later day, it does not even ask.
    return key == "question two corrections" or len(own[0].get((day, key), ())) > 1


OPEN = {
    "of two corrections made apart not the safer": is_newest_of_two_corrections,
}


def open_point(difference, history, own):
    """The name of the point to which a difference belongs; None if it is a new one."""
    day, key, *_ = difference
    for name, belongs in OPEN.items():
        if belongs(day, key, history, own):
            return name
    return None

"""Where the program is known to answer otherwise than the pages ask. Each is counted and printed; the
comparison fails as soon as one occurs no more, so that it is taken out here."""

OPEN = {}


def open_point(difference, history, own):
    """The name of the point to which a difference belongs; None if it is a new one."""
    day, key, *_ = difference
    for name, belongs in OPEN.items():
        if belongs(day, key, history, own):
            return name
    return None

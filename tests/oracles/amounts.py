"""Figures: whole numbers, each with how surely it is known; hours and days as sentences write them.

Hours are counted in thousandths of a second, everything else in thousandths of one. Nothing here
is ever a fraction of a machine's own kind."""

import calendar
import datetime

EXACT, BY_DEFAULT, AT_LEAST, UNKNOWN = range(4)
SURE = ("exact", "default", "at least", "unknown")

ZERO = (0, EXACT)
NOBODY_KNOWS = (0, UNKNOWN)

HOUR = 3600


def add(one, other):
    """The sum of two figures, as sure as the worse of them."""
    return one[0] + other[0], max(one[1], other[1])


def times(figure, weight):
    """A count of whole events, each with a weight in thousandths."""
    return figure[0] * weight // 1000, figure[1]


def figure_text(figure):
    """As answers write it: `exact 4711`; what is not known has no figure."""
    value, sure = figure
    return "unknown" if sure == UNKNOWN else f"{SURE[sure]} {value}"


def thousandths(text):
    """A decimal of at most three places as a whole number: 1.12 is 1120."""
    whole, _, rest = text.partition(".")
    return int(whole) * 1000 + int((rest + "000")[:3])


def seconds(text):
    """Hours as they are written, 1.7 or 1:42 or 1:42:30, in whole seconds."""
    if ":" in text:
        hours, minutes, *rest = (int(piece) for piece in text.split(":"))
        return hours * HOUR + minutes * 60 + (rest[0] if rest else 0)
    whole, _, rest = text.partition(".")
    return int(whole) * HOUR + int((rest + "00")[:2]) * 36


def hours_text(whole):
    """Whole seconds as canonical hours: hundredths if exact, else h:mm, else h:mm:ss."""
    if whole % 36 == 0:
        hundredths = whole // 36
        tail = f"{hundredths % 100:02}"
        return f"{hundredths // 100}.{tail[0]}{tail[1] if tail[1] != '0' else ''}"
    clock = f"{whole // HOUR}:{whole // 60 % 60:02}"
    return clock if whole % 60 == 0 else f"{clock}:{whole % 60:02}"


def day_of(text):
    return datetime.date.fromisoformat(text)


def days_later(day, number):
    return day + datetime.timedelta(days=number)


def months_later(day, number):
    """The same day of a later month, or the last day of a shorter one (Reg. 1182/71 Art. 3)."""
    month = day.year * 12 + day.month - 1 + number
    year, month = month // 12, month % 12 + 1
    return datetime.date(year, month, min(day.day, calendar.monthrange(year, month)[1]))


def end_of_month(day):
    return day.replace(day=calendar.monthrange(day.year, day.month)[1])


def quarter_after(text):
    """The first day of the quarter that follows 2Q2010: there the shelf clock starts (R13)."""
    quarter, year = int(text[0]), int(text[2:])
    return datetime.date(year + quarter // 4, quarter % 4 * 3 + 1, 1)

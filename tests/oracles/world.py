"""A small invented fleet on paper: what is flown, fitted and corrected, in sentences that are true
to one course of events. Chance alone decides what happens; shapes.py puts the hard things in.

Two aircraft, one of them a twin with unequal engines; a module with a disc inside; blades. A total
that a sentence states is the one of the book so far, so no doubt arises that was not meant."""

import datetime
import random

from amounts import hours_text
from chains import Book
from history import History, Pen, entry_text
from sentences import thing_text

KIT, TWN = ("aircraft", "ZZ-KIT"), ("aircraft", "ZZ-TWN")
E1, E2, E3 = ("engine", "TS-40", "E-1"), ("engine", "TS-40", "E-2"), ("engine", "TP-9", "E-3")
MODULE, DISC = ("part", "MOD-2", "M-4"), ("part", "DI-3", "D-7")
BLADE, SPARE = ("part", "PN-4411", "B-1"), ("part", "PN-4411", "B-2")
ENGINES = (E1, E2, E3)
FIRST_DAY = datetime.date(2026, 1, 1)
CLOCKS = ("h", "starts", "landings", "cycles", '"hook loads"')
TENTH = 360


class Line:
    """One sentence; {} in it stands for the names of the lines that it refers to."""

    def __init__(self, text, refers=(), base="K", hears=False):
        self.text = text
        self.refers = refers
        self.base = base
        self.hears = hears
        self.names_shape = None


class Craft:
    """What the book so far says of one aircraft, and what its meter shows."""

    def __init__(self, thing, model, total):
        self.thing = thing
        self.model = model
        self.total = total * 1000
        self.meter = None
        self.factor = 1000
        self.is_dead = False
        self.is_by_clock = False  # its source: took off and landed

    def service(self, seconds, by_clock=False):
        return seconds * (max(self.factor, 1000) if by_clock else self.factor)


class World:
    """Writes a history. What the shapes change, they change through these."""

    def __init__(self, number, shapes):
        self.number = number
        self.shapes = shapes
        self.chance = random.Random(number)
        self.lines = []
        self.day = FIRST_DAY
        self.hosts = {}
        self.crafts = {KIT: Craft(KIT, "Larkwing 5", 4300 * 3600 + 5 * TENTH),
                       TWN: Craft(TWN, "Heron 2", 5210 * 3600)}
        self.minute = None  # while a day is told by the clock
        self.held_back = []
        self.day_began_at = 0
        self.spans = set()  # days inside flights of several days

    # Chance.

    def happens(self, share):
        return self.chance.random() < share

    def whole(self, low, high):
        return low + int(self.chance.random() * (high - low + 1))

    def pick(self, values):
        return values[int(self.chance.random() * len(values))]

    # Writing.

    def say(self, text, *refers):
        line = Line(text, refers)
        self.lines.append(line)
        return line

    def on_day(self, text, *refers):
        """A sentence of today, with the clock time if the day is told by it."""
        time = ""
        if self.minute is not None:
            time = f" {self.minute // 60:02}:{self.minute % 60:02}Z"
            self.minute += 1
        return self.say(f"{self.day}{time} {text}", *refers)

    def pass_days(self, low=1, high=6):
        self.day += datetime.timedelta(days=self.whole(low, high))

    def by_clock(self):
        """From here on the day is told by clock times; end_day writes its flights in any order."""
        self.minute = 6 * 60
        self.day_began_at = len(self.lines)

    def end_day(self):
        if self.minute is not None:
            today = self.lines[self.day_began_at:]
            works = iter([line for line in today if " flew " not in line.text])
            self.chance.shuffle(today)
            # What is removed must be said before another takes its place.
            self.lines[self.day_began_at:] = [line if " flew " in line.text else next(works)
                                              for line in today]
        self.minute = None

    def free_day(self, line):
        """A day between that of a line and today on which nothing is said, else the line's own."""
        used = {other.text[:10] for other in self.lines}
        first = datetime.date.fromisoformat(line.text[:10])
        days = [first + datetime.timedelta(days=number)
                for number in range(1, (self.day - first).days)]
        free = [day for day in days if str(day) not in used and day not in self.spans]
        return self.pick(free) if free else first

    def correct(self, line, text, newest=None):
        """The day of the sentence stands in its text; newest is the newest of its chain."""
        return self.say(f'{self.day} entry {{}} corrected because "slip": {text}', newest or line)

    def strike(self, line):
        return self.say(f'{self.day} entry {{}} struck because "told wrongly".', line)

    # Flights.

    def fly(self, aircraft, held_back=False, **options):
        """One flight entry. held_back: it is written later than what comes after it."""
        craft = self.crafts[aircraft]
        seconds = options.get("seconds") or self.whole(2, 40) * TENTH
        if craft.factor != 1000:
            seconds = max(5, seconds // TENTH // 5 * 5) * TENTH
        by_clock = craft.is_dead and craft.meter is not None
        typed = seconds if "since" in options else self.typed(craft, seconds, by_clock)
        clauses = [f"flew {hours_text(typed)} h", *self.counts(aircraft)]
        clauses += self.how_timed(craft, seconds, by_clock, "since" in options)
        seconds = max(seconds, typed)
        if "since" in options:
            clauses.append(f"since {options['since']}")
            self.spans |= {options["since"] + datetime.timedelta(days=number)
                           for number in range((self.day - options["since"]).days + 1)}
        clauses += ["by clock"] * by_clock
        line = Line(f"{self.day} {thing_text(aircraft)} {', '.join(clauses)}.")
        line.service = craft.service(seconds, by_clock)
        line.by_clock = by_clock
        if held_back:
            self.held_back.append((aircraft, line))
        else:
            self.lines.append(line)
            craft.total += line.service
        return line

    def typed(self, craft, seconds, by_clock):
        """Sometimes other hours are typed than the source shows: the larger count."""
        has_source = craft.is_by_clock or craft.meter is not None and not by_clock
        if has_source and craft.factor == 1000 and self.happens(0.08):
            return max(TENTH, seconds + self.pick((-2, -1, 1, 2)) * TENTH)
        return seconds

    def how_timed(self, craft, seconds, by_clock, is_of_days):
        """The meter's run if there is one, and clock times on a day that is told by them."""
        clauses = []
        if craft.meter is not None and not craft.is_dead:
            end = craft.meter + seconds
            clauses.append(f"collective meter {hours_text(craft.meter)} to {hours_text(end)}")
            craft.meter = end
        if self.minute is not None or by_clock or craft.is_by_clock and not is_of_days:
            off = self.minute if self.minute is not None else self.whole(300, 900)
            landed = off + seconds // 60
            clauses += [f"{word} {minute // 60 % 24:02}:{minute % 60:02}Z"
                        for word, minute in (("took off", off), ("landed", landed))]
            if self.minute is not None:
                self.minute = landed + self.whole(5, 30)
        return clauses

    def counts(self, aircraft):
        """What a flight says of its starts, flights, landings and the rest, in canonical order."""
        clauses = self.starts(aircraft)
        flights = self.whole(2, 3) if self.happens(0.2) else 1
        if flights > 1:
            clauses.append(f"{flights} flights")
        landings = flights + self.whole(0, 2)
        if self.happens(0.93):
            clauses.append(f"{landings} landing" + "s" * (landings != 1))
        if self.happens(0.08):
            weights = [self.pick(("0.5", "1.2", "2")) for _ in (1, 2)]
            places = [f" on engine {place}" for place in (1, 2)] if aircraft == TWN else [""]
            clauses += [f"{weight} cycles{place}" for weight, place in zip(weights, places)]
        if self.happens(0.3):
            clauses.append(f'{self.whole(1, 9)} "hook loads"')
        if aircraft == TWN and self.happens(0.15):
            clauses.insert(0, f"{hours_text(self.whole(1, 2) * TENTH)} h on engine 2")
        return clauses

    def starts(self, aircraft):
        if aircraft == TWN and self.happens(0.4):
            each = [(place, self.whole(0, 2)) for place in (1, 2)]
            return [f"{number} start{'s' * (number != 1)} on engine {place}"
                    for place, number in each]
        if self.happens(0.06):
            return []
        number = self.whole(1, 3)
        return [f"{number} start" + "s" * (number != 1)]

    def fly_later(self, host):
        """A flight of what the host is on, some days on."""
        self.pass_days(1, 2)
        return self.fly(self.root(host))

    def root_named(self, line):
        """The aircraft that a flight's sentence names."""
        return KIT if thing_text(KIT) in line.text else TWN

    def write_what_was_held_back(self):
        for aircraft, line in self.held_back:
            self.lines.append(line)
            self.crafts[aircraft].total += line.service
        self.held_back = []

    def fly_root(self, thing, **options):
        """Flies whatever the thing is on; if it is on none, either aircraft."""
        aircraft = self.root(thing)
        return self.fly(aircraft if aircraft in self.crafts else self.pick((KIT, TWN)), **options)

    # Moves.

    def root(self, thing):
        while thing in self.hosts:
            thing = self.hosts[thing][0]
        return thing

    def in_place(self, host, place):
        for thing, where in self.hosts.items():
            if where == (host, place):
                return thing
        return None

    def stated_total(self, host, share=0.7):
        """`, airframe 4300.5 h` if it can be written and chance will have it."""
        if isinstance(share, str):
            return share
        aircraft = self.root(host)
        if aircraft not in self.crafts or self.minute is not None or not self.happens(share):
            return ""
        total = self.crafts[aircraft].total
        return f", airframe {hours_text(total // 1000)} h" if total % 1000 == 0 else ""

    def fit(self, thing, host, place, having="", share=0.7):
        shown = place if place.startswith("engine ") else f'"{place}"'
        total = self.stated_total(host, share)
        self.hosts[thing] = (host, place)
        return self.on_day(f"{thing_text(thing)} fitted to {thing_text(host)} {shown}{total}"
                           f"{having}.")

    def remove(self, thing, share=0.7):
        host, place = self.hosts[thing]
        shown = place if place.startswith("engine ") else f'"{place}"'
        total = self.stated_total(host, share)
        del self.hosts[thing]
        return self.on_day(f"{thing_text(thing)} removed from {thing_text(host)} {shown}{total}.")

    # The whole.

    def named_lines(self):
        """The lines as history.py writes them, and the name of each sentence."""
        rows, names, counts, base = [], {}, {}, None
        for line in self.lines:
            if line.base != base or line.hears:
                base = line.base
                rows.append(("base", base, line.hears))
            counts[base] = counts.get(base, 0) + 1
            names[line] = (base * 5, counts[base])
            text = line.text
            for other in line.refers:
                text = text.replace("{}", entry_text(names[other]), 1)
            rows.append(("say", text))
        return rows, names

    def book(self):
        """The book so far."""
        pen = Pen()
        for row in self.named_lines()[0]:
            if row[0] == "base":
                pen.write_as(row[1], row[2])
            else:
                pen.say(row[1])
        return Book(pen.entries)

    def history(self):
        rows, names = self.named_lines()
        middle = FIRST_DAY + (self.day - FIRST_DAY) * self.whole(30, 80) / 100
        history = History(self.number, self.shapes, rows, [middle, self.day])
        history.names = names
        return history

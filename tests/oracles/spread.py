"""Several days in one entry of use, and what is fitted or removed within them (docs/decisions 0022).

A flight of several days, and hours unaccounted for since the use before, may lie on both sides of a
move. A total of the airframe that is stated there tells how many of the hours came before it; of all
else nobody can tell, so that what came off has the whole and so has what went on."""

from amounts import EXACT
from sentences import Unreadable


class Move:
    """A fitting, a removal or an overhaul, with what was where before it and what the airframe had."""

    def __init__(self, said, hosts, total):
        self.said = said
        self.hosts = hosts
        self.total = total  # of the aircraft at whose total it states, before this move

    def hours_before(self, craft, use, all_hours):
        """How many of the hours of the use came before this move, in thousandths of a second; None:
        nothing tells. craft: at whose total it was written."""
        says = self.said.says
        if "before the first flight" in says and self.said.day == use.says.get("since"):
            return 0
        if "engine" in says:
            raise Unreadable("a total of an engine within several days")
        if "airframe" not in says or self.total is None or self.total[0] != craft:
            return None
        value, sure = self.total[1]
        before = says["airframe"] * 1000 - value
        return before if sure == EXACT and all_hours and 0 <= before <= all_hours else None


class Ride:
    """A time within the days of a use in which a thing was in one place: between two moves, or from
    before all of them, or to the end."""

    def __init__(self, way, place, first):
        self.way = way
        self.place = place
        self.first = first  # the moves that begin and end it, by number; -1: it was there before
        self.last = None

    def is_over_before(self, number):
        return self.last is not None and self.last <= number


class Log:
    """The moves so far, and where each aircraft's last use stands among them."""

    def __init__(self):
        self.moves = []
        self.last_use = {}
        self.begins = {}

    def add(self, said, hosts, total):
        self.moves.append(Move(said, dict(hosts), total))

    def note_use(self, said):
        self.last_use[said.about] = len(self.moves)

    def within(self, said):
        """The moves that may lie before a part of the use."""
        since = said.says.get("since")
        if said.kind == "unaccounted":
            begins = self.begins.get(said.about)
            first = self.last_use.get(said.about)
            if first is None and begins is None:
                return []
            return self.moves[first or 0:] if first is not None else self.since(begins)
        return self.since(since) if since is not None and since < said.day else []

    def since(self, day):
        return [move for move in self.moves if move.said.day >= day]


def way_up(thing, hosts):
    way, place = [thing], None
    while way[-1] in hosts:
        host, place = hosts[way[-1]]
        way.append(host)
    return tuple(way), place


def rides(thing, moves, hosts_now):
    """Its rides through the moves, one after another."""
    found = []
    befores = [move.hosts for move in moves] + [hosts_now]
    for number, hosts in enumerate(befores):
        way, place = way_up(thing, hosts)
        if not found or (found[-1].way, found[-1].place) != (way, place) \
                or is_moved(way, moves[number - 1].said):
            if found:
                found[-1].last = number - 1
            found.append(Ride(way, place, number - 1))
    return found


def is_moved(way, said):
    return said.kind == "fitted" and said.about in way


def begins_after(basis, thing, moves):
    """The number of the last move that a count from this basis leaves out; -1: none."""
    numbers = [-1]
    for number, move in enumerate(moves):
        is_its = {"fitting": move.said.kind == "fitted" and move.said.about == thing,
                  "overhaul": move.said.kind == "overhauled" and move.said.about == thing,
                  "new": False}
        if is_its[basis] if basis in is_its else move.said.day <= basis:
            numbers.append(number)
    return numbers[-1]


class Shares:
    """What a thing has of one use, through its rides. The whole of it is counted once at most."""

    def __init__(self, said, all_hours, moves, amounts_of):
        self.said = said
        self.all_hours = all_hours
        self.moves = moves
        self.amounts_of = amounts_of  # of the whole use, clock by clock, on a ride

    def before(self, number, clock, whole):
        """Of one clock, what came before a move; None: nothing tells."""
        hours = self.moves[number].hours_before(self.said.about, self.said, self.all_hours)
        if hours is None or hours == 0:
            return hours
        if hours == self.all_hours:
            return whole
        return hours if clock == "h" and whole == self.all_hours else None

    def is_nothing_before(self, number):
        return self.moves[number].hours_before(self.said.about, self.said, self.all_hours) == 0

    def of(self, its_rides, after):
        """Clock by clock, of the rides that go on past a move."""
        total = {}
        for ride in its_rides:
            if ride.way[-1] != self.said.about or ride.is_over_before(after):
                continue
            for clock, (whole, sure), has_rule in self.amounts_of(ride):
                had, was, _ = total.get(clock, (0, EXACT, False))
                until = whole if ride.last is None else self.before(ride.last, clock, whole)
                since = 0 if ride.first < 0 or ride.first < after \
                    else self.before(ride.first, clock, whole)
                if until == 0 and ride.last is not None and self.is_nothing_before(ride.last):
                    continue
                here = (whole if until is None else until) - (since or 0)
                here = max(0, min(here, whole - had))
                total[clock] = had + here, max(was, sure), has_rule
        return [(clock, (value, sure), rule) for clock, (value, sure, rule) in total.items()] or None

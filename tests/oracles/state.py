"""Where everything is, and what everything has, at one moment of the walk."""

from amounts import NOBODY_KNOWS, ZERO


class State:
    """Where everything is, and what everything has, by what it counts from."""

    def __init__(self, things):
        self.hosts = {}
        self.stay_began = {}
        self.overhauled = {}
        # Which aircraft's entries speak of which clock; and what was flown without a word of it.
        self.spoken = set()
        self.silent = {}
        self.root_when_fitted = {}
        self.first_root = {}
        self.models_been = {thing: set() for thing in things}
        # What had run hours before this record; and on which models, inside one another, it ran here.
        self.came_used = set()
        self.ran_on = {thing: set() for thing in things}
        self.last_of_kind = {}  # the aircraft and the engine in which a thing is or was last
        self.been_outside_engines = set()
        self.on_record = set()
        self.stated = set()
        self.based = set()
        # By "new", "overhaul", "fitting" or a day after which, then thing, then clock.
        self.has = {"new": {}, "overhaul": {}, "fitting": {}}
        self.way_memo = {}

    def moved(self):
        self.way_memo = {}

    def way(self, thing):
        """The thing, its host, the host's host … up to what is fitted nowhere; and the place of
        the last but one in the last."""
        if thing not in self.way_memo:
            way, place = [thing], None
            while way[-1] in self.hosts:
                host, place = self.hosts[way[-1]]
                way.append(host)
            self.way_memo[thing] = (way, place)
        return self.way_memo[thing]

    def figure(self, basis, thing, clock):
        if basis == "fitting" and thing not in self.stay_began:
            return ZERO  # it was never fitted: nothing was used since
        if any((craft, clock) not in self.spoken
               for craft in self.silent.get((basis, thing, clock), ())):
            return NOBODY_KNOWS  # no entry about that aircraft ever speaks of this clock
        return self.has.get(basis, {}).get(thing, {}).get(clock, NOBODY_KNOWS)

    def from_nothing(self, basis, thing, clocks):
        """A count that begins here, with nothing used."""
        self.has[basis][thing] = dict.fromkeys(clocks, ZERO)
        for clock in clocks:
            self.silent.pop((basis, thing, clock), None)
            self.based.discard((basis, thing, clock))

    def take(self, thing, amounts, bases=None):
        """Adds what a thing used to all that is counted for it, or from these bases alone."""
        for basis in bases or self.has:
            mine = self.has[basis].get(thing)
            if mine is None:
                continue
            for clock, (value, sure), _ in amounts:
                had = mine[clock]
                mine[clock] = (had[0] + value, max(had[1], sure))

    def note_silence(self, thing, amounts, craft, bases=None):
        """An entry about an aircraft that says nothing of a clock, where neither a rule nor a
        figure on paper stands in for it."""
        for clock, _, has_rule in amounts:
            if has_rule or (craft, clock) in self.spoken:
                continue
            for basis in bases or self.has:
                if (basis, thing, clock) not in self.based:
                    self.silent.setdefault((basis, thing, clock), set()).add(craft)

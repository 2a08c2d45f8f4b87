"""Counting rules, which turn starts, flights and landings into cycles (design 4)."""

from amounts import days_later


class CountingRules:
    """Rules by scope and counter; one that replaces another ends it on the day from which it
    holds itself."""

    def __init__(self, facts, root_of, without=()):
        self.rules = {}
        self.scopes = set()
        self.counters = set()
        self.until = {}
        self.since = {}
        for fact in facts:
            if fact.said.kind == "rule":
                self.take(fact, root_of, without)

    def take(self, fact, root_of, without):
        said = fact.said
        since = said.day
        if "also since" in said.says and "recount" not in without:
            since = min(since, said.says["also since"])
        self.since[fact.root.name] = since
        if "instead" in said.says:
            self.until[root_of(said.says["instead"])] = since
        self.scopes.add(said.about)
        self.counters.add(said.says["counter"])
        key = (said.about, said.says["counter"])
        self.rules.setdefault(key, []).append((fact.root.name, said))

    def during(self, scopes, counter, said):
        """The rules for an entry: those of its day, or of each of its days on which others held."""
        first = said.says.get("since", said.day)
        ways = [self.on(scopes, counter, said.day)]
        for day in (days_later(first, number) for number in range((said.day - first).days)):
            rules = self.on(scopes, counter, day)
            if rules not in ways:
                ways.append(rules)
        return ways

    def ever(self, scopes, counter):
        """Whether any rule on record could count it, on whatever day."""
        return counter in self.counters and any((scope, counter) in self.rules for scope in scopes)

    def on(self, scopes, counter, day):
        """The rules of the nearest of the scopes that has any on that day."""
        for scope in scopes:
            held = [said for name, said in self.rules.get((scope, counter), ())
                    if self.since[name] <= day < self.until.get(name, day.max)]
            if held:
                return held
        return []

"""Which facts stand once corrections and strikes are applied, now and as an entry's writer saw it.

A correction stands instead of the entry that it names. A strike of a first entry takes the fact
away with its corrections; of a correction, brings back the value before it; of a strike, brings
back what that one struck (record-language.md, Kinds)."""

from dataclasses import dataclass


@dataclass
class Entry:
    """One entry: its writer and number, what its writer had seen of the others, what it says."""
    name: tuple
    seen: dict
    text: str
    said: object
    at: int  # its place in the file


@dataclass
class Fact:
    """What stands: the value of a first entry, and the entry that gave that value."""
    root: Entry
    by: Entry
    said: object


def knew(by, of):
    """Whether an entry was written with the other in its writer's book."""
    if by.name[0] == of.name[0]:
        return by.name[1] > of.name[1]
    return by.seen.get(of.name[0], 0) >= of.name[1]


class Book:
    """All entries, and for each the corrections and strikes that name it."""

    def __init__(self, entries):
        self.entries = entries
        self.named = {entry.name: entry for entry in entries}
        self.after = {}
        self.memo = {}
        for entry in entries:
            if entry.said.kind in ("corrected", "struck"):
                self.after.setdefault(entry.said.says["target"], []).append(entry)

    def root_of(self, name):
        """The first entry of the chain to which an entry belongs."""
        entry = self.named[name]
        while entry.said.kind in ("corrected", "struck"):
            entry = self.named[entry.said.says["target"]]
        return entry.name

    def facts(self, seen_by=None, choose=None, without=()):
        """The facts that stand, in the order of the file; of what one writer had seen, if named.

        choose(corrections) says which of several corrections made apart is taken; without names
        the kinds that are overlooked, to show that they matter."""
        key = (seen_by and seen_by.name, choose, frozenset(without))
        if key not in self.memo:
            self.memo[key] = self.standing(seen_by, choose, without)
        return self.memo[key]

    def standing(self, seen_by, choose, without):
        """What facts() remembers."""
        def sees(entry):
            return seen_by is None or entry is seen_by or knew(seen_by, entry)

        found = []
        for entry in self.entries:
            if entry.said.kind in ("corrected", "struck") or not sees(entry):
                continue
            by = self.value(entry, sees, choose or newest, without)
            if by is not None:
                said = by.said.says["instead"] if by.said.kind == "corrected" else by.said
                found.append(Fact(entry, by, said))
        return found

    def is_struck(self, entry, sees, without):
        if "struck" in without:
            return False
        return any(after.said.kind == "struck" and sees(after)
                   and not self.is_struck(after, sees, without)
                   for after in self.after.get(entry.name, ()))

    def value(self, entry, sees, choose, without):
        """The entry that gives the value of this one and of what stands instead of it."""
        if self.is_struck(entry, sees, without):
            return None
        values = self.values_after(entry, sees, choose, without)
        return choose(values) if values else entry

    def values_after(self, entry, sees, choose, without):
        found = []
        for after in self.after.get(entry.name, ()):
            if after.said.kind == "corrected" and sees(after) and after.name not in without:
                value = self.value(after, sees, choose, without)
                if value is not None:
                    found.append(value)
        return found

    def apart(self):
        """First entries with corrections that were made apart and stand beside each other."""
        found = {}
        for entry in self.entries:
            beside = self.values_after(entry, lambda _: True, newest, ())
            if len(beside) > 1:
                found[self.root_of(entry.name)] = beside
        return found


def newest(values):
    return values[-1]

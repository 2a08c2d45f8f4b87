"""Cuts a history down to what is needed: sentences are left out for as long as the engines still
differ over what is left. What would name a sentence that is gone goes with it."""

import re

from history import History, entry_text


def names_in(lines):
    """The name of the entry that each line makes; None for a line that makes none."""
    counts, base, names = {}, "K", []
    for line in lines:
        if line[0] == "base":
            base = line[1]
            names.append(None)
        else:
            counts[base] = counts.get(base, 0) + 1
            names.append(entry_text((base * 5, counts[base])))
    return names


def left_without(history, gone):
    """The history without the lines at these places, and without those that name them."""
    names = names_in(history.lines)
    gone = set(gone)
    for at, line in enumerate(history.lines):
        named = re.search(r"entry ([0-9A-Z]+-\d+)", line[1]) if line[0] == "say" else None
        if named and names.index(named[1]) in gone:
            gone.add(at)
    kept = [at for at in range(len(history.lines)) if at not in gone]
    renamed = dict(zip((names[at] for at in kept),
                       names_in([history.lines[at] for at in kept])))
    lines = [rename(history.lines[at], renamed) for at in kept]
    return Cut(history.number, history.shapes, lines, history.days)


def rename(line, renamed):
    if line[0] == "base":
        return line
    return ("say", re.sub(r"entry ([0-9A-Z]+-\d+)",
                          lambda match: "entry " + renamed[match[1]], line[1]))


class Cut(History):
    """A history that was cut down, and how it reads as a case."""

    def case(self):
        if any(line[0] == "base" and line[1] != "K" for line in self.lines):
            return self.text()
        rows = ["source: design.md 4, 5 (a history cut down)", f"today: {self.days[-1]}"]
        labels = {}
        for line, name in zip(self.lines, names_in(self.lines)):
            if name is None:
                continue
            labels[name] = "e" + name.rpartition("-")[2]
            rows += said_in_case(line[1], labels, name)
        return "\n".join(rows + ["ask: lives"])


def said_in_case(text, labels, name):
    text = re.sub(r"entry ([0-9A-Z]+-\d+)", lambda match: f"entry {{{labels[match[1]]}}}", text)
    match = re.match(r'\S+ entry (\{\w+\}) (corrected|struck) because "(.*?)"(?:: (.*))?\.$', text)
    if not match:
        return ["say:", f"  {labels[name]} = {text}"]
    if match[2] == "struck":
        return [f'do: {labels[name]} = strike {match[1]} --because "{match[3]}"']
    return [f"do: {labels[name]} = correct {match[1]} '{match[4]}' --because \"{match[3]}\""]


def cut_down(history, still):
    """Halves, quarters … single lines are left out while still(history) holds."""
    small = Cut(history.number, history.shapes, history.lines, history.days)
    for days in ([history.days[0]], [history.days[-1]]):
        candidate = Cut(history.number, history.shapes, small.lines, days)
        if still(candidate):
            small = candidate
            break
    size = max(1, len(small.lines) // 2)
    while size:
        at = len(small.lines) - size
        while at >= 0:
            candidate = left_without(small, range(at, at + size))
            if len(candidate.lines) < len(small.lines) and still(candidate):
                small = candidate
                at = min(at, len(small.lines))
            at -= size
        size //= 2
    return small

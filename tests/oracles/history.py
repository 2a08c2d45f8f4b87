"""A history as plain text, which both engines read: whose entries they are, the sentences, and the
days on which it is asked.

    history 4711 late flight, recount
    base K
    2026-01-01 aircraft ZZ-KIT is model "Larkwing 5".
    base M hears
    2026-03-12 entry KKKKK-14 corrected because "slip": 2026-03-04 aircraft ZZ-KIT flew 1.8 h.
    ask 2026-04-30
    end

A base is one letter; in sentences its name is that letter five times. "hears" says that it has by
now received all that is in the file; without it, it knows only what it wrote and heard before."""

from amounts import day_of
from chains import Book, Entry
from sentences import read

_READ = {}


def read_once(text):
    """Sentences of a history come again and again."""
    if text not in _READ:
        if len(_READ) > 20000:
            _READ.clear()
        _READ[text] = read(text)
    return _READ[text]


class Pen:
    """Writes entries for one base or several, and knows what each has heard."""

    def __init__(self):
        self.entries = []
        self.base = "K"
        self.heard = {}
        self.numbers = {}

    def write_as(self, base, hears=False):
        self.base = base
        if hears:
            mine = self.heard.setdefault(base, {})
            mine.update((other * 5, number) for other, number in self.numbers.items())

    def say(self, text):
        self.numbers[self.base] = self.numbers.get(self.base, 0) + 1
        name = (self.base * 5, self.numbers[self.base])
        entry = Entry(name, dict(self.heard.get(self.base, {})), text, read_once(text),
                      len(self.entries))
        self.entries.append(entry)
        return entry


def entry_text(name):
    return f"{name[0]}-{name[1]}"


class History:
    """One history: its number, the shapes drawn for it, its lines and the days asked for."""

    def __init__(self, number, shapes, lines, days):
        self.number = number
        self.shapes = shapes
        self.lines = lines  # ("base", letter, hears) or ("say", text)
        self.days = days
        self.whole_book = None

    def text(self):
        """As both engines read it."""
        rows = [f"history {self.number} {', '.join(self.shapes)}"]
        for line in self.lines:
            if line[0] == "base":
                rows.append(f"base {line[1]}" + (" hears" if line[2] else ""))
            else:
                rows.append(line[1])
        rows += [f"ask {day}" for day in self.days] + ["end", ""]
        return "\n".join(rows)

    def book(self, leave_out=()):
        """Its entries; leave_out names those that are read as if they had not been said."""
        if self.whole_book is None:
            self.whole_book = Book(self.written())
        if not leave_out:
            return self.whole_book
        return Book([entry for entry in self.whole_book.entries if entry.name not in leave_out])

    def written(self):
        pen = Pen()
        for line in self.lines:
            if line[0] == "base":
                pen.write_as(line[1], line[2])
            else:
                pen.say(line[1])
        return pen.entries


def read_histories(rows):
    """All histories of such a text."""
    history = None
    for row in rows:
        row = row.rstrip("\n")
        word, _, rest = row.partition(" ")
        if word == "history":
            number, _, shapes = rest.partition(" ")
            history = History(int(number), [name for name in shapes.split(", ") if name], [], [])
        elif word == "base":
            history.lines.append(("base", rest[0], rest.endswith(" hears")))
        elif word == "ask":
            history.days.append(day_of(rest))
        elif word == "end":
            yield history
        elif row and not row.startswith("#"):
            history.lines.append(("say", row))

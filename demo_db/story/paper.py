"""The record as it is written: one sentence a line, each with the name its entry will have."""

# The short name of the book's writer and the number of its first entry after `new`, as
# `timeworn new "Three Winters" --for-tests --clock 2026-03-05T08:00:00Z --seed 11` gives them.
WRITER = "EWQCG"
FIRST_NUMBER = 2


class Paper:
    def __init__(self):
        self.lines = []
        self.sentences = []

    def note(self, text=""):
        self.lines.append(f"# {text}" if text else "")

    def say(self, sentence):
        """Adds a sentence; gives the name that its entry will have."""
        self.lines.append(sentence + ".")
        self.sentences.append(sentence + ".")
        return f"{WRITER}-{FIRST_NUMBER + len(self.sentences) - 1}"

    def name_of(self, words):
        """The name of the first entry whose sentence holds these words."""
        at = next(at for at, said in enumerate(self.sentences) if words in said)
        return f"{WRITER}-{FIRST_NUMBER + at}"


def tenths(number):
    """1.7 from 17 tenths; -0.3 from -3."""
    sign = "-" if number < 0 else ""
    return f"{sign}{abs(number) // 10}.{abs(number) % 10}"


def counted(number, noun):
    """1 landing, 2 landings; a counter in quotes is the operator's own and has one form."""
    return f"{number} {noun}" + ("" if number == 1 or noun.endswith('"') else "s")

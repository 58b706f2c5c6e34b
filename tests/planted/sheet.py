"""A program's text to edit by its own line numbers: words changed, lines put in or taken out, in its own style."""

from __future__ import annotations

import re
from copy import copy
from functools import cache

WORD = re.compile(r"([A-Za-z])[ \t]*([+-]?(?:\d+\.?\d*|\.\d+))")
COMMENT = re.compile(r"\([^()]*\)|;.*")


@cache
def _words(text: str) -> list[tuple[str, float, int, int]]:
    bare = COMMENT.sub(lambda m: " " * len(m[0]), text)
    bare = re.sub(r"\[[^\]]*\]|#\d+|[A-Z]{2,}\d*", lambda m: " " * len(m[0]), bare)  # expressions and flow
    return [(m[1].upper(), float(m[2]), m.start(), m.end()) for m in WORD.finditer(bare)]


class Sheet:
    """Lines count from 1 and keep their numbers whatever is put in or taken out; `now` gives a line's new number."""

    def __init__(self, data: bytes) -> None:
        text = data.decode()
        self.end = "\r\n" if text.count("\r\n") == text.count("\n") > 0 else "\n"  # mixed: CR stays in the line
        lines = text.split(self.end)
        self.last = len(lines) - (lines[-1] == "")
        self.rows: list[tuple[int, str]] = [(n, line) for n, line in enumerate(lines[: self.last], 1)]
        self.places: dict[int, int] | None = None  # rows by line, until lines are put in or taken out
        bare = " ".join(COMMENT.sub("", line) for line in lines)
        numbers = [m[2] for m in WORD.finditer(bare) if m[1].upper() in "XYZIJ"]
        self.decimals = max([3, *(len(n.partition(".")[2]) for n in numbers)])
        self.full = all(len(n.partition(".")[2]) == self.decimals for n in numbers)
        self.point = all("." in n for n in numbers)

    def copy(self) -> Sheet:
        other = copy(self)
        other.rows = list(self.rows)
        return other

    def bytes(self) -> bytes:
        return "".join(text + self.end for _, text in self.rows).encode()

    # ---- reading

    def _row(self, line: int) -> int:
        return self._places()[line]

    def _places(self) -> dict[int, int]:
        if self.places is None:
            self.places = {number: row for row, (number, _) in enumerate(self.rows) if number}
        return self.places

    def has(self, line: int) -> bool:
        return line in self._places()

    def text(self, line: int) -> str:
        return self.rows[self._row(line)][1]

    def now(self, line: int) -> int:
        """The present number of a line; of one that was taken out, that of the next line."""
        before = [row for row, (number, _) in enumerate(self.rows) if number and number < line]
        return self._row(line) + 1 if self.has(line) else (before[-1] + 2 if before else 1)

    def words(self, line: int) -> list[tuple[str, float, int, int]]:
        """(letter, number, start, end) of the words outside comments."""
        return _words(self.text(line))

    def word(self, line: int, letter: str) -> float | None:
        return next((value for name, value, _, _ in self.words(line) if name == letter), None)

    def codes(self, line: int, letter: str = "G") -> list[float]:
        return [value for name, value, _, _ in self.words(line) if name == letter]

    def lines_with(self, letter: str, value: float | None = None) -> list[int]:
        return [
            n for n, _ in self.rows
            if n and any(name == letter and value in (None, number) for name, number, _, _ in self.words(n))
        ]  # fmt: skip

    # ---- writing

    def number(self, value: float, decimals: int | None = None) -> str:
        text = f"{value + 0.0:.{self.decimals if decimals is None else decimals}f}"
        if not self.full:
            text = text.rstrip("0") if "." in text else text
            text = text if self.point else text.rstrip(".")
        return "0" + text[2:] if text.startswith("-0") and not text.strip("-0.") else text

    def write(self, line: int, text: str) -> Sheet:
        self.rows[self._row(line)] = (line, text)
        return self

    def set(self, line: int, letter: str, value: float, nth: int = 0) -> Sheet:
        """Another number behind a word of the line (or the word put at the line's end, if it has none)."""
        shown = f"{value:.1f}".removesuffix(".0") if letter in "FS" else self.number(value)
        if letter in "GMTNHD":
            shown = f"{value:g}"
        text, places = self.text(line), [w for w in self.words(line) if w[0] == letter]
        if not places:
            return self.write(line, f"{text} {letter}{shown}")
        _, _, start, end = places[nth]
        return self.write(line, text[: start + 1] + shown + text[end:])

    def drop(self, line: int, *letters: str) -> Sheet:
        """Takes words out of a line, and the line if none is left but its number."""
        for letter in letters:
            for name, _, start, end in reversed(self.words(line)):
                if name == letter:
                    text = self.text(line)
                    self.write(line, (text[:start] + text[end:]).rstrip())
        return self if any(w[0] != "N" for w in self.words(line)) else self.delete(line)

    def drop_code(self, line: int, letter: str, value: float) -> Sheet:
        for name, number, start, end in reversed(self.words(line)):
            if name == letter and number == value:
                text = self.text(line)
                self.write(line, (text[:start] + text[end:]).rstrip())
        return self if any(w[0] != "N" for w in self.words(line)) else self.delete(line)

    def delete(self, line: int) -> Sheet:
        del self.rows[self._row(line)]
        self.places = None
        return self

    def after(self, line: int, *texts: str) -> Sheet:
        row = self._row(line) + 1
        self.rows[row:row] = [(0, text) for text in texts]
        self.places = None
        return self

    def before(self, line: int, *texts: str) -> Sheet:
        row = self._row(line)
        self.rows[row:row] = [(0, text) for text in texts]
        self.places = None
        return self

    def cut_off(self, line: int, characters: int) -> Sheet:
        """Nothing is left behind the first characters of a line."""
        row = self._row(line)
        self.rows = [*self.rows[:row], (line, self.text(line)[:characters])]
        self.places = None
        return self

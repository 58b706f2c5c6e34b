"""Words and figures for people: trade words with a short gloss, numbers no longer than they are true."""

from __future__ import annotations

import math

from gclint.knowledge.glosses import glosses

ENTRY_WORDS = {
    "straight": "straight down",
    "ramp": "down a ramp",
    "helix": "down a helix",
    "side": "from the side",
    "open": "into space already cut",
}
STANDING_WORDS = {
    "measured": "measured in this shop",
    "published": "published",
    "derived": "arithmetic or geometry",
    "practice": "common practice",
    "memory": "from memory, unchecked",
}
GRADE_WORDS = {"halt": "Do not run", "change": "Change before cutting", "consider": "Consider"}
MM_PER_INCH = 25.4


def behind(standing: str, source: str) -> str:
    """'common practice, no source', 'published; NIST 5416': a standing and its source, said once."""
    words = STANDING_WORDS.get(standing, standing)
    return source if not words or source.startswith(words) else f"{words}; {source}" if source else words


class Glossary:
    """Adds each gloss once, behind the first use of its word in a report."""

    def __init__(self) -> None:
        self.left = {each.said: each.gloss for each in glosses().values()}

    def __call__(self, text: str) -> str:
        import re

        lower = text.lower()
        for word, gloss in list(self.left.items()):
            if word not in self.left:
                continue
            certain = re.split(r"[^\w -]", word)[0]
            if certain != word:
                certain = certain[:-1]  # what follows may make its last mark optional
            if "|" not in word and certain.lower() not in lower:
                continue
            match = re.search(rf"(?<![\w-]){word}(?![\w-])(?! \(| rate)", text, re.IGNORECASE)
            if match and text.count("(", 0, match.start()) == text.count(")", 0, match.start()):
                text = f"{text[: match.end()]} ({gloss}){text[match.end() :]}"
                lower = text.lower()
                del self.left[word]
                if word == "chip thickness":
                    self.left.pop("chip", None)
        return text


def figure(value: float, digits: int = 3) -> str:
    """Three significant digits, thousands whole: 0.0423 -> '0.0423', 1855.2 -> '1855', 12.0 -> '12'."""
    if not math.isfinite(value):
        return "unknown"
    if value == 0:
        return "0"
    places = max(0, digits - 1 - math.floor(math.log10(abs(value))))
    text = f"{value:.{min(places, 6)}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def plain_number(value: float) -> str:
    """A word's number as a program writes it: 400 -> '400', 12.50 -> '12.5'."""
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def measure(value: float | str | None, unit: str) -> str:
    """'0.028 mm', 'unknown', 'yes'."""
    if value is None:
        return "unknown"
    if isinstance(value, str):
        return value
    return f"{figure(value)} {unit}".rstrip()


def span(low: float, high: float, unit: str, digits: int = 3) -> str:
    """'300 to 1500 mm/min', or one number where both ends read the same."""
    first, last = figure(low, digits), figure(high, digits)
    return f"{first} {unit}".rstrip() if first == last else f"{first} to {last} {unit}".rstrip()


def duration(seconds: float | None) -> str:
    """'1 h 05 min', '12 min 40 s', '8.2 s', 'unknown'."""
    if seconds is None:
        return "unknown"
    if seconds < 60:
        return f"{figure(seconds, 2)} s"
    minutes, rest = divmod(round(seconds), 60)
    if minutes < 60:
        return f"{minutes} min {rest:02d} s"
    hours, minutes = divmod(minutes, 60)
    return f"{hours} h {minutes:02d} min"


def count(number: int, one: str, many: str | None = None) -> str:
    """'1 pass', '3 passes'."""
    return f"{number:,} {one if number == 1 else many or one + 's'}"


class Lengths:
    """Turns mm and mm/min into the program's own units."""

    def __init__(self, inch: bool) -> None:
        self.inch = inch
        self.unit = "in" if inch else "mm"
        self.scale = 1 / MM_PER_INCH if inch else 1.0

    def length(self, mm: float) -> str:
        return f"{figure(mm * self.scale)} {self.unit}"

    def lengths(self, low: float, high: float) -> str:
        return span(low * self.scale, high * self.scale, self.unit)

    def feeds(self, low: float, high: float) -> str:
        return span(low * self.scale, high * self.scale, f"{self.unit}/min")

    def path(self, mm: float) -> str:
        """Length of path: m or ft where it is long."""
        if self.inch:
            return f"{figure(mm / 304.8)} ft" if mm >= 304.8 else self.length(mm)
        return f"{figure(mm / 1000)} m" if mm >= 1000 else self.length(mm)

    def volume(self, mm3: float) -> str:
        return f"{figure(mm3 / MM_PER_INCH**3)} in3" if self.inch else f"{figure(mm3 / 1000)} cm3"

    def place(self, mm: float | None) -> str:
        return "?" if mm is None else plain_number(round(mm * self.scale, 4 if self.inch else 3))

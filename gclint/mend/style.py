"""How a program is written: case, spacing, decimals, numbering, comments, checksums; new lines are written alike."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

import numpy as np

from gclint.mend.draft import Draft
from gclint.tables.program import Program

SAMPLE = 20_000  # words looked at
NUMBERED = 0.5  # share of lines with an N word from which a program counts as numbered
LENGTHS = frozenset("XYZIJKR")
STAR = re.compile(rb"\*[ \t]*[0-9]+[ \t]*$")
N_WORD = re.compile(rb"^([ \t]*/?[ \t]*)[Nn][ \t]*([0-9]+)([ \t]*)")
COMMENT_BYTES = re.compile(r"[^A-Za-z0-9 .,:+/-]")
MOST_DECIMALS = 6


@dataclass(frozen=True, slots=True)
class Style:
    """Decimals are of lengths; `fixed`: trailing zeros are written; `point`: whole numbers end in a point."""

    lower: bool = False
    gap: str = " "
    decimals: int = 3
    fixed: bool = False
    point: bool = False
    feed_decimals: int = 0  # of F words, always written; -1: as few as it takes, and a whole number ends in a point
    padded: bool = False  # G01 rather than G1
    number_step: int = 0  # 0: lines are not numbered
    number_width: int = 0  # digits of N words, where they are padded
    number_gap: str = " "
    semicolon: bool = False
    brackets: bool = True  # comments may be written
    checksums: bool = False
    shout: bool = False  # comments are in capitals
    numbers: frozenset[int] = field(default_factory=frozenset)  # N words in use

    def code(self, letter: str, number: float) -> str:
        """'G1', 'G01', 'g1'; 'G59.1'."""
        whole = f"{int(number):02d}" if self.padded else f"{int(number)}"
        tenth = round(number * 10) % 10
        return self._cased(letter) + whole + (f".{tenth}" if tenth else "")

    def word(self, letter: str, value: float) -> str:
        """A word with a number in the program's own units; lengths get as many decimals as the program's have."""
        if letter == "F":
            return self._cased(letter) + self.feed(value)
        decimals = self.decimals if letter in LENGTHS else 3
        text = f"{value:.{decimals}f}"
        if "." in text and not (self.fixed and letter in LENGTHS):
            text = text.rstrip("0").rstrip(".")
        if text in ("-0", "") or float(text) == 0:
            text = f"{0:.{decimals}f}" if self.fixed and letter in LENGTHS else "0"
        if self.point and "." not in text and letter in LENGTHS:
            text += "."
        return self._cased(letter) + text

    def feed(self, value: float) -> str:
        """The number of an F word."""
        text = f"{value:.4f}".rstrip("0").rstrip(".")
        if self.feed_decimals and "." not in text:
            text += "."
        short = self.feed_decimals - len(text.partition(".")[2])
        return text + "0" * short if self.feed_decimals > 0 and short > 0 else text

    def rounded(self, value: float) -> float:
        """A length as it will be written."""
        return round(value, self.decimals)

    def line(self, *words: str) -> bytes:
        """Words as one line, without number, checksum and line end."""
        return self.gap.join(words).encode("ascii", "replace")

    def comment(self, text: str) -> bytes:
        """A comment in the program's style; what a comment cannot hold is left out."""
        plain = " ".join(COMMENT_BYTES.sub(" ", text).split())
        if self.shout:
            plain = plain.upper()
        return (f"; {plain}" if self.semicolon else f"({plain})").encode("ascii")

    def _cased(self, letter: str) -> str:
        return letter.lower() if self.lower else letter


def style_of(program: Program, inch: bool = False) -> Style:
    """The style of a program, told from its first words; inches get a decimal more."""
    n = min(len(program.word_letter), SAMPLE)
    data, letters = program.data, program.word_letter[:n]
    starts, ends = program.word_start[:n].tolist(), program.word_end[:n].tolist()
    words = [data[s:e] for s, e in zip(starts, ends)]
    lower = sum(w[:1].islower() for w in words) * 2 > max(n, 1)
    lengths = [w for w, letter in zip(words, letters.tolist()) if chr(letter) in LENGTHS]
    decimals, fixed, point = _decimals(lengths, 4 if inch else 3)
    feeds = [w for w, letter in zip(words, letters.tolist()) if letter == ord("F")]
    codes = [w for w, letter in zip(words, letters.tolist()) if chr(letter) in "GM" and len(w) >= 2]
    single = [w for w in codes if re.fullmatch(rb"[GgMm]0?[0-9]", w) and w[1:] not in (b"0",)]
    padded = sum(len(w) == 3 for w in single) * 2 > max(len(single), 1)
    together = apart = 0
    for k in range(n - 1):
        between = data[ends[k] : starts[k + 1]]
        if between == b"":
            together += 1
        elif not between.strip(b" \t"):
            apart += 1
    comments = len(program.comment_line)
    openings = [data[int(s) - 1 : int(s)] for s in program.comment_start[:50].tolist()]
    text = b"".join(
        data[int(s) : int(e)] for s, e in zip(program.comment_start[:50].tolist(), program.comment_end[:50].tolist())
    )
    step, width, gap, used = _numbering(program)
    return Style(
        feed_decimals=_feed_decimals(feeds), lower=lower,
        gap="" if together > apart else " ", decimals=decimals, fixed=fixed, point=point, padded=padded,
        number_step=step, number_width=width, number_gap=gap,
        semicolon=openings.count(b";") * 2 > len(openings), checksums=_has_checksums(program),
        shout=comments > 0 and not re.search(rb"[a-z]", text) and bool(re.search(rb"[A-Z]", text)),
        numbers=used,
    )  # fmt: skip


def _decimals(lengths: list[bytes], least: int) -> tuple[int, bool, bool]:
    """(decimals, whether always so many, whether whole numbers end in a point)."""
    after = [len(w.partition(b".")[2].rstrip(b" \t")) for w in lengths if b"." in w]
    most = max(after, default=0)
    fixed = most > 0 and sum(each == most for each in after) > 0.98 * len(lengths)
    return min(max(most, least), MOST_DECIMALS), fixed, sum(b"." in w for w in lengths) > 0.98 * max(len(lengths), 1)


def _feed_decimals(feeds: list[bytes]) -> int:
    if not feeds or any(b"." not in each for each in feeds):
        return 0
    return min(len(each.partition(b".")[2].rstrip(b" \t")) for each in feeds) or -1


def _numbering(program: Program) -> tuple[int, int, str, frozenset[int]]:
    numbers = program.block_number
    own = numbers[numbers >= 0]
    if len(own) < NUMBERED * max(len(numbers), 1):
        return 0, 0, " ", frozenset(own.tolist())
    steps = np.diff(own)
    steps = steps[steps > 0]
    step = int(np.median(steps)) if len(steps) else 10
    first = next((line for line in program.data[:4000].splitlines() if N_WORD.match(line)), b"N10 ")
    match = N_WORD.match(first)
    digits, gap = (match[2], match[3].decode("ascii")) if match else (b"10", " ")
    width = len(digits) if digits.startswith(b"0") else 0
    return max(step, 1), width, gap, frozenset(own.tolist())


def _has_checksums(program: Program) -> bool:
    return b"*" in program.data and any(STAR.search(line) for line in program.data[:20_000].splitlines())


def checksum(body: bytes) -> int:
    """The bytes before the star, each mixed into the last by exclusive or."""
    total = 0
    for byte in body:
        total ^= byte
    return total


def with_checksum(text: bytes) -> bytes:
    """A line whose old checksum, if it has one, is made right."""
    match = STAR.search(text)
    if match is None:
        return text
    body = text[: match.start()]
    return body + b"*%d" % checksum(body)


class NoRoom(ValueError):
    """New lines cannot be numbered as the program needs it."""


def numbered(
    style: Style, draft: Draft, line: int, texts: tuple[bytes, ...], behind: bool = False
) -> tuple[bytes, ...]:
    """Lines to put before a line of the draft (or behind it), numbered and with checksums as the program has them.

    Numbers lie between those of the neighbours; without room they are left away, and with checksums it is NoRoom:
    controllers that count lines want every one.
    """
    if style.checksums:
        raise NoRoom("the program numbers and checks every line, and there is no number free between two lines")
    if not style.number_step or not texts:
        return texts
    low = _number_near(draft, line if behind else line - 1, -1)
    high = _number_near(draft, line + 1 if behind else line, 1)
    if low is None or high is None or high - low <= len(texts):
        return texts
    step = max(1, (high - low) // (len(texts) + 1))
    made = []
    for k, text in enumerate(texts, 1):
        number = low + k * step
        if number in style.numbers:
            return texts
        letter = "n" if style.lower else "N"
        made.append(f"{letter}{number:0{style.number_width}d}{style.number_gap}".encode("ascii") + text)
    return tuple(made)


def _number_near(draft: Draft, line: int, step: int) -> int | None:
    """The N word of the nearest line that has one, itself included."""
    for _ in range(50):
        if not 1 <= line <= draft.lines:
            return None
        match = N_WORD.match(draft.text(line))
        if match:
            return int(match[2])
        line += step
    return None


def without_number(text: bytes) -> bytes:
    """A line without its N word."""
    match = N_WORD.match(text)
    return text[match.end() :] if match else text

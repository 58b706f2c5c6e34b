"""The change of a finding as edits of the program's text, each proved by reading the edited line again."""

from __future__ import annotations

import math
from collections.abc import Mapping

from msgspec import Struct

from gclint.lazy_regex import Later
from gclint.program.read import tabulate
from gclint.tables.finding import Change, SetWord

CHECKSUM = Later(r"\*\s*\d+\s*$")  # a star within an expression multiplies


class Written(Struct, frozen=True):
    """A word as it stands on a line; `start` and `end` count characters from 0."""

    letter: str
    value: float  # NaN where an expression stands or nothing that can be read
    start: int
    end: int


class Edit(Struct, frozen=True):
    """Put `text` in the place of the characters from column to end_column (from 1, the latter behind the last one)."""

    line: int
    column: int
    end_column: int
    text: str


def words_on(text: str) -> tuple[Written, ...]:
    """The words of one line of a program."""
    raw = text.encode("utf-8", "replace")
    if not raw or raw.isspace():
        return ()
    p = tabulate(raw, "")

    def at(offset: int) -> int:
        return len(raw[:offset].decode("utf-8", "replace"))

    return tuple(
        Written(chr(letter), value, at(start), at(end))
        for letter, value, start, end in zip(
            p.word_letter.tolist(), p.word_value.tolist(), p.word_start.tolist(), p.word_end.tolist()
        )
    )


def edits_of(change: Change, texts: Mapping[int, str]) -> tuple[Edit, ...]:
    """The edits that set all words of a change, in the order of the text; empty where one of them cannot be made.

    `texts` holds the text of lines. An edit is left undone where the line is not known, holds a checksum, or does not
    read as it should with the edit made.
    """
    of_line: dict[int, list[SetWord]] = {}
    for word in change.set:
        of_line.setdefault(word.line, []).append(word)
    made: list[Edit] = []
    for line in sorted(of_line):
        edits = _edits_on(line, texts.get(line), of_line[line])
        if not edits:
            return ()
        made += edits
    return tuple(made)


def _edits_on(line: int, text: str | None, sets: list[SetWord]) -> list[Edit]:
    added_codes = [word for word in sets if word.word == "G" and word.from_ is None]  # several may stand on a line
    others = [word for word in sets if word not in added_codes]
    if not text or CHECKSUM.search(text) or len({word.word for word in others}) < len(others):
        return []
    written = words_on(text)
    if not written:
        return []
    edits, added, wanted = [], "", [(word.letter, word.value) for word in written]
    for word in sets:
        row = next((n for n in range(len(written) - 1, -1, -1) if written[n].letter == word.word), None)
        if word.from_ is None and (row is None or word in added_codes):
            lower = text[written[-1].start].islower()
            added += f" {word.word.lower() if lower else word.word}{_number(word.to, '')}"
            wanted.append((word.word, word.to))
        elif row is not None and word.from_ is not None and math.isclose(written[row].value, word.from_, rel_tol=1e-9):
            old = text[written[row].start : written[row].end]
            new = old[0] + _number(word.to, old)
            edits.append(Edit(line, written[row].start + 1, written[row].end + 1, new))
            wanted[row] = (word.word, word.to)
        else:
            return []
    if added:
        behind = written[-1].end + 1
        edits.append(Edit(line, behind, behind, added))
    edits.sort(key=lambda edit: edit.column)
    return edits if _reads_as(edited(text, edits), wanted) else []


def edited(text: str, edits: list[Edit]) -> str:
    """A line's text with the edits made, which stand in its order."""
    for edit in reversed(edits):
        text = text[: edit.column - 1] + edit.text + text[edit.end_column - 1 :]
    return text


def _number(value: float, like: str) -> str:
    """12.5 -> '12.5', 400 -> '400', and '400.' where the number it replaces has a point."""
    text = f"{value:.6f}".rstrip("0").rstrip(".")
    return f"{text}." if "." in like and "." not in text else text


def _reads_as(text: str, wanted: list[tuple[str, float]]) -> bool:
    read = [(word.letter, word.value) for word in words_on(text)]
    return len(read) == len(wanted) and all(
        letter == asked and (math.isclose(value, number, rel_tol=1e-6) or (value != value and number != number))
        for (letter, value), (asked, number) in zip(read, wanted)
    )

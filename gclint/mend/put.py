"""Edits of single words on lines of a draft, proved by reading the edited line again."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping

from gclint.mend.case import Case
from gclint.mend.draft import Edit
from gclint.mend.style import STAR, with_checksum
from gclint.program.read import tabulate


def put_words(case: Case, sets: Iterable[tuple[int, str, float | None]]) -> tuple[Edit, ...]:
    """Edits that write words: (line, letter, number in the program's units); None takes the word out.

    A letter that the line lacks is added behind its last word. Empty where one of them cannot be written.
    """
    of_line: dict[int, dict[str, float | None]] = {}
    for line, letter, value in sets:
        if of_line.setdefault(line, {}).setdefault(letter, value) != value:
            return ()
    edits = []
    for line in sorted(of_line):
        text = edited_line(case, line, of_line[line])
        if text is None:
            return ()
        if text != case.text(line):
            edits.append(Edit(line, text=text))
    return tuple(edits)


def edited_line(case: Case, line: int, sets: Mapping[str, float | None]) -> bytes | None:
    """The text of a line with words set; None where that cannot be done."""
    words, text = case.words(line), case.text(line)
    if not words or not case.plain(line):
        return None
    wanted = [(letter, value) for letter, value, _, _ in words]
    parts: list[tuple[int, int, bytes]] = []
    added = b""
    for letter, value in sets.items():
        rows = [row for row, word in enumerate(words) if word[0] == letter]
        if rows:
            row = rows[-1]
            _, old, start, end = words[row]
            if not math.isfinite(old):
                return None
            if value is None:
                while start > 0 and text[start - 1 : start] in (b" ", b"\t"):
                    start -= 1
                parts.append((start, end, b""))
                wanted[row] = ("", 0.0)
            else:
                new = _number(text[start:end], letter, value, case)
                parts.append((start, end, new))
                wanted[row] = (letter, float(new[1:]))
        elif value is not None:
            word = case.style.word(letter, value)
            if text[words[-1][2] : words[-1][2] + 1].islower():
                word = word.lower()
            added += (case.style.gap + word).encode("ascii")
            wanted.append((letter, float(word[1:])))
    if added:
        parts.append((words[-1][3], words[-1][3], added))
    # of two at one place the one that stands further to the left comes last
    for start, end, new in sorted(parts, key=lambda part: (part[0], part[1]), reverse=True):
        text = text[:start] + new + text[end:]
    if STAR.search(text):
        text = with_checksum(text)
    return text if _reads_as(text, [each for each in wanted if each[0]]) else None


def _number(old: bytes, letter: str, value: float, case: Case) -> bytes:
    """A word with another number: '12.5', and '400.' where the number it replaces has a point."""
    if letter in "XYZIJKR":
        text = case.style.word(letter, value)[1:]
    elif letter == "F" and b"." in old:
        text = case.style.feed(value)
    else:
        text = f"{value:.4f}".rstrip("0").rstrip(".")
        if b"." in old and "." not in text:
            text += "."
    gap = old[1 : len(old) - len(old[1:].lstrip(b" \t"))]
    return old[:1] + gap + text.encode("ascii")


def _reads_as(text: bytes, wanted: list[tuple[str, float | None]]) -> bool:
    if not wanted:
        return not tabulate(text, "").word_letter.size if text.strip() else True
    p = tabulate(text, "")
    read = list(zip((chr(letter) for letter in p.word_letter.tolist()), p.word_value.tolist()))
    return len(read) == len(wanted) and all(
        letter == asked
        and number is not None
        and (math.isclose(value, number, rel_tol=1e-6, abs_tol=1e-6) or value != value)
        for (letter, value), (asked, number) in zip(read, wanted)
    )

"""Stops at which people turn or move the part, or set zero anew: what is known of the blank ends there."""

from __future__ import annotations

import re
from functools import cache

import numpy as np
from msgspec import Struct

from gclint.facts.context import Context, once, stop_events
from gclint.shipped import folder
from gclint.tables.assumption import Assumption
from gclint.tables.motion import RAPID, Motion
from gclint.tables.program import Program, decode
from gclint.tables.setup import Setup
from gclint.toml.file import load

NEAR = 3  # lines of nothing but comments before or behind a stop that belong to it
LONGEST = 400  # bytes of a comment that are read
BETWEEN = 2  # other words between two of a phrase
MOST_STOPS = 1000  # different lines with stops that are looked at
WORD = re.compile(r"[^\W_]+", re.UNICODE)


class Phrase(Struct, frozen=True, forbid_unknown_fields=True):
    says: tuple[str, ...]
    but_not: tuple[str, ...] = ()
    turns: bool = False


class SetUps(Struct, frozen=True, forbid_unknown_fields=True):
    """The shipped list of phrases."""

    standing: str
    source: str
    phrase: tuple[Phrase, ...]


@cache
def _phrases() -> tuple[Phrase, ...]:
    return load(folder() / "model" / "set_ups.toml", SetUps, "list of phrases").phrase


def speaks_of_set_up(text: str) -> Phrase | None:
    """The first phrase that a comment holds; None where it speaks of no other set-up."""
    words = [word.lower() for word in WORD.findall(text)]
    for phrase in _phrases():
        if not set(phrase.but_not) & set(words) and any(_holds(words, each.split()) for each in phrase.says):
            return phrase
    return None


def _holds(words: list[str], wanted: list[str]) -> bool:
    """Whether the wanted words stand there in their order, with few others between."""
    for start, word in enumerate(words):
        if word != wanted[0]:
            continue
        at = start
        for each in wanted[1:]:
            near = words[at + 1 : at + 2 + BETWEEN]
            if each not in near:
                break
            at += 1 + near.index(each)
        else:
            return True
    return False


def comments_at(program: Program, line: int) -> str:
    """What the comments on a line say, and on lines of nothing but comments right before and behind it."""
    lines = [line]
    for step in (-1, 1):
        for n in range(1, NEAR + 1):
            near = line + n * step
            if not _comments_on(program, near) or _has_block(program, near):
                break
            lines.append(near)
    return " / ".join(text for each in sorted(lines) for text in _comments_on(program, each))


def _comments_on(program: Program, line: int) -> list[str]:
    column = program.comment_line
    first = int(np.searchsorted(column, column.dtype.type(max(line, 0))))
    found: list[str] = []
    while first < len(column) and column[first] == line and len(found) < 4:
        start, end = int(program.comment_start[first]), int(program.comment_end[first])
        found.append(decode(program.data[start : min(end, start + LONGEST)]))
        first += 1
    return found


def _has_block(program: Program, line: int) -> bool:
    at = int(np.searchsorted(program.block_line, program.block_line.dtype.type(line)))
    return at < len(program.block_line) and int(program.block_line[at]) == line


@once
def other_set_up(context: Context) -> Assumption | None:
    """What is cut behind the first such stop; None where there is none, or nothing is cut behind it.

    A stop before the first cut is the program's own set-up, unless it speaks of another side and no flip is declared.
    """
    pieces = context.engagement.pieces
    if not len(pieces):
        return None
    found = _first(context.program, context.motion, context.setup, int(pieces.move[0]), int(pieces.move[-1]))
    return None if found is None else _behind(context, *found)


def set_up_behind(program: Program, motion: Motion, setup: Setup) -> int:
    """Line of the first stop between feed moves that speaks of another set-up; 0 where there is none."""
    feeds = np.flatnonzero(motion.kind != RAPID)
    if not len(feeds):
        return 0
    found = _first(program, motion, setup, int(feeds[0]), int(feeds[-1]))
    return 0 if found is None else found[1]


def _first(program: Program, m: Motion, setup: Setup, begins: int, last: int) -> tuple[int, int] | None:
    """(row of the move behind it, line) of the first such stop before the last cut."""
    if not len(program.comment_line):
        return None
    known: dict[int, Phrase | None] = {}
    for row in stop_events(m, setup.controller).tolist():
        line, move = int(m.event_line[row]), int(m.event_move[row])
        if move > last:
            break
        if line not in known:
            if len(known) >= MOST_STOPS:
                break
            known[line] = speaks_of_set_up(comments_at(program, line))
        phrase = known[line]
        if phrase is not None and (move > begins or (phrase.turns and not setup.turned)):
            return move, line
    return None


def _behind(context: Context, move: int, line: int) -> Assumption:
    found = context.engagement
    said = " ".join(comments_at(context.program, line).split())
    return Assumption(
        entry="another-set-up",
        what="the blank behind a stop",
        value=f"as before the stop on line {line}",
        alternatives=("another side or another place of it",),
        because=f'the comment there says "{said[:80]}"',
        rows={
            "pieces": found.pieces.move >= move,
            "entries": found.entries.first_move >= move,
            "passes": found.pieces.move[found.passes.first_piece] >= move,
            "moves": np.arange(len(context.motion)) >= move,
        },
        line=line,
        always=True,
        spares=("spindle", "state", "time", "heat"),
    )

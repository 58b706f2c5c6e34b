"""Applies what findings say to set, judges again, and keeps only the words that take their finding away.

The stock is not cut again: F, S and P words change neither the path nor what it takes off. Only the text, the feeds
that are reached, the chips and the rules are worked out once more.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np
from msgspec.structs import replace as with_fields

from gclint.advice.edits import edited, edits_of
from gclint.cutting.load import load
from gclint.judge.judge import Judged, judge
from gclint.motion.compensate import compensate
from gclint.motion.feed_planning import plan_feed
from gclint.motion.interpret import interpret
from gclint.packs.pack import Pack
from gclint.problem import Problem
from gclint.program.read import read
from gclint.tables.cutting import Cutting
from gclint.tables.engagement import Engagement, Entries
from gclint.tables.finding import Change, Finding, SetWord
from gclint.tables.motion import RAPID, Motion
from gclint.tables.program import Program
from gclint.tables.setup import GRADES, Setup
from gclint.tables.timing import Timing

MOST_WORK = 300_000  # moves that are worked out again, over all that is tried
LEAST_WORK = 20_000  # moves that one try counts as, at least: a small program costs its rules
NOT_TRIED = "No word is offered to be set: the program is too long to try it, so check again afterwards."
MOST_ROUNDS = 3  # times that the words of one finding are mended by what they bring
MILD = GRADES.index("consider")
UNTOUCHED = ("part",)  # packs whose rules look at what is left of the blank alone
GEOMETRY = ("kind", "tool", "x0", "y0", "z0", "x1", "y1", "z1", "cu", "cv", "line")

Place = tuple[int, str, float]
Judge = Callable[[Sequence[SetWord], bool], "tuple[Finding, ...] | None"]


@dataclass(frozen=True)
class Case:
    """One program with all its tables, as it was judged."""

    program: Program
    motion: Motion
    timing: Timing
    engagement: Engagement
    cutting: Cutting
    setup: Setup
    packs: tuple[Pack, ...]
    folder: Path | None  # where subprograms beside it lie


def with_proof(judged: Judged, case: Case) -> Judged:
    """The same findings; what they say to set is proved, or mended until it is, or left out."""
    wanted = [n for n, one in enumerate(judged.findings) if one.change.set and one.accepted is None]
    if not wanted:
        return judged
    each = max(len(case.motion), LEAST_WORK)
    tries = max(1, MOST_WORK // each)
    made = list(judged.findings)
    for n in wanted:
        if tries <= 0:
            made[n] = with_fields(made[n], change=Change(f"{made[n].change.text} {NOT_TRIED}"))
            continue
        change, used = _proved(made[n], judged, lambda words, advise: _again(words, case, advise), tries)
        tries -= used
        made[n] = with_fields(made[n], change=change)
    return with_fields(judged, findings=tuple(made))


def _proved(one: Finding, judged: Judged, again: Judge, tries: int) -> tuple[Change, int]:
    """The change of one finding as it may be given, and how many times the program was judged for it."""
    words = {_place(word): word for word in one.change.set}
    for used in range(1, min(tries, MOST_ROUNDS) + 1):
        for advise in (False, True):  # most take their finding away, and then nothing more need be worked out
            after = again(tuple(words.values()), advise)
            if after is None:
                return _without_numbers(one.change, judged.plain), used
            left = [other for other in after if other.rule == one.rule and _places(other) & _places(one)]
            came = [other for other in after if other.accepted is None and not _known(other, judged.findings)]
            grave = [other for other in came if GRADES.index(other.grade) < MILD]
            if not left and not grave:
                return _told(one.change, words, came), used
        if not _mended(words, [*left, *grave]):
            break
    return _without_numbers(one.change, judged.plain), min(tries, MOST_ROUNDS)


def _place(word: SetWord) -> Place:
    """What a word stands in the place of; several codes may be added on one line."""
    return word.line, word.word, word.to if word.word == "G" else 0.0


def _mended(words: dict[Place, SetWord], findings: Iterable[Finding]) -> bool:
    """Put in what these findings say to set; False where that is nothing new."""
    old = dict(words)
    for other in findings:
        for word in other.change.set:
            key = _place(word)
            words[key] = word if key not in old else with_fields(word, from_=old[key].from_)
    return words != old


def _told(change: Change, words: Mapping[Place, SetWord], came: Sequence[Finding]) -> Change:
    """A change that is proved, in words; with what was put in beside it, and what it brings to consider."""
    sets = tuple(words.values())
    text = change.text
    if sets != change.set:
        sets = tuple(sorted(sets, key=lambda word: (word.line, word.word)))
        was = {_place(word): word for word in change.set}
        other = [word for key, word in words.items() if was.get(key) != word]
        if any(_place(each) in was for each in other):
            text = f"Set {_listed(sets)}: all of it together, since less brings another finding."
        else:
            text += f" Set {_listed(other)} with it, or what goes down there becomes the next finding."
    mild = list(dict.fromkeys(other.rule for other in came))
    if mild:
        text += f" Then look at {', '.join(mild)}: it comes with it, to consider."
    return Change(text, sets)


def _listed(words: Iterable[SetWord]) -> str:
    """'F120 on line 18 and 3 more lines, F400 on line 20'."""
    by: dict[str, list[int]] = {}
    for word in words:
        by.setdefault(f"{word.word}{word.to:g}", []).append(word.line)
    told = []
    for said, lines in by.items():
        more = len(lines) - 1
        rest = f" and {more:,} more line{'' if more == 1 else 's'}" if more else ""
        told.append(f"{said} on line {min(lines)}{rest}")
    return ", ".join(told)


def _without_numbers(change: Change, plain: Mapping[str, str]) -> Change:
    """What a rule says where nothing is worked out: a kind of change, and no number that may be wrong."""
    text = plain.get(change.text, "").removeprefix("Or ").strip()
    if not text:
        words = {word.word for word in change.set}
        what = "speed and the feeds with it" if "S" in words else "feed" if "F" in words else "wait"
        text = f"Try another {what} and check again: no number was found that mends this and brings nothing else."
    return Change(text[:1].upper() + text[1:])


def _places(one: Finding) -> frozenset[int]:
    return frozenset((one.line, one.worst_line, *one.lines))


def _known(one: Finding, before: Iterable[Finding]) -> bool:
    """Whether the same rule has said it there already, as gravely."""
    return any(
        old.rule == one.rule and GRADES.index(old.grade) <= GRADES.index(one.grade) and _places(old) & _places(one)
        for old in before
    )


def _again(words: Sequence[SetWord], case: Case, advise: bool) -> tuple[Finding, ...] | None:
    """What is found with these words set; None where they cannot be written, or change where the tool goes."""
    lines = sorted({word.line for word in words})
    texts = {line: case.program.line_text(line) for line in lines if 1 <= line <= case.program.lines}
    edits = edits_of(Change("", tuple(words)), texts)
    if not edits:
        return None
    data = case.program.data
    for line in reversed(lines):
        start, end = (int(n) for n in case.program.line_start[line - 1 : line + 1])
        bare = texts[line]
        old = data[start:end]
        new = edited(bare, [edit for edit in edits if edit.line == line]).encode("utf-8", "surrogateescape")
        ending = old[len(old.rstrip(b"\r\n")) :]
        data = data[:start] + new + ending + data[end:]
    setup, engagement = case.setup, case.engagement
    try:
        program = read(data, case.program.name)
        motion = compensate(interpret(program, setup.controller, None, case.folder), setup, program)
    except Problem:
        return None
    if not _same_path(motion, case.motion):
        return None
    timing = plan_feed(motion, setup)
    engagement = replace(engagement, entries=_entries(engagement, case.motion, motion))
    cutting = load(motion, timing, engagement, setup)
    packs = tuple(pack for pack in case.packs if pack.name not in UNTOUCHED)
    return judge(program, motion, timing, engagement, cutting, setup, packs, advise=advise).findings


def _same_path(new: Motion, old: Motion) -> bool:
    if len(new) != len(old):
        return False
    return all(np.array_equal(getattr(new, name), getattr(old, name), equal_nan=name not in ("kind", "tool", "line"))
               for name in GEOMETRY)  # fmt: skip


def _entries(engagement: Engagement, old: Motion, new: Motion) -> Entries:
    """The entries with the feeds of other F words: of each the highest, and the highest downward share of it."""
    entries, pieces = engagement.entries, engagement.pieces
    changed = np.flatnonzero((old.feed != new.feed) & np.isfinite(new.feed))
    if not len(entries) or not len(changed):
        return entries
    feed, down = entries.feed.copy(), entries.z_feed.copy()
    within = np.searchsorted(changed, entries.last_move, side="right") > np.searchsorted(changed, entries.first_move)
    for row in np.flatnonzero(within).tolist():
        first, last = int(entries.first_move[row]), int(entries.last_move[row])
        moves = slice(first, last + 1)
        fed = new.feed[moves][new.kind[moves] != RAPID]
        feed[row] = np.nanmax(fed) if np.isfinite(fed).any() else np.nan
        rows = slice(*np.searchsorted(pieces.move, (first, last + 1)))
        move = pieces.move[rows]
        steep = np.maximum(pieces.drop[rows], 0.0) / np.maximum(pieces.length[rows], 1e-12)
        # bits of next to no depth were passed over: what fell faster than the entry was said to is one of them
        counts = (new.kind[move] != RAPID) & (steep * old.feed[move] <= down[row] * (1 + 1e-5))
        if counts.any() and np.isfinite(down[row]):
            down[row] = np.nanmax(np.where(counts, steep * new.feed[move], 0.0))
    return replace(entries, feed=feed, z_feed=down)

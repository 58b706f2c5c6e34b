"""Facts about a program's own habits: a number that stands against all its like in the same program.

One digit, point or sign that went wrong leaves the rest of the program as evidence. Each row of the table `oddities` is
one word whose number stands apart, with the number that its like suggest. Nothing is said where the program has too few
of the same sort to compare with.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import NamedTuple

import numpy as np

from gclint.columns import Bools, Column, Floats, distinct, firsts, numbered
from gclint.facts.context import Context, once
from gclint.facts.fact import Build, Table, number, text
from gclint.faults import CODE
from gclint.knowledge.numbers import model_number
from gclint.tables.motion import ARC_CW, CYCLE, HOME, INCH, MACHINE, OTHER_FRAME, PROBE, RAPID

SORTS = ("coordinate", "depth", "feed", "speed", "step", "arc")
KINDS = ("digit", "sign", "swapped", "skipped", "mirrored", "spike")
OF_PLANE = {17: ("X", "Y", "I", "J"), 18: ("Z", "X", "K", "I"), 19: ("Y", "Z", "J", "K")}
MOST_CANDIDATES = 400  # of one axis; a program with more extremes than this has no habit
MOST_ROWS = 50
MOST_MOVES = 200_000  # of a program in which single slips are looked for: longer ones are written by exporters alone


class Oddity(NamedTuple):
    """`value` and `like` are mm, mm/min or rev/min; `others`: how many of its like say otherwise."""

    sort: str
    kind: str
    letter: str
    line: int
    move: int
    value: float
    like: float
    others: int


@once
def oddities(context: Context) -> list[Oddity]:
    """Every word that stands against its like, in the order of the lines; one a line."""
    found: dict[int, Oddity] = {}
    if not int(model_number("habit_least")) <= len(context.motion) <= MOST_MOVES:
        return sorted(_arc_slips(context), key=lambda one: one.line)
    finders: tuple[Callable[[Context], Iterator[Oddity]], ...] = (
        _depths, _dips, _mirrored, _coordinates, _swapped, _feeds, _speeds, _steps
    )
    for finder in finders:
        for one in finder(context):
            found.setdefault(one.line, one)
            if len(found) >= MOST_ROWS:
                break
    wrong = {(one.letter, round(one.value, 4)) for one in found.values() if one.sort == "coordinate"}
    m = context.motion
    for one in _arc_slips(context):  # behind a wrong place even a right arc does not close
        starts = {("X", round(float(m.x1[one.move]), 4)), ("Y", round(float(m.y1[one.move]), 4))}
        if not starts & wrong:
            found[one.line] = one
    return [found[line] for line in sorted(found)]


def _words(context: Context, letter: str) -> tuple[Floats, Column]:
    """[moves] the number behind the first such word on the move's line as written (NaN: none), and lines that have it.

    Only lines that make one move: what a loop or a cycle does stands for no word of its own.
    """
    p, m = context.program, context.motion
    words = np.flatnonzero(p.word_letter == ord(letter))
    lines = p.block_line[np.searchsorted(p.block_word, words, side="right") - 1]
    lines, first = firsts(lines)
    values = p.word_value[words[first]]
    made = np.full(len(m), np.nan)
    if len(lines):
        row = np.minimum(np.searchsorted(lines, m.line), len(lines) - 1)
        has = lines[row] == m.line
        made[has] = values[row[has]]
    made[_many(context)] = np.nan
    return made, lines


@once
def _many(context: Context) -> Bools:
    """[moves] whether the move's line makes more than one, or is no plain absolute move of its own."""
    m = context.motion
    _, place = numbered(m.line)
    counts = np.bincount(place)
    odd: Bools = (counts[place] != 1) | (m.flags & (MACHINE | HOME | OTHER_FRAME | PROBE | CYCLE) != 0)
    return odd


@once
def _unit(context: Context) -> Floats:
    """[moves] mm in one unit of the program there."""
    return np.where(context.motion.flags & INCH != 0, 25.4, 1.0)


@once
def _typical(context: Context) -> Floats:
    """[moves] the median length of the moves at feed around each, mm; NaN where there are too few."""
    m = context.motion
    feeds = np.flatnonzero((m.kind != RAPID) & np.isfinite(m.length) & (m.length > 0))
    made = np.full(len(m), np.nan)
    half = int(model_number("habit_around"))
    if len(feeds) < 2 * half:
        return made
    windows = np.lib.stride_tricks.sliding_window_view(m.length[feeds], 2 * half)
    middle = np.median(windows[:: max(1, half // 2)], axis=1)
    at = np.minimum(np.arange(len(windows))[:: max(1, half // 2)] + half, len(feeds) - 1)
    made[:] = np.interp(np.arange(len(m)), feeds[at], middle)
    return made


# ---- arcs


def _arc_slips(context: Context) -> Iterator[Oddity]:
    """A word of an arc that does not close, where one other sign, point or order of letters alone closes it."""
    m, p = context.motion, context.program
    lines = distinct(m.faults.line[m.faults.kind == CODE["arc-does-not-close"]]).tolist()
    for line in lines[:MOST_ROWS]:
        before = int(np.searchsorted(m.line, line)) - 1  # in the order of the text, as no loop is looked at
        block = int(np.searchsorted(p.block_line, line))
        if m.followed is not None or before < 0 or block >= len(p.block_line) or int(p.block_line[block]) != line:
            continue
        plane = _plane_at(context, line, before)
        places = {"X": m.x1, "Y": m.y1, "Z": m.z1}
        u, v, i, j = OF_PLANE[plane]
        x0, y0 = float(places[u][before]), float(places[v][before])
        unit = 25.4 if m.flags[before] & INCH else 1.0
        words = range(int(p.block_word[block]), int(p.block_word[block + 1]))
        named = {chr(int(p.word_letter[w])): float(p.word_value[w]) * unit for w in words}
        said = {letter: value for letter, value in named.items() if letter in (u, v, i, j)}
        if not {i, j} & set(said) or not np.isfinite([x0, y0, *said.values()]).all():
            continue
        pairs = ((u, v), (i, j))
        closing = [
            (kind, letter, to) for kind, letter, to, other in _rewritten(said, pairs)
            if _closes([other.get(c, none) for c, none in ((u, x0), (v, y0), (i, 0.0), (j, 0.0))], x0, y0)
        ]  # fmt: skip
        # the slip may as well lie in the move before, where that goes farther than any other
        starts = _rewritten({w: at for w, at in ((u, x0), (v, y0)) if _outlying(places[w], before)}, ())
        at = [said.get(c, none) for c, none in ((u, x0), (v, y0), (i, 0.0), (j, 0.0))]
        elsewhere = any(_closes(at, other.get(u, x0), other.get(v, y0)) for *_, other in starts)
        if len(closing) == 1 and not elsewhere:
            kind, letter, to = closing[0]
            yield Oddity("arc", kind, letter, line, before, said[letter], to, 1)


def _outlying(ends: Floats, row: int) -> bool:
    """Whether this end lies beyond all others."""
    others = np.delete(ends, row)
    low, high = np.fmin.reduce(others, initial=np.inf), np.fmax.reduce(others, initial=-np.inf)
    return bool(ends[row] < low or ends[row] > high)


def _plane_at(context: Context, line: int, before: int) -> int:
    """The plane in force on a line: the last G17, G18 or G19 up to it, else that of the move before."""
    p = context.program
    codes = np.flatnonzero((p.word_letter == ord("G")) & (p.word_value >= 17) & (p.word_value <= 19))
    lines = p.block_line[np.searchsorted(p.block_word, codes, side="right") - 1]
    row = int(np.searchsorted(lines, line, side="right")) - 1
    return int(p.word_value[codes[row]]) if row >= 0 else int(context.motion.plane[before])


def _rewritten(
    said: dict[str, float], pairs: tuple[tuple[str, str], ...]
) -> Iterator[tuple[str, str, float, dict[str, float]]]:
    """(kind, letter, its other number, all words with it) for each single slip of an arc's words."""
    for letter, value in said.items():
        if value:
            yield "sign", letter, -value, said | {letter: -value}
            for power in (10.0, 100.0, 1000.0):
                yield "digit", letter, value / power, said | {letter: value / power}
                yield "digit", letter, value * power, said | {letter: value * power}
    for a, b in pairs:
        if a in said and b in said and said[a] != said[b]:
            yield "swapped", a, said[b], said | {a: said[b], b: said[a]}


def _closes(words: list[float], x0: float, y0: float) -> bool:
    x, y, i, j = words
    radius = float(np.hypot(i, j))
    near = model_number("slip_closes")
    return radius > 5 * near and abs(float(np.hypot(x - x0 - i, y - y0 - j)) - radius) <= near


# ---- coordinates


def _axis(context: Context, letter: str) -> tuple[Floats, Floats, Floats, Floats]:
    """[moves] the word as a place in mm (NaN: none, or it is no absolute place), where the axis was, and where it goes
    when it next moves."""
    m = context.motion
    start, end = (m.x0, m.x1) if letter == "X" else (m.y0, m.y1)
    word, _ = _words(context, letter)
    value = word * _unit(context)
    absolute = np.isfinite(value) & (np.abs(value - end) < 1e-4)
    value = np.where(absolute, value, np.nan)
    # a word that is not named again stays in force: the next place is that of the next move which leaves it
    stays = np.concatenate((np.abs(np.diff(end)) < 1e-9, [False]))
    last = np.where(stays, len(end), np.arange(len(end)))
    last = np.minimum.accumulate(last[::-1])[::-1] if len(last) else last
    after = np.concatenate((end, [np.nan]))[np.minimum(last + 1, len(end))]
    return value, start, after, end


def _others_of(context: Context, letter: str) -> Iterator[tuple[int, float, float, float, int]]:
    """Candidates of one axis: (move, value, lowest and highest of all other values, how many others)."""
    value, _, _, _ = _axis(context, letter)
    rows = np.flatnonzero(np.isfinite(value))
    if len(rows) < int(model_number("habit_least_places")):
        return
    order = rows[np.argsort(value[rows], kind="stable")]
    v = value[order]
    for n in (0, len(order) - 1):
        others = np.delete(v, n)
        yield int(order[n]), float(v[n]), float(others[0]), float(others[-1]), len(others)


def _coordinates(context: Context) -> Iterator[Oddity]:
    """A coordinate far outside all others, or a spike, that another point or sign would put among its like."""
    for letter in "XY":
        yield from _outside(context, letter)
        yield from _spikes(context, letter)


def _alternatives(value: float) -> Iterator[tuple[str, float]]:
    for power in (10.0, 100.0, 1000.0, 10000.0):
        yield "digit", value / power
    yield "sign", -value


def _outside(context: Context, letter: str) -> Iterator[Oddity]:
    _, start, after, _ = _axis(context, letter)
    far = model_number("habit_outside")
    for move, v, low, high, count in _others_of(context, letter):
        if _parked(context, move):
            continue
        span = high - low
        gap = max(v - high, low - v)
        least = max(2 * _diameter(context, move), 8.0)
        before, then = float(start[move]), float(after[move])
        for kind, a in _alternatives(v):
            enough = max(far * span, least) if kind == "digit" else least
            if kind == "sign" and not (low >= -0.1 * span if v < 0 else high <= 0.1 * span):
                continue
            if gap <= enough or not low - 0.02 * span <= a <= high + 0.02 * span:
                continue
            if not _nearer(a, v, before, then):
                continue
            yield Oddity("coordinate", kind, letter, int(context.motion.line[move]), move, v, a, count)
            break


def _parked(context: Context, move: int) -> bool:
    """Whether the move is a rapid to a place where nothing is done at feed before the tool goes elsewhere."""
    m = context.motion
    x, y = m.x1[move], m.y1[move]
    for after in range(move, len(m)):
        if m.kind[after] != RAPID:
            return False
        if m.x1[after] != x or m.y1[after] != y:
            return True
    return True


def _nearer(a: float, v: float, before: float, after: float) -> bool:
    """Whether the other number would lie much nearer to the places before and after."""
    sides = [p for p in (before, after) if np.isfinite(p)]
    if not sides:
        return False
    return sum(abs(a - p) for p in sides) < model_number("habit_nearer") * sum(abs(v - p) for p in sides)


def _diameter(context: Context, move: int) -> float:
    tool = context.setup.tools.get(int(context.motion.tool[move]))
    return tool.diameter if tool is not None else 0.0


def _spikes(context: Context, letter: str) -> Iterator[Oddity]:
    """Out a long way and straight back among short moves at feed, where another point or sign makes it short."""
    m = context.motion
    value, start, _, end = _axis(context, letter)
    after = np.concatenate((end[1:], [np.nan]))
    typical = _typical(context)
    with np.errstate(invalid="ignore"):
        out, back = value - start, after - value
        long = model_number("habit_spike") * typical
        spike = (m.kind != RAPID) & (np.abs(out) > np.maximum(long, 5.0)) & (np.abs(back) > np.maximum(long, 5.0))
        spike &= (np.sign(out) != np.sign(back)) & (np.abs(start - after) < 0.5 * np.abs(out))
    rows = np.flatnonzero(spike)
    if len(rows) > MOST_CANDIDATES or len(rows) > 0.02 * len(m) + 1:
        return
    for move in rows.tolist():
        v = float(value[move])
        if np.count_nonzero(np.abs(value - v) < 1e-3) > 1:  # a slip happens once; this place is meant
            continue
        near = 1.5 * float(typical[move])
        low, high = sorted((float(start[move]), float(after[move])))
        for kind, a in _alternatives(v):
            if low - near <= a <= high + near and _nearer(a, v, float(start[move]), float(after[move])):
                yield Oddity("coordinate", kind, letter, int(m.line[move]), move, v, a, len(m))
                break


def _swapped(context: Context) -> Iterator[Oddity]:
    """X and Y changed over: each would fit the place before and after in the other's stead."""
    m = context.motion
    x, x_from, _, x_end = _axis(context, "X")
    y, y_from, _, y_end = _axis(context, "Y")
    x_to, y_to = np.concatenate((x_end[1:], [np.nan])), np.concatenate((y_end[1:], [np.nan]))
    typical = _typical(context)
    with np.errstate(invalid="ignore"):
        now = np.hypot(x - x_from, y - y_from) + np.hypot(x - x_to, y - y_to)
        other = np.hypot(y - x_from, x - y_from) + np.hypot(y - x_to, x - y_to)
        odd = (m.kind != RAPID) & (now > np.maximum(2 * model_number("habit_spike") * typical, 20.0))
        odd &= (other < 0.2 * now) & (other < 6 * typical)
    rows = np.flatnonzero(odd)
    if len(rows) > 3:
        return
    for move in rows.tolist():
        yield Oddity("coordinate", "swapped", "X", int(m.line[move]), move, float(x[move]), float(y[move]), len(m))


# ---- depths


def _depths(context: Context) -> Iterator[Oddity]:
    """A depth ten times its like, or a feed move up to where its like go down to."""
    m = context.motion
    word, _ = _words(context, "Z")
    value = word * _unit(context)
    value = np.where(np.abs(value - m.z1) < 1e-4, value, np.nan)
    feeds = np.isfinite(value) & (m.kind != RAPID)
    for tool in distinct(m.tool[feeds]).tolist():  # one engraves, another cuts through
        rows = np.flatnonzero(feeds & (m.tool == tool))
        if len(rows) < int(model_number("habit_least_depths")):
            continue
        v = value[rows]
        yield from _too_deep(context, rows, v, np.sort(v[v < 0]))
        yield from _turned_up(context, rows, v)


def _too_deep(context: Context, rows: Column, v: Floats, deep: Floats) -> Iterator[Oddity]:
    if len(deep) < 2:
        return
    lowest = float(deep[0])
    same = int(np.count_nonzero(np.abs(deep - lowest) < 1e-6))
    others = deep[same:]
    if not len(others) or same > max(1, len(deep) // 8) or lowest > model_number("habit_deeper") * float(others[0]):
        return
    for power in (10.0, 100.0, 1000.0):
        a = lowest / power
        known = bool(np.any(np.abs(others - a) <= 0.01 * abs(a)))
        next_step = len(others) >= 3 and 0.5 * float(others[0]) >= a >= 1.6 * float(others[0])
        if known or next_step:
            for move in rows[np.abs(v - lowest) < 1e-6].tolist():
                yield Oddity("depth", "digit", "Z", int(context.motion.line[move]), move, lowest, a, len(others))
            return


def _turned_up(context: Context, rows: Column, v: Floats) -> Iterator[Oddity]:
    """G1 Z4 where all others of its sort say G1 Z-4, and no other move goes to that height."""
    m = context.motion
    deep = v[v < 0]
    heights = np.round(m.z1[np.isfinite(m.z1)], 3)
    for move in rows[v > 0].tolist():
        z = float(m.z1[move])
        like = int(np.count_nonzero(np.abs(deep + z) <= 1e-3))
        stays = _level_behind(context, move, z)
        last = move + stays
        # an approach before the plunge comes from above and goes on down
        goes_down = last < len(m) and m.z1[last] < z and not m.z0[move] < z
        alone = np.count_nonzero(heights == round(z, 3)) == stays and not (stays == 1 and goes_down)
        level = _in_order(context, move, z)
        if level or (like and (alone or _up_between_rapids(context, move) or _pops_up(context, move, z))):
            yield Oddity("depth", "sign", "Z", int(m.line[move]), move, z, -z, like)


def _in_order(context: Context, move: int, z: float) -> bool:
    """Whether -Z is the level between the one before, which the move leaves straight up, and the next deeper one."""
    m = context.motion
    last = move + _level_behind(context, move, z)
    if last >= len(m) or m.kind[last] == RAPID or m.x0[move] != m.x1[move] or m.y0[move] != m.y1[move]:
        return False
    first, third = float(m.z0[move]), float(m.z1[last])
    step = first + z
    return bool(first < 0 and step > 0 and abs((-z - third) - step) <= 0.1 * step)


def _up_between_rapids(context: Context, move: int) -> bool:
    """Whether one feed move between two rapids goes straight up, or nowhere, above Z0: a hole that is never made."""
    m = context.motion
    if not 0 < move < len(m) - 1 or m.kind[move - 1] != RAPID or m.kind[move + 1] != RAPID:
        return False
    still = m.x0[move] == m.x1[move] and m.y0[move] == m.y1[move]
    return bool(still and m.z0[move] >= 0 and m.z1[move] >= m.z0[move] and m.z1[move + 1] >= 0)


def _pops_up(context: Context, move: int, z: float) -> bool:
    """Whether a feed move leaves a depth for the same height above Z0, and the next one goes back to that depth."""
    m = context.motion
    if not 0 < move < len(m) - 1 or m.kind[move + 1] == RAPID:
        return False
    return bool(abs(m.z0[move] + z) < 1e-3 and abs(m.z1[move + 1] + z) < 1e-3)


def _dips(context: Context) -> Iterator[Oddity]:
    """One feed move that goes down far below the moves before and after, which lie at nearly one depth, and back."""
    m = context.motion
    if len(m) < 3:
        return
    drop, rise = m.z0[:-1] - m.z1[:-1], m.z1[1:] - m.z1[:-1]
    travels = (np.hypot(m.x1 - m.x0, m.y1 - m.y0) > 1e-6) & (m.kind != RAPID)
    small = np.abs(m.z1 - m.z0)[travels & (np.abs(m.z1 - m.z0) > 1e-6)]
    usual = float(np.median(small)) if len(small) else 0.0
    least = max(1.0, model_number("habit_dip") * usual)
    with np.errstate(invalid="ignore"):
        odd = travels[:-1] & travels[1:] & (drop > least) & (rise > least) & (m.z0[:-1] < 0)
        odd &= np.abs(m.z1[1:] - m.z0[:-1]) < 0.3 * np.minimum(drop, rise)
    rows = np.flatnonzero(odd)
    if len(rows) > 1:
        return
    for move in rows.tolist():
        like = (float(m.z0[move]) + float(m.z1[move + 1])) / 2
        yield Oddity("depth", "spike", "Z", int(m.line[move]), move, float(m.z1[move]), like, len(small))


def _mirrored(context: Context) -> Iterator[Oddity]:
    """A full circle with its centre on the other side of its start than all others that begin there."""
    m = context.motion
    chord = np.hypot(m.x1 - m.x0, m.y1 - m.y0)
    rows = np.flatnonzero((m.kind >= ARC_CW) & (m.plane == 17) & (chord < 1e-4) & ~_many(context))
    if not 3 <= len(rows) <= MOST_MOVES:
        return
    _, place = numbered(np.round(m.x0[rows], 3) + 1j * np.round(m.y0[rows], 3))
    for n in np.flatnonzero(np.bincount(place) >= 3).tolist():
        of = rows[place == n]
        i, j = m.cu[of] - m.x0[of], m.cv[of] - m.y0[of]
        # of three or more the middle one is one of the others
        opposite = (np.hypot(i + np.median(i), j + np.median(j)) < 2e-3) & (np.hypot(i, j) > 0.05)
        for k in np.flatnonzero(opposite)[:2].tolist():
            others = np.delete(np.arange(len(of)), k)
            if (np.hypot(i[others] + i[k], j[others] + j[k]) < 1e-3).all():
                letter, value = ("I", float(i[k])) if abs(i[k]) > abs(j[k]) else ("J", float(j[k]))
                move = int(of[k])
                yield Oddity("arc", "mirrored", letter, int(m.line[move]), move, value, -value, len(others))


def _level_behind(context: Context, move: int, z: float) -> int:
    """How many moves end at this height in the run that begins with `move`."""
    apart = np.flatnonzero(np.abs(context.motion.z1[move:] - z) > 1e-3)
    return int(apart[0]) if len(apart) else len(context.motion) - move


# ---- feeds and speeds


def _feeds(context: Context) -> Iterator[Oddity]:
    """An F ten times, or a tenth of, what moves of its sort have: straight down, level, or down a ramp."""
    m = context.motion
    feeds = (m.kind != RAPID) & np.isfinite(m.feed) & np.isfinite(m.length)
    with np.errstate(invalid="ignore", divide="ignore"):
        drop = m.z0 - m.z1
        across = np.hypot(m.x1 - m.x0, m.y1 - m.y0)
        across = np.where(m.kind >= ARC_CW, np.maximum(across, np.abs(m.length) * 0.5), across)
    # straight down, level, a ramp down, and all that rises: an entry may well go at a tenth of the cutting feed
    level = np.abs(drop) <= 0.01 * across
    sorts = np.select((level, drop > np.maximum(across, 1e-6), drop > 0), (1, 0, 2), 3)
    for sort in (0, 1, 2):
        for tool in context.tools:
            rows = np.flatnonzero(feeds & (sorts == sort) & (m.tool == tool))
            yield from _odd_feeds(context, rows)


def _odd_feeds(context: Context, rows: Column) -> Iterator[Oddity]:
    """A feed that few moves, or one F word, have, where ten times it or a tenth of it is what the sort has."""
    m = context.motion
    _, first = firsts(m.feed_line[rows])
    times = model_number("habit_feed_apart")
    for of, least in ((rows, "habit_least"), (rows[first], "habit_least_feeds")):  # by moves, then by words
        if len(of) < int(model_number(least)):
            continue
        levels, place = numbered(np.round(m.feed[of], 3))
        counts = np.bincount(place)
        if not 2 <= len(levels) <= 40:
            continue
        for n, (f, count) in enumerate(zip(levels.tolist(), counts.tolist())):
            if count > max(1, 0.1 * len(of)):
                continue
            for factor in (0.1, 10.0):
                like = int(counts[np.abs(levels - f * factor) <= 0.02 * f * factor].sum())
                others = np.delete(levels, n)
                apart = f > times * others.max() if factor < 1 else f < others.min() / times
                if like < max(3, 3 * count) or not apart:
                    continue
                move = int(of[np.flatnonzero(place == n)[0]])
                line = int(m.feed_line[move]) or int(m.line[move])
                yield Oddity("feed", "digit", "F", line, move, float(f), float(f * factor), like)
                break


def _speeds(context: Context) -> Iterator[Oddity]:
    """An S ten times, or a tenth of, all others of the program."""
    m = context.motion
    known = np.isfinite(m.speed) & (m.kind != RAPID) & (m.speed_line > 0)
    lines, first = firsts(m.speed_line[known])
    moves = np.flatnonzero(known)[first]
    speeds = m.speed[moves]
    if len(lines) < 3:
        return
    for n, s in enumerate(speeds.tolist()):
        others = np.delete(speeds, n)
        usual = float(np.median(others))
        for factor in (0.1, 10.0):
            alone = s > 5 * others.max() if factor < 1 else s < 0.2 * others.min()
            if alone and abs(s * factor - usual) <= 0.02 * usual:
                yield Oddity("speed", "digit", "S", int(lines[n]), int(moves[n]), s, s * factor, len(others))


# ---- steps of depth


def _steps(context: Context) -> Iterator[Oddity]:
    """One step of depth twice as large as all others of one operation: a level was left out."""
    m = context.motion
    level = (m.kind != RAPID) & (np.abs(m.z1 - m.z0) < 1e-6) & (m.z1 < 0) & (m.length > 0)
    across = np.hypot(m.x1 - m.x0, m.y1 - m.y0) > 1e-6
    rows = np.flatnonzero(level & (across | (m.kind >= ARC_CW)) & ~_many(context))
    if not len(rows):
        return
    begins = np.concatenate(([True], np.diff(m.tool[rows]) != 0))
    for part in np.split(rows, np.flatnonzero(begins)[1:]):
        yield from _steps_of(context, part)


def _steps_of(context: Context, rows: Column) -> Iterator[Oddity]:
    m = context.motion
    z = np.round(m.z1[rows], 4)
    change = np.flatnonzero(np.concatenate(([True], np.diff(z) != 0)))
    levels, at = z[change], rows[change]
    down = np.diff(levels) < 0
    # stretches of levels that only go down: one operation, from its first level to its last
    edges = np.flatnonzero(~down)
    for first, last in zip(np.concatenate(([0], edges + 1)), np.concatenate((edges, [len(levels) - 1]))):
        steps = -np.diff(levels[first : last + 1])
        if len(steps) < int(model_number("habit_least_steps")):
            continue
        usual = float(np.median(steps))
        same = np.abs(steps - usual) <= 0.02 * usual
        double = np.flatnonzero(np.abs(steps - 2 * usual) <= 0.03 * usual)
        if len(double) != 1 or np.count_nonzero(same) < len(steps) - 2 or double[0] == len(steps) - 1:
            continue
        n = int(first + double[0] + 1)
        move = int(at[n])
        line = int(context.depth_line[move]) or int(m.line[move])
        yield Oddity("step", "skipped", "Z", line, move, 2 * usual, usual, int(np.count_nonzero(same)))


def _column(name: str, kind: type) -> Build:
    def build(context: Context) -> Column:
        return np.array([getattr(one, name) for one in oddities(context)], dtype=kind)

    return build


def _coded(name: str, words: tuple[str, ...]) -> Build:
    def build(context: Context) -> tuple[Column, tuple[str, ...]]:
        return np.array([words.index(getattr(one, name)) for one in oddities(context)], dtype=np.int32), words

    return build


LETTERS = ("X", "Y", "Z", "F", "S", "I", "J", "K")
ODDITIES = Table(
    "oddities",
    "words whose number stands against all its like in the same program",
    {
        "sort": text("what the number is", _coded("sort", SORTS), words=SORTS),
        "kind": text("how it stands apart", _coded("kind", KINDS), words=KINDS),
        "letter": text("the word's letter", _coded("letter", LETTERS), words=LETTERS),
        "line": number("", "line of the word", _column("line", float)),
        "place": number("mm", "the number, of a coordinate, depth or step", _column("value", float)),
        "place_like": number("mm", "the number that its like suggest", _column("like", float)),
        "feed": number("mm/min", "the number, of a feed", _column("value", float)),
        "feed_like": number("mm/min", "the feed that its like suggest", _column("like", float)),
        "speed": number("rev/min", "the number, of a speed", _column("value", float)),
        "speed_like": number("rev/min", "the speed that its like suggest", _column("like", float)),
        "count": number("", "how many of its like say otherwise", _column("others", float)),
    },
    length=lambda context: len(oddities(context)),
    tool=lambda context: context.motion.tool[_column("move", int)(context)],
    move=_column("move", np.int64),
)

TABLES = (ODDITIES,)

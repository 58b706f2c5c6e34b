"""The proof of a copy, in five parts; a copy of which one part fails is not written.

1 surface: the lowest place of all feed moves is the original's. 2 state: what is in force at every untouched line is
the original's. 3 reach, time, stock: nothing goes further, nothing is freed earlier, no wall is cut the other way.
4 findings: what is claimed is gone, nothing is new or worse. 5 text: every untouched line is byte for byte the same.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from gclint.columns import Bools, Floats, Ints, Longs
from gclint.faults import KINDS
from gclint.mend.case import Case, Proposal
from gclint.mend.draft import Draft
from gclint.mend.lenient import meant
from gclint.mend.modes import G_GROUPS, M_GROUPS
from gclint.mend.style import N_WORD, STAR, with_checksum
from gclint.mend.surface import Z_TOLERANCE, Difference, compare_surfaces
from gclint.motion.along import points_at
from gclint.tables.finding import Finding
from gclint.tables.motion import LIFT_UNKNOWN, RAPID, Motion

GRAVE = ("halt", "change")
RANK = {"halt": 0, "change": 1, "consider": 2}
NEAR = 1e-6  # mm; positions of untouched moves
FURTHER = 0.01  # mm; reach
WORSE = 1.02  # of the figure; within it a finding is as it was
SIDE = 0.95  # of the diameter; narrower cuts have a wall that stays on one side
NARROW = 0.6  # of the diameter; the same for one square of the plan, where corners and ends of slots lie too
MOST_CONVENTIONAL = 0.02  # of the volume taken off beside walls, that may be cut the other way more than before
MOST_CONVENTIONAL_HERE, WALL = 0.1, 10.0  # the same within one square of the plan, and its side, mm


class Failure(Struct, frozen=True):
    """`lines`: of the original, where it fails; empty: it cannot be told."""

    part: str
    says: str
    lines: tuple[int, ...] = ()
    finding: Finding | None = None  # of the copy, where it is new


@dataclass(frozen=True, slots=True)
class Proved:
    failures: tuple[Failure, ...]
    surface: Difference | None  # None: not looked at, since something else failed


def prove(
    original: Case, copy: Case, proposals: Sequence[Proposal], claims: Sequence[tuple[str, frozenset[int]]]
) -> Proved:
    """`claims`: (rule, lines of the original) that must be gone."""
    failures = [*_text(original.draft, copy.draft)]
    was, now = original, copy
    if any(each.lenient for each in proposals):
        was, now = meant(original), meant(copy)
    if not failures:
        failures += _state(
            was,
            now,
            any(each.words for each in proposals),
            any(each.starts for each in proposals),
            max((each.floor for each in proposals), default=-math.inf),
            any(each.lenient for each in proposals),
        )
    failures += _reach(was, now)
    if was is original:
        failures += _direction(original, copy)
    failures += _findings(original, copy, claims)
    if failures:  # the surface takes the longest, and is looked at last
        return Proved(tuple(failures), None)
    surface = compare_surfaces(was.motion, now.motion, original.setup)
    floor = max((each.floor for each in proposals), default=-math.inf)
    boxes = tuple(box for each in proposals for box in each.boxes)
    judged = compare_surfaces(was.motion, now.motion, original.setup, floor) if math.isfinite(floor) else surface
    if not judged.same and not (boxes and _within(judged, boxes)):
        says = surface.why_not or (
            f"the surface would differ by {surface.largest:.3f} mm"
            + (f" at X{surface.at[0]:.2f} Y{surface.at[1]:.2f}" if surface.at else "")
        )
        failures.append(Failure("surface", says, _lines_at(copy, surface)))
    return Proved(tuple(failures), surface)


def _within(surface: Difference, boxes: Sequence[tuple[float, float, float, float]]) -> bool:
    """Whether the copy leaves more within the boxes alone, and nowhere takes more."""
    if surface.why_not or surface.deeper > Z_TOLERANCE:
        return False
    for tile in surface.tiles:
        rows, columns = np.nonzero(tile.difference)
        x, y = tile.x + (columns + 0.5) * surface.cell, tile.y + (rows + 0.5) * surface.cell
        inside = np.zeros(len(x), bool)
        for x0, x1, y0, y1 in boxes:
            inside |= (
                (x > x0 - surface.cell) & (x < x1 + surface.cell) & (y > y0 - surface.cell) & (y < y1 + surface.cell)
            )
        if not inside.all():
            return False
    return True


def _lines_at(copy: Case, surface: Difference) -> tuple[int, ...]:
    """Lines of the original beside the new moves that pass the worst place."""
    if surface.at is None or not len(surface.moves):
        return ()
    m, rows = copy.motion, surface.moves
    x, y = surface.at
    reach = 30.0
    near = rows[
        (np.minimum(m.x0[rows], m.x1[rows]) - reach < x) & (np.maximum(m.x0[rows], m.x1[rows]) + reach > x)
        & (np.minimum(m.y0[rows], m.y1[rows]) - reach < y) & (np.maximum(m.y0[rows], m.y1[rows]) + reach > y)
    ]  # fmt: skip
    return tuple(sorted({int(copy.draft.anchor[line - 1]) for line in m.line[near].tolist()}))


# 5


def _text(old: Draft, new: Draft) -> list[Failure]:
    failures: list[Failure] = []
    order = new.origin[new.origin > 0]
    if (np.diff(order) <= 0).any() or len(order) + len(new.dropped) != old.lines:
        return [Failure("text", "lines of the original would be lost or in another order")]
    same = np.flatnonzero(~new.changed)
    ends = old.start[new.origin[same]] - old.start[new.origin[same] - 1]
    sizes = new.start[same + 1] - new.start[same]
    odd = same[ends != sizes]
    if len(odd) and not all(_only_its_end(old, new, int(row)) for row in odd):
        return [Failure("text", "a line that nobody changed would differ")]
    if not _same_bytes(old, new, same):
        return [Failure("text", "a line that nobody changed would differ")]
    seen: dict[int, int] = {}
    for row in np.flatnonzero(new.changed).tolist():
        text = new.text(row + 1)
        if STAR.search(text) and with_checksum(text) != text:
            failures.append(Failure("text", "a checksum would be wrong", (int(new.anchor[row]),)))
        match = N_WORD.match(text)
        if match:
            seen[int(match[2])] = row
    if seen:
        for row in same.tolist():
            match = N_WORD.match(new.text(row + 1))
            if match and int(match[2]) in seen and int(new.origin[seen[int(match[2])]]) == 0:
                failures.append(
                    Failure("text", f"the number N{int(match[2])} would stand twice", (int(new.origin[row]),))
                )
                break
    return failures


def _only_its_end(old: Draft, new: Draft, row: int) -> bool:
    """A last line without line end gets one when lines follow it."""
    return new.text(row + 1) == old.text(int(new.origin[row]))


def _same_bytes(old: Draft, new: Draft, same: Longs) -> bool:
    """Compares runs of untouched lines at once."""
    if not len(same):
        return True
    breaks = np.flatnonzero((np.diff(same) != 1) | (np.diff(new.origin[same]) != 1))
    firsts = np.concatenate(([0], breaks + 1))
    lasts = np.concatenate((breaks, [len(same) - 1]))
    for first, last in zip(same[firsts].tolist(), same[lasts].tolist()):
        a = new.data[int(new.start[first]) : int(new.start[last + 1])]
        b = old.data[int(old.start[int(new.origin[first]) - 1]) : int(old.start[int(new.origin[last])])]
        if a != b and a.rstrip(b"\r\n") != b.rstrip(b"\r\n"):
            return False
    return True


# 2


def _state(original: Case, copy: Case, words: bool, starts: bool, floor: float, lenient: bool) -> list[Failure]:
    old, new = original.motion, copy.motion
    of_old = ~_touched(copy.draft)[old.line - 1] if len(old) else np.zeros(0, bool)
    of_new = ~copy.draft.changed[new.line - 1] if len(new) else np.zeros(0, bool)
    a, b = np.flatnonzero(of_old), np.flatnonzero(of_new)
    if len(a) != len(b) or (old.line[a] != copy.draft.origin[new.line[b] - 1]).any():
        return [Failure("state", "lines that nobody changed would run in another order, or not as often")]
    failures: list[Failure] = []
    for name in ("kind", "plane", "spindle", "tool", "offset", "flags", "cycle"):
        was, now = getattr(old, name)[a], getattr(new, name)[b]
        if name == "flags":
            was, now = was & ~np.uint16(LIFT_UNKNOWN), now & ~np.uint16(LIFT_UNKNOWN)
        odd = was != now
        if name == "offset":  # G54 said where no offset was: the one that was in force all along
            odd &= ~((was == 0) & (now == 540))
        if name == "spindle" and starts:
            odd &= ~(np.isin(was, (0, 2)) & (now == 1))
        if odd.any():
            failures.append(_at(original, a[odd], f"the {name} of an untouched move would differ"))
    for name in ("x0", "y0", "z0", "x1", "y1", "z1", "cu", "cv", "sweep"):
        was, now = getattr(old, name)[a], getattr(new, name)[b]
        if name in ("z0", "z1") and math.isfinite(floor):  # what went below ends there
            was = np.where((was < floor) & (now >= floor) & (now < floor + FURTHER), now, was)
        odd = _differ(was, now, NEAR)
        # where the original's place is not known, a lift may make it known, for rapids alone
        odd &= ~(np.isnan(getattr(old, name)[a]) & (old.kind[a] == RAPID)) | (np.isnan(getattr(new, name)[b]))
        if odd.any():
            failures.append(_at(original, a[odd], "an untouched move would go another way"))
            break
    for name, letter in (("feed", "F"), ("speed", "S")):
        odd = _differ(getattr(old, name)[a], getattr(new, name)[b], 1e-3)
        if words and odd.any():
            # a word that was changed may rule on, where it ruled before
            old_word, new_word = getattr(old, f"{name}_line")[a], getattr(new, f"{name}_line")[b]
            ruled = np.zeros(original.draft.lines + 1, np.int64)
            ruled[old.line[::-1]] = getattr(old, f"{name}_line")[::-1]
            odd &= ~_same_rule(copy.draft, old_word, new_word, ruled)
        if odd.any():
            failures.append(_at(original, a[odd], f"another {letter} would be in force at an untouched line"))
    return failures or _modes(original, copy, words, starts, lenient) or _events(original, copy, words)


def _same_rule(draft: Draft, old_word: Ints, new_word: Ints, ruled: Longs) -> Bools:
    """Whether an edited word rules where it ruled before, or an added one where one word ruled its own line as well.

    old_word, new_word: line of the ruling word, of the original and of the copy. ruled [lines + 1]: the line of the
    word that rules each line of the original.
    """
    row = np.maximum(new_word, 1) - 1
    own = draft.origin[row]
    ruled_alike: Bools = (
        (new_word > 0)
        & draft.changed[row]
        & (own > 0)
        & ((own == old_word) | ((ruled[own] == old_word) & (old_word > 0)))
    )
    return ruled_alike


def _modes(original: Case, copy: Case, words: bool, starts: bool, lenient: bool) -> list[Failure]:
    """The modal groups as written, at every untouched block."""
    p, q = original.program, copy.program
    if (p.block_flags & 6).any():
        return []  # blocks do not run in the order of the text; the moves above tell
    a = np.flatnonzero(~_touched(copy.draft)[p.block_line - 1])
    b = np.flatnonzero(~copy.draft.changed[q.block_line - 1])
    if len(a) != len(b):
        return [Failure("state", "another number of untouched blocks")]
    for name in (*G_GROUPS, *M_GROUPS, "F", "S", "T"):
        values = []
        words_of = []
        for case, rows in ((original, a), (copy, b)):
            row = case.modes.word_of(name)[rows]
            value = case.program.word_value[np.maximum(row, 0)] if len(case.program.word_value) else np.zeros(len(row))
            values.append(np.where(row >= 0, value, np.nan))
            words_of.append(case.modes.line_of(row))
        odd = _differ(values[0], values[1], 1e-6)
        if name == "spindle" and starts:
            continue  # every move has been compared
        if name == "compensation" and lenient:
            continue  # it is worked out, and every move has been compared
        if name in ("F", "S") and words and odd.any():
            ruled = np.zeros(original.draft.lines + 1, np.int64)
            ruled[p.block_line] = original.modes.line_of(original.modes.word_of(name))
            odd &= ~_same_rule(copy.draft, words_of[0], words_of[1], ruled)
        if name in G_GROUPS and name != "motion":  # stating what was in force all along changes nothing
            odd &= ~(np.isnan(values[0]) & ~np.isnan(values[1]))
        if odd.any():
            lines = tuple(p.block_line[a[odd]][:20].tolist())
            return [Failure("state", f"another {name} would be in force at an untouched line", lines)]
    return []


def _events(original: Case, copy: Case, words: bool) -> list[Failure]:
    """What untouched lines do besides moving, and how the program ends."""
    old, new = original.motion, copy.motion
    a = ~_touched(copy.draft)[old.event_line - 1] if len(old.event_line) else np.zeros(0, bool)
    b = ~copy.draft.changed[new.event_line - 1] if len(new.event_line) else np.zeros(0, bool)
    if old.ended != new.ended:
        return [Failure("state", "the program would end otherwise")]
    if a.sum() != b.sum() or (old.event_kind[a] != new.event_kind[b]).any():
        return [Failure("state", "untouched lines would do something else")]
    odd = _differ(old.event_value[a], new.event_value[b], 1e-6)
    if words:
        odd &= ~np.isin(old.event_kind[a], (3, 4, 6, 7))  # S and F, and M3 and M4 with the S in force
    return [_at_line(tuple(old.event_line[a][odd][:20].tolist()))] if odd.any() else []


def _at_line(lines: tuple[int, ...]) -> Failure:
    return Failure("state", "untouched lines would do something else", lines)


def _touched(draft: Draft) -> Bools:
    """[lines of the original] whether it was changed or taken out."""
    lines = len(draft.origin[draft.origin > 0]) + len(draft.dropped)
    made = np.ones(lines, bool)
    rows = np.flatnonzero((draft.origin > 0) & ~draft.changed)
    made[draft.origin[rows] - 1] = False
    return made


def _differ(a: Floats, b: Floats, by: float) -> Bools:
    with np.errstate(invalid="ignore"):
        odd = ~((np.abs(a - b) <= by) | (np.isnan(a) & np.isnan(b)))
    return np.asarray(odd)


def _at(original: Case, rows: Longs, says: str) -> Failure:
    return Failure("state", says, tuple(dict.fromkeys(original.motion.line[rows[:50]].tolist())))


# 3


def _reach(original: Case, copy: Case) -> list[Failure]:
    failures: list[Failure] = []
    old, new = original.motion, copy.motion
    for axis, (low, high), (lows, highs) in zip("XYZ", _extent(old), _bounds(new)):
        over = (lows < low - FURTHER) | (highs > high + FURTHER)
        if over.any():
            lines = tuple(sorted({int(copy.draft.anchor[line - 1]) for line in new.line[over].tolist()}))
            failures.append(Failure("reach", f"the tool would go further in {axis} than the original takes it", lines))
    if (original.tables.engagement.box is None) != (copy.tables.engagement.box is None):
        failures.append(Failure("reach", "the blank would be taken for another one"))
    if _tools(original) != _tools(copy):
        failures.append(Failure("reach", "the tools would be taken for others"))
    return failures


def _tools(case: Case) -> dict[int, object]:
    """The tools, whatever the line on which a comment tells of them."""
    return {number: replace(tool, declared_in="") for number, tool in case.setup.tools.items()}


def _extent(m: Motion) -> list[tuple[float, float]]:
    """Lowest and highest X, Y and Z that the tip comes to."""
    return [(float(np.nanmin(lows, initial=np.inf)), float(np.nanmax(highs, initial=-np.inf)))
            for lows, highs in _bounds(m)]  # fmt: skip


def _bounds(m: Motion) -> list[tuple[Floats, Floats]]:
    """[moves] lowest and highest X, Y and Z of each; arcs in X and Y with the points where they turn."""
    made = []
    arcs = np.flatnonzero((m.sweep != 0) & (m.plane == 17))
    radius = np.hypot(m.x0[arcs] - m.cu[arcs], m.y0[arcs] - m.cv[arcs])
    start = np.degrees(np.arctan2(m.y0[arcs] - m.cv[arcs], m.x0[arcs] - m.cu[arcs]))
    for axis, quarters in (("x", (0, 180)), ("y", (90, 270)), ("z", ())):
        a, b = getattr(m, f"{axis}0"), getattr(m, f"{axis}1")
        lows, highs = np.fmin(a, b), np.fmax(a, b)
        for quarter in quarters:
            way = np.where(m.sweep[arcs] > 0, (quarter - start) % 360, (start - quarter) % 360)
            passes = arcs[way < np.abs(m.sweep[arcs])]
            centre = (m.cu if axis == "x" else m.cv)[passes]
            reach = radius[way < np.abs(m.sweep[arcs])]
            if quarter in (0, 90):
                highs[passes] = np.fmax(highs[passes], centre + reach)
            else:
                lows[passes] = np.fmin(lows[passes], centre - reach)
        made.append((lows, highs))
    return made


def _direction(original: Case, copy: Case) -> list[Failure]:
    """No finished wall is cut in the other direction: of what is taken off beside walls, as much by climb milling; of
    all walls together, and of those of each square of WALL mm."""
    was, now = _sides(original), _sides(copy)
    squares, of = np.unique(np.concatenate((was.square, now.square)), axis=0, return_inverse=True)
    of = of.ravel()
    if not len(squares):
        return []
    sums = []
    for sides, own in ((was, of[: len(was.square)]), (now, of[len(was.square) :])):
        for volume in (sides.volume * (1 - sides.climb), sides.volume * sides.climb):
            each = np.bincount(own, np.where(sides.narrow, volume, 0.0), minlength=len(squares))
            sums.append(np.concatenate(([volume.sum()], each)))  # all of them first
    against, along, against_new, along_new = sums
    whole = against + along
    shares = np.full(len(whole), MOST_CONVENTIONAL_HERE)
    shares[0] = MOST_CONVENTIONAL
    room = shares * np.maximum(whole, 1.0) + 1.0
    less_against = against <= along
    turned = np.where(less_against, against_new > against + room, along_new > along + room)
    turned &= (np.minimum(against, along) < room) & (whole > 0)
    if not turned.any():
        return []
    # the new pieces there that cut the way that the original hardly does
    own = of[len(was.square) :] + 1
    odd = np.where(less_against[own], now.climb < 0.5, now.climb > 0.5) & (turned[own] | turned[0])
    odd &= copy.draft.changed[now.line - 1]
    lines = tuple(sorted(set(copy.draft.anchor[now.line[odd] - 1].tolist())))
    return [Failure("reach", "a wall would be cut in the other direction", lines)]


@dataclass(frozen=True, slots=True)
class _Sides:
    """Pieces that cut beside walls: line, square of the plan, mm3 taken off, share by climb milling."""

    line: Longs
    square: Longs  # [n, 2]
    volume: Floats
    climb: Floats
    narrow: Bools  # whether the wall stands clearly on one side


def _sides(case: Case) -> _Sides:
    pieces, m = case.tables.engagement.pieces, case.motion
    radius = np.zeros(len(m))
    for number, tool in case.setup.tools.items():
        radius[m.tool == number] = tool.diameter / 2
    move = pieces.move
    with np.errstate(invalid="ignore"):
        beside = (m.kind[move] != RAPID) & (pieces.ae < SIDE * 2 * radius[move]) & (pieces.ae > 0)
    rows = np.flatnonzero(beside & np.isfinite(m.x1[move] + m.y1[move]))
    mine = move[rows]
    middle = (pieces.start[rows] + pieces.end[rows]) / 2
    x, y, _ = points_at(m, mine, middle) if len(rows) else (np.zeros(0),) * 3
    narrow = (pieces.ae[rows] < NARROW * 2 * radius[mine]) & (np.abs(pieces.climb[rows] - 0.5) > 0.4)
    square = np.stack((np.floor(x / WALL), np.floor(y / WALL)), axis=1).astype(np.int64)
    volume, climb = pieces.removed[rows].astype(np.float64), pieces.climb[rows].astype(np.float64)
    return _Sides(m.line[mine].astype(np.int64), square, volume, climb, narrow)


# 4


def _findings(original: Case, copy: Case, claims: Sequence[tuple[str, frozenset[int]]]) -> list[Failure]:
    failures: list[Failure] = []
    before, after = original.findings, copy.findings
    for rule, lines in claims:
        still = [f for f in after if f.rule == rule and lines & anchors(copy, f)]
        if still:
            failures.append(Failure("gone", f"{rule} would still be found", tuple(sorted(lines))))
    for finding in after:
        if finding.grade not in GRAVE:
            continue
        why = new_or_worse(original, copy, before, finding)
        if why:
            own = tuple(sorted(anchors(copy, finding)))
            failures.append(Failure("new", f"{finding.rule} would be {why}", own, finding))
    failures += _faults(original, copy)
    missing = {n.rule for n in original.run.checked.not_judged}
    # where a declaration is lacking, the shop has not told it of the original either
    blind = sorted({n.rule for n in copy.run.checked.not_judged if "toml" not in n.needs} - missing)
    if blind:
        failures.append(Failure("new", f"{blind[0]} could no longer be judged"))
    return failures


def _faults(original: Case, copy: Case) -> list[Failure]:
    """A copy writes nothing that cannot be read, or that its controller refuses or passes over."""
    counts, places = [], []
    for case in (original, copy):
        kinds = np.concatenate((case.program.faults.kind, case.motion.faults.kind)).astype(np.int64)
        lines = np.concatenate((case.program.faults.line, case.motion.faults.line)).astype(np.int64)
        counts.append(np.bincount(kinds, minlength=len(KINDS)))
        places.append((kinds, lines))
    more = np.flatnonzero(counts[1] > counts[0])
    if not len(more):
        return []
    kinds, lines = places[1]
    own = lines[(kinds == more[0]) & (lines >= 1) & (lines <= copy.draft.lines)]
    new = own[copy.draft.changed[own - 1]]
    at = tuple(sorted(set(copy.draft.anchor[new - 1].tolist())))
    return [Failure("new", f"there would be more of what a controller stumbles over: {KINDS[more[0]]}", at)]


def anchors(case: Case, finding: Finding) -> frozenset[int]:
    """Lines of the original that a finding concerns."""
    lines = {finding.line, finding.worst_line, *finding.lines}
    return frozenset(int(case.draft.anchor[line - 1]) for line in lines if 1 <= line <= case.draft.lines)


def new_or_worse(original: Case, copy: Case, before: Sequence[Finding], finding: Finding) -> str:
    """'new', 'worse' or ''."""
    own = anchors(copy, finding)
    like = [f for f in before if f.rule == finding.rule and f.tool == finding.tool and own & anchors(original, f)]
    if not like:
        return "new"
    known = frozenset().union(*(anchors(original, f) for f in like))
    inserted = {int(copy.draft.anchor[line - 1]) for line in finding.lines
                if line <= copy.draft.lines and copy.draft.origin[line - 1] == 0}  # fmt: skip
    if own - known - inserted and len(finding.lines) < 1000:
        return "new"
    if min(RANK[f.grade] for f in like) > RANK[finding.grade]:
        return "graver"
    return "worse" if all(_worse(f, finding) for f in like) else ""


def _worse(old: Finding, new: Finding) -> bool:
    """Whether what was found lies further outside its window."""
    if old.found is None or new.found is None or old.window is None or new.window is None:
        return False
    a, b = old.found.value, new.found.value
    if not isinstance(a, (int, float)) or not isinstance(b, (int, float)):
        return False
    low, high = new.window.low, new.window.high
    if high is not None and b > high:
        return b > a * WORSE
    return low is not None and b < low and b < a / WORSE

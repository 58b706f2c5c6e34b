"""Straight plunges and steep ramps become ramps forth and back, or laps round a closed way, inside what is cut later.

A way that the tool takes anyway, at that depth or deeper, is walked at the card's angle until the depth is reached.
Where that way is too short and the cut behind it is wide, a helix goes down. A line that runs more than once is mended
only if it would read alike for every run.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from msgspec.structs import replace

from gclint.columns import Floats
from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.path import Leg, Path, Pen, Step, arcs_allowed, back, closed, first_part, length_of, step_of
from gclint.mend.put import edited_line
from gclint.mend.style import STAR, NoRoom, numbered
from gclint.motion.along import points_at
from gclint.tables.engagement import ENTRY
from gclint.tables.finding import Finding
from gclint.tables.motion import CYCLE, INVERSE_TIME, LINE, PER_REV, RAPID

MOST_LEGS = 60
INSIDE = 0.97  # of the card's angle, so that rounding stays inside it
WIDE = 1.1  # times the diameter: how long a leg must be for a tool that does not cut at its centre
SHORT = 0.25  # times the diameter; a way shorter than this is no ramp
LEVEL = 1e-6
BLOCKS = 400  # that one entry may become
MOST_RUNS = 1000  # of one line, that are compared
FAR, LONGEST = 4.0, 100.0  # times the way that the angle asks for, and mm: no leg that goes on to a corner is longer
FEW_LEGS = 10  # with more of them a helix is tried first
HELIX = (0.45, 0.3)  # radius, times the diameter: no core is left, and the middle of the tool moves
DIP = 8  # chords of a lead-in that dips


class _Alone(ValueError):
    """Why an entry is left alone."""


@dataclass(frozen=True, slots=True)
class _Way:
    """The way of the cuts that follow, in plan, the heights at the ends of its steps [steps + 1], and its rows."""

    path: Path
    floors: tuple[float, ...]
    rows: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class _Entry:
    """What is known of one entry: rows of its moves that go down, the angle of ramps (degrees), the tool."""

    number: int
    rows: tuple[int, ...]
    top: float  # of the material, mm
    diameter: float
    centre: bool
    angle: float


def offers(case: Case, finding: Finding) -> list[Offer]:
    made: list[Offer] = []
    for line in finding.lines or (finding.line,):
        try:
            made.append(_offer(case, finding, line))
        except (_Alone, NoRoom) as problem:
            made.append(Refused(finding.rule, (line,), str(problem)))
    return made


def _offer(case: Case, finding: Finding, line: int) -> Proposal:
    if not case.own_text:
        raise _Alone("parts of the program stand in files beside it, and those are not mended with it")
    made: Proposal | None = None
    for number in _entries_at(case, line):
        entry = _entry(case, number)
        straight = int(case.tables.engagement.entries.kind[number]) == ENTRY["straight"]
        if straight or any(_goes_straight(case, row) for row in entry.rows):
            offer = _plunge(case, finding, line, entry)
        else:
            offer = _gentler(case, finding, line, entry)
        if made is not None and _edits_of(made) != _edits_of(offer):
            raise _Alone("the line runs more than once, and its runs would not be mended alike")
        made = made or offer
    assert made is not None
    return made


def _edits_of(offer: Proposal) -> tuple[tuple[Edit, ...], ...]:
    return (offer.edits, *(each.edits for each in offer.others))


def _entries_at(case: Case, line: int) -> list[int]:
    entries, rows = case.tables.engagement.entries, np.array(case.rows_of.get(line, []), np.int64)
    if not len(rows):
        raise _Alone("no move stands on this line")
    kinds = np.isin(entries.kind, [ENTRY[name] for name in ("straight", "ramp", "helix")])
    first, last = entries.first_move.astype(np.int64), entries.last_move.astype(np.int64)
    # the first of this line's moves at or behind the entry's start is not behind its end
    at = np.searchsorted(rows, first)
    found = np.flatnonzero(kinds & (at < len(rows)) & (rows[np.minimum(at, len(rows) - 1)] <= last))
    if not len(found):
        raise _Alone("which move goes down here is not plain")
    if len(found) > MOST_RUNS:
        raise _Alone("the line runs too often for its runs to be compared")
    return found.tolist()


def _entry(case: Case, number: int) -> _Entry:
    m, entries = case.motion, case.tables.engagement.entries
    first, last = int(entries.first_move[number]), int(entries.last_move[number])
    tool = case.setup.tools.get(int(m.tool[first]))
    if tool is None:
        raise _Alone("the tool has to be declared")
    box = case.tables.engagement.box
    if box is None or not box.declared:
        raise _Alone("the blank has to be declared (`[stock]` in job.toml, or --stock)")
    angle = _angle(case)
    rows = [row for row in range(first, last + 1) if float(m.z0[row]) - float(m.z1[row]) > LEVEL]
    if not rows or any(int(m.flags[row]) & (CYCLE | INVERSE_TIME | PER_REV) for row in rows):
        raise _Alone("the entry is made by a canned cycle, or its feed is no length per minute")
    top = min(float(m.z1[row]) for row in rows) + float(entries.solid[number])
    return _Entry(number, tuple(rows), top, tool.diameter, tool.centre_cutting is not False, angle)


def _angle(case: Case) -> float:
    card = case.setup.material
    if card is None:
        raise _Alone("the material has to be declared: its card says how steep a ramp may be")
    for number in (card.ramp_advised, card.ramp_limit):
        if number is not None and 0 < number.value < 80:
            return float(number.value) * INSIDE
    raise _Alone("the material's card names no angle for ramps")


def _goes_straight(case: Case, row: int) -> bool:
    m = case.motion
    level = math.hypot(float(m.x1[row] - m.x0[row]), float(m.y1[row] - m.y0[row])) < 1e-4
    return level and abs(float(m.sweep[row])) < 1e-9


def _way_after(case: Case, row: int, start: float) -> _Way:
    """The way of the cuts that follow a move without a lift, at that height (mm) or deeper."""
    m = case.motion
    steps: list[Step] = []
    floors = [start]
    rows: list[int] = []
    for k in range(row + 1, min(row + 400, len(m))):
        if int(m.kind[k]) == RAPID or int(m.tool[k]) != int(m.tool[row]) or int(m.flags[k]) & CYCLE:
            break
        if not math.isfinite(float(m.x1[k] + m.y1[k] + m.z1[k])):
            break
        own, heights = _steps(case, k)
        if not own or max(float(m.z0[k]), *heights) > start + LEVEL:
            break
        if _goes_straight(case, k):  # what is cut deeper is another step
            break
        for step, height in zip(own, heights):
            if step.length > 1e-6:
                steps.append(step)
                floors.append(height)
        rows.append(k)
    return _Way(tuple(steps), tuple(floors), tuple(rows))


def _steps(case: Case, row: int) -> tuple[list[Step], list[float]]:
    """A move as steps in plan with the height at the end of each; arcs that dip (G18, G19) as chords."""
    m = case.motion
    step = step_of(m, row)
    if step is not None:
        return [step], [float(m.z1[row])]
    if int(m.plane[row]) == 17:
        return [], []
    shares = np.linspace(0, 1, DIP + 1)
    x, y, z = points_at(m, np.full(len(shares), row), shares)
    chords = [Step(float(x[k]), float(y[k]), float(x[k + 1]), float(y[k + 1])) for k in range(DIP)]
    # the arc may hang below its chord: no place of the way is deeper than the arc there
    return chords, [float(each) for each in z[1:]]


def _lead(way: _Way, angle: float) -> int:
    """Steps at the start of a way that dip steeper than a ramp may."""
    slope = math.tan(math.radians(angle / INSIDE))
    n = 0
    while n < len(way.path) and way.floors[n] - way.floors[n + 1] > max(LEVEL, slope * way.path[n].length):
        n += 1
    return n


def _plunge(case: Case, finding: Finding, line: int, entry: _Entry) -> Proposal:
    """Straight down, perhaps with a lead-in that dips behind it; the plunge ends at the material, ramps follow it."""
    groups: list[list[int]] = []  # of moves straight down, one behind the other
    for row in entry.rows:
        if not _goes_straight(case, row):
            continue
        if groups and row == groups[-1][-1] + 1:
            groups[-1].append(row)
        else:
            groups.append([row])
    if len(groups) < 2:
        choices = _choices(case, finding, line, entry, groups[0] if groups else [])
        return replace(choices[0], others=tuple(choices[1:]))
    if len(groups) > MOST_LEGS:
        raise _Alone(f"it goes down in more than {MOST_LEGS} steps")
    steps = [_choices(case, finding, line, entry, group) for group in groups]
    made = []
    for n in range(max(map(len, steps))):
        ways = [each[min(n, len(each) - 1)] for each in steps]
        lines = tuple(sorted({at for way in ways for at in way.lines}))
        made.append(replace(ways[0], lines=lines, edits=tuple(edit for way in ways for edit in way.edits),
                            because=f"In {len(ways)} steps. " + ways[0].because))  # fmt: skip
    return replace(made[0], others=tuple(made[1:]))


def _choices(case: Case, finding: Finding, line: int, entry: _Entry, straight: list[int]) -> list[Proposal]:
    """What may stand in the place of one run of moves straight down (of none: of a dip), the best first."""
    m = case.motion
    row = straight[-1] if straight else entry.rows[0] - 1  # the ramp is put behind it
    if row < 0 or any(int(m.kind[each]) != LINE for each in straight):
        raise _Alone("the move down is a rapid")
    start = float(m.z1[row])
    way = _way_after(case, row, start)
    if not way.path:
        raise _Alone("no cut follows at that depth: it is a hole as wide as the tool, to be drilled or bored")
    counts = case.counts([*straight, *way.rows])
    if not counts:
        raise _Alone("the words of the moves count in another frame than the tables")
    if len({int(m.line[each]) for each in straight}) != len(straight):
        raise _Alone("one line makes several moves down")
    unit, digits = case.unit(row), 10**case.style.decimals
    first = straight[0] if straight else row
    top = min(float(m.z0[first]), math.ceil(entry.top / unit * digits - 0.02) / digits * unit)
    if not straight or top < start:
        top = start
    place = [float(m.x1[row]), float(m.y1[row]), top] if counts == "increments" else None
    after = case.next_feed(row)
    at = int(m.line[row]) if straight else int(m.line[entry.rows[0]])
    arcs = arcs_allowed(case, way.rows, at)
    choices: list[Proposal] = []
    for name, legs in _ways_down(way, top, entry, arcs_allowed(case, way.rows, at, any_arcs=True)):
        for feed in _feeds(case, row, after):
            for round_arcs in (True, False):
                if round_arcs and not arcs and name != HELIX_NAME:
                    continue
                pen = Pen(case, unit, round_arcs, list(place) if place is not None else None)
                if straight:
                    made = _written(case, finding, line, straight, top, legs, feed, pen, name, after)
                else:
                    made = _put_before(case, finding, line, at, legs, feed, pen, name, after)
                if made is not None:
                    choices.append(made)
                    break
    if not choices:
        raise _Alone(
            f"there is no room: a ramp of {entry.angle / INSIDE:g} deg needs more of a way at that depth than follows"
        )
    return choices


def _feeds(case: Case, row: int, after: int) -> list[float | None]:
    """F words to ramp with, the likeliest first; None: the one in force at the plunge."""
    m = case.motion
    if after < 0:
        return [None]
    own, cut, unit = float(m.feed[row]), float(m.feed[after]), case.unit(row)
    if int(m.kind[row]) == RAPID:  # what is in force is not what it moves with
        own = math.nan
    return [cut / unit, None] if math.isfinite(cut) and cut > 0 and cut != own else [None]


HELIX_NAME = "a helix"


def _ways_down(way: _Way, top: float, entry: _Entry, helix: bool) -> list[tuple[str, list[Leg]]]:
    """Ways to go down from `top` to the floor that end where they begin."""
    lead = _lead(way, entry.angle)
    bottom = way.floors[lead]
    drop = top - bottom
    if drop <= LEVEL:
        return []
    needed = drop / math.tan(math.radians(entry.angle))
    dips = length_of(way.path[:lead])
    made: list[tuple[str, list[Leg]]] = []
    room = length_of(way.path)
    diameter = entry.diameter
    least = WIDE * diameter if not entry.centre else min(SHORT * diameter, needed / 2)
    least += dips
    if room >= least:
        count = 2 * max(1, math.ceil(needed / (2 * room) - 1e-9))
        length = min(room, max(needed / count, min(room, diameter)) + dips)
        lengths = []
        first = way.path[0].length
        # a leg that ends where the first move does is plainer
        if not lead and max(least, length / 2) <= first < length:
            lengths.append(first)
        lengths += [length, *_corner(way.path, length, max(FAR * length, LONGEST))]
        for each in dict.fromkeys(lengths):
            count = 2 * max(1, math.ceil(needed / (2 * max(each - dips, 1e-3)) - 1e-9))
            if count <= MOST_LEGS and each >= least - 1e-9:
                part, floors = first_part(way.path, each, way.floors)
                turns = [(part, floors), (back(part), floors[::-1])]
                made.append(("ramps forth and back", _legs(turns, count, top, bottom)))
    ring = () if lead else _ring(way.path)
    if ring:
        laps = max(1, math.ceil(needed / length_of(ring) - 1e-9))
        if laps <= MOST_LEGS:
            made.append(("a ramp round the contour", _legs([(ring, ())], laps, top, bottom)))
    if helix and not lead:
        for share in HELIX:
            circle = _circle(way, share * diameter, diameter / 2, bottom)
            if circle:
                laps = max(1, math.ceil(needed / length_of(circle) - 1e-9))
                first_one = not made or len(made[0][1]) > FEW_LEGS
                if laps <= MOST_LEGS:
                    made.insert(0 if first_one else len(made), (HELIX_NAME, _legs([(circle, ())], laps, top, bottom)))
                break
    return made


def _corner(path: Path, length: float, most: float) -> list[float]:
    """The length to the next corner of the way behind a length; none where it lies too far off."""
    done = 0.0
    for step in path:
        done += step.length
        if done >= length - 1e-9:
            return [done] if length + 1e-9 < done <= most else []
    return []


def _ring(way: Path) -> Path:
    """The way up to where it first comes back to its start; empty where it never does."""
    for n in range(1, len(way) + 1):
        if closed(way[:n]) and length_of(way[:n]) > 1e-3:
            return way[:n]
    return ()


def _circle(way: _Way, radius: float, tool: float, bottom: float) -> Path:
    """A circle from the way's start whose helix stays inside what the way takes off at that depth; empty: none does."""
    spots = _places(way, tool / 4, bottom)
    start = np.array((way.path[0].x0, way.path[0].y0))
    angles = np.linspace(0, 2 * math.pi, 24, endpoint=False)
    rim = np.stack((np.cos(angles), np.sin(angles)), axis=1)
    best, least = None, math.inf
    for towards in rim:
        centre = start + radius * towards
        edge = centre + (radius + tool) * rim
        off = float(np.sqrt(((edge[:, None, :] - spots[None, :, :]) ** 2).sum(axis=2).min(axis=1)).max())
        if off < min(least, tool - 0.02):
            best, least = centre, off
    if best is None:
        return ()
    half = 2 * best - start
    ends = [start, half, start]
    return tuple(
        Step(float(a[0]), float(a[1]), float(b[0]), float(b[1]), float(best[0]), float(best[1]), 180.0)
        for a, b in pairwise(ends)
    )


def _places(way: _Way, step: float, bottom: float) -> Floats:
    """[n, 2] places along the way where it is as deep as `bottom`."""
    made: list[tuple[float, float]] = []
    for k, each in enumerate(way.path):
        if max(way.floors[k], way.floors[k + 1]) <= bottom + LEVEL:
            count = max(1, min(500, math.ceil(each.length / step)))
            made += [each.at(n / count) for n in range(count + 1)]
        if len(made) > 4000:
            break
    return np.array(made or [(math.inf, math.inf)])


def _legs(turns: list[tuple[Path, tuple[float, ...]]], count: int, top: float, bottom: float) -> list[Leg]:
    return [
        Leg(turns[n % len(turns)][0], top + (bottom - top) * n / count, bottom if n == count - 1 else
            top + (bottom - top) * (n + 1) / count, turns[n % len(turns)][1])
        for n in range(count)
    ]  # fmt: skip


def _written(case: Case, finding: Finding, line: int, straight: list[int], top: float, legs: list[Leg],
             feed: float | None, pen: Pen, name: str, after: int) -> Proposal | None:  # fmt: skip
    """The plunge ends at the material's surface, and ramps follow it."""
    m = case.motion
    row = straight[-1]
    own = int(m.line[row])
    edits: list[Edit] = []
    text = None
    skip = float(m.z0[straight[0]]) - top <= 1e-4 and float(m.z1[row]) < top - 1e-4
    if skip and len(straight) > 1:
        return None
    if skip:  # it starts on the surface: its own line becomes the first piece of the ramp
        mode = -1 if _says_motion(case, own) else 1
    else:
        mode = 1
        for each in straight:
            if float(m.z1[each]) >= top - 1e-6:
                continue
            word = top - max(top, float(m.z0[each])) if pen.at is not None else top
            text = edited_line(case, int(m.line[each]), {"Z": word / pen.unit})
            if text is None:
                return None
            if each != row:
                edits.append(Edit(int(m.line[each]), text=text, otherwise=True))
                text = None
    tail = _tail(case, legs, feed, pen, mode, after)
    if not tail:
        return None
    if skip:
        text = _as_first(case, own, tail[0])
        tail = tail[1:]
        if text is None:
            return None
    edits.append(Edit(own, text=text, after=numbered(case.style, case.draft, own, tuple(tail), behind=True)))
    lines = tuple(sorted({line, *(int(m.line[each]) for each in straight)}))
    return Proposal(finding.rule, "entry", lines, tuple(edits), _because(legs, name))


def _put_before(case: Case, finding: Finding, line: int, at: int, legs: list[Leg], feed: float | None, pen: Pen,
                name: str, after: int) -> Proposal | None:  # fmt: skip
    """The tool stands at its depth in space that is cut already, and dips from there: ramps before the dip."""
    if feed is None and "F" not in {letter for letter, *_ in case.words(at)}:
        feed_known = math.isfinite(float(case.motion.feed[after])) if after >= 0 else False
        if not feed_known:
            return None
    tail = _tail(case, legs, feed, pen, -1, after)
    if not tail:
        return None
    before = numbered(case.style, case.draft, at, tuple(tail))
    return Proposal(finding.rule, "entry", tuple(sorted({line, at})), (Edit(at, before=before),), _because(legs, name))


def _tail(case: Case, legs: list[Leg], feed: float | None, pen: Pen, mode: int, after: int) -> list[bytes]:
    """The blocks of the legs; empty where there would be too many, or the next move would be of another mode."""
    kept = list(pen.at) if pen.at is not None else None
    tail, end = pen.legs(legs, feed, mode)
    if end != 1 and after >= 0 and not _says_motion(case, int(case.motion.line[after])):
        if legs[-1].path[-1].sweep and not any(step.sweep == 0 for leg in legs for step in leg.path):
            tail.append(case.style.line(case.style.code("G", 1)))  # a helix: the mode is set back
        else:
            tail, _ = Pen(case, pen.unit, False, kept).legs(legs, feed, mode)
    return tail if len(tail) <= BLOCKS else []


def _because(legs: list[Leg], name: str) -> str:
    depth, slope = legs[0].z0 - legs[-1].z1, _slope(legs)
    where = "inside what is cut afterwards at that depth"
    return f"Instead of straight down {depth:.2f} mm: {name}, {slope:.1f} deg, {where}."


def _slope(legs: list[Leg]) -> float:
    return math.degrees(math.atan2(legs[0].z0 - legs[0].z1, length_of(legs[0].path)))


def _says_motion(case: Case, line: int) -> bool:
    return any(letter == "G" and value in (0, 1, 2, 3) for letter, value, _, _ in case.words(line))


def _as_first(case: Case, line: int, block: bytes) -> bytes | None:
    """The first piece of the ramp in the place of the plunge, with the line's own number; None where the line says
    more than a move."""
    words, text = case.words(line), case.text(line)
    if any(letter not in "GXYZF" or (letter == "G" and value not in (0, 1)) for letter, value, _, _ in words):
        return None
    if not words or not case.plain(line) or STAR.search(text):
        return None
    if b"F" not in block.upper():
        feed = [case.style.word("F", value) for letter, value, _, _ in words if letter == "F"]
        block += b"".join(case.style.gap.encode() + each.encode() for each in feed)
    return text[: words[0][2]] + block + text[words[-1][3] :]


def _gentler(case: Case, finding: Finding, line: int, entry: _Entry) -> Proposal:
    """A ramp that is too steep is walked more often; or it is gone down to beforehand, on the way behind it."""
    made: list[Proposal] = []
    why: list[_Alone] = []
    for again in (True, False):
        try:
            made += [_ramp(case, finding, line, entry)] if again else _choices(case, finding, line, entry, [])
        except _Alone as problem:
            why.append(problem)
    if not made:
        raise why[0]
    return replace(made[0], others=tuple(made[1:]))


def _ramp(case: Case, finding: Finding, line: int, entry: _Entry) -> Proposal:
    """A ramp that is too steep is walked more than once: forth and back, or round where it is, or ends in, a ring."""
    m, rows = case.motion, list(entry.rows)
    counts = case.counts(rows)
    if rows != list(range(rows[0], rows[-1] + 1)) or not counts:
        raise _Alone("the ramp is not made of moves one behind the other")
    lines = [int(m.line[row]) for row in rows]
    if len(set(lines)) != len(lines) or line not in lines:
        raise _Alone("the ramp is made by a line that makes several moves")
    steps = [step_of(m, row) for row in rows]
    if any(step is None or step.length < 1e-4 for step in steps) or int(m.kind[rows[0]]) == RAPID:
        raise _Alone("the ramp goes straight down in part")
    way = tuple(step for step in steps if step is not None)
    z0, z1 = float(m.z0[rows[0]]), float(m.z1[rows[-1]])
    unit = case.unit(rows[0])
    place = [float(m.x0[rows[0]]), float(m.y0[rows[0]]), z0] if counts == "increments" else None
    pen = Pen(case, unit, arcs_allowed(case, rows, lines[-1]), place)
    top = min(z0, pen.rounded(entry.top + 0.5 * 10**-case.style.decimals * unit))
    needed = (top - z1) / math.tan(math.radians(entry.angle))
    room = length_of(way)
    ring = closed(way)
    round_it = () if ring else _last_ring(way)
    if not entry.centre and not ring and room < WIDE * entry.diameter:
        raise _Alone("there is no room: legs would be shorter than a tool that does not cut at its centre is wide")
    if round_it:
        count = 1 + max(0, math.ceil((needed - room) / length_of(round_it) - 1e-9))
        turns = [way, *[round_it] * (count - 1)]
    else:
        count = max(1, math.ceil(needed / room - 1e-9))
        count += (1 - count % 2) if not ring else 0
        turns = [way if ring or n % 2 == 0 else back(way) for n in range(count)]
    if count > MOST_LEGS or count < 2:
        raise _Alone("there is no room for a gentler ramp on this way" if count > 2 else "the ramp is gentle enough")
    total = sum(length_of(turn) for turn in turns)
    heights = [top]
    for turn in turns:
        heights.append(heights[-1] + (z1 - top) * length_of(turn) / total)
    heights[-1] = z1
    legs = [Leg(turn, heights[n], heights[n + 1]) for n, turn in enumerate(turns)]
    edits: list[Edit] = []
    before: tuple[bytes, ...] = ()
    if z0 - top > 1e-4:
        down = case.style.line(case.style.code("G", 1), pen.axis("Z", top))
        if not math.isfinite(float(m.feed[rows[0]])):
            raise _Alone("no feed is in force")
        before = numbered(case.style, case.draft, lines[0], (down,))
    done = 0.0
    for own, step in zip(lines, way):
        done += step.length
        word = pen.axis("Z", legs[0].z0 + (legs[0].z1 - legs[0].z0) * done / room)
        text = edited_line(case, own, {"Z": float(word[1:])})
        if text is None:
            raise _Alone("the words of the ramp cannot be edited")
        edits.append(Edit(own, text=text))
    if pen.at is not None:
        pen.at[:2] = [way[-1].x1, way[-1].y1]
    if before:
        text = edits[0].text
        if not _says_motion(case, lines[0]):  # it took over the mode that the way down has changed
            at = case.words(lines[0])[0][2]
            code = case.style.code("G", 1 if not way[0].sweep else 3 if way[0].sweep > 0 else 2).encode()
            text = None if text is None else text[:at] + code + case.style.gap.encode() + text[at:]
        if STAR.search(case.text(lines[0])):
            raise _Alone("the line has a checksum")
        edits[0] = Edit(lines[0], before=before, text=text)
    mode = 1 if not way[-1].sweep else 3 if way[-1].sweep > 0 else 2
    tail, end = pen.legs(legs[1:], None, mode)
    after = case.next_feed(rows[-1])
    if len(tail) > BLOCKS or (end != mode and (after < 0 or not _says_motion(case, int(m.line[after])))):
        raise _Alone("the ramp would become too many blocks")
    edits[-1] = Edit(lines[-1], before=edits[-1].before, text=edits[-1].text,
                     after=numbered(case.style, case.draft, lines[-1], tuple(tail), behind=True))  # fmt: skip
    how = "round and round" if ring or round_it else "forth and back"
    slope = math.degrees(math.atan2(top - z1, total))
    because = f"The ramp is walked {count} times, {how}, so that it goes down at {slope:.1f} deg."
    return Proposal(finding.rule, "entry", tuple(lines), tuple(edits), because)


def _last_ring(way: Path) -> Path:
    """The last part of a way that begins where the way ends, all of arcs: a turn of a helix; empty where there is
    none."""
    for n in range(1, len(way) + 1):
        part = way[-n:]
        if not part[0].sweep:
            return ()
        if closed(part):
            return part
    return ()

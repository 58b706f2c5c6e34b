"""Straight plunges and steep ramps become ramps forth and back, or laps round a closed way, inside what is cut later.

A way that the tool takes anyway, at that depth or deeper, is walked at the card's angle until the depth is reached.
"""

from __future__ import annotations

import math

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.path import Leg, Path, Pen, Step, arcs_allowed, back, closed, first_part, length_of, step_of
from gclint.mend.put import edited_line
from gclint.mend.style import STAR, NoRoom, numbered
from gclint.tables.engagement import ENTRY
from gclint.tables.finding import Finding
from gclint.tables.motion import CYCLE, INVERSE_TIME, LINE, PER_REV, RAPID

MOST_LEGS = 60
INSIDE = 0.97  # of the card's angle, so that rounding stays inside it
WIDE = 1.1  # times the diameter: how long a leg must be for a tool that does not cut at its centre
SHORT = 0.25  # times the diameter; a way shorter than this is no ramp
LEVEL = 1e-6
QUARTER = 90.01  # degrees
BLOCKS = 400  # that one entry may become


class _Alone(ValueError):
    """Why an entry is left alone."""


def offers(case: Case, finding: Finding) -> list[Offer]:
    made: list[Offer] = []
    for line in finding.lines or (finding.line,):
        try:
            made.append(_offer(case, finding, line))
        except (_Alone, NoRoom) as problem:
            made.append(Refused(finding.rule, (line,), str(problem)))
    return made


def _offer(case: Case, finding: Finding, line: int) -> Proposal:
    m = case.motion
    entry = _entry_at(case, line)
    entries = case.tables.engagement.entries
    first, last = int(entries.first_move[entry]), int(entries.last_move[entry])
    number = int(m.tool[first])
    tool = case.setup.tools.get(number)
    if tool is None:
        raise _Alone("the tool has to be declared")
    box = case.tables.engagement.box
    if box is None or not box.declared:
        raise _Alone("the blank has to be declared (`[stock]` in job.toml, or --stock)")
    angle = _angle(case)
    rows = [row for row in range(first, last + 1) if float(m.z0[row]) - float(m.z1[row]) > LEVEL]
    if any(int(m.flags[row]) & (CYCLE | INVERSE_TIME | PER_REV) for row in rows):
        raise _Alone("the entry is made by a canned cycle, or its feed is no length per minute")
    if not case.straight_through:
        raise _Alone("the program has loops, calls or expressions, and a path is mended only where it runs once")
    if int(entries.kind[entry]) == ENTRY["straight"] or _goes_straight(case, case.rows_of.get(line, [])[:1]):
        return _plunge(case, finding, line, entry, rows, tool.diameter, tool.centre_cutting is not False, angle)
    return _ramp(case, finding, line, entry, rows, tool.diameter, tool.centre_cutting is not False, angle)


def _entry_at(case: Case, line: int) -> int:
    entries, m = case.tables.engagement.entries, case.motion
    rows = case.rows_of.get(line, [])
    if not rows:
        raise _Alone("no move stands on this line")
    found = [
        n for n in range(len(entries))
        if any(int(entries.first_move[n]) <= row <= int(entries.last_move[n]) for row in rows)
        and int(entries.kind[n]) in (ENTRY["straight"], ENTRY["ramp"], ENTRY["helix"])
    ]  # fmt: skip
    if len(found) != 1 or len({int(m.line[row]) for row in rows}) != 1:
        raise _Alone("which move goes down here is not plain")
    return found[0]


def _angle(case: Case) -> float:
    card = case.setup.material
    if card is None:
        raise _Alone("the material has to be declared: its card says how steep a ramp may be")
    for number in (card.ramp_advised, card.ramp_limit):
        if number is not None and 0 < number.value < 80:
            return float(number.value) * INSIDE
    raise _Alone("the material's card names no angle for ramps")


def _goes_straight(case: Case, rows: list[int]) -> bool:
    m = case.motion
    return all(math.hypot(float(m.x1[r] - m.x0[r]), float(m.y1[r] - m.y0[r])) < 1e-4 for r in rows)


def _way_after(case: Case, row: int, deepest: float) -> tuple[Path, list[int]]:
    """The way of the cuts that follow a move without a lift, at that depth or deeper, and their rows."""
    m = case.motion
    steps: list[Step] = []
    rows: list[int] = []
    for k in range(row + 1, min(row + 400, len(m))):
        if int(m.kind[k]) == RAPID or int(m.tool[k]) != int(m.tool[row]) or int(m.flags[k]) & CYCLE:
            break
        if max(float(m.z0[k]), float(m.z1[k])) > deepest + LEVEL or not math.isfinite(float(m.z1[k])):
            break
        step = step_of(m, k)
        if step is None and int(m.plane[k]) != 17 and abs(float(m.sweep[k])) <= QUARTER:
            # a lead-in that dips in X and Z or in Y and Z is straight in plan
            step = Step(float(m.x0[k]), float(m.y0[k]), float(m.x1[k]), float(m.y1[k]))
        if step is None:
            break
        if step.length > 1e-6:
            steps.append(step)
            rows.append(k)
    return tuple(steps), rows


def _plunge(case: Case, finding: Finding, line: int, entry: int, rows: list[int], diameter: float, centre: bool,
            angle: float) -> Proposal:  # fmt: skip
    m, entries = case.motion, case.tables.engagement.entries
    down = [row for row in rows if _goes_straight(case, [row])]
    own = [row for row in down if int(m.line[row]) == line]
    if len(own) != 1 or any(float(m.z1[row]) < float(m.z0[own[0]]) - LEVEL for row in down if row != own[0]):
        raise _Alone("it goes straight down in several moves")
    row = own[0]
    if int(m.kind[row]) != LINE or int(m.line[row]) != line or not case.in_frame([row]):
        raise _Alone("the move down is a rapid or an arc, or its words are in another frame than the tables")
    z0, z1 = float(m.z0[row]), float(m.z1[row])
    way, way_rows = _way_after(case, row, z1)
    if not way or not case.in_frame(way_rows):
        raise _Alone("no cut follows at that depth: it is a hole as wide as the tool, to be drilled or bored")
    unit = case.unit(row)
    pen = Pen(case, unit, arcs_allowed(case, way_rows))
    surface = min(z0, z1 + float(entries.solid[entry]))
    top = min(z0, math.ceil(surface / unit * 10**case.style.decimals - 0.02) / 10**case.style.decimals * unit)
    feeds = _feeds(case, row)
    choices: list[Proposal] = []
    for name, legs in _ways_down(way, top, z1, diameter, centre, angle):
        for feed in feeds:
            made = _written(case, finding, line, row, top, legs, feed, pen, name, angle)
            if made is not None:
                choices.append(made)
    if not choices:
        raise _Alone(
            f"there is no room: a ramp of {angle / INSIDE:g} deg needs more of a way at that depth than follows here"
        )
    return _chain(choices)


def _chain(choices: list[Proposal]) -> Proposal:
    from msgspec.structs import replace

    return replace(choices[0], others=tuple(choices[1:]))


def _feeds(case: Case, row: int) -> list[float | None]:
    """F words to ramp with, the likeliest first; None: the one in force at the plunge."""
    m = case.motion
    after = case.next_feed(row)
    own = case.modes.value_at("F", int(m.line[row]))
    feeds: list[float | None] = []
    if after >= 0:
        cut = case.modes.value_at("F", int(m.line[after]))
        if math.isfinite(cut) and cut > 0 and cut != own:
            feeds.append(cut)
    return [*feeds, None]


def _ways_down(way: Path, top: float, bottom: float, diameter: float, centre: bool,
               angle: float) -> list[tuple[str, list[Leg]]]:  # fmt: skip
    """Ways to go down from `top` to `bottom` that end where they begin."""
    drop = top - bottom
    needed = drop / math.tan(math.radians(angle))
    made: list[tuple[str, list[Leg]]] = []
    room = length_of(way)
    least = WIDE * diameter if not centre else min(SHORT * diameter, needed / 2)
    if room >= least:
        count = 2 * max(1, math.ceil(needed / (2 * room) - 1e-9))
        length = min(room, max(needed / count, min(room, diameter)))
        first = way[0].length
        if max(least, length / 2) <= first < length:  # a leg that ends where the first move does is plainer
            length, count = first, 2 * max(1, math.ceil(needed / (2 * first) - 1e-9))
        if count <= MOST_LEGS and length >= least - 1e-9:
            part = first_part(way, length)
            made.append(("ramps forth and back", _legs([part, back(part)], count, top, bottom)))
    ring = _ring(way)
    if ring:
        laps = max(1, math.ceil(needed / length_of(ring) - 1e-9))
        if laps <= MOST_LEGS:
            made.append(("a ramp round the contour", _legs([ring], laps, top, bottom)))
    return made


def _ring(way: Path) -> Path:
    """The way up to where it first comes back to its start; empty where it never does."""
    for n in range(1, len(way) + 1):
        if closed(way[:n]) and length_of(way[:n]) > 1e-3:
            return way[:n]
    return ()


def _legs(turns: list[Path], count: int, top: float, bottom: float) -> list[Leg]:
    return [
        Leg(turns[n % len(turns)], top + (bottom - top) * n / count, bottom if n == count - 1 else
            top + (bottom - top) * (n + 1) / count)
        for n in range(count)
    ]  # fmt: skip


def _written(case: Case, finding: Finding, line: int, row: int, top: float, legs: list[Leg], feed: float | None,
             pen: Pen, name: str, angle: float) -> Proposal | None:  # fmt: skip
    """The plunge ends at the material's surface, and ramps follow it."""
    m = case.motion
    unit = pen.unit
    tail: list[bytes]
    if float(m.z0[row]) - top > 1e-4:
        text = edited_line(case, line, {"Z": top / unit})
        mode, skip = 1, 0
    else:  # it starts on the surface: its own line becomes the first piece of the ramp
        text, mode, skip = None, -1 if _says_motion(case, line) else 1, 1
    tail, mode = pen.legs(legs, feed, mode)
    if len(tail) > BLOCKS:
        return None
    after = case.next_feed(row)
    if mode != 1 and not _says_motion(case, int(m.line[after])):
        tail, mode = Pen(case, unit, arcs=False).legs(legs, feed, -1 if skip and _says_motion(case, line) else 1)
        if len(tail) > BLOCKS:
            return None
    if skip:
        text = _as_first(case, line, tail[0])
        tail = tail[1:]
    if text is None:
        return None
    tail_lines = numbered(case.style, case.draft, line, tuple(tail), behind=True)
    depth, slope = legs[0].z0 - legs[-1].z1, _slope(legs)
    where = "inside what is cut afterwards at that depth"
    because = f"Instead of straight down {depth:.2f} mm: {name}, {slope:.1f} deg, {where}."
    edit = Edit(line, text=text, after=tail_lines)
    return Proposal(finding.rule, "entry", (line,), (edit,), because)


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
    return text[: words[0][2]] + block + text[words[-1][3] :]


def _ramp(case: Case, finding: Finding, line: int, entry: int, rows: list[int], diameter: float, centre: bool,
          angle: float) -> Proposal:  # fmt: skip
    """A ramp that is too steep is walked more than once: forth and back, or round where it is a ring."""
    m, entries = case.motion, case.tables.engagement.entries
    if rows != list(range(rows[0], rows[-1] + 1)) or not case.in_frame(rows):
        raise _Alone("the ramp is not made of moves one behind the other")
    lines = [int(m.line[row]) for row in rows]
    if len(set(lines)) != len(lines) or line not in lines:
        raise _Alone("the ramp is made by a line that makes several moves")
    steps = [step_of(m, row) for row in rows]
    if any(step is None or step.length < 1e-4 for step in steps) or int(m.kind[rows[0]]) == RAPID:
        raise _Alone("the ramp goes straight down in part")
    way = tuple(step for step in steps if step is not None)
    z0, z1 = float(m.z0[rows[0]]), float(m.z1[rows[-1]])
    top = min(z0, z1 + float(entries.solid[entry]))
    unit = case.unit(rows[0])
    pen = Pen(case, unit, arcs_allowed(case, rows))
    top = min(z0, pen.rounded(top + 0.5 * 10**-case.style.decimals * unit))
    needed = (top - z1) / math.tan(math.radians(angle))
    room = length_of(way)
    ring = closed(way)
    if not centre and not ring and room < WIDE * diameter:
        raise _Alone("there is no room: legs would be shorter than a tool that does not cut at its centre is wide")
    count = max(1, math.ceil(needed / room - 1e-9))
    count += (1 - count % 2) if not ring else 0
    if count > MOST_LEGS or count < 2:
        raise _Alone("there is no room for a gentler ramp on this way" if count > 2 else "the ramp is gentle enough")
    turns = [way] if ring else [way, back(way)]
    legs = _legs(turns, count, top, z1)
    first, z = legs[0], legs[0].z0
    edits: list[Edit] = []
    done = 0.0
    for own, step in zip(lines, way):
        done += step.length
        z = first.z0 + (first.z1 - first.z0) * done / room
        text = edited_line(case, own, {"Z": z / unit})
        if text is None:
            raise _Alone("the words of the ramp cannot be edited")
        edits.append(Edit(own, text=text))
    if float(m.z0[rows[0]]) - top > 1e-4:
        down = case.style.line(case.style.code("G", 1), pen.number("Z", top))
        if not math.isfinite(float(m.feed[rows[0]])):
            raise _Alone("no feed is in force")
        edits[0] = Edit(lines[0], before=numbered(case.style, case.draft, lines[0], (down,)), text=edits[0].text)
    mode = 1 if not way[-1].sweep else 3 if way[-1].sweep > 0 else 2
    tail, end = pen.legs(legs[1:], None, mode)
    after = case.next_feed(rows[-1])
    if len(tail) > BLOCKS or (end != mode and (after < 0 or not _says_motion(case, int(m.line[after])))):
        raise _Alone("the ramp would become too many blocks")
    edits[-1] = Edit(lines[-1], before=edits[-1].before, text=edits[-1].text,
                     after=numbered(case.style, case.draft, lines[-1], tuple(tail), behind=True))  # fmt: skip
    how = "round and round" if ring else "forth and back"
    because = f"The ramp is walked {count} times, {how}, so that it goes down at {_slope(legs):.1f} deg."
    return Proposal(finding.rule, "entry", tuple(lines), tuple(edits), because)

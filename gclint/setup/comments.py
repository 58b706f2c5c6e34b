"""Tool facts in the free words of a program's comments. A wrongly guessed tool is worse than none."""

from __future__ import annotations

import re
from bisect import bisect_left
from typing import TYPE_CHECKING

from msgspec import Struct

from gclint.lazy_regex import Later
from gclint.problem import Problem
from gclint.tables.program import decode
from gclint.tables.setup import Tool
from gclint.toml.units import number

if TYPE_CHECKING:
    from gclint.tables.motion import Motion
    from gclint.tables.program import Program

MOST_COMMENTS = 20_000  # read for tool facts; a program's tools are named near its start or beside a T word
LONGEST = 300  # characters of a comment that names a tool
NEAR = 3  # lines between a comment and the T word it speaks of

# All patterns read lower-case text with single spaces. A comment speaks of a tool only with one of these words ...
_TOOL_WORD = Later(
    r"end ?mill|(?:ball|bull) ?-?nose|\bball ?mill|\bv ?-? ?bit|\bvee ?bit|\bbits?\b|\bcutter|\bengraver|\btool\b"
    r"|\bdrill ?bit|\btwist ?drill|\d ?(?:mm|in|\") ?drill\b|\bflutes?\b|\d ?fl\b|\bt\d+\b|\btc\b"
)
# ... and with none of these, which make its numbers something else than the tool's size.
_OTHER_WORD = Later(
    r"radius (?:is|of)|\bminus\b|\bhalf\b|subtract|\badd\b|offset|pocket|\bholes?\b|\bslot\b|\bdeep\b|depth of"
    r"|clearance|\bcent(?:er|re)\b|thick|\bstock\b|\bsheet\b|\bhelix dia|\bso the\b|\bsame\b|\btap\b|thread|step ?over"
    r"|step ?down|\bleave\b|\bwas\b|\bnot\b|\binstead\b|\bnever\b|compensat|tool ?path|\bshank\b|\blong\b|\blength\b"
)
_UNIT = r"mm\b|mil+imet(?:er|re)s?\b|in\b|inch(?:es)?\b|\""
_VALUE = r"\d+ \d+/\d+|\d+-\d+/\d+|\d+/\d+|\d+\.?\d*|\.\d+"
_SIZE = Later(rf"(?<![\w./-])({_VALUE}) ?({_UNIT})(?!/)")
_DIAMETER = Later(rf"(?:\bd ?=|\bdia(?:meter)?\.? ?[=:]?|ø) ?({_VALUE})(?![\d/.]) ?({_UNIT})?")
_CORNER = Later(rf"\b(?:cr ?=|corner radius ?[=:]?) ?({_VALUE})(?![\d/]) ?({_UNIT})?")
_FLUTES = Later(
    r"(?<![\w./])(\d{1,2}) ?-? ?(?:flutes?|fl)\b|\bflutes? ?[=:] ?(\d{1,2})\b|\b(single|two|three|four) ?-?flutes?\b"
)
_FLUTE_WORDS = {"single": 1, "two": 2, "three": 3, "four": 4}
_ANGLE = Later(rf"({_VALUE}) ?-?(?:deg(?:rees?)?\b|°)")
_NUMBERED = Later(
    r"\bt ?#?(\d{1,5})\b(?!\.\d)|\btool ?(?:no\.?|number|#)? ?[:#=]? ?(\d{1,5})\b(?! ?(?:mm|in|\"|/|\.\d|-? ?fl))"
)
_SHAPES = (
    ("tapered-ball", Later(r"tapered ball|taper\w* ?-?ball")),
    ("ball", Later(r"\bball\b|\bballnose|\bballmill")),
    ("bull-nose", Later(r"\bbull\b|\bbullnose")),
    ("v", Later(r"\bv ?-? ?bit|degree ?v ?-?bit|\bvee ?bit|\bengrav|\bv-?carv|\bchamfer")),
    ("drill", Later(r"\bdrill ?bit|\btwist ?drill|\d ?(?:mm|in|\") ?drill\b|- drill\b")),
    ("facing", Later(r"\bface ?mill|\bsurfacing ?bit|\bfacing ?bit|\bfly ?cutter")),
    (
        "other",  # shapes that words alone do not describe well enough
        Later(
            r"\bt-?slot\b|\bdovetail|\bkeyway|\blollipop|\bthread ?mill|\bform\b|\bslitting|\bsaw\b|\bburr\b|\btaper"
        ),
    ),
    (
        "flat",
        Later(r"\bflat\b|end ?mill|\bsquare ?end|\b(?:straight|router) ?bit|\b(?:up|down)-? ?cut|\bspiral"),
    ),
)
_HELICES = (
    ("up-cut", Later(r"\bup ?-?cut")),
    ("down-cut", Later(r"\bdown ?-?cut")),
    ("compression", Later(r"\bcompression")),
)


class Said(Struct, frozen=True):
    """What one comment says of a tool; mm and degrees."""

    line: int
    number: int | None
    diameter: float | None
    flutes: int | None
    shape: str | None
    helix: str | None
    corner_radius: float | None
    angle: float | None


def said_in(text: str, line: int, unit: float | None) -> Said | None:
    """Facts of one comment, None where it is not surely about a tool. `unit`: mm per unit of a size without one."""
    plain = " ".join(text.lower().replace("_", " ").split())
    plain = re.sub(r"(?<=[a-z])(?=\d{3}\b)", " ", plain)  # a serial number behind a name: "flutes003"
    if len(plain) > LONGEST or not _TOOL_WORD.search(plain) or _OTHER_WORD.search(plain):
        return None
    shapes = [name for name, pattern in _SHAPES if pattern.search(plain)]
    shape = shapes[0] if shapes else None
    sizes = {round(size, 4) for size in _diameters(plain, unit)}
    if len(sizes) > 1:
        return None
    flutes = {int(a or b or _FLUTE_WORDS[c]) for a, b, c in _FLUTES.findall(plain)}
    angles = {angle for angle in map(_angle, _ANGLE.findall(plain)) if angle is not None}
    helices = [name for name, pattern in _HELICES if pattern.search(plain)]
    numbered = _NUMBERED.search(plain)
    if len({a or b for a, b in _NUMBERED.findall(plain)}) > 1:  # of several tools: whose is which?
        return None
    corner = _CORNER.search(plain)
    corner_radius = _size(corner[1], corner[2], unit) if corner else None
    return Said(
        line=line,
        number=int(numbered[1] or numbered[2]) if numbered else None,
        diameter=sizes.pop() if sizes else None,
        flutes=flutes.pop() if len(flutes) == 1 else None,
        shape=shape,
        helix=helices[0] if len(helices) == 1 else None,
        corner_radius=corner_radius,
        angle=angles.pop() if len(angles) == 1 else None,
    )


def _diameters(plain: str, unit: float | None) -> list[float]:
    named = _DIAMETER.findall(plain)
    found = [_size(text, suffix, unit) for text, suffix in named] if named else [
        _size(text, suffix, unit) for text, suffix in _SIZE.findall(plain)
    ]
    return [size for size in found if size is not None and 0.05 <= size <= 200.0]


def _size(text: str, suffix: str | None, unit: float | None) -> float | None:
    factor = unit if not suffix else 1.0 if suffix.startswith("m") else 25.4
    try:
        return None if factor is None else number(text) * factor
    except (Problem, ValueError):
        return None


def _angle(text: str) -> float | None:
    try:
        angle = number(text)
    except Problem:
        return None
    return angle if 0.0 < angle < 180.0 else None


def tools_in(program: Program, motion: Motion) -> dict[int, tuple[Tool, str]]:
    """Tools the comments describe well enough to be used: number (-1: the program calls none) -> tool, why."""
    calls = _calls(program)
    numbers = {tool for _, tool in calls}
    beside: dict[int, list[Said]] = {}  # numbered, or beside a T word
    elsewhere: list[Said] = []
    for facts in _all_said(program, motion):
        owner = facts.number if facts.number is not None else _near(facts.line, calls)
        if owner is None:
            elsewhere.append(facts)
        else:
            beside.setdefault(owner, []).append(facts)
    if not numbers and len(beside) == 1:  # the program calls none: the comments must mean the one in the spindle
        beside = {-1: next(iter(beside.values()))}
    only = -1 if not numbers else next(iter(numbers)) if len(numbers) == 1 else None
    if only is not None and all(facts.diameter is None for facts in beside.get(only, [])):
        beside[only] = beside.get(only, []) + elsewhere
    tools = {owner: _merged(owner, facts) for owner, facts in beside.items()}
    return {owner: tool for owner, tool in tools.items() if tool is not None}


def _all_said(program: Program, motion: Motion) -> list[Said]:
    unit = _unit(motion)
    found: list[Said] = []
    for row in range(min(len(program.comment_line), MOST_COMMENTS)):
        raw = program.data[int(program.comment_start[row]) : int(program.comment_end[row])]
        if len(raw) > LONGEST:
            continue
        facts = said_in(decode(raw), int(program.comment_line[row]), unit)
        if facts and (facts.diameter or facts.flutes or facts.shape):
            found.append(facts)
    return found


def _unit(motion: Motion) -> float | None:
    """mm per unit where the program speaks one unit throughout, else None."""
    from gclint.tables.motion import EVENT

    values = {float(v) for v in motion.event_value[motion.event_kind == EVENT["units"]]}
    return values.pop() if len(values) == 1 else None


def _calls(program: Program) -> list[tuple[int, int]]:
    """(line, tool number) of every T word, in the order of the text."""
    import numpy as np

    words = np.flatnonzero((program.word_letter == ord("T")) & np.isfinite(program.word_value))
    blocks = np.searchsorted(program.block_word, words, side="right") - 1
    lines = program.block_line[blocks]
    return [(int(line), int(value)) for line, value in zip(lines, program.word_value[words])]


def _near(line: int, calls: list[tuple[int, int]]) -> int | None:
    """The tool called within NEAR lines below a comment, else above it."""
    at = bisect_left(calls, (line, -1))
    below = next((tool for place, tool in calls[at : at + 1] if place - line <= NEAR), None)
    if below is not None:
        return below
    above = calls[at - 1] if at else None
    return above[1] if above and line - above[0] <= NEAR else None


def _merged(owner: int, facts: list[Said]) -> tuple[Tool, str] | None:
    """One tool of all that is said of it, and why; None where the comments disagree or leave its size or shape open."""
    diameters = {round(f.diameter, 3) for f in facts if f.diameter is not None}
    shapes = {f.shape for f in facts if f.shape is not None}
    flutes = {f.flutes for f in facts if f.flutes is not None}
    helices = {f.helix for f in facts if f.helix is not None}
    angles = {f.angle for f in facts if f.angle is not None}
    corners = {f.corner_radius for f in facts if f.corner_radius is not None}
    if len(diameters) != 1 or len(shapes) > 1 or len(corners) > 1 or "other" in shapes:
        return None
    diameter = diameters.pop()
    corner = corners.pop() if corners else None
    named = bool(shapes) or corner is not None
    shape = shapes.pop() if shapes else "flat" if not angles else None
    if shape == "flat" and corner:
        shape = "ball" if corner >= 0.49 * diameter else "bull-nose"
    if shape is None or (shape in ("v", "tapered-ball") and len(angles) != 1):
        return None
    line = min(f.line for f in facts if f.diameter is not None)
    because = f"the comment on line {line} says so" + ("" if named else "; it names no shape, so a flat end is taken")
    tool = Tool(
        number=owner,
        shape=shape,
        diameter=diameter,
        flutes=flutes.pop() if len(flutes) == 1 else None,
        helix=helices.pop() if len(helices) == 1 else None,
        corner_radius=corner or None,
        angle=angles.pop() if len(angles) == 1 and shape in ("v", "tapered-ball", "drill") else None,
        declared_in=f"comment on line {line}",
    )
    return tool, because

"""A tool or a blank in one line of text, as the command line takes them.

    NUMBER: SHAPE DIAMETER [FLUTESfl] [HELIX] [corner R] [ANGLEdeg]      "1: flat 3.175mm 2fl down-cut"
    LENGTH x WIDTH x THICKNESS UNIT [at X Y]                             "120 x 80 x 18 mm at -10 -10"
"""

from __future__ import annotations

import re

from gclint.lazy_regex import Later
from gclint.problem import Problem, nearest
from gclint.tables.setup import HELICES, SHAPES, Tool
from gclint.toml.units import LENGTH_UNITS, NUMBER, number, quantity

SMALLEST, LARGEST = 0.02, 1000.0  # mm of a tool's diameter; what is beyond is a slip, or none that can be modelled
_UNIT = "|".join(sorted((re.escape(unit) for unit in LENGTH_UNITS), key=len, reverse=True))
_NUMBER_COLON = Later(r"\s*(\d+)\s*:\s*")
_LENGTH = Later(rf"({NUMBER})\s*({_UNIT})(?![\w/])", re.IGNORECASE)
_BARE_NUMBER = Later(rf"{NUMBER}(?![\w.])")
_FLUTES = Later(r"(\d+)\s*(?:fl|flutes?)(?!\w)", re.IGNORECASE)
_ANGLE = Later(rf"({NUMBER})\s*(?:deg|degrees?|°)(?!\w)", re.IGNORECASE)
# what people write for a shape or a helix, spaces and hyphens left out
WRITTEN = {
    "endmill": "flat", "flatendmill": "flat", "squareendmill": "flat", "square": "flat", "straightbit": "flat",
    "ballnose": "ball", "ballend": "ball", "ballendmill": "ball", "bullnose": "bull-nose", "vbit": "v", "vgroove": "v",
    "upcut": "up-cut", "downcut": "down-cut", "drillbit": "drill", "twistdrill": "drill", "threadmill": "thread-mill",
    "tslot": "t-slot", "taperedball": "tapered-ball",
}  # fmt: skip
_TWO_WORDS = Later(
    r"(?:(?:flat|square|ball)[ -])?end[ -]mill(?!\w)|(?:ball|bull)[ -]nose(?!\w)|ball[ -]end(?!\w)"
    r"|v[ -](?:bit|groove)(?!\w)|(?:up|down)[ -]cut(?!\w)"
    r"|(?:twist[ -]drill|drill[ -]bit|straight[ -]bit|thread[ -]mill|tapered[ -]ball)(?!\w)",
    re.IGNORECASE,
)
_WORD = Later(r"[^\s,]+")
_FORM = 'a tool is written "NUMBER: SHAPE DIAMETER", for example "1: flat 3.175mm 2fl down-cut"'
_STOCK_FORM = 'a blank is written for example "120 x 80 x 18 mm at -10 -10"'


def tool_from_text(text: str, source: str = "--tool") -> Tool:
    """Raises Problem (path = source, column in the text) for anything that is not a tool."""
    head = _NUMBER_COLON.match(text)
    if head is None:
        raise Problem(f'{_FORM}; "{_cut(text)}" does not begin with a number and a colon', source, None, None)
    if len(head[1]) > 5:
        raise _wrong(text, 0, "a tool number has at most five digits", source)
    found: dict[str, object] = {}
    at = head.end()
    while at < len(text):
        if text[at] in " \t,":
            at += 1
            continue
        at = _part(text, at, found, source)
    for needed, example in (("shape", "flat"), ("diameter", "6 mm")):
        if needed not in found:
            raise _wrong(text, len(text), f'the {needed} is missing, such as "{example}"', source)
    if found.get("corner_radius") and found["corner_radius"] > found["diameter"] / 2 + 1e-6:  # type: ignore[operator]
        raise _wrong(text, len(text), "the corner radius is larger than half the diameter", source)
    return Tool(number=int(head[1]), declared_in=source, **found)  # type: ignore[arg-type]


def _part(text: str, at: int, found: dict[str, object], source: str) -> int:
    """Reads one part of a tool's text into `found`; returns where the next one starts."""
    if match := _FLUTES.match(text, at):
        if not 1 <= int(match[1][:4]) <= 100:
            raise _wrong(text, at, "a tool has 1 to 100 flutes", source)
        return _keep(found, "flutes", int(match[1]), text, at, match.end(), source)
    if match := _ANGLE.match(text, at):
        value = _value(match[1], text, at, source)
        if not 0.0 < value < 180.0:
            raise _wrong(text, at, "the full angle lies between 0 and 180 deg", source)
        return _keep(found, "angle", value, text, at, match.end(), source)
    if match := _LENGTH.match(text, at):
        return _keep(found, "diameter", _length(match, text, at, source), text, at, match.end(), source)
    if match := _BARE_NUMBER.match(text, at):
        if text[match.end() : match.end() + 1] == ",":
            raise _wrong(text, at, f'write the decimal comma behind "{match[0]}" as a point', source)
        says = f'"{match[0]}" has no unit; write "{match[0]}mm", "{match[0]}in" or "{match[0]}fl"'
        raise _wrong(text, at, says, source)
    match = _TWO_WORDS.match(text, at) or _WORD.match(text, at)
    word = match[0] if match else text[at]
    end = at + len(word)
    plain = word.lower().replace("_", "-")
    meant = WRITTEN.get(plain.replace("-", "").replace(" ", ""))
    if meant is not None and meant == found.get("shape") and meant != plain:  # "flat 6mm endmill"
        return end
    plain = meant or plain
    if plain in SHAPES:
        return _keep(found, "shape", plain, text, at, end, source)
    if plain in HELICES:
        return _keep(found, "helix", plain, text, at, end, source)
    if plain == "corner":
        radius = _LENGTH.match(text, end + len(text[end:]) - len(text[end:].lstrip()))
        if radius is None:
            raise _wrong(text, at, 'behind "corner" stands its radius, such as "corner 0.5mm"', source)
        value = _length(radius, text, radius.start(), source, least=0.001)
        return _keep(found, "corner_radius", value, text, at, radius.end(), source)
    tail = nearest(plain, (*SHAPES, *HELICES, "corner"))
    raise _wrong(text, at, f'"{_cut(word)}" is not a word of a tool{tail}', source)


Blank = tuple[tuple[float, float, float], tuple[float, float] | None]  # size, corner


def stock_from_text(text: str, source: str = "--stock") -> Blank:
    """((length, width, thickness), corner or None) in mm. Raises Problem (path = source) for anything else."""
    size, _, corner = text.partition(" at ")
    parts = [part.strip() for part in re.split(r"[x×*]", size, flags=re.IGNORECASE)]
    if len(parts) != 3 or not all(parts):
        raise Problem(f'{_STOCK_FORM}; "{_cut(text)}" does not hold three sizes', source)
    last = re.fullmatch(rf"({NUMBER})\s*(.*)", parts[2], re.DOTALL)
    unit = last[2].strip() if last else ""
    lengths = tuple(_stock_length(part, unit, source) for part in parts)
    if min(lengths) <= 0.0:
        raise Problem(f'every size of a blank is above zero; "{_cut(text)}" is not', source)
    if " at " not in text:
        return (lengths[0], lengths[1], lengths[2]), None
    places = re.findall(rf"{NUMBER}\s*(?:{_UNIT})?|\S+", corner, re.IGNORECASE)
    if len(places) != 2:
        raise Problem(f'{_STOCK_FORM}; behind "at" stand the lowest X and Y, not "{_cut(corner)}"', source)
    return (lengths[0], lengths[1], lengths[2]), (
        _stock_length(places[0], unit, source),
        _stock_length(places[1], unit, source),
    )


def _stock_length(part: str, unit: str, source: str) -> float:
    part = part.strip()
    try:
        return quantity(part if not re.fullmatch(NUMBER, part) or not unit else f"{part} {unit}", "length")
    except Problem as problem:
        raise Problem(problem.says, source) from None


def _length(match: re.Match[str], text: str, at: int, source: str, least: float = SMALLEST) -> float:
    value = _value(match[1], text, at, source) * LENGTH_UNITS[match[2].lower()]
    if not least <= value <= LARGEST:
        raise _wrong(text, at, f'"{match[0]}" is no size of a tool', source)
    return value


def _value(digits: str, text: str, at: int, source: str) -> float:
    try:
        return number(digits)
    except Problem as problem:
        raise _wrong(text, at, problem.says, source) from None


def _keep(found: dict[str, object], key: str, value: object, text: str, at: int, end: int, source: str) -> int:
    if key in found:
        called = "number of flutes" if key == "flutes" else key.replace("_", " ")
        raise _wrong(text, at, f"the {called} is given twice", source)
    found[key] = value
    return end


def _wrong(text: str, at: int, says: str, source: str) -> Problem:
    return Problem(f'"{_cut(text)}", column {at + 1}: {says}', source)


def _cut(text: str) -> str:
    text = text if len(text) <= 60 else text[:57] + "..."
    return "".join(c if c.isprintable() else "?" for c in text)

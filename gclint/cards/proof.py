"""Proves a material card beyond its format: numbers that can be true and go together, words that fit the material.

What the format itself refuses (unknown keys, units, standings, limits the wrong way round) is a Problem of
`card.material_from`; what stands here reads well and is doubtful all the same.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

from msgspec import Struct

from gclint.cards.material import Card
from gclint.tables.material import ChipRow

Key = tuple[str | int, ...]

LEAST_DIAMETER, MOST_DIAMETER = 0.1, 100.0  # mm
MOST_CHIP = 0.15  # of the diameter: no router takes a thicker one
LEAST_CHIP = 0.001  # mm
MOST_EDGE = 6000.0  # m/min
MOST_RAMP = 60.0  # degrees
MOST_DEPTH = 10.0  # diameters
LEAST_FORCE, MOST_FORCE = 1.0, 10_000.0  # N/mm2

# what is seen where an edge rubs or runs too fast, by the kind of material
HEAT_WORDS = {
    "wood": ("dust", "burn", "scorch", "smoke", "brown"),
    "board": ("dust", "burn", "scorch", "smoke", "brown", "heat"),
    "plastic": ("melt", "weld", "soft", "gum", "string", "smear"),
    "foam": ("melt", "weld", "soft", "dust", "smell"),
    "wax": ("melt", "smear", "clog"),
    "resin": ("dust", "soft", "smear", "melt"),
    "metal": ("built", "weld", "squeal", "smear"),
    "laminate": ("dust", "burn", "split", "dull"),
}


class Doubt(Struct, frozen=True):
    """One thing on a card that cannot be right, with its place in the file."""

    line: int
    column: int
    says: str


def prove(path: Path) -> tuple[Doubt, ...]:
    """The doubts about the card in a file, by place. Raises Problem, with its place, for one that is not sound."""
    from gclint.cards.material import material_from
    from gclint.toml.file import decode, read_text, written
    from gclint.toml.place import Places

    material_from(path)
    text = read_text(path, "material card")
    places = Places(text)
    made = []
    for key, says in doubts(decode(text, Card, str(path))):
        line, column = places.of(key) or (1, 1)
        made.append(Doubt(line, column, f"{written(key)}: {says}" if key else says))
    return tuple(sorted(made, key=lambda doubt: (doubt.line, doubt.column, doubt.says)))


def doubts(card: Card) -> Iterator[tuple[Key, str]]:
    """(key, what is doubtful about it)."""
    yield from _rows(("chip",), card.chip)
    for operation, rows in card.chip_of.items():
        yield from _rows(("chip_of", operation), rows)
    for n, edge in enumerate(card.edge):
        if edge.high is not None and not 0 < edge.high <= MOST_EDGE:
            yield ("edge", n, "high"), f"an edge speed lies between 0 and {MOST_EDGE:g} m/min"
        if edge.high is None and edge.low is None:
            yield ("edge", n), "a row without a limit says nothing"
        if edge.low is not None and edge.slow_because is not None and not edge.slow_because.strip():
            yield ("edge", n, "slow_because"), "the reason is empty"
    for n, (narrow, wide) in enumerate(pairwise(card.edge)):
        for side in ("low", "high"):
            a, b = getattr(narrow, side), getattr(wide, side)
            if a is not None and b is not None and b < a:
                yield ("edge", n + 1, side), "the limit falls although the tool grows"
    yield from _shares(card)
    yield from _force(card)
    yield from _words(card)


def _rows(key: Key, rows: tuple[ChipRow, ...]) -> Iterator[tuple[Key, str]]:
    for n, row in enumerate(rows):
        if not LEAST_DIAMETER <= row.diameter <= MOST_DIAMETER:
            yield (*key, n, "diameter"), f"a tool is between {LEAST_DIAMETER:g} and {MOST_DIAMETER:g} mm thick"
        if row.low < LEAST_CHIP:
            yield (*key, n, "low"), f"a chip thinner than {LEAST_CHIP:g} mm is none"
        if row.high > MOST_CHIP * row.diameter:
            yield (*key, n, "high"), f"thicker than {MOST_CHIP:g} of the diameter: is the unit right?"
        if not row.source.strip():
            yield (*key, n, "source"), 'the source is empty; "common practice, no source" is one'
    for n, (small, large) in enumerate(pairwise(rows)):
        for side in ("low", "high"):
            if getattr(large, side) < getattr(small, side):
                yield (*key, n + 1, side), "the limit falls although the tool grows"


def _shares(card: Card) -> Iterator[tuple[Key, str]]:
    ramp, depth, plunge = card.ramp, card.depth, card.plunge
    for name, share in (("by", card.thin.by), ("finish_share", card.thin.finish_share)):
        if not 0 < share.value < 1:
            yield ("thin", name, "value"), "a share of the lower limit lies between 0 and 1"
    if ramp is not None:
        for name, angle in (("advised", ramp.advised), ("limit", ramp.limit)):
            if angle is not None and not 0 < angle.value <= MOST_RAMP:
                yield ("ramp", name, "value"), f"a ramp lies between 0 and {MOST_RAMP:g} degrees"
        if ramp.advised is not None and ramp.limit is not None and ramp.advised.value > ramp.limit.value:
            yield ("ramp", "advised", "value"), "the advised ramp is steeper than the steepest"
    if plunge is not None:
        if plunge.feed_share is not None and not 0 < plunge.feed_share.value <= 1:
            yield ("plunge", "feed_share", "value"), "a share of the cutting feed lies between 0 and 1"
        if plunge.policy == "yes" and plunge.depth is None:
            yield ("plunge",), "where a plunge is allowed, `depth` says how deep"
        if plunge.policy == "no" and plunge.depth is not None:
            yield ("plunge", "depth"), "no plunge is allowed, yet a depth is given"
    if depth is not None:
        for name, number in (("slot", depth.slot), ("side", depth.side)):
            if number is not None and not 0 < number.value <= MOST_DEPTH:
                yield ("depth", name, "value"), f"a pass is between 0 and {MOST_DEPTH:g} diameters deep"
        if depth.slot is not None and depth.side is not None and depth.slot.value > depth.side.value:
            yield ("depth", "slot", "value"), "a slot may not be deeper than a cut along an edge"


def _force(card: Card) -> Iterator[tuple[Key, str]]:
    force = card.force
    if force is None:
        return
    for name in ("kc11", "low", "high"):
        value = getattr(force, name)
        if value is not None and not LEAST_FORCE <= value <= MOST_FORCE:
            yield ("force", name), f"a cutting force lies between {LEAST_FORCE:g} and {MOST_FORCE:g} N/mm2"
    if force.exponent is not None and not 0 <= force.exponent < 1:
        yield ("force", "exponent"), "the exponent lies between 0 and 1"
    if force.low is not None and force.high is not None and force.low > force.high:
        yield ("force", "low"), "the low end is over the high one"
    if force.kc11 is None and force.low is None:
        yield ("force",), "neither kc11 with its exponent nor low and high are given"
    if (force.low is None) != (force.high is None):
        yield ("force",), "low and high go together"
    if not force.source.strip():
        yield ("force", "source"), 'the source is empty; "common practice, no source" is one'


def _words(card: Card) -> Iterator[tuple[Key, str]]:
    for name in ("thin", "thick", "fast"):
        if not getattr(card.seen, name).strip():
            yield ("seen", name), "say what will be seen"
    said = f"{card.seen.thin} {card.seen.fast}".lower()
    wanted = HEAT_WORDS[card.kind]
    if not any(word in said for word in wanted):
        yield ("seen",), f"heat shows in {card.kind} in other ways; one of these belongs here: {', '.join(wanted)}"
    if card.kind in ("wood", "board") and card.melts:
        yield ("melts",), f"{card.kind} does not melt"
    if card.kind == "metal" and (card.melts or card.burns):
        yield ("melts" if card.melts else "burns",), "a metal neither melts nor burns at a router"
    if not card.tape_holds and not any("tape" in caution.lower() for caution in card.cautions):
        yield ("tape_holds",), "tape does not hold it: a caution must say so, and what does"
    if not card.cautions:
        yield (), "no caution is given: dust, fumes, fire, fragments?"

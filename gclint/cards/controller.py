"""Controller cards: what a controller does with what it is sent. Shipped in rules/controllers, named by class.

A card says of every code, word and habit of writing whether the controller does it, refuses it or ignores it (takes it
and does nothing), each with standing and source. What a narrower name says counts: a code before its family.
"""

from __future__ import annotations

import math
import re
from functools import cache
from pathlib import Path
from typing import Literal

import msgspec
from msgspec import Struct

from gclint.cards.codes import FAMILIES, HABITS, LETTERS, codes_of, tenths
from gclint.knowledge.numbers import model_number
from gclint.problem import Problem, nearest
from gclint.shipped import folder
from gclint.tables.setup import Controller, Said
from gclint.toml.quantity import Depth, Length, Standing

Does = Literal["does", "refuses", "ignores"]
STATES: tuple[Does, ...] = ("does", "refuses", "ignores")
# Of each of these one is in force at a time.
STARTS = (("G17", "G18", "G19"), ("G20", "G21", "G70", "G71"), ("G90", "G91"), ("G93", "G94", "G95"), ("G98", "G99"))
RESOLUTION = 0.001  # mm, where a card names none
INCH_STEP = 0.0001 * 25.4  # mm: the last place of the four decimals in which inch programs are written
PRODUCT_FREE = re.compile(r"[a-z0-9][a-z0-9-]*\Z")


class ArcRule(Struct, frozen=True, forbid_unknown_fields=True):
    """An arc is refused over `most`, or over both `tolerance` and `share` of its radius.

    Where `tolerance` is left out, the rule of this controller is not known: what rounding to its resolution cannot
    explain is refused (`arc_steps`, `arc_share` and `arc_most` of the model's numbers).
    """

    tolerance: Depth | None = None
    tolerance_inch: Depth | None = None  # where the program speaks inches, if it differs there
    share: float = 0.0
    most: Depth | None = None
    centres: Literal["incremental", "absolute"] = "incremental"


class Names(Struct, frozen=True, forbid_unknown_fields=True):
    """Codes (or families of them), letters and habits that a controller treats alike, and where that is known from."""

    codes: tuple[str, ...] = ()
    words: tuple[str, ...] = ()
    habits: tuple[str, ...] = ()
    standing: Standing | None = None
    source: str = ""


class Because(Struct, frozen=True, forbid_unknown_fields=True):
    standing: Standing
    source: str


class ControllerCard(Struct, frozen=True, forbid_unknown_fields=True):
    """One file of rules/controllers, or a shop's own beside its shop.toml."""

    name: str
    title: str
    source: str
    arcs: ArcRule = msgspec.field(default_factory=ArcRule)
    about: str = ""
    standing: Standing = "memory"  # of what names none of its own
    tool_change: Literal["does", "stops", "refuses", "ignores"] = "does"
    program_stop: Literal["stops", "stops-spindle", "refuses", "ignores"] = "stops"
    dwell_unit: Literal["s", "ms"] = "s"
    feed_unit: Literal["mm/min", "mm/s"] = "mm/min"
    over_feed: Literal["clamps", "loses-steps", "not-known"] = "not-known"  # a feed over an axis' limit
    rapids: Literal["straight", "each-axis", "not-known"] = "not-known"  # G0 over more than one axis
    characters_per_second: float | None = None  # it reads at most; None: not known
    resolution: Length | None = None  # 0.001 mm
    no_point: Literal["as-written", "resolution"] = "as-written"  # what X100 means: 100 mm, or 100 x resolution
    line_length: int = 256  # characters; 0: no limit
    axes: tuple[Literal["X", "Y", "Z", "A", "B", "C", "U", "V", "W"], ...] | None = None  # None: not known
    end_required: bool = False
    compensation_rules: Literal["reads-ahead", "report"] = "reads-ahead"
    start_state: tuple[str, ...] = ()
    other_codes: Does = "does"  # codes that no list below names
    does: tuple[Names, ...] = ()
    refuses: tuple[Names, ...] = ()
    ignores: tuple[Names, ...] = ()
    because: dict[str, Because] = msgspec.field(default_factory=dict)  # key of this card -> standing and source


@cache
def names() -> tuple[str, ...]:
    return tuple(sorted(path.stem for path in (folder() / "controllers").glob("*.toml")))


@cache
def controller(name: str) -> Controller:
    """The shipped card `name`, read once in a process. Raises Problem, without a place, naming the nearest card."""
    if name not in names():
        raise Problem(f'there is no controller card "{name[:40]}"{nearest(name, names())}')
    return controller_from(folder() / "controllers" / f"{name}.toml")


def controller_from(path: Path) -> Controller:
    """A card of the shop's own. Raises Problem with line and column: schema, values, contradictions, sources."""
    from gclint.toml.file import decode, read_text

    text = read_text(path, "controller card")
    return _resolved(decode(text, ControllerCard, str(path)), text, str(path))


def _resolved(card: ControllerCard, text: str, path: str) -> Controller:
    states, said = _states(card, text, path)
    _agree(card, states, text, path)
    if card.axes is not None:
        for letter in "ABCUVW":
            if letter not in card.axes:
                states.setdefault(letter, "refuses")
    resolution = float(card.resolution or RESOLUTION)
    tolerance, inch, share, most = _arc_limits(card.arcs, resolution)
    return Controller(
        name=card.name,
        title=card.title,
        about=card.about,
        tool_change=card.tool_change,
        program_stop=card.program_stop,
        dwell_unit=card.dwell_unit,
        feed_unit=card.feed_unit,
        over_feed=card.over_feed,
        rapids=card.rapids,
        characters_per_second=card.characters_per_second,
        arc_known=card.arcs.tolerance is not None,
        arc_tolerance=tolerance,
        arc_tolerance_inch=inch,
        arc_tolerance_share=share,
        arc_tolerance_most=most,
        resolution=resolution,
        no_point=card.no_point,
        line_length=card.line_length,
        axes=card.axes,
        end_required=card.end_required,
        arc_centres=card.arcs.centres,
        start_state=card.start_state,
        canned_cycles=states.get("G81", card.other_codes),
        compensation=states.get("G41", card.other_codes),
        compensation_rules=card.compensation_rules,
        states=states,
        other_codes=card.other_codes,
        said=said,
        because=_because(card),
        source=card.source,
        standing=card.standing,
    )


def _because(card: ControllerCard) -> dict[str, tuple[str, str]]:
    """Return the standing and source of single keys; an arc rule that the card leaves out is gclint's own."""
    said: dict[str, tuple[str, str]] = {key: (each.standing, each.source) for key, each in card.because.items()}
    if card.arcs.tolerance is None:
        said["arcs"] = ("practice", "not known of this controller: gclint reckons from the resolution, no source")
    return said


def _arc_limits(arcs: ArcRule, resolution: float) -> tuple[float, float | None, float, float]:
    """Return tolerance, the same in inch programs, share of the radius and most (0: none); mm.

    Start, end and centre are each rounded to a step, which moves a radius by less than 3 steps; an inch program is
    written in steps of 0.0001 in, whatever the controller resolves.
    """
    if arcs.tolerance is not None:
        inch = None if arcs.tolerance_inch is None else float(arcs.tolerance_inch)
        return float(arcs.tolerance), inch, arcs.share, float(arcs.most or 0.0)
    steps, most = model_number("arc_steps"), model_number("arc_most")
    inch = steps * max(resolution, INCH_STEP)
    return steps * resolution, inch, model_number("arc_share"), max(most, inch)


def _states(card: ControllerCard, text: str, path: str) -> tuple[dict[str, str], tuple[Said, ...]]:
    """What is done with each code, letter and habit, narrower names winning; and each entry with its source."""
    wide: dict[str, str] = {}
    narrow: dict[str, str] = {}
    said: list[Said] = []
    for state in STATES:
        for n, entry in enumerate(getattr(card, state)):
            for kind in ("codes", "words", "habits"):
                for m, name in enumerate(getattr(entry, kind)):
                    key = (state, n, kind, m)
                    into = wide if name in FAMILIES or ("-" in name and kind == "codes") else narrow
                    for each in _meant(kind, name, key, text, path):
                        if into.setdefault(each, state) != state:
                            raise _wrong(text, path, key, f'"{name}" is also among what it {into[each]}')
            if not (entry.codes or entry.words or entry.habits):
                raise _wrong(text, path, (state, n), "an entry needs codes, words or habits")
            named = (*entry.codes, *entry.words, *entry.habits)
            said.append(Said(state, named, entry.standing or card.standing, entry.source or card.source))
    return {**wide, **narrow}, tuple(said)


def _meant(kind: str, name: str, key: tuple[str | int, ...], text: str, path: str) -> tuple[str, ...]:
    if kind == "codes":
        try:
            return tuple(codes_of(name))
        except ValueError:
            says = f'"{name}" is neither a code (G81), a range (G54-G59) nor a family{nearest(name, tuple(FAMILIES))}'
            raise _wrong(text, path, key, says) from None
    known = LETTERS if kind == "words" else tuple(HABITS)
    if name not in known:
        what = "letter of a word" if kind == "words" else "habit"
        raise _wrong(text, path, key, f'"{name}" is no {what}{nearest(name, known)}')
    return (name,)


def _agree(card: ControllerCard, states: dict[str, str], text: str, path: str) -> None:
    """Raise Problem where two entries of a card cannot both be true, or a source is missing."""
    if not PRODUCT_FREE.match(card.name):
        raise _wrong(text, path, ("name",), "a name is lower-case letters, digits and hyphens")
    if not card.source.strip():
        raise _wrong(text, path, ("source",), "a card needs its source, if only \"common practice, no source\"")
    for n, code in enumerate(card.start_state):
        try:
            tenths(code)
        except ValueError:
            raise _wrong(text, path, ("start_state", n), f'"{code}" is no code') from None
        for group in STARTS:
            if code in group and any(other in group and other != code for other in card.start_state[:n]):
                raise _wrong(text, path, ("start_state", n), f'only one of {", ".join(group)} is in force at the start')
        if states.get(code, card.other_codes) == "refuses":
            raise _wrong(text, path, ("start_state", n), f'"{code}" is in force at the start and yet refused')
    if states.get("G20") == "ignores" and "G21" not in card.start_state:
        says = 'it ignores G20, so it is always in mm: start_state must name "G21"'
        raise _wrong(text, path, ("start_state",), says)
    for code, key in (("M6", "tool_change"), ("M0", "program_stop")):
        if code in states:
            told = next(s for s in STATES if states[code] == s)
            raise _wrong(text, path, (told,), f"what it does with {code} is said by the key `{key}`")
    _arcs_agree(card.arcs, text, path)
    most, tolerance = float(card.arcs.most or 0.0), float(card.arcs.tolerance or 0.0)
    if 0 < most < tolerance:
        raise _wrong(text, path, ("arcs", "most"), "arcs are refused over `most`, so it cannot be under `tolerance`")
    if not 0 <= card.arcs.share < 1:
        raise _wrong(text, path, ("arcs", "share"), "a share of the radius lies between 0 and 1, such as 0.001")
    if card.characters_per_second is not None and not 0 < card.characters_per_second < math.inf:
        says = "a rate is a number above 0; leave the key out if it is not known"
        raise _wrong(text, path, ("characters_per_second",), says)
    if card.line_length < 0:
        raise _wrong(text, path, ("line_length",), "a length is 0 (no limit) or more")
    fields = tuple(f.encode_name for f in msgspec.structs.fields(ControllerCard))
    for key in card.because:
        if key not in fields:
            raise _wrong(text, path, ("because", key), f"there is no such key on a card{nearest(key, fields)}")
    if card.axes is not None:
        for letter in card.axes:
            if states.get(letter) == "refuses":
                raise _wrong(text, path, ("axes",), f"{letter} is an axis and yet its words are refused")


def _arcs_agree(arcs: ArcRule, text: str, path: str) -> None:
    """Raise Problem where limits are given without the tolerance that they go with."""
    if arcs.tolerance is None:
        for key, given in (("tolerance_inch", arcs.tolerance_inch), ("share", arcs.share), ("most", arcs.most)):
            if given:
                says = "it goes with `tolerance`; leave all out if the rule is not known"
                raise _wrong(text, path, ("arcs", key), says)


def _wrong(text: str, path: str, key: tuple[str | int, ...], says: str) -> Problem:
    from gclint.toml.file import problem_at

    return problem_at(text, path, key, says)


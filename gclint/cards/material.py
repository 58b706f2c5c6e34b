"""Material cards: how a material wants to be cut, each number with standing and source. Shipped in rules/materials."""

from __future__ import annotations

from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Annotated, Literal

from msgspec import Struct, field

from gclint.problem import Problem, nearest
from gclint.shipped import folder
from gclint.tables.material import (
    OPERATION_NAMES,
    ChipFloor,
    ChipRow,
    EdgeRow,
    Force,
    GoodChip,
    Material,
    Operation,
    Row,
    Sourced,
)
from gclint.toml.quantity import Angle, Grade, Standing


class Number(Row, frozen=True):
    value: float
    standing: Standing
    source: str


class AngleNumber(Row, frozen=True):
    value: Angle
    standing: Standing
    source: str


class Seen(Row, frozen=True):
    thin: str
    thick: str
    fast: str


class Thin(Row, frozen=True):
    by: Number
    finish_share: Number
    grade: Grade = "change"
    judged: bool = True


class Ramp(Row, frozen=True):
    advised: AngleNumber | None = None
    limit: AngleNumber | None = None


class Plunge(Row, frozen=True):
    policy: Literal["no", "yes", "peck", "drill"]
    policy_standing: Standing
    policy_source: str
    depth: Number | None = None  # times the diameter
    feed_share: Number | None = None  # of the cutting feed


class Depth(Row, frozen=True):
    """Upper limit of one pass, times the diameter; side: a quarter of the diameter or less in width."""

    slot: Number | None = None
    side: Number | None = None


class Card(Row, frozen=True):
    """One material card as its file is written."""

    name: str
    title: str
    kind: Literal["wood", "board", "plastic", "resin", "metal", "foam", "wax", "laminate"]
    seen: Seen
    thin: Thin
    chip: tuple[ChipRow, ...]
    brittle: bool = False
    up_cut_frays_top: bool = False
    climb_walls: bool = False
    melts: bool = False
    burns: bool = False
    dust: bool | str = False
    tape_holds: bool = True
    aliases: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    edge: tuple[EdgeRow, ...] = ()
    chip_floor: ChipFloor | None = None
    ramp: Ramp | None = None
    plunge: Plunge | None = None
    depth: Depth | None = None
    force: Force | None = None
    good_chip: GoodChip | None = None
    chip_of: Annotated[dict[Operation, tuple[ChipRow, ...]], OPERATION_NAMES] = field(default_factory=dict)


@cache
def names() -> tuple[str, ...]:
    """Names of the shipped cards, sorted."""
    return tuple(sorted(path.stem for path in (folder() / "materials").glob("*.toml")))


def material(name: str) -> Material:
    """The card of a name or an alias, or of a file (a name that ends in .toml).

    Raises Problem, without a place, for an unknown name (naming the nearest) and for one that means several materials.
    """
    if name.endswith(".toml"):
        return material_from(Path(name))
    plain = "-".join(name.lower().replace("_", " ").split())
    known = names()
    if plain in known:
        return _shipped(plain)
    cards = [_shipped(each) for each in known]
    meant = [card for card in cards if plain in card.aliases]
    if len(meant) == 1:
        return meant[0]
    if meant:
        choices = " or ".join(f'"{card.name}"' for card in meant)
        raise Problem(f'the material "{name}" can mean more than one card; write {choices}')
    aliases = {alias: card.name for card in cards for alias in card.aliases}
    tail = nearest(plain[:60], (*known, *aliases))
    if "nearest" not in tail:
        tail = f"; known: {', '.join(known)}"
    for alias, of in aliases.items():
        tail = tail.replace(f'"{alias}"', f'"{of}"')
    raise Problem(f'there is no material "{name[:60]}"{tail}')


@cache
def _shipped(name: str) -> Material:
    """Read once in a process: a run over a folder asks for the same few cards."""
    return material_from(folder() / "materials" / f"{name}.toml")


def material_from(path: Path) -> Material:
    """The card in a file. Raises Problem with file, line and column for a card that is not sound."""
    from gclint.toml.file import decode, problem_at, read_text

    text = read_text(path, "material card")
    card = decode(text, Card, str(path))
    for key, says in _faults(card):
        raise problem_at(text, str(path), key, says)
    return _material(card, str(path))


def _faults(card: Card) -> list[tuple[tuple[str | int, ...], str]]:
    """What no struct can say: limits the right way round, diameters rising."""
    faults: list[tuple[tuple[str | int, ...], str]] = []
    if not card.chip:
        faults.append((("chip",), "at least one diameter is needed"))
    for key, rows in ((("chip",), card.chip), *((("chip_of", name), rows) for name, rows in card.chip_of.items())):
        for n, row in enumerate(rows):
            if row.low >= row.high:
                faults.append(((*key, n, "low"), "the low limit is not under the high one"))
            if n and row.diameter <= rows[n - 1].diameter:
                faults.append(((*key, n, "diameter"), "the diameters must rise from row to row"))
    for n, edge in enumerate(card.edge):
        if edge.low is not None and edge.high is not None and edge.low >= edge.high:
            faults.append((("edge", n, "low"), "the low limit is not under the high one"))
        if len(card.edge) > 1 and edge.diameter is None:
            faults.append((("edge", n), "with several rows each needs a diameter"))
        elif n and edge.diameter <= card.edge[n - 1].diameter:  # type: ignore[operator]
            faults.append((("edge", n, "diameter"), "the diameters must rise from row to row"))
    if card.chip_floor:
        points = card.chip_floor.points
        if not points:
            faults.append((("chip_floor", "points"), "at least one point is needed"))
        if any(b.edge_speed <= a.edge_speed for a, b in pairwise(points)):
            faults.append((("chip_floor", "points"), "the edge speeds must rise from point to point"))
    force = card.force
    if force and (force.kc11 is not None or force.low is None) and (force.kc11 is None) != (force.exponent is None):
        faults.append((("force",), "kc11 and exponent go together"))
    return faults


def _sourced(number: Number | AngleNumber | None) -> Sourced | None:
    return None if number is None else Sourced(float(number.value), number.standing, number.source)


def _material(card: Card, path: str) -> Material:
    ramp, depth, plunge = card.ramp or Ramp(), card.depth or Depth(), card.plunge
    return Material(
        name=card.name,
        title=card.title,
        kind=card.kind,
        brittle=card.brittle,
        up_cut_frays_top=card.up_cut_frays_top,
        climb_walls=card.climb_walls,
        melts=card.melts,
        burns=card.burns,
        dust=card.dust,
        tape_holds=card.tape_holds,
        cautions=card.cautions,
        thin_words=card.seen.thin,
        thick_words=card.seen.thick,
        fast_words=card.seen.fast,
        chip=card.chip,
        chip_floor=card.chip_floor,
        edge=card.edge,
        thin_by=Sourced(card.thin.by.value, card.thin.by.standing, card.thin.by.source),
        thin_grade=card.thin.grade,
        thin_judged=card.thin.judged,
        finish_share=Sourced(
            card.thin.finish_share.value, card.thin.finish_share.standing, card.thin.finish_share.source
        ),
        ramp_advised=_sourced(ramp.advised),
        ramp_limit=_sourced(ramp.limit),
        plunge=plunge.policy if plunge else None,
        plunge_standing=plunge.policy_standing if plunge else "",
        plunge_source=plunge.policy_source if plunge else "",
        plunge_depth=_sourced(plunge.depth) if plunge else None,
        plunge_feed_share=_sourced(plunge.feed_share) if plunge else None,
        depth_slot=_sourced(depth.slot),
        depth_side=_sourced(depth.side),
        force=card.force,
        aliases=card.aliases,
        path=path,
        good_chip=card.good_chip,
        chip_of={str(operation): rows for operation, rows in card.chip_of.items()},
    )


class CardRow(Struct, frozen=True):
    """One line of a card as people read it."""

    what: str
    value: str
    unit: str
    standing: str
    source: str


def describe(material: Material) -> list[CardRow]:
    """Every number of a card with its unit, standing and source, in reading order."""
    rows: list[CardRow] = []

    def add(what: str, value: str, unit: str, of: ChipRow | EdgeRow | Sourced | Force | ChipFloor | None) -> None:
        if of is not None:
            rows.append(CardRow(what, value, unit, of.standing, of.source))

    for row in material.chip:
        add(f"chip, tool of {row.diameter:g} mm", f"{row.low:g} to {row.high:g}", "mm", row)
    for operation, own in material.chip_of.items():
        for row in own:
            tool = "" if operation == "drill" else ", tool"
            add(f"chip, {operation}{tool} of {row.diameter:g} mm", f"{row.low:g} to {row.high:g}", "mm", row)
    if material.chip_floor:
        for point in material.chip_floor.points:
            what = f"chip, {material.chip_floor.diameter:g} mm at {point.edge_speed:g} m/min"
            add(what, f"from {point.low:g}", "mm", material.chip_floor)
    for edge in material.edge:
        what = "edge speed" + (f", tool of {edge.diameter:g} mm" if edge.diameter else "")
        limits = [f"{edge.low:g} to" if edge.low else "up to", f"{edge.high:g}" if edge.high else "any"]
        add(what, " ".join(limits), "m/min", edge)
    for what, number, unit in (
        ("chip too thin: under by", material.thin_by, "% of limit"),
        ("lower limit of a skim", material.finish_share, "% of limit"),
        ("ramp, advised", material.ramp_advised, "deg"),
        ("ramp, steepest", material.ramp_limit, "deg"),
        ("straight plunge, to", material.plunge_depth, "x D"),
        ("plunge feed", material.plunge_feed_share, "% of feed"),
        ("depth of a slot, to", material.depth_slot, "x D"),
        ("depth of a side cut, to", material.depth_side, "x D"),
    ):
        if number is not None:
            add(what, f"{number.value * (100.0 if unit.startswith('%') else 1.0):g}", unit, number)
    if material.plunge:
        policy = {"yes": "allowed", "no": "not allowed", "peck": "in pecks only", "drill": "with a drill only"}
        standing, source = material.plunge_standing, material.plunge_source
        rows.append(CardRow("straight plunge", policy[material.plunge], "", standing, source))
    force = material.force
    if force and force.kc11 is not None:
        add("cutting force kc1.1", f"{force.kc11:g}", "N/mm2", force)
    elif force and force.low is not None:
        what = "cutting force" if force.exponent is None else "cutting force kc1.1"
        add(what, f"{force.low:g} to {force.high or force.low:g}", "N/mm2", force)
    if force and force.exponent is not None:
        add("its exponent", f"{force.exponent:g}", "", force)
    return rows

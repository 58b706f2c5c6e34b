"""A shop's cheat sheet: its bits, its dial marks and the materials on one page, and which bit suits one material."""

from __future__ import annotations

from typing import Any

import msgspec

from gclint import __version__
from gclint.digest.words import Lengths
from gclint.problem import Problem
from gclint.report.answers.window_asked import asked_of
from gclint.report.answers.window_out import Asked, PairOut, pairs_of
from gclint.report.text.cautions import in_short
from gclint.report.text.text_sheet import TextSheet


class Row(msgspec.Struct, frozen=True):
    """One bit in one material: its pairs, or why there are none."""

    material: str
    tool: int
    title: str  # of the bit
    why_not: str
    best: PairOut | None
    marks: tuple[PairOut, ...]
    removed: float  # mm3/min at the best pair in its usual cut; 0 without one
    cut: str  # "a slot 3 mm deep"
    inch: bool


def rows_of(material: str | None, tool_text: str | None, **given: Any) -> list[Row]:
    """Of the asked material (or every card) with the asked bit (or every one of the shop). Raises Problem."""
    from gclint.cards.material import names
    from gclint.setup.declare import Options, declare
    from gclint.setup.resolve import shop_setup

    setup = shop_setup(declare(Options(material, (), None, given["shop"], given["job"]), None))
    bits = sorted(setup.tools) if tool_text is None else None
    if bits == []:
        raise Problem("no shop file declares a bit: name one with --shop, or write shop.toml with gclint shop new")
    materials = [material] if material is not None else list(names())
    return [
        _row(each, str(bit) if bits else str(tool_text), **given) for each in materials for bit in (bits or [0])
    ]  # fmt: skip


def _row(material: str, tool: str, **given: Any) -> Row:
    from gclint.digest.tool_facts import described

    number = int(tool) if tool.isdigit() else 0
    try:
        asked = asked_of(material, tool, **given)
    except Problem as problem:
        return Row(material, number, f"tool {tool}", problem.says, None, (), 0.0, "", False)
    pairs = pairs_of(asked)
    best = next((pair for pair in pairs if pair.what == "best"), None)
    marks = tuple(pair for pair in pairs if pair.what == "dial")
    if marks and not any(pair.feed_mm_min for pair in marks):
        best = None
    fits = best is not None and best.feed_mm_min is not None
    removed = (best.feed_mm_min or 0.0) * asked.cut.ae * asked.cut.ap if best and fits else 0.0
    why = "" if fits else "no feed lies within every limit that is known"
    title = ", ".join(part for part in (asked.tool.name, described(asked.tool, asked.inch)) if part)
    return Row(material, number, title, why, best if fits else None, marks, removed, _cut(asked), asked.inch)


def _cut(asked: Asked) -> str:
    lengths = Lengths(asked.inch)
    return f"{asked.cut.operation} {lengths.length(asked.cut.ap)} deep"


def ranked(rows: list[Row]) -> list[Row]:
    """The bits that take off most first, those that suit nothing last."""
    return sorted(rows, key=lambda row: (-row.removed, row.tool))


def feed_words(pair: PairOut | None, inch: bool) -> str:
    """"F892", with what is turned where no dial mark says it; "-" where none is good."""
    if pair is None or pair.feed_mm_min is None:
        return "-"
    lengths = Lengths(inch)
    feed = f"F{pair.feed_mm_min * lengths.scale:.{1 if inch else 0}f}"
    return feed if pair.mark else f"{feed} at {pair.speed_rpm:.0f}"


def best_words(row: Row) -> str:
    """The best pair: "dial 2: F892"."""
    if row.best is None:
        return "-"
    return f"{row.best.mark}: {feed_words(row.best, row.inch)}" if row.best.mark else feed_words(row.best, row.inch)


def good_marks(row: Row, sign: str = "F") -> str:
    """All marks at which some feed is good, "1 F690, 2 F892"; empty without a dial."""
    good = [pair for pair in row.marks if pair.feed_mm_min]
    return ", ".join(f"{pair.mark} {sign}{feed_words(pair, row.inch)[1:]}" for pair in good)


def shop_text(rows: list[Row], paper: TextSheet) -> None:
    """Write the rows as text: one heading for each material, the bits that suit it best first."""
    paper.ends("BITS, MATERIALS, MARKS", f"gclint {__version__}")
    paper.text_block("Where to start, in each bit's usual slot. No promise: begin slower, and listen.")
    for material in dict.fromkeys(row.material for row in rows):
        paper.blank()
        paper.heading(material.upper())
        own = ranked([row for row in rows if row.material == material])
        table = [
            (str(row.tool or ""), row.title, best_words(row), good_marks(row) or row.why_not, row.cut) for row in own
        ]
        paper.table(("bit", "what", "start with", "at each mark", "in a"), table, left=5)
    paper.blank()
    paper.cautions(in_short(()))

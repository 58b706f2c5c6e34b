"""What each tool does, as tables of text and as JSON."""

from __future__ import annotations

import msgspec

from gclint import __version__
from gclint.clean_text import json_text
from gclint.digest import summary
from gclint.digest.pair_facts import PairFacts, pair_facts, pair_words
from gclint.digest.tool_facts import ToolFacts, tool_facts
from gclint.digest.words import (
    ENTRY_WORDS,
    Glossary,
    Lengths,
    behind,
    count,
    duration,
    figure,
    plain_number,
    span,
)
from gclint.report.text.cautions import cautions, in_short, of_material
from gclint.report.text.text_sheet import TextSheet
from gclint.run import Tables
from gclint.tables.finding import Extent, ToolRow
from gclint.tables.motion import Followed

FILES_NAMED = 5
ONE_CUT = 0.95  # of the largest width: the deepest cut is as good as the widest


class Shown(msgspec.Struct, frozen=True):
    """The JSON document of `gclint show`."""

    gclint: str
    path: str
    units: str
    extent_mm: Extent
    time_s: float | None
    tools: tuple[ToolFacts, ...]
    pairs: tuple[PairFacts, ...]
    followed: Followed | None = None  # of a program with parameters, expressions or flow
    cautions: tuple[str, ...] = ()


def to_json(tables: Tables) -> str:
    shown = Shown(
        __version__, tables.program.name, summary.units(tables.motion), summary.extent(tables.motion),
        summary.total_time(tables.motion, tables.timing), tool_facts(tables), pair_facts(tables),
        tables.motion.followed, cautions(of_material(tables.setup.material)),
    )
    return json_text(msgspec.json.encode(shown))


def tool_sheets(tables: Tables, paper: TextSheet) -> None:
    lengths = Lengths(summary.units(tables.motion) == "inch")
    gloss = Glossary()
    paper.ends("TOOL SHEET", f"gclint {__version__}")
    paper.field("program", tables.program.name)
    paper.field("time", duration(summary.total_time(tables.motion, tables.timing)))
    if tables.motion.followed is not None:
        paper.field("followed", followed_words(tables.motion.followed))
    facts = tool_facts(tables)
    if not facts:
        paper.field("tools", "no tool moves")
    pairs = pair_facts(tables)
    for one in facts:
        _sheet(one, [pair for pair in pairs if pair.tool == one.row.tool], paper, lengths, gloss)
    paper.cautions(in_short(of_material(tables.setup.material)))


def _sheet(facts: ToolFacts, pairs: list[PairFacts], paper: TextSheet, lengths: Lengths, gloss: Glossary) -> None:
    row = facts.row
    paper.blank()
    paper.heading("TOOL NOT NAMED" if row.tool is None else f"TOOL {row.tool}")
    paper.field("tool", ", ".join(part for part in (row.name, facts.described) if part))
    paper.field("from", f"line {facts.first_line:,}")
    paper.field("speed", gloss(speed_words(facts)))
    paper.field("cuts", f"{lengths.path(row.cut_length_mm)} in {duration(row.cut_time_s)}")
    paper.field("rapids", duration(row.rapid_time_s))
    if row.set_feed_mm_min:
        paper.field("feed", feed_words(row, lengths))
    if row.fz_mm:
        paper.field("per tooth", gloss(f"feed per tooth {lengths.lengths(*row.fz_mm)}").removeprefix("feed per tooth "))
    if row.h_ex_mm:
        paper.field("chip", gloss(f"chip {lengths.lengths(*row.h_ex_mm)}").removeprefix("chip "))
    if facts.chip_window:
        window = facts.chip_window
        low, high = (None if v is None else v * lengths.scale for v in (window.low, window.high))
        limits = f"{'-' if low is None else figure(low)} to {'-' if high is None else figure(high)} {lengths.unit}"
        paper.field("window", f"{limits} for {facts.chip_operation} cuts ({behind(window.standing, window.source)})")
    if facts.edge_speed_m_min:
        paper.field("edge", gloss(f"edge speed {span(*facts.edge_speed_m_min, 'm/min')}").removeprefix("edge speed "))
    for label, words in load_words(facts, lengths):
        paper.field(label, gloss(words))
    for pair in pairs:
        paper.field("pair", pair_words(pair, lengths))
    if facts.operation_mm:
        paper.field("kinds", ", ".join(f"{name} {lengths.path(mm)}" for name, mm in facts.operation_mm.items()))
    if row.removed_mm3 is not None:
        paper.field("removed", lengths.volume(row.removed_mm3))
    if facts.entries:
        paper.blank()
        paper.table(
            ("entries", "count", "deepest", "at line", "steepest", "feed"),
            [
                (
                    ENTRY_WORDS[e.kind], f"{e.count:,}", lengths.length(e.solid_mm), f"{e.deepest_line:,}",
                    "-" if e.steepest_degrees is None else f"{figure(e.steepest_degrees)} deg",
                    "-" if e.feed_mm_min is None else lengths.feeds(*e.feed_mm_min),
                )
                for e in facts.entries
            ],
        )
    if facts.levels:
        paper.blank()
        paper.table(
            ("passes down to", "count", "first line", "length", "deep", "wide"),
            [
                (
                    f"Z {lengths.place(level.lowest_z_mm)}", f"{level.passes:,}", f"{level.first_line:,}",
                    lengths.path(level.length_mm), lengths.length(level.ap_max_mm), lengths.length(level.ae_max_mm),
                )
                for level in facts.levels
            ],
        )
    if facts.levels_left_out:
        paper.text_block(f"and {count(facts.levels_left_out, 'more level')}; --as json gives totals")
    if not row.passes:
        paper.text_block("It met no material, or what it met could not be modelled.")


def followed_words(followed: Followed) -> str:
    """'1,204 blocks executed; 12 calls, 2 deep; beside it edge.ngc'."""
    parts = [f"{count(followed.blocks, 'block')} executed"]
    if followed.calls:
        parts.append(f"{count(followed.calls, 'call')}, at most {followed.deepest} deep")
    if followed.files:
        more = f" and {len(followed.files) - FILES_NAMED} more" if len(followed.files) > FILES_NAMED else ""
        parts.append(f"with {', '.join(followed.files[:FILES_NAMED])}{more} from beside it")
    return "; ".join(parts)


def speed_words(facts: ToolFacts) -> str:
    """'S 18000 set, true speed 26500 rev/min, dial F'."""
    row = facts.row
    if row.set_speed_rpm is None and row.true_speed_rpm is None:
        return "not set"
    parts = [f"S {_rev(row.set_speed_rpm)} set"] if row.set_speed_rpm else ["no S set"]
    parts.append(f"true speed {_rev(row.true_speed_rpm)} rev/min" if row.true_speed_rpm else "true speed unknown")
    if facts.dial_marks:
        parts.append(f"dial {', '.join(facts.dial_marks)}")
    return ", ".join(parts)


def depth_words(facts: ToolFacts, lengths: Lengths) -> str:
    """'at most 18 mm deep at once (0.2 mm wide there), 6 mm wide (0.5 mm deep there)'; "" where nothing is cut."""
    if facts.deepest_cut_mm is None or facts.widest_cut_mm is None:
        return ""
    (deep, narrow), (shallow, wide) = facts.deepest_cut_mm, facts.widest_cut_mm
    there = tip = ""
    if narrow < ONE_CUT * wide:
        there, tip = f" ({lengths.length(narrow)} wide there)", f" ({lengths.length(shallow)} deep there)"
    deepest = f"; tip down to {lengths.length(facts.deepest_mm)} below the top" if facts.deepest_mm else ""
    return f"at most {lengths.length(deep)} deep at once{there}, {lengths.length(wide)} wide{tip}{deepest}"


def load_words(facts: ToolFacts, lengths: Lengths) -> list[tuple[str, str]]:
    """[('force', '11 to 30 N in the heaviest cut, power ...'), ('bends', '0.01 to 0.03 mm at the tip, ...')].

    Two digits: the constants behind are known no better. What is not known is left out.
    """
    row, lines = facts.row, []
    if facts.runout_mm and row.h_ex_mm:
        most = lengths.length(row.h_ex_mm[1])
        lines.append(("runout", f"{lengths.length(facts.runout_mm)}: the tooth that stands out takes up to {most}"))
    label = "force" if row.force_n else "power"
    parts = [f"{span(*row.force_n, 'N', 2)} in the heaviest cut"] if row.force_n else []
    if row.power_w:
        of = f" of {figure(facts.spindle_power_w)} W" if facts.spindle_power_w else ""
        parts.append(f"{'power ' if parts else ''}{span(*row.power_w, 'W', 2)}{of}")
    if row.torque_nm:
        parts.append(f"torque {span(*row.torque_nm, 'N m', 2)}")
    if parts:
        lines.append((label, ", ".join(parts)))
    if row.bend_mm and row.stress_n_mm2:
        of = f" of {figure(facts.stress_allowed_n_mm2)}" if facts.stress_allowed_n_mm2 else ""
        low, high = (value * lengths.scale for value in row.bend_mm)
        stress = f"stress {span(*row.stress_n_mm2, '', 2)}{of} N/mm2"
        lines.append(("bends", f"{span(low, high, lengths.unit, 2)} at the tip, {stress}"))
    return lines


def feed_words(row: ToolRow, lengths: Lengths) -> str:
    """'1150 mm/min set and reached', '2400 mm/min set, 759 to 2400 mm/min reached'."""
    if row.set_feed_mm_min is None:
        return "not set"
    said = lengths.feeds(*row.set_feed_mm_min)
    reached = lengths.feeds(*row.reached_feed_mm_min) if row.reached_feed_mm_min else "unknown"
    return f"{said} set and reached" if said == reached else f"{said} set, {reached} reached"


def _rev(speeds: tuple[float, float]) -> str:
    low, high = (plain_number(round(s)) for s in speeds)
    return low if low == high else f"{low} to {high}"

"""What stands in an editor's hover over a line of a program: the word, the tool, the move, the cut."""

from __future__ import annotations

import math
import tomllib
from functools import cache
from pathlib import Path

import numpy as np

from gclint.advice.edits import Written, words_on
from gclint.cards.codes import spelled
from gclint.columns import Column, Longs
from gclint.digest.summary import units
from gclint.digest.tool_facts import described
from gclint.digest.words import Lengths, behind, figure, span
from gclint.editor.answer import Answer
from gclint.report.machine.message import one_line_of
from gclint.run import Tables
from gclint.tables.cutting import OPERATIONS
from gclint.tables.motion import RAPID

LETTERS = {
    "F": "feed", "S": "spindle speed", "T": "tool", "H": "number of a tool length offset", "D": "number of a diameter",
    "X": "along X", "Y": "along Y", "Z": "along Z", "I": "arc centre, along X", "J": "arc centre, along Y",
    "K": "arc centre, along Z", "R": "radius of an arc, or height to which a cycle returns", "N": "number of the block",
    "P": "time, or a number that the code of the block takes", "Q": "step of a drilling cycle", "L": "repeats",
}  # fmt: skip
KIND = ("rapid move", "feed move", "arc, clockwise", "arc, counter-clockwise")


def hover(answer: Answer, text: str, line: int, column: int) -> str | None:
    """Markdown for a line (from 1) that reads `text`, and a column of it (from 0); None where nothing is known."""
    said = [_word(word) for word in words_on(text) if word.start <= column < word.end]
    tables = answer.run.tables if answer.run is not None else None
    if tables is not None and line <= tables.program.lines:
        said += _move(tables, line)
    if answer.run is not None:
        for finding in answer.run.checked.findings:
            if line in finding.lines or line == finding.line:
                said.append(f"**{finding.grade}** {finding.rule}: {_plain(finding.happens)}")
    return "\n\n".join(each for each in said if each) or None


def _word(word: Written) -> str:
    if word.letter in "GM" and math.isfinite(word.value):
        code = spelled(word.letter, round(word.value * 10))
        means = codes().get(code)
        return f"**{code}**: {means.removesuffix(' *')}" if means else f"**{code}**"
    means = LETTERS.get(word.letter)
    return f"**{word.letter}**: {means}" if means else ""


@cache
def codes() -> dict[str, str]:
    """What each code means."""
    return tomllib.loads(Path(__file__).with_name("codes.toml").read_text(encoding="utf-8"))


def _move(tables: Tables, line: int) -> list[str]:
    """What the tool does on the line: its tool, its moves, and what they cut."""
    motion, setup, timing = tables.motion, tables.setup, tables.timing
    rows = np.flatnonzero(motion.line == line)
    if not len(rows):
        return []
    inch = units(motion) == "inch"
    lengths = Lengths(inch)
    number = int(motion.tool[rows[0]])
    tool = setup.tools.get(number)
    name = f" {tool.name}" if tool is not None and tool.name else ""
    said = [f"**Tool {number}**{_plain(name)}: {described(tool, inch)}" if number >= 0 else "No tool is called yet."]
    feeding = rows[motion.kind[rows] != RAPID]
    kinds = " and ".join(dict.fromkeys(KIND[int(kind)] for kind in motion.kind[rows]))
    far = float(np.nansum(motion.length[rows]))
    parts = [f"{kinds}{f', {len(rows):,} times' if len(rows) > 1 else ''}, {lengths.path(far)}"]
    if len(feeding):
        parts += [
            _span("set feed", motion.feed[feeding] * lengths.scale, f"{lengths.unit}/min"),
            _span("reached", timing.reached[feeding] * lengths.scale, f"{lengths.unit}/min"),
            _span("true speed", tables.cutting.true_speed_of[feeding], "rev/min"),
        ]
    said.append("; ".join(part for part in parts if part))
    return said + _cut(tables, rows, lengths)


def _cut(tables: Tables, rows: Longs, lengths: Lengths) -> list[str]:
    pieces, loads = tables.engagement.pieces, tables.cutting.loads
    low, high = (np.searchsorted(pieces.move, rows[0]), np.searchsorted(pieces.move, rows[-1], side="right"))
    there = np.arange(low, high)
    there = there[np.isin(pieces.move[there], rows)]
    if not len(there):
        return ["In the air." if tables.engagement.box is not None else ""]
    cuts = " and ".join(dict.fromkeys(OPERATIONS[int(each)] for each in loads.operation[there]))
    parts = [
        f"Cuts ({cuts})",
        _span("depth", pieces.ap[there] * lengths.scale, lengths.unit),
        _span("width", pieces.ae[there] * lengths.scale, lengths.unit),
    ]
    said = ["; ".join(part for part in parts if part)]
    judged = there[(loads.chip_judged[there] != 0) & np.isfinite(loads.h_ex[there])]
    if len(judged):
        chip = _span("chip", loads.h_ex[judged] * lengths.scale, lengths.unit)
        ends = [(loads.chip_low, np.nanmax, "at least"), (loads.chip_high, np.nanmin, "at most")]
        window = [
            f"{words} {figure(float(pick(column[judged])) * lengths.scale)}"
            for column, pick, words in ends if np.isfinite(column[judged]).any()
        ]  # fmt: skip
        number = int(tables.motion.tool[rows[0]])
        windows = tables.cutting.windows.get(number)
        own = windows.chip.get(OPERATIONS[int(loads.operation[judged[0]])]) if windows is not None else None
        source = f" ({_plain(behind(own.standing, own.source))})" if own is not None else ""
        said.append(f"{chip}; good is {' and '.join(window)} {lengths.unit}{source}" if window else chip)
    return said


def _span(what: str, values: Column, unit: str) -> str:
    known = values[np.isfinite(values)]
    return f"{what} {span(float(known.min()), float(known.max()), unit)}" if len(known) else ""


def _plain(text: str) -> str:
    """Text in which Markdown sees nothing of its own."""
    lead = " " if text.startswith(" ") else ""
    return lead + "".join(f"\\{c}" if c in "\\`*_[]<>#|~" else c for c in one_line_of(text))

"""The outline of a program: its tools in the order of use, and below each what it does, pass by pass."""

from __future__ import annotations

import numpy as np
from lsprotocol.types import DocumentSymbol, SymbolKind

from gclint.digest.summary import units
from gclint.digest.tool_facts import described
from gclint.digest.words import Lengths
from gclint.editor.answer import Answer
from gclint.editor.text import Text
from gclint.run import Tables
from gclint.tables.cutting import OPERATIONS

MOST_PASSES = 300  # of one program


def outline(answer: Answer, text: Text) -> list[DocumentSymbol]:
    """A symbol for each run of moves with one tool, with one for each of its passes."""
    if answer.run is None or answer.run.tables is None:
        return []
    tables = answer.run.tables
    motion = tables.motion
    if not len(motion):
        return []
    inch = units(motion) == "inch"
    starts = np.flatnonzero(np.diff(motion.tool, prepend=motion.tool[0] - 1))
    ends = np.append(starts[1:], len(motion)) - 1
    passes = _passes(tables, text, Lengths(inch))
    made = []
    for start, end in zip(starts.tolist(), ends.tolist()):
        number = int(motion.tool[start])
        lines = motion.line[start : end + 1]
        called = int(motion.tool_line[start])
        first, last = min(int(lines.min()), called or int(lines.min())), int(lines.max())
        tool = tables.setup.tools.get(number)
        name = f"tool {number}{f' {tool.name}' if tool and tool.name else ''}" if number >= 0 else "no tool called"
        below = [symbol for move, symbol in passes if start <= move <= end]
        whole = text.lines_from_to(first - 1, max([last - 1, *(each.range.end.line for each in below)]))
        here = text.whole_line((called if first <= called <= last else first) - 1)
        made.append(
            DocumentSymbol(name, SymbolKind.Class, whole, here, detail=described(tool, inch), children=below)
        )
    return made


def _passes(tables: Tables, text: Text, lengths: Lengths) -> list[tuple[int, DocumentSymbol]]:
    """(first move, symbol) of each pass."""
    motion, pieces, passes = tables.motion, tables.engagement.pieces, tables.engagement.passes
    made = []
    for row in range(min(len(passes), MOST_PASSES)):
        rows = slice(int(passes.first_piece[row]), int(passes.last_piece[row]) + 1)
        moves = pieces.move[rows]
        lines = motion.line[moves]
        operation = OPERATIONS[int(np.bincount(tables.cutting.loads.operation[rows], pieces.length[rows]).argmax())]
        name = f"{operation}, to Z {lengths.place(float(passes.lowest[row]))}"
        size = f"{lengths.length(float(passes.ap[row]))} deep, {lengths.length(float(passes.ae[row]))} wide"
        detail = f"{size}, {lengths.path(float(passes.length[row]))}"
        whole = text.lines_from_to(int(lines.min()) - 1, int(lines.max()) - 1)
        first = text.whole_line(int(lines.min()) - 1)
        made.append((int(moves[0]), DocumentSymbol(name, SymbolKind.Method, whole, first, detail=detail)))
    return made

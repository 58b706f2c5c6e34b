"""Holes as wide as the tool go down in pecks, lifted out between them: G83 for a cycle, else written out.

Only where the material's card lets the tool go straight down at all.
"""

from __future__ import annotations

import math

import numpy as np

from gclint.knowledge.numbers import model_number
from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.put import edited_line
from gclint.mend.style import STAR, NoRoom, numbered
from gclint.tables.engagement import ENTRY
from gclint.tables.finding import Finding
from gclint.tables.motion import CYCLE, INVERSE_TIME, LINE, PER_REV, RAPID

MOST_PECKS = 100
PECKED, IN_ONE = (73, 83), (81,)
LEVEL = 1e-6


def offers(case: Case, finding: Finding) -> list[Offer]:
    if finding.rule in ("straight-plunge", "hidden-plunge") and not _may_peck(case):
        return []  # the other mender of entries says why
    made: list[Offer] = []
    cycles: set[int] = set()
    for line in finding.lines or (finding.line,):
        try:
            made.append(_offer(case, finding, line, cycles))
        except _Done:
            continue
        except (ValueError, NoRoom) as problem:
            made.append(Refused(finding.rule, (line,), str(problem)))
    return made


class _Done(Exception):
    """The cycle that rules this line has been offered, or the place is no hole as wide as the tool."""


def _may_peck(case: Case) -> bool:
    card = case.setup.material
    return card is not None and card.plunge in ("peck", "drill", "yes")


def _offer(case: Case, finding: Finding, line: int, cycles: set[int]) -> Proposal:
    m, entries = case.motion, case.tables.engagement.entries
    rows = case.rows_of.get(line, [])
    found = [n for n in range(len(entries)) if int(entries.kind[n]) == ENTRY["straight"]
             and any(int(entries.first_move[n]) <= row <= int(entries.last_move[n]) for row in rows)]  # fmt: skip
    if not found:
        raise ValueError("which move goes down here is not plain")
    row = int(entries.first_move[found[0]])
    tool = case.setup.tools.get(int(m.tool[row]))
    if tool is None:
        raise ValueError("the tool has to be declared")
    if tool.shape != "drill" and not _may_peck(case):
        raise ValueError("the material's card does not let this tool go straight down: drill it, or bore it with a "
                         "smaller tool along a helix")  # fmt: skip
    peck = tool.diameter * model_number("peck_of_drill" if tool.shape == "drill" else "peck_of_router_bit")
    if int(m.flags[row]) & CYCLE:
        return _cycle(case, finding, line, row, peck, cycles)
    if not case.straight_through or len(rows) != 1 or len(found) != 1:
        raise ValueError("the program has loops, calls or expressions, and pecks are written where it runs once")
    return _written_out(case, finding, line, rows[0], float(entries.solid[found[0]]), peck)


def _cycle(case: Case, finding: Finding, line: int, row: int, peck: float, cycles: set[int]) -> Proposal:
    """G83 with Q on the line that states the cycle; the lines that repeat it run otherwise, and read as before."""
    m, p = case.motion, case.program
    if not case.straight_through:
        raise ValueError("the program has loops, calls or expressions, and pecks are written where it runs once")
    card = case.setup.controller
    if card.name == "any" and not np.isin(m.cycle, (83,)).any():
        raise ValueError("the controller has to be declared: whether it has the cycle G83 is not known")
    if card.state("G83") != "does":
        raise ValueError("the controller's card has no pecking cycle (G83)")
    block = int(np.searchsorted(p.block_line, line))
    head = int(case.modes.line_of(case.modes.word_of("motion"))[block])
    if head in cycles:
        raise _Done
    cycles.add(head)
    words, text, unit = case.words(head), case.text(head), case.unit(row)
    own = [word for word in words if word[0] == "G" and word[1] in (*IN_ONE, *PECKED)]
    if len(own) != 1 or STAR.search(text) or not case.plain(head):
        raise ValueError("the cycle waits at its end, or its line cannot be edited")
    if own[0][1] in IN_ONE:
        text = text[: own[0][2]] + case.style.code("G", 83).encode() + text[own[0][3] :]
    depth = case.style.word("Z", peck / unit)[1:]
    letter = "q" if case.style.lower else "Q"
    old = next((word for word in words if word[0] == "Q"), None)
    if old is not None:
        text = text[: old[2]] + f"{letter}{depth}".encode() + text[old[3] :]
    else:
        last = words[-1][3]
        text = text[:last] + f"{case.style.gap}{letter}{depth}".encode() + text[last:]
    edits = [Edit(head, text=text)]
    lines = {head}
    k = int(np.searchsorted(m.line, head))
    while k < len(m):  # every move that the cycle makes
        if int(m.cycle[k]):
            lines.add(int(m.line[k]))
        elif int(m.kind[k]) != RAPID or int(m.line[k]) not in lines:
            break
        k += 1
    edits += [Edit(each, otherwise=True) for each in sorted(lines - {head})]
    because = f"Pecks of {depth} {'in' if unit > 1 else 'mm'} (G83): the tool is lifted out of the hole between them."
    at = tuple(sorted({line, *(each for each in finding.lines if each in lines)}))
    return Proposal(finding.rule, "pecks", at, tuple(edits), because)


def _written_out(case: Case, finding: Finding, line: int, row: int, solid: float, peck: float) -> Proposal:
    m, style = case.motion, case.style
    if int(m.kind[row]) != LINE or int(m.flags[row]) & (INVERSE_TIME | PER_REV):
        raise ValueError("the move down is a rapid, or its feed is no length per minute")
    x0, y0, z0 = float(m.x0[row]), float(m.y0[row]), float(m.z0[row])
    x1, y1, z1 = float(m.x1[row]), float(m.y1[row]), float(m.z1[row])
    if math.hypot(x1 - x0, y1 - y0) > 1e-4 or not z1 < z0 - LEVEL:
        raise ValueError("the move does not go straight down")
    after = row + 1
    if after < len(m) and (int(m.kind[after]) != RAPID and float(m.z1[after]) < z0 - LEVEL):
        raise _Done  # a cut follows at that depth: it is no hole as wide as the tool
    top = z1 + solid
    clear = model_number("peck_clearance")
    if case.counts([row]) != "absolute" or STAR.search(case.text(line)):
        raise ValueError("the program counts in increments here, or its lines have checksums")
    if z0 < top + clear:
        raise ValueError("the move down does not start above the material")
    unit, feed = case.unit(row), float(m.feed[row])
    count = math.ceil(solid / peck - 1e-6)
    if count > MOST_PECKS or not math.isfinite(feed):
        raise ValueError(f"it would take more than {MOST_PECKS} pecks, or no feed is in force")
    if count < 2:
        raise _Done
    blocks: list[bytes] = []
    for k in range(1, count):
        depth = top - solid * k / count
        words = [style.code("G", 1), style.word("Z", depth / unit)]
        if k == 1 and any(letter == "F" for letter, *_ in case.words(line)):
            words.append(style.word("F", feed / unit))
        blocks.append(style.line(*words))
        blocks.append(style.line(style.code("G", 0), style.word("Z", z0 / unit)))
        blocks.append(style.line(style.word("Z", min(z0, depth + clear) / unit)))
    words_here = case.words(line)
    text = None
    if not any(letter == "G" and value in (0, 1, 2, 3) for letter, value, _, _ in words_here):
        own, at = case.text(line), words_here[0][2]
        text = own[:at] + style.code("G", 1).encode() + style.gap.encode() + own[at:]
    elif edited_line(case, line, {}) is None:
        raise ValueError("the line cannot be edited")
    edit = Edit(line, before=numbered(style, case.draft, line, tuple(blocks)), text=text, otherwise=True)
    length = f"{solid / count / unit:.4g} {'in' if unit > 1 else 'mm'}"
    because = f"{count} pecks of {length}: the tool is lifted out of the hole between them."
    return Proposal(finding.rule, "pecks", (line,), (edit,), because)

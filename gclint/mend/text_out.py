"""What `gclint mend` and `gclint compare` tell on the terminal: old and new lines side by side, with the reason."""

from __future__ import annotations

import sys
from collections.abc import Sequence

from gclint import __version__
from gclint.digest.words import GRADE_WORDS, count
from gclint.mend.case import Case
from gclint.mend.compare import Comparison, lines_that_differ
from gclint.mend.mend import Mended
from gclint.mend.result import Made, Place, Proof, Surface
from gclint.report.text.cautions import NOT_A_PROMISE
from gclint.report.text.text_sheet import TextSheet, text_sheet_for
from gclint.tables.program import decode

MOST_LINES = 12  # of one change, shown
MOST_NAMED = 8
MOST_ALIKE = 3  # places of one kind of change, shown in full
FINE = 0.0005  # mm; a smaller difference is none that a page can show
UNCUT = 1e4  # mm


def mend_text(mended: Mended, written: str | None, paper: TextSheet | None = None) -> str:
    """`written`: the file of the copy; None where there is none."""
    paper = paper or text_sheet_for(sys.stdout)
    document = mended.document
    paper.ends("MENDED COPY" if written else "NO COPY WRITTEN", f"gclint {__version__}")
    paper.field("from", f"{document.from_.path}  {document.from_.fingerprint[:19]}...")
    if written and document.to:
        paper.field("to", f"{written}  {document.to.fingerprint[:19]}...")
    elif not mended.original.findings:
        paper.field("because", "Nothing is found in it, so nothing has to be mended.")
    else:
        paper.field("because", "Nothing of what is found could be mended with proof.")
    for alike in alike_changes(document.changes):
        change = alike[0]
        places = f", {len(alike)} places" if len(alike) > 1 else ""
        paper.blank()
        paper.text_block(f"{change.rule} ({change.kind}){places}", style="head")
        paper.text_block(change.because, indent=2)
        for each in alike[:MOST_ALIKE]:
            _side_by_side(paper, mended.original, mended.copy, each)
        if len(alike) > MOST_ALIKE:
            lines = tuple(sorted(line for each in alike[MOST_ALIKE:] for line in each.lines))
            paper.text_block(f"... and {count(len(alike) - MOST_ALIKE, 'more place')} alike: {_lines(lines)}", indent=2)
    paper.blank()
    if written:
        proof_text(paper, document.proof)
        paper.blank()
    if document.not_mended:
        paper.heading("Not mended")
        for left in document.not_mended:
            paper.field("", f"{left.rule}, {_lines(left.lines)}: {left.because}")
        paper.blank()
    if written:
        paper.text_block("A person must look at the copy before it runs. " + NOT_A_PROMISE)
    else:
        paper.text_block(NOT_A_PROMISE)
    return paper.text


def alike_changes(changes: Sequence[Made]) -> list[list[Made]]:
    """Changes of one rule and kind with one reason, together, in the order of the first of each."""
    made: dict[tuple[str, str, str], list[Made]] = {}
    for change in changes:
        made.setdefault((change.rule, change.kind, change.because), []).append(change)
    return [sorted(each, key=lambda change: change.new_lines[:1]) for each in made.values()]


def compare_text(comparison: Comparison, paper: TextSheet | None = None) -> str:
    paper = paper or text_sheet_for(sys.stdout)
    document = comparison.document
    paper.ends("TWO VERSIONS OF A PROGRAM", f"gclint {__version__}")
    paper.field("old", f"{document.old.path}  {document.old.fingerprint[:19]}...")
    paper.field("new", f"{document.new.path}  {document.new.fingerprint[:19]}...")
    change = lines_that_differ(comparison)
    if change is not None:
        paper.blank()
        paper.heading("Lines that differ")
        _side_by_side(paper, comparison.old, comparison.new, change)
    paper.blank()
    proof_text(paper, document.proof, comparison.surface.why_not)
    paper.blank()
    paper.text_block(NOT_A_PROMISE)
    return paper.text


def proof_text(paper: TextSheet, proof: Proof, why_not: str = "") -> None:
    surface = proof.surface
    paper.heading("What was proved")
    if surface.largest_difference_mm is None:
        said = f"could not be compared: {why_not or 'the place of some moves is not known'}"
    elif surface.same:
        said = same_surface(surface)
    else:
        said = differs(surface.largest_difference_mm)
    paper.field("surface", said)
    before, after = (_time(each) for each in proof.time_s)
    paper.field("time", f"{before} before, {after} after")
    paper.field("gone", _places(proof.gone))
    paper.field("new", _places(proof.new))
    paper.field("left", _places(proof.left))
    paper.field("untouched", f"{count(proof.untouched_lines, 'line')}, byte for byte")


def same_surface(surface: Surface) -> str:
    """How near two surfaces that count as the same are."""
    by = surface.largest_difference_mm or 0.0
    floor = "no floor differs" if by < FINE else f"no floor differs by more than {by:.3f} mm"
    return f"the same: {floor}, and no wall by more than {surface.cell_mm:.2f} mm, the cell of the comparison"


def differs(by: float) -> str:
    """How far two surfaces lie apart, mm; where only one of two programs cuts there is no such number."""
    return f"differs by up to {by:.3f} mm" if by < UNCUT else "differs: in places only one of the two cuts"


def _places(places: tuple[Place, ...]) -> str:
    if not places:
        return "nothing"
    said = [f"{each.rule} ({GRADE_WORDS[each.grade].lower()}) on line {each.line}" for each in places[:MOST_NAMED]]
    more = f" and {len(places) - MOST_NAMED} more" if len(places) > MOST_NAMED else ""
    return "; ".join(said) + more


def _time(seconds: float | None) -> str:
    if seconds is None:
        return "not known"
    return f"{seconds:.0f} s" if seconds < 120 else f"{seconds / 60:.1f} min"


def _lines(lines: tuple[int, ...]) -> str:
    named = ", ".join(map(str, lines[:MOST_NAMED])) + (" ..." if len(lines) > MOST_NAMED else "")
    return f"line{'s' if len(lines) > 1 else ''} {named}"


def pairs(original: Case, copy: Case, change: Made) -> list[tuple[str, str, str, str]]:
    """(old line, its text, new line, its text) of a change, in the order of the copy."""
    rows = []
    for line in change.new_lines:
        own = int(copy.draft.origin[line - 1])
        old = decode(original.text(own)) if own else ""
        rows.append((str(own) if own else "", old, str(line), decode(copy.text(line))))
    for line in change.lines:
        if line in copy.draft.dropped:
            rows.append((str(line), decode(original.text(line)), "", ""))
    return rows


def _side_by_side(paper: TextSheet, original: Case, copy: Case, change: Made) -> None:
    rows = pairs(original, copy, change)
    shown = rows[:MOST_LINES]
    if shown:
        paper.table(("line", "old", "line", "new"), shown, indent=2, left=4)
    if len(rows) > len(shown):
        paper.text_block(f"... and {count(len(rows) - len(shown), 'more line')}", indent=2)

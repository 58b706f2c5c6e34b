"""Draws a place as the tool sees it: which views, by what the rule is about; each is worked out from the tables."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from gclint.internal_fault import left_out
from gclint.judge.grouping import measured
from gclint.tables.finding import Finding, Found, Limits
from gclint.tables.motion import INCH
from gclint.teach.bite import bite_view
from gclint.teach.canvas import Drawing
from gclint.teach.listing import listing, named_lines
from gclint.teach.measure import measure_view
from gclint.teach.place import Place
from gclint.teach.plan_view import plan_view
from gclint.teach.scale import Scale
from gclint.teach.section import section_view
from gclint.teach.side import side_view
from gclint.teach.subject import subject_of

View = Callable[[Place, Finding | None], Drawing | None]


def drawings(place: Place | None, finding: Finding | None, leave: tuple[str, ...] = ()) -> list[Drawing]:
    """The views of a place, those that can be drawn; `finding` is None in an example where nothing is found.

    A view that fails is a drawing without lines that says so.
    """
    if place is None:
        return []
    rule = place.rule.text
    names = rule.drawn_as or subject_of(rule).drawn_as
    made = (_view(name, place, finding) for name in names if name not in leave)
    return [drawing for drawing in made if drawing is not None]


def _view(name: str, place: Place, finding: Finding | None) -> Drawing | None:
    try:
        return VIEWS[name](place, finding)
    except Exception as fault:
        return Drawing(left_out("this drawing", fault), ())


def _moves(place: Place) -> tuple[int, int] | None:
    """First and last move of the row."""
    e = place.context.engagement
    if place.table == "entries":
        return int(e.entries.first_move[place.row]), int(e.entries.last_move[place.row])
    if place.table == "passes":
        ends = e.passes.first_piece[place.row], e.passes.last_piece[place.row]
        return int(e.pieces.move[ends[0]]), int(e.pieces.move[ends[1]])
    return (place.move, place.move) if 0 <= place.move < len(place.context.motion) else None


def _piece(place: Place) -> int | None:
    """The row's piece of path: its own, or the deepest of its pass or move."""
    pieces = place.context.engagement.pieces
    if place.table == "pieces":
        return place.row
    ends = _moves(place)
    if ends is None or not len(pieces):
        return None
    rows = np.flatnonzero((pieces.move >= ends[0]) & (pieces.move <= ends[1]))
    return int(rows[np.argmax(pieces.ap[rows])]) if len(rows) else None


def scale_of(place: Place) -> Scale:
    """The program's own units at a place."""
    m = place.context.motion
    at = place.move if 0 <= place.move < len(m) else 0
    return Scale(bool(len(m) and m.flags[at] & INCH))


def _side(place: Place, finding: Finding | None) -> Drawing | None:
    ends = _moves(place)
    return side_view(place.context, *ends, scale_of(place)) if ends else None


def _plan(place: Place, finding: Finding | None) -> Drawing | None:
    ends = _moves(place)
    return plan_view(place.context, *(ends or (0, -1)), scale_of(place))


def _bite(place: Place, finding: Finding | None) -> Drawing | None:
    piece = _piece(place)
    return bite_view(place.context, piece, scale_of(place)) if piece is not None else None


def _section(place: Place, finding: Finding | None) -> Drawing | None:
    piece = _piece(place)
    return section_view(place.context, piece, scale_of(place)) if piece is not None else None


def _measure(place: Place, finding: Finding | None) -> Drawing | None:
    found, window = finding.found if finding else None, finding.window if finding else None
    if finding is None:
        found, window = measured(place.rule, place.view, scale_of(place).inch, place.context)
        if not _inside(found, window):  # good for another reason than this figure
            return None
    return measure_view(found, window) if found is not None else None


def _inside(found: Found | None, window: Limits | None) -> bool:
    value = found.value if found is not None else None
    if window is None or not isinstance(value, (int, float)):
        return False
    return (window.low is None or value >= window.low) and (window.high is None or value <= window.high)


def _listing(place: Place, finding: Finding | None) -> Drawing | None:
    return listing(place.context.program, named_lines(finding) if finding is not None else {})


VIEWS: dict[str, View] = {
    "side": _side, "bite": _bite, "section": _section, "plan": _plan, "measure": _measure, "listing": _listing,
}

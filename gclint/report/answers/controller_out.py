"""Controller cards as text."""

from __future__ import annotations

from gclint.cards.codes import FAMILIES, HABITS
from gclint.cards.controller import controller, names
from gclint.digest.words import behind, figure
from gclint.report.text.text_sheet import TextSheet
from gclint.tables.setup import Controller

TOOL_CHANGE = {
    "does": "M6 changes the tool",
    "stops": "M6 is a pause: a person changes the tool",
    "refuses": "M6 is refused: the program stops there",
    "ignores": "M6 is ignored: it cuts on with the tool that is in the collet",
}
PROGRAM_STOP = {
    "stops": "M0 waits for a person; the spindle goes on turning",
    "stops-spindle": "M0 waits for a person and stops the spindle: the program must start it again",
    "refuses": "M0 is refused: the program stops there",
    "ignores": "M0 is ignored: it runs on",
}
RAPIDS = {
    "straight": "a rapid over more than one axis is straight",
    "each-axis": "in a rapid each axis goes as fast as it can: the way is bent",
    "not-known": "whether a rapid over more than one axis is straight is not known",
}
STATE_WORDS = {"does": "does", "refuses": "refuses, and stops", "ignores": "takes, and does nothing"}


def card_list(paper: TextSheet) -> None:
    """Every card that ships."""
    paper.text_block("CONTROLLER CARDS", style="head")
    paper.table(("name", "controller"), [(name, controller(name).title) for name in names()], left=2)
    paper.blank()
    paper.text_block('`gclint controller NAME` shows a card; shop.toml uses it: `controller = "NAME"` under [machine].')


def card(shown: Controller, paper: TextSheet, checked: str = "") -> None:
    """What a card says, in plain words; sources stand below, each once. `checked`: a file that was found sound."""
    paper.ends("CONTROLLER CARD", "reads well" if checked else shown.name)
    if checked:
        paper.field("file", checked)
    paper.field("name", shown.name)
    paper.field("for", shown.title)
    if shown.about:
        paper.field("in short", shown.about)
    sources: list[tuple[str, str]] = []

    def mark(standing: str, source: str) -> str:
        if (standing, source) not in sources:
            sources.append((standing, source))
        return str(sources.index((standing, source)) + 1)

    def of(key: str) -> str:
        return mark(*shown.because.get(key, (shown.standing, shown.source)))

    paper.blank()
    paper.heading("WHAT IT DOES")
    paper.table(("what", "how", "source"), [(what, how, of(key)) for key, what, how in _rows(shown)], left=2)
    rows = [
        (STATE_WORDS[said.state], ", ".join(_words(name) for name in said.names), mark(said.standing, said.source))
        for said in shown.said
    ]
    rest = "does what gclint knows of" if shown.other_codes == "does" else STATE_WORDS[shown.other_codes]
    rows.append((rest, "all other codes", of("other_codes")))
    paper.blank()
    paper.heading("CODES, WORDS AND HABITS")
    for state, those, at in rows:
        paper.text_block(f"{state} (source {at}):")
        paper.text_block(those, 2)
    paper.blank()
    paper.heading("SOURCES")
    for number, (standing, source) in enumerate(sources, 1):
        paper.field(str(number), behind(standing, source))


def _rows(shown: Controller) -> list[tuple[str, str, str]]:
    arcs = f"the radii at start and end may differ by {figure(shown.arc_tolerance)} mm"
    if shown.arc_tolerance_inch is not None:
        arcs += f" ({shown.arc_tolerance_inch / 25.4:.4g} in in an inch program)"
    if shown.arc_tolerance_share:
        arcs += f" or {shown.arc_tolerance_share:.3g} of the radius"
    if shown.arc_tolerance_most > shown.arc_tolerance:
        arcs += f", never by more than {figure(shown.arc_tolerance_most)} mm"
    if not shown.arc_known:
        arcs = f"when it refuses one is not known; taken as: {arcs}"
    points = {
        "as-written": "X100 is 100 mm",
        "resolution": f"X100 is {figure(100 * shown.resolution)} mm, X100. is 100 mm",
    }
    return [
        ("tool_change", "tool change", TOOL_CHANGE[shown.tool_change]),
        ("program_stop", "program stop", PROGRAM_STOP[shown.program_stop]),
        ("dwell_unit", "dwell", f"P of G4 counts in {'seconds' if shown.dwell_unit == 's' else 'milliseconds'}"),
        ("feed_unit", "feed", f"F counts in {shown.feed_unit}"),
        ("arcs", "arcs", f"{arcs}; centres are {shown.arc_centres} unless the program says otherwise"),
        ("rapids", "rapids", RAPIDS[shown.rapids]),
        ("characters_per_second", "reading", _reading(shown)),
        ("resolution", "resolution", f"{figure(shown.resolution)} mm"),
        ("no_point", "no point", points[shown.no_point]),
        ("line_length", "line", f"{shown.line_length} characters at most" if shown.line_length else "of any length"),
        ("axes", "axes", " ".join(shown.axes) if shown.axes else "not known"),
        ("end_required", "end", "needs M2, M30 or a closing %" if shown.end_required else "needs no end word"),
        ("start_state", "at start", ", ".join(shown.start_state) or "nothing is taken as set"),
    ]


def _reading(shown: Controller) -> str:
    rate = shown.characters_per_second
    return "not known" if rate is None else f"{rate:g} characters a second at most"


def _words(name: str) -> str:
    if name in HABITS:
        return HABITS[name]
    return f"{name.replace('-', ' ')} ({', '.join(FAMILIES[name])})" if name in FAMILIES else name

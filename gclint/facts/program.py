"""Facts about faults of the text, tools used, axes, and the program as a whole."""

from __future__ import annotations

import re
from functools import partial
from typing import Any

import numpy as np

from gclint.cards.codes import HABITS, WORD
from gclint.cards.codes import KINDS as ABOUT
from gclint.columns import Column, Floats, distinct, one_of
from gclint.facts.context import ON, Context, once
from gclint.facts.fact import Build, Table, number, text, texts, truth
from gclint.faults import CODE, KINDS
from gclint.tables.motion import EVENT, HOME, INCH, INVERSE_TIME, MACHINE, PER_REV, RAPID, X_WORD, Y_WORD
from gclint.tables.program import BEHIND_END, FLOW, decode
from gclint.tables.setup import Tool

MOST_NAMED = 8  # tools that a question names


def _faults(name: str) -> Build:
    def build(context: Context) -> Column:
        return np.concatenate((getattr(context.program.faults, name), getattr(context.motion.faults, name)))

    return build


def _fault_text(context: Context) -> tuple[Column, tuple[str, ...]]:
    data = context.program.data

    away = context.motion.beside.fault_text if context.motion.beside else {}
    first = len(context.program.faults)  # of those made by interpreting

    def said(row: int, start: int, end: int) -> str:
        text = away.get(row - first)
        shown = " ".join((decode(data[start : min(end, start + 60)]) if text is None else text[:60]).split())
        return shown if shown.isprintable() else repr(shown)[1:-1]

    spans = zip(_faults("start")(context).tolist(), _faults("end")(context).tolist())
    return texts([said(row, start, end) for row, (start, end) in enumerate(spans)])


def _sort(context: Context) -> tuple[Column, tuple[str, ...]]:
    """The kind of each fault; of a text that cannot be read, what is wrong with it."""
    kinds = [KINDS[kind] for kind in _faults("kind")(context).tolist()]
    rows, said = _fault_text(context)
    return texts([_unread(said[n]) if kind == "number-unreadable" else kind for kind, n in zip(kinds, rows.tolist())])


def _unread(word: str) -> str:
    """Why a word cannot be read."""
    if re.search(r"\d\s*,|,\s*\d", word):
        return "decimal-comma"
    return "number-left-out" if re.fullmatch(r"[A-Za-z]\s*[-+.]*", word) else "number-unreadable"


def _about(context: Context) -> tuple[Column, tuple[str, ...]]:
    """Of faults that the controller's card made: the family or habit they are about; "" of others."""
    kinds, a = _faults("kind")(context), _faults("a")(context)
    own = one_of(kinds, (CODE["code-refused"], CODE["code-ignored"]))
    return np.where(own, np.nan_to_num(a), 0).astype(np.int32), ABOUT


def _named(context: Context) -> tuple[Column, tuple[str, ...]]:
    """The code ("G81"), letter ("A") or habit in words; of other faults the text itself."""
    about, said = _about(context)[0].tolist(), _fault_text(context)
    return texts([
        HABITS.get(ABOUT[n]) or (word[:1].upper() if ABOUT[n] == WORD else _code(word, ABOUT[n]))
        for n, word in zip(about, (said[1][code] for code in said[0].tolist()))
    ])


def _code(word: str, family: str) -> str:
    """g081 -> G81; where the line only calls what holds the code, the family in words."""
    plain = "".join(word.split()).upper()
    if plain[:1] in "GM" and plain[1:].replace(".", "").isdigit():
        return plain[:1] + (plain[1:].lstrip("0") or "0")
    return f"{family.replace('-', ' ')} in a subprogram" if family else word


@once
def _decimals(context: Context) -> Floats:
    """[faults] the most decimals of places and centre on the line of an arc that does not close; NaN of others."""
    line, kind = _faults("line")(context), _faults("kind")(context)
    most = np.full(len(kind), np.nan)
    for row in np.flatnonzero(kind == CODE["arc-does-not-close"]).tolist():
        text = re.sub(r"\([^)]*\)|;.*", "", context.program.line_text(int(line[row])))
        words = re.findall(r"[XYZIJKR]\s*[-+]?\s*\d*\.?(\d*)", text, re.IGNORECASE)
        most[row] = max(map(len, words), default=np.nan)
    return most


def _last_place(context: Context) -> Floats:
    """[faults] what one in the last of these decimals is, mm."""
    m = context.motion
    units = np.flatnonzero(m.event_kind == EVENT["units"])
    before = np.searchsorted(m.event_line[units], _faults("line")(context), side="right")
    scale = np.concatenate(([1.0], m.event_value[units]))[before]  # in the order of the text
    return np.asarray(scale * 0.1 ** _decimals(context))


FAULTS = Table(
    "faults",
    "what is wrong with the text or with the motion it asks for",
    {
        "line": number("", "line of the program", _faults("line")),
        "kind": text("what is wrong", lambda c: (_faults("kind")(c).astype(np.int32), KINDS), "", KINDS),
        "text": text("the text concerned", _fault_text),
        "sort": text("its kind; of a number that cannot be read also decimal-comma or number-left-out", _sort),
        "about": text("of code-refused and code-ignored: the family of codes or the habit", _about, "", ABOUT),
        "name": text("the code, letter or habit that the controller refuses or ignores", _named),
        "a": number("", "first number of the fault; its meaning depends on the kind", _faults("a")),
        "b": number("", "second number of the fault", _faults("b")),
        "start_radius": number("mm", "radius of an arc at its start, or its R", _faults("a")),
        "end_radius": number("mm", "radius of an arc at its end, or half its chord", _faults("b")),
        "decimals": number("", "of an arc: the most decimals of the places and centre on its line", _decimals),
        "last_place": number("mm", "what one in the last of these decimals is", _last_place),
        "tool_radius": number("mm", "radius the controller takes the tool to have", _faults("a")),
        "room": number("mm", "room there is for it: the arc's radius, or the length of the entry", _faults("b")),
    },
    lambda c: len(c.program.faults) + len(c.motion.faults),
)


# tools: one row per tool that moves at feed


@once
def _used(context: Context) -> list[int]:
    return [int(n) for n in distinct(context.motion.tool[_feeds(context)])]


def _first_use(context: Context) -> Column:
    feeds = context.motion.kind != RAPID
    return np.array([int(np.argmax(feeds & (context.motion.tool == n))) for n in _used(context)], dtype=np.int64)


def _calling_line(context: Context) -> Column:
    moves = _first_use(context)
    called = context.motion.tool_line[moves]
    return np.where(called > 0, called, context.motion.line[moves])


@once
def _comment_tools(context: Context) -> list[tuple[Tool | None, str]]:
    """For each tool used that is declared by hand, what the program's comments say of it: (tool, the shape they name).

    None and "" where they say nothing that can be relied on, and where they name no shape.
    """
    from gclint.setup.comments import tools_in

    declared = [context.setup.tools.get(n) for n in _used(context)]
    by_hand = [tool is not None and not tool.declared_in.startswith("comment") for tool in declared]
    said = tools_in(context.program, context.motion) if any(by_hand) and len(context.program.comment_line) else {}
    rows: list[tuple[Tool | None, str]] = []
    for n, own in zip(_used(context), by_hand):
        tool, because = said.get(n, (None, "")) if own else (None, "")
        rows.append((tool, tool.shape if tool is not None and "names no shape" not in because else ""))
    return rows


def _comment_line(context: Context) -> Column:
    lines = [int(tool.declared_in.rpartition(" ")[2]) if tool else 0 for tool, _ in _comment_tools(context)]
    return np.where(np.array(lines, dtype=np.int64) > 0, lines, _calling_line(context))


TOOLS = Table(
    "tools",
    "tools the program cuts with",
    {
        "line": number("", "line that calls the tool, else the line of its first cut", _calling_line),
        "declared": truth("whether the tool is declared, named in a comment or assumed",
                          lambda c: np.array([n in c.setup.tools for n in _used(c)], dtype=bool)),
        "comment_diameter": number("mm", "diameter that the program's comments give it; 0 if they give none",
                                   lambda c: np.array([t.diameter if t else 0.0 for t, _ in _comment_tools(c)])),
        "comment_shape": text("shape that the program's comments name; empty if they name none",
                              lambda c: texts([shape for _, shape in _comment_tools(c)])),
        "comment_line": number("", "line of that comment, else the line that calls the tool", _comment_line),
        "shape_differs": truth("whether the program's comments name another shape than is declared",
                               lambda c: np.array([bool(shape) and tool is not None and shape != tool.shape
                                                   for (_, shape), tool in zip(_comment_tools(c),
                                                   (c.tool(n) for n in _used(c)))], dtype=bool)),
        "others_declared": number("", "number of tools that are declared by hand", lambda c: len(_by_hand(c))),
        "declared_tools": text("the tools that are declared by hand, in words; empty if none is",
                               lambda c: _by_hand_words(c)),
    },
    lambda c: len(_used(c)),
    _used,
    _first_use,
)  # fmt: skip


def _by_hand(context: Context) -> list[Tool]:
    tools = context.setup.tools
    return [tools[n] for n in sorted(tools) if n >= 0 and not tools[n].declared_in.startswith("comment")]


def _by_hand_words(context: Context) -> str:
    """'1 (eighth down-cut), 3 (flat, 3 mm)'."""
    tools = _by_hand(context)
    named = [f"{tool.number} ({tool.name or f'{tool.shape}, {tool.diameter:g} mm'})" for tool in tools[:MOST_NAMED]]
    return ", ".join([*named, *([f"{len(tools) - MOST_NAMED} more"] if len(tools) > MOST_NAMED else [])])


# axes: X, Y, Z


def _ends(context: Context, pick: Any) -> Floats:
    m, placed = context.motion, context.placed
    if not placed.any():
        return np.full(3, np.nan)
    return np.array([pick(values if placed.all() else values[placed]) for values in (m.x1, m.y1, m.z1)])


def _travel(context: Context) -> Floats:
    axes = context.setup.machine.travel
    return np.array([np.nan if v is None else v for v in (axes.x, axes.y, axes.z)] if axes else [np.nan] * 3)


def _zero(context: Context) -> Floats:
    axes = context.setup.work_zero
    return np.array([np.nan if v is None else v for v in (axes.x, axes.y, axes.z)] if axes else [np.nan] * 3)


def _over_travel(context: Context) -> Floats:
    """How far the axis must leave its travel, mm: by size where work zero is unknown, else by place."""
    low, high, travel, zero = _ends(context, np.min), _ends(context, np.max), _travel(context), _zero(context)
    size = high - low - travel
    place = np.maximum(-(zero + low), zero + high - travel)
    return np.where(np.isnan(zero), size, np.maximum(place, size))


def _farthest_move(context: Context) -> Column:
    """The move that reaches the end of the axis that is farther from the middle of the travel."""
    m, rows = context.motion, np.flatnonzero(context.placed)
    if len(rows) == 0:
        return np.full(3, -1)
    low, high, travel, zero = _ends(context, np.min), _ends(context, np.max), _travel(context), _zero(context)
    picked = []
    for axis, values in enumerate((m.x1, m.y1, m.z1)):
        below = -(zero[axis] + low[axis]) > zero[axis] + high[axis] - travel[axis]  # False where zero is unknown
        picked.append(rows[np.argmin(values[rows]) if below else np.argmax(values[rows])])
    return np.array(picked)


AXES = Table(
    "axes",
    "the machine's axes, with what the program asks of each",
    {
        "line": number("", "line that goes farthest", lambda c: np.where(
            _farthest_move(c) >= 0, c.motion.line[np.maximum(_farthest_move(c), 0)] if len(c.motion) else 1, 1)),
        "axis": text("the axis", lambda c: (np.arange(3, dtype=np.int32), ("X", "Y", "Z")), "", ("X", "Y", "Z")),
        "size": number("mm", "from the lowest to the highest position the program asks for",
                       lambda c: _ends(c, np.max) - _ends(c, np.min), "a move whose position is known"),
        "low": number("mm", "lowest position in work coordinates", partial(_ends, pick=np.min)),
        "high": number("mm", "highest position in work coordinates", partial(_ends, pick=np.max)),
        "travel": number("mm", "travel of the axis", _travel, "`[machine] travel` in shop.toml"),
        "over": number("mm", "how far the axis must leave its travel", _over_travel, "`[machine] travel` in shop.toml"),
    },
    lambda c: 3,
    None,
    _farthest_move,
)  # fmt: skip


# program: one row

_STATE = {
    "distance-unstated": "G90 or G91 (absolute or incremental)",
    "feed-mode-unstated": "G94 or G93 (what F means)",
    "plane-unstated": "G17, G18 or G19 (the plane of arcs)",
    "offset-unstated": "G54 (the work offset)",
}
# A leftover feed mode or work offset is rare, or what the person at the machine has set; they are listed as taken.
_RISKY = ("distance-unstated", "plane-unstated")


def _state_faults(context: Context) -> Column:
    faults = context.motion.faults
    return np.flatnonzero(one_of(faults.kind, [CODE[kind] for kind in _STATE]))


def _missing_modes(context: Context) -> list[str]:
    faults = context.motion.faults
    return list(dict.fromkeys(_STATE[KINDS[int(faults.kind[row])]] for row in _state_faults(context)))


def _state_line(context: Context) -> Floats:
    rows = _state_faults(context)
    return np.array([context.motion.faults.line[rows].min() if len(rows) else 1.0], dtype=np.float64)


def _one(pick: Any) -> Build:
    """A fact of the whole program: one row; None and NaN are unknown."""

    def build(context: Context) -> Any:
        value = pick(context)
        return None if value is None else np.array([value])

    return build


def _feeds(context: Context) -> Column:
    return np.flatnonzero(context.motion.kind != RAPID)


def _lowest_feed(context: Context) -> float:
    lowest = float(np.fmin.reduce(context.lowest[_feeds(context)], initial=np.inf))
    return lowest if np.isfinite(lowest) else np.nan


def _lowest_line(context: Context) -> float:
    rows = _feeds(context)
    low = context.lowest[rows]
    return float(context.motion.line[rows[np.nanargmin(low)]]) if len(rows) and np.isfinite(low).any() else 1.0


def _highest_feed(context: Context) -> float:
    m = context.motion
    rows = _feeds(context)
    plain = rows[m.flags[rows] & (INVERSE_TIME | PER_REV) == 0]
    return float(np.fmax.reduce(m.feed[plain], initial=np.nan)) if len(plain) == len(rows) else np.nan


def _least_mill(context: Context) -> float:
    tools = [tool for tool in map(context.tool, _used(context)) if tool is None or tool.shape != "drill"]
    broad = ("flat", "bull-nose", "ball", "facing")
    if not tools or not all(tool is not None and tool.shape in broad for tool in tools):
        return np.nan
    return min(tool.diameter for tool in tools if tool is not None)


def _end_depth(context: Context) -> float | None:
    """How far below the blank's top the last move leaves the tip, mm; 0 where it ends beside the blank or at home."""
    m, box = context.motion, context.box
    if len(m) == 0 or m.flags[-1] & (HOME | MACHINE):
        return 0.0
    x, y, z = float(m.x1[-1]), float(m.y1[-1]), float(m.z1[-1])
    if box is None or box.top is None or np.isnan(z):
        return None
    radius = tool.diameter / 2 if (tool := context.tool(int(m.tool[-1]))) else 0.0
    for at, span in ((x, box.x), (y, box.y)):
        if span is not None and not np.isnan(at) and not span[0] - radius < at < span[1] + radius:
            return 0.0
    return box.top - z


def _drags(context: Context) -> bool:
    """Whether every tool is one that must not turn."""
    used = [context.tool(n) for n in _used(context)]
    return bool(used) and all(tool is not None and tool.shape == "drag" for tool in used)


def _left_running(context: Context) -> bool:
    """Whether the last word about the spindle starts it."""
    kinds = context.motion.event_kind
    about = kinds[one_of(kinds, (*ON, EVENT["spindle-off"]))]
    return bool(len(about)) and int(about[-1]) in ON


def _part(axis: int) -> Any:
    """Size of what is cut: from the lowest to the highest place of the moves at feed, mm."""

    def build(context: Context) -> float:
        m = context.motion
        at_feed = context.placed & (m.kind != RAPID)
        ends = [values[axis][at_feed] for values in ((m.x0, m.y0), (m.x1, m.y1))]
        if len(ends[0]) == 0:
            return np.nan
        return float(max(map(np.fmax.reduce, ends)) - min(map(np.fmin.reduce, ends)))

    return build


def _blank_size(axis: int) -> Any:
    return lambda context: size[axis] if (stock := context.setup.stock) is not None and (size := stock.size) else np.nan


def _units_said(context: Context) -> str:
    """Which units the program names: "mm", "inch", "both" or "none"."""
    m = context.motion
    said = set(m.event_value[m.event_kind == EVENT["units"]].tolist())
    if any("G21" in (code, code.replace("G71", "G21")) for code in context.setup.controller.start_state):
        said.add(1.0)
    return "both" if len(said) > 1 else {1.0: "mm", 25.4: "inch"}.get(next(iter(said), 0.0), "none")


@once
def _unit_switch(context: Context) -> tuple[float, str, str]:
    """(line of the word by which a cut is in another unit than the one before it, NaN if none; the unit of the first
    cuts; the unit in which the program ends)."""
    m = context.motion
    feeds = _feeds(context)
    inch = (m.flags[feeds] & INCH) != 0
    if inch.any() and not inch.all():  # a slow lift cuts nothing, in whatever unit
        lifts = (m.z1[feeds] > m.z0[feeds]) & (m.x1[feeds] == m.x0[feeds]) & (m.y1[feeds] == m.y0[feeds])
        feeds, inch = feeds[~lifts], inch[~lifts]
    if not len(feeds):
        return np.nan, "", ""
    words = np.flatnonzero(m.event_kind == EVENT["units"])
    last = bool(m.event_value[words[-1]] > 1) if len(words) else bool(inch[-1])
    other = np.flatnonzero(inch != inch[0])
    line = np.nan
    if len(other):
        governing = words[m.event_move[words] <= feeds[other[0]]]
        line = float(m.event_line[governing[-1]]) if len(governing) else float(m.line[feeds[other[0]]])
    return line, "inches" if inch[0] else "mm", "inches" if last else "mm"


def _pointless(context: Context) -> bool:
    """Whether no number of the whole program has a decimal point."""
    p = context.program
    if p.data.find(b".") < 0:
        return True
    for first in range(0, len(p.word_letter), 50_000):  # nearly always the first of these settles it
        letters = p.word_letter[first : first + 50_000]
        rows = first + np.flatnonzero(one_of(letters, np.frombuffer(b"XYZIJK", np.uint8)))
        if not len(rows):
            continue
        low, high = int(p.word_start[rows[0]]), int(p.word_end[rows[-1]])
        points = low + np.flatnonzero(np.frombuffer(p.data, np.uint8, high - low, low) == ord("."))
        if (np.searchsorted(points, p.word_start[rows]) < np.searchsorted(points, p.word_end[rows])).any():
            return False
    return True


def _half_written(context: Context) -> bool:
    """Whether the last line has no end, and breaks off within a word, a comment or a number's sign."""
    program = context.program
    if program.data[-1:] in (b"\n", b"\r") or not len(program.faults):
        return False
    kinds = [CODE[kind] for kind in ("number-unreadable", "comment-unclosed", "character-unknown")]
    last = program.faults.line == program.lines
    at_end = last & one_of(program.faults.kind, kinds) & (program.faults.end >= len(program.data.rstrip()))
    return bool(at_end.any())


@once
def _behind_end(context: Context) -> int:
    """Line at which the program ends while further blocks with moves follow, 0 if none do (subprograms may)."""
    p, m = context.program, context.motion
    ends = m.event_line[m.event_kind == EVENT["end"]]
    framed = p.block_line[(p.block_flags & BEHIND_END) != 0]
    if not m.ended or np.any(p.block_flags & FLOW):
        return 0
    last = int(ends[0]) if len(ends) else int(framed[0]) - 1 if len(framed) else p.lines
    behind = int(np.searchsorted(p.block_line, last, side="right"))
    letters = p.word_letter[int(p.block_word[behind]) :] if behind < len(p.block_line) else p.word_letter[:0]
    return last if one_of(letters, np.frombuffer(b"XYZ", np.uint8)).any() else 0


def _last_line(context: Context) -> int:
    return int(context.program.block_line[-1]) if len(context.program.block_line) else max(context.program.lines, 1)


@once
def _heights(context: Context) -> tuple[float, float, float, int, int]:
    """(highest Z of travel by rapid, lowest and highest Z of feed moves that travel, mm; rapids straight after a move
    at feed that go down, and that go up). Infinite where there is none."""
    m = context.motion
    known = context.placed & np.isfinite(m.z0)
    across = (m.x0 != m.x1) | (m.y0 != m.y1)  # from a place that is not known, if a word says so
    across &= (np.isfinite(m.x0) & np.isfinite(m.y0)) | ((m.flags & (X_WORD | Y_WORD)) != 0)
    sideways = known & (across | (m.sweep != 0))
    top, rapid = np.fmax(m.z0, m.z1), m.kind == RAPID
    travel, feeds = sideways & rapid, sideways & ~rapid
    behind = np.flatnonzero(rapid[1:] & ~rapid[:-1] & known[1:]) + 1 if len(m) else np.empty(0, dtype=np.int64)
    rises = m.z1[behind] - m.z0[behind]
    return (
        float(top[travel].max()) if travel.any() else np.inf,
        float(context.lowest.min(where=feeds, initial=np.inf)) if feeds.any() else -np.inf,
        float(top.max(where=feeds, initial=-np.inf)) if feeds.any() else -np.inf,
        int((rises < 0).sum()),
        int((rises > 0).sum()),
    )


def _whole_time(context: Context) -> float:
    """At least: moves whose time is not known, such as the first from wherever the tool stands, add nothing."""
    return float(np.nansum(context.timing.seconds) + np.nan_to_num(context.timing.dwell))


PROGRAM = Table(
    "program",
    "the program as a whole: one row",
    {
        "line": number("", "first line", lambda c: np.array([1.0])),
        "last_line": number("", "last line that holds a block", _one(_last_line)),
        "unstated": text("modes that the program needs and never states",
                         lambda c: texts([", ".join(_missing_modes(c))])),
        "risky_count": number("", "how many of those modes change where the tool goes (distance mode, plane)",
                              _one(lambda c: sum(_STATE[kind] in _missing_modes(c) for kind in _RISKY))),
        "unstated_line": number("", "line of the first move that needs one", _state_line),
        "feed_moves": number("", "number of moves at feed", _one(lambda c: len(_feeds(c)))),
        "first_feed_line": number("", "line of the first move at feed",
                                  _one(lambda c: float(c.motion.line[_feeds(c)[0]]) if len(_feeds(c)) else 1.0)),
        "lowest": number("mm", "lowest Z of the moves at feed", _one(_lowest_feed), "a Z in the program"),
        "lowest_line": number("", "line of the first move at feed that reaches that Z", _one(_lowest_line)),
        "highest_feed": number("mm/min", "highest F of the moves at feed; unknown under G93 and G95",
                               _one(_highest_feed), "an F in the program"),
        "least_mill": number("mm", "diameter of the smallest tool that it mills with, if none is a V tool or a knife",
                             _one(_least_mill), "the tool (`[[tool]]` in shop.toml, or --tool)"),
        "modelled": truth("whether the stock could be modelled", _one(lambda c: c.engagement.box is not None)),
        "left_out": truth("whether cuts had to be left out of the stock (tool not declared, place not known)",
                          _one(lambda c: bool(c.engagement.not_judged))),
        "removes": truth("whether anything is removed", _one(lambda c: bool(c.in_contact.any()))),
        "drag_only": truth("whether every tool is one that must not turn", _one(_drags)),
        "ended": truth("whether M2, M30 or a closing % was reached", _one(lambda c: bool(c.motion.ended))),
        "part_x": number("mm", "size of what is cut in X", _one(_part(0)), "a move at feed whose place is known"),
        "part_y": number("mm", "size of what is cut in Y", _one(_part(1)), "a move at feed whose place is known"),
        "blank_x": number("mm", "size of the blank in X as declared", _one(_blank_size(0)),
                          "the stock (`[stock] size` in job.toml, or --stock)"),
        "blank_y": number("mm", "size of the blank in Y as declared", _one(_blank_size(1)),
                          "the stock (`[stock] size` in job.toml, or --stock)"),
        "units_said": text("which units the program names", _units_said, "", ("none", "mm", "inch", "both")),
        "units_switched": truth("whether it cuts in one unit and later in the other",
                                _one(lambda c: bool(np.isfinite(_unit_switch(c)[0])))),
        "switch_line": number("", "line of the word that changes the unit between cuts",
                              _one(lambda c: _unit_switch(c)[0])),
        "units_first": text("the unit of its first cuts", lambda c: _unit_switch(c)[1], "", ("", "mm", "inches")),
        "units_left_over": truth("whether it ends in another unit than that of its first cuts",
                                 _one(lambda c: _unit_switch(c)[1] != _unit_switch(c)[2])),
        "units_last": text("the unit in which it ends", lambda c: _unit_switch(c)[2], "", ("", "mm", "inches")),
        "pointless": truth("whether no length in the program has a decimal point", _one(_pointless)),
        "left_running": truth("whether the spindle is started and never stopped", _one(_left_running)),
        "half_written": truth("whether the last line breaks off within a word or a comment", _one(_half_written)),
        "read_to_end": truth("whether the program could be followed to its end",
                             _one(lambda c: c.motion.stopped_at == 0)),
        "ends_early": truth("whether blocks that name places stand behind its end", _one(lambda c: _behind_end(c) > 0)),
        "end_line": number("", "line of the end behind which they stand", _one(_behind_end)),
        "end_depth": number("mm", "how far below the blank's top the last move leaves the tip, 0 beside the blank",
                            _one(_end_depth), "the stock (`[stock] size` in job.toml, or --stock)"),
        "time": number("s", "time of the whole program at least, dwells included; moves of unknown time left out",
                       _one(_whole_time)),
        "time_limited": truth("whether a longest time is declared", _one(lambda c: c.setup.time_limit is not None)),
        "time_limit": number("s", "the longest time that is declared",
                             _one(lambda c: np.nan if c.setup.time_limit is None else c.setup.time_limit),
                             "`time_limit` in job.toml"),
        "travel_z": number("mm", "highest Z of travel by rapid", _one(lambda c: _heights(c)[0])),
        "lowest_across": number("mm", "lowest Z of moves at feed that travel in X or Y",
                                _one(lambda c: _heights(c)[1])),
        "highest_across": number("mm", "highest Z of moves at feed that travel in X or Y",
                                 _one(lambda c: _heights(c)[2])),
        "retracts_down": number("", "rapids straight after a move at feed that go down in Z",
                                _one(lambda c: _heights(c)[3])),
        "retracts_up": number("", "rapids straight after a move at feed that go up in Z",
                              _one(lambda c: _heights(c)[4])),
        "last_z": number("mm", "Z of the tip at the end",
                         _one(lambda c: float(c.motion.z1[-1]) if len(c.motion) else np.nan)),
    },
    lambda c: 1,
)  # fmt: skip

TABLES = (FAULTS, TOOLS, AXES, PROGRAM)

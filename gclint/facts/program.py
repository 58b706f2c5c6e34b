"""Facts about faults of the text, tools used, axes, and the program as a whole."""

from __future__ import annotations

import re
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


def of_faults(name: str) -> Build:
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

    spans = zip(of_faults("start")(context).tolist(), of_faults("end")(context).tolist())
    return texts([said(row, start, end) for row, (start, end) in enumerate(spans)])


def _sort(context: Context) -> tuple[Column, tuple[str, ...]]:
    """The kind of each fault; of a text that cannot be read, what is wrong with it."""
    kinds = [KINDS[kind] for kind in of_faults("kind")(context).tolist()]
    rows, said = _fault_text(context)
    return texts([_unread(said[n]) if kind == "number-unreadable" else kind for kind, n in zip(kinds, rows.tolist())])


def _unread(word: str) -> str:
    """Why a word cannot be read."""
    if re.search(r"\d\s*,|,\s*\d", word):
        return "decimal-comma"
    return "number-left-out" if re.fullmatch(r"[A-Za-z]\s*[-+.]*", word) else "number-unreadable"


def _about(context: Context) -> tuple[Column, tuple[str, ...]]:
    """Of faults that the controller's card made: the family or habit they are about; "" of others."""
    kinds, a = of_faults("kind")(context), of_faults("a")(context)
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
def decimals_on_line(context: Context) -> Floats:
    """[faults] the most decimals of places and centre on the line of an arc that does not close; NaN of others."""
    line, kind = of_faults("line")(context), of_faults("kind")(context)
    most = np.full(len(kind), np.nan)
    for row in np.flatnonzero(kind == CODE["arc-does-not-close"]).tolist():
        text = re.sub(r"\([^)]*\)|;.*", "", context.program.line_text(int(line[row])))
        words = re.findall(r"[XYZIJKR]\s*[-+]?\s*\d*\.?(\d*)", text, re.IGNORECASE)
        most[row] = max(map(len, words), default=np.nan)
    return most


FAULTS = Table(
    "faults",
    "what is wrong with the text or with the motion it asks for",
    {
        "line": number("", "line of the program", of_faults("line")),
        "kind": text("what is wrong", lambda c: (of_faults("kind")(c).astype(np.int32), KINDS), "", KINDS),
        "text": text("the text concerned", _fault_text),
        "sort": text("its kind; of a number that cannot be read also decimal-comma or number-left-out", _sort),
        "about": text("of code-refused and code-ignored: the family of codes or the habit", _about, "", ABOUT),
        "name": text("the code, letter or habit that the controller refuses or ignores", _named),
        "a": number("", "first number of the fault; its meaning depends on the kind", of_faults("a")),
        "b": number("", "second number of the fault", of_faults("b")),
        "start_radius": number("mm", "radius of an arc at its start, or its R", of_faults("a")),
        "end_radius": number("mm", "radius of an arc at its end, or half its chord", of_faults("b")),
        "decimals": number("", "of an arc: the most decimals of the places and centre on its line", decimals_on_line),
        "tool_radius": number("mm", "radius the controller takes the tool to have", of_faults("a")),
        "room": number("mm", "room there is for it: the arc's radius, or the length of the entry", of_faults("b")),
    },
    lambda c: len(c.program.faults) + len(c.motion.faults),
)


# tools: one row per tool that moves at feed


@once
def tools_used(context: Context) -> list[int]:
    return [int(n) for n in distinct(context.motion.tool[_feeds(context)])]


def _first_use(context: Context) -> Column:
    feeds = context.motion.kind != RAPID
    return np.array([int(np.argmax(feeds & (context.motion.tool == n))) for n in tools_used(context)], dtype=np.int64)


def calling_line(context: Context) -> Column:
    moves = _first_use(context)
    called = context.motion.tool_line[moves]
    return np.where(called > 0, called, context.motion.line[moves])


TOOLS = Table(
    "tools",
    "tools the program cuts with",
    {
        "line": number("", "line that calls the tool, else the line of its first cut", calling_line),
        "declared": truth("whether the tool is declared, named in a comment or assumed",
                          lambda c: np.array([n in c.setup.tools for n in tools_used(c)], dtype=bool)),
    },
    lambda c: len(tools_used(c)),
    tools_used,
    _first_use,
)  # fmt: skip


# axes: X, Y, Z


# program: one row

_STATE = {
    "distance-unstated": "G90 or G91 (absolute or incremental)",
    "feed-mode-unstated": "G94 or G93 (what F means)",
    "plane-unstated": "G17, G18 or G19 (the plane of arcs)",
    "offset-unstated": "G54 (the work offset)",
}
# A leftover feed mode or work offset is rare, or what the person at the machine has set; they are listed as taken.
_RISKY = ("distance-unstated", "plane-unstated")


def state_faults(context: Context) -> Column:
    faults = context.motion.faults
    return np.flatnonzero(one_of(faults.kind, [CODE[kind] for kind in _STATE]))


def missing_modes(context: Context) -> list[str]:
    faults = context.motion.faults
    return list(dict.fromkeys(_STATE[KINDS[int(faults.kind[row])]] for row in state_faults(context)))


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
    tools = [tool for tool in map(context.tool, tools_used(context)) if tool is None or tool.shape != "drill"]
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
    used = [context.tool(n) for n in tools_used(context)]
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


@once
def unit_switch(context: Context) -> tuple[float, str, str]:
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
        "risky_count": number("", "how many of those modes change where the tool goes (distance mode, plane)",
                              _one(lambda c: sum(_STATE[kind] in missing_modes(c) for kind in _RISKY))),
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
        "units_switched": truth("whether it cuts in one unit and later in the other",
                                _one(lambda c: bool(np.isfinite(unit_switch(c)[0])))),
        "switch_line": number("", "line of the word that changes the unit between cuts",
                              _one(lambda c: unit_switch(c)[0])),
        "units_left_over": truth("whether it ends in another unit than that of its first cuts",
                                 _one(lambda c: unit_switch(c)[1] != unit_switch(c)[2])),
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

TABLES = (FAULTS, TOOLS, PROGRAM)

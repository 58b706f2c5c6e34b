"""Measured windows written into a shop file; all else in it stays as it stands, remarks included."""

from __future__ import annotations

from typing import Any

from msgspec.structs import replace

from gclint.digest.words import figure
from gclint.problem import Problem
from gclint.setup.declared import Shop, WindowTable
from gclint.toml.file import LARGEST_FILE, decode
from gclint.trial.expected import expected
from gclint.trial.learn import Lesson, Limit, Range, ToolWindow


def writable(lesson: Lesson) -> tuple[list[ToolWindow], list[str]]:
    """(windows to write, why others are not)."""
    good, said = [], []
    for number in lesson.trial.tools:
        window = lesson.windows.get(number)
        if window is None:
            said.append(f"tool {number}: too little was graded")
        elif window.fz.empty > 1 - expected().least.sure:
            said.append(f"tool {number}: no feed was good for sure")
        elif not window.use:
            why = {"all-spoilt": "every cut was spoilt", "near-spoilt": "no pair has good cuts near it"}
            said.append(f"tool {number}: {why.get(window.why_not, 'no pair is good for sure')}")
        elif not (window.fz.low.found or window.fz.high.found):
            said.append(f"tool {number}: no limit of the chip is known well; see the next cuts")
        elif _ends(window.fz)[0] >= _ends(window.fz)[1]:
            said.append(f"tool {number}: the limits of the chip are not known apart")
        else:
            good.append(window)
    return good, said


def shop_text(before: str, path: str, lesson: Lesson, windows: list[ToolWindow]) -> str:
    """The shop file with these windows as [windows."material".tool]: its `slot`, `edge_speed` and `measured` are
    written anew, what a person declared for other operations stays. Raises Problem."""
    import tomlkit
    from tomlkit.exceptions import TOMLKitError

    shop = decode(before, Shop, path)
    numbers = [tool.number for tool in shop.tool]
    for window in windows:
        if window.tool not in numbers:
            raise Problem(f"this shop file has no tool {window.tool}, of which the plan speaks", path)
        _same_tool(shop, lesson, window.tool, path)
    try:
        document = tomlkit.parse(before)
        all_ = document.setdefault("windows", tomlkit.table(is_super_table=True))
        of_material = all_.setdefault(lesson.trial.material, tomlkit.table(is_super_table=True))
        for window in windows:
            own = of_material.setdefault(str(window.tool), tomlkit.table())
            for name in ("slot", "edge_speed", "measured"):
                own.pop(name, None)
            for name, value in window_keys(lesson, window).items():
                own[name] = value
        made = tomlkit.dumps(document)
    except (TOMLKitError, ValueError, TypeError, AttributeError) as problem:
        raise Problem(f"the windows cannot be written into this file: {problem}", path) from None
    if len(made.encode()) > LARGEST_FILE:
        raise Problem(f"the shop file would be larger than {LARGEST_FILE // 1_000_000} MB", path)
    _prove(shop, decode(made, Shop, path), lesson, windows, path)
    return made


def _prove(before: Shop, after: Shop, lesson: Lesson, windows: list[ToolWindow], path: str) -> None:
    """What was read of the file before must be read of it still. Raises Problem."""
    own, numbers = lesson.trial.material, {str(window.tool) for window in windows}

    def others(shop: Shop) -> dict[tuple[str, str], WindowTable]:
        both = ((name, number, table) for name, by_tool in shop.windows.items() for number, table in by_tool.items())
        new = {"slot": None, "edge_speed": None, "measured": None}
        made = {(name, number): replace(table, **new) if name == own and number in numbers else table
                for name, number, table in both}  # fmt: skip
        return {key: table for key, table in made.items() if table != WindowTable()}

    same = replace(after, windows={}) == replace(before, windows={}) and others(after) == others(before)
    if not same or any(after.windows[own][number].slot is None for number in numbers):
        raise Problem("the windows cannot be written into this file without changing something else in it", path)


def _same_tool(shop: Shop, lesson: Lesson, number: int, path: str) -> None:
    theirs, ours = next(tool for tool in shop.tool if tool.number == number), lesson.trial.tools[number]
    for key in ("shape", "diameter", "flutes", "helix"):
        if getattr(theirs, key) != getattr(ours, key):
            says = f"tool {number} has another {key} here than in the plan: the window was measured with another tool"
            raise Problem(says, path)


def window_keys(lesson: Lesson, window: ToolWindow) -> dict[str, Any]:
    """The keys of one window as TOML has them."""
    import tomlkit

    slot = tomlkit.table()
    slot["fz"] = [_mm(value) for value in _ends(window.fz)]
    keys: dict[str, Any] = {"slot": slot}
    if window.floor:
        rows = tomlkit.array().multiline(True)
        for edge_speed, low in window.floor:
            row = tomlkit.inline_table()
            row.update({"edge_speed": _m_min(edge_speed), "low": _mm(low)})
            rows.append(row)
        slot["floor"] = rows
    open_ = _open("fz", window.fz)
    measured = tomlkit.table()
    assert lesson.date is not None
    measured["on"] = lesson.date
    measured["cuts"] = window.cuts
    measured["interval"] = expected().interval
    measured["fz_low"], measured["fz_high"] = (_interval(end, _mm) for end in (window.fz.low, window.fz.high))
    edge = window.edge
    if edge is not None and _ends(edge)[0] < _ends(edge)[1]:
        keys = {"edge_speed": [_m_min(value) for value in _ends(edge)], **keys}
        measured["edge_low"], measured["edge_high"] = (_interval(end, _m_min) for end in (edge.low, edge.high))
        open_ += _open("edge", edge)
    measured["open"] = open_
    measured["at_edge_speed"] = _m_min(window.pair_edge)
    measured["depth"] = _mm(window.depth)
    measured["entry"] = window.entry
    measured["plans"] = list(lesson.trial.plans)
    return {**keys, "measured": measured}


def _ends(limits: Range) -> tuple[float, float]:
    """An end of which there is no sign lies where the cuts ended; of which there is, but not a sure one, at the
    cautious end of its interval."""
    low, high = limits.low, limits.high
    return (
        low.value if low.found else low.high if low.fault else limits.ends[0],
        high.value if high.found else high.low if high.fault else limits.ends[1],
    )


def _open(name: str, limits: Range) -> list[str]:
    return [f"{name}_{side}" for side, end in (("low", limits.low), ("high", limits.high)) if not end.fault]


def _interval(limit: Limit, text: Any) -> list[str]:
    return [text(limit.low), text(limit.high)]


def _mm(value: float) -> str:
    return f"{figure(value)} mm"


def _m_min(value: float) -> str:
    return f"{figure(value)} m/min"

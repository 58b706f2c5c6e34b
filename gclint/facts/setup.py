"""Facts that come from the declarations: the same in every row, or taken from the row's tool."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import PurePath
from typing import Any

import numpy as np

from gclint.columns import Column, numbered
from gclint.cutting.mechanics import STRAIGHT_BEAMS, beam_of, law_of, least_chip, tool_material
from gclint.facts.context import Context
from gclint.facts.fact import Build, Fact, number, text, texts, truth
from gclint.knowledge.numbers import model_number
from gclint.tables.setup import GRADES, HELICES, SHAPES, Axes, Tool

_MATERIAL = "the material (`material` in job.toml, or --material)"
TOOL = "the tool (`[[tool]]` in shop.toml, or --tool)"
STOCK = "the stock (`[stock] size` in job.toml, or --stock)"
STOCK_PLACE = "the stock's place (`[stock] corner` in job.toml, or `at X Y` in --stock)"
_SPINDLE = "the spindle (`[spindle]` in shop.toml)"


def _axis(part: str, axis: str) -> Build:
    def build(context: Context) -> float | None:
        axes: Axes | None = context.setup.work_zero if part == "work_zero" else getattr(context.setup.machine, part)
        return getattr(axes, axis) if axes else None

    return build


def _card(name: str) -> Build:
    """A fact of the material's card; unknown where no material is declared."""
    return lambda context: getattr(context.setup.material, name, None)


def _kind(*kinds: str) -> Build:
    return lambda context: None if (kind := _card("kind")(context)) is None else kind in kinds


def _mark(context: Context) -> str:
    return context.setup.dial or ""


def _z_zero(context: Context) -> str | None:
    zero = context.setup.z_zero
    return zero if zero is None or isinstance(zero, str) else "above-table"


def _slowest(context: Context) -> float | None:
    spindle = context.setup.spindle
    return min((mark.true for mark in spindle.dial), default=spindle.low)


def _fastest(context: Context) -> float | None:
    spindle = context.setup.spindle
    return max((mark.true for mark in spindle.dial), default=spindle.high)


def _program_name(context: Context) -> str:
    return PurePath(context.program.name.replace("\\", "/")).name


def _thickness(context: Context) -> float | None:
    stock = context.setup.stock
    if stock is None or not stock.declared or stock.top is None or stock.bottom is None:
        return None
    return stock.top - stock.bottom


def _blank(axis: int) -> Build:
    return lambda context: size[axis] if (stock := context.setup.stock) and (size := stock.size) else None


SETUP: dict[str, Fact] = {
    **{
        f"machine.{part}.{axis}": number(unit, f"{meaning} of the {axis.upper()} axis", _axis(part, axis),
                                         f"`[machine] {part}` in shop.toml")
        for part, unit, meaning in (
            ("travel", "mm", "travel"), ("rapid", "mm/min", "rapid rate"), ("feed_limit", "mm/min", "largest feed"),
            ("acceleration", "mm/s^2", "acceleration"),
        )
        for axis in "xyz"
    },
    "program.name": text("name of the program's file", _program_name),
    "machine.name": text("name of the machine", lambda c: c.setup.machine.name or None,
                         "`[machine] name` in shop.toml"),
    "machine.stiffness": number("N/mm", "stiffness of the machine at the tool", lambda c: c.setup.machine.stiffness,
                                "`[machine] stiffness` in shop.toml"),
    "machine.homes": truth("whether the machine finds its own home position", lambda c: c.setup.machine.homes,
                           "`[machine] homes` in shop.toml"),
    "spindle.kind": text("how the speed is set", lambda c: c.setup.spindle.kind, _SPINDLE, ("commanded", "dial")),
    "spindle.started": text("who starts the spindle", lambda c: c.setup.spindle.started or "not-declared",
                            "`[spindle] started` in shop.toml", ("by-hand", "program", "not-declared")),
    "spindle.spin_up": number("s", "time the spindle needs to reach its speed", lambda c: c.setup.spindle.spin_up,
                              "`[spindle] spin_up` in shop.toml"),
    "spindle.slowest": number("rev/min", "lowest true speed of the spindle", _slowest,
                              "`[spindle] dial` or `range` in shop.toml"),
    "spindle.low": number("rev/min", "lowest speed that can be commanded",
                          lambda c: c.setup.spindle.low, "`[spindle] range` in shop.toml"),
    "spindle.high": number("rev/min", "highest speed that can be commanded",
                           lambda c: c.setup.spindle.high, "`[spindle] range` in shop.toml"),
    "spindle.fastest": number("rev/min", "highest true speed of the spindle", _fastest,
                              "`[spindle] dial` or `range` in shop.toml"),
    "spindle.power": number("W", "power of the spindle", lambda c: c.setup.spindle.power,
                            "`[spindle] power` in shop.toml"),
    "spindle.mark": text("the dial mark chosen in the job; empty if none is", _mark),
    "controller.name": text("the controller card", lambda c: c.setup.controller.name),
    "controller.tool_change": text("what the controller does with M6", lambda c: c.setup.controller.tool_change, "",
                                   ("does", "stops", "refuses", "ignores")),
    "controller.program_stop": text("what the controller does with M0", lambda c: c.setup.controller.program_stop, "",
                                    ("stops", "stops-spindle", "refuses", "ignores")),
    "controller.title": text("the controller card in words", lambda c: c.setup.controller.title),
    "controller.dwell_unit": text("what P of a dwell counts", lambda c: c.setup.controller.dwell_unit, "", ("s", "ms")),
    "controller.no_point": text("what a number without a decimal point counts",
                                lambda c: c.setup.controller.no_point, "", ("as-written", "resolution")),
    "controller.over_feed": text("what the controller does with a feed over an axis' limit",
                                 lambda c: c.setup.controller.over_feed, "", ("clamps", "loses-steps", "not-known")),
    "controller.line_length": number("", "longest line in characters, 0 if there is no limit",
                                     lambda c: c.setup.controller.line_length),
    "controller.nested_brackets": text("what the controller does with brackets inside a comment",
                                       lambda c: c.setup.controller.states.get("nested-brackets", "refuses"), "",
                                       ("does", "refuses", "ignores")),
    "controller.checksums": text("what the controller does with checksums",
                                 lambda c: c.setup.controller.states.get("checksums", "not-known"), "",
                                 ("does", "refuses", "ignores", "not-known")),
    "controller.compensation_rules": text("how the controller treats corners and codes under G41 and G42",
                                          lambda c: c.setup.controller.compensation_rules, "",
                                          ("reads-ahead", "report")),
    "controller.end_required": truth("whether a program must say that it ends",
                                     lambda c: c.setup.controller.end_required),
    "stock.declared": truth("whether the blank's size is declared",
                            lambda c: bool(c.setup.stock and c.setup.stock.declared)),
    **{
        f"stock.size_{axis}": number("mm", f"size of the blank in {axis.upper()} as declared", _blank(place), STOCK)
        for place, axis in enumerate("xy")
    },
    "stock.thickness": number("mm", "thickness of the blank, as measured or declared", _thickness, STOCK),
    "stock.placed": truth("whether the blank's corner is declared",
                          lambda c: bool(c.setup.stock and c.setup.stock.placed)),
    "stock.top": number("mm", "Z of the blank's top in work coordinates", lambda c: c.box.top if c.box else None,
                        STOCK),
    "stock.bottom": number("mm", "Z of the blank's underside in work coordinates",
                           lambda c: c.setup.stock.bottom if c.setup.stock else None, STOCK),
    "z_zero": text("where Z zero lies", _z_zero, "`z_zero` in job.toml", ("stock-top", "table", "above-table")),
    "hold.by": text("how the part is held", lambda c: c.setup.hold.by, "`[hold] by` in job.toml",
                    ("vacuum", "tape", "screws", "clamps", "vise", "tabs", "skin")),
    "hold.spoilboard": number("mm", "how deep the program may cut into the table's board",
                              lambda c: c.setup.hold.spoilboard, "`[hold] spoilboard` in job.toml"),
    "keep_outs": number("", "number of declared keep-out boxes", lambda c: len(c.setup.keep_out)),
    "cell": number("mm", "cell of the stock model: nothing smaller is told apart", lambda c: c.engagement.cell),
    "material.declared": truth("whether a material is declared", lambda c: c.setup.material is not None),
    "material.wood": truth("whether the material is wood or a wood board", _kind("wood", "board"), _MATERIAL),
    "material.soft": truth("whether the material is foam or wax", _kind("foam", "wax"), _MATERIAL),
    "material.metal": truth("whether the material is a metal", _kind("metal"), _MATERIAL),
    "material.brittle": truth("whether the material chips out", _card("brittle"), _MATERIAL),
    "material.frays": truth("whether the top edge chips or tears under a tool that lifts its chips",
                            _card("up_cut_frays_top"), _MATERIAL),
    "material.melts": truth("whether the material melts before it burns", _card("melts"), _MATERIAL),
    "material.burns": truth("whether the material scorches or burns", _card("burns"), _MATERIAL),
    "material.tape_holds": truth("whether tape holds the material, by its card", _card("tape_holds"), _MATERIAL),
    "material.climb_walls": truth("whether the card asks for climb cuts along the walls that stay",
                                  _card("climb_walls"), _MATERIAL),
    "material.thin_by": number("", "share by which a chip must be under its limit to be worth a word",
                               lambda c: thin.value if (thin := _card("thin_by")(c)) else None, _MATERIAL),
    "material.thin_judged": truth("whether a thin chip means anything in this material", _card("thin_judged"),
                                  _MATERIAL),
    "material.thin_grade": text("how much a thin chip matters in this material", _card("thin_grade"), _MATERIAL,
                                GRADES),
    "material.seen_thin": text("what is seen where the chip is too thin", _card("thin_words"), _MATERIAL),
    "material.seen_thick": text("what is seen where the chip is too thick", _card("thick_words"), _MATERIAL),
    "material.seen_fast": text("what is seen where the edge is too fast", _card("fast_words"), _MATERIAL),
    "material.title": text("the material in words", _card("title"), _MATERIAL),
    "material.name": text("the material's card", _card("name"), _MATERIAL),
}  # fmt: skip


def _gather(tool_of: Build, value: Callable[[Context, int], float | None]) -> Build:
    """A number by the row's tool."""

    def build(context: Context) -> Any:
        def number(tool: int) -> float:
            return np.nan if (v := value(context, tool)) is None else float(v)

        return _by_tool(context, tool_of, number, np.float64)

    return build


def _numbered(context: Context, tool_of: Build) -> tuple[Column, Column | None]:
    """(the tools of a table, for each row the place of its own among them; None where one tool has all rows)."""
    if tool_of not in context.kept:
        rows = np.asarray(tool_of(context))
        numbers, place = numbered(rows)
        context.kept[tool_of] = numbers, (None if len(numbers) == 1 else place)
    made: tuple[Column, Column | None] = context.kept[tool_of]
    return made


def _by_tool(context: Context, tool_of: Build, value: Callable[[int], Any], kind: Any) -> Column:
    """A value per row; one for all where one tool has all rows."""
    numbers, place = _numbered(context, tool_of)
    each = np.array([value(int(n)) for n in numbers], dtype=kind)
    return each[0] if place is None else each[place]


def _gather_text(tool_of: Build, value: Callable[[Context, int], str | None]) -> Build:
    def build(context: Context) -> Any:
        numbers, place = _numbered(context, tool_of)
        codes, words = texts([value(context, int(n)) for n in numbers])
        return (codes[0] if place is None else codes[place]), words

    return build


def _gather_truth(tool_of: Build, value: Callable[[Context, int], bool | None]) -> Build:
    def build(context: Context) -> Any:
        return _by_tool(context, tool_of, lambda n: {None: 1, False: 0, True: 2}[value(context, n)], np.int8)

    return build


def _of_tool(name: str) -> Callable[[Context, int], Any]:
    return lambda context, n: getattr(context.tool(n), name, None)


def _cone_height(context: Context, n: int) -> float | None:
    """mm from the tip to where a V tool has its full diameter; None of other shapes and where its angle is unknown."""
    tool = context.tool(n)
    if tool is None or tool.shape != "v" or not tool.angle or not 0 < tool.angle < 180:
        return None
    return float((tool.diameter - (tool.tip_diameter or 0.0)) / 2 / np.tan(np.radians(tool.angle / 2)))


def _limit(name: str, side: str = "high") -> Callable[[Context, int], float | None]:
    def read(context: Context, n: int) -> float | None:
        window = getattr(context.windows(n), name, None)
        return getattr(window, side) if window is not None else None

    return read


def tool_facts(tool_of: Build) -> dict[str, Fact]:
    """Facts of the row's tool and of its windows in this material."""
    tool = TOOL
    numbers = (
        ("diameter", "mm", "cutting diameter", tool),
        ("flutes", "", "number of flutes", "`flutes` of the tool (or `2fl` in --tool)"),
        ("flute_length", "mm", "length of the flutes", "`flute_length` of the tool in shop.toml"),
        ("stickout", "mm", "length out of the collet", "`stickout` of the tool in shop.toml"),
        ("shank", "mm", "diameter of the shank", "`shank` of the tool in shop.toml"),
        ("corner_radius", "mm", "corner radius", "`corner_radius` of the tool in shop.toml"),
        ("up_cut_length", "mm", "length of the up-cut edges at the tip", "`up_cut_length` of the tool in shop.toml"),
        ("runout", "mm", "total indicator reading at the tip", "`runout` of the tool in shop.toml"),
        ("top_speed", "rev/min", "highest speed", "`top_speed` of the tool in shop.toml"),
        ("angle", "deg", "full angle of a V, taper or point", "`angle` of the tool in shop.toml"),
    )
    made = {
        f"tool.{name}": number(unit, f"{meaning} of the tool", _gather(tool_of, _of_tool(name)), needs)
        for name, unit, meaning, needs in numbers
    }
    made["tool.cone_height"] = number("mm", "height of a V tool from its tip to its full diameter",
                                      _gather(tool_of, _cone_height), "`angle` of the tool in shop.toml")  # fmt: skip
    made["tool.stress_allowed"] = number("N/mm^2", "bending stress at which the tool is near to breaking",
                                         _gather(tool_of, _stress_allowed),
                                         "`made_of` of the tool in shop.toml")  # fmt: skip
    edge = "`edge_radius` of the tool in shop.toml, or its `made_of`"
    made["tool.edge_radius"] = number("mm", "radius of the cutting edge, declared or of a new edge of its material",
                                      _gather(tool_of, lambda c, n: _edge_radius(c.tool(n))), edge)  # fmt: skip
    made["tool.least_chip"] = number("mm", "thickness below which a chip may not come off, in some materials",
                                     _gather(tool_of, _least_chip), edge)  # fmt: skip
    made["tool.thin_length"] = number("mm", "length of the tool that is as thin as its cutting diameter",
                                      _gather(tool_of, lambda c, n: _thin(c.tool(n))),
                                      "`stickout`, `shank` and `flute_length` of the tool in shop.toml")  # fmt: skip
    made["tool.bending_known"] = truth("whether material and tool tell enough to reckon how the tool bends",
                                       _gather_truth(tool_of, _bending_known))  # fmt: skip
    made["tool.number"] = number("", "the program's number of the tool; -1 if it names none", lambda c: tool_of(c))
    made["tool.shape"] = text("shape of the tool", _gather_text(tool_of, _of_tool("shape")), tool, SHAPES)
    made["tool.helix"] = text("helix of the tool", _gather_text(tool_of, _of_tool("helix")),
                              "`helix` of the tool in shop.toml", HELICES)  # fmt: skip
    made["tool.called"] = text("the tool in words", _gather_text(tool_of, _called))
    made["tool.centre_cutting"] = truth("whether the tool cuts at its centre",
                                        _gather_truth(tool_of, _of_tool("centre_cutting")),
                                        "`centre_cutting` of the tool in shop.toml")  # fmt: skip
    both = f"{_MATERIAL} and {tool}"
    for name, unit, meaning, read in (
        ("ramp_limit", "deg", "steepest ramp the card allows", _limit("ramp_limit")),
        ("ramp_advised", "deg", "ramp the card advises", _limit("ramp_advised")),
        ("plunge_depth", "mm", "deepest straight plunge the card allows", _limit("plunge_depth")),
        ("plunge_share", "", "plunge feed as a share of the cutting feed", _limit("plunge_feed_share")),
        ("depth_slot", "mm", "depth per pass at full width", _limit("depth_slot")),
        ("depth_side", "mm", "depth per pass at a quarter of the width", _limit("depth_side")),
    ):
        made[f"window.{name}"] = number(unit, f"{meaning} for this tool", _gather(tool_of, read), both)
    made["window.plunge"] = text("what the card says about straight plunges", _gather_text(tool_of, _plunge), both,
                                 ("no", "yes", "peck", "drill"))  # fmt: skip
    made["cutting_feed"] = number("mm/min", "feed that at least a fifth of this tool's own level cuts run at",
                                  _gather(tool_of, lambda c, n: c.cutting_feed.get(n)),
                                  "a level cut of this tool")  # fmt: skip
    speed = f"{both}, with its flutes and the spindle's speed"
    for name, side, most in (
        ("feed", "high", "largest feed the chip window allows this tool at its true speed"),
        ("least_feed", "low", "smallest feed the chip window allows this tool at its true speed, with one flute where "
                              "they are not declared"),
    ):  # fmt: skip
        made[f"window.{name}"] = number("mm/min", most,
                                        _gather(tool_of, _window_feed(side)), speed)  # fmt: skip
    return made


def _stress_allowed(context: Context, n: int) -> float | None:
    tool = context.tool(n)
    made = tool_material(tool.made_of) if tool else None
    return made.stress if made else None


def _edge_radius(tool: Tool | None) -> float | None:
    made = tool_material(tool.made_of) if tool else None
    if tool is None or tool.edge_radius is not None:
        return tool.edge_radius if tool else None
    return made.edge_radius if made else None


def _least_chip(context: Context, n: int) -> float | None:
    radius = _edge_radius(context.tool(n))
    return None if radius is None else least_chip(radius)[1]


def _thin(tool: Tool | None) -> float | None:
    """mm; the whole free length of a tool without a thicker shank, else down from where the shank begins."""
    if tool is None or tool.shape not in STRAIGHT_BEAMS:
        return None
    if tool.shank is None:
        return None
    reach = tool.stickout if tool.shank <= tool.diameter + model_number("same_size") else tool.neck or tool.flute_length
    return min(reach, tool.stickout) if reach is not None and tool.stickout is not None else reach


def _bending_known(context: Context, n: int) -> bool:
    tool, material = context.tool(n), context.setup.material
    law = law_of(material.force) if material else None
    return law is not None and tool is not None and tool.flutes is not None and beam_of(tool) is not None


def _called(context: Context, n: int) -> str:
    tool = context.tool(n)
    return tool.called if tool else (f"tool {n}" if n >= 0 else "the tool")


def _plunge(context: Context, n: int) -> str | None:
    return getattr(context.windows(n), "plunge", None)


def _window_feed(side: str) -> Callable[[Context, int], float | None]:
    """The feed at the high (low) end of a tool's chip window, at its highest (lowest) true speed in the cut.

    Where it is not known which mark of the dial is set, at the dial's highest (lowest) one.
    """

    def read(context: Context, n: int) -> float | None:
        tool, windows = context.tool(n), context.windows(n)
        if tool is None or windows is None or (tool.flutes is None and side == "high"):
            return None
        flutes = tool.flutes or 1  # with more flutes the least feed is higher still
        speeds = context.cutting.true_speed_of[(context.motion.tool == n) & context.in_contact]
        if not np.isfinite(speeds).any():
            speeds = np.array([mark.true for mark in context.setup.spindle.dial])
        limits = [limit for w in windows.chip.values() if (limit := getattr(w, side)) is not None]
        if not limits or not np.isfinite(speeds).any():
            return None
        if side == "high":
            return float(max(limits) * flutes * np.nanmax(speeds))
        slot = windows.chip.get("slot")
        low = slot.low if slot is not None and slot.low is not None else max(limits)
        return float(low * flutes * np.nanmin(speeds))

    return read

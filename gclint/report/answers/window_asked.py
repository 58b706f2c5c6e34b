"""What somebody asks of the operating window, in texts as typed: made into one cut of one tool in one material."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from gclint.lazy_regex import Later
from gclint.problem import Problem, nearest

if TYPE_CHECKING:
    from gclint.cutting.cut_limits import Cut
    from gclint.digest.words import Lengths
    from gclint.report.answers.window_out import Asked
    from gclint.setup.declare import Declared
    from gclint.tables.setup import Setup, Tool

_QUOTED_INCHES = Later(r"[\d.]\s*(?:in|inch|inches|\")(?![\w/])")
_INCHES = Later(r"[\d.]\s*(?:in|inch|inches)(?![\w/])")
_MM = Later(r"[\d.]\s*(?:mm|cm|m)(?![\w/])")
_FEED_INCHES = Later(r"\d\s*(?:(?:in|inch)/(?:min|s)|ipm)\b")
_FEED_MM = Later(r"\d\s*(?:mm/(?:min|s)|m/min)\b")


def asked_of(
    material: str | None, tool_text: str | None, operation: str | None, width: str | None, depth: str | None,
    shop: str | None, job: str | None, dial: str | None, speed: str | None, feed: str | None, unit: str | None,
) -> Asked:  # fmt: skip
    """The question in numbers. Raises Problem, at the option that is wrong, where it cannot be asked."""
    from gclint.advice.parts import bounds
    from gclint.digest.words import Lengths
    from gclint.report.answers.window_out import Asked
    from gclint.setup.resolve import shop_setup

    declared = _declared(material, tool_text, shop, job)
    setup = shop_setup(declared)
    if setup.material is None:
        raise Problem('say what is cut, e.g. --material "cured-epoxy"; `gclint material` lists the cards')
    tool = _tool(setup, tool_text)
    if tool.flutes is None:
        raise Problem(f'the flutes of {tool.called} are not known; write for example --tool "flat 6mm 2fl up-cut"')
    if tool.shape not in ("flat", "ball", "bull-nose", "facing"):
        raise Problem(f'a "{tool.shape}" tool is not judged by a milling window: its feeds go by other rules')
    own = _unit_of_shop(declared)
    inch = (unit or own or ("in" if _QUOTED_INCHES.search(tool_text or "") else "mm")) == "in"
    cut, said = _cut(setup, tool, operation, width, depth, Lengths(inch))
    true = _speed(setup, dial, speed)
    if feed is not None and _bare(feed) and inch and not (unit or own):
        number = feed.strip()
        says = f'in which unit? A tool in inches may run in either: "{number} mm/min" or "{number} in/min", or --unit'
        raise Problem(says, "--feed")
    wanted = None if feed is None else _value(feed, "feed", "--feed", 25.4 if inch else 1.0)
    if wanted is not None and _bare(feed or ""):
        whose = "--unit says so" if unit else "the shop file counts so" if own else "the tool's size is in mm"
        said = (*said, f"the feed of {feed} is in {'in' if inch else 'mm'}/min, because {whose}")
    return Asked(cut, tool, setup, bounds(), true, wanted, inch, said)


def _declared(material: str | None, tool_text: str | None, shop: str | None, job: str | None) -> Declared:
    """What is declared, without a program."""
    from gclint.setup.declare import Options, declare

    tools = () if tool_text is None or tool_text.strip().isdigit() else (_numbered(tool_text),)
    return declare(Options(material, tools, None, shop, job), None)


def _unit_of_shop(declared: Declared) -> str | None:
    """"mm" or "in" where the shop file counts all its feeds (without any: all its lengths) in it."""
    text = declared.shop_file.text if declared.shop_file else ""
    for inches, mm in ((_FEED_INCHES, _FEED_MM), (_INCHES, _MM)):
        units = {"in"} if inches.search(text) else set()
        units |= {"mm"} if mm.search(text) else set()
        if units:
            return units.pop() if len(units) == 1 else None
    return None


def _bare(text: str) -> bool:
    """Whether a number has no unit."""
    try:
        float(text)
    except ValueError:
        return False
    return True


def _numbered(text: str) -> str:
    head = text.split(":")[0].strip()
    return text if ":" in text and head.isdigit() else f"1: {text}"


def _tool(setup: Setup, text: str | None) -> Tool:
    numbers = ", ".join(str(number) for number in sorted(setup.tools))
    if text is not None and text.strip().isdigit():
        number = int(text.strip()[:6])
        if number not in setup.tools:
            there = f"its tools are {numbers}" if numbers else "it declares none"
            raise Problem(f"there is no tool {number} in the shop; {there}", "--tool")
        return setup.tools[number]
    if text is not None:
        from gclint.setup.tool_text import tool_from_text

        return setup.tools[tool_from_text(_numbered(text)).number]
    if len(setup.tools) == 1:
        return next(iter(setup.tools.values()))
    if numbers:
        raise Problem(f"say which tool of the shop: --tool N; its tools are {numbers}")
    raise Problem('say which tool cuts, e.g. --tool "flat 3.175mm 2fl down-cut"')


def _cut(
    setup: Setup, tool: Tool, operation: str | None, width: str | None, depth: str | None, lengths: Lengths
) -> tuple[Cut, tuple[str, ...]]:
    from msgspec.structs import replace

    from gclint.cutting.cut_limits import usual_cut
    from gclint.knowledge.numbers import model_number
    ae = None if width is None else _value(width, "length", "--ae", 1.0)
    ap = None if depth is None else _value(depth, "length", "--ap", 1.0)
    for value, name in ((ae, "--ae"), (ap, "--ap")):
        if value is not None and not value > 0:
            raise Problem("the cut must be larger than nothing", name)
    if ae is not None and ae > tool.diameter * (1 + 1e-9):
        raise Problem(f"a tool of {lengths.length(tool.diameter)} cuts no wider than that", "--ae")
    if ap is not None and tool.flute_length is not None and ap > tool.flute_length:
        raise Problem(f"the flutes are {lengths.length(tool.flute_length)} long, a cut cannot be deeper", "--ap")
    if operation is None:
        narrow = ae is not None and ae < model_number("slot_share") * tool.diameter
        skim = ae is not None and ae < model_number("finish_share") * tool.diameter
        operation = "finish" if skim else "side" if narrow else "slot"
    usual = usual_cut(tool, operation, setup)
    said = []
    if ae is None and operation != "slot":
        said.append(f"the cut is {lengths.length(usual.ae)} wide (--ae is not given)")
    if ap is None:
        said.append(f"the cut is {lengths.length(usual.ap)} deep (--ap is not given)")
    made = replace(usual, ae=usual.ae if ae is None else ae, ap=usual.ap if ap is None else ap)
    return made, tuple(said)


def _speed(setup: Setup, dial: str | None, speed: str | None) -> float | None:
    """True rev/min of a mark or of a speed."""
    from gclint.knowledge.numbers import model_number
    spindle = setup.spindle
    marks = {mark.mark: mark for mark in spindle.dial}
    dial = dial if dial is not None or speed is not None else setup.dial
    if dial is not None:
        if not marks:
            raise Problem("no shop file declares a spindle with a dial", "--dial")
        if dial not in marks:
            raise Problem(f'the spindle has no mark "{dial[:20]}"{nearest(dial, tuple(marks))}', "--dial")
        return float(marks[dial].true)
    if speed is None:
        return None
    said = _value(speed, "speed", "--speed", 1.0)
    if not said > 0:
        raise Problem("a speed is larger than nothing", "--speed")
    near = [mark for mark in spindle.dial if abs(said - mark.stated) <= model_number("same_speed") * mark.stated]
    return float(near[0].true) if near and spindle.kind == "dial" else said


def _value(text: str, kind: str, option: str, bare: float) -> float:
    """In the internal unit; `bare`: what a number without a unit counts, 1 for mm."""
    from gclint.toml.units import quantity

    try:
        try:
            plain = float(text)
        except ValueError:
            value = quantity(text, kind)
        else:
            value = plain * bare
    except Problem as problem:
        raise Problem(problem.says, option) from None
    if not math.isfinite(value) or value < 0:
        raise Problem(f'"{text[:20]}" is no sensible number', option)
    return value

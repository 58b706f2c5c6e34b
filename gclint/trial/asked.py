"""What a person asks of a plan, and the bench it is for: machine, spindle, controller, tools, material."""

from __future__ import annotations

from pathlib import Path

from msgspec import Struct

from gclint import disk
from gclint.problem import Problem, nearest
from gclint.setup.declare import Declared, Options, declare
from gclint.setup.declared import Shop, ToolTable
from gclint.setup.tool_text import tool_from_text
from gclint.tables.material import Material
from gclint.tables.setup import Setup, Tool
from gclint.toml.file import load
from gclint.toml.named import readable
from gclint.toml.quantity import Length

MILLS = ("flat", "ball", "bull-nose")
SHOP_FILE = "shop.toml"
NOTHING = "nothing"  # --like nothing: a new material that resembles no card


class Asked(Struct, frozen=True):
    """Lengths mm, feeds mm/min, speeds rev/min; () or None: gclint chooses."""

    material: str
    tools: tuple[str, ...]  # shop numbers, or tools in a line of text where there is no shop file
    blank: tuple[tuple[float, float, float], tuple[float, float]]  # size, lowest X and Y
    cuts: int
    entries: tuple[str, ...]  # "ramp", "straight"; (): both, or ramps only where the card allows no plunge
    depths: tuple[float, ...] = ()
    marks: tuple[str, ...] = ()
    speeds: tuple[float, float] | None = None
    feeds: tuple[float, float] | None = None
    repeats: int | None = None
    seed: int = 1
    design: str | None = None  # "grid", "spread"; None: a grid where there is room for one
    like: str = ""
    batch: str = ""
    looks: bool = True
    shop: str | None = None
    program: str = "test-cuts.nc"

    @property
    def card_name(self) -> str:
        """The card that is planned and checked by; "" for a new material like no other."""
        return "" if self.like == NOTHING else self.like or self.material


class Bench(Struct, frozen=True):
    """What the plan is made for."""

    setup: Setup
    tables: dict[int, ToolTable]  # as the shop file writes them
    shop: Path | None  # the shop file that is there; None: one is to be written from the tools' texts
    card: str  # name of the card that cuts are checked by; "": none

    def tool(self, number: int) -> Tool:
        return self.setup.tools[number]

    @property
    def material(self) -> Material | None:
        return self.setup.material


def shop_above(folder: Path, given: str | None) -> Path | None:
    """The shop file that is named, else the nearest in the folder or above."""
    if given is not None:
        return Path(given)
    for place in (folder, *folder.absolute().parents):
        if disk.there(place / SHOP_FILE):
            return readable(place / SHOP_FILE)
    return None


def bench_of(asked: Asked, folder: Path) -> Bench:
    """Raises Problem where a tool, the shop or the material is not one that can be tried."""
    shop = shop_above(folder, asked.shop)
    if shop is None:
        tables = {tool.number: _table(tool) for tool in map(_from_text, asked.tools)}
        setup = _setup(asked.card_name, asked.tools, None, asked.material)
    else:
        numbers = [_number(text, shop) for text in asked.tools]
        setup = _setup(asked.card_name, (), str(shop), asked.material)
        tables = {table.number: table for table in load(shop, Shop, "shop file").tool}
        for number in numbers:
            if number not in tables:
                known = ", ".join(map(str, sorted(tables))) or "none"
                raise Problem(f"the shop file has no tool {number}; it has {known}", str(shop))
        tables = {number: tables[number] for number in numbers}
    if len(tables) < len(asked.tools):
        raise Problem("a tool is named twice", "--tool")
    for number in tables:
        _usable(setup.tools[number])
    card = setup.material
    return Bench(setup, tables, shop, "" if card is None else asked.card_name)


def bench_again(material: str, tables: tuple[ToolTable, ...], shop: Path) -> Bench:
    """The bench of a plan that has been made. Raises Problem where its shop file is gone or has lost a tool."""
    card = "" if material == NOTHING else material
    setup = _setup(card, (), str(shop), card)
    for table in tables:
        if table.number not in setup.tools:
            raise Problem(f"this shop file has no tool {table.number} any more", str(shop))
    return Bench(setup, {table.number: table for table in tables}, shop, card)


def _setup(material: str, tools: tuple[str, ...], shop: str | None, called: str) -> Setup:
    """What is declared, without a program."""
    from gclint.setup.resolve import shop_setup

    options = Options(material or None, tools, None, shop, None)
    declared = declare(options, None) if shop is not None else Declared(options, tuple(map(_from_text, tools)))
    try:
        return shop_setup(declared)
    except Problem as problem:
        if problem.path == "--material" and material == called:
            says = f"{problem.says}; for a new material say --like CARD, or --like {NOTHING}"
            raise Problem(says, "--material") from None
        raise


def _from_text(text: str) -> Tool:
    if text.strip().isdigit():
        says = "there is no shop file that says what this tool is; name one with --shop, or describe the tool: "
        raise Problem(says + '--tool "1: flat 3.175mm 2fl down-cut"', f"--tool {text.strip()[:10]}")
    head = text.split(":")[0].strip()
    return tool_from_text(text if ":" in text and head.isdigit() else f"1: {text}")


def _number(text: str, shop: Path) -> int:
    if text.strip().isdigit() and len(text.strip()) <= 5:
        return int(text.strip())
    says = f"name a tool of {shop} by its number; write a new one into it as [[tool]] first, since what the trial"
    raise Problem(f"{says} teaches is kept there under that number", "--tool")


def _table(tool: Tool) -> ToolTable:
    """A tool of one line of text as a shop file would write it."""
    angle, corner = tool.angle, tool.corner_radius
    if angle is not None or tool.shape not in MILLS:
        raise Problem(f'a plan tries tools of the shapes {", ".join(MILLS)}, not "{tool.shape}"', "--tool")
    return ToolTable(
        number=tool.number, shape=tool.shape, diameter=Length(tool.diameter), flutes=tool.flutes,  # type: ignore[arg-type]
        helix=tool.helix, corner_radius=corner,  # type: ignore[arg-type]
    )


def _usable(tool: Tool) -> None:
    if tool.shape not in MILLS:
        says = f'a plan of grooves tries tools of the shapes {", ".join(MILLS)}; {tool.called} is "{tool.shape}"'
        raise Problem(says, "--tool")
    if tool.flutes is None:
        raise Problem(f"the flutes of {tool.called} are not declared, and feeds go by them", "--tool")


def dial_marks(bench: Bench, asked: Asked) -> tuple[str, ...]:
    """The marks that are asked for. Raises Problem for one the dial has not."""
    known = tuple(mark.mark for mark in bench.setup.spindle.dial)
    if asked.marks and not known:
        raise Problem("no shop file declares a spindle with a dial; name speeds: --speed", "--dial")
    for mark in asked.marks:
        if mark not in known:
            raise Problem(f'the spindle has no mark "{mark[:20]}"{nearest(mark, known)}', "--dial")
    return asked.marks

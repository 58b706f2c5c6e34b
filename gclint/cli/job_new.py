"""The questions of `gclint job new`."""

from __future__ import annotations

import json
from pathlib import Path
from typing import get_args

import click

from gclint.cli.guided import Lines, as_text, ask, of, one_of, refuse_existing, write_new
from gclint.problem import Problem
from gclint.setup.declared import HeldBy, Job
from gclint.toml.quantity import Depth, Length, Position, from_text

FIRST = "One job: its program, material, blank and hold. `gclint job check` says what more can stand here."
MOST_BITS = 12  # of a shop that are named
BLANK = 'The blank, and its lowest X and Y from work zero, such as "120 x 80 x 18 mm at -10 -10"'


def ask_job(file: str) -> None:
    """Asks, and writes the file. Raises Problem where it exists or the answers end."""
    from gclint.cards import material as card

    target = refuse_existing(file)
    click.echo("Enter leaves a question open: less can then be judged, and every report says what.")

    def program(answer: str) -> str:
        if not (target.parent / answer).is_file():
            raise Problem(f'there is no file "{answer}" beside {file}')
        return as_text(answer)

    def material(answer: str) -> str:
        return as_text(card.material(answer).name)

    lines = Lines(FIRST)
    name = ask(f"The program, a file beside {file}", program)
    beside = (target.parent / "shop.toml").is_file()
    stands = "Enter: the shop.toml that stands here" if beside else "such as ../shop.toml"
    shop = ask(f"The shop file ({stands})", program) or (as_text("shop.toml") if beside else None)
    click.echo(f"    {', '.join(card.names())}")
    bit = f"Which bit is in? Its tool number{_bits(target, shop)}; Enter if the program calls its tools"
    lines.table(
        "", program=name, shop=shop, material=ask("The material", material), z_zero=ask(
            "Where is Z zero: stock-top, table, or its height above the table", _z_zero
        ),
        tool=ask(bit, _number),
        dial=ask("The mark that the spindle's dial is set to", as_text),
    )
    click.echo("\nTHE BLANK")
    blank = ask(BLANK, _blank) or {}
    measured = ask("Its thickness as you measured it, such as 17.4 mm", of(Length))
    lines.table("[stock]", **blank, measured_thickness=measured)
    holds = get_args(HeldBy)
    lines.table(
        "[hold]", by=ask(f"What holds it ({', '.join(holds)})", one_of(*holds)),
        spoilboard=ask("How deep may be cut into the board below it, such as 0.5 mm", of(Depth)),
    )
    write_new(lines, target, Job)
    click.echo(f"{file} is written. What more it could say: gclint job check {file}")


def _bits(target: Path, shop: str | None) -> str:
    """' (1: flat, 6 mm; 3: drill, 3 mm)': the tools that the shop file declares, as far as it can be read."""
    from gclint.digest.words import figure
    from gclint.setup.declare import Options, declare

    if shop is None:
        return ""
    try:
        declared = declare(Options(shop=str(target.parent / json.loads(shop))), None).shop
    except Problem as problem:
        click.echo(f"    {problem.says}")
        return ""
    tools = declared.tool[:MOST_BITS] if declared else ()
    named = "; ".join(f"{tool.number}: {tool.name or f'{tool.shape}, {figure(tool.diameter)} mm'}" for tool in tools)
    more = "; ..." if declared and len(declared.tool) > MOST_BITS else ""
    return f" ({named}{more})" if named else ""


def _number(answer: str) -> str:
    plain = answer.lower().removeprefix("tool").strip().removeprefix("t").strip()
    if not (plain.isascii() and plain.isdigit() and len(plain) <= 5):
        raise Problem(f'"{answer[:40]}" is no tool number, such as 3')
    return str(int(plain))


def _z_zero(answer: str) -> str:
    plain = "-".join(answer.lower().split())
    if plain in ("stock-top", "table"):
        return as_text(plain)
    from_text(Position, answer)
    return f"{{ above_table = {as_text(answer)} }}"


def _blank(answer: str) -> dict[str, str]:
    from gclint.setup.tool_text import stock_from_text

    size, corner = stock_from_text(answer, "")
    made = {"size": _lengths(size)}
    return {**made, "corner": _lengths(corner)} if corner else made


def _lengths(values: tuple[float, ...]) -> str:
    return "[" + ", ".join(f'"{value:.6g} mm"' for value in values) + "]"

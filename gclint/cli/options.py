"""The options by which `check` and `show` take declarations."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

import click

if TYPE_CHECKING:
    from gclint.setup.declare import Options


def declarations(command: Callable[..., Any]) -> Callable[..., Any]:
    """Adds --material, --tool, --stock, --shop, --job and --dial to a command."""
    for option in reversed(
        (
            click.option("--material", metavar="NAME", help='What is cut, e.g. "beech"; `gclint material` lists them.'),
            click.option(
                "--tool", "tools", multiple=True, metavar="TEXT",
                help='A tool by its number in the program: "1: flat 3.175mm 2fl down-cut". Once per tool.',
            ),
            click.option("--stock", metavar="TEXT", help='The blank: "120 x 80 x 18 mm at -10 -10" (lowest X and Y).'),
            click.option("--shop", metavar="FILE", help="Machine, spindle and tools."),
            click.option("--job", metavar="FILE", help="Material, blank, hold and acceptances."),
            click.option("--dial", metavar="MARK", help="The mark that the spindle's dial is set to."),
        )
    ):
        command = option(command)
    return command


def options_of(
    material: str | None, tools: tuple[str, ...], stock: str | None, shop: str | None, job: str | None,
    dial: str | None = None, fail_at: str | None = None,
) -> Options:
    from gclint.setup.declare import Options

    return Options(material, tools, stock, shop, job, fail_at, dial=dial)

"""`gclint window`"""

from __future__ import annotations

import sys
from typing import Any

import click

from gclint.problem import Problem


@click.command(short_help="Which speeds and feeds go, without a program; drawn.")
@click.option("--material", metavar="NAME", help='What is cut, e.g. "beech"; `gclint material` lists them.')
@click.option("--tool", "tool_text", metavar="TEXT", help='"flat 3.175mm 2fl down-cut", or a tool number of the shop.')
@click.option("--operation", type=click.Choice(["slot", "side", "finish"]), help="How it cuts; usually a slot.")
@click.option("--ae", "width", metavar="LENGTH", help='Width of the cut, e.g. "1.5 mm".')
@click.option("--ap", "depth", metavar="LENGTH", help='Depth of the cut, e.g. "1/16 in".')
@click.option("--shop", metavar="FILE", help="Machine, spindle and tools.")
@click.option("--job", metavar="FILE", help="Material and dial.")
@click.option("--dial", metavar="MARK", help="The mark the dial is set to.")
@click.option("--speed", metavar="REV/MIN", help="A speed to judge.")
@click.option("--feed", metavar="FEED", help='A feed to judge, e.g. "1200 mm/min" or "48 in/min".')
@click.option(
    "--unit", type=click.Choice(["mm", "in"]), help="Of the answer; as the shop file counts, else the tool's text."
)
@click.option(
    "--all", "every", is_flag=True,
    help="Every bit of the shop in every material, or in that of --material: a sheet for the wall.",
)
@click.option(
    "--as", "form", type=click.Choice(["text", "json", "page"]), default="text",
    help="text (the usual), json, or page (with --all).",
)
@click.option("--out", metavar="FILE", help="Write there instead of to the screen.")
def window(form: str, out: str | None, every: bool, **given: Any) -> int:
    """Which pairs of speed and feed a tool can run in a material: every limit at once, drawn, and the best pair.

    \b
    Examples:
      gclint window --material cured-epoxy --tool "flat 1/8in 2fl down-cut"
      gclint window --material beech --tool "flat 6mm 2fl up-cut" \\
          --operation side --ae "1.5 mm" --ap "6 mm" \\
          --speed 18000 --feed "1500 mm/min"
      gclint window --material birch-plywood --tool 1 --shop shop.toml --dial F
    Which of my bits suits this material, and all on one sheet of A4:
      gclint window --all --material beech --shop shop.toml
      gclint window --all --shop shop.toml --as page --out feeds.html
    """
    from gclint.cli.output import deliver, refuse_overwrite
    from gclint.report.answers.window_asked import asked_of
    from gclint.report.answers.window_out import answer, sheet, to_json
    from gclint.report.text.text_sheet import text_sheet_for

    refuse_overwrite(out, [given["shop"], given["job"]])
    if every:
        return _every(form, out, given)
    if form == "page":
        raise Problem("--as page goes with --all")
    made = answer(asked_of(**given))
    if form == "json":
        deliver(to_json(made), out, for_machines=True)
        return 0
    paper = text_sheet_for(sys.stdout)
    sheet(made, paper)
    deliver(paper.text, out)
    return 0


def _every(form: str, out: str | None, given: dict[str, Any]) -> int:
    """The sheet of all bits: as text or as a page."""
    from gclint.cli.output import deliver
    from gclint.report.answers.window_all import rows_of, shop_text
    from gclint.report.text.text_sheet import TextSheet, text_sheet_for

    if form == "json":
        raise Problem("--all is a sheet for people: --as text or --as page")
    options = {"speed": "--speed", "feed": "--feed", "dial": "--dial", "width": "--ae", "depth": "--ap"}
    for name, option in options.items():
        if given.get(name) is not None:
            raise Problem("--all shows every mark in the usual cut; leave this option away", option)
    rows = rows_of(**given)
    if form == "page":
        from gclint.report.page.shop_sheet import shop_page

        deliver(shop_page(rows), out)
        return 0
    paper = TextSheet() if out else text_sheet_for(sys.stdout)
    shop_text(rows, paper)
    deliver(paper.text, out)
    return 0

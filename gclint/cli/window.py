"""`gclint window`"""

from __future__ import annotations

import sys
from typing import Any

import click


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
@click.option("--as", "form", type=click.Choice(["text", "json"]), default="text", help="text (the usual) or json.")
@click.option("--out", metavar="FILE", help="Write there instead of to the screen.")
def window(form: str, out: str | None, **given: Any) -> int:
    """Which pairs of speed and feed a tool can run in a material: every limit at once, drawn, and the best pair.

    \b
    Examples:
      gclint window --material cured-epoxy --tool "flat 1/8in 2fl down-cut"
      gclint window --material beech --tool "flat 6mm 2fl up-cut" \\
          --operation side --ae "1.5 mm" --ap "6 mm" \\
          --speed 18000 --feed "1500 mm/min"
      gclint window --material birch-plywood --tool 1 --shop shop.toml --dial F
    """
    from gclint.cli.output import deliver, refuse_overwrite
    from gclint.report.answers.window_asked import asked_of
    from gclint.report.answers.window_out import answer, sheet, to_json
    from gclint.report.text.text_sheet import text_sheet_for

    refuse_overwrite(out, [given["shop"], given["job"]])
    made = answer(asked_of(**given))
    if form == "json":
        deliver(to_json(made), out, for_machines=True)
        return 0
    paper = text_sheet_for(sys.stdout)
    sheet(made, paper)
    deliver(paper.text, out)
    return 0

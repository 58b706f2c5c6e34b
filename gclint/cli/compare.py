"""`gclint compare`"""

from __future__ import annotations

import click

from gclint.cli.common import quiet_option
from gclint.cli.options import declarations


@click.command(short_help="Two versions of a program: what is gone, what is new, whether the part is the same.")
@click.argument("old", metavar="OLD")
@click.argument("new", metavar="NEW")
@declarations
@click.option("--as", "form", type=click.Choice(["text", "json", "page"]), default="text", help="How to report.")
@click.option("--out", metavar="FILE", help="Write the report to a file instead of the screen.")
@quiet_option
def compare(
    old: str, new: str, material: str | None, tools: tuple[str, ...], stock: str | None, shop: str | None,
    job: str | None, dial: str | None, form: str, out: str | None,
) -> int:  # fmt: skip
    """Compare two versions of a program: what is no longer found, what is new, the surface and the time.

    \b
    An example from the Lowtide workshop (an invented one):
      gclint compare tide-ring.nc tide-ring.mended.nc

    Exit code 0: nothing new at the fail grade, and the same surface; 1: otherwise; 2: bad input.
    """
    from gclint.cli.options import options_of
    from gclint.cli.output import deliver, refuse_overwrite
    from gclint.folder.source import path_of, read_bytes, shown_as
    from gclint.mend.compare import compare as compared
    from gclint.mend.schema import to_json
    from gclint.mend.text_out import compare_text
    from gclint.problem import Problem

    if old == "-" and new == "-":
        raise Problem("only one of the two can be standard input")
    if form == "page" and out is None:
        raise Problem("a page needs --out")
    refuse_overwrite(out, [path_of(old), path_of(new), shop, job])
    options = options_of(material, tools, stock, shop, job, dial)
    both = [(read_bytes(name), shown_as(name), path_of(name)) for name in (old, new)]
    made = compared(both[0], both[1], options)
    if form == "page":
        from gclint.mend.page_out import compare_page

        deliver(compare_page(made), out)
    else:
        deliver(to_json(made.document) if form == "json" else compare_text(made), out, for_machines=form == "json")
    return int(made.failing)

"""`gclint mend`"""

from __future__ import annotations

from pathlib import Path

import click

from gclint.cli.common import quiet_option
from gclint.cli.options import declarations
from gclint.problem import Problem


@click.command(short_help="Write a corrected copy, with the proof that it cuts the same part.")
@click.argument("program", metavar="PROGRAM")
@declarations
@click.option(
    "--out", metavar="FILE", help="The copy; a file that exists is never written over (usual: NAME.mended.EXT)."
)
@click.option("--only", multiple=True, metavar="RULE", help="Mend what this rule finds, and nothing else; repeat it.")
@click.option("--tabs", is_flag=True, help="Propose tabs where a part would come loose.")
@click.option("--clip", is_flag=True, help="Propose to end cuts into the table at the underside.")
@click.option("--as", "form", type=click.Choice(["text", "json"]), default="text", help="How to report.")
@click.option("--page", metavar="FILE", help="Also write a page: both paths, the changes, the surface, the proof.")
@quiet_option
def mend(
    program: str, material: str | None, tools: tuple[str, ...], stock: str | None, shop: str | None, job: str | None,
    dial: str | None, out: str | None, only: tuple[str, ...], tabs: bool, clip: bool, form: str, page: str | None,
) -> int:  # fmt: skip
    """Write a corrected copy of PROGRAM beside it. The program itself stays as it is.

    Each change is proved before it is taken: the copy leaves the same surface, every line that is not changed runs
    as it did, what was found is gone, and nothing new is found. What cannot be proved is not written, and the report
    says why. A person must look at the copy before it runs.

    \b
    Examples from the Lowtide workshop (an invented one):
      gclint mend tide-ring.nc
      gclint mend tide-ring.nc --only straight-plunge --out ring-ramped.nc
      gclint mend tide-ring.nc --page ring.html

    Exit code 0: nothing at the fail grade is left (a copy was written, or none was needed); 1: something is left;
    2: the program cannot be read, an option or a declaration is wrong, or the file exists.
    """
    from msgspec.structs import replace

    from gclint.atomic_file import write_unchanged
    from gclint.cli.options import options_of
    from gclint.cli.output import deliver, refuse_overwrite
    from gclint.cli.progress import Progress
    from gclint.folder.source import path_of, read_bytes, shown_as
    from gclint.mend.mend import mend as mended_of
    from gclint.mend.result import File
    from gclint.mend.schema import to_json
    from gclint.mend.text_out import mend_text

    target = _target(program, out)
    if page is not None and Path(page).absolute() == target.absolute():
        raise Problem("--page and the copy are one file; name another", page)
    refuse_overwrite(page, [path_of(program), shop, job, str(target)], "--page")
    extra = tuple(name for name, asked in (("tabs", tabs), ("clip", clip)) if asked)
    options = options_of(material, tools, stock, shop, job, dial)
    data = read_bytes(program)
    with Progress() as progress:
        progress.begin(shown_as(program), len(data))
        made = mended_of(data, shown_as(program), options, path_of(program), only, extra, progress)
    written = None
    if made.data is not None:
        write_unchanged(made.data, target, None)
        written = shown_as(str(target))
    document = made.document
    if document.to is not None and written is not None:
        document = replace(document, to=File(written, document.to.fingerprint))
    if page is not None:
        from gclint.mend.page_out import mend_page

        deliver(mend_page(made, document), page)
    if form == "json":
        deliver(to_json(document), None, for_machines=True)
    else:
        deliver(f"{mend_text(made, written)}\n", None)
    return int(made.failing)


def _target(program: str, out: str | None) -> Path:
    """Where the copy goes. Raises Problem where there is a file, or no folder."""
    if program != "-" and Path(program).is_dir():
        raise Problem("this is a folder; mend takes one program at a time", program)
    if out is None:
        if program == "-":
            raise Problem("a copy of standard input needs --out")
        own = Path(program)
        out = str(own.with_name(f"{own.stem}.mended{own.suffix}"))
    if not out:
        raise Problem("--out needs the name of a file")
    target = Path(out)
    if target.is_dir():
        raise Problem("--out names a folder; name the file of the copy", out)
    if target.exists() or target.is_symlink():
        raise Problem("there is such a file already, and mend never writes over one; name another with --out", out)
    if not target.parent.is_dir():
        raise Problem("--out lies in a folder that does not exist", out)
    return target

"""`gclint desk`"""

from __future__ import annotations

import click

from gclint.problem import Problem

LIBRARIES = ("starlette", "uvicorn", "h11", "anyio")


@click.command(short_help="Everything without a command line: a page on this machine alone.")
@click.argument("folder", metavar="[FOLDER]", default=".")
@click.option("--no-browser", is_flag=True, help="Print the address and open nothing.")
@click.option(
    "--port", type=click.IntRange(0, 65535), default=0, metavar="N", help="Where to listen (usual: any that is free)."
)
def desk(folder: str, no_browser: bool, port: int) -> int:
    """Open FOLDER (usual: this one) in the browser: its programs with their verdicts, each with its sheet.

    What a check needs to know is asked beside a drawing of the path and saved as the same shop.toml and job.toml that
    are written by hand. Ctrl-C ends it.

    It listens on this machine alone, to the one browser that opens the printed address, and sends nothing anywhere.
    It needs the extra `gclint[desk]`.

    \b
    Examples from the Lowtide workshop (an invented one):
      gclint desk
      gclint desk jobs --no-browser --port 8765
    """
    try:
        from gclint.desk.serve import serve
    except ImportError as problem:
        raise _without(problem) from None
    if 0 < port < 1024:
        raise Problem("a port under 1024 belongs to the system; name one from 1024 on", "--port")
    try:
        serve(folder, port, not no_browser, _told)
    except ImportError as problem:
        raise _without(problem) from None
    click.echo("\nThe desk is closed.")
    return 0


def _without(problem: ImportError) -> Exception:
    if (problem.name or "").partition(".")[0] not in LIBRARIES:
        return problem
    return Problem("the desk needs the libraries starlette and uvicorn: pip install 'gclint[desk]'")


def _told(address: str) -> None:
    click.echo(f"The desk is open at\n\n    {address}\n\nin one browser of this machine. Ctrl-C ends it.")

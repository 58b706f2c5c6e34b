"""`gclint editor`"""

from __future__ import annotations

import click

from gclint.problem import Problem


@click.command(short_help="Check programs in your editor while they are written.")
def editor() -> int:
    """A language server on standard input and output, which an editor starts: it is not used by hand.

    As the text changes, an editor then shows what `gclint check` finds, with the shop.toml and job.toml beside the
    program, saved or not; what the tool does on a line; quick changes; where a tool is declared; the program's tools
    and passes; and in declarations what is wrong and what can stand there. The page gclint/docs/editor.md says how
    editors are set up.
    """
    try:
        from gclint.editor.server import make
    except ImportError as problem:
        if (problem.name or "").partition(".")[0] not in ("pygls", "lsprotocol", "cattrs"):
            raise
        raise Problem("the editor needs the library pygls: pip install 'gclint[editor]'") from None
    make().start_io()
    return 0

"""`gclint watch`"""

from __future__ import annotations

import signal
import sys
import threading
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import click

from gclint.cli.common import quiet_option
from gclint.cli.options import declarations
from gclint.problem import Problem
from gclint.screen import QUIET

TICK_MS = 150  # between two looks at what has settled
FORMS = ("page", "text")


@click.command(short_help="Check a folder's programs as they settle.")
@click.argument("folder", metavar="FOLDER")
@declarations
@click.option("--as", "form", type=click.Choice(FORMS), default="page", help="The report beside each program.")
@click.option("--out", metavar="DIR", help="Where reports go (usual: beside their programs).")
@click.option(
    "--settle", type=click.FloatRange(0.05, 3600), default=1.0, metavar="SECONDS", show_default=True,
    help="How long a file must stand still before it is read.",
)
@click.option("--poll", is_flag=True, help="Look at every file again and again, as some network drives need.")
@click.option("--cache", metavar="DIR", help='Where results are kept, as for `gclint check`; "none": nowhere.')
@click.option("--workers", type=click.IntRange(1, 256), metavar="N", help="Processes at work (usual: one a core).")
@click.option(
    "--give-up-after", type=click.FloatRange(0.1), metavar="SECONDS", help="Processor time that one program may take."
)
@quiet_option
def watch(
    folder: str,
    material: str | None,
    tools: tuple[str, ...],
    stock: str | None,
    shop: str | None,
    job: str | None,
    dial: str | None,
    form: str,
    out: str | None,
    settle: float,
    poll: bool,
    cache: str | None,
    workers: int | None,
    give_up_after: float | None,
) -> int:
    """Watch a folder: each program is checked when it, or a declaration it uses, has been written and stands still.

    \b
    Beside tray.nc then stand (or in --out DIR, in the same folders):
      tray.nc.report.html   the page (--as text: tray.nc.report.txt, the sheet)
      tray.nc.verdict.txt   one line

    Files of these names that gclint did not write stay as they are. The verdict says so as soon as its program has
    changed or is gone. Stop it with Ctrl-C.

    Exit code 0 when it is stopped, 2 when the folder is gone, or a declaration or an option is wrong.
    """
    from gclint.cli.main import complain
    from gclint.cli.many import tell as told_aloud
    from gclint.cli.options import options_of
    from gclint.folder.cache import cache_of
    from gclint.folder.run import usual_cores
    from gclint.folder.watch import Watching
    from gclint.folder.watch import watch as run
    from gclint.setup.declare import refuse_wrong

    options = options_of(material, tools, stock, shop, job, dial)
    refuse_wrong(options)
    home = Path(folder)
    if not home.is_dir():
        raise Problem("this is not a folder", folder)
    if not poll:
        _library()  # says at once that it is missing
    kept = cache_of(cache, told_aloud)
    stop = threading.Event()
    for name in ("SIGINT", "SIGTERM", "SIGHUP"):
        if hasattr(signal, name):
            signal.signal(getattr(signal, name), lambda *_: stop.set())

    def say(line: str) -> None:
        if not QUIET.get():
            encoding = sys.stdout.encoding or "utf-8"
            print(line.encode(encoding, "replace").decode(encoding), flush=True)

    what = Watching(
        home, _out(out, home), "page" if form == "page" else "text", options, kept,
        workers or usual_cores(), give_up_after, settle, say, complain,
    )  # fmt: skip
    def tell(says: str) -> None:
        if not QUIET.get():
            print(f"gclint: {says}", file=sys.stderr, flush=True)

    tell(f"watching {folder}; stop with Ctrl-C")
    run(what, lambda stopped: _changes(home, poll, stopped), stop)
    tell("stopped")
    return 0


def _out(out: str | None, home: Path) -> Path | None:
    if out is None:
        return None
    target = Path(out)
    try:
        target.mkdir(parents=True, exist_ok=True)
    except OSError as problem:
        from gclint.problem import reason

        raise Problem(f"this folder cannot be made: {reason(problem)}", out) from None
    if target.resolve() == home.resolve():
        raise Problem("--out is the folder itself; leave it away to have reports beside their programs", out)
    return target.resolve()


def _changes(home: Path, poll: bool, stop: threading.Event) -> Iterator[set[str]]:
    """Paths that were touched, an empty set now and then; where the system cannot tell changes, by looking."""
    if not poll:
        try:
            yield from _told(home, stop)
            return
        except (OSError, RuntimeError) as problem:  # too many files to watch; a name that is no text
            if stop.is_set():
                return
            from gclint.cli.main import complain

            complain(f"{home}: the system cannot tell changes ({problem}); looking at every file instead")
    from gclint.folder.polling import looked

    yield from looked(home.absolute(), stop, TICK_MS / 1000, all_new=not poll)


def _library() -> Any:
    try:
        import watchfiles
    except ImportError:
        raise Problem("watching needs the library watchfiles: pip install 'gclint[watch]' (or --poll)") from None
    return watchfiles


def _told(home: Path, stop: threading.Event) -> Iterator[set[str]]:
    """What the system tells."""
    for changes in _library().watch(
        home.absolute(), watch_filter=None, debounce=TICK_MS, step=50, rust_timeout=TICK_MS, yield_on_timeout=True,
        stop_event=stop, raise_interrupt=False, ignore_permission_denied=True,
    ):  # fmt: skip
        yield {path for _, path in changes}

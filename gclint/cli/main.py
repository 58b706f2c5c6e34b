"""`gclint`: finds the verb, turns every failure into one sentence and an exit code."""

from __future__ import annotations

import gc
import os
import sys

import click

from gclint import __version__
from gclint.cli.common import with_common
from gclint.cli.lazy import LazyGroup

VERBS = {
    "check": "Read programs, model the cut, say what will go wrong and what to change.",
    "watch": "Check the programs of a folder whenever they settle, with reports beside them.",
    "mend": "Write a corrected copy of a program, with the proof that it cuts the same part.",
    "desk": "Everything without a command line: a page on this machine alone.",
    "editor": "A language server: what check says, in your editor as you write.",
    "compare": "Two versions of a program: what is gone, what is new, whether the part is the same.",
    "show": "What each tool of a program does: entries, passes, speeds, chips, times.",
    "why": "What a rule looks for, why, its source, a good and a bad example.",
    "word": "The glossary: what a word of the trade means.",
    "material": "The material cards: every number with its standing.",
    "controller": "The controller cards: what each does with codes, words and habits.",
    "window": "Which speeds and feeds a tool can run in a material, drawn.",
    "shop": "Write or check the file that declares machine, spindle and tools.",
    "job": "Write or check the file that declares material, blank and hold.",
    "sign": "Note in the job file that you have looked at a program.",
    "trial": "Test cuts in a new material: plan them, grade them, learn from them.",
    "pack": "Load and prove a rule pack by its own examples.",
}
INTERRUPTED = 130
FEW_COLLECTIONS = 50_000  # new objects between two searches for cycles; the usual 700 costs 10 ms while importing


@click.group(
    cls=LazyGroup, verbs=VERBS, prefix="gclint.cli.", heading="What it does", missing="to do",
    no_args_is_help=False, invoke_without_command=True,
    context_settings={"max_content_width": 80, "help_option_names": ["-h", "--help"]},
)
@click.version_option(__version__, "-V", "--version", prog_name="gclint", message="%(prog)s %(version)s")
@click.pass_context
def gclint(context: click.Context) -> None:
    """Reads a CNC program before the machine does.

    It follows the tool through the blank, works out what each tooth bites, and says line by line what will chip, rub,
    melt, overload or crash, and what to change.

    \b
    A first check needs a program, a material and a tool:
      gclint check tide-dial.nc --material cured-epoxy \\
          --tool "1: flat 3.175mm 2fl down-cut"
    What a rule means:
      gclint why straight-plunge
    What each tool does:
      gclint show tide-dial.nc

    With a shop.toml (machine, spindle, tools) and a job.toml (material, blank) beside the program, none of the options
    is needed.
    """
    if context.invoked_subcommand is None:
        click.echo(context.get_help())


with_common(gclint)


def main(args: list[str] | None = None) -> None:
    """The console script. Exit codes: 0, 1 findings, 2 something could not be read or is declared wrongly."""
    gc.set_threshold(FEW_COLLECTIONS)
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # else numpy starts threads for matrices; there are none
    code = run(sys.argv[1:] if args is None else args)
    sys.stderr.flush()
    os._exit(code)  # all is written and closed; taking the modules down one by one is a tenth of a small check


def run(args: list[str]) -> int:
    """The exit code; nothing that goes wrong reaches the caller as an exception."""
    from gclint.problem import Problem, reason

    try:
        code = gclint.main(args, prog_name="gclint", standalone_mode=False)
        sys.stdout.flush()
        return code if isinstance(code, int) else 0
    except Problem as problem:
        return complain(str(problem))
    except click.ClickException as problem:
        return complain(problem.format_message())
    except (click.Abort, KeyboardInterrupt):
        return INTERRUPTED
    except BrokenPipeError:
        # The reader has gone; what is still buffered must not raise once more.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return INTERRUPTED
    except MemoryError:
        return complain("there is not enough memory for this")
    except OSError as problem:
        return complain(f"{problem.filename}: {reason(problem)}" if problem.filename else reason(problem))
    except Exception as fault:
        return complain(f"gclint itself failed: {type(fault).__name__}: {fault}; please report this")


def complain(sentence: str) -> int:
    """One line on stderr; the exit code that goes with it."""
    from gclint.problem import one_line

    print(f"gclint: {one_line(sentence)}", file=sys.stderr)
    return 2

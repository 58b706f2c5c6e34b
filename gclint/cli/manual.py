"""The manual page, made of what the commands themselves say: `python -m gclint.cli.manual` writes it anew."""

from __future__ import annotations

import inspect
import re
from pathlib import Path

import click

from gclint.atomic_file import write_whole
from gclint.cli.main import gclint

FILE = Path(__file__).with_name("gclint.1")

ABOUT = "check CNC programs before the machine runs them"
EXITS = (
    ("0", "Nothing at or above the fail grade."),
    ("1", "Something was found at or above it (\\fB--fail-at\\fR, usually \\fIchange\\fR)."),
    ("2", "A program could not be read, or a declaration or an option is wrong; standard error says which and where."),
    ("130", "Broken off with Ctrl-C, or the reader of a pipe has gone."),
)
ENVIRONMENT = (
    ("GCLINT_CACHE", "The folder in which results are kept; \\fInone\\fR keeps nothing."),
    ("NO_COLOR", "Set to anything: no colour, unless \\fB--color always\\fR."),
    ("COLUMNS", "The width of sheets that go to a pipe or a file (usually 80)."),
    ("_GCLINT_COMPLETE", "\\fIbash_source\\fR, \\fIzsh_source\\fR or \\fIfish_source\\fR: print what makes that shell "
                         "complete commands, files, materials, rules, tools and marks."),
)  # fmt: skip
FILES = (
    ("shop.toml", "Machine, spindle and tools. The nearest one, beside the program or in a folder above, is used."),
    ("job.toml", "Material, blank, hold and acceptances of one program or several; found in the same way."),
)
CAUTION = (
    "Milling hurts people. A sheet without findings is not a promise: gclint knows the program and what was declared, "
    "and nothing else. The rules of the workshop and its trained supervision come first."
)


def page() -> str:
    """The page in the man macros of roff."""
    root = click.Context(gclint, info_name="gclint", **gclint.context_settings)
    lines = ['.TH GCLINT 1 "" gclint "General Commands Manual"', ".SH NAME", f"gclint \\- {ABOUT}"]
    lines += [".SH SYNOPSIS", ".B gclint", ".I COMMAND", "[\\fIOPTIONS\\fR] [\\fIARGUMENTS\\fR]", ".SH DESCRIPTION"]
    lines += [*_text(gclint.help or ""), ".SH OPTIONS", *_options(gclint, root), ".SH COMMANDS"]
    for command, context in _commands(gclint, root):
        lines += [f".SS {_plain(context.command_path)}", f".B {_plain(context.command_path)}"]
        group = isinstance(command, click.Group)  # whose usage is written differently by each version of click
        usage = "[OPTIONS] COMMAND [ARGS]..." if group else " ".join(command.collect_usage_pieces(context))
        lines += [_plain(usage), ".PP"]
        lines += _text(command.help or "") + _options(command, context)
    for title, rows in (("EXIT STATUS", EXITS), ("ENVIRONMENT", ENVIRONMENT), ("FILES", FILES)):
        lines.append(f".SH {title}")
        for name, says in rows:
            lines += [".TP", f".B {name}", says.replace("-", "\\-")]
    return "\n".join([*lines, ".SH CAUTIONS", CAUTION, ""])


def _commands(group: click.Group, context: click.Context) -> list[tuple[click.Command, click.Context]]:
    """Every verb, and below a verb that has some its own ones, in the order of the help."""
    found = []
    for name in group.list_commands(context):
        command = group.get_command(context, name)
        if command is not None and not command.hidden:
            own = click.Context(command, info_name=name, parent=context)
            found.append((command, own))
            if isinstance(command, click.Group):
                found += _commands(command, own)
    return found


def _options(command: click.Command, context: click.Context) -> list[str]:
    lines: list[str] = []
    for option in command.get_params(context):
        record = option.get_help_record(context)
        own = command is gclint or not {"--help", "--color"} & set(option.opts)
        if own and isinstance(option, click.Option) and record is not None:
            lines += [".TP", f".B {_plain(record[0])}", _plain(" ".join((option.help or "").split()))]
    return lines


def _text(said: str) -> list[str]:
    """Paragraphs; what stands behind a line of \\b keeps its line ends."""
    lines: list[str] = []
    for paragraph in re.split(r"\n\s*\n", inspect.cleandoc(said)):
        if paragraph.startswith("\b"):
            lines += [".PP", ".nf", *(_plain(line) for line in paragraph.splitlines()[1:]), ".fi"]
        elif paragraph.strip():
            lines += [".PP", _plain(" ".join(paragraph.split()))]
    return lines


def _plain(text: str) -> str:
    """Text in which roff sees nothing of its own."""
    text = text.replace("\\", "\\e").replace("-", "\\-")
    return f"\\&{text}" if text.startswith((".", "'")) else text


if __name__ == "__main__":
    write_whole(FILE, page().encode())

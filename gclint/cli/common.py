"""What verbs have in common: --color and completion in the shell; -q where the exit code says it all."""

from __future__ import annotations

from collections.abc import Callable
from contextvars import ContextVar
from typing import TYPE_CHECKING, Any, TypeVar

import click

from gclint.screen import COLOUR, QUIET

if TYPE_CHECKING:
    from click.shell_completion import CompletionItem

T = TypeVar("T")

# What completes the text of an option or an argument, by the word that stands for it in the help, and where that does
# not say enough by the name before it (of an option, or of the verb). See `gclint/cli/complete.py`.
OFFERED = {
    "FILE": "file", "[FILE]": "file", "PROGRAM": "file", "PROGRAM...": "file", "PACK": "file", "OLD": "file",
    "NEW": "file", "OLD_SHOP": "file", "PLAN": "file", "PLAN...": "file", "DIR": "folder", "FOLDER": "folder",
    "RULE": "rules", "[RULE|QUANTITY]": "quantities", "[TERM]": "words", "[TABLE]": "tables", "CARD": "materials",
    "--material NAME": "materials", "--tool NUMBER": "tools", "--tool TEXT": "tool texts", "--dial MARK": "marks",
    "window --tool TEXT": "tools", "material [NAME | FILE | check FILE]": "materials, file",
    "controller [NAME | FILE | check FILE]": "controllers, file",
}  # fmt: skip


def _setting(what: ContextVar[T]) -> Callable[[click.Context, click.Parameter, T | None], None]:
    """A callback that sets it until the command line has been worked off."""

    def heard(context: click.Context, option: click.Parameter, given: T | None) -> None:
        if given:
            token = what.set(given)
            context.find_root().call_on_close(lambda: what.reset(token))

    return heard


def colour_option() -> click.Option:
    return click.Option(
        ["--color"], type=click.Choice(["auto", "always", "never"]), expose_value=False, callback=_setting(COLOUR),
        help="Colour on the screen (usual: auto, on a terminal and without NO_COLOR).",
    )


def with_common(command: click.Command) -> click.Command:
    """The command with --color among its options, its names and files completed by shells."""
    if not any("--color" in option.opts for option in command.params):
        for each in command.params:
            own = f"{each.opts[0]} {each.metavar}" if isinstance(each, click.Option) else each.metavar or ""
            kind = OFFERED.get(f"{command.name} {own}") or OFFERED.get(own) or OFFERED.get(each.metavar or "")
            if kind is not None and each.type is click.STRING:
                each.type = _Offered(kind)
        command.params.append(colour_option())
    return command


class _Offered(type(click.STRING)):  # type: ignore[misc]
    """Text as any other, with what a shell may offer for it."""

    def __init__(self, kind: str) -> None:
        self.kind = kind

    def shell_complete(self, ctx: click.Context, param: click.Parameter, incomplete: str) -> list[CompletionItem]:
        from gclint.cli.complete import offers

        return offers(self.kind, ctx, param, incomplete)


def quiet_option(command: Callable[..., Any]) -> Callable[..., Any]:
    """Adds -q, --quiet."""
    return click.option(
        "-q", "--quiet", is_flag=True, expose_value=False, callback=_setting(QUIET),
        help="Nothing for people on the screen: no sheet, no progress. Forms for machines, files, problems and the "
        "exit code stay.",
    )(command)

"""Groups of verbs; the modules of lazy ones are imported when they are used: `gclint --version` loads none."""

from __future__ import annotations

from importlib import import_module
from pathlib import Path
from typing import Any

import click

from gclint.cli.common import with_common


class Group(click.Group):
    """Names what there is where a verb is not there; `missing` says where it is not."""

    def __init__(self, *args: Any, missing: str, **rest: Any) -> None:
        super().__init__(*args, **rest)
        self.missing = missing

    def resolve_command(
        self, context: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        known = self.list_commands(context)
        if args and args[0] not in known and not args[0].startswith("-"):
            from gclint.problem import nearest

            tail = nearest(args[0], known)
            if context.parent is None and Path(args[0]).exists():
                tail = f"; it is a file or a folder: gclint check {args[0]}"
            raise click.UsageError(f'there is no "{args[0]}" {self.missing}{tail}')
        return super().resolve_command(context, args)

    def get_command(self, context: click.Context, name: str) -> click.Command | None:
        command = super().get_command(context, name)
        return None if command is None else with_common(command)


class LazyGroup(Group):
    """`verbs`: name, what it does. The verb `x` is the command `x` of the module `<prefix>x`."""

    def __init__(self, *args: Any, verbs: dict[str, str], prefix: str, heading: str, missing: str, **rest: Any) -> None:
        super().__init__(*args, missing=missing, **rest)
        self.verbs, self.prefix, self.heading = verbs, prefix, heading

    def list_commands(self, context: click.Context) -> list[str]:
        return list(self.verbs)

    def get_command(self, context: click.Context, name: str) -> click.Command | None:
        if name not in self.verbs:
            return None
        command: click.Command = getattr(import_module(f"{self.prefix}{name}"), name)
        return with_common(command)

    def format_commands(self, context: click.Context, formatter: click.HelpFormatter) -> None:
        with formatter.section(self.heading):
            formatter.write_dl(list(self.verbs.items()))

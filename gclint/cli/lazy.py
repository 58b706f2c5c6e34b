"""Groups of verbs; the modules of lazy ones are imported when they are used: `gclint --version` loads none."""

from __future__ import annotations

from importlib import import_module
from typing import Any

import click


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

            raise click.UsageError(f'there is no "{args[0]}" {self.missing}{nearest(args[0], known)}')
        return super().resolve_command(context, args)


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
        return command

    def format_commands(self, context: click.Context, formatter: click.HelpFormatter) -> None:
        with formatter.section(self.heading):
            formatter.write_dl(list(self.verbs.items()))

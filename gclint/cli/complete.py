"""What the shell offers at the Tab key: names of materials, rules, words, controllers, tools and marks, and files.

None of this raises: a shell has no place for it. It is loaded only while a shell asks (`gclint/cli/common.py`).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

import click
from click.shell_completion import CompletionItem

Names = Callable[[click.Context], Iterable[tuple[str, str]]]  # (name, what it is)
MOST_HELP = 60  # characters


def offers(kind: str, context: click.Context, parameter: click.Parameter, text: str) -> list[CompletionItem]:
    """What completes `text` where something of this kind stands: a key of NAMES, "file", "folder" or "NAMES, file"."""
    if kind in ("file", "folder"):
        return [CompletionItem(text, type="file" if kind == "file" else "dir")]
    name, _, otherwise = kind.partition(", ")
    before = context.params.get(parameter.name or "")
    if otherwise and before:  # `material check FILE`
        return offers(otherwise, context, parameter, text)
    try:
        names = [each for each in NAMES[name](context) if each[0].startswith(text)]
        found = [CompletionItem(each, help=_short(says)) for each, says in names]
    except Exception:  # a broken shop file: its own command says what is wrong
        found = []
    return found if found or not otherwise else offers(otherwise, context, parameter, text)


def _short(says: str) -> str:
    line = " ".join(says.split())
    return line if len(line) <= MOST_HELP else line[: MOST_HELP - 3] + "..."


def _materials(context: click.Context) -> Iterable[tuple[str, str]]:
    from gclint.cards.material import material, names

    return ((name, material(name).title) for name in names())


def _controllers(context: click.Context) -> Iterable[tuple[str, str]]:
    from gclint.cards.controller import controller, names

    return ((name, controller(name).title) for name in names())


def _rules(context: click.Context) -> Iterable[tuple[str, str]]:
    from gclint.packs.shipped_packs import shipped_packs

    return sorted((rule.name, rule.text.title) for pack in shipped_packs() for rule in pack.rules)


def _rules_and_quantities(context: click.Context) -> Iterable[tuple[str, str]]:
    from gclint.knowledge.quantities import quantities

    return (*_rules(context), *((name, "a figure of the reports") for name in quantities()))


def _words(context: click.Context) -> Iterable[tuple[str, str]]:
    from gclint.knowledge.glossary import glossary

    return ((name, entry.means) for name, entry in glossary().items())


def _tables(context: click.Context) -> Iterable[tuple[str, str]]:
    from gclint.facts.registry import tables

    return ((name, "") for name in tables())


def _tools(context: click.Context) -> Iterable[tuple[str, str]]:
    """The tools of the shop file that the command line names, or that is used in this folder."""
    from gclint.setup.declare import Options, declare

    declared = declare(Options(shop=context.params.get("shop"), job=context.params.get("job")), None)
    tools = declared.shop.tool if declared.shop else ()
    return ((str(tool.number), tool.name or tool.shape) for tool in tools)


def _marks(context: click.Context) -> Iterable[tuple[str, str]]:
    from gclint.setup.declare import Options, declare

    declared = declare(Options(shop=context.params.get("shop"), job=context.params.get("job")), None)
    spindle = declared.shop.spindle if declared.shop else None
    return ((mark.mark, f"{mark.stated:g} rev/min") for mark in (spindle.dial if spindle else ()))


def _tool_texts(context: click.Context) -> Iterable[tuple[str, str]]:
    """Number and shape of a tool: "1: flat", after which its diameter is missing."""
    from gclint.tables.setup import SHAPES

    numbers = [number for number, _ in _tools(context)] or ["1"]
    return ((f"{number}: {shape}", "then its diameter") for number in numbers for shape in SHAPES)


NAMES: dict[str, Names] = {
    "materials": _materials, "controllers": _controllers, "rules": _rules, "quantities": _rules_and_quantities,
    "words": _words, "tables": _tables, "tools": _tools, "tool texts": _tool_texts, "marks": _marks,
}  # fmt: skip

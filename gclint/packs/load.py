"""Reads packs from their TOML texts, and holds all packs in force against each other."""

from __future__ import annotations

from pathlib import Path

from gclint.packs.pack import CORE, GROUP_FILE, GroupText, NarrowText, Pack, PackText, RegradeText, RuleFile
from gclint.packs.placed import placed
from gclint.problem import Problem, nearest


def load_pack(path: Path) -> Pack:
    """Read, check and compile one house pack. Raises Problem."""
    from gclint.toml.file import read_text

    return compile_pack(read_text(path, "rule pack"), str(path), house=True)


def compile_pack(source: str, path: str, house: bool = False) -> Pack:
    """The checked form of a pack's TOML text; `path` is named in messages. Raises Problem."""
    from gclint.packs.compile_rule import compile_rules  # a check by shipped rules does not need it
    from gclint.toml.file import decode

    written = decode(source, PackText, path)
    rules = compile_rules(written, source, path)
    return Pack(written.pack, written.about, path, rules, written.regrade, written.narrow, house)


def compile_group(texts: dict[str, str], folder: str) -> Pack:
    """The checked form of a pack in a folder; `texts` are its files, by name. Raises Problem."""
    from gclint.packs.compile_rule import compile_rule_file
    from gclint.toml.file import decode

    group = decode(texts[GROUP_FILE], GroupText, f"{folder}/{GROUP_FILE}")
    rules = []
    for name, source in texts.items():
        if name != GROUP_FILE:
            written = decode(source, RuleFile, f"{folder}/{name}")
            rules.append(compile_rule_file(written.rule, source, f"{folder}/{name}", group.pack))
    return Pack(group.pack, group.about, folder, tuple(rules), split=True)


def check_together(packs: tuple[Pack, ...]) -> None:
    """Refuse a rule that two packs define, and what a pack says about rules that are not there."""
    owner: dict[str, Pack] = {}
    looks_at: dict[str, str] = {}
    for pack in packs:
        for number, rule in enumerate(pack.rules):
            if rule.name in owner:
                there = owner[rule.name].file_of(rule.name)
                said = f'the rule "{rule.name}" also stands in {there}; give it a name of its own'
                raise _in_file(pack, ("rule", number, "name"), said)
            owner[rule.name], looks_at[rule.name] = pack, rule.text.looks_at
    for pack in packs:
        for number, rule in enumerate(pack.rules):
            for place, name in enumerate(rule.text.instead_of):
                if name not in owner:
                    raise _in_file(pack, ("rule", number, "instead_of", place), _no_rule(name, owner))
            for place, name in enumerate(rule.text.cause_of):
                if name not in owner and name not in {each.name for each in packs}:
                    raise _in_file(pack, ("rule", number, "cause_of", place), _no_rule(name, owner))
            for begin, names in rule.text.cause_of_found.items():
                for place, name in enumerate(names):
                    if name not in owner and name not in {each.name for each in packs}:
                        raise _in_file(pack, ("rule", number, "cause_of_found", begin, place), _no_rule(name, owner))
        _check_house(pack, owner, looks_at)
    _once_each(packs)


def _check_house(pack: Pack, owner: dict[str, Pack], looks_at: dict[str, str]) -> None:
    from gclint.facts.registry import tables

    entries: list[tuple[str, int, RegradeText | NarrowText]] = []
    entries += [("regrade", n, entry) for n, entry in enumerate(pack.regrades)]
    entries += [("narrow", n, entry) for n, entry in enumerate(pack.narrows)]
    for kind, number, entry in entries:
        if entry.rule not in owner:
            raise _in_file(pack, (kind, number, "rule"), _no_rule(entry.rule, owner))
        if owner[entry.rule] is pack:
            raise _in_file(pack, (kind, number, "rule"), "this rule stands in this very pack; write it there")
        if looks_at[entry.rule] == CORE:
            raise _in_file(pack, (kind, number, "rule"), "gclint's own machinery finds this, and no pack changes it")
        by_tool = isinstance(entry, NarrowText) and (entry.tool or entry.except_tool)
        table = tables()[looks_at[entry.rule]]
        if by_tool and table.tool is None:
            key = "tool" if getattr(entry, "tool", ()) else "except_tool"
            says = f'"{entry.rule}" looks at {table.meaning}, which belongs to no tool'
            raise _in_file(pack, (kind, number, key), says)


def _once_each(packs: tuple[Pack, ...]) -> None:
    graded: dict[str, Pack] = {}
    for pack in packs:
        for number, entry in enumerate(pack.regrades):
            if entry.rule in graded:
                says = f'"{entry.rule}" has a grade already, from {graded[entry.rule].path}; one pack must decide'
                raise _in_file(pack, ("regrade", number, "rule"), says)
            graded[entry.rule] = pack


def _no_rule(name: str, known: dict[str, Pack]) -> str:
    near = nearest(name, tuple(known))
    return f'there is no rule "{name}"{near if near.startswith("; nearest") else "; `gclint why` lists them"}'


def _in_file(pack: Pack, key: tuple[str | int, ...], says: str) -> Problem:
    from gclint.toml.file import read_text

    path = pack.path
    if pack.split and key[0] == "rule" and isinstance(key[1], int):
        path, key = pack.file_of(pack.rules[key[1]].name), ("rule", 0, *key[2:])
    try:
        source = read_text(Path(path), "rule pack")
    except Problem:  # a pack that was never a file
        return Problem(says, path)
    return placed(source, path, key, says)

"""Proves rules by their own examples: what must be found is found, what must be left alone is left alone."""

from __future__ import annotations

import tempfile
from pathlib import Path
from typing import TYPE_CHECKING

from gclint.problem import NotBuilt, Problem

if TYPE_CHECKING:
    from gclint.packs.pack import Example, Pack, Rule
    from gclint.run import Tables
    from gclint.tables.finding import Finding

PROGRAM = "example.nc"


def unproved(pack: Pack, rule: Rule, beside: tuple[Pack, ...] = ()) -> list[str]:
    """What of a rule's examples does not come out as written, one sentence each; empty where all do.

    `beside` are further packs in force, whose rules may stand in for one another (`instead_of`).
    """
    wrong: list[str] = []

    def run(example: Example, says: str) -> list[Finding] | None:
        try:
            return findings(example, (pack, *beside), rule.name)
        except NotBuilt:
            raise  # says nothing about this example, and would be said of each
        except Problem as problem:
            wrong.append(f"{says}: its declarations are wrong: {problem.says}")
            return None

    for number, example in enumerate(rule.text.must_find, 1):
        says = f"{rule.name}, must_find {number} ({example.says})"
        found = run(example, says)
        if found is None:
            continue
        if not found:
            wrong.append(f"{says}: nothing is found")
        elif example.line is not None and all(f.line != example.line for f in found):
            wrong.append(f"{says}: found on line {found[0].line}, not on line {example.line}")
        elif example.grade is not None and all(f.grade != example.grade for f in found):
            wrong.append(f"{says}: found with the grade {found[0].grade}, not {example.grade}")
        elif example.findings is not None and len(found) != example.findings:
            wrong.append(f"{says}: found {len(found)} times, not {example.findings}")
    for number, example in enumerate(rule.text.must_leave, 1):
        says = f"{rule.name}, must_leave {number} ({example.says})"
        found = run(example, says)
        if found:
            wrong.append(f"{says}: found on line {found[0].line}")
    if not rule.text.must_find:
        wrong.append(f"{rule.name}: has no example that must be found")
    if not rule.text.must_leave:
        wrong.append(f"{rule.name}: has no example that must be left alone")
    return wrong


def findings(example: Example, packs: tuple[Pack, ...], rule: str) -> list[Finding]:
    """The findings of one rule in an example, accepted ones left out. Raises Problem on a faulty example."""
    return judged(example, packs, rule)[1]


def judged(example: Example, packs: tuple[Pack, ...], rule: str) -> tuple[Tables, list[Finding]]:
    """As `findings`, with the tables they come from."""
    from gclint.judge.judge import judge

    tables = tables_of(example)
    said = judge(tables.program, tables.motion, tables.timing, tables.engagement, tables.cutting, tables.setup, packs)
    return tables, [f for f in said.findings if f.rule == rule and f.accepted is None]


def tables_of(example: Example) -> Tables:
    """Every table of an example's program, not judged. Raises Problem on a faulty example."""
    from gclint.check import trace
    from gclint.setup.declare import Options

    with tempfile.TemporaryDirectory() as folder:
        files: dict[str, str] = {}
        for name, text in (("shop", example.shop), ("job", example.job)):
            if text is not None:
                files[name] = str(Path(folder) / f"{name}.toml")
                Path(files[name]).write_text(text, encoding="utf-8")
        for name, text in example.files.items():
            if Path(name).name != name or not name.endswith(".toml"):
                raise Problem(f'an example may have files beside it whose plain name ends in .toml, not "{name[:60]}"')
            (Path(folder) / name).write_text(text, encoding="utf-8")
        material = str(Path(folder) / example.material) if example.material in example.files else example.material
        options = Options(material, example.tools, example.stock, files.get("shop"), files.get("job"))
        path = str(Path(folder) / PROGRAM)
        return trace(example.program.encode(), PROGRAM, options, path)

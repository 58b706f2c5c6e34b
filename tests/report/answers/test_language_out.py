"""The reference page of the rule language: it is what the code says, and a pack can be written by it alone."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

import pytest

from gclint.check import check
from gclint.facts.registry import facts_of, names_of, neighbour_facts, tables
from gclint.language.dimensions import UNITS
from gclint.language.expression import FUNCTIONS, TRUTH, compile_expression
from gclint.packs.load import check_together, compile_pack, load_pack
from gclint.packs.shipped_packs import shipped_packs
from gclint.report.answers.language_out import EXAMPLE, EXPRESSIONS, page
from gclint.rule_proof import unproved
from gclint.setup.declare import Options

ROOT = Path(__file__).parents[3]
PAGE = page()
BLOCKS = re.findall(r"```toml\n(.*?)```", PAGE, re.DOTALL)
SAMPLE = ROOT / "sample_programs" / "lowtide-house.toml"


def test_the_page_beside_the_rules_is_the_one_the_code_makes() -> None:
    assert (ROOT / "rules" / "LANGUAGE.md").read_text(encoding="utf-8") == PAGE, (
        "run  gclint pack facts --as markdown --out rules/LANGUAGE.md"
    )


@pytest.mark.parametrize("file", ["README.md", "DEVELOPERS.md"])
def test_the_page_is_linked(file: str) -> None:
    assert "](rules/LANGUAGE.md)" in (ROOT / file).read_text(encoding="utf-8")


@pytest.mark.parametrize(("expression", "table"), [(expression, table) for table, expression, _ in EXPRESSIONS])
def test_every_condition_on_the_page_means_something(expression: str, table: str) -> None:
    assert compile_expression(expression, names_of(table), TRUTH).kind == TRUTH


def test_every_table_fact_function_and_unit_is_on_the_page() -> None:
    for name, table in tables().items():
        assert f"| `{name}` | {table.meaning} |" in PAGE
        shared = neighbour_facts(table)
        for fact in facts_of(name):
            if "." not in fact or fact not in shared:
                assert f"| `{fact}` |" in PAGE, fact
    for function in FUNCTIONS.values():
        assert f"| `{function.call}` |" in PAGE
    for unit in UNITS:
        assert not unit or f"`{unit}`" in PAGE


def test_the_key_tables_name_every_key_with_its_meaning() -> None:
    part = PAGE[PAGE.index("## The keys of a pack") : PAGE.index("## Expressions")]
    rows = re.findall(r"^\| `(\w+)` \| ([^|]+) \|( yes | +)\| ?([^|]*)\|$", part, re.MULTILINE)
    keys = {row[0] for row in rows}
    assert keys >= {"pack", "rule", "regrade", "narrow", "because", "must_find", "instead_of", "worst_after", "files"}
    assert [row[0] for row in rows if not row[3].strip() and row[0] not in ("grade", "text")] == []


@pytest.mark.parametrize("block", BLOCKS, ids=range(len(BLOCKS)))
def test_every_piece_of_a_pack_on_the_page_can_be_read(block: str) -> None:
    tomllib.loads(block)


@pytest.mark.parametrize("block", [block for block in BLOCKS if "pack = " in block], ids=["first", "whole"])
def test_the_packs_on_the_page_are_proved(block: str) -> None:
    pack = compile_pack(block, "house.toml", house=True)
    check_together((*shipped_packs(), pack))
    assert [unproved(pack, rule) for rule in pack.rules] == [[] for _ in pack.rules]


def test_the_changes_to_other_packs_on_the_page_are_in_order() -> None:
    (block,) = [block for block in BLOCKS if block.startswith("[[regrade]]")]
    check_together((*shipped_packs(), compile_pack(f'pack = "a"\nabout = "b"\n{block}', "house.toml", house=True)))


def test_the_sample_house_pack_is_the_one_on_the_page() -> None:
    assert SAMPLE.read_text() == EXAMPLE.read_text()
    assert SAMPLE.read_text().strip() in PAGE


def house_findings(program: bytes) -> list[tuple[str, int]]:
    folder = ROOT / "sample_programs" / "drift-box"
    options = Options(job=str(folder / "job.toml"))
    checked = check(program, "drift-box.nc", options, str(folder / "drift-box.nc"))
    own = {rule.name for rule in load_pack(SAMPLE).rules}
    return sorted((f.rule, f.line) for f in checked.findings if f.rule in own)


def test_the_house_pack_fails_the_right_file_and_no_mended_one() -> None:
    program = (ROOT / "sample_programs" / "drift-box" / "drift-box.nc").read_bytes()
    assert house_findings(program) == [("no-stop-before-tool-change", 23), ("thin-tool-too-deep", 42)]
    stopped = program.replace(b"T10 M6", b"M0\nT10 M6")
    assert house_findings(stopped) == [("thin-tool-too-deep", 43)]
    shallow = re.sub(rb"Z-[56]\.", b"Z-4.", stopped)
    assert house_findings(shallow) == []

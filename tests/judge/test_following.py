"""Findings with one cause are one entry: the cause, with what follows from it folded under it."""

from __future__ import annotations

import random

import pytest

from gclint.digest.sheet_words import open_findings
from gclint.judge.following import _cause_of, follow, with_ids
from gclint.packs.pack import REACHES
from gclint.packs.shipped_packs import shipped_packs
from gclint.tables.finding import Change, Checked, Finding
from gclint.tables.setup import GRADES
from tests.judge.try_judge import tried

HEAD = "T1 M6\nS16000 M3\nG4 P4\nG0 X20 Y20 Z20\nG0 Z2\n"
SQUARE = "G1 X{far} Z-3 F1200\nG1 Y{far}\nG1 X20\nG1 Y20\nG0 Z20\nM5\nM30\n"
FLAT = "1: flat 6mm 2fl up-cut"
STOCK = "120 x 80 x 18 mm at 0 0"
IN_INCHES = "G20 G90 G94 G17 G54\n" + HEAD + SQUARE.format(far=60)
IN_MM = IN_INCHES.replace("G20", "G21")


def judged(program: str, tool: str = FLAT, stock: str = STOCK, job: str | None = None) -> Checked:
    return tried(program, tool, material="birch-plywood", stock=stock, job=job)


def root_of(checked: Checked, rule: str) -> Finding:
    return next(f for f in checked.findings if f.rule == rule and f.follows is None)


def followers(checked: Checked, root: Finding) -> set[str]:
    return {f.rule for f in checked.findings if f.follows == root.id}


def test_wrong_units_are_one_entry_with_all_that_comes_of_them() -> None:
    checked = judged(IN_INCHES)
    root = root_of(checked, "units-suspect")
    assert {"cuts-table", "outside-stock"} <= followers(checked, root)
    assert root.grade == "halt"  # as the gravest of them, and not as the rule alone
    assert "It brings with it: cuts-table (lines 7" in root.happens
    assert [f.rule for f in open_findings(checked) if f.grade != "consider"] == ["units-suspect"]
    assert "1 thing to put right first" in sheet(IN_INCHES)


def test_the_same_program_in_its_own_unit_has_no_such_entry() -> None:
    assert all(f.follows is None for f in judged(IN_MM).findings)


def test_the_wrong_tool_is_the_cause_of_what_this_tool_does_alone() -> None:
    program = IN_MM.replace("T1 M6", "(T1 12 mm flat end mill)\nT1 M6").replace("Z-3", "Z-16")
    checked = judged(program, "1: flat 3mm 2fl up-cut")
    root = root_of(checked, "tool-not-as-declared")
    mine = followers(checked, root)
    assert mine
    assert mine.isdisjoint({"state-unstated", "tool-length-not-set", "outside-stock"})


def test_a_blank_that_is_too_thin_is_one_entry() -> None:
    deep = SQUARE.format(far=60).replace("Z-3", "Z-9").replace("G0 Z20\n", "G1 X60 Z-12\nG0 Z20\n")
    checked = judged("G21 G90 G94 G17 G54\n" + HEAD + deep, stock="120 x 80 x 6 mm at 0 0")
    assert len([f for f in checked.findings if f.rule == "cuts-table"]) > 1
    assert len([f for f in open_findings(checked) if f.rule == "cuts-table"]) == 1


def test_what_is_accepted_neither_follows_nor_leads() -> None:
    accept = '[[accept]]\nrule = "units-suspect"\nbecause = "it is a sign for a wall"\n'
    checked = judged(IN_INCHES, job=accept)
    assert next(f for f in checked.findings if f.rule == "units-suspect").accepted
    assert {f.follows for f in checked.findings} == {None}
    accept = '[[accept]]\nrule = "outside-stock"\nbecause = "it lies on waste"\n'
    checked = judged(IN_INCHES, job=accept)
    assert {f.follows for f in checked.findings if f.accepted} == {None}


@pytest.mark.parametrize("program", [IN_INCHES, IN_MM, IN_MM.replace("Z-3", "Z-30")])
def test_nothing_is_lost_and_no_grade_is_new(program: str) -> None:
    checked = judged(program)
    ids = [f.id for f in checked.findings]
    assert len(set(ids)) == len(ids)
    by_id = {f.id: f for f in checked.findings}
    for finding in checked.findings:
        if finding.follows is not None:
            root = by_id[finding.follows]
            assert root.follows is None
            assert GRADES.index(root.grade) <= GRADES.index(finding.grade)
    open_ = [f.grade for f in open_findings(checked)]
    assert min(map(GRADES.index, open_)) == min(GRADES.index(f.grade) for f in checked.findings if not f.accepted)


def sheet(program: str) -> str:
    from gclint.check import run
    from gclint.report.text.terminal import sheet as write
    from gclint.report.text.text_sheet import TextSheet
    from gclint.setup.declare import Options

    paper = TextSheet(80)
    write(run(program.encode(), "try.nc", Options("birch-plywood", (FLAT,), STOCK), "/nowhere/try.nc"), paper, "0")
    return " ".join(paper.text.split())


CONTOUR = """G1 Z-3 F300
G1 {on} X75 Y40 F900
G1 Y55
G1 X45
G1 Y30
G1 X75
G1 Y40
G1 {off} X60 Y40
G0 Z20
M5
M30
"""


def plain_hobby(contour: str) -> Checked:
    """On a controller that takes neither M6 nor compensation."""
    shop = '[machine]\ncontroller = "hobby-plain"\n[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 mm"\n'
    shop += "flutes = 2\n"
    program = "G21 G90 G94 G17 G54\nS16000 M3\nG4 P4\nG0 X60 Y40 Z20\nG0 Z2\n" + contour
    return tried(program, material="birch-plywood", stock=STOCK, shop=shop)


def test_what_comes_of_a_refused_compensation_is_one_entry_with_it() -> None:
    """The block of G42 is not executed, so its F900 is not either, and the contour is cut at F300."""
    checked = plain_hobby(CONTOUR.format(on="G42 D1", off="G40"))
    root = next(f for f in checked.findings if f.rule == "code-refused" and f.line == 7)
    assert "chip-too-thin" in followers(checked, root)
    alone = plain_hobby(CONTOUR.format(on="", off="").replace("F900", "F300"))
    assert "chip-too-thin" in {f.rule for f in open_findings(alone)}  # without that cause it stands for itself


def test_a_refused_code_that_moves_nothing_takes_nothing_with_it() -> None:
    checked = plain_hobby("M6\n" + CONTOUR.format(on="", off="").replace("F900", "F300"))
    assert "code-refused" in {f.rule for f in open_findings(checked)}
    assert "chip-too-thin" in {f.rule for f in open_findings(checked)}


# The rule in its obvious form, root by root and finding by finding: what the index of `follow` must come to as well.


def slow(findings: list[Finding]) -> dict[str, str]:
    """Name of each follower -> name of its root."""
    texts = {rule.name: (rule.text, pack.name) for pack in shipped_packs() for rule in pack.rules}
    roots = [n for n, one in enumerate(findings) if one.accepted is None and _cause_of(one, texts)]
    roots.sort(key=lambda n: (REACHES.index(texts[findings[n].rule][0].reaches), n))
    root_of: dict[int, int] = {}

    def top(n: int) -> int:
        while n in root_of:
            n = root_of[n]
        return n

    for root in roots:
        first, text = findings[root], texts[findings[root].rule][0]
        for n, one in enumerate(findings):
            if n in (root, top(root)) or n in root_of or one.accepted is not None:
                continue
            causes = _cause_of(first, texts)
            named = one.rule in causes or (one.rule != first.rule and texts[one.rule][1] in causes)
            if named and {
                "program": True,
                "tool": first.tool is not None and one.tool == first.tool,
                "behind": min(one.lines) >= first.line or one.worst_line >= first.line >= one.line,
                "places": set(one.lines) <= set(first.lines)
                or bool(set(first.lines) & {one.worst_line, *one.set_on.values()}),
            }[text.reaches]:
                root_of[n] = root
    return {findings[n].id: findings[top(n)].id for n in root_of}


def made_up(number: int, seed: int, lines: int = 60) -> list[Finding]:
    dice = random.Random(seed)
    rules = [rule.name for pack in shipped_packs() for rule in pack.rules]
    made = []
    for _ in range(number):
        mine = sorted({dice.randrange(1, lines) for _ in range(dice.randrange(1, 4))})
        made.append(Finding(
            rule=dice.choice(rules), grade=dice.choice(GRADES), line=mine[0], last_line=mine[-1], lines=tuple(mine),
            worst_line=dice.choice(mine), column=1, count=1, tool=dice.choice((None, 1, 2)), found=None, window=None,
            happens="", change=Change(""), set_on={"F": dice.randrange(1, lines)},
            accepted="known" if dice.random() < 0.05 else None,
        ))  # fmt: skip
    return list(with_ids(made))


@pytest.mark.parametrize("seed", range(12))
def test_the_index_finds_the_same_followers_as_looking_at_every_pair(seed: int) -> None:
    findings = made_up(40, seed)
    told = {one.id: one.follows for one in follow(findings, shipped_packs()) if one.follows}
    assert told == slow(findings)

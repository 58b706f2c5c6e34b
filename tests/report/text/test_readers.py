"""The same run for the one at the machine and for the one who signs; shops and programs are invented."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from gclint.check import run
from gclint.digest.sheet_words import verdict
from gclint.digest.words import Lengths
from gclint.report.page.page_out import page
from gclint.report.text.instructor_out import instructor_sheet
from gclint.report.text.operator_out import operator_sheet, sketch
from gclint.report.text.terminal import sheet
from gclint.report.text.text_sheet import TextSheet
from gclint.run import Run
from gclint.setup.declare import Options
from gclint.tables.setup_sheet import Sides
from tests.digest.test_setup_sheet import JOB, SHOP, TWO

HOUSE = """
pack = "lowtide"
about = "Rules of the Lowtide workshop (invented)."

[[regrade]]
rule = "straight-plunge"
grade = "consider"
because = "the small mill pecks by itself"
"""


@pytest.fixture
def made(tmp_path: Path) -> Callable[..., Run]:
    def make(program: str = TWO, job: str = "", card: str = "shop-3-axis", **files: str) -> Run:
        (tmp_path / "shop.toml").write_text(SHOP.replace("CARD", card))
        head = 'shop = "shop.toml"\n' + "".join(f'packs = ["{name}.toml"]\n' for name in files)
        (tmp_path / "job.toml").write_text(head + JOB.replace('"Z"', '"stock-top"') + job)
        for name, text in files.items():
            (tmp_path / f"{name}.toml").write_text(text)
        path = tmp_path / "try.nc"
        path.write_text(program)
        return run(program.encode(), "try.nc", Options(), str(path))

    return make


def plain(sheet: Callable[[Run, TextSheet, str], None], done: Run) -> str:
    paper = TextSheet()
    sheet(done, paper, "0")
    return paper.text


def joined(text: str) -> str:
    return " ".join(text.split())


def test_the_machine_sheet_has_all_that_is_needed_at_the_machine(made: Callable[..., Run]) -> None:
    done = made()
    text = joined(plain(operator_sheet, done))
    for said in (
        "MACHINE SHEET", done.checked.fingerprint[7:19],
        "the front left corner of the blank; Z on the top of the blank",
        "left 0, right 120, front 0, back 80 mm", "Z -18 mm, 0.5 mm into the table", "Z 10 mm", "six up-cut",
        "31 mm", "dial D", "dial B", "line 10 (M0", 'The program says: "turn the clamp".', "[ ] Put tool 2 in.",
        "[ ] Spindle off; wait until it stands still.",
        "IF IT IS BROKEN OFF", "G21 G90 G17 G94 G54 | T1 M6 | S18000 M3", "X80 Y10",
        "A GOOD CHIP", "small, cool shavings", "an even hum", "common practice", "NOT JUDGED",
        "thickness measured (taken as 17.5 mm) ____", "dial set to D for the first tool", "X and Y zero set",
        "initials ____",
    ):  # fmt: skip
        assert said in text, said


T_ALONE = "G21 G90 G94 G17 G54\nT1\nS18000 M3\nG0 Z5\nG0 X20 Y20\nG1 Z-2 F300\nG1 X80 F1500\nG0 Z5\nM5\nM30\n"


@pytest.mark.parametrize("form", ["text", "page"])
def test_no_stop_is_claimed_where_the_machine_runs_on(made: Callable[..., Run], form: str) -> None:
    """One T, no M0, on a card that passes over M6: the tool must be in before the start, and nothing waits."""
    done = made(T_ALONE, card="hobby-3-axis")
    if form == "text":
        text = joined(plain(operator_sheet, done))
        start = text.index("BEFORE YOU PRESS START")
    else:
        text = page(done, "0", "operator")
        text = joined(re.sub(r"<[^>]*>", " ", re.sub(r"<(script|style).*?</\1>", " ", text, flags=re.DOTALL)))
        start = text.index("Before you press start")
    for claim in (r"stops here", r"stops for you", r"machine waits", r"program stops", r"where the program stops"):
        assert not re.search(claim, text, re.IGNORECASE), claim
    assert "tool 1 (six up-cut) in" in text[start:]
    assert "Spindle off; wait until it stands still." in text[start:]


@pytest.mark.parametrize("writer", [operator_sheet, instructor_sheet, sheet])
def test_cautions_stand_short_at_the_head_of_every_sheet(made: Callable[..., Run], writer: Any) -> None:
    done = made()
    head = joined(plain(writer, done))[:1600]
    assert head.index(verdict(done.checked)[:30]) < head.index("No promise")
    assert "Spindle off, wait until it stands still" in head
    assert all(caution.partition(": ")[2] in head for caution in done.material_cautions)
    assert done.material_cautions


def test_findings_are_told_only_where_they_concern_running(made: Callable[..., Run]) -> None:
    done = made(TWO.replace("G1 X80 F1200\nG0 Z10\nM5\nM30", "G1 X80 F120\nG0 X20 Y70\nG0 Z10\nM5\nM30"))
    grades = {finding.grade for finding in done.checked.findings}
    assert grades == {"halt", "change", "consider"}
    text = joined(plain(operator_sheet, done))
    assert "DO NOT RUN (1)" in text
    assert "[ ] Do not run until this is put right: A rapid goes through standing material (line 22" in text
    assert "CHANGE BEFORE CUTTING" in text
    assert "to consider; see gclint check --for author" in text
    for finding in done.checked.findings:
        if finding.grade == "consider":
            assert finding.happens not in text


def test_the_sketch_shows_zero_the_blank_and_the_cut() -> None:
    lines = sketch(Sides(0, 100, 0, 50), Sides(-20, 80, -10, 40), Lengths(inch=False))
    drawn = [line for line in lines if set(line.strip()) & set("+|")]
    assert lines[0].strip() == "back 50"
    assert lines[-2].strip() == "front 0"
    assert sum("left 0" in line and "right 100" in line for line in lines) == 1
    assert drawn[-1].strip().startswith("O--")  # zero at the front left corner
    assert drawn[0].strip().startswith("+--")
    assert any("." in line for line in drawn[1:-1])
    assert "." not in drawn[0] + drawn[-1]
    assert max(map(len, lines)) <= 76


@pytest.mark.parametrize(
    ("blank", "row", "column"),
    [
        (Sides(50, 50, 25, 25), 0.5, 0.5),  # the middle
        (Sides(100, 0, 50, 0), 0.0, 1.0),  # the back right corner
        (Sides(-10, 110, -10, 60), 1.0, 0.0),  # outside, front left
    ],
)
def test_zero_stands_where_it_is(blank: Sides, row: float, column: float) -> None:
    lines = sketch(blank, None, Lengths(inch=False))[1:-2]
    at = next(n for n, line in enumerate(lines) if "O" in line)
    left = re.search(r"left -?\d+ ", "\n".join(lines))
    assert left is not None
    start = len(left[0])
    wide = max(len(re.sub(r" right .*", "", line)) for line in lines) - start - 1
    assert at / (len(lines) - 1) == pytest.approx(row, abs=0.1)
    assert (lines[at].index("O") - start) / wide == pytest.approx(column, abs=0.05)


def test_a_blank_that_is_no_size_at_all_is_drawn_all_the_same() -> None:
    assert any("O" in line for line in sketch(Sides(0, 0, 0, 0), None, Lengths(inch=True)))
    assert any("O" in line for line in sketch(Sides(0, 1e6, 0, 1e-6), None, Lengths(inch=True)))


def test_inches_stay_inches(made: Callable[..., Run]) -> None:
    inch = "G20 G90 G94 G17 G54\nT1 M6\nM3 S18000\nG0 Z0.4\nG0 X1 Y1\nG1 Z-0.1 F10\nG1 X3 F40\nG0 Z0.4\nM5\nM30\n"
    text = joined(plain(operator_sheet, made(inch)))
    assert "1.22 in out of the nut" in text
    assert "thickness measured (taken as 0.689 in)" in text
    assert " mm" not in text.partition("WHERE ZERO IS")[2].partition("NOT JUDGED")[0]


def test_what_the_one_who_signs_must_see(made: Callable[..., Run]) -> None:
    accept = '[[accept]]\nrule = "cuts-table"\nbecause = "the board is new"\nby = "Ines"\ngrade = "halt"\nplaces = 9\n'
    done = made(job=accept + '[[accept]]\nrule = "steep-ramp"\nbecause = "known"\n', house=HOUSE)
    text = joined(plain(instructor_sheet, done))
    for said in (
        done.checked.fingerprint[7:40], "straight-plunge: consider instead of", "the small mill pecks by itself",
        "cuts-table (9 places at most, GRADED DO NOT RUN): the board is new (Ines; job.toml, line",
        "steep-ramp: known (nobody is named; job.toml, line", "covers nothing here: take it out",
        "job file:", "shop file:", "rule pack:", "TAKEN AS GIVEN", "NOT JUDGED", "TO SIGN",
    ):  # fmt: skip
        assert said in text.replace(" ", "") or said in text, said
    used = {each.what: each for each in done.checked.used}
    assert set(used) == {"job file", "shop file", "rule pack"}
    for each in used.values():
        assert each.fingerprint[7:19] in text
    again = made(job=accept.replace("Ines", "Maren"), house=HOUSE)
    changed = {each.what for each in again.checked.used if each.fingerprint != used[each.what].fingerprint}
    assert changed == {"job file"}


def test_the_fail_grade_that_counts_is_told(made: Callable[..., Run]) -> None:
    said = 'the grade that fails here ("do not run" or "change before cutting")'
    assert said in joined(plain(instructor_sheet, made()))


def test_a_run_that_failed_has_a_sheet_for_everyone(made: Callable[..., Run], monkeypatch: pytest.MonkeyPatch) -> None:
    import gclint.stock.engage as stock

    def fails(*_: object) -> None:
        raise ZeroDivisionError("made to fail")

    monkeypatch.setattr(stock, "engage", fails)
    done = made()
    assert done.failed
    assert "try.nc" in plain(operator_sheet, done)
    assert "gclint itself failed" in joined(plain(instructor_sheet, done))

"""The JUnit document beside the run it tells of."""

from __future__ import annotations

from typing import Any
from xml.etree import ElementTree as Xml

from msgspec.structs import replace

from gclint.problem import Problem
from gclint.report.machine.junit_out import Junit
from gclint.run import Run
from gclint.tables.finding import Change

TITLES = {"chip-too-thin": "the chip is too thin", "cuts-table": "the table is cut", "long-tool": "the tool is long"}


def cases(*runs: Run) -> dict[str, Xml.Element]:
    writer = Junit()
    for run in runs:
        writer.add(run)
    return {case.get("name", ""): case for case in Xml.fromstring(writer.text(0).encode()).iter("testcase")}


def titled(run: Run, fail_at: str = "change") -> Run:
    return Run(run.checked, run.tables, fail_at, run.failed, TITLES)


def test_a_case_for_each_rule(make_run: Any, make_finding: Any) -> None:
    made = cases(titled(make_run(make_finding(), make_finding(grade="halt", line=9, lines=(9,)))))
    assert list(made) == [*TITLES]
    [failure] = made["chip-too-thin"]
    assert failure.tag == "failure"
    assert failure.get("message") == "The chip is too thin: lines 6, 7, and 1 more"
    assert "set F400 to F2226" in (failure.text or "")
    assert (failure.text or "").count("happens: ") == 2
    assert [child.tag for child in made["cuts-table"]] == ["skipped"]
    assert "blank's thickness" in made["cuts-table"][0].get("message", "")
    assert len(made["long-tool"]) == 0


def test_milder_and_accepted_findings_do_not_fail(make_run: Any, make_finding: Any) -> None:
    mild = make_finding("long-tool", "consider")
    known = make_finding(accepted="tried on scrap")
    made = cases(titled(make_run(mild, known)))
    assert [child.tag for child in made["long-tool"]] == ["system-out"]
    assert [child.tag for child in made["chip-too-thin"]] == ["system-out"]
    assert "accepted: tried on scrap" in (made["chip-too-thin"][0].text or "")
    stricter = cases(titled(make_run(mild, known), "consider"))
    assert [child.tag for child in stricter["long-tool"]] == ["failure"]
    assert [child.tag for child in stricter["chip-too-thin"]] == ["system-out"]
    milder = cases(titled(make_run(make_finding()), "halt"))
    assert [child.tag for child in milder["chip-too-thin"]] == ["system-out"]


def test_a_failure_inside_gclint_and_an_unreadable_program_are_errors(make_run: Any, make_finding: Any) -> None:
    broken = make_finding("internal-error", tool=None, found=None, window=None, change=Change(""))
    made = cases(titled(make_run(broken)))
    assert [child.tag for child in made["internal-error"]] == ["error"]
    writer = Junit()
    writer.add(titled(make_run()))
    writer.missed(Problem("this file is empty", "empty.nc"))
    root = Xml.fromstring(writer.text(2).encode())
    assert root.attrib == {"name": "gclint", "tests": str(len(TITLES) + 1), "failures": "0", "errors": "1"}
    assert root[1].attrib == {"name": "empty.nc", "tests": "1", "failures": "0", "errors": "1", "skipped": "0"}
    assert root[1][0][0].text == "empty.nc: this file is empty"


def test_characters_that_xml_cannot_hold_are_marked(make_run: Any, make_finding: Any) -> None:
    run = make_run(make_finding(happens="a \x1b]]> <b> & \x00 \udcff \ufffe end"), path="a<\x07>\udcff.nc")
    run = titled(Run(replace(run.checked, texts={6: "G1 (\x01\x0b)"}), run.tables, "change"))
    made = cases(run)["chip-too-thin"]
    text = made[0].text or ""
    assert "A \ufffd]]> <b> & \ufffd \ufffd \ufffd end" in text
    assert "line 6 reads: G1 (\ufffd\ufffd)" in text
    assert made.get("classname") == "a<\ufffd>\ufffd.nc"


def test_the_same_input_gives_the_same_bytes(make_run: Any, make_finding: Any) -> None:
    def text() -> str:
        writer = Junit()
        writer.add(titled(make_run(make_finding())))
        return writer.text(1)

    assert text() == text()

"""Lines, annotations and quality, beside the run they tell of."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from gclint.problem import Problem
from gclint.report.machine.annotations_out import Annotations
from gclint.report.machine.lines_out import Lines
from gclint.report.machine.quality_out import Quality

LINE = re.compile(r"(?P<file>.+?):(?P<line>\d+):(?P<column>\d+): (?P<grade>halt|change|consider): (?P<rule>[\w-]+): .+")
COMMAND = re.compile(r"::(?P<command>error|warning|notice) (?P<properties>[^:]*)::(?P<message>.+)")

# The issue of github.com/codeclimate/platform, spec/analyzers/SPEC.md (commit 73db926), "Data types", written as a
# schema: what is required there, its values, and nothing beside.
_PLACE = {
    "type": "object", "required": ["path", "lines"], "additionalProperties": False,
    "properties": {
        "path": {"type": "string", "minLength": 1},
        "lines": {
            "type": "object", "required": ["begin", "end"], "additionalProperties": False,
            "properties": {"begin": {"type": "integer", "minimum": 1}, "end": {"type": "integer", "minimum": 1}},
        },
    },
}  # fmt: skip
_CATEGORIES = [
    "Bug Risk", "Clarity", "Compatibility", "Complexity", "Duplication", "Performance", "Security", "Style",
]  # fmt: skip
ISSUES = {
    "type": "array",
    "items": {
        "type": "object", "additionalProperties": False,
        # hosts ask for the fingerprint and the severity as well, which the specification leaves open
        "required": ["type", "check_name", "description", "categories", "location", "severity", "fingerprint"],
        "properties": {
            "type": {"const": "issue"},
            "check_name": {"type": "string", "minLength": 1},
            "description": {"type": "string", "pattern": r"^[^\r\n]+$"},
            "categories": {"type": "array", "minItems": 1, "items": {"enum": _CATEGORIES}},
            "location": _PLACE,
            "trace": {
                "type": "object", "required": ["locations"], "additionalProperties": False,
                "properties": {"locations": {"type": "array", "items": _PLACE}, "stacktrace": {"type": "boolean"}},
            },
            "severity": {"enum": ["info", "minor", "major", "critical", "blocker"]},
            "fingerprint": {"type": "string", "minLength": 1},
        },
    },
}  # fmt: skip


@pytest.fixture
def findings(make_finding: Any) -> list[Any]:
    return [
        make_finding(grade="halt", line=4, lines=(4, 9), worst_line=9, column=3),
        make_finding("long-tool", "consider", line=6, lines=(6,), column=8, happens="100 % of it,\nnext: more"),
        make_finding(accepted="tried on scrap"),
        make_finding("tool-bends", follows="long-tool@6"),  # told with its cause
    ]


def issues(writer: Quality) -> list[dict[str, Any]]:
    made: list[dict[str, Any]] = json.loads(writer.text(1))
    jsonschema.Draft202012Validator(ISSUES).validate(made)
    return made


def test_a_line_for_each_open_finding(make_run: Any, findings: list[Any]) -> None:
    writer = Lines()
    writer.add(make_run(*findings))
    found = [LINE.fullmatch(line) for line in writer.text(1).splitlines()]
    told = [match.groupdict() for match in found if match]
    assert [(each["line"], each["column"], each["grade"], each["rule"]) for each in told] == [
        ("4", "3", "halt", findings[0].rule), ("6", "8", "consider", "long-tool"),
    ]  # fmt: skip
    assert {each["file"] for each in told} == {make_run().checked.path}


def test_lines_say_what_was_not_judged_and_not_read(make_run: Any) -> None:
    writer = Lines()
    writer.add(make_run())
    assert "blank's thickness" in writer.text(0)
    assert all(": not-judged: " in line for line in writer.text(0).splitlines())
    writer.missed(Problem("this is no\x1b[31m program", "jobs/a.nc", 3, 7))
    assert writer.text(2).splitlines()[-1] == "jobs/a.nc:3:7: halt: program-unreadable: this is no [31m program"


def test_a_name_cannot_make_a_line_of_its_own(make_run: Any, findings: list[Any]) -> None:
    for writer in (Lines(), Annotations()):
        writer.add(make_run(findings[0], path="a\n::error::b\r.nc"))
        assert not [line for line in writer.text(1).splitlines() if line.startswith("::error::")]
        assert all("not-judged" in line or "halt" in line for line in writer.text(1).splitlines())


def test_annotations_are_commands_with_everything_escaped(make_run: Any, findings: list[Any]) -> None:
    writer = Annotations()
    writer.add(make_run(*findings, path="a,b: 5%.nc"))
    writer.missed(Problem("this file is empty", "empty.nc"))
    made = [COMMAND.fullmatch(line) for line in writer.text(1).splitlines()]
    assert all(made)
    commands = [match for match in made if match]
    assert [match["command"] for match in commands] == ["error", "notice", "notice", "error"]
    properties = dict(pair.split("=") for pair in commands[0]["properties"].split(","))
    title = f"halt%3A {findings[0].rule}"
    assert properties == {"file": "a%2Cb%3A 5%25.nc", "line": "4", "col": "3", "title": title}
    assert commands[1]["message"].startswith("100 %25 of it, next: more")
    assert "title=not-judged" in commands[2]["properties"]
    assert commands[3]["properties"] == "file=empty.nc,title=program-unreadable"


def test_quality_fits_the_specification(make_run: Any, findings: list[Any]) -> None:
    writer = Quality()
    writer.add(make_run(*findings))
    writer.missed(Problem("this file is empty", "empty.nc"))
    made = issues(writer)
    assert [each["severity"] for each in made] == ["blocker", "minor", "info", "blocker"]
    assert made[0]["trace"]["locations"] == [{"path": made[0]["location"]["path"], "lines": {"begin": 9, "end": 9}}]
    assert made[0]["location"]["lines"]["begin"] == 4
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.Draft202012Validator(ISSUES).validate([{**made[0], "severity": "halt"}])


def test_fingerprints_of_quality_keep_apart_and_live_through_edits(make_run: Any, make_finding: Any) -> None:
    def prints(*lines: int, path: str = "tray.nc") -> list[str]:
        writer = Quality()
        writer.add(make_run(*(make_finding(line=line, lines=(line,)) for line in lines), path=path))
        return [each["fingerprint"] for each in issues(writer)]

    assert len(set(prints(6, 7, 8))) == len(prints(6, 7, 8))
    assert prints(90)[0] == prints(91)[0]
    assert not set(prints(6)) & set(prints(6, path="other.nc"))


def test_places_are_as_the_host_knows_them(make_run: Any, findings: list[Any], here: Path) -> None:
    for path in ("jobs/a.nc", "./jobs/a.nc", str(here / "jobs" / "a.nc")):
        quality, annotations = Quality(), Annotations()
        quality.add(make_run(findings[0], path=path))
        annotations.add(make_run(findings[0], path=path))
        assert issues(quality)[0]["location"]["path"] == "jobs/a.nc"
        assert annotations.text(1).startswith("::error file=jobs/a.nc,")

"""SARIF and JUnit output against the schemas as published (tests/published/schemas/SOURCES.md says where from)."""

from __future__ import annotations

import json
import shutil
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from lxml import etree

from gclint.cli.main import run

SCHEMAS = Path(__file__).with_name("schemas")
SAMPLES = Path(__file__).parents[2] / "sample_programs"
ODD = """G21 (\U0001fa9a ]]> & <b> \x1b) G90
M3 S18000
T1 M6
G0 X0 Y0 Z5
G1 Z-1 F
G1 X40 F1800 G2
G1 Z-30 F-1
\x01Q
M30
"""
DECLARED = ["--material", "beech", "--tool", "1: flat 6mm 2fl up-cut", "--stock", "60 x 20 x 9 mm at -10 -10"]


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The samples, what cannot be read, odd names and odd characters."""
    made = tmp_path_factory.mktemp("programs")
    shutil.copytree(SAMPLES, made / "samples")
    (made / "odd 'name' #1 é%41.nc").write_text(ODD, encoding="utf-8")
    (made / "empty.nc").write_bytes(b"")
    (made / "binary.nc").write_bytes(bytes(range(256)) * 20)
    return made


def output(folder: Path, form: str, *more: str) -> tuple[int, str]:
    out = folder / f"report.{form}"
    code = run(["check", str(folder), "--as", form, "--out", str(out), *more])
    return code, out.read_text(encoding="utf-8")


def sarif_schema() -> jsonschema.Draft4Validator:
    schema: dict[str, Any] = json.loads((SCHEMAS / "sarif-2.1.0.json").read_text(encoding="utf-8"))
    return jsonschema.Draft4Validator(schema, format_checker=jsonschema.FormatChecker())


def junit_schema() -> etree.XMLSchema:
    return etree.XMLSchema(etree.parse(SCHEMAS / "junit-10.xsd"))


@pytest.mark.slow
@pytest.mark.parametrize("more", [(), DECLARED], ids=["as declared", "declared here"])
def test_sarif_fits_the_oasis_schema(folder: Path, more: tuple[str, ...]) -> None:
    code, text = output(folder, "sarif", *more)
    log = json.loads(text)
    sarif_schema().validate(log)
    [made] = log["runs"]
    assert code == made["invocations"][0]["exitCode"] == 2
    assert len(made["results"]) > 15
    unread = [n for n in made["invocations"][0]["toolExecutionNotifications"] if n["level"] == "error"]
    assert len(unread) == 1  # the binary file is no program, and is passed over


def test_the_sarif_schema_does_object() -> None:
    """There is no level "info" (SARIF 2.1.0, 3.27.10)."""
    wrong = {"version": "2.1.0", "runs": [{"tool": {"driver": {"name": "x"}}, "results": [{"message": {"text": "t"}}]}]}
    sarif_schema().validate(wrong)
    wrong["runs"][0]["results"][0]["level"] = "info"  # type: ignore[index]
    assert not sarif_schema().is_valid(wrong)


@pytest.mark.slow
@pytest.mark.parametrize("more", [(), DECLARED], ids=["as declared", "declared here"])
def test_junit_fits_the_schema(folder: Path, more: tuple[str, ...]) -> None:
    code, text = output(folder, "junit", *more)
    read = etree.fromstring(text.encode())
    junit_schema().assertValid(read)
    assert code == 2
    assert len(read.findall("testsuite")) == len(list(SAMPLES.rglob("job.toml"))) + 4
    assert len(read.findall("testsuite/testcase/error")) == 1
    for count, element in (("failures", "failure"), ("errors", "error")):
        assert int(read.get(count)) == len(read.findall(f"testsuite/testcase/{element}"))  # type: ignore[arg-type]


def test_the_junit_schema_does_object() -> None:
    case = '<testcase name="b" line="3"/>'
    wrong = etree.fromstring(f'<testsuite name="a" tests="1" failures="0" errors="0">{case}</testsuite>')
    assert not junit_schema().validate(wrong)

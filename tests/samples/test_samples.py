"""The programs of the Lowtide workshop (invented): written, judged and read as they should be."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import pytest

from gclint.tables.finding import Checked
from tests.samples import make_samples

SAMPLES = make_samples.SAMPLES
EXPECTED: list[dict[str, Any]] = tomllib.loads((SAMPLES / "samples.toml").read_text())["sample"]
NAMES = [sample["program"] for sample in EXPECTED]


def judged(path: Path) -> Checked:
    from gclint.check import check
    from gclint.setup.declare import Options

    return check(path.read_bytes(), path.name, Options(), str(path))


def test_every_program_is_listed_and_every_folder_has_a_job() -> None:
    programs = {p.relative_to(SAMPLES).as_posix() for p in SAMPLES.glob("*/*") if p.suffix != ".toml"}
    assert programs == set(NAMES) == set(make_samples.PROGRAMS)
    for name in NAMES:
        job = tomllib.loads((SAMPLES / name).with_name("job.toml").read_text())
        assert Path(name).name in ([job["program"]] if isinstance(job["program"], str) else job["program"])


@pytest.mark.parametrize("file", sorted(SAMPLES.rglob("*.toml")), ids=lambda p: p.relative_to(SAMPLES).as_posix())
def test_declarations_say_that_they_are_invented(file: Path) -> None:
    assert file.read_text().startswith("# Invented: ")


@pytest.mark.slow
@pytest.mark.parametrize("name", NAMES)
def test_writing_a_program_again_gives_the_same_bytes(name: str) -> None:
    assert make_samples.PROGRAMS[name]() == (SAMPLES / name).read_bytes()


@pytest.mark.parametrize("sample", EXPECTED, ids=NAMES)
def test_findings_are_those_that_were_planted(sample: dict[str, Any]) -> None:
    checked = judged(SAMPLES / sample["program"])
    found = sorted((f.rule, f.line) for f in checked.findings if f.grade in ("halt", "change"))
    assert found == sorted((f["rule"], f["line"]) for f in sample.get("findings", []))


@pytest.mark.parametrize("name", NAMES)
def test_every_finding_says_what_happens_and_what_to_change(name: str) -> None:
    checked = judged(SAMPLES / name)
    for finding in checked.findings:
        assert 1 <= finding.line <= finding.worst_line <= finding.last_line <= checked.lines
        assert finding.happens.endswith(".")
        assert finding.change.text


@pytest.mark.parametrize("name", NAMES)
def test_a_second_reader_finds_no_difference(name: str) -> None:
    from gclint.motion.interpret import interpret
    from gclint.motion.second_reader import read_again
    from gclint.program.read import read
    from gclint.tables.setup import Controller

    program = read((SAMPLES / name).read_bytes(), name)
    compared = read_again(program, interpret(program, Controller()))
    assert compared.differences == []
    if compared.words < compared.blocks:  # the second reader knows neither expressions nor flow
        assert name in ("mooring-plate/mooring-plate.nc", "bollard-row/bollard-row.nc")
        return
    assert compared.words == compared.blocks == len(program.block_line)
    skipped = sum(over.blocks for over in compared.ends_not_compared.values())  # compensated blocks, canned cycles
    assert compared.moving - compared.ends <= 7 + skipped  # G53, G28
    assert compared.ends >= 8

"""The programs of the Lowtide workshop (invented): written, judged and read as they should be."""

from __future__ import annotations

import math
import re
import tomllib
import warnings
from pathlib import Path
from typing import Any

import pytest

from gclint.judge.finding import Checked
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
        assert job["program"] == Path(name).name


@pytest.mark.parametrize("file", sorted(SAMPLES.rglob("*.toml")), ids=lambda p: p.relative_to(SAMPLES).as_posix())
def test_declarations_say_that_they_are_invented(file: Path) -> None:
    assert file.read_text().startswith("# Invented: ")


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


# ---- the second reader

UNREAD = re.compile(r"G53|G28|G8[1-9]|G43|^%?$", re.IGNORECASE)  # pygcode moves differently here, or not at all
KIND = {0: 0, 1: 1, 2: 2, 3: 3}


def compare(name: str) -> tuple[int, int]:
    """(blocks compared, moving blocks passed over). Each one compared must end where pygcode's machine ends."""
    import pygcode

    from gclint.motion.interpret import interpret
    from gclint.motion.table import INCH
    from gclint.program.read import read
    from gclint.setup.types import Controller

    data = (SAMPLES / name).read_bytes()
    motion = interpret(read(data, name), Controller())
    last = {int(line): row for row, line in enumerate(motion.line)}
    machine = pygcode.Machine()
    compared = passed_over = 0
    for line, text in enumerate(data.decode().splitlines(), 1):
        text = re.sub(r"\([^)]*\)|;.*", "", text).strip().upper()
        row = last.get(line)
        unread = bool(UNREAD.search(text))
        if not unread:
            try:
                machine.process_str(text)
            except (AssertionError, pygcode.exceptions.GCodeBlockFormatError, pygcode.exceptions.MachineInvalidState):
                unread = True
        if row is None:
            continue
        unit = 25.4 if motion.flags[row] & INCH else 1.0
        ours = {axis: float(getattr(motion, f"{axis.lower()}1")[row]) for axis in "XYZ"}
        ours = {axis: value for axis, value in ours.items() if not math.isnan(value)}  # NaN: not known yet
        if unread:
            passed_over += 1
            machine.move_to(**{axis: value / unit for axis, value in ours.items()})
            continue
        for axis, value in ours.items():
            assert getattr(machine.pos, axis) * unit == pytest.approx(value, abs=1e-6), (name, line, axis)
        mode = machine.mode
        assert int(mode.motion.word.value) == KIND[int(motion.kind[row])], (name, line)
        assert int(mode.plane_selection.word.value) == motion.plane[row], (name, line)
        assert mode.units.word.value == (20 if unit == 25.4 else 21), (name, line)
        if motion.kind[row]:
            assert mode.feed_rate.word.value * unit == pytest.approx(float(motion.feed[row])), (name, line)
        if not math.isnan(float(motion.speed[row])):
            assert mode.spindle_speed.word.value == pytest.approx(float(motion.speed[row])), (name, line)
        turning = {3: 1, 4: -1, 5: 0}[int(mode.spindle.word.value)]
        assert turning == (0 if motion.spindle[row] == 2 else motion.spindle[row]), (name, line)
        compared += 1
    return compared, passed_over


@pytest.mark.parametrize("name", NAMES)
def test_positions_and_modes_agree_with_pygcode(name: str) -> None:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        compared, passed_over = compare(name)
    assert passed_over <= 7  # G53, G28, G43 and canned cycles
    assert compared >= 8

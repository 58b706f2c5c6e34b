"""The report of a folder: a line for each program, what several share once, whose it is, what was passed over."""

from __future__ import annotations

import io
import sys
from pathlib import Path

import pytest

from gclint.cli.main import run
from gclint.cli.many import ManyProgress, in_sentences
from gclint.problem import Problem
from tests.folder.shop import PRINTER, program, workshop


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Ida's programs plunge, Jon's have words no controller reads, one of Kim's is for another machine."""
    made = workshop(tmp_path_factory.mktemp("report") / "jobs", people=("ida", "jon", "kim"), each=2)
    for number in range(2):
        (made / "ida" / f"part{number}.nc").write_text(program(4 + number, 1800))
    for number, word in enumerate(("SHRINK", "GROW")):
        (made / "jon" / f"part{number}.nc").write_text(program(1, 1800).replace("G0 X0 Y0", f"{word}\nG0 X0 Y0"))
    (made / "kim" / "vase.gcode").write_text(PRINTER)
    (made / "kim" / "notes.txt").write_text("Bring the clamps back.\n")
    (made / "kim" / "later.nc").write_text("")
    return made


def report(home: Path, capfd: pytest.CaptureFixture[str], *more: str) -> tuple[int, str, str]:
    code = run(["check", str(home), "--cache", "none", "--workers", "1", *more])
    out, err = capfd.readouterr()
    return code, out, err


def block(text: str, heading: str) -> str:
    """From a heading to the next line of the same kind."""
    lines = text.splitlines()
    start = next(n for n, line in enumerate(lines) if line.startswith(heading))
    end = next((n for n in range(start + 1, len(lines)) if lines[n].endswith("-----")), len(lines))
    return "\n".join(lines[start:end])


def test_a_line_for_each_program_and_what_is_wrong_with_one_does_not_end_the_run(
    home: Path, capfd: pytest.CaptureFixture[str]
) -> None:
    code, out, err = report(home, capfd)
    listed = block(out, "PROGRAMS").splitlines()[1:8]
    assert [line.split()[-1 if "not read" in line else 1] for line in listed if "later" not in line] == [
        f"{who}/part{n}.nc" for who in ("ida", "jon", "kim") for n in range(2)
    ]  # fmt: skip
    assert any(line.startswith("not read") and "kim/later.nc" in line and "is empty" in line for line in listed)
    assert code == 2
    assert "later.nc: this file is empty" in err
    assert "7 programs: " in block(out, "IN SHORT")
    assert "1 not read or not checked" in block(out, "IN SHORT")


def test_what_several_programs_share_is_told_once(home: Path, capfd: pytest.CaptureFixture[str]) -> None:
    """Also where each has another word, another number or another tool."""
    _, out, _ = report(home, capfd)
    assert out.count("rule      number-unreadable") == 1
    shared = out[out.index("rule      number-unreadable") :]
    assert "2 programs: jon/part0.nc line 6; jon/part1.nc line 6" in " ".join(shared.split()[:20])
    assert '"SHRINK" cannot be read' in out
    assert '"GROW" cannot be read' not in out
    assert out.count("rule      straight-plunge") == 1
    plunges = out[out.index("rule      straight-plunge") :]
    assert "depth of solid material 5 mm" in plunges[:600]  # the worst of them


def test_whose_it_is(home: Path, capfd: pytest.CaptureFixture[str]) -> None:
    _, out, _ = report(home, capfd)
    whose = block(out, "WHICH RULE, HOW MANY PROGRAMS, WHOSE")
    assert any(line.split() == ["number-unreadable", "change", "2", "jon", "2"] for line in whose.splitlines())
    _, out, _ = report(home / "ida", capfd, "--sheets")
    assert "WHOSE" not in out


def test_one_folder_is_nobody_in_particular(tmp_path: Path, capfd: pytest.CaptureFixture[str]) -> None:
    home = workshop(tmp_path, people=("ida",), each=6)  # the last three plunge deeper than beech allows
    _, out, _ = report(home, capfd)
    table = block(out, "WHICH RULE, HOW MANY PROGRAMS")
    assert "WHOSE" not in table
    assert any(line.split() == ["straight-plunge", "change", "3"] for line in table.splitlines())


def test_what_is_passed_over_is_named(home: Path, capfd: pytest.CaptureFixture[str]) -> None:
    _, out, _ = report(home, capfd)
    passed = " ".join(block(out, "PASSED OVER (2)").split())
    assert "kim/notes.txt" in passed
    assert "3D printer" in passed
    assert "kim/vase.gcode" in passed


def test_progress_says_how_long_the_rest_takes_only_when_it_can_tell(monkeypatch: pytest.MonkeyPatch) -> None:
    clock = [100.0]
    monkeypatch.setattr("gclint.cli.many.time.monotonic", lambda: clock[0])
    monkeypatch.setattr(sys, "stderr", io.StringIO())
    with ManyProgress(2000) as progress:
        for seconds, done, share in ((0.5, 9, 0.9), (31, 2, 0.01), (40, 300, 0.2), (65, 500, 0.25), (99, 2000, 1.0)):
            clock[0] = 100 + seconds
            progress(done, share, "tray.nc")
    assert isinstance(sys.stderr, io.StringIO)
    assert sys.stderr.getvalue().splitlines() == [
        "gclint: 2 of 2,000 programs", "gclint: 500 of 2,000 programs, about 3 min to go"
    ]  # fmt: skip


def test_what_is_wrong_with_many_alike_is_said_once() -> None:
    shut = "this folder cannot be read: permission denied"
    told = [("a", shut), ("b.nc", "this file is empty"), ("c", shut), (None, "alone")]
    said = in_sentences([*(Problem(says, path) for path, says in told), Problem("no block", "d.nc", 3, 7)])
    assert said == [
        f"{shut} (so 2 folders are not checked: a, c)", "b.nc: this file is empty", "alone", "d.nc:3:7: no block"
    ]  # fmt: skip

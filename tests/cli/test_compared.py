"""`gclint check --compare-with OLD_SHOP`: which programs change their verdict when the windows do."""

from __future__ import annotations

from pathlib import Path

import pytest

from gclint.cli.main import run

PROGRAM = """G21 G90 G94 G17 G54
T1
S{speed} M3
G4 P4
G0 Z5
G0 X0 Y0
G0 Z1
G1 X40 Z-1 F{feed}
G1 X80
G1 Y20
G0 Z5
M5
M30
"""
JOB = """material = "cured-epoxy"
z_zero = "stock-top"
[stock]
size = ["120 mm", "80 mm", "18 mm"]
corner = ["-20 mm", "-20 mm"]
"""
SHOP = """[[tool]]
number = 1
shape = "flat"
diameter = "3.175 mm"
flutes = 2
"""
WINDOWS = """
[windows."cured-epoxy".1]
edge_speed = ["60 m/min", "150 m/min"]
[windows."cured-epoxy".1.slot]
fz = ["0.05 mm", "0.11 mm"]
floor = [{ edge_speed = "100 m/min", low = "0.05 mm" }, { edge_speed = "140 m/min", low = "0.06 mm" }]
[windows."cured-epoxy".1.measured]
on = 2026-11-25
cuts = 30
"""


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    for name, speed, feed in (("fast", 14450, 1900), ("thin", 10200, 920), ("good", 10200, 1400)):
        (tmp_path / f"{name}.nc").write_text(PROGRAM.format(speed=speed, feed=feed))
    (tmp_path / "job.toml").write_text(JOB)
    (tmp_path / "shop.toml").write_text(SHOP + WINDOWS)
    (tmp_path / "before.toml").write_text(SHOP)
    return tmp_path


def test_both_ways_and_what_stays(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """144 m/min is too fast for the card (130), not for the trial; a chip of 0.045 mm does for the card (0.042)."""
    code = run(["check", str(folder), "--compare-with", str(folder / "before.toml"), "--cache", "none"])
    said = " ".join(capsys.readouterr().out.split())
    assert code == 1
    assert "fast.nc verdict Nothing found (then: Change before cutting) gone edge-too-fast" in said
    assert "thin.nc verdict Change before cutting (then: Nothing found) new chip-too-thin" in said
    assert "test cuts of 2026-11-25 (30 cuts); the material's card has 0.042 to 0.1 mm" in said
    assert "good.nc" not in said
    assert said.endswith("2 programs with another verdict or other findings, 1 as before.")


def test_the_same_windows_change_nothing(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    run(["check", str(folder), "--compare-with", str(folder / "shop.toml"), "--cache", "none"])
    assert "0 programs with another verdict or other findings, 3 as before." in capsys.readouterr().out


@pytest.mark.parametrize(("text", "says"), [
    (None, "there is no such shop file"),
    ("[[tool]]\nnumbr = 1\n", "there is no such key"),
    (SHOP + '[windows."cured-epoxy".1]\nedge_speed = ["9 m/min", "8 m/min"]', "not under the high one"),
    (SHOP + WINDOWS.replace("100 m/min", "140 m/min"), "must rise"),
])  # fmt: skip
def test_a_bad_old_shop_is_told_at_its_place(
    folder: Path, capsys: pytest.CaptureFixture[str], text: str | None, says: str
) -> None:
    old = folder / "old.toml"
    if text is not None:
        old.write_text(text)
    assert run(["check", str(folder / "good.nc"), "--compare-with", str(old), "--cache", "none"]) == 2
    said = capsys.readouterr().err
    assert says in said
    assert "old.toml" in said


def test_no_other_form_is_promised(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["check", str(folder), "--compare-with", str(folder / "before.toml"), "--as", "json"]) == 2
    assert "in text only" in capsys.readouterr().err


def test_the_card_and_what_was_measured_stand_side_by_side(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    shop = folder / "shop.toml"
    shop.write_text(shop.read_text() + 'fz_low = ["0.045 mm", "0.055 mm"]\nfz_high = ["0.11 mm", "0.11 mm"]\n'
                    'open = ["fz_high"]\n')  # fmt: skip
    assert run(["material", "cured-epoxy", "--shop", str(shop)]) == 0
    said = [" ".join(line.split()) for line in capsys.readouterr().out.splitlines()]
    assert "chip, slot from 0.05 mm 0.045 to 0.055 0.042 they disagree" in said
    assert "to 0.11 mm none met 0.1" in said
    assert "edge speed from 60 m/min 60" in said
    assert any("30 test cuts, 2026-11-25" in line for line in said)
    run(["material", "beech", "--shop", str(shop)])
    assert "It has measured none in this material" in capsys.readouterr().out
    assert run(["material", "--shop", str(shop)]) == 2

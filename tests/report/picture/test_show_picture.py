"""`gclint show --picture`: what is in the picture, that it stays bounded, and what is refused."""

from __future__ import annotations

import html
import importlib.util
import re
import struct
from pathlib import Path
from xml.etree import ElementTree as Xml

import pytest

from gclint.check import run
from gclint.cli.main import run as gclint
from gclint.problem import Problem
from gclint.report.picture.picture import picture
from gclint.report.picture.picture_form import form_of
from gclint.report.picture.picture_scene import scene_of
from gclint.report.picture.picture_style import beside, mark_text, round_length, stretch, widened
from gclint.run import Run
from gclint.setup.declare import Options

PROGRAM = """G21 G90 G94 G17 G54
T1 M6
M3 S18000
G4 P5
G0 X0 Y0 Z5
G1 Z-2 F200
G1 X40 F1800
G0 Z5
G0 X10 Y20
G81 X10 Y20 Z-3 R1 F100
X30
G80
G0 Z0.5
G0 Z-1
G0 X50 Y5
G0 Z5
M5
M30
"""
OPTIONS = Options(material="cured-epoxy", tools=("1: flat 6mm 2fl up-cut",), stock="80 x 60 x 9 mm at -10 -10")
JOB = """material = "cured-epoxy"
[[keep_out]]
name = "left clamp"
from = ["-30 mm", "0 mm", "0 mm"]
to = ["-12 mm", "20 mm", "15 mm"]
"""


def judged(text: str = PROGRAM, options: Options = OPTIONS, name: str = "plank.nc") -> Run:
    return run(text.encode(), name, options)


def texts(svg: bytes) -> list[str]:
    return [" ".join(html.unescape(said).split()) for said in re.findall(r"<text[^>]*>([^<]*)</text>", svg.decode())]


def test_a_png_of_a_decent_size() -> None:
    made = picture(judged(), ".png")
    assert made[:8] == b"\x89PNG\r\n\x1a\n"
    wide, tall = struct.unpack(">II", made[16:24])
    assert 1000 < wide < 2000
    assert 900 < tall < 4000


def test_an_svg_that_fetches_nothing_and_says_everything() -> None:
    done = judged()
    made = picture(done, ".svg")
    Xml.fromstring(made)
    said = texts(made)
    assert not re.search(rb'(href|src)="(?!#)', made)
    assert b"<script" not in made
    assert b"@font-face" not in made
    assert "plank.nc" in said
    assert {"from above", "X0 Y0", "rapid", "rapid in material", "20 mm", "T1"} <= set(said)
    assert any(line.startswith("A rapid goes through standing material, tool 1: line 15") for line in said)
    assert "Do not run" in said
    assert not any("clean" in line.lower() or "safe" in line.lower() for line in said)
    rules = {(f.rule, f.tool, f.grade) for f in done.checked.findings}
    assert {str(number) for number in range(1, len(rules) + 1)} <= set(said)


@pytest.mark.slow
def test_the_same_run_gives_the_same_bytes() -> None:
    for ending in (".svg", ".png"):
        assert picture(judged(), ending) == picture(judged(), ending)
    assert not re.search(rb"<dc:date>", picture(judged(), ".svg"))


def test_marks_stand_where_the_findings_are() -> None:
    done = judged()
    assert done.tables is not None
    crash = [f for f in done.checked.findings if f.rule == "rapid-through-stock"]
    holes = [f for f in done.checked.findings if f.rule == "straight-plunge" and 10 in f.lines]
    scene = scene_of(done.tables, [crash, holes], 1000)
    [[place, *_], [*bores]] = scene.places
    assert place.z == pytest.approx(-1, abs=0.01)
    assert 10 < place.x < 50
    assert 5 <= place.y <= 20
    assert any((p.x, p.y, p.z) == pytest.approx((10, 20, -3), abs=1e-6) for p in bores)  # not where the cycle begins
    assert scene.deepest == pytest.approx(3, abs=1e-6)
    assert [tool for tool, _ in scene.changes] == [1]
    assert (scene.low.x, scene.high.x) == pytest.approx((-10, 70))


@pytest.mark.slow
def test_a_long_path_is_bounded_and_keeps_the_places_of_findings() -> None:
    import numpy as np

    zigzag = [f"G1 X{n % 200 * 0.31 + n % 7 * 0.05:.3f} Y{n * 0.002:.3f}" for n in range(20_000)]
    zigzag[12_345] = "G0 X61.5 Y24.7"  # through the stock
    text = PROGRAM.replace("G1 X40 F1800\n", "G1 X40 F1800\n" + "\n".join(zigzag) + "\n")
    done = judged(text)
    assert done.tables is not None
    crash = [f for f in done.checked.findings if f.rule == "rapid-through-stock"]
    assert crash
    scene = scene_of(done.tables, [crash], 500)
    assert len(scene.path) <= 500 + 4 * sum(map(len, scene.places))
    assert scene.off > 0
    for place in scene.places[0]:
        ends = np.column_stack((scene.path.x, scene.path.y))
        middles = np.vstack((ends, (ends[1:] + ends[:-1]) / 2))
        assert np.min(np.hypot(middles[:, 0] - place.x, middles[:, 1] - place.y)) < 1e-6
    assert len(picture(done, ".svg")) < 3_000_000


@pytest.mark.slow
@pytest.mark.parametrize(
    "text",
    [
        "G21 G90\nM3 S1000\nM30\n",
        "G21 G90 G94 G17 G54\nT1 M6\nM3 S18000\nG0 X0 Y0 Z0.05\nG1 Z-0.01 F100\nG1 X0.0002\nG0 Z0.05\nM30\n",
        "G20 G90 G94 G17 G54\nT1 M6\nM3 S18000\nG0 X0 Y0 Z2\nG1 Z-0.1 F100\nG1 X30000 Y12\nG0 Z2\nM30\n",
        "G21 G90 G94 G17 G54\nG0 X5 Y5 Z5\nG0 Z7\nM30\n",
        "G21 G91\nG1 X5 F100\nM30\n",
    ],
    ids=["nothing moves", "tiny", "huge", "no blank", "nowhere"],
)
def test_extremes_are_drawn(text: str) -> None:
    for options in (OPTIONS, Options()):
        made = picture(judged(text, options), ".png")
        assert struct.unpack(">II", made[16:24])[1] < 5000


def test_it_speaks_the_programs_units() -> None:
    inch = PROGRAM.replace("G21", "G20").replace("X40", "X1.5").replace("X30", "X1").replace("X50", "X2")
    said = texts(picture(judged(inch), ".svg"))
    assert "X, in" in said
    assert any(line.endswith(" in") and line[0].isdigit() for line in said)


def test_keep_outs_and_an_assumed_blank_are_drawn(tmp_path: Path) -> None:
    (tmp_path / "job.toml").write_text(JOB, encoding="utf-8")
    options = Options(tools=OPTIONS.tools, job=str(tmp_path / "job.toml"))
    said = texts(picture(judged(options=options), ".svg"))
    assert "left clamp" in said
    assert "blank: assumed, dashed" in said


def test_accepted_findings_are_counted_not_marked() -> None:
    text = PROGRAM.replace("G1 Z-2 F200", "(gclint accept straight-plunge because it is drilled)\nG1 Z-2 F200")
    done = judged(text)
    accepted = [f for f in done.checked.findings if f.accepted is not None]
    assert len(accepted) == 1
    said = texts(picture(done, ".svg"))
    assert "Not marked: 1 accepted finding." in said
    shown = {(f.rule, f.tool, f.grade) for f in done.checked.findings if f.accepted is None}
    assert str(len(shown)) in said


def test_a_name_with_odd_characters(tmp_path: Path) -> None:
    said = texts(picture(judged(name="a & $b$ <c>\udcff\n.nc"), ".svg"))
    assert "a & $b$ <c>??.nc" in said


def test_the_verb_writes_the_file_and_refuses_what_it_must(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    Path("plank.nc").write_text(PROGRAM, encoding="utf-8")
    given = ["show", "plank.nc", "--material", "beech", "--tool", "1: flat 6mm 2fl", "--picture"]
    assert gclint([*given, "out.svg"]) == 0
    assert capsys.readouterr().out == ""
    assert Path("out.svg").read_bytes().startswith(b"<?xml")
    for name, says in (("out.pdf", ".png or .svg"), ("nowhere/out.png", "does not exist")):
        assert gclint([*given, name]) == 2
        assert says in capsys.readouterr().err
    Path("plank.svg").write_text(PROGRAM, encoding="utf-8")
    assert gclint(["show", "plank.svg", "--picture", "plank.svg"]) == 2
    assert "never overwritten" in capsys.readouterr().err
    assert Path("plank.svg").read_text(encoding="utf-8") == PROGRAM


def test_without_matplotlib_it_says_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(importlib.util, "find_spec", lambda name: None)
    with pytest.raises(Problem, match=r"not installed: pip install 'gclint\[picture\]'"):
        form_of("out.png")


def test_marks_lengths_and_heights() -> None:
    assert mark_text([7, 1, 2, 3, 9, 10, 12]) == "1-3 7 9 10 12"
    assert mark_text([1, 3, 5, 7, 9]) == "1 3 5 7\n9"
    assert [round_length(v) for v in (0.003, 0.9, 1.0, 4.9, 5000)] == pytest.approx([0.002, 0.5, 1, 2, 5000])
    assert [stretch(h) for h in (0.01, 0.3, 1.5, 5.0)] == [50, 5, 1, 0.5]
    assert widened((0, 1), 3) == (-1, 2)
    assert widened((0, 4), 3) == (0, 4)
    taken: list[tuple[float, float, float, float]] = []
    places = [beside(0, 0, "12", taken) for _ in range(6)]
    assert len(set(places)) == 6
    for n, a in enumerate(taken):
        for b in taken[n + 1 :]:
            assert a[0] >= b[2] or a[2] <= b[0] or a[1] >= b[3] or a[3] <= b[1]

"""Cutter compensation: what each move becomes, what is refused, what D means, and what stays consistent."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from gclint.check import run as check_run
from gclint.setup.declare import Options
from gclint.tables.motion import ARC_CW, COMPENSATED, EVENT, RAPID
from tests.motion.compensated import compensated
from tests.motion.run import STATED, ends, events, faults

HEAD = STATED + "T1 M6\n"
SQUARE = HEAD + "G0 X20 Y-30 Z5\nG1 Z-1 F100\nG41 D1 G1 X0 Y0\nY40\nX40\nG40 X60 Y60\nG0 Z5\nM30\n"


def test_a_program_without_compensation_comes_back_as_it_is() -> None:
    m = compensated(STATED + "G0 X0 Y0 Z5\nG40\nG1 X1 F100\n")
    assert ends(m)[-1] == ("line", 1, 0, 5)
    assert not m.assumed


def test_rounding_arcs_belong_to_the_line_that_follows_and_keep_its_columns() -> None:
    m = compensated(SQUARE)
    arcs = [row for row in range(len(m)) if m.kind[row] == ARC_CW]
    assert [int(m.line[row]) for row in arcs] == [6, 7]
    for row in arcs:
        assert (m.line[row], m.feed[row], m.tool[row], m.offset[row]) == (
            m.line[row + 1], m.feed[row + 1], m.tool[row + 1], m.offset[row + 1],
        )  # fmt: skip
        assert m.length[row] == pytest.approx(3 * math.radians(abs(m.sweep[row])))
    assert not (m.flags & COMPENSATED).any()


def test_events_stand_where_they_stood() -> None:
    m = compensated(SQUARE)
    by_name = {name: move for name, _, move in events(m)}
    assert m.line[by_name["compensation-on"]] == 5
    assert m.line[by_name["compensation-off"]] == 8
    assert by_name["end"] == len(m)


def test_moves_straight_up_or_down_stay_beside_the_contour() -> None:
    m = compensated(HEAD + "G0 X20 Y-30 Z5\nG41 D1 G1 X0 Y0 F100\nZ-1\nY40\nZ-2\nX40\nG40\nG0 Z5\n")
    down = [row for row in range(len(m)) if m.line[row] == 7]
    assert [(m.x1[row], m.y1[row], m.z1[row]) for row in down] == [
        (pytest.approx(-3), pytest.approx(40), pytest.approx(-2))
    ]
    corner = next(row for row in range(len(m)) if m.line[row] == 8)
    assert (m.z0[corner], m.z1[corner]) == (pytest.approx(-2), pytest.approx(-2))


def test_after_g40_the_tool_stays_beside_until_an_axis_is_named() -> None:
    m = compensated(HEAD + "G0 X20 Y-30 Z5\nG41 D1 G1 X0 Y0 F100\nY40\nG40\nG0 Z5\nX10\nY0\n")
    assert ends(m)[-3:] == [("rapid", -3, 40, 5), ("rapid", 10, 40, 5), ("rapid", 10, 0, 5)]
    assert (m.x0[-2], m.y0[-2]) == (pytest.approx(-3), pytest.approx(40))


def test_rapids_go_straight_to_their_shifted_end() -> None:
    m = compensated(HEAD + "G0 X20 Y-30 Z5\nG41 D1 G1 X0 Y0 F100\nY40\nG0 X40\nG1 Y0\nG40 X60\n")
    over = next(row for row in range(len(m)) if m.kind[row] == RAPID and m.line[row] == 6)
    assert (m.x0[over], m.y0[over], m.x1[over], m.y1[over]) == pytest.approx((-3, 40, 40, 43))
    assert m.kind[over + 1] == ARC_CW


def test_inverse_time_keeps_the_time_of_the_move() -> None:
    m = compensated(HEAD + "G0 X20 Y-30 Z5\nG93\nG41 D1 G1 X0 Y0 F2\nY40 F2\nX40 F2\nG40 X60 F2\n")
    for line in (6, 7):
        rows = m.line == line
        assert float((m.length[rows] / m.feed[rows]).sum()) == pytest.approx(0.5)


@pytest.mark.parametrize(
    ("program", "wanted"),
    [
        ("G41 D1 G1 X28 Y-30 F100\nX60\n", [("entry-too-short", 5)]),
        ("G41 D1 G1 X0 Y0 F100\nY40\nG41 X40\n", [("compensation-refused", 7)]),
        ("G41 D1 G1 X0 Y0 F100\nY40\nG18\n", [("compensation-refused", 7)]),
        ("G41 D1 G1 X0 Y0 F100\nY40\nG20\n", [("compensation-refused", 7)]),
        ("G41 D1 G1 X0 Y0 F100\nY40\nG55\n", [("compensation-refused", 7)]),
        ("G41 D1 G1 X0 Y0 F100\nY40\nG92 X0\n", [("compensation-refused", 7)]),
        ("G41 D1 G1 X0 Y0 F100\nY40\nG53 G0 Z0\n", [("compensation-refused", 7)]),
        ("G41 D1 G1 X0 Y0 F100\nY40\nG28 Z5\n", [("compensation-refused", 7)]),
        ("G41 D1 G1 X0 Y0 F100\nY40\nG38.2 Z-5\n", [("compensation-refused", 7)]),
        ("G18 G41 D1 G1 X0 Z0 F100\n", [("compensation-refused", 5)]),
        ("G41 D1 G3 X0 Y-10 R40 F100\n", [("compensation-refused", 5)]),
        ("G41 D1.5 G1 X0 Y0 F100\n", [("value-out-of-range", 5)]),
        ("D1 G1 X0 Y0 F100\n", [("word-unused", 5)]),
        ("G41 D7 G1 X0 Y0 F100\n", [("compensation-unresolved", 5)]),
        ("G41 D1 G1 X0 Y0 F100\nX-20\nG3 X-22 Y-2 R2\n", [("contour-too-tight", 7)]),
    ],
)  # fmt: skip
def test_faults(program: str, wanted: list[tuple[str, int]]) -> None:
    """NIST RS274/NGC, sections 3.5.10 to 3.5.13 and appendix B.5."""
    m = compensated(HEAD + "G0 X30 Y-30 Z5\n\n" + program)
    assert faults(m) == wanted
    at = m.faults.start.tolist()
    assert at == sorted(at)


def test_an_inside_corner_is_refused_by_the_report_and_met_by_those_that_read_ahead() -> None:
    text = HEAD + "G0 X0 Y20 Z5\nG41 D1 G1 X10 Y0 F100\nX50\nY40\nG40 X0\n"
    assert ("corner-refused", 6) in faults(compensated(text, compensation_rules="report"))
    m = compensated(text)
    assert faults(m) == []
    assert [(round(float(m.x1[row]), 6), round(float(m.y1[row]), 6)) for row in (1, 2, 3)] == [
        (10, 3), (47, 3), (47, 40)
    ]  # fmt: skip


def test_what_does_not_fit_keeps_its_flag_and_the_rest_goes_on() -> None:
    m = compensated(HEAD + "G0 X30 Y30 Z5\nG41 D1 G1 X30 Y0 F100\nX50\nY-20\nX54\nY0\nX80\nG40 Y30\n")
    assert faults(m) == [("contour-too-tight", 7)]
    assert set(m.line[m.flags & COMPENSATED != 0].tolist()) == {7}
    assert (m.x1[-1], m.y1[-1]) == (pytest.approx(80), pytest.approx(30))


@pytest.mark.parametrize(
    ("words", "offsets", "shift"),
    [
        ("G41 D1", {}, -3.0),
        ("G41", {}, -3.0),
        ("G42 D1", {}, 3.0),
        ("G41 D0", {}, 0.0),
        ("G41 D11", {11: 5.0}, -2.5),
        ("G41 D1", {1: 0.0}, 0.0),
        ("D11 G0 Z4\nG41", {11: 5.0}, -2.5),
    ],
)
def test_what_d_stands_for(words: str, offsets: dict[int, float], shift: float) -> None:
    m = compensated(HEAD + f"G0 X0 Y-30 Z5\n{words} G1 X0 Y0 F100\nY40\nG40 G0 Z5\n", offsets=offsets)
    assert m.x1[-1] == pytest.approx(shift)
    assert not (m.flags & COMPENSATED).any()
    assert len(m.assumed) == (0 if offsets else 1)


def test_a_diameter_that_nobody_declared_is_not_judged() -> None:
    m = compensated(HEAD + "G0 X0 Y-30 Z5\nG41 D21 G1 X0 Y0 F100\nY40\nG40 G0 Z5\n")
    assert (m.flags[1:3] & COMPENSATED).all()
    fault = m.faults
    assert faults(m) == [("compensation-unresolved", 4)]
    assert fault.a[0] == pytest.approx(21)


@pytest.mark.parametrize("card", ["ignores", "does"])
def test_a_card_that_ignores_it_leaves_the_path_on_the_line(tmp_path: Path, card: str) -> None:
    (tmp_path / "own.toml").write_text(
        'name = "own"\ntitle = "own"\nsource = "invented"\narcs = { tolerance = "0.005 mm" }\n'
        + f'[[{card}]]\ncodes = ["compensation"]\n'
    )
    (tmp_path / "shop.toml").write_text(
        'machine = { controller = "own.toml" }\ntool = [ { number = 1, shape = "flat", diameter = "6 mm" } ]\n'
    )
    out = check_run(SQUARE.encode(), "square.nc", Options(shop=str(tmp_path / "shop.toml")))
    assert out.tables is not None
    m = out.tables.motion
    assert not (m.flags & COMPENSATED).any()
    assert (float(m.x1[3]) == pytest.approx(0.0)) == (card == "ignores")
    assert (EVENT["compensation-on"] in m.event_kind.tolist()) == (card == "does")


@pytest.mark.parametrize("n", [3_000, 30_000, 100_000])
def test_a_contour_of_many_turns_is_followed_in_one_pass(n: int) -> None:
    """Chords of a circle, both ways round: every corner is one of the two kinds; at the finest, rounding makes some."""
    at = [(50 * math.cos(2 * math.pi * k / n), 50 * math.sin(2 * math.pi * k / n)) for k in range(n + 1)]
    lap = "".join(f"X{x:.5f}Y{y:.5f}\n" for x, y in at)
    for code, radius in (("G41", 47.0), ("G42", 53.0)):
        m = compensated(HEAD + f"G0 X{50 + (5 if code == 'G42' else -5)} Y5 Z5\n{code} D1 G1 F500\n" + lap + "G40\n")
        assert faults(m) == []
        away = [math.hypot(x, y) for x, y in zip(m.x1[3:], m.y1[3:])]
        assert min(away) == pytest.approx(radius, abs=0.002)
        assert max(away) == pytest.approx(radius, abs=0.002)


def test_lines_that_hardly_turn_meet_where_they_cross() -> None:
    """A circle as a polygon of 1 degree, outside: no arcs, and the path is the larger circle within half a step."""
    points = [(20 * math.cos(math.radians(n)), 20 * math.sin(math.radians(n))) for n in range(181)]
    path = "".join(f"G1 X{x:.6f} Y{y:.6f}\n" for x, y in points)
    m = compensated(HEAD + "G0 X30 Y-10 Z-1\nG42 D1 G1 X20 Y-2 F100\n" + path)
    assert not m.sweep.any()
    assert [math.hypot(m.x1[row], m.y1[row]) for row in range(3, len(m))] == pytest.approx([23] * 180, abs=0.002)

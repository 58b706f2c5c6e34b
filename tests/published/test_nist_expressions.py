"""Parameters and expressions against the printed text of NIST RS274/NGC version 3 (NISTIR 6556)."""

from __future__ import annotations

import numpy as np
import pytest

from gclint.faults import KINDS
from gclint.motion.interpret import interpret
from gclint.program.read import read
from gclint.tables.motion import Motion
from gclint.tables.setup import Controller

STATED = "G21 G90 G94 G17 G54\nG0 X0 Y0 Z0\n"


def run(text: str) -> Motion:
    return interpret(read(text.encode(), "x.ngc"), Controller())


def value(expression: str) -> float:
    m = run(f"{STATED}G0 X{expression}\nM2\n")
    assert len(m) == 2, [KINDS[k] for k in m.faults.kind]
    return float(m.x1[1])


@pytest.mark.parametrize(
    ("expression", "expected"),
    [
        ("[2.0 / 3 * 1.5 - 5.5 / 11.0]", 0.5),  # 3.3.2.3
        ("[1 + 2 * 3 - 4 / 5]", 6.2),  # C.2
        ("[2 ** 3 ** 2]", 64),  # 3.3.2.3: equal ranks left to right
        ("[1 --3]", 4),  # C.2
        ("[2 AND 2]", 1),  # C.2
        ("[2 OR 2]", 1),  # C.2
        ("[2 XOR 2]", 0),  # C.2
        ("[0 XOR 1]", 1),  # C.2
        ("[15 MOD 4.0]", 3),  # C.2
        ("[-1 MOD 4]", 3),  # 3.3.2.3: the result is never negative
        ("sin[30]", 0.5),  # C.2
        ("tan[60]", 1.7320508),  # C.2
        ("asin[1]", 90),  # C.2
        ("acos[0.707107]", 44.99998),  # C.2
        ("cos[0]", 1),
        ("atan[1.7321]/[1.0]", 60.0),  # C.2
        ("atan[-1]/[-1]", -135),  # quadrants
        ("fix[2.8]", 2),  # 3.3.2.4
        ("fix[-2.8]", -3),  # 3.3.2.4
        ("fup[2.8]", 3),  # 3.3.2.4
        ("fup[-2.8]", -2),  # 3.3.2.4
        ("fix[-0.499]", -1),  # C.2
        ("fup[-0.499]", 0),  # C.2
        ("round[-0.499]", 0),  # C.2
        ("round[-0.5001]", -1),  # C.2
        ("round[2.444]", 2),  # C.2
        ("round[9.975]", 10),  # C.2
        ("round[2.5]", 3),  # a half goes away from zero, from memory
        ("round[-2.5]", -3),
        ("exp[2.3026]", 10.0001),  # C.2
        ("ln[10]", 2.3026),  # C.2
        ("sqrt[3]", 1.7321),  # C.2
        ("sqrt[3**2 + 4**2]", 5),  # C.2
        ("abs[-20]", 20),  # C.2
        ("[2 + asin[1/2.1+-0.345] / [atan[fix[4.4] * 2.1 * sqrt[16.8]] /[-18]]**2]", 2.000545),  # C.2, n0460
    ],
)
def test_expressions(expression: str, expected: float) -> None:
    assert value(expression) == pytest.approx(expected, rel=3e-5, abs=1e-9)


def test_settings_come_into_force_behind_the_block() -> None:
    # 3.3.3: "#3=6 G1 x#3" moves to 15, and #3 is 6 behind it
    m = run(STATED + "#3=15\n#3=6 G0 x#3\nx#3\nM2\n")
    assert m.x1[1:].tolist() == pytest.approx([15, 6])
    # C.2: #3=7, then "#3=5.0 x #3", then "x #3 #3=1.1"
    m = run(STATED + "#3=7\n#3=5.0 x #3\nx #3 #3=1.1\nM2\n")
    assert m.x1[1:].tolist() == pytest.approx([7, 5])


def test_the_second_setting_wins() -> None:  # 3.3.5
    assert run(STATED + "#3=15 #3=6\nG0 X#3\nM2\n").x1[1] == pytest.approx(6)


def test_hash_binds_first() -> None:  # 3.3.2.2
    assert run(STATED + "#1=5 #7=9\nG0 X[#1+2]\nM2\n").x1[1] == pytest.approx(7)
    assert run(STATED + "#1=7 #7=9\nG0 X##1\nM2\n").x1[1] == pytest.approx(9)
    assert run(STATED + "#7=9\nG0 X#[3+4]\nM2\n").x1[1] == pytest.approx(9)


def test_white_space_and_case_count_nowhere() -> None:  # 3.3
    assert run(STATED + "# 1 0 = [ 1 . 5 +2 ]\ng0 x # 10\nM2\n").x1[1] == pytest.approx(3.5)


@pytest.mark.parametrize("wrong", ["[1/0]", "sqrt[-1]", "ln[0]", "asin[2]", "acos[-1.5]", "[[-8]**0.5]"])
def test_what_has_no_value(wrong: str) -> None:  # 3.3.2.3, 3.3.2.4
    m = run(f"{STATED}G0 X{wrong}\nM2\n")
    assert [KINDS[k] for k in m.faults.kind] == ["expression-impossible"]
    assert m.faults.line.tolist() == [3]
    assert np.isnan(m.x1[1])


@pytest.mark.parametrize("wrong", ["#5400.5", "#[0.5]", "#99999", "#-1"])
def test_indices_are_integers(wrong: str) -> None:  # 3.3.2.2
    m = run(f"{STATED}G0 X{wrong}\nM2\n")
    assert KINDS[int(m.faults.kind[0])] in ("parameter-impossible", "expression-unreadable")


def test_an_index_may_be_near_an_integer() -> None:  # 3.3.2.1
    assert run(STATED + "#7=4\nG0 X#[6.99999]\nM2\n").x1[1] == pytest.approx(4)


def test_offsets_are_parameters() -> None:  # 3.2.1: 5220 is the coordinate system, 5221.. its origin
    m = run("G21 G90 G94 G17 G55\nG10 L2 P2 X11 Y12 Z13\nG0 X#5241 Y#5242 Z#5220\nM2\n")
    assert (m.x1[0], m.y1[0], m.z1[0]) == pytest.approx((11, 12, 2))

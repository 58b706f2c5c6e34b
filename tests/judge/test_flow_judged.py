"""Programs with loops, subprograms and files beside: findings stand where people look for them."""

from __future__ import annotations

from pathlib import Path

from msgspec.structs import replace

from gclint.check import check
from gclint.setup.declare import Options
from gclint.tables.finding import Beside, Checked
from tests.judge.try_judge import found, tried

TOOL = "1: flat 6mm 2fl up-cut"
BOARD = "beech"
HEAD = "G21 G90 G94 G17 G54\nT1 M6\nM3 S18000\nG0 X0 Y0 Z5\n"


def beside(folder: Path, program: str, **files: str) -> Checked:
    for name, text in files.items():
        (folder / f"{name}.ngc").write_text(text)
    return check(program.encode(), "try.nc", Options(BOARD, (TOOL,), None, None, None), str(folder / "try.nc"))


def plain(program: str) -> Checked:
    return tried(program, TOOL, material=BOARD)


def test_the_feed_comes_back_in_a_loop_and_in_a_subprogram_behind_the_end() -> None:
    straight = plain(HEAD + "G1 Z-3 F1500\nX60\nG0 Z5\nM30\n")
    in_loop = plain(HEAD + "#1=0\nO1 while [#1 LT 2]\n#1=[#1+1]\nG1 Z-3 F1500\nX[60*#1]\nG0 Z5\nO1 endwhile\nM30\n")
    behind = plain(HEAD + "M98 P5\nM30\nO5\nG1 Z-3 F1500\nX60\nG0 Z5\nM99\n")
    jumped = plain(HEAD + "GOTO 20\nN10 X60\nG0 Z5\nM30\nN20 G1 Z-3 F1500\nGOTO 10\n")
    expected = [(0, True), (1, False)]
    for checked, lines in ((straight, (5, 6)), (in_loop, (8, 9)), (behind, (8, 9)), (jumped, (9, 6))):
        (one,) = found(checked, "plunge-too-fast")
        assert [(lines.index(word.line), word.to < 1500) for word in one.change.set] == expected


def test_a_finding_in_a_file_beside_names_it(tmp_path: Path) -> None:
    pocket = "O<pocket> sub\n(deep)\nG1 Z-3 F1500\nX60\nG0 Z5\nO<pocket> endsub\n"
    checked = beside(tmp_path, HEAD + "O<pocket> call\nM30\n", pocket=pocket)
    (one,) = found(checked, "plunge-too-fast")
    assert one.worst_line == 5
    assert one.beside == Beside("pocket.ngc", 3)
    assert "line 3 of pocket.ngc" in one.happens
    assert one.change.set == ()
    assert "pocket.ngc: line 3" in one.change.text


def test_a_fault_in_a_file_beside_names_it(tmp_path: Path) -> None:
    checked = beside(tmp_path, HEAD + "M98 P7\nM30\n", o7="O7\n\nG0 X3 Q-\nM99\n")
    (one,) = found(checked, "number-unreadable")
    assert one.beside == Beside("o7.ngc", 3)
    assert one.found is not None
    assert one.found.value == "Q-"
    assert one.line == 5


def test_what_is_judged_in_the_program_itself_names_no_file(tmp_path: Path) -> None:
    checked = beside(tmp_path, HEAD + "M98 P7\nG1 Z-3 F1500\nX60\nM30\n", o7="O7\nG0 X3\nM99\n")
    (one,) = found(checked, "plunge-too-fast")
    assert one.beside is None
    assert [word.line for word in one.change.set] == [6, 7]


def test_a_shift_set_in_a_subprogram_and_taken_back_is_taken_back() -> None:
    back = "M30\nO4\nG92.1\nM99\nO5\nG92 X5\nG1 X6 F500\nM99\n"
    assert not found(plain(HEAD + "M98 P5\nM98 P4\n" + back), "work-offset-suspect")
    assert found(plain(HEAD + "M98 P5\n" + back.replace("G92.1", "G1")), "work-offset-suspect")


def test_a_loop_is_judged_as_what_it_comes_to_by_hand() -> None:
    sub = "O9\n#2=[#2+8]\nG0 X0 Y#2\nG1 Z[-1.5*#1] F[300+100*#1]\nG1 X60 F2000\nG0 Z5\nM99\n"
    loop = "#1=0\n#2=0\nO1 while [#1 LT 3]\n#1=[#1+1]\nM98 P9 L2\nO1 endwhile\nM5\nM30\n"
    cuts = [
        f"G0 X0 Y{8 * n + 8}\nG1 Z{-1.5 * (n // 2 + 1)} F{400 + 100 * (n // 2)}\nG1 X60 F2000\nG0 Z5\n"
        for n in range(6)
    ]
    looped, by_hand = plain(HEAD + loop + sub), plain(HEAD + "".join(cuts) + "M5\nM30\n")
    said = [[(f.rule, f.grade, f.count, f.found, f.tool) for f in each.findings] for each in (looped, by_hand)]
    assert said[0] == said[1] != []
    # the same cuts, wherever their lines stand
    rows = [[replace(row, margins=()) for row in each.tools] for each in (looped, by_hand)]
    assert rows[0] == rows[1]
    margins = [[replace(one, line=0) for row in each.tools for one in row.margins] for each in (looped, by_hand)]
    assert margins[0] == margins[1]
    assert looped.extent_mm == by_hand.extent_mm

"""Loops, branches, subprograms and macros; bounds; what is known only at the machine."""

from __future__ import annotations

import math
import os
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gclint.faults import KINDS
from gclint.motion.interpret import interpret
from gclint.program.code import form_of, parse, parse_alike
from gclint.program.read import read
from gclint.tables.motion import Motion
from gclint.tables.setup import Controller, Limits
from tests.strategies import STEADY

STATED = "G21 G90 G94 G17 G54 F500\nG0 X0 Y0 Z5\n"


def run(text: str, folder: Path | None = None, limits: Limits | None = None) -> Motion:
    return interpret(read((STATED + text).encode(), "lowtide.nc"), Controller(), limits, folder)


def xs(m: Motion) -> list[float]:
    return m.x1[1:].tolist()


def faults(m: Motion) -> list[str]:
    return [KINDS[kind] for kind in m.faults.kind]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("#1=0\nO1 while [#1 LT 3]\n#1=[#1+1]\nX#1\nO1 endwhile\n", [1, 2, 3]),
        ("#1=0\nO1 do\n#1=[#1+1]\nX#1\nO1 while [#1 LT 3]\n", [1, 2, 3]),
        ("O1 repeat [3]\nG91 X2\nO1 endrepeat\n", [2, 4, 6]),
        ("O1 repeat [2]\nO2 repeat [2]\nG91 X1\nO2 endrepeat\nO1 endrepeat\n", [1, 2, 3, 4]),
        ("#1=0\nO1 while [1]\n#1=[#1+1]\nO2 if [#1 EQ 2]\nO1 continue\nO2 endif\nX#1\nO3 if [#1 GE 4]\n"
         "O1 break\nO3 endif\nO1 endwhile\n", [1, 3, 4]),
        ("#1=2\nO1 if [#1 EQ 1]\nX1\nO1 elseif [#1 EQ 2]\nX2\nO1 elseif [#1 EQ 2]\nX9\nO1 else\nX3\nO1 endif\nX7\n",
         [2, 7]),
        ("#1=5\nO1 if [#1 EQ 1]\nX1\nO1 elseif [#1 EQ 2]\nX2\nO1 else\nX3\nO1 endif\nX7\n", [3, 7]),
        ("#1=1\nO1 if [#1 EQ 1]\nX1\nO1 else\nX3\nO1 endif\nX7\n", [1, 7]),
        ("O100 sub\nX[#1+#2]\nO100 endsub [#1*10]\nO100 call [3] [4]\nX#<_value>\n", [7, 30]),
        ("#1=9\nO<step> sub\n#1=1\n#<depth>=4\nO<step> endsub\nO<step> call\nX#1\n", [9]),
        ("O1 sub\nO2 if [#1 GT 1]\nO3 call [#1-1]\nO2 endif\nX#1\nO1 endsub\nO3 sub\nX[#1*10]\nO3 return\nX99\n"
         "O3 endsub\nO1 call [2]\n", [10, 2]),
        ("#1=0\nWHILE [#1 LT 2] DO1\n#2=0\nWHILE [#2 LT 2] DO2\n#2=#2+1\nX[#1*10+#2]\nEND2\n#1=#1+1\nEND1\n",
         [1, 2, 11, 12]),
        ("#1=0\nN10 #1=#1+1\nX#1\nIF [#1 NE 3] GOTO 10\nGOTO 30\nX99\nN30 X30\n", [1, 2, 3, 30]),
        ("#1=4\nIF [#1 GT 3] THEN #1=8\nIF [#1 LT 3] THEN #1=1\nX#1\n", [8]),
        ("M98 P1000 L3\nX9\nM30\nO1000\nG91 X1\nG90\nM99\n", [1, 2, 3, 9]),
        ("M98 P21000\nM30\nO1000\nG91 X1\nG90\nM99\n", [1, 2]),
        ("#5=3\nG65 P1000 A7 X2 L2\nX#5\nM30\nO1000\nX[#1+#24]\n#5=1\nM99\n", [9, 9, 3]),
        ("G65 P1000 A7\nM30\nO1000\nIF [#2 EQ #0] GOTO 5\nX99\nN5 X#1 Y#2\nM99\n", [7]),
        ("M98 P7\nX1\nN50 X2\nM30\nO7\nX5\nM99 P50\n", [5, 2]),
        ("#1=1\nX[#1 GT 0 AND #1 LT 2]\n", [1]),
        ("X5\nX[#5420+1]\n", [5, 6]),
    ],
)  # fmt: skip
def test_flow(text: str, expected: list[float]) -> None:
    m = run(text + "M30\n")
    assert xs(m) == pytest.approx(expected)
    assert m.stopped_at == 0
    assert m.ended
    assert faults(m) == []


def test_every_move_stands_on_its_own_line() -> None:
    assert run("O1 repeat [2]\nX1\nX2\nO1 endrepeat\nM30\n").line.tolist() == [2, 4, 5, 4, 5]


def test_m99_ends_the_main_program() -> None:
    m = run("X1\nM99\n")
    assert m.ended
    assert [a.what for a in m.assumed] == ["M99"]


@pytest.mark.parametrize(
    ("text", "bound"),
    [
        ("O1 while [1]\nO1 endwhile\n", "blocks"),
        ("#1=0\nO1 while [1]\n#1=[#1+1]\nO1 endwhile\n", "blocks"),
        ("N1 GOTO 1\n", "blocks"),
        ("N[1]\n#1=1\nN1 GOTO #1\n", "blocks"),
        ("O1 repeat [1000000000]\nM8\nO1 endrepeat\n", "blocks"),
        ("O1 repeat [1000000000]\nX1\nX0\nO1 endrepeat\n", "moves"),
        ("O1 sub\nO2 call\nO1 endsub\nO2 sub\nO1 call\nO2 endsub\nO1 call\n", "calls"),
        ("M98 P5 L999999999\nM30\nO5\nM98 P6 L999999999\nM99\nO6\nM99\n", "blocks"),
    ],
)
def test_what_never_ends_is_ended(text: str, bound: str) -> None:
    m = run(text + "M30\n", limits=Limits(100_000, 20, 10_000))
    assert m.stopped_at > 2
    assert f"`[limits] {bound}`" in m.stopped_because
    assert "bound-reached" in faults(m)


def test_a_bound_can_be_raised() -> None:
    text = "#1=0\nO1 while [#1 LT 1000]\n#1=[#1+1]\nO1 endwhile\nM30\n"
    assert "bound-reached" in faults(run(text, limits=Limits(1000, 20, 1000)))
    assert run(text, limits=Limits(4000, 20, 1000)).ended


@pytest.mark.parametrize(
    "text",
    ["M98 P77\n", "O9 call\n", "O<nobody> call\n", "GOTO 9\n", "O1 endwhile\n", "O1 while [0]\n", "O1 break\n",
     "O1 if [1]\nO2 endif\n", "END1\n", "G65 P4 A1\n", "O5 else\n", "M98 P-3\n", "M98 P1.5\n"],
)  # fmt: skip
def test_what_leads_nowhere(text: str) -> None:
    m = run(text + "M30\n")
    assert faults(m)[-1] == "flow-unmatched"
    assert m.stopped_at == 3


def test_what_is_known_only_at_the_machine() -> None:
    m = run("G38.2 Z-5 F100\nG0 X[#5063 + 1]\nX3\nO1 if [#5063 GT 0]\nX4\nO1 endif\nM30\n")
    assert math.isnan(m.x1[2])
    assert m.x1[3] == pytest.approx(3)
    assert m.stopped_at == 6
    assert "known only when it runs" in m.stopped_because
    assert set(faults(m)) == {"value-unknown"}


def test_a_parameter_nobody_set() -> None:
    m = run("G1 X1 F#100\nX#<width>\nM30\n")
    assert faults(m).count("parameter-unset") == 2
    assert math.isnan(m.feed[1])


def test_subprograms_beside(tmp_path: Path) -> None:
    (tmp_path / "O1000.NC").write_text("O1000\nG91 X1\nG90\nM99\n")
    (tmp_path / "pocket.ngc").write_text("O<pocket> sub\nX#1\nO<pocket> endsub\nM2\n")
    m = run("M98 P1000 L2\nO<pocket> call [7]\nM30\n", tmp_path)
    assert xs(m) == pytest.approx([1, 2, 7])
    assert m.line.tolist() == [2, 3, 3, 4]
    assert [a.value for a in m.assumed] == ["O1000.NC", "pocket.ngc"]
    assert run("M98 P1000\nM30\n", None).stopped_at == 3


def test_nothing_outside_the_folder_is_read(tmp_path: Path) -> None:
    job = tmp_path / "job"
    job.mkdir()
    (tmp_path / "o1000").write_text("G0 X66\nM99\n")
    (tmp_path / "out.nc").write_text("O<out> sub\nG0 X66\nO<out> endsub\n")
    for name in ("../out", str(tmp_path / "out.nc"), "..", "/etc/passwd", "out"):
        assert run(f"O<{name}> call\nM30\n", job).stopped_at == 3
    (job / "o1000").symlink_to(tmp_path / "o1000")
    assert run("M98 P1000\nM30\n", job).stopped_at == 3
    os.mkfifo(job / "o1001")
    assert run("M98 P1001\nM30\n", job).stopped_at == 3


@pytest.mark.parametrize(
    "text",
    ["X" + "[" * 100_000, "X" + "[" * 50 + "1" + "]" * 50, "#" * 100_000 + "1=2", "X[" + "1+" * 200_000 + "1]",
     "#1=" + "9" * 100_000, "X[1E5]", "X[9**9**9**9]", "O<" + "a" * 90_000 + "> call", "X[[[1]", "#<>=1", "#1==2",
     "IF IF GOTO", "WHILE [1] DO", "G65", "M98", "O call", "#[", "X#", "X[#]", "X[SIN]", "O1 O2 O3 call", "G66 P1"],
)  # fmt: skip
def test_hostile_blocks(text: str) -> None:
    m = run(text + "\nX1\nM30\n", limits=Limits(10_000, 20, 10_000))
    assert m.stopped_at == 3 or xs(m)[-1] == pytest.approx(1)


NUMBERS = st.integers(-20, 20).map(float) | st.floats(-100, 100, allow_subnormal=False).map(lambda v: round(v, 3))


def both(op: str) -> st.SearchStrategy[tuple[str, float]]:
    def joined(two: tuple[tuple[str, float], tuple[str, float]]) -> tuple[str, float]:
        (left, a), (right, b) = two
        return f"[{left} {op} {right}]", worked(op, a, b)

    return st.tuples(TREES, TREES).map(joined)


def worked(op: str, a: float, b: float) -> float:
    if op == "MOD":
        return math.nan if b == 0 else a % abs(b)
    if op == "/":
        return math.nan if b == 0 else a / b
    return {"+": a + b, "-": a - b, "*": a * b}[op]


TREES: st.SearchStrategy[tuple[str, float]] = st.deferred(
    lambda: NUMBERS.map(lambda v: (f"{v:.3f}", float(f"{v:.3f}")))
    | both("+") | both("-") | both("*") | both("/") | both("MOD")
    | TREES.map(lambda one: (f"ABS[{one[0]}]", abs(one[1])))
    | TREES.map(lambda one: (f"-{one[0]}", -one[1]))
    | TREES.map(lambda one: (f"COS[{one[0]}]", math.cos(math.radians(one[1]))))
)  # fmt: skip


@pytest.mark.slow
@STEADY
@given(TREES)
def test_expressions_are_what_python_makes_of_them(tree: tuple[str, float]) -> None:
    text, expected = tree
    if len(text) > 3000 or text.count("[") > 50 or abs(expected) > 1e5:
        return
    m = run(f"X[{text}]\nM30\n")
    if math.isnan(expected):
        assert math.isnan(m.x1[1])
    elif "MOD" not in text:  # a rounding error away from a multiple, MOD is another number
        assert m.x1[1] == pytest.approx(expected, rel=1e-9, abs=1e-9)


AROUND = ["X[{}]", "Y1.5X[{}]F[2*#7]", "#12345=[{}]", "#[{}]=EXISTS[#5]", "X#12345Y2Z[{}]", "IF[{}]GOTO20"]


@pytest.mark.slow
@STEADY
@given(TREES, st.sampled_from(AROUND))
def test_a_block_parsed_by_its_form_is_the_same(tree: tuple[str, float], around: str) -> None:
    text = around.format(tree[0]).replace(" ", "")
    if len(text) > 3000 or text.count("[") > 50:
        return
    form, numbers = form_of(text)
    assert parse_alike(text, form, numbers) == parse(text)
    assert len(form) == len(text)


def test_a_card_says_what_words_mean_in_expressions_too() -> None:
    text = (STATED + "#1=4\nX5 Y[#1*10] F10\nG1 X[#1] F[#1]\nM30\n").encode()
    steps = interpret(read(text, "x.nc"), Controller(no_point="resolution"))
    assert (steps.x1[1], steps.y1[1]) == pytest.approx((0.005, 40))
    seconds = interpret(read(text, "x.nc"), Controller(feed_unit="mm/s"))
    assert seconds.feed[2] == pytest.approx(240)


def test_rows_of_files_beside_know_their_file(tmp_path: Path) -> None:
    (tmp_path / "o1000.nc").write_text("O1000\nG1 X1 F700\nO<edge> call\nG#<none> X3\nM99\n")
    (tmp_path / "edge.ngc").write_text("(edge)\nO<edge> sub\n\nX2 (never closed\nO<edge> endsub\n")
    m = run("M98 P1000\nX9\nM98 P1000\nM30\n", tmp_path)
    assert m.line.tolist() == [2, 3, 3, 4, 5, 5]
    assert m.beside is not None
    places = [m.beside.of(place) for place in m.beside.line.tolist()]
    assert places == [None, ("o1000.nc", 2), ("edge.ngc", 4), None, ("o1000.nc", 2), ("edge.ngc", 4)]
    assert m.feed_line.tolist() == [1, 3, 3, 3, 5, 5]
    assert m.beside.of(int(m.beside.feed_line[3])) == ("o1000.nc", 2)
    told = [(KINDS[kind], m.beside.of(place)) for kind, place in zip(m.faults.kind, m.beside.fault_line.tolist())]
    assert ("comment-unclosed", ("edge.ngc", 4)) in told
    assert ("parameter-unset", ("o1000.nc", 4)) in told
    assert m.faults.line.tolist() == sorted(m.faults.line.tolist())


def test_files_beside_are_taken_as_the_card_says(tmp_path: Path) -> None:
    (tmp_path / "o1000.nc").write_text("O1000\nG1 X1000 F10 B3\nX#1\nG81 X5 Z-1 R1\nM99\n")
    card = Controller(no_point="resolution", resolution=0.001, feed_unit="mm/s",
                      states={"B": "ignores", "G81": "refuses"})  # fmt: skip
    program = read(b"G21 G90 G94 G17 G54 F500\n#1=2500\nM98 P1000\nM30\n", "lowtide.nc")
    m = interpret(program, card, None, tmp_path)
    assert m.x1[0] == pytest.approx(1)
    assert m.feed[0] == pytest.approx(600)
    assert len(m) == 2
    assert {"code-ignored", "code-refused"} <= set(faults(m))


def test_what_following_came_to(tmp_path: Path) -> None:
    (tmp_path / "o1000.nc").write_text("O1000\nG1 X1\nM99\n")
    m = run("O1 sub\nM98 P1000\nO1 endsub\nO2 repeat [3]\nO1 call\nO2 endrepeat\nM30\n", tmp_path)
    assert m.followed is not None
    assert (m.followed.calls, m.followed.deepest, m.followed.files) == (6, 2, ("o1000.nc",))
    assert m.followed.blocks > 20
    assert run("X1\nM30\n").followed is None


@pytest.mark.parametrize("text", ["X[1+2] Q-\n", "X SIN[30]/[2]\n", "X[1+2] YY\n", "X[1] Y1.2.3\n", "#1=2 MODX 3\n"])
def test_a_block_with_an_expression_is_never_dropped_in_silence(text: str) -> None:
    assert "expression-unreadable" in faults(run(text + "M30\n"))


@pytest.mark.parametrize(
    "text",
    ["".join(f"X[{n}" + " " * 3900 + "]\n" for n in range(800)), ("X" + "[" * 100_000 + "\n") * 40],
)
def test_long_expressions_are_parsed_up_to_a_bound(text: str) -> None:
    m = run(text + "M30\n")
    assert "`[limits] expressions`" in m.stopped_because
    assert "bound-reached" in faults(m)


def test_the_bound_of_expressions_can_be_raised() -> None:
    text = "".join(f"X[#{n}+1]\n" for n in range(1, 300)) + "M30\n"
    assert "`[limits] expressions`" in run(text, limits=Limits(20_000, 20, 1000, 200)).stopped_because
    assert run(text, limits=Limits(20_000, 20, 1000, 400)).ended


def test_lines_that_differ_only_in_numbers_count_less() -> None:
    text = "#1=2\n" + "".join(f"X[#1+{n}.5]\n" for n in range(1000, 1400)) + "M30\n"
    m = run(text, limits=Limits(20_000, 20, 1000, 200))
    assert m.ended
    assert xs(m) == pytest.approx([n + 2.5 for n in range(1000, 1400)])


def test_a_long_expression_counts_as_many_blocks() -> None:
    loop = "O1 repeat [1000]\n#1=[1" + "+1" * 1900 + "]\nO1 endrepeat\nM30\n"
    assert "`[limits] blocks`" in run(loop, limits=Limits(20_000, 20, 1000)).stopped_because
    assert run(loop, limits=Limits(200_000, 20, 1000)).ended


@pytest.mark.slow
def test_more_structure_than_is_planned_says_so() -> None:
    m = run("".join(f"O{n} while [0]\nO{n} endwhile\n" for n in range(6000)) + "M30\n")
    assert "O words, loops and branches" in m.stopped_because
    assert set(faults(m)) == {"bound-reached"}


def test_line_numbers_where_lines_end_in_a_carriage_return() -> None:
    m = run("GOTO 30\nX99\nN30 M98 P7\nM30\nO7\nX5\nM99\n".replace("\n", "\r"))
    assert xs(m) == [5]


def test_an_expression_behind_a_byte_order_mark() -> None:
    m = interpret(read(b"\xef\xbb\xbf#1=7\n" + STATED.encode() + b"X#1\nM30\n", "lowtide.nc"), Controller())
    assert xs(m) == [7]
    assert not set(faults(m)) & {"expression-unreadable", "parameter-unset"}


@pytest.mark.parametrize(
    ("text", "ends"),
    [
        ("O7\nG91 G1 X1\nG90\nM99\nO1\n{}M98 P7\nX5\nM30\n", [1, 5]),
        ("%\nO7\nG91 G1 X1\nG90\nM99\n:1\n{}M98 P20007\nX5\nM30\n%\n", [1, 2, 5]),
        ("O1\n{}M98 P7\nX5\nM30\nO7\nG91 G1 X1\nG90\nM99\nO2\nX99\nM30\n", [1, 5]),
        ("O7\n{}X3\nM99\nO1\nX9\nM30\n", [3]),  # nobody calls it: it runs round and round
    ],
)
def test_subprograms_may_stand_above_the_program(text: str, ends: list[float]) -> None:
    m = interpret(read(text.format(STATED).encode(), "lowtide.nc"), Controller())
    assert xs(m) == ends
    assert any(each.what == "main program" for each in m.assumed) == (ends != [3] and m.line[0] > 5)


def test_more_names_than_are_kept_is_a_bound() -> None:
    m = run("".join(f"#<n{n}>={n}\n" for n in range(300)) + "M30\n")
    assert faults(m) == ["bound-reached"]
    assert "named parameters" in m.stopped_because


def test_a_line_of_flow_that_cannot_be_read_is_what_stops() -> None:
    m = run("X1\nIF #1 EQ 3 GOTO 30\nX98\nN30 X3\nM30\n")
    assert faults(m) == ["expression-unreadable"]
    assert m.stopped_at == 4
    assert m.stopped_because == "a line that can be read"


def test_a_program_behind_the_closing_percent_cannot_be_called() -> None:
    m = run("M98 P7\nX5\nM30\n%\nO7\nX1\nM99\n%\n")
    assert faults(m) == ["flow-unmatched"]
    assert m.stopped_at == 3

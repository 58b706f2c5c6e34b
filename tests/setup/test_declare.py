"""Which declaration files are found, and how what they say is combined."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from gclint.motion.interpret import interpret
from gclint.problem import Problem
from gclint.program.read import read
from gclint.setup.declare import Options, declare
from gclint.setup.resolve import shop_setup, with_program
from gclint.tables.setup import Setup

PLAIN = "G21 G90 G94 G17 G54\nM3 S10000\nG0 Z5\nG0 X0 Y0\nG1 Z-1 F300\nG1 X50 F1000\nG0 Z5\nM30\n"
WITH_TOOL = PLAIN.replace("M3", "T3 M6\nM3")
SHOP = '[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 mm"\nflutes = 2\nflute_length = "20 mm"\n'
SHOP_TWO = SHOP + '[[tool]]\nnumber = 2\nshape = "ball"\ndiameter = "3 mm"\n'
DIAL = """[spindle]
kind = "dial"
dial = [ { mark = "A", stated = 9500, measured = 8100 }, { mark = "B", stated = 12500 } ]
"""

Make = Callable[..., Setup]


@pytest.fixture
def make(tmp_path: Path) -> Make:
    """Resolves a program with the given files in its folder and the given options."""

    def resolved(program: str = PLAIN, shop: str = "", job: str = "", **options: object) -> Setup:
        folder = tmp_path / "job"
        folder.mkdir(exist_ok=True)
        for name, text in (("shop.toml", shop), ("job.toml", job), ("part.nc", program)):
            if text:
                (folder / name).write_text(text)
        declared = declare(Options(**options), str(folder / "part.nc"))  # type: ignore[arg-type]
        red = read(program.encode(), "part.nc")
        setup = shop_setup(declared)
        return with_program(setup, declared, red, interpret(red, setup.controller))

    return resolved


# which files


def test_files_beside_the_program_are_used_and_named(make: Make) -> None:
    setup = make(shop=SHOP, job='material = "beech"')
    assert [Path(p).name for p in setup.sources] == ["job.toml", "shop.toml"]
    assert {a.what for a in setup.assumed} >= {"job file", "shop file"}
    assert setup.material is not None


def test_the_nearest_folder_above_is_searched(tmp_path: Path) -> None:
    (tmp_path / "shop.toml").write_text(SHOP)
    (tmp_path / "a" / "b").mkdir(parents=True)
    declared = declare(Options(), str(tmp_path / "a" / "b" / "x.nc"))
    assert declared.shop_file is not None
    assert Path(declared.shop_file.path) == tmp_path / "shop.toml"


def test_a_job_above_a_nearer_shop_is_not_used(tmp_path: Path) -> None:
    (tmp_path / "job.toml").write_text("")
    (tmp_path / "a").mkdir()
    (tmp_path / "a" / "shop.toml").write_text(SHOP)
    declared = declare(Options(), str(tmp_path / "a" / "x.nc"))
    assert (declared.job, declared.shop is not None) == (None, True)


def test_with_an_option_only_that_file_and_what_it_names(tmp_path: Path) -> None:
    (tmp_path / "shop.toml").write_text(SHOP)
    (tmp_path / "job.toml").write_text('material = "oak"')
    other = tmp_path / "other"
    other.mkdir()
    (other / "my.toml").write_text(SHOP_TWO)
    (other / "job.toml").write_text('shop = "my.toml"\nprogram = ["x.nc", "y.nc"]\npacks = ["house.toml"]')
    (other / "house.toml").touch()
    by_shop = declare(Options(shop=str(other / "my.toml")), str(tmp_path / "x.nc"))
    assert by_shop.job is None
    assert len(by_shop.shop.tool if by_shop.shop else ()) == 2
    by_job = declare(Options(job=str(other / "job.toml")), str(tmp_path / "x.nc"))
    assert by_job.assumed == ()
    assert len(by_job.shop.tool if by_job.shop else ()) == 2
    assert [Path(p) for p in by_job.programs] == [other / "x.nc", other / "y.nc"]
    assert [Path(p) for p in by_job.packs] == [other / "house.toml"]


def test_house_packs_of_the_shop_come_before_those_of_the_job_and_each_once(tmp_path: Path) -> None:
    for name in ("ours.toml", "theirs.toml"):
        (tmp_path / name).touch()
    (tmp_path / "shop.toml").write_text('packs = ["ours.toml"]')
    (tmp_path / "job.toml").write_text('shop = "shop.toml"\npacks = ["theirs.toml", "./ours.toml"]')
    assert [Path(p).name for p in declare(Options(), str(tmp_path / "x.nc")).packs] == ["ours.toml", "theirs.toml"]
    (tmp_path / "job.toml").write_text('shop = "shop.toml"\npacks = ["theirs.toml", "our.toml"]')
    with pytest.raises(Problem, match=r'there is no rule pack "our.toml"') as caught:
        declare(Options(), str(tmp_path / "x.nc"))
    assert (caught.value.line, caught.value.column) == (2, 25)


def test_a_job_that_names_another_program_is_said_to(tmp_path: Path) -> None:
    (tmp_path / "job.toml").write_text('program = "other.nc"')
    declared = declare(Options(), str(tmp_path / "x.nc"))
    assert any("other.nc" in a.because for a in declared.assumed)
    assert not any("other.nc" in a.because for a in declare(Options(), str(tmp_path / "other.nc")).assumed)


@pytest.mark.parametrize("option", ["shop", "job"])
def test_a_missing_file_is_a_problem(tmp_path: Path, option: str) -> None:
    with pytest.raises(Problem, match=f"there is no such {option} file"):
        declare(Options(**{option: str(tmp_path / "none.toml")}), None)


def test_a_job_that_names_a_missing_shop(tmp_path: Path) -> None:
    (tmp_path / "job.toml").write_text('\nshop = "none.toml"')
    with pytest.raises(Problem) as caught:
        declare(Options(job=str(tmp_path / "job.toml")), None)
    assert (caught.value.line, caught.value.column) == (2, 8)


def test_a_folder_or_binary_as_a_file_is_a_problem(tmp_path: Path) -> None:
    (tmp_path / "binary.toml").write_bytes(b"\xff\xfe\x00\x80")
    for path in (tmp_path, tmp_path / "binary.toml"):
        with pytest.raises(Problem):
            declare(Options(shop=str(path)), None)


# tools


def test_a_tool_of_the_command_line_replaces_the_shops_whole(make: Make) -> None:
    tool = make(shop=SHOP, tools=("1: ball 4mm",)).tools[1]
    assert (tool.shape, tool.flutes, tool.flute_length) == ("ball", None, None)


def test_one_declared_tool_and_no_t_is_that_tool(make: Make) -> None:
    setup = make(shop=SHOP)
    assert setup.tools[-1].number == 1
    assert any("tool 1" in a.value for a in setup.assumed)


def test_two_declared_tools_and_no_t_is_none(make: Make) -> None:
    assert -1 not in make(shop=SHOP_TWO).tools


def test_one_declared_tool_is_not_taken_for_another_number(make: Make) -> None:
    setup = make(WITH_TOOL, shop=SHOP)
    assert set(setup.tools) == {1}


def test_tool_map(make: Make) -> None:
    setup = make(WITH_TOOL, shop=SHOP_TWO, job='tool_map = { "3" = 2 }')
    assert (setup.tools[3].number, setup.tools[3].shape) == (3, "ball")


def test_a_tool_of_the_command_line_wins_over_the_map(make: Make) -> None:
    setup = make(WITH_TOOL, shop=SHOP_TWO, job='tool_map = { "3" = 2 }', tools=("3: flat 2mm",))
    assert setup.tools[3].diameter == pytest.approx(2.0)


def test_a_drills_angle_is_assumed(make: Make) -> None:
    setup = make(tools=("1: drill 3mm",))
    assert setup.tools[1].angle == pytest.approx(118.0)
    assert any("118" in a.value for a in setup.assumed)
    assert make(tools=("1: drill 3mm 90deg",)).tools[1].angle == pytest.approx(90.0)


# spindle and material


def test_without_a_shop_the_spindle_is_commanded(make: Make) -> None:
    assert make().spindle.kind == "commanded"


def test_dial(make: Make) -> None:
    setup = make(shop=SHOP + DIAL, job='dial = "A"')
    assert (setup.dial, setup.spindle.kind) == ("A", "dial")
    assert [mark.true for mark in setup.spindle.dial] == pytest.approx([8100, 12500])


def test_material_of_the_option_wins(make: Make) -> None:
    setup = make(job='material = "oak"', material="mdf")
    assert setup.material is not None
    assert setup.material.name == "mdf"


def test_fail_at(make: Make) -> None:
    assert make().fail_at == "change"
    assert make(job='fail_at = "halt"').fail_at == "halt"
    assert make(job='fail_at = "halt"', fail_at="consider").fail_at == "consider"


def test_measured_windows_follow_the_tool_map(make: Make) -> None:
    own = '[windows."oak".2]\nfz = ["0.02 mm", "0.05 mm"]\nslot = { fz = ["0.03 mm", "0.04 mm"] }\n'
    setup = make(WITH_TOOL, shop=SHOP_TWO + own, job='material = "oak"\ntool_map = { "3" = 2 }')
    assert setup.measured_windows[3][""].high == pytest.approx(0.05)
    assert setup.measured_windows[3]["slot"].standing == "measured"
    assert 1 not in setup.measured_windows
    assert make(WITH_TOOL, shop=SHOP_TWO + own, job='material = "mdf"').measured_windows == {}


@pytest.mark.parametrize(
    ("name", "material", "used"),
    [
        ("aluminium", "aluminium-6061", True),
        ("aluminium-6061", "aluminum", True),
        ("bog-oak", "oak", False),
        ("oak", "mdf", False),
    ],
)
def test_windows_of_which_material(make: Make, name: str, material: str, used: bool) -> None:
    own = f'[windows."{name}".1]\nfz = ["0.02 mm", "0.05 mm"]\n'
    assert bool(make(shop=SHOP + own, material=material).measured_windows) == used


# the blank


def stock_of(setup: Setup) -> tuple[float | None, float | None]:
    assert setup.stock is not None
    return setup.stock.top, setup.stock.bottom


@pytest.mark.parametrize(
    ("z_zero", "top", "bottom"),
    [('"stock-top"', 0.0, -18.0), ('"table"', 18.0, 0.0), ('{ above_table = "10 mm" }', 8.0, -10.0)],
)
def test_z_zero(make: Make, z_zero: str, top: float, bottom: float) -> None:
    job = f'z_zero = {z_zero}\n[stock]\nsize = ["60 mm", "40 mm", "18 mm"]\n'
    assert stock_of(make(job=job)) == pytest.approx((top, bottom))


def test_measured_thickness_replaces_the_label(make: Make) -> None:
    job = 'z_zero = "stock-top"\n[stock]\nsize = ["60 mm", "40 mm", "18 mm"]\nmeasured_thickness = "17.4 mm"\n'
    assert stock_of(make(job=job)) == pytest.approx((0.0, -17.4))


def test_z_zero_undeclared_is_assumed_only_where_the_program_cuts_below_it(make: Make) -> None:
    setup = make(stock="60 x 40 x 18 mm at 0 0")
    assert stock_of(setup) == pytest.approx((0.0, -18.0))
    assert any(a.what == "Z zero" for a in setup.assumed)
    assert stock_of(make(PLAIN.replace("Z-1", "Z1"), stock="60 x 40 x 18 mm at 0 0")) == (None, None)


def test_a_blank_without_a_corner_is_not_placed(make: Make) -> None:
    stock = make(stock="60 x 40 x 18 mm").stock
    assert stock is not None
    assert (stock.placed, stock.x, stock.declared) == (False, None, True)
    stock = make(stock="60 x 40 x 18 mm at -10 5").stock
    assert stock is not None
    assert stock.placed
    assert stock.x == pytest.approx((-10.0, 50.0))
    assert stock.y == pytest.approx((5.0, 45.0))


def test_the_options_blank_replaces_the_jobs(make: Make) -> None:
    job = 'z_zero = "table"\n[stock]\nsize = ["60 mm", "40 mm", "18 mm"]\nmeasured_thickness = "17 mm"'
    assert stock_of(make(job=job, stock="9 x 9 x 9 mm")) == pytest.approx((9.0, 0.0))


def test_no_blank_is_none_and_asked_for(make: Make) -> None:
    setup = make()
    assert setup.stock is None
    assert {"stock.size", "material", "z_zero", "tool"} <= set(setup.not_declared)


# acceptances


def test_acceptances_of_the_job_and_of_comments(make: Make) -> None:
    program = PLAIN.replace("G1 Z-1", "(gclint accept straight-plunge because the holes are drilled first)\nG1 Z-1")
    job = '[[accept]]\nrule = "chip-too-thin"\ntool = 1\nbecause = "a test cut"'
    first, second = make(program, job=job).accepts
    assert (first.rule, first.tool, first.line, first.because) == ("chip-too-thin", 1, None, "a test cut")
    assert (second.rule, second.line, second.because) == ("straight-plunge", 5, "the holes are drilled first")


@pytest.mark.parametrize("comment", ["gclint accept straight-plunge", "gclint accept", "gclint accept x because "])
def test_an_acceptance_without_a_reason_is_a_problem(make: Make, comment: str) -> None:
    with pytest.raises(Problem) as caught:
        make(f"({comment})\n{PLAIN}")
    assert (caught.value.path, caught.value.line) == ("part.nc", 1)


# contradictions


@pytest.mark.parametrize(
    ("shop", "job", "file", "line", "says"),
    [
        (SHOP + SHOP, "", "shop.toml", 8, "tool 1 is declared twice"),
        ('[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "2 m"', "", "shop.toml", 4, "0.02 to 1000 mm wide"),
        (SHOP + 'corner_radius = "4 mm"', "", "shop.toml", 7, "larger than half the diameter"),
        ('[spindle]\nkind = "dial"', "", "shop.toml", 2, "needs its marks"),
        ("[spindle]\nrange = [9000, 8000]", "", "shop.toml", 2, "the first speed must be under the second"),
        (DIAL.replace('"B"', '"A"'), "", "shop.toml", 3, "given twice"),
        ('[machine]\ncontroller = "hoby-3-axis"', "", "shop.toml", 2, 'nearest: "hobby-3-axis"'),
        ('[machine]\ncontroller = "ours.toml"', "", "shop.toml", 2, 'no controller card "ours.toml" in the folder'),
        ('[windows."oak".9]\nfz = ["1 mm", "2 mm"]', "", "shop.toml", 1, "has no tool 9"),
        (SHOP + '[windows."oak".1]\nfz = ["2 mm", "1 mm"]', "", "shop.toml", 8, "not under the high one"),
        (SHOP + '[windows."birch-plywod".1]\nfz = ["1 mm", "2 mm"]', "", "shop.toml", 7, 'nearest: "birch-plywood"'),
        (SHOP + '[windows."acrylic".1]\nfz = ["1 mm", "2 mm"]', "", "shop.toml", 7, "more than one"),
        (DIAL, 'dial = "C"', "job.toml", 1, 'no mark "C"'),
        (SHOP, 'dial = "C"', "job.toml", 1, "no shop file declares a spindle with a dial"),
        ("", 'material = "bech"', "job.toml", 1, 'nearest: "beech"'),
        ("", 'material = "acrylic"', "job.toml", 1, '"cast-acrylic" or "extruded-acrylic"'),
        (SHOP, 'tool_map = { "3" = 9 }', "job.toml", 1, "declares a tool 9"),
        (SHOP, 'tool_map = { "x" = 1 }', "job.toml", 1, "a whole number in quotes"),
        ("", '[[accept]]\nrule = "x"\nbecause = " "', "job.toml", 3, "needs its reason"),
        ("", '[[keep_out]]\nfrom = ["1 mm", "1 mm", "1 mm"]\nto = ["0 mm", "2 mm", "2 mm"]', "job.toml", 3, "in X"),
    ],
)
def test_contradictions_are_placed(make: Make, shop: str, job: str, file: str, line: int, says: str) -> None:
    with pytest.raises(Problem) as caught:
        make(shop=shop, job=job)
    assert Path(caught.value.path or "").name == file
    assert caught.value.line == line
    assert says in caught.value.says


@pytest.mark.parametrize(
    ("options", "says"),
    [
        ({"material": "bech"}, 'nearest: "beech"'),
        ({"material": "acrylic"}, "extruded-acrylic"),
        ({"fail_at": "halts"}, 'nearest: "halt"'),
        ({"stock": ""}, "does not hold three sizes"),
        ({"tools": ("1: flat 3mm", "1: flat 4mm")}, "given twice"),
    ],
)
def test_bad_options(make: Make, options: dict[str, object], says: str) -> None:
    with pytest.raises(Problem) as caught:
        make(**options)
    assert says in caught.value.says
    assert (caught.value.path or "").startswith("--")


# the tool in the collet, where the program calls none

SHOP_THREE = SHOP_TWO + '[[tool]]\nnumber = 3\nshape = "flat"\ndiameter = "3 mm"\n'


@pytest.mark.parametrize(
    ("job", "tools", "program", "number", "because"),
    [
        ("tool = 2\n", (), PLAIN, 2, "job.toml, line 1"),
        ("tool = 2\n", ("1: flat 8mm 2fl", "2: flat 6mm 1fl"), PLAIN, 2, "job.toml, line 1"),
        ("tool = 2\n", ("3: flat 3mm 1fl",), PLAIN, 3, "only --tool"),
        ("", ("3: flat 3mm 1fl",), PLAIN, 3, "only --tool"),
        ("", ("9: flat 3mm 1fl",), PLAIN, 9, "only --tool"),
        ("tool_order = [2]\n", (), PLAIN, 2, "tool_order"),
        ("", (), "(3 mm flat end mill)\n" + PLAIN, 3, "comment on line 1"),
    ],
)
def test_which_tool_is_in_the_collet(
    make: Make, job: str, tools: tuple[str, ...], program: str, number: int, because: str
) -> None:
    setup = make(program, shop=SHOP_THREE, job=job, tools=tools)
    assert setup.tools[-1].number == number
    (taken,) = (a for a in setup.assumed if a.what == "tool in the spindle")
    assert because in taken.because
    assert str(number) in taken.value


def test_of_several_tools_none_is_guessed(make: Make) -> None:
    assert -1 not in make(shop=SHOP_THREE).tools
    assert -1 not in make("(8 mm flat end mill)\n" + PLAIN, shop=SHOP_THREE).tools
    # two are 3 mm wide and flat
    twice = SHOP_THREE + '[[tool]]\nnumber = 4\nshape = "flat"\ndiameter = "3 mm"\n'
    assert -1 not in make("(3 mm flat end mill)\n" + PLAIN, shop=twice).tools


def test_a_program_that_calls_its_tool_keeps_it(make: Make) -> None:
    setup = make(WITH_TOOL, shop=SHOP_THREE, job="tool = 1\n")
    assert -1 not in setup.tools
    assert setup.tools[3].diameter == 3.0


def test_a_program_of_rapids_alone_has_a_tool_too(make: Make) -> None:
    assert make("G21 G90 G94\nM3 S9000\nG0 Z5\nG0 X5 Y5\nG0 Z-2\nG0 Z5\nM30\n", shop=SHOP).tools[-1].number == 1


@pytest.mark.parametrize("options", [{}, {"tools": ("1: flat 3mm 2fl",)}])
def test_a_job_may_name_only_a_declared_tool(make: Make, options: dict[str, object]) -> None:
    with pytest.raises(Problem) as caught:
        make(shop=SHOP_TWO, job='material = "beech"\ntool = 4\n', **options)
    assert (Path(str(caught.value.path)).name, caught.value.line, caught.value.column) == ("job.toml", 2, 8)
    assert "declares a tool 4 (declared: 1, 2)" in caught.value.says


def test_the_mark_of_the_command_line_goes_before_the_job(make: Make) -> None:
    assert make(shop=SHOP + DIAL, job='dial = "A"').dial == "A"
    assert make(shop=SHOP + DIAL, job='dial = "A"', dial="B").dial == "B"
    assert make(shop=SHOP + DIAL, dial="A").dial == "A"
    with pytest.raises(Problem) as caught:
        make(shop=SHOP + DIAL, dial="C")
    assert caught.value.path == "--dial"
    assert "its marks: A, B" in caught.value.says
    with pytest.raises(Problem, match="no shop file declares a spindle with a dial"):
        make(shop=SHOP, dial="A")

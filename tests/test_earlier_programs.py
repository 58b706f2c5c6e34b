"""Stock that carries over, from one program to the next and over a flip, against dexels: no code of the sweep."""

from __future__ import annotations

import random
from pathlib import Path

import numpy as np
import pytest

from gclint.check import check, trace
from gclint.problem import Problem
from gclint.run import Tables
from gclint.setup.declare import Options
from gclint.stock_store import StockStore
from gclint.tables.finding import Checked

HEAD = "G21 G90 G94 G17 G40 G49 G80 G54\nT1 M6\nS16000 M3\nG0 Z5\n"
END = "G0 Z20\nM5\nM30\n"
TOOLS = ("1: flat 6mm 2fl", "2: flat 3mm 2fl", "3: ball 6mm 2fl")
WIDE, HIGH, THICK = 60.0, 40.0, 12.0
BLANK = f'[stock]\nsize = ["{WIDE} mm", "{HIGH} mm", "{THICK} mm"]\ncorner = ["0 mm", "0 mm"]\n'
ROUGH = HEAD + "G0 X10 Y10\nG1 Z0 F400\nG1 X50 Z-3 F1200\nG1 X10\nG1 X50 Z-6\nG1 X10\n" + END
Slot = tuple[float, float, float, float, float]  # from x, y to x, y, depth


def written(folder: Path, job: str, **programs: str) -> Path:
    (folder / "job.toml").write_text(job)
    for name, text in programs.items():
        (folder / f"{name}.nc").write_text(text)
    return folder


def traced(path: Path, store: StockStore | None = None, **options: str) -> Tables:
    return trace(path.read_bytes(), path.name, Options(tools=TOOLS, **options), str(path), store=store)


def checked(path: Path, **options: str) -> Checked:
    return check(path.read_bytes(), path.name, Options(tools=TOOLS, material="birch-plywood", **options), str(path))


def slots(seed: int, count: int = 6) -> list[Slot]:
    draw = random.Random(seed)
    points = [(draw.uniform(0, WIDE), draw.uniform(0, HIGH)) for _ in range(2 * count)]
    return [(*points[2 * n], *points[2 * n + 1], draw.uniform(1, 10)) for n in range(count)]


def program(cuts: list[Slot], head: str = HEAD) -> str:
    text = head
    for x0, y0, x1, y1, depth in cuts:
        text += f"G0 X{x0:.4f} Y{y0:.4f}\nG1 Z{-depth:.4f} F300\nG1 X{x1:.4f} Y{y1:.4f} F1200\nG0 Z5\n"
    return text + END


class Dexels:
    """Fine columns of material, each from depth `top` to depth `end` below the face that lies up."""

    STEP = 0.05

    def __init__(self) -> None:
        x, y = (np.arange(self.STEP / 2, size, self.STEP) for size in (WIDE, HIGH))
        self.x, self.y = np.meshgrid(x, y)
        self.top, self.end = np.zeros(self.x.shape), np.full(self.x.shape, THICK)

    def cut(self, slot: Slot, radius: float = 3.0) -> float:
        """Cuts one slot with a flat tool and gives the volume that it takes, mm3."""
        x0, y0, x1, y1, depth = slot
        along = ((self.x - x0) * (x1 - x0) + (self.y - y0) * (y1 - y0)) / ((x1 - x0) ** 2 + (y1 - y0) ** 2)
        along = np.clip(along, 0, 1)
        under = np.hypot(self.x - x0 - along * (x1 - x0), self.y - y0 - along * (y1 - y0)) <= radius
        floor = np.where(under, np.minimum(depth, self.end), self.top)
        taken = np.maximum(floor - self.top, 0)
        self.top = self.top + taken
        return float(taken.sum()) * self.STEP**2

    def turn(self, axis: str) -> None:
        mirror = (slice(None, None, -1), slice(None)) if axis == "x" else (slice(None), slice(None, None, -1))
        self.top, self.end = (THICK - self.end)[mirror], (THICK - self.top)[mirror]


def volumes(tables: Tables) -> list[float]:
    """What each slot of a program takes, mm3: its descent and its cut."""
    pieces, motion = tables.engagement.pieces, tables.motion
    of_move = np.bincount(pieces.move, weights=pieces.removed, minlength=len(motion))
    feeds = np.flatnonzero(motion.kind != 0)
    return [float(of_move[a] + of_move[b]) for a, b in zip(feeds[::2], feeds[1::2])]


@pytest.mark.parametrize("axis", ["x", "y"])
@pytest.mark.parametrize("seed", range(4))
def test_a_second_side_meets_what_the_first_left(tmp_path: Path, axis: str, seed: int) -> None:
    front, back = slots(seed), slots(seed + 100)
    flip = f'[[flip]]\nbefore = "back.nc"\naxis = "{axis}"\n'
    job = f'program = ["front.nc", "back.nc"]\nz_zero = "stock-top"\n{BLANK}{flip}'
    home = written(tmp_path, job, front=program(front), back=program(back))
    model = Dexels()
    alone = [model.cut(slot) for slot in front]
    model.turn(axis)
    wanted = [model.cut(slot) for slot in back]
    assert volumes(traced(home / "front.nc")) == pytest.approx(alone, rel=0.01, abs=3)
    tables = traced(home / "back.nc")
    # a wall of the underside is known to a cell: half a cell of every pocket's rim may be missing
    assert sum(volumes(tables)) == pytest.approx(sum(wanted), rel=0.02)
    for got, want in zip(volumes(tables), wanted):
        assert got == pytest.approx(want, rel=0.05, abs=15)
    left = (model.end - model.top).mean()
    found = tables.engagement
    assert found.under is not None
    thick = np.maximum(THICK - found.cut - found.under, 0).mean()
    assert thick == pytest.approx(left, rel=0.01)


@pytest.mark.parametrize("seed", range(3))
def test_two_programs_in_their_order_are_one_program(tmp_path: Path, seed: int) -> None:
    first, second = slots(seed), slots(seed + 50)
    home = written(
        tmp_path, f'program = ["a.nc", "b.nc"]\n{BLANK}', a=program(first), b=program(second),
        both=program([*first, *second]),
    )
    (home / "whole").mkdir()
    whole = written(home / "whole", f'program = "both.nc"\n{BLANK}', both=program([*first, *second]))
    wanted = volumes(traced(whole / "both.nc"))
    assert volumes(traced(home / "a.nc")) + volumes(traced(home / "b.nc")) == pytest.approx(wanted, rel=1e-5)


def test_finer_cells_are_cut_from_the_start(tmp_path: Path) -> None:
    small = HEAD.replace("T1", "T2")
    home = written(tmp_path, f'program = ["a.nc", "b.nc"]\n{BLANK}', a=program(slots(1)), b=program(slots(2), small))
    a, b = traced(home / "a.nc"), traced(home / "b.nc")
    assert b.engagement.cell < 0.6 * a.engagement.cell
    assert b.engagement.start is not None
    assert b.engagement.start.top.cut.sum() * b.engagement.cell**2 == pytest.approx(
        a.engagement.cut.sum() * a.engagement.cell**2, rel=0.01
    )


def test_an_undeclared_blank_grows_with_the_programs(tmp_path: Path) -> None:
    a = program([(10, 10, 30, 10, 3)])
    b = program([(10, 10, 30, 10, 5), (70, 50, 90, 60, 2)])
    home = written(tmp_path, 'program = ["a.nc", "b.nc"]\nz_zero = "stock-top"\n', a=a, b=b)
    found = traced(home / "b.nc").engagement
    assert found.box is not None
    assert found.box.x is not None
    assert found.box.x[0] == pytest.approx(1)
    assert found.box.x[1] == pytest.approx(99)
    assert volumes(traced(home / "b.nc"))[0] == pytest.approx((20 * 6 + np.pi * 9) * 2, rel=0.02)


def test_a_finishing_program_is_judged_on_what_was_roughed(tmp_path: Path) -> None:
    """The deep plunge stands in the slot that the rough program cut: 1 mm of it is solid."""
    finish = HEAD + "G0 X10 Y10\nG0 Z-6\nG1 Z-7 F400\nG1 X50 F1200\n" + END
    plain = written(tmp_path, BLANK, rough=ROUGH, finish=finish)
    assert any(f.rule == "rapid-through-stock" and f.grade == "halt" for f in checked(plain / "finish.nc").findings)
    for order in ('program = ["rough.nc", "finish.nc"]\n', 'program = "finish.nc"\nafter = ["rough.nc"]\n',
                  'after = ["rough.nc"]\n'):  # fmt: skip
        (plain / "job.toml").write_text(order + BLANK)
        found = checked(plain / "finish.nc")
        assert not [f for f in found.findings if f.grade != "consider"], order
        assert ("the blank", "as left by rough.nc") in [(a.what, a.value) for a in found.assumed]
        assert [used.path for used in found.used if used.what == "earlier program"] == [str(plain / "rough.nc")]


def test_a_whole_blank_is_said_to_be_assumed(tmp_path: Path) -> None:
    home = written(tmp_path, BLANK, rough=ROUGH)
    assert [a.value for a in checked(home / "rough.nc").assumed if a.what == "the blank"] == [
        "whole: nothing has been cut before"
    ]


def test_a_hole_of_the_first_side_is_a_hole_on_the_second(tmp_path: Path) -> None:
    """A rapid goes down where the first side was cut through, 10 mm from the other edge after the flip about X."""
    front = HEAD + "G0 X10 Y10\nG1 Z-12 F300\nG1 X50 F1200\n" + END
    back = HEAD + f"G0 X30 Y{HIGH - 10}\nG0 Z-5\nG0 Z5\nG0 X30 Y10\nG1 Z0 F300\nG1 X40 Z-1 F900\n" + END
    flip = '[[flip]]\nbefore = "back.nc"\naxis = "x"\n'
    home = written(tmp_path, f'program = ["front.nc", "back.nc"]\n{BLANK}', front=front, back=back)
    assert [f.rule for f in checked(home / "back.nc").findings if f.grade == "halt"] == ["rapid-through-stock"]
    written(tmp_path, f'program = ["front.nc", "back.nc"]\n{BLANK}{flip}')
    assert not [f for f in checked(home / "back.nc").findings if f.grade == "halt"]
    written(tmp_path, f'program = ["front.nc", "back.nc"]\n{BLANK}{flip.replace(chr(34) + "x", chr(34) + "y")}')
    assert [f.rule for f in checked(home / "back.nc").findings if f.grade == "halt"] == ["rapid-through-stock"]


def test_a_flip_gives_what_holds_from_then_on(tmp_path: Path) -> None:
    flip = '''[[flip]]
before = "back.nc"
axis = "y"
corner = ["5 mm", "-40 mm"]
z_zero = "table"
hold = { by = "tape", spoilboard = "0.5 mm" }
keep_out = [ { name = "stop", from = ["-9 mm", "-9 mm", "0 mm"], to = ["-5 mm", "-5 mm", "9 mm"] } ]
'''
    start = 'program = ["front.nc", "back.nc", "last.nc"]\nz_zero = "stock-top"\n'
    hold = '[hold]\nby = "clamps"\n'
    home = written(tmp_path, start + BLANK + hold + flip, front=ROUGH, back=ROUGH.replace("Z", "Z1"), last=ROUGH)
    front, last = traced(home / "front.nc").setup, traced(home / "last.nc").setup
    assert front.stock is not None
    assert front.stock.x == (0, WIDE)
    assert front.stock.top == 0
    assert front.hold.by == "clamps"
    assert not front.keep_out
    assert not front.turned
    assert last.stock is not None
    assert last.stock.x == (5, 5 + WIDE)
    assert last.stock.top == THICK
    assert last.hold.by == "tape"
    assert [box.name for box in last.keep_out] == ["stop"]
    assert not last.turned
    assert traced(home / "back.nc").setup.turned


PROGRAMS = 'program = ["rough.nc", "finish.nc", "back.nc"]\n'
KEEP_OUT = 'keep_out = [ { from = ["1 mm", "0 mm", "0 mm"], to = ["0 mm", "1 mm", "1 mm"] } ]\n'
FLIP = '[[flip]]\nbefore = "back.nc"\naxis = "x"\n'


@pytest.mark.parametrize(
    ("job", "line", "column", "says"),
    [
        ('after = ["back.nc"]\n' + PROGRAMS + BLANK, 2, 37, "would come after itself"),
        ('program = ["rough.nc", "rough.nc", "back.nc"]\n' + BLANK, 1, 24, "would come after itself"),
        ('after = ["gone.nc"]\nprogram = "back.nc"\n' + BLANK, 1, 10, 'there is no program "gone.nc"'),
        ('after = ["../rough.nc"]\nprogram = "back.nc"\n' + BLANK, 1, 10, "lies outside the folder of this job"),
        (PROGRAMS + BLANK + FLIP.replace("back.nc", "bak.nc"), 6, 10, "is not among the programs of this job"),
        (PROGRAMS + BLANK + FLIP + FLIP.replace('"x"', '"y"'), 9, 10, "is turned before"),
        (PROGRAMS + BLANK + FLIP.replace('"x"', '"z"'), 7, 8, "none of its values"),
        (PROGRAMS + FLIP, 4, 8, "give [stock] size and corner"),
        ('after = ["note.nc"]\nprogram = "back.nc"\n' + BLANK, 1, 10, "is no program that can be read"),
        (PROGRAMS + BLANK + FLIP + KEEP_OUT, 8, 54, "does not lie above"),
    ],
)  # fmt: skip
def test_an_order_that_cannot_be_is_told_with_its_place(
    tmp_path: Path, job: str, line: int, column: int, says: str
) -> None:
    home = written(tmp_path, job, rough=ROUGH, finish=ROUGH, back=ROUGH, note="Dear reader,\nthis is a letter.\n")
    with pytest.raises(Problem) as told:
        checked(home / "back.nc")
    assert says in told.value.says
    assert (told.value.path, told.value.line, told.value.column) == (str(home / "job.toml"), line, column)


def test_the_shelf_saves_the_sweep_and_never_changes_what_is_found(tmp_path: Path) -> None:
    names = ["a", "b", "c", "d"]
    listed = ", ".join(f'"{name}.nc"' for name in names)
    job = f'program = [{listed}]\n{BLANK}[[flip]]\nbefore = "c.nc"\naxis = "x"\n'
    home = written(tmp_path, job, **{name: program(slots(n)) for n, name in enumerate(names)})
    laid: dict[str, bytes] = {}
    store = StockStore(laid.get, laid.__setitem__)
    plain = [traced(home / f"{name}.nc") for name in names]
    for again in (store, StockStore(laid.get, laid.__setitem__)):  # in memory, then from disk alone
        for name, tables in zip(names, plain):
            kept = traced(home / f"{name}.nc", again)
            np.testing.assert_array_equal(kept.engagement.pieces.removed, tables.engagement.pieces.removed)
            np.testing.assert_array_equal(kept.engagement.cut, tables.engagement.cut)
    assert len(laid) == len(names)
    (home / "a.nc").write_text(program(slots(9)))  # every field behind it has another name now
    traced(home / "d.nc", store)
    assert len(laid) == 2 * len(names)


def test_each_program_is_swept_once_in_a_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from gclint.stock import engage

    names = [f"p{n}" for n in range(8)]
    listed = ", ".join(f'"{name}.nc"' for name in names)
    home = written(tmp_path, f"program = [{listed}]\n{BLANK}", **{n: program(slots(k)) for k, n in enumerate(names)})
    sweeps: list[int] = []
    real = engage.sweep
    monkeypatch.setattr(engage, "sweep", lambda *given: (sweeps.append(1), real(*given))[1])
    store = StockStore()
    for name in names:
        traced(home / f"{name}.nc", store)
    assert len(sweeps) == len(names)


def test_what_an_earlier_program_cut_with_an_unknown_tool_is_not_known(tmp_path: Path) -> None:
    rough = ROUGH.replace("T1", "T9")
    finish = HEAD + "G0 X30 Y10\nG0 Z-6\nG1 Z-7 F400\nG1 X50 F1200\n" + END
    home = written(tmp_path, f'program = ["rough.nc", "finish.nc"]\n{BLANK}', rough=rough, finish=finish)
    found = checked(home / "finish.nc").findings
    assert [f.rule for f in found if f.rule == "earlier-cuts-unknown"] == ["earlier-cuts-unknown"]
    assert not [f for f in found if f.grade == "halt"]

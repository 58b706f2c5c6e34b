"""`import gclint` for programs: a small surface, loaded when it is used, that answers what the commands answer."""

from __future__ import annotations

import ast
import inspect
import json
import subprocess
import sys
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import msgspec
import pytest

import gclint

ROOT = Path(__file__).parents[1]
SAMPLES = ROOT / "sample_programs"
RING = SAMPLES / "tide-ring" / "tide-ring.nc"
SHOP = SAMPLES / "bench-router.toml"
Command = Callable[..., tuple[int, str, str]]

command = pytest.fixture(name="command")(lambda gclint: gclint)  # the package has the fixture's usual name here


def lines(code: str) -> list[str]:
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (0, "")
    return done.stdout.splitlines()


def test_what_is_offered_is_there_and_typed_and_documented() -> None:
    stub = ast.parse((ROOT / "gclint" / "__init__.pyi").read_text(encoding="utf-8"))
    typed = {alias.asname for node in stub.body if isinstance(node, ast.ImportFrom) for alias in node.names}
    named = [node.target for node in stub.body if isinstance(node, ast.AnnAssign)]
    typed |= {target.id for target in named if isinstance(target, ast.Name)}
    assert set(gclint.__all__) | {"HOME"} == typed
    assert set(gclint.__all__) <= set(dir(gclint))
    import gclint.library as library

    for name in ("check", "failing", "mend", "window"):
        function = getattr(library, name)
        assert function.__doc__.split()[0] in {"Judge", "Return", "Make", "Work"}
        assert inspect.signature(getattr(gclint, name)) == inspect.signature(function)
        hints = inspect.signature(function)
        assert all(each.annotation is not inspect.Parameter.empty for each in hints.parameters.values())
    with pytest.raises(AttributeError, match="no attribute 'lint'"):
        gclint.lint  # type: ignore[attr-defined]  # noqa: B018


def test_importing_it_and_naming_it_loads_little() -> None:
    heavy = "print(*[m for m in ('numpy', 'click', 'rich', 'lark', 'msgspec') if m in sys.modules])"
    assert lines(f"import sys, gclint; {heavy}") == [""]
    assert lines(f"import sys; from gclint import check, mend, window; {heavy}") == ["msgspec"]


@pytest.mark.parametrize(
    "first", ["", "import gclint.check, gclint.mend.mend", "from gclint import check", "from gclint.check import run"]
)
def test_it_can_be_called_whatever_was_imported_before(first: str) -> None:
    code = f"{first}\nimport gclint\nprint(len(gclint.check({str(RING)!r}).findings))\nprint(callable(gclint.mend))"
    assert lines(code) == ["1", "True"]


def test_it_answers_what_the_command_answers(command: Command, here: Path) -> None:
    said = json.loads(command("check", str(RING), "--as", "json")[1])["programs"][0]
    checked = gclint.check(RING)
    assert json.loads(msgspec.json.encode(checked)) == said
    assert gclint.check(RING.read_bytes(), beside=RING) == checked == gclint.check(str(RING))
    for grade in ("halt", "change", "consider"):
        assert bool(gclint.failing(checked, grade)) == command("check", str(RING), "-q", "--fail-at", grade)[0]  # type: ignore[arg-type]


def test_options_are_those_of_the_command(command: Command, here: Path) -> None:
    (here / "a.nc").write_bytes(RING.read_bytes())
    given = {"material": "beech", "stock": "80 x 80 x 18 mm at -40 -40"}
    options = [text for name, value in given.items() for text in (f"--{name}", value)]
    tools = ["1: flat 3.175mm 2fl down-cut", "2: flat 6mm 2fl"]
    said = command("check", "a.nc", *options, *(text for tool in tools for text in ("--tool", tool)), "--as", "json")[1]
    made = gclint.check("a.nc", tools=tools, **given)
    assert json.loads(msgspec.json.encode(made)) == json.loads(said)["programs"][0]


def test_the_bytes_of_a_program_without_a_place() -> None:
    made = gclint.check(b"G21 G90\nG0 Z5\nM30\n")
    assert made.path == "a program in memory"
    assert made.lines == 3


def test_wrong_input_is_a_problem_with_its_place(here: Path) -> None:
    (here / "a.nc").write_bytes(RING.read_bytes())
    with pytest.raises(gclint.Unreadable) as unread:
        gclint.check("not there.nc")
    assert unread.value.path == "not there.nc"
    (here / "job.toml").write_text('z_zero = "middle"\n')
    with pytest.raises(gclint.Problem) as wrong:
        gclint.check("a.nc")
    assert (Path(wrong.value.path or "").name, wrong.value.line, wrong.value.column) == ("job.toml", 1, 10)
    assert not isinstance(wrong.value, gclint.Unreadable)
    (here / "job.toml").unlink()
    with pytest.raises(gclint.Problem, match="betch"):
        gclint.window("betch", "flat 6mm 2fl")
    with pytest.raises(gclint.Problem, match="there is no grade"):
        gclint.failing(gclint.check(RING), "warning")  # type: ignore[arg-type]
    for wrongly in (lambda: gclint.check(RING, tools="1: flat 6mm"), lambda: gclint.check(RING, beside="b.nc")):
        with pytest.raises(TypeError):
            wrongly()


def test_a_file_called_minus_is_a_file(here: Path) -> None:
    (here / "-").write_bytes(RING.read_bytes())
    assert gclint.check("-").lines == gclint.check(RING).lines


def test_mend_gives_the_copy_and_writes_nothing(command: Command, tmp_path: Path) -> None:
    before = sorted(RING.parent.iterdir())
    made = gclint.mend(RING)
    assert sorted(RING.parent.iterdir()) == before
    assert made.copy is not None
    assert made.report.changes
    assert "straight-plunge" not in [finding.rule for finding in gclint.check(made.copy, beside=RING).findings]
    assert command("mend", str(RING), "-q", "--out", str(tmp_path / "ring.nc"))[0] == 0
    assert (tmp_path / "ring.nc").read_bytes() == made.copy
    assert gclint.mend(RING, only=["chip-too-thin"]).copy is None


def test_window_answers_what_the_command_answers(command: Command) -> None:
    args = ("--tool", "1", "--shop", str(SHOP), "--material", "cured-epoxy", "--dial", "2", "--feed", "900 mm/min")
    said = json.loads(command("window", *args, "--as", "json")[1])
    made = gclint.window("cured-epoxy", 1, shop=SHOP, dial="2", feed="900 mm/min")
    assert isinstance(made, gclint.Window)
    assert json.loads(msgspec.json.encode(made)) == said


def test_many_threads_at_once() -> None:
    programs = sorted(SAMPLES.rglob("*.nc"), key=lambda path: path.stat().st_size)[:6]
    alone = [gclint.check(program) for program in programs]
    with ThreadPoolExecutor(4) as threads:
        assert list(threads.map(gclint.check, programs * 2)) == alone * 2

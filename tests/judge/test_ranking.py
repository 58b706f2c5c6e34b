"""Order by harm, then certainty, then place; the same input gives the same bytes; no output says that all is well."""

from __future__ import annotations

import ast
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from gclint.packs.shipped_packs import shipped_packs
from gclint.tables.finding import Checked, Finding
from gclint.tables.setup import GRADES
from tests.judge.try_judge import found, tried

ROOT = Path(__file__).parents[2]
HEAD = "G21 G90 G94 G17 G54\n"
TOOLS = ('[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 mm"\nflutes = 2\n',
         '[[tool]]\nnumber = 2\nshape = "flat"\ndiameter = "3 mm"\nflutes = 2\n')  # fmt: skip
CUT = "G0 X{x} Y10\nG1 Z-3 F900\nG1 X{to} F300\nG0 X{x} Y20\nG0 Z5\n"
ONE, OTHER = CUT.format(x=10, to=40), CUT.format(x=60, to=90)
BUSY = f"{HEAD}T1 M6\nM3 S18000\nG0 Z5\n{ONE}T2 M6\nG0 Z5\n{OTHER}M30\n"
BLANK = "120 x 80 x 18 mm at 0 0"


def busy(shop: str = "".join(TOOLS), **other: str) -> Checked:
    return tried(BUSY, shop=shop, material="beech", **other)  # type: ignore[arg-type]


def test_harm_comes_first_then_what_is_declared_then_place() -> None:
    checked = busy(stock=BLANK, job='[[accept]]\nrule = "plunge-too-fast"\ntool = 1\nbecause = "drilled first"\n')
    rows = [(GRADES.index(f.grade), f.accepted is not None, bool(f.rests_on)) for f in checked.findings]
    assert rows == sorted(rows)
    assert {"halt", "change", "consider"} <= {f.grade for f in checked.findings}
    assert any(accepted for _, accepted, _ in rows)
    for grade in GRADES:
        alike: dict[tuple[object, ...], list[int]] = {}
        for f in checked.findings:
            if f.grade == grade:
                key = (f.accepted is not None, bool(f.rests_on), f.window.standing if f.window else "")
                alike.setdefault(key, []).append(f.line)
        assert all(lines == sorted(lines) for lines in alike.values())


def test_what_rests_on_something_taken_as_given_comes_behind_in_its_grade() -> None:
    """The stock is not declared: what is seen in it is less certain than what the text itself says."""
    text = BUSY.replace("M30\n", "G0 X12,5\nM30\n")  # far down, but the text itself shows it
    checked = tried(text, shop="".join(TOOLS), material="beech")
    change = [f for f in checked.findings if f.grade == "change"]
    taken = [bool(f.rests_on) for f in change]
    assert taken == sorted(taken)
    assert set(taken) == {False, True}
    (unread,) = found(checked, "number-unreadable")
    assert unread.rests_on == ()
    assert change[0] == unread
    assert unread.line == max(f.line for f in change)
    plunge = found(checked, "plunge-too-fast", "straight-plunge")[0]
    assert {"stock top", "stock in X", "stock in Y"} <= set(plunge.rests_on)
    known = {each.what for each in checked.assumed}
    assert all(set(f.rests_on) <= known for f in checked.findings)


def test_what_is_declared_is_rested_on_no_more() -> None:
    shop = "".join(TOOLS) + '[spindle]\nkind = "dial"\ndial = [ { mark = "D", stated = 18000, measured = 17100 } ]\n'
    job = 'z_zero = "stock-top"\n[stock]\nsize = ["120 mm", "80 mm", "18 mm"]\ncorner = ["0 mm", "0 mm"]\n'
    thin = found(busy(shop, job=job), "chip-too-thin")
    assert thin
    assert {f.rests_on for f in thin} == {("reached feed",)}  # no acceleration is declared
    never_measured = found(busy(shop.replace(", measured = 17100", ""), job=job), "chip-too-thin")
    assert {f.rests_on for f in never_measured} == {("reached feed", "dial mark D")}


def test_a_tool_of_which_only_a_comment_speaks_is_rested_on() -> None:
    spoken = BUSY.replace("T1 M6", "(T1 D=6 flat endmill 2 flute)\nT1 M6")
    checked = tried(spoken, shop=TOOLS[1], material="beech", stock=BLANK)
    about = {f.tool: f.rests_on for f in found(checked, "chip-too-thin")}
    assert "tool 1" in about[1]
    assert "tool 2" not in about[2]


def test_the_order_in_which_tools_are_declared_changes_nothing() -> None:
    def told(checked: Checked) -> list[Finding]:
        return list(checked.findings)

    assert told(busy("".join(TOOLS), stock=BLANK)) == told(busy("".join(reversed(TOOLS)), stock=BLANK))


ORDERS = (("0", 0), ("1", 0), ("4711", 1))


@pytest.fixture(scope="module")
def job_folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("same")
    for name in ("b.nc", "a.nc"):
        (folder / name).write_text(BUSY + f"({name})\n")
    for number, tools in enumerate((TOOLS, TOOLS[::-1])):
        (folder / f"shop{number}.toml").write_text("".join(tools))
    return folder


FORMS = [("--as", "json"), ("--for", "operator"), ("--for", "author")]


@pytest.mark.slow
@pytest.mark.parametrize("form", FORMS, ids=lambda form: str(form[1]))
def test_the_same_input_gives_the_same_bytes(job_folder: Path, form: tuple[str, str]) -> None:
    """Whatever the seed of hashes, and in whatever order the tools are declared."""
    outputs = set()
    for seed, shop in ORDERS:
        text = (job_folder / f"shop{shop}.toml").read_text()
        (job_folder / "shop.toml").write_text(text)
        done = subprocess.run(
            [sys.executable, "-m", "gclint", "check", "a.nc", "b.nc", "--material", "beech", *form],
            cwd=job_folder, capture_output=True, check=False,
            env={**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT)},
        )  # fmt: skip
        assert done.returncode == 1, done.stderr
        # the shop file itself is another one, and its fingerprint says so
        outputs.add(re.sub(rb'("what": "shop file".*?"fingerprint": )"[^"]*"', rb"\1", done.stdout, flags=re.DOTALL))
    assert len(outputs) == 1


# Nothing says that all is well.

PROMISE = re.compile(
    r"\b(safe|safely|safety|all[- ]clear|no problems|looks good|all good|ok to run|good to go)\b", re.IGNORECASE
)


def strings(path: Path) -> str:
    """The texts in a source file, without what is written for those who read the code."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    told = []
    documents = {
        id(node.body[0].value)
        for node in ast.walk(tree)
        if isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef) and node.body
        and isinstance(node.body[0], ast.Expr)
    }  # fmt: skip
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in documents:
            told.append(node.value)
    return "\n".join(told)


def shown(path: Path) -> str:
    text = path.read_text(encoding="utf-8")
    return re.sub(r"\|\s*safe\b", "", text) if path.suffix == ".j2" else text


@pytest.mark.slow
def test_no_text_that_people_read_says_that_something_is_safe() -> None:
    paths = [path for path in sorted((ROOT / "rules").rglob("*")) if path.suffix in (".toml", ".md")]
    paths += [ROOT / "README.md", ROOT / "CHANGELOG.md", *sorted((ROOT / "gclint" / "docs").glob("*.md"))]
    paths += [path for path in sorted((ROOT / "gclint").rglob("*")) if path.suffix in (".py", ".j2", ".json")]
    assert len(paths) > 150
    said = []
    for path in paths:
        text = strings(path) if path.suffix == ".py" else shown(path)
        said += [f"{path.relative_to(ROOT)}: {word[0]}" for word in PROMISE.finditer(text)]
    assert said == []


def test_the_scan_finds_a_promise_and_passes_code_over(tmp_path: Path) -> None:
    path = tmp_path / "one.py"
    path.write_text('"""Never call it safe."""\n\nsafe = 1\nTOLD = f"This is {safe} safe."\n')
    assert PROMISE.findall(strings(path)) == ["safe"]


def test_every_rule_of_the_shipped_packs_is_looked_through() -> None:
    words = " ".join(
        str(part) for pack in shipped_packs() for rule in pack.rules
        for part in (rule.text.title, rule.text.why, rule.happens, rule.change)
    )  # fmt: skip
    assert PROMISE.search(words) is None


@pytest.mark.parametrize("sample", ["tide-dial/tide-dial.nc", "tide-ring/tide-ring.nc"])
@pytest.mark.parametrize("reader", ["author", "operator", "instructor"])
def test_no_sheet_promises_anything(sample: str, reader: str) -> None:
    from gclint.check import run
    from gclint.digest.sheet_words import verdict
    from gclint.report.text.instructor_out import instructor_sheet
    from gclint.report.text.operator_out import operator_sheet
    from gclint.report.text.terminal import sheet
    from gclint.report.text.text_sheet import TextSheet
    from gclint.setup.declare import Options

    path = ROOT / "sample_programs" / sample
    done, paper = run(path.read_bytes(), path.name, Options(), str(path)), TextSheet()
    {"author": sheet, "operator": operator_sheet, "instructor": instructor_sheet}[reader](done, paper, "0")
    assert PROMISE.search(paper.text + verdict(done.checked)) is None
    assert "no promise" in verdict(done.checked)

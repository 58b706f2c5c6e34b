"""`gclint shop new` and `gclint job new`: answers become files that read well, and nothing is lost or half written."""

from __future__ import annotations

import io
from collections.abc import Callable
from pathlib import Path

import pytest

Gclint = Callable[..., tuple[int, str, str]]
Sentence = Callable[[str], str]

# invented answers of the Lowtide workshop
SHOP = """bench router
600 mm
400
400 mm
90 mm
5000 mm/min
2000 mm/min
2500 mm/min
800 mm/min


n
hoby-3-axis
hobby-3-axis
dial
A 9500 8100
B 12500 10700

by-hand
700 W
4 s
1: flat 1/4in 2fl up-cut
quarter "up-cut"
25 mm
34 mm
6.35 mm
y
carbide

"""
JOB = """tray.nc

birch-plywod
birch-plywood
stock-top
T1
B
120 x 80 x 12 mm at -10 -10
11.6 mm
clamps
0.5 mm
"""


@pytest.fixture
def answers(monkeypatch: pytest.MonkeyPatch) -> Callable[[str], None]:
    return lambda text: monkeypatch.setattr("sys.stdin", io.StringIO(text))


def test_answers_become_a_shop_and_a_job_that_read_well(
    program: Path, gclint: Gclint, answers: Callable[[str], None]
) -> None:
    answers(SHOP)
    code, said, _ = gclint("shop", "new")
    assert code == 0
    assert 'has no unit; write "400 mm"' in said
    assert 'nearest: "hobby-3-axis"' in said
    answers(JOB)
    code, said, _ = gclint("job", "new")
    assert code == 0
    assert 'nearest: "birch-plywood"' in said
    code, sheet, _ = gclint("shop", "check", "shop.toml")
    assert code == 0
    assert "A 8100, B 10700" in sheet
    assert 'quarter "up-cut", flat, 6.35 mm, 2 flutes, up-cut' in sheet
    code, sheet, _ = gclint("job", "check", "job.toml")
    assert code == 0
    code, sheet, err = gclint("check", str(program))
    assert code in (0, 1), err
    assert "10700 rev/min" in sheet
    assert "11.6" in Path("job.toml").read_text()
    assert "tool = 1\n" in Path("job.toml").read_text()


def test_all_left_open_is_a_file_too(here: Path, gclint: Gclint, answers: Callable[[str], None]) -> None:
    answers("\n" * 30)
    assert gclint("shop", "new", "bare.toml")[0] == 0
    assert gclint("shop", "check", "bare.toml")[0] == 0
    answers("\n" * 30)
    assert gclint("job", "new", "empty.toml")[0] == 0
    assert gclint("job", "check", "empty.toml")[0] == 0


@pytest.mark.parametrize("verb", ["shop", "job"])
def test_broken_off_nothing_is_written(
    verb: str, here: Path, gclint: Gclint, answers: Callable[[str], None], sentence: Sentence
) -> None:
    answers("\n\n")
    code, _, err = gclint(verb, "new")
    assert code == 2
    assert "nothing is written" in sentence(err)
    assert list(here.iterdir()) == []


@pytest.mark.parametrize("verb", ["shop", "job"])
def test_a_file_that_exists_stays(
    verb: str, here: Path, gclint: Gclint, answers: Callable[[str], None], sentence: Sentence
) -> None:
    Path(f"{verb}.toml").write_text("# ours\n")
    answers("\n" * 30)
    code, _, err = gclint(verb, "new")
    assert code == 2
    assert f"{verb}.toml: this file exists" in sentence(err)
    assert Path(f"{verb}.toml").read_text() == "# ours\n"
    code, _, err = gclint(verb, "new", "nowhere/new.toml")
    assert code == 2
    assert "folder that does not exist" in sentence(err)


def test_an_answer_out_of_the_ordinary_is_asked_again(
    here: Path, gclint: Gclint, answers: Callable[[str], None]
) -> None:
    answers("x" * 300 + "\nbad\x07bell\nrouter\n" + "\n" * 30)
    code, said, _ = gclint("shop", "new")
    assert code == 0
    assert said.count("at most 200 characters") == 2
    assert 'name = "router"' in Path("shop.toml").read_text()


def test_a_tool_that_is_in_the_list_is_asked_for_again(
    here: Path, gclint: Gclint, answers: Callable[[str], None]
) -> None:
    again = SHOP.rstrip("\n") + "\n1: flat 1/8in 2fl up-cut\n2: flat 1/8in 2fl up-cut\n\n\n\n\n\n\n\n\n"
    answers(again)
    code, said, _ = gclint("shop", "new")
    assert code == 0
    assert "tool 1 is in the list already" in said
    assert [line for line in Path("shop.toml").read_text().splitlines() if line.startswith("number")] == [
        "number = 1", "number = 2",
    ]  # fmt: skip
    assert gclint("shop", "check", "shop.toml")[0] == 0

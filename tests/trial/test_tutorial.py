"""The way from a plan to a verdict in gclint/docs/test-cuts.md runs as it is written, on invented files."""

from __future__ import annotations

import io
import shlex
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from gclint.trial.plan_file import read_plan

ROOT = Path(__file__).parents[2]
Gclint = Callable[..., tuple[int, str, str]]


def commands() -> list[list[str]]:
    """The words of every command on the page."""
    page = (ROOT / "gclint" / "docs" / "test-cuts.md").read_text(encoding="utf-8")
    blocks = [part.split("```", 1)[0] for part in page.split("```sh\n")[1:]]
    lines = "\n".join(blocks).replace("\\\n", " ").splitlines()
    return [shlex.split(part, comments=True) for line in lines for part in line.split("&&") if part.strip()]


@pytest.mark.slow
def test_the_tutorial_runs_as_it_is_written(here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("sys.stdin", io.StringIO(""))
    told = []
    for words in commands():
        if words[0] == "mkdir":
            (here / words[1]).mkdir()
        elif words[0] == "cp":
            *sources, target = [word for word in words[1:] if not word.startswith("-")]
            for source in sources:
                path = Path(source) if Path(source).exists() else ROOT / source  # there, or in the checkout
                to = Path(target) / path.name if Path(target).is_dir() else Path(target)
                (shutil.copytree if path.is_dir() else shutil.copy)(path, to)
        elif words[0] == "cd":
            monkeypatch.chdir(here / words[1])
        else:
            assert words[0] == "gclint"
            code, out, err = gclint(*words[1:])
            assert code == 0 or (code == 1 and words[1] == "check"), err
            told.append(out)
    assert len(told) >= 4
    plan = read_plan(here / "lowtide" / "my-trial" / "plan.toml")
    assert [cut.number for cut in plan.cut if cut.confirmed] == [19, 24, 28, 29, 30]

"""A check by what was sent along gives what the check on this machine gives, without a look at the disk."""

from __future__ import annotations

import pickle
import shutil
from pathlib import Path

import pytest

from gclint.folder.bundle import Packer, Reply, reply_to
from gclint.folder.find import find
from gclint.folder.outcome import Outcome, Task
from gclint.folder.run import answer, encoded
from gclint.setup.declare import Options
from tests.folder.shop import JOB, SHOP, program, workshop

SAMPLES = Path(__file__).parents[2] / "sample_programs"
CALLER = "G21 G90 G94 G17 G54\nT1 M6\nM3 S18000\nG4 P5\nG0 Z5\nG0 X0 Y0\nG1 Z-1 F200\nM98 P100\nG0 Z5\nM5\nM30\n"


def far(packer: Packer, task: Task, here: Path, away: Path, monkeypatch: pytest.MonkeyPatch) -> tuple[bytes, int]:
    """(what the check comes to that runs in another folder, how often it was begun)."""
    bundle = packer.pack(task)
    for rounds in range(1, 100):
        monkeypatch.chdir(away)
        reply: Reply = pickle.loads(reply_to(pickle.loads(pickle.dumps(bundle))))
        monkeypatch.chdir(here)
        if reply.tried is not None:
            packer.learn(task, reply.tried.heard)
            return encoded(reply.tried.outcome), rounds
        assert reply.asks is not None
        bundle = packer.more(bundle, reply.asks)
    raise AssertionError("it asks without end")


def both(home: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, named: str = "work") -> list[int]:
    """How often each check was begun; each came to the same here and there."""
    away = tmp_path / "away"
    away.mkdir()
    monkeypatch.chdir(home.parent)
    packer, rounds = Packer(()), []
    for source in find((named,)).sources:
        task = Task(source, Options())
        here = answer(None, (), task)
        there, begun = far(packer, task, home.parent, away, monkeypatch)
        assert there == here, source.name
        rounds.append(begun)
    return rounds


def test_declarations_in_the_folder_and_above(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    rounds = both(workshop(tmp_path / "work"), tmp_path, monkeypatch)
    assert len(rounds) == 6
    assert rounds[1:3] == [1, 1], "what its neighbour asked was not sent along"


@pytest.mark.slow
def test_the_samples(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Cards, packs and jobs of several programs among them."""
    shutil.copytree(SAMPLES, tmp_path / "work")
    small = sorted((tmp_path / "work").rglob("*.nc"), key=lambda path: path.stat().st_size)
    for path in small[8:]:
        path.unlink()
    assert both(tmp_path / "work", tmp_path, monkeypatch)


def test_subprograms_packs_cards_and_what_is_wrong(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    home = tmp_path / "work"
    for name in ("calls", "broken", "pack", "none", "order"):
        (home / name).mkdir(parents=True)
        (home / name / "shop.toml").write_text(SHOP)
        (home / name / "tray.nc").write_text(program(1, 300))
    (home / "calls" / "call.nc").write_text(CALLER)
    (home / "calls" / "o100.nc").write_text("O100\nG1 X40 F1800\nM99\n")
    (home / "calls" / "job.toml").write_text(JOB)
    (home / "broken" / "job.toml").write_text('material = "betch"\n')
    (home / "pack" / "job.toml").write_text('packs = ["house.toml"]\n' + JOB)
    (home / "pack" / "house.toml").write_text('pack = "ours"\nabout = "x"\n[[rule]]\nname = "x"\nwhen = "lowest <"\n')
    (home / "none" / "job.toml").write_text('shop = "elsewhere.toml"\n' + JOB)
    (home / "order" / "next.nc").write_text(program(2, 900))
    (home / "order" / "job.toml").write_text('program = ["tray.nc", "next.nc"]\n' + JOB)
    (home / "order" / "pipe").symlink_to("nowhere")
    assert len(both(home, tmp_path, monkeypatch)) >= 6


def test_an_outcome_is_json() -> None:
    assert encoded(Outcome("problem", says="x")).startswith(b"{")  # so that a pickled reply is told from it
    assert pickle.dumps(Reply(None, ("there", "x"))).startswith(b"\x80")

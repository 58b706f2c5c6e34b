"""A general-purpose editor from the system's packages, headless, with the set-up that our page gives."""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

import gclint
from gclint.digest.sheet_words import is_entry
from tests.folder.shop import JOB, SHOP, program

pytest.importorskip("pygls")
EDITOR = shutil.which("nvim")
PAGE = Path(gclint.__file__).parent / "docs" / "editor.md"

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(EDITOR is None, reason="the editor nvim is not here (Debian: apt-get install neovim)"),
]


def test_an_editor_shows_finds_changes_and_checks_what_is_typed(tmp_path: Path) -> None:
    [setup] = re.findall(r"```lua\n(.*?)```", PAGE.read_text(encoding="utf-8"), re.DOTALL)
    home = tmp_path / "work"
    home.mkdir()
    (home / "shop.toml").write_text(SHOP)
    (home / "job.toml").write_text(JOB)
    (home / "tray.nc").write_text(program(1, 300))
    (tmp_path / "init.lua").write_text(setup)
    command = tmp_path / "gclint"
    command.write_text(f'#!/bin/sh\nexec "{sys.executable}" -m gclint "$@"\n')
    command.chmod(0o755)
    own = {f"XDG_{each}_HOME": str(tmp_path / each.lower()) for each in ("CONFIG", "DATA", "STATE", "CACHE")}
    environment = {**os.environ, **own, "PATH": f"{tmp_path}{os.pathsep}{os.environ['PATH']}"}
    session = Path(__file__).with_name("session.lua")
    done = subprocess.run(
        [str(EDITOR), "--headless", "-i", "NONE", "-n", "-u", str(tmp_path / "init.lua"), "-c", f"luafile {session}"],
        cwd=home, env=environment, capture_output=True, text=True, timeout=150, check=False,
    )
    assert (home / "told.json").exists(), done.stderr
    seen = json.loads((home / "told.json").read_text())
    assert "fault" not in seen, (seen, done.stderr)

    found = [finding for finding in gclint.check(home / "tray.nc").findings if is_entry(finding)]
    assert [(each["rule"], each["line"]) for each in seen["opened"]] == [(each.rule, each.line) for each in found]
    assert "**Tool 1**: flat, 6 mm" in seen["hover"]
    assert "chip" in seen["hover"]
    assert seen["definition"] == {"uri": (home / "shop.toml").as_uri(), "line": SHOP.split("\n").index("[[tool]]") + 1}
    assert seen["symbols"] == ["tool 1"]
    assert seen["action"]
    assert "F300" not in "\n".join(seen["changed"])
    assert seen["line"] == "G1 X40 F300"
    assert {each["rule"] for each in seen["typed"]} == {each.rule for each in found}
    assert seen["declaration"]["line"] == SHOP.split("\n").index("flutes = 2") + 1
    assert (home / "shop.toml").read_text() == SHOP
    print(f"from the last key to the new findings: {seen['milliseconds']:.0f} ms")

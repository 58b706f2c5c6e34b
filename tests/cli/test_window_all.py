"""The sheet of all bits says what the window of each bit says."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

from gclint.cli.main import run

SHOP = str(Path(__file__).parents[2] / "sample_programs" / "bench-router.toml")


def test_each_bit_starts_where_its_own_window_says(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["window", "--all", "--material", "beech", "--shop", SHOP]) == 0
    said = capsys.readouterr().out
    for tool in ("1", "2"):
        assert run(["window", "--material", "beech", "--tool", tool, "--shop", SHOP, "--as", "json"]) == 0
        [best] = [pair for pair in json.loads(capsys.readouterr().out)["pairs"] if pair["what"] == "best"]
        assert re.search(rf"^{tool} .* {best['mark']}: F{best['feed_mm_min']:.0f} ", said, re.MULTILINE), (tool, best)
    assert 'a "v" tool' in " ".join(said.split())


def test_the_page_has_every_material_and_bit(tmp_path: Path) -> None:
    from gclint.cards.material import names

    file = tmp_path / "feeds.html"
    assert run(["window", "--all", "--shop", SHOP, "--as", "page", "--out", str(file)]) == 0
    html = file.read_text(encoding="utf-8")
    assert [name for name in names() if f'<th scope="row">{name}</th>' not in html] == []
    assert "Bit 4 is left out" in html
    assert "http" not in html.partition("</style>")[2]


@pytest.mark.parametrize("more", [["--speed", "9000"], ["--dial", "2"], ["--as", "json"]])
def test_what_it_cannot_show_is_said(more: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["window", "--all", "--shop", SHOP, *more]) == 2
    assert "--all" in capsys.readouterr().err

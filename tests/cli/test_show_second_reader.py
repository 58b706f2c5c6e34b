"""`gclint show --second-reader`: what it prints and how it ends."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

Gclint = Callable[..., tuple[int, str, str]]
Sentence = Callable[[str], str]


def test_a_plain_program_is_read_alike(program: Path, gclint: Gclint) -> None:
    code, out, err = gclint("show", program.name, "--second-reader")
    assert (code, err) == (0, "")
    assert "words     11 of 11 blocks compared" in out
    assert "moves     5 of 5 blocks that move compared" in out
    assert "different nothing" in out


def test_what_was_passed_over_is_told(program: Path, gclint: Gclint) -> None:
    program.write_text(program.read_text().replace("G0 Z5\n", "G0 Z+5\n", 1))
    code, out, _err = gclint("show", program.name, "--second-reader")
    assert code == 0
    assert "1 block, first on line 5: a number is written in a way" in out


def test_a_difference_is_listed_and_counts(program: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    from pygcode.machine import Machine

    monkeypatch.setattr(Machine, "move_to", lambda self, rapid=False, **coords: None)
    code, out, _err = gclint("show", program.name, "--second-reader")
    assert code == 1
    assert next(line.split() for line in out.splitlines() if "end Z" in line) == ["5", "end", "Z", "5", "mm", "0", "mm"]
    code, out, _err = gclint("show", program.name, "--second-reader", "--as", "json")
    told = json.loads(out)
    assert code == 1
    assert told["different"] == len(told["differences"]) > 0
    assert told["differences"][0] == {"line": 5, "what": "end Z", "ours": "5 mm", "theirs": "0 mm"}


def test_without_the_extra_it_says_how_to_get_it(
    program: Path, gclint: Gclint, sentence: Sentence, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "pygcode", None)
    code, out, err = gclint("show", program.name, "--second-reader")
    assert (code, out) == (2, "")
    assert "pip install 'gclint[second-reader]'" in sentence(err)


def test_bad_input_is_one_sentence(here: Path, gclint: Gclint, sentence: Sentence) -> None:
    (here / "empty.nc").write_bytes(b"")
    code, out, err = gclint("show", "empty.nc", "--second-reader")
    assert (code, out) == (2, "")
    assert "empty" in sentence(err)

"""Two tools, entries and batches compared; what cannot be compared is refused in a sentence."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from msgspec.structs import replace

from gclint.cli.main import run
from gclint.problem import Problem
from gclint.report.text.text_sheet import TextSheet
from gclint.trial.compare import Better, compare, what_differs
from gclint.trial.compare_out import picture_of, sentence, sheet
from gclint.trial.learn import Lesson, learn
from tests.trial.shops import DOWN_CUT, UP_CUT, in_folder, lowtide, lowtide_cuts, trial


@pytest.fixture(scope="module")
def lesson() -> Lesson:
    return learn(trial(lowtide(), lowtide_cuts((DOWN_CUT, UP_CUT), 60), np.random.default_rng(5)))


def fault(made: tuple[Better, ...], name: str) -> Better:
    return next(one for one in made if one.fault == name)


def test_a_ramp_chips_less_than_a_plunge(lesson: Lesson) -> None:
    made = compare(lesson, "entry")
    chipping = fault(made.faults, "chipping")
    assert (made.first.called, made.second.called) == ("ramp", "straight")
    assert chipping.second_better is not None
    assert chipping.second_better < 0.01
    assert chipping.first < 0.4 < 0.7 < chipping.second
    assert sentence(lesson, made).startswith("Down a ramp is better at edge chipping (with a probability of over 99 %)")


def test_a_down_cut_chips_less_than_an_up_cut_and_nothing_else_is_claimed(lesson: Lesson) -> None:
    made = compare(lesson, "tool")
    assert fault(made.faults, "chipping").second_better == pytest.approx(0.0, abs=0.1)
    said = sentence(lesson, made)
    assert said.startswith("Tool 1 (flat 3.175 mm 2 fl) is better at edge chipping")
    assert "dust" not in said
    assert fault(made.faults, "stopped").second_better is None


def test_two_batches_and_no_difference() -> None:
    rng, cuts = np.random.default_rng(3), lowtide_cuts(count=24)
    one, two = (trial(lowtide(), cuts, rng, batch) for batch in ("March", "April"))
    lesson = learn(replace(one, cuts=one.cuts + two.cuts))
    made = compare(lesson, "batch")
    assert (made.first.called, made.second.called) == ("April", "March")
    assert 'batch "April" and batch "March": these cuts do not tell' in sentence(lesson, made).replace("Batch", "batch")


def test_what_cannot_be_compared_is_refused(lesson: Lesson) -> None:
    for by, pair, says in (
        ("tool", ("1", "9"), "no cut was made with the tool"), ("tool", ("1", "1"), "the same tool"),
        ("batch", None, "not two"), ("entry", ("ramp", "rampe"), "ramp"),
    ):  # fmt: skip
        with pytest.raises(Problem, match=says):
            compare(lesson, by, pair)
    with pytest.raises(Problem, match="say which to compare: --by tool"):
        what_differs(lesson)
    ramps = replace(lesson.trial, cuts=tuple(c for c in lesson.trial.cuts if c.entry == "ramp" and c.tool == 1))
    with pytest.raises(Problem, match="nothing to compare"):
        what_differs(learn(ramps))
    few = [c for c in lesson.trial.cuts if c.tool == 2][:2]
    with pytest.raises(Problem, match="only 2 cuts of tool 2"):
        compare(learn(replace(ramps, cuts=(*ramps.cuts, *few), tools=lesson.trial.tools)), "tool")


def test_the_sheet_keeps_to_its_width_and_the_picture_is_one(lesson: Lesson) -> None:
    made = compare(lesson, "tool")
    paper = TextSheet(80)
    sheet(lesson, made, paper)
    assert max(map(len, paper.text.splitlines())) <= 80
    assert b"edge chipping" in picture_of(lesson, made, ".svg")


def test_the_verb(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    folder = in_folder(trial(lowtide(), lowtide_cuts(count=30), np.random.default_rng(5)), tmp_path / "one")
    assert run(["trial", "compare", str(folder), "--picture", str(tmp_path / "two.png")]) == 0
    assert "Down a ramp is better at edge chipping" in capsys.readouterr().out
    assert (tmp_path / "two.png").read_bytes().startswith(b"\x89PNG")
    assert run(["trial", "compare", str(folder), "--by", "tool"]) == 2
    assert "not two" in capsys.readouterr().err

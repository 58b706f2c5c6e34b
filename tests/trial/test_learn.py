"""What graded cuts teach: the window, the entry, what is missing; read from files and written into a shop file."""

from __future__ import annotations

import datetime
import json
import shutil
import tomllib
from pathlib import Path

import numpy as np
import pytest
from click.testing import CliRunner
from msgspec.structs import replace

from gclint.cli.main import gclint, run
from gclint.digest.words import Lengths
from gclint.problem import Problem
from gclint.report.text.text_sheet import TextSheet
from gclint.setup.declared import Shop
from gclint.toml.file import decode
from gclint.trial.into_shop import shop_text, writable
from gclint.trial.learn import Lesson, learn
from gclint.trial.learn_json import SCHEMA_NAME, learn_json, schema
from gclint.trial.learn_out import sheet
from gclint.trial.learn_page import page
from gclint.trial.learn_words import entry_words
from gclint.trial.next_cuts import next_cuts
from gclint.trial.seen import Trial, read_trial
from tests.trial.shops import DOWN_CUT, LONG, ONE_FLUTE, SHOP, UP_CUT, in_folder, lowtide, lowtide_cuts, trial

SAMPLES = Path(__file__).parents[2] / "sample_programs"
SCHEMA = Path(__file__).parents[2] / "gclint" / "trial" / SCHEMA_NAME


def graded(count: int = 36, tools: tuple[int, ...] = (DOWN_CUT,), seed: int = 5) -> Trial:
    return trial(lowtide(), lowtide_cuts(tools, count), np.random.default_rng(seed))


@pytest.fixture(scope="module")
def lesson() -> Lesson:
    return learn(graded())


def screen(of: Lesson, inch: bool = False, width: int = 100) -> str:
    paper = TextSheet(width)
    sheet(of, paper, Lengths(inch))
    return paper.text


def test_the_window_of_common_practice_is_recovered(lesson: Lesson) -> None:
    """Common practice, no source: 40 to 60 in/min at 10,000 to 14,000 rev/min stated, 85 % of it true."""
    window, shop = lesson.windows[1], lowtide()
    assert window.fz.low.found
    assert window.fz.high.found
    assert (window.fz.low.fault, window.fz.high.fault) == ("dust", "chatter")
    assert window.fz.low.value == pytest.approx(shop["dust"].limit_fz(window.pair_edge), rel=0.3)
    assert window.fz.high.value == pytest.approx(shop["chatter"].limit_fz(window.pair_edge), rel=0.2)
    assert 900 < window.pair_feed < 1600
    assert 8500 <= window.pair_speed <= 11900
    assert window.inside > 0.9


def test_the_plunge_is_the_dominant_cause_of_chipping(lesson: Lesson) -> None:
    chipping = {effect.what: effect for effect in lesson.effects if effect.fault == "chipping"}
    assert chipping["straight"].worse > 0.99
    assert chipping["straight"].logits > abs(chipping["chip"].logits)
    said = " ".join(entry_words(lesson))
    assert "Straight down gives more edge chipping than a ramp, with a probability of over 99 %" in said
    assert "go in by a ramp or a helix" in said
    assert "dust" not in said


def test_four_tools_in_one_trial_are_told_apart() -> None:
    made = learn(graded(120, (DOWN_CUT, UP_CUT, LONG, ONE_FLUTE)))
    worse = {(effect.fault, effect.what): effect.worse for effect in made.effects}
    assert worse["chipping", "tool 2"] > 0.9
    assert worse["chatter", "tool 3"] > 0.9
    assert worse["dust", "tool 4"] < 0.2
    assert set(made.windows) == {1, 2, 3, 4}


def test_nothing_is_said_beyond_what_was_cut(lesson: Lesson) -> None:
    few = learn(replace(lesson.trial, cuts=tuple(cut for cut in lesson.trial.cuts if 0.045 < cut.fz < 0.09)))
    window = few.windows[1]
    for limit in (window.fz.low, window.fz.high):
        assert 0.045 < limit.low <= limit.high < 0.09
    assert not window.fz.high.found
    assert "where the cuts end" in screen(few) or "cuts are missing there" in screen(few)


def test_too_few_cuts_conclude_nothing_and_say_what_is_missing() -> None:
    made = learn(graded(6))
    assert not made.windows
    assert "2 more graded cuts: 6 are graded" in screen(made)
    one_chip = replace(graded(), cuts=tuple(replace(cut, fz=0.05) for cut in graded().cuts))
    assert "2 more feeds per tooth" in screen(learn(one_chip))
    assert "Too little" in screen(learn(replace(graded(), cuts=())))


def test_one_speed_says_nothing_of_edge_speed() -> None:
    made = learn(replace(graded(), cuts=tuple(cut for cut in graded(90).cuts if cut.speed == 10200)))
    assert made.windows[1].edge is None
    assert "Cut at a second one" in screen(made)


def test_a_fault_that_was_not_graded_is_said_to_be_unknown(lesson: Lesson) -> None:
    cuts = tuple(replace(cut, level={"chipping": cut.level["chipping"]}) for cut in lesson.trial.cuts)
    made = learn(replace(lesson.trial, cuts=cuts))
    assert "chips or dust is graded in 0 cuts only" in screen(made)
    assert np.isfinite(made.windows[1].pair_fz)


@pytest.mark.parametrize("level", [0, 3])
def test_all_cuts_alike(level: int) -> None:
    cuts = tuple(replace(cut, level=dict.fromkeys(cut.level, level)) for cut in graded().cuts)
    made = learn(replace(graded(), cuts=cuts))
    shown = screen(made)
    assert ("No pair is good here: 36 of 36 cuts were spoilt" in shown) == (level == 3)
    assert ("Change before the next trial: " in shown) == (level == 3)
    assert made.windows[1].use == (level == 0)
    assert ("use F" in " ".join(shown.split())) == (level == 0)
    assert not writable(made)[0]


@pytest.mark.parametrize("sings", [8500, 10200, 11900, 14450, 17000])
def test_a_speed_at_which_the_tool_sang_is_never_recommended(sings: int) -> None:
    """All else alike, one mark of the dial at which every cut chattered."""
    cuts = tuple(replace(cut, level=cut.level | {"chatter": 3 if cut.speed == sings else 0}) for cut in graded().cuts)
    made = learn(replace(graded(), cuts=cuts))
    window = made.windows[1]
    assert window.pair_speed != sings or not window.use
    if window.use:
        assert {cut.speed for cut in window.near} == {window.pair_speed}
        assert all(cut.level["chatter"] < 2 for cut in window.near)
    near = [cut for cut in cuts if cut.speed == sings and cut.entry == "ramp" and 0.03 < cut.fz < 0.1]
    x = made.columns.of(tuple(near))
    assert (made.fitted["chatter"].margin(x) > 0).mean() < 0.3


def test_the_answer_shows_the_cuts_that_stand_for_it_and_what_it_holds_for(lesson: Lesson) -> None:
    shown, window = " ".join(screen(lesson).split()), lesson.windows[1]
    assert window.near
    assert all(1 / 1.5 <= cut.fz / window.pair_fz <= 1.5 for cut in window.near)
    assert f"{len(window.near)} cuts at this speed and within 1.5 times this chip: good" in shown
    assert "That holds for slots 1.5 mm deep entered down a ramp with this bit as it was held" in shown
    chipping = tuple(replace(cut, level={"chipping": cut.level["chipping"]}) for cut in lesson.trial.cuts[:12])
    few = " ".join(screen(learn(replace(lesson.trial, cuts=chipping))).split())
    assert "nothing is known of dust, melting, chatter" in few
    assert "12 cuts are few" in few


def test_repeats_that_contradict_are_told(lesson: Lesson) -> None:
    first = lesson.trial.cuts[0]
    good, bad = (replace(first, number=number, level=dict.fromkeys(first.level, level))
                 for number, level in ((91, 0), (92, 3)))  # fmt: skip
    cuts = (*lesson.trial.cuts[1:], good, bad)
    shown = " ".join(screen(learn(replace(lesson.trial, cuts=cuts))).split())
    assert "made alike; dust spoilt the former and was not seen in the latter" in shown
    told = learn(replace(lesson.trial, cuts=cuts)).contradictions
    assert any(92 in one.spoilt and 91 in one.clean for one in told)


def test_a_fault_at_one_speed_that_the_fit_cannot_say_is_told_and_the_speed_left_alone() -> None:
    cuts = tuple(
        replace(cut, level=dict.fromkeys(cut.level, 0) | {"stopped": 3 if cut.speed == 10200 else 0})
        for cut in graded(70).cuts
    )
    made = learn(replace(graded(), cuts=cuts))
    assert [(line.fault, line.speed) for line in made.out_of_line] == [("stopped", 10200)]
    assert "no pair is recommended there" in " ".join(screen(made).split())
    assert made.windows[1].pair_speed != 10200


def test_a_fault_that_grows_along_the_cuts_is_told() -> None:
    whole = graded(70).cuts
    cuts = tuple(replace(cut, level=dict.fromkeys(cut.level, 0) | {"tool": 3 if cut.number > 40 else 0})
                 for cut in whole)  # fmt: skip
    made = learn(replace(graded(), cuts=cuts))
    assert [(line.fault, line.speed) for line in made.out_of_line] == [("tool", 0.0)]
    assert "it grows along the cuts" in screen(made)


def test_the_next_cuts_keep_to_the_machine(lesson: Lesson) -> None:
    few = replace(lesson.trial, cuts=tuple(cut for cut in lesson.trial.cuts if cut.fz < 0.08))
    free = next_cuts(learn(few), 1)
    limit = 0.8 * max(cut.feed for cut in free)
    held = next_cuts(learn(replace(few, feed_limit=limit)), 1)
    most = max(cut.feed for cut in few.cuts)
    assert max(cut.feed for cut in free) > limit
    assert all(cut.feed <= max(limit * 1.001, most) for cut in held)
    assert all(cut.why for cut in held)


def test_json_says_what_the_screen_says_and_fits_its_schema(lesson: Lesson) -> None:
    import jsonschema

    for made in (lesson, learn(graded(5))):
        told = json.loads(learn_json(made))
        jsonschema.validate(told, json.loads(SCHEMA.read_text(encoding="utf-8")))
    assert json.loads(SCHEMA.read_text(encoding="utf-8")) == schema()
    tool = json.loads(learn_json(lesson))["tools"][0]
    window = lesson.windows[1]
    assert (tool["pair"]["use"], tool["pair"]["chip_mm"]) == (True, window.pair_fz)
    assert [cut["cut"] for cut in tool["pair"]["near"]] == [cut.number for cut in window.near]
    assert tool["chip_mm"]["low"]["fault"] == "dust"


def test_ten_cuts_give_a_window_with_wider_intervals(lesson: Lesson) -> None:
    few = learn(graded(10))
    for name in ("low", "high"):
        narrow, wide = getattr(lesson.windows[1].fz, name), getattr(few.windows[1].fz, name)
        assert wide.high / wide.low > narrow.high / narrow.low


def test_the_next_cuts_lie_where_the_limits_are(lesson: Lesson) -> None:
    cuts, window = next_cuts(lesson, 1), lesson.windows[1]
    assert len(cuts) == 5
    assert all(not cut.beyond for cut in cuts)
    gains = [cut.narrows for cut in cuts]
    assert gains == sorted(gains, reverse=True)
    assert sum(gains) > 0.1
    slow = [cut.fz for cut in cuts if cut.speed == window.pair_speed]
    near = [min(abs(np.log(fz / end.value)) for end in (window.fz.low, window.fz.high)) for fz in slow]
    assert near
    assert max(near) < 0.3


def test_where_no_limit_was_met_the_next_cuts_go_a_step_further(lesson: Lesson) -> None:
    few = learn(replace(lesson.trial, cuts=tuple(cut for cut in lesson.trial.cuts if cut.fz < 0.08)))
    assert any(cut.beyond and cut.fz > 0.07 for cut in next_cuts(few, 1))


def test_screens_of_any_width_and_unit_hold_to_it(lesson: Lesson) -> None:
    for width, inch in ((100, False), (60, True), (40, False)):
        assert max(map(len, screen(lesson, inch, width).splitlines())) <= width
    assert "in/min" in screen(lesson, True)


# files


def test_files_give_what_was_cut(tmp_path: Path) -> None:
    made = graded()
    back = read_trial((in_folder(made, tmp_path / "one"),))
    for ours, theirs in zip(made.cuts, back.cuts):
        assert (theirs.fz, theirs.edge) == (pytest.approx(ours.fz, rel=1e-4), pytest.approx(ours.edge, rel=1e-4))
        assert (theirs.level, theirs.entry) == (ours.level, ours.entry)
    assert back.shop == (tmp_path / "one" / "shop.toml").resolve()


def test_a_speed_measured_in_one_cut_holds_for_its_mark(tmp_path: Path) -> None:
    folder = in_folder(graded(), tmp_path / "one")
    grades = folder / "grades.toml"
    plain = read_trial((folder,))
    number = plain.cuts[0].number
    text = grades.read_text().replace(f"cut = {number}\n", f"cut = {number}\nmeasured_speed = 9000\n")
    grades.write_text(text)
    alike = [cut for cut in read_trial((folder,)).cuts if cut.dial == plain.cuts[0].dial]
    assert len(alike) > 1
    assert {cut.speed for cut in alike} == {9000.0}


def test_two_plans_are_taken_together_and_must_agree(tmp_path: Path) -> None:
    one, two = in_folder(graded(12), tmp_path / "one"), in_folder(graded(12, seed=6), tmp_path / "two", "another")
    assert len(read_trial((one, two)).cuts) == 24
    with pytest.raises(Problem, match="given twice"):
        read_trial((one, one))
    plan = two / "plan.toml"
    text = plan.read_text()
    plan.write_text(text.replace('material = "cured-epoxy"', 'material = "beech"'))
    with pytest.raises(Problem, match='cuts "beech"'):
        read_trial((one, two))
    plan.write_text(text.replace("flutes = 2", "flutes = 1"))
    with pytest.raises(Problem, match="another flutes"):
        read_trial((one, two))
    (two / "grades.toml").write_text((one / "grades.toml").read_text())
    plan.write_text(text)
    with pytest.raises(Problem, match="two plans are not mixed"):
        read_trial((two,))


# the shop file


def test_written_windows_keep_the_rest_of_the_file(lesson: Lesson) -> None:
    dated = replace(lesson, date=datetime.date(2026, 11, 25))
    made = shop_text(SHOP, "shop.toml", dated, writable(dated)[0])
    assert made.startswith(SHOP)
    again = shop_text(made, "shop.toml", dated, writable(dated)[0])
    assert again == made
    table = decode(made, Shop, "shop.toml").windows["cured-epoxy"]["1"]
    assert table.slot is not None
    assert table.measured is not None
    assert table.slot.fz[0] == pytest.approx(dated.windows[1].fz.low.value, rel=0.01)
    assert (table.measured.cuts, str(table.measured.on)) == (36, "2026-11-25")
    assert "edge_low" in table.measured.open


def test_a_window_a_person_declared_for_other_operations_stays(lesson: Lesson) -> None:
    dated = replace(lesson, date=datetime.date(2026, 11, 25))
    own = f'{SHOP}\n[windows."cured-epoxy".1]  # ours\nside = {{ fz = ["0.03 mm", "0.08 mm"] }}  # from last year\n'
    made = shop_text(own, "shop.toml", dated, writable(dated)[0])
    assert 'side = { fz = ["0.03 mm", "0.08 mm"] }  # from last year' in made
    assert tomllib.loads(made)["windows"]["cured-epoxy"]["1"]["slot"]


def test_a_shop_with_another_tool_is_not_written(lesson: Lesson) -> None:
    for wrong, says in ((SHOP.replace("flutes = 2", "flutes = 1"), "another flutes"), ("", "no tool 1")):
        with pytest.raises(Problem, match=says):
            shop_text(wrong, "shop.toml", lesson, writable(lesson)[0])


@pytest.mark.slow
def test_the_verb_writes_only_when_it_is_asked(tmp_path: Path) -> None:
    folder = in_folder(graded(), tmp_path / "one")
    said = CliRunner().invoke(gclint, ["trial", "learn", str(folder)], standalone_mode=False)
    assert said.exception is None
    assert (folder / "shop.toml").read_text() == SHOP
    picture = tmp_path / "window.png"
    said = CliRunner().invoke(
        gclint, ["trial", "learn", str(folder), "--write", "--picture", str(picture)], standalone_mode=False
    )
    assert "judges by it from now" in said.output
    assert "measured" in (folder / "shop.toml").read_text()
    assert picture.read_bytes().startswith(b"\x89PNG")


def test_too_little_is_exit_code_one_and_writes_nothing(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    folder = in_folder(graded(5), tmp_path / "one")
    assert run(["trial", "learn", str(folder), "--write"]) == 1
    assert (folder / "shop.toml").read_text() == SHOP
    assert "Nothing was written" in capsys.readouterr().out


# pages and new materials


@pytest.mark.slow
def test_the_page_escapes_what_people_wrote(tmp_path: Path) -> None:
    made = graded()
    nasty = replace(made, plans=("<script>alert(1)</script>",), assumed=("a & b",), tools={
        1: replace(made.tools[1], name="<img src=x onerror=y>")
    })  # fmt: skip
    text = page(learn(nasty), Lengths(False))
    assert "<script" not in text
    assert "<img" not in text
    assert "&lt;script&gt;" in text
    assert "a &amp; b" in text
    assert text.count("<svg") == 1
    assert "default-src 'none'" in text
    few = page(learn(graded(5)), Lengths(True))
    assert "3 more graded cuts" in few
    assert "<svg" not in few


@pytest.mark.slow
def test_a_new_material_is_told_that_it_needs_a_card(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    folder = in_folder(replace(graded(), material="harbour-resin"), tmp_path / "one")
    assert run(["trial", "learn", str(folder), "--write", "--page", str(tmp_path / "p.html")]) == 0
    said = " ".join(capsys.readouterr().out.split())
    assert 'There is no card for "harbour-resin" yet' in said
    assert "harbour-resin" in (tmp_path / "p.html").read_text(encoding="utf-8")
    card = (SAMPLES.parent / "rules" / "materials" / "cured-epoxy.toml").read_text(encoding="utf-8")
    named = card.replace('name = "cured-epoxy"', 'name = "harbour-resin"')
    own = named.replace('"epoxy", "resin", "epoxy-resin"', "")
    (folder / "harbour-resin.toml").write_text(own, encoding="utf-8")
    run(["trial", "learn", str(folder), "--write"])
    assert "There is no card" not in capsys.readouterr().out
    (folder / "job.toml").write_text('material = "harbour-resin"\n', encoding="utf-8")
    (folder / "slot.nc").write_text("G21 G90 G94 G17 G54\nT1\nS12000 M3\nG0 X0 Y0 Z5\nG1 Z-1 F100\nG1 X40 F600\nM30\n")
    run(["check", str(folder / "slot.nc")])
    assert "own test cuts of 2026-11-25" in " ".join(capsys.readouterr().out.split())


# the sample of the page

def test_the_page_tells_what_the_sample_teaches(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for name in ("epoxy-trial", "compass-rose"):
        shutil.copytree(SAMPLES / name, tmp_path / name)
    for name in ("bench-router.toml", "shop-before.toml"):
        shutil.copy(SAMPLES / "bench-router.toml", tmp_path / name)
    page = (SAMPLES.parent / "gclint" / "docs" / "test-cuts.md").read_text(encoding="utf-8")
    told = page[page.index("## Learn") : page.index("## Compare")]
    assert run(["trial", "learn", str(tmp_path / "epoxy-trial"), "--write"]) == 0
    said = capsys.readouterr().out
    shown = [line.strip() for line in told.splitlines() if line.startswith("    ")]
    assert len(shown) > 8
    for line in (line for line in shown[:10] if line != "..."):
        assert line in said
    before = str(tmp_path / "shop-before.toml")
    run(["check", str(tmp_path / "compass-rose"), "--compare-with", before, "--cache", "none"])
    said = " ".join(capsys.readouterr().out.split())
    assert "verdict Change before cutting (then: Consider) gone edge-too-fast" in said
    figures = shown[-1].partition("...: ")[2]
    assert figures
    assert figures in said

"""Grouping by cause, acceptances, order, what is not judged, and a rule that fails."""

from __future__ import annotations

from pathlib import Path

import pytest

from gclint.check import check
from gclint.judge import judge as judging
from gclint.packs.load import load_pack
from gclint.packs.shipped_packs import shipped_packs
from gclint.problem import Problem
from gclint.setup.declare import Options
from gclint.shipped import folder
from gclint.tables.setup import GRADES
from tests.judge.try_judge import found, names, tried

HEAD = "G21 G90 G94 G17 G54\nM3 S12000\nG0 Z5\n"
EPOXY = {"material": "cured-epoxy", "stock": "120 x 80 x 20 mm at 0 0"}
SIX = "1: flat 6mm 2fl up-cut"


def plunges(*places: int, feed: str = "F100") -> str:
    return "".join(f"G0 X{x} Y40\nG1 Z-1 {feed}\nG0 Z5\n" for x in places)


def test_one_cause_is_one_finding_with_its_count_and_worst_place() -> None:
    program = HEAD + plunges(20, 40, 60) + "G0 X80 Y40\nG1 Z-2.5 F100\nG0 Z5\nM30\n"
    checked = tried(program, SIX, **EPOXY)  # type: ignore[arg-type]
    (plunge,) = found(checked, "straight-plunge")
    assert (plunge.count, plunge.line, plunge.last_line, plunge.worst_line) == (4, 5, 14, 14)
    assert plunge.lines == (5, 8, 11, 14)
    assert plunge.tool == 1
    assert plunge.column == 4
    assert plunge.found is not None
    assert plunge.found.value == pytest.approx(2.5, abs=0.01)
    assert plunge.window is not None
    assert (plunge.window.standing, plunge.window.source) == ("practice", "common practice, no source")


def test_another_feed_or_tool_is_another_cause() -> None:
    program = HEAD + plunges(20, 40) + plunges(60, feed="F50") + "M30\n"
    assert [f.count for f in found(tried(program, SIX, **EPOXY), "straight-plunge")] == [2, 1]  # type: ignore[arg-type]
    cuts = (f"T{n} M6\nM3 S12000\nG0 Z5\n" + plunges(20 * n) for n in (1, 2))
    program = "G21 G90 G94 G17 G54\n" + "".join(cuts) + "M30\n"
    checked = tried(program, SIX, SIX.replace("1:", "2:"), **EPOXY)  # type: ignore[arg-type]
    assert [f.tool for f in found(checked, "straight-plunge")] == [1, 2]


def test_a_program_with_another_feed_on_every_line_is_told_of_one_fault() -> None:
    def laps(feeds: int) -> str:
        lines = (f"G1 X{10 + 100 * (n % 2)} Y{5 + 2 * n} F{150 + n}\n" for n in range(feeds))
        return HEAD + "G0 X-10 Y5\nG1 Z-1 F100\n" + "".join(lines) + "G0 Z5\nM30\n"

    def thin(feeds: int) -> list[int]:
        return sorted(f.count for f in found(tried(laps(feeds), SIX, **EPOXY), "chip-too-thin"))  # type: ignore[arg-type]

    assert thin(20) == [1] * 20
    assert thin(21) == [21]


def test_collisions_are_never_put_together() -> None:
    program = HEAD + "G0 X-10 Y20\nG1 Z-3 F100\nG1 X130 F900\nG0 X-10 Y40\nG0 X130 Y60\nG0 Z5\nM30\n"
    assert [f.line for f in found(tried(program, SIX, **EPOXY), "rapid-through-stock")] == [7, 8]  # type: ignore[arg-type]


def test_a_feed_finding_stands_on_its_f_word_and_changes_every_one_that_says_it() -> None:
    program = HEAD + "G0 X-10 Y20\nG1 Z-1 F200\nG1 X130\nY60 F200\nX-10\nG0 Z5\nM30\n"
    (thin,) = found(tried(program, SIX, **EPOXY), "chip-too-thin")  # type: ignore[arg-type]
    assert thin.line == 5
    assert thin.column == 8
    assert {(word.line, word.word, word.from_) for word in thin.change.set} == {(5, "F", 200.0), (7, "F", 200.0)}
    assert len({word.to for word in thin.change.set}) == 1
    again = program
    for word in thin.change.set:
        again = again.replace(f"F{word.from_:g}", f"F{word.to:g}")
    assert not found(tried(again, SIX, **EPOXY), "chip-too-thin", "chip-too-thick")  # type: ignore[arg-type]


def test_an_inch_program_is_told_in_inches() -> None:
    program = "G20 G90 G94 G17 G54\nM3 S12000\nG0 Z0.2\nG0 X-0.5 Y1\nG1 Z-0.04 F8\nG1 X5\nG0 Z0.2\nM30\n"
    (thin,) = found(tried(program, SIX, **EPOXY), "chip-too-thin")  # type: ignore[arg-type]
    assert thin.found is not None
    assert thin.window is not None
    assert thin.found.unit == thin.window.unit == "in"
    assert 0.8 * 8 / 12000 / 2 <= thin.found.value <= 1.01 * 8 / 12000 / 2
    assert thin.window.low == pytest.approx(0.055 / 25.4, rel=1e-3)
    assert " in at 8 in/min " in thin.happens
    (feed,) = thin.change.set
    assert (feed.line, feed.from_) == (5, 8.0)
    assert 0.055 * 24000 / 25.4 <= feed.to <= 0.15 * 24000 / 25.4


def test_the_same_input_gives_the_same_report() -> None:
    program = HEAD + plunges(20, 40) + "G0 X-10 Y20\nG1 Z-3 F100\nG1 X130\nG0 X-10 Y60\nM30\n"
    first, second = (tried(program, SIX, **EPOXY) for _ in range(2))  # type: ignore[arg-type]
    assert first.findings == second.findings
    assert first.not_judged == second.not_judged
    grades = [GRADES.index(f.grade) for f in first.findings]
    assert len(set(grades)) > 1
    assert grades == sorted(grades)


ACCEPT = '[[accept]]\nrule = "straight-plunge"\nbecause = "the places are drilled by hand first"\n'


def test_an_acceptance_in_the_job_keeps_the_finding_with_its_reason() -> None:
    checked = tried(HEAD + plunges(20) + "M30\n", SIX, **EPOXY, job=ACCEPT)  # type: ignore[arg-type]
    assert [f.accepted for f in found(checked, "straight-plunge")] == ["the places are drilled by hand first"]
    assert not found(checked, "acceptance-stale")


def test_an_acceptance_for_another_tool_is_stale() -> None:
    checked = tried(HEAD + plunges(20) + "M30\n", SIX, **EPOXY, job=ACCEPT + "tool = 2\n")  # type: ignore[arg-type]
    assert [f.accepted for f in found(checked, "straight-plunge")] == [None]
    (stale,) = found(checked, "acceptance-stale")
    assert stale.grade == "consider"
    assert "for tool 2" in stale.happens


def test_a_comment_accepts_the_next_block_only() -> None:
    comment = "(gclint accept straight-plunge because it is drilled)\n"
    program = HEAD + plunges(20) + comment + plunges(40, 60) + "M30\n"
    checked = tried(program, SIX, **EPOXY)  # type: ignore[arg-type]
    assert {(f.lines, f.accepted) for f in found(checked, "straight-plunge")} == {
        ((5, 12), None), ((9,), "it is drilled")
    }  # fmt: skip


def test_a_comment_that_accepts_nothing_or_a_rule_that_does_not_exist_is_told() -> None:
    program = HEAD + "(gclint accept steep-ramp because why not)\n(gclint accept strait-plunge because of a slip)\n"
    checked = tried(program + plunges(20) + "M30\n", SIX, **EPOXY)  # type: ignore[arg-type]
    assert [f.line for f in found(checked, "acceptance-stale")] == [4]
    (unknown,) = found(checked, "acceptance-unknown")
    assert unknown.line == 5
    assert 'nearest: "straight-plunge"' in unknown.happens


def test_a_job_that_accepts_a_rule_that_does_not_exist_is_refused() -> None:
    with pytest.raises(Problem, match='there is no rule "strait-plunge"; nearest: "straight-plunge"'):
        tried(HEAD + "M30\n", SIX, job=ACCEPT.replace("straight", "strait"))


def test_without_a_material_it_is_said_once_what_would_let_chips_be_judged() -> None:
    checked = tried(HEAD + plunges(20) + "G0 X-10\nG1 Z-1 F300\nG1 X90\nG0 Z5\nM30\n", SIX, stock=EPOXY["stock"])
    assert not found(checked, "chip-too-thin", "straight-plunge")
    rows = [row for row in checked.not_judged if row.rule in ("chip-too-thin", "straight-plunge")]
    assert len(rows) == 2
    assert all("material" in row.needs for row in rows)
    assert len({row.rule for row in checked.not_judged}) == len(checked.not_judged)


def test_a_rule_that_fails_becomes_a_finding_and_the_others_go_on(monkeypatch: pytest.MonkeyPatch) -> None:
    real = judging._run

    def broken(rule, *rest):  # type: ignore[no-untyped-def]
        if rule.name == "steep-ramp":
            raise ZeroDivisionError("made to fail")
        return real(rule, *rest)

    monkeypatch.setattr(judging, "_run", broken)
    checked = tried(HEAD + plunges(20) + "M30\n", SIX, **EPOXY)  # type: ignore[arg-type]
    (failed,) = found(checked, "internal-error")
    assert failed.found is not None
    assert failed.found.value == "steep-ramp: ZeroDivisionError: made to fail"
    assert "straight-plunge" in names(checked)


LITTLE = ["", "M30\n", "(nothing)\n", "G0 X1\n", "G1\n", "%\n%\n", "\x00\x01\n", "G21\nT1 M6\n"]


@pytest.mark.parametrize("program", LITTLE)
def test_programs_with_next_to_nothing_in_them(program: str) -> None:
    try:
        checked = tried(program, SIX)
    except Problem:
        return
    assert not found(checked, "internal-error")


HOUSE = """
pack = "lowtide"
about = "What the Lowtide workshop (an invented one) asks."

[[rule]]
name = "left-of-zero"
title = "Something is cut left of the zero"
looks_at = "moves"
when = "in_contact and lowest < floor"
grade = "change"
happens = "The tip goes to Z {lowest} here; this workshop ends at {floor}."
change = "Do not go so deep."
why = "A rule of the house."
standing = "practice"
source = "the house"
owner = "the workshop"

[rule.limits]
floor = { value = "-2 mm", standing = "practice", source = "the house" }
"""


def test_a_house_pack_is_judged_beside_the_shipped_ones() -> None:
    job = 'packs = ["house.toml"]\n'
    program = HEAD + "G0 X-10 Y40\nG1 Z-3 F100\nG1 X60\nG0 Z5\nM30\n"
    checked = tried(program, SIX, job=job, house=HOUSE, **EPOXY)  # type: ignore[arg-type]
    (own,) = found(checked, "left-of-zero")
    assert own.happens == "The tip goes to Z -3 mm here; this workshop ends at -2 mm."
    assert "chip-too-thin" in names(checked)


def test_a_house_rule_may_not_take_a_shipped_name(tmp_path: Path) -> None:
    (tmp_path / "house.toml").write_text(HOUSE.replace("left-of-zero", "steep-ramp"))
    with pytest.raises(Problem, match='the rule "steep-ramp" also stands in'):
        judging.check_together((*shipped_packs(), load_pack(tmp_path / "house.toml")))


def test_too_fast_an_edge_is_told_a_speed_and_the_feed_that_keeps_the_chip() -> None:
    program = "G21 G90 G94 G17 G54\nM3 S20000\nG0 Z5\nG0 X-10 Y40\nG1 Z-1 F2600\nX130\nG0 Z5\nM30\n"
    (fast,) = found(tried(program, "1: flat 3.175mm 2fl", **EPOXY), "edge-too-fast")  # type: ignore[arg-type]
    assert {(word.line, word.word, word.to) for word in fast.change.set} == {(2, "S", 13000.0), (5, "F", 1690.0)}
    again = program.replace("S20000", "S13000").replace("F2600", "F1690")
    checked = tried(again, "1: flat 3.175mm 2fl", **EPOXY)  # type: ignore[arg-type]
    assert not found(checked, "edge-too-fast", "chip-too-thick")


def test_a_program_that_collides_everywhere_is_told_in_a_bounded_list() -> None:
    across = "".join(f"G1 Z-1 F300\nG0 X{130 if n % 2 else -10} Y{n / 10:.1f}\n" for n in range(1, 300))
    checked = tried(HEAD + "G0 X-10 Y0\n" + across + "G0 Z5\nM30\n", "1: flat 1mm 2fl", **EPOXY)  # type: ignore[arg-type]
    told = found(checked, "rapid-through-stock")
    assert len(told) == 101
    assert sum(f.count for f in told) == 299
    assert sum(len(f.lines) for f in told) == 299


def test_a_slower_edge_brings_the_feed_that_makes_the_chip_right_there() -> None:
    program = "G21 G90 G94 G17 G54\nM3 S20000\nG0 Z5\nG0 X-10 Y40\nG1 Z-1 F600\nG1 X130\nG0 Z5\nM30\n"
    (fast,) = found(tried(program, SIX, **EPOXY), "edge-too-fast")  # type: ignore[arg-type]
    words = {word.word: word.to for word in fast.change.set}
    assert fast.window is not None
    assert fast.window.high is not None
    again = program.replace("S20000", f"S{words['S']:g}").replace("F600", f"F{words['F']:g}")
    assert not found(tried(again, SIX, **EPOXY), "edge-too-fast", "chip-too-thin", "chip-too-thick")  # type: ignore[arg-type]


@pytest.mark.parametrize(("job", "standing"), [(None, "assumed"), ('z_zero = "stock-top"', "declared")])
def test_a_limit_nobody_declared_is_told_as_assumed(job: str | None, standing: str) -> None:
    program = "G21 G90 G94 G17 G54\nM3 S12000\nG0 Z5\nG0 X-10 Y40\nG1 Z-1 F600\nG1 X60\nM30\n"
    stock = "120 x 80 x 20 mm at 0 0" if job else None
    (ends,) = found(tried(program, SIX, material="oak", stock=stock, job=job), "ends-in-material")
    assert ends.window is not None
    assert ends.window.standing == standing


def test_feeds_are_told_as_the_controller_counts_them(tmp_path: Path) -> None:
    """On a controller whose F counts mm/s, F5 is 300 mm/min, and the F to write is a sixtieth."""
    card = tmp_path / "seconds.toml"
    card.write_text(
        'name = "seconds"\ntitle = "counts seconds (invented)"\nsource = "invented"\nfeed_unit = "mm/s"\n'
        'arcs = { tolerance = "0.005 mm" }\n'
    )
    program = HEAD + "M3 S20000\nG0 Z5\nG0 X-10 Y40\nG1 Z-1 F{}\nG1 X130\nG0 Z5\nM30\n"
    shop = f'[machine]\ncontroller = "{card}"\n'
    (there,) = found(tried(program.format(5), "1: flat 3.175mm 2fl down-cut", shop=shop, **EPOXY), "chip-too-thin")
    (minute,) = found(tried(program.format(300), "1: flat 3.175mm 2fl down-cut", **EPOXY), "chip-too-thin")
    feeds = [[w.to for w in each.change.set if w.word == "F"] for each in (there, minute)]
    assert feeds[0] == pytest.approx([feed / 60 for feed in feeds[1]], abs=0.001)
    assert next(w.from_ for w in there.change.set if w.word == "F") == pytest.approx(5.0)
    assert "a sixtieth" in there.change.text


def test_what_is_only_to_consider_is_told_once_for_all_lines() -> None:
    over = "".join(f"G0 X{20 * n} Y10 Z0.5\nG1 Z-1 F300\nG1 Y60 F1800\nG0 Z0.5\n" for n in range(1, 6))
    checked = tried(
        "G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\n" + over + "G0 Z20\nM30\n", "1: flat 6mm 2fl up-cut",
        material="birch-plywood", stock="120 x 80 x 18 mm at 0 0",
    )  # fmt: skip
    (low,) = found(checked, "travel-too-low")
    assert low.grade == "consider"
    assert low.count == len(low.lines) > 3


def test_a_bracket_left_over_by_every_name_is_one_cause() -> None:
    names_of = "".join(f"(Pocket ({n}))\nG0 X{n} Y0\n" for n in range(1, 6))
    checked = tried("G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\n" + names_of + "M30\n")
    (left,) = found(checked, "comment-leftover")
    assert left.count == 5


def test_the_way_up_from_too_deep_is_not_told_beside_the_way_down() -> None:
    checked = tried(
        "G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\nG0 X40 Y30\nG1 Z-10 F300\nG0 Z5\nG0 X60\nG1 X80 Z-10 F300\nG1 X20 Z2\n"
        "M30\n",
        "1: drill 3mm", material="birch-plywood", stock="120 x 80 x 6 mm at 0 0",
    )  # fmt: skip
    assert [line for f in found(checked, "cuts-table") for line in f.lines] == [5, 8]


def test_what_is_taken_as_given_is_in_the_units_of_the_program() -> None:
    inch = "G20 G90 G94 G17 G54\nM3 S12000\nG0 Z0.2\nG0 X0 Y1\nG1 Z-0.04 F8\nG1 X5\nG0 Z0.2\nM30\n"
    taken = {each.what: each.value for each in tried(inch, "1: flat 1/4in 2fl", material="beech").assumed}
    assert taken["stock in X"].startswith("-0.375 to 5.375 in (")
    assert taken["stock top"] == "Z 0 in (work zero)"


def test_a_blank_whose_top_is_not_known_is_not_asked_for_again() -> None:
    above = "G21 G90 G94 G17 G54\nM3 S12000\nG0 Z25\nG0 X0 Y10\nG1 Z2 F300\nG1 X50\nG0 Z25\nM30\n"
    given = tried(above, SIX, material="cured-epoxy", stock="120 x 80 x 20 mm")
    needs = {each.rule: each.needs for each in given.not_judged}
    assert "z_zero" in needs["cuts-table"]
    assert "z_zero" in needs["straight-plunge"]
    assert not any("--stock" in text for rule, text in needs.items() if rule != "outside-stock")
    bare = {each.rule: each.needs for each in tried(above, SIX, material="cured-epoxy").not_judged}
    assert "--stock" in bare["straight-plunge"]


def test_one_way_of_writing_numbers_is_one_cause() -> None:
    commas = HEAD + "".join(f"G1 X{n},5 F300\n" for n in range(150)) + "G1 X- Y3\nG1 Y2.5.1\nSHRINK\nM30\n"
    unread = found(tried(commas, SIX), "number-unreadable")
    assert [(f.count, f.line) for f in unread] == [(150, 4), (1, 154), (2, 155)]
    assert "comma" in unread[0].happens
    assert "comma" not in unread[1].change.text


def test_arcs_that_are_rounded_alike_are_one_cause_with_the_worst_of_them() -> None:
    arcs = "".join(f"G1 X{20 + n}.00 Y10.00\nG2 X{20 + n}.35 Y10.12 I0.1{9 - n % 2} J0\n" for n in range(5))
    (one,) = found(tried(HEAD + "G0 X0 Y0\nG1 Z-1 F300\n" + arcs + "G0 Z5\nM30\n", SIX), "arc-does-not-close")
    assert (one.count, one.line, one.worst_line) == (5, 7, 9)


def test_each_unknown_code_is_a_cause_of_its_own() -> None:
    codes = HEAD + "M157\nM157\nM158\nM30\n"
    assert [f.count for f in found(tried(codes, SIX), "code-unknown")] == [2, 1]


def test_only_faults_come_in_sorts(tmp_path: Path) -> None:
    files = (folder() / "part" / name for name in ("group.toml", "not-cut-through.toml"))
    text = "".join(file.read_text(encoding="utf-8") for file in files).replace('cause = "depth"', 'cause = "sort"', 1)
    (tmp_path / "own.toml").write_text(text, encoding="utf-8")
    with pytest.raises(Problem, match="faults"):
        load_pack(tmp_path / "own.toml")


def test_what_is_not_judged_names_a_rule_or_says_in_words_what_it_is() -> None:
    """A program of a fourth axis: what waits is no rule, so `rule` is null and `what` says it."""
    program = b"G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\nG0 X10 Y40\nG1 Z-1 A30 F300\nG1 X50 A60\nG0 Z5\nM30\n"
    checked = check(program, "a.nc", Options())
    assert any(each.rule is None and each.what for each in checked.not_judged)
    for each in checked.not_judged:
        assert each.rule is None or (" " not in each.rule and each.what[0].isupper())


def test_what_makes_an_arc_not_close_is_one_entry_with_the_arc() -> None:
    lap = (
        "G0 X-5 Y-5\nG1 Z-{z} F200\nG1 Y65 F900\nG2 X-3 Y67 I2 J0\nG1 X83\nG2 X85 Y65 I0 J-2\nG1 Y-3\n"
        "G2 X83 Y-5 I-2 J0\nG1 X-5\nG0 Z5\n"
    )
    text = "G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\n" + "".join(lap.format(z=z) for z in (1, 2, 3)) + "M5\nM30\n"
    told = tried(text.replace("I2 J0", "I-2 J0", 1), "1: flat 3mm 2fl")
    assert "coordinate-suspect" in names(told)
    assert "arc-does-not-close" not in names(told)
    before = tried(text.replace("X83\n", "X-83\n", 1), "1: flat 3mm 2fl")  # the arc behind it does not close either
    assert "arc-does-not-close" in names(before)
    assert not [f for f in found(before, "coordinate-suspect") if f.line == 9]

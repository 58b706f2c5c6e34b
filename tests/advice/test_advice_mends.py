"""What a finding says to change is done to the program, and the program is checked again."""

from __future__ import annotations

import re

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from gclint.advice.change import ADVICE
from gclint.packs.advice_names import ADVICE_ON
from gclint.tables.finding import Checked, Finding
from tests.judge.test_scenarios import MACHINE_A, MACHINE_B
from tests.judge.try_judge import found, tried

RULES = (
    "chip-too-thin", "chip-too-thick", "edge-too-fast", "edge-too-slow", "tool-bends", "spindle-stalls", "tool-breaks",
    "feed-never-reached", "feed-over-machine", "speed-over-spindle",
)  # fmt: skip
B = MACHINE_B.replace('controller = "stops-at-tool-change.toml"\n', "")


def test_every_advice_that_a_rule_can_name_is_worked_out() -> None:
    assert set(ADVICE) == set(ADVICE_ON)


def tool(diameter: float, flutes: int, stickout: float) -> str:
    return f"""
[[tool]]
number = 1
shape = "flat"
diameter = "{diameter} mm"
flutes = {flutes}
helix = "up-cut"
flute_length = "{2.5 * diameter} mm"
stickout = "{max(stickout, 2.5 * diameter)} mm"
shank = "{max(diameter, 3.175)} mm"
made_of = "carbide"
"""


def cut(feeds: tuple[float, ...], speed: float, depth: float, width: float, diameter: float, unit: float = 1.0) -> str:
    """Long cuts along the front edge of the blank and beside each other, one for each feed; `unit`: mm of a 1."""
    lines = [f"G{21 if unit == 1 else 20} G90 G94 G17 G54", f"M3 S{speed:g}"]
    for n, feed in enumerate(feeds):
        y = 20 * n + width - diameter / 2
        lines += [
            f"G0 Z{5 / unit:.4f}",
            f"G0 X{-30 / unit:.4f} Y{y / unit:.4f}",
            f"G1 Z{-depth / unit:.4f} F{150 / unit:.1f}",
        ]
        lines += [f"G1 X{330 / unit:.4f} F{feed / unit:.4g}"]
    return "\n".join([*lines, f"G0 Z{5 / unit:.4f}", "M30", ""])


def applied(program: str, finding: Finding) -> str:
    lines = program.split("\n")
    for word in finding.change.set:
        text = lines[word.line - 1]
        new = f"{word.word}{word.to:g}"
        changed, count = re.subn(rf"{word.word}[0-9.]+", new, text)
        lines[word.line - 1] = changed if count else f"{text} {new}"
    return "\n".join(lines)


def rules_of(checked: Checked) -> set[str]:
    return {finding.rule for finding in checked.findings if finding.rule in RULES}


@pytest.mark.slow
@given(
    feed=st.integers(20, 900).map(lambda n: n * 10.0),
    speed=st.integers(60, 240).map(lambda n: n * 100.0),
    share=st.sampled_from([0.08, 0.25, 0.5, 1.0]),
    deep=st.sampled_from([0.25, 0.5, 1.0]),
    diameter=st.sampled_from([3.175, 6.0]),
    flutes=st.sampled_from([1, 2, 3]),
    stickout=st.sampled_from([15.0, 25.0, 40.0]),
    material=st.sampled_from(["cured-epoxy", "birch-plywood", "cast-acrylic", "aluminium-6061", "hdpe"]),
    power=st.sampled_from(["", 'power = "60 W"\n', 'power = "700 W"\n']),
    unit=st.sampled_from([1.0, 25.4]),
    second=st.sampled_from([0.0, 0.6]),
    acceleration=st.sampled_from([0, 200]),
)
@settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck), derandomize=True)
def test_a_change_mends_its_finding_and_breaks_nothing_else(
    feed: float, speed: float, share: float, deep: float, diameter: float, flutes: int, stickout: float, material: str,
    power: str, unit: float, second: float, acceleration: int,
) -> None:  # fmt: skip
    feeds = (feed, round(feed * second)) if second else (feed,)
    program = cut(feeds, speed, deep * diameter, share * diameter, diameter, unit)
    shop = B.replace("[machine]", '[machine]\nfeed_limit = { x = "4000 mm/min", y = "4000 mm/min", z = "1000 mm/min" }')
    if acceleration:
        axes = ", ".join(f'{axis} = "{acceleration} mm/s^2"' for axis in "xyz")
        shop = shop.replace("[machine]", f"[machine]\nacceleration = {{ {axes} }}")
    shop = shop.replace("[spindle]\n", f"[spindle]\n{power}") + tool(diameter, flutes, stickout)

    def run(text: str) -> Checked:
        return tried(text, material=material, stock="300 x 40 x 20 mm at 0 0", shop=shop)

    before = run(program)
    hidden = {"tool-bends"} if "tool-breaks" in rules_of(before) else set()  # told by the worse one alone
    for finding in found(before, *RULES):
        if not finding.change.set:
            continue
        mended = applied(program, finding)
        assert rules_of(run(mended)) <= rules_of(before) | hidden, (finding.change, program)
        same = found(before, finding.rule)
        if len(same) > 1 and any({word.word for word in one.change.set} != {"F"} for one in same):
            continue  # a rule counts its share over all of a tool, and the rest of it cannot be mended so
        if len(same) > 1:
            for other in same:
                mended = applied(mended, other)
        left = [one for one in found(run(mended), finding.rule) if set(one.lines) & set(finding.lines)]
        assert not left, (finding.change, left, program)


@pytest.mark.parametrize("mark", ["A", "C", "F"])
@pytest.mark.parametrize("feed", [300, 900, 1500, 2400])
def test_every_dial_mark_it_names_is_inside(mark: str, feed: int) -> None:
    program = cut((feed,), 18000, 3, 6, 6)
    shop = MACHINE_A + tool(6, 2, 25)

    def run(text: str, dial: str) -> Checked:
        return tried(text, material="birch-plywood", stock="300 x 15 x 20 mm at 0 0", shop=shop, job=f'dial = "{dial}"')

    for finding in found(run(program, mark), "chip-too-thin", "chip-too-thick"):
        named = re.search(r"dial ([A-F]) with the feed as it is", finding.change.text)
        if named:
            assert not found(run(program, named[1]), "chip-too-thin", "chip-too-thick")
        if finding.change.set:
            assert not found(run(applied(program, finding), mark), "chip-too-thin", "chip-too-thick")


def test_two_feeds_of_one_speed_are_both_inside_after_a_slower_edge() -> None:
    program = cut((2600, 1700), 20000, 1, 3.175, 3.175)
    shop = B + tool(3.175, 2, 15)

    def run(text: str) -> Checked:
        return tried(text, material="cured-epoxy", stock="300 x 40 x 20 mm at 0 0", shop=shop)

    (fast,) = found(run(program), "edge-too-fast")
    assert {word.word for word in fast.change.set} == {"S", "F"}
    assert not rules_of(run(applied(program, fast)))


def test_arcs_too_small_for_their_feed_get_a_slower_spindle() -> None:
    """Half circles of 0.8 mm run at most 759 mm/min at 200 mm/s2: sqrt(a r). The band is 0.03 to 0.08 mm."""
    arcs = [f"G{2 + n % 2} X{121.6 + 1.6 * n:g} Y10 I0.8 J0" for n in range(70)]
    cuts = ["G0 X0 Y10", "G1 Z-1 F300", "G1 X120 F2400", *arcs]
    program = "\n".join(["G21 G90 G94 G17 G54", "M3 S18000", "G0 Z5", *cuts, "G0 Z5", "M30", ""])
    axes = ", ".join(f'{axis} = "200 mm/s^2"' for axis in "xyz")
    shop = B.replace("[machine]", f"[machine]\nacceleration = {{ {axes} }}") + tool(3, 2, 15)
    shop += '[windows."cast-acrylic".1]\nfz = ["0.03 mm", "0.08 mm"]\n'

    def run(text: str) -> Checked:
        return tried(text, material="cast-acrylic", stock="300 x 60 x 10 mm at -10 -10", shop=shop)

    (thin,) = found(run(program), "chip-too-thin", "feed-never-reached")
    assert {(word.word, word.to) for word in thin.change.set} == {("S", 10000), ("F", 1200)}
    assert not rules_of(run(applied(program, thin)))
    assert found(run(program.replace("S18000", "S10000")), "chip-too-thick")  # F2400 S10000: lines of 0.12


@pytest.mark.parametrize("stated", [16000, 19500, 23000])
def test_a_slower_mark_is_written_into_the_program(stated: int) -> None:
    """No dial is declared in the job: the S of the program says which mark is meant."""
    shop = MACHINE_A + tool(3.175, 2, 15)

    def run(text: str) -> Checked:
        return tried(text, material="cured-epoxy", stock="300 x 40 x 20 mm at 0 0", shop=shop)

    program = cut((1400, 900), stated, 1, 3.175, 3.175)
    (fast,) = found(run(program), "edge-too-fast")
    assert "Set the dial to B (12500 rev/min)" in fast.change.text
    assert ("S", 12500) in {(word.word, word.to) for word in fast.change.set}
    assert not rules_of(run(applied(program, fast)))


def test_circles_too_small_for_a_higher_feed_get_a_slower_spindle_at_once() -> None:
    """Circles of 0.5 mm run at most 600 mm/min at 200 mm/s2: sqrt(a r). No F alone makes the chip thick enough."""
    circles = [
        word for n in range(6)
        for word in (f"G0 X{10 + 9 * n} Y20", "G1 Z0.2 F300", "G1 Z-1 F150", f"G2 X{10 + 9 * n} I0.5 J0 F300", "G0 Z5")
    ]  # fmt: skip
    program = "\n".join(["G21 G90 G94 G17 G54", "M3 S18000", "G0 Z5", *circles, "M30", ""])
    axes = ", ".join(f'{axis} = "200 mm/s^2"' for axis in "xyz")
    shop = B.replace("[machine]", f"[machine]\nacceleration = {{ {axes} }}") + tool(3, 2, 15)

    def run(text: str) -> Checked:
        return tried(text, material="cast-acrylic", stock="120 x 60 x 10 mm at -10 -10", shop=shop)

    (thin,) = found(run(program), "chip-too-thin", "feed-never-reached")
    assert {word.word for word in thin.change.set} == {"S", "F"}
    assert all(word.to <= 600 for word in thin.change.set if word.word == "F")
    assert not found(run(applied(program, thin)), "chip-too-thin", "feed-never-reached", "chip-too-thick")


def test_a_hole_as_wide_as_the_tool_is_drilled_not_ramped_into() -> None:
    program = "G21 G90 G94 G17 G54\nM3 S12000\nG0 Z3\nG0 X10 Y20\nG1 Z-3 F60\nG0 Z3\nM30\n"
    options = {"material": "aluminium-6061", "stock": "40 x 40 x 8 mm at 0 0"}
    (hole,) = found(tried(program, "1: flat 3mm 1fl", **options), "straight-plunge")  # type: ignore[arg-type]
    assert "drill it" in hole.change.text
    assert "ramp" not in hole.change.text
    slotted = tried(program.replace("F60", "F60\nG1 X30 F200"), "1: flat 3mm 1fl", **options)  # type: ignore[arg-type]
    (slot,) = found(slotted, "straight-plunge")
    assert "along a ramp" in slot.change.text


def test_a_drill_that_rubs_gets_a_feed_at_which_it_cuts() -> None:
    program = "G21 G90 G94 G17 G54\nM3 S5000\nG0 Z3\nG0 X10 Y20\nG1 Z-5 F10\nG0 Z3\nM30\n"
    options = {"material": "aluminium-6061", "stock": "40 x 40 x 8 mm at 0 0"}
    (rubs,) = found(tried(program, "1: drill 3mm 2fl", **options), "chip-too-thin")  # type: ignore[arg-type]
    assert rubs.grade == "consider"
    mended = tried(applied(program, rubs), "1: drill 3mm 2fl", **options)  # type: ignore[arg-type]
    assert not found(mended, "chip-too-thin", "chip-too-thick")


def test_a_slower_way_down_along_many_moves_holds_to_its_end() -> None:
    down = "\n".join(f"G1 X{20 + 0.5 * n:g} Y40 Z{-0.35 * n:g}" for n in range(1, 11))
    program = f"G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\nG0 X20 Y40\nG1 Z0 F1500\n{down}\nG1 X100\nG0 Z5\nM30\n"
    options = {"material": "birch-plywood", "stock": "120 x 80 x 18 mm at 0 0"}
    checked = tried(program, "1: flat 6mm 2fl down-cut", **options)
    finding = found(checked, "plunge-too-fast")[0]
    assert [word.line for word in finding.change.set] == [6, 16]  # the first move down, and the first level one
    assert finding.change.set[1].to == 1500
    assert not found(tried(applied(program, finding), "1: flat 6mm 2fl down-cut", **options), "plunge-too-fast")


def test_plunges_of_one_feed_are_all_slowed_and_the_cuts_behind_them_are_not() -> None:
    lines = ["G21 G90 G94 G17 G54", "M3 S16000", "G0 Z5"]
    for y in (20, 40, 60):
        lines += [f"G0 X20 Y{y}", "G1 Z-2 F1500", "G1 X90", "G0 Z5"]  # the cut takes the plunge's F
    program = "\n".join([*lines, "G0 X20 Y70", "G1 Z-2 F1400", "G1 X90 F1500", "G0 Z5", "M30", ""])
    given_ = {"material": "birch-plywood", "stock": "120 x 100 x 18 mm at 0 0"}
    for finding in found(tried(program, "1: flat 6mm 2fl up-cut", **given_), "plunge-too-fast"):  # type: ignore[arg-type]
        assert {word.to for word in finding.change.set} <= {495.0, 1500.0}
        program = applied(program, finding)
    checked = tried(program, "1: flat 6mm 2fl up-cut", **given_)  # type: ignore[arg-type]
    assert not found(checked, "plunge-too-fast")
    assert program.count("G1 X90 F1500") == 4


def test_a_plunge_in_two_feeds_never_gets_a_higher_one() -> None:
    program = (
        "G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\nG0 X19 Y30\nG1 Z0.1 F900\nG1 Z-2\n"
        "G18 G2 X20 Z-3 I1 K0 F1500\nG17 G1 X90\nG0 Z5\nM30\n"
    )
    checked = tried(program, "1: flat 6mm 2fl up-cut", material="birch-plywood", stock="120 x 100 x 18 mm at 0 0")
    (finding,) = found(checked, "plunge-too-fast")
    down = {word.line: (word.from_, word.to) for word in finding.change.set}
    assert down[6][1] == pytest.approx(495.0)
    assert all(old is None or new < old for old, new in down.values())
    assert not found(
        tried(applied(program, finding), "1: flat 6mm 2fl up-cut", material="birch-plywood",
              stock="120 x 100 x 18 mm at 0 0"),
        "plunge-too-fast",
    )  # fmt: skip


@pytest.mark.parametrize(
    ("first", "other"),
    [("F1500", ""), ("F1500", "F1500"), ("F1500", "f1500"), ("", "")],
    ids=["one F for all", "F on each", "in lower case", "F before all"],
)
def test_every_plunge_of_one_finding_gets_its_feed(first: str, other: str) -> None:
    holes = "".join(
        f"G0 X{20 + 20 * n} Y40\nG0 Z1\nG1 Z-3 {other if n else first}\nG1 X{30 + 20 * n}\nG0 Z5\n" for n in range(4)
    )
    program = f"G21 G90 G94 G17 G54\nM3 S16000\nG1 F1500\nG0 Z5\n{holes}M30\n"
    options = {"material": "birch-plywood", "stock": "120 x 80 x 18 mm at 0 0"}
    tools = "1: flat 6mm 2fl down-cut"
    (finding,) = found(tried(program, tools, **options), "plunge-too-fast")
    assert finding.count == 4
    mended = applied(program, finding)
    assert not found(tried(mended, tools, **options), "plunge-too-fast")
    run_before, run_after = tried(program, tools, **options), tried(mended, tools, **options)
    # the cuts run as before: only the ways down are slower
    assert run_after.tools[0].set_feed_mm_min[1] == run_before.tools[0].set_feed_mm_min[1] == 1500
    assert len([one for one in finding.change.set if one.to == 1500]) == 4


def test_no_words_are_set_where_one_place_holds_an_expression() -> None:
    holes = "".join(f"G0 X{20 + 20 * n} Y40\nG0 Z1\nG1 Z-3 F[1400+100]\nG1 X{30 + 20 * n}\nG0 Z5\n" for n in range(3))
    program = f"G21 G90 G94 G17 G54\nM3 S16000\nG0 Z5\n{holes}M30\n"
    checked = tried(program, "1: flat 6mm 2fl down-cut", material="birch-plywood", stock="120 x 80 x 18 mm at 0 0")
    (finding,) = found(checked, "plunge-too-fast")
    assert finding.change.set == ()
    assert "Go down with F" in finding.change.text


def test_level_moves_and_ramps_of_one_f_get_each_what_their_axis_minds() -> None:
    """114 lines under one F: level moves a little over their limit are not slowed to what Z can do on the ramps."""
    program = (
        "G21 G90 G94 G17 G54\nM3 S12000\nG0 Z5\nG0 X20 Y20\nG1 Z0 F200\nG1 X24 Z-1 F2600\nG1 X100\nG1 Y60\nG1 X60\n"
        "G1 X56 Z-2\nG1 X20\nG0 Z5\nM5\nM30\n"
    )
    options = {"material": "mdf", "stock": "120 x 80 x 18 mm at 0 0"}
    shop = '[machine]\nfeed_limit = { x = "2500 mm/min", y = "2500 mm/min", z = "300 mm/min" }\n'
    checked = tried(program, "1: flat 6mm 2fl up-cut", shop=shop, **options)  # type: ignore[arg-type]
    ramps, level = found(checked, "feed-over-machine")
    assert set(ramps.lines) == {6, 10}
    assert {word.to for word in ramps.change.set} == {1236.0, 2600.0}  # sqrt(17) x 300: the slope of 1 in 4
    assert 2500.0 in {word.to for word in level.change.set if word.line in (7, 11)}
    for one in (ramps, level):
        program = applied(program, one)
    after = tried(program, "1: flat 6mm 2fl up-cut", shop=shop, **options)  # type: ignore[arg-type]
    assert not found(after, "feed-over-machine")

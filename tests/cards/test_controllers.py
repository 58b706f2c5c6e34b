"""Controller cards."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from gclint.cards.controller import controller, controller_from, names
from gclint.problem import Problem


@pytest.mark.parametrize("name", names())
def test_every_card_loads_under_its_name(name: str) -> None:
    card = controller(name)
    assert card.name == name
    assert card.source
    assert 0.0 < card.arc_tolerance <= card.arc_tolerance_most


def test_the_two_classes() -> None:
    assert set(names()) >= {"any", "hobby-3-axis"}
    anyone, hobby = controller("any"), controller("hobby-3-axis")
    assert (anyone.tool_change, anyone.canned_cycles, anyone.dwell_unit) == ("does", "does", "s")
    assert (hobby.tool_change, hobby.canned_cycles, hobby.dwell_unit) == ("ignores", "refuses", "s")
    limits = (hobby.arc_tolerance, hobby.arc_tolerance_share, hobby.arc_tolerance_most)
    assert limits == pytest.approx((0.005, 0.001, 0.5))
    assert hobby.start_state == ()


def test_a_tool_change_by_hand() -> None:
    shop = controller("shop-3-axis")
    assert (shop.tool_change, shop.program_stop) == ("stops", "stops-spindle")


@pytest.mark.parametrize("name", names())
def test_an_arc_rule_is_told_of_those_controllers_alone_where_it_was_seen(name: str) -> None:
    """Elsewhere it follows from the resolution: three steps of it, or of the four decimals of an inch program."""
    card = controller(name)
    assert card.arc_known == (name in ("hobby-3-axis", "rs274ngc"))
    if not card.arc_known:
        assert card.arc_tolerance == pytest.approx(3 * card.resolution)
        assert card.arc_tolerance_inch == pytest.approx(3 * 0.0001 * 25.4)
        assert "ISO" not in card.because["arcs"][1]


def test_limits_of_an_arc_go_with_a_tolerance(tmp_path: Path) -> None:
    path = tmp_path / "ours.toml"
    path.write_text(re.sub(r"tolerance = \S+ ?\S*\"", 'most = "0.5 mm"', CARD, count=1))
    with pytest.raises(Problem, match="goes with `tolerance`"):
        controller_from(path)
    path.write_text(CARD[: CARD.index("arcs")] + CARD[CARD.index("arcs") :].partition("\n")[2])
    assert not controller_from(path).arc_known


def test_the_published_arc_rule() -> None:
    """NISTIR 6556, 3.5.3.2: the radii may differ by 0.002 mm, or by 0.0002 in."""
    assert controller("rs274ngc").arc_tolerance == pytest.approx(0.002)
    assert controller("rs274ngc").arc_tolerance_inch == pytest.approx(0.0002 * 25.4)


def test_an_unknown_name_is_a_problem() -> None:
    with pytest.raises(Problem, match='nearest: "hobby-3-axis"'):
        controller("hobby-3axis")


def test_a_card_of_the_shops_own(tmp_path: Path) -> None:
    path = tmp_path / "ours.toml"
    text = 'name = "ours"\ntitle = "ours"\nsource = "a"\ntool_change = "stops"\n[arcs]\ntolerance = "0.002 mm"\n'
    path.write_text(text)
    assert controller_from(path).tool_change == "stops"
    path.write_text(text.replace('"stops"', '"stop"'))
    with pytest.raises(Problem) as caught:
        controller_from(path)
    assert (caught.value.line, caught.value.column) == (4, 15)


CARD = 'name = "ours"\ntitle = "ours"\nsource = "invented"\narcs = { tolerance = "0.005 mm" }\n'


@pytest.mark.parametrize(
    ("more", "says", "line"),
    [
        ('dwel_unit = "s"\n', 'there is no such key; nearest: "dwell_unit"', 5),
        ('[[refuses]]\ncodes = ["G81"]\n[[does]]\ncodes = ["G81"]\n', "is also among what it does", 6),
        ('[[refuses]]\ncodes = ["G8x"]\n', "neither a code", 6),
        ('[[refuses]]\nwords = ["AB"]\n', "no letter of a word", 6),
        ('[[ignores]]\nhabits = ["arc-turn"]\n', 'nearest: "arc-turns"', 6),
        ('[[ignores]]\ncodes = ["inch"]\n', 'start_state must name "G21"', 5),
        ('[[ignores]]\ncodes = ["M6"]\n', "is said by the key `tool_change`", 5),
        ('start_state = ["G20"]\n[[refuses]]\ncodes = ["inch"]\n', "and yet refused", 5),
        ('start_state = ["G90", "G54", "G91"]\n', "only one of G90, G91", 5),
        ("[[does]]\n", "an entry needs codes, words or habits", 5),
        ('axes = ["X", "A"]\n[[refuses]]\nwords = ["A"]\n', "is an axis and yet", 5),
        ('because = { dwel = { standing = "memory", source = "" } }\n', "no such key on a card", 5),
    ],
)
def test_a_card_that_is_wrong(tmp_path: Path, more: str, says: str, line: int) -> None:
    path = tmp_path / "ours.toml"
    path.write_text(CARD + more)
    with pytest.raises(Problem, match=re.escape(says)) as caught:
        controller_from(path)
    assert caught.value.path == str(path)
    if "start_state must" not in says:
        assert caught.value.line == line


@pytest.mark.parametrize("share", ["nan", "-0.1", "1.0", "inf"])
def test_a_share_of_the_radius_is_under_one(tmp_path: Path, share: str) -> None:
    path = tmp_path / "ours.toml"
    path.write_text(CARD.replace(" }", f", share = {share} }}"))
    with pytest.raises(Problem, match="share of the radius") as caught:
        controller_from(path)
    assert caught.value.line == 4
    path.write_text(CARD.replace(" }", ", share = 0.99 }"))
    assert controller_from(path).arc_tolerance_share == pytest.approx(0.99)


def test_a_narrow_name_wins_over_its_family(tmp_path: Path) -> None:
    path = tmp_path / "ours.toml"
    path.write_text(CARD + '[[refuses]]\ncodes = ["cycles"]\n[[does]]\ncodes = ["G83"]\n')
    card = controller_from(path)
    assert (card.state("G81"), card.state("G83"), card.state("G1")) == ("refuses", "does", "does")


def test_codes_no_list_names(tmp_path: Path) -> None:
    path = tmp_path / "ours.toml"
    path.write_text(CARD + 'other_codes = "refuses"\n[[does]]\ncodes = ["G0-G3"]\n')
    card = controller_from(path)
    assert [card.state(name) for name in ("G2", "G4", "M8", "A")] == ["does", "refuses", "refuses", "does"]


@pytest.mark.parametrize("code", ["G40", "G49", "G80"])
def test_no_shipped_card_minds_the_usual_cancels(code: str) -> None:
    """The header `G40 G49 G80` is an exporter's habit; a card that refused it would alarm on every program."""
    assert {controller(name).state(code) for name in names()} == {"does"}


def test_the_report_refuses_what_it_does_not_list() -> None:
    """NISTIR 6556, sections 3.5 and 3.6: G95, G73 and M98 are not in its tables; G83 and G93 are."""
    card = controller("rs274ngc")
    assert [card.state(code) for code in ("G95", "G73", "M98", "G83", "G93")] == ["refuses"] * 3 + ["does"] * 2
    assert [card.state(letter) for letter in "EUVW"] == ["refuses"] * 4  # section 3.3.2
    assert card.line_length == 256  # section 3.3
    assert card.start_state == ()

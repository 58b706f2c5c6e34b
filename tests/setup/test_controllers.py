"""Controller cards."""

from __future__ import annotations

from pathlib import Path

import pytest

from gclint.problem import Problem
from gclint.setup.controllers import controller, controller_from, names


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


def test_the_published_arc_rule() -> None:
    """NISTIR 6556, 3.5.3.2: the radii may differ by 0.002 mm."""
    assert controller("rs274ngc").arc_tolerance == pytest.approx(0.002)


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

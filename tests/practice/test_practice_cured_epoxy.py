"""Cured epoxy with a bit of 1/8 in and two flutes. Everything here is common practice, no source.

On a dial-set router that turns 0.85 of what its dial says: 40 to 60 in/min at settings of 10,000 to 14,000 cut well,
the same feeds at 17,000 and above make dust, feeds twice as high chatter at the low speeds.
"""

from __future__ import annotations

import pytest

from gclint.cards.material import material
from gclint.cutting.load import load
from gclint.tables.setup import Tool
from tests.cutting import tables

BIT = Tool(1, "flat", 3.175, flutes=2)
TRUE_SHARE = 0.85
INCH = 25.4


def judged(inches_per_minute: float, nominal: float, ae: float = 3.175, ap: float = 1.5) -> tuple[bool, bool, bool]:
    """(too thin, too thick, edge too fast) at the true speed, each as the card's window says."""
    motion = tables.motion(3, feed=inches_per_minute * INCH, speed=nominal * TRUE_SHARE)
    setup = tables.setup(BIT, material=material("cured-epoxy"))
    cut = load(motion, tables.timing(motion), tables.engagement(3, ae=ae, ap=ap, angle=180.0), setup).loads
    assert cut.chip_judged.all()
    return (
        bool(cut.h_ex[0] < cut.chip_low[0]),
        bool(cut.h_ex[0] > cut.chip_high[0]),
        bool(cut.edge_speed[0] > cut.edge_high[0]),
    )


@pytest.mark.parametrize("feed", [40, 50, 60])
@pytest.mark.parametrize("nominal", [10000, 12000, 14000])
def test_good(feed: float, nominal: float) -> None:
    assert judged(feed, nominal) == (False, False, False)


@pytest.mark.parametrize("feed", [40, 50, 60])
@pytest.mark.parametrize("nominal", [17000, 20000, 23000, 26000])
def test_dust(feed: float, nominal: float) -> None:
    thin, thick, fast = judged(feed, nominal)
    assert (thin, thick, fast) == (True, False, True)


@pytest.mark.parametrize(("feed", "nominal"), [(80, 10000), (100, 12000), (120, 14000), (120, 10000)])
def test_chatter(feed: float, nominal: float) -> None:
    """About twice the good feeds at the low speeds."""
    assert judged(feed, nominal)[1]


def test_the_slow_end_would_be_a_false_alarm_at_the_nominal_speed() -> None:
    """40 in/min at a dial setting of 14,000: 0.0363 at 14,000, under the floor; 0.0427 at the true 11,900, over it."""
    assert not judged(40, 14000)[0]
    assert judged(40, 14000 / TRUE_SHARE)[0]


@pytest.mark.parametrize(
    ("vc", "floor"), [(85.0, 0.042), (119.0, 0.042), (130.0, 0.0474), (144.0, 0.055), (200.0, 0.055)]
)
def test_the_floor_rises_with_edge_speed(vc: float, floor: float) -> None:
    motion = tables.motion(1, speed=vc * 1000 / (3.14159265 * 3.175))
    setup = tables.setup(BIT, material=material("cured-epoxy"))
    cut = load(motion, tables.timing(motion), tables.engagement(1), setup).loads
    assert cut.chip_low[0] == pytest.approx(floor, abs=1e-4)


def test_entries() -> None:
    card = material("cured-epoxy")
    assert card.plunge == "no"
    assert card.ramp_advised is not None
    assert card.ramp_advised.value == pytest.approx(3.0)

"""The numbers of the model: each has a meaning, a standing and a source, and the kernel keeps to its own."""

from __future__ import annotations

import pytest

from gclint.check import run
from gclint.knowledge.numbers import model_number, numbers
from gclint.setup.declare import Options
from gclint.tables.setup import STANDINGS


def test_every_number_says_what_it_means_and_where_it_comes_from() -> None:
    assert numbers()
    for name, entry in numbers().items():
        assert entry.standing in STANDINGS, name
        assert entry.means, name
        assert entry.source, name


@pytest.mark.parametrize(("share", "touches"), [(0.8, False), (1.5, True)])
def test_contact_begins_at_the_contact_depth(share: float, touches: bool) -> None:
    depth = share * model_number("contact_depth")
    program = f"G21 G90 G94 G17 G54\nM3 S12000\nG0 Z5\nG0 X-10 Y20\nG1 Z-{depth:.4f} F300\nG1 X60\nG0 Z5\nM30\n"
    ran = run(
        program.encode(), "skim.nc", Options(tools=("1: flat 6mm 2fl up-cut",), stock="50 x 40 x 10 mm at 0 0"), None
    )
    assert ran.tables is not None
    assert (len(ran.tables.engagement.pieces) > 0) == touches

"""Every shipped card against the table of practice it was written from. Common practice, no source."""

from __future__ import annotations

import pytest

from gclint.cards.material import material, names

DIAMETERS = (1.5, 3.175, 6.0, 6.35, 12.7)
# name: chip limits at each diameter; ramp advised / alarm; plunge; feed share; depth slot / side; edge speed
WOOD = "0.008-0.028 0.018-0.070 0.030-0.13 0.032-0.14 0.050-0.28; 8 20; yes 0.5; 0.30; 1 2; -"
TABLE = {
    "birch-plywood": "0.010-0.035 0.022-0.080 0.035-0.15 0.037-0.16 0.060-0.34; 10 25; yes 1; 0.33; 1 2; -",
    "mdf": "0.012-0.040 0.025-0.090 0.040-0.18 0.042-0.19 0.070-0.42; 10 25; yes 1; 0.40; 1.5 2.5; -",
    "softwood": "0.010-0.040 0.022-0.090 0.035-0.18 0.037-0.19 0.060-0.42; 10 25; yes 1; 0.40; 1.5 2.5; -",
    "beech": WOOD,
    "oak": WOOD,
    "maple": WOOD,
    "walnut": WOOD,
    "cast-acrylic": "0.015-0.035 0.030-0.080 0.045-0.13 0.047-0.14 0.075-0.24; 5 12; peck; 0.25; 1 1.5; 500",
    "extruded-acrylic": "0.018-0.035 0.036-0.080 0.055-0.13 0.058-0.14 0.090-0.25; 5 12; peck; 0.25; 0.75 1.5; 360",
    "polycarbonate": "0.018-0.040 0.036-0.090 0.055-0.15 0.058-0.16 0.090-0.28; 5 12; peck; 0.30; 0.75 1.5; 500",
    "hdpe": "0.018-0.050 0.040-0.12 0.065-0.22 0.068-0.23 0.110-0.42; 10 20; yes 1; 0.35; 1.5 2.5; 700",
    "pvc-foam-board": "0.012-0.050 0.028-0.13 0.045-0.25 0.048-0.26 0.080-0.45; 15 30; yes 1; 0.40; 2 4; 1000",
    "cured-epoxy": "0.022-0.045 0.042-0.10 0.055-0.15 0.057-0.16 0.085-0.26; 3 10; no; 0.20; 0.75 1.5; D",
    "machinable-wax": "0.012-0.050 0.025-0.13 0.040-0.25 0.042-0.26 0.070-0.45; 15 30; yes 1; 0.40; 2 4; 500",
    "tooling-board": "0.010-0.050 0.020-0.14 0.035-0.28 0.037-0.29 0.060-0.50; 15 30; yes 1; 0.40; 2 4; 1500",
    "aluminium-6061": "0.005-0.018 0.010-0.035 0.018-0.065 0.019-0.068 0.035-0.13; 3 6; no; 0.15; 0.5 1; 500",
    "brass": "0.005-0.018 0.010-0.035 0.018-0.060 0.019-0.063 0.035-0.12; 3 6; no; 0.15; 0.3 0.8; 300",
    "glass-filled-laminate": "0.006-0.025 0.012-0.050 0.020-0.080 0.021-0.085 0.035-0.15; 3 8; drill; 0.2; 0.5 1; 300",
}
EPOXY_EDGE = {1.5: (30, 85), 3.175: (60, 130), 6.0: (100, 310), 6.35: (105, 330), 12.7: (200, 560)}


def test_every_card_is_in_the_table() -> None:
    assert set(names()) == set(TABLE)


@pytest.mark.parametrize("name", sorted(TABLE))
def test_card_is_the_row(name: str) -> None:
    chips, ramp, plunge, share, depth, edge = (part.split() for part in TABLE[name].split("; "))
    card = material(name)
    practised = [row for row in card.chip if row.diameter > 1.0]  # that of 1 mm is scaled down, from memory
    assert [row.diameter for row in practised] == pytest.approx(DIAMETERS)
    assert [f"{row.low:g}-{row.high:g}" for row in practised] == [
        "-".join(f"{float(value):g}" for value in pair.split("-")) for pair in chips
    ]
    assert card.ramp_advised is not None
    assert card.ramp_limit is not None
    assert [card.ramp_advised.value, card.ramp_limit.value] == pytest.approx([float(value) for value in ramp])
    assert card.plunge == plunge[0]
    depths = [card.plunge_depth.value] if card.plunge_depth else []
    assert depths == pytest.approx([float(value) for value in plunge[1:]])
    assert card.plunge_feed_share is not None
    assert card.plunge_feed_share.value == pytest.approx(float(share[0]))
    assert card.depth_slot is not None
    assert card.depth_side is not None
    assert [card.depth_slot.value, card.depth_side.value] == pytest.approx([float(value) for value in depth])
    if edge == ["D"]:
        limits = {float(row.diameter or 0): (row.low, row.high) for row in card.edge}
        assert {diameter: limits[diameter] for diameter in EPOXY_EDGE} == EPOXY_EDGE
    else:
        assert [f"{row.high:g}" for row in card.edge] == [value for value in edge if value != "-"]

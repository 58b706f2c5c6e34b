"""What is condensed from the tables, against figures reckoned by hand from the program in conftest."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from gclint.digest import summary
from gclint.faults import CODE, Faults
from gclint.run import Tables
from gclint.tables.motion import HOME, INCH, MACHINE


def test_a_row_per_tool_in_the_order_of_use(tables: Tables) -> None:
    first, second = summary.tool_rows(tables)
    assert (first.tool, first.name, second.tool, second.name) == (1, "eighth down-cut", 2, "")
    assert first.passes == 1
    assert first.entries == {"straight": 1, "ramp": 0, "helix": 0, "side": 0, "open": 0}
    assert first.cut_length_mm == pytest.approx(2 + 40 + 31.416, abs=1e-3)
    # 2 mm at 200, then 71.416 mm at 400 mm/min; the plunge's upper half is air
    assert first.cut_time_s == pytest.approx(0.5 * 7 / 200 * 60 + 71.416 / 400 * 60, abs=0.01)
    assert first.rapid_time_s == pytest.approx(7 / 5000 * 60, abs=0.01)
    assert first.set_feed_mm_min == (200, 400)
    assert first.true_speed_rpm == (26500, 26500)
    assert first.h_ex_mm == (0.0065, 0.0075)
    assert (first.ap_max_mm, first.ae_max_mm, first.removed_mm3) == (2, 3, 446)


def test_force_power_and_bending_of_the_heaviest_cut(tables: Tables) -> None:
    """The largest low end and the largest high end, whichever piece they come from."""
    first = summary.tool_rows(tables)[0]
    assert first.force_n == (3.0, 8.0)
    assert first.power_w == (5.0, 12.0)
    assert first.torque_nm == pytest.approx((5 * 60 / (2 * np.pi * 26500), 12 * 60 / (2 * np.pi * 26500)), abs=1e-4)
    assert first.bend_mm == pytest.approx((0.004, 0.014))
    assert first.stress_n_mm2 == pytest.approx((30.0, 80.0))


def test_facts_that_are_missing_are_none(tables: Tables) -> None:
    second = summary.tool_rows(tables)[1]
    assert (second.force_n, second.power_w, second.bend_mm) == (None, None, None)
    assert (second.true_speed_rpm, second.fz_mm, second.h_ex_mm) == (None, None, None)


def test_a_rapid_without_a_declared_rate_has_no_time(tables: Tables) -> None:
    seconds = np.where(tables.motion.kind == 0, np.nan, tables.timing.seconds)
    untimed = replace(tables, timing=replace(tables.timing, seconds=seconds))
    rows = summary.tool_rows(untimed)
    assert rows[0].rapid_time_s is None
    assert rows[0].cut_time_s is not None
    assert summary.total_time(untimed.motion, untimed.timing) is None


def test_total_time_counts_dwells_and_leaves_out_legs_of_unknown_length(tables: Tables) -> None:
    by_hand = (7 / 5000 + 7 / 200 + 71.416 / 400 + 50 / 5000 + 6 / 300) * 60 + 3
    assert summary.total_time(tables.motion, tables.timing) == pytest.approx(by_hand, abs=0.01)


def test_extent_is_of_the_tip_over_all_moves(tables: Tables) -> None:
    found = summary.extent(tables.motion)
    assert found.min == (0, 0, -2)
    assert found.max == (60, 20, 5)


def test_extent_holds_the_bulge_of_an_arc(tables: Tables) -> None:
    # the same quarter circle run the long way round, clockwise, bulges to X 20 and Y 40
    kind, sweep = tables.motion.kind.copy(), tables.motion.sweep.copy()
    kind[3], sweep[3] = 2, -270.0
    found = summary.extent(replace(tables.motion, kind=kind, sweep=sweep))
    assert found.min[:2] == (0, 0)
    assert found.max[:2] == (60, 40)


def test_extent_of_an_arc_in_another_plane_bulges_in_z(tables: Tables) -> None:
    # G18: first axis Z, second X; half a turn about X 40, Z 0 from X 60 over Z 20 back to X 20
    m = tables.motion
    plane, cu, cv, sweep, x0, z0 = (c.copy() for c in (m.plane, m.cu, m.cv, m.sweep, m.x0, m.z0))
    plane[3], cu[3], cv[3], sweep[3], x0[3], z0[3] = 18, 0.0, 40.0, -180.0, 60.0, 0.0
    found = summary.extent(replace(m, plane=plane, cu=cu, cv=cv, sweep=sweep, x0=x0, z0=z0))
    assert found.max[2] == pytest.approx(20)


def test_machine_and_home_moves_are_no_part_of_the_extent(tables: Tables) -> None:
    flags = tables.motion.flags.copy()
    flags[5], flags[6] = MACHINE, HOME
    m = replace(tables.motion, flags=flags, x1=np.where(np.arange(7) == 5, 900.0, tables.motion.x1))
    assert summary.extent(m).max[0] == 60


def test_an_axis_that_is_never_known_is_none(tables: Tables) -> None:
    nowhere = np.full(7, np.nan)
    found = summary.extent(replace(tables.motion, z0=nowhere, z1=nowhere))
    assert (found.min[2], found.max[2]) == (None, None)
    assert found.max[0] == 60


def test_units(tables: Tables) -> None:
    m = tables.motion
    inches = np.full(7, INCH, np.uint16)
    assert summary.units(m) == "mm"
    assert summary.units(replace(m, flags=inches)) == "inch"
    assert summary.units(replace(m, flags=np.where(np.arange(7) > 3, inches, 0))) == "mixed"
    one = np.array([CODE["units-unstated"]], np.uint8)
    faults = Faults(one, one, one, one, one, one)
    assert summary.units(replace(m, faults=faults)) == "unstated"


def test_moves_before_any_tool_count_only_if_they_feed(tables: Tables) -> None:
    m = tables.motion
    assert summary.order_of_use(replace(m, tool=np.array([-1, 1, 1, 1, 1, 2, 2]))) == [1, 2]
    assert summary.order_of_use(replace(m, tool=np.array([-1, -1, 1, 1, 1, 2, 2]))) == [-1, 1, 2]

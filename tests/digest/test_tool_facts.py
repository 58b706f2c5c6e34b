"""The tool strip's facts."""

from __future__ import annotations

from gclint.digest.tool_facts import tool_facts
from gclint.run import Tables


def test_entries_levels_and_window(tables: Tables) -> None:
    first, second = tool_facts(tables)
    assert first.described == "flat, 3.175 mm, 2 flutes, down-cut"
    assert second.described == "not declared"
    assert first.dial_marks == ("F",)
    assert second.dial_marks == ()
    entry = first.entries[0]
    assert (entry.kind, entry.count, entry.first_line) == ("straight", 1, 5)
    assert (entry.solid_mm, entry.steepest_degrees) == (2, 90)
    level = first.levels[0]
    assert (level.lowest_z_mm, level.passes, level.first_line, level.removed_mm3) == (-2, 1, 5, 446)
    assert first.chip_operation == "slot"
    assert first.chip_window is not None
    assert (first.chip_window.low, first.chip_window.high, first.chip_window.standing) == (0.042, 0.1, "practice")
    assert second.chip_window is None
    assert first.deepest_mm == 2

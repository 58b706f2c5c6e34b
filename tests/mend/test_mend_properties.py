"""Over generated programs: a copy cuts the same part, brings nothing new, leaves all else, and needs no more."""

from __future__ import annotations

import re

import numpy as np
import pytest
from hypothesis import HealthCheck, Phase, given, settings

from gclint.mend.mend import mend
from tests.mend.oracle import ran, worst_difference
from tests.mend.programs import Program, programs

GRAVE = ("halt", "change")


@pytest.mark.slow
@settings(
    max_examples=40,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    report_multiple_bugs=False,
    phases=(Phase.explicit, Phase.reuse, Phase.generate),  # each example takes seconds, and is short enough to be read
)
@given(programs())
def test_a_copy_cuts_the_same_and_a_second_mend_changes_nothing(program: Program) -> None:
    made = mend(program.data, "quay.nc", program.options)
    again = mend(program.data, "quay.nc", program.options)
    assert again.data == made.data
    if made.data is None:
        assert not made.document.changes
        return
    assert worst_difference(program.data, made.data, program.radius) <= 0.02
    assert not [each for each in made.document.proof.new if each.grade in GRAVE]
    assert made.document.proof.surface.same
    draft = made.copy.draft
    kept = [(int(draft.origin[row]), row + 1) for row in np.flatnonzero(~draft.changed).tolist()]
    before, after = re.split(rb"\r\n|\n|\r", program.data), re.split(rb"\r\n|\n|\r", made.data)
    assert all(before[old - 1] == after[new - 1] for old, new in kept)
    was, now = ran(program.data).states, ran(made.data).states
    assert all(was[old][:4] == now[new][:4] for old, new in kept if old in was)
    second = mend(made.data, "quay.nc", program.options)
    assert second.data is None

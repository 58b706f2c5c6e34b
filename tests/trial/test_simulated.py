"""Simulated shops with known windows: a stated interval of 80 % holds the truth about as often as it says.

`python -m tests.trial.simulate` runs 200 trials of 30 cuts; here a part of them.
"""

from __future__ import annotations

import numpy as np
import pytest

from tests.trial.simulate import simulate


@pytest.mark.slow
def test_intervals_hold_the_truth_and_the_pair_lies_inside() -> None:
    tally = simulate(trials=40, cuts=30, seed=7)
    assert len(tally.all) > 90
    assert 0.72 <= np.mean(tally.all) <= 0.90  # of 110; two standard errors are 8 %
    assert np.mean(tally.inside) >= 0.90

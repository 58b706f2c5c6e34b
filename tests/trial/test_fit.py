"""The ordinal fit against statsmodels' own estimates without priors, and on the least and oddest data."""

from __future__ import annotations

import numpy as np
import pytest

from gclint.trial.expected import Normal, expected
from gclint.trial.fit import Draws, fit

FLAT = Normal(0.0, 100.0)
PRIOR = expected().prior


def cuts(count: int, seed: int = 3) -> tuple[np.ndarray, np.ndarray]:
    """Levels 0 to 3 with slopes 2 and -1 and steps 0, 1, 3 (logits)."""
    rng = np.random.default_rng(seed)
    x = rng.uniform(-1, 1, (count, 2))
    seen = x @ [2.0, -1.0] + rng.logistic(size=count)
    return (seen[:, None] > np.array([0.0, 1.0, 3.0])).sum(axis=1), x


@pytest.mark.slow
def test_many_cuts_give_the_estimates_and_errors_of_statsmodels() -> None:
    from statsmodels.miscmodels.ordinal_model import OrderedModel

    levels, x = cuts(3000)
    theirs = OrderedModel(levels, x, distr="logit").fit(method="bfgs", disp=0)
    made = fit(levels, x, 4, (FLAT, FLAT), FLAT, FLAT, draws=4000)
    error = np.asarray(theirs.bse)
    assert made.mode == pytest.approx(np.asarray(theirs.params), abs=0.03)
    assert made.slope.mean(axis=0) == pytest.approx(theirs.params[:2], abs=0.1 * error[:2].max() + 0.02)
    assert made.slope.std(axis=0) == pytest.approx(error[:2], rel=0.1)
    steps = theirs.model.transform_threshold_params(np.asarray(theirs.params))[1:-1]
    assert made.step.mean(axis=0) == pytest.approx(steps, abs=0.05)


@pytest.mark.slow
def test_the_shipped_priors_hardly_move_many_cuts() -> None:
    levels, x = cuts(3000)
    free = fit(levels, x, 4, (FLAT, FLAT), FLAT, FLAT)
    dust = expected().fault["dust"]
    held = fit(levels, x, 4, (dust.chip, dust.edge), PRIOR.first_step, PRIOR.next_step)
    assert held.mode == pytest.approx(free.mode, abs=0.05)


@pytest.mark.parametrize("levels", [[0] * 9 + [3], [3] * 10, [0] * 5 + [1] * 5, [0, 3] * 5])
def test_ten_cuts_give_a_sane_answer_whatever_the_words(levels: list[int]) -> None:
    """Words that were never used, the same word every time, words that part the cuts sharply."""
    x = np.linspace(-1, 1, 10)[:, None]
    made = fit(np.array(levels), x, 4, (Normal(0.0, 3.0),), PRIOR.first_step, PRIOR.next_step)
    assert np.isfinite(made.slope).all()
    assert np.isfinite(made.step).all()
    assert np.abs(made.slope).max() < 30
    assert (np.diff(made.step, axis=1) > 0).all()
    assert made.kept > 300  # of 4000 that were tried


def test_the_same_cuts_give_the_same_draws() -> None:
    levels, x = cuts(30)
    first, second = (fit(levels, x, 4, (FLAT, FLAT), PRIOR.first_step, PRIOR.next_step) for _ in range(2))
    assert first.slope == pytest.approx(second.slope)


def test_margin_and_share_are_two_views_of_one_chance() -> None:
    draws = Draws(np.array([[2.0]]), np.array([[0.0, 1.0, 3.0]]), np.zeros(4), 1.0)
    x = np.array([[0.5], [0.0]])
    assert draws.margin(x, 2, 0.5)[0] == pytest.approx([0.0, 1.0])
    assert draws.share(x, 2)[0] == pytest.approx([0.5, 1 / (1 + np.e)])
    assert draws.margin(x, 2, 0.1)[0] == pytest.approx([-np.log(9), 1 - np.log(9)])

"""Ordinal regression of one fault: how the words it was graded with depend on how the cut was made.

The model is the cumulative logit (McCullagh 1980): a cut is graded at most with word k with the chance
expit(step_k - x b); a small share of words is slips of the one who grades. To its likelihood come weak priors, so that
ten cuts, or a word that was never used, give a sane answer. What is uncertain is told by draws from the posterior:
importance resampling (Rubin 1988) of a t distribution around its mode.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from gclint.columns import Column
from gclint.problem import Problem
from gclint.trial.expected import Normal

HEAVIER = 5.0  # degrees of freedom of the t distribution that draws come from: wider tails than the posterior's
CANDIDATES = 2  # for each draw that is kept
LARGEST_STEP = 50.0  # logarithm of a distance between words, so that no exponential overflows


class Draws(Struct, frozen=True, eq=False):
    """From the posterior: `slope` (draw, column) and `step` (draw, word - 1) in logits; `mode`, the most likely
    (slopes, then steps); `kept`: how many of the draws are as good as independent."""

    slope: Column
    step: Column
    mode: Column
    kept: float

    def margin(self, x: Column, word: int, chance: float) -> Column:
        """Logits by which cuts stay under `word` with more than 1 - chance; (draw, cut) for x of (cut, column)."""
        room: Column = self.step[:, word - 1, None] - self.slope @ x.T - np.log((1 - chance) / chance)
        return room

    def share(self, x: Column, word: int) -> Column:
        """Chance of `word` or a worse one: (draw, cut)."""
        chance: Column = _expit(self.slope @ x.T - self.step[:, word - 1, None])
        return chance


def fit(levels: Column, x: Column, words: int, slopes: tuple[Normal, ...], first: Normal, following: Normal,
        draws: int = 2000, seed: int = 1, slip: float = 0.0) -> Draws:  # fmt: skip
    """Draw from the posterior for `levels` (cut; 0 is the best word) and covariates x (cut, column).

    `slopes` holds a prior for each column; `slip` is the share of words that say nothing of the cut. Raises Problem
    where scipy is not installed.
    """
    try:
        from scipy.optimize import minimize
    except ImportError:
        says = "learning from test cuts needs scipy, which is not installed: pip install 'gclint[trial]'"
        raise Problem(says) from None
    priors = (*slopes, first, *[following] * (words - 2))
    model = _Model(levels.astype(int), np.asarray(x, dtype=float), words, priors, slip)
    found = minimize(model.falling, model.mean, jac=True, method="BFGS", options={"maxiter": 200, "gtol": 1e-4})
    mode = np.asarray(found.x)
    spread = _spread(model, mode)
    generator = np.random.default_rng(seed)
    tried, count = CANDIDATES * draws, x.shape[1]
    z = generator.standard_normal((tried, len(mode)))
    t = np.sqrt(HEAVIER / generator.chisquare(HEAVIER, tried))
    params = mode + (z * t[:, None]) @ spread.T
    proposed = -0.5 * (HEAVIER + len(mode)) * np.log1p((z**2).sum(1) * t**2 / HEAVIER)
    weight = model.posterior(params) - proposed
    weight = np.exp(weight - weight.max())
    weight /= weight.sum()
    at = (np.arange(draws) + generator.random()) / draws
    chosen = params[np.minimum(np.searchsorted(np.cumsum(weight), at), tried - 1)]
    generator.shuffle(chosen)  # draws of two faults are paired, and must not be in any order
    return Draws(chosen[:, :count], _steps(chosen[:, count:]), mode, float(1 / (weight**2).sum()))


def _steps(of: Column) -> Column:
    """Steps from the first and the logarithms of the distances between them, in the last axis."""
    made: Column = np.cumsum(np.concatenate([of[..., :1], np.exp(np.minimum(of[..., 1:], LARGEST_STEP))], -1), -1)
    return made


def _expit(x: Column) -> Column:
    made: Column = 0.5 * (1 + np.tanh(0.5 * x))
    return made


class _Model:
    """Logarithms of the posterior but for a constant; parameters are slopes, first step, ln of the distances."""

    def __init__(self, levels: Column, x: Column, words: int, priors: tuple[Normal, ...], slip: float) -> None:
        self.levels, self.x, self.words, self.slip = levels, x, words, slip
        self.mean = np.array([prior.mean for prior in priors])
        self.sd = np.array([prior.sd for prior in priors])
        self.tails = np.array([prior.tails or np.inf for prior in priors])

    def posterior(self, params: Column) -> Column:
        """Give the logarithm for each of many rows."""
        count = self.x.shape[1]
        ends = np.full((len(params), 1), np.inf)
        steps = np.hstack([-ends, _steps(params[:, count:]), ends])
        eta = params[:, :count] @ self.x.T
        each = _expit(steps[:, self.levels + 1] - eta) - _expit(steps[:, self.levels] - eta)
        each = (1 - self.slip) * each + self.slip / self.words
        made: Column = np.log(each + 1e-20).sum(axis=1) + self._prior(params)[0]
        return made

    def _prior(self, params: Column) -> tuple[Column, Column]:
        """Logarithm of the priors, summed, and its slope along each parameter: normal, or t where `tails` says so."""
        off = (params - self.mean) / self.sd
        heavy = np.isfinite(self.tails)
        tails = np.where(heavy, self.tails, 1.0)
        t = -0.5 * (tails + 1) * np.log1p(off**2 / tails)
        value = np.where(heavy, t, -0.5 * off**2).sum(axis=-1)
        slope = np.where(heavy, -(tails + 1) * off / (tails + off**2), -off) / self.sd
        return value, slope

    def falling(self, params: Column) -> tuple[float, Column]:
        """Give minus the logarithm and its slope, for a search of the least."""
        count = self.x.shape[1]
        steps = np.concatenate([[-np.inf], _steps(params[count:]), [np.inf]])
        eta = self.x @ params[:count]
        over, under = _expit(steps[self.levels + 1] - eta), _expit(steps[self.levels] - eta)
        each = (1 - self.slip) * (over - under) + self.slip / self.words + 1e-20
        dense_over, dense_under = over * (1 - over), under * (1 - under)
        scale = (1 - self.slip) / each
        slope = np.zeros(len(params))
        slope[:count] = -((dense_over - dense_under) * scale) @ self.x
        by_step = np.bincount(self.levels + 1, dense_over * scale, self.words + 1)
        by_step -= np.bincount(self.levels, dense_under * scale, self.words + 1)
        above = np.cumsum(by_step[1:-1][::-1])[::-1]  # a distance moves every step above it
        slope[count] = above[0]
        slope[count + 1 :] = above[1:] * np.exp(np.minimum(params[count + 1 :], LARGEST_STEP))
        value, pull = self._prior(params)
        return -float(np.log(each).sum() + value), -(slope + pull)


def _spread(model: _Model, mode: Column) -> Column:
    """A square root of the posterior's covariance at its mode."""
    step = 1e-4
    shifts = step * np.eye(len(mode))
    curved = np.stack([model.falling(mode + each)[1] - model.falling(mode - each)[1] for each in shifts]) / (2 * step)
    value, vector = np.linalg.eigh((curved + curved.T) / 2)
    root: Column = vector / np.sqrt(np.maximum(value, 0.5 / float(model.sd.max()) ** 2))
    return root

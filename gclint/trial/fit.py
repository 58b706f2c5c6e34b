"""Ordinal regression of one fault: how the words it was graded with depend on how the cut was made.

The model is the cumulative logit of statsmodels (OrderedModel): a cut is graded at most with word k with the chance
expit(step_k - x b). To its likelihood come weak normal priors, so that ten cuts, or a word that was never used, give a
sane answer. What is uncertain is told by draws from the posterior: importance resampling (Rubin 1988) of a t
distribution around its mode.
"""

from __future__ import annotations

import functools
import warnings
from typing import Any

import numpy as np
from msgspec import Struct

from gclint.columns import Column
from gclint.problem import Problem
from gclint.trial.expected import Normal

HEAVIER = 5.0  # degrees of freedom of the t distribution that draws come from: wider tails than the posterior's
CANDIDATES = 2  # for each draw that is kept


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
        from scipy.special import expit

        chance: Column = expit(self.slope @ x.T - self.step[:, word - 1, None])
        return chance


def fit(levels: Column, x: Column, words: int, slopes: tuple[Normal, ...], first: Normal, following: Normal,
        draws: int = 2000, seed: int = 1) -> Draws:  # fmt: skip
    """Draws for `levels` (cut; 0 is the best word) and covariates x (cut, column), each with its prior of `slopes`."""
    count = x.shape[1]
    mean = np.array([*(p.mean for p in slopes), first.mean, *[following.mean] * (words - 2)])
    sd = np.array([*(p.sd for p in slopes), first.sd, *[following.sd] * (words - 2)])
    model = _model(levels, x, words, mean, sd)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # a search that ends a hair from the mode only makes draws weigh differently
        found = model.fit(start_params=mean.copy(), method="bfgs", maxiter=200, disp=0, skip_hessian=True)
        mode = np.asarray(found.params)
        spread = _spread(model, mode, sd)
    generator = np.random.default_rng(seed)
    tried = CANDIDATES * draws
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
    steps = np.cumsum(np.c_[chosen[:, count], np.exp(chosen[:, count + 1 :])], axis=1)
    return Draws(chosen[:, :count], steps, mode, float(1 / (weight**2).sum()))


def _spread(model: Any, mode: Column, sd: Column) -> Column:
    """A square root of the posterior's covariance at its mode."""
    from statsmodels.tools.numdiff import approx_hess

    curved = -np.asarray(approx_hess(mode, model.loglike))
    value, vector = np.linalg.eigh((curved + curved.T) / 2)
    root: Column = vector / np.sqrt(np.maximum(value, 0.5 / float(sd.max()) ** 2))
    return root


def _model(levels: Column, x: Column, words: int, mean: Column, sd: Column) -> Any:
    """statsmodels' model of these cuts with the priors' logarithms added to its likelihood."""
    import pandas

    graded = pandas.Series(pandas.Categorical.from_codes(levels.astype(int), categories=range(words), ordered=True))
    made = _weighed()(graded, x, distr="logit")
    made.prior_mean, made.prior_sd = mean, sd
    return made


@functools.cache
def _weighed() -> Any:
    """OrderedModel with a prior; made when first used, since statsmodels takes a second to import."""
    try:
        from statsmodels.miscmodels.ordinal_model import OrderedModel
    except ImportError:
        says = "learning from test cuts needs statsmodels, which is not installed: pip install 'gclint[trial]'"
        raise Problem(says) from None
    from scipy.special import expit

    class Weighed(OrderedModel):  # type: ignore[misc]
        """Logarithms of the posterior but for a constant."""

        prior_mean: Column
        prior_sd: Column

        def cdf(self, x: Column) -> Column:
            return np.asarray(expit(x))  # as distr.cdf, at a tenth of the time

        def loglike(self, params: Column) -> float:
            given = np.asarray(params)
            off = (given - self.prior_mean) / self.prior_sd
            return float(np.sum(self.loglikeobs(given))) - 0.5 * float(off @ off)

        def posterior(self, params: Column) -> Column:
            """`loglike` of many rows at once."""
            count = self.exog.shape[1]
            steps = np.cumsum(np.c_[params[:, count], np.exp(np.minimum(params[:, count + 1 :], 50.0))], axis=1)
            ends = np.full((len(params), 1), np.inf)
            steps = np.hstack([-ends, steps, ends])
            level = self.endog.astype(int)
            eta = params[:, :count] @ self.exog.T
            each = self.prob(steps[:, level] - eta, steps[:, level + 1] - eta)
            off = (params - self.prior_mean) / self.prior_sd
            made: Column = np.log(each + 1e-20).sum(axis=1) - 0.5 * (off**2).sum(axis=1)
            return made

    return Weighed

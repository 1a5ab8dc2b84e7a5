"""Draws from a prior conditioned on a likelihood, known up to a factor."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeAlias

import numpy as np

from diagnose.hydraulics.ranges import FloatArray

STRETCH = 2.0  #: the walk's one scale, as its authors give it
HALVE = 0.5  #: each stage leaves so much of the draws that count
BISECTIONS, LEAST_STAGE = 30, 1e-4

LogDensity: TypeAlias = Callable[[FloatArray], FloatArray]


def conditioned_draws(
    log_likelihood: LogDensity,
    prior: FloatArray,
    rng: np.random.Generator,
    *,
    steps: int = 12,
    last: int = 60,
    every: int = 5,
) -> FloatArray:
    """Return draws of standard normal parameters given a likelihood.

    ``log_likelihood``: from positions (walkers, n) to (walkers,). ``prior``: an even number of
    draws of the standard normal, more than twice as many as parameters. Returns shape (draws, n).

    The likelihood comes in by stages, each followed by a walk of ``steps``; between them draws that
    have become unlikely give their places to likely ones. So none stays behind in a lesser peak,
    as it would on a walk from the prior straight to the likelihood. Of the ``last`` steps some are
    kept.

    >>> rng = np.random.default_rng(1)
    >>> start = rng.standard_normal((200, 1))
    >>> found = conditioned_draws(lambda x: -0.5 * ((x[:, 0] - 1.5) / 0.5) ** 2, start, rng)
    >>> bool(abs(found.mean() - 1.2) < 0.1), bool(abs(found.std() - 0.45) < 0.1)
    (True, True)

    Source: P. Del Moral, A. Doucet, A. Jasra, "Sequential Monte Carlo samplers", Journal of the
    Royal Statistical Society B 68 (2006), 411-436 (from memory).
    """
    at, share = np.array(prior, dtype=float), 0.0
    likely = log_likelihood(at)
    while share < 1.0:
        before, share = share, _next_share(share, likely)
        at = at[_survivors((share - before) * likely, rng)]
        at = _walked(_tempered(log_likelihood, share), at, steps, rng)[-1]
        likely = log_likelihood(at)
    kept = _walked(_tempered(log_likelihood, 1.0), at, last, rng)[every - 1 :: every]
    return np.concatenate(kept)


def _tempered(log_likelihood: LogDensity, share: float) -> LogDensity:
    """The prior times a power of the likelihood."""
    return lambda at: np.asarray(-0.5 * np.sum(at**2, axis=1) + share * log_likelihood(at))


def _next_share(share: float, likely: FloatArray) -> float:
    """The largest power of the likelihood that leaves enough of the draws."""

    def counting(to: float) -> float:
        weight = np.exp((to - share) * (likely - likely.max()))
        return float(weight.sum() ** 2 / np.sum(weight**2))

    enough = HALVE * len(likely)
    if counting(1.0) >= enough:
        return 1.0
    low, high = share, 1.0
    for _ in range(BISECTIONS):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if counting(middle) >= enough else (low, middle)
    return min(max(low, share + LEAST_STAGE), 1.0)


def _survivors(log_weight: FloatArray, rng: np.random.Generator) -> np.ndarray:
    """Which draws go on, each as often as its weight says; in random order."""
    n = len(log_weight)
    weight = np.exp(log_weight - log_weight.max())
    ends = np.cumsum(weight / weight.sum())
    chosen = np.searchsorted(ends, (np.arange(n) + rng.random()) / n)
    return np.asarray(rng.permutation(np.minimum(chosen, n - 1)))


def _walked(
    log_density: LogDensity, start: FloatArray, steps: int, rng: np.random.Generator
) -> list[FloatArray]:
    """The places of all walkers after each step.

    Source: J. Goodman, J. Weare, "Ensemble samplers with affine invariance", Communications in
    Applied Mathematics and Computational Science 5 (2010), 65-80.
    """
    at = np.array(start, dtype=float)
    here = log_density(at)
    half, n = len(at) // 2, at.shape[1]
    places = []
    for _ in range(steps):
        for own, other in (
            (slice(0, half), slice(half, None)),
            (slice(half, None), slice(0, half)),
        ):
            stretch = ((STRETCH - 1.0) * rng.random(half) + 1.0) ** 2 / STRETCH
            partner = at[other][rng.integers(0, half, half)]
            tried = partner + stretch[:, None] * (at[own] - partner)
            there = log_density(tried)
            taken = np.log(rng.random(half)) < (n - 1) * np.log(stretch) + there - here[own]
            at[own] = np.where(taken[:, None], tried, at[own])
            here[own] = np.where(taken, there, here[own])
        places.append(at.copy())
    return places

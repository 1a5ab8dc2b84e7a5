"""Draws from a density known up to a factor.

Imported by ``pressure_law``.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from diagnose.hydraulics.ranges import FloatArray

STRETCH = 2.0  #: the sampler's one scale, as its authors give it


def sampled(
    log_density: Callable[[FloatArray], FloatArray],
    start: FloatArray,
    steps: int,
    rng: np.random.Generator,
    every: int = 5,
) -> FloatArray:
    """Return draws from a density: the second half of a walk, every few steps.

    ``log_density``: from positions (walkers, n) to (walkers,). ``start``: an even number of
    walkers, more than twice as many as parameters. Returns shape (draws, n).

    >>> rng = np.random.default_rng(1)
    >>> found = sampled(lambda x: -0.5 * ((x[:, 0] - 3.0) / 0.5) ** 2, rng.random((40, 1)), 400, rng)
    >>> bool(abs(found.mean() - 3.0) < 0.1), bool(abs(found.std() - 0.5) < 0.1)
    (True, True)

    Source: J. Goodman, J. Weare, "Ensemble samplers with affine invariance", Communications in
    Applied Mathematics and Computational Science 5 (2010), 65-80.
    """
    at = np.array(start, dtype=float)
    here = log_density(at)
    half, n = len(at) // 2, at.shape[1]
    kept = []
    for step in range(steps):
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
        if step >= steps // 2 and step % every == 0:
            kept.append(at.copy())
    return np.concatenate(kept)

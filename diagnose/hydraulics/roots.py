"""The zero of a falling function, for an array of problems at once."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from diagnose.hydraulics.ranges import FloatArray

STEPS = 60  #: more than bisection needs for the tolerance below
TOLERANCE = 1e-11


def falling_root(
    f: Callable[[FloatArray], FloatArray], low: FloatArray, high: FloatArray
) -> FloatArray:
    """The ``x`` between ``low`` and ``high`` where the falling ``f`` crosses zero.

    Chandrupatla's method on arrays: inverse quadratic steps where they are safe, halving where
    they are not, the bracket always kept. An end is returned where ``f`` does not change sign.
    ``f`` may have kinks; all elements walk until the slowest is there, 60 steps at most.

    >>> falling_root(lambda x: np.array([4.0, 9.0]) - x**2, np.zeros(2), np.full(2, 5.0))
    array([2., 3.])

    Source: T. R. Chandrupatla, Advances in Engineering Software 28 (1997), 145-149.
    """
    b, a = np.array(low, dtype=float), np.array(high, dtype=float)
    fb, fa = f(b), f(a)
    c, fc = a, fa
    stuck_low, stuck_high = fb <= 0, fa >= 0
    t = np.full_like(a, 0.5)
    for _ in range(STEPS):
        x = a + t * (b - a)
        fx = f(x)
        same = np.sign(fx) == np.sign(fa)
        c, fc = np.where(same, a, b), np.where(same, fa, fb)
        b, fb = np.where(same, b, a), np.where(same, fb, fa)
        a, fa = x, fx
        best_is_a = np.abs(fa) < np.abs(fb)
        width = np.abs(b - a)
        best = np.where(best_is_a, a, b)
        tolerance = TOLERANCE * (1 + np.abs(best))
        share = tolerance / np.maximum(width, 1e-300)
        if np.all((share > 0.5) | (fa == 0) | stuck_low | stuck_high):
            break
        t = _next_share(a, b, c, fa, fb, fc)
        t = np.clip(t, np.minimum(share, 0.5), np.maximum(1 - share, 0.5))
    best = np.where(np.abs(fa) < np.abs(fb), a, b)
    return np.where(stuck_low, low, np.where(stuck_high, high, best))


def _next_share(
    a: FloatArray, b: FloatArray, c: FloatArray, fa: FloatArray, fb: FloatArray, fc: FloatArray
) -> FloatArray:
    """How far from ``a`` towards ``b`` to look next: an inverse quadratic step or a half."""
    with np.errstate(all="ignore"):
        xi = (a - b) / (c - b)
        phi = (fa - fb) / (fc - fb)
        alpha = (c - a) / (b - a)
        step = fa / (fb - fa) * fc / (fb - fc) + alpha * fa / (fc - fa) * fb / (fc - fb)
        safe = (phi**2 < xi) & ((1 - phi) ** 2 < 1 - xi) & np.isfinite(step)
    return np.where(safe, step, 0.5)

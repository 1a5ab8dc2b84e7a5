"""The oil circuit solved for many engines at once against one by one with scipy's brentq.

One by one means the same residual, ``circuit.surplus``, in a Python loop over a sample of the same
engines, running conditions and wear; the answers are compared too.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import numpy as np
from scipy.optimize import brentq

from diagnose.hydraulics.circuit import solve, surplus
from diagnose.hydraulics.engine import SET_B, Engine, reclearanced
from knowledge.units import INCH
from tests.benchmarks.table import Row, seconds

ENGINES, SAMPLE = 2000, 200
SPEEDS, TEMPERATURES = np.array([700.0, 1500.0, 3000.0, 5000.0]), np.array([333.15, 373.15])
MOST = 2e6  #: Pa: above any answer here, and near enough for brentq to be quick


def worn(mains: Any, rods: Any, tip: Any, stuck: Any) -> Engine:
    """Set B with this wear [in] and this relief valve [m]."""
    engine = reclearanced(SET_B, mains=mains * INCH, rods=rods * INCH)
    return replace(engine, pump_tip_clearance=tip * INCH, relief_stuck_lift=stuck)


def rows(rounds: int, few: bool) -> Iterator[Row]:
    """One row: the time of a state one by one over its time all at once."""
    rng = np.random.default_rng(1)
    limits = ((1e-3, 6e-3), (1e-3, 6e-3), (2e-3, 8e-3))
    wear = [rng.uniform(low, high, ENGINES) for low, high in limits]
    wear.append(rng.choice([0.0, 0.0, 0.0, 1e-3], ENGINES))
    engines = worn(*(x[:, None, None] for x in wear))
    together = solve(engines, SPEEDS[:, None], TEMPERATURES)
    states = np.size(together.gallery_pressure)
    every = zip(
        rng.integers(0, ENGINES, SAMPLE),
        rng.integers(0, SPEEDS.size, SAMPLE),
        rng.integers(0, TEMPERATURES.size, SAMPLE),
        strict=True,
    )
    picked = [at for at in every if not np.asarray(together.starved)[at]]
    picked = picked[:40] if few else picked

    def apart() -> list[float]:
        found = []
        for i, j, k in picked:
            residual = surplus(worn(*(float(x[i]) for x in wear)), SPEEDS[j], TEMPERATURES[k])
            found.append(brentq(residual, 0.0, MOST, xtol=1e-6, rtol=1e-11))
        return found

    there = np.array([np.asarray(together.gallery_pressure)[at] for at in picked])
    off = np.max(np.abs(there / apart() - 1))
    ratios = []
    for _ in range(rounds):
        one = seconds(apart) / len(picked)
        ratios.append(
            one / (seconds(lambda: solve(engines, SPEEDS[:, None], TEMPERATURES)) / states)
        )
    what = f"circuit, {states:,} states at once"
    yield Row(what, "scipy brentq in a loop", ratios, ">= 50", f"differ by {off:.0e}")

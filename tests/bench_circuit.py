"""How much faster the circuit is solved all at once than one by one: python -m tests.bench_circuit

One by one means the same residual, ``circuit.surplus``, handed to ``scipy.optimize.brentq`` in a
Python loop, on a sample of the same engines; the answers are compared too. No test: it is timed.
"""

from __future__ import annotations

from dataclasses import replace
from time import perf_counter

import numpy as np
from scipy.optimize import brentq

from diagnose.hydraulics.circuit import solve, surplus
from diagnose.hydraulics.engine import SET_B, Engine, reclearanced
from knowledge.units import INCH

ENGINES, SAMPLE = 2000, 200
SPEEDS, TEMPERATURES = np.array([700.0, 1500.0, 3000.0, 5000.0]), np.array([333.15, 373.15])
MOST = 2e6  #: Pa: above any answer here, and near enough for brentq to be quick


def worn(mains: object, rods: object, tip: object, stuck: object) -> Engine:
    """Set B with this wear [in] and this relief valve [m]."""
    engine = reclearanced(SET_B, mains=mains * INCH, rods=rods * INCH)  # type: ignore[operator]
    return replace(engine, pump_tip_clearance=tip * INCH, relief_stuck_lift=stuck)  # type: ignore[operator, arg-type]


def main() -> None:
    """Prints both times, their ratio and the largest difference between the answers."""
    rng = np.random.default_rng(1)
    wear = [
        *(
            rng.uniform(low, high, ENGINES)
            for low, high in ((1e-3, 6e-3), (1e-3, 6e-3), (2e-3, 8e-3))
        ),
        rng.choice([0.0, 0.0, 0.0, 1e-3], ENGINES),
    ]
    engines = worn(*(x[:, None, None] for x in wear))
    solve(engines, SPEEDS[:, None], TEMPERATURES)  # once to warm up
    start = perf_counter()
    together = solve(engines, SPEEDS[:, None], TEMPERATURES)
    at_once = perf_counter() - start
    count = np.size(together.gallery_pressure)

    picked = [
        (i, j, k)
        for i, j, k in zip(
            rng.integers(0, ENGINES, SAMPLE),
            rng.integers(0, SPEEDS.size, SAMPLE),
            rng.integers(0, TEMPERATURES.size, SAMPLE),
            strict=True,
        )
        if not together.starved[i, j, k]
    ]
    apart = []
    start = perf_counter()
    for i, j, k in picked:
        residual = surplus(worn(*(float(x[i]) for x in wear)), SPEEDS[j], TEMPERATURES[k])
        apart.append(brentq(residual, 0.0, MOST, xtol=1e-6, rtol=1e-11))
    one_by_one = (perf_counter() - start) / len(picked)
    there = np.array([together.gallery_pressure[at] for at in picked])

    print(f"all at once   {count} states in {at_once:.3f} s, {at_once / count * 1e6:.1f} us each")
    print(f"one by one    {one_by_one * 1e6:.0f} us each, over {len(picked)}")
    print(f"ratio         {one_by_one / (at_once / count):.0f}")
    print(f"difference    {np.max(np.abs(there / apart - 1)):.1e} at most")


if __name__ == "__main__":
    main()

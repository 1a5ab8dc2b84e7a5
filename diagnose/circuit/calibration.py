"""A sound engine calibrated to the pressures it once showed.

Imported by ``deviations``.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from diagnose.circuit.engine_model import LEAST_OTHER, Point, shown
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.ranges import FloatArray, Floats


@dataclass(frozen=True, slots=True, kw_only=True)
class Calibration:
    """An engine fitted to its known pressures; ``residuals`` are model less known [Pa]."""

    engine: Engine
    residuals: FloatArray
    other: Floats  #: lumped leak found [m3]
    slip: Floats  #: factor on the pump's slip found [1]


def slipping(engine: Engine, factor: Floats) -> Engine:
    """Return the engine with its pump's slip multiplied: every gap by the cube root of ``factor``."""
    gap = np.cbrt(factor)
    return replace(
        engine,
        pump_tip_clearance=engine.pump_tip_clearance * gap,
        pump_end_clearance=engine.pump_end_clearance * gap,
    )


#: prior standard deviations of the logarithms of lumped leak, slip and setting (judgement)
_OTHER_SPREAD, _SLIP_SPREAD, _RELIEF_SPREAD = 1.0, 0.6, 0.06


def calibrate(engine: Engine, points: Sequence[Point]) -> Calibration:
    """Fit lumped leak, pump slip and relief setting to the known pressures.

    Regularised least squares over the three logarithms, by damped Gauss-Newton steps, for one
    engine. The residual is what no such change removes.
    Source: own method; the prior widths are judgement.
    """
    scale = np.array([_OTHER_SPREAD, _SLIP_SPREAD, _RELIEF_SPREAD])
    error = np.array([p.error for p in points])
    known = np.array([p.pressure for p in points])
    base = max(float(np.max(engine.other_conductance)), LEAST_OTHER)

    def made(z: FloatArray) -> Engine:
        other, slip, relief = np.exp(np.moveaxis(z * scale, -1, 0))[..., None]
        return replace(
            slipping(engine, slip),
            other_conductance=base * other,
            relief_setting=engine.relief_setting * relief,
        )

    def missed(z: FloatArray) -> FloatArray:
        return np.asarray((shown(made(z), points) - known) / error)

    z, step = np.zeros(3), 0.05
    if points:
        best = float(np.sum(missed(z[None])[0] ** 2))
        for _ in range(12):
            tried = np.vstack([z, z + step * np.eye(3)])
            rows = missed(tried)
            slope = (rows[1:] - rows[0]).T / step
            move = -np.linalg.solve(slope.T @ slope + np.eye(3), slope.T @ rows[0] + z)
            shares = 0.5 ** np.arange(5.0)
            ways = z + shares[:, None] * move
            costs = np.sum(missed(ways) ** 2, axis=1) + np.sum(ways**2, axis=1)
            if costs.min() >= best - 1e-6:
                break
            best, z = float(costs.min()), ways[int(costs.argmin())]
    done = _plain(made(z[None]))
    left = shown(done, points) - known if points else np.empty(0)
    return Calibration(
        engine=done,
        residuals=left,
        other=done.other_conductance,
        slip=float(np.exp(z[1] * _SLIP_SPREAD)),
    )


def _plain(engine: Engine) -> Engine:
    """Return the engine with its one-element arrays as numbers."""
    names = ("pump_tip_clearance", "pump_end_clearance", "other_conductance", "relief_setting")
    changed: dict[str, Any] = {k: float(np.reshape(getattr(engine, k), -1)[0]) for k in names}
    return replace(engine, **changed)

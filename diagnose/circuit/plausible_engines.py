"""Plausible sound engines about a typical one, in agreement with the pressures it is known by."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

import numpy as np

from diagnose.circuit.engine_model import LEAST_OTHER, Point, shown
from diagnose.circuit.pressure_law import heat_errors
from diagnose.circuit.survey_evidence import states
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.ranges import FloatArray, Floats
from knowledge.units import PSI

MOST_RISE = 60.0  #: K: of a bearing's film over the gallery
CROWD = 240  #: engines drawn besides those wanted, for a better covariance
#: psi, share: error that known pressures share, mostly read on a panel gauge (judgement)
KNOWN_OFFSET, KNOWN_SCALE = 2.0, 0.02
KNOWN_MISFIT = 0.03  #: error of the circuit, share of a known pressure (judgement)

#: spread between sound engines of one kind: one standard deviation of the logarithm of each
#: (judgement; wide, as the circuit's physics are)
UNCERTAIN = {
    "mains": 0.12,  # clearance
    "rods": 0.12,
    "cams": 0.15,
    "lifters": 0.15,
    "eccentricity": 0.35,  # of the logit
    "feed": 0.12,
    "tip": 0.12,
    "end": 0.12,
    "displacement": 0.05,
    "relief": 0.06,
    "rate": 0.2,
    "port": 0.05,  # width of the relief's port, and of its drilling: how much cold oil overrides it
    "filter": 0.3,
    "oil": 0.06,
    "film": 0.3,
    "other": 0.6,
    "jets": 0.06,
}


def drawn(n: int, rng: np.random.Generator, dims: int = len(UNCERTAIN)) -> FloatArray:
    """Return standard normal draws ``(n, dims)`` in antithetic pairs: their mean is zero."""
    half = rng.standard_normal(((n + 1) // 2, dims))
    return np.vstack([half, -half])[:n]


def varied(engine: Engine, z: FloatArray, widths: Mapping[str, float] = UNCERTAIN) -> Engine:
    """Return engines about ``engine``, one for each row of draws ``z``; fields are columns."""
    by = {name: (z[..., i] * width)[..., None] for i, (name, width) in enumerate(widths.items())}
    times = {name: np.exp(v) for name, v in by.items()}
    main, rod, cam = engine.mains[0], engine.rods[0], engine.cams[0]
    lifter, jet = engine.lifters[0], engine.jets[0]
    oil = engine.oil
    return replace(
        engine,
        oil=replace(oil, kv40=oil.kv40 * times["oil"] ** 1.3, kv100=oil.kv100 * times["oil"]),
        mains=(
            replace(
                main,
                clearance_diametral=main.clearance_diametral * times["mains"],
                eccentricity=_shifted(main.eccentricity, by["eccentricity"]),
                feed_share=np.minimum(main.feed_share * times["feed"], 1.0),
            ),
        ),
        rods=(
            replace(
                rod,
                clearance_diametral=rod.clearance_diametral * times["rods"],
                eccentricity=_shifted(rod.eccentricity, by["eccentricity"]),
                feed_share=np.minimum(rod.feed_share * times["feed"], 1.0),
            ),
        ),
        cams=(replace(cam, clearance_diametral=cam.clearance_diametral * times["cams"]),),
        lifters=(
            replace(lifter, clearance_diametral=lifter.clearance_diametral * times["lifters"]),
        ),
        jets=(replace(jet, diameter=jet.diameter * times["jets"]),),
        pump_displacement=engine.pump_displacement * times["displacement"],
        pump_tip_clearance=engine.pump_tip_clearance * times["tip"],
        pump_end_clearance=engine.pump_end_clearance * times["end"],
        relief_setting=engine.relief_setting * times["relief"],
        relief_rate=engine.relief_rate * times["rate"],
        relief_port_width=engine.relief_port_width * times["port"],
        relief_feed=engine.relief_feed * times["port"] ** -4,
        filter_resistance=engine.filter_resistance * times["filter"],
        film_rise=np.minimum(engine.film_rise * times["film"], MOST_RISE),
        other_conductance=np.maximum(engine.other_conductance, LEAST_OTHER) * times["other"],
    )


def _shifted(share: Floats, by: FloatArray) -> FloatArray:
    """Return a share moved by ``by`` on the logit scale, so that it stays between 0 and 1."""
    odds = np.asarray(share) / (1 - np.asarray(share)) * np.exp(by)
    return np.asarray(odds / (1 + odds))


def conditioned(
    engine: Engine,
    z: FloatArray,
    points: Sequence[Point],
    rng: np.random.Generator,
    rounds: int = 4,
    widths: Mapping[str, float] = UNCERTAIN,
) -> FloatArray:
    """Condition draws on the known pressures, so that their engines show them within the error.

    Ensemble smoother with multiple data assimilation: in each of ``rounds`` steps every draw
    moves along its covariance with the predicted pressures, the error inflated by the number of
    steps. ``CROWD`` more draws improve the covariance of a small ensemble. The known pressures
    were read on one gauge and share its error; those at about one heat share the error of their
    oil temperature, which is drawn and moved with the rest.

    Source: Emerick & Reynolds, Computers & Geosciences 55 (2013), 3-15.
    """
    if not points:
        return z
    known = np.array([p.pressure for p in points]) / PSI
    error = np.diag([(p.error / PSI) ** 2 for p in points]) + KNOWN_OFFSET**2
    error += np.diag((KNOWN_MISFIT * known) ** 2) + KNOWN_SCALE**2 * np.outer(known, known)
    state = np.array(states([p.temperature for p in points]))
    heat_error = heat_errors(np.array([p.temperature for p in points]))
    n, dims, root = len(z), z.shape[1], np.linalg.cholesky(error)
    z = np.vstack([z, drawn(CROWD, rng, dims)])
    z = np.hstack([z, rng.standard_normal((len(z), state.max() + 1))])
    for _ in range(rounds):
        warmer = heat_error * z[:, dims + state]
        seen = shown(varied(engine, z[:, :dims], widths), points, warmer) / PSI
        dz, ds = z - z.mean(0), seen - seen.mean(0)
        gain = dz.T @ ds @ np.linalg.inv(ds.T @ ds + (len(z) - 1) * rounds * error)
        target = known + np.sqrt(rounds) * rng.standard_normal(seen.shape) @ root.T
        z = z + (target - seen) @ gain.T
    return np.asarray(z[:n, :dims])


def spread(
    engine: Engine, n: int, rng: np.random.Generator, points: Sequence[Point] = ()
) -> Engine:
    """Return ``n`` plausible sound engines about ``engine`` as columns ``(n, 1)``.

    They are conditioned on the known pressures ``points`` where there are any.

    >>> from diagnose.hydraulics.engine import SET_B
    >>> spread(SET_B, 6, np.random.default_rng(1)).relief_setting.shape
    (6, 1)
    """
    return varied(engine, conditioned(engine, drawn(n, rng), points, rng))

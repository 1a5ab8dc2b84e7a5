"""A case's engine as the physics sees it: sound, calibrated to what it once showed, and uncertain.

Imported by ``circuit`` and ``output``. Figures come from the case, else from its
profile, each clearance on the diameter; what nobody knows of this engine is drawn by ``spread``.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from diagnose.case.case import Case
from diagnose.errors import UsageError, nearest
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Cam, Engine, Jet, Lifter, Main, Rod
from diagnose.hydraulics.oil import Oil
from diagnose.hydraulics.ranges import FloatArray, Floats
from knowledge.book import Book
from knowledge.engines.limits import RELIEF_SETTING
from knowledge.model import Reading
from knowledge.pressure.gauge import at_pump
from knowledge.stations.oil.grades import Grade, grade_named
from knowledge.units import PSI

FILTER_AT = 0.0118 * 0.2e-3  #: Pa·s times m3/s: oil of 11.8 mPa·s at 12 l/min
OTHER_AT = 0.0118 / 60e3 / 100e3  #: a litre a minute at 100 kPa and 11.8 mPa·s, as m3
BASELINE_ERROR = 1.5 * PSI  #: of a pressure once known good, one standard deviation
KNOWN_OFFSET, KNOWN_SCALE = 1.0, 0.02  #: psi, share: of the gauge they were read on (judgement)
CROWD = 96  #: engines more than wanted, to condition with
USUAL_ERROR = 6 * PSI  #: of what is merely usual for a profile (judgement)


@dataclass(frozen=True, slots=True)
class Point:
    """A pressure the sound engine shows: SI, with its error of one standard deviation."""

    rpm: float
    temperature: float  #: K
    pressure: float  #: Pa
    at_pump: bool = False
    error: float = BASELINE_ERROR  #: Pa


@dataclass(frozen=True, slots=True)
class Calibration:
    """An engine made to show its known pressures, and by how much it misses each (model less
    known) [Pa]."""

    engine: Engine
    residuals: FloatArray
    other: Floats  #: lumped leak found [m3]
    slip: Floats  #: factor on the pump's slip found [1]


def numbers(case: Case) -> dict[str, float]:
    """Every figure of the circuit by name, SI: the case's own before its limits and its profile.

    Raises UsageError where neither layout nor case names a circuit.
    """
    if case.profile is None:
        raise UsageError(
            f"no circuit in figures goes with the layout '{case.layout.id}'; name one under "
            '[engine], profile = "distributor_v8", and what differs under [engine.dimensions]'
        )
    found = {name: value for name, (value, _) in case.profile.numbers.items()}
    if RELIEF_SETTING in case.limits:
        found["relief_setting"] = case.limits[RELIEF_SETTING]
    return found | {d.id: value for d, value in case.dimensions.items()}


def grade(case: Case) -> Grade:
    """The oil the case states, if it names a grade, else the profile's."""
    usual = case.profile.oil_grade if case.profile else "30"
    try:
        return grade_named(case.engine.oil or usual)
    except ValueError:
        return grade_named(usual)


def grade_told(case: Case) -> str:
    """The same in words, as on the can."""
    named = grade(case)
    return f"{named.winter.name}-{named.hot.name}" if named.winter else named.hot.name


def healthy(case: Case, book: Book) -> Engine:
    """The case's engine without fault. Raises UsageError where the case names no circuit."""
    del book  # the case's words are resolved already
    return engine_of(numbers(case), Oil.of_grade(grade_told(case)))


def engine_of(n: Mapping[str, float], oil: Oil) -> Engine:
    """The circuit of these figures (names of ``knowledge.engines.dimensions``, SI).

    >>> from knowledge.engines.profiles import DISTRIBUTOR_V8
    >>> engine = engine_of({k: v for k, (v, _) in DISTRIBUTOR_V8.numbers.items()}, Oil.of_grade("30"))
    >>> len(engine.mains), int(engine.mains[0].count)
    (1, 5)
    """
    try:
        return _engine(n, oil)
    except KeyError as missing:
        raise UsageError(f"no figure for {missing}.{nearest(str(missing), n)}") from None


def _engine(n: Mapping[str, float], oil: Oil) -> Engine:
    return Engine(
        oil=oil,
        mains=(
            Main(
                n["main_count"], n["main_diameter"], n["main_length"], n["main_groove"],
                n["main_clearance"], n["main_eccentricity"], n["main_feed"],
            ),
        ),
        rods=(
            Rod(
                n["rod_count"], n["rod_diameter"], n["rod_length"], n["rod_hole"],
                n["rod_clearance"], n["rod_eccentricity"], n["rod_feed"],
                n["crank_entry_radius"], n["crank_exit_radius"],
            ),
        ),
        cams=(
            Cam(
                n["cam_count"], n["cam_diameter"], n["cam_length"], n["cam_hole"],
                n["cam_bearing_clearance"], 0.5, 0.5,
            ),
        ),
        lifters=(
            Lifter(n["lifter_count"], n["lifter_diameter"], n["lifter_land"], n["lifter_clearance"]),
        ),
        jets=(Jet(n["jet_count"], n["jet_diameter"], opening_pressure=n["jet_opens"]),),
        pump_displacement=n["pump_displacement"],
        pump_drive_ratio=n["pump_drive_ratio"],
        pump_gear_diameter=n["pump_gear_diameter"],
        pump_gear_length=n["pump_gear_length"],
        pump_tip_land=n["pump_tip_land"],
        pump_tip_clearance=n["pump_side_clearance"],
        pump_end_clearance=n["pump_end_clearance"],
        relief_setting=n["relief_setting"],
        relief_plunger_diameter=n["relief_plunger"],
        relief_rate=n["relief_rate"],
        relief_port_width=n["relief_port"],
        filter_resistance=n["filter_drop"] / FILTER_AT,
        filter_bypass=n["filter_bypass"],
        passage_diameter=n["passage_diameter"],
        passage_k=n["passage_k"],
        pickup_gap=n["pickup_gap"],
        pickup_rim=n["pickup_rim"],
        tube_diameter=n["pickup_tube"],
        tube_length=n["pickup_tube_length"],
        film_rise=n["film_rise"],
        other_conductance=n["other_leak"] * OTHER_AT,
    )  # fmt: skip


def baseline_points(case: Case) -> tuple[Point, ...]:
    """The pressures this engine is known by: those of the case that stand; none if it has none."""
    return tuple(point_of(b.reading, BASELINE_ERROR) for b in case.baseline)


def usual_points(case: Case) -> tuple[Point, ...]:
    """The pressures usual for the case's profile: a weak hold where the case has no baseline."""
    rows = case.profile.specified if case.profile else ()
    return tuple(Point(n, t, usual, False, USUAL_ERROR) for n, t, _, usual in rows)


def point_of(reading: Reading, error: float) -> Point:
    """A reading as a point; its own error before ``error`` [Pa]."""
    temperature = reading.oil_temperature if reading.oil_temperature is not None else 363.15
    return Point(
        reading.rpm, temperature, reading.pressure, at_pump(reading), reading.error or error
    )


def shown(engine: Engine, points: Sequence[Point], warmer: Floats = 0.0) -> FloatArray:
    """What a gauge would show at each point's speed, temperature and tap [Pa].

    Engine fields are numbers or columns ``(n, 1)``; the result is ``(len(points),)`` or
    ``(n, len(points))``. ``warmer`` is added to the temperatures [K].
    """
    rpm = np.array([p.rpm for p in points])
    heat = np.array([p.temperature for p in points]) + warmer
    state = solve(engine, rpm, heat)
    tapped = np.array([p.at_pump for p in points])
    return np.asarray(np.where(tapped, state.pump_pressure, state.gallery_pressure))


def slipping(engine: Engine, factor: Floats) -> Engine:
    """The engine with its pump's slip multiplied: every gap by the cube root of ``factor``."""
    gap = np.cbrt(factor)
    return replace(
        engine,
        pump_tip_clearance=engine.pump_tip_clearance * gap,
        pump_end_clearance=engine.pump_end_clearance * gap,
    )


#: how far calibration may go, and how it is held: prior spread of the logarithms (judgement)
_OTHER_SPREAD, _SLIP_SPREAD, _RELIEF_SPREAD = 1.0, 0.6, 0.06
_LEAST_OTHER = 0.3 * OTHER_AT


def calibrate(engine: Engine, points: Sequence[Point]) -> Calibration:
    """The engine whose lumped leak, pump slip and relief setting show the known pressures best.

    Least squares over the three, in logarithms and weakly held at what they were, by damped
    Gauss-Newton steps; works on one engine. The residual is what no such change can mend.
    Source: own method; the hold's widths are judgement.
    """
    scale = np.array([_OTHER_SPREAD, _SLIP_SPREAD, _RELIEF_SPREAD])
    error = np.array([p.error for p in points])
    known = np.array([p.pressure for p in points])
    base = max(float(np.max(engine.other_conductance)), _LEAST_OTHER)

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
    return Calibration(done, left, done.other_conductance, float(np.exp(z[1] * _SLIP_SPREAD)))


def _plain(engine: Engine) -> Engine:
    """The engine with its one-element arrays as numbers."""
    names = ("pump_tip_clearance", "pump_end_clearance", "other_conductance", "relief_setting")
    changed: dict[str, Any] = {k: float(np.reshape(getattr(engine, k), -1)[0]) for k in names}
    return replace(engine, **changed)


#: what differs from one sound engine of a kind to the next, one standard deviation of the
#: logarithm where nothing is known of this one (judgement; wide, as the circuit's physics are)
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
    "filter": 0.3,
    "oil": 0.06,
    "film": 0.3,
    "other": 0.6,
    "jets": 0.06,
}


def drawn(n: int, rng: np.random.Generator) -> FloatArray:
    """Standard normal draws ``(n, len(UNCERTAIN))`` in opposite pairs, so that their mean is nought."""
    half = rng.standard_normal(((n + 1) // 2, len(UNCERTAIN)))
    return np.vstack([half, -half])[:n]


def varied(engine: Engine, z: FloatArray, widths: Mapping[str, float] = UNCERTAIN) -> Engine:
    """Engines about ``engine``, one for each row of standard draws ``z``; fields are columns."""
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
        filter_resistance=engine.filter_resistance * times["filter"],
        film_rise=engine.film_rise * times["film"],
        other_conductance=np.maximum(engine.other_conductance, _LEAST_OTHER) * times["other"],
    )


def _shifted(share: Floats, by: FloatArray) -> FloatArray:
    """A share moved on the logit scale, so that it stays between nought and one."""
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
    """Draws moved so that the engines they make show the known pressures within their error.

    Ensemble smoother with multiple data assimilation: in each of ``rounds`` steps every draw
    moves along its covariance with what it shows, the error inflated by the number of steps.
    ``CROWD`` more are moved with them, for a covariance that few would give badly. The known
    pressures were read on one gauge, whose own error they share.

    Source: Emerick & Reynolds, Computers & Geosciences 55 (2013), 3-15.
    """
    if not points:
        return z
    known = np.array([p.pressure for p in points]) / PSI
    error = np.diag([(p.error / PSI) ** 2 for p in points]) + KNOWN_OFFSET**2
    error += KNOWN_SCALE**2 * np.outer(known, known)
    n, root = len(z), np.linalg.cholesky(error)
    z = np.vstack([z, drawn(CROWD, rng)])
    for _ in range(rounds):
        seen = shown(varied(engine, z, widths), points) / PSI
        dz, ds = z - z.mean(0), seen - seen.mean(0)
        gain = dz.T @ ds @ np.linalg.inv(ds.T @ ds + (len(z) - 1) * rounds * error)
        target = known + np.sqrt(rounds) * rng.standard_normal(seen.shape) @ root.T
        z = z + (target - seen) @ gain.T
    return z[:n]


def spread(
    engine: Engine, n: int, rng: np.random.Generator, points: Sequence[Point] = ()
) -> Engine:
    """``n`` plausible sound engines about ``engine`` as columns ``(n, 1)``, in agreement with the
    known pressures ``points`` where there are any.

    >>> from diagnose.hydraulics.engine import SET_B
    >>> spread(SET_B, 6, np.random.default_rng(1)).relief_setting.shape
    (6, 1)
    """
    return varied(engine, conditioned(engine, drawn(n, rng), points, rng))

"""A case's sound engine as the hydraulic model has it, and the pressures it is known by.

Dimensions come from the case, else from its profile; each clearance is on the diameter.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from diagnose.case.bearing_counts import COUNTS, own_counts
from diagnose.case.case import Case
from diagnose.circuit.parameters import LEAST_FILM, LEAST_PICKUP_GAP, LEAST_PUMP_GAP
from diagnose.errors import UsageError, nearest
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Cam, Engine, Jet, Lifter, Main, Rod
from diagnose.hydraulics.oil import Oil
from diagnose.hydraulics.ranges import FloatArray, Floats
from diagnose.ways import Way, to
from knowledge.model import Reading
from knowledge.pressure.gauge import USUAL_HOT, at_pump, is_bound
from knowledge.reports.when import UNKNOWN_HEAT_SD
from knowledge.stations.oil.grades import Grade, grade_named
from knowledge.stations.oil.quantities import OIL_TEMPERATURE
from knowledge.stations.relief.quantities import RELIEF_SETTING, USUAL_RELIEF_SETTING
from knowledge.units import PSI

FILTER_AT = 0.0118 * 0.2e-3  #: Pa·s times m3/s: oil of 11.8 mPa·s at 12 l/min
OTHER_AT = 0.0118 / 60e3 / 100e3  #: a litre a minute at 100 kPa and 11.8 mPa·s, as m3
LEAST_OTHER = 0.3 * OTHER_AT  #: m3: what every engine leaks unlisted (judgement)
#: of the drilling that leads to a relief plunger: m, and its bore over the port's (judgement)
FEED_LENGTH, FEED_BORE = 0.1, 0.8
JET_BORES = 4.0  #: length of a metering hole in diameters: drilled, not in sheet (judgement)
#: share of a film's rise that its own shear makes; the rest follows hot metal (judgement)
OWN_HEAT = 0.2
BASELINE_ERROR = 1.5 * PSI  #: of a pressure once known good, one standard deviation
TEMPERATURE_ERROR = 5.0  #: K: of an oil temperature, sump against gallery (judgement)
LEAST_SPEED = 150.0  #: rpm, and K: below any that a vague reading can mean
USUAL_ERROR = 6 * PSI  #: of what is merely usual for a profile (judgement)


@dataclass(frozen=True, slots=True)
class Point:
    """A pressure at a speed and oil temperature, SI, with its error (one standard deviation)."""

    rpm: float
    temperature: float  #: K
    pressure: float  #: Pa
    at_pump: bool = False
    error: float = BASELINE_ERROR  #: Pa


def numbers(case: Case) -> dict[str, float]:
    """Return every dimension of the circuit by name, SI: from the case, its limits, its profile.

    Raises UsageError where neither layout nor case names a circuit.
    """
    if case.profile is None:
        raise UsageError(
            "not computed: the book has no oil circuit in figures for this kind of engine "
            f"({case.layout.says}); {to(Way.CIRCUIT)}"
        )
    found = {name: value for name, (value, _) in case.profile.numbers.items()}
    if USUAL_RELIEF_SETTING in case.limits:
        found[RELIEF_SETTING.id] = case.limits[USUAL_RELIEF_SETTING]
    found |= {d.id: value for d, value in case.dimensions.items()}
    return found | {COUNTS[kind].id: float(n) for kind, n in own_counts(case).items()}


def grade(case: Case) -> Grade:
    """Return the grade of the oil the case states, else the profile's."""
    usual = case.profile.oil_grade if case.profile else "30"
    try:
        return grade_named(case.engine.oil or usual)
    except ValueError:
        return grade_named(usual)


def grade_name(case: Case) -> str:
    """Return the grade as printed on the can."""
    named = grade(case)
    return f"{named.winter.name}-{named.hot.name}" if named.winter else named.hot.name


def healthy(case: Case) -> Engine:
    """Return the case's engine without fault. Raises UsageError where the case names no circuit."""
    return engine_of(numbers(case), Oil.of_grade(grade_name(case)))


def engine_of(n: Mapping[str, float], oil: Oil) -> Engine:
    """Return the engine of these dimensions (names of ``knowledge.engines.dimensions``, SI).

    Raises UsageError for a dimension that is missing, with the nearest there is.

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
    """Put the parts together; the relief valve is fed by a drilling that grows with its port."""
    return Engine(
        oil=oil,
        mains=(_main(n),),
        rods=(_rod(n),),
        cams=(_cam(n),),
        lifters=(_lifter(n),),
        jets=(_jet(n),),
        pump_displacement=n["pump_displacement"],
        pump_drive_ratio=n["pump_drive_ratio"],
        pump_gear_diameter=n["pump_gear_diameter"],
        pump_gear_length=n["pump_gear_length"],
        pump_tip_land=n["pump_tip_land"],
        pump_tip_clearance=max(n["pump_side_clearance"], LEAST_PUMP_GAP),
        pump_end_clearance=max(n["pump_end_clearance"], LEAST_PUMP_GAP),
        relief_setting=n["relief_setting"],
        relief_plunger_diameter=n["relief_plunger"],
        relief_rate=n["relief_rate"],
        relief_port_width=n["relief_port"],
        relief_feed=128 * FEED_LENGTH / (np.pi * (FEED_BORE * n["relief_port"]) ** 4),
        filter_resistance=n["filter_drop"] / FILTER_AT,
        filter_bypass=n["filter_bypass"],
        passage_diameter=n["passage_diameter"],
        passage_k=n["passage_k"],
        pickup_gap=max(n["pickup_gap"], LEAST_PICKUP_GAP),
        pickup_rim=n["pickup_rim"],
        tube_diameter=n["pickup_tube"],
        tube_length=n["pickup_tube_length"],
        film_rise=n["film_rise"],
        film_own_heat=OWN_HEAT,
        other_conductance=n["other_leak"] * OTHER_AT,
    )


def _main(n: Mapping[str, float]) -> Main:
    return Main(
        count=n["main_count"],
        diameter=n["main_diameter"],
        length=n["main_length"],
        groove_width=n["main_groove"],
        clearance_diametral=max(n["main_clearance"], LEAST_FILM),
        eccentricity=n["main_eccentricity"],
        feed_share=n["main_feed"],
    )


def _rod(n: Mapping[str, float]) -> Rod:
    return Rod(
        count=n["rod_count"],
        diameter=n["rod_diameter"],
        length=n["rod_length"],
        hole_diameter=n["rod_hole"],
        clearance_diametral=max(n["rod_clearance"], LEAST_FILM),
        eccentricity=n["rod_eccentricity"],
        feed_share=n["rod_feed"],
        entry_radius=n["crank_entry_radius"],
        exit_radius=n["crank_exit_radius"],
    )


def _cam(n: Mapping[str, float]) -> Cam:
    return Cam(
        count=n["cam_count"],
        diameter=n["cam_diameter"],
        length=n["cam_length"],
        hole_diameter=n["cam_hole"],
        clearance_diametral=max(n["cam_bearing_clearance"], LEAST_FILM),
        eccentricity=0.5,
        feed_share=0.5,
    )


def _lifter(n: Mapping[str, float]) -> Lifter:
    return Lifter(
        count=n["lifter_count"],
        diameter=n["lifter_diameter"],
        land=n["lifter_land"],
        clearance_diametral=max(n["lifter_clearance"], LEAST_FILM),
    )


def _jet(n: Mapping[str, float]) -> Jet:
    return Jet(
        count=n["jet_count"],
        diameter=n["jet_diameter"],
        opening_pressure=n["jet_opens"],
        bores=JET_BORES,
    )


def baseline_points(case: Case) -> tuple[Point, ...]:
    """Return the valid baseline pressures of the case, known from when the engine was sound.

    Words for speed and oil temperature widen the error of a pressure; bounds are left out.
    """
    readings = [b.reading for b in case.baseline if not is_bound(b.reading)]
    return known_points(case, readings)


def known_points(case: Case, readings: Sequence[Reading]) -> tuple[Point, ...]:
    """Return pressures of the sound engine as points, vague ones with a wider error."""
    points = [point_of(r, BASELINE_ERROR) for r in readings]
    if case.profile is None or not any(is_vague(r) for r in readings):
        return tuple(points)
    engine = engine_of(numbers(case), Oil.of_grade(grade_name(case)))
    spreads = (("rpm", [r.rpm_spread for r in readings]), ("temperature", oil_spreads(readings)))
    variance = np.array(
        [p.error**2 + r.pressure_spread**2 for p, r in zip(points, readings, strict=True)]
    )
    for field, spread in spreads:
        high, low = (
            [
                replace(p, **{field: max(getattr(p, field) + sign * s, LEAST_SPEED)})
                for p, s in zip(points, spread, strict=True)
            ]
            for sign in (1.0, -1.0)
        )
        variance += (0.5 * (shown(engine, high) - shown(engine, low))) ** 2
    return tuple(replace(p, error=float(v) ** 0.5) for p, v in zip(points, variance, strict=True))


def is_vague(reading: Reading) -> bool:
    """Return whether anything of a reading but the gauge's error is uncertain."""
    return bool(reading.rpm_spread or reading.oil_spread or reading.pressure_spread)


def oil_spreads(readings: Sequence[Reading]) -> list[float]:
    """Return the standard deviation of each oil temperature [K], wide where none was given."""
    unknown = UNKNOWN_HEAT_SD
    return [unknown if r.oil_temperature is None else r.oil_spread for r in readings]


def usual_points(case: Case) -> tuple[Point, ...]:
    """Return the pressures usual for the case's profile, for a case without a baseline."""
    rows = case.profile.specified if case.profile else ()
    return tuple(Point(n, t, usual, False, USUAL_ERROR) for n, t, _, usual in rows)


def point_of(reading: Reading, error: float) -> Point:
    """Return a reading as a point, with its own error where it has one, else ``error`` [Pa]."""
    temperature = reading.oil_temperature if reading.oil_temperature is not None else USUAL_HOT
    return Point(
        reading.rpm, temperature, reading.pressure, at_pump(reading), reading.error or error
    )


def heats(temperatures: Sequence[float], warmer: Floats) -> FloatArray:
    """Return oil temperatures [K] with their errors ``warmer`` [K], none that oil cannot have."""
    return np.clip(np.array(temperatures) + warmer, *OIL_TEMPERATURE.plausible)


def shown(
    engine: Engine, points: Sequence[Point], warmer: Floats = 0.0, faster: Floats = 0.0
) -> FloatArray:
    """Return what a gauge would show at each point's speed, temperature and tap [Pa].

    Engine fields are numbers or columns ``(n, 1)``; the result is ``(len(points),)`` or
    ``(n, len(points))``. ``warmer`` is added to the temperatures [K], ``faster`` to the speeds
    [rev/min].
    """
    rpm = np.array([p.rpm for p in points]) + faster
    heat = heats([p.temperature for p in points], warmer)
    state = solve(engine, rpm, heat)
    tapped = np.array([p.at_pump for p in points])
    return np.asarray(np.where(tapped, state.pump_pressure, state.gallery_pressure))

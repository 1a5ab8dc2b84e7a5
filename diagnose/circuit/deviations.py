"""Differences from a sound engine that were found, as changes to the circuit.

A measured value has its measuring error; what was seen but not measured is drawn from a range and
marked as assumed.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, fields, is_dataclass, replace
from statistics import NormalDist
from typing import Any

import numpy as np

from diagnose.case.bearing_counts import each_measured
from diagnose.case.case import Case, Measurement
from diagnose.case.units import units_of
from diagnose.circuit.calibration import calibrated, sound_points, widths
from diagnose.circuit.engine_model import healthy, numbers, usual_points
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS, NAMES, CircuitParameter
from diagnose.fits.bearing import Kind
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import DIESEL as DIESEL_FUEL
from diagnose.hydraulics.oil import PETROL, Fuel, Oil, diluted
from diagnose.hydraulics.ranges import FloatArray
from knowledge.engines.features import DIESEL
from knowledge.model import Finding, State
from knowledge.pressure.gauge import runs
from knowledge.stations.delivery.findings_filter_cut import COOLER_FOUND_BLOCKED
from knowledge.stations.delivery.findings_galleries import GALLERY_PLUG_FOUND_MISSING
from knowledge.stations.oil.findings import FUEL_SMELL
from knowledge.stations.oil.findings_analysis import LAB_FUEL_HIGH
from knowledge.stations.oil.findings_record import (
    OIL_GRADE_AS_MANUAL,
    OIL_GRADE_TOO_HEAVY,
    OIL_GRADE_TOO_THIN,
)
from knowledge.stations.oil.grades import grade_named
from knowledge.stations.oil.quantities import FUEL_SHARE, MOST_FUEL_SHARE, VISCOSITY_AT_100C
from knowledge.stations.pump.quantities import PUMP_COVER_HOLLOW as HOLLOW
from knowledge.stations.pump.quantities import PUMP_END_CLEARANCE
from knowledge.stations.relief.findings import (
    DEBRIS_ON_RELIEF_SEAT,
    RELIEF_BENCH_OPENS_HIGH,
    RELIEF_BENCH_OPENS_LOW,
    RELIEF_FOUND_STUCK,
    RELIEF_PLUNGER_STICKS,
    RELIEF_SEAT_SCORED,
    RELIEF_VALVE_STAYED_SHUT,
)
from knowledge.stations.relief.quantities import RELIEF_SETTING
from knowledge.stations.suction.findings_sump import SCREEN_BLOCKED
from knowledge.stations.topend.findings_feeds import PISTON_JET_FOUND_BROKEN
from knowledge.units import FRACTION, LENGTH, PSI, VISCOSITY, show, unit_in

#: measured values of the oil are applied after all others
OF_THE_OIL = (FUEL_SHARE, VISCOSITY_AT_100C)
OIL_GRADE = "oil_grade"  #: id of the deviation that is another grade than the right one
WRONG_OIL = {OIL_GRADE_TOO_HEAVY, OIL_GRADE_TOO_THIN}

#: an oil that smells of fuel holds from what a laboratory calls for caution at, 2.5 % (LCF), to
#: 20 %; one whose sample holds too much, from its limit on (upper ends: judgement)
LEAST_SMELLED, MOST_SMELLED = 0.025, 0.20
#: what lies loose is drawn over more of a screen while the pump runs than is seen later (judgement)
LEAST_OPEN = 0.02
#: seen, not measured: (finding, parameter, lowest, highest, whether added to what is there)
SEEN: tuple[tuple[Finding, str, float, float, bool], ...] = (
    (DEBRIS_ON_RELIEF_SEAT, "relief_seat_gap", 0.1e-3, 1.0e-3, False),
    (RELIEF_SEAT_SCORED, "relief_seat_gap", 0.05e-3, 0.3e-3, False),
    (RELIEF_BENCH_OPENS_LOW, "relief_setting", -20 * PSI, -5 * PSI, True),
    (RELIEF_BENCH_OPENS_HIGH, "relief_setting", 5 * PSI, 30 * PSI, True),
    (RELIEF_VALVE_STAYED_SHUT, "relief_setting", 10 * PSI, 150 * PSI, True),
    (RELIEF_FOUND_STUCK, "relief_setting", 10 * PSI, 150 * PSI, True),
    (RELIEF_PLUNGER_STICKS, "relief_setting", 10 * PSI, 150 * PSI, True),
    (SCREEN_BLOCKED, "screen_open_share", LEAST_OPEN, 0.67, False),
    (GALLERY_PLUG_FOUND_MISSING, "open_hole", 4e-3, 9e-3, False),
    (LAB_FUEL_HIGH, "fuel_share", MOST_FUEL_SHARE.typical, MOST_SMELLED, False),
    (FUEL_SMELL, "fuel_share", LEAST_SMELLED, MOST_SMELLED, False),
    (COOLER_FOUND_BLOCKED, "cooler_open_share", 0.01, 0.3, False),
    (PISTON_JET_FOUND_BROKEN, "open_jet", 2e-3, 7e-3, False),
)
OPEN_SHARES = ("screen_open_share", "cooler_open_share")
#: of a valve that was stuck, nobody knows where: it held too much where the gauge went far above
#: what it is set to (share above: judgement)
STUCK_SOMEWHERE = (RELIEF_FOUND_STUCK, RELIEF_PLUNGER_STICKS)
FAR_ABOVE = 1.2
#: drawn where they were seen only: so the draws of others stay as they are
DRAWN_WHERE_SEEN = (
    FUEL_SMELL,
    LAB_FUEL_HIGH,
    COOLER_FOUND_BLOCKED,
    PISTON_JET_FOUND_BROKEN,
    RELIEF_BENCH_OPENS_HIGH,
    RELIEF_VALVE_STAYED_SHUT,
    *STUCK_SOMEWHERE,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Deviation:
    """One finding as a change to the circuit; ``apply`` turns sound engines into those found.

    How bad it is on each engine is a standard normal ``score``, a column; ``make`` returns the
    engine with the finding at given scores.
    """

    id: str
    says: str
    found: str  #: what was found, with unit
    make: Callable[[Engine, FloatArray], Engine]
    score: FloatArray
    parameter: CircuitParameter | None = None  #: None: another oil
    value: float | None = None  #: of the parameter as measured, SI
    assumed: bool = False  #: seen, not measured

    def apply(self, engine: Engine) -> Engine:
        """Return the engine with this finding."""
        return self.make(engine, self.score)


def deviations(case: Case, n: int, rng: np.random.Generator) -> list[Deviation]:
    """Return everything measured or seen in the case that changes the circuit, for ``n`` engines."""
    by_parameter: dict[str, list[Measurement]] = {}
    for m in case.measurements:
        by_parameter.setdefault(_parameter_id(m), []).append(m)
    every = [*_oil(case, by_parameter, n, rng), *_measured(case, by_parameter, n, rng)]
    taken = {d.id for d in every}
    return [*every, *_seen(case, taken, n, rng)]


def oil_grade(case: Case) -> str:
    """Return the grade a sound engine of the case runs on: the one in it, unless that is wrong.

    It is wrong where its card has another, or where someone reported so: then the card's is right,
    else the one usual for its kind. That one alone, which is a guess, makes no oil wrong.
    """
    poured, usual = case.engine.oil.strip(), case.profile.oil_grade if case.profile else ""
    own = case.card.oil_grade if case.card else ""
    right = own or usual or poured
    try:
        same = grade_named(poured).hot.name == grade_named(right).hot.name
    except ValueError:
        return right
    observations = case.facts().observations
    said = {f for f, r in observations.items() if r.state is State.PRESENT}
    as_it_should = OIL_GRADE_AS_MANUAL in said or bool(case.baseline) or not own
    return poured if same or (as_it_should and not said & WRONG_OIL) else right


def sound_engines(case: Case, n: int, rng: np.random.Generator) -> Engine:
    """Return ``n`` plausible engines without fault as columns.

    Calibrated to the pressures known of the engine; where there are none, as usual for its kind.
    Raises UsageError where the case names no circuit.
    """
    engine = replace(healthy(case), oil=Oil.of_grade(oil_grade(case)))
    looked = [r.reading for r in case.readings if runs(r.reading)]
    points = sound_points(case, looked) or usual_points(case)
    return calibrated(engine, points, n, rng, widths(case, calibrated=True))


def measures_circuit(case: Case) -> bool:
    """Return whether any measured value is a parameter of the circuit."""
    return any(_parameter_id(m) for m in case.measurements)


def sees_circuit(case: Case) -> bool:
    """Return whether anything was seen, though not measured, that changes the circuit."""
    return any(_is_there(case, finding) for finding, *_ in SEEN)


def _is_there(case: Case, finding: Finding) -> bool:
    """Whether it was seen, and changes the circuit the way it counts for here."""
    report = case.facts().observations.get(finding)
    if report is None or report.state is not State.PRESENT:
        return False
    return finding not in STUCK_SOMEWHERE or _went_far_above(case)


def _went_far_above(case: Case) -> bool:
    """Whether the running engine once showed far more than its relief valve is set to."""
    setting = numbers(case)[RELIEF_SETTING.id]
    read = [r.reading for r in case.readings if runs(r.reading) and not r.reading.at_most]
    return any(r.pressure > FAR_ABOVE * setting for r in read)


def unused(case: Case) -> list[str]:
    """Return the ids of measured values that are no parameter of the circuit."""
    return sorted({m.measure.id for m in case.measurements if not _parameter_id(m)})


def _parameter_id(m: Measurement) -> str:
    parameter = NAMES.get(m.measure.id)
    return parameter.id if parameter else HOLLOW.id if m.measure.quantity is HOLLOW else ""


def _measured(
    case: Case, by_parameter: dict[str, list[Measurement]], n: int, rng: np.random.Generator
) -> Iterator[Deviation]:
    job = units_of(case).shown_in(LENGTH)
    for parameter in CIRCUIT_PARAMETERS.values():
        if parameter.id in by_parameter and parameter.quantity not in OF_THE_OIL:
            found = _each_once(case, by_parameter[parameter.id])
            value = together(found, parameter.gap)
            typed = [unit_in(m.entry.value or "", parameter.dimension) for m in found]
            unit = Counter(typed).most_common(1)[0][0]
            unit = unit or job if parameter.dimension is LENGTH else unit
            shown = parameter.shown(value, unit) + _of_several(found)
            one = _deviation(parameter, value, shown, evenly_drawn(n, rng))
            other = {m.measure.quantity for m in found} - {parameter.quantity}
            yield replace(one, says=other.pop().says) if len(other) == 1 else one
    if HOLLOW.id in by_parameter:
        deep = together(by_parameter[HOLLOW.id], True)

        def hollowed(engine: Engine, score: FloatArray) -> Engine:
            del score  # computed with the depth as measured
            return replace(engine, pump_end_clearance=engine.pump_end_clearance + deep)

        end = CIRCUIT_PARAMETERS[PUMP_END_CLEARANCE.id]
        yield Deviation(
            id=HOLLOW.id,
            says="hollow in the pump cover",
            found=end.shown(deep, job),
            make=hollowed,
            score=np.zeros((n, 1)),
            parameter=end,
        )


def _each_once(case: Case, found: list[Measurement]) -> list[Measurement]:
    """Without a figure of all bearings of a kind once each was measured by its number."""
    kinds = {kind for kind in Kind if each_measured(case, kind)}
    own = [m for m in found if m.entry.where.strip()]
    names = {f"{kind.value}_clearance" for kind in kinds}
    return [m for m in found if m in own or m.measure.id not in names]


def together(found: list[Measurement], leaks: bool) -> float:
    """Combine several values: the last of each place; the mean of what leaks is that of its cube."""
    places: dict[str, float] = {}
    for i, m in enumerate(found):
        places[m.entry.where.strip().lower() or f"#{i}"] = m.value
    values = np.array(list(places.values()))
    return float(np.mean(values**3) ** (1 / 3)) if leaks else float(values[-1])


def evenly_drawn(n: int, rng: np.random.Generator) -> FloatArray:
    """Return standard normal quantiles as a column, one from each of ``n`` strata, shuffled.

    >>> bool(abs(np.mean(evenly_drawn(8, np.random.default_rng(1)))) < 1e-9)
    True
    """
    strata = [NormalDist().inv_cdf((i + 0.5) / n) for i in range(n)]
    return rng.permutation(np.array(strata))[:, None]


def _of_several(found: list[Measurement]) -> str:
    return f" (of {len(found)})" if len(found) > 1 else ""


def _deviation(
    parameter: CircuitParameter, value: float, found: str, score: FloatArray
) -> Deviation:
    def made(engine: Engine, score: FloatArray) -> Engine:
        drawn = value + parameter.spread * score
        return parameter.apply(engine, np.clip(drawn, *parameter.plausible))

    return Deviation(
        id=parameter.id,
        says=parameter.says,
        found=found,
        make=made,
        score=score,
        parameter=parameter,
        value=value,
    )


def as_measured(found: Iterable[Deviation], parameter: CircuitParameter) -> float | None:
    """Return the measured value of a parameter, SI; None where it was only seen or computed."""
    return next((d.value for d in found if d.parameter is parameter and d.value is not None), None)


def _oil(
    case: Case, by_parameter: dict[str, list[Measurement]], n: int, rng: np.random.Generator
) -> Iterator[Deviation]:
    """The oil: the laboratory's viscosity includes every cause of it; else grade and fuel."""
    if found := by_parameter.get("viscosity_at_100c"):
        parameter = CIRCUIT_PARAMETERS["viscosity_at_100c"]
        shown = show(found[-1].value, VISCOSITY, "cSt")
        yield _deviation(parameter, found[-1].value, shown, evenly_drawn(n, rng))
        return
    asked, poured = oil_grade(case), case.engine.oil.strip()
    if poured and asked != poured:
        yield Deviation(
            id=OIL_GRADE,
            says=f"oil ({why_wrong(case, asked)})",
            found=poured,
            make=lambda engine, _: replace(engine, oil=Oil.of_grade(poured)),
            score=np.zeros((n, 1)),
        )
    if found := by_parameter.get("fuel_share"):
        fuel = _fuel_of(case)
        parameter = CIRCUIT_PARAMETERS["fuel_share"]
        value = found[-1].value

        def thinned(engine: Engine, score: FloatArray) -> Engine:
            share = np.clip(value + parameter.spread * score, *parameter.plausible)
            return replace(engine, oil=diluted(engine.oil, share, fuel))

        yield Deviation(
            id="fuel_share",
            says="fuel in the oil",
            found=show(value, FRACTION),
            make=thinned,
            score=evenly_drawn(n, rng),
        )


def why_wrong(case: Case, grade: str) -> str:
    """Why another grade than the one in it is right, and who says so."""
    if case.card and case.card.oil_grade:
        return f"its card says {grade}"
    return f"reported wrong; {grade} is usual for its kind"


def _fuel_of(case: Case) -> Fuel:
    """The fuel that can get into the oil of a case's engine."""
    return DIESEL_FUEL if case.known_features.get(DIESEL) is State.PRESENT else PETROL


def _seen(case: Case, taken: set[str], n: int, rng: np.random.Generator) -> Iterator[Deviation]:
    for finding, name, low, high, added in SEEN:
        parameter = CIRCUIT_PARAMETERS[name]
        there = name not in taken and _is_there(case, finding)
        if not there and finding in DRAWN_WHERE_SEEN:
            continue
        if parameter.quantity in OF_THE_OIL and taken & {q.id for q in OF_THE_OIL}:
            continue  # a measured viscosity includes it
        share = rng.uniform(0.0, 1.0, (n, 1))
        if not there:
            continue
        taken.add(name)
        unit = units_of(case).shown_in(LENGTH) if parameter.dimension is LENGTH else None
        between = f"{parameter.shown(low, unit)} to {parameter.shown(high, unit)}"
        between += " still open" if name in OPEN_SHARES else ""

        def made(
            engine: Engine,
            score: FloatArray,
            parameter: CircuitParameter = parameter,
            ends: tuple[float, float] = (low, high),
            added: bool = added,
        ) -> Engine:
            drawn = ends[0] + (ends[1] - ends[0]) * _share_below(score)
            if parameter.quantity is FUEL_SHARE:
                return replace(engine, oil=diluted(engine.oil, drawn, _fuel_of(case)))
            new = parameter.read(engine) + drawn if added else drawn
            return parameter.apply(engine, np.clip(new, *parameter.plausible))

        yield Deviation(
            id=name,
            says=finding.says,
            found=between,
            make=made,
            score=_scores(share),
            parameter=parameter,
            assumed=True,
        )


_share_below = np.vectorize(NormalDist().cdf, otypes=[float])
_scores = np.vectorize(NormalDist().inv_cdf, otypes=[float])


def blended(old: Engine, new: Engine, chosen: Any) -> Engine:
    """Return ``new`` where ``chosen``, else ``old``, for every field at any depth.

    >>> from diagnose.hydraulics.engine import SET_A, SET_B
    >>> both = blended(SET_A, SET_B, np.array([False, True]))
    >>> both.rods[0].eccentricity
    array([0.6, 0.8])
    """
    mixed: Engine = _mixed(old, new, chosen)
    return mixed


def _mixed(old: Any, new: Any, chosen: Any) -> Any:
    if old is new or isinstance(old, str) or old is None or new is None:
        return new
    if is_dataclass(old) and not isinstance(old, type):
        names = [f.name for f in fields(old)]
        parts = {n: _mixed(getattr(old, n), getattr(new, n), chosen) for n in names}
        return replace(old, **parts)
    if isinstance(old, tuple):
        return tuple(_mixed(o, n, chosen) for o, n in zip(old, new, strict=True))
    return np.where(chosen, new, old)

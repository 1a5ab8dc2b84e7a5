"""What a repair would do: sliders for clearance, relief, pump and oil; the curve follows."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from diagnose.case.case import Case
from diagnose.case.units import units_of
from diagnose.circuit.engine_model import grade_name
from diagnose.circuit.fixes import rights_of, wrong
from diagnose.circuit.forecast import Forecast, with_other_changes
from diagnose.circuit.forecast import forecast as forecast_of
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.entry.requests import parse_changes, parse_fixes
from diagnose.errors import UsageError
from diagnose.output.documents.forecast import ForecastDocument, forecast_document
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import Answer, Asked, NotHereError
from diagnose.serve.screens.curves import drawn
from diagnose.serve.screens.shared import kept
from diagnose.serve.site import Site, job_screen, screen
from knowledge.circuit.fixes import FIXES, SHIM, Fix
from knowledge.units import LENGTH, METRIC_LENGTHS, MM, PRESSURE, PSI, THOU, unit_named

GRADES = ("10W-30", "10W-40", "15W-40", "20W-50", "SAE 30", "SAE 40", "SAE 50")
MOST_KEPT = 40  #: forecasts of a case that are kept
PUMP = "pump_displacement"
FAST = 2000.0  #: rpm
FIX = "fix-"  #: begins the name of a field that puts right what was found


@dataclass(frozen=True, slots=True)
class SliderRange:
    """What a slider sets, its unit, and its ends and step in that unit."""

    id: str
    unit: str
    factor: float  #: SI units in one of the unit
    low: float
    high: float
    step: float


CLEARANCES = (
    (
        SliderRange("main_clearance", "thou", THOU, 0.5, 8.0, 0.1),
        SliderRange("rod_clearance", "thou", THOU, 0.5, 8.0, 0.1),
        SliderRange("pump_end_clearance", "thou", THOU, 0.5, 15.0, 0.5),
    ),
    (
        SliderRange("main_clearance", "mm", MM, 0.01, 0.25, 0.005),
        SliderRange("rod_clearance", "mm", MM, 0.01, 0.25, 0.005),
        SliderRange("pump_end_clearance", "mm", MM, 0.01, 0.4, 0.01),
    ),
)  #: in inches and metric
RELIEF = (
    SliderRange("relief_setting", "psi", PSI, 15.0, 110.0, 1.0),
    SliderRange("relief_setting", "bar", 1e5, 1.0, 8.0, 0.1),
)
MORE_PUMP = SliderRange(PUMP, "%", 0.01, 0.0, 60.0, 5.0)  #: on top of what is there


@dataclass(frozen=True, slots=True)
class Slider:
    """A slider as it stands; figures as text in its unit."""

    range: SliderRange
    says: str
    value: str
    now: str  #: what is there


@dataclass(frozen=True, slots=True)
class Tried:
    """The name under which a forecast is kept: the repairs and changes that were tried."""

    fixes: tuple[str, ...]
    changes: tuple[str, ...]


def show(site: Site, asked: Asked) -> Answer:
    """The sliders, and what they come to; with ``partial`` only the latter."""
    with site.job(asked) as known:
        try:
            sliders = _sliders(known, asked.query)
            document = _document(known, asked.query, sliders)
        except UsageError as fault:
            return job_screen("nothing.html", asked, known, title="What if", says=str(fault))
        words: dict[str, Any] = {
            "forecast": document,
            "chosen": {k: v for k, v in asked.query.items() if k in _fields() or k.startswith(FIX)},
            "rows": document.speeds,
            "glances": _glances(document),
        }
        if asked.partial:
            return screen("predicted_part.html", asked, **words)
        return job_screen(
            "forecast.html",
            asked,
            known,
            sliders=sliders,
            grades=GRADES,
            grade=_grade(asked.query),
            grade_now=grade_name(known.case),
            grade_assumed=not known.case.engine.oil,
            fixes=[(f"{FIX}{fix.id}", fix.says) for fix in _fixes(known)],
            **words,
        )


def draw(site: Site, asked: Asked) -> Answer:
    """The curve before and after. Raises NotHereError where the readings do not fit the circuit."""
    from diagnose.output.html.charts import ON_A_PHONE, curves

    with site.job(asked) as known:
        plot = _document(known, asked.query, _sliders(known, asked.query)).plot
    if plot is None:
        raise NotHereError("There is no such picture: the readings do not fit the circuit.")
    return drawn(lambda: curves([plot], "forecast", ON_A_PHONE))


def ranges_of(case: Case) -> tuple[SliderRange, ...]:
    """The sliders in the units of the job."""
    units = units_of(case)
    length, pressure = units.of(LENGTH) or "", units.of(PRESSURE) or ""
    named = unit_named(length, LENGTH) if length else None
    metric = named is not None and named.names[0] in METRIC_LENGTHS
    imperial = not pressure or unit_named(pressure, PRESSURE) is unit_named("psi", PRESSURE)
    return (*CLEARANCES[metric], RELIEF[not imperial])


def _fields() -> tuple[str, ...]:
    return (*(s.id for s in (*CLEARANCES[0], RELIEF[0])), PUMP, "oil")


def _grade(query: Mapping[str, str]) -> str:
    grade = query.get("oil", "")
    return grade if grade in GRADES else ""


def _before(known: Known) -> Forecast:
    """The engine as it is. Raises UsageError where its circuit is not in figures."""
    return kept(known, "forecast before", lambda: forecast_of(known.case, [], None))


def _sliders(known: Known, query: Mapping[str, str]) -> list[Slider]:
    """Each slider that this engine has, where it was set, else at what is there."""
    engine, found = _before(known).before.engine, []
    for range_ in ranges_of(known.case):
        parameter = CIRCUIT_PARAMETERS[range_.id]
        there = float(np.median(np.asarray(parameter.read(engine)))) / range_.factor
        if not np.isfinite(there):
            continue
        now = _on_a_step(min(max(there, range_.low), range_.high), range_)
        found.append(Slider(range_, parameter.says, _chosen(query, range_) or now, now))
    more = CIRCUIT_PARAMETERS[PUMP].says
    found.append(Slider(MORE_PUMP, f"more {more}", _chosen(query, MORE_PUMP) or "0", "0"))
    return found


def _fixes(known: Known) -> list[Fix]:
    """The repairs without a value that put right something that was found."""
    found = wrong(_before(known).state)
    return [fix for fix in FIXES.values() if fix is not SHIM and rights_of(fix, found)]


def _chosen(query: Mapping[str, str], range_: SliderRange) -> str:
    """Where a slider was set; empty where it was not, or beyond its ends."""
    try:
        value = float(query.get(range_.id, ""))
    except ValueError:
        return ""
    return _on_a_step(value, range_) if range_.low <= value <= range_.high else ""


def _on_a_step(value: float, range_: SliderRange) -> str:
    """A figure on the slider's steps.

    >>> _on_a_step(2.5199, CLEARANCES[0][0]), _on_a_step(0.0631, CLEARANCES[1][0])
    ('2.5', '0.065')
    >>> _on_a_step(2.0, MORE_PUMP)
    '0'
    """
    steps = range_.low + round((value - range_.low) / range_.step) * range_.step
    return f"{steps:.3f}".rstrip("0").rstrip(".")


@dataclass(frozen=True, slots=True)
class Glance:
    """A hot pressure before and after, in large figures."""

    rpm: float
    now: str
    after: str


def _glances(document: ForecastDocument) -> list[Glance]:
    """Hot idle, and the speed nearest 2000 rpm."""
    if not document.speeds:
        return []
    idle = min(document.speeds, key=lambda s: s.rpm)
    fast = min(document.speeds, key=lambda s: (abs(s.rpm - FAST), s.rpm))
    figure = document.scale.figure
    return [
        Glance(s.rpm, figure(s.hot_before.mean), figure(s.hot_after.mean))
        for s in dict.fromkeys((idle, fast))
    ]


def _document(known: Known, query: Mapping[str, str], sliders: list[Slider]) -> ForecastDocument:
    """The forecast for the sliders. Raises UsageError."""
    changes = [
        f"{s.range.id}=+{s.value} %"
        if s.range.id == PUMP
        else f"{s.range.id}={s.value} {s.range.unit}"
        for s in sliders
        if s.value != s.now
    ]
    grade = _grade(query)
    changes += [f"oil={grade}"] if grade else []

    may_run = known.answer.may_run
    fixes = [fix.id for fix in _fixes(known) if query.get(f"{FIX}{fix.id}")]

    def made() -> ForecastDocument:
        there = _before(known)
        now = kept(known, "forecast now", lambda: forecast_document(there, may_run=may_run))
        if not changes and not fixes:
            return now
        plans = parse_fixes(fixes, known.case)
        other = with_other_changes(there, parse_changes(changes), plans)
        return forecast_document(other, now, may_run=may_run)

    tried = [name for name in known.made if isinstance(name, Tried)]
    for name in tried[:-MOST_KEPT]:
        del known.made[name]
    return kept(known, Tried(tuple(fixes), tuple(changes)), made)

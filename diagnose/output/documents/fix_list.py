"""The document of ``forecast --fix``: what can be changed on an engine, today's value and range."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from diagnose.case.units import units_of
from diagnose.circuit.engine_model import grade_name
from diagnose.circuit.fixes import parameter_of, rights_of
from diagnose.circuit.forecast import Forecast
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.scale import scale_of
from knowledge.circuit.fixes import ALL, LEAK, OIL, PUMP, SHIM, Fix


@dataclass(frozen=True, kw_only=True)
class CanFix:
    """A repair: its name for ``--fix``, what it does, today's value and what it can be set to."""

    name: str
    says: str
    today: str  #: empty where it has no figure
    range: str  #: empty where it takes no value
    found: tuple[str, ...]  #: what was measured or seen there


@dataclass(frozen=True, kw_only=True)
class FixListDocument:
    """Everything ``forecast --fix`` lists."""

    case: str | None  #: path of the case file
    can_fix: tuple[CanFix, ...]
    title: str = field(metadata=NOT_IN_JSON)


def fix_list_document(forecast: Forecast) -> FixListDocument:
    """Build the list for the engine of a forecast, as it is before any repair."""
    case = forecast.case
    return FixListDocument(
        case=str(case.path) if case.path else None,
        can_fix=tuple(_can_fix(f, forecast) for f in ALL if _has(f, forecast)),
        title=case.job.title,
    )


def _has(fix: Fix, forecast: Forecast) -> bool:
    """Whether the engine has what a fix is made on."""
    if fix is LEAK:
        return forecast.unlisted is not None
    parameter = parameter_of(fix)
    if parameter is None or fix is SHIM:
        return True
    return bool(np.all(np.isfinite(np.asarray(parameter.read(forecast.before.engine)))))


def _can_fix(fix: Fix, forecast: Forecast) -> CanFix:
    return CanFix(
        name=fix.id,
        says=fix.says,
        today=_today(fix, forecast),
        range=_range(fix, forecast),
        found=tuple(f"{d.says} {d.found}" for d in rights_of(fix, forecast.found)),
    )


def _today(fix: Fix, forecast: Forecast) -> str:
    if fix is OIL:
        return grade_name(forecast.case)
    if fix is LEAK:
        lost = forecast.unlisted.mean if forecast.unlisted else 0.0
        return f"{scale_of(forecast.case).one(lost)} at hot idle"
    parameter = parameter_of(fix)
    if parameter is None or fix is SHIM:
        return ""
    return parameter.shown(np.asarray(parameter.read(forecast.before.engine)), _unit(fix, forecast))


def _range(fix: Fix, forecast: Forecast) -> str:
    if fix is OIL:
        return "a grade: 10W-40"
    if fix is PUMP:
        return "bigger: +25 %"
    parameter, unit = parameter_of(fix), _unit(fix, forecast)
    if parameter is None:
        return ""
    low, high = parameter.shown(fix.least, unit), parameter.shown(fix.most, unit)
    number, _, name = low.partition(" ")
    return f"{number} to {high}" if high.endswith(f" {name}") else f"{low} to {high}"


def _unit(fix: Fix, forecast: Forecast) -> str | None:
    """The unit it was measured in, else its own, else the job's."""
    parameter = parameter_of(fix)
    if parameter is None:
        return None
    own = parameter.quantity.unit
    named = forecast.units.get(parameter.id)
    return named or own or units_of(forecast.case).of(parameter.dimension)

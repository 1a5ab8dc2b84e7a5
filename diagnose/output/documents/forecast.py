"""The document of ``forecast``: pressures before and after a repair, its cost, and warnings."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace

import numpy as np

from diagnose.circuit.band import Band
from diagnose.circuit.deviations import Deviation, as_measured
from diagnose.circuit.engine_model import grade_name
from diagnose.circuit.fixes import Planned, closed_by
from diagnose.circuit.forecast import HORSEPOWER, Forecast, Prediction
from diagnose.circuit.operating_points import COLD_START, is_hot
from diagnose.circuit.repair_warnings import (
    MOST_COLD_SPEED,
    ReliefCost,
    RepairWarning,
    relief_cost,
    repair_warnings,
)
from diagnose.circuit.settings import Setting
from diagnose.diagnosis import Diagnosis
from diagnose.output.as_json import NOT_IN_JSON, key
from diagnose.output.documents.forecast_misfit import (
    ForecastReading,
    Misfit,
    misfit_of,
    reading_beside,
)
from diagnose.output.documents.forecast_targets import ForecastTarget, forecast_target
from diagnose.output.documents.other_size import other_size
from diagnose.output.documents.thicker_oil import in_words, planned_oil
from diagnose.output.documents.worth_reading import NONE_WORTH_IT, FurtherReading, further_reading
from diagnose.output.plot import Plot
from diagnose.output.scale import Scale, scale_of
from diagnose.signoff.fix_work import FixWork, fix_work
from diagnose.signoff.start import first_start
from knowledge.book import the_book
from knowledge.circuit.fixes import Fix
from knowledge.stations.relief.quantities import RELIEF_SHIM
from knowledge.units import LENGTH


@dataclass(frozen=True, kw_only=True)
class ForecastFinding:
    """A measured deviation the engine is forecast with."""

    finding: str
    found: str
    assumed: bool
    says: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class ForecastSetting:
    """A planned change."""

    name: str
    to: str
    says: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class ForecastSpeed:
    """Pressures [Pa] and the power to turn the pump hot [W] at one speed [rpm]."""

    rpm: float
    hot_before: Band
    hot_after: Band
    cold_before: Band
    cold_after: Band
    watts_before: float
    watts_after: float
    fit_for_cold: bool = field(metadata=NOT_IN_JSON)  #: cold oil may be run at this speed


@dataclass(frozen=True, kw_only=True)
class ForecastDocument:
    """Everything ``forecast`` answers; SI.

    Where ``fits`` is false, ``misfit`` says why and there are no figures: ``speeds``, ``targets``
    and ``warnings`` are empty.
    """

    case: str | None  #: path of the case file
    unit: str  #: of the pressures in this document
    fits: bool  #: the engine as found shows every reading within its error
    readings: tuple[ForecastReading, ...]
    misfit: Misfit | None
    repaired: bool  #: the engine as it runs since the repair, with the clearances fitted
    found: tuple[ForecastFinding, ...]
    unlisted: Band | None  #: pressure lost by a leak not found yet
    settings: tuple[ForecastSetting, ...] = field(metadata=key("set"))
    other_size: str  #: that its figures are of a smaller or larger engine; may be empty
    oil_until: str  #: what thicker oil does until the repair; empty where none is planned
    #: at the lowest speed, all faults put right; None where nothing is planned
    all_right: Band | None
    hot: float
    cold: float
    speeds: tuple[ForecastSpeed, ...]
    targets: tuple[ForecastTarget, ...]  #: with the repairs that meet each, best first
    buys: ReliefCost | None  #: by more relief pressure, and at what cost
    warnings: tuple[RepairWarning, ...]
    further: FurtherReading | None  #: None where none is worth it
    may_run: bool = field(metadata=NOT_IN_JSON)  #: no alarm forbids running the engine
    title: str = field(metadata=NOT_IN_JSON)
    scale: Scale = field(metadata=NOT_IN_JSON)
    hot_oil: str = field(metadata=NOT_IN_JSON)
    cold_oil: str = field(metadata=NOT_IN_JSON)
    plot: Plot | None = field(metadata=NOT_IN_JSON)
    pump_power: Mapping[str, str] = field(metadata=NOT_IN_JSON)  #: by state of running
    read_next: str = field(metadata=NOT_IN_JSON)  #: that reading in a sentence; may be empty

    @property
    def kept(self) -> str:
        """What is left as it was, what it costs once the rest is done, and all put right."""
        if self.all_right is None or not self.speeds:
            return "all else as it was found"
        slow, one = self.speeds[0], self.scale.one
        costs = self.all_right.mean - slow.hot_after.mean
        left = f", which then costs about {one(costs)}" if costs > self.scale.least else ""
        right = f"{self.scale.range(self.all_right)} at {slow.rpm:.0f} rpm hot"
        return (
            f"all else as it was found{left}; with all faults put right {right} (signoff --start)"
        )


def forecast_document(
    forecast: Forecast, like: ForecastDocument | None = None, *, may_run: bool = True
) -> ForecastDocument:
    """Build the document of a forecast.

    ``like``: the document of other changes to the same engine, for what would be enough.
    ``may_run``: no alarm forbids running the engine, for a further reading or at all.
    """
    scale, fits = scale_of(forecast.case), forecast.fits
    planned = [*(_plan(forecast, p) for p in forecast.plans)]
    planned += [
        ForecastSetting(name=s.id, to=s.text, says=_change(forecast, s)) for s in forecast.settings
    ]
    speeds = tuple(_speed(forecast, i) for i in range(len(forecast.speeds))) if fits else ()
    further = _further(forecast, scale, may_run)
    return ForecastDocument(
        case=str(forecast.case.path) if forecast.case.path else None,
        unit="Pa",
        fits=fits,
        readings=tuple(reading_beside(r, scale) for r in forecast.state.readings),
        misfit=None if fits else misfit_of(forecast, scale),
        repaired=forecast.repaired,
        found=tuple(_finding(d) for d in forecast.found),
        unlisted=forecast.unlisted if fits else None,
        settings=tuple(planned),
        other_size=other_size(forecast.case),
        oil_until=planned_oil(forecast, scale) if fits and may_run else "",
        all_right=_all_right(forecast) if planned and speeds else None,
        hot=forecast.hot_temperature,
        cold=COLD_START,
        speeds=speeds,
        targets=_targets(forecast, like) if fits else (),
        buys=relief_cost(forecast) if fits else None,
        warnings=repair_warnings(forecast) if planned and fits else (),
        further=further,
        may_run=may_run,
        title=forecast.case.job.title,
        scale=scale,
        hot_oil=scale.heat(forecast.hot_temperature),
        cold_oil=scale.heat(COLD_START),
        plot=_plot(forecast, speeds, scale) if fits else None,
        pump_power=_pump_power(forecast) if fits else {},
        read_next=further.says if further else NONE_WORTH_IT if fits and may_run else "",
    )


def _all_right(forecast: Forecast) -> Band:
    """What ``signoff --start`` predicts at the lowest speed shown, where every fault is put right."""
    start = first_start(forecast.case, the_book())
    return Band.of(start.pressures(float(forecast.speeds[0]), forecast.hot_temperature))


def _further(forecast: Forecast, scale: Scale, may_run: bool) -> FurtherReading | None:
    """The reading that narrows most the pressure at one of the speeds a pressure is wanted for."""
    worth = forecast.further.best(may_run=may_run)
    if worth is None:
        return None
    at = forecast.targets[worth.asked]
    then = "after repair" if forecast.settings or forecast.plans else "hot"
    return further_reading(worth, f"{at.rpm:.0f} rpm {then}", scale)


def _finding(found: Deviation) -> ForecastFinding:
    return ForecastFinding(
        finding=found.id,
        found=found.found,
        assumed=found.assumed,
        says=f"{found.says} {'(assumed) ' if found.assumed else ''}{found.found}",
    )


def _plan(forecast: Forecast, each: Planned) -> ForecastSetting:
    """A repair in trade words: what it changes, or that nothing was found there."""
    to = each.text or "as it should be"
    if each.setting is not None:
        return ForecastSetting(name=each.id, to=to, says=_change(forecast, each.setting))
    assert each.fix is not None
    found = each.rights(forecast.state)
    parameters = dict.fromkeys(d.parameter for d in found if d.parameter)
    changes = [_change(forecast, Setting(parameter=p, text="")) for p in parameters]
    if changes:
        guess = " (today's figure computed, not measured)" if all(d.assumed for d in found) else ""
        says = f"{each.id}: {'; '.join(changes)}{guess}"
    elif found:
        says = f"{each.fix.says}, in place of {', '.join(d.found for d in found)}"
    elif closed_by(each.fix, forecast.state):
        says = (
            f"{each.fix.says}; nothing was found there; it helps only if the loss not found "
            "yet is there"
        )
    else:
        says = f"{each.fix.says}; nothing was found wrong there"
    return ForecastSetting(name=each.id, to=to, says=says)


def _change(forecast: Forecast, each: Setting) -> str:
    """A planned change from what is there to what will be."""
    if each.parameter is None:
        assumed = "" if forecast.case.engine.oil else " (assumed)"
        return f"oil {grade_name(forecast.case)}{assumed} -> {in_words(each.text)}"
    if each.parameter.quantity is RELIEF_SHIM:
        return f"{each.parameter.says} {each.text}"
    measured = as_measured(forecast.found, each.parameter)
    before, after = (
        each.parameter.shown(value, _unit(forecast, each))
        for value in (
            np.asarray(each.parameter.read(forecast.before.engine))
            if measured is None
            else measured,
            np.asarray(each.parameter.read(forecast.after.engine)),
        )
    )
    return f"{each.parameter.says} {before} -> {after}"


def _unit(forecast: Forecast, each: Setting) -> str | None:
    """The unit of the job's lengths; of others the one typed, else the one measured in."""
    if each.parameter is not None and each.parameter.dimension is LENGTH:
        return forecast.units.get(each.id)
    typed = None if each.relative else each.unit
    return typed or forecast.units.get(each.id)


def _speed(forecast: Forecast, at: int) -> ForecastSpeed:
    def band(prediction: Prediction, cold: bool) -> Band:
        state = prediction.cold if cold else prediction.hot
        return Band.of(np.asarray(state.gallery_pressure)[:, at])

    before, after = forecast.before, forecast.after
    rpm = float(forecast.speeds[at])
    return ForecastSpeed(
        rpm=rpm,
        hot_before=band(before, cold=False),
        hot_after=band(after, cold=False),
        cold_before=band(before, cold=True),
        cold_after=band(after, cold=True),
        watts_before=_power(forecast, before, at, cold=False),
        watts_after=_power(forecast, after, at, cold=False),
        fit_for_cold=rpm <= MOST_COLD_SPEED,
    )


def _power(forecast: Forecast, prediction: Prediction, at: int, *, cold: bool) -> float:
    return float(np.mean(prediction.power(forecast.speeds, cold)[:, at]))


def _pump_power(forecast: Forecast) -> dict[str, str]:
    """Hot at the highest speed, and cold at the highest speed fit for cold oil."""
    fastest_cold = int(np.flatnonzero(forecast.speeds <= MOST_COLD_SPEED)[-1])
    out = {}
    for name, at in (("hot", len(forecast.speeds) - 1), ("cold", fastest_cold)):
        before, after = (
            _power(forecast, prediction, at, cold=name == "cold")
            for prediction in (forecast.before, forecast.after)
        )
        state = f"{name}, {forecast.speeds[at]:.0f} rpm"
        out[state] = f"{_in_horsepower(before)} before, {_in_horsepower(after)} after"
    return out


def _in_horsepower(watts: float) -> str:
    return f"{watts / HORSEPOWER:.2f} hp ({watts:.0f} W)"


def _plot(forecast: Forecast, speeds: tuple[ForecastSpeed, ...], scale: Scale) -> Plot:
    """Mean hot pressure over speed before and after, and the pressures wanted."""
    lines = {"before": [s.hot_before.mean / scale.factor for s in speeds]}
    if forecast.settings or forecast.plans:
        lines["after"] = [s.hot_after.mean / scale.factor for s in speeds]
    return Plot(
        title=f"Hot, {scale.heat(forecast.hot_temperature)}",
        x_label="rpm",
        y_label=scale.unit,
        x=[s.rpm for s in speeds],
        lines=lines,
        points=[(t.rpm, t.pressure / scale.factor) for t in forecast.targets],
        points_say="wanted",
        gauge=[
            (r.read.reading.rpm, r.read.reading.pressure / scale.factor)
            for r in forecast.state.readings
            if is_hot(r.read.reading)
        ],
    )


def _targets(forecast: Forecast, like: ForecastDocument | None) -> tuple[ForecastTarget, ...]:
    """What is wanted and what would be enough, which is the same whatever is planned."""
    if like is not None:
        return tuple(
            replace(known, met_after=forecast.chance(target, forecast.after))
            for target, known in zip(forecast.targets, like.targets, strict=True)
        )
    book = the_book()
    planner = Diagnosis(book, forecast.case).planner

    def work(fixes: Sequence[Fix]) -> FixWork:
        return fix_work(fixes, forecast.found, planner, book)

    return tuple(forecast_target(forecast, t, work) for t in forecast.targets)

"""Pressures wanted, and the repairs that would meet them: part of the document of ``forecast``."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from math import inf

from diagnose.circuit.band import Band
from diagnose.circuit.forecast import Forecast, Target
from diagnose.circuit.minimum_change import ENOUGH, MinimumChange, Remedy, minimum_change
from diagnose.output.as_json import NOT_IN_JSON, key
from diagnose.output.documents.limits import source_title
from diagnose.output.lines import percent
from diagnose.output.scale import scale_of
from diagnose.signoff.fix_work import FixWork
from knowledge.circuit.fixes import Fix

Work = Callable[[Sequence[Fix]], FixWork]
SHORT = 3  #: repairs shown that are not enough


@dataclass(frozen=True, kw_only=True)
class ForecastRemedy:
    """One repair that meets a target, or several together; pressures [Pa]."""

    fixes: tuple[str, ...]  #: names for ``--fix``
    change: str
    start: str = field(metadata=key("from"))
    end: str = field(metadata=key("to"))
    way: float  #: share of the largest sensible change
    symptom: bool  #: treats a symptom
    assumed: bool  #: nothing was found there: only if the loss not found yet is there
    met: float  #: share of plausible engines that then meet the target
    after: Band  #: pressure then
    parts: tuple[str, ...]
    minutes: float | None  #: hands-on, with opening and closing; None where the place is not known
    opens: tuple[str, ...]  #: what is still to open
    says: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class ForecastTarget:
    """A pressure wanted hot [Pa, rpm], and what would be enough for it; shares of engines."""

    rpm: float
    pressure: float
    says: str
    source: str  #: of a usual limit; empty where it is the engine's own, or asked for
    met_before: float
    met_after: float
    met_mended: float  #: with everything found put right
    enough: tuple[ForecastRemedy, ...]  #: best first: those that treat no symptom, by minutes
    not_enough: tuple[ForecastRemedy, ...]  #: what brings most, or puts right what was found
    read_below: float | None  #: the gauge there, where it reads less though the model meets it
    none_needed: bool = field(metadata=NOT_IN_JSON)
    by_model: Band | None = field(metadata=NOT_IN_JSON)  #: beside ``read_below``
    met_now: str = field(metadata=NOT_IN_JSON)  #: ``met_before`` in words; what the gauge denies
    nearest: ForecastRemedy | None = field(metadata=NOT_IN_JSON)  #: best change where none will do


def forecast_target(forecast: Forecast, target: Target, work: Work) -> ForecastTarget:
    """Build the answer for one pressure wanted; ``work``: what repairs take."""
    change = minimum_change(forecast, target)
    enough = [_remedy(r, work) for r in (*change.remedies, *change.together)]
    short = change.short[:SHORT]
    if enough:  # what was found is put right in any case: say what that gives
        righted = {fix for r in (*change.remedies, *change.together) for fix in r.fixes}
        short = tuple(r for r in change.short if r.found and not righted & set(r.fixes))[:1]
    less = tuple(_remedy(r, work) for r in short)
    doubt = change.in_doubt
    return ForecastTarget(
        rpm=target.rpm,
        pressure=target.pressure,
        says=target.says,
        source=source_title(target.source) if target.source else "",
        met_before=change.met,
        met_after=forecast.chance(target, forecast.after),
        met_mended=change.mended,
        enough=tuple(sorted(enough, key=_order)),
        not_enough=less,
        read_below=doubt.read.reading.pressure if doubt else None,
        none_needed=change.met >= ENOUGH and doubt is None,
        by_model=doubt.shows if doubt else None,
        met_now=_met_now(forecast, change),
        nearest=less[0] if less and not enough else None,
    )


def _met_now(forecast: Forecast, change: MinimumChange) -> str:
    """The share of plausible engines that meet it now, unless the gauge itself reads less there."""
    if change.in_doubt is None:
        return percent(change.met)
    read = scale_of(forecast.case).one(change.in_doubt.read.reading.pressure)
    return f"the gauge reads {read} there"


def _order(remedy: ForecastRemedy) -> tuple[bool, bool, float, float]:
    minutes = inf if remedy.minutes is None else remedy.minutes
    return remedy.symptom, remedy.assumed, minutes, remedy.way


def _remedy(remedy: Remedy, work: Work) -> ForecastRemedy:
    takes = work(remedy.fixes)
    return ForecastRemedy(
        fixes=tuple(f.id for f in remedy.fixes),
        change=remedy.what,
        start=remedy.start,
        end=remedy.end,
        way=remedy.way,
        symptom=remedy.symptom,
        assumed=remedy.assumed,
        met=remedy.met,
        after=remedy.after,
        parts=takes.parts,
        minutes=takes.minutes,
        opens=takes.places,
        says=remedy.says,
    )

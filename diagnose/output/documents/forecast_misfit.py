"""Readings beside what the model shows, and what is said where it does not fit them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from diagnose.circuit.as_read import FITS, ReadingFit
from diagnose.circuit.band import Band
from diagnose.circuit.forecast import Forecast, without_readings
from diagnose.circuit.misfit import explanations
from diagnose.circuit.operating_points import is_hot
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.scale import Scale
from knowledge.model import Gauge


@dataclass(frozen=True, kw_only=True)
class ForecastReading:
    """A reading beside what the engine as found shows there [rpm, K, Pa]."""

    entry: int
    rpm: float
    oil: float | None
    read: float
    error: float  #: one standard deviation
    before: Band
    fits: bool
    hot: bool = field(metadata=NOT_IN_JSON)
    says: str = field(metadata=NOT_IN_JSON)  #: what was read, and what the model shows


@dataclass(frozen=True, kw_only=True)
class CouldBe:
    """What could explain readings that the model misses."""

    id: str
    says: str
    settles: bool  #: with it every reading fits


@dataclass(frozen=True, kw_only=True)
class Misfit:
    """The model does not fit the readings: which, by how much, what could explain it."""

    says: str
    readings: tuple[str, ...]  #: those that do not fit, a sentence each
    could_be: tuple[CouldBe, ...]
    by_model: tuple[str, ...]  #: what it computes without them: a heading, then each speed
    do_next: str


def reading_beside(fit: ReadingFit, scale: Scale) -> ForecastReading:
    """A reading beside what the model shows there."""
    reading = fit.read.reading
    oil = reading.oil_temperature
    heat = "oil not measured" if oil is None else scale.heat(oil)
    bound = "at most " if reading.at_most else "at least " if reading.at_least else ""
    return ForecastReading(
        entry=fit.read.entry.no,
        rpm=reading.rpm,
        oil=oil,
        read=reading.pressure,
        error=fit.error,
        before=fit.shows,
        fits=fit.fits,
        hot=is_hot(reading),
        says=(
            f"entry {fit.read.entry.no}, {reading.rpm:.0f} rpm, {heat}: the gauge read {bound}"
            f"{scale.one(reading.pressure)}, the model shows {scale.range(fit.shows)}"
        ),
    )


def misfit_of(forecast: Forecast, scale: Scale) -> Misfit:
    """Which readings the model misses, by how much, and what could explain it."""
    missed = [r for r in forecast.state.readings if not r.fits]
    said = tuple(
        f"{reading_beside(r, scale).says}: {scale.one(abs(r.off))} too "
        f"{'much' if r.off > 0 else 'little'}, and the reading is good to "
        f"{scale.one(FITS * r.error)}"
        for r in missed
    )
    could_be = tuple(
        CouldBe(id=e.id, says=e.says, settles=e.settles) for e in explanations(forecast)
    )
    first = missed[0].read.reading
    again = f"{first.rpm:.0f} rpm {'hot' if is_hot(first) else 'cold'}"
    direct = "" if first.gauge is Gauge.DIRECT else " on a direct gauge"
    measured = " and the values measured" if forecast.found else ""
    return Misfit(
        says="The model does not fit these readings, so it gives no figures from them.",
        readings=said,
        could_be=could_be,
        by_model=tuple(_by_model(forecast, scale)),
        do_next=f"Read it again at {again}{direct}; check speed, oil temperature{measured}.",
    )


def _by_model(forecast: Forecast, scale: Scale) -> Iterator[str]:
    """What the model of this kind of engine shows with what was measured, without the gauge."""
    alone = without_readings(forecast)
    what = "from what was measured" if forecast.found else "of a sound one"
    yield f"Model of this kind of engine, {what} alone, not by this gauge; off by up to 40 %"
    for target in forecast.targets:
        now, then = (
            scale.range(Band.of(alone.hot_pressure(each, target.rpm)))
            for each in (alone.before, alone.after)
        )
        after = f", repaired {then}" if forecast.settings or forecast.plans else ""
        yield f"{target.rpm:.0f} rpm hot: now {now}{after}, wanted {scale.one(target.pressure)}"

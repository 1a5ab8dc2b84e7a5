"""The first start as a table: predicted at each temperature and speed, and what was read."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from diagnose.circuit.operating_points import hot_of
from diagnose.output.plot import Plot
from diagnose.output.scale import Scale, scale_of
from diagnose.signoff.start import Compared, FirstStart
from knowledge.model import Reading


@dataclass(frozen=True, kw_only=True)
class StartRow:
    """The pressures predicted at one oil temperature, one for each speed."""

    heat: str
    cells: tuple[str, ...]


@dataclass(frozen=True, kw_only=True)
class StartTable:
    """Pressures to expect at first start, in the case's unit, and what was read."""

    unit: str
    speeds: tuple[str, ...]  #: [rpm]
    rows: tuple[StartRow, ...]
    wide: bool  #: no pressure of the sound engine is known
    cold: str  #: why cold oil may show less; empty where it is not predicted to
    read: tuple[str, ...]  #: each reading beside what was predicted, in a sentence
    plots: tuple[Plot, ...]  #: pressure over speed at each oil temperature


def start_table(start: FirstStart) -> StartTable:
    """Build the table of a first start."""
    scale = scale_of(start.case)
    heats = list(dict.fromkeys(e.temperature for e in start.expected))
    return StartTable(
        unit=scale.unit,
        speeds=tuple(f"{rpm:.0f}" for rpm in dict.fromkeys(e.rpm for e in start.expected)),
        rows=tuple(
            StartRow(
                heat=scale.heat(heat),
                cells=tuple(
                    scale.ends(e.pressure) for e in start.expected if e.temperature == heat
                ),
            )
            for heat in heats
        ),
        wide=not start.sound_known,
        cold=cold_in_words(start),
        read=tuple(reading_in_words(one, scale) for one in start.compared),
        plots=tuple(_plot(start, heat, heats, scale) for heat in heats),
    )


def cold_in_words(start: FirstStart) -> str:
    """Say why the gauge may show less cold than warm; empty where it is not predicted to."""
    mean = {(e.rpm, e.temperature): e.pressure.mean for e in start.expected}
    heats = sorted({heat for _, heat in mean})
    if not any(mean[rpm, heats[0]] < mean[rpm, heats[1]] for rpm, _ in mean):
        return ""
    return (
        "Cold, the gallery may show less than warm: thick oil loses more pressure in filter and "
        "oilways; the pump itself is fine."
    )


def reading_head(reading: Reading, scale: Scale) -> str:
    """Say what was read, and when."""
    heat = scale.heat(reading.oil_temperature) if reading.oil_temperature else "taken as hot"
    return reading.said or f"{reading.rpm:.0f} rpm, {heat}: {scale.one(reading.pressure)}"


def reading_in_words(one: Compared, scale: Scale) -> str:
    """Say what was read and predicted, and what follows."""
    text = f"{reading_head(one.read.reading, scale)}; predicted {scale.range(one.predicted)}"
    if one.stop:
        return f"{text}: STOP THE ENGINE ({one.stop})"
    if one.below:
        return f"{text}: BELOW what was predicted; stop and look"
    return f"{text}: above what was predicted" if one.above else f"{text}: as predicted"


def _plot(start: FirstStart, heat: float, heats: Sequence[float], scale: Scale) -> Plot:
    """One temperature: the band, its mean, and the readings taken nearest to it."""
    row, unit = [e for e in start.expected if e.temperature == heat], scale.factor
    readings = [c.read.reading for c in start.compared]
    return Plot(
        title=f"Oil at {scale.heat(heat)}",
        x_label="rpm",
        y_label=scale.unit,
        x=[e.rpm for e in row],
        lines={"predicted, mean": [e.pressure.mean / unit for e in row]},
        points=[
            (r.rpm, r.pressure / unit)
            for r in readings
            if min(heats, key=lambda h: abs(h - (r.oil_temperature or hot_of(start.case)))) == heat
        ],
        band=([e.pressure.low / unit for e in row], [e.pressure.high / unit for e in row]),
        band_says="predicted, nine engines in ten",
    )

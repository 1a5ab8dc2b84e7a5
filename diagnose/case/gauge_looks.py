"""One look at a gauge, in figures or in words, as a ``Reading`` in SI; every fault is collected.

What was not said becomes a distribution (``knowledge.reports.when``); only the pressure is needed.
"""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum
from typing import TypeVar

from diagnose.case.file_faults import Faults, bounds_in_words, quantity, within
from diagnose.case.pressures import Pressure, pressure_of, pressure_unit
from diagnose.case.schema import BaselineEntry, Checked, ReadingEntry
from diagnose.errors import nearest, plain
from knowledge.model import Gauge, Reading
from knowledge.pressure.quantities import ENGINE_SPEED, OIL_PRESSURE
from knowledge.reports import when
from knowledge.reports.when import Speeds, Spread
from knowledge.reports.words import Bound, Circumstance, Heat, Speed
from knowledge.stations.oil.quantities import OIL_TEMPERATURE
from knowledge.units import PRESSURE, PSI, SPEED, TEMPERATURE, Dimension, UnitError, parse, show

AnyEnum = TypeVar("AnyEnum", bound=StrEnum)
USUAL_SPEEDS = Speeds()
MOST_ERROR = 30 * PSI  #: Pa: of a gauge
HOT_IDLE = "hot idle"
#: other ways to write a speed
SPEEDS = {
    HOT_IDLE: Speed.IDLE,
    "idling": Speed.IDLE,
    "tickover": Speed.IDLE,
    "driving": Speed.CRUISE,
    "cruising": Speed.CRUISE,
    "motorway": Speed.CRUISE,
    "highway": Speed.CRUISE,
    "full throttle": Speed.FULL,
    "flat out": Speed.FULL,
    "all speeds": Speed.ANY,
    "however fast": Speed.ANY,
    "any revs": Speed.ANY,
}
HEATS = {"warm": Heat.HOT, "warmed up": Heat.HOT, "overheated": Heat.VERY_HOT}


def look(
    each: Checked[ReadingEntry] | Checked[BaselineEntry], faults: Faults, of: Speeds
) -> Reading | None:
    """The reading on a panel gauge, or None and faults."""
    entry, where, before = each.table, each.where, len(faults)
    word, warmth = _words(entry)
    pressure = _pressure(entry.pressure, f"{where}: pressure", faults)
    if entry.rpm is None and pressure and pressure.ever and not entry.during:
        word = Speed.ANY
    rpm = _speed(entry.rpm, word, f"{where}: rpm", faults, of)
    oil = _heat(entry.oil, warmth, f"{where}: oil", faults)
    coolant = _figure(entry.coolant, TEMPERATURE, f"{where}: coolant", faults)
    during = frozenset(_circumstances(entry.during, f"{where}: during", faults))
    error = _error(entry.error, f"{where}: error", faults)
    usual = _pressure(getattr(entry, "usual", None), f"{where}: usual", faults)
    if entry.pressure is None and "pressure" not in each.broken:
        faults.add(f"{where}: pressure is missing")
    if len(faults) > before or pressure is None or {"rpm", "pressure"} & each.broken:
        return None
    if oil is None and coolant is not None:
        oil = when.oil_from_coolant(coolant)
    if oil is None:
        oil = when.unsaid_heat(word, during)
    if rpm is None:
        cold = warmth is Heat.COLD or Circumstance.COLD in during
        rpm = when.unsaid_speed(during, cold, of)
    return Reading(
        rpm.mean,
        oil.mean if oil else None,
        pressure.value,
        Gauge.PANEL,
        entry.tap,
        error,
        rpm_spread=rpm.sd,
        oil_spread=oil.sd if oil else 0.0,
        pressure_spread=pressure.spread,
        at_most=pressure.bound is Bound.AT_MOST,
        at_least=pressure.bound is Bound.AT_LEAST,
        usual=usual.value if usual else None,
        at_all_speeds=word is Speed.ANY,
        at_all_heats=warmth is Heat.ANY,
        station=(getattr(entry, "station", None) or "").strip().lower(),
        said=said(entry) if in_words(entry) else "",
    )


def word_in(
    text: str | None, kind: type[AnyEnum], others: dict[str, AnyEnum] | None = None
) -> AnyEnum | None:
    """The word of a closed list a text is, or None."""
    wanted = " ".join((text or "").lower().replace("_", " ").replace("-", " ").split())
    return (others or {}).get(wanted) or next((w for w in kind if w.value == wanted), None)


def in_words(entry: ReadingEntry | BaselineEntry) -> bool:
    """Whether more, or less, than figures of speed, oil temperature and pressure was given."""
    if entry.coolant or entry.during or getattr(entry, "usual", None):
        return True
    figures = ((entry.rpm, SPEED), (entry.pressure, PRESSURE))
    if any(text is None or not _is_figure(text, dimension) for text, dimension in figures):
        return True
    return entry.oil is not None and not _is_figure(entry.oil, TEMPERATURE)


def said(entry: ReadingEntry | BaselineEntry) -> str:
    """The reading in the person's words, as "5 psi at hot idle"."""
    word, warmth = _words(entry)
    usual = getattr(entry, "usual", None)
    bare = bool(entry.pressure) and not any(c.isalpha() for c in entry.pressure or "")
    parts = [f"{entry.pressure} on the gauge" if bare else entry.pressure or ""]
    if usual:
        parts.append(f"usually {usual}")
    heat, speed = warmth or entry.oil, word or entry.rpm
    if warmth is not None and word is not None and warmth is not Heat.ANY:
        parts.append(f"at {heat} {speed}")
    else:
        parts += [f"at {speed}"] if speed else []
        parts += [heat] if heat else []
    parts += [f"coolant {entry.coolant}"] if entry.coolant else []
    station = getattr(entry, "station", None)
    parts += [*entry.during, *([f"{station} gauge"] if station else [])]
    text = ", ".join(parts)
    return text.replace(", at ", " at ", 1) if not usual else text


def as_given(entry: ReadingEntry | BaselineEntry) -> str:
    """The reading as it was given: its figures, or the person's words.

    >>> as_given(ReadingEntry(no=1, rpm="700 rpm", pressure="8 psi"))
    '700 rpm 8 psi'
    """
    if in_words(entry):
        return said(entry)
    station = getattr(entry, "station", None)
    shown_by = f"{station} gauge" if station else ""
    return " ".join(filter(None, (entry.rpm, entry.oil, entry.pressure, shown_by)))


def speed_as_given(entry: ReadingEntry, reading: Reading) -> str:
    """The speed of a reading in rev/min, or in words; "not said" where nothing was."""
    if reading.rpm_spread == 0.0:
        return f"{reading.rpm:.0f}"
    word, _ = _words(entry)
    return str(word or ", ".join(entry.during) or "not said")


def heat_as_given(entry: ReadingEntry, reading: Reading) -> str:
    """The oil temperature of a reading as written, or in words; "not measured" where nothing tells."""
    _, warmth = _words(entry)
    if warmth is not None:
        return str(warmth)
    if entry.oil is not None and reading.oil_temperature is not None:
        return entry.oil
    return f"coolant {entry.coolant}" if entry.coolant else "not measured"


def _words(entry: ReadingEntry | BaselineEntry) -> tuple[Speed | None, Heat | None]:
    """The speed and the oil temperature, where they are words."""
    word, warmth = word_in(entry.rpm, Speed, SPEEDS), word_in(entry.oil, Heat, HEATS)
    if entry.oil is None and entry.rpm is not None and entry.rpm.strip().lower() == HOT_IDLE:
        return word, Heat.HOT
    return word, warmth


def _is_figure(text: str, dimension: Dimension) -> bool:
    try:
        parse(text, dimension)
    except UnitError:
        return False
    return True


def _speed(
    text: str | None, word: Speed | None, where: str, faults: Faults, of: Speeds
) -> Spread | None:
    if word is not None:
        return when.speed(word, of)
    value = _figure(text, SPEED, where, faults, ENGINE_SPEED.plausible, (*Speed, *SPEEDS))
    return None if value is None else Spread(value, 0.0)


def _heat(text: str | None, word: Heat | None, where: str, faults: Faults) -> Spread | None:
    if word is not None:
        return when.heat(word)
    value = _figure(text, TEMPERATURE, where, faults, words=(*Heat, *HEATS))
    return None if value is None else Spread(value, 0.0)


def _figure(
    text: str | None,
    dimension: Dimension,
    where: str,
    faults: Faults,
    plausible: tuple[float, float] = OIL_TEMPERATURE.plausible,
    words: tuple[str, ...] = (),
) -> float | None:
    """The figure in SI; None where there is none, or with a fault that names the nearest word."""
    if text is None:
        return None
    if words and not any(c.isdigit() for c in text):
        near = nearest(text, words) or f" Write a figure, or one of {', '.join(words)}."
        faults.add(f"{where}: '{plain(text)}' is not known.{near}")
        return None
    value = quantity(text, dimension, where, faults)
    return None if value is None else _possible(value, text, dimension, where, faults, plausible)


def _possible(
    value: float,
    text: str,
    dimension: Dimension,
    where: str,
    faults: Faults,
    plausible: tuple[float, float],
) -> float | None:
    """The value, or None and a fault where it cannot be."""
    if within(value, plausible):
        return value
    bounds = bounds_in_words(plausible, dimension, text)
    place, _, key = where.rpartition(": ")
    faults.add(f"{place}: {key} '{plain(text)}' cannot be right; {bounds}")
    return None


def _pressure(text: str | None, where: str, faults: Faults) -> Pressure | None:
    if text is None:
        return None
    try:
        pressure = pressure_of(text)
    except UnitError as error:
        faults.add(f"{where}: {error}")
        return None
    if within(pressure.value, OIL_PRESSURE.plausible):
        return pressure
    unit = pressure_unit(text)
    least, most = (show(v, PRESSURE, unit) for v in OIL_PRESSURE.plausible)
    place, _, key = where.rpartition(": ")
    faults.add(f"{place}: {key} '{plain(text)}' cannot be right; expected {least} to {most}")
    return None


def _error(text: str | None, where: str, faults: Faults) -> float | None:
    return _figure(text, PRESSURE, where, faults, (0.0, MOST_ERROR))


def _circumstances(texts: list[str], where: str, faults: Faults) -> Iterator[Circumstance]:
    for text in texts:
        word = word_in(text, Circumstance)
        if word is None:
            faults.add(f"{where}: '{plain(text)}' is not known.{nearest(text, list(Circumstance))}")
        else:
            yield word

"""Read values with units and check that they are plausible; every fault is collected."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from typing import Any

from diagnose.case.case import BaselineReading, GaugeReading
from diagnose.case.schema import BaselineEntry, Checked, FindingEntry, ReadingEntry
from diagnose.errors import plain
from knowledge.limits import Limit
from knowledge.model import Measure, Quantity, Reading, Stage
from knowledge.pressure.quantities import ENGINE_SPEED, OIL_PRESSURE
from knowledge.stations.oil.quantities import OIL_TEMPERATURE
from knowledge.units import (
    DIMENSIONS,
    PRESSURE,
    PSI,
    SPEED,
    TEMPERATURE,
    Dimension,
    UnitError,
    parse,
    show,
    unit_in,
)
from knowledge.work import Task

MOST_FAULTS = 100
_FIGURES = {  # what a gauge, thermometer or counter on an engine can really show
    "rpm": (SPEED, ENGINE_SPEED.plausible),
    "pressure": (PRESSURE, OIL_PRESSURE.plausible),
    "oil": (TEMPERATURE, OIL_TEMPERATURE.plausible),
    "error": (PRESSURE, (0.0, 30 * PSI)),
}


class TooManyFaultsError(Exception):
    """The file has so many faults that reading stops."""


class Faults(list[str]):
    """What is wrong with one file."""

    def add(self, fault: str) -> None:
        """Add a fault. Raises TooManyFaultsError."""
        self.append(fault)
        if len(self) >= MOST_FAULTS:
            raise TooManyFaultsError


def quantity(text: str, dimension: Dimension, where: str, faults: Faults) -> float | None:
    """The figure in SI, or None and a fault."""
    try:
        return parse(text, dimension)
    except UnitError as error:
        faults.add(f"{where}: {error}")
        return None


def limit_value(text: str, limit: Limit, where: str, faults: Faults) -> float | None:
    """An engine maker's figure in SI, or None and a fault."""
    value = quantity(text, DIMENSIONS[limit.dimension], where, faults)
    if value is None or value > 0:
        return value
    faults.add(f"{where}: '{plain(text)}' must be above zero")
    return None


def dimension_value(text: str, what: Quantity, where: str, faults: Faults) -> float | None:
    """A figure of the circuit in SI, or None and a fault."""
    dimension = DIMENSIONS[what.dimension]
    value = quantity(text, dimension, where, faults)
    if value is None or what.plausible[0] <= value <= what.plausible[1]:
        return value
    bounds = _bounds(what.plausible, dimension, text)
    faults.add(f"{where}: '{plain(text)}' cannot be the {what.says}; {bounds}")
    return None


def measured_value(each: Checked[FindingEntry], word: Measure, faults: Faults) -> float | None:
    """A measured figure in SI; None where it is not known, or with a fault."""
    dimension, text = DIMENSIONS[word.dimension], each.table.value
    if text is None:
        if each.table.state != "unknown" and not each.broken & {"state", "value"}:
            right = f"write value = '{dimension.spellings[0]}'"
            faults.add(f"{each.where}: '{word.id}' is measured; {right}")
        return None
    value = quantity(text, dimension, each.where, faults)
    if value is None or word.plausible[0] <= value <= word.plausible[1]:
        return value
    bounds = _bounds(word.plausible, dimension, text)
    faults.add(f"{each.where}: '{plain(text)}' cannot be a {word.says}; {bounds}")
    return None


def task_value(text: str | None, task: Task, where: str, faults: Faults) -> float | None:
    """A figure measured for a task in SI; None where there is none, or with a fault."""
    if text is None or not task.dimension:
        return None
    value = quantity(text, DIMENSIONS[task.dimension], where, faults)
    if value is not None and value < 0.0:
        faults.add(f"{where}: '{plain(text)}' cannot be below zero")
        return None
    return value


def gauge_reading(each: Checked[ReadingEntry], faults: Faults) -> Iterator[GaugeReading]:
    """The reading in SI, or nothing and faults."""
    entry, got = each.table, dict(_figures(each, faults))
    if {"rpm", "pressure"} <= got.keys():
        temperature, error = got.get("oil"), got.get("error")
        reading = Reading(
            got["rpm"], temperature, got["pressure"], entry.gauge, entry.tap, error, entry.when
        )
        usual = Stage.KNOWN if entry.gauge == "panel" else Stage.OUTSIDE
        yield GaugeReading(entry, reading, Stage(entry.learned) if entry.learned else usual)


def healthy_reading(each: Checked[BaselineEntry], faults: Faults) -> Iterator[BaselineReading]:
    """A pressure of the sound engine in SI, or nothing and faults."""
    entry, got = each.table, dict(_figures(each, faults, ("rpm", "oil", "pressure")))
    if {"rpm", "oil", "pressure"} <= got.keys():
        error = got.get("error")
        reading = Reading(got["rpm"], got["oil"], got["pressure"], "direct", entry.tap, error)
        yield BaselineReading(entry, reading)


def _figures(
    each: Checked[Any], faults: Faults, needed: Collection[str] = ("rpm", "pressure")
) -> Iterator[tuple[str, float]]:
    """Each figure that can be; what is ``needed`` and missing is a fault."""
    for key, (dimension, (low, high)) in _FIGURES.items():
        text = getattr(each.table, key)
        if text is None:
            if key in needed and key not in each.broken:
                faults.add(f"{each.where}: {key} is missing")
            continue
        value = quantity(text, dimension, f"{each.where}: {key}", faults)
        if value is not None and low <= value <= high:
            yield key, value
        elif value is not None:
            bounds = _bounds((low, high), dimension, text)
            faults.add(f"{each.where}: {key} '{plain(text)}' cannot be right; {bounds}")


def _bounds(bounds: tuple[float, float], dimension: Dimension, text: str) -> str:
    """What can be, in the unit the person used."""
    low, high = (show(v, dimension, unit_in(text, dimension)) for v in bounds)
    return f"expected {low} to {high}"

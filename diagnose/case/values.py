"""Read values with units and check that they are plausible; every fault is collected."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from diagnose.case.case import GaugeReading
from diagnose.case.file_faults import Faults, bounds_in_words, quantity, within
from diagnose.case.gauge_looks import USUAL_SPEEDS, look
from diagnose.case.schema import Checked, FindingEntry, ReadingEntry
from diagnose.errors import plain
from knowledge.limits import Limit
from knowledge.model import Gauge, Measure, Quantity, Stage
from knowledge.reports.when import Speeds
from knowledge.units import DIMENSIONS
from knowledge.work import Task


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
    if value is None or within(value, what.plausible):
        return value
    bounds = bounds_in_words(what.plausible, dimension, text)
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
    if value is None or within(value, word.plausible):
        return value
    bounds = bounds_in_words(word.plausible, dimension, text)
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


def gauge_reading(
    each: Checked[ReadingEntry], faults: Faults, of: Speeds = USUAL_SPEEDS
) -> Iterator[GaugeReading]:
    """The reading in SI, or nothing and faults; ``of``: the speeds of the case's engine."""
    entry = each.table
    reading = look(each, faults, of)
    if reading is not None:
        gauge = Gauge(entry.gauge)
        usual = Stage.KNOWN if gauge is Gauge.PANEL else Stage.OUTSIDE
        reading = replace(reading, gauge=gauge, when=entry.when)
        yield GaugeReading(entry, reading, Stage(entry.learned) if entry.learned else usual)

"""The units one job is written in."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import chain

from diagnose.case.case import Case
from diagnose.case.pressures import pressure_unit
from diagnose.case.schema import BaselineEntry, ReadingEntry
from knowledge.units import (
    DIMENSIONS,
    FORCE,
    LENGTH,
    PRESSURE,
    TEMPERATURE,
    TORQUE,
    Dimension,
    show,
    unit_in,
    unit_named,
)

#: what goes with a unit of pressure where a job has no figure of a dimension yet
WITH_PSI: Mapping[str, str] = {LENGTH.id: "in", TORQUE.id: "lb-ft", FORCE.id: "lbf"}
WITH_BAR: Mapping[str, str] = {LENGTH.id: "mm", TORQUE.id: "N·m", FORCE.id: "N"}
_PSI = unit_named("psi", PRESSURE)


@dataclass(frozen=True, slots=True)
class JobUnits:
    """The unit last written for each dimension, by the dimension's id."""

    names: Mapping[str, str]

    def of(self, dimension: Dimension) -> str | None:
        """The name of the unit as it was written; None where the job has no such figure yet."""
        return self.names.get(dimension.id)

    def shown_in(self, dimension: Dimension) -> str | None:
        """The unit a figure is shown in: its own, else what goes with the job's pressures.

        >>> JobUnits({"pressure": "psi"}).shown_in(TORQUE), JobUnits({"pressure": "bar"}).shown_in(TORQUE)
        ('lb-ft', 'N·m')
        """
        own, pressure = self.of(dimension), self.of(PRESSURE)
        if own is not None or pressure is None:
            return own
        usual = WITH_PSI if unit_named(pressure, PRESSURE) is _PSI else WITH_BAR
        return usual.get(dimension.id)

    def show(self, si: float, dimension: Dimension, digits: int = 3) -> str:
        """A figure in the unit of the job, else the dimension's first.

        >>> JobUnits({"temperature": "F"}).show(363.15, TEMPERATURE)
        '194 F'
        """
        return show(si, dimension, self.shown_in(dimension), digits)


def units_of(case: Case) -> JobUnits:
    """The units of a case: of its engine's card and figures, then of what was entered, the last first."""
    on_card = {name: unit for name in DIMENSIONS if (unit := case.unit(name))}
    return JobUnits(on_card | {d.id: unit for text, d in _texts(case) if (unit := _unit(text, d))})


def _unit(text: str, dimension: Dimension) -> str | None:
    return pressure_unit(text) if dimension is PRESSURE else unit_in(text, dimension)


def _texts(case: Case) -> Iterator[tuple[str, Dimension]]:
    """Every figure as it was written, in the order in which it counts."""
    for limit in case.limits:
        yield case.engine.limits.get(limit.id, ""), DIMENSIONS[limit.dimension]
    for quantity in case.dimensions:
        yield case.engine.dimensions.get(quantity.id, ""), DIMENSIONS[quantity.dimension]
    for base in case.baseline:
        yield from _of_reading(base.entry)
    for work in case.task_records:
        if work.entry.value and work.task.dimension:
            yield work.entry.value, DIMENSIONS[work.task.dimension]
    for bearing in case.bearings.found.values():
        if unit := bearing.unit or bearing.fine_unit:
            yield f"1 {unit}", LENGTH
    for each in case.measurements:
        yield each.entry.value or "", DIMENSIONS[each.measure.dimension]
    for read in chain(case.start_readings, case.readings):
        yield from _of_reading(read.entry)


def _of_reading(entry: ReadingEntry | BaselineEntry) -> Iterator[tuple[str, Dimension]]:
    yield entry.pressure or "", PRESSURE
    yield entry.coolant or "", TEMPERATURE
    yield entry.oil or "", TEMPERATURE

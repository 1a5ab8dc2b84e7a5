"""What a value comes to the moment it is recorded: within limits, or beyond by how much."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence

from diagnose.case.case import Case, GaugeReading, Measurement, TaskRecord
from diagnose.case.pressures import pressure_unit
from diagnose.case.writing import Appended
from diagnose.output.documents.limits import source_title
from diagnose.signoff.judging import NO_FIGURE, OWN, EngineFigures, figures, judged
from diagnose.signoff.measured import (
    Bound,
    below_rule,
    idle_bounds,
    measured_bounds,
    reading_bounds,
)
from knowledge.book import Book
from knowledge.limits import Side
from knowledge.model import Measure
from knowledge.units import DIMENSIONS, LENGTH, Dimension, show, unit_in, unit_named

NO_LIMIT = "no limit in the book; the engine maker's figure decides"
FAR = 5.0  #: times a limit: a wrong unit or a slip of the pen is likelier (judgement)
_BRACKETS = re.compile(r"\s*\([^()]*\)")
_PAST = {Side.LEAST: "under", Side.MOST: "over", Side.NOMINAL: "off"}
_BOUNDS = {Side.LEAST: "at least", Side.MOST: "at most", Side.NOMINAL: "should be"}


def verdicts(saved: Appended, book: Book) -> Mapping[int, str]:
    """Return the verdict on each new value and reading, by the number of its entry."""
    first, after = saved.first_number, saved.after
    found: dict[int, str] = {}
    named: set[Measure] = set()  # whose limits and sources were said
    for measured in after.measurements:
        if measured.entry.no >= first:
            brief = measured.measure in named
            found[measured.entry.no] = _of_measurement(measured, after, book, brief=brief)
            named.add(measured.measure)
    for work in after.task_records:
        if work.entry.no >= first and work.value is not None:
            found[work.entry.no] = _of_task(work, after)
    for reading in (*after.readings, *after.start_readings):
        if reading.entry.no >= first and (said := _of_reading(reading, after)):
            found[reading.entry.no] = said
    return found


def _of_measurement(measured: Measurement, case: Case, book: Book, *, brief: bool) -> str:
    """A measured value beside its limits; ``brief``: they were named with another value."""
    measure, quantity = measured.measure, measured.measure.quantity
    dimension = DIMENSIONS[measure.dimension]
    unit = unit_in(measured.entry.value or "", dimension)
    if every := measured_bounds(measure, measured.value, case, book):
        return _sentence(every, dimension, unit, brief=brief)
    own = case.card.values.get(quantity.id) if case.card else None
    if own is not None and own.middle is not None:
        return _beside(measured.value, own.middle, dimension, unit)
    return NO_FIGURE if any(book.limits_of(quantity)) else NO_LIMIT


def _of_task(work: TaskRecord, case: Case) -> str:
    """The verdict on a measured task, with what the figure used first accepts."""
    answer = judged(work.task, work, EngineFigures.of(case))
    said = f"{answer.verdict.value}: {answer.because}"
    if not answer.compared:
        return said
    unit = unit_in(work.entry.value or "", DIMENSIONS[work.task.dimension])
    return f"{said} ({figures(answer.compared[0].band, work.task, unit)})"


def _of_reading(read: GaugeReading, case: Case) -> str:
    """A gauge reading beside the limits at its speed and heat; empty where none holds there.

    Between idle and 2000 rpm no limit is printed: what idle needs is the least there.
    """
    dimension, unit = DIMENSIONS["pressure"], pressure_unit(read.entry.pressure or "")
    every = reading_bounds(read.reading, case)
    if not every:
        least = idle_bounds(read.reading, case)
        return f"beside what idle needs: {_sentence(least, dimension, unit)}" if least else ""
    said = _sentence(every, dimension, unit)
    wanted = below_rule(read.reading, case)
    if wanted is None or any(bounds[0].broken for bounds in every):
        return said
    figure, at = shown(wanted, dimension, unit), f"{read.reading.rpm:.0f} rpm"
    return f"{said}; yet 10 psi for each 1000 rpm asks for {figure} at {at}"


def _beside(value: float, own: float, dimension: Dimension, unit: str | None) -> str:
    """A value beside the figure on the engine's card, of a quantity without limits in the book."""
    off = value - own
    by = f"; {_by(abs(off), dimension, unit)} {'over' if off > 0 else 'under'} it" if off else ""
    return f"should be {shown(own, dimension, unit)} ({OWN.title}){by}"


def _sentence(
    every: Sequence[Sequence[Bound]],
    dimension: Dimension,
    unit: str | None,
    *,
    brief: bool = False,
) -> str:
    """The limit that is broken and by how much; else each limit the value keeps.

    ``brief``: without limits kept and sources, which stand with another value already.
    """
    for bounds in every:
        if bounds[0].broken:
            return _broken(bounds, dimension, unit, brief=brief)
    if brief:
        return "within limits"
    kept = "; ".join(_kept(bounds, dimension, unit) for bounds in every)
    is_one_figure = every[0][0].limit.side is Side.NOMINAL
    return kept if is_one_figure else f"within limits: {kept}"


def _broken(bounds: Sequence[Bound], dimension: Dimension, unit: str | None, *, brief: bool) -> str:
    first = bounds[0]
    by = _by(first.beyond, dimension, unit)
    says = f"{_PAST[first.limit.side]} the limit of {shown(first.figure, dimension, unit)} by {by}"
    if not brief:
        says += f" ({_named(first)})"
    if first.near:
        says += ", within the measuring error"
    if _is_far(first):
        says += "; so far off is rare: check the figure and its unit"
    if not brief and (passing := [b for b in bounds[1:] if not b.broken]):
        other = passing[0]
        says += (
            f"; within the {shown(other.figure, dimension, unit)} of another source "
            f"({_named(other)}): the engine maker's figure decides"
        )
    return says


def _is_far(bound: Bound) -> bool:
    """Whether a length is so many times above or below its limit that a slip is likelier."""
    value = bound.figure + (bound.beyond if bound.limit.side is Side.MOST else -bound.beyond)
    less, more = sorted((value, bound.figure))
    return bound.limit.dimension == LENGTH.id and more >= FAR * less


def _kept(bounds: Sequence[Bound], dimension: Dimension, unit: str | None) -> str:
    first = bounds[0]
    says = f"{_BOUNDS[first.limit.side]} {shown(first.figure, dimension, unit)} ({_named(first)})"
    if first.near and first.limit.side is not Side.NOMINAL:
        says += ", but within the measuring error of it"
    if first.limit.side is Side.NOMINAL and not first.near:
        says += f"; {_by(first.beyond, dimension, unit)} off it"
    if against := [b for b in bounds[1:] if b.broken]:
        other = against[0]
        says += (
            f"; another source would refuse it at {shown(other.figure, dimension, unit)} "
            f"({_named(other)})"
        )
    return says


def _named(bound: Bound) -> str:
    """What a figure is for, and its source without what its title has in brackets."""
    source = bound.source.title if bound.source is OWN else source_title(bound.source)
    source = _BRACKETS.sub("", source)
    return "; ".join(filter(None, (bound.of, source)))


#: decimals worth saying, by the unit: what a workshop can read
DECIMALS = {"in": 4, "thou": 1, "mm": 3, "psi": 0, "bar": 1}


def shown(si: float, dimension: Dimension, unit: str | None) -> str:
    """A figure no finer than it can be read.

    >>> from knowledge.units import LENGTH
    >>> shown(0.15e-3, LENGTH, "in"), shown(0.15e-3, LENGTH, "thou"), shown(0.15e-3, LENGTH, "mm")
    ('0.0059 in', '5.9 thou', '0.15 mm')
    """
    named = (unit_named(unit, dimension) if unit else None) or dimension.units[0]
    decimals = next((d for name, d in DECIMALS.items() if name in named.names), None)
    if decimals is None:
        return show(si, dimension, unit)
    value = round((si - named.offset) / named.factor, decimals) * named.factor + named.offset
    return show(value, dimension, unit, 6)


def _by(difference: float, dimension: Dimension, unit: str | None) -> str:
    """A difference in a unit; one of 2 K is one of 2 C."""
    used = (unit_named(unit, dimension) if unit else None) or dimension.units[0]
    least = next((10.0**-d for name, d in DECIMALS.items() if name in used.names), 0.0)
    if difference < 0.5 * least * used.factor:
        return f"less than {least:g}"
    return shown(difference + used.offset, dimension, unit).split(" ", 1)[0]

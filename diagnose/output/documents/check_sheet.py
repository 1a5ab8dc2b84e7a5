"""The document of one check as it is done: steps, cautions, and what to answer."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass

from diagnose.case.case import Case
from diagnose.case.units import units_of as units_written
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.cautions import cautions
from diagnose.output.documents.limits import limits_of, source_title
from diagnose.output.documents.opening_step import OpeningStep, opening_step
from diagnose.output.lines import duration
from knowledge.model import Finding, Kind, Measure, State
from knowledge.units import DIMENSIONS, LENGTH, METRIC_LENGTHS, Dimension, unit_named
from knowledge.work import Inspection

SAID = {State.PRESENT: "yes", State.ABSENT: "no"}
MOST_UNITS = 5


@dataclass(frozen=True, kw_only=True)
class FindingAsked:
    """A finding to answer; texts may be empty."""

    id: str
    asks: str
    normal: str
    said: str  #: "yes", "no" or empty: what stands in the case


@dataclass(frozen=True, kw_only=True)
class ValueAsked:
    """A value to measure; ``stands``: what is recorded already, each with its place."""

    id: str
    says: str
    units: tuple[str, ...]
    unit: str  #: the one to offer first
    limits: str
    stands: tuple[str, ...]


@dataclass(frozen=True, kw_only=True)
class CheckSheet:
    """One check as it is done; texts may be empty."""

    inspection: str
    says: str
    minutes: float  #: hands-on, without what must be opened
    opens: tuple[OpeningStep, ...]
    keep: str  #: what to record before it is disturbed
    destroys: str
    waits: str
    needs_running: bool
    tools: tuple[str, ...]
    cautions: tuple[str, ...]
    steps: tuple[str, ...]
    findings: tuple[FindingAsked, ...]
    values: tuple[ValueAsked, ...]
    takes_readings: bool
    source: str

    @property
    def keep_first(self) -> tuple[str, ...]:
        """Everything to record before it is disturbed, in the order of the work."""
        return tuple(dict.fromkeys(k for k in (*(o.keep for o in self.opens), self.keep) if k))


def check_sheet(
    diagnosis: Diagnosis, inspection: Inspection, first: Iterable[str] = ()
) -> CheckSheet:
    """Build the sheet of a check of the book; ``first``: findings to ask before the others."""
    tree, opened = diagnosis.planner.tree, diagnosis.planner.opened
    still = tree.way(inspection.access, opened) or ()
    way = [o for o in still if tree.minutes(o.access) or o.keep]
    case = diagnosis.case
    kinds = [c for o in way for c in o.cautions] + list(inspection.cautions)
    return CheckSheet(
        inspection=inspection.id,
        says=inspection.says,
        minutes=inspection.minutes,
        opens=tuple(opening_step(o, tree.minutes(o.access)) for o in way),
        keep=inspection.keep,
        destroys=inspection.destroys,
        waits=duration(inspection.waits_minutes) if inspection.waits_minutes else "",
        needs_running=inspection.needs_running,
        tools=inspection.tools,
        cautions=tuple(cautions(kinds, diagnosis)),
        steps=inspection.steps_on(case.has),
        findings=_findings(inspection, case, tuple(first)),
        values=tuple(_value(m, case) for m in inspection.measures),
        takes_readings=inspection.takes_readings,
        source=source_title(inspection.source),
    )


def _findings(
    inspection: Inspection, case: Case, first: Collection[str]
) -> tuple[FindingAsked, ...]:
    """What a check shows, as questions: those named first in their order, then the rest."""
    seen = {
        r.finding: SAID[r.observation.state]
        for r in case.finding_records
        if r.observation is not None
    }
    order = {id_: place for place, id_ in enumerate(first)}
    shown = sorted(inspection.reveals, key=lambda f: order.get(f.id, len(order)))
    return tuple(
        FindingAsked(id=f.id, asks=f.asks, normal=f.normal, said=seen.get(f, ""))
        for f in shown
        if f.kind is not Kind.LAYOUT and not _built_otherwise(f, case)
    )


def _built_otherwise(finding: Finding, case: Case) -> bool:
    return case.known_features.get(finding) is State.ABSENT


def _value(measure: Measure, case: Case) -> ValueAsked:
    taken = [m for m in case.measurements if m.measure is measure]
    units = units_of(measure.dimension)
    unit = offered_unit(DIMENSIONS[measure.dimension], measure.quantity.unit, case)
    if taken:
        typed = (taken[-1].entry.value or "").split()
        unit = typed[-1] if typed and typed[-1] in units else unit
    return ValueAsked(
        id=measure.id,
        says=measure.says,
        units=units if unit in units else (unit, *units),
        unit=unit,
        limits=limits_of(measure, case),
        stands=tuple(
            (m.entry.value or "") + (f" at {m.entry.where}" if m.entry.where else "") for m in taken
        ),
    )


def units_of(dimension: str) -> tuple[str, ...]:
    """The usual units of a dimension, each by its first name, the preferred first."""
    return tuple(unit.names[0] for unit in DIMENSIONS[dimension].units[:MOST_UNITS])


def offered_unit(dimension: Dimension, usual: str | None, case: Case) -> str:
    """The unit to offer first: the one the job is written in, else ``usual`` or the preferred.

    Of lengths there are large and small ones: the usual one stays where it is of the same system.
    """
    first = usual or units_of(dimension.id)[0]
    written = units_written(case).shown_in(dimension)
    named = unit_named(written, dimension) if written else None
    if named is None:
        return first
    name = named.names[0]
    if dimension is not LENGTH:
        return name
    if (name in METRIC_LENGTHS) == (first in METRIC_LENGTHS):
        return first
    return "mm" if name in METRIC_LENGTHS else "in"

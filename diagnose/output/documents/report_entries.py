"""A job's entries as its report shows them: findings, measurements, readings, checks, the end."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime

from diagnose.case.case import Case, FindingRecord, GaugeReading, Measurement
from diagnose.case.gauge_looks import heat_as_given, speed_as_given
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.limits import limits_of
from diagnose.output.lines import duration
from diagnose.output.scale import scale_of
from knowledge.model import Stage, State
from knowledge.units import DIMENSIONS, show, unit_in
from knowledge.work import Inspection

HOW = {Stage.KNOWN: "said", Stage.OUTSIDE: "outside", Stage.OPENED: "opened"}
STATES = {"present": "yes", "absent": "no"}


@dataclass(frozen=True, kw_only=True)
class ReportFinding:
    """A finding as it was entered; texts may be empty."""

    day: str
    says: str
    said: str
    there: bool
    how: str
    where: str
    by: str
    note: str


@dataclass(frozen=True, kw_only=True)
class ReportMeasurement:
    """A measured value with its limits; texts may be empty."""

    day: str
    says: str
    value: str
    limits: str
    where: str
    note: str


@dataclass(frozen=True, kw_only=True)
class ReportReading:
    """A gauge reading in the case's units."""

    day: str
    rpm: str
    heat: str
    pressure: str
    gauge: str
    tap: str
    start: bool  #: taken at first start


@dataclass(frozen=True, kw_only=True)
class CheckMade:
    """A check that was made, and what it showed."""

    day: str
    says: str
    shown: tuple[str, ...]
    not_there: tuple[str, ...]


@dataclass(frozen=True, kw_only=True)
class Closing:
    """The end of the job; texts may be empty."""

    causes: str
    how: str
    remedy: str
    of_the_book: bool  #: nobody said what was done: it is what the book calls for
    reason: str
    day: str
    by: str
    spent: str
    planned: str

    @property
    def heads_remedy(self) -> str:
        """What stands before the remedy."""
        return "Called for" if self.of_the_book else "Done"


def day(when: date | datetime | None) -> str:
    """A day as the case file writes it; empty where there is none.

    >>> day(datetime(2026, 6, 2, 9, 30)), day(None)
    ('2026-06-02', '')
    """
    if isinstance(when, datetime):
        when = when.date()
    return when.isoformat() if when else ""


def closing(case: Case) -> Closing | None:
    """The end of the job; None while it is open."""
    if case.closed is None:
        return None
    entry = case.closed.entry
    return Closing(
        causes=" and ".join(c.says for c in case.closed.causes),
        how=entry.how,
        remedy=entry.remedy,
        of_the_book=entry.remedy == "; ".join(c.remedy for c in case.closed.causes),
        reason=entry.reason,
        day=day(entry.when),
        by=entry.by,
        spent=_minutes(case.closed.minutes),
        planned=_minutes(case.closed.planned),
    )


def _minutes(value: float | None) -> str:
    return "" if value is None else duration(value)


def report_finding(seen: FindingRecord) -> ReportFinding:
    """Build the row of an observed finding."""
    entry = seen.entry
    said = STATES.get(entry.state or "", entry.value or "")
    sure = "" if entry.sure is None else f" ({entry.sure:.0%} sure)"
    return ReportFinding(
        day=day(entry.when),
        says=seen.finding.says,
        said=said + sure,
        there=_is(seen, State.PRESENT),
        how=HOW[seen.stage],
        where=entry.where,
        by=entry.by,
        note=entry.note,
    )


def _is(seen: FindingRecord, state: State) -> bool:
    return seen.observation is not None and seen.observation.state is state


def report_measurement(one: Measurement, case: Case) -> ReportMeasurement:
    """Build the row of a measured value, its limits in the unit it was measured in."""
    entry, dimension = one.entry, DIMENSIONS[one.measure.dimension]
    return ReportMeasurement(
        day=day(entry.when),
        says=one.measure.says,
        value=entry.value or show(one.value, dimension),
        limits=limits_of(one.measure, case, unit_in(entry.value or "", dimension)),
        where=entry.where,
        note=entry.note,
    )


def report_reading(read: GaugeReading, case: Case) -> ReportReading:
    """Build the row of a gauge reading."""
    reading, entry = read.reading, read.entry
    pressure = entry.pressure or scale_of(case).one(reading.pressure)
    return ReportReading(
        day=day(entry.when),
        rpm=speed_as_given(entry, reading),
        heat=heat_as_given(entry, reading),
        pressure=f"{pressure} (usually {entry.usual})" if entry.usual else pressure,
        gauge=reading.gauge,
        tap=reading.tap,
        start=entry.at == "start",
    )


def checks_made(case: Case, diagnosis: Diagnosis) -> dict[Inspection, list[FindingRecord]]:
    """The checks that were made, in the order of the entries."""
    looked = [
        s for s in case.finding_records if s.stage is not Stage.KNOWN and s.observation is not None
    ]
    wanted = {s.finding for s in looked}
    checks = sorted(
        diagnosis.book.inspections.values(),
        key=lambda i: (-len(wanted.intersection(i.reveals)), i.minutes, i.id),
    )
    made: dict[Inspection, list[FindingRecord]] = {}
    for seen in sorted(looked, key=lambda s: s.entry.no):
        check = next((c for c in checks if seen.finding in c.reveals), None)
        if check is not None:
            made.setdefault(check, []).append(seen)
    return made


def check_made(check: Inspection, finding_records: Sequence[FindingRecord]) -> CheckMade:
    """Build the row of a check from what was entered for it."""
    return CheckMade(
        day=day(finding_records[0].entry.when),
        says=check.says,
        shown=tuple(s.finding.says for s in finding_records if _is(s, State.PRESENT)),
        not_there=tuple(
            s.finding.stated(there=False) for s in finding_records if _is(s, State.ABSENT)
        ),
    )

"""Whether the engine lies open, by its measured bearings or because somebody says so."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.case.case import Case
from diagnose.fits.bearing import Kind
from knowledge.history.findings_apart import ENGINE_APART
from knowledge.model import State
from knowledge.stations.bearings.findings_measured import (
    MEASURED_MAIN_CLEARANCE,
    MEASURED_ROD_CLEARANCE,
)
from knowledge.work import Access


def open_for_bearings(case: Case) -> frozenset[Access]:
    """What was open as the bearings were measured: of mains by micrometer, the crank is out.

    The clearance of one main or rod, and nothing read since, was taken with its cap off.
    """
    strip = max(_one_clearance(case), default=0) > max(_ran(case), default=0)
    return frozenset({Access.CAP_OFF} if strip else ()) | frozenset(
        Access.CRANK_OUT
        if bearing.place.kind is Kind.MAIN and (bearing.readings.journal or bearing.readings.inside)
        else Access.CAP_OFF
        for bearing in case.bearings.found.values()
        if bearing.entry is not None
    )


def is_apart(case: Case) -> bool:
    """Whether it is said to be apart or bearings were measured, and nothing was read since.

    What was reported to run counts as read.
    """
    known = [*_said(case), *_measured(case)]
    return max(known, default=0) > max(_ran(case), default=0)


def is_out(case: Case) -> bool:
    """Whether the engine is out of its place: somebody says so, and it has not run since."""
    return max(_said(case), default=0) > max(_ran(case), default=0)


def _said(case: Case) -> Iterator[int]:
    """The number of each entry that says the engine is out or apart."""
    for record in case.finding_records:
        there = record.observation is not None and record.observation.state is State.PRESENT
        if record.finding is ENGINE_APART and there:
            yield record.entry.no


def _measured(case: Case) -> Iterator[int]:
    """The number of each entry that measured one bearing."""
    if not open_for_bearings(case):
        return
    for table in (case.bearings.found, case.bearings.fitted):
        yield from (b.entry.no for b in table.values() if b.entry is not None)


def _one_clearance(case: Case) -> Iterator[int]:
    """The number of each entry that gives the clearance of one named bearing."""
    for taken in case.measurements:
        if taken.measure in (MEASURED_MAIN_CLEARANCE, MEASURED_ROD_CLEARANCE) and taken.entry.where:
            yield taken.entry.no


def _ran(case: Case) -> Iterator[int]:
    """The number of each entry that says how the engine ran."""
    yield from (r.entry.no for r in (*case.readings, *case.start_readings))
    yield from (b.entry.no for b in case.behaviours)

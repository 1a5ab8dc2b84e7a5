"""Whether the engine lies open, by its measured bearings.

Imported by ``diagnosis`` and ``check_planner``.
"""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.case.case import Case
from diagnose.fits.bearing import Kind
from knowledge.work import Access


def open_for_bearings(case: Case) -> frozenset[Access]:
    """What was open as the bearings were measured: of mains by micrometer, the crank is out."""
    return frozenset(
        Access.CRANK_OUT
        if bearing.place.kind is Kind.MAIN and (bearing.readings.journal or bearing.readings.inside)
        else Access.CAP_OFF
        for bearing in case.bearings.found.values()
        if bearing.entry is not None
    )


def is_apart(case: Case) -> bool:
    """Whether bearings were measured one by one, and nothing was read or reported to run since."""
    measured = [
        b.entry.no
        for table in (case.bearings.found, case.bearings.fitted)
        for b in table.values()
        if b.entry is not None
    ]
    return bool(open_for_bearings(case)) and max(measured) > max(_ran(case), default=0)


def _ran(case: Case) -> Iterator[int]:
    """The number of each entry that says how the engine ran."""
    yield from (r.entry.no for r in (*case.readings, *case.start_readings))
    yield from (b.entry.no for b in case.behaviours)

"""What the latest findings changed: two plans of one case, side by side."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from diagnose.case.case import FindingRecord
from diagnose.teardown.plan import Plan
from knowledge.model import Cause
from knowledge.work import Inspection

MOVED = 0.03  #: a cause whose probability changed less is left out


@dataclass(frozen=True, slots=True)
class CauseChange:
    """A cause before and after."""

    cause: Cause
    before: float
    after: float


@dataclass(frozen=True)
class Changes:
    """The plan before and after the entries numbered above ``since``."""

    since: int
    before: Plan
    after: Plan

    @cached_property
    def new_findings(self) -> tuple[FindingRecord, ...]:
        """The findings entered since."""
        return tuple(s for s in self.after.answer.case.finding_records if s.entry.no > self.since)

    @cached_property
    def cause_changes(self) -> tuple[CauseChange, ...]:
        """The causes whose probability changed, largest change first."""
        was = {r.cause: r.probability for r in self.before.answer.ranking}
        now = [
            CauseChange(r.cause, was.get(r.cause, 0.0), r.probability)
            for r in self.after.answer.ranking
        ]
        now = [m for m in now if abs(m.after - m.before) >= MOVED]
        return tuple(sorted(now, key=lambda m: -abs(m.after - m.before)))

    @property
    def dropped(self) -> tuple[Inspection, ...]:
        """Checks that were planned, are not done, and are no longer needed."""
        done = self.after.answer.planner.answered
        now = set(_checks(self.after))
        return tuple(i for i in _checks(self.before) if i not in now and not set(i.reveals) <= done)

    @property
    def added(self) -> tuple[Inspection, ...]:
        """Checks that were not planned before."""
        was = set(_checks(self.before))
        return tuple(i for i in _checks(self.after) if i not in was)


def _checks(plan: Plan) -> list[Inspection]:
    return [c.inspection for stage in plan.stages for c in stage.checks]

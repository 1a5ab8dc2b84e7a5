"""Rate questions by their expected gain about the cause, and see which could change the next check."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Generic, TypeVar

from diagnose.planning.choosing import Chooser
from diagnose.planning.options import PlanState
from diagnose.planning.single_cause import SingleCauseModel, gain, outcomes, telling
from knowledge.model import Finding

AnyQuestion = TypeVar("AnyQuestion")

LEAST_BITS = 0.01  #: less is not worth a question
LIKELY_ANSWER = 0.05  #: rarer answers are not followed up
#: what the bits of a question are divided by: how often a person must pass (judgement)
KNOWN_EFFORT = 1.0
LOOK_EFFORT = 2.5  #: a look from outside, without tools
TRIAL_EFFORT = 4.0  #: one trial in four was made by the person who is asked
CHECK_EFFORT = 6.0  #: a check with tools is seldom done before anybody asks for advice


@dataclass(frozen=True, slots=True)
class Candidate(Generic[AnyQuestion]):
    """A question, the findings it asks for, and what its bits are divided by."""

    question: AnyQuestion
    findings: tuple[Finding, ...]
    effort: float = KNOWN_EFFORT

    def bits(self, table: SingleCauseModel) -> float:
        """Expected bits about the cause, by effort."""
        known = [f.id for f in self.findings if f.id in table.shows]
        return gain(table.weight, outcomes(table, known)) / self.effort if known else 0.0


def most_telling(
    table: SingleCauseModel, findings: Iterable[Finding], most: int
) -> tuple[Finding, ...]:
    """The findings of largest gain, each by itself."""
    by_id = {f.id: f for f in findings if f.id in table.shows}
    return tuple(by_id[name] for name in telling(table, table.weight, list(by_id))[:most])


def by_value(
    candidates: Iterable[Candidate[AnyQuestion]], table: SingleCauseModel
) -> list[Candidate[AnyQuestion]]:
    """The questions worth asking, of most bits first; the first of equals in the given order."""
    rated = [(c.bits(table), c) for c in candidates]
    worth = [(bits, c) for bits, c in rated if bits >= LEAST_BITS]
    return [c for _, c in sorted(worth, key=lambda pair: -pair[0])]


@dataclass(frozen=True, eq=False)
class NextCheck:
    """What would be checked next in a state of the job, one step deep."""

    table: SingleCauseModel
    chooser: Chooser
    state: PlanState

    @cached_property
    def now(self) -> str | None:
        """What is checked next as things stand, by its id; None where nothing is left."""
        return self._check_chosen(self.state)

    def changed_by(self, findings: Sequence[Finding]) -> bool:
        """Whether a likely answer about these findings makes another check the next one."""
        known = [f for f in findings if f.id in self.table.shows]
        for row in outcomes(self.table, [f.id for f in known]) * self.state.weight:
            chance = float(row.sum())
            if chance < LIKELY_ANSWER:
                continue
            answered = self.state.answered.union(known)
            after = replace(self.state, weight=row / chance, answered=answered)
            if self._check_chosen(after) != self.now:
                return True
        return False

    def _check_chosen(self, state: PlanState) -> str | None:
        choice = self.chooser.choose(state, deep=False)
        return None if choice is None else choice.inspection.id

"""The planner's values: the state of a job, what may be done, what is chosen."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.planning.outcome_tables import OutcomeTable
from diagnose.planning.single_cause import Array
from knowledge.access import Opening
from knowledge.model import Finding
from knowledge.work import Access, Inspection


@dataclass(frozen=True, slots=True, eq=False)
class PlanState:
    """The state of a job: beliefs, answered findings, open places, checks done."""

    weight: Array  #: probability of each cause of the single-cause model
    answered: frozenset[Finding]
    opened: frozenset[Access]
    done: frozenset[Inspection] = frozenset()
    minutes: float = 0.0

    @property
    def doubt(self) -> Array:
        """For each cause the chance that it is true and a draw by probability names another."""
        left: Array = self.weight * (1.0 - self.weight)
        return left


@dataclass(frozen=True, slots=True, eq=False)
class Option:
    """A check that may be done now, with what must be opened for it."""

    view: OutcomeTable
    way: tuple[Opening, ...]  #: still to open, outermost first
    minutes: float  #: hands-on, with the openings
    own: float  #: without them

    @property
    def inspection(self) -> Inspection:
        """The check itself."""
        return self.view.inspection

    @property
    def findings(self) -> tuple[Finding, ...]:
        """The open questions it answers, most telling first."""
        return self.view.findings


@dataclass(frozen=True, slots=True, eq=False)
class Choice:
    """The check to do next, why, and what else was close."""

    option: Option
    block: tuple[Inspection, ...]  #: the checks that together are worth the opening
    chance: float  #: what the block adds to the chance of naming the cause
    minutes: float  #: what the block costs
    value: float  #: chance per minute, the follow-up counted in
    runners_up: tuple[Option, ...] = ()
    evidence: str = ""  #: why it comes first, where it is for the evidence only

    @property
    def inspection(self) -> Inspection:
        """The check itself."""
        return self.option.inspection

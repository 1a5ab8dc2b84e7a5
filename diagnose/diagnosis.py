"""Diagnose a case: one frozen value gives ranking, reasons, alarms and the next check."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property

from diagnose.case.apart import is_apart
from diagnose.case.case import Case
from diagnose.case.mended import works_again
from diagnose.inference.cause_sets import Explanation
from diagnose.planning.options import Choice
from diagnose.reasoning.case_inference import CaseInference, Ranked
from diagnose.reasoning.check_planner import CheckPlanner
from diagnose.reasoning.found_faults import FoundFault, FoundFaults
from diagnose.reasoning.instrument_only import lamp_is_wrong
from diagnose.reasoning.reasons import Reasons
from knowledge.alarm import Alarm, Contradiction
from knowledge.book import Book
from knowledge.model import Severity, Stage, State
from knowledge.pressure.gauge import runs

#: of an engine that lies open
APART = Alarm(
    Severity.DO_NOT_RUN,
    "the engine is apart: start it again only once what was found is put right and every task "
    "before the first start is done; then with a trusted gauge on, and stop at a knock",
)
#: the same where metal or dirt has gone round
DIRTY = Alarm(
    Severity.DO_NOT_RUN,
    "the engine is apart: start it again only once what was found is put right, all that "
    "debris has reached is clean, and every task before the first start is done; then with a "
    "trusted gauge on, and stop at a knock",
)


@dataclass(frozen=True)
class Diagnosis:
    """The diagnosis of one case; each part is computed when first used."""

    book: Book
    case: Case
    up_to: Stage = Stage.OPENED
    learned: Mapping[str, float] | None = None  #: a shop's factor on the rate of each cause

    @cached_property
    def inference(self) -> CaseInference:
        """Rules, cause graph, evidence and posterior."""
        return CaseInference(self.book, self.case, self.up_to, self.learned)

    @cached_property
    def reasons(self) -> Reasons:
        """Weights, cause sets, contradictions, damage, unexplained findings."""
        return Reasons(self.inference)

    @cached_property
    def found(self) -> FoundFaults:
        """Faults that were seen or measured, the places debris has reached, the budget."""
        return FoundFaults(self.inference)

    @cached_property
    def planner(self) -> CheckPlanner:
        """The next check, its outcomes, and what a plan starts from."""
        return CheckPlanner(self.inference, self.may_run, self.gauge_next)

    @property
    def ranking(self) -> tuple[Ranked, ...]:
        """Every cause this engine can have, most probable first."""
        return self.inference.ranking

    @property
    def found_faults(self) -> tuple[FoundFault, ...]:
        """Faults that were seen or measured, whatever the root cause is."""
        return self.found.every

    @property
    def explanations(self) -> tuple[Explanation, ...]:
        """The three most probable sets of causes."""
        return self.reasons.explanations

    @property
    def contradictions(self) -> tuple[Contradiction, ...]:
        """Entries that do not fit together."""
        return self.reasons.contradictions

    @cached_property
    def alarms(self) -> tuple[Alarm, ...]:
        """What must be done now, most severe first; without alarms an observation has cancelled.

        None of the old fault once the mended engine has shown good pressure. While it lies open,
        what holds before it is started again, and what holds of an engine that stands.
        """
        if works_again(self.case):
            return ()
        if is_apart(self.case):
            standing = (a for a in self._alarms if a.standing)
            return (DIRTY if self.found.contaminated else APART, *standing)
        return self._alarms

    @cached_property
    def _alarms(self) -> tuple[Alarm, ...]:
        """The alarms of an engine that can be run, most severe first."""
        observations = self.inference.facts.observations
        there = {f for f, seen in observations.items() if seen.state is State.PRESENT}
        denied = observations.keys() - there
        read = any(runs(r) for r in self.inference.facts.readings)
        return tuple(
            sorted(
                (
                    a
                    for a in self.inference.result.alarms
                    if a.until not in there and a.unless_denied not in denied
                    if not (read and a.until_read)
                    if not (a.of_lamp and lamp_is_wrong(self.inference))
                    if not (a.of_pressure and self.case.without_pressure)
                ),
                key=lambda a: (_rank(a), a.says),
            )
        )

    @property
    def may_run(self) -> bool:
        """Whether no alarm forbids running the engine."""
        return all(a.severity is Severity.CARE for a in self.alarms)

    @property
    def gauge_next(self) -> bool:
        """Whether all that forbids running lets it start with a trusted gauge on."""
        return all(a.severity is Severity.CARE or a.gauge_next for a in self.alarms)

    @property
    def next_check(self) -> Choice | None:
        """The best next check; None where no remaining check is informative."""
        return self.planner.choice


def _rank(alarm: Alarm) -> float:
    """Its place among alarms: a stop that lets it run again with a gauge comes after a ban on that."""
    place = list(Severity).index(alarm.severity)
    return place + 1.5 if alarm.severity is Severity.STOP and alarm.gauge_next else float(place)

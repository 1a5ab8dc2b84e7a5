"""Forward chaining: run rules to a fixpoint and record which findings each rule asked about.

Depends on the shape of a rule, never on a certain rule.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import NamedTuple

from knowledge.alarm import Alarm, Contradiction
from knowledge.limits import Limit
from knowledge.model import Cause, Finding, Measure, Reading, State
from knowledge.reports.shapes import Behaviour, EarlierWork, TrialMade
from knowledge.rule_api import (
    Conclusion,
    Derived,
    Excluded,
    Inhibitor,
    InhibitorGroup,
    Link,
    Rule,
    Shifted,
    Statement,
)


@dataclass(frozen=True, slots=True)
class Observation:
    """The state observed of a finding, and the probability that the observation is right."""

    state: State
    sure: float = 1.0


@dataclass(frozen=True)
class Facts:
    """The observations, readings, measurements, limits and reports of a case, in SI units."""

    observations: Mapping[Finding, Observation] = field(default_factory=dict)
    readings: Sequence[Reading] = ()
    measures: Mapping[Measure, Sequence[float]] = field(default_factory=dict)
    limits: Mapping[Limit, float] = field(default_factory=dict)
    behaviours: Sequence[Behaviour] = ()
    trials: Sequence[TrialMade] = ()
    earlier: Sequence[EarlierWork] = ()

    def has(self, finding: Finding) -> bool:
        """Whether the finding was observed present."""
        seen = self.observations.get(finding)
        return seen is not None and seen.state is State.PRESENT and seen.sure >= 0.5

    def limit_figures(self, limit: Limit) -> Sequence[float]:
        """The engine's own figure alone, else every one printed for its kind, SI."""
        own = self.limits.get(limit)
        return (own,) if own is not None else [p.value for p in limit.printed(self.has)]


@dataclass(frozen=True, slots=True)
class Trace:
    """Why a conclusion was drawn: the rule, and what it read before."""

    rule: Rule
    premises: tuple[Finding, ...]  #: findings whose state the rule asked for and that had it
    measures: tuple[Measure, ...] = ()  #: measures that had a value
    read: bool = False  #: whether the rule looked at gauge readings
    reported: bool = False  #: whether it looked at behaviour, trials or earlier work


@dataclass(frozen=True)
class InferenceResult:
    """All that follows from the facts."""

    derived: dict[Derived, Trace]
    links: dict[Link, tuple[Statement, ...]]
    inhibitors: dict[Inhibitor, tuple[Statement, ...]]
    shifts: dict[tuple[Rule, Shifted], Trace]
    excluded: dict[Cause, Trace]
    alarms: dict[Alarm, Trace]
    contradictions: dict[Contradiction, Trace]
    asked: dict[Rule, tuple[Finding, ...]]

    @property
    def edges(self) -> Iterator[tuple[Link | Inhibitor, tuple[Statement, ...]]]:
        """Every link, then every inhibitor, with the statements that state it."""
        yield from self.links.items()
        yield from self.inhibitors.items()


class WorkingMemory:
    """What is known while rules run; records every question (implements ``Known``)."""

    def __init__(self, facts: Facts) -> None:
        self._facts = facts
        self._derived: dict[Finding, set[State]] = {}
        self.start_record()

    def start_record(self) -> None:
        """Clear the record of questions before another rule runs."""
        self.questions: dict[Finding, bool] = {}
        self.figures: dict[Measure, None] = {}
        self.read = False
        self.reported = False

    def has(self, finding: Finding) -> bool:
        """Whether the finding was observed present, or not observed and derived present."""
        return self._stands(finding, State.PRESENT)

    def lacks(self, finding: Finding) -> bool:
        """Whether the finding was observed absent, or not observed and derived absent."""
        return self._stands(finding, State.ABSENT)

    def readings(self) -> Sequence[Reading]:
        """Every reading of the case."""
        self.read = self.read or bool(self._facts.readings)
        return self._facts.readings

    def behaviours(self) -> Sequence[Behaviour]:
        """Every behaviour of the case."""
        self.reported = self.reported or bool(self._facts.behaviours)
        return self._facts.behaviours

    def trials(self) -> Sequence[TrialMade]:
        """Every trial of the case."""
        self.reported = self.reported or bool(self._facts.trials)
        return self._facts.trials

    def earlier_work(self) -> Sequence[EarlierWork]:
        """All earlier work of the case."""
        self.reported = self.reported or bool(self._facts.earlier)
        return self._facts.earlier

    def measured(self, measure: Measure) -> float | None:
        """The largest value of the measure, SI."""
        return max(self._values(measure), default=None)

    def smallest(self, measure: Measure) -> float | None:
        """The smallest value of the measure, SI."""
        return min(self._values(measure), default=None)

    def limit(self, limit: Limit) -> float:
        """The case's limit, else the first printed for its kind of engine, SI."""
        return self.limit_figures(limit)[0]

    def limit_figures(self, limit: Limit) -> Sequence[float]:
        """The case's limit alone, else every one printed for its kind of engine, SI."""
        return self._facts.limit_figures(limit)

    def add(self, derived: Derived) -> bool:
        """Add a derived finding; return whether it is new."""
        states = self._derived.setdefault(derived.finding, set())
        new = derived.state not in states
        states.add(derived.state)
        return new

    def _values(self, measure: Measure) -> Sequence[float]:
        values = self._facts.measures.get(measure, ())
        if values:
            self.figures[measure] = None
        return values

    def _stands(self, finding: Finding, state: State) -> bool:
        observation = self._facts.observations.get(finding)
        if observation is not None:
            stands = observation.state is state and observation.sure >= 0.5
        else:
            stands = state in self._derived.get(finding, ())
        self.questions[finding] = stands or self.questions.get(finding, False)
        return stands


def infer(statements: Iterable[Statement], facts: Facts) -> InferenceResult:
    """Run the rules to a fixpoint and add what is declared; their order has no effect.

    Rules only add, so a rule runs again only when a finding it asked about is newly derived:
    its last run gives what it concludes from the final working memory.
    """
    rules, links, inhibitors = _declared(tuple(statements))
    memory = WorkingMemory(facts)
    waiting = deque(rules)
    queued = set(rules)
    interested: dict[Finding, dict[Rule, None]] = {}
    last: dict[Rule, _Run] = {}
    while waiting:
        rule = waiting.popleft()
        queued.remove(rule)
        last[rule] = run = _run(rule, memory)
        for finding in run.asked:
            interested.setdefault(finding, {})[rule] = None
        for conclusion, _ in run.drawn:
            if isinstance(conclusion, Derived) and memory.add(conclusion):
                again = [r for r in interested.get(conclusion.finding, {}) if r not in queued]
                waiting.extend(again)
                queued.update(again)
    out = InferenceResult(
        derived={},
        links=dict(links),
        inhibitors=dict(inhibitors),
        shifts={},
        excluded={},
        alarms={},
        contradictions={},
        asked={},
    )
    for rule in rules:
        _collect(rule, last[rule], out)
    return out


class _Declared(NamedTuple):
    """The rules in order, and what is stated without a condition, with what states it."""

    rules: tuple[Rule, ...]
    links: Mapping[Link, tuple[Statement, ...]]
    inhibitors: Mapping[Inhibitor, tuple[Statement, ...]]


@lru_cache(maxsize=8)
def _declared(statements: tuple[Statement, ...]) -> _Declared:
    rules: list[Rule] = []
    links: dict[Link, tuple[Statement, ...]] = {}
    inhibitors: dict[Inhibitor, tuple[Statement, ...]] = {}
    for statement in sorted(statements, key=lambda s: (s.station, s.id)):
        if isinstance(statement, Rule):
            rules.append(statement)
        elif isinstance(statement, InhibitorGroup):
            for inhibitor in statement.inhibitors:
                inhibitors[inhibitor] = (*inhibitors.get(inhibitor, ()), statement)
        else:
            for link in statement.links:
                links[link] = (*links.get(link, ()), statement)
    return _Declared(tuple(rules), links, inhibitors)


class _Run(NamedTuple):
    """The conclusions of one run of a rule, with traces except for links; findings asked about."""

    drawn: list[tuple[Conclusion, Trace | None]]
    asked: tuple[Finding, ...]


def _run(rule: Rule, memory: WorkingMemory) -> _Run:
    memory.start_record()
    drawn: list[tuple[Conclusion, Trace | None]] = []
    for conclusion in rule.does(memory):
        trace = None
        if not isinstance(conclusion, Link):
            stood = tuple(f for f, stood in memory.questions.items() if stood)
            trace = Trace(rule, stood, tuple(memory.figures), memory.read, memory.reported)
        drawn.append((conclusion, trace))
    return _Run(drawn, tuple(memory.questions))


def _collect(rule: Rule, run: _Run, out: InferenceResult) -> None:
    for conclusion, trace in run.drawn:
        if isinstance(conclusion, Link):
            out.links[conclusion] = (*out.links.get(conclusion, ()), rule)
            continue
        assert trace is not None
        match conclusion:
            case Derived():
                out.derived.setdefault(conclusion, trace)
            case Shifted():
                out.shifts[rule, conclusion] = trace
            case Excluded(cause):
                out.excluded.setdefault(cause, trace)
            case Alarm():
                out.alarms.setdefault(conclusion, trace)
            case Contradiction():
                out.contradictions.setdefault(conclusion, trace)
    out.asked[rule] = run.asked

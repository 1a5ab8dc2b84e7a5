"""Run rules to a fixpoint, with a record of every question each rule asked.

Imported by whatever asks the rules; knows the shape of a rule, never a rule.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import NamedTuple

from knowledge.rulebook import (
    Alarm,
    Conclusion,
    Contradiction,
    Derived,
    Excluded,
    Link,
    Rule,
    Shifted,
)
from knowledge.vocabulary import Cause, Finding, Limit, Measure, Reading, State


@dataclass(frozen=True, slots=True)
class Report:
    """What was said of a finding, and how sure the person is that it is right."""

    state: State
    sure: float = 1.0


@dataclass(frozen=True)
class Facts:
    """Everything a case states, in the book's words and SI units."""

    reports: Mapping[Finding, Report] = field(default_factory=dict)
    readings: Sequence[Reading] = ()
    measures: Mapping[Measure, Sequence[float]] = field(default_factory=dict)
    limits: Mapping[Limit, float] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Trace:
    """A conclusion that was drawn, by which rule, from which findings that stood when asked.

    ``measures`` had a value when asked for; ``read`` is whether the gauge readings were looked at.
    """

    rule: Rule
    premises: tuple[Finding, ...]
    measures: tuple[Measure, ...] = ()
    read: bool = False


@dataclass(frozen=True)
class Conclusions:
    """All that follows from the facts."""

    derived: dict[Derived, Trace]
    links: dict[Link, list[Rule]]
    shifts: dict[tuple[Rule, Shifted], Trace]
    excluded: dict[Cause, Trace]
    alarms: dict[Alarm, Trace]
    contradictions: dict[Contradiction, Trace]
    asked: dict[Rule, tuple[Finding, ...]]


class Notebook:
    """What is known while rules run; writes down every question (implements ``Known``)."""

    def __init__(self, facts: Facts) -> None:
        self._facts = facts
        self._derived: dict[Finding, set[State]] = {}
        self.forget()

    def forget(self) -> None:
        """Begin a new list of questions."""
        self.questions: dict[Finding, bool] = {}
        self.figures: dict[Measure, None] = {}
        self.read = False

    def has(self, finding: Finding) -> bool:
        """Reported present, or not reported and derived present."""
        return self._stands(finding, State.PRESENT)

    def lacks(self, finding: Finding) -> bool:
        """Reported absent, or not reported and derived absent."""
        return self._stands(finding, State.ABSENT)

    def readings(self) -> Sequence[Reading]:
        """Every reading of the case."""
        self.read = self.read or bool(self._facts.readings)
        return self._facts.readings

    def measured(self, measure: Measure) -> float | None:
        """The largest value of the measure, SI."""
        return max(self._values(measure), default=None)

    def smallest(self, measure: Measure) -> float | None:
        """The smallest value of the measure, SI."""
        return min(self._values(measure), default=None)

    def limit(self, limit: Limit) -> float:
        """The case's limit, else the typical one, SI."""
        return self._facts.limits.get(limit, limit.typical)

    def add(self, derived: Derived) -> bool:
        """Note what follows; True where it was not known before."""
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
        report = self._facts.reports.get(finding)
        if report is not None:
            stands = report.state is state and report.sure >= 0.5
        else:
            stands = state in self._derived.get(finding, ())
        self.questions[finding] = stands or self.questions.get(finding, False)
        return stands


def infer(rules: Iterable[Rule], facts: Facts) -> Conclusions:
    """Everything the rules conclude; the order of the rules makes no difference.

    Rules only add, so each runs again only when a finding it asked about was derived anew: what
    it concluded when it last ran is what it concludes of the finished notebook.
    """
    rules = sorted(rules, key=lambda r: (r.station, r.id))
    notebook = Notebook(facts)
    waiting = deque(rules)
    there = set(rules)  #: those that wait
    interested: dict[Finding, dict[Rule, None]] = {}
    last: dict[Rule, _Run] = {}
    while waiting:
        rule = waiting.popleft()
        there.remove(rule)
        last[rule] = run = _run(rule, notebook)
        for finding in run.asked:
            interested.setdefault(finding, {})[rule] = None
        for conclusion, _ in run.drawn:
            if isinstance(conclusion, Derived) and notebook.add(conclusion):
                again = [r for r in interested.get(conclusion.finding, {}) if r not in there]
                waiting.extend(again)
                there.update(again)
    out = Conclusions({}, {}, {}, {}, {}, {}, {})
    for rule in rules:
        _collect(rule, last[rule], out)
    return out


class _Run(NamedTuple):
    """What a rule concluded, each with its trace but for links, and what it asked."""

    drawn: list[tuple[Conclusion, Trace | None]]
    asked: tuple[Finding, ...]


def _run(rule: Rule, notebook: Notebook) -> _Run:
    notebook.forget()
    drawn: list[tuple[Conclusion, Trace | None]] = []
    for conclusion in rule.does(notebook):
        trace = None
        if not isinstance(conclusion, Link):
            stood = tuple(f for f, stood in notebook.questions.items() if stood)
            trace = Trace(rule, stood, tuple(notebook.figures), notebook.read)
        drawn.append((conclusion, trace))
    return _Run(drawn, tuple(notebook.questions))


def _collect(rule: Rule, run: _Run, out: Conclusions) -> None:
    for conclusion, trace in run.drawn:
        if isinstance(conclusion, Link):
            out.links.setdefault(conclusion, []).append(rule)
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

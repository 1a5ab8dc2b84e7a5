"""The book's rules and links handed to CLIPS, a production-system engine, as an oracle for chaining.

A rule is a function, so its decision paths are explored: run it with answers that branch both ways,
and every way through becomes one CLIPS rule from the answers that were yes to what the function
then concludes. A group of links or inhibitors becomes one CLIPS rule without premises. Readings,
measures, limits and reports (behaviour, trials, earlier work) are answered by the case.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field

import clips

from diagnose.inference.chaining import Facts, WorkingMemory
from diagnose.inference.chaining import InferenceResult as Concluded
from knowledge.alarm import Alarm, Contradiction
from knowledge.limits import Limit
from knowledge.model import Finding, Measure, Reading, State
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

Premise = tuple[str, Finding]  #: "has" or "lacks", and of what
MOST_PATHS = 4096


@dataclass(frozen=True)
class Way:
    """One way through a rule: the answers that were yes, and what it then concludes."""

    yes: tuple[Premise, ...]
    concludes: tuple[Conclusion | Inhibitor, ...]


@dataclass
class Probe:
    """Answers has and lacks by a script, no where the script ends; all else by the case."""

    script: Sequence[bool]
    case: WorkingMemory
    answers: dict[Premise, bool] = field(default_factory=dict)
    read_case: bool = False

    def _ask(self, sort: str, finding: Finding) -> bool:
        at = len(self.answers)
        return self.answers.setdefault(
            (sort, finding), self.script[at] if at < len(self.script) else False
        )

    def has(self, finding: Finding) -> bool:
        return self._ask("has", finding)

    def lacks(self, finding: Finding) -> bool:
        return self._ask("lacks", finding)

    def readings(self) -> Sequence[Reading]:
        self.read_case = True
        return self.case.readings()

    def behaviours(self) -> Sequence[Behaviour]:
        self.read_case = True
        return self.case.behaviours()

    def trials(self) -> Sequence[TrialMade]:
        self.read_case = True
        return self.case.trials()

    def earlier_work(self) -> Sequence[EarlierWork]:
        self.read_case = True
        return self.case.earlier_work()

    def measured(self, measure: Measure) -> float | None:
        self.read_case = True
        return self.case.measured(measure)

    def smallest(self, measure: Measure) -> float | None:
        self.read_case = True
        return self.case.smallest(measure)

    def limit(self, limit: Limit) -> float:
        self.read_case = True
        return self.case.limit(limit)

    def limit_figures(self, limit: Limit) -> Sequence[float]:
        self.read_case = True
        return self.case.limit_figures(limit)


def probes(rule: Rule, facts: Facts) -> Iterator[tuple[Probe, tuple[Conclusion, ...]]]:
    """Every way through the rule: a first run all no, then each no turned into a yes."""
    case = WorkingMemory(facts)
    scripts: list[tuple[bool, ...]] = [()]
    for _ in range(MOST_PATHS):
        script = scripts.pop()
        probe = Probe(script, case)
        concluded = tuple(rule.does(probe))
        yield probe, concluded
        said = tuple(probe.answers.values())
        scripts.extend((*said[:i], True) for i in range(len(script), len(said)))
        if not scripts:
            return
    raise AssertionError(f"{rule.id}: more than {MOST_PATHS} ways through")


def ways(statement: Statement, facts: Facts | None = None) -> list[Way]:
    """The ways through a rule that conclude something; a group has one."""
    if isinstance(statement, InhibitorGroup):
        return [Way((), statement.inhibitors)]
    if not isinstance(statement, Rule):
        return [Way((), tuple(statement.links))]
    return [
        Way(tuple(p for p, yes in probe.answers.items() if yes), concluded)
        for probe, concluded in probes(statement, facts or Facts())
        if concluded
    ]


def reads_case(statement: Statement) -> bool:
    """Whether any way through the rule looks at readings, measures, limits or reports."""
    return isinstance(statement, Rule) and any(
        probe.read_case for probe, _ in probes(statement, Facts())
    )


def flat(concluded: Concluded) -> set[tuple[object, ...]]:
    """Everything chaining concluded, in one set: links and shifts with the rule that said so."""
    return {
        *((d,) for d in concluded.derived),
        *((rule.id, link) for link, rules in concluded.links.items() for rule in rules),
        *((group.id, held) for held, groups in concluded.inhibitors.items() for group in groups),
        *((rule.id, shifted) for rule, shifted in concluded.shifts),
        *((Excluded(cause),) for cause in concluded.excluded),
        *((alarm,) for alarm in concluded.alarms),
        *((c,) for c in concluded.contradictions),
    }


STANDS = (
    "(defrule stands-present (derived ?f present $?) (not (reported ?f)) => (assert (has ?f)))",
    "(defrule stands-absent (derived ?f absent $?) (not (reported ?f)) => (assert (lacks ?f)))",
)


class Oracle:
    """A CLIPS environment that holds the rules; rules that read a case are added for each."""

    def __init__(self, statements: Iterable[Statement]) -> None:
        every = list(statements)
        self.read_case = [r for r in every if reads_case(r)]
        self._said: list[tuple[object, ...]] = []
        self._number: dict[tuple[object, ...], int] = {}
        self._clips = clips.Environment()
        for text in STANDS:
            self._clips.build(text)
        for rule in every:
            if rule not in self.read_case:
                self._add(rule, ways(rule))

    def concludes(self, facts: Facts) -> set[tuple[object, ...]]:
        """What CLIPS concludes from the facts, in the shape of ``flat``."""
        added = self.readied(facts)
        said = self.run(facts)
        for name in added:
            self._clips.find_rule(name).undefine()
        return said

    def readied(self, facts: Facts) -> list[str]:
        """Add the rules that read a case as they are under these facts; the names of what was added."""
        return [n for r in self.read_case for n in self._add(r, ways(r, facts))]

    def run(self, facts: Facts) -> set[tuple[object, ...]]:
        """What CLIPS concludes, all its rules being there."""
        self._clips.reset()
        for finding, report in facts.observations.items():
            self._clips.assert_string(f"(reported {finding.id})")
            if report.sure >= 0.5:
                sort = "has" if report.state is State.PRESENT else "lacks"
                self._clips.assert_string(f"({sort} {finding.id})")
        self._clips.run()
        return {
            self._said[fact[0]] for fact in self._clips.facts() if fact.template.name == "concluded"
        }

    def _add(self, rule: Statement, through: list[Way]) -> list[str]:
        """One CLIPS rule for each way through the rule; their names."""
        names = [f"{rule.id}--{i}" for i in range(len(through))]
        for name, way in zip(names, through, strict=True):
            left = " ".join(f"({sort} {finding.id})" for sort, finding in way.yes)
            right = " ".join(self._assertion(rule, c) for c in way.concludes)
            self._clips.build(f"(defrule {name} {left} => {right})")
        return names

    def _assertion(self, rule: Statement, conclusion: Conclusion | Inhibitor) -> str:
        """Assert the conclusion by number; a derived finding also by name, so that other rules match it."""
        match conclusion:
            case Link() | Inhibitor() | Shifted():
                key: tuple[object, ...] = (rule.id, conclusion)
            case Derived() | Excluded() | Alarm() | Contradiction():
                key = (conclusion,)
        if key not in self._number:
            self._number[key] = len(self._said)
            self._said.append(key)
        number = self._number[key]
        derived = ""
        if isinstance(conclusion, Derived):
            derived = f"(assert (derived {conclusion.finding.id} {conclusion.state} {number}))"
        return f"(assert (concluded {number})) {derived}"

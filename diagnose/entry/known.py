"""What is known of a case when the next question is chosen, and whether a question makes sense."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from diagnose.diagnosis import Diagnosis
from diagnose.inference.chaining import Facts, InferenceResult, Observation, infer
from diagnose.inference.contradictions import by_derivation
from diagnose.planning.choosing import Chooser
from diagnose.planning.options import Choice
from diagnose.reasoning.check_planner import best_choice
from knowledge.model import Finding, Stage, State
from knowledge.questions.first_steps import ASKED_BY_WORD, FIRST_STEPS, LEFT_OF
from knowledge.questions.premises import PREMISES
from knowledge.questions.shapes import Choice as MenuChoice
from knowledge.questions.shapes import FirstStep, Menu, Premise
from knowledge.work import Inspection

_NO_PREMISE = Premise()


@dataclass(frozen=True)
class Known:
    """Findings by id: what is observed, derived or built so, and what was asked already."""

    states: Mapping[str, State]
    asked: frozenset[str]
    opened: bool = False  #: something was seen inside
    worked: frozenset[str] = frozenset()  #: areas that were worked on before it began

    @classmethod
    def of(cls, diagnosis: Diagnosis) -> Known:
        """What is known of the case of a diagnosis."""
        result, case = diagnosis.inference.result, diagnosis.case
        states = {d.finding.id: d.state for d in result.derived}
        states |= {f.id: o.state for f, o in diagnosis.inference.facts.observations.items()}
        states |= {f.id: s for f, s in case.known_features.items()}
        seen = (r for r in case.finding_records if r.observation)
        opened = any(r.stage is Stage.OPENED for r in seen)
        worked = frozenset(e.work.area.id for e in case.earlier)
        return cls(states, frozenset(f.id for f in case.answered()), opened, worked)

    def has(self, finding: str) -> bool:
        """Whether it is known to be there."""
        return self.states.get(finding) is State.PRESENT

    def any_of(self, findings: Iterable[str]) -> bool:
        """Whether one of these is known to be there."""
        return any(map(self.has, findings))

    def open(self, finding: str) -> bool:
        """Whether it is neither known nor asked, and all that the question presumes is known."""
        if finding in self.states or finding in self.asked:
            return False
        premise = PREMISES.get(finding, _NO_PREMISE)
        needed = all(map(self.any_of, premise.needs)) or bool(self.worked & set(premise.work))
        return needed and not self.any_of(premise.unless)

    def settled(self, menu: Menu) -> bool:
        """Whether one of the choices is known to be true."""
        return any(c.there and all(map(self.has, c.there)) for c in menu.choices)

    def choices(self, menu: Menu) -> tuple[MenuChoice, ...]:
        """The choices that are still open; that none is true counts where others are."""
        real = [c for c in menu.choices if c.there and all(map(self.open, c.there))]
        return tuple(c for c in menu.choices if c in real or not c.there) if real else ()

    def left_of(self, check: Inspection) -> str:
        """A check in words: what is left of it where a part was done already."""
        rest = LEFT_OF.get(check.id)
        return rest.says if rest is not None and self.any_of(rest.when) else check.says

    @property
    def first_step(self) -> FirstStep | None:
        """What the trade does before any other check, where it has a rule for this."""
        for step in () if self.opened else FIRST_STEPS:
            if self.any_of(step.when) and not self.any_of(step.unless):
                return step
        return None


def next_check(diagnosis: Diagnosis) -> Choice | None:
    """The best next check besides asking, which the interview does; None where none informs."""
    return best_choice(diagnosis.planner, without=ASKED_BY_WORD)


def check_chooser(diagnosis: Diagnosis) -> Chooser:
    """What chooses among the checks that are no questions."""
    chooser = diagnosis.planner.chooser()
    checks = tuple(i for i in chooser.inspections if i.id not in ASKED_BY_WORD)
    return replace(chooser, inspections=checks)


def contradicts(diagnosis: Diagnosis, finding: Finding) -> bool:
    """Whether "yes" would contradict what is known: then it is no question."""
    facts, result = diagnosis.inference.facts, diagnosis.inference.result
    yes = replace(facts, observations={**facts.observations, finding: Observation(State.PRESENT)})
    after = infer(diagnosis.book.statements, yes)
    return _contradictions(after, yes) > _contradictions(result, facts)


def _contradictions(result: InferenceResult, facts: Facts) -> int:
    return len(result.contradictions) + len(list(by_derivation(result, facts.observations)))

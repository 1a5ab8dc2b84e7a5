"""A simulated owner, who knows the coded facts of a case and answers the prompts of ``ask``.

He knows what was known and seen from outside, and what follows from it by the rules; of anything
else he says that he does not know.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.entry.answered_by_story import COLD_AT_MOST, IDLE_AT_MOST, SPEED_AT_LEAST
from diagnose.entry.interview import Interview
from diagnose.entry.numbers import AT_SPEED, COLD, HOT_IDLE, Slot
from diagnose.entry.questions import (
    CheckQuestion,
    ChoiceQuestion,
    ConfirmQuestion,
    EngineQuestion,
    FindingQuestion,
    NumbersQuestion,
    Question,
    TextQuestion,
    TrialQuestion,
    TriedQuestion,
)
from knowledge.book import the_book
from knowledge.model import Kind, Reading, Stage, State
from knowledge.questions.premises import PREMISES
from knowledge.reports.shapes import TrialKind
from knowledge.reports.words import Result
from knowledge.units import PSI
from tests.confirmed.scoring import score_of

Fact = tuple[str, State]
DONT_KNOW = "d"
ENOUGH, MOST = 10, 20  #: prompts after which the facts are counted, and at which it ends


def facts_of(diagnosis: Diagnosis) -> frozenset[Fact]:
    """Findings observed or else derived, each with its state; how the engine is built apart."""
    inference = diagnosis.inference
    states = {d.finding: d.state for d in inference.result.derived}
    states |= {f: o.state for f, o in inference.facts.observations.items()}
    return frozenset((f.id, s) for f, s in states.items() if f.kind is not Kind.LAYOUT)


@dataclass(frozen=True)
class Owner:
    """What he knows of one case, and whether he tells his story first."""

    path: Path
    tells: bool

    @cached_property
    def case(self) -> Case:
        """The case as it was coded."""
        return load(self.path, the_book())

    @cached_property
    def facts(self) -> frozenset[Fact]:
        """All that he knows."""
        return facts_of(Diagnosis(the_book(), self.case, Stage.OUTSIDE))

    @cached_property
    def _states(self) -> dict[str, State]:
        features = {f.id: s for f, s in self.case.known_features.items()}
        return {**features, **dict(self.facts)}

    @cached_property
    def _tried(self) -> dict[TrialKind, Result | None]:
        return {t.trial: t.result for t in self.case.trials if t.stage is not Stage.OPENED}

    def answer(self, question: Question) -> str:
        """The line he types."""
        match question:
            case TextQuestion():
                story = f"{self.case.job.title}. {self.case.job.complaint}" if self.tells else ""
                return " ".join(story.split())
            case ConfirmQuestion():
                return ""
            case ChoiceQuestion():
                return self._chosen(question)
            case EngineQuestion():
                return self._engine(question)
            case NumbersQuestion():
                return " ".join(map(self._pressure, question.slots))
            case FindingQuestion():
                state = self._states.get(question.finding.id)
                return {State.PRESENT: "y", State.ABSENT: "n", None: DONT_KNOW}[state]
            case TriedQuestion():
                tried = [i for i, t in enumerate(question.trials, 1) if self._tried.get(t)]
                return " ".join(map(str, tried)) or DONT_KNOW
            case TrialQuestion():
                return self._tried.get(question.trial) or DONT_KNOW
            case CheckQuestion():
                return self._check(question)

    def _has(self, finding: str) -> bool:
        return self._states.get(finding) is State.PRESENT

    def _chosen(self, question: ChoiceQuestion) -> str:
        true = [
            i for i, c in enumerate(question.choices, 1) if c.there and any(map(self._has, c.there))
        ]
        whole = [i for i in true if all(map(self._has, question.choices[i - 1].there))]
        chosen = (whole or true) if question.menu.many else (whole or true)[-1:]
        if chosen:
            return " ".join(map(str, chosen))
        offered = [f for c in question.choices for f in c.there]
        none = [i for i, c in enumerate(question.choices, 1) if not c.there]
        denied = all(self._states.get(f) is State.ABSENT for f in offered)
        return str(none[0]) if none and denied else DONT_KNOW

    def _engine(self, question: EngineQuestion) -> str:
        layout = self.case.layout.id
        if question.of is not None:
            ids = [id_ for id_, _ in question.of.layouts]
            return str(ids.index(layout) + 1) if layout in ids else DONT_KNOW
        for number, kind in enumerate(question.kinds, 1):
            if layout in [id_ for id_, _ in kind.layouts]:
                return str(number)
        return DONT_KNOW

    def _pressure(self, slot: Slot) -> str:
        readings = [r for r in self.case.readings if r.stage is not Stage.OPENED]
        fits = [r.reading for r in readings if _fits(r.reading, slot)]
        return f"{fits[0].pressure / PSI:.0f}" if fits else "-"

    def _check(self, question: CheckQuestion) -> str:
        states = [self._states.get(f.id) for f in question.findings]
        there = [str(i) for i, s in enumerate(states, 1) if s is State.PRESENT]
        if there:
            return " ".join(there)
        return "0" if all(s is State.ABSENT for s in states) else "n"


def _fits(reading: Reading, slot: Slot) -> bool:
    cold = reading.oil_temperature is not None and reading.oil_temperature <= COLD_AT_MOST
    if slot is COLD:
        return cold
    if slot is HOT_IDLE:
        return not cold and reading.rpm <= IDLE_AT_MOST
    return slot is AT_SPEED and not cold and reading.rpm >= SPEED_AT_LEAST


@dataclass
class Talk:
    """What one interview came to."""

    case: str
    prompts: int = 0
    hit_at: int | None = None  #: prompts until the right cause stood among the first three
    share: float = 0.0  #: of the known facts, obtained within ten prompts
    presuming: int = 0  #: prompts that presume something unopened or untried
    ended: bool = False  #: it stopped by itself


def talk(owner: Owner, path: Path, most: int = MOST) -> Talk:
    """Let the owner answer; ends once the cause is found and ten prompts were answered."""
    interview = Interview.begin(path, the_book(), most=60)
    done = Talk(owner.path.stem)
    while done.prompts < most and not (done.hit_at and done.prompts >= ENOUGH):
        question = interview.next_question()
        if question is None:
            done.ended = True
            break
        done.presuming += presumes(question, interview)
        line = owner.answer(question)
        assert interview.reply(line) is None, (owner.path.stem, question, line)
        done.prompts += 1
        diagnosis = interview.diagnosis()
        if done.hit_at is None and score_of(done.case, diagnosis).rank <= 3:
            done.hit_at = done.prompts
        if done.prompts <= ENOUGH:
            got = len(owner.facts & facts_of(diagnosis))
            done.share = got / len(owner.facts) if owner.facts else 1.0
    return done


def presumes(question: Question, interview: Interview) -> bool:
    """Whether a question presumes something that is not known to be opened, tried or so built."""
    match question:
        case FindingQuestion():
            asked = [question.finding.id]
        case ChoiceQuestion():
            asked = [f for c in question.choices for f in c.there]
        case TrialQuestion():
            return not question.made
        case _:
            return False
    findings, trials = the_book().findings, the_book().shown_by_trial
    if any(findings[f].stage is Stage.OPENED or findings[f] in trials for f in asked):
        return True
    if not interview.saved:
        return False
    known = dict(facts_of(interview.diagnosis()))
    known |= {f.id: s for f, s in interview.case.known_features.items()}
    worked = {e.work.area.id for e in interview.case.earlier}
    needs = [
        group
        for f in asked
        if f in PREMISES and not worked & set(PREMISES[f].work)
        for group in PREMISES[f].needs
    ]
    return not all(any(known.get(f) is State.PRESENT for f in group) for group in needs)

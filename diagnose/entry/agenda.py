"""Which question comes next: what is missing of the essentials, then the questions by value.

Nothing is asked that is known, that was asked before, that presumes something not known, or
whose "yes" would contradict what is known.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from diagnose.case.case import Case
from diagnose.case.units import units_of
from diagnose.diagnosis import Diagnosis
from diagnose.entry.answered_by_story import IDLE_AT_MOST, SPEED_AT_LEAST, is_cold, is_said
from diagnose.entry.known import Known, check_chooser, contradicts
from diagnose.entry.numbers import AT_SPEED, COLD, HOT_IDLE, USUAL_UNIT, Slot
from diagnose.entry.questions import (
    ENGINE,
    CheckQuestion,
    ChoiceQuestion,
    EngineQuestion,
    FindingQuestion,
    NumbersQuestion,
    Question,
    TriedQuestion,
)
from diagnose.planning.questions import (
    CHECK_EFFORT,
    KNOWN_EFFORT,
    LOOK_EFFORT,
    TRIAL_EFFORT,
    Candidate,
    NextCheck,
    by_value,
    most_telling,
)
from knowledge.access.not_there import is_there
from knowledge.engines.features import DRY_SUMP
from knowledge.engines.features_kinds import DRIP_OILED, OIL_BURNT_WITH_FUEL
from knowledge.model import Finding, Gauge, Kind, Stage, State
from knowledge.questions.engines import ENGINE_KINDS
from knowledge.questions.essentials import (
    ESSENTIALS,
    GAUGE,
    GRADE,
    HEARD,
    LEVEL,
    LEVEL_IN_TANK,
    NOISE,
    SINCE,
    ZERO,
)
from knowledge.questions.groups import GROUPS
from knowledge.questions.premises import DONE_WITH, PART_OF_A_REBUILD, REBUILT
from knowledge.questions.shapes import EngineKind, Menu
from knowledge.units import PRESSURE
from knowledge.work import Access

MOST_CHOICES = 6  #: of a question about trials or checks
MOST_TRIED = 5  #: questions that are tried for whether they could change the next check
IN_VAIN = 5  #: answers in a row that changed neither likeliest cause nor next check (judgement)
#: checks that need no dismantling, so that they may have been made already
OUTSIDE = (Access.OUTSIDE, Access.GAUGE_PORT, Access.OIL_SAMPLE, Access.FILTER_OFF)
IN_MENUS = frozenset(f for m in (*ESSENTIALS, *GROUPS) for f in m.findings)


@dataclass
class Agenda:
    """The questions of one session; remembers what was asked."""

    asked: set[object] = field(default_factory=set)  #: menus, checks ... that were asked
    in_vain: int = 0  #: answers to questions by value since one changed anything
    standing: tuple[str, str | None] | None = None  #: likeliest cause and next check, by their ids

    def essentials(self, diagnosis: Diagnosis) -> Question | None:
        """The first essential that is missing; None where there is none."""
        known = Known.of(diagnosis)
        if not diagnosis.case.has_engine and ENGINE not in self.asked:
            return EngineQuestion(ENGINE, kinds_possible(diagnosis))
        case = diagnosis.case
        for menu in ESSENTIALS:
            if _has_no_sense(menu, case):
                continue
            is_open = not self._answered(menu, diagnosis, known)
            question = self._menu(as_known(menu, diagnosis), known) if is_open else None
            if question is not None:
                return question
            if menu is SINCE and HOT_IDLE not in self.asked and not case.without_pressure:
                slots = missing_slots(diagnosis, known)
                if slots:
                    unit = units_of(diagnosis.case).of(PRESSURE) or USUAL_UNIT
                    return NumbersQuestion(slots, unit)
        return None

    def by_value(self, diagnosis: Diagnosis, left: int) -> Question | None:
        """The question of most value that could change the next check; None where none could.

        None as well once several answers in a row have changed nothing.
        """
        planner = diagnosis.planner
        table = planner.single_cause_model
        following = NextCheck(table, check_chooser(diagnosis), planner.plan_state)
        before, self.standing = self.standing, (diagnosis.ranking[0].cause.id, following.now)
        self.in_vain = self.in_vain + 1 if before == self.standing else 0
        if self.in_vain >= IN_VAIN:
            return None
        ranked = by_value(self._candidates(diagnosis, left), table)
        for candidate in ranked[:MOST_TRIED]:
            question = _sensible(candidate.question, diagnosis)
            if question is not None and following.changed_by(candidate.findings):
                return question
        return None

    def note(self, question: Question) -> None:
        """Remember that this question was answered."""
        self.asked.add(key_of(question))

    def _answered(self, menu: Menu, diagnosis: Diagnosis, known: Known) -> bool:
        """Whether a menu needs no asking, as the person said as much already."""
        if menu.id in self.asked or known.settled(menu):
            return True
        case = diagnosis.case
        if menu is SINCE:
            began = any(b.behaviour.since for b in case.behaviours)
            return began or bool(case.earlier) or any(known.has(f) for f in menu.findings)
        if menu is NOISE:
            heard = any(b.behaviour.is_noise for b in case.behaviours)
            return heard or known.has("engine_runs_normally") or known.any_of(HEARD)
        return menu is GAUGE and any(r.reading.gauge is Gauge.DIRECT for r in case.readings)

    def _menu(self, menu: Menu, known: Known, left: int | None = None) -> ChoiceQuestion | None:
        choices = known.choices(menu)
        return ChoiceQuestion(menu, choices, left) if choices else None

    def _candidates(self, diagnosis: Diagnosis, left: int) -> Iterator[Candidate[Question]]:
        known, book = Known.of(diagnosis), diagnosis.book
        for menu in GROUPS:
            yield from self._group(menu, diagnosis, known, left)
        for finding in book.findings.values():
            if (
                finding.kind is Kind.SEEN
                and finding.stage is Stage.KNOWN
                and finding.id not in IN_MENUS
                and finding not in book.shown_by_trial
                and known.open(finding.id)
            ):
                yield Candidate(FindingQuestion(finding, left), (finding,))
        yield from self._tried(diagnosis, left)
        yield from self._checks(diagnosis, known, left)

    def _group(
        self, menu: Menu, diagnosis: Diagnosis, known: Known, left: int
    ) -> Iterator[Candidate[Question]]:
        settled = known.settled(menu) and not menu.many
        if menu.id in self.asked or settled or is_said(menu, diagnosis):
            return
        book = diagnosis.book.findings
        choices = known.choices(menu)
        real = [c for c in choices if c.there]
        findings = tuple(book[f] for c in real for f in c.there)
        looked = any(f.stage is Stage.OUTSIDE for f in findings)
        effort = LOOK_EFFORT if looked else KNOWN_EFFORT
        if len(real) == 1 and len(findings) == 1:
            yield Candidate(FindingQuestion(findings[0], left), findings, effort)
        elif real:
            yield Candidate(ChoiceQuestion(menu, choices, left), findings, effort)

    def _tried(self, diagnosis: Diagnosis, left: int) -> Iterator[Candidate[Question]]:
        if "tried" in self.asked:
            return
        book, table = diagnosis.book, diagnosis.planner.single_cause_model
        known = Known.of(diagnosis)
        done = set(PART_OF_A_REBUILD) if known.any_of(REBUILT) else set[str]()
        done = done.union(*(DONE_WITH.get(area, ()) for area in known.worked))
        made = {record.trial for record in diagnosis.case.trials}
        made |= {t for t in book.trials.values() if t.id in done}
        cured = (t.cured for t in book.trials.values() if t not in made)
        findings = most_telling(table, cured, MOST_CHOICES)
        if findings:
            trials = tuple(book.shown_by_trial[f] for f in findings)
            yield Candidate(TriedQuestion(trials, left), findings, TRIAL_EFFORT)

    def _checks(
        self, diagnosis: Diagnosis, known: Known, left: int
    ) -> Iterator[Candidate[Question]]:
        table, trials = diagnosis.planner.single_cause_model, diagnosis.book.shown_by_trial
        for check in diagnosis.book.inspections.values():
            if check.access not in OUTSIDE or check in self.asked or not check.tools:
                continue
            if not is_there(check, diagnosis.case.known_features.get):
                continue
            shown = (
                f
                for f in check.reveals
                if f.stage is Stage.OUTSIDE
                and f.id not in IN_MENUS
                and f not in trials
                and known.open(f.id)
            )
            findings = most_telling(table, shown, MOST_CHOICES)
            if findings:
                question = CheckQuestion(check, findings, left)
                yield Candidate(question, findings, CHECK_EFFORT)


def _sensible(question: Question, diagnosis: Diagnosis) -> Question | None:
    """The question without choices whose truth would contradict what is known; None: none left."""
    findings = diagnosis.book.findings
    match question:
        case FindingQuestion():
            return None if contradicts(diagnosis, question.finding) else question
        case ChoiceQuestion():
            choices = tuple(
                c
                for c in question.choices
                if not any(contradicts(diagnosis, findings[f]) for f in c.there)
            )
            return replace(question, choices=choices) if any(c.there for c in choices) else None
    return question


def _has_no_sense(menu: Menu, case: Case) -> bool:
    """Whether a menu asks for a gauge where there is no pressure, or for a level in no sump."""
    if menu is LEVEL:
        return case.has(DRIP_OILED) or case.has(OIL_BURNT_WITH_FUEL)
    return menu is GAUGE and case.without_pressure


def as_known(menu: Menu, diagnosis: Diagnosis) -> Menu:
    """The menu as it is asked: of an oil whose grade was said, only how it compares; of a tank."""
    oil, built = diagnosis.case.engine.oil, diagnosis.case.known_features
    if menu is LEVEL and built.get(DRY_SUMP) is State.PRESENT:
        return LEVEL_IN_TANK
    return (
        replace(menu, asks=f"Is {oil} the grade the manual asks for?")
        if menu is GRADE and oil
        else menu
    )


def key_of(question: Question) -> object:
    """What is not asked twice in a session."""
    match question:
        case ChoiceQuestion():
            return question.menu.id
        case CheckQuestion():
            return question.inspection
        case TriedQuestion():
            return "tried"
        case NumbersQuestion():
            return HOT_IDLE
        case EngineQuestion():
            return ENGINE
        case FindingQuestion():
            return question.finding
    return question


def kinds_possible(diagnosis: Diagnosis) -> tuple[EngineKind, ...]:
    """Kinds of engine with those of their layouts that fit the features known so far."""
    found = []
    for kind in ENGINE_KINDS:
        layouts = tuple(each for each in kind.layouts if _layout_is_possible(each[0], diagnosis))
        if layouts:
            found.append(replace(kind, layouts=layouts))
    return tuple(found) or ENGINE_KINDS


def _layout_is_possible(layout_id: str, diagnosis: Diagnosis) -> bool:
    layout = diagnosis.book.layouts[layout_id]
    features = diagnosis.case.known_features
    there: set[Finding] = {f for f, s in features.items() if s is State.PRESENT}
    missing = {f for f, s in features.items() if s is State.ABSENT}
    return not there & set(layout.lacks) and not missing & set(layout.has)


def missing_slots(diagnosis: Diagnosis, known: Known) -> tuple[Slot, ...]:
    """The figures that are not known yet; none where there is no gauge or never any pressure."""
    if known.any_of(("lamp_only", ZERO, "direct_gauge_zero", "none_from_first_start")):
        return ()
    readings = [r.reading for r in diagnosis.case.readings]
    asked = {
        HOT_IDLE: any(r.rpm <= IDLE_AT_MOST and not is_cold(r) for r in readings),
        AT_SPEED: any(r.rpm >= SPEED_AT_LEAST and not is_cold(r) for r in readings),
        COLD: any(is_cold(r) for r in readings),
    }
    return tuple(slot for slot, there in asked.items() if not there)

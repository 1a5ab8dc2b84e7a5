"""The next check of a case and what else was close."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from diagnose.diagnosis import Diagnosis
from diagnose.entry.known import Known
from diagnose.inference.outcomes import Outcome
from diagnose.output.as_json import IF_GIVEN, NOT_IN_JSON
from diagnose.output.documents.cautions import cautions, short_cautions
from diagnose.output.documents.opening_step import OpeningStep, opening_step
from diagnose.output.documents.reasons import is_confirmed, is_settled
from diagnose.planning.options import Option
from diagnose.planning.single_cause import gain
from diagnose.reasoning.found_faults import EXPLAINS
from diagnose.reasoning.seen_on_engine import SETTLED
from knowledge.model import State
from knowledge.questions.afterwards import AFTERWARDS
from knowledge.work import Access, Caution


@dataclass(frozen=True, kw_only=True)
class CheckOutcome:
    """What a check may show, and the leading cause after that."""

    finding: str | None  #: None: nothing of what it can show is present
    probability: float
    leads: str
    leads_with: float
    says: str = field(metadata=NOT_IN_JSON)
    leads_says: str = field(metadata=NOT_IN_JSON)
    #: the fault it proves, where what leads then does not bring that about; may be empty
    proves: str = field(default="", metadata=NOT_IN_JSON)

    @property
    def found_says(self) -> str:
        """The proved fault, to stand before what leads; may be empty."""
        return f"{self.proves}; then " if self.proves else ""


@dataclass(frozen=True, kw_only=True)
class CheckOption:
    """A check that may be done next; the last four JSON keys are given for the best one only."""

    inspection: str
    says: str
    minutes: float  #: hands-on, with the openings
    bits: float  #: expected gain of information
    opens: tuple[Access, ...]
    findings: tuple[str, ...]
    cautions: tuple[Caution, ...]
    adds: float | None = field(default=None, metadata=IF_GIVEN)  #: to the chance of the cause
    value: float | None = field(default=None, metadata=IF_GIVEN)  #: chance per minute
    evidence: str | None = field(default=None, metadata=IF_GIVEN)  #: why it comes first
    outcomes: tuple[CheckOutcome, ...] | None = field(default=None, metadata=IF_GIVEN)
    opening_minutes: float = field(metadata=NOT_IN_JSON)
    openings: tuple[OpeningStep, ...] = field(metadata=NOT_IN_JSON)
    keep: str = field(metadata=NOT_IN_JSON)  #: what to record first; may be empty
    warnings: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: the cautions in words
    care: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: the same in a few words each


def next_checks(diagnosis: Diagnosis, *, all_outcomes: bool = False) -> tuple[CheckOption, ...]:
    """The best next check and its runners-up.

    Empty where no check is left that shows anything, and where the cause is confirmed: nearly
    certain, and seen on the engine.

    The outcomes of the best one are left out where the cause is nearly certain, unless
    ``all_outcomes``.
    """
    if is_confirmed(diagnosis) or (choice := diagnosis.next_check) is None:
        return ()
    outcomes: Sequence[Outcome] = ()
    if all_outcomes or not is_settled(diagnosis):
        outcomes = diagnosis.planner.outcomes(choice.option)
    best = _check(diagnosis, choice.option)
    best = replace(
        best,
        adds=choice.chance,
        value=choice.value,
        evidence=choice.evidence,
        outcomes=tuple(_outcome(diagnosis, o) for o in outcomes),
    )
    each = {best.inspection: best}  # two options may begin with one check
    for other in (_check(diagnosis, o) for o in choice.runners_up):
        each.setdefault(other.inspection, other)
    return tuple(each.values())


def first_step(diagnosis: Diagnosis) -> str:
    """What the trade does before any check; may be empty."""
    step = Known.of(diagnosis).first_step
    return "" if step is None or diagnosis.case.closed else step.says


@dataclass(frozen=True, kw_only=True)
class LaterCheck:
    """A check that is still worth making once the cause is found, and why."""

    inspection: str
    says: str
    minutes: float  #: hands-on, without openings
    why: str


def checks_afterwards(diagnosis: Diagnosis) -> tuple[LaterCheck, ...]:
    """Where the leading cause came from and what it has damaged, as far as nobody has looked yet.

    Empty while that cause is not almost certain.
    """
    first = diagnosis.ranking[0]
    if first.probability < SETTLED:
        return ()
    case, book = diagnosis.case, diagnosis.book
    answered = case.answered()
    present = {f for f, s in case.known_features.items() if s is State.PRESENT}
    found = []
    for each in AFTERWARDS:
        check = book.inspections[each.check]
        there = not check.only_with or present.intersection(check.only_with)
        if each.cause == first.cause.id and there and not answered.intersection(check.reveals):
            found.append(
                LaterCheck(
                    inspection=check.id, says=check.says, minutes=check.minutes, why=each.why
                )
            )
    return tuple(found)


def _check(diagnosis: Diagnosis, option: Option) -> CheckOption:
    check, tree = option.inspection, diagnosis.planner.tree
    way = [o for o in option.way if tree.minutes(o.access) or o.keep]
    kinds = [c for o in way for c in o.cautions] + list(check.cautions)
    return CheckOption(
        inspection=check.id,
        says=Known.of(diagnosis).left_of(check),
        minutes=option.minutes,
        bits=gain(diagnosis.planner.single_cause_model.weight, option.view.rows),
        opens=tuple(o.access for o in option.way),
        findings=tuple(f.id for f in option.findings),
        cautions=check.cautions,
        opening_minutes=tree.opening_minutes(option.way),
        openings=tuple(opening_step(o, tree.minutes(o.access)) for o in way),
        keep=check.keep,
        warnings=tuple(cautions(kinds, diagnosis)),
        care=tuple(short_cautions(kinds, diagnosis)),
    )


def _outcome(diagnosis: Diagnosis, outcome: Outcome) -> CheckOutcome:
    return CheckOutcome(
        finding=outcome.finding.id if outcome.finding else None,
        probability=outcome.probability,
        leads=outcome.leads.id,
        leads_with=outcome.leads_with,
        says=outcome.finding.says if outcome.finding else "none of these",
        leads_says=outcome.leads.says,
        proves=_proved(diagnosis, outcome),
    )


def _proved(diagnosis: Diagnosis, outcome: Outcome) -> str:
    """The fault that an outcome proves, if what leads then does not bring it about."""
    found, finding = diagnosis.found, outcome.finding
    if finding is None or found.leads(outcome.leads, finding) >= EXPLAINS:
        return ""
    for fault in diagnosis.inference.book.faults.values():
        proves = finding in fault.proofs and outcome.leads not in fault.origins
        if proves and not fault.damage and any(found.explained(fault)):
            return fault.says
    return ""

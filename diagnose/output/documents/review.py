"""The document of ``review``: alarms, ranking, reasons, damage, contradictions, the next check."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from diagnose.case.mended import works_again
from diagnose.diagnosis import Diagnosis
from diagnose.inference.cause_sets import Explanation
from diagnose.inference.network import Likelihood
from diagnose.output.as_json import IF_GIVEN, NOT_IN_JSON, only
from diagnose.output.documents.alarms import AlarmNotice, alarm_notices, run_verdict
from diagnose.output.documents.by_readings import survey_differs
from diagnose.output.documents.contradictions import ContradictionNotice, contradiction_notices
from diagnose.output.documents.found import (
    FoundFaultEntry,
    disagreement,
    found_entries,
    headline,
    strip_down,
)
from diagnose.output.documents.job_end import ended_of, held_up, may_close
from diagnose.output.documents.named import Named, named
from diagnose.output.documents.next_checks import (
    CheckOption,
    LaterCheck,
    checks_afterwards,
    first_step,
    next_checks,
)
from diagnose.output.documents.photos import PhotoEntry, photo_entries
from diagnose.output.documents.ranking import RankedCause, ranked_causes
from diagnose.output.documents.reasons import is_settled, path_in_words
from diagnose.output.documents.reported import reported_sentences
from diagnose.output.documents.shop_note import ShopNote
from diagnose.output.documents.stations import LikelyStation, likely_stations, stands_out
from diagnose.reasoning.seen_on_engine import SETTLED
from diagnose.signoff.nothing_wrong import nothing_wrong


@dataclass(frozen=True, kw_only=True)
class CauseSet:
    """A set of causes that explains the evidence together."""

    causes: tuple[str, ...]
    share: float
    says: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class Damage:
    """Damage that has probably followed."""

    id: str
    says: str
    probability: float


@dataclass(frozen=True, kw_only=True)
class ReviewDocument:
    """Everything ``review`` answers."""

    case: str | None  #: path of the case file
    title: str
    layout: str
    reported: tuple[str, ...]  #: behaviour, trials and earlier work, a sentence each
    alarms: tuple[AlarmNotice, ...]
    contradictions: tuple[ContradictionNotice, ...]
    found: tuple[FoundFaultEntry, ...]  #: faults seen or measured, whatever the root cause is
    causes: tuple[RankedCause, ...]  #: likeliest first
    stations: tuple[LikelyStation, ...]  #: where it probably is; empty where a cause stands out
    explanations: tuple[CauseSet, ...]
    damage: tuple[Damage, ...]
    damage_chain: tuple[str, ...]
    contaminated: tuple[str, ...]  #: places that debris has reached
    unexplained: tuple[Named, ...] = field(metadata=only("id"))
    left_out: tuple[str, ...]
    evidence: Mapping[str, Likelihood]
    log_evidence: float
    next: tuple[CheckOption, ...]  #: the best one first
    photos: tuple[PhotoEntry, ...] = ()  #: kept beside the case file
    history: ShopNote | None = field(default=None, metadata=IF_GIVEN)
    strip: str = field(metadata=NOT_IN_JSON)  #: that it must come right down; may be empty
    path: str = field(metadata=NOT_IN_JSON)  #: of the case file, as typed
    closed: str = field(metadata=NOT_IN_JSON)  #: how it ended; empty while not repaired
    verdict: str = field(metadata=NOT_IN_JSON)  #: whether it may run, in a sentence; may be empty
    held_up: bool = field(metadata=NOT_IN_JSON)  #: good pressure, but not fit to start yet
    to_close: bool = field(metadata=NOT_IN_JSON)  #: the engine is right again, the job still open
    engine: str = field(metadata=NOT_IN_JSON)
    in_short: str = field(metadata=NOT_IN_JSON)  #: the headline; empty without evidence
    settled: bool = field(
        metadata=NOT_IN_JSON
    )  #: that it began at the first cause is nearly certain
    remedies: bool = field(
        metadata=NOT_IN_JSON
    )  #: the first cause is, wherever it began, or was found
    loss_is_real: bool = field(metadata=NOT_IN_JSON)
    damage_path: str = field(metadata=NOT_IN_JSON)
    still_missing: str = field(metadata=NOT_IN_JSON)  #: on the missing pressure; may be empty
    nothing_wrong: bool = field(default=False, metadata=NOT_IN_JSON)  #: as far as it was read
    first_step: str = field(default="", metadata=NOT_IN_JSON)  #: before any check; may be empty
    #: what is still to look at once the cause is found
    afterwards: tuple[LaterCheck, ...] = field(default=(), metadata=NOT_IN_JSON)
    #: where budget or survey and ranking differ; may be empty
    differs: str = field(metadata=NOT_IN_JSON)


def review_document(
    diagnosis: Diagnosis,
    path: str,
    *,
    history: ShopNote | None = None,
    for_json: bool = False,
    cause_sets: bool = True,
) -> ReviewDocument:
    """Build the document of a case's review.

    ``path``: the case file as typed; ``for_json``: with the outcomes of the next check even where
    the cause is nearly certain and of a closed job, and without ``still_missing``, which takes the
    oil circuit;
    ``cause_sets``: with the most probable sets of causes, whose sum is the dearest of all.
    """
    case, reasons, inference = diagnosis.case, diagnosis.reasons, diagnosis.inference
    closed = ended_of(diagnosis)
    return ReviewDocument(
        case=str(case.path) if case.path else None,
        title=case.job.title,
        layout=case.layout.id,
        reported=tuple(reported_sentences(case).values()),
        alarms=alarm_notices(diagnosis),
        contradictions=contradiction_notices(diagnosis),
        found=found_entries(diagnosis),
        causes=ranked_causes(diagnosis),
        stations=() if stands_out(diagnosis) else likely_stations(diagnosis),
        explanations=tuple(_cause_set(diagnosis, e) for e in diagnosis.explanations)
        if cause_sets
        else (),
        damage=damages(diagnosis),
        damage_chain=reasons.damage_chain,
        contaminated=diagnosis.found.contaminated,
        unexplained=named(reasons.unexplained),
        left_out=inference.left_out,
        evidence=inference.evidence,
        log_evidence=inference.posterior.log_evidence,
        next=next_checks(diagnosis, all_outcomes=for_json) if for_json or not closed else (),
        photos=photo_entries(case.path),
        history=history,
        strip=strip_down(diagnosis),
        first_step=first_step(diagnosis),
        path=path,
        closed=closed,
        verdict=run_verdict(diagnosis),
        held_up=held_up(diagnosis) > 0,
        to_close=may_close(diagnosis),
        engine=case.layout.says,
        in_short=headline(diagnosis),
        settled=is_settled(diagnosis),
        remedies=_remedies(diagnosis),
        loss_is_real=inference.loss_is_real,
        damage_path=path_in_words(diagnosis, reasons.damage_chain),
        still_missing="" if for_json or works_again(case) else _still_missing(diagnosis),
        differs="" if for_json else disagreement(diagnosis) or survey_differs(diagnosis),
        nothing_wrong=nothing_wrong(diagnosis),
        afterwards=() if closed else checks_afterwards(diagnosis),
    )


def _remedies(diagnosis: Diagnosis) -> bool:
    """Whether the first cause is to be put right whatever else is found: nearly certain, or found."""
    first = diagnosis.ranking[0]
    return is_settled(diagnosis) or first.probability >= SETTLED or first.shown


def damages(diagnosis: Diagnosis) -> tuple[Damage, ...]:
    """The damage that has probably followed, in the order in which it arises."""
    return tuple(
        Damage(id=condition.id, says=condition.says, probability=chance)
        for condition, chance in diagnosis.reasons.damage
    )


def _cause_set(diagnosis: Diagnosis, explanation: Explanation) -> CauseSet:
    causes = diagnosis.book.causes
    return CauseSet(
        causes=explanation.causes,
        share=explanation.share,
        says=" and ".join(causes[c].says for c in explanation.causes)
        or "some cause further down, none of the first few",
    )


def _still_missing(diagnosis: Diagnosis) -> str:
    """How much of the missing pressure no measured finding explains; loads the physics if needed."""
    case = diagnosis.case
    if not (case.measurements and case.readings):
        return ""
    from diagnose.circuit.budget import can_be_drawn_up
    from diagnose.output.documents.budget import still_missing

    budget = diagnosis.found.budget
    return still_missing(budget, case) if budget and can_be_drawn_up(case) else ""

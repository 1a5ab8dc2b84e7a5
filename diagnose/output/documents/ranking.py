"""Root causes by probability, with the evidence for and against each."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from diagnose.diagnosis import Diagnosis
from diagnose.inference.explain import Weight
from diagnose.output.as_json import NOT_IN_JSON, key
from diagnose.output.documents.reasons import EvidenceItem, chain_in_words, evidence_items
from diagnose.output.lines import percent
from diagnose.reasoning.case_inference import Ranked
from diagnose.reasoning.comes_first import open_origin

#: beside a first cause that is a found fault, while nobody knows what brought it about
ORIGIN_IS_OPEN = "it was found; where that came from is still open"


@dataclass(frozen=True, kw_only=True)
class RankedCause:
    """A cause with its probabilities, and the evidence for and against it."""

    id: str
    says: str
    station: str
    probability: float
    prior: float
    no_fault: bool
    source: str
    pro: tuple[EvidenceItem, ...] = field(metadata=key("for"))
    con: tuple[EvidenceItem, ...] = field(metadata=key("against"))
    chain: str = field(metadata=NOT_IN_JSON)  #: how it leads to the evidence; may be empty
    remedy: str = field(metadata=NOT_IN_JSON)
    follows: str = field(metadata=NOT_IN_JSON)  #: what happens if it is left; may be empty
    as_found: bool = field(
        default=False, metadata=NOT_IN_JSON
    )  #: before likelier ones, as it was found
    open_origin: bool = field(
        default=False, metadata=NOT_IN_JSON
    )  #: it is what was found; where that came from is open


def ranked_causes(diagnosis: Diagnosis) -> tuple[RankedCause, ...]:
    """Every cause, most probable first; only the first few have evidence."""
    weights = diagnosis.reasons.weights(diagnosis.reasons.explained)
    return tuple(_cause(diagnosis, r, weights.get(r.cause.id, ())) for r in diagnosis.ranking)


def ranked_cause(diagnosis: Diagnosis, ranked: Ranked) -> RankedCause:
    """One cause of the ranking with its evidence, however far down it stands."""
    return _cause(diagnosis, ranked, diagnosis.reasons.for_cause(ranked.cause.id))


def _cause(diagnosis: Diagnosis, ranked: Ranked, weights: Sequence[Weight]) -> RankedCause:
    cause = ranked.cause
    return RankedCause(
        id=cause.id,
        says=cause.says,
        station=cause.station.value,
        probability=ranked.probability,
        prior=ranked.prior,
        no_fault=cause.no_fault,
        source=cause.source.key,
        pro=evidence_items(diagnosis, weights, 1),
        con=evidence_items(diagnosis, weights, -1),
        chain=chain_in_words(diagnosis, weights),
        remedy=cause.remedy,
        follows=cause.follows,
        as_found=ranked.shown and _likelier_after(diagnosis, ranked),
        open_origin=ranked is diagnosis.ranking[0] and open_origin(diagnosis.inference) is not None,
    )


def _likelier_after(diagnosis: Diagnosis, ranked: Ranked) -> bool:
    after = diagnosis.ranking[diagnosis.ranking.index(ranked) :]
    return any(r.probability > ranked.probability and not r.cause.no_fault for r in after)


def others(causes: Sequence[RankedCause], shown: int, *, loss_is_real: bool) -> str:
    """What is not among the first ``shown`` causes, in words; empty where all are shown."""
    rest = causes[shown:]
    if not rest:
        return ""
    highest = max(c.probability for c in rest)
    after = ""
    if loss_is_real and highest > causes[shown - 1].probability:
        after = " (the loss is real: causes that only make the gauge wrong come last)"
    return (
        f"{len(rest)} more causes, none above {percent(highest)}{after}. Each figure is for that "
        "cause alone; several may hold at once."
    )

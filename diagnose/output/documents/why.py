"""The document of ``review --why``: one cause with everything for and against it.

Built from the same reasons as the review.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from diagnose.diagnosis import Diagnosis
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.found import found_entries
from diagnose.output.documents.ranking import RankedCause, ranked_cause


@dataclass(frozen=True, kw_only=True)
class WhyDocument:
    """A cause of the ranking with its reasons."""

    case: str | None  #: path of the case file
    cause: RankedCause
    place: int  #: in the ranking, 1 is the likeliest
    brought: tuple[str, ...]  #: ids of found faults that it may have brought about
    leader: str = field(metadata=NOT_IN_JSON)  #: the likeliest cause, in words
    leads_with: float = field(metadata=NOT_IN_JSON)
    brought_say: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    title: str = field(metadata=NOT_IN_JSON)
    path: str = field(metadata=NOT_IN_JSON)  #: of the case file, as typed


def why_document(diagnosis: Diagnosis, cause: str, path: str) -> WhyDocument:
    """Build the document of one cause (id) of the ranking; ``path``: the case file as typed.

    Raises KeyError where this engine cannot have the cause.
    """
    places = {r.cause.id: i for i, r in enumerate(diagnosis.ranking)}
    place = places[cause]
    first = diagnosis.ranking[0]
    mine = [f for f in found_entries(diagnosis) if any(o.id == cause for o in f.origins)]
    case = diagnosis.case
    return WhyDocument(
        case=str(case.path) if case.path else None,
        cause=ranked_cause(diagnosis, diagnosis.ranking[place]),
        place=place + 1,
        brought=tuple(f.id for f in mine),
        leader=first.cause.says,
        leads_with=first.probability,
        brought_say=tuple(f.says for f in mine),
        title=case.job.title,
        path=path,
    )

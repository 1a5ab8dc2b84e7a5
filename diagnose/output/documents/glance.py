"""The documents of ``review`` for a folder: one case in one line, small enough to pass on."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path

from diagnose.diagnosis import Diagnosis
from diagnose.output.as_json import IF_GIVEN, NOT_IN_JSON, SCHEMA
from diagnose.output.documents.alarms import AlarmNotice, alarm_notices


@dataclass(frozen=True, kw_only=True)
class GlanceDocument:
    """The likeliest cause of a case, what forbids running, and the next check."""

    schema: int = SCHEMA
    case: str | None
    title: str
    cause: str
    says: str
    probability: float
    may_run: bool
    alarms: tuple[AlarmNotice, ...]
    closed: bool | None = field(default=None, metadata=IF_GIVEN)  #: True where the job is closed
    next: str | None  #: id of the check; None where nothing is left to look at
    #: what did not come out as the case expects; None where it expects nothing
    unmet: tuple[str, ...] | None = field(default=None, metadata=IF_GIVEN)

    @property
    def must_stop(self) -> bool:
        """Whether it must not run now; a closed job is over."""
        return not (self.may_run or self.closed)


@dataclass(frozen=True, kw_only=True)
class UnreadDocument:
    """A file that could not be reviewed, and why."""

    schema: int = SCHEMA
    case: str
    faults: tuple[str, ...]
    first_fault: str = field(metadata=NOT_IN_JSON)  #: in one line, with how many more there are


Glance = GlanceDocument | UnreadDocument  #: what one file comes to


def glance_document(answer: Diagnosis, unmet: Sequence[str] | None = None) -> GlanceDocument:
    """Build the line's document; ``unmet`` only where expectations were checked."""
    first, choice = answer.ranking[0], answer.next_check
    return GlanceDocument(
        case=str(answer.case.path) if answer.case.path else None,
        title=answer.case.job.title,
        cause=first.cause.id,
        says=first.cause.says,
        probability=first.probability,
        may_run=answer.may_run,
        alarms=alarm_notices(answer),
        closed=True if answer.case.closed else None,
        next=choice.option.inspection.id if choice else None,
        unmet=None if unmet is None else tuple(unmet),
    )


def unread_document(path: Path, faults: Sequence[str]) -> UnreadDocument:
    """Build the document of a file that is no case; each fault has the file's name before it."""
    more = f" (and {len(faults) - 1} more)" if len(faults) > 1 else ""
    return UnreadDocument(case=str(path), faults=tuple(faults), first_fault=faults[0] + more)

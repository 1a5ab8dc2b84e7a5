"""What the latest entries changed in the ranking and the plan."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from diagnose.case.gauge_looks import as_given
from diagnose.output.as_json import NOT_IN_JSON, only
from diagnose.output.documents.named import Named, named
from diagnose.output.lines import percent
from diagnose.teardown.changes import Changes

MOVED, CHECKS = 4, 5  #: causes that moved, and checks dropped or added, that are shown


@dataclass(frozen=True, kw_only=True)
class NewEntry:
    """An entry: the finding or measure, and what was recorded of it."""

    id: str
    says: str
    recorded: str

    def in_words(self, *, with_id: bool) -> str:
        """Return the entry as a line."""
        return f"{self.says}: {self.recorded}" + (f" [{self.id}]" if with_id else "")


@dataclass(frozen=True, kw_only=True)
class MovedCause:
    """A cause and its probability before and after."""

    cause: str
    before: float
    after: float
    says: str = field(metadata=NOT_IN_JSON)

    def __str__(self) -> str:
        return f"{percent(self.before)} before, {percent(self.after)} now: {self.says}"


@dataclass(frozen=True, kw_only=True)
class PlanChanges:
    """The entries after one, and what they changed."""

    since: int  #: number of the last entry before
    findings: tuple[NewEntry, ...] = field(metadata={**only("id"), "key": "told"})
    moved: tuple[MovedCause, ...]  #: most first
    minutes_before: float  #: hands-on, on average
    minutes_after: float
    dropped: tuple[Named, ...] = field(metadata=only("id"))  #: checks no longer needed
    added: tuple[Named, ...] = field(metadata=only("id"))  #: checks new in the plan
    measured: tuple[NewEntry, ...] = field(metadata=NOT_IN_JSON)
    readings: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    still_planned: bool = field(metadata=NOT_IN_JSON)  #: both plans have stages

    @property
    def most_moved(self) -> tuple[MovedCause, ...]:
        """The causes that moved most."""
        return self.moved[:MOVED]

    def in_words(self, *, with_ids: bool) -> Iterator[str]:
        """Yield the new entries and what they changed, a line each."""
        for entry in (*self.findings, *self.measured):
            yield entry.in_words(with_id=with_ids)
        yield from (f"reading: {text}" for text in self.readings)
        yield from map(str, self.most_moved)
        if self.still_planned:
            yield (
                f"minutes still expected: {self.minutes_before:.0f} before, "
                f"{self.minutes_after:.0f} now"
            )
        for label, checks in (
            ("no longer needed", self.dropped),
            ("new in the plan", self.added),
        ):
            if checks:
                names = "; ".join(c.says for c in checks[:CHECKS])
                more = f"; and {len(checks) - CHECKS} more" if len(checks) > CHECKS else ""
                yield f"{label}: {names}{more}"


def plan_changes(changes: Changes) -> PlanChanges:
    """Build the part of a plan's document on what changed."""
    case, since = changes.after.answer.case, changes.since
    return PlanChanges(
        since=since,
        findings=tuple(
            NewEntry(
                id=s.finding.id,
                says=s.finding.says,
                recorded=s.observation.state.value if s.observation else "not known",
            )
            for s in changes.new_findings
        ),
        moved=tuple(
            MovedCause(cause=m.cause.id, before=m.before, after=m.after, says=m.cause.says)
            for m in changes.cause_changes
        ),
        minutes_before=changes.before.estimate.expected,
        minutes_after=changes.after.estimate.expected,
        dropped=named(changes.dropped),
        added=named(changes.added),
        measured=tuple(
            NewEntry(id=m.measure.id, says=m.measure.says, recorded=str(m.entry.value))
            for m in case.measurements
            if m.entry.no > since
        ),
        readings=tuple(as_given(r.entry) for r in case.readings if r.entry.no > since),
        still_planned=bool(changes.before.stages and changes.after.stages),
    )

"""Whether the root cause is closed: what to answer before anything is put together."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import groupby

from diagnose.case.mended import LIKELY
from diagnose.diagnosis import Diagnosis
from diagnose.output.as_json import NOT_IN_JSON, only
from diagnose.output.documents.budget import still_missing
from diagnose.output.documents.named import Named, named
from diagnose.output.documents.review import Damage, damages
from diagnose.teardown.loose_ends import DueTask, LooseEnds
from knowledge.pressure.gauge import hot_share
from knowledge.reports.words import Heat


@dataclass(frozen=True, kw_only=True)
class FollowUp:
    """A task that debris, contamination or damage calls for, and how it stands."""

    task: str
    because: tuple[Named, ...] = field(metadata=only("id"))
    open: bool
    says: str = field(metadata=NOT_IN_JSON)
    state: str = field(metadata=NOT_IN_JSON)  #: done, failed, skipped; empty: not recorded
    note: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class LooseEndsNotice:
    """What is open if the likeliest causes are taken as true."""

    unexplained: tuple[Named, ...] = field(metadata=only("id"))
    pressure_closed: bool | None  #: None: not known
    follow: tuple[FollowUp, ...]
    confirmed: bool = field(metadata=NOT_IN_JSON)  #: nearly certain, and seen on the engine
    causes: str = field(metadata=NOT_IN_JSON)
    remedy: str = field(metadata=NOT_IN_JSON)
    pressure: str = field(metadata=NOT_IN_JSON)  #: on the missing pressure; may be empty
    damage: tuple[Damage, ...] = field(metadata=NOT_IN_JSON)

    @property
    def shown(self) -> bool:
        """Whether there is anything to show yet."""
        return self.confirmed or bool(self.follow)

    @property
    def follow_by_finding(self) -> Iterator[tuple[str, list[FollowUp]]]:
        """The tasks to follow, grouped by the findings that call for them, in few words."""
        for because, tasks in groupby(self.follow, lambda t: t.because):
            more = f" and {len(because) - 2} more" if len(because) > 2 else ""
            yield ", ".join(f.says for f in because[:2]) + more, list(tasks)


def loose_ends_notice(answer: Diagnosis, ends: LooseEnds) -> LooseEndsNotice:
    """Build the notice of a case's loose ends."""
    return LooseEndsNotice(
        unexplained=named(ends.unexplained),
        pressure_closed=ends.pressure_closed,
        follow=tuple(_follow_up(d) for d in ends.follow),
        confirmed=ends.confirmed,
        causes=("; or " if ends.alike else " and ").join(c.says for c in ends.causes),
        remedy="; ".join(c.remedy for c in ends.causes),
        pressure=pressure_in_words(answer, ends),
        damage=damages(answer),
    )


def _follow_up(due: DueTask) -> FollowUp:
    entry = due.worked.entry if due.worked is not None else None
    return FollowUp(
        task=due.task.id,
        because=named(due.because),
        open=due.open,
        says=due.task.says,
        state=(entry.state or "done") if entry else "",
        note=entry.note if entry else "",
    )


def pressure_in_words(answer: Diagnosis, ends: LooseEnds) -> str:
    """Say how much of the missing pressure is explained; empty where nothing is known yet."""
    if ends.budget is not None:
        return still_missing(ends.budget, answer.case)
    if not ends.confirmed or ends.enough:
        return ""
    if {c.id for c in ends.causes} <= answer.inference.harmless:
        return (
            "this cause takes none away, it only makes the gauge wrong; check with a trusted "
            "gauge before the engine goes back to work"
        )
    case = answer.case
    read = any(
        r.entry.oil == Heat.ANY.value or hot_share(r.reading) >= LIKELY for r in case.readings
    )
    wanted = [] if read else ["a hot gauge reading"]
    if not case.measurements:
        wanted.append("a measured value of the oil circuit, such as a clearance")
    unknown = "how much of the missing pressure this explains is not known"
    return f"{unknown}: record {' and '.join(wanted)}" if wanted else unknown

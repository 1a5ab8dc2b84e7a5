"""Is the root cause closed? What must be answered before anything is put together.

Findings the chosen causes do not explain, what shed debris must be followed to, what was damaged on
the way, pressure missing.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from diagnose.case.case import TaskRecord
from diagnose.diagnosis import Diagnosis
from diagnose.inference.network import Network
from diagnose.reasoning.found_faults import EXPLAINS
from diagnose.reasoning.seen_on_engine import is_seen, places_to_look, taken_together
from knowledge.applying import applies
from knowledge.circuit.conditions import PRESSURE_GONE
from knowledge.model import Cause, Condition, Finding, Gauge, State
from knowledge.pressure.direct_gauge import DIRECT_GAUGE_LOW
from knowledge.pressure.gauge import NEXT_TO_NOTHING
from knowledge.work import Phase, Task

if TYPE_CHECKING:
    from diagnose.circuit.budget import Budget

OTHERS = 2  #: further causes named
LEAST_BROUGHT = 0.05  #: a cause explains a finding from this P(finding | cause)


@dataclass(frozen=True, slots=True)
class DueTask:
    """A task that a finding calls for, and its record."""

    task: Task
    because: tuple[Finding, ...]
    worked: TaskRecord | None

    @property
    def open(self) -> bool:
        """Whether it is not done or failed; one left out with a reason is not open."""
        return self.worked is None or self.worked.entry.state == "failed"


@dataclass(frozen=True)
class LooseEnds:
    """What must be settled between finding the cause and reassembly."""

    causes: tuple[Cause, ...]  #: taken as true
    alike: bool  #: it is one of them, and one repair puts it right whichever it is
    confirmed: bool  #: likely enough, and seen on the engine
    unexplained: tuple[Finding, ...]
    follow: tuple[DueTask, ...]
    damage: tuple[tuple[Condition, float], ...]
    lodged: tuple[Condition, ...]  #: where pieces can sit of which no place was seen
    budget: Budget | None  #: None: nothing measured, or no reading to compare with
    #: likeliest others that explain a trusted gauge at nothing, where these causes seldom do
    of_nothing: tuple[Cause, ...] = ()
    enough: bool = False  #: a trusted gauge shows enough, so that no pressure is missing

    @property
    def open_tasks(self) -> tuple[DueTask, ...]:
        """What debris and damage still call for."""
        return tuple(d for d in self.follow if d.open)

    @property
    def pressure_closed(self) -> bool | None:
        """Whether what was found explains the missing pressure; None where that is not known."""
        if self.budget is None or self.budget.unexplained is None:
            return None
        return self.budget.unexplained.account.closed

    @property
    def may_stop(self) -> bool:
        """Whether the search may end: cause confirmed, its place seen, no pressure missing."""
        open_ = self.lodged or self.of_nothing or self.pressure_closed is False
        return self.confirmed and not open_


def loose_ends(answer: Diagnosis, until: float) -> LooseEnds:
    """Return everything that is still open if the likeliest causes are true.

    ``until``: probability from which a cause is taken as true.
    """
    confirmed = is_seen(answer.inference, until)
    together = taken_together(answer.inference) if confirmed else ()
    likely = [r.cause for r in answer.ranking if r.probability >= until]
    chosen = likely or together or [answer.ranking[0].cause]
    return LooseEnds(
        causes=tuple(chosen),
        alike=not likely and len(chosen) > 1,
        confirmed=confirmed,
        unexplained=_not_brought(answer, {c.id for c in chosen}),
        follow=follow_up(answer),
        damage=answer.reasons.damage,
        lodged=places_to_look(answer.inference) if confirmed else (),
        budget=_budget(answer),
        of_nothing=_of_nothing(answer, {c.id for c in chosen}) if confirmed else (),
        enough=_shows_enough(answer),
    )


def _of_nothing(answer: Diagnosis, causes: Collection[str]) -> tuple[Cause, ...]:
    """The likeliest causes of no pressure at all, where a trusted gauge shows none.

    Empty where these causes bring that about often enough themselves.
    """
    direct = [r.reading for r in answer.case.readings if r.reading.gauge is Gauge.DIRECT]
    if not direct or direct[-1].pressure > NEXT_TO_NOTHING:
        return ()
    network = answer.inference.network
    if brought_by(network, causes).get(PRESSURE_GONE.id, 1.0) >= EXPLAINS:
        return ()
    able = [r.cause for r in answer.ranking if r.cause.id not in causes and not r.cause.no_fault]
    return tuple(c for c in able if answer.found.leads(c, PRESSURE_GONE) >= EXPLAINS)[:OTHERS]


def _shows_enough(answer: Diagnosis) -> bool:
    """Whether a trusted gauge is known not to read low."""
    seen = answer.inference.facts.observations.get(DIRECT_GAUGE_LOW)
    derived = [d.state for d in answer.inference.result.derived if d.finding is DIRECT_GAUGE_LOW]
    states = [*derived, *([seen.state] if seen else [])]
    return bool(states) and all(s is State.ABSENT for s in states)


def _not_brought(answer: Diagnosis, causes: Collection[str]) -> tuple[Finding, ...]:
    """Findings that are present and that these causes seldom bring about."""
    brought = brought_by(answer.inference.network, causes)
    found = []
    for name, seen in answer.inference.evidence.items():
        finding = answer.book.findings.get(name)
        if finding is None or seen.if_present <= seen.if_absent:
            continue
        if brought[name] < max(LEAST_BROUGHT, answer.inference.network.leak.get(name, 0.0)):
            found.append(finding)
    return tuple(found)


def brought_by(network: Network, causes: Collection[str]) -> dict[str, float]:
    """Return P(node) for every node if exactly these causes hold, without leaks."""
    bare = replace(network, leak=dict.fromkeys(network.leak, 0.0))
    there: dict[str, float] = {}
    for node in network.order:
        listed = node in network.prior
        there[node] = float(node in causes) if listed else bare.chance(node, there)
    return there


def follow_up(answer: Diagnosis) -> tuple[DueTask, ...]:
    """Return the tasks that debris, contamination and damage call for, in order of work."""
    case = answer.case
    observations = case.facts(answer.up_to).observations
    found = {f for f, r in observations.items() if r.state is State.PRESENT}
    worked = {w.task: w for w in case.task_records}
    due: list[DueTask] = []
    for task in answer.book.tasks.values():
        because = tuple(f for f in task.after if f in found)
        if because and task.phase is Phase.CLEANING and applies(task, case.known_features.get):
            due.append(DueTask(task, because, worked.get(task)))
    covered = {other for d in due for other in d.task.covers}
    return tuple(d for d in due if d.task not in covered)


def _budget(answer: Diagnosis) -> Budget | None:
    if not (answer.case.measurements and answer.case.readings):  # then the physics stays unloaded
        return None
    from diagnose.circuit.budget import can_be_drawn_up

    return answer.found.budget if can_be_drawn_up(answer.case) else None

"""The checks that come next for what is known already, whatever else would tell more a minute.

The one that decides where a found fault came from, and a bearing cap off an engine whose bearings
are almost certainly damaged: it has to come apart, and that look says how far. So it is with one
that knocks, behind the stick and the filter, which say in minutes whether the bearings shed metal.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace

from diagnose.planning.choosing import looked_at_first
from diagnose.planning.options import Choice, Option
from diagnose.planning.precedence import Precedence
from diagnose.reasoning.case_inference import CaseInference, proved_in
from diagnose.reasoning.seen_on_engine import SETTLED
from knowledge.access.always_recorded import KEPT
from knowledge.circuit.conditions import BEARINGS_DAMAGED
from knowledge.faults import Fault
from knowledge.model import Finding, Stage, State
from knowledge.stations.bearings.findings import KNOCKS
from knowledge.stations.bearings.findings_shells import LIFT_ONE_CAP
from knowledge.stations.delivery.findings_filter_cut import CUT_THE_FILTER_OPEN
from knowledge.stations.oil.findings import READ_THE_STICK
from knowledge.work import Access, Inspection

DAMAGED = 0.95  #: probability of damaged bearings from which a cap comes off next (judgement)
FEWEST = 2  #: findings that decide, of those a check must show to be the one that does


def open_origin(known: CaseInference) -> Fault | None:
    """The fault seen inside that the first cause is named after, if it may have come from others.

    None where a finding that decides between them is known.
    """
    first = known.ranking[0]
    if first.began >= min(SETTLED, first.probability):  # it began there, or stands for itself
        return None
    for fault, proofs in proved_in(known).items():
        inside = any(p.stage is Stage.OPENED for p in proofs)
        if inside and first.cause.state in fault.states and not _decided(known, fault):
            return fault
    return None


def bearings_unseen(known: CaseInference) -> bool:
    """Whether bearings are almost certainly damaged, and nobody has looked at one."""
    if known.posterior.marginal.get(BEARINGS_DAMAGED.id, 0.0) < DAMAGED:
        return False
    return not _bearing_seen(known)


def knocks_unseen(known: CaseInference) -> bool:
    """Whether the bottom end knocks, and nobody has looked at a bearing."""
    derived = {d.finding for d in known.result.derived if d.state is State.PRESENT}
    return not _bearing_seen(known) and any(known.facts.has(k) or k in derived for k in KNOCKS)


def _bearing_seen(known: CaseInference) -> bool:
    """Whether anything was seen of an opened bearing, or seen not to be so."""
    seen = known.facts.observations
    return any(f in seen for f in LIFT_ONE_CAP.reveals if f.stage is Stage.OPENED)


def what_comes_first(
    choice: Choice, options: Callable[[], Sequence[Option]], known: CaseInference
) -> Choice:
    """The choice, with the checks before it that a found fault, damage or a knock calls for."""
    queue = called_for(options, known)
    if not queue:
        return choice
    called = [o.inspection for o in queue]
    others = (choice.option, *choice.runners_up)
    rest = (*queue[1:], *(o for o in others if o.inspection not in called))
    option = queue[0]
    if option.inspection is choice.inspection:
        return replace(choice, runners_up=rest)
    block, minutes = (option.inspection,), option.minutes
    return replace(choice, option=option, block=block, minutes=minutes, runners_up=rest)


def on_the_way(choice: Choice, options: Sequence[Option], precedence: Precedence) -> Choice:
    """The check itself, or what its openings uncover first and the work would spoil."""
    wanted = {
        o.inspection: k
        for k, o in enumerate(options)
        if o.inspection in KEPT and o.inspection.access is not Access.OUTSIDE
    }
    first = looked_at_first(choice, options, wanted, precedence)
    if first.inspection is choice.inspection:
        return choice
    return replace(first, evidence=f"{first.evidence}; then {choice.inspection.says}")


def called_for(options: Callable[[], Sequence[Option]], known: CaseInference) -> tuple[Option, ...]:
    """The checks, in their order, that a found fault, certain damage or a knock calls for."""
    fault = open_origin(known)
    if fault and (called := tuple(_deciding(options(), fault))):
        return (min(called, key=lambda o: (o.minutes, o.inspection.id)),)
    wanted: tuple[Inspection, ...] = ()
    if bearings_unseen(known):
        wanted = (CUT_THE_FILTER_OPEN, LIFT_ONE_CAP)
    elif knocks_unseen(known):
        wanted = (READ_THE_STICK, CUT_THE_FILTER_OPEN, LIFT_ONE_CAP)
    offered = {o.inspection: o for o in options()} if wanted else {}
    return tuple(offered[check] for check in wanted if check in offered)


def _deciding(options: Iterable[Option], fault: Fault) -> Iterator[Option]:
    """The options that show most of what decides where the fault came from."""
    shown = [(o, sum(f in fault.decided_by for f in o.findings)) for o in options]
    most = max((n for _, n in shown), default=0)
    if most >= FEWEST:
        yield from (o for o, n in shown if n == most)


def _decided(known: CaseInference, fault: Fault) -> bool:
    """Whether a finding that decides is known, besides those that prove the fault."""
    seen: Iterable[Finding] = known.facts.observations
    return any(f in fault.decided_by and f not in fault.proofs for f in seen)

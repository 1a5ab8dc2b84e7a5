"""Faults that were found, what they cost and came from; the headline of the documents that say so."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from diagnose.circuit.band import Band
from diagnose.diagnosis import Diagnosis
from diagnose.output.as_json import NOT_IN_JSON, only
from diagnose.output.documents.named import Named, named
from diagnose.output.documents.reasons import LEADS, in_short
from diagnose.output.lines import percent
from diagnose.output.scale import Scale, scale_of
from diagnose.reasoning.found_faults import EXPLAINS, FoundFault, Origin
from knowledge.faults import Fault
from knowledge.model import Cause, Condition
from knowledge.stations.suction.quantities import SCREEN_OPEN_SHARE
from knowledge.units import PSI
from knowledge.work import Inspection

if TYPE_CHECKING:  # the physics is loaded only where something was measured
    from diagnose.circuit.budget import Budget

LARGE = 0.4  #: share of the missing pressure that is most of it (judgement)
NEGLIGIBLE = 2 * PSI  #: Pa: less than this counts as nothing
SHOWS = 1 * PSI  #: Pa: of less a gauge shows nothing
NAMED_FIRST = 3  #: found faults that the headline names
ORIGINS = 3  #: origins that a line names


@dataclass(frozen=True, kw_only=True)
class FaultOrigin:
    """What a found fault can have come from; ``share`` is among all its origins, 0 to 1."""

    id: str
    says: str
    share: float


@dataclass(frozen=True, kw_only=True)
class FoundFaultEntry:
    """A fault that was seen or measured."""

    id: str
    says: str
    damage: bool  #: as a rule it followed
    proofs: tuple[Named, ...] = field(metadata=only("id"))
    cost: Band | None  #: pressure it costs at hot idle [Pa]; None: the budget cannot say
    explains: tuple[Named, ...] = field(metadata=only("id"))
    origins: tuple[FaultOrigin, ...]  #: likeliest first
    decides: str  #: the check that decides between the origins; may be empty
    title: str = field(metadata=NOT_IN_JSON)  #: the fault with what it costs
    seen: str = field(metadata=NOT_IN_JSON)
    explained: str = field(metadata=NOT_IN_JSON)  #: may be empty
    came_from: str = field(metadata=NOT_IN_JSON)  #: may be empty


def found_entries(diagnosis: Diagnosis) -> tuple[FoundFaultEntry, ...]:
    """Return every found fault: what costs most pressure first, damage last."""
    scale = scale_of(diagnosis.case)
    return tuple(_entry(f, scale) for f in diagnosis.found_faults)


def headline(diagnosis: Diagnosis) -> str:
    """What was found, then where it began, in two sentences without the last full stop.

    Only the second where nothing was found, without its introduction; empty without evidence.
    """
    found, began = diagnosis.found_faults, in_short(diagnosis)
    if not found:
        return began
    scale = scale_of(diagnosis.case)
    names = "; ".join(_with_cost(f, scale) for f in found[:NAMED_FIRST])
    more = f"; and {len(found) - NAMED_FIRST} more" if len(found) > NAMED_FIRST else ""
    return f"found: {names}{more}. Where it began: {began}"


def strip_down(diagnosis: Diagnosis) -> str:
    """Say at once that single checks no longer help; empty where they do, or the job is closed."""
    if not diagnosis.found.strips or diagnosis.case.closed:
        return ""
    return "Bearings damaged and metal in the oil: strip it, crank out, clean every oilway."


def uncosted(diagnosis: Diagnosis, budget: Budget) -> tuple[str, ...]:
    """Found faults that cost pressure, of which the budget has no figure."""
    counted = {found.id for found in budget.findings}
    return tuple(
        f.fault.says
        for f in diagnosis.found.every
        if f.fault.costs and f.cost is None and not any(q.id in counted for q in f.fault.costs)
    )


def disagreement(diagnosis: Diagnosis) -> str:
    """Say in a sentence or two where budget and ranking differ, and what would decide.

    Empty where they agree, where either is unclear, or nothing was measured. Loads the physics
    where something was.
    """
    case, first = diagnosis.case, diagnosis.ranking[0]
    if not (case.measurements and case.readings) or first.probability < LEADS or case.closed:
        return ""
    budget = diagnosis.found.budget
    account = budget.accounts[0] if budget else None
    if budget is None or account is None or account.shortfall is None or not account.shares:
        return ""
    most, deviation = max(
        zip(account.shares, budget.findings, strict=True), key=lambda pair: pair[0].mean
    )
    if most.mean < max(LARGE * account.shortfall.mean, NEGLIGIBLE):
        return ""
    faults = [f for f in diagnosis.book.faults.values() if deviation.id in {q.id for q in f.costs}]
    states = [s for f in faults for s in f.states if s.id in diagnosis.inference.graph]
    if any(diagnosis.found.leads(first.cause, s) >= EXPLAINS for s in states):
        return ""
    choice = diagnosis.next_check
    proved = {f.fault for f in diagnosis.found_faults}
    decides = next((f.decides for f in faults if f in proved and f.decides), "")
    if choice and _bears_on(choice.option.inspection, (first.cause, *states), diagnosis):
        decides = decides or choice.option.inspection.says
    text = (
        f"Budget and ranking differ: most of the loss ({scale_of(case).one(most.mean)}) is at "
        f"{deviation.says} {deviation.found}; the signs point to {first.cause.says} "
        f"({percent(first.probability)})."
    )
    if first.shown:  # it is there: what is left afterwards is the other's
        decides = decides or "put right what was seen, then read it again at hot idle"
    return f"{text} To decide: {decides}." if decides else text


def _bears_on(check: Inspection, nodes: Iterable[Cause | Condition], diagnosis: Diagnosis) -> bool:
    """Whether a check can show something that one of these brings about."""
    network = diagnosis.inference.network
    shown = {f.id for f in check.reveals if f.id in network.leak}
    return not network.ancestors(shown).isdisjoint({node.id for node in nodes})


def _entry(found: FoundFault, scale: Scale) -> FoundFaultEntry:
    fault = found.fault
    return FoundFaultEntry(
        id=fault.id,
        says=fault.says,
        damage=fault.damage,
        proofs=named(found.proofs),
        cost=found.cost,
        explains=named(found.explains),
        origins=tuple(
            FaultOrigin(id=o.node.id, says=_in_words(o, fault), share=o.share)
            for o in found.origins
        ),
        decides=found.decides,
        title=fault.says + _costing(found, scale),
        seen="; ".join(f.says for f in found.proofs),
        explained="; ".join(f.says for f in found.explains),
        came_from=_came_from(found),
    )


def _costing(found: FoundFault, scale: Scale) -> str:
    """What a fault costs where it costs something: at hot idle, else at speed."""
    if found.cost is None:
        return ""
    if _shows(found.cost):
        return f": costs {scale.range(found.cost)} at hot idle"
    if found.fast and _shows(found.fast.cost):
        rpm, cost = found.fast.rpm, found.fast.cost
        return f": costs nothing at hot idle, {scale.range(cost)} at {rpm:.0f} rpm"
    says = ": as it was found it costs almost nothing"
    loose = SCREEN_OPEN_SHARE in found.fault.costs
    return f"{says}, more while the pump draws it onto the mesh" if loose else says


def _with_cost(found: FoundFault, scale: Scale) -> str:
    """A fault with about what it costs, where that shows."""
    if found.cost and _shows(found.cost):
        return f"{found.fault.says} (about {scale.one(found.cost.mean)} at hot idle)"
    if found.fast and _shows(found.fast.cost):
        rpm, cost = found.fast.rpm, found.fast.cost
        return f"{found.fault.says} (about {scale.one(cost.mean)} at {rpm:.0f} rpm)"
    return found.fault.says


def _shows(cost: Band) -> bool:
    """Whether a gauge would show so much."""
    return max(abs(cost.mean), abs(cost.high)) >= SHOWS


def _came_from(found: FoundFault) -> str:
    """The likeliest origins with their shares; empty where there is one only."""
    origins: Sequence[tuple[str, float]] = [
        (_in_words(o, found.fault), o.share) for o in found.origins
    ]
    if len(origins) < 2:
        return origins[0][0] if origins else ""
    return "; ".join(f"{says} {percent(share)}" for says, share in origins[:ORIGINS])


def _in_words(origin: Origin, fault: Fault) -> str:
    """What an origin is; a cause named after the fault itself stands for all that is not listed."""
    node = origin.node
    if isinstance(node, Cause) and node.state in fault.states:
        return "a stray piece of unknown origin"
    return node.says

"""Faults that were seen or measured: what each costs and explains, and where it can come from.

A found fault stands whatever the root cause is. Where it came from is a second answer, with its own
probabilities: each origin is weighed by its posterior and by how strongly it leads to the fault.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from diagnose.inference import causegraph
from diagnose.reasoning.case_inference import CaseInference, proved_in
from diagnose.reasoning.proved import surely_present
from knowledge.applying import applies, surely_applies
from knowledge.engines.layouts import UNKNOWN
from knowledge.faults import Fault
from knowledge.model import Cause, Condition, Finding, Stage
from knowledge.pressure.patterns import ENGINE_RUNS_NORMALLY
from knowledge.reassembly.what_was_found import HARD, PIECES
from knowledge.work import Access

if TYPE_CHECKING:
    from diagnose.circuit.band import Band
    from diagnose.circuit.budget import Budget

LEAST_SHARE = 0.05  #: of an origin that is worth naming
EXPLAINS = 0.2  #: least strength of the path from a fault to what it explains (judgement)


@dataclass(frozen=True, slots=True)
class Origin:
    """What a fault can have come from, and the share of the probability it has among all of them."""

    node: Cause | Condition
    share: float


@dataclass(frozen=True, slots=True)
class CostAtSpeed:
    """What a fault costs at a speed above idle."""

    rpm: float
    cost: Band  #: [Pa]


@dataclass(frozen=True, slots=True)
class FoundFault:
    """A fault that something seen or measured proves."""

    fault: Fault
    proofs: tuple[Finding, ...]  #: those that were found, in the order of the book
    explains: tuple[Finding, ...]  #: what was reported and follows from it
    origins: tuple[Origin, ...]  #: likeliest first; empty where nothing in the graph leads to it
    cost: Band | None  #: pressure it costs at hot idle [Pa]; None where the budget cannot say
    fast: CostAtSpeed | None  #: what it costs at speed
    decides: str  #: the check that decides where it came from; empty where it was made


@dataclass(frozen=True)
class FoundFaults:
    """The found faults of one case; each part is computed when first used."""

    inference: CaseInference

    @cached_property
    def every(self) -> tuple[FoundFault, ...]:
        """The found faults: what costs most pressure first, damage last."""
        proved = self.proved
        costs, fast = (self._costs(tuple(proved), at) for at in (0, 1))
        rpm = self.budget.accounts[1].point.rpm if fast and self.budget else 0.0
        found = [
            FoundFault(
                fault=fault,
                proofs=proofs,
                explains=tuple(self.explained(fault)),
                origins=tuple(self._origins(fault, proofs)),
                cost=costs.get(fault),
                fast=CostAtSpeed(rpm, fast[fault]) if fault in fast else None,
                decides="" if self._checked(fault) else fault.decides,
            )
            for fault, proofs in proved.items()
        ]
        return tuple(sorted(found, key=lambda f: (f.fault.damage, -(f.cost.mean if f.cost else 0))))

    @cached_property
    def proved(self) -> Mapping[Fault, tuple[Finding, ...]]:
        """The found faults with what proves each, in the order of the book."""
        return proved_in(self.inference)

    @cached_property
    def budget(self) -> Budget | None:
        """The pressure budget of the case, or None where it cannot be drawn up; loads the physics."""
        from diagnose.circuit.budget import budget, can_be_drawn_up

        case = self.inference.case
        return budget(case) if can_be_drawn_up(case, seen=True) else None

    @cached_property
    def contaminated(self) -> tuple[str, ...]:
        """Places that hard or loose debris has reached, by the cleaning it calls for."""
        debris = set(HARD).union(PIECES) & self.present
        if not debris:
            return ()
        state = self.inference.case.known_features.get
        tasks = [
            task
            for task in self.inference.book.tasks.values()
            if task.reached and debris.intersection(task.after)
            if applies(task, state)
        ]
        sure = [t.reached for t in tasks if surely_applies(t, state)]
        maybe = dict.fromkeys(t.reached for t in tasks if t.reached not in sure)
        fitted = (f"and if fitted {', '.join(maybe)}",) if maybe else ()
        return tuple(dict.fromkeys((*sure, *fitted)))

    @cached_property
    def strips(self) -> bool:
        """Whether bearings or crank are damaged and hard debris is about: all oilways are suspect."""
        damaged = any(f.fault.damage and Access.CRANK_OUT in f.fault.opens for f in self.every)
        return damaged and not self.present.isdisjoint(HARD)

    @cached_property
    def present(self) -> frozenset[Finding]:
        """Findings that are there, observed or derived, with enough certainty to prove a fault."""
        return surely_present(self.inference.facts, self.inference.result)

    def _checked(self, fault: Fault) -> bool:
        """Whether the check that decides where it came from was made."""
        seen = self.inference.facts.observations
        return any(f in seen for f in fault.decided_by if f not in fault.proofs)

    def _costs(self, faults: tuple[Fault, ...], at: int) -> Mapping[Fault, Band]:
        """The cost of each fault at one account; a quantity counts for the first that names it."""
        case = self.inference.case
        known = case.layout is not UNKNOWN or case.engine.profile is not None
        if not known or not any(f.costs for f in faults) or self.budget is None:
            return {}
        from diagnose.circuit.band import Band

        account = self.budget.accounts[at]
        left = {
            d.id: s for d, s in zip(self.budget.findings, account.shares, strict=True)
        }  # deviations go by the id of their quantity
        costs = {}
        for fault in faults:
            shares = [left.pop(q.id) for q in fault.costs if q.id in left]
            if shares:
                costs[fault] = Band(
                    sum(s.low for s in shares),
                    sum(s.mean for s in shares),
                    sum(s.high for s in shares),
                )
        return costs

    def explained(self, fault: Fault) -> Iterator[Finding]:
        """What a person reported of the gauge or engine and one of the fault's states leads to."""
        known = self.inference
        for finding in (f for f in known.book.findings.values() if f in self.present):
            if finding.stage is Stage.OPENED or finding.id not in known.evidence:
                continue
            if finding is ENGINE_RUNS_NORMALLY:
                continue  # goes with every fault that has not damaged anything yet
            if any(self.leads(s, finding) >= EXPLAINS for s in fault.states):
                yield finding

    def _origins(self, fault: Fault, proofs: tuple[Finding, ...]) -> Iterator[Origin]:
        """Each origin by its posterior times how strongly it leads to the fault, as shares."""
        weight: dict[Cause | Condition, float] = {}
        inside = [o for o in fault.origins if o.id in self.inference.graph]
        for state in fault.states:  # the origins of a state share its probability
            own = {
                o: self._weight(o, (state,)) for o in inside if o is state or o not in fault.states
            }
            if total := sum(own.values()):
                there = self.inference.belief(state.id) / total
                for origin, w in own.items():
                    weight[origin] = max(weight.get(origin, 0.0), w * there)
        for origin in inside:  # those that lead to what was seen, but to none of the states
            if not weight.get(origin):
                weight[origin] = self._weight(origin, proofs)
        total = sum(weight.values())
        for origin in sorted(weight, key=lambda o: (-weight[o], o.id)):
            if total and weight[origin] / total >= LEAST_SHARE:
                yield Origin(origin, weight[origin] / total)

    def _weight(self, origin: Cause | Condition, ends: Sequence[Condition | Finding]) -> float:
        """The posterior of an origin times the strength of its strongest path to any of the ends."""
        return self.inference.belief(origin.id) * max(self.leads(origin, e) for e in ends)

    def leads(self, start: Cause | Condition, end: Condition | Finding) -> float:
        """The strength of the strongest path; 1 from a node to itself, 0 where there is none."""
        return causegraph.path_strength(self.inference.graph, start.id, end.id)

"""Which faults something seen or measured proves, and the cause that each shows most plainly.

Knows the facts and the graph of a case, nothing of its probabilities but what is passed in.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from diagnose.inference.causegraph import Graph
from diagnose.inference.chaining import Facts, InferenceResult
from knowledge.faults import Fault
from knowledge.model import OFTEN, Cause, Finding, Stage, State

SURE = 0.8  #: certainty from which a sight or measurement proves a fault (judgement)
LIKELIER_THAN_NOT = 0.5
LEAST_SHOWN = 0.05  #: probability from which a found fault speaks for the cause that shows it best


def surely_present(facts: Facts, result: InferenceResult) -> frozenset[Finding]:
    """Findings that are there, observed or derived, with enough certainty to prove a fault."""
    observed = facts.observations
    seen = {f for f, o in observed.items() if o.state is State.PRESENT and o.sure >= SURE}
    derived = {
        d.finding
        for d in result.derived
        if d.state is State.PRESENT and d.sure >= SURE and d.finding not in observed
    }
    return frozenset(seen | derived)


def proved_faults(
    faults: Iterable[Fault], present: frozenset[Finding]
) -> dict[Fault, tuple[Finding, ...]]:
    """The faults with what proves each, in order; not what another found thing brought about."""
    return {f: proofs for f in faults if (proofs := tuple(_proofs(f, present)))}


def _proofs(fault: Fault, present: frozenset[Finding]) -> Iterator[Finding]:
    for finding in fault.proofs:
        if finding in present and present.isdisjoint(fault.explained.get(finding, ())):
            yield finding


def shown_causes(
    proved: Mapping[Fault, tuple[Finding, ...]], graph: Graph, probability: Mapping[str, float]
) -> frozenset[str]:
    """Ids of the causes that faults found inside show: the likeliest that leads to the proof itself.

    And what brought the fault about, where that is likelier than not. None of damage, which
    followed, and none that the rest of the evidence all but rules out.
    """
    shown = set()
    for fault, proofs in proved.items():
        inside = [f for f in proofs if f.stage is Stage.OPENED]
        if fault.damage or not inside:
            continue
        direct = [o.id for o in fault.origins if _leads(graph, o, inside)]
        best = max(direct, key=lambda o: (probability[o], o), default=None)
        if best is not None and probability[best] >= LEAST_SHOWN:
            shown.add(best)
        behind = (o.id for o in fault.origins if isinstance(o, Cause))
        shown.update(o for o in behind if probability.get(o, 0.0) >= LIKELIER_THAN_NOT)
    return frozenset(shown)


def _leads(graph: Graph, origin: object, proofs: Iterable[Finding]) -> bool:
    """Whether a cause often brings about one of the proofs itself."""
    return isinstance(origin, Cause) and any(
        graph.has_edge(origin.id, f.id) and graph.edges[origin.id, f.id]["strength"] >= OFTEN.value
        for f in proofs
    )

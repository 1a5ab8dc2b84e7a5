"""Whether a cause was seen on the engine, or rests on reports and on what a gauge shows alone."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator

from diagnose.case.mended import works_again
from diagnose.inference.elimination import posteriors
from diagnose.inference.network import SEEN_NOT_THERE
from diagnose.reasoning.case_inference import CaseInference, trusted_gauge_is_low
from knowledge.circuit.conditions import LODGED
from knowledge.faults import Fault
from knowledge.model import Cause, Condition, Finding, Stage, State, Station

SEVERAL = 2  #: places in which pieces can lodge: which one it is must be looked at
SETTLED = 0.9  #: probability from which the first cause is nearly certain


def is_found(known: CaseInference) -> bool:
    """Whether the likeliest cause is nearly certain, and was seen on the engine as well.

    Pieces that were shed, without the place where they sit, are half the answer.
    """
    return is_seen(known, SETTLED) and not places_to_look(known)


def is_seen(known: CaseInference, until: float) -> bool:
    """Whether it began as surely as asked at the likeliest cause, or those like it, and was seen.

    A bad gauge or wire is no end of the search while a trusted gauge is low.
    """
    together = taken_together(known)
    seen = all(seen_for(known, c) for c in together)
    return is_sure(known, until) and seen and not _leaves_a_loss(known, together)


def _leaves_a_loss(known: CaseInference, causes: Iterable[Cause]) -> bool:
    """Whether a trusted gauge reads low, which none of these causes can bring about."""
    return all(c.id in known.harmless for c in causes) and trusted_gauge_is_low(known)


def is_sure(known: CaseInference, until: float) -> bool:
    """Whether it began as surely as asked at the likeliest cause, or at one of those like it."""
    return known.ranking[0].began >= until or chance_together(known) >= until


def taken_together(known: CaseInference) -> tuple[Cause, ...]:
    """The likeliest cause, and those that one thing which was seen shows as well as it.

    One repair puts them right, so that which of them it was need not be settled.
    """
    first = known.ranking[0]
    if first.began >= SETTLED:
        return (first.cause,)
    for fault in known.book.faults.values():
        if first.cause in fault.alike and _proved(known, fault):
            others = (r.cause for r in known.ranking if r.cause in fault.alike)
            return tuple(c for c in others if seen_for(known, c))
    return (first.cause,)


def chance_together(known: CaseInference) -> float:
    """The probability that it began at one of the causes taken together."""
    together = taken_together(known)
    if len(together) == 1:
        return known.ranking[0].began
    none = {**known.evidence, **{c.id: SEEN_NOT_THERE for c in together}}
    (without,) = posteriors(known.network, [none], asked=())
    return 1.0 - math.exp(without.log_evidence - known.posterior.log_evidence)


def _proved(known: CaseInference, fault: Fault) -> bool:
    """Whether one of its proofs was seen, and shows each of the causes that are alike."""
    edge = known.graph.has_edge
    return any(
        all(edge(c.id, seen.id) for c in fault.alike if c.id in known.graph)
        for seen in _seen(known)
        if seen in fault.proofs
    )


def places_to_look(known: CaseInference) -> tuple[Condition, ...]:
    """Where pieces that the likeliest cause sheds can lodge; empty where one place was seen.

    The cause is where it began; what loses the pressure is the place in which they sit.
    """
    first = known.ranking[0].cause
    if works_again(known.case) or first.id not in known.graph:
        return ()
    places = tuple(c for c in LODGED if known.graph.has_edge(first.id, c.id))
    seen = frozenset(_seen(known))
    proved = (fault for fault in known.book.faults.values() if seen.intersection(fault.proofs))
    found = {state for fault in proved for state in fault.states}
    return () if len(places) < SEVERAL or found.intersection(places) else places


def seen_for(known: CaseInference, cause: Cause) -> bool:
    """Whether a finding that the cause leads to was seen, measured or shown by a cure."""
    network = known.network
    proofs = {f.id for f in _seen(known) if _tells_of(f, cause)}
    return any(
        cause.id in network.ancestors({n})
        for n in known.evidence
        if n in proofs & set(network.parents)
    )


def _seen(known: CaseInference) -> Iterator[Finding]:
    """What is there and was not only reported; what follows from readings in words is a report."""
    for s in known.case.finding_records:
        if s.observation and s.observation.state is State.PRESENT and s.stage is not Stage.KNOWN:
            yield s.finding
    cured = {t.cured for t in known.book.trials.values()}
    for d in known.result.derived:
        if d.state is State.PRESENT and (d.finding.stage is not Stage.KNOWN or d.finding in cured):
            yield d.finding


def _tells_of(finding: Finding, cause: Cause) -> bool:
    """Whether it shows the cause: what an instrument shows of pressure shows no part inside."""
    return finding.station is not Station.INSTRUMENT or cause.station is Station.INSTRUMENT

"""What a check may show, and what that would make of the ranking; imported by ``consultation``."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import exp

from diagnose.inference.chaining import Observation
from diagnose.inference.elimination import Posterior, TooEntangledError, posteriors
from diagnose.inference.evidence import of_report
from diagnose.inference.network import Evidence, Network
from knowledge.model import Cause, Finding

SMALL = 100_000  #: up to this effort several what-ifs go through one sweep


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a check may show and what that would make of the ranking, computed exactly."""

    finding: Finding | None  #: None: none of what it can show
    probability: float
    leads: Cause
    leads_with: float


@dataclass(frozen=True, slots=True)
class Supposed:
    """What might be reported next; ``finding`` is what it shows, None where it shows nothing."""

    finding: Finding | None
    observations: Mapping[Finding, Observation]


def outcomes(
    network: Network,
    evidence: Evidence,
    before: Posterior,
    supposed: Sequence[Supposed],
    causes: Mapping[str, Cause],
) -> list[Outcome]:
    """Each supposed report taken in by itself; none where the sum is too large."""
    variants = [
        {**evidence, **{f.id: of_report(r) for f, r in one.observations.items()}}
        for one in supposed
    ]
    try:
        if before.effort <= SMALL:
            after = posteriors(network, variants, asked=network.prior)
        else:  # together they would be more entangled than each by itself
            after = [p for v in variants for p in posteriors(network, [v], asked=network.prior)]
    except TooEntangledError:
        return []
    out = []
    for one, then in zip(supposed, after, strict=True):
        leader = max(network.prior, key=lambda c: (then.marginal[c], c))
        chance = exp(min(0.0, then.log_evidence - before.log_evidence))
        out.append(Outcome(one.finding, chance, causes[leader], then.marginal[leader]))
    return out

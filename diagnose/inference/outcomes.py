"""Predict outcomes of a check: their probability, and the leading cause after each."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass
from math import exp

from diagnose.inference.chaining import Observation
from diagnose.inference.elimination import Posterior, TooEntangledError, posteriors
from diagnose.inference.evidence import likelihood_of
from diagnose.inference.network import Evidence, Likelihood, Network
from knowledge.model import Cause, Finding

SMALL = 100_000  #: effort up to which several outcomes share one sweep


@dataclass(frozen=True, slots=True)
class Outcome:
    """One outcome of a check and the leading cause after it, computed exactly."""

    finding: Finding | None  #: found present; None: all it can show is absent
    probability: float
    leads: Cause
    leads_with: float


@dataclass(frozen=True, slots=True)
class Supposed:
    """Observations that may come next; ``finding`` as in ``Outcome``."""

    finding: Finding | None
    observations: Mapping[Finding, Observation]


def outcomes(
    network: Network,
    evidence: Evidence,
    before: Posterior,
    supposed: Sequence[Supposed],
    causes: Mapping[str, Cause],
    states: Collection[str],
    nodes: Callable[[Evidence, Mapping[str, float]], Mapping[str, str]],
) -> list[Outcome]:
    """The outcome for each supposed set of observations; empty where the sum is too large.

    ``nodes``: from evidence and its posterior, the node whose probability is the figure of each
    cause of the network, by its id; a cause itself or one of the ``states`` (ids).
    """
    unseen = {n: Likelihood(1.0, 1.0) for n in states if n not in before.marginal}
    variants = [
        {**evidence, **unseen, **{f.id: likelihood_of(r) for f, r in one.observations.items()}}
        for one in supposed
    ]
    asked = {*network.prior, *states}
    try:
        if before.effort <= SMALL:
            after = posteriors(network, variants, asked=asked)
        else:  # one sweep for all would be larger than one for each
            after = [p for v in variants for p in posteriors(network, [v], asked=asked)]
    except TooEntangledError:
        return []
    out = []
    for one, variant, then in zip(supposed, variants, after, strict=True):
        figure = {c: then.marginal[n] for c, n in nodes(variant, then.marginal).items()}
        leader = max(figure, key=lambda c: (figure[c], c))
        chance = exp(min(0.0, then.log_evidence - before.log_evidence))
        out.append(Outcome(one.finding, chance, causes[leader], figure[leader]))
    return out

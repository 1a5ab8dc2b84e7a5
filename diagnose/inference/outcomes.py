"""Predict outcomes of a check: their probability, and the leading cause after each."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass
from math import exp, log

from diagnose.inference.chaining import Observation
from diagnose.inference.elimination import Posterior, TooEntangledError, posteriors
from diagnose.inference.evidence import likelihood_of
from diagnose.inference.network import (
    SEEN,
    SEEN_NOT_THERE,
    Evidence,
    Likelihood,
    Network,
)
from knowledge.model import Cause, Finding

SMALL = 100_000  #: effort up to which several outcomes share one sweep
LEAST = 1e-6  #: probability of a finding from which a difference gives it exactly


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
    start = {**evidence, **unseen}
    seen = [{f.id: likelihood_of(r) for f, r in one.observations.items()} for one in supposed]
    present = [k for k, new in enumerate(seen) if _one_present(new, evidence)]
    variants = [
        {**start, **(dict.fromkeys(new, SEEN_NOT_THERE) if k in present else new)}
        for k, new in enumerate(seen)
    ]
    asked = {*network.prior, *states}
    try:
        if unseen and present:
            before, *after = _posteriors(network, [start, *variants], asked, before.effort)
        else:
            after = _posteriors(network, variants, asked, before.effort)
        for k in present:
            then = _present(before, after[k])
            direct = {**start, **seen[k]}
            after[k] = then or _posteriors(network, [direct], asked, before.effort)[0]
    except TooEntangledError:
        return []
    out = []
    for one, new, then in zip(supposed, seen, after, strict=True):
        named = nodes({**start, **new}, then.marginal)
        figure = {c: then.marginal[n] for c, n in named.items()}
        leader = max(figure, key=lambda c: (figure[c], c))
        chance = exp(min(0.0, then.log_evidence - before.log_evidence))
        out.append(Outcome(one.finding, chance, causes[leader], figure[leader]))
    return out


def _posteriors(
    network: Network, variants: Sequence[Evidence], asked: Collection[str], effort: int
) -> list[Posterior]:
    """The posterior of each variant; ``effort``: of one sweep without what is supposed."""
    if effort <= SMALL:
        return posteriors(network, variants, asked=asked)
    # one sweep for all would be larger than one for each
    return [p for v in variants for p in posteriors(network, [v], asked=asked)]


def _one_present(new: Evidence, evidence: Evidence) -> bool:
    """Whether the only new observation is a finding that is certainly present."""
    return list(new.values()) == [SEEN] and not evidence.keys() & new.keys()


def _present(before: Posterior, absent: Posterior) -> Posterior | None:
    """The posterior with a finding present: all there was before less its part without it.

    An absent finding couples no causes, so that its sum is smaller than that of a present one.
    None where too little is left to be exact.
    """
    without = exp(min(0.0, absent.log_evidence - before.log_evidence))
    chance = 1.0 - without
    if chance < LEAST:
        return None
    marginal = {
        n: min(1.0, max(0.0, (before.marginal[n] - without * p) / chance))
        for n, p in absent.marginal.items()
        if n in before.marginal
    }
    return Posterior(marginal, before.log_evidence + log(chance), absent.effort)

"""The most probable sets of causes, exactly, best first."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from itertools import product
from math import exp

from diagnose.inference.elimination import effort, log_evidences, prior_marginals
from diagnose.inference.network import Evidence, Likelihood, Network

LEAST, RAISED = 0.02, 1.5  #: posterior of a cause in a set, and times its prior (judgement)
MOST_EFFORT = 6_000_000  #: table entries of the sums over all sets together


@dataclass(frozen=True, slots=True)
class Explanation:
    """A set of causes present together with all other implicated causes absent; its probability."""

    causes: tuple[str, ...]
    share: float


def best_sets(
    network: Network,
    evidence: Evidence,
    marginal: Mapping[str, float],
    log_evidence: float,
    how_many: int = 3,
    at_most: int = 0,
    spent: int | None = None,
) -> tuple[Explanation, ...]:
    """The most probable sets of implicated causes, best first, with their exact probability.

    Implicated: posterior at least ``LEAST`` and ``RAISED`` times the prior, the ``at_most`` likeliest (0: two
    to six, fewer the larger the sum); every other cause is summed out. All 2^n sets are computed
    in one sweep, so none is missed. ``spent``: the effort of one sweep, if known.
    """
    if not at_most:
        spent = effort(network, evidence) if spent is None else spent
        at_most = next((n for n in (6, 5, 4, 3) if spent << n <= MOST_EFFORT), 2)
    implicated = sorted(
        (
            c
            for c, p in prior_marginals(network).items()
            if marginal[c] >= LEAST and marginal[c] >= RAISED * p
        ),
        key=lambda c: (-marginal[c], c),
    )[:at_most]
    presence = list(product((True, False), repeat=len(implicated)))
    variants = [
        {
            **evidence,
            **{c: _held(evidence, c, t) for c, t in zip(implicated, states, strict=True)},
        }
        for states in presence
    ]
    shares = [exp(min(0.0, x - log_evidence)) for x in log_evidences(network, variants)]
    sets = [
        Explanation(tuple(c for c, t in zip(implicated, states, strict=True) if t), share)
        for states, share in zip(presence, shares, strict=True)
    ]
    likely = sorted((e for e in sets if e.share > 1e-9), key=lambda e: (-e.share, e.causes))
    return tuple(likely[:how_many])


def _held(evidence: Evidence, cause: str, there: bool) -> Likelihood:
    """The likelihood that fixes the cause present or absent, times its own evidence."""
    seen = evidence.get(cause, Likelihood(1.0, 1.0))
    return Likelihood(0.0, seen.if_present) if there else Likelihood(seen.if_absent, 0.0)

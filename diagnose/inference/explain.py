"""Weights of evidence for and against causes, and findings that no cause explains."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import log10

from diagnose.inference.causegraph import MISFIT, READINGS, Graph, chain
from diagnose.inference.leave_one_out import Without
from diagnose.inference.network import Evidence, Network
from knowledge.model import RARE

LEAST_DECIBANS = 0.5  #: below this a finding is not worth a line


@dataclass(frozen=True, slots=True)
class Weight:
    """The weight of one finding for one cause, in decibans: 10·log10 of odds with over without."""

    what: str  #: id of the finding, or of the gauge readings
    decibans: float  #: above zero: for the cause
    #: node ids from the cause to the finding, or to what the gauge readings do not fit
    chain: tuple[str, ...] = ()


def odds_decibans(p: float) -> float:
    """10·log10(p / (1 - p)), kept finite (Good 1985)."""
    p = min(max(p, 1e-12), 1 - 1e-12)
    return 10 * log10(p / (1 - p))


def weights(
    without: Mapping[str, Without],
    marginal: Mapping[str, float],
    graph: Graph,
    causes: tuple[str, ...],
) -> dict[str, tuple[Weight, ...]]:
    """For each cause the findings for and against it, strongest first.

    ``without``: the posterior without each finding in turn.
    """
    out: dict[str, list[Weight]] = {c: [] for c in causes}
    for name, rest in without.items():
        for cause in causes:
            shift = odds_decibans(marginal[cause]) - odds_decibans(rest.marginal[cause])
            if abs(shift) >= LEAST_DECIBANS:
                path = chain(graph, cause, name)
                if name == READINGS and not path:
                    path = chain(graph, cause, MISFIT)
                out[cause].append(Weight(name, shift, tuple(path)))
    return {c: tuple(sorted(w, key=lambda w: (-abs(w.decibans), w.what))) for c, w in out.items()}


def unexplained(network: Network, evidence: Evidence, marginal: Mapping[str, float]) -> list[str]:
    """Observed findings that chance explains better than any listed cause.

    Compares the finding's own background with what its parents bring about, given their
    marginals.
    """
    out = []
    for name, seen in evidence.items():
        if seen.if_present <= seen.if_absent or name not in network.leak:
            continue
        miss = 1.0
        for parent, strength in network.parents.get(name, {}).items():
            miss *= 1.0 - strength * marginal.get(parent, 0.0)
        brought = 1.0 - miss
        if network.leak[name] > brought and network.leak[name] <= RARE.value:
            out.append(name)
    return out

"""P(finding | cause) for each cause alone, for looking ahead.

The exact posterior gives each cause its weight; given one cause the findings are assumed
independent. This approximation serves only to choose the next check: the effect of an outcome on
the ranking is computed exactly before it is shown.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from diagnose.inference.elimination import posteriors
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Network

Array = NDArray[np.float64]
LEAST_WEIGHT = 0.004
MOST_CERTAIN = 0.999


@dataclass(frozen=True)
class SingleCauseModel:
    """``weight[c]`` sums to one; ``shows[finding][c]`` = P(finding | cause c alone)."""

    causes: tuple[str, ...]
    weight: Array
    shows: Mapping[str, Array]


def single_cause_model(network: Network, marginal: Mapping[str, float]) -> SingleCauseModel:
    """Build the model of the causes above ``LEAST_WEIGHT``.

    Several causes may hold at once, so marginals do not sum to one: weights go by their odds,
    which leaves a nearly certain cause nearly all the weight.
    """
    causes = tuple(c for c in network.prior if marginal[c] >= LEAST_WEIGHT)
    chance = np.minimum(np.array([marginal[c] for c in causes]), MOST_CERTAIN)
    weight = chance / (1.0 - chance)
    column = {c: i for i, c in enumerate(causes)}
    there: dict[str, Array] = {}
    roots = _above_causes(network, causes)
    for node in network.order:
        if node in network.prior:
            row = np.zeros(len(causes))
            if node in column:
                row[column[node]] = 1.0
            there[node] = row
            continue
        if node in roots:
            there[node] = roots[node]
            continue
        miss = np.full(len(causes), 1.0 - network.leak[node])
        for parent, strength in network.parents.get(node, {}).items():
            miss = miss * (1.0 - strength * there[parent])
        let = np.ones(len(causes))
        for inhibitor, strength in network.inhibitors.get(node, {}).items():
            let = let * (1.0 - strength * there[inhibitor])
        there[node] = (1.0 - miss) * let
    return SingleCauseModel(causes, weight / weight.sum(), there)


def _above_causes(network: Network, causes: Sequence[str]) -> dict[str, Array]:
    """P(node | cause c alone) of every node above ranked causes, which are known then."""
    above = network.relevant(set(network.fed)) - network.prior.keys()
    if not above:
        return {}
    absent = dict.fromkeys(network.fed, SEEN_NOT_THERE)
    variants = [{**absent, c: SEEN} if c in absent else absent for c in causes]
    found = posteriors(network, variants, asked=above)
    return {node: np.array([p.marginal[node] for p in found]) for node in above}


def entropy(p: Array) -> Array:
    """Bits along the last axis."""
    safe = np.where(p > 0.0, p, 1.0)
    return np.asarray(-(p * np.log2(safe)).sum(axis=-1))


def outcomes(table: SingleCauseModel, findings: Sequence[str]) -> Array:
    """P(outcome | cause) of a check that answers several findings, one row an outcome.

    Row j: finding j is there and none before it; last row: none is there. Read most
    telling first, the rows part all possibilities.
    """
    rows = []
    left = np.ones(len(table.causes))
    for name in findings:
        rows.append(left * table.shows[name])
        left = left * (1.0 - table.shows[name])
    rows.append(left)
    return np.array(rows)


def gain(weight: Array, table: Array) -> float:
    """Expected bits about the cause that a check with outcome ``table`` brings."""
    joint = table * weight
    p = joint.sum(axis=1)
    after = joint / np.maximum(p, 1e-300)[:, None]
    return float(entropy(weight) - (p * entropy(after)).sum())


def telling(table: SingleCauseModel, weight: Array, findings: Sequence[str]) -> list[str]:
    """Sort the findings by the gain of each alone, largest first."""
    known = [f for f in findings if f in table.shows]
    return sorted(known, key=lambda f: (-gain(weight, outcomes(table, [f])), f))

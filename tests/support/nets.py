"""Small noisy-OR networks: the answer enumerated state by state, and random networks."""

from __future__ import annotations

import math
import random

import numpy as np
from hypothesis import strategies as st
from numpy.typing import NDArray

from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Evidence, Likelihood, Network

FLAT = Likelihood(1.0, 1.0)  #: says nothing; asks for the node's own marginal


def joint(network: Network) -> tuple[dict[str, NDArray[np.bool_]], NDArray[np.float64]]:
    """Every state of every node, and the probability of each: 2^nodes rows."""
    names = network.order
    rows = np.arange(2 ** len(names))
    there = {n: (rows >> i & 1).astype(bool) for i, n in enumerate(names)}
    p = np.ones(len(rows))
    for name in names:
        if name in network.prior:
            present = np.full(len(rows), network.prior[name])
        else:
            absent = np.full(len(rows), 1.0 - network.leak[name])
            for parent, strength in network.parents.get(name, {}).items():
                absent *= np.where(there[parent], 1.0 - strength, 1.0)
            present = 1.0 - absent
        p *= np.where(there[name], present, 1.0 - present)
    return there, p


def weighed(
    network: Network, evidence: Evidence
) -> tuple[dict[str, NDArray[np.bool_]], NDArray[np.float64]]:
    """The states, each with its probability times the likelihood of the evidence."""
    there, p = joint(network)
    for name, seen in evidence.items():
        p = p * np.where(there[name], seen.if_present, seen.if_absent)
    return there, p


def enumerated(network: Network, evidence: Evidence) -> tuple[dict[str, float], float]:
    """Every marginal given the evidence, and P(evidence), by summing over all states."""
    there, p = weighed(network, evidence)
    total = float(p.sum())
    if total == 0.0:
        return {}, 0.0
    return {n: float(p[is_there].sum()) / total for n, is_there in there.items()}, total


def quickscore(network: Network, evidence: Evidence) -> float:
    """P(evidence) of a two-layer net by signed sums over its present findings.

    Heckerman 1989, "A tractable inference algorithm for diagnosing multiple diseases".
    """
    present = [n for n, e in evidence.items() if e == SEEN]
    absent = [n for n, e in evidence.items() if e == SEEN_NOT_THERE]
    total = 0.0
    for row in range(2 ** len(present)):
        chosen = [n for i, n in enumerate(present) if row >> i & 1]
        term = (-1.0) ** len(chosen)
        for finding in (*chosen, *absent):
            term *= 1.0 - network.leak[finding]
        for cause, prior in network.prior.items():
            stays = math.prod(
                1.0 - network.parents.get(f, {}).get(cause, 0.0) for f in (*chosen, *absent)
            )
            term *= 1.0 - prior + prior * stays
        total += term
    return total


def random_net(seed: int, roots: int, middles: int, leaves: int, fan_in: int = 4) -> Network:
    """A layered net: roots, hidden middles (some fed by others), leaves fed by both."""
    rng = random.Random(seed)
    cause = [f"r{i}" for i in range(roots)]
    middle = [f"m{i}" for i in range(middles)]
    leaf = [f"f{i}" for i in range(leaves)]
    parents: dict[str, dict[str, float]] = {}
    for i, name in enumerate(middle):
        parents[name] = _links(rng, [*cause, *middle[:i]], fan_in)
    for name in leaf:
        parents[name] = _links(rng, [*cause, *middle], fan_in)
    return Network(
        {c: rng.uniform(0.02, 0.3) for c in cause},
        {n: rng.uniform(0.002, 0.2) for n in (*middle, *leaf)},
        parents,
    )


def _links(rng: random.Random, above: list[str], fan_in: int) -> dict[str, float]:
    many = rng.randint(1, min(fan_in, len(above)))
    return {p: rng.uniform(0.05, 0.97) for p in rng.sample(above, many)}


def random_evidence(seed: int, network: Network, share: float = 0.5) -> dict[str, Likelihood]:
    """Seen, seen not to be there, or an uncertain sighting, on nodes of every layer."""
    rng = random.Random(seed)
    return {
        n: rng.choice([SEEN, SEEN_NOT_THERE, Likelihood.of(rng.uniform(0.1, 0.9))])
        for n in network.order
        if rng.random() < share
    }


def drawn(network: Network, rng: random.Random) -> dict[str, bool]:
    """One state drawn from the network: every node there or not."""
    state: dict[str, bool] = {}
    for name in network.order:
        if name in network.prior:
            state[name] = rng.random() < network.prior[name]
            continue
        absent = 1.0 - network.leak[name]
        for parent, strength in network.parents.get(name, {}).items():
            absent *= 1.0 - strength if state[parent] else 1.0
        state[name] = rng.random() >= absent
    return state


def restricted(network: Network, nodes: set[str]) -> Network:
    """The part of the network made of these nodes and their ancestors."""
    kept = network.ancestors(nodes)
    return Network(
        {n: p for n, p in network.prior.items() if n in kept},
        {n: p for n, p in network.leak.items() if n in kept},
        {n: links for n, links in network.parents.items() if n in kept},
    )


_CHANCE = st.floats(0.01, 0.99)
_SEEN = st.sampled_from([SEEN, SEEN_NOT_THERE]) | st.floats(0.05, 0.95).map(Likelihood.of)


@st.composite
def networks(draw: st.DrawFn, least: int = 2, most: int = 9) -> Network:
    """Any small acyclic noisy-OR network; a node's parents are drawn from those before it."""
    names = [f"n{i}" for i in range(draw(st.integers(least, most)))]
    roots = draw(st.integers(1, min(5, len(names) - 1)))
    parents: dict[str, dict[str, float]] = {}
    for i, name in enumerate(names[roots:], roots):
        parents[name] = draw(st.dictionaries(st.sampled_from(names[:i]), _CHANCE, max_size=5))
    return Network(
        {n: draw(_CHANCE) for n in names[:roots]},
        {n: draw(_CHANCE) for n in names[roots:]},
        parents,
    )


@st.composite
def nets_with_evidence(draw: st.DrawFn) -> tuple[Network, dict[str, Likelihood]]:
    """A small network with hard and uncertain evidence anywhere in it."""
    network = draw(networks())
    return network, draw(st.dictionaries(st.sampled_from(network.order), _SEEN, max_size=7))

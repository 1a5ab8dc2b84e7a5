"""Small noisy-OR networks with inhibitors: the answer enumerated state by state; random networks."""

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
        absent = np.full(len(rows), 1.0 - network.base(name))
        for parent, strength in network.parents.get(name, {}).items():
            absent *= np.where(there[parent], 1.0 - strength, 1.0)
        present = 1.0 - absent
        for inhibitor, strength in network.inhibitors.get(name, {}).items():
            present = np.where(there[inhibitor], present * (1.0 - strength), present)
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


def random_net(
    seed: int, roots: int, middles: int, leaves: int, fan_in: int = 4, plain: bool = False
) -> Network:
    """A layered net: roots, hidden middles (some fed by others), leaves fed by both.

    ``plain``: without inhibitors, and no cause has parents.
    """
    rng = random.Random(seed)
    cause = [f"r{i}" for i in range(roots)]
    middle = [f"m{i}" for i in range(middles)]
    leaf = [f"f{i}" for i in range(leaves)]
    parents: dict[str, dict[str, float]] = {}
    for i, name in enumerate(middle):
        parents[name] = _links(rng, [*cause, *middle[:i]], fan_in)
    for name in leaf:
        parents[name] = _links(rng, [*cause, *middle], fan_in)
    net = Network(
        {c: rng.uniform(0.02, 0.3) for c in cause},
        {n: rng.uniform(0.002, 0.2) for n in (*middle, *leaf)},
        parents,
    )
    return net if plain else furnished(net, random.Random(-1 - seed))


def furnished(net: Network, rng: random.Random) -> Network:
    """The network with some inhibitors, and with a hidden root that feeds some of its causes."""
    causes, names = list(net.prior), net.order
    leak, parents = dict(net.leak), {n: dict(links) for n, links in net.parents.items()}
    inhibitors: dict[str, dict[str, float]] = {}
    if rng.random() < 0.6:
        leak["hidden"] = rng.uniform(0.02, 0.3)
        for cause in rng.sample(causes, min(len(causes), rng.randint(1, 3))):
            parents[cause] = {"hidden": rng.uniform(0.1, 0.95)}
        if net.leak and rng.random() < 0.5:
            parents.setdefault(rng.choice(list(net.leak)), {})["hidden"] = rng.uniform(0.1, 0.9)
    for i, name in enumerate(names):
        free = [n for n in names[:i] if n not in parents.get(name, {})]
        if free and rng.random() < 0.4:
            inhibitors[name] = _links(rng, free, 2)
    return Network(net.prior, leak, parents, inhibitors)


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
        state[name] = rng.random() < network.chance(name, state)
    return state


def restricted(network: Network, nodes: set[str]) -> Network:
    """The part of the network made of these nodes and everything that bears on them."""
    kept = network.relevant(nodes)
    return Network(
        {n: p for n, p in network.prior.items() if n in kept},
        {n: p for n, p in network.leak.items() if n in kept},
        {n: links for n, links in network.parents.items() if n in kept},
        {n: links for n, links in network.inhibitors.items() if n in kept},
    )


_CHANCE = st.floats(0.01, 0.99)
_SEEN = st.sampled_from([SEEN, SEEN_NOT_THERE]) | st.floats(0.05, 0.95).map(Likelihood.of)


@st.composite
def networks(draw: st.DrawFn, least: int = 2, most: int = 9, plain: bool = False) -> Network:
    """Any small acyclic network; a node's parents and inhibitors are drawn from those before it.

    Any node may be a ranked cause. ``plain``: only the roots are, and there are no inhibitors.
    """
    names = [f"n{i}" for i in range(draw(st.integers(least, most)))]
    roots = draw(st.integers(1, min(5, len(names) - 1)))
    parents: dict[str, dict[str, float]] = {}
    inhibitors: dict[str, dict[str, float]] = {}
    for i, name in enumerate(names[roots:], roots):
        above = draw(st.dictionaries(st.sampled_from(names[:i]), _CHANCE, max_size=5))
        against = set() if plain else draw(st.sets(st.sampled_from(names[:i]), max_size=2))
        parents[name] = {p: q for p, q in above.items() if p not in against}
        inhibitors[name] = {p: draw(_CHANCE) for p in sorted(against)}
    ranked = set(names[:roots]) if plain else draw(st.sets(st.sampled_from(names)))
    chance = {n: draw(_CHANCE) for n in names}
    return Network(
        {n: p for n, p in chance.items() if n in ranked},
        {n: p for n, p in chance.items() if n not in ranked},
        parents,
        inhibitors,
    )


@st.composite
def nets_with_evidence(draw: st.DrawFn) -> tuple[Network, dict[str, Likelihood]]:
    """A small network with hard and uncertain evidence anywhere in it."""
    network = draw(networks())
    return network, draw(st.dictionaries(st.sampled_from(network.order), _SEEN, max_size=7))

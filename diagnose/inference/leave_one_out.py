"""The posterior without each finding in turn.

P(evidence) is linear in a finding's likelihoods, so one sweep already holds P(evidence without
it): the slope on the finding's own hidden variable. With each cause added as evidence in turn,
that gives P(cause | evidence without the finding) without one sweep per finding.
A finding with inhibitors is left out by a sweep of its own. An absent finding with several parents
is left out exactly while that is cheap; in a large case its parents are taken as independent given
the evidence.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from diagnose.inference.elimination import Sweep, effort, posteriors, sweep
from diagnose.inference.network import SEEN, Evidence, Likelihood, Network

CHEAP = 1_000_000  #: table entries of the extra sweeps up to which they are made


@dataclass(frozen=True, slots=True)
class Without:
    """ln P(evidence) and P(cause | evidence) by cause id, both without one finding."""

    log_evidence: float
    marginal: dict[str, float]


def leave_each_out(
    network: Network, evidence: Evidence, causes: Sequence[str], spent: int | None = None
) -> dict[str, Without]:
    """For every finding: the probability of these causes without it.

    ``spent``: the effort of one sweep of this evidence, if known.
    """
    variants = [evidence, *({**evidence, c: SEEN} for c in causes)]
    asked = set(evidence)
    asked.update(
        p for n, e in evidence.items() if not e.if_present for p in network.parents.get(n, ())
    )
    done = sweep(network, variants, asked=asked)
    shared = [n for n, leaf in done.net.absent.items() if len(leaf.links) > 1]
    spent = effort(network, evidence) if spent is None else spent
    exact = [
        n for n, e in evidence.items() if n in network.inhibitors or _certain_inside(done, n, e)
    ]
    if len(shared) * spent <= CHEAP:
        exact += shared
    out = _one_by_one(network, evidence, exact, causes)
    base, *with_cause = (p.log_evidence for p in done.posteriors)
    for name in evidence:
        if name in out:
            continue
        gain = [_gain(done, name, evidence, k) for k in range(len(variants))]
        marginal = {
            c: math.exp(log - base) * gain[k] / gain[0]
            for k, (c, log) in enumerate(zip(causes, with_cause, strict=True), 1)
        }
        out[name] = Without(base + math.log(max(gain[0], 1e-300)), marginal)
    return {n: out[n] for n in evidence}


def _certain_inside(done: Sweep, name: str, seen: Likelihood) -> bool:
    """Whether a node with children is certain, so that its belief no longer tells the two apart."""
    leaf = name in done.net.hidden or name in done.net.absent
    return not leaf and not (seen.if_absent and seen.if_present)


def _one_by_one(
    network: Network, evidence: Evidence, names: list[str], causes: Sequence[str]
) -> dict[str, Without]:
    rest = [{n: e for n, e in evidence.items() if n != name} for name in names]
    found = zip(names, posteriors(network, rest, asked=causes), strict=True)
    return {name: Without(p.log_evidence, {c: p.marginal[c] for c in causes}) for name, p in found}


def _gain(done: Sweep, name: str, evidence: Evidence, k: int) -> float:
    """P(evidence without the finding) / P(evidence) under variant ``k``."""
    seen = evidence[name]
    net = done.net
    if name in net.hidden:
        return float(done.belief[net.hidden[name]][k, 0]) / seen.if_present
    if name in net.absent:
        leaf = net.absent[name]
        gain = 1.0 / (seen.if_absent * leaf.stay)
        gain /= math.prod(1.0 - p * q for _, p, q in leaf.lone)
        for parent, q in leaf.links:
            off, on = done.belief[parent][k]
            gain *= float(off) + float(on) / (1.0 - q)
        return gain
    off, on = done.belief[net.index[name]][k]
    return float(off) / seen.if_absent + float(on) / seen.if_present

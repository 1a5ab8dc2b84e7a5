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
from collections.abc import Mapping, Sequence
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
    asked.update(z for n in evidence for z in network.inhibitors.get(n, ()))
    done = sweep(network, variants, asked=asked)
    shared = [n for n, leaf in done.net.absent.items() if len(leaf.links) > 1]
    inhibited = [n for n in done.net.hidden if n in network.inhibitors]
    spent = effort(network, evidence) if spent is None else spent
    exact = [n for n, e in evidence.items() if _certain_inside(done, n, e)]
    for names in (shared, inhibited):
        if len(names) * spent <= CHEAP:
            exact += names
    out = _one_by_one(network, evidence, exact, causes)
    base, *with_cause = (p.log_evidence for p in done.posteriors)
    for name in evidence:
        if name in out:
            continue
        inhibitors = network.inhibitors.get(name, {})
        gain = [_gain(done, name, evidence[name], inhibitors, k) for k in range(len(variants))]
        marginal = {
            c: math.exp(log - base) * gain[k] / gain[0]
            for k, (c, log) in enumerate(zip(causes, with_cause, strict=True), 1)
        }
        out[name] = Without(base + math.log(max(gain[0], 1e-300)), marginal)
    return {n: out[n] for n in evidence}


def _certain_inside(done: Sweep, name: str, seen: Likelihood) -> bool:
    """Whether a node with children is certain, so that its belief no longer tells the two apart."""
    net = done.net
    leaf = name in net.hidden or name in net.absent or name in net.switch
    return not leaf and not (seen.if_absent and seen.if_present)


def _one_by_one(
    network: Network, evidence: Evidence, names: list[str], causes: Sequence[str]
) -> dict[str, Without]:
    rest = [{n: e for n, e in evidence.items() if n != name} for name in names]
    found = zip(names, posteriors(network, rest, asked=causes), strict=True)
    return {name: Without(p.log_evidence, {c: p.marginal[c] for c in causes}) for name, p in found}


def _gain(
    done: Sweep, name: str, seen: Likelihood, inhibitors: Mapping[str, float], k: int
) -> float:
    """P(evidence without the finding) / P(evidence) under variant ``k``."""
    net = done.net
    if name in net.switch:
        return float(done.belief[net.switch[name]][k, 0]) / seen.if_absent
    if name in net.hidden:
        gain = float(done.belief[net.hidden[name]][k, 0]) / seen.if_present
        for inhibitor, strength in inhibitors.items():
            off, on = done.belief[net.index[inhibitor]][k]
            gain *= float(off) + float(on) / (1.0 - strength)
        return gain
    if name in net.absent:
        leaf = net.absent[name]
        gain = 1.0 / (seen.if_absent * leaf.stay)
        gain /= math.prod(r.missed for r in leaf.lone)
        for parent, q in leaf.links:
            off, on = done.belief[parent][k]
            gain *= float(off) + float(on) / (1.0 - q)
        return gain
    off, on = done.belief[net.index[name]][k]
    return float(off) / seen.if_absent + float(on) / seen.if_present

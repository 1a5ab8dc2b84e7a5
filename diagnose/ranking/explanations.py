"""The best explanations as sets of causes, exactly, best first; imported by ``consultation``."""

from __future__ import annotations

import heapq
from dataclasses import dataclass
from itertools import count

from diagnose.ranking.elimination import ImpossibleEvidenceError, posterior
from diagnose.ranking.network import SEEN, SEEN_NOT_THERE, Evidence, Network


@dataclass(frozen=True, slots=True)
class Explanation:
    """A set of causes present together, all other implicated causes absent, and its share."""

    causes: tuple[str, ...]
    share: float


def best_sets(
    network: Network,
    evidence: Evidence,
    marginal: dict[str, float],
    how_many: int = 3,
    at_most: int = 8,
    sweeps: int = 60,
) -> tuple[Explanation, ...]:
    """The likeliest sets of implicated causes, best first.

    Implicated: posterior at least 2 % and 1.5 times the prior, the ``at_most`` likeliest; every
    other cause stays summed out. Best-first search over partial decisions: the popped
    probability bounds every completion, so sets come out in order. After ``sweeps`` sweeps it
    ends early, with fewer sets, at the first decision that could not be followed up.
    """
    implicated = sorted(
        (c for c, p in network.prior.items() if marginal[c] >= 0.02 and marginal[c] >= 1.5 * p),
        key=lambda c: (-marginal[c], c),
    )[:at_most]
    tie = count()
    heap: list[tuple[float, int, tuple[tuple[str, bool], ...], dict[str, float]]] = [
        (-1.0, next(tie), (), marginal)
    ]
    found: list[Explanation] = []
    missed = 0.0
    while heap and len(found) < how_many:
        share, _, decided, belief = heapq.heappop(heap)
        if share > missed:
            break
        left = [c for c in implicated if c not in dict(decided)]
        if not left:
            found.append(Explanation(tuple(c for c, there in decided if there), -share))
            continue
        pick = max(left, key=lambda c: (belief[c], c))
        for there in (True, False):
            p = belief[pick] if there else 1.0 - belief[pick]
            if p <= 1e-9:
                continue
            now = (*decided, (pick, there))
            if len(now) < len(implicated):
                if sweeps <= 0:
                    missed = min(missed, share * p)
                    continue
                sweeps -= 1
                fixed = {c: SEEN if t else SEEN_NOT_THERE for c, t in now}
                try:
                    belief_now = posterior(network, {**evidence, **fixed}).marginal
                except ImpossibleEvidenceError:
                    continue
            else:
                belief_now = belief
            heapq.heappush(heap, (share * p, next(tie), now, belief_now))
    return tuple(found)

"""Exact marginals of a noisy-OR network by signed elimination; imported by ``ranking`` only.

A present finding is 1 minus a product: it is split with a hidden two-state variable of
weights +1 and -(1 - leak), so every table has two variables whatever the fan-in (after
Heckerman 1989 and Díez & Galán 2003). An absent finding is a plain product and couples nothing.
"""

from __future__ import annotations

import heapq
import math
from collections.abc import Iterable
from dataclasses import dataclass
from functools import reduce
from operator import mul

import numpy as np
from numpy.typing import NDArray

from diagnose.ranking.network import Evidence, Likelihood, Network

Array = NDArray[np.floating]
Table = tuple[tuple[int, ...], Array]

WIDEST = 22  #: variables in one table; above it memory, not time, would end the run
_NOTHING = Likelihood(1.0, 1.0)


class TooEntangledError(Exception):
    """The evidence couples more causes than one table can hold."""


class ImpossibleEvidenceError(Exception):
    """The evidence has probability zero under the network."""


@dataclass(frozen=True)
class Posterior:
    """Marginals P(node | evidence) and the natural logarithm of P(evidence)."""

    marginal: dict[str, float]
    log_evidence: float


def posterior(
    network: Network, evidence: Evidence, precision: type[np.floating] = np.float64
) -> Posterior:
    """Every marginal of the nodes that matter to the evidence; other roots keep their prior.

    Leaves seen for certain have no marginal; name a node with Likelihood(1, 1) to get its own.

    Raises ImpossibleEvidenceError, TooEntangledError.
    """
    net = _tables(network, evidence, precision)
    buckets = _eliminate(net.tables, net.variables)
    log_scale, belief = _sweep(buckets, net.wanted)
    if net.scale <= 0.0 or not math.isfinite(log_scale):
        raise ImpossibleEvidenceError
    found = dict(network.prior)
    found.update((n, float(belief[i][1])) for n, i in net.index.items() if i in belief)
    for name, hidden, p, q in net.folded:
        off, on = (float(b) for b in belief[hidden])
        found[name] = off * p + on * p * (1.0 - q) / (1.0 - p * q)
    return Posterior(found, log_scale + math.log(net.scale))


@dataclass(slots=True)
class _Tables:
    """The network restricted to what matters, as tables of one or two variables."""

    index: dict[str, int]
    tables: list[Table]
    folded: list[tuple[str, int, float, float]]  #: roots of one child: name, hidden, prior, link
    wanted: set[int]
    scale: float = 1.0
    variables: int = 0


def _tables(network: Network, evidence: Evidence, precision: type[np.floating]) -> _Tables:
    """Split every node; a root with one child and no evidence is summed out on the spot."""
    kept = network.ancestors(set(evidence))
    names = [n for n in network.order if n in kept]
    children: dict[str, int] = {}
    for name in names:
        for parent in network.parents.get(name, ()):
            children[parent] = children.get(parent, 0) + 1
    alone = {n for n in names if n in network.prior and n not in evidence and children.get(n) == 1}
    index = {n: i for i, n in enumerate(n for n in names if n not in alone)}
    net = _Tables(index, [], [], set(index.values()))
    tables = net.tables
    variables = len(index)

    def array(values: object) -> Array:
        return np.array(values, dtype=precision)

    for name in names:
        if name in alone:
            continue
        seen = evidence.get(name, _NOTHING)
        node = index[name]
        if name in network.prior:
            p = network.prior[name]
            tables.append(((node,), array([(1 - p) * seen.if_absent, p * seen.if_present])))
            continue
        stay = 1.0 - network.leak[name]
        every = network.parents.get(name, {})
        links = [(index[p], q) for p, q in every.items() if p not in alone]
        lone = [(p, network.prior[p], q) for p, q in every.items() if p in alone]
        if name not in children and seen.if_present == 0.0 and not lone:
            net.scale *= seen.if_absent * stay
            tables.extend(((p,), array([1.0, 1.0 - q])) for p, q in links)
            continue
        hidden, variables = variables, variables + 1
        if lone:
            net.wanted.add(hidden)
            net.folded.extend((p, hidden, prior, q) for p, prior, q in lone)
            missed = math.prod(1.0 - prior * q for _, prior, q in lone)
            tables.append(((hidden,), array([1.0, missed])))
        if name in children or (seen.if_absent and seen.if_present):
            tables.append(
                (
                    (node, hidden),
                    array(
                        [[0.0, stay * seen.if_absent], [seen.if_present, -stay * seen.if_present]]
                    ),
                )
            )
        else:
            weight = (seen.if_absent - seen.if_present) * stay
            tables.append(((hidden,), array([seen.if_present, weight])))
        tables.extend(((hidden, p), array([[1.0, 1.0], [1.0, 1.0 - q]])) for p, q in links)
    net.variables = variables
    return net


@dataclass(slots=True)
class _Bucket:
    """One variable being summed out: its own tables, and messages from earlier buckets."""

    variable: int
    scope: tuple[int, ...]
    own: list[Table]
    incoming: list[int]


def _eliminate(tables: list[Table], variables: int) -> list[_Bucket]:
    """Order by least neighbours, then least fill; assign every table and message a bucket."""
    neighbours: dict[int, set[int]] = {}
    at: dict[int, list[Table]] = {}
    for table in tables:
        for v in table[0]:
            neighbours.setdefault(v, set()).update(table[0])
            at.setdefault(v, []).append(table)
    for v, around in neighbours.items():
        around.discard(v)
    heap = [(len(around), 0, v) for v, around in neighbours.items()]
    heapq.heapify(heap)
    gone: set[int] = set()
    used: set[int] = set()
    messages: dict[int, list[int]] = {}
    buckets: list[_Bucket] = []
    while heap:
        size, fill, v = heapq.heappop(heap)
        around = neighbours[v]
        if v in gone or size != len(around):
            continue
        exact = _fill(around, neighbours) if size > 1 else 0
        if exact > fill:
            heapq.heappush(heap, (size, exact, v))
            continue
        if size >= WIDEST:
            raise TooEntangledError
        gone.add(v)
        own = [t for t in at[v] if id(t) not in used]
        used.update(id(t) for t in own)
        buckets.append(_Bucket(v, (v, *sorted(around)), own, messages.pop(v, [])))
        for u in around:
            neighbours[u] |= around
            neighbours[u] -= {u, v}
            heapq.heappush(heap, (len(neighbours[u]), 0, u))
        buckets[-1].scope = (v, *sorted(around))
    _route(buckets)
    return buckets


def _fill(around: set[int], neighbours: dict[int, set[int]]) -> int:
    return sum(len(around - neighbours[u]) - 1 for u in around) // 2


def _route(buckets: list[_Bucket]) -> None:
    """Send each bucket's message to the bucket that eliminates its first variable."""
    position = {b.variable: i for i, b in enumerate(buckets)}
    for i, bucket in enumerate(buckets):
        rest = bucket.scope[1:]
        if rest:
            buckets[min(position[v] for v in rest)].incoming.append(i)


def _spread(scope: tuple[int, ...], table: Table) -> Array:
    """The table with one axis for every variable of the scope."""
    variables, values = table
    order = sorted(range(len(variables)), key=lambda i: scope.index(variables[i]))
    values = values.transpose(order)
    there = set(variables)
    return values.reshape([2 if v in there else 1 for v in scope])


def _product(arrays: Iterable[Array], size: int) -> Array:
    return reduce(mul, arrays, np.ones((1,) * size))


def _sweep(buckets: list[_Bucket], wanted: set[int]) -> tuple[float, dict[int, Array]]:
    """Forward: sum variables out. Backward: derivatives, which are the marginals."""
    log_scale = 0.0
    messages: list[Table] = []
    own: list[Array] = []
    for bucket in buckets:
        size = len(bucket.scope)
        base = _product((_spread(bucket.scope, t) for t in bucket.own), size)
        own.append(base)
        full = base
        for i in bucket.incoming:
            full = full * _spread(bucket.scope, messages[i])
        full = np.broadcast_to(full, (2,) * size)
        message = full.sum(axis=0)
        largest = float(np.abs(message).max())
        if largest <= 0.0:
            raise ImpossibleEvidenceError
        log_scale += math.log(largest)
        messages.append((bucket.scope[1:], message / largest))
        if size == 1 and float(message) <= 0.0:
            raise ImpossibleEvidenceError
    slope: list[Array] = [np.ones(())] * len(buckets)
    marginals: dict[int, Array] = {}
    for k in range(len(buckets) - 1, -1, -1):
        bucket = buckets[k]
        size = len(bucket.scope)
        came = [_spread(bucket.scope, messages[i]) for i in bucket.incoming]
        above = slope[k].reshape((1,) + (2,) * (size - 1))
        before = [own[k] * above]
        for array in came:
            before.append(before[-1] * array)
        if bucket.variable in wanted:
            both = np.broadcast_to(before[-1], (2,) * size).sum(axis=tuple(range(1, size)))
            marginals[bucket.variable] = both / (both[0] + both[1])
        after: Array = np.ones((1,) * size)
        for j in range(len(came) - 1, -1, -1):
            scope = messages[bucket.incoming[j]][0]
            rest = np.broadcast_to(before[j] * after, (2,) * size)
            away = tuple(a for a, v in enumerate(bucket.scope) if v not in scope)
            kept = [v for v in bucket.scope if v in scope]
            flat = rest.sum(axis=away)
            flat = flat.transpose([kept.index(v) for v in scope])
            largest = float(np.abs(flat).max())
            slope[bucket.incoming[j]] = flat / largest if largest else flat
            after = after * came[j]
    return log_scale, marginals

"""Exact marginals of a noisy-OR network by signed elimination; imported by ``ranking`` only.

Several bodies of evidence that differ a little ("without this finding", "if that were seen")
share one elimination, as a leading axis of every table.
"""

from __future__ import annotations

import heapq
import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import lru_cache

import numpy as np

from diagnose.ranking.network import Evidence, Network
from diagnose.ranking.splitting import Array, Split, Table, split

LARGE = 60_000  #: numbers in a sweep from which other orders are worth trying
WIDEST = 22  #: variables in one table; above it memory, not time, would end the run


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
    (only,) = posteriors(network, [evidence], precision)
    if not math.isfinite(only.log_evidence):
        raise ImpossibleEvidenceError
    return only


def posteriors(
    network: Network, variants: Sequence[Evidence], precision: type[np.floating] = np.float64
) -> list[Posterior]:
    """The posterior under each variant of the evidence, in one sweep.

    A variant that cannot be has a log evidence of minus infinity. Raises TooEntangledError.
    """
    if not variants:
        return []
    return sweep(network, variants, precision).posteriors


@dataclass(frozen=True, slots=True)
class Sweep:
    """What one sweep leaves: posteriors, and the beliefs of every wanted variable."""

    net: Split
    belief: dict[int, Array]
    posteriors: list[Posterior]


def sweep(
    network: Network, variants: Sequence[Evidence], precision: type[np.floating] = np.float64
) -> Sweep:
    """Sum everything out forward, and back again for the marginals of each variant."""
    net = split(network, variants, precision)
    buckets = _eliminate(net.tables, net.variables)
    messages, log_scale = _forward(buckets, len(variants))
    belief = {
        v: np.broadcast_to(b, (len(variants), 2))
        for v, b in _backward(buckets, messages, net.wanted).items()
    }
    out = []
    for k, log_evidence in enumerate(log_scale + net.log_scale):
        found = dict(network.prior)
        found.update((n, float(belief[i][k, 1])) for n, i in net.index.items() if i in belief)
        for name, hidden, p, q in net.folded:
            off, on = (float(b) for b in belief[hidden][k])
            found[name] = off * p + on * p * (1.0 - q) / (1.0 - p * q)
        for leaf in net.denied.values():
            if leaf.speaks[min(k, len(leaf.speaks) - 1)]:
                found.update((n, p * (1.0 - q) / (1.0 - p * q)) for n, p, q in leaf.lone)
        out.append(Posterior(found, float(log_evidence)))
    return Sweep(net, belief, out)


def effort(network: Network, evidence: Evidence) -> int:
    """How many numbers one sweep of this evidence goes through."""
    net = split(network, [evidence], np.float64)
    return sum(1 << len(b.scope) for b in _eliminate(net.tables, net.variables))


def log_evidences(network: Network, variants: Sequence[Evidence]) -> list[float]:
    """ln P(evidence) of each variant, in half a sweep. Raises TooEntangledError."""
    if not variants:
        return []
    net = split(network, variants, np.float64)
    _, log_scale = _forward(_eliminate(net.tables, net.variables), len(variants))
    return [float(x) for x in log_scale + net.log_scale]


@dataclass(slots=True)
class _Bucket:
    """One variable being summed out: its own tables, and messages from earlier buckets."""

    variable: int
    scope: tuple[int, ...]
    own: list[Table]
    incoming: list[int]
    full: Array = field(default_factory=lambda: np.ones(1))


def _eliminate(tables: list[Table], variables: int) -> list[_Bucket]:
    """Assign every table and message the bucket that sums its first variable out.

    Raises TooEntangledError.
    """
    order = _best_order(tuple(scope for scope, _ in tables), variables)
    if max((len(around) for _, around in order), default=0) >= WIDEST:
        raise TooEntangledError
    position = {v: i for i, (v, _) in enumerate(order)}
    # soonest gone first: tables then share their last axes and numpy runs over long rows
    buckets = [
        _Bucket(v, tuple(sorted((v, *around), key=position.__getitem__)), [], [])
        for v, around in order
    ]
    for table in tables:
        buckets[min(position[v] for v in table[0])].own.append(table)
    for i, bucket in enumerate(buckets):
        if len(bucket.scope) > 1:
            buckets[position[bucket.scope[1]]].incoming.append(i)
    return buckets


Order = list[tuple[int, frozenset[int]]]


@lru_cache(maxsize=64)
def _best_order(scopes: tuple[tuple[int, ...], ...], variables: int) -> Order:
    """A greedy order; where it comes out large, others are tried and the least is taken."""
    orders = [_ordered(scopes, variables, 1, 0)]
    if _effort(orders[0]) > LARGE:
        orders += [_ordered(scopes, variables, *mix) for mix in ((1, 1), (2, 1), (4, 1))]
    return min(orders, key=_effort)


def _effort(order: Order) -> int:
    return sum(2 << len(around) for _, around in order)


def _ordered(
    scopes: tuple[tuple[int, ...], ...], variables: int, by_size: int, by_fill: int
) -> Order:
    """Least neighbours first, ties by least fill; or least of a mix of both (weights)."""
    neighbours: list[set[int]] = [set() for _ in range(variables)]
    there = [False] * variables
    for scope in scopes:
        for v in scope:
            neighbours[v].update(scope)
            there[v] = True
    for v, around in enumerate(neighbours):
        around.discard(v)

    def entry(v: int, fill: int) -> tuple[int, int, int, int]:
        size = len(neighbours[v])
        return by_size * size + by_fill * fill, fill, v, size

    heap = [entry(v, 0) for v in range(variables) if there[v]]
    heapq.heapify(heap)
    gone = [False] * variables
    order: Order = []
    while heap:
        _, fill, v, size = heapq.heappop(heap)
        around = neighbours[v]
        if gone[v] or size != len(around):
            continue
        exact = _fill(around, neighbours) if size > 1 else 0
        if exact > fill:
            heapq.heappush(heap, entry(v, exact))
            continue
        gone[v] = True
        order.append((v, frozenset(around)))
        for u in around:
            neighbours[u] |= around
            neighbours[u] -= {u, v}
            heapq.heappush(heap, entry(u, 0))
    return order


def _fill(around: set[int], neighbours: list[set[int]]) -> int:
    return sum(len(around - neighbours[u]) - 1 for u in around) // 2


def _spread(scope: tuple[int, ...], table: Table) -> Array:
    """The table with one axis for every variable of the scope, behind the variants' axis."""
    variables, values = table
    order = sorted(range(len(variables)), key=lambda i: scope.index(variables[i]))
    if order != list(range(len(variables))):
        values = values.transpose([0, *(i + 1 for i in order)])
    there = set(variables)
    return values.reshape([len(values), *(2 if v in there else 1 for v in scope)])


def _product(scope: tuple[int, ...], tables: list[Table]) -> Array:
    """All tables multiplied over the whole scope, small ones first."""
    full = np.ones((1,) * (len(scope) + 1))
    for table in sorted(tables, key=lambda t: t[1].size):
        full = full * _spread(scope, table)
    return np.broadcast_to(full, (len(full), *(2,) * len(scope)))


def _forward(buckets: list[_Bucket], variants: int) -> tuple[list[Table], Array]:
    """Sum variables out one after another; the logarithm of what is left, for each variant."""
    log_scale: Array = np.zeros(variants)
    messages: list[Table] = []
    for bucket in buckets:
        tables = [*bucket.own, *(messages[i] for i in bucket.incoming)]
        bucket.full = full = _product(bucket.scope, tables)
        message = full.sum(axis=1)
        axes = tuple(range(1, message.ndim))
        largest: Array = np.abs(message).max(axis=axes) if axes else message
        with np.errstate(divide="ignore", invalid="ignore"):
            log_scale = log_scale + np.log(np.where(largest > 0.0, largest, 0.0))
        safe = np.where(largest > 0.0, largest, 1.0)
        messages.append((bucket.scope[1:], message / safe.reshape(-1, *(1,) * len(axes))))
    return messages, log_scale


def _backward(buckets: list[_Bucket], messages: list[Table], wanted: set[int]) -> dict[int, Array]:
    """Derivatives of P(evidence) with respect to every message, which give the marginals.

    A bucket's product summed onto a message's scope is that message times its derivative, so
    one division gives it; where the message is zero the product is made again without it.
    """
    slope: list[Array] = [np.ones((1,))] * len(buckets)
    belief: dict[int, Array] = {}
    for k in range(len(buckets) - 1, -1, -1):
        bucket = buckets[k]
        size = len(bucket.scope)
        above = slope[k].reshape(len(slope[k]), 1, *(2,) * (size - 1))
        joint = bucket.full * above
        if bucket.variable in wanted:
            belief[bucket.variable] = _belief(joint, size)
        for i in bucket.incoming:
            scope, message = messages[i]
            if (np.abs(message) > 1e-200).all():
                flat: Array = _onto(joint, bucket.scope, scope) / message
            else:
                others = [messages[o] for o in bucket.incoming if o != i]
                rest = _product(bucket.scope, [*bucket.own, *others]) * above
                flat = _onto(rest, bucket.scope, scope)
            axes = tuple(range(1, flat.ndim))
            largest: Array = np.abs(flat).max(axis=axes, keepdims=True)
            slope[i] = flat / np.where(largest > 0.0, largest, 1.0)
    return belief


def _onto(joint: Array, scope: tuple[int, ...], kept: tuple[int, ...]) -> Array:
    """Summed over every variable but the kept; both scopes run in the same order."""
    out: Array = joint.sum(axis=tuple(a + 1 for a, v in enumerate(scope) if v not in kept))
    return out


def _belief(joint: Array, size: int) -> Array:
    """P(variable | evidence) for each variant, shape (variants, 2)."""
    both: Array = joint.sum(axis=tuple(range(2, size + 1)))
    with np.errstate(divide="ignore", invalid="ignore"):
        out: Array = both / both.sum(axis=1, keepdims=True)
    return out

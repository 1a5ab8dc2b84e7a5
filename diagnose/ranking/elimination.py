"""Exact marginals of a noisy-OR network by signed elimination; imported by ``ranking`` only.

A present finding is 1 minus a product: it is split with a hidden two-state variable of
weights +1 and -(1 - leak), so every table has two variables whatever the fan-in (after
Heckerman 1989 and Díez & Galán 2003). An absent finding is a plain product and couples nothing.
Several bodies of evidence that differ a little ("without this finding", "if that were seen")
share one elimination, as a leading axis of every table.
"""

from __future__ import annotations

import heapq
import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
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
    net = _split(network, variants, precision)
    buckets = _eliminate(net.tables, net.variables)
    messages, log_scale = _forward(buckets, len(variants))
    belief = _backward(buckets, messages, net.wanted)
    log_evidence = log_scale + net.log_scale
    belief = {v: np.broadcast_to(b, (len(variants), 2)) for v, b in belief.items()}
    out = []
    for k in range(len(variants)):
        found = dict(network.prior)
        found.update((n, float(belief[i][k, 1])) for n, i in net.index.items() if i in belief)
        for name, hidden, p, q in net.folded:
            off, on = (float(b) for b in belief[hidden][k])
            found[name] = off * p + on * p * (1.0 - q) / (1.0 - p * q)
        out.append(Posterior(found, float(log_evidence[k])))
    return out


def log_evidences(network: Network, variants: Sequence[Evidence]) -> list[float]:
    """ln P(evidence) of each variant, in half a sweep. Raises TooEntangledError."""
    if not variants:
        return []
    net = _split(network, variants, np.float64)
    _, log_scale = _forward(_eliminate(net.tables, net.variables), len(variants))
    return [float(x) for x in log_scale + net.log_scale]


@dataclass(slots=True)
class _Split:
    """The network restricted to what matters, as tables of one or two variables.

    Every table has a leading axis of one entry a variant, or of one for all.
    """

    index: dict[str, int]
    wanted: set[int]
    log_scale: Array
    variables: int
    tables: list[Table] = field(default_factory=list)
    folded: list[tuple[str, int, float, float]] = field(default_factory=list)


def _split(network: Network, variants: Sequence[Evidence], precision: type[np.floating]) -> _Split:
    """Split every node; a root with one child and no evidence is summed out on the spot."""
    named = {n for v in variants for n in v}
    kept = network.ancestors(named)
    names = [n for n in network.order if n in kept]
    children: dict[str, int] = {}
    for name in names:
        for parent in network.parents.get(name, ()):
            children[parent] = children.get(parent, 0) + 1
    alone = {n for n in names if n in network.prior and n not in named and children.get(n) == 1}
    index = {n: i for i, n in enumerate(n for n in names if n not in alone)}
    net = _Split(index, set(index.values()), np.zeros(len(variants)), len(index))

    def array(values: object) -> Array:
        return np.array(values, dtype=precision)

    one = array([1.0])
    for name in names:
        if name in alone:
            continue
        node = index[name]
        gone, there = one, one
        if name in named:
            seen = [v.get(name, _NOTHING) for v in variants]
            gone, there = array([s.if_absent for s in seen]), array([s.if_present for s in seen])
        if name in network.prior:
            p = network.prior[name]
            net.tables.append(((node,), np.stack([(1 - p) * gone, p * there], axis=-1)))
            continue
        stay = 1.0 - network.leak[name]
        every = network.parents.get(name, {})
        links = [(index[p], q) for p, q in every.items() if p not in alone]
        lone = [(p, network.prior[p], q) for p, q in every.items() if p in alone]
        denied = there == 0.0
        plain = bool((denied | (there == gone)).all() and denied.any())
        if name not in children and not lone and plain:
            _plain_product(net, stay, links, gone, there)
            continue
        hidden = net.variables
        net.variables += 1
        if lone:
            net.wanted.add(hidden)
            net.folded.extend((p, hidden, prior, q) for p, prior, q in lone)
            missed = math.prod(1.0 - prior * q for _, prior, q in lone)
            net.tables.append(((hidden,), array([[1.0, missed]])))
        if name in children or bool((gone * there).any()):
            rows = [[0.0 * gone, stay * gone], [there, -stay * there]]
            both = np.stack([np.stack(r, axis=-1) for r in rows], axis=1)
            net.tables.append(((node, hidden), both))
        else:
            weight = np.stack([there, (gone - there) * stay], axis=-1)
            net.tables.append(((hidden,), weight))
        net.tables.extend(((hidden, p), array([[[1.0, 1.0], [1.0, 1.0 - q]]])) for p, q in links)
    return net


def _plain_product(
    net: _Split, stay: float, links: list[tuple[int, float]], gone: Array, there: Array
) -> None:
    """A finding absent, or not looked at, in every variant: one factor a parent, no coupling."""
    speaks = there == 0.0
    with np.errstate(divide="ignore"):
        net.log_scale = net.log_scale + np.log(np.where(speaks, gone * stay, gone))
    for parent, q in links:
        on = np.where(speaks, 1.0 - q, 1.0).astype(gone.dtype)
        net.tables.append(((parent,), np.stack([np.ones_like(on), on], axis=-1)))


@dataclass(slots=True)
class _Bucket:
    """One variable being summed out: its own tables, and messages from earlier buckets."""

    variable: int
    scope: tuple[int, ...]
    own: list[Table]
    incoming: list[int]
    base: Array = field(default_factory=lambda: np.ones(1))


def _eliminate(tables: list[Table], variables: int) -> list[_Bucket]:
    """Order by least neighbours, then least fill; assign every table and message a bucket."""
    neighbours: list[set[int]] = [set() for _ in range(variables)]
    at: list[list[int]] = [[] for _ in range(variables)]
    for i, (scope, _) in enumerate(tables):
        for v in scope:
            neighbours[v].update(scope)
            at[v].append(i)
    for v, around in enumerate(neighbours):
        around.discard(v)
    heap = [(len(around), 0, v) for v, around in enumerate(neighbours) if at[v]]
    heapq.heapify(heap)
    gone = [False] * variables
    used = [False] * len(tables)
    buckets: list[_Bucket] = []
    while heap:
        size, fill, v = heapq.heappop(heap)
        around = neighbours[v]
        if gone[v] or size != len(around):
            continue
        exact = _fill(around, neighbours) if size > 1 else 0
        if exact > fill:
            heapq.heappush(heap, (size, exact, v))
            continue
        if size >= WIDEST:
            raise TooEntangledError
        gone[v] = True
        own = [tables[i] for i in at[v] if not used[i]]
        for i in at[v]:
            used[i] = True
        buckets.append(_Bucket(v, (v, *sorted(around)), own, []))
        for u in around:
            neighbours[u] |= around
            neighbours[u] -= {u, v}
            heapq.heappush(heap, (len(neighbours[u]), 0, u))
    position = {b.variable: i for i, b in enumerate(buckets)}
    for i, bucket in enumerate(buckets):
        if len(bucket.scope) > 1:
            buckets[min(position[v] for v in bucket.scope[1:])].incoming.append(i)
    return buckets


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


def _product(arrays: Iterable[Array], size: int) -> Array:
    return reduce(mul, arrays, np.ones((1,) * (size + 1)))


def _forward(buckets: list[_Bucket], variants: int) -> tuple[list[Table], Array]:
    """Sum variables out one after another; the logarithm of what is left, for each variant."""
    log_scale: Array = np.zeros(variants)
    messages: list[Table] = []
    for bucket in buckets:
        size = len(bucket.scope)
        bucket.base = _product((_spread(bucket.scope, t) for t in bucket.own), size)
        full = bucket.base
        for i in bucket.incoming:
            full = full * _spread(bucket.scope, messages[i])
        if full.shape[1:] != (2,) * size:
            full = np.broadcast_to(full, (len(full), *(2,) * size))
        message = full.sum(axis=1)
        axes = tuple(range(1, message.ndim))
        largest = np.abs(message).max(axis=axes) if axes else message
        with np.errstate(divide="ignore", invalid="ignore"):
            log_scale = log_scale + np.log(np.where(largest > 0.0, largest, 0.0))
        safe = np.where(largest > 0.0, largest, 1.0)
        messages.append((bucket.scope[1:], message / safe.reshape(-1, *(1,) * len(axes))))
    return messages, log_scale


def _backward(buckets: list[_Bucket], messages: list[Table], wanted: set[int]) -> dict[int, Array]:
    """Derivatives of P(evidence) with respect to every message, which give the marginals."""
    slope: list[Array] = [np.ones((1,))] * len(buckets)
    belief: dict[int, Array] = {}
    for k in range(len(buckets) - 1, -1, -1):
        bucket = buckets[k]
        size = len(bucket.scope)
        came = [_spread(bucket.scope, messages[i]) for i in bucket.incoming]
        above = slope[k].reshape(len(slope[k]), 1, *(2,) * (size - 1))
        before = [bucket.base * above]
        for array in came:
            before.append(before[-1] * array)
        if bucket.variable in wanted:
            belief[bucket.variable] = _belief(before[-1], size)
        after: Array = np.ones((1,) * (size + 1))
        for j in range(len(came) - 1, -1, -1):
            scope = messages[bucket.incoming[j]][0]
            rest = before[j] * after
            rest = np.broadcast_to(rest, (len(rest), *(2,) * size))
            flat = rest.sum(axis=tuple(a + 1 for a, v in enumerate(bucket.scope) if v not in scope))
            kept = [v for v in bucket.scope if v in scope]
            flat = flat.transpose([0, *(kept.index(v) + 1 for v in scope)])
            axes = tuple(range(1, flat.ndim))
            largest = np.abs(flat).max(axis=axes, keepdims=True)
            slope[bucket.incoming[j]] = flat / np.where(largest > 0.0, largest, 1.0)
            after = after * came[j]
    return belief


def _belief(joint: Array, size: int) -> Array:
    """P(variable | evidence) for each variant, shape (variants, 2)."""
    joint = np.broadcast_to(joint, (len(joint), *(2,) * size))
    both: Array = joint.sum(axis=tuple(range(2, size + 1)))
    with np.errstate(divide="ignore", invalid="ignore"):
        out: Array = both / both.sum(axis=1, keepdims=True)
    return out

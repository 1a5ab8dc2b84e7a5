"""Exact marginals of a noisy-OR network with inhibitors, by signed variable elimination.

Several variants of the evidence ("without this finding", "if that were seen") share one
elimination, as a leading axis of every table.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np

from diagnose.inference.network import Evidence, Network
from diagnose.inference.ordering import best_order
from diagnose.inference.splitting import Array, Split, Table, split

BULKY = 4_096  #: entries of a table from which multiplying in place is worth it
ROW = 4  #: last axes along which a small table is filled in before it multiplies a large one
LONG = 16  #: entries of a row from which numpy adds rows fast
WIDEST = 22  #: variables in one table; wider ones do not fit into memory


class TooEntangledError(Exception):
    """The evidence couples more causes than one table can hold."""


class ImpossibleEvidenceError(Exception):
    """The evidence has probability zero under the network."""


@dataclass(frozen=True)
class Posterior:
    """Marginals P(node | evidence) and the natural logarithm of P(evidence)."""

    marginal: dict[str, float]
    log_evidence: float
    effort: int  #: table entries of one sweep, for one variant


def posterior(
    network: Network, evidence: Evidence, precision: type[np.floating] = np.float64
) -> Posterior:
    """The marginals of the nodes relevant to the evidence; other causes keep their prior.

    A leaf observed with certainty has no marginal; give a node Likelihood(1, 1) to get one.

    Raises ImpossibleEvidenceError, TooEntangledError.
    """
    (only,) = posteriors(network, [evidence], precision)
    if not math.isfinite(only.log_evidence):
        raise ImpossibleEvidenceError
    return only


def posteriors(
    network: Network,
    variants: Sequence[Evidence],
    precision: type[np.floating] = np.float64,
    asked: Collection[str] | None = None,
) -> list[Posterior]:
    """The posterior under each variant of the evidence, in one sweep.

    ``asked``: the nodes that need a marginal; default all.
    An impossible variant has a log evidence of minus infinity. Raises TooEntangledError.
    """
    if not variants:
        return []
    return sweep(network, variants, precision, asked).posteriors


@dataclass(frozen=True, slots=True)
class Sweep:
    """The result of one sweep: posteriors, and the belief of every wanted variable."""

    net: Split
    belief: dict[int, Array]
    posteriors: list[Posterior]


def sweep(
    network: Network,
    variants: Sequence[Evidence],
    precision: type[np.floating] = np.float64,
    asked: Collection[str] | None = None,
) -> Sweep:
    """Eliminate all variables forward, then backward for the marginals of each variant.

    ``asked``: the nodes that need a belief; default all.
    """
    net = split(network, variants, precision, asked)
    buckets = _eliminate(net.tables, net.variables)
    numbers = _entries(buckets)
    messages, log_scale = _forward(buckets, len(variants))
    belief: dict[int, Array] = {
        v: np.broadcast_to(b, (len(variants), 2))
        for v, b in _backward(buckets, messages, net.wanted).items()
    }
    out = []
    for k, log_evidence in enumerate(log_scale + net.log_scale):
        found = {n: p for n, p in network.prior.items() if asked is None or n in asked}
        found.update((n, float(belief[i][k, 1])) for n, i in net.index.items() if i in belief)
        for folded in net.folded:
            off, on = (float(b) for b in belief[folded.hidden][k])
            root = folded.root
            p, q = root.prior, root.strength
            found[root.name] = off * p + on * p * (1.0 - q) / root.missed
        for leaf in net.absent.values():
            if leaf.absent[min(k, len(leaf.absent) - 1)]:
                found.update((r.name, r.if_missed) for r in leaf.lone if r.name in found)
        out.append(Posterior(found, float(log_evidence), numbers))
    return Sweep(net, belief, out)


def prior_marginals(network: Network) -> dict[str, float]:
    """P(ranked cause) before any evidence: of one with parents more than its ``prior``."""
    found = posterior(network, {}).marginal if network.fed else network.prior
    return {c: found[c] for c in network.prior}


def effort(network: Network, evidence: Evidence) -> int:
    """Number of table entries in one sweep of this evidence."""
    net = split(network, [evidence], np.float64)
    return _entries(_eliminate(net.tables, net.variables))


def log_evidences(network: Network, variants: Sequence[Evidence]) -> list[float]:
    """ln P(evidence) of each variant, by a forward sweep only. Raises TooEntangledError."""
    if not variants:
        return []
    net = split(network, variants, np.float64, asked=())
    _, log_scale = _forward(_eliminate(net.tables, net.variables), len(variants))
    return [float(x) for x in log_scale + net.log_scale]


_ONE: Array = np.ones(1)


@dataclass(slots=True)
class _Bucket:
    """The tables of one variable to eliminate, and messages from earlier buckets."""

    variable: int
    scope: tuple[int, ...]
    own: list[Table]
    incoming: list[int]
    full: Array = field(default_factory=lambda: _ONE)


def _eliminate(tables: list[Table], variables: int) -> list[_Bucket]:
    """Assign every table and message to the bucket that eliminates its first variable.

    Raises TooEntangledError.
    """
    order = best_order(tuple(scope for scope, _ in tables), variables)
    if max((len(around) for _, around in order), default=0) >= WIDEST:
        raise TooEntangledError
    position = {v: i for i, (v, _) in enumerate(order)}
    # first eliminated first: tables then share their last axes and numpy runs over long rows
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


def _entries(buckets: list[_Bucket]) -> int:
    """Table entries of one sweep, for one variant."""
    return sum(1 << len(b.scope) for b in buckets)


def _spread(place: Mapping[int, int], table: Table) -> Array:
    """The table with one axis for every variable of the scope, after the variants' axis."""
    variables, values = table
    at = [place[v] for v in variables]
    if len(at) == 2 and at[0] > at[1]:  # larger messages are in the scope's order already
        values = values.swapaxes(1, 2)
    elif len(at) == 3 and not at[0] < at[1] < at[2]:
        values = values.transpose(0, *(1 + k for k in sorted(range(3), key=at.__getitem__)))
    shape = [len(values)] + [1] * len(place)
    for i in at:
        shape[i + 1] = 2
    return values.reshape(shape)


def _product(scope: tuple[int, ...], tables: list[Table]) -> Array:
    """The product of all tables over the whole scope, small ones first."""
    place = {v: i for i, v in enumerate(scope)}
    first, *more = sorted(tables, key=lambda t: t[1].size) or [((), _ONE)]
    full = _spread(place, first)
    if full.size >= BULKY:  # it belongs to a message, and a large product is made in place
        full = full.copy()
    for table in more:
        full = _times(full, _spread(place, table))
    shape = (len(full), *(2,) * len(scope))
    return full if full.shape == shape else np.broadcast_to(full, shape)


def _times(left: Array, right: Array) -> Array:
    """The product; computed in place of a large ``left``, because allocation costs time."""
    if left.size * right.size < BULKY:
        return left * right
    shape = tuple(map(max, left.shape, right.shape))
    if math.prod(shape) < BULKY:
        return left * right
    if left.shape != shape or not left.flags.writeable:
        return _in_rows(left, shape) * _in_rows(right, shape)
    return np.multiply(left, _in_rows(right, shape), out=left)


def _in_rows(small: Array, shape: tuple[int, ...]) -> Array:
    """The table with the last axes of ``shape`` filled in, so that numpy multiplies whole rows."""
    wanted = (*small.shape[:-ROW], *shape[-ROW:])
    if small.shape == wanted or math.prod(wanted) * ROW > math.prod(shape):
        return small
    return np.ascontiguousarray(np.broadcast_to(small, wanted))


def _forward(buckets: list[_Bucket], variants: int) -> tuple[list[Table], Array]:
    """Eliminate variables in turn; return the messages and the log of the total per variant."""
    sizes: list[Array] = []
    messages: list[Table] = []
    for bucket in buckets:
        tables = [*bucket.own, *(messages[i] for i in bucket.incoming)]
        bucket.full = full = _product(bucket.scope, tables)
        message: Array = full[:, 0] + full[:, 1]
        sizes.append(_scaled(message))
        messages.append((bucket.scope[1:], message))
    log_scale: Array = np.zeros(variants)
    with np.errstate(divide="ignore", invalid="ignore"):
        if variants == 1 and sizes:
            return messages, np.cumsum(np.log(np.concatenate(sizes)))[-1:]
        for size in sizes:
            log_scale = log_scale + np.log(size)
    return messages, log_scale


def _scaled(table: Array) -> Array:
    """Divide the table of each variant by its largest entry, in place; return those entries."""
    rows = table.reshape(len(table), -1)
    if table.size < BULKY:
        size: Array = np.abs(rows).max(axis=1)
    else:
        size = np.maximum(rows.max(axis=1), -rows.min(axis=1))
    if len(size) == 1:
        if size[0] > 0.0:
            table /= size[0]
        return size
    table /= np.where(size > 0.0, size, 1.0).reshape(-1, *(1,) * (table.ndim - 1))
    return size


def _backward(buckets: list[_Bucket], messages: list[Table], wanted: set[int]) -> dict[int, Array]:
    """Beliefs of the wanted variables, from derivatives of P(evidence) for every message.

    A bucket's product summed onto a message's scope is that message times its derivative, so
    one division gives it; where the message is zero the product is computed without it.
    Messages with no wanted variable above them are skipped.
    """
    needed: list[bool] = []
    for bucket in buckets:
        needed.append(bucket.variable in wanted or any(needed[i] for i in bucket.incoming))
    slope: list[Array] = [_ONE] * len(buckets)
    belief: dict[int, Array] = {}
    for k in range(len(buckets) - 1, -1, -1):
        if not needed[k]:
            continue
        bucket = buckets[k]
        size = len(bucket.scope)
        above = slope[k].reshape(len(slope[k]), 1, *(2,) * (size - 1))
        joint = _times(bucket.full, above)
        if bucket.variable in wanted:
            belief[bucket.variable] = _belief(joint, size)
        for i in bucket.incoming:
            if not needed[i]:
                continue
            scope, message = messages[i]
            if (np.abs(message) > 1e-200).all():
                flat: Array = _onto(joint, bucket.scope, scope) / message
            else:
                others = [messages[o] for o in bucket.incoming if o != i]
                rest = _times(_product(bucket.scope, [*bucket.own, *others]), above)
                flat = _onto(rest, bucket.scope, scope)
            _scaled(flat)
            slope[i] = flat
        bucket.full = slope[k] = _ONE  # free the memory
    return belief


def _onto(joint: Array, scope: tuple[int, ...], kept: tuple[int, ...]) -> Array:
    """The sum over every variable except ``kept``; both scopes have the same order.

    Where summed and kept axes alternate, numpy goes through a large table two entries at a time:
    so a large one is summed over one axis after the other, each sum in long rows.
    """
    gone = [a for a, v in enumerate(scope) if v not in kept]
    if joint.size < BULKY or not joint.flags.c_contiguous:
        return np.asarray(joint.sum(axis=tuple(a + 1 for a in gone)))
    variants = len(joint)
    for axis in gone:
        joint = _summed(joint.reshape(-1, 2, 1 << len(scope) - axis - 1))
    return joint.reshape(variants, *(2,) * len(kept))


def _summed(table: Array) -> Array:
    """The sum over the middle axis of length two, fast also where the last axis is short."""
    rows, _, short = table.shape
    if short >= LONG:
        return np.asarray(table[:, 0] + table[:, 1])
    out = np.empty((rows, short), table.dtype)
    for k in range(short):
        np.add(table[:, 0, k], table[:, 1, k], out=out[:, k])
    return out


def _belief(joint: Array, size: int) -> Array:
    """P(variable | evidence) for each variant, shape (variants, 2)."""
    both: Array = joint.sum(axis=tuple(range(2, size + 1)))
    with np.errstate(divide="ignore", invalid="ignore"):
        out: Array = both / both.sum(axis=1, keepdims=True)
    return out

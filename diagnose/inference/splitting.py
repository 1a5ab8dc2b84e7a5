"""Split a noisy-OR network with inhibitors, and evidence, into tables of one to three variables.

A present finding is 1 minus a product: it is split with a hidden two-state variable of
weights +1 and -(1 - leak), so every table has two variables whatever the fan-in (after
Heckerman 1989 and Díez & Galán 2003). An absent finding is a plain product and couples no causes.

With inhibitors, N = prod(1 - r_j z_j) and S = (1 - leak) · prod(1 - q_i x_i): P(present) = N - N·S.
N is a plain product over the inhibitors of a present finding. Otherwise a second hidden variable
switches N on, and only with it S: P(absent) = 1 - N + N·S is three of the four states of the two.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from diagnose.inference.network import Evidence, Likelihood, Network, Strengths

Array = NDArray[np.floating]
Table = tuple[tuple[int, ...], Array]

_NOTHING = Likelihood(1.0, 1.0)


@dataclass(frozen=True, slots=True)
class AbsentLeaf:
    """A leaf absent or without evidence in every variant: a plain product over its parents."""

    links: list[tuple[int, float]]
    lone: list[tuple[str, float, float]]  #: roots with no other child: name, prior, strength
    absent: Array  #: shape (variants or 1,): whether it is absent
    stay: float  #: 1 - leak


@dataclass(slots=True)
class Split:
    """The network restricted to relevant nodes, as tables of one or two variables.

    Every table has a leading axis of length variants, or 1 for all variants.
    """

    index: dict[str, int]
    wanted: set[int]
    log_scale: Array
    variables: int
    tables: list[Table] = field(default_factory=list)
    folded: list[tuple[str, int, float, float]] = field(default_factory=list)
    hidden: dict[str, int] = field(default_factory=dict)  #: of a present leaf
    switch: dict[str, int] = field(default_factory=dict)  #: of an absent leaf with inhibitors
    absent: dict[str, AbsentLeaf] = field(default_factory=dict)  #: leaves that couple no causes


def split(
    network: Network,
    variants: Sequence[Evidence],
    precision: type[np.floating],
    asked: Collection[str] | None = None,
) -> Split:
    """Split every node; a root with one child and no evidence is summed out immediately.

    ``asked``: the nodes whose belief is wanted; default all.
    """
    named = {n for v in variants for n in v}
    kept = network.relevant(named | {c for c in network.fed if asked is None or c in asked})
    names = [n for n in network.order if n in kept]
    children = _count(network.parents, names)
    inner = {*network.prior, *children, *_count(network.inhibitors, names)}
    single = {n for n, many in children.items() if many == 1} - named - network.fed
    alone = single.intersection(network.prior) - _count(network.inhibitors, names).keys()
    index = {n: i for i, n in enumerate(n for n in names if n not in alone)}
    wanted = {i for n, i in index.items() if asked is None or n in asked}
    net = Split(index, wanted, np.zeros(len(variants)), len(index))
    factor: dict[float, Array] = {}  #: the table of each strength

    def array(values: object) -> Array:
        return np.array(values, dtype=precision)

    def hidden_variable(ends: Iterable[tuple[int, float]]) -> int:
        """A new variable; while it is on, each present end multiplies by 1 - its strength."""
        new = net.variables
        net.variables += 1
        for end, strength in ends:
            if strength not in factor:
                factor[strength] = array([[[1.0, 1.0], [1.0, 1.0 - strength]]])
            net.tables.append(((new, end), factor[strength]))
        return new

    one = array([1.0])
    for name in names:
        if name in alone:
            continue
        node = index[name]
        gone, there = one, one
        if name in named:
            seen = [v.get(name, _NOTHING) for v in variants]
            gone, there = array([s.if_absent for s in seen]), array([s.if_present for s in seen])
        stay = 1.0 - network.base(name)
        if name in inner and not network.above(name):
            net.tables.append(((node,), _pairs(stay * gone, (1.0 - stay) * there)))
            continue
        every = network.parents.get(name, {})
        links = [(index[p], q) for p, q in every.items() if p not in alone]
        lone = [(p, network.prior[p], q) for p, q in every.items() if p in alone]
        against = [(index[z], r) for z, r in network.inhibitors.get(name, {}).items()]
        absent = there == 0.0
        plain = bool((absent | (there == gone)).all() and absent.any())
        if name not in inner and plain and not against:
            net.absent[name] = AbsentLeaf(links, lone, absent, stay)
            _plain_product(net, net.absent[name], gone)
            continue
        hidden = hidden_variable(links)
        if lone:
            folded = [(p, hidden, prior, q) for p, prior, q in lone if asked is None or p in asked]
            net.wanted.update(hidden for _ in folded)
            net.folded.extend(folded)
            missed = math.prod(1.0 - prior * q for _, prior, q in lone)
            net.tables.append(((hidden,), array([[1.0, missed]])))
        unseen = name in inner or bool((gone * there).any())  # needs a variable of its own
        if against and (unseen or gone.any()):
            switch = hidden_variable(against)
            none = 0.0 * gone * there
            off, on = (gone, none, -gone, stay * gone), (none, none, there, -stay * there)
            if unseen:
                states = _pairs(*(none + x for x in (*off, *on))).reshape(-1, 2, 2, 2)
                net.tables.append(((node, switch, hidden), states))
            else:
                sums = _pairs(*(x + y for x, y in zip(off, on, strict=True))).reshape(-1, 2, 2)
                net.tables.append(((switch, hidden), sums))
                net.switch[name] = switch
                if asked is None or name in asked:
                    net.wanted.add(switch)
            continue
        for end, strength in against:
            net.tables.append(((end,), array([[1.0, 1.0 - strength]])))
        if unseen:
            both = _pairs(0.0 * gone, stay * gone, there, -stay * there)
            net.tables.append(((node, hidden), both.reshape(-1, 2, 2)))
            continue
        net.tables.append(((hidden,), _pairs(there, (gone - there) * stay)))
        net.hidden[name] = hidden
        if asked is None or name in asked:
            net.wanted.add(hidden)
    return net


def _count(strengths: Strengths, names: Iterable[str]) -> dict[str, int]:
    """The number of children of each node, among these children."""
    found: dict[str, int] = {}
    for name in names:
        for parent in strengths.get(name, ()):
            found[parent] = found.get(parent, 0) + 1
    return found


def _pairs(*columns: Array) -> Array:
    """The columns side by side, shape (variants, columns)."""
    table = np.empty((len(columns[0]), len(columns)), columns[0].dtype)
    for i, column in enumerate(columns):
        table[:, i] = column
    return table


def _plain_product(net: Split, leaf: AbsentLeaf, gone: Array) -> None:
    """Add one factor per parent, and a constant for roots that have no other child."""
    constant = gone * leaf.stay * math.prod(1.0 - p * q for _, p, q in leaf.lone)
    with np.errstate(divide="ignore"):
        net.log_scale = net.log_scale + np.log(np.where(leaf.absent, constant, gone))
    for parent, q in leaf.links:
        on = np.where(leaf.absent, 1.0 - q, 1.0).astype(gone.dtype)
        net.tables.append(((parent,), _pairs(np.ones_like(on), on)))

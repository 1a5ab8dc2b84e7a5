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
from collections.abc import Collection, Iterable, Sequence, Set
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from diagnose.inference.network import Evidence, Likelihood, Network, Strengths

Array = NDArray[np.floating]
Table = tuple[tuple[int, ...], Array]

_NOTHING = Likelihood(1.0, 1.0)


@dataclass(frozen=True, slots=True)
class Lone:
    """A root with one child and no evidence of its own; it is summed out with that child."""

    name: str
    prior: float
    strength: float  #: of its link to the child

    @property
    def missed(self) -> float:
        """P(it does not bring the child about) before any evidence."""
        return 1.0 - self.prior * self.strength

    @property
    def if_missed(self) -> float:
        """P(root) where it did not bring the child about."""
        return self.prior * (1.0 - self.strength) / self.missed


@dataclass(frozen=True, slots=True)
class Folded:
    """A root that was summed out with a child that couples causes."""

    root: Lone
    hidden: int  #: the hidden variable of that child


@dataclass(frozen=True, slots=True)
class AbsentLeaf:
    """A leaf absent or without evidence in every variant: a plain product over its parents."""

    links: list[tuple[int, float]]  #: variable of a parent, strength
    lone: list[Lone]
    absent: Array  #: shape (variants or 1,): whether it is absent
    stay: float  #: 1 - leak


@dataclass(slots=True)
class Split:
    """The network restricted to relevant nodes, as tables of one to three variables.

    Every table has a leading axis of length variants, or 1 for all variants.
    """

    index: dict[str, int]
    wanted: set[int]
    log_scale: Array
    variables: int
    tables: list[Table] = field(default_factory=list)
    folded: list[Folded] = field(default_factory=list)
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
    splitter = _Splitter(network, variants, precision, asked, net, inner, alone)
    for name in index:
        splitter.add(name, observed=name in named)
    return net


@dataclass(frozen=True, slots=True)
class _Node:
    """A node to split; arrays of shape (variants or 1,)."""

    name: str
    gone: Array  #: likelihood of the evidence if it is absent
    there: Array  #: and if it is present
    stay: float  #: 1 - leak
    links: list[tuple[int, float]]  #: variable of a parent, strength
    lone: list[Lone]
    against: list[tuple[int, float]]  #: variable of an inhibitor, strength
    inner: bool  #: a root, or something depends on it

    @property
    def unsettled(self) -> bool:
        """Whether it may be absent or present in one variant, so that it needs a variable."""
        return self.inner or bool((self.gone * self.there).any())

    @property
    def couples_no_causes(self) -> bool:
        """Whether it is a leaf that is absent or without evidence, and nothing inhibits it."""
        absent = self.there == 0.0
        plain = bool((absent | (self.there == self.gone)).all() and absent.any())
        return not self.inner and plain and not self.against


@dataclass(slots=True)
class _Splitter:
    """One pass over the nodes of a network; each adds its tables to ``net``."""

    network: Network
    variants: Sequence[Evidence]
    precision: type[np.floating]
    asked: Collection[str] | None
    net: Split
    inner: Set[str]  #: roots, and nodes on which others depend
    alone: Set[str]  #: roots that are summed out with their only child
    factors: dict[float, Array] = field(default_factory=dict)  #: the table of each strength

    def add(self, name: str, *, observed: bool) -> None:
        """Add the tables of one node; ``observed``: a variant has evidence on it."""
        node = self._node(name, observed)
        if node.inner and not self.network.above(name):
            prior = _pairs(node.stay * node.gone, (1.0 - node.stay) * node.there)
            self.net.tables.append(((self.net.index[name],), prior))
        elif node.couples_no_causes:
            leaf = AbsentLeaf(node.links, node.lone, node.there == 0.0, node.stay)
            self.net.absent[name] = leaf
            _plain_product(self.net, leaf, node.gone)
        else:
            self._add_noisy_or(node)

    def _node(self, name: str, observed: bool) -> _Node:
        gone = there = self._array([1.0])
        if observed:
            seen = [v.get(name, _NOTHING) for v in self.variants]
            gone = self._array([s.if_absent for s in seen])
            there = self._array([s.if_present for s in seen])
        parents = self.network.parents.get(name, {})
        inhibitors = self.network.inhibitors.get(name, {})
        index, prior = self.net.index, self.network.prior
        return _Node(
            name=name,
            gone=gone,
            there=there,
            stay=1.0 - self.network.base(name),
            links=[(index[p], q) for p, q in parents.items() if p not in self.alone],
            lone=[Lone(p, prior[p], q) for p, q in parents.items() if p in self.alone],
            against=[(index[z], r) for z, r in inhibitors.items()],
            inner=name in self.inner,
        )

    def _add_noisy_or(self, node: _Node) -> None:
        """Add a node that may be present: its causes, and its inhibitors if it has any."""
        hidden = self._hidden_variable(node.links)
        if node.lone:
            self._fold(node.lone, hidden)
        if node.against and (node.unsettled or node.gone.any()):
            self._add_switched(node, hidden)
            return
        for end, strength in node.against:
            self.net.tables.append(((end,), self._array([[1.0, 1.0 - strength]])))
        if node.unsettled:
            both = _pairs(
                0.0 * node.gone, node.stay * node.gone, node.there, -node.stay * node.there
            )
            variable = self.net.index[node.name]
            self.net.tables.append(((variable, hidden), both.reshape(-1, 2, 2)))
            return
        present = _pairs(node.there, (node.gone - node.there) * node.stay)
        self.net.tables.append(((hidden,), present))
        self.net.hidden[node.name] = hidden
        self._want(node.name, hidden)

    def _add_switched(self, node: _Node, hidden: int) -> None:
        """Add a node with inhibitors that may be absent: a second variable switches them on."""
        switch = self._hidden_variable(node.against)
        gone, there, stay = node.gone, node.there, node.stay
        none = 0.0 * gone * there
        off, on = (gone, none, -gone, stay * gone), (none, none, there, -stay * there)
        if node.unsettled:
            states = _pairs(*(none + x for x in (*off, *on))).reshape(-1, 2, 2, 2)
            self.net.tables.append(((self.net.index[node.name], switch, hidden), states))
            return
        sums = _pairs(*(x + y for x, y in zip(off, on, strict=True))).reshape(-1, 2, 2)
        self.net.tables.append(((switch, hidden), sums))
        self.net.switch[node.name] = switch
        self._want(node.name, switch)

    def _fold(self, lone: Sequence[Lone], hidden: int) -> None:
        """Sum roots out into the hidden variable of their only child."""
        folded = [Folded(r, hidden) for r in lone if self._is_asked(r.name)]
        if folded:
            self.net.wanted.add(hidden)
        self.net.folded.extend(folded)
        missed = math.prod(r.missed for r in lone)
        self.net.tables.append(((hidden,), self._array([[1.0, missed]])))

    def _hidden_variable(self, ends: Iterable[tuple[int, float]]) -> int:
        """Return a new variable; while it is on, each present end multiplies by 1 - its strength."""
        new = self.net.variables
        self.net.variables += 1
        for end, strength in ends:
            if strength not in self.factors:
                self.factors[strength] = self._array([[[1.0, 1.0], [1.0, 1.0 - strength]]])
            self.net.tables.append(((new, end), self.factors[strength]))
        return new

    def _want(self, name: str, variable: int) -> None:
        if self._is_asked(name):
            self.net.wanted.add(variable)

    def _is_asked(self, name: str) -> bool:
        return self.asked is None or name in self.asked

    def _array(self, values: object) -> Array:
        return np.array(values, dtype=self.precision)


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
    constant = gone * leaf.stay * math.prod(r.missed for r in leaf.lone)
    with np.errstate(divide="ignore"):
        net.log_scale = net.log_scale + np.log(np.where(leaf.absent, constant, gone))
    for parent, q in leaf.links:
        on = np.where(leaf.absent, 1.0 - q, 1.0).astype(gone.dtype)
        net.tables.append(((parent,), _pairs(np.ones_like(on), on)))

"""A network of leaky noisy-OR nodes with inhibitors, as numbers.

Links carry the *net* convention: the probability q that this parent alone brings the child
about, the leak excluded (Díez 1993). An inhibitor prevents the child with probability r
(noisy-AND-NOT; Díez & Druzdzel 2006, "Canonical probabilistic models"):

    P(present | parents x, inhibitors z) = [1 - (1 - leak) · prod(1 - q_i x_i)] · prod(1 - r_j z_j)
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property


@dataclass(frozen=True, slots=True)
class Likelihood:
    """P(observation | absent) and P(observation | present)."""

    if_absent: float
    if_present: float

    @staticmethod
    def of(sure: float) -> Likelihood:
        """An observation "present" that is right with probability ``sure``; 0 means surely absent."""
        return Likelihood(1.0 - sure, sure)

    @property
    def there(self) -> bool:
        """Whether it favours present over absent, or neither."""
        return self.if_present >= self.if_absent


SEEN = Likelihood(0.0, 1.0)
SEEN_NOT_THERE = Likelihood(1.0, 0.0)

Evidence = Mapping[str, Likelihood]


Strengths = Mapping[str, Mapping[str, float]]  #: of each child's parents, by id


@dataclass(frozen=True)
class Network:
    """The nodes by id: ranked causes, and everything else; their parents and inhibitors.

    ``prior``: P(ranked cause | none of its parents); ``leak``: the same of every other node, also
    of a root that is not ranked. ``parents`` and ``inhibitors``: strengths from 0 to 1.

    Raises ValueError for a node, parent or inhibitor that does not exist, and for a parent that
    also inhibits the same node.
    """

    prior: Mapping[str, float]
    leak: Mapping[str, float]
    parents: Strengths = field(default_factory=dict)
    inhibitors: Strengths = field(default_factory=dict)

    def __post_init__(self) -> None:
        known = self.prior.keys() | self.leak.keys()
        for kind, strengths in (("parent", self.parents), ("inhibitor", self.inhibitors)):
            for name, links in strengths.items():
                if name not in known:
                    raise ValueError(f"{name}: a node with a {kind} has neither prior nor leak")
                if not links.keys() <= known:
                    raise ValueError(f"{name}: unknown {kind}")
        for name, links in self.inhibitors.items():
            if links.keys() & self.parents.get(name, {}).keys():
                raise ValueError(f"{name}: a parent inhibits it as well")

    def base(self, name: str) -> float:
        """P(node | none of its parents and inhibitors): its prior or leak."""
        return self.prior[name] if name in self.prior else self.leak[name]

    def chance(self, name: str, there: Mapping[str, float]) -> float:
        """P(node) where each node above it is present with these independent probabilities.

        One that ``there`` does not name is absent.
        """
        miss = 1.0 - self.base(name)
        for parent, strength in self.parents.get(name, {}).items():
            miss *= 1.0 - strength * there.get(parent, 0.0)
        let = 1.0
        for inhibitor, strength in self.inhibitors.get(name, {}).items():
            let *= 1.0 - strength * there.get(inhibitor, 0.0)
        return (1.0 - miss) * let

    def above(self, name: str) -> tuple[str, ...]:
        """The parents and inhibitors of a node."""
        return (*self.parents.get(name, ()), *self.inhibitors.get(name, ()))

    @cached_property
    def fed(self) -> frozenset[str]:
        """Ranked causes that have parents or inhibitors."""
        return frozenset(c for c in self.prior if self.above(c))

    @cached_property
    def order(self) -> tuple[str, ...]:
        """Every node, parents before children. Raises ValueError for a circle."""
        done: dict[str, None] = {}
        open_: set[str] = set()
        for start in (*self.prior, *self.leak):
            stack: list[tuple[str, bool]] = [(start, False)]
            while stack:
                node, parents_done = stack.pop()
                if parents_done:
                    open_.discard(node)
                    done.setdefault(node)
                elif node not in done:
                    if node in open_:
                        raise ValueError(f"circle through {node}")
                    open_.add(node)
                    stack.append((node, True))
                    stack.extend((p, False) for p in self.above(node) if p not in done)
        return tuple(done)

    def ancestors(self, nodes: set[str]) -> set[str]:
        """The nodes and everything that may bring them about, directly or not."""
        return _closed(nodes, lambda name: self.parents.get(name, ()))

    def relevant(self, nodes: set[str]) -> set[str]:
        """The nodes and everything that makes them likelier or, as an inhibitor, less likely."""
        return _closed(nodes, self.above)


def _closed(nodes: set[str], above: Callable[[str], Iterable[str]]) -> set[str]:
    found: set[str] = set()
    stack = list(nodes)
    while stack:
        node = stack.pop()
        if node not in found:
            found.add(node)
            stack.extend(above(node))
    return found

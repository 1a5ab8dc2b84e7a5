"""A leaky noisy-OR network as numbers; ``causegraph`` fills it.

Links carry the *net* convention: the probability that this parent alone brings the child
about, the leak excluded (Díez 1993): P(absent | parents) = (1 - leak) · prod(1 - q_i x_i).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property


@dataclass(frozen=True, slots=True)
class Likelihood:
    """P(what was reported | absent) and P(what was reported | present)."""

    if_absent: float
    if_present: float

    @staticmethod
    def of(sure: float) -> Likelihood:
        """A sighting that is ``sure`` to be right: 1 is seen, 0 is seen not to be there."""
        return Likelihood(1.0 - sure, sure)

    @property
    def there(self) -> bool:
        """Whether it says present rather than absent."""
        return self.if_present >= self.if_absent


SEEN = Likelihood(0.0, 1.0)
SEEN_NOT_THERE = Likelihood(1.0, 0.0)

Evidence = Mapping[str, Likelihood]


@dataclass(frozen=True)
class Network:
    """Roots with a prior, other nodes with a leak and their parents' strengths."""

    prior: Mapping[str, float]
    leak: Mapping[str, float]
    parents: Mapping[str, Mapping[str, float]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        known = self.prior.keys() | self.leak.keys()
        for name, links in self.parents.items():
            if name in self.prior or name not in self.leak:
                raise ValueError(f"{name}: a node with parents has a leak and no prior")
            if not links.keys() <= known:
                raise ValueError(f"{name}: unknown parent")

    @cached_property
    def order(self) -> tuple[str, ...]:
        """Every node, parents before children; raises ValueError on a circle."""
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
                    stack.extend((p, False) for p in self.parents.get(node, ()) if p not in done)
        return tuple(done)

    def ancestors(self, nodes: set[str]) -> set[str]:
        """The nodes themselves and all that lies above them."""
        found: set[str] = set()
        stack = list(nodes)
        while stack:
            node = stack.pop()
            if node not in found:
                found.add(node)
                stack.extend(self.parents.get(node, ()))
        return found

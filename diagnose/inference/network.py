"""A leaky noisy-OR network as numbers.

Links carry the *net* convention: the probability that this parent alone brings the child
about, the leak excluded (Díez 1993): P(absent | parents) = (1 - leak) · prod(1 - q_i x_i).
"""

from __future__ import annotations

from collections.abc import Mapping
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


@dataclass(frozen=True)
class Network:
    """Roots with a prior, other nodes with a leak and the strengths of their parents, by id.

    Raises ValueError for a parent that does not exist, or a node with parents and a prior.
    """

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
                    stack.extend((p, False) for p in self.parents.get(node, ()) if p not in done)
        return tuple(done)

    def ancestors(self, nodes: set[str]) -> set[str]:
        """The nodes and all their ancestors."""
        found: set[str] = set()
        stack = list(nodes)
        while stack:
            node = stack.pop()
            if node not in found:
                found.add(node)
                stack.extend(self.parents.get(node, ()))
        return found

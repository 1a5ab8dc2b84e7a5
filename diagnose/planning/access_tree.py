"""The access tree of one engine as a networkx graph: what must be open before what.

Knows openings and their minutes, no probabilities; the only module of planning with networkx.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from functools import cached_property

import networkx as nx

from knowledge.access import Opening
from knowledge.access.precedence import CLOSED_TO_RUN, ENDS_RUNNING
from knowledge.work import Access, Inspection


class CyclicAccessError(Exception):
    """The openings need each other in a cycle, or need one that this engine lacks."""


@dataclass(frozen=True)
class Pace:
    """How long work takes: this person's factor, engine in place or on a stand, closing to test."""

    on_stand: bool = False
    factor: float = 1.0  #: 1.5 for a first-timer, more where space is short
    closing: float = 0.0  #: closing time as a share of the opening time; 0 where it is not counted


@dataclass(frozen=True, slots=True)
class Cover:
    """How an unopened place is reached: the place it lies behind, and the minutes from there."""

    place: Access | None  #: None: it lies behind nothing that is still shut
    minutes: float


@dataclass(frozen=True)
class AccessTree:
    """What must be open before what. The graph raises CyclicAccessError when it is first used."""

    openings: Mapping[Access, Opening]
    pace: Pace = Pace()

    @cached_property
    def graph(self) -> nx.DiGraph[Access]:
        """Arrows run from what must be open to what it lets be opened; nodes carry minutes.

        Raises CyclicAccessError for places that need each other, or one that this engine lacks.
        """
        graph: nx.DiGraph[Access] = nx.DiGraph()
        for place, opening in self.openings.items():
            graph.add_node(place, opening=opening, minutes=self.minutes(place))
        for place, opening in self.openings.items():
            for need in opening.needs:
                if need not in self.openings:
                    raise CyclicAccessError(f"{place} needs {need}, which this engine has not")
                graph.add_edge(need, place)
        if not nx.is_directed_acyclic_graph(graph):
            raise CyclicAccessError(" -> ".join(str(a) for a, _ in nx.find_cycle(graph)))
        return graph

    def minutes(self, place: Access) -> float:
        """Hands-on minutes to open this place once its needs are open."""
        opening = self.openings[place]
        plain = opening.minutes_on_stand if self.pace.on_stand else opening.minutes_in_place
        return plain * self.pace.factor

    def check_minutes(self, inspection: Inspection) -> float:
        """Hands-on minutes of a check itself, at least one."""
        return max(inspection.minutes * self.pace.factor, 1.0)

    @cached_property
    def places(self) -> tuple[Access, ...]:
        """Every place, after the places it needs; ties in the order of the book."""
        rank = {a: i for i, a in enumerate(Access)}
        return tuple(nx.lexicographical_topological_sort(self.graph, key=rank.__getitem__))

    @cached_property
    def _needs(self) -> dict[Access, frozenset[Access]]:
        return {a: frozenset(nx.ancestors(self.graph, a)) | {a} for a in self.places}

    def closure(self, place: Access) -> frozenset[Access]:
        """The place and everything that must be open for it; empty where this engine lacks it."""
        return self._needs.get(place, frozenset())

    def way(self, place: Access, opened: Collection[Access] = ()) -> tuple[Opening, ...] | None:
        """What is still to open, outermost first; None where this engine lacks the place."""
        if place not in self.openings:
            return None
        wanted = self._needs[place]
        return tuple(self.openings[a] for a in self.places if a in wanted and a not in opened)

    def opening_minutes(self, way: Collection[Opening]) -> float:
        """Minutes of all these openings, and of closing them again where that is counted."""
        return sum(self.minutes(o.access) for o in way) * (1.0 + self.pace.closing)

    def may_do(self, inspection: Inspection, opened: Collection[Access]) -> bool:
        """Whether nothing is open that the check needs closed."""
        if self.pace.on_stand and (inspection.needs_running or inspection.in_place):
            return False
        if not inspection.needs_running:
            return True
        return not (set(opened) & ENDS_RUNNING) - self.closure(inspection.access)

    def after(self, inspection: Inspection, opened: frozenset[Access]) -> frozenset[Access]:
        """What is open once the check is done: an engine that ran has been closed again."""
        opened |= self.closure(inspection.access)
        return opened - CLOSED_TO_RUN if inspection.needs_running else opened

    def covers(self, opened: Collection[Access]) -> dict[Access, Cover]:
        """For every unopened place the cover it lies behind.

        Where several must be open, the one of most minutes is its cover and the others count as
        the place's own minutes: the total is right, and the graph becomes a tree.
        """
        key = frozenset(opened)
        if key not in self._covers:
            self._covers[key] = self._covers_behind(key)
        return self._covers[key]

    @cached_property
    def _covers(self) -> dict[frozenset[Access], dict[Access, Cover]]:
        return {}

    def _covers_behind(self, opened: frozenset[Access]) -> dict[Access, Cover]:
        found: dict[Access, Cover] = {}
        ways = {a: frozenset(self._needs[a]) - set(opened) for a in self.places}
        minutes = {a: self.minutes(a) * (1.0 + self.pace.closing) for a in self.places}
        total = {a: sum(minutes[b] for b in self.places if b in way) for a, way in ways.items()}
        for place in self.places:
            if place in opened:
                continue
            needs = [n for n in self.openings[place].needs if n not in opened]
            cover = max(needs, key=lambda n: total[n], default=None)
            behind = ways[cover] if cover else frozenset()
            own = sum(minutes[b] for b in self.places if b in ways[place] - behind)
            found[place] = Cover(cover, own)
        return found

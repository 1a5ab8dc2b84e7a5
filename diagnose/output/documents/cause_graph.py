"""The document of ``graph``: the part of the cause graph that is drawn, laid out in columns."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from itertools import pairwise

from diagnose.diagnosis import Diagnosis
from diagnose.inference.causegraph import Graph, around, columns
from diagnose.inference.explain import Weight
from diagnose.output.documents.reasons import is_there, path_in_words

RIVALS, OF_FIRST, OF_RIVALS, LIKELY = 3, 6, 3, 0.02

Paths = tuple[tuple[str, ...], ...]


@dataclass(frozen=True, kw_only=True)
class GraphNode:
    """A cause, condition, damage or finding."""

    id: str
    says: str
    layer: str
    column: int  #: from the left, 0 for causes
    probability: float | None  #: of a cause
    ruled_out: bool  #: looked for, and not there
    on_path: bool  #: on one of the paths that stand out


@dataclass(frozen=True, kw_only=True)
class GraphLink:
    """A link from what brings about, or ``inhibits``, to the effect."""

    start: str
    end: str
    strength: float  #: 0 to 1
    source: str  #: key of the published source
    on_path: bool
    inhibits: bool = False  #: keeps the effect away


@dataclass(frozen=True, kw_only=True)
class CauseGraph:
    """The nodes and links drawn, and the most probable paths of the leading cause."""

    nodes: tuple[GraphNode, ...]
    links: tuple[GraphLink, ...]
    paths: Paths
    path_texts: tuple[str, ...]

    @property
    def columns(self) -> int:
        """How many columns the nodes take."""
        return max((n.column for n in self.nodes), default=0) + 1


def leading_causes_graph(diagnosis: Diagnosis) -> CauseGraph:
    """The most probable causes and the strongest evidence for them, on the most probable paths.

    Of rivals those whose evidence the ranking gives too.
    """
    ranking, explained = diagnosis.ranking, diagnosis.reasons.explained
    rivals = (r for r in ranking[1:RIVALS] if r.cause.id in explained)
    shown = [ranking[0], *(r for r in rivals if r.probability >= LIKELY)]
    weights = diagnosis.reasons.weights([r.cause.id for r in shown])
    kept: dict[str, None] = {}
    paths: list[tuple[str, ...]] = []
    for i, ranked in enumerate(shown):
        kept[ranked.cause.id] = None
        brought = _brought_about(diagnosis, weights[ranked.cause.id])
        for weight in brought[: OF_RIVALS if i else OF_FIRST]:
            kept.update(dict.fromkeys(weight.chain))
            if i == 0:
                paths.append(weight.chain)
    part = diagnosis.inference.graph.subgraph(kept)
    return _cause_graph(diagnosis, _in_order_of_names(part), tuple(paths))


def focused_graph(diagnosis: Diagnosis, node: str) -> CauseGraph:
    """All paths from one node to the evidence; the most probable stand out where it is a cause."""
    inference = diagnosis.inference
    part = around(inference.graph, set(inference.evidence), {node})
    if node not in inference.network.prior:
        return _cause_graph(diagnosis, part, ())
    brought = _brought_about(diagnosis, diagnosis.reasons.weights([node])[node])
    return _cause_graph(diagnosis, part, tuple(w.chain for w in brought[:OF_FIRST]))


def _brought_about(diagnosis: Diagnosis, weights: Collection[Weight]) -> list[Weight]:
    """The evidence for a cause that is present and that the cause brings about."""
    return [w for w in weights if w.decibans > 0 and w.chain and is_there(diagnosis, w.what)]


def _in_order_of_names(graph: Graph) -> Graph:
    """The same graph with nodes and links sorted: the same case gives the same bytes."""
    out: Graph = type(graph)()
    out.add_nodes_from((n, graph.nodes[n]) for n in sorted(graph))
    out.add_edges_from((a, b, graph.edges[a, b]) for a, b in sorted(graph.edges))
    return out


def _cause_graph(diagnosis: Diagnosis, graph: Graph, paths: Paths) -> CauseGraph:
    inference, at = diagnosis.inference, columns(graph)
    on_path = {node for path in paths for node in path}
    steps = {step for path in paths for step in pairwise(path)}
    return CauseGraph(
        nodes=tuple(
            GraphNode(
                id=node,
                says=str(data["says"]),
                layer=data["layer"],
                column=at[node],
                probability=inference.posterior.marginal[node]
                if node in inference.network.prior
                else None,
                ruled_out=node in inference.evidence and not is_there(diagnosis, node),
                on_path=node in on_path,
            )
            for node, data in graph.nodes(data=True)
        ),
        links=tuple(
            GraphLink(
                start=start,
                end=end,
                strength=data["strength"],
                source=str(data["source"]),
                on_path=(start, end) in steps,
                inhibits=data["inhibits"],
            )
            for start, end, data in graph.edges(data=True)
        ),
        paths=paths,
        path_texts=tuple(path_in_words(diagnosis, path) for path in paths),
    )

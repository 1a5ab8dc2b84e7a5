"""The cause graph of one case: causes, conditions and findings, linked from cause to effect."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from math import exp, log, prod
from typing import Any, TypeAlias

import networkx as nx

from diagnose.inference.chaining import InferenceResult
from diagnose.inference.network import Network
from knowledge.model import Cause, Condition, Finding, Shift
from knowledge.rule_api import Inhibitor, Multiple, Rule

EXPECTED_CAUSES = 0.8  #: root causes expected in a real complaint before anything is known
MOST_PRIOR = 0.3
READINGS = "gauge_readings"  #: id of the node for readings that a survey weighed
MISFIT = "gauge_readings_misfit"  #: id of what inhibits it
AGAINST_BELOW = 0.9  #: a ratio from which a condition makes next to no difference
MOST_RATIO = 50.0  #: largest likelihood ratio of one survey for or against a condition
READINGS_LEAK = 0.9 / MOST_RATIO  #: so that the best condition explains nine of ten such readings
CONDITION_LEAK = 0.001  #: P(condition | no listed cause present) (judgement)
LEAST_OWN = 1e-4  #: P(cause | its roots absent) at least

Graph: TypeAlias = "nx.DiGraph[str]"


class CircleError(Exception):
    """The links of this case make a circle."""


def weights(causes: Mapping[str, Cause], conclusions: InferenceResult) -> dict[str, float]:
    """The relative frequency of each cause this engine can have: rate times shifts.

    A rate is that of an ordinary engine, whatever brings the cause about. Where a root that feeds
    the cause is commoner or rarer than there, the cause is so by the share that the root brings.
    """
    return _weights(causes, conclusions, _shifts(conclusions))


def _weights(
    causes: Mapping[str, Cause], conclusions: InferenceResult, shifts: Mapping[str, float]
) -> dict[str, float]:
    weight = {
        c.id: c.rate.value * shifts.get(c.id, 1.0)
        for c in causes.values()
        if c not in conclusions.excluded
    }
    for root, fed in _fed(conclusions).items():
        more = _root_weight(root, shifts) - _root_weight(root, {})
        for id_, strength in fed.items():
            if id_ in weight:
                weight[id_] += strength * min(1.0, shifts.get(id_, 1.0)) * more
    return weight


def _root_weight(root: Condition, shifts: Mapping[str, float]) -> float:
    """The relative frequency of a root that is no cause: rate times shift."""
    return root.rate.value * shifts.get(root.id, 1.0) if root.rate else 0.0


def _shifts(conclusions: InferenceResult) -> dict[str, float]:
    """The product of the shifts of each cause or root that has any, within bounds, by id."""
    shifts: dict[str, float] = {}
    multiples: dict[tuple[Rule, Cause | Condition], list[Multiple]] = {}
    for rule, shifted in conclusions.shifts:
        if isinstance(shifted.shift, Multiple):
            multiples.setdefault((rule, shifted.cause), []).append(shifted.shift)
        else:
            id_ = shifted.cause.id
            shifts[id_] = shifts.get(id_, 1.0) * shifted.shift.value
    for (_, cause), every in multiples.items():
        factor = _beyond(_that_counts(every), cause, conclusions)
        shifts[cause.id] = shifts.get(cause.id, 1.0) * factor
    most, least = Shift.STRONG_UP.value**2, Shift.STRONG_DOWN.value**2
    return {id_: min(max(factor, least), most) for id_, factor in shifts.items()}


def _that_counts(multiples: Sequence[Multiple]) -> Multiple:
    """The mildest of each entry; of these the strongest."""
    mildest: dict[int, Multiple] = {}
    for each in multiples:
        mildest[each.of] = min(mildest.get(each.of, each), each, key=_size)
    return max(mildest.values(), key=_size)


def _size(multiple: Multiple) -> float:
    return abs(log(multiple.value))


def _beyond(whole: Multiple, cause: Cause | Condition, conclusions: InferenceResult) -> float:
    """What a multiple adds to the shifts that it includes: 1 where they reach it by themselves."""
    included = prod(
        shifted.shift.value
        for (_, shifted), trace in conclusions.shifts.items()
        if shifted.cause is cause
        and isinstance(shifted.shift, Shift)
        and (shifted.shift.value > 1.0) == (whole.value > 1.0)
        and not set(whole.includes).isdisjoint(trace.premises)
    )
    left = whole.value / included
    return left if (left > 1.0) == (whole.value > 1.0) else 1.0


def _fed(conclusions: InferenceResult) -> dict[Condition, dict[str, float]]:
    """The causes that each root feeds, by id, with the strength."""
    found: dict[Condition, dict[str, float]] = {}
    for link in conclusions.links:
        if isinstance(link.child, Cause) and isinstance(link.parent, Condition):
            found.setdefault(link.parent, {})[link.child.id] = link.strength.value
    return found


def priors(
    causes: Mapping[str, Cause],
    conclusions: InferenceResult,
    learned: Mapping[str, float] | None = None,
) -> dict[str, float]:
    """P(cause) before evidence: weights times a shop's ``learned`` factors, normalised.

    Only causes that this engine can have get a prior. Both dicts go by the cause's id.
    """
    return _scaled(_learned(weights(causes, conclusions), learned))[0]


def _scaled(weight: Mapping[str, float]) -> tuple[dict[str, float], float]:
    """The prior of each cause by id, and what makes a weight a prior."""
    scale = EXPECTED_CAUSES / sum(weight.values())
    return {id_: min(w * scale, MOST_PRIOR) for id_, w in weight.items()}, scale


def _learned(weight: Mapping[str, float], learned: Mapping[str, float] | None) -> dict[str, float]:
    return {id_: w * (learned or {}).get(id_, 1.0) for id_, w in weight.items()}


def _add_roots(
    graph: Graph, conclusions: InferenceResult, shifts: Mapping[str, float], scale: float
) -> None:
    """Add each root that feeds causes, and leave each cause the part of its prior that is its own.

    A cause that is rarer here than its rate says is less often brought about by the root as well.
    ``shifts``: of causes, with what a shop learned, and of roots, by id.
    """
    for root, fed in _fed(conclusions).items():
        leak = min(_root_weight(root, shifts) * scale, MOST_PRIOR)
        graph.add_node(root.id, **_describe(root) | {"leak": leak})
        for id_, strength in fed.items():
            if id_ in graph:
                strength *= min(1.0, shifts[id_])
                own = 1.0 - (1.0 - graph.nodes[id_]["prior"]) / (1.0 - strength * leak)
                graph.nodes[id_]["prior"] = max(own, LEAST_OWN)
                graph.add_edge(root.id, id_, strength=strength)


def build(
    causes: Mapping[str, Cause],
    conclusions: InferenceResult,
    learned: Mapping[str, float] | None = None,
) -> Graph:
    """Build the graph of a case.

    Node data: ``layer``, ``says``, and ``prior`` (of a cause, its parents absent) or ``leak``; edge
    data: ``strength``, ``rules``, ``source``, and whether the parent ``inhibits`` its child. Raises
    CircleError, and ValueError where a parent both leads to a finding and inhibits it.
    """
    graph: Graph = nx.DiGraph()
    shifts = _shifts(conclusions)
    prior, scale = _scaled(_learned(_weights(causes, conclusions, shifts), learned))
    for id_, p in prior.items():
        graph.add_node(id_, layer="cause", says=causes[id_].says, prior=p)
    possible = {cause for cause in causes.values() if cause.id in graph}
    _add_roots(graph, conclusions, _learned(dict.fromkeys(causes, 1.0) | shifts, learned), scale)
    nodes: dict[str, dict[str, object]] = {n: {} for n in graph}  # new ones with their data
    edges = {(a, b): data for a, b, data in graph.edges(data=True)}
    for link, rules in conclusions.edges:
        parent, child = link.parent, link.child
        if (type(parent) is Cause and parent not in possible) or (
            type(child) is Cause and child not in possible
        ):
            continue  # this engine cannot have it
        inhibits = type(link) is Inhibitor
        ends = parent.id, child.id
        if inhibits and child.id not in nodes:
            continue  # nothing brings it about
        if parent.id not in nodes:
            nodes[parent.id] = _describe(parent)
        if child.id not in nodes:
            nodes[child.id] = _describe(child)
        strength = link.strength.value
        old = edges.get(ends)
        if old is not None:
            if old.get("inhibits", inhibits) is not inhibits:
                raise ValueError(f"{parent.id} both leads to {child.id} and inhibits it")
            of_root = type(child) is Cause
            strength = old["strength"] if of_root else max(strength, old["strength"])
        edges[ends] = {
            "strength": strength,
            "rules": (rules[0].id,) if len(rules) == 1 else tuple([r.id for r in rules]),
            "source": link.source.key,
            "inhibits": inhibits,
        }
    graph.add_nodes_from(nodes.items())
    graph.add_edges_from([(a, b, data) for (a, b), data in edges.items()])
    if not nx.is_directed_acyclic_graph(graph):
        circle = [a for a, _ in nx.find_cycle(graph)]
        raise CircleError(" -> ".join([*circle, circle[0]]))
    return graph


def add_readings(graph: Graph, ratios: Mapping[str, float]) -> None:
    """Add one node for gauge readings that conditions of the graph explain or speak against.

    ``ratios``: how much likelier the readings are with each condition alone than with none, from
    one over ``MOST_RATIO`` to ``MOST_RATIO``. Those above 1 become its parents. As a noisy OR,
    conditions that are there together explain the readings once, not once each. Those below 1
    bring about one misfit that inhibits the node: all that are there together count for no more
    than the one that fits worst.
    """
    most = {n: min(max(r, 1.0 / MOST_RATIO), MOST_RATIO) for n, r in ratios.items() if n in graph}
    against = {n: r for n, r in most.items() if r < AGAINST_BELOW}
    if not against and not any(r > 1.0 for r in most.values()):
        return
    graph.add_node(READINGS, layer="finding", says="the gauge readings", leak=READINGS_LEAK)
    for name, ratio in most.items():
        if ratio > 1.0:
            _add_link(graph, name, READINGS, READINGS_LEAK * (ratio - 1.0) / (1.0 - READINGS_LEAK))
    if against:
        says, worst = "something that the gauge readings do not fit", min(against.values())
        graph.add_node(MISFIT, layer="condition", says=says, leak=0.0)
        for name, ratio in against.items():
            _add_link(graph, name, MISFIT, (1.0 - ratio) / (1.0 - worst))
        _add_link(graph, MISFIT, READINGS, 1.0 - worst, inhibits=True)


def _add_link(
    graph: Graph, parent: str, child: str, strength: float, *, inhibits: bool = False
) -> None:
    graph.add_edge(parent, child, strength=strength, rules=(), source="physics", inhibits=inhibits)


def _describe(node: Cause | Condition | Finding) -> dict[str, object]:
    if isinstance(node, Finding):
        return {"layer": "finding", "says": node.says, "leak": node.background.value}
    if isinstance(node, Condition):
        layer = "damage" if node.damage else "condition"
        return {"layer": layer, "says": node.says, "leak": CONDITION_LEAK}
    return {"layer": "cause", "says": node.says}


def as_network(graph: Graph) -> Network:
    """The graph as a noisy-OR network with inhibitors."""
    parents: dict[str, dict[str, float]] = {}
    inhibitors: dict[str, dict[str, float]] = {}
    for parent, effects in graph.adjacency():
        for child, data in effects.items():
            kind = inhibitors if data["inhibits"] else parents
            kind.setdefault(child, {})[parent] = data["strength"]
    return Network(
        {n: d["prior"] for n, d in graph.nodes(data=True) if d["layer"] == "cause"},
        {n: d["leak"] for n, d in graph.nodes(data=True) if d["layer"] != "cause"},
        parents,
        inhibitors,
    )


def chain(graph: Graph, cause: str, finding: str) -> list[str]:
    """The most probable path from a cause to a finding, both ends included; empty without one.

    An inhibitor brings nothing about, so no path runs over it.
    """
    if cause not in graph or finding not in graph:
        return []

    def length(_a: str, _b: str, data: Mapping[str, Any]) -> float | None:
        return None if data["inhibits"] else 0.3 - log(data["strength"])

    try:
        path: list[str] = nx.shortest_path(graph, cause, finding, weight=length)
    except nx.NetworkXNoPath:
        return []
    return path


def node_of(cause: Cause, graph: Graph, seen: Collection[str]) -> str:
    """Id of the node whose probability is the cause's figure: its own, or that of its state.

    That of its state where one of the findings ``seen`` (ids) is an effect of the state.
    """
    state = cause.state
    if state is None or state.id not in graph:
        return cause.id
    return cause.id if set(graph.successors(state.id)).isdisjoint(seen) else state.id


def path_strength(graph: Graph, start: str, end: str) -> float:
    """Product of the strengths along the strongest path; 1 from a node to itself, 0 without one."""
    if start not in graph or end not in graph:
        return 0.0
    try:
        length = nx.dijkstra_path_length(
            graph, start, end, weight=lambda _a, _b, d: -log(d["strength"])
        )
    except nx.NetworkXNoPath:
        return 0.0
    return exp(-float(length))


def around(graph: Graph, evidence: set[str], causes: set[str]) -> Graph:
    """The subgraph of all paths from these causes to this evidence."""
    above: set[str] = set()
    for node in evidence & set(graph):
        above |= nx.ancestors(graph, node) | {node}
    below: set[str] = set()
    for node in causes & set(graph):
        below |= nx.descendants(graph, node) | {node}
    kept = above & below
    part: Graph = nx.DiGraph()
    part.add_nodes_from((n, d) for n, d in graph.nodes(data=True) if n in kept)
    part.add_edges_from((a, b, d) for a, b, d in graph.edges(data=True) if {a, b} <= kept)
    return part


def columns(graph: Graph) -> dict[str, int]:
    """The column of each node from left to right: causes first, findings last.

    Every link leads to a later column.

    >>> g = nx.DiGraph([("worn", "slip"), ("slip", "low"), ("worn", "noise")])
    >>> for node, layer in dict(worn="cause", slip="condition", low="finding", noise="finding").items():
    ...     g.nodes[node]["layer"] = layer
    >>> columns(g)
    {'worn': 0, 'slip': 1, 'low': 2, 'noise': 2}
    """
    at: dict[str, int] = {}
    for node in nx.topological_sort(graph):
        at[node] = max((at[p] + 1 for p in graph.predecessors(node)), default=0)
    last = max(at.values(), default=0)
    inner = [n for n in at if graph.nodes[n]["layer"] == "condition" and not at[n]]
    for node in inner:  # a condition without a cause in this part: one column before its effects
        at[node] = min((at[s] - 1 for s in graph.successors(node)), default=0)
    return {
        n: last if graph.nodes[n]["layer"] == "finding" and not graph.out_degree(n) else at[n]
        for n in graph
    }

"""The cause graph in open formats that general libraries read: JSON, GraphML, DOT, BIF.

For BIF, a node's parents are first grouped by mechanism into small OR groups, and its inhibitors
into another, so that every full table stays small; the probabilities stay exactly the same.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from io import BytesIO
from itertools import product

import networkx as nx

from diagnose.inference.causegraph import Graph
from diagnose.inference.network import Network

MOST_PARENTS = 3
FORMATS = ("json", "graphml", "dot", "bif")


def as_json(graph: Graph) -> str:
    """JSON text of node-link data, as networkx reads it."""
    data = nx.node_link_data(graph, edges="links")
    return json.dumps({"schema": 1, **data}, indent=2, ensure_ascii=False, default=list) + "\n"


def as_graphml(graph: Graph) -> str:
    """GraphML text; lists of rules are joined with blanks."""
    flat = graph.copy()
    for _, _, data in flat.edges(data=True):
        data["rules"] = " ".join(data["rules"])
    out = BytesIO()
    nx.write_graphml(flat, out)
    return out.getvalue().decode("utf-8")


def as_dot(graph: Graph) -> str:
    """DOT text, from left to right, with a shape for each layer."""
    shape = {"cause": "box", "condition": "ellipse", "damage": "octagon", "finding": "note"}
    lines = ["digraph causes {", "  rankdir=LR;"]
    for name, data in graph.nodes(data=True):
        says = json.dumps(data["says"], ensure_ascii=False)
        lines.append(f'  "{name}" [shape={shape[data["layer"]]}, label={says}];')
    for a, b, data in graph.edges(data=True):
        wide = 0.5 + 3 * data["strength"]
        head = ", style=dashed, arrowhead=tee" if data["inhibits"] else ""
        shown = f'penwidth={wide:.2f}, label="{data["strength"]:.2f}"'
        lines.append(f'  "{a}" -> "{b}" [{shown}{head}];')
    return "\n".join([*lines, "}", ""])


def with_few_parents(
    network: Network, most: int = MOST_PARENTS, group: Mapping[str, str] | None = None
) -> Network:
    """The same network with at most ``most`` parents and inhibitors together for each node.

    Parents are grouped, first by mechanism (``group``), into OR nodes without a leak whose own
    link is certain; so are inhibitors, into one such node where there are several.
    """
    leak = dict(network.leak)
    parents: dict[str, dict[str, float]] = {}
    inhibitors: dict[str, dict[str, float]] = {}

    def grouped(links: Mapping[str, float], name: str, room: int) -> dict[str, float]:
        level = sorted(links.items(), key=lambda link: ((group or {}).get(link[0], ""), link[0]))
        depth = 0
        while len(level) > room:
            above = []
            for i in range(0, len(level), most):
                part = level[i : i + most]
                if len(part) == 1:
                    above.append(part[0])
                    continue
                node = f"{name}_{depth}_{i // most}"
                leak[node] = 0.0
                parents[node] = dict(part)
                above.append((node, 1.0))
            level = above
            depth += 1
        return dict(level)

    for name in network.parents.keys() | network.inhibitors.keys():
        against = network.inhibitors.get(name, {})
        if against:
            inhibitors[name] = grouped(against, f"{name}__but_for", 1)
        room = most - len(inhibitors.get(name, ()))
        parents[name] = grouped(network.parents.get(name, {}), f"{name}__via", room)
    return Network(network.prior, leak, parents, inhibitors)


def as_bif(graph: Graph, network: Network) -> str:
    """BIF text: a Bayesian network with full tables; states absent, present."""
    mechanism = {
        n: f"{d['layer']}:{' '.join(sorted(graph.successors(n)))}"
        for n, d in graph.nodes(data=True)
    }
    split = with_few_parents(network, group=mechanism)
    lines = ["network causes {", "}"]
    for name in split.order:
        lines += [f"variable {name} {{", "  type discrete [ 2 ] { absent, present };", "}"]
    for name in split.order:
        lines += _table(name, split)
    return "\n".join([*lines, ""])


def _table(name: str, network: Network) -> Iterable[str]:
    above = network.above(name)
    if not above:
        p = network.base(name)
        return [f"probability ( {name} ) {{", f"  table {1 - p!r}, {p!r};", "}"]
    lines = [f"probability ( {name} | {', '.join(above)} ) {{"]
    for states in product((False, True), repeat=len(above)):
        present = network.chance(name, dict(zip(above, states, strict=True)))
        row = ", ".join("present" if s else "absent" for s in states)
        lines.append(f"  ({row}) {1 - present!r}, {present!r};")
    return [*lines, "}"]

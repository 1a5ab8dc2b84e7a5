"""The cause graph in open formats that general libraries read: JSON, GraphML, DOT, BIF.

For BIF, a node's parents are first grouped by mechanism into small OR groups, so that every full
table stays small; the noisy-OR stays exactly the same.
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
        lines.append(f'  "{a}" -> "{b}" [penwidth={wide:.2f}, label="{data["strength"]:.2f}"];')
    return "\n".join([*lines, "}", ""])


def with_few_parents(
    network: Network, most: int = MOST_PARENTS, group: Mapping[str, str] | None = None
) -> Network:
    """The same network with at most ``most`` parents for each node.

    Parents are grouped, first by mechanism (``group``), into OR nodes without a leak whose own
    link is certain.
    """
    leak = dict(network.leak)
    parents: dict[str, dict[str, float]] = {}
    for name, links in network.parents.items():
        level = sorted(links.items(), key=lambda link: ((group or {}).get(link[0], ""), link[0]))
        depth = 0
        while len(level) > most:
            grouped = []
            for i in range(0, len(level), most):
                part = level[i : i + most]
                if len(part) == 1:
                    grouped.append(part[0])
                    continue
                node = f"{name}__via_{depth}_{i // most}"
                leak[node] = 0.0
                parents[node] = dict(part)
                grouped.append((node, 1.0))
            level = grouped
            depth += 1
        parents[name] = dict(level)
    return Network(network.prior, leak, parents)


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
    if name in network.prior:
        p = network.prior[name]
        return [f"probability ( {name} ) {{", f"  table {1 - p!r}, {p!r};", "}"]
    links = network.parents.get(name, {})
    if not links:
        p = network.leak[name]
        return [f"probability ( {name} ) {{", f"  table {1 - p!r}, {p!r};", "}"]
    lines = [f"probability ( {name} | {', '.join(links)} ) {{"]
    for states in product((False, True), repeat=len(links)):
        absent = 1.0 - network.leak[name]
        for there, strength in zip(states, links.values(), strict=True):
            absent *= 1.0 - strength if there else 1.0
        row = ", ".join("present" if s else "absent" for s in states)
        lines.append(f"  ({row}) {absent!r}, {1 - absent!r};")
    return [*lines, "}"]

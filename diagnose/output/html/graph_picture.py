"""The cause graph as an SVG picture: causes at the left, findings at the right.

A link is the thicker the stronger it is; the most probable paths of the leading cause are black,
boxed thickly and carry their strength, the rest is grey.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from textwrap import wrap
from typing import Any

from diagnose.output.documents.cause_graph import CauseGraph, GraphLink, GraphNode
from diagnose.output.html.layered import laid_out
from diagnose.output.html.page import rendered
from diagnose.output.lines import percent

BOX, BETWEEN, LINE, PAD = 130.0, 36.0, 13.5, 7.0  #: px
LETTERS = 17  #: of a line in a box
HEAD = 26.0  #: px: the columns' names
MANY_COLUMNS = 5  #: more than these are printed in landscape


def needs_landscape(graph: CauseGraph) -> bool:
    """Whether the picture is too wide for an upright sheet."""
    return graph.columns > MANY_COLUMNS


def graph_svg(graph: CauseGraph, name: str = "causes") -> str:
    """Draw the graph as SVG; ``name`` goes before every id of the markup."""
    at = {n.id: n.column for n in graph.nodes}
    lines = {n.id: _words(n) for n in graph.nodes}
    tall = {n: LINE * len(text) + 2 * PAD for n, text in lines.items()}
    laid = laid_out(at, [(link.start, link.end) for link in graph.links], tall)
    ruled_out = {n.id for n in graph.nodes if n.ruled_out}
    return rendered(
        "causes.svg",
        name=name,
        says=_in_words(graph),
        wide=graph.columns * BOX + (graph.columns - 1) * BETWEEN + 8,
        tall=laid.tall + HEAD + 12,
        heads=list(_heads(graph.columns - 1)),
        boxes=[
            {
                "x": 4 + node.column * (BOX + BETWEEN),
                "y": HEAD + 4 + laid.middle[node.id] - tall[node.id] / 2,
                "wide": BOX,
                "tall": tall[node.id],
                "layer": node.layer,
                "thick": node.on_path,
                "lines": lines[node.id],
                "first": PAD + LINE - 3,
                "step": LINE,
            }
            for node in graph.nodes
        ],
        links=sorted(
            (
                _link(link, at, laid.middle, laid.ways[link.start, link.end])
                | {"broken": link.end in ruled_out}
                for link in graph.links
            ),
            key=lambda link: link["black"],
        ),
    )


def _words(node: GraphNode) -> list[str]:
    says = f"not there: {node.says}" if node.ruled_out else node.says
    lines = wrap(says, LETTERS) or [""]
    if node.probability is not None:
        lines.append(percent(node.probability))
    return lines


def _heads(last: int) -> Iterator[dict[str, Any]]:
    """A name over the first column, the last, and what lies between."""
    names = {0: "root cause"} | ({last: "found or ruled out"} if last else {})
    if last > 1:
        names[1] = "inside the engine"
    for k, says in sorted(names.items()):
        end = k == last > 0
        yield {"x": 4 + k * (BOX + BETWEEN) + BOX * end, "says": says, "last": end}


def _link(
    link: GraphLink,
    at: Mapping[str, int],
    middle: Mapping[str, float],
    passes: Collection[tuple[int, float]],
) -> dict[str, Any]:
    """Where a link runs: from its start through its passes (column, height) to its end."""
    x, y = 4 + at[link.start] * (BOX + BETWEEN) + BOX, HEAD + 4 + middle[link.start]
    path = [f"M{x:.0f} {y:.1f}"]
    for column, height in passes:
        left, over = 4 + column * (BOX + BETWEEN), HEAD + 4 + height
        path.append(f"{_bend(x, y, left, over)} H{left + BOX:.0f}")
        x, y = left + BOX, over
    end, down = 4 + at[link.end] * (BOX + BETWEEN) - 6, HEAD + 4 + middle[link.end]
    path.append(_bend(x, y, end, down))
    bar, arrow = (
        f"M{end + 3:.0f} {down - 4.5:.1f} h3 v9 h-3 Z",
        f"M{end + 6:.0f} {down:.1f} l-8 -3.5 v7 Z",
    )
    return {
        "path": " ".join(path),
        "wide": f"{0.8 + 3.2 * link.strength:.1f}",
        "black": link.on_path,
        "x": end - 1,
        "y": down - 4,
        "strength": f"{link.strength:.2f}".removeprefix("0"),
        "tip": bar if link.inhibits else arrow,
    }


def _bend(x: float, y: float, to_x: float, to_y: float) -> str:
    half = (x + to_x) / 2
    return f"C{half:.0f} {y:.1f} {half:.0f} {to_y:.1f} {to_x:.0f} {to_y:.1f}"


def _in_words(graph: CauseGraph) -> str:
    """What the picture shows, for those who do not see it."""
    boxes, links = len(graph.nodes), len(graph.links)
    head = f"{boxes} box{'es' * (boxes != 1)}, {links} link{'s' * (links != 1)}"
    paths = "; ".join(graph.path_texts)
    return f"{head}. " + (f"Likeliest: {paths}." if paths else "No way stands out.")

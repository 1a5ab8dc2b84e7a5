"""The cause graph as a picture: causes at the left, what was found at the right.

Imported by ``report_page`` and ``cli``. A link is the thicker the stronger it is; the likeliest
ways of the leading cause are black, boxed thickly and carry their strength, the rest is grey.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from itertools import pairwise
from textwrap import wrap
from typing import Any

from diagnose.diagnosis import Diagnosis
from diagnose.inference.causegraph import Graph, around, columns
from diagnose.inference.explain import Weight
from diagnose.output.documents.reasons import is_there
from diagnose.output.html.layered import laid_out
from diagnose.output.html.page import rendered
from diagnose.output.lines import percent

BOX, BETWEEN, LINE, PAD = 130.0, 36.0, 13.5, 7.0  #: px
LETTERS = 17  #: of a line in a box
HEAD = 26.0  #: px: the columns' names
RIVALS, OF_FIRST, OF_RIVALS, LIKELY = 3, 6, 3, 0.02
MANY_COLUMNS = 5  #: more than these are printed on a sheet turned on its side


@dataclass(frozen=True, slots=True)
class Part:
    """What of the graph is drawn, and the ways that stand out."""

    graph: Graph
    ways: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Picture:
    """The picture as markup, the ways that stand out in words, and its size in columns."""

    svg: str
    ways: tuple[str, ...]  #: those that stand out, step by step
    columns: int

    @property
    def turned(self) -> bool:
        """Whether it needs a sheet turned on its side."""
        return self.columns > MANY_COLUMNS


def leading(answer: Diagnosis) -> Part:
    """The likeliest causes and what speaks most for them, along the likeliest ways."""
    shown = [answer.ranking[0], *(r for r in answer.ranking[1:RIVALS] if r.probability >= LIKELY)]
    weights = answer.reasons.weights([r.cause.id for r in shown])
    kept: dict[str, None] = {}
    ways: list[tuple[str, ...]] = []
    for i, ranked in enumerate(shown):
        kept[ranked.cause.id] = None
        for w in _brought(answer, weights[ranked.cause.id])[: OF_FIRST if i == 0 else OF_RIVALS]:
            kept.update(dict.fromkeys(w.chain))
            if i == 0:
                ways.append(w.chain)
    return Part(_ordered(answer.inference.graph.subgraph(kept)), tuple(ways))


def focused(answer: Diagnosis, cause: str) -> Part:
    """All that ties one node to what was found; the likeliest ways where it is a cause."""
    part = around(answer.inference.graph, set(answer.inference.evidence), {cause})
    if cause not in answer.inference.network.prior:
        return Part(part, ())
    told = _brought(answer, answer.reasons.weights([cause])[cause])
    return Part(part, tuple(w.chain for w in told[:OF_FIRST]))


def _brought(answer: Diagnosis, weights: Collection[Weight]) -> list[Weight]:
    """What speaks for the cause because it brings it about and it is there."""
    return [w for w in weights if w.decibans > 0 and w.chain and is_there(answer, w.what)]


def _ordered(graph: Graph) -> Graph:
    """The same with nodes and links in the order of their names: the same case, the same bytes."""
    out: Graph = type(graph)()
    out.add_nodes_from((n, graph.nodes[n]) for n in sorted(graph))
    out.add_edges_from((a, b, graph.edges[a, b]) for a, b in sorted(graph.edges))
    return out


def picture(answer: Diagnosis, part: Part, name: str = "causes") -> Picture:
    """Draw it; ``name`` goes before every id of the markup."""
    graph = part.graph
    at = columns(graph)
    lines = {n: _words(answer, n) for n in graph}
    tall = {n: LINE * len(text) + 2 * PAD for n, text in lines.items()}
    laid = laid_out(at, list(graph.edges), tall)
    black = {step for way in part.ways for step in pairwise(way)}
    thick = {n for way in part.ways for n in way}
    many = max(at.values(), default=0) + 1
    wide = many * BOX + (many - 1) * BETWEEN + 8
    ways = tuple(" -> ".join(str(graph.nodes[n]["says"]) for n in way) for way in part.ways)
    svg = rendered(
        "causes.svg",
        name=name,
        says=_in_words(graph, ways),
        wide=wide,
        tall=laid.tall + HEAD + 12,
        heads=list(_heads(graph, at)),
        boxes=[
            {
                "x": 4 + at[n] * (BOX + BETWEEN),
                "y": HEAD + 4 + laid.middle[n] - tall[n] / 2,
                "wide": BOX,
                "tall": tall[n],
                "layer": graph.nodes[n]["layer"],
                "thick": n in thick,
                "lines": text,
                "first": PAD + LINE - 3,
                "step": LINE,
            }
            for n, text in lines.items()
        ],
        links=sorted(
            (
                _link(graph, step, at, laid.middle, laid.ways[step], step in black)
                | {"broken": _ruled_out(answer, step[1])}
                for step in graph.edges
            ),
            key=lambda link: link["black"],
        ),
    )
    return Picture(svg, ways, many)


def _words(answer: Diagnosis, name: str) -> list[str]:
    says = str(answer.inference.graph.nodes[name]["says"])
    if _ruled_out(answer, name):
        says = f"not there: {says}"
    lines = wrap(says, LETTERS) or [""]
    if name in answer.inference.network.prior:
        lines.append(percent(answer.inference.posterior.marginal[name]))
    return lines


def _ruled_out(answer: Diagnosis, name: str) -> bool:
    """Whether it was looked for and was not there."""
    return name in answer.inference.evidence and not is_there(answer, name)


def _heads(graph: Graph, at: Mapping[str, int]) -> Iterator[dict[str, Any]]:
    """A name over the first column, the last, and what lies between."""
    last = max(at.values(), default=0)
    names = {0: "root cause"} | ({last: "found or ruled out"} if last else {})
    if last > 1:
        names[1] = "inside the engine"
    for k, says in sorted(names.items()):
        end = k == last > 0
        yield {"x": 4 + k * (BOX + BETWEEN) + BOX * end, "says": says, "last": end}


def _link(
    graph: Graph,
    step: tuple[str, str],
    at: Mapping[str, int],
    middle: Mapping[str, float],
    way: Collection[tuple[int, float]],
    black: bool,
) -> dict[str, Any]:
    a, b = step
    strength = graph.edges[step]["strength"]
    x, y = 4 + at[a] * (BOX + BETWEEN) + BOX, HEAD + 4 + middle[a]
    path = [f"M{x:.0f} {y:.1f}"]
    for k, height in way:
        left, over = 4 + k * (BOX + BETWEEN), HEAD + 4 + height
        path.append(f"{_bend(x, y, left, over)} H{left + BOX:.0f}")
        x, y = left + BOX, over
    end, down = 4 + at[b] * (BOX + BETWEEN) - 6, HEAD + 4 + middle[b]
    path.append(_bend(x, y, end, down))
    return {
        "path": " ".join(path),
        "wide": f"{0.8 + 3.2 * strength:.1f}",
        "black": black,
        "x": end - 1,
        "y": down - 4,
        "strength": f"{strength:.2f}".removeprefix("0"),
        "tip": f"M{end + 6:.0f} {down:.1f} l-8 -3.5 v7 Z",
    }


def _bend(x: float, y: float, to_x: float, to_y: float) -> str:
    half = (x + to_x) / 2
    return f"C{half:.0f} {y:.1f} {half:.0f} {to_y:.1f} {to_x:.0f} {to_y:.1f}"


def _in_words(graph: Graph, ways: Collection[str]) -> str:
    """What the picture shows, for those who do not see it."""
    boxes, links = graph.number_of_nodes(), graph.number_of_edges()
    head = f"{boxes} box{'es' * (boxes != 1)}, {links} link{'s' * (links != 1)}"
    return f"{head}. " + (f"Likeliest: {'; '.join(ways)}." if ways else "No way stands out.")

"""``graph``: the cause graph to a file or standard output."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.disk import write_plain
from diagnose.case.loading import load
from diagnose.cli import printing
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError, nearest, plain
from diagnose.inference import graph_formats as graphfile
from diagnose.inference.causegraph import around, as_network
from knowledge.book import the_book

PICTURE = "svg"


def show_graph(path: Path, format: str, out: str, focus: str) -> None:
    """Write the graph; ``focus`` keeps what ties one cause to the findings of the case."""
    wanted, formats = format.strip().lower(), (*graphfile.FORMATS, PICTURE)
    if wanted not in formats:
        raise UsageError(
            f"no format '{plain(format)}'; one of {', '.join(formats)}.{nearest(format, formats)}"
        )
    book = the_book()
    answer = Diagnosis(book, load(path, book))
    node = _node(answer, focus) if focus else ""
    text = _drawn(answer, node) if wanted == PICTURE else _text(answer, node, wanted)
    if out == "-":
        printing.answer(text, end="")
    else:
        write_plain(Path(out), text, path)


def _node(answer: Diagnosis, focus: str) -> str:
    wanted = focus.strip().lower().replace("-", "_")
    if wanted not in answer.inference.graph:
        raise UsageError(
            f"no '{plain(focus)}' in this graph.{nearest(wanted, answer.inference.graph)}"
        )
    return wanted


def _drawn(answer: Diagnosis, node: str) -> str:
    """The picture; without a focus of the leading causes and what speaks most for them."""
    from diagnose.output.documents.cause_graph import focused_graph, leading_causes_graph
    from diagnose.output.html.graph_picture import graph_svg

    return graph_svg(focused_graph(answer, node) if node else leading_causes_graph(answer))


def _text(answer: Diagnosis, node: str, format: str) -> str:
    graph = (
        around(answer.inference.graph, set(answer.inference.evidence), {node})
        if node
        else answer.inference.graph
    )
    match format:
        case "json":
            return graphfile.as_json(graph)
        case "graphml":
            return graphfile.as_graphml(graph)
        case "dot":
            return graphfile.as_dot(graph)
        case _:
            return graphfile.as_bif(graph, as_network(graph))

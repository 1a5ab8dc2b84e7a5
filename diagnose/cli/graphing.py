"""``graph``: the cause graph to a file or standard output."""

from __future__ import annotations

from pathlib import Path

from diagnose import graphfile
from diagnose.casefile.disk import write_plain
from diagnose.casefile.reading import load
from diagnose.causegraph import Graph, around, as_network
from diagnose.cli import printing
from diagnose.consultation import Consultation
from diagnose.errors import UsageError, nearest, plain
from knowledge.book import the_book


def show_graph(path: Path, format: str, out: str, focus: str) -> None:
    """Write the graph; ``focus`` keeps what ties one cause to the findings of the case."""
    wanted = format.strip().lower()
    if wanted not in graphfile.FORMATS:
        raise UsageError(
            f"no format '{plain(format)}'; one of {', '.join(graphfile.FORMATS)}."
            f"{nearest(format, graphfile.FORMATS)}"
        )
    book = the_book()
    answer = Consultation(book, load(path, book))
    graph = _focused(answer, focus) if focus else answer.graph
    text = _text(graph, wanted)
    if out == "-":
        printing.answer(text, end="")
    else:
        write_plain(Path(out), text, path)


def _focused(answer: Consultation, focus: str) -> Graph:
    wanted = focus.strip().lower().replace("-", "_")
    if wanted not in answer.graph:
        raise UsageError(f"no '{plain(focus)}' in this graph.{nearest(wanted, answer.graph)}")
    return around(answer.graph, set(answer.evidence), {wanted})


def _text(graph: Graph, format: str) -> str:
    match format:
        case "json":
            return graphfile.as_json(graph)
        case "graphml":
            return graphfile.as_graphml(graph)
        case "dot":
            return graphfile.as_dot(graph)
        case _:
            return graphfile.as_bif(graph, as_network(graph))

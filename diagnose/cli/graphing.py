"""``graph``: the cause graph to a file or standard output."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.disk import write_plain
from diagnose.case.loading import load
from diagnose.cli import printing
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError, nearest, plain
from diagnose.output.documents.cause_graph import focused_graph, leading_causes_graph
from diagnose.output.graph_file import FORMATS, graph_file
from knowledge.book import the_book

PICTURE = "svg"


def show_graph(path: Path, format: str, out: str, focus: str) -> None:
    """Write the graph; ``focus`` keeps what ties one cause to the findings of the case."""
    wanted, formats = format.strip().lower(), (*FORMATS, PICTURE)
    if wanted not in formats:
        raise UsageError(
            f"no format '{plain(format)}'; one of {', '.join(formats)}.{nearest(format, formats)}"
        )
    book = the_book()
    diagnosis = Diagnosis(book, load(path, book))
    node = _node(diagnosis, focus) if focus else ""
    text = _picture(diagnosis, node) if wanted == PICTURE else graph_file(diagnosis, wanted, node)
    if out == "-":
        printing.answer(text, end="")
    else:
        write_plain(Path(out), text, path)


def _picture(diagnosis: Diagnosis, node: str) -> str:
    """The picture of all that ties a node to the evidence, or of the leading causes."""
    from diagnose.output.html.graph_picture import graph_svg

    return graph_svg(focused_graph(diagnosis, node) if node else leading_causes_graph(diagnosis))


def _node(diagnosis: Diagnosis, focus: str) -> str:
    node, graph = focus.strip().lower().replace("-", "_"), diagnosis.inference.graph
    if node not in graph:
        raise UsageError(f"no '{plain(focus)}' in this graph.{nearest(node, graph)}")
    return node

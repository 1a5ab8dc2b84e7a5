"""``graph``: the cause graph to a file or standard output."""

from __future__ import annotations

from pathlib import Path

import typer

from diagnose import graphfile
from diagnose.casefile.reading import load, nearest
from diagnose.causegraph import around, as_network
from diagnose.consultation import Consultation
from diagnose.errors import CannotWriteError, UsageError
from knowledge.book import the_book


def show_graph(path: Path, format: str, out: str, focus: str) -> None:
    """Write the graph; ``focus`` keeps what ties one cause to the findings of the case."""
    if format not in graphfile.FORMATS:
        raise UsageError(
            f"no format '{format[:30]}'; one of {', '.join(graphfile.FORMATS)}."
            f"{nearest(format, graphfile.FORMATS)}"
        )
    book = the_book()
    answer = Consultation(book, load(path, book))
    graph = answer.graph
    if focus:
        wanted = focus.lower().replace("-", "_")
        if wanted not in graph:
            raise UsageError(f"no '{focus[:60]}' in this graph.{nearest(wanted, graph)}")
        graph = around(graph, set(answer.evidence), {wanted})
    match format:
        case "json":
            text = graphfile.as_json(graph)
        case "graphml":
            text = graphfile.as_graphml(graph)
        case "dot":
            text = graphfile.as_dot(graph)
        case _:
            text = graphfile.as_bif(graph, as_network(graph))
    if out == "-":
        typer.echo(text, nl=False)
        return
    try:
        Path(out).write_text(text, encoding="utf-8")
    except OSError as error:
        raise CannotWriteError(f"{out}: {error.strerror}") from None

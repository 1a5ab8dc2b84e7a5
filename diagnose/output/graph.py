"""The cause graph of a case as a file in an open format."""

from __future__ import annotations

from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError, nearest, plain
from diagnose.inference import graph_formats
from diagnose.inference.causegraph import around, as_network

PICTURE = "svg"
FORMATS = (*graph_formats.FORMATS, PICTURE)


def parse_format(text: str) -> str:
    """One of ``FORMATS``. Raises UsageError with the nearest."""
    wanted = text.strip().lower()
    if wanted not in FORMATS:
        near = nearest(text, FORMATS)
        raise UsageError(f"no format '{plain(text)}'; one of {', '.join(FORMATS)}.{near}")
    return wanted


def node_named(text: str, answer: Diagnosis) -> str:
    """The id of a node of the case's graph. Raises UsageError with the nearest."""
    wanted, graph = text.strip().lower().replace("-", "_"), answer.inference.graph
    if wanted not in graph:
        raise UsageError(f"no '{plain(text)}' in this graph.{nearest(wanted, graph)}")
    return wanted


def graph_text(answer: Diagnosis, file_format: str, node: str = "") -> str:
    """The whole content of the file; ``node`` keeps only what ties it to the findings.

    Every format but the picture, which ``output.html`` draws.
    """
    graph = answer.inference.graph
    if node:
        graph = around(graph, set(answer.inference.evidence), {node})
    match file_format:
        case "json":
            return graph_formats.as_json(graph)
        case "graphml":
            return graph_formats.as_graphml(graph)
        case "dot":
            return graph_formats.as_dot(graph)
        case "bif":
            return graph_formats.as_bif(graph, as_network(graph))
        case _:
            raise ValueError(f"no text format '{file_format}'")

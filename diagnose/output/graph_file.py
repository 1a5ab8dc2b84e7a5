"""The cause graph in exchange formats; the picture is drawn by ``html.graph_picture``."""

from __future__ import annotations

from diagnose.diagnosis import Diagnosis
from diagnose.inference import graph_formats
from diagnose.inference.causegraph import around, as_network

FORMATS = graph_formats.FORMATS


def graph_file(diagnosis: Diagnosis, format: str, focus: str = "") -> str:
    """Return the text of a file in one of ``FORMATS``. Raises ValueError for any other.

    ``focus``: a node id; keeps only the paths from it to the evidence.
    """
    inference = diagnosis.inference
    graph = around(inference.graph, set(inference.evidence), {focus}) if focus else inference.graph
    match format:
        case "json":
            return graph_formats.as_json(graph)
        case "graphml":
            return graph_formats.as_graphml(graph)
        case "dot":
            return graph_formats.as_dot(graph)
        case "bif":
            return graph_formats.as_bif(graph, as_network(graph))
    raise ValueError(f"no format {format!r}")

"""What ``graph`` shows on a terminal: the paths from the leading causes to what was found.

Files and pictures of the graph are written by ``output.graph_file`` and ``html``.
"""

from __future__ import annotations

from diagnose.output.documents.cause_graph import CauseGraph
from diagnose.output.lines import as_typed, headed, percent, wrapped
from diagnose.output.text.screen import Block, command_lines, on_screen

PATHS = 4  #: shown


def graph_brief(graph: CauseGraph, title: str, path: str) -> str:
    """Return the leading causes and their paths in about thirty lines, what to type last."""
    name = as_typed(path)
    blocks = [
        Block(wrapped(f"Cause graph: {title or 'case without a title'}", 0, 2)),
        Block(_causes(graph)),
        *(
            Block(wrapped(f"- {text}", 0, 2), spare=i)
            for i, text in enumerate(graph.path_texts[:PATHS])
        ),
        Block(
            [
                *command_lines("All of it, for programs", f"diagnose graph {name} --format json"),
                *command_lines(
                    "As a picture", f"diagnose graph {name} --format svg --out graph.svg"
                ),
            ]
        ),
    ]
    return on_screen(blocks)


def _causes(graph: CauseGraph) -> list[str]:
    causes = sorted(
        (n for n in graph.nodes if n.probability is not None), key=lambda n: -(n.probability or 0)
    )
    return [
        line
        for n in causes
        for line in headed(f"{percent(n.probability or 0.0):>6}  ", f"{n.says} [{n.id}]")
    ]

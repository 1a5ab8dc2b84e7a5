"""``graph``: the case's cause graph in an open format, in words or as a picture."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import CaseFile

if TYPE_CHECKING:
    pass


PICTURE = "svg"  #: the format of ``graph`` that is drawn


def graph(
    case: CaseFile,
    format: Annotated[
        str,
        typer.Option(
            metavar="FORMAT",
            help="json, graphml, dot, bif or svg; json if left out, in words on a terminal.",
        ),
    ] = "",
    out: Annotated[
        str, typer.Option(metavar="FILE", help="File to write, never a case; - is standard output.")
    ] = "-",
    focus: Annotated[
        str, typer.Option(metavar="CAUSE", help="Only what ties this cause to the findings.")
    ] = "",
) -> None:
    """The case's cause graph in an open format that general libraries read, or as a picture.

    The picture shows the leading causes, or the one in focus, and what was found.
    """
    from diagnose.case.loading import load
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.words import parse_format, parse_node
    from diagnose.output.graph_file import FORMATS, graph_file
    from knowledge.book import the_book

    wanted = parse_format(format or "json", (*FORMATS, PICTURE))
    if out != "-":
        printing.check_file(Path(out), case)
    book = the_book()
    answer = Diagnosis(book, load(case, book))
    node = parse_node(focus, answer.inference.graph) if focus else ""
    if not format and out == "-" and sys.stdout.isatty():
        from diagnose.output.documents.cause_graph import focused_graph, leading_causes_graph
        from diagnose.output.text.graph_brief import graph_brief

        shown = focused_graph(answer, node) if node else leading_causes_graph(answer)
        text = graph_brief(shown, answer.case.job.title, str(case)) + "\n"
    elif wanted == PICTURE:
        from diagnose.output.documents.cause_graph import focused_graph, leading_causes_graph
        from diagnose.output.html.graph_picture import graph_svg

        text = graph_svg(focused_graph(answer, node) if node else leading_causes_graph(answer))
    else:
        text = graph_file(answer, wanted, node)
    if out == "-":
        printing.answer(text, end="")
    else:
        printing.write_file(Path(out), text, case)

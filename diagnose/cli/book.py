"""Commands for the book behind the answers: ``lookup``, ``show``, ``check`` and ``graph``."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson, CaseFile

PICTURE = "svg"  #: the format of ``graph`` that is drawn


def lookup(
    words: Annotated[
        list[str] | None,
        typer.Argument(metavar="WORDS", help="Any words: needle dances, metal in filter."),
    ] = None,
    json: AsJson = False,
    most: Annotated[
        int | None,
        typer.Option(
            min=1, max=10_000, metavar="NUMBER", help="How many to show; default 8; all in a list."
        ),
    ] = None,
    kind: Annotated[
        str,
        typer.Option(
            metavar="KIND",
            help="Only of this kind: finding, cause, inspection, measure, task, part, condition, "
            "layout, limit, links or rule; without words all of them.",
        ),
    ] = "",
) -> None:
    """Find what the book calls something you know by another word, or list what it holds."""
    from diagnose.cli.looking import show_lookup

    show_lookup(" ".join(words or []), json, most, kind)


def show(
    word: Annotated[
        str,
        typer.Argument(metavar="ID", help="The id of anything in the book, as lookup names it."),
    ],
    json: AsJson = False,
) -> None:
    """Everything the book says of one word: a cause, finding, inspection, task, part, rule ..."""
    from diagnose.cli.looking import show_word

    show_word(word, json)


def check(
    cases: Annotated[
        list[Path] | None,
        typer.Option(
            metavar="DIR",
            readable=False,
            help="A folder of cases, to see which rules never fire in them; repeat for more.",
        ),
    ] = None,
    all: Annotated[bool, typer.Option("--all", help="Every list whole.")] = False,
    json: AsJson = False,
) -> None:
    """Check names, sources, strengths, examples, access, and which causes are indistinguishable.

    Exit 1 where something is wrong. Every rule runs on its examples: half a minute.
    """
    from diagnose.cli.checking import show_check

    show_check(cases or [], all, json)


def graph(
    case: CaseFile,
    format: Annotated[
        str, typer.Option(metavar="FORMAT", help="json, graphml, dot, bif or svg.")
    ] = "json",
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

    wanted = parse_format(format, (*FORMATS, PICTURE))
    book = the_book()
    answer = Diagnosis(book, load(case, book))
    node = parse_node(focus, answer.inference.graph) if focus else ""
    if wanted == PICTURE:
        from diagnose.output.documents.cause_graph import focused_graph, leading_causes_graph
        from diagnose.output.html.graph_picture import graph_svg

        text = graph_svg(focused_graph(answer, node) if node else leading_causes_graph(answer))
    else:
        text = graph_file(answer, wanted, node)
    if out == "-":
        printing.answer(text, end="")
    else:
        printing.write_file(Path(out), text, case)

"""Commands for the book behind the answers: ``lookup``, ``show``, ``check`` and ``graph``."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson, CaseFile, Whole

if TYPE_CHECKING:
    from diagnose.inference.chaining import Facts

USUAL_HITS = 8  #: shown where no number is asked for
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
            "layout, limit, trial, area, fault, links, inhibitors or rule; without words all.",
        ),
    ] = "",
    whole: Whole = False,
) -> None:
    """Find what the book calls something you know by another word, or list what it holds."""
    from diagnose.entry.words import parse_kind
    from diagnose.errors import UsageError
    from diagnose.lookup.finder import KINDS

    text = " ".join(words or [])
    wanted = parse_kind(kind) if kind else ""
    if text.strip():
        _print_hits(text, wanted, most or USUAL_HITS, json)
    elif wanted:
        _print_list(wanted, most, json, whole)
    else:
        raise UsageError(
            "nothing to look up; write for instance: diagnose lookup needle dances, "
            f"or to list all of a kind --kind {', '.join(KINDS)}"
        )


def show(
    word: Annotated[
        str,
        typer.Argument(metavar="ID", help="The id of anything in the book, as lookup names it."),
    ],
    json: AsJson = False,
    whole: Whole = False,
) -> None:
    """What the book says of one word: a cause, finding, inspection, task, part, rule ..."""
    from diagnose.entry.words import words_of_id
    from diagnose.output.as_json import as_json
    from diagnose.output.documents.lookup import show_document
    from diagnose.output.text.lookup import show_text
    from diagnose.output.text.show_brief import show_brief
    from knowledge.book import the_book

    book = the_book()
    document = show_document(words_of_id(word, book), book)
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(show_text(document) if whole else show_brief(document))


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
    from diagnose.bookcheck.everything import everything
    from diagnose.bookcheck.shapes import Whole
    from diagnose.output.as_json import as_json
    from diagnose.output.documents.check import check_document
    from diagnose.output.text.check import check_text
    from knowledge.book import the_book

    facts = {str(path): facts for folder in cases or () for path, facts in _facts_of(folder)}
    document = check_document(everything(Whole(the_book()), facts))
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(check_text(document, all))
    if document.faults:
        raise typer.Exit(1)


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


def _print_hits(text: str, kind: str, most: int, json: bool) -> None:
    """Print the words that fit ``text``. Raises UsageError where there are none."""
    from diagnose.entry.words import no_hits
    from diagnose.lookup.finder import KINDS, finder_of
    from diagnose.output.as_json import as_json
    from diagnose.output.documents.lookup import hits_document
    from diagnose.output.text.lookup import hits_text
    from diagnose.understanding.reader import read
    from knowledge.book import the_book

    kinds = (KINDS[kind][0],) if kind else ()
    book = the_book()
    facts = [] if kind else read(text, book).facts
    document = hits_document(finder_of(book).find(text, kinds, most), facts, book)
    document = replace(document, hits=document.hits[:most])
    if json:
        printing.data(as_json(document))
    if not document.hits and not document.understood:
        raise no_hits(text, kind)
    if not json:
        printing.answer(hits_text(document))


def _print_list(kind: str, most: int | None, json: bool, whole: bool) -> None:
    """Print every word of a kind."""
    from diagnose.lookup.finder import words_of
    from diagnose.output.as_json import as_json
    from diagnose.output.documents.lookup import list_document
    from diagnose.output.text.lookup import list_text
    from diagnose.output.text.show_brief import list_brief
    from knowledge.book import the_book

    document = list_document(kind, words_of(the_book(), kind)[:most])
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(list_text(document) if whole or most else list_brief(document))


def _facts_of(folder: Path) -> Iterator[tuple[Path, Facts]]:
    """The facts of every case of a folder; files that cannot be read are left out, with a remark.

    Raises NoCaseError where there is no such folder.
    """
    from diagnose.case.loading import load
    from diagnose.errors import BadCaseError, NoCaseError, OutOfScopeError
    from diagnose.output.documents.folder import toml_files
    from knowledge.book import the_book

    for path in toml_files(folder):
        try:
            yield path, load(path, the_book()).facts()
        except (BadCaseError, NoCaseError, OutOfScopeError) as bad:
            printing.remark_lines(f"left out: {str(bad).splitlines()[0]}")

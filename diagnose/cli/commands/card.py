"""``card``: start an engine's card, write figures into it, show what it lacks."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson
from diagnose.errors import UsageError, plain


def card(
    name: Annotated[
        Path,
        typer.Argument(
            readable=False, metavar="NAME", help="The card's file; made if it is not there yet."
        ),
    ],
    figures: Annotated[
        list[str] | None,
        typer.Argument(
            metavar="FIGURES",
            help='Figures to write: main_clearance="0.0010 to 0.0025 in, limit 0.0035 in"; what it '
            'showed when sound: baseline="700 rpm 90 C 32 psi".',
        ),
    ] = None,
    layout: Annotated[
        str, typer.Option(metavar="LAYOUT", help="Of a new card: how the engine is built.")
    ] = "",
    from_case: Annotated[
        Path | None,
        typer.Option(
            "--from",
            readable=False,
            metavar="CASE",
            help="Take over what a job states of its engine: layout, oil, limits.",
        ),
    ] = None,
    full: Annotated[
        bool, typer.Option("--full", "--all", help="Every figure, there and missing.")
    ] = False,
    json: AsJson = False,
) -> None:
    """An engine's own figures in one file, for several jobs.

    Starts the file, each entry with its unit and where a manual prints it; later says what is
    there and what is missing. A job names it: card = "petrol_v8.toml" under its [engine].
    """
    from diagnose.case.card import BASELINE, load_card
    from diagnose.case.card_writing import (
        baseline_of,
        figures_of,
        places_of,
        start_card,
        write_figures,
    )
    from diagnose.case.loading import load
    from diagnose.entry.readings import parse_baseline
    from diagnose.output.documents.card import card_document
    from diagnose.output.text.card import card_text
    from knowledge.book import the_book

    book = the_book()
    named = name.suffix.lower() == ".toml" or not name.name or name.is_dir()
    path = name if named else name.with_name(f"{name.name}.toml")
    from_loaded = load(from_case, book) if from_case else None
    given = figures_of(from_loaded, book) if from_loaded else {}
    pairs = [_pair(text) for text in figures or ()]
    given |= {name: figure for name, figure in pairs if name != BASELINE}
    typed = [parse_baseline(figure) for name, figure in pairs if name == BASELINE]
    sound = [*(baseline_of(from_loaded) if from_loaded else ()), *typed]
    started = not path.exists() and not path.is_symlink()
    if layout and not started:
        given["layout"] = layout
    if started:
        engine = {k: given.pop(k, "") for k in ("name", "layout", "manual")}
        found = start_card(
            path, book, {**engine, "layout": layout or engine["layout"]}, given, sound
        )
    else:
        found = load_card(path, book)
        if given or sound:
            places = places_of(found, sound, book)
            found = write_figures(path, book, given, baseline=places)
    document = card_document(found, book, started=started)
    printing.document(document, lambda d: card_text(d, full=full), json=json)


def _pair(text: str) -> tuple[str, str]:
    """The name and figure of name=figure. Raises UsageError."""
    name, equals, figure = (part.strip() for part in text.partition("="))
    if not equals or not name or not figure:
        raise UsageError(f"'{plain(text)}': write name=figure, like relief_setting=\"50 psi\"")
    return name, figure

"""``card``: start an engine's card, write figures into it, show what it lacks."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson
from diagnose.errors import PartlySavedError, UsageError, plain

if TYPE_CHECKING:
    from diagnose.case.card import Card
    from diagnose.case.card_writing import Sound

OF_THE_ENGINE = ("name", "layout", "manual")  #: what a card says under its [engine]


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
    from diagnose.output.documents.card import card_document
    from diagnose.output.text.card import card_text
    from knowledge.book import the_book

    named = name.suffix.lower() == ".toml" or not name.name or name.is_dir()
    path = name if named else name.with_name(f"{name.name}.toml")
    typed, bad = _pairs(figures or ())
    if bad and not typed:
        raise UsageError("\n".join(bad))
    given, sound = _given(typed, from_case)
    if layout:
        given["layout"] = layout
    started = not path.exists() and not path.is_symlink()
    found = _started(path, given, sound) if started else _with_figures(path, given, sound)
    document = card_document(found, the_book(), started=started)
    printing.document(document, lambda d: card_text(d, full=full), json=json)
    if bad:
        raise PartlySavedError("\n".join(bad))


def _given(
    pairs: Sequence[tuple[str, str]], from_case: Path | None
) -> tuple[dict[str, str], list[Sound]]:
    """The figures to write by name, of a case and as typed, and pressures of the sound engine."""
    from diagnose.case.card import BASELINE
    from diagnose.case.card_writing import baseline_of, figures_of
    from diagnose.case.loading import load
    from diagnose.entry.readings import parse_baseline
    from knowledge.book import the_book

    case = load(from_case, the_book()) if from_case else None
    given = figures_of(case, the_book()) if case else {}
    given |= {name: figure for name, figure in pairs if name != BASELINE}
    typed = [parse_baseline(figure) for name, figure in pairs if name == BASELINE]
    return given, [*(baseline_of(case) if case else ()), *typed]


def _started(path: Path, given: Mapping[str, str], sound: Sequence[Sound]) -> Card:
    """A new card with what is given."""
    from diagnose.case.card_writing import start_card
    from knowledge.book import the_book

    engine = {key: given.get(key, "") for key in OF_THE_ENGINE}
    figures = {name: figure for name, figure in given.items() if name not in OF_THE_ENGINE}
    return start_card(path, the_book(), engine, figures, sound)


def _with_figures(path: Path, given: Mapping[str, str], sound: Sequence[Sound]) -> Card:
    """The card that is there, with what is given."""
    from diagnose.case.card import load_card
    from diagnose.case.card_writing import places_of, write_figures
    from knowledge.book import the_book

    found = load_card(path, the_book())
    if not given and not sound:
        return found
    places = places_of(found, sound, the_book())
    return write_figures(path, the_book(), given, baseline=places)


def _pairs(figures: Sequence[str]) -> tuple[list[tuple[str, str]], list[str]]:
    """The name and figure of each name=figure, and what is wrong with the others."""
    good, bad = [], []
    for text in figures:
        name, equals, figure = (part.strip() for part in text.partition("="))
        if equals and name and figure:
            good.append((name, figure))
        else:
            bad.append(_no_pair(text))
    return good, bad


def _no_pair(text: str) -> str:
    """What is wrong with a figure without its name, and the name that its words may mean."""
    from diagnose.entry.card_words import in_words
    from knowledge.book import the_book

    meant = in_words(text, the_book())
    if meant is None:
        return f"'{plain(text)}': write name=figure, like relief_setting=\"50 psi\""
    figure, value = meant
    right = f'{figure.id}="{plain(value, 40)}"'
    return f"'{plain(text)}': not saved; if it is the {figure.says}, write {right}"

"""``signoff``: what must be right as the engine goes together, at the first start and later."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import (
    AsBlanks,
    AsJson,
    AsMarkdown,
    AsPage,
    CaseFile,
    Changes,
    Whole,
    form_of,
)
from diagnose.errors import UsageError


def signoff(
    case: CaseFile,
    opened: Annotated[
        list[str] | None,
        typer.Option(
            metavar="PLACE",
            help="A place you opened that the case does not show: sump_off, cap_off.",
        ),
    ] = None,
    whole_engine: Annotated[
        bool, typer.Option("--whole-engine", help="The whole engine is being built.")
    ] = False,
    open_only: Annotated[
        bool, typer.Option("--open-only", help="Only what is not settled yet.")
    ] = False,
    start: Annotated[
        bool,
        typer.Option("--start", help="First start: pressures predicted, limits, what was read."),
    ] = False,
    after: Annotated[
        str | None,
        typer.Option(
            metavar="TIME",
            help='What to check again after this running time: "10 h"; "all" for all.',
        ),
    ] = None,
    changes: Changes = None,
    left: Annotated[
        list[str] | None,
        typer.Option(
            metavar="FINDING",
            help="With --start: a finding that was left as it is, as budget names it.",
        ),
    ] = None,
    markdown: AsMarkdown = False,
    blanks: AsBlanks = False,
    html: AsPage = None,
    json: AsJson = False,
    whole: Whole = False,
) -> None:
    """What stands open before and after the first start, by phase, and the next task.

    --all has every fit, gap, torque and gasket this repair calls for, with limits and sources.
    """
    from diagnose.case.loading import load
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.requests import parse_places
    from diagnose.output.as_json import as_json
    from diagnose.output.documents.signoff import signoff_document, start_expected
    from diagnose.output.markdown.signoff import signoff_blanks, signoff_markdown
    from diagnose.output.text.signoff import signoff_text
    from diagnose.output.text.signoff_brief import signoff_brief
    from diagnose.planning.choosing import SURE
    from diagnose.signoff.parts import parts_list
    from diagnose.signoff.sheet import Signoff
    from knowledge.book import the_book

    form = form_of(json=json, markdown=markdown, blanks=blanks)
    if after is not None:
        _print_later(case, after, opened or [], whole_engine, form)
        return
    if start and html is None:
        _print_start(case, opened or [], whole_engine, changes or [], left or [], json, whole)
        return
    printing.check_page(html, case, form)
    book = the_book()
    answer = Diagnosis(book, load(case, book))
    sheet = Signoff(answer, SURE, parse_places(opened or (), answer.planner.tree), whole_engine)
    needed = parts_list(sheet.causes, sheet.places, answer.case.features.get, book)
    if html is not None:
        from diagnose.circuit.settings import setting
        from diagnose.output.html.signoff_page import signoff_html

        expected = start_expected(sheet, [setting(s) for s in changes or ()], left or [])
        document = signoff_document(sheet, needed, str(case), start=expected)
        printing.write_page(html, signoff_html(document, open_only=open_only), case)
        return
    document = signoff_document(sheet, needed, str(case))
    if form == "json":
        printing.data(as_json(document))
    elif form == "markdown":
        printing.answer(signoff_markdown(document))
    elif form == "blanks":
        printing.answer(signoff_blanks(document))
    elif whole or open_only:
        printing.answer(signoff_text(document, open_only=open_only))
    else:
        printing.answer(signoff_brief(document))


def _print_later(path: Path, after: str, opened: list[str], whole: bool, form: str) -> None:
    """Print what is due after so many hours of running, and how it stands."""
    from diagnose.case.loading import load
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.requests import parse_places, parse_running_time
    from diagnose.output.as_json import as_json
    from diagnose.output.documents.later import later_document
    from diagnose.output.text.later import later_text
    from diagnose.planning.choosing import SURE
    from diagnose.signoff.sheet import Signoff
    from knowledge.book import the_book

    seconds = parse_running_time(after)
    answer = Diagnosis(the_book(), load(path, the_book()))
    sheet = Signoff(answer, SURE, parse_places(opened, answer.planner.tree), whole)
    document = later_document(sheet, str(path), seconds)
    if form == "json":
        printing.data(as_json(document))
    elif form == "text":
        printing.answer(later_text(document))
    else:
        raise UsageError(f"after: is shown as text or --json; leave out --{form}")


def _print_start(
    path: Path,
    opened: list[str],
    whole: bool,
    changes: list[str],
    left: list[str],
    json: bool,
    all_of_it: bool,
) -> None:
    """Print what the repaired engine should show at its first start, and what it does show."""
    from diagnose.case.loading import load
    from diagnose.circuit.settings import setting
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.requests import parse_places
    from diagnose.output.as_json import as_json
    from diagnose.output.documents.first_start import first_start_document
    from diagnose.output.text.first_start import first_start_text
    from diagnose.output.text.first_start_brief import first_start_brief
    from diagnose.planning.choosing import SURE
    from diagnose.signoff.sheet import Signoff
    from diagnose.signoff.start import first_start
    from knowledge.book import the_book

    book = the_book()
    case = load(path, book)
    start = first_start(case, book, [setting(s) for s in changes], left)
    answer = Diagnosis(book, case)
    sheet = Signoff(answer, SURE, parse_places(opened, answer.planner.tree), whole)
    document = first_start_document(start, sheet, str(path))
    if json:
        printing.data(as_json(document))
    else:
        text = first_start_text if all_of_it else first_start_brief
        printing.answer(text(document))

"""``signoff``: what must be right as the engine goes together, at the first start and later."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import (
    AsBlanks,
    AsJson,
    AsMarkdown,
    AsPage,
    CaseFile,
    Changes,
    Form,
    Whole,
    form_of,
)
from diagnose.errors import UsageError

if TYPE_CHECKING:
    from diagnose.signoff.parts import Needed
    from diagnose.signoff.sheet import Signoff


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
    from diagnose.output.documents.signoff import signoff_document
    from diagnose.output.markdown.signoff import signoff_blanks, signoff_markdown
    from diagnose.output.text.signoff import signoff_text
    from diagnose.output.text.signoff_brief import signoff_brief

    form = form_of(json=json, markdown=markdown, blanks=blanks)
    if after is not None:
        _print_later(case, after, opened or (), form, whole_engine=whole_engine)
        return
    if start and html is None:
        _print_start(
            case,
            opened or (),
            changes or (),
            left or (),
            whole_engine=whole_engine,
            brief=not whole,
            json=json,
        )
        return
    printing.check_page(html, case, form)
    sheet = _sheet(case, opened or (), whole_engine=whole_engine)
    if html is not None:
        page = _page(sheet, case, changes or (), left or (), open_only=open_only)
        printing.write_page(html, page, case)
        return
    document = signoff_document(sheet, _parts(sheet), str(case))
    printing.sheet(
        document,
        form,
        text=(lambda d: signoff_text(d, open_only=open_only))
        if whole or open_only
        else signoff_brief,
        markdown=signoff_markdown,
        blanks=signoff_blanks,
    )


def _sheet(path: Path, opened: Sequence[str], *, whole_engine: bool) -> Signoff:
    """The sign-off of a case; ``opened``: places besides those the case shows."""
    from diagnose.case.loading import load
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.requests import parse_places
    from diagnose.planning.choosing import SURE
    from diagnose.signoff.sheet import Signoff
    from knowledge.book import the_book

    answer = Diagnosis(the_book(), load(path, the_book()))
    return Signoff(answer, SURE, parse_places(opened, answer.planner.tree), whole_engine)


def _parts(sheet: Signoff) -> tuple[Needed, ...]:
    """The parts that the repair calls for."""
    from diagnose.signoff.parts import parts_list

    features = sheet.answer.case.known_features
    return parts_list(sheet.causes, sheet.places, features.get, sheet.answer.book)


def _page(
    sheet: Signoff, path: Path, changes: Sequence[str], left: Sequence[str], *, open_only: bool
) -> str:
    """The page to print, with the pressures to expect at the first start."""
    from diagnose.circuit.settings import setting
    from diagnose.output.documents.signoff import signoff_document, start_expected
    from diagnose.output.html.signoff_page import signoff_html

    expected = start_expected(sheet, [setting(s) for s in changes], left)
    document = signoff_document(sheet, _parts(sheet), str(path), start=expected)
    return signoff_html(document, open_only=open_only)


def _print_later(
    path: Path, after: str, opened: Sequence[str], form: Form, *, whole_engine: bool
) -> None:
    """Print what is due after so many hours of running, and how it stands."""
    from diagnose.entry.requests import parse_running_time
    from diagnose.output.documents.after_hours import later_document
    from diagnose.output.text.later import later_text

    seconds = parse_running_time(after)
    sheet = _sheet(path, opened, whole_engine=whole_engine)
    if form not in (Form.TEXT, Form.JSON):
        raise UsageError(f"after: is shown as text or --json; leave out --{form}")
    document = later_document(sheet, str(path), seconds)
    printing.document(document, later_text, json=form is Form.JSON)


def _print_start(
    path: Path,
    opened: Sequence[str],
    changes: Sequence[str],
    left: Sequence[str],
    *,
    whole_engine: bool,
    brief: bool,
    json: bool,
) -> None:
    """Print what the repaired engine should show at its first start, and what it does show."""
    from diagnose.circuit.settings import setting
    from diagnose.output.documents.first_start import first_start_document
    from diagnose.output.text.first_start import first_start_text
    from diagnose.output.text.first_start_brief import first_start_brief
    from diagnose.signoff.start import predicted_start

    sheet = _sheet(path, opened, whole_engine=whole_engine)
    answer = sheet.answer
    start = predicted_start(answer.case, answer.book, [setting(s) for s in changes], left)
    document = first_start_document(start, sheet, str(path))
    printing.document(document, first_start_brief if brief else first_start_text, json=json)

"""``teardown``: the plan of one case, as text, Markdown, blanks or data."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from diagnose.case.loading import load
from diagnose.cli import paging, printing
from diagnose.cli.with_history import remembered
from diagnose.diagnosis import Diagnosis
from diagnose.entry.requests import parse_certainty
from diagnose.errors import UsageError
from diagnose.output import teardown as text
from diagnose.output import teardown_sheet as sheet
from diagnose.teardown.changes import Changes
from diagnose.teardown.loose_ends import loose_ends
from diagnose.teardown.plan import Plan, Wishes
from knowledge.book import the_book


def show_teardown(
    path: Path,
    wishes: Wishes,
    form: str,
    since: int | None,
    history: Path | None,
    page: Path | None = None,
) -> None:
    """Print the plan in one of the forms; ``history``: a folder whose closed jobs speak as well.

    With ``page`` it is written there instead, to be printed.
    """
    paging.ready(page, form)
    book = the_book()
    case = load(path, book)
    shop = remembered(history, book, path, "teardown")
    wishes = replace(wishes, shop_pace=shop.pace)
    plan = Plan(Diagnosis(book, case, learned=shop.factors), wishes)
    ends = loose_ends(plan.answer, wishes.until)
    changes = None
    if since is not None:
        if since >= case.last_number:
            raise UsageError(f"since: the last entry is {case.last_number}; nothing came after it")
        then = Diagnosis(book, load(path, book, since), learned=shop.factors)
        changes = Changes(since, Plan(then, wishes), plan)
    if page is not None:
        from diagnose.output.html.worksheet import worksheet

        paging.write(page, worksheet(plan, ends, str(path), changes, shop.line), path)
    elif form == "json":
        printing.data(shop.in_data(sheet.data(plan, ends, changes)))
    elif form == "markdown":
        printing.answer(shop.in_text(sheet.markdown(plan, ends, str(path), changes), form))
    elif form == "blanks":
        printing.answer(shop.in_text(sheet.blanks(plan), form))
    else:
        printing.answer(shop.in_text(text.teardown(plan, ends, str(path), changes)))


def plan_wanted(
    until: str,
    minutes: float | None,
    on_stand: bool,
    closed_up: bool,
    first_time: bool,
    little_room: bool,
) -> Wishes:
    """The options as wishes. Raises UsageError."""
    return Wishes(parse_certainty(until), minutes, on_stand, closed_up, first_time, little_room)

"""``teardown``: what to open and check, in what order, and when to stop."""

from __future__ import annotations

from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import (
    AsBlanks,
    AsJson,
    AsMarkdown,
    AsPage,
    CaseFile,
    ClosedUpToTest,
    FirstTime,
    LittleRoom,
    OnlyMinutes,
    OnStand,
    Until,
    Whole,
    WithHistory,
    form_of,
)

if TYPE_CHECKING:
    from pathlib import Path

    from diagnose.teardown.changes import Changes
    from diagnose.teardown.plan import Plan


def teardown(
    case: CaseFile,
    until: Until = "confident=0.9",
    minutes: OnlyMinutes = None,
    on_stand: OnStand = False,
    closed_up_to_test: ClosedUpToTest = False,
    first_time: FirstTime = False,
    little_room: LittleRoom = False,
    since: Annotated[
        int | None,
        typer.Option(
            min=0, metavar="NUMBER", help="Show what the entries after this number changed."
        ),
    ] = None,
    markdown: AsMarkdown = False,
    blanks: AsBlanks = False,
    html: AsPage = None,
    with_history: WithHistory = None,
    json: AsJson = False,
    stage: Annotated[
        int | None, typer.Option(min=1, metavar="NUMBER", help="One stage in full.")
    ] = None,
    whole: Whole = False,
) -> None:
    """What to open and check, in what order: the stages, and the steps of the next one.

    --all has every stage with cautions, limits and blanks, what each outcome means and when to stop.
    """
    from diagnose.case.loading import load
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.requests import parse_certainty
    from diagnose.output.documents.shop_learning import shop_learning
    from diagnose.output.documents.teardown import teardown_document
    from diagnose.output.markdown.teardown import teardown_blanks, teardown_markdown
    from diagnose.output.text.teardown import teardown_text
    from diagnose.output.text.teardown_brief import stage_text, teardown_brief
    from diagnose.teardown.loose_ends import loose_ends
    from diagnose.teardown.plan import Plan, PlanRequest
    from knowledge.book import the_book

    certainty = parse_certainty(until)
    form = form_of(json=json, markdown=markdown, blanks=blanks)
    printing.check_page(html, case, form)
    book = the_book()
    loaded = load(case, book)
    shop = shop_learning(with_history, book, case, "teardown")
    request = PlanRequest(
        until=certainty,
        minutes=minutes,
        on_stand=on_stand,
        closed_up=closed_up_to_test,
        first_time=first_time,
        crowded=little_room,
        shop_pace=shop.pace,
    )
    plan = Plan(Diagnosis(book, loaded, learned=shop.factors), request)
    document = teardown_document(
        plan,
        loose_ends(plan.answer, certainty),
        str(case),
        changes=None if since is None else _changes(plan, case, since),
        history=shop.note,
    )
    if html is not None:
        from diagnose.output.html.teardown_page import teardown_html

        printing.write_page(html, teardown_html(document), case)
        return
    text = teardown_text if whole else teardown_brief
    printing.sheet(
        document,
        form,
        text=text if stage is None else lambda d: stage_text(d, stage),
        markdown=teardown_markdown,
        blanks=teardown_blanks,
    )


def _changes(plan: Plan, path: Path, since: int) -> Changes:
    """What the entries after number ``since`` changed. Raises UsageError where there are none."""
    from diagnose.case.loading import load
    from diagnose.diagnosis import Diagnosis
    from diagnose.errors import UsageError
    from diagnose.teardown.changes import Changes
    from diagnose.teardown.plan import Plan

    answer = plan.answer
    last = answer.case.last_number
    if since >= last:
        raise UsageError(f"since: the last entry is {last}; nothing came after it")
    before = load(path, answer.book, since)
    earlier = Diagnosis(answer.book, before, learned=answer.learned)
    return Changes(since, Plan(earlier, plan.request), plan)

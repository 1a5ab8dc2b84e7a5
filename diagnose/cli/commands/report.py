"""``report``: a page about the whole job for its owner."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import CaseFile, WithHistory


def report(
    case: CaseFile,
    out: Annotated[
        Path, typer.Option(readable=False, metavar="FILE", help="The .html file to write.")
    ],
    with_history: WithHistory = None,
) -> None:
    """The whole job as one page: evidence, answer, pictures, repair, sign-off, sources.

    One file that needs no network and no script; it may be sent to the engine's owner.
    """
    from diagnose.case.loading import load
    from diagnose.diagnosis import Diagnosis
    from diagnose.output.documents.report import report_document
    from diagnose.output.documents.shop_learning import shop_learning
    from diagnose.output.html.photos import embedded
    from diagnose.output.html.report_page import report_html
    from diagnose.planning.choosing import SURE
    from diagnose.signoff.sheet import Signoff
    from diagnose.teardown.plan import Plan, PlanRequest
    from knowledge.book import the_book

    printing.check_page(out, case, option="out")
    book = the_book()
    loaded = load(case, book)
    shop = shop_learning(with_history, book, case, "report")
    answer = Diagnosis(book, loaded, learned=shop.factors)
    plan = Plan(answer, PlanRequest(until=SURE, shop_pace=shop.pace))
    document = report_document(plan, Signoff(answer, SURE), shop.note.says if shop.note else "")
    pictures = embedded(document.photos, case.parent) if document.photos else {}
    printing.write_page(out, report_html(document, pictures), case)
    left = [p.path for p in document.photos if p.file not in pictures]
    if left:
        printing.remark(f"no picture that can be shown, named only: {', '.join(left)}")

"""``report``: the page about one job for its owner and the file."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.loading import load
from diagnose.cli import paging
from diagnose.cli.with_history import remembered
from diagnose.diagnosis import Diagnosis
from diagnose.planning.choosing import SURE
from diagnose.signoff.sheet import Signoff
from diagnose.teardown.plan import Plan, Wishes
from knowledge.book import the_book


def write_report(path: Path, out: Path, history: Path | None) -> None:
    """Write the page. Raises UsageError, CannotWriteError."""
    paging.ready(out, option="out")
    book = the_book()
    case = load(path, book)
    shop = remembered(history, book, path, "report")
    answer = Diagnosis(book, case, learned=shop.factors)
    from diagnose.output.documents.report import report_document
    from diagnose.output.html.report_page import report_html

    plan = Plan(answer, Wishes(until=SURE, shop_pace=shop.pace))
    document = report_document(plan, Signoff(answer, SURE), shop.line)
    paging.write(out, report_html(document), path)

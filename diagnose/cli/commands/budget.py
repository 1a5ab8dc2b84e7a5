"""``budget``: how much of the missing pressure each measured finding explains."""

from __future__ import annotations

from typing import TYPE_CHECKING

from diagnose.cli import printing
from diagnose.cli.options import AsJson, CaseFile, Whole

if TYPE_CHECKING:
    pass


def budget(case: CaseFile, json: AsJson = False, whole: Whole = False) -> None:
    """How much of the pressure missing at hot idle and at cruise each measured finding explains.

    The shares do not depend on the order of the findings; what nothing explains is shown too.
    """
    from diagnose.case.loading import load
    from diagnose.circuit.budget import budget as budget_of
    from diagnose.diagnosis import Diagnosis
    from diagnose.output.documents.budget import budget_document, with_further_reading
    from diagnose.output.documents.found import disagreement, headline, uncosted
    from diagnose.output.documents.job_end import held_up
    from diagnose.output.text.budget import budget_text
    from diagnose.output.text.budget_brief import budget_brief
    from knowledge.book import the_book

    book = the_book()
    loaded = load(case, book)
    diagnosis = Diagnosis(book, loaded)
    drawn_up = diagnosis.found.budget or budget_of(loaded)
    document = budget_document(
        drawn_up,
        loaded,
        headline(diagnosis),
        disagreement(diagnosis),
        held_up(diagnosis),
        uncosted(diagnosis, drawn_up),
    )
    document = with_further_reading(document, loaded, may_run=diagnosis.may_run)
    printing.document(document, budget_text if whole else budget_brief, json=json)

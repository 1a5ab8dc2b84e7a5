"""The oil circuit in pictures: the readings as curves, and where the pressure went.

The charts are loaded when one is drawn, so that the server starts soon.
"""

from __future__ import annotations

import threading
from collections.abc import Callable

from diagnose.circuit.budget import budget as budget_of
from diagnose.circuit.survey import survey as survey_of
from diagnose.errors import UsageError
from diagnose.output.documents.budget import (
    BudgetDocument,
    budget_document,
    with_further_reading,
)
from diagnose.output.documents.found import headline, uncosted
from diagnose.output.documents.job_end import held_up
from diagnose.output.documents.survey import SurveyDocument, survey_document
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import DRAWN_POLICY, Answer, Asked, NotHereError
from diagnose.serve.screens.shared import kept
from diagnose.serve.site import Site, job_screen
from knowledge.book import the_book

SVG = "image/svg+xml"
LEAST = 0.01  #: share of a condition worth a line
_drawing = threading.Lock()  #: charts are drawn one at a time


def drawn(draw: Callable[[], str]) -> Answer:
    """A chart as a picture of its own."""
    with _drawing:
        return Answer(draw(), SVG, policy=DRAWN_POLICY)


def _survey(known: Known) -> SurveyDocument:
    """The survey of a case. Raises UsageError."""

    def made() -> SurveyDocument:
        found = known.answer.inference.survey or survey_of(known.case, the_book())
        return survey_document(found, known.case, may_run=known.answer.may_run)

    return kept(known, "survey", made)


def _budget(known: Known) -> BudgetDocument:
    """The budget of a case. Raises UsageError."""

    def made() -> BudgetDocument:
        drawn_up = known.answer.found.budget or budget_of(known.case)
        document = budget_document(
            drawn_up,
            known.case,
            headline(known.answer),
            held_up=held_up(known.answer),
            uncosted=uncosted(known.answer, drawn_up),
        )
        may_run = known.answer.may_run
        return with_further_reading(document, known.case, may_run=may_run)

    return kept(known, "budget", made)


def show_survey(site: Site, asked: Asked) -> Answer:
    """What the readings say of the circuit, as shares, curves and figures."""
    from diagnose.output.html.report_figures import curve_table

    with site.job(asked) as known:
        try:
            survey = _survey(known)
        except UsageError as fault:
            return _cannot(asked, known, "Readings as curves", fault)
        return job_screen(
            "survey.html",
            asked,
            known,
            survey=survey,
            least=LEAST,
            tables=[curve_table(p, survey.scale) for p in survey.plots],
        )


def draw_survey(site: Site, asked: Asked) -> Answer:
    """The curves of the survey."""
    from diagnose.output.html.charts import ON_A_PHONE, curves

    with site.job(asked) as known:
        survey = _survey(known)
    return drawn(lambda: curves(survey.plots, "survey", ON_A_PHONE))


def show_budget(site: Site, asked: Asked) -> Answer:
    """How much of the missing pressure each find costs."""
    with site.job(asked) as known:
        try:
            budget = _budget(known)
        except UsageError as fault:
            return _cannot(asked, known, "Where the pressure went", fault)
        return job_screen("budget.html", asked, known, budget=budget)


def draw_budget(site: Site, asked: Asked) -> Answer:
    """One account of the budget, from the sound engine down to the gauge.

    Raises NotHereError where the budget has no such account.
    """
    from diagnose.output.html.charts import ON_A_PHONE, waterfall
    from diagnose.output.html.report_figures import bars_of

    with site.job(asked) as known:
        budget = _budget(known)
    number = asked.parts["account"]
    if not (number.isdecimal() and len(number) < 4 and int(number) < len(budget.accounts)):
        raise NotHereError("There is no such picture.")
    account, scale = budget.accounts[int(number)], budget.scale
    bars = list(bars_of(account, scale))
    return drawn(lambda: waterfall(bars, scale.unit, f"budget-{number}", ON_A_PHONE))


def _cannot(asked: Asked, known: Known, title: str, fault: UsageError) -> Answer:
    """Why there is nothing to show yet."""
    return job_screen("nothing.html", asked, known, title=title, says=str(fault))

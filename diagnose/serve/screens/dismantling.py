"""Taking apart: the plan as a list of stages, and one stage at a time."""

from __future__ import annotations

from diagnose.output.documents.entries import entry_lines
from diagnose.output.documents.teardown import TeardownDocument, teardown_document
from diagnose.output.html.teardown_page import teardown_html
from diagnose.planning.choosing import SURE
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import DRAWN_POLICY, Answer, Asked, NotHereError, address
from diagnose.serve.screens.shared import first_saved, kept
from diagnose.serve.site import Site, job_screen
from diagnose.teardown.loose_ends import loose_ends
from diagnose.teardown.plan import Plan, PlanRequest
from knowledge.book import the_book


def plan_of(known: Known) -> Plan:
    """The plan of a case."""
    return kept(known, "plan", lambda: Plan(known.answer, PlanRequest(until=SURE)))


def document_of(known: Known) -> TeardownDocument:
    """The plan of a case as a document."""

    def made() -> TeardownDocument:
        return teardown_document(plan_of(known), loose_ends(known.answer, SURE), known.path.name)

    return kept(known, "teardown", made)


def show(site: Site, asked: Asked) -> Answer:
    """The stages, what each opens, and when to stop."""
    since = first_saved(asked)
    with site.job(asked) as known:
        new = () if since is None else entry_lines(known.case, the_book(), since)
        return job_screen("teardown.html", asked, known, plan=document_of(known), new=new)


def show_stage(site: Site, asked: Asked) -> Answer:
    """One stage: record first, open, then each check. Raises NotHereError for another number."""
    number = asked.parts["stage"]
    with site.job(asked) as known:
        plan = document_of(known)
        stage = next((s for s in plan.stages if str(s.number) == number), None)
        if stage is None:
            raise NotHereError("The plan has no such stage any more.")
        return job_screen(
            "stage.html",
            asked,
            known,
            plan=plan,
            stage=stage,
            back=(address("job", asked.job, "teardown"), "All stages"),
        )


def show_sheet(site: Site, asked: Asked) -> Answer:
    """The plan as a sheet to print."""
    with site.job(asked) as known:
        page = kept(known, "teardown sheet", lambda: teardown_html(document_of(known)))
        return Answer(page, policy=DRAWN_POLICY)

"""A job on one screen: may it run, what was found, where it began, the check to do next; and why."""

from __future__ import annotations

from dataclasses import replace
from functools import partial

from diagnose.output.documents.check_sheet import CheckSheet, check_sheet
from diagnose.output.documents.entries import entry_lines, is_unknown
from diagnose.output.documents.photos import photo_entries
from diagnose.output.documents.review import ReviewDocument, review_document
from diagnose.serve import forms
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import Answer, Asked, NotHereError, go
from diagnose.serve.saving import save as save_entries
from diagnose.serve.screens.shared import first_saved, kept, saved_or_again, typed_in
from diagnose.serve.site import Refusal, Site, job_screen
from knowledge.book import the_book

CAUSES, REASONS = 3, 5  #: shown on the job's screen, and with their reasons
LEAST = 0.02  #: probability from which a cause after the first is worth a line
NOTHING = "Nothing was answered. Press Yes or No, or put in a figure."


def review_of(known: Known) -> ReviewDocument:
    """The review of a case."""
    return kept(known, "review", lambda: review_document(known.answer, known.path.name))


def show(site: Site, asked: Asked) -> Answer:
    """The job so far, and the check to do next."""
    with site.job(asked) as known:
        return _job(known, asked)


def why(site: Site, asked: Asked) -> Answer:
    """What speaks for and against each of the first causes, and what would change it."""
    with site.job(asked) as known:
        document = review_of(known)
        shown = [c for c in document.causes[:REASONS] if c.pro or c.con]
        return job_screen("why.html", asked, known, review=document, shown=shown)


def show_check(site: Site, asked: Asked) -> Answer:
    """One check: what to open and to record first, its steps, and what to answer."""
    with site.job(asked) as known:
        return _check(known, asked)


def save_check(site: Site, asked: Asked) -> Answer:
    """Save what a check showed."""
    path = site.folder.path(asked.job)
    with site.job(asked) as known:
        sheet = sheet_of(known, asked.parts["check"])
        names = {f.id: f.asks for f in sheet.findings} | {v.id: v.says for v in sheet.values}
        if asked.text("none"):
            asked = _with_none(asked, sheet)
        first = "; ".join(sheet.keep_first)
        note = f"recorded first: {first}" if first and asked.text("kept") else ""
        given = forms.as_input(asked, names, note)
        if given is None:
            return _check(known, asked, Refusal([NOTHING]))
        saving = partial(save_entries, path, [given])
        saved = saved_or_again(site, asked, saving, partial(_check, known, asked))
        if isinstance(saved, Answer):
            return saved
    to = ("teardown",) if asked.text("stage") else ()
    return go("job", asked.job, *to, saved=str(saved.first_number))


def _with_none(asked: Asked, sheet: CheckSheet) -> Asked:
    """The form as if "no" had been pressed for every finding without an answer, now or before."""
    answered = {
        f"f:{f.id}": (asked.text(f"f:{f.id}") or "no",)
        for f in sheet.findings
        if asked.text(f"f:{f.id}") or not f.said
    }
    return replace(asked, form={**asked.form, **answered})


def sheet_of(known: Known, check: str) -> CheckSheet:
    """The sheet of a check. Raises NotHereError where the book has none of that id."""
    inspection = the_book().inspections.get(check)
    if inspection is None:
        raise NotHereError("There is no such check.")
    first = next((c.findings for c in review_of(known).next if c.inspection == check), ())
    return check_sheet(known.answer, inspection, first)


def _job(known: Known, asked: Asked) -> Answer:
    document = review_of(known)
    since = first_saved(asked)
    following = document.next[0] if document.next and not document.closed else None
    return job_screen(
        "job.html",
        asked,
        known,
        review=document,
        causes=[
            c for i, c in enumerate(document.causes[:CAUSES]) if not i or c.probability >= LEAST
        ],
        new=() if since is None else entry_lines(known.case, the_book(), since),
        check=following,
        sheet=sheet_of(known, following.inspection) if following else None,
        others=[c for c in document.next[1:] if following and c.inspection != following.inspection],
        entries=sum(not is_unknown(e) for e in known.case.standing.values()),
        typed={},
        back=("/", "Jobs"),
    )


def _check(known: Known, asked: Asked, refused: Refusal | None = None) -> Answer:
    return job_screen(
        "check.html",
        asked,
        known,
        refused=refused,
        sheet=sheet_of(known, asked.parts["check"]),
        typed=typed_in(asked),
        stage=asked.query.get("stage") or asked.text("stage"),
        photos=[p for p in photo_entries(known.path) if p.step == asked.parts["check"]],
    )

"""The end of a job: close it, and its report to print."""

from __future__ import annotations

from dataclasses import replace
from functools import partial

from diagnose.entry.cause_named import confirmed_causes
from diagnose.entry.closing import ClosingInput
from diagnose.output.documents.entries import entry_lines
from diagnose.output.documents.owners_page import telling_steps
from diagnose.output.documents.photos import for_the_owner, photo_entries
from diagnose.output.documents.report import report_document
from diagnose.planning.choosing import SURE
from diagnose.serve.diagnoses import Known, Version
from diagnose.serve.exchange import DRAWN_POLICY, Answer, Asked, address, go
from diagnose.serve.saving import end
from diagnose.serve.screens.dismantling import document_of, plan_of
from diagnose.serve.screens.fitting import sheet_of
from diagnose.serve.screens.shared import kept, saved_or_again, typed_in
from diagnose.serve.site import Refusal, Site, job_screen
from diagnose.signoff.closing import obstacles
from diagnose.signoff.nothing_wrong import nothing_wrong
from knowledge.book import the_book

MOST_CAUSES = 8  #: offered; any other of the book can be searched for
NOT_IN_THE_BOOK = "not_in_the_book"


def show_close(site: Site, asked: Asked) -> Answer:
    """Ask what it was, how that was confirmed and what was done; say what is still open."""
    with site.job(asked) as known:
        return _close(known, asked)


def save_close(site: Site, asked: Asked) -> Answer:
    """Write the end of the job."""
    path = site.folder.path(asked.job)
    with site.job(asked) as known:
        seen = Version.parse(asked.text("version"))
        if known.version.digest != seen.digest and not asked.text("insist"):
            lines = entry_lines(known.case, the_book(), seen.last + 1)
            changed = [e.says for e in lines] or ["The file was changed."]
            return _close(known, asked, Refusal(meanwhile=changed, status=409))
        given = ClosingInput(
            causes=asked.every("cause"),
            how=asked.text("how"),
            remedy=asked.text("remedy"),
            minutes=asked.text("minutes"),
            reason=asked.text("reason"),
            by=asked.text("by")[:60],
        )
        if not given.causes:
            fault = "Say what it was: tick a cause."
            return _close(known, asked, Refusal([fault]))
        if not given.how:
            fault = "Say how the cause was confirmed: what was seen or measured."
            return _close(known, asked, Refusal([fault]))
        closing = partial(end, path, given)
        saved = saved_or_again(site, asked, closing, partial(_close, known, asked))
        if isinstance(saved, Answer):
            return saved
    return go("job", asked.job)


def _close(known: Known, asked: Asked, refused: Refusal | None = None) -> Answer:
    ranking = [r.cause for r in known.answer.ranking[:MOST_CAUSES]]
    unknown = the_book().causes.get(NOT_IN_THE_BOOK)
    shares = {r.cause.id: r.probability for r in known.answer.ranking}
    against: tuple[str, ...] = ()
    no_fault = nothing_wrong(known.answer)
    if no_fault:
        meant = confirmed_causes(["nothing wrong"], known.answer)
        ranking = [*(the_book().causes[c] for c in meant), *ranking]
    else:
        against = kept(known, "obstacles", lambda: obstacles(known.answer, SURE))
    return job_screen(
        "close.html",
        asked,
        known,
        refused=refused,
        causes=list(dict.fromkeys([*ranking, *([unknown] if unknown else [])])),
        ticked=asked.every("cause"),
        shares=shares,
        no_fault=no_fault,
        against=against,
        ends=document_of(known).loose_ends,
        likeliest=known.answer.ranking[0].cause,
        left=len(sheet_of(known, whole=False).blocking),
        closed=known.case.closed is not None,
        typed=typed_in(asked),
    )


def show_report(site: Site, asked: Asked) -> Answer:
    """The report of the job, with its photos, to print."""
    from diagnose.output.html.report_page import report_html

    path = site.folder.path(asked.job)
    with site.job(asked) as known:
        document = kept(
            known,
            "report",
            lambda: report_document(plan_of(known), sheet_of(known, whole=False)),
        )
        photos = photo_entries(path)
        owner = replace(document.owner, photos=for_the_owner(photos, telling_steps(known.answer)))
        pictures = {p.file: address("job", asked.job, "photo", p.file) for p in photos}
        page = report_html(replace(document, photos=photos, owner=owner), pictures)
        return Answer(page, policy=DRAWN_POLICY)

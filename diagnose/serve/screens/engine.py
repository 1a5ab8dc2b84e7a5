"""The kind of engine of a job: what it is now, and the choice of another."""

from __future__ import annotations

from diagnose.entry.engine_said import write_engine
from diagnose.errors import UsageError
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import Answer, Asked, go
from diagnose.serve.site import Refusal, Site, job_screen, without_folder
from knowledge.book import the_book
from knowledge.engines.layouts import UNKNOWN
from knowledge.questions.engines import ENGINE_KINDS

NOT_CHOSEN = "Choose one of the kinds."


def show(site: Site, asked: Asked) -> Answer:
    """Every kind of engine with its layouts, that of the job ticked."""
    with site.job(asked) as known:
        return _engine(known, asked)


def save(site: Site, asked: Asked) -> Answer:
    """Write the chosen kind in place of the one the job has."""
    path = site.folder.path(asked.job)
    with site.job(asked) as known:
        layout = the_book().layouts.get(asked.text("layout"))
        if layout is None:
            return _engine(known, asked, Refusal([NOT_CHOSEN]))
        try:
            write_engine(path, the_book(), layout.id, by=asked.text("by"))
        except UsageError as fault:
            faults = without_folder(fault.lines, site.folder.root)
            return _engine(known, asked, Refusal(faults))
        site.interviews.forget(path)
    return go("job", asked.job, "note", engine=layout.id)


def _engine(known: Known, asked: Asked, refused: Refusal | None = None) -> Answer:
    now = known.case.layout
    listed = {id_ for kind in ENGINE_KINDS for id_, _ in kind.layouts}
    book = the_book().layouts
    others = [(x.id, x.says) for x in book.values() if x.id not in listed and x is not UNKNOWN]
    return job_screen(
        "engine.html",
        asked,
        known,
        refused=refused,
        kinds=ENGINE_KINDS,
        others=others,
        now=now,
        unknown=UNKNOWN,
    )

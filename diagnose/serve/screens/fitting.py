"""Putting together: the tasks by phase, each with its limits, its result and the verdict."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import partial

from diagnose.entry.details import Details
from diagnose.entry.recording import Input
from diagnose.entry.sheets import FilledBlank
from diagnose.output.documents.check_sheet import offered_unit, units_of
from diagnose.output.documents.entries import entry_lines
from diagnose.output.documents.signoff import SignoffDocument, SignoffPhase, signoff_document
from diagnose.output.documents.signoff_items import SignoffItem
from diagnose.output.html.signoff_page import short_signoff_html, signoff_html
from diagnose.planning.choosing import SURE
from diagnose.serve import forms
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import DRAWN_POLICY, Answer, Asked, NotHereError, address, go
from diagnose.serve.saving import save as save_entries
from diagnose.serve.screens.shared import first_saved, kept, saved_or_again, typed_in
from diagnose.serve.site import Refusal, Site, job_screen
from diagnose.signoff.parts import parts_list
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book
from knowledge.units import DIMENSIONS

SKIPPED = "skipped"
RESULTS = (("done", "Done"), ("failed", "Failed"), (SKIPPED, "Left out"))
NOTHING_ASKED = "No part is in question now."
NOTHING = "Nothing was answered. Press Done, Failed or Left out, or put in a figure."


@dataclass(frozen=True, slots=True)
class Blank:
    """A task with the units its value may have."""

    item: SignoffItem
    units: tuple[str, ...] = ()
    unit: str = ""  #: the one to offer first


def sheet_of(known: Known, whole: bool) -> Signoff:
    """The sign-off of a case; ``whole``: the whole engine is being built."""
    name = f"signoff sheet {whole}"
    return kept(known, name, lambda: Signoff(known.answer, SURE, whole=whole))


def document_of(known: Known, whole: bool) -> SignoffDocument:
    """The sign-off of a case as a document."""

    def made() -> SignoffDocument:
        sheet = sheet_of(known, whole)
        feature = known.case.known_features.get
        needed = parts_list(sheet.causes, sheet.places, feature, the_book())
        return signoff_document(sheet, needed, known.path.name)

    return kept(known, f"signoff {whole}", made)


def _whole(asked: Asked) -> bool:
    return (asked.query.get("whole") or asked.text("whole")) == "1"


def show(site: Site, asked: Asked) -> Answer:
    """The phases of the work, and how far each is; the parts needed."""
    with site.job(asked) as known:
        return _overview(known, asked)


def save_parts(site: Site, asked: Asked) -> Answer:
    """Save which of the parts in question the engine has: those ticked, and no other."""
    path = site.folder.path(asked.job)
    with site.job(asked) as known:
        parts = document_of(known, _whole(asked)).asks
        has = set(asked.every("has"))
        blanks = [FilledBlank(p.id, "yes" if p.id in has else "no", "", p.says) for p in parts]
        if not blanks:
            return _overview(known, asked, Refusal([NOTHING_ASKED]))
        saving = partial(save_entries, path, [Input(blanks=blanks)])
        saved = saved_or_again(site, asked, saving, partial(_overview, known, asked))
        if isinstance(saved, Answer):
            return saved
    return go("job", asked.job, "signoff", saved=str(saved.first_number))


def _overview(known: Known, asked: Asked, refused: Refusal | None = None) -> Answer:
    document, since = document_of(known, _whole(asked)), first_saved(asked)
    return job_screen(
        "signoff.html",
        asked,
        known,
        refused=refused,
        sheet=document,
        phases=tuple(document.phases()),
        whole=_whole(asked),
        new=() if since is None else entry_lines(known.case, the_book(), since),
    )


def show_phase(site: Site, asked: Asked) -> Answer:
    """The tasks of one phase."""
    with site.job(asked) as known:
        return _phase(known, asked)


def save_phase(site: Site, asked: Asked) -> Answer:
    """Save the results of a phase's tasks."""
    path, number = site.folder.path(asked.job), asked.parts["phase"]
    with site.job(asked) as known:
        every = _given(asked, _phase_asked(known, asked))
        if not every:
            return _phase(known, asked, Refusal([NOTHING]))
        given = [one for one in every if not _lacks_reason(one)]
        unsaid = [one.blanks[0] for one in every if _lacks_reason(one)]
        if not given:
            return _phase(known, asked, Refusal([_unsaid(unsaid)]), unsaid=unsaid)
        saving = partial(save_entries, path, given)
        saved = saved_or_again(site, asked, saving, partial(_phase, known, asked))
        if isinstance(saved, Answer):
            return saved
    if unsaid:  # the rest is saved: only what lacks its reason stays in the form
        left = {f"t:{blank.id}": ("skipped",) for blank in unsaid}
        stays = {key: asked.form[key] for key in ("by", "whole", "version") if key in asked.form}
        again = replace(asked, form={**stays, **left})
        still = f"The rest is saved. {_unsaid(unsaid)}"
        with site.job(asked) as now:
            return _phase(now, again, Refusal([still]), unsaid=unsaid)
    whole = "1" if _whole(asked) else ""
    return go("job", asked.job, "signoff", number, saved=str(saved.first_number), whole=whole)


def _lacks_reason(one: Input) -> bool:
    """Whether a task is left out and nobody said why."""
    return one.blanks[0].value == SKIPPED and not one.details.note.strip()


def _unsaid(blanks: Sequence[FilledBlank]) -> str:
    """Which tasks lack the reason why they are left out."""
    named = "; ".join(blank.place for blank in blanks)
    return f"Left out: say why in the note, it is open below: {named}"


def _given(asked: Asked, phase: SignoffPhase) -> list[Input]:
    """Each task that was answered, with its own note."""
    given = []
    for item in phase.items:
        result = asked.text(f"t:{item.task}")
        typed = asked.text(f"m:{item.task}")
        value = forms.with_unit(typed, asked.text(f"u:{item.task}")) if typed else result
        if value not in ("", *(r for r, _ in RESULTS)) or result in dict(RESULTS):
            note = asked.text(f"n:{item.task}")[: forms.MOST_TEXT]
            blank = FilledBlank(item.task, value, asked.text(f"w:{item.task}"), item.says)
            given.append(
                Input(blanks=[blank], details=Details(by=asked.text("by")[:60], note=note))
            )
    return given


def _phase_asked(known: Known, asked: Asked) -> SignoffPhase:
    phases = document_of(known, _whole(asked)).phases()
    phase = next((p for p in phases if str(p.number) == asked.parts["phase"]), None)
    if phase is None:
        raise NotHereError("There is nothing to do in that phase now.")
    return phase


def _phase(
    known: Known,
    asked: Asked,
    refused: Refusal | None = None,
    *,
    unsaid: Sequence[FilledBlank] = (),
) -> Answer:
    phase, since = _phase_asked(known, asked), first_saved(asked)
    whole = "1" if _whole(asked) else ""
    return job_screen(
        "phase.html",
        asked,
        known,
        refused=refused,
        phase=phase,
        blanks=[_blank(i, known) for i in phase.items],
        results=RESULTS,
        new=() if since is None else entry_lines(known.case, the_book(), since),
        typed=typed_in(asked),
        unsaid={blank.id for blank in unsaid},
        whole=whole,
        back=(address("job", asked.job, "signoff", whole=whole), "All phases"),
    )


def _blank(item: SignoffItem, known: Known) -> Blank:
    """A task with its units, those of the job first."""
    if not item.measured:
        return Blank(item)
    dimension = DIMENSIONS[the_book().tasks[item.task].dimension]
    units, unit = units_of(dimension.id), offered_unit(dimension, None, known.case)
    return Blank(item, units if unit in units else (unit, *units), unit)


def show_sheet(site: Site, asked: Asked) -> Answer:
    """The sign-off as a sheet to print."""
    with site.job(asked) as known:
        return Answer(signoff_html(document_of(known, _whole(asked))), policy=DRAWN_POLICY)


def show_short_sheet(site: Site, asked: Asked) -> Answer:
    """What to order and what is still to do, on a page or two to print."""
    with site.job(asked) as known:
        return Answer(short_signoff_html(document_of(known, _whole(asked))), policy=DRAWN_POLICY)

"""What a person found, in words; gauge readings by circumstance; every entry, and taking one back."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import partial

from diagnose.case.case import Case
from diagnose.case.reports import AT_ONCE
from diagnose.entry.recording import Input
from diagnose.entry.spoken import Choice
from diagnose.output.documents.entries import EntryLine, entry_lines
from diagnose.output.documents.found import headline
from diagnose.output.documents.survey import NextReading, survey_document
from diagnose.output.scale import scale_of
from diagnose.serve import forms
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import Answer, Asked, go
from diagnose.serve.saving import save as save_entries
from diagnose.serve.screens.shared import (
    PRESSURES,
    first_saved,
    kept,
    saved_or_again,
    typed_in,
)
from diagnose.serve.site import Refusal, Site, job_screen
from knowledge.book import the_book
from knowledge.engines.layouts import UNKNOWN
from knowledge.reports.words import Done

#: how long before the trouble work was done: as it is typed, and as it is shown
AGO = (
    (AT_ONCE[0], "just before it began"),
    *((f"{time} before", f"about {time} before") for time in ("1 week", "1 month", "6 months")),
    *((f"{time} before", f"about {time} before") for time in ("1 year", "3 years")),
)
NOTHING = "Nothing was put in."


@dataclass(frozen=True, slots=True)
class When:
    """A circumstance of a gauge reading: its field, its label, and how it is written."""

    id: str
    says: str
    written: str
    like: str


WHEN = (
    When("hot_idle", "Hot, idling", "at hot idle", "8"),
    When("hot_2000", "Hot, about 2000 rpm", "2000 rpm hot", "35"),
    When("hot_3000", "Hot, about 3000 rpm", "3000 rpm hot", "45"),
    When("cold_start", "Cold, just started", "fast idle cold", "60"),
)
RECENT = 6  #: entries that are shown without a tap
LONGEST_UNREAD = 400  #: characters of what was not understood that are shown
OWN = "own"  #: the field for a speed and temperature of one's own


def show_note(site: Site, asked: Asked) -> Answer:
    """Ask for a find or a value in words, and list what was entered."""
    with site.job(asked) as known:
        return _note(known, asked)


def save_note(site: Site, asked: Asked) -> Answer:
    """Save what the words say; where they may mean several things, offer them as a choice."""
    words, picked = asked.text("words"), asked.text("meant")
    with site.job(asked) as known:
        if asked.text("withdraw"):
            return _withdraw(site, known, asked)
        earlier = _work_before(asked)
        if not words and not earlier:
            return _note(known, asked, Refusal([NOTHING]))
        unclear: list[Choice] = []

        def choose(choice: Choice) -> int | None:
            ids = [c.id for c in choice.candidates]
            if picked in ids:
                return ids.index(picked)
            unclear.append(choice)
            return None

        given = Input(
            facts=(words,) if words else (),
            earlier=(earlier,) if earlier else (),
            details=replace(forms.details(asked), where=asked.text("where")[:60]),
            choose=choose,
        )
        return _saved(site, known, asked, given, unclear)


def _saved(site: Site, known: Known, asked: Asked, given: Input, unclear: list[Choice]) -> Answer:
    def again(refused: Refusal) -> Answer:
        choices = unclear[0].candidates if refused.faults and unclear else ()
        refused = replace(refused, faults=()) if choices else refused
        return _note(known, asked, refused, choices)

    saved = saved_or_again(site, asked, partial(save_entries, known.path, [given]), again)
    if isinstance(saved, Answer):
        return saved
    unread = "; ".join(saved.not_read)[:LONGEST_UNREAD]
    engine = "" if saved.engine_was is None else saved.after.layout.id
    return go(
        *("job", asked.job, "note"), saved=str(saved.first_number), unread=unread, engine=engine
    )


def _withdraw(site: Site, known: Known, asked: Asked) -> Answer:
    """Take an entry back; it stays in the file and no longer counts."""
    number = asked.text("withdraw")
    if not (number.isdecimal() and int(number) in known.case.standing):
        return _note(known, asked, Refusal(["That entry no longer stands."], status=409))
    given = Input(withdraw=(int(number),), details=forms.details(asked))
    return _saved(site, known, asked, given, [])


def _note(
    known: Known,
    asked: Asked,
    refused: Refusal | None = None,
    choices: tuple[object, ...] = (),
) -> Answer:
    lines = entry_lines(known.case, the_book())
    since = first_saved(asked)
    new = [e for e in lines if since is not None and e.number >= since]
    layout = known.case.layout
    return job_screen(
        "note.html",
        asked,
        known,
        refused=refused,
        new=new,
        now=headline(known.answer) if new else "",
        unread=_unread(asked.query.get("unread", ""), new),
        engine="" if layout is UNKNOWN else layout.says,
        engine_is_new=asked.query.get("engine", "") == layout.id,
        lines=[e for e in lines if e.known],
        unknown=[e for e in lines if not e.known],
        recent=RECENT,
        choices=choices,
        areas=[(area.id, area.says) for area in the_book().areas.values()],
        done=[(each.value, each.value) for each in Done],
        ago=AGO,
        typed=typed_in(asked),
    )


def _work_before(asked: Asked) -> str:
    """The work before the trouble that was chosen, as one types it; empty where none was."""
    area = asked.text("area")
    if not area:
        return ""
    return " ".join(filter(None, (area, asked.text("done"), asked.text("ago"))))


def _unread(pieces: str, new: list[EntryLine]) -> list[str]:
    """What nothing was made of, as far as it stands in the note of a new entry."""
    notes = " ".join(entry.note for entry in new).lower()
    return [p for p in pieces.split("; ") if p and p.lower() in notes]


def show_readings(site: Site, asked: Asked) -> Answer:
    """Ask for gauge readings by circumstance, and list those there are."""
    with site.job(asked) as known:
        return _readings(known, asked)


def save_readings(site: Site, asked: Asked) -> Answer:
    """Save the readings put in."""
    path = site.folder.path(asked.job)
    with site.job(asked) as known:
        texts = list(typed_readings(asked))
        if not texts:
            return _readings(known, asked, Refusal([NOTHING]))
        given = Input(readings=texts, details=forms.details(asked))
        saving = partial(save_entries, path, [given])
        saved = saved_or_again(site, asked, saving, partial(_readings, known, asked))
        if isinstance(saved, Answer):
            return saved
    to = "start" if asked.text("back") == "start" else "readings"
    return go("job", asked.job, to, saved=str(saved.first_number))


def typed_readings(asked: Asked) -> list[str]:
    """Each field that is filled in, as one would type the reading."""
    unit = asked.text("unit")
    unit = unit if unit in PRESSURES else PRESSURES[0]
    more = [" direct"] if asked.text("gauge") == "direct" else [""]
    more += [" start"] if asked.text("at") == "start" else [""]
    texts = []
    for when in WHEN:
        if figure := asked.text(f"at:{when.id}"):
            texts.append(f"{forms.with_unit(figure, unit)} {when.written}{''.join(more)}")
    if figure := asked.text(f"at:{OWN}"):
        rpm = forms.with_unit(asked.text("rpm"), "rpm") if asked.text("rpm") else ""
        heat_unit = "F" if asked.text("heat-unit") == "F" else "C"
        heat = forms.with_unit(asked.text("heat"), heat_unit) if asked.text("heat") else ""
        parts = (rpm, heat, forms.with_unit(figure, unit))
        texts.append(" ".join(filter(None, parts)) + "".join(more))
    return texts


def _readings(known: Known, asked: Asked, refused: Refusal | None = None) -> Answer:
    lines = [e for e in entry_lines(known.case, the_book()) if e.kind in ("reading", "baseline")]
    since = first_saved(asked)
    return job_screen(
        "readings.html",
        asked,
        known,
        refused=refused,
        when=WHEN,
        units=PRESSURES,
        unit=offered(known.case),
        lines=lines,
        new=[e for e in lines if since is not None and e.number >= since],
        typed=typed_in(asked),
        further=_further(known),
    )


def offered(case: Case) -> str:
    """The unit of pressure to offer first: that of the job."""
    unit = scale_of(case).unit.lower()
    return next((u for u in PRESSURES if u.lower() == unit), PRESSURES[0])


def _further(known: Known) -> NextReading | None:
    """The reading worth taking next; None where the circuit is not in figures, or none is."""

    def made() -> NextReading | None:
        found = known.answer.inference.survey
        if found is None or not known.answer.may_run:
            return None
        return survey_document(found, known.case, may_run=True).read_next

    return kept(known, "further", made)

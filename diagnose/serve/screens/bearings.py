"""The bearings: what was measured of each, what is wrong, what to order; one more reading."""

from __future__ import annotations

from diagnose.bearings.table import bearings_of
from diagnose.entry.bearings import BearingsInput, parse_words, record_bearings
from diagnose.errors import UsageError
from diagnose.output.documents.bearing_words import units_for
from diagnose.output.documents.bearings import BearingsDocument, bearings_document
from diagnose.serve import forms
from diagnose.serve.diagnoses import Known
from diagnose.serve.exchange import Answer, Asked, go
from diagnose.serve.screens.bearing_sizes import UNITS, like
from diagnose.serve.screens.shared import kept, typed_in
from diagnose.serve.site import Refusal, Site, job_screen
from knowledge.book import the_book

KINDS = (("main", "Main"), ("rod", "Rod"))
MEASURED = (
    ("strip", "Clearance by plastic strip"),
    ("journal", "Journal, across it"),
    ("inside", "Bore with its shells in"),
    ("bore", "Bore without shells"),
    ("shell", "Thickness of a shell"),
)
MOST_NUMBER = 40


def show(site: Site, asked: Asked) -> Answer:
    """The table of the bearings, and a form for one more reading."""
    with site.job(asked) as known:
        return _bearings(known, asked)


def save(site: Site, asked: Asked) -> Answer:
    """Save one reading of one bearing."""
    path = site.folder.path(asked.job)
    with site.job(asked) as known:
        kind, measured = asked.text("kind"), asked.text("measured")
        number, unit = asked.text("number"), asked.text("unit")
        figures = asked.text("figures").replace(",", ".")
        whole = number.isdecimal() and 0 < int(number[:4]) <= MOST_NUMBER
        if kind not in dict(KINDS) or measured not in dict(MEASURED) or not (whole and figures):
            fault = "Say which bearing, by kind and number, what was measured, and the figure."
            return _bearings(known, asked, Refusal([fault]))
        text = f"{kind} {int(number)} {measured} {figures}"
        if not any(c.isalpha() for c in figures):
            text += f" {unit if unit in UNITS else UNITS[0]}"
        try:
            given = parse_words([text])
            fitted = bool(asked.text("fitted"))
            record_bearings(path, the_book(), BearingsInput(given, fitted, forms.details(asked)))
        except UsageError as fault:
            return _bearings(known, asked, Refusal(fault.lines))
    return go("job", asked.job, "bearings")


def _bearings(known: Known, asked: Asked, refused: Refusal | None = None) -> Answer:
    found = kept(known, "bearings found", lambda: bearings_of(known.case))

    def made() -> BearingsDocument:
        return bearings_document(found, known.path.name)

    offered, _ = units_for(None, found)
    unit = offered if offered in UNITS else UNITS[0]
    return job_screen(
        "bearings.html",
        asked,
        known,
        refused=refused,
        sheet=kept(known, "bearings", made),
        kinds=KINDS,
        measured=MEASURED,
        units=UNITS,
        unit=unit,
        like=f"{like('strip', unit)}, or {like('journal', unit)}",
        typed=typed_in(asked) or {k: asked.query.get(k, "")[:9] for k in ("kind", "number")},
    )

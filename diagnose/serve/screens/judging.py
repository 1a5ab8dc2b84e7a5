"""What a value that is being typed comes to, before it is saved."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.case.case import Case
from diagnose.case.writing import NewEntry, tried
from diagnose.entry.recording import Input, new_entries
from diagnose.errors import NotSavedError, UsageError
from diagnose.output.documents.entries import entry_lines
from diagnose.serve import forms
from diagnose.serve.exchange import Answer, Asked
from diagnose.serve.screens.noting import typed_readings
from diagnose.serve.site import Site, screen
from knowledge.book import the_book


def show(site: Site, asked: Asked) -> Answer:
    """The verdict on the values and readings of the query, as a part of a page."""
    path, book = site.folder.path(asked.job), the_book()
    given = _given(asked)
    if given is None:
        return screen("verdict.html", asked, lines=(), says="")
    inputs = given

    def made(case: Case) -> Sequence[NewEntry]:
        return new_entries(inputs, case, book)

    try:
        saved = tried(path, book, made)
    except NotSavedError as fault:
        return screen("verdict.html", asked, lines=(), says=fault.faults[0])
    except UsageError as fault:
        return screen("verdict.html", asked, lines=(), says=fault.lines[0])
    lines = entry_lines(saved.after, book, saved.first_number)
    return screen("verdict.html", asked, lines=lines, says="")


def _given(asked: Asked) -> Input | None:
    """What the fields of the query say; None where they are empty."""
    as_form = Asked(form={name: (value[:200],) for name, value in asked.query.items()})
    readings = list(typed_readings(as_form))
    if readings:
        return Input(readings=readings)
    book = the_book()
    names = {m.id: m.says for m in book.measures.values()}
    names |= {t.id: t.says for t in book.tasks.values()}
    return forms.as_input(as_form, names)

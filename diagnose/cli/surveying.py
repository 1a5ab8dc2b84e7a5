"""``survey``: what the gauge readings say of the oil circuit."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.loading import from_text, load, read_text
from diagnose.case.writing import table_text
from diagnose.circuit.survey import survey
from diagnose.cli import paging, printing
from diagnose.cli.entries import Details, reading
from diagnose.diagnosis import Diagnosis
from diagnose.errors import BadCaseError, UsageError
from diagnose.output.as_json import as_json
from diagnose.output.documents.survey import survey_document
from diagnose.output.text.survey import survey_text
from knowledge.book import Book, the_book


def show_survey(path: Path, readings: Sequence[str], picture: Path | None, json: bool) -> None:
    """Print the survey of one case, with the readings given here as if they stood in it."""
    book = the_book()
    case = supposed(path, readings, book) if readings else load(path, book)
    if picture is not None:
        paging.picture_ready(picture, "svg")
    document = survey_document(survey(case, book), case, may_run=Diagnosis(book, case).may_run)
    if picture is not None:
        from diagnose.output.html.charts import survey_picture

        paging.draw(picture, survey_picture(document), path)
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(survey_text(document))


def supposed(path: Path, readings: Sequence[str], book: Book) -> Case:
    """The case with more readings, the file left as it is. Raises UsageError."""
    old = read_text(path)
    number = from_text(old, path, book).last_number + 1
    more = ""
    for i, said in enumerate(readings):
        kind, fields = reading(said, Details())
        more += "\n\n" + table_text(f"[[{kind}]]", {"no": number + i, **fields})
    try:
        return from_text(old + more, path, book)
    except BadCaseError as bad:
        raise UsageError("\n".join(f.partition(": ")[2] for f in bad.faults)) from None

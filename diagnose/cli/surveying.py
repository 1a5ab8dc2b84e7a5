"""``survey``: what the gauge readings say of the oil circuit."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from diagnose.circuit.survey import survey
from diagnose.cli import paging, printing
from diagnose.diagnosis import Diagnosis
from diagnose.entry.recording import load_with_readings
from diagnose.output.as_json import as_json
from diagnose.output.documents.survey import survey_document
from diagnose.output.text.survey import survey_text
from knowledge.book import the_book


def show_survey(path: Path, readings: Sequence[str], picture: Path | None, json: bool) -> None:
    """Print the survey of one case, with the readings given here as if they stood in it."""
    book = the_book()
    case = load_with_readings(path, book, readings)
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

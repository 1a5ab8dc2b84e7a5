"""``survey``: which fault of the oil circuit explains the gauge readings."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson, CaseFile, Whole

if TYPE_CHECKING:
    pass


def survey(
    case: CaseFile,
    reading: Annotated[
        list[str] | None,
        typer.Option(
            metavar="READING",
            help='A reading to try, not kept: "700 rpm 95 C 8 psi", add "direct" for a test '
            'gauge, "pump" where it is tapped there, "+-1 psi" for its error; again for each.',
        ),
    ] = None,
    svg: Annotated[
        Path | None, typer.Option(metavar="FILE", help="Draw the curves into this .svg file.")
    ] = None,
    json: AsJson = False,
    whole: Whole = False,
) -> None:
    """What the gauge readings say is wrong with the oil circuit, and how bad it is.

    Readings cold and hot at a few speeds say most; says which further reading is worth taking.
    """
    from diagnose.circuit.survey import survey as survey_of
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.more_readings import load_with_readings
    from diagnose.output.documents.survey import survey_document
    from diagnose.output.text.survey import survey_text
    from diagnose.output.text.survey_brief import survey_brief
    from knowledge.book import the_book

    printing.check_picture(svg, case, "svg")
    book = the_book()
    loaded = load_with_readings(case, book, reading or ())
    diagnosis = Diagnosis(book, loaded)
    found = diagnosis.inference.survey or survey_of(loaded, book)
    document = survey_document(found, loaded, may_run=diagnosis.may_run)
    if svg is not None:
        from diagnose.output.html.charts import survey_picture

        printing.write_file(svg, survey_picture(document), case)
    printing.document(document, survey_text if whole else survey_brief, json=json)

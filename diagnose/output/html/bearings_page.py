"""``bearings`` as a page to print: tables to fill in with a pencil, what was entered in them."""

from __future__ import annotations

from diagnose.output.documents.bearing_sheet import BearingBlanks, BearingSheet
from diagnose.output.documents.bearings import BearingsDocument
from diagnose.output.html.page import rendered
from diagnose.output.lines import as_typed, clean

#: tables of a kind: caption, and the columns with their field and the figure of it
BORES = (
    ("bore, front in line", "bore", 0),
    ("front across", "bore", 1),
    ("rear in line", "bore", 2),
    ("rear across", "bore", 3),
    ("shell, upper", "shell", 0),
    ("lower", "shell", 1),
)
JOURNALS = (
    ("journal, front one way", "journal", 0),
    ("front across", "journal", 1),
    ("rear one way", "journal", 2),
    ("rear across", "journal", 3),
    ("strip, front", "strip", 0),
    ("rear", "strip", 1),
)
TABLES = (("housing bores and shells", BORES), ("journals, or gauge strip", JOURNALS))


def bearings_html(sheet: BearingSheet, document: BearingsDocument) -> str:
    """Return the whole page: the tables, then what the readings come to."""
    return rendered(
        "bearings.html",
        sheet=sheet,
        result=document,
        name=clean(sheet.title),
        path=as_typed(sheet.path),
        tables=TABLES,
        entered=_entered,
    )


def _entered(one: BearingBlanks, field: str, which: int) -> str:
    """A figure that was entered for a cell; empty where none was."""
    cells = {b.field: b.cells for b in one.blanks}
    figure = cells[field][which]
    if field == "bore" and not figure and cells["inside"][which]:
        return f"{cells['inside'][which]} shells in"
    return figure

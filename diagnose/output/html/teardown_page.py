"""``teardown`` as a page to take to the engine: stages, cautions, blanks, loose ends."""

from __future__ import annotations

from diagnose.output.documents.named import UNTITLED
from diagnose.output.documents.teardown import TeardownDocument
from diagnose.output.html import oil_path
from diagnose.output.html.page import rendered
from diagnose.output.lines import as_typed, clean

MARKS = {"": "", "done": "x", "failed": "!", "skipped": "-"}  #: by state of a task


def teardown_html(document: TeardownDocument) -> str:
    """Return the whole page."""
    return rendered(
        "teardown.html",
        plan=document,
        name=clean(document.title).strip() or UNTITLED,
        path=as_typed(document.path),
        marks=MARKS,
        drawing=oil_path,
    )

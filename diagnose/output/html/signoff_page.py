"""``signoff`` as a page: tasks in assembly order, sources side by side, the first start."""

from __future__ import annotations

from diagnose.output.documents.named import UNTITLED
from diagnose.output.documents.signoff import SignoffDocument
from diagnose.output.html.page import rendered
from diagnose.output.lines import as_typed, clean


def short_signoff_html(document: SignoffDocument) -> str:
    """Return the page for the bench: what to order, and one line for each task still to do."""
    return rendered(
        "signoff_short.html",
        sheet=document,
        name=clean(document.title).strip() or UNTITLED,
        phases=list(document.phases(open_only=True)),
    )


def signoff_html(document: SignoffDocument, *, open_only: bool = False) -> str:
    """Return the whole page; ``open_only``: without what is settled, and without parts."""
    phases = list(document.phases(open_only=open_only))
    return rendered(
        "signoff.html",
        sheet=document,
        name=clean(document.title).strip() or UNTITLED,
        path=as_typed(document.path),
        phases=phases,
        shown=[i for p in phases for i in p.items],
        parts=() if open_only else document.parts,
        used=() if open_only else document.used_parts,
    )

"""``review`` of a folder on a terminal: a case in one line, and the folder in a sentence."""

from __future__ import annotations

from diagnose.output.documents.glance import GlanceDocument
from diagnose.output.lines import clean, columns, percent, width
from knowledge.model import Severity

FILE, CAUSE = 18, 22  #: columns that are kept for them; a longer cause takes what it needs
NOTHING = "no check left"


def glance_line(document: GlanceDocument, name: str, longest: int) -> str:
    """Render file, STOP or care, likelihood and cause, next check, in one line.

    ``longest``: columns of the longest file name, which sets where the rest begins.
    """
    flag = "STOP" if document.must_stop else ""
    if (
        not flag
        and not document.closed
        and any(a.severity is Severity.CARE for a in document.alarms)
    ):
        flag = "care"
    room = min(longest, FILE)
    file, likely = _cut(name, room), percent(document.probability)
    file += " " * (room - columns(file))
    start = f"{file}  {flag:4}  {likely:>6}  {document.cause:{CAUSE}}  "
    return start + _cut(
        "closed" if document.closed else document.next or NOTHING, max(4, width() - columns(start))
    )


def folder_summary(reviewed: int, stops: int, unread: int, missed: int | None, checked: int) -> str:
    """Say what a folder came to; ``missed`` only where expectations were checked."""
    parts = [f"{reviewed:,} case{'' if reviewed == 1 else 's'} reviewed", f"{stops} with a stop"]
    if unread:
        parts.append(f"{unread} could not be read")
    if missed is not None:
        parts.append(f"{checked} checked, {missed} not as expected")
    return "; ".join(parts) + "."


def _cut(text: str, room: int) -> str:
    """Return so much of the text as fits, with a mark where it was longer."""
    text = clean(text)
    if columns(text) <= room:
        return text
    while columns(text) > room - 1:
        text = text[:-1]
    return text + "…"

"""What ``record`` and ``close`` saved, on a terminal."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.writing import Appended, Fields
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.alarms import alarm_notices
from diagnose.output.lines import as_typed, percent, wrapped
from diagnose.output.text.alarms import alarm_lines
from knowledge.book import Book

_READING_FIELDS = ("rpm", "oil", "pressure", "gauge")


def record_text(saved: Appended, book: Book, path: Path) -> str:
    """Render each entry with its number, alarms that are new with it, and what to do next."""
    lines = [
        f"{number:4}  {entry_text(entry.kind, entry.fields)}"
        for number, entry in enumerate(saved.entries, saved.first_number)
    ]
    name = as_typed(str(path))
    seen = [a.says for a in Diagnosis(book, saved.before).alarms]
    lines += alarm_lines(alarm_notices(Diagnosis(book, saved.after)), seen)
    before = saved.before.last_number
    if before and any(entry.kind == "finding" for entry in saved.entries):
        lines.append(f"what it changes in the plan: diagnose teardown {name} --since {before}")
    lines.append(
        f"saved in {name}; {saved.after.last_number} entries. Next: diagnose review {name}"
    )
    return "\n".join(lines)


def entry_text(kind: str, fields: Fields) -> str:
    """Render one entry in a line, without its number.

    >>> entry_text("finding", {"what": "fuel_smell", "state": "present", "sure": 0.8})
    'fuel_smell: present, 80 % sure'
    """
    what = fields.get("what") or kind
    if fields.get("state") == "withdrawn":
        return f"{what}: entry {fields['replaces']} withdrawn"
    if kind in ("reading", "baseline"):
        value = ", ".join(str(fields[k]) for k in _READING_FIELDS if fields.get(k) is not None)
        value += ", first start" if fields.get("at") == "start" else ""
    else:
        value = str(fields.get("value") or fields.get("state"))
    sure = fields.get("sure")
    sureness = f", {percent(float(str(sure)))} sure" if sure is not None else ""
    replaced = f", replaces {fields['replaces']}" if fields.get("replaces") else ""
    return f"{what}: {value}{sureness}{replaced}"


def close_text(case: Case, path: Path) -> str:
    """Render the end of a job, with what was open all the same. The case is closed."""
    closed = case.closed
    if closed is None:
        raise ValueError("the case is not closed")
    lines = wrapped("closed: " + " and ".join(c.says for c in closed.causes))
    if closed.entry.reason:
        lines += wrapped(f"although: {closed.entry.reason}", 2, 4)
    name = as_typed(str(path))
    lines += wrapped(
        f"saved in {name}. The shop's memory: diagnose history", whole=[name, "diagnose history"]
    )
    return "\n".join(lines)

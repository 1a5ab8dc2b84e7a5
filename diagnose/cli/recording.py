"""``record``: findings, measures and readings into the case, units read at the door."""

from __future__ import annotations

from collections import Counter
from functools import partial
from pathlib import Path

from diagnose.casefile.case import Case
from diagnose.casefile.writing import Entries, Fields, append_by
from diagnose.cli import printing
from diagnose.cli.entries import Details, Entry, fact, kind_of, reading, withdrawal
from diagnose.errors import UsageError
from diagnose.report.lines import as_typed, percent
from knowledge.book import Book, the_book


def record_all(
    path: Path, facts: list[str], readings: list[str], withdraw: list[int], details: Details
) -> None:
    """Append everything or, where anything is wrong, nothing."""
    if not (facts or readings or withdraw):
        raise UsageError("nothing to record; write for instance needle_flickers=yes")
    book = the_book()
    told: list[Entry] = []

    def make(case: Case) -> Entries:
        told.extend(_entries(case, book, facts, readings, withdraw, details))
        return told

    new = append_by(path, book, make)
    first = new.last_number - len(told) + 1
    lines = [f"{n:4}  {_said(kind, fields)}" for n, (kind, fields) in enumerate(told, first)]
    name = as_typed(str(path))
    lines.append(f"saved in {name}; {new.last_number} entries. Next: diagnose review {name}")
    printing.answer("\n".join(lines))


def _entries(
    case: Case,
    book: Book,
    facts: list[str],
    readings: list[str],
    withdraw: list[int],
    details: Details,
) -> Entries:
    """Everything as entries. Raises UsageError with all that is wrong."""
    faults = details.faults()
    sound = details if not faults else Details(where=details.where)
    faults += _replaces_faults(case, len(facts), len(readings), details.replaces)
    entries: list[Entry] = []
    for attempt in (
        *(partial(fact, text, book, case, sound) for text in facts),
        *(partial(reading, text, sound) for text in readings),
        *(partial(withdrawal, number, case, sound) for number in dict.fromkeys(withdraw)),
    ):
        try:
            entries.append(attempt())
        except UsageError as fault:
            faults.append(str(fault))
    new = [f for kind, f in entries if kind == "finding" and f.get("state") != "withdrawn"]
    faults += [
        f"{what}: given {times} times; for several places use --where, one command each"
        for what, times in Counter(f["what"] for f in new).items()
        if times > 1
    ]
    if faults:
        raise UsageError("\n".join(dict.fromkeys(faults)))
    return entries


def _replaces_faults(case: Case, facts: int, readings: int, replaces: int | None) -> list[str]:
    """What is wrong with the number of the entry to correct."""
    if replaces is None:
        return []
    if facts + readings != 1:
        return ["replaces: corrects one entry, and so goes with one finding or one reading"]
    old = case.standing.get(replaces)
    if old is None:
        return [f"replaces: no entry {replaces} stands in this case"]
    kind = kind_of(old)
    if kind != ("reading" if readings else "finding"):
        return [f"replaces: entry {replaces} is a {kind}; only another {kind} corrects it"]
    return []


def _said(kind: str, fields: Fields) -> str:
    """One entry in a line."""
    if fields.get("state") == "withdrawn":
        return f"{fields.get('what') or kind}: entry {fields['replaces']} withdrawn"
    if kind != "finding":
        what = ", ".join(str(fields[k]) for k in ("rpm", "oil", "pressure", "gauge") if k in fields)
    else:
        what = str(fields.get("value") or fields.get("state"))
    sure = fields.get("sure")
    sureness = f", {percent(float(str(sure)))} sure" if sure is not None else ""
    replaced = f", replaces {fields['replaces']}" if fields.get("replaces") else ""
    return f"{fields.get('what') or kind}: {what}{sureness}{replaced}"

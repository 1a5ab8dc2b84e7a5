"""``record``: findings, measures and readings into the case, units read at the door."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from functools import partial
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.writing import Entries, Fields, append_by
from diagnose.cli import printing
from diagnose.cli.entries import Details, Entry, fact, kind_of, reading, withdrawal
from diagnose.cli.sheets import READING, Filled, filled
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError
from diagnose.output.lines import as_typed, percent
from diagnose.output.review import alarms
from knowledge.book import Book, the_book

MOST_FAULTS = 40  #: told at once; nobody mends more in one go
SAID_OF_READINGS = ("rpm", "oil", "pressure", "gauge")


def record_all(
    path: Path,
    facts: list[str],
    readings: list[str],
    withdraw: list[int],
    details: Details,
    sheet: Path | None = None,
) -> None:
    """Append everything or, where anything is wrong, nothing."""
    blanks = filled(sheet) if sheet else []
    if not (facts or readings or withdraw or blanks):
        raise UsageError("nothing to record; write for instance needle_flickers=yes")
    book = the_book()
    told: list[Entry] = []
    places: list[str] = []

    warned: list[str] = []

    def make(case: Case) -> Entries:
        warned.extend(a.says for a in Diagnosis(book, case).alarms)
        for entry, place in _entries(case, book, facts, readings, withdraw, blanks, details):
            told.append(entry)
            places.append(place)
        return told

    new = append_by(path, book, make, places)
    first = new.last_number - len(told) + 1
    lines = [f"{n:4}  {_said(kind, fields)}" for n, (kind, fields) in enumerate(told, first)]
    name = as_typed(str(path))
    lines += alarms(Diagnosis(book, new), warned)
    if any(kind == "finding" for kind, _ in told) and first > 1:
        lines.append(f"what it changes in the plan: diagnose teardown {name} --since {first - 1}")
    lines.append(f"saved in {name}; {new.last_number} entries. Next: diagnose review {name}")
    printing.answer("\n".join(lines))


def _entries(
    case: Case,
    book: Book,
    facts: list[str],
    readings: list[str],
    withdraw: list[int],
    blanks: Sequence[Filled],
    details: Details,
) -> list[tuple[Entry, str]]:
    """Everything as entries, each with its place in the sheet. Raises UsageError.

    The error holds all that is wrong.
    """
    faults = details.faults()
    sound = details if not faults else Details(where=details.where)
    faults += _replaces_faults(case, len(facts), len(readings), details.replaces, bool(blanks))
    entries: list[tuple[Entry, str]] = []
    attempts: list[tuple[Callable[[], Entry], str]] = [
        *((partial(fact, text, book, case, sound), "") for text in facts),
        *((partial(reading, text, sound), "") for text in readings),
        *((partial(_of_blank, blank, book, case, sound), blank.place) for blank in blanks),
        *((partial(withdrawal, number, case, sound), "") for number in dict.fromkeys(withdraw)),
    ]
    for attempt, place in attempts:
        try:
            entries.append((attempt(), place))
        except UsageError as fault:
            faults.append(_at(place, str(fault)))
        if len(faults) > MOST_FAULTS:
            raise UsageError("\n".join([*dict.fromkeys(faults), "and perhaps more"]))
    faults += _doubled(entries)
    if faults:
        raise UsageError("\n".join(dict.fromkeys(faults)))
    return entries


def _of_blank(blank: Filled, book: Book, case: Case, details: Details) -> Entry:
    """One filled blank as an entry. Raises UsageError."""
    if blank.fault:
        raise UsageError(blank.fault)
    if blank.what.lower() == READING:
        return reading(blank.value, replace(details, where=blank.where))
    there = replace(details, where=blank.where or details.where)
    return fact(f"{blank.what}={blank.value}", book, case, there)


def _at(place: str, fault: str) -> str:
    """A fault, and where in the sheet it is."""
    return f"{place}: {fault}" if place else fault


def _doubled(entries: Sequence[tuple[Entry, str]]) -> Iterator[str]:
    """What was told twice of one place in one command."""
    told: dict[tuple[object, object], list[str]] = {}
    for (_, fields), place in entries:
        if "what" in fields and fields.get("state") != "withdrawn":
            told.setdefault((fields["what"], fields.get("where")), []).append(place)
    for (what, _), places in told.items():
        if len(places) > 1:
            right = "write `id @ place`" if all(places) else "use --where, one command each"
            fault = f"{what}: given {len(places)} times; for several places {right}"
            yield _at(", ".join(p for p in places[:8] if p), fault)


def _replaces_faults(
    case: Case, facts: int, readings: int, replaces: int | None, sheet: bool
) -> list[str]:
    """What is wrong with the number of the entry to correct."""
    if replaces is None:
        return []
    if sheet:
        return ["replaces: not with a sheet, whose entries correct what stands for the same thing"]
    if facts + readings != 1:
        return ["replaces: corrects one entry, and so goes with one finding or one reading"]
    old = case.standing.get(replaces)
    if old is None:
        return [f"replaces: no entry {replaces} stands in this case"]
    kind = kind_of(old)
    if (kind == "reading") != bool(readings) or kind == "baseline":
        return [f"replaces: entry {replaces} is a {kind}; only another {kind} corrects it"]
    return []


def _said(kind: str, fields: Fields) -> str:
    """One entry in a line."""
    if fields.get("state") == "withdrawn":
        return f"{fields.get('what') or kind}: entry {fields['replaces']} withdrawn"
    if kind in ("reading", "baseline"):
        what = ", ".join(str(fields[k]) for k in SAID_OF_READINGS if k in fields)
        what += ", first start" if fields.get("at") == "start" else ""
    else:
        what = str(fields.get("value") or fields.get("state"))
    sure = fields.get("sure")
    sureness = f", {percent(float(str(sure)))} sure" if sure is not None else ""
    replaced = f", replaces {fields['replaces']}" if fields.get("replaces") else ""
    return f"{fields.get('what') or kind}: {what}{sureness}{replaced}"

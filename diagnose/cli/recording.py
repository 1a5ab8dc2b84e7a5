"""``record``: findings, measures and readings into the case, units read at the door."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path

import typer

from diagnose.casefile.case import Case
from diagnose.casefile.reading import load, nearest
from diagnose.casefile.writing import Fields, Value, append
from diagnose.errors import UsageError
from knowledge.book import Book, the_book
from knowledge.units import DIMENSIONS, PRESSURE, SPEED, TEMPERATURE, UnitError, parse, unit_named
from knowledge.vocabulary import Finding, Measure

Answer = tuple[str, float | None]
ANSWERS: dict[str, Answer] = {
    **dict.fromkeys(("yes", "y", "present", "true", "seen", "1"), ("present", None)),
    **dict.fromkeys(("no", "n", "absent", "false", "none", "0"), ("absent", None)),
    **dict.fromkeys(("unknown", "u", "d", "?", "dont_know"), ("unknown", None)),
    "probably": ("present", 0.8),
    "maybe": ("present", 0.65),
    "probably_not": ("absent", 0.8),
}
_PIECE = re.compile(r"\s*([+-]?(?:\d+(?:\.\d*)?|\.\d+))\s*([^\d\s,]*[^\s,]*)")


@dataclass(frozen=True, slots=True)
class Details:
    """What goes with every entry of one command."""

    note: str = ""
    where: str = ""
    by: str = ""
    when: str = ""
    learned: str = ""
    replaces: int | None = None

    def fields(self) -> dict[str, Value | None]:
        """As fields of an entry."""
        return {
            "when": _date(self.when),
            "by": self.by or None,
            "note": self.note or None,
            "where": self.where or None,
            "learned": _learned(self.learned),
            "replaces": self.replaces,
        }


def record_all(
    path: Path, facts: list[str], readings: list[str], withdraw: list[int], details: Details
) -> None:
    """Append everything or, where anything is wrong, nothing."""
    if not (facts or readings or withdraw):
        raise UsageError("nothing to record; write for instance needle_flickers=yes")
    book = the_book()
    case = load(path, book)
    faults: list[str] = []
    entries: list[tuple[str, Fields]] = []
    for fact in facts:
        try:
            entries.append(("finding", _fact(fact, book, case, details)))
        except UsageError as fault:
            faults.append(str(fault))
    for reading in readings:
        try:
            entries.append(("reading", _reading(reading, details)))
        except UsageError as fault:
            faults.append(str(fault))
    for number in withdraw:
        try:
            entries.append(_withdrawal(number, case, details))
        except UsageError as fault:
            faults.append(str(fault))
    if faults:
        raise UsageError("\n".join(faults))
    new = append(path, book, entries)
    first = case.last_number + 1
    for number, (kind, fields) in enumerate(entries, first):
        what = fields.get("what") or kind
        told = fields.get("value") or fields.get("state") or fields.get("pressure")
        replaced = f", replaces {fields['replaces']}" if fields.get("replaces") else ""
        typer.echo(f"{number:4}  {what}: {told}{replaced}")
    typer.echo(f"saved in {path}; {new.last_number} entries. Next: diagnose review {path}")


def _fact(text: str, book: Book, case: Case, details: Details) -> Fields:
    name, equals, value = text.partition("=")
    if not equals:
        raise UsageError(f"'{text[:60]}': write it as {text[:40].strip() or 'finding'}=yes")
    word = the_word(name, book)
    fields = details.fields()
    if isinstance(word, Measure):
        try:
            parse(value, DIMENSIONS[word.dimension])
        except UnitError as error:
            raise UsageError(f"{word.id}: {error}") from None
        return {"what": word.id, "value": value.strip(), **_replacing(word, case, fields)}
    answer, sure = the_answer(value, word)
    return {"what": word.id, "state": answer, "sure": sure, **_replacing(word, case, fields)}


def the_word(name: str, book: Book) -> Finding | Measure:
    """The finding or measure a person named. Raises UsageError with the nearest."""
    wanted = name.strip().lower().replace("-", "_").replace(" ", "_")
    word = book.findings.get(wanted) or book.measures.get(wanted)
    if word is None:
        near = nearest(wanted, [*book.findings, *book.measures])
        raise UsageError(
            f"no finding '{name.strip()[:60]}'.{near} Try: diagnose lookup {wanted[:40]}"
        )
    return word


def the_answer(text: str, word: Finding) -> Answer:
    """'yes', 'probably', '70%' … as a state and how sure. Raises UsageError."""
    wanted = text.strip().lower().replace(" ", "_").replace("'", "")
    if wanted in ANSWERS:
        return ANSWERS[wanted]
    share = re.fullmatch(r"(\d{1,3})_?%", wanted)
    if share and 0 <= int(share[1]) <= 100:
        p = int(share[1]) / 100
        return ("present", max(p, 0.5)) if p >= 0.5 else ("absent", 1 - p)
    raise UsageError(
        f"{word.id}: '{text.strip()[:40]}' is no answer; write yes, no, unknown, probably or 70%"
    )


def _replacing(word: Finding | Measure, case: Case, fields: dict[str, Value | None]) -> Fields:
    """A new sighting of the same thing at the same place corrects the old one."""
    if fields["replaces"] is not None:
        return fields
    where = fields["where"] or ""
    olds = [s.entry.no for s in case.sightings if s.finding is word and s.entry.where == where]
    if isinstance(word, Measure):
        olds = [m.entry.no for m in case.measured if m.measure is word and m.entry.where == where]
    return {**fields, "replaces": olds[-1]} if olds else fields


def _reading(text: str, details: Details) -> Fields:
    fields = details.fields()
    fields.pop("where")
    got: dict[str, Value | None] = {}
    rest = text
    for piece in _PIECE.finditer(text):
        number, unit = piece[1], piece[2]
        for key, dimension in (("rpm", SPEED), ("oil", TEMPERATURE), ("pressure", PRESSURE)):
            if unit and unit_named(unit, dimension) and key not in got:
                got[key] = f"{number} {unit}"
                rest = rest.replace(piece[0], " ", 1)
                break
    for word in rest.split():
        if word.lower() in ("direct", "panel"):
            got["gauge"] = word.lower()
        elif word.lower() == "cold" or word.lower() == "hot":
            raise UsageError(f"reading '{text[:60]}': give the oil temperature, for instance 95 C")
        else:
            raise UsageError(
                f"reading '{text[:60]}': '{word[:20]}' is not understood; "
                'write it like "700 rpm 95 C 8 psi", "2500 rpm 60 C 3.1 bar direct" or '
                '"800 rpm 15 psi"'
            )
    if not {"rpm", "pressure"} <= got.keys():
        raise UsageError(
            f"reading '{text[:60]}': needs speed and pressure with units; "
            'write it like "700 rpm 95 C 8 psi"'
        )
    return {**got, **fields}


def _withdrawal(number: int, case: Case, details: Details) -> tuple[str, Fields]:
    fields = {**details.fields(), "replaces": number}
    for s in case.sightings:
        if s.entry.no == number:
            return "finding", {"what": s.finding.id, "state": "withdrawn", **fields}
    for m in case.measured:
        if m.entry.no == number:
            return "finding", {"what": m.measure.id, "state": "withdrawn", **fields}
    for r in case.readings:
        if r.entry.no == number:
            fields.pop("where")
            return "reading", {"state": "withdrawn", **fields}
    raise UsageError(f"no entry {number} stands in this case")


def _date(text: str) -> date:
    if not text:
        return date.today()
    try:
        return date.fromisoformat(text)
    except ValueError:
        today = datetime.now().date().isoformat()
        raise UsageError(f"'{text[:30]}' is no date; write it like {today}") from None


def _learned(text: str) -> str | None:
    if text and text not in ("told", "outside", "opened"):
        raise UsageError(f"learned: '{text[:30]}' is not told, outside or opened")
    return text or None

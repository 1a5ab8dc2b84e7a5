"""How new entries meet those that stand, and each other."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date

from diagnose.case.case import Case
from diagnose.case.schema import ENTRIES, Entry
from diagnose.case.writing import NewEntry
from diagnose.ways import Way, to

_NOT_SAID = (
    "no",
    "when",
    "by",
    "note",
    "replaces",
)  #: of an entry, what says nothing of the engine


def kind_of(entry: Entry) -> str:
    """The table an entry is written in: 'finding', 'reading' ..."""
    return next(kind for kind, model in ENTRIES.items() if isinstance(entry, model))


def repeated(entries: Sequence[NewEntry]) -> Iterator[tuple[str, list[NewEntry]]]:
    """A fault for each thing that is given twice for one place, and its entries."""
    places: dict[tuple[object, object], list[NewEntry]] = {}
    for entry in entries:
        fields = entry.fields
        if "what" in fields and fields.get("state") != "withdrawn":
            places.setdefault((fields["what"], fields.get("where")), []).append(entry)
    for (what, _), found in places.items():
        if len(found) > 1:
            at = [e.place for e in found if e.place]
            right = "write `id @ place`" if len(at) == len(found) else to(Way.PLACES)
            fault = f"{what}: given {len(found)} times; for several places {right}"
            place = ", ".join(at[:8])
            yield (f"{place}: {fault}" if place else fault), found


def stands(entry: NewEntry, case: Case) -> bool:
    """Whether the case says the same already."""
    return _same(entry, case.standing) is not None


def said_before(entry: NewEntry, case: Case, today: date) -> int | None:
    """The number of the entry that a person repeats; None where it is new.

    The gauge may well read the same on another day, so a reading or a course repeats one of
    ``today`` only.
    """
    if entry.kind not in ("reading", "behaviour"):
        return _same(entry, case.standing)
    return _same(entry, {no: e for no, e in case.standing.items() if e.when == today})


def _same(entry: NewEntry, olds: Mapping[int, Entry]) -> int | None:
    said = {k: v for k, v in entry.fields.items() if v is not None and k not in _NOT_SAID}
    for no, old in olds.items():
        fields = old.model_dump(exclude_defaults=True)
        if kind_of(old) == entry.kind and said == {
            k: v for k, v in fields.items() if k not in _NOT_SAID
        }:
            return no
    return None

"""How new entries meet those that stand, and each other; imported by ``recording``."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

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
    said = {k: v for k, v in entry.fields.items() if v is not None and k not in _NOT_SAID}
    return any(
        kind_of(old) == entry.kind
        and {k: v for k, v in old.model_dump(exclude_defaults=True).items() if k not in _NOT_SAID}
        == said
        for old in case.standing.values()
    )

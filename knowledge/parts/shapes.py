"""The shape of a part or consumable: generic, how many, and what to measure before ordering."""

from __future__ import annotations

from dataclasses import dataclass

from knowledge.vocabulary import Access, Cause, Finding, Source


@dataclass(frozen=True, slots=True, eq=False)
class Part:
    """Something to have at hand for a repair; names no maker."""

    id: str
    says: str
    quantity: str
    source: Source
    measure_first: str = ""  #: what to measure or read before ordering
    for_causes: tuple[Cause, ...] = ()  #: renewed where one of these is the confirmed cause
    for_places: tuple[Access, ...] = ()  #: needed to close these places again
    only_with: tuple[Finding, ...] = ()
    not_with: tuple[Finding, ...] = ()
    always: bool = False  #: for every repair that opened the oil side
    note: str = ""
    also: tuple[str, ...] = ()  #: everyday words

    def __repr__(self) -> str:
        return f"<part {self.id}>"

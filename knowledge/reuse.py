"""The shape of a verdict on a used part: reuse, rework or renew, by what was seen and measured."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from knowledge.model import Finding, Measure, Source, Station


class Fate(StrEnum):
    """What becomes of a used part, the gravest first."""

    RENEW = "renew"
    REWORK = "rework"
    REUSE = "reuse"


@dataclass(frozen=True, slots=True, kw_only=True)
class FateRule:
    """Any one of these findings decides the part's fate."""

    fate: Fate
    when: tuple[Finding, ...]  #: present, seen or concluded from a measured value
    how: str  #: what is done, as an order
    source: Source


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class UsedPart:
    """A part that may go back in, and what decides it.

    It is fit to go back where nothing speaks against it and it was looked at: one of ``sound`` is
    present, or one of ``rules``' findings is absent, or one of ``measures`` was taken.
    """

    id: str
    station: Station
    says: str
    rules: tuple[FateRule, ...]
    look: str  #: what to look at or measure where nothing is known yet, as an order
    reuse: str  #: what is done before it goes back, as an order
    source: Source  #: of ``look`` and ``reuse``
    sound: tuple[Finding, ...] = ()
    measures: tuple[Measure, ...] = ()

    def __repr__(self) -> str:
        return f"<used part {self.id}>"

"""Work that is part of other work of its sentence: new oil after a fuel leak, a gasket under the pump."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol, TypeVar

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.pairing import WITH

_SOON = 4  #: words from work to a gasket that went in with it
#: what is done with a trial as a matter of course: no trial of its own beside it
_GOES_WITH = {
    "fuel_leak_mended": ("right_oil",),
    "coolant_leak_mended": ("right_oil",),
    "crank_reground": ("new_bearings",),
    "new_bearings": ("new_main_bearings", "new_rod_bearings"),
    "pump_refitted": ("seals_renewed",),
    "pickup_seal_renewed": ("seals_renewed",),
    "filter_tightened": ("seals_renewed",),
}
_ON = WITH | {"on"}  #: "put back on a new gasket"


class _Piece(Protocol):
    """One piece of work."""

    @property
    def line(self) -> Line:
        """Its sentence."""

    @property
    def marks(self) -> tuple[Mark[object], ...]:
        """What it was read from."""

    @property
    def trial(self) -> str | None:
        """The trial it may be."""

    @property
    def first(self) -> int:
        """Its first token."""

    @property
    def last(self) -> int:
        """The token after its last."""


Piece = TypeVar("Piece", bound=_Piece)


def by_themselves(found: Sequence[Piece]) -> list[Piece]:
    """The work of a sentence without what is part of other work of it."""
    return [j for j in found if not any(_is_part(j, o) for o in found if o is not j)]


def _is_part(job: Piece, other: Piece) -> bool:
    """Whether one piece of work goes without saying where another one is named."""
    if other.trial is None or job.trial == other.trial:
        return False
    if job.trial in _GOES_WITH.get(other.trial, ()):
        return True
    if job.trial == "seals_renewed" and {job.line.word(job.first - k) for k in (1, 2)} & _ON:
        return other.last <= job.first <= other.last + _SOON
    inside = other.first <= job.first and job.last <= other.last
    return inside and len(other.marks) == 1 and job.trial is not None

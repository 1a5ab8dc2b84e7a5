"""Shape of an engine's card: which of its own figures can be written down, and under which head.

A card holds what the maker prints of one engine; several jobs name it. Imports ``model``,
``limits`` and ``sources``.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum

from knowledge.limits import Limit
from knowledge.model import Finding, Quantity, Source
from knowledge.sources import COMMON_PRACTICE


class Section(StrEnum):
    """A table of the card, in the order of its file."""

    PRESSURES = "pressures"
    CLEARANCES = "clearances"
    TORQUES = "torques"
    SETTINGS = "settings"
    OIL = "oil"
    SIZES = "sizes"


class Form(StrEnum):
    """How a figure is printed, and what one figure alone means."""

    FITTED = "fitted"  #: "0.0010 to 0.0025 in, limit 0.0035 in"; one figure alone says too little
    NOMINAL = "nominal"  #: the value it should have, or a range
    LEAST = "least"
    MOST = "most"


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class CardFigure:
    """One figure of a card.

    ``rank``: how much it helps, 1 the most. ``least``, ``most``, ``nominal``: the limits it sets;
    a wear limit goes before the widest fit. ``quantity``: what it states of the oil circuit, or
    what is measured. ``tasks``: ids of sign-off tasks that it decides. ``manual``: where a
    workshop manual usually prints it.
    """

    id: str
    section: Section
    says: str
    manual: str
    rank: int
    form: Form
    dimension: str = ""  #: key of ``units.DIMENSIONS``; that of ``quantity`` where it has one
    plausible: tuple[float, float] = (0.0, float("inf"))  #: SI; of ``quantity`` where it has one
    quantity: Quantity | None = None
    least: Limit | None = None
    most: Limit | None = None
    nominal: Limit | None = None
    tasks: tuple[str, ...] = ()
    only_with: tuple[Finding, ...] = ()  #: for engines with any of these features
    not_with: tuple[Finding, ...] = ()  #: for none with one of these
    also: tuple[str, ...] = ()  #: other names it is found under
    source: Source = COMMON_PRACTICE  #: of ``manual`` and ``rank``

    def __post_init__(self) -> None:
        if self.quantity is None:
            return
        if self.dimension:
            raise ValueError(f"{self.id}: the dimension is that of its quantity")
        object.__setattr__(self, "dimension", self.quantity.dimension)
        if self.plausible == (0.0, float("inf")):
            object.__setattr__(self, "plausible", self.quantity.plausible)

    def __repr__(self) -> str:
        return f"<card figure {self.id}>"

    @property
    def limits(self) -> tuple[Limit, ...]:
        """The limits it sets."""
        return tuple(x for x in (self.least, self.most, self.nominal) if x is not None)

    def fits(self, has: Callable[[Finding], bool | None]) -> bool:
        """Whether the engine can have it; ``has`` returns None for a feature that is not known."""
        if any(has(f) for f in self.not_with):
            return False
        return not self.only_with or any(has(f) is not False for f in self.only_with)

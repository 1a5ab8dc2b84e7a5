"""Limits of quantities: what makers print, for which kind, layout or size of engine.

Imports ``model`` only.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from knowledge.model import Finding, Quantity, Source


class Side(StrEnum):
    """On which side a limit bounds its quantity."""

    LEAST = "least"
    MOST = "most"
    NOMINAL = "nominal"  #: the value it should have; the rule says how far off is too far


@dataclass(frozen=True, slots=True)
class Figure:
    """A typical value, SI, what it is of, and its source."""

    value: float
    says: str
    source: Source


@dataclass(frozen=True, slots=True, kw_only=True)
class BySize:
    """A typical value that grows with a part: a share of its size, and an allowance (SI)."""

    size: Quantity
    share: float
    allowance: float
    source: Source

    def figure(self, size: float) -> Figure:
        """Return the value for a part of this size, both in SI units."""
        says = f"for a {self.size.says} of {size * 1e3:.3g} mm"
        return Figure(self.share * size + self.allowance, says, self.source)


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Printed:
    """A limit that one source prints, and the kind of engine it is for.

    It is for engines with every feature of ``only_with`` and none of ``not_with``. Where
    ``before_layout``, these features say more than the layout: a roller crank in a side-valve
    motorcycle.
    """

    value: float  #: SI
    of: str  #: the engine or practice it was printed for
    source: Source
    only_with: tuple[Finding, ...] = ()
    not_with: tuple[Finding, ...] = ()
    before_layout: bool = False

    def fits(self, has: Callable[[Finding], bool]) -> bool:
        """Whether it is for an engine of which ``has`` tells the features known to be there."""
        return all(has(f) for f in self.only_with) and not any(has(f) for f in self.not_with)


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Limit:
    """A figure the engine maker prints; where the case gives none, that of other engines.

    It bounds each of ``quantities``, all of one dimension, on one ``side``. ``typical`` was
    printed for the engines named in ``of``; ``others`` are figures of other sources, for these
    or for other kinds of engine. Where ``typical`` is that of some layouts only, ``typical_on``
    names them by id; for the others ``on_layouts`` gives a figure by layout, else ``by_size``
    where the size of the part is known.
    """

    id: str
    says: str
    quantities: tuple[Quantity, ...]
    side: Side
    typical: float  #: SI
    source: Source
    typical_on: tuple[str, ...] = ()
    typical_only_with: tuple[Finding, ...] = ()  #: only for engines with these features
    by_size: BySize | None = None
    on_layouts: Mapping[str, Figure] = field(default_factory=dict)
    of: str = ""  #: the engine or practice ``typical`` is for
    others: tuple[Printed, ...] = ()

    def __repr__(self) -> str:
        return f"<limit {self.id}>"

    def figure_for(self, layout: str, sizes: Mapping[str, float]) -> Figure | None:
        """Return what is typical of this layout or size (SI, by quantity id); None: ``typical``."""
        if layout in self.typical_on:
            return None
        if layout in self.on_layouts:
            return self.on_layouts[layout]
        if self.by_size is not None and self.by_size.size.id in sizes:
            return self.by_size.figure(sizes[self.by_size.size.id])
        return None

    def goes_before_layout(self, has: Callable[[Finding], bool]) -> bool:
        """Whether features of the engine decide, whatever is typical of its layout."""
        return any(p.before_layout and p.fits(has) for p in self.others)

    @property
    def dimension(self) -> str:
        """The key of ``units.DIMENSIONS``."""
        return self.quantities[0].dimension

    def printed(self, has: Callable[[Finding], bool]) -> tuple[Printed, ...]:
        """The figures for the engine whose known features ``has`` gives.

        Figures for its kind go before those for no kind in particular. Empty where every figure
        was printed for another kind: then nothing but the engine's own judges it.
        """
        fitting = [p for p in self.others if p.fits(has)]
        if kind := tuple(p for p in fitting if p.only_with):
            return kind
        if not all(has(f) for f in self.typical_only_with):
            return tuple(fitting)
        return (Printed(value=self.typical, of=self.of, source=self.source), *fitting)

"""The oil's way through an engine in section, as places on a drawing.

A drawing of no engine in particular: where each station lies and where its mark goes.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass

from knowledge.model import Station

WIDE, TALL = 360, 316


@dataclass(frozen=True, slots=True)
class Place:
    """A box of the drawing; ``here`` is where its mark stands."""

    station: Station
    says: str
    x: int
    y: int
    wide: int
    tall: int
    here: tuple[int, int]
    marked: bool = False


_BOXES = (
    (Station.ASSEMBLY, "how it was put together", 4, 4, 352, 308, (300, 306)),
    (Station.TOPEND, "top end", 116, 16, 128, 30, (250, 26)),
    (Station.INSTRUMENT, "gauge", 278, 62, 66, 30, (292, 52)),
    (Station.DELIVERY, "gallery", 92, 62, 152, 30, (146, 57)),
    (Station.DELIVERY, "filter", 16, 118, 62, 40, (28, 113)),
    (Station.BEARINGS, "bearings", 116, 112, 128, 36, (250, 138)),
    (Station.LEAKS, "leaks", 284, 158, 66, 30, (300, 153)),
    (Station.PUMP, "pump", 92, 180, 76, 36, (56, 202)),
    (Station.RELIEF, "relief valve", 184, 180, 86, 36, (210, 175)),
    (Station.SUCTION, "pickup", 98, 242, 64, 30, (166, 256)),
    (Station.OIL, "oil in the sump", 208, 258, 112, 30, (266, 253)),
)


def places(marked: Collection[Station]) -> Iterator[Place]:
    """Every box, those of the given stations marked once each by the word."""
    for station, says, x, y, wide, tall, here in _BOXES:
        yield Place(station, says, x, y, wide, tall, here, station in marked)


def in_words(marked: Collection[Station]) -> str:
    """What is marked, for those who do not see the drawing."""
    return ", ".join(p.says for p in places(marked) if p.marked)

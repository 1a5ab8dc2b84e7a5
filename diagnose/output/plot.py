"""Curves and points over one axis, as data for the renderers."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import ceil, floor, log10


@dataclass(frozen=True)
class Plot:
    """Named curves and single points over one axis."""

    title: str
    x_label: str
    y_label: str
    x: Sequence[float]
    lines: Mapping[str, Sequence[float]]
    points: Sequence[tuple[float, float]] = ()
    band: tuple[Sequence[float], Sequence[float]] | None = None  #: lower and upper edge
    band_says: str = ""
    points_say: str = "read"
    gauge: Sequence[tuple[float, float]] = ()  #: read on the gauge, where ``points`` are others

    @property
    def top(self) -> float:
        """Upper end of the scale: a round figure above all there is."""
        lines = [*self.lines.values(), *(self.band[1:] if self.band else ())]
        most = max([1e-9, *(max(v) for v in lines), *(y for _, y in (*self.points, *self.gauge))])
        return round_up(most)

    @property
    def ends(self) -> tuple[float, float]:
        """Ends of the axis across."""
        every = [*self.x, *(x for x, _ in (*self.points, *self.gauge))]
        low, high = min(every), max(every)
        return (low, high) if high > low else (low - 1, high + 1)


def round_up(value: float) -> float:
    """The next round figure.

    >>> round_up(53.0), round_up(8.2), round_up(0.31)
    (60.0, 9.0, 0.4)
    """
    step = 10.0 ** floor(log10(value))
    return float(f"{ceil(value / step - 1e-9) * step:.6g}")


def ticks(low: float, high: float, most: int) -> list[float]:
    """Round figures from low to high, no more than ``most`` and one.

    >>> ticks(0, 60, 6)
    [0.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0]
    """
    rough = (high - low) / most
    step = 10.0 ** floor(log10(rough))
    step = next(step * k for k in (1, 2, 2.5, 5, 10) if step * k >= rough * (1 - 1e-9))
    first = ceil(low / step - 1e-9)
    return [float(f"{k * step:.6g}") for k in range(first, floor(high / step + 1e-9) + 1)]

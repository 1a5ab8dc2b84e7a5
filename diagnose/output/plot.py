"""Curves and points in plain characters, eighty columns wide.

Imported by the reports of survey and forecast, and as data by the charts; knows nothing of oil.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import ceil, floor, log10

MARKS = "abcdef"
POINT = "O"


@dataclass(frozen=True)
class Plot:
    """Named curves and single points over one axis."""

    title: str
    across: str  #: what is plotted across, with its unit
    up: str
    x: Sequence[float]
    lines: Mapping[str, Sequence[float]]
    points: Sequence[tuple[float, float]] = ()
    band: tuple[Sequence[float], Sequence[float]] | None = None  #: lower and upper edge
    band_says: str = ""
    points_say: str = "read"

    @property
    def top(self) -> float:
        """Upper end of the scale: a round figure above all there is."""
        lines = [*self.lines.values(), *(self.band[1:] if self.band else ())]
        most = max([1e-9, *(max(v) for v in lines), *(y for _, y in self.points)])
        return round_up(most)

    @property
    def ends(self) -> tuple[float, float]:
        """Ends of the axis across."""
        every = [*self.x, *(x for x, _ in self.points)]
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


def drawn(plot: Plot, width: int = 80, height: int = 14) -> list[str]:
    """The plot in characters: a letter for each curve, O for each point; a legend below.

    Where curves lie on each other the first is seen.

    >>> print("\\n".join(drawn(Plot("", "rpm", "psi", [0, 1, 2], {"up": [0, 1, 2]}), 24, 3)))
     2.0 |             aaaaa
     1.0 |     aaaaaaaa
     0.0 |aaaaa
         +------------------
          0       1        2
    psi over rpm; a up
    """
    (low, high), top = plot.ends, plot.top
    labels = {round((height - 1) * (1 - t / top)): f"{t:g}" for t in ticks(0.0, top, height // 3)}
    if height < 6:
        labels = {r: f"{top * (1 - r / (height - 1)):.1f}" for r in range(height)}
    margin = max(map(len, labels.values())) + 1
    across = width - margin - 2
    grid = [[" "] * across for _ in range(height)]

    def row(y: float) -> int:
        return min(height - 1, max(0, round((height - 1) * (1 - y / top))))

    for mark, line in reversed(list(zip(MARKS, plot.lines.values(), strict=False))):
        for column in range(across):
            at = low + (high - low) * column / max(across - 1, 1)
            grid[row(_between(at, plot.x, line))][column] = mark
    for x, y in plot.points:
        grid[row(y)][round((across - 1) * (x - low) / (high - low))] = POINT
    out = [plot.title] if plot.title else []
    out += [
        f"{labels.get(i, ''):>{margin}} |{''.join(cells)}".rstrip() for i, cells in enumerate(grid)
    ]
    out += [" " * margin + " +" + "-" * across, " " * (margin + 2) + _scale(low, high, across)]
    keys = [f"{mark} {name}" for mark, name in zip(MARKS, plot.lines, strict=False)]
    return [*out, "; ".join([f"{plot.up} over {plot.across}", *keys, *_read(plot)])]


def _read(plot: Plot) -> list[str]:
    return [f"{POINT} {plot.points_say}"] if plot.points else []


def _between(at: float, x: Sequence[float], y: Sequence[float]) -> float:
    """The curve at a place between its points."""
    for i in range(1, len(x)):
        if at <= x[i] or i == len(x) - 1:
            share = (at - x[i - 1]) / (x[i] - x[i - 1])
            return float(y[i - 1] + min(max(share, 0.0), 1.0) * (y[i] - y[i - 1]))
    return float(y[0])


def _scale(low: float, high: float, across: int) -> str:
    """Figures under the axis, each where it belongs."""
    line = [" "] * across
    for t in ticks(low, high, max(2, across // 14)):
        text, at = f"{t:g}", round((across - 1) * (t - low) / (high - low))
        start = min(max(at - len(text) // 2, 0), across - len(text))
        line[start : start + len(text)] = text
    return "".join(line).rstrip()

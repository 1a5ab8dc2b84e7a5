"""Plots drawn in plain characters."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from diagnose.output.plot import Plot, ticks

MARKS = "abcdef"
POINT, GAUGE = "O", "X"


def plot_lines(plot: Plot, width: int = 80, height: int = 14) -> list[str]:
    """Draw the plot in characters: a letter for each curve, O for each point, X for what a gauge read, a legend below.

    Where curves overlap, the first one shows. The band is left out.

    >>> print("\\n".join(plot_lines(Plot("", "rpm", "psi", [0, 1, 2], {"up": [0, 1, 2]}), 24, 3)))
     2.0 |             aaaaa
     1.0 |     aaaaaaaa
     0.0 |aaaaa
         +------------------
          0       1        2
    psi over rpm; a up
    """
    plot = replace(plot, band=None)
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
    for mark, points in ((POINT, plot.points), (GAUGE, plot.gauge)):
        for x, y in points:
            grid[row(y)][round((across - 1) * (x - low) / (high - low))] = mark
    out = [plot.title] if plot.title else []
    out += [
        f"{labels.get(i, ''):>{margin}} |{''.join(cells)}".rstrip() for i, cells in enumerate(grid)
    ]
    out += [" " * margin + " +" + "-" * across, " " * (margin + 2) + _scale(low, high, across)]
    keys = [f"{mark} {name}" for mark, name in zip(MARKS, plot.lines, strict=False)]
    return [*out, "; ".join([f"{plot.y_label} over {plot.x_label}", *keys, *_read(plot)])]


def _read(plot: Plot) -> list[str]:
    gauge = [f"{GAUGE} read on the gauge"] if plot.gauge else []
    return [f"{POINT} {plot.points_say}", *gauge] if plot.points else gauge


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

"""Curves and points in plain characters, eighty columns wide, and the same as SVG.

Imported by the reports of survey and forecast; knows nothing of oil.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import ceil, floor, log10
from xml.sax.saxutils import escape

MARKS = "abcdef"
POINT = "O"
COLOURS = ("#1b6ca8", "#c0392b", "#27874a", "#8e44ad", "#b9770e", "#34495e")
DASHES = ("", "7 3", "2 3", "9 3 2 3", "4 4", "12 4")
WIDE, TALL, LEFT, TOP, RIGHT, BOTTOM = 640.0, 360.0, 56.0, 34.0, 14.0, 44.0


@dataclass(frozen=True)
class Plot:
    """Named curves and single points over one axis."""

    title: str
    across: str  #: what is plotted across, with its unit
    up: str
    x: Sequence[float]
    lines: Mapping[str, Sequence[float]]
    points: Sequence[tuple[float, float]] = ()

    @property
    def top(self) -> float:
        """Upper end of the scale: a round figure above all there is."""
        most = max([1e-9, *(max(v) for v in self.lines.values()), *(y for _, y in self.points)])
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
    return [f"{POINT} read"] if plot.points else []


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


def svg(plots: Sequence[Plot]) -> str:
    """The plots below each other as one SVG picture, without script or outside parts."""
    keys = max((len(p.lines) for p in plots), default=0)
    each = TALL + 18 * (keys + 1)
    body = [_panel(p, i * each) for i, p in enumerate(plots)]
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE:g} {each * len(plots):g}" '
        'font-family="sans-serif" font-size="12">\n'
        f'<rect width="100%" height="100%" fill="white"/>\n{"".join(body)}</svg>\n'
    )


def _panel(plot: Plot, down: float) -> str:
    (low, high), top = plot.ends, plot.top

    def x(value: float) -> float:
        return LEFT + (WIDE - LEFT - RIGHT) * (value - low) / (high - low)

    def y(value: float) -> float:
        return TALL - BOTTOM - (TALL - BOTTOM - TOP) * value / top

    parts = [_text(LEFT, 18, plot.title, "start", 'font-weight="bold"')]
    for t in ticks(0.0, top, 6):
        parts.append(_line([(LEFT, y(t)), (WIDE - RIGHT, y(t))], "#ddd", "", 1))
        parts.append(_text(LEFT - 6, y(t) + 4, f"{t:g}", "end"))
    for t in ticks(low, high, 8):
        parts.append(_line([(x(t), TALL - BOTTOM), (x(t), TALL - BOTTOM + 4)], "#333", "", 1))
        parts.append(_text(x(t), TALL - BOTTOM + 18, f"{t:g}", "middle"))
    parts.append(_line([(LEFT, TOP), (LEFT, y(0)), (WIDE - RIGHT, y(0))], "#333", "", 1))
    parts.append(_text((LEFT + WIDE) / 2, TALL - 8, f"{plot.up} over {plot.across}", "middle"))
    for i, (name, line) in enumerate(plot.lines.items()):
        colour, dash = COLOURS[i % len(COLOURS)], DASHES[i % len(DASHES)]
        ends = zip(plot.x, line, strict=True)
        parts.append(_line([(x(a), y(min(max(b, 0.0), top))) for a, b in ends], colour, dash, 2))
        key = TALL + 18 * i + 8
        parts.append(_line([(LEFT, key), (LEFT + 34, key)], colour, dash, 2))
        parts.append(_text(LEFT + 42, key + 4, name, "start"))
    for a, b in plot.points:
        parts.append(
            f'<circle cx="{x(a):.1f}" cy="{y(b):.1f}" r="4.5" fill="white" stroke="black" '
            'stroke-width="2"/>\n'
        )
    return f'<g transform="translate(0 {down:g})">\n{"".join(parts)}</g>\n'


def _line(ends: Sequence[tuple[float, float]], colour: str, dash: str, wide: float) -> str:
    path = " ".join(f"{a:.1f},{b:.1f}" for a, b in ends)
    dashed = f' stroke-dasharray="{dash}"' if dash else ""
    return (
        f'<polyline points="{path}" fill="none" stroke="{colour}" stroke-width="{wide}"{dashed}/>\n'
    )


def _text(x: float, y: float, text: str, anchor: str, more: str = "") -> str:
    sound = escape("".join(c if c.isprintable() else " " for c in text))
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" {more}>{sound}</text>\n'

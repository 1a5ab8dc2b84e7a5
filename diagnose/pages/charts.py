"""Charts as SVG in black and grey, drawn by matplotlib; the only room that meets it.

Imported by the pages and the survey's picture. What one line or bar means is told by its pattern
and by words, never by colour alone, so that a photocopy says the same.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from io import StringIO
from typing import Any

import matplotlib as mpl
from matplotlib.axes import Axes
from matplotlib.figure import Figure

from diagnose.errors import clean
from diagnose.report.plot import Plot

WIDE, PANEL_TALL, BAR_TALL = 3.6, 2.7, 0.46  #: inches; narrow enough for a telephone
STROKES = (
    ("#000", "-", 2.2),
    ("#000", (0, (6, 2)), 1.5),
    ("#444", (0, (1, 1.5)), 1.8),
    ("#444", (0, (8, 2, 1, 2)), 1.5),
    ("#666", "-", 1.0),
)
STYLE: Any = {
    "svg.fonttype": "none",
    "font.family": ["DejaVu Sans", "sans-serif"],
    "font.size": 8.5,
    "axes.titlesize": 9.0,
    "axes.spines.top": False,
    "axes.spines.right": False,
    "axes.axisbelow": True,
    "hatch.linewidth": 0.6,
    "text.parse_math": False,
}


@dataclass(frozen=True, slots=True)
class Bar:
    """A step of a waterfall: from where to where, what it is, and its figure in words."""

    says: str
    figure: str
    start: float
    end: float
    hatch: str = ""
    grey: str = "#fff"


def curves(plots: Sequence[Plot], name: str) -> str:
    """Pressure over speed, one panel below the other, as one inline SVG called ``name``."""
    tall = [PANEL_TALL + 0.17 * (len(p.lines) + 2) for p in plots]
    with mpl.rc_context({**STYLE, "svg.hashsalt": name}):
        figure = Figure(figsize=(WIDE, sum(tall)), layout="constrained")
        axes = figure.subplots(len(plots), squeeze=False, height_ratios=tall)[:, 0]
        for i, (one, plot) in enumerate(zip(axes, plots, strict=True), 1):
            _panel(one, plot, f"read-{i}")
        return _inline(figure, name)


def _panel(axes: Axes, plot: Plot, read: str) -> None:
    if plot.band:
        axes.fill_between(
            plot.x, *plot.band, facecolor="#e4e4e4", edgecolor="#999", hatch="////", lw=0.6,
            label=clean(plot.band_says),
        )  # fmt: skip
    for i, (says, line) in enumerate(plot.lines.items()):
        colour, dash, wide = STROKES[i % len(STROKES)]
        axes.plot(plot.x, line, color=colour, linestyle=dash, linewidth=wide, label=clean(says))
    if plot.points:
        axes.plot(
            [x for x, _ in plot.points], [y for _, y in plot.points], "o", ms=6, mfc="#fff",
            mec="#000", mew=1.6, label="read", zorder=5, clip_on=False, gid=read,
        )  # fmt: skip
    axes.set_ylim(0, plot.top)
    axes.set_title(clean(plot.title), loc="left", fontweight="bold")
    axes.set_xlabel(plot.across)
    axes.set_ylabel(plot.up)
    axes.locator_params(axis="x", nbins=5)
    axes.grid(color="#ccc", linewidth=0.5)
    axes.legend(
        loc="upper left", bbox_to_anchor=(0, -0.24), frameon=False, borderaxespad=0, handlelength=3,
        labelspacing=0.3,
    )  # fmt: skip


def waterfall(bars: Sequence[Bar], unit: str, name: str) -> str:
    """Bars below each other, each from where the one before ended, with its words above it."""
    with mpl.rc_context({**STYLE, "svg.hashsalt": name}):
        figure = Figure(figsize=(WIDE, BAR_TALL * len(bars) + 0.55), layout="constrained")
        axes = figure.subplots()
        right = max(1.0, *(max(b.start, b.end) for b in bars))
        left = min(0.0, *(min(b.start, b.end) for b in bars))
        for i, bar in enumerate(bars):
            axes.barh(
                i + 0.2, bar.end - bar.start, height=0.42, left=bar.start, color=bar.grey,
                edgecolor="#000", hatch=bar.hatch, linewidth=1.0,
            )  # fmt: skip
            axes.text(left, i - 0.12, f"{clean(bar.says)}: {bar.figure}", va="bottom", ha="left")
            if i + 1 < len(bars):
                axes.plot([bar.end] * 2, [i + 0.2, i + 1.2], color="#666", lw=0.8, ls=":")
        axes.set_ylim(len(bars) - 0.4, -0.6)
        axes.set_xlim(left, right * 1.02)
        axes.set_yticks([])
        axes.spines["left"].set_visible(left == 0.0)
        axes.axvline(0, color="#000", linewidth=0.8)
        axes.set_xlabel(unit)
        return _inline(figure, name)


def _inline(figure: Figure, name: str) -> str:
    """The picture without its head, its ids its own on the page; the same picture, the same text."""
    out = StringIO()
    figure.savefig(out, format="svg", metadata={"Date": None, "Creator": None})
    text = out.getvalue()
    text = text[text.index("<svg") :]
    text = re.sub(r"\s*<metadata>.*?</metadata>", "", text, flags=re.DOTALL)
    text = re.sub(r"<!--.*?-->\s*", "", text, flags=re.DOTALL)
    text = re.sub(r'<svg [^>]*?(viewBox="[^"]*")[^>]*>', rf"<svg \1 {_XMLNS}>", text, count=1)
    text = re.sub(r'\bid="([^"]*)"', rf'id="{name}-\1"', text)
    text = re.sub(r"url\(#([^)]*)\)", rf"url(#{name}-\1)", text)
    return re.sub(r'xlink:href="#([^"]*)"', rf'xlink:href="#{name}-\1"', text)


_XMLNS = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"'


def document(svg: str) -> str:
    """The same picture as a file of its own."""
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + svg

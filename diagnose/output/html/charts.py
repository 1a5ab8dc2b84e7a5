"""Charts as SVG in black and grey; the only module that imports matplotlib.

Pattern and words tell lines and bars apart, never colour alone, so that a photocopy shows the same.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from io import StringIO
from textwrap import fill
from typing import Any
from xml.sax.saxutils import escape

import matplotlib as mpl
from matplotlib.axes import Axes
from matplotlib.figure import Figure

from diagnose.errors import clean
from diagnose.output.documents.survey import SurveyDocument
from diagnose.output.plot import Plot

WIDE, TALL, LOW, KEY = 3.6, 2.3, 1.55, 0.17  #: inches; narrow enough for a telephone
ON_A_PHONE = 2.8  #: inches; as wide as a telephone, its letters can be read in the sun
BAR_TALL, LETTERS = 0.34, 14.4  #: letters in an inch
BESIDE_KEY = 11  #: letters that a stroke of the key takes
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


def curves(plots: Sequence[Plot], name: str, wide: float = WIDE) -> str:
    """Pressure over speed, one panel below the other, as one inline SVG called ``name``.

    ``wide``: inches; letters have one size, so a narrower chart has larger ones.
    """
    says = "; ".join(f"{p.title}: {', '.join(p.lines)}" for p in plots)
    alike = len(plots) > 1 and len({tuple(p.lines) for p in plots}) == 1
    keyed = [not alike or i == len(plots) - 1 for i in range(len(plots))]
    letters = int(LETTERS * wide) - BESIDE_KEY
    tall = [
        (LOW if len(plots) > 1 else TALL) + (0.3 + KEY * (_key_lines(p, letters) + 1)) * key
        for p, key in zip(plots, keyed, strict=True)
    ]
    with mpl.rc_context({**STYLE, "svg.hashsalt": name}):
        figure = Figure(figsize=(wide, sum(tall)), layout="constrained")
        axes = figure.subplots(len(plots), squeeze=False)[:, 0]
        for i, (one, plot, key) in enumerate(zip(axes, plots, keyed, strict=True), 1):
            _panel(one, plot, f"read-{i}", letters, key=key, alone=len(plots) == 1)
        figure.draw_without_rendering()  # the marks on the axes are known only then, and take room
        return _inline(figure, name, says)


def _key_lines(plot: Plot, letters: int) -> int:
    """The lines that the words of a chart's key take, with its points."""
    band = [plot.band_says] if plot.band else []
    return max(
        len(plot.lines) + 1 + bool(plot.gauge),
        sum(_said(s, letters).count("\n") + 1 for s in (*plot.lines, *band)),
    )


def _said(text: str, letters: int) -> str:
    return fill(clean(text), letters)


def _panel(axes: Axes, plot: Plot, read: str, letters: int, *, key: bool, alone: bool) -> None:
    if plot.band:
        axes.fill_between(
            plot.x, *plot.band, facecolor="#e4e4e4", edgecolor="#999", hatch="////", lw=0.6,
            label=_said(plot.band_says, letters),
        )  # fmt: skip
    for i, (says, line) in enumerate(plot.lines.items()):
        colour, dash, wide = STROKES[i % len(STROKES)]
        axes.plot(
            plot.x, line, color=colour, linestyle=dash, linewidth=wide, label=_said(says, letters)
        )
    if plot.points:
        axes.plot(
            [x for x, _ in plot.points], [y for _, y in plot.points], "o", ms=6, mfc="#fff",
            mec="#000", mew=1.6, label=plot.points_say, zorder=5, clip_on=False, gid=read,
        )  # fmt: skip
    if plot.gauge:
        axes.plot(
            [x for x, _ in plot.gauge], [y for _, y in plot.gauge], "s", ms=6, mfc="#000",
            mec="#000", label="read on the gauge", zorder=5, clip_on=False, gid=f"{read}-gauge",
        )  # fmt: skip
    axes.set_ylim(0, plot.top)
    axes.set_title(clean(plot.title), loc="left", fontweight="bold")
    axes.set_xlabel(plot.x_label)
    axes.set_ylabel(plot.y_label)
    axes.locator_params(axis="x", nbins=5)
    axes.grid(color="#ccc", linewidth=0.5)
    if not key:
        return
    axes.legend(
        loc="upper left", bbox_to_anchor=(0, -0.3 if alone else -0.48), frameon=False, borderaxespad=0, handlelength=3,
        labelspacing=0.3,
    )  # fmt: skip


def waterfall(bars: Sequence[Bar], unit: str, name: str, wide: float = WIDE) -> str:
    """Bars below each other, each from where the one before ended, with its words above it.

    ``wide``: inches, as in ``curves``.
    """
    says = "; ".join(f"{b.says}: {b.figure}" for b in bars)
    with mpl.rc_context({**STYLE, "svg.hashsalt": name}):
        texts = [fill(f"{clean(b.says)}: {b.figure}", int(LETTERS * wide)) for b in bars]
        rows = [1.0 + 0.45 * (1 + text.count("\n")) for text in texts]
        figure = Figure(figsize=(wide, BAR_TALL * sum(rows) + 0.5), layout="constrained")
        axes = figure.subplots()
        right = max(1.0, *(max(b.start, b.end) for b in bars))
        left = min(0.0, *(min(b.start, b.end) for b in bars))
        down = 0.0
        for i, (bar, text, row) in enumerate(zip(bars, texts, rows, strict=True)):
            down += row
            axes.barh(
                down - 0.5, bar.end - bar.start, height=0.6, left=bar.start, color=bar.grey,
                edgecolor="#000", hatch=bar.hatch, linewidth=1.0,
            )  # fmt: skip
            axes.text(left, down - 0.86, text, va="bottom", ha="left").set_in_layout(False)
            if i + 1 < len(bars):
                axes.plot(
                    [bar.end] * 2,
                    [down - 0.2, down + rows[i + 1] - 0.8],
                    color="#666",
                    lw=0.8,
                    ls=":",
                )
        axes.set_ylim(down, 0.1)
        axes.set_xlim(left, right * 1.02)
        axes.set_yticks([])
        axes.spines["left"].set_visible(left == 0.0)
        axes.axvline(0, color="#000", linewidth=0.8)
        axes.set_xlabel(unit)
        return _inline(figure, name, says)


def _inline(figure: Figure, name: str, says: str) -> str:
    """The picture with its words, its ids its own on the page; the same picture, the same text."""
    out = StringIO()
    figure.savefig(out, format="svg", metadata={"Date": None, "Creator": None})
    text = out.getvalue()
    text = text[text.index("<svg") :]
    text = re.sub(r"\s*<metadata>.*?</metadata>", "", text, flags=re.DOTALL)
    text = re.sub(r"<!--.*?-->\s*", "", text, flags=re.DOTALL)
    head = f'<svg \\1 {_XMLNS} role="img" aria-labelledby="{name}-title">'
    text = re.sub(r'<svg [^>]*?(viewBox="[^"]*")[^>]*>', head, text, count=1)
    text = re.sub(r'\bid="([^"]*)"', rf'id="{name}-\1"', text)
    text = re.sub(r"url\(#([^)]*)\)", rf"url(#{name}-\1)", text)
    text = re.sub(r'xlink:href="#([^"]*)"', rf'xlink:href="#{name}-\1"', text)
    title = f'<title id="{name}-title">{escape(clean(says))}</title>'
    return text.replace(">", f">\n {title}", 1)


_XMLNS = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"'


def survey_picture(document: SurveyDocument) -> str:
    """The curves of a survey as an SVG file of their own."""
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + curves(document.plots, "survey")

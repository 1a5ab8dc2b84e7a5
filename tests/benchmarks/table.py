"""One row a comparison: the median of several runs' ratios, with their spread, and what is aimed at."""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass

WIDE = 47  #: columns of what was measured


@dataclass(frozen=True, slots=True)
class Row:
    """``ratios``: one a run; ``aim`` as ``<= 2.5`` or ``>= 5``, or nothing to reach."""

    what: str
    peer: str
    ratios: Sequence[float]
    aim: str = ""
    note: str = ""

    @property
    def median(self) -> float:
        """The middle one."""
        return statistics.median(self.ratios)

    @property
    def reached(self) -> bool | None:
        """Whether the median is as good as aimed at; None where nothing is."""
        if not self.aim:
            return None
        sign, figure = self.aim.split()
        return self.median <= float(figure) if sign == "<=" else self.median >= float(figure)


HEAD = f"{'':{WIDE}} {'median':>8}  {'spread':15}  {'aim':12}  against"


def line(row: Row) -> str:
    """The row as printed."""
    spread = f"{_figure(min(row.ratios))} to {_figure(max(row.ratios))}"
    if len(row.ratios) == 1:
        spread = "one run"
    aim = {None: "", True: f"{row.aim} yes", False: f"{row.aim} NOT"}[row.reached]
    note = f"; {row.note}" if row.note else ""
    return f"{row.what:{WIDE}} {_figure(row.median):>7}x  {spread:15}  {aim:12}  {row.peer}{note}"


def _figure(x: float) -> str:
    return f"{x:,.0f}" if x >= 100 else f"{x:.1f}" if x >= 10 else f"{x:.2f}"


def seconds(work: Callable[[], object]) -> float:
    """Wall time of one call."""
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def faster(rounds: int, ours: Callable[[], object], theirs: Callable[[], object]) -> list[float]:
    """Their time over ours, run by turns; a first turn of each warms up and does not count."""
    ours()
    theirs()
    return [seconds(theirs) / seconds(ours) for _ in range(rounds)]

"""The figures of the report with the numbers beside them: survey and budget."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from diagnose.output.documents.budget import BudgetAccount
from diagnose.output.html.charts import Bar
from diagnose.output.plot import Plot
from diagnose.output.scale import Scale

LOST, LEFT, READ, SOUND = ("////", "#fff"), ("xx", "#fff"), ("", "#777"), ("", "#ddd")


def curve_table(plot: Plot, scale: Scale) -> dict[str, Any]:
    """The band and each curve of a plot, at the speeds where a gauge was read."""
    digits = scale.decimals
    speeds = sorted({x for x, _ in plot.points})
    at = [_nearest(plot.x, n) for n in speeds]
    rows = [
        {"says": says, "cells": [f"{line[i]:.{digits}f}" for i in at]}
        for says, line in plot.lines.items()
    ]
    if plot.band:
        low, high = plot.band
        cells = [f"{low[i]:.{digits}f} to {high[i]:.{digits}f}" for i in at]
        rows.insert(0, {"says": plot.band_says, "cells": cells})
    read = [", ".join(f"{y:.{digits}f}" for x, y in plot.points if x == n) for n in speeds]
    rows.append({"says": "read", "cells": read})
    return {"title": plot.title, "speeds": [f"{n:.0f}" for n in speeds], "rows": rows}


def _nearest(values: Sequence[float], wanted: float) -> int:
    return min(range(len(values)), key=lambda i: abs(values[i] - wanted))


def bars_of(account: BudgetAccount, scale: Scale) -> Iterator[Bar]:
    """From the sound engine's pressure down to what the gauge reads."""

    def bar(says: str, size: float, start: float, end: float, look: tuple[str, str]) -> Bar:
        return Bar(says, scale.one(size), start / scale.factor, end / scale.factor, *look)

    down = account.healthy.mean
    yield bar("a sound engine of this kind", down, 0.0, down, SOUND)
    for each in sorted(account.shares, key=lambda s: -s.share.mean):
        size = each.share.mean
        yield bar(f"lost: {each.label}", size, down, down - size, LOST)
        down -= size
    if account.unexplained is None or account.rest is None or account.read is None:
        yield bar("left by the model", down, 0.0, down, READ)
        return
    left = account.unexplained.mean
    if abs(left) >= scale.least:
        yield bar(account.rest.says, abs(left), down, down - left, LEFT)
    yield bar("read on the gauge", account.read, 0.0, account.read, READ)

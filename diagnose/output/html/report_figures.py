"""The figures of the report with their numbers beside them: survey, budget, first start.

Imported by the report page. Each is None where the case has nothing to draw it from.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from diagnose.case.case import Case
from diagnose.circuit.budget import budget, worth_drawing
from diagnose.circuit.survey import survey
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError
from diagnose.output.documents.budget import BudgetAccount, budget_document
from diagnose.output.documents.survey import SurveyDocument, survey_document
from diagnose.output.html.charts import Bar, curves, waterfall
from diagnose.output.html.start_table import heat_told, heats, start_table
from diagnose.output.lines import percent
from diagnose.output.plot import Plot
from diagnose.output.scale import Scale, scale_of
from diagnose.signoff.sheet import Signoff
from diagnose.signoff.start import USUAL_HOT, Expected, FirstStart, first_start
from knowledge.book import Book
from knowledge.work import Phase

LEAST = 0.01  #: share of a condition worth a line
LOST, LEFT, READ, SOUND = ("////", "#fff"), ("xx", "#fff"), ("", "#777"), ("", "#ddd")


def of_survey(answer: Diagnosis) -> dict[str, Any] | None:
    """The readings against the circuit, as the answer heard them where it did."""
    case = answer.case
    if case.profile is None or not case.readings:
        return None
    try:
        found = answer.inference.survey or survey(case, answer.book)
    except UsageError:
        return None
    document = survey_document(found, case)
    return {
        "chart": curves(document.plots, "survey"),
        "calibrated": document.calibrated,
        "circuit": document.circuit,
        "rows": list(_conditions(document)),
        "unit": document.scale.unit,
        "panels": [_numbers(p, document.scale) for p in document.plots],
    }


def _conditions(document: SurveyDocument) -> Iterator[dict[str, str]]:
    for row in document.conditions:
        if row.share >= LEAST or not row.is_condition:
            yield {"says": row.says, "share": percent(row.share), "means": row.means}


def _numbers(plot: Plot, scale: Scale) -> dict[str, Any]:
    """The band and each curve at the speeds where a gauge was read."""
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


def of_budget(case: Case, book: Book) -> dict[str, Any] | None:
    """What explains the missing pressure, as a waterfall at each state of running."""
    if not worth_drawing(case):
        return None
    document = budget_document(budget(case, book), case)
    return {
        "accounts": [
            {
                "title": account.heading,
                "chart": waterfall(
                    list(bars_of(account, document.scale)), document.scale.unit, f"budget-{i}"
                ),
                "rows": [(row.says, row.figure) for row in account.rows],
                "verdict": account.verdict,
            }
            for i, account in enumerate(document.accounts)
        ],
        "exact": document.exact,
    }


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


def of_start(sheet: Signoff, book: Book) -> dict[str, Any] | None:
    """The first start: what was predicted, and what was read."""
    case = sheet.answer.case
    if not (case.started or sheet.of([Phase.FIRST_START, Phase.RUN_IN])):
        return None
    try:
        start = first_start(case, book)
    except UsageError:
        return None
    scale = scale_of(case)
    plots = [_expected(start, heat, scale) for heat in heats(start)]
    return {"chart": curves(plots, "start"), **start_table(start)}


def _at(start: FirstStart, heat: float) -> list[Expected]:
    return [e for e in start.expected if e.temperature == heat]


def _expected(start: FirstStart, heat: float, scale: Scale) -> Plot:
    """One heat: the band, its mean, and the readings taken nearest to it."""
    row, f = _at(start, heat), scale.factor
    every = heats(start)
    near = [
        (c.read.reading.rpm, c.read.reading.pressure / f)
        for c in start.compared
        if _nearest(every, c.read.reading.oil_temperature or USUAL_HOT) == every.index(heat)
    ]
    return Plot(
        title=f"Oil at {heat_told(heat)}",
        x_label="rpm",
        y_label=scale.unit,
        x=[e.rpm for e in row],
        lines={"predicted, mean": [e.pressure.mean / f for e in row]},
        points=near,
        band=([e.pressure.low / f for e in row], [e.pressure.high / f for e in row]),
        band_says="predicted, nine engines in ten",
    )

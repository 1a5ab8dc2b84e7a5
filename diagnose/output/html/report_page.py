"""The report of one job as a page: complaint, evidence, answer, repair, proof."""

from __future__ import annotations

from collections.abc import Mapping

from diagnose.output.documents.reasons import STRONGEST
from diagnose.output.documents.report import ReportDocument
from diagnose.output.html.charts import curves, waterfall
from diagnose.output.html.graph_picture import graph_svg, needs_landscape
from diagnose.output.html.page import rendered
from diagnose.output.html.report_figures import bars_of, curve_table
from diagnose.output.lines import clean

LEAST = 0.01  #: share of a condition worth a line


def report_html(document: ReportDocument, pictures: Mapping[str, str] | None = None) -> str:
    """Return the whole page. Every figure has its numbers beside it.

    ``pictures``: the address of each photo by its file; one without is named only.
    """
    graph, survey, budget, start = (
        document.graph,
        document.survey,
        document.budget,
        document.start,
    )
    return rendered(
        "report.html",
        name=clean(document.title).strip() or "case without a title",
        report=document,
        pictures=pictures or {},
        embedded=any(src.startswith("data:") for src in (pictures or {}).values()),
        strongest=STRONGEST,
        picture=graph_svg(graph) if graph and graph.columns > 1 else "",
        landscape=graph is not None and needs_landscape(graph),
        survey_chart=curves(survey.plots, "survey") if survey else "",
        survey_tables=[curve_table(p, survey.scale) for p in survey.plots] if survey else [],
        least=LEAST,
        budget_charts=[
            waterfall(list(bars_of(a, budget.scale)), budget.scale.unit, f"budget-{i}")
            for i, a in enumerate(budget.accounts)
        ]
        if budget
        else [],
        start_chart=curves(start.plots, "start") if start else "",
    )

"""``forecast``: the pressure after a repair, what can be repaired, and what a gauge should show."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from diagnose.cli import printing
from diagnose.cli.options import AsJson, ByName, CaseFile, Fixes, Whole
from diagnose.errors import UsageError

if TYPE_CHECKING:
    from diagnose.circuit.forecast import Forecast


def forecast(
    case: CaseFile,
    fix: Fixes = None,
    changes: ByName = None,
    target: Annotated[
        str,
        typer.Option(
            metavar="PRESSURE", help='Pressure wanted hot: "25 psi" at idle, or "2500 rpm 40 psi".'
        ),
    ] = "",
    at: Annotated[
        list[str] | None,
        typer.Option(
            metavar="STATE",
            help='Only what the gauge should show: "1200 rpm 95 C", "idle hot"; again for each.',
        ),
    ] = None,
    json: AsJson = False,
    whole: Whole = False,
) -> None:
    """Pressure over speed, cold and hot, before and after a planned repair; what it costs.

    It starts from what the gauge shows, or says that the model does not fit. Without a repair it
    ranks the smallest ones that meet the pressure wanted, with parts and minutes. Warns where a
    repair treats a symptom. With --at: what the gauge should show there, learned from this
    engine's own readings.

    Keys of --json: fits, misfit (says, readings, could_be, by_model, do_next), readings (entry,
    rpm, oil, read, error, before, fits), found, unlisted, set (name, to), speeds (rpm, hot_before,
    hot_after, cold_before, cold_after), targets (rpm, pressure, source, met_before, met_after,
    met_mended, read_below; enough and not_enough: fixes, change, from, to, way, symptom, assumed,
    met, after, parts, minutes, opens), buys, warnings, further (the reading worth most: rpm, oil, sound,
    narrows, half_now, half_then). --fix alone: can_fix (name, says, today, range, found).
    Pa, K, rpm; bands are low, mean, high.
    """
    from diagnose.case.loading import load
    from diagnose.circuit.fixes import UnknownFixError
    from diagnose.circuit.forecast import forecast as forecast_of
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.requests import parse_changes, parse_fixes, parse_target
    from diagnose.output.documents.forecast import forecast_document
    from diagnose.output.text.forecast import forecast_text
    from diagnose.output.text.forecast_brief import forecast_brief
    from knowledge.book import the_book

    if at:
        if changes or target or fix:
            raise UsageError("--at stands alone: it needs no --fix, no --set and no --target")
        _expected(case, at, json)
        return
    settings = parse_changes(changes or ())
    book = the_book()
    loaded = load(case, book)
    wanted = parse_target(target, loaded) if target else None
    if fix and "" in fix:
        _list_fixes(forecast_of(loaded, ()), json)
        return
    try:
        plans = parse_fixes(fix or (), loaded)
    except UnknownFixError:
        _list_fixes(forecast_of(loaded, ()), json)
        raise
    found = forecast_of(loaded, settings, wanted, plans=plans)
    may_run = Diagnosis(book, loaded).may_run
    document = forecast_document(found, may_run=may_run)
    printing.document(document, forecast_text if whole else forecast_brief, json=json)


def _list_fixes(before: Forecast, json: bool) -> None:
    """Print what can be put right on an engine, with today's values and ranges."""
    from diagnose.output.documents.fix_list import fix_list_document
    from diagnose.output.text.fix_list import fix_list_text

    document = fix_list_document(before)
    printing.document(document, fix_list_text, json=json)


def _expected(case: Path, at: list[str], json: bool) -> None:
    """Print what the gauge should show at each state."""
    from diagnose.case.loading import load
    from diagnose.circuit.expected import expected
    from diagnose.entry.requests import parse_at
    from diagnose.output.documents.expected import expected_document
    from diagnose.output.text.expected import expected_text
    from knowledge.book import the_book

    loaded = load(case, the_book())
    document = expected_document(expected(loaded, [parse_at(a, loaded) for a in at]), loaded)
    printing.document(document, expected_text, json=json)

"""What ``forecast`` prints by default: the table, whether it is enough, warnings.

Imported by ``cli``; ``text.forecast`` has the curve, the power and every change that would do.
"""

from __future__ import annotations

from diagnose.output.documents.forecast import ForecastDocument, ForecastTarget
from diagnose.output.lines import as_typed, percent, wrapped
from diagnose.output.text.forecast import forecast_text, planned_lines, table_lines
from diagnose.output.text.screen import Block, command_lines, on_screen

WARNINGS = 3  #: shown


def forecast_brief(document: ForecastDocument) -> str:
    """Return the forecast in about thirty lines, the next thing to do last."""
    if document.misfit is not None:
        return forecast_text(document)
    more = len(document.warnings) - WARNINGS
    blocks = [
        Block(wrapped(f"Forecast: {document.title or 'case without a title'}", 0, 2)),
        Block(planned_lines(document)),
        Block(table_lines(document)),
        Block([line for t in document.targets for line in _target(t, document)]),
        *(Block(wrapped(f"! {w.says}", 0, 2)) for w in document.warnings[:WARNINGS]),
        Block([f"  and {more} more: --full"] if more > 0 else [], space=False),
        *(Block(_enough(t, document), spare=2, space=False) for t in document.targets),
        Block(_next(document)),
    ]
    return on_screen(blocks)


def _target(target: ForecastTarget, document: ForecastDocument) -> list[str]:
    wanted = f"{document.scale.one(target.pressure)} at {target.rpm:.0f} rpm hot"
    if not document.settings:
        return wrapped(f"{wanted}: {percent(target.met_before)} of such engines meet it now.", 0, 2)
    return wrapped(
        f"{wanted}: {percent(target.met_after)} of such engines meet it after "
        f"(now: {percent(target.met_before)}).",
        0,
        2,
    )


def _enough(target: ForecastTarget, document: ForecastDocument) -> list[str]:
    """The smallest single change that is enough; the best one where none is."""
    if target.none_needed:
        return []
    wanted = document.scale.one(target.pressure)
    if target.enough:
        best = target.enough[0]
        note = ", though it treats a symptom" if best.symptom else ""
        return wrapped(f"Smallest change enough for {wanted}: {best.says}{note}.", 0, 2)
    nearest = f"; the best: {target.nearest.says}" if target.nearest else ""
    mended = percent(target.met_mended)
    return wrapped(
        f"No single change is enough for {wanted}{nearest}. Everything found put right: {mended} "
        "meet it.",
        0,
        2,
    )


def _next(document: ForecastDocument) -> list[str]:
    name = as_typed(document.case or "CASE")
    more = ["Curve, power, other changes: --full; off by up to 40 % without a [[baseline]]"]
    if document.settings:
        return [*more, *command_lines("When it is done", f"diagnose signoff {name}")]
    example = f'diagnose forecast {name} --set main_clearance="0.0025 in"'
    return [*more, *command_lines("Try a repair", example)]

"""What ``forecast`` prints by default: the table, whether it is enough, warnings.

``text.forecast`` has the curve, the power and every change that would do.
"""

from __future__ import annotations

from diagnose.output.documents.forecast import ForecastDocument
from diagnose.output.documents.forecast_targets import ForecastTarget
from diagnose.output.lines import as_typed, percent, wrapped
from diagnose.output.text.fix_ranking import ranking_lines
from diagnose.output.text.forecast import forecast_text, planned_lines, table_lines
from diagnose.output.text.screen import Block, command_lines, on_screen
from knowledge.circuit.fixes import LEAK

RANKED = 4  #: repairs shown
WARNINGS = 3  #: shown


def forecast_brief(document: ForecastDocument) -> str:
    """Return the forecast in about thirty lines, the next thing to do last."""
    if document.misfit is not None:
        return forecast_text(document)
    more = len(document.warnings) - WARNINGS
    blocks = [
        Block(wrapped(f"Forecast: {document.title or 'case without a title'}", 0, 2)),
        Block(planned_lines(document)),
        Block(table_lines(document) if document.settings else _now_lines(document)),
        Block(wrapped(f"! {document.other_size}", 0, 2) if document.other_size else []),
        Block([line for t in document.targets for line in _target(t, document)]),
        Block(wrapped(document.oil_until, 0, 2) if document.oil_until else []),
        *(Block(wrapped(f"! {w.says}", 0, 2)) for w in document.warnings[:WARNINGS]),
        Block([f"  and {more} more: --full"] if more > 0 else [], space=False),
        *(
            Block(ranking_lines(t, document.scale, RANKED, may_run=document.may_run))
            for t in document.targets[:1]
            if not document.settings
        ),
        Block(wrapped(document.read_next, 0, 2) if document.read_next else []),
        Block(_next_lines(document), space=not document.read_next),
    ]
    return on_screen(blocks)


def _now_lines(document: ForecastDocument) -> list[str]:
    """The engine as it is, at the speeds that were read or that a pressure is wanted for."""
    scale = document.scale
    wanted = {t.rpm: scale.figure(t.pressure) for t in document.targets}
    hot = {r.rpm: scale.figure(r.read) for r in document.readings if r.hot}
    lines = [
        f"Pressure in {scale.unit}, hot {document.hot_oil}, cold {document.cold_oil}",
        f"  {'rpm':>5}  {'wanted':>7}  {'gauge':>7}  {'hot now':>18}  {'cold now':>9}",
    ]
    for row in document.speeds:
        if row.rpm in wanted or row.rpm in hot:
            chilled = scale.figure(row.cold_before.mean) if row.fit_for_cold else "-"
            lines.append(
                f"  {row.rpm:5.0f}  {wanted.get(row.rpm, ''):>7}  {hot.get(row.rpm, ''):>7}"
                f"  {scale.ends(row.hot_before):>18}  {chilled:>9}"
            )
    return lines


def _target(target: ForecastTarget, document: ForecastDocument) -> list[str]:
    wanted = f"{document.scale.one(target.pressure)} at {target.rpm:.0f} rpm hot"
    if not document.settings:
        return []
    return wrapped(
        f"{wanted}: {percent(target.met_after)} of such engines meet it after "
        f"(now: {target.met_now}).",
        0,
        2,
    )


def _next_lines(document: ForecastDocument) -> list[str]:
    name = as_typed(document.case or "CASE")
    more = ["Curve, power, other changes: --full; off by up to 40 % without a [[baseline]]"]
    if document.settings:
        return [*more, *command_lines("When it is done", f"diagnose signoff {name}")]
    first = next((r.fixes for t in document.targets for r in t.enough), ("relief",))
    stands = not document.may_run and any(t.none_needed for t in document.targets[:1])
    if first == (LEAK.id,) or stands:
        return [*more, *command_lines("Find it first", f"diagnose review {name}")]
    example = f"diagnose forecast {name} " + " ".join(f"--fix {f}" for f in first)
    return [*more, *command_lines("Try a repair (--fix alone lists all)", example)]

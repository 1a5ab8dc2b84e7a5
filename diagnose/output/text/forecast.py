"""What ``forecast`` prints: pressures before and after, what they cost, and warnings."""

from __future__ import annotations

from diagnose.output.documents.forecast import ForecastDocument
from diagnose.output.lines import labelled, percent, together, width, wrapped
from diagnose.output.text.fix_ranking import ranking_lines
from diagnose.output.text.plot import plot_lines

ALL = 99


def forecast_text(document: ForecastDocument) -> str:
    """Return the forecast as lines for a terminal."""
    if document.misfit is not None or document.plot is None:
        return together(
            [
                wrapped(f"Forecast: {document.title or 'case without a title'}", 0, 2),
                planned_lines(document),
                misfit_lines(document),
            ]
        )
    return together(
        [
            wrapped(f"Forecast: {document.title or 'case without a title'}", 0, 2),
            planned_lines(document),
            table_lines(document),
            wrapped(f"! {document.other_size}", 0, 2) if document.other_size else [],
            plot_lines(document.plot, width()),
            _targets(document),
            _pump_power(document),
            _relief_gain(document),
            wrapped(document.oil_until, 0, 2) if document.oil_until else [],
            [line for w in document.warnings for line in wrapped(f"! {w.says}", 0, 2)],
            *(
                ranking_lines(t, document.scale, ALL, may_run=document.may_run)
                for t in document.targets
            ),
            wrapped(document.read_next, 0, 2) if document.read_next else [],
            _notes(),
        ]
    )


def planned_lines(document: ForecastDocument) -> list[str]:
    """Render what was found and what is planned."""
    lines, scale = [], document.scale
    for found in document.found:
        lines += labelled("fitted" if document.repaired else "found", found.says, 2, 12)
    if document.unlisted and document.unlisted.mean > scale.least:
        lost = scale.range(document.unlisted)
        may = "perhaps nothing, else" if document.unlisted.low < scale.least else "treated as"
        lines += labelled("not found", f"{lost} at hot idle: {may} a leak not found yet", 2, 12)
    for each in document.settings:
        lines += labelled("planned", each.says, 2, 12)
    if document.settings:
        lines += labelled("kept", document.kept, 2, 12)
    if not document.settings:
        lines += labelled("planned", "nothing: add --fix relief, --fix mains=0.0025 ...", 2, 12)
    return lines


def misfit_lines(document: ForecastDocument) -> list[str]:
    """Render why the model does not fit; nothing where it does."""
    misfit = document.misfit
    if misfit is None:
        return []
    lines = wrapped(misfit.says, 0, 2)
    for reading in misfit.readings:
        lines += wrapped(f"- {reading}", 2, 4)
    if misfit.could_be:
        lines += ["What could explain it"]
    for each in misfit.could_be:
        lines += wrapped(f"- {each.says}{'' if each.settles else ' (in part)'}", 2, 4)
    for place, line in enumerate(misfit.by_model):
        lines += wrapped(line if place else f"{line}:", 2 if place else 0, 4 if place else 2)
    return [*lines, *wrapped(f"Next: {misfit.do_next}", 0, 2)]


def table_lines(document: ForecastDocument) -> list[str]:
    """Render the pressures over speed before and after, hot and cold."""
    scale = document.scale
    wanted = {t.rpm: scale.figure(t.pressure) for t in document.targets}
    hot, cold = f"hot, {document.hot_oil}", f"cold, {document.cold_oil}"
    lines = [
        f"Pressure in {scale.unit}",
        f"{'':16}{hot:^33}{cold:^26}".rstrip(),
        f"  {'rpm':>5}  {'wanted':>7}{'before':>15} {'after':>16}{'before':>12} {'after':>12}",
    ]
    for row in document.speeds:
        chilled, chilled_after = "-", "-"
        if row.fit_for_cold:
            chilled, chilled_after = (
                scale.figure(band.mean) for band in (row.cold_before, row.cold_after)
            )
        lines.append(
            f"  {row.rpm:5.0f}  {wanted.get(row.rpm, ''):>7}"
            f"{scale.ends(row.hot_before):>15} {scale.ends(row.hot_after):>16}"
            f"{chilled:>12} {chilled_after:>12}"
        )
    return lines


def _targets(document: ForecastDocument) -> list[str]:
    lines = []
    for t in document.targets:
        lines += wrapped(
            f"{document.scale.one(t.pressure)} at {t.rpm:.0f} rpm hot, {t.says}: "
            f"{percent(t.met_after)} of plausible engines meet it "
            f"(before: {t.met_now})",
            0,
            2,
        )
    return lines


def _pump_power(document: ForecastDocument) -> list[str]:
    lines = ["Power to turn the pump"]
    for state, power in document.pump_power.items():
        lines += labelled(state, power, 2, 20)
    return lines


def _relief_gain(document: ForecastDocument) -> list[str]:
    gain, scale = document.buys, document.scale
    if gain is None:
        return []
    idle = (
        "nothing, and costs nothing: the pressure is below the relief setting there before and "
        "after"
        if abs(gain.idle) < scale.least
        else f"{scale.one(gain.idle)} more"
    )
    top = (
        f"{scale.one(gain.top)} more, {100 * gain.rod_feed:+.0f} % oil through the rod bearings, "
        f"{gain.horsepower:+.2f} hp to turn the pump"
    )
    return [
        f"What {scale.one(gain.setting)} more on the relief valve buys and costs",
        *labelled("hot idle", idle, 2, 20),
        *labelled(f"{gain.top_speed:.0f} rpm", top, 2, 20),
        *wrapped(
            "Common practice, no source: above roughly 500 to 550 hp, or with loose lifter bores, "
            "builders choose 80 psi over 60; below that the extra is only load on filter and "
            "drive.",
            2,
        ),
    ]


def _notes() -> list[str]:
    return wrapped(
        "Means; in brackets the range of nine plausible engines in ten. The model is good for "
        "trends; single figures may be off by some 40 % unless the case has a [[baseline]]. "
        "Cold figures stop where nobody should rev cold oil."
    )

"""What ``survey`` prints: shares, severities, curves against the readings, the next reading."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from diagnose.case.case import Case
from diagnose.circuit.fitting import HEALTHY, NEITHER
from diagnose.circuit.further_readings import sound_band
from diagnose.circuit.survey import Row, Survey
from diagnose.output.lines import headed, labelled, percent, together, width, wrapped
from diagnose.output.plot import Plot, drawn
from diagnose.output.scale import Scale, scale_of
from knowledge.units import PSI, TEMPERATURE, show

SHOWN = 6
LEAST = 0.01
POOR = 2.5  #: psi: known pressures missed by more are told


def survey(found: Survey, case: Case, may_run: bool = True) -> str:
    """The whole survey as text; ``may_run``: no alarm forbids running the engine."""
    scale = scale_of(case)
    return together(
        [
            _head(found, case, scale),
            _shares(found),
            *(drawn(p, width()) for p in plots(found, scale)),
            _further(found, scale, may_run),
            _notes(found, case, scale),
        ]
    )


def _head(found: Survey, case: Case, scale: Scale) -> list[str]:
    lines = wrapped(f"Hydraulic survey: {case.job.title or 'case without a title'}", 0, 2)
    lines += labelled("circuit", found.profile.says, 2, 12)
    held = "held to pressures known good" if found.calibrated else "not calibrated: no [[baseline]]"
    lines += labelled("", held, 2, 12)
    for i, r in enumerate(found.readings):
        heat = "oil not measured, taken as 90 C"
        if r.oil_temperature is not None:
            heat = show(round(r.oil_temperature - 273.15) + 273.15, TEMPERATURE)
        text = f"{r.rpm:.0f} rpm, {heat}: {scale.one(r.pressure)} ({r.gauge}, {r.tap})"
        lines += labelled("" if i else "readings", text, 2, 12)
    return lines


def _shares(found: Survey) -> list[str]:
    lines = wrapped("What explains the readings, had all been equally likely before", 0, 2)
    rows = [r for r in found.rows if r.share >= LEAST][:SHOWN]
    must = [r for r in found.rows if r.id in (HEALTHY, NEITHER) and r not in rows]
    for row in [*rows, *must]:
        name = "" if row.id in (HEALTHY, NEITHER) else f" [{row.id}]"
        lines += headed(f"  {percent(row.share):>6}  ", row.says + name)
        if row.shown and row in rows:
            lines += wrapped(f"then about {row.shown}", 10, 12)
    rest = sum(r.share for r in found.rows if r not in rows and r not in must)
    return [*lines, *headed(f"  {percent(rest):>6}  ", "all other conditions together")]


def plots(found: Survey, scale: Scale) -> list[Plot]:
    """Pressure over speed at each heat the oil was read at, for screen and picture."""
    factor = PSI / scale.factor
    says = {r.id: r.id.replace("_", " ") for r in found.rows}
    return [
        Plot(
            f"Oil at {c.temperature - 273.15:.0f} C",
            "rpm",
            scale.unit,
            [float(n) for n in c.rpm],
            {says[name]: [float(v) * factor for v in line] for name, line in c.lines.items()},
            [(n, p * factor) for n, p in c.read],
        )
        for c in found.curves
    ]


def pictured(found: Survey, scale: Scale) -> list[Plot]:
    """The same with the band a sound engine keeps to, for a picture."""
    factor = PSI / scale.factor
    return [
        replace(
            plot,
            band=(
                [float(v) * factor for v in low],
                [float(v) * factor for v in high],
            ),
            band_says="sound engine of this kind, nine in ten",
        )
        for plot, (low, high) in zip(
            plots(found, scale), (sound_band(found.sound, c) for c in found.curves), strict=True
        )
    ]


def _further(found: Survey, scale: Scale, may_run: bool) -> list[str]:
    more = found.further
    if more is None:
        return wrapped("No further gauge reading would separate what is still alike.")
    heat = show(round(more.temperature - 273.15) + 273.15, TEMPERATURE)
    lines = []
    if not may_run:
        lines = wrapped(
            "This engine is under a stop: diagnose review says why. Run it for no reading before "
            "that is lifted.",
        )
    lines += wrapped(
        f"Read next: {more.rpm:.0f} rpm with the oil at {heat}; it would show about", 0, 2
    )
    for name, (middle, spread) in more.would_show.items():
        error = f"{spread * PSI / scale.factor:.{max(scale.decimals, 0)}f}"
        text = f"{scale.one(middle * PSI)} (give or take {error}) if {_says(found, name)}"
        lines += wrapped(text, 2, 4)
    if more.separates < 0.25:
        lines += wrapped("They stay much alike there too; something has to be measured.", 2)
    return lines


def _says(found: Survey, name: str) -> str:
    row = next(r for r in found.rows if r.id == name)
    return "the circuit is sound" if name == HEALTHY else row.says


def _notes(found: Survey, case: Case, scale: Scale) -> list[str]:
    lines: list[str] = []
    if not found.calibrated:
        lines += wrapped(
            "Dimensions are typical ones, not this engine's. Pressures it showed when sound, as "
            "[[baseline]] entries with rpm, oil and pressure, make the answer sharper.",
        )
    worst = max((abs(float(m)) for m in found.baseline_missed), default=0.0)
    if worst > POOR:
        lines += wrapped(
            f"The sound engine misses a known pressure by {scale.one(worst * PSI)}: check the "
            "dimensions, the oil grade and the pressures given.",
        )
    if case.layout.id == "unknown" and case.engine.profile is None:
        lines += wrapped("The layout is not known; a classic four is assumed.")
    return lines


def data(found: Survey, case: Case) -> dict[str, Any]:
    """The same as plain data; pressures in psi, temperatures in C."""
    more = found.further
    return {
        "case": str(case.path) if case.path else None,
        "profile": found.profile.id,
        "calibrated": found.calibrated,
        "readings": [
            {
                "rpm": r.rpm,
                "oil_c": None if r.oil_temperature is None else r.oil_temperature - 273.15,
                "psi": r.pressure / PSI,
                "gauge": r.gauge,
                "tap": r.tap,
            }
            for r in found.readings
        ],
        "conditions": [_row(r, found) for r in found.rows],
        "curves": [
            {
                "oil_c": c.temperature - 273.15,
                "rpm": [float(n) for n in c.rpm],
                "psi": {name: [float(v) for v in line] for name, line in c.lines.items()},
                "read": [list(p) for p in c.read],
            }
            for c in found.curves
        ],
        "read_next": more
        and {
            "rpm": more.rpm,
            "oil_c": more.temperature - 273.15,
            "separates": more.separates,
            "would_show_psi": {k: list(v) for k, v in more.would_show.items()},
        },
        "baseline_missed_psi": [float(m) for m in found.baseline_missed],
    }


def _row(row: Row, found: Survey) -> dict[str, Any]:
    heard = found.likelihoods.get(row.id)
    return {
        "id": row.id,
        "says": row.says,
        "share": row.share,
        "severity": list(row.severity),
        "means": row.shown,
        "likelihood_ratio": row.ratio,
        "graph_ratio": heard and heard.if_present / heard.if_absent,
    }

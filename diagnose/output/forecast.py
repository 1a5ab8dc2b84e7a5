"""What ``forecast`` prints: pressures before and after, what they cost, what to be wary of."""

from __future__ import annotations

from typing import Any

import numpy as np

from diagnose.circuit.band import Band
from diagnose.circuit.deviations import Deviation
from diagnose.circuit.engine_model import grade_told
from diagnose.circuit.forecast import COLD, HORSEPOWER, Forecast, Side, Target
from diagnose.circuit.minimum_change import ENOUGH, MinimumChange, Remedy, minimum_change
from diagnose.circuit.repair_warnings import COLD_REVS, bought, repair_warnings
from diagnose.circuit.settings import Setting
from diagnose.output.as_json import as_json
from diagnose.output.lines import labelled, percent, together, width, wrapped
from diagnose.output.plot import Plot, drawn
from diagnose.output.scale import Scale, scale_of
from knowledge.units import TEMPERATURE, show


def forecast(told: Forecast, path: str) -> str:
    """The whole forecast as text."""
    scale = scale_of(told.case)
    blocks = [
        wrapped(f"Forecast: {told.case.job.title or 'case without a title'}", 0, 2),
        _planned(told, scale),
        _table(told, scale),
        drawn(plot(told, scale), width()),
        _targets(told, scale),
        _drive(told),
        _bought(told, scale),
        _wary(told),
        *(_enough(minimum_change(told, t), scale) for t in told.targets),
        _notes(told),
    ]
    return together(blocks)


def _planned(told: Forecast, scale: Scale) -> list[str]:
    lines = []
    for found in told.found:
        lines += labelled("found", _found(found), 2, 12)
    if told.unlisted and told.unlisted.mean > scale.least:
        lost = scale.range(told.unlisted)
        lines += labelled(
            "not found", f"{lost} at hot idle: kept as a leak nobody has found yet", 2, 12
        )
    for each in told.settings:
        lines += labelled("planned", _change(told, each), 2, 12)
    if not told.settings:
        lines += labelled("planned", 'nothing: add --set main_clearance="0.0025 in" ...', 2, 12)
    return lines


def _found(found: Deviation) -> str:
    return f"{found.says} {'(assumed) ' if found.assumed else ''}{found.found}"


def _change(told: Forecast, each: Setting) -> str:
    if each.parameter is None:
        assumed = "" if told.case.engine.oil else " (assumed)"
        return f"oil {grade_told(told.case)}{assumed} -> {each.text}"
    if each.id == "relief_shim":
        return f"{each.parameter.says} {each.text}"
    before, after = (
        each.parameter.shown(np.asarray(each.parameter.read(s.engine)), _unit(told, each))
        for s in (told.before, told.after)
    )
    return f"{each.parameter.says} {before} -> {after}"


def _unit(told: Forecast, each: Setting) -> str | None:
    """As it was measured, else as it was typed."""
    typed = None if each.relative else each.unit
    return typed or told.units.get(each.id)


def _table(told: Forecast, scale: Scale) -> list[str]:
    hot, cold = (show(t, TEMPERATURE) for t in (told.hot_temperature, COLD))
    wide = f"  {'rpm':>5}  {'wanted':>7}"
    wanted = {t.rpm: scale.figure(t.pressure) for t in told.targets}
    lines = [
        f"Pressure in {scale.unit}",
        f"{'':16}{f'hot, {hot}':^33}{f'cold, {cold}':^26}",
        f"{wide}{'before':>15} {'after':>16}{'before':>12} {'after':>12}",
    ]
    rows = _rows(told)
    for i, rpm in enumerate(told.speeds):
        before, after, chilled, chilled_after = rows[i]
        cells = f"{scale.ends(before):>15} {scale.ends(after):>16}"
        rest = f"{scale.figure(chilled.mean):>12} {scale.figure(chilled_after.mean):>12}"
        if rpm > COLD_REVS:
            rest = f"{'-':>12} {'-':>12}"
        lines.append(f"  {rpm:5.0f}  {wanted.get(rpm, ''):>7}{cells}{rest}")
    return lines


def plot(told: Forecast, scale: Scale) -> Plot:
    """Mean hot pressure over speed before and after, and what is wanted, on one scale."""
    rows = _rows(told)
    lines = {"before": [row[0].mean / scale.factor for row in rows]}
    if told.settings:
        lines["after"] = [row[1].mean / scale.factor for row in rows]
    return Plot(
        f"Hot, {show(told.hot_temperature, TEMPERATURE)}",
        "rpm",
        scale.unit,
        [float(rpm) for rpm in told.speeds],
        lines,
        [(t.rpm, t.pressure / scale.factor) for t in told.targets],
        points_say="wanted",
    )


def _rows(told: Forecast) -> list[tuple[Band, Band, Band, Band]]:
    sides = [
        np.asarray(s)
        for s in (
            told.before.hot.gallery_pressure,
            told.after.hot.gallery_pressure,
            told.before.cold.gallery_pressure,
            told.after.cold.gallery_pressure,
        )
    ]
    return [
        (
            Band.of(sides[0][:, i]),
            Band.of(sides[1][:, i]),
            Band.of(sides[2][:, i]),
            Band.of(sides[3][:, i]),
        )
        for i in range(len(told.speeds))
    ]


def _targets(told: Forecast, scale: Scale) -> list[str]:
    lines = []
    for t in told.targets:
        now, then = (told.chance(t, s) for s in (told.before, told.after))
        lines += wrapped(
            f"{scale.one(t.pressure)} at {t.rpm:.0f} rpm hot, {t.says}: "
            f"{percent(then)} of plausible engines meet it (before: {percent(now)})",
            0,
            2,
        )
    return lines


def _drive(told: Forecast) -> list[str]:
    last = len(told.speeds) - 1
    cold = int(np.flatnonzero(told.speeds <= COLD_REVS)[-1])
    lines = ["Power to turn the pump"]
    for name, at, chilled in (("hot", last, False), ("cold", cold, True)):
        before, after = (_power(told, s, at, chilled) for s in (told.before, told.after))
        lines += labelled(
            f"{name}, {told.speeds[at]:.0f} rpm", f"{_hp(before)} before, {_hp(after)} after", 2, 20
        )
    return lines


def _power(told: Forecast, side: Side, at: int, cold: bool) -> float:
    return float(np.mean(side.power(told.speeds, cold)[:, at]))


def _hp(watts: float) -> str:
    return f"{watts / HORSEPOWER:.2f} hp ({watts:.0f} W)"


def _bought(told: Forecast, scale: Scale) -> list[str]:
    buys = bought(told)
    if buys is None:
        return []
    idle = (
        "nothing, and costs nothing: the pressure is below the relief setting there before and after"
        if abs(buys.idle) < scale.least
        else f"{scale.one(buys.idle)} more"
    )
    return [
        f"What {scale.one(buys.setting)} more on the relief valve buys and costs",
        *labelled("hot idle", idle, 2, 20),
        *labelled(
            f"{buys.top_speed:.0f} rpm",
            f"{scale.one(buys.top)} more, {100 * buys.rod_feed:+.0f} % oil through the rod bearings, "
            f"{buys.horsepower:+.2f} hp to turn the pump",
            2,
            20,
        ),
        *wrapped(
            "Common practice, no source: above roughly 500 to 550 hp, or with loose lifter bores, "
            "builders choose 80 psi over 60; below that the extra is only load on filter and drive.",
            2,
        ),
    ]


def _wary(told: Forecast) -> list[str]:
    lines = []
    for m in repair_warnings(told) if told.settings else ():
        lines += wrapped(f"! {m.says}", 0, 2)
    return lines


def _enough(asked: MinimumChange, scale: Scale) -> list[str]:
    t = asked.target
    lines = wrapped(
        f"What single change would be enough for {scale.one(t.pressure)} at {t.rpm:.0f} rpm hot",
        0,
        2,
    )
    if asked.met >= ENOUGH:
        return [*lines, f"  none is needed: {percent(asked.met)} of plausible engines meet it"]
    for r in asked.remedies:
        note = ": treats a symptom" if r.symptom else ""
        lines += wrapped(
            f"- {_remedy(r)} ({100 * r.way:.0f} % of the largest sensible change){note}", 2, 4
        )
    if not asked.remedies:
        lines += wrapped("no single sensible change is enough", 2)
        if asked.nearest:
            lines += wrapped(f"furthest gets {_remedy(asked.nearest)}", 2, 4)
        lines += wrapped(
            f"with everything found put right {percent(asked.mended)} of plausible engines meet it",
            2,
            4,
        )
    return lines


def _remedy(r: Remedy) -> str:
    return f"{r.says} {r.start} -> {r.end}"


def _notes(told: Forecast) -> list[str]:
    return wrapped(
        "Means; in brackets what nine plausible engines in ten keep to. The model is good for "
        "trends; single figures may be off by some 40 % unless the case has a [[baseline]]. "
        "Cold figures stop where nobody should rev cold oil."
    )


def data(told: Forecast) -> dict[str, Any]:
    """Everything ``forecast`` shows, in SI."""
    rows = _rows(told)
    buys = bought(told)
    return {
        "case": str(told.case.path) if told.case.path else None,
        "unit": "Pa",
        "found": [{"finding": d.id, "found": d.found, "assumed": d.assumed} for d in told.found],
        "unlisted": as_json(told.unlisted) if told.unlisted else None,
        "set": [{"name": s.id, "to": s.text} for s in told.settings],
        "hot": told.hot_temperature,
        "cold": COLD,
        "speeds": [
            {
                "rpm": float(rpm),
                "hot_before": as_json(row[0]),
                "hot_after": as_json(row[1]),
                "cold_before": as_json(row[2]),
                "cold_after": as_json(row[3]),
                "watts_before": _power(told, told.before, i, False),
                "watts_after": _power(told, told.after, i, False),
            }
            for i, (rpm, row) in enumerate(zip(told.speeds, rows, strict=True))
        ],
        "targets": [_target(told, t) for t in told.targets],
        "buys": None
        if buys is None
        else {
            "setting": buys.setting,
            "idle": buys.idle,
            "top_speed": buys.top_speed,
            "top": buys.top,
            "rod_feed": buys.rod_feed,
            "watts": buys.power,
        },
        "warnings": [{"kind": m.kind, "says": m.says} for m in repair_warnings(told)]
        if told.settings
        else [],
    }


def _target(told: Forecast, target: Target) -> dict[str, Any]:
    asked = minimum_change(told, target)
    return {
        "rpm": target.rpm,
        "pressure": target.pressure,
        "says": target.says,
        "met_before": told.chance(target, told.before),
        "met_after": told.chance(target, told.after),
        "met_mended": asked.mended,
        "enough": [
            {
                "change": r.what,
                "from": r.start,
                "to": r.end,
                "way": r.way,
                "symptom": r.symptom,
                "met": r.met,
            }
            for r in asked.remedies
        ],
    }

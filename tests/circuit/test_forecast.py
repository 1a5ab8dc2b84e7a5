"""The forecast: what a repair brings, what it costs, and what to be wary of."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from diagnose.circuit.forecast import HORSEPOWER, Forecast, Target, forecast, with_settings
from diagnose.circuit.minimum_change import ENOUGH, minimum_change
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.circuit.repair_warnings import relief_cost, repair_warnings
from diagnose.circuit.settings import setting
from diagnose.errors import UsageError
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import SET_B
from diagnose.output.as_json import as_json
from diagnose.output.documents.forecast import forecast_document
from diagnose.output.scale import scale_of
from knowledge.units import INCH, PSI
from tests.support.circuits import KNOWN_GOOD, WORN, a_case, saved, text
from tests.support.command_line import call
from tests.support.complaints import CASES

IDLE = "700 rpm, 95 C, 8 psi"
WIDE = {"main_clearance": "0.0045 in", "rod_clearance": "0.0040 in"}
BIG = ('profile = "large_v8"', ("700 rpm, 95 C, 35 psi", "2500 rpm, 95 C, 58 psi"))


def forecast_of(*sets: str, measured: dict[str, str] | None = None, **more: object) -> Forecast:
    """A forecast of an invented case."""
    case = a_case(measured, **more)  # type: ignore[arg-type]
    return forecast(case, [setting(s) for s in sets])


def means(side_pressure: object) -> np.ndarray:
    return np.asarray(np.mean(np.asarray(side_pressure), axis=0)) / PSI


def kinds(each: Forecast) -> set[str]:
    return {m.kind for m in repair_warnings(each)}


@pytest.mark.parametrize(
    ("change", "brings"),
    [
        ("main_clearance=0.0025 in", True),
        ("rod_clearance=0.06 mm", True),
        ("pump_displacement=+25 %", True),
        ("oil=20W-50", True),
        ("oil=5W-20", False),
        ("main_clearance=0.0055 in", False),
        ("relief_seat_gap=0.5 mm", False),
        ("pump_side_clearance=0.008 in", False),
    ],
)
def test_direction_at_hot_idle(change: str, brings: bool) -> None:
    """Every change goes the way the trade knows it goes."""
    each = forecast_of(change, measured=WIDE)
    before, after = (means(s.hot.gallery_pressure)[0] for s in (each.before, each.after))
    assert after > before + 0.5 if brings else after < before - 0.3


def test_what_is_not_found_stays_as_a_leak() -> None:
    """Before agrees with the reading, and the repair does not mend an unfound leak."""
    each = forecast_of("main_clearance=0.0025 in", measured=WORN, readings=(IDLE,))
    without = forecast_of("main_clearance=0.0025 in", measured=WORN)
    assert means(each.before.hot.gallery_pressure)[0] == pytest.approx(8, abs=0.5)
    assert each.unlisted is not None
    assert each.unlisted.mean > 4 * PSI
    assert means(each.after.hot.gallery_pressure)[0] < means(without.after.hot.gallery_pressure)[0]


@pytest.mark.parametrize("engine", [None, BIG[0]], ids=["v8", "large v8"])
def test_20_psi_more_costs_a_horsepower_or_two_at_most__common_practice_no_source(
    engine: str | None,
) -> None:
    """Common practice, no source: 20 psi more costs of the order of a horsepower, no more than two."""
    more: dict[str, Any] = {"engine": engine, "baseline": BIG[1]} if engine else {}
    each = forecast_of("relief_setting=+20 psi", **more)
    buys = relief_cost(each)
    assert buys is not None
    assert 10 * PSI < buys.top <= 20.5 * PSI
    assert buys.horsepower < 2
    after = each.after.engine
    flow = np.mean(after.pump_displacement * after.pump_drive_ratio) * buys.top_speed / 60
    hydraulic = buys.top * float(flow)  # W: pressure times flow
    assert hydraulic < buys.watts < 1.6 * hydraulic, "and the pump's own losses besides"
    assert buys.horsepower == pytest.approx(buys.watts / 745.7, rel=1e-3)


@pytest.mark.parametrize("shim", ["1.2 mm", "0.06 in", "2 mm"])
def test_thin_shims_raise_regulated_pressure_5_to_10_psi__common_practice_no_source(
    shim: str,
) -> None:
    """Common practice, no source: a thin shim or washer is worth 5 to 10 psi at speed."""
    each = forecast_of(f"relief_shim={shim}")
    gain = means(each.after.hot.gallery_pressure) - means(each.before.hot.gallery_pressure)
    fast = each.speeds >= 4000
    assert np.all((gain[fast] > 4) & (gain[fast] < 10))


def test_80_psi_over_60_buys_film_at_speed_and_nothing_at_idle__common_practice_no_source() -> None:
    """Common practice, no source: above roughly 500-550 hp, or with loose lifter bores, builders
    choose 80 psi over 60. It buys pressure and rod feed at speed for a fraction of a
    horsepower, and costs nothing at hot idle, below the setting."""
    loose = "[engine.dimensions]\n" + 'lifter_clearance = "0.0025 in"\nrelief_setting = "60 psi"'
    each = forecast_of(
        "relief_setting=80 psi", engine=f"{BIG[0]}\n{loose}", baseline=("700 rpm, 95 C, 30 psi",)
    )
    buys = relief_cost(each)
    assert buys is not None
    assert buys.idle == pytest.approx(0, abs=0.3 * PSI)
    assert buys.top > 12 * PSI
    assert buys.rod_feed > 0.08
    assert buys.horsepower < 2
    idle = each.before.power(each.speeds)[:, 0], each.after.power(each.speeds)[:, 0]
    assert np.mean(idle[1] - idle[0]) < 0.01 * HORSEPOWER


def test_a_bigger_pump_over_wide_bearings_treats_a_symptom__common_practice_no_source() -> None:
    """Common practice, no source: it is warned of; over mended bearings it is not."""
    assert "symptom" in kinds(forecast_of("pump_displacement=+25 %", measured=WIDE))
    mended = ("main_clearance=0.0025 in", "rod_clearance=0.0025 in")
    assert "symptom" not in kinds(forecast_of("pump_displacement=+25 %", *mended, measured=WIDE))
    assert "symptom" not in kinds(forecast_of(*mended, measured=WIDE))
    assert "symptom" in kinds(forecast_of("relief_shim=3 mm", "oil=20W-50", measured=WIDE))


def test_raising_pressure_over_an_unfound_leak_treats_the_symptom() -> None:
    """A bigger pump hides what is still missing."""
    assert "symptom" in kinds(forecast_of("pump_displacement=+25 %", readings=(IDLE,)))


def test_a_bigger_pump_through_the_same_thin_tube_cavitates() -> None:
    """What wide bearings swallow must come through the pickup; sound ones never ask for it."""
    tube = '[engine.dimensions]\npickup_tube = "11 mm"'
    assert "cavitation" in kinds(forecast_of("pump_displacement=+60 %", measured=WIDE, engine=tube))
    assert "cavitation" not in kinds(forecast_of("pump_displacement=+60 %", engine=tube))
    assert "cavitation" not in kinds(forecast_of("pump_displacement=+20 %", measured=WIDE))


def test_a_blocked_valve_overtaxes_filter_and_drive() -> None:
    """Setting far up: what filter and drive see cold is said."""
    assert {"filter", "drive"} <= kinds(forecast_of("relief_setting=130 psi"))
    assert not kinds(forecast_of("relief_setting=+3 psi")) & {"filter", "drive"}


def test_too_tight_and_too_near() -> None:
    """Common practice: a tiny pickup gap throttles, three eighths of an inch is ample."""
    assert "pickup" in kinds(forecast_of("pickup_gap=1 mm"))
    assert "pickup" not in kinds(forecast_of("pickup_gap=3/8 in"))
    assert "tight" in kinds(forecast_of("main_clearance=0.0006 in"))


def test_fresh_oil_does_not_close_the_fuels_way_in() -> None:
    """The repair must reach the cause."""
    each = forecast_of("oil=10W-40", measured={"fuel_share": "8 %"})
    assert any("gets in" in m.says for m in repair_warnings(each))
    assert not any("thicker" in m.says for m in repair_warnings(each))


def test_enough_is_enough_and_no_smaller_step_is() -> None:
    """The change named meets the target in nine engines of ten, and one step less does not."""
    each = forecast_of(measured=WIDE)
    target = Target(700.0, 15 * PSI, "wanted")
    asked = minimum_change(each, target)
    assert asked.remedies
    assert asked.remedies == tuple(sorted(asked.remedies, key=lambda r: (r.symptom, r.way)))
    for r in asked.remedies:
        assert r.met >= ENOUGH
        if r.what in CIRCUIT_PARAMETERS:
            again = with_settings(each.before.engine, [setting(f"{r.what}={r.end}")])
            state = solve(again, np.array([700.0]), each.hot_temperature)
            assert np.mean(np.asarray(state.gallery_pressure) >= target.pressure) > 0.7
    assert not any(r.what == "relief_setting" for r in asked.remedies), "no spring mends idle"


def test_enough_where_nothing_is_needed_and_where_nothing_helps() -> None:
    """Both ends are said plainly."""
    each = forecast_of(measured=WIDE)
    assert minimum_change(each, Target(700.0, 1 * PSI, "wanted")).remedies == ()
    beyond = minimum_change(each, Target(700.0, 150 * PSI, "wanted"))
    assert beyond.remedies == ()
    assert beyond.met < ENOUGH


def test_settings() -> None:
    """Units at the door; relative and added; nearest names."""
    assert setting("cam-clearance=0.1 mm").id == "cam_bearing_clearance"
    half = setting("pump_displacement=-50 %").applied_to(SET_B)
    assert half.pump_displacement == pytest.approx(0.5 * np.asarray(SET_B.pump_displacement))
    up = setting("relief_setting=+5 psi").applied_to(SET_B)
    assert up.relief_setting == pytest.approx(55 * PSI)
    assert setting("main_clearance=0.0030 in").applied_to(SET_B).mains[0].clearance_diametral == (
        pytest.approx(0.0030 * INCH)
    )


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("main_clearence=1 mm", "main_clearance"),
        ("main_clearance=3", "no length"),
        ("main_clearance", "name=value"),
        ("main_clearance=", "name=value"),
        ("main_clearance=5 in", "expected"),
        ("oil=11W-40", "SAE J300"),
        ("pump_displacement=-100 %", "leaves nothing"),
        ("relief_setting=nan psi", "no pressure"),
        ("=", "name=value"),
        ("zzz=1", "It may be"),
    ],
)
def test_a_setting_that_cannot_be_set_is_refused(typed: str, says: str) -> None:
    """One line with the right way."""
    with pytest.raises(UsageError, match=says):
        setting(typed)


def test_command(tmp_path: Path) -> None:
    """Text and data, errors and the target."""
    path = saved(tmp_path, text(WORN, (IDLE,)))
    words = ("--set", "main_clearance=0.0025 in", "--set", "relief_setting=80 psi")
    done = call("forecast", path, "--full", *words)
    assert done.code == 0, done.err
    words_out = " ".join(done.out.split())
    assert "costs nothing" in words_out
    assert "500 to 550 hp" in words_out
    assert "Smallest repairs for" in words_out
    assert max(map(len, done.out.splitlines())) <= 80
    data = json.loads(call("forecast", path, *words, "--target", "2500 rpm 40 psi", "--json").out)
    assert data["schema"] == 1
    assert data["targets"][0]["rpm"] == 2500
    assert call("forecast", path, "--set", "main=1").code == 2
    assert call("forecast", path, "--target", "5 apples").code == 2
    assert call("forecast", path, "--set", "oil=30", "--set", "oil=40").code == 2
    assert call("forecast", path).code == 0


def test_no_circuit_no_forecast(tmp_path: Path) -> None:
    """A layout without figures is an error with the way out, not a guess."""
    path = saved(tmp_path, text().replace("distributor_v8", "dry_sump_race"))
    for command in ("forecast", "budget"):
        done = call(command, path)
        assert done.code == 2
        assert "own figures" in done.err


def test_the_unit_of_the_case(tmp_path: Path) -> None:
    """A case written in bar is answered in bar."""
    path = saved(tmp_path, text(WORN, ("700 rpm, 95 C, 0.6 bar",), KNOWN_GOOD))
    assert "Pressure in bar" in call("forecast", path).out


def test_the_plot_is_the_table() -> None:
    """The curves of the terminal's plot are the means that --json gives, with what is wanted."""
    each = forecast_of("main_clearance=0.0025 in", measured=WIDE)
    scale = scale_of(each.case)
    document = forecast_document(each)
    shown, rows = document.plot, as_json(document)["speeds"]
    assert shown is not None
    assert list(shown.lines) == ["before", "after"]
    for name, line in shown.lines.items():
        for value, row in zip(line, rows, strict=True):
            assert value * scale.factor == pytest.approx(row[f"hot_{name}"]["mean"], rel=1e-9)
    assert shown.points == [(t.rpm, t.pressure / scale.factor) for t in each.targets]


def test_the_plot_fits_the_screen() -> None:
    lines = call("forecast", CASES / "dunlin.toml", "--full").out.splitlines()
    assert any("O wanted" in line for line in lines)
    assert max(map(len, lines)) <= 80

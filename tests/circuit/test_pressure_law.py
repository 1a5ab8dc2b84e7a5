"""The law of one engine's pressure: real engines, physics, what readings settle."""

from __future__ import annotations

import json
import math
import tomllib
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose import CaseBuilder
from diagnose.circuit.pressure_law import (
    OVERRIDE,
    PRIOR,
    SLOPE,
    TOGETHER,
    WIDTH,
    At,
    PressureLaw,
    Shown,
    learn,
    pressure,
)
from diagnose.entry.requests import parse_at
from diagnose.errors import UsageError
from diagnose.hydraulics.oil import Oil
from knowledge.pressure.gauge import USUAL_HOT
from knowledge.units import PSI
from tests.studies.law_of_circuits import fitted
from tests.studies.real_engines import crps, regression
from tests.support.command_line import call

OIL = Oil.of_grade("15W-40")
DATA = Path(__file__).parents[1] / "data" / "real_engines.toml"
ZERO_C = np.array([0.0, 273.15, 0.0])
ENGINES = tomllib.loads(DATA.read_text("utf-8"))["engine"]
CASE = CaseBuilder(limits={"idle_speed": "800 rpm"}).build()


def _learned(known: list[list[float]]) -> PressureLaw:
    return learn([Shown(At(n, t + 273.15), p * PSI, 1.2 * PSI) for n, t, p in known], OIL)


@pytest.mark.parametrize("engine", ENGINES, ids=[e["name"] for e in ENGINES])
def test_another_run_of_a_real_engine_is_predicted(engine: dict[str, Any]) -> None:
    law = _learned(engine["known"])
    asked = np.array(engine["asked"]) + ZERO_C
    each = law.pressures([At(n, t) for n, t, _ in asked]) / PSI
    off = np.median(each, axis=0) - asked[:, 2]
    rms = float(np.sqrt(np.mean(off**2)))
    known = np.array(engine["known"]) + ZERO_C
    peer = regression(known, asked) - asked[:, 2]
    assert rms <= 4.0
    assert rms < float(np.sqrt(np.mean(peer**2)))
    low, high = np.percentile(each, [5, 95], axis=0)
    assert np.mean((low <= asked[:, 2]) & (asked[:, 2] <= high)) >= 0.8


drawn = st.lists(st.floats(-1.5, 1.5), min_size=7, max_size=7).map(
    lambda z: (PRIOR + 0.5 * np.array(z))[None]
)


@settings(max_examples=60)
@given(
    drawn, st.floats(400, 6000), st.floats(1.05, 2.0), st.floats(0.8, 12.0), st.floats(1.05, 3.0)
)
def test_faster_and_thicker_never_lower_the_pressure(
    law: Any, rpm: float, faster: float, thickness: float, thicker: float
) -> None:
    here = pressure(law, np.array([rpm]), np.array([thickness]))[0, 0]
    assert pressure(law, np.array([rpm * faster]), np.array([thickness]))[0, 0] >= here - 1e-6
    assert pressure(law, np.array([rpm]), np.array([thickness * thicker]))[0, 0] >= here - 1e-6


@settings(max_examples=60)
@given(drawn, st.floats(400, 6000), st.floats(0.8, 12.0))
def test_what_leaves_at_the_pressure_is_the_speed(law: Any, rpm: float, thick: float) -> None:
    found = float(pressure(law, np.array([rpm]), np.array([thick]))[0, 0])
    n40, share, film, slope, opens, over, off = law[0]
    real = found - off
    inertial = 1.0 / (1.0 + math.exp(-share))
    a, b = (1.0 - inertial) * thick ** min(max(film, 0.1), 2.0), inertial
    turns = (-a + math.sqrt(a * a + 4.0 * b * real / 40.0)) / (2.0 * b) if real > 0 else 0.0
    relief = math.exp(slope) * 2.0 * np.logaddexp(0.0, (real - math.exp(opens)) / 2.0)
    leaves = math.exp(n40) * turns + relief * thick ** -min(max(over, 0.0), 1.5)
    assert found == 0.0 or real >= 299.0 or leaves == pytest.approx(rpm, rel=1e-4)


def test_thin_oil_bends_up_with_speed_and_thick_oil_is_straight() -> None:
    """Below the relief valve a hot engine's pressure grows faster than its speed, as an orifice's."""
    law = PRIOR.copy()
    law[4] = math.log(290.0)
    hot, cold = (
        pressure(law[None], np.array([600.0, 1200.0]), np.array([m]))[0] for m in (1.0, 20.0)
    )
    assert 2.0 < cold[1] / cold[0] < hot[1] / hot[0] < 4.0


def test_thick_oil_stands_above_the_relief_setting() -> None:
    fast = np.array([3500.0])
    hot, cold = (float(pressure(PRIOR[None], fast, np.array([m]))[0, 0]) for m in (1.0, 20.0))
    assert 1.1 * math.exp(PRIOR[4]) < cold
    assert hot < cold


def test_no_draw_stays_behind_in_a_lesser_peak() -> None:
    """All readings at the relief valve is such a peak."""
    known = [
        [3555, 91.1, 16.8],
        [4581, 91.0, 23.9],
        [6580, 91.2, 39.5],
        [6514, 91.4, 38.9],
        [4535, 91.7, 23.1],
        [2894, 92.3, 12.6],
        [2893, 92.5, 12.6],
        [6184, 92.8, 35.4],
        [2921, 93.4, 12.5],
    ]
    for seed in (5, 6, 7):
        shown = [Shown(At(n, t + 273.15), p * PSI, 1.5 * PSI) for n, t, p in known]
        assert learn(shown, OIL, seed).draws[:, 0].std() < 0.15, "the speed at 40 psi is settled"


def test_without_readings_the_draws_are_the_prior() -> None:
    draws = learn([], OIL).draws
    assert draws.mean(axis=0) == pytest.approx(PRIOR, abs=0.15 * float(WIDTH.max()))
    assert draws.std(axis=0) == pytest.approx(WIDTH, rel=0.15)
    assert np.corrcoef(draws[:, SLOPE], draws[:, OVERRIDE])[0, 1] == pytest.approx(
        TOGETHER, abs=0.12
    )


def test_a_wide_relief_valve_is_overridden_more_in_the_circuits_too() -> None:
    found, misses = fitted(["distributor_v8", "inline_six_diesel", "overhead_cam_vee"], 10)
    assert np.corrcoef(found[:, SLOPE], found[:, OVERRIDE])[0, 1] > 0.25
    assert np.median(misses) < 3.0, "the law follows the circuits"


def test_films_and_metal_lag_so_that_cold_oil_says_less() -> None:
    """The same reading at the same speed narrows the band less where the oil was cold."""
    widths = []
    for kelvin in (283.15, USUAL_HOT):
        band = learn([Shown(At(800.0, kelvin), 40 * PSI, PSI)], OIL).band(At(800.0, kelvin))
        widths.append(band.high - band.low)
    assert widths[0] > 1.2 * widths[1]


def test_readings_narrow_the_band_where_they_were_taken() -> None:
    idle, fast = At(800.0, USUAL_HOT), At(2500.0, USUAL_HOT)
    none = learn([], OIL)
    one = learn([Shown(idle, 22 * PSI, 1.5 * PSI)], OIL)
    both = learn([Shown(idle, 22 * PSI, 1.5 * PSI), Shown(fast, 52 * PSI, 1.5 * PSI)], OIL)

    def wide(law: PressureLaw, state: At) -> float:
        band = law.band(state)
        return (band.high - band.low) / PSI

    assert wide(one, idle) < 0.5 * wide(none, idle)
    assert wide(both, fast) < 0.7 * wide(one, fast)
    assert one.band(idle).low < 22 * PSI < one.band(idle).high
    assert one.settles_most([fast], [idle, fast]) == fast


def test_a_vague_state_counts_less() -> None:
    exact = learn([Shown(At(800.0, USUAL_HOT), 10 * PSI, 1.5 * PSI)], OIL).band(
        At(800.0, USUAL_HOT)
    )
    vague = learn([Shown(At(800.0, USUAL_HOT, 300.0, 20.0), 10 * PSI, 1.5 * PSI)], OIL).band(
        At(800.0, USUAL_HOT)
    )
    assert vague.high - vague.low > 1.2 * (exact.high - exact.low)


BASELINES = """
[[baseline]]
no = 1
rpm = "700 rpm"
oil = "90 C"
pressure = "25 psi"

[[baseline]]
no = 2
rpm = "2500 rpm"
oil = "90 C"
pressure = "55 psi"
"""


def test_an_engine_and_its_baseline_are_enough(tmp_path: Path) -> None:
    path = tmp_path / "dunlin.toml"
    path.write_text('schema = 1\n[engine]\noil = "15W-40"\n' + BASELINES)
    done = call("forecast", path, "--at", "700 rpm 90 C", "--at", "1500 rpm 90 C", "--json")
    found = json.loads(done.out)
    assert found["learned_from"] == "baseline"
    first, second = (row["psi"] for row in found["at"])
    assert first["low"] < 25 < first["high"]
    assert first["mean"] < second["mean"] < 55
    assert [row["rpm"] for row in found["at"]] == [700.0, 1500.0]
    assert [row["oil_c"] for row in found["at"]] == [90.0, 90.0]


def test_nothing_to_learn_from_is_one_line(tmp_path: Path) -> None:
    path = tmp_path / "dunlin.toml"
    path.write_text("schema = 1\n")
    done = call("forecast", path, "--at", "idle hot")
    assert done.code == 2
    assert done.err.count("\n") == 1
    assert "nothing to learn from" in done.err


@pytest.mark.parametrize(
    ("text", "rpm", "celsius"),
    [
        ("1200 rpm 95 C", 1200, 95),
        ("1200 rpm, 203 F", 1200, 95),
        ("idle hot", 800, 90),
        ("2500 rpm cold", 2500, 20),
        ("600 rev/min 80 °C", 600, 80),
        ("2900 rpm coolant 75 C", 2900, 60),
    ],
)
def test_states_as_people_write_them(text: str, rpm: float, celsius: float) -> None:
    at = parse_at(text, CASE)
    assert at.rpm == pytest.approx(rpm)
    assert at.temperature == pytest.approx(celsius + 273.15, abs=0.01)


@given(st.text(max_size=40))
@settings(max_examples=100)
def test_any_text_is_a_state_or_refused(text: str) -> None:
    try:
        at = parse_at(text, CASE)
    except UsageError:
        return
    assert 100 <= at.rpm <= 15_000
    assert 243.15 <= at.temperature <= 433.15


@pytest.mark.parametrize("seen", [0.0, 0.7, -2.5])
def test_crps_of_normal_draws_is_the_closed_form(seen: float) -> None:
    """Gneiting & Raftery, Journal of the American Statistical Association 102 (2007), 359-378."""
    draws = np.random.default_rng(3).standard_normal((20_000, 1))
    below = 0.5 * (1 + math.erf(seen / math.sqrt(2)))
    dense = math.exp(-(seen**2) / 2) / math.sqrt(2 * math.pi)
    wanted = seen * (2 * below - 1) + 2 * dense - 1 / math.sqrt(math.pi)
    assert crps(draws, np.array([seen]))[0] == pytest.approx(wanted, abs=0.02)
    assert crps(np.array([[4.0]]), np.array([seen]))[0] == pytest.approx(4.0 - seen)

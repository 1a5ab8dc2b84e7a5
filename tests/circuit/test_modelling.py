"""A case's engine in figures: profiles, overrides, calibration, spread, faults, trade facts."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.circuit.calibration import calibrated, sound_points, widths
from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import Point, baseline_points, healthy, shown
from diagnose.circuit.plausible_engines import UNCERTAIN, conditioned, drawn, spread, varied
from diagnose.entry.bare_figures import NO_UNITS
from diagnose.errors import BadCaseError, UsageError
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil
from diagnose.hydraulics.ranges import FloatArray
from knowledge.book import the_book
from knowledge.engines.dimensions import CIRCUIT
from knowledge.engines.profiles import DISTRIBUTOR_V8, LARGE_V8, Profile
from knowledge.units import GALLON_US, INCH, PSI
from tests.support.circuits import engine_like

BOOK = the_book()
PROFILES = list(BOOK.profiles.values())
HOT, WARM = 368.15, 323.15
RUNNING = [  # cold, hot; idle to full speed
    Point(n, t, 0.0) for t in (288.15, 333.15, HOT) for n in (700, 1500, 3000)
]


def case(text: str) -> Case:
    return from_text("schema = 1\n" + text, None, BOOK)


V8 = engine_like(DISTRIBUTOR_V8)


# ----------------------------------------------------------------------------------- profiles


@pytest.mark.parametrize("profile", PROFILES, ids=lambda p: p.id)
def test_a_profile_is_plausible(profile: Profile) -> None:
    """Figures in their range with a mark, and about the pressures it is known by."""
    assert set(profile.numbers) == set(CIRCUIT)
    for name, (value, source) in profile.numbers.items():
        low, high = CIRCUIT[name].plausible
        assert low <= value <= high, name
        assert source.key
    for rpm, heat, least, usual in profile.specified:
        shows = float(shown(engine_like(profile), [Point(rpm, heat, 0.0)])[0])
        assert shows > least
        assert shows == pytest.approx(usual, abs=6 * PSI)


def test_every_layout_in_a_profile_exists_and_is_in_one_profile() -> None:
    named = [n for p in PROFILES for n in p.layouts]
    assert len(named) == len(set(named))
    assert set(named) <= set(BOOK.layouts)
    assert {p.id for p in PROFILES} >= {"distributor_v8", "skew_gear_four", "crank_nose_four"}
    assert len(PROFILES) >= 6


# -------------------------------------------------------------------------------- trade facts


def test_twenty_gallons_a_minute_at_2500_is_a_large_v8s_pump() -> None:
    """Common practice, no source; speed of the pump itself, 5000 rpm of the crank."""
    engine = engine_like(LARGE_V8)
    flow = float(solve(engine, 5000.0, HOT).flows.theoretical)
    assert flow * 60 / GALLON_US == pytest.approx(20.0, rel=0.1)
    usual = float(solve(V8, 5000.0, HOT).flows.theoretical)
    assert usual * 60 / GALLON_US < 16


@pytest.mark.parametrize("profile", PROFILES, ids=lambda p: p.id)
def test_ten_psi_for_each_thousand_rpm(profile: Profile) -> None:
    """Common practice, no source: every sound profile keeps it over the speeds it is known at."""
    top = min(profile.specified[-1][0] * 1.15, 5000.0)
    rpm = np.linspace(1200, top, 8)
    shows = shown(engine_like(profile), [Point(float(n), 363.15, 0.0) for n in rpm])
    assert np.all(shows / PSI >= rpm / 100 * 0.95)


def test_three_eighths_of_pickup_gap_is_ample_and_tiny_is_not() -> None:
    """Common practice, no source: 3/8 in costs nothing at any speed, tiny costs it at speed.

    The relief valve dumps into the sump here, so that all the pump moves comes past the gap.
    """
    at = [Point(n, HOT, 0.0) for n in (700, 3000, 5000)]
    dumps = replace(V8, relief_return_share=0.0)
    wide, usual, tiny = (
        shown(replace(dumps, pickup_gap=gap * INCH), at) / PSI for gap in (1.0, 3 / 8, 0.012)
    )
    assert np.all(np.abs(wide - usual) < 0.2)
    assert tiny[0] == pytest.approx(usual[0], abs=1.0)
    assert np.all(tiny[1:] < usual[1:] - [4, 15])


# ------------------------------------------------------------------------- what a case states


def test_figures_of_the_case_override_the_profile() -> None:
    """Own dimension before limit before profile; the clearance is on the diameter."""
    stated = case(
        '[engine]\nlayout = "distributor_v8"\noil = "SAE 30"\n'
        '[engine.limits]\nrelief_setting = "60 psi"\n'
        '[engine.dimensions]\nmain_clearance = "0.003 in"\npump_displacement = "25 ml"\n'
    )
    engine = healthy(stated)
    assert engine.mains[0].clearance_diametral == pytest.approx(0.003 * INCH)
    assert engine.pump_displacement == pytest.approx(25e-6)
    assert engine.relief_setting == pytest.approx(60 * PSI)
    assert engine.oil == Oil.of_grade("30")
    assert engine.rods[0].diameter == DISTRIBUTOR_V8.numbers["rod_diameter"][0]


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ('[engine]\nprofile = "distributor_v9"', "Did you mean 'distributor_v8'"),
        ('[engine.dimensions]\nmain_clearence = "0.003 in"', "Did you mean 'main_clearance'"),
        ('[engine.dimensions]\nmain_clearance = "3 in"', "expected"),
        ('[engine.dimensions]\nmain_clearance = "0.003"', "0.0045 in"),
        ('[[baseline]]\nno = 1\nrpm = "700 rpm"\noil = "90 C"', "pressure is missing"),
        ('[[baseline]]\nno = 1\nrpm = "700 rpm"\noil = "95 C"\npressure = "30"', "8 psi"),
        ('[[baseline]]\nno = 1\nrmp = "700 rpm"', "Did you mean 'rpm'"),
    ],
)
def test_an_error_names_the_nearest_right_word(text: str, says: str) -> None:
    with pytest.raises(BadCaseError, match=says):
        case(text)


def test_no_circuit_goes_with_a_dry_sump() -> None:
    with pytest.raises(UsageError, match="not computed"):
        healthy(case('[engine]\nlayout = "dry_sump_race"'))
    named = case('[engine]\nlayout = "dry_sump_race"\nprofile = "large_v8"')
    assert healthy(named).pump_displacement == LARGE_V8.numbers["pump_displacement"][0]


def test_a_baseline_entry_is_corrected_like_any_other() -> None:
    known = case(
        '[[baseline]]\nno = 1\nrpm = "700 rpm"\noil = "95 C"\npressure = "3 psi"\n'
        '[[baseline]]\nno = 2\nreplaces = 1\nrpm = "700 rpm"\noil = "95 C"\npressure = "30 psi"\n'
        'error = "1 psi"\ntap = "pump"\nnote = "last known good"\n'
    )
    (point,) = baseline_points(known)
    assert point.pressure == pytest.approx(30 * PSI)
    assert point.error == pytest.approx(PSI)
    assert point.at_pump


# -------------------------------------------------------------------- calibration and spread


def bands(engine: Engine, points: Sequence[Point]) -> FloatArray:
    """What plausible engines show: 5, 50 and 95 % [psi], shape (3, points)."""
    return np.percentile(shown(engine, points) / PSI, [5, 50, 95], axis=0)


@pytest.mark.parametrize("profile", PROFILES, ids=lambda p: p.id)
def test_calibration_reaches_an_engine_unlike_its_profile(profile: Profile) -> None:
    """Half as much pump again, twice the leaks, another relief setting: known at five points, the
    pressures between and beyond are inside the bands, and the middle is near."""
    engine = engine_like(profile)
    other = replace(
        engine,
        pump_displacement=engine.pump_displacement * 1.5,
        other_conductance=engine.other_conductance * 4,
        jets=tuple(replace(j, diameter=j.diameter * 1.4) for j in engine.jets),
        relief_setting=engine.relief_setting * 0.75,
    )
    idle, top = profile.specified[0][0], profile.specified[-1][0]
    looks = ((idle, HOT), (1.5 * idle, HOT), (top, HOT), (idle, WARM), (top, WARM))
    at = [Point(n, t, 0.0) for n, t in looks]
    known = [replace(p, pressure=float(q)) for p, q in zip(at, shown(other, at), strict=True)]
    asked = [Point(n, t, 0.0) for n in (1.2 * idle, 0.6 * top, 0.9 * top) for t in (HOT, 343.15)]
    low, middle, high = bands(calibrated(engine, known, 48, np.random.default_rng(2)), asked)
    real = shown(other, asked) / PSI
    assert np.all((low - 1 < real) & (real < high + 1))
    assert np.abs(middle - real).mean() < 4


def test_each_known_pressure_counts_once() -> None:
    """Two hot pressures leave the cold ones open; the same two again narrow nothing much."""
    known = [Point(700, HOT, 32 * PSI), Point(2500, HOT, 52 * PSI)]
    asked = [Point(1000, 293.15, 0.0), Point(700, HOT, 0.0)]
    once = bands(calibrated(V8, known, 64, np.random.default_rng(4)), asked)
    twice = bands(calibrated(V8, known * 2, 64, np.random.default_rng(4)), asked)
    assert once[2, 0] - once[0, 0] > 12
    assert 4 < once[2, 1] - once[0, 1] < 14  # the gauge they were read on may be off
    assert twice[2, 1] - twice[0, 1] > 0.6 * (once[2, 1] - once[0, 1])


def test_pressures_no_engine_of_the_kind_has_leave_a_residual() -> None:
    """More pressure at idle than at speed cannot be: the engines stay off both."""
    known = [Point(700, HOT, 75 * PSI), Point(3000, HOT, 30 * PSI)]
    _, middle, _ = bands(calibrated(V8, known, 32, np.random.default_rng(1)), known)
    assert np.abs(middle - [75, 30]).max() > 10


def test_what_a_case_states_is_no_guess() -> None:
    """A stated clearance or relief setting keeps to its figure while the rest is open."""
    stated = '[engine.dimensions]\nmain_clearance = "0.0025 in"\nrelief_setting = "58 psi"'
    open_, held = (widths(case(text), calibrated=True) for text in ("", stated))
    assert {n for n in held if held[n] != open_[n]} == {"mains", "relief"}
    assert held["mains"] == UNCERTAIN["mains"] < open_["mains"]


def test_a_remembered_pressure_counts_unless_the_baseline_has_that_state() -> None:
    """What a reading says is usual is known of the sound engine; of one state it counts once."""
    rows = (
        '[[baseline]]\nno = 1\nrpm = "700 rpm"\noil = "95 C"\npressure = "30 psi"\n'
        '[[reading]]\nno = 2\nrpm = "720 rpm"\noil = "92 C"\npressure = "9 psi"\nusual = "28 psi"\n'
        '[[reading]]\nno = 3\nrpm = "2500 rpm"\noil = "92 C"\npressure = "40 psi"\nusual = "55 psi"\n'
    )
    both = case(rows)
    points = sound_points(both, [r.reading for r in both.readings])
    assert [round(p.pressure / PSI) for p in points] == [30, 55]
    assert points[1].error > points[0].error


def test_spread_is_wide_until_pressures_are_known() -> None:
    """Known pressures narrow what plausible engines show, also where nothing was measured."""
    idle, cruise = Point(700, HOT, 28 * PSI), Point(1500, HOT, 48 * PSI)
    free = shown(spread(V8, 60, np.random.default_rng(1)), [idle]) / PSI
    held = shown(spread(V8, 60, np.random.default_rng(1), [idle, cruise]), [idle]) / PSI
    assert free.shape == (60, 1)
    assert free.std() > 4
    assert held.std() < 2.5
    assert held.mean() == pytest.approx(28, abs=2)


def test_conditioning_keeps_its_draws_where_nothing_is_known() -> None:
    rng = np.random.default_rng(3)
    z = drawn(8, rng)
    assert conditioned(V8, z, (), rng) is z
    assert z.mean(0) == pytest.approx(np.zeros(z.shape[1]))


# --------------------------------------------------------------------------------------- faults


def test_faults_are_conditions_of_the_book() -> None:
    assert all(BOOK.conditions[k] is f.condition for k, f in FAULTS.items())
    assert len(FAULTS) == 13


@pytest.mark.parametrize("condition", FAULTS)
def test_a_fault_shows_and_grows(condition: str) -> None:
    """Nothing at zero, unchanged at one, named in words, and solved for arrays without a gap."""
    fault = FAULTS[condition]
    steps = np.linspace(0, 1, 6)[:, None]
    moved = shown(fault.apply(V8, steps), RUNNING) - shown(V8, RUNNING)
    assert np.all(np.isfinite(moved))
    assert np.abs(moved[0]).max() < 0.3 * PSI
    most = np.abs(moved).max(1)
    assert np.all(np.diff(most) > -0.2 * PSI)
    assert most[-1] > 8 * PSI
    assert fault.show(V8, 0.5, NO_UNITS) != fault.show(V8, 1.0, NO_UNITS)


LOWERS = [
    "clearances_wide", "pump_slip", "delivery_reduced", "relief_bleeds", "relief_caps_low",
    "open_leak_inside", "flow_restricted", "oil_aerated", "air_in_suction", "suction_throttled",
]  # fmt: skip


@settings(max_examples=40, deadline=None)
@given(
    st.sampled_from(LOWERS),
    st.floats(0, 1),
    st.integers(0, 10_000),
    st.floats(500, 5000),
    st.floats(263, 403),
)
def test_a_fault_that_lowers_never_raises(
    condition: str, severity: float, seed: int, rpm: float, heat: float
) -> None:
    """On any plausible engine, at any speed and heat; and never below zero."""
    engine = varied(V8, np.random.default_rng(seed).standard_normal((1, len(UNCERTAIN))))
    at = [Point(rpm, heat, 0.0)]
    sound, ill = (
        float(shown(e, at)[0, 0]) for e in (engine, FAULTS[condition].apply(engine, severity))
    )
    assert 0 <= ill <= sound + 1e-6 * max(sound, 1)

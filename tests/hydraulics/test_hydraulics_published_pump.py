"""Pump, relief valve, suction, passages and the whole circuit against published values."""

from __future__ import annotations

from collections.abc import Callable
from math import pi
from typing import Any

import numpy as np
import pytest

from diagnose.hydraulics import passage, pump, relief
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import SET_A, SET_B, reclearanced
from tests.support.published import INCH, PSI, Check, assert_meets, cases, check, in_group


def overall_efficiency(c: Check) -> Any:
    """Volumetric times mechanical, the latter from the torque without friction."""
    mechanical = pump.drive_torque(c["VD"], c["p"]) / c["T"]
    return pump.volumetric_efficiency(c["Q"], c["VD"], c["N"]) * mechanical


def throttled_power(c: Check) -> Any:
    """What a valve wastes is what a pump without loss would take to make that flow."""
    return pump.shaft_power(c["Q"], 1.0, c["p"], 1.0)


def rod_loss(c: Check) -> Any:
    """Share of hot-idle pressure the sample engine loses to that much more rod clearance."""
    rod = SET_B.rods[0].clearance_diametral
    new, worn = (
        solve(reclearanced(SET_B, rods=rod + extra), 700, 373.15).gallery_pressure
        for extra in (0.0, c["extra"])
    )
    return 1 - worn / new


FORMULAS: dict[str, Callable[[Check], Any]] = {
    "massey-6-1-pipe": lambda c: passage.pipe_drop(
        c["v"] * pi * c["d"] ** 2 / 4, c["mu"], 1000 * c["RD"], c["d"], 1.0
    ),
    # pump
    "esposito-5-1-VD": lambda c: pump.displacement_gear(c["Do"], c["Di"], c["L"]),
    "esposito-5-1-etaV": lambda c: pump.volumetric_efficiency(c["Q_actual"], c["VD"], c["N"]),
    "esposito-5-2-QA": lambda c: (
        c["eta_v"] * pump.theoretical_flow(pump.displacement_gear(c["Do"], c["Di"], c["L"]), c["N"])
    ),
    "esposito-5-8-Tt": lambda c: pump.drive_torque(c["VD"], c["p"]),
    "esposito-5-8-eta": overall_efficiency,
    "sullivan-7-1-torque": lambda c: pump.drive_torque(c["P"] / c["N"], 1.0),
    "sullivan-7-2-etaV": lambda c: pump.volumetric_efficiency(c["Q"], c["VD"], c["N"]),
    "cengel-14-lobe": lambda c: pump.theoretical_flow(
        c["V_lobe"] * c["lobes"] / c["rotations"], c["N"]
    ),
    "gear-bore-formula": lambda c: pump.displacement_gear_bores(c["D"], c["L"], c["W"]),
    "pump-ej-two-point-eta-idle": lambda c: pump.volumetric_efficiency(
        c["Q"], c["VD_fit"], 600 / 60
    ),
    # relief valve
    "esposito-8-1-crack": lambda c: relief.crack_pressure(c["x0"], c["k"], c["A"]),
    "esposito-8-1-full": lambda c: relief.crack_pressure(c["x0"] + c["dx"], c["k"], c["A"]),
    "esposito-8-2-power": throttled_power,
    "tm-3930-638-spring": lambda c: relief.spring_rate(c["load"], c["free"] - c["test_length"]),
    # the whole circuit: plausibility, for it hangs on the sample engine
    "rod-clearance-plus-0p001-loss": rod_loss,
    "subaru-fb-conductance-ratio": lambda c: (c["Q1"] / c["p1"]) / (c["Q2"] / c["p2"]),
}


@pytest.mark.parametrize(("entry", "formula"), cases(FORMULAS))
def test_reproduces(entry: Check, formula: Callable[[Check], Any]) -> None:
    """Each formula within the tolerance its entry states."""
    assert_meets(entry, formula(entry))


def test_relief_lifts_as_far_as_the_printed_example() -> None:
    """Esposito 8-1 run the other way: at the full-flow pressure it is 0.1 in further open."""
    c = check("esposito-8-1-full")
    crack = relief.crack_pressure(c["x0"], c["k"], c["A"])
    full = crack + relief.shim_gain(c["k"], c["dx"], c["A"])
    assert float(relief.lift(full, crack, c["A"], c["k"])) == pytest.approx(c["dx"])
    assert full / crack == pytest.approx(1.5)


POINTS = [c for c in in_group("published pump flow") if {"N_pump", "p"} <= set(c.inputs)]


@pytest.mark.parametrize("entry", POINTS, ids=lambda c: c.title)
def test_guaranteed_delivery_needs_a_plausible_displacement(entry: Check) -> None:
    """The printed flow is a lower bound: a pump of 22 cm3 gives it with room to spare, one of
    5 cm3 does not, each with the slip that belongs to a volumetric efficiency of 74 %."""

    def delivers(displacement: float) -> float:
        return 0.74 * float(pump.theoretical_flow(displacement, entry["N_pump"]))

    assert delivers(5e-6) < entry.expected < delivers(22e-6)
    engines = [SET_A, SET_B]
    assert any(5e-6 < float(e.pump_displacement) < 22e-6 for e in engines)


def test_two_point_fit_meets_the_printed_deliveries() -> None:
    """One displacement and one laminar slip give both guaranteed flows."""
    fit = check("pump-ej-two-point-eta-idle")
    for id_ in ("pump-ej-h4so-2009-600", "pump-ej-h4so-2009-5000"):
        c = check(id_)
        flow = pump.theoretical_flow(fit["VD_fit"], c["N_pump"]) - fit["k_fit"] * c["p"]
        assert flow == pytest.approx(c.expected, rel=0.01), id_


def test_pump_gaps_pass_the_slip_of_a_real_pump_only_past_its_tips() -> None:
    """The EJ's slip at 14.5 mPa.s: its widest new end clearance passes less than a third of it,
    a short tip land at its widest new tip clearance passes all of it and more."""
    slip = check("pump-ej-two-point-eta-idle")["k_fit"] * 98e3
    printed = check("lim-subaru-ej-rotor").expected
    end = pump.slip_end(98e3, 0.0145, printed["side_mm"][1] / 2e3, 3.0, 2.0)
    tip = pump.slip_tip(98e3, 0.0145, printed["tip_mm"][1] / 1e3, 0.010, 1e-3, paths=2.0)
    assert end < slip / 3
    assert tip > slip


def test_sample_engine_lies_within_printed_ranges() -> None:
    """Set A and B take clearances and settings that manuals print."""
    gears = check("lim-tm-3825-229-gear").expected
    plunger = check("tm-3825-225-relief").expected
    for engine in (SET_A, SET_B):
        tip, end = engine.pump_tip_clearance / INCH, engine.pump_end_clearance / INCH
        assert tip <= gears["tooth_tip_to_body_in"][1]
        assert gears["gear_face_to_body_in"][0] <= end <= gears["gear_face_to_body_in"][1]
        setting = engine.relief_setting / PSI
        assert plunger["min_psi"] - 1e-9 <= setting <= plunger["max_psi"]
        low, high = check("clr-tm-2815-260-main").expected["diametral_in"]
        assert low <= engine.mains[0].clearance_diametral / INCH <= high
        per_crank_turn = engine.pump_displacement * engine.pump_drive_ratio
        assert 8e-6 < per_crank_turn < 17e-6  # passenger engines, from the published flows


def test_clean_filter_drops_as_little_as_is_said() -> None:
    """From memory: 1 to 5 psi hot, here from 10 to 30 l/min."""
    low, high = check("filter-clean-dp").expected["dp_psi_hot"]
    flow = np.array([10, 30]) / 60e3
    drop = np.asarray(passage.filter_drop(flow, 0.0118, SET_A.filter_resistance)) / PSI
    assert low < drop[0] < drop[1] < high + 0.1


def test_filter_bypass_is_of_the_printed_size() -> None:
    """The sample engine's against spin-on filters and one maker's."""
    spin_on = check("filter-bypass-aftermarket-15psi").expected["open_psi"] * PSI
    subaru = check("subaru-filter-bypass").expected["open_kPa"] * 1e3
    assert 0.95 * spin_on < SET_A.filter_bypass < subaru


def test_sample_engines_pass_the_printed_minimum_until_worn() -> None:
    """An army truck's limits: new above both, and set B at 0.0045 in just about at the one for idle."""
    limit = check("prac-hmmwv-minimum").expected
    for engine in (SET_A, SET_B):
        p = np.asarray(solve(engine, np.array([700.0, 2000.0]), 373.15).gallery_pressure) / PSI
        assert p[0] > limit["idle_min_psi"]
        assert p[1] > limit["driving_min_psi"]
    worn = reclearanced(SET_B, mains=0.0045 * INCH, rods=0.0045 * INCH)
    at_idle = solve(worn, 600, 373.15).gallery_pressure / PSI
    assert at_idle == pytest.approx(limit["idle_min_psi"], abs=2)

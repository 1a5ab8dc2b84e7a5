"""The whole circuit against a sample calculation.

The sample engine's figures are an own calculation made before and apart from this code, on
assumed typical dimensions: a sanity target, not data. They were printed in whole psi and whole
per cent, and left open what ``engine.sample_v8`` says it fills in.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import log

import numpy as np
import pytest

from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import SET_A, SET_B, Engine, reclearanced, set_a, set_b
from diagnose.hydraulics.oil import DIESEL, PETROL, Oil, diluted
from knowledge.units import INCH, PSI

HOT = 373.15
RPM = (600, 700, 800, 1000, 1500, 2000, 3000, 4000, 5000, 6000)
#: (set, main and rod clearance in, oil degC): gallery psi at RPM; own calculation
TABLE: dict[tuple[str, float, float], tuple[int, ...]] = {
    ("A", 0.0015, 100): (50, 51, 51, 52, 54, 55, 59, 62, 65, 68),
    ("A", 0.0025, 100): (49, 50, 50, 51, 52, 54, 57, 60, 63, 65),
    ("A", 0.0035, 100): (32, 39, 45, 49, 50, 51, 54, 56, 59, 60),
    ("A", 0.0045, 100): (19, 22, 26, 33, 46, 47, 49, 51, 52, 53),
    ("B", 0.0015, 100): (46, 49, 50, 50, 52, 54, 57, 60, 63, 66),
    ("B", 0.0025, 100): (25, 30, 35, 45, 49, 50, 53, 55, 58, 59),
    ("B", 0.0035, 100): (13, 15, 17, 22, 34, 44, 45, 47, 47, 48),
    ("B", 0.0045, 100): (7, 8, 9, 11, 17, 23, 34, 35, 34, 33),
    ("B", 0.0025, 120): (19, 22, 26, 33, 48, 49, 52, 54, 56, 58),
    ("B", 0.0035, 120): (9, 11, 13, 16, 24, 33, 42, 43, 44, 44),
}
#: l/min at 700 rpm and 0.0025 in; own calculation
SPLIT = {
    "A": {"theoretical": 7.3, "slip": 0.9, "relief": 1.4, "mains": 1.2, "rods": 0.3,
          "cams": 0.3, "lifters": 0.3, "jets": 2.2, "hydrodynamic": 0.8},
    "B": {"theoretical": 7.3, "slip": 1.4, "relief": 0.0, "mains": 2.1, "rods": 0.65,
          "cams": 0.3, "lifters": 0.2, "jets": 1.7, "hydrodynamic": 1.0},
}  # fmt: skip


def gallery(engine: Engine, rpm: float, temperature: float = HOT) -> float:
    return float(solve(engine, rpm, temperature).gallery_pressure) / PSI


def wide(**clearances: float) -> Engine:
    """Set B with these clearances [in]."""
    return reclearanced(SET_B, **{kind: c * INCH for kind, c in clearances.items()})


@pytest.mark.parametrize("row", TABLE, ids=lambda r: "{} {} in {} C".format(*r))
def test_sample_engine_gives_the_calculated_pressures(row: tuple[str, float, float]) -> None:
    """Own calculation: every cell within 5 %, of which rounding to whole psi may be the most."""
    which, clearance, celsius = row
    engine = {"A": set_a, "B": set_b}[which](clearance * INCH)
    got = solve(engine, np.array(RPM), celsius + 273.15)
    assert got.gallery_pressure / PSI == pytest.approx(np.array(TABLE[row]), rel=0.05)
    assert not np.any(got.cavitating | got.starved)


@pytest.mark.parametrize("which", SPLIT)
def test_sample_engine_splits_its_flow_as_calculated(which: str) -> None:
    """Own calculation, to the printed digit or a tenth."""
    flows = solve({"A": SET_A, "B": SET_B}[which], 700, HOT).flows
    for branch, wanted in SPLIT[which].items():
        assert getattr(flows, branch) * 60e3 == pytest.approx(wanted, rel=0.1, abs=0.06), branch


def with_oil(oil: Oil) -> Engine:
    return replace(SET_B, oil=oil)


def grade(name: str) -> Oil:
    return replace(Oil.of_grade(name), hths_factor=1.0)


#: (engine, gallery oil degC): change of set B's pressure in % at 700 and 3000 rpm; own calculation
SENSITIVITY: dict[str, tuple[Engine, float, int, int]] = {
    "mains 0.0035": (wide(mains=0.0035), 100, -42, -10),
    "rods 0.0035": (wide(rods=0.0035), 100, -20, -5),
    "both 0.0035": (wide(mains=0.0035, rods=0.0035), 100, -50, -14),
    "both 0.0045": (wide(mains=0.0045, rods=0.0045), 100, -74, -36),
    "cam 0.005": (wide(cams=0.005), 100, -17, -3),
    "lifter bores 0.0025": (wide(lifters=0.0025), 100, -10, -1),
    "pump end 0.008": (replace(SET_B, pump_end_clearance=0.008 * INCH), 100, -9, -1),
    "pump tip 0.006": (replace(SET_B, pump_tip_clearance=0.006 * INCH), 100, -36, -4),
    "pump tip 0.008": (replace(SET_B, pump_tip_clearance=0.008 * INCH), 100, -62, -10),
    "displacement +25 %": (replace(SET_B, pump_displacement=26e-6), 100, 34, 5),
    "relief 40 psi": (replace(SET_B, relief_setting=40 * PSI), 100, 0, -16),
    "relief 65 psi": (replace(SET_B, relief_setting=65 * PSI), 100, 0, 24),
    "SAE 20": (with_oil(grade("20")), 100, -37, -5),
    "SAE 30": (with_oil(grade("30")), 100, -23, -2),
    "SAE 50": (with_oil(grade("50")), 100, 20, 1),
    "5 % gasoline": (with_oil(diluted(SET_B.oil, 0.05, PETROL)), 100, -25, -3),
    "10 % gasoline": (with_oil(diluted(SET_B.oil, 0.10, PETROL)), 100, -42, -6),
    "5 % diesel fuel": (with_oil(diluted(SET_B.oil, 0.05, DIESEL)), 100, -14, -1),
    "gallery 80 C": (SET_B, 80, 43, 1),
    "gallery 120 C": (SET_B, 120, -27, -3),
    "gallery 140 C": (SET_B, 140, -45, -7),
    "10 % air": (replace(SET_B, air_fraction=0.1), 100, -9, -2),
    "20 % air": (replace(SET_B, air_fraction=0.2), 100, -17, -3),
    "relief stuck 1 mm": (replace(SET_B, relief_stuck_lift=1e-3), 100, -89, -75),
}


@pytest.mark.parametrize("change", SENSITIVITY)
def test_sample_engine_answers_each_change_as_calculated(change: str) -> None:
    """Own calculation: direction, and size within a tenth beyond the rounding to whole per cent."""
    engine, celsius, *wanted = SENSITIVITY[change]
    for rpm, percent in zip((700, 3000), wanted, strict=True):
        got = 100 * (gallery(engine, rpm, celsius + 273.15) / gallery(SET_B, rpm) - 1)
        assert got == pytest.approx(percent, rel=0.1, abs=0.1 * abs(percent) + 0.5)
        assert got * percent > 0 or (percent == 0 and abs(got) < 0.5)


#: d ln p / d ln x at 700 rpm, set B, 0.0035 in; own calculation
ELASTICITY: dict[str, tuple[Callable[[Engine, float], Engine], float]] = {
    "mains": (lambda e, x: reclearanced(e, mains=0.0035 * INCH * x), -1.8),
    "rods": (lambda e, x: reclearanced(e, rods=0.0035 * INCH * x), -0.65),
    "cams": (lambda e, x: reclearanced(e, cams=0.003 * INCH * x), -0.10),
    "lifters": (lambda e, x: reclearanced(e, lifters=0.0015 * INCH * x), -0.05),
    "pump tip": (lambda e, x: replace(e, pump_tip_clearance=0.004 * INCH * x), -0.39),
    "displacement": (lambda e, x: replace(e, pump_displacement=20.8e-6 * x), 1.4),
    "viscosity": (lambda e, x: replace(e, oil=Oil(96e-6 * x, 14.4e-6 * x)), 0.87),
    "relief": (lambda e, x: replace(e, relief_setting=50 * PSI * x), 0.0),
}


@pytest.mark.parametrize("what", ELASTICITY)
def test_sample_engine_has_the_calculated_elasticities(what: str) -> None:
    """Own calculation, to the printed digits."""
    change, wanted = ELASTICITY[what]
    engine = set_b(0.0035 * INCH)
    up, down = (gallery(change(engine, x), 700) for x in (1.01, 0.99))
    assert log(up / down) / log(1.01 / 0.99) == pytest.approx(wanted, abs=0.05)


def test_diametral_read_as_radial() -> None:
    """Own calculation: taken for radial, 0.0025 in costs set A two thirds of its hot idle."""
    assert gallery(set_a(2 * 0.0025 * INCH), 700) == pytest.approx(17, rel=0.03)
    assert gallery(SET_A, 700) == pytest.approx(50, rel=0.03)


def test_blocked_relief() -> None:
    """Own calculation: without its relief valve set A shows what the pump could do."""
    blocked = replace(SET_A, relief_travel=0.0)
    assert gallery(blocked, 700) == pytest.approx(68, rel=0.02)
    assert gallery(blocked, 3000) == pytest.approx(371, rel=0.02)

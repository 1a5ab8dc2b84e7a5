"""Bearing formulas and tables against our own solution of Reynolds' equation."""

from __future__ import annotations

from collections.abc import Callable
from math import pi

import numpy as np
import pytest

from diagnose.hydraulics import bearing
from diagnose.hydraulics.clearance import Radial
from diagnose.hydraulics.raimondi_boyd import performance
from tests.support.published import Check, matching
from tests.support.reynolds import fed, solve

ROWS = [c for c in matching("rb-LD*") if c.formula]
each_row = pytest.mark.parametrize("entry", ROWS, ids=lambda c: c.title)
Where = Callable[[np.ndarray, np.ndarray], np.ndarray]


def hole(share: float, ratio: float, at: float = 0.0) -> Where:
    """A round hole of diameter ``share`` of the length, its centre ``at`` from the widest gap."""
    return lambda x, z: (_turn(x, at) / (share * ratio)) ** 2 + (z / share) ** 2 <= 1


def groove(share: float, arc: float, at: float = 0.0) -> Where:
    """A groove ``share`` of the length wide, over ``arc`` centred ``at``."""
    return lambda x, z: (np.abs(z) <= share + 1e-9) & (np.abs(_turn(x, at)) <= arc / 2 + 1e-9)


def _turn(x: np.ndarray, at: float) -> np.ndarray:
    return np.asarray(np.angle(np.exp(1j * (x - at))))


@each_row
def test_printed_rows(entry: Check) -> None:
    """Every printed row with a solution of its own, on a coarse grid, within the entry's 2 %."""
    got = solve(entry["eps"], entry["L_over_D"], around=90, across=12)
    wanted = entry.expected
    assert got.sommerfeld == pytest.approx(wanted["S"], rel=entry.relative)
    assert got.side_flow == pytest.approx(wanted["Qs_over_rcNl"], rel=entry.relative)


@pytest.mark.long
@each_row
def test_printed_rows_finely(entry: Check) -> None:
    """On a fine grid the print is 1.4 % off in load and 0.5 % in side flow, no more."""
    got = solve(entry["eps"], entry["L_over_D"], around=360, across=48)
    assert got.sommerfeld == pytest.approx(entry.expected["S"], rel=0.014)
    assert got.side_flow == pytest.approx(entry.expected["Qs_over_rcNl"], rel=0.005)


@pytest.mark.long
@pytest.mark.parametrize(("eps", "ratio"), [(0.1, 1.0), (0.6, 0.5), (0.9, 0.25)])
def test_the_grid_converges(eps: float, ratio: float) -> None:
    """Four times the cells each way moves the load by less than 1 %, twice by less than 0.2 %."""
    coarse, middle, fine = (solve(eps, ratio, 90 * k, 12 * k).sommerfeld for k in (1, 2, 4))
    assert coarse == pytest.approx(fine, rel=0.01)
    assert middle == pytest.approx(fine, rel=0.002)


@pytest.mark.parametrize("ratio", [0.27, 0.3, 0.35, 0.4, 0.45, 0.6, 0.75])
@pytest.mark.parametrize("eps", [0.2, 0.5, 0.7, 0.9])
def test_between_the_lengths(eps: float, ratio: float) -> None:
    """What the interpolation between lengths is worth: eps to 0.04, side flow to 18 %."""
    wanted = solve(eps, ratio, around=120, across=16)
    got = performance(wanted.sommerfeld, ratio)
    assert float(got.eps) == pytest.approx(eps, abs=0.042)
    assert float(got.flow * got.side_share) == pytest.approx(wanted.side_flow, rel=0.19)


@pytest.mark.parametrize(
    ("ratio", "high"), [(0.25, 0.025), (0.3, 0.035), (0.5, 0.075), (1.0, 0.295)]
)
@pytest.mark.parametrize("eps", [0.4, 0.6, 0.8])
def test_the_short_bearing(eps: float, ratio: float, high: float) -> None:
    """Side flow of the short bearing is never low, and as much too high as its docstring says."""
    wanted = solve(eps, ratio, around=120, across=16).side_flow
    got = float(bearing.side_flow_short(eps, Radial(1.0), 1.0, 1.0, 2 * pi))
    assert wanted < got < wanted * (1 + high)


@pytest.mark.parametrize("entry", matching("hole-feed-martin-*"), ids=lambda c: c.title)
def test_a_hole_at_the_widest_gap(entry: Check) -> None:
    """Two solutions on two grids agree to 4 %; Martin's formula, recalled, is 0 to 9 % high."""
    share = entry["d_over_L"]
    solved = fed(entry["eps"], entry["L_over_D"], hole(share, entry["L_over_D"]))
    assert solved == pytest.approx(entry.expected, rel=0.04)
    h = bearing.film_at(Radial(1.0), entry["eps"], 0.0)
    formula = float(bearing.hole_flow(1.0, 1.0, h, share, 1.0))
    assert 1.0 < formula / solved < 1.09


def test_a_hole_over_the_orbit() -> None:
    """Averaged evenly over where the journal may sit, 0.39 of the widest gap's flow."""
    flows = [fed(0.6, 0.5, hole(0.25, 0.5, at)) for at in np.linspace(0, 2 * pi, 12, False)]
    assert np.mean(flows) / max(flows) == pytest.approx(0.39, abs=0.01)


@pytest.mark.parametrize("eps", [0.0, 0.4, 0.8])
@pytest.mark.parametrize("ratio", [0.3, 0.5])
def test_a_groove_all_round(eps: float, ratio: float) -> None:
    """Equation 12-22 exactly: a fifth of the length grooved leaves two lands of 0.4 L."""
    flow = fed(eps, ratio, groove(0.2, 2 * pi), across=50)
    wanted = bearing.groove_flow(1.0, 1.0, 0.5 / ratio, Radial(1.0), eps, 0.4)
    assert flow == pytest.approx(float(wanted), rel=2e-3)


@pytest.mark.parametrize(
    ("ratio", "eps", "shares"),
    [
        (0.3, 0.0, (0.55, 0.55, 0.55)),
        (0.3, 0.4, (0.86, 0.56, 0.23)),
        (0.3, 0.6, (0.93, 0.57, 0.14)),
        (0.3, 0.8, (0.97, 0.58, 0.09)),
        (0.5, 0.6, (0.95, 0.62, 0.17)),
        (0.5, 0.8, (0.98, 0.63, 0.11)),
    ],
)
def test_a_groove_half_round(ratio: float, eps: float, shares: tuple[float, ...]) -> None:
    """Share of the full groove's flow, facing the widest gap, sideways, facing the narrowest."""
    full = fed(eps, ratio, groove(0.18, 2 * pi), across=50)
    got = [fed(eps, ratio, groove(0.18, pi, at), across=50) / full for at in (0.0, pi / 2, pi)]
    assert got == pytest.approx(shares, abs=0.01)

"""Raimondi and Boyd's bearing: eccentricity, drag and flow of a loaded journal, from its load.

Their computed rows for four lengths, read between rows on a logarithmic scale of the Sommerfeld
number and between lengths by their own interpolation. Beyond the lightest row the exact limit of
a journal without load; below the heaviest there is no film to speak of.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from diagnose.hydraulics.ranges import FloatArray, Floats, refuse_outside

#: length over diameter: rows of eps, S, friction f r/c, flow Q/(r c N l), side flow Qs/Q
ROWS: dict[float, FloatArray] = {
    np.inf: np.array(
        [
            (0.1, 0.240, 4.80, 3.03, 0.0),
            (0.2, 0.123, 2.57, 2.83, 0.0),
            (0.4, 0.0626, 1.52, 2.26, 0.0),
            (0.6, 0.0389, 1.20, 1.56, 0.0),
            (0.8, 0.0210, 0.961, 0.760, 0.0),
            (0.9, 0.0115, 0.756, 0.411, 0.0),
        ]
    ),
    1.0: np.array(
        [
            (0.1, 1.33, 26.4, 3.37, 0.150),
            (0.2, 0.631, 12.8, 3.59, 0.280),
            (0.4, 0.264, 5.79, 3.99, 0.497),
            (0.6, 0.121, 3.22, 4.33, 0.680),
            (0.8, 0.0446, 1.70, 4.62, 0.842),
            (0.9, 0.0188, 1.05, 4.74, 0.919),
            (0.97, 0.00474, 0.514, 4.82, 0.973),
        ]
    ),
    0.5: np.array(
        [
            (0.1, 4.31, 85.6, 3.43, 0.173),
            (0.2, 2.03, 40.9, 3.72, 0.318),
            (0.4, 0.779, 17.0, 4.29, 0.552),
            (0.6, 0.319, 8.10, 4.85, 0.730),
            (0.8, 0.0923, 3.26, 5.41, 0.874),
            (0.9, 0.0313, 1.60, 5.69, 0.939),
            (0.97, 0.00609, 0.610, 5.88, 0.980),
        ]
    ),
    0.25: np.array(
        [
            (0.1, 16.2, 322.0, 3.45, 0.180),
            (0.2, 7.57, 153.0, 3.76, 0.330),
            (0.4, 2.83, 61.1, 4.37, 0.567),
            (0.6, 1.07, 26.7, 4.99, 0.746),
            (0.8, 0.261, 8.80, 5.60, 0.884),
            (0.9, 0.0736, 3.50, 5.91, 0.945),
            (0.97, 0.0101, 0.922, 6.12, 0.984),
        ]
    ),
}
UNLOADED_FLOW = np.pi  #: Q/(r c N l) of a centred journal, exact


@dataclass(frozen=True, slots=True)
class Performance:
    """How a loaded bearing runs, all without dimension; ``eps`` is e/c."""

    eps: Floats
    friction: Floats  #: f r/c
    flow: Floats  #: Q/(r c N l)
    side_share: Floats  #: Qs/Q, the part of the flow that leaves over the edges

    @property
    def least_film(self) -> Floats:
        """Least film thickness over radial clearance."""
        return 1 - self.eps

    def temperature_rise(self, unit_load: Floats, rho_cp: Floats) -> Floats:
        """How much warmer the film gets from end to end [K].

        dT = 4 pi P/(rho cp) (f r/c) / ((1 - Qs/2Q) Q/(r c N l)).

        unit_load: P [Pa]; rho_cp: [J/(m3·K)]. The oil over the edges takes half the rise along.

        Source: Shigley, Mechanical Engineering Design, eq. 12-15.
        """
        carried = (1 - 0.5 * self.side_share) * self.flow
        return 4 * np.pi * unit_load / rho_cp * self.friction / carried


def between_lengths(
    ratio: Floats, y_long: Floats, y_1: Floats, y_half: Floats, y_quarter: Floats
) -> Floats:
    """A quantity at any length, from its values at four.

    y = (-(1-x)(1-2x)(1-4x) y_inf/8 + (1-2x)(1-4x) y_1/3 - (1-x)(1-4x) y_half/4
    + (1-x)(1-2x) y_quarter/24) / x^3.

    ratio: x, length over diameter [1], 1/4 and up; the rest in any one unit.

    Source: Raimondi & Boyd 1958; Shigley, Mechanical Engineering Design, eq. 12-16.
    """
    refuse_outside("length over diameter", ratio, 0.25, np.inf)
    a, b, c = 1 - ratio, 1 - 2 * ratio, 1 - 4 * ratio
    mixed = -a * b * c * y_long / 8 + b * c * y_1 / 3 - a * c * y_half / 4 + a * b * y_quarter / 24
    return mixed / ratio**3


def performance(s: Floats, ratio: Floats) -> Performance:
    """How a bearing runs under its load.

    s: Sommerfeld number [1]; a load heavier than the row of eps 0.97 is read as that row, for
    metal touches by then; ratio: length over diameter [1], 1/4 and up.

    Laminar, one temperature, steady load, aligned, fed at the widest gap. Against a solution of
    Reynolds' equation: at the rows' lengths 1.4 %; between them, ratio 0.27 to 0.75, eps is good
    to 0.04 and side flow to 18 %, worst near 0.3 under heavy load.

    Half the load lets the journal ride higher, yet the drag falls by only a sixth:

    >>> heavy, light = performance(0.1, 0.5), performance(0.2, 0.5)
    >>> round(float(heavy.least_film), 2), round(float(light.least_film), 2)
    (0.21, 0.32)
    >>> round(float(light.friction / 2 / heavy.friction), 2)
    0.83

    Source: A. A. Raimondi & J. Boyd, Trans. ASLE 1 (1958), the values behind Shigley's charts.
    """
    refuse_outside("Sommerfeld number", s, 0.0, np.inf, open_low=True)
    at = [_at_length(np.asarray(s, dtype=float), rows) for rows in ROWS.values()]
    eps, friction, flow, share = (
        between_lengths(ratio, *column) for column in zip(*at, strict=True)
    )
    return Performance(eps, friction, flow, np.minimum(share, 1.0))


def sommerfeld_at(eps: Floats, length: float) -> Floats:
    """The Sommerfeld number [1] of an eccentricity [1], 0.1 to 0.97, at one of the rows' lengths.

    >>> round(float(sommerfeld_at(0.7, 0.5)), 3)
    0.172
    """
    rows = ROWS[length]
    refuse_outside("eccentricity ratio", eps, rows[0, 0], rows[-1, 0])
    return np.exp(np.interp(eps, rows[:, 0], np.log(rows[:, 1])))


def _at_length(s: FloatArray, rows: FloatArray) -> tuple[FloatArray, ...]:
    """eps, friction, flow and side share at ``s`` from one length's rows."""
    eps, number, friction, flow, share = rows[::-1].T  # np.interp wants S to rise
    light = np.maximum(s / number[-1], 1.0)  # beyond the lightest row, as a journal without load
    within = np.minimum(s, number[-1])
    place = np.log(within)
    e = np.interp(place, np.log(number), eps) / light
    f = np.exp(np.interp(place, np.log(number), np.log(friction))) * light
    by_eps = np.append(eps, 0.0)[::-1]
    q = np.interp(e, by_eps, np.append(flow, UNLOADED_FLOW)[::-1])
    return e, f, q, np.interp(e, by_eps, np.append(share, 0.0)[::-1])

"""A relief valve's spring on the bench: force, fitted length, opening pressure, shims.

Straight springs; lengths in m, forces in N, pressures in Pa.
"""

from __future__ import annotations

import numpy as np

from diagnose.hydraulics.ranges import Floats, refuse_unless_positive


def plunger_area(diameter: Floats) -> Floats:
    """Area the oil presses on [m2]; ``diameter`` of the plunger, or of the seat of a ball [m].

    >>> round(float(plunger_area(12.7e-3)) * 1e6, 1)
    126.7
    """
    return np.pi / 4 * np.asarray(diameter) ** 2


def opening_pressure(force: Floats, diameter: Floats) -> Floats:
    """Pressure that lifts the plunger off its seat, ``p = F / A`` [Pa].

    ``force`` of the spring at its fitted length [N], ``diameter`` of the plunger [m].

    A pound of spring on a half-inch plunger holds five psi:

    >>> round(float(opening_pressure(4.448, 0.0127)) / 6894.76, 1)
    5.1

    Source: force balance; Esposito, Fluid Power with Applications, Example 8-1.
    """
    refuse_unless_positive("m", diameter=diameter)
    return force / plunger_area(diameter)


def force_to_open(pressure: Floats, diameter: Floats) -> Floats:
    """Force the spring must have at its fitted length, ``F = p A`` [N]; inverse of the above."""
    return pressure * plunger_area(diameter)


def force_at(length: Floats, free_length: Floats, rate: Floats) -> Floats:
    """Force at a length, ``F = k (L0 - L)``, none where it is longer than free [N].

    ``length`` and ``free_length`` [m], ``rate`` [N/m].

    >>> round(float(force_at(1.44, 2.125, 27.0)), 1)  # in and lbf/in give lbf
    18.5

    Source: Hooke; data of US Army TM 10-3930-638-24&P.
    """
    return np.maximum(rate * (np.asarray(free_length) - length), 0.0)


def fitted_length(pressure: Floats, diameter: Floats, free_length: Floats, rate: Floats) -> Floats:
    """Length at which the spring must sit to open at a pressure, ``L = L0 - p A/k`` [m].

    ``pressure`` [Pa], ``diameter`` of the plunger and ``free_length`` [m], ``rate`` [N/m].
    """
    return free_length - force_to_open(pressure, diameter) / rate


def shim_for(more: Floats, diameter: Floats, rate: Floats) -> Floats:
    """Shim that adds so much to the setting, ``s = dp A/k`` [m]; below zero: take so much out.

    ``more`` [Pa], ``diameter`` [m], ``rate`` [N/m].

    Source: follows from the force balance.
    """
    return force_to_open(more, diameter) / rate

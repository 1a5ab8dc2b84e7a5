"""Pressure lost and gained on the way: pipes, fittings, the filter, turning drillings.

Low-shear viscosity throughout: a passage does not shear the oil hard enough to thin it.
"""

from __future__ import annotations

import numpy as np

from diagnose.hydraulics.ranges import Floats, refuse_outside, refuse_unless_positive

LAMINAR_END = 2300.0  #: Reynolds number below which pipe flow is laminar
TURBULENT_START = 4000.0  #: and above which it is taken as fully turbulent
BLASIUS = 0.316  #: f = 0.316 Re^-1/4 in a smooth pipe


def reynolds(q: Floats, mu: Floats, rho: Floats, diameter: Floats) -> Floats:
    """Reynolds number of flow in a round pipe, ``Re = 4 rho |Q| / (pi d mu)``.

    ``q`` flow [m3/s], ``mu`` viscosity [Pa·s], ``rho`` density [kg/m3], ``diameter`` [m].

    Thirty litres a minute of hot oil in a 12 mm gallery are neither laminar nor turbulent:

    >>> round(float(reynolds(30 / 60e3, 0.0118, 818.0, 0.012)))
    3678

    Source: definition.
    """
    return 4 * rho * np.abs(q) / (np.pi * diameter * mu)


def excess_over_laminar(reynolds_number: Floats) -> Floats:
    """Friction as a multiple of what laminar flow of the same Reynolds number would have [1].

    ``1`` below 2300, ``0.316 Re^0.75 / 64`` (Blasius, smooth pipe) above 4000, and between the
    two a straight line in the friction factor, so that loss always rises with flow.
    Good to Re about 1e5.

    >>> [round(float(excess_over_laminar(re)), 2) for re in (300.0, 2300.0, 4000.0, 16000.0)]
    [1.0, 1.0, 2.48, 7.02]

    Source: Massey & Ward-Smith, Mechanics of Fluids (laminar pipe, Blasius); the bridge between
    is a judgement.
    """
    root = np.sqrt(reynolds_number)
    turbulent = BLASIUS / 64 * root * np.sqrt(root)
    share = (reynolds_number - LAMINAR_END) / (TURBULENT_START - LAMINAR_END)
    first = 64 / LAMINAR_END
    last = BLASIUS * TURBULENT_START**-0.25
    bridge = (first + share * (last - first)) * reynolds_number / 64
    return np.where(share <= 0, 1.0, np.where(share >= 1, turbulent, bridge))


def friction_factor(reynolds_number: Floats) -> Floats:
    """Darcy friction factor of a smooth round pipe, ``64/Re`` then ``0.316 Re^-1/4`` [1].

    ``reynolds_number`` above zero; good to about 1e5.

    >>> round(float(friction_factor(640.0)), 3), round(float(friction_factor(1e4)), 4)
    (0.1, 0.0316)

    Source: as ``excess_over_laminar``.
    """
    refuse_unless_positive(reynolds_number=reynolds_number)
    return 64 / reynolds_number * excess_over_laminar(reynolds_number)


def pipe_drop(q: Floats, mu: Floats, rho: Floats, diameter: Floats, length: Floats) -> Floats:
    """Pressure lost to friction in a smooth round pipe [Pa].

    ``dp = 128 mu L Q / (pi d^4)`` while laminar, ``dp = f (L/d) rho v^2 / 2`` beyond.
    ``q`` flow [m3/s], ``mu`` [Pa·s], ``rho`` [kg/m3], ``diameter`` and ``length`` [m].

    A quarter metre of 16 mm pickup tube is nothing hot and everything at -10 C:

    >>> round(float(pipe_drop(60 / 60e3, 0.0118, 818.0, 0.016, 0.25)) / 1e3, 1)
    5.8
    >>> round(float(pipe_drop(30 / 60e3, 1.893, 880.0, 0.016, 0.25)) / 1e3)
    147

    Source: Massey & Ward-Smith, Mechanics of Fluids, Example 6.1.
    """
    laminar = 128 * mu * length * q / (np.pi * diameter**4)
    return laminar * excess_over_laminar(reynolds(q, mu, rho, diameter))


def fitting_drop(
    q: Floats, rho: Floats, diameter: Floats, k: Floats, k_laminar: Floats = 0.0, mu: Floats = 0.0
) -> Floats:
    """Pressure lost in entrances, bends and cross-drillings, ``dp = (K + K1/Re) rho v^2/2`` [Pa].

    ``q`` [m3/s], ``rho`` [kg/m3], ``diameter`` [m], ``k`` the sum of loss coefficients [1]
    (entrance 0.5, exit 1, drilled bend 1.1-1.5, sharp cross-drilling 1.5-2), ``k_laminar`` the
    two-K addition at low Reynolds number [1] with ``mu`` [Pa·s].

    Twice the flow loses four times the pressure:

    >>> one, two = (float(fitting_drop(q / 60e3, 818.0, 0.011, 6.0)) for q in (20, 40))
    >>> round(one / 1e3), round(two / one, 2)
    (30, 4.0)

    Source: loss-coefficient and two-K forms; the coefficients are recalled, not re-read.
    """
    v = 4 * q / (np.pi * diameter**2)
    return k * rho * v * np.abs(v) / 2 + k_laminar * mu * v / (2 * diameter)


def filter_drop(
    q: Floats, mu: Floats, resistance: Floats, bypass: Floats = np.inf, override: Floats = 0.0
) -> Floats:
    """Pressure lost over a full-flow filter and its bypass, ``min(R mu Q, p_bp + r Q)`` [Pa].

    ``q`` [m3/s], ``mu`` [Pa·s], ``resistance`` of the element [1/m3] (rises as it loads),
    ``bypass`` pressure at which the bypass opens [Pa], ``override`` its rise with flow
    [Pa·s/m3]. Darcy, so laminar; a bypass stuck shut is ``bypass=inf``.

    Every element is bypassed when cold, or gallery pressure would be far too low:

    >>> clean = 70e3 / 1e-3 / 0.0118
    >>> [round(float(filter_drop(15 / 60e3, mu, clean, 100e3)) / 1e3) for mu in (0.0118, 0.84)]
    [18, 100]

    Source: Darcy's law; bypass 15 psi on spin-on filters, 160 kPa in one maker's service manuals.
    """
    return np.minimum(resistance * mu * q, bypass + override * q)


def centrifugal_head(rho: Floats, omega: Floats, r_in: Floats, r_out: Floats) -> Floats:
    """Pressure that oil turning with the crank gains going outward [Pa].

    ``dp = rho omega^2 (r_out^2 - r_in^2) / 2``; negative when it must run inward.
    ``rho`` [kg/m3], ``omega`` [rad/s], radii of entry and exit from the crank's axis [m].

    From main journal to crankpin, a little at idle and a lot at speed (psi):

    >>> from math import pi
    >>> [round(float(centrifugal_head(818, n * pi / 30, 0.0381, 0.061)) / 6894.76, 1)
    ...  for n in (1000, 3000, 6000)]
    [1.5, 13.3, 53.1]

    Source: forced vortex; form in firgelliauto.com, centrifugal crank-pin oiler. Brooks &
    Sparrow, SAE 270033 (1927): it rules rod oil flow at high speed.
    """
    refuse_outside("radius", r_in, 0.0, np.inf, "m")
    refuse_outside("radius", r_out, 0.0, np.inf, "m")
    return rho * omega**2 * (r_out**2 - r_in**2) / 2

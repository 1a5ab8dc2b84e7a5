"""The oil pump: displacement, slip, filling, torque and power.

A positive-displacement pump makes flow; the engine makes pressure.
"""

from __future__ import annotations

import numpy as np

from diagnose.hydraulics.leaks import slot_flow
from diagnose.hydraulics.ranges import Floats, refuse_outside, refuse_unless_positive


def displacement_gear(outer_diameter: Floats, inner_diameter: Floats, length: Floats) -> Floats:
    """Displacement of an external gear pair, ``V = (pi/4)(Do^2 - Di^2) b`` [m3/rev].

    ``outer_diameter`` over the teeth, ``inner_diameter`` ``= 2a - Do`` with ``a`` the centre
    distance, gear ``length`` ``b`` [m]. Counts the tooth spaces as half the ring of each gear.

    Gears half as long again displace half as much again:

    >>> stock, tall = (float(displacement_gear(0.038, 0.024, b)) for b in (0.0305, 0.04575))
    >>> round(stock * 1e6, 1), round(tall / stock, 2)
    (20.8, 1.5)

    Source: Esposito, Fluid Power with Applications, Example 5-1.
    """
    refuse_unless_positive("m", outer_diameter=outer_diameter, length=length)
    refuse_outside("inner over outer diameter", inner_diameter / outer_diameter, 0.0, 1.0)
    return np.pi / 4 * (outer_diameter**2 - inner_diameter**2) * length


def displacement_gear_bores(bore: Floats, across: Floats, length: Floats) -> Floats:
    """Displacement measured from the pump body, ``V = 6 W (2D - L)(L - D)/2`` [m3/rev].

    ``bore`` diameter D, ``across`` both bores L, body depth ``length`` W [m]. For
    ``D < L < 2D``. Some 5 % below ``displacement_gear``.

    >>> round(float(displacement_gear_bores(3.0, 5.5, 1.0)), 2)  # any one unit of length
    3.75

    Source: hydraulic-systems.com, pump replacement reference.
    """
    refuse_outside("distance across both bores over bore", across / bore, 1.0, 2.0)
    return 6 * length * (2 * bore - across) * (across - bore) / 2


def displacement_gerotor(tip_diameter: Floats, eccentricity: Floats, length: Floats) -> Floats:
    """Displacement of a gerotor per turn of the inner rotor, ``V ~ 2 pi e (Da - 2e) b`` [m3/rev].

    ``tip_diameter`` of the inner rotor, ``eccentricity`` between the rotors, ``length`` [m].
    An approximation; a published flow is the better source of a displacement.

    >>> round(float(displacement_gerotor(0.057, 0.0035, 0.010)) * 1e6, 1)
    11.0

    Source: own derivation from the area swept by the inner rotor.
    """
    refuse_outside("eccentricity over tip diameter", eccentricity / tip_diameter, 0.0, 0.5)
    return 2 * np.pi * eccentricity * (tip_diameter - 2 * eccentricity) * length


def theoretical_flow(displacement: Floats, speed: Floats) -> Floats:
    """Flow of a pump without slip, ``Q = V n`` [m3/s].

    ``displacement`` [m3/rev], ``speed`` of the pump itself [rev/s]: half the crank's for a
    pump driven off the camshaft or distributor.

    >>> round(float(theoretical_flow(20.8e-6, 700 / 60 / 2)) * 60e3, 2)  # hot idle, l/min
    7.28

    Source: definition.
    """
    return displacement * speed


def slip_tip(
    dp: Floats,
    mu: Floats,
    tip_clearance: Floats,
    gear_length: Floats,
    land: Floats,
    *,
    paths: Floats = 2.0,
    tip_speed: Floats = 0.0,
) -> Floats:
    """Oil that slips back past the tooth tips, ``Q = m (b h^3 dp/(12 mu l) - u b h/2)`` [m3/s].

    ``dp`` over the pump [Pa], ``mu`` [Pa·s], ``tip_clearance`` ``h`` between tip and body (one
    gap, so the radial one) [m], ``gear_length`` ``b`` [m], ``land`` the effective length of all
    sealing tips in series [m], ``paths`` gears beside each other [1], ``tip_speed`` ``u`` [m/s].
    Never below zero: dragged along, the teeth carry oil forward, which displacement counts.
    Laminar, clearance far below land.

    Twice the gap slips eight times as much:

    >>> new, worn = (float(slip_tip(345e3, 0.0118, h, 0.0305, 0.0045)) for h in (75e-6, 150e-6))
    >>> round(new * 60e3, 2), round(worn / new, 1)
    (0.84, 8.0)

    Source: Massey & Ward-Smith, Mechanics of Fluids, Example 6.3 (slot with a moving wall).
    """
    one = slot_flow(dp, mu, tip_clearance, gear_length, land, wall_speed=-tip_speed)
    return np.maximum(paths * one, 0.0)


def slip_end(
    dp: Floats, mu: Floats, end_clearance: Floats, width_over_length: Floats, faces: Floats
) -> Floats:
    """Oil that slips back over the gear faces, ``Q = m (w/L) h^3 dp / (12 mu)`` [m3/s].

    ``dp`` [Pa], ``mu`` [Pa·s], ``end_clearance`` ``h`` at one face [m] (half the end float of a
    gear), ``width_over_length`` of the leak path [1] (1 to 3), ``faces`` [1] (4 for two gears).

    >>> round(float(slip_end(345e3, 0.0118, 38.1e-6, 1.5, 4)) * 60e3, 3)
    0.049

    Source: laminar slot, Massey & Ward-Smith; the effective width is a judgement.
    """
    return faces * slot_flow(dp, mu, end_clearance, width_over_length, 1.0)


def fill_share(inlet_pressure: Floats, least: Floats, rho: Floats, tip_speed: Floats) -> Floats:
    """Share of its displacement a pump can fill, ``min(1, sqrt((p_in - p_least)/(rho u^2/2)))`` [1].

    ``inlet_pressure`` absolute [Pa], ``least`` the absolute pressure at which nothing enters
    any more [Pa] (air comes out of solution), ``rho`` [kg/m3], ``tip_speed`` ``u`` [m/s].
    The shape only; the scale is the head that turns oil into the tooth spaces.

    A half-speed gear pump fills at pressures that starve a gerotor on the crank's nose:

    >>> [round(float(fill_share(85e3, 60e3, 818.0, u)), 2) for u in (6.0, 24.0)]
    [1.0, 0.33]

    Source: own derivation from the head of a turning tooth space; incomplete filling as such in
    Pan, Vacca et al., International Journal of Fluid Power (2025).
    """
    head = np.maximum(rho * tip_speed**2 / 2, 1e-9)
    return np.sqrt(np.minimum(np.maximum(inlet_pressure - least, 0.0) / head, 1.0))


def volumetric_efficiency(q: Floats, displacement: Floats, speed: Floats) -> Floats:
    """Delivered over displaced, ``eta_v = Q/(V n)`` [1].

    ``q`` delivered [m3/s], ``displacement`` [m3/rev], ``speed`` of the pump [rev/s].

    Slip costs a gerotor a quarter at idle and a tenth at speed:

    >>> [round(float(volumetric_efficiency(q / 60e3, 10.375e-6, n / 60)), 2)
    ...  for q, n in ((4.6, 600), (47.0, 5000))]
    [0.74, 0.91]

    Source: Esposito, Fluid Power with Applications, Example 5-1.
    """
    return q / (displacement * speed)


def drive_torque(displacement: Floats, dp: Floats) -> Floats:
    """Torque that makes pressure without friction, ``T = V dp / (2 pi)`` [N·m].

    ``displacement`` [m3/rev], ``dp`` over the pump [Pa].

    >>> round(float(drive_torque(20.8e-6, 400e3)), 2)
    1.32

    Source: Esposito, Fluid Power with Applications, Example 5-8.
    """
    return displacement * dp / (2 * np.pi)


def shaft_power(
    displacement: Floats, speed: Floats, dp: Floats, mechanical_efficiency: Floats = 0.85
) -> Floats:
    """Power to turn the pump, ``P = dp V n / eta_m`` [W].

    ``displacement`` [m3/rev], ``speed`` of the pump [rev/s], ``dp`` [Pa],
    ``mechanical_efficiency`` [1]: 0.8 to 0.9 warm, much lower cold.

    Oil pressure is cheap until the relief valve is shimmed up:

    >>> [round(float(shaft_power(20.8e-6, 25.0, p, 1.0))) for p in (400e3, 800e3)]
    [208, 416]

    Source: Esposito, Fluid Power with Applications, Example 5-8.
    """
    refuse_outside("mechanical efficiency", mechanical_efficiency, 0.0, 1.0, open_low=True)
    return dp * displacement * speed / mechanical_efficiency

"""Suction side: lift, screen, tube, the gap under the pickup, and air drawn in.

What is lost here cannot be seen on the gauge until the pump no longer fills; then pressure falls
with engine speed. Pressures at the pump inlet are absolute.
"""

from __future__ import annotations

import numpy as np

from diagnose.hydraulics.passage import fitting_drop, pipe_drop
from diagnose.hydraulics.ranges import Floats, refuse_outside, refuse_unless_positive

GRAVITY = 9.80665  #: m/s2
AIR_DENSITY = 1.1  #: kg/m3, warm air in the crankcase
CURTAIN_CD = 0.6  #: of the sharp-edged gap under a pickup rim and of screen holes
LEAK_CD = 0.62  #: of a crack or a gap at a seal


def gap_drop(
    q: Floats,
    gap: Floats,
    rim: Floats,
    mu: Floats,
    rho: Floats,
    lip_ratio: Floats = 1.1,
    cd: Floats = CURTAIN_CD,
) -> Floats:
    """Pressure lost between the pickup's rim and the sump floor [Pa].

    ``dp = (rho/2) (Q / (Cd pi D h))^2 + 6 mu Q ln(R2/R1) / (pi h^3)``: a curtain, then a radial
    slot. ``q`` [m3/s], ``gap`` ``h`` [m], ``rim`` diameter ``D`` [m], ``mu`` [Pa·s], ``rho``
    [kg/m3], ``lip_ratio`` outer over inner radius of the rim [1], ``cd`` [1]. Too wide a gap
    lets the pickup draw air in a corner; that is not friction and not in here.

    A quarter inch loses nothing, half a millimetre takes all a pump can draw (kPa, 60 l/min):

    >>> [round(float(gap_drop(1e-3, h, 0.065, 0.0118, 818.0)) / 1e3) for h in (6.35e-3, 0.5e-3)]
    [1, 126]

    Source: orifice law and Massey & Ward-Smith, Mechanics of Fluids, Example 6.2; the sum and
    the rim are an own model.
    """
    refuse_unless_positive("m", pickup_gap=gap, rim_diameter=rim)
    refuse_outside("outer over inner rim radius", lip_ratio, 1.0, np.inf, open_low=True)
    curtain = rho / 2 * (q / (cd * np.pi * rim * gap)) ** 2
    slot = 6 * mu * q * np.log(lip_ratio) / (np.pi * gap**3)
    return curtain + slot


def screen_drop(
    q: Floats,
    mu: Floats,
    rho: Floats,
    free_area: Floats,
    open_share: Floats = 1.0,
    hole: Floats = 1e-3,
    depth: Floats = 1e-3,
) -> Floats:
    """Pressure lost in the pickup screen [Pa].

    ``dp = (rho/2) (v/Cd)^2 + 32 mu l v / d^2`` with ``v = Q/(A s)``: each hole an orifice and a
    short laminar pipe. ``q`` [m3/s], ``mu`` [Pa·s], ``rho`` [kg/m3], ``free_area`` ``A`` of all
    holes [m2], ``open_share`` ``s`` not blocked [1], ``hole`` diameter and ``depth`` with its
    end effects [m].

    Sludge is not felt until it has nearly closed the screen (kPa, 30 l/min hot):

    >>> [round(float(screen_drop(5e-4, 0.0118, 818.0, 1.5e-3, s)) / 1e3, 1)
    ...  for s in (1.0, 0.5, 0.1, 0.05)]
    [0.3, 0.8, 13.9, 53.0]

    Source: orifice and laminar pipe laws put together; area and hole are judgement.
    """
    refuse_outside("open share of the screen", open_share, 0.0, 1.0, open_low=True)
    v = q / (free_area * open_share)
    return rho / 2 * (v / CURTAIN_CD) ** 2 + 32 * mu * depth * v / hole**2


def inlet_pressure(
    q: Floats,
    mu: Floats,
    rho: Floats,
    *,
    tube_diameter: Floats,
    tube_length: Floats,
    fittings: Floats,
    lift: Floats = 0.0,
    restrictions: Floats = 0.0,
    crankcase: Floats = 101325.0,
) -> Floats:
    """Absolute pressure at the pump inlet, never below zero [Pa].

    ``p_in = p_case - rho g h - dp_restrictions - dp_tube - (1 + sum K) rho v^2/2``.
    ``q`` drawn from the sump [m3/s], ``mu`` [Pa·s], ``rho`` [kg/m3], ``tube_diameter`` and
    ``tube_length`` [m], ``fittings`` sum K [1], ``lift`` from oil level up to the pump [m],
    ``restrictions`` lost in screen and gap [Pa], ``crankcase`` pressure, absolute [Pa].

    A 16 mm tube gives up a third of an atmosphere at 60 l/min (kPa):

    >>> tube = dict(tube_diameter=0.016, tube_length=0.25, fittings=1.5)
    >>> [round(float(inlet_pressure(q / 60e3, 0.0118, 818.0, **tube)) / 1e3) for q in (6, 30, 60)]
    [101, 94, 70]

    Source: NPSH form, gear-pump note of fbbombas.com.
    """
    tube = pipe_drop(q, mu, rho, tube_diameter, tube_length)
    heads = fitting_drop(q, rho, tube_diameter, 1 + fittings)
    return np.maximum(crankcase - rho * GRAVITY * lift - restrictions - tube - heads, 0.0)


def air_drawn(inlet_pressure: Floats, leak_area: Floats, crankcase: Floats = 101325.0) -> Floats:
    """Air drawn in through a leak in the suction tube [m3/s at inlet pressure].

    ``Q = Cd A sqrt(2 (p_case - p_in)/rho_air)``; ``inlet_pressure`` and ``crankcase`` absolute
    [Pa], ``leak_area`` above the oil [m2]. Below the oil level the same crack draws only oil.

    One square millimetre at 5 kPa of suction lets in more than a fifth of an idling pump's flow:

    >>> round(float(air_drawn(96325.0, 1e-6)) * 60e3, 1)  # l/min
    3.5

    Source: orifice law.
    """
    suction = np.maximum(crankcase - inlet_pressure, 0.0)
    return LEAK_CD * leak_area * np.sqrt(2 * suction / AIR_DENSITY)

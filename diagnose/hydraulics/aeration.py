"""Air in the oil: the flow it costs."""

from __future__ import annotations

from diagnose.hydraulics.ranges import Floats, refuse_outside, refuse_unless_positive

ATMOSPHERE = 101325.0  #: Pa


def delivered_share(air: Floats, p_in: Floats, p_out: Floats) -> Floats:
    """Share of a pump's volume that arrives as volume at its outlet, the air being squeezed [1].

    Q_out/Q_in = (1 - air) + air p_in/p_out.

    air: share of the volume at the inlet that is bubbles [1]; p_in, p_out: absolute [Pa].
    Isothermal, nothing dissolves. A tenth of air costs less than a tenth of the flow:

    >>> round(float(delivered_share(0.1, 101325.0, 4e5 + 101325.0)), 2)
    0.92
    """
    refuse_outside("share of air", air, 0.0, 1.0)
    refuse_unless_positive("Pa", absolute_pressure=p_out)
    return (1 - air) + air * p_in / p_out

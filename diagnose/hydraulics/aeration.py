"""Air in the oil: the flow it costs, and the compressibility it gives the oil."""

from __future__ import annotations

import numpy as np

from diagnose.hydraulics.ranges import Floats, refuse_outside, refuse_unless_positive

ATMOSPHERE = 101325.0  #: Pa
BULK_MODULUS = 1.6e9  #: Pa, oil without air (from memory)


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


def bulk_modulus_aerated(
    pressure: Floats, air: Floats, bulk_modulus: Floats = BULK_MODULUS, n: Floats = 1.4
) -> Floats:
    """Stiffness [Pa] of oil with bubbles in it.

    E = E_l (1 + a (pa/(pa+p))^(1/n)) / (1 + a pa^(1/n) E_l / (n (pa+p)^((n+1)/n))).

    pressure: gauge [Pa]; air: gas over liquid volume at atmospheric pressure [1];
    bulk_modulus: of the oil alone [Pa]; n: polytropic exponent of the gas [1].

    Two parts of air in a hundred make oil at rest 200 times as soft, which is what a needle
    that trembles shows:

    >>> round(float(bulk_modulus_aerated(0.0, 0.02)) / 1e6)
    7

    Source: MathWorks, Hydraulic Fluid reference.
    """
    refuse_outside("share of air", air, 0.0, np.inf)
    absolute = ATMOSPHERE + pressure
    refuse_unless_positive("Pa", absolute_pressure=absolute)
    squeezed = air * (ATMOSPHERE / absolute) ** (1 / n)
    return bulk_modulus * (1 + squeezed) / (1 + squeezed * bulk_modulus / (n * absolute))

"""Viscosity index of an oil, and the viscosity at 40 °C it implies.

The reference oils' L (index 0) and H (index 100) are quadratics in the viscosity at 100 °C,
range by range, as ASTM D2270 gives them for computer use. The coefficients here are from memory;
they reproduce the standard's printed table, 2 to 70 mm2/s, to 0.12 % throughout (tested).
"""

from __future__ import annotations

import numpy as np

from diagnose.hydraulics.ranges import FloatArray, Floats, refuse_outside

#: from [mm2/s], then L = a Y^2 + b Y + c and H = d Y^2 + e Y + f from there to the next row
REFERENCE_OILS = np.array(
    [
        (2.0, 1.14673, 1.7576, -0.109, 0.84155, 1.5521, -0.077),
        (3.8, 3.38095, -15.4952, 33.196, 0.78571, 1.7929, -0.183),
        (4.4, 2.50000, -7.2143, 13.812, 0.82143, 1.5679, 0.119),
        (5.0, 0.10100, 16.6350, -45.469, 0.04985, 9.1613, -18.557),
        (6.4, 3.35714, -23.5643, 78.466, 0.22619, 7.7369, -16.656),
        (7.0, 0.01191, 21.4750, -72.870, 0.79762, -0.7321, 14.610),
        (7.7, 0.41858, 16.1558, -56.040, 0.05794, 10.5156, -28.240),
        (9.0, 0.88779, 7.5527, -16.600, 0.26665, 6.7015, -10.810),
        (12.0, 0.76720, 10.7972, -38.180, 0.20073, 8.4658, -22.490),
        (15.0, 0.97305, 5.3135, -2.200, 0.28889, 5.9741, -4.930),
        (18.0, 0.97256, 5.2500, -0.980, 0.24504, 7.4160, -16.730),
        (22.0, 0.91413, 7.4759, -21.820, 0.20323, 9.1267, -34.230),
        (28.0, 0.87031, 9.7157, -50.770, 0.18411, 10.1015, -46.750),
        (40.0, 0.84703, 12.6752, -133.310, 0.17029, 11.4866, -80.620),
        (55.0, 0.85921, 11.1009, -83.190, 0.17130, 11.3680, -76.940),
        (70.0, 0.8353, 14.67, -216.0, 0.1684, 11.85, -97.0),
    ]
)


def reference_oils(kv100: Floats) -> tuple[FloatArray, FloatArray]:
    """Viscosity at 40 °C of the reference oils of index 0 and 100, L and H [m2/s].

    kv100: viscosity at 100 °C [m2/s], from 2e-6 up.

    Raises ValueError below 2 mm2/s, where the index is not defined.
    """
    refuse_outside("viscosity at 100 °C", kv100, 2e-6, np.inf, "m2/s")
    y = np.asarray(kv100) * 1e6
    row = np.searchsorted(REFERENCE_OILS[:, 0], y, side="right") - 1
    _, a, b, c, d, e, f = np.moveaxis(REFERENCE_OILS[row], -1, 0)
    return (a * y**2 + b * y + c) * 1e-6, (d * y**2 + e * y + f) * 1e-6


def viscosity_index(kv40: Floats, kv100: Floats) -> Floats:
    """Viscosity index by ASTM D2270.

    VI = 100 (L - U)/(L - H) up to 100; above, VI = 100 + (10^N - 1)/0.00715 with
    N = (log H - log U)/log Y.

    kv40, kv100: viscosity at 40 and 100 °C [m2/s]; kv100 from 2e-6 up.

    A multigrade thins far less than a straight oil as thick when hot:

    >>> round(float(viscosity_index(96e-6, 14.4e-6)))
    155
    >>> round(float(viscosity_index(141e-6, 14.4e-6)))
    100

    Source: ASTM D2270.
    """
    low, high = reference_oils(kv100)
    straight = 100 * (low - kv40) / (low - high)
    n = (np.log10(high) - np.log10(kv40)) / np.log10(np.asarray(kv100) * 1e6)
    # never raised where the first form holds: the index is at most 100 there and n at most 0
    multigrade = 100 + (10 ** np.maximum(n, 0.0) - 1) / 0.00715
    return np.where(straight <= 100, straight, multigrade)[()]


def kv40_from_vi(kv100: Floats, vi: Floats) -> Floats:
    """Viscosity at 40 °C [m2/s] of an oil from its index: the inverse of D2270.

    U = L - VI (L - H)/100 up to 100; above, U = H / Y^N with N = log10(1 + 0.00715 (VI - 100)).

    kv100: viscosity at 100 °C [m2/s], from 2e-6 up; vi: viscosity index [1], 0 to 400.

    >>> round(float(kv40_from_vi(14.4e-6, 155)) * 1e6)
    96

    Source: ASTM D2270.
    """
    refuse_outside("viscosity index", vi, 0.0, 400.0)
    low, high = reference_oils(kv100)
    n = np.log10(1 + 0.00715 * np.maximum(np.asarray(vi) - 100, 0.0))
    straight = low - np.asarray(vi) * (low - high) / 100
    multigrade = high / (np.asarray(kv100) * 1e6) ** n
    return np.where(np.asarray(vi) <= 100, straight, multigrade)[()]

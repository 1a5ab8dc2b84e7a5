"""The parameters of the pressure law that circuits of the book's profiles would have.

``python -m tests.studies.law_of_circuits``

Engines are drawn about each profile as wide as calibration has them; the law is fitted to what each
shows from 700 to 4200 rpm and from 15 to 115 °C. Printed: median and spread of each parameter, the
correlation of the relief's slope and its override, which the law's prior takes from here, and how
far the law is from the circuits. The means are not taken over: real engines bend up with speed
where these circuits are straight.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from scipy.optimize import least_squares

from diagnose.circuit.calibration import WIDE
from diagnose.circuit.engine_model import Point, engine_of, shown
from diagnose.circuit.plausible_engines import drawn, varied
from diagnose.circuit.pressure_law import OVERRIDE, PRIOR, SLOPE, WIDTH, pressure
from diagnose.hydraulics.oil import T100, Oil, dynamic_viscosity
from diagnose.hydraulics.ranges import FloatArray
from knowledge.book import the_book
from knowledge.units import PSI

OIL = Oil.of_grade("15W-40")
STATES = [(n, t + 273.15) for t in (15, 35, 55, 75, 95, 115) for n in (700, 1100, 1800, 2800, 4200)]
NAMES = ("n40", "inertial", "film", "slope", "opens", "override")


def fitted(profiles: Sequence[str], each: int, seed: int = 3) -> tuple[FloatArray, FloatArray]:
    """The law's parameters without the gauge's (engines, 6), and its RMS from each circuit [psi].

    Weakly drawn to the law's prior, as what an engine does not show is not settled.
    """
    rng = np.random.default_rng(seed)
    rpm = np.array([n for n, _ in STATES], dtype=float)
    thick = dynamic_viscosity(OIL, np.array([t for _, t in STATES])) / dynamic_viscosity(OIL, T100)
    found, misses = [], []
    for name in profiles:
        figures = {k: v for k, (v, _) in the_book().profiles[name].numbers.items()}
        engines = varied(engine_of(figures, OIL), drawn(each, rng), WIDE)
        for wanted in shown(engines, [Point(n, t, 0.0) for n, t in STATES]) / PSI:

            def law(x: FloatArray) -> FloatArray:
                return np.asarray(pressure(np.append(x, 0.0)[None], rpm, thick)[0])

            def off(x: FloatArray, wanted: FloatArray = wanted) -> FloatArray:
                strayed = 0.25 * (x - PRIOR[:-1]) / WIDTH[:-1]
                return np.concatenate([(law(x) - wanted) / (2.0 + 0.04 * wanted), strayed])

            best = least_squares(off, PRIOR[:-1], max_nfev=60).x
            found.append(best)
            misses.append(float(np.sqrt(np.mean((law(best) - wanted) ** 2))))
    return np.array(found), np.array(misses)


def main() -> None:
    """Print the table."""
    found, misses = fitted(list(the_book().profiles), 60)
    for name, column in zip(NAMES, found.T, strict=True):
        print(f"{name:10} {np.median(column):6.2f}  spread {column.std():5.2f}")
    together = np.corrcoef(found[:, SLOPE], found[:, OVERRIDE])[0, 1]
    print(f"slope and override together {together:.2f}")
    print(f"the law misses these circuits by {np.median(misses):.1f} psi RMS (median)")


if __name__ == "__main__":
    main()

"""The whole circuit: the pressure at which the pump's oil and the engine's leaks are equal.

One unknown, the gallery pressure: everything else follows from it, and the pump's surplus falls
monotonically as it rises.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, TypeAlias

import numpy as np
from numpy.typing import NDArray

from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.network import STEP, Network, network_of
from diagnose.hydraulics.ranges import FloatArray, Floats
from diagnose.hydraulics.roots import falling_root

NO_FLOW = 25.0  #: a flow of e^-25 of the demand counts as none

Flags: TypeAlias = bool | NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Flows:
    """Flows [m3/s]; what the pump displaces is not all oil if it does not fill."""

    theoretical: Floats
    slip: Floats
    relief: Floats
    mains: Floats
    rods: Floats
    cams: Floats
    lifters: Floats
    jets: Floats
    other: Floats
    open_orifice: Floats
    hydrodynamic: Floats

    @property
    def engine(self) -> Floats:
        """Sum of the flows fed by the gallery."""
        pushed = self.mains + self.rods + self.cams + self.lifters + self.jets
        return pushed + self.other + self.open_orifice + self.hydrodynamic


@dataclass(frozen=True, slots=True)
class State:
    """The circuit at one speed and temperature; arrays of the broadcast shape, or numbers."""

    gallery_pressure: Floats  #: gauge [Pa]
    pump_pressure: Floats  #: gauge [Pa]
    gauge_pressure: Floats  #: where the gauge is tapped [Pa]
    inlet_pressure: Floats  #: at the pump, absolute [Pa]
    fill_share: Floats  #: of its displacement the pump fills [1]
    air_share: Floats  #: of what enters the pump [1]
    flows: Flows
    imbalance: Floats  #: supply less demand, zero but for rounding [m3/s]
    starved: Flags  #: no pressure, and less oil than the turning bearings would take
    cavitating: Flags  #: the pump does not fill


def solve(engine: Engine, rpm: Floats, oil_temperature: Floats) -> State:
    """The state of the circuit at an engine speed and a gallery oil temperature.

    Finds the gallery pressure ``p`` at which

    ``V n fill(p_in) air(p_in, p_pump) - slip(p_pump) - relief(p_pump) = sum of leaks(p)``,

    with ``p_pump = p + filter + passage`` and ``p_in`` what lift, gap, screen and tube leave.
    ``rpm`` of the crank [rev/min], above zero; ``oil_temperature`` [K], also of the sump.
    Engine fields, ``rpm`` and ``oil_temperature`` broadcast: shape the engines ``(n, 1, 1)``,
    the speeds ``(m, 1)``, the temperatures ``(k,)`` for all at once.

    The surplus falls with ``p`` without exception, so there is one root and a bracket finds it.
    If even at ``p = 0`` the pump cannot feed what the turning bearings throw out, the unknown
    becomes the share they get: the state is ``starved``, never a negative pressure. Slip and
    (unless set otherwise) relief flow return to the pump inlet and do not pass the pickup.
    Bearing films are ``film_rise`` hotter than the gallery; lifters, pump gaps, passages and
    jets are at gallery temperature. A model built of listed leaks demands too little: calibrate
    ``other_conductance``, and trust trends more than single figures (some 40 %).

    Worn bearings halve hot idle and hardly show at speed (psi):

    >>> from diagnose.hydraulics.engine import set_b
    >>> from knowledge.units import INCH, PSI
    >>> fit, worn = set_b(0.0025 * INCH), set_b(0.0035 * INCH)
    >>> [round(float(solve(e, n, 373.15).gallery_pressure) / PSI) for e in (fit, worn)
    ...  for n in (700, 3000)]
    [31, 53, 15, 46]

    Source: continuity; elements as their modules say.
    """
    network = network_of(engine, np.asarray(rpm, float), np.asarray(oil_temperature, float))
    root = _balanced(network)
    return _state(engine, root, network.at(root))


def surplus(engine: Engine, rpm: Floats, oil_temperature: Floats) -> Callable[[Floats], Floats]:
    """The pump's surplus over demand [m3/s] as a function of gallery pressure [Pa].

    As ``solve`` has it: for plots and for other solvers.
    """
    network = network_of(engine, np.asarray(rpm, float), np.asarray(oil_temperature, float))
    return lambda p: network.at(np.log1p(np.asarray(p) / STEP))["surplus"]


def _balanced(network: Network) -> FloatArray:
    """The unknown of ``Network.at`` at which supply and demand are equal."""
    low, high = _bracket(network)
    return falling_root(lambda unknown: network.at(unknown)["surplus"], low, high)


def _bracket(network: Network) -> tuple[FloatArray, FloatArray]:
    """From no oil at all to the pressure at which the laminar leaks alone take all there is."""
    conductance = network.mains + network.cams + network.lifters + network.other + network.slip
    top = np.log1p(network.theoretical / conductance / STEP)
    shape = np.broadcast_shapes(np.shape(top), np.shape(network.at(np.asarray(top))["surplus"]))
    return np.full(shape, -NO_FLOW), np.broadcast_to(top, shape)


def _state(engine: Engine, root: FloatArray, found: dict[str, Any]) -> State:
    def whole(x: Any) -> Any:
        return np.broadcast_to(x, root.shape)[()]

    gallery, outlet = found["p"], found["p_pump"]
    return State(
        gallery_pressure=whole(gallery),
        pump_pressure=whole(outlet),
        gauge_pressure=whole(outlet if engine.gauge_tap == "pump" else gallery),
        inlet_pressure=whole(found["p_in"]),
        fill_share=whole(found["fill"]),
        air_share=whole(found["air"]),
        flows=Flows(**{name: whole(q) for name, q in found["flows"].items()}),
        imbalance=whole(found["surplus"]),
        starved=whole(root < 0),
        cavitating=whole(found["fill"] < 1),
    )

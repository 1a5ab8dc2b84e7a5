"""What can be measured or changed on an engine's oil circuit, by name, with units at the door.

Imported by ``circuit`` and ``signoff``. Every clearance is on the diameter, as the workshop has it.
``read`` takes a knob's value from an engine, ``turned`` gives an engine with another.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from diagnose.hydraulics.engine import Engine, reclearanced
from diagnose.hydraulics.oil import (
    PETROL,
    T40,
    T100,
    chart_height,
    diluted,
    from_chart_height,
    walther,
)
from diagnose.hydraulics.ranges import Floats
from diagnose.hydraulics.relief import shim_gain
from knowledge.units import (
    COUNT,
    FRACTION,
    INCH,
    LENGTH,
    PRESSURE,
    PSI,
    VISCOSITY,
    VOLUME,
    Dimension,
    show,
)

THOU = INCH * 1e-3


@dataclass(frozen=True, slots=True)
class CircuitParameter:
    """One thing on the engine that has a value, in SI; ``possible`` bounds what can be real."""

    id: str
    says: str
    dimension: Dimension
    unit: str  #: to show it in
    possible: tuple[float, float]
    read: Callable[[Engine], Floats]
    apply: Callable[[Engine, Floats], Engine]
    error: float = 0.0  #: usual measuring error, one standard deviation, SI (judgement)
    also: tuple[str, ...] = ()

    def shown(self, value: Floats, unit: str | None = None) -> str:
        """The value in a unit, else in the knob's own; the middle one of many.

        >>> KNOBS["main_clearance"].shown(63.5e-6)
        '0.0025 in'
        """
        middle = value if isinstance(value, float) else float(np.median(value))
        return show(middle, self.dimension, unit or self.unit)


def with_fuel(engine: Engine, share: Floats) -> Engine:
    """So much petrol in the oil; diesel fuel thins less (see ``oil.DIESEL``)."""
    return replace(engine, oil=diluted(engine.oil, share, PETROL))


def with_viscosity(engine: Engine, kv100: Floats) -> Engine:
    """Oil found by the laboratory to have this viscosity at 100 °C [m2/s], its slope on the ASTM
    chart unchanged."""
    _, slope = walther(engine.oil.kv40, engine.oil.kv100)
    kv40 = from_chart_height(chart_height(kv100) + slope * np.log10(T100 / T40))
    return replace(engine, oil=replace(engine.oil, kv100=kv100, kv40=kv40))


def _displaced(engine: Engine, volume: Floats) -> Engine:
    """Longer gears in the same body shape: tip leakage grows with them."""
    longer = np.asarray(volume) / engine.pump_displacement
    return replace(
        engine, pump_displacement=volume, pump_gear_length=engine.pump_gear_length * longer
    )


def _shimmed(engine: Engine, shim: Floats) -> Engine:
    area = np.pi / 4 * np.asarray(engine.relief_plunger_diameter) ** 2
    gain = shim_gain(engine.relief_rate, shim, area)
    return replace(engine, relief_setting=engine.relief_setting + gain)


def _first(name: str) -> Callable[[Engine], Floats]:
    def read(engine: Engine) -> Floats:
        groups = getattr(engine, name)
        return groups[0].clearance_diametral if groups else np.nan

    return read


def _named(name: str, value: Floats) -> dict[str, Any]:
    return {name: value}


def _clearance(id_: str, says: str, group: str, most: float, *also: str) -> CircuitParameter:
    def apply(engine: Engine, value: Floats) -> Engine:
        groups: dict[str, Any] = {group: value}
        return reclearanced(engine, **groups)

    low = 0.2 * THOU
    return CircuitParameter(
        id_, says, LENGTH, "in", (low, most), _first(group), apply, 0.25 * THOU, also
    )


def _field(
    id_: str,
    says: str,
    dimension: Dimension,
    unit: str,
    possible: tuple[float, float],
    error: float = 0.0,
    also: tuple[str, ...] = (),
    field: str = "",
) -> CircuitParameter:
    name = field or id_
    return CircuitParameter(
        id_,
        says,
        dimension,
        unit,
        possible,
        lambda e: getattr(e, name),
        lambda e, v: replace(e, **_named(name, v)),
        error,
        also,
    )


_ALL = (
    _clearance("main_clearance", "main bearing clearance", "mains", 2e-3),
    _clearance("rod_clearance", "rod bearing clearance", "rods", 2e-3),
    _clearance("cam_bearing_clearance", "cam bearing clearance", "cams", 3e-3, "cam_clearance"),
    _clearance("lifter_clearance", "lifter bore clearance", "lifters", 1e-3, "tappet_clearance"),
    CircuitParameter(
        "pump_displacement",
        "pump displacement a turn of the pump",
        VOLUME,
        "cm3",
        (1e-6, 300e-6),
        lambda e: e.pump_displacement,
        _displaced,
        also=("pump_size",),
    ),
    _field(
        "pump_end_clearance", "end clearance of the pump", LENGTH, "in", (5e-6, 3e-3), 0.5 * THOU
    ),
    _field(
        "pump_side_clearance",
        "clearance between pump gear or rotor and body",
        LENGTH,
        "in",
        (5e-6, 3e-3),
        0.5 * THOU,
        ("pump_tip_clearance", "rotor_tip_clearance"),
        field="pump_tip_clearance",
    ),
    _field(
        "relief_setting",
        "pressure at which the relief valve opens",
        PRESSURE,
        "psi",
        (2 * PSI, 300 * PSI),
        2 * PSI,
        ("relief_pressure",),
    ),
    CircuitParameter(
        "relief_shim",
        "shim under the relief spring",
        LENGTH,
        "mm",
        (0.0, 15e-3),
        lambda e: 0.0 * np.asarray(e.relief_setting),
        _shimmed,
        also=("relief_washer",),
    ),
    CircuitParameter(
        "relief_seat_gap",
        "gap under the relief valve that should sit",
        LENGTH,
        "mm",
        (0.0, 9e-3),
        lambda e: np.asarray(e.relief_seat_leak) / e.relief_port_width,
        lambda e, v: replace(e, relief_seat_leak=np.asarray(v) * e.relief_port_width),
        0.1e-3,
    ),
    _field("pickup_gap", "gap from pickup to sump floor", LENGTH, "mm", (5e-5, 0.1), 0.3e-3),
    _field("pickup_tube", "bore of the pickup tube", LENGTH, "mm", (5e-3, 0.08), field="tube_diameter"),
    _field("screen_open_share", "open share of the pickup screen", FRACTION, "%", (0.01, 1.0), 0.05),
    _field(
        "filter_blocked", "resistance of the filter, times a clean one's", COUNT, "", (0.2, 1000.0)
    ),
    CircuitParameter(
        "open_hole",
        "bore of a hole that should be plugged",
        LENGTH,
        "mm",
        (0.0, 0.03),
        lambda e: np.sqrt(4 / np.pi * np.asarray(e.open_orifice_area)),
        lambda e, v: replace(e, open_orifice_area=np.pi / 4 * np.asarray(v) ** 2),
    ),
    CircuitParameter(
        "fuel_share",
        "fuel in the oil",
        FRACTION,
        "%",
        (0.0, 0.6),
        lambda e: 0.0 * np.asarray(e.oil.kv100),
        with_fuel,
        0.01,
    ),
    CircuitParameter(
        "viscosity_at_100c",
        "viscosity of the oil at 100 °C",
        VISCOSITY,
        "cSt",
        (1.5e-6, 60e-6),
        lambda e: e.oil.kv100,
        with_viscosity,
        0.2e-6,
    ),
)  # fmt: skip
CIRCUIT_PARAMETERS = {k.id: k for k in _ALL}
NAMES = {**CIRCUIT_PARAMETERS, **{a: k for k in _ALL for a in k.also}}

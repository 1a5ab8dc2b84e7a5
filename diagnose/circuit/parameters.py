"""Quantities that can be set on an engine's oil circuit, by name: how to read and set each.

What a quantity is, its range, unit and measuring error stand in ``knowledge``; here stands only
what it is on a hydraulic engine.
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
from knowledge.model import Quantity
from knowledge.stations.bearings import quantities as bearings
from knowledge.stations.delivery import quantities as delivery
from knowledge.stations.oil import quantities as oil
from knowledge.stations.pump import quantities as pump
from knowledge.stations.relief import quantities as relief
from knowledge.stations.suction import quantities as suction
from knowledge.stations.topend import quantities as topend
from knowledge.units import DIMENSIONS, MM, THOU, Dimension, show

# The formulas need some gap; a quantity measured as nothing is computed with these (judgement).
LEAST_FILM = 0.2 * THOU  #: m, on the diameter
LEAST_PUMP_GAP = 0.005 * MM  #: m
LEAST_PICKUP_GAP = 0.05 * MM  #: m


@dataclass(frozen=True, slots=True, kw_only=True)
class CircuitParameter:
    """A quantity that an engine of ``hydraulics`` has.

    ``read`` returns its value [SI] on an engine, an array where the engine's fields are arrays;
    ``apply`` returns the engine with another value.
    """

    quantity: Quantity
    read: Callable[[Engine], Floats]
    apply: Callable[[Engine, Floats], Engine]
    also: tuple[str, ...] = ()  #: other names for ``--set``
    gap: bool = False  #: a clearance oil leaks through: several combine by their mean flow

    @property
    def id(self) -> str:
        """The name of the quantity."""
        return self.quantity.id

    @property
    def says(self) -> str:
        """What it is, in a few words."""
        return self.quantity.short or self.quantity.says

    @property
    def dimension(self) -> Dimension:
        """The dimension its values are read and shown in."""
        return DIMENSIONS[self.quantity.dimension]

    @property
    def plausible(self) -> tuple[float, float]:
        """What can be real, SI."""
        return self.quantity.plausible

    @property
    def spread(self) -> float:
        """Usual measuring error, one standard deviation, SI."""
        return self.quantity.spread

    def shown(self, value: Floats, unit: str | None = None) -> str:
        """Return the value in a unit, else in the quantity's own; the median of an array.

        >>> CIRCUIT_PARAMETERS["main_clearance"].shown(63.5e-6)
        '0.0025 in'
        """
        middle = value if isinstance(value, float) else float(np.median(value))
        return show(middle, self.dimension, unit or self.quantity.unit)


def with_fuel(engine: Engine, share: Floats) -> Engine:
    """Return the engine with that share of petrol in its oil; diesel fuel thins less (``oil.DIESEL``)."""
    return replace(engine, oil=diluted(engine.oil, share, PETROL))


def with_viscosity(engine: Engine, kv100: Floats) -> Engine:
    """Return the engine with oil of this viscosity at 100 °C [m2/s].

    Its slope on the ASTM chart stays.
    """
    _, slope = walther(engine.oil.kv40, engine.oil.kv100)
    kv40 = from_chart_height(chart_height(kv100) + slope * np.log10(T100 / T40))
    return replace(engine, oil=replace(engine.oil, kv100=kv100, kv40=kv40))


def _with_displacement(engine: Engine, volume: Floats) -> Engine:
    """Longer gears in a body of the same shape: tip leakage grows with them."""
    longer = np.asarray(volume) / engine.pump_displacement
    return replace(
        engine, pump_displacement=volume, pump_gear_length=engine.pump_gear_length * longer
    )


def _with_shim(engine: Engine, shim: Floats) -> Engine:
    area = np.pi / 4 * np.asarray(engine.relief_plunger_diameter) ** 2
    gain = shim_gain(engine.relief_rate, shim, area)
    return replace(engine, relief_setting=engine.relief_setting + gain)


def _clearance(quantity: Quantity, group: str, *also: str) -> CircuitParameter:
    """The clearance of every bearing of a group, on the diameter; nan where there is none."""

    def read(engine: Engine) -> Floats:
        groups = getattr(engine, group)
        return groups[0].clearance_diametral if groups else np.nan

    def apply(engine: Engine, value: Floats) -> Engine:
        groups: dict[str, Any] = {group: np.maximum(value, LEAST_FILM)}
        return reclearanced(engine, **groups)

    return CircuitParameter(quantity=quantity, read=read, apply=apply, also=also, gap=True)


def _field(
    quantity: Quantity,
    *also: str,
    field: str = "",
    least: float | None = None,
    gap: bool = False,
) -> CircuitParameter:
    """A quantity that is one field of the engine, computed with no less than ``least``."""
    name = field or quantity.id

    def read(engine: Engine) -> Floats:
        value: Floats = getattr(engine, name)
        return value

    def apply(engine: Engine, value: Floats) -> Engine:
        fields: dict[str, Any] = {name: value if least is None else np.maximum(value, least)}
        return replace(engine, **fields)

    return CircuitParameter(quantity=quantity, read=read, apply=apply, also=also, gap=gap)


_ALL = (
    _clearance(bearings.MAIN_CLEARANCE, "mains"),
    _clearance(bearings.ROD_CLEARANCE, "rods"),
    _clearance(topend.CAM_BEARING_CLEARANCE, "cams", "cam_clearance"),
    _clearance(topend.LIFTER_CLEARANCE, "lifters", "tappet_clearance"),
    CircuitParameter(
        quantity=pump.PUMP_DISPLACEMENT,
        read=lambda e: e.pump_displacement,
        apply=_with_displacement,
        also=("pump_size",),
    ),
    _field(pump.PUMP_END_CLEARANCE, least=LEAST_PUMP_GAP, gap=True),
    _field(
        pump.PUMP_SIDE_CLEARANCE,
        "pump_tip_clearance",
        "rotor_tip_clearance",
        field="pump_tip_clearance",
        least=LEAST_PUMP_GAP,
        gap=True,
    ),
    _field(relief.RELIEF_SETTING, "relief_pressure"),
    CircuitParameter(
        quantity=relief.RELIEF_SHIM,
        read=lambda e: 0.0 * np.asarray(e.relief_setting),
        apply=_with_shim,
        also=("relief_washer",),
    ),
    CircuitParameter(
        quantity=relief.RELIEF_SEAT_GAP,
        read=lambda e: np.asarray(e.relief_seat_leak) / e.relief_port_width,
        apply=lambda e, v: replace(e, relief_seat_leak=np.asarray(v) * e.relief_port_width),
    ),
    _field(suction.PICKUP_GAP, least=LEAST_PICKUP_GAP),
    _field(suction.PICKUP_TUBE, field="tube_diameter"),
    _field(suction.SCREEN_OPEN_SHARE),
    _field(delivery.FILTER_BLOCKED),
    _field(delivery.COOLER_OPEN_SHARE),
    CircuitParameter(
        quantity=delivery.OPEN_HOLE,
        read=lambda e: np.sqrt(4 / np.pi * np.asarray(e.open_orifice_area)),
        apply=lambda e, v: replace(e, open_orifice_area=np.pi / 4 * np.asarray(v) ** 2),
    ),
    CircuitParameter(
        quantity=topend.OPEN_JET,
        read=lambda e: np.sqrt(4 / np.pi * np.asarray(e.open_jet_area)),
        apply=lambda e, v: replace(e, open_jet_area=np.pi / 4 * np.asarray(v) ** 2),
    ),
    CircuitParameter(
        quantity=oil.FUEL_SHARE,
        read=lambda e: 0.0 * np.asarray(e.oil.kv100),
        apply=with_fuel,
    ),
    CircuitParameter(
        quantity=oil.VISCOSITY_AT_100C,
        read=lambda e: e.oil.kv100,
        apply=with_viscosity,
    ),
)
CIRCUIT_PARAMETERS = {p.id: p for p in _ALL}
NAMES = {**CIRCUIT_PARAMETERS, **{name: p for p in _ALL for name in p.also}}

"""Sizes of an engine's card: journals and housings as new, and what the oil circuit is made of."""

from __future__ import annotations

from knowledge.card import CardFigure, Form, Section
from knowledge.engines import features
from knowledge.model import Finding, Quantity
from knowledge.stations.bearings import quantities as bearings
from knowledge.stations.pump import quantities as pump
from knowledge.stations.relief import quantities as relief
from knowledge.stations.suction import quantities as suction
from knowledge.stations.topend import quantities as topend
from knowledge.units import MM

CRANKSHAFT = "crankshaft: standard sizes"
MEASURED = "seldom printed: measure it"
PUMP = "oil pump: specification; else measure the gears"
CAMSHAFT = "camshaft: general data"
VALVE = "seldom printed: measure it with the valve out"
PARTS = "parts list, or count"


def _size(
    quantity: Quantity,
    manual: str,
    rank: int,
    only_with: tuple[Finding, ...] = (),
    not_with: tuple[Finding, ...] = (),
) -> CardFigure:
    """Return a size that the oil circuit has."""
    return CardFigure(
        id=quantity.id,
        section=Section.SIZES,
        says=quantity.says,
        manual=manual,
        rank=rank,
        form=Form.NOMINAL,
        quantity=quantity,
        only_with=only_with,
        not_with=not_with,
    )


def _measured(id: str, says: str, rank: int, low: float, high: float) -> CardFigure:
    """Return a size of crank, housing or shell, plausible from ``low`` to ``high`` m."""
    return CardFigure(
        id=id,
        section=Section.SIZES,
        says=says,
        manual=CRANKSHAFT,
        rank=rank,
        form=Form.NOMINAL,
        dimension="length",
        plausible=(low, high),
    )


SIZES = (
    _size(bearings.MAIN_COUNT, PARTS, 51),
    _size(bearings.MAIN_DIAMETER, CRANKSHAFT, 36),
    _measured("main_housing", "main bearing housing bore, without shells", 44, 5 * MM, 400 * MM),
    _measured("main_shell", "thickness of a standard main shell", 45, 0.5 * MM, 20 * MM),
    _size(bearings.MAIN_LENGTH, CRANKSHAFT, 52),
    _size(bearings.MAIN_GROOVE, MEASURED, 60),
    _size(bearings.ROD_COUNT, PARTS, 51),
    _size(bearings.ROD_DIAMETER, CRANKSHAFT, 37),
    _measured("rod_housing", "rod big-end bore, without shells", 46, 5 * MM, 400 * MM),
    _measured("rod_shell", "thickness of a standard rod shell", 47, 0.5 * MM, 20 * MM),
    _size(bearings.ROD_LENGTH, CRANKSHAFT, 53),
    _size(bearings.ROD_HOLE, MEASURED, 61),
    _size(topend.CAM_COUNT, PARTS, 54),
    _size(topend.CAM_DIAMETER, CAMSHAFT, 55),
    _size(topend.CAM_LENGTH, CAMSHAFT, 56),
    _size(topend.LIFTER_COUNT, PARTS, 57, only_with=(features.HYDRAULIC_LIFTERS,)),
    _size(topend.LIFTER_DIAMETER, CAMSHAFT, 58, only_with=(features.PUSHROD_ENGINE,)),
    _size(topend.JET_COUNT, PARTS, 62),
    _size(topend.JET_DIAMETER, MEASURED, 63),
    _size(pump.PUMP_DISPLACEMENT, PUMP, 38),
    _size(pump.PUMP_DRIVE_RATIO, PUMP, 39),
    _size(pump.PUMP_GEAR_DIAMETER, MEASURED, 59),
    _size(pump.PUMP_GEAR_LENGTH, MEASURED, 59),
    _size(pump.PUMP_COVER_SCREW, "parts list; else measure a screw", 48),
    _size(relief.RELIEF_PLUNGER, VALVE, 49),
    _size(relief.RELIEF_PORT, VALVE, 64),
    _size(suction.PICKUP_TUBE, MEASURED, 65, not_with=(features.DRY_SUMP,)),
)

"""The figures of an engine's card, and where a workshop manual usually prints each.

Where a manual prints them, and how much each helps, is common practice.
"""

from __future__ import annotations

from knowledge.card import CardFigure, Form, Section
from knowledge.engines import card_clearances, card_sizes, features
from knowledge.model import Finding
from knowledge.pressure import quantities as pressure
from knowledge.stations.delivery import quantities as delivery
from knowledge.stations.instrument import quantities as instrument
from knowledge.stations.oil import quantities as oil
from knowledge.stations.pump import quantities as pump
from knowledge.stations.relief import quantities as relief
from knowledge.units import MM

LUBRICATION = "lubrication data, pressure test"
TORQUES = "torque table"
TUNING = "tune-up data"
LUBRICANTS = "oils and capacities"
ELECTRICAL = "instruments: sender and switch"
VALVE = "oil pump: relief valve"
TORQUE = (0.2, 2000.0)  #: N·m

PRESSURES = (
    CardFigure(
        id="hot_idle_pressure",
        section=Section.PRESSURES,
        says="lowest oil pressure at hot idle",
        manual=LUBRICATION,
        rank=1,
        form=Form.LEAST,
        quantity=pressure.OIL_PRESSURE,
        least=pressure.HOT_IDLE_PRESSURE,
        tasks=("pressure_at_hot_idle",),
    ),
    CardFigure(
        id="hot_running_pressure",
        section=Section.PRESSURES,
        says="lowest oil pressure hot at 2000 rpm",
        manual=LUBRICATION,
        rank=3,
        form=Form.LEAST,
        quantity=pressure.OIL_PRESSURE,
        least=pressure.HOT_RUNNING_PRESSURE,
        tasks=("pressure_hot_at_2000",),
    ),
    CardFigure(
        id="stop_idle_pressure",
        section=Section.PRESSURES,
        says="stop the engine below this oil pressure at idle",
        manual=LUBRICATION,
        rank=22,
        form=Form.LEAST,
        quantity=pressure.OIL_PRESSURE,
        least=pressure.STOP_IDLE_PRESSURE,
    ),
    CardFigure(
        id="stop_running_pressure",
        section=Section.PRESSURES,
        says="stop the engine below this oil pressure at 2000 rpm or more",
        manual=LUBRICATION,
        rank=22,
        form=Form.LEAST,
        quantity=pressure.OIL_PRESSURE,
        least=pressure.STOP_RUNNING_PRESSURE,
    ),
    CardFigure(
        id="relief_setting",
        section=Section.PRESSURES,
        says="pressure at which the relief valve opens",
        manual=VALVE,
        rank=2,
        form=Form.NOMINAL,
        quantity=relief.RELIEF_SETTING,
        nominal=relief.USUAL_RELIEF_SETTING,
        tasks=("relief_opens_at",),
    ),
    CardFigure(
        id="cold_pressure",
        section=Section.PRESSURES,
        says="highest oil pressure cold",
        manual=LUBRICATION,
        rank=24,
        form=Form.MOST,
        quantity=pressure.OIL_PRESSURE,
        tasks=("pressure_cold_watched",),
    ),
    CardFigure(
        id="switch_pressure",
        section=Section.PRESSURES,
        says="pressure by which the lamp switch opens",
        manual=ELECTRICAL,
        rank=16,
        form=Form.MOST,
        quantity=instrument.SWITCH_PRESSURE,
        most=instrument.SWITCH_OPENS_BY,
        also=("switch_opens_at",),
    ),
    CardFigure(
        id="panel_error",
        section=Section.PRESSURES,
        says="greatest difference between panel and trusted gauge",
        manual=ELECTRICAL,
        rank=40,
        form=Form.MOST,
        quantity=instrument.PANEL_ERROR,
        most=instrument.MOST_PANEL_ERROR,
        tasks=("panel_gauge_agrees",),
    ),
)


def _torque(
    id: str, says: str, rank: int, *tasks: str, only_with: tuple[Finding, ...] = ()
) -> CardFigure:
    """Return one torque of the card."""
    return CardFigure(
        id=id,
        section=Section.TORQUES,
        says=says,
        manual=TORQUES,
        rank=rank,
        form=Form.NOMINAL,
        dimension="torque",
        plausible=TORQUE,
        tasks=tasks,
        only_with=only_with,
    )


TORQUE_FIGURES = (
    _torque("main_caps", "main cap bolts", 10, "caps_torqued"),
    _torque("crank_turning", "torque that turns the crank", 47, "crank_turning_torque_measured"),
    _torque("rod_caps", "rod cap bolts or nuts", 11, "rod_caps_torqued"),
    CardFigure(
        id="pump_cover_screws",
        section=Section.TORQUES,
        says="pump cover screws",
        manual=TORQUES,
        rank=13,
        form=Form.NOMINAL,
        quantity=pump.PUMP_COVER_TORQUE,
        nominal=pump.USUAL_COVER_TORQUE,
        tasks=("pump_cover_screws_torqued",),
        also=("pump_cover_torque",),
    ),
    _torque("pump_bolts", "bolts of the pump to block or main cap", 19, "pump_bolts_torqued"),
    _torque("relief_cap", "cap or plug of the relief valve", 21, "relief_cap_torqued"),
    _torque("pickup_bolt", "bolt of the pickup tube", 26, "pickup_bolt_torqued"),
    _torque(
        "tray_bolts",
        "bolts of the windage tray",
        32,
        "tray_bolts_torqued",
        only_with=(features.WINDAGE_TRAY,),
    ),
    _torque("sump_bolts", "sump bolts", 27, "sump_bolts_torqued"),
)
SETTINGS = (
    CardFigure(
        id="idle_speed",
        section=Section.SETTINGS,
        says="idle speed, hot",
        manual=TUNING,
        rank=6,
        form=Form.NOMINAL,
        quantity=pressure.IDLE_SPEED,
        nominal=pressure.USUAL_IDLE_SPEED,
    ),
    CardFigure(
        id="relief_spring_length",
        section=Section.SETTINGS,
        says="relief spring free length",
        manual=VALVE,
        rank=23,
        form=Form.NOMINAL,
        quantity=relief.RELIEF_SPRING_LENGTH,
    ),
    CardFigure(
        id="relief_spring_test_length",
        section=Section.SETTINGS,
        says="length at which the load of the relief spring is stated",
        manual=VALVE,
        rank=25,
        form=Form.NOMINAL,
        dimension="length",
        plausible=(3 * MM, 300 * MM),
    ),
    CardFigure(
        id="relief_spring_load",
        section=Section.SETTINGS,
        says="load of the relief spring at that length",
        manual=VALVE,
        rank=25,
        form=Form.NOMINAL,
        dimension="force",
        plausible=(1.0, 2000.0),
    ),
    CardFigure(
        id="sender_resistance_at_rest",
        section=Section.SETTINGS,
        says="resistance of the pressure sender at no pressure",
        manual=ELECTRICAL,
        rank=33,
        form=Form.NOMINAL,
        quantity=instrument.SENDER_RESISTANCE_AT_REST,
        nominal=instrument.USUAL_SENDER_OHMS,
        also=("sender_ohms_at_rest",),
    ),
    CardFigure(
        id="filter_bypass",
        section=Section.SETTINGS,
        says="filter bypass opens at",
        manual="lubrication data, oil filter",
        rank=42,
        form=Form.NOMINAL,
        quantity=delivery.FILTER_BYPASS,
    ),
)
OIL = (
    CardFigure(
        id="oil_capacity",
        section=Section.OIL,
        says="oil capacity, with the filter",
        manual=LUBRICANTS,
        rank=34,
        form=Form.NOMINAL,
        dimension="volume",
        plausible=(0.0002, 0.4),
    ),
    CardFigure(
        id="oil_temperature",
        section=Section.OIL,
        says="highest oil temperature",
        manual=LUBRICATION,
        rank=35,
        form=Form.MOST,
        quantity=oil.OIL_TEMPERATURE,
        most=oil.MOST_OIL_TEMPERATURE,
        tasks=("oil_heat_watched",),
    ),
    CardFigure(
        id="fuel_share",
        section=Section.OIL,
        says="highest share of fuel in the oil",
        manual="the laboratory's sheet, or the maker's oil bulletin",
        rank=43,
        form=Form.MOST,
        quantity=oil.FUEL_SHARE,
        most=oil.MOST_FUEL_SHARE,
        only_with=(features.DIESEL,),
        also=("fuel_share_limit",),
    ),
)
FIGURES: dict[str, CardFigure] = {
    each.id: each
    for each in (
        *PRESSURES,
        *card_clearances.CLEARANCES,
        *TORQUE_FIGURES,
        *SETTINGS,
        *OIL,
        *card_sizes.SIZES,
    )
}

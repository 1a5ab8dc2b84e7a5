"""The quantities that make up an engine's oil circuit: a profile states them, a case may too."""

from knowledge.model import Quantity
from knowledge.stations.bearings import quantities as bearings
from knowledge.stations.delivery import quantities as delivery
from knowledge.stations.pump import quantities as pump
from knowledge.stations.relief import quantities as relief
from knowledge.stations.suction import quantities as suction
from knowledge.stations.topend import quantities as topend

_QUANTITIES = (
    bearings.MAIN_CLEARANCE,
    bearings.ROD_CLEARANCE,
    topend.CAM_BEARING_CLEARANCE,
    topend.LIFTER_CLEARANCE,
    pump.PUMP_END_CLEARANCE,
    pump.PUMP_SIDE_CLEARANCE,
    bearings.MAIN_DIAMETER,
    bearings.MAIN_LENGTH,
    bearings.MAIN_GROOVE,
    bearings.ROD_DIAMETER,
    bearings.ROD_LENGTH,
    bearings.ROD_HOLE,
    topend.CAM_DIAMETER,
    topend.CAM_LENGTH,
    topend.CAM_HOLE,
    topend.LIFTER_DIAMETER,
    topend.LIFTER_LAND,
    bearings.CRANK_ENTRY_RADIUS,
    bearings.CRANK_EXIT_RADIUS,
    pump.PUMP_GEAR_DIAMETER,
    pump.PUMP_GEAR_LENGTH,
    pump.PUMP_TIP_LAND,
    relief.RELIEF_PLUNGER,
    relief.RELIEF_PORT,
    delivery.PASSAGE_DIAMETER,
    suction.PICKUP_RIM,
    suction.PICKUP_TUBE,
    topend.JET_DIAMETER,
    suction.PICKUP_GAP,
    suction.PICKUP_TUBE_LENGTH,
    bearings.MAIN_COUNT,
    bearings.ROD_COUNT,
    topend.CAM_COUNT,
    topend.LIFTER_COUNT,
    topend.JET_COUNT,
    delivery.PASSAGE_K,
    bearings.MAIN_ECCENTRICITY,
    bearings.MAIN_FEED,
    bearings.ROD_ECCENTRICITY,
    bearings.ROD_FEED,
    pump.PUMP_DRIVE_RATIO,
    pump.PUMP_DISPLACEMENT,
    relief.RELIEF_SETTING,
    relief.RELIEF_RATE,
    delivery.FILTER_BYPASS,
    delivery.FILTER_DROP,
    topend.JET_OPENS,
    bearings.FILM_RISE,
    delivery.OTHER_LEAK,
)
CIRCUIT: dict[str, Quantity] = {q.id: q for q in _QUANTITIES}

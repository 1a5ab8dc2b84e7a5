"""The list of used parts that are judged, in the oil's order; loaded only where it is asked for."""

from knowledge.reuse import UsedPart
from knowledge.stations.bearings import reuse as bearings_reuse
from knowledge.stations.pump import reuse as pump_reuse
from knowledge.stations.relief import reuse as relief_reuse

USED_PARTS: tuple[UsedPart, ...] = (
    pump_reuse.PUMP_COVER,
    pump_reuse.PUMP_GEARS,
    relief_reuse.RELIEF_VALVE,
    relief_reuse.RELIEF_SPRING,
    bearings_reuse.CRANK,
    bearings_reuse.SHELLS,
)

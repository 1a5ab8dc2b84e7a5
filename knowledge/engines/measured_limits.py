"""Which limits a measured value is held against: the least and the most that will do.

Imported by ``output`` and ``html``; the rules that judge the values name the same limits.
"""

from collections.abc import Mapping
from types import MappingProxyType

from knowledge.engines import limits
from knowledge.model import Limit, Measure
from knowledge.stations.bearings import findings_measured as bearings_measured
from knowledge.stations.instrument import findings_electrical as instrument_electrical
from knowledge.stations.instrument import findings_port as instrument_port
from knowledge.stations.oil import findings_analysis as oil_analysis
from knowledge.stations.oil import findings_heat as oil_heat
from knowledge.stations.pump import findings_bench as pump_bench
from knowledge.stations.pump import findings_wear as pump_wear
from knowledge.stations.suction import findings_pickup as suction_pickup
from knowledge.stations.topend import findings_cam as topend_cam

LIMITS_OF: Mapping[Measure, tuple[Limit | None, Limit | None]] = MappingProxyType(
    {
        bearings_measured.MEASURED_MAIN_CLEARANCE: (
            limits.LEAST_BEARING_CLEARANCE,
            limits.MAIN_CLEARANCE,
        ),
        bearings_measured.MEASURED_ROD_CLEARANCE: (
            limits.LEAST_BEARING_CLEARANCE,
            limits.ROD_CLEARANCE,
        ),
        bearings_measured.MEASURED_CRANK_END_FLOAT: (None, limits.CRANK_END_FLOAT),
        topend_cam.CAM_BEARING_CLEARANCE: (None, limits.CAM_CLEARANCE),
        pump_bench.PUMP_END_CLEARANCE: (None, limits.PUMP_END_CLEARANCE),
        pump_bench.PUMP_SIDE_CLEARANCE: (None, limits.PUMP_SIDE_CLEARANCE),
        pump_bench.ROTOR_TIP_CLEARANCE: (None, pump_bench.ROTOR_TIP_LIMIT),
        pump_wear.PUMP_BACKLASH: (None, limits.PUMP_BACKLASH),
        pump_wear.PUMP_BUSH_CLEARANCE: (None, limits.PUMP_BUSH_CLEARANCE),
        pump_bench.PUMP_COVER_HOLLOW: (None, limits.COVER_FLATNESS),
        suction_pickup.PICKUP_GAP: (limits.LEAST_PICKUP_GAP, limits.MOST_PICKUP_GAP),
        instrument_electrical.SENDER_GROUND_RESISTANCE: (None, limits.SENDER_GROUND_OHMS),
        instrument_port.SWITCH_PRESSURE: (None, limits.SWITCH_OPENS_AT),
        oil_analysis.FUEL_SHARE: (None, limits.FUEL_SHARE),
        oil_heat.OIL_HEAT: (None, limits.OIL_TEMPERATURE),
    }
)

"""Which limits a measured value is held against: the least and the most that will do.

Imported by ``report`` and ``pages``; the rules that judge the values name the same limits.
"""

from collections.abc import Mapping
from types import MappingProxyType

from knowledge.findings import bearings_bench, instrument_bench, oil_analysis, oil_heat, pump_bench
from knowledge.findings.suction import PICKUP_GAP
from knowledge.findings.topend import CAM_BEARING_CLEARANCE
from knowledge.reference import limits
from knowledge.vocabulary import Limit, Measure

LIMITS_OF: Mapping[Measure, tuple[Limit | None, Limit | None]] = MappingProxyType(
    {
        bearings_bench.MEASURED_MAIN_CLEARANCE: (
            limits.LEAST_BEARING_CLEARANCE,
            limits.MAIN_CLEARANCE,
        ),
        bearings_bench.MEASURED_ROD_CLEARANCE: (
            limits.LEAST_BEARING_CLEARANCE,
            limits.ROD_CLEARANCE,
        ),
        bearings_bench.MEASURED_CRANK_END_FLOAT: (None, limits.CRANK_END_FLOAT),
        CAM_BEARING_CLEARANCE: (None, limits.CAM_CLEARANCE),
        pump_bench.PUMP_END_CLEARANCE: (None, limits.PUMP_END_CLEARANCE),
        pump_bench.PUMP_SIDE_CLEARANCE: (None, limits.PUMP_SIDE_CLEARANCE),
        pump_bench.ROTOR_TIP_CLEARANCE: (None, pump_bench.ROTOR_TIP_LIMIT),
        pump_bench.PUMP_BACKLASH: (None, limits.PUMP_BACKLASH),
        pump_bench.PUMP_BUSH_CLEARANCE: (None, limits.PUMP_BUSH_CLEARANCE),
        pump_bench.PUMP_COVER_HOLLOW: (None, limits.COVER_FLATNESS),
        PICKUP_GAP: (limits.LEAST_PICKUP_GAP, limits.MOST_PICKUP_GAP),
        instrument_bench.SENDER_GROUND_RESISTANCE: (None, limits.SENDER_GROUND_OHMS),
        instrument_bench.SWITCH_PRESSURE: (None, limits.SWITCH_OPENS_AT),
        oil_analysis.FUEL_SHARE: (None, limits.FUEL_SHARE),
        oil_heat.OIL_HEAT: (None, limits.OIL_TEMPERATURE),
    }
)

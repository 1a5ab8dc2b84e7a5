"""Faults of the oil: what proves each, what it costs, where it can come from."""

from knowledge.circuit import conditions
from knowledge.faults import Fault
from knowledge.model import Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.leaks import findings as leaks_findings
from knowledge.stations.oil import (
    causes,
    causes_condition,
    causes_contamination,
    findings,
    findings_analysis,
    findings_drained,
    findings_heat,
    quantities,
)
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump

LEVEL_LOW = Fault(
    id="level_low",
    station=Station.OIL,
    says="there is too little oil in the engine",
    proofs=(
        findings.DIPSTICK_LOW,
        findings.DIPSTICK_DRY,
        findings_drained.DRAINED_VOLUME_LOW,
    ),
    origins=(
        causes.OIL_LEVEL_LOW,
        leaks_causes.EXTERNAL_LEAK_MAJOR,
        leaks_causes.FILTER_SEAL_LEAK,
        leaks_causes.OIL_LINE_LEAK,
        leaks_causes.DRAIN_PLUG_OUT,
        leaks_causes.SHAFT_SEAL_LEAK,
        leaks_causes_openings.SUMP_HOLED,
        causes.DIPSTICK_WRONG,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.OIL_SHORT,),
    decides=(
        "fill it to the mark, then look below and behind: if it is wet outside, it leaks; if "
        "dry, the oil was burnt or never filled"
    ),
    decided_by=(
        leaks_findings.OIL_SEEN_OUTSIDE,
        leaks_findings.OIL_ON_THE_GROUND,
        findings_heat.BLUE_SMOKE,
    ),
)
LEVEL_TOO_HIGH = Fault(
    id="level_too_high",
    station=Station.OIL,
    says="there is too much oil in the engine",
    proofs=(
        findings.LEVEL_HIGH,
        findings_drained.DRAINED_VOLUME_HIGH,
    ),
    origins=(
        causes.OIL_LEVEL_HIGH,
        causes_contamination.FUEL_DILUTION,
        causes_contamination.COOLANT_IN_OIL,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.OIL_AERATED,),
)
OIL_FOAMS = Fault(
    id="oil_foams",
    station=Station.OIL,
    says="the oil is full of foam",
    proofs=(findings_heat.FOAM_ON_STICK,),
    origins=(
        causes.OIL_LEVEL_HIGH,
        causes_condition.OIL_FOAM_PRONE,
        suction_causes_sump.WINDAGE_AERATION,
        causes_contamination.COOLANT_IN_OIL,
        suction_causes.SUCTION_JOINT_AIR_LEAK,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.OIL_AERATED,),
)
FUEL_THINS_THE_OIL = Fault(
    id="fuel_thins_the_oil",
    station=Station.OIL,
    says="there is fuel in the oil",
    proofs=(findings_analysis.LAB_FUEL_HIGH, findings_drained.FUEL_AT_THE_DRAIN),
    origins=(causes_contamination.FUEL_DILUTION,),
    source=COMMON_PRACTICE,
    states=(conditions.OIL_THIN,),
    costs=(quantities.FUEL_SHARE,),
)
WATER_IN_THE_OIL = Fault(
    id="water_in_the_oil",
    station=Station.OIL,
    says="there is water or coolant in the oil",
    proofs=(
        findings.OIL_MILKY,
        findings_drained.WATER_AT_THE_DRAIN,
        findings_analysis.GLYCOL_FOUND,
    ),
    origins=(
        causes_contamination.COOLANT_IN_OIL,
        suction_causes_sump.ICE_IN_PICKUP,
    ),
    source=COMMON_PRACTICE,
)
SLUDGE_IN_THE_ENGINE = Fault(
    id="sludge_in_the_engine",
    station=Station.OIL,
    says="there is sludge in the engine",
    proofs=(findings.SLUDGE_SEEN,),
    origins=(
        causes_condition.OIL_DEGRADED,
        causes_contamination.COOLANT_IN_OIL,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.OIL_SLUDGED,),
)

"""Faults of the suction side: what proves each, what it costs, where it can come from."""

from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.faults import Fault
from knowledge.model import Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.suction import (
    causes,
    causes_sump,
    findings,
    findings_pickup,
    findings_sump,
    quantities,
)

PICKUP_NOT_FAST = Fault(
    id="pickup_not_fast",
    station=Station.SUCTION,
    says="the pickup is loose or has come off",
    proofs=(
        findings_pickup.PICKUP_TUBE_ROCKS,
        findings_pickup.PICKUP_FIXING_LOOSE,
        findings_sump.PICKUP_FELL_OFF,
    ),
    origins=(
        causes.PICKUP_TUBE_LOOSE,
        assembly_causes.FASTENER_LOOSE_INSIDE,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.AIR_IN_SUCTION,),
)
SUCTION_DRAWS_AIR = Fault(
    id="suction_draws_air",
    station=Station.SUCTION,
    says="the suction side draws air",
    proofs=(
        findings_pickup.PICKUP_TUBE_CRACK_SEEN,
        findings_pickup.SUCTION_SEAL_CUT_OR_MISSING,
        findings_pickup.BUBBLES_IN_JOINT_TEST,
        findings.SUCTION_UNION_LOOSE,
    ),
    origins=(
        causes.PICKUP_TUBE_CRACKED,
        causes.SUCTION_JOINT_AIR_LEAK,
        causes.PICKUP_TUBE_LOOSE,
    ),
    source=COMMON_PRACTICE,
    alike=(causes.PICKUP_TUBE_CRACKED, causes.SUCTION_JOINT_AIR_LEAK),
    states=(conditions.AIR_IN_SUCTION,),
)
SCREEN_COVERED = Fault(
    id="screen_covered",
    station=Station.SUCTION,
    says="the pickup screen is covered",
    proofs=(
        findings_sump.SCREEN_BLOCKED,
        findings_sump.CLOTH_ON_SCREEN,
        findings_sump.ICE_AT_SCREEN,
    ),
    origins=(
        causes.PICKUP_SCREEN_BLOCKED,
        assembly_causes.SEALANT_DEBRIS,
        assembly_causes.TIMING_GEAR_SHEDDING,
        causes_sump.FOREIGN_BODY_IN_SUMP,
        assembly_causes.DIRT_IN_ASSEMBLY,
        causes_sump.ICE_IN_PICKUP,
        assembly_causes.ASSEMBLY_LUBE_CLOG,
        conditions.METAL_SHED,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.SUCTION_THROTTLED,),
    costs=(quantities.SCREEN_OPEN_SHARE,),
    decides=(
        "see what covers it: sludge, sealer, plastic, metal and cloth each show where they came "
        "from"
    ),
    decided_by=(
        findings_sump.SLUDGE_ON_SCREEN,
        findings_sump.SEALER_ON_SCREEN,
        findings_sump.PLASTIC_ON_SCREEN,
        debris_findings.METAL_IN_SCREEN,
        findings_sump.GASKET_ON_SCREEN,
        findings_sump.PASTE_ON_SCREEN,
        findings_sump.VARNISH_ON_SCREEN,
        findings_sump.CLOTH_ON_SCREEN,
        findings_sump.ICE_AT_SCREEN,
    ),
)
PICKUP_TOO_LOW = Fault(
    id="pickup_too_low",
    station=Station.SUCTION,
    says="the pickup sits too close to the sump floor",
    proofs=(findings_pickup.PICKUP_GAP_TOO_SMALL,),
    origins=(
        causes_sump.PICKUP_CLEARANCE_TIGHT,
        causes_sump.PAN_DENTED,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.SUCTION_THROTTLED,),
    costs=(quantities.PICKUP_GAP,),
)
PICKUP_TOO_HIGH = Fault(
    id="pickup_too_high",
    station=Station.SUCTION,
    says="the pickup sits too high",
    proofs=(findings_pickup.PICKUP_GAP_TOO_LARGE,),
    origins=(causes_sump.PICKUP_CLEARANCE_WIDE,),
    source=COMMON_PRACTICE,
)
SUCTION_HOSE_FLAT = Fault(
    id="suction_hose_flat",
    station=Station.SUCTION,
    says="the suction hose is sucked flat",
    proofs=(findings.SUCTION_HOSE_FLATTENS,),
    origins=(causes_sump.SUCTION_HOSE_COLLAPSED,),
    source=COMMON_PRACTICE,
    states=(conditions.SUCTION_THROTTLED,),
)
BAFFLE_NOT_IN_PLACE = Fault(
    id="baffle_not_in_place",
    station=Station.SUCTION,
    says="a sump baffle is missing or loose",
    proofs=(findings_pickup.BAFFLE_MISSING_OR_LOOSE,),
    origins=(causes_sump.BAFFLE_MISSING,),
    source=COMMON_PRACTICE,
    states=(conditions.PICKUP_UNCOVERED,),
)

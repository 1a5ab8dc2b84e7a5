"""Faults of the top end: what proves each, what it costs, where it can come from."""

from knowledge.circuit import conditions
from knowledge.faults import Fault
from knowledge.model import Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.topend import (
    causes,
    causes_feeds,
    findings,
    findings_cam,
    findings_feeds,
    quantities,
)
from knowledge.work import Access

CAM_BEARINGS_BAD = Fault(
    id="cam_bearings_bad",
    station=Station.TOPEND,
    says="the cam bearings are worn or have turned",
    proofs=(
        findings_cam.CAM_BEARING_FOUND_BAD,
        findings_cam.CAM_CLEARANCE_WIDE,
        findings.CAM_BEARING_POURS,
    ),
    origins=(
        causes.CAM_BEARING_WEAR,
        assembly_causes.DIRT_IN_ASSEMBLY,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.CLEARANCES_WIDE,),
    costs=(quantities.CAM_BEARING_CLEARANCE,),
    opens=(Access.CAM_OUT,),
)
LIFTERS_LEAK = Fault(
    id="lifters_leak",
    station=Station.TOPEND,
    says="oil pours out at a lifter bore",
    proofs=(
        findings.LIFTER_BORE_POURS,
        findings_cam.LIFTER_OUT_OF_BORE,
        findings_cam.LIFTERS_LOOSE_IN_BORES,
    ),
    origins=(causes.LIFTER_BORE_LEAK,),
    source=COMMON_PRACTICE,
    costs=(quantities.LIFTER_CLEARANCE,),
)
ROCKER_SHAFT_WORN = Fault(
    id="rocker_shaft_worn",
    station=Station.TOPEND,
    says="the rocker shaft leaks oil",
    proofs=(findings.ROCKER_SHAFT_FOUND_WORN,),
    origins=(causes.ROCKER_SHAFT_LEAK,),
    source=COMMON_PRACTICE,
)
TENSIONER_LEAKS = Fault(
    id="tensioner_leaks",
    station=Station.TOPEND,
    says="a chain tensioner leaks oil",
    proofs=(
        findings_cam.TENSIONER_SEAL_ABSENT,
        findings.TENSIONER_FLOODS,
    ),
    origins=(causes.TENSIONER_SEAL_LEAK,),
    source=COMMON_PRACTICE,
)
PISTON_JET_NOT_RIGHT = Fault(
    id="piston_jet_not_right",
    station=Station.TOPEND,
    says="a piston cooling jet is missing, broken or does not shut",
    proofs=(
        findings_feeds.PISTON_JET_FOUND_BROKEN,
        findings_feeds.JETS_RUN_AT_LOW_PRESSURE,
    ),
    origins=(causes_feeds.PISTON_JET_OPEN,),
    source=COMMON_PRACTICE,
    states=(conditions.OPEN_LEAK_INSIDE,),
    costs=(quantities.OPEN_JET,),
)

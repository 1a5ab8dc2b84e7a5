"""Faults of the pump and its drive: what proves each, what it costs, where it can come from."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.faults import Fault
from knowledge.model import Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.pump import (
    causes,
    causes_drive,
    causes_fitted,
    causes_variable,
    findings_bench,
    findings_drive,
    findings_mount,
    findings_scavenge,
    findings_sights,
    findings_variable,
    findings_wear,
    quantities,
)

PUMP_COVER_LEAKS = Fault(
    id="pump_cover_leaks",
    station=Station.PUMP,
    says="oil leaks across the pump cover",
    proofs=(
        findings_bench.COVER_GROOVED,
        findings_bench.END_CLEARANCE_WIDE,
    ),
    origins=(
        causes.PUMP_COVER_SCORED,
        causes.PUMP_GEAR_WEAR,
        causes_drive.PUMP_DRIVE_BIND,
        causes_fitted.PUMP_IDLER_PIN_MIGRATED,
        causes.PUMP_GASKET_WRONG,
        assembly_causes.DIRT_IN_ASSEMBLY,
        assembly_causes.PART_SHEDDING_INSIDE,
        conditions.METAL_SHED,
    ),
    source=sources.PUMP_INSPECTION_2006,
    states=(conditions.PUMP_SLIP,),
    costs=(
        quantities.PUMP_END_CLEARANCE,
        quantities.PUMP_COVER_HOLLOW,
    ),
    decides=(
        "look at the marks: fine rings all round are gear wear; single scores across them are "
        "grit or metal that went through"
    ),
    decided_by=(
        findings_wear.PUMP_SCORED_SEEN,
        findings_wear.GEARS_WORN_OUT,
    ),
)
PUMP_COVER_GAPES = Fault(
    id="pump_cover_gapes",
    station=Station.PUMP,
    says="the pump cover gapes at its joint",
    proofs=(
        findings_bench.COVER_WARPED,
        findings_bench.COVER_SCREWS_LOOSE,
        findings_wear.AIR_AT_PUMP_COVER,
    ),
    origins=(causes.PUMP_COVER_LOOSE,),
    source=sources.MARINE_DIESEL_MANUAL,
    states=(conditions.PUMP_SLIP,),
)
PUMP_WORN = Fault(
    id="pump_worn",
    station=Station.PUMP,
    says="the pump is worn inside",
    proofs=(
        findings_wear.GEARS_WORN_OUT,
        findings_bench.SIDE_CLEARANCE_WIDE,
        findings_bench.ROTOR_TIP_WIDE,
        findings_wear.GEAR_BACKLASH_WIDE,
        findings_wear.PUMP_SHAFT_PLAY,
    ),
    origins=(causes.PUMP_GEAR_WEAR,),
    source=sources.ENGINE_BUILDERS_2020,
    states=(conditions.PUMP_SLIP,),
    costs=(quantities.PUMP_SIDE_CLEARANCE,),
)
PUMP_SCORED_BY_DEBRIS = Fault(
    id="pump_scored_by_debris",
    station=Station.PUMP,
    says="hard particles went through the pump and scored it",
    proofs=(findings_wear.PUMP_SCORED_SEEN,),
    origins=(
        assembly_causes.DIRT_IN_ASSEMBLY,
        assembly_causes.PART_SHEDDING_INSIDE,
        causes.PUMP_DEBRIS_LOCK,
        causes_fitted.PUMP_IDLER_PIN_MIGRATED,
        conditions.METAL_SHED,
    ),
    source=sources.JOBBER_OIL_PUMPS,
    states=(conditions.PUMP_SCORED,),
    damage=True,
    decides=(
        "sort it with magnet and magnifier: steel comes from pump, gears or drive; copper, grey "
        "or soft bright metal from bearings; sand, swarf or sealer from the workshop"
    ),
    decided_by=(
        debris_findings.MAGNETIC_METAL,
        debris_findings.COPPER_FLAKES,
        debris_findings.GREY_SOFT_FLAKES,
        debris_findings.BRIGHT_SOFT_METAL,
        debris_findings.LINING_STRIP,
        debris_findings.HARD_CHIPS,
        debris_findings.CARBON_FLAKES,
    ),
)
PUMP_JAMMED_BY_PIECE = Fault(
    id="pump_jammed_by_piece",
    station=Station.PUMP,
    says="the pump was jammed",
    proofs=(
        findings_drive.PUMP_JAMMED,
        findings_bench.PIECE_IN_PUMP,
    ),
    origins=(
        causes.PUMP_DEBRIS_LOCK,
        assembly_causes.DIRT_IN_ASSEMBLY,
        conditions.METAL_SHED,
    ),
    source=sources.JOBBER_OIL_PUMPS,
    states=(conditions.PUMP_NOT_TURNING,),
)
PUMP_DRIVE_FAILED = Fault(
    id="pump_drive_failed",
    station=Station.PUMP,
    says="the pump's drive is broken or came apart",
    proofs=(
        findings_drive.DRIVE_SHAFT_BROKEN,
        findings_drive.DRIVE_GEAR_STRIPPED,
        findings_drive.DRIVE_COUPLING_SHEARED,
        findings_drive.DRIVE_FOUND_FAILED,
        findings_drive.PUMP_CHAIN_BROKEN,
        findings_drive.DRIVE_NOT_ENGAGED,
    ),
    origins=(
        causes_drive.PUMP_DRIVE_BROKEN,
        causes.PUMP_DEBRIS_LOCK,
        causes_drive.PUMP_DRIVE_BIND,
        causes_fitted.PUMP_OVERSIZED,
        causes_drive.PUMP_DRIVE_SLIP,
        causes_fitted.PUMP_IDLER_PIN_MIGRATED,
        assembly_causes_left_out.PUMP_DRIVE_LEFT_OUT,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.PUMP_NOT_TURNING,),
    decides="turn the pump by hand: if it jams or binds, it broke its drive; if it turns freely, the drive broke by itself",
    decided_by=(
        findings_drive.PUMP_JAMMED,
        findings_bench.PIECE_IN_PUMP,
        findings_mount.PUMP_TURNS_ROUGHLY,
    ),
)
PUMP_DRIVE_WORN = Fault(
    id="pump_drive_worn",
    station=Station.PUMP,
    says="the pump's drive is worn or binds",
    proofs=(
        findings_drive.DRIVE_SHAFT_ROUNDED,
        findings_drive.DRIVE_GEAR_WORN,
        findings_drive.NO_DRIVE_END_FLOAT,
    ),
    origins=(
        causes_drive.PUMP_DRIVE_SLIP,
        causes_drive.PUMP_DRIVE_BIND,
        causes_drive.PUMP_DRIVE_BROKEN,
        causes_fitted.PUMP_OVERSIZED,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.PUMP_DRIVE_ERRATIC,),
)
PUMP_BROKEN = Fault(
    id="pump_broken",
    station=Station.PUMP,
    says="the pump is cracked or broken inside",
    proofs=(
        findings_wear.PUMP_GEAR_BROKEN,
        findings_wear.PUMP_CASTING_CRACKED,
        findings_drive.PUMP_HOUSING_BURST,
        findings_wear.PIECE_THROUGH_PUMP_COVER,
        findings_bench.IDLER_PIN_OUT,
    ),
    origins=(
        causes_fitted.PUMP_BODY_CRACKED,
        causes.PUMP_DEBRIS_LOCK,
        causes_fitted.PUMP_IDLER_PIN_MIGRATED,
        causes_variable.PUMP_ROTOR_SHATTERED,
    ),
    source=COMMON_PRACTICE,
)
PUMP_STUCK_IN_LOW_STAGE = Fault(
    id="pump_stuck_in_low_stage",
    station=Station.PUMP,
    says="the variable pump does not change to its high stage",
    proofs=(findings_variable.PUMP_STAYS_LOW,),
    origins=(causes_variable.PUMP_CONTROL_STUCK,),
    source=sources.VARIABLE_PUMP_2021,
)
PUMP_JOINT_LEAKS = Fault(
    id="pump_joint_leaks",
    station=Station.PUMP,
    says="the joint between pump and block leaks",
    proofs=(
        findings_mount.MOUNT_GASKET_BLOWN,
        findings_mount.MOUNT_GASKET_MISSING,
        findings_mount.MOUNT_FACE_NOT_FLAT,
        findings_drive.PUMP_BOLTS_LOOSE,
    ),
    origins=(
        causes.PUMP_MOUNT_LEAK,
        causes.PUMP_GASKET_WRONG,
    ),
    source=COMMON_PRACTICE,
)
PUMP_NOT_AS_LISTED = Fault(
    id="pump_not_as_listed",
    station=Station.PUMP,
    says="a wrong pump, rotor or gasket is fitted",
    proofs=(
        findings_wear.ROTOR_WRONG_WAY_ROUND,
        findings_mount.WRONG_PUMP_FITTED,
        findings_mount.GASKET_MASKS_PORT,
        findings_bench.EXTRA_PUMP_GASKET,
    ),
    origins=(
        causes_fitted.PUMP_ROTOR_REVERSED,
        causes_fitted.PUMP_WRONG_PART,
        causes.PUMP_GASKET_WRONG,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.DELIVERY_REDUCED,),
)
PUMP_WAS_DRY = Fault(
    id="pump_was_dry",
    station=Station.PUMP,
    says="the pump was dry inside",
    proofs=(findings_bench.PUMP_DRY_INSIDE,),
    origins=(causes_fitted.PUMP_NOT_PRIMED,),
    source=COMMON_PRACTICE,
    states=(conditions.PUMP_DRY,),
)
SCAVENGE_SIDE_FAILS = Fault(
    id="scavenge_side_fails",
    station=Station.PUMP,
    says="the scavenge side does not bring the oil back to the tank",
    proofs=(
        findings_scavenge.SCAVENGE_SIDE_TAKES_AIR,
        findings_sights.SCAVENGE_PUMP_JAMMED,
    ),
    origins=(
        causes_fitted.SCAVENGE_FAILURE,
        causes.PUMP_DEBRIS_LOCK,
    ),
    source=COMMON_PRACTICE,
)

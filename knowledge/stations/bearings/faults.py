"""Faults of the crank bearings: what proves each, what it costs, where it can come from."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.faults import Fault
from knowledge.model import Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.bearings import (
    causes,
    causes_geometry,
    causes_poured,
    causes_shafts,
    findings_measured,
    findings_shafts,
    findings_shell_map,
    findings_shells,
    quantities,
)
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import findings_bench as pump_findings_bench
from knowledge.stations.topend import causes as topend_causes
from knowledge.work import Access

BEARINGS_FAILED = Fault(
    id="bearings_failed",
    station=Station.BEARINGS,
    says="bearings are wiped, spun or ruined",
    proofs=(
        findings_shells.SHELLS_WIPED,
        findings_shell_map.ONE_BEARING_WIPED,
        findings_shell_map.ALL_BEARINGS_WIPED,
        findings_shells.SHELL_SPUN,
        findings_shells.SHELLS_FOUND_RUINED,
        findings_shells.BEARING_FOUND_SEIZED,
    ),
    origins=(
        causes.BEARING_WIPED,
        causes.BEARING_SPUN,
        causes_geometry.OVERLOAD_LUGGING,
        causes_poured.POURED_BEARING_BROKEN_UP,
        causes.BEARING_WRONG_SIZE,
        causes_geometry.LINE_BORE_MISALIGNED,
        assembly_causes.DIRT_IN_ASSEMBLY,
        assembly_causes.PART_SHEDDING_INSIDE,
        assembly_causes.BEARING_OIL_HOLE_MISALIGNED,
        assembly_causes.CAP_SWAPPED,
        oil_causes_contamination.COOLANT_IN_OIL,
        causes.BEARING_WEAR_MAINS,
        causes.BEARING_WEAR_RODS,
        conditions.BEARINGS_STARVED,
    ),
    source=sources.BEARING_WEAR_ANALYSIS,
    states=(conditions.BEARINGS_DAMAGED,),
    damage=True,
    opens=(Access.CRANK_OUT,),
    decides=(
        "lay out all shells in order: if all look alike, they ran out of oil; one alone had its "
        "own fault; embedded specks are dirt"
    ),
    decided_by=(
        findings_shell_map.ALL_BEARINGS_WIPED,
        findings_shell_map.ONE_BEARING_WIPED,
        findings_shells.SHELLS_EMBEDDED_DIRT,
        findings_shell_map.WORST_FAR_FROM_PUMP,
        findings_shells.SIGNS_OF_STARVATION,
    ),
)
CRANK_HURT = Fault(
    id="crank_hurt",
    station=Station.BEARINGS,
    says="the crank's journals are scored or blued",
    proofs=(findings_shells.CRANK_SCORED,),
    origins=(
        causes.BEARING_WIPED,
        causes.BEARING_SPUN,
        assembly_causes.DIRT_IN_ASSEMBLY,
        conditions.BEARINGS_STARVED,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.BEARINGS_DAMAGED,),
    damage=True,
    opens=(Access.CRANK_OUT,),
)
MAIN_CLEARANCE_OVER = Fault(
    id="main_clearance_over",
    station=Station.BEARINGS,
    says="main bearing clearance is over the limit",
    proofs=(findings_measured.MAIN_CLEARANCE_TOO_WIDE,),
    origins=(
        causes.BEARING_WEAR_MAINS,
        causes.BEARING_WRONG_SIZE,
        causes_geometry.JOURNAL_FINISH,
        causes_geometry.LINE_BORE_MISALIGNED,
        assembly_causes.CAP_SWAPPED,
        assembly_causes_left_out.CLEARANCE_SET_WIDE,
        causes_poured.POURED_BEARING_BROKEN_UP,
        conditions.BEARINGS_DAMAGED,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.CLEARANCES_WIDE,),
    costs=(quantities.MAIN_CLEARANCE,),
)
ROD_CLEARANCE_OVER = Fault(
    id="rod_clearance_over",
    station=Station.BEARINGS,
    says="rod bearing clearance is over the limit",
    proofs=(findings_measured.ROD_CLEARANCE_TOO_WIDE,),
    origins=(
        causes.BEARING_WEAR_RODS,
        causes.BEARING_WRONG_SIZE,
        causes_geometry.JOURNAL_FINISH,
        assembly_causes_left_out.CLEARANCE_SET_WIDE,
        conditions.BEARINGS_DAMAGED,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.CLEARANCES_WIDE,),
    costs=(quantities.ROD_CLEARANCE,),
)
END_FLOAT_OVER = Fault(
    id="end_float_over",
    station=Station.BEARINGS,
    says="the crank's end float is over the limit",
    proofs=(findings_measured.CRANK_END_FLOAT_OVER,),
    origins=(causes.THRUST_BEARING_WEAR,),
    source=COMMON_PRACTICE,
)
SHELLS_WORN = Fault(
    id="shells_worn",
    station=Station.BEARINGS,
    says="the shells are worn to the copper",
    proofs=(findings_shells.SHELLS_WORN_EVENLY,),
    origins=(
        causes.BEARING_WEAR_MAINS,
        causes.BEARING_WEAR_RODS,
        causes_geometry.JOURNAL_FINISH,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.CLEARANCES_WIDE,),
)
METAL_IN_THE_OIL = Fault(
    id="metal_in_the_oil",
    station=Station.BEARINGS,
    says="metal has circulated with the oil",
    proofs=(
        debris_findings.METAL_IN_FILTER,
        debris_findings.METAL_IN_PAN,
        debris_findings.METAL_IN_SCREEN,
        debris_findings.METAL_THROUGHOUT,
        debris_findings.BEARING_PIECES_IN_PUMP,
        pump_findings_bench.STEEL_SLIVERS_IN_PUMP,
    ),
    origins=(
        assembly_causes.PART_SHEDDING_INSIDE,
        assembly_causes.DIRT_IN_ASSEMBLY,
        causes.THRUST_BEARING_WEAR,
        causes_geometry.OVERLOAD_LUGGING,
        causes_poured.POURED_BEARING_BROKEN_UP,
        topend_causes.CAM_BEARING_WEAR,
        pump_causes_drive.PUMP_DRIVE_SLIP,
        pump_causes.PUMP_DEBRIS_LOCK,
        conditions.BEARINGS_DAMAGED,
    ),
    source=sources.INSIDE_YOUR_FILTER,
    states=(conditions.METAL_SHED,),
    damage=True,
    opens=(Access.PLUGS_OUT,),
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
BALANCE_SHAFTS_WORN = Fault(
    id="balance_shafts_worn",
    station=Station.BEARINGS,
    says="the balance shaft bearings are worn",
    proofs=(findings_shafts.BALANCE_SHAFT_BEARINGS_WORN,),
    origins=(causes_shafts.BALANCE_SHAFT_WEAR,),
    source=sources.ARMY_TM_347_CAMSHAFT,
    states=(conditions.CLEARANCES_WIDE,),
)
AUXILIARY_SHAFT_WORN = Fault(
    id="auxiliary_shaft_worn",
    station=Station.BEARINGS,
    says="the auxiliary shaft's bearings are worn",
    proofs=(findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN,),
    origins=(causes_shafts.AUXILIARY_SHAFT_WEAR,),
    source=COMMON_PRACTICE,
    states=(conditions.CLEARANCES_WIDE,),
)
IDLER_GEAR_LOOSE = Fault(
    id="idler_gear_loose",
    station=Station.BEARINGS,
    says="an idler gear's bush is worn",
    proofs=(findings_shafts.IDLER_GEAR_BUSH_WORN,),
    origins=(causes_shafts.IDLER_BUSH_WEAR,),
    source=COMMON_PRACTICE,
    states=(conditions.CLEARANCES_WIDE,),
)

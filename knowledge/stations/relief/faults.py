"""Faults of the relief valve: what proves each, what it costs, where it can come from."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.faults import Fault
from knowledge.model import Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_geometry as bearings_causes_geometry
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.relief import causes, findings, quantities
from knowledge.stations.topend import causes as topend_causes

RELIEF_VALVE_HELD_OPEN = Fault(
    id="relief_valve_held_open",
    station=Station.RELIEF,
    says="the relief valve was held open by debris under it",
    proofs=(findings.DEBRIS_ON_RELIEF_SEAT,),
    origins=(
        causes.RELIEF_DEBRIS,
        assembly_causes.DIRT_IN_ASSEMBLY,
        assembly_causes.SEALANT_DEBRIS,
        assembly_causes.PART_SHEDDING_INSIDE,
        assembly_causes.TIMING_GEAR_SHEDDING,
        pump_causes.PUMP_GEAR_WEAR,
        pump_causes.PUMP_COVER_SCORED,
        pump_causes.PUMP_DEBRIS_LOCK,
        pump_causes_drive.PUMP_DRIVE_SLIP,
        pump_causes_drive.PUMP_DRIVE_BIND,
        bearings_causes.BEARING_WIPED,
        bearings_causes.BEARING_SPUN,
        bearings_causes.THRUST_BEARING_WEAR,
        bearings_causes_geometry.OVERLOAD_LUGGING,
        topend_causes.CAM_BEARING_WEAR,
        causes.RELIEF_BORE_SCORED,
        conditions.METAL_UNDER_RELIEF,
    ),
    source=sources.EHRESMAN_1998,
    states=(
        conditions.RELIEF_HELD_OPEN,
        conditions.METAL_UNDER_RELIEF,
    ),
    costs=(quantities.RELIEF_SEAT_GAP,),
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
RELIEF_VALVE_STUCK_OPEN = Fault(
    id="relief_valve_stuck_open",
    station=Station.RELIEF,
    says="the relief valve was stuck open",
    proofs=(findings.RELIEF_VALVE_STAYED_OPEN,),
    explained={findings.RELIEF_VALVE_STAYED_OPEN: (findings.DEBRIS_ON_RELIEF_SEAT,)},
    origins=(causes.RELIEF_STUCK_OPEN,),
    source=sources.PRESSURIZED_BLACK_GOLD,
    states=(conditions.RELIEF_BLEEDS,),
    costs=(quantities.RELIEF_SEAT_GAP,),
)
RELIEF_VALVE_STUCK_SHUT = Fault(
    id="relief_valve_stuck_shut",
    station=Station.RELIEF,
    says="the relief valve was stuck shut",
    proofs=(findings.RELIEF_VALVE_STAYED_SHUT,),
    origins=(causes.RELIEF_STUCK_CLOSED,),
    source=sources.PRESSURIZED_BLACK_GOLD,
    states=(conditions.RELIEF_HOLDS_HIGH,),
)
RELIEF_VALVE_GRIPPED = Fault(
    id="relief_valve_gripped",
    station=Station.RELIEF,
    says="the relief valve does not move freely",
    proofs=(
        findings.RELIEF_FOUND_STUCK,
        findings.RELIEF_PLUNGER_STICKS,
    ),
    explained={
        findings.RELIEF_FOUND_STUCK: (
            findings.DEBRIS_ON_RELIEF_SEAT,
            findings.RELIEF_VALVE_STAYED_OPEN,
            findings.RELIEF_VALVE_STAYED_SHUT,
        )
    },
    origins=(
        causes.RELIEF_STUCK_OPEN,
        causes.RELIEF_STUCK_CLOSED,
        causes.RELIEF_BORE_SCORED,
        causes.RELIEF_DEBRIS,
    ),
    source=sources.RELIEF_FREE_FALL,
    alike=(causes.RELIEF_STUCK_OPEN, causes.RELIEF_BORE_SCORED),
)
RELIEF_VALVE_BAD = Fault(
    id="relief_valve_bad",
    station=Station.RELIEF,
    says="the relief valve is bad, how is not known",
    proofs=(findings.RELIEF_FOUND_BAD,),
    explained={
        findings.RELIEF_FOUND_BAD: (
            findings.DEBRIS_ON_RELIEF_SEAT,
            findings.RELIEF_FOUND_STUCK,
            findings.RELIEF_PLUNGER_STICKS,
            findings.RELIEF_VALVE_STAYED_OPEN,
            findings.RELIEF_VALVE_STAYED_SHUT,
            findings.RELIEF_SEAT_SCORED,
            findings.RELIEF_SPRING_SHORT_OR_BROKEN,
            findings.RELIEF_PARTS_NOT_STANDARD,
            findings.RELIEF_PART_ABSENT,
        )
    },
    origins=(
        causes.RELIEF_STUCK_OPEN,
        causes.RELIEF_STUCK_CLOSED,
        causes.RELIEF_BORE_SCORED,
        causes.RELIEF_SPRING_WEAK_BROKEN,
        causes.RELIEF_SPRING_WRONG,
        causes.RELIEF_DEBRIS,
        causes.RELIEF_HUNTING,
        causes.RELIEF_PART_MISSING,
        causes.RELIEF_CAP_LOOSE,
    ),
    source=COMMON_PRACTICE,
    decides="take valve and spring out: stuck, dirty, scored, or spring short or broken",
    decided_by=(
        findings.DEBRIS_ON_RELIEF_SEAT,
        findings.RELIEF_FOUND_STUCK,
        findings.RELIEF_SEAT_SCORED,
        findings.RELIEF_SPRING_SHORT_OR_BROKEN,
        findings.RELIEF_PARTS_NOT_STANDARD,
    ),
)
RELIEF_SEAT_WORN = Fault(
    id="relief_seat_worn",
    station=Station.RELIEF,
    says="the relief valve leaks at a worn or scored seat",
    proofs=(findings.RELIEF_SEAT_SCORED,),
    origins=(
        causes.RELIEF_BORE_SCORED,
        causes.RELIEF_HUNTING,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.RELIEF_BLEEDS,),
    costs=(quantities.RELIEF_SEAT_GAP,),
)
RELIEF_SPRING_BAD = Fault(
    id="relief_spring_bad",
    station=Station.RELIEF,
    says="the relief spring is weak, short or broken",
    proofs=(
        findings.RELIEF_SPRING_SHORT_OR_BROKEN,
        findings.RELIEF_BENCH_OPENS_LOW,
    ),
    origins=(
        causes.RELIEF_SPRING_WEAK_BROKEN,
        causes.RELIEF_SPRING_WRONG,
    ),
    source=COMMON_PRACTICE,
    alike=(causes.RELIEF_SPRING_WEAK_BROKEN, causes.RELIEF_SPRING_WRONG),
    states=(conditions.RELIEF_CAPS_LOW,),
    costs=(quantities.RELIEF_SETTING,),
)
RELIEF_PUT_TOGETHER_WRONG = Fault(
    id="relief_put_together_wrong",
    station=Station.RELIEF,
    says="the relief valve is not as the maker built it",
    proofs=(
        findings.RELIEF_PARTS_NOT_STANDARD,
        findings.RELIEF_PART_ABSENT,
    ),
    origins=(
        causes.RELIEF_SPRING_WRONG,
        causes.RELIEF_PART_MISSING,
    ),
    source=COMMON_PRACTICE,
)
RELIEF_CAP_NOT_TIGHT = Fault(
    id="relief_cap_not_tight",
    station=Station.RELIEF,
    says="the relief cap is loose or leaks",
    proofs=(findings.RELIEF_CAP_LOOSE_OR_LEAKING,),
    origins=(causes.RELIEF_CAP_LOOSE,),
    source=COMMON_PRACTICE,
    states=(conditions.RELIEF_CAPS_LOW,),
)
RELIEF_RETURN_SHUT = Fault(
    id="relief_return_shut",
    station=Station.RELIEF,
    says="the relief valve cannot return its oil",
    proofs=(findings.RELIEF_RETURN_BLOCKED,),
    origins=(causes.RELIEF_RETURN_PLUGGED,),
    source=COMMON_PRACTICE,
    states=(conditions.RELIEF_HOLDS_HIGH,),
)

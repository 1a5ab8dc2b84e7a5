"""Which check comes first at the open sump, the pump and the bearings."""

from knowledge import sources
from knowledge.access.precedence_model import FirstOf
from knowledge.debris import findings as debris_findings
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import findings as assembly_findings
from knowledge.stations.assembly import findings_left_out as assembly_left_out
from knowledge.stations.bearings import findings_measured as bearings_measured
from knowledge.stations.bearings import findings_shafts as bearings_shafts
from knowledge.stations.bearings import findings_shell_map as bearings_shell_map
from knowledge.stations.bearings import findings_shells as bearings_shells
from knowledge.stations.delivery import findings_galleries as delivery_galleries
from knowledge.stations.oil import findings_contamination as oil_contamination
from knowledge.stations.pump import findings_bench as pump_bench
from knowledge.stations.pump import findings_drive as pump_drive
from knowledge.stations.pump import findings_mount as pump_mount
from knowledge.stations.pump import findings_wear as pump_wear
from knowledge.stations.suction import findings_pickup as suction_pickup
from knowledge.stations.suction import findings_sump as suction_sump
from knowledge.stations.topend import findings_feeds as topend_feeds

_SUMP = (
    FirstOf(
        check=suction_sump.CATCH_SUMP_CONTENTS,
        then=(
            delivery_galleries.LOOK_FOR_A_PLUG_IN_THE_SUMP,
            suction_sump.LOOK_AT_SUMP_FLOOR,
            suction_sump.LOOK_AT_THE_SCREEN,
            suction_pickup.TWIST_THE_PICKUP,
            suction_pickup.MEASURE_PICKUP_GAP,
            suction_pickup.LOOK_AT_BAFFLES,
            topend_feeds.LOOK_AT_THE_PISTON_JETS,
            assembly_findings.LOOK_UP_AT_THE_BOTTOM_END,
            assembly_findings.COMPARE_PARTS_WITH_THE_LIST,
            assembly_findings.FEEL_TORQUE_ON_LOOSENING,
            bearings_measured.MEASURE_CRANK_END_FLOAT,
            bearings_shafts.LOOK_AT_THE_BALANCE_SHAFTS,
            pump_drive.TURN_ENGINE_WATCH_PUMP,
            delivery_galleries.PRIME_AND_WATCH_FROM_BELOW,
            suction_pickup.LOOK_AT_THE_TRAY,
            suction_pickup.TURN_CRANK_PAST_TRAY,
            assembly_left_out.COUNT_THE_CRANK_PLUGS,
            oil_contamination.LOOK_FOR_THE_WATER,
        ),
        why="photograph and bag what lies in the sump by place before anything else",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=assembly_findings.LOOK_UP_AT_THE_BOTTOM_END,
        then=(
            pump_drive.TURN_ENGINE_WATCH_PUMP,
            suction_pickup.TURN_CRANK_PAST_TRAY,
            suction_pickup.TWIST_THE_PICKUP,
            suction_pickup.MEASURE_PICKUP_GAP,
            bearings_measured.MEASURE_CRANK_END_FLOAT,
            assembly_findings.FEEL_TORQUE_ON_LOOSENING,
            delivery_galleries.PRIME_AND_WATCH_FROM_BELOW,
        ),
        why="look at locks, marks and loose pieces before you turn or loosen anything",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=suction_sump.LOOK_AT_THE_SCREEN,
        then=(
            suction_pickup.TWIST_THE_PICKUP,
            suction_pickup.MEASURE_PICKUP_GAP,
            assembly_findings.FEEL_TORQUE_ON_LOOSENING,
            delivery_galleries.PRIME_AND_WATCH_FROM_BELOW,
        ),
        why="debris falls off the screen when you move the pickup, and oil washes it off",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=suction_sump.LOOK_AT_SUMP_FLOOR,
        then=(suction_pickup.MEASURE_PICKUP_GAP, suction_pickup.LOOK_AT_BAFFLES),
        why="clay leaves its own print, and oil poured in washes the floor",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=delivery_galleries.LOOK_FOR_A_PLUG_IN_THE_SUMP,
        then=(suction_pickup.MEASURE_PICKUP_GAP, suction_pickup.LOOK_AT_BAFFLES),
        why="search the sump before you refit it or pour oil into it",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=suction_pickup.TWIST_THE_PICKUP,
        then=(suction_pickup.MEASURE_PICKUP_GAP,),
        why="find a tube that rocks before clay presses it home",
        source=COMMON_PRACTICE,
    ),
    *(
        FirstOf(
            check=check,
            then=(assembly_findings.FEEL_TORQUE_ON_LOOSENING,),
            why="read it with every bolt still as tight as it ran",
            source=COMMON_PRACTICE,
        )
        for check in (
            suction_pickup.TWIST_THE_PICKUP,
            suction_pickup.MEASURE_PICKUP_GAP,
            bearings_measured.MEASURE_CRANK_END_FLOAT,
            pump_drive.TURN_ENGINE_WATCH_PUMP,
            delivery_galleries.PRIME_AND_WATCH_FROM_BELOW,
        )
    ),
    FirstOf(
        check=suction_pickup.LOOK_AT_THE_TRAY,
        then=(suction_pickup.TURN_CRANK_PAST_TRAY,),
        why="photograph rub marks before you turn the crank past the tray",
        source=COMMON_PRACTICE,
    ),
)
_PUMP = (
    FirstOf(
        check=pump_mount.LOOK_AT_THE_PUMP_JOINT,
        then=(
            pump_mount.TURN_PUMP_IN_OIL_BATH,
            pump_wear.TRY_THE_COVER_JOINT_FOR_AIR,
            pump_wear.FIND_CRACKS_IN_THE_PUMP,
        ),
        why="the first oil, soap or scraper removes print and wash marks",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=pump_bench.LOOK_INTO_THE_OPENED_PUMP,
        then=(
            debris_findings.LOOK_FOR_PIECES_IN_THE_PUMP,
            pump_wear.COMPARE_ROTOR_WITH_DRAWING,
            pump_wear.LOOK_OVER_GEARS_AND_BUSHES,
            pump_bench.MEASURE_GEAR_END_CLEARANCE,
            pump_bench.MEASURE_GEAR_SIDE_CLEARANCE,
            pump_bench.LAY_STRAIGHTEDGE_ON_COVER,
            pump_wear.FIND_CRACKS_IN_THE_PUMP,
            pump_mount.TURN_PUMP_IN_OIL_BATH,
        ),
        why="the oil film that shows it was wet, and how gears and debris lay, are lost at once",
        source=sources.TRUCK_SERVICE_1994,
    ),
    FirstOf(
        check=debris_findings.LOOK_FOR_PIECES_IN_THE_PUMP,
        then=(
            pump_wear.LOOK_OVER_GEARS_AND_BUSHES,
            pump_bench.MEASURE_GEAR_END_CLEARANCE,
            pump_bench.MEASURE_GEAR_SIDE_CLEARANCE,
            pump_wear.FIND_CRACKS_IN_THE_PUMP,
            pump_mount.TURN_PUMP_IN_OIL_BATH,
        ),
        why="pick pieces from where they lay before you turn or clean parts",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=pump_wear.COMPARE_ROTOR_WITH_DRAWING,
        then=(
            pump_wear.LOOK_OVER_GEARS_AND_BUSHES,
            pump_bench.MEASURE_GEAR_END_CLEARANCE,
            pump_bench.MEASURE_GEAR_SIDE_CLEARANCE,
            pump_wear.FIND_CRACKS_IN_THE_PUMP,
        ),
        why="which way round the rotor stood is lost once you lift it",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=pump_wear.LOOK_OVER_GEARS_AND_BUSHES,
        then=(pump_wear.FIND_CRACKS_IN_THE_PUMP,),
        why="crack dye and solvent wash everything else away",
        source=JUDGEMENT,
    ),
)
_BEARINGS = (
    FirstOf(
        check=bearings_shells.LIFT_ONE_CAP,
        then=(
            bearings_shell_map.MAP_ALL_SHELLS,
            bearings_shell_map.COMPARE_SHELLS_AND_HOLES,
            bearings_measured.LAY_PLASTIC_THREAD,
            bearings_measured.MEASURE_JOURNALS_AND_SEATS,
        ),
        why="look at film and debris of the likeliest bearing before you wipe anything",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=bearings_shell_map.MAP_ALL_SHELLS,
        then=(bearings_measured.MEASURE_JOURNALS_AND_SEATS,),
        why="lay out every shell as found before you clean journals and seats",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=debris_findings.OPEN_THE_CRANK_TRAPS,
        then=(bearings_measured.LAY_A_BAR_IN_THE_MAINS, delivery_galleries.SOAP_THE_GALLERY_WALLS),
        why="catch what traps and oilways hold before you clean crank and block",
        source=JUDGEMENT,
    ),
)
FIRST_INSIDE: tuple[FirstOf, ...] = (*_SUMP, *_PUMP, *_BEARINGS)

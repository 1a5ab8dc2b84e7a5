"""What must be seen before sump, pump and bearings are opened further."""

from knowledge import sources
from knowledge.access.precedence_model import Before, before
from knowledge.debris import findings as debris_findings
from knowledge.engines import features
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import findings as assembly_findings
from knowledge.stations.bearings import findings as bearings_findings
from knowledge.stations.bearings import findings_measured as bearings_measured
from knowledge.stations.bearings import findings_shell_map as bearings_shell_map
from knowledge.stations.delivery import findings_galleries as delivery_galleries
from knowledge.stations.oil import findings_drained as oil_drained
from knowledge.stations.pump import findings_bench as pump_bench
from knowledge.stations.pump import findings_drive as pump_drive
from knowledge.stations.pump import findings_mount as pump_mount
from knowledge.stations.pump import findings_wear as pump_wear
from knowledge.stations.suction import findings as suction_findings
from knowledge.stations.suction import findings_pickup as suction_pickup
from knowledge.stations.suction import findings_sump as suction_sump
from knowledge.stations.topend import findings as topend_findings
from knowledge.stations.topend import findings_cam as topend_cam
from knowledge.work import Access

#: a pump that is reached without the sump: looking up from below is not on its way
_NOT_IN_SUMP = (
    features.PUMP_OUTSIDE,
    features.PUMP_ON_CRANK_NOSE,
    features.PUMP_ON_CAM_NOSE,
)
_SUMP = (
    *before(
        check=suction_findings.LOOK_UNDER_THE_SUMP,
        why="a jack under the sump makes its own dent; sealer shows only at the closed joint",
        source=JUDGEMENT,
        openings=(
            Access.ENGINE_EASED,
            Access.SUMP_OFF,
        ),
    ),
    *before(
        check=bearings_findings.TURN_ENGINE_BY_HAND,
        why="once you have seen debris, turn the engine no more than needed",
        source=COMMON_PRACTICE,
        openings=(
            Access.SUMP_OFF,
            Access.CAP_OFF,
        ),
    ),
    *before(
        check=oil_drained.DRAIN_THROUGH_A_CLOTH,
        why="keep first and last half litre apart before they mix",
        source=COMMON_PRACTICE,
        openings=(Access.SUMP_OFF,),
    ),
    *before(
        check=oil_drained.MEASURE_WHAT_COMES_OUT,
        why="you cannot measure what drips from an open sump",
        source=COMMON_PRACTICE,
        openings=(Access.SUMP_OFF,),
    ),
    *before(
        check=debris_findings.LOOK_AT_THE_DRAIN_MAGNET,
        why="read the magnet before you put it down or wipe it",
        source=JUDGEMENT,
        openings=(Access.SUMP_OFF,),
    ),
    *before(
        check=oil_drained.FILL_BY_MEASURE,
        why="check the stick with the sump on and empty",
        source=COMMON_PRACTICE,
        openings=(Access.SUMP_OFF,),
    ),
    *before(
        check=suction_sump.LOOK_THROUGH_THE_DRAIN,
        why="debris moves as the sump comes down",
        source=JUDGEMENT,
        openings=(Access.SUMP_OFF,),
    ),
    *before(
        check=suction_sump.CATCH_SUMP_CONTENTS,
        why="work above shakes more debris into the sump; bag it by place first",
        source=COMMON_PRACTICE,
        openings=(
            Access.TRAY_OFF,
            Access.CAP_OFF,
        ),
    ),
    *before(
        check=suction_sump.CATCH_SUMP_CONTENTS,
        why="work above shakes more debris into the sump; bag it by place first",
        source=COMMON_PRACTICE,
        openings=(
            Access.PICKUP_OFF,
            Access.PUMP_OFF,
        ),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=assembly_findings.LOOK_UP_AT_THE_BOTTOM_END,
        why="look at locks, marks and loose pieces before you put a wrench on anything",
        source=COMMON_PRACTICE,
        openings=(
            Access.TRAY_OFF,
            Access.CAP_OFF,
        ),
    ),
    *before(
        check=suction_sump.LOOK_AT_THE_SCREEN,
        why="debris falls off the screen when you move the pickup",
        source=COMMON_PRACTICE,
        openings=(
            Access.PICKUP_OFF,
            Access.PUMP_OFF,
        ),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=suction_pickup.TWIST_THE_PICKUP,
        why="feel whether the tube was tight before you pull it",
        source=COMMON_PRACTICE,
        openings=(
            Access.PICKUP_OFF,
            Access.PUMP_OFF,
        ),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=suction_pickup.MEASURE_PICKUP_GAP,
        why="the gap as run is lost once pickup or pump has moved",
        source=COMMON_PRACTICE,
        openings=(
            Access.PICKUP_OFF,
            Access.PUMP_OFF,
        ),
        not_with=_NOT_IN_SUMP,
    ),
)
_PUMP = (
    *before(
        check=pump_drive.LOOK_DOWN_THE_DRIVE,
        why="see how far the shaft engaged while the pump holds it",
        source=COMMON_PRACTICE,
        openings=(Access.PUMP_OFF,),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=pump_drive.MEASURE_GEAR_AND_FLOAT,
        why="measure the end float of the drive with the pump bolted up",
        source=COMMON_PRACTICE,
        openings=(Access.PUMP_OFF,),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=pump_drive.TURN_ENGINE_WATCH_PUMP,
        why="you can see a pump turn only while something drives it",
        source=COMMON_PRACTICE,
        openings=(Access.PUMP_OFF,),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=assembly_findings.FEEL_TORQUE_ON_LOOSENING,
        why="you can read how tight pump and pickup bolts were only once, as you undo them",
        source=COMMON_PRACTICE,
        openings=(
            Access.PUMP_OFF,
            Access.PICKUP_OFF,
        ),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=pump_mount.LOOK_AT_THE_PUMP_JOINT,
        why="read the gasket's print and wash marks before bench work scrapes them off",
        source=COMMON_PRACTICE,
        openings=(Access.PUMP_COVER_OFF,),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=pump_wear.TRY_THE_COVER_JOINT_FOR_AIR,
        why="test the cover joint as it ran, before you turn a screw",
        source=JUDGEMENT,
        openings=(Access.PUMP_COVER_OFF,),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=pump_bench.LOOK_INTO_THE_OPENED_PUMP,
        why="debris in the pump moves when you drive the plug out",
        source=sources.TRUCK_SERVICE_1994,
        openings=(Access.PUMP_RELIEF_OUT,),
        not_with=(features.RELIEF_OUTSIDE,),
    ),
)
_DEEP = (
    *before(
        check=bearings_findings.WATCH_THE_PULLEY_ENDWAYS,
        why="you need the pulley to watch and the clutch to press",
        source=JUDGEMENT,
        openings=(
            Access.FRONT_COVER_OFF,
            Access.FLYWHEEL_OFF,
        ),
    ),
    *before(
        check=bearings_measured.MEASURE_CRANK_END_FLOAT,
        why="measure end float with every cap tight",
        source=COMMON_PRACTICE,
        openings=(Access.CAP_OFF,),
    ),
    *before(
        check=assembly_findings.FEEL_TORQUE_ON_LOOSENING,
        why="you can read how tight a cap was only once, as you undo its bolts",
        source=COMMON_PRACTICE,
        openings=(Access.CAP_OFF,),
    ),
    *before(
        check=pump_drive.TURN_ENGINE_WATCH_PUMP,
        why="do not turn the crank with a cap off",
        source=COMMON_PRACTICE,
        openings=(Access.CAP_OFF,),
    ),
    *before(
        check=suction_pickup.TURN_CRANK_PAST_TRAY,
        why="do not turn the crank with a cap off",
        source=COMMON_PRACTICE,
        openings=(Access.CAP_OFF,),
    ),
    *before(
        check=suction_pickup.LOOK_AT_THE_TRAY,
        why="look at rub marks before you push rods past the tray",
        source=COMMON_PRACTICE,
        openings=(Access.CAP_OFF,),
    ),
    *before(
        check=delivery_galleries.PRIME_AND_WATCH_FROM_BELOW,
        why="an open bearing drowns what the others show",
        source=JUDGEMENT,
        openings=(
            Access.CAP_OFF,
            Access.PLUGS_OUT,
        ),
    ),
    *before(
        check=delivery_galleries.PRIME_AND_WATCH_FROM_BELOW,
        why="cam bearings show whether they pour only with the cam in them",
        source=JUDGEMENT,
        openings=(Access.CAM_OUT,),
        not_with=(features.OVERHEAD_CAM,),
    ),
    *before(
        check=delivery_galleries.PRIME_AND_WATCH_THE_FRONT,
        why="an open gallery or bearing drowns what the others show",
        source=JUDGEMENT,
        openings=(
            Access.PLUGS_OUT,
            Access.CRANK_OUT,
            Access.CAM_OUT,
        ),
    ),
    *before(
        check=delivery_galleries.PRIME_AND_WATCH_THE_VALLEY,
        why="an open gallery or bearing drowns what the others show",
        source=JUDGEMENT,
        openings=(Access.CRANK_OUT,),
    ),
    *before(
        check=delivery_galleries.PRIME_AND_WATCH_THE_VALLEY,
        why="lifters and cam bearings show whether they pour only with the cam in them",
        source=JUDGEMENT,
        openings=(Access.CAM_OUT,),
        not_with=(features.OVERHEAD_CAM,),
    ),
    *before(
        check=delivery_galleries.COUNT_PLUGS_AT_THE_FRONT,
        why="count the plugs and measure their depth before you touch one",
        source=JUDGEMENT,
        openings=(Access.PLUGS_OUT,),
    ),
    *before(
        check=topend_cam.LOOK_AT_THE_TENSIONERS,
        why="how far a tensioner stood out is lost when the chain comes off",
        source=JUDGEMENT,
        openings=(
            Access.PLUGS_OUT,
            Access.CRANK_OUT,
            Access.CAM_OUT,
        ),
    ),
    *before(
        check=topend_findings.LOOK_UNDER_THE_VALVE_COVER,
        why="with cam and pushrods in you can see that every valve moves",
        source=JUDGEMENT,
        openings=(Access.CAM_OUT,),
    ),
    *before(
        check=topend_cam.FEEL_THE_LIFTERS,
        why="check and tag lifters before you pull the cam from under them",
        source=COMMON_PRACTICE,
        openings=(Access.CAM_OUT,),
        not_with=(features.OVERHEAD_CAM,),
    ),
    *before(
        check=bearings_shell_map.MAP_ALL_SHELLS,
        why="note where every shell was before you lift the crank off them",
        source=COMMON_PRACTICE,
        openings=(Access.CRANK_OUT,),
    ),
    *before(
        check=bearings_measured.LAY_PLASTIC_THREAD,
        why="the crank in its bearings presses the gauge strip",
        source=COMMON_PRACTICE,
        openings=(Access.CRANK_OUT,),
    ),
)
BEFORE_INSIDE: tuple[Before, ...] = (*_SUMP, *_PUMP, *_DEEP)

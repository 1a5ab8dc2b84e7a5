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
        why="a jack under the sump makes a dent of its own; sealer shows at the closed joint",
        source=JUDGEMENT,
        openings=(
            Access.ENGINE_EASED,
            Access.SUMP_OFF,
        ),
    ),
    *before(
        check=bearings_findings.TURN_ENGINE_BY_HAND,
        why="once debris is seen the engine is turned no more than needed",
        source=COMMON_PRACTICE,
        openings=(
            Access.SUMP_OFF,
            Access.CAP_OFF,
        ),
    ),
    *before(
        check=oil_drained.DRAIN_THROUGH_A_CLOTH,
        why="first and last half litre are kept before they mix",
        source=COMMON_PRACTICE,
        openings=(Access.SUMP_OFF,),
    ),
    *before(
        check=oil_drained.MEASURE_WHAT_COMES_OUT,
        why="what drips from an open sump is not measured",
        source=COMMON_PRACTICE,
        openings=(Access.SUMP_OFF,),
    ),
    *before(
        check=debris_findings.LOOK_AT_THE_DRAIN_MAGNET,
        why="the magnet is read before it is put down or wiped",
        source=JUDGEMENT,
        openings=(Access.SUMP_OFF,),
    ),
    *before(
        check=oil_drained.FILL_BY_MEASURE,
        why="the stick is proved with the sump on and empty",
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
        why="work above shakes more into the sump; bag by place first",
        source=COMMON_PRACTICE,
        openings=(
            Access.TRAY_OFF,
            Access.CAP_OFF,
        ),
    ),
    *before(
        check=suction_sump.CATCH_SUMP_CONTENTS,
        why="work above shakes more into the sump; bag by place first",
        source=COMMON_PRACTICE,
        openings=(
            Access.PICKUP_OFF,
            Access.PUMP_OFF,
        ),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=assembly_findings.LOOK_UP_AT_THE_BOTTOM_END,
        why="locks, marks and loose pieces are seen before a spanner goes on",
        source=COMMON_PRACTICE,
        openings=(
            Access.TRAY_OFF,
            Access.CAP_OFF,
        ),
    ),
    *before(
        check=suction_sump.LOOK_AT_THE_SCREEN,
        why="debris falls off the mesh as the pickup is moved",
        source=COMMON_PRACTICE,
        openings=(
            Access.PICKUP_OFF,
            Access.PUMP_OFF,
        ),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=suction_pickup.TWIST_THE_PICKUP,
        why="whether the tube was tight is felt before it is drawn",
        source=COMMON_PRACTICE,
        openings=(
            Access.PICKUP_OFF,
            Access.PUMP_OFF,
        ),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=suction_pickup.MEASURE_PICKUP_GAP,
        why="the gap as run is gone once pickup or pump has moved",
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
        why="how far the shaft engaged is seen while the pump holds it",
        source=COMMON_PRACTICE,
        openings=(Access.PUMP_OFF,),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=pump_drive.MEASURE_GEAR_AND_FLOAT,
        why="the drive's end float is measured with the pump bolted up",
        source=COMMON_PRACTICE,
        openings=(Access.PUMP_OFF,),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=pump_drive.TURN_ENGINE_WATCH_PUMP,
        why="a pump shows whether it turns only while it is driven",
        source=COMMON_PRACTICE,
        openings=(Access.PUMP_OFF,),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=assembly_findings.FEEL_TORQUE_ON_LOOSENING,
        why="how tight pump and pickup bolts were is read once, as they let go",
        source=COMMON_PRACTICE,
        openings=(
            Access.PUMP_OFF,
            Access.PICKUP_OFF,
        ),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=pump_mount.LOOK_AT_THE_PUMP_JOINT,
        why="print and wash marks of the gasket are read before bench work scrapes them",
        source=COMMON_PRACTICE,
        openings=(Access.PUMP_COVER_OFF,),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=pump_wear.TRY_THE_COVER_JOINT_FOR_AIR,
        why="the cover's joint is tried as it ran, before a screw is turned",
        source=JUDGEMENT,
        openings=(Access.PUMP_COVER_OFF,),
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        check=pump_bench.LOOK_INTO_THE_OPENED_PUMP,
        why="debris in the pump moves when the plug is driven out",
        source=sources.TRUCK_SERVICE_1994,
        openings=(Access.PUMP_RELIEF_OUT,),
        not_with=(features.RELIEF_OUTSIDE,),
    ),
)
_DEEP = (
    *before(
        check=bearings_findings.WATCH_THE_PULLEY_ENDWAYS,
        why="pulley and clutch are what it is watched and pressed by",
        source=JUDGEMENT,
        openings=(
            Access.FRONT_COVER_OFF,
            Access.FLYWHEEL_OFF,
        ),
    ),
    *before(
        check=bearings_measured.MEASURE_CRANK_END_FLOAT,
        why="end float is measured with every cap tight",
        source=COMMON_PRACTICE,
        openings=(Access.CAP_OFF,),
    ),
    *before(
        check=assembly_findings.FEEL_TORQUE_ON_LOOSENING,
        why="how tight a cap was is read once, as its bolts let go",
        source=COMMON_PRACTICE,
        openings=(Access.CAP_OFF,),
    ),
    *before(
        check=pump_drive.TURN_ENGINE_WATCH_PUMP,
        why="the crank is not turned with a cap off",
        source=COMMON_PRACTICE,
        openings=(Access.CAP_OFF,),
    ),
    *before(
        check=suction_pickup.TURN_CRANK_PAST_TRAY,
        why="the crank is not turned with a cap off",
        source=COMMON_PRACTICE,
        openings=(Access.CAP_OFF,),
    ),
    *before(
        check=suction_pickup.LOOK_AT_THE_TRAY,
        why="rub marks are read before rods are pushed past the tray's place",
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
        why="the cam's bearings are seen to pour only with the cam in them",
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
        why="lifters and cam bearings are seen to pour only with the cam in them",
        source=JUDGEMENT,
        openings=(Access.CAM_OUT,),
        not_with=(features.OVERHEAD_CAM,),
    ),
    *before(
        check=delivery_galleries.COUNT_PLUGS_AT_THE_FRONT,
        why="the plugs are counted and their depth taken before one is touched",
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
        why="that every valve moves is seen with cam and pushrods in",
        source=JUDGEMENT,
        openings=(Access.CAM_OUT,),
    ),
    *before(
        check=topend_cam.FEEL_THE_LIFTERS,
        why="lifters are tried and tagged before the cam is drawn from under them",
        source=COMMON_PRACTICE,
        openings=(Access.CAM_OUT,),
        not_with=(features.OVERHEAD_CAM,),
    ),
    *before(
        check=bearings_shell_map.MAP_ALL_SHELLS,
        why="every shell is mapped to its place before the crank is lifted off them",
        source=COMMON_PRACTICE,
        openings=(Access.CRANK_OUT,),
    ),
    *before(
        check=bearings_measured.LAY_PLASTIC_THREAD,
        why="the thread is pressed by the crank lying in its bearings",
        source=COMMON_PRACTICE,
        openings=(Access.CRANK_OUT,),
    ),
)
BEFORE_INSIDE: tuple[Before, ...] = (*_SUMP, *_PUMP, *_DEEP)

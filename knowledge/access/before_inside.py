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
_NOT_IN_SUMP = (features.PUMP_OUTSIDE, features.PUMP_ON_CRANK_NOSE)
_SUMP = (
    *before(
        suction_findings.LOOK_UNDER_THE_SUMP,
        "a jack under the sump makes a dent of its own; sealer shows at the closed joint",
        JUDGEMENT,
        Access.ENGINE_EASED,
        Access.SUMP_OFF,
    ),
    *before(
        bearings_findings.TURN_ENGINE_BY_HAND,
        "once debris is seen the engine is turned no more than needed",
        COMMON_PRACTICE,
        Access.SUMP_OFF,
        Access.CAP_OFF,
    ),
    *before(
        oil_drained.DRAIN_THROUGH_A_CLOTH,
        "first and last half litre are kept before they mix",
        COMMON_PRACTICE,
        Access.SUMP_OFF,
    ),
    *before(
        oil_drained.MEASURE_WHAT_COMES_OUT,
        "what drips from an open sump is not measured",
        COMMON_PRACTICE,
        Access.SUMP_OFF,
    ),
    *before(
        debris_findings.LOOK_AT_THE_DRAIN_MAGNET,
        "the magnet is read before it is put down or wiped",
        JUDGEMENT,
        Access.SUMP_OFF,
    ),
    *before(
        oil_drained.FILL_BY_MEASURE,
        "the stick is proved with the sump on and empty",
        COMMON_PRACTICE,
        Access.SUMP_OFF,
    ),
    *before(
        suction_sump.LOOK_THROUGH_THE_DRAIN,
        "debris moves as the sump comes down",
        JUDGEMENT,
        Access.SUMP_OFF,
    ),
    *before(
        suction_sump.CATCH_SUMP_CONTENTS,
        "work above shakes more into the sump; bag by place first",
        COMMON_PRACTICE,
        Access.TRAY_OFF,
        Access.CAP_OFF,
    ),
    *before(
        suction_sump.CATCH_SUMP_CONTENTS,
        "work above shakes more into the sump; bag by place first",
        COMMON_PRACTICE,
        Access.PICKUP_OFF,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        assembly_findings.LOOK_UP_AT_THE_BOTTOM_END,
        "locks, marks and loose pieces are seen before a spanner goes on",
        COMMON_PRACTICE,
        Access.TRAY_OFF,
        Access.CAP_OFF,
    ),
    *before(
        suction_sump.LOOK_AT_THE_SCREEN,
        "debris falls off the mesh as the pickup is moved",
        COMMON_PRACTICE,
        Access.PICKUP_OFF,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        suction_pickup.TWIST_THE_PICKUP,
        "whether the tube was tight is felt before it is drawn",
        COMMON_PRACTICE,
        Access.PICKUP_OFF,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        suction_pickup.MEASURE_PICKUP_GAP,
        "the gap as run is gone once pickup or pump has moved",
        COMMON_PRACTICE,
        Access.PICKUP_OFF,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
)
_PUMP = (
    *before(
        pump_drive.LOOK_DOWN_THE_DRIVE,
        "how far the shaft engaged is seen while the pump holds it",
        COMMON_PRACTICE,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        pump_drive.MEASURE_GEAR_AND_FLOAT,
        "the drive's end float is measured with the pump bolted up",
        COMMON_PRACTICE,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        pump_drive.TURN_ENGINE_WATCH_PUMP,
        "a pump shows whether it turns only while it is driven",
        COMMON_PRACTICE,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        assembly_findings.FEEL_TORQUE_ON_LOOSENING,
        "how tight pump and pickup bolts were is read once, as they let go",
        COMMON_PRACTICE,
        Access.PUMP_OFF,
        Access.PICKUP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        pump_mount.LOOK_AT_THE_PUMP_JOINT,
        "print and wash marks of the gasket are read before bench work scrapes them",
        COMMON_PRACTICE,
        Access.PUMP_COVER_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        pump_wear.TRY_THE_COVER_JOINT_FOR_AIR,
        "the cover's joint is tried as it ran, before a screw is turned",
        JUDGEMENT,
        Access.PUMP_COVER_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        pump_bench.LOOK_INTO_THE_OPENED_PUMP,
        "debris in the pump moves when the plug is driven out",
        sources.TRUCK_SERVICE_1994,
        Access.PUMP_RELIEF_OUT,
        not_with=(features.RELIEF_OUTSIDE,),
    ),
)
_DEEP = (
    *before(
        bearings_findings.WATCH_THE_PULLEY_ENDWAYS,
        "pulley and clutch are what it is watched and pressed by",
        JUDGEMENT,
        Access.FRONT_COVER_OFF,
        Access.FLYWHEEL_OFF,
    ),
    *before(
        bearings_measured.MEASURE_CRANK_END_FLOAT,
        "end float is measured with every cap tight",
        COMMON_PRACTICE,
        Access.CAP_OFF,
    ),
    *before(
        assembly_findings.FEEL_TORQUE_ON_LOOSENING,
        "how tight a cap was is read once, as its bolts let go",
        COMMON_PRACTICE,
        Access.CAP_OFF,
    ),
    *before(
        pump_drive.TURN_ENGINE_WATCH_PUMP,
        "the crank is not turned with a cap off",
        COMMON_PRACTICE,
        Access.CAP_OFF,
    ),
    *before(
        suction_pickup.TURN_CRANK_PAST_TRAY,
        "the crank is not turned with a cap off",
        COMMON_PRACTICE,
        Access.CAP_OFF,
    ),
    *before(
        suction_pickup.LOOK_AT_THE_TRAY,
        "rub marks are read before rods are pushed past the tray's place",
        COMMON_PRACTICE,
        Access.CAP_OFF,
    ),
    *before(
        delivery_galleries.PRIME_AND_WATCH_FROM_BELOW,
        "an open bearing drowns what the others show",
        JUDGEMENT,
        Access.CAP_OFF,
        Access.PLUGS_OUT,
    ),
    *before(
        delivery_galleries.PRIME_AND_WATCH_FROM_BELOW,
        "the cam's bearings are seen to pour only with the cam in them",
        JUDGEMENT,
        Access.CAM_OUT,
        not_with=(features.OVERHEAD_CAM,),
    ),
    *before(
        delivery_galleries.PRIME_AND_WATCH_THE_FRONT,
        "an open gallery or bearing drowns what the others show",
        JUDGEMENT,
        Access.PLUGS_OUT,
        Access.CRANK_OUT,
        Access.CAM_OUT,
    ),
    *before(
        delivery_galleries.PRIME_AND_WATCH_THE_VALLEY,
        "an open gallery or bearing drowns what the others show",
        JUDGEMENT,
        Access.CRANK_OUT,
    ),
    *before(
        delivery_galleries.PRIME_AND_WATCH_THE_VALLEY,
        "lifters and cam bearings are seen to pour only with the cam in them",
        JUDGEMENT,
        Access.CAM_OUT,
        not_with=(features.OVERHEAD_CAM,),
    ),
    *before(
        delivery_galleries.COUNT_PLUGS_AT_THE_FRONT,
        "the plugs are counted and their depth taken before one is touched",
        JUDGEMENT,
        Access.PLUGS_OUT,
    ),
    *before(
        topend_cam.LOOK_AT_THE_TENSIONERS,
        "how far a tensioner stood out is lost when the chain comes off",
        JUDGEMENT,
        Access.PLUGS_OUT,
        Access.CRANK_OUT,
        Access.CAM_OUT,
    ),
    *before(
        topend_findings.LOOK_UNDER_THE_VALVE_COVER,
        "that every valve moves is seen with cam and pushrods in",
        JUDGEMENT,
        Access.CAM_OUT,
    ),
    *before(
        topend_cam.FEEL_THE_LIFTERS,
        "lifters are tried and tagged before the cam is drawn from under them",
        COMMON_PRACTICE,
        Access.CAM_OUT,
        not_with=(features.OVERHEAD_CAM,),
    ),
    *before(
        bearings_shell_map.MAP_ALL_SHELLS,
        "every shell is mapped to its place before the crank is lifted off them",
        COMMON_PRACTICE,
        Access.CRANK_OUT,
    ),
    *before(
        bearings_measured.LAY_PLASTIC_THREAD,
        "the thread is pressed by the crank lying in its bearings",
        COMMON_PRACTICE,
        Access.CRANK_OUT,
    ),
)
BEFORE_INSIDE: tuple[Before, ...] = (*_SUMP, *_PUMP, *_DEEP)

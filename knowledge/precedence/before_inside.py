"""What must be seen before sump, pump and bearings are opened further."""

from knowledge.engines.features import (
    OVERHEAD_CAM,
    PUMP_ON_CRANK_NOSE,
    PUMP_OUTSIDE,
    RELIEF_OUTSIDE,
)
from knowledge.inspections import (
    assembly,
    bearings,
    debris,
    delivery,
    oil,
    pump,
    pump_bench,
    suction,
    topend,
)
from knowledge.precedence.shapes import Before, before
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import GMC
from knowledge.sources import JUDGEMENT as J
from knowledge.vocabulary import Access

#: a pump that is reached without the sump: looking up from below is not on its way
_NOT_IN_SUMP = (PUMP_OUTSIDE, PUMP_ON_CRANK_NOSE)
_SUMP = (
    *before(
        suction.LOOK_UNDER_THE_SUMP,
        "a jack under the sump makes a dent of its own; sealer shows at the closed joint",
        J,
        Access.ENGINE_EASED,
        Access.SUMP_OFF,
    ),
    *before(
        bearings.TURN_ENGINE_BY_HAND,
        "once debris is seen the engine is turned no more than needed",
        CP,
        Access.SUMP_OFF,
        Access.CAP_OFF,
    ),
    *before(
        oil.DRAIN_THROUGH_A_CLOTH,
        "first and last half litre are kept before they mix",
        CP,
        Access.SUMP_OFF,
    ),
    *before(
        oil.MEASURE_WHAT_COMES_OUT,
        "what drips from an open sump is not measured",
        CP,
        Access.SUMP_OFF,
    ),
    *before(
        debris.LOOK_AT_THE_DRAIN_MAGNET,
        "the magnet is read before it is put down or wiped",
        J,
        Access.SUMP_OFF,
    ),
    *before(
        oil.FILL_BY_MEASURE,
        "the stick is proved with the sump on and empty",
        CP,
        Access.SUMP_OFF,
    ),
    *before(
        suction.LOOK_THROUGH_THE_DRAIN,
        "debris moves as the sump comes down",
        J,
        Access.SUMP_OFF,
    ),
    *before(
        suction.CATCH_SUMP_CONTENTS,
        "work above shakes more into the sump; bag by place first",
        CP,
        Access.TRAY_OFF,
        Access.CAP_OFF,
    ),
    *before(
        suction.CATCH_SUMP_CONTENTS,
        "work above shakes more into the sump; bag by place first",
        CP,
        Access.PICKUP_OFF,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        assembly.LOOK_UP_AT_THE_BOTTOM_END,
        "locks, marks and loose pieces are seen before a spanner goes on",
        CP,
        Access.TRAY_OFF,
        Access.CAP_OFF,
    ),
    *before(
        suction.LOOK_AT_THE_SCREEN,
        "debris falls off the mesh as the pickup is moved",
        CP,
        Access.PICKUP_OFF,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        suction.TWIST_THE_PICKUP,
        "whether the tube was tight is felt before it is drawn",
        CP,
        Access.PICKUP_OFF,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        suction.MEASURE_PICKUP_GAP,
        "the gap as run is gone once pickup or pump has moved",
        CP,
        Access.PICKUP_OFF,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
)
_PUMP = (
    *before(
        pump.LOOK_DOWN_THE_DRIVE,
        "how far the shaft engaged is seen while the pump holds it",
        CP,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        pump.MEASURE_GEAR_AND_FLOAT,
        "the drive's end float is measured with the pump bolted up",
        CP,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        pump.TURN_ENGINE_WATCH_PUMP,
        "a pump shows whether it turns only while it is driven",
        CP,
        Access.PUMP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        assembly.FEEL_TORQUE_ON_LOOSENING,
        "how tight pump and pickup bolts were is read once, as they let go",
        CP,
        Access.PUMP_OFF,
        Access.PICKUP_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        pump.LOOK_AT_THE_PUMP_JOINT,
        "print and wash marks of the gasket are read before bench work scrapes them",
        CP,
        Access.PUMP_COVER_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        pump_bench.TRY_THE_COVER_JOINT_FOR_AIR,
        "the cover's joint is tried as it ran, before a screw is turned",
        J,
        Access.PUMP_COVER_OFF,
        not_with=_NOT_IN_SUMP,
    ),
    *before(
        pump_bench.LOOK_INTO_THE_OPENED_PUMP,
        "debris in the pump moves when the plug is driven out",
        GMC,
        Access.PUMP_RELIEF_OUT,
        not_with=(RELIEF_OUTSIDE,),
    ),
)
_DEEP = (
    *before(
        bearings.WATCH_THE_PULLEY_ENDWAYS,
        "pulley and clutch are what it is watched and pressed by",
        J,
        Access.FRONT_COVER_OFF,
        Access.FLYWHEEL_OFF,
    ),
    *before(
        bearings.MEASURE_CRANK_END_FLOAT,
        "end float is measured with every cap tight",
        CP,
        Access.CAP_OFF,
    ),
    *before(
        assembly.FEEL_TORQUE_ON_LOOSENING,
        "how tight a cap was is read once, as its bolts let go",
        CP,
        Access.CAP_OFF,
    ),
    *before(
        pump.TURN_ENGINE_WATCH_PUMP,
        "the crank is not turned with a cap off",
        CP,
        Access.CAP_OFF,
    ),
    *before(
        suction.TURN_CRANK_PAST_TRAY,
        "the crank is not turned with a cap off",
        CP,
        Access.CAP_OFF,
    ),
    *before(
        suction.LOOK_AT_THE_TRAY,
        "rub marks are read before rods are pushed past the tray's place",
        CP,
        Access.CAP_OFF,
    ),
    *before(
        delivery.PRIME_AND_WATCH_FROM_BELOW,
        "an open bearing drowns what the others show",
        J,
        Access.CAP_OFF,
        Access.PLUGS_OUT,
    ),
    *before(
        delivery.PRIME_AND_WATCH_FROM_BELOW,
        "the cam's bearings are seen to pour only with the cam in them",
        J,
        Access.CAM_OUT,
        not_with=(OVERHEAD_CAM,),
    ),
    *before(
        delivery.PRIME_AND_WATCH_THE_FRONT,
        "an open gallery or bearing drowns what the others show",
        J,
        Access.PLUGS_OUT,
        Access.CRANK_OUT,
        Access.CAM_OUT,
    ),
    *before(
        delivery.PRIME_AND_WATCH_THE_VALLEY,
        "an open gallery or bearing drowns what the others show",
        J,
        Access.CRANK_OUT,
    ),
    *before(
        delivery.PRIME_AND_WATCH_THE_VALLEY,
        "lifters and cam bearings are seen to pour only with the cam in them",
        J,
        Access.CAM_OUT,
        not_with=(OVERHEAD_CAM,),
    ),
    *before(
        delivery.COUNT_PLUGS_AT_THE_FRONT,
        "the plugs are counted and their depth taken before one is touched",
        J,
        Access.PLUGS_OUT,
    ),
    *before(
        topend.LOOK_AT_THE_TENSIONERS,
        "how far a tensioner stood out is lost when the chain comes off",
        J,
        Access.PLUGS_OUT,
        Access.CRANK_OUT,
        Access.CAM_OUT,
    ),
    *before(
        topend.LOOK_UNDER_THE_VALVE_COVER,
        "that every valve moves is seen with cam and pushrods in",
        J,
        Access.CAM_OUT,
    ),
    *before(
        topend.FEEL_THE_LIFTERS,
        "lifters are tried and tagged before the cam is drawn from under them",
        CP,
        Access.CAM_OUT,
        not_with=(OVERHEAD_CAM,),
    ),
    *before(
        bearings.MAP_ALL_SHELLS,
        "every shell is mapped to its place before the crank is lifted off them",
        CP,
        Access.CRANK_OUT,
    ),
    *before(
        bearings.LAY_PLASTIC_THREAD,
        "the thread is pressed by the crank lying in its bearings",
        CP,
        Access.CRANK_OUT,
    ),
)

BEFORE_INSIDE: tuple[Before, ...] = (*_SUMP, *_PUMP, *_DEEP)

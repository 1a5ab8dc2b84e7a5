"""Which check comes first at the open sump, the pump and the bearings."""

from knowledge.inspections import (
    assembly,
    bearings,
    debris,
    delivery,
    pump,
    pump_bench,
    suction,
    topend,
)
from knowledge.precedence.shapes import FirstOf
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import GMC
from knowledge.sources import JUDGEMENT as J

_SUMP = (
    FirstOf(
        suction.CATCH_SUMP_CONTENTS,
        (
            delivery.LOOK_FOR_A_PLUG_IN_THE_SUMP,
            suction.LOOK_AT_SUMP_FLOOR,
            suction.LOOK_AT_THE_SCREEN,
            suction.TWIST_THE_PICKUP,
            suction.MEASURE_PICKUP_GAP,
            suction.LOOK_AT_BAFFLES,
            topend.LOOK_AT_THE_PISTON_JETS,
            assembly.LOOK_UP_AT_THE_BOTTOM_END,
            assembly.COMPARE_PARTS_WITH_THE_LIST,
            assembly.FEEL_TORQUE_ON_LOOSENING,
            bearings.MEASURE_CRANK_END_FLOAT,
            pump.TURN_ENGINE_WATCH_PUMP,
            delivery.PRIME_AND_WATCH_FROM_BELOW,
            suction.LOOK_AT_THE_TRAY,
            suction.TURN_CRANK_PAST_TRAY,
        ),
        "what lies in the sump is photographed and bagged by place before anything else",
        CP,
    ),
    FirstOf(
        assembly.LOOK_UP_AT_THE_BOTTOM_END,
        (
            pump.TURN_ENGINE_WATCH_PUMP,
            suction.TURN_CRANK_PAST_TRAY,
            suction.TWIST_THE_PICKUP,
            suction.MEASURE_PICKUP_GAP,
            bearings.MEASURE_CRANK_END_FLOAT,
            assembly.FEEL_TORQUE_ON_LOOSENING,
            delivery.PRIME_AND_WATCH_FROM_BELOW,
        ),
        "locks, marks and loose pieces are seen before anything is turned or loosened",
        CP,
    ),
    FirstOf(
        suction.LOOK_AT_THE_SCREEN,
        (
            suction.TWIST_THE_PICKUP,
            suction.MEASURE_PICKUP_GAP,
            assembly.FEEL_TORQUE_ON_LOOSENING,
            delivery.PRIME_AND_WATCH_FROM_BELOW,
        ),
        "debris falls off the mesh when the pickup is moved, and oil washes it off",
        CP,
    ),
    FirstOf(
        suction.LOOK_AT_SUMP_FLOOR,
        (suction.MEASURE_PICKUP_GAP, suction.LOOK_AT_BAFFLES),
        "clay leaves a print of its own, and oil poured in washes the floor",
        J,
    ),
    FirstOf(
        delivery.LOOK_FOR_A_PLUG_IN_THE_SUMP,
        (suction.MEASURE_PICKUP_GAP, suction.LOOK_AT_BAFFLES),
        "the sump is searched before it is put up again or oil is poured into it",
        J,
    ),
    FirstOf(
        suction.TWIST_THE_PICKUP,
        (suction.MEASURE_PICKUP_GAP,),
        "a tube that rocks is found before clay presses it home",
        CP,
    ),
    *(
        FirstOf(
            check,
            (assembly.FEEL_TORQUE_ON_LOOSENING,),
            "it is read with every bolt still as tight as it ran",
            CP,
        )
        for check in (
            suction.TWIST_THE_PICKUP,
            suction.MEASURE_PICKUP_GAP,
            bearings.MEASURE_CRANK_END_FLOAT,
            pump.TURN_ENGINE_WATCH_PUMP,
            delivery.PRIME_AND_WATCH_FROM_BELOW,
        )
    ),
    FirstOf(
        suction.LOOK_AT_THE_TRAY,
        (suction.TURN_CRANK_PAST_TRAY,),
        "rub marks are photographed before the crank is turned past the tray",
        CP,
    ),
)
_PUMP = (
    FirstOf(
        pump.LOOK_AT_THE_PUMP_JOINT,
        (
            pump.TURN_PUMP_IN_OIL_BATH,
            pump_bench.TRY_THE_COVER_JOINT_FOR_AIR,
            pump_bench.FIND_CRACKS_IN_THE_PUMP,
        ),
        "print and wash marks go with the first oil, soap or scraper",
        CP,
    ),
    FirstOf(
        pump_bench.LOOK_INTO_THE_OPENED_PUMP,
        (
            debris.LOOK_FOR_PIECES_IN_THE_PUMP,
            pump_bench.COMPARE_ROTOR_WITH_DRAWING,
            pump_bench.LOOK_OVER_GEARS_AND_BUSHES,
            pump_bench.MEASURE_GEAR_END_CLEARANCE,
            pump_bench.MEASURE_GEAR_SIDE_CLEARANCE,
            pump_bench.LAY_STRAIGHTEDGE_ON_COVER,
            pump_bench.FIND_CRACKS_IN_THE_PUMP,
            pump.TURN_PUMP_IN_OIL_BATH,
        ),
        "the oil film that shows it was wet, and how gears and debris lay, go at once",
        GMC,
    ),
    FirstOf(
        debris.LOOK_FOR_PIECES_IN_THE_PUMP,
        (
            pump_bench.LOOK_OVER_GEARS_AND_BUSHES,
            pump_bench.MEASURE_GEAR_END_CLEARANCE,
            pump_bench.MEASURE_GEAR_SIDE_CLEARANCE,
            pump_bench.FIND_CRACKS_IN_THE_PUMP,
            pump.TURN_PUMP_IN_OIL_BATH,
        ),
        "pieces are picked from where they lay before parts are turned or cleaned",
        CP,
    ),
    FirstOf(
        pump_bench.COMPARE_ROTOR_WITH_DRAWING,
        (
            pump_bench.LOOK_OVER_GEARS_AND_BUSHES,
            pump_bench.MEASURE_GEAR_END_CLEARANCE,
            pump_bench.MEASURE_GEAR_SIDE_CLEARANCE,
            pump_bench.FIND_CRACKS_IN_THE_PUMP,
        ),
        "which way round the rotor stood is lost once it is lifted",
        CP,
    ),
    FirstOf(
        pump_bench.LOOK_OVER_GEARS_AND_BUSHES,
        (pump_bench.FIND_CRACKS_IN_THE_PUMP,),
        "crack dye and solvent wash everything else away",
        J,
    ),
)
_BEARINGS = (
    FirstOf(
        bearings.LIFT_ONE_CAP,
        (
            bearings.MAP_ALL_SHELLS,
            bearings.COMPARE_SHELLS_AND_HOLES,
            bearings.LAY_PLASTIC_THREAD,
            bearings.MEASURE_JOURNALS_AND_SEATS,
        ),
        "film and debris of the likeliest bearing are seen before anything is wiped",
        CP,
    ),
    FirstOf(
        bearings.MAP_ALL_SHELLS,
        (bearings.MEASURE_JOURNALS_AND_SEATS,),
        "every shell is laid out as found before journals and seats are cleaned",
        CP,
    ),
    FirstOf(
        debris.OPEN_THE_CRANK_TRAPS,
        (bearings.LAY_A_BAR_IN_THE_MAINS, delivery.SOAP_THE_GALLERY_WALLS),
        "what traps and oilways hold is caught before crank and block are cleaned",
        J,
    ),
)

FIRST_INSIDE: tuple[FirstOf, ...] = (*_SUMP, *_PUMP, *_BEARINGS)

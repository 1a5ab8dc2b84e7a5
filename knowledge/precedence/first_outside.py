"""Which check comes first from outside, at gauge, oil, filter, covers and relief valve."""

from knowledge.inspections import (
    debris,
    delivery,
    instrument,
    instrument_gauge,
    leaks,
    oil,
    pump,
    relief,
    suction,
    topend,
)
from knowledge.precedence.shapes import FirstOf
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import JUDGEMENT as J

_INSTRUMENT = (
    FirstOf(
        instrument.LOOK_AT_SENDER_AND_WIRE,
        (
            instrument.WIGGLE_THE_HARNESS,
            instrument.SWING_THE_GAUGE_BY_ITS_LEAD,
            instrument.MEASURE_THE_GAUGE_CIRCUIT,
            instrument.MEASURE_THE_SENDER_GROUND,
            instrument.MEASURE_THE_SENDER_RESISTANCE,
            leaks.LOOK_AT_THE_SENDER,
        ),
        "once the plug is moved a loose contact may heal for a while",
        CP,
    ),
    FirstOf(
        instrument_gauge.LOOK_INTO_THE_SENDER_PORT,
        (
            instrument_gauge.FIT_A_DIRECT_GAUGE,
            instrument_gauge.CRANK_WITH_THE_PORT_OPEN,
            instrument_gauge.BLOW_THROUGH_THE_GAUGE_LINE,
            instrument_gauge.TRY_THE_SENDER_ON_AIR,
        ),
        "oil and air push out the sludge that sat in port and sender",
        CP,
    ),
    FirstOf(
        instrument_gauge.FIT_A_DIRECT_GAUGE,
        (
            delivery.CHANGE_THE_FILTER_AND_READ_AGAIN,
            delivery.LOOP_THE_COOLER_OUT,
            oil.TRY_THE_RIGHT_GRADE,
            pump.FORCE_OIL_INTO_THE_PUMP,
            relief.TURN_THE_RELIEF_ADJUSTER,
            suction.FILL_OVER_THE_MARK,
        ),
        "without a true reading first a trial has nothing to be held against",
        CP,
    ),
    FirstOf(
        instrument_gauge.LOG_PRESSURE_AND_HEAT,
        (oil.TRY_THE_RIGHT_GRADE, suction.FILL_OVER_THE_MARK),
        "the baseline is taken on the oil that is in it",
        CP,
    ),
)
_OIL = (
    FirstOf(
        leaks.LOOK_AT_FILLER_AND_STICK,
        (oil.READ_THE_STICK, oil.CROSS_CHECK_COOLANT, leaks.FEEL_THE_CRANKCASE_BREATHE),
        "whether cap and stick were home is seen before they are drawn",
        CP,
    ),
    FirstOf(
        oil.READ_THE_STICK,
        (suction.FILL_OVER_THE_MARK, suction.THAW_THE_SUMP, oil.TRY_THE_RIGHT_GRADE),
        "the level as found is read before any oil is added or drained",
        CP,
    ),
    FirstOf(
        oil.SEND_AN_OIL_SAMPLE,
        (suction.FILL_OVER_THE_MARK, oil.FILL_BY_MEASURE, oil.TRY_THE_RIGHT_GRADE),
        "a sample drawn after fresh oil went in tells of the fresh oil",
        CP,
    ),
    FirstOf(
        oil.DRAIN_THROUGH_A_CLOTH,
        (
            oil.MEASURE_WHAT_COMES_OUT,
            oil.FILL_BY_MEASURE,
            oil.TRY_THE_RIGHT_GRADE,
            delivery.LOOP_THE_COOLER_OUT,
            suction.LOOK_THROUGH_THE_DRAIN,
        ),
        "water, glitter and sludge are seen as they come, before the oil is poured together",
        CP,
    ),
    FirstOf(
        oil.MEASURE_WHAT_COMES_OUT,
        (oil.FILL_BY_MEASURE, oil.TRY_THE_RIGHT_GRADE),
        "what was in it is measured before anything is filled in",
        CP,
    ),
    FirstOf(
        debris.LOOK_AT_THE_DRAIN_MAGNET,
        (oil.FILL_BY_MEASURE, oil.TRY_THE_RIGHT_GRADE),
        "the plug goes back in wiped",
        J,
    ),
    FirstOf(
        suction.LOOK_THROUGH_THE_DRAIN,
        (oil.FILL_BY_MEASURE, oil.TRY_THE_RIGHT_GRADE, delivery.LOOP_THE_COOLER_OUT),
        "fresh oil and running move what lies on floor and screen",
        J,
    ),
    FirstOf(
        leaks.SURVEY_FOR_LEAKS,
        (
            leaks.WATCH_FOR_THE_LEAK_RUNNING,
            leaks.LOOK_UNDER_THE_ACCESSORY,
            topend.FLOW_TEST_THE_TURBO_FEED,
        ),
        "washing and spilt oil cover the old tracks",
        CP,
    ),
    FirstOf(
        topend.FOLLOW_THE_TURBO_LINES,
        (topend.FLOW_TEST_THE_TURBO_FEED,),
        "unions and bends are seen before the feed is undone",
        J,
    ),
)
_FILTER = (
    FirstOf(
        delivery.LOOK_WHERE_THE_FILTER_SAT,
        (
            delivery.CHECK_THE_BYPASS_IN_THE_HEAD,
            delivery.CHANGE_THE_FILTER_AND_READ_AGAIN,
            pump.CRANK_WITH_FILTER_OFF,
            pump.FORCE_OIL_INTO_THE_PUMP,
        ),
        "seal, seat and the oil in the filter are seen before they are wiped or flooded",
        CP,
    ),
    FirstOf(
        leaks.LOOK_UNDER_THE_FILTER,
        (
            delivery.CHANGE_THE_FILTER_AND_READ_AGAIN,
            pump.CRANK_WITH_FILTER_OFF,
            pump.FORCE_OIL_INTO_THE_PUMP,
        ),
        "how the seal sat is photographed as face and filter part",
        CP,
    ),
    *(
        FirstOf(
            check,
            (pump.FORCE_OIL_INTO_THE_PUMP, pump.SPIN_THE_PUMP_BY_DRILL),
            "oil forced in, or a drill, ends the proof that the pump was dry",
            CP,
        )
        for check in (pump.CRANK_WITH_FILTER_OFF, instrument_gauge.CRANK_WITH_THE_PORT_OPEN)
    ),
    FirstOf(
        delivery.CUT_THE_FILTER_OPEN,
        (delivery.SORT_WHAT_THE_FILTER_HELD,),
        "the pleats are photographed with a scale before they are rinsed",
        CP,
    ),
)
_COVERS = (
    FirstOf(
        topend.LOOK_UNDER_THE_VALVE_COVER,
        (topend.WATCH_OIL_AT_THE_ROCKERS, suction.LOOK_AT_HEAD_RETURNS),
        "dry rockers and standing oil are seen before oil is pumped or poured over them",
        J,
    ),
    FirstOf(
        pump.STROBE_THE_TIMING,
        (pump.SEE_THE_DISTRIBUTOR_SEAT,),
        "slackening the clamp shifts the timing",
        J,
    ),
    FirstOf(
        pump.LOOK_DOWN_THE_DRIVE,
        (pump.SPIN_THE_PUMP_BY_DRILL, pump.MEASURE_GEAR_AND_FLOAT),
        "gear, pin and shaft end are photographed as they came out",
        CP,
    ),
    FirstOf(
        delivery.COUNT_PLUGS_IN_THE_VALLEY,
        (
            delivery.PRIME_AND_WATCH_THE_VALLEY,
            topend.FEEL_THE_LIFTERS,
            delivery.ROD_THE_GALLERIES,
        ),
        "every plug is counted in place before oil hides it or it is drawn",
        J,
    ),
    FirstOf(
        suction.LOOK_AT_VALLEY_RETURNS,
        (delivery.PRIME_AND_WATCH_THE_VALLEY,),
        "oil let loose in the valley carries sludge into the returns",
        J,
    ),
    FirstOf(
        delivery.PRIME_AND_WATCH_THE_VALLEY,
        (topend.FEEL_THE_LIFTERS, topend.MEASURE_THE_RESTRICTORS),
        "a lifter or restrictor that was out no longer leaks as it did",
        J,
    ),
    FirstOf(
        delivery.COUNT_PLUGS_AT_THE_FRONT,
        (delivery.PRIME_AND_WATCH_THE_FRONT, topend.LOOK_AT_THE_TENSIONERS),
        "plugs and seals are seen dry before oil is put to them",
        J,
    ),
    FirstOf(
        delivery.PRIME_AND_WATCH_THE_FRONT,
        (topend.LOOK_AT_THE_TENSIONERS,),
        "whether a tensioner floods is seen while it is still bolted on",
        J,
    ),
    FirstOf(
        delivery.COUNT_PLUGS_AT_THE_REAR,
        (delivery.ROD_THE_GALLERIES,),
        "every plug is counted in place before one is drawn to brush the galleries",
        J,
    ),
    FirstOf(
        delivery.ROD_THE_GALLERIES,
        (delivery.SOAP_THE_GALLERY_WALLS,),
        "air and soap drive out what lay behind the plugs",
        J,
    ),
)
_RELIEF = (
    FirstOf(
        relief.PULL_THE_RELIEF_VALVE,
        (
            relief.DROP_TEST_THE_PLUNGER,
            relief.LOOK_AT_RELIEF_SEAT,
            relief.MEASURE_RELIEF_SPRING,
            relief.BENCH_TEST_RELIEF,
        ),
        "where it stood and what lay on the seat is seen before anything is wiped or oiled",
        CP,
    ),
)

FIRST_OUTSIDE: tuple[FirstOf, ...] = (*_INSTRUMENT, *_OIL, *_FILTER, *_COVERS, *_RELIEF)

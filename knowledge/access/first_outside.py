"""Which check comes first from outside, at gauge, oil, filter, covers and relief valve."""

from knowledge.access.precedence_model import FirstOf
from knowledge.debris import findings as debris_findings
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.delivery import findings_filter as delivery_filter
from knowledge.stations.delivery import findings_filter_cut as delivery_filter_cut
from knowledge.stations.delivery import findings_galleries as delivery_galleries
from knowledge.stations.instrument import findings_direct_gauge as instrument_direct_gauge
from knowledge.stations.instrument import findings_electrical as instrument_electrical
from knowledge.stations.instrument import findings_port as instrument_port
from knowledge.stations.instrument import findings_sender as instrument_sender
from knowledge.stations.leaks import findings as leaks_findings
from knowledge.stations.leaks import findings_places as leaks_places
from knowledge.stations.oil import findings as oil_findings
from knowledge.stations.oil import findings_analysis as oil_analysis
from knowledge.stations.oil import findings_contamination as oil_contamination
from knowledge.stations.oil import findings_drained as oil_drained
from knowledge.stations.pump import findings as pump_findings
from knowledge.stations.pump import findings_drive as pump_drive
from knowledge.stations.pump import findings_priming as pump_priming
from knowledge.stations.relief import findings as relief_findings
from knowledge.stations.suction import findings as suction_findings
from knowledge.stations.suction import findings_pickup as suction_pickup
from knowledge.stations.suction import findings_sump as suction_sump
from knowledge.stations.topend import findings as topend_findings
from knowledge.stations.topend import findings_cam as topend_cam
from knowledge.stations.topend import findings_feeds as topend_feeds

_INSTRUMENT = (
    FirstOf(
        check=instrument_sender.LOOK_AT_SENDER_AND_WIRE,
        then=(
            instrument_sender.WIGGLE_THE_HARNESS,
            instrument_electrical.SWING_THE_GAUGE_BY_ITS_LEAD,
            instrument_electrical.MEASURE_THE_GAUGE_CIRCUIT,
            instrument_electrical.MEASURE_THE_SENDER_GROUND,
            instrument_electrical.MEASURE_THE_SENDER_RESISTANCE,
            leaks_places.LOOK_AT_THE_SENDER,
        ),
        why="once you move the plug a loose contact may make good for a while",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=instrument_port.LOOK_INTO_THE_SENDER_PORT,
        then=(
            instrument_direct_gauge.FIT_A_DIRECT_GAUGE,
            instrument_port.CRANK_WITH_THE_PORT_OPEN,
            instrument_port.BLOW_THROUGH_THE_GAUGE_LINE,
            instrument_port.TRY_THE_SENDER_ON_AIR,
        ),
        why="oil and air push out the sludge in port and sender",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=instrument_direct_gauge.FIT_A_DIRECT_GAUGE,
        then=(
            delivery_filter_cut.CHANGE_THE_FILTER_AND_READ_AGAIN,
            delivery_filter_cut.LOOP_THE_COOLER_OUT,
            oil_drained.TRY_THE_RIGHT_GRADE,
            pump_priming.FORCE_OIL_INTO_THE_PUMP,
            relief_findings.TURN_THE_RELIEF_ADJUSTER,
            suction_findings.FILL_OVER_THE_MARK,
        ),
        why="without a true reading first, a trial has nothing to compare with",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=instrument_direct_gauge.LOG_PRESSURE_AND_HEAT,
        then=(oil_drained.TRY_THE_RIGHT_GRADE, suction_findings.FILL_OVER_THE_MARK),
        why="take the baseline on the oil that is in it",
        source=COMMON_PRACTICE,
    ),
)
_OIL = (
    FirstOf(
        check=leaks_places.LOOK_AT_FILLER_AND_STICK,
        then=(
            oil_findings.READ_THE_STICK,
            oil_contamination.CROSS_CHECK_COOLANT,
            leaks_places.FEEL_THE_CRANKCASE_BREATHE,
        ),
        why="see whether cap and stick were seated before you pull them",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=oil_findings.READ_THE_STICK,
        then=(leaks_places.FEEL_THE_FILTER, leaks_places.LOOK_AT_THE_DRAIN),
        why="the level as found shows what a leak has cost; read it before you tighten anything",
        source=COMMON_PRACTICE,
        only_for=oil_findings.LEVELS,
    ),
    FirstOf(
        check=oil_findings.READ_THE_STICK,
        then=(
            suction_findings.FILL_OVER_THE_MARK,
            suction_findings.THAW_THE_SUMP,
            oil_drained.TRY_THE_RIGHT_GRADE,
        ),
        why="read the level as found before you add or drain any oil",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=oil_analysis.SEND_AN_OIL_SAMPLE,
        then=(
            suction_findings.FILL_OVER_THE_MARK,
            oil_drained.FILL_BY_MEASURE,
            oil_drained.TRY_THE_RIGHT_GRADE,
        ),
        why="a sample drawn after an oil change shows only the fresh oil",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=oil_drained.DRAIN_THROUGH_A_CLOTH,
        then=(
            oil_drained.MEASURE_WHAT_COMES_OUT,
            oil_drained.FILL_BY_MEASURE,
            oil_drained.TRY_THE_RIGHT_GRADE,
            delivery_filter_cut.LOOP_THE_COOLER_OUT,
            suction_sump.LOOK_THROUGH_THE_DRAIN,
        ),
        why="see water, glitter and sludge as they come, before you pour the oil together",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=oil_drained.MEASURE_WHAT_COMES_OUT,
        then=(oil_drained.FILL_BY_MEASURE, oil_drained.TRY_THE_RIGHT_GRADE),
        why="measure what was in it before you fill anything in",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=debris_findings.LOOK_AT_THE_DRAIN_MAGNET,
        then=(oil_drained.FILL_BY_MEASURE, oil_drained.TRY_THE_RIGHT_GRADE),
        why="wipe the plug before it goes back in",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=suction_sump.LOOK_THROUGH_THE_DRAIN,
        then=(
            oil_drained.FILL_BY_MEASURE,
            oil_drained.TRY_THE_RIGHT_GRADE,
            delivery_filter_cut.LOOP_THE_COOLER_OUT,
        ),
        why="fresh oil and running move debris on floor and screen",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=leaks_findings.SURVEY_FOR_LEAKS,
        then=(
            leaks_findings.WATCH_FOR_THE_LEAK_RUNNING,
            leaks_places.LOOK_UNDER_THE_ACCESSORY,
            topend_feeds.FLOW_TEST_THE_TURBO_FEED,
        ),
        why="washing and spilt oil cover the old tracks",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=topend_feeds.FOLLOW_THE_TURBO_LINES,
        then=(topend_feeds.FLOW_TEST_THE_TURBO_FEED,),
        why="look at unions and bends before you undo the feed",
        source=JUDGEMENT,
    ),
)
_FILTER = (
    FirstOf(
        check=delivery_filter.LOOK_WHERE_THE_FILTER_SAT,
        then=(
            delivery_filter_cut.CHECK_THE_BYPASS_IN_THE_HEAD,
            delivery_filter_cut.CHANGE_THE_FILTER_AND_READ_AGAIN,
            pump_priming.CRANK_WITH_FILTER_OFF,
            pump_priming.FORCE_OIL_INTO_THE_PUMP,
        ),
        why="look at seal, seat and oil in the filter before they are wiped or flooded",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=leaks_places.LOOK_UNDER_THE_FILTER,
        then=(
            delivery_filter_cut.CHANGE_THE_FILTER_AND_READ_AGAIN,
            pump_priming.CRANK_WITH_FILTER_OFF,
            pump_priming.FORCE_OIL_INTO_THE_PUMP,
        ),
        why="photograph how the seal sat as you take face and filter apart",
        source=COMMON_PRACTICE,
    ),
    *(
        FirstOf(
            check=check,
            then=(pump_priming.FORCE_OIL_INTO_THE_PUMP, pump_priming.SPIN_THE_PUMP_BY_DRILL),
            why="oil forced in, or a drill, destroys the proof that the pump was dry",
            source=COMMON_PRACTICE,
        )
        for check in (pump_priming.CRANK_WITH_FILTER_OFF, instrument_port.CRANK_WITH_THE_PORT_OPEN)
    ),
    FirstOf(
        check=delivery_filter_cut.CUT_THE_FILTER_OPEN,
        then=(delivery_filter_cut.SORT_WHAT_THE_FILTER_HELD,),
        why="photograph the pleats with a scale before you rinse them",
        source=COMMON_PRACTICE,
    ),
)
_COVERS = (
    FirstOf(
        check=topend_findings.LOOK_UNDER_THE_VALVE_COVER,
        then=(topend_findings.WATCH_OIL_AT_THE_ROCKERS, suction_pickup.LOOK_AT_HEAD_RETURNS),
        why="look at dry rockers and standing oil before oil is pumped or poured over them",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=pump_findings.STROBE_THE_TIMING,
        then=(pump_findings.SEE_THE_DISTRIBUTOR_SEAT,),
        why="slackening the clamp changes the timing",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=pump_drive.LOOK_DOWN_THE_DRIVE,
        then=(pump_priming.SPIN_THE_PUMP_BY_DRILL, pump_drive.MEASURE_GEAR_AND_FLOAT),
        why="photograph gear, pin and shaft end as they come out",
        source=COMMON_PRACTICE,
    ),
    FirstOf(
        check=delivery_galleries.COUNT_PLUGS_IN_THE_VALLEY,
        then=(
            delivery_galleries.PRIME_AND_WATCH_THE_VALLEY,
            topend_cam.FEEL_THE_LIFTERS,
            delivery_galleries.ROD_THE_GALLERIES,
        ),
        why="count every plug in place before oil hides it or you pull it",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=suction_pickup.LOOK_AT_VALLEY_RETURNS,
        then=(delivery_galleries.PRIME_AND_WATCH_THE_VALLEY,),
        why="oil released in the valley carries sludge into the returns",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=delivery_galleries.PRIME_AND_WATCH_THE_VALLEY,
        then=(topend_cam.FEEL_THE_LIFTERS, topend_feeds.MEASURE_THE_RESTRICTORS),
        why="a lifter or restrictor that was out no longer leaks as it did",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=delivery_galleries.COUNT_PLUGS_AT_THE_FRONT,
        then=(delivery_galleries.PRIME_AND_WATCH_THE_FRONT, topend_cam.LOOK_AT_THE_TENSIONERS),
        why="look at plugs and seals dry before oil reaches them",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=delivery_galleries.PRIME_AND_WATCH_THE_FRONT,
        then=(topend_cam.LOOK_AT_THE_TENSIONERS,),
        why="see whether a tensioner floods while it is still bolted on",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=delivery_galleries.COUNT_PLUGS_AT_THE_REAR,
        then=(delivery_galleries.ROD_THE_GALLERIES,),
        why="count every plug in place before you pull one to brush the galleries",
        source=JUDGEMENT,
    ),
    FirstOf(
        check=delivery_galleries.ROD_THE_GALLERIES,
        then=(delivery_galleries.SOAP_THE_GALLERY_WALLS,),
        why="air and soap drive out what was behind the plugs",
        source=JUDGEMENT,
    ),
)
_RELIEF = (
    FirstOf(
        check=relief_findings.PULL_THE_RELIEF_VALVE,
        then=(
            relief_findings.DROP_TEST_THE_PLUNGER,
            relief_findings.LOOK_AT_RELIEF_SEAT,
            relief_findings.MEASURE_RELIEF_SPRING,
            relief_findings.BENCH_TEST_RELIEF,
        ),
        why="see where it stood and what lay on the seat before you wipe or oil anything",
        source=COMMON_PRACTICE,
    ),
)
FIRST_OUTSIDE: tuple[FirstOf, ...] = (*_INSTRUMENT, *_OIL, *_FILTER, *_COVERS, *_RELIEF)

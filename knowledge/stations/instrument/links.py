"""Further links at the instrument: one finding of several causes, states of the circuit."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import behaviour, course, direct_gauge, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, effects_of, example, origins_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.instrument import (
    causes,
    findings,
    findings_direct_gauge,
    findings_port,
    findings_sender,
    findings_stations,
)
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.relief import causes as relief_causes

PANEL_BELOW_THE_TRUSTED_GAUGE = LinkGroup(
    id="panel_below_the_trusted_gauge",
    station=Station.INSTRUMENT,
    says=(
        "If the panel reads well below a trusted gauge, the panel is wrong: check sender, wire "
        "and gauge."
    ),
    child=findings_direct_gauge.PANEL_READS_TOO_LOW,
    origins={
        conditions.READING_FALSE: (MOSTLY, sources.GAUGE_MAKER_SENDERS),
        causes.GAUGE_FAULTY: (SOMETIMES, sources.ARMY_TM_347_CHART_1973),
        causes.SENDER_MISMATCH: (OFTEN, idea_from(sources.GAUGE_MAKER_SENDERS)),
    },
    matches=[example(findings_direct_gauge.PANEL_READS_TOO_LOW)],
    non_matches=[
        example(patterns.GAUGE_READS_LOW, lacks=[findings_direct_gauge.PANEL_READS_TOO_LOW])
    ],
)
RUNS_ON_WITH_THE_WARNING = LinkGroup(
    id="runs_on_with_the_warning",
    station=Station.INSTRUMENT,
    says=(
        "If an engine runs long under a warning without harm, it has pressure; the warning is "
        "wrong."
    ),
    child=findings.RAN_LONG_WITHOUT_DISTRESS,
    origins={
        conditions.READING_FALSE: (OFTEN, COMMON_PRACTICE),
        conditions.READING_ERRATIC: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(patterns.LAMP_COMES_ON, findings.RAN_LONG_WITHOUT_DISTRESS)],
    non_matches=[example(patterns.LAMP_COMES_ON, lacks=[findings.RAN_LONG_WITHOUT_DISTRESS])],
)
INSTRUMENTS_AT_ODDS = LinkGroup(
    id="instruments_at_odds",
    station=Station.INSTRUMENT,
    says="If a second instrument disagrees, check the gauge first.",
    note="Misleads when the second instrument is a lamp: its switch opens at a few psi.",
    parent=conditions.READING_FALSE,
    effects={
        patterns.SECOND_INSTRUMENT_DISAGREES: (OFTEN, sources.NAVY_14075_INSTRUMENTS),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, patterns.SECOND_INSTRUMENT_DISAGREES),
        example(patterns.SECOND_INSTRUMENT_DISAGREES),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[patterns.SECOND_INSTRUMENT_DISAGREES])],
)
ONE_STATION_OF_TWO = LinkGroup(
    id="one_station_of_two",
    station=Station.INSTRUMENT,
    says="If one station of two reads wrong, its own ground, feed or gauge is at fault.",
    note="Misleads when each station has a sender of its own: then that sender may be at fault.",
    links=(
        *effects_of(
            causes.WIRING_GROUND_FAULT,
            {
                findings_stations.STATION_GROUND_POOR: (OFTEN, COMMON_PRACTICE),
                findings_stations.ONE_STATION_ALONE_WRONG: (OFTEN, COMMON_PRACTICE),
                patterns.SECOND_INSTRUMENT_DISAGREES: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            causes.GAUGE_FAULTY,
            {findings_stations.ONE_STATION_ALONE_WRONG: (SELDOM, JUDGEMENT)},
        ),
    ),
    matches=[
        example(findings_stations.STATION_GROUND_POOR),
        example(findings_stations.ONE_STATION_ALONE_WRONG),
    ],
    non_matches=[
        example(
            lacks=[
                findings_stations.STATION_GROUND_POOR,
                findings_stations.ONE_STATION_ALONE_WRONG,
            ]
        )
    ],
)
STOPPED_BY_ITS_SWITCH = LinkGroup(
    id="stopped_by_its_switch",
    station=Station.INSTRUMENT,
    says="A low-pressure switch stops the engine for a real loss, or because the switch is faulty.",
    child=course.PROTECTION_TRIPPED,
    origins={
        conditions.PRESSURE_GONE: (OFTEN, JUDGEMENT),
        conditions.PRESSURE_LOW: (SOMETIMES, JUDGEMENT),
        conditions.PRESSURE_UNSTEADY: (SOMETIMES, JUDGEMENT),
        conditions.READING_FALSE: (OFTEN, JUDGEMENT),
        conditions.READING_ERRATIC: (OFTEN, JUDGEMENT),
    },
    matches=[example(course.PROTECTION_TRIPPED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.PROTECTION_TRIPPED])],
)
NEEDLE_THAT_STEPS_AT_ONCE = LinkGroup(
    id="needle_that_steps_at_once",
    station=Station.INSTRUMENT,
    says="A needle that jumps without lag, or with bumps and switches, has a bad contact.",
    note="Misleads with a direct gauge on a very short rigid line: it shows the pump's pulses.",
    parent=conditions.READING_ERRATIC,
    effects={
        patterns.NEEDLE_STEPS_AT_ONCE: (MOSTLY, COMMON_PRACTICE),
        patterns.NEEDLE_FOLLOWS_LOADS: (SOMETIMES, COMMON_PRACTICE),
        findings_sender.WIGGLE_MOVES_NEEDLE: (SOMETIMES, COMMON_PRACTICE),
        patterns.SECOND_INSTRUMENT_DISAGREES: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(patterns.NEEDLE_STEPS_AT_ONCE), example(patterns.NEEDLE_FOLLOWS_LOADS)],
    non_matches=[example(lacks=[patterns.NEEDLE_STEPS_AT_ONCE, patterns.NEEDLE_FOLLOWS_LOADS])],
)
PANEL_OFF_A_TRUSTED_GAUGE = LinkGroup(
    id="panel_off_a_trusted_gauge",
    station=Station.INSTRUMENT,
    says=(
        "If the panel gauge differs from a trusted one by the same amount everywhere, its scale "
        "is off."
    ),
    links=(
        *effects_of(
            causes.GAUGE_FAULTY,
            {
                findings_direct_gauge.PANEL_OFF_BY_CONSTANT: (
                    OFTEN,
                    idea_from(sources.ARMY_TM_347_CHART_1973),
                ),
                findings_direct_gauge.PANEL_READS_TOO_HIGH: (
                    SOMETIMES,
                    sources.DIESEL_WORKSHOP_2015,
                ),
                patterns.GAUGE_READS_HIGH: (SOMETIMES, sources.DIESEL_WORKSHOP_2015),
                behaviour.SLOW_NEEDLE: (SOMETIMES, COMMON_PRACTICE),
                findings.INSTRUMENT_JUST_CHANGED: (SELDOM, JUDGEMENT),
            },
        ),
        *effects_of(
            causes.SENDER_FAULTY,
            {
                findings_direct_gauge.PANEL_OFF_BY_CONSTANT: (
                    SOMETIMES,
                    JUDGEMENT,
                ),
                findings_direct_gauge.PANEL_READS_TOO_HIGH: (
                    SELDOM,
                    JUDGEMENT,
                ),
            },
        ),
        *effects_of(
            causes.WIRING_GROUND_FAULT,
            {
                findings_direct_gauge.PANEL_OFF_BY_CONSTANT: (SELDOM, JUDGEMENT),
            },
        ),
    ),
    matches=[
        example(findings_direct_gauge.PANEL_OFF_BY_CONSTANT),
        example(findings_direct_gauge.PANEL_READS_TOO_HIGH, behaviour.SLOW_NEEDLE),
    ],
    non_matches=[
        example(
            lacks=[
                findings_direct_gauge.PANEL_OFF_BY_CONSTANT,
                findings_direct_gauge.PANEL_READS_TOO_HIGH,
                behaviour.SLOW_NEEDLE,
            ]
        )
    ],
)
LAMP_THAT_NEVER_WARNED = LinkGroup(
    id="lamp_that_never_warned",
    station=Station.INSTRUMENT,
    says="A dead lamp, a wire that is off or a stuck switch does not warn of a real fall.",
    note="That says nothing about the oil: the engine may have a fault of its own as well.",
    links=(
        *origins_of(
            findings.LAMP_DEAD_WITH_KEY_ON,
            {
                causes.SENDER_NOT_FITTED: (OFTEN, COMMON_PRACTICE),
                causes.WIRING_GROUND_FAULT: (SOMETIMES, COMMON_PRACTICE),
                causes.SENDER_FAULTY: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *origins_of(
            direct_gauge.NOTHING_WARNED,
            {
                causes.SENDER_NOT_FITTED: (OFTEN, COMMON_PRACTICE),
                causes.WIRING_GROUND_FAULT: (SOMETIMES, COMMON_PRACTICE),
                causes.SENDER_FAULTY: (SOMETIMES, COMMON_PRACTICE),
                causes.SENDER_MISMATCH: (SELDOM, JUDGEMENT),
                causes.GAUGE_FAULTY: (SELDOM, COMMON_PRACTICE),
            },
        ),
    ),
    matches=[example(direct_gauge.NOTHING_WARNED, findings.LAMP_DEAD_WITH_KEY_ON)],
    non_matches=[example(lacks=[direct_gauge.NOTHING_WARNED, findings.LAMP_DEAD_WITH_KEY_ON])],
)
SLUDGE_IN_THE_FINEST_BORE = LinkGroup(
    id="sludge_in_the_finest_bore",
    station=Station.INSTRUMENT,
    says="Sludge settles where oil stands still: in the gauge port, screen and line.",
    parent=conditions.OIL_SLUDGED,
    effects={
        findings_port.SENDER_PORT_CLOGGED: (SELDOM, COMMON_PRACTICE),
        findings_port.GAUGE_LINE_SLUDGED: (SELDOM, COMMON_PRACTICE),
    },
    matches=[example(findings_port.SENDER_PORT_CLOGGED), example(findings_port.GAUGE_LINE_SLUDGED)],
    non_matches=[
        example(lacks=[findings_port.SENDER_PORT_CLOGGED, findings_port.GAUGE_LINE_SLUDGED])
    ],
)
NOTHING_FROM_THE_OPEN_PORT = LinkGroup(
    id="nothing_from_the_open_port",
    station=Station.INSTRUMENT,
    says=(
        "No oil from the open port while cranking: there is no pressure, whatever the gauge reads."
    ),
    note="Misleads when the port itself is clogged, or cranking was too short.",
    child=findings_port.NO_OIL_AT_OPEN_PORT,
    origins={
        conditions.PUMP_NOT_TURNING: (ALWAYS, COMMON_PRACTICE),
        conditions.PUMP_DRY: (MOSTLY, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[example(findings_port.NO_OIL_AT_OPEN_PORT)],
    non_matches=[example(lacks=[findings_port.NO_OIL_AT_OPEN_PORT])],
)
SLOWER_AT_EVERY_START = LinkGroup(
    id="slower_at_every_start",
    station=Station.INSTRUMENT,
    says="Slower at every start than it used to be: pump wear, suction air or drain-back.",
    child=findings.LAMP_SLOW_TO_GO_OUT,
    origins={
        conditions.PUMP_SLIP: (SOMETIMES, COMMON_PRACTICE),
        conditions.AIR_IN_SUCTION: (SOMETIMES, COMMON_PRACTICE),
        conditions.RELIEF_BLEEDS: (SOMETIMES, JUDGEMENT),
        conditions.DRAINS_BACK: (OFTEN, JUDGEMENT),
        conditions.CLEARANCES_WIDE: (SELDOM, JUDGEMENT),
        conditions.SUCTION_THROTTLED: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings.LAMP_SLOW_TO_GO_OUT, patterns.GAUGE_READS_LOW)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.LAMP_SLOW_TO_GO_OUT])],
)
WRONG_ANOTHER_WAY = LinkGroup(
    id="wrong_another_way",
    station=Station.INSTRUMENT,
    says=(
        "If a new sender reads wrong in another way, the wire is bad or the sender is the wrong "
        "one."
    ),
    child=findings.NEW_SENDER_MADE_IT_WORSE,
    origins={
        causes.WIRING_GROUND_FAULT: (SOMETIMES, JUDGEMENT),
        causes.SENDER_MISMATCH: (SOMETIMES, sources.GAUGE_MAKER_SENDERS),
    },
    matches=[example(findings.NEW_SENDER_MADE_IT_WORSE)],
    non_matches=[example(lacks=[findings.NEW_SENDER_MADE_IT_WORSE])],
)
UNSTEADY_AND_WORSE_WITH_REVS = LinkGroup(
    id="unsteady_and_worse_with_revs",
    station=Station.INSTRUMENT,
    says="More unsteady as the revs rise: air in the oil, or a contact that vibration shakes.",
    child=findings.UNSTEADIER_WITH_REVS,
    origins={
        conditions.READING_ERRATIC: (SOMETIMES, JUDGEMENT),
        conditions.OIL_AERATED: (OFTEN, sources.OIL_AERATION_ARTICLE),
        conditions.AIR_IN_SUCTION: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings.UNSTEADIER_WITH_REVS)],
    non_matches=[example(lacks=[findings.UNSTEADIER_WITH_REVS])],
)
STEADY_ERROR_AND_IDLE_FLICKER = LinkGroup(
    id="steady_error_and_idle_flicker",
    station=Station.INSTRUMENT,
    says=(
        "A gauge with a scale error reads low at every speed; a worn switch flickers at hot idle "
        "first."
    ),
    links=(
        *effects_of(
            causes.GAUGE_FAULTY,
            {
                patterns_speed.LOW_AT_ALL_SPEEDS: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *origins_of(
            patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE,
            {
                causes.SENDER_FAULTY: (SOMETIMES, COMMON_PRACTICE),
                conditions.PUMP_SLIP: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
    ),
    matches=[example(patterns_speed.LOW_AT_ALL_SPEEDS, patterns.ENGINE_RUNS_NORMALLY)],
    non_matches=[example(patterns_speed.LOW_AT_ALL_SPEEDS, direct_gauge.DIRECT_GAUGE_LOW)],
)
READING_NO_PUMP_CAN_MAKE = LinkGroup(
    id="reading_no_pump_can_make",
    station=Station.INSTRUMENT,
    says="A reading far above what the pump can make is mostly a gauge fault.",
    note=(
        "A relief valve stuck shut can do it too, mostly with cold oil, and soon bursts the filter."
    ),
    child=findings.MORE_THAN_IT_CAN_MAKE,
    origins={
        causes.SENDER_FAULTY: (OFTEN, COMMON_PRACTICE),
        causes.GAUGE_FAULTY: (SOMETIMES, JUDGEMENT),
        causes.WIRING_GROUND_FAULT: (OFTEN, COMMON_PRACTICE),
        causes.SENDER_MISMATCH: (OFTEN, COMMON_PRACTICE),
        relief_causes.RELIEF_STUCK_CLOSED: (SOMETIMES, COMMON_PRACTICE),
        relief_causes.RELIEF_RETURN_PLUGGED: (SOMETIMES, JUDGEMENT),
        oil_causes_condition.OIL_COLD_NORMAL: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings.MORE_THAN_IT_CAN_MAKE)],
    non_matches=[example(patterns.GAUGE_READS_HIGH, lacks=[findings.MORE_THAN_IT_CAN_MAKE])],
)

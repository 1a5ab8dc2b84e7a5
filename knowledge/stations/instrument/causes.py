"""Root causes at the instrument, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_DOWN,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.instrument import (
    findings,
    findings_direct_gauge,
    findings_electrical,
    findings_port,
    findings_sender,
)

GAUGE_FAULTY = Cause(
    id="gauge_faulty",
    station=Station.INSTRUMENT,
    says="the panel gauge sticks, reads wrong or is dead",
    mechanism="the oil pressure has not changed; the needle shows something else at every speed",
    rate=Rate.COMMON,
    shifts=Shifts(high_mileage=UP, stood_long=UP),
    remedy="compare with a trusted gauge screwed into the engine, then renew the panel gauge",
    source=sources.ARMY_TM_347_CHART_1973,
    follows="a needless strip-down, or a real fall that nobody notices",
    also=(
        "bad oil gauge",
        "faulty gauge",
        "gauge out of calibration",
        "cluster fault",
        "dash gauge",
    ),
)
GAUGE_WRONG_ON_A_KNOWN_SIGNAL = LinkGroup(
    id="gauge_wrong_on_a_known_signal",
    station=Station.INSTRUMENT,
    says="A gauge that sticks, rests off zero or fails a known signal is wrong at every reading.",
    parent=GAUGE_FAULTY,
    effects={
        conditions.READING_FALSE: (MOSTLY, sources.MARINE_DIESEL_MANUAL),
        conditions.READING_ERRATIC: (SELDOM, COMMON_PRACTICE),
        findings_electrical.GAUGE_DEAD_ON_KNOWN_SIGNAL: (MOSTLY, sources.GAUGE_MAKER_SENDERS),
        findings_electrical.NEEDLE_IGNORES_LEAD_TEST: (OFTEN, sources.NEWSPAPER_JUMPY_GAUGE_2013),
        findings.TAP_FREES_NEEDLE: (SOMETIMES, COMMON_PRACTICE),
        findings.NEEDLE_OFF_ZERO_AT_REST: (SOMETIMES, COMMON_PRACTICE),
        findings.NEEDLE_STUCK_AT_ONE_VALUE: (OFTEN, COMMON_PRACTICE),
        findings.GAUGE_DAMAGED: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings_electrical.OTHER_GAUGE_READS_RIGHT),
        example(findings.TAP_FREES_NEEDLE),
        example(findings.NEEDLE_OFF_ZERO_AT_REST, findings_direct_gauge.PANEL_OFF_BY_CONSTANT),
        example(findings_electrical.GAUGE_DEAD_ON_KNOWN_SIGNAL),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[
                findings_electrical.OTHER_GAUGE_READS_RIGHT,
                findings_electrical.GAUGE_DEAD_ON_KNOWN_SIGNAL,
                findings.TAP_FREES_NEEDLE,
            ],
        )
    ],
)

SENDER_FAULTY = Cause(
    id="sender_faulty",
    station=Station.INSTRUMENT,
    says="the oil pressure sender or switch is worn, open or shorted",
    mechanism="the reading jumps, or stays at zero or full scale, while the oil pressure is steady",
    rate=Rate.VERY_COMMON,
    shifts=Shifts(high_mileage=UP, stood_long=UP),
    remedy="renew the sender and check the new reading with a direct gauge",
    source=sources.TECHNICIAN_ANSWER,
    follows="a needless strip-down, or a real fall that nobody notices",
    also=(
        "bad sending unit",
        "oil pressure sensor",
        "faulty oil pressure switch",
        "transmitter",
        "oil sender gone",
    ),
)
SENDER_PROVED_BY_ITSELF = LinkGroup(
    id="sender_proved_by_itself",
    station=Station.INSTRUMENT,
    says=(
        "A sender that is wrong on known pressure, leaks into its plug or measures open is "
        "finished."
    ),
    note="On many cars the sender causes more low readings than the engine does.",
    parent=SENDER_FAULTY,
    effects={
        conditions.READING_FALSE: (MOSTLY, sources.TECHNICIAN_ANSWER),
        conditions.READING_ERRATIC: (OFTEN, sources.NEWSPAPER_JUMPY_GAUGE_2013),
        findings_port.SENDER_WRONG_ON_AIR: (MOSTLY, COMMON_PRACTICE),
        findings_port.SWITCH_OPENS_WRONG: (OFTEN, COMMON_PRACTICE),
        findings_electrical.SENDER_OHMS_HIGH: (SOMETIMES, sources.GAUGE_MAKER_SENDERS),
        findings_electrical.SENDER_OHMS_LOW: (SOMETIMES, sources.GAUGE_MAKER_SENDERS),
        findings_sender.SENDER_DAMAGED: (SOMETIMES, COMMON_PRACTICE),
        findings_sender.SENDER_LEAKS_OIL: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings_port.SENDER_WRONG_ON_AIR),
        example(patterns.NEEDLE_STEPS_AT_ONCE, findings_sender.SENDER_LEAKS_OIL),
        example(findings.NEW_SENDER_CURED_IT),
        example(findings_port.SWITCH_OPENS_WRONG),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[findings_port.SENDER_WRONG_ON_AIR, findings.NEW_SENDER_CURED_IT],
        )
    ],
)
NEEDLE_FROZEN_OR_AT_FULL_SCALE = LinkGroup(
    id="needle_frozen_or_at_full_scale",
    station=Station.INSTRUMENT,
    says="A failing sender freezes the needle, throws it to full scale, or shows pressure at rest.",
    parent=SENDER_FAULTY,
    effects={
        findings.NEEDLE_STUCK_AT_ONE_VALUE: (SOMETIMES, COMMON_PRACTICE),
        findings.NEEDLE_OFF_ZERO_AT_REST: (SOMETIMES, COMMON_PRACTICE),
        patterns.GAUGE_READS_HIGH: (SOMETIMES, COMMON_PRACTICE),
        behaviour.SLOW_NEEDLE: (SELDOM, JUDGEMENT),
        findings.INSTRUMENT_JUST_CHANGED: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings.NEEDLE_STUCK_AT_ONE_VALUE), example(patterns.GAUGE_READS_HIGH)],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[patterns.GAUGE_READS_HIGH, findings.NEEDLE_STUCK_AT_ONE_VALUE],
        )
    ],
)

WIRING_GROUND_FAULT = Cause(
    id="wiring_ground_fault",
    station=Station.INSTRUMENT,
    says="a loose terminal, chafed wire, blown fuse or poor earth (ground)",
    mechanism="added or changing resistance in the gauge circuit moves the needle, not the oil",
    rate=Rate.COMMON,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, stood_long=UP),
    remedy="clean terminals and earth (ground), take tape off the sender's thread, repair the wire",
    source=sources.BOAT_GAUGES_ARTICLE,
    follows="good senders, gauges and pumps renewed for nothing",
    also=("bad ground", "earth fault", "broken wire", "loose connector", "corroded plug", "wiring"),
)
NEEDLE_FOLLOWS_WIRE_AND_SWITCHES = LinkGroup(
    id="needle_follows_wire_and_switches",
    station=Station.INSTRUMENT,
    says="If bumps, switches or a hand on the wire move the needle, a bad contact is behind it.",
    note="Misleads when bumps make oil slosh: repeat it standing still.",
    parent=WIRING_GROUND_FAULT,
    effects={
        conditions.READING_ERRATIC: (MOSTLY, sources.BOAT_GAUGES_ARTICLE),
        conditions.READING_FALSE: (OFTEN, sources.GAUGE_MAKER_SENDERS),
        patterns.NEEDLE_FOLLOWS_LOADS: (OFTEN, idea_from(sources.BOAT_GAUGES_ARTICLE)),
        findings_sender.WIGGLE_MOVES_NEEDLE: (OFTEN, COMMON_PRACTICE),
        patterns.OTHER_GAUGES_ALSO_WRONG: (OFTEN, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.NEEDLE_FOLLOWS_LOADS, findings_sender.WIGGLE_MOVES_NEEDLE),
        example(patterns.OTHER_GAUGES_ALSO_WRONG),
        example(
            patterns.GAUGE_READS_ZERO,
            behaviour.CHANGED_AFTER_OTHER_WORK,
            findings_sender.SENDER_WIRE_BROKEN,
        ),
    ],
    non_matches=[
        example(
            lacks=[
                patterns.NEEDLE_FOLLOWS_LOADS,
                findings_sender.WIGGLE_MOVES_NEEDLE,
                patterns.OTHER_GAUGES_ALSO_WRONG,
            ]
        )
    ],
)
PLUG_WIRE_OR_FUSE_AT_FAULT = LinkGroup(
    id="plug_wire_or_fuse_at_fault",
    station=Station.INSTRUMENT,
    says="You find a loose plug, broken wire or blown fuse by eye and by meter, not with a wrench.",
    parent=WIRING_GROUND_FAULT,
    effects={
        findings_sender.SENDER_CONNECTOR_LOOSE: (OFTEN, COMMON_PRACTICE),
        findings_sender.SENDER_WIRE_BROKEN: (SOMETIMES, COMMON_PRACTICE),
        findings_sender.SENDER_WIRE_OFF: (SOMETIMES, COMMON_PRACTICE),
        findings_sender.WIRE_ON_WRONG_SENDER: (SELDOM, JUDGEMENT),
        findings_electrical.WIRE_OPEN_OR_SHORTED: (OFTEN, COMMON_PRACTICE),
        findings_electrical.NEEDLE_IGNORES_LEAD_TEST: (
            OFTEN,
            idea_from(sources.NEWSPAPER_JUMPY_GAUGE_2013),
        ),
        findings_electrical.LAMP_ON_WITH_WIRE_OFF: (SOMETIMES, COMMON_PRACTICE),
        findings.LAMP_LIT_WITH_KEY_OFF: (SOMETIMES, JUDGEMENT),
        findings_electrical.GAUGE_SUPPLY_WRONG: (SOMETIMES, idea_from(sources.GAUGE_MAKER_SENDERS)),
        findings_electrical.FUSE_BLOWN: (SELDOM, COMMON_PRACTICE),
    },
    matches=[
        example(
            patterns.GAUGE_READS_ZERO,
            findings_sender.SENDER_WIRE_BROKEN,
            findings_electrical.WIRE_OPEN_OR_SHORTED,
        ),
        example(findings_electrical.LAMP_ON_WITH_WIRE_OFF),
        example(findings.LAMP_LIT_WITH_KEY_OFF),
        example(findings_electrical.FUSE_BLOWN),
        example(findings_electrical.GAUGE_SUPPLY_WRONG),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_ZERO,
            lacks=[
                findings_electrical.WIRE_OPEN_OR_SHORTED,
                findings_sender.SENDER_CONNECTOR_LOOSE,
            ],
        )
    ],
)
OPEN_OR_SHORT_DRIVES_THE_NEEDLE_TO_AN_END = LinkGroup(
    id="open_or_short_drives_the_needle_to_an_end",
    station=Station.INSTRUMENT,
    says="An open or shorted sender wire drives the needle to an end of the scale, engine off too.",
    parent=WIRING_GROUND_FAULT,
    effects={
        patterns.GAUGE_READS_HIGH: (SOMETIMES, COMMON_PRACTICE),
        findings.NEEDLE_OFF_ZERO_AT_REST: (SOMETIMES, COMMON_PRACTICE),
        findings.NEEDLE_STUCK_AT_ONE_VALUE: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(patterns.GAUGE_READS_HIGH, findings.NEEDLE_OFF_ZERO_AT_REST),
        example(patterns.NEEDLE_STEPS_AT_ONCE, findings.NEEDLE_OFF_ZERO_AT_REST),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[findings.NEEDLE_OFF_ZERO_AT_REST, patterns.GAUGE_READS_HIGH],
        )
    ],
)
GROUND_LOST_AT_STRAP_OR_THREAD = LinkGroup(
    id="ground_lost_at_strap_or_thread",
    station=Station.INSTRUMENT,
    says="Tape on the thread or a bad strap adds ohms to the sender and shifts the reading.",
    note="Misleads when the sender has its own ground wire: then tape does no harm.",
    parent=WIRING_GROUND_FAULT,
    effects={
        findings_electrical.SENDER_GROUND_POOR: (OFTEN, sources.GAUGE_MAKER_SENDERS),
        findings_sender.GROUND_STRAP_BAD: (SOMETIMES, COMMON_PRACTICE),
        findings_sender.TAPE_ON_SENDER_THREAD: (SOMETIMES, sources.GAUGE_MAKER_SENDERS),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings_electrical.SENDER_GROUND_POOR),
        example(findings_electrical.JUMPER_GROUND_CURES),
        example(findings_sender.TAPE_ON_SENDER_THREAD, findings_electrical.SENDER_GROUND_POOR),
    ],
    non_matches=[
        example(
            findings_sender.TAPE_ON_SENDER_THREAD,
            lacks=[findings_electrical.SENDER_GROUND_POOR, findings_electrical.JUMPER_GROUND_CURES],
        )
    ],
)

SENDER_MISMATCH = Cause(
    id="sender_mismatch",
    station=Station.INSTRUMENT,
    says="sender or switch of the wrong range, or one sender for two gauges",
    mechanism="the reading is wrong by a steady factor, often about half or double",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP),
    remedy="fit a sender and gauge that belong together; for two gauges, a sender made for two",
    source=sources.GAUGE_MAKER_SENDERS,
    follows="every limit gets judged wrongly",
    also=(
        "wrong sender",
        "wrong sending unit",
        "aftermarket gauge with stock sender",
        "wrong switch",
    ),
)
SCALE_OFF_BY_HALF_OR_DOUBLE = LinkGroup(
    id="scale_off_by_half_or_double",
    station=Station.INSTRUMENT,
    says="A reading that is a fixed share of the true one comes from a sender of the wrong range.",
    parent=SENDER_MISMATCH,
    effects={
        conditions.READING_FALSE: (OFTEN, sources.GAUGE_MAKER_SENDERS),
        patterns.GAUGE_READS_HIGH: (SOMETIMES, sources.GAUGE_MAKER_SENDERS),
        findings_direct_gauge.PANEL_READS_TOO_HIGH: (SOMETIMES, sources.GAUGE_MAKER_SENDERS),
        findings_direct_gauge.PANEL_HALF_OR_DOUBLE: (MOSTLY, sources.GAUGE_MAKER_SENDERS),
        findings_sender.SENDER_NOT_FOR_GAUGE: (MOSTLY, COMMON_PRACTICE),
        findings.INSTRUMENT_JUST_CHANGED: (OFTEN, COMMON_PRACTICE),
        findings_electrical.SENDER_OHMS_LOW: (SOMETIMES, sources.GAUGE_MAKER_SENDERS),
        findings_electrical.SENDER_OHMS_HIGH: (SELDOM, JUDGEMENT),
        findings_port.SWITCH_OPENS_WRONG: (SOMETIMES, sources.CROSSOVER_V6_MANUAL_2007),
        behaviour.LOW_FROM_FIRST_START: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings_direct_gauge.PANEL_HALF_OR_DOUBLE),
        example(
            patterns.GAUGE_READS_LOW,
            findings.INSTRUMENT_JUST_CHANGED,
            findings_sender.SENDER_NOT_FOR_GAUGE,
        ),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[
                findings_direct_gauge.PANEL_HALF_OR_DOUBLE,
                findings_sender.SENDER_NOT_FOR_GAUGE,
            ],
        )
    ],
)

SENDER_NOT_FITTED = Cause(
    id="sender_not_fitted",
    station=Station.INSTRUMENT,
    says="no sender in the port, the port plugged, or the wire never connected",
    mechanism="the gauge or lamp gets no pressure signal, so it shows none or never warns",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="fit the right sender at the specified port and connect its wire",
    source=COMMON_PRACTICE,
    follows="a needless strip-down, or a real fall that nobody notices",
    also=(
        "no sender fitted",
        "wire not hooked up",
        "sender left out after engine swap",
        "sensor unplugged",
    ),
)
INSTRUMENT_CONNECTED_TO_NOTHING = LinkGroup(
    id="instrument_connected_to_nothing",
    station=Station.INSTRUMENT,
    says="A plugged port or an unconnected wire shows no pressure, or never warns of none.",
    parent=SENDER_NOT_FITTED,
    effects={
        conditions.READING_FALSE: (MOSTLY, idea_from(sources.NEWSPAPER_JUMPY_GAUGE_2013)),
        findings_sender.NO_SENDER_FITTED: (OFTEN, COMMON_PRACTICE),
        findings_sender.SENDER_WIRE_OFF: (OFTEN, COMMON_PRACTICE),
        findings_sender.WIRE_ON_WRONG_SENDER: (SELDOM, JUDGEMENT),
        behaviour.NONE_FROM_FIRST_START: (OFTEN, COMMON_PRACTICE),
        findings.NEEDLE_STUCK_AT_ONE_VALUE: (OFTEN, idea_from(sources.NEWSPAPER_JUMPY_GAUGE_2013)),
        behaviour.CHANGED_AFTER_OTHER_WORK: (OFTEN, COMMON_PRACTICE),
        findings.INSTRUMENT_JUST_CHANGED: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.GAUGE_READS_ZERO, findings_sender.NO_SENDER_FITTED),
        example(behaviour.NONE_FROM_FIRST_START, findings_sender.SENDER_WIRE_OFF),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_ZERO,
            lacks=[findings_sender.NO_SENDER_FITTED, findings_sender.SENDER_WIRE_OFF],
        )
    ],
)

"""Root causes in gauge line, tapping point and idle speed, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, direct_gauge, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS
from knowledge.stations.instrument import (
    findings,
    findings_direct_gauge,
    findings_panel,
    findings_port,
    findings_sender,
)

GAUGE_LINE_BLOCKED = Cause(
    id="gauge_line_blocked",
    station=Station.INSTRUMENT,
    says="gauge line, restrictor or the screen under the sender is clogged",
    mechanism="sludge between oilway and gauge makes the reading slow, damped or dead",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, stood_long=UP),
    remedy="clear or renew line, restrictor and screen, and refill the line",
    source=sources.ARMY_TM_347_CHART_1973,
    follows="a real fall that nobody notices",
    also=(
        "clogged gauge line",
        "sender screen clogged",
        "blocked capillary",
        "sludge in sender port",
        "kinked gauge pipe",
    ),
)
NEEDLE_SLOW_OR_LATE = LinkGroup(
    id="needle_slow_or_late",
    station=Station.INSTRUMENT,
    says="If the needle is slow to rise and stays up after stopping, its line is clogged.",
    note="Misleads when there is a check valve in the line, or the oil in it is cold.",
    parent=GAUGE_LINE_BLOCKED,
    effects={
        conditions.READING_FALSE: (MOSTLY, sources.ARMY_TM_347_CHART_1973),
        behaviour.SLOW_NEEDLE: (MOSTLY, COMMON_PRACTICE),
        behaviour.TEN_SECONDS_OR_MORE: (SOMETIMES, JUDGEMENT),
        findings.NEEDLE_STUCK_AT_ONE_VALUE: (SOMETIMES, JUDGEMENT),
        findings_port.NO_OIL_AT_LINE_END: (OFTEN, COMMON_PRACTICE),
        findings_port.GAUGE_LINE_SLUDGED: (OFTEN, COMMON_PRACTICE),
        findings_panel.GAUGE_LINE_KINKED: (SELDOM, COMMON_PRACTICE),
        findings_port.SENDER_PORT_CLOGGED: (OFTEN, COMMON_PRACTICE),
        findings_port.NO_OIL_AT_OPEN_PORT: (SELDOM, JUDGEMENT),
        direct_gauge.PORTS_DIFFER: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(behaviour.SLOW_NEEDLE),
        example(patterns.GAUGE_READS_ZERO, findings_port.NO_OIL_AT_LINE_END),
        example(patterns.GAUGE_READS_LOW, findings_port.SENDER_PORT_CLOGGED),
    ],
    non_matches=[
        example(
            lacks=[
                behaviour.SLOW_NEEDLE,
                findings_port.NO_OIL_AT_LINE_END,
                findings_port.SENDER_PORT_CLOGGED,
            ]
        )
    ],
)

GAUGE_LINE_LEAK = Cause(
    id="gauge_line_leak",
    station=Station.INSTRUMENT,
    says="the oil line to the gauge is chafed, cracked, burst or loose",
    mechanism="oil escapes under full pressure before it reaches the gauge, and the sump empties",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="renew the line and clip it clear of heat and edges",
    source=COMMON_PRACTICE,
    follows="burns, fire, and an empty sump",
    also=("burst gauge pipe", "capillary leaking", "oil line to gauge broke", "oil in the cabin"),
)
OIL_ALONG_THE_GAUGE_LINE = LinkGroup(
    id="oil_along_the_gauge_line",
    station=Station.INSTRUMENT,
    says=(
        "Oil behind the panel or under the gauge line: the line leaks, and the reading falls "
        "with it."
    ),
    parent=GAUGE_LINE_LEAK,
    effects={
        conditions.READING_FALSE: (MOSTLY, COMMON_PRACTICE),
        conditions.OIL_ESCAPING: (MOSTLY, COMMON_PRACTICE),
        findings_panel.GAUGE_LINE_LEAKING: (ALWAYS, COMMON_PRACTICE),
        findings_panel.OIL_BEHIND_PANEL: (MOSTLY, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SELDOM, JUDGEMENT),
        findings_port.NO_OIL_AT_LINE_END: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings_panel.OIL_BEHIND_PANEL),
        example(patterns.FELL_SUDDENLY, findings_panel.GAUGE_LINE_LEAKING),
    ],
    non_matches=[
        example(
            patterns.FELL_SUDDENLY,
            lacks=[findings_panel.OIL_BEHIND_PANEL, findings_panel.GAUGE_LINE_LEAKING],
        )
    ],
)

GAUGE_TAP_MOVED = Cause(
    id="gauge_tap_moved",
    station=Station.INSTRUMENT,
    says="the pressure is now read at a different port than before",
    mechanism="each port has its own pressure: nearer the pump reads higher, far ends read lower",
    rate=Rate.RARE,
    shifts=Shifts(freshly_rebuilt=UP),
    remedy="go back to the maker's port, or note new usual values for this one",
    source=sources.AIRCRAFT_FAULT_ISOLATION,
    follows="the maker's limits get applied at the wrong place",
    also=("sender relocated", "gauge at another port", "T fitting at the filter", "remote sender"),
)
READ_AT_ANOTHER_PORT = LinkGroup(
    id="read_at_another_port",
    station=Station.INSTRUMENT,
    says="At another port the same engine reads another pressure, and its limits do not fit.",
    parent=GAUGE_TAP_MOVED,
    effects={
        conditions.READING_FALSE: (OFTEN, sources.AIRCRAFT_FAULT_ISOLATION),
        patterns.GAUGE_READS_HIGH: (SOMETIMES, PHYSICS),
        findings_sender.GAUGE_PORT_MOVED: (ALWAYS, COMMON_PRACTICE),
        findings.INSTRUMENT_JUST_CHANGED: (OFTEN, COMMON_PRACTICE),
        direct_gauge.PORTS_DIFFER: (SOMETIMES, PHYSICS),
        findings_direct_gauge.PANEL_OFF_BY_CONSTANT: (SOMETIMES, JUDGEMENT),
        behaviour.LOW_FROM_FIRST_START: (SOMETIMES, JUDGEMENT),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings_sender.GAUGE_PORT_MOVED),
        example(direct_gauge.PORTS_DIFFER, findings_sender.GAUGE_PORT_MOVED),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[findings_sender.GAUGE_PORT_MOVED, findings.INSTRUMENT_JUST_CHANGED],
        )
    ],
)

IDLE_TOO_SLOW = Cause(
    id="idle_too_slow",
    station=Station.INSTRUMENT,
    says="the engine idles below the maker's speed, or the tachometer is wrong",
    mechanism="the pump turns too slowly at idle to keep up with the leaks; off idle all is right",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP),
    remedy="set the idle with a trusted tachometer and read again, hot",
    source=sources.DIESEL_WORKSHOP_2015,
    follows="lifter and chain noise at idle",
    also=("idle set too low", "low idle", "idle speed wrong", "tach reads wrong"),
)
LOW_ONLY_WHILE_IT_TURNS_SLOWLY = LinkGroup(
    id="low_only_while_it_turns_slowly",
    station=Station.INSTRUMENT,
    says="Low at a slow idle and right just above it: set the idle before you suspect the pump.",
    note="Misleads when wear hides behind it: at the maker's idle speed it must be within limits.",
    parent=IDLE_TOO_SLOW,
    effects={
        conditions.PRESSURE_LOW: (OFTEN, sources.DIESEL_WORKSHOP_2015),
        direct_gauge.IDLE_BELOW_SPEC: (ALWAYS, COMMON_PRACTICE),
        patterns_speed.LOW_HOT_IDLE_GOOD_SPEED: (MOSTLY, PHYSICS),
        patterns_speed.RISES_JUST_OFF_IDLE: (MOSTLY, PHYSICS),
        patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(
            patterns_speed.LOW_HOT_IDLE_GOOD_SPEED,
            patterns_speed.RISES_JUST_OFF_IDLE,
            direct_gauge.IDLE_BELOW_SPEC,
        ),
        example(findings_panel.RIGHT_IDLE_CURED_IT),
    ],
    non_matches=[
        example(
            patterns_speed.LOW_HOT_IDLE_GOOD_SPEED,
            lacks=[direct_gauge.IDLE_BELOW_SPEC, patterns_speed.RISES_JUST_OFF_IDLE],
        )
    ],
)
TACHOMETER_FLATTERS_THE_IDLE = LinkGroup(
    id="tachometer_flatters_the_idle",
    station=Station.INSTRUMENT,
    says="If the tachometer reads high, the idle gets set too slow without anyone noticing.",
    parent=IDLE_TOO_SLOW,
    effects={
        findings_panel.TACHOMETER_WRONG: (SOMETIMES, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(direct_gauge.IDLE_BELOW_SPEC, findings_panel.TACHOMETER_WRONG)],
    non_matches=[example(findings_panel.TACHOMETER_WRONG, lacks=[direct_gauge.IDLE_BELOW_SPEC])],
)

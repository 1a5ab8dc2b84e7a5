"""What follows at gauge, lamp, gauge line, port and idle."""

from knowledge.causes.instrument import (
    GAUGE_FAULTY,
    GAUGE_LINE_BLOCKED,
    GAUGE_LINE_LEAK,
    GAUGE_TAP_MOVED,
    IDLE_TOO_SLOW,
    SENDER_FAULTY,
    SENDER_MISMATCH,
    SENDER_NOT_FITTED,
    WIRING_GROUND_FAULT,
)
from knowledge.conditions import (
    OIL_ESCAPING,
    OIL_SLUDGED,
    PRESSURE_LOW,
    READING_ERRATIC,
    READING_FALSE,
)
from knowledge.findings.behaviour import (
    CHANGED_AFTER_OTHER_WORK,
    IDLE_BELOW_SPEC,
    LOW_FROM_FIRST_START,
    NOTHING_WARNED,
    PORTS_DIFFER,
    SLOW_NEEDLE,
    TEN_SECONDS_OR_MORE,
)
from knowledge.findings.instrument import (
    GAUGE_DAMAGED,
    GAUGE_LINE_KINKED,
    GAUGE_LINE_LEAKING,
    GAUGE_PORT_MOVED,
    INSTRUMENT_JUST_CHANGED,
    LAMP_DEAD_WITH_KEY_ON,
    NEEDLE_OFF_ZERO_AT_REST,
    NEEDLE_STUCK_AT_ONE_VALUE,
    OIL_BEHIND_PANEL,
    RIGHT_IDLE_CURED_IT,
    TAP_FREES_NEEDLE,
)
from knowledge.findings.instrument_bench import (
    GAUGE_DEAD_ON_KNOWN_SIGNAL,
    GAUGE_LINE_SLUDGED,
    NEEDLE_IGNORES_LEAD_TEST,
    NO_OIL_AT_LINE_END,
    NO_OIL_AT_OPEN_PORT,
    OTHER_GAUGE_READS_RIGHT,
    PANEL_OFF_BY_CONSTANT,
    PANEL_READS_TOO_HIGH,
    SENDER_PORT_CLOGGED,
    TACHOMETER_WRONG,
)
from knowledge.findings.pressure import (
    FELL_SUDDENLY,
    FLICKERS_ONLY_AT_HOT_IDLE,
    GAUGE_READS_HIGH,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    LOW_HOT_IDLE_GOOD_SPEED,
    RISES_JUST_OFF_IDLE,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB01, HB04, HB06, HB11, HB18
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.INSTRUMENT)

# ---------------------------------------------------------------------------------- gauge and lamp


@rule(
    source=HB11,
    catches=[
        case_of(GAUGE_READS_LOW, OTHER_GAUGE_READS_RIGHT),
        case_of(TAP_FREES_NEEDLE),
        case_of(NEEDLE_OFF_ZERO_AT_REST, PANEL_OFF_BY_CONSTANT),
        case_of(GAUGE_DEAD_ON_KNOWN_SIGNAL),
    ],
    spares=[
        case_of(
            GAUGE_READS_LOW,
            lacks=[OTHER_GAUGE_READS_RIGHT, GAUGE_DEAD_ON_KNOWN_SIGNAL, TAP_FREES_NEEDLE],
        )
    ],
)
def gauge_wrong_on_a_known_signal(known: Known) -> Conclusions:
    """A gauge that sticks, rests off zero or fails a known signal is wrong at every reading."""
    yield leads_to(GAUGE_FAULTY, READING_FALSE, MOSTLY)
    yield leads_to(GAUGE_FAULTY, READING_ERRATIC, SELDOM)
    yield leads_to(GAUGE_FAULTY, OTHER_GAUGE_READS_RIGHT, MOSTLY)
    yield leads_to(GAUGE_FAULTY, GAUGE_DEAD_ON_KNOWN_SIGNAL, MOSTLY)
    yield leads_to(GAUGE_FAULTY, NEEDLE_IGNORES_LEAD_TEST, OFTEN)
    yield leads_to(GAUGE_FAULTY, TAP_FREES_NEEDLE, SOMETIMES)
    yield leads_to(GAUGE_FAULTY, NEEDLE_OFF_ZERO_AT_REST, SOMETIMES)
    yield leads_to(GAUGE_FAULTY, NEEDLE_STUCK_AT_ONE_VALUE, OFTEN)
    yield leads_to(GAUGE_FAULTY, GAUGE_DAMAGED, SOMETIMES)


@rule(
    source=HB01,
    catches=[case_of(PANEL_OFF_BY_CONSTANT), case_of(PANEL_READS_TOO_HIGH, SLOW_NEEDLE)],
    spares=[case_of(lacks=[PANEL_OFF_BY_CONSTANT, PANEL_READS_TOO_HIGH, SLOW_NEEDLE])],
)
def panel_off_a_trusted_gauge(known: Known) -> Conclusions:
    """A panel gauge that is off a trusted one by the same amount everywhere has lost its scale."""
    yield leads_to(GAUGE_FAULTY, PANEL_OFF_BY_CONSTANT, OFTEN)
    yield leads_to(GAUGE_FAULTY, PANEL_READS_TOO_HIGH, SOMETIMES)
    yield leads_to(GAUGE_FAULTY, GAUGE_READS_HIGH, SOMETIMES)
    yield leads_to(GAUGE_FAULTY, SLOW_NEEDLE, SOMETIMES)
    yield leads_to(GAUGE_FAULTY, INSTRUMENT_JUST_CHANGED, SELDOM)
    yield leads_to(SENDER_FAULTY, PANEL_OFF_BY_CONSTANT, SOMETIMES)
    yield leads_to(SENDER_FAULTY, PANEL_READS_TOO_HIGH, SELDOM)
    yield leads_to(WIRING_GROUND_FAULT, PANEL_OFF_BY_CONSTANT, SELDOM)


@rule(
    source=CP,
    catches=[case_of(NOTHING_WARNED, LAMP_DEAD_WITH_KEY_ON)],
    spares=[case_of(lacks=[NOTHING_WARNED, LAMP_DEAD_WITH_KEY_ON])],
)
def lamp_that_never_warned(known: Known) -> Conclusions:
    """A dead lamp, a wire that is off or a stuck switch keeps silent about a real fall.

    It says nothing about the oil: the engine may have a fault of its own besides.
    """
    yield leads_to(SENDER_NOT_FITTED, LAMP_DEAD_WITH_KEY_ON, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, LAMP_DEAD_WITH_KEY_ON, SOMETIMES)
    yield leads_to(SENDER_FAULTY, LAMP_DEAD_WITH_KEY_ON, SOMETIMES)
    yield leads_to(SENDER_NOT_FITTED, NOTHING_WARNED, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, NOTHING_WARNED, SOMETIMES)
    yield leads_to(SENDER_FAULTY, NOTHING_WARNED, SOMETIMES)
    yield leads_to(SENDER_MISMATCH, NOTHING_WARNED, SELDOM)
    yield leads_to(GAUGE_FAULTY, NOTHING_WARNED, SELDOM)


# ------------------------------------------------------------------------------------ the oil line


@rule(
    source=HB01,
    catches=[
        case_of(SLOW_NEEDLE),
        case_of(GAUGE_READS_ZERO, NO_OIL_AT_LINE_END),
        case_of(GAUGE_READS_LOW, SENDER_PORT_CLOGGED),
    ],
    spares=[case_of(lacks=[SLOW_NEEDLE, NO_OIL_AT_LINE_END, SENDER_PORT_CLOGGED])],
)
def needle_slow_or_late(known: Known) -> Conclusions:
    """A needle that is slow to rise and stays up after stopping reads through a clogged bore.

    Misleads when a check valve sits in the line, or the oil in it is cold.
    """
    yield leads_to(GAUGE_LINE_BLOCKED, READING_FALSE, MOSTLY)
    yield leads_to(GAUGE_LINE_BLOCKED, SLOW_NEEDLE, MOSTLY)
    yield leads_to(GAUGE_LINE_BLOCKED, TEN_SECONDS_OR_MORE, SOMETIMES)
    yield leads_to(GAUGE_LINE_BLOCKED, NEEDLE_STUCK_AT_ONE_VALUE, SOMETIMES)
    yield leads_to(GAUGE_LINE_BLOCKED, NO_OIL_AT_LINE_END, OFTEN)
    yield leads_to(GAUGE_LINE_BLOCKED, GAUGE_LINE_SLUDGED, OFTEN)
    yield leads_to(GAUGE_LINE_BLOCKED, GAUGE_LINE_KINKED, SELDOM)
    yield leads_to(GAUGE_LINE_BLOCKED, SENDER_PORT_CLOGGED, OFTEN)
    yield leads_to(GAUGE_LINE_BLOCKED, NO_OIL_AT_OPEN_PORT, SELDOM)


@rule(
    source=CP,
    catches=[case_of(OIL_BEHIND_PANEL), case_of(FELL_SUDDENLY, GAUGE_LINE_LEAKING)],
    spares=[case_of(FELL_SUDDENLY, lacks=[OIL_BEHIND_PANEL, GAUGE_LINE_LEAKING])],
)
def oil_along_the_gauge_line(known: Known) -> Conclusions:
    """Oil behind the panel or under the gauge line: the line leaks, and takes the reading along."""
    yield leads_to(GAUGE_LINE_LEAK, READING_FALSE, MOSTLY)
    yield leads_to(GAUGE_LINE_LEAK, OIL_ESCAPING, MOSTLY)
    yield leads_to(GAUGE_LINE_LEAK, GAUGE_LINE_LEAKING, ALWAYS)
    yield leads_to(GAUGE_LINE_LEAK, OIL_BEHIND_PANEL, MOSTLY)
    yield leads_to(GAUGE_LINE_LEAK, CHANGED_AFTER_OTHER_WORK, SELDOM)
    yield leads_to(GAUGE_LINE_LEAK, NO_OIL_AT_LINE_END, SOMETIMES)


@rule(
    source=HB18,
    catches=[case_of(GAUGE_READS_LOW, GAUGE_PORT_MOVED), case_of(PORTS_DIFFER, GAUGE_PORT_MOVED)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[GAUGE_PORT_MOVED, INSTRUMENT_JUST_CHANGED])],
)
def read_at_another_port(known: Known) -> Conclusions:
    """Read at another port, the same engine shows another pressure, and its limits do not fit."""
    yield leads_to(GAUGE_TAP_MOVED, READING_FALSE, OFTEN)
    yield leads_to(GAUGE_TAP_MOVED, GAUGE_READS_HIGH, SOMETIMES)
    yield leads_to(GAUGE_TAP_MOVED, GAUGE_PORT_MOVED, ALWAYS)
    yield leads_to(GAUGE_TAP_MOVED, INSTRUMENT_JUST_CHANGED, OFTEN)
    yield leads_to(GAUGE_TAP_MOVED, PORTS_DIFFER, SOMETIMES)
    yield leads_to(GAUGE_TAP_MOVED, PANEL_OFF_BY_CONSTANT, SOMETIMES)
    yield leads_to(GAUGE_TAP_MOVED, LOW_FROM_FIRST_START, SOMETIMES)
    yield leads_to(GAUGE_TAP_MOVED, CHANGED_AFTER_OTHER_WORK, SOMETIMES)


@rule(
    source=HB01,
    catches=[case_of(SENDER_PORT_CLOGGED), case_of(GAUGE_LINE_SLUDGED)],
    spares=[case_of(lacks=[SENDER_PORT_CLOGGED, GAUGE_LINE_SLUDGED])],
)
def sludge_in_the_finest_bore(known: Known) -> Conclusions:
    """Sludge settles where oil stands still: in the gauge's port, screen and line."""
    yield leads_to(OIL_SLUDGED, SENDER_PORT_CLOGGED, SELDOM)
    yield leads_to(OIL_SLUDGED, GAUGE_LINE_SLUDGED, SELDOM)


# ---------------------------------------------------------------------------------------- the idle


@rule(
    source=HB04,
    catches=[
        case_of(LOW_HOT_IDLE_GOOD_SPEED, RISES_JUST_OFF_IDLE, IDLE_BELOW_SPEC),
        case_of(RIGHT_IDLE_CURED_IT),
    ],
    spares=[case_of(LOW_HOT_IDLE_GOOD_SPEED, lacks=[IDLE_BELOW_SPEC, RISES_JUST_OFF_IDLE])],
)
def low_only_while_it_turns_slowly(known: Known) -> Conclusions:
    """Low at a slow idle and right just above it: set the idle before suspecting the pump.

    Misleads when wear hides behind it: at the maker's idle speed it must be within limits.
    """
    yield leads_to(IDLE_TOO_SLOW, PRESSURE_LOW, OFTEN)
    yield leads_to(IDLE_TOO_SLOW, IDLE_BELOW_SPEC, ALWAYS)
    yield leads_to(IDLE_TOO_SLOW, LOW_HOT_IDLE_GOOD_SPEED, MOSTLY)
    yield leads_to(IDLE_TOO_SLOW, RISES_JUST_OFF_IDLE, MOSTLY)
    yield leads_to(IDLE_TOO_SLOW, FLICKERS_ONLY_AT_HOT_IDLE, OFTEN)
    yield leads_to(IDLE_TOO_SLOW, RIGHT_IDLE_CURED_IT, MOSTLY)


@rule(
    source=HB06,
    catches=[case_of(IDLE_BELOW_SPEC, TACHOMETER_WRONG)],
    spares=[case_of(TACHOMETER_WRONG, lacks=[IDLE_BELOW_SPEC])],
)
def tachometer_flatters_the_idle(known: Known) -> Conclusions:
    """A tachometer that reads high lets the idle be set too slow without anyone seeing it."""
    yield leads_to(IDLE_TOO_SLOW, TACHOMETER_WRONG, SOMETIMES)
    yield leads_to(IDLE_TOO_SLOW, CHANGED_AFTER_OTHER_WORK, SELDOM)

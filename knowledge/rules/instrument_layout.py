"""How the instrument is arranged, what was done last, and when to stop."""

from knowledge.causes.instrument import (
    GAUGE_FAULTY,
    GAUGE_LINE_BLOCKED,
    GAUGE_LINE_LEAK,
    GAUGE_TAP_MOVED,
    SENDER_FAULTY,
    SENDER_MISMATCH,
    SENDER_NOT_FITTED,
    WIRING_GROUND_FAULT,
)
from knowledge.engines.features import DIRECT_GAUGE, ELECTRIC_GAUGE, LAMP_ONLY
from knowledge.findings.behaviour import (
    DIRECT_GAUGE_ZERO,
    TEN_SECONDS_OR_MORE,
)
from knowledge.findings.history import JUST_WORKED_ON, SUMP_OR_PUMP_SWAPPED
from knowledge.findings.instrument import (
    GAUGE_LINE_LEAKING,
    LAMP_DEAD_WITH_KEY_ON,
    NO_SENDER_FITTED,
    OIL_BEHIND_PANEL,
)
from knowledge.findings.instrument_bench import (
    NO_OIL_AT_OPEN_PORT,
    PANEL_READS_TOO_HIGH,
)
from knowledge.findings.pressure import (
    GAUGE_READS_LOW,
    LAMP_COMES_ON,
)
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Known,
    cannot_be,
    case_of,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import LAM, NE3, TEL, TMK
from knowledge.vocabulary import (
    Severity,
    Shift,
    Station,
)

rule = rules_of(Station.INSTRUMENT)

# --------------------------------------------------------------------------------- how it is built


@rule(
    source=CP,
    catches=[case_of(DIRECT_GAUGE, lacks=[ELECTRIC_GAUGE])],
    spares=[case_of(DIRECT_GAUGE), case_of(ELECTRIC_GAUGE)],
)
def oil_line_and_no_wire(known: Known) -> Conclusions:
    """A gauge fed by an oil line has no sender or wire to lie; only a lamp beside it may."""
    if known.has(DIRECT_GAUGE) and known.lacks(ELECTRIC_GAUGE):
        yield cannot_be(SENDER_MISMATCH)
        yield less_common(SENDER_FAULTY, Shift.STRONG_DOWN)
        yield less_common(WIRING_GROUND_FAULT, Shift.STRONG_DOWN)


@rule(
    source=CP,
    catches=[case_of(DIRECT_GAUGE, lacks=[ELECTRIC_GAUGE, LAMP_COMES_ON])],
    spares=[case_of(DIRECT_GAUGE, LAMP_COMES_ON, lacks=[ELECTRIC_GAUGE])],
)
def oil_line_and_silent_lamp(known: Known) -> Conclusions:
    """With an oil line to the gauge and no lamp complaining, nothing electric made the reading."""
    if known.has(DIRECT_GAUGE) and known.lacks(ELECTRIC_GAUGE) and known.lacks(LAMP_COMES_ON):
        yield cannot_be(SENDER_FAULTY)
        yield cannot_be(WIRING_GROUND_FAULT)
        yield cannot_be(SENDER_NOT_FITTED)


@rule(
    source=CP,
    catches=[case_of(LAMP_ONLY)],
    spares=[case_of(ELECTRIC_GAUGE), case_of(lacks=[LAMP_ONLY])],
)
def lamp_and_nothing_else(known: Known) -> Conclusions:
    """With a lamp and no gauge there is neither panel gauge nor gauge line to fail."""
    if known.has(LAMP_ONLY):
        yield cannot_be(GAUGE_FAULTY)
        yield cannot_be(GAUGE_LINE_LEAK)
        yield less_common(GAUGE_LINE_BLOCKED, Shift.STRONG_DOWN)


@rule(
    source=CP,
    catches=[case_of(ELECTRIC_GAUGE, lacks=[DIRECT_GAUGE])],
    spares=[case_of(ELECTRIC_GAUGE), case_of(DIRECT_GAUGE)],
)
def wire_and_no_oil_line(known: Known) -> Conclusions:
    """Without an oil line only a hose to a distant sender can leak, or its port and screen clog."""
    if known.has(ELECTRIC_GAUGE) and known.lacks(DIRECT_GAUGE):
        yield less_common(GAUGE_LINE_LEAK, Shift.STRONG_DOWN)
        yield less_common(GAUGE_LINE_BLOCKED)


@rule(
    source=CP,
    catches=[case_of(NO_SENDER_FITTED)],
    spares=[case_of(lacks=[NO_SENDER_FITTED])],
)
def empty_port_has_no_bad_sender(known: Known) -> Conclusions:
    """Where no sender is fitted, none can be faulty or of the wrong range."""
    if known.has(NO_SENDER_FITTED):
        yield cannot_be(SENDER_FAULTY)
        yield cannot_be(SENDER_MISMATCH)


# ------------------------------------------------------------------------------ what was done last


@rule(
    source=CP,
    catches=[case_of(JUST_WORKED_ON)],
    spares=[case_of(lacks=[JUST_WORKED_ON])],
)
def hands_were_near_the_wire(known: Known) -> Conclusions:
    """After work on the engine look first whether sender and wire were put back."""
    if known.has(JUST_WORKED_ON):
        yield more_common(SENDER_NOT_FITTED, Shift.STRONG_UP)


@rule(
    source=TEL,
    catches=[case_of(SUMP_OR_PUMP_SWAPPED)],
    spares=[case_of(lacks=[SUMP_OR_PUMP_SWAPPED])],
)
def parts_from_another_engine(known: Known) -> Conclusions:
    """After a swap the sender, its range or its port may belong to another engine."""
    if known.has(SUMP_OR_PUMP_SWAPPED):
        yield more_common(SENDER_MISMATCH)
        yield more_common(SENDER_NOT_FITTED)
        yield more_common(GAUGE_TAP_MOVED)


# ---------------------------------------------------------------------------------------- stop now


@rule(
    source=NE3,
    catches=[case_of(DIRECT_GAUGE_ZERO)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[DIRECT_GAUGE_ZERO])],
)
def trusted_gauge_shows_nothing(known: Known) -> Conclusions:
    """No pressure on a trusted gauge: stop, and do not start again before the cause is found."""
    if known.has(DIRECT_GAUGE_ZERO):
        yield Alarm(
            Severity.STOP,
            "trusted gauge at zero, limit: any pressure within 10 s: stop the engine, do not "
            "start it again before the cause is found",
        )


@rule(
    source=NE3,
    catches=[case_of(NO_OIL_AT_OPEN_PORT)],
    spares=[case_of(lacks=[NO_OIL_AT_OPEN_PORT])],
)
def dry_port_forbids_a_start(known: Known) -> Conclusions:
    """No oil at the open port while cranking: do not start the engine."""
    if known.has(NO_OIL_AT_OPEN_PORT):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "no oil at the open port while cranking: do not start; find out why, then prime",
        )


@rule(
    source=LAM,
    catches=[case_of(TEN_SECONDS_OR_MORE)],
    spares=[case_of(lacks=[TEN_SECONDS_OR_MORE])],
)
def nothing_within_ten_seconds(known: Known) -> Conclusions:
    """No pressure within ten seconds of a start: stop and prime, never rev to bring it up."""
    if known.has(TEN_SECONDS_OR_MORE):
        yield Alarm(
            Severity.STOP,
            "no pressure 10 s after the start (limit 10 s, 5 s on a fresh build): stop, prime, "
            "do not rev to bring it up",
        )


@rule(
    source=TMK,
    catches=[case_of(GAUGE_LINE_LEAKING), case_of(OIL_BEHIND_PANEL)],
    spares=[case_of(lacks=[GAUGE_LINE_LEAKING, OIL_BEHIND_PANEL])],
)
def oil_line_open_near_heat(known: Known) -> Conclusions:
    """A leaking gauge line sprays hot oil under full pressure: stop, and mind the fire."""
    if known.has(GAUGE_LINE_LEAKING):
        yield Alarm(
            Severity.STOP,
            "gauge line leaks under full oil pressure: stop, keep off hot parts, watch for fire, "
            "check the level",
        )
    if known.has(OIL_BEHIND_PANEL):
        yield Alarm(
            Severity.STOP,
            "oil behind the panel or under the gauge line: stop, find where it comes from, "
            "check the level",
        )


@rule(
    source=CP,
    catches=[case_of(LAMP_DEAD_WITH_KEY_ON), case_of(PANEL_READS_TOO_HIGH)],
    spares=[case_of(lacks=[LAMP_DEAD_WITH_KEY_ON, PANEL_READS_TOO_HIGH])],
)
def instrument_that_cannot_warn(known: Known) -> Conclusions:
    """A dead lamp or a flattering gauge cannot warn: judge by a trusted gauge alone."""
    if known.has(LAMP_DEAD_WITH_KEY_ON):
        yield Alarm(
            Severity.CARE,
            "the oil lamp does not light with the key on: its darkness proves nothing; fit a "
            "trusted gauge before any run",
        )
    if known.has(PANEL_READS_TOO_HIGH):
        yield Alarm(
            Severity.CARE,
            "the panel reads above a trusted gauge: judge every limit by the trusted gauge alone",
        )

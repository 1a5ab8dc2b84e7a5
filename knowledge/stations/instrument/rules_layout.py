"""Rules on how the instrument is arranged and what was done last."""

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.engines import features
from knowledge.history import findings as history
from knowledge.model import Severity, Shift, Station
from knowledge.pressure import behaviour, direct_gauge, patterns
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.instrument import (
    causes,
    causes_line,
    findings,
    findings_direct_gauge,
    findings_panel,
    findings_port,
    findings_sender,
)

rule = rules_of(Station.INSTRUMENT)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(patterns.GAUGE_READS_ZERO, patterns.LAMP_COMES_ON),
        example(patterns.GAUGE_READS_LOW, patterns.LAMP_COMES_ON),
    ],
    non_matches=[
        example(patterns.GAUGE_READS_ZERO),
        example(patterns.GAUGE_READS_LOW, lacks=[patterns.LAMP_COMES_ON]),
        example(patterns.LAMP_COMES_ON),
    ],
)
def lamp_and_gauge_agree(known: Known) -> Conclusions:
    """Two instruments that agree are seldom both wrong: panel gauge and lamp say the same.

    Misleads where one sender serves both, so the sender stays likelier than the gauge.
    """
    gauge = known.has(patterns.GAUGE_READS_ZERO) or known.has(patterns.GAUGE_READS_LOW)
    if gauge and known.has(patterns.LAMP_COMES_ON):
        yield less_common(causes.SENDER_FAULTY)
        yield less_common(causes.GAUGE_FAULTY, Shift.STRONG_DOWN)
        yield less_common(causes.SENDER_MISMATCH, Shift.STRONG_DOWN)
        yield less_common(causes_line.GAUGE_LINE_BLOCKED, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.DIRECT_GAUGE, lacks=[features.ELECTRIC_GAUGE])],
    non_matches=[example(features.DIRECT_GAUGE), example(features.ELECTRIC_GAUGE)],
)
def oil_line_and_no_wire(known: Known) -> Conclusions:
    """A gauge on an oil line has no sender or wire to fail; only a lamp beside it may."""
    if known.has(features.DIRECT_GAUGE) and known.lacks(features.ELECTRIC_GAUGE):
        yield cannot_be(causes.SENDER_MISMATCH)
        yield less_common(causes.SENDER_FAULTY, Shift.STRONG_DOWN)
        yield less_common(causes.WIRING_GROUND_FAULT, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(features.DIRECT_GAUGE, lacks=[features.ELECTRIC_GAUGE, patterns.LAMP_COMES_ON])
    ],
    non_matches=[
        example(features.DIRECT_GAUGE, patterns.LAMP_COMES_ON, lacks=[features.ELECTRIC_GAUGE])
    ],
)
def oil_line_and_silent_lamp(known: Known) -> Conclusions:
    """With an oil line to the gauge and the lamp off, the low reading is not electrical."""
    if (
        known.has(features.DIRECT_GAUGE)
        and known.lacks(features.ELECTRIC_GAUGE)
        and known.lacks(patterns.LAMP_COMES_ON)
    ):
        yield cannot_be(causes.SENDER_FAULTY)
        yield cannot_be(causes.WIRING_GROUND_FAULT)
        yield cannot_be(causes.SENDER_NOT_FITTED)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.LAMP_ONLY)],
    non_matches=[example(features.ELECTRIC_GAUGE), example(lacks=[features.LAMP_ONLY])],
)
def lamp_and_nothing_else(known: Known) -> Conclusions:
    """An engine with a lamp and no gauge has no panel gauge or gauge line to fail."""
    if known.has(features.LAMP_ONLY):
        yield cannot_be(causes.GAUGE_FAULTY)
        yield cannot_be(causes_line.GAUGE_LINE_LEAK)
        yield less_common(causes_line.GAUGE_LINE_BLOCKED, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.DIRECT_GAUGE), example(features.ELECTRIC_GAUGE)],
    non_matches=[example(features.LAMP_ONLY), example()],
)
def line_where_a_line_is(known: Known) -> Conclusions:
    """Only an engine with an oil line to the gauge can have a burst gauge line."""
    if known.has(features.DIRECT_GAUGE):
        yield more_common(causes_line.GAUGE_LINE_LEAK, Shift.STRONG_UP)
    if known.has(features.ELECTRIC_GAUGE):
        yield less_common(causes_line.GAUGE_LINE_LEAK)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.ELECTRIC_GAUGE, lacks=[features.DIRECT_GAUGE])],
    non_matches=[example(features.ELECTRIC_GAUGE), example(features.DIRECT_GAUGE)],
)
def wire_and_no_oil_line(known: Known) -> Conclusions:
    """Without an oil line to the gauge only a remote sender's hose can leak, or its port clog."""
    if known.has(features.ELECTRIC_GAUGE) and known.lacks(features.DIRECT_GAUGE):
        yield less_common(causes_line.GAUGE_LINE_LEAK, Shift.STRONG_DOWN)
        yield less_common(causes_line.GAUGE_LINE_BLOCKED)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_sender.NO_SENDER_FITTED)],
    non_matches=[example(lacks=[findings_sender.NO_SENDER_FITTED])],
)
def empty_port_has_no_bad_sender(known: Known) -> Conclusions:
    """Without a sender none can be faulty or of the wrong range."""
    if known.has(findings_sender.NO_SENDER_FITTED):
        yield cannot_be(causes.SENDER_FAULTY)
        yield cannot_be(causes.SENDER_MISMATCH)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(history.JUST_WORKED_ON)],
    non_matches=[example(lacks=[history.JUST_WORKED_ON])],
)
def hands_were_near_the_wire(known: Known) -> Conclusions:
    """After work on the engine check first whether sender and wire were refitted."""
    if known.has(history.JUST_WORKED_ON):
        yield more_common(causes.SENDER_NOT_FITTED, Shift.STRONG_UP)


@rule(
    source=sources.GAUGE_MAKER_SENDERS,
    matches=[example(history.SUMP_OR_PUMP_SWAPPED)],
    non_matches=[example(lacks=[history.SUMP_OR_PUMP_SWAPPED])],
)
def parts_from_another_engine(known: Known) -> Conclusions:
    """After a swap the sender, its range or its port may belong to another engine."""
    if known.has(history.SUMP_OR_PUMP_SWAPPED):
        yield more_common(causes.SENDER_MISMATCH)
        yield more_common(causes.SENDER_NOT_FITTED)
        yield more_common(causes_line.GAUGE_TAP_MOVED)


@rule(
    source=sources.NAVY_14075_CASUALTY,
    matches=[example(direct_gauge.DIRECT_GAUGE_ZERO)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[direct_gauge.DIRECT_GAUGE_ZERO])],
)
def trusted_gauge_shows_nothing(known: Known) -> Conclusions:
    """No pressure on a trusted gauge: stop, and do not start again until you find the cause."""
    if known.has(direct_gauge.DIRECT_GAUGE_ZERO):
        yield Alarm(
            Severity.STOP,
            "trusted gauge at zero, limit: any pressure within 10 s: stop the engine, do not start "
            "it again until you find the cause",
        )


@rule(
    source=JUDGEMENT,
    matches=[example(findings_port.NO_OIL_AT_OPEN_PORT)],
    non_matches=[example(lacks=[findings_port.NO_OIL_AT_OPEN_PORT])],
)
def dry_port_forbids_a_start(known: Known) -> Conclusions:
    """No oil at the open port while cranking: do not start the engine."""
    if known.has(findings_port.NO_OIL_AT_OPEN_PORT):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "no oil at the open port while cranking: do not start; find out why, then prime",
        )


@rule(
    source=sources.OIL_CHANGE_LAMP_TEXT,
    matches=[example(behaviour.TEN_SECONDS_OR_MORE)],
    non_matches=[example(lacks=[behaviour.TEN_SECONDS_OR_MORE])],
)
def nothing_within_ten_seconds(known: Known) -> Conclusions:
    """No pressure within ten seconds of a start: stop and prime, never rev to bring it up."""
    if known.has(behaviour.TEN_SECONDS_OR_MORE):
        yield Alarm(
            Severity.STOP,
            "no pressure 10 s after the start (limit 10 s, 5 s on a fresh build): stop, prime, "
            "do not rev to bring it up",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_panel.GAUGE_LINE_LEAKING), example(findings_panel.OIL_BEHIND_PANEL)],
    non_matches=[
        example(lacks=[findings_panel.GAUGE_LINE_LEAKING, findings_panel.OIL_BEHIND_PANEL])
    ],
)
def oil_line_open_near_heat(known: Known) -> Conclusions:
    """A leaking gauge line sprays hot oil under full pressure: stop, and watch for fire."""
    if known.has(findings_panel.GAUGE_LINE_LEAKING):
        yield Alarm(
            Severity.STOP,
            "gauge line leaks under full oil pressure: stop, keep off hot parts, watch for fire, "
            "check the level",
        )
    if known.has(findings_panel.OIL_BEHIND_PANEL):
        yield Alarm(
            Severity.STOP,
            "oil behind the panel or under the gauge line: stop, find its source, check the level",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings.LAMP_DEAD_WITH_KEY_ON),
        example(findings_direct_gauge.PANEL_READS_TOO_HIGH),
    ],
    non_matches=[
        example(lacks=[findings.LAMP_DEAD_WITH_KEY_ON, findings_direct_gauge.PANEL_READS_TOO_HIGH])
    ],
)
def instrument_that_cannot_warn(known: Known) -> Conclusions:
    """A dead lamp, or a gauge that reads high, cannot warn: judge only by a trusted gauge."""
    if known.has(findings.LAMP_DEAD_WITH_KEY_ON):
        yield Alarm(
            Severity.CARE,
            "the oil lamp does not light with the key on, so it cannot warn: fit a trusted gauge "
            "before any run",
        )
    if known.has(findings_direct_gauge.PANEL_READS_TOO_HIGH):
        yield Alarm(
            Severity.CARE,
            "the panel reads above a trusted gauge: judge every limit only by the trusted gauge",
        )

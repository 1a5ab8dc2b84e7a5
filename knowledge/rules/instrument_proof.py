"""What the instrument's tests prove of the oil, what follows from them, what cannot be both."""

from knowledge.causes.instrument import (
    GAUGE_FAULTY,
    GAUGE_LINE_BLOCKED,
    SENDER_MISMATCH,
    WIRING_GROUND_FAULT,
)
from knowledge.conditions import (
    PRESSURE_GONE,
    PRESSURE_LOW,
    PRESSURE_UNSTEADY,
    PUMP_DRY,
    PUMP_NOT_TURNING,
)
from knowledge.engines.features import DIRECT_GAUGE, ELECTRIC_GAUGE, HYDRAULIC_LIFTERS, LAMP_ONLY
from knowledge.findings.behaviour import (
    DIRECT_GAUGE_LOW,
    DIRECT_GAUGE_ZERO,
)
from knowledge.findings.instrument import (
    LAMP_DEAD_WITH_KEY_ON,
    NEW_SENDER_CURED_IT,
    NEW_SENDER_NO_DIFFERENCE,
)
from knowledge.findings.instrument_bench import (
    FUSE_BLOWN,
    NEEDLE_IGNORES_LEAD_TEST,
    NO_OIL_AT_OPEN_PORT,
    TEST_GAUGE_DOUBTFUL,
    WIRE_OPEN_OR_SHORTED,
)
from knowledge.findings.pressure import (
    ENGINE_RUNS_NORMALLY,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    LAMP_COMES_ON,
    SECOND_INSTRUMENT_DISAGREES,
)
from knowledge.rulebook import (
    Conclusions,
    Contradiction,
    Known,
    case_of,
    is_absent,
    is_present,
    leads_to,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import CTG, NE3, TEL, TWO_CP
from knowledge.vocabulary import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    Station,
)

rule = rules_of(Station.INSTRUMENT)

# ----------------------------------------------------------- what the oil's own trouble shows here


@rule(
    source=CP,
    catches=[case_of(NEW_SENDER_NO_DIFFERENCE)],
    spares=[case_of(lacks=[NEW_SENDER_NO_DIFFERENCE])],
)
def new_sender_same_reading(known: Known) -> Conclusions:
    """A new sender that reads the same moves the question to wire, gauge or the oil itself.

    Misleads when the new sender is of the wrong range, or as bad as the old.
    """
    yield leads_to(PRESSURE_LOW, NEW_SENDER_NO_DIFFERENCE, OFTEN)
    yield leads_to(PRESSURE_GONE, NEW_SENDER_NO_DIFFERENCE, OFTEN)
    yield leads_to(PRESSURE_UNSTEADY, NEW_SENDER_NO_DIFFERENCE, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, NEW_SENDER_NO_DIFFERENCE, OFTEN)
    yield leads_to(GAUGE_FAULTY, NEW_SENDER_NO_DIFFERENCE, OFTEN)
    yield leads_to(GAUGE_LINE_BLOCKED, NEW_SENDER_NO_DIFFERENCE, SOMETIMES)
    yield leads_to(SENDER_MISMATCH, NEW_SENDER_NO_DIFFERENCE, SELDOM)


@rule(
    source=NE3,
    catches=[case_of(NO_OIL_AT_OPEN_PORT)],
    spares=[case_of(lacks=[NO_OIL_AT_OPEN_PORT])],
)
def nothing_from_the_open_port(known: Known) -> Conclusions:
    """No oil from the open port while cranking: the engine has none to show, whatever the gauge.

    Misleads when the port itself is clogged, or cranking was too short.
    """
    yield leads_to(PUMP_NOT_TURNING, NO_OIL_AT_OPEN_PORT, ALWAYS)
    yield leads_to(PUMP_DRY, NO_OIL_AT_OPEN_PORT, MOSTLY)
    yield leads_to(PRESSURE_GONE, NO_OIL_AT_OPEN_PORT, MOSTLY)


# ------------------------------------------------------------------------------------ what follows


@rule(
    source=TEL,
    catches=[
        case_of(GAUGE_READS_LOW, lacks=[DIRECT_GAUGE_LOW]),
        case_of(GAUGE_READS_ZERO, lacks=[DIRECT_GAUGE_LOW]),
        case_of(LAMP_COMES_ON, lacks=[DIRECT_GAUGE_LOW]),
    ],
    spares=[
        case_of(GAUGE_READS_LOW, DIRECT_GAUGE_LOW),
        case_of(lacks=[DIRECT_GAUGE_LOW]),
    ],
)
def trusted_gauge_right_panel_low(known: Known) -> Conclusions:
    """A trusted gauge reads right while panel or lamp shows low: the panel is contradicted.

    Misleads when the two were not read at the same speed and heat.
    """
    if known.lacks(DIRECT_GAUGE_LOW) and known.has(GAUGE_READS_LOW):
        yield is_present(SECOND_INSTRUMENT_DISAGREES, sure=0.9)
    if known.lacks(DIRECT_GAUGE_LOW) and known.has(GAUGE_READS_ZERO):
        yield is_present(SECOND_INSTRUMENT_DISAGREES, sure=0.95)
    if known.lacks(DIRECT_GAUGE_LOW) and known.has(LAMP_COMES_ON):
        yield is_present(SECOND_INSTRUMENT_DISAGREES, sure=0.8)


@rule(
    source=CP,
    catches=[case_of(GAUGE_READS_ZERO, lacks=[LAMP_COMES_ON, LAMP_DEAD_WITH_KEY_ON])],
    spares=[
        case_of(GAUGE_READS_ZERO, LAMP_DEAD_WITH_KEY_ON, lacks=[LAMP_COMES_ON]),
        case_of(GAUGE_READS_ZERO, LAMP_COMES_ON, lacks=[LAMP_DEAD_WITH_KEY_ON]),
    ],
)
def live_lamp_stays_out_at_zero(known: Known) -> Conclusions:
    """A lamp that lights with the key and stays out while the gauge shows zero contradicts it.

    Misleads when the switch is stuck open: the lamp is alive but its switch is not.
    """
    if (
        known.has(GAUGE_READS_ZERO)
        and known.lacks(LAMP_COMES_ON)
        and known.lacks(LAMP_DEAD_WITH_KEY_ON)
    ):
        yield is_present(SECOND_INSTRUMENT_DISAGREES, sure=0.9)


@rule(
    source=CP,
    catches=[case_of(lacks=[DIRECT_GAUGE_LOW])],
    spares=[case_of(DIRECT_GAUGE_LOW)],
)
def right_is_not_nothing(known: Known) -> Conclusions:
    """A trusted gauge that reads right does not read zero."""
    if known.lacks(DIRECT_GAUGE_LOW):
        yield is_absent(DIRECT_GAUGE_ZERO)


@rule(
    source=CTG,
    catches=[case_of(lacks=[NEEDLE_IGNORES_LEAD_TEST])],
    spares=[case_of(NEEDLE_IGNORES_LEAD_TEST)],
)
def needle_swings_end_to_end(known: Known) -> Conclusions:
    """A needle that swings end to end with the sender's lead clears fuse and wire.

    It proves the gauge alive, not its scale. Misleads when the fault comes and goes.
    """
    if known.lacks(NEEDLE_IGNORES_LEAD_TEST):
        yield is_absent(FUSE_BLOWN)
        yield is_absent(WIRE_OPEN_OR_SHORTED, sure=0.9)


@rule(
    source=TWO_CP,
    catches=[case_of(NEW_SENDER_CURED_IT), case_of(NEW_SENDER_NO_DIFFERENCE)],
    spares=[case_of(lacks=[NEW_SENDER_CURED_IT, NEW_SENDER_NO_DIFFERENCE])],
)
def cured_or_not_cured(known: Known) -> Conclusions:
    """A new sender either put the reading right or it did not."""
    if known.has(NEW_SENDER_CURED_IT):
        yield is_absent(NEW_SENDER_NO_DIFFERENCE)
    if known.has(NEW_SENDER_NO_DIFFERENCE):
        yield is_absent(NEW_SENDER_CURED_IT)


@rule(
    source=CP,
    catches=[case_of(LAMP_ONLY)],
    spares=[case_of(ELECTRIC_GAUGE), case_of(lacks=[LAMP_ONLY])],
)
def no_gauge_beside_the_lamp(known: Known) -> Conclusions:
    """A lamp and no gauge means neither an electric gauge nor an oil line to one."""
    if known.has(LAMP_ONLY):
        yield is_absent(ELECTRIC_GAUGE)
        yield is_absent(DIRECT_GAUGE)


# ----------------------------------------------------------------------------- what cannot be both


@rule(
    source=CP,
    catches=[case_of(DIRECT_GAUGE_ZERO, lacks=[DIRECT_GAUGE_LOW])],
    spares=[case_of(DIRECT_GAUGE_ZERO, DIRECT_GAUGE_LOW), case_of(lacks=[DIRECT_GAUGE_LOW])],
)
def zero_and_right_at_once(known: Known) -> Conclusions:
    """A trusted gauge cannot read right and read zero."""
    if known.has(DIRECT_GAUGE_ZERO) and known.lacks(DIRECT_GAUGE_LOW):
        yield Contradiction(
            (DIRECT_GAUGE_ZERO, DIRECT_GAUGE_LOW),
            "the trusted gauge is said to read right and to read zero: which reading, at what "
            "speed and heat?",
            DIRECT_GAUGE_ZERO,
        )


@rule(
    source=CP,
    catches=[case_of(DIRECT_GAUGE_ZERO, lacks=[NO_OIL_AT_OPEN_PORT])],
    spares=[case_of(DIRECT_GAUGE_ZERO, NO_OIL_AT_OPEN_PORT)],
)
def oil_from_a_port_that_reads_zero(known: Known) -> Conclusions:
    """Oil comes strongly from a port at which a trusted gauge reads zero: look at gauge and hose."""
    if known.has(DIRECT_GAUGE_ZERO) and known.lacks(NO_OIL_AT_OPEN_PORT):
        yield Contradiction(
            (DIRECT_GAUGE_ZERO, NO_OIL_AT_OPEN_PORT),
            "oil comes strongly from the open port, yet the trusted gauge reads zero: look at "
            "gauge, hose and snubber",
            DIRECT_GAUGE_ZERO,
        )


@rule(
    source=CP,
    catches=[case_of(DIRECT_GAUGE_ZERO, ENGINE_RUNS_NORMALLY, HYDRAULIC_LIFTERS)],
    spares=[
        case_of(DIRECT_GAUGE_ZERO, ENGINE_RUNS_NORMALLY, lacks=[HYDRAULIC_LIFTERS]),
        case_of(DIRECT_GAUGE_ZERO, HYDRAULIC_LIFTERS, lacks=[ENGINE_RUNS_NORMALLY]),
    ],
)
def quiet_lifters_at_zero_pressure(known: Known) -> Conclusions:
    """Hydraulic lifters do not stay quiet for long at no pressure: prove gauge and port again.

    Misleads when the engine was stopped within seconds.
    """
    if (
        known.has(DIRECT_GAUGE_ZERO)
        and known.has(ENGINE_RUNS_NORMALLY)
        and known.has(HYDRAULIC_LIFTERS)
    ):
        yield Contradiction(
            (DIRECT_GAUGE_ZERO, ENGINE_RUNS_NORMALLY),
            "no pressure on a trusted gauge, yet hydraulic lifters and engine as always: prove "
            "gauge, hose and port, or say how long it ran",
            DIRECT_GAUGE_ZERO,
        )


@rule(
    source=CP,
    catches=[case_of(DIRECT_GAUGE_LOW, TEST_GAUGE_DOUBTFUL)],
    spares=[case_of(DIRECT_GAUGE_LOW, lacks=[TEST_GAUGE_DOUBTFUL])],
)
def doubtful_test_gauge(known: Known) -> Conclusions:
    """A test gauge that disagrees with a second one proves nothing about the engine."""
    if known.has(DIRECT_GAUGE_LOW) and known.has(TEST_GAUGE_DOUBTFUL):
        yield Contradiction(
            (DIRECT_GAUGE_LOW, TEST_GAUGE_DOUBTFUL),
            "the low reading was taken with a gauge that a second one contradicts: read again "
            "with a proved gauge",
            DIRECT_GAUGE_LOW,
        )


@rule(
    source=CP,
    catches=[case_of(NEW_SENDER_CURED_IT, NEW_SENDER_NO_DIFFERENCE)],
    spares=[case_of(NEW_SENDER_CURED_IT), case_of(NEW_SENDER_NO_DIFFERENCE)],
)
def sender_cured_and_did_not(known: Known) -> Conclusions:
    """A new sender cannot have cured it and made no difference."""
    if known.has(NEW_SENDER_CURED_IT) and known.has(NEW_SENDER_NO_DIFFERENCE):
        yield Contradiction(
            (NEW_SENDER_CURED_IT, NEW_SENDER_NO_DIFFERENCE),
            "a new sender is said to have cured it and to have made no difference: which holds now?",
            NEW_SENDER_CURED_IT,
        )

"""Rules on what the tests of the instrument prove."""

from knowledge import sources
from knowledge.alarm import Contradiction
from knowledge.engines import features
from knowledge.model import Station
from knowledge.pressure import course, direct_gauge, patterns
from knowledge.rule_api import Conclusions, Known, example, is_absent, is_present, rules_of
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import (
    findings,
    findings_direct_gauge,
    findings_electrical,
    findings_port,
)

rule = rules_of(Station.INSTRUMENT)


@rule(
    source=sources.GAUGE_MAKER_SENDERS,
    matches=[
        example(patterns.GAUGE_READS_LOW, lacks=[direct_gauge.DIRECT_GAUGE_LOW]),
        example(patterns.GAUGE_READS_ZERO, lacks=[direct_gauge.DIRECT_GAUGE_LOW]),
        example(patterns.LAMP_COMES_ON, lacks=[direct_gauge.DIRECT_GAUGE_LOW]),
        example(course.PROTECTION_TRIPPED, lacks=[direct_gauge.DIRECT_GAUGE_LOW]),
    ],
    non_matches=[
        example(patterns.GAUGE_READS_LOW, direct_gauge.DIRECT_GAUGE_LOW),
        example(course.PROTECTION_TRIPPED, direct_gauge.DIRECT_GAUGE_LOW),
        example(lacks=[direct_gauge.DIRECT_GAUGE_LOW]),
    ],
)
def trusted_gauge_right_panel_low(known: Known) -> Conclusions:
    """A trusted gauge reads right while panel, lamp or cut-out says low: these are wrong.

    Misleads when the two were not read at the same speed and heat.
    """
    if known.lacks(direct_gauge.DIRECT_GAUGE_LOW) and known.has(patterns.GAUGE_READS_LOW):
        yield is_present(patterns.SECOND_INSTRUMENT_DISAGREES, sure=0.9)
    if known.lacks(direct_gauge.DIRECT_GAUGE_LOW) and known.has(patterns.GAUGE_READS_ZERO):
        yield is_present(patterns.SECOND_INSTRUMENT_DISAGREES, sure=0.95)
    if known.lacks(direct_gauge.DIRECT_GAUGE_LOW) and known.has(patterns.LAMP_COMES_ON):
        yield is_present(patterns.SECOND_INSTRUMENT_DISAGREES, sure=0.8)
    if known.lacks(direct_gauge.DIRECT_GAUGE_LOW) and known.has(course.PROTECTION_TRIPPED):
        yield is_present(patterns.SECOND_INSTRUMENT_DISAGREES, sure=0.8)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            patterns.GAUGE_READS_ZERO,
            lacks=[patterns.LAMP_COMES_ON, findings.LAMP_DEAD_WITH_KEY_ON],
        )
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_ZERO,
            findings.LAMP_DEAD_WITH_KEY_ON,
            lacks=[patterns.LAMP_COMES_ON],
        ),
        example(
            patterns.GAUGE_READS_ZERO,
            patterns.LAMP_COMES_ON,
            lacks=[findings.LAMP_DEAD_WITH_KEY_ON],
        ),
    ],
)
def live_lamp_stays_out_at_zero(known: Known) -> Conclusions:
    """A good lamp that stays out while the gauge shows zero contradicts the gauge.

    Misleads when the switch is stuck open: the lamp is alive but its switch is not.
    """
    if (
        known.has(patterns.GAUGE_READS_ZERO)
        and known.lacks(patterns.LAMP_COMES_ON)
        and known.lacks(findings.LAMP_DEAD_WITH_KEY_ON)
    ):
        yield is_present(patterns.SECOND_INSTRUMENT_DISAGREES, sure=0.9)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[direct_gauge.DIRECT_GAUGE_LOW])],
    non_matches=[example(direct_gauge.DIRECT_GAUGE_LOW)],
)
def right_is_not_nothing(known: Known) -> Conclusions:
    """A trusted gauge that reads right does not read zero."""
    if known.lacks(direct_gauge.DIRECT_GAUGE_LOW):
        yield is_absent(direct_gauge.DIRECT_GAUGE_ZERO)


@rule(
    source=sources.NEWSPAPER_JUMPY_GAUGE_2013,
    matches=[example(lacks=[findings_electrical.NEEDLE_IGNORES_LEAD_TEST])],
    non_matches=[example(findings_electrical.NEEDLE_IGNORES_LEAD_TEST)],
)
def needle_swings_end_to_end(known: Known) -> Conclusions:
    """A needle that swings end to end with the sender's lead clears fuse and wire.

    It proves the gauge alive, not its scale. Misleads when the fault comes and goes.
    """
    if known.lacks(findings_electrical.NEEDLE_IGNORES_LEAD_TEST):
        yield is_absent(findings_electrical.FUSE_BLOWN)
        yield is_absent(findings_electrical.WIRE_OPEN_OR_SHORTED, sure=0.9)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.LAMP_ONLY)],
    non_matches=[example(features.ELECTRIC_GAUGE), example(lacks=[features.LAMP_ONLY])],
)
def no_gauge_beside_the_lamp(known: Known) -> Conclusions:
    """With only a lamp, there is no electric gauge and no oil line to a gauge."""
    if known.has(features.LAMP_ONLY):
        yield is_absent(features.ELECTRIC_GAUGE)
        yield is_absent(features.DIRECT_GAUGE)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(direct_gauge.DIRECT_GAUGE_ZERO, lacks=[direct_gauge.DIRECT_GAUGE_LOW])],
    non_matches=[
        example(direct_gauge.DIRECT_GAUGE_ZERO, direct_gauge.DIRECT_GAUGE_LOW),
        example(lacks=[direct_gauge.DIRECT_GAUGE_LOW]),
    ],
)
def zero_and_right_at_once(known: Known) -> Conclusions:
    """A trusted gauge cannot read right and read zero."""
    if known.has(direct_gauge.DIRECT_GAUGE_ZERO) and known.lacks(direct_gauge.DIRECT_GAUGE_LOW):
        yield Contradiction(
            (direct_gauge.DIRECT_GAUGE_ZERO, direct_gauge.DIRECT_GAUGE_LOW),
            "the trusted gauge is recorded as reading right and as reading zero: which reading, at "
            "what speed and temperature?",
            direct_gauge.DIRECT_GAUGE_ZERO,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(direct_gauge.DIRECT_GAUGE_ZERO, lacks=[findings_port.NO_OIL_AT_OPEN_PORT])],
    non_matches=[example(direct_gauge.DIRECT_GAUGE_ZERO, findings_port.NO_OIL_AT_OPEN_PORT)],
)
def oil_from_a_port_that_reads_zero(known: Known) -> Conclusions:
    """Oil comes strongly from a port where a trusted gauge reads zero: check gauge and hose."""
    if known.has(direct_gauge.DIRECT_GAUGE_ZERO) and known.lacks(findings_port.NO_OIL_AT_OPEN_PORT):
        yield Contradiction(
            (direct_gauge.DIRECT_GAUGE_ZERO, findings_port.NO_OIL_AT_OPEN_PORT),
            "oil comes strongly from the open port, yet the trusted gauge reads zero: check gauge, "
            "hose and snubber",
            direct_gauge.DIRECT_GAUGE_ZERO,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            direct_gauge.DIRECT_GAUGE_ZERO,
            patterns.ENGINE_RUNS_NORMALLY,
            features.HYDRAULIC_LIFTERS,
        )
    ],
    non_matches=[
        example(
            direct_gauge.DIRECT_GAUGE_ZERO,
            patterns.ENGINE_RUNS_NORMALLY,
            lacks=[features.HYDRAULIC_LIFTERS],
        ),
        example(
            direct_gauge.DIRECT_GAUGE_ZERO,
            features.HYDRAULIC_LIFTERS,
            lacks=[patterns.ENGINE_RUNS_NORMALLY],
        ),
    ],
)
def quiet_lifters_at_zero_pressure(known: Known) -> Conclusions:
    """Hydraulic lifters do not stay quiet for long without pressure: check gauge and port again.

    Misleads when the engine was stopped within seconds.
    """
    if (
        known.has(direct_gauge.DIRECT_GAUGE_ZERO)
        and known.has(patterns.ENGINE_RUNS_NORMALLY)
        and known.has(features.HYDRAULIC_LIFTERS)
    ):
        yield Contradiction(
            (direct_gauge.DIRECT_GAUGE_ZERO, patterns.ENGINE_RUNS_NORMALLY),
            "no pressure on a trusted gauge, yet quiet hydraulic lifters and a normal engine: check "
            "gauge, hose and port, or note how long it ran",
            direct_gauge.DIRECT_GAUGE_ZERO,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(direct_gauge.DIRECT_GAUGE_LOW, findings_direct_gauge.TEST_GAUGE_DOUBTFUL)],
    non_matches=[
        example(direct_gauge.DIRECT_GAUGE_LOW, lacks=[findings_direct_gauge.TEST_GAUGE_DOUBTFUL])
    ],
)
def doubtful_test_gauge(known: Known) -> Conclusions:
    """A test gauge that disagrees with a second one proves nothing about the engine."""
    if known.has(direct_gauge.DIRECT_GAUGE_LOW) and known.has(
        findings_direct_gauge.TEST_GAUGE_DOUBTFUL
    ):
        yield Contradiction(
            (direct_gauge.DIRECT_GAUGE_LOW, findings_direct_gauge.TEST_GAUGE_DOUBTFUL),
            "the low reading was taken with a gauge that a second one contradicts: read again with a "
            "gauge you have checked",
            direct_gauge.DIRECT_GAUGE_LOW,
        )

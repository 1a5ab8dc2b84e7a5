"""Rules on measurements that need no dismantling, against their limits."""

from knowledge import sources
from knowledge.judging import beyond_limit, over, under
from knowledge.model import Station
from knowledge.pressure import behaviour, direct_gauge
from knowledge.pressure import quantities as pressure_quantities
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.instrument import (
    findings_direct_gauge,
    findings_electrical,
    findings_panel,
    findings_port,
    quantities,
)
from knowledge.units import PSI

rule = rules_of(Station.INSTRUMENT)


@rule(
    source=sources.GAUGE_MAKER_SENDERS,
    matches=[example(measures={findings_electrical.SENDER_RESISTANCE_AT_REST: 400.0})],
    non_matches=[example()],
)
def ohms_at_rest(known: Known) -> Conclusions:
    """Ohms at rest far from the maker's figure (about 240 is usual) mean a bad sender.

    Misleads when the sender is of another range; compare with its data sheet.
    """
    value = known.measured(findings_electrical.SENDER_RESISTANCE_AT_REST)
    if value is not None:
        rest = known.limit(quantities.USUAL_SENDER_OHMS)
        yield over(
            findings_electrical.SENDER_OHMS_HIGH,
            findings_electrical.SENDER_RESISTANCE_AT_REST,
            value,
            1.15 * rest,
        )
        yield under(
            findings_electrical.SENDER_OHMS_LOW,
            findings_electrical.SENDER_RESISTANCE_AT_REST,
            value,
            0.85 * rest,
        )


@rule(
    source=sources.GAUGE_MAKER_SENDERS,
    matches=[example(measures={findings_electrical.SENDER_GROUND_RESISTANCE: 5.0})],
    non_matches=[example()],
)
def ohms_to_ground(known: Known) -> Conclusions:
    """More than about an ohm between sender body and battery negative makes a gauge read wrong."""
    yield from beyond_limit(
        known,
        findings_electrical.SENDER_GROUND_POOR,
        findings_electrical.SENDER_GROUND_RESISTANCE,
        quantities.MOST_GROUND_OHMS,
    )


@rule(
    source=sources.SMALL_ENGINE_MANUAL,
    matches=[example(measures={findings_port.SWITCH_PRESSURE: 15 * PSI})],
    non_matches=[example()],
)
def pressure_the_switch_opens_at(known: Known) -> Conclusions:
    """A switch that opens well above its figure lights the lamp at a sound idle pressure."""
    yield from beyond_limit(
        known,
        findings_port.SWITCH_OPENS_WRONG,
        findings_port.SWITCH_PRESSURE,
        quantities.SWITCH_OPENS_BY,
    )


@rule(
    source=sources.PRESSURE_TEST_MANUAL_2005,
    matches=[example(measures={findings_panel.IDLE_SPEED_COUNTED: 450.0})],
    non_matches=[example()],
)
def revs_counted_at_idle(known: Known) -> Conclusions:
    """Idle speed by a trusted counter, compared with the maker's figure."""
    value = known.smallest(findings_panel.IDLE_SPEED_COUNTED)
    if value is not None:
        limit = 0.93 * known.limit(pressure_quantities.USUAL_IDLE_SPEED)
        yield under(direct_gauge.IDLE_BELOW_SPEC, findings_panel.IDLE_SPEED_COUNTED, value, limit)


@rule(
    source=idea_from(sources.FILTER_MAKER_VALVES),
    matches=[
        example(measures={findings_direct_gauge.BUILD_UP_TIME: 4.0}),
        example(measures={findings_direct_gauge.BUILD_UP_TIME: 12.0}),
    ],
    non_matches=[example()],
)
def seconds_to_build(known: Known) -> Conclusions:
    """Three seconds to build pressure: oil drained back; ten: air, a dry pump or its drive."""
    value = known.measured(findings_direct_gauge.BUILD_UP_TIME)
    if value is not None:
        yield over(behaviour.SLOW_AFTER_STANDING, findings_direct_gauge.BUILD_UP_TIME, value, 3.0)
        yield over(behaviour.TEN_SECONDS_OR_MORE, findings_direct_gauge.BUILD_UP_TIME, value, 10.0)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(measures={findings_panel.DECAY_TIME: 20.0})],
    non_matches=[example()],
)
def seconds_to_fall(known: Known) -> Conclusions:
    """A gauge that stays up for more than about five seconds after stopping is damped or stuck."""
    value = known.measured(findings_panel.DECAY_TIME)
    if value is not None:
        yield over(behaviour.SLOW_NEEDLE, findings_panel.DECAY_TIME, value, 5.0)

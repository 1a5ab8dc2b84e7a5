"""Rules on measurements that need no dismantling, against their limits."""

from knowledge import sources
from knowledge.engines import features
from knowledge.judging import beyond_limit, over, under
from knowledge.model import Station
from knowledge.pressure import behaviour, direct_gauge
from knowledge.pressure import quantities as pressure_quantities
from knowledge.rule_api import Conclusions, Known, example, is_present, rules_of
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.instrument import (
    findings_direct_gauge,
    findings_electrical,
    findings_panel,
    findings_port,
    findings_sender,
    quantities,
)
from knowledge.units import PSI

rule = rules_of(Station.INSTRUMENT)
#: ohms at rest of senders that rise with pressure, from about 10 to 180 (from memory of the trade)
RISES_FROM = (8.0, 15.0)


@rule(
    source=sources.GAUGE_MAKER_SENDERS,
    matches=[
        example(measures={findings_electrical.SENDER_RESISTANCE_AT_REST: 400.0}),
        example(measures={findings_electrical.SENDER_RESISTANCE_AT_REST: 33.0}),
        example(
            lacks=[features.ONE_SENDER_FOR_TWO_GAUGES],
            measures={findings_electrical.SENDER_RESISTANCE_AT_REST: 120.0},
        ),
    ],
    non_matches=[example()],
)
def ohms_at_rest(known: Known) -> Conclusions:
    """Ohms at rest far from the maker's figure (about 240 is usual) mean a bad sender.

    Half of it is right for a sender made for two gauges, and about 10 ohm for a type that rises
    with pressure. Misleads when the sender is of another range; compare with its data sheet.
    """
    value = known.measured(findings_electrical.SENDER_RESISTANCE_AT_REST)
    if value is None:
        return
    rest = known.limit(quantities.USUAL_SENDER_OHMS)
    high, low = findings_electrical.SENDER_OHMS_HIGH, findings_electrical.SENDER_OHMS_LOW
    measure = findings_electrical.SENDER_RESISTANCE_AT_REST
    yield over(high, measure, value, 1.15 * rest)
    if RISES_FROM[0] <= value <= RISES_FROM[1]:
        return
    if value < 0.85 * rest / 2 or known.lacks(features.ONE_SENDER_FOR_TWO_GAUGES):
        yield under(low, measure, value, 0.85 * rest)


@rule(
    source=sources.GAUGE_MAKER_SENDERS,
    matches=[
        example(
            features.ONE_SENDER_FOR_TWO_GAUGES,
            measures={findings_electrical.SENDER_RESISTANCE_AT_REST: 240.0},
        )
    ],
    non_matches=[
        example(measures={findings_electrical.SENDER_RESISTANCE_AT_REST: 240.0}),
        example(
            features.ONE_SENDER_FOR_TWO_GAUGES,
            measures={findings_electrical.SENDER_RESISTANCE_AT_REST: 120.0},
        ),
    ],
)
def sender_for_one_gauge_feeds_two(known: Known) -> Conclusions:
    """Two gauges on one sender need one of half the ohms; with the usual one both read low."""
    value = known.measured(findings_electrical.SENDER_RESISTANCE_AT_REST)
    single = 0.85 * known.limit(quantities.USUAL_SENDER_OHMS)
    if known.has(features.ONE_SENDER_FOR_TWO_GAUGES) and value is not None and value > single:
        yield is_present(findings_sender.SENDER_NOT_FOR_GAUGE, sure=0.9)


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
        limit = 0.93 * min(known.limit_figures(pressure_quantities.USUAL_IDLE_SPEED))
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

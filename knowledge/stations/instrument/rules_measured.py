"""Rules on measurements that need no dismantling, against their limits."""

from knowledge import sources
from knowledge.engines import limits
from knowledge.judging import sure_beyond
from knowledge.model import Finding, Measure, Station
from knowledge.pressure import behaviour, direct_gauge
from knowledge.rule_api import Conclusions, Derived, Known, example, is_absent, is_present, rules_of
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import (
    findings_direct_gauge,
    findings_electrical,
    findings_panel,
    findings_port,
)
from knowledge.stations.oil import findings_analysis as oil_analysis
from knowledge.stations.oil import findings_heat as oil_heat
from knowledge.units import PSI

rule = rules_of(Station.INSTRUMENT)
oil_rule = rules_of(Station.OIL)


def beyond(finding: Finding, measure: Measure, value: float, limit: float) -> Derived:
    """The finding present or absent, as surely as the measuring error allows."""
    sure = sure_beyond(value, limit, measure.spread)
    return is_present(finding, sure) if sure >= 0.5 else is_absent(finding, 1.0 - sure)


def below(finding: Finding, measure: Measure, value: float, limit: float) -> Derived:
    """The same for a value that must not fall below its limit."""
    return beyond(finding, measure, -value, -limit)


@rule(
    source=sources.GAUGE_MAKER_SENDERS,
    matches=[example(measures={findings_electrical.SENDER_RESISTANCE_AT_REST: 400.0})],
    non_matches=[example()],
)
def ohms_at_rest(known: Known) -> Conclusions:
    """A sender's ohms at rest far from its maker's figure (about 240 is usual) tell a bad sender.

    Misleads when the sender is of another range; compare with its data sheet.
    """
    value = known.measured(findings_electrical.SENDER_RESISTANCE_AT_REST)
    if value is not None:
        rest = known.limit(limits.SENDER_OHMS_AT_REST)
        yield beyond(
            findings_electrical.SENDER_OHMS_HIGH,
            findings_electrical.SENDER_RESISTANCE_AT_REST,
            value,
            1.15 * rest,
        )
        yield below(
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
    """More than about an ohm between sender case and battery negative makes a gauge read wrong."""
    value = known.measured(findings_electrical.SENDER_GROUND_RESISTANCE)
    if value is not None:
        limit = known.limit(limits.SENDER_GROUND_OHMS)
        yield beyond(
            findings_electrical.SENDER_GROUND_POOR,
            findings_electrical.SENDER_GROUND_RESISTANCE,
            value,
            limit,
        )


@rule(
    source=sources.SMALL_ENGINE_MANUAL,
    matches=[example(measures={findings_port.SWITCH_PRESSURE: 15 * PSI})],
    non_matches=[example()],
)
def pressure_the_switch_opens_at(known: Known) -> Conclusions:
    """A switch that opens well above its figure lights the lamp at a sound idle."""
    value = known.measured(findings_port.SWITCH_PRESSURE)
    if value is not None:
        limit = known.limit(limits.SWITCH_OPENS_AT)
        yield beyond(findings_port.SWITCH_OPENS_WRONG, findings_port.SWITCH_PRESSURE, value, limit)


@rule(
    source=sources.PRESSURE_TEST_MANUAL_2005,
    matches=[example(measures={findings_panel.IDLE_SPEED_COUNTED: 450.0})],
    non_matches=[example()],
)
def revs_counted_at_idle(known: Known) -> Conclusions:
    """Idle speed by a trusted counter, against the maker's figure."""
    value = known.smallest(findings_panel.IDLE_SPEED_COUNTED)
    if value is not None:
        limit = 0.93 * known.limit(limits.IDLE_SPEED)
        yield below(direct_gauge.IDLE_BELOW_SPEC, findings_panel.IDLE_SPEED_COUNTED, value, limit)


@rule(
    source=sources.FILTER_MAKER_VALVES,
    matches=[
        example(measures={findings_direct_gauge.BUILD_UP_TIME: 4.0}),
        example(measures={findings_direct_gauge.BUILD_UP_TIME: 12.0}),
    ],
    non_matches=[example()],
)
def seconds_to_build(known: Known) -> Conclusions:
    """Three seconds to build tell of oil that ran back; ten tell of air, a dry pump or its drive."""
    value = known.measured(findings_direct_gauge.BUILD_UP_TIME)
    if value is not None:
        yield beyond(behaviour.SLOW_AFTER_STANDING, findings_direct_gauge.BUILD_UP_TIME, value, 3.0)
        yield beyond(
            behaviour.TEN_SECONDS_OR_MORE, findings_direct_gauge.BUILD_UP_TIME, value, 10.0
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(measures={findings_panel.DECAY_TIME: 20.0})],
    non_matches=[example()],
)
def seconds_to_fall(known: Known) -> Conclusions:
    """A gauge that stays up for more than about five seconds after stopping is damped or stuck."""
    value = known.measured(findings_panel.DECAY_TIME)
    if value is not None:
        yield beyond(behaviour.SLOW_NEEDLE, findings_panel.DECAY_TIME, value, 5.0)


@oil_rule(
    source=sources.LABORATORY_FUEL,
    matches=[example(measures={oil_analysis.FUEL_SHARE: 0.08})],
    non_matches=[example()],
)
def share_of_fuel(known: Known) -> Conclusions:
    """More than four per cent of fuel in the oil calls for action at once."""
    value = known.measured(oil_analysis.FUEL_SHARE)
    if value is not None:
        yield beyond(
            oil_analysis.LAB_FUEL_HIGH,
            oil_analysis.FUEL_SHARE,
            value,
            known.limit(limits.FUEL_SHARE),
        )


@oil_rule(
    source=sources.ARMY_TM_272_TABLE,
    matches=[example(measures={oil_heat.OIL_HEAT: 400.0})],
    non_matches=[example()],
)
def heat_of_the_oil(known: Known) -> Conclusions:
    """Oil past about 121 degrees is too hot; oil near freezing is thick whatever its grade."""
    hottest, coldest = known.measured(oil_heat.OIL_HEAT), known.smallest(oil_heat.OIL_HEAT)
    if hottest is not None and coldest is not None:
        limit = known.limit(limits.OIL_TEMPERATURE)
        yield beyond(oil_heat.OIL_TEMPERATURE_HIGH, oil_heat.OIL_HEAT, hottest, limit)
        yield below(oil_heat.OIL_VERY_COLD, oil_heat.OIL_HEAT, coldest, 278.0)

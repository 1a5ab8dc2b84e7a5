"""Measured values that need no dismantling, put into findings against their limits."""

from knowledge.findings.behaviour import (
    IDLE_BELOW_SPEC,
    SLOW_AFTER_STANDING,
    SLOW_NEEDLE,
    TEN_SECONDS_OR_MORE,
)
from knowledge.findings.instrument_bench import (
    BUILD_UP_TIME,
    DECAY_TIME,
    IDLE_SPEED_COUNTED,
    SENDER_GROUND_POOR,
    SENDER_GROUND_RESISTANCE,
    SENDER_OHMS_HIGH,
    SENDER_OHMS_LOW,
    SENDER_RESISTANCE_AT_REST,
    SWITCH_OPENS_WRONG,
    SWITCH_PRESSURE,
)
from knowledge.findings.oil_analysis import FUEL_SHARE, LAB_FUEL_HIGH
from knowledge.findings.oil_heat import OIL_HEAT, OIL_TEMPERATURE_HIGH, OIL_VERY_COLD
from knowledge.reference import limits
from knowledge.reference.judging import sure_beyond
from knowledge.rulebook import (
    Conclusions,
    Derived,
    Known,
    case_of,
    is_absent,
    is_present,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import FLV, HB02, HB06, HB10, LCF, TEL
from knowledge.units import PSI
from knowledge.vocabulary import Finding, Measure, Station

instrument = rules_of(Station.INSTRUMENT)
oil = rules_of(Station.OIL)


def beyond(finding: Finding, measure: Measure, value: float, limit: float) -> Derived:
    """The finding present or absent, as surely as the measuring error allows."""
    sure = sure_beyond(value, limit, measure.spread)
    return is_present(finding, sure) if sure >= 0.5 else is_absent(finding, 1.0 - sure)


def below(finding: Finding, measure: Measure, value: float, limit: float) -> Derived:
    """The same for a value that must not fall below its limit."""
    return beyond(finding, measure, -value, -limit)


@instrument(
    source=TEL,
    catches=[case_of(measures={SENDER_RESISTANCE_AT_REST: 400.0})],
    spares=[case_of()],
)
def ohms_at_rest(known: Known) -> Conclusions:
    """A sender's ohms at rest far from its maker's figure (about 240 is usual) tell a bad sender.

    Misleads when the sender is of another range; compare with its data sheet.
    """
    value = known.measured(SENDER_RESISTANCE_AT_REST)
    if value is not None:
        rest = known.limit(limits.SENDER_OHMS_AT_REST)
        yield beyond(SENDER_OHMS_HIGH, SENDER_RESISTANCE_AT_REST, value, 1.15 * rest)
        yield below(SENDER_OHMS_LOW, SENDER_RESISTANCE_AT_REST, value, 0.85 * rest)


@instrument(
    source=TEL,
    catches=[case_of(measures={SENDER_GROUND_RESISTANCE: 5.0})],
    spares=[case_of()],
)
def ohms_to_ground(known: Known) -> Conclusions:
    """More than about an ohm between sender case and battery negative makes a gauge read wrong."""
    value = known.measured(SENDER_GROUND_RESISTANCE)
    if value is not None:
        limit = known.limit(limits.SENDER_GROUND_OHMS)
        yield beyond(SENDER_GROUND_POOR, SENDER_GROUND_RESISTANCE, value, limit)


@instrument(
    source=HB10,
    catches=[case_of(measures={SWITCH_PRESSURE: 15 * PSI})],
    spares=[case_of()],
)
def pressure_the_switch_opens_at(known: Known) -> Conclusions:
    """A switch that opens well above its figure lights the lamp at a sound idle."""
    value = known.measured(SWITCH_PRESSURE)
    if value is not None:
        limit = known.limit(limits.SWITCH_OPENS_AT)
        yield beyond(SWITCH_OPENS_WRONG, SWITCH_PRESSURE, value, limit)


@instrument(
    source=HB06,
    catches=[case_of(measures={IDLE_SPEED_COUNTED: 450.0})],
    spares=[case_of()],
)
def revs_counted_at_idle(known: Known) -> Conclusions:
    """Idle speed by a trusted counter, against the maker's figure."""
    value = known.smallest(IDLE_SPEED_COUNTED)
    if value is not None:
        limit = 0.93 * known.limit(limits.IDLE_SPEED)
        yield below(IDLE_BELOW_SPEC, IDLE_SPEED_COUNTED, value, limit)


@instrument(
    source=FLV,
    catches=[case_of(measures={BUILD_UP_TIME: 4.0}), case_of(measures={BUILD_UP_TIME: 12.0})],
    spares=[case_of()],
)
def seconds_to_build(known: Known) -> Conclusions:
    """Three seconds to build tell of oil that ran back; ten tell of air, a dry pump or its drive."""
    value = known.measured(BUILD_UP_TIME)
    if value is not None:
        yield beyond(SLOW_AFTER_STANDING, BUILD_UP_TIME, value, 3.0)
        yield beyond(TEN_SECONDS_OR_MORE, BUILD_UP_TIME, value, 10.0)


@instrument(source=CP, catches=[case_of(measures={DECAY_TIME: 20.0})], spares=[case_of()])
def seconds_to_fall(known: Known) -> Conclusions:
    """A gauge that stays up for more than about five seconds after stopping is damped or stuck."""
    value = known.measured(DECAY_TIME)
    if value is not None:
        yield beyond(SLOW_NEEDLE, DECAY_TIME, value, 5.0)


@oil(source=LCF, catches=[case_of(measures={FUEL_SHARE: 0.08})], spares=[case_of()])
def share_of_fuel(known: Known) -> Conclusions:
    """More than four per cent of fuel in the oil calls for action at once."""
    value = known.measured(FUEL_SHARE)
    if value is not None:
        yield beyond(LAB_FUEL_HIGH, FUEL_SHARE, value, known.limit(limits.FUEL_SHARE))


@oil(source=HB02, catches=[case_of(measures={OIL_HEAT: 400.0})], spares=[case_of()])
def heat_of_the_oil(known: Known) -> Conclusions:
    """Oil past about 121 degrees is too hot; oil near freezing is thick whatever its grade."""
    hottest, coldest = known.measured(OIL_HEAT), known.smallest(OIL_HEAT)
    if hottest is not None and coldest is not None:
        limit = known.limit(limits.OIL_TEMPERATURE)
        yield beyond(OIL_TEMPERATURE_HIGH, OIL_HEAT, hottest, limit)
        yield below(OIL_VERY_COLD, OIL_HEAT, coldest, 278.0)

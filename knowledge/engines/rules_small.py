"""What an engine without an oil pump cannot have, and what its low-oil switch acts on."""

from collections.abc import Sequence

from knowledge import sources
from knowledge.alarm import Alarm, Contradiction
from knowledge.engines import features_build, features_kinds
from knowledge.engines.features_kinds import UNPRESSURED, has_no_pressure
from knowledge.model import Cause, Finding, Severity, Station
from knowledge.pressure import course, direct_gauge, patterns
from knowledge.rule_api import (
    Conclusions,
    Example,
    Known,
    cannot_be,
    example,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes_left_out
from knowledge.stations.causes import CAUSES
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_feed
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.suction import causes_tap as suction_causes_tap

rule = rules_of(Station.ASSEMBLY)
#: stations that only oil under pressure passes
PRESSURE_FED = (Station.PUMP, Station.RELIEF, Station.DELIVERY, Station.SUCTION, Station.TOPEND)
#: of these stations, what leaves the oil out of a dipper's reach as well
STILL: tuple[Cause, ...] = (suction_causes_sump.ATTITUDE_UNCOVERS_PICKUP,)
#: of these stations, what stops the feed of an oil injection pump
ON_THE_WAY_TO_AN_INJECTION_PUMP = (
    suction_causes.SUCTION_JOINT_AIR_LEAK,
    suction_causes_tap.OIL_TAP_SHUT,
    suction_causes_sump.SUCTION_HOSE_COLLAPSED,
    pump_causes_fitted.PUMP_NOT_PRIMED,
    pump_causes_drive.PUMP_DRIVE_BROKEN,
    pump_causes.PUMP_GEAR_WEAR,
)
#: stations that are of oil in a sump, and of its gauge
OF_A_SUMP = (Station.OIL, Station.LEAKS, Station.INSTRUMENT)
#: of these, what holds of drips, cups and oil injection as well
NOT_OF_A_SUMP = (
    causes_feed.OWN_FEED_STOPPED,
    oil_causes.VISCOSITY_TOO_LOW,
    oil_causes.VISCOSITY_TOO_HIGH,
    oil_causes_condition.OIL_DEGRADED,
    leaks_causes.OIL_LINE_LEAK,
    instrument_causes.SENDER_FAULTY,
    instrument_causes.WIRING_GROUND_FAULT,
)
PRESSURES = (
    patterns.GAUGE_READS_ZERO,
    patterns.GAUGE_READS_LOW,
    patterns.GAUGE_READS_HIGH,
    direct_gauge.DIRECT_GAUGE_LOW,
    direct_gauge.DIRECT_GAUGE_HIGH,
)


def _example(*has: Finding, lacks: Sequence[Finding] = ()) -> Example:
    """An engine that is known to have no trough pump."""
    return example(*has, lacks=[*lacks, features_kinds.TROUGH_FED])


@rule(
    source=sources.SMALL_ENGINE_SPLASH,
    matches=[
        _example(features_build.SPLASH_LUBRICATED),
        _example(features_kinds.DRIP_OILED),
        _example(features_kinds.OIL_BURNT_WITH_FUEL),
    ],
    non_matches=[
        _example(lacks=[features_build.SPLASH_LUBRICATED]),
        example(features_build.SPLASH_LUBRICATED, features_kinds.TROUGH_FED),
        example(),
    ],
)
def splashed_engine_has_no_pump(known: Known) -> Conclusions:
    """An engine lubricated by splash has no pump, valve or gallery: level and slope are what counts.

    Nor has one with drip oilers, or one that burns its oil but for its injection pump.
    """
    if has_no_pressure(known):
        still = (*STILL, *ON_THE_WAY_TO_AN_INJECTION_PUMP)
        for cause in CAUSES:
            if cause.station in PRESSURE_FED and cause not in still:
                yield cannot_be(cause)
        yield cannot_be(oil_causes_condition.OIL_HOT_NORMAL)
        yield cannot_be(causes_left_out.PUMP_DRIVE_LEFT_OUT)


@rule(
    source=sources.SMALL_ENGINE_SPLASH,
    matches=[_example(features_build.SPLASH_LUBRICATED), _example(features_kinds.DRIP_OILED)],
    non_matches=[
        _example(features_kinds.OIL_BURNT_WITH_FUEL),
        example(features_build.SPLASH_LUBRICATED, features_kinds.TROUGH_FED),
    ],
)
def splash_has_no_injection_pump(known: Known) -> Conclusions:
    """Dippers and drips draw oil through no line: what stops an injection pump is not there."""
    kinds = (features_build.SPLASH_LUBRICATED, features_kinds.DRIP_OILED)
    if any(known.has(kind) for kind in kinds) and has_no_pressure(known):
        for cause in ON_THE_WAY_TO_AN_INJECTION_PUMP:
            yield cannot_be(cause)
    if known.has(features_build.SPLASH_LUBRICATED) and has_no_pressure(known):
        yield more_common(oil_causes.OIL_LEVEL_LOW)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        _example(features_kinds.DRIP_OILED),
        _example(features_kinds.OIL_BURNT_WITH_FUEL),
    ],
    non_matches=[_example(features_build.SPLASH_LUBRICATED), example()],
)
def no_oil_stands_in_a_sump(known: Known) -> Conclusions:
    """Oil that is dripped, or burnt with the fuel, stands in no sump: no level, stick or big leak."""
    kinds = (features_kinds.DRIP_OILED, features_kinds.OIL_BURNT_WITH_FUEL)
    if any(known.has(kind) for kind in kinds) and has_no_pressure(known):
        for cause in CAUSES:
            if cause.station in OF_A_SUMP and cause not in NOT_OF_A_SUMP:
                yield cannot_be(cause)
    if known.has(features_kinds.DRIP_OILED) and has_no_pressure(known):  # no alarm watches a drip
        yield cannot_be(instrument_causes.SENDER_FAULTY)
        yield cannot_be(instrument_causes.WIRING_GROUND_FAULT)


@rule(
    source=sources.SMALL_ENGINE_FLOAT_SWITCH,
    matches=[_example(features_build.SPLASH_LUBRICATED, patterns.GAUGE_READS_LOW)],
    non_matches=[
        example(patterns.GAUGE_READS_LOW),
        _example(features_build.SPLASH_LUBRICATED),
    ],
)
def splashed_engine_has_no_pressure(known: Known) -> Conclusions:
    """An engine without an oil pump has no oil pressure to read; its low-oil switch is a float."""
    for kind in UNPRESSURED:
        for reading in PRESSURES:
            if known.has(kind) and known.has(reading) and has_no_pressure(known):
                yield Contradiction(
                    (kind, reading),
                    f"There is no oil pressure to read with {kind.says}: see whether there is an oil "
                    "pump after all; if not, a low-oil switch is a float that acts on the level.",
                    kind,
                )


@rule(
    source=sources.SMALL_ENGINE_FLOAT_SWITCH,
    matches=[example(features_build.LOW_OIL_SHUT_OFF, course.PROTECTION_TRIPPED)],
    non_matches=[
        example(course.PROTECTION_TRIPPED),
        example(features_build.LOW_OIL_SHUT_OFF),
    ],
)
def low_oil_switch_stopped_it(known: Known) -> Conclusions:
    """A low-oil switch that stops a small engine is a pressure switch or a float on the level."""
    if known.has(features_build.LOW_OIL_SHUT_OFF) and known.has(course.PROTECTION_TRIPPED):
        yield Alarm(
            Severity.CARE,
            "Low-oil switch of a small engine: some act below 2 to 11 psi, some are a float on the "
            "level; see which it is, fill to the mark on level ground, do not bridge it to run on.",
        )

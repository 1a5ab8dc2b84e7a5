"""What an engine without an oil pump cannot have, and what its low-oil switch acts on."""

from knowledge import sources
from knowledge.alarm import Alarm, Contradiction
from knowledge.engines import features_build
from knowledge.model import Severity, Station
from knowledge.pressure import course, direct_gauge, patterns
from knowledge.rule_api import Conclusions, Known, cannot_be, example, more_common, rules_of
from knowledge.stations.causes import CAUSES
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.suction import causes_sump as suction_causes_sump

rule = rules_of(Station.ASSEMBLY)
#: stations that only oil under pressure passes
PRESSURE_FED = (Station.PUMP, Station.RELIEF, Station.DELIVERY, Station.SUCTION, Station.TOPEND)
#: of these stations, what leaves the oil out of a dipper's reach as well
STILL = (suction_causes_sump.ATTITUDE_UNCOVERS_PICKUP,)
PRESSURES = (
    patterns.GAUGE_READS_LOW,
    patterns.GAUGE_READS_HIGH,
    direct_gauge.DIRECT_GAUGE_LOW,
)


@rule(
    source=sources.SMALL_ENGINE_SPLASH,
    matches=[example(features_build.SPLASH_LUBRICATED)],
    non_matches=[example(lacks=[features_build.SPLASH_LUBRICATED]), example()],
)
def splashed_engine_has_no_pump(known: Known) -> Conclusions:
    """An engine lubricated by splash has no pump, valve or gallery: level and slope are what counts."""
    if known.has(features_build.SPLASH_LUBRICATED):
        for cause in CAUSES:
            if cause.station in PRESSURE_FED and cause not in STILL:
                yield cannot_be(cause)
        yield cannot_be(oil_causes_condition.OIL_HOT_NORMAL)
        yield more_common(oil_causes.OIL_LEVEL_LOW)


@rule(
    source=sources.SMALL_ENGINE_FLOAT_SWITCH,
    matches=[example(features_build.SPLASH_LUBRICATED, patterns.GAUGE_READS_LOW)],
    non_matches=[
        example(patterns.GAUGE_READS_LOW),
        example(features_build.SPLASH_LUBRICATED),
    ],
)
def splashed_engine_has_no_pressure(known: Known) -> Conclusions:
    """An engine without an oil pump has no oil pressure to read; its low-oil switch is a float."""
    for reading in PRESSURES:
        if known.has(features_build.SPLASH_LUBRICATED) and known.has(reading):
            yield Contradiction(
                (features_build.SPLASH_LUBRICATED, reading),
                "Splash lubrication has no oil pressure to read: see whether there is an oil pump; "
                "if not, the low-oil switch is a float that acts on the level.",
                features_build.SPLASH_LUBRICATED,
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

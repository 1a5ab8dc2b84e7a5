"""Alarms at the oil: when to stop, or not to run."""

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.engines import features
from knowledge.history import findings as history
from knowledge.model import Severity, Station
from knowledge.pressure import patterns
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.bearings import findings as bearing_findings
from knowledge.stations.oil import (
    findings,
    findings_contamination,
    findings_drained,
    findings_heat,
    findings_record,
)
from knowledge.stations.suction import findings_sights

rule = rules_of(Station.OIL)
WATER = (
    findings_drained.WATER_AT_THE_DRAIN,
    findings_sights.WATER_IN_SUMP,
    findings_contamination.COOLANT_GETS_IN,
)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.DIPSTICK_DRY)],
    non_matches=[example(findings.DIPSTICK_LOW), example(lacks=[findings.DIPSTICK_DRY])],
)
def no_oil_on_the_stick(known: Known) -> Conclusions:
    """No oil on the dipstick: do not turn the engine."""
    if known.has(findings.DIPSTICK_DRY):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "no oil on the dipstick, the least is the add mark: do not start or crank; find where "
            "the oil went, fill to the mark, prime, and watch for pressure within 10 s",
        )


@rule(
    source=sources.ARMY_TM_347_CHART_1973,
    matches=[example(findings.DIPSTICK_LOW)],
    non_matches=[example(findings.LEVEL_CORRECT), example(lacks=[findings.DIPSTICK_LOW])],
)
def below_the_add_mark(known: Known) -> Conclusions:
    """Below the add mark: record it, then fill before any further run."""
    if known.has(findings.DIPSTICK_LOW):
        yield Alarm(
            Severity.CARE,
            "oil below the add mark: photograph the stick, take a sample, then fill to the mark "
            "before any further run",
        )


@rule(
    source=idea_from(sources.ARMY_TM_272_TABLE),
    matches=[example(findings_heat.OIL_TEMPERATURE_HIGH)],
    non_matches=[example(lacks=[findings_heat.OIL_TEMPERATURE_HIGH])],
)
def oil_past_its_heat(known: Known) -> Conclusions:
    """Oil at 121 °C (250 °F) or more: reduce the load, then stop."""
    if known.has(findings_heat.OIL_TEMPERATURE_HIGH):
        yield Alarm(
            Severity.STOP,
            "oil temperature high, limit 121 °C (250 °F): reduce the load, then stop and let it cool",
        )


@rule(
    source=sources.LABORATORY_COOLANT,
    matches=[example(findings.OIL_MILKY, patterns.GAUGE_READS_LOW), example(findings.OIL_MILKY)],
    non_matches=[
        example(patterns.GAUGE_READS_LOW),
        example(patterns.GAUGE_READS_LOW, lacks=[findings.OIL_MILKY]),
    ],
)
def milk_is_no_oil(known: Known) -> Conclusions:
    """Milky oil cannot carry a bearing: do not run, least of all with falling pressure."""
    if known.has(findings.OIL_MILKY):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "milky oil, the limit is 0.1 % water: do not run; find the way in, drain, flush and "
            "change oil twice",
        )


@rule(
    source=sources.FUEL_DILUTION_NOTE,
    matches=[
        example(findings.FUEL_SMELL, findings.LEVEL_RISEN),
        example(findings.FUEL_SMELL, findings.LEVEL_HIGH),
    ],
    non_matches=[
        example(findings.FUEL_SMELL),
        example(findings.LEVEL_RISEN, lacks=[findings.FUEL_SMELL]),
    ],
)
def fuel_fills_the_sump(known: Known) -> Conclusions:
    """A smell of fuel and a risen level: fire risk, do not run or crank."""
    if known.has(findings.FUEL_SMELL) and known.has(findings.LEVEL_RISEN):
        yield _fire("the level risen")
    if known.has(findings.FUEL_SMELL) and known.has(findings.LEVEL_HIGH):
        yield _fire("the level above full")


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_record.NOT_REFILLED)],
    non_matches=[
        example(lacks=[findings_record.NOT_REFILLED]),
        example(findings.LEVEL_CORRECT),
    ],
)
def drained_and_not_filled(known: Known) -> Conclusions:
    """Oil that was drained and not put back: nothing turns before it is filled."""
    if known.has(findings_record.NOT_REFILLED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "the oil was not put in, or not all of it, the least is the add mark: do not start or "
            "crank; fill to the mark, prime, and if it ran so, cut the filter open first (then "
            "record: level between the marks)",
            until=findings.LEVEL_CORRECT,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_contamination.FUEL_GETS_IN)],
    non_matches=[
        example(lacks=[findings_contamination.FUEL_GETS_IN]),
        example(findings.FUEL_SMELL),
    ],
)
def fuel_has_a_way_in(known: Known) -> Conclusions:
    """Fuel that gets into the sump: close its way and look at the oil before the next start."""
    if known.has(findings_contamination.FUEL_GETS_IN):
        yield Alarm(
            Severity.CARE,
            "fuel gets into the oil, none is allowed: before the next start close its way in, read "
            "and smell the stick; risen, thin or smelling oil is drained first; no flame or sparks",
            standing=True,
        )


@rule(
    source=sources.LABORATORY_FUEL,
    matches=[example(findings.FUEL_SMELL)],
    non_matches=[example(lacks=[findings.FUEL_SMELL]), example(findings.LEVEL_HIGH)],
)
def smell_of_fuel(known: Known) -> Conclusions:
    """A smell of fuel at the stick: no flame, and no cranking if it is strong."""
    if known.has(findings.FUEL_SMELL):
        yield Alarm(
            Severity.CARE,
            "oil smells of fuel: no flame or sparks, extinguisher at hand, no cranking if the "
            "smell is strong",
            standing=True,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_heat.BURNING_OIL_SMOKE)],
    non_matches=[
        example(lacks=[findings_heat.BURNING_OIL_SMOKE]),
        example(patterns.GAUGE_READS_ZERO),
    ],
)
def oil_burning_on_the_engine(known: Known) -> Conclusions:
    """Oil burning around the engine: stop and look for the fire before the leak."""
    if known.has(findings_heat.BURNING_OIL_SMOKE):
        yield Alarm(
            Severity.STOP,
            "smoke or smell of burning oil: stop, extinguisher at hand, find where oil reaches hot "
            "metal before you run it again",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings.LEVEL_HIGH, features.DIESEL),
        example(findings.LEVEL_RISEN, features.DIESEL),
    ],
    non_matches=[
        example(findings.LEVEL_HIGH),
        example(features.DIESEL),
        example(findings.LEVEL_CORRECT, features.DIESEL),
        example(findings.LEVEL_SLIGHTLY_HIGH, features.DIESEL),
    ],
)
def diesel_fills_itself(known: Known) -> Conclusions:
    """A diesel with too much in the sump: it can run away on its own oil, and fuel thins the oil."""
    for level in (findings.LEVEL_HIGH, findings.LEVEL_RISEN):
        if known.has(level) and known.has(features.DIESEL):
            yield Alarm(
                Severity.DO_NOT_RUN,
                f"{level.says}, in a diesel: it can run away on its own oil, and fuel in the oil "
                "ruins bearings: do not run until you have smelled the oil on the stick, drained "
                "it to the full mark, and changed it if it smells of fuel or is thin (then "
                "record: level between the marks)",
                until=findings.LEVEL_CORRECT,
            )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.FUEL_SMELL, features.DIESEL, features.TURBOCHARGED)],
    non_matches=[
        example(findings.FUEL_SMELL, features.DIESEL),
        example(findings.FUEL_SMELL, features.TURBOCHARGED),
        example(features.DIESEL, features.TURBOCHARGED),
    ],
)
def thinned_oil_in_a_turbo_diesel(known: Known) -> Conclusions:
    """Fuel in the oil of a turbo diesel: the turbo's bearings go first; change the oil first."""
    there = [known.has(f) for f in (findings.FUEL_SMELL, features.DIESEL, features.TURBOCHARGED)]
    if all(there):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "oil smells of fuel in a turbo diesel, no fuel is allowed: thinned oil ruins the "
            "turbo's bearings first: do not run until you have found the leak and changed oil and "
            "filter",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(one) for one in WATER],
    non_matches=[example(findings.CREAM_IN_FILLER_ONLY), example(lacks=list(WATER))],
)
def water_in_the_oil(known: Known) -> Conclusions:
    """Water in the sump, or a way in for it: it carries no bearing, and can lock a cylinder."""
    for one in WATER:
        if known.has(one):
            yield Alarm(
                Severity.DO_NOT_RUN,
                f"{one.says}, no water is allowed: do not start or crank; find and mend the way in, "
                "drain, flush, fill with fresh oil and a new filter",
            )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(history.FLOODED)],
    non_matches=[
        example(lacks=[history.FLOODED]),
        example(history.STOOD_LONG),
    ],
)
def was_flooded(known: Known) -> Conclusions:
    """An engine that was under water: water in a cylinder bends a rod at the first turn."""
    if known.has(history.FLOODED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            f"{history.FLOODED.says}, no water is allowed in cylinders or sump: do not crank; plugs "
            "or injectors out, turn it by hand, drain the sump, change oil and filter (then record: "
            "the oil looks clean)",
            until=findings.OIL_LOOKS_CLEAN,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_drained.FUEL_AT_THE_DRAIN)],
    non_matches=[
        example(findings.FUEL_SMELL),
        example(lacks=[findings_drained.FUEL_AT_THE_DRAIN]),
    ],
)
def fuel_in_the_sump(known: Known) -> Conclusions:
    """Fuel in the sump: it thins the oil and can explode."""
    if known.has(findings_drained.FUEL_AT_THE_DRAIN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "fuel ran out of the sump, or stood in it, no fuel is allowed: do not run or crank, no "
            "flame or sparks; close the way in, drain, change oil and filter",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_record.NOT_REFILLED, bearing_findings.RAN_ON_WITHOUT_PRESSURE)],
    non_matches=[
        example(findings_record.NOT_REFILLED),
        example(bearing_findings.RAN_ON_WITHOUT_PRESSURE),
    ],
)
def ran_without_its_oil(known: Known) -> Conclusions:
    """It ran without oil: look at the bearings before it runs again."""
    ran = known.has(bearing_findings.RAN_ON_WITHOUT_PRESSURE)
    if known.has(findings_record.NOT_REFILLED) and ran:
        yield Alarm(
            Severity.DO_NOT_RUN,
            "it ran without its oil, seconds ruin bearings: do not run it until you have cut the "
            "filter open and looked at a main and a rod shell",
        )


def _fire(level: str) -> Alarm:
    """The alarm for fuel in the sump."""
    return Alarm(
        Severity.DO_NOT_RUN,
        f"oil smells of fuel and {level}, no fuel is allowed: do not run or crank, it can burn or "
        "explode; drain, find the leak, change oil and filter",
    )

"""Rules on reported circumstances that make a cause more or less common."""

from knowledge import sources
from knowledge.circuit.conditions import WORN_BY_HOURS
from knowledge.history import findings
from knowledge.model import Cause, Finding, Shift, Station
from knowledge.rule_api import (
    Conclusions,
    Known,
    Shifted,
    example,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.instrument import causes_line as instrument_causes_line
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds

rule = rules_of(Station.ASSEMBLY)


#: what work done just before does to the rate of a cause
AFTER_WORK: dict[Finding, dict[Cause, Shift]] = {
    findings.SUMP_OR_PUMP_SWAPPED: {
        suction_causes_sump.BAFFLE_MISSING: Shift.UP,
        suction_causes_sump.PICKUP_CLEARANCE_TIGHT: Shift.STRONG_UP,
        suction_causes_sump.PICKUP_CLEARANCE_WIDE: Shift.STRONG_UP,
        oil_causes_condition.OIL_DEGRADED: Shift.DOWN,
    },
    findings.JUST_WORKED_ON: {
        leaks_causes_openings.WRONG_GASKET_ON_ACCESSORY: Shift.STRONG_UP,
        leaks_causes.EXTERNAL_LEAK_MAJOR: Shift.UP,
        leaks_causes.OIL_LINE_LEAK: Shift.UP,
        leaks_causes_openings.SENDER_LEAK: Shift.UP,
        leaks_causes_openings.FILLER_CAP_OFF: Shift.UP,
        instrument_causes.SENDER_MISMATCH: Shift.UP,
        instrument_causes_line.GAUGE_TAP_MOVED: Shift.UP,
        delivery_causes_galleries.GALLERY_SEAL_LEAK: Shift.UP,
        topend_causes.TENSIONER_SEAL_LEAK: Shift.UP,
        topend_causes_feeds.DIST_HOUSING_LEAK: Shift.UP,
        assembly_causes.SEALANT_DEBRIS: Shift.UP,
        assembly_causes.DIRT_IN_ASSEMBLY: Shift.UP,
        suction_causes_sump.PAN_DENTED: Shift.UP,
    },
}


@rule(
    source=JUDGEMENT,
    matches=[example(findings.SUMP_OR_PUMP_SWAPPED)],
    non_matches=[example(lacks=[findings.SUMP_OR_PUMP_SWAPPED])],
)
def parts_that_do_not_belong_together(known: Known) -> Conclusions:
    """With a different sump the baffle easily gets left behind; with new parts old sludge is rarer."""
    if known.has(findings.SUMP_OR_PUMP_SWAPPED):
        for cause, shift in AFTER_WORK[findings.SUMP_OR_PUMP_SWAPPED].items():
            yield Shifted(cause, shift)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.JUST_WORKED_ON)],
    non_matches=[example(lacks=[findings.JUST_WORKED_ON]), example(findings.OIL_JUST_CHANGED)],
)
def last_thing_touched(known: Known) -> Conclusions:
    """After other work check first whatever was touched last: joints, lines, gaskets, sealer."""
    if known.has(findings.JUST_WORKED_ON):
        for cause, shift in AFTER_WORK[findings.JUST_WORKED_ON].items():
            yield Shifted(cause, shift)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.STOOD_IN_FROST)],
    non_matches=[example(lacks=[findings.STOOD_IN_FROST]), example(findings.STOOD_LONG)],
)
def stood_in_the_frost(known: Known) -> Conclusions:
    """Frost ices breather and pickup and cracks castings; cold thick oil bursts seals and plugs."""
    if known.has(findings.STOOD_IN_FROST):
        yield more_common(leaks_causes_openings.BREATHER_BLOCKED, Shift.STRONG_UP)
        yield more_common(suction_causes_sump.ICE_IN_PICKUP, Shift.STRONG_UP)
        for cause in (
            oil_causes_contamination.COOLANT_IN_OIL,
            pump_causes_fitted.PUMP_CAVITATION,
            delivery_causes_galleries.GALLERY_CRACK,
            pump_causes_fitted.PUMP_BODY_CRACKED,
            leaks_causes.FILTER_SEAL_LEAK,
            leaks_causes_openings.PLUG_EXPELLED_OUTSIDE,
        ):
            yield more_common(cause)
        yield less_common(oil_causes_condition.OIL_OVERHEATED)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.FLOODED)],
    non_matches=[example(lacks=[findings.FLOODED]), example(findings.STOOD_IN_FROST)],
)
def was_under_water(known: Known) -> Conclusions:
    """Water gets into the sump, rusts what slides in the relief valve, and spoils plugs and senders."""
    if known.has(findings.FLOODED):
        yield more_common(oil_causes_contamination.COOLANT_IN_OIL, Shift.STRONG_UP)
        for cause in (
            relief_causes.RELIEF_STUCK_OPEN,
            instrument_causes.SENDER_FAULTY,
            instrument_causes.WIRING_GROUND_FAULT,
        ):
            yield more_common(cause)


@rule(
    source=idea_from(sources.MARINE_SERVICE_MANUAL_1999),
    matches=[example(findings.HOT_AND_THIN)],
    non_matches=[example(lacks=[findings.HOT_AND_THIN]), example(findings.STOOD_IN_FROST)],
)
def hot_weather_and_thin_oil(known: Known) -> Conclusions:
    """In hot weather the oil overheats more easily, and cold or thick oil is not the cause."""
    if known.has(findings.HOT_AND_THIN):
        yield more_common(oil_causes_condition.OIL_OVERHEATED)
        for cause in (oil_causes.VISCOSITY_TOO_HIGH, oil_causes_condition.OIL_COLD_NORMAL):
            yield less_common(cause, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.IDLES_LONG)],
    non_matches=[example(lacks=[findings.IDLES_LONG]), example(findings.WORKED_HARD)],
)
def long_idling_or_short_trips(known: Known) -> Conclusions:
    """Long idling and short cold trips leave water and sludge in oil and breather."""
    if known.has(findings.IDLES_LONG):
        yield more_common(oil_causes_condition.OIL_DEGRADED)
        yield more_common(leaks_causes_openings.BREATHER_BLOCKED)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.SERVICE_NEGLECTED)],
    non_matches=[example(lacks=[findings.SERVICE_NEGLECTED]), example(findings.OIL_JUST_CHANGED)],
)
def neglected_service(known: Known) -> Conclusions:
    """Neglected service: blocked screen, filter or cooler, stuck valves, wear, blocked breather."""
    if known.has(findings.SERVICE_NEGLECTED):
        yield more_common(delivery_causes.FILTER_BLOCKED, Shift.STRONG_UP)
        for cause in (
            suction_causes.PICKUP_SCREEN_BLOCKED,
            oil_causes_condition.OIL_DEGRADED,
            relief_causes.RELIEF_STUCK_OPEN,
            relief_causes.RELIEF_STUCK_CLOSED,
            delivery_causes.FILTER_BYPASS_STUCK,
            delivery_causes.OIL_COOLER_BLOCKED,
            topend_causes_feeds.TURBO_FEED_RESTRICTED,
            WORN_BY_HOURS,
            leaks_causes_openings.BREATHER_BLOCKED,
        ):
            yield more_common(cause)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.WORKED_HARD)],
    non_matches=[example(lacks=[findings.WORKED_HARD]), example(findings.IDLES_LONG)],
)
def worked_hard_for_long(known: Known) -> Conclusions:
    """Long full load or high speed uses oil, holds it up top, foams it and loads the bearings.

    The bearing poster supports the bearings only; the rest is judgement.
    """
    if known.has(findings.WORKED_HARD):
        for cause in (
            oil_causes.OIL_LEVEL_LOW,
            suction_causes_sump.DRAINBACK_POOR,
            suction_causes_sump.WINDAGE_AERATION,
            bearings_causes.BEARING_WIPED,
            bearings_causes.BEARING_SPUN,
            leaks_causes.OIL_LINE_LEAK,
        ):
            yield more_common(cause)


@rule(
    source=sources.JOBBER_OIL_PUMPS,
    matches=[example(findings.EARLIER_BREAKAGE)],
    non_matches=[example(lacks=[findings.EARLIER_BREAKAGE]), example(findings.HIGH_MILEAGE)],
)
def pieces_left_from_before(known: Known) -> Conclusions:
    """Pieces from an earlier breakage jam the relief valve or a lifter, wear the pump, or cover the screen."""
    if known.has(findings.EARLIER_BREAKAGE):
        for cause in (
            relief_causes.RELIEF_DEBRIS,
            pump_causes.PUMP_GEAR_WEAR,
            suction_causes.PICKUP_SCREEN_BLOCKED,
            topend_causes.LIFTER_BORE_LEAK,
        ):
            yield more_common(cause)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.STARTED_UNPRIMED)],
    non_matches=[example(lacks=[findings.STARTED_UNPRIMED]), example(findings.FRESHLY_REBUILT)],
)
def first_start_without_priming(known: Known) -> Conclusions:
    """Bearings run dry until oil comes."""
    if known.has(findings.STARTED_UNPRIMED):
        yield more_common(bearings_causes.BEARING_WIPED)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.SEALANT_USED_FREELY)],
    non_matches=[example(lacks=[findings.SEALANT_USED_FREELY]), example(findings.FRESHLY_REBUILT)],
)
def sealant_squeezed_inwards(known: Known) -> Conclusions:
    """What squeezes out inside comes off: onto the screen, under the relief valve, into oilways."""
    if known.has(findings.SEALANT_USED_FREELY):
        yield more_common(assembly_causes.SEALANT_DEBRIS, Shift.STRONG_UP)
        for cause in (suction_causes.PICKUP_SCREEN_BLOCKED, relief_causes.RELIEF_DEBRIS):
            yield more_common(cause)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.CLEARANCES_NEVER_MEASURED)],
    non_matches=[
        example(lacks=[findings.CLEARANCES_NEVER_MEASURED]),
        example(findings.FRESHLY_REBUILT),
    ],
)
def built_without_measuring(known: Known) -> Conclusions:
    """What nobody measured may be wrong, wide or tight; it is no sign that it is."""
    if known.has(findings.CLEARANCES_NEVER_MEASURED):
        for cause in (
            assembly_causes_left_out.CLEARANCE_SET_WIDE,
            bearings_causes.BEARING_WRONG_SIZE,
        ):
            yield more_common(cause)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.UNBRANDED_PUMP)],
    non_matches=[
        example(lacks=[findings.UNBRANDED_PUMP]),
        example(findings.SUMP_OR_PUMP_SWAPPED),
    ],
)
def pump_of_unknown_quality(known: Known) -> Conclusions:
    """A pump of unknown make may have wide clearances, soft gears or a weak relief spring."""
    if known.has(findings.UNBRANDED_PUMP):
        for cause in (
            pump_causes.PUMP_GEAR_WEAR,
            pump_causes.PUMP_COVER_SCORED,
            relief_causes.RELIEF_SPRING_WEAK_BROKEN,
            relief_causes.RELIEF_STUCK_OPEN,
        ):
            yield more_common(cause)

"""What told circumstances make more or less common, where no station's own rule says it."""

from knowledge.causes import (
    assembly,
    bearings,
    delivery,
    instrument,
    leaks,
    oil,
    pump,
    relief,
    suction,
    topend,
)
from knowledge.findings.history import (
    EARLIER_BREAKAGE,
    HIGH_MILEAGE,
    HOT_AND_THIN,
    IDLES_LONG,
    JUST_WORKED_ON,
    OIL_JUST_CHANGED,
    SERVICE_NEGLECTED,
    STOOD_IN_FROST,
    STOOD_LONG,
    SUMP_OR_PUMP_SWAPPED,
    WORKED_HARD,
)
from knowledge.rulebook import (
    Conclusions,
    Known,
    case_of,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import BFP, HB09, JIO, LCF, OST, THK
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Shift, Station

rule = rules_of(Station.ASSEMBLY)


@rule(
    source=OST,
    catches=[case_of(SUMP_OR_PUMP_SWAPPED)],
    spares=[case_of(lacks=[SUMP_OR_PUMP_SWAPPED])],
)
def parts_that_do_not_belong_together(known: Known) -> Conclusions:
    """With a different sump the baffle is easily left behind; with new parts old sludge is rarer."""
    if known.has(SUMP_OR_PUMP_SWAPPED):
        yield more_common(suction.BAFFLE_MISSING)
        yield more_common(suction.PICKUP_CLEARANCE_TIGHT)
        yield more_common(suction.PICKUP_CLEARANCE_WIDE, Shift.STRONG_UP)
        yield less_common(oil.OIL_DEGRADED)


@rule(
    source=CP,
    catches=[case_of(JUST_WORKED_ON)],
    spares=[case_of(lacks=[JUST_WORKED_ON]), case_of(OIL_JUST_CHANGED)],
)
def last_thing_touched(known: Known) -> Conclusions:
    """After other work look first at what was touched last: joints, lines, gaskets, sealer."""
    if known.has(JUST_WORKED_ON):
        yield more_common(leaks.WRONG_GASKET_ON_ACCESSORY, Shift.STRONG_UP)
        for cause in (
            leaks.EXTERNAL_LEAK_MAJOR,
            leaks.OIL_LINE_LEAK,
            leaks.SENDER_LEAK,
            leaks.FILLER_CAP_OFF,
            instrument.SENDER_MISMATCH,
            instrument.GAUGE_TAP_MOVED,
            delivery.GALLERY_SEAL_LEAK,
            topend.TENSIONER_SEAL_LEAK,
            topend.DIST_HOUSING_LEAK,
            assembly.SEALANT_DEBRIS,
            assembly.DIRT_IN_ASSEMBLY,
            suction.PAN_DENTED,
        ):
            yield more_common(cause)


@rule(
    source=CP,
    catches=[case_of(STOOD_IN_FROST)],
    spares=[case_of(lacks=[STOOD_IN_FROST]), case_of(STOOD_LONG)],
)
def stood_in_the_frost(known: Known) -> Conclusions:
    """Frost ices the breather, cracks castings, and cold thick oil bursts filter seals and plugs."""
    if known.has(STOOD_IN_FROST):
        yield more_common(leaks.BREATHER_BLOCKED, Shift.STRONG_UP)
        for cause in (
            oil.COOLANT_IN_OIL,
            pump.PUMP_CAVITATION,
            delivery.GALLERY_CRACK,
            leaks.FILTER_SEAL_LEAK,
            leaks.PLUG_EXPELLED_OUTSIDE,
        ):
            yield more_common(cause)
        yield less_common(oil.OIL_OVERHEATED)


@rule(
    source=HB09,
    catches=[case_of(HOT_AND_THIN)],
    spares=[case_of(lacks=[HOT_AND_THIN]), case_of(STOOD_IN_FROST)],
)
def hot_weather_and_thin_oil(known: Known) -> Conclusions:
    """In heat the oil overheats more easily, and cold or thick oil explains nothing."""
    if known.has(HOT_AND_THIN):
        yield more_common(oil.OIL_OVERHEATED)
        for cause in (oil.VISCOSITY_TOO_HIGH, oil.OIL_COLD_NORMAL):
            yield less_common(cause, Shift.STRONG_DOWN)


@rule(
    source=LCF,
    catches=[case_of(IDLES_LONG)],
    spares=[case_of(lacks=[IDLES_LONG]), case_of(WORKED_HARD)],
)
def long_idling_or_short_trips(known: Known) -> Conclusions:
    """Long idling and short cold trips leave water and sludge in oil and breather."""
    if known.has(IDLES_LONG):
        yield more_common(oil.OIL_DEGRADED)
        yield more_common(leaks.BREATHER_BLOCKED)


@rule(
    source=JIO,
    catches=[case_of(SERVICE_NEGLECTED)],
    spares=[case_of(lacks=[SERVICE_NEGLECTED]), case_of(OIL_JUST_CHANGED)],
)
def neglected_service(known: Known) -> Conclusions:
    """Neglected service: choked filter and cooler, stuck valves, worn bearings, blocked breather."""
    if known.has(SERVICE_NEGLECTED):
        yield more_common(delivery.FILTER_BLOCKED, Shift.STRONG_UP)
        for cause in (
            relief.RELIEF_STUCK_OPEN,
            relief.RELIEF_STUCK_CLOSED,
            delivery.FILTER_BYPASS_STUCK,
            delivery.OIL_COOLER_BLOCKED,
            topend.TURBO_FEED_RESTRICTED,
            bearings.BEARING_WEAR_MAINS,
            bearings.BEARING_WEAR_RODS,
            leaks.BREATHER_BLOCKED,
        ):
            yield more_common(cause)


@rule(
    source=BFP,
    catches=[case_of(WORKED_HARD)],
    spares=[case_of(lacks=[WORKED_HARD]), case_of(IDLES_LONG)],
)
def worked_hard_for_long(known: Known) -> Conclusions:
    """Full load or high speed for long uses oil, holds it up top, foams it and loads the bearings."""
    if known.has(WORKED_HARD):
        for cause in (
            oil.OIL_LEVEL_LOW,
            suction.DRAINBACK_POOR,
            suction.WINDAGE_AERATION,
            bearings.BEARING_WIPED,
            bearings.BEARING_SPUN,
            leaks.OIL_LINE_LEAK,
        ):
            yield more_common(cause)


@rule(
    source=THK,
    catches=[case_of(EARLIER_BREAKAGE)],
    spares=[case_of(lacks=[EARLIER_BREAKAGE]), case_of(HIGH_MILEAGE)],
)
def pieces_left_from_before(known: Known) -> Conclusions:
    """Pieces of an earlier breakage lie under the relief valve, wear the pump, upset a lifter."""
    if known.has(EARLIER_BREAKAGE):
        for cause in (
            relief.RELIEF_DEBRIS,
            pump.PUMP_GEAR_WEAR,
            topend.LIFTER_BORE_LEAK,
        ):
            yield more_common(cause)

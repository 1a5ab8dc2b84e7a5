"""What follows at the oil filter and the oil cooler."""

from knowledge.causes.delivery import (
    FILTER_BLOCKED,
    FILTER_BYPASS_STUCK,
    FILTER_DRAINBACK,
    FILTER_WRONG,
    OIL_COOLER_BLOCKED,
)
from knowledge.conditions import (
    DIRT_IN_OIL,
    DRAINS_BACK,
    FLOW_RESTRICTED,
    OIL_ESCAPING,
    OIL_THIN,
    PRESSURE_GONE,
)
from knowledge.engines.features import OIL_COOLER, REMOTE_FILTER
from knowledge.findings.behaviour import (
    CHANGED_WITH_OIL_CHANGE,
    GOOD_AT_PUMP_LOW_IN_GALLERY,
    NONE_FROM_FIRST_START,
    SLOW_AFTER_STANDING,
)
from knowledge.findings.delivery import (
    ANTI_DRAINBACK_HARD,
    COOLER_BYPASSED_CURES,
    COOLER_FOUND_BLOCKED,
    COOLER_STAYS_COLD,
    FILTER_BULGED,
    FILTER_BURST,
    FILTER_BYPASS_STUCK_OPEN,
    FILTER_BYPASS_STUCK_SHUT,
    FILTER_BYPASS_WITNESS,
    FILTER_COLLAPSED,
    FILTER_DROP_HIGH,
    FILTER_EMPTY_AFTER_STANDING,
    FILTER_MISFITTED,
    FILTER_NOT_LISTED,
    FILTER_PACKED,
    FILTER_SEAT_LEAKS,
    FILTER_STAYS_COLD,
    NEW_FILTER_CURED_IT,
    REMOTE_HOSES_CROSSED,
)
from knowledge.findings.pressure import (
    DECLINED_OVER_MONTHS,
    FELL_SUDDENLY,
    GAUGE_READS_LOW,
)
from knowledge.rulebook import (
    Conclusions,
    Known,
    cannot_be,
    case_of,
    is_absent,
    leads_to,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import FLV, HB01, HB11, HB22, PRM, TML
from knowledge.vocabulary import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    Station,
)

rule = rules_of(Station.DELIVERY)


@rule(
    source=HB11,
    catches=[
        case_of(GOOD_AT_PUMP_LOW_IN_GALLERY, FILTER_DROP_HIGH),
        case_of(GAUGE_READS_LOW, NEW_FILTER_CURED_IT),
        case_of(FILTER_PACKED, FILTER_BYPASS_WITNESS),
    ],
    spares=[case_of(GOOD_AT_PUMP_LOW_IN_GALLERY, lacks=[FILTER_DROP_HIGH, FILTER_PACKED])],
)
def pressure_lost_across_the_filter(known: Known) -> Conclusions:
    """A loaded filter takes 10 to 15 psi until its bypass opens, and then passes dirty oil.

    Misleads when the oil is cold: any filter takes that much of thick oil.
    """
    yield leads_to(FILTER_BLOCKED, FLOW_RESTRICTED, ALWAYS)
    yield leads_to(FILTER_BLOCKED, DIRT_IN_OIL, SOMETIMES)
    yield leads_to(FILTER_BLOCKED, FILTER_DROP_HIGH, MOSTLY)
    yield leads_to(FILTER_BLOCKED, FILTER_PACKED, MOSTLY)
    yield leads_to(FILTER_BLOCKED, FILTER_BYPASS_WITNESS, OFTEN)
    yield leads_to(FILTER_BLOCKED, FILTER_COLLAPSED, SOMETIMES)
    yield leads_to(FILTER_BLOCKED, FILTER_STAYS_COLD, SOMETIMES)
    yield leads_to(FILTER_BLOCKED, NEW_FILTER_CURED_IT, OFTEN)
    yield leads_to(FILTER_BLOCKED, DECLINED_OVER_MONTHS, SOMETIMES)


@rule(
    source=TML,
    catches=[case_of(FILTER_BYPASS_STUCK_OPEN), case_of(FILTER_BYPASS_STUCK_SHUT)],
    spares=[case_of(lacks=[FILTER_BYPASS_STUCK_OPEN, FILTER_BYPASS_STUCK_SHUT])],
)
def bypass_that_does_not_move(known: Known) -> Conclusions:
    """A bypass stuck open lets dirt to the bearings; stuck shut it starves a loaded filter."""
    yield leads_to(FILTER_BYPASS_STUCK, DIRT_IN_OIL, OFTEN)
    yield leads_to(FILTER_BYPASS_STUCK, FLOW_RESTRICTED, SOMETIMES)
    yield leads_to(FILTER_BYPASS_STUCK, FILTER_BYPASS_STUCK_OPEN, OFTEN)
    yield leads_to(FILTER_BYPASS_STUCK, FILTER_BYPASS_STUCK_SHUT, SOMETIMES)
    yield leads_to(FILTER_BYPASS_STUCK, FILTER_BYPASS_WITNESS, OFTEN)
    yield leads_to(FILTER_BYPASS_STUCK, FILTER_COLLAPSED, SOMETIMES)
    yield leads_to(FILTER_BYPASS_STUCK, FILTER_STAYS_COLD, SOMETIMES)


@rule(
    source=PRM,
    catches=[
        case_of(CHANGED_WITH_OIL_CHANGE, FILTER_MISFITTED),
        case_of(CHANGED_WITH_OIL_CHANGE, FILTER_NOT_LISTED, FILTER_SEAT_LEAKS),
    ],
    spares=[
        case_of(
            CHANGED_WITH_OIL_CHANGE, lacks=[FILTER_MISFITTED, FILTER_NOT_LISTED, FILTER_SEAT_LEAKS]
        )
    ],
)
def trouble_straight_from_the_new_filter(known: Known) -> Conclusions:
    """A wrong filter, a second gasket or a wrong stem shows at once after the change.

    It either throws the oil out or lets none through; a cheap one only drains back.
    """
    yield leads_to(FILTER_WRONG, OIL_ESCAPING, OFTEN)
    yield leads_to(FILTER_WRONG, FLOW_RESTRICTED, OFTEN)
    yield leads_to(FILTER_WRONG, DRAINS_BACK, SOMETIMES)
    yield leads_to(FILTER_WRONG, PRESSURE_GONE, SOMETIMES)
    yield leads_to(FILTER_WRONG, CHANGED_WITH_OIL_CHANGE, MOSTLY)
    yield leads_to(FILTER_WRONG, NONE_FROM_FIRST_START, SOMETIMES)
    yield leads_to(FILTER_WRONG, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(FILTER_WRONG, FILTER_MISFITTED, MOSTLY)
    yield leads_to(FILTER_WRONG, FILTER_NOT_LISTED, OFTEN)
    yield leads_to(FILTER_WRONG, FILTER_SEAT_LEAKS, OFTEN)
    yield leads_to(FILTER_WRONG, FILTER_STAYS_COLD, SOMETIMES)
    yield leads_to(FILTER_WRONG, FILTER_BURST, SELDOM)
    yield leads_to(FILTER_WRONG, FILTER_BULGED, SELDOM)
    yield leads_to(FILTER_WRONG, FILTER_COLLAPSED, SELDOM)
    yield leads_to(FILTER_WRONG, NEW_FILTER_CURED_IT, OFTEN)


@rule(
    source=CP,
    catches=[
        case_of(REMOTE_FILTER, REMOTE_HOSES_CROSSED, FILTER_COLLAPSED),
        case_of(REMOTE_FILTER, REMOTE_HOSES_CROSSED),
    ],
    spares=[case_of(REMOTE_FILTER, lacks=[REMOTE_HOSES_CROSSED, FILTER_COLLAPSED])],
)
def remote_hoses_the_wrong_way_round(known: Known) -> Conclusions:
    """Crossed hoses feed a remote filter from inside: its check flap shuts, or its core caves in."""
    if known.has(REMOTE_FILTER):
        yield leads_to(FILTER_WRONG, REMOTE_HOSES_CROSSED, SOMETIMES)


@rule(
    source=FLV,
    catches=[
        case_of(SLOW_AFTER_STANDING, FILTER_EMPTY_AFTER_STANDING),
        case_of(SLOW_AFTER_STANDING, ANTI_DRAINBACK_HARD),
    ],
    spares=[case_of(SLOW_AFTER_STANDING, lacks=[FILTER_EMPTY_AFTER_STANDING, ANTI_DRAINBACK_HARD])],
)
def filter_empties_overnight(known: Known) -> Conclusions:
    """A filter without a good anti-drain-back flap must be refilled first: 1 to 3 s late."""
    yield leads_to(FILTER_DRAINBACK, DRAINS_BACK, ALWAYS)
    yield leads_to(FILTER_DRAINBACK, FILTER_EMPTY_AFTER_STANDING, MOSTLY)
    yield leads_to(FILTER_DRAINBACK, ANTI_DRAINBACK_HARD, MOSTLY)
    yield leads_to(FILTER_DRAINBACK, FILTER_NOT_LISTED, SOMETIMES)
    yield leads_to(FILTER_DRAINBACK, NEW_FILTER_CURED_IT, SOMETIMES)


@rule(
    source=HB22,
    catches=[
        case_of(GAUGE_READS_LOW, COOLER_STAYS_COLD, COOLER_BYPASSED_CURES),
        case_of(COOLER_FOUND_BLOCKED),
    ],
    spares=[case_of(GAUGE_READS_LOW, lacks=[COOLER_BYPASSED_CURES, COOLER_FOUND_BLOCKED])],
)
def oil_does_not_get_through_the_cooler(known: Known) -> Conclusions:
    """A blocked cooler or line holds the oil back and lets it get hot behind your back.

    Misleads when the cooler's thermostat is simply shut: a cold cooler on a cold day is right.
    """
    yield leads_to(OIL_COOLER_BLOCKED, FLOW_RESTRICTED, MOSTLY)
    yield leads_to(OIL_COOLER_BLOCKED, OIL_THIN, SOMETIMES)
    yield leads_to(OIL_COOLER_BLOCKED, COOLER_STAYS_COLD, MOSTLY)
    yield leads_to(OIL_COOLER_BLOCKED, COOLER_BYPASSED_CURES, MOSTLY)
    yield leads_to(OIL_COOLER_BLOCKED, COOLER_FOUND_BLOCKED, MOSTLY)
    yield leads_to(OIL_COOLER_BLOCKED, FILTER_DROP_HIGH, SOMETIMES)


@rule(
    source=HB01,
    catches=[case_of(lacks=[OIL_COOLER])],
    spares=[case_of(OIL_COOLER), case_of()],
)
def no_cooler_no_blocked_cooler(known: Known) -> Conclusions:
    """Without an oil cooler there is none to block."""
    if known.lacks(OIL_COOLER):
        yield cannot_be(OIL_COOLER_BLOCKED)
        yield is_absent(COOLER_STAYS_COLD)
        yield is_absent(COOLER_BYPASSED_CURES)

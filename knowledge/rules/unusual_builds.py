"""Unusual builds and unknown pasts: what they make more or less common, or leave to be seen."""

from knowledge.causes.bearings import BEARING_WEAR_MAINS, BEARING_WEAR_RODS
from knowledge.causes.instrument import GAUGE_FAULTY, SENDER_FAULTY
from knowledge.causes.oil import OIL_DEGRADED
from knowledge.causes.pump import PUMP_GEAR_WEAR
from knowledge.causes.suction import PICKUP_CLEARANCE_WIDE, SUCTION_JOINT_AIR_LEAK
from knowledge.engines.features import COOLER_ON_SUCTION, GAUGE_LIKE_A_LAMP
from knowledge.findings.behaviour import FALLS_IN_A_MANOEUVRE
from knowledge.findings.history import FRESHLY_REBUILT, HISTORY_UNKNOWN
from knowledge.findings.oil import DIPSTICK_NOT_ITS_OWN, DRAINED_VOLUME_HIGH
from knowledge.rulebook import (
    Conclusions,
    Known,
    case_of,
    leads_to,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import SOMETIMES, Station

instrument = rules_of(Station.INSTRUMENT)
suction = rules_of(Station.SUCTION)
assembly = rules_of(Station.ASSEMBLY)


@instrument(
    source=CP,
    catches=[case_of(GAUGE_LIKE_A_LAMP)],
    spares=[case_of(), case_of(lacks=[GAUGE_LIKE_A_LAMP])],
)
def needle_made_to_stand_still(known: Known) -> Conclusions:
    """A gauge made to stand at mid-scale above a few psi is not faulty for doing so."""
    if known.has(GAUGE_LIKE_A_LAMP):
        yield less_common(SENDER_FAULTY)
        yield less_common(GAUGE_FAULTY)


@suction(
    source=CP,
    catches=[case_of(COOLER_ON_SUCTION)],
    spares=[case_of(), case_of(lacks=[COOLER_ON_SUCTION])],
)
def many_joints_before_the_pump(known: Known) -> Conclusions:
    """A cooler or filter before the pump adds unions that draw air and show no oil outside."""
    if known.has(COOLER_ON_SUCTION):
        yield more_common(SUCTION_JOINT_AIR_LEAK)


@suction(
    source=CP,
    catches=[
        case_of(FALLS_IN_A_MANOEUVRE, DRAINED_VOLUME_HIGH),
        case_of(FALLS_IN_A_MANOEUVRE, DIPSTICK_NOT_ITS_OWN),
    ],
    spares=[
        case_of(FALLS_IN_A_MANOEUVRE, lacks=[DRAINED_VOLUME_HIGH, DIPSTICK_NOT_ITS_OWN]),
        case_of(lacks=[DRAINED_VOLUME_HIGH]),
    ],
)
def deep_pan_under_the_old_pickup(known: Known) -> Conclusions:
    """A deep pan from elsewhere holds more than the book says, and leaves the old pickup high."""
    yield leads_to(PICKUP_CLEARANCE_WIDE, DRAINED_VOLUME_HIGH, SOMETIMES)
    yield leads_to(PICKUP_CLEARANCE_WIDE, DIPSTICK_NOT_ITS_OWN, SOMETIMES)


@assembly(
    source=CP,
    catches=[case_of(HISTORY_UNKNOWN)],
    spares=[case_of(), case_of(FRESHLY_REBUILT)],
)
def nobody_knows_its_past(known: Known) -> Conclusions:
    """Of an engine nobody knows, expect wear and neglected oil."""
    if known.has(HISTORY_UNKNOWN):
        yield more_common(BEARING_WEAR_MAINS)
        yield more_common(BEARING_WEAR_RODS)
        yield more_common(PUMP_GEAR_WEAR)
        yield more_common(OIL_DEGRADED)

"""What follows from old oil and hot oil, and the damage the oil shows."""

from knowledge.causes.oil import (
    OIL_DEGRADED,
    OIL_OVERHEATED,
)
from knowledge.conditions import (
    BEARINGS_DAMAGED,
    ENGINE_FAILED,
    FLOW_RESTRICTED,
    METAL_SHED,
    OIL_SLUDGED,
    OIL_THICK,
    OIL_THIN,
    PUMP_SCORED,
)
from knowledge.findings.behaviour import (
    SAGS_AS_OIL_HEATS,
)
from knowledge.findings.oil import (
    OIL_OVERDUE,
    RIGHT_GRADE_CURES,
)
from knowledge.findings.oil_heat import (
    BLOW_BY_HIGH,
    BURNING_OIL_SMOKE,
    COOLER_FACE_BLOCKED,
    COOLING_DUCT_AMISS,
    ENGINE_RAN_HOT,
    OIL_TEMPERATURE_HIGH,
)
from knowledge.findings.oil_look import (
    GLITTER_IN_OIL,
    OIL_BLACK_AND_GRITTY,
    OIL_SMELLS_BURNT,
    SLUDGE_SEEN,
)
from knowledge.findings.pressure import (
    DECLINED_OVER_MONTHS,
    GAUGE_READS_LOW,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import (
    HB04,
    HB22,
    JIO,
    MIF,
)
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.OIL)

# ----------------------------------------------------------------------------- old and hot


@rule(
    source=JIO,
    catches=[
        case_of(OIL_OVERDUE, OIL_BLACK_AND_GRITTY, SLUDGE_SEEN),
        case_of(DECLINED_OVER_MONTHS, OIL_OVERDUE),
    ],
    spares=[case_of(DECLINED_OVER_MONTHS, lacks=[OIL_OVERDUE, SLUDGE_SEEN])],
)
def overdue_black_and_gritty(known: Known) -> Conclusions:
    """Overdue oil turns black, thick and acid and lays down the sludge that blocks mesh and oilways.

    Misleads in a diesel, whose oil is black within hours of a change.
    """
    yield leads_to(OIL_DEGRADED, OIL_SLUDGED, MOSTLY)
    yield leads_to(OIL_DEGRADED, OIL_THICK, SOMETIMES)
    yield leads_to(OIL_DEGRADED, OIL_THIN, SELDOM)
    yield leads_to(OIL_DEGRADED, BEARINGS_DAMAGED, SELDOM)
    yield leads_to(OIL_DEGRADED, OIL_OVERDUE, MOSTLY)
    yield leads_to(OIL_DEGRADED, OIL_BLACK_AND_GRITTY, OFTEN)
    yield leads_to(OIL_DEGRADED, OIL_SMELLS_BURNT, SOMETIMES)
    yield leads_to(OIL_DEGRADED, BLOW_BY_HIGH, SELDOM)
    yield leads_to(OIL_DEGRADED, DECLINED_OVER_MONTHS, SOMETIMES)
    yield leads_to(OIL_DEGRADED, RIGHT_GRADE_CURES, SELDOM)


@rule(
    source=JIO,
    catches=[case_of(OIL_BLACK_AND_GRITTY, SLUDGE_SEEN)],
    spares=[case_of(OIL_OVERDUE, lacks=[OIL_BLACK_AND_GRITTY, SLUDGE_SEEN])],
)
def sludge_colours_the_oil(known: Known) -> Conclusions:
    """An engine that holds sludge keeps its oil black and gritty, even soon after a change."""
    yield leads_to(OIL_SLUDGED, OIL_BLACK_AND_GRITTY, OFTEN)


@rule(
    source=HB04,
    catches=[
        case_of(OIL_TEMPERATURE_HIGH),
        case_of(SAGS_AS_OIL_HEATS, COOLING_DUCT_AMISS),
        case_of(SAGS_AS_OIL_HEATS, COOLER_FACE_BLOCKED, ENGINE_RAN_HOT),
    ],
    spares=[case_of(SAGS_AS_OIL_HEATS, lacks=[OIL_TEMPERATURE_HIGH, ENGINE_RAN_HOT])],
)
def sags_hot_and_is_back_when_cooled(known: Known) -> Conclusions:
    """Oil that runs hot sags the gauge over minutes and is right again when it has cooled."""
    yield leads_to(OIL_OVERHEATED, OIL_THIN, ALWAYS)
    yield leads_to(OIL_OVERHEATED, OIL_TEMPERATURE_HIGH, ALWAYS)
    yield leads_to(OIL_OVERHEATED, SAGS_AS_OIL_HEATS, OFTEN)
    yield leads_to(OIL_OVERHEATED, ENGINE_RAN_HOT, OFTEN)
    yield leads_to(OIL_OVERHEATED, COOLER_FACE_BLOCKED, OFTEN)
    yield leads_to(OIL_OVERHEATED, COOLING_DUCT_AMISS, SOMETIMES)
    yield leads_to(OIL_OVERHEATED, OIL_SMELLS_BURNT, OFTEN)
    yield leads_to(OIL_OVERHEATED, BLOW_BY_HIGH, SOMETIMES)
    yield leads_to(OIL_OVERHEATED, OIL_SLUDGED, SELDOM)


# ------------------------------------------------------------------ damage that the oil shows


@rule(
    source=HB22,
    catches=[case_of(OIL_TEMPERATURE_HIGH, GLITTER_IN_OIL, OIL_SMELLS_BURNT)],
    spares=[case_of(OIL_TEMPERATURE_HIGH, lacks=[GLITTER_IN_OIL, OIL_SMELLS_BURNT])],
)
def damage_heats_and_burns_the_oil(known: Known) -> Conclusions:
    """Damaged bearings heat and burn the oil, and what is held back comes through hot.

    Following damage, as a rule: hot oil beside a knock was not the first thing to go wrong.
    """
    yield leads_to(BEARINGS_DAMAGED, OIL_SMELLS_BURNT, SOMETIMES)
    yield leads_to(BEARINGS_DAMAGED, OIL_TEMPERATURE_HIGH, SELDOM)
    yield leads_to(BEARINGS_DAMAGED, BURNING_OIL_SMOKE, SELDOM)
    yield leads_to(FLOW_RESTRICTED, OIL_TEMPERATURE_HIGH, SELDOM)
    yield leads_to(ENGINE_FAILED, BURNING_OIL_SMOKE, SOMETIMES)


@rule(
    source=MIF,
    catches=[case_of(GLITTER_IN_OIL)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[GLITTER_IN_OIL])],
)
def glitter_is_bearing_or_pump(known: Known) -> Conclusions:
    """Glitter in the oil is metal from bearings or pump; the filter holds the rest."""
    yield leads_to(METAL_SHED, GLITTER_IN_OIL, OFTEN)
    yield leads_to(PUMP_SCORED, GLITTER_IN_OIL, SELDOM)

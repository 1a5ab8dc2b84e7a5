"""What follows from how much oil there is, and what a sound engine shows hot and cold."""

from knowledge.causes.oil import (
    DIPSTICK_WRONG,
    OIL_COLD_NORMAL,
    OIL_FOAM_PRONE,
    OIL_HOT_NORMAL,
    OIL_LEVEL_HIGH,
    OIL_LEVEL_LOW,
)
from knowledge.conditions import (
    AIR_IN_SUCTION,
    OIL_AERATED,
    OIL_ESCAPING,
    OIL_SHORT,
    OIL_SLUDGED,
    OIL_THIN,
    PICKUP_UNCOVERED,
)
from knowledge.findings.behaviour import (
    CHANGED_WITH_OIL_CHANGE,
    DIRECT_GAUGE_LOW,
    SAGS_AS_OIL_HEATS,
)
from knowledge.findings.oil import (
    ADDITIVE_OR_FLUSH_IN_OIL,
    DIPSTICK_DRY,
    DIPSTICK_LOW,
    DIPSTICK_NOT_ITS_OWN,
    DRAINED_VOLUME_HIGH,
    DRAINED_VOLUME_LOW,
    LEVEL_FALLS_STANDING,
    LEVEL_HIGH,
    LEVEL_READ_WRONGLY,
    NOT_REFILLED,
    OIL_NOT_CHECKED_LONG,
    OIL_USED_FAST,
    RIGHT_GRADE_CURES,
    STICK_MARKS_WRONG,
    TOO_MUCH_POURED_IN,
)
from knowledge.findings.oil_heat import (
    BLOW_BY_HIGH,
    BLUE_SMOKE,
    OIL_IN_TURBO_OUTLETS,
    OIL_TEMPERATURE_HIGH,
    OIL_VERY_COLD,
)
from knowledge.findings.oil_look import FOAM_ON_STICK, SLUDGE_SEEN
from knowledge.findings.pressure import (
    CLIMBS_PAST_SETTING,
    ENGINE_RUNS_NORMALLY,
    FLICKERS_ONLY_AT_HOT_IDLE,
    GAUGE_READS_HIGH,
    GAUGE_READS_LOW,
    GOOD_COLD_LOW_HOT,
    LAMP_COMES_ON,
    LOW_AT_ALL_SPEEDS,
    LOW_HOT_IDLE_GOOD_SPEED,
    NEEDLE_FLICKERS,
    RISES_JUST_OFF_IDLE,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import CAV, HB01, HB04, HB09, HPA, HPP, INL, SJR, TMK
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.OIL)

# ------------------------------------------------------------------------ too little oil


@rule(
    source=HB01,
    catches=[
        case_of(DIPSTICK_LOW),
        case_of(NEEDLE_FLICKERS, DIPSTICK_LOW, OIL_NOT_CHECKED_LONG),
        case_of(OIL_USED_FAST, BLUE_SMOKE),
    ],
    spares=[
        case_of(GAUGE_READS_LOW, lacks=[DIPSTICK_LOW]),
        case_of(NEEDLE_FLICKERS, lacks=[DIPSTICK_LOW, OIL_USED_FAST]),
    ],
)
def burnt_off_or_never_filled(known: Known) -> Conclusions:
    """Oil burnt off, never put back or never looked at is missed at the stick before anything else.

    Misleads when the level was read on a slope, or the oil has gone through a leak instead.
    """
    yield leads_to(OIL_LEVEL_LOW, OIL_SHORT, ALWAYS)
    yield leads_to(OIL_LEVEL_LOW, DIPSTICK_LOW, ALWAYS)
    yield leads_to(OIL_LEVEL_LOW, OIL_USED_FAST, OFTEN)
    yield leads_to(OIL_LEVEL_LOW, OIL_NOT_CHECKED_LONG, OFTEN)
    yield leads_to(OIL_LEVEL_LOW, NOT_REFILLED, SOMETIMES)
    yield leads_to(OIL_LEVEL_LOW, BLUE_SMOKE, OFTEN)
    yield leads_to(OIL_LEVEL_LOW, BLOW_BY_HIGH, SOMETIMES)
    yield leads_to(OIL_LEVEL_LOW, OIL_IN_TURBO_OUTLETS, SELDOM)
    yield leads_to(OIL_LEVEL_LOW, CHANGED_WITH_OIL_CHANGE, SELDOM)


@rule(
    source=INL,
    catches=[case_of(DIPSTICK_LOW), case_of(DIPSTICK_DRY), case_of(DRAINED_VOLUME_LOW)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[DIPSTICK_LOW, DIPSTICK_DRY])],
)
def shortage_shows_on_the_stick(known: Known) -> Conclusions:
    """Oil short at the pickup shows on the stick and in the jug, and what is left runs hot.

    Misleads when the oil hangs in heads or valley while running and comes down after stopping.
    """
    yield leads_to(OIL_SHORT, DIPSTICK_LOW, MOSTLY)
    yield leads_to(OIL_SHORT, DIPSTICK_DRY, SOMETIMES)
    yield leads_to(OIL_SHORT, DRAINED_VOLUME_LOW, MOSTLY)
    yield leads_to(OIL_SHORT, OIL_TEMPERATURE_HIGH, SOMETIMES)


@rule(
    source=TMK,
    catches=[case_of(LEVEL_FALLS_STANDING), case_of(OIL_USED_FAST, LEVEL_FALLS_STANDING)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[OIL_USED_FAST, LEVEL_FALLS_STANDING])],
)
def oil_that_leaves_the_engine(known: Known) -> Conclusions:
    """Oil that leaves the engine has to be topped up again and again, and drops even standing."""
    yield leads_to(OIL_ESCAPING, OIL_USED_FAST, OFTEN)
    yield leads_to(OIL_ESCAPING, LEVEL_FALLS_STANDING, OFTEN)
    yield leads_to(OIL_ESCAPING, OIL_IN_TURBO_OUTLETS, SELDOM)


# -------------------------------------------------------------------- too much oil, and foam


@rule(
    source=HB09,
    catches=[case_of(LEVEL_HIGH), case_of(NEEDLE_FLICKERS, FOAM_ON_STICK, TOO_MUCH_POURED_IN)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[LEVEL_HIGH])],
)
def crank_beats_the_oil_to_foam(known: Known) -> Conclusions:
    """Filled well over the mark, the crankshaft beats the oil to foam at high revs.

    Misleads when it stands only a little over the mark: few engines mind that.
    """
    yield leads_to(OIL_LEVEL_HIGH, OIL_AERATED, MOSTLY)
    yield leads_to(OIL_LEVEL_HIGH, LEVEL_HIGH, MOSTLY)
    yield leads_to(OIL_LEVEL_HIGH, DRAINED_VOLUME_HIGH, ALWAYS)
    yield leads_to(OIL_LEVEL_HIGH, TOO_MUCH_POURED_IN, SOMETIMES)
    yield leads_to(OIL_LEVEL_HIGH, CHANGED_WITH_OIL_CHANGE, OFTEN)
    yield leads_to(OIL_LEVEL_HIGH, BLUE_SMOKE, SOMETIMES)
    yield leads_to(OIL_LEVEL_HIGH, BLOW_BY_HIGH, SELDOM)


@rule(
    source=HPA,
    catches=[case_of(FOAM_ON_STICK, ADDITIVE_OR_FLUSH_IN_OIL)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[FOAM_ON_STICK, ADDITIVE_OR_FLUSH_IN_OIL])],
)
def oil_that_will_not_let_go_of_its_air(known: Known) -> Conclusions:
    """Oil spoilt by flush, additive or the wrong fluid keeps its air, though the level is right."""
    yield leads_to(OIL_FOAM_PRONE, OIL_AERATED, ALWAYS)
    yield leads_to(OIL_FOAM_PRONE, ADDITIVE_OR_FLUSH_IN_OIL, MOSTLY)
    yield leads_to(OIL_FOAM_PRONE, CHANGED_WITH_OIL_CHANGE, OFTEN)
    yield leads_to(OIL_FOAM_PRONE, RIGHT_GRADE_CURES, MOSTLY)


@rule(
    source=CAV,
    catches=[case_of(FOAM_ON_STICK)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[FOAM_ON_STICK])],
)
def foam_seen_after_a_hard_run(known: Known) -> Conclusions:
    """Foam on the stick straight after a hard run: air is whipped in, or drawn in at the suction.

    Misleads when the bubbles are water boiling off: look for milk.
    """
    yield leads_to(OIL_AERATED, FOAM_ON_STICK, MOSTLY)
    yield leads_to(AIR_IN_SUCTION, FOAM_ON_STICK, SOMETIMES)


@rule(
    source=INL,
    catches=[case_of(SLUDGE_SEEN)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[SLUDGE_SEEN])],
)
def sludge_in_sight(known: Known) -> Conclusions:
    """Sludge in filler, covers or drain means sludge on the mesh as well."""
    yield leads_to(OIL_SLUDGED, SLUDGE_SEEN, MOSTLY)


# -------------------------------------------------------------------------- a lying stick


@rule(
    source=SJR,
    catches=[case_of(STICK_MARKS_WRONG), case_of(DIPSTICK_NOT_ITS_OWN, NEEDLE_FLICKERS)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[STICK_MARKS_WRONG, DIPSTICK_NOT_ITS_OWN])],
)
def stick_that_lies(known: Known) -> Conclusions:
    """A wrong stick, or one read on a slope, lets an engine run short or over-full at its mark.

    The stick says "right" all the while, so the shortage shows in bends or in the jug.
    """
    yield leads_to(DIPSTICK_WRONG, PICKUP_UNCOVERED, OFTEN)
    yield leads_to(DIPSTICK_WRONG, OIL_AERATED, SOMETIMES)
    yield leads_to(DIPSTICK_WRONG, OIL_SHORT, SOMETIMES)
    yield leads_to(DIPSTICK_WRONG, LEVEL_HIGH, SELDOM)


@rule(
    source=HPP,
    catches=[case_of(DRAINED_VOLUME_LOW, STICK_MARKS_WRONG), case_of(STICK_MARKS_WRONG)],
    spares=[case_of(DRAINED_VOLUME_LOW, lacks=[STICK_MARKS_WRONG, DIPSTICK_NOT_ITS_OWN])],
)
def measured_fill_gives_the_stick_away(known: Known) -> Conclusions:
    """A measured fill, or what comes out into a jug, gives a lying stick away."""
    yield leads_to(DIPSTICK_WRONG, STICK_MARKS_WRONG, MOSTLY)
    yield leads_to(DIPSTICK_WRONG, DIPSTICK_NOT_ITS_OWN, OFTEN)
    yield leads_to(DIPSTICK_WRONG, LEVEL_READ_WRONGLY, OFTEN)
    yield leads_to(DIPSTICK_WRONG, DRAINED_VOLUME_LOW, OFTEN)
    yield leads_to(DIPSTICK_WRONG, DRAINED_VOLUME_HIGH, SOMETIMES)


# ------------------------------------------------------------------------- nothing is wrong


@rule(
    source=HB09,
    catches=[
        case_of(LOW_HOT_IDLE_GOOD_SPEED, ENGINE_RUNS_NORMALLY),
        case_of(GOOD_COLD_LOW_HOT, FLICKERS_ONLY_AT_HOT_IDLE, ENGINE_RUNS_NORMALLY),
    ],
    spares=[
        case_of(LOW_AT_ALL_SPEEDS, lacks=[ENGINE_RUNS_NORMALLY]),
        case_of(GAUGE_READS_LOW, DIRECT_GAUGE_LOW, LOW_AT_ALL_SPEEDS),
    ],
)
def quietly_low_at_a_hot_idle(known: Known) -> Conclusions:
    """Low at a hot idle, good at speed, the engine quiet: that is how warm oil behaves.

    Misleads when the hot reading is under the maker's own limit, or was never this low before.
    """
    yield leads_to(OIL_HOT_NORMAL, GOOD_COLD_LOW_HOT, MOSTLY)
    yield leads_to(OIL_HOT_NORMAL, LOW_HOT_IDLE_GOOD_SPEED, OFTEN)
    yield leads_to(OIL_HOT_NORMAL, GAUGE_READS_LOW, OFTEN)
    yield leads_to(OIL_HOT_NORMAL, FLICKERS_ONLY_AT_HOT_IDLE, SOMETIMES)
    yield leads_to(OIL_HOT_NORMAL, RISES_JUST_OFF_IDLE, SOMETIMES)
    yield leads_to(OIL_HOT_NORMAL, SAGS_AS_OIL_HEATS, SELDOM)
    yield leads_to(OIL_HOT_NORMAL, LAMP_COMES_ON, SELDOM)
    yield leads_to(OIL_HOT_NORMAL, DIRECT_GAUGE_LOW, SELDOM)
    yield leads_to(OIL_HOT_NORMAL, ENGINE_RUNS_NORMALLY, ALWAYS)


@rule(
    source=HB04,
    catches=[case_of(GAUGE_READS_HIGH, OIL_VERY_COLD, ENGINE_RUNS_NORMALLY)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[GAUGE_READS_HIGH])],
)
def high_only_until_warm(known: Known) -> Conclusions:
    """High with cold oil and down again when warm: cold oil is stiff, nothing is wrong."""
    yield leads_to(OIL_COLD_NORMAL, GAUGE_READS_HIGH, MOSTLY)
    yield leads_to(OIL_COLD_NORMAL, CLIMBS_PAST_SETTING, SELDOM)
    yield leads_to(OIL_COLD_NORMAL, OIL_VERY_COLD, OFTEN)
    yield leads_to(OIL_COLD_NORMAL, ENGINE_RUNS_NORMALLY, ALWAYS)


@rule(
    source=CP,
    catches=[case_of(RIGHT_GRADE_CURES)],
    spares=[case_of(GOOD_COLD_LOW_HOT, lacks=[RIGHT_GRADE_CURES])],
)
def fresh_oil_puts_it_right(known: Known) -> Conclusions:
    """If fresh oil of the right grade puts it right, the oil was at fault and nothing else."""
    yield leads_to(OIL_THIN, RIGHT_GRADE_CURES, OFTEN)

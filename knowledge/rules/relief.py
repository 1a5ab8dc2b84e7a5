"""What follows at the relief valve."""

from knowledge.causes.relief import (
    RELIEF_BORE_SCORED,
    RELIEF_CAP_LOOSE,
    RELIEF_DEBRIS,
    RELIEF_HUNTING,
    RELIEF_PART_MISSING,
    RELIEF_RETURN_PLUGGED,
    RELIEF_SPRING_WEAK_BROKEN,
    RELIEF_SPRING_WRONG,
    RELIEF_STUCK_CLOSED,
    RELIEF_STUCK_OPEN,
)
from knowledge.conditions import (
    OIL_ESCAPING,
    PRESSURE_GONE,
    PRESSURE_UNSTEADY,
    RELIEF_BLEEDS,
    RELIEF_CAPS_LOW,
    RELIEF_HOLDS_HIGH,
)
from knowledge.findings.behaviour import NONE_FROM_FIRST_START
from knowledge.findings.pressure import (
    CAPPED_LOW,
    CLIMBS_PAST_SETTING,
    FELL_SUDDENLY,
    FLICKERS_ONLY_AT_SPEED,
    GAUGE_READS_LOW,
    LOW_HOT_IDLE_GOOD_SPEED,
    NEEDLE_FLICKERS,
)
from knowledge.findings.relief import (
    DEBRIS_ON_RELIEF_SEAT,
    RELIEF_ADJUSTER_NO_EFFECT,
    RELIEF_BENCH_OPENS_HIGH,
    RELIEF_BENCH_OPENS_LOW,
    RELIEF_CAP_LOOSE_OR_LEAKING,
    RELIEF_PART_ABSENT,
    RELIEF_PARTS_NOT_STANDARD,
    RELIEF_PLUNGER_STICKS,
    RELIEF_RETURN_BLOCKED,
    RELIEF_SEAT_SCORED,
    RELIEF_SPRING_SHORT_OR_BROKEN,
    RELIEF_VALVE_STAYED_OPEN,
    RELIEF_VALVE_STAYED_SHUT,
)
from knowledge.rulebook import Conclusions, Known, case_of, is_absent, leads_to, rules_of
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import FBE, HB03, HB10, HB22, JHV, OLD, PF
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.RELIEF)


@rule(
    source=HB22,
    catches=[case_of(NEEDLE_FLICKERS, DEBRIS_ON_RELIEF_SEAT), case_of(DEBRIS_ON_RELIEF_SEAT)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[DEBRIS_ON_RELIEF_SEAT])],
)
def chip_under_the_ball(known: Known) -> Conclusions:
    """A chip under the ball bleeds pressure, most at idle, and the needle may waver with it.

    Of the leaks inside an engine this is the one named most often. Misleads when the chip is
    following damage: a wiped bearing sheds what the valve then catches.
    """
    yield leads_to(RELIEF_DEBRIS, RELIEF_BLEEDS, ALWAYS)
    yield leads_to(RELIEF_DEBRIS, PRESSURE_UNSTEADY, OFTEN)
    yield leads_to(RELIEF_DEBRIS, FELL_SUDDENLY, SELDOM)
    yield leads_to(RELIEF_DEBRIS, DEBRIS_ON_RELIEF_SEAT, MOSTLY)


@rule(
    source=PF,
    catches=[case_of(GAUGE_READS_LOW, RELIEF_VALVE_STAYED_OPEN)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[RELIEF_PLUNGER_STICKS, RELIEF_VALVE_STAYED_OPEN])],
)
def plunger_that_does_not_come_back(known: Known) -> Conclusions:
    """A plunger seized part-way open lets oil past at every speed; fully open, nothing is left.

    When the plug is undone the spring pushes it off while the valve stays where it is.
    """
    yield leads_to(RELIEF_STUCK_OPEN, RELIEF_BLEEDS, ALWAYS)
    yield leads_to(RELIEF_STUCK_OPEN, PRESSURE_GONE, SOMETIMES)
    yield leads_to(RELIEF_STUCK_OPEN, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(RELIEF_STUCK_OPEN, RELIEF_VALVE_STAYED_OPEN, MOSTLY)
    yield leads_to(RELIEF_STUCK_OPEN, RELIEF_PLUNGER_STICKS, MOSTLY)


@rule(
    source=HB03,
    catches=[case_of(LOW_HOT_IDLE_GOOD_SPEED, RELIEF_SEAT_SCORED)],
    spares=[case_of(LOW_HOT_IDLE_GOOD_SPEED, lacks=[RELIEF_SEAT_SCORED])],
)
def worn_seat_leaks_when_shut(known: Known) -> Conclusions:
    """A worn or scored seat leaks while shut: low at idle, and debris sticks there again."""
    yield leads_to(RELIEF_BORE_SCORED, RELIEF_BLEEDS, MOSTLY)
    yield leads_to(RELIEF_BORE_SCORED, RELIEF_CAPS_LOW, SOMETIMES)
    yield leads_to(RELIEF_BORE_SCORED, RELIEF_SEAT_SCORED, ALWAYS)
    yield leads_to(RELIEF_BORE_SCORED, DEBRIS_ON_RELIEF_SEAT, SELDOM)


@rule(
    source=PF,
    catches=[case_of(CAPPED_LOW), case_of(CAPPED_LOW, RELIEF_SPRING_SHORT_OR_BROKEN)],
    spares=[case_of(LOW_HOT_IDLE_GOOD_SPEED, lacks=[CAPPED_LOW])],
)
def steady_low_ceiling(known: Known) -> Conclusions:
    """A tired spring gives a steady low ceiling; it does not explain a low hot idle."""
    yield leads_to(RELIEF_SPRING_WEAK_BROKEN, RELIEF_CAPS_LOW, ALWAYS)
    yield leads_to(RELIEF_SPRING_WEAK_BROKEN, PRESSURE_GONE, SELDOM)
    yield leads_to(RELIEF_SPRING_WEAK_BROKEN, RELIEF_SPRING_SHORT_OR_BROKEN, ALWAYS)
    yield leads_to(RELIEF_SPRING_WEAK_BROKEN, RELIEF_BENCH_OPENS_LOW, MOSTLY)


@rule(
    source=JHV,
    catches=[case_of(CAPPED_LOW, RELIEF_PARTS_NOT_STANDARD), case_of(RELIEF_BENCH_OPENS_HIGH)],
    spares=[case_of(CAPPED_LOW, lacks=[RELIEF_PARTS_NOT_STANDARD])],
)
def foreign_spring_or_shims(known: Known) -> Conclusions:
    """Shims, a foreign spring or reversed parts move the ceiling, up or down."""
    yield leads_to(RELIEF_SPRING_WRONG, RELIEF_CAPS_LOW, OFTEN)
    yield leads_to(RELIEF_SPRING_WRONG, RELIEF_HOLDS_HIGH, OFTEN)
    yield leads_to(RELIEF_SPRING_WRONG, RELIEF_PARTS_NOT_STANDARD, MOSTLY)
    yield leads_to(RELIEF_SPRING_WRONG, RELIEF_BENCH_OPENS_LOW, SOMETIMES)
    yield leads_to(RELIEF_SPRING_WRONG, RELIEF_BENCH_OPENS_HIGH, SOMETIMES)


@rule(
    source=OLD,
    catches=[case_of(FELL_SUDDENLY, RELIEF_CAP_LOOSE_OR_LEAKING)],
    spares=[case_of(FELL_SUDDENLY, lacks=[RELIEF_CAP_LOOSE_OR_LEAKING])],
)
def cap_backs_out(known: Known) -> Conclusions:
    """A relief cap that backs out takes the spring's load away, then the oil."""
    yield leads_to(RELIEF_CAP_LOOSE, RELIEF_CAPS_LOW, OFTEN)
    yield leads_to(RELIEF_CAP_LOOSE, OIL_ESCAPING, SOMETIMES)
    yield leads_to(RELIEF_CAP_LOOSE, PRESSURE_GONE, OFTEN)
    yield leads_to(RELIEF_CAP_LOOSE, FELL_SUDDENLY, OFTEN)
    yield leads_to(RELIEF_CAP_LOOSE, RELIEF_CAP_LOOSE_OR_LEAKING, ALWAYS)


@rule(
    source=HB10,
    catches=[case_of(NONE_FROM_FIRST_START, RELIEF_PART_ABSENT)],
    spares=[case_of(NONE_FROM_FIRST_START, lacks=[RELIEF_PART_ABSENT])],
)
def relief_put_together_without_its_ball(known: Known) -> Conclusions:
    """A relief valve put together without ball, plunger or spring gives next to nothing."""
    yield leads_to(RELIEF_PART_MISSING, PRESSURE_GONE, ALWAYS)
    yield leads_to(RELIEF_PART_MISSING, NONE_FROM_FIRST_START, MOSTLY)
    yield leads_to(RELIEF_PART_MISSING, RELIEF_PART_ABSENT, ALWAYS)


@rule(
    source=HB03,
    catches=[case_of(CLIMBS_PAST_SETTING, RELIEF_VALVE_STAYED_SHUT)],
    spares=[case_of(CLIMBS_PAST_SETTING, lacks=[RELIEF_VALVE_STAYED_SHUT, RELIEF_PLUNGER_STICKS])],
)
def valve_seized_shut(known: Known) -> Conclusions:
    """A valve seized shut lets cold pressure climb until a filter or a drive gives way."""
    yield leads_to(RELIEF_STUCK_CLOSED, RELIEF_HOLDS_HIGH, ALWAYS)
    yield leads_to(RELIEF_STUCK_CLOSED, RELIEF_VALVE_STAYED_SHUT, MOSTLY)
    yield leads_to(RELIEF_STUCK_CLOSED, RELIEF_PLUNGER_STICKS, MOSTLY)
    yield leads_to(RELIEF_STUCK_CLOSED, RELIEF_ADJUSTER_NO_EFFECT, MOSTLY)
    yield leads_to(RELIEF_STUCK_CLOSED, RELIEF_BENCH_OPENS_HIGH, OFTEN)


@rule(
    source=CP,
    catches=[case_of(CLIMBS_PAST_SETTING, RELIEF_RETURN_BLOCKED)],
    spares=[case_of(CLIMBS_PAST_SETTING, lacks=[RELIEF_RETURN_BLOCKED])],
)
def relieved_oil_has_nowhere_to_go(known: Known) -> Conclusions:
    """A plugged return makes a good valve useless: it opens, and the oil cannot leave."""
    yield leads_to(RELIEF_RETURN_PLUGGED, RELIEF_HOLDS_HIGH, ALWAYS)
    yield leads_to(RELIEF_RETURN_PLUGGED, RELIEF_RETURN_BLOCKED, ALWAYS)
    yield leads_to(RELIEF_RETURN_PLUGGED, RELIEF_ADJUSTER_NO_EFFECT, MOSTLY)


@rule(
    source=CP,
    catches=[case_of(FLICKERS_ONLY_AT_SPEED)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[FLICKERS_ONLY_AT_SPEED])],
)
def flutter_at_the_setting(known: Known) -> Conclusions:
    """A loose plunger hunts: quick flutter at the setting, at high revs, steady below it."""
    yield leads_to(RELIEF_HUNTING, FLICKERS_ONLY_AT_SPEED, MOSTLY)
    yield leads_to(RELIEF_HUNTING, PRESSURE_UNSTEADY, OFTEN)
    yield leads_to(RELIEF_HUNTING, RELIEF_SEAT_SCORED, SOMETIMES)


@rule(
    source=FBE,
    catches=[case_of(lacks=[RELIEF_PLUNGER_STICKS])],
    spares=[case_of(RELIEF_PLUNGER_STICKS)],
)
def plunger_that_drops_is_not_seized(known: Known) -> Conclusions:
    """A plunger that drops by its own weight was seized neither open nor shut.

    Misleads when the plunger was freed on the way out.
    """
    if known.lacks(RELIEF_PLUNGER_STICKS):
        yield is_absent(RELIEF_VALVE_STAYED_SHUT, sure=0.9)

"""Layouts, circumstances, the measured gap, what follows and what does not fit."""

from knowledge.causes.suction import (
    ATTITUDE_UNCOVERS_PICKUP,
    FOREIGN_BODY_IN_SUMP,
    ICE_IN_PICKUP,
    PICKUP_CLEARANCE_TIGHT,
    PICKUP_CLEARANCE_WIDE,
    PICKUP_SCREEN_BYPASS_OPEN,
    PICKUP_TUBE_LOOSE,
    SUCTION_HOSE_COLLAPSED,
    SUCTION_JOINT_AIR_LEAK,
    WINDAGE_AERATION,
)
from knowledge.engines.features import (
    DRY_SUMP,
    FLOATING_PICKUP,
    PRESSED_PICKUP,
    PUMP_ON_CRANK_NOSE,
    PUMP_OUTSIDE,
    TILTS,
)
from knowledge.findings.history import (
    IDLES_LONG,
    JUST_WORKED_ON,
    STOOD_IN_FROST,
)
from knowledge.findings.suction import (
    BUBBLES_IN_JOINT_TEST,
    PICKUP_GAP,
    PICKUP_GAP_TOO_LARGE,
    PICKUP_GAP_TOO_SMALL,
    PICKUP_TUBE_CRACK_SEEN,
    PICKUP_WITNESS_MARK,
    TANK_STILL_FULL,
    TRAY_VERY_OLD,
)
from knowledge.findings.suction_debris import (
    CLOTH_ON_SCREEN,
    FOREIGN_MATERIAL_ON_SCREEN,
    GASKET_ON_SCREEN,
    ICE_AT_SCREEN,
    PASTE_ON_SCREEN,
    PLASTIC_ON_SCREEN,
    SCREEN_BLOCKED,
    SEALER_ON_SCREEN,
)
from knowledge.reference.judging import sure_beyond
from knowledge.reference.limits import LEAST_PICKUP_GAP, MOST_PICKUP_GAP
from knowledge.rulebook import (
    Conclusions,
    Contradiction,
    Derived,
    Known,
    cannot_be,
    case_of,
    is_absent,
    is_present,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import AZN, ELP, GMC, HB01, OST, SLO
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Finding, Shift, Station

rule = rules_of(Station.SUCTION)

# ----------------------------------------------------------------------------- layouts


@rule(source=OST, catches=[case_of(DRY_SUMP)], spares=[case_of(lacks=[DRY_SUMP])])
def no_pickup_in_the_pan(known: Known) -> Conclusions:
    """With the oil in a tank there is no pressure pickup over a sump floor to be loose or misset."""
    if known.has(DRY_SUMP):
        yield cannot_be(PICKUP_TUBE_LOOSE)
        yield cannot_be(PICKUP_CLEARANCE_TIGHT)
        yield cannot_be(PICKUP_CLEARANCE_WIDE)
        yield cannot_be(PICKUP_SCREEN_BYPASS_OPEN)
        yield less_common(WINDAGE_AERATION)


@rule(source=CP, catches=[case_of(FLOATING_PICKUP)], spares=[case_of(lacks=[FLOATING_PICKUP])])
def pickup_rides_on_the_oil(known: Known) -> Conclusions:
    """A floating pickup rides on the oil: it has no set gap to the floor."""
    if known.has(FLOATING_PICKUP):
        yield cannot_be(PICKUP_CLEARANCE_TIGHT)
        yield cannot_be(PICKUP_CLEARANCE_WIDE)


@rule(
    source=CP,
    catches=[case_of(lacks=[DRY_SUMP, PUMP_OUTSIDE])],
    spares=[case_of(DRY_SUMP), case_of(PUMP_OUTSIDE, lacks=[DRY_SUMP])],
)
def no_hose_to_collapse(known: Known) -> Conclusions:
    """Without a tank or an outside pump there is no suction hose to collapse."""
    if known.lacks(DRY_SUMP) and known.lacks(PUMP_OUTSIDE):
        yield cannot_be(SUCTION_HOSE_COLLAPSED)


@rule(
    source=AZN,
    catches=[case_of(PUMP_ON_CRANK_NOSE), case_of(PUMP_OUTSIDE)],
    spares=[case_of(lacks=[PUMP_ON_CRANK_NOSE, PUMP_OUTSIDE])],
)
def pickup_bolted_up_and_sealed(known: Known) -> Conclusions:
    """On a front-cover or outside pump the pickup is bolted and sealed: joints fail before tubes."""
    if known.has(PUMP_ON_CRANK_NOSE) or known.has(PUMP_OUTSIDE):
        yield more_common(SUCTION_JOINT_AIR_LEAK)
        yield less_common(PICKUP_TUBE_LOOSE)
        yield less_common(PICKUP_SCREEN_BYPASS_OPEN)


@rule(source=HB01, catches=[case_of(DRY_SUMP)], spares=[case_of(lacks=[DRY_SUMP])])
def long_suction_side(known: Known) -> Conclusions:
    """The more joints between tank and pump, the more places for air to come in."""
    if known.has(DRY_SUMP):
        yield more_common(SUCTION_JOINT_AIR_LEAK)


@rule(source=GMC, catches=[case_of(PRESSED_PICKUP)], spares=[case_of(lacks=[PRESSED_PICKUP])])
def press_fit_does_not_last(known: Known) -> Conclusions:
    """A tube held only by its press fit works loose more often, above all once it was out."""
    if known.has(PRESSED_PICKUP):
        yield more_common(PICKUP_TUBE_LOOSE)


@rule(source=SLO, catches=[case_of(TILTS)], spares=[case_of(lacks=[TILTS])])
def engine_that_leans(known: Known) -> Conclusions:
    """An engine that sits inclined, heels or works on slopes uncovers its pickup sooner."""
    if known.has(TILTS):
        yield more_common(ATTITUDE_UNCOVERS_PICKUP)


# ----------------------------------------------------------------------- circumstances


@rule(
    source=CP,
    catches=[case_of(STOOD_IN_FROST), case_of(lacks=[STOOD_IN_FROST])],
    spares=[case_of(IDLES_LONG)],
)
def frost_decides_on_ice(known: Known) -> Conclusions:
    """Ice needs frost: likelier after a night below freezing, hardly thinkable without one."""
    if known.has(STOOD_IN_FROST):
        yield more_common(ICE_IN_PICKUP, Shift.STRONG_UP)
    if known.lacks(STOOD_IN_FROST):
        yield less_common(ICE_IN_PICKUP, Shift.STRONG_DOWN)


@rule(source=CP, catches=[case_of(IDLES_LONG)], spares=[case_of(lacks=[IDLES_LONG])])
def short_trips_leave_water(known: Known) -> Conclusions:
    """Short cold trips leave water in the sump, which freezes when the frost comes."""
    if known.has(IDLES_LONG):
        yield more_common(ICE_IN_PICKUP)


@rule(source=CP, catches=[case_of(JUST_WORKED_ON)], spares=[case_of(lacks=[JUST_WORKED_ON])])
def hands_were_inside(known: Known) -> Conclusions:
    """After work on the engine, think of what the work may have left inside."""
    if known.has(JUST_WORKED_ON):
        yield more_common(FOREIGN_BODY_IN_SUMP)


@rule(source=CP, catches=[case_of(TRAY_VERY_OLD)], spares=[case_of(lacks=[TRAY_VERY_OLD])])
def tray_older_than_its_steel_lasts(known: Known) -> Conclusions:
    """A stock tray some fifty years old is a risk by itself: it cracks, sags and meets the rods."""
    if known.has(TRAY_VERY_OLD):
        yield more_common(WINDAGE_AERATION, Shift.STRONG_UP)


# ------------------------------------------------------------------- what follows from what


def judged(finding: Finding, past: float) -> Derived:
    """The finding as likely as the measurement makes it: there, or not there."""
    return is_present(finding, past) if past >= 0.5 else is_absent(finding, 1.0 - past)


@rule(
    source=ELP,
    catches=[
        case_of(measures={PICKUP_GAP: 0.001}),
        case_of(measures={PICKUP_GAP: 0.008}),
        case_of(measures={PICKUP_GAP: 0.025}),
    ],
    spares=[case_of(PICKUP_WITNESS_MARK), case_of(PICKUP_GAP_TOO_SMALL)],
)
def measured_gap_against_its_limits(known: Known) -> Conclusions:
    """The gap from pickup to sump floor is held against the least and the most allowed.

    Misleads when it was measured without the sump's own gasket.
    """
    least = known.smallest(PICKUP_GAP)
    if least is not None:
        under = sure_beyond(known.limit(LEAST_PICKUP_GAP), least, PICKUP_GAP.spread)
        yield judged(PICKUP_GAP_TOO_SMALL, under)
    most = known.measured(PICKUP_GAP)
    if most is not None:
        over = sure_beyond(most, known.limit(MOST_PICKUP_GAP), PICKUP_GAP.spread)
        yield judged(PICKUP_GAP_TOO_LARGE, over)


@rule(
    source=CP,
    catches=[
        case_of(CLOTH_ON_SCREEN),
        case_of(SEALER_ON_SCREEN),
        case_of(lacks=[FOREIGN_MATERIAL_ON_SCREEN]),
    ],
    spares=[case_of(SCREEN_BLOCKED)],
)
def named_stuff_is_foreign_stuff(known: Known) -> Conclusions:
    """Sealer, gasket, plastic or cloth on the screen is foreign material; none of it, if none is."""
    kinds = (SEALER_ON_SCREEN, GASKET_ON_SCREEN, PLASTIC_ON_SCREEN, CLOTH_ON_SCREEN)
    if any(known.has(kind) for kind in kinds):
        yield is_present(FOREIGN_MATERIAL_ON_SCREEN)
    if known.lacks(FOREIGN_MATERIAL_ON_SCREEN):
        for kind in kinds:
            yield is_absent(kind, sure=0.95)


@rule(
    source=CP,
    catches=[case_of(lacks=[SCREEN_BLOCKED])],
    spares=[case_of(SCREEN_BLOCKED)],
)
def clear_screen_carries_nothing(known: Known) -> Conclusions:
    """A screen found clear carries no rag, ice or paste.

    Misleads when the sump was tipped or the ice had melted before anyone looked.
    """
    if known.lacks(SCREEN_BLOCKED):
        yield is_absent(CLOTH_ON_SCREEN, sure=0.9)
        yield is_absent(ICE_AT_SCREEN, sure=0.8)
        yield is_absent(PASTE_ON_SCREEN, sure=0.9)


# ------------------------------------------------------------------ what does not fit


@rule(
    source=ELP,
    catches=[
        case_of(PICKUP_GAP_TOO_LARGE, PICKUP_GAP_TOO_SMALL),
        case_of(PICKUP_GAP_TOO_LARGE, PICKUP_WITNESS_MARK),
    ],
    spares=[case_of(PICKUP_GAP_TOO_LARGE), case_of(PICKUP_GAP_TOO_SMALL, PICKUP_WITNESS_MARK)],
)
def gap_wide_and_yet_touching(known: Known) -> Conclusions:
    """A gap said to be too large does not fit one too small, nor a pickup that touched the floor."""
    if known.has(PICKUP_GAP_TOO_LARGE) and known.has(PICKUP_GAP_TOO_SMALL):
        yield Contradiction(
            (PICKUP_GAP_TOO_LARGE, PICKUP_GAP_TOO_SMALL),
            "the gap cannot be too large and too small: measure again with the real gasket",
            PICKUP_GAP_TOO_SMALL,
        )
    if known.has(PICKUP_GAP_TOO_LARGE) and known.has(PICKUP_WITNESS_MARK):
        yield Contradiction(
            (PICKUP_GAP_TOO_LARGE, PICKUP_WITNESS_MARK),
            "a pickup that touched the floor is not too high: is the mark from this pickup?",
            PICKUP_GAP_TOO_LARGE,
        )


@rule(
    source=CP,
    catches=[case_of(PICKUP_TUBE_CRACK_SEEN, lacks=[BUBBLES_IN_JOINT_TEST])],
    spares=[case_of(PICKUP_TUBE_CRACK_SEEN, BUBBLES_IN_JOINT_TEST)],
)
def crack_that_does_not_bubble(known: Known) -> Conclusions:
    """A crack in the tube that gives no bubbles is a scratch, or the test did not reach it."""
    if known.has(PICKUP_TUBE_CRACK_SEEN) and known.lacks(BUBBLES_IN_JOINT_TEST):
        yield Contradiction(
            (PICKUP_TUBE_CRACK_SEEN, BUBBLES_IN_JOINT_TEST),
            "a crack right through would bubble: repeat the test with the crack under solvent",
            BUBBLES_IN_JOINT_TEST,
        )


@rule(
    source=CP,
    catches=[case_of(TANK_STILL_FULL, lacks=[DRY_SUMP])],
    spares=[case_of(TANK_STILL_FULL, DRY_SUMP), case_of(lacks=[DRY_SUMP])],
)
def tank_on_an_engine_without_one(known: Known) -> Conclusions:
    """An oil tank is reported on an engine said to keep its oil in the sump."""
    if known.has(TANK_STILL_FULL) and known.lacks(DRY_SUMP):
        yield Contradiction(
            (TANK_STILL_FULL, DRY_SUMP),
            "the engine is said to have no oil tank, yet its tank was seen: set the layout right",
            DRY_SUMP,
        )

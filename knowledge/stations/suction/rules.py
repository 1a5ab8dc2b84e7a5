"""Rules at the suction side: what follows from what is known."""

from knowledge import sources
from knowledge.alarm import Contradiction
from knowledge.circuit import conditions
from knowledge.engines import features, features_build
from knowledge.history import findings as history
from knowledge.judging import beyond_limit
from knowledge.model import SELDOM, SOMETIMES, Shift, Station
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import LOSSES, Circumstance, Shows
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    is_absent,
    is_present,
    leads_to,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.suction import (
    causes,
    causes_sump,
    causes_tap,
    findings,
    findings_pickup,
    findings_sump,
    quantities,
)

rule = rules_of(Station.SUCTION)
LEANING = frozenset({Circumstance.SLOPE, Circumstance.SEAWAY})
LOST_OR_UNSTEADY = LOSSES | {Shows.UNSTEADY}


@rule(
    source=JUDGEMENT,
    matches=[example(features.DRY_SUMP)],
    non_matches=[example(lacks=[features.DRY_SUMP])],
)
def no_pickup_in_the_pan(known: Known) -> Conclusions:
    """With the oil in a tank there is no pickup over a sump floor to come loose or be set wrong."""
    if known.has(features.DRY_SUMP):
        yield cannot_be(causes.PICKUP_TUBE_LOOSE)
        yield cannot_be(causes_sump.PICKUP_CLEARANCE_TIGHT)
        yield cannot_be(causes_sump.PICKUP_CLEARANCE_WIDE)
        yield cannot_be(causes.PICKUP_SCREEN_BYPASS_OPEN)
        yield less_common(causes_sump.WINDAGE_AERATION)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.FLOATING_PICKUP)],
    non_matches=[example(lacks=[features.FLOATING_PICKUP])],
)
def pickup_rides_on_the_oil(known: Known) -> Conclusions:
    """A floating pickup rides on the oil: it has no set gap to the floor."""
    if known.has(features.FLOATING_PICKUP):
        yield cannot_be(causes_sump.PICKUP_CLEARANCE_TIGHT)
        yield cannot_be(causes_sump.PICKUP_CLEARANCE_WIDE)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[features.DRY_SUMP, features.PUMP_OUTSIDE])],
    non_matches=[
        example(features.DRY_SUMP),
        example(features.PUMP_OUTSIDE, lacks=[features.DRY_SUMP]),
    ],
)
def no_hose_to_collapse(known: Known) -> Conclusions:
    """Without a tank or an outside pump there is no suction hose to collapse."""
    if known.lacks(features.DRY_SUMP) and known.lacks(features.PUMP_OUTSIDE):
        yield cannot_be(causes_sump.SUCTION_HOSE_COLLAPSED)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[features.DRY_SUMP])],
    non_matches=[example(features.DRY_SUMP), example()],
)
def few_taps_without_a_tank(known: Known) -> Conclusions:
    """Without an oil tank hardly any engine has a tap in the oil line."""
    if known.lacks(features.DRY_SUMP):
        yield less_common(causes_tap.OIL_TAP_SHUT, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.TANK_TAP)],
    non_matches=[example(lacks=[features_build.TANK_TAP]), example(features.DRY_SUMP)],
)
def a_tap_can_be_left_shut(known: Known) -> Conclusions:
    """A tap against wet sumping is forgotten sooner or later, and a check valve sticks shut."""
    if known.has(features_build.TANK_TAP):
        yield more_common(causes_tap.OIL_TAP_SHUT, Shift.STRONG_UP)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.PUMP_ON_CRANK_NOSE), example(features.PUMP_OUTSIDE)],
    non_matches=[example(lacks=[features.PUMP_ON_CRANK_NOSE, features.PUMP_OUTSIDE])],
)
def pickup_bolted_up_and_sealed(known: Known) -> Conclusions:
    """A front-cover or outside pump has a bolted, sealed pickup: joints fail before tubes."""
    if known.has(features.PUMP_ON_CRANK_NOSE) or known.has(features.PUMP_OUTSIDE):
        yield more_common(causes.SUCTION_JOINT_AIR_LEAK)
        yield less_common(causes.PICKUP_TUBE_LOOSE)
        yield less_common(causes.PICKUP_SCREEN_BYPASS_OPEN)


@rule(
    source=idea_from(sources.ARMY_TM_347_CHART_1973),
    matches=[example(features.DRY_SUMP)],
    non_matches=[example(lacks=[features.DRY_SUMP])],
)
def long_suction_side(known: Known) -> Conclusions:
    """The more joints between tank and pump, the more places for air to get in."""
    if known.has(features.DRY_SUMP):
        yield more_common(causes.SUCTION_JOINT_AIR_LEAK)


@rule(
    source=JUDGEMENT,
    matches=[example(features.PRESSED_PICKUP, history.SUMP_OR_PUMP_SWAPPED)],
    non_matches=[
        example(features.PRESSED_PICKUP),
        example(history.SUMP_OR_PUMP_SWAPPED, lacks=[features.PRESSED_PICKUP]),
    ],
)
def press_fit_does_not_last(known: Known) -> Conclusions:
    """A tube held only by its press fit comes loose more often once it has been out.

    Idea from the truck service text of 1994, for a screen that was removed; the factor is
    judgement.
    """
    if known.has(features.PRESSED_PICKUP) and known.has(history.SUMP_OR_PUMP_SWAPPED):
        yield more_common(causes.PICKUP_TUBE_LOOSE)


@rule(
    source=sources.SUMP_TILT_TEST,
    matches=[example(features.TILTS)],
    non_matches=[example(lacks=[features.TILTS])],
)
def engine_that_leans(known: Known) -> Conclusions:
    """In an engine on a slant, heeling or on slopes, the pickup comes out of the oil sooner."""
    if known.has(features.TILTS):
        yield more_common(causes_sump.ATTITUDE_UNCOVERS_PICKUP)


@rule(
    source=sources.SUMP_TILT_TEST,
    matches=[
        example(behaviours=[Behaviour(Shows.LAMP, frozenset({Circumstance.SLOPE}))]),
        example(behaviours=[Behaviour(Shows.LOW, frozenset({Circumstance.SEAWAY}))]),
    ],
    non_matches=[
        example(behaviours=[Behaviour(Shows.LOW, frozenset({Circumstance.BENDS}))]),
        example(behaviours=[Behaviour(Shows.KNOCK, frozenset({Circumstance.SLOPE}))]),
    ],
)
def leans_where_it_fails(known: Known) -> Conclusions:
    """Pressure lost on a slope or in a seaway: the engine is used at angles that move the oil."""
    if any(b.shows in LOST_OR_UNSTEADY and b.during & LEANING for b in known.behaviours()):
        yield more_common(causes_sump.ATTITUDE_UNCOVERS_PICKUP)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(history.STOOD_IN_FROST), example(lacks=[history.STOOD_IN_FROST])],
    non_matches=[example(history.IDLES_LONG)],
)
def frost_decides_on_ice(known: Known) -> Conclusions:
    """Ice needs frost: likelier after a night below freezing, almost impossible without one."""
    if known.has(history.STOOD_IN_FROST):
        yield more_common(causes_sump.ICE_IN_PICKUP, Shift.STRONG_UP)
    if known.lacks(history.STOOD_IN_FROST):
        yield less_common(causes_sump.ICE_IN_PICKUP, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(history.IDLES_LONG)],
    non_matches=[example(lacks=[history.IDLES_LONG])],
)
def short_trips_leave_water(known: Known) -> Conclusions:
    """Short cold trips leave water in the sump, which freezes in frost."""
    if known.has(history.IDLES_LONG):
        yield more_common(causes_sump.ICE_IN_PICKUP)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(history.JUST_WORKED_ON)],
    non_matches=[example(lacks=[history.JUST_WORKED_ON])],
)
def hands_were_inside(known: Known) -> Conclusions:
    """After work on the engine, look for what may have been left inside."""
    if known.has(history.JUST_WORKED_ON):
        yield more_common(causes_sump.FOREIGN_BODY_IN_SUMP)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.TRAY_VERY_OLD)],
    non_matches=[example(lacks=[findings.TRAY_VERY_OLD])],
)
def tray_older_than_its_steel_lasts(known: Known) -> Conclusions:
    """A stock tray some fifty years old is a risk: it cracks, sags and hits the rods."""
    if known.has(findings.TRAY_VERY_OLD):
        yield more_common(causes_sump.WINDAGE_AERATION, Shift.STRONG_UP)


@rule(
    source=idea_from(sources.OIL_PAN_TIPS),
    matches=[
        example(measures={findings_pickup.PICKUP_GAP: 0.001}),
        example(measures={findings_pickup.PICKUP_GAP: 0.008}),
        example(measures={findings_pickup.PICKUP_GAP: 0.025}),
    ],
    non_matches=[
        example(findings_sump.PICKUP_WITNESS_MARK),
        example(findings_pickup.PICKUP_GAP_TOO_SMALL),
    ],
)
def measured_gap_against_its_limits(known: Known) -> Conclusions:
    """The gap from pickup to sump floor, compared with its limits.

    Misleads when it was measured without the sump's own gasket.
    """
    gap, small, large = (
        findings_pickup.PICKUP_GAP,
        findings_pickup.PICKUP_GAP_TOO_SMALL,
        findings_pickup.PICKUP_GAP_TOO_LARGE,
    )
    yield from beyond_limit(known, small, gap, quantities.LEAST_PICKUP_GAP)
    yield from beyond_limit(known, large, gap, quantities.MOST_PICKUP_GAP)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings_sump.CLOTH_ON_SCREEN),
        example(findings_sump.SEALER_ON_SCREEN),
        example(lacks=[findings_sump.FOREIGN_MATERIAL_ON_SCREEN]),
    ],
    non_matches=[example(findings_sump.SCREEN_BLOCKED)],
)
def named_stuff_is_foreign_stuff(known: Known) -> Conclusions:
    """Sealer, gasket, plastic or cloth on the screen is foreign; a clean screen has none."""
    kinds = (
        findings_sump.SEALER_ON_SCREEN,
        findings_sump.GASKET_ON_SCREEN,
        findings_sump.PLASTIC_ON_SCREEN,
        findings_sump.CLOTH_ON_SCREEN,
    )
    if any(known.has(kind) for kind in kinds):
        yield is_present(findings_sump.FOREIGN_MATERIAL_ON_SCREEN)
    if known.lacks(findings_sump.FOREIGN_MATERIAL_ON_SCREEN):
        for kind in kinds:
            yield is_absent(kind, sure=0.95)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[findings_sump.SCREEN_BLOCKED])],
    non_matches=[example(findings_sump.SCREEN_BLOCKED)],
)
def clear_screen_carries_nothing(known: Known) -> Conclusions:
    """A screen found clear carries no rag, ice or paste.

    Misleads when the sump was tipped or the ice had melted before anyone looked.
    """
    if known.lacks(findings_sump.SCREEN_BLOCKED):
        yield is_absent(findings_sump.CLOTH_ON_SCREEN, sure=0.9)
        yield is_absent(findings_sump.ICE_AT_SCREEN, sure=0.8)
        yield is_absent(findings_sump.PASTE_ON_SCREEN, sure=0.9)


@rule(
    source=JUDGEMENT,
    matches=[
        example(findings_pickup.PICKUP_GAP_TOO_LARGE, findings_pickup.PICKUP_GAP_TOO_SMALL),
        example(findings_pickup.PICKUP_GAP_TOO_LARGE, findings_sump.PICKUP_WITNESS_MARK),
    ],
    non_matches=[
        example(findings_pickup.PICKUP_GAP_TOO_LARGE),
        example(findings_pickup.PICKUP_GAP_TOO_SMALL, findings_sump.PICKUP_WITNESS_MARK),
    ],
)
def gap_wide_and_yet_touching(known: Known) -> Conclusions:
    """A gap cannot be both too large and too small, and a high pickup touches no floor."""
    if known.has(findings_pickup.PICKUP_GAP_TOO_LARGE) and known.has(
        findings_pickup.PICKUP_GAP_TOO_SMALL
    ):
        yield Contradiction(
            (findings_pickup.PICKUP_GAP_TOO_LARGE, findings_pickup.PICKUP_GAP_TOO_SMALL),
            "the gap cannot be too large and too small: measure again with the real gasket",
            findings_pickup.PICKUP_GAP_TOO_SMALL,
        )
    if known.has(findings_pickup.PICKUP_GAP_TOO_LARGE) and known.has(
        findings_sump.PICKUP_WITNESS_MARK
    ):
        yield Contradiction(
            (findings_pickup.PICKUP_GAP_TOO_LARGE, findings_sump.PICKUP_WITNESS_MARK),
            "a pickup that touched the floor is not too high: did this pickup make the mark?",
            findings_pickup.PICKUP_GAP_TOO_LARGE,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            findings_pickup.PICKUP_TUBE_CRACK_SEEN, lacks=[findings_pickup.BUBBLES_IN_JOINT_TEST]
        )
    ],
    non_matches=[
        example(findings_pickup.PICKUP_TUBE_CRACK_SEEN, findings_pickup.BUBBLES_IN_JOINT_TEST)
    ],
)
def crack_that_does_not_bubble(known: Known) -> Conclusions:
    """A crack in the tube that gives no bubbles is only a scratch, or the test did not reach it."""
    if known.has(findings_pickup.PICKUP_TUBE_CRACK_SEEN) and known.lacks(
        findings_pickup.BUBBLES_IN_JOINT_TEST
    ):
        yield Contradiction(
            (findings_pickup.PICKUP_TUBE_CRACK_SEEN, findings_pickup.BUBBLES_IN_JOINT_TEST),
            "a crack right through would bubble: repeat the test with the crack under solvent",
            findings_pickup.BUBBLES_IN_JOINT_TEST,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.TANK_STILL_FULL, lacks=[features.DRY_SUMP])],
    non_matches=[
        example(findings.TANK_STILL_FULL, features.DRY_SUMP),
        example(lacks=[features.DRY_SUMP]),
    ],
)
def tank_on_an_engine_without_one(known: Known) -> Conclusions:
    """An oil tank is recorded on an engine that keeps its oil in the sump."""
    if known.has(findings.TANK_STILL_FULL) and known.lacks(features.DRY_SUMP):
        yield Contradiction(
            (findings.TANK_STILL_FULL, features.DRY_SUMP),
            "the engine has no oil tank by its layout, but a tank is recorded: correct the layout",
            features.DRY_SUMP,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.DRY_SUMP, findings.TANK_STILL_FULL)],
    non_matches=[
        example(features.DRY_SUMP, lacks=[findings.TANK_STILL_FULL, findings.SUCTION_UNION_LOOSE])
    ],
)
def full_tank_and_no_pressure(known: Known) -> Conclusions:
    """A full tank and no pressure: a hose, union or joint before the pump draws air instead."""
    if known.has(features.DRY_SUMP):
        yield leads_to(
            causes.SUCTION_JOINT_AIR_LEAK, findings.TANK_STILL_FULL, SOMETIMES, COMMON_PRACTICE
        )
        yield leads_to(causes.SUCTION_JOINT_AIR_LEAK, conditions.OIL_ESCAPING, SELDOM, JUDGEMENT)

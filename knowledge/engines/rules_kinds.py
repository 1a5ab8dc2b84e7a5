"""What kinds of engine cannot have, and how each shows that its oil arrives."""

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.engines import features, features_build, features_kinds
from knowledge.engines.features_kinds import has_no_pressure
from knowledge.history import areas_inside
from knowledge.history import findings as history
from knowledge.model import Cause, Severity, Shift, Station
from knowledge.pressure import behaviour, patterns
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import (
    causes_geometry,
    causes_poured,
    causes_shafts,
)
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_galleries
from knowledge.stations.oil import causes_feed
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_phasers

rule = rules_of(Station.ASSEMBLY)

#: of stations of the pump's side, what an engine with pistons and a crank has and a rotary has not
NOT_IN_A_ROTARY: tuple[Cause, ...] = (
    topend_causes.LIFTER_BORE_LEAK,
    topend_causes.CAM_BEARING_WEAR,
    topend_causes.ROCKER_SHAFT_LEAK,
    topend_causes.TENSIONER_SEAL_LEAK,
    causes_phasers.CAM_PHASER_LEAK,
    causes_geometry.BENT_ROD_OR_CRANK,
    causes_poured.POURED_BEARING_BROKEN_UP,
    causes_shafts.BALANCE_SHAFT_WEAR,
    causes_shafts.AUXILIARY_SHAFT_WEAR,
    causes_shafts.IDLER_BUSH_WEAR,
)
#: engines whose every bearing has a feed of its own
OWN_FEEDS = (*features_kinds.UNPRESSURED, features_kinds.TROUGH_FED)
#: shells of crank and rods, which rollers stand for
SHELLS: tuple[Cause, ...] = (
    bearings_causes.BEARING_WEAR_RODS,
    bearings_causes.BEARING_WIPED,
    bearings_causes.BEARING_SPUN,
    bearings_causes.BEARING_WRONG_SIZE,
)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_kinds.ROTARY_PISTON)],
    non_matches=[example(lacks=[features_kinds.ROTARY_PISTON]), example()],
)
def rotary_has_no_valve_gear(known: Known) -> Conclusions:
    """A rotary engine has no valves, cams, rods or tappets, and so none of their leaks."""
    if known.has(features_kinds.ROTARY_PISTON):
        yield from (cannot_be(cause) for cause in NOT_IN_A_ROTARY)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_kinds.ROLLER_BIG_ENDS)],
    non_matches=[example(lacks=[features_kinds.ROLLER_BIG_ENDS]), example()],
)
def rollers_have_no_rod_shells(known: Known) -> Conclusions:
    """Rod big ends on rollers have no shells to wear, wipe or spin, and leak alike when worn."""
    if known.has(features_kinds.ROLLER_BIG_ENDS):
        for cause in SHELLS:
            yield cannot_be(cause)
        yield less_common(bearings_causes.THRUST_BEARING_WEAR)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_kinds.TROUGH_FED)],
    non_matches=[example(lacks=[features_kinds.TROUGH_FED]), example()],
)
def troughs_feed_no_rod_through_the_crank(known: Known) -> Conclusions:
    """Where rods dip into troughs no pressure goes through crank or rods: wear there costs none."""
    if known.has(features_kinds.TROUGH_FED):
        yield cannot_be(bearings_causes.BEARING_WEAR_RODS)
        for cause in (
            topend_causes.LIFTER_BORE_LEAK,
            topend_causes.TENSIONER_SEAL_LEAK,
            causes_phasers.CAM_PHASER_LEAK,
            pump_causes_fitted.PUMP_ROTOR_REVERSED,
            delivery_causes.FILTER_DRAINBACK,
        ):
            yield less_common(cause)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(lacks=OWN_FEEDS),
        example(features_kinds.DRIP_OILED),
        example(features_kinds.TROUGH_FED),
    ],
    non_matches=[example(), example(lacks=OWN_FEEDS[1:])],
)
def feeds_of_their_own(known: Known) -> Conclusions:
    """Only where each bearing has a feed of its own can one of them stop; there it is the first thing."""
    if all(known.lacks(kind) for kind in OWN_FEEDS):
        yield cannot_be(causes_feed.OWN_FEED_STOPPED)
    if any(known.has(kind) for kind in OWN_FEEDS):
        yield more_common(causes_feed.OWN_FEED_STOPPED)


@rule(
    source=JUDGEMENT,
    matches=[
        example(features_kinds.DRIP_OILED),
        example(features_kinds.OIL_BURNT_WITH_FUEL),
    ],
    non_matches=[example(features_build.SPLASH_LUBRICATED), example(features_kinds.TROUGH_FED)],
)
def feeds_to_each_place(known: Known) -> Conclusions:
    """Drips, cups and injection lines stop far more often than anything else there fails."""
    kinds = (features_kinds.DRIP_OILED, features_kinds.OIL_BURNT_WITH_FUEL)
    if any(known.has(kind) for kind in kinds):
        yield more_common(causes_feed.OWN_FEED_STOPPED, Shift.STRONG_UP)


@rule(
    source=sources.ROTARY_FRONT_COVER,
    matches=[example(features_kinds.ROTARY_PISTON)],
    non_matches=[example(lacks=[features_kinds.ROTARY_PISTON]), example()],
)
def rotary_loses_it_at_the_front_cover(known: Known) -> Conclusions:
    """The O-ring between front cover and front housing of a rotary blows out: the first suspect."""
    if known.has(features_kinds.ROTARY_PISTON):
        yield more_common(causes_galleries.GALLERY_SEAL_LEAK, Shift.STRONG_UP)


@rule(
    source=sources.ROTARY_FRONT_COVER,
    matches=[
        example(features_kinds.ROTARY_PISTON, behaviour.CHANGED_AFTER_OTHER_WORK),
        example(features_kinds.ROTARY_PISTON, history.JUST_WORKED_ON),
        example(features_kinds.ROTARY_PISTON, history.FRESHLY_REBUILT),
    ],
    non_matches=[
        example(features_kinds.ROTARY_PISTON),
        example(behaviour.CHANGED_AFTER_OTHER_WORK),
    ],
)
def front_cover_of_a_rotary_was_off(known: Known) -> Conclusions:
    """After work on a rotary its front-cover ring was most likely cut or lost as the cover went on."""
    worked = (behaviour.CHANGED_AFTER_OTHER_WORK, history.JUST_WORKED_ON, history.FRESHLY_REBUILT)
    off = any(known.has(w) for w in worked) or any(
        w.area in (areas_inside.TIMING, areas_inside.WHOLE_ENGINE) for w in known.earlier_work()
    )
    if known.has(features_kinds.ROTARY_PISTON) and off:
        yield more_common(causes_galleries.GALLERY_SEAL_LEAK, Shift.STRONG_UP)


#: how an engine without pressure shows that oil arrives
_SHOWN_BY = {
    features_build.SPLASH_LUBRICATED: (
        "no oil pump, so no pressure to lose: fill to the mark on level ground before each run; see oil "
        "thrown about at the filler; after a stop feel the bearings: too hot for a hand means too "
        "little oil"
    ),
    features_kinds.DRIP_OILED: (
        "drip oilers and cups, so no pressure to lose: see every drop fall before and during the run, "
        "fill cups, turn greasers down; stop at a bearing too hot for a hand (touch it at rest only)"
    ),
    features_kinds.OIL_BURNT_WITH_FUEL: (
        "two-stroke, no oil pressure: rollers live on oil in the fuel; see oil without bubbles in the "
        "feed line and the tank's level fall with the fuel; in doubt run it only on fuel mixed with oil "
        "at the maker's ratio"
    ),
}


@rule(
    source=idea_from(sources.GAS_ENGINE_HANDBOOK),
    matches=[
        *(example(kind, lacks=[features_kinds.TROUGH_FED]) for kind in features_kinds.UNPRESSURED),
        example(
            features_kinds.OIL_BURNT_WITH_FUEL,
            patterns.LAMP_COMES_ON,
            lacks=[features_kinds.TROUGH_FED],
        ),
    ],
    non_matches=[
        example(lacks=features_kinds.UNPRESSURED),
        example(features_build.SPLASH_LUBRICATED, features_kinds.TROUGH_FED),
        example(patterns.LAMP_COMES_ON),
    ],
)
def no_pressure_to_lose(known: Known) -> Conclusions:
    """Splash, drips and oil in the fuel make no pressure: other things show that oil arrives.

    Lamp or alarm of such an engine acts on the level, or on flow.
    """
    for kind, says in _SHOWN_BY.items():
        if known.has(kind) and has_no_pressure(known):
            yield Alarm(Severity.CARE, says, lets_run=True)
    if known.has(patterns.LAMP_COMES_ON) and has_no_pressure(known):
        yield Alarm(
            Severity.STOP,
            "oil lamp or alarm of an engine without oil pressure, it acts on level or flow: stop, fill "
            "to the mark, find out which it is, do not bridge it to run on",
        )


@rule(
    source=idea_from(sources.DRY_SUMP_RETURN_VISIBLE),
    matches=[
        example(features_kinds.TROUGH_FED),
        example(features_kinds.ROLLER_BIG_ENDS, features.DRY_SUMP),
    ],
    non_matches=[
        example(lacks=[features_kinds.TROUGH_FED]),
        example(features_kinds.ROLLER_BIG_ENDS),
        example(features.DRY_SUMP),
    ],
)
def flow_is_what_counts_here(known: Known) -> Conclusions:
    """A trough pump makes a few psi, and rollers need flow: oil that is seen to run shows it."""
    if known.has(features_kinds.TROUGH_FED):
        yield Alarm(
            Severity.CARE,
            "low-pressure pump: a few psi is normal, next to none at a hot idle; the needle must move "
            "when you speed up, and oil must run at troughs or sight glass: if not, stop",
            lets_run=True,
        )
    if known.has(features_kinds.ROLLER_BIG_ENDS) and known.has(features.DRY_SUMP):
        yield Alarm(
            Severity.CARE,
            "roller big ends need flow, not pressure: tank cap off, oil must come back within a minute "
            "of each start, in spurts with air (the return pump moves more than the feed); if none: stop",
            lets_run=True,
        )

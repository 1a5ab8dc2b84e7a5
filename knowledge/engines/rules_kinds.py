"""What kinds of engine cannot have, and how each shows that its oil arrives."""

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.engines import features, features_build, features_kinds
from knowledge.engines.features_kinds import has_no_pressure
from knowledge.model import Cause, Reading, Severity, Station
from knowledge.pressure import patterns
from knowledge.rule_api import Conclusions, Known, cannot_be, example, less_common, rules_of
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import (
    causes_geometry,
    causes_poured,
    causes_shafts,
)
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_phasers
from knowledge.units import PSI

rule = rules_of(Station.ASSEMBLY)
_SIX_AT_IDLE = Reading(900.0, 363.0, 6 * PSI)

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
    source=idea_from(sources.SMALL_ENGINE_SPLASH),
    matches=[example(features_build.SPLASH_LUBRICATED)],
    non_matches=[
        example(lacks=[features_build.SPLASH_LUBRICATED]),
        example(features_build.SPLASH_LUBRICATED, features_kinds.TROUGH_FED),
    ],
)
def splash_has_no_pressure_to_lose(known: Known) -> Conclusions:
    """Splash makes no pressure: level and dippers are what counts, and the hand is the gauge."""
    if known.has(features_build.SPLASH_LUBRICATED) and has_no_pressure(known):
        yield Alarm(
            Severity.CARE,
            "no oil pump, so no pressure to lose: fill to the mark on level ground before each run; see "
            "oil thrown about at the filler; after a stop feel the bearings: too hot for a hand means "
            "too little oil",
            lets_run=True,
        )


@rule(
    source=idea_from(sources.GAS_ENGINE_HANDBOOK),
    matches=[example(features_kinds.DRIP_OILED)],
    non_matches=[
        example(lacks=[features_kinds.DRIP_OILED]),
        example(features_kinds.DRIP_OILED, features_kinds.TROUGH_FED),
    ],
)
def drips_have_no_pressure_to_lose(known: Known) -> Conclusions:
    """Drip oilers and grease cups: each bearing has its own feed, and each is looked at by itself."""
    if known.has(features_kinds.DRIP_OILED) and has_no_pressure(known):
        yield Alarm(
            Severity.CARE,
            "drip oilers and cups, so no pressure to lose: see every drop fall before and during the run, "
            "fill cups, turn greasers down; stop at a bearing too hot for a hand (touch it at rest only)",
            lets_run=True,
        )


@rule(
    source=idea_from(sources.TWO_STROKE_OIL_TESTS),
    matches=[example(features_kinds.OIL_BURNT_WITH_FUEL)],
    non_matches=[example(lacks=[features_kinds.OIL_BURNT_WITH_FUEL]), example()],
)
def two_stroke_shows_its_oil_by_use(known: Known) -> Conclusions:
    """A two-stroke that burns its oil has no pressure; that oil is used shows that it arrives."""
    if known.has(features_kinds.OIL_BURNT_WITH_FUEL):
        yield Alarm(
            Severity.CARE,
            "two-stroke, no oil pressure: rollers live on oil in the fuel; see oil without bubbles in "
            "the feed line and the tank's level fall with the fuel; in doubt run it only on fuel mixed "
            "with oil at the maker's ratio",
            lets_run=True,
        )


@rule(
    source=idea_from(sources.TWO_STROKE_OIL_TESTS),
    matches=[
        example(features_kinds.OIL_BURNT_WITH_FUEL, patterns.LAMP_COMES_ON),
        example(features_build.SPLASH_LUBRICATED, patterns.LAMP_COMES_ON),
    ],
    non_matches=[
        example(patterns.LAMP_COMES_ON),
        example(features_kinds.OIL_BURNT_WITH_FUEL),
    ],
)
def lamp_of_an_engine_without_pressure(known: Known) -> Conclusions:
    """Where nothing is under pressure, lamp or alarm acts on the level, or on flow."""
    if known.has(patterns.LAMP_COMES_ON) and has_no_pressure(known):
        yield Alarm(
            Severity.STOP,
            "oil lamp or alarm of an engine without oil pressure, it acts on level or flow: stop, fill "
            "to the mark, find out which it is, do not bridge it to run on",
        )


@rule(
    source=idea_from(sources.TROUGH_FED_SIX_1942),
    matches=[example(features_kinds.TROUGH_FED)],
    non_matches=[example(lacks=[features_kinds.TROUGH_FED]), example()],
)
def little_pressure_is_normal_here(known: Known) -> Conclusions:
    """A pump that fills troughs makes a few psi; that the needle moves shows that it pumps."""
    if known.has(features_kinds.TROUGH_FED):
        yield Alarm(
            Severity.CARE,
            "low-pressure pump: a few psi is normal, next to none at a hot idle; the needle must move "
            "when you speed up, and oil must run at troughs or sight glass: if not, stop",
            lets_run=True,
        )


@rule(
    source=idea_from(sources.DRY_SUMP_RETURN_VISIBLE),
    matches=[example(features_kinds.ROLLER_BIG_ENDS, features.DRY_SUMP)],
    non_matches=[
        example(features_kinds.ROLLER_BIG_ENDS),
        example(features.DRY_SUMP),
    ],
)
def rollers_show_their_oil_at_the_tank(known: Known) -> Conclusions:
    """Rollers need flow, not pressure: oil seen at the tank's return has been through the engine."""
    if known.has(features_kinds.ROLLER_BIG_ENDS) and known.has(features.DRY_SUMP):
        yield Alarm(
            Severity.CARE,
            "roller big ends need flow, not pressure: tank cap off, oil must come back within a minute "
            "of each start, in spurts with air (the return pump moves more than the feed); if none: stop",
            lets_run=True,
        )


@rule(
    source=idea_from(sources.ROLLER_V_TWIN_PRESSURES),
    matches=[example(features.DRY_SUMP, features.IN_A_VEHICLE, readings=[_SIX_AT_IDLE])],
    non_matches=[
        example(features.DRY_SUMP, features.IN_A_VEHICLE),
        example(features.DRY_SUMP, readings=[_SIX_AT_IDLE]),
        example(
            features.DRY_SUMP,
            features.IN_A_VEHICLE,
            features_kinds.ROLLER_BIG_ENDS,
            readings=[_SIX_AT_IDLE],
        ),
    ],
)
def big_ends_decide_what_is_enough(known: Known) -> Conclusions:
    """Plain big ends of a motorcycle need full pressure, rollers a few psi: say which they are."""
    rollers = features_kinds.ROLLER_BIG_ENDS
    said = known.has(rollers) or known.lacks(rollers)
    cycle = known.has(features.DRY_SUMP) and known.has(features.IN_A_VEHICLE)
    if cycle and not said and any(r.rpm > 0.0 for r in known.readings()):
        yield Alarm(
            Severity.CARE,
            "big ends decide what is enough: plain shells need full pressure, rollers only flow (3 to 7 "
            "psi at idle is printed for some); record roller_big_ends=yes or no",
        )

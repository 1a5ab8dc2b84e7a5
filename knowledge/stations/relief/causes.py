"""Root causes at the relief valve, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_DOWN,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS, idea_from
from knowledge.stations.relief import findings, findings_sights

RELIEF_DEBRIS = Cause(
    id="relief_debris",
    station=Station.RELIEF,
    says="debris under the relief valve: a chip, sealer or carbon",
    mechanism=(
        "it holds the valve off its seat: oil bleeds past at all speeds, worst at idle; it may "
        "come and go"
    ),
    rate=Rate.COMMON,
    shifts=Shifts(freshly_rebuilt=STRONG_UP, oil_just_changed=UP),
    remedy="clean valve and seat; find where the debris came from before the engine runs",
    source=sources.EHRESMAN_1998,
    follows="oil starvation at idle, a damaged seat, wiped bearings",
    state=conditions.RELIEF_HELD_OPEN,
    also=("metal under the relief ball", "dirt in the relief valve", "swarf in pressure relief"),
)
CHIP_UNDER_THE_BALL = LinkGroup(
    id="chip_under_the_ball",
    station=Station.RELIEF,
    says="A chip under the ball bleeds pressure, most at idle, and the needle may waver with it.",
    note=(
        "This is the internal leak named most often. Misleads when the chip came from other "
        "damage: a wiped bearing sheds metal, and the valve catches it."
    ),
    parent=RELIEF_DEBRIS,
    effects={
        conditions.RELIEF_HELD_OPEN: (ALWAYS, sources.EHRESMAN_1998),
        patterns.FELL_SUDDENLY: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(patterns.NEEDLE_FLICKERS, findings.DEBRIS_ON_RELIEF_SEAT),
        example(findings.DEBRIS_ON_RELIEF_SEAT),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.DEBRIS_ON_RELIEF_SEAT])],
)

RELIEF_STUCK_OPEN = Cause(
    id="relief_stuck_open",
    station=Station.RELIEF,
    says="relief plunger stuck open, partly or fully",
    mechanism=(
        "oil bleeds past all the time: near normal at high revs, or no pressure at all if fully "
        "open"
    ),
    rate=Rate.COMMON,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, stood_long=UP),
    remedy=(
        "free it and stone burrs lightly, but never hone an aluminium bore; renew it if it "
        "sticks again"
    ),
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
    follows="bearings short of oil",
    also=("relief valve stuck open", "plunger seized", "pressure relief jammed"),
)
PLUNGER_THAT_DOES_NOT_COME_BACK = LinkGroup(
    id="plunger_that_does_not_come_back",
    station=Station.RELIEF,
    says=(
        "A plunger seized partly open lets oil past at every speed; seized fully open, it leaves "
        "no pressure."
    ),
    note="When you undo the plug, the spring pushes it off but the valve stays where it is.",
    parent=RELIEF_STUCK_OPEN,
    effects={
        # a valve a little open; one seized wide open is low at any speed, hot or cold
        conditions.RELIEF_BLEEDS: (MOSTLY, sources.DIESEL_WORKSHOP_2015),
        conditions.PRESSURE_LOW: (MOSTLY, PHYSICS),
        conditions.PRESSURE_GONE: (SOMETIMES, sources.MOTORCYCLE_MANUAL),
        patterns_speed.LOW_AT_ALL_SPEEDS: (OFTEN, JUDGEMENT),
        patterns_speed.LOW_EVEN_COLD: (OFTEN, PHYSICS),
        patterns.FELL_SUDDENLY: (SOMETIMES, JUDGEMENT),
        findings.RELIEF_VALVE_STAYED_OPEN: (MOSTLY, sources.PRESSURIZED_BLACK_GOLD),
        findings.RELIEF_PLUNGER_STICKS: (MOSTLY, sources.RELIEF_FREE_FALL),
        findings.RELIEF_SEAT_SCORED: (SOMETIMES, COMMON_PRACTICE),  # a plunger that jams is scored
    },
    matches=[example(patterns.GAUGE_READS_LOW, findings.RELIEF_VALVE_STAYED_OPEN)],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[findings.RELIEF_PLUNGER_STICKS, findings.RELIEF_VALVE_STAYED_OPEN],
        )
    ],
)

RELIEF_BORE_SCORED = Cause(
    id="relief_bore_scored",
    station=Station.RELIEF,
    says="relief bore or seat worn or scored",
    mechanism="it leaks when shut: low at idle, and debris sticks there again",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP),
    remedy="renew the seat, body or pump; fit an oversize ball where the maker allows it",
    source=sources.DIESEL_TESTING_MANUAL,
    follows="low idle pressure, debris that sticks again",
    also=("worn relief seat", "pitted relief ball", "scored relief bore"),
)
WORN_SEAT_LEAKS_WHEN_SHUT = LinkGroup(
    id="worn_seat_leaks_when_shut",
    station=Station.RELIEF,
    says="A worn or scored seat leaks when shut: low at idle, and debris sticks there again.",
    parent=RELIEF_BORE_SCORED,
    effects={
        conditions.RELIEF_BLEEDS: (MOSTLY, sources.DIESEL_TESTING_MANUAL),
        conditions.RELIEF_CAPS_LOW: (SOMETIMES, JUDGEMENT),
        patterns.DECLINED_OVER_MONTHS: (SOMETIMES, JUDGEMENT),
        conditions.RELIEF_HELD_OPEN: (SELDOM, JUDGEMENT),
        # oil creeps through a narrow gap past a worn plunger: the flow goes with one over viscosity
        patterns_speed.GOOD_COLD_LOW_HOT: (OFTEN, PHYSICS),
        findings.RELIEF_SEAT_SCORED: (ALWAYS, COMMON_PRACTICE),
        findings_sights.RELIEF_PISTON_LOOSE: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, findings.RELIEF_SEAT_SCORED)],
    non_matches=[
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, lacks=[findings.RELIEF_SEAT_SCORED])
    ],
)

RELIEF_SPRING_WEAK_BROKEN = Cause(
    id="relief_spring_weak_broken",
    station=Station.RELIEF,
    says="relief spring weak, collapsed or broken",
    mechanism=(
        "the valve opens early, so pressure stops at a low ceiling; if the spring is broken, "
        "very low everywhere"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=STRONG_UP, raced_or_heeled=UP),
    remedy="fit a new spring of the maker's rate; never stretch the old one",
    source=sources.ENGINE_BUILDERS_2020,
    follows="low pressure at speed",
    also=("weak relief spring", "broken oil pressure spring", "tired spring"),
)
STEADY_LOW_CEILING = LinkGroup(
    id="steady_low_ceiling",
    station=Station.RELIEF,
    says="A weak spring gives a steady low ceiling; it does not explain a low hot idle.",
    parent=RELIEF_SPRING_WEAK_BROKEN,
    effects={
        conditions.RELIEF_CAPS_LOW: (ALWAYS, sources.ENGINE_BUILDERS_2020),
        patterns.DECLINED_OVER_MONTHS: (SOMETIMES, JUDGEMENT),
        conditions.PRESSURE_GONE: (SELDOM, JUDGEMENT),
        findings.RELIEF_SPRING_SHORT_OR_BROKEN: (ALWAYS, COMMON_PRACTICE),
        findings.RELIEF_BENCH_OPENS_LOW: (MOSTLY, PHYSICS),
    },
    matches=[
        example(patterns_speed.CAPPED_LOW),
        example(patterns_speed.CAPPED_LOW, findings.RELIEF_SPRING_SHORT_OR_BROKEN),
    ],
    non_matches=[
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, lacks=[patterns_speed.CAPPED_LOW])
    ],
)

RELIEF_SPRING_WRONG = Cause(
    id="relief_spring_wrong",
    station=Station.RELIEF,
    says="wrong relief spring, shims added or left out, parts reversed",
    mechanism=(
        "the ceiling is too low (soft) or too high (stiff, shimmed), although all else is sound"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="fit the right spring and parts; set the opening pressure on the bench",
    source=sources.DIESEL_TESTING_MANUAL,
    follows="if too high: a worn drive gear and burst filters",
    also=("wrong spring", "shimmed relief", "adjuster turned", "stretched spring"),
)
LOW_SINCE_NEW_PUMP_OR_REBUILD = LinkGroup(
    id="low_since_new_pump_or_rebuild",
    station=Station.RELIEF,
    says="Low since a new pump or a rebuild: a new pump comes with its own relief spring.",
    parent=RELIEF_SPRING_WRONG,
    effects={
        behaviour.CHANGED_WITH_NEW_PUMP: (OFTEN, sources.DIESEL_CASE_NOTE),
        behaviour.LOW_FROM_FIRST_START: (OFTEN, idea_from(sources.OVERHAUL_MANUAL_5_101)),
    },
    matches=[example(patterns.GAUGE_READS_LOW, behaviour.CHANGED_WITH_NEW_PUMP)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[behaviour.CHANGED_WITH_NEW_PUMP])],
)
FOREIGN_SPRING_OR_SHIMS = LinkGroup(
    id="foreign_spring_or_shims",
    station=Station.RELIEF,
    says="Shims, the wrong spring or reversed parts raise or lower the ceiling.",
    parent=RELIEF_SPRING_WRONG,
    effects={
        conditions.RELIEF_CAPS_LOW: (OFTEN, sources.AIRCRAFT_FAULT_ISOLATION),
        conditions.RELIEF_HOLDS_HIGH: (OFTEN, sources.DIESEL_TESTING_MANUAL),
        findings.RELIEF_PARTS_NOT_STANDARD: (MOSTLY, COMMON_PRACTICE),
        findings.RELIEF_BENCH_OPENS_LOW: (SOMETIMES, PHYSICS),
        findings.RELIEF_BENCH_OPENS_HIGH: (SOMETIMES, sources.RELIEF_SPRING_STUDY),
    },
    matches=[
        example(patterns_speed.CAPPED_LOW, findings.RELIEF_PARTS_NOT_STANDARD),
        example(findings.RELIEF_BENCH_OPENS_HIGH),
    ],
    non_matches=[example(patterns_speed.CAPPED_LOW, lacks=[findings.RELIEF_PARTS_NOT_STANDARD])],
)

RELIEF_CAP_LOOSE = Cause(
    id="relief_cap_loose",
    station=Station.RELIEF,
    says="relief cap or plug backed out, unpinned or lost",
    mechanism="the spring loses its load, then oil escapes: low pressure, or a sudden zero",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="tighten, lock and seal it with a new washer",
    source=sources.OVERHAUL_MANUAL_5_101,
    follows="total loss of pressure, oil lost",
    also=("relief plug fell out", "cap not wired", "pressure relief plug loose"),
)
CAP_BACKS_OUT = LinkGroup(
    id="cap_backs_out",
    station=Station.RELIEF,
    says="A relief cap that backs out first unloads the spring, then lets the oil out.",
    parent=RELIEF_CAP_LOOSE,
    effects={
        conditions.RELIEF_CAPS_LOW: (OFTEN, sources.OVERHAUL_MANUAL_5_101),
        conditions.OIL_ESCAPING: (SOMETIMES, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (OFTEN, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (OFTEN, COMMON_PRACTICE),
        findings.RELIEF_CAP_LOOSE_OR_LEAKING: (ALWAYS, COMMON_PRACTICE),
    },
    matches=[example(patterns.FELL_SUDDENLY, findings.RELIEF_CAP_LOOSE_OR_LEAKING)],
    non_matches=[example(patterns.FELL_SUDDENLY, lacks=[findings.RELIEF_CAP_LOOSE_OR_LEAKING])],
)

RELIEF_PART_MISSING = Cause(
    id="relief_part_missing",
    station=Station.RELIEF,
    says="relief ball, plunger or spring left out at assembly",
    mechanism="next to no pressure from the first start",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="strip the valve and fit the missing part",
    source=sources.SMALL_ENGINE_MANUAL,
    follows="dry start, wiped bearings",
    also=("no ball in relief valve", "forgot the relief spring"),
)
RELIEF_PUT_TOGETHER_WITHOUT_ITS_BALL = LinkGroup(
    id="relief_put_together_without_its_ball",
    station=Station.RELIEF,
    says=(
        "A relief valve put together without its ball, plunger or spring gives next to no pressure."
    ),
    parent=RELIEF_PART_MISSING,
    effects={
        conditions.PRESSURE_GONE: (ALWAYS, idea_from(sources.SMALL_ENGINE_MANUAL)),
        behaviour.NONE_FROM_FIRST_START: (MOSTLY, COMMON_PRACTICE),
        findings.RELIEF_PART_ABSENT: (ALWAYS, COMMON_PRACTICE),
    },
    matches=[example(behaviour.NONE_FROM_FIRST_START, findings.RELIEF_PART_ABSENT)],
    non_matches=[example(behaviour.NONE_FROM_FIRST_START, lacks=[findings.RELIEF_PART_ABSENT])],
)

RELIEF_STUCK_CLOSED = Cause(
    id="relief_stuck_closed",
    station=Station.RELIEF,
    says="relief valve stuck shut, or its plunger fitted backwards",
    mechanism=(
        "cold pressure keeps rising with revs, far above the setting; the filter bulges, seals weep"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, oil_just_changed=UP, stood_long=UP),
    remedy="free or renew it before the engine is revved",
    source=sources.DIESEL_TESTING_MANUAL,
    follows="burst filter, broken pump drive",
    also=("relief valve stuck closed", "oil filter keeps bursting", "pressure too high cold"),
)
VALVE_SEIZED_SHUT = LinkGroup(
    id="valve_seized_shut",
    station=Station.RELIEF,
    says="A valve seized shut lets cold pressure climb until a filter bursts or a drive breaks.",
    parent=RELIEF_STUCK_CLOSED,
    effects={
        conditions.RELIEF_HOLDS_HIGH: (ALWAYS, sources.DIESEL_TESTING_MANUAL),
        findings.RELIEF_VALVE_STAYED_SHUT: (MOSTLY, COMMON_PRACTICE),
        findings.RELIEF_PLUNGER_STICKS: (MOSTLY, sources.RELIEF_FREE_FALL),
        findings.RELIEF_ADJUSTER_NO_EFFECT: (MOSTLY, COMMON_PRACTICE),
        findings.RELIEF_BENCH_OPENS_HIGH: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(patterns_speed.CLIMBS_PAST_SETTING, findings.RELIEF_VALVE_STAYED_SHUT)],
    non_matches=[
        example(
            patterns_speed.CLIMBS_PAST_SETTING,
            lacks=[findings.RELIEF_VALVE_STAYED_SHUT, findings.RELIEF_PLUNGER_STICKS],
        )
    ],
)

RELIEF_HUNTING = Cause(
    id="relief_hunting",
    station=Station.RELIEF,
    says="relief plunger loose in its bore, hunting",
    mechanism="the needle flutters near the setting at high revs and is steady below it",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="fit a new valve; cure any air in the oil first",
    source=COMMON_PRACTICE,
    follows="wear of the valve and the drive",
    also=("relief valve flutter", "pressure buzzes at high rpm"),
)
FLUTTER_AT_THE_SETTING = LinkGroup(
    id="flutter_at_the_setting",
    station=Station.RELIEF,
    says="A loose plunger flutters at the setting at high revs and is steady below it.",
    parent=RELIEF_HUNTING,
    effects={
        patterns_speed.FLICKERS_ONLY_AT_SPEED: (MOSTLY, COMMON_PRACTICE),
        conditions.PRESSURE_UNSTEADY: (OFTEN, COMMON_PRACTICE),
        findings.RELIEF_SEAT_SCORED: (SOMETIMES, JUDGEMENT),
        findings_sights.RELIEF_PISTON_LOOSE: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[example(patterns_speed.FLICKERS_ONLY_AT_SPEED)],
    non_matches=[example(patterns.NEEDLE_FLICKERS, lacks=[patterns_speed.FLICKERS_ONLY_AT_SPEED])],
)

# added: a real case showed it, no table lists it
RELIEF_RETURN_PLUGGED = Cause(
    id="relief_return_plugged",
    station=Station.RELIEF,
    says="the passage that returns oil from the relief valve to the sump is plugged",
    mechanism=(
        "the valve opens but the oil cannot get away: pressure climbs as if it were stuck shut"
    ),
    rate=Rate.VERY_RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="open the passage; check plug positions against the maker's drawing",
    source=COMMON_PRACTICE,
    follows="filters burst or blow off, seals leak",
    also=("relief dump passage blocked",),
)
RELIEVED_OIL_HAS_NOWHERE_TO_GO = LinkGroup(
    id="relieved_oil_has_nowhere_to_go",
    station=Station.RELIEF,
    says=(
        "With the return plugged, a good valve cannot help: it opens, but the oil cannot get away."
    ),
    parent=RELIEF_RETURN_PLUGGED,
    effects={
        conditions.RELIEF_HOLDS_HIGH: (ALWAYS, COMMON_PRACTICE),
        findings.RELIEF_RETURN_BLOCKED: (ALWAYS, COMMON_PRACTICE),
        findings.RELIEF_ADJUSTER_NO_EFFECT: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[example(patterns_speed.CLIMBS_PAST_SETTING, findings.RELIEF_RETURN_BLOCKED)],
    non_matches=[
        example(patterns_speed.CLIMBS_PAST_SETTING, lacks=[findings.RELIEF_RETURN_BLOCKED])
    ],
)

"""Root causes at the filter, cooler and galleries, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    DOWN,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, direct_gauge, patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.delivery import findings_filter, findings_filter_cut
from knowledge.stations.oil import findings_heat

FILTER_BLOCKED = Cause(
    id="filter_blocked",
    station=Station.DELIVERY,
    says="the oil filter is loaded with sludge, metal or emulsion",
    mechanism=(
        "the gallery behind the filter loses 10 to 15 psi until the bypass opens; the pump side "
        "reads normal or high"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, oil_just_changed=DOWN, stood_long=UP),
    remedy="change filter and oil, cut the old filter open, find what loaded it",
    source=sources.MARINE_DIESEL_MANUAL,
    follows="unfiltered oil through the bypass, scratched bearings",
    also=("clogged oil filter", "plugged filter", "filter full of sludge", "blocked element"),
)
PRESSURE_LOST_ACROSS_THE_FILTER = LinkGroup(
    id="pressure_lost_across_the_filter",
    station=Station.DELIVERY,
    says="A loaded filter costs 10 to 15 psi until its bypass opens; then it passes dirty oil.",
    note="Misleads when the oil is cold: thick oil loses that much in any filter.",
    parent=FILTER_BLOCKED,
    effects={
        conditions.FLOW_RESTRICTED: (ALWAYS, sources.MARINE_DIESEL_MANUAL),
        conditions.DIRT_IN_OIL: (SOMETIMES, sources.MARINE_DIESEL_MANUAL),
        findings_filter.FILTER_DROP_HIGH: (MOSTLY, sources.MARINE_DIESEL_MANUAL),
        findings_filter_cut.FILTER_PACKED: (MOSTLY, COMMON_PRACTICE),
        findings_filter_cut.FILTER_BYPASS_WITNESS: (OFTEN, COMMON_PRACTICE),
        findings_filter_cut.FILTER_COLLAPSED: (SOMETIMES, COMMON_PRACTICE),
        findings_filter.FILTER_STAYS_COLD: (SOMETIMES, JUDGEMENT),
        patterns.DECLINED_OVER_MONTHS: (OFTEN, JUDGEMENT),
    },
    matches=[
        example(direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY, findings_filter.FILTER_DROP_HIGH),
        example(patterns.GAUGE_READS_LOW, findings_filter_cut.NEW_FILTER_CURED_IT),
        example(findings_filter_cut.FILTER_PACKED, findings_filter_cut.FILTER_BYPASS_WITNESS),
    ],
    non_matches=[
        example(
            direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY,
            lacks=[findings_filter.FILTER_DROP_HIGH, findings_filter_cut.FILTER_PACKED],
        )
    ],
)

FILTER_BYPASS_STUCK = Cause(
    id="filter_bypass_stuck",
    station=Station.DELIVERY,
    says="the filter or cooler bypass valve is stuck",
    mechanism=(
        "stuck open it passes dirty oil without loss of pressure; stuck shut it starves the "
        "engine once the filter loads up"
    ),
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP),
    remedy="free or renew the valve, change filter and oil",
    source=sources.ARMY_TM_347_CHART_1973,
    follows="scratched bearings, or starvation with a loaded filter",
    also=("bypass valve stuck", "filter bypass jammed", "cooler bypass stuck open"),
)
BYPASS_THAT_DOES_NOT_MOVE = LinkGroup(
    id="bypass_that_does_not_move",
    station=Station.DELIVERY,
    says=(
        "A bypass stuck open lets dirt reach the bearings; stuck shut it starves the engine "
        "behind a loaded filter."
    ),
    parent=FILTER_BYPASS_STUCK,
    effects={
        conditions.DIRT_IN_OIL: (OFTEN, sources.ARMY_TM_291_THEORY),
        conditions.FLOW_RESTRICTED: (SOMETIMES, idea_from(sources.FILTER_MAKER_VALVES)),
        findings_filter_cut.FILTER_BYPASS_STUCK_OPEN: (OFTEN, COMMON_PRACTICE),
        findings_filter_cut.FILTER_BYPASS_STUCK_SHUT: (SOMETIMES, COMMON_PRACTICE),
        findings_filter_cut.FILTER_BYPASS_WITNESS: (OFTEN, COMMON_PRACTICE),
        findings_filter_cut.FILTER_COLLAPSED: (SOMETIMES, COMMON_PRACTICE),
        findings_filter.FILTER_STAYS_COLD: (SOMETIMES, JUDGEMENT),
        findings_filter.FILTER_DROP_HIGH: (SOMETIMES, JUDGEMENT),  # stuck shut on a loaded filter
    },
    matches=[
        example(findings_filter_cut.FILTER_BYPASS_STUCK_OPEN),
        example(findings_filter_cut.FILTER_BYPASS_STUCK_SHUT),
    ],
    non_matches=[
        example(
            lacks=[
                findings_filter_cut.FILTER_BYPASS_STUCK_OPEN,
                findings_filter_cut.FILTER_BYPASS_STUCK_SHUT,
            ]
        )
    ],
)

FILTER_WRONG = Cause(
    id="filter_wrong",
    station=Station.DELIVERY,
    says="wrong filter, two gaskets, wrong stem, or remote hoses crossed",
    mechanism=(
        "oil gushes out past the seat, or hardly any gets through; it shows at once after the "
        "change"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP, oil_just_changed=STRONG_UP),
    remedy="fit the right filter and stem with one gasket; put the hoses the right way round",
    source=sources.FILTER_MAKER_PRIME,
    follows="sudden loss of oil, dry bearings",
    also=(
        "double gasket",
        "old gasket stuck on block",
        "wrong oil filter",
        "filter o-ring missing",
        "hoses swapped on remote filter",
    ),
)
TROUBLE_STRAIGHT_FROM_THE_NEW_FILTER = LinkGroup(
    id="trouble_straight_from_the_new_filter",
    station=Station.DELIVERY,
    says="A wrong filter, a second gasket or a wrong stem shows at once after the change.",
    note="It either throws the oil out or lets none through; a cheap one only drains back.",
    parent=FILTER_WRONG,
    effects={
        conditions.OIL_ESCAPING: (OFTEN, COMMON_PRACTICE),
        conditions.FLOW_RESTRICTED: (OFTEN, COMMON_PRACTICE),
        conditions.DRAINS_BACK: (SOMETIMES, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (SOMETIMES, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_OIL_CHANGE: (MOSTLY, COMMON_PRACTICE),
        behaviour.NONE_FROM_FIRST_START: (SOMETIMES, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (SOMETIMES, COMMON_PRACTICE),
        findings_filter.FILTER_MISFITTED: (MOSTLY, COMMON_PRACTICE),
        findings_filter.FILTER_NOT_LISTED: (OFTEN, COMMON_PRACTICE),
        findings_filter.FILTER_SEAT_LEAKS: (OFTEN, COMMON_PRACTICE),
        findings_filter.FILTER_STAYS_COLD: (SOMETIMES, JUDGEMENT),
        findings_filter.FILTER_BURST: (SELDOM, JUDGEMENT),
        findings_filter.FILTER_BULGED: (SELDOM, JUDGEMENT),
        findings_filter_cut.FILTER_COLLAPSED: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(behaviour.CHANGED_WITH_OIL_CHANGE, findings_filter.FILTER_MISFITTED),
        example(
            behaviour.CHANGED_WITH_OIL_CHANGE,
            findings_filter.FILTER_NOT_LISTED,
            findings_filter.FILTER_SEAT_LEAKS,
        ),
    ],
    non_matches=[
        example(
            behaviour.CHANGED_WITH_OIL_CHANGE,
            lacks=[
                findings_filter.FILTER_MISFITTED,
                findings_filter.FILTER_NOT_LISTED,
                findings_filter.FILTER_SEAT_LEAKS,
            ],
        )
    ],
)

FILTER_DRAINBACK = Cause(
    id="filter_drainback",
    station=Station.DELIVERY,
    says="the filter's anti-drain-back valve is missing or hard",
    mechanism=(
        "the filter drains while the engine stands and takes 1 to 3 seconds to refill; then all "
        "is normal"
    ),
    rate=Rate.COMMON,
    shifts=Shifts(high_mileage=UP, oil_just_changed=UP, stood_long=UP),
    remedy="fit a filter with a good anti-drain-back valve",
    source=sources.FILTER_MAKER_VALVES,
    follows="start-up wear, rattle at every cold start",
    also=("filter drains back", "anti drain back valve", "cheap filter", "start up rattle"),
)
FILTER_EMPTIES_OVERNIGHT = LinkGroup(
    id="filter_empties_overnight",
    station=Station.DELIVERY,
    says="A filter without a good anti-drain-back valve must refill first: pressure 1 to 3 s late.",
    parent=FILTER_DRAINBACK,
    effects={
        conditions.DRAINS_BACK: (ALWAYS, sources.FILTER_MAKER_VALVES),
        findings_filter.FILTER_EMPTY_AFTER_STANDING: (MOSTLY, sources.FILTER_MAKER_VALVES),
        findings_filter.ANTI_DRAINBACK_HARD: (MOSTLY, COMMON_PRACTICE),
        findings_filter.FILTER_NOT_LISTED: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(behaviour.SLOW_AFTER_STANDING, findings_filter.FILTER_EMPTY_AFTER_STANDING),
        example(behaviour.SLOW_AFTER_STANDING, findings_filter.ANTI_DRAINBACK_HARD),
    ],
    non_matches=[
        example(
            behaviour.SLOW_AFTER_STANDING,
            lacks=[
                findings_filter.FILTER_EMPTY_AFTER_STANDING,
                findings_filter.ANTI_DRAINBACK_HARD,
            ],
        )
    ],
)
NEW_FILTER_THAT_DRAINS_BACK = LinkGroup(
    id="new_filter_that_drains_back",
    station=Station.DELIVERY,
    says="Late at every start since an oil change: the new filter drains back.",
    parent=FILTER_DRAINBACK,
    effects={
        behaviour.CHANGED_WITH_OIL_CHANGE: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(behaviour.CHANGED_WITH_OIL_CHANGE, behaviour.SLOW_AFTER_STANDING)],
    non_matches=[example(behaviour.CHANGED_WITH_OIL_CHANGE, lacks=[behaviour.SLOW_AFTER_STANDING])],
)

OIL_COOLER_BLOCKED = Cause(
    id="oil_cooler_blocked",
    station=Station.DELIVERY,
    says="oil cooler or its lines blocked, or full of thick cold oil",
    mechanism=(
        "little oil gets through the cooler: low pressure behind it with hot oil, and sudden "
        "recovery when a plug of cold oil lets go"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, stood_long=UP),
    remedy="clean or renew cooler and lines, check the cooler thermostat",
    source=sources.ARMY_TM_347_CHART_1973,
    follows="overheated oil, thin oil, worn bearings",
    also=(
        "clogged oil cooler",
        "kinked cooler line",
        "cooler hose collapsed",
        "metal in cooler",
        "congealed oil in the cooler",
    ),
)
OIL_DOES_NOT_GET_THROUGH_THE_COOLER = LinkGroup(
    id="oil_does_not_get_through_the_cooler",
    station=Station.DELIVERY,
    says=(
        "A blocked cooler or line holds the oil back, and the oil overheats without your noticing."
    ),
    note=(
        "Misleads when the cooler's thermostat is simply shut: a cold cooler is normal on a cold "
        "day."
    ),
    parent=OIL_COOLER_BLOCKED,
    effects={
        conditions.FLOW_RESTRICTED: (MOSTLY, sources.EHRESMAN_1998),
        conditions.OIL_THIN: (SOMETIMES, sources.ARMY_TM_347_CHART_1973),
        findings_heat.OIL_TEMPERATURE_HIGH: (SOMETIMES, sources.ARMY_TM_347_CHART_1973),
        findings_filter.COOLER_STAYS_COLD: (MOSTLY, COMMON_PRACTICE),
        findings_filter_cut.COOLER_FOUND_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        findings_filter.FILTER_DROP_HIGH: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(
            patterns.GAUGE_READS_LOW,
            findings_filter.COOLER_STAYS_COLD,
            findings_filter_cut.COOLER_BYPASSED_CURES,
        ),
        example(findings_filter_cut.COOLER_FOUND_BLOCKED),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[
                findings_filter_cut.COOLER_BYPASSED_CURES,
                findings_filter_cut.COOLER_FOUND_BLOCKED,
            ],
        )
    ],
)

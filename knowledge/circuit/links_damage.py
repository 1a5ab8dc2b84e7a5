"""Links from lost pressure to damage, and from damage to debris."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import direct_gauge, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, effects_of, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.relief import findings as relief_findings

DRY_BRANCH_BEHIND_A_GOOD_GAUGE = LinkGroup(
    id="dry_branch_behind_a_good_gauge",
    station=Station.DELIVERY,
    says="A dry branch wears and fails while the gauge looks good.",
    links=(
        *effects_of(
            conditions.JOURNAL_DRY,
            {
                conditions.BEARINGS_DAMAGED: (MOSTLY, sources.BEARING_BROCHURE_PREFACE),
            },
        ),
        *effects_of(
            conditions.BRANCH_DRY,
            {
                conditions.VALVE_GEAR_DRY: (OFTEN, sources.CAM_BEARING_HOLES_BLOG),
            },
        ),
    ),
    matches=[example(direct_gauge.NOTHING_WARNED)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
LOW_PRESSURE_STARVES = LinkGroup(
    id="low_pressure_starves",
    station=Station.DELIVERY,
    says="Low pressure leaves lifters short of oil first, then bearings.",
    parent=conditions.PRESSURE_LOW,
    effects={
        conditions.VALVE_GEAR_DRY: (OFTEN, sources.CARLEY_1997),
        conditions.BEARINGS_STARVED: (SOMETIMES, sources.CARLEY_1997),
    },
    matches=[example(patterns.GAUGE_READS_LOW, direct_gauge.DIRECT_GAUGE_LOW)],
    non_matches=[example(patterns.GAUGE_READS_LOW, patterns.ENGINE_RUNS_NORMALLY)],
)
NO_PRESSURE_STARVES_IN_SECONDS = LinkGroup(
    id="no_pressure_starves_in_seconds",
    station=Station.DELIVERY,
    says="With no pressure the bearings run dry within seconds to minutes.",
    parent=conditions.PRESSURE_GONE,
    effects={
        conditions.VALVE_GEAR_DRY: (OFTEN, COMMON_PRACTICE),
        conditions.BEARINGS_STARVED: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(patterns.GAUGE_READS_ZERO, direct_gauge.DIRECT_GAUGE_ZERO)],
    non_matches=[example(patterns.GAUGE_READS_ZERO, patterns.ENGINE_RUNS_NORMALLY)],
)
SLUGS_OF_AIR_STARVE = LinkGroup(
    id="slugs_of_air_starve",
    station=Station.DELIVERY,
    says="Each slug of air leaves a rod bearing short of oil a little, again and again.",
    parent=conditions.PRESSURE_UNSTEADY,
    effects={
        conditions.BEARINGS_STARVED: (SOMETIMES, idea_from(sources.SUMP_TILT_TEST)),
        conditions.VALVE_GEAR_DRY: (SOMETIMES, idea_from(sources.CARLEY_1997)),
    },
    matches=[example(direct_gauge.DIRECT_GAUGE_UNSTEADY)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
STARVED_BEARING_WIPES = LinkGroup(
    id="starved_bearing_wipes",
    station=Station.DELIVERY,
    says="A bearing short of oil wipes: that damage is a result, it did not come first.",
    parent=conditions.BEARINGS_STARVED,
    effects={
        conditions.BEARINGS_DAMAGED: (OFTEN, sources.RECONDITIONER_BEARINGS),
    },
    matches=[example(patterns.GAUGE_READS_ZERO)],
    non_matches=[example(patterns.ENGINE_RUNS_NORMALLY)],
)
DAMAGED_BEARING_SHEDS_AND_SEIZES = LinkGroup(
    id="damaged_bearing_sheds_and_seizes",
    station=Station.DELIVERY,
    says="A damaged bearing sheds metal, knocks, and finally seizes or breaks a rod.",
    parent=conditions.BEARINGS_DAMAGED,
    effects={
        conditions.METAL_SHED: (MOSTLY, sources.AIRCRAFT_FAULT_ISOLATION),
        conditions.ENGINE_FAILED: (SOMETIMES, sources.CARLEY_1997),
    },
    matches=[example(patterns.GAUGE_READS_ZERO)],
    non_matches=[example(patterns.ENGINE_RUNS_NORMALLY)],
)
SHED_METAL_COMES_ROUND_AGAIN = LinkGroup(
    id="shed_metal_comes_round_again",
    station=Station.DELIVERY,
    says="Shed metal circulates: it scores the pump and gets under the relief valve.",
    parent=conditions.METAL_SHED,
    effects={
        conditions.PUMP_SCORED: (SOMETIMES, COMMON_PRACTICE),
        conditions.METAL_UNDER_RELIEF: (SELDOM, sources.AIRCRAFT_FAULT_ISOLATION),
    },
    matches=[example(relief_findings.DEBRIS_ON_RELIEF_SEAT)],
    non_matches=[example(patterns.ENGINE_RUNS_NORMALLY)],
)
METAL_THAT_FOLLOWED_IS_FOUND_THERE = LinkGroup(
    id="metal_that_followed_is_found_there",
    station=Station.DELIVERY,
    says="Metal from the damage gets under the relief valve, and the needle wavers.",
    note="The chain ends here: damage from the lost pressure is cut off, so that no loop arises.",
    parent=conditions.METAL_UNDER_RELIEF,
    effects={
        relief_findings.DEBRIS_ON_RELIEF_SEAT: (MOSTLY, COMMON_PRACTICE),
        patterns.NEEDLE_FLICKERS: (SOMETIMES, JUDGEMENT),
        direct_gauge.DIRECT_GAUGE_UNSTEADY: (SOMETIMES, JUDGEMENT),
        patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE: (SELDOM, JUDGEMENT),
    },
    matches=[example(relief_findings.DEBRIS_ON_RELIEF_SEAT)],
    non_matches=[example(lacks=[relief_findings.DEBRIS_ON_RELIEF_SEAT])],
)

"""Root causes at shafts beside the crank that are fed from the gallery, and what each leads to.

Each is rare where nobody knows of such a shaft, and cannot be where there is none
(``rules_shafts``).
"""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example, origins_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS, idea_from
from knowledge.stations.bearings import findings, findings_shafts
from knowledge.stations.topend import findings as topend_findings

BALANCE_SHAFT_WEAR = Cause(
    id="balance_shaft_wear",
    station=Station.BEARINGS,
    says="balance shaft bearings worn or turned, or the joint that feeds them leaks",
    mechanism="two more shafts fed from the gallery: worn, they leak like mains, low at hot idle",
    rate=Rate.VERY_RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP),  # hours bring about but a part of it
    remedy="renew the bearings or the unit, with the seal of its oil feed; time it to the crank",
    source=sources.ARMY_TM_347_CAMSHAFT,
    follows="the shaft seizes, breaks its drive or comes through the sump",
    also=(
        "balance shaft bearings gone",
        "balancer unit worn",
        "worn balance shaft bushes",
        "counterbalance shaft bearings",
    ),
)
WORN_BALANCE_SHAFT_LEAKS_LIKE_A_MAIN = LinkGroup(
    id="worn_balance_shaft_leaks_like_a_main",
    station=Station.BEARINGS,
    says="Worn balance shaft bearings leak like worn mains, which measure good: low at hot idle.",
    parent=BALANCE_SHAFT_WEAR,
    effects={
        conditions.CLEARANCES_WIDE: (ALWAYS, sources.ARMY_TM_347_CAMSHAFT),
        conditions.METAL_SHED: (SOMETIMES, COMMON_PRACTICE),
        patterns.DECLINED_OVER_MONTHS: (OFTEN, JUDGEMENT),
        findings_shafts.BALANCE_SHAFT_BEARINGS_WORN: (ALWAYS, COMMON_PRACTICE),
        findings.RATTLE_OF_UNKNOWN_PLACE: (SOMETIMES, COMMON_PRACTICE),
        debris_findings.COPPER_FLAKES: (SOMETIMES, COMMON_PRACTICE),
        debris_findings.BRIGHT_SOFT_METAL: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings_shafts.BALANCE_SHAFT_BEARINGS_WORN),
        example(patterns_speed.GOOD_COLD_LOW_HOT, findings_shafts.BALANCE_SHAFT_BEARINGS_WORN),
    ],
    non_matches=[
        example(
            patterns_speed.GOOD_COLD_LOW_HOT,
            lacks=[findings_shafts.BALANCE_SHAFT_BEARINGS_WORN],
        )
    ],
)

AUXILIARY_SHAFT_WEAR = Cause(
    id="auxiliary_shaft_wear",
    station=Station.BEARINGS,
    says="bearings of the auxiliary (jack or intermediate) shaft worn or turned",
    mechanism="it runs in the old cam's bearings, fed from the gallery: low at hot idle when worn",
    rate=Rate.VERY_RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP),  # hours bring about but a part of it
    remedy="renew its bearings with their holes in line; check its journals",
    source=COMMON_PRACTICE,
    follows="worn pump or distributor drive, low pressure",
    also=(
        "jackshaft bearings worn",
        "intermediate shaft bearings",
        "auxiliary shaft bushes",
        "jackshaft bearing spun",
    ),
)
SHAFT_THAT_REBUILDS_FORGET = LinkGroup(
    id="shaft_that_rebuilds_forget",
    station=Station.BEARINGS,
    says="An auxiliary shaft is often left out of a rebuild: low hot although crank and pump are new.",
    parent=AUXILIARY_SHAFT_WEAR,
    effects={
        conditions.CLEARANCES_WIDE: (ALWAYS, PHYSICS),
        conditions.METAL_SHED: (SELDOM, COMMON_PRACTICE),
        conditions.PUMP_DRIVE_ERRATIC: (SELDOM, JUDGEMENT),
        patterns.DECLINED_OVER_MONTHS: (OFTEN, JUDGEMENT),
        findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN: (ALWAYS, COMMON_PRACTICE),
        debris_findings.COPPER_FLAKES: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN),
        example(patterns_speed.GOOD_COLD_LOW_HOT, findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN),
    ],
    non_matches=[
        example(
            patterns_speed.GOOD_COLD_LOW_HOT,
            lacks=[findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN],
        )
    ],
)

IDLER_BUSH_WEAR = Cause(
    id="idler_bush_wear",
    station=Station.BEARINGS,
    says="bush or hub of a timing idler gear worn",
    mechanism="the idler runs on a bush fed through its hub; worn, it pours oil into the gear case",
    rate=Rate.VERY_RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP),  # hours bring about but a part of it
    remedy="renew bush and hub, oil hole in line; check backlash and timing marks",
    source=sources.MARINE_IDLER_BUSH,
    follows="noisy, then stripped timing gears",
    also=(
        "idler gear bush worn",
        "timing idler gear loose",
        "idler hub worn",
        "intermediate gear bush",
    ),
)
IDLER_POURS_INTO_THE_GEAR_CASE = LinkGroup(
    id="idler_pours_into_the_gear_case",
    station=Station.BEARINGS,
    says="A worn idler bush pours oil into the gear case, and the gears rattle as their mesh opens.",
    parent=IDLER_BUSH_WEAR,
    effects={
        conditions.CLEARANCES_WIDE: (MOSTLY, PHYSICS),
        conditions.METAL_SHED: (SELDOM, COMMON_PRACTICE),
        patterns.DECLINED_OVER_MONTHS: (OFTEN, JUDGEMENT),
        findings_shafts.IDLER_GEAR_BUSH_WORN: (ALWAYS, COMMON_PRACTICE),
        topend_findings.TIMING_COVER_RATTLES: (SOMETIMES, COMMON_PRACTICE),
        debris_findings.COPPER_FLAKES: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings_shafts.IDLER_GEAR_BUSH_WORN),
        example(
            patterns_speed.GOOD_COLD_LOW_HOT,
            findings_shafts.IDLER_GEAR_BUSH_WORN,
            topend_findings.TIMING_COVER_RATTLES,
        ),
    ],
    non_matches=[
        example(patterns_speed.GOOD_COLD_LOW_HOT, lacks=[findings_shafts.IDLER_GEAR_BUSH_WORN])
    ],
)
SHAFTS_RUINED_WITH_THE_REST = LinkGroup(
    id="shafts_ruined_with_the_rest",
    station=Station.BEARINGS,
    says="Lack of oil and dirt ruin the bearings of these shafts along with the crank's.",
    links=(
        *origins_of(
            findings_shafts.BALANCE_SHAFT_BEARINGS_WORN,
            {
                conditions.BEARINGS_STARVED: (SELDOM, COMMON_PRACTICE),
                conditions.DIRT_IN_OIL: (SELDOM, COMMON_PRACTICE),
            },
        ),
        *origins_of(
            findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN,
            {
                conditions.BEARINGS_STARVED: (SELDOM, COMMON_PRACTICE),
                conditions.DIRT_IN_OIL: (SELDOM, COMMON_PRACTICE),
            },
        ),
        *origins_of(
            findings_shafts.IDLER_GEAR_BUSH_WORN,
            {
                conditions.BEARINGS_STARVED: (SELDOM, COMMON_PRACTICE),
                conditions.DIRT_IN_OIL: (SELDOM, idea_from(sources.MARINE_IDLER_BUSH)),
            },
        ),
    ),
    matches=[
        example(findings_shafts.BALANCE_SHAFT_BEARINGS_WORN),
        example(findings_shafts.IDLER_GEAR_BUSH_WORN),
    ],
    non_matches=[
        example(
            lacks=[
                findings_shafts.BALANCE_SHAFT_BEARINGS_WORN,
                findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN,
                findings_shafts.IDLER_GEAR_BUSH_WORN,
            ]
        )
    ],
)

"""Further links at the oil: one finding of several causes, states of the circuit."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import patterns, patterns_speed
from knowledge.rule_api import LinkGroup, effects_of, example, origins_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.oil import (
    causes,
    causes_condition,
    findings,
    findings_analysis,
    findings_drained,
    findings_heat,
    findings_record,
)
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.suction import causes as suction_causes

TANK_THAT_EMPTIES_AT_REST = LinkGroup(
    id="tank_that_empties_at_rest",
    station=Station.OIL,
    says=(
        "A tank that drains down when standing starts low, or gets overfilled because it reads "
        "low then."
    ),
    child=findings.WET_SUMPS,
    origins={
        pump_causes.PUMP_GEAR_WEAR: (SELDOM, COMMON_PRACTICE),
        causes.OIL_LEVEL_HIGH: (SELDOM, COMMON_PRACTICE),
        pump_causes_fitted.SCAVENGE_FAILURE: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings.WET_SUMPS)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.WET_SUMPS])],
)
SLUDGE_STANDS_FOR_WHAT_IT_BLOCKS = LinkGroup(
    id="sludge_stands_for_what_it_blocks",
    station=Station.OIL,
    says="Sludge anywhere means blockage to come: the screen first, then the filter.",
    links=(
        *origins_of(
            findings.SLUDGE_SEEN,
            {
                suction_causes.PICKUP_SCREEN_BLOCKED: (OFTEN, sources.CLUB_BLOCKED_SCREENS),
                delivery_causes.FILTER_BLOCKED: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *origins_of(
            findings.OIL_BLACK_AND_GRITTY,
            {
                suction_causes.PICKUP_SCREEN_BLOCKED: (SOMETIMES, COMMON_PRACTICE),
                delivery_causes.FILTER_BLOCKED: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *origins_of(
            findings_record.OIL_OVERDUE,
            {
                suction_causes.PICKUP_SCREEN_BLOCKED: (
                    SOMETIMES,
                    idea_from(sources.CLUB_BLOCKED_SCREENS),
                ),
                delivery_causes.FILTER_BLOCKED: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
    ),
    matches=[example(findings.SLUDGE_SEEN, patterns.GAUGE_READS_LOW)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.SLUDGE_SEEN])],
)
SHORTAGE_SHOWS_ON_THE_STICK = LinkGroup(
    id="shortage_shows_on_the_stick",
    station=Station.OIL,
    says=(
        "Too little oil shows on the stick and when drained into a jug, and what is left runs hot."
    ),
    note=(
        "Misleads when oil is held up in heads or valley while running and drains down after "
        "stopping."
    ),
    parent=conditions.OIL_SHORT,
    effects={
        findings.DIPSTICK_LOW: (MOSTLY, COMMON_PRACTICE),
        findings.DIPSTICK_DRY: (SOMETIMES, COMMON_PRACTICE),
        findings_drained.DRAINED_VOLUME_LOW: (MOSTLY, COMMON_PRACTICE),
        findings_heat.OIL_TEMPERATURE_HIGH: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings.DIPSTICK_LOW),
        example(findings.DIPSTICK_DRY),
        example(findings_drained.DRAINED_VOLUME_LOW),
    ],
    non_matches=[
        example(patterns.NEEDLE_FLICKERS, lacks=[findings.DIPSTICK_LOW, findings.DIPSTICK_DRY])
    ],
)
OIL_THAT_LEAVES_THE_ENGINE = LinkGroup(
    id="oil_that_leaves_the_engine",
    station=Station.OIL,
    says=(
        "An engine that loses oil needs topping up again and again, and the level drops even "
        "when standing."
    ),
    parent=conditions.OIL_ESCAPING,
    effects={
        findings_record.OIL_USED_FAST: (SELDOM, COMMON_PRACTICE),
        findings_record.LEVEL_FALLS_STANDING: (OFTEN, COMMON_PRACTICE),
        findings_heat.OIL_IN_TURBO_OUTLETS: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(findings_record.LEVEL_FALLS_STANDING),
        example(findings_record.OIL_USED_FAST, findings_record.LEVEL_FALLS_STANDING),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[findings_record.OIL_USED_FAST, findings_record.LEVEL_FALLS_STANDING],
        )
    ],
)
FOAM_SEEN_AFTER_A_HARD_RUN = LinkGroup(
    id="foam_seen_after_a_hard_run",
    station=Station.OIL,
    says=(
        "Foam on the stick straight after a hard run: air is whipped in, or drawn in at the "
        "suction."
    ),
    note="Misleads when the bubbles are water boiling off: look for milk.",
    child=findings_heat.FOAM_ON_STICK,
    origins={
        conditions.OIL_AERATED: (MOSTLY, COMMON_PRACTICE),
        conditions.AIR_IN_SUCTION: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings_heat.FOAM_ON_STICK)],
    non_matches=[example(patterns.NEEDLE_FLICKERS, lacks=[findings_heat.FOAM_ON_STICK])],
)
SLUDGE_IN_SIGHT = LinkGroup(
    id="sludge_in_sight",
    station=Station.OIL,
    says="Sludge in filler, covers or drain means sludge on the pickup screen too.",
    parent=conditions.OIL_SLUDGED,
    effects={
        findings.SLUDGE_SEEN: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[example(findings.SLUDGE_SEEN)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.SLUDGE_SEEN])],
)
COPPER_WITH_LEAD_IS_BEARING_METAL = LinkGroup(
    id="copper_with_lead_is_bearing_metal",
    station=Station.OIL,
    says="Copper with lead, and tin as well, is bearing metal; copper alone hardly ever is.",
    note="Misleads with leaded fuel: then lead means nothing.",
    links=(
        *effects_of(
            conditions.BEARINGS_DAMAGED,
            {
                findings_analysis.COPPER_AND_LEAD_HIGH: (MOSTLY, sources.MARINE_ELEMENT_LIST),
                findings_analysis.TIN_HIGH: (OFTEN, COMMON_PRACTICE),
                findings_analysis.ALUMINIUM_HIGH: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            conditions.CLEARANCES_WIDE,
            {
                findings_analysis.COPPER_AND_LEAD_HIGH: (SOMETIMES, COMMON_PRACTICE),
                findings_analysis.TIN_HIGH: (SELDOM, JUDGEMENT),
            },
        ),
    ),
    matches=[
        example(findings_analysis.COPPER_AND_LEAD_HIGH),
        example(findings_analysis.COPPER_AND_LEAD_HIGH, findings_analysis.TIN_HIGH),
    ],
    non_matches=[
        example(
            findings_analysis.COPPER_HIGH_ALONE,
            lacks=[findings_analysis.COPPER_AND_LEAD_HIGH, findings_analysis.TIN_HIGH],
        )
    ],
)
IRON_FROM_GEARS_CAMS_AND_BORES = LinkGroup(
    id="iron_from_gears_cams_and_bores",
    station=Station.OIL,
    says="Iron comes from gears, cams and bores; alone it names no part.",
    note="Misleads in run-in and after long standing, when rust gives the same figure.",
    links=(
        *origins_of(
            findings_analysis.IRON_HIGH,
            {
                conditions.METAL_SHED: (SOMETIMES, COMMON_PRACTICE),
                conditions.PUMP_SCORED: (OFTEN, COMMON_PRACTICE),
                conditions.PUMP_SLIP: (SELDOM, JUDGEMENT),
                conditions.PUMP_DRIVE_ERRATIC: (SOMETIMES, COMMON_PRACTICE),
                conditions.VALVE_GEAR_DRY: (SELDOM, JUDGEMENT),
            },
        ),
        *effects_of(
            conditions.METAL_SHED,
            {
                findings_analysis.ALUMINIUM_HIGH: (SELDOM, JUDGEMENT),
            },
        ),
    ),
    matches=[example(findings_analysis.IRON_HIGH)],
    non_matches=[example(findings_analysis.METALS_NORMAL, lacks=[findings_analysis.IRON_HIGH])],
)
SILICON_IS_DIRT_OR_SEALER = LinkGroup(
    id="silicon_is_dirt_or_sealer",
    station=Station.OIL,
    says="Silicon is dirt or fresh silicone sealer; with aluminium and iron it is dirt.",
    links=(
        *effects_of(
            conditions.DIRT_IN_OIL,
            {
                findings_analysis.SILICON_HIGH: (OFTEN, COMMON_PRACTICE),
                findings_analysis.IRON_HIGH: (SOMETIMES, COMMON_PRACTICE),
                findings_analysis.ALUMINIUM_HIGH: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            causes_condition.OIL_FOAM_PRONE,
            {
                findings_analysis.SILICON_HIGH: (SELDOM, JUDGEMENT),
            },
        ),
    ),
    matches=[
        example(findings_analysis.SILICON_HIGH),
        example(findings_analysis.SILICON_HIGH, findings_analysis.ALUMINIUM_HIGH),
    ],
    non_matches=[example(findings_analysis.ALUMINIUM_HIGH, lacks=[findings_analysis.SILICON_HIGH])],
)
ACID_OIL_THICKENS_AND_EATS_LEAD = LinkGroup(
    id="acid_oil_thickens_and_eats_lead",
    station=Station.OIL,
    says="Acid number up, viscosity up, only lead up: worn-out oil that corrodes its bearings.",
    links=(
        *effects_of(
            causes_condition.OIL_DEGRADED,
            {
                findings_analysis.ACID_NUMBER_HIGH: (MOSTLY, sources.LUBRICANTS_HANDBOOK_2004),
                findings_analysis.LAB_VISCOSITY_HIGH: (OFTEN, sources.DIESEL_WORKSHOP_2015),
                findings_analysis.LEAD_HIGH_ALONE: (OFTEN, sources.OIL_ANALYSIS_TABLE),
                findings_analysis.IRON_HIGH: (SELDOM, JUDGEMENT),
            },
        ),
        *effects_of(
            causes.VISCOSITY_TOO_HIGH,
            {
                findings_analysis.LAB_VISCOSITY_HIGH: (MOSTLY, COMMON_PRACTICE),
            },
        ),
    ),
    matches=[
        example(findings_analysis.ACID_NUMBER_HIGH, findings_analysis.LAB_VISCOSITY_HIGH),
        example(findings_analysis.LEAD_HIGH_ALONE),
    ],
    non_matches=[
        example(
            findings_analysis.IRON_HIGH,
            lacks=[
                findings_analysis.ACID_NUMBER_HIGH,
                findings_analysis.LEAD_HIGH_ALONE,
                findings_analysis.LAB_VISCOSITY_HIGH,
            ],
        )
    ],
)
SLUDGE_COLOURS_THE_OIL = LinkGroup(
    id="sludge_colours_the_oil",
    station=Station.OIL,
    says="In a sludged engine the oil turns black and gritty again soon after a change.",
    parent=conditions.OIL_SLUDGED,
    effects={
        findings.OIL_BLACK_AND_GRITTY: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings.OIL_BLACK_AND_GRITTY, findings.SLUDGE_SEEN)],
    non_matches=[
        example(
            findings_record.OIL_OVERDUE, lacks=[findings.OIL_BLACK_AND_GRITTY, findings.SLUDGE_SEEN]
        )
    ],
)
DAMAGE_HEATS_AND_BURNS_THE_OIL = LinkGroup(
    id="damage_heats_and_burns_the_oil",
    station=Station.OIL,
    says="Damaged bearings heat and burn the oil, and it reaches the gauge hot.",
    note=(
        "It usually is following damage: with a knock, hot oil was not the first thing to go wrong."
    ),
    links=(
        *effects_of(
            conditions.BEARINGS_DAMAGED,
            {
                findings.OIL_SMELLS_BURNT: (SOMETIMES, COMMON_PRACTICE),
                findings_heat.OIL_TEMPERATURE_HIGH: (SELDOM, COMMON_PRACTICE),
                findings_heat.BURNING_OIL_SMOKE: (SELDOM, JUDGEMENT),
            },
        ),
        *effects_of(
            conditions.FLOW_RESTRICTED,
            {
                findings_heat.OIL_TEMPERATURE_HIGH: (SELDOM, sources.EHRESMAN_1998),
            },
        ),
        *effects_of(
            conditions.ENGINE_FAILED,
            {
                findings_heat.BURNING_OIL_SMOKE: (SOMETIMES, JUDGEMENT),
            },
        ),
    ),
    matches=[
        example(
            findings_heat.OIL_TEMPERATURE_HIGH, findings.GLITTER_IN_OIL, findings.OIL_SMELLS_BURNT
        )
    ],
    non_matches=[
        example(
            findings_heat.OIL_TEMPERATURE_HIGH,
            lacks=[findings.GLITTER_IN_OIL, findings.OIL_SMELLS_BURNT],
        )
    ],
)
GLITTER_IS_BEARING_OR_PUMP = LinkGroup(
    id="glitter_is_bearing_or_pump",
    station=Station.OIL,
    says="Glitter in the oil is metal from bearings or pump; more of it is in the filter.",
    child=findings.GLITTER_IN_OIL,
    origins={
        conditions.METAL_SHED: (OFTEN, idea_from(sources.INSIDE_YOUR_FILTER)),
        conditions.PUMP_SCORED: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings.GLITTER_IN_OIL)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.GLITTER_IN_OIL])],
)
THIN_OIL_RUNS_OFF_THE_STICK = LinkGroup(
    id="thin_oil_runs_off_the_stick",
    station=Station.OIL,
    says="Thin oil runs off the stick like water beside new oil of the same grade.",
    note="Misleads when it is only hotter than the new oil beside it.",
    parent=conditions.OIL_THIN,
    effects={
        findings.OIL_THIN_ON_STICK: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(findings.OIL_THIN_ON_STICK),
        example(patterns_speed.GOOD_COLD_LOW_HOT, findings.OIL_THIN_ON_STICK),
    ],
    non_matches=[example(patterns_speed.GOOD_COLD_LOW_HOT, lacks=[findings.OIL_THIN_ON_STICK])],
)
THICK_OIL_HANGS_ON_THE_STICK = LinkGroup(
    id="thick_oil_hangs_on_the_stick",
    station=Station.OIL,
    says="Thick oil hangs on the stick like treacle (molasses).",
    parent=conditions.OIL_THICK,
    effects={
        findings.OIL_THICK_ON_STICK: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings.OIL_THICK_ON_STICK)],
    non_matches=[example(patterns.GAUGE_READS_HIGH, lacks=[findings.OIL_THICK_ON_STICK])],
)

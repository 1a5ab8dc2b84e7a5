"""Root causes in the condition of the oil, and normal readings, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    DOWN,
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
from knowledge.pressure import behaviour, direct_gauge, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS, idea_from
from knowledge.stations.oil import findings, findings_heat, findings_record

OIL_OVERHEATED = Cause(
    id="oil_overheated",
    station=Station.OIL,
    says="oil running much hotter than normal",
    mechanism=(
        "oil thins as it heats: pressure sags slowly over minutes and comes back when it has cooled"
    ),
    rate=Rate.COMMON,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=STRONG_UP),
    remedy="put cooling air, cooler, coolant and level right; ease the load; use the right grade",
    source=sources.DIESEL_WORKSHOP_2015,
    follows="oxidised oil, sludge, fatigued bearings",
    also=("hot oil", "oil too hot", "oil cooler not cooling", "overheating oil"),
)
SAGS_HOT_AND_IS_BACK_WHEN_COOLED = LinkGroup(
    id="sags_hot_and_is_back_when_cooled",
    station=Station.OIL,
    says=(
        "With overheated oil the pressure sags over minutes and is right again when the oil has "
        "cooled."
    ),
    parent=OIL_OVERHEATED,
    effects={
        conditions.OIL_THIN: (ALWAYS, PHYSICS),
        findings_heat.OIL_TEMPERATURE_HIGH: (ALWAYS, COMMON_PRACTICE),
        behaviour.SAGS_AS_OIL_HEATS: (OFTEN, PHYSICS),
        patterns.SANK_WHILE_RUNNING: (SOMETIMES, JUDGEMENT),
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST: (SOMETIMES, JUDGEMENT),
        findings_heat.ENGINE_RAN_HOT: (OFTEN, COMMON_PRACTICE),
        findings_heat.COOLER_FACE_BLOCKED: (OFTEN, COMMON_PRACTICE),
        findings_heat.COOLING_DUCT_AMISS: (SOMETIMES, COMMON_PRACTICE),
        findings_heat.COOLER_LEFT_OFF: (SELDOM, JUDGEMENT),
        findings.OIL_SMELLS_BURNT: (OFTEN, COMMON_PRACTICE),
        findings_heat.BLOW_BY_HIGH: (SOMETIMES, JUDGEMENT),
        conditions.OIL_SLUDGED: (SELDOM, COMMON_PRACTICE),
    },
    matches=[
        example(findings_heat.OIL_TEMPERATURE_HIGH),
        example(behaviour.SAGS_AS_OIL_HEATS, findings_heat.COOLING_DUCT_AMISS),
        example(
            behaviour.SAGS_AS_OIL_HEATS,
            findings_heat.COOLER_FACE_BLOCKED,
            findings_heat.ENGINE_RAN_HOT,
        ),
    ],
    non_matches=[
        example(
            behaviour.SAGS_AS_OIL_HEATS,
            lacks=[findings_heat.OIL_TEMPERATURE_HIGH, findings_heat.ENGINE_RAN_HOT],
        )
    ],
)

OIL_DEGRADED = Cause(
    id="oil_degraded",
    station=Station.OIL,
    says="worn-out oil: overdue, oxidised, sludged or acid",
    mechanism="sludge blocks screen and oilways, the oil thickens or thins, and acid eats the bearings",
    rate=Rate.COMMON,
    shifts=Shifts(
        high_mileage=STRONG_UP, freshly_rebuilt=DOWN, oil_just_changed=STRONG_DOWN, stood_long=UP
    ),
    remedy="change it at short intervals until it stays clean; take off and clean the sump",
    source=sources.DIESEL_WORKSHOP_2015,
    follows="sludge, a blocked screen, a starved pump, cavitation, corroded and wiped bearings",
    also=("old oil", "sludged engine", "overdue oil change", "dirty oil", "black sludge"),
)
OVERDUE_BLACK_AND_GRITTY = LinkGroup(
    id="overdue_black_and_gritty",
    station=Station.OIL,
    says=(
        "Overdue oil turns black, thick and acid and leaves sludge that blocks screen and oilways."
    ),
    note="Misleads in a diesel, whose oil is black within hours of a change.",
    parent=OIL_DEGRADED,
    effects={
        conditions.OIL_SLUDGED: (MOSTLY, idea_from(sources.CLUB_BLOCKED_SCREENS)),
        conditions.OIL_THICK: (SOMETIMES, sources.DIESEL_WORKSHOP_2015),
        conditions.OIL_THIN: (SELDOM, sources.EHRESMAN_1998),
        conditions.BEARINGS_DAMAGED: (SELDOM, sources.BEARING_BROCHURE_PREFACE),
        findings_record.OIL_OVERDUE: (MOSTLY, COMMON_PRACTICE),
        findings.OIL_BLACK_AND_GRITTY: (OFTEN, COMMON_PRACTICE),
        findings.OIL_SMELLS_BURNT: (SOMETIMES, COMMON_PRACTICE),
        findings_heat.BLOW_BY_HIGH: (SELDOM, JUDGEMENT),
        patterns.DECLINED_OVER_MONTHS: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings_record.OIL_OVERDUE, findings.OIL_BLACK_AND_GRITTY, findings.SLUDGE_SEEN),
        example(patterns.DECLINED_OVER_MONTHS, findings_record.OIL_OVERDUE),
    ],
    non_matches=[
        example(
            patterns.DECLINED_OVER_MONTHS, lacks=[findings_record.OIL_OVERDUE, findings.SLUDGE_SEEN]
        )
    ],
)

OIL_FOAM_PRONE = Cause(
    id="oil_foam_prone",
    station=Station.OIL,
    says="oil that foams: wrong additive, leftover flush, or water in it",
    mechanism="air leaves the oil too slowly, so pressure is spongy and gets worse with revs",
    rate=Rate.RARE,
    shifts=Shifts(oil_just_changed=UP, raced_or_heeled=UP),
    remedy="drain it all and fill with the right oil, no additives",
    source=sources.OIL_AERATION_ARTICLE,
    follows="a wavering needle, noisy lifters, an eroded pump",
    also=("foaming oil", "frothy oil", "oil additive foams", "flushing oil left in"),
)
OIL_THAT_WILL_NOT_LET_GO_OF_ITS_AIR = LinkGroup(
    id="oil_that_will_not_let_go_of_its_air",
    station=Station.OIL,
    says="Oil spoilt by flush, additive or the wrong fluid holds air, even at the right level.",
    parent=OIL_FOAM_PRONE,
    effects={
        conditions.OIL_AERATED: (ALWAYS, sources.OIL_AERATION_ARTICLE),
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST: (SOMETIMES, JUDGEMENT),
        findings_record.ADDITIVE_OR_FLUSH_IN_OIL: (MOSTLY, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_OIL_CHANGE: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings_heat.FOAM_ON_STICK, findings_record.ADDITIVE_OR_FLUSH_IN_OIL)],
    non_matches=[
        example(
            patterns.NEEDLE_FLICKERS,
            lacks=[findings_heat.FOAM_ON_STICK, findings_record.ADDITIVE_OR_FLUSH_IN_OIL],
        )
    ],
)

OIL_HOT_NORMAL = Cause(
    id="oil_hot_normal",
    station=Station.OIL,
    says="nothing wrong: the expected fall as the engine warms",
    mechanism=(
        "hot oil is thin and an idling pump is slow: steadily low only at hot idle, right for "
        "the revs (about 10 psi for each 1000 rpm)"
    ),
    rate=Rate.VERY_COMMON,
    shifts=Shifts(high_mileage=UP, raced_or_heeled=UP),
    remedy="no repair: write down the hot readings as this engine's baseline",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    follows="nothing",
    no_fault=True,
    also=("normal hot idle pressure", "no fault", "just warm oil", "it is normal"),
)
QUIETLY_LOW_AT_A_HOT_IDLE = LinkGroup(
    id="quietly_low_at_a_hot_idle",
    station=Station.OIL,
    says="Low at hot idle, good at speed, a quiet engine: that is normal with warm oil.",
    note=(
        "Misleads when the hot reading is below the maker's own limit, or was never this low "
        "before."
    ),
    parent=OIL_HOT_NORMAL,
    effects={
        patterns_speed.GOOD_COLD_LOW_HOT: (MOSTLY, sources.MARINE_SERVICE_MANUAL_1999),
        patterns_speed.LOW_HOT_IDLE_GOOD_SPEED: (OFTEN, sources.MARINE_SERVICE_MANUAL_1999),
        patterns.GAUGE_READS_LOW: (OFTEN, sources.MARINE_SERVICE_MANUAL_1999),
        patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE: (SOMETIMES, COMMON_PRACTICE),
        patterns_speed.RISES_JUST_OFF_IDLE: (SOMETIMES, COMMON_PRACTICE),
        behaviour.SAGS_AS_OIL_HEATS: (SELDOM, idea_from(sources.MARINE_SERVICE_MANUAL_1999)),
        patterns.LAMP_COMES_ON: (SOMETIMES, COMMON_PRACTICE),
        direct_gauge.DIRECT_GAUGE_LOW: (SELDOM, JUDGEMENT),
        patterns.ENGINE_RUNS_NORMALLY: (ALWAYS, sources.MARINE_SERVICE_MANUAL_1999),
    },
    matches=[
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, patterns.ENGINE_RUNS_NORMALLY),
        example(
            patterns_speed.GOOD_COLD_LOW_HOT,
            patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE,
            patterns.ENGINE_RUNS_NORMALLY,
        ),
    ],
    non_matches=[
        example(patterns_speed.LOW_AT_ALL_SPEEDS, lacks=[patterns.ENGINE_RUNS_NORMALLY]),
        example(
            patterns.GAUGE_READS_LOW,
            direct_gauge.DIRECT_GAUGE_LOW,
            patterns_speed.LOW_AT_ALL_SPEEDS,
        ),
    ],
)

OIL_COLD_NORMAL = Cause(
    id="oil_cold_normal",
    station=Station.OIL,
    says="nothing wrong: the expected high reading of cold oil",
    mechanism="cold oil is thick, so pressure is high until it has warmed",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(),
    remedy="no repair: keep the revs down until the oil is warm",
    source=sources.DIESEL_WORKSHOP_2015,
    follows="nothing",
    no_fault=True,
    also=("normal cold pressure", "high when cold", "no fault", "comes down when warm"),
)
HIGH_ONLY_UNTIL_WARM = LinkGroup(
    id="high_only_until_warm",
    station=Station.OIL,
    says="High with cold oil and down again when warm: cold oil is thick, nothing is wrong.",
    parent=OIL_COLD_NORMAL,
    effects={
        patterns.GAUGE_READS_HIGH: (MOSTLY, sources.DIESEL_WORKSHOP_2015),
        patterns_speed.CLIMBS_PAST_SETTING: (SELDOM, PHYSICS),
        findings_heat.OIL_VERY_COLD: (OFTEN, idea_from(sources.DIESEL_WORKSHOP_2015)),
        patterns.ENGINE_RUNS_NORMALLY: (ALWAYS, COMMON_PRACTICE),
    },
    matches=[
        example(
            patterns.GAUGE_READS_HIGH, findings_heat.OIL_VERY_COLD, patterns.ENGINE_RUNS_NORMALLY
        )
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[patterns.GAUGE_READS_HIGH])],
)

"""Links from oil, suction, relief and engine to the pump."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import ALWAYS, MOSTLY, OFTEN, RARELY, SELDOM, SOMETIMES, Station
from knowledge.pressure import patterns, patterns_speed
from knowledge.rule_api import LinkGroup, effects_of, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS, idea_from
from knowledge.stations.pump import (
    findings,
    findings_bench,
    findings_drive,
    findings_mount,
    findings_priming,
    findings_wear,
)

LITTLE_PRESSURE_BY_DRILL = LinkGroup(
    id="little_pressure_by_drill",
    station=Station.PUMP,
    says=(
        "Little pressure with the drill: oil escapes inside the engine, past the relief valve or "
        "back through the pump."
    ),
    note="This test clears the drive; worn bearings alone can pass it with cold oil.",
    child=findings_priming.DRILL_GIVES_LITTLE,
    origins={
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, PHYSICS),
        conditions.RELIEF_BLEEDS: (OFTEN, PHYSICS),
        conditions.DELIVERY_REDUCED: (OFTEN, PHYSICS),
        conditions.PUMP_SLIP: (SOMETIMES, PHYSICS),
        conditions.AIR_IN_SUCTION: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings_priming.DRILL_GIVES_LITTLE),
        example(patterns.GAUGE_READS_LOW, findings_priming.DRILL_GIVES_LITTLE),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_priming.DRILL_GIVES_LITTLE])],
)
NO_PRESSURE_BY_DRILL = LinkGroup(
    id="no_pressure_by_drill",
    station=Station.PUMP,
    says=(
        "No pressure with the drill: the pump is dry or draws air, or its oil escapes through an "
        "open passage."
    ),
    child=findings_priming.DRILL_GIVES_NONE,
    origins={
        conditions.PUMP_DRY: (OFTEN, COMMON_PRACTICE),
        conditions.AIR_IN_SUCTION: (SOMETIMES, COMMON_PRACTICE),
        conditions.OPEN_LEAK_INSIDE: (SOMETIMES, PHYSICS),
        conditions.RELIEF_BLEEDS: (SELDOM, PHYSICS),
    },
    matches=[example(findings_priming.DRILL_GIVES_NONE)],
    non_matches=[example(lacks=[findings_priming.DRILL_GIVES_NONE])],
)
NOTHING_COMES_WHEN_CRANKED = LinkGroup(
    id="nothing_comes_when_cranked",
    station=Station.PUMP,
    says="No oil when cranked although the pump turns: it has none to draw, or cannot draw it.",
    child=findings_priming.NO_OIL_WHEN_CRANKED,
    origins={
        conditions.SUCTION_THROTTLED: (SELDOM, JUDGEMENT),
        conditions.OIL_SHORT: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings_priming.NO_OIL_WHEN_CRANKED),
        example(findings_bench.PUMP_DRY_INSIDE, findings_priming.NO_OIL_WHEN_CRANKED),
    ],
    non_matches=[
        example(findings_bench.PUMP_DRY_INSIDE, lacks=[findings_priming.NO_OIL_WHEN_CRANKED])
    ],
)
WHINE_FROM_THE_PUMP = LinkGroup(
    id="whine_from_the_pump",
    station=Station.PUMP,
    says="A pump that whines is short of oil at its inlet: a restriction, air, or thick oil.",
    child=findings.PUMP_NOISE,
    origins={
        conditions.SUCTION_THROTTLED: (SOMETIMES, idea_from(sources.PUMP_CAVITATION_ANSWER)),
        conditions.AIR_IN_SUCTION: (SOMETIMES, COMMON_PRACTICE),
        conditions.OIL_THICK: (SELDOM, idea_from(sources.PUMP_CAVITATION_ANSWER)),
    },
    matches=[example(findings.PUMP_NOISE), example(patterns.NEEDLE_FLICKERS, findings.PUMP_NOISE)],
    non_matches=[example(patterns.NEEDLE_FLICKERS, lacks=[findings.PUMP_NOISE])],
)
SCORES_WHERE_DEBRIS_WENT_THROUGH = LinkGroup(
    id="scores_where_debris_went_through",
    station=Station.PUMP,
    says="A scored or jammed pump may be following damage: metal from elsewhere went through it.",
    note=(
        "Misleads when the pump is blamed and renewed while the source of the metal stays in the "
        "engine."
    ),
    parent=conditions.PUMP_SCORED,
    effects={
        findings_wear.PUMP_SCORED_SEEN: (ALWAYS, COMMON_PRACTICE),
        findings_bench.COVER_GROOVED: (OFTEN, COMMON_PRACTICE),
        findings_mount.PUMP_TURNS_ROUGHLY: (OFTEN, COMMON_PRACTICE),
        findings_wear.GEARS_WORN_OUT: (SELDOM, JUDGEMENT),
        findings_drive.PUMP_JAMMED: (SOMETIMES, sources.JOBBER_OIL_PUMPS),
        findings_wear.PUMP_GEAR_BROKEN: (SELDOM, COMMON_PRACTICE),
        findings_drive.DRIVE_SHAFT_BROKEN: (SELDOM, sources.PUMP_MAKER_SHAFTS_SCREENS),
        findings.PUMP_NOISE: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(findings_wear.PUMP_SCORED_SEEN),
        example(findings_wear.PUMP_SCORED_SEEN, findings_mount.PUMP_TURNS_ROUGHLY),
    ],
    non_matches=[example(lacks=[findings_wear.PUMP_SCORED_SEEN])],
)
FOREIGN_MATTER_IN_THE_PUMP = LinkGroup(
    id="foreign_matter_in_the_pump",
    station=Station.PUMP,
    says="Pieces and slivers in the pump came from elsewhere: a dirty build or a failing part.",
    links=(
        *effects_of(
            conditions.DIRT_IN_OIL,
            {
                findings_bench.PIECE_IN_PUMP: (SOMETIMES, sources.PUMP_SCREEN_NOTES),
                findings_drive.PUMP_JAMMED: (SELDOM, sources.JOBBER_OIL_PUMPS),
                findings_drive.DRIVE_SHAFT_BROKEN: (
                    RARELY,
                    idea_from(sources.PUMP_MAKER_SHAFTS_SCREENS),
                ),
            },
        ),
        *effects_of(
            conditions.METAL_SHED,
            {
                findings_bench.STEEL_SLIVERS_IN_PUMP: (SOMETIMES, COMMON_PRACTICE),
                findings_bench.PIECE_IN_PUMP: (SELDOM, COMMON_PRACTICE),
            },
        ),
    ),
    matches=[example(findings_bench.PIECE_IN_PUMP), example(findings_bench.STEEL_SLIVERS_IN_PUMP)],
    non_matches=[
        example(lacks=[findings_bench.PIECE_IN_PUMP, findings_bench.STEEL_SLIVERS_IN_PUMP])
    ],
)
PUMP_OVERLOADED_BY_PRESSURE = LinkGroup(
    id="pump_overloaded_by_pressure",
    station=Station.PUMP,
    says=(
        "Pressure far too high, or oil far too thick, wears drive gears, twists shafts and "
        "bursts pumps."
    ),
    links=(
        *effects_of(
            conditions.PRESSURE_HIGH,
            {
                findings_drive.DRIVE_GEAR_WORN: (SOMETIMES, sources.ENGINE_BUILDER_2009),
                findings_drive.DRIVE_SHAFT_BROKEN: (SELDOM, idea_from(sources.ENGINE_BUILDER_2009)),
                findings_drive.PUMP_HOUSING_BURST: (RARELY, JUDGEMENT),
                findings_mount.MOUNT_GASKET_BLOWN: (SELDOM, JUDGEMENT),
            },
        ),
        *effects_of(
            conditions.OIL_THICK,
            {
                findings_drive.DRIVE_SHAFT_BROKEN: (RARELY, sources.DRIVE_SHAFT_EARS_THREAD),
            },
        ),
    ),
    matches=[
        example(patterns_speed.CLIMBS_PAST_SETTING, findings_drive.PUMP_HOUSING_BURST),
        example(findings_drive.DRIVE_GEAR_WORN),
    ],
    non_matches=[
        example(lacks=[findings_drive.PUMP_HOUSING_BURST, findings_drive.DRIVE_GEAR_WORN])
    ],
)
PUMP_BROKEN_IN_A_WRECK = LinkGroup(
    id="pump_broken_in_a_wreck",
    station=Station.PUMP,
    says="If an engine threw a part, its pump, chain or drive may have broken last, not first.",
    parent=conditions.ENGINE_FAILED,
    effects={
        findings_drive.PUMP_HOUSING_BURST: (RARELY, COMMON_PRACTICE),
        findings_drive.PUMP_CHAIN_BROKEN: (RARELY, JUDGEMENT),
        findings_drive.DRIVE_GEAR_STRIPPED: (RARELY, JUDGEMENT),
    },
    matches=[example(findings_drive.PUMP_HOUSING_BURST), example(findings_drive.PUMP_CHAIN_BROKEN)],
    non_matches=[
        example(lacks=[findings_drive.PUMP_HOUSING_BURST, findings_drive.PUMP_CHAIN_BROKEN])
    ],
)

"""Further links at the pump: one finding of several causes, states of the circuit."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.history import findings as history
from knowledge.model import ALWAYS, MOSTLY, OFTEN, RARELY, SELDOM, SOMETIMES, Station
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, effects_of, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_geometry as bearings_causes_geometry
from knowledge.stations.bearings import findings_shell_map as bearings_shell_map
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.pump import (
    causes,
    causes_drive,
    causes_fitted,
    findings,
    findings_bench,
    findings_drive,
    findings_mount,
    findings_priming,
    findings_wear,
)
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.topend import causes as topend_causes

DRIVE_IN_PIECES = LinkGroup(
    id="drive_in_pieces",
    station=Station.PUMP,
    says="A drive in pieces stopped the pump; find out what jammed it.",
    child=findings_drive.DRIVE_FOUND_FAILED,
    origins={
        causes_drive.PUMP_DRIVE_BROKEN: (MOSTLY, COMMON_PRACTICE),
        causes.PUMP_DEBRIS_LOCK: (OFTEN, sources.PUMP_MAKER_SHAFTS_SCREENS),
        causes_fitted.PUMP_IDLER_PIN_MIGRATED: (OFTEN, JUDGEMENT),
        causes_drive.PUMP_DRIVE_SLIP: (SOMETIMES, sources.WORN_GEAR_THREAD),
        causes_fitted.PUMP_OVERSIZED: (SELDOM, idea_from(sources.ENGINE_BUILDER_2010)),
        conditions.ENGINE_FAILED: (RARELY, JUDGEMENT),
    },
    matches=[example(findings_drive.DRIVE_FOUND_FAILED)],
    non_matches=[example(patterns.GAUGE_READS_ZERO, lacks=[findings_drive.DRIVE_FOUND_FAILED])],
)
PUMP_PAST_USE = LinkGroup(
    id="pump_past_use",
    station=Station.PUMP,
    says="A failed pump is the root cause only if nothing else destroyed it.",
    child=findings_wear.PUMP_FOUND_FAILED,
    origins={
        causes.PUMP_GEAR_WEAR: (OFTEN, sources.ARMY_TM_347_CHART_1973),
        causes_fitted.PUMP_BODY_CRACKED: (MOSTLY, idea_from(sources.PUMP_INSPECTION_2006)),
        causes.PUMP_DEBRIS_LOCK: (OFTEN, sources.JOBBER_OIL_PUMPS),
        causes.PUMP_COVER_SCORED: (OFTEN, idea_from(sources.PUMP_INSPECTION_2006)),
        causes_fitted.PUMP_IDLER_PIN_MIGRATED: (OFTEN, JUDGEMENT),
        causes_drive.PUMP_DRIVE_BROKEN: (SOMETIMES, JUDGEMENT),
        conditions.PUMP_SCORED: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings_wear.PUMP_FOUND_FAILED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_wear.PUMP_FOUND_FAILED])],
)
BROKEN_OUT_OF_THE_PUMP = LinkGroup(
    id="broken_out_of_the_pump",
    station=Station.PUMP,
    says=(
        "Whatever breaks out through the pump cover came loose inside: a pin, a gear, a jammed "
        "piece."
    ),
    child=findings_wear.PIECE_THROUGH_PUMP_COVER,
    origins={
        causes_fitted.PUMP_IDLER_PIN_MIGRATED: (OFTEN, JUDGEMENT),
        causes.PUMP_DEBRIS_LOCK: (SOMETIMES, JUDGEMENT),
        causes_fitted.PUMP_BODY_CRACKED: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings_wear.PIECE_THROUGH_PUMP_COVER)],
    non_matches=[
        example(patterns.GAUGE_READS_ZERO, lacks=[findings_wear.PIECE_THROUGH_PUMP_COVER])
    ],
)
THERE_WHEN_STOPPED_GONE_WHEN_STARTED = LinkGroup(
    id="there_when_stopped_gone_when_started",
    station=Station.PUMP,
    says="Pressure when stopped, none at the next start: drive, prime or a valve that stayed open.",
    child=findings_drive.GONE_AT_THE_NEXT_START,
    origins={
        conditions.PUMP_NOT_TURNING: (SOMETIMES, JUDGEMENT),
        conditions.PUMP_DRY: (SOMETIMES, COMMON_PRACTICE),
        relief_causes.RELIEF_STUCK_OPEN: (SOMETIMES, JUDGEMENT),
        conditions.READING_FALSE: (SELDOM, JUDGEMENT),
        conditions.AIR_IN_SUCTION: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_drive.GONE_AT_THE_NEXT_START, patterns.GAUGE_READS_ZERO)],
    non_matches=[example(patterns.GAUGE_READS_ZERO, lacks=[findings_drive.GONE_AT_THE_NEXT_START])],
)
AFTER_REVVING_TO_THE_LIMIT = LinkGroup(
    id="after_revving_to_the_limit",
    station=Station.PUMP,
    says="Trouble straight after hard revving: castings, drives and bearings fail then.",
    child=findings_drive.BEGAN_AFTER_REVVING_HARD,
    origins={
        causes_fitted.PUMP_BODY_CRACKED: (SOMETIMES, JUDGEMENT),
        causes_drive.PUMP_DRIVE_BROKEN: (SELDOM, JUDGEMENT),
        bearings_causes_geometry.OVERLOAD_LUGGING: (SOMETIMES, COMMON_PRACTICE),
        suction_causes.PICKUP_TUBE_LOOSE: (SELDOM, JUDGEMENT),
        topend_causes.LIFTER_BORE_LEAK: (SELDOM, JUDGEMENT),
        bearings_causes.BEARING_SPUN: (SOMETIMES, COMMON_PRACTICE),
        bearings_causes.BEARING_WIPED: (SELDOM, JUDGEMENT),
        bearings_causes_geometry.BENT_ROD_OR_CRANK: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_drive.BEGAN_AFTER_REVVING_HARD)],
    non_matches=[
        example(patterns.GAUGE_READS_LOW, lacks=[findings_drive.BEGAN_AFTER_REVVING_HARD])
    ],
)
ONE_STEP_DOWN = LinkGroup(
    id="one_step_down",
    station=Station.PUMP,
    says="One step down that stays: something broke, lodged or lost contact at that moment.",
    child=findings_drive.STEPPED_DOWN_AND_STAYED,
    origins={
        relief_causes.RELIEF_DEBRIS: (SOMETIMES, JUDGEMENT),
        conditions.PUMP_DRIVE_ERRATIC: (SOMETIMES, JUDGEMENT),
        causes_drive.PUMP_DRIVE_BROKEN: (SELDOM, JUDGEMENT),
        conditions.READING_FALSE: (SOMETIMES, JUDGEMENT),
        bearings_causes.BEARING_WIPED: (SOMETIMES, COMMON_PRACTICE),
        delivery_causes_galleries.GALLERY_PLUG_MISSING: (SELDOM, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_SPRING_WEAK_BROKEN: (SOMETIMES, COMMON_PRACTICE),
        bearings_causes.BEARING_SPUN: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings_drive.STEPPED_DOWN_AND_STAYED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_drive.STEPPED_DOWN_AND_STAYED])],
)
FEEL_OF_A_WORN_PUMP = LinkGroup(
    id="feel_of_a_worn_pump",
    station=Station.PUMP,
    says="A worn pump may turn roughly; cavitation pits the metal its bubbles touch.",
    links=(
        *effects_of(
            causes.PUMP_GEAR_WEAR,
            {
                findings_mount.PUMP_TURNS_ROUGHLY: (SELDOM, JUDGEMENT),
            },
        ),
        *effects_of(
            conditions.PUMP_CAVITATES,
            {
                bearings_shell_map.SHELLS_PITTED_UNLOADED: (
                    SOMETIMES,
                    sources.BEARING_WEAR_ANALYSIS,
                ),
            },
        ),
    ),
    matches=[example(findings_mount.PUMP_TURNS_ROUGHLY)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_mount.PUMP_TURNS_ROUGHLY])],
)
PUMP_STANDS_WHILE_ENGINE_TURNS = LinkGroup(
    id="pump_stands_while_engine_turns",
    station=Station.PUMP,
    says=(
        "A pump that is not driven moves no oil when cranked, and priming does not help; a drill "
        "turns it all the same."
    ),
    parent=conditions.PUMP_NOT_TURNING,
    effects={
        findings_drive.PUMP_SEEN_STANDING: (MOSTLY, COMMON_PRACTICE),
        findings_priming.NO_OIL_WHEN_CRANKED: (ALWAYS, COMMON_PRACTICE),
        findings_priming.DRILL_GIVES_GOOD: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(findings_drive.PUMP_SEEN_STANDING),
        example(findings_priming.NO_OIL_WHEN_CRANKED),
    ],
    non_matches=[
        example(lacks=[findings_drive.PUMP_SEEN_STANDING, findings_priming.NO_OIL_WHEN_CRANKED])
    ],
)
PUMP_LEFT_DRY = LinkGroup(
    id="pump_left_dry",
    station=Station.PUMP,
    says="A pump left dry after work, storage or an oil change does not draw until you wet it.",
    links=(
        *effects_of(
            causes_fitted.PUMP_NOT_PRIMED,
            {
                conditions.PUMP_DRY: (ALWAYS, sources.FILTER_MAKER_PRIME),
                behaviour.CHANGED_WITH_OIL_CHANGE: (OFTEN, sources.FILTER_MAKER_PRIME),
                history.STARTED_UNPRIMED: (MOSTLY, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            conditions.PUMP_DRY,
            {
                findings_bench.PUMP_DRY_INSIDE: (MOSTLY, COMMON_PRACTICE),
                findings_priming.NO_OIL_WHEN_CRANKED: (MOSTLY, sources.FILTER_MAKER_PRIME),
            },
        ),
    ),
    matches=[
        example(behaviour.NONE_FROM_FIRST_START, findings_bench.PUMP_DRY_INSIDE),
        example(findings_priming.FORCED_OIL_BROUGHT_PRESSURE),
        example(behaviour.CHANGED_WITH_OIL_CHANGE, findings_priming.NO_OIL_WHEN_CRANKED),
        example(behaviour.NONE_FROM_FIRST_START, history.STARTED_UNPRIMED),
    ],
    non_matches=[
        example(
            behaviour.NONE_FROM_FIRST_START,
            lacks=[findings_bench.PUMP_DRY_INSIDE, findings_priming.FORCED_OIL_BROUGHT_PRESSURE],
        ),
        example(behaviour.NONE_FROM_FIRST_START, lacks=[history.STARTED_UNPRIMED]),
        example(behaviour.CHANGED_WITH_OIL_CHANGE, lacks=[findings_priming.NO_OIL_WHEN_CRANKED]),
    ],
)
WHINE_AND_FALLING_PRESSURE_WITH_REVS = LinkGroup(
    id="whine_and_falling_pressure_with_revs",
    station=Station.PUMP,
    says="A pump that cannot fill whines, and its pressure falls as the revs keep rising.",
    note="Misleads when a partly blocked screen throttles a sound inlet: look there first.",
    links=(
        *effects_of(
            causes_fitted.PUMP_CAVITATION,
            {
                conditions.PUMP_CAVITATES: (ALWAYS, sources.PUMP_CAVITATION_ANSWER),
            },
        ),
        *effects_of(
            conditions.PUMP_CAVITATES,
            {
                findings.PUMP_NOISE: (OFTEN, sources.PUMP_CAVITATION_ANSWER),
                findings_wear.CAVITATION_MARKS: (OFTEN, idea_from(sources.PUMP_CAVITATION_ANSWER)),
            },
        ),
    ),
    matches=[
        example(patterns_speed.FALLS_AS_REVS_RISE, findings.PUMP_NOISE),
        example(findings_wear.CAVITATION_MARKS),
    ],
    non_matches=[
        example(
            patterns_speed.FALLS_AS_REVS_RISE,
            lacks=[findings.PUMP_NOISE, findings_wear.CAVITATION_MARKS],
        )
    ],
)

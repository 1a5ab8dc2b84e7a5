"""Further links at the relief valve: one finding of several causes, states of the circuit."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.model import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, effects_of, example, origins_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.pump import findings_priming as pump_priming
from knowledge.stations.relief import causes, findings

VALVE_GRIPPED_WHERE_IT_STOOD = LinkGroup(
    id="valve_gripped_where_it_stood",
    station=Station.RELIEF,
    says=(
        "A relief valve that grips in its bore stuck open if pressure was low, shut if it was high."
    ),
    child=findings.RELIEF_FOUND_STUCK,
    origins={
        causes.RELIEF_STUCK_OPEN: (ALWAYS, idea_from(sources.PRESSURIZED_BLACK_GOLD)),
        causes.RELIEF_STUCK_CLOSED: (ALWAYS, COMMON_PRACTICE),
        causes.RELIEF_BORE_SCORED: (SOMETIMES, sources.CROSSOVER_V6_MANUAL_2007),
        conditions.RELIEF_HELD_OPEN: (SOMETIMES, sources.TRACTOR_DIESEL_MANUAL_2003),
    },
    matches=[example(patterns.GAUGE_READS_LOW, findings.RELIEF_FOUND_STUCK)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.RELIEF_FOUND_STUCK])],
)
VALVE_THAT_SOMEBODY_CALLED_BAD = LinkGroup(
    id="valve_that_somebody_called_bad",
    station=Station.RELIEF,
    says="A relief valve called bad is stuck, dirty, worn or weak: the word does not say which.",
    child=findings.RELIEF_FOUND_BAD,
    origins={
        causes.RELIEF_STUCK_OPEN: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_STUCK_CLOSED: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_BORE_SCORED: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_SPRING_WEAK_BROKEN: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_SPRING_WRONG: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_HUNTING: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_DEBRIS: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_PART_MISSING: (SOMETIMES, JUDGEMENT),
        causes.RELIEF_CAP_LOOSE: (SOMETIMES, JUDGEMENT),
        conditions.METAL_UNDER_RELIEF: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings.RELIEF_FOUND_BAD),
        example(findings.RELIEF_FOUND_BAD),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.RELIEF_FOUND_BAD])],
)
TOO_HIGH_SINCE_THE_REBUILD = LinkGroup(
    id="too_high_since_the_rebuild",
    station=Station.RELIEF,
    says="Too high ever since a rebuild: a wrong spring, plug or passage.",
    child=findings.HIGH_FROM_FIRST_START,
    origins={
        causes.RELIEF_RETURN_PLUGGED: (MOSTLY, JUDGEMENT),
        causes.RELIEF_SPRING_WRONG: (OFTEN, idea_from(sources.DIESEL_TESTING_MANUAL)),
        causes.RELIEF_STUCK_CLOSED: (SOMETIMES, sources.RELIEF_VALVE_EXPLANATION),
        bearings_causes.BEARING_WRONG_SIZE: (SELDOM, sources.DIESEL_WORKSHOP_2015),
        # of another engine: too large, or without a valve of its own
        pump_causes_fitted.PUMP_WRONG_PART: (SOMETIMES, COMMON_PRACTICE),
        pump_causes_fitted.PUMP_OVERSIZED: (SOMETIMES, COMMON_PRACTICE),
        delivery_causes_galleries.GALLERY_BLOCKED: (SOMETIMES, sources.DIESEL_WORKSHOP_2015),
        delivery_causes_galleries.GALLERY_PLUG_TOO_DEEP: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings.HIGH_FROM_FIRST_START)],
    non_matches=[example(patterns.GAUGE_READS_HIGH, lacks=[findings.HIGH_FROM_FIRST_START])],
)
CHIPS_REACH_VALVE_AND_PUMP = LinkGroup(
    id="chips_reach_valve_and_pump",
    station=Station.RELIEF,
    says=(
        "Where hard chips or carbon lie in the sump, look for more under the relief valve and in "
        "the pump gears."
    ),
    links=(
        *origins_of(
            debris_findings.HARD_CHIPS,
            {
                causes.RELIEF_DEBRIS: (SOMETIMES, sources.JOBBER_OIL_PUMPS),
                pump_causes.PUMP_DEBRIS_LOCK: (SOMETIMES, sources.JOBBER_OIL_PUMPS),
            },
        ),
        *effects_of(
            causes.RELIEF_DEBRIS,
            {
                debris_findings.CARBON_FLAKES: (SELDOM, JUDGEMENT),
            },
        ),
    ),
    matches=[example(patterns.GAUGE_READS_LOW, debris_findings.HARD_CHIPS)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[debris_findings.HARD_CHIPS])],
)
DRILL_AND_DROP_AT_THE_VALVE = LinkGroup(
    id="drill_and_drop_at_the_valve",
    station=Station.RELIEF,
    says=(
        "No pressure when the pump is drilled, or a plunger that does not drop: parts missing or "
        "a damaged bore."
    ),
    links=(
        *effects_of(
            causes.RELIEF_PART_MISSING,
            {
                pump_priming.DRILL_GIVES_NONE: (OFTEN, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            causes.RELIEF_BORE_SCORED,
            {
                findings.RELIEF_PLUNGER_STICKS: (OFTEN, sources.RELIEF_FREE_FALL),
            },
        ),
    ),
    matches=[example(patterns.GAUGE_READS_ZERO, pump_priming.DRILL_GIVES_NONE)],
    non_matches=[example(patterns.GAUGE_READS_ZERO, lacks=[pump_priming.DRILL_GIVES_NONE])],
)

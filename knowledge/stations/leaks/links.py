"""Further links at the outside leaks: one finding of several causes, states of the circuit."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.delivery import findings_filter as delivery_filter
from knowledge.stations.leaks import causes, causes_openings, findings, findings_places
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import findings as oil_findings
from knowledge.stations.oil import findings_heat as oil_heat
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.suction import causes as suction_causes

PUSHED_OUT_FROM_INSIDE = LinkGroup(
    id="pushed_out_from_inside",
    station=Station.LEAKS,
    says="Crankcase pressure pushed the seal out of its seat: check the breather.",
    child=findings.SEAL_FOUND_PUSHED_OUT,
    origins={
        causes_openings.BREATHER_BLOCKED: (OFTEN, COMMON_PRACTICE),
        causes.SHAFT_SEAL_LEAK: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings.SEAL_FOUND_PUSHED_OUT)],
    non_matches=[example(findings.OIL_SEEN_OUTSIDE, lacks=[findings.SEAL_FOUND_PUSHED_OUT])],
)
SEEPS_AND_NOBODY_TOPPED_UP = LinkGroup(
    id="seeps_and_nobody_topped_up",
    station=Station.LEAKS,
    says="Small seeps empty a sump only if nobody checks the stick.",
    parent=oil_causes.OIL_LEVEL_LOW,
    effects={
        findings.ONLY_SMALL_SEEPS: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(oil_findings.DIPSTICK_DRY, findings.ONLY_SMALL_SEEPS)],
    non_matches=[example(oil_findings.DIPSTICK_DRY, lacks=[findings.ONLY_SMALL_SEEPS])],
)
LINE_TOUCHED_IN_THE_WORK = LinkGroup(
    id="line_touched_in_the_work",
    station=Station.LEAKS,
    says="If an oil line was undone in the work just before, check that joint first.",
    child=findings.OIL_LINE_WAS_DISTURBED,
    origins={
        causes.OIL_LINE_LEAK: (OFTEN, COMMON_PRACTICE),
        suction_causes.SUCTION_JOINT_AIR_LEAK: (SOMETIMES, COMMON_PRACTICE),
        pump_causes_fitted.PUMP_NOT_PRIMED: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings.OIL_LINE_WAS_DISTURBED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.OIL_LINE_WAS_DISTURBED])],
)
WHATEVER_WAS_UNDONE_LEAKS_FIRST = LinkGroup(
    id="whatever_was_undone_leaks_first",
    station=Station.LEAKS,
    says="Joints disturbed by the work leak first: unions, seals, senders, bolts, sealer.",
    child=behaviour.CHANGED_AFTER_OTHER_WORK,
    origins={
        causes.EXTERNAL_LEAK_MAJOR: (SOMETIMES, COMMON_PRACTICE),
        causes.SHAFT_SEAL_LEAK: (SOMETIMES, COMMON_PRACTICE),
        causes_openings.SENDER_LEAK: (SOMETIMES, COMMON_PRACTICE),
        assembly_causes.SEALANT_DEBRIS: (SOMETIMES, sources.CLUB_SEALANT_STRAINER),
        assembly_causes.FASTENER_LOOSE_INSIDE: (SOMETIMES, COMMON_PRACTICE),
        assembly_causes.DIRT_IN_ASSEMBLY: (SOMETIMES, idea_from(sources.GASKET_FACE_CLEANING_2000)),
    },
    matches=[example(behaviour.CHANGED_AFTER_OTHER_WORK)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[behaviour.CHANGED_AFTER_OTHER_WORK])],
)
OIL_THAT_LEAVES_IS_SEEN_SOMEWHERE = LinkGroup(
    id="oil_that_leaves_is_seen_somewhere",
    station=Station.LEAKS,
    says=(
        "You can see oil that leaves an engine: on it, under it, behind it, or smoking on hot "
        "parts."
    ),
    note="Misleads when it is old oil: wash it down and look again.",
    parent=conditions.OIL_ESCAPING,
    effects={
        findings.OIL_SEEN_OUTSIDE: (MOSTLY, COMMON_PRACTICE),
        findings.OIL_ON_THE_GROUND: (OFTEN, COMMON_PRACTICE),
        findings.OIL_LOSS_FAST: (OFTEN, COMMON_PRACTICE),
        findings.DROPS_FALL_WHILE_WATCHED: (OFTEN, sources.ARMY_TM_304_LEAKAGE),
        oil_heat.BURNING_OIL_SMOKE: (SOMETIMES, COMMON_PRACTICE),
        findings.OIL_SPRAYED: (SOMETIMES, COMMON_PRACTICE),
        findings.OIL_TRAIL_BEHIND: (SOMETIMES, COMMON_PRACTICE),
        findings.OIL_ON_BODYWORK: (SELDOM, COMMON_PRACTICE),
        findings.OIL_IN_THE_BILGE: (SELDOM, COMMON_PRACTICE),
        findings.OIL_CAUGHT_FIRE: (SELDOM, COMMON_PRACTICE),
    },
    matches=[
        example(findings.OIL_LOSS_FAST, findings.OIL_ON_THE_GROUND),
        example(findings.OIL_SPRAYED),
        example(findings.OIL_TRAIL_BEHIND, patterns.FELL_SUDDENLY),
    ],
    non_matches=[
        example(
            patterns.FELL_SUDDENLY, lacks=[findings.OIL_SEEN_OUTSIDE, findings.OIL_ON_THE_GROUND]
        )
    ],
)
TOO_MUCH_PRESSURE_OPENS_THE_WEAKEST_JOINT = LinkGroup(
    id="too_much_pressure_opens_the_weakest_joint",
    station=Station.LEAKS,
    says="Too much pressure opens the weakest joint: filter seal first, then lines and plugs.",
    note="If a new filter leaks again, check the relief valve.",
    parent=conditions.PRESSURE_HIGH,
    effects={
        conditions.OIL_ESCAPING: (SOMETIMES, COMMON_PRACTICE),
        delivery_filter.FILTER_SEAT_LEAKS: (SOMETIMES, COMMON_PRACTICE),
        findings.OIL_SPRAYED: (SELDOM, COMMON_PRACTICE),
        findings_places.OIL_LINE_FOUND_BROKEN: (SOMETIMES, COMMON_PRACTICE),
        findings.CUP_PLUG_FOUND_OUT: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(patterns_speed.CLIMBS_PAST_SETTING, delivery_filter.FILTER_SEAT_LEAKS),
        example(findings.OIL_SPRAYED, delivery_filter.FILTER_SEAT_LEAKS),
    ],
    non_matches=[
        example(
            lacks=[
                delivery_filter.FILTER_SEAT_LEAKS,
                findings.OIL_SPRAYED,
                patterns_speed.CLIMBS_PAST_SETTING,
            ]
        )
    ],
)

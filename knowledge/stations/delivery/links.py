"""Further links at the filter, cooler and galleries: one finding of several causes, states of the circuit."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, effects_of, example, origins_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.delivery import (
    causes,
    findings_filter,
    findings_filter_cut,
    findings_galleries,
)
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import findings as leaks_findings
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.pump import causes as pump_causes

FILTER_SWELLS_OR_BURSTS = LinkGroup(
    id="filter_swells_or_bursts",
    station=Station.DELIVERY,
    says="A bulged or burst filter means pressure that nothing relieved: check the relief valve.",
    note=(
        "Cold thick oil revved at once does it too. Misleads when the filter was weak or the "
        "wrong one."
    ),
    links=(
        *effects_of(
            conditions.RELIEF_HOLDS_HIGH,
            {
                findings_filter.FILTER_BULGED: (OFTEN, COMMON_PRACTICE),
                findings_filter.FILTER_BURST: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            conditions.OIL_THICK,
            {
                findings_filter.FILTER_BULGED: (SOMETIMES, COMMON_PRACTICE),
                findings_filter.FILTER_BURST: (SELDOM, COMMON_PRACTICE),
                findings_filter.FILTER_DROP_HIGH: (SOMETIMES, PHYSICS),
                findings_filter_cut.FILTER_COLLAPSED: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
    ),
    matches=[
        example(patterns_speed.CLIMBS_PAST_SETTING, findings_filter.FILTER_BURST),
        example(findings_filter.FILTER_BULGED),
    ],
    non_matches=[
        example(
            lacks=[
                findings_filter.FILTER_BURST,
                findings_filter.FILTER_BULGED,
                patterns_speed.CLIMBS_PAST_SETTING,
            ]
        )
    ],
)
FILTER_PACKED_BY_WHAT_CAME_BEFORE = LinkGroup(
    id="filter_packed_by_what_came_before",
    station=Station.DELIVERY,
    says="Sludge, metal and build dirt end up in the filter and load it.",
    links=(
        *origins_of(
            findings_filter_cut.FILTER_PACKED,
            {
                conditions.OIL_SLUDGED: (OFTEN, COMMON_PRACTICE),
                conditions.METAL_SHED: (SOMETIMES, idea_from(sources.CUT_FILTER_ANALYSIS_2026)),
            },
        ),
        *effects_of(
            conditions.METAL_SHED,
            {
                findings_filter_cut.FILTER_BYPASS_WITNESS: (SELDOM, JUDGEMENT),
                findings_filter.FILTER_DROP_HIGH: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            conditions.OIL_SLUDGED,
            {
                findings_filter.FILTER_DROP_HIGH: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            conditions.DIRT_IN_OIL,
            {
                findings_filter.FILTER_DROP_HIGH: (SELDOM, COMMON_PRACTICE),
                findings_filter_cut.FILTER_PACKED: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
    ),
    matches=[example(findings_filter_cut.FILTER_PACKED, findings_filter_cut.FILTER_BYPASS_WITNESS)],
    non_matches=[
        example(
            lacks=[findings_filter_cut.FILTER_PACKED, findings_filter_cut.FILTER_BYPASS_WITNESS]
        )
    ],
)
COLD_FILTER_HAS_NO_FLOW = LinkGroup(
    id="cold_filter_has_no_flow",
    station=Station.DELIVERY,
    says="A filter that stays cold on a hot engine has no flow: blocked, wrong, or no oil at all.",
    child=findings_filter.FILTER_STAYS_COLD,
    origins={
        conditions.FLOW_RESTRICTED: (SOMETIMES, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings_filter.FILTER_STAYS_COLD)],
    non_matches=[example(lacks=[findings_filter.FILTER_STAYS_COLD])],
)
LINE_FOUND_EMPTY_AFTER_A_REST = LinkGroup(
    id="line_found_empty_after_a_rest",
    station=Station.DELIVERY,
    says="If oil drains back while standing, the filter is found empty.",
    parent=conditions.DRAINS_BACK,
    effects={
        findings_filter.FILTER_EMPTY_AFTER_STANDING: (OFTEN, sources.FILTER_MAKER_VALVES),
    },
    matches=[example(behaviour.SLOW_AFTER_STANDING, findings_filter.FILTER_EMPTY_AFTER_STANDING)],
    non_matches=[
        example(behaviour.SLOW_AFTER_STANDING, lacks=[findings_filter.FILTER_EMPTY_AFTER_STANDING])
    ],
)
NOTHING_PUMPED_NOTHING_IN_THE_FILTER = LinkGroup(
    id="nothing_pumped_nothing_in_the_filter",
    station=Station.DELIVERY,
    says="A new filter that is still empty after a run got no oil: the pump moved none.",
    note="Misleads with an old filter, which may have drained while the engine stood.",
    child=findings_filter.FILTER_EMPTY_AFTER_STANDING,
    origins={
        conditions.PUMP_DRY: (OFTEN, idea_from(sources.FILTER_MAKER_PRIME)),
        conditions.PUMP_NOT_TURNING: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(
            behaviour.NONE_FROM_FIRST_START,
            findings_filter.FILTER_EMPTY_AFTER_STANDING,
        )
    ],
    non_matches=[
        example(
            behaviour.NONE_FROM_FIRST_START,
            lacks=[findings_filter.FILTER_EMPTY_AFTER_STANDING],
        )
    ],
)
WHITE_PASTE_ON_THE_ELEMENT = LinkGroup(
    id="white_paste_on_the_element",
    station=Station.DELIVERY,
    says="Water in the oil leaves a milky film on the element, and the emulsion loads the filter.",
    parent=oil_causes_contamination.COOLANT_IN_OIL,
    effects={
        findings_filter_cut.MILKY_FILM_IN_FILTER: (MOSTLY, idea_from(sources.LABORATORY_COOLANT)),
        findings_filter_cut.FILTER_PACKED: (SOMETIMES, idea_from(sources.LABORATORY_COOLANT)),
    },
    matches=[example(findings_filter_cut.MILKY_FILM_IN_FILTER)],
    non_matches=[example(lacks=[findings_filter_cut.MILKY_FILM_IN_FILTER])],
)
GASKET_WASHED_TO_SHREDS = LinkGroup(
    id="gasket_washed_to_shreds",
    station=Station.DELIVERY,
    says=(
        "Shreds of gasket in sump or filter mean that a gasket has blown out on the pressure side."
    ),
    child=findings_filter_cut.GASKET_SHREDS_FOUND,
    origins={
        pump_causes.PUMP_MOUNT_LEAK: (OFTEN, COMMON_PRACTICE),
        pump_causes.PUMP_GASKET_WRONG: (SOMETIMES, COMMON_PRACTICE),
        conditions.DIRT_IN_OIL: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(patterns.GAUGE_READS_LOW, findings_filter_cut.GASKET_SHREDS_FOUND)],
    non_matches=[
        example(patterns.GAUGE_READS_LOW, lacks=[findings_filter_cut.GASKET_SHREDS_FOUND])
    ],
)
SEALER_CAUGHT_BY_THE_FILTER = LinkGroup(
    id="sealer_caught_by_the_filter",
    station=Station.DELIVERY,
    says="Sealer in the filter has passed screen and pump: more of it hangs inside the sump.",
    child=findings_filter_cut.SEALER_IN_FILTER,
    origins={
        assembly_causes.SEALANT_DEBRIS: (OFTEN, sources.CLUB_SEALANT_STRAINER),
    },
    matches=[example(patterns.GAUGE_READS_LOW, findings_filter_cut.SEALER_IN_FILTER)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_filter_cut.SEALER_IN_FILTER])],
)
ONE_DRY_WHILE_THE_OTHERS_FLOW = LinkGroup(
    id="one_dry_while_the_others_flow",
    station=Station.DELIVERY,
    says="One bearing dry while the others flow: its own hole or branch is blocked.",
    child=findings_galleries.ONE_BEARING_GETS_NO_OIL,
    origins={
        conditions.JOURNAL_DRY: (OFTEN, COMMON_PRACTICE),
        assembly_causes.BEARING_OIL_HOLE_MISALIGNED: (MOSTLY, sources.CAM_BEARING_HOLES_BLOG),
    },
    matches=[example(findings_galleries.ONE_BEARING_GETS_NO_OIL)],
    non_matches=[example(lacks=[findings_galleries.ONE_BEARING_GETS_NO_OIL])],
)
WHAT_BLOCKS_A_GALLERY = LinkGroup(
    id="what_blocks_a_gallery",
    station=Station.DELIVERY,
    says="Blocked galleries hold sealer, build dirt or sludge.",
    child=findings_galleries.GALLERY_FOUND_BLOCKED,
    origins={
        assembly_causes.SEALANT_DEBRIS: (SOMETIMES, COMMON_PRACTICE),
        assembly_causes.DIRT_IN_ASSEMBLY: (SOMETIMES, sources.RING_MAKER_CLEANING_MEDIA),
        conditions.OIL_SLUDGED: (SOMETIMES, sources.DIESEL_WORKSHOP_2015),
        conditions.DIRT_IN_OIL: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings_galleries.GALLERY_FOUND_BLOCKED)],
    non_matches=[example(lacks=[findings_galleries.GALLERY_FOUND_BLOCKED])],
)
GASKET_OUT_OF_ITS_SEAT = LinkGroup(
    id="gasket_out_of_its_seat",
    station=Station.DELIVERY,
    says=(
        "A gasket blown out of the filter adapter had too much pressure on it, or was never seated."
    ),
    child=findings_filter.ADAPTER_GASKET_DISPLACED,
    origins={
        causes.FILTER_BYPASS_STUCK: (SOMETIMES, JUDGEMENT),
        causes.FILTER_WRONG: (OFTEN, COMMON_PRACTICE),
        leaks_causes.FILTER_SEAL_LEAK: (OFTEN, COMMON_PRACTICE),
        conditions.PRESSURE_HIGH: (SELDOM, COMMON_PRACTICE),
    },
    matches=[example(findings_filter.ADAPTER_GASKET_DISPLACED)],
    non_matches=[
        example(leaks_findings.OIL_LOSS_FAST, lacks=[findings_filter.ADAPTER_GASKET_DISPLACED])
    ],
)
BYPASS_PUT_IN_WRONG = LinkGroup(
    id="bypass_put_in_wrong",
    station=Station.DELIVERY,
    says="A wrongly fitted bypass valve lets cold oil crush the element, or dirty oil through.",
    links=(
        *origins_of(
            findings_filter_cut.BYPASS_VALVE_MISFITTED,
            {
                causes.FILTER_BYPASS_STUCK: (OFTEN, JUDGEMENT),
                causes.FILTER_WRONG: (SELDOM, JUDGEMENT),
            },
        ),
        *effects_of(
            causes.FILTER_BYPASS_STUCK,
            {
                conditions.OIL_ESCAPING: (SELDOM, JUDGEMENT),
            },
        ),
    ),
    matches=[example(findings_filter_cut.BYPASS_VALVE_MISFITTED)],
    non_matches=[
        example(
            findings_filter_cut.FILTER_COLLAPSED, lacks=[findings_filter_cut.BYPASS_VALVE_MISFITTED]
        )
    ],
)
OIL_WORKED_DEVICE_GOES_WITH_IT = LinkGroup(
    id="oil_worked_device_goes_with_it",
    station=Station.DELIVERY,
    says="What engine oil works fails together with the pressure, which proves the loss real.",
    child=findings_filter.OIL_FED_DEVICE_FAILED_FIRST,
    origins={
        conditions.PRESSURE_GONE: (SELDOM, COMMON_PRACTICE),
        conditions.PRESSURE_LOW: (SELDOM, COMMON_PRACTICE),
    },
    matches=[example(patterns.GAUGE_READS_ZERO, findings_filter.OIL_FED_DEVICE_FAILED_FIRST)],
    non_matches=[
        example(patterns.GAUGE_READS_ZERO, lacks=[findings_filter.OIL_FED_DEVICE_FAILED_FIRST])
    ],
)

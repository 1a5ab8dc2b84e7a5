"""Further links at the suction side: one finding of several causes, states of the circuit."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.model import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import direct_gauge, patterns
from knowledge.rule_api import LinkGroup, effects_of, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.suction import causes, causes_sump, findings, findings_pickup, findings_sump

PIECES_PAST_THE_MESH = LinkGroup(
    id="pieces_past_the_mesh",
    station=Station.SUCTION,
    says="Pieces on the pump side of the mesh came through it, or out of the pump.",
    child=findings_sump.METAL_PAST_THE_SCREEN,
    origins={
        causes.PICKUP_SCREEN_BYPASS_OPEN: (OFTEN, sources.PUMP_MAKER_SHAFTS_SCREENS),
        pump_causes_fitted.PUMP_BODY_CRACKED: (SOMETIMES, JUDGEMENT),
        pump_causes.PUMP_DEBRIS_LOCK: (SOMETIMES, sources.PUMP_MAKER_SHAFTS_SCREENS),
    },
    matches=[example(findings_sump.METAL_PAST_THE_SCREEN)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sump.METAL_PAST_THE_SCREEN])],
)
SEEN_BEFORE_AND_COME_BACK = LinkGroup(
    id="seen_before_and_come_back",
    station=Station.SUCTION,
    says="Where something foreign was found in the screen once, there is often more behind it.",
    child=findings_sump.DEBRIS_SEEN_BEFORE,
    origins={
        causes_sump.FOREIGN_BODY_IN_SUMP: (SOMETIMES, COMMON_PRACTICE),
        assembly_causes.DIRT_IN_ASSEMBLY: (SOMETIMES, COMMON_PRACTICE),
        causes.PICKUP_SCREEN_BLOCKED: (SELDOM, COMMON_PRACTICE),
        assembly_causes.SEALANT_DEBRIS: (SOMETIMES, COMMON_PRACTICE),
        assembly_causes.TIMING_GEAR_SHEDDING: (SOMETIMES, idea_from(sources.CLUB_BLOCKED_SCREENS)),
    },
    matches=[example(findings_sump.DEBRIS_SEEN_BEFORE, patterns.GAUGE_READS_LOW)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sump.DEBRIS_SEEN_BEFORE])],
)
OIL_RUNS_OFF_IN_THE_BEND = LinkGroup(
    id="oil_runs_off_in_the_bend",
    station=Station.SUCTION,
    says=(
        "Side force, slope or a missing baffle piles the oil up away from the pickup, again and "
        "again."
    ),
    note="Each time is short: the lamp may not show it, but a rod bearing suffers.",
    links=(
        *effects_of(
            causes_sump.ATTITUDE_UNCOVERS_PICKUP,
            {
                conditions.PICKUP_UNCOVERED: (ALWAYS, sources.SUMP_TILT_TEST),
                direct_gauge.NOTHING_WARNED: (SELDOM, JUDGEMENT),
                findings_pickup.OIL_TRAPPED_IN_SUMP: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            causes_sump.BAFFLE_MISSING,
            {
                conditions.PICKUP_UNCOVERED: (MOSTLY, sources.SUMP_TILT_TEST),
                findings_pickup.BAFFLE_MISSING_OR_LOOSE: (ALWAYS, COMMON_PRACTICE),
                findings_pickup.OIL_TRAPPED_IN_SUMP: (SOMETIMES, JUDGEMENT),
            },
        ),
    ),
    matches=[
        example(findings_pickup.BAFFLE_MISSING_OR_LOOSE),
        example(findings_pickup.OIL_TRAPPED_IN_SUMP),
    ],
    non_matches=[
        example(
            lacks=[findings_pickup.BAFFLE_MISSING_OR_LOOSE, findings_pickup.OIL_TRAPPED_IN_SUMP]
        )
    ],
)
SLUDGE_SETTLES_ON_THE_MESH = LinkGroup(
    id="sludge_settles_on_the_mesh",
    station=Station.SUCTION,
    says="Oil that leaves sludge leaves it on the pickup screen and in the returns.",
    parent=conditions.OIL_SLUDGED,
    effects={
        findings_sump.SLUDGE_ON_SCREEN: (MOSTLY, sources.CLUB_BLOCKED_SCREENS),
        findings_sump.VARNISH_ON_SCREEN: (OFTEN, sources.PUMP_MAKER_SHAFTS_SCREENS),
        findings_sump.SCREEN_BLOCKED: (OFTEN, sources.CLUB_BLOCKED_SCREENS),
        findings_pickup.RETURNS_BLOCKED: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings_sump.SLUDGE_ON_SCREEN),
        example(findings_sump.SLUDGE_ON_SCREEN, findings_sump.VARNISH_ON_SCREEN),
    ],
    non_matches=[example(lacks=[findings_sump.VARNISH_ON_SCREEN, findings_sump.SLUDGE_ON_SCREEN])],
)
METAL_SETTLES_ON_THE_MESH = LinkGroup(
    id="metal_settles_on_the_mesh",
    station=Station.SUCTION,
    says=(
        "Metal from damaged parts settles on the pickup screen: find its source, do not just "
        "clean it off."
    ),
    note="Misleads when the metal is taken for the root cause: most of it is following damage.",
    parent=conditions.METAL_SHED,
    effects={
        debris_findings.METAL_IN_SCREEN: (OFTEN, sources.AIRCRAFT_FAULT_ISOLATION),
        findings_sump.SCREEN_BLOCKED: (SELDOM, COMMON_PRACTICE),
    },
    matches=[
        example(debris_findings.METAL_IN_SCREEN),
        example(debris_findings.METAL_IN_SCREEN, findings_sump.SCREEN_BLOCKED),
    ],
    non_matches=[example(findings_sump.SCREEN_BLOCKED, lacks=[debris_findings.METAL_IN_SCREEN])],
)
BROKEN_ENGINE_STRIKES_THE_TRAY = LinkGroup(
    id="broken_engine_strikes_the_tray",
    station=Station.SUCTION,
    says="An engine that breaks up hits its tray: then the torn tray is a result, not the cause.",
    parent=conditions.ENGINE_FAILED,
    effects={
        findings_pickup.TRAY_BROKEN_OR_MISSING: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_pickup.TRAY_BROKEN_OR_MISSING)],
    non_matches=[example(lacks=[findings_pickup.TRAY_BROKEN_OR_MISSING])],
)
SCREEN_CATCHES_WHAT_TRAVELS = LinkGroup(
    id="screen_catches_what_travels",
    station=Station.SUCTION,
    says="Anything carried by the oil ends up on the screen, if the screen is whole.",
    parent=conditions.DIRT_IN_OIL,
    effects={
        findings_sump.FOREIGN_MATERIAL_ON_SCREEN: (OFTEN, COMMON_PRACTICE),
        findings_sump.GASKET_ON_SCREEN: (SELDOM, COMMON_PRACTICE),
        findings_sump.SCREEN_BLOCKED: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings_sump.FOREIGN_MATERIAL_ON_SCREEN),
        example(findings_sump.GASKET_ON_SCREEN),
    ],
    non_matches=[
        example(lacks=[findings_sump.FOREIGN_MATERIAL_ON_SCREEN, findings_sump.GASKET_ON_SCREEN])
    ],
)
SEALER_BREAKS_OFF_INSIDE = LinkGroup(
    id="sealer_breaks_off_inside",
    station=Station.SUCTION,
    says=(
        "Sealer squeezed out inside breaks off and gets drawn to the screen in strings and crumbs."
    ),
    parent=assembly_causes.SEALANT_DEBRIS,
    effects={
        findings_sump.SEALER_ON_SCREEN: (MOSTLY, sources.CLUB_SEALANT_STRAINER),
        findings_sump.SCREEN_BLOCKED: (OFTEN, sources.CLUB_SEALANT_STRAINER),
        findings_sump.FOREIGN_MATERIAL_ON_SCREEN: (OFTEN, sources.CLUB_SEALANT_STRAINER),
        findings_sump.SEALER_IN_SUMP: (MOSTLY, COMMON_PRACTICE),
        findings.SEALER_SQUEEZED_OUT: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(findings_sump.SEALER_ON_SCREEN),
        example(findings_sump.SEALER_IN_SUMP, findings.SEALER_SQUEEZED_OUT),
    ],
    non_matches=[example(lacks=[findings_sump.SEALER_ON_SCREEN, findings_sump.SEALER_IN_SUMP])],
)
GEAR_TEETH_IN_THE_SCREEN = LinkGroup(
    id="gear_teeth_in_the_screen",
    station=Station.SUCTION,
    says="Plastic gear teeth in the screen come from a timing gear, even one replaced years ago.",
    parent=assembly_causes.TIMING_GEAR_SHEDDING,
    effects={
        findings_sump.PLASTIC_ON_SCREEN: (ALWAYS, sources.CLUB_BLOCKED_SCREENS),
        findings_sump.SCREEN_BLOCKED: (OFTEN, sources.CLUB_BLOCKED_SCREENS),
        findings_sump.FOREIGN_MATERIAL_ON_SCREEN: (OFTEN, sources.CLUB_BLOCKED_SCREENS),
    },
    matches=[example(findings_sump.PLASTIC_ON_SCREEN)],
    non_matches=[example(lacks=[findings_sump.PLASTIC_ON_SCREEN])],
)
PASTE_FROM_ASSEMBLY = LinkGroup(
    id="paste_from_assembly",
    station=Station.SUCTION,
    says="Grease or jelly from assembly can plug the screen until warm oil carries it away.",
    parent=assembly_causes.ASSEMBLY_LUBE_CLOG,
    effects={
        findings_sump.PASTE_ON_SCREEN: (MOSTLY, sources.JOBBER_OIL_PUMPS),
        findings_sump.SCREEN_BLOCKED: (OFTEN, sources.JOBBER_OIL_PUMPS),
    },
    matches=[example(findings_sump.PASTE_ON_SCREEN)],
    non_matches=[example(lacks=[findings_sump.PASTE_ON_SCREEN])],
)
BOLT_THAT_CAME_UNDONE = LinkGroup(
    id="bolt_that_came_undone",
    station=Station.SUCTION,
    says=(
        "A bolt left unlocked lets the pickup or tray come off: look for the bolt and where it "
        "came from."
    ),
    parent=assembly_causes.FASTENER_LOOSE_INSIDE,
    effects={
        findings_pickup.PICKUP_FIXING_LOOSE: (OFTEN, COMMON_PRACTICE),
        findings_sump.PICKUP_FELL_OFF: (SOMETIMES, COMMON_PRACTICE),
        findings_pickup.TRAY_BROKEN_OR_MISSING: (SOMETIMES, COMMON_PRACTICE),
        findings_pickup.TRAY_RUBBED: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sump.PICKUP_FELL_OFF), example(findings_pickup.PICKUP_FIXING_LOOSE)],
    non_matches=[
        example(lacks=[findings_pickup.PICKUP_FIXING_LOOSE, findings_sump.PICKUP_FELL_OFF])
    ],
)
OIL_RING_AT_THE_CRANK = LinkGroup(
    id="oil_ring_at_the_crank",
    station=Station.SUCTION,
    says="Too much oil leaves a ring at the height where crank and rods pass.",
    parent=oil_causes.OIL_LEVEL_HIGH,
    effects={
        findings_pickup.OIL_LINE_AT_CRANK: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings_pickup.OIL_LINE_AT_CRANK)],
    non_matches=[example(lacks=[findings_pickup.OIL_LINE_AT_CRANK])],
)
STIFF_OIL_COMES_BACK_WITH_WARMTH = LinkGroup(
    id="stiff_oil_comes_back_with_warmth",
    station=Station.SUCTION,
    says="Cold, stiff oil also drains back slowly and comes right when warm: it need not be ice.",
    parent=conditions.OIL_THICK,
    effects={
        findings.OIL_SLOW_TO_RETURN: (SOMETIMES, COMMON_PRACTICE),
        findings.PRESSURE_BACK_AFTER_THAW: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings.OIL_SLOW_TO_RETURN), example(findings.PRESSURE_BACK_AFTER_THAW)],
    non_matches=[example(lacks=[findings.OIL_SLOW_TO_RETURN, findings.PRESSURE_BACK_AFTER_THAW])],
)

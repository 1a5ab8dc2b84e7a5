"""What further sights at crank, bearings, liners and block speak for."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.bearings import (
    causes,
    causes_geometry,
    findings,
    findings_shells,
    findings_sights,
)
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump

BROKEN_CRANK = LinkGroup(
    id="broken_crank",
    station=Station.BEARINGS,
    says=(
        "A crank breaks from a bad grind, bores out of line, a lost damper or overload; or a "
        "seized bearing breaks it."
    ),
    child=findings_sights.CRANK_BROKEN,
    origins={
        causes_geometry.OVERLOAD_LUGGING: (SOMETIMES, JUDGEMENT),
        causes_geometry.LINE_BORE_MISALIGNED: (SELDOM, JUDGEMENT),
        causes_geometry.JOURNAL_FINISH: (SELDOM, JUDGEMENT),
        causes_geometry.BENT_ROD_OR_CRANK: (SOMETIMES, JUDGEMENT),
        conditions.ENGINE_FAILED: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.CRANK_BROKEN)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.CRANK_BROKEN])],
)
BROKEN_LINER = LinkGroup(
    id="broken_liner",
    station=Station.BEARINGS,
    says="A broken liner lets coolant into the oil, or was broken by a loose part.",
    child=findings_sights.LINER_BROKEN,
    origins={
        oil_causes_contamination.COOLANT_IN_OIL: (SOMETIMES, JUDGEMENT),
        conditions.ENGINE_FAILED: (SELDOM, JUDGEMENT),
        assembly_causes.PART_SHEDDING_INSIDE: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.LINER_BROKEN)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.LINER_BROKEN])],
)
CRACKED_BLOCK = LinkGroup(
    id="cracked_block",
    station=Station.BEARINGS,
    says="A cracked block opens an oilway, lets coolant in, or was broken from inside.",
    child=findings_sights.BLOCK_CRACKED,
    origins={
        delivery_causes_galleries.GALLERY_CRACK: (OFTEN, JUDGEMENT),
        oil_causes_contamination.COOLANT_IN_OIL: (SOMETIMES, JUDGEMENT),
        leaks_causes_openings.SUMP_HOLED: (SELDOM, JUDGEMENT),
        conditions.ENGINE_FAILED: (SELDOM, JUDGEMENT),
        causes_geometry.LINE_BORE_MISALIGNED: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.BLOCK_CRACKED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.BLOCK_CRACKED])],
)
BROKEN_ROD = LinkGroup(
    id="broken_rod",
    station=Station.BEARINGS,
    says=(
        "A rod breaks when its bearing has seized or its bolts were loose: that is the end, not "
        "the start."
    ),
    child=findings_sights.ROD_BROKEN,
    origins={
        conditions.ENGINE_FAILED: (SOMETIMES, JUDGEMENT),
        assembly_causes.FASTENER_LOOSE_INSIDE: (SOMETIMES, JUDGEMENT),
        causes_geometry.BENT_ROD_OR_CRANK: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.ROD_BROKEN)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.ROD_BROKEN])],
)
SCORED_BORES = LinkGroup(
    id="scored_bores",
    station=Station.BEARINGS,
    says=(
        "Bores score from lack of oil, from dirt or pieces in it, or from fuel that washes the "
        "oil off."
    ),
    child=findings_sights.BORES_OR_PISTONS_SCORED,
    origins={
        conditions.ENGINE_FAILED: (SOMETIMES, COMMON_PRACTICE),
        conditions.BEARINGS_STARVED: (SELDOM, JUDGEMENT),
        conditions.DIRT_IN_OIL: (SELDOM, JUDGEMENT),
        assembly_causes.PART_SHEDDING_INSIDE: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings_sights.BORES_OR_PISTONS_SCORED)],
    non_matches=[
        example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.BORES_OR_PISTONS_SCORED])
    ],
)
RUN_ON_WITHOUT_OIL = LinkGroup(
    id="run_on_without_oil",
    station=Station.BEARINGS,
    says="If an engine was run on without pressure, inspect its bearings, whatever the cause.",
    note="People also run on under a false lamp, so this says little about the cause.",
    child=findings.RAN_ON_WITHOUT_PRESSURE,
    origins={
        conditions.BEARINGS_DAMAGED: (SELDOM, JUDGEMENT),
        conditions.ENGINE_FAILED: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings.RAN_ON_WITHOUT_PRESSURE)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.RAN_ON_WITHOUT_PRESSURE])],
)
MARKS_OF_WHAT_MET = LinkGroup(
    id="marks_of_what_met",
    station=Station.BEARINGS,
    says="Fresh marks show that a loose part hit the moving parts.",
    child=findings_sights.WITNESS_MARKS,
    origins={
        assembly_causes.FASTENER_LOOSE_INSIDE: (SOMETIMES, JUDGEMENT),
        assembly_causes.PART_SHEDDING_INSIDE: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: (SOMETIMES, JUDGEMENT),
        pump_causes.PUMP_DEBRIS_LOCK: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.WINDAGE_AERATION: (SELDOM, JUDGEMENT),
        causes.THRUST_BEARING_WEAR: (SOMETIMES, JUDGEMENT),
        causes_geometry.BENT_ROD_OR_CRANK: (SOMETIMES, JUDGEMENT),
        assembly_causes.CAP_SWAPPED: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.WITNESS_MARKS)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.WITNESS_MARKS])],
)
WIDE_AND_WITHIN_LIMITS = LinkGroup(
    id="wide_and_within_limits",
    station=Station.BEARINGS,
    says="Clearances near the limit cost pressure at hot idle, although none is over the limit.",
    child=findings_sights.CLEARANCES_AT_LIMIT,
    origins={
        conditions.CLEARANCES_WIDE: (SOMETIMES, JUDGEMENT),
        causes.BEARING_WEAR_MAINS: (SOMETIMES, JUDGEMENT),
        causes.BEARING_WEAR_RODS: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings_sights.CLEARANCES_AT_LIMIT)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.CLEARANCES_AT_LIMIT])],
)
LINING_THAT_FLAKES = LinkGroup(
    id="lining_that_flakes",
    station=Station.BEARINGS,
    says="A lining also flakes from load at one place, too much clearance, or age.",
    child=findings_shells.SHELLS_FLAKING,
    origins={
        causes_geometry.LINE_BORE_MISALIGNED: (SOMETIMES, idea_from(sources.BEARING_POSTER)),
        causes_geometry.BENT_ROD_OR_CRANK: (SOMETIMES, idea_from(sources.BEARING_POSTER)),
        causes_geometry.JOURNAL_FINISH: (SOMETIMES, idea_from(sources.BEARING_POSTER)),
        assembly_causes_left_out.CLEARANCE_SET_WIDE: (SELDOM, idea_from(sources.BEARING_POSTER)),
        causes.BEARING_WEAR_MAINS: (SELDOM, JUDGEMENT),
        causes.BEARING_WEAR_RODS: (SELDOM, JUDGEMENT),
        causes.BEARING_WIPED: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_shells.SHELLS_FLAKING)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_shells.SHELLS_FLAKING])],
)

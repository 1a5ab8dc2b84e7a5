"""Root causes in the geometry, finish and load of the crank bearings, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.bearings import (
    findings,
    findings_measured,
    findings_shell_map,
    findings_shells,
)

LINE_BORE_MISALIGNED = Cause(
    id="line_bore_misaligned",
    station=Station.BEARINGS,
    says="main bearing bores out of line or distorted",
    mechanism="some mains run tight and others loose, so the pressure falls as they wear or wipe",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=STRONG_UP),
    remedy="check the bores with a bar; line-bore or hone them",
    source=sources.BEARING_BROCHURE_PREFACE,
    follows="shells fatigue and wipe in places",
    also=(
        "line bore out",
        "warped block",
        "needs align boring",
        "crankcase sprung",
        "main tunnel distorted",
    ),
)
MAINS_THAT_DIFFER_ALONG_THE_CRANK = LinkGroup(
    id="mains_that_differ_along_the_crank",
    station=Station.BEARINGS,
    says="Mains that differ along the crank are in bores out of line; new shells alone fail again.",
    parent=LINE_BORE_MISALIGNED,
    effects={
        conditions.CLEARANCES_WIDE: (OFTEN, JUDGEMENT),
        conditions.BEARINGS_DAMAGED: (SOMETIMES, sources.BEARING_BROCHURE_PREFACE),
        findings_measured.MAIN_BORES_OUT_OF_LINE: (ALWAYS, COMMON_PRACTICE),
        findings_shell_map.MAINS_WORN_UNEVENLY: (MOSTLY, idea_from(sources.BEARING_FAILURE_TYPES)),
        findings_shell_map.SHELL_EDGES_WORN: (SOMETIMES, COMMON_PRACTICE),
        findings_measured.MAIN_CLEARANCE_TOO_WIDE: (SOMETIMES, JUDGEMENT),
        findings.HARD_TO_TURN: (SOMETIMES, COMMON_PRACTICE),
        findings.BEARINGS_FAILED_AGAIN: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings_shell_map.MAINS_WORN_UNEVENLY),
        example(findings_measured.MAIN_BORES_OUT_OF_LINE),
    ],
    non_matches=[
        example(findings_shells.SHELLS_WORN_EVENLY, lacks=[findings_shell_map.MAINS_WORN_UNEVENLY])
    ],
)

JOURNAL_FINISH = Cause(
    id="journal_finish",
    station=Station.BEARINGS,
    says="crank journals ground rough, tapered or out of round",
    mechanism="the lining wears away without heat and the clearance opens within hours",
    # a few per cent of early bearing failures; journals that hours wore oval are worn bearings
    rate=Rate.RARE,
    shifts=Shifts(freshly_rebuilt=STRONG_UP),
    remedy="regrind, then polish in the running direction",
    source=sources.BEARING_BROCHURE_PREFACE,
    follows="low pressure after a few hours on new shells",
    also=(
        "bad crank grind",
        "rough journals",
        "tapered crankpin",
        "out of round journal",
        "crank not polished",
    ),
)
LINING_WORN_OFF_WITHOUT_HEAT = LinkGroup(
    id="lining_worn_off_without_heat",
    station=Station.BEARINGS,
    says="A rough or oval journal wears the lining away without heat, within hours of new shells.",
    parent=JOURNAL_FINISH,
    effects={
        conditions.CLEARANCES_WIDE: (MOSTLY, idea_from(sources.BEARING_BROCHURE_PREFACE)),
        findings_measured.JOURNAL_NOT_TRUE: (ALWAYS, COMMON_PRACTICE),
        findings_shells.SHELLS_WORN_EVENLY: (OFTEN, JUDGEMENT),
        findings_shell_map.SHELL_EDGES_WORN: (SOMETIMES, COMMON_PRACTICE),
        findings_measured.ROD_CLEARANCE_TOO_WIDE: (OFTEN, COMMON_PRACTICE),
        findings_measured.MAIN_CLEARANCE_TOO_WIDE: (OFTEN, COMMON_PRACTICE),
        findings.BEARINGS_FAILED_AGAIN: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings_measured.JOURNAL_NOT_TRUE),
        example(findings.BEARINGS_FAILED_AGAIN, findings_shells.SHELLS_WORN_EVENLY),
    ],
    non_matches=[
        example(findings_shells.SHELLS_WORN_EVENLY, lacks=[findings_measured.JOURNAL_NOT_TRUE])
    ],
)

BENT_ROD_OR_CRANK = Cause(
    id="bent_rod_or_crank",
    station=Station.BEARINGS,
    says="a bent rod or crank",
    mechanism="opposite edges of the shells wear and the oil escapes there",
    rate=Rate.RARE,
    shifts=Shifts(freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="check rods and crank for straightness; straighten or renew",
    source=sources.BEARING_WEAR_ANALYSIS,
    follows="shells fatigue, the rod may break",
    also=("bent connecting rod", "twisted rod", "bent crankshaft", "crank runs out"),
)
WORN_ALONG_OPPOSITE_EDGES = LinkGroup(
    id="worn_along_opposite_edges",
    station=Station.BEARINGS,
    says="Shells worn along opposite edges mean a bent rod or crank.",
    parent=BENT_ROD_OR_CRANK,
    effects={
        conditions.CLEARANCES_WIDE: (SOMETIMES, JUDGEMENT),
        conditions.BEARINGS_DAMAGED: (SOMETIMES, sources.BEARING_WEAR_ANALYSIS),
        findings_shell_map.SHELL_EDGES_WORN: (MOSTLY, sources.BEARING_WEAR_ANALYSIS),
        findings_measured.ROD_OR_CRANK_BENT: (ALWAYS, COMMON_PRACTICE),
        findings.BEARINGS_FAILED_AGAIN: (SOMETIMES, JUDGEMENT),
        findings_shell_map.ONE_BEARING_WIPED: (SELDOM, JUDGEMENT),
        findings.HARD_TO_TURN: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings_shell_map.SHELL_EDGES_WORN, findings_measured.ROD_OR_CRANK_BENT)],
    non_matches=[
        example(findings_shell_map.SHELL_EDGES_WORN, lacks=[findings_measured.ROD_OR_CRANK_BENT])
    ],
)

OVERLOAD_LUGGING = Cause(
    id="overload_lugging",
    station=Station.BEARINGS,
    says="bearings hammered by knocking, lugging or over-revving",
    mechanism="the loaded shells crack and flake; pressure falls late, when lining is lost",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, raced_or_heeled=STRONG_UP),
    remedy="cure the detonation or change how it is driven; renew the shells",
    source=sources.BEARING_BROCHURE_PREFACE,
    follows="flakes travel with the oil, more bearings fail",
    also=(
        "detonation damage",
        "pinging",
        "lugging the engine",
        "over revved",
        "bearing fatigue",
        "hammered bearings",
    ),
)
LOADED_HALF_CRACKS_AND_FLAKES = LinkGroup(
    id="loaded_half_cracks_and_flakes",
    station=Station.BEARINGS,
    says="A lining that cracks and flakes on its loaded half was hammered; pressure falls late.",
    parent=OVERLOAD_LUGGING,
    effects={
        conditions.CLEARANCES_WIDE: (SOMETIMES, JUDGEMENT),
        conditions.BEARINGS_DAMAGED: (OFTEN, sources.BEARING_FAILURE_TYPES),
        conditions.METAL_SHED: (OFTEN, COMMON_PRACTICE),
        findings_shells.SHELLS_FLAKING: (MOSTLY, sources.BEARING_FAILURE_TYPES),
    },
    matches=[
        example(findings_shells.SHELLS_FLAKING),
        example(findings_shells.SHELLS_FLAKING, findings.BEARING_KNOCK),
    ],
    non_matches=[example(findings.BEARING_KNOCK, lacks=[findings_shells.SHELLS_FLAKING])],
)
OVERLOAD_BREAKS_THEM_AGAIN = LinkGroup(
    id="overload_breaks_them_again",
    station=Station.BEARINGS,
    says="Bearings that fail again under the same load were overloaded both times.",
    parent=OVERLOAD_LUGGING,
    effects={
        findings.BEARINGS_FAILED_AGAIN: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings.BEARINGS_FAILED_AGAIN)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.BEARINGS_FAILED_AGAIN])],
)

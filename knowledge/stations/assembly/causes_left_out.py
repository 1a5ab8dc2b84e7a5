"""Root causes of a rebuild: a drive shaft or a crank plug left out, clearances set too wide."""

from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SOMETIMES,
    STRONG_DOWN,
    STRONG_UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import findings_left_out as findings
from knowledge.stations.bearings import findings_measured as measured
from knowledge.stations.pump import findings_drive, findings_priming

OF_A_REBUILD = Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP)

PUMP_DRIVE_LEFT_OUT = Cause(
    id="pump_drive_left_out",
    station=Station.ASSEMBLY,
    says="the pump's drive shaft was left out, or never engaged, at assembly",
    mechanism="nothing turns the pump: no pressure at all from the first start",
    rate=Rate.RARE,
    shifts=OF_A_REBUILD,
    remedy=(
        "fit the shaft, check that it engages at both ends, prime with a drill before another start"
    ),
    source=COMMON_PRACTICE,
    follows="dry start, wiped bearings",
    also=("forgot the oil pump drive shaft", "distributor not down on the pump shaft"),
)
NOTHING_TURNS_THE_PUMP = LinkGroup(
    id="nothing_turns_the_pump",
    station=Station.ASSEMBLY,
    says="A drive shaft left out or not engaged gives no pressure from the first start.",
    parent=PUMP_DRIVE_LEFT_OUT,
    effects={
        conditions.PUMP_NOT_TURNING: (ALWAYS, COMMON_PRACTICE),
        behaviour.NONE_FROM_FIRST_START: (MOSTLY, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_NEW_PUMP: (SOMETIMES, COMMON_PRACTICE),
        findings.DRIVE_SHAFT_ABSENT: (OFTEN, COMMON_PRACTICE),
        findings_drive.DRIVE_NOT_ENGAGED: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(behaviour.NONE_FROM_FIRST_START, findings.DRIVE_SHAFT_ABSENT),
        example(behaviour.NONE_FROM_FIRST_START, findings_priming.NO_OIL_WHEN_CRANKED),
    ],
    non_matches=[example(patterns.FELL_SUDDENLY, lacks=[findings.DRIVE_SHAFT_ABSENT])],
)

CRANK_PLUG_MISSING = Cause(
    id="crank_plug_missing",
    station=Station.ASSEMBLY,
    says="an oilway plug of the crankshaft was left out or came loose",
    mechanism="oil flies out of the open drilling: low at every speed, and a rod runs dry",
    rate=Rate.RARE,
    shifts=OF_A_REBUILD,
    remedy="fit and stake every plug; inspect the rods that this drilling feeds",
    source=COMMON_PRACTICE,
    follows="rod bearings wiped",
    also=("crankshaft plug left out", "crank oil passage not plugged"),
)
OIL_THROWN_OUT_OF_THE_CRANK = LinkGroup(
    id="oil_thrown_out_of_the_crank",
    station=Station.ASSEMBLY,
    says="An open drilling in the crank throws out the oil that the rods need.",
    parent=CRANK_PLUG_MISSING,
    effects={
        conditions.OPEN_LEAK_INSIDE: (ALWAYS, COMMON_PRACTICE),
        conditions.JOURNAL_DRY: (OFTEN, COMMON_PRACTICE),
        behaviour.LOW_FROM_FIRST_START: (OFTEN, JUDGEMENT),
        findings.CRANK_PLUG_FOUND_MISSING: (ALWAYS, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (SOMETIMES, JUDGEMENT),  # a plug that comes out later
    },
    matches=[example(behaviour.LOW_FROM_FIRST_START, findings.CRANK_PLUG_FOUND_MISSING)],
    non_matches=[
        example(behaviour.LOW_FROM_FIRST_START, lacks=[findings.CRANK_PLUG_FOUND_MISSING])
    ],
)

CLEARANCE_SET_WIDE = Cause(
    id="clearance_set_wide",
    station=Station.ASSEMBLY,
    says="bearing clearances were set too wide at a rebuild",
    mechanism="new, sound bearings leak like worn ones: low hot from the first start",
    rate=Rate.OCCASIONAL,
    shifts=OF_A_REBUILD,
    remedy=(
        "measure every bearing; fit shells of another size, or use thicker oil if the builder "
        "intends that"
    ),
    source=COMMON_PRACTICE,
    follows="low hot idle for the life of the bearings",
    also=("built too loose", "loose clearances from new", "crank ground too small"),
)
NEW_AND_YET_WIDE = LinkGroup(
    id="new_and_yet_wide",
    station=Station.ASSEMBLY,
    says="New bearings set wide read low when hot ever since the rebuild, and look sound.",
    parent=CLEARANCE_SET_WIDE,
    effects={
        conditions.CLEARANCES_WIDE: (ALWAYS, COMMON_PRACTICE),
        behaviour.LOW_FROM_FIRST_START: (MOSTLY, COMMON_PRACTICE),
        findings.CLEARANCES_BUILT_WIDE: (OFTEN, COMMON_PRACTICE),
        measured.MAIN_CLEARANCE_TOO_WIDE: (OFTEN, COMMON_PRACTICE),
        measured.ROD_CLEARANCE_TOO_WIDE: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(behaviour.LOW_FROM_FIRST_START, findings.CLEARANCES_BUILT_WIDE)],
    non_matches=[example(behaviour.LOW_FROM_FIRST_START, lacks=[findings.CLEARANCES_BUILT_WIDE])],
)

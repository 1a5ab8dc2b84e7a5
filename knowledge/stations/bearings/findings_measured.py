"""Measured clearances and straightness, and the checks that show them."""

from knowledge import sources
from knowledge.model import (
    EXCEPTIONAL,
    HARDLY_EVER,
    VERY_RARE,
    Finding,
    Measure,
    Stage,
    Station,
)
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.bearings import findings, findings_sights, quantities
from knowledge.work import Access, Caution, Inspection

MAIN_CLEARANCE_TOO_WIDE = Finding(
    id="main_clearance_too_wide",
    station=Station.BEARINGS,
    says="a main bearing's clearance is over the limit",
    asks="Any main bearing clearance, on the diameter, over the maker's limit?",
    source=sources.BEARING_MAKER_CLEARANCE,
    denies="main clearances are within limits",
    stage=Stage.OPENED,
    normal="about 0.001 in per inch of journal, on the diameter",
    why="mains within limits are almost certainly not why pressure is low",
    background=HARDLY_EVER,
    also=("main bearing clearance excessive", "mains loose", "plastigage wide on mains"),
)
ROD_CLEARANCE_TOO_WIDE = Finding(
    id="rod_clearance_too_wide",
    station=Station.BEARINGS,
    says="a rod bearing's clearance is over the limit",
    asks="Any rod bearing clearance, on the diameter, over the maker's limit?",
    source=sources.BEARING_MAKER_CLEARANCE,
    denies="rod clearances are within limits",
    stage=Stage.OPENED,
    normal="about 0.001 in per inch of journal, on the diameter",
    why="rods within limits are almost certainly not why pressure is low",
    background=HARDLY_EVER,
    also=("rod clearance excessive", "big ends loose", "rod bearing clearance out of spec"),
)
BEARING_CLEARANCE_TOO_TIGHT = Finding(
    id="bearing_clearance_too_tight",
    station=Station.BEARINGS,
    says="a main or rod bearing has too little clearance",
    asks="Any main or rod bearing clearance below the maker's minimum?",
    source=idea_from(sources.BEARING_MAKER_CLEARANCE),
    denies="no bearing is too tight",
    stage=Stage.OPENED,
    normal="0.001 in or more, on the diameter",
    background=VERY_RARE,
    also=("bearings too tight", "not enough clearance", "tight mains"),
)
MEASURED_MAIN_CLEARANCE = Measure(
    quantity=quantities.MAIN_CLEARANCE,
    station=Station.BEARINGS,
    asks="Main bearing clearance, on the diameter?",
    source=sources.BEARING_MAKER_CLEARANCE,
    also=("mains plastigage", "main oil clearance"),
)
MEASURED_ROD_CLEARANCE = Measure(
    quantity=quantities.ROD_CLEARANCE,
    station=Station.BEARINGS,
    asks="Rod bearing clearance, on the diameter?",
    source=sources.BEARING_MAKER_CLEARANCE,
    also=("rods plastigage", "big end oil clearance"),
)
LAY_PLASTIC_THREAD = Inspection(
    id="lay_plastic_thread",
    station=Station.BEARINGS,
    says="clearance by gauge strip (plastic thread)",
    steps=(
        "look and photograph first, then wipe journal and shell dry: oil falsifies the reading",
        (
            "mains from below: hold the crank up against its upper shells, or its weight closes the "
            "gap"
        ),
        "strip along the journal, cap on to full torque, do not turn the crank",
        "read the width: it gives the clearance on the diameter",
    ),
    minutes=20,
    access=Access.CAP_OFF,
    reveals=(
        MAIN_CLEARANCE_TOO_WIDE,
        ROD_CLEARANCE_TOO_WIDE,
        BEARING_CLEARANCE_TOO_TIGHT,
        findings_sights.CLEARANCES_AT_LIMIT,
    ),
    source=COMMON_PRACTICE,
    measures=(MEASURED_MAIN_CLEARANCE, MEASURED_ROD_CLEARANCE),
    tools=("plastic thread", "torque wrench"),
    cautions=findings.CAP_WORK,
    destroys="the film and debris on that journal",
    keep="photograph the shell before you wipe it",
    also=("plastigage", "measure bearing clearance", "check oil clearance"),
)

JOURNAL_NOT_TRUE = Finding(
    id="journal_not_true",
    station=Station.BEARINGS,
    says="a journal is rough, tapered or out of round",
    asks="Any journal rough, tapered or out of round?",
    source=sources.BEARING_GUIDE_CEB1,
    denies="the journals are round, straight and smooth",
    stage=Stage.OPENED,
    normal="out of round under 0.0005 in, roughness under 15 µin",
    background=HARDLY_EVER,
    also=("journal out of round", "tapered journal", "rough crank grind", "oval crankpin"),
)
MEASURE_JOURNALS_AND_SEATS = Inspection(
    id="measure_journals_and_seats",
    station=Station.BEARINGS,
    says="journals and seats by micrometer and bore gauge",
    steps=(
        "allow a quarter of an hour for each bearing",
        "six readings on each journal: two ends and the middle, two ways across",
        "bore gauge in the seat with shells in and caps at torque",
        "the difference is the clearance on the diameter; feel the finish against a sample",
    ),
    minutes=90,
    access=Access.CAP_OFF,
    reveals=(
        MAIN_CLEARANCE_TOO_WIDE,
        ROD_CLEARANCE_TOO_WIDE,
        BEARING_CLEARANCE_TOO_TIGHT,
        JOURNAL_NOT_TRUE,
    ),
    source=idea_from(sources.BEARING_GUIDE_CEB1),
    measures=(MEASURED_MAIN_CLEARANCE, MEASURED_ROD_CLEARANCE),
    tools=("micrometer", "bore gauge", "finish sample"),
    cautions=findings.CAP_WORK,
    keep="write down every reading and where it was taken",
    also=("mic the crank", "measure the journals"),
)

CRANK_END_FLOAT_OVER = Finding(
    id="crank_end_float_over",
    station=Station.BEARINGS,
    says="the crank's end float is over the limit",
    asks="Crank end float over the maker's limit?",
    source=sources.BEARING_GUIDE_CEB1,
    denies="the crank's end float is within limits",
    stage=Stage.OPENED,
    normal="0.003 to 0.011 in as fitted, by journal size; worn, some makers allow 0.015 in",
    background=EXCEPTIONAL,
    also=("crank end play too much", "thrust clearance excessive", "end float out"),
)
MEASURED_CRANK_END_FLOAT = Measure(
    quantity=quantities.CRANK_END_FLOAT,
    station=Station.BEARINGS,
    asks="Crank end float?",
    source=sources.PINPOINT_TEST_2012,
    also=("crankshaft end play", "thrust clearance"),
)
MEASURE_CRANK_END_FLOAT = Inspection(
    id="measure_crank_end_float",
    station=Station.BEARINGS,
    says="crank end float by dial gauge",
    steps=("dial gauge on the crank's end or a cheek", "pry gently both ways, read the travel"),
    minutes=10,
    access=Access.SUMP_OFF,
    reveals=(CRANK_END_FLOAT_OVER,),
    source=COMMON_PRACTICE,
    measures=(MEASURED_CRANK_END_FLOAT,),
    tools=("dial gauge", "soft lever"),
    cautions=(Caution.LIFTING, Caution.BATTERY),
    also=("check end play", "thrust clearance"),
)

ROD_OR_CRANK_BENT = Finding(
    id="rod_or_crank_bent",
    station=Station.BEARINGS,
    says="a rod or the crank is bent",
    asks="A rod or the crank bent?",
    source=sources.BEARING_WEAR_ANALYSIS,
    denies="rods and crank are straight",
    stage=Stage.OPENED,
    normal="true",
    background=HARDLY_EVER,
    also=("bent conrod", "twisted rod", "crank runout"),
)
MAIN_BORES_OUT_OF_LINE = Finding(
    id="main_bores_out_of_line",
    station=Station.BEARINGS,
    says="the main bearing bores are out of line",
    asks="Main bearing bores out of line?",
    source=sources.BEARING_GUIDE_CEB1,
    denies="the main bores are in line",
    stage=Stage.OPENED,
    normal="within 0.002 in overall and 0.001 in from one to the next",
    background=EXCEPTIONAL,
    also=("line bore out", "main saddles misaligned", "block warped"),
)
LAY_A_BAR_IN_THE_MAINS = Inspection(
    id="lay_a_bar_in_the_mains",
    station=Station.BEARINGS,
    says="main bores with a straight bar; rods and crank for straightness",
    steps=(
        "caps on at torque, shells out: bar or straightedge along the bores, feelers under it",
        "crank between centres under a dial gauge; rods on a fixture",
    ),
    minutes=30,
    access=Access.CRANK_OUT,
    reveals=(MAIN_BORES_OUT_OF_LINE, ROD_OR_CRANK_BENT),
    source=idea_from(sources.BEARING_GUIDE_CEB1),
    tools=("straight bar", "feelers", "dial gauge", "rod fixture"),
    cautions=(Caution.HEAVY, Caution.SHARP),
    also=("check line bore", "main alignment", "check rods for bend"),
)

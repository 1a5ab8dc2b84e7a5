"""What is measured at the crank's bearings. Clearances are on the diameter, both sides together."""

from knowledge.sources import AA97, CEB1, CEB2, EB21, HB16, HB20, KNG, NE2, RUS
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import OCCASIONAL, RARE, VERY_RARE, Finding, Measure, Stage, Station

MAIN_CLEARANCE_TOO_WIDE = Finding(
    "main_clearance_too_wide",
    Station.BEARINGS,
    "a main bearing's clearance is over the limit",
    "Is any main bearing's clearance, on the diameter, over the maker's limit?",
    EB21,
    denies="main clearances are within limits",
    stage=Stage.OPENED,
    normal="about 0.001 in per inch of journal, on the diameter",
    why="mains within limits all but clear them of a low pressure",
    background=RARE,
    also=("main bearing clearance excessive", "mains loose", "plastigage wide on mains"),
)
ROD_CLEARANCE_TOO_WIDE = Finding(
    "rod_clearance_too_wide",
    Station.BEARINGS,
    "a rod bearing's clearance is over the limit",
    "Is any rod bearing's clearance, on the diameter, over the maker's limit?",
    EB21,
    denies="rod clearances are within limits",
    stage=Stage.OPENED,
    normal="about 0.001 in per inch of journal, on the diameter",
    why="rods within limits all but clear them of a low pressure",
    background=RARE,
    also=("rod clearance excessive", "big ends loose", "rod bearing clearance out of spec"),
)
BEARING_CLEARANCE_TOO_TIGHT = Finding(
    "bearing_clearance_too_tight",
    Station.BEARINGS,
    "a main or rod bearing has too little clearance",
    "Has any main or rod bearing less clearance than the maker's least?",
    KNG,
    denies="no bearing is too tight",
    stage=Stage.OPENED,
    normal="0.001 in or more, on the diameter",
    background=VERY_RARE,
    also=("bearings too tight", "not enough clearance", "tight mains"),
)
CRANK_END_FLOAT_OVER = Finding(
    "crank_end_float_over",
    Station.BEARINGS,
    "the crank's end float is over the limit",
    "Is the crank's end float over the maker's limit?",
    CEB1,
    denies="the crank's end float is within limits",
    stage=Stage.OPENED,
    normal="0.003 to 0.011 in, by size of journal",
    background=VERY_RARE,
    also=("crank end play too much", "thrust clearance excessive", "end float out"),
)
JOURNAL_NOT_TRUE = Finding(
    "journal_not_true",
    Station.BEARINGS,
    "a journal is rough, tapered or out of round",
    "Is any journal rough, tapered or out of round?",
    CEB1,
    denies="the journals are round, straight and smooth",
    stage=Stage.OPENED,
    normal="out of round under 0.0005 in, roughness under 15 µin",
    background=RARE,
    also=("journal out of round", "tapered journal", "rough crank grind", "oval crankpin"),
)
MAIN_BORES_OUT_OF_LINE = Finding(
    "main_bores_out_of_line",
    Station.BEARINGS,
    "the main bearing bores are out of line",
    "Are the main bearing bores out of line?",
    CEB1,
    denies="the main bores are in line",
    stage=Stage.OPENED,
    normal="within 0.002 in overall and 0.001 in from one to the next",
    background=VERY_RARE,
    also=("line bore out", "main saddles misaligned", "block warped"),
)

MEASURED_MAIN_CLEARANCE = Measure(
    "main_clearance",
    Station.BEARINGS,
    "main bearing clearance, on the diameter",
    "How wide is the main bearing clearance, on the diameter?",
    "length",
    (0.0, 2e-3),
    KNG,
    spread=8e-6,
    also=("mains plastigage", "main oil clearance"),
)
MEASURED_ROD_CLEARANCE = Measure(
    "rod_clearance",
    Station.BEARINGS,
    "rod bearing clearance, on the diameter",
    "How wide is the rod bearing clearance, on the diameter?",
    "length",
    (0.0, 2e-3),
    KNG,
    spread=8e-6,
    also=("rods plastigage", "big end oil clearance"),
)
MEASURED_CRANK_END_FLOAT = Measure(
    "crank_end_float",
    Station.BEARINGS,
    "crank end float",
    "How far does the crank move endways?",
    "length",
    (0.0, 10e-3),
    HB16,
    spread=15e-6,
    also=("crankshaft end play", "thrust clearance"),
)
SHELLS_FOUND_RUINED = Finding(
    "shells_found_ruined",
    Station.BEARINGS,
    "bearing shells were found ruined (how is not told)",
    "Were bearing shells found ruined, gone or badly damaged?",
    HB20,
    denies="the bearing shells were found good",
    stage=Stage.OPENED,
    normal="even, dull, no pick-up",
    background=VERY_RARE,
    also=(
        "bearings gone",
        "big ends shot",
        "bearing completely gone",
        "rod bearing destroyed",
    ),
)
SEVERAL_JOURNALS_DRY = Finding(
    "several_journals_dry",
    Station.BEARINGS,
    "several journals, not all, were found dry or blued",
    "Were several journals, not all, found dry or blued?",
    RUS,
    denies="no journals were dry",
    stage=Stage.OPENED,
    normal="oil wet, bright",
    background=VERY_RARE,
    also=(
        "three rod journals blue",
        "some bearings starved",
    ),
)
SHELLS_SMOOTH_LIGHT_WEAR = Finding(
    "shells_smooth_light_wear",
    Station.BEARINGS,
    "shells show only light or wavy wear, no heat",
    "Do the shells show only light or wavy wear, without heat or pick-up?",
    RUS,
    denies="shells are not just lightly worn",
    stage=Stage.OPENED,
    normal="even polish over two thirds of the arc",
    background=OCCASIONAL,
    also=(
        "light wear on mains",
        "wavy bearings",
        "slight wear",
    ),
)
ENGINE_BANGED_OR_SHOOK = Finding(
    "engine_banged_or_shook",
    Station.BEARINGS,
    "the engine banged, hammered or shook",
    "Did the engine bang, hammer or shake?",
    NE2,
    denies="no bang and no shaking",
    stage=Stage.TOLD,
    normal="smooth",
    background=RARE,
    also=(
        "loud bang",
        "vibration",
        "hammered loudly",
        "rough running",
    ),
)
RATTLE_OF_UNKNOWN_PLACE = Finding(
    "rattle_of_unknown_place",
    Station.BEARINGS,
    "it rattles, nobody knows where",
    "Does it rattle, the place not known?",
    AA97,
    denies="no strange rattle",
    stage=Stage.TOLD,
    normal="none",
    background=OCCASIONAL,
    also=(
        "slight rattle",
        "rattling noise",
        "strange noise",
    ),
)
PISTON_OR_PIN_BROKEN = Finding(
    "piston_or_pin_broken",
    Station.BEARINGS,
    "a piston, ring, gudgeon pin or its plug is broken or worn away",
    "Was a piston, ring, gudgeon pin or its plug found broken or worn away?",
    CP,
    denies="pistons, rings and pins are whole",
    stage=Stage.OPENED,
    normal="whole",
    background=VERY_RARE,
    also=(
        "piston pin plug worn",
        "broken wrist pin",
        "broken ring",
    ),
)
LOCKED_THEN_FREED = Finding(
    "locked_then_freed",
    Station.BEARINGS,
    "it locked and was free again later",
    "Did the engine lock and come free again later?",
    CP,
    denies="it never locked",
    stage=Stage.TOLD,
    normal="turns freely",
    background=VERY_RARE,
    also=(
        "seized then restarted",
        "locked when hot free when cold",
    ),
)
BEARING_FOUND_SEIZED = Finding(
    "bearing_found_seized",
    Station.BEARINGS,
    "a bearing was found seized on its journal",
    "Was a bearing found seized on its journal?",
    RUS,
    denies="no bearing was seized",
    stage=Stage.OPENED,
    normal="free",
    background=VERY_RARE,
    also=(
        "bearing welded to crank",
        "locked on the journal",
    ),
)
SIGNS_OF_STARVATION = Finding(
    "signs_of_starvation",
    Station.BEARINGS,
    "a bearing or journal shows it ran short of oil",
    "Does a bearing, journal or cam show blueing, smearing or other signs of want of oil?",
    RUS,
    denies="no sign of want of oil",
    stage=Stage.OPENED,
    normal="bright, no heat colours",
    background=VERY_RARE,
    also=(
        "oil starvation signs",
        "blued crank",
        "ran dry",
    ),
)
DAMAGED_BY_DEBRIS_ONLY = Finding(
    "damaged_by_debris_only",
    Station.BEARINGS,
    "shells are marked by debris only, with no sign of heat",
    "Are the shells marked by debris only, with no sign of heat?",
    CEB2,
    denies="the marks are not from debris alone",
    stage=Stage.OPENED,
    normal="clean",
    background=RARE,
    also=("bearings only scratched by debris",),
)

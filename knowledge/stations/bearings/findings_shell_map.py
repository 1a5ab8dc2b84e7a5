"""All shells laid out: patterns of wear and damage, and the checks that show them."""

from knowledge import sources
from knowledge.model import EXCEPTIONAL, HARDLY_EVER, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.bearings import findings
from knowledge.work import Access, Inspection

ALL_BEARINGS_WIPED = Finding(
    id="all_bearings_wiped",
    station=Station.BEARINGS,
    says="all the bearings are wiped alike",
    asks="All the bearings wiped, much alike?",
    source=idea_from(sources.RECONDITIONER_BEARINGS),
    denies="not all bearings are wiped",
    stage=Stage.OPENED,
    normal="none",
    why="when all fail together the oil failed, not a bearing",
    background=VERY_RARE,
    also=("all the shells gone", "every bearing burnt", "all mains and rods wiped"),
)
WORST_FAR_FROM_PUMP = Finding(
    id="worst_far_from_pump",
    station=Station.BEARINGS,
    says="the bearings farthest from the pump are worst",
    asks="Bearings farthest along the oil's path the worst?",
    source=COMMON_PRACTICE,
    denies="the far bearings are no worse",
    stage=Stage.OPENED,
    normal="no pattern along the engine",
    why="the end of the line runs dry first when oil is short",
    background=VERY_RARE,
    also=("last bearing worst", "far end starved", "rear bearings worst", "end of the oil line"),
)
ONE_BEARING_WIPED = Finding(
    id="one_bearing_wiped",
    station=Station.BEARINGS,
    says="one bearing is wiped and the others are sound",
    asks="Just one bearing wiped, the others sound?",
    source=idea_from(sources.RECONDITIONER_BEARINGS),
    denies="the damage is not on one bearing alone",
    stage=Stage.OPENED,
    normal="none",
    why="one alone points to a local fault: its hole, its size, its rod",
    background=VERY_RARE,
    also=("only one rod bearing bad", "one main wiped", "single bearing failed", "just number 3"),
)
LOWER_HALVES_EMBEDDED = Finding(
    id="lower_halves_embedded",
    station=Station.BEARINGS,
    says="the loaded halves of the shells are full of dirt",
    asks="Loaded halves (lower mains, upper rods) full of embedded dirt?",
    source=idea_from(sources.BEARING_POSTER),
    denies="the loaded halves are clean",
    stage=Stage.OPENED,
    normal="clean",
    background=VERY_RARE,
    also=("lower shells impregnated", "lower halves full of dirt", "lower mains embedded"),
)
SHELLS_PITTED_UNLOADED = Finding(
    id="shells_pitted_unloaded",
    station=Station.BEARINGS,
    says="the unloaded half is pitted",
    asks="Unloaded half of the shells pitted, with rounded edges?",
    source=sources.BEARING_WEAR_ANALYSIS,
    denies="the unloaded half is smooth",
    stage=Stage.OPENED,
    normal="smooth",
    background=VERY_RARE,
    also=("cavitation erosion", "pits in the upper shell", "eroded bearing"),
)
WEAR_AT_PARTING_LINES = Finding(
    id="wear_at_parting_lines",
    station=Station.BEARINGS,
    says="shells are worn beside the parting lines, on opposite sides",
    asks="Shells worn beside the parting lines, on opposite sides?",
    source=idea_from(sources.RECONDITIONER_BEARINGS),
    denies="no wear at the parting lines",
    stage=Stage.OPENED,
    normal="free at the parting lines",
    background=EXCEPTIONAL,
    also=("cap shift", "worn at the joint line", "shells rubbed at the split"),
)
SHELL_EDGES_WORN = Finding(
    id="shell_edges_worn",
    station=Station.BEARINGS,
    says="one edge of the shells is worn",
    asks="Shells worn along one edge or on one side only?",
    source=sources.BEARING_WEAR_ANALYSIS,
    denies="wear is even across the shells",
    stage=Stage.OPENED,
    normal="even across the width",
    background=RARE,
    also=("edge wear", "worn on one side", "tapered wear", "diagonal wear"),
)
MAINS_WORN_UNEVENLY = Finding(
    id="mains_worn_unevenly",
    station=Station.BEARINGS,
    says="the mains are worn differently along the crank",
    asks="Mains worn differently from one to the next?",
    source=idea_from(sources.BEARING_GUIDE_CEB1),
    denies="the mains are worn alike",
    stage=Stage.OPENED,
    normal="alike",
    background=RARE,
    also=("centre main worn most", "mains uneven", "middle main gone"),
)
THRUST_FACE_PLOUGHED = Finding(
    id="thrust_face_ploughed",
    station=Station.BEARINGS,
    says="the thrust faces are dark or ploughed, or a thrust washer is out",
    asks="Thrust faces dark or ploughed up, or a thrust washer out of its place?",
    source=COMMON_PRACTICE,
    denies="the thrust faces are sound",
    stage=Stage.OPENED,
    normal="smooth, oil grooves whole",
    background=EXCEPTIONAL,
    also=("thrust washer worn away", "thrust flange burnt", "thrust bearing gone"),
)
MAIN_BEARING_SHIFTED = Finding(
    id="main_bearing_shifted",
    station=Station.BEARINGS,
    says="a main bearing has shifted in its seat",
    asks="A main bearing shifted or crept in its seat?",
    source=COMMON_PRACTICE,
    denies="no main bearing has shifted",
    stage=Stage.OPENED,
    normal="fixed, hole over hole",
    background=VERY_RARE,
    also=("main bearing moved", "main bearing turned", "shifted main", "dowel sheared"),
)
MAP_ALL_SHELLS = Inspection(
    id="map_all_shells",
    station=Station.BEARINGS,
    says="lay out all shells in order and read the pattern",
    steps=(
        "take off the other caps one by one, keep every shell to its place and half",
        "lay them out in engine order, mark the direction of the oil flow",
        "all alike, worst far from the pump, or one alone? edges, parting lines, loaded halves?",
    ),
    minutes=45,
    access=Access.CAP_OFF,
    reveals=(
        ALL_BEARINGS_WIPED,
        WORST_FAR_FROM_PUMP,
        ONE_BEARING_WIPED,
        LOWER_HALVES_EMBEDDED,
        SHELLS_PITTED_UNLOADED,
        WEAR_AT_PARTING_LINES,
        SHELL_EDGES_WORN,
        MAINS_WORN_UNEVENLY,
        THRUST_FACE_PLOUGHED,
        MAIN_BEARING_SHIFTED,
    ),
    source=COMMON_PRACTICE,
    tools=("torque wrench", "labelled tray", "camera"),
    cautions=findings.CAP_WORK,
    destroys="the torque as found on every cap",
    keep="map every shell to its place; never toss them in one tray",
    also=("lay out the bearings", "compare all bearings", "which bearings are worst"),
)

SHELL_HOLE_MISMATCH = Finding(
    id="shell_hole_mismatch",
    station=Station.BEARINGS,
    says="a shell's oil hole does not meet the oilway",
    asks="A shell or bush whose oil hole does not meet its oilway?",
    source=sources.CAM_BEARING_HOLES_BLOG,
    denies="every oil hole meets its oilway",
    stage=Stage.OPENED,
    normal="a rod passes through",
    background=HARDLY_EVER,
    also=("oil hole covered", "shell blocks the oil hole", "bearing hole misaligned"),
)
WRONG_SHELLS_FITTED = Finding(
    id="wrong_shells_fitted",
    station=Station.BEARINGS,
    says="the shells are not the size the crank was ground to",
    asks="Shell marks that disagree with the crank's size, or with each other?",
    source=sources.BEARING_BROCHURE_PREFACE,
    denies="the shells are the right size",
    stage=Stage.OPENED,
    normal="the same undersize mark on all, to suit the crank",
    background=EXCEPTIONAL,
    also=(
        "standard bearings on ground crank",
        "undersize mark wrong",
        "mixed bearing sizes",
        "wrong part number bearings",
    ),
)
COMPARE_SHELLS_AND_HOLES = Inspection(
    id="compare_shells_and_holes",
    station=Station.BEARINGS,
    says="shell marks and oil holes against crank and block",
    steps=(
        "read size and part marks on every shell back",
        "compare with the measured journal",
        "pass a rod through each hole: it must meet its oilway",
    ),
    minutes=10,
    access=Access.CAP_OFF,
    reveals=(WRONG_SHELLS_FITTED, SHELL_HOLE_MISMATCH),
    source=COMMON_PRACTICE,
    tools=("magnifier", "soft rod", "parts list"),
    cautions=findings.CAP_WORK,
    keep="photograph the marks",
    also=("check undersize marks", "are they the right bearings"),
)

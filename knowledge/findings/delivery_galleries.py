"""What can be seen at the galleries, their plugs and their seals."""

from knowledge.sources import AHS, CLV, HB04, MON, NE1, PBB, PSP
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import COMMON, VERY_RARE, Finding, Stage, Station

OIL_STREAMS_FROM_OPEN_HOLE = Finding(
    "oil_streams_from_open_hole",
    Station.DELIVERY,
    "while priming, oil streams from an empty hole in the block",
    "Priming with covers off: does oil stream from an empty hole at the front, valley or rear?",
    MON,
    denies="while priming, no hole in the block pours oil",
    stage=Stage.OPENED,
    normal="small bleeds only; some builders drill one of 0.030 in on purpose",
    why="it shows the leak itself, whatever the gauge says",
    background=VERY_RARE,
    also=(
        "oil pouring from behind timing gear",
        "oil gushing in the valley",
        "oil stream from back of block",
        "open oil galley",
    ),
)
GALLERY_PLUG_FOUND_MISSING = Finding(
    "gallery_plug_found_missing",
    Station.DELIVERY,
    "a gallery plug inside the engine was found missing, out or loose",
    "Was a gallery plug inside the engine found missing, fallen out or loose?",
    CLV,
    denies="no gallery plug is missing",
    stage=Stage.OPENED,
    normal="every plug of the maker's drawing in place",
    background=VERY_RARE,
    also=(
        "galley plug missing",
        "forgot the oil plug",
        "cup plug fell out",
        "plug backed out",
        "pipe plug left out",
    ),
)
GALLERY_PLUG_LIES_IN_SUMP = Finding(
    "gallery_plug_lies_in_sump",
    Station.DELIVERY,
    "a gallery plug or cup lies in the sump or timing case",
    "Was a small plug or cup found lying in the sump or timing case?",
    CP,
    denies="no plug lies in the sump",
    stage=Stage.OPENED,
    normal="nothing there",
    background=VERY_RARE,
    also=("plug in the oil pan", "found a freeze plug in the pan", "brass cup in sump"),
)
GALLERY_PLUG_FOUND_TOO_DEEP = Finding(
    "gallery_plug_found_too_deep",
    Station.DELIVERY,
    "a gallery plug sits so deep that it masks a feed",
    "Does a gallery plug sit so deep, or turned so, that it covers a cross-drilling?",
    PBB,
    denies="no plug masks a feed",
    stage=Stage.OPENED,
    normal="flush or at the depth the drawing gives",
    background=VERY_RARE,
    also=("plug driven in too far", "plug covers oil hole", "plug blocking main feed"),
)
GALLERY_PLUG_IN_WRONG_PASSAGE = Finding(
    "gallery_plug_in_wrong_passage",
    Station.DELIVERY,
    "a plug was found in a passage that should be open",
    "Was a plug found in a passage that should be open?",
    CP,
    denies="no plug sits in a wrong passage",
    stage=Stage.OPENED,
    normal="plugs only where the drawing shows them",
    background=VERY_RARE,
    also=("plug in the wrong hole", "plugged the oil feed", "blocked off passage by mistake"),
)
ALL_PLUGS_ACCOUNTED_FOR = Finding(
    "all_plugs_accounted_for",
    Station.DELIVERY,
    "all gallery plugs were counted and are sealed at the right depth",
    "Were all plugs counted against the drawing, front, valley and rear, and all found good?",
    PSP,
    denies="the plugs are not all accounted for",
    stage=Stage.OPENED,
    normal="all present; one often hides behind the distributor or in the valley",
    background=COMMON,
    also=("checked all the plugs", "plugs all in", "galley plugs are good"),
)
ONE_BEARING_GETS_NO_OIL = Finding(
    "one_bearing_gets_no_oil",
    Station.DELIVERY,
    "while priming, one main or rod gets no oil and the others do",
    "Priming, crank turned by quarter turns: does one main or rod stay dry while others flow?",
    HB04,
    denies="while priming, every main and rod gets oil",
    stage=Stage.OPENED,
    normal="oil shows at every one at some crank angle",
    background=VERY_RARE,
    also=("no oil at one main", "one rod dry", "no oil to number one bearing"),
)
GALLERY_FOUND_BLOCKED = Finding(
    "gallery_found_blocked",
    Station.DELIVERY,
    "a gallery or oil hole was found blocked by debris, sealer or sludge",
    "Was a gallery or oil hole found blocked by debris, sealer, rag or sludge?",
    HB04,
    denies="the galleries are clear",
    stage=Stage.OPENED,
    normal="brush and light pass right through",
    background=VERY_RARE,
    also=(
        "silicone in oil passage",
        "plugged oil gallery",
        "rag in the oil hole",
        "sludge in galley",
        "blocked oil hole",
    ),
)
OIL_WASH_AT_GALLERY_SEAL = Finding(
    "oil_wash_at_gallery_seal",
    Station.DELIVERY,
    "oil runs out inside at a gallery O-ring, cover gasket or feed tube",
    "Priming, cover off: does oil run or spray at a gallery O-ring, gasket or feed tube?",
    AHS,
    denies="gallery seals and tubes are dry while priming",
    stage=Stage.OPENED,
    normal="dry",
    background=VERY_RARE,
    also=("oil spraying behind front cover", "feed tube leaking", "leak between cover and block"),
)
GALLERY_SEAL_FOUND_BAD = Finding(
    "gallery_seal_found_bad",
    Station.DELIVERY,
    "a gallery O-ring, feed tube seal or gasket is cut, hard, or left out",
    "Is a gallery O-ring, tube seal or cover gasket cut, hard, blown through, or left out?",
    HB04,
    denies="gallery seals are whole and seated",
    stage=Stage.OPENED,
    normal="whole, soft, in its groove",
    background=VERY_RARE,
    also=("o-ring missing in front cover", "o-ring pinched", "gasket blown between ports"),
)
GALLERY_WALL_WEEPS = Finding(
    "gallery_wall_weeps",
    Station.DELIVERY,
    "air or dye comes through a gallery wall",
    "Under low air and soap, or dye: does a line or spot in a gallery wall weep?",
    NE1,
    denies="the gallery walls are tight",
    stage=Stage.OPENED,
    normal="tight",
    background=VERY_RARE,
    also=("crack in oil passage", "porous block", "bubbles from the casting"),
)

"""What can be seen and measured at the oil filter and the oil cooler.

The galleries and their plugs are in ``delivery_galleries.py``.
"""

from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import CUT, FLV, HB01, HB11, HB22, LCW, NE2, PRM, TML
from knowledge.vocabulary import OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station

# ------------------------------------------------------------------ the filter from outside

FILTER_BURST = Finding(
    "filter_burst",
    Station.DELIVERY,
    "the oil filter burst, split, or blew its gasket or itself off",
    "Did the oil filter burst, split, or blow its gasket out or itself off?",
    CP,
    denies="the filter held",
    normal="a filter stands several times the relief setting",
    why="a sound filter bursts only when nothing relieves the pump",
    background=VERY_RARE,
    also=(
        "filter blew off",
        "blew the oil filter gasket",
        "oil filter exploded",
        "filter split open",
        "blown filter seal",
    ),
)
FILTER_BULGED = Finding(
    "filter_bulged",
    Station.DELIVERY,
    "the filter can is bulged, or its gasket is pushed out of place",
    "Is the filter can swollen at its end or base, or the gasket pushed outwards?",
    CP,
    denies="the filter can has kept its shape",
    stage=Stage.OUTSIDE,
    normal="flat end, gasket in its groove",
    why="it keeps the record of a pressure the gauge may not have shown",
    background=VERY_RARE,
    also=("swollen oil filter", "ballooned filter", "bloated filter", "filter deformed"),
)
FILTER_SEAT_LEAKS = Finding(
    "filter_seat_leaks",
    Station.DELIVERY,
    "oil squirts or runs out at the filter's seat or adapter",
    "Does oil squirt or run out where the filter or its adapter seats?",
    PRM,
    denies="the filter seat is dry",
    stage=Stage.OUTSIDE,
    normal="dry all round",
    background=RARE,
    also=(
        "oil pouring from filter",
        "oil filter leaking",
        "leak at filter housing",
        "filter gasket hanging out",
        "oil all over after filter change",
    ),
)
FILTER_NOT_LISTED = Finding(
    "filter_not_listed",
    Station.DELIVERY,
    "the filter fitted is not one listed for this engine",
    "Is the filter fitted a different one from that listed for this engine?",
    PRM,
    denies="the filter is the one listed",
    normal="the listed part",
    background=OCCASIONAL,
    also=(
        "wrong filter number",
        "different brand filter",
        "looked the same",
        "cross reference filter",
        "cheap filter",
        "wrong filter fitted",
        "filter part number wrong",
    ),
)
REMOTE_HOSES_CROSSED = Finding(
    "remote_hoses_crossed",
    Station.DELIVERY,
    "the hoses of the remote filter are crossed or kinked",
    "Are the hoses of the remote filter crossed (in to out) or kinked?",
    CP,
    denies="the remote filter hoses run right",
    stage=Stage.OUTSIDE,
    normal="pump to the filter's outer ring, centre to the gallery",
    background=VERY_RARE,
    also=("filter lines swapped", "in and out reversed", "filter plumbed backwards"),
)
FILTER_STAYS_COLD = Finding(
    "filter_stays_cold",
    Station.DELIVERY,
    "the filter stays cold while the engine gets hot",
    "Does the filter stay cold while the engine gets hot?",
    CP,
    denies="the filter warms with the engine",
    stage=Stage.OUTSIDE,
    normal="warm within minutes",
    why="a cold filter has no flow through it",
    background=RARE,
    also=("oil filter not getting hot", "cold filter", "no flow through filter"),
)
FILTER_DROP_HIGH = Finding(
    "filter_drop_high",
    Station.DELIVERY,
    "pressure before the filter stands above that behind it by more than the bypass setting",
    "Two gauges, warm oil: does the filter take more than its bypass setting (1 to 2 bar)?",
    TML,
    denies="the filter takes little pressure",
    stage=Stage.OUTSIDE,
    normal="a few psi warm; bypass opens at 1 to 2 bar on spin-on filters",
    why="it tells a loaded filter from every other cause in two readings",
    background=VERY_RARE,
    also=("pressure drop across filter", "before and after filter differ", "filter eats pressure"),
)
NEW_FILTER_CURED_IT = Finding(
    "new_filter_cured_it",
    Station.DELIVERY,
    "a new filter alone brought the pressure back",
    "Did a new filter, and nothing else, bring the pressure back?",
    HB11,
    denies="a new filter made no difference",
    normal="a filter change moves the gauge hardly at all",
    background=VERY_RARE,
    also=("changed filter and it's fine", "fixed by new filter", "filter change cured it"),
)

# --------------------------------------------------------------------- with the filter off

FILTER_MISFITTED = Finding(
    "filter_misfitted",
    Station.DELIVERY,
    "two gaskets, a wrong thread or stem, or a missing ring at the filter",
    "Filter off: were there two gaskets, a wrong thread or stem, or a missing O-ring?",
    PRM,
    denies="one gasket, right thread, right stem",
    stage=Stage.OPENED,
    normal="one gasket on a clean face; thread and stem as listed",
    why="two gaskets hold until the first cold start, then one is pushed out",
    background=VERY_RARE,
    also=(
        "double gasket",
        "old gasket stuck on the block",
        "metric thread on inch stud",
        "o-ring left out of filter housing",
        "filter adapter missing",
        "cartridge filter not seated",
    ),
)
FILTER_EMPTY_AFTER_STANDING = Finding(
    "filter_empty_after_standing",
    Station.DELIVERY,
    "the filter is empty after standing",
    "Taken off after standing overnight, is the filter empty?",
    FLV,
    denies="the filter was still full after standing",
    stage=Stage.OPENED,
    normal="full, or nearly so",
    background=OCCASIONAL,
    also=("filter drained back", "dry filter", "no oil in the filter"),
)
ANTI_DRAINBACK_HARD = Finding(
    "anti_drainback_hard",
    Station.DELIVERY,
    "the filter's anti-drain-back flap is hard, torn or missing",
    "Is the rubber flap inside the filter's holes hard, torn or missing?",
    FLV,
    denies="the anti-drain-back flap is soft and whole",
    stage=Stage.OPENED,
    normal="soft rubber that seals the inlet holes",
    background=RARE,
    also=("anti drain valve bad", "filter flap hard", "no drain back valve"),
)
FILTER_BYPASS_STUCK_OPEN = Finding(
    "filter_bypass_stuck_open",
    Station.DELIVERY,
    "the filter or cooler bypass valve stands open",
    "Is the bypass valve stuck open, its seat dirty, or its spring broken?",
    HB01,
    denies="the bypass valve sits on its seat",
    stage=Stage.OPENED,
    normal="shut on its seat, moves under a finger",
    background=VERY_RARE,
    also=("bypass jammed open", "broken bypass spring", "filter bypass not sealing"),
)
FILTER_BYPASS_STUCK_SHUT = Finding(
    "filter_bypass_stuck_shut",
    Station.DELIVERY,
    "the filter bypass valve is stuck shut",
    "Does the bypass valve refuse to open when pushed?",
    HB01,
    denies="the bypass valve opens when pushed",
    stage=Stage.OPENED,
    normal="lifts when pushed, springs back",
    background=VERY_RARE,
    also=("bypass seized", "filter bypass blocked off", "bypass plugged"),
)

# ----------------------------------------------------------------------- the filter cut open

FILTER_COLLAPSED = Finding(
    "filter_collapsed",
    Station.DELIVERY,
    "the filter element is crushed, torn or its core collapsed",
    "Cut open, is the element crushed or torn, or its centre tube collapsed?",
    CUT,
    denies="the element is in shape",
    stage=Stage.OPENED,
    normal="even pleats, round core",
    why="a crushed element stops the oil or sends pieces down the gallery",
    background=VERY_RARE,
    also=("element caved in", "filter imploded", "crushed filter", "torn filter paper"),
)
FILTER_PACKED = Finding(
    "filter_packed",
    Station.DELIVERY,
    "the filter element is packed with sludge, metal or dirt",
    "Cut open, is the element packed with sludge, metal or dirt?",
    HB11,
    denies="the element is no more than stained",
    stage=Stage.OPENED,
    normal="stained, little on the pleats",
    background=RARE,
    also=("filter loaded up", "filter full of sludge", "clogged element", "pleats plugged"),
)
FILTER_BYPASS_WITNESS = Finding(
    "filter_bypass_witness",
    Station.DELIVERY,
    "dirt lies on the filter's clean side: the bypass has been open",
    "Is there dirt on the clean side, or a mark that the bypass was open?",
    CP,
    denies="the filter's clean side is clean",
    stage=Stage.OPENED,
    normal="clean inside",
    background=RARE,
    also=("dirty inside of element", "bypass has been open", "dirt in center tube"),
)
MILKY_FILM_IN_FILTER = Finding(
    "milky_film_in_filter",
    Station.DELIVERY,
    "a grey milky film or white paste coats the filter element",
    "Cut open, is there a grey milky film or white paste on the element?",
    LCW,
    denies="no milky film in the filter",
    stage=Stage.OPENED,
    normal="none",
    background=RARE,
    also=("white goo in filter", "mayonnaise in oil filter", "emulsion in filter", "milky filter"),
)
GASKET_SHREDS_FOUND = Finding(
    "gasket_shreds_found",
    Station.DELIVERY,
    "shreds of gasket or fibre lie in filter or sump",
    "Were there shreds of gasket or fibre in the filter or sump?",
    CP,
    denies="no gasket shreds",
    stage=Stage.OPENED,
    normal="none",
    background=RARE,
    also=("bits of gasket in pan", "fiber in the filter", "paper gasket pieces", "gasket material"),
)

# --------------------------------------------------------------------------- the oil cooler

COOLER_STAYS_COLD = Finding(
    "cooler_stays_cold",
    Station.DELIVERY,
    "the oil cooler or its return line stays cold with hot oil",
    "With the oil hot, does the cooler or its return line stay cold?",
    HB22,
    denies="the cooler warms right through",
    stage=Stage.OUTSIDE,
    normal="warm throughout once its thermostat opens",
    background=OCCASIONAL,
    also=("oil cooler cold", "no flow through cooler", "cold cooler line"),
)
COOLER_BYPASSED_CURES = Finding(
    "cooler_bypassed_cures",
    Station.DELIVERY,
    "with the cooler bypassed the pressure came right",
    "With cooler and lines bypassed by a short loop, did the pressure come right?",
    CP,
    denies="bypassing the cooler changed nothing",
    stage=Stage.OPENED,
    normal="no change beyond a few psi",
    background=VERY_RARE,
    also=("looped the cooler lines", "pressure back without the cooler", "removed oil cooler"),
)
COOLER_FOUND_BLOCKED = Finding(
    "cooler_found_blocked",
    Station.DELIVERY,
    "the oil cooler, its line or hose was found blocked, kinked or flattened",
    "Was the cooler, its line or hose found blocked, kinked or collapsed inside?",
    HB01,
    denies="cooler and lines are clear",
    stage=Stage.OPENED,
    normal="oil or air passes freely",
    background=VERY_RARE,
    also=("cooler plugged up", "hose liner collapsed", "kinked oil line", "cooler full of metal"),
)
ADAPTER_GASKET_DISPLACED = Finding(
    "adapter_gasket_displaced",
    Station.DELIVERY,
    "the gasket of the filter's adapter or base plate is out of place or broken",
    "Is the gasket between filter base or adapter and block out of place or broken?",
    CP,
    denies="the gasket of the filter's adapter is whole",
    stage=Stage.OPENED,
    normal="whole and in its seat",
    background=VERY_RARE,
    also=(
        "converter plate gasket blown",
        "filter housing gasket broken",
    ),
)
BYPASS_VALVE_MISFITTED = Finding(
    "bypass_valve_misfitted",
    Station.DELIVERY,
    "the filter's bypass valve was fitted wrongly",
    "Was the filter's bypass valve fitted wrongly, or the wrong one fitted?",
    CP,
    denies="the bypass valve is fitted right",
    stage=Stage.OPENED,
    normal="as the maker's drawing",
    background=VERY_RARE,
    also=(
        "bypass valve wrong way round",
        "wrong bypass valve",
    ),
)
OIL_FED_DEVICE_FAILED_FIRST = Finding(
    "oil_fed_device_failed_first",
    Station.DELIVERY,
    "something worked by engine oil (governor, phaser, tensioner, clutch) went wrong at the same time",
    "Did anything worked by engine oil (governor, cam phaser, tensioner, clutch) go wrong at the same time?",
    NE2,
    denies="what is worked by engine oil still works",
    stage=Stage.TOLD,
    normal="works",
    background=VERY_RARE,
    also=(
        "prop control lost",
        "cam phaser fault",
        "VVT code",
    ),
)

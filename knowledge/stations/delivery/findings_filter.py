"""Filter and bypass from outside, and the checks that show them."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.model import (
    EXCEPTIONAL,
    HARDLY_EVER,
    OCCASIONAL,
    RARE,
    VERY_RARE,
    Finding,
    Stage,
    Station,
)
from knowledge.pressure import direct_gauge
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Access, Caution, Inspection

ADAPTER_GASKET_DISPLACED = Finding(
    id="adapter_gasket_displaced",
    station=Station.DELIVERY,
    says="the gasket of the filter's adapter or base plate is out of place or broken",
    asks="Gasket between filter base or adapter and block: out of place or broken?",
    source=COMMON_PRACTICE,
    denies="the gasket of the filter's adapter is whole",
    stage=Stage.OPENED,
    normal="whole and in its seat",
    background=HARDLY_EVER,
    also=(
        "converter plate gasket blown",
        "filter housing gasket broken",
    ),
)
OIL_FED_DEVICE_FAILED_FIRST = Finding(
    id="oil_fed_device_failed_first",
    station=Station.DELIVERY,
    says=(
        "something that engine oil works (governor, phaser, tensioner, clutch) failed at the "
        "same time"
    ),
    asks=(
        "Did anything that engine oil works (governor, cam phaser, tensioner, clutch) fail at "
        "the same time?"
    ),
    source=COMMON_PRACTICE,
    denies="everything that engine oil works still functions",
    stage=Stage.KNOWN,
    normal="works",
    background=VERY_RARE,
    also=(
        "prop control lost",
        "cam phaser fault",
        "VVT code",
    ),
)
FILTER_BURST = Finding(
    id="filter_burst",
    station=Station.DELIVERY,
    says="the oil filter burst, split, or blew its gasket or itself off",
    asks="Did the oil filter burst, split, blow its gasket out or blow off?",
    source=COMMON_PRACTICE,
    denies="the filter held",
    normal="a filter withstands several times the relief setting",
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
    id="filter_bulged",
    station=Station.DELIVERY,
    says="the filter can is bulged, or its gasket is pushed out of place",
    asks="Filter can swollen at its end or base, or gasket pushed outward?",
    source=COMMON_PRACTICE,
    denies="the filter can has kept its shape",
    stage=Stage.OUTSIDE,
    normal="flat end, gasket in its groove",
    why="it is proof of a pressure the gauge may not have shown",
    background=VERY_RARE,
    also=("swollen oil filter", "ballooned filter", "bloated filter", "filter deformed"),
)
FILTER_SEAT_LEAKS = Finding(
    id="filter_seat_leaks",
    station=Station.DELIVERY,
    says="oil squirts or runs out at the filter's seat or adapter",
    asks="Oil squirting or running out where the filter or its adapter seats?",
    source=idea_from(sources.FILTER_MAKER_PRIME),
    denies="the filter seat is dry",
    stage=Stage.OUTSIDE,
    normal="dry all round",
    background=VERY_RARE,
    also=(
        "oil pouring from filter",
        "oil filter leaking",
        "leak at filter housing",
        "filter gasket hanging out",
        "oil all over after filter change",
    ),
)
FILTER_NOT_LISTED = Finding(
    id="filter_not_listed",
    station=Station.DELIVERY,
    says="the filter fitted is not one listed for this engine",
    asks="Filter fitted not the one listed for this engine?",
    source=idea_from(sources.FILTER_MAKER_PRIME),
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
    id="remote_hoses_crossed",
    station=Station.DELIVERY,
    says="the hoses of the remote filter are crossed or kinked",
    asks="Remote filter hoses crossed (in to out) or kinked?",
    source=COMMON_PRACTICE,
    denies="the remote filter hoses run the right way",
    stage=Stage.OUTSIDE,
    normal="pump to the filter's outer ring, centre to the gallery",
    background=VERY_RARE,
    also=("filter lines swapped", "in and out reversed", "filter plumbed backwards"),
)
LOOK_AT_THE_FILTER = Inspection(
    id="look_at_the_filter",
    station=Station.DELIVERY,
    says="look at the filter in place",
    steps=(
        "engine stopped: look at can, seat and gasket with a light",
        "read the number and compare it with the list for this engine",
        "remote filter: follow each hose from inlet to outlet",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(
        FILTER_BULGED,
        FILTER_BURST,
        FILTER_SEAT_LEAKS,
        FILTER_NOT_LISTED,
        REMOTE_HOSES_CROSSED,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "parts list"),
    cautions=(Caution.HOT, Caution.USED_OIL),
    also=("check oil filter", "is it the right filter"),
)

FILTER_STAYS_COLD = Finding(
    id="filter_stays_cold",
    station=Station.DELIVERY,
    says="the filter stays cold while the engine gets hot",
    asks="Does the filter stay cold while the engine gets hot?",
    source=COMMON_PRACTICE,
    denies="the filter warms with the engine",
    stage=Stage.OUTSIDE,
    normal="warm within minutes",
    why="a cold filter has no flow through it",
    background=RARE,
    also=("oil filter not getting hot", "cold filter", "no flow through filter"),
)
COOLER_STAYS_COLD = Finding(
    id="cooler_stays_cold",
    station=Station.DELIVERY,
    says="the oil cooler or its return line stays cold with hot oil",
    asks="Oil hot: does the cooler or its return line stay cold?",
    source=sources.EHRESMAN_1998,
    denies="the cooler warms right through",
    stage=Stage.OUTSIDE,
    normal="warm throughout once its thermostat opens",
    background=OCCASIONAL,
    also=("oil cooler cold", "no flow through cooler", "cold cooler line"),
)
FEEL_FILTER_AND_COOLER = Inspection(
    id="feel_filter_and_cooler",
    station=Station.DELIVERY,
    says="feel whether filter and cooler warm up",
    steps=(
        "start cold, and only run it while there is pressure",
        (
            "feel, or measure with an infrared thermometer, filter and both cooler lines as the "
            "engine warms"
        ),
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(FILTER_STAYS_COLD, COOLER_STAYS_COLD),
    source=COMMON_PRACTICE,
    tools=("infrared thermometer",),
    cautions=RUNNING,
    needs_running=True,
    also=("is the filter getting hot", "touch the filter"),
)

FILTER_DROP_HIGH = Finding(
    id="filter_drop_high",
    station=Station.DELIVERY,
    says="pressure ahead of the filter is above that behind it by more than the bypass setting",
    asks=(
        "Two gauges, warm oil: does the filter take more than its bypass setting (1 to 2 bar, 15 "
        "to 30 psi)?"
    ),
    source=sources.ARMY_TM_291_THEORY,
    denies="the filter takes little pressure",
    stage=Stage.OUTSIDE,
    normal="a few psi warm; bypass opens at 1 to 2 bar (15 to 30 psi) on spin-on filters",
    why="two readings tell a loaded filter from every other cause",
    background=VERY_RARE,
    also=("pressure drop across filter", "before and after filter differ", "filter eats pressure"),
)
GAUGE_BOTH_SIDES_OF_THE_FILTER = Inspection(
    id="gauge_both_sides_of_the_filter",
    station=Station.DELIVERY,
    says="a gauge ahead of and a gauge behind the filter",
    steps=(
        "fit two gauges, ahead of the filter and in the gallery",
        "read both warm at idle, 2000 and 3000 rpm, then swap the gauges and repeat",
    ),
    minutes=25,
    access=Access.GAUGE_PORT,
    reveals=(
        FILTER_DROP_HIGH,
        direct_gauge.PORTS_DIFFER,
        direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY,
        direct_gauge.PUMP_PORT_LOW,
    ),
    source=COMMON_PRACTICE,
    tools=("two gauges", "adapters", "oil-proof hose"),
    cautions=RUNNING,
    needs_running=True,
    takes_readings=True,
    also=("pressure drop across the filter",),
)

FILTER_MISFITTED = Finding(
    id="filter_misfitted",
    station=Station.DELIVERY,
    says="two gaskets, a wrong thread or stem, or a missing ring at the filter",
    asks="Filter off: two gaskets, a wrong thread or stem, or a missing O-ring?",
    source=idea_from(sources.FILTER_MAKER_PRIME),
    denies="one gasket, right thread, right stem",
    stage=Stage.OPENED,
    normal="one gasket on a clean face; thread and stem as listed",
    why="two gaskets hold until the first cold start, then one is pushed out",
    background=EXCEPTIONAL,
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
    id="filter_empty_after_standing",
    station=Station.DELIVERY,
    says="the filter is empty after standing",
    asks="Taken off after a night's standing: filter empty?",
    source=sources.FILTER_MAKER_VALVES,
    denies="the filter was still full after standing",
    stage=Stage.OPENED,
    normal="full, or nearly so",
    background=OCCASIONAL,
    also=("filter drained back", "dry filter", "no oil in the filter"),
)
ANTI_DRAINBACK_HARD = Finding(
    id="anti_drainback_hard",
    station=Station.DELIVERY,
    says="the filter's anti-drain-back flap is hard, torn or missing",
    asks="Rubber flap inside the filter holes hard, torn or missing?",
    source=sources.FILTER_MAKER_VALVES,
    denies="the anti-drain-back flap is soft and whole",
    stage=Stage.OPENED,
    normal="soft rubber that seals the inlet holes",
    background=EXCEPTIONAL,
    also=("anti drain valve bad", "filter flap hard", "no drain back valve"),
)
LOOK_WHERE_THE_FILTER_SAT = Inspection(
    id="look_where_the_filter_sat",
    station=Station.DELIVERY,
    says="filter off: seat, thread, gaskets, flap and oil inside",
    steps=(
        "photograph gasket and seat before you wipe them",
        "count the gaskets; check thread, stem and every O-ring",
        "see whether the filter was full, and press the rubber flap in its holes",
    ),
    minutes=5,
    access=Access.FILTER_OFF,
    reveals=(
        FILTER_MISFITTED,
        FILTER_BULGED,
        FILTER_EMPTY_AFTER_STANDING,
        ANTI_DRAINBACK_HARD,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "camera"),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    destroys="how gasket and seat sat together",
    keep="photograph the seat; keep the old filter",
    also=("double gasket check", "anti drain valve"),
)

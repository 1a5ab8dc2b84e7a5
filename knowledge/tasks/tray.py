"""What must be right about windage tray, what turns past it, and the sump's dry fit."""

from knowledge.causes.assembly import FASTENER_LOOSE_INSIDE, PART_SHEDDING_INSIDE
from knowledge.causes.leaks import EXTERNAL_LEAK_MAJOR
from knowledge.causes.suction import (
    DRAINBACK_POOR,
    PICKUP_CLEARANCE_TIGHT,
    PICKUP_TUBE_LOOSE,
    WINDAGE_AERATION,
)
from knowledge.engines.features import WINDAGE_TRAY
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import ELP, P06, PE20, VB4
from knowledge.tasks.figures import FEELERS_STACKED, IN_LB, THOU, around, wrench
from knowledge.vocabulary import Band, Caution, Hold, Phase, Task

TRAY_CLEARS_CRANK = Task(
    "tray_clears_crank",
    Phase.TRAY,
    "least gap from the windage tray to rods, rod bolts and counterweights",
    (
        "tray on its spacers, nuts tight; clay on the tray where parts come near",
        "turn the engine by hand two full turns, both ways; every rod passes twice",
        "at the thinnest clay measure the gap with stacked feelers or a drill shank; clay off again",
        "every rod and counterweight counts, not the first one",
    ),
    CP,
    dimension="length",
    bands=(
        Band(60 * THOU, None, CP, "0.060 in for the tray: no passage read"),
        Band(
            60 * THOU,
            None,
            PE20,
            "V8 build: 0.060 in least, counterweight to block and rail; it had 0.100 in",
        ),
    ),
    spread=FEELERS_STACKED,
    remedy="spacers under the tray, or the tray eased; then check tray to pump again",
    why="a rod bolt that touches the tray tears it loose; parts of it end in the pickup",
    guards=(WINDAGE_AERATION, FASTENER_LOOSE_INSIDE, PART_SHEDDING_INSIDE),
    only_with=(WINDAGE_TRAY,),
    cautions=(Caution.HAND_TURN, Caution.SHARP),
    also=("windage tray clearance", "rods hit the tray", "tray to rod bolts"),
)
RODS_CLEAR_BLOCK_AND_SUMP = Task(
    "rods_clear_block_and_sump",
    Phase.TRAY,
    "least gap from rods and counterweights to block and sump rail",
    (
        "turn the engine by hand two full turns, both ways",
        "feelers or a drill shank at each near place; longer stroke or other rods: every cylinder",
    ),
    PE20,
    dimension="length",
    bands=(Band(60 * THOU, None, PE20, "V8 build: 0.060 in least; it had 0.100 in"),),
    spread=FEELERS_STACKED,
    remedy="relieve the block, never the rod; wash it all out again",
    guards=(PART_SHEDDING_INSIDE,),
    cautions=(Caution.HAND_TURN, Caution.EYES),
    also=("stroker clearance", "rod to block clearance", "counterweight clearance"),
)
TRAY_SPACERS_EVEN = Task(
    "tray_spacers_even",
    Phase.TRAY,
    "spacers of the windage tray: same height at every stud, tray flat, none left out",
    (
        "count them; measure each; write down the height",
        "longer stroke: 3/16 in spacers under the tray are often needed",
        "spacers move the tray to pump and pickup: check both gaps again after any change",
    ),
    CP,
    remedy="spacers of one height; then tray to crank, tray to pump and pickup gap again",
    guards=(WINDAGE_AERATION, FASTENER_LOOSE_INSIDE),
    only_with=(WINDAGE_TRAY,),
    also=("tray spacers", "3/16 spacers", "stroker tray", "longer stroke"),
)
TRAY_CLEARS_PUMP = Task(
    "tray_clears_pump",
    Phase.TRAY,
    "windage tray clear of pump, pickup tube, dipstick and main-cap bolts",
    (
        "strip of paper drawn between tray and pump, all round: it must pass everywhere",
        "tray pushed towards the pump by hand: still clear",
        "with 3/16 in spacers for a longer stroke, or any change of spacers: check it again",
        "nothing bent to make it fit may touch the pickup tube",
    ),
    CP,
    remedy="trim the tray, round the edge, wash it; never bend the pickup to suit",
    guards=(PICKUP_TUBE_LOOSE, PART_SHEDDING_INSIDE),
    only_with=(WINDAGE_TRAY,),
    cautions=(Caution.SHARP,),
    also=("tray to pump clearance", "tray hits the pump"),
)
TRAY_BOLTS_TORQUED = Task(
    "tray_bolts_torqued",
    Phase.TRAY,
    "torque of the windage tray's bolts or nuts",
    (
        "15 in-lb is inch-pounds: 15 lb-ft is twelve times as much and strips or snaps the bolt",
        "use a small inch-pound wrench: no wrench is true below a fifth of its range",
        "the maker's manual goes first; nuts on main-cap studs take far more, as it says",
    ),
    CP,
    Hold.NOTE,
    "torque",
    (
        around(15 * IN_LB, CP, "common practice for small tray bolts: 15 in-lb, inch-pounds"),
        around(25.0, P06, "6.0 V8, oil deflector nuts: 25 N·m"),
        around(9.0, VB4, "turbo four, baffle bolts: 9 N·m"),
    ),
    spread=wrench(15 * IN_LB),
    remedy="slacken, look at the thread, tighten again",
    guards=(FASTENER_LOOSE_INSIDE,),
    only_with=(WINDAGE_TRAY,),
    also=("tray bolts", "inch pounds", "windage tray torque"),
)
TRAY_BOLTS_LOCKED = Task(
    "tray_bolts_locked",
    Phase.TRAY,
    "windage tray's bolts or nuts locked",
    (
        "threads clean and dry; one drop of medium-strength (removable) thread locker",
        "or the maker's locking nuts, new ones",
    ),
    CP,
    Hold.NOTE,
    remedy="out, clean, lock, torque again",
    guards=(FASTENER_LOOSE_INSIDE,),
    only_with=(WINDAGE_TRAY,),
    also=("thread locker", "thread lock", "blue thread locker"),
)
TRAY_LETS_OIL_BACK = Task(
    "tray_lets_oil_back",
    Phase.TRAY,
    "windage tray leaves drains and the way to the pickup open",
    (
        "look through the drain holes of the block: no tray edge under one",
        "pour oil on it: it runs off to the sump and does not stand",
    ),
    CP,
    Hold.NOTE,
    remedy="cut a drain, round its edge, wash it",
    guards=(DRAINBACK_POOR,),
    only_with=(WINDAGE_TRAY,),
    also=("drain holes", "oil return"),
)
SUMP_FITS_OVER_ALL = Task(
    "sump_fits_over_all",
    Phase.TRAY,
    "sump fits over tray, pump and pickup without touching",
    (
        "dry fit, gasket in place, no sealer: the sump must lie on its rail by its own weight",
        "rock it, tap it: no knock from inside; baffles clear of tray, tube and dipstick",
        "turn the engine by hand two full turns with it bolted: no scrape",
    ),
    ELP,
    remedy="find the mark (a dab of paint shows it), make room there, dry fit again",
    guards=(PICKUP_CLEARANCE_TIGHT, PICKUP_TUBE_LOOSE, EXTERNAL_LEAK_MAJOR, PART_SHEDDING_INSIDE),
    cautions=(Caution.HAND_TURN, Caution.HEAVY),
    also=("pan fits over the tray", "pan fit", "test fit the pan"),
)

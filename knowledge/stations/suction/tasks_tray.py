"""What must be right about windage tray, what turns past it, and the sump's dry fit."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import FEELERS_STACKED, IN_LB, around, wrench
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.suction import causes, causes_sump
from knowledge.units import THOU
from knowledge.work import Band, Caution, Hold, Phase, Task

TRAY_CLEARS_CRANK = Task(
    id="tray_clears_crank",
    phase=Phase.TRAY,
    says="smallest gap from the windage tray to rods, rod bolts and counterweights",
    how=(
        "tray on its spacers, nuts tight; clay on the tray where parts come close",
        "turn the engine by hand two full turns, both ways; every rod passes twice",
        (
            "measure the gap at the thinnest clay with stacked feelers or a drill shank; remove the "
            "clay"
        ),
        "check every rod and counterweight, not only the first",
    ),
    source=COMMON_PRACTICE,
    dimension="length",
    bands=(
        Band(
            low=60 * THOU,
            high=None,
            source=COMMON_PRACTICE,
            says="0.060 in for the tray: no passage read",
        ),
        Band(
            low=60 * THOU,
            high=None,
            source=sources.BUILD_ARTICLE_2020,
            says="V8 build: at least 0.060 in; it had 0.100 in",
            of_one=True,
        ),
    ),
    spread=FEELERS_STACKED,
    remedy="fit spacers under the tray, or relieve the tray; then check tray to pump again",
    why="a rod bolt that touches the tray tears it loose; pieces of it end up in the pickup",
    guards=(
        causes_sump.WINDAGE_AERATION,
        assembly_causes.FASTENER_LOOSE_INSIDE,
        assembly_causes.PART_SHEDDING_INSIDE,
    ),
    only_with=(features.WINDAGE_TRAY,),
    cautions=(Caution.HAND_TURN, Caution.SHARP),
    also=("windage tray clearance", "rods hit the tray", "tray to rod bolts"),
)
RODS_CLEAR_BLOCK_AND_SUMP = Task(
    id="rods_clear_block_and_sump",
    phase=Phase.TRAY,
    says="smallest gap from rods and counterweights to block and sump rail",
    how=(
        "turn the engine by hand two full turns, both ways",
        "feelers or a drill shank at each close place; longer stroke or other rods: every cylinder",
    ),
    source=sources.BUILD_ARTICLE_2020,
    dimension="length",
    bands=(
        Band(
            low=60 * THOU,
            high=None,
            source=COMMON_PRACTICE,
            says="0.060 in for any engine: no passage read",
        ),
        Band(
            low=60 * THOU,
            high=None,
            source=sources.BUILD_ARTICLE_2020,
            says="V8 build: at least 0.060 in; it had 0.100 in",
            of_one=True,
        ),
    ),
    spread=FEELERS_STACKED,
    remedy="relieve the block, never the rod; wash everything again",
    guards=(assembly_causes.PART_SHEDDING_INSIDE,),
    cautions=(Caution.HAND_TURN, Caution.EYES),
    also=("stroker clearance", "rod to block clearance", "counterweight clearance"),
)
TRAY_SPACERS_EVEN = Task(
    id="tray_spacers_even",
    phase=Phase.TRAY,
    says="spacers of the windage tray: same height at every stud, tray flat, none missing",
    how=(
        "count them; measure each; write down the height",
        "longer stroke: often needs 3/16 in spacers under the tray",
        "spacers move the tray toward pump and pickup: check both gaps again after any change",
    ),
    source=COMMON_PRACTICE,
    remedy="fit spacers of one height; then check tray to crank, tray to pump and pickup gap again",
    guards=(causes_sump.WINDAGE_AERATION, assembly_causes.FASTENER_LOOSE_INSIDE),
    only_with=(features.WINDAGE_TRAY,),
    also=("tray spacers", "3/16 spacers", "stroker tray", "longer stroke"),
)
TRAY_CLEARS_PUMP = Task(
    id="tray_clears_pump",
    phase=Phase.TRAY,
    says="windage tray clear of pump, pickup tube, dipstick and main-cap bolts",
    how=(
        "strip of paper drawn between tray and pump, all round: it must pass everywhere",
        "push the tray toward the pump by hand: still clear",
        "with 3/16 in spacers for a longer stroke, or any other spacers: check it again",
        "nothing bent for clearance may touch the pickup tube",
    ),
    source=COMMON_PRACTICE,
    remedy="trim the tray, round the edge, wash it; never bend the pickup for clearance",
    guards=(causes.PICKUP_TUBE_LOOSE, assembly_causes.PART_SHEDDING_INSIDE),
    only_with=(features.WINDAGE_TRAY,),
    cautions=(Caution.SHARP,),
    also=("tray to pump clearance", "tray hits the pump"),
)
TRAY_BOLTS_TORQUED = Task(
    id="tray_bolts_torqued",
    phase=Phase.TRAY,
    says="torque of the windage tray's bolts or nuts",
    how=(
        "15 in-lb is inch-pounds: 15 lb-ft is twelve times as much and strips or snaps the bolt",
        "use a small inch-pound wrench: no wrench is accurate below a fifth of its range",
        "the maker's manual comes first; nuts on main-cap studs take far more",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    dimension="torque",
    bands=(
        around(
            15 * IN_LB,
            COMMON_PRACTICE,
            "common practice for small tray bolts: 15 in-lb, inch-pounds",
        ),
        around(
            25.0, sources.V8_PUMP_SERVICE_2006, "6.0 V8, oil deflector nuts: 25 N·m", of_one=True
        ),
        around(9.0, sources.TURBO_FOUR_SUMP_2012, "turbo four, baffle bolts: 9 N·m", of_one=True),
    ),
    spread=wrench(15 * IN_LB),
    remedy="slacken, inspect the thread, tighten again",
    guards=(assembly_causes.FASTENER_LOOSE_INSIDE,),
    only_with=(features.WINDAGE_TRAY,),
    also=("tray bolts", "inch pounds", "windage tray torque"),
)
TRAY_BOLTS_LOCKED = Task(
    id="tray_bolts_locked",
    phase=Phase.TRAY,
    says="windage tray's bolts or nuts locked",
    how=(
        "threads clean and dry; one drop of medium-strength (removable) thread locker",
        "or the maker's locking nuts, new",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="out, clean, lock, torque again",
    guards=(assembly_causes.FASTENER_LOOSE_INSIDE,),
    only_with=(features.WINDAGE_TRAY,),
    also=("thread locker", "thread lock", "blue thread locker"),
)
TRAY_LETS_OIL_BACK = Task(
    id="tray_lets_oil_back",
    phase=Phase.TRAY,
    says="windage tray leaves drains and the way to the pickup open",
    how=(
        "look through the drain holes of the block: no tray edge under one",
        "pour oil on it: it runs off to the sump and does not pool",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="cut a drain, round its edge, wash it",
    guards=(causes_sump.DRAINBACK_POOR,),
    only_with=(features.WINDAGE_TRAY,),
    also=("drain holes", "oil return"),
)
SUMP_FITS_OVER_ALL = Task(
    id="sump_fits_over_all",
    phase=Phase.TRAY,
    says="sump fits over tray, pump and pickup without touching",
    how=(
        "dry fit, gasket in place, no sealer: the sump must sit on its rail by its own weight",
        "rock it, tap it: no knock from inside; baffles clear of tray, tube and dipstick",
        "turn the engine by hand two full turns with it bolted: no scrape",
    ),
    source=idea_from(sources.OIL_PAN_TIPS),
    remedy="find the mark (a dab of paint shows it), make space there, dry fit again",
    guards=(
        causes_sump.PICKUP_CLEARANCE_TIGHT,
        causes.PICKUP_TUBE_LOOSE,
        leaks_causes.EXTERNAL_LEAK_MAJOR,
        assembly_causes.PART_SHEDDING_INSIDE,
    ),
    cautions=(Caution.HAND_TURN, Caution.HEAVY),
    also=("pan fits over the tray", "pan fit", "test fit the pan"),
)

"""What must be done and seen before the engine fires for the first time."""

from knowledge.causes.assembly import BEARING_OIL_HOLE_MISALIGNED
from knowledge.causes.delivery import (
    FILTER_DRAINBACK,
    FILTER_WRONG,
    GALLERY_BLOCKED,
    GALLERY_PLUG_MISSING,
    GALLERY_SEAL_LEAK,
)
from knowledge.causes.instrument import GAUGE_FAULTY, SENDER_FAULTY, SENDER_NOT_FITTED
from knowledge.causes.leaks import EXTERNAL_LEAK_MAJOR, FILTER_SEAL_LEAK, PLUG_EXPELLED_OUTSIDE
from knowledge.causes.oil import OIL_LEVEL_LOW, VISCOSITY_TOO_LOW
from knowledge.causes.pump import (
    PUMP_DRIVE_BIND,
    PUMP_DRIVE_BROKEN,
    PUMP_GASKET_WRONG,
    PUMP_NOT_PRIMED,
    SCAVENGE_FAILURE,
)
from knowledge.causes.relief import RELIEF_PART_MISSING
from knowledge.causes.topend import TURBO_FEED_RESTRICTED
from knowledge.engines.features import (
    DRY_SUMP,
    PUMP_ON_CRANK_NOSE,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    PUMP_ON_SKEW_GEAR,
    TURBOCHARGED,
)
from knowledge.sources import CHR, HPA, LAM, MON, POI, PRC, PRM, TUR
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.tasks.figures import STOPWATCH, TRUSTED_GAUGE
from knowledge.units import PSI
from knowledge.vocabulary import Band, Caution, Hold, Phase, Task

DRILLING = (Caution.PRIMING, Caution.BATTERY, Caution.EYES)
CRANKING = (Caution.FIRE, Caution.ROTATING)

OIL_IN = Task(
    "oil_in",
    Phase.PRIMING,
    "oil of the grade asked for in sump or tank, to the mark and the filter's volume more",
    (
        "grade and quantity from the manual; run-in oil where the cam maker asks for it",
        "read the label, measure what goes in, write both down",
    ),
    LAM,
    remedy="fill up; wrong grade comes out again",
    guards=(OIL_LEVEL_LOW, VISCOSITY_TOO_LOW, PUMP_NOT_PRIMED),
    cautions=(Caution.WASTE,),
    also=("fill with oil", "run-in oil", "break-in oil"),
)
FILTER_FILLED = Task(
    "filter_filled",
    Phase.PRIMING,
    "new filter filled with clean oil, where it stands so that it can be, and fitted",
    (
        "pour into the outer holes if it can, let it soak, top up",
        "filter on its side or head: fit it dry and let the priming fill it",
    ),
    LAM,
    remedy="prime longer: a dry filter takes its fill first",
    guards=(PUMP_NOT_PRIMED, FILTER_DRAINBACK),
    also=("pre-fill the filter", "oil filter"),
)
FILTER_RIGHT_ONE = Task(
    "filter_right_one",
    Phase.PRIMING,
    "filter the right one: number, thread, one gasket, oiled, hand-tight and as told on",
    (
        "old gasket off the seat: look and feel; new one oiled, one only",
        "remote filter: in and out lines on their ports, arrow the way of the flow",
    ),
    PRM,
    remedy="off again, look, right filter",
    guards=(FILTER_WRONG, FILTER_SEAL_LEAK),
    also=("double gasket", "filter part number", "remote filter lines"),
)
DIRECT_GAUGE_FITTED = Task(
    "direct_gauge_fitted",
    Phase.PRIMING,
    "direct gauge on the main gallery port before any priming",
    (
        "trusted gauge, hose rated for hot oil, clear of exhaust and fan",
        "sender and its lead ready to go back; no sealing tape that cuts off its earth",
        "a lamp that goes out is no proof of enough pressure",
    ),
    POI,
    remedy="fit one; borrow one",
    guards=(GAUGE_FAULTY, SENDER_FAULTY, SENDER_NOT_FITTED),
    cautions=(Caution.BATTERY,),
    also=("mechanical gauge", "test gauge", "oil pressure gauge"),
)
COVERS_OFF_TO_PRIME = Task(
    "covers_off_to_prime",
    Phase.PRIMING,
    "covers off, or a borescope in, so that oil and leaks can be seen while priming",
    (
        "rocker covers off; valley or front open if the build still allows it; trays under",
        "watch for a sheet of oil where there should be drops: a plug or seal left out",
        "no oil running behind timing cover or bell housing",
    ),
    MON,
    Hold.NOTE,
    remedy="stop, find the leak, close it, prime again",
    guards=(GALLERY_PLUG_MISSING, GALLERY_SEAL_LEAK, PLUG_EXPELLED_OUTSIDE),
    also=("covers off", "watch for internal leaks"),
)
DRILL_TURNS_RIGHT_WAY = Task(
    "drill_turns_right_way",
    Phase.PRIMING,
    "drill set to turn the way the distributor turns",
    (
        "read the rotor's way from the manual or the cap; set the drill, try it in the air",
        "tool reaches the shaft and fills the hole where a gallery crosses the distributor's body",
    ),
    CP,
    remedy="turn the drill round; backwards the pump draws air",
    guards=(PUMP_NOT_PRIMED,),
    only_with=(PUMP_ON_DISTRIBUTOR_SHAFT, PUMP_ON_SKEW_GEAR),
    not_with=(PUMP_ON_CRANK_NOSE,),
    cautions=DRILLING,
    also=("drill direction", "priming tool", "which way to spin"),
)
PRIMED_BY_DRILL = Task(
    "primed_by_drill",
    Phase.PRIMING,
    "oil driven through the engine by drill on the pump shaft, before the first start",
    (
        "distributor out, engine position marked; priming tool down to the shaft",
        "drill in both hands, slow; it labours when the pump takes oil; run until the pressure stands",
        "crank a quarter turn by hand, drill again: four times round at least",
        "a pump on the crank cannot be primed this way",
    ),
    POI,
    remedy="no pressure within 2 minutes: stop, do not go on; find what was left out",
    guards=(PUMP_NOT_PRIMED, RELIEF_PART_MISSING, PUMP_GASKET_WRONG, GALLERY_PLUG_MISSING),
    only_with=(PUMP_ON_DISTRIBUTOR_SHAFT, PUMP_ON_SKEW_GEAR),
    not_with=(PUMP_ON_CRANK_NOSE,),
    cautions=(*DRILLING, Caution.HAND_TURN),
    also=("prime with a drill", "pre-lube", "drill prime", "spin the pump"),
)
PRIMED_BY_TANK = Task(
    "primed_by_tank",
    Phase.PRIMING,
    "oil driven through the engine from a pressure tank, before the first start",
    (
        "tank of clean oil at the gallery port, regulated, no more than the engine runs at",
        "open slowly; until oil shows at the far end of the top; crank a quarter turn at a time",
        "pump on the crank: then feed its inlet, or crank in short spells, plugs out, fuel off",
        "outside pump that a drill can turn: that way is as good; say which was taken",
    ),
    POI,
    remedy="no flow: look for a blocked oilway; a flood: look for a plug left out",
    guards=(PUMP_NOT_PRIMED, GALLERY_PLUG_MISSING, GALLERY_BLOCKED),
    not_with=(PUMP_ON_DISTRIBUTOR_SHAFT, PUMP_ON_SKEW_GEAR),
    cautions=(
        Caution.PRESSURE,
        Caution.EYES,
        Caution.HAND_TURN,
        Caution.ROTATING,
        Caution.PRIMING,
        Caution.FIRE,
    ),
    also=("pressure pre-oiler", "pre-oil tank", "pressure pot", "pre-lube"),
)
PRIMING_PRESSURE_TIMED = Task(
    "priming_pressure_timed",
    Phase.PRIMING,
    "time until the gauge shows pressure while priming",
    ("stopwatch from the first turn of the drill or the first opening of the tank",),
    CP,
    dimension="time",
    bands=(Band(None, 120.0, CP, "no pressure in about 2 minutes of drilling: stop"),),
    spread=STOPWATCH,
    remedy="stop; level, drill's way, shaft engaged, relief parts, gasket, plugs, in that order",
    guards=(PUMP_NOT_PRIMED, RELIEF_PART_MISSING, GALLERY_PLUG_MISSING),
    cautions=DRILLING,
    also=("how long to prime", "no pressure when priming"),
)
PRIMING_PRESSURE_REACHED = Task(
    "priming_pressure_reached",
    Phase.PRIMING,
    "steady pressure on the direct gauge while priming",
    (
        "read it when it stands still; write drill speed, oil and its heat beside it",
        "it follows the drill's speed: a slow drill and warm oil read low",
    ),
    CP,
    dimension="pressure",
    bands=(
        Band(30 * PSI, 60 * PSI, CP, "usual by drill, cold oil"),
        Band(40 * PSI, None, PRC, "one builder, by cranking without plugs: at least 40 psi"),
    ),
    spread=TRUSTED_GAUGE,
    remedy="low: look for a sheet of oil; high: relief valve",
    guards=(PUMP_NOT_PRIMED, GALLERY_PLUG_MISSING, GALLERY_SEAL_LEAK, RELIEF_PART_MISSING),
    cautions=DRILLING,
    also=("priming pressure", "pressure with the drill"),
)
OIL_AT_EVERY_ROCKER = Task(
    "oil_at_every_rocker",
    Phase.PRIMING,
    "oil seen at every rocker, or at every cam bearing and follower, while priming",
    (
        "turn the crank by hand a quarter turn at a time: holes meet at certain places only",
        "tick off each one; mark the dry ones and go round again",
    ),
    POI,
    remedy="one dry: its pushrod, jet or hole; one bank dry: gallery or bush; do not start",
    guards=(BEARING_OIL_HOLE_MISALIGNED, GALLERY_BLOCKED, PUMP_NOT_PRIMED),
    cautions=(Caution.HAND_TURN,),
    also=("oil at the rockers", "oil to the top end", "flow at every rocker"),
)
DISTRIBUTOR_BACK_IN = Task(
    "distributor_back_in",
    Phase.PRIMING,
    "drive shaft still in the pump after priming, distributor back, home and timed",
    (
        "draw the tool out slowly: the shaft can come up with it",
        "screwdriver on the shaft: it must turn the pump with a drag; loose means it is out",
        "distributor to its marks, seated by hand, clamped; seal ring new",
    ),
    CHR,
    remedy="get the shaft back into the pump before anything else",
    guards=(PUMP_DRIVE_BROKEN, PUMP_DRIVE_BIND),
    only_with=(PUMP_ON_DISTRIBUTOR_SHAFT,),
    cautions=(Caution.BATTERY,),
    also=("shaft pulled out of the pump", "refit the distributor"),
)
TURBO_WETTED = Task(
    "turbo_wetted",
    Phase.PRIMING,
    "turbocharger filled with clean oil at its inlet, turned by hand, feed joined last",
    (
        "pour oil into the inlet, turn the wheel, pour again until it stays full",
        "join the feed; oil must come at the joint while priming before it is tight",
    ),
    TUR,
    remedy="feed blocked: clear it before the first start",
    guards=(TURBO_FEED_RESTRICTED,),
    only_with=(TURBOCHARGED,),
    also=("prime the turbo", "turbo oil"),
)
TANK_SIDE_PRIMED = Task(
    "tank_side_primed",
    Phase.PRIMING,
    "tank filled, suction line full to the pump, scavenge stages wetted",
    (
        "fill the tank; crack the union at the pump until oil runs, tighten",
        "turn the pump by hand or drill with its belt off: pressure side, then watch the return",
        "level in the tank again after the first minute of running",
    ),
    HPA,
    remedy="air in the line: bleed again",
    guards=(PUMP_NOT_PRIMED, SCAVENGE_FAILURE),
    only_with=(DRY_SUMP,),
    cautions=(
        Caution.ROTATING,
        Caution.PRIMING,
        Caution.EYES,
    ),
    also=("prime the dry sump", "bleed the tank line"),
)
CRANKED_TO_PRESSURE = Task(
    "cranked_to_pressure",
    Phase.PRIMING,
    "pressure by cranking, before fuel and spark are let on",
    (
        "plugs or injectors out, ignition and fuel off, charger on the battery",
        "crank in spells of 15 to 30 s at most; let the starter cool between",
        "diesel: stop lever pulled",
    ),
    PRC,
    Hold.NOTE,
    "pressure",
    (Band(40 * PSI, None, PRC, "one builder's practice: 40 psi before it fires"),),
    spread=TRUSTED_GAUGE,
    remedy="no pressure after a few spells: bleed at the filter, else stop and prime",
    why="two views: rebuilders crank 15 s at a time, a filter maker allows 30 s",
    guards=(PUMP_NOT_PRIMED,),
    cautions=(
        *CRANKING,
        Caution.INJECTION,
    ),
    also=("crank without plugs", "cranking pressure", "spin it on the starter"),
)
BLED_AT_FILTER = Task(
    "bled_at_filter",
    Phase.PRIMING,
    "pump that would not draw: bled at the slackened filter",
    (
        "slacken the filter a turn; crank at most 30 s until oil shows; tighten it",
        "pressure must then come within 10 s; needed only where it would not draw",
    ),
    PRM,
    Hold.NOTE,
    remedy="no oil at the filter: pump, pickup joint or drive; stop",
    guards=(PUMP_NOT_PRIMED,),
    cautions=(*CRANKING, Caution.WASTE),
    also=("crack the filter", "bleed the pump", "loosen the filter"),
)
DRY_AFTER_PRIMING = Task(
    "dry_after_priming",
    Phase.PRIMING,
    "dry outside after priming: wiped, covers on, looked at again",
    (
        "wipe every joint, plug, line and the filter; clean paper under the engine",
        "prime again for a minute; look at paper, bell housing and timing cover",
        "oil level read again: galleries and filter took their share",
    ),
    CP,
    remedy="find it and close it now",
    guards=(EXTERNAL_LEAK_MAJOR, FILTER_SEAL_LEAK, PLUG_EXPELLED_OUTSIDE, OIL_LEVEL_LOW),
    cautions=(Caution.WASTE,),
    also=("leak check", "drip check"),
)

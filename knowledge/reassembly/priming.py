"""What must be done and seen before the engine fires for the first time."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import STOPWATCH, TRUSTED_GAUGE
from knowledge.reassembly.places import ANY_OIL_SIDE, DISTRIBUTOR, FRONT_OR_TOP
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds
from knowledge.units import PSI
from knowledge.work import Band, Caution, Hold, Phase, Task

DRILLING = (Caution.PRIMING, Caution.BATTERY, Caution.EYES)
CRANKING = (Caution.FIRE, Caution.ROTATING)
OIL_IN = Task(
    id="oil_in",
    phase=Phase.PRIMING,
    opened=ANY_OIL_SIDE,
    says="oil of the right grade in sump or tank, to the mark plus the filter's volume",
    how=(
        "grade and quantity from the manual; run-in oil if the cam maker asks for it",
        "read the label, measure what goes in, write both down",
    ),
    source=sources.OIL_CHANGE_LAMP_TEXT,
    remedy="fill up; drain a wrong grade again",
    guards=(
        oil_causes.OIL_LEVEL_LOW,
        oil_causes.VISCOSITY_TOO_LOW,
        pump_causes_fitted.PUMP_NOT_PRIMED,
    ),
    cautions=(Caution.WASTE,),
    also=("fill with oil", "run-in oil", "break-in oil"),
)
FILTER_FILLED = Task(
    id="filter_filled",
    phase=Phase.PRIMING,
    says="new filter filled with clean oil, if its position allows, and fitted",
    how=(
        "pour into the outer holes if possible, let it soak, top up",
        "filter on its side or head: fit it dry and let the priming fill it",
    ),
    source=sources.OIL_CHANGE_LAMP_TEXT,
    remedy="prime longer: a dry filter fills first",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED, delivery_causes.FILTER_DRAINBACK),
    also=("pre-fill the filter", "oil filter"),
)
FILTER_RIGHT_ONE = Task(
    id="filter_right_one",
    phase=Phase.PRIMING,
    says="right filter: number, thread, one gasket, oiled, hand-tight and as stated on it",
    how=(
        "old gasket off the seat: check by eye and finger; new one oiled, only one",
        "remote filter: in and out lines on their ports, arrow in the direction of flow",
    ),
    source=idea_from(sources.FILTER_MAKER_PRIME),
    remedy="take it off, check, fit the right filter",
    guards=(delivery_causes.FILTER_WRONG, leaks_causes.FILTER_SEAL_LEAK),
    also=("double gasket", "filter part number", "remote filter lines"),
)
DIRECT_GAUGE_FITTED = Task(
    id="direct_gauge_fitted",
    phase=Phase.PRIMING,
    says="direct gauge on the main gallery port",
    how=(
        "before any priming, if the engine was open",
        "trusted gauge, hose rated for hot oil, clear of exhaust and fan",
        (
            "sender and its lead ready to go back; no sealing tape that insulates it from earth "
            "(ground)"
        ),
        "a lamp that goes out does not prove enough pressure",
    ),
    source=sources.PRE_OILING_ARTICLE,
    remedy="fit one; borrow one",
    guards=(
        instrument_causes.GAUGE_FAULTY,
        instrument_causes.SENDER_FAULTY,
        instrument_causes.SENDER_NOT_FITTED,
    ),
    cautions=(Caution.BATTERY,),
    also=("mechanical gauge", "test gauge", "oil pressure gauge"),
)
COVERS_OFF_TO_PRIME = Task(
    id="covers_off_to_prime",
    phase=Phase.PRIMING,
    opened=FRONT_OR_TOP,
    says="covers off, or a borescope in, so that you see oil and leaks while priming",
    how=(
        "rocker covers off; valley or front open if the build still allows; trays underneath",
        "watch for a sheet of oil instead of drops: a plug or seal left out",
        "no oil running behind timing cover or bellhousing",
    ),
    source=sources.GALLERY_PLUG_LEFT_OUT,
    hold=Hold.NOTE,
    remedy="stop, find the leak, repair it, prime again",
    guards=(
        delivery_causes_galleries.GALLERY_PLUG_MISSING,
        delivery_causes_galleries.GALLERY_SEAL_LEAK,
        leaks_causes_openings.PLUG_EXPELLED_OUTSIDE,
    ),
    also=("covers off", "watch for internal leaks"),
)
DRILL_TURNS_RIGHT_WAY = Task(
    id="drill_turns_right_way",
    phase=Phase.PRIMING,
    says="drill turning the same way as the distributor",
    how=(
        "get the rotation from the manual or the cap; set the drill, try it in the air",
        "tool reaches the shaft and fills the hole if a gallery crosses the distributor body",
    ),
    source=COMMON_PRACTICE,
    remedy="turn the drill round; backwards the pump draws air",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED,),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT, features.PUMP_ON_SKEW_GEAR),
    not_with=(features.PUMP_ON_CRANK_NOSE,),
    cautions=DRILLING,
    also=("drill direction", "priming tool", "which way to spin"),
)
PRIMED_BY_DRILL = Task(
    id="primed_by_drill",
    phase=Phase.PRIMING,
    says="oil pumped through the engine with a drill on the pump shaft, before the first start",
    how=(
        "distributor out, engine position marked; priming tool down to the shaft",
        (
            "both hands on the drill, slow; it labours when the pump takes oil; run until the "
            "pressure holds"
        ),
        "turn the crank a quarter turn by hand, drill again: at least four times",
        "a pump on the crank cannot be primed this way",
    ),
    source=sources.PRE_OILING_ARTICLE,
    remedy="no pressure within 2 minutes: stop; find what was left out",
    guards=(
        pump_causes_fitted.PUMP_NOT_PRIMED,
        relief_causes.RELIEF_PART_MISSING,
        pump_causes.PUMP_GASKET_WRONG,
        delivery_causes_galleries.GALLERY_PLUG_MISSING,
    ),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT, features.PUMP_ON_SKEW_GEAR),
    not_with=(features.PUMP_ON_CRANK_NOSE,),
    cautions=(*DRILLING, Caution.HAND_TURN),
    also=("prime with a drill", "pre-lube", "drill prime", "spin the pump"),
)
PRIMED_BY_TANK = Task(
    id="primed_by_tank",
    phase=Phase.PRIMING,
    says="oil pumped through the engine from a pressure tank, before the first start",
    how=(
        "tank of clean oil at the gallery port, regulated to no more than running pressure",
        (
            "open slowly until oil shows at the far end of the top; turn the crank a quarter turn at "
            "a time"
        ),
        "pump on the crank: feed its inlet, or crank in short spells, plugs out, fuel off",
        "outside pump that a drill can turn: that works as well; note which you used",
    ),
    source=sources.PRE_OILING_ARTICLE,
    remedy="no flow: look for a blocked oilway; a flood: look for a plug left out",
    guards=(
        pump_causes_fitted.PUMP_NOT_PRIMED,
        delivery_causes_galleries.GALLERY_PLUG_MISSING,
        delivery_causes_galleries.GALLERY_BLOCKED,
    ),
    not_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT, features.PUMP_ON_SKEW_GEAR),
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
    id="priming_pressure_timed",
    phase=Phase.PRIMING,
    says="time until the gauge shows pressure while priming",
    how=("stopwatch from the first turn of the drill or from opening the tank",),
    source=COMMON_PRACTICE,
    dimension="time",
    bands=(
        Band(
            low=None,
            high=120.0,
            source=COMMON_PRACTICE,
            says="no pressure in about 2 minutes of drilling: stop",
        ),
    ),
    spread=STOPWATCH,
    remedy=(
        "stop; check level, direction of the drill, shaft engagement, relief parts, gasket, "
        "plugs, in that order"
    ),
    guards=(
        pump_causes_fitted.PUMP_NOT_PRIMED,
        relief_causes.RELIEF_PART_MISSING,
        delivery_causes_galleries.GALLERY_PLUG_MISSING,
    ),
    cautions=DRILLING,
    also=("how long to prime", "no pressure when priming"),
)
PRIMING_PRESSURE_REACHED = Task(
    id="priming_pressure_reached",
    phase=Phase.PRIMING,
    says="steady pressure on the direct gauge while priming",
    how=(
        "read it when steady; note drill speed, oil and its temperature beside it",
        "it follows the drill speed: a slow drill and warm oil read low",
    ),
    source=COMMON_PRACTICE,
    dimension="pressure",
    bands=(
        Band(low=30 * PSI, high=60 * PSI, source=COMMON_PRACTICE, says="usual by drill, cold oil"),
        Band(
            low=40 * PSI,
            high=None,
            source=sources.PRIME_CONSIDERATIONS,
            says="one builder, by cranking without plugs: at least 40 psi",
        ),
    ),
    spread=TRUSTED_GAUGE,
    remedy="low: look for a sheet of oil; high: relief valve",
    guards=(
        pump_causes_fitted.PUMP_NOT_PRIMED,
        delivery_causes_galleries.GALLERY_PLUG_MISSING,
        delivery_causes_galleries.GALLERY_SEAL_LEAK,
        relief_causes.RELIEF_PART_MISSING,
    ),
    cautions=DRILLING,
    also=("priming pressure", "pressure with the drill"),
)
OIL_AT_EVERY_ROCKER = Task(
    id="oil_at_every_rocker",
    phase=Phase.PRIMING,
    says="oil seen at every rocker, or at every cam bearing and follower, while priming",
    how=(
        "turn the crank by hand a quarter turn at a time: the holes line up only in certain "
        "positions",
        "tick off each one; mark the dry ones and go round again",
    ),
    source=sources.PRE_OILING_ARTICLE,
    remedy="one dry: its pushrod, jet or hole; one bank dry: gallery or bush; do not start",
    guards=(
        assembly_causes.BEARING_OIL_HOLE_MISALIGNED,
        delivery_causes_galleries.GALLERY_BLOCKED,
        pump_causes_fitted.PUMP_NOT_PRIMED,
    ),
    cautions=(Caution.HAND_TURN,),
    also=("oil at the rockers", "oil to the top end", "flow at every rocker"),
)
DISTRIBUTOR_BACK_IN = Task(
    id="distributor_back_in",
    phase=Phase.PRIMING,
    opened=DISTRIBUTOR,
    says="drive shaft still in the pump after priming, distributor refitted and timed",
    how=(
        "draw the tool out slowly: the shaft can come up with it",
        "screwdriver on the shaft: it must turn the pump with a drag; if loose, it is out",
        "distributor to its marks, seated by hand, clamped; new seal ring",
    ),
    source=idea_from(sources.PRIMING_TOOL_THREAD),
    remedy="get the shaft back into the pump before you do anything else",
    guards=(pump_causes_drive.PUMP_DRIVE_BROKEN, pump_causes_drive.PUMP_DRIVE_BIND),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT,),
    cautions=(Caution.BATTERY,),
    also=("shaft pulled out of the pump", "refit the distributor"),
)
TURBO_WETTED = Task(
    id="turbo_wetted",
    phase=Phase.PRIMING,
    says="turbocharger filled with clean oil at its inlet, turned by hand, feed connected last",
    how=(
        "pour oil into the inlet, turn the wheel, pour again until it stays full",
        "connect the feed loosely; oil must come at the joint while priming, then tighten",
    ),
    source=sources.TURBO_MAKER_STARVATION,
    remedy="feed blocked: clear it before the first start",
    guards=(topend_causes_feeds.TURBO_FEED_RESTRICTED,),
    only_with=(features.TURBOCHARGED,),
    also=("prime the turbo", "turbo oil"),
)
TANK_SIDE_PRIMED = Task(
    id="tank_side_primed",
    phase=Phase.PRIMING,
    says="tank filled, suction line full to the pump, scavenge stages wetted",
    how=(
        "fill the tank; crack the union at the pump until oil runs, tighten",
        "turn the pump by hand or drill with its belt off: pressure side, then watch the return",
        "level in the tank again after the first minute of running",
    ),
    source=COMMON_PRACTICE,
    remedy="air in the line: bleed again",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED, pump_causes_fitted.SCAVENGE_FAILURE),
    only_with=(features.DRY_SUMP,),
    cautions=(
        Caution.ROTATING,
        Caution.PRIMING,
        Caution.EYES,
    ),
    also=("prime the dry sump", "bleed the tank line"),
)
CRANKED_TO_PRESSURE = Task(
    id="cranked_to_pressure",
    phase=Phase.PRIMING,
    opened=ANY_OIL_SIDE,
    says="pressure by cranking, before you turn on fuel and ignition",
    how=(
        "plugs or injectors out, ignition and fuel off, charger on the battery",
        "crank in spells of 15 to 30 s at most; let the starter cool in between",
        "diesel: stop lever pulled",
    ),
    source=sources.PRIME_CONSIDERATIONS,
    hold=Hold.NOTE,
    holds_if_failed=True,
    dimension="pressure",
    bands=(
        Band(
            low=28e3,
            high=None,
            source=sources.PRELUBRICATION_SWITCH,
            says="a maker's prelubrication switch: 28 kPa (4 psi)",
        ),
        Band(
            low=40 * PSI,
            high=None,
            source=sources.PRIME_CONSIDERATIONS,
            says="one builder's aim, plugs out: 40 psi before it fires",
            shown_only=True,
        ),
    ),
    spread=TRUSTED_GAUGE,
    remedy="no pressure after a few spells: bleed at the filter; otherwise stop and prime",
    why="two views: rebuilders crank 15 s at a time, a filter maker allows 30 s",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED,),
    cautions=(
        *CRANKING,
        Caution.INJECTION,
    ),
    also=("crank without plugs", "cranking pressure", "spin it on the starter"),
)
BLED_AT_FILTER = Task(
    id="bled_at_filter",
    phase=Phase.PRIMING,
    says="pump that would not draw: bled at the slackened filter",
    how=(
        "slacken the filter a turn; crank at most 30 s until oil shows; tighten it",
        "pressure must then come within 10 s; needed only if the pump would not draw",
    ),
    source=sources.FILTER_MAKER_PRIME,
    hold=Hold.NOTE,
    holds_if_failed=True,
    remedy="no oil at the filter: pump, pickup joint or drive; stop",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED,),
    cautions=(*CRANKING, Caution.WASTE),
    also=("crack the filter", "bleed the pump", "loosen the filter"),
)
DRY_AFTER_PRIMING = Task(
    id="dry_after_priming",
    phase=Phase.PRIMING,
    opened=ANY_OIL_SIDE,
    says="dry outside after priming: wiped, covers on, checked again",
    how=(
        "wipe every joint, plug, line and the filter; clean paper under the engine",
        "prime again for a minute; check the paper, the bellhousing and the timing cover",
        "read the oil level again: galleries and filter have filled",
    ),
    source=COMMON_PRACTICE,
    remedy="find it and repair it now",
    guards=(
        leaks_causes.EXTERNAL_LEAK_MAJOR,
        leaks_causes.FILTER_SEAL_LEAK,
        leaks_causes_openings.PLUG_EXPELLED_OUTSIDE,
    ),
    cautions=(Caution.WASTE,),
    also=("leak check", "drip check"),
)

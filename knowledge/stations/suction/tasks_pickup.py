"""What must be right about pickup, suction joint and the gap to the sump floor."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import around, wrench
from knowledge.reassembly.places import PICKUP_APART
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.suction import causes, causes_sump, quantities
from knowledge.units import INCH
from knowledge.work import Band, Caution, Hold, Phase, Task

SCREEN_RENEWED = Task(
    id="screen_renewed",
    phase=Phase.SUMP,
    opened=PICKUP_APART,
    says="pickup screen new, or washed and clear right through",
    how=(
        "renew it if it was pressed in and came out, is varnished, or caught debris",
        "to reuse it: wash both ways, light behind the mesh; most screens cannot be cleaned fully",
        "mesh whole, no loose wire",
    ),
    source=sources.PUMP_MAKER_SHAFTS_SCREENS,
    remedy="fit a new pickup; it costs less than the engine",
    guards=(causes.PICKUP_SCREEN_BLOCKED, causes.PICKUP_TUBE_LOOSE),
    not_with=(features.DRY_SUMP,),
    cautions=(Caution.SOLVENT, Caution.SHARP),
    also=("new pickup", "oil pump screen", "strainer"),
)
SCREEN_BYPASS_SHUT = Task(
    id="screen_bypass_shut",
    phase=Phase.SUMP,
    opened=PICKUP_APART,
    says="bypass in the screen shut on its strap, mesh whole",
    how=(
        "push it open and let go: it must close by itself",
        "no bypass in the screen: not needed",
    ),
    source=sources.PUMP_SCREEN_NOTES,
    remedy="fit a new pickup",
    guards=(causes.PICKUP_SCREEN_BYPASS_OPEN,),
    not_with=(features.DRY_SUMP,),
    also=("screen bypass", "pickup bypass valve"),
)
PICKUP_SEATED = Task(
    id="pickup_seated",
    phase=Phase.SUMP,
    opened=PICKUP_APART,
    says="pickup tube pushed fully home before any bolt is tightened",
    how=(
        "oil the seal; push it home by hand, or drive a pressed tube with its own driver",
        "check: no gap at the shoulder; then tighten the bolt: it must not pull the tube in",
        "pressed tube: mark its angle first, drive it in once; renew one that has been out",
    ),
    source=sources.V8_PUMP_SERVICE_2006,
    remedy="take it out, inspect the seal, push it home again",
    guards=(causes.PICKUP_TUBE_LOOSE, causes.SUCTION_JOINT_AIR_LEAK),
    not_with=(features.DRY_SUMP,),
    also=("fit the pickup", "pickup tube", "pickup driver"),
)
PICKUP_BOLT_TORQUED = Task(
    id="pickup_bolt_torqued",
    phase=Phase.SUMP,
    opened=PICKUP_APART,
    says="torque of the bolt that holds the pickup",
    how=("push the tube home first; the maker's manual comes first",),
    source=sources.V8_PUMP_SERVICE_2006,
    dimension="torque",
    bands=(
        around(12.0, sources.V8_PUMP_SERVICE_2006, "6.0 V8: 12 N·m", of_one=True),
        around(
            11.0,
            sources.SMALL_FOUR_ASSEMBLY_1999,
            "small four: 11 N·m, pump end before bracket",
            of_one=True,
        ),
        Band(
            low=20.0,
            high=28.0,
            source=sources.HEAVY_DIESEL_TORQUES,
            says="heavy in-line diesel: 24 ± 4 N·m",
            of_one=True,
        ),
    ),
    spread=wrench(12.0),
    remedy="slacken, push the tube home, tighten again",
    guards=(
        causes.PICKUP_TUBE_LOOSE,
        causes.SUCTION_JOINT_AIR_LEAK,
        assembly_causes.FASTENER_LOOSE_INSIDE,
    ),
    not_with=(features.DRY_SUMP, features.PRESSED_PICKUP),
    also=("pickup bolt torque", "pickup tube bolt"),
)
SUCTION_JOINT_SEALED = Task(
    id="suction_joint_sealed",
    phase=Phase.SUMP,
    opened=PICKUP_APART,
    says="suction joint sealed: new ring, gasket or felt, oiled, undamaged, no silicone",
    how=(
        "old seal out of its groove: one out, one in",
        "ring of the right thickness and colour for this tube; oil it; no sharp edge in its path",
        "no silicone on this joint: surplus gets sucked into the pump",
        "bubble test if you can: at most 3 psi, joint under solvent or oil",
    ),
    source=sources.V8_PUMP_SERVICE_2006,
    remedy="fit a new seal",
    why="the suction side never drips: a bad seal here draws air and does not leak oil",
    guards=(causes.SUCTION_JOINT_AIR_LEAK, assembly_causes.SEALANT_DEBRIS),
    not_with=(features.DRY_SUMP,),
    cautions=(Caution.SOLVENT, Caution.PRESSURE),
    also=("pickup o-ring", "suction gasket", "felt seal"),
)
SEALER_ONLY_WHERE_TOLD = Task(
    id="sealer_only_where_told",
    phase=Phase.SUMP,
    says="sealer on the pressed tube only if the manual asks for it: thin, on the outside",
    how=("a thin film on the end of the tube, none inside; wipe off the surplus",),
    source=sources.FOUR_PUMP_SERVICE_1988,
    hold=Hold.NOTE,
    remedy="wipe it off before it sets",
    guards=(assembly_causes.SEALANT_DEBRIS, causes.SUCTION_JOINT_AIR_LEAK),
    only_with=(features.PRESSED_PICKUP,),
    not_with=(features.DRY_SUMP,),
    also=("sealer on the pickup",),
)
PICKUP_RETAINED = Task(
    id="pickup_retained",
    phase=Phase.SUMP,
    opened=PICKUP_APART,
    says="pickup held so that it cannot turn or drop: bolted, strapped, or correctly tack-welded",
    how=(
        "bolt-on pickup or bracket is best; bracket whole, no crack at its weld, bolt locked",
        (
            "bolt locked the maker's way, or with one drop of medium-strength (removable) thread "
            "locker"
        ),
        "pressed tube only: add a strap, or a tack weld with the pump stripped",
        "twist and pull by hand: nothing moves",
    ),
    source=COMMON_PRACTICE,
    remedy="fit a new tube, a strap or a bolt-on pickup",
    why="a pressed tube that works loose first draws air, then falls off",
    guards=(
        causes.PICKUP_TUBE_LOOSE,
        causes.PICKUP_TUBE_CRACKED,
        assembly_causes.FASTENER_LOOSE_INSIDE,
    ),
    not_with=(features.DRY_SUMP,),
    cautions=(
        Caution.FIRE,
        Caution.EYES,
        Caution.SPRING,
    ),
    also=("pickup bracket", "tack weld", "strap the pickup", "bolt-on pickup"),
)
PICKUP_WELDED_RIGHT = Task(
    id="pickup_welded_right",
    phase=Phase.SUMP,
    opened=PICKUP_APART,
    says="tack weld on a pressed pickup: pump stripped, relief spring out, body true afterwards",
    how=(
        "gears, plunger and relief spring out before any heat comes near",
        "angle and pickup gap set first; one or two small tacks or braze, no full bead",
        "let it cool slowly in air; never quench",
        "straightedge over the body, gears back in: it turns as before; then wash out all spatter",
    ),
    source=sources.PICKUP_BRACKET_THREAD,
    hold=Hold.NOTE,
    remedy="if the body is distorted: another pump",
    why=(
        "views differ: racers weld every one with the spring out; others say heat spoils the "
        "body and the spring. A bolt-on pickup needs none; write down which way you chose"
    ),
    guards=(causes.PICKUP_TUBE_LOOSE,),
    only_with=(features.PRESSED_PICKUP,),
    not_with=(features.DRY_SUMP,),
    cautions=(
        Caution.FIRE,
        Caution.EYES,
        Caution.SPRING,
        Caution.SOLVENT,
    ),
    also=("weld the pickup", "braze the pickup", "tack weld"),
)
PICKUP_GAP_FITTED = Task(
    id="pickup_gap_fitted",
    phase=Phase.SUMP,
    says="gap from the pickup to the sump floor, by modelling clay",
    how=(
        "clay on the screen, a film of oil or foil over it; the sump's own gasket in place, dry",
        "sump on, bolts to their torque, off again; measure the clay at its thinnest",
        (
            "bolts only finger tight: subtract what the gasket still gives, free minus compressed "
            "thickness"
        ),
        (
            "with straightedge and depth gauge: floor to rail, plus the compressed gasket, minus "
            "screen to rail"
        ),
        "remove every trace of clay; write the gap down",
    ),
    source=COMMON_PRACTICE,
    measures=quantities.PICKUP_GAP,
    bands=(
        Band(
            low=0.1875 * INCH,
            high=0.5 * INCH,
            source=COMMON_PRACTICE,
            says="stop below 3/16 or above 1/2 in: no passage read",
        ),
        Band(
            low=0.25 * INCH,
            high=0.375 * INCH,
            source=COMMON_PRACTICE,
            says="usual aim: 1/4 to 3/8 in",
        ),
        Band(
            low=0.25 * INCH,
            high=0.5 * INCH,
            source=COMMON_PRACTICE,
            says="some builders, deep sumps: 1/4 to 1/2 in",
        ),
    ),
    limits=(quantities.LEAST_PICKUP_GAP, quantities.MOST_PICKUP_GAP),
    remedy=(
        "fit the pickup that belongs to this sump; do not bend a brazed one; seat and measure again"
    ),
    why="too close throttles the pump at speed; too far uncovers it under braking and on hills",
    guards=(
        causes_sump.PICKUP_CLEARANCE_TIGHT,
        causes_sump.PICKUP_CLEARANCE_WIDE,
        causes_sump.PAN_DENTED,
    ),
    not_with=(features.DRY_SUMP, features.FLOATING_PICKUP),
    cautions=(Caution.HEAVY, Caution.SHARP),
    also=("pickup clearance", "pickup to pan", "clay test", "pickup depth", "pan clearance"),
)
PICKUP_GAP_CHECKED_AGAIN = Task(
    id="pickup_gap_checked_again",
    phase=Phase.SUMP,
    says="pickup gap measured again after anything that moved pickup or sump",
    how=(
        "tube re-seated, bent, welded, or raised by as little as 1/8 in: measure with clay again",
        (
            "another sump or gasket, a dent beaten out, spacers under the tray: measure with clay "
            "again"
        ),
        "write down the last figure and the one before it",
    ),
    source=COMMON_PRACTICE,
    remedy="measure it now, before the sump is sealed",
    why=(
        "1/8 in is half of the usual gap: raised by that it can suck air, lowered it can sit on "
        "the floor"
    ),
    guards=(causes_sump.PICKUP_CLEARANCE_TIGHT, causes_sump.PICKUP_CLEARANCE_WIDE),
    not_with=(features.DRY_SUMP, features.FLOATING_PICKUP),
    also=("recheck pickup clearance", "raised the pickup", "1/8 inch"),
)
SCREEN_PARALLEL = Task(
    id="screen_parallel",
    phase=Phase.SUMP,
    opened=PICKUP_APART,
    says="lower edge of the screen parallel to the sump rail",
    how=("straightedge across the rails, same height at both sides of the screen",),
    source=sources.TRUCK_SERVICE_1994,
    hold=Hold.NOTE,
    remedy="turn the tube before you fix it",
    guards=(causes_sump.PICKUP_CLEARANCE_TIGHT,),
    not_with=(features.DRY_SUMP, features.FLOATING_PICKUP),
    also=("pickup angle", "screen level"),
)
FLOAT_SWINGS_FREELY = Task(
    id="float_swings_freely",
    phase=Phase.SUMP,
    opened=PICKUP_APART,
    says="floating pickup swings freely over its whole travel, float sound, stop in place",
    how=(
        "lift and let it fall: no sticking, no baffle in its way",
        "shake the float: no oil inside; new hinge seal; its stop keeps it off the floor",
    ),
    source=COMMON_PRACTICE,
    remedy="fit a new float or hinge",
    guards=(causes.SUCTION_JOINT_AIR_LEAK, causes.PICKUP_SCREEN_BLOCKED),
    only_with=(features.FLOATING_PICKUP,),
    not_with=(features.DRY_SUMP,),
    also=("floating pickup", "float pickup hinge"),
)

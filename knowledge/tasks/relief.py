"""What must be right about the relief valve before it is closed up."""

from knowledge.causes.relief import (
    RELIEF_BORE_SCORED,
    RELIEF_CAP_LOOSE,
    RELIEF_DEBRIS,
    RELIEF_HUNTING,
    RELIEF_PART_MISSING,
    RELIEF_RETURN_PLUGGED,
    RELIEF_SPRING_WEAK_BROKEN,
    RELIEF_SPRING_WRONG,
    RELIEF_STUCK_CLOSED,
    RELIEF_STUCK_OPEN,
)
from knowledge.engines.features import RELIEF_OUTSIDE
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import GMI, HB19, JHV, OLD, PF, RLS, RVF, T42, THK
from knowledge.tasks.figures import IN_LB, LB_FT, TRUSTED_GAUGE, around, wrench
from knowledge.units import PSI
from knowledge.vocabulary import Band, Caution, Hold, Phase, Task

RELIEF_CLEAN = Task(
    "relief_clean",
    Phase.RELIEF,
    "relief valve, bore and seat clean: no chip, no sealer, no varnish",
    (
        "plunger or ball out; wash parts and bore, blow through both ways",
        "lamp down the bore: seat bright all round, nothing in the corner below it",
        "nothing wiped in with a fluffy rag",
    ),
    THK,
    remedy="wash again; find where the chip came from",
    why="a chip on the seat is the leak inside the engine that is named most",
    guards=(RELIEF_DEBRIS,),
    cautions=(
        Caution.SPRING,
        Caution.EYES,
        Caution.SOLVENT,
        Caution.PRESSURE,
    ),
    also=("clean the relief valve", "pressure relief", "bypass valve"),
)
RELIEF_PLUNGER_DROPS = Task(
    "relief_plunger_drops",
    Phase.RELIEF,
    "relief plunger drops by its own weight, oiled, the whole way",
    (
        "oil it; hold the bore upright; it must sink smoothly through its whole travel",
        "turn it a quarter and try again; try every quarter",
        "it must not rattle from side to side either",
    ),
    RVF,
    remedy="stone the burr off; polish with fine paper; a plunger that still sticks is renewed",
    guards=(RELIEF_STUCK_OPEN, RELIEF_STUCK_CLOSED, RELIEF_HUNTING),
    cautions=(Caution.SPRING, Caution.EYES),
    also=("drop test", "plunger free", "relief valve sticks"),
)
RELIEF_SEAT_SOUND = Task(
    "relief_seat_sound",
    Phase.RELIEF,
    "relief bore and seat without scores",
    (
        "lamp and magnifier; draw a finger nail over each mark",
        "light burrs stoned off; no honing of an aluminium bore",
    ),
    GMI,
    remedy="new seat, oversize plunger or new pump",
    guards=(RELIEF_BORE_SCORED,),
    cautions=(Caution.EYES,),
    also=("relief seat", "scored relief bore"),
)
RELIEF_SPRING_RIGHT = Task(
    "relief_spring_right",
    Phase.RELIEF,
    "relief spring the right one: part number, free length, load at its length",
    (
        "part number from the list, not the colour of the paint",
        "free length by caliper; load at the fitted length on a spring scale; straight, no crack",
        "compare with the manual; write both down",
        "never stretch a spring to raise the pressure",
    ),
    CP,
    remedy="new spring of the right number",
    guards=(RELIEF_SPRING_WRONG, RELIEF_SPRING_WEAK_BROKEN),
    cautions=(
        Caution.EYES,
        Caution.SPRING,
    ),
    also=("relief spring", "oil pressure spring", "free length"),
)
RELIEF_SHIMS_WRITTEN_DOWN = Task(
    "relief_shims_written_down",
    Phase.RELIEF,
    "shims and adjuster of the relief spring: counted and written down",
    (
        "thickness of every shim; turns of the adjuster from its stop",
        "what a shim adds: spring rate times its thickness, over the plunger's area",
        "check the spring is not pressed solid before the port opens",
    ),
    RLS,
    Hold.NOTE,
    remedy="back to the maker's shims, then set by gauge",
    why=(
        "measured once: plunger 0.570 in across, spring pressed 0.227 in when shut, port open "
        "after 0.135 in"
    ),
    guards=(RELIEF_SPRING_WRONG,),
    cautions=(
        Caution.SPRING,
        Caution.EYES,
    ),
    also=("relief shims", "shim the spring", "adjuster screw"),
)
RELIEF_PARTS_IN_ORDER = Task(
    "relief_parts_in_order",
    Phase.RELIEF,
    "relief parts all there, in order, plunger the right way round",
    (
        "lay them out as in the drawing and photograph them",
        "plunger: the end that meets the oil goes to the oil; spring into its hollow",
        "count what goes in: ball or plunger, spring, seat, shims, cap, washer, pin",
    ),
    JHV,
    remedy="take it out and lay it out again",
    why="a plunger turned round stops the valve from opening: the pressure runs up",
    guards=(RELIEF_STUCK_CLOSED, RELIEF_PART_MISSING, RELIEF_SPRING_WRONG),
    cautions=(Caution.SPRING, Caution.EYES),
    also=("piston backwards", "relief valve upside down"),
)
RELIEF_RETURN_OPEN = Task(
    "relief_return_open",
    Phase.RELIEF,
    "the way back from the relief valve open to sump or pump inlet",
    (
        "wire or gentle air through the return hole",
        "no gasket, sealer or plug over it; it stays open with the pump bolted on",
    ),
    CP,
    remedy="clear it",
    guards=(RELIEF_RETURN_PLUGGED,),
    cautions=(
        Caution.EYES,
        Caution.PRESSURE,
    ),
    also=("relief return", "relief drain hole"),
)
RELIEF_OPENS_AT = Task(
    "relief_opens_at",
    Phase.RELIEF,
    "pressure at which the relief valve opens, on the bench",
    (
        "hand pump and trusted gauge on the outlet; raise slowly until it lifts",
        "write down the oil and its heat; the engine's own setting goes first",
        "no rig: leave this open and read it at the first start",
    ),
    HB19,
    Hold.NOTE,
    "pressure",
    (Band(40 * PSI, 60 * PSI, PF, "usual settings; 60 psi in the pump maker's example"),),
    spread=TRUSTED_GAUGE,
    remedy="right spring or shims; set it on the bench, not by guess in the car",
    guards=(RELIEF_SPRING_WRONG, RELIEF_SPRING_WEAK_BROKEN, RELIEF_STUCK_CLOSED),
    cautions=(Caution.PRESSURE, Caution.EYES),
    also=("relief setting", "opening pressure", "blow-off pressure"),
)
RELIEF_CAP_TORQUED = Task(
    "relief_cap_torqued",
    Phase.RELIEF,
    "torque of the relief cap or plug",
    ("new washer or ring; the maker's manual goes first", "held by a pin: see that it is in"),
    OLD,
    dimension="torque",
    bands=(
        around(35 * LB_FT, OLD, "one V6, big cap: 35 lb-ft, never more"),
        around(124 * IN_LB, T42, "one straight six, small plug: 124 in-lb"),
    ),
    spread=wrench(35 * LB_FT),
    remedy="new washer, tighten again; a stripped thread is repaired now, not later",
    guards=(RELIEF_CAP_LOOSE,),
    cautions=(Caution.SPRING,),
    also=("relief cap", "relief plug torque"),
)
RELIEF_CAP_LOCKED = Task(
    "relief_cap_locked",
    Phase.RELIEF,
    "relief cap locked: washer flat, pin through, ends bent",
    (
        "split pin new, both ends bent; roll pin full depth",
        "spring seated square under the cap; push on it: it moves and comes back",
        "paint a line across it",
    ),
    CP,
    remedy="new pin or washer",
    why="a cap that backs out empties the relief valve: pressure gone at once",
    guards=(RELIEF_CAP_LOOSE,),
    cautions=(Caution.SPRING, Caution.EYES),
    also=("relief pin", "cotter pin", "split pin"),
)
RELIEF_LOCK_NUT_TIGHT = Task(
    "relief_lock_nut_tight",
    Phase.RELIEF,
    "lock nut of the relief adjuster tight, cap nut and washers on",
    (
        "hold the screw, tighten the nut, look that the screw did not turn",
        "cap nut with a washer on each side; wire it where it is drilled for it",
    ),
    CP,
    remedy="set and lock it again",
    guards=(RELIEF_CAP_LOOSE, RELIEF_SPRING_WRONG),
    only_with=(RELIEF_OUTSIDE,),
    cautions=(Caution.SPRING,),
    also=("lock nut", "jam nut", "pressure adjuster"),
)

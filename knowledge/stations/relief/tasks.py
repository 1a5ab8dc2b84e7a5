"""What must be right about the relief valve before it is closed up."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import IN_LB, LB_FT, around, wrench
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.relief import causes, quantities
from knowledge.units import PSI
from knowledge.work import Band, Caution, Hold, Phase, Task

RELIEF_CLEAN = Task(
    id="relief_clean",
    phase=Phase.RELIEF,
    says="relief valve: bore and seat clean, no chips, sealer or varnish",
    how=(
        "plunger or ball out; wash parts and bore, blow through both ways",
        "light down the bore: seat bright all round, nothing in the corner below it",
        "wipe it with nothing that sheds lint",
    ),
    source=sources.JOBBER_OIL_PUMPS,
    remedy="wash again; find where the chip came from",
    why="a chip on the seat is the internal leak named most often",
    guards=(causes.RELIEF_DEBRIS,),
    cautions=(
        Caution.SPRING,
        Caution.EYES,
        Caution.SOLVENT,
        Caution.PRESSURE,
    ),
    also=("clean the relief valve", "pressure relief", "bypass valve"),
)
RELIEF_PLUNGER_DROPS = Task(
    id="relief_plunger_drops",
    phase=Phase.RELIEF,
    says="relief plunger drops by its own weight, oiled, the whole way",
    how=(
        "oil it and hold the bore upright; it must sink smoothly through its whole travel",
        "repeat at each quarter turn",
        "it must not rattle from side to side either",
    ),
    source=sources.RELIEF_FREE_FALL,
    remedy="stone the burr off and polish with fine paper; renew a plunger that still sticks",
    guards=(causes.RELIEF_STUCK_OPEN, causes.RELIEF_STUCK_CLOSED, causes.RELIEF_HUNTING),
    cautions=(Caution.SPRING, Caution.EYES),
    also=("drop test", "plunger free", "relief valve sticks"),
)
RELIEF_SEAT_SOUND = Task(
    id="relief_seat_sound",
    phase=Phase.RELIEF,
    says="relief bore and seat free of scores",
    how=(
        "light and magnifier; draw a finger nail over each mark",
        "stone off light burrs; do not hone an aluminium bore",
    ),
    source=sources.PUMP_INSPECTION_2006,
    remedy="new seat, oversize plunger or new pump",
    guards=(causes.RELIEF_BORE_SCORED,),
    cautions=(Caution.EYES,),
    also=("relief seat", "scored relief bore"),
)
RELIEF_SPRING_RIGHT = Task(
    id="relief_spring_right",
    phase=Phase.RELIEF,
    says="right relief spring: part number, free length, load at fitted length",
    how=(
        "part number from the list, not the paint colour",
        "free length by caliper; load at fitted length on a spring scale; straight, no crack",
        "compare with the manual; write both down",
        "never stretch a spring to raise the pressure",
    ),
    source=COMMON_PRACTICE,
    remedy="new spring of the right number",
    guards=(causes.RELIEF_SPRING_WRONG, causes.RELIEF_SPRING_WEAK_BROKEN),
    cautions=(
        Caution.EYES,
        Caution.SPRING,
    ),
    also=("relief spring", "oil pressure spring", "free length"),
)
RELIEF_SHIMS_WRITTEN_DOWN = Task(
    id="relief_shims_written_down",
    phase=Phase.RELIEF,
    says="shims and adjuster of the relief spring: counted and written down",
    how=(
        "thickness of every shim; turns of the adjuster from its stop",
        "a shim adds spring rate times its thickness, divided by the plunger area",
        "check that the coils do not bind before the port opens",
    ),
    source=sources.RELIEF_SPRING_STUDY,
    hold=Hold.NOTE,
    remedy="go back to the maker's shims, then set it with a gauge",
    why=(
        "measured once: plunger 0.570 in across, spring compressed 0.227 in when shut, port open "
        "after another 0.135 in"
    ),
    guards=(causes.RELIEF_SPRING_WRONG,),
    cautions=(
        Caution.SPRING,
        Caution.EYES,
    ),
    also=("relief shims", "shim the spring", "adjuster screw"),
)
RELIEF_PARTS_IN_ORDER = Task(
    id="relief_parts_in_order",
    phase=Phase.RELIEF,
    says="relief parts complete, in order, plunger the right way round",
    how=(
        "lay them out as in the drawing and photograph them",
        "plunger: oil end toward the oil, spring in its hollow",
        "count what goes in: ball or plunger, spring, seat, shims, cap, washer, pin",
    ),
    source=sources.RELIEF_VALVE_EXPLANATION,
    remedy="take it out and lay it out again",
    why="a reversed plunger keeps the valve from opening: the pressure runs far too high",
    guards=(causes.RELIEF_STUCK_CLOSED, causes.RELIEF_PART_MISSING, causes.RELIEF_SPRING_WRONG),
    cautions=(Caution.SPRING, Caution.EYES),
    also=("piston backwards", "relief valve upside down"),
)
RELIEF_RETURN_OPEN = Task(
    id="relief_return_open",
    phase=Phase.RELIEF,
    says="relief return open to the sump or pump inlet",
    how=(
        "wire or gentle air through the return hole",
        "no gasket, sealer or plug over it; still open with the pump bolted on",
    ),
    source=COMMON_PRACTICE,
    remedy="clear it",
    guards=(causes.RELIEF_RETURN_PLUGGED,),
    cautions=(
        Caution.EYES,
        Caution.PRESSURE,
    ),
    also=("relief return", "relief drain hole"),
)
RELIEF_OPENS_AT = Task(
    id="relief_opens_at",
    phase=Phase.RELIEF,
    says="opening pressure of the relief valve, on the bench",
    how=(
        "hand pump and trusted gauge on the outlet; raise slowly until it lifts",
        "note the oil and its temperature; the engine's own setting comes first",
        "no rig: leave this open and read it at the first start",
    ),
    source=sources.DIESEL_CASE_NOTE,
    hold=Hold.NOTE,
    measures=quantities.RELIEF_SETTING,
    bands=(
        Band(
            low=40 * PSI,
            high=60 * PSI,
            source=COMMON_PRACTICE,
            says="usual settings; a pump maker's example has 60 psi",
        ),
        Band(
            low=0.5e6,
            high=0.7e6,
            source=sources.DIESEL_CASE_NOTE,
            says="farm diesel, set on the bench",
            of_one=True,
        ),
        Band(
            low=340e3,
            high=395e3,
            source=sources.ARMY_TM_382_RELIEF,
            says="army plant engine without piston jets; 415 to 470 kPa with them",
            of_one=True,
        ),
        Band(
            low=520e3,
            high=590e3,
            source=sources.ARMY_TM_260_BYPASS,
            says="army plant engine",
            of_one=True,
        ),
    ),
    limits=(quantities.USUAL_RELIEF_SETTING, quantities.USUAL_RELIEF_SETTING),
    remedy="fit the right spring or shims; set it on the bench, not by guess in the vehicle",
    guards=(
        causes.RELIEF_SPRING_WRONG,
        causes.RELIEF_SPRING_WEAK_BROKEN,
        causes.RELIEF_STUCK_CLOSED,
    ),
    cautions=(Caution.PRESSURE, Caution.EYES),
    also=("relief setting", "opening pressure", "blow-off pressure"),
)
RELIEF_CAP_TORQUED = Task(
    id="relief_cap_torqued",
    phase=Phase.RELIEF,
    says="torque of the relief cap or plug",
    how=(
        "new washer or ring; the maker's manual comes first",
        ("if a pin holds it: check that the pin is in"),
    ),
    source=sources.PUMP_INSTALLATION_1983,
    dimension="torque",
    bands=(
        around(
            35 * LB_FT,
            sources.PUMP_INSTALLATION_1983,
            "one V6, big cap: 35 lb-ft, never more",
            of_one=True,
        ),
        around(
            124 * IN_LB,
            sources.SIX_FRONT_PUMP_2009,
            "one straight six, small plug: 124 in-lb",
            of_one=True,
        ),
    ),
    spread=wrench(35 * LB_FT),
    remedy="fit a new washer and tighten again; repair a stripped thread now, not later",
    guards=(causes.RELIEF_CAP_LOOSE,),
    cautions=(Caution.SPRING,),
    also=("relief cap", "relief plug torque"),
)
RELIEF_CAP_LOCKED = Task(
    id="relief_cap_locked",
    phase=Phase.RELIEF,
    says="relief cap locked: washer flat, pin through, ends bent",
    how=(
        "new split pin (cotter pin), both ends bent; roll pin driven to full depth",
        "spring square under the cap; push on it: it moves and springs back",
        "paint a line across it",
    ),
    source=COMMON_PRACTICE,
    remedy="new pin or washer",
    why="if the cap backs out, the relief valve empties and pressure is lost at once",
    guards=(causes.RELIEF_CAP_LOOSE,),
    cautions=(Caution.SPRING, Caution.EYES),
    also=("relief pin", "cotter pin", "split pin"),
)
RELIEF_LOCK_NUT_TIGHT = Task(
    id="relief_lock_nut_tight",
    phase=Phase.RELIEF,
    says="lock nut of the relief adjuster tight, cap nut and washers on",
    how=(
        "hold the screw, tighten the nut, check that the screw did not turn",
        "cap nut with a washer on each side; lockwire it where it is drilled",
    ),
    source=COMMON_PRACTICE,
    remedy="set and lock it again",
    guards=(causes.RELIEF_CAP_LOOSE, causes.RELIEF_SPRING_WRONG),
    only_with=(features.RELIEF_OUTSIDE,),
    cautions=(Caution.SPRING,),
    also=("lock nut", "jam nut", "pressure adjuster"),
)

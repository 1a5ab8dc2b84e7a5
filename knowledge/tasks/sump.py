"""What must be right as sump or oil tank goes on: flange, baffles, level, bolts, lines."""

from knowledge.causes.assembly import DIRT_IN_ASSEMBLY, FASTENER_LOOSE_INSIDE, SEALANT_DEBRIS
from knowledge.causes.leaks import DRAIN_PLUG_OUT, EXTERNAL_LEAK_MAJOR, OIL_LINE_LEAK, SUMP_HOLED
from knowledge.causes.oil import DIPSTICK_WRONG
from knowledge.causes.pump import SCAVENGE_FAILURE
from knowledge.causes.suction import (
    BAFFLE_MISSING,
    FOREIGN_BODY_IN_SUMP,
    PAN_DENTED,
    SUCTION_HOSE_COLLAPSED,
    SUCTION_JOINT_AIR_LEAK,
)
from knowledge.engines.features import DRY_SUMP
from knowledge.sources import CAV, FF9, HB17, HPA, HPP, MP7, RG7, RV8, SLO, TMP
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.tasks.figures import FEELER, LB_FT, THOU, around, wrench
from knowledge.vocabulary import Band, Caution, Hold, Phase, Task

SUMP_FLANGE_FLAT = Task(
    "sump_flange_flat",
    Phase.SUMP,
    "sump flange flat: widest gap in each foot of it",
    (
        "straightedge along each rail, feeler under it, foot by foot",
        "sheet sump: bolt holes beaten back flat; no old sealer left",
    ),
    TMP,
    Hold.NOTE,
    "length",
    (Band(None, 4 * THOU, TMP, "cast sump of a diesel: 0.004 in in each foot"),),
    spread=FEELER,
    remedy="dress the flange, face a cast one",
    guards=(EXTERNAL_LEAK_MAJOR,),
    cautions=(Caution.SHARP, Caution.ASBESTOS),
    also=("pan rail", "pan flange", "warped oil pan"),
)
SUMP_SOUND = Task(
    "sump_sound",
    Phase.SUMP,
    "sump without dent, crack or weak thread; drain plug and washer sound",
    (
        "look at the floor under the pickup: a dent there comes up into the gap",
        "plug turns in by finger to its washer; welded fittings leak-tested",
    ),
    HB17,
    Hold.NOTE,
    remedy="beat the dent out and measure the pickup gap again; repair the thread",
    guards=(PAN_DENTED, SUMP_HOLED, DRAIN_PLUG_OUT),
    cautions=(Caution.SHARP,),
    also=("dented pan", "drain plug thread"),
)
BAFFLES_RIGHT = Task(
    "baffles_right",
    Phase.SUMP,
    "baffles and trap doors there, fast, swinging towards the pickup",
    (
        "push each door: opens towards the pickup, falls shut by itself",
        "oil poured in any corner runs to the pickup with the sump level",
        "no door can reach tube or screen",
    ),
    SLO,
    remedy="turn or renew the door; refit the plate",
    guards=(BAFFLE_MISSING,),
    not_with=(DRY_SUMP,),
    cautions=(Caution.SHARP,),
    also=("trap door", "anti-surge plate", "sump baffle"),
)
NOTHING_LEFT_INSIDE = Task(
    "nothing_left_inside",
    Phase.SUMP,
    "nothing left inside: tools, rags, plugs and clay counted out before the engine is closed",
    (
        "count stoppers, rags and tools against the list",
        "lamp round crankcase, valley and sump; wipe the last grit off with a tacky cloth",
        "a second person looks",
    ),
    CP,
    remedy="look until the count is right",
    guards=(FOREIGN_BODY_IN_SUMP, DIRT_IN_ASSEMBLY, FASTENER_LOOSE_INSIDE),
    also=("rag left in the engine", "tool count", "cleanliness"),
)
SUMP_GASKET_AND_BEADS = Task(
    "sump_gasket_and_beads",
    Phase.SUMP,
    "sump gasket single and dry; beads thin, only at the corners; nothing squeezed inside",
    (
        "gasket or silicone, not both, but for the corner joints the manual names",
        "bead as thin as told; close it within the minutes its maker gives",
        "look in through any hole: wipe off what came out inside",
    ),
    RV8,
    Hold.NOTE,
    remedy="off again, clean, a thinner bead",
    why="sealer squeezed inside has jammed a strainer",
    guards=(SEALANT_DEBRIS, EXTERNAL_LEAK_MAJOR),
    also=("pan gasket", "silicone bead", "sealer"),
)
SUMP_BOLTS_TORQUED = Task(
    "sump_bolts_torqued",
    Phase.SUMP,
    "torque of the sump bolts, from the middle outwards, and once more when the gasket has settled",
    ("all in by finger first; middle to ends, crosswise, two rounds", "too much bows the rail"),
    CP,
    Hold.NOTE,
    "torque",
    (
        Band(6 * LB_FT, 12 * LB_FT, CP, "small bolts: 6 to 12 lb-ft, no passage read"),
        around(14.0, RG7, "one V6: 14 N·m (125 in-lb)"),
        around(11.0, FF9, "one small four: 11 N·m (97 in-lb)"),
        Band(20.0, 28.0, MP7, "heavy in-line diesel: 24 ± 4 N·m"),
    ),
    spread=wrench(9 * LB_FT),
    remedy="once more from the middle; a crushed gasket is renewed",
    guards=(EXTERNAL_LEAK_MAJOR,),
    also=("pan bolts", "oil pan torque"),
)
LEVEL_STICK_PROVED = Task(
    "level_stick_proved",
    Phase.SUMP,
    "dipstick or tank gauge proved with a measured fill",
    (
        "sump on trial or still empty: pour in the stated litres; the mark must agree",
        "depth of the stick against rail and pickup, before the sump is closed",
        "engine at the angle it will stand at; write litres and mark down",
    ),
    HPP,
    Hold.NOTE,
    remedy="mark the stick anew, or the stick and tube that belong to this sump",
    guards=(DIPSTICK_WRONG,),
    also=("dipstick calibration", "stick check", "measured fill"),
)
TANK_CLEAN_AND_WHOLE = Task(
    "tank_clean_and_whole",
    Phase.SUMP,
    "oil tank clean, its strainer, baffles and breather whole",
    (
        "off the car, washed out, lamp inside: no debris behind the baffles",
        "strainer at the outlet whole and clear; breather open",
        "outlet below the oil at every lean",
    ),
    HPA,
    remedy="wash again; renew what cannot be seen clean",
    guards=(DIRT_IN_ASSEMBLY, FOREIGN_BODY_IN_SUMP),
    only_with=(DRY_SUMP,),
    cautions=(Caution.SOLVENT, Caution.WASTE),
    also=("dry sump tank", "oil tank", "tank strainer"),
)
TANK_LINES_RIGHT = Task(
    "tank_lines_right",
    Phase.SUMP,
    "tank lines: right ports, full bore, suction hose that cannot flatten, unions tight",
    (
        "follow each line by hand: tank to pressure stage, scavenge to tank, none crossed",
        "suction hose reinforced, no kink, no smaller than the pump's port; fittings full bore",
        "new seals on suction unions, every clip tight; lines away from heat and edges",
        "lines blown and rinsed: debris of the last failure sits in hoses and cooler",
    ),
    CAV,
    remedy="bigger or stiffer hose; seal the union",
    guards=(SUCTION_HOSE_COLLAPSED, SUCTION_JOINT_AIR_LEAK, OIL_LINE_LEAK),
    only_with=(DRY_SUMP,),
    cautions=(
        Caution.EYES,
        Caution.PRESSURE,
    ),
    also=("dry sump hoses", "suction hose", "oil lines"),
)
SCAVENGE_SIDE_RIGHT = Task(
    "scavenge_side_right",
    Phase.SUMP,
    "scavenge side: pickups screened and sealed, stages wetted, belt or drive sound",
    (
        "screen in every scavenge pickup; seals new, no air drawn",
        "turn the pump by hand with oil at each inlet: every stage draws",
        "belt in line and tight, guard on",
    ),
    HPA,
    remedy="new seal or screen; wet the stage",
    guards=(SCAVENGE_FAILURE,),
    only_with=(DRY_SUMP,),
    also=("scavenge pump", "scavenge pickup", "dry sump belt"),
)

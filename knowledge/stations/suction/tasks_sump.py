"""What must be right as sump or oil tank goes on: flange, baffles, level, bolts, lines."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import FEELER, LB_FT, around, wrench
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.suction import causes, causes_sump
from knowledge.units import THOU
from knowledge.work import Band, Caution, Hold, Phase, Task

SUMP_FLANGE_FLAT = Task(
    id="sump_flange_flat",
    phase=Phase.SUMP,
    says="sump flange flat: widest gap in each foot of length",
    how=(
        "straightedge along each rail, feeler under it, foot by foot",
        "sheet-metal sump: bolt holes beaten flat again; no old sealer left",
    ),
    source=sources.ARMY_TM_200_SUMP_FLANGE,
    hold=Hold.NOTE,
    dimension="length",
    bands=(
        Band(
            low=None,
            high=4 * THOU,
            source=sources.ARMY_TM_200_SUMP_FLANGE,
            says="cast sump of a big diesel: 0.004 in per foot",
            only_with=(features.DIESEL,),
        ),
    ),
    spread=FEELER,
    remedy="dress the flange; have a cast one machined",
    guards=(leaks_causes.EXTERNAL_LEAK_MAJOR,),
    cautions=(Caution.SHARP, Caution.ASBESTOS),
    also=("pan rail", "pan flange", "warped oil pan"),
)
SUMP_SOUND = Task(
    id="sump_sound",
    phase=Phase.SUMP,
    says="sump free of dents, cracks and weak threads; drain plug and washer sound",
    how=(
        "look at the floor under the pickup: a dent there narrows the gap",
        "drain plug turns in by finger to its washer; welded fittings leak-tested",
    ),
    source=idea_from(sources.LOWER_ENGINE_NOISE_2006),
    hold=Hold.NOTE,
    remedy="beat the dent out and measure the pickup gap again; repair the thread",
    guards=(causes_sump.PAN_DENTED, leaks_causes_openings.SUMP_HOLED, leaks_causes.DRAIN_PLUG_OUT),
    cautions=(Caution.SHARP,),
    also=("dented pan", "drain plug thread"),
)
BAFFLES_RIGHT = Task(
    id="baffles_right",
    phase=Phase.SUMP,
    says="baffles and trap doors fitted, tight, swinging toward the pickup",
    how=(
        "push each door: it opens toward the pickup and falls shut by itself",
        "pour oil in any corner: it runs to the pickup with the sump level",
        "no door can reach tube or screen",
    ),
    source=sources.SUMP_TILT_TEST,
    remedy="turn or renew the door; refit the plate",
    guards=(causes_sump.BAFFLE_MISSING,),
    not_with=(features.DRY_SUMP,),
    cautions=(Caution.SHARP,),
    also=("trap door", "anti-surge plate", "sump baffle"),
)
NOTHING_LEFT_INSIDE = Task(
    id="nothing_left_inside",
    phase=Phase.SUMP,
    says="nothing left inside: tools, rags, plugs and clay counted out before the engine is closed",
    how=(
        "count stoppers, rags and tools against the list",
        "light round crankcase, valley and sump; wipe the last grit off with a tack cloth",
        "a second person looks",
    ),
    source=COMMON_PRACTICE,
    remedy="search until the count is right",
    guards=(
        causes_sump.FOREIGN_BODY_IN_SUMP,
        assembly_causes.DIRT_IN_ASSEMBLY,
        assembly_causes.FASTENER_LOOSE_INSIDE,
    ),
    also=("rag left in the engine", "tool count", "cleanliness"),
)
SUMP_GASKET_AND_BEADS = Task(
    id="sump_gasket_and_beads",
    phase=Phase.SUMP,
    says="sump gasket single and dry; beads thin, only at the corners; nothing squeezed out inside",
    how=(
        "gasket or silicone, not both, except at the corner joints the manual names",
        "bead as thin as stated; close it within the time its maker gives",
        "look in through any hole: wipe off what squeezed out inside",
    ),
    source=sources.CLUB_SEALANT_STRAINER,
    hold=Hold.NOTE,
    remedy="take it off, clean, apply a thinner bead",
    why="sealer squeezed out inside has jammed a strainer",
    guards=(assembly_causes.SEALANT_DEBRIS, leaks_causes.EXTERNAL_LEAK_MAJOR),
    also=("pan gasket", "silicone bead", "sealer"),
)
SUMP_BOLTS_TORQUED = Task(
    id="sump_bolts_torqued",
    phase=Phase.SUMP,
    says="torque of the sump bolts, from the middle outward, and again once the gasket has settled",
    how=(
        "all in by finger first; middle to ends, crosswise, two rounds",
        ("overtightening bows the rail"),
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    dimension="torque",
    bands=(
        Band(
            low=6 * LB_FT,
            high=12 * LB_FT,
            source=COMMON_PRACTICE,
            says="small bolts: 6 to 12 lb-ft, no passage read",
        ),
        around(14.0, sources.V6_SUMP_1997, "one V6: 14 N·m (125 in-lb)", of_one=True),
        around(
            11.0, sources.SMALL_FOUR_ASSEMBLY_1999, "one small four: 11 N·m (97 in-lb)", of_one=True
        ),
        Band(
            low=20.0,
            high=28.0,
            source=sources.HEAVY_DIESEL_TORQUES,
            says="heavy in-line diesel: 24 ± 4 N·m",
            of_one=True,
        ),
    ),
    spread=wrench(9 * LB_FT),
    remedy="once more from the middle; renew a crushed gasket",
    guards=(leaks_causes.EXTERNAL_LEAK_MAJOR,),
    also=("pan bolts", "oil pan torque"),
)
LEVEL_STICK_PROVED = Task(
    id="level_stick_proved",
    phase=Phase.SUMP,
    says="dipstick or tank gauge checked with a measured fill",
    how=(
        "sump on for trial or still empty: pour in the stated quantity; the mark must agree",
        "depth of the stick against rail and pickup, before the sump is closed",
        "engine at its installed angle; write down quantity and mark",
    ),
    source=sources.STICK_VERIFICATION_2002,
    hold=Hold.NOTE,
    remedy="mark the stick again, or fit the stick and tube that belong to this sump",
    guards=(oil_causes.DIPSTICK_WRONG,),
    also=("dipstick calibration", "stick check", "measured fill"),
)
TANK_CLEAN_AND_WHOLE = Task(
    id="tank_clean_and_whole",
    phase=Phase.SUMP,
    says="oil tank clean, its strainer, baffles and breather whole",
    how=(
        "off the vehicle, washed out, light inside: no debris behind the baffles",
        "outlet strainer whole and clear; breather open",
        "outlet below the oil at every angle",
    ),
    source=COMMON_PRACTICE,
    remedy="wash again; renew a tank you cannot see into and prove clean",
    guards=(assembly_causes.DIRT_IN_ASSEMBLY, causes_sump.FOREIGN_BODY_IN_SUMP),
    only_with=(features.DRY_SUMP,),
    cautions=(Caution.SOLVENT, Caution.WASTE),
    also=("dry sump tank", "oil tank", "tank strainer"),
)
TANK_LINES_RIGHT = Task(
    id="tank_lines_right",
    phase=Phase.SUMP,
    says="tank lines: right ports, full bore, suction hose that cannot flatten, unions tight",
    how=(
        "follow each line by hand: tank to pressure stage, scavenge to tank, none crossed",
        (
            "suction hose reinforced, without kinks, no smaller than the pump's port; fittings full "
            "bore"
        ),
        "new seals on suction unions, every clip tight; lines away from heat and edges",
        "lines blown and rinsed: debris from the last failure stays in hoses and cooler",
    ),
    source=COMMON_PRACTICE,
    remedy="fit a bigger or stiffer hose; seal the union",
    guards=(
        causes_sump.SUCTION_HOSE_COLLAPSED,
        causes.SUCTION_JOINT_AIR_LEAK,
        leaks_causes.OIL_LINE_LEAK,
    ),
    only_with=(features.DRY_SUMP,),
    cautions=(
        Caution.EYES,
        Caution.PRESSURE,
    ),
    also=("dry sump hoses", "suction hose", "oil lines"),
)
SCAVENGE_SIDE_RIGHT = Task(
    id="scavenge_side_right",
    phase=Phase.SUMP,
    says="scavenge side: pickups screened and sealed, stages wetted, belt or drive sound",
    how=(
        "screen in every scavenge pickup; new seals, no air leak; hoses whole, unions tight",
        "turn the pump by hand with oil at each inlet: every stage draws",
        "belt in line and tight, guard on",
    ),
    source=COMMON_PRACTICE,
    remedy="fit a new seal or screen; wet the stage",
    guards=(pump_causes_fitted.SCAVENGE_FAILURE,),
    only_with=(features.DRY_SUMP,),
    also=("scavenge pump", "scavenge pickup", "dry sump belt"),
)

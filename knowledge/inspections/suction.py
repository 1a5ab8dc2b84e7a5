"""How to look at pickup, suction line and sump."""

from knowledge.cautions import RUNNING
from knowledge.findings.assembly import LEFTOVER_FOUND, PIECE_FOUND_INSIDE, SMALL_PART_LEFT_OUT
from knowledge.findings.bearings_bench import PISTON_OR_PIN_BROKEN
from knowledge.findings.behaviour import TOP_UP_CURES_FOR_A_WHILE
from knowledge.findings.debris import METAL_IN_PAN, METAL_IN_SCREEN
from knowledge.findings.oil_look import SLUDGE_SEEN, WATER_AT_THE_DRAIN
from knowledge.findings.pressure import FALLS_AS_REVS_RISE, NEEDLE_FLICKERS
from knowledge.findings.pump import TANK_EMPTIES_RUNNING
from knowledge.findings.suction import (
    BAFFLE_MISSING_OR_LOOSE,
    BUBBLES_IN_JOINT_TEST,
    OIL_LINE_AT_CRANK,
    OIL_SLOW_TO_RETURN,
    OIL_TRAPPED_IN_SUMP,
    OVERFILL_STEADIES_IT,
    PICKUP_FELL_OFF,
    PICKUP_FIXING_LOOSE,
    PICKUP_GAP,
    PICKUP_GAP_TOO_LARGE,
    PICKUP_GAP_TOO_SMALL,
    PICKUP_TUBE_CRACK_SEEN,
    PICKUP_TUBE_ROCKS,
    PICKUP_WITNESS_MARK,
    PRESSURE_BACK_AFTER_THAW,
    RETURNS_BLOCKED,
    SCREEN_BYPASS_OPEN,
    SCREEN_TORN,
    SUCTION_HOSE_FLATTENS,
    SUCTION_SEAL_CUT_OR_MISSING,
    SUCTION_UNION_LOOSE,
    SUMP_DENTED,
    TANK_STILL_FULL,
    TRAY_BROKEN_OR_MISSING,
    TRAY_RUBBED,
)
from knowledge.findings.suction_debris import (
    CLOTH_ON_SCREEN,
    FOREIGN_MATERIAL_ON_SCREEN,
    GASKET_ON_SCREEN,
    ICE_AT_SCREEN,
    METAL_PAST_THE_SCREEN,
    PASTE_ON_SCREEN,
    PLASTIC_ON_SCREEN,
    SCREEN_BLOCKED,
    SEALER_IN_SUMP,
    SEALER_ON_SCREEN,
    SEALER_SQUEEZED_OUT,
    SLUDGE_ON_SCREEN,
    VARNISH_ON_SCREEN,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import ELP, GMC, HB17, OST, P06, SLO, TWO_CP, WTS
from knowledge.vocabulary import Access, Caution, Inspection, Station

# --------------------------------------------------------------- outside, nothing opened

LOOK_UNDER_THE_SUMP = Inspection(
    "look_under_the_sump",
    Station.SUCTION,
    "look at the sump and its joints from below",
    (
        "engine stopped and cool; vehicle on stands, never under a jack alone",
        "straightedge along the floor under the pickup: note any dent, jack mark or scrape",
        "look along sump and cover joints for squeezed-out sealer",
    ),
    10,
    Access.OUTSIDE,
    (SUMP_DENTED, SEALER_SQUEEZED_OUT),
    HB17,
    tools=("lamp", "straightedge", "stands"),
    cautions=(Caution.LIFTING, Caution.HOT),
    also=("check pan for dents", "look under the oil pan"),
)
WATCH_TANK_AND_HOSES = Inspection(
    "watch_tank_and_hoses",
    Station.SUCTION,
    "watch tank level, suction hose and unions",
    (
        "engine stopped: try every clamp and union, feel the hose for soft spots and kinks",
        "compare the bore of hose and fittings with the pump's inlet",
        "check that a tank valve stands open and the pump belt is on, guard fitted",
        "start, watch tank level and hose from a distance as the revs rise; stop at once if the "
        "pressure is below the limit",
    ),
    15,
    Access.OUTSIDE,
    (SUCTION_HOSE_FLATTENS, SUCTION_UNION_LOOSE, TANK_EMPTIES_RUNNING),
    HB17,
    tools=("lamp", "spanners"),
    cautions=RUNNING,
    needs_running=True,
    also=("dry sump check", "look at oil tank", "check suction hose"),
)
FEEL_SUCTION_UNIONS = Inspection(
    "feel_suction_unions",
    Station.SUCTION,
    "suction hose and unions, engine stopped",
    (
        "engine stopped and cool: is the tank still full?",
        "try every clamp and union from tank or strainer to pump by hand, then with a spanner",
        "bend and press the hose: soft, kinked, liner loose?",
    ),
    10,
    Access.OUTSIDE,
    (SUCTION_UNION_LOOSE, SUCTION_HOSE_FLATTENS, TANK_STILL_FULL),
    CP,
    tools=("lamp", "spanners"),
    cautions=(Caution.HOT,),
    keep="mark how far each union could be turned",
    also=("check tank lines", "feel the oil hoses"),
)
FILL_OVER_THE_MARK = Inspection(
    "fill_over_the_mark",
    Station.SUCTION,
    "fill a little over the mark for a short trial",
    (
        "read the level and take the oil sample first",
        "add about a quart (1 l) of the same oil, not enough to reach the crank",
        "run briefly at idle and moderate revs with a trusted gauge: does it come right?",
        "drain back to the mark at once; do not work the engine overfull",
    ),
    20,
    Access.OIL_SAMPLE,
    (OVERFILL_STEADIES_IT, TOP_UP_CURES_FOR_A_WHILE, NEEDLE_FLICKERS),
    CP,
    tools=("oil", "trusted gauge"),
    cautions=RUNNING,
    destroys="the level as found",
    keep="write down the level and sample the oil before adding any",
    needs_running=True,
    also=("overfill test", "add an extra quart"),
)
READ_LEVEL_TWICE = Inspection(
    "read_level_twice",
    Station.SUCTION,
    "read the oil level right after a fast run and again later",
    (
        "on level ground, oil hot; hold fast revs for a minute while the pressure stays in limits",
        "stop, read the stick at once, and again after ten minutes",
        "more than about a quart (1 l) of difference: the oil stays up",
    ),
    10,
    Access.OUTSIDE,
    (OIL_SLOW_TO_RETURN, FALLS_AS_REVS_RISE),
    OST,
    tools=("cloth", "watch"),
    cautions=RUNNING,
    needs_running=True,
    waits_minutes=10,
    also=("check level hot and after", "drain back check"),
)
THAW_THE_SUMP = Inspection(
    "thaw_the_sump",
    Station.SUCTION,
    "warm a frozen engine through and try again",
    (
        "do not crank it frozen",
        "bring it into a warm place, or use a sump heater or warm air; never a flame",
        "drain a little first: water or slush comes before the oil",
        "start and watch the gauge: stop if nothing shows within ten seconds",
    ),
    20,
    Access.OUTSIDE,
    (PRESSURE_BACK_AFTER_THAW,),
    CP,
    tools=("heated room or sump heater", "clean jar"),
    cautions=(*RUNNING, Caution.FIRE, Caution.USED_OIL, Caution.WASTE),
    destroys="the ice itself",
    keep="draw a little from the drain plug into a jar before heating",
    needs_running=True,
    waits_minutes=240,
    also=("let it thaw", "warm it up in the garage"),
)

# ---------------------------------------------------------------------- oil drained

LOOK_THROUGH_THE_DRAIN = Inspection(
    "look_through_the_drain",
    Station.SUCTION,
    "look at pickup and sump floor through the drain hole",
    (
        "oil drained through a clean cloth or strainer; let it drip off",
        "small camera through drain or level hole: pickup in place, screen clear, floor clean?",
        "do not poke: what lies on the screen tells where it came from",
    ),
    15,
    Access.DRAINED,
    (
        PICKUP_FELL_OFF,
        SCREEN_BLOCKED,
        FOREIGN_MATERIAL_ON_SCREEN,
        CLOTH_ON_SCREEN,
        LEFTOVER_FOUND,
        SLUDGE_SEEN,
        ICE_AT_SCREEN,
        WATER_AT_THE_DRAIN,
    ),
    CP,
    tools=("inspection camera", "lamp", "clean tray"),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    keep="take pictures; note how the light falls",
    also=("borescope", "endoscope in the oil pan", "camera in the drain plug"),
)

# ------------------------------------------------------------------------ sump off

CATCH_SUMP_CONTENTS = Inspection(
    "catch_sump_contents",
    Station.SUCTION,
    "see what lies in the sump before anything is wiped",
    (
        "photograph sump and pickup as they come apart, with a scale",
        "magnet and white tray; bag and label what lies in each corner and under the pickup",
        "do not hose, wipe or blow",
    ),
    15,
    Access.SUMP_OFF,
    (
        METAL_IN_PAN,
        PISTON_OR_PIN_BROKEN,
        SMALL_PART_LEFT_OUT,
        PIECE_FOUND_INSIDE,
        LEFTOVER_FOUND,
        SLUDGE_SEEN,
        SEALER_IN_SUMP,
        PLASTIC_ON_SCREEN,
        PICKUP_FELL_OFF,
        WATER_AT_THE_DRAIN,
    ),
    CP,
    tools=("camera", "magnet", "white tray", "bags"),
    cautions=(
        Caution.LIFTING,
        Caution.HOT,
        Caution.BATTERY,
        Caution.ASBESTOS,
        Caution.USED_OIL,
        Caution.SHARP,
        Caution.WASTE,
    ),
    destroys="how the debris lay",
    keep="photographs, and a labelled bag from each place",
    also=("check the oil pan", "what is in the sump", "drop the pan"),
)
LOOK_AT_SUMP_FLOOR = Inspection(
    "look_at_sump_floor",
    Station.SUCTION,
    "sump floor: dent, or print of the pickup",
    (
        "straightedge across the floor",
        "look for a print on the floor and a bright rim on the screen",
    ),
    5,
    Access.SUMP_OFF,
    (SUMP_DENTED, PICKUP_WITNESS_MARK),
    HB17,
    tools=("straightedge", "lamp"),
    cautions=(Caution.SHARP,),
)
LOOK_AT_THE_SCREEN = Inspection(
    "look_at_the_screen",
    Station.SUCTION,
    "look at the pickup screen, its mesh and its bypass",
    (
        "photograph before touching; estimate how much of the mesh is covered",
        "take off and bag what lies on it: sludge, sealer, gasket, plastic, cloth or metal",
        "light through the mesh: holes, tears, varnish; bypass flap shut on its seat",
        "only then wash it, outdoors, no flame",
    ),
    10,
    Access.SUMP_OFF,
    (
        SCREEN_BLOCKED,
        FOREIGN_MATERIAL_ON_SCREEN,
        SLUDGE_ON_SCREEN,
        VARNISH_ON_SCREEN,
        SEALER_ON_SCREEN,
        PLASTIC_ON_SCREEN,
        GASKET_ON_SCREEN,
        CLOTH_ON_SCREEN,
        METAL_IN_SCREEN,
        ICE_AT_SCREEN,
        PASTE_ON_SCREEN,
        METAL_PAST_THE_SCREEN,
        SCREEN_TORN,
        SCREEN_BYPASS_OPEN,
    ),
    TWO_CP,
    tools=("lamp", "camera", "tweezers", "bags"),
    cautions=(Caution.SOLVENT, Caution.EYES, Caution.SHARP),
    destroys="the debris as it lay on the mesh",
    keep="photograph and bag the debris before any solvent",
    also=("check pickup screen", "oil strainer", "pickup gauze"),
)
TWIST_THE_PICKUP = Inspection(
    "twist_the_pickup",
    Station.SUCTION,
    "pickup tube, bolts and bracket: tight by hand",
    (
        "twist and pull the tube gently by hand; no prying",
        "look at bolts, locks and bracket; write down how tight they were on loosening",
    ),
    3,
    Access.SUMP_OFF,
    (PICKUP_TUBE_ROCKS, PICKUP_FIXING_LOOSE, PICKUP_FELL_OFF),
    GMC,
    tools=("lamp", "torque wrench"),
    cautions=(Caution.SHARP,),
    keep="torque to loosen of each pickup bolt",
    also=("is the pickup loose", "wiggle the pickup tube"),
)
MEASURE_PICKUP_GAP = Inspection(
    "measure_pickup_gap",
    Station.SUCTION,
    "gap from pickup to sump floor, by clay",
    (
        "modelling clay on the pickup, a film of oil or foil over it",
        "sump up with its real gasket, a few bolts tight; then off again",
        "measure the clay at its thinnest; remove every trace of it",
    ),
    20,
    Access.SUMP_OFF,
    (PICKUP_GAP_TOO_SMALL, PICKUP_GAP_TOO_LARGE),
    ELP,
    measures=(PICKUP_GAP,),
    tools=("modelling clay", "sump gasket", "caliper"),
    cautions=(Caution.HEAVY, Caution.SHARP),
    destroys="a print of the pickup on the floor",
    keep="photograph floor and screen first",
    also=("pickup clearance", "clay test", "pickup depth"),
)
LOOK_AT_BAFFLES = Inspection(
    "look_at_baffles",
    Station.SUCTION,
    "sump baffles, trap doors and the way to the pickup",
    (
        "all plates there, fast, right way round; doors swing towards the pickup",
        "pour clean oil in each corner, sump level: does all of it run to the pickup?",
    ),
    10,
    Access.SUMP_OFF,
    (BAFFLE_MISSING_OR_LOOSE, OIL_TRAPPED_IN_SUMP),
    SLO,
    tools=("lamp", "clean oil"),
    cautions=(Caution.SHARP,),
    also=("check the baffle", "trap door"),
)
LOOK_AT_THE_TRAY = Inspection(
    "look_at_the_tray",
    Station.SUCTION,
    "windage tray: cracks, rub marks, oil line",
    (
        "photograph the tray in place before its nuts are touched",
        "look for cracks at the fixings, bright rubs and cuts, and slack nuts",
        "find the ring left by the oil and compare it with the crank's path",
    ),
    10,
    Access.TRAY_OFF,
    (TRAY_RUBBED, TRAY_BROKEN_OR_MISSING, OIL_LINE_AT_CRANK),
    WTS,
    tools=("lamp", "camera"),
    cautions=(Caution.SHARP,),
    keep="photograph rub marks before the tray is cleaned",
    also=("check windage tray",),
)
TURN_CRANK_PAST_TRAY = Inspection(
    "turn_crank_past_tray",
    Station.SUCTION,
    "clearance of rods and counterweights to the tray",
    (
        "ignition and fuel off, plugs out; tray bolted up with clay where it is nearest",
        "turn the engine by hand two full turns, both ways; fingers out",
        "measure the clay; 0.060 inch (1.5 mm) is little enough",
    ),
    20,
    Access.TRAY_OFF,
    (TRAY_RUBBED,),
    WTS,
    tools=("clay", "feeler gauges", "bar"),
    cautions=(Caution.HAND_TURN, Caution.SHARP),
    keep="do not turn it once metal has been seen in the sump",
)
LOOK_AT_HEAD_RETURNS = Inspection(
    "look_at_head_returns",
    Station.SUCTION,
    "oil returns in the heads",
    (
        "engine stopped; lamp and wire in each return, catch what comes",
        "pour oil in: it must run away at once",
    ),
    10,
    Access.VALVE_COVER_OFF,
    (RETURNS_BLOCKED,),
    OST,
    tools=("lamp", "soft wire", "clean oil"),
    cautions=(Caution.HOT,),
    also=("check drain back holes",),
)
LOOK_AT_VALLEY_RETURNS = Inspection(
    "look_at_valley_returns",
    Station.SUCTION,
    "oil returns in the valley",
    ("lamp and wire in each return", "look for gasket or sealer over the holes"),
    15,
    Access.VALLEY_OPEN,
    (RETURNS_BLOCKED,),
    OST,
    tools=("lamp", "soft wire"),
    cautions=(Caution.HOT,),
)

# ---------------------------------------------------------------------- pickup off

BUBBLE_TEST_THE_SUCTION = Inspection(
    "bubble_test_the_suction",
    Station.SUCTION,
    "bubble test of pickup tube and joint",
    (
        "look at the O-ring or gasket first: cut, flat, doubled, missing?",
        "stop the pump end, put tube and joint under solvent in a tray",
        "2 to 3 psi (0.2 bar) from a hand pump, no more; watch for bubbles at joint, braze and tube",
    ),
    20,
    Access.PICKUP_OFF,
    (BUBBLES_IN_JOINT_TEST, PICKUP_TUBE_CRACK_SEEN, SUCTION_SEAL_CUT_OR_MISSING),
    P06,
    tools=("tray", "solvent", "stopper", "hand pump"),
    cautions=(Caution.SOLVENT, Caution.FIRE, Caution.PRESSURE, Caution.EYES),
    destroys="the press fit of the tube: renew a pressed-in pickup once it was out",
    keep="photograph seal and seat before the tube is drawn; keep the old seal",
    also=("leak test the pickup", "blow into the pickup tube", "check pickup o-ring"),
)

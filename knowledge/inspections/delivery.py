"""How to look at filter, cooler, galleries and their plugs."""

from knowledge.cautions import RUNNING
from knowledge.findings.behaviour import GOOD_AT_PUMP_LOW_IN_GALLERY, PORTS_DIFFER, PUMP_PORT_LOW
from knowledge.findings.debris import (
    BRIGHT_SOFT_METAL,
    CARBON_FLAKES,
    COPPER_FLAKES,
    FINE_DUST_ONLY,
    GREY_SOFT_FLAKES,
    HARD_CHIPS,
    LINING_STRIP,
    MAGNETIC_METAL,
    METAL_IN_FILTER,
)
from knowledge.findings.delivery import (
    ANTI_DRAINBACK_HARD,
    BYPASS_VALVE_MISFITTED,
    COOLER_BYPASSED_CURES,
    COOLER_FOUND_BLOCKED,
    COOLER_STAYS_COLD,
    FILTER_BULGED,
    FILTER_BURST,
    FILTER_BYPASS_STUCK_OPEN,
    FILTER_BYPASS_STUCK_SHUT,
    FILTER_BYPASS_WITNESS,
    FILTER_COLLAPSED,
    FILTER_DROP_HIGH,
    FILTER_EMPTY_AFTER_STANDING,
    FILTER_MISFITTED,
    FILTER_NOT_LISTED,
    FILTER_PACKED,
    FILTER_SEAT_LEAKS,
    FILTER_STAYS_COLD,
    GASKET_SHREDS_FOUND,
    MILKY_FILM_IN_FILTER,
    NEW_FILTER_CURED_IT,
    REMOTE_HOSES_CROSSED,
)
from knowledge.findings.delivery_galleries import (
    ALL_PLUGS_ACCOUNTED_FOR,
    GALLERY_FOUND_BLOCKED,
    GALLERY_PLUG_FOUND_MISSING,
    GALLERY_PLUG_FOUND_TOO_DEEP,
    GALLERY_PLUG_IN_WRONG_PASSAGE,
    GALLERY_PLUG_LIES_IN_SUMP,
    GALLERY_SEAL_FOUND_BAD,
    GALLERY_WALL_WEEPS,
    OIL_STREAMS_FROM_OPEN_HOLE,
    OIL_WASH_AT_GALLERY_SEAL,
    ONE_BEARING_GETS_NO_OIL,
)
from knowledge.findings.topend import CAM_BEARING_POURS, LIFTER_BORE_POURS, TENSIONER_FLOODS
from knowledge.findings.topend_feeds import DISTRIBUTOR_BORE_POURS, JETS_RUN_AT_LOW_PRESSURE
from knowledge.sources import CLV, CUT, FLV, HB01, HB04, MON, NE1, PRM, PSP, TML
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Access, Caution, Inspection, Station

PRIMING = (Caution.PRIMING, Caution.ROTATING, Caution.EYES, Caution.BATTERY)

# ------------------------------------------------------------------------------ the filter

LOOK_AT_THE_FILTER = Inspection(
    "look_at_the_filter",
    Station.DELIVERY,
    "look at the filter as it sits",
    (
        "engine stopped: look at can, seat and gasket with a lamp",
        "read the number and compare it with the list for this engine",
        "remote filter: follow each hose from in to out",
    ),
    5,
    Access.OUTSIDE,
    (FILTER_BULGED, FILTER_BURST, FILTER_SEAT_LEAKS, FILTER_NOT_LISTED, REMOTE_HOSES_CROSSED),
    PRM,
    tools=("lamp", "parts list"),
    cautions=(Caution.HOT, Caution.USED_OIL),
    also=("check oil filter", "is it the right filter"),
)
FEEL_FILTER_AND_COOLER = Inspection(
    "feel_filter_and_cooler",
    Station.DELIVERY,
    "feel whether filter and cooler warm up",
    (
        "start cold and only while pressure shows",
        "feel, or read with an infrared gun, filter and both cooler lines as the engine warms",
    ),
    10,
    Access.OUTSIDE,
    (FILTER_STAYS_COLD, COOLER_STAYS_COLD),
    CP,
    tools=("infrared thermometer",),
    cautions=RUNNING,
    needs_running=True,
    also=("is the filter getting hot", "touch the filter"),
)
GAUGE_BOTH_SIDES_OF_THE_FILTER = Inspection(
    "gauge_both_sides_of_the_filter",
    Station.DELIVERY,
    "a gauge before and a gauge behind the filter",
    (
        "fit two gauges, before the filter and in the gallery",
        "read both warm at idle, 2000 and 3000, then swap the gauges and repeat",
    ),
    25,
    Access.GAUGE_PORT,
    (FILTER_DROP_HIGH, PORTS_DIFFER, GOOD_AT_PUMP_LOW_IN_GALLERY, PUMP_PORT_LOW),
    TML,
    tools=("two gauges", "adapters", "oil-proof hose"),
    cautions=RUNNING,
    needs_running=True,
    also=("pressure drop across the filter",),
)
LOOK_WHERE_THE_FILTER_SAT = Inspection(
    "look_where_the_filter_sat",
    Station.DELIVERY,
    "filter off: seat, thread, gaskets, flap and oil inside",
    (
        "photograph gasket and seat before wiping",
        "count the gaskets, try thread and stem, look for every ring",
        "see whether the filter was full, and press the rubber flap in its holes",
    ),
    5,
    Access.FILTER_OFF,
    (
        FILTER_MISFITTED,
        FILTER_BULGED,
        FILTER_EMPTY_AFTER_STANDING,
        ANTI_DRAINBACK_HARD,
    ),
    FLV,
    tools=("lamp", "camera"),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    destroys="how gasket and seat sat on each other",
    keep="photograph the seat; keep the old filter",
    also=("double gasket check", "anti drain valve"),
)
CUT_THE_FILTER_OPEN = Inspection(
    "cut_the_filter_open",
    Station.DELIVERY,
    "cut the filter open and spread the element",
    (
        "let it drain, overnight where time allows",
        "cut with a filter cutter, never a saw: its chips look like engine metal",
        "look at core, clean side and bypass mark, then unfold the pleats in a white tray",
        "sweep with a magnet; bag what is found",
    ),
    15,
    Access.FILTER_CUT,
    (
        FILTER_COLLAPSED,
        FILTER_PACKED,
        FILTER_BYPASS_WITNESS,
        MILKY_FILM_IN_FILTER,
        GASKET_SHREDS_FOUND,
        METAL_IN_FILTER,
        FINE_DUST_ONLY,
    ),
    CUT,
    tools=("filter cutter", "white tray", "magnet", "gloves"),
    cautions=(Caution.SHARP, Caution.USED_OIL, Caution.WASTE),
    destroys="the filter",
    keep="photograph the pleats with a scale, bag debris",
    waits_minutes=60,
    also=("cut open oil filter", "dissect the filter", "inspect filter"),
)
SORT_WHAT_THE_FILTER_HELD = Inspection(
    "sort_what_the_filter_held",
    Station.DELIVERY,
    "sort the debris by magnet, magnifier and bending",
    (
        "rinse in a little solvent, dry on white paper",
        "part it: magnetic, bright and soft, copper, grey flakes, fibre, black and hard",
        "photograph each heap with a scale and label it with where it came from",
    ),
    10,
    Access.FILTER_CUT,
    (
        MAGNETIC_METAL,
        BRIGHT_SOFT_METAL,
        COPPER_FLAKES,
        GREY_SOFT_FLAKES,
        LINING_STRIP,
        CARBON_FLAKES,
        HARD_CHIPS,
        GASKET_SHREDS_FOUND,
    ),
    CUT,
    tools=("magnet", "magnifier", "solvent", "white paper"),
    cautions=(Caution.SOLVENT, Caution.SHARP, Caution.WASTE),
    keep="keep the heaps bagged until sign-off",
    also=(
        "what is the metal in the filter",
        "magnet through the filter debris",
    ),
)
CHECK_THE_BYPASS_IN_THE_HEAD = Inspection(
    "check_the_bypass_in_the_head",
    Station.DELIVERY,
    "filter head: does the bypass valve seat and move",
    (
        "lamp on seat and spring",
        "push the valve gently with a blunt pick: it must lift and come back",
    ),
    10,
    Access.FILTER_OFF,
    (BYPASS_VALVE_MISFITTED, FILTER_BYPASS_STUCK_OPEN, FILTER_BYPASS_STUCK_SHUT),
    HB01,
    tools=("lamp", "blunt pick"),
    cautions=(Caution.HOT, Caution.EYES),
    also=(
        "filter bypass valve",
        "check the bypass",
    ),
)
CHANGE_THE_FILTER_AND_READ_AGAIN = Inspection(
    "change_the_filter_and_read_again",
    Station.DELIVERY,
    "fit a new listed filter, nothing else, and read again",
    (
        "note warm readings first; change the filter alone and top up to the mark",
        "watch the gauge from the first second; stop if nothing shows in ten",
        "compare at the same oil temperature",
    ),
    20,
    Access.FILTER_OFF,
    (NEW_FILTER_CURED_IT,),
    CP,
    tools=("listed filter", "trusted gauge"),
    cautions=(*RUNNING, Caution.WASTE),
    destroys="the baseline, if it was not written down",
    keep="keep the old filter for cutting",
    needs_running=True,
    also=(
        "try another filter",
        "swap the filter",
    ),
)

# ------------------------------------------------------------------------------ the cooler

LOOP_THE_COOLER_OUT = Inspection(
    "loop_the_cooler_out",
    Station.DELIVERY,
    "bypass the cooler and look into its lines",
    (
        "cold engine: join feed and return with rated hose, or fit the maker's blank",
        "blow gently through cooler and each line; look for loose liner and kinks",
        "read the pressure again, briefly, watching the oil temperature",
    ),
    45,
    Access.DRAINED,
    (COOLER_BYPASSED_CURES, COOLER_FOUND_BLOCKED),
    HB01,
    tools=("rated hose and fittings", "low-pressure air", "trusted gauge"),
    cautions=(*RUNNING, Caution.PRESSURE, Caution.EYES),
    needs_running=True,
    also=("bypass oil cooler", "check cooler lines"),
)

# --------------------------------------------------------------------------- the galleries

PLUG_FINDINGS = (
    GALLERY_PLUG_FOUND_MISSING,
    GALLERY_PLUG_FOUND_TOO_DEEP,
    GALLERY_PLUG_IN_WRONG_PASSAGE,
)

COUNT_PLUGS_AT_THE_FRONT = Inspection(
    "count_plugs_at_the_front",
    Station.DELIVERY,
    "count the gallery plugs at the front, look at the seals",
    (
        "compare each place with the maker's drawing, behind the timing gear too",
        "measure the depth of each plug; prove the cross-drilling behind it with a wire",
        "look at every ring, tube and gasket that seals a passage",
    ),
    20,
    Access.FRONT_COVER_OFF,
    (*PLUG_FINDINGS, GALLERY_SEAL_FOUND_BAD),
    CLV,
    tools=("plug drawing", "lamp", "wire", "depth gauge"),
    keep="photograph before any plug is touched",
    also=("check front galley plugs", "plugs behind timing chain"),
)
COUNT_PLUGS_IN_THE_VALLEY = Inspection(
    "count_plugs_in_the_valley",
    Station.DELIVERY,
    "count the gallery plugs in the valley",
    (
        "compare with the drawing; one may hide under the distributor or behind a lifter",
        "mirror and lamp; depth and seal of each",
    ),
    20,
    Access.VALLEY_OPEN,
    PLUG_FINDINGS,
    PSP,
    tools=("plug drawing", "mirror", "lamp"),
    keep="photograph before any plug is touched",
    also=("lifter valley plug", "plug under the intake"),
)
COUNT_PLUGS_AT_THE_REAR = Inspection(
    "count_plugs_at_the_rear",
    Station.DELIVERY,
    "count the gallery plugs at the rear, and close the count",
    (
        "compare with the drawing, the inner plug of a double one as well",
        "check that a plug is not turned or driven over the rear main's feed",
        "call the count good only when front, valley and rear were all seen",
    ),
    20,
    Access.FLYWHEEL_OFF,
    (*PLUG_FINDINGS, ALL_PLUGS_ACCOUNTED_FOR),
    PSP,
    tools=("plug drawing", "lamp", "wire"),
    cautions=(Caution.LIFTING, Caution.HEAVY),
    keep="photograph before any plug is touched",
    also=("rear galley plug", "plugs behind the flywheel"),
)
LOOK_FOR_A_PLUG_IN_THE_SUMP = Inspection(
    "look_for_a_plug_in_the_sump",
    Station.DELIVERY,
    "sump off: look for a fallen plug and gasket shreds",
    ("look before wiping", "bag what lies there by zone"),
    5,
    Access.SUMP_OFF,
    (GALLERY_PLUG_LIES_IN_SUMP, GASKET_SHREDS_FOUND),
    CP,
    tools=("lamp", "bags"),
    cautions=(Caution.USED_OIL, Caution.LIFTING),
    keep="photograph the sump as dropped",
    also=("plug in the pan",),
)

# ---------------------------------------------------------------- oil watched under pressure

PRIME_AND_WATCH_THE_FRONT = Inspection(
    "prime_and_watch_the_front",
    Station.DELIVERY,
    "put the circuit under oil pressure, front cover off, and watch",
    (
        "turn the pump, or feed warm oil from a regulated tank at 30 to 40 psi, tray underneath",
        "watch plug holes, seals, tensioners and cam front; small bleeds may be by design",
        "stop after two minutes without pressure",
    ),
    45,
    Access.FRONT_COVER_OFF,
    (OIL_STREAMS_FROM_OPEN_HOLE, OIL_WASH_AT_GALLERY_SEAL, TENSIONER_FLOODS, CAM_BEARING_POURS),
    MON,
    tools=("priming drill or pressure tank", "tray", "lamp"),
    cautions=(*PRIMING, Caution.PRESSURE),
    also=("prime with covers off", "pressure test oil system"),
)
PRIME_AND_WATCH_THE_VALLEY = Inspection(
    "prime_and_watch_the_valley",
    Station.DELIVERY,
    "put the circuit under oil pressure, valley open, and watch",
    (
        "turn the pump with its drill the way the distributor turns, or use a pressure tank",
        "look for streams at plugs, lifter bores, cam bearings and the distributor bore",
    ),
    45,
    Access.VALLEY_OPEN,
    (
        OIL_STREAMS_FROM_OPEN_HOLE,
        LIFTER_BORE_POURS,
        CAM_BEARING_POURS,
        DISTRIBUTOR_BORE_POURS,
    ),
    MON,
    tools=("priming drill or pressure tank", "lamp"),
    cautions=(*PRIMING, Caution.PRESSURE),
    also=("prime with intake off", "watch the lifter valley"),
)
PRIME_AND_WATCH_FROM_BELOW = Inspection(
    "prime_and_watch_from_below",
    Station.DELIVERY,
    "put the circuit under oil pressure, sump off, and watch from below",
    (
        "feed warm oil from a regulated tank, drip tray underneath",
        "turn the crank a quarter turn at a time by hand; note what each bearing shows",
        "look at cam bearings from below, at piston jets and the rear wall",
    ),
    45,
    Access.SUMP_OFF,
    (
        ONE_BEARING_GETS_NO_OIL,
        OIL_STREAMS_FROM_OPEN_HOLE,
        CAM_BEARING_POURS,
        JETS_RUN_AT_LOW_PRESSURE,
    ),
    HB04,
    tools=("pressure tank with regulator and relief", "tray", "face shield", "bar"),
    cautions=(Caution.PRESSURE, Caution.EYES, Caution.LIFTING, Caution.HAND_TURN),
    also=("pressurise the galleries", "watch oil from the bearings"),
)
ROD_THE_GALLERIES = Inspection(
    "rod_the_galleries",
    Station.DELIVERY,
    "brush and light through every gallery, plugs out",
    (
        "look behind each plug before cleaning; keep what comes out",
        "nylon brush, then low air; light or wire must pass to each bearing",
    ),
    60,
    Access.PLUGS_OUT,
    (
        GALLERY_FOUND_BLOCKED,
        GALLERY_PLUG_IN_WRONG_PASSAGE,
        GALLERY_PLUG_FOUND_TOO_DEEP,
    ),
    HB04,
    tools=("nylon gallery brushes", "lamp", "wire", "low-pressure air"),
    cautions=(Caution.PRESSURE, Caution.EYES, Caution.SOLVENT),
    destroys="sealer and debris behind the plugs",
    keep="photograph and bag what lies behind each plug",
    also=(
        "clean out the oil galleries",
        "rifle brush",
    ),
)
SOAP_THE_GALLERY_WALLS = Inspection(
    "soap_the_gallery_walls",
    Station.DELIVERY,
    "low air in the galleries, soap or dye outside",
    (
        "blank the bearings and ports, bare block",
        "low regulated air, soapy water on the walls; or dye and lamp",
    ),
    60,
    Access.CRANK_OUT,
    (GALLERY_WALL_WEEPS,),
    NE1,
    tools=("blanks", "regulated air", "soapy water", "dye and lamp"),
    cautions=(Caution.PRESSURE, Caution.EYES, Caution.HEAVY),
    also=(
        "pressure test the block",
        "porous block",
    ),
)

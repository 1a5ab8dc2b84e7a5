"""Pickup, baffles, tray and returns, and the checks that show them."""

from knowledge import sources
from knowledge.model import (
    EXCEPTIONAL,
    HARDLY_EVER,
    OCCASIONAL,
    RARE,
    VERY_RARE,
    Finding,
    Measure,
    Stage,
    Station,
)
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.suction import findings_sights, findings_sump, quantities
from knowledge.work import Access, Caution, Inspection

PICKUP_TUBE_ROCKS = Finding(
    id="pickup_tube_rocks",
    station=Station.SUCTION,
    says="the pickup tube turns or rocks by hand",
    asks="Pickup tube twisted gently by hand: does it turn or rock in the pump?",
    source=sources.TRUCK_SERVICE_1994,
    denies="the pickup tube is tight in the pump",
    stage=Stage.OPENED,
    normal="tight press fit, or tight bolts",
    why="a tube that moves lets air in above the oil",
    background=EXCEPTIONAL,
    also=("loose pickup tube", "pickup wiggles", "pickup spins in the pump", "press fit lost"),
)
PICKUP_FIXING_LOOSE = Finding(
    id="pickup_fixing_loose",
    station=Station.SUCTION,
    says="the pickup's bolts are loose or missing, or its bracket is broken",
    asks="Pickup bolts loose or missing, or bracket broken?",
    source=sources.CROSSOVER_V6_MANUAL_2007,
    denies="bolts and bracket of the pickup are sound",
    stage=Stage.OPENED,
    normal="bolts tight and locked, bracket whole",
    background=EXCEPTIONAL,
    also=(
        "pickup bolt backed out",
        "broken pickup brace",
        "pickup support cracked",
        "loose strainer",
    ),
)
TWIST_THE_PICKUP = Inspection(
    id="twist_the_pickup",
    station=Station.SUCTION,
    says="pickup tube, bolts and bracket: tight by hand",
    steps=(
        "twist and pull the tube gently by hand; no prying",
        "look at bolts, locks and bracket; note how tight they were as you undo them",
    ),
    minutes=3,
    access=Access.SUMP_OFF,
    reveals=(
        PICKUP_TUBE_ROCKS,
        PICKUP_FIXING_LOOSE,
        findings_sump.PICKUP_FELL_OFF,
        findings_sights.PICKUP_BENT,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "torque wrench"),
    cautions=(Caution.SHARP,),
    keep="loosening torque of each pickup bolt",
    also=("is the pickup loose", "wiggle the pickup tube"),
)

PICKUP_GAP_TOO_SMALL = Finding(
    id="pickup_gap_too_small",
    station=Station.SUCTION,
    says="the gap from pickup to sump floor is tiny or none",
    asks="Gap from pickup to sump floor smaller than it should be?",
    source=COMMON_PRACTICE,
    denies="the pickup is not too near the floor",
    stage=Stage.OPENED,
    normal="about 1/4 to 3/8 inch (6 to 10 mm), never below 3/16 inch (4.8 mm)",
    why="a tiny gap throttles the suction as a blocked screen does",
    background=HARDLY_EVER,
    also=(
        "pickup too close to the pan",
        "pickup hits the bottom of the pan",
        "no clearance under pickup",
        "pickup sits on the pan floor",
    ),
)
PICKUP_GAP_TOO_LARGE = Finding(
    id="pickup_gap_too_large",
    station=Station.SUCTION,
    says="the gap from pickup to sump floor is too large",
    asks="Gap from pickup to sump floor larger than it should be?",
    source=COMMON_PRACTICE,
    denies="the pickup is not too far from the floor",
    stage=Stage.OPENED,
    normal="about 1/4 to 3/8 inch (6 to 10 mm), not above 1/2 inch (13 mm)",
    background=EXCEPTIONAL,
    also=("pickup too high", "pickup too far off the bottom", "pickup an inch off the pan"),
)
PICKUP_GAP = Measure(
    quantity=quantities.PICKUP_GAP,
    station=Station.SUCTION,
    asks="Gap from pickup to sump floor, with the real gasket fitted?",
    source=sources.OIL_PAN_TIPS,
    also=("pickup clearance", "pickup to pan clearance", "pickup depth"),
)
MEASURE_PICKUP_GAP = Inspection(
    id="measure_pickup_gap",
    station=Station.SUCTION,
    says="gap from pickup to sump floor, by clay",
    steps=(
        "modelling clay on the pickup, a film of oil or foil over it",
        "sump on with its real gasket, a few bolts tight; then off again",
        "measure the clay at its thinnest; remove every trace of it",
    ),
    minutes=20,
    access=Access.SUMP_OFF,
    reveals=(PICKUP_GAP_TOO_SMALL, PICKUP_GAP_TOO_LARGE),
    source=idea_from(sources.OIL_PAN_TIPS),
    measures=(PICKUP_GAP,),
    tools=("modelling clay", "sump gasket", "caliper"),
    cautions=(Caution.HEAVY, Caution.SHARP),
    destroys="a print of the pickup on the floor",
    keep="photograph floor and screen first",
    also=("pickup clearance", "clay test", "pickup depth"),
)

BAFFLE_MISSING_OR_LOOSE = Finding(
    id="baffle_missing_or_loose",
    station=Station.SUCTION,
    says="a sump baffle or trap door is missing, loose, bent or stuck",
    asks="Sump baffle or trap door missing, loose, bent or stuck?",
    source=sources.SUMP_TILT_TEST,
    denies="baffles and trap doors are in place and swing",
    stage=Stage.OPENED,
    normal="all fitted and tight; doors swing toward the pickup",
    background=EXCEPTIONAL,
    also=("baffle broke off", "trap door stuck open", "no baffle in the pan", "loose baffle plate"),
)
OIL_TRAPPED_IN_SUMP = Finding(
    id="oil_trapped_in_sump",
    station=Station.SUCTION,
    says="oil stays trapped in one part of the sump, away from the pickup",
    asks="Does oil stay trapped in part of the sump, away from the pickup?",
    source=COMMON_PRACTICE,
    denies="all oil runs to the pickup",
    stage=Stage.OPENED,
    normal="all of it runs to the pickup when level",
    background=RARE,
    also=(
        "oil sits in the front of the pan",
        "pan does not drain to pickup",
        "oil behind the baffle",
    ),
)
LOOK_AT_BAFFLES = Inspection(
    id="look_at_baffles",
    station=Station.SUCTION,
    says="sump baffles, trap doors and the way to the pickup",
    steps=(
        "all plates fitted, tight, right way round; doors swing toward the pickup",
        "pour clean oil in each corner, sump level: does it all run to the pickup?",
    ),
    minutes=10,
    access=Access.SUMP_OFF,
    reveals=(BAFFLE_MISSING_OR_LOOSE, OIL_TRAPPED_IN_SUMP),
    source=COMMON_PRACTICE,
    tools=("lamp", "clean oil"),
    cautions=(Caution.SHARP,),
    also=("check the baffle", "trap door"),
)

TRAY_RUBBED = Finding(
    id="tray_rubbed",
    station=Station.SUCTION,
    says="the windage tray is polished or cut by rods or counterweights",
    asks="Windage tray polished or cut by rods or counterweights?",
    source=idea_from(sources.WINDAGE_TRAY_ARTICLE),
    denies="nothing has touched the windage tray",
    stage=Stage.OPENED,
    normal="no contact through two turns by hand",
    background=VERY_RARE,
    also=("rods hit the tray", "windage tray rubbing", "counterweight marks on tray"),
)
TRAY_BROKEN_OR_MISSING = Finding(
    id="tray_broken_or_missing",
    station=Station.SUCTION,
    says="the windage tray is cracked, loose or missing",
    asks="Windage tray cracked, loose, or missing where one belongs?",
    source=idea_from(sources.WINDAGE_TRAY_ARTICLE),
    denies="the windage tray is whole and tight",
    stage=Stage.OPENED,
    normal="whole, tight, clear of the rods",
    background=OCCASIONAL,
    also=("windage tray cracked", "tray came loose", "no windage tray", "tray broke in pieces"),
)
OIL_LINE_AT_CRANK = Finding(
    id="oil_line_at_crank",
    station=Station.SUCTION,
    says="the ring left by the oil reaches the path of crank or rods",
    asks="Does the ring the oil left reach the path of crank or rods?",
    source=COMMON_PRACTICE,
    denies="the ring left by the oil stays below the crank's path",
    stage=Stage.OPENED,
    normal="well below the crank's path",
    background=RARE,
    also=("crank dips in the oil", "rods splash in oil", "oil mark too high in the block"),
)
LOOK_AT_THE_TRAY = Inspection(
    id="look_at_the_tray",
    station=Station.SUCTION,
    says="windage tray: cracks, rub marks, oil line",
    steps=(
        "photograph the tray in place before you touch its nuts",
        "look for cracks at the fixings, bright rubs and cuts, and loose nuts",
        "find the ring the oil left and compare it with the crank's path",
    ),
    minutes=10,
    access=Access.TRAY_OFF,
    reveals=(TRAY_RUBBED, TRAY_BROKEN_OR_MISSING, OIL_LINE_AT_CRANK),
    source=COMMON_PRACTICE,
    tools=("lamp", "camera"),
    cautions=(Caution.SHARP,),
    keep="photograph rub marks before you clean the tray",
    also=("check windage tray",),
)

TURN_CRANK_PAST_TRAY = Inspection(
    id="turn_crank_past_tray",
    station=Station.SUCTION,
    says="clearance of rods and counterweights to the tray",
    steps=(
        "ignition and fuel off, plugs out; tray bolted up with clay where it is nearest",
        "turn the engine by hand two full turns, both ways; fingers out",
        "measure the clay; 0.060 inch (1.5 mm) is the least",
    ),
    minutes=20,
    access=Access.TRAY_OFF,
    reveals=(TRAY_RUBBED,),
    source=COMMON_PRACTICE,
    tools=("clay", "feeler gauges", "bar"),
    cautions=(Caution.HAND_TURN, Caution.SHARP),
    keep="do not turn it once you have seen metal in the sump",
)

RETURNS_BLOCKED = Finding(
    id="returns_blocked",
    station=Station.SUCTION,
    says="the oil returns from heads or valley are blocked",
    asks="Oil return holes in heads, valley or covers blocked or masked?",
    source=idea_from(sources.OIL_STARVATION_ARTICLE),
    denies="the oil returns are clear",
    stage=Stage.OPENED,
    normal="clear to the sump",
    background=EXCEPTIONAL,
    also=("drain holes plugged", "oil returns sludged up", "drainback holes covered by gasket"),
)
LOOK_AT_HEAD_RETURNS = Inspection(
    id="look_at_head_returns",
    station=Station.SUCTION,
    says="oil returns in the heads",
    steps=(
        "engine stopped; light and wire in each return, catch what comes",
        "pour oil in: it must run away at once",
    ),
    minutes=10,
    access=Access.VALVE_COVER_OFF,
    reveals=(RETURNS_BLOCKED,),
    source=COMMON_PRACTICE,
    tools=("lamp", "soft wire", "clean oil"),
    cautions=(Caution.HOT,),
    also=("check drain back holes",),
)

LOOK_AT_VALLEY_RETURNS = Inspection(
    id="look_at_valley_returns",
    station=Station.SUCTION,
    says="oil returns in the valley",
    steps=("light and wire in each return", "look for gasket or sealer over the holes"),
    minutes=15,
    access=Access.VALLEY_OPEN,
    reveals=(RETURNS_BLOCKED,),
    source=COMMON_PRACTICE,
    tools=("lamp", "soft wire"),
    cautions=(Caution.HOT,),
)

PICKUP_TUBE_CRACK_SEEN = Finding(
    id="pickup_tube_crack_seen",
    station=Station.SUCTION,
    says="there is a crack, pinhole or braze gap in the pickup tube",
    asks="Pickup tube: a crack, a pinhole or a gap in the brazing?",
    source=sources.CROSSOVER_V6_MANUAL_2007,
    denies="the pickup tube is sound",
    stage=Stage.OPENED,
    normal="sound; dye or solvent shows nothing",
    background=EXCEPTIONAL,
    also=("cracked pickup tube", "hole in the suction pipe", "split pickup", "bad braze joint"),
)
SUCTION_SEAL_CUT_OR_MISSING = Finding(
    id="suction_seal_cut_or_missing",
    station=Station.SUCTION,
    says="the suction O-ring or gasket is cut, flat, wrong or missing",
    asks="Suction O-ring or gasket cut, flat, wrong or missing?",
    source=sources.V8_PUMP_SERVICE_2006,
    denies="the suction seal is whole and supple",
    stage=Stage.OPENED,
    normal="one seal, supple, whole, oiled",
    why="here the pump draws air before it draws oil",
    background=EXCEPTIONAL,
    also=(
        "pinched o-ring",
        "pickup o ring torn",
        "no o-ring on pickup",
        "hard flat oring",
        "wrong o-ring fitted",
    ),
)
BUBBLES_IN_JOINT_TEST = Finding(
    id="bubbles_in_joint_test",
    station=Station.SUCTION,
    says="bubbles rise from tube or joint in the solvent test",
    asks="Pickup tube under solvent, 2 to 3 psi of air inside: do bubbles rise?",
    source=COMMON_PRACTICE,
    denies="no bubbles in the solvent test",
    stage=Stage.OPENED,
    normal="no bubbles",
    background=EXCEPTIONAL,
    also=("pickup leaks air on test", "bubbles at the joint", "failed leak test"),
)
BUBBLE_TEST_THE_SUCTION = Inspection(
    id="bubble_test_the_suction",
    station=Station.SUCTION,
    says="bubble test of pickup tube and joint",
    steps=(
        "look at the O-ring or gasket first: cut, flat, doubled, missing?",
        "plug the pump end, put tube and joint under solvent in a tray",
        "2 to 3 psi (0.2 bar) from a hand pump, no more; watch for bubbles at joint, braze and "
        "tube",
    ),
    minutes=20,
    access=Access.PICKUP_OFF,
    reveals=(BUBBLES_IN_JOINT_TEST, PICKUP_TUBE_CRACK_SEEN, SUCTION_SEAL_CUT_OR_MISSING),
    source=COMMON_PRACTICE,
    tools=("tray", "solvent", "stopper", "hand pump"),
    cautions=(Caution.SOLVENT, Caution.FIRE, Caution.PRESSURE, Caution.EYES),
    destroys="the press fit of the tube: renew a pressed-in pickup once it has been out",
    keep="photograph seal and seat before you pull the tube; keep the old seal",
    also=("leak test the pickup", "blow into the pickup tube", "check pickup o-ring"),
)

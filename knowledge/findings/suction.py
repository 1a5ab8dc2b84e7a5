"""What can be told, seen and measured at pickup, suction line and sump.

What lies on the screen or in the sump is in ``findings/suction_debris.py``.
"""

from knowledge.sources import (
    AZN,
    CAV,
    ELP,
    GMC,
    HB05,
    HB17,
    OST,
    P06,
    SLO,
    WTS,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import (
    OCCASIONAL,
    RARE,
    VERY_RARE,
    Finding,
    Kind,
    Measure,
    Stage,
    Station,
)

# ------------------------------------------------------------------- told by the person

TRAY_VERY_OLD = Finding(
    "tray_very_old",
    Station.SUCTION,
    "a windage tray decades old was kept or fitted again",
    "Is the windage tray an old stock one, decades old, used again?",
    CP,
    denies="the windage tray is not an old one used again",
    kind=Kind.HISTORY,
    stage=Stage.TOLD,
    why="thin old sheet metal fatigues: it cracks, works loose and meets the rods",
    also=("50 year old windage tray", "original tray reused", "stock tray from the sixties"),
)
PRESSURE_BACK_AFTER_THAW = Finding(
    "pressure_back_after_thaw",
    Station.SUCTION,
    "the pressure was back once the frozen engine had thawed",
    "Did it have little or no pressure in frost, and was it right again once thawed?",
    CP,
    denies="warming the engine through made no difference",
    stage=Stage.TOLD,
    why="oil that is only stiff builds late; ice lets nothing through until it melts",
    background=VERY_RARE,
    also=(
        "fine after warming the garage",
        "ok once thawed out",
        "pressure came back when it warmed up outside",
        "frozen in the morning",
    ),
)
SOMETHING_MISSED_AFTER_WORK = Finding(
    "something_missed_after_work",
    Station.SUCTION,
    "a rag, cap, plug or small part could not be found after the work",
    "After the last work, was a rag, cap, plug or small part missing?",
    CP,
    denies="every rag, cap and part was accounted for",
    stage=Stage.TOLD,
    normal="all accounted for",
    background=VERY_RARE,
    also=("lost a rag", "missing shop towel", "dropped a bolt in the engine", "cap never found"),
)
TANK_STILL_FULL = Finding(
    "tank_still_full",
    Station.SUCTION,
    "the oil tank is still full although the pressure is gone",
    "Is the oil tank still full although the pressure is gone?",
    CP,
    denies="the tank was not left full",
    stage=Stage.OUTSIDE,
    why="the oil is there and cannot get to the pump: look at hose, union and valve between",
    background=RARE,
    also=("tank full but no pressure", "plenty of oil in tank", "oil not leaving the tank"),
)

# --------------------------------------------------------------- outside, nothing opened

SUCTION_HOSE_FLATTENS = Finding(
    "suction_hose_flattens",
    Station.SUCTION,
    "the suction hose is sucked flat, kinked or soft",
    "Is the suction hose soft or kinked, or does it flatten as the revs rise?",
    CAV,
    denies="the suction hose stays round",
    stage=Stage.OUTSIDE,
    normal="round at every speed",
    background=VERY_RARE,
    also=("hose collapses", "oil line sucked flat", "kinked feed hose", "hose liner came loose"),
)
SUCTION_UNION_LOOSE = Finding(
    "suction_union_loose",
    Station.SUCTION,
    "a union, clamp or hose on the suction side is loose or off",
    "Is a union, clamp or hose between tank or strainer and pump loose or off?",
    HB17,
    denies="hoses and unions on the suction side are tight",
    stage=Stage.OUTSIDE,
    normal="tight, no trace of oil or air",
    background=VERY_RARE,
    also=(
        "feed hose came off",
        "loose fitting on oil tank line",
        "hose clamp slack",
        "suction pipe nut loose",
    ),
)
SUMP_DENTED = Finding(
    "sump_dented",
    Station.SUCTION,
    "the sump is dented or pushed up under the pickup",
    "Is the sump dented or pushed up where the pickup sits?",
    HB17,
    denies="the sump is flat under the pickup",
    stage=Stage.OUTSIDE,
    normal="flat; a straightedge lies down",
    why="a small dent in the wrong place closes the inlet",
    background=OCCASIONAL,
    also=("dented oil pan", "pan caved in", "sump hit a rock", "jack mark on the pan"),
)
OVERFILL_STEADIES_IT = Finding(
    "overfill_steadies_it",
    Station.SUCTION,
    "filled a little over the mark, the pressure comes right",
    "Filled about a quart over the mark for a trial, does the pressure come right?",
    CP,
    denies="filling over the mark changes nothing",
    stage=Stage.OUTSIDE,
    normal="no change with the level within or just over the marks",
    why="oil that covers a leaking joint or a high pickup shuts out the air",
    background=VERY_RARE,
    also=(
        "better with an extra quart",
        "overfilling helps",
        "only steady when overfull",
        "nose down it has pressure",
    ),
)
OIL_SLOW_TO_RETURN = Finding(
    "oil_slow_to_return",
    Station.SUCTION,
    "right after a fast run the stick reads far lower than later",
    "Right after a fast run, does the stick read much lower than ten minutes later?",
    OST,
    denies="the oil is back in the sump soon after stopping",
    stage=Stage.OUTSIDE,
    normal="most of it back within a minute or two when hot",
    background=RARE,
    also=("level drops after revving", "oil stays up top", "takes ages to drain back down"),
)

# ------------------------------------------------------------------- with the sump off

SCREEN_TORN = Finding(
    "screen_torn",
    Station.SUCTION,
    "the pickup screen is torn, holed or off its frame",
    "Is the pickup screen torn, holed, or off its frame?",
    AZN,
    denies="the pickup screen is whole",
    stage=Stage.OPENED,
    normal="whole mesh, fast in its frame",
    background=VERY_RARE,
    also=("hole in the strainer", "mesh broken", "pickup screen missing", "ripped gauze"),
)
SCREEN_BYPASS_OPEN = Finding(
    "screen_bypass_open",
    Station.SUCTION,
    "the bypass of the pickup screen stands open",
    "Does the bypass flap or valve of the pickup screen stand open?",
    AZN,
    denies="the screen's bypass is shut on its seat",
    stage=Stage.OPENED,
    normal="seated against its strap",
    background=VERY_RARE,
    also=("screen flap stuck open", "grommet off its seat", "strainer bypass not closing"),
)
PICKUP_FELL_OFF = Finding(
    "pickup_fell_off",
    Station.SUCTION,
    "the pickup has come off and lies in the sump",
    "Has the pickup come off, or does it lie in the sump?",
    GMC,
    denies="the pickup is in its place",
    stage=Stage.OPENED,
    normal="fast in the pump or block",
    why="the pump draws nothing but air",
    background=VERY_RARE,
    also=(
        "pickup in the bottom of the pan",
        "pickup tube fell out",
        "oil pickup dropped off",
        "strainer came off the pump",
        "pick up tube laying in pan",
    ),
)
PICKUP_TUBE_ROCKS = Finding(
    "pickup_tube_rocks",
    Station.SUCTION,
    "the pickup tube turns or rocks by hand",
    "Twisted gently by hand, does the pickup tube turn or rock in the pump?",
    GMC,
    denies="the pickup tube is tight in the pump",
    stage=Stage.OPENED,
    normal="tight press fit, or tight bolts",
    why="a tube that moves lets air in above the oil",
    background=VERY_RARE,
    also=("loose pickup tube", "pickup wiggles", "pickup spins in the pump", "press fit lost"),
)
PICKUP_FIXING_LOOSE = Finding(
    "pickup_fixing_loose",
    Station.SUCTION,
    "the pickup's bolts are slack or missing, or its bracket is broken",
    "Are the pickup's bolts slack or missing, or is its bracket broken?",
    HB05,
    denies="bolts and bracket of the pickup are sound",
    stage=Stage.OPENED,
    normal="bolts tight and locked, bracket whole",
    background=VERY_RARE,
    also=(
        "pickup bolt backed out",
        "broken pickup brace",
        "pickup support cracked",
        "loose strainer",
    ),
)
PICKUP_TUBE_CRACK_SEEN = Finding(
    "pickup_tube_crack_seen",
    Station.SUCTION,
    "there is a crack, pinhole or braze gap in the pickup tube",
    "Is there a crack, pinhole or gap in the brazing of the pickup tube?",
    HB05,
    denies="the pickup tube is sound",
    stage=Stage.OPENED,
    normal="sound; dye or solvent shows nothing",
    background=VERY_RARE,
    also=("cracked pickup tube", "hole in the suction pipe", "split pickup", "bad braze joint"),
)
SUCTION_SEAL_CUT_OR_MISSING = Finding(
    "suction_seal_cut_or_missing",
    Station.SUCTION,
    "the suction O-ring or gasket is cut, flat, wrong or missing",
    "Is the suction O-ring or gasket cut, flat, the wrong one, or missing?",
    P06,
    denies="the suction seal is whole and supple",
    stage=Stage.OPENED,
    normal="one seal, supple, whole, oiled",
    why="the pump takes air here before it takes oil",
    background=VERY_RARE,
    also=(
        "pinched o-ring",
        "pickup o ring torn",
        "no o-ring on pickup",
        "hard flat oring",
        "wrong o-ring fitted",
    ),
)
BUBBLES_IN_JOINT_TEST = Finding(
    "bubbles_in_joint_test",
    Station.SUCTION,
    "bubbles rise from tube or joint in the solvent test",
    "With the tube under solvent and 2 to 3 psi of air inside, do bubbles rise?",
    CP,
    denies="no bubbles in the solvent test",
    stage=Stage.OPENED,
    normal="no bubbles",
    background=VERY_RARE,
    also=("pickup leaks air on test", "bubbles at the joint", "failed leak test"),
)
PICKUP_GAP_TOO_SMALL = Finding(
    "pickup_gap_too_small",
    Station.SUCTION,
    "the gap from pickup to sump floor is tiny or none",
    "Is the gap from pickup to sump floor smaller than it should be?",
    ELP,
    denies="the pickup is not too near the floor",
    stage=Stage.OPENED,
    normal="about 1/4 to 3/8 inch (6 to 10 mm), never below 3/16 inch (4.8 mm)",
    why="a tiny gap throttles the suction as a blocked screen does",
    background=VERY_RARE,
    also=(
        "pickup too close to the pan",
        "pickup hits the bottom of the pan",
        "no clearance under pickup",
        "pickup sits on the pan floor",
    ),
)
PICKUP_GAP_TOO_LARGE = Finding(
    "pickup_gap_too_large",
    Station.SUCTION,
    "the gap from pickup to sump floor is too large",
    "Is the gap from pickup to sump floor larger than it should be?",
    OST,
    denies="the pickup is not too far from the floor",
    stage=Stage.OPENED,
    normal="about 1/4 to 3/8 inch (6 to 10 mm), not above 1/2 inch (13 mm)",
    background=VERY_RARE,
    also=("pickup too high", "pickup too far off the bottom", "pickup an inch off the pan"),
)
PICKUP_WITNESS_MARK = Finding(
    "pickup_witness_mark",
    Station.SUCTION,
    "pickup and sump floor have touched: a mark on one or both",
    "Is there a mark on the sump floor, or a shiny spot on the pickup, where they touched?",
    HB17,
    denies="no mark of the pickup on the floor",
    stage=Stage.OPENED,
    normal="no contact",
    background=VERY_RARE,
    also=("pickup rubbed the pan", "shiny ring in the pan", "pickup print on the floor"),
)
BAFFLE_MISSING_OR_LOOSE = Finding(
    "baffle_missing_or_loose",
    Station.SUCTION,
    "a sump baffle or trap door is missing, loose, bent or stuck",
    "Is a sump baffle or trap door missing, loose, bent or stuck?",
    SLO,
    denies="baffles and trap doors are in place and swing",
    stage=Stage.OPENED,
    normal="all there, fast; doors swing towards the pickup",
    background=RARE,
    also=("baffle broke off", "trap door stuck open", "no baffle in the pan", "loose baffle plate"),
)
OIL_TRAPPED_IN_SUMP = Finding(
    "oil_trapped_in_sump",
    Station.SUCTION,
    "oil stays trapped in one part of the sump, away from the pickup",
    "Does oil stay trapped in one part of the sump, away from the pickup?",
    CP,
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
TRAY_RUBBED = Finding(
    "tray_rubbed",
    Station.SUCTION,
    "the tray is polished or cut by rods or counterweights",
    "Is the windage tray polished or cut by rods or counterweights?",
    WTS,
    denies="nothing has touched the windage tray",
    stage=Stage.OPENED,
    normal="no contact through two turns by hand",
    background=VERY_RARE,
    also=("rods hit the tray", "windage tray rubbing", "counterweight marks on tray"),
)
TRAY_BROKEN_OR_MISSING = Finding(
    "tray_broken_or_missing",
    Station.SUCTION,
    "the windage tray is cracked, loose or not there",
    "Is the windage tray cracked, loose, or missing where one belongs?",
    WTS,
    denies="the windage tray is whole and tight",
    stage=Stage.OPENED,
    normal="whole, tight, clear of the rods",
    background=OCCASIONAL,
    also=("windage tray cracked", "tray came loose", "no windage tray", "tray broke in pieces"),
)
OIL_LINE_AT_CRANK = Finding(
    "oil_line_at_crank",
    Station.SUCTION,
    "the oil line ring reaches the path of crank or rods",
    "Does the ring left by the oil reach the path of crank or rods?",
    CP,
    denies="the oil line stays below the crank's path",
    stage=Stage.OPENED,
    normal="well below the crank's path",
    background=RARE,
    also=("crank dips in the oil", "rods splash in oil", "oil mark too high in the block"),
)
RETURNS_BLOCKED = Finding(
    "returns_blocked",
    Station.SUCTION,
    "the oil returns from heads or valley are blocked",
    "Are the oil return holes of heads, valley or covers blocked or masked?",
    OST,
    denies="the oil returns are clear",
    stage=Stage.OPENED,
    normal="clear to the sump",
    background=RARE,
    also=("drain holes plugged", "oil returns sludged up", "drainback holes covered by gasket"),
)

PICKUP_GAP = Measure(
    "pickup_gap",
    Station.SUCTION,
    "gap from pickup to sump floor",
    "How large is the gap from pickup to sump floor, with the real gasket fitted?",
    "length",
    (0.0, 0.1),
    ELP,
    spread=0.0005,
    also=("pickup clearance", "pickup to pan clearance", "pickup depth"),
)

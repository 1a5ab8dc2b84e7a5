"""Root causes at the suction station."""

from knowledge.sources import (
    AER,
    AZN,
    CAV,
    COMMON_PRACTICE,
    ELP,
    GMC,
    HB01,
    HB05,
    HB17,
    OST,
    SLO,
    TWO_CP,
)
from knowledge.vocabulary import Cause, Rate, Station

PICKUP_SCREEN_BLOCKED = Cause(
    "pickup_screen_blocked",
    Station.SUCTION,
    "oil pickup screen blocked by sludge, sealer, gasket, plastic or metal",
    "the pump starves as flow grows: good cold and at idle, then it falls with revs and time, and "
    "often comes back after a stop, when the debris drops away",
    Rate.VERY_COMMON,
    "++ + + + +",
    "fit a new screen, clean the sump, and find what shed the debris",
    TWO_CP,
    follows="pump cavitates and rattles, bearings wipe",
    also=(
        "plugged pickup screen",
        "clogged oil strainer",
        "blocked sump strainer",
        "pickup gauze choked",
        "oil screen full of crud",
    ),
)
PICKUP_SCREEN_BYPASS_OPEN = Cause(
    "pickup_screen_bypass_open",
    Station.SUCTION,
    "pickup screen torn, loose, or its cold-oil bypass stuck open",
    "debris passes straight into the pump; pressure suffers only through what the debris then does",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "fit a new pickup; clean pump and relief valve of what came through",
    AZN,
    follows="chips under the relief valve, scored or jammed pump",
    also=("hole in the pickup screen", "torn strainer", "screen bypass flap open", "mesh came off"),
)
PICKUP_TUBE_LOOSE = Cause(
    "pickup_tube_loose",
    Station.SUCTION,
    "oil pickup tube worked loose, bolts slack or bracket broken",
    "air is drawn in above the oil: unsteady at all speeds, worse with revs, slow to build; if the "
    "tube drops off, nothing is left at once",
    Rate.COMMON,
    "0 ++ 0 0 ++",
    "fit a new tube and secure it: bolt and bracket, or tack it with the pump stripped",
    GMC,
    follows="the pickup drops into the sump, all pressure lost",
    also=(
        "pickup fell off",
        "pickup tube came loose",
        "loose oil pickup",
        "strainer dropped off",
        "pickup bolt missing",
    ),
)
PICKUP_TUBE_CRACKED = Cause(
    "pickup_tube_cracked",
    Station.SUCTION,
    "crack or pinhole in the oil pickup tube or its brazing",
    "air is drawn in through the crack whenever the oil stands below it: unsteady, slow to build",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "replace the tube; find the vibration or strain that cracked it",
    HB05,
    follows="the tube breaks through, all pressure lost",
    also=("cracked pickup", "split pickup tube", "pinhole in suction pipe", "broken pickup tube"),
)
SUCTION_JOINT_AIR_LEAK = Cause(
    "suction_joint_air_leak",
    Station.SUCTION,
    "suction O-ring, gasket, flange or union leaks air or was left out",
    "air comes in, no oil goes out: late build after standing, foamy and unsteady pressure, and "
    "nothing shows outside",
    Rate.COMMON,
    "+ ++ 0 + +",
    "fit a new seal, oiled, seat the tube fully by hand and tighten evenly",
    HB01,
    follows="prime lost, oil aerated, bearings starved",
    also=(
        "pickup o-ring",
        "o ring left out",
        "sucking air",
        "pump draws air",
        "pinched oil pickup seal",
        "suction gasket leaking",
    ),
)
PICKUP_CLEARANCE_TIGHT = Cause(
    "pickup_clearance_tight",
    Station.SUCTION,
    "pickup too close to the sump floor: wrong pair or gasket",
    "the inlet is throttled as by a part-blocked screen: it falls at high revs, and with cold oil",
    Rate.OCCASIONAL,
    "0 ++ 0 0 ++",
    "set the gap with the real gasket fitted, usually 1/4 to 3/8 inch (6 to 10 mm)",
    ELP,
    follows="pump cavitates, bearings starve at speed",
    also=(
        "pickup touching the pan",
        "pickup too low",
        "no clearance to oil pan",
        "pickup on the bottom",
    ),
)
PICKUP_CLEARANCE_WIDE = Cause(
    "pickup_clearance_wide",
    Station.SUCTION,
    "pickup too far above the sump floor, as a stock one in a deep pan",
    "it comes out of the oil under braking, in bends, on hills, or with the level at the add mark",
    Rate.OCCASIONAL,
    "0 ++ 0 0 ++",
    "fit the pickup that belongs to this sump",
    OST,
    follows="bearings starved in every hard manoeuvre",
    also=("pickup too high", "deep pan with stock pickup", "pickup too short for the pan"),
)
PAN_DENTED = Cause(
    "pan_dented",
    Station.SUCTION,
    "sump pushed up against the pickup by a jack, kerb or grounding",
    "the floor closes the inlet; it begins at once after the knock",
    Rate.OCCASIONAL,
    "0 0 0 0 +",
    "repair or renew the sump, check and renew the pickup",
    HB17,
    follows="pump starves, pickup or tube cracks",
    also=("dented oil pan", "jacked up on the sump", "hit a kerb", "bottomed out", "caved in pan"),
)
ATTITUDE_UNCOVERS_PICKUP = Cause(
    "attitude_uncovers_pickup",
    Station.SUCTION,
    "slope, heel, cornering or mounting angle moves oil off the pickup",
    "it drops to near nothing in the manoeuvre and returns at once, the same way every time",
    Rate.COMMON,
    "0 0 0 0 ++",
    "baffled or larger sump, swinging pickup, right level, angle within the maker's limit",
    SLO,
    follows="rod bearings wipe, one event at a time",
    also=(
        "oil surge",
        "oil slosh in corners",
        "pickup uncovers in turns",
        "engine mounted too steep",
        "boat heeling too far",
    ),
)
BAFFLE_MISSING = Cause(
    "baffle_missing",
    Station.SUCTION,
    "sump baffle or trap door missing, bent, loose or wrong way round",
    "nothing holds the oil at the pickup: it runs off in bends and under braking sooner than usual",
    Rate.OCCASIONAL,
    "0 ++ 0 0 ++",
    "refit or make the baffle; the trap door must swing towards the pickup",
    SLO,
    follows="rod bearings wipe, one event at a time",
    also=("no baffle in the pan", "trap door stuck", "windage baffle left out", "anti surge plate"),
)
WINDAGE_AERATION = Cause(
    "windage_aeration",
    Station.SUCTION,
    "crank whips air into the oil: tray missing, failed or too near",
    "oil full of air reaches the pump, which cavitates: pressure falls and flutters at high revs "
    "and settles when the throttle is closed",
    Rate.OCCASIONAL,
    "0 + 0 0 ++",
    "sound tray or scraper with clearance to the rods, correct oil level",
    AER,
    follows="pump cavitates, lifters collapse, bearings starve",
    also=(
        "windage",
        "crank whipping the oil",
        "frothed up oil",
        "no windage tray",
        "windage tray broke",
    ),
)
DRAINBACK_POOR = Cause(
    "drainback_poor",
    Station.SUCTION,
    "oil held up in heads or valley by blocked or small returns",
    "the sump empties while running: it sags after 10 to 60 seconds at high revs and returns after "
    "idling",
    Rate.OCCASIONAL,
    "+ + 0 0 ++",
    "clear and smooth the returns; larger sump or less oil to the top end",
    OST,
    follows="pickup uncovers, bearings starve on long runs at speed",
    also=(
        "oil stays in the heads",
        "drain back holes plugged",
        "valve covers fill up with oil",
        "sump pumped dry",
    ),
)
SUCTION_HOSE_COLLAPSED = Cause(
    "suction_hose_collapsed",
    Station.SUCTION,
    "suction hose from the oil tank soft, kinked or too small",
    "the hose flattens as the flow grows: it falls at high revs, worse with cold oil",
    Rate.RARE,
    "+ + 0 0 ++",
    "reinforced suction hose of the right bore, no kinks",
    CAV,
    follows="pump cavitates, bearings starve",
    also=("hose sucked flat", "kinked oil line from tank", "suction line too small", "soft hose"),
)
ICE_IN_PICKUP = Cause(
    "ice_in_pickup",
    Station.SUCTION,
    "water in the sump frozen across the pickup screen",
    "ice closes the mesh or the tube: little or no oil comes until the sump thaws",
    Rate.RARE,
    "0 0 0 + 0",
    "thaw with gentle heat, drain, find where the water came from, then look at the bearings",
    COMMON_PRACTICE,
    follows="dry start, bearings wipe",
    also=(
        "frozen pickup",
        "ice in the oil pan",
        "oil screen iced up",
        "condensation froze",
        "no oil pressure on a freezing morning",
    ),
)
FOREIGN_BODY_IN_SUMP = Cause(
    "foreign_body_in_sump",
    Station.SUCTION,
    "rag, paper, cap, plug or other thing left in the sump or suction",
    "it drifts onto the screen or sits in the pipe: pressure falls suddenly, comes and goes, or "
    "never came after the work",
    Rate.OCCASIONAL,
    "- ++ + 0 0",
    "take it out whole, clean sump and pickup, count rags and caps at every job",
    COMMON_PRACTICE,
    follows="pump starves, bearings wipe",
    also=(
        "left a rag in the engine",
        "shop towel in the pan",
        "paper towel sucked into pickup",
        "dropped something in the engine",
        "plug left in the oil pump inlet",
    ),
)

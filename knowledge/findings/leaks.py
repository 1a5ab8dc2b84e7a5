"""Oil seen where it should not be: around, under and behind the engine."""

from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB03, HB07, TMK
from knowledge.vocabulary import COMMON, OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station

# --------------------------------------------------------------- that oil is getting away

OIL_SEEN_OUTSIDE = Finding(
    "oil_seen_outside",
    Station.LEAKS,
    "fresh oil runs down the outside of the engine",
    "Is there fresh, running oil on the outside of the engine?",
    HB07,
    denies="the engine is dry outside",
    normal="damp seams at most",
    why="oil that is outside is missed at the pickup; it also burns",
    background=OCCASIONAL,
    also=("oil leak", "oil leaking", "covered in oil", "engine wet with oil", "oil everywhere"),
)
OIL_ON_THE_GROUND = Finding(
    "oil_on_the_ground",
    Station.LEAKS,
    "a puddle of oil lies under the engine",
    "Is there a puddle of oil on the ground, floor or tray under the engine?",
    CP,
    denies="no oil under the engine",
    normal="a few spots at most",
    background=OCCASIONAL,
    also=(
        "oil on the floor",
        "puddle under the car",
        "oil on the driveway",
        "oil in the drip tray",
    ),
)
OIL_IN_THE_BILGE = Finding(
    "oil_in_the_bilge",
    Station.LEAKS,
    "oil lies in the bilge under the engine",
    "In a boat: is there oil in the bilge or the tray under the engine?",
    CP,
    denies="the bilge is clean",
    normal="clean bilge, dry tray",
    background=RARE,
    also=("oil in bilge water", "black bilge", "bilge full of oil", "oil under the engine in boat"),
)
OIL_OVERBOARD = Finding(
    "oil_overboard",
    Station.LEAKS,
    "an oil film leaves with the cooling water",
    "Is there an oil film on the cooling water that comes out, or round the hull?",
    CP,
    denies="the cooling water is free of oil",
    normal="no film",
    why="a burst cooler loses oil to the water while the engine stays dry outside",
    background=VERY_RARE,
    also=("oil sheen on the water", "rainbow round the boat", "oil in the cooling water outlet"),
)
OIL_ON_BODYWORK = Finding(
    "oil_on_bodywork",
    Station.LEAKS,
    "oil is thrown over bodywork, transom, wheels or screen",
    "Is oil thrown over bodywork, transom, wheels, tyres or windscreen?",
    CP,
    denies="no oil on bodywork or wheels",
    normal="none",
    background=VERY_RARE,
    also=("oil on the windshield", "oil on rear tyre", "oil all down the side", "oil on my boots"),
)
OIL_TRAIL_BEHIND = Finding(
    "oil_trail_behind",
    Station.LEAKS,
    "a trail of oil lies behind the machine",
    "Does it leave a trail of oil behind it?",
    CP,
    denies="no trail of oil behind it",
    normal="none",
    background=VERY_RARE,
    also=("trail of oil", "laid down oil on the track", "oil slick behind", "black flag for oil"),
)
OIL_SPRAYED = Finding(
    "oil_sprayed",
    Station.LEAKS,
    "oil sprays or squirts out while the engine runs",
    "Does oil spray or squirt out anywhere while the engine runs?",
    TMK,
    denies="no oil sprays out",
    normal="none",
    why="only pressure oil squirts: look at filter, lines, sender and gallery plugs",
    background=VERY_RARE,
    also=("oil spraying", "squirting oil", "jet of oil", "oil shooting out", "gushing oil"),
)
DROPS_FALL_WHILE_WATCHED = Finding(
    "drops_fall_while_watched",
    Station.LEAKS,
    "oil drops form and fall while one watches",
    "Wiped dry and watched: do drops form and fall (not just damp)?",
    TMK,
    denies="no drops fall while one watches",
    stage=Stage.OUTSIDE,
    normal="dampness or drops that do not fall may be run on",
    background=RARE,
    also=("dripping oil", "drip drip", "steady drip", "class 3 leak"),
)
LEAKS_ONLY_RUNNING = Finding(
    "leaks_only_running",
    Station.LEAKS,
    "it leaks only while running, more with revs",
    "Does it leak only while running, and more with revs?",
    CP,
    denies="it drips with the engine stopped too",
    normal="no leak at all",
    why="oil that comes only with pressure comes from the pressure side",
    background=RARE,
    also=("leaks when running", "only leaks with pressure", "stops dripping when shut off"),
)
OIL_LOSS_FAST = Finding(
    "oil_loss_fast",
    Station.LEAKS,
    "it loses oil fast: a sump in minutes or hours",
    "Does it lose oil fast, much of a sump within minutes or hours of running?",
    CP,
    denies="it does not lose oil fast",
    normal="no topping up between a day's checks",
    why="the pressure is right until the pickup is bare: the gauge warns last",
    background=RARE,
    also=("lost all its oil", "dumped the oil", "ran out of oil", "pumped all the oil out"),
)
OIL_CAUGHT_FIRE = Finding(
    "oil_caught_fire",
    Station.LEAKS,
    "leaking oil caught fire",
    "Did leaking oil catch fire?",
    CP,
    denies="nothing caught fire",
    normal="never",
    background=VERY_RARE,
    also=("engine fire", "flames from the engine", "oil fire"),
)

# ------------------------------------------------------------------- where it comes from

FILTER_FOUND_LOOSE = Finding(
    "filter_found_loose",
    Station.LEAKS,
    "the oil filter is loose or has come off",
    "Is the oil filter loose, crooked or off?",
    CP,
    denies="the oil filter is tight",
    stage=Stage.OUTSIDE,
    normal="hand tight and a bit, seal evenly squeezed",
    background=VERY_RARE,
    also=("filter finger loose", "oil filter fell off", "filter spun off", "loose oil filter"),
)
OIL_LINE_FOUND_BROKEN = Finding(
    "oil_line_found_broken",
    Station.LEAKS,
    "an oil line, hose or cooler is burst, chafed through or off",
    "Is an oil line, hose or cooler burst, chafed through, cracked or off its fitting?",
    HB03,
    denies="every oil line is whole and on",
    stage=Stage.OUTSIDE,
    normal="whole, dry, clipped clear of heat and edges",
    background=VERY_RARE,
    also=("hose burst", "line chafed", "cooler split", "banjo bolt broke", "hose blew off"),
)
OIL_LINE_FITTING_WET = Finding(
    "oil_line_fitting_wet",
    Station.LEAKS,
    "a fitting of an oil line or cooler is loose or wet",
    "Is any fitting of an oil line or cooler loose or wet with oil?",
    HB03,
    denies="the fittings of the oil lines are dry",
    stage=Stage.OUTSIDE,
    normal="dry and tight",
    background=RARE,
    also=("weeping fitting", "loose union", "oil line leaking", "leaking banjo"),
)
DRAIN_PLUG_FOUND_LOOSE = Finding(
    "drain_plug_found_loose",
    Station.LEAKS,
    "the drain plug is gone or loose, or the drain valve open",
    "Is the drain plug gone, loose or stripped, or a drain valve open?",
    CP,
    denies="the drain plug is tight and dry",
    stage=Stage.OUTSIDE,
    normal="tight and dry on a good washer",
    background=VERY_RARE,
    also=("sump plug gone", "no drain plug", "drain plug dripping", "drain cock open"),
)
SEAL_OR_GASKET_WET = Finding(
    "seal_or_gasket_wet",
    Station.LEAKS,
    "oil runs from a shaft seal, cover or gasket",
    "Does oil run from a crank or cam seal, a cover or a gasket?",
    CP,
    denies="seals and gaskets are dry",
    stage=Stage.OUTSIDE,
    normal="dry, or damp on an old engine",
    background=COMMON,
    also=("gasket leak", "rear main leaking", "leaking valve cover", "front seal wet"),
)
OIL_FROM_BELLHOUSING = Finding(
    "oil_from_bellhousing",
    Station.LEAKS,
    "oil drips from the bellhousing or gets on the clutch",
    "Does oil drip from the bellhousing, or does the clutch slip with oil?",
    CP,
    denies="the bellhousing is dry",
    stage=Stage.OUTSIDE,
    normal="dry",
    why="rear seal, or a rear cam or gallery plug behind the flywheel",
    background=OCCASIONAL,
    also=("oil between engine and gearbox", "clutch slipping oil", "oil at the rear main"),
)
SEVERAL_SEALS_AT_ONCE = Finding(
    "several_seals_at_once",
    Station.LEAKS,
    "several seals began to leak at about the same time",
    "Did several seals or gaskets begin to leak at about the same time?",
    CP,
    denies="no more than one place leaks",
    normal="one at a time",
    why="new leaks all round point to crankcase pressure, not to bad seals",
    background=VERY_RARE,
    also=("all the seals leak", "leaking from everywhere", "blew all the gaskets"),
)
BREATHER_FOUND_BLOCKED = Finding(
    "breather_found_blocked",
    Station.LEAKS,
    "the crankcase breather, its valve or hose is blocked",
    "Is the crankcase breather, its valve or hose blocked, kinked or iced?",
    CP,
    denies="the breather is clear",
    stage=Stage.OUTSIDE,
    normal="one can blow through it",
    background=VERY_RARE,
    also=("pcv plugged", "breather clogged", "vent hose kinked", "iced breather"),
)
DIPSTICK_PUSHED_OUT = Finding(
    "dipstick_pushed_out",
    Station.LEAKS,
    "the dipstick was pushed up or blown out",
    "Was the dipstick pushed up or blown out while running?",
    CP,
    denies="the dipstick stays down",
    normal="stays seated",
    background=VERY_RARE,
    also=("dipstick pops out", "dip stick flew out", "oil out of the dipstick tube"),
)
FILLER_CAP_FOUND_OFF = Finding(
    "filler_cap_found_off",
    Station.LEAKS,
    "the filler cap or dipstick was off or not seated",
    "Was the filler cap or the dipstick found off or not seated?",
    CP,
    denies="filler cap and dipstick were in place",
    stage=Stage.OUTSIDE,
    normal="both seated",
    background=VERY_RARE,
    also=("oil cap left off", "oil cap missing", "dipstick out", "no filler cap"),
)
CUP_PLUG_FOUND_OUT = Finding(
    "cup_plug_found_out",
    Station.LEAKS,
    "a core, cup or gallery plug is out, oil comes from the hole",
    "Is a core, cup or gallery plug out, with oil coming from its hole?",
    CP,
    denies="all outside plugs are in and dry",
    stage=Stage.OUTSIDE,
    normal="all in, staked and dry",
    background=VERY_RARE,
    also=("freeze plug blew out", "welch plug gone", "gallery plug came out", "hole with oil"),
)
SUMP_FOUND_HOLED = Finding(
    "sump_found_holed",
    Station.LEAKS,
    "there is a hole, crack or rust-through in sump or casing",
    "Is there a hole, crack or rust-through in sump or casing, not made by a broken rod?",
    CP,
    denies="sump and casing are whole",
    stage=Stage.OUTSIDE,
    normal="whole",
    background=VERY_RARE,
    also=("cracked pan", "hole in the oil pan", "cracked crankcase", "sump torn open"),
)
ACCESSORY_PAD_WET = Finding(
    "accessory_pad_wet",
    Station.LEAKS,
    "oil comes from the joint of an accessory on its pad",
    "Does oil come from the joint of an accessory bolted to a drive pad?",
    CP,
    denies="the accessory pads are dry",
    stage=Stage.OUTSIDE,
    normal="dry",
    background=RARE,
    also=("vacuum pump leaking oil", "fuel pump pad wet", "tach drive leaking", "governor leaking"),
)
ACCESSORY_PORT_UNCOVERED = Finding(
    "accessory_port_uncovered",
    Station.LEAKS,
    "the gasket under an accessory leaves its oil port open",
    "With the accessory off: does its gasket leave an oil port uncovered?",
    CP,
    denies="the accessory's gasket closes every port",
    stage=Stage.OPENED,
    normal="every hole in the pad meets a hole or solid gasket",
    background=VERY_RARE,
    also=("wrong gasket fitted", "gasket hole too big", "port open at the pad"),
)
SEAL_FOUND_PUSHED_OUT = Finding(
    "seal_found_pushed_out",
    Station.LEAKS,
    "a crank, cam or case seal was found pushed out of its seat",
    "Was a crank, cam or case seal found pushed out of its seat?",
    CP,
    denies="every seal sits in its seat",
    stage=Stage.OUTSIDE,
    normal="in their seats",
    background=VERY_RARE,
    also=(
        "seal popped out",
        "blew out the front seal",
        "dislodged seal",
    ),
)
OIL_LOST_ONLY_IN_FROST = Finding(
    "oil_lost_only_in_frost",
    Station.LEAKS,
    "it loses oil only in hard frost or cold air, none when tried at rest",
    "Does it lose oil only when run in hard frost, and none when tried at rest?",
    CP,
    denies="the loss has nothing to do with frost",
    stage=Stage.TOLD,
    normal="no loss",
    background=VERY_RARE,
    also=(
        "loses oil only in cold weather",
        "breather froze",
    ),
)
ONLY_SMALL_SEEPS = Finding(
    "only_small_seeps",
    Station.LEAKS,
    "only small seeps show outside",
    "Do only small seeps show outside, no real leak?",
    TMK,
    denies="no seeps at all",
    stage=Stage.OUTSIDE,
    normal="dry, or a film",
    background=COMMON,
    also=(
        "just weeps",
        "small leaks only",
        "a few drips",
    ),
)
OIL_LINE_WAS_DISTURBED = Finding(
    "oil_line_was_disturbed",
    Station.LEAKS,
    "an oil line, hose, cooler or its union was undone in the work just before",
    "Was an oil line, hose, cooler or its union undone in the work just before?",
    CP,
    denies="no oil line was touched",
    stage=Stage.TOLD,
    normal="not touched",
    background=OCCASIONAL,
    also=(
        "cooler hose was off",
        "oil line disconnected",
        "lines refitted",
    ),
)

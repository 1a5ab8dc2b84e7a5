"""What the oil looks, feels and smells like, and what the coolant says of it."""

from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB02, HB08, HB14, HPA, JIO, LCF, LCW, MIF
from knowledge.vocabulary import COMMON, OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station

# ---------------------------------------------------------------------------- on the stick

OIL_LOOKS_CLEAN = Finding(
    "oil_looks_clean",
    Station.OIL,
    "the oil is clean to eye and finger",
    "Is the oil clean to eye and finger: no milk, no grit, no glitter?",
    CP,
    denies="the oil is not clean",
    stage=Stage.OUTSIDE,
    normal="clear amber to black, smooth between the fingers",
    background=COMMON,
    also=("oil looks good", "clean oil", "fresh looking oil", "oil looked fine"),
)
FOAM_ON_STICK = Finding(
    "foam_on_stick",
    Station.OIL,
    "foam or bubbles on the dipstick straight after a hard run",
    "Straight after a hard run: is there foam on the dipstick, gone again in minutes?",
    HPA,
    denies="no foam on the dipstick after a hard run",
    stage=Stage.OUTSIDE,
    normal="a thin film only",
    why="foam squeezes together, so it cannot hold pressure or carry a bearing",
    background=RARE,
    also=("frothy oil", "bubbles on dipstick", "foamy oil", "oil whipped up", "aerated oil"),
)
OIL_MILKY = Finding(
    "oil_milky",
    Station.OIL,
    "the oil is milky or like coffee with cream",
    "Is the oil on the stick or in the drain milky, like coffee with cream?",
    LCW,
    denies="the oil is not milky",
    stage=Stage.OUTSIDE,
    normal="clear amber to black",
    why="water in the oil ends bearings; do not run it to find out",
    background=VERY_RARE,
    also=("chocolate milk oil", "creamy oil", "mayonnaise", "water in oil", "milkshake", "milkey"),
)
CREAM_IN_FILLER_ONLY = Finding(
    "cream_in_filler_only",
    Station.OIL,
    "a little cream under the filler cap, none on the stick",
    "Is there cream under the filler cap, but none on the dipstick?",
    CP,
    denies="no cream under the filler cap",
    stage=Stage.OUTSIDE,
    normal="none; short cold trips leave a little",
    background=COMMON,
    also=("mayo under the cap", "condensation in filler neck", "white goo on oil cap"),
)
OIL_BLACK_AND_GRITTY = Finding(
    "oil_black_and_gritty",
    Station.OIL,
    "the oil is black and gritty or sticky between the fingers",
    "Rubbed between the fingers, is the oil black and gritty or sticky?",
    JIO,
    denies="the oil is smooth between the fingers",
    stage=Stage.OUTSIDE,
    normal="smooth; a diesel's oil goes black within hours",
    background=OCCASIONAL,
    also=("dirty oil", "gritty oil", "oil like tar", "black sticky oil"),
)
SLUDGE_SEEN = Finding(
    "sludge_seen",
    Station.OIL,
    "sludge or black jelly in filler, covers, drain or sump",
    "Is there sludge or black jelly in filler neck, covers, drain or sump?",
    JIO,
    denies="no sludge anywhere",
    stage=Stage.OUTSIDE,
    normal="bare metal with a stain at most",
    why="what lies in the filler lies on the pickup's mesh too",
    background=RARE,
    also=(
        "sludged up",
        "black jelly",
        "gunk in the pan",
        "sluge",
        "engine full of sludge",
        "sludge under the valve cover",
        "tar in the sump",
    ),
)
OIL_THIN_ON_STICK = Finding(
    "oil_thin_on_stick",
    Station.OIL,
    "the oil runs off the stick like water beside new oil",
    "Beside new oil of the same grade, as warm: does it run off the stick like water?",
    LCF,
    denies="the oil is no thinner than new oil as warm",
    stage=Stage.OUTSIDE,
    normal="as new oil at the same warmth; a drop on paper does not spread wide",
    background=OCCASIONAL,
    also=("oil like water", "thin oil on dipstick", "runny oil", "watery oil"),
)
OIL_THICK_ON_STICK = Finding(
    "oil_thick_on_stick",
    Station.OIL,
    "the oil hangs on the stick like treacle",
    "Beside new oil of the same grade, as warm: does it hang on the stick like treacle?",
    HB14,
    denies="the oil is no thicker than new oil as warm",
    stage=Stage.OUTSIDE,
    normal="as new oil at the same warmth",
    background=RARE,
    also=("oil like molasses", "thick tar oil", "oil like grease", "jelly oil"),
)
GLITTER_IN_OIL = Finding(
    "glitter_in_oil",
    Station.OIL,
    "the oil on stick or drain tray glitters with metal",
    "In a bright light, does the oil on stick or drain tray glitter with metal?",
    MIF,
    denies="no glitter in the oil",
    stage=Stage.OUTSIDE,
    normal="no glitter, run-in apart",
    why="glitter is a bearing or a pump coming to pieces",
    background=VERY_RARE,
    also=("metallic oil", "glitter oil", "shiny specks", "sparkles in the oil", "metal in oil"),
)
FUEL_SMELL = Finding(
    "fuel_smell",
    Station.OIL,
    "the oil smells of petrol or diesel fuel",
    "Does the oil at dipstick or filler smell of fuel?",
    LCF,
    denies="the oil does not smell of fuel",
    stage=Stage.OUTSIDE,
    normal="no smell of fuel",
    why="fuel thins the oil and its vapour can explode",
    background=RARE,
    also=("oil smells of gas", "petrol smell", "smells like diesel", "gas in oil smell"),
)
OIL_SMELLS_BURNT = Finding(
    "oil_smells_burnt",
    Station.OIL,
    "the oil smells burnt",
    "Does the oil on the stick smell burnt?",
    CP,
    denies="the oil does not smell burnt",
    stage=Stage.OUTSIDE,
    normal="smells of oil only",
    background=RARE,
    also=("burnt oil", "scorched smell", "cooked oil", "oil smells hot"),
)

# -------------------------------------------------------------------- how fuel may get in

FUEL_GETS_IN = Finding(
    "fuel_gets_in",
    Station.OIL,
    "a way in for fuel was found: lift pump, float, injector or choke",
    "Does the lift pump weep, the carburettor flood, an injector leak or the choke stick?",
    HB08,
    denies="the fuel system is tight",
    stage=Stage.OUTSIDE,
    normal="tight, and no flooding",
    background=RARE,
    also=("fuel pump diaphragm leaking", "carb flooding", "leaking injector", "runs too rich"),
)

# ----------------------------------------------------------------------------- the coolant

COOLANT_LEVEL_FALLING = Finding(
    "coolant_level_falling",
    Station.OIL,
    "the coolant level keeps falling and no leak shows outside",
    "Does the coolant keep falling with no leak to be seen outside?",
    LCW,
    denies="the coolant level holds",
    stage=Stage.TOLD,
    normal="steady",
    background=OCCASIONAL,
    also=("losing coolant", "using water", "coolant disappears", "radiator needs topping up"),
)
OIL_FILM_IN_COOLANT = Finding(
    "oil_film_in_coolant",
    Station.OIL,
    "an oil film stands on the coolant",
    "Cold, cap off: is there an oil film or brown foam on the coolant?",
    HB02,
    denies="no oil on the coolant",
    stage=Stage.OUTSIDE,
    normal="none",
    background=VERY_RARE,
    also=("oil in radiator", "oil in coolant", "sludge in header tank", "brown foam in coolant"),
)
COOLING_SYSTEM_LOSES_PRESSURE = Finding(
    "cooling_system_loses_pressure",
    Station.OIL,
    "the cooling system does not hold test pressure and is dry outside",
    "Pumped up cold to the cap's figure: does it lose pressure while dry outside?",
    HB02,
    denies="the cooling system holds test pressure",
    stage=Stage.OUTSIDE,
    normal="holds the cap's figure for ten minutes",
    background=RARE,
    also=("fails pressure test", "coolant pressure drops", "block test positive"),
)
SWEET_SMELL = Finding(
    "sweet_smell",
    Station.OIL,
    "a sweet smell of coolant at oil filler or exhaust",
    "Is there a sweet smell of coolant at the oil filler or the exhaust?",
    CP,
    denies="no sweet smell",
    stage=Stage.TOLD,
    normal="none",
    background=RARE,
    also=("smells of antifreeze", "sweet exhaust", "syrup smell"),
)
WHITE_PLUME = Finding(
    "white_plume",
    Station.OIL,
    "white exhaust steam that does not stop when warm",
    "Does the exhaust steam white even when the engine is warm?",
    CP,
    denies="no white steam when warm",
    stage=Stage.TOLD,
    normal="a little on a cold start only",
    background=RARE,
    also=("white smoke", "steam from exhaust", "white exhaust"),
)
WATER_AT_THE_DRAIN = Finding(
    "water_at_the_drain",
    Station.OIL,
    "water or coolant ran out ahead of the oil at the drain",
    "With the engine rested, did water run out ahead of the oil at the drain plug?",
    LCW,
    denies="only oil came out of the drain",
    stage=Stage.OPENED,
    normal="oil only",
    background=VERY_RARE,
    also=("water in the sump", "coolant in oil pan", "water came out first"),
)

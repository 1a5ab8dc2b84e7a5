"""Oil level, and the checks that show it."""

from knowledge import sources
from knowledge.engines import features
from knowledge.model import COMMON, OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Access, Caution, Inspection

WET_SUMPS = Finding(
    id="wet_sumps",
    station=Station.OIL,
    says="dry sump: oil runs from the tank into the crankcase when standing",
    asks="Dry sump: does the crankcase fill from the tank while standing?",
    source=COMMON_PRACTICE,
    denies="the tank holds its oil when standing",
    stage=Stage.KNOWN,
    normal="the level in the tank holds",
    background=OCCASIONAL,
    also=(
        "wet sumping",
        "tank drains into the crankcase",
    ),
)
DIPSTICK_LOW = Finding(
    id="dipstick_low",
    station=Station.OIL,
    says="the oil is below the add mark",
    asks="Level ground, ten minutes after stopping: oil below the add mark?",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    denies="the oil is not below the add mark",
    stage=Stage.OUTSIDE,
    normal="between the marks",
    why="low oil is the commonest cause of all, and the cheapest to rule out",
    background=VERY_RARE,
    also=(
        "oil level low",
        "low on oil",
        "needed oil added",
        "took two quarts to fill",
        "barely on the stick",
    ),
)
DIPSTICK_DRY = Finding(
    id="dipstick_dry",
    station=Station.OIL,
    says="the dipstick is dry, or the sump was found empty",
    asks="No oil on the dipstick at all, or the sump found empty?",
    source=idea_from(sources.ARMY_TM_347_CHART_1973),
    denies="there is oil on the dipstick",
    stage=Stage.OUTSIDE,
    normal="between the marks",
    why="do not crank an engine without oil",
    background=VERY_RARE,
    also=("no oil on the stick", "bone dry dipstick", "sump empty", "out of oil", "all oil gone"),
)
LEVEL_CORRECT = Finding(
    id="level_correct",
    station=Station.OIL,
    says="the oil is between the marks",
    asks="Level ground, ten minutes after stopping: oil between the marks?",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    denies="the oil is not between the marks",
    stage=Stage.OUTSIDE,
    normal="between the marks",
    why="a level that was read properly and is right rules out low oil",
    background=COMMON,
    also=("oil level ok", "full of oil", "level is fine", "oil up to the mark"),
)
LEVEL_SLIGHTLY_HIGH = Finding(
    id="level_slightly_high",
    station=Station.OIL,
    says="the oil is a little above the full mark",
    asks="Oil just a little above the full mark?",
    source=idea_from(sources.MARINE_SERVICE_MANUAL_1999),
    denies="the oil is not a little above the full mark",
    stage=Stage.OUTSIDE,
    normal="at or below the full mark",
    background=COMMON,
    also=("slightly overfull", "a touch over full", "bit too much oil", "just over the mark"),
)
LEVEL_HIGH = Finding(
    id="level_high",
    station=Station.OIL,
    says="the oil is well above the full mark",
    asks="Oil well above the full mark, by a finger's width or more?",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    denies="the oil is not well above the full mark",
    stage=Stage.OUTSIDE,
    normal="at or below the full mark",
    why="the crankshaft reaches the oil and beats it to foam",
    background=RARE,
    also=("overfilled", "way over full", "too much oil", "inch above full"),
)
LEVEL_RISEN = Finding(
    id="level_risen",
    station=Station.OIL,
    says="the level has risen although nobody added oil",
    asks="Has the level risen although nobody added oil?",
    source=idea_from(sources.FUEL_DILUTION_NOTE),
    denies="the level has not risen by itself",
    stage=Stage.KNOWN,
    normal="it never rises by itself",
    why="only fuel or water can raise the level by itself",
    background=VERY_RARE,
    also=("making oil", "oil level going up", "level rising", "gaining oil"),
)
LEVEL_READ_WRONGLY = Finding(
    id="level_read_wrongly",
    station=Station.OIL,
    says="the level was read on a slope, in a moving boat, or straight after stopping",
    asks="Level read on a slope, or straight after stopping?",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    denies="the level was read level and rested",
    stage=Stage.KNOWN,
    normal="level ground or at rest in the water, ten minutes after stopping",
    background=COMMON,
    also=("checked on a hill", "checked hot right away", "checked on the trailer"),
)
OIL_LOOKS_CLEAN = Finding(
    id="oil_looks_clean",
    station=Station.OIL,
    says="the oil is clean to eye and finger",
    asks="Oil clean to eye and finger: no milk, grit or glitter?",
    source=COMMON_PRACTICE,
    denies="the oil is not clean",
    stage=Stage.OUTSIDE,
    normal="clear amber to black, smooth between the fingers",
    background=COMMON,
    also=("oil looks good", "clean oil", "fresh looking oil", "oil looked fine"),
)
OIL_MILKY = Finding(
    id="oil_milky",
    station=Station.OIL,
    says="the oil is milky or like coffee with cream",
    asks="Oil on the stick or in the drain milky, like coffee with cream?",
    source=sources.LABORATORY_COOLANT,
    denies="the oil is not milky",
    stage=Stage.OUTSIDE,
    normal="clear amber to black",
    why="water in the oil ruins bearings; do not run it to find out",
    background=VERY_RARE,
    also=("chocolate milk oil", "creamy oil", "mayonnaise", "water in oil", "milkshake", "milkey"),
)
CREAM_IN_FILLER_ONLY = Finding(
    id="cream_in_filler_only",
    station=Station.OIL,
    says="a little cream under the filler cap, none on the stick",
    asks="Cream under the filler cap, but none on the dipstick?",
    source=COMMON_PRACTICE,
    denies="no cream under the filler cap",
    stage=Stage.OUTSIDE,
    normal="none; short cold trips leave a little",
    background=COMMON,
    also=("mayo under the cap", "condensation in filler neck", "white goo on oil cap"),
)
OIL_BLACK_AND_GRITTY = Finding(
    id="oil_black_and_gritty",
    station=Station.OIL,
    says="the oil is black and gritty or sticky between the fingers",
    asks="Rubbed between the fingers: oil black and gritty or sticky?",
    source=COMMON_PRACTICE,
    denies="the oil is smooth between the fingers",
    stage=Stage.OUTSIDE,
    normal="smooth; a diesel's oil goes black within hours",
    background=OCCASIONAL,
    also=("dirty oil", "gritty oil", "oil like tar", "black sticky oil"),
)
SLUDGE_SEEN = Finding(
    id="sludge_seen",
    station=Station.OIL,
    says="sludge or black jelly in filler, covers, drain or sump",
    asks="Sludge or black jelly in filler neck, covers, drain or sump?",
    source=sources.CLUB_BLOCKED_SCREENS,
    denies="no sludge anywhere",
    stage=Stage.OUTSIDE,
    normal="bare metal with a stain at most",
    why="what you see in the filler is on the pickup screen too",
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
    id="oil_thin_on_stick",
    station=Station.OIL,
    says="the oil runs off the stick like water beside new oil",
    asks="Beside new oil of the same grade and warmth: does it run off the stick like water?",
    source=idea_from(sources.LABORATORY_FUEL),
    denies="the oil is no thinner than new oil of the same warmth",
    stage=Stage.OUTSIDE,
    normal="as new oil at the same warmth; a drop on paper does not spread wide",
    background=OCCASIONAL,
    also=("oil like water", "thin oil on dipstick", "runny oil", "watery oil"),
)
OIL_THICK_ON_STICK = Finding(
    id="oil_thick_on_stick",
    station=Station.OIL,
    says="the oil hangs on the stick like treacle (molasses)",
    asks=(
        "Beside new oil of the same grade and warmth: does it hang on the stick like treacle "
        "(molasses)?"
    ),
    source=idea_from(sources.MOTORCYCLE_MANUAL),
    denies="the oil is no thicker than new oil of the same warmth",
    stage=Stage.OUTSIDE,
    normal="as new oil at the same warmth",
    background=RARE,
    also=("oil like molasses", "thick tar oil", "oil like grease", "jelly oil"),
)
GLITTER_IN_OIL = Finding(
    id="glitter_in_oil",
    station=Station.OIL,
    says="the oil on stick or drain tray glitters with metal",
    asks="In a bright light: metal glitter in the oil on stick or tray?",
    source=COMMON_PRACTICE,
    denies="no glitter in the oil",
    stage=Stage.OUTSIDE,
    normal="no glitter, except in run-in",
    why="glitter comes from a bearing or a pump that is breaking up",
    background=VERY_RARE,
    also=("metallic oil", "glitter oil", "shiny specks", "sparkles in the oil", "metal in oil"),
)
FUEL_SMELL = Finding(
    id="fuel_smell",
    station=Station.OIL,
    says="the oil smells of petrol or diesel fuel",
    asks="Oil at dipstick or filler: a smell of fuel?",
    source=sources.LABORATORY_FUEL,
    denies="the oil does not smell of fuel",
    stage=Stage.OUTSIDE,
    normal="no smell of fuel",
    why="fuel thins the oil and its vapour can explode",
    background=RARE,
    also=("oil smells of gas", "petrol smell", "smells like diesel", "gas in oil smell"),
)
OIL_SMELLS_BURNT = Finding(
    id="oil_smells_burnt",
    station=Station.OIL,
    says="the oil smells burnt",
    asks="Oil on the stick: a burnt smell?",
    source=COMMON_PRACTICE,
    denies="the oil does not smell burnt",
    stage=Stage.OUTSIDE,
    normal="smells of oil only",
    background=RARE,
    also=("burnt oil", "scorched smell", "cooked oil", "oil smells hot"),
)
#: what the stick says of the level
LEVELS = (DIPSTICK_LOW, DIPSTICK_DRY, LEVEL_CORRECT, LEVEL_HIGH)
READ_THE_STICK = Inspection(
    id="read_the_stick",
    station=Station.OIL,
    says="read, rub and smell the dipstick",
    steps_with=(
        (features.DRY_SUMP, "dry sump: read the tank instead, hot, straight after running"),
        (features.IN_A_BOAT, "boat: at rest in the water"),
    ),
    steps=(
        "level ground, engine off ten minutes",
        "pull, wipe, push fully home, pull again and read both sides; photograph the stick",
        (
            "look in a bright light for milk, glitter and grit; rub it between the fingers, "
            "wearing gloves"
        ),
        "smell stick and filler for fuel, burnt oil and coolant; look under the filler cap",
        "beside a drop of new oil: does it spread wider, or hang thicker?",
        "do not top up until you have the level and a sample",
    ),
    minutes=3,
    access=Access.OUTSIDE,
    in_place=True,
    reveals=(
        DIPSTICK_LOW,
        DIPSTICK_DRY,
        LEVEL_CORRECT,
        LEVEL_SLIGHTLY_HIGH,
        LEVEL_HIGH,
        LEVEL_RISEN,
        LEVEL_READ_WRONGLY,
        OIL_LOOKS_CLEAN,
        OIL_MILKY,
        CREAM_IN_FILLER_ONLY,
        OIL_BLACK_AND_GRITTY,
        SLUDGE_SEEN,
        OIL_THIN_ON_STICK,
        OIL_THICK_ON_STICK,
        GLITTER_IN_OIL,
        FUEL_SMELL,
        OIL_SMELLS_BURNT,
    ),
    source=idea_from(sources.MARINE_SERVICE_MANUAL_1999),
    tools=("clean paper", "lamp", "gloves", "a little new oil"),
    cautions=(Caution.HOT, Caution.FIRE, Caution.USED_OIL),
    keep="photograph the stick before you wipe it",
    also=("check the oil", "dipstick", "oil level", "smell the oil", "look at the oil"),
)

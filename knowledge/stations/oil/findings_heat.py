"""Oil temperature, foam, smoke and cooling, and the checks that show them."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.engines import features
from knowledge.model import OCCASIONAL, RARE, VERY_RARE, Finding, Measure, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.oil import quantities
from knowledge.work import Access, Caution, Inspection

FOAM_ON_STICK = Finding(
    id="foam_on_stick",
    station=Station.OIL,
    says="foam or bubbles on the dipstick",
    asks="Straight after a hard run: foam on the dipstick, gone again in minutes?",
    source=sources.OIL_AERATION_ARTICLE,
    denies="no foam on the dipstick after a hard run",
    stage=Stage.OUTSIDE,
    normal="a thin film only",
    why="foam compresses, so it cannot hold pressure or carry a bearing",
    background=RARE,
    also=("frothy oil", "bubbles on dipstick", "foamy oil", "oil whipped up", "aerated oil"),
)
LOOK_FOR_FOAM = Inspection(
    id="look_for_foam",
    station=Station.OIL,
    says="pull the stick straight after a hard run",
    steps=(
        "run at the speed where it wavers, within the stop limits; then stop",
        "pull the stick at once and photograph it; again after five minutes",
    ),
    minutes=15,
    access=Access.OUTSIDE,
    reveals=(FOAM_ON_STICK,),
    source=COMMON_PRACTICE,
    tools=("clean paper", "camera"),
    cautions=RUNNING,
    needs_running=True,
    also=("check for foam", "bubbles in the oil", "aeration"),
)

OIL_TEMPERATURE_HIGH = Finding(
    id="oil_temperature_high",
    station=Station.OIL,
    says="the oil runs hotter than about 120 °C (250 °F)",
    asks="Oil hotter than about 120 °C (250 °F), or past its red mark?",
    source=sources.ARMY_TM_272_TABLE,
    denies="the oil is not too hot",
    stage=Stage.OUTSIDE,
    normal="80 to 105 °C (175 to 220 °F); reduce the load and stop at 121 °C (250 °F)",
    why="10 °C (18 °F) hotter makes hot oil about a fifth thinner",
    background=VERY_RARE,
    also=("oil temp high", "hot oil", "oil over 250", "oil temperature in the red", "oil too hot"),
)
OIL_VERY_COLD = Finding(
    id="oil_very_cold",
    station=Station.OIL,
    says="the oil was near or below freezing when it was read",
    asks="Oil near or below freezing when the pressure was read?",
    source=idea_from(sources.DIESEL_WORKSHOP_2015),
    denies="the oil was not that cold",
    stage=Stage.OUTSIDE,
    normal="read with warm oil",
    background=OCCASIONAL,
    also=("cold start in winter", "frozen engine", "below zero", "cold soaked oil"),
)
ENGINE_RAN_HOT = Finding(
    id="engine_ran_hot",
    station=Station.OIL,
    says="the engine itself ran hot (coolant, heads or cylinders)",
    asks="Did the engine itself overheat, by the coolant or cylinder-head gauge?",
    source=idea_from(sources.EHRESMAN_1998),
    denies="the engine did not run hot",
    stage=Stage.KNOWN,
    normal="the usual place on its gauge",
    background=OCCASIONAL,
    also=("overheated", "temperature gauge high", "boiled over", "cylinder heads too hot"),
)
OIL_HEAT = Measure(
    quantity=quantities.OIL_TEMPERATURE,
    station=Station.OIL,
    asks="Oil temperature?",
    source=COMMON_PRACTICE,
    also=("oil temp", "oil temperature"),
)
TAKE_OIL_TEMPERATURE = Inspection(
    id="take_oil_temperature",
    station=Station.OIL,
    says="oil temperature with a probe or infrared thermometer",
    steps=(
        "note how cold the oil is before starting",
        "warm: read at the sump and at the filter head, write down which",
        "at 121 °C (250 °F) take the load off, then stop",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(OIL_TEMPERATURE_HIGH, OIL_VERY_COLD, ENGINE_RAN_HOT),
    source=COMMON_PRACTICE,
    measures=(OIL_HEAT,),
    tools=("probe or infrared thermometer",),
    cautions=RUNNING,
    needs_running=True,
    also=("oil temp", "how hot is the oil", "thermometer"),
)

COOLER_FACE_BLOCKED = Finding(
    id="cooler_face_blocked",
    station=Station.OIL,
    says="the oil cooler or radiator is blocked outside with dirt, chaff or weed",
    asks="Oil cooler or radiator blocked outside with dirt, chaff, oil or weed?",
    source=sources.ARMY_TM_347_CHART_1973,
    denies="cooler and radiator are clean outside",
    stage=Stage.OUTSIDE,
    normal="light shows through the fins; sea strainer clean",
    background=OCCASIONAL,
    also=("dirty oil cooler", "clogged radiator", "fins blocked", "weed in strainer"),
)
COOLING_DUCT_AMISS = Finding(
    id="cooling_duct_amiss",
    station=Station.OIL,
    says="a cooling duct, baffle, shroud or hose is off, torn, blocked or wrongly fitted",
    asks="Cooling-air duct, baffle, shroud or hose off, torn, blocked or wrongly fitted?",
    source=COMMON_PRACTICE,
    denies="ducts, baffles and shrouds are in place",
    stage=Stage.OUTSIDE,
    normal="all in place, sealed and clear",
    why="a rag, a missing baffle or a torn hose overheats oil as much as hard work does",
    background=RARE,
    also=(
        "cooling baffle missing",
        "air duct disconnected",
        "shroud off",
        "scat hose came off",
        "rag in the air duct",
    ),
)
COOLER_LEFT_OFF = Finding(
    id="cooler_left_off",
    station=Station.OIL,
    says="the oil cooler was left off or is bypassed",
    asks="Oil cooler left off or bypassed?",
    source=COMMON_PRACTICE,
    denies="the oil cooler is fitted and in use",
    stage=Stage.OUTSIDE,
    normal="fitted where the maker fits one",
    background=RARE,
    also=("no oil cooler fitted", "cooler looped out", "oil cooler not connected"),
)
LOOK_AT_THE_COOLING = Inspection(
    id="look_at_the_cooling",
    station=Station.OIL,
    says="look at cooler, ducts, baffles, shrouds and hoses",
    steps=(
        "engine stopped and cool: light through the fins of oil cooler and radiator",
        "feel every duct, baffle and hose for tears, gaps, rags and nests",
        "boat: sea cock open, strainer clear",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(COOLER_FACE_BLOCKED, COOLING_DUCT_AMISS, COOLER_LEFT_OFF),
    source=COMMON_PRACTICE,
    tools=("lamp", "mirror"),
    cautions=(Caution.HOT, Caution.SHARP),
    keep="photograph the duct or baffle as found",
    also=("cooling ducts", "oil cooler", "baffles", "air flow"),
)

BLOW_BY_HIGH = Finding(
    id="blow_by_high",
    station=Station.OIL,
    says="much blow-by at filler or breather",
    asks="Crankcase blowing hard at filler or breather (or by manometer)?",
    source=COMMON_PRACTICE,
    denies="little blow-by",
    stage=Stage.OUTSIDE,
    normal="a light puff; the maker's figure",
    background=OCCASIONAL,
    also=("crankcase pressure", "chuffing breather", "smoke from oil filler", "blowby"),
)
BLUE_SMOKE = Finding(
    id="blue_smoke",
    station=Station.OIL,
    says="blue smoke from the exhaust",
    asks="Blue smoke from the exhaust?",
    source=COMMON_PRACTICE,
    denies="no blue smoke",
    stage=Stage.KNOWN,
    normal="little or none",
    background=OCCASIONAL,
    also=("burning oil smoke", "smoky exhaust", "blue exhaust", "smokes on overrun"),
)
BURNING_OIL_SMOKE = Finding(
    id="burning_oil_smoke",
    station=Station.OIL,
    says="smoke or smell of burning oil around the engine or in the cabin",
    asks="Smoke or a smell of burning oil around the engine or in the cabin?",
    source=COMMON_PRACTICE,
    denies="no smoke or smell of burning oil",
    stage=Stage.KNOWN,
    normal="none",
    why="oil on a hot exhaust is a leak and a fire risk",
    background=RARE,
    also=(
        "burning oil smell",
        "smoke in the cockpit",
        "smoke from engine bay",
        "oil burning on exhaust",
        "hot oil smell",
    ),
)
SWEET_SMELL = Finding(
    id="sweet_smell",
    station=Station.OIL,
    says="a sweet smell of coolant at oil filler or exhaust",
    asks="Sweet smell of coolant at the oil filler or exhaust?",
    source=COMMON_PRACTICE,
    denies="no sweet smell",
    stage=Stage.KNOWN,
    normal="none",
    background=RARE,
    also=("smells of antifreeze", "sweet exhaust", "syrup smell"),
)
WHITE_PLUME = Finding(
    id="white_plume",
    station=Station.OIL,
    says="white exhaust steam that goes on when warm",
    asks="White steam from the exhaust even when warm?",
    source=COMMON_PRACTICE,
    denies="no white steam when warm",
    stage=Stage.KNOWN,
    normal="a little on a cold start only",
    background=RARE,
    also=("white smoke", "steam from exhaust", "white exhaust"),
)
LOOK_AT_SMOKE_AND_BREATHER = Inspection(
    id="look_at_smoke_and_breather",
    station=Station.OIL,
    says="blow-by and smoke, at idle and fast idle",
    steps=(
        "manometer or a light bag at filler or breather, at idle and at fast idle",
        "watch the exhaust on the overrun, after idling, and when warm",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(BLOW_BY_HIGH, BLUE_SMOKE, WHITE_PLUME, SWEET_SMELL, BURNING_OIL_SMOKE),
    source=COMMON_PRACTICE,
    tools=("manometer",),
    cautions=RUNNING,
    needs_running=True,
    also=("crankcase pressure test", "blowby", "exhaust smoke"),
)

OIL_IN_TURBO_OUTLETS = Finding(
    id="oil_in_turbo_outlets",
    station=Station.OIL,
    says="there is oil in the turbocharger's outlets, and it smokes after idling",
    asks="Oil in the turbocharger's outlets, or smoke after idling?",
    source=sources.TURBO_MAKER_STARVATION,
    denies="the turbocharger's outlets are dry",
    stage=Stage.OUTSIDE,
    normal="dry",
    background=RARE,
    also=("turbo leaking oil", "oil in intake pipe", "turbo seals gone", "oil in intercooler"),
)
LOOK_INTO_THE_TURBO = Inspection(
    id="look_into_the_turbo",
    station=Station.OIL,
    says="look for oil in the turbocharger's outlets",
    steps=(
        "engine stopped and cold: take the pipes off both outlets",
        "look, wipe with a white cloth",
    ),
    minutes=20,
    access=Access.OUTSIDE,
    reveals=(OIL_IN_TURBO_OUTLETS,),
    only_with=(features.TURBOCHARGED,),
    source=COMMON_PRACTICE,
    tools=("lamp", "white cloth", "screwdriver"),
    cautions=(Caution.HOT, Caution.SHARP),
    also=(
        "oil in the turbo",
        "oil in the intercooler hose",
    ),
)

"""How hot the oil gets, what should cool it, and the smoke it makes."""

from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB01, HB02, HB04, HB22, INL, TMK, TUR
from knowledge.vocabulary import (
    OCCASIONAL,
    RARE,
    Finding,
    Measure,
    Stage,
    Station,
)

OIL_TEMPERATURE_HIGH = Finding(
    "oil_temperature_high",
    Station.OIL,
    "the oil runs hotter than about 120 °C (250 °F)",
    "Is the oil hotter than about 120 °C (250 °F), or past its red mark?",
    HB02,
    denies="the oil is not too hot",
    stage=Stage.OUTSIDE,
    normal="80 to 105 °C (175 to 220 °F); unload and stop at 121 °C (250 °F)",
    why="ten degrees hotter takes about a fifth of hot oil's thickness",
    background=RARE,
    also=("oil temp high", "hot oil", "oil over 250", "oil temperature in the red", "oil too hot"),
)
OIL_VERY_COLD = Finding(
    "oil_very_cold",
    Station.OIL,
    "the oil was near or below freezing when it was read",
    "Was the oil near or below freezing when the pressure was read?",
    HB04,
    denies="the oil was not that cold",
    stage=Stage.OUTSIDE,
    normal="read with warm oil",
    background=OCCASIONAL,
    also=("cold start in winter", "frozen engine", "below zero", "cold soaked oil"),
)
ENGINE_RAN_HOT = Finding(
    "engine_ran_hot",
    Station.OIL,
    "the engine itself ran hot (coolant, heads or cylinders)",
    "Did the engine itself run hot, by the coolant or cylinder-head gauge?",
    HB22,
    denies="the engine did not run hot",
    stage=Stage.TOLD,
    normal="the usual place on its gauge",
    background=OCCASIONAL,
    also=("overheated", "temperature gauge high", "boiled over", "cylinder heads too hot"),
)
COOLER_FACE_BLOCKED = Finding(
    "cooler_face_blocked",
    Station.OIL,
    "the oil cooler or radiator is blocked outside with dirt, chaff or weed",
    "Is the oil cooler or radiator blocked outside with dirt, chaff, oil or weed?",
    HB01,
    denies="cooler and radiator are clean outside",
    stage=Stage.OUTSIDE,
    normal="light shows through the fins; sea strainer clean",
    background=OCCASIONAL,
    also=("dirty oil cooler", "clogged radiator", "fins blocked", "weed in strainer"),
)
COOLING_DUCT_AMISS = Finding(
    "cooling_duct_amiss",
    Station.OIL,
    "a cooling duct, baffle, shroud or hose is off, torn, blocked or wrongly fitted",
    "Is a cooling-air duct, baffle, shroud or hose off, torn, blocked or wrongly fitted?",
    CP,
    denies="ducts, baffles and shrouds are in place",
    stage=Stage.OUTSIDE,
    normal="all in place, sealed and clear",
    why="a rag, a lost baffle or a torn hose heats oil as surely as a load",
    background=RARE,
    also=(
        "cooling baffle missing",
        "air duct disconnected",
        "shroud off",
        "scat hose came off",
        "rag in the air duct",
    ),
)
BLOW_BY_HIGH = Finding(
    "blow_by_high",
    Station.OIL,
    "much blow-by at filler or breather",
    "Does the crankcase blow hard at filler or breather (or on a manometer)?",
    HB22,
    denies="little blow-by",
    stage=Stage.OUTSIDE,
    normal="a light puff; the maker's figure",
    background=OCCASIONAL,
    also=("crankcase pressure", "chuffing breather", "smoke from oil filler", "blowby"),
)
BLUE_SMOKE = Finding(
    "blue_smoke",
    Station.OIL,
    "blue smoke from the exhaust",
    "Is there blue smoke from the exhaust?",
    INL,
    denies="no blue smoke",
    stage=Stage.TOLD,
    normal="little or none",
    background=OCCASIONAL,
    also=("burning oil smoke", "smoky exhaust", "blue exhaust", "smokes on overrun"),
)
BURNING_OIL_SMOKE = Finding(
    "burning_oil_smoke",
    Station.OIL,
    "smoke or smell of burning oil about the engine or in the cabin",
    "Was there smoke or a smell of burning oil about the engine or in the cabin?",
    TMK,
    denies="no smoke or smell of burning oil",
    stage=Stage.TOLD,
    normal="none",
    why="oil on a hot exhaust is a leak and a fire waiting",
    background=RARE,
    also=(
        "burning oil smell",
        "smoke in the cockpit",
        "smoke from engine bay",
        "oil burning on exhaust",
        "hot oil smell",
    ),
)
OIL_IN_TURBO_OUTLETS = Finding(
    "oil_in_turbo_outlets",
    Station.OIL,
    "oil stands in the turbocharger's outlets, and it smokes after idling",
    "Is there oil in the turbocharger's outlets, or smoke after idling?",
    TUR,
    denies="the turbocharger's outlets are dry",
    stage=Stage.OUTSIDE,
    normal="dry",
    background=RARE,
    also=("turbo leaking oil", "oil in intake pipe", "turbo seals gone", "oil in intercooler"),
)

OIL_HEAT = Measure(
    "oil_heat",
    Station.OIL,
    "oil temperature in the sump or at the filter head",
    "How hot is the oil?",
    "temperature",
    (223.15, 473.15),
    CP,
    spread=4.0,
    also=("oil temp", "oil temperature"),
)

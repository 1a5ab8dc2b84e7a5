"""Root causes at the oil station."""

from knowledge.sources import HB01, HB02, HB03, HB04, HB08, HB09, HPA, LCF, SJR
from knowledge.vocabulary import Cause, Rate, Station

OIL_LEVEL_LOW = Cause(
    "oil_level_low",
    Station.OIL,
    "too little oil in the sump: burnt off, under-filled or not topped up",
    "the pickup comes out of the oil in bends and at speed and the pump draws air: "
    "flicker first, then steadily low",
    Rate.VERY_COMMON,
    "+ 0 + + +",
    "photograph the stick, take a sample, fill to the mark, then find where the oil went",
    HB01,
    follows="oil full of air, lifter noise, wiped rod bearings",
    also=("low on oil", "ran out of oil", "burns oil", "forgot to fill it", "underfilled"),
)
OIL_LEVEL_HIGH = Cause(
    "oil_level_high",
    Station.OIL,
    "too much oil in the sump",
    "the crankshaft whips the oil and foam reaches the pump: the needle wavers and falls at "
    "high revs",
    Rate.OCCASIONAL,
    "0 + ++ 0 +",
    "drain to the mark and explain the gain: wrong quantity, fuel, water or wrong stick",
    HB08,
    follows="leaking seals, foam, starved lifters and bearings",
    also=("overfilled", "too much oil", "poured in too much", "over the full mark"),
)
DIPSTICK_WRONG = Cause(
    "dipstick_wrong",
    Station.OIL,
    "a dipstick that lies: wrong stick, tube or sump, or read the wrong way",
    "the true level is not where the mark says, so the engine runs short of oil or over-full",
    Rate.OCCASIONAL,
    "0 ++ + 0 +",
    "fill a measured quantity, mark the stick afresh, read it level and rested",
    SJR,
    follows="starved or foaming again and again although the stick reads right",
    also=("wrong dipstick", "dipstick out of calibration", "bad dipstick marks", "false oil level"),
)
VISCOSITY_TOO_LOW = Cause(
    "viscosity_too_low",
    Station.OIL,
    "oil of too thin a grade, or a multigrade sheared thin",
    "thin oil slips through every clearance: near normal cold, low hot at all speeds",
    Rate.COMMON,
    "+ + ++ 0 +",
    "change to the grade the maker gives for this climate",
    HB01,
    follows="thin films and faster wear",
    also=(
        "wrong oil",
        "oil too thin",
        "wrong oil grade",
        "0W-20 instead of 10W-40",
        "wrong viscosity",
    ),
)
VISCOSITY_TOO_HIGH = Cause(
    "viscosity_too_high",
    Station.OIL,
    "oil of too thick a grade, or thickened by soot, age or cold",
    "pressure reads high and much oil goes over the relief valve, while a small pickup may "
    "starve cold and far bearings wait",
    Rate.OCCASIONAL,
    "+ 0 + + 0",
    "change to the right grade; change overdue oil",
    HB03,
    follows="oil bypassing the filter, a dry top end, heavy load on the pump drive",
    also=("oil too thick", "straight 50 in winter", "heavy oil", "oil like treacle"),
)
FUEL_DILUTION = Cause(
    "fuel_dilution",
    Station.OIL,
    "petrol or diesel fuel in the oil",
    "a few per cent of fuel takes a whole grade off the oil: low when hot, while the level may "
    "rise",
    Rate.COMMON,
    "+ + 0 + 0",
    "find the way in (lift pump, float, injector, long idling), then change oil and filter",
    LCF,
    follows="thin oil, low hot pressure, bore and bearing wear, risk of fire and explosion",
    also=("fuel in oil", "gas in the oil", "diesel in the oil", "oil smells of petrol"),
)
COOLANT_IN_OIL = Cause(
    "coolant_in_oil",
    Station.OIL,
    "water or coolant in the oil",
    "the oil turns to milk and loses its film; glycol sludge can block screen and filter, so "
    "pressure may fall or rise",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "stop using it; find the way in (gasket, crack, cooler, sea water), flush, change oil twice",
    HB02,
    follows="corroded bearing lead, sludge, a blocked filter that bypasses, wiped bearings",
    also=("water in oil", "milky oil", "blown head gasket", "antifreeze in oil", "chocolate milk"),
)
OIL_OVERHEATED = Cause(
    "oil_overheated",
    Station.OIL,
    "oil running much hotter than normal",
    "oil thins as it heats: pressure sags slowly over minutes and is back when it has cooled",
    Rate.COMMON,
    "+ + 0 0 ++",
    "restore cooling air, cooler, coolant and level; ease the load; use the right grade",
    HB04,
    follows="oxidised oil, sludge, tired bearings",
    also=("hot oil", "oil too hot", "oil cooler not cooling", "overheating oil"),
)
OIL_DEGRADED = Cause(
    "oil_degraded",
    Station.OIL,
    "worn-out oil: overdue, oxidised, sludged or acid",
    "sludge blocks screen and oilways, the oil thickens or thins, and acid eats the bearings",
    Rate.COMMON,
    "++ - -- + 0",
    "change it at short intervals until clean; drop and clean the sump",
    HB04,
    follows="sludge, a blocked screen, a starved pump, cavitation, corroded and wiped bearings",
    also=("old oil", "sludged engine", "overdue oil change", "dirty oil", "black sludge"),
)
OIL_FOAM_PRONE = Cause(
    "oil_foam_prone",
    Station.OIL,
    "oil that foams: wrong additive, flush left in, or water in it",
    "air is let go too slowly, so pressure turns spongy and gets worse with revs",
    Rate.RARE,
    "0 0 + 0 +",
    "drain it all and fill with the right oil, no additives",
    HPA,
    follows="a wavering needle, noisy lifters, an eroded pump",
    also=("foaming oil", "frothy oil", "oil additive foams", "flushing oil left in"),
)
OIL_HOT_NORMAL = Cause(
    "oil_hot_normal",
    Station.OIL,
    "nothing wrong: the expected fall as the engine warms",
    "hot oil is thin and an idling pump is slow: steadily low at hot idle only, right for the "
    "revs (about 10 psi for each 1000 rpm)",
    Rate.VERY_COMMON,
    "+ 0 0 0 +",
    "no repair: write down the hot readings as this engine's baseline",
    HB09,
    follows="nothing",
    no_fault=True,
    also=("normal hot idle pressure", "no fault", "just warm oil", "it is normal"),
)
OIL_COLD_NORMAL = Cause(
    "oil_cold_normal",
    Station.OIL,
    "nothing wrong: the expected high reading of cold oil",
    "cold oil is stiff, so pressure stands high until it has warmed",
    Rate.COMMON,
    "0 0 0 0 0",
    "no repair: keep the revs down until the oil is warm",
    HB04,
    follows="nothing",
    no_fault=True,
    also=("normal cold pressure", "high when cold", "no fault", "comes down when warm"),
)

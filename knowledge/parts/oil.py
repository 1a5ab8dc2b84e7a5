"""Parts for what spoils the oil: ways in for fuel and water, heat, and a false stick."""

from knowledge.causes.oil import COOLANT_IN_OIL, DIPSTICK_WRONG, FUEL_DILUTION, OIL_OVERHEATED
from knowledge.engines.features import DIESEL, MECHANICAL_LIFT_PUMP, OIL_COOLER, WATER_COOLED
from knowledge.parts.shapes import Part
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import SJR
from knowledge.vocabulary import Access

DIPSTICK = Part(
    "dipstick",
    "dipstick, with its tube, that belongs to this engine and sump",
    "1",
    SJR,
    measure_first="stop to full mark against the measured fill; tube height above the rail",
    for_causes=(DIPSTICK_WRONG,),
    also=("oil stick",),
)
LIFT_PUMP_KIT = Part(
    "lift_pump_kit",
    "diaphragm kit, or a whole lift pump, with its gasket",
    "1",
    CP,
    measure_first="bolt spacing, arm shape, spacer thickness",
    for_causes=(FUEL_DILUTION,),
    only_with=(MECHANICAL_LIFT_PUMP,),
)
FLOAT_VALVE = Part(
    "float_valve",
    "carburettor float valve and seat, where it has a carburettor",
    "1 a carburettor",
    CP,
    measure_first="seat size and thread, float height",
    for_causes=(FUEL_DILUTION,),
    not_with=(DIESEL,),
)
INJECTOR_SEALS = Part(
    "injector_seals",
    "injector seals, nozzles and leak-off joints as the test shows",
    "by the number found bad",
    CP,
    measure_first="injector type and opening pressure; testing is for qualified persons",
    for_causes=(FUEL_DILUTION,),
    only_with=(DIESEL,),
)
HEAD_GASKET_SET = Part(
    "head_gasket_set",
    "head gasket set, and head bolts where the manual calls for once-only bolts",
    "1 a head",
    CP,
    measure_first="the way in first; bore, gasket thickness, face flatness, cracks tested",
    for_causes=(COOLANT_IN_OIL,),
    only_with=(WATER_COOLED,),
    also=("head gasket",),
)
COOLER_CORE = Part(
    "cooler_core",
    "oil cooler core and seals, where it let the water in",
    "1",
    CP,
    measure_first="the core pressure-tested first; joints and seal sizes",
    for_causes=(COOLANT_IN_OIL,),
    only_with=(OIL_COOLER,),
    also=("heat exchanger",),
)
COOLANT = Part(
    "coolant",
    "coolant",
    "what was drained",
    CP,
    measure_first="the kind the engine maker names",
    for_causes=(COOLANT_IN_OIL,),
    for_places=(Access.FRONT_COVER_OFF,),
    only_with=(WATER_COOLED,),
)
THERMOSTAT = Part(
    "thermostat",
    "thermostat, water pump belt and hoses, as found bad",
    "what the check shows",
    CP,
    measure_first="opening temperature and housing diameter; belt length and section",
    for_causes=(OIL_OVERHEATED,),
    only_with=(WATER_COOLED,),
)
COOLING_AIR_PARTS = Part(
    "cooling_air_parts",
    "fan belt, baffles and air seals, as found bad or missing",
    "what the check shows",
    CP,
    measure_first="belt length and section; which seals and plates the drawing shows",
    for_causes=(OIL_OVERHEATED,),
    not_with=(WATER_COOLED,),
)

"""Parts for a repair of the oil."""

from knowledge import sources
from knowledge.engines import features
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.oil import causes, causes_condition, causes_contamination, causes_feed
from knowledge.work import Access, Part

DIPSTICK = Part(
    id="dipstick",
    says="dipstick, with its tube, that belongs to this engine and sump",
    quantity="1",
    source=sources.NEWSPAPER_BRAKING_2005,
    measure_first="stop to full mark against the measured fill; tube height above the rail",
    for_causes=(causes.DIPSTICK_WRONG,),
    also=("oil stick",),
)
LIFT_PUMP_KIT = Part(
    id="lift_pump_kit",
    says="diaphragm kit, or a whole lift pump, with its gasket",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="bolt spacing, arm shape, spacer thickness",
    for_causes=(causes_contamination.FUEL_DILUTION,),
    only_with=(features.MECHANICAL_LIFT_PUMP,),
)
FLOAT_VALVE = Part(
    id="float_valve",
    says="carburettor float valve and seat, if it has a carburettor",
    quantity="1 per carburettor",
    source=COMMON_PRACTICE,
    measure_first="seat size and thread, float height",
    for_causes=(causes_contamination.FUEL_DILUTION,),
    not_with=(features.DIESEL,),
)
INJECTOR_SEALS = Part(
    id="injector_seals",
    says="injector seals, nozzles and leak-off joints as the test shows",
    quantity="as many as were found bad",
    source=COMMON_PRACTICE,
    measure_first="injector type and opening pressure; testing is for qualified persons",
    for_causes=(causes_contamination.FUEL_DILUTION,),
    only_with=(features.DIESEL,),
)
HEAD_GASKET_SET = Part(
    id="head_gasket_set",
    says="head gasket set; head bolts too, if the manual says single-use",
    quantity="1 per head",
    source=COMMON_PRACTICE,
    measure_first="find the way in first; bore, gasket thickness, face flatness; test for cracks",
    for_causes=(causes_contamination.COOLANT_IN_OIL,),
    only_with=(features.WATER_COOLED,),
    also=("head gasket",),
)
COOLER_CORE = Part(
    id="cooler_core",
    says="oil cooler core and seals, if it let the water in",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="pressure-test the core first; joints and seal sizes",
    for_causes=(causes_contamination.COOLANT_IN_OIL,),
    only_with=(features.OIL_COOLER,),
    also=("heat exchanger",),
)
COOLANT = Part(
    id="coolant",
    says="coolant",
    quantity="as much as was drained",
    source=COMMON_PRACTICE,
    measure_first="the kind the engine maker names",
    for_causes=(causes_contamination.COOLANT_IN_OIL,),
    for_places=(Access.FRONT_COVER_OFF,),
    only_with=(features.WATER_COOLED,),
)
THERMOSTAT = Part(
    id="thermostat",
    says="thermostat, water pump belt and hoses, as found bad",
    quantity="as the check shows",
    source=COMMON_PRACTICE,
    measure_first="opening temperature and housing diameter; belt length and section",
    for_causes=(causes_condition.OIL_OVERHEATED,),
    only_with=(features.WATER_COOLED,),
)
COOLING_AIR_PARTS = Part(
    id="cooling_air_parts",
    says="fan belt, baffles and air seals, as found bad or missing",
    quantity="as the check shows",
    source=COMMON_PRACTICE,
    measure_first="belt length and section; which seals and plates the drawing shows",
    for_causes=(causes_condition.OIL_OVERHEATED,),
    not_with=(features.WATER_COOLED,),
)
FEED_PARTS = Part(
    id="feed_parts",
    says="oiler glasses, wicks and needles, grease cups, dippers or oil injection lines, as found bad",
    quantity="as the check shows",
    source=COMMON_PRACTICE,
    measure_first="thread and length of each; the ratio of the injection pump",
    for_causes=(causes_feed.OWN_FEED_STOPPED,),
    also=("drip oiler", "grease cup", "oil injection line"),
)

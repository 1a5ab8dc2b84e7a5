"""What every repair of the oil side uses up: oil, filter, and what cleaning and building take."""

from knowledge import sources
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.work import Access, Part

NEW_OIL = Part(
    id="new_oil",
    says="oil of the grade the engine maker names",
    quantity="the full fill, plus what the filter holds",
    source=COMMON_PRACTICE,
    measure_first="the measured fill, and what the filter holds",
    for_causes=(
        oil_causes.OIL_LEVEL_LOW,
        oil_causes.VISCOSITY_TOO_LOW,
        oil_causes.VISCOSITY_TOO_HIGH,
        oil_causes_contamination.FUEL_DILUTION,
        oil_causes_contamination.COOLANT_IN_OIL,
        oil_causes_condition.OIL_OVERHEATED,
        oil_causes_condition.OIL_DEGRADED,
        oil_causes_condition.OIL_FOAM_PRONE,
        pump_causes_fitted.PUMP_CAVITATION,
        suction_causes_sump.ICE_IN_PICKUP,
        delivery_causes.FILTER_BLOCKED,
        delivery_causes.FILTER_BYPASS_STUCK,
        assembly_causes.ASSEMBLY_LUBE_CLOG,
        assembly_causes.DIRT_IN_ASSEMBLY,
        assembly_causes.PART_SHEDDING_INSIDE,
        leaks_causes.DRAIN_PLUG_OUT,
        leaks_causes_openings.FILLER_CAP_OFF,
        leaks_causes_openings.SUMP_HOLED,
    ),
    for_places=(Access.DRAINED,),
    always=True,
    also=(
        "engine oil",
        "what oil to use",
        "oil grade",
    ),
)
NEW_FILTER = Part(
    id="new_filter",
    says="listed new filter with its seal",
    quantity="1 now, and 1 for the change that follows",
    source=COMMON_PRACTICE,
    measure_first="thread, seal diameter and bypass setting, compared with the list",
    for_causes=(
        delivery_causes.FILTER_BLOCKED,
        delivery_causes.FILTER_WRONG,
        delivery_causes.FILTER_DRAINBACK,
        delivery_causes.FILTER_BYPASS_STUCK,
        leaks_causes.FILTER_SEAL_LEAK,
        oil_causes_contamination.FUEL_DILUTION,
        oil_causes_contamination.COOLANT_IN_OIL,
        oil_causes_condition.OIL_DEGRADED,
        oil_causes_condition.OIL_FOAM_PRONE,
        assembly_causes.ASSEMBLY_LUBE_CLOG,
        assembly_causes.DIRT_IN_ASSEMBLY,
        assembly_causes.SEALANT_DEBRIS,
        assembly_causes.PART_SHEDDING_INSIDE,
    ),
    for_places=(Access.FILTER_OFF, Access.FILTER_CUT),
    always=True,
    note="with a good anti-drain-back valve if the filter lies on its side or hangs down",
    also=("oil filter",),
)
SECOND_OIL_AND_FILTER = Part(
    id="second_oil_and_filter",
    says="oil for a second change soon after, with the second filter",
    quantity="a full fill",
    source=sources.LABORATORY_COOLANT,
    measure_first="the measured fill",
    for_causes=(
        oil_causes_contamination.COOLANT_IN_OIL,
        oil_causes_condition.OIL_DEGRADED,
        oil_causes_condition.OIL_FOAM_PRONE,
    ),
)
CLEAN_OIL = Part(
    id="clean_oil",
    says="clean oil",
    quantity="about 1 litre (1 quart) of the engine's oil, to wet and fill the pump",
    source=COMMON_PRACTICE,
    for_causes=(pump_causes_fitted.PUMP_NOT_PRIMED,),
    for_places=(Access.PUMP_OFF, Access.PUMP_COVER_OFF),
)
PACKING_JELLY = Part(
    id="packing_jelly",
    says="petroleum jelly, only if the maker says to pack the pump with it",
    quantity="1 small tin",
    source=sources.PUMP_INSTALLATION_1983,
    measure_first="the maker's text for this pump; otherwise oil only",
    for_causes=(pump_causes_fitted.PUMP_NOT_PRIMED,),
    note="sources differ: others warn that jelly clogs screen and filter",
    also=("vaseline",),
)
BEARING_ASSEMBLY_OIL = Part(
    id="bearing_assembly_oil",
    says="bearing assembly oil",
    quantity="1 small bottle",
    source=COMMON_PRACTICE,
    for_places=(Access.CAP_OFF, Access.CRANK_OUT),
    also=(
        "assembly lube",
        "build lube",
    ),
)
CAM_ASSEMBLY_PASTE = Part(
    id="cam_assembly_paste",
    says="cam assembly paste",
    quantity="1 small tube",
    source=COMMON_PRACTICE,
    for_places=(Access.CAM_OUT,),
    also=(
        "cam lube",
        "assembly lube",
    ),
)
PLASTIC_GAUGE_STRIP = Part(
    id="plastic_gauge_strip",
    says="plastic gauge strip",
    quantity="1 strip per bearing, and some to spare",
    source=COMMON_PRACTICE,
    measure_first="a strip whose range covers the intended clearance",
    for_places=(Access.CAP_OFF, Access.CRANK_OUT),
    also=("plastigauge",),
)
MODELLING_CLAY = Part(
    id="modelling_clay",
    says="modelling clay",
    quantity="a handful, for the pickup gap and the tray",
    source=COMMON_PRACTICE,
    for_causes=(
        suction_causes_sump.PICKUP_CLEARANCE_TIGHT,
        suction_causes_sump.PICKUP_CLEARANCE_WIDE,
    ),
    for_places=(Access.SUMP_OFF, Access.TRAY_OFF, Access.PICKUP_OFF),
    also=("plasticine",),
)
MAKERS_SEALER = Part(
    id="makers_sealer",
    says="the maker's sealer",
    quantity="1 tube, in date",
    source=COMMON_PRACTICE,
    measure_first="where the manual asks for it, nowhere else",
    for_causes=(assembly_causes.SEALANT_DEBRIS,),
    for_places=(Access.SUMP_OFF, Access.FRONT_COVER_OFF, Access.VALLEY_OPEN),
    also=(
        "silicone",
        "sealant",
    ),
)
PLUG_SEALER = Part(
    id="plug_sealer",
    says="the maker's plug sealer",
    quantity="1 tube, in date",
    source=COMMON_PRACTICE,
    for_causes=(leaks_causes_openings.PLUG_EXPELLED_OUTSIDE,),
    for_places=(Access.PLUGS_OUT,),
    also=("sealant for core plugs",),
)
THREAD_LOCKER = Part(
    id="thread_locker",
    says="thread locker of medium strength, or the locks the manual asks for",
    quantity="1 small bottle",
    source=idea_from(sources.BUILD_ARTICLE_2017),
    measure_first="which threads the manual locks, and how",
    for_causes=(assembly_causes.FASTENER_LOOSE_INSIDE,),
    for_places=(Access.PUMP_COVER_OFF, Access.TRAY_OFF),
    also=(
        "thread lock",
        "locking fluid",
    ),
)
WITNESS_PAINT = Part(
    id="witness_paint",
    says="paint pen",
    quantity="1",
    source=COMMON_PRACTICE,
    for_causes=(assembly_causes.FASTENER_LOOSE_INSIDE,),
    for_places=(Access.DISTRIBUTOR_OUT, Access.PUMP_OFF, Access.CAP_OFF),
    also=(
        "torque marker",
        "paint marker",
    ),
)
OILWAY_BRUSHES = Part(
    id="oilway_brushes",
    says="oilway brushes",
    quantity="1 set, soft bristle, one for each bore size",
    source=COMMON_PRACTICE,
    measure_first="bore and length of every oilway",
    for_causes=(delivery_causes_galleries.GALLERY_BLOCKED, assembly_causes.DIRT_IN_ASSEMBLY),
    also=(
        "gallery brushes",
        "rifle brush",
        "bottle brush",
    ),
)

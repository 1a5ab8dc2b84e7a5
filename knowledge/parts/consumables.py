"""What every repair of the oil side uses up: oil, filter, and what cleaning and building take."""

from knowledge.causes.assembly import (
    ASSEMBLY_LUBE_CLOG,
    DIRT_IN_ASSEMBLY,
    FASTENER_LOOSE_INSIDE,
    PART_SHEDDING_INSIDE,
    SEALANT_DEBRIS,
)
from knowledge.causes.delivery import (
    FILTER_BLOCKED,
    FILTER_BYPASS_STUCK,
    FILTER_DRAINBACK,
    FILTER_WRONG,
    GALLERY_BLOCKED,
)
from knowledge.causes.leaks import (
    DRAIN_PLUG_OUT,
    FILLER_CAP_OFF,
    FILTER_SEAL_LEAK,
    PLUG_EXPELLED_OUTSIDE,
    SUMP_HOLED,
)
from knowledge.causes.oil import (
    COOLANT_IN_OIL,
    FUEL_DILUTION,
    OIL_DEGRADED,
    OIL_FOAM_PRONE,
    OIL_LEVEL_LOW,
    OIL_OVERHEATED,
    VISCOSITY_TOO_HIGH,
    VISCOSITY_TOO_LOW,
)
from knowledge.causes.pump import PUMP_CAVITATION, PUMP_NOT_PRIMED
from knowledge.causes.suction import ICE_IN_PICKUP, PICKUP_CLEARANCE_TIGHT, PICKUP_CLEARANCE_WIDE
from knowledge.parts.shapes import Part
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB02, OLD, PE17
from knowledge.vocabulary import Access

NEW_OIL = Part(
    "new_oil",
    "oil of the grade the engine maker names",
    "the fill, and the new filter's share",
    CP,
    measure_first="the measured fill, and what the filter holds",
    for_causes=(
        OIL_LEVEL_LOW,
        VISCOSITY_TOO_LOW,
        VISCOSITY_TOO_HIGH,
        FUEL_DILUTION,
        COOLANT_IN_OIL,
        OIL_OVERHEATED,
        OIL_DEGRADED,
        OIL_FOAM_PRONE,
        PUMP_CAVITATION,
        ICE_IN_PICKUP,
        FILTER_BLOCKED,
        FILTER_BYPASS_STUCK,
        ASSEMBLY_LUBE_CLOG,
        DIRT_IN_ASSEMBLY,
        PART_SHEDDING_INSIDE,
        DRAIN_PLUG_OUT,
        FILLER_CAP_OFF,
        SUMP_HOLED,
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
    "new_filter",
    "listed new filter with its seal",
    "1 now, and 1 for the change that follows",
    CP,
    measure_first="thread, seal diameter and the bypass setting against the list",
    for_causes=(
        FILTER_BLOCKED,
        FILTER_WRONG,
        FILTER_DRAINBACK,
        FILTER_BYPASS_STUCK,
        FILTER_SEAL_LEAK,
        FUEL_DILUTION,
        COOLANT_IN_OIL,
        OIL_DEGRADED,
        OIL_FOAM_PRONE,
        ASSEMBLY_LUBE_CLOG,
        DIRT_IN_ASSEMBLY,
        SEALANT_DEBRIS,
        PART_SHEDDING_INSIDE,
    ),
    for_places=(Access.FILTER_OFF, Access.FILTER_CUT),
    always=True,
    note="with a good anti-drain-back valve where the filter lies on its side or hangs down",
    also=("oil filter",),
)
SECOND_OIL_AND_FILTER = Part(
    "second_oil_and_filter",
    "oil for a second change soon after, with the second of the filters",
    "a full fill",
    HB02,
    measure_first="the measured fill",
    for_causes=(COOLANT_IN_OIL, OIL_DEGRADED, OIL_FOAM_PRONE),
)
CLEAN_OIL = Part(
    "clean_oil",
    "clean oil",
    "about 1 litre of what goes into the engine, to wet and fill the pump",
    CP,
    for_causes=(PUMP_NOT_PRIMED,),
    for_places=(Access.PUMP_OFF, Access.PUMP_COVER_OFF),
)
PACKING_JELLY = Part(
    "packing_jelly",
    "petroleum jelly, only where the maker says to pack the pump with it",
    "1 small tin",
    OLD,
    measure_first="the maker's text for this pump; without it oil only",
    for_causes=(PUMP_NOT_PRIMED,),
    note="sources differ: elsewhere jelly clogs screen and filter",
    also=("vaseline",),
)
BEARING_ASSEMBLY_OIL = Part(
    "bearing_assembly_oil",
    "bearing assembly oil",
    "1 small bottle",
    CP,
    for_places=(Access.CAP_OFF, Access.CRANK_OUT),
    also=(
        "assembly lube",
        "build lube",
    ),
)
CAM_ASSEMBLY_PASTE = Part(
    "cam_assembly_paste",
    "cam assembly paste",
    "1 small tube",
    CP,
    for_places=(Access.CAM_OUT,),
    also=(
        "cam lube",
        "assembly lube",
    ),
)
PLASTIC_GAUGE_STRIP = Part(
    "plastic_gauge_strip",
    "plastic gauge strip",
    "1 strip a bearing, and some to spare",
    CP,
    measure_first="the clearance meant, for the strip's range",
    for_places=(Access.CAP_OFF, Access.CRANK_OUT),
    also=("plastigauge",),
)
MODELLING_CLAY = Part(
    "modelling_clay",
    "modelling clay",
    "a handful, for the pickup gap and the tray",
    CP,
    for_causes=(PICKUP_CLEARANCE_TIGHT, PICKUP_CLEARANCE_WIDE),
    for_places=(Access.SUMP_OFF, Access.TRAY_OFF, Access.PICKUP_OFF),
    also=("plasticine",),
)
MAKERS_SEALER = Part(
    "makers_sealer",
    "the maker's sealer",
    "1 tube, in date",
    CP,
    measure_first="where the manual asks for it, and nowhere else",
    for_causes=(SEALANT_DEBRIS,),
    for_places=(Access.SUMP_OFF, Access.FRONT_COVER_OFF, Access.VALLEY_OPEN),
    also=(
        "silicone",
        "sealant",
    ),
)
PLUG_SEALER = Part(
    "plug_sealer",
    "the maker's plug sealer",
    "1 tube, in date",
    CP,
    for_causes=(PLUG_EXPELLED_OUTSIDE,),
    for_places=(Access.PLUGS_OUT,),
    also=("sealant for core plugs",),
)
THREAD_LOCKER = Part(
    "thread_locker",
    "thread locker of medium strength, or the locks the manual asks for",
    "1 small bottle",
    PE17,
    measure_first="which threads the manual locks, and how",
    for_causes=(FASTENER_LOOSE_INSIDE,),
    for_places=(Access.PUMP_COVER_OFF, Access.TRAY_OFF),
    also=(
        "thread lock",
        "locking fluid",
    ),
)
WITNESS_PAINT = Part(
    "witness_paint",
    "paint pen",
    "1",
    CP,
    for_causes=(FASTENER_LOOSE_INSIDE,),
    for_places=(Access.DISTRIBUTOR_OUT, Access.PUMP_OFF, Access.CAP_OFF),
    also=(
        "torque marker",
        "paint marker",
    ),
)
OILWAY_BRUSHES = Part(
    "oilway_brushes",
    "oilway brushes",
    "1 set, soft bristle, one for each bore size",
    CP,
    measure_first="bore and length of every oilway",
    for_causes=(GALLERY_BLOCKED, DIRT_IN_ASSEMBLY),
    also=(
        "gallery brushes",
        "rifle brush",
        "bottle brush",
    ),
)

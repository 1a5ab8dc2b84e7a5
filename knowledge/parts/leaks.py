"""Parts that stop oil from leaving the engine."""

from knowledge.causes.leaks import (
    BREATHER_BLOCKED,
    DRAIN_PLUG_OUT,
    EXTERNAL_LEAK_MAJOR,
    FILLER_CAP_OFF,
    OIL_LINE_LEAK,
    PLUG_EXPELLED_OUTSIDE,
    SHAFT_SEAL_LEAK,
    WRONG_GASKET_ON_ACCESSORY,
)
from knowledge.parts.shapes import Part
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Access

LEAK_SEAL = Part(
    "leak_seal",
    "seal, gasket or line for the place found",
    "1",
    CP,
    measure_first="wash down and find the place first; then its diameter, thread or print",
    for_causes=(EXTERNAL_LEAK_MAJOR,),
)
OIL_LINE = Part(
    "oil_line",
    "oil line or hose with fittings, seals and clips",
    "1 set",
    CP,
    measure_first="bore, length, threads and seat angle; rated for hot oil and cold-start pressure",
    for_causes=(OIL_LINE_LEAK,),
    also=(
        "braided hose",
        "oil pipe",
    ),
)
DRAIN_PLUG = Part(
    "drain_plug",
    "drain plug or drain valve",
    "1",
    CP,
    measure_first="thread, length, seat; an insert of that size where the sump's thread is gone",
    for_causes=(DRAIN_PLUG_OUT,),
    also=("sump plug",),
)
DRAIN_PLUG_WASHER = Part(
    "drain_plug_washer",
    "new drain plug washer",
    "1",
    CP,
    measure_first="diameters; a taper plug has none",
    for_causes=(DRAIN_PLUG_OUT,),
    for_places=(Access.DRAINED,),
    also=(
        "sump plug washer",
        "copper washer",
    ),
)
DRAIN_PLUG_LOCK = Part(
    "drain_plug_lock",
    "locking wire for the drain plug, where it shakes",
    "a short length",
    CP,
    for_causes=(DRAIN_PLUG_OUT,),
)
FRONT_SEAL = Part(
    "front_seal",
    "front seal",
    "1",
    CP,
    measure_first="shaft diameter where the lip runs, bore, width, which way the shaft turns",
    for_causes=(SHAFT_SEAL_LEAK,),
    for_places=(Access.FRONT_COVER_OFF, Access.CRANK_OUT),
    also=(
        "crank front seal",
        "timing cover seal",
    ),
)
REAR_MAIN_SEAL = Part(
    "rear_main_seal",
    "rear main seal",
    "1",
    CP,
    measure_first="shaft diameter where the lip runs, bore; rope, lip or two halves; thrower or "
    "scroll on the shaft",
    for_causes=(SHAFT_SEAL_LEAK,),
    for_places=(Access.FLYWHEEL_OFF, Access.CRANK_OUT),
    also=("crank rear seal",),
)
SEAL_SLEEVE = Part(
    "seal_sleeve",
    "thin sleeve over the groove a seal has worn",
    "1 a grooved shaft",
    CP,
    measure_first="shaft diameter beside the groove, groove's place",
    for_causes=(SHAFT_SEAL_LEAK,),
)
BREATHER_VALVE = Part(
    "breather_valve",
    "breather valve, hose and trap",
    "what cannot be cleaned",
    CP,
    measure_first="hose bore, valve direction and the flow it is made for",
    for_causes=(BREATHER_BLOCKED,),
)
EXPELLED_PLUG = Part(
    "expelled_plug",
    "core, cup or gallery plug, or a threaded one in its place",
    "1, and its neighbours if they are of one age",
    CP,
    measure_first="bore, depth, cup or disc; thread where it is to be tapped",
    for_causes=(PLUG_EXPELLED_OUTSIDE,),
)
FILLER_CAP = Part(
    "filler_cap",
    "oil filler cap with its seal, where lost or spoilt",
    "1",
    CP,
    measure_first="neck diameter, thread or bayonet; with a vent or without",
    for_causes=(FILLER_CAP_OFF,),
)
ACCESSORY_GASKET = Part(
    "accessory_gasket",
    "gasket made for that accessory pad",
    "1",
    CP,
    measure_first="laid on pad and accessory: every port open or shut as it should be",
    for_causes=(WRONG_GASKET_ON_ACCESSORY,),
)

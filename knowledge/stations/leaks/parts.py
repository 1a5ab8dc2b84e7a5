"""Parts for a repair of the outside leaks."""

from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.leaks import causes, causes_openings
from knowledge.work import Access, Part

LEAK_SEAL = Part(
    id="leak_seal",
    says="seal, gasket or line for the place found",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="wash it down and find the place first; then its diameter, thread or print",
    for_causes=(causes.EXTERNAL_LEAK_MAJOR,),
)
OIL_LINE = Part(
    id="oil_line",
    says="oil line or hose with fittings, seals and clips",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="bore, length, threads and seat angle; rated for hot oil and cold-start pressure",
    for_causes=(causes.OIL_LINE_LEAK,),
    also=(
        "braided hose",
        "oil pipe",
    ),
)
DRAIN_PLUG = Part(
    id="drain_plug",
    says="drain plug or drain valve",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="thread, length, seat; an insert of that size if the sump's thread is gone",
    for_causes=(causes.DRAIN_PLUG_OUT,),
    also=("sump plug",),
)
DRAIN_PLUG_WASHER = Part(
    id="drain_plug_washer",
    says="new drain plug washer",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="diameters; a taper plug needs none",
    for_causes=(causes.DRAIN_PLUG_OUT,),
    for_places=(Access.DRAINED,),
    also=(
        "sump plug washer",
        "copper washer",
    ),
)
DRAIN_PLUG_LOCK = Part(
    id="drain_plug_lock",
    says="locking wire for the drain plug, if it can shake loose",
    quantity="a short length",
    source=COMMON_PRACTICE,
    for_causes=(causes.DRAIN_PLUG_OUT,),
)
FRONT_SEAL = Part(
    id="front_seal",
    says="front seal",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="shaft diameter where the lip runs, bore, width, which way the shaft turns",
    for_causes=(causes.SHAFT_SEAL_LEAK,),
    for_places=(Access.FRONT_COVER_OFF, Access.CRANK_OUT),
    also=(
        "crank front seal",
        "timing cover seal",
    ),
)
REAR_MAIN_SEAL = Part(
    id="rear_main_seal",
    says="rear main seal",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="shaft diameter where the lip runs, bore; rope, lip or two halves; thrower or "
    "scroll on the shaft",
    for_causes=(causes.SHAFT_SEAL_LEAK,),
    for_places=(Access.FLYWHEEL_OFF, Access.CRANK_OUT),
    also=("crank rear seal",),
)
SEAL_SLEEVE = Part(
    id="seal_sleeve",
    says="thin repair sleeve over the groove a seal has worn",
    quantity="1 per grooved shaft",
    source=COMMON_PRACTICE,
    measure_first="shaft diameter beside the groove, position of the groove",
    for_causes=(causes.SHAFT_SEAL_LEAK,),
)
BREATHER_VALVE = Part(
    id="breather_valve",
    says="breather valve, hose and trap",
    quantity="whatever you cannot clean",
    source=COMMON_PRACTICE,
    measure_first="hose bore, valve direction and the flow it is made for",
    for_causes=(causes_openings.BREATHER_BLOCKED,),
)
EXPELLED_PLUG = Part(
    id="expelled_plug",
    says="core, cup or gallery plug, or a threaded one in its place",
    quantity="1, and its neighbours if they are of the same age",
    source=COMMON_PRACTICE,
    measure_first="bore, depth, cup or disc; thread if it is to be tapped",
    for_causes=(causes_openings.PLUG_EXPELLED_OUTSIDE,),
)
FILLER_CAP = Part(
    id="filler_cap",
    says="oil filler cap with its seal, if lost or damaged",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="neck diameter, thread or bayonet; vented or not",
    for_causes=(causes_openings.FILLER_CAP_OFF,),
)
ACCESSORY_GASKET = Part(
    id="accessory_gasket",
    says="gasket made for that accessory pad",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="lay it on pad and accessory: every port open or shut as it should be",
    for_causes=(causes_openings.WRONG_GASKET_ON_ACCESSORY,),
)

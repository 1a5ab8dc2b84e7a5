"""Bearings of balance and auxiliary shafts and of idler gears, and the checks that show them."""

from knowledge import sources
from knowledge.engines import features_build
from knowledge.model import HARDLY_EVER, Finding, Measure, Stage, Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.bearings import quantities_shafts as quantities
from knowledge.work import Access, Caution, Inspection

BALANCE_SHAFT_BEARINGS_WORN = Finding(
    id="balance_shaft_bearings_worn",
    station=Station.BEARINGS,
    says="a balance shaft's bearings are worn, scored or turned",
    asks="Balance shaft bearings worn, scored or turned, or their clearance over the limit?",
    source=sources.ARMY_TM_347_CAMSHAFT,
    denies="the balance shaft bearings are sound",
    stage=Stage.OPENED,
    normal="0.02 to 0.11 mm when new, by engine; no play that can be felt",
    background=HARDLY_EVER,
    also=("balance shaft bushes worn", "balancer bearings gone", "balance shaft loose"),
)
AUXILIARY_SHAFT_BEARINGS_WORN = Finding(
    id="auxiliary_shaft_bearings_worn",
    station=Station.BEARINGS,
    says="the bearings of the auxiliary (jack or intermediate) shaft are worn or turned",
    asks="Auxiliary (jack or intermediate) shaft bearings worn, scored or turned?",
    source=COMMON_PRACTICE,
    denies="the auxiliary shaft's bearings are sound",
    stage=Stage.OPENED,
    normal="0.015 to 0.066 mm when new; holes over their oilways",
    background=HARDLY_EVER,
    also=("jackshaft bearings worn", "intermediate shaft bushes worn", "aux shaft bearings gone"),
)
IDLER_GEAR_BUSH_WORN = Finding(
    id="idler_gear_bush_worn",
    station=Station.BEARINGS,
    says="the bush or hub of a timing idler gear is worn",
    asks="Bush or hub of a timing idler gear worn, or the gear rocking on its hub?",
    source=sources.MARINE_IDLER_BUSH,
    denies="the idler gears do not rock on their hubs",
    stage=Stage.OPENED,
    normal="0.025 to 0.075 mm when new, 0.15 to 0.20 mm at most",
    background=HARDLY_EVER,
    also=("idler gear bushing worn", "timing idler loose", "intermediate gear bush worn"),
)
BALANCE_SHAFT_MEASURED = Measure(
    quantity=quantities.BALANCE_SHAFT_CLEARANCE,
    station=Station.BEARINGS,
    asks="Balance shaft bearing clearance, on the diameter?",
    source=sources.BALANCE_SHAFT_FOUR_2009,
    also=("balance shaft bearing clearance", "balancer clearance"),
)
AUXILIARY_SHAFT_MEASURED = Measure(
    quantity=quantities.AUXILIARY_SHAFT_CLEARANCE,
    station=Station.BEARINGS,
    asks="Auxiliary shaft bearing clearance, on the diameter?",
    source=COMMON_PRACTICE,
    also=("jackshaft clearance", "intermediate shaft clearance"),
)
IDLER_BUSH_MEASURED = Measure(
    quantity=quantities.IDLER_BUSH_CLEARANCE,
    station=Station.BEARINGS,
    asks="Idler gear bush clearance, on the diameter?",
    source=sources.MARINE_IDLER_BUSH,
    also=("idler bush clearance", "idler gear clearance"),
)
LOOK_AT_THE_BALANCE_SHAFTS = Inspection(
    id="look_at_the_balance_shafts",
    station=Station.BEARINGS,
    says="balance shafts: play, bearings and the joint that feeds them",
    steps=(
        "mark the timing of the shafts to the crank before you take anything off",
        "rock each shaft; look for scored journals, a turned bearing, a lost feed O-ring",
        "gauge strip or bore gauge and micrometer: clearance on the diameter",
    ),
    minutes=40,
    access=Access.SUMP_OFF,
    reveals=(BALANCE_SHAFT_BEARINGS_WORN,),
    source=sources.BALANCE_SHAFT_FOUR_2009,
    measures=(BALANCE_SHAFT_MEASURED,),
    tools=("gauge strip", "micrometer", "lamp"),
    cautions=(Caution.LIFTING, Caution.BATTERY, Caution.HEAVY),
    destroys="the shafts' timing, if they come off",
    keep="mark and photograph the timing of the shafts",
    only_with=(features_build.BALANCE_SHAFTS,),
    also=("check the balance shafts", "balancer unit off"),
)
PULL_THE_AUXILIARY_SHAFT = Inspection(
    id="pull_the_auxiliary_shaft",
    station=Station.BEARINGS,
    says="auxiliary (jack) shaft out: its journals and bearings",
    steps=(
        "pump drive out first; mark the timing of the shaft",
        "prime with the shaft in and see which bearing pours",
        "shaft out: bore gauge in each bearing, micrometer on each journal; holes over the oilways",
    ),
    minutes=45,
    access=Access.FRONT_COVER_OFF,
    reveals=(AUXILIARY_SHAFT_BEARINGS_WORN,),
    source=COMMON_PRACTICE,
    measures=(AUXILIARY_SHAFT_MEASURED,),
    tools=("bore gauge", "micrometer", "lamp"),
    cautions=(Caution.EYES,),
    destroys="the shaft's timing",
    keep="mark the timing of the shaft and of what it drives",
    only_with=(features_build.AUXILIARY_SHAFT,),
    also=("check the jackshaft", "intermediate shaft out"),
)
ROCK_THE_IDLER_GEARS = Inspection(
    id="rock_the_idler_gears",
    station=Station.BEARINGS,
    says="timing gears: rock each idler on its hub, measure its bush",
    steps=(
        "grip the rim of each idler with both hands and rock it: no wobble",
        "note the timing marks, then idler off: bush by bore gauge, hub by micrometer",
        "look at the oil hole in the hub and the thrust faces",
    ),
    minutes=25,
    access=Access.FRONT_COVER_OFF,
    reveals=(IDLER_GEAR_BUSH_WORN,),
    source=sources.MARINE_IDLER_BUSH,
    measures=(IDLER_BUSH_MEASURED,),
    tools=("bore gauge", "micrometer", "lamp"),
    cautions=(Caution.EYES, Caution.SHARP),
    destroys="the timing, if an idler comes off",
    keep="photograph the timing marks together",
    only_with=(features_build.IDLER_GEARS,),
    also=("check the idler gear", "timing gear play"),
)

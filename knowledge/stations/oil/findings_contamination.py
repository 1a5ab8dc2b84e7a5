"""Fuel, coolant, water and sludge in the oil, and the checks that show them."""

from knowledge import sources
from knowledge.model import EXCEPTIONAL, OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.oil import findings, findings_heat
from knowledge.work import Access, Caution, Inspection

FUEL_GETS_IN = Finding(
    id="fuel_gets_in",
    station=Station.OIL,
    says="a way in for fuel was found: lift pump, float, injector or choke",
    asks="Lift pump weeping, carburettor flooding, injector leaking or choke stuck?",
    source=sources.MARINE_OWNERS_MANUAL_2008,
    denies="the fuel system is tight",
    stage=Stage.OUTSIDE,
    normal="tight, and no flooding",
    background=RARE,
    also=("fuel pump diaphragm leaking", "carb flooding", "leaking injector", "runs too rich"),
)
LOOK_FOR_THE_FUEL = Inspection(
    id="look_for_the_fuel",
    station=Station.OIL,
    says="look for where fuel gets into the oil",
    steps=(
        "engine cold; no flame, spark or switch; open up, on a boat run the blower five minutes",
        "sniff low down: only where no fuel vapour is left, switch the battery off and look",
        "lift pump's weep hole, float level, choke, injectors and leak-off pipes",
    ),
    minutes=15,
    access=Access.OUTSIDE,
    reveals=(FUEL_GETS_IN,),
    source=COMMON_PRACTICE,
    tools=("lamp", "extinguisher"),
    cautions=(Caution.FIRE, Caution.BATTERY, Caution.INJECTION, Caution.BOAT),
    also=("fuel pump diaphragm", "flooding carburettor", "injector leak"),
)

COOLANT_LEVEL_FALLING = Finding(
    id="coolant_level_falling",
    station=Station.OIL,
    says="the coolant level keeps falling and no leak shows outside",
    asks="Does the coolant keep falling with no leak outside?",
    source=COMMON_PRACTICE,
    denies="the coolant level holds",
    stage=Stage.KNOWN,
    normal="steady",
    background=OCCASIONAL,
    also=("losing coolant", "using water", "coolant disappears", "radiator needs topping up"),
)
OIL_FILM_IN_COOLANT = Finding(
    id="oil_film_in_coolant",
    station=Station.OIL,
    says="there is an oil film on the coolant",
    asks="Cold, cap off: an oil film or brown foam on the coolant?",
    source=sources.ARMY_TM_272_TABLE,
    denies="no oil on the coolant",
    stage=Stage.OUTSIDE,
    normal="none",
    background=VERY_RARE,
    also=("oil in radiator", "oil in coolant", "sludge in header tank", "brown foam in coolant"),
)
COOLING_SYSTEM_LOSES_PRESSURE = Finding(
    id="cooling_system_loses_pressure",
    station=Station.OIL,
    says="the cooling system does not hold test pressure and is dry outside",
    asks="Pumped up cold to the cap's figure: does it lose pressure, dry outside?",
    source=COMMON_PRACTICE,
    denies="the cooling system holds test pressure",
    stage=Stage.OUTSIDE,
    normal="holds the cap's figure for ten minutes",
    background=RARE,
    also=("fails pressure test", "coolant pressure drops", "block test positive"),
)
COOLANT_GETS_IN = Finding(
    id="coolant_gets_in",
    station=Station.OIL,
    says="a way in for water or coolant was found: cooler, gasket, liner seal or crack",
    asks="Way in for water found: oil cooler, head gasket, liner seal, water pump or crack?",
    source=sources.ARMY_TM_272_TABLE,
    denies="no way in for water was found",
    stage=Stage.OPENED,
    normal="every seal between water and oil tight",
    background=EXCEPTIONAL,
    also=(
        "oil cooler leaking inside",
        "head gasket blown to an oilway",
        "liner seals leaking",
        "water pump seal let water in",
    ),
)
LOOK_FOR_THE_WATER = Inspection(
    id="look_for_the_water",
    station=Station.OIL,
    says="look for where water gets into the oil",
    steps=(
        "engine cold, sump off; pump the cooling system up to the cap's figure",
        "light under the liners, head joint and water pump: watch where water comes",
        "take the oil cooler off and test its oil side with air under water",
    ),
    minutes=40,
    access=Access.SUMP_OFF,
    reveals=(COOLANT_GETS_IN,),
    source=COMMON_PRACTICE,
    tools=("cooling system tester", "lamp", "air line"),
    cautions=(Caution.HOT, Caution.PRESSURE, Caution.USED_OIL, Caution.LIFTING),
    also=("find the coolant leak into the oil", "oil cooler pressure test"),
)
CROSS_CHECK_COOLANT = Inspection(
    id="cross_check_coolant",
    station=Station.OIL,
    says="coolant in the oil, oil in the coolant: header tank, cap, exhaust, pressure test",
    steps=(
        "cold only: never open a hot system",
        (
            "look for oil film in the header tank and cream under the filler cap; compare the "
            "level with the last note"
        ),
        "pump the cooling system up to the cap's figure; watch it for ten minutes",
        "only if there is no stop alarm: start it and look at the exhaust once warm",
    ),
    minutes=25,
    access=Access.OUTSIDE,
    reveals=(
        OIL_FILM_IN_COOLANT,
        COOLANT_LEVEL_FALLING,
        COOLING_SYSTEM_LOSES_PRESSURE,
        findings_heat.SWEET_SMELL,
        findings_heat.WHITE_PLUME,
        findings.OIL_MILKY,
        findings.CREAM_IN_FILLER_ONLY,
    ),
    source=idea_from(sources.ARMY_TM_272_TABLE),
    tools=("cooling system tester", "lamp"),
    cautions=(
        Caution.HOT,
        Caution.PRESSURE,
        Caution.EXHAUST,
        Caution.ROTATING,
        Caution.BOAT,
        Caution.TRACTOR,
    ),
    also=("head gasket test", "coolant pressure test", "water in oil test"),
)

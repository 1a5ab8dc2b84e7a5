"""Where water or fuel got into the oil: cured before anything is washed or flushed."""

from knowledge import sources
from knowledge.engines import features, features_build
from knowledge.reassembly import what_was_found
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.work import Caution, Phase, Task

COOLANT_LEAK_CURED = Task(
    id="coolant_leak_cured",
    phase=Phase.CLEANING,
    says="where water or coolant got in: found and cured before any flushing",
    how=(
        "cooling system at the cap's pressure, cold: look up from below for the drip",
        (
            "test the oil cooler by itself: air under water; it leaks oil out when running, water "
            "in at rest"
        ),
        "head gasket, core plugs inside, liners and their rings, cracks in head and block",
        "no coolant lost: condensation from short cold trips, rain or a flooded bilge",
    ),
    source=sources.ARMY_TM_272_TABLE,
    remedy="find it: without finding the leak, an oil change is wasted",
    guards=(oil_causes_contamination.COOLANT_IN_OIL,),
    after=what_was_found.COOLANT,
    cautions=(
        Caution.HOT,
        Caution.PRESSURE,
        Caution.WASTE,
        Caution.LIFTING,
    ),
    also=("head gasket", "water in the oil", "where does the water come from"),
)
FUEL_LEAK_CURED = Task(
    id="fuel_leak_cured",
    phase=Phase.CLEANING,
    says="where fuel got into the oil: found and cured",
    how=(
        "lift pump off its pad: diaphragm, shaft seal and weep hole",
        "carburettor: float, needle, choke; injection: dribbling injectors, leak-off, pump seal",
        "running too cold or idling for hours: check the thermostat, and talk to the driver",
    ),
    source=sources.MARINE_OWNERS_MANUAL_2008,
    remedy="renew pump, needle or injector; then change the oil",
    guards=(oil_causes_contamination.FUEL_DILUTION,),
    after=what_was_found.FUEL,
    cautions=(Caution.FIRE, Caution.BATTERY, Caution.INJECTION, Caution.BOAT),
    also=("fuel pump diaphragm", "gas in the oil", "diesel in the oil"),
)
LIFT_PUMP_SEALED = Task(
    id="lift_pump_sealed",
    phase=Phase.CLEANING,
    says="mechanical fuel pump renewed or rebuilt, its weep hole dry",
    how=(
        "a modern, alcohol-proof diaphragm if the fuel contains alcohol",
        "pump primed by hand: nothing at the weep hole, nothing into the block",
    ),
    source=COMMON_PRACTICE,
    remedy="fit another pump",
    guards=(oil_causes_contamination.FUEL_DILUTION,),
    only_with=(features.MECHANICAL_LIFT_PUMP,),
    not_with=(features_build.COMMON_RAIL,),
    after=what_was_found.FUEL,
    cautions=(Caution.FIRE, Caution.BATTERY, Caution.BOAT),
    also=("fuel pump rebuild kit",),
)
INJECTORS_TESTED = Task(
    id="injectors_tested",
    phase=Phase.CLEANING,
    says="injectors and the shaft seal of the injection or high-pressure pump tested after fuel",
    how=(
        "to a qualified shop: opening pressure, dribble, leak-off",
        "pipes under the rocker cover: unions dry under pressure",
    ),
    source=COMMON_PRACTICE,
    remedy="have injector or pump overhauled",
    guards=(oil_causes_contamination.FUEL_DILUTION,),
    only_with=(features.DIESEL,),
    after=what_was_found.FUEL,
    cautions=(Caution.INJECTION, Caution.FIRE, Caution.EYES),
    also=("leaking injector", "diesel pump seal"),
)
LEAK_OFF_PIPES_DRY = Task(
    id="leak_off_pipes_dry",
    phase=Phase.CLEANING,
    says="injector leak-off (return) pipes and injector seals renewed if cracked or wet, then dry",
    how=(
        "pipes, O-rings and washers under the valve cover: cracked, hard or wet ones renewed",
        "common rail: flow from each injector's return measured beside the others",
        "lift or feed pump on, a dye or dry paper under each joint: nothing wet before the cover goes on",
    ),
    source=COMMON_PRACTICE,
    remedy="renew pipe, seal or injector and prove it again",
    guards=(oil_causes_contamination.FUEL_DILUTION,),
    only_with=(features.DIESEL,),
    after=what_was_found.FUEL,
    cautions=(Caution.INJECTION, Caution.FIRE, Caution.EYES),
    also=("leak-off rail", "injector return pipe", "spill rail", "injector O-ring"),
)

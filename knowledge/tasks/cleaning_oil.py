"""What is done about coolant, fuel, sludge or a strange fluid in the oil before it runs again."""

from knowledge.causes.bearings import BEARING_WIPED
from knowledge.causes.delivery import FILTER_BLOCKED
from knowledge.causes.leaks import BREATHER_BLOCKED
from knowledge.causes.oil import COOLANT_IN_OIL, FUEL_DILUTION, OIL_DEGRADED, OIL_FOAM_PRONE
from knowledge.causes.suction import ICE_IN_PICKUP, PICKUP_SCREEN_BLOCKED
from knowledge.engines.features import DIESEL, MECHANICAL_LIFT_PUMP, TURBOCHARGED, WATER_COOLED
from knowledge.findings.oil import ADDITIVE_OR_FLUSH_IN_OIL
from knowledge.findings.suction_debris import ICE_AT_SCREEN
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import D13, GLY, HB02, HB08, HPA, JIO, LCF, TCF
from knowledge.tasks.found import COOLANT, FUEL, SLUDGE, WASHING
from knowledge.vocabulary import Caution, Hold, Phase, Task

# -------------------------------------------------------------------------------- coolant

COOLANT_LEAK_CURED = Task(
    "coolant_leak_cured",
    Phase.CLEANING,
    "way by which water or coolant got in: found and cured, before any flushing",
    (
        "cooling system under the cap's pressure, cold: look up from below for the drip",
        "oil cooler tried by itself: air under water; it leaks oil out running, water in at rest",
        "head gasket, core plugs inside, liners and their rings, cracks in head and block",
        "no coolant lost: condensation from short cold trips, rain or a flooded bilge",
    ),
    HB02,
    remedy="find it: an oil change without the leak found is thrown away",
    guards=(COOLANT_IN_OIL,),
    after=COOLANT,
    cautions=(
        Caution.HOT,
        Caution.PRESSURE,
        Caution.WASTE,
        Caution.LIFTING,
    ),
    also=("head gasket", "water in the oil", "where does the water come from"),
)
BEARINGS_SEEN_AFTER_COOLANT = Task(
    "bearings_seen_after_coolant",
    Phase.CLEANING,
    "main and rod shells looked at after coolant in the oil",
    (
        "a cap of each kind off, the lowest fed first; keep shells to their places",
        "dark, etched or with gelled oil on them: every bearing comes out",
        "sound and the oil on them still flows: flush, then close",
    ),
    D13,
    remedy="take the engine down, measure the journals, fit new shells",
    why="coolant eats the lining, and glycol gels the oil in the feeds",
    guards=(BEARING_WIPED,),
    after=COOLANT,
    cautions=(Caution.LIFTING, Caution.HAND_TURN, Caution.USED_OIL),
    also=("check bearings for corrosion", "glycol on bearings"),
)
COOLANT_FLUSHED_OUT = Task(
    "coolant_flushed_out",
    Phase.CLEANING,
    "coolant flushed out of the oil circuit, or the circuit taken apart and washed",
    (
        "drain hot, filter off, sump, cooler and lines emptied; a sample to the laboratory",
        "a trace and no gel: new oil and filter do it",
        "sticky black or grey coat: the engine maker's own flush for glycol, to the letter",
        "gel that must be scraped, or metal in the filter: no flushing, take it down and wash",
    ),
    GLY,
    remedy="strip and wash what still shows coat or gel",
    guards=(COOLANT_IN_OIL, FILTER_BLOCKED),
    after=COOLANT,
    cautions=(*WASHING, Caution.FIRE, Caution.HOT, Caution.USED_OIL),
    also=("flush coolant from the engine", "clean milky oil out"),
)
OIL_CHANGED_TWICE = Task(
    "oil_changed_twice",
    Phase.CLEANING,
    "second oil and filter change after coolant planned, its filter to be cut",
    (
        "first filling is a rinse: change it with its filter after the first warm running",
        "second filter cut at about 50 hours, or a sample sent: no glycol, no metal",
    ),
    GLY,
    Hold.NOTE,
    remedy="write both dates into the job",
    guards=(COOLANT_IN_OIL, FILTER_BLOCKED),
    after=COOLANT,
    cautions=(
        Caution.USED_OIL,
        Caution.WASTE,
        Caution.HOT,
        Caution.SHARP,
    ),
    also=("change oil twice",),
)
TURBO_LOOKED_AT_AFTER_COOLANT = Task(
    "turbo_looked_at_after_coolant",
    Phase.CLEANING,
    "turbo bearings felt and looked at after coolant in the oil",
    (
        "cold, inlet hose off: spin the shaft, lift and push it along",
        "brown or discoloured bronze, any roughness: to a turbo shop",
    ),
    TCF,
    remedy="have the turbo rebuilt or renewed before the oil is trusted to it",
    guards=(COOLANT_IN_OIL,),
    only_with=(TURBOCHARGED,),
    after=COOLANT,
    cautions=(Caution.HOT, Caution.SHARP),
    also=("turbo after water in oil",),
)
FROZEN_WATER_DRAINED = Task(
    "frozen_water_drained",
    Phase.CLEANING,
    "all water out of sump, pump and lines after a freeze-up",
    (
        "thaw it through in a warm place; no flame, no cranking frozen",
        "drain until oil comes clear; look at screen, pump and drive for what the ice broke",
        "find where the water came from: breather, short trips, coolant",
    ),
    CP,
    remedy="drain again after a night's standing",
    guards=(ICE_IN_PICKUP, BREATHER_BLOCKED),
    after=(ICE_AT_SCREEN,),
    cautions=(Caution.FIRE, Caution.WASTE),
    also=("frozen oil pan", "ice in the sump"),
)

# ----------------------------------------------------------------------------------- fuel

FUEL_LEAK_CURED = Task(
    "fuel_leak_cured",
    Phase.CLEANING,
    "way by which fuel got into the oil: found and cured",
    (
        "lift pump off its pad: diaphragm, shaft seal and weep hole",
        "carburettor: float, needle, choke; injection: dribbling injectors, leak-off, pump seal",
        "running too cold or idling for hours: thermostat, and a word with the driver",
    ),
    HB08,
    remedy="renew pump, needle or injector; then change the oil",
    guards=(FUEL_DILUTION,),
    after=FUEL,
    cautions=(Caution.FIRE, Caution.BATTERY, Caution.INJECTION, Caution.BOAT),
    also=("fuel pump diaphragm", "gas in the oil", "diesel in the oil"),
)
FUELLED_OIL_CHANGED = Task(
    "fuelled_oil_changed",
    Phase.CLEANING,
    "oil and filter with fuel in them out, fresh oil of the right grade in",
    (
        "no cranking and no running before it is out: the crankcase can explode",
        "drain in the open air, cooler and remote filter too; let the crankcase air",
        "fresh oil and filter to the mark; after an hour look at level and smell again",
    ),
    LCF,
    remedy="level up or smell back: the leak is not cured",
    why="5 % of fuel turns a 30 oil into a 20",
    guards=(FUEL_DILUTION,),
    after=FUEL,
    cautions=(Caution.FIRE, Caution.WASTE, Caution.USED_OIL, Caution.BOAT),
    also=("change thinned oil",),
)
LIFT_PUMP_SEALED = Task(
    "lift_pump_sealed",
    Phase.CLEANING,
    "mechanical fuel pump renewed or rebuilt, its weep hole dry",
    (
        "a diaphragm of today's stuff where the fuel has alcohol in it",
        "pump primed by hand: nothing at the weep hole, nothing into the block",
    ),
    HB08,
    remedy="fit another pump",
    guards=(FUEL_DILUTION,),
    only_with=(MECHANICAL_LIFT_PUMP,),
    after=FUEL,
    cautions=(Caution.FIRE, Caution.BATTERY, Caution.BOAT),
    also=("fuel pump rebuild kit",),
)
INJECTORS_TESTED = Task(
    "injectors_tested",
    Phase.CLEANING,
    "injectors and the injection pump's shaft seal tested after fuel in the oil",
    (
        "to a qualified shop: opening pressure, dribble, leak-off",
        "pipes under the rocker cover: unions dry under pressure",
    ),
    CP,
    remedy="have injector or pump overhauled",
    guards=(FUEL_DILUTION,),
    only_with=(DIESEL,),
    after=FUEL,
    cautions=(Caution.INJECTION, Caution.FIRE, Caution.EYES),
    also=("leaking injector", "diesel pump seal"),
)

# --------------------------------------------------------------------- sludge, strange fluids

SLUDGE_TAKEN_OUT = Task(
    "sludge_taken_out",
    Phase.CLEANING,
    "sludge and baked oil scraped and washed out by hand, not flushed loose",
    (
        "sump, valve covers, valley and front cover off: scrape, catch, wipe",
        "no flush poured into a sludged engine that runs: it lets go at once, onto the screen",
        "what cannot be reached comes off with clean oil, changed at short intervals",
    ),
    JIO,
    remedy="open it once more after the first short interval and look at the screen",
    why="cleaning a sludged screen gave one engine 20 psi back; the next flake takes it away",
    guards=(OIL_DEGRADED, PICKUP_SCREEN_BLOCKED, BREATHER_BLOCKED),
    after=SLUDGE,
    cautions=(*WASHING, Caution.USED_OIL),
    also=("desludge", "engine flush"),
)
SLUDGE_CAUSE_CURED = Task(
    "sludge_cause_cured",
    Phase.CLEANING,
    "what made the sludge: cured",
    (
        "thermostat opens and shuts, breather and its valve draw, oil of the right kind",
        "an interval by hours or months for an engine that idles or makes short trips",
        "coolant and fuel ruled out",
    ),
    CP,
    Hold.NOTE,
    remedy="write the interval on the engine",
    guards=(OIL_DEGRADED, BREATHER_BLOCKED),
    after=SLUDGE,
    also=("why does it sludge", "oil change interval"),
)
COOLING_TESTED_TIGHT = Task(
    "cooling_tested_tight",
    Phase.CLEANING,
    "cooling system holds its pressure before oil goes in",
    (
        "filled, at the cap's pressure, cold, for half an hour; sump off or drain open below",
        "heads on and torqued: no drip inside",
    ),
    HB02,
    remedy="find the drip before the sump is closed",
    guards=(COOLANT_IN_OIL,),
    only_with=(WATER_COOLED,),
    after=COOLANT,
    cautions=(Caution.PRESSURE, Caution.HOT),
    also=("pressure test the block",),
)
STRANGE_FLUID_OUT = Task(
    "strange_fluid_out",
    Phase.CLEANING,
    "oil with flush, additive or another fluid in it out to the last drop",
    (
        "drain hot with filter, cooler and lines emptied; leave it open to drip overnight",
        "fresh oil and filter; change both again early where it still foams",
    ),
    HPA,
    remedy="change once more",
    guards=(OIL_FOAM_PRONE,),
    after=(ADDITIVE_OR_FLUSH_IN_OIL,),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    also=("wrong fluid in the oil", "flush left in"),
)

"""How pump, relief valve, filter, sender, tank, valve gear, ignition and injection are built."""

from knowledge.engines.features import DIESEL, PUMP_ON_DISTRIBUTOR_SHAFT, feature
from knowledge.model import State
from knowledge.sources import SMALL_ENGINE_SHUT_OFF, SMALL_ENGINE_SPLASH

RELIEF_IN_PUMP = feature(
    id="relief_in_pump",
    says="a relief valve inside the oil pump",
    asks="Does the relief valve sit in the oil pump itself?",
)
RELIEF_IN_BLOCK = feature(
    id="relief_in_block",
    says="a relief valve in the block, front cover or filter housing",
    asks="Does the relief valve sit in the block, front cover or filter housing?",
)
SEVERAL_RELIEFS = feature(
    id="several_reliefs",
    says="more than one relief valve",
    asks="Is there more than one pressure relief valve?",
)
GEAR_PUMP = feature(
    id="gear_pump",
    says="a pump of two meshing gears",
    asks="Is it a gear pump, with two gears side by side?",
)
ROTOR_PUMP = feature(
    id="rotor_pump",
    says="a rotor pump",
    asks="Is it a rotor pump, a rotor inside a ring (gerotor)?",
)
SPIN_ON_FILTER = feature(
    id="spin_on_filter", says="a spin-on oil filter", asks="Is it a spin-on oil filter?"
)
CARTRIDGE_FILTER = feature(
    id="cartridge_filter",
    says="a filter element in a housing",
    asks="Is the oil filter an element inside a bowl or housing?",
)
FILTER_ADAPTER = feature(
    id="filter_adapter",
    says="an adapter or sandwich plate under the filter",
    asks="Is there an adapter or sandwich plate between block and filter?",
)
NO_OIL_FILTER = feature(
    id="no_oil_filter",
    says="no full-flow oil filter",
    asks="Is the engine without a full-flow oil filter?",
)
SENDER_BEFORE_FILTER = feature(
    id="sender_before_filter",
    says="the pressure taken before the oil filter",
    asks="Does the gauge or lamp take its pressure between pump and filter?",
)
SENDER_BEHIND_FILTER = feature(
    id="sender_behind_filter",
    says="the pressure taken behind the oil filter",
    asks="Does the gauge or lamp take its pressure behind the filter, in the gallery?",
)
WET_BELT = feature(
    id="wet_belt",
    says="a toothed belt that runs in the oil",
    asks="Does a toothed belt run inside, in the oil (camshaft or oil pump)?",
)
TANK_TAP = feature(
    id="tank_tap",
    says="a shut-off tap or check valve in the line from the oil tank",
    asks="Is there a tap or check valve in the line from the oil tank?",
)
SEVERAL_SCAVENGE_PUMPS = feature(
    id="several_scavenge_pumps",
    says="several scavenge pumps",
    asks="Does more than one pump return the oil to the tank?",
)
CAM_RUNS_IN_BLOCK = feature(
    id="cam_runs_in_block",
    says="a camshaft that runs in the block without bearing shells",
    asks="Does the camshaft run directly in the casting, without shells?",
)
WIRE_LIFTER_CLIPS = feature(
    id="wire_lifter_clips",
    says="lifters held by wire clips or guides that can let go",
    asks="Are roller lifters held by wire clips or guide bars?",
)
CAM_PHASERS = feature(
    id="cam_phasers",
    says="oil-fed variable cam timing",
    asks="Is there oil-fed variable cam timing?",
)
ROLLER_CRANKSHAFT = feature(
    id="roller_crankshaft",
    says="a crankshaft on ball or roller bearings",
    asks="Does the crankshaft run on ball or roller bearings?",
)
COMMON_RAIL = feature(
    id="common_rail",
    says="common-rail injection",
    asks="Is it a common-rail diesel, with electric injectors on one high-pressure rail?",
)
COIL_ON_PLUG = feature(
    id="coil_on_plug",
    says="an ignition coil on each plug",
    asks="Does each spark plug have its own coil?",
)
BALANCE_SHAFTS = feature(
    id="balance_shafts",
    says="balance shafts",
    asks="Are there balance shafts, beside or below the crank?",
)
AUXILIARY_SHAFT = feature(
    id="auxiliary_shaft",
    says="an auxiliary (jack or intermediate) shaft in oil-fed bearings",
    asks="Is there an auxiliary (jack or intermediate) shaft that drives oil pump or distributor?",
)
IDLER_GEARS = feature(
    id="idler_gears",
    says="timing gears with an idler",
    asks="Is the timing driven by gears, with an idler (intermediate) gear?",
)
IGNITION_DISTRIBUTOR = feature(
    id="ignition_distributor",
    says="an ignition distributor",
    asks="Is there an ignition distributor with a rotor under a cap?",
)
SPLASH_LUBRICATED = feature(
    id="splash_lubricated",
    says="no oil pump: a dipper or slinger splashes the oil",
    asks="Is it lubricated by splash, without an oil pump?",
    source=SMALL_ENGINE_SPLASH,
)
LOW_OIL_SHUT_OFF = feature(
    id="low_oil_shut_off",
    says="a low-oil switch that stops the engine",
    asks="Does a low-oil switch stop the engine by itself?",
    source=SMALL_ENGINE_SHUT_OFF,
)
VARIABLE_PUMP = feature(
    id="variable_pump",
    says="an oil pump of variable delivery, with a control solenoid",
    asks="Is the oil pump's delivery controlled by a solenoid (two-stage or variable pump)?",
)
SPLIT_CASE = feature(
    id="split_case",
    says="a crankcase of two halves, with a strainer plate and no sump to take off",
    asks="Does the crankcase split in halves, with no sump to take off?",
)
POURED_BEARINGS = feature(
    id="poured_bearings",
    says="crank bearings poured in place (babbitt), without shells",
    asks="Crank bearings poured in place (babbitt, white metal), without shells?",
)
#: of each group an engine has one
ONE_OF = (
    (GEAR_PUMP, ROTOR_PUMP),
    (SPIN_ON_FILTER, CARTRIDGE_FILTER, NO_OIL_FILTER),
    (SENDER_BEFORE_FILTER, SENDER_BEHIND_FILTER),
)
#: an engine whose first feature stands so has not the other
WITHOUT = (
    (DIESEL, State.ABSENT, COMMON_RAIL),
    (DIESEL, State.PRESENT, COIL_ON_PLUG),
    (PUMP_ON_DISTRIBUTOR_SHAFT, State.PRESENT, COIL_ON_PLUG),
    (DIESEL, State.PRESENT, IGNITION_DISTRIBUTOR),
    (COIL_ON_PLUG, State.PRESENT, IGNITION_DISTRIBUTOR),
)

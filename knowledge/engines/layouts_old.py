"""Layouts of side-valve V8, engines without oil pressure, rotary pistons and slow large diesels."""

from knowledge import sources
from knowledge.engines import features, features_build, features_kinds
from knowledge.engines.layouts import DRIVES, drives_but
from knowledge.engines.layouts_special import GENERATOR_PETROL, SIDE_VALVE, SMALL_AIR_COOLED
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Layout

SIDE_VALVE_V8 = Layout(
    id="side_valve_v8",
    says="side-valve (flathead) V8 of the 1930s to 50s, gear pump off the camshaft, low pressure",
    has=(
        features.PUMP_ON_SKEW_GEAR,
        features.VEE_ENGINE,
        features.WATER_COOLED,
        features_build.GEAR_PUMP,
        features_build.RELIEF_IN_BLOCK,
    ),
    lacks=(
        *drives_but(features.PUMP_ON_SKEW_GEAR),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.TURBOCHARGED,
        features.HYDRAULIC_LIFTERS,
        features.DIESEL,
        features.PISTON_JETS,
        features_build.BALANCE_SHAFTS,
        features_build.AUXILIARY_SHAFT,
        features_build.CAM_PHASERS,
        features_build.ROLLER_CRANKSHAFT,
    ),
    source=idea_from(sources.SIDE_VALVE_V8_PUMPS),
    also=("flathead v8", "side valve v8", "flatty", "L-head v8"),
)
#: what an engine without oil pressure has not
_NOT_WITHOUT_PRESSURE = (
    features_kinds.TROUGH_FED,
    features.DRY_SUMP,
    features.OVERHEAD_CAM,
    features.CHAIN_TENSIONERS,
    features.TURBOCHARGED,
    features.HYDRAULIC_LIFTERS,
    features.PISTON_JETS,
    features.OIL_COOLER,
    features.REMOTE_FILTER,
    features.DIRECT_GAUGE,
    features.ELECTRIC_GAUGE,
    features_build.CAM_PHASERS,
    features_build.BALANCE_SHAFTS,
    features_build.AUXILIARY_SHAFT,
)
OPEN_CRANK = Layout(
    id="open_crank",
    says="hit-and-miss or other open-crank engine: drip oilers and grease cups, no oil pump",
    has=(features_kinds.DRIP_OILED, features_build.NO_OIL_FILTER),
    lacks=(*DRIVES, *_NOT_WITHOUT_PRESSURE),
    source=idea_from(sources.GAS_ENGINE_HANDBOOK),
    also=("hit and miss", "hit-and-miss", "open crank", "hot bulb", "farm engine"),
)
SPLASH_ENGINE = Layout(
    id="splash_engine",
    says="old engine oiled by splash alone: dippers or a slinger, no oil pump and no gauge",
    has=(features_build.SPLASH_LUBRICATED, features_build.NO_OIL_FILTER),
    lacks=(*DRIVES, *_NOT_WITHOUT_PRESSURE),
    source=idea_from(sources.SMALL_ENGINE_SPLASH),
    also=("splash lubricated", "dipper engine", "splash oiled"),
)
TROUGH_ENGINE = Layout(
    id="trough_engine",
    says="old engine with a low-pressure pump: troughs and dippers for the rods, a few psi at most",
    has=(features_kinds.TROUGH_FED, features_build.NO_OIL_FILTER),
    lacks=(
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.TURBOCHARGED,
        features.HYDRAULIC_LIFTERS,
        features.PISTON_JETS,
        features_build.CAM_PHASERS,
        features_build.BALANCE_SHAFTS,
    ),
    source=idea_from(sources.TROUGH_FED_SIX_1942),
    also=("trough fed", "dippers and troughs", "low pressure splash", "splash and pump"),
)
BURNT_OIL_TWO_STROKE = Layout(
    id="burnt_oil_two_stroke",
    says="petrol two-stroke: oil in the fuel or by an injection pump, roller bearings, no pressure",
    has=(
        features_kinds.OIL_BURNT_WITH_FUEL,
        features_kinds.ROLLER_BIG_ENDS,
        features_build.ROLLER_CRANKSHAFT,
        features_build.NO_OIL_FILTER,
    ),
    lacks=(*_NOT_WITHOUT_PRESSURE, features.DIESEL, features.PUSHROD_ENGINE),
    source=idea_from(sources.TWO_STROKE_OIL_TESTS),
    also=("two stroke", "2 stroke", "two-stroke outboard", "oil injection two stroke", "premix"),
)
ROTARY_ENGINE = Layout(
    id="rotary_engine",
    says="rotary (Wankel) engine: rotor pump by chain, eccentric shaft, two relief valves",
    has=(
        features_kinds.ROTARY_PISTON,
        features_build.ROTOR_PUMP,
        features_build.SEVERAL_RELIEFS,
        features.PUMP_ON_CHAIN,
        features.WATER_COOLED,
        features.OIL_COOLER,
    ),
    lacks=(
        features.PUMP_ON_DISTRIBUTOR_SHAFT,
        features.PUMP_ON_SKEW_GEAR,
        features.PUMP_ON_CAM_NOSE,
        features.PUMP_ON_AUXILIARY_DRIVE,
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.PUSHROD_ENGINE,
        features.VEE_ENGINE,
        features.CHAIN_TENSIONERS,
        features.HYDRAULIC_LIFTERS,
        features.PISTON_JETS,
        features.DIESEL,
        features_build.CAM_PHASERS,
        features_build.BALANCE_SHAFTS,
        features_build.AUXILIARY_SHAFT,
        features_build.IDLER_GEARS,
        features_build.POURED_BEARINGS,
        features_build.ROLLER_CRANKSHAFT,
    ),
    source=idea_from(sources.ROTARY_2004),
    also=("wankel", "rotary engine", "twin rotor", "rotary"),
)
SLOW_DIESEL = Layout(
    id="slow_diesel",
    says="large slow diesel of a ship or power plant, with a separate pre-lube pump",
    has=(
        features.DIESEL,
        features.WATER_COOLED,
        features.OIL_COOLER,
        features_kinds.PRELUBE_PUMP,
    ),
    lacks=(
        features.PUMP_ON_DISTRIBUTOR_SHAFT,
        features.PUMP_ON_SKEW_GEAR,
        features.PUMP_ON_CRANK_NOSE,
        features.PUMP_ON_CAM_NOSE,
        features.CHAIN_TENSIONERS,
        features.HYDRAULIC_LIFTERS,
        features.PRESSED_PICKUP,
        features_build.ROLLER_CRANKSHAFT,
        features_build.SPIN_ON_FILTER,
    ),
    source=COMMON_PRACTICE,
    also=("slow speed diesel", "medium speed diesel", "ship's main engine", "prelube pump"),
)
ROLLER_MOTORCYCLE = Layout(
    id="roller_motorcycle",
    says="dry-sump motorcycle with big ends on rollers: oil tank, low pressure or no gauge",
    has=(
        features_kinds.ROLLER_BIG_ENDS,
        features_build.ROLLER_CRANKSHAFT,
        features.PUMP_OUTSIDE,
        features.DRY_SUMP,
        features.IN_A_VEHICLE,
    ),
    lacks=(
        *drives_but(features.PUMP_OUTSIDE),
        features.CHAIN_TENSIONERS,
        features.TURBOCHARGED,
        features.DIESEL,
        features.WATER_COOLED,
        features.PRESSED_PICKUP,
        features_build.IGNITION_DISTRIBUTOR,
        features_build.CAM_PHASERS,
    ),
    source=COMMON_PRACTICE,
    also=("roller big end motorcycle", "old single", "vintage motorcycle", "roller crank bike"),
)
#: engines of which nobody knows whether dippers oil them, unless it is said
MAY_BE_SPLASHED = (SMALL_AIR_COOLED, GENERATOR_PETROL, SIDE_VALVE)

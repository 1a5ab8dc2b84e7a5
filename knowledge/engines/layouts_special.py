"""Layouts of dry-sump, turbocharged, marine, generator and air-cooled engines."""

from knowledge import sources
from knowledge.engines import features, features_build
from knowledge.engines.layouts import drives_but
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Layout

#: what small air-cooled petrol engines go without
_NOT_ON_SMALL_ENGINES = (
    features.PUMP_ON_DISTRIBUTOR_SHAFT,
    features.PUMP_ON_SKEW_GEAR,
    features.PUMP_ON_CHAIN,
    features.DRY_SUMP,
    features.OVERHEAD_CAM,
    features.CHAIN_TENSIONERS,
    features.TURBOCHARGED,
    features.DIESEL,
    features.WATER_COOLED,
    features.HYDRAULIC_LIFTERS,
    features.PISTON_JETS,
    features.IN_A_BOAT,
    features.IN_A_TRACTOR,
    features_build.IGNITION_DISTRIBUTOR,
    features_build.CAM_PHASERS,
    features_build.AUXILIARY_SHAFT,
    features_build.IDLER_GEARS,
)
DRY_SUMP_RACE = Layout(
    id="dry_sump_race",
    says="race engine with dry sump, belt-driven outside pump, tank and hoses",
    has=(
        features.PUMP_OUTSIDE,
        features.DRY_SUMP,
        features.REMOTE_FILTER,
        features.RELIEF_OUTSIDE,
        features.WATER_COOLED,
    ),
    lacks=(
        *drives_but(features.PUMP_OUTSIDE),
        features.DIESEL,
        features.PRESSED_PICKUP,
    ),
    source=sources.LOWER_ENGINE_NOISE_2006,
    also=("dry sump", "race car dry sump", "belt driven oil pump"),
)
DRY_SUMP_MOTORCYCLE = Layout(
    id="dry_sump_motorcycle",
    says="dry-sump motorcycle: oil in tank or frame, air-cooled, pushrods",
    has=(
        features.PUMP_OUTSIDE,
        features.DRY_SUMP,
        features.PUSHROD_ENGINE,
        features.IN_A_VEHICLE,
    ),
    lacks=(
        *drives_but(features.PUMP_OUTSIDE),
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.TURBOCHARGED,
        features.DIESEL,
        features.WATER_COOLED,
        features.PRESSED_PICKUP,
        features_build.IGNITION_DISTRIBUTOR,
    ),
    source=COMMON_PRACTICE,
    also=("motorbike", "motorcycle", "v-twin", "british twin", "oil in frame"),
)
TURBO_OHC_FOUR = Layout(
    id="turbo_ohc_four",
    says="turbocharged overhead-cam petrol four, oil-fed chain tensioner",
    has=(
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.TURBOCHARGED,
        features.WATER_COOLED,
    ),
    lacks=(
        features.PUMP_ON_DISTRIBUTOR_SHAFT,
        features.PUMP_ON_SKEW_GEAR,
        features.PUMP_OUTSIDE,
        features.DRY_SUMP,
        features.PUSHROD_ENGINE,
        features.VEE_ENGINE,
        features.DIESEL,
        features.IN_A_TRACTOR,
    ),
    source=sources.PINPOINT_TEST_2012,
    also=("turbo four", "turbo petrol", "turbo car", "2.0 turbo"),
)
MARINE_PETROL_V8 = Layout(
    id="marine_petrol_v8",
    says="inboard or sterndrive petrol V8, distributor-driven pump, hydraulic lifters",
    has=(
        features.PUMP_ON_DISTRIBUTOR_SHAFT,
        features.PUSHROD_ENGINE,
        features.VEE_ENGINE,
        features.HYDRAULIC_LIFTERS,
        features.WATER_COOLED,
        features.TILTS,
        features.IN_A_BOAT,
    ),
    lacks=(
        *drives_but(features.PUMP_ON_DISTRIBUTOR_SHAFT),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.TURBOCHARGED,
        features.DIESEL,
        features.RELIEF_OUTSIDE,
        features_build.BALANCE_SHAFTS,
        features_build.AUXILIARY_SHAFT,
        features_build.IDLER_GEARS,
    ),
    source=sources.MARINE_SERVICE_MANUAL_1999,
    also=("boat engine", "sterndrive", "inboard", "ski boat", "marine v8"),
)
MARINE_DIESEL = Layout(
    id="marine_diesel",
    says="auxiliary diesel of a yacht or launch, inclined, alarm with or without gauge",
    has=(
        features.DIESEL,
        features.PUSHROD_ENGINE,
        features.WATER_COOLED,
        features.TILTS,
        features.IN_A_BOAT,
    ),
    lacks=(
        features.PUMP_ON_DISTRIBUTOR_SHAFT,
        features.PUMP_ON_CHAIN,
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.HYDRAULIC_LIFTERS,
        features.VEE_ENGINE,
    ),
    source=sources.MARINE_DIESEL_MANUAL,
    also=("sailboat diesel", "yacht engine", "boat diesel", "launch"),
)
GENERATOR_DIESEL = Layout(
    id="generator_diesel",
    says="generator-set diesel with lamp, alarm or shutdown switch only",
    has=(
        features.PUMP_OUTSIDE,
        features.DIESEL,
        features.LAMP_ONLY,
        features.PUSHROD_ENGINE,
        features.WATER_COOLED,
        features.STATIONARY,
        features_build.IDLER_GEARS,
    ),
    lacks=(
        *drives_but(features.PUMP_OUTSIDE),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.HYDRAULIC_LIFTERS,
        features.VEE_ENGINE,
        features.TILTS,
        features.ELECTRIC_GAUGE,
        features.DIRECT_GAUGE,
    ),
    source=idea_from(sources.ARMY_TM_643_SHUTDOWN),
    also=("genset", "generator", "standby set", "pump set"),
)
GENERATOR_PETROL = Layout(
    id="generator_petrol",
    says="petrol generator or pump set, small and air-cooled, low-oil switch and no gauge",
    has=(features.STATIONARY, features.LAMP_ONLY, features_build.LOW_OIL_SHUT_OFF),
    lacks=(*_NOT_ON_SMALL_ENGINES, features.TILTS, features.ELECTRIC_GAUGE, features.DIRECT_GAUGE),
    source=idea_from(sources.SMALL_ENGINE_SHUT_OFF),
    also=("petrol generator", "gas generator", "petrol genset", "portable generator"),
)
SMALL_AIR_COOLED = Layout(
    id="small_air_cooled",
    says="small air-cooled petrol twin or single with oil pump and filter",
    has=(features.PUSHROD_ENGINE,),
    lacks=(*_NOT_ON_SMALL_ENGINES, features.IN_A_BOAT, features.IN_A_TRACTOR),
    source=sources.SMALL_ENGINE_MANUAL,
    also=("lawn mower", "ride-on mower", "small engine", "small v-twin"),
)
AIR_COOLED_FLAT_FOUR = Layout(
    id="air_cooled_flat_four",
    says="air-cooled flat four, pump on the cam nose, relief from outside, oil cooler",
    has=(
        features.PUMP_ON_CAM_NOSE,
        features.PUSHROD_ENGINE,
        features.RELIEF_OUTSIDE,
        features.OIL_COOLER,
        features_build.SPLIT_CASE,
    ),
    lacks=(
        *drives_but(features.PUMP_ON_CAM_NOSE),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.TURBOCHARGED,
        features.DIESEL,
        features.WATER_COOLED,
        features.VEE_ENGINE,
        features.IN_A_BOAT,
        features.IN_A_TRACTOR,
        features_build.BALANCE_SHAFTS,
        features_build.AUXILIARY_SHAFT,
        features_build.IDLER_GEARS,
    ),
    source=COMMON_PRACTICE,
    also=("flat four", "boxer", "air cooled", "aircooled", "rear engine"),
)
CHAIN_DRIVEN_PUMP_FOUR = Layout(
    id="chain_driven_pump_four",
    says="overhead-cam four, pump in the sump driven by its own chain",
    has=(features.PUMP_ON_CHAIN, features.OVERHEAD_CAM, features.WATER_COOLED),
    lacks=(
        *drives_but(features.PUMP_ON_CHAIN),
        features.DRY_SUMP,
        features.PUSHROD_ENGINE,
        features.VEE_ENGINE,
        features.MECHANICAL_LIFT_PUMP,
        features.IN_A_TRACTOR,
        features_build.IGNITION_DISTRIBUTOR,
    ),
    source=sources.MOTORCYCLE_MANUAL,
    also=("chain driven oil pump", "motorcycle four", "four cylinder bike"),
)
SIDE_VALVE = Layout(
    id="side_valve",
    says="old side-valve (flathead) car, tractor or stationary engine, low oil pressure",
    has=(features.PUMP_ON_SKEW_GEAR,),
    lacks=(
        *drives_but(features.PUMP_ON_SKEW_GEAR),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.TURBOCHARGED,
        features.DIESEL,
        features.PISTON_JETS,
        features_build.BALANCE_SHAFTS,
        features_build.CAM_PHASERS,
    ),
    source=COMMON_PRACTICE,
    also=("flathead", "side valve", "sidevalve", "L-head", "flathead tractor", "prewar car"),
)

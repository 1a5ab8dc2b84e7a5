"""Layouts of vee engines with the pump on the crank nose, sixes, radials and big twins."""

from knowledge.engines import features, features_build
from knowledge.engines.layouts import drives_but
from knowledge.sources import COMMON_PRACTICE
from knowledge.work import Layout

CRANK_NOSE_V8 = Layout(
    id="crank_nose_v8",
    says="pushrod V8 or V6, rotor pump around the crank nose, roller lifters",
    has=(
        features.PUMP_ON_CRANK_NOSE,
        features_build.ROTOR_PUMP,
        features.PUSHROD_ENGINE,
        features.VEE_ENGINE,
        features.HYDRAULIC_LIFTERS,
        features.WATER_COOLED,
    ),
    lacks=(
        *drives_but(features.PUMP_ON_CRANK_NOSE),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.DIESEL,
        features.MECHANICAL_LIFT_PUMP,
        features_build.IGNITION_DISTRIBUTOR,
        features_build.AUXILIARY_SHAFT,
        features_build.IDLER_GEARS,
    ),
    source=COMMON_PRACTICE,
    also=("late pushrod v8", "modern pushrod v8", "roller lifter v8", "truck v8"),
)
OVERHEAD_CAM_VEE = Layout(
    id="overhead_cam_vee",
    says="overhead-cam V6 or V8, pump on the crank nose, chains or belt",
    has=(
        features.PUMP_ON_CRANK_NOSE,
        features.OVERHEAD_CAM,
        features.VEE_ENGINE,
        features.WATER_COOLED,
    ),
    lacks=(*drives_but(features.PUMP_ON_CRANK_NOSE), features.DRY_SUMP, features.PUSHROD_ENGINE),
    source=COMMON_PRACTICE,
    also=("ohc v6", "ohc v8", "dohc v6", "dohc v8", "sohc v6"),
)
INLINE_SIX_DIESEL = Layout(
    id="inline_six_diesel",
    says="in-line six diesel of a truck, pickup or boat, pump in the gear train or on the crank nose",
    has=(features.DIESEL, features.WATER_COOLED),
    lacks=(
        features.PUMP_ON_DISTRIBUTOR_SHAFT,
        features.PUMP_ON_CHAIN,
        features.DRY_SUMP,
        features.VEE_ENGINE,
    ),
    source=COMMON_PRACTICE,
    also=("six cylinder diesel", "pickup diesel", "straight six diesel"),
)
VEE_DIESEL = Layout(
    id="vee_diesel",
    says="V6 or V8 diesel, pump at the front on crank or gear train",
    has=(features.DIESEL, features.VEE_ENGINE, features.WATER_COOLED),
    lacks=(features.PUMP_ON_DISTRIBUTOR_SHAFT, features.DRY_SUMP),
    source=COMMON_PRACTICE,
    also=("v8 diesel", "diesel v8", "truck v8 diesel"),
)
FLAT_SIX = Layout(
    id="flat_six",
    says="air-cooled flat six or big flat four, pump in the accessory case, wet sump",
    has=(features.PUMP_OUTSIDE, features_build.GEAR_PUMP, features.PUSHROD_ENGINE),
    lacks=(
        *drives_but(features.PUMP_OUTSIDE),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.DIESEL,
        features.WATER_COOLED,
        features.VEE_ENGINE,
        features_build.BALANCE_SHAFTS,
        features_build.AUXILIARY_SHAFT,
        features_build.IGNITION_DISTRIBUTOR,
    ),
    source=COMMON_PRACTICE,
    also=("opposed six", "horizontally opposed", "boxer six", "flat 6"),
)
RADIAL = Layout(
    id="radial",
    says="air-cooled radial with oil tank, pressure and scavenge pumps at the rear",
    has=(
        features.PUMP_OUTSIDE,
        features.DRY_SUMP,
        features_build.GEAR_PUMP,
        features_build.ROLLER_CRANKSHAFT,
        features.PUSHROD_ENGINE,
    ),
    lacks=(
        *drives_but(features.PUMP_OUTSIDE),
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.DIESEL,
        features.WATER_COOLED,
        features.HYDRAULIC_LIFTERS,
        features.PRESSED_PICKUP,
        features_build.BALANCE_SHAFTS,
        features_build.AUXILIARY_SHAFT,
        features_build.IGNITION_DISTRIBUTOR,
    ),
    source=COMMON_PRACTICE,
    also=("radial engine", "star engine"),
)
WET_SUMP_V_TWIN = Layout(
    id="wet_sump_v_twin",
    says="wet-sump motorcycle V-twin with plain bearings, overhead cams",
    has=(features.OVERHEAD_CAM, features.VEE_ENGINE, features.IN_A_VEHICLE),
    lacks=(
        features.PUMP_ON_DISTRIBUTOR_SHAFT,
        features.PUMP_ON_SKEW_GEAR,
        features.DRY_SUMP,
        features.PUSHROD_ENGINE,
        features.TURBOCHARGED,
        features.DIESEL,
        features_build.IGNITION_DISTRIBUTOR,
    ),
    source=COMMON_PRACTICE,
    also=("v twin motorcycle", "v-twin bike", "motorcycle twin"),
)
OVERHEAD_CAM_FOUR = Layout(
    id="overhead_cam_four",
    says="overhead-cam four, belt or chain, pump on the crank nose or an auxiliary shaft",
    has=(features.OVERHEAD_CAM, features.WATER_COOLED),
    lacks=(features.DRY_SUMP, features.PUSHROD_ENGINE, features.VEE_ENGINE),
    source=COMMON_PRACTICE,
    also=("ohc four", "dohc four", "sohc four", "japanese four", "car four cylinder"),
)

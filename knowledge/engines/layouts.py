"""Common arrangements of an engine: what each has and lacks.

What a layout leaves out stays unknown; what the case states takes precedence.
"""

from knowledge import sources
from knowledge.engines import features, features_build
from knowledge.model import Finding
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.work import Layout

DRIVES = (
    features.PUMP_ON_DISTRIBUTOR_SHAFT,
    features.PUMP_ON_SKEW_GEAR,
    features.PUMP_ON_CRANK_NOSE,
    features.PUMP_ON_CAM_NOSE,
    features.PUMP_OUTSIDE,
    features.PUMP_ON_CHAIN,
    features.PUMP_ON_AUXILIARY_DRIVE,
)


def drives_but(own: Finding) -> tuple[Finding, ...]:
    """Every way of driving a pump but this engine's own."""
    return tuple(d for d in DRIVES if d is not own)


UNKNOWN = Layout(
    id="unknown",
    says="not known, or none of these",
    has=(),
    lacks=(),
    source=JUDGEMENT,
    also=("don't know", "other", "no idea"),
)
DISTRIBUTOR_V8 = Layout(
    id="distributor_v8",
    says="pushrod V8 or V6, pump in the sump turned by the distributor, hydraulic lifters",
    has=(
        features.PUMP_ON_DISTRIBUTOR_SHAFT,
        features.PUSHROD_ENGINE,
        features.VEE_ENGINE,
        features.HYDRAULIC_LIFTERS,
        features.WATER_COOLED,
    ),
    lacks=(
        *drives_but(features.PUMP_ON_DISTRIBUTOR_SHAFT),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.DIESEL,
        features.RELIEF_OUTSIDE,
        features.IN_A_BOAT,
        features.IN_A_TRACTOR,
        features_build.AUXILIARY_SHAFT,
        features_build.IDLER_GEARS,
    ),
    source=idea_from(sources.TRUCK_SERVICE_1994),
    also=("small block", "big block", "v8", "american v8", "pushrod v6"),
)
DISTRIBUTOR_V8_SOLID = Layout(
    id="distributor_v8_solid",
    says="pushrod V8, pump in the sump turned by the distributor, solid lifters, direct gauge",
    has=(
        features.PUMP_ON_DISTRIBUTOR_SHAFT,
        features.PUSHROD_ENGINE,
        features.VEE_ENGINE,
        features.DIRECT_GAUGE,
        features.WATER_COOLED,
    ),
    lacks=(
        features.HYDRAULIC_LIFTERS,
        features.ELECTRIC_GAUGE,
        features.LAMP_ONLY,
        *drives_but(features.PUMP_ON_DISTRIBUTOR_SHAFT),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.DIESEL,
        features.RELIEF_OUTSIDE,
        features_build.BALANCE_SHAFTS,
        features_build.AUXILIARY_SHAFT,
        features_build.IDLER_GEARS,
    ),
    source=COMMON_PRACTICE,
    also=("race v8", "solid lifter v8", "wet sump race v8", "hot rod v8"),
)
SKEW_GEAR_FOUR = Layout(
    id="skew_gear_four",
    says="classic pushrod four or six, pump on a skew gear, relief valve reached from outside",
    has=(
        features.PUMP_ON_SKEW_GEAR,
        features.PUSHROD_ENGINE,
        features.RELIEF_OUTSIDE,
        features.WATER_COOLED,
    ),
    lacks=(
        *drives_but(features.PUMP_ON_SKEW_GEAR),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.TURBOCHARGED,
        features.HYDRAULIC_LIFTERS,
        features.VEE_ENGINE,
        features_build.BALANCE_SHAFTS,
        features_build.AUXILIARY_SHAFT,
        features_build.IDLER_GEARS,
    ),
    source=COMMON_PRACTICE,
    also=("classic four", "old british four", "inline four pushrod", "vintage car"),
)
SKEW_GEAR_SIX = Layout(
    id="skew_gear_six",
    says="pushrod straight six, pump on a skew gear, relief valve inside the pump",
    has=(features.PUMP_ON_SKEW_GEAR, features.PUSHROD_ENGINE, features.WATER_COOLED),
    lacks=(
        features.PUMP_ON_CRANK_NOSE,
        features.PUMP_OUTSIDE,
        features.PUMP_ON_CHAIN,
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.TURBOCHARGED,
        features.RELIEF_OUTSIDE,
        features.VEE_ENGINE,
        features_build.BALANCE_SHAFTS,
        features_build.AUXILIARY_SHAFT,
    ),
    source=COMMON_PRACTICE,
    also=("straight six", "inline six", "inline 6", "truck six"),
)
CRANK_NOSE_PUMP_FOUR = Layout(
    id="crank_nose_pump_four",
    says="pushrod or belt-driven four, gear pump around the crank nose in the front cover",
    has=(features.PUMP_ON_CRANK_NOSE, features.WATER_COOLED),
    lacks=(
        *drives_but(features.PUMP_ON_CRANK_NOSE),
        features.DRY_SUMP,
        features.CHAIN_TENSIONERS,
        features.VEE_ENGINE,
    ),
    source=COMMON_PRACTICE,
    also=("front cover pump", "belt driven four", "small car engine"),
)
CRANK_NOSE_GEROTOR_OHC = Layout(
    id="crank_nose_gerotor_ohc",
    says="overhead-cam engine, gerotor pump on the crank nose, chains with oil-fed tensioners",
    has=(
        features.PUMP_ON_CRANK_NOSE,
        features_build.ROTOR_PUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.WATER_COOLED,
    ),
    lacks=(
        *drives_but(features.PUMP_ON_CRANK_NOSE),
        features.DRY_SUMP,
        features.PUSHROD_ENGINE,
        features.MECHANICAL_LIFT_PUMP,
        features.IN_A_TRACTOR,
    ),
    source=COMMON_PRACTICE,
    also=("modern v6", "ohc v8", "dohc", "twin cam", "timing chain engine"),
)
SMALL_DIESEL = Layout(
    id="small_diesel",
    says="small diesel, rotor or gear pump outside or in the gear train",
    has=(
        features.PUMP_OUTSIDE,
        features.DIESEL,
        features.PUSHROD_ENGINE,
        features.WATER_COOLED,
        features_build.IDLER_GEARS,
    ),
    lacks=(
        *drives_but(features.PUMP_OUTSIDE),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.HYDRAULIC_LIFTERS,
    ),
    source=sources.DIESEL_TESTING_MANUAL,
    also=("industrial diesel", "skid steer", "small tractor", "digger", "mower diesel"),
)
HEAVY_DIESEL = Layout(
    id="heavy_diesel",
    says="heavy in-line truck or plant diesel, gear-driven pump, turbocharger and oil cooler",
    has=(
        features.PISTON_JETS,
        features.PUMP_OUTSIDE,
        features.DIESEL,
        features.WATER_COOLED,
        features.TURBOCHARGED,
        features.OIL_COOLER,
        features_build.IDLER_GEARS,
    ),
    lacks=(
        *drives_but(features.PUMP_OUTSIDE),
        features.DRY_SUMP,
        features.CHAIN_TENSIONERS,
        features.HYDRAULIC_LIFTERS,
        features.VEE_ENGINE,
    ),
    source=COMMON_PRACTICE,
    also=("truck diesel", "lorry engine", "big diesel", "excavator", "combine"),
)
TRACTOR_DIESEL = Layout(
    id="tractor_diesel",
    says="tractor diesel that works on slopes, gear-train pump, sump as part of the frame",
    has=(
        features.PUMP_OUTSIDE,
        features.DIESEL,
        features.PUSHROD_ENGINE,
        features.WATER_COOLED,
        features.TILTS,
        features.STRESSED_SUMP,
        features.IN_A_TRACTOR,
        features_build.IDLER_GEARS,
    ),
    lacks=(
        *drives_but(features.PUMP_OUTSIDE),
        features.DRY_SUMP,
        features.OVERHEAD_CAM,
        features.CHAIN_TENSIONERS,
        features.HYDRAULIC_LIFTERS,
        features.VEE_ENGINE,
    ),
    source=sources.TRACTOR_WORKSHOP_MANUAL,
    also=("tractor", "farm tractor", "vintage tractor"),
)

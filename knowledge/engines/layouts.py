"""Common ways of arranging an engine: what each has and lacks, so that no cause is guessed.

What a profile leaves out stays unknown; a person's own word goes before the profile.
"""

from knowledge.engines.features import (
    CHAIN_TENSIONERS,
    DIESEL,
    DIRECT_GAUGE,
    DRY_SUMP,
    ELECTRIC_GAUGE,
    HYDRAULIC_LIFTERS,
    LAMP_ONLY,
    MECHANICAL_LIFT_PUMP,
    OIL_COOLER,
    OVERHEAD_CAM,
    PISTON_JETS,
    PRESSED_PICKUP,
    PUMP_ON_CHAIN,
    PUMP_ON_CRANK_NOSE,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    PUMP_ON_SKEW_GEAR,
    PUMP_OUTSIDE,
    PUSHROD_ENGINE,
    RELIEF_OUTSIDE,
    REMOTE_FILTER,
    STRESSED_SUMP,
    TILTS,
    TURBOCHARGED,
    VEE_ENGINE,
    WATER_COOLED,
)
from knowledge.sources import (
    AHS,
    AMC,
    EB09,
    GMC,
    HB02,
    HB03,
    HB09,
    HB10,
    HB11,
    HB13,
    HB14,
    HB16,
    HB17,
    JUDGEMENT,
    POI,
    TMG,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Finding, Layout

DRIVES = (
    PUMP_ON_DISTRIBUTOR_SHAFT,
    PUMP_ON_SKEW_GEAR,
    PUMP_ON_CRANK_NOSE,
    PUMP_OUTSIDE,
    PUMP_ON_CHAIN,
)


def drives_but(own: Finding) -> tuple[Finding, ...]:
    """Every way of driving a pump but this engine's own."""
    return tuple(d for d in DRIVES if d is not own)


UNKNOWN = Layout(
    "unknown",
    "not known, or none of these",
    (),
    (),
    JUDGEMENT,
    also=("don't know", "other", "no idea"),
)
DISTRIBUTOR_V8 = Layout(
    "distributor_v8",
    "pushrod V8 or V6, pump in the sump turned by the distributor, hydraulic lifters",
    (
        PUMP_ON_DISTRIBUTOR_SHAFT,
        PUSHROD_ENGINE,
        VEE_ENGINE,
        HYDRAULIC_LIFTERS,
        ELECTRIC_GAUGE,
        PRESSED_PICKUP,
        WATER_COOLED,
    ),
    (
        *drives_but(PUMP_ON_DISTRIBUTOR_SHAFT),
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        TURBOCHARGED,
        DIESEL,
        DIRECT_GAUGE,
        LAMP_ONLY,
        RELIEF_OUTSIDE,
        REMOTE_FILTER,
        TILTS,
    ),
    GMC,
    also=("small block", "big block", "v8", "american v8", "pushrod v6"),
)
DISTRIBUTOR_V8_SOLID = Layout(
    "distributor_v8_solid",
    "pushrod V8, pump in the sump turned by the distributor, solid lifters, direct gauge",
    (
        PUMP_ON_DISTRIBUTOR_SHAFT,
        PUSHROD_ENGINE,
        VEE_ENGINE,
        DIRECT_GAUGE,
        WATER_COOLED,
    ),
    (
        HYDRAULIC_LIFTERS,
        ELECTRIC_GAUGE,
        LAMP_ONLY,
        *drives_but(PUMP_ON_DISTRIBUTOR_SHAFT),
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        TURBOCHARGED,
        DIESEL,
        RELIEF_OUTSIDE,
    ),
    EB09,
    also=("race v8", "solid lifter v8", "wet sump race v8", "hot rod v8"),
)
SKEW_GEAR_FOUR = Layout(
    "skew_gear_four",
    "classic pushrod four or six, pump on a skew gear, relief valve reached from outside",
    (PUMP_ON_SKEW_GEAR, PUSHROD_ENGINE, RELIEF_OUTSIDE, MECHANICAL_LIFT_PUMP, WATER_COOLED),
    (
        *drives_but(PUMP_ON_SKEW_GEAR),
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        TURBOCHARGED,
        HYDRAULIC_LIFTERS,
        VEE_ENGINE,
    ),
    CP,
    also=("classic four", "old british four", "inline four pushrod", "vintage car"),
)
SKEW_GEAR_SIX = Layout(
    "skew_gear_six",
    "pushrod straight six, pump on a skew gear, relief valve inside the pump",
    (PUMP_ON_SKEW_GEAR, PUSHROD_ENGINE, WATER_COOLED),
    (
        PUMP_ON_CRANK_NOSE,
        PUMP_OUTSIDE,
        PUMP_ON_CHAIN,
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        TURBOCHARGED,
        RELIEF_OUTSIDE,
        VEE_ENGINE,
    ),
    AMC,
    also=("straight six", "inline six", "inline 6", "truck six"),
)
CRANK_NOSE_PUMP_FOUR = Layout(
    "crank_nose_pump_four",
    "pushrod or belt-driven four, gear pump round the crank nose in the front cover",
    (PUMP_ON_CRANK_NOSE, WATER_COOLED),
    (
        *drives_but(PUMP_ON_CRANK_NOSE),
        DRY_SUMP,
        CHAIN_TENSIONERS,
        TURBOCHARGED,
        VEE_ENGINE,
    ),
    POI,
    also=("front cover pump", "belt driven four", "small car engine"),
)
CRANK_NOSE_GEROTOR_OHC = Layout(
    "crank_nose_gerotor_ohc",
    "overhead-cam engine, gerotor pump on the crank nose, chains with oil-fed tensioners",
    (
        PUMP_ON_CRANK_NOSE,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        HYDRAULIC_LIFTERS,
        ELECTRIC_GAUGE,
        WATER_COOLED,
    ),
    (
        *drives_but(PUMP_ON_CRANK_NOSE),
        DRY_SUMP,
        PUSHROD_ENGINE,
        TURBOCHARGED,
        DIESEL,
        DIRECT_GAUGE,
        MECHANICAL_LIFT_PUMP,
    ),
    AHS,
    also=("modern v6", "ohc v8", "dohc", "twin cam", "timing chain engine"),
)
SMALL_DIESEL = Layout(
    "small_diesel",
    "small diesel, rotor or gear pump outside or in the gear train",
    (PUMP_OUTSIDE, DIESEL, PUSHROD_ENGINE, WATER_COOLED),
    (
        *drives_but(PUMP_OUTSIDE),
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        HYDRAULIC_LIFTERS,
        VEE_ENGINE,
    ),
    HB03,
    also=("industrial diesel", "skid steer", "small tractor", "digger", "mower diesel"),
)
HEAVY_DIESEL = Layout(
    "heavy_diesel",
    "heavy in-line truck or plant diesel, gear-driven pump, turbocharger and oil cooler",
    (PUMP_OUTSIDE, DIESEL, PUSHROD_ENGINE, WATER_COOLED, TURBOCHARGED, OIL_COOLER, PISTON_JETS),
    (
        *drives_but(PUMP_OUTSIDE),
        DRY_SUMP,
        CHAIN_TENSIONERS,
        HYDRAULIC_LIFTERS,
        VEE_ENGINE,
    ),
    HB02,
    also=("truck diesel", "lorry engine", "big diesel", "excavator", "combine"),
)
TRACTOR_DIESEL = Layout(
    "tractor_diesel",
    "tractor diesel that works on slopes, gear-train pump, stressed sump",
    (PUMP_OUTSIDE, DIESEL, PUSHROD_ENGINE, WATER_COOLED, TILTS, STRESSED_SUMP),
    (
        *drives_but(PUMP_OUTSIDE),
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        HYDRAULIC_LIFTERS,
        VEE_ENGINE,
    ),
    HB13,
    also=("tractor", "farm tractor", "vintage tractor"),
)
DRY_SUMP_RACE = Layout(
    "dry_sump_race",
    "race engine with dry sump, belt-driven outside pump, tank and hoses",
    (PUMP_OUTSIDE, DRY_SUMP, REMOTE_FILTER, OIL_COOLER, DIRECT_GAUGE, RELIEF_OUTSIDE, WATER_COOLED),
    (
        *drives_but(PUMP_OUTSIDE),
        LAMP_ONLY,
        DIESEL,
        PRESSED_PICKUP,
    ),
    HB17,
    also=("dry sump", "race car dry sump", "belt driven oil pump"),
)
DRY_SUMP_MOTORCYCLE = Layout(
    "dry_sump_motorcycle",
    "dry-sump motorcycle: oil in tank or frame, air-cooled, pushrods",
    (PUMP_OUTSIDE, DRY_SUMP, PUSHROD_ENGINE),
    (
        *drives_but(PUMP_OUTSIDE),
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        TURBOCHARGED,
        DIESEL,
        WATER_COOLED,
        PRESSED_PICKUP,
    ),
    CP,
    also=("motorbike", "motorcycle", "v-twin", "british twin", "oil in frame"),
)
TURBO_OHC_FOUR = Layout(
    "turbo_ohc_four",
    "turbocharged overhead-cam petrol four, oil-fed chain tensioner",
    (
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        TURBOCHARGED,
        HYDRAULIC_LIFTERS,
        PISTON_JETS,
        LAMP_ONLY,
        WATER_COOLED,
    ),
    (
        PUMP_ON_DISTRIBUTOR_SHAFT,
        PUMP_ON_SKEW_GEAR,
        PUMP_OUTSIDE,
        DRY_SUMP,
        PUSHROD_ENGINE,
        VEE_ENGINE,
        DIESEL,
        DIRECT_GAUGE,
    ),
    HB16,
    also=("turbo four", "turbo petrol", "turbo car", "2.0 turbo"),
)
MARINE_PETROL_V8 = Layout(
    "marine_petrol_v8",
    "inboard or sterndrive petrol V8, distributor-driven pump, hydraulic lifters",
    (
        PUMP_ON_DISTRIBUTOR_SHAFT,
        PUSHROD_ENGINE,
        VEE_ENGINE,
        HYDRAULIC_LIFTERS,
        ELECTRIC_GAUGE,
        PRESSED_PICKUP,
        WATER_COOLED,
        TILTS,
    ),
    (
        *drives_but(PUMP_ON_DISTRIBUTOR_SHAFT),
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        TURBOCHARGED,
        DIESEL,
        DIRECT_GAUGE,
        LAMP_ONLY,
        RELIEF_OUTSIDE,
    ),
    HB09,
    also=("boat engine", "sterndrive", "inboard", "ski boat", "marine v8"),
)
MARINE_DIESEL = Layout(
    "marine_diesel",
    "auxiliary diesel of a yacht or launch, inclined, alarm with or without gauge",
    (DIESEL, PUSHROD_ENGINE, WATER_COOLED, TILTS),
    (
        PUMP_ON_DISTRIBUTOR_SHAFT,
        PUMP_ON_CHAIN,
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        HYDRAULIC_LIFTERS,
        VEE_ENGINE,
        TURBOCHARGED,
    ),
    HB11,
    also=("sailboat diesel", "yacht engine", "boat diesel", "launch"),
)
GENERATOR_DIESEL = Layout(
    "generator_diesel",
    "generator-set diesel with lamp, alarm or shutdown switch only",
    (PUMP_OUTSIDE, DIESEL, LAMP_ONLY, PUSHROD_ENGINE, WATER_COOLED),
    (
        *drives_but(PUMP_OUTSIDE),
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        HYDRAULIC_LIFTERS,
        VEE_ENGINE,
        TILTS,
        ELECTRIC_GAUGE,
        DIRECT_GAUGE,
    ),
    TMG,
    also=("genset", "generator", "standby set", "pump set"),
)
SMALL_AIR_COOLED = Layout(
    "small_air_cooled",
    "small air-cooled petrol twin or single with oil pump and filter",
    (PUSHROD_ENGINE, LAMP_ONLY),
    (
        PUMP_ON_DISTRIBUTOR_SHAFT,
        PUMP_ON_SKEW_GEAR,
        PUMP_ON_CHAIN,
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        TURBOCHARGED,
        DIESEL,
        WATER_COOLED,
        ELECTRIC_GAUGE,
        DIRECT_GAUGE,
        HYDRAULIC_LIFTERS,
        PISTON_JETS,
    ),
    HB10,
    also=("lawn mower", "ride-on mower", "small engine", "small v-twin"),
)
AIR_COOLED_FLAT_FOUR = Layout(
    "air_cooled_flat_four",
    "air-cooled flat four, pump on the cam nose, relief from outside, oil cooler",
    (PUMP_ON_CRANK_NOSE, PUSHROD_ENGINE, RELIEF_OUTSIDE, OIL_COOLER, MECHANICAL_LIFT_PUMP),
    (
        *drives_but(PUMP_ON_CRANK_NOSE),
        DRY_SUMP,
        OVERHEAD_CAM,
        CHAIN_TENSIONERS,
        TURBOCHARGED,
        DIESEL,
        WATER_COOLED,
        VEE_ENGINE,
    ),
    CP,
    also=("flat four", "boxer", "air cooled", "aircooled", "rear engine"),
)
CHAIN_DRIVEN_PUMP_FOUR = Layout(
    "chain_driven_pump_four",
    "overhead-cam four, pump in the sump driven by its own chain",
    (PUMP_ON_CHAIN, OVERHEAD_CAM, WATER_COOLED),
    (
        *drives_but(PUMP_ON_CHAIN),
        DRY_SUMP,
        PUSHROD_ENGINE,
        VEE_ENGINE,
        MECHANICAL_LIFT_PUMP,
    ),
    HB14,
    also=("chain driven oil pump", "motorcycle four", "four cylinder bike"),
)

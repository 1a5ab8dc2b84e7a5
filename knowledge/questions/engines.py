"""Kinds of engine in the words of the trade, and the layouts each kind may have."""

from knowledge.questions.shapes import EngineKind

ENGINE_KINDS = (
    EngineKind(
        "petrol V8 or V6",
        (
            ("distributor_v8", "pushrods, pump in the sump"),
            ("marine_petrol_v8", "pushrods, in a boat"),
            ("crank_nose_v8", "late pushrod, pump behind the front cover"),
            ("overhead_cam_vee", "overhead cams"),
            ("distributor_v8_solid", "race or hot rod, solid lifters"),
        ),
        ("vee_engine",),
    ),
    EngineKind(
        "pushrod four or six in line",
        (
            ("skew_gear_four", "old four or six, relief valve outside"),
            ("skew_gear_six", "straight six, relief valve in the pump"),
            ("crank_nose_pump_four", "pump behind the front cover"),
        ),
        ("pushrod_engine",),
    ),
    EngineKind(
        "overhead-cam four or six",
        (
            ("overhead_cam_four", "cam by belt, or none of the next"),
            ("chain_driven_pump_four", "pump in the sump with its own chain"),
            ("crank_nose_gerotor_ohc", "timing chains, pump on the crank nose"),
            ("turbo_ohc_four", "turbo petrol"),
        ),
        ("overhead_cam",),
    ),
    EngineKind(
        "diesel",
        (
            ("tractor_diesel", "tractor"),
            ("marine_diesel", "yacht or launch"),
            ("generator_diesel", "generator set"),
            ("heavy_diesel", "heavy truck or plant"),
            ("small_diesel", "small plant"),
            ("inline_six_diesel", "six in a pickup, truck or boat"),
            ("vee_diesel", "V6 or V8"),
            ("slow_diesel", "large and slow, with a pre-lube pump"),
        ),
        ("diesel",),
    ),
    EngineKind(
        "motorcycle",
        (
            ("dry_sump_motorcycle", "pushrods and an oil tank"),
            ("roller_motorcycle", "oil tank, big ends on rollers"),
            ("wet_sump_v_twin", "overhead-cam V-twin"),
            ("chain_driven_pump_four", "four in line"),
        ),
    ),
    EngineKind(
        "air-cooled",
        (
            ("air_cooled_flat_four", "flat four"),
            ("flat_six", "flat six"),
            ("small_air_cooled", "mower or small engine"),
            ("generator_petrol", "petrol generator"),
            ("radial", "radial"),
        ),
    ),
    EngineKind("race engine with a dry sump", (("dry_sump_race", "race"),), ("dry_sump",)),
    EngineKind(
        "side-valve (flathead), or oiled by splash or drip",
        (
            ("side_valve", "side valves, four, six or eight in line"),
            ("side_valve_v8", "side-valve V8"),
            ("trough_engine", "pump fills troughs, a few psi at most"),
            ("splash_engine", "splash alone, no oil pump"),
            ("open_crank", "hit-and-miss: drip oilers, grease cups"),
        ),
    ),
    EngineKind(
        "two-stroke or rotary",
        (
            ("burnt_oil_two_stroke", "petrol two-stroke"),
            ("rotary_engine", "rotary (Wankel)"),
        ),
    ),
)

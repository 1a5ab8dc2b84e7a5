"""Which layout goes with what was said of an engine; see ``traits`` for the words."""

from __future__ import annotations

from knowledge.lexicon.engine.traits import Trait

_T = Trait
#: the layout of the first set of which every trait was said and none of the second
LAYOUTS: tuple[tuple[frozenset[Trait], frozenset[Trait], str], ...] = (
    (frozenset({_T.RADIAL}), frozenset(), "radial"),
    (frozenset({_T.ROTARY}), frozenset({_T.AIRCRAFT, _T.DIESEL}), "rotary_engine"),
    (frozenset({_T.TWO_STROKE}), frozenset({_T.DIESEL, _T.SLOW}), "burnt_oil_two_stroke"),
    (frozenset({_T.SLOW, _T.DIESEL}), frozenset({_T.TRACTOR, _T.SMALL}), "slow_diesel"),
    (frozenset({_T.OPEN_CRANK}), frozenset(), "open_crank"),
    (frozenset({_T.TROUGH}), frozenset({_T.DIESEL, _T.MOWER}), "trough_engine"),
    (
        frozenset({_T.SPLASH}),
        frozenset({_T.DIESEL, _T.MOWER, _T.GENERATOR, _T.CYCLE, _T.AIR_COOLED}),
        "splash_engine",
    ),
    (frozenset({_T.CYCLE, _T.ROLLERS}), frozenset({_T.TWO_STROKE}), "roller_motorcycle"),
    (frozenset({_T.DRY_SUMP, _T.CYCLE}), frozenset(), "dry_sump_motorcycle"),
    *(  # a race engine is none of these, and no layout of theirs has a dry sump
        (frozenset({_T.DRY_SUMP, other}), frozenset(), "unknown")
        for other in (
            _T.DIESEL,
            _T.BOAT,
            _T.SAIL,
            _T.STERNDRIVE,
            _T.OUTBOARD,
            _T.TRACTOR,
            _T.GENERATOR,
            _T.PLANT,
            _T.MACHINE,
            _T.HEAVY,
            _T.MOWER,
            _T.AIRCRAFT,
        )
    ),
    (frozenset({_T.DRY_SUMP}), frozenset(), "dry_sump_race"),
    (frozenset({_T.FLAT_SIX}), frozenset(), "flat_six"),
    (frozenset({_T.FLAT_FOUR, _T.AIRCRAFT}), frozenset(), "flat_six"),
    (frozenset({_T.FLAT_FOUR}), frozenset({_T.LATE, _T.OHC, _T.TURBO}), "air_cooled_flat_four"),
    (frozenset({_T.MOWER}), frozenset({_T.DIESEL}), "small_air_cooled"),
    (frozenset({_T.CYCLE, _T.V_TWIN, _T.OHC}), frozenset(), "wet_sump_v_twin"),
    (frozenset({_T.CYCLE, _T.V_TWIN, _T.PUSHROD}), frozenset(), "dry_sump_motorcycle"),
    (frozenset({_T.CYCLE, _T.TWIN}), frozenset(), "dry_sump_motorcycle"),
    (frozenset({_T.CYCLE, _T.FOUR}), frozenset(), "chain_driven_pump_four"),
    (
        frozenset({_T.GENERATOR, _T.PETROL}),
        frozenset({_T.DIESEL, _T.V8, _T.V6, _T.SIX, _T.FOUR}),
        "generator_petrol",
    ),
    *(
        (frozenset({_T.GENERATOR, small}), frozenset({_T.DIESEL}), "generator_petrol")
        for small in (_T.AIR_COOLED, _T.V_TWIN, _T.SMALL)
    ),
    (frozenset({_T.GENERATOR}), frozenset({_T.PETROL}), "generator_diesel"),
    (frozenset({_T.SAIL}), frozenset({_T.PETROL}), "marine_diesel"),
    (frozenset({_T.BOAT, _T.DIESEL, _T.SIX}), frozenset(), "inline_six_diesel"),
    (frozenset({_T.BOAT, _T.DIESEL, _T.V8}), frozenset(), "vee_diesel"),
    (frozenset({_T.BOAT, _T.DIESEL}), frozenset(), "marine_diesel"),
    (frozenset({_T.STERNDRIVE, _T.FOUR}), frozenset(), "unknown"),
    (frozenset({_T.STERNDRIVE, _T.V8}), frozenset({_T.DIESEL}), "marine_petrol_v8"),
    (frozenset({_T.STERNDRIVE, _T.V6}), frozenset({_T.DIESEL}), "marine_petrol_v8"),
    (frozenset({_T.BOAT, _T.V8}), frozenset({_T.DIESEL}), "marine_petrol_v8"),
    (frozenset({_T.TRACTOR, _T.DIESEL}), frozenset({_T.MOWER}), "tractor_diesel"),
    (frozenset({_T.DIESEL, _T.V8}), frozenset(), "vee_diesel"),
    (frozenset({_T.DIESEL, _T.V6}), frozenset(), "vee_diesel"),
    (frozenset({_T.DIESEL, _T.VEE}), frozenset(), "vee_diesel"),
    (frozenset({_T.DIESEL, _T.HEAVY}), frozenset(), "heavy_diesel"),
    (frozenset({_T.DIESEL, _T.MACHINE}), frozenset(), "heavy_diesel"),
    (
        frozenset({_T.MACHINE}),
        frozenset({_T.PETROL, _T.OLD, _T.SIDE_VALVE, _T.V8, _T.V6, _T.VEE, _T.PUSHROD}),
        "heavy_diesel",
    ),
    (frozenset({_T.DIESEL, _T.SIX}), frozenset(), "inline_six_diesel"),
    (frozenset({_T.DIESEL, _T.PLANT}), frozenset(), "small_diesel"),
    (frozenset({_T.PLANT}), frozenset({_T.PETROL}), "small_diesel"),
    (frozenset({_T.DIESEL, _T.THREE}), frozenset(), "small_diesel"),
    (frozenset({_T.DIESEL, _T.SMALL}), frozenset(), "small_diesel"),
    (frozenset({_T.V8, _T.SIDE_VALVE}), frozenset({_T.DIESEL}), "side_valve_v8"),
    (frozenset({_T.SIDE_VALVE}), frozenset({_T.V6, _T.VEE, _T.AIR_COOLED}), "side_valve"),
    (frozenset({_T.V8, _T.SOLID}), frozenset({_T.OHC}), "distributor_v8_solid"),
    (frozenset({_T.OHC, _T.V8}), frozenset(), "overhead_cam_vee"),
    (frozenset({_T.OHC, _T.V6}), frozenset(), "overhead_cam_vee"),
    (frozenset({_T.LATE, _T.V8}), frozenset(), "crank_nose_v8"),
    (frozenset({_T.LATE, _T.V6}), frozenset(), "crank_nose_gerotor_ohc"),
    (frozenset({_T.V8}), frozenset({_T.DIESEL}), "distributor_v8"),
    (frozenset({_T.TURBO, _T.FOUR}), frozenset({_T.DIESEL}), "turbo_ohc_four"),
    (frozenset({_T.OHC, _T.FOUR}), frozenset({_T.DIESEL}), "overhead_cam_four"),
    (frozenset({_T.SIX}), frozenset({_T.DIESEL, _T.OHC, _T.LATE, _T.TURBO}), "skew_gear_six"),
    (frozenset({_T.FOUR, _T.PUSHROD}), frozenset({_T.DIESEL}), "skew_gear_four"),
    (frozenset({_T.FOUR, _T.OLD}), frozenset({_T.DIESEL}), "skew_gear_four"),
    (frozenset({_T.OLD, _T.CAR}), frozenset({_T.DIESEL, _T.V8, _T.OHC}), "skew_gear_four"),
)

"""Sump, pickup, screen and suction line, and what their states are called in the book."""

from __future__ import annotations

from knowledge.lexicon.states import State, Substance, Thing

_SCREEN = "screen|strainer|gauze|mesh|filter"
_PICKUP = "pickup|pick-up|suction|sump|inlet|pump"
_FOREIGN = ("foreign_material_on_screen",)
_ON_SCREEN = {
    Substance.METAL: ("metal_in_screen",),
    Substance.STEEL: ("metal_in_screen", "magnetic_metal"),
    Substance.COPPER: ("metal_in_screen", "copper_flakes"),
    Substance.BEARING: ("metal_in_screen", "lining_strip"),
    Substance.SOFT: ("metal_in_screen", "bright_soft_metal"),
    Substance.DEBRIS: _FOREIGN,
    Substance.SLUDGE: ("sludge_on_screen",),
    Substance.CARBON: ("sludge_on_screen",),
    Substance.SEALER: ("sealer_on_screen",),
    Substance.GASKET: ("gasket_on_screen",),
    Substance.PLASTIC: ("plastic_on_screen",),
    Substance.CLOTH: ("cloth_on_screen",),
    Substance.ICE: ("ice_at_screen",),
    Substance.GREASE: ("paste_on_screen",),
    Substance.SAND: ("hard_chips", "foreign_material_on_screen"),
}
THINGS_SUCTION: tuple[Thing, ...] = (
    Thing(
        family="pickup",
        names=(
            f"oil? {_PICKUP} tube|pipe? {_SCREEN}",
            f"pick up tube|pipe? {_SCREEN}",
            "oil? strainer",
            "oil screen|gauze|mesh",
            "gauze strainer|filter?",
            "screen",
        ),
        later=("gauze", "mesh"),
        shows={
            State.BLOCKED: ("screen_blocked",),
            State.TORN: ("screen_torn",),
            State.HOLED: ("screen_torn",),
            State.CRUSHED: ("screen_crushed",),
            State.ABSENT: ("screen_torn",),
            State.CAME_OFF: ("screen_torn",),
            State.LOOSE: ("pickup_fixing_loose",),
        },
        rules_out={State.CLEAN: ("screen_blocked",), State.FINE: ("screen_blocked",)},
        holds=_ON_SCREEN,
    ),
    Thing(
        family="pickup",
        names=(
            "oil? pickup|pick-up tube|pipe|assembly?",
            "oil? pick up tube|pipe|assembly?",
            "suction tube|pipe|stub",
            "oil? pump? inlet tube|pipe",
        ),
        later=("tube",),
        shows={
            State.BLOCKED: ("screen_blocked",),
            State.CRACKED: ("pickup_tube_crack_seen",),
            State.BROKEN: ("pickup_tube_crack_seen",),
            State.HOLED: ("pickup_tube_crack_seen",),
            State.CAME_OFF: ("pickup_fell_off",),
            State.ABSENT: ("pickup_fell_off",),
            State.LOOSE: ("pickup_tube_rocks",),
            State.BENT: ("pickup_bent",),
            State.CRUSHED: ("screen_crushed",),
        },
        rules_out={
            State.CLEAN: ("screen_blocked",),
            State.FINE: ("screen_blocked", "pickup_tube_crack_seen"),
            State.TIGHT: ("pickup_tube_rocks", "pickup_fixing_loose"),
        },
        holds=_ON_SCREEN,
    ),
    Thing(
        family="pickup",
        names=(
            "oil? pickup|pick-up|strainer tube? bolt|bolts|bracket|brace|support|stay|nut|nuts|flange",
            "pick up tube? bolt|bolts|bracket|brace|support|stay|nut|nuts|flange",
        ),
        shows={
            State.LOOSE: ("pickup_fixing_loose",),
            State.BROKEN: ("pickup_fixing_loose",),
            State.CRACKED: ("pickup_fixing_loose",),
            State.ABSENT: ("pickup_fixing_loose",),
            State.CAME_OFF: ("pickup_fixing_loose",),
        },
        rules_out={
            State.TIGHT: ("pickup_fixing_loose",),
            State.FINE: ("pickup_fixing_loose",),
        },
    ),
    Thing(
        family="pickup",
        names=(
            "oil? pickup|pick-up|suction|strainer tube|pipe? o-ring|oring|seal|gasket",
            "oil? pick up tube|pipe? o-ring|oring|seal|gasket",
            "oil? pickup|pick-up|suction|up tube|pipe? o ring",
            "o-ring|oring|gasket|seal on|of|at|off|from|for the? oil? pickup|pick-up|suction tube|pipe?",
            "o-ring|oring|gasket|seal between the? oil? pickup|pick-up|suction tube|pipe? and the? oil? pump",
            "o-ring|oring|gasket|seal between the? oil? pump and the? pickup|pick-up|suction tube|pipe?",
            "o ring on|of|at|off|from|for the? oil? pickup|pick-up|suction tube|pipe?",
        ),
        shows={
            State.TORN: ("suction_seal_cut_or_missing",),
            State.FAULTY: ("suction_seal_cut_or_missing",),
            State.RUINED: ("suction_seal_cut_or_missing",),
            State.WORN: ("suction_seal_cut_or_missing",),
            State.CUT: ("suction_seal_cut_or_missing",),
            State.HARD: ("suction_seal_cut_or_missing",),
            State.ABSENT: ("suction_seal_cut_or_missing",),
            State.WRONG: ("suction_seal_cut_or_missing",),
            State.CRUSHED: ("suction_seal_cut_or_missing",),
            State.CRACKED: ("suction_seal_cut_or_missing",),
            State.LEAKING: ("suction_seal_cut_or_missing",),
        },
        rules_out={State.FINE: ("suction_seal_cut_or_missing",)},
    ),
    Thing(
        family="suction line",
        names=(
            "suction|feed|inlet hose|line|hoses",
            "oil? tank|suction hose|line|pipe",
            "hose between|from the? oil? tank|reservoir and|to the? pump?",
        ),
        shows={
            State.CRUSHED: ("suction_hose_flattens",),
            State.LOOSE: ("suction_union_loose",),
            State.CAME_OFF: ("suction_union_loose",),
        },
        rules_out={
            State.TIGHT: ("suction_union_loose",),
            State.FINE: ("suction_hose_flattens", "suction_union_loose"),
        },
    ),
    Thing(
        family="suction line",
        names=(
            "suction union|clamp|fitting|nut|side",
            "suction|feed|inlet hose|line|pipe clamp|clip|union|nut|fitting",
        ),
        shows={State.LOOSE: ("suction_union_loose",), State.CAME_OFF: ("suction_union_loose",)},
        rules_out=dict.fromkeys((State.TIGHT, State.FINE), ("suction_union_loose",)),
    ),
    Thing(
        family="sump",
        names=("oil? sump|pan|oilpan|oil-pan bottom|floor?", "crankcase"),
        shows={
            State.CRUSHED: ("sump_dented",),
            State.BENT: ("sump_dented",),
            State.HOLED: ("sump_found_holed",),
            State.CRACKED: ("sump_found_holed",),
            State.EMPTY: ("dipstick_dry",),
            State.DRY: ("dipstick_dry",),
        },
        rules_out={State.CLEAN: ("metal_in_pan", "sludge_seen")},
        holds={
            Substance.METAL: ("metal_in_pan",),
            Substance.STEEL: ("metal_in_pan", "magnetic_metal"),
            Substance.COPPER: ("metal_in_pan", "copper_flakes"),
            Substance.BEARING: ("metal_in_pan", "lining_strip"),
            Substance.SOFT: ("metal_in_pan", "bright_soft_metal"),
            Substance.SLUDGE: ("sludge_seen",),
            Substance.CARBON: ("carbon_flakes",),
            Substance.SEALER: ("sealer_in_sump",),
            Substance.GASKET: ("gasket_shreds_found",),
            Substance.PLASTIC: ("plastic_on_screen",),
            Substance.CLOTH: ("cloth_on_screen",),
            Substance.WATER: ("water_in_sump",),
            Substance.COOLANT: ("water_in_sump",),
            Substance.ICE: ("ice_at_screen",),
            Substance.SAND: ("hard_chips",),
            Substance.FUEL: ("fuel_smell",),
        },
        gives={
            Substance.WATER: ("water_at_the_drain",),
            Substance.COOLANT: ("water_at_the_drain",),
        },
    ),
    Thing(
        family="sump",
        names=(
            "sump|pan? baffle|baffles plate?",
            "trap door|doors",
            "oil? sump|pan? trapdoor|trapdoors",
        ),
        shows=dict.fromkeys(
            (
                State.LOOSE,
                State.ABSENT,
                State.BROKEN,
                State.CAME_OFF,
                State.BENT,
                State.CRACKED,
                State.STUCK,
                State.STUCK_OPEN,
            ),
            ("baffle_missing_or_loose",),
        ),
        rules_out={State.FINE: ("baffle_missing_or_loose",)},
    ),
    Thing(
        family="sump",
        names=("windage tray|pan", "crank scraper"),
        shows={
            State.CRACKED: ("tray_broken_or_missing",),
            State.BROKEN: ("tray_broken_or_missing",),
            State.LOOSE: ("tray_broken_or_missing",),
            State.ABSENT: ("tray_broken_or_missing",),
        },
    ),
    Thing(
        family="returns",
        names=(
            "oil? drainback|drain-back|return|returns hole|holes|passage|passages|galleries|gallery|slots?",
            "oil? drain back hole|holes|passages|slots?",
            "oil returns",
            "oil? drain holes",
        ),
        shows={State.BLOCKED: ("returns_blocked",)},
        rules_out={State.CLEAN: ("returns_blocked",)},
    ),
    Thing(
        family="tap",
        names=(
            "oil tap|cock|stopcock",
            "oil? tank tap|valve|cock",
            "oil? shutoff|shut-off|anti-sump|antisump tap|valve|cock?",
            "anti wet? sump|sumping valve|tap",
        ),
        shows={State.SHUT: ("oil_valve_found_shut",), State.STUCK_SHUT: ("oil_valve_found_shut",)},
    ),
)

"""The oil itself and the fluids it mixes with, and what is found in them."""

from __future__ import annotations

from knowledge.lexicon.things.thing import State, Substance, Thing

THINGS_OIL: tuple[Thing, ...] = (
    Thing(
        family="oil",
        names=(
            "drained|old|used oil",
            "dipstick|stick",
            "catch|drain pan|tray",
        ),
        shows={
            State.PUSHED_OUT: ("dipstick_pushed_out",),
            State.ABSENT: ("filler_cap_found_off",),
            State.CAME_OFF: ("filler_cap_found_off",),
        },
        holds={
            Substance.METAL: ("glitter_in_oil",),
            Substance.COPPER: ("glitter_in_oil", "copper_flakes"),
            Substance.SOFT: ("glitter_in_oil",),
            Substance.STEEL: ("glitter_in_oil",),
            Substance.WATER: ("oil_milky",),
            Substance.COOLANT: ("oil_milky",),
            Substance.CREAM: ("oil_milky",),
            Substance.FOAM: ("foam_on_stick",),
            Substance.FUEL: ("fuel_smell",),
            Substance.SLUDGE: ("sludge_seen",),
        },
    ),
    Thing(
        family="level",
        names=(
            "oil|sump|tank|stick|dipstick oil? level|levels",
            "level of the? engine? oil",
            "level in the? oil? tank|sump|pan|glass|window|crankcase",
        ),
        shows={State.FINE: ("level_correct",)},
    ),
    Thing(
        family="coolant",
        names=(
            "coolant|radiator|rad|antifreeze tank|bottle|water?",
            "header|expansion|overflow tank|bottle",
            "cooling water|system",
        ),
        holds={Substance.OIL: ("oil_film_in_coolant",), Substance.SLUDGE: ("oil_film_in_coolant",)},
    ),
    Thing(
        family="cooler face",
        names=("radiator|cooler fins|face|matrix|core",),
        shows={State.BLOCKED: ("cooler_face_blocked",), State.BENT: ("cooler_face_blocked",)},
        rules_out={State.CLEAN: ("cooler_face_blocked",)},
    ),
    Thing(
        family="duct",
        names=(
            "cooling duct|ducts|baffle|baffles|shroud|tin|tinware|hose",
            "air|cowl duct|ducting|baffle|hose",
            "fan shroud",
        ),
        shows=dict.fromkeys(
            (State.ABSENT, State.CAME_OFF, State.LOOSE, State.BLOCKED, State.BROKEN, State.TORN),
            ("cooling_duct_amiss",),
        ),
        rules_out={State.FINE: ("cooling_duct_amiss",)},
    ),
    Thing(
        family="turbo outlet",
        names=(
            "intercooler|turbo pipe|pipes|outlet|hose|hoses",
            "intercooler",
            "turbo|turbocharger|compressor|charge compressor? outlet|pipe|pipes|side",
            "intake pipe|hose|pipes",
        ),
        holds={Substance.OIL: ("oil_in_turbo_outlets",)},
    ),
)

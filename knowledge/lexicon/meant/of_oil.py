"""Words beside a finding of the oil's look, heat and record by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_JAMS = Otherwise(
    said=_set("freeze freezes freezing froze frozen"),
    beside=_set("pump engine motor valve plunger piston rotor gear lifter bearing crank"),
    unless=_set(
        "winter cold ice icy iced weather night overnight frost morning degrees minus temperature snow water "
        "oil's screen pickup strainer below outside @temperature january february december"
    ),
)
_OF_OIL = _set("oil oils oily dipstick stick sump pan")
_IN_A_TIN = Otherwise(beside=_set("tin drum jug bottle shelf bench shed"))
_OF_CAP = _set("cap filler rocker cover lid breather valve")

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "additive_or_flush_in_oil": (
        Otherwise(beside=_set("radiator rad coolant header cooling"), unless=_OF_OIL),
    ),
    "burning_oil_smoke": (
        # "blue smoke out the back"
        Otherwise(
            beside=_set("blue bluish"), also=_set("back exhaust tailpipe pipe start overrun idle")
        ),
        # "white smoke out of the exhaust"
        Otherwise(
            beside=_set("white steam steamy"),
            anywhere=_set("exhaust tailpipe tail-pipe transom"),
            unless=_set(
                "blue bluish manifold header headers downpipe burning burnt onto drips leaks smell bay hood bonnet"
            ),
        ),
    ),
    "coolant_gets_in": (
        # "the gasket leaked water to the outside"
        Otherwise(beside=_set("outside externally outwards")),
    ),
    "cream_in_filler_only": (
        # "I pulled the dipstick and there was milky sludge on it"
        Otherwise(anywhere=_set("dipstick stick sump pan"), unless=_OF_CAP),
    ),
    "engine_ran_hot": (
        # "it was boiling hot in the cabin"
        Otherwise(
            said=_set("boiling boiled boils"),
            beside=_set("cabin outside sun day summer weather today beach kettle kitchen"),
        ),
    ),
    "foam_on_stick": (
        # "cleaned the air filter and oiled the foam"
        Otherwise(said=_set("foam foams"), beside=_set("air sponge seat"), unless=_OF_OIL),
    ),
    "fuel_gets_in": (
        # "the fuel pump leaks oil" from its joint
        Otherwise(
            said=_set("pump"), then=frozenset(["oil"]), unless=_set("petrol diesel into thin smell")
        ),
    ),
    "fuel_smell": (
        # "the bilge smells of petrol"
        Otherwise(
            beside=_set("bilge bilges exhaust garage shed cab cabin hands air"),
            unless=_set("oil dipstick stick sump"),
        ),
    ),
    "oil_black_and_gritty": (
        # "gave the piston a polish with 1000 grit"
        Otherwise(anywhere=_set("polish polished polishing paper emery sandpaper lapped lapping")),
        # "thick" says nothing of dirt
        Otherwise(
            said=_set("thick"),
            unless=_set(
                "black dark gritty sticky dirty filthy sludge sludgy tar treacle horrible grit"
            ),
        ),
        # "the oil in the tin was old and black"
        _IN_A_TIN,
    ),
    "oil_grade_as_manual": (
        # "the oil is right up past full"
        Otherwise(said=frozenset(["right"]), then=_set("up to over past on at")),
        # "the oil levels are as the manual says"
        Otherwise(
            said=_set("level levels amount quantity much"),
            unless=_set("grade weight viscosity type 10w-40 15w-40 20w-50"),
        ),
    ),
    "oil_grade_too_thin": (
        # "the gauge is on a thin oil pipe"
        Otherwise(then=_set("pipe line tube tubing hose film layer")),
    ),
    "oil_looks_clean": (
        # "the strainer was clean as a whistle"
        _IN_A_TIN,
        Otherwise(
            said=_set("whistle new pin"),
            beside=_set("strainer screen pickup filter pump sump pan bearings shells bores relief"),
            unless=_set("oil dipstick stick"),
        ),
    ),
    "oil_milky": (
        # oil like a milkshake full of bubbles holds air; like a milkshake alone, water
        Otherwise(
            anywhere=_set(
                "milkshake shake cappuccino latte coffee beer cola soda lemonade champagne shandy"
            ),
            also=_set(
                "foam foams foamy foaming foamed froth froths frothy frothing frothed bubbles bubble "
                "bubbly bubbling aerated aeration air airy whipped fizzy"
            ),
            unless=_set(
                "milky water watery coolant antifreeze emulsion emulsified mayo mayonnaise"
            ),
        ),
    ),
    "oil_overdue": (
        # "the oil in the tin was old and black"
        _IN_A_TIN,
    ),
    "oil_very_cold": (
        # "the pump keeps freezing up" is a pump that jams
        _JAMS,
    ),
    "water_at_the_drain": (
        Otherwise(
            anywhere=_set("rust rusty rust-coloured radiator coolant antifreeze heater"),
            unless=_OF_OIL,
        ),
    ),
}

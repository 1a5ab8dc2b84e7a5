"""Idioms, fluids and other parts beside the words of a finding, by which it is meant otherwise.

Also what a text must name somewhere, so that "it" and "they" of a finding are what it is about.
"""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_FLUIDS = _set(
    "fuel petrol gas gasoline diesel water coolant antifreeze ethanol paraffin screenwash adblue"
)
_OF_OIL = _set("oil oils oily dipstick stick sump pan")
#: another fluid drips, runs out or is topped up
_ANOTHER_FLUID = Otherwise(beside=_FLUIDS, unless=_OF_OIL)
_FUEL_TANK = Otherwise(
    anywhere=_set("fuel petrol gas gasoline diesel water miles range filling refuel refuelled"),
    unless=_set("oil sump crankcase dry-sump"),
)
_BODY = _set(
    "rust rusts rusting rot rots corrosion paint body bodywork sills arches doors door roof chassis "
    "shop garage firm place town floor interior trim"
)
_ON_THE_TRACK = _set(
    "race races raced racing track circuit lap laps qualifying rally grid heat corner corners "
    "pressure oil light lamp gauge needle hot psi bar temperature"
)
_IN_A_TIN = Otherwise(beside=_set("tin drum jug bottle shelf bench shed"))
_CONSUMABLES = _set(
    "tyres tires brakes pads discs battery clutch exhaust seats paint hoses plugs carpets bushes roof "
    "wheels shocks belt belts"
)
_IGNITION = _set("coil spark plug plugs battery starter alternator distributor dizzy ht charger")
_OF_THE_SENDER = _set("sender sensor gauge switch oil lamp light unit")

#: by finding, "-" before it where it was found not to be so
IDIOMS: dict[str, tuple[Otherwise, ...]] = {
    **dict.fromkeys(
        (
            "oil_sprayed",
            "oil_trail_behind",
            "only_small_seeps",
            "drops_fall_while_watched",
            "cup_plug_found_out",
            "seal_or_gasket_wet",
            "too_much_poured_in",
            "filter_seat_leaks",
        ),
        (_ANOTHER_FLUID,),
    ),
    # "drained it hot and let it drip overnight", "tools are covered in oil"
    "oil_seen_outside": (
        _ANOTHER_FLUID,
        Otherwise(
            said=_set("drip dripping"),
            beside=_set("drained drain draining let"),
            unless=_set("washer plug gasket"),
        ),
        Otherwise(
            said=_set("covered"),
            beside=_set("tools hands gloves jeans overalls clothes rag rags me bench"),
        ),
    ),
    "oil_on_the_ground": (
        _ANOTHER_FLUID,
        Otherwise(said=_set("patch patched"), unless=_OF_OIL),
        Otherwise(
            said=_set("drip dripping"),
            beside=_set("drained drain draining let"),
            unless=_set("washer plug gasket"),
        ),
    ),
    # "at minimum revs", "a quarter full tank"
    "dipstick_low": (
        _ANOTHER_FLUID,
        Otherwise(then=_set("revs rpm throttle")),
        # "the needle swings more and more, then below the minimum"
        Otherwise(
            anywhere=_set("needle gauge pointer swings swing"),
            unless=_set("stick dipstick level oil filled topped sump"),
        ),
        Otherwise(anywhere=_set("tank bottle can"), unless=_OF_OIL | _set("level")),
    ),
    "water_at_the_drain": (
        Otherwise(
            anywhere=_set("rust rusty rust-coloured radiator coolant antifreeze heater"),
            unless=_OF_OIL,
        ),
    ),
    # "the engine is missing its air filter"
    "-engine_runs_normally": (Otherwise(said=_set("missing"), then=_set("its a the some")),),
    # "I think nothing of it and drive every day"
    "-oil_on_the_ground": (Otherwise(said=_set("drive"), then=_set("every home it on to daily")),),
    # "bits of hedge everywhere"
    "metal_throughout": (
        Otherwise(
            said=_set("bits pieces chunks fragments"),
            unless=_set(
                "metal metallic steel bearing bearings shell glitter engine motor oil filter sump pan "
                "swarf shavings crank block"
            ),
        ),
    ),
    # "the strainer was clean as a whistle"
    "oil_looks_clean": (
        _IN_A_TIN,
        Otherwise(
            said=_set("whistle new pin"),
            beside=_set("strainer screen pickup filter pump sump pan bearings shells bores relief"),
            unless=_set("oil dipstick stick"),
        ),
    ),
    # "no oil on the stick when I checked"
    "oil_not_checked_long": (Otherwise(said=_set("no"), anywhere=_set("dipstick stick")),),
    # "after trying another sender" is a search
    "instrument_just_changed": (Otherwise(beside=_set("trying tried tries try")),),
    # "two hundred hours of labour", "once the engine wore in"
    "high_mileage": (
        Otherwise(beside=_set("labour labor bill work workshop welding")),
        Otherwise(said=_set("wore wears wearing"), then=_set("in")),
    ),
    # "turned the ignition to on again"
    "-ran_on_without_pressure": (
        Otherwise(
            said=_set("turned turn switched"), then=_set("on to back again"), unless=_set("off")
        ),
        # "switched to the second tank"
        Otherwise(said=_set("switched"), anywhere=_set("tank tanks"), unless=_set("off")),
    ),
    # "the oil in the tin was old and black"
    **dict.fromkeys(("oil_overdue", "oil_black_and_gritty"), (_IN_A_TIN,)),
    # "the filter spanner is too small"
    "filter_not_listed": (Otherwise(anywhere=_set("spanner wrench"), unless=_set("oil")),),
    # "bearings are cheap, labour is not"
    "wrong_shells_fitted": (
        Otherwise(
            said=_set("cheap"), unless=_set("fitted used put brand installed bought got went in")
        ),
    ),
    "oil_caught_fire": (
        Otherwise(beside=_set("barn house kitchen stove camp forest village grill garden")),
    ),
    # "the tank vent was blocked and it starved of fuel"
    "breather_found_blocked": (
        Otherwise(
            beside=_set("tank fuel axle gearbox battery diff"),
            unless=_set("crankcase oil pcv engine rocker breather"),
        ),
    ),
    # "found the hose clip on the bottom hose loose"
    "oil_line_fitting_wet": (
        Otherwise(beside=_set("bottom top clip heater"), unless=_OF_OIL | _set("cooler line")),
    ),
    # "cleaned the air filter and oiled the foam"
    "foam_on_stick": (
        Otherwise(said=_set("foam foams"), beside=_set("air sponge seat"), unless=_OF_OIL),
    ),
    # "it was boiling hot in the cabin"
    "engine_ran_hot": (
        Otherwise(
            said=_set("boiling boiled boils"),
            beside=_set("cabin outside sun day summer weather today beach kettle kitchen"),
        ),
    ),
    "additive_or_flush_in_oil": (
        Otherwise(beside=_set("radiator rad coolant header cooling"), unless=_OF_OIL),
    ),
    "tank_empties_running": (_FUEL_TANK,),
    "oil_loss_fast": (_ANOTHER_FLUID, Otherwise(said=_set("tank"), unless=_OF_OIL)),
    # "ran out of fuel, tank ran dry", "nothing left in the tank"
    "dipstick_dry": (
        Otherwise(
            anywhere=_set("fuel petrol diesel gas gasoline"),
            unless=_OF_OIL | _set("engine pressure light lamp"),
        ),
    ),
    # "it is prone to rust", "the shop is famous for its paint work"
    "known_for_model": (
        Otherwise(beside=_BODY, unless=_set("oil pressure pump bearing bearings engine engines")),
    ),
    # "the last session with the welder", "the first stage of the restoration", "in practice"
    "raced_or_heeled": (
        Otherwise(
            said=_set("session stage stages meeting meet practice"),
            unless=_ON_THE_TRACK,
        ),
    ),
    # "we worked hard on it all winter", "it was hard work getting it off"
    "worked_hard": (
        Otherwise(
            said=_set("worked"), beside=_set("we i he they you"), unless=_set("engine motor")
        ),
        Otherwise(
            said=_set("work"),
            then=_set("getting to finding removing taking fitting pulling with on"),
        ),
        # "a mile after pulling onto the highway"
        Otherwise(said=_set("pulling"), then=_set("onto into off away over")),
    ),
    "-high_mileage": (
        Otherwise(said=_set("new"), beside=_CONSUMABLES),
        # "drove it several thousand miles like that"
        Otherwise(
            said=_set("few couple several two three"),
            beside=_set("drove driven drive driving run ran running went gone travelled traveled"),
            unless=_set("only just new clock odometer since from total done"),
        ),
    ),
    # "cut out the rusty floor", "finally stopped the squeak", "the rain then stopped"
    "stopped_with_loss_of_power": (
        Otherwise(
            said=_set("locked locks lock froze frozen"),
            anywhere=_set("pump"),
            beside=_set(
                "turn turned turns turning rotate rotated rotates spin spun hand degrees then"
            ),
            unless=_set("engine motor crank crankshaft car drove driving"),
        ),
        Otherwise(said=_set("cut cuts cutting"), then=_set("the an my our all some two new")),
        Otherwise(
            said=_set("cut cuts cutting"),
            beside=_set("gasket floor card steel section panel hole rust"),
        ),
        Otherwise(said=_set("stopped"), then=_set("the my it her to for")),
        # "silent with the key on and the engine stopped"
        Otherwise(said=_set("stopped"), anywhere=_set("key ignition")),
        Otherwise(said=_set("gave"), then=_set("on trying looking hope")),
        # "it came to a stop at the traffic lights"
        Otherwise(said=_set("came"), anywhere=_set("traffic junction station kerb gate crossing")),
    ),
    # "tight spot to work in", "it turns slowly in tight corners"
    "hard_to_turn": (
        Otherwise(said=_set("spot spots"), then=_set("to for")),
        Otherwise(
            said=_set("turns turn turned turning"),
            beside=_set("corners roundabout roundabouts lock circles harbour marina"),
        ),
    ),
    "no_oil_at_rockers": (
        Otherwise(
            said=_set("head heads top"),
            beside=_set("clean cleaned wiped assembled stripped stored"),
            unless=_set("oil rocker rockers cam camshaft valvegear running no"),
        ),
    ),
    # "the plugs were oily", "loose plug in the boot floor"
    "sender_connector_loose": (
        Otherwise(
            said=_set("plugs"), unless=_set("sender sensor wire wires wiring connector gauge loom")
        ),
        Otherwise(
            said=_set("plug"),
            beside=_set("spark boot floor filler core rubber number cylinder"),
            unless=_OF_THE_SENDER,
        ),
    ),
    "sender_leaks_oil": (
        Otherwise(
            said=_set("plugs plug"),
            beside=_set("spark number cylinder plugs"),
            unless=_set("sender sensor wire wires wiring connector gauge loom switch"),
        ),
    ),
    "sender_wire_off": (Otherwise(beside=_IGNITION, unless=_OF_THE_SENDER),),
    "drive_coupling_sheared": (
        Otherwise(
            said=_set("key"),
            beside=_set("lock door car house ignition spare filler boot"),
            unless=_set("woodruff sheared keyway pump drive"),
        ),
    ),
    # "wear in rear springs", "a throttle spring snapped"
    "relief_spring_short_or_broken": (
        Otherwise(
            beside=_set("rear front leaf road return throttle suspension seat clutch valve-spring"),
            unless=_set("relief pressure regulator plunger oil"),
        ),
    ),
    # "covered in dust"
    "oil_on_bodywork": (
        Otherwise(
            said=_set("covered coated"), beside=_set("dust mud dirt snow ice paint bugs salt")
        ),
    ),
    "copper_flakes": (
        Otherwise(beside=_set("polished polish paint painted interior trim lacquer dash")),
    ),
    "bright_soft_metal": (
        Otherwise(beside=_set("polished polish paint painted interior trim lacquer")),
    ),
    "magnetic_metal": (Otherwise(beside=_set("dropped"), unless=_set("filter oil sump pan")),),
    # "the gasket leaked water to the outside"
    "coolant_gets_in": (Otherwise(beside=_set("outside externally outwards")),),
}

_OF_SENDERS = _set(
    "sender senders sensor sensors switch unit sending-unit sending transducer transmitter gauge light lamp "
    "oil pressure"
)
_OF_LEVEL = _OF_OIL | _set(
    "level lifters drain drains litre litres liter liters quart quarts pint pints gallon filler filled "
    "@volume overfilled poured miles seconds minutes road ground floor stream drop guts motorway contents sumpful"
)
#: of these one must be named in the text: "it was bad" is of the sender only where one is named
NEEDS: dict[str, frozenset[str]] = {
    "sender_wrong_on_air": _OF_SENDERS,
    "oil_loss_fast": _OF_LEVEL
    | _set("hose line filter cooler plug seal gasket leak leaks leaking"),
    "plugs_not_counted": _set("plug plugs galley gallery"),
    "level_high": _OF_LEVEL,
    "level_risen": _OF_LEVEL,
    "level_slightly_high": _OF_LEVEL,
    "level_falls_standing": _OF_LEVEL,
    "too_much_poured_in": _OF_LEVEL,
    "drained_volume_low": _OF_LEVEL,
    "oil_used_fast": _OF_LEVEL | _set("topping topped top"),
    "no_return_to_tank": _OF_LEVEL | _set("tank return returns returning scavenge"),
    "several_seals_at_once": _OF_LEVEL
    | _set("seal seals gasket gaskets leak leaks leaking leaked"),
    "filter_drop_high": _set("filter filters pressure psi gauge bar"),
    "one_bearing_wiped": _set(
        "bearing bearings shell shells journal journals rod rods main mains big-end insert inserts end"
    ),
    "other_gauges_also_wrong": _set(
        "gauge gauges instrument instruments dial dials needle needles tach tacho tachometer speedo "
        "speedometer ammeter voltmeter electrical electrics lights lamps clocks meter meters counter "
        "windows indicators cluster reading readings"
    ),
    "oil_slow_to_return": _OF_LEVEL,
    "level_correct": _OF_LEVEL | _set("full topped tank glass window dip mark"),
    "drained_volume_high": _OF_LEVEL | _set("drained"),
    "oil_not_checked_long": _OF_LEVEL | _set("dip dipped checked check bonnet hood"),
    "piece_found_inside": _OF_LEVEL
    | _set(
        "engine motor pump pickup strainer screen filter crankcase cover gallery valve block case rocker "
        "cam crank bearing pipe port"
    ),
}
#: these are of the pressure, or of what somebody does who sees it low: it, or its gauge or lamp, must be
#: named, or one of the words beside
OF_THE_PRESSURE: dict[str, frozenset[str]] = {
    **dict.fromkeys(
        ("ran_on_without_pressure", "ran_long_without_distress"),
        _set("shut killed switched off down engine motor towed dared dare further farther"),
    ),
    "maker_calls_it_normal": _set("dealer dealership maker factory book manual handbook"),
    **dict.fromkeys(
        (
            "long_unchanged",
            "needle_stuck_at_one_value",
            "needle_off_zero_at_rest",
            "several_alike",
            "changed_after_other_work",
            "gone_at_the_next_start",
            "capped_low",
            "falls_as_revs_rise",
            "lamp_slow_to_go_out",
            "low_at_all_speeds",
            "low_first_minutes_then_good",
            "low_only_when_level_low",
            "panel_reads_too_low",
            "right_idle_cured_it",
            "declined_over_months",
            "back_when_slowed",
            "loss_is_passing",
            "returns_the_same_way",
            "fell_suddenly",
            "fades_at_speed_back_after_rest",
            "goes_after_minutes",
            "grows_worse",
            "worse_in_the_wet",
            "ten_seconds_or_more",
            "stepped_down_and_stayed",
        ),
        _set("reads reading readings shows psi dial pegged revs rpm"),
    ),
}

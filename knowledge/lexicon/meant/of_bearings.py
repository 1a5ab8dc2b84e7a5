"""Words beside a finding of bearings, shells and a seized engine by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

#: carry no oil of the engine, or make no part of it
_ACCESSORIES = _set(
    "compressor aircon ac a/c a/con alternator dynamo generator caliper calliper idler pulley clutch "
    "gearbox diff winch waterpump supercharger blower wastegate throttle exhaust wheel brake brakes "
    "fan steering flap vane vanes actuator injector viscous magneto pto hinge lock window door"
)
_HOT = _set(
    "wiped blue blued melted burnt burned smeared seized spun torn welded extruded overheated "
    "discoloured discolored picked rod-through"
)
_EVENLY = _set("evenly even uniformly uniform all")
_FOULED = _set(
    "foul fouls fouled fouling sooty soot wet gap gapped gapping electrode electrodes spark sparks "
    "sparking misfire misfires misfiring glow ht lead leads"
)
_SPARK_PLUG = Otherwise(
    beside=_FOULED, unless=_set("gallery oilway galley blanking cup welsh core block hole thread")
)

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "bearings_failed_again": (
        Otherwise(
            said=_set("another"),
            then=_set("shop garage place workshop builder mechanic engine car truck boat owner"),
        ),
    ),
    "clatters_only_at_high_revs": (
        # "the lifters were pumped up and quiet"
        Otherwise(
            said=_set("pump pumped pumping"),
            beside=_set(
                "quiet silent quietened hard solid firm full fine ok good normal nicely well"
            ),
            unless=_set("revs rpm rev high float"),
        ),
    ),
    "crank_plug_found_missing": (
        # "number 2 plug fouls"
        _SPARK_PLUG,
    ),
    "-crank_plug_found_missing": (
        # "number 2 plug fouls"
        _SPARK_PLUG,
    ),
    "-crank_scored": (
        # "the seal that feeds the crank end was re-used as it looked ok" says nothing of the journals
        Otherwise(said=_set("re-used reused refitted"), unless=_set("journal journals crankpins")),
        Otherwise(
            said=_set("seal seals plug gear nose pulley sensor"),
            unless=_set("journal journals crankpins"),
        ),
    ),
    "engine_banged_or_shook": (
        # "pressed it in with a hammer"
        Otherwise(said=_set("hammer hammers"), beside=_set("with using use used by")),
    ),
    "engine_seized": (
        # "the pump turned a quarter turn and then locked up"
        Otherwise(
            said=_set("locked locks lock froze frozen"),
            anywhere=_set("pump"),
            beside=_set(
                "turn turned turns turning rotate rotated rotates spin spun hand degrees then"
            ),
            unless=_set("engine motor crank crankshaft car drove driving"),
        ),
        Otherwise(beside=_ACCESSORIES, unless=_set("engine motor crank crankshaft")),
        Otherwise(
            beside=_set("starter wiper window blower fan winch trim tilt bilge"),
            unless=_set("engine crank crankshaft"),
        ),
        # "was stuck solid in its hole"
        Otherwise(
            beside=_set("hole seat housing sleeve guide"),
            unless=_set("engine motor crank piston pistons"),
        ),
    ),
    "hard_to_turn": (
        Otherwise(beside=_ACCESSORIES, unless=_set("engine motor crank crankshaft")),
        # "tight spot to work in", "it turns slowly in tight corners"
        Otherwise(said=_set("spot spots"), then=_set("to for")),
        Otherwise(
            said=_set("turns turn turned turning"),
            beside=_set("corners roundabout roundabouts lock circles harbour marina"),
        ),
    ),
    "-ran_on_without_pressure": (
        # "turned the ignition to on again"
        Otherwise(
            said=_set("turned turn switched"), then=_set("on to back again"), unless=_set("off")
        ),
        # "switched to the second tank"
        Otherwise(said=_set("switched"), anywhere=_set("tank tanks"), unless=_set("off")),
        # "the bush has turned in the block"
        Otherwise(said=_set("turned turn"), unless=_set("off engine key ignition it")),
    ),
    "ran_on_without_pressure": (
        # "the light went on", not "the boat went on"
        Otherwise(
            said=_set("light lamp alarm buzzer"),
            beside=_set("went"),
            unless=_set(
                "drove driven ran run carried kept continued limped nursed home miles anyway ignored i we he she "
                "until motored"
            ),
        ),
    ),
    "rod_broken": (
        # "the rod let go its shell"
        Otherwise(said=frozenset(["let"]), then=_set("its the a go")),
    ),
    "shell_hole_mismatch": (
        Otherwise(
            anywhere=_set("cam camshaft cambearing"),
            unless=_set("main mains rod rods crank shell shells big-end"),
            also=_set("turned turning turns spun walked rotated"),
        ),
    ),
    "shells_etched": (
        # "shell black and wiped"
        Otherwise(said=_set("black"), anywhere=_set("wiped seized spun welded")),
    ),
    "shells_flaking": (
        # "the block is cracked at the main gallery"
        Otherwise(
            beside=_set("gallery galleries block oilway"),
            unless=_set("shell shells lining bearing bearings overlay babbitt white-metal"),
        ),
    ),
    "shells_worn_evenly": (
        # "shell is wiped, copper showing, journal blue" has had heat
        Otherwise(beside=_HOT, unless=_EVENLY),
        Otherwise(
            said=_set("shell bearing slipper insert"),
            anywhere=_set("blue blued"),
            unless=_EVENLY | _set("mains"),
        ),
        # "bare copper showing" of a wire
        Otherwise(
            beside=_set("wire wires wiring cable lead loom insulation bare"),
            unless=_set("shell shells bearing bearings mains rods lining overlay"),
        ),
        # "even grey wear, no copper"
        Otherwise(
            said=_set("even evenly grey gray"),
            anywhere=frozenset(["copper"]),
            unless=_set("showing through into to down exposed visible patches on"),
        ),
    ),
    "signs_of_starvation": (
        Otherwise(said=frozenset(["dry"]), beside=_set("seal seals gasket joint outside cover")),
    ),
    "stopped_with_loss_of_power": (
        # "sits at 30 with the engine stopped"
        Otherwise(
            said=_set("stopped off"),
            beside=_set("with"),
            unless=_set("bang seized itself clatter knock suddenly road driving lost"),
        ),
        # "cut out the rusty floor", "finally stopped the squeak", "the rain then stopped"
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
    "witness_marks": (
        # "something hit the underside"
        Otherwise(
            said=_set("hit"), anywhere=_set("underside underneath under bottom belly road sump pan")
        ),
    ),
    "wrong_shells_fitted": (
        # "bearings are cheap, labour is not"
        Otherwise(
            said=_set("cheap"), unless=_set("fitted used put brand installed bought got went in")
        ),
    ),
}

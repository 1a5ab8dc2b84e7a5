"""Words beside a finding by which its part is another one, or its state a milder one."""

from __future__ import annotations

from knowledge.lexicon.meant_otherwise import Otherwise
from knowledge.lexicon.word_sets import set_of as _set

_SEALER = _set("rtv silicone sealant sealer hylomar goo")
_A_LID = _set("cap lid dipstick stick")
_REV = frozenset(["rev"])
_ALARMS = _set("alarm buzzer horn beeper light lamp siren warning")
_WEEPS = _set(
    "weeping weeps weep wept seeping seeps seep damp drip drips dripping dribble dribbles sweats sweating"
)
_GONE = _set(
    "loose loosened gone missing out open fell fallen dropped blown blew popped pushed stripped undone "
    "off lost finger-tight finger unscrewed absent spat"
)
_SLOPES = _set(
    "slope slopes hill hills bank banks incline nose tilted tilt heeled heel list side sideways camber "
    "uphill downhill ground"
)
_OF_STICK = _set("oil dipstick stick mark marks fluid")
_OWNER = _set("another a an the my our his her their someone some different other")
_WATERS = _set(
    "water coolant antifreeze glycol seawater diesel fuel petrol gas gasoline paraffin kerosene"
)

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
WIDER: dict[str, tuple[Otherwise, ...]] = {
    # "the pressure rises when the clutch goes in"
    "=normal": (
        Otherwise(
            said=_set("rises rise rose climbs climb climbed increases comes up jumps goes"),
            beside=_set("clutch declutch declutching"),
        ),
    ),
    # "the dash buzzer goes off in reverse"
    "=lamp": (
        Otherwise(
            said=_set("buzzer alarm horn beeper beep beeping siren buzz chime"),
            beside=_set(
                "reverse reversing seatbelt belt door doors handbrake parking trailer tailgate bonnet"
            ),
            unless=_set("oil pressure engine"),
        ),
    ),
    # "can't rev over 2000 or the alarm goes off"
    "=lost power": (
        Otherwise(said=_REV, then=_set("the or without because , -") | _ALARMS, anywhere=_ALARMS),
        Otherwise(
            said=_REV,
            then=frozenset(["it"]),
            beside=_set("or without because"),
            anywhere=_ALARMS,
        ),
    ),
    "filler_cap_found_off": (
        # "filter housing cap o ring missing"
        Otherwise(beside=_set("filter"), unless=_set("filler dipstick rocker valve")),
        # "beads of RTV hanging out inside the oil filler"
        Otherwise(anywhere=_SEALER, unless=_A_LID),
        # "the dipstick is off another tractor"
        Otherwise(
            said=_set("off out"), then=_OWNER | _set("of"), unless=_set("tube hole seat seated cap")
        ),
    ),
    # "the little screen in the VVT solenoid was full of black bits"
    "screen_blocked": (
        Otherwise(
            beside=_set(
                "vvt solenoid solenoids ocv phaser phasers vanos vtec turbo turbocharger banjo injector "
                "carb tank lift sender switch actuator"
            ),
            unless=_set("pickup pick-up strainer sump suction pan"),
        ),
    ),
    # "the block is cracked at the main gallery"
    "shells_flaking": (
        Otherwise(
            beside=_set("gallery galleries block oilway"),
            unless=_set("shell shells lining bearing bearings overlay babbitt white-metal"),
        ),
    ),
    "gallery_plug_found_missing": (Otherwise(beside=_WEEPS, unless=_GONE),),
    "drain_plug_found_loose": (Otherwise(beside=_WEEPS, unless=_GONE),),
    # "the turbo whistles" as every turbo does
    "turbo_shrieks": (
        Otherwise(
            said=_set("whistle whistles whistling whistled"),
            unless=_set("loud louder new howl howls screams shrieks grinding suddenly siren"),
        ),
    ),
    # "the lamp is on with the key off"
    "-lamp_dead_with_key_on": (
        Otherwise(said=_set("key ignition"), then=_set("off out removed pulled")),
    ),
    # "the fan belt snapped"
    "earlier_breakage": (
        Otherwise(
            said=_set("belt"),
            beside=_set(
                "fan alternator drive serpentine aux auxiliary accessory dynamo generator water v-belt vee "
                "polyvee steering aircon"
            ),
            unless=_set("timing cam cambelt"),
        ),
    ),
    # "it comes level again and it is OK"
    "level_correct": (
        Otherwise(said=_set("level"), anywhere=_SLOPES, unless=_OF_STICK | _set("sump filled")),
    ),
    # "the relief spring was in two bits"
    "debris_on_relief_seat": (
        Otherwise(
            said=_set("bits pieces halves"),
            beside=_set("two three several half in"),
            unless=_set("seat under dirt swarf metal debris of"),
        ),
    ),
    # "picking this up again after 5 weeks"
    "history_unknown": (
        Otherwise(
            said=_set("picking pick picked"),
            beside=_set("again thread project where"),
            unless=_set("bought auction seller sale dealer purchased"),
        ),
    ),
    # "it has been rebuilt twice already"
    "freshly_rebuilt": (
        Otherwise(
            beside=_set("already twice thrice times once previously"),
            unless=_set("just fresh freshly new newly recent recently last today yesterday first"),
        ),
    ),
    # "thick" says nothing of dirt
    "oil_black_and_gritty": (
        Otherwise(
            said=_set("thick"),
            unless=_set(
                "black dark gritty sticky dirty filthy sludge sludgy tar treacle horrible grit"
            ),
        ),
    ),
    # "the sleeve on the balance shaft has gone round"
    "drive_coupling_sheared": (
        Otherwise(beside=_set("balance balancer balancers"), unless=_set("pump")),
    ),
    # "drained 3 litres of diesel out of the sump"
    "drained_volume": (
        Otherwise(said=_WATERS, unless=_set("oil")),
        Otherwise(then=_WATERS),
    ),
    "oil_loss_fast": (Otherwise(said=_set("drained drain draining")),),
    # "checked the dipstick from the other side"
    "dipstick_not_its_own": (Otherwise(then=_set("side way end hand day week morning")),),
    # "the fuel pump leaks oil" from its joint
    "fuel_gets_in": (
        Otherwise(
            said=_set("pump"), then=frozenset(["oil"]), unless=_set("petrol diesel into thin smell")
        ),
    ),
    # "the fuel pump leaks petrol", "the fuel pump's diaphragm leaks into the crankcase"
    "accessory_pad_wet": (
        Otherwise(then=_set("petrol fuel gas gasoline diesel coolant water")),
        Otherwise(
            beside=_set("diaphragm diaphram diaphragms"),
            unless=_set("outside joint gasket flange base block oil"),
        ),
    ),
    # "the slack chain of the oil pump" is no timing chain
    "tensioner_slack": (
        Otherwise(said=_set("chain"), beside=_set("pump"), unless=_set("timing cam tensioner")),
    ),
    # "the solenoid's gasket leaks inside"
    "oil_seen_outside": (
        Otherwise(
            beside=_set("inside internally internal inwards"),
            unless=_set(
                "outside ground floor drips puddle bellhousing hands outer externally cab boat car"
            ),
        ),
    ),
    # "swarf in the pump" is not yet of a bearing
    "bearing_pieces_in_pump": (
        Otherwise(
            said=_set("swarf filings shavings"),
            unless=_set("bearing bearings shell shells white copper lining bushing"),
        ),
    ),
}

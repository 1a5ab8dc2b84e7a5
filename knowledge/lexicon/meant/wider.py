"""Words beside a finding by which its part is another one, or its state a milder one."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_SEALER = _set("rtv silicone sealant sealer hylomar goo")
_A_LID = _set("cap lid dipstick stick")
_REV = frozenset(["rev"])
_ALARMS = _set("alarm buzzer horn beeper light lamp siren warning")
_OTHER_SCREEN = Otherwise(
    beside=_set(
        "vvt solenoid solenoids ocv phaser phasers vanos vtec turbo turbos turbo's turbocharger banjo "
        "injector carb tank lift sender switch actuator"
    ),
    unless=_set("pickup pick-up strainer sump suction pan"),
)
_WATCHED = _set(
    "needle gauge reading jumps jump flickers flicker flickered changes change makes made moves goes "
    "came comes out lit flashes"
)
_CHAFED = _set("metal block bracket body rubbed chafed bare copper")
#: oil runs out of a filter that is taken off
_OUT_OF_A_FILTER = Otherwise(
    said=_set("ran runs poured came out"),
    beside=_set("filter it"),
    anywhere=_set("took unscrewed removed undid pulled spun"),
    unless=_set("driving running idle engine block ground floor down road"),
)
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

_MACHINES = _set(
    "car van boat truck lorry tractor bike engine motor machine digger generator pickup yacht"
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
        # "the survey says check it"
        Otherwise(said=_set("check"), then=_set("it them that this")),
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
    "screen_blocked": (_OTHER_SCREEN,),
    **dict.fromkeys(("sludge_on_screen", "sealer_on_screen", "gasket_on_screen"), (_OTHER_SCREEN,)),
    "plastic_on_screen": (_OTHER_SCREEN,),
    "foreign_material_on_screen": (_OTHER_SCREEN,),
    # "the bush has turned in the block"
    "-ran_on_without_pressure": (
        Otherwise(said=_set("turned turn"), unless=_set("off engine key ignition it")),
    ),
    # "the balance shaft's bush turned, 0.3 mm play" is no bush of the pump
    "pump_bush_clearance": (
        Otherwise(anywhere=_set("balance balancer balancers cam"), unless=frozenset(["pump"])),
    ),
    # "gauge dead 0" is what it shows
    "gauge_dead_on_known_signal": (
        Otherwise(
            said=frozenset(["dead"]),
            beside=_set("0 zero nothing"),
            unless=_set("signal known resistor resistance pot terminals terminal bench tested"),
        ),
    ),
    "mount_gasket_blown": (
        Otherwise(beside=_set("good sound fine ok perfect intact whole"), unless=_set("not no")),
    ),
    "filter_bypass_stuck_open": (
        # "the heater bypass" is read apart; "the bypass valve closes properly"
        Otherwise(
            said=_set("closes shuts seats closed"), unless=_set("not never wont doesnt stuck")
        ),
    ),
    "signs_of_starvation": (
        Otherwise(said=frozenset(["dry"]), beside=_set("seal seals gasket joint outside cover")),
    ),
    # "plastic bits in the pan"
    "metal_in_pan": (
        Otherwise(
            beside=_set("plastic nylon rubber"),
            unless=_set("metal flakes brass bronze silver steel shiny magnet swarf glitter"),
        ),
    ),
    # "no oil at the rockers, the pipe bent flat"
    "pickup_bent": (
        Otherwise(
            anywhere=_set("rocker rockers valve gauge turbo"),
            unless=_set("pickup pick-up strainer suction"),
        ),
    ),
    "oil_hoses_aged": (
        Otherwise(said=_set("bent flat kinked"), unless=_set("hose hoses old aged hard perished")),
    ),
    # "the oil is right up past full"
    "oil_grade_as_manual": (
        Otherwise(said=frozenset(["right"]), then=_set("up to over past on at")),
    ),
    # "new filter dry, did not prefill"
    "-filter_seat_leaks": (
        Otherwise(
            said=frozenset(["dry"]), anywhere=_set("prefill prefilled fill filled prime primed")
        ),
        # "put the new filter on dry"
        Otherwise(
            said=frozenset(["dry"]),
            beside=_set("new put fitted screwed installed fit"),
            unless=_set("seat joint gasket leak leaks wiped bone now"),
        ),
    ),
    "filter_misfitted": (
        # how a filter hangs: "screw-on filter hanging upside down"
        Otherwise(
            said=_set("upside wrong"),
            beside=_set("hanging hangs hung mounted sits sitting up screw spin-on"),
            unless=_set("gasket element cartridge seal stem spring"),
        ),
        # "the old filter had a rubber flap"
        Otherwise(said=frozenset(["rubber"]), anywhere=_set("flap membrane diaphragm valve")),
    ),
    # "the cam bearing turned, its oil hole half covered"
    "gallery_found_blocked": (
        Otherwise(said=_set("covered covers half"), beside=_set("cam camshaft bush bushing")),
    ),
    "shell_hole_mismatch": (
        Otherwise(
            anywhere=_set("cam camshaft cambearing"),
            unless=_set("main mains rod rods crank shell shells big-end"),
            also=_set("turned turning turns spun walked rotated"),
        ),
    ),
    # "changed the oil twice"
    "panel_half_or_double": (
        Otherwise(
            said=frozenset(["twice"]),
            beside=_set("changed change oil times filter tried cranked primed"),
        ),
    ),
    # "bare copper showing" of a wire
    "shells_worn_evenly": (
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
    "wiggle_moves_needle": (
        # "I moved the wires to the oil light": nobody watched the needle
        Otherwise(said=_set("moved moving shifted rerouted"), unless=_WATCHED),
        # "the wire was rubbed through, touching metal"
        Otherwise(said=_set("touching touches touched"), anywhere=_CHAFED, unless=_WATCHED),
    ),
    # "dropped to 20, then knock knock, switched off": what was done, no gauge at rest
    "needle_off_zero_at_rest": (
        Otherwise(
            said=_set("off stopped"),
            anywhere=_set("knock knocking knocks bang rattle seized died motorway"),
            unless=_set("still stays sits rests zero key never"),
        ),
    ),
    # "the oil hole is 90 deg out"
    "hot_and_thin": (
        Otherwise(
            said=_set("out round around off"),
            anywhere=_set("hole holes rotated turned bearing timing keyway"),
            unless=_set("weather outside day sun heat climate"),
        ),
    ),
    # "only 12 at 600 tickover" is a pressure
    "idle_below_spec": (
        Otherwise(said=frozenset(["at"]), unless=_set("idles idling ticks runs set is speed")),
    ),
    # "it sat a month" is no long rest
    "stood_long": (
        Otherwise(
            said=frozenset(["a month", "one month", "1 month"]),
            unless=_set("winter years year over than"),
        ),
    ),
    # "the block is cracked at the main gallery"
    "shells_flaking": (
        Otherwise(
            beside=_set("gallery galleries block oilway"),
            unless=_set("shell shells lining bearing bearings overlay babbitt white-metal"),
        ),
    ),
    # "the gauge is on a thin oil pipe"
    "oil_grade_too_thin": (Otherwise(then=_set("pipe line tube tubing hose film layer")),),
    # "still nothing on a mechanical gauge", "put a mate's mechanical gauge on it": it was a test
    "direct_gauge": (
        Otherwise(
            said=_set("mechanical"),
            beside=_set(
                "a test put tried borrowed mate's mates friend's hooked screwed teed temporary another "
                "workshop checked verified confirmed"
            ),
            unless=_set(
                "has have had got own standard factory original stock fitted-with dash old"
            ),
        ),
    ),
    # "it has a mechanical gauge in the dash"
    "panel_reads_too_low": (
        Otherwise(said=_set("in"), unless=_set("less lower low than but while below under")),
    ),
    # "shell black and wiped"
    "shells_etched": (Otherwise(said=_set("black"), anywhere=_set("wiped seized spun welded")),),
    # "a small leak at the pump was repaired"
    "only_small_seeps": (Otherwise(beside=_set("repaired fixed cured mended resealed")),),
    # "oil poured down the distributor hole before it was turned"
    "distributor_bore_pours": (Otherwise(said=_set("down into"), unless=_set("out from")),),
    # "dry each time between two short runs"
    "idles_long": (Otherwise(beside=_set("between")),),
    "gallery_plug_found_missing": (
        Otherwise(beside=_WEEPS, unless=_GONE),
        # "can't remember putting the gallery plugs back"
        Otherwise(said=_set("remember recall")),
        Otherwise(said=frozenset(["no"]), anywhere=_set("checked counted remembered remember")),
        # "the gallery plugs were out for cleaning"
        Otherwise(said=_set("out off"), then=_set("for to while when at")),
    ),
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
        # "the dipstick is the right one"
        Otherwise(said=frozenset(["right"]), then=_set("one down off")),  # "was right down"
        # "between two short runs the stick was dry"
        Otherwise(
            said=_set("between"),
            unless=_set("mark marks line lines add full min notches dots holes halfway level"),
        ),
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
        # "bought the cheap one" of a filter
        Otherwise(
            said=_set("bought buy got purchased"),
            beside=_set("cheap filter oil part parts sender gauge kit gasket"),
            unless=_MACHINES | _set("it her him"),
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
    "oil_loss_fast": (
        Otherwise(said=_set("drained drain draining")),
        _OUT_OF_A_FILTER,
    ),
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
    "oil_seen_outside": (
        _OUT_OF_A_FILTER,
        # "the solenoid's gasket leaks inside"
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

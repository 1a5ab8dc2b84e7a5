"""Words beside a finding of oil outside the engine by which it is something else, or no trouble."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_FUEL_CAP = _set("fuel coolant header radiator")
_FLUIDS = _set(
    "fuel petrol gas gasoline diesel water coolant antifreeze ethanol paraffin screenwash adblue"
)
_OF_OIL = _set("oil oils oily dipstick stick sump pan")
#: another fluid drips, runs out or is topped up
_ANOTHER_FLUID = Otherwise(beside=_FLUIDS, unless=_OF_OIL)
_SEALER = _set("rtv silicone sealant sealer hylomar goo")
_A_LID = _set("cap lid dipstick stick")
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
_OWNER = _set("another a an the my our his her their someone some different other")
_FOULED = _set(
    "foul fouls fouled fouling sooty soot wet gap gapped gapping electrode electrodes spark sparks "
    "sparking misfire misfires misfiring glow ht lead leads"
)
_SPARK_PLUG = Otherwise(
    beside=_FOULED, unless=_set("gallery oilway galley blanking cup welsh core block hole thread")
)
_TENSIONER = _set("tensioner tensioners")
#: it ran out of the engine
_SPILT = _set(
    "trail slick streak stripe line drops laid laying dropped dropping dumped leaving left"
)

#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
OTHERWISE: dict[str, tuple[Otherwise, ...]] = {
    "accessory_pad_wet": (
        # "the fuel pump leaks petrol", "the fuel pump's diaphragm leaks into the crankcase"
        Otherwise(then=_set("petrol fuel gas gasoline diesel coolant water")),
        Otherwise(
            beside=_set("diaphragm diaphram diaphragms"),
            unless=_set("outside joint gasket flange base block oil"),
        ),
    ),
    "breather_found_blocked": (
        # "the tank vent was blocked and it starved of fuel"
        Otherwise(
            beside=_set("tank fuel axle gearbox battery diff"),
            unless=_set("crankcase oil pcv engine rocker breather"),
        ),
    ),
    "cup_plug_found_out": (_ANOTHER_FLUID,),
    "drain_plug_found_loose": (
        # "the crank plug came out of the rod journal", "spark plug came out"
        Otherwise(
            beside=_set(
                "crank crankshaft journal crankpin gallery oilway core welsh freeze frost spark glow "
                "lifter cam camshaft block head rocker heater blanking expansion cup"
            ),
            unless=_set("drain sump pan"),
        ),
        Otherwise(beside=_WEEPS, unless=_GONE),
        # "number 2 plug fouls"
        _SPARK_PLUG,
    ),
    "-drain_plug_found_loose": (
        # "number 2 plug fouls"
        _SPARK_PLUG,
    ),
    "drops_fall_while_watched": (_ANOTHER_FLUID,),
    "filler_cap_found_off": (
        Otherwise(beside=_FUEL_CAP, unless=_set("oil")),
        # "filter housing cap o ring missing"
        Otherwise(beside=_set("filter"), unless=_set("filler dipstick rocker valve")),
        # "beads of RTV hanging out inside the oil filler"
        Otherwise(anywhere=_SEALER, unless=_A_LID),
        # "the dipstick is off another tractor"
        Otherwise(
            said=_set("off out"), then=_OWNER | _set("of"), unless=_set("tube hole seat seated cap")
        ),
    ),
    "-filter_found_loose": (
        # "hand tight only"
        Otherwise(then=frozenset(["only"])),
    ),
    "leaks_only_running": (
        # "no leaks with the engine off or running"
        Otherwise(anywhere=_set("either nor neither or")),
    ),
    "oil_caught_fire": (
        Otherwise(beside=_set("barn house kitchen stove camp forest village grill garden")),
    ),
    "oil_hoses_aged": (
        Otherwise(said=_set("bent flat kinked"), unless=_set("hose hoses old aged hard perished")),
    ),
    "oil_line_fitting_wet": (
        # "found the hose clip on the bottom hose loose"
        Otherwise(beside=_set("bottom top clip heater"), unless=_OF_OIL | _set("cooler line")),
    ),
    "oil_line_found_broken": (
        # "after the oil cooler hoses came off and went back on"
        Otherwise(said=_set("off"), beside=_set("back refitted reconnected swapped removed")),
    ),
    "oil_loss_fast": (
        Otherwise(said=_set("ran run"), anywhere=_set("filled refilled topped")),
        # "a filter and a quart of oil went in"
        Otherwise(said=_set("went"), unless=_set("minute minutes seconds hour miles out")),
        # "new filter on and dumped in seven quarts"
        Otherwise(
            said=_set("dumped"),
            anywhere=_set("fresh new fill filled refilled screwed"),
            unless=_set("lost road floor ground bilge drive minute minutes seconds miles"),
        ),
        Otherwise(
            beside=_set("put poured added chucked tipped"),
            unless=_set("lost loses gone pumped dumped emptied every again"),
        ),
        # "screwed on the new filter and dumped in seven quarts of oil"
        Otherwise(
            said=_set("dumped"),
            then=_set("oil"),
            anywhere=_set("filter fresh refilled"),
            unless=_set("bilge road lost gone everywhere"),
        ),
        _ANOTHER_FLUID,
        Otherwise(said=_set("tank"), unless=_OF_OIL),
        Otherwise(said=_set("drained drain draining")),
        _OUT_OF_A_FILTER,
        # "the sprocket has lost all its teeth"
        Otherwise(beside=_set("teeth sprocket gear prime tensioner")),
    ),
    "oil_on_bodywork": (
        # "oil all over the side of the block"
        Otherwise(then=_set("the"), beside=_set("block engine motor head crankcase")),
        # "covered in dust"
        Otherwise(
            said=_set("covered coated"), beside=_set("dust mud dirt snow ice paint bugs salt")
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
    "-oil_on_the_ground": (
        # "I think nothing of it and drive every day"
        Otherwise(said=_set("drive"), then=_set("every home it on to daily")),
    ),
    "oil_seen_outside": (
        # "the drip oiler stopped dripping": it feeds no oil
        Otherwise(
            said=_set("drip drips dripping"), beside=_set("oiler oilers lubricator lubricators")
        ),
        # "a drip oiler on the cylinder" is how it is oiled
        Otherwise(
            said=_set("drip drips dripping"),
            then=_set("oiler oilers lubricator lubricators feed feeds cup cups tray trays oiled"),
        ),
        # "drained it hot and let it drip overnight", "tools are covered in oil"
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
        _OUT_OF_A_FILTER,
        # "the solenoid's gasket leaks inside"
        Otherwise(
            beside=_set("inside internally internal inwards"),
            unless=_set(
                "outside ground floor drips puddle bellhousing hands outer externally cab boat car"
            ),
        ),
    ),
    "-oil_seen_outside": (
        # "the head has no cracks or leakage"
        # "dipped the oil and the engine was bone dry"
        Otherwise(said=_set("dry"), anywhere=_set("dip dipped dipping stick dipstick")),
        Otherwise(
            beside=_set("head cracks crack valves compression cylinder cylinders leakdown air"),
            unless=_set("oil outside engine external drips puddle block anywhere"),
        ),
        # "no leak with the engine off, but it runs out while it idles"
        Otherwise(beside=_set("off stopped"), anywhere=_set("running idles idled idling runs")),
        # "dipped the oil and the engine was bone dry"
        Otherwise(said=frozenset(["dry"]), anywhere=_set("dipped dip dipstick stick")),
    ),
    "oil_sprayed": (
        # "the tensioner has a hole, oil squirts out of it": inside the timing case
        Otherwise(
            anywhere=_TENSIONER,
            unless=_set("outside bonnet hood bay exhaust road screen windscreen ground floor"),
        ),
        _ANOTHER_FLUID,
    ),
    "oil_trail_behind": (
        # "ran low on oil on the track"
        Otherwise(said=_set("track road lane street"), beside=_set("low short out"), unless=_SPILT),
        _ANOTHER_FLUID,
    ),
    "only_small_seeps": (
        # "a small leak at the pump was repaired"
        Otherwise(beside=_set("repaired fixed cured mended resealed")),
        Otherwise(beside=_set("badly heavily everywhere pouring gushing lots")),
        _ANOTHER_FLUID,
    ),
    "seal_or_gasket_wet": (_ANOTHER_FLUID,),
}

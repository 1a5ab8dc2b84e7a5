"""Words beside a finding by which it is of another thing, or no trouble: a spark plug, the heat of the day."""

from __future__ import annotations

from knowledge.lexicon.meant.otherwise import Otherwise
from knowledge.lexicon.words.word_sets import set_of as _set

_FOULED = _set(
    "foul fouls fouled fouling sooty soot wet gap gapped gapping electrode electrodes spark sparks "
    "sparking misfire misfires misfiring glow ht lead leads"
)
_SPARK_PLUG = Otherwise(
    beside=_FOULED, unless=_set("gallery oilway galley blanking cup welsh core block hole thread")
)
_DAY = _set("day days weather summer afternoon morning evening outside ambient sun sunny")
_GIVEN = _set("gave give giving given gives good quick gentle sharp")
_ONCE_DRIVEN = _set("took take taking taken home nurse nursed today yesterday")
_HOLDERS = _set("filter filters canister cooler line hose pipe jug bottle tin can jar cup head")
_OF_SUMP = _set("sump pan dipstick stick crankcase")
_OF_CAP = _set("cap filler rocker cover lid breather valve")
_FORGOTTEN = _set(
    "forgot forgotten fill filled filling refill refilled refilling change changed put"
)
_TIMES = _set("@seconds @minutes second seconds minute minutes moment moments")

_FITTED_WITH = _set("with stock fitted installed plus")
_LAMP_DOES = _set(
    "lit glow glows glowing flash flashes flashing flicker flickers stay stays stayed comes came went goes "
    "when no low bends corners is was showing shows lights on"
)
#: "the filter holds very little oil"
_HELD = Otherwise(said=_set("hold holds held holding"), anywhere=_HOLDERS, unless=_OF_SUMP)
_ALL_OVER = Otherwise(said=_set("over round around"))
_HOW_MUCH = _set("quart quarts litre litres liter liters pint pints lot lots much gallon")
_TENSIONER = _set("tensioner tensioners")
_ROCKERS = _set("rocker rockers")
_OF_THE_TURBO = Otherwise(
    anywhere=frozenset(["electric"]), also=_set("turbo turbos afterrun after-run")
)
#: "filter head gasket"
_SEAL_OF_THE_HEAD = Otherwise(
    said=_set("head"), beside=_set("gasket seal o-ring"), unless=_set("element can")
)
#: it ran out of the engine
_SPILT = _set(
    "trail slick streak stripe line drops laid laying dropped dropping dumped leaving left"
)
#: by finding, "-" before it where it was found not to be so; "=" before what gauge or lamp shows
BESIDE: dict[str, tuple[Otherwise, ...]] = {
    # "ran low on oil on the track"
    "oil_trail_behind": (
        Otherwise(said=_set("track road lane street"), beside=_set("low short out"), unless=_SPILT),
    ),
    # "a drip oiler on the cylinder" is how it is oiled
    "oil_seen_outside": (
        Otherwise(
            said=_set("drip drips dripping"),
            then=_set("oiler oilers lubricator lubricators feed feeds cup cups tray trays oiled"),
        ),
    ),
    # "a low-pressure pump to the troughs" is how it is built
    "=low": (
        Otherwise(
            said=_set("low"),
            then=_set("pump pumps splash feed trough troughs dip system lubrication oiling"),
            anywhere=_set("splash trough troughs dipper dippers old vintage side-valve"),
        ),
    ),
    # "pegged high with the wire off" is a test of the gauge
    "more_than_it_can_make": (
        Otherwise(
            anywhere=_set("off disconnected unplugged pulled grounded earthed"),
            also=_set("wire lead plug terminal connector"),
        ),
    ),
    # "a sender with a red light in the dash"
    "=lamp": (Otherwise(then=_set("in on the my"), beside=_FITTED_WITH, unless=_LAMP_DOES),),
    # "number 2 plug fouls"
    **dict.fromkeys(
        (
            "gallery_plug_found_missing",
            "crank_plug_found_missing",
            "-crank_plug_found_missing",
            "drain_plug_found_loose",
            "-drain_plug_found_loose",
        ),
        (_SPARK_PLUG,),
    ),
    # "I gave the wire a tug"
    "in_a_boat": (Otherwise(said=_set("tug"), beside=_GIVEN),),
    # "a hot day"
    "hot_and_thin": (
        Otherwise(said=_DAY, unless=_set("thin thinner thins watery runny water-like")),
        Otherwise(said=frozenset(["even"])),  # "stays at 85 hot even at idle"
    ),
    # "starts first go in the coldest of weathers"
    "stood_in_frost": (
        Otherwise(
            said=_set("coldest"),
            beside=_set("starts start started even always every any runs fires"),
            unless=_set("left parked stood overnight frozen ice frost"),
        ),
    ),
    # "took it for a short drive"
    "idles_long": (
        Otherwise(
            said=_set("short little small quick brief"),
            beside=_ONCE_DRIVEN,
            unless=_set(
                "only mostly mainly always never usually every trips journeys runs drives hops"
            ),
        ),
    ),
    # "the filter hangs sideways and holds very little oil"
    "dipstick_low": (_HELD,),
    # "I pulled the dipstick and there was milky sludge on it"
    "cream_in_filler_only": (Otherwise(anywhere=_set("dipstick stick sump pan"), unless=_OF_CAP),),
    # "it ran ten seconds without oil", after the pump failed
    "not_refilled": (Otherwise(said=_set("without"), beside=_TIMES, unless=_FORGOTTEN),),
    "=slow to build": (
        Otherwise(
            said=_set("without"),
            beside=_set("ran run runs running drove driven"),
            unless=_set("pressure start starting startup started first"),
        ),
        Otherwise(said=_set("before"), beside=_set("noticed saw looked realised realized spotted")),
    ),
    # "it took 3 quarts to bring it up to the mark"
    "level_correct": (
        Otherwise(
            said=_set("mark full line max"),
            beside=_set("took takes needed required swallowed wanted"),
            unless=_set("now is shows reads change changed"),
        ),
        # "returns oil to the tank"
        Otherwise(then=_set("tank sump pan block head rockers gauge bearings turbo")),
    ),
    # "three gauges, all reading the same"
    "several_alike": (
        Otherwise(
            beside=_set("gauge gauges gages sender senders reading readings"),
            unless=_set("engines boats cars trucks tractors owners others forum"),
        ),
    ),
    # "took the line off at the block, no oil at all came out"
    "dipstick_dry": (
        _HELD,
        Otherwise(
            said=_set("no"),
            anywhere=_set("line pipe hose union port hole tapping sender switch rocker rockers"),
            unless=_set(
                "dipstick stick sump pan drain drained plug crankcase had left engine motor"
            ),
        ),
    ),
    # "the gases come out of the dipstick tube"
    "pickup_fell_off": (
        Otherwise(
            said=_set("tube pipe"),
            anywhere=_set("dipstick breather filler"),
            unless=_set("pickup pick-up strainer suction"),
        ),
    ),
    # "five minutes before I saw that the gauge was at zero"
    "ten_seconds_or_more": (
        Otherwise(said=_set("before"), beside=_set("noticed saw looked realised realized spotted")),
    ),
    # "no leaks with the engine off or running"
    "leaks_only_running": (Otherwise(anywhere=_set("either nor neither or")),),
    # "the pressure went up all at once"
    "fell_suddenly": (
        Otherwise(
            beside=_set("up rose risen rises climbed higher"),
            unless=_set("down dropped drops fell falls lost zero nothing gone packed gave"),
        ),
    ),
    # "the petrol drained out of its tank into the engine"
    "wet_sumps": (
        Otherwise(
            beside=_set("fuel petrol gas gasoline diesel"),
            unless=_set("oil"),
        ),
        # "a one way valve against wet sumping"
        Otherwise(
            beside=_set("against anti prevent prevents preventing stop stops stopped cured"),
            unless=_set("despite still anyway overnight again"),
        ),
    ),
    # "a magnet to pull them out"
    "magnetic_metal": (
        Otherwise(
            said=_set("magnet"),
            beside=_set("to will plan tool pick-up fish fished retrieve get"),
            unless=_set(
                "stuck sticks stick clings cling grey gray filings shavings slivers flakes fuzz fuzzy picked metal "
                "swarf debris paste whiskers steel ferrous chips particles"
            ),
        ),
    ),
    # "new filter and poured in seven quarts"
    "filter_seat_leaks": (
        Otherwise(
            said=_set("poured pouring pour"),
            then=_set("in into oil fresh new some"),
            unless=_set("out from everywhere onto over off down floor block gasket seal"),
        ),
        _SEAL_OF_THE_HEAD,
    ),
    # "something hit the underside"
    "witness_marks": (
        Otherwise(
            said=_set("hit"), anywhere=_set("underside underneath under bottom belly road sump pan")
        ),
    ),
    # "the head has no cracks or leakage"
    "-oil_seen_outside": (
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
    # oil like a milkshake full of bubbles holds air; like a milkshake alone, water
    "oil_milky": (
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
    # "the oil I'm using, from 10W-30 to 10W-40"
    "oil_used_fast": (
        Otherwise(
            said=_set("using use"),
            beside=_set("from grade weight 10w-30 10w-40 15w-40 20w-50 5w-30 5w-40 straight brand"),
            unless=_set("quart quarts litre litres liter liters pint pints every lot much"),
        ),
        # "all the oil goes through it"
        Otherwise(said=_set("through"), then=_set("it the a that this both"), unless=_HOW_MUCH),
    ),
    # "the sender sits on the clean side of the screen"
    "-screen_blocked": (Otherwise(said=_set("side")),),
    # "the oil levels are as the manual says"
    "oil_grade_as_manual": (
        Otherwise(
            said=_set("level levels amount quantity much"),
            unless=_set("grade weight viscosity type 10w-40 15w-40 20w-50"),
        ),
    ),
    # "a mechanical gauge under the dash"
    "panel_reads_too_low": (
        Otherwise(
            said=_set("under"),
            then=frozenset([""]),
            unless=_set("reads shows psi bar less lower low below kpa pounds lb"),
        ),
    ),
    # "the light went on", not "the boat went on"
    "ran_on_without_pressure": (
        Otherwise(
            said=_set("light lamp alarm buzzer"),
            beside=_set("went"),
            unless=_set(
                "drove driven ran run carried kept continued limped nursed home miles anyway ignored i we he she "
                "until motored"
            ),
        ),
    ),
    # "white smoke out of the exhaust"
    "burning_oil_smoke": (
        Otherwise(
            beside=_set("white steam steamy"),
            anywhere=_set("exhaust tailpipe tail-pipe transom"),
            unless=_set(
                "blue bluish manifold header headers downpipe burning burnt onto drips leaks smell bay hood bonnet"
            ),
        ),
    ),
    # "oil all over the plug on the switch"
    "all_plugs_accounted_for": (_ALL_OVER,),
    "-gallery_plug_found_missing": (_SPARK_PLUG, _ALL_OVER),
    # "the rod let go its shell"
    "rod_broken": (Otherwise(said=frozenset(["let"]), then=_set("its the a go")),),
    # "the turbo return pipe is coked"
    "turbo_feed_found_blocked": (Otherwise(said=_set("return drain")),),
    # "scavenge suction pipe cracked at the flange"
    "pickup_tube_crack_seen": (
        Otherwise(beside=_set("scavenge scavenger"), unless=_set("pickup")),
    ),
    # "the tensioner has a hole, oil squirts out of it": inside the timing case
    "oil_sprayed": (
        Otherwise(
            anywhere=_TENSIONER,
            unless=_set("outside bonnet hood bay exhaust road screen windscreen ground floor"),
        ),
    ),
    # "sump plug clean": less than fur, not more
    "-plug_fur_only": (Otherwise(said=_set("clean spotless bare")),),
    # "pump cover gasket blown"
    "pump_housing_burst": (Otherwise(said=frozenset(["gasket"])),),
    # "the gasket under the pump's cover"
    "mount_gasket_blown": (Otherwise(said=_set("cover lid"), unless=_set("block mount mounting")),),
    # "the oil band came out of the bore and dumped the gallery"
    "gallery_found_blocked": (Otherwise(said=_set("dumped dumps dumping")),),
    # "was stuck solid in its hole"
    "engine_seized": (
        Otherwise(
            beside=_set("hole seat housing sleeve guide"),
            unless=_set("engine motor crank piston pistons"),
        ),
    ),
    # "the sprocket has lost all its teeth"
    "oil_loss_fast": (Otherwise(beside=_set("teeth sprocket gear prime tensioner")),),
    # "chain tensioner's plunger bore is worn", "the rocker shaft's plug fell out"
    "relief_seat_scored": (Otherwise(anywhere=_TENSIONER, unless=_set("relief")),),
    "drive_not_engaged": (Otherwise(anywhere=_ROCKERS, unless=_set("pump distributor dizzy")),),
    "pump_gear_broken": (Otherwise(said=_set("sprocket")),),
    # "rod shell turned in the rod, tang gone"
    "drive_coupling_sheared": (
        Otherwise(
            said=_set("tang tab tangs"),
            anywhere=_set("shell shells bearing bearings insert inserts"),
            unless=_set("pump distributor drive dizzy"),
        ),
    ),
    # "coupling between distributor and pump sheared"
    "pump_found_failed": (
        Otherwise(said=_set("sheared"), beside=_set("coupling shaft drive tang key pin")),
        _OF_THE_TURBO,
    ),
    # "the turbo's electric oil pump died"
    "turbo_failed": (_OF_THE_TURBO,),
    # "hand tight only"
    "-filter_found_loose": (Otherwise(then=frozenset(["only"])),),
    # "the gasket between filter head and block is split"
    "filter_burst": (_SEAL_OF_THE_HEAD,),
    # "filter full of copper flakes"
    "filter_packed": (
        Otherwise(then=_set("copper brass bronze metal metallic bearing flakes glitter swarf")),
    ),
    # "wrong stick from another sump"
    "sump_or_pump_swapped": (Otherwise(said=_set("stick dipstick")),),
    # "the pump's seal ring is the wrong way round"
    "wrong_pump_fitted": (Otherwise(said=_set("ring seal o-ring gasket")),),
    # "pickup tube loose in the pump, moves by hand"
    "-pump_jammed": (
        Otherwise(said=_set("moves moved"), beside=_set("pickup tube"), unless=_set("turns")),
    ),
    # "idler gear of the pump loose on its pin"
    "pump_bolts_loose": (
        Otherwise(beside=_set("idler gear pin"), unless=_set("bolt bolts screw screws")),
    ),
}

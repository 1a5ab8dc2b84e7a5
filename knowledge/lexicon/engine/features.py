"""Features of an engine's build, as people name them; see ``traits``."""

from __future__ import annotations

from knowledge.lexicon.engine import kinds
from knowledge.lexicon.engine.traits import Trait

#: behind a mechanical gauge beside one of these instruments: it was put on to see
CONFIRMS = frozenset(
    [
        "says",
        "said",
        "reads",
        "read",
        "shows",
        "showed",
        "showing",
        "agrees",
        "agreed",
        "confirms",
        "confirmed",
        "(",
        "gives",
        "gave",
    ]
)
INSTRUMENTS_BESIDE = frozenset(
    [
        "sender",
        "senders",
        "sensor",
        "switch",
        "dash",
        "panel",
        "monitor",
        "display",
        "controller",
        "light",
        "lamp",
        "alarm",
        "buzzer",
        "ecu",
        "needle",
    ]
)
_PUMP = "oil? pump|gear-pump|gerotor|rotor-pump"
_TANK = (
    "oil tank|bag is? under|behind|below|between|inside|in|on|beside the|my? frame|seat|scuttle|boot|saddle|cockpit|"
    "bulkhead|dash|tail|swingarm|side|left|right|back"
)
#: features that are said in a way of their own
BUILD_WORDS: dict[str, tuple[str, ...]] = {
    "stressed_sump": (
        "gearbox|transmission|box in|inside the? engine's? sump|pan",
        "gearbox-in-sump|transmission-in-sump",
    ),
    "gear_pump": (
        "gear|gear-type|spur-gear type? oil|lube|lub? pump",
        "oil pump with|has two gears",
    ),
    "rotor_pump": (
        "inner|outer pump? rotor",
        "rotor|gerotor|trochoid|trochoidal|rotary type? oil|lube|lub? pump",
    ),
    "pump_on_crank_nose": (
        f"{_PUMP} on|at|round|around the? crank|crankshaft nose|snout",
        "crank-nose|crank-driven|crank-mounted oil? pump|gerotor",
        "pump|its|it|is|engine crank driven",
        "crank driven pump|gerotor?",
        "gerotor|pump in|behind the? front|timing cover|case",
        "pump driven by|off|from the? crank|crankshaft|nose|crank-nose",
    ),
    "pump_on_skew_gear": (
        f"{_PUMP}|driven on|off|by|from a|the? skew gear|gears",
        "skew-gear|skew-driven oil? pump",
    ),
    "no_oil_filter": (
        "no|without|never|hasnt|doesnt had|have|has|got|an|any|a? oil? filter from|as|ever the? factory|standard|new|fitted",
        "=unfiltered engine|motor",
        "no|without an|any? full? flow|full-flow|external|spin-on|canister|paper|proper oil? filter",
        "no|without an|any|a? oil? filter on|in|with this|it|the|that|these engine|engines|motor|one|car|tractor|bike?",
        "just|only a|the? gauze|mesh|strainer|screen no|and-no|not-a oil? filter",
    ),
    "pump_on_auxiliary_drive": (
        f"{_PUMP} is|was? driven|turned|run by|from|off|on a|an|the|its? auxiliary|aux|gearbox|transmission|accessory drive|shaft|end|gear|gears?",
        "gearbox-driven|transmission-driven|auxiliary-driven oil? pump",
    ),
    "pump_on_chain": (
        "chain-driven oil? pump",
        "chain driven|drive oil? pump",
        f"{_PUMP} driven by|on|with|off a|its|the|own? own? chain",
    ),
    "pump_outside": (
        "external|outside|outboard|gear-train oil? pump",
        "pump is|sits|hangs outside|external",
        "pump is|sits|hangs|bolted|mounted on the? outside|front of|at?",
    ),
    "cam_phasers": (
        "cam phaser|phasers",
        "phaser|phasers",
        "variable|vvt valve? timing|cams|cam",
        "=vvt",
    ),
    "chain_tensioners": (
        "oil-fed|hydraulic chain? tensioner|tensioners",
        "oil fed chain? tensioner",
    ),
    "wet_belt": ("wet belt", "belt in|runs|running in? oil", "belt-in-oil|wet-belt"),
    "plastic_timing_gear": (
        "plastic|nylon|fibre|fiber|phenolic toothed|tooth|coated|faced? timing|cam|camshaft? gear|gears|sprocket|sprockets|teeth|wheel",
        "plastic-coated|nylon-coated|plastic-toothed|nylon-toothed|plastic-faced|fibre-toothed timing|cam|camshaft? gear|gears|sprocket|sprockets|wheel",
    ),
    "wire_lifter_clips": (
        "plastic|wire|plastic-type lifter|lifters|tappet guides|guide|clips|trays",
    ),
    "piston_jets": (
        "piston cooling? =jets|=jet|=squirters",
        "under-piston|oil =jets|=squirters",
    ),
    "spin_on_filter": (
        "spin-on|screw-on|canister oil? =filter",
        "=spin-on|=spinon|=spin-ons",
        "spin|screw on oil? filter",
        "filter is|was a|an|the? modern|newer|cheap|ordinary? spin-on|spinon|screw-on|canister",
    ),
    "cartridge_filter": ("cartridge|felt|paper-element|replaceable-element oil? filter",),
    "filter_adapter": (
        "sandwich plate",
        "filter adapter|adaptor",
        "filter|spin-on|spinon|canister on|with|and an|its|a|the? adapter|adaptor|conversion",
    ),
    "roller_crankshaft": (
        "roller|ball|roller-bearing|ball-bearing bearing|bearings? main? mains|bearings",
        "roller|ball main|mains bearing|bearings?",
        "mains run|runs|are|is on|in rollers|roller|balls|ball ball-bearings?",
    ),
    "roller_big_ends": kinds.ROLLER_BIG_ENDS,
    "trough_fed": kinds.TROUGH,
    "drip_oiled": kinds.DRIP,
    "prelube_pump": kinds.PRELUBE,
    "floating_rod_bearings": kinds.FLOATING_RODS,
    "oil_burnt_with_fuel": kinds.OIL_BURNT,
    "poured_bearings": (
        "poured|cast-in|unshelled babbitt|babbit|babbet|white-metal|whitemetal|bearings|mains|rods",
        "babbitt|babbit|babbet|white-metal|whitemetal mains|rods|bearings|rod|main|crank|motor|engine",
        "babbitt|babbit|babbet|white-metal|whitemetal bearings? , poured",
        "bearings|mains|rods are|is|were poured",
    ),
    "tank_tap": (
        "oil? tank tap|cock",
        "shut-off|anti-sump|check|non-return|one-way|anti-wet-sump|wet-sump|anti-drain tap|cock|valve in|on the|my|its? oil? line|tank|feed|supply",
        "one way|one-way check? valve in|on the|my|its? oil? line|tank|feed|supply",
        "anti wet|wet-sump sump|sumping? valve",
        "tap|cock|stopcock in|on|under the|my|its? oil? line|feed|tank|supply",
    ),
    "relief_in_pump": (
        "relief valve? is|sits|lives|was in|inside the oil? pump",
        "relief valve? in|inside the oil? pump body|cover|housing|itself",
    ),
    "relief_outside": (
        "relief plug|cap|adjuster|valve on|at the? side|outside of? the? block|engine|case?",
        "relief valve? is|sits|under|behind|lives? under|behind|in|on|at a|the? .. hex|plug|cap|bolt|dome|domed on|at|in|outside|easy|near .. front|side|outside|block|case|timing|get|reach|filter|crankcase",
        "relief valve? is|sits on|at|from? the? outside|external|externally|reachable|accessible from? the? outside?",
        "outside|external|externally mounted? oil? pressure? relief valve?",
    ),
    "dry_sump": (
        "separate|remote|external|outside oil? tank|reservoir",
        _TANK,
        "oil bag",
        "oil returns|returning|return|returned|coming-back to|into|in the|its? oil? tank|bag",
    ),
    "pressed_pickup": (
        "pickup|pick-up tube|pipe? is|has|a? a? press fit|in",
        "press-fit|press-in|pressed-in|pressed pickup|pick-up tube?",
    ),
    "mechanical_lift_pump": (
        "mechanical|mech|camshaft-driven|diaphragm-type fuel|lift|petrol|gas|diesel pump",
        "diaphragm fuel|lift pump",
    ),
    "stationary": (
        "stationary|static engine|motor|diesel|plant|v8",
        "irrigation|drainage|borehole|sawmill|compressor|welder|mill pump? engine|motor|diesel",
        "irrigation pump|set",
        "compressor|sawmill|saw-mill|welder|pump|dryer|chipper|crusher|screener power unit|pack",
        "power unit|pack",
        "screw|site|portable|towable compressor",
        "air compressor engine|motor|unit|set|plant|with",
        "engine|motor|diesel|v8 in|on|of|from|for|drives|driving|powers|runs a|an|my|our air compressor",
        "light|lighting plant|tower",
        "water pump engine",
        "run|runs|running|drive|drives|driving a|my|the|our sawmill|saw-mill|irrigation|thresher|crusher",
    ),
    #: what these hold is no engine's oil, and a gauge that is put on for a test is no part of it
    "": (
        "hydraulic|hydraulics|fuel|steering|water|transfer|feed|pto gear|rotor|rotary|vane pump",
        f"hydraulic|heating|fuel|waste|gearbox|transmission|stroke|premix {_TANK}",
        "hung|hooked|screwed|stuck|borrowed|rigged|rented|hired|shop|dealer|garage|mechanic|checked|tested|verified|test|temporary|"
        "temporarily|lent|loan|loaned|parts-store .. mechanical|capillary oil? pressure? gauge",
    ),
    "variable_pump": (
        "variable|dual-stage displacement|delivery|output|flow? oil pump",
        "variable displacement|delivery|flow pump",
        "two|dual|2 stage oil? pump",
        "oil pump|pressure control? solenoid",
        "solenoid controlled|operated|on|for the? oil? pump",
        "ecu-controlled|map-controlled|solenoid-controlled oil pump",
    ),
    "splash_lubricated": (
        "splash lubricated|lubrication|lubed|oiled|fed",
        "splash-lubricated|splash-lube|splash-fed",
        "has|have|having|with|got? no|without oil pump",
        "oil? dipper|dippers|slinger on|off|driven|under the|its|each|by? rod|rods|conrod|cam|governor|bigend|caps?",
    ),
    "low_oil_shut_off": (
        "low oil|level|oil-level|pressure shut-off|shutoff|shutdown|shut-down|cut-out|cutout|cut-off|cutoff switch|sensor|device?",
        "oil level|pressure? switch that? kills|stops|cuts the? engine|ignition|spark|coil",
    ),
    "turbocharged": ("twin-turbo|turbo-diesel|supercharged-turbo",),
}
#: name the grade that an engine is meant to have, and say that they do
BOOKS = frozenset(["manual", "handbook", "book", "maker", "makers", "spec", "plate", "dealer"])
#: before a grade of oil: the engine wants it; it was put in
WANTED = frozenset(
    [
        *("wants", "want", "wanted", "needs", "need", "needed", "calls", "called", "call", "takes"),
        *("supposed", "should", "requires", "require", "required", "specified", "specifies"),
        *("recommends", "recommended", "meant", "designed", "asks", "prescribes"),
    ]
)
PUT_IN = frozenset(
    [
        *(
            "put",
            "puts",
            "putting",
            "has",
            "have",
            "had",
            "got",
            "filled",
            "fill",
            "running",
            "runs",
        ),
        *("run", "used", "using", "poured", "in", "gave", "with", "runs", "changed", "switched"),
        *("dumped", "stuck", "tipped"),
    ]
)
#: the least a pressure may be, whoever says so
LEAST = frozenset(["minimum", "min"])
#: the least that somebody saw
OF_ONES_OWN = frozenset(["i", "ive", "we", "my", "seen", "saw", "see", "it"])
BOOK_SAYS = frozenset(
    [
        "says",
        "said",
        "gives",
        "calls",
        "asks",
        "wants",
        "specifies",
        "recommends",
        "states",
        "lists",
        "is",
        "shows",
        "requires",
        "spec",
    ]
)
#: beside "cruiser": it is a motorcycle or a car
NOT_AFLOAT = frozenset(
    [
        "twin",
        "v-twin",
        "vtwin",
        "bike",
        "motorcycle",
        "custom",
        "metric",
        "police",
        "patrol",
        "land",
        "squad",
    ]
)
#: behind "24v": it is the voltage
ELECTRIC = frozenset(
    [
        "sender",
        "sensor",
        "system",
        "starter",
        "panel",
        "battery",
        "batteries",
        "alternator",
        "supply",
        "gauge",
        "gauges",
        "lamp",
        "bulb",
        "solenoid",
        "circuit",
        "electrics",
        "electrical",
        "charger",
        "switch",
        "coil",
        "on",
        "to",
        "at",
    ]
)
#: behind "outboard": it says where a part lies
OUTBOARD_OF = frozenset(
    ["bearing", "end", "side", "face", "journal", "shell", "flange", "of", "seal"]
)
#: behind "light": it is no lamp
LIGHT_THINGS = frozenset(
    [
        "rumble",
        "knock",
        "tap",
        "tapping",
        "tick",
        "ticking",
        "rattle",
        "noise",
        "throttle",
        "load",
        "smoke",
        "haze",
        "film",
        "oil",
        "grade",
        "seep",
        "weep",
        "leak",
        "mist",
        "touch",
    ]
)
#: of engines said to be so, "no gauge" says nothing of a lamp
WITHOUT_PRESSURE = frozenset([Trait.OPEN_CRANK, Trait.SPLASH, Trait.TWO_STROKE])

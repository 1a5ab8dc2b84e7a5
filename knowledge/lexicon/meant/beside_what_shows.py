"""Words beside what shows that make it another thing: "no pressure gauge", "high pressure pump"."""

from __future__ import annotations

#: after "no pressure": it is something else that is missing
NOT_MISSING = frozenset(
    [
        "gauge",
        "gage",
        "guage",
        "sender",
        "sensor",
        "switch",
        "light",
        "lamp",
        "loss",
        "drop",
        "trouble",
        "troubles",
        "worries",
        "concern",
        "concerns",
        "problem",
        "problems",
        "issue",
        "issues",
        "relief",
        "change",
        "warning",
        "test",
        "reading",
    ]
)
#: shortly after "high pressure": it is a part
NOT_TOO_HIGH = frozenset(
    [
        "pump",
        "pumps",
        "spring",
        "springs",
        "fuel",
        "hose",
        "line",
        "washer",
        "side",
        "one",
        "version",
        "type",
        *("shells", "shell", "half", "halves", "bearing", "bearings", "piston", "ring"),
    ]
)
#: what drops is the speed of the engine, where a figure of it follows
OF_SPEED = frozenset(["idle", "idles", "revs", "rpm", "tickover", "it", "and", "then"])
#: before "from 8 to 17": the pressure was raised once, and does not waver
JUMPED = frozenset(["jumped"])
#: before "gauge is right": it is to be trusted
PROVING = frozenset(["so", "means", "proves", "meaning"])
UPWARDS = frozenset(["from", "to", "up"])
#: behind "it dropped a": it came off
PARTS_DROPPED = frozenset(
    ["valve", "liner", "guide", "seat", "rod", "cylinder", "collet", "pushrod"]
)
#: begin what somebody did, where no engine is named before: "Shut off after 15 seconds"
SHUT = frozenset(["shut", "switched", "turned"])
#: behind "good and": how hot it is
AND_WARM = frozenset(["warm", "hot", "warmed"])
#: a hose that carries no oil, by what else its sentence names
HOSES = frozenset(["hose", "hoses", "pipe", "pipes"])
WATER = frozenset(
    [
        "water",
        "coolant",
        "radiator",
        "rad",
        "heater",
        "boiled",
        "overheated",
        "overheating",
        "steam",
        "antifreeze",
    ]
)
#: before "the knock": it came from outside
BLOW = frozenset(["after", "since", "from", "of"])
#: a lead is joined to ground to try the gauge: what the needle does then is no behaviour
LEAD_TEST = frozenset(
    [
        "grounded",
        "earthed",
        "shorted",
        "shorting",
        "grounding",
        "earthing",
        "bridged",
        "bridging",
        "jumper",
        "jumpered",
        "ground the",
        "ground it",
        "earth the",
        "earth it",
        "short the",
    ]
)
#: after "tapped": an instrument, which somebody taps to free its needle
#: before "normal", and behind it: how the engine is run, not what the gauge shows
AT_USUAL = frozenset(
    ["at", "in", "under", "during", "with", "a", "the", "its", "hot", "cold", "warm", "on", ","]
)
USUAL_RUNNING = frozenset(
    [
        *("idle", "idling", "tickover", "revs", "speed", "running", "operating", "driving"),
        *("cruise", "cruising", "temperature", "temp", "use", "hot", "warm", "conditions"),
    ]
)
#: before a figure: the needle keeps to it; what may stand between
KEEPS_TO = frozenset(["steady", "constant", "solid", "stable", "rock-solid"])
LEADS_TO_FIGURE = frozenset(["at", "on", "around", "about", "a", "@", "~", "roughly", "just"])
STRIKERS = frozenset(["i", "we", "you", "he", "she", "to"])
#: stems of what a hand does to an instrument
STRIKES = frozenset(["tap", "thump", "bang", "knock", "rap", "hit", "slap", "thwack"])
TAPPED = frozenset(
    ["gauge", "gage", "guage", "glass", "needle", "dial", "dash", "dashboard", "sender", "panel"]
)
#: beside "smoke": it is that of the exhaust
EXHAUST = frozenset(["exhaust", "tailpipe", "blue", "burns", "burning", "breather", "pipe"])
#: straight before "gauge": it is another
OTHER_INSTRUMENTS = frozenset(
    [
        "speedo",
        "speedometer",
        "counter",
        "tacho",
        "tachometer",
        "other",
        "fuel",
        "stick",
        "dipstick",
        "temp",
        "temperature",
        "water",
        "boost",
        "amp",
        "volt",
        "vacuum",
        "coolant",
        "air",
    ]
)
#: straight before "light": it is another
OTHER_LAMPS = frozenset(
    [
        "service",
        "management",
        "engine",
        "filter",
        "particulate",
        "dpf",
        "glow",
        "abs",
        "airbag",
        "charge",
        "charging",
        "battery",
        "brake",
        "temp",
        "temperature",
        "coolant",
        "fuel",
        "ignition",
        "indicator",
        "handbrake",
        "hazard",
        "eml",
        "mil",
        "courtesy",
        "boot",
    ]
)
#: shortly before what shows: it is no pressure
VOLTAGE = frozenset(["voltage", "volts", "current", "resistance", "ohms"])
#: after "slowly gets": it does not take long to come up, it sinks
LESS = frozenset(["lower", "less", "worse", "low", "weaker", "down", "poorer", "smaller", "drop"])
#: after "gauge moved": somebody put it elsewhere
MOVED_TO = frozenset(["to", "from", "into", "onto"])
#: beside "in the red": the gauge is that of the temperature
HEAT_GAUGE = frozenset(
    [
        "temperature",
        "temp",
        "coolant",
        "radiator",
        "boiled",
        "boiling",
        "overheated",
        "overheat",
        "overheating",
        "water",
        "hot",
    ]
)
#: after "the pressure goes": when it is gone
GOES_THEN = frozenset(
    ["", "at", "in", "on", "when", "after", "as", "under", "every", "each", "once"]
)
#: a pressure that goes up and down with these is as it should be
WITH_REVS = frozenset(["rpm", "revs", "rpms", "throttle", "speed", "engine"])
#: after "oil" these are another thing than the oil itself
NOT_THE_OIL = frozenset(
    [
        "fire",
        "fires",
        "pressure",
        "pressures",
        "passage",
        "passages",
        "gallery",
        "galleries",
        "light",
        "lamp",
        "gauge",
        "gage",
        "alarm",
        "buzzer",
        "warning",
        "sender",
        "sensor",
        "switch",
        "psi",
    ]
)
#: before "not start it": nobody tried
DARES_NOT = frozenset(
    ["dare", "dared", "daren't", "darent", "afraid", "scared", "reluctant", "shall"]
)
#: after "lost the power": not that of the engine
OTHER_POWER = frozenset(
    ["steering", "brakes", "brake", "valve", "supply", "assistance", "windows", "tailgate"]
)
#: verbs of what falls or is let fall, and words straight after by which somebody did so to a thing
DROPPED = frozenset(["dropped", "drop", "drops", "dropping", "sank", "dipped", "dip"])
OBJECTS = frozenset(["the", "my", "our", "their", "his", "her", "it", "them", "me", "us", "him"])
#: before "it dropped": what dropped is the oil itself, unless the pressure was named as well
LEVELS = frozenset(["oil", "level", "dipstick", "stick", "coolant", "water", "temperature", "temp"])
PRESSURES = frozenset(
    ["pressure", "gauge", "needle", "psi", "bar", "light", "lamp", "reading", "alarm"]
)
#: beside "lights": it is the warning lamp, or what it does
WARNS = frozenset(
    ["oil", "warning", "pressure", "red", "lamp", "light", "alarm", "buzzer", "telltale", "symbol"]
)
#: after "warning light": how the lamp works
LAMP_WORKS = frozenset(["fine", "ok", "okay", "works", "working", "good", "tested", "longer"])
#: what a lit lamp fails to do: "warning light not going out"
GOES_OUT = frozenset(["out", "off", "away", "go", "going"])
#: a sender or its lead is taken off to try the gauge: what the needle does then is no behaviour
UNPLUGGED = frozenset(
    [
        "unplugged",
        "unplug",
        "unplugging",
        "disconnected",
        "disconnect",
        "wire off",
        "lead off",
        "plug off",
    ]
)
CIRCUIT = frozenset(["sender", "sensor", "wire", "lead", "plug", "connector", "switch"])
#: after "the gauge is at the top of": it is built in there
PLACES = frozenset(["dash", "dashboard", "panel", "console", "windscreen", "block", "engine"])
#: with these a lamp is lit before the start
KEY = frozenset(["key", "ignition"])
NOT_RUNNING = frozenset(
    [("before", "starting"), ("before", "start"), ("engine", "stopped"), ("engine", "off")]
)
#: what is read then is no pressure of the running engine
STANDS = frozenset(
    [
        ("engine", "stopped"),
        ("engine", "off"),
        ("motor", "off"),
        ("motor", "stopped"),
        ("it", "off"),
    ]
)
#: with the key only turned on, the needle of many a gauge sweeps over its dial
KEY_ON = frozenset([("key", "on"), ("ignition", "on"), ("key", "is"), ("ignition", "is")])
TURNED = frozenset(["turn", "turned", "turning", "switch", "switched", "switching", "flick"])
SWEEPS = frozenset(
    ["flicks", "flick", "flicked", "sweeps", "sweep", "swept", "kicks", "twitches", "jumps"]
)
#: with one of these it is read at a start or while it runs
ENGINE_TURNS = frozenset(
    [
        *("start", "starts", "started", "starting", "cranks", "cranking", "fires", "fired", "runs"),
        *("running", "idle", "idling", "rev", "revs", "driving"),
    ]
)
KEY_OFF = frozenset([("key", "off"), ("ignition", "off"), ("switched", "off")])
#: beside them: it is lit at another time as well, or at the wrong one
LIT_LATER = frozenset(
    ["running", "runs", "idle", "idling", "driving", "still", "stays", "stayed", "started"]
)
#: as the subject of a clause, with one of these behind: the oil that works rams and motors
HYDRAULIC = frozenset(["hydraulic", "hydrostatic", "loader", "powershift"])
OF_HYDRAULICS = frozenset(
    [
        "pump",
        "pumps",
        "system",
        "pressure",
        "motor",
        "motors",
        "ram",
        "rams",
        "circuit",
        "circuits",
        "tank",
        "filter",
        "gauge",
        "valve",
        "hose",
        "hoses",
        "spool",
        "cylinder",
        "cylinders",
        "unit",
        "side",
    ]
)
#: as the subject of a clause: it is said of no engine
OTHER_SYSTEMS = frozenset(
    [
        "gearbox",
        "transmission",
        "tranny",
        "hydraulics",
        "trans",
        "axle",
        "diff",
        "differential",
        "steering",
        "brake",
        "brakes",
        "sterndrive",
        "outdrive",
        "saildrive",
        "tyre",
        "tyres",
        "radio",
        "heater",
    ]
)
#: before that subject
LEADS_IN = frozenset(
    ["the", "my", "our", "its", "and", "but", "also", "a", "rear", "front", "power"]
)
#: make noises of their own
NOISY_THINGS = OTHER_SYSTEMS | frozenset(
    [
        "exhaust",
        "manifold",
        "door",
        "doors",
        "alternator",
        "belt",
        "injector",
        "injectors",
        "tailgate",
        "dash",
        "dashboard",
        "heatshield",
        "shield",
        "wheel",
        "wheels",
        "suspension",
        "trim",
        "bonnet",
        "hood",
        "prop",
        "propeller",
    ]
)
#: behind "the needle never moves": from where; behind "off the": it shows nothing
AT_THE_PIN = frozenset(["peg", "pin", "stop", "stops", "zero", "bottom", "nothing", "rest"])
MOVED_OFF = frozenset(["off", "from", "above", "past", "beyond"])
MOVES = frozenset(["move", "moves", "moved", "moving", "budge", "budges", "budged", "movement"])
#: behind "smoky": it is how a part looks
COLOURS = frozenset(["grey", "gray", "black", "brown", "colour", "color", "blue", "looking"])
#: in or before what a needle did: it does so no more
STOPPED = frozenset(["stop", "stopped", "quit", "ceased"])

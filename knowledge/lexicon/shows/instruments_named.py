"""How people name the instrument that showed a pressure: the panel's, or one of its own."""

from __future__ import annotations

#: a gauge of its own on an oil line, beside the panel's
DIRECT = (
    "mechanical|mech|direct|test|manual|master|trusted|proper|hardline|external|capillary|local|independent|engine-mounted|reference|standard-test gauge",
    "gauge =in|=on|=at the? lamp|switch|sender|sensor|test|engine|block|gallery|rig|filter|pump port|head|rig|block|gallery|outlet|hole|bench?",
    "gauge direct|directly",
    "with|on|by|off the|a master",
    "second|another mechanical|test? gauge",
    "t'd|teed in? a? gauge",
    "screwed|plumbed|tapped|hooked|put|stuck|hung|coupled|rigged|teed|fitted a|the|my|his|her|their own? gauge on|in|into|onto|to|at|there",
    "screwed|plumbed|tapped|hooked|put|stuck|hung|coupled|rigged a|the|my|his gauge",
    "gauge screwed|teed|plumbed|tapped|coupled|fitted|put|hooked|connected in|into|on|at|by|straight|direct|to",
    "shops|shop|garages|workshops|mechanics|real|borrowed|bourdon|dial gauge",
    "second|another|extra gauge at|on|in|by the",
    "capillary|good|calibrated|plumber's|plumbers|known-good|hand-held|handheld oil? pressure? gauge",
    "put|hooked|connected|fitted|screwed|tried|used|checked|with his|their|hers oil? pressure? gauge",
    "borrowed|borrow|loaned|lent|hired me|us? a|an|his|her|their|my .. gauge|tester",
    "oil? pressure tester|test? kit|set|rig|unit",
    "oil? pressure test kit|set|rig|gauge",
    "gauge|test set|kit on|in|into|to the? engine|block|port|switch|sender|gallery",
    "screwed|threaded|put|fitted|plumbed|connected|hooked a|the|my|his|their? gauge in|into|to|on|onto|at",
    "fitted|used|put|had|tried|hung|brought|stuck his|their|her own gauge",
    "put|hung|stuck|hooked|slapped|threw|chucked|got|had|have a|an gauge on",
    "liquid-filled|glycerine|glycerin|old-style|plain|simple|garage|workshop|precision|lab gauge",
    "had|got|have the|its|my? oil? pressure tested|checked|measured|read|verified",
    "oil? pressure test|check =showed|=shows|=gave|=gives|=says|=said|=came|=was|=is|=read|=reads|=at|=by|=done",
    "pressure =tested|=measured =at|=by the|a garage|shop|dealer|workshop|mechanic|yard",
    "his|their gauge|one =says|=reads|=shows|=said|=read|=showed|=gave|=gives",
    "=mechanical|=mech|=direct =says|=reads|=shows|=said|=read|=showed|=gives|=gave|=is|=was|@number|@pressure|@range",
)
_PANEL = "panel|dash|factory|stock|original|cluster|dashboard|electric"
#: after a direct gauge: what follows is said of the one in the panel
PANEL_WORDS = frozenset(_PANEL.split("|"))
#: the panel's, where another shows something else
PANEL = (
    f"{_PANEL}|in-dash|oem oil? pressure? gauge|needle|reading|dial|display",
    "=dash|=panel|cluster|in-dash =says|=reads|=shows|=said|=read|=showed|=showing|=reading",
    "cars|boats|tractors|machines|trucks own? gauge",
    "sender|sensor =says|=reads|=shows|=said|=read|=showed|=showing",
    f"{_PANEL} one",
    "on|by|at the|my panel|dash|dashboard|cluster",
    "mine|gauge|one inside|in the? cockpit|cab|cabin|car|cab|dash|panel",
)
#: the person's own, where the panel's is named as well
OWN = ("=mine", "my gauge", "my .. gauge")
#: in "my ... gauge": it is no second gauge beside the panel's
NOT_BESIDE = frozenset(
    [
        "old",
        "previous",
        "former",
        "last",
        "original",
        "new",
        "brand",
        "other",
        "fuel",
        "temp",
        "temperature",
        "water",
        "boost",
        "vacuum",
        "tank",
        "sender",
        "stick",
        "dip",
        "reads",
        "read",
        "reading",
        "says",
        "sits",
        "oil",
    ]
)
#: between two instruments that do not agree; between them where the second was so at a later time
AT_ODDS = frozenset(["but", "yet", "though", "although", "while", "whereas", "however"])
LATER = frozenset(
    ["now", "then", "again", "since", "after", "once", "until", "till", "when", "new", "back"]
)
#: which of two gauges of one engine is meant
_PLACES = [
    "upper",
    "lower",
    "top",
    "bottom",
    "flybridge",
    "helm",
    "cockpit",
    "wheelhouse",
    "bridge",
]
FIRST_OF_TWO = frozenset(["one", "first", *_PLACES])
OTHER_OF_TWO = frozenset(["other", "second", *_PLACES])
GAUGES = frozenset(["gauge", "gage", "instrument"])
#: stations of a boat with a panel each, and what tells an upper station from a lower one
STATIONS = frozenset(
    ["flybridge", "wheelhouse", "helm", "cockpit", "saloon", "pilothouse", "downstairs", "upstairs"]
)
STATION_SIDES = frozenset(["upper", "lower", "top", "bottom", "inside", "outside", "bridge"])
STATION_WORDS = frozenset(["station", "helm", "panel", "needle"])
#: the other shows what it should
READS_RIGHT = frozenset(
    ["normal", "fine", "good", "ok", "okay", "steady", "right", "normally", "correct"]
)
#: in a sentence behind one with a test gauge: what is read is the panel's again
OF_THE_PANEL = frozenset(["sender", "senders", "sensor", "sensors", "switch", "transducer"])
#: another person's tool that was used on this engine: "my mate's thermometer"
TOOLS = frozenset(
    [
        *("thermometer", "gun", "pyrometer", "scanner", "reader", "multimeter", "meter", "tester"),
        *("camera", "borescope", "endoscope", "micrometer", "stethoscope", "strobe", "tach"),
    ]
)
#: before his gauge: it was put on this engine; what kind of gauge is put on an engine to test it
USED = frozenset(
    [
        *("borrowed", "used", "using", "with", "tried", "fitted", "hooked", "screwed", "connected"),
        *("put", "lent", "plumbed", "by"),
    ]
)
TEST_KINDS = frozenset(
    ["mechanical", "mech", "test", "direct", "calibrated", "master", "capillary"]
)
#: words that make a bare number a pressure
INSTRUMENT = (
    "gauge|gage|guage|needle|pointer",
    "oil|pressure display|readout|indication|instrument|indicator",
    "pressure|psi|presure",
    "oil light|lamp|press",
    "reads|reading|showing|shows",
)

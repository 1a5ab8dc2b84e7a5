"""What people call the quantities they measure, and words that say a figure is no measurement.

Common practice. A name that stands for several quantities is in ``VAGUE``, with the part that
decides between them.
"""

from __future__ import annotations

from knowledge.lexicon.values import of_bearings, of_gauge_and_oil, of_pump, of_the_card
from knowledge.lexicon.words.word_sets import set_of as _set

#: by the id of the quantity; a measure, a task or a figure of the engine has it
VALUES: dict[str, tuple[str, ...]] = {
    **of_bearings.VALUES,
    **of_pump.VALUES,
    **of_gauge_and_oil.VALUES,
    **of_the_card.VALUES,
}
#: figures of the computed circuit that nobody measures on an engine, or that readings hold
NOT_NAMED = (
    "oil_pressure",
    "engine_speed",
    "main_count",
    "rod_count",
    "cam_count",
    "lifter_count",
    "jet_count",
    "open_jet",
    "main_eccentricity",
    "rod_eccentricity",
    "main_feed",
    "rod_feed",
    "crank_entry_radius",
    "crank_exit_radius",
    "film_rise",
    "filter_blocked",
    "cooler_open_share",
    "passage_k",
    "other_leak",
    "pump_drive_ratio",
    "pump_tip_land",
    "pump_cover_screw",
    "relief_rate",
    "lifter_land",
)
#: tasks a value is entered for, where no measure has the quantity
TASK_OF = {
    "pump_cover_torque": "pump_cover_screws_torqued",
    "panel_error": "panel_gauge_agrees",
    "ring_gap": "ring_gaps_fitted",
    "rod_side_clearance": "rod_side_clearance_fitted",
    "crank_turning_torque": "crank_turning_torque_measured",
}
#: quantities that only one word names, such as "mains": only for a figure close by
BARE: dict[str, tuple[str, ...]] = {
    "main_clearance": ("mains", "main"),
    "rod_clearance": ("rods", "rod", "bigends", "big ends", "bigend", "big end", "conrods"),
    "pickup_gap": ("pickup", "strainer"),
    "relief_spring_length": ("spring",),
}
#: names of all the crank's bearings, and the quantities they stand for
SHARED: tuple[tuple[str, ...], tuple[str, ...]] = (
    (
        "=bearings|=shells",
        "all|both|the|bearing|oil|crank bearing|oil? =clearances",
        "=clearances all|were|are|came|measured",
    ),
    ("main_clearance", "rod_clearance"),
)
#: what a part is called that decides what a vague name means
PARTS: dict[str, tuple[str, ...]] = {
    "pump": ("pump", "gears", "rotor|rotors", "gerotor"),
    "crank": ("crank|crankshaft", "thrust"),
    "mains": ("main|mains",),
    "rods": ("rod|rods|conrod|conrods", "big end|ends", "bigend|bigends"),
    "cam": ("cam|camshaft",),
    "bush": ("pump shaft|bush|bushing|spindle", "bush|bushing .. pump", "shaft bush|bushing"),
    "sender": ("sender|sensor|transmitter|transducer", "sending unit"),
    "pickup": ("pickup|strainer",),
    "lifter": ("lifter|lifters|tappet|tappets",),
}
#: vague names; by the part that is named nearest, "" where none is
VAGUE: dict[str, tuple[tuple[str, ...], dict[str, str]]] = {
    "end play": (
        ("end play|float", "endplay|endfloat"),
        {"pump": "pump_end_clearance", "crank": "crank_end_float", "": "crank_end_float"},
    ),
    "end clearance": (
        ("end clearance",),
        {"pump": "pump_end_clearance", "crank": "crank_end_float", "": "pump_end_clearance"},
    ),
    "side clearance": (
        ("side clearance|play",),
        {"pump": "pump_side_clearance", "rods": "rod_side_clearance"},
    ),
    "play": (("play|slop",), {"bush": "pump_bush_clearance"}),
    "backlash": (("backlash",), {"pump": "pump_backlash"}),
    "groove": (("groove|hollow deep?",), {"pump": "pump_cover_hollow"}),
    "clearance": (
        ("oil? clearance|clearances|gap", "plastigage|plastigauge|plastigaged|plastigauged"),
        {
            "mains": "main_clearance",
            "rods": "rod_clearance",
            "cam": "cam_bearing_clearance",
            "pickup": "pickup_gap",
            "lifter": "lifter_clearance",
        },
    ),
}
#: short names that stand for a quantity only beside a figure and where that part was named last
BARE_OF_PART: dict[str, tuple[tuple[str, ...], dict[str, str]]] = {
    "end": (
        (
            "=end|=ends|axial|axially",
            "below|under|beneath the? pump|body|housing|case? =face|=body|=housing",
        ),
        {"pump": "pump_end_clearance"},
    ),
    "side": (
        ("=side|=sides|radial|radially|=body", "to the? =housing|=body|=case"),
        {"pump": "pump_side_clearance"},
    ),
    "tip": (("=tip|=tips|lobes",), {"pump": "rotor_tip_clearance"}),
    "rest": (
        ("engine|key|ignition =off", "engine stopped|dead", "not running", "at rest"),
        {"sender": "sender_resistance_at_rest"},
    ),
}
#: beside the figure of one more of the same kind: "the others 3 thou"
OTHERS = _set("others other rest ones remaining next last only also both then numbers nos")
#: where on the engine, before or after the name of a part
PLACES = frozenset(["front", "rear", "back", "centre", "center", "middle", "thrust"])
ORDINALS = {"first": "1", "second": "2", "third": "3", "fourth": "4", "fifth": "5", "sixth": "6"}
#: before a figure, or right after it: what is allowed, printed or planned, not what was measured
NOT_MEASURED_BEFORE = _set(
    "max min spec specs specification limit limits maximum minimum should supposed allowed allowable book "
    "manual standard stock factory calls permitted"
)
NOT_MEASURED_AFTER = _set(
    "spec specs limit max maximum min minimum allowed under undersize oversize over oversized "
    "undersized shells shell inserts feeler more less bigger smaller shorter longer lower higher tight loose"
)
#: with one of the first beside it, a length behind the others is what a spring was pressed to
WEIGHTS = _set("lb lbs pounds pound kg kgs kilos newtons n lbf ounces oz")
PRESSED_TO = _set("at @ to when compressed height")
#: before "by", the figure behind it is a difference: "longer than the old one by 6 mm"
LESS_OR_MORE = _set(
    "longer shorter taller more less wider bigger smaller thicker thinner higher lower"
)
#: between the name of a part alone and its figure; with any other word the figure is of something else
BETWEEN = _set(
    "between is was are were at of about around came come comes out to measured measures measure mic mics "
    "checked reads read with no number num # = : - , the a on up roughly worst clearance gap has have "
    "had got show shows showed free length long per on in each all i did done last year time within"
)
#: beside the length of a second spring: whose it is
NEW_ONE = _set("new replacement spec specification book manual should nominal specified")
OLD_ONE = _set("old original previous")
#: anywhere in the clause: the figure is of metal taken off, a size bought, or a torque
MACHINED = _set("ground grind reground undersize oversize polished machined turned")
#: before a figure: a bound, not a value
BOUND = _set("under below over above than least most up upto")
#: what somebody does who measures
MEASURES = frozenset(
    ["checked", "check", "measured", "measure", "plastigaged", "plastigauged", "miked", "gauged"]
)
#: beside an amount: it came out of the engine; before the other amount: the engine holds that
CAME_OUT = _set("drained drain came out off jug caught")
WENT_IN = _set("put poured filled refilled tipped dumped added went")
HOLDS = _set("book holds hold says capacity should manual handbook spec takes normal full")

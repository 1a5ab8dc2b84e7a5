"""What people call the quantities they measure, and words that say a figure is no measurement.

Common practice. A name that stands for several quantities is in ``VAGUE``, with the part that
decides between them.
"""

from __future__ import annotations

from knowledge.lexicon.values.values_rare import VALUES_RARE
from knowledge.lexicon.words.word_sets import set_of as _set

#: by the id of the quantity; a measure, a task or a figure of the engine has it
VALUES: dict[str, tuple[str, ...]] = {
    "main_clearance": (
        "main|mains bearing|bearings|brg|brgs? oil? clearance|clearances|gap",
        "clearance|clearances of|on|at|in the? main|mains bearing|bearings|brg|brgs?",
        "main|mains plastigage|plastigauge|plastigaged|plastigauged",
        "plastigage|plastigauge|plastigaged|plastigauged the? main|mains",
        "main|mains bearing|bearings|brg|brgs|journal|journals",
    ),
    "rod_clearance": (
        "rod|rods bearing|bearings|brg|brgs? oil? clearance|clearances|gap",
        "big end|ends bearing|bearings|brg|brgs? oil? clearance|clearances?",
        "bigend|bigends bearing|bearings|brg|brgs? oil? clearance|clearances?",
        "clearance|clearances of|on|at|in the? rod|rods bearing|bearings|brg|brgs?",
        "rod|rods plastigage|plastigauge|plastigaged|plastigauged",
        "plastigage|plastigauge|plastigaged|plastigauged the? rod|rods",
        "rod|rods bearing|bearings|brg|brgs|journal|journals",
        "conrod|conrods bearing|bearings|brg|brgs? clearance|clearances?",
        "crankpin|crankpins clearance|clearances",
    ),
    "crank_end_float": (
        "crank|crankshaft end float|play|clearance",
        "crank|crankshaft endplay|endfloat|float",
        "crank|crankshaft moves|moved|slides|slid|shifts|shifted",
        "push|pushed|pull|lever|pry|move|slide the? crank|crankshaft",
        "thrust bearing? clearance|play|gap|float",
        "end float|play of|on|at|in the? crank|crankshaft",
        "endplay|endfloat of|on|at|in the? crank|crankshaft",
    ),
    "cam_bearing_clearance": (
        "cam|camshaft bearing|bearings|brg|brgs|bush|bushes|journal|journals? oil? clearance|clearances|gap",
        "cam|camshaft bearing|bearings|brg|brgs|bush|bushes",
        "clearance of|on|at|in the? cam|camshaft bearing|bearings|brg|brgs?",
    ),
    "journal_taper": (
        "journal|journals|crankpin|crankpins|main|mains|rod|crank journal|journals? taper",
        "taper of|on|at|in the? journal|journals|crankpin|crankpins|crank",
    ),
    "journal_oval": (
        "journal|journals|crankpin|crankpins|crank journal|journals? ovality|oval|out-of-round|roundness",
        "ovality|out-of-round of|on|at|in the? journal|journals|crankpin|crankpins|crank",
        "journal|journals|crankpin|crankpins out of round",
    ),
    **VALUES_RARE,
    "pump_end_clearance": (
        "pump gear|gears|rotor|rotors? end clearance|play|float|gap",
        "pump endplay|endfloat",
        "gear|gears|rotor|rotors is|are|sit|sits? =recessed|=sunk|=deep|=low|=down|=below|=under by?",
        "gear|gears|rotor|rotors end clearance|play|float|gap",
        "gear|gears|rotor|rotors endplay|endfloat",
        "pump gear|gears|rotor|rotors? to? cover|plate clearance|gap",
        "pump cover|plate clearance|gap",
        "gear|gears|rotor|rotors to cover|plate clearance|gap?",
        "cover to gear|gears|rotor|rotors clearance|gap?",
        "between|from the? gear|gears|rotor|rotors and|to the? cover|plate|endplate|end-plate",
        "between|from the? cover|plate|endplate|end-plate and|to the? gear|gears|rotor|rotors",
        "gear|gears|rotor|rotors|pump axial clearance|play|float|gap?",
    ),
    "pump_side_clearance": (
        "pump side|radial clearance|gap",
        "gear|gears|rotor|rotors|pump to? body|housing|case clearance|gap",
        "gear|gears|rotor|rotors|outer to body|housing|case|bore",
        "between|from the? outer? gear|gears|rotor|rotors|outer and|to the? body|housing|case",
        "pump to body|housing|case",
        "outer rotor to? body|housing? clearance|gap",
        "gear|gears|rotor|rotors side clearance|gap",
    ),
    "rotor_tip_clearance": (
        "rotor|rotors|gerotor|lobe|lobes|pump tip|tips clearance|gap?",
        "tip|tips clearance|gap",
        "tip to tip clearance?",
        "inner to outer rotor|rotors clearance|gap?",
    ),
    "pump_cover_hollow": (
        "cover|plate|endplate worn|wear|grooved|groove|hollow|scored|scoring|dished|step",
        "wear|groove|hollow|score|step in|on|of .. cover|plate|endplate",
        "cover|plate|endplate has .. wear|groove|scoring|step",
        "pump cover|plate warped|flatness|warp",
    ),
    "pump_backlash": (
        "pump gear|gears? backlash",
        "gear|gears backlash|lash",
        "backlash of|between|in the? pump|gears gears?",
        "tooth|teeth backlash|play",
    ),
    "pump_bush_clearance": (
        "pump shaft|bush|bushing|spindle .. clearance|play|slop|wear",
        "shaft to? bush|bushing|body|bore clearance|play",
        "play|slop|clearance of|on|in the? pump shaft|bush|bushing|spindle",
    ),
    "pump_cover_torque": (
        "pump cover|plate bolt|bolts|screw|screws torque|torqued?",
        "cover|plate bolt|bolts|screw|screws torque|torqued",
    ),
    "relief_spring_length": (
        "relief|regulator|bypass|pressure valve? spring free? length",
        "relief|regulator|pressure valve? spring",
        "spring free? length",
        "spring stands|stood|is|was|measures|measured",
        "length of the? relief|regulator|pressure? valve? spring",
    ),
    "relief_setting": (
        "relief|regulator|regulating valve? opens|opened|opening|lifts|lifted|cracks|cracked|pops|popped|blows|set|setting|unseats",
    ),
    "relief_shim": (
        "shim|shims|shimmed|washer|washers under|behind|on|in .. relief|regulator? valve? spring",
        "relief|regulator valve? spring? shim|shims|shimmed",
        "spring shim|shims|shimmed",
    ),
    "relief_plunger": (
        "relief|regulator valve? plunger|piston|bore diameter|dia|bore",
        "diameter of the? relief|regulator valve? plunger|piston",
    ),
    "relief_seat_gap": ("relief|regulator valve|ball|plunger held|stands|sits .. off|open|proud",),
    "pickup_gap": (
        "pickup|screen|strainer to? pan|sump|floor|bottom clearance|gap|distance|depth",
        "pickup|screen|strainer to the? pan|sump|floor|bottom",
        "pickup|screen|strainer clearance|gap|depth|height",
        "pickup|screen|strainer is|was|sits|sat|hangs|stood|stands",
        "pickup|screen|strainer off|above|from the? pan|sump|floor|bottom?",
        "clearance|gap|distance from|between|under|below the? pickup|screen|strainer .. pan|sump|floor|bottom?",
        "clearance|gap under|below|at the? pickup|screen|strainer",
        "between|from the? pickup|screen|strainer and|to the? pan|sump|floor|bottom floor?",
    ),
    "pickup_tube": ("pickup|suction tube|pipe bore|diameter|id|inside",),
    "pickup_rim": ("pickup|screen|strainer rim? diameter",),
    "pickup_tube_length": ("pickup|suction tube|pipe length|long",),
    "screen_open_share": ("screen|strainer|pickup .. open|clear",),
    "build_up_time": (
        "to|till|until|before build|builds|built|building up? oil? pressure?",
        "to build|come|get up? oil? pressure|to?",
        "build up? time|delay",
        "buildup time|delay",
        "until|till|before .. pressure|gauge|needle shows|showed|comes|came|moves|moved|registers",
        "time|delay to pressure",
        "for .. pressure|gauge|needle to move|show|come|build|rise|register",
    ),
    "decay_time": (
        "to drop|fall|decay to zero|nothing",
        "decay time",
        "pressure decay|decays|bleeds .. after|on|at stop|stopping|shutdown|off",
        "shutdown decay",
    ),
    "switch_pressure": (
        "pressure? switch .. , opens|closes|trips|changes|operates over? at",
        "switch is|was? opens|closes|trips|operates|changes|makes|breaks|set|setpoint|point|rated|stamped|marked|labelled|stated over|at|as|with|for?",
        "oil? pressure? switch setting",
    ),
    "sender_resistance_at_rest": (
        "sender|sensor|transmitter|unit at? rest? reads|read|measures|measured|resistance|ohms|shows?",
        "sending unit at? rest? reads|read|measures|measured|resistance|ohms?",
        "ohms at rest",
    ),
    "sender_ground_resistance": (
        "sender|sensor|unit|block ground|earth|grounding|earthing resistance?",
        "ground|earth resistance|path",
        "sender|sensor|switch body|case|hex|thread|casing to the? ground|earth|negative|battery|hull|block|frame|chassis|engine",
        "sender|sensor body|case|hex|shell",
    ),
    "idle_speed_counted": (
        "idle|tickover speed|rpm",
        "idles|idling|idle at|is|was|counted|set",
        "tick over speed?",
        "idle|tickover by|with|on|per laser|photo|strobe|optical|digital|hand tach|tacho|tachometer?",
    ),
    "panel_error": (
        "panel|dash|cab gauge .. low|high|off|out|under|over by?",
        "difference between .. gauge|gauges",
    ),
    "oil_heat": (
        "oil temp|temps|temperature|temperatures|heat",
        "temp|temperature of the? oil",
        "sump temp|temperature",
        "oil is|was|at|reaches|reached|runs|ran|gets|got|hits|hit",
    ),
    "fuel_share": (
        "fuel|petrol|gasoline|gas|diesel dilution? in the? oil",
        "fuel dilution",
        "fuel share|content|percentage|percent",
        "fuel|petrol|gasoline|diesel",
    ),
    "viscosity_at_100c": (
        "viscosity at? ..",
        "kinematic? viscosity",
        "oil viscosity",
        "vis at?",
        "kv100",
    ),
    "drained_volume": (
        "drained|emptied it|oil|sump and|, there|it|i was|were|had|got only|just|about?",
        "drained|drain out|off?",
        "came|come|ran|poured|got|get|drains out|off",
        "came|ran|poured|got|get .. out",
        "out of the? sump|pan|engine",
        "oil drained|out",
        "in the? jug|bucket|drain",
    ),
    "filter_bypass": (
        "filter? =bypass valve? opens|opened|set|setting|cracks|lifts|rated|pressure?",
        "oil? filter =bypass",
    ),
    "filter_drop": (
        "drop|difference|differential across|over the? oil? filter",
        "filter pressure? drop|differential",
    ),
    "main_diameter": (
        "main journal|journals diameter|dia|size|mic|miked|measure|measures|measured",
        "diameter of the? main|mains journal|journals?",
        "main|mains diameter|dia|size",
    ),
    "rod_diameter": (
        "rod|crank journal|journals|pin|pins diameter|dia|size|mic|miked|measure|measures|measured",
        "crankpin|crankpins diameter|dia|size?",
        "diameter of the? rod|crankpin|crankpins journal|journals?",
    ),
    "cam_diameter": (
        "cam|camshaft journal|journals diameter|dia|size|measure|measures|measured",
        "diameter of the? cam|camshaft journal|journals",
    ),
    "lifter_clearance": (
        "lifter|lifters|tappet|tappets bore|bores? clearance|clearances|gap",
        "lifter|tappet to bore clearance?",
        "clearance of|on|in the? lifter|lifters|tappet|tappets bore|bores?",
    ),
    "lifter_diameter": ("lifter|lifters|tappet|tappets diameter|dia|size",),
    "main_length": ("main bearing|shell width|length",),
    "main_groove": ("main bearing|shell? groove width",),
    "rod_length": ("rod bearing|shell width|length",),
    "rod_hole": ("oil? hole in the? crankpin|rod", "crankpin oil? hole"),
    "cam_length": ("cam bearing width|length",),
    "cam_hole": ("cam bearing oil? hole",),
    "passage_diameter": (
        "passage|gallery bore|diameter|dia|size",
        "main? oil? passage|gallery bored|drilled",
    ),
    "pump_displacement": ("pump displacement|capacity|output",),
    "pump_gear_diameter": ("pump gear|gears|rotor diameter|dia",),
    "pump_gear_length": ("pump gear|gears|rotor length|height|width|depth|tall|long",),
    "relief_port": ("relief|regulator port|hole width|size|diameter|dia",),
    "jet_diameter": ("jet|jets|squirter|squirters|metering hole|holes? diameter|dia|size|bore?",),
    "jet_opens": ("jet|jets|squirter|squirters|nozzle|nozzles open|opens|opened",),
    "open_hole": ("plug|gallery hole diameter|dia|size|bore",),
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

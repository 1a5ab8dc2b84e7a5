"""Bearings and crankshaft, and what their states are called in the book."""

from __future__ import annotations

from knowledge.lexicon.things.thing import State, Thing

_S = State
_BRG = "bearing|bearings|shell|shells|insert|inserts|brasses|slipper|slippers|half-shells"
_OF = "main|mains|rod|rods|big-end|crank|crankshaft|conrod|con-rod|bottom-end|bottom|engine|crankpin|lower|upper|connecting"
_CAM_BAD = ("cam_bearing_found_bad",)
_THRUST = ("thrust_face_ploughed",)
#: states of a bush that lets oil out, however it came to that
_BUSH_BAD = (
    _S.WIPED,
    _S.COPPER,
    _S.WORN,
    _S.RUINED,
    _S.BROKEN,
    _S.FAULTY,
    _S.OVER,
    _S.SCORED,
    _S.SPUN,
    _S.LOOSE,
    _S.OVAL,
    _S.CRACKED,
    _S.STUCK,
)
_BUSH = "bearing|bearings|bush|bushes|bushing|bushings|shells|journal|journals"
#: shafts and gears beside the crank: family, names, the finding that they are worn
_SHAFTS = (
    (
        "balance shaft",
        (
            f"balance|balancer|counterbalance|counter-balance|counterweight|counter-weight|balancing|balancing-weight|silent|lanchester|anti-vibration|vibration shaft|shafts|rod|rods {_BUSH}?",
            "weight|weights|spinning rods|shafts|shaft that|which stop|stops|cancel|damp|take the? vibration|shake",
            f"balancer unit|assembly|module|{_BUSH}",
            f"{_BUSH} of|on|in|for the? balance|balancer shaft|shafts|unit",
        ),
        "balance_shaft_bearings_worn",
    ),
    (
        "auxiliary shaft",
        (
            f"auxiliary|aux|jack|intermediate|side|half-speed|countershaft|pump-drive|distributor-drive shaft {_BUSH}?",
            "little|small|extra|second|lower|drive shaft that|which|the drives|turns|runs|works the? pump|distributor|oil|dizzy|fuel|timing",
            f"jackshaft|countershaft|sideshaft|halfshaft {_BUSH}?",
            f"{_BUSH} of|on|in|for the? auxiliary|aux|jack|intermediate shaft",
            f"{_BUSH} of|on|in|for the? jackshaft",
        ),
        "auxiliary_shaft_bearings_worn",
    ),
    (
        "idler gear",
        (
            f"timing? idler gear? {_BUSH}|hub|spindle",
            "timing idler|idlers gear|gears?",
            "idler gear|gears",
            "idler|idlers in|of the? gear|timing train|case|gears?",
            "middle|centre|center|intermediate|in-between|between|carrier|compound|lay timing? gear|gears|wheel|cog hub|stub|bush|bushing|spindle|shaft?",
            "in between timing? gear|cog",
            "idler hub|stub|spindle|bushing|bush|gear",
            f"timing|intermediate gear {_BUSH}",
            f"{_BUSH} of|on|in|for the? timing? idler gear?",
        ),
        "idler_gear_bush_worn",
    ),
)
THINGS_BEARINGS: tuple[Thing, ...] = (
    Thing(
        family="bearing",
        names=(
            f"{_OF} end|rod? {_BRG}",
            f"big|bottom end|ends {_BRG}?",
            "bearings|shells",
            "mains|big-ends",
            "rods|main and|& mains|rod bearings?",
            f"number|no|nr|#? @number main|rod|big|cylinder end? {_BRG}?",
            f"{_BRG} in|on|of|at number|no|the? @number? main|rod|big end?",
        ),
        later=("bearing", "shell"),
        shows={
            _S.WIPED: ("shells_wiped",),
            _S.COPPER: ("shells_worn_evenly",),
            _S.WORN: ("shells_worn_evenly",),
            _S.RUINED: ("shells_found_ruined",),
            _S.FAULTY: ("shells_found_ruined",),
            _S.BROKEN: ("shells_found_ruined",),
            _S.PITTED: ("shells_etched",),
            _S.SCORED: ("shells_scratched",),
            _S.SPUN: ("shell_spun",),
            _S.STUCK: ("bearing_found_seized",),
            _S.CRACKED: ("shells_flaking",),
            _S.WRONG: ("wrong_shells_fitted",),
            _S.FINE: ("shells_look_normal",),
        },
    ),
    Thing(
        family="cam bearing",
        names=(
            "cam|camshaft bearing|bearings|bush|bushes|bushing|bushings",
            "front|rear|centre|center|middle cam|camshaft bearing|bush|bushing",
            "bearing|bush|bushing at|on|of|for the? front|rear? of? the? cam|camshaft",
        ),
        shows=dict.fromkeys(
            (
                _S.WIPED,
                _S.COPPER,
                _S.WORN,
                _S.RUINED,
                _S.BROKEN,
                _S.FAULTY,
                _S.OVER,
                _S.SCORED,
                _S.SPUN,
                _S.LOOSE,
                _S.CAME_OFF,
                _S.PUSHED_OUT,
                _S.CRACKED,
                _S.STUCK,
                _S.WRONG,
                _S.REVERSED,
            ),
            _CAM_BAD,
        ),
        rules_out={_S.FINE: _CAM_BAD},
    ),
    *(
        Thing(
            family=family,
            names=names,
            shows=dict.fromkeys(_BUSH_BAD, (finding,)),
            rules_out=dict.fromkeys((_S.FINE, _S.TIGHT, _S.FREE), (finding,)),
        )
        for family, names, finding in _SHAFTS
    ),
    Thing(
        family="thrust",
        names=(
            "crank|crankshaft|main? thrust bearing|washer|washers|face|faces|flange|surface|surfaces",
            "thrusts|thrustwasher|thrustwashers",
        ),
        shows=dict.fromkeys(
            (_S.WIPED, _S.COPPER, _S.WORN, _S.RUINED, _S.SCORED, _S.ABSENT, _S.CAME_OFF), _THRUST
        ),
        rules_out={_S.FINE: _THRUST},
    ),
    Thing(
        family="crank",
        names=(
            "=crank|crankshaft journal|journals|pin|pins|throws?",
            "main|rod|big-end|crank|bearing journal|journals|throw|throws",
            "crankpin|crankpins|journal|journals|crankshaft",
            "main|rod|big-end|rear|front|centre|center|number|nr|no|@number? @number? throw|throws|crank-pin|crank-pins",
            "big-end|big-ends|rod|crank|number|nr|no @number? pin|pins @number?",
            "pin|pins|journal|journals|throw|throws number|nr|no|of|on? the? crank|crankshaft|@number",
            "shaft|main|bearing it|they|that|the|rod|rods|big-ends? run|runs|turns|sits on|in",
            "web|fillet|radius|nose|flange|snout|cheek of|on|at the? crank|crankshaft|rear|front|throw|journal|crankpin|pin?",
            "=crank mikes|mics|miked|measures|measured|checks|checked out|up?",
        ),
        shows={
            _S.SCORED: ("crank_scored",),
            _S.WIPED: ("crank_scored",),
            _S.RUINED: ("crank_scored",),
            _S.BENT: ("rod_or_crank_bent",),
            _S.BROKEN: ("crank_broken",),
            _S.CRACKED: ("crank_broken",),
            _S.OVAL: ("journal_not_true",),
        },
        rules_out={
            _S.FINE: ("crank_scored",),
            _S.TRUE: ("journal_not_true",),
            _S.WHOLE: ("crank_broken",),
            _S.STRAIGHT: ("rod_or_crank_bent",),
        },
    ),
    Thing(
        family="crank",
        names=(
            "crank|crankshaft|oilway|crankpin oilway|drilling|sludge? plug|plugs",
            "expansion|welch|screw|core plug|plugs in|of the? crank|crankshaft",
        ),
        shows=dict.fromkeys(
            (_S.ABSENT, _S.LOOSE, _S.CAME_OFF, _S.PUSHED_OUT, _S.LEAKING),
            ("crank_plug_found_missing",),
        ),
        rules_out=dict.fromkeys((_S.FINE, _S.TIGHT), ("crank_plug_found_missing",)),
    ),
    Thing(
        family="cap",
        names=("main|mains|rod|bearing|big-end|cam bearing? cap|caps", "rear|front main cap"),
        shows={_S.REVERSED: ("caps_mixed",), _S.LOOSE: ("cap_bolts_slack",)},
        rules_out={_S.TIGHT: ("cap_bolts_slack",)},
    ),
    Thing(
        family="cap",
        names=(
            "main|mains|rod|bearing|big-end|through|crankcase|cap bearing|cap? cap? bolt|bolts|nut|nuts|stud|studs",
        ),
        shows={_S.LOOSE: ("cap_bolts_slack",), _S.BROKEN: ("rod_broken",)},
        rules_out={_S.TIGHT: ("cap_bolts_slack",)},
    ),
)

"""The pump and what turns it, and what their states are called in the book."""

from __future__ import annotations

from knowledge.lexicon.things.thing import State, Substance, Thing

_S = State
_SHAFT = "shaft|driveshaft|drive-shaft|rod|spindle|quill|axle|stem|bar"
_TURNS = (
    "turns|turn|turning|drives|drive|driving|works|working|spins|spinning|moves|operates|powers|"
    "runs|running|rotates|rotating"
)
_SHEARED = ("drive_coupling_sheared",)
_PIECE = dict.fromkeys(
    (Substance.DEBRIS, Substance.GASKET, Substance.PLASTIC, Substance.SEALER), ("piece_in_pump",)
) | {Substance.CLOTH: ("cloth_on_screen",)}
_GASKET = "gasket|gaskets|seal|o-ring|oring|joint"
THINGS_PUMP: tuple[Thing, ...] = (
    Thing(
        family="pump",
        names=(
            "oil? pump|pumps",
            "oil-pump",
            "oil pump assembly|unit",
            "gear|rotor|gerotor|vane|plunger|lube|lub|lubricating|pressure|main oil? pump",
            "part|thing|bit|device that|which pushes|pumps|circulates|sends the? oil round|around?",
        ),
        shows={
            _S.WORN: ("gears_worn_out",),
            _S.OVER: ("gears_worn_out",),
            _S.STUCK: ("pump_jammed",),
            _S.SCORED: ("pump_scored_seen",),
            _S.BROKEN: ("pump_found_failed",),
            _S.FAULTY: ("pump_found_failed",),
            _S.CRACKED: ("pump_casting_cracked",),
            _S.BURST: ("pump_housing_burst",),
            _S.LOOSE: ("pump_bolts_loose",),
            _S.CAME_OFF: ("pump_bolts_loose",),
            _S.EMPTY: ("pump_dry_inside",),
            _S.DRY: ("pump_dry_inside",),
            _S.WRONG: ("wrong_pump_fitted",),
            _S.FINE: ("pump_found_sound",),
        },
        rules_out={
            _S.TIGHT: ("pump_bolts_loose",),
            _S.FREE: ("pump_jammed",),
        },
        holds={
            Substance.BEARING: ("bearing_pieces_in_pump",),
            Substance.STEEL: ("steel_slivers_in_pump",),
            **_PIECE,
        },
    ),
    Thing(
        family="pump",
        names=(
            "oil? pump gears|gear|rotors|rotor|gerotor|gerotors|vanes|internals|teeth|impeller|impellers",
            "inner|outer|pump rotor|rotors|gerotor",
            "gerotor|gerotors",
            "gears|rotors|wheels|wheel|lobes|vanes|innards|insides|guts|internals|works in|inside|of my|the? oil? pump",
            "oil? pump wheels|wheel|innards|insides|guts|lobes|star|elements|works",
            "inner|outer|inside|outside|driven rotor|ring|annulus|element of|in the? oil? pump",
            "dot|dots|mark|marks|chamfer on|of the? inner|outer? rotor|rotors",
        ),
        later=("gears", "rotors", "rotor"),
        shows={
            _S.WORN: ("gears_worn_out",),
            _S.OVER: ("gears_worn_out",),
            _S.RUINED: ("gears_worn_out",),
            _S.SCORED: ("pump_scored_seen",),
            _S.BROKEN: ("pump_gear_broken",),
            _S.CRACKED: ("pump_gear_broken",),
            _S.STUCK: ("pump_jammed",),
            _S.LOOSE: ("gear_slips_on_shaft",),
            _S.SPUN: ("gear_slips_on_shaft",),
            _S.REVERSED: ("rotor_wrong_way_round",),
            _S.DRY: ("pump_dry_inside",),
        },
        rules_out={
            _S.FINE: ("gears_worn_out", "pump_scored_seen"),
            _S.WHOLE: ("pump_gear_broken",),
        },
        holds=_PIECE,
    ),
    Thing(
        family="pump",
        names=(
            "oil? pump shaft|spindle bush|bushing|bushings",
            "shaft|spindle of|in|on the? oil? pump",
        ),
        later=("shaft", "spindle"),
        shows={
            **dict.fromkeys((_S.WORN, _S.LOOSE), ("pump_shaft_play",)),
            _S.BROKEN: ("drive_shaft_broken",),
            _S.ROUNDED: ("drive_shaft_rounded",),
        },
    ),
    Thing(
        family="drive",
        names=("gear|pinion|sprocket on|of the? oil? pump drive? shaft|spindle",),
        shows={
            _S.SPUN: ("gear_slips_on_shaft",),
            _S.LOOSE: ("gear_slips_on_shaft",),
            _S.STRIPPED: ("drive_gear_stripped",),
            _S.WORN: ("drive_gear_worn",),
        },
    ),
    Thing(
        family="pump",
        names=(
            "oil? pump cover|end-plate|endplate|plate|backplate|lid|back-plate|baseplate|base-plate|wearplate|wear-plate|faceplate|end-cover plate?",
            "oil? pump end|back|bottom|top|cover plate|cover",
            "cover plate",
            "cover|plate|lid|backplate|end-plate|endplate of|on|for|from my|the? oil? pump",
        ),
        later=("cover", "plate", "backplate", "lid"),
        shows={
            _S.SCORED: ("cover_grooved",),
            _S.WORN: ("cover_grooved",),
            _S.BENT: ("cover_warped",),
            _S.LOOSE: ("cover_screws_loose",),
            _S.DRY: ("pump_dry_inside",),
            _S.CRACKED: ("pump_casting_cracked",),
            _S.HOLED: ("piece_through_pump_cover",),
        },
        rules_out={_S.FINE: ("cover_grooved",), _S.TIGHT: ("cover_screws_loose",)},
    ),
    Thing(
        family="pump",
        names=(
            "oil? pump body|housing|casting|bore|case|casing|cavity|walls|shell|barrel|chamber",
            "body|housing|casting|casing|case|shell|walls|barrel of my|the? oil? pump",
        ),
        shows={
            _S.SCORED: ("pump_scored_seen",),
            _S.WORN: ("pump_scored_seen",),
            _S.CRACKED: ("pump_casting_cracked",),
            _S.BROKEN: ("pump_casting_cracked",),
            _S.BURST: ("pump_housing_burst",),
        },
        rules_out={
            _S.FINE: ("pump_scored_seen",),
            _S.WHOLE: ("pump_casting_cracked", "pump_housing_burst"),
        },
    ),
    Thing(
        family="drive",
        names=(
            f"oil? pump drive? {_SHAFT}",
            "oil? pump driveshaft|drive|quill",
            f"intermediate|jack|drive {_SHAFT}",
            f"{_SHAFT} to|of|for|driving|between .. pump",
            f"{_SHAFT} that|which|to|what? {_TURNS} the|my? oil? pump",
            "jackshaft|quillshaft",
        ),
        shows={
            _S.FAULTY: ("drive_found_failed",),
            _S.BROKEN: ("drive_shaft_broken",),
            _S.BENT: ("drive_shaft_rounded",),
            _S.ROUNDED: ("drive_shaft_rounded",),
            _S.WORN: ("drive_shaft_rounded",),
            _S.ABSENT: ("drive_shaft_absent",),
            _S.CAME_OFF: ("drive_not_engaged",),
            _S.SHORT: ("drive_not_engaged",),
            _S.LOOSE: ("pump_shaft_play",),
        },
        rules_out={
            _S.FINE: ("drive_shaft_broken", "drive_shaft_rounded"),
            _S.WHOLE: ("drive_shaft_broken",),
        },
    ),
    Thing(
        family="drive",
        names=(
            f"oil? pump|drive|{_SHAFT} drive? hex|tang|slot|dog|flats|tongue|spline|splines|end",
            "hex|tang|tongue|splines",
            "hex|pump|drive|little|oil-pump hex? shaft|rod corners|edges|flats",
            f"hex|tang|slot|dog|flats|corners|corner|edges|tongue on|of|at the? oil? pump|drive|{_SHAFT} {_SHAFT}?",
        ),
        shows={
            _S.ROUNDED: ("drive_shaft_rounded",),
            _S.WORN: ("drive_shaft_rounded",),
            _S.BROKEN: _SHEARED,
        },
        rules_out={_S.FINE: ("drive_shaft_rounded",)},
    ),
    Thing(
        family="drive",
        names=(
            "woodruff|drive key on|of|in? the? pump? drive? shaft?",
            "roll|drive|shear|locating|driving pin|pins",
            "roll pin in|of|on|through the? distributor|drive|pump|shaft? gear|shaft?",
            "pump|drive coupling|coupler|sleeve|connector",
            "rollpin|coupler",
        ),
        shows=dict.fromkeys((_S.BROKEN, _S.ABSENT, _S.CAME_OFF, _S.STRIPPED), _SHEARED),
        rules_out={_S.FINE: _SHEARED, _S.WHOLE: _SHEARED},
    ),
    Thing(
        family="drive",
        names=(
            "distributor|dizzy|skew|worm|idler|helical drive? gear|gears|pinion|pinions teeth?",
            "oil? pump drive|driving|driven gear|gears|pinion|sprocket teeth?",
            "oil? pump pinion",
            "teeth on|of the? distributor|skew|pump|drive drive? gear|gears?",
            f"gear|gears|wheel|pinion|worm|teeth that|which|what? {_TURNS} the|my? oil? pump",
            f"teeth on|of|off the? gear|wheel|pinion that|which? {_TURNS} the|my? oil? pump",
            "spiral|skew|helical wheel",
        ),
        shows={
            _S.STRIPPED: ("drive_gear_stripped",),
            _S.BROKEN: ("drive_gear_stripped",),
            _S.ABSENT: ("drive_gear_stripped",),
            _S.WORN: ("drive_gear_worn",),
            _S.ROUNDED: ("drive_gear_worn",),
            _S.FAULTY: ("drive_found_failed",),
            _S.SPUN: ("gear_slips_on_shaft",),
        },
        rules_out={
            _S.FINE: ("drive_gear_stripped", "drive_gear_worn"),
            _S.WHOLE: ("drive_gear_stripped",),
        },
    ),
    Thing(
        family="drive",
        names=(
            "oil? pump drive? chain|sprocket",
            "chain|sprocket to|driving|that|which|on|for|of drives|turns|works|runs? the? oil? pump",
            "little|small chain to|for the? pump",
            "balance|balancer shaft? chain",
        ),
        shows=dict.fromkeys((_S.BROKEN, _S.CAME_OFF, _S.ABSENT), ("pump_chain_broken",)),
        rules_out={_S.FINE: ("pump_chain_broken",)},
    ),
    Thing(
        family="drive",
        names=(
            "oil? pump drive? belt",
            "drysump|dry-sump belt",
            "belt to|driving|for the? oil? pump",
        ),
        shows=dict.fromkeys(
            (_S.BROKEN, _S.CAME_OFF, _S.ABSENT, _S.LOOSE, _S.STRIPPED, _S.TORN), ("pump_belt_off",)
        ),
        rules_out={_S.FINE: ("pump_belt_off",), _S.TIGHT: ("pump_belt_off",)},
    ),
    Thing(
        family="pump",
        names=(
            "oil? pump mounting|mount|retaining|fixing|hold-down? bolt|bolts|stud|studs|nut|nuts",
            "bolt|bolts|nuts|nut|studs|stud|screws|setscrews|fixings|fastenings holding|of|on|that|for|securing|fixing|retaining hold|held? the? oil? pump",
        ),
        shows=dict.fromkeys((_S.LOOSE, _S.ABSENT, _S.CAME_OFF, _S.BROKEN), ("pump_bolts_loose",)),
        rules_out={_S.TIGHT: ("pump_bolts_loose",), _S.FINE: ("pump_bolts_loose",)},
    ),
    Thing(
        family="pump",
        names=(
            "oil? pump cover|lid|plate|backplate|end-plate screws|bolts|screw|bolt|setscrews|fixings|nuts",
            "cover|lid|plate? screws|bolts|screw|setscrews of|on|in|behind the? oil? pump cover|lid|plate|backplate?",
        ),
        shows=dict.fromkeys((_S.LOOSE, _S.ABSENT, _S.CAME_OFF), ("cover_screws_loose",)),
        rules_out={_S.TIGHT: ("cover_screws_loose",)},
    ),
    Thing(
        family="pump",
        names=(
            f"oil? pump mounting|mount|base|flange|body|to|outlet? block? {_GASKET}",
            f"{_GASKET}|paper between|under|behind|on|of|at|for the? oil? pump and|to? the? block|crankcase|engine|case?",
            f"oil? pump {_GASKET}|paper",
        ),
        shows={
            **dict.fromkeys(
                (
                    _S.BURST,
                    _S.TORN,
                    _S.LEAKING,
                    _S.PUSHED_OUT,
                    _S.CRACKED,
                    _S.HARD,
                    _S.CUT,
                    _S.FAULTY,
                ),
                ("mount_gasket_blown",),
            ),
            _S.ABSENT: ("mount_gasket_missing",),
        },
        rules_out={
            _S.FINE: ("mount_gasket_blown",),
            _S.WHOLE: ("mount_gasket_blown",),
            _S.IN_PLACE: ("mount_gasket_missing",),
        },
    ),
    Thing(
        family="scavenge",
        names=(
            "scavenge|scavenging hose|hoses|line|lines|pipe|pipes|union|unions|fitting|fittings|pickup|pickups",
            "scavenge|scavenging pickup|hose seal|seals|o-ring|clip|clamp",
        ),
        shows=dict.fromkeys(
            (
                *(State.CRACKED, State.LOOSE, State.LEAKING, State.HOLED, State.TORN),
                *(State.BROKEN, State.CUT, State.HARD, State.FAULTY, State.CAME_OFF),
            ),
            ("scavenge_side_takes_air",),
        ),
        rules_out=dict.fromkeys((State.FINE, State.TIGHT), ("scavenge_side_takes_air",)),
    ),
)

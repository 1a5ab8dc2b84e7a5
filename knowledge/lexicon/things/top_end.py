"""Camshaft, lifters, rockers, chain, piston jets and turbo, and their states in the book."""

from __future__ import annotations

from knowledge.lexicon.things.thing import State, Substance, Thing

_S = State
_TAPPET = "lifter|lifters|tappet|tappets|follower|followers|adjuster|adjusters|hla|hlas|hydraulics"
_TURBO = "turbo|turbocharger"
_LINE = "line|pipe|hose|tube|feed|supply"
_ROCKER_WORN = ("rocker_shaft_found_worn",)
_JET = ("piston_jet_found_broken",)
_TENSIONER = ("tensioner_slack",)
THINGS_TOPEND: tuple[Thing, ...] = (
    Thing(
        family="cam",
        names=("cam|camshaft|camshafts", "cam shaft"),
        shows={
            _S.BROKEN: ("camshaft_broken",),
            _S.STUCK: ("camshaft_broken",),
            _S.FLAT: ("cam_lobes_wiped",),
        },
        rules_out={_S.FINE: ("cam_lobes_wiped",)},
    ),
    Thing(
        family="cam",
        names=(
            "cam|camshaft? lobe|lobes",
            "cam|camshaft nose|noses|peaks|peak",
            "lobes|lobe|nose|noses on|of the? cam|camshaft",
        ),
        shows=dict.fromkeys(
            (_S.FLAT, _S.WORN, _S.SCORED, _S.RUINED, _S.WIPED, _S.ROUNDED, _S.FAULTY),
            ("cam_lobes_wiped",),
        ),
        rules_out={_S.FINE: ("cam_lobes_wiped",)},
    ),
    Thing(
        family="cam",
        names=(
            "cam|camshaft journal|journals|carrier|carriers|caps|towers",
            "journals|journal of|on the? cam|camshaft",
        ),
        shows={
            _S.SCORED: ("cam_journals_worn",),
            _S.WORN: ("cam_journals_worn",),
            _S.OVER: ("cam_journals_worn",),
        },
        rules_out=dict.fromkeys((_S.FINE, _S.TRUE), ("cam_journals_worn",)),
    ),
    Thing(
        family="lifter",
        names=(f"hydraulic|roller|cam|lash? lash? {_TAPPET}",),
        shows={
            _S.CRUSHED: ("lifters_found_drained",),
            _S.EMPTY: ("lifters_found_drained",),
            _S.BROKEN: ("lifter_out_of_bore",),
            _S.CAME_OFF: ("lifter_out_of_bore",),
            _S.PUSHED_OUT: ("lifter_out_of_bore",),
            _S.ABSENT: ("lifter_out_of_bore",),
            _S.LOOSE: ("lifters_loose_in_bores",),
        },
        rules_out={_S.FINE: ("lifters_loose_in_bores", "lifter_out_of_bore")},
    ),
    Thing(
        family="lifter",
        names=(f"{_TAPPET} bore|bores|hole|holes",),
        shows=dict.fromkeys((_S.WORN, _S.OVAL, _S.LOOSE), ("lifters_loose_in_bores",)),
        rules_out={_S.FINE: ("lifters_loose_in_bores",)},
    ),
    Thing(
        family="rocker",
        names=(
            "rocker shaft|shafts|bush|bushes|bushing|bushings|pivots",
            "rocker arm bush|bushes|bushings",
            "rocker shaft end? plug|plugs|cap|caps",
        ),
        shows=dict.fromkeys(
            (
                _S.WORN,
                _S.SCORED,
                _S.LOOSE,
                _S.BROKEN,
                _S.RUINED,
                _S.FAULTY,
                _S.OVER,
                _S.ABSENT,
                _S.CAME_OFF,
            ),
            _ROCKER_WORN,
        ),
        rules_out={_S.FINE: _ROCKER_WORN},
    ),
    Thing(
        family="rocker",
        names=("rocker|rockers arms?|gear?", "valve gear|train"),
        shows={
            _S.DRY: ("no_oil_at_rockers",),
            _S.WIPED: ("valve_gear_found_dry",),
            _S.SCORED: ("valve_gear_found_dry",),
        },
    ),
    Thing(
        family="pushrod",
        names=("pushrod|pushrods|push-rod|push-rods", "push rod|rods"),
        shows=dict.fromkeys(
            (_S.BENT, _S.LOOSE, _S.CAME_OFF, _S.BROKEN, _S.PUSHED_OUT), ("pushrod_off_or_bent",)
        ),
        rules_out={_S.FINE: ("pushrod_off_or_bent",)},
    ),
    Thing(
        family="tensioner",
        names=("timing|cam|chain? chain? tensioner|tensioners|adjuster", "chain guides|guide"),
        shows=dict.fromkeys(
            (_S.LOOSE, _S.SHORT, _S.BROKEN, _S.WORN, _S.RUINED, _S.FAULTY, _S.OVER), _TENSIONER
        ),
        rules_out={_S.FINE: _TENSIONER, _S.TIGHT: _TENSIONER},
    ),
    Thing(
        family="tensioner",
        names=(
            "chain? tensioner|tensioners gasket|seal|o-ring|oring|plug|bolt",
            "chain? tensioner|tensioners paper? joint|washer",
            "gasket|seal|plug|joint|o-ring|oring|washer of|on|behind|for the? chain? tensioner",
        ),
        shows=dict.fromkeys(
            (_S.ABSENT, _S.TORN, _S.CUT, _S.LOOSE, _S.CAME_OFF, _S.LEAKING),
            ("tensioner_seal_absent",),
        ),
    ),
    Thing(
        family="jet",
        names=(
            "piston cooling|oil? jet|jets|squirter|squirters|nozzle|nozzles|spray",
            "oil? squirter|squirters",
            "oil|cooling jet|jets|nozzle|nozzles",
        ),
        shows=dict.fromkeys(
            (_S.BROKEN, _S.ABSENT, _S.LOOSE, _S.CAME_OFF, _S.BENT, _S.CRACKED, _S.FAULTY), _JET
        ),
        rules_out={_S.FINE: _JET},
    ),
    Thing(
        family="restrictor",
        names=(
            "oil? restrictor|restrictors in|for|to|of? the? head|rocker|rockers|lifter|gallery|galleries|turbo?",
            "metering jet|orifice|plug|pin",
        ),
        shows={_S.ABSENT: ("restrictor_absent",), _S.CAME_OFF: ("restrictor_absent",)},
    ),
    Thing(
        family="turbo",
        names=(_TURBO, "turbo charger|unit"),
        shows=dict.fromkeys(
            (_S.BROKEN, _S.RUINED, _S.STUCK, _S.BURST, _S.FAULTY, _S.WORN),
            ("turbo_failed",),
        ),
        rules_out={_S.FINE: ("turbo_failed",)},
    ),
    Thing(
        family="turbo",
        names=(
            f"{_TURBO} shaft|wheel|impeller|bearing|bearings|rotor|spindle|fan|compressor|turbine|blades wheel?",
            f"shaft|wheel|impeller|spindle|fan|rotor of|in|inside the? {_TURBO}",
        ),
        shows={
            _S.LOOSE: ("turbo_shaft_loose",),
            _S.WORN: ("turbo_shaft_loose",),
            _S.STUCK: ("turbo_shaft_stiff_or_blued",),
            _S.SCORED: ("turbo_shaft_stiff_or_blued",),
            _S.WIPED: ("turbo_shaft_stiff_or_blued",),
        },
        rules_out={_S.FINE: ("turbo_shaft_loose", "turbo_shaft_stiff_or_blued")},
    ),
    Thing(
        family="turbo",
        names=(
            f"{_TURBO} oil? {_LINE} {_LINE}?",
            f"oil? {_LINE} to|of|for|on the? {_TURBO}",
            f"{_TURBO} feed|oil banjo|screen|union|restrictor",
            "banjo|feed bolt|bolts? filter|gauze|mesh|screen|strainer",
            "filter|gauze|mesh|screen|strainer in|inside|of the|its|that? banjo|feed",
            "feed|turbo pipe|banjo-filter|banjo",
            f"banjo|union|bolt|nut|fitting|connection|flange|joint on|of|at|to|for the|its|my? {_TURBO} oil? {_LINE}?",
        ),
        shows={
            **dict.fromkeys(
                (_S.LEAKING, _S.CRACKED, _S.BROKEN, _S.BURST, _S.CAME_OFF, _S.LOOSE, _S.HOLED),
                ("turbo_line_leaks",),
            ),
            _S.BLOCKED: ("turbo_feed_found_blocked",),
            _S.CRUSHED: ("turbo_feed_found_blocked",),
        },
        rules_out={
            _S.CLEAN: ("turbo_feed_found_blocked",),
            _S.DRY: ("turbo_line_leaks",),
            _S.FINE: ("turbo_line_leaks", "turbo_feed_found_blocked"),
        },
        holds=dict.fromkeys(
            (Substance.CARBON, Substance.SLUDGE, Substance.SEALER, Substance.DEBRIS),
            ("turbo_feed_found_blocked",),
        ),
    ),
    Thing(
        family="phaser",
        names=(
            "cam? phaser|phasers",
            "cam|camshaft adjuster|adjusters|variator|variators",
            "vvt|vanos|vvti unit|actuator|gear|pulley?",
        ),
        shows=dict.fromkeys((_S.LEAKING, _S.WORN, _S.LOOSE, _S.BROKEN), ("phaser_leaks",)),
    ),
)

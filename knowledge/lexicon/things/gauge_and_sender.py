"""Sender, wiring, gauge line and lamp, and what their states are called in the book."""

from __future__ import annotations

from knowledge.lexicon.things.thing import State, Substance, Thing

_S = State
_SENDER = "sender|sensor|sending-unit|sendor|transmitter|transducer"
_WIRE = "wire|wires|lead|cable|wiring|loom|harness"
_PLUG = "connector|plug|terminal|terminals|connection|connections|spade|contact|contacts|boot"
_OFF = ("sender_wire_off",)
_LOOSE = ("sender_connector_loose",)
_GROUND = ("ground_strap_bad",)
_LINE_LEAKS = ("gauge_line_leaking",)
_CLOGGED = ("sender_port_clogged",)
THINGS_INSTRUMENT: tuple[Thing, ...] = (
    Thing(
        family="sender",
        names=(f"oil? pressure? {_SENDER}", "oil? pressure? sending unit"),
        shows={
            _S.FAULTY: ("sender_wrong_on_air",),
            _S.RUINED: ("sender_wrong_on_air",),
            _S.LEAKING: ("sender_leaks_oil",),
            _S.CRACKED: ("sender_damaged",),
            _S.BENT: ("sender_damaged",),
            _S.CRUSHED: ("sender_damaged",),
            _S.WRONG: ("sender_not_for_gauge",),
            _S.BLOCKED: _CLOGGED,
        },
        rules_out={_S.FINE: ("sender_wrong_on_air",), _S.DRY: ("sender_leaks_oil",)},
        holds={Substance.OIL: ("sender_leaks_oil",), Substance.SLUDGE: _CLOGGED},
    ),
    Thing(
        family="sender",
        names=("oil? pressure switch", "oil|pressure switch", "pressure-switch"),
        later=("switch",),
        shows={
            _S.FAULTY: ("switch_opens_wrong",),
            _S.RUINED: ("switch_opens_wrong",),
            _S.STUCK: ("switch_opens_wrong",),
            _S.LEAKING: ("sender_leaks_oil",),
            _S.CRACKED: ("sender_damaged",),
            _S.BLOCKED: _CLOGGED,
        },
        rules_out={_S.FINE: ("switch_opens_wrong",), _S.DRY: ("sender_leaks_oil",)},
        holds={Substance.OIL: ("sender_leaks_oil",)},
    ),
    Thing(
        family="sender port",
        names=(
            f"{_SENDER}|switch|gauge|snubber port|hole|orifice|drilling|restrictor|passage|tapping|screen",
            f"port|hole|orifice|drilling|restrictor|snubber|screen|passage in|under|of|for|behind|to|at the? {_SENDER}|switch|gauge",
            f"snubber orifice|hole|port? in|of|for? the? {_SENDER}?",
        ),
        shows={_S.BLOCKED: _CLOGGED},
        rules_out={_S.CLEAN: _CLOGGED},
        holds=dict.fromkeys((Substance.SLUDGE, Substance.DEBRIS, Substance.SEALER), _CLOGGED),
    ),
    Thing(
        family="connector",
        names=(
            f"{_SENDER}|switch|gauge|wiring|sending|push-on|spade|electrical {_PLUG}",
            f"{_PLUG} on|at|of|to|for the? oil? pressure? {_SENDER}|switch|gauge|sending unit?",
            "connector|terminal|terminals|spade",
        ),
        shows={
            _S.LOOSE: _LOOSE,
            _S.SCORED: _LOOSE,
            _S.DIRTY: _LOOSE,
            _S.FAULTY: _LOOSE,
            _S.BROKEN: _LOOSE,
            _S.LEAKING: ("sender_leaks_oil",),
            _S.CAME_OFF: _OFF,
            _S.UNPLUGGED: _OFF,
        },
        rules_out={_S.FINE: _LOOSE, _S.TIGHT: _LOOSE, _S.CLEAN: _LOOSE},
        holds={Substance.OIL: ("sender_leaks_oil",)},
    ),
    Thing(
        family="wire",
        names=(
            f"{_SENDER}|switch|gauge|signal|sensor|sending unit? {_WIRE}",
            f"{_WIRE} to|from|on|at|of|for|off the? oil? pressure? {_SENDER}|switch|gauge|sending|lamp|light|warning unit|lamp|light?",
            "signal wire",
        ),
        shows={
            **dict.fromkeys(
                (
                    _S.BROKEN,
                    _S.CUT,
                    _S.TORN,
                    _S.HOLED,
                    _S.CRUSHED,
                    _S.WIPED,
                    _S.RUINED,
                ),
                ("sender_wire_broken",),
            ),
            _S.CAME_OFF: _OFF,
            _S.UNPLUGGED: _OFF,
            _S.LOOSE: _LOOSE,
            _S.SHORTED: ("wire_open_or_shorted",),
            _S.FAULTY: ("wire_open_or_shorted",),
        },
        rules_out={
            _S.FINE: ("sender_wire_broken", "wire_open_or_shorted"),
            _S.TIGHT: _LOOSE,
        },
    ),
    Thing(
        family="fuse",
        names=("fuse|fuses for|of? the? gauge|gauges|instruments?", "gauge|instrument fuse|fuses"),
        shows={
            _S.BURST: ("fuse_blown",),
            _S.BROKEN: ("fuse_blown",),
            _S.FAULTY: ("fuse_blown",),
        },
        rules_out={_S.FINE: ("fuse_blown",)},
    ),
    Thing(
        family="supply",
        names=(
            "voltage|power|reference|sensor|gauge|instrument|v|volt|volts supply|feed",
            "supply|reference|feed|sensor voltage at|to|of? the? sensor|sender|gauge?",
            "voltage|instrument|gauge stabiliser|stabilizer|regulator",
            "stabiliser|stabilizer",
        ),
        shows=dict.fromkeys((_S.ABSENT, _S.FAULTY, _S.BROKEN, _S.LOOSE), ("gauge_supply_wrong",)),
        rules_out=dict.fromkeys((_S.FINE, _S.IN_PLACE), ("gauge_supply_wrong",)),
    ),
    Thing(
        family="ground",
        names=(
            "engine|body|block|chassis|battery|main? ground|earth|earthing|grounding strap|cable|lead|wire|straps|connection|point",
            "engine|chassis|block|body ground|earth|grounds|earths",
            "=earths|=grounds",
            "strap from|between .. block|engine and|to the? body|chassis|frame",
        ),
        shows=dict.fromkeys(
            (
                _S.BROKEN,
                _S.LOOSE,
                _S.SCORED,
                _S.ABSENT,
                _S.FAULTY,
                _S.CAME_OFF,
                _S.DIRTY,
            ),
            _GROUND,
        ),
        rules_out={_S.FINE: _GROUND, _S.TIGHT: _GROUND, _S.CLEAN: _GROUND},
    ),
    Thing(
        family="gauge line",
        names=(
            "pressure? gauge|capillary|sender line|pipe|tube|hose|tubing|union|fitting",
            "capillary",
            "capillary|copper|nylon|plastic line|pipe|tube|tubing to|for|of? the? gauge?",
            "line|pipe|tube|tubing|hose to|for|of|between the? oil? pressure? gauge",
        ),
        shows={
            **dict.fromkeys(
                (_S.LEAKING, _S.BURST, _S.CRACKED, _S.BROKEN, _S.HOLED, _S.CAME_OFF),
                _LINE_LEAKS,
            ),
            _S.CRUSHED: ("gauge_line_kinked",),
            _S.BLOCKED: ("gauge_line_sludged",),
        },
        rules_out={
            _S.CLEAN: ("gauge_line_sludged",),
            _S.DRY: _LINE_LEAKS,
            _S.FINE: _LINE_LEAKS,
            _S.TIGHT: _LINE_LEAKS,
        },
        holds=dict.fromkeys((Substance.SLUDGE, Substance.DEBRIS), ("gauge_line_sludged",)),
    ),
    Thing(
        family="bulb",
        names=("warning? lamp|light bulb|filament", "bulb|filament"),
        shows=dict.fromkeys(
            (_S.BROKEN, _S.FAULTY, _S.BURST, _S.ABSENT), ("lamp_dead_with_key_on",)
        ),
    ),
)

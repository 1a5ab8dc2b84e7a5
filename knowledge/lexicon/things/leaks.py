"""Where oil gets out, and what is smeared with it."""

from __future__ import annotations

from knowledge.lexicon.things.thing import State, Substance, Thing

_SEAL = ("seal_or_gasket_wet",)
_OUT = ("seal_found_pushed_out",)
_WEATHER = {State.LEAKING: _SEAL, State.PUSHED_OUT: _OUT, State.BURST: _OUT}
THINGS_LEAKS: tuple[Thing, ...] = (
    Thing(
        family="seal",
        names=(
            "rear|front main|crank|crankshaft|cam oil? seal|seals",
            "rear main",
            "crankshaft|crank|camshaft|cam front|rear|nose|back oil? seal|seals",
            "rear|front|crank|crankshaft|cam|camshaft|nose|timing|output oil? seal|seals",
            "rope|lip|scroll seal",
            "prop|propeller|nose|shaft|rear|front|output shaft|crankshaft|crank|flange? oil? seal|seals",
        ),
        shows=_WEATHER,
        rules_out={State.DRY: _SEAL},
    ),
    Thing(
        family="gasket",
        names=(
            "sump|pan|timing|valve|rocker|tappet|cam|pushrod|side|inspection cover? gasket|gaskets|seal|seals|"
            "joint",
            "oil pan|sump gasket|seal",
            "cylinder|barrel base gasket|seal|joint",
            "pushrod tube|tubes seal|seals?",
            "seals|gaskets|gasket|seal",
        ),
        shows=_WEATHER,
        rules_out={State.DRY: _SEAL},
    ),
    Thing(
        family="gasket",
        names=("cylinder? head gasket|gaskets", "headgasket"),
        shows={State.LEAKING: _SEAL},
        rules_out={State.DRY: _SEAL},
    ),
    Thing(
        family="cover",
        names=(
            "rocker|valve|cam|tappet cover|covers|box|boxes",
            "rocker|cam box",
        ),
        shows={State.LEAKING: _SEAL, State.LOOSE: ("rocker_cover_loose",)},
        rules_out={State.DRY: _SEAL, State.TIGHT: ("rocker_cover_loose",)},
        holds={Substance.SLUDGE: ("sludge_seen",)},
    ),
    Thing(
        family="cover",
        names=("timing|front|chain cover|case", "side|inspection|pushrod cover|plate"),
        shows={State.LEAKING: _SEAL, State.PUSHED_OUT: _OUT},
        rules_out={State.DRY: _SEAL},
    ),
    Thing(
        family="bellhousing",
        names=("bellhousing|clutch|flywheel", "bell housing"),
        shows={State.LEAKING: ("oil_from_bellhousing",)},
        rules_out={State.DRY: ("oil_from_bellhousing",)},
        holds={Substance.OIL: ("oil_from_bellhousing",)},
    ),
    Thing(
        family="drain",
        names=(
            "oil? sump? drain plug|tap|valve|cock|bolt",
            "oil? sump plug",
            "quick drain",
            "oil plug|drain",
        ),
        shows={
            State.LOOSE: ("drain_plug_found_loose",),
            State.ABSENT: ("drain_plug_found_loose",),
            State.CAME_OFF: ("drain_plug_found_loose",),
            State.LEAKING: ("drain_plug_found_loose",),
            State.STUCK_OPEN: ("drain_plug_found_loose",),
            State.WRONG: ("drain_valve_wrong",),
        },
        rules_out={
            State.TIGHT: ("drain_plug_found_loose",),
            State.DRY: ("drain_plug_found_loose",),
            State.CLEAN: ("plug_fur_only",),
        },
        holds={
            Substance.METAL: ("magnetic_metal",),
            Substance.STEEL: ("magnetic_metal",),
            Substance.DUST: ("plug_fur_only",),
            Substance.WATER: ("water_at_the_drain",),
            Substance.COOLANT: ("water_at_the_drain",),
        },
        gives={
            Substance.WATER: ("water_at_the_drain",),
            Substance.COOLANT: ("water_at_the_drain",),
        },
    ),
    Thing(
        family="magnet",
        names=("magnet|magnets", "magnetic drain|sump? plug"),
        rules_out={State.CLEAN: ("magnetic_metal",)},
        holds={
            Substance.METAL: ("magnetic_metal",),
            Substance.STEEL: ("magnetic_metal",),
            Substance.DUST: ("plug_fur_only",),
        },
    ),
    Thing(
        family="filler",
        names=(
            "oil? filler cap|lid",
            "oil cap|lid",
            "oil? dipstick cap|o-ring",
            "filler",
            "dipstick tube",
        ),
        shows={
            State.ABSENT: ("filler_cap_found_off",),
            State.CAME_OFF: ("filler_cap_found_off",),
            State.LOOSE: ("filler_cap_found_off",),
            State.PUSHED_OUT: ("dipstick_pushed_out",),
        },
        rules_out={State.TIGHT: ("filler_cap_found_off",)},
        holds={
            Substance.CREAM: ("cream_in_filler_only",),
            Substance.WATER: ("cream_in_filler_only",),
            Substance.SLUDGE: ("sludge_seen",),
        },
    ),
    Thing(
        family="breather",
        names=(
            "crankcase? breather|breathers hose|pipe|tube|filter|valve?",
            "pcv valve|hose|system?",
            "crankcase vent|ventilation hose|valve?",
        ),
        shows={
            State.BLOCKED: ("breather_found_blocked",),
            State.CRUSHED: ("breather_found_blocked",),
            State.STUCK: ("breather_found_blocked",),
            State.STUCK_SHUT: ("breather_found_blocked",),
            State.REVERSED: ("breather_misrouted",),
        },
        rules_out={
            State.CLEAN: ("breather_found_blocked",),
            State.FINE: ("breather_found_blocked",),
        },
        holds={Substance.ICE: ("breather_found_blocked",)},
    ),
    Thing(
        family="plug",
        names=(
            "core|cup|freeze|welch|frost|expansion plug|plugs",
            "soft plug|plugs",
        ),
        shows={
            State.ABSENT: ("cup_plug_found_out",),
            State.CAME_OFF: ("cup_plug_found_out",),
            State.PUSHED_OUT: ("cup_plug_found_out",),
            State.LEAKING: ("cup_plug_found_out",),
        },
    ),
    Thing(
        family="pad",
        names=(
            "vacuum|fuel|power|steering pump gasket|pad|base?",
            "tach|tacho|tachometer|governor|magneto|accessory drive|pad|gasket|base",
            "governor|vacuum-pump|tach-drive",
        ),
        shows={State.LEAKING: ("accessory_pad_wet",)},
        rules_out={State.DRY: ("accessory_pad_wet",)},
    ),
    Thing(
        family="outside",
        names=(
            "outside|exterior of? the? engine|block?",
            "engine|motor|car|undercarriage? bay|compartment|room",
            "side of the? engine|block",
        ),
        rules_out={State.DRY: ("oil_seen_outside",)},
        holds={Substance.OIL: ("oil_seen_outside",)},
    ),
    Thing(
        family="engine",
        names=("engine|motor|block",),
        rules_out={State.DRY: ("oil_seen_outside",)},
        holds={Substance.OIL: ("oil_seen_outside",)},
    ),
    Thing(
        family="outside",
        names=(
            "cowl|cowling|fuselage|airframe|windscreen|windshield|bonnet|hood|tailgate|bumper|transom|hull|belly|wing|wheel|"
            "wheels|tyre|tire|tyres|tires|fairing|tailplane|boots|exhaust|leg|visor|underside|belly-pan|bodywork",
            "rear wheel|tyre|tire|window|bumper|screen",
        ),
        rules_out={State.DRY: ("oil_on_bodywork",), State.CLEAN: ("oil_on_bodywork",)},
        holds={Substance.OIL: ("oil_on_bodywork",)},
    ),
    Thing(
        family="outside",
        names=(
            "ground|floor|driveway|road|tarmac|concrete|garage|hangar|cardboard|drip-tray|carpark",
            "drip|catch tray|pan",
            "garage|shop|hangar|workshop floor",
        ),
        rules_out={State.DRY: ("oil_on_the_ground",), State.CLEAN: ("oil_on_the_ground",)},
        holds={Substance.OIL: ("oil_on_the_ground",)},
    ),
    Thing(
        family="outside",
        names=("bilge|bilges water|pump?",),
        rules_out={
            State.DRY: ("oil_in_the_bilge",),
            State.CLEAN: ("oil_in_the_bilge",),
        },
        holds={Substance.OIL: ("oil_in_the_bilge",)},
    ),
)

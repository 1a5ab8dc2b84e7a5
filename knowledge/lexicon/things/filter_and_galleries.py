"""Filter, cooler, oil lines and galleries, and what their states are called in the book."""

from __future__ import annotations

from knowledge.lexicon.things.thing import State, Substance, Thing

_METAL = {
    Substance.METAL: ("metal_in_filter",),
    Substance.STEEL: ("metal_in_filter", "magnetic_metal"),
    Substance.COPPER: ("metal_in_filter", "copper_flakes"),
    Substance.BEARING: ("metal_in_filter", "lining_strip"),
    Substance.SOFT: ("metal_in_filter", "bright_soft_metal"),
}
_CLEAN = ("metal_in_filter", "filter_packed")
_GALLERY = "gallery|galley|oilway"
_PASSAGE = (
    "tunnel|tunnels|channel|channels|rail|rails|passage|passages|duct|ducts|drilling|drillings"
)
_HOLE = "hole|holes|passage|passages|way|ways|drilling|drillings|feed|feeds|channel|port|ports"
_STOPS = dict.fromkeys(
    (
        Substance.METAL,
        Substance.DEBRIS,
        Substance.SLUDGE,
        Substance.SEALER,
        Substance.GASKET,
        Substance.CLOTH,
        Substance.GREASE,
        Substance.CARBON,
        Substance.SAND,
    ),
    ("gallery_found_blocked",),
)
THINGS_DELIVERY: tuple[Thing, ...] = (
    Thing(
        family="filter",
        names=(
            "oil? filter|filters can|canister|cartridge|housing|bowl|element|pleats|paper|media|basket?",
            "oil? filter housing? cap|lid|cover|top|bowl",
            "filter element|cartridge|pleats|paper",
            "spin-on|screw-on oil? can|canister|filter|cartridge|unit|thing?",
            "spin|screw on can|canister|filter|cartridge|unit",
            "metal|filter|oil can looks|has|is|was|thing|body",
            "paper|pleats|folds|media|core|tube in|inside|from|of|out the? oil? can|filter|element|cartridge",
            "pleats|filter-paper",
        ),
        later=("element", "pleats", "cartridge", "can", "canister", "paper", "media"),
        shows={
            State.BLOCKED: ("filter_packed",),
            State.BULGED: ("filter_bulged",),
            State.BURST: ("filter_burst",),
            State.LEAKING: ("filter_seat_leaks",),
            State.LOOSE: ("filter_found_loose",),
            State.CAME_OFF: ("filter_found_loose",),
            State.CRUSHED: ("filter_collapsed",),
            State.TORN: ("filter_collapsed",),
            State.CRACKED: ("filter_burst",),
            State.HOLED: ("filter_can_holed",),
            State.WRONG: ("filter_not_listed",),
            State.COLD: ("filter_stays_cold",),
            State.EMPTY: ("filter_empty_after_standing",),
            State.REVERSED: ("filter_misfitted",),
        },
        rules_out={
            State.CLEAN: _CLEAN,
            State.FINE: ("filter_collapsed", "filter_packed"),
            State.TIGHT: ("filter_found_loose",),
            State.DRY: ("filter_seat_leaks",),
        },
        holds={
            **_METAL,
            Substance.DUST: ("fine_dust_only",),
            Substance.SLUDGE: ("filter_packed",),
            Substance.CARBON: ("carbon_flakes",),
            Substance.SEALER: ("sealer_in_filter",),
            Substance.GASKET: ("gasket_shreds_found",),
            Substance.CREAM: ("milky_film_in_filter",),
            Substance.SAND: ("hard_chips",),
        },
    ),
    Thing(
        family="filter",
        names=(
            "oil? filter gasket|seal|o-ring|oring|ring|seals",
            "oil? filter mount|base|seat|adapter|adaptor|flange|stand|head|adapter?",
            "oil? filter housing gasket|seal",
        ),
        shows={
            State.LEAKING: ("filter_seat_leaks",),
            State.BURST: ("filter_burst",),
            State.PUSHED_OUT: ("filter_burst",),
            State.REVERSED: ("filter_misfitted",),
            State.TORN: ("filter_seat_leaks",),
            State.CUT: ("filter_seat_leaks",),
            State.ABSENT: ("filter_misfitted",),
            State.STUCK: ("filter_misfitted",),
            State.LOOSE: ("filter_seat_leaks",),
        },
        rules_out={State.DRY: ("filter_seat_leaks",)},
    ),
    Thing(
        family="filter",
        names=(
            "adapter|adaptor|sandwich|base|bracket|holder|mount|mounting|relocation plate? gasket|seal|joint|o-ring|oring",
            "oil? filter adapter|adaptor|sandwich|base|bracket|holder|mount|mounting|stand|flange|head|block plate? gasket|seal|joint|o-ring|oring",
            "oil? filter head|base|bracket|housing|holder to|and block|engine|motor joint|gasket|seal?",
            "flat? paper? gasket|seal|joint|o-ring|ring behind|under|between|of|on|at|for the? oil? filter adapter|adaptor|bracket|holder|base|mount|mounting|housing|head|stand|sandwich plate?",
        ),
        shows={
            State.LEAKING: ("filter_seat_leaks",),
            **dict.fromkeys(
                (
                    *(State.TORN, State.CUT, State.BROKEN, State.CRACKED, State.PUSHED_OUT),
                    *(State.ABSENT, State.CAME_OFF, State.BENT, State.CRUSHED, State.SHIFTED),
                ),
                ("adapter_gasket_displaced",),
            ),
        },
        rules_out={
            State.DRY: ("filter_seat_leaks",),
            **dict.fromkeys(
                (State.FINE, State.WHOLE, State.IN_PLACE), ("adapter_gasket_displaced",)
            ),
        },
    ),
    Thing(
        family="filter",
        names=(
            "non-return|nonreturn|check|one-way|drain-back|anti-drain membrane|flap|disc|disk|rubber|diaphragm|skirt|valve? in|inside|of? the? filter?",
            "rubber|rubbery|silicone disc|disk|ring|skirt|lip|membrane|flap behind|over|under|inside|covering the? little|small|inlet|ring? of? holes",
            "rubber|rubbery|silicone disc|disk|ring|skirt|lip|membrane|flap|valve that|which holds|keeps|stops the? oil in|from|back|draining? the? tractor's|filter?",
            "anti-drainback|anti-drain-back|antidrain|antidrainback|drainback|nonreturn|non-return valve|flap|"
            "diaphragm",
            "anti drain|drainback back? valve|flap|diaphragm?",
            "rubber|silicone|little|drain-back|drainback flap|diaphragm|check-valve|membrane",
        ),
        shows={
            State.HARD: ("anti_drainback_hard",),
            State.TORN: ("anti_drainback_hard",),
            State.ABSENT: ("anti_drainback_hard",),
            State.BROKEN: ("anti_drainback_hard",),
            State.STUCK_OPEN: ("anti_drainback_hard",),
        },
        rules_out={State.FINE: ("anti_drainback_hard",)},
    ),
    Thing(
        family="filter",
        names=(
            "oil? filter? bypass|by-pass valve|spring|ball|plunger?",
            "filter relief|by-pass|pressure valve?",
            "filter valve",
            "bypass|by-pass|valve|ball|door in|inside|of the? oil? filter head|housing|base|mount|adapter?",
            "little|small? spring|sprung|spring-loaded door|flap|gate|lid|valve that|beside|behind|by|in|which|next? lets|to|oil|round|the? oil|the|round? filter|round? the? filter?",
        ),
        shows={
            State.STUCK_OPEN: ("filter_bypass_stuck_open",),
            State.BROKEN: ("filter_bypass_stuck_open",),
            State.ABSENT: ("filter_bypass_stuck_open",),
            State.CAME_OFF: ("filter_bypass_stuck_open",),
            State.CRACKED: ("filter_bypass_stuck_open",),
            State.STUCK_SHUT: ("filter_bypass_stuck_shut",),
            State.REVERSED: ("bypass_valve_misfitted",),
            State.WRONG: ("bypass_valve_misfitted",),
        },
        rules_out=dict.fromkeys(
            (State.FREE, State.FINE), ("filter_bypass_stuck_open", "filter_bypass_stuck_shut")
        ),
    ),
    Thing(
        family="cooler",
        names=(
            "oil? cooler core|matrix?",
            "oil|engine-oil radiator|heat-exchanger|intercooler",
            "oil heat exchanger",
            "radiator|cooler for the? oil",
        ),
        shows={
            State.BLOCKED: ("cooler_found_blocked",),
            State.CRUSHED: ("cooler_found_blocked",),
            State.COLD: ("cooler_stays_cold",),
            State.LEAKING: ("oil_line_fitting_wet",),
            State.BURST: ("oil_line_found_broken",),
            State.CRACKED: ("oil_line_found_broken",),
            State.HOLED: ("oil_line_found_broken",),
        },
        rules_out={
            State.CLEAN: ("cooler_found_blocked",),
            State.FINE: ("cooler_found_blocked", "coolant_gets_in", "oil_line_found_broken"),
            State.DRY: ("oil_line_fitting_wet",),
        },
        holds=dict.fromkeys(
            (Substance.METAL, Substance.SLUDGE, Substance.DEBRIS), ("cooler_found_blocked",)
        ),
    ),
    Thing(
        family="line",
        names=(
            "oil? cooler? line|lines|hose|hoses|pipe|pipes",
            "oil feed|supply|delivery|return|pressure line|hose|pipe",
            "flexible|flexi|rubber oil? line|hose|pipe",
            "braided line|hose",
            "line|lines|hose|hoses|pipe|pipes between|from|to|on the|my|its? remote|oil? cooler|filter|engine|block|turbo|tank and? the? cooler|filter|engine|block|tank|head?",
            "remote|oil? filter|cooler hose|hoses|line|lines|pipe|pipes",
        ),
        later=("hose", "hoses", "pipe", "line", "union"),
        shows={
            State.BURST: ("oil_line_found_broken",),
            State.BROKEN: ("oil_line_found_broken",),
            State.CRACKED: ("oil_line_found_broken",),
            State.HOLED: ("oil_line_found_broken",),
            State.CAME_OFF: ("oil_line_found_broken",),
            State.TORN: ("oil_line_found_broken",),
            State.LEAKING: ("oil_line_fitting_wet",),
            State.LOOSE: ("oil_line_fitting_wet",),
            State.CRUSHED: ("cooler_found_blocked",),
            State.BLOCKED: ("cooler_found_blocked",),
            State.HARD: ("oil_hoses_aged",),
            State.REVERSED: ("remote_hoses_crossed",),
        },
        rules_out={
            State.DRY: ("oil_line_fitting_wet",),
            State.FINE: ("oil_line_found_broken",),
            State.TIGHT: ("oil_line_fitting_wet",),
        },
    ),
    Thing(
        family="line",
        names=(
            "inner|inside|internal? liner|lining|skin|wall|tube of|in|inside the|a|my|one? oil? cooler|oil|feed|return? hose|hoses|line",
            "inner|inside|internal liner|lining|skin",
        ),
        shows={
            State.LOOSE: ("cooler_found_blocked",),
            State.CAME_OFF: ("cooler_found_blocked",),
            State.CRUSHED: ("cooler_found_blocked",),
            State.TORN: ("cooler_found_blocked",),
        },
    ),
    Thing(
        family="line",
        names=(
            "oil|cooler|hose line|hose|pipe? fitting|fittings|union|unions|connection|connections|coupling|banjo|"
            "clamp",
            "banjo bolt|fitting|union?",
            "oil? cooler|line|hose fitting|union|connection|banjo|nut|clamp|mount",
        ),
        shows={
            State.LEAKING: ("oil_line_fitting_wet",),
            State.LOOSE: ("oil_line_fitting_wet",),
            State.BROKEN: ("oil_line_found_broken",),
            State.CRACKED: ("oil_line_found_broken",),
            State.CAME_OFF: ("oil_line_found_broken",),
        },
        rules_out={
            State.DRY: ("oil_line_fitting_wet",),
            State.TIGHT: ("oil_line_fitting_wet",),
        },
    ),
    Thing(
        family="gallery",
        names=(
            f"oil? {_GALLERY} plug|plugs|plug's|screw|screws|stopper|stoppers|blank|blanks",
            f"oil {_PASSAGE} plug|plugs|screw|screws|stopper|stoppers|blank|blanks",
            f"little|small|closing|blanking|brass? plug|plugs|screw|screws|stopper|stoppers|cup|cups|closers that|which|of|in|at|on|closing|for|sealing|end? close|seal|of|stop|up? the? end? of? the? oil? {_PASSAGE}|{_GALLERY}",
            "oil? passage|hole|feed plug|plugs",
            "oil|pipe plug|plugs",
            "plug|plugs behind|under|beneath the? distributor|dizzy|cam|camshaft|timing|flywheel|intake|manifold gear|cover|plate|chain|sprocket?",
            f"cup|core|welch|pipe|plug? plug|plugs in|at|of|on the? end|front|back|rear? of? the? oil? {_GALLERY}",
        ),
        later=("plug", "plugs"),
        shows={
            State.ABSENT: ("gallery_plug_found_missing",),
            State.LOOSE: ("gallery_plug_found_missing",),
            State.CAME_OFF: ("gallery_plug_found_missing",),
            State.PUSHED_OUT: ("gallery_plug_found_missing",),
            State.LEAKING: ("gallery_plug_found_missing",),
            State.REVERSED: ("gallery_plug_in_wrong_passage",),
        },
        rules_out={
            State.FINE: ("gallery_plug_found_missing",),
            State.TIGHT: ("gallery_plug_found_missing",),
        },
    ),
    Thing(  # some of them: sound ones leave the others open
        family="gallery",
        names=(
            f"front|rear|outer|visible oil? {_GALLERY} plug|plugs",
            "front|rear|outer|visible oil? passage|hole|feed|oilway? plug|plugs",
        ),
    ),
    Thing(
        family="gallery",
        names=(
            f"main|oil? {_GALLERY} passage|hole?",
            "main|oil? galleries|oilways",
            f"oil|oiling|crank|feed|bearing {_HOLE}",
            f"main|oil? oil {_PASSAGE}",
            f"main {_PASSAGE}",
            f"{_PASSAGE} that|which takes|carries|brings|feeds|lets the? oil through|to|into the? block|engine?",
        ),
        shows={State.BLOCKED: ("gallery_found_blocked",), State.CRACKED: ("gallery_wall_weeps",)},
        rules_out={State.CLEAN: ("gallery_found_blocked",)},
        holds=_STOPS,
    ),
    Thing(
        family="gallery",
        names=(
            f"{_GALLERY} o-ring|oring|seal|gasket",
            "oil feed|transfer|supply tube? o-ring|oring|seal|gasket",
            "feed tube o-ring|oring|seal?",
            "quill seal|o-ring|oring",
            f"rubber? ring|seal|o-ring|oring|gasket of|on|in|at|from|for the? oil {_PASSAGE}|{_GALLERY}",
            f"rubber? ring|seal|o-ring|oring|gasket of|on|in|at|from|for the? {_GALLERY}",
            "rubber? ring|seal|o-ring|oring on|at|of the? pipe|tube that|which takes|carries|feeds|brings oil",
            "oil? feed|transfer|supply|jumper|cross pipe|tube o-ring|oring|seal|gasket|ring",
        ),
        shows=dict.fromkeys(
            (
                *(State.TORN, State.HARD, State.ABSENT, State.CRUSHED, State.LEAKING, State.CUT),
                *(State.CRACKED, State.BROKEN, State.PUSHED_OUT, State.FAULTY, State.RUINED),
            ),
            ("gallery_seal_found_bad",),
        ),
        rules_out={State.FINE: ("gallery_seal_found_bad",)},
    ),
    Thing(
        family="gallery",
        names=(
            "crank|crankshaft|crank-end end? oil? feed|quill oil? seal|o-ring",
            "oil? feed seal|o-ring to|for|of|at|on the? crank|crankshaft end?",
            "end feed|fed seal|o-ring",
            "oil? rubber? seal|o-ring|rubber|ring on|at|in|of|for|to|into the? crank's|crankshaft's|crank|crankshaft tip|nose|snout|end",
            "crank's|crankshaft's|crank|crankshaft nose|tip|snout|end|end-feed oil? feed? seal|o-ring|rubber|ring , through|which|where|that",
            "crank|crankshaft|crank's|crankshaft's nose|tip|snout|end oil? feed seal|o-ring|rubber|ring",
            "rubber|seal|ring|o-ring in|on the? timing|side|end? cover|case where|through|which|that the|feeds|passes|which? oil goes|enters|gets|passes|into in|into|to? the? crank|crankshaft",
            "crank|crankshaft end oil? seal lip?",
            "oil? seal in the? timing cover that|which feeds|feeding? the? crank|crankshaft end?",
            "timing cover oil? seal that|which feeds the? crank|crankshaft end?",
        ),
        shows=dict.fromkeys(
            (
                *(State.TORN, State.HARD, State.ABSENT, State.CRUSHED, State.LEAKING),
                *(State.WORN, State.CUT, State.REVERSED, State.FAULTY, State.RUINED),
            ),
            ("crank_feed_seal_bad",),
        ),
        rules_out={State.FINE: ("crank_feed_seal_bad",)},
    ),
)

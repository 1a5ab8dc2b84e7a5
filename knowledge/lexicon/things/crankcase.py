"""Block, cylinders, pistons and rods, and what their states are called in the book."""

from __future__ import annotations

from knowledge.lexicon.things.thing import State, Thing

_S = State
_SCORED = ("bores_or_pistons_scored",)
_OPEN = (_S.BROKEN, _S.CRACKED, _S.HOLED)
_ROD = "rod|rods|conrod|conrods|con-rod|con-rods"
THINGS_CRANKCASE: tuple[Thing, ...] = (
    Thing(
        family="other",
        names=(
            "cylinder|cylinders|engine|wet|dry? liner|liners|sleeve|sleeves|barrel|barrels|jug|jugs skirt|wall|walls?",
            "cylinder|cylinders|bore|bores|liner|liners wall|walls|skirt|shirt|inside|lining|surface",
            "cylinder|cylinders|liner|liners|bores",
            "cylinder|cylinders|bore|liner number|nr|no? @number",
            "wall|walls|inside|bottom|skirt of|in the? cylinder|cylinders|bore|bores|liner|liners|barrel|barrels",
            "inside? of? the? tube|tubes|pipe|hole|holes the|that|where|which|for? the? piston|pistons|plunger slides|slide|runs|run|goes|go|moves|move|works|sits in|up? and? down?",
        ),
        shows={
            **dict.fromkeys(_OPEN, ("liner_broken",)),
            **dict.fromkeys((_S.SCORED, _S.WIPED), _SCORED),
        },
        rules_out={_S.FINE: ("liner_broken", *_SCORED), _S.WHOLE: ("liner_broken",)},
    ),
    Thing(
        family="other",
        names=(
            "piston|pistons skirt|skirts|crown|crowns|sides?",
            "slug|slugs",
            "skirt|skirts|side|sides of|on the? piston|pistons",
        ),
        shows=dict.fromkeys((_S.SCORED, _S.WIPED), _SCORED),
        rules_out={_S.FINE: _SCORED},
    ),
    Thing(
        family="engine",
        names=(
            "engine|cylinder? block casting|wall|side|web",
            "side|wall|web|bottom|skirt of|in the? block|crankcase|engine|casting",
            "crankcase wall|side|casting|web|half",
            "engine|motor house|housing|casing|case|casting",
        ),
        shows=dict.fromkeys(_OPEN, ("block_cracked",)),
        rules_out={_S.FINE: ("block_cracked",), _S.WHOLE: ("block_cracked",)},
    ),
    Thing(
        family="other",
        names=(
            f"connecting|con? {_ROD} number|nr|no? @number?",
            "piston|push-pull arm|arms|rod|rods|leg",
        ),
        shows={
            _S.BROKEN: ("rod_broken",),
            _S.CAME_OFF: ("rod_broken",),
            _S.UNPLUGGED: ("rod_broken",),
            _S.BENT: ("rod_or_crank_bent",),
            _S.CRUSHED: ("rod_or_crank_bent",),
        },
        rules_out={
            _S.WHOLE: ("rod_broken",),
            _S.STRAIGHT: ("rod_or_crank_bent",),
            _S.FINE: ("rod_broken", "rod_or_crank_bent"),
        },
    ),
    Thing(
        family="main bores",
        names=(
            "main|mains|crank bearing? bores|bore|tunnel|tunnels|saddles|saddle|housings",
            "saddle|saddles|tunnel|line-bore",
            "bearing saddles|bores|tunnel|tunnels",
            "bores|holes|saddles|housings for|of|where the? main|mains|crank bearings|shells|lies|sits|runs|turns?",
        ),
        shows=dict.fromkeys(
            (_S.OUT_OF_LINE, _S.BENT, _S.OVAL, _S.SHIFTED), ("main_bores_out_of_line",)
        ),
        rules_out=dict.fromkeys(
            (_S.FINE, _S.TRUE, _S.STRAIGHT, _S.IN_LINE), ("main_bores_out_of_line",)
        ),
    ),
)

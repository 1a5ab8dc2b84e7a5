"""The relief valve's parts, and what their states are called in the book."""

from __future__ import annotations

from knowledge.lexicon.things.thing import State, Substance, Thing

_IN_IT = ("debris_on_relief_seat",)
_STICKS = ("relief_found_stuck", "relief_plunger_sticks")
_BAD = ("relief_found_bad",)
_HOLDS = dict.fromkeys(
    (
        Substance.METAL,
        Substance.DEBRIS,
        Substance.COPPER,
        Substance.BEARING,
        Substance.STEEL,
        Substance.SOFT,
        Substance.SLUDGE,
        Substance.CARBON,
        Substance.SEALER,
        Substance.GASKET,
        Substance.PLASTIC,
        Substance.SAND,
    ),
    _IN_IT,
)
_NAME = "relief|release|regulating|limiting|dump|let-off|blow-off|blowoff|safety|spill"
THINGS_RELIEF: tuple[Thing, ...] = (
    Thing(
        family="relief",
        names=(
            f"oil? pressure? {_NAME} valve|plunger|piston|ball|poppet plunger|piston|ball|poppet?",
            "oil? pressure regulator valve|plunger|piston?",
            "oil regulator valve|plunger|piston?",
            "oil|regulating|regulator|control pistons|piston",
            "=regulator|pressure-regulator",
            "oprv|prv",
            "=relief",
            "blow|let off valve|piston|plunger",
            "oil? pressure|pressure-control valve|piston|plunger|slug",
            "valve|piston|plunger|slug that|which? regulating|regulates|controls|controlling|limits|limiting the? oil? pressure",
        ),
        later=("plunger", "piston", "ball", "poppet", "valve", "regulator", "slug", "bullet"),
        shows={
            State.STUCK: ("relief_found_stuck",),
            State.STUCK_OPEN: ("relief_valve_stayed_open",),
            State.STUCK_SHUT: ("relief_valve_stayed_shut",),
            State.SCORED: ("relief_seat_scored",),
            State.WORN: ("relief_seat_scored",),
            State.ABSENT: ("relief_part_absent",),
            State.REVERSED: ("relief_parts_not_standard",),
            State.WRONG: ("relief_parts_not_standard",),
            State.LOOSE: ("relief_piston_loose",),
            **dict.fromkeys((State.FAULTY, State.BROKEN, State.RUINED, State.OVER), _BAD),
        },
        rules_out={
            State.FREE: _STICKS,
            State.CLEAN: _IN_IT,
            State.FINE: ("relief_found_stuck", "relief_seat_scored", *_BAD),
        },
        holds=_HOLDS,
    ),
    Thing(
        family="relief",
        names=(
            f"oil? pressure? {_NAME} valve? springs|spring",
            "regulator|pressure valve? spring",
            "oil? piston|plunger|pressure spring|springs",
            "spring of|from|in|for the? oil? pressure|relief|release|regulating valve|regulator",
        ),
        later=("spring", "springs"),
        shows={
            State.SHORT: ("relief_spring_short_or_broken",),
            State.OVER: ("relief_spring_short_or_broken",),
            State.FAULTY: ("relief_spring_short_or_broken",),
            State.BROKEN: ("relief_spring_short_or_broken",),
            State.BENT: ("relief_spring_short_or_broken",),
            State.CRUSHED: ("relief_spring_short_or_broken",),
            State.WORN: ("relief_spring_short_or_broken",),
            State.CRACKED: ("relief_spring_short_or_broken",),
            State.ABSENT: ("relief_part_absent",),
            State.WRONG: ("relief_parts_not_standard",),
        },
        rules_out={State.FINE: ("relief_spring_short_or_broken",)},
    ),
    Thing(
        family="relief",
        names=(
            f"oil? pressure? {_NAME} valve? plunger|piston|ball? seat|bore|seating|hole",
            "regulator valve? seat|bore",
        ),
        later=("seat", "bore"),
        shows={
            State.SCORED: ("relief_seat_scored",),
            State.WORN: ("relief_seat_scored",),
            State.FAULTY: ("relief_seat_scored",),
            State.CRACKED: ("relief_seat_scored",),
        },
        rules_out={State.CLEAN: _IN_IT, State.FINE: ("relief_seat_scored",)},
        holds=_HOLDS,
    ),
    Thing(
        family="relief",
        names=(
            f"oil? pressure? {_NAME} valve? cap|plug|nut|cover|bolt",
            "regulator cap|plug|nut",
            "oil? pressure valve cap|plug|nut|bolt",
            "dome|domed|cap|hex|big|acorn nut|plug|cap on|of|over|above|for the? relief|release|regulator|pressure|let-off valve|spring?",
            "cap|plug|nut|dome|bolt on|of|over|for|holding the? relief|release|regulator|pressure|let-off valve|spring?",
        ),
        shows={
            State.LOOSE: ("relief_cap_loose_or_leaking",),
            State.LEAKING: ("relief_cap_loose_or_leaking",),
            State.ABSENT: ("relief_cap_loose_or_leaking",),
            State.CAME_OFF: ("relief_cap_loose_or_leaking",),
        },
        rules_out={
            State.TIGHT: ("relief_cap_loose_or_leaking",),
            State.DRY: ("relief_cap_loose_or_leaking",),
        },
    ),
    Thing(
        family="relief",
        names=(f"{_NAME} valve? return|drain|outlet|bypass passage|gallery|hole|port|drilling?",),
        shows={State.BLOCKED: ("relief_return_blocked",)},
        rules_out={State.CLEAN: ("relief_return_blocked",)},
    ),
)

"""The shape of a part or place: its names, and which findings its states and contents are."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum


class State(StrEnum):
    """How a part was found."""

    BLOCKED = "blocked"
    CLEAN = "clean"
    STUCK = "stuck"
    STUCK_OPEN = "stuck open"
    STUCK_SHUT = "stuck shut"
    FREE = "free"
    WORN = "worn"
    PITTED = "pitted"
    SCORED = "scored"
    BROKEN = "broken"
    CRACKED = "cracked"
    HOLED = "holed"
    LOOSE = "loose"
    TIGHT = "tight"
    ABSENT = "missing"
    CAME_OFF = "came off"
    BENT = "bent"
    CRUSHED = "crushed"
    LEAKING = "leaking"
    DRY = "dry"
    TORN = "torn"
    CUT = "cut"
    HARD = "hard"
    REVERSED = "reversed"
    WRONG = "wrong"
    FINE = "fine"
    COLD = "cold"
    BURST = "burst"
    BULGED = "bulged"
    EMPTY = "empty"
    SHORT = "short"
    PUSHED_OUT = "pushed out"
    SHUT = "shut"
    WIPED = "wiped"
    COPPER = "worn to the copper"
    RUINED = "ruined"
    SPUN = "spun"
    OVAL = "oval"
    TRUE = "true"
    FLAT = "flat"
    ROUNDED = "rounded"
    STRIPPED = "stripped"
    FAULTY = "faulty"
    DIRTY = "dirty"
    UNPLUGGED = "unplugged"
    SHORTED = "open or shorted"
    OVER = "out of limits"
    IN_PLACE = "where it belongs"
    WHOLE = "whole"
    STRAIGHT = "straight"
    OUT_OF_LINE = "out of line"
    IN_LINE = "in line"
    SHIFTED = "shifted"


class Substance(StrEnum):
    """What lies where it should not."""

    OIL = "oil"
    METAL = "metal"
    DEBRIS = "debris"
    COPPER = "copper"
    BEARING = "bearing metal"
    SOFT = "soft bright metal"
    STEEL = "steel"
    DUST = "fine dust"
    SLUDGE = "sludge"
    CARBON = "carbon"
    SEALER = "sealer"
    GASKET = "gasket"
    PLASTIC = "plastic"
    CLOTH = "cloth"
    WATER = "water"
    COOLANT = "coolant"
    FUEL = "fuel"
    ICE = "ice"
    GREASE = "grease"
    SAND = "sand"
    CREAM = "cream"
    FOAM = "foam"


Findings = tuple[str, ...]


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Thing:
    """A part or place: its names, and which findings its states and what lies in it are.

    ``later``: short names, understood where a thing of the same ``family`` was named before.
    ``shows``: findings present in a state; ``rules_out``: findings absent in a state;
    ``holds``: findings present where the substance lies in it; ``gives``: where it came out of it.
    """

    family: str
    names: tuple[str, ...]
    later: tuple[str, ...] = ()
    shows: Mapping[State, Findings] = field(default_factory=dict)
    rules_out: Mapping[State, Findings] = field(default_factory=dict)
    holds: Mapping[Substance, Findings] = field(default_factory=dict)
    gives: Mapping[Substance, Findings] = field(default_factory=dict)

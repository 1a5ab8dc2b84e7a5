"""How many bearings of a kind an engine has: as its case says, else as is usual for its kind."""

from __future__ import annotations

from collections.abc import Mapping

from diagnose.case.case import BearingGroup, Case
from diagnose.fits.bearing import Kind
from knowledge.engines.features import DIESEL, VEE_ENGINE
from knowledge.engines.layouts import UNKNOWN
from knowledge.engines.layouts_old import SIDE_VALVE_V8
from knowledge.engines.profiles import Profile
from knowledge.model import Quantity
from knowledge.stations.bearings.quantities import MAIN_COUNT, ROD_COUNT

COUNTS: Mapping[Kind, Quantity] = {Kind.MAIN: MAIN_COUNT, Kind.ROD: ROD_COUNT}


FEW_MAINS = 3  #: of a side-valve V8 (from memory)
MOST_USUAL = 5  #: bearings of one kind in most engines whose count nobody said (judgement)


def count_of(case: Case, kind: Kind) -> int | None:
    """How many bearings of a kind the engine has; None where nothing says so."""
    own = own_counts(case)
    if kind in own:
        return own[kind]
    if kind is Kind.MAIN and Kind.ROD in own:
        return None  # of another engine of its kind
    profile = known_profile(case)
    return round(profile.numbers[COUNTS[kind].id][0]) if profile is not None else None


def own_counts(case: Case) -> dict[Kind, int]:
    """What the case says of its own engine, with the mains that go with its rods."""
    found = {}
    for kind, quantity in COUNTS.items():
        given = case.bearings.groups.get(kind, BearingGroup()).count
        stated = given or case.dimensions.get(quantity)
        if stated:
            found[kind] = round(stated)
    if Kind.ROD in found and Kind.MAIN not in found:
        mains = _mains(case, found[Kind.ROD])
        if mains is not None:
            found[Kind.MAIN] = mains
    return found


def _mains(case: Case, rods: int) -> int | None:
    """The main bearings of an engine with so many rods; None where several numbers are usual.

    A vee has two rods on each crankpin, and mains between all of them but in old side-valve ones
    (from memory: three in a V8 of the 1930s to 50s); a diesel has a main on both sides of each crankpin.
    """
    profile = known_profile(case)
    if profile is not None and profile.numbers[ROD_COUNT.id][0] == rods:
        return round(profile.numbers[MAIN_COUNT.id][0])
    if case.layout is SIDE_VALVE_V8:
        return FEW_MAINS
    if case.has(VEE_ENGINE):
        return rods // 2 + 1
    return rods + 1 if case.has(DIESEL) else None


def known_profile(case: Case) -> Profile | None:
    """Figures of this kind of engine; None where the case does not say which kind it is."""
    known = case.layout is not UNKNOWN or case.engine.profile is not None
    return case.profile if known else None


def each_measured(case: Case, kind: Kind) -> bool:
    """Whether every bearing of a kind was measured by its number: a figure of all adds none.

    Where nobody said how many there are, their numbers run on from 1 to as many as is usual.
    """
    numbers = {p.number for p in case.bearings.found if p.kind is kind and p.number}
    count = count_of(case, kind)
    if count is not None:
        return len(numbers) >= count
    rods = own_counts(case).get(Kind.ROD)
    least = rods + 1 if rods and kind is Kind.MAIN else MOST_USUAL
    return len(numbers) >= least and numbers == set(range(1, len(numbers) + 1))

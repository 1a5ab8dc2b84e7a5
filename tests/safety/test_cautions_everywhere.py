"""Every check, opening and task: words of a hazard have their caution beside them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

import pytest

from knowledge.access import Opening, openings_for
from knowledge.book import the_book
from knowledge.cautions import CAUTIONS, RUNNING
from knowledge.work import Access, Caution, Inspection, Phase
from tests.support.every import every

BOOK = the_book()
#: these a person has met on the way in; every other caution stands where the hazard is
MET_ON_THE_WAY = {Caution.LIFTING, Caution.BATTERY, Caution.WASTE}


@dataclass(frozen=True)
class Said:
    """What one check, opening or task says, and what it warns of."""

    id: str
    text: str
    cautions: frozenset[Caution]
    way: frozenset[Caution] = frozenset()  #: of the openings that lead there, on every layout


#: hazard: words that name it, and the cautions they call for
HAZARDS: dict[str, tuple[str, set[Caution]]] = {
    "spring": (
        r"\bsprings?\b|sprung|tensioner|relief (cap|plug|pin)\b|adjuster|relief valve out",
        {Caution.SPRING},
    ),
    "hot": (r"\bhot\b|oil warm|warm engine|warm, drained|exhaust", {Caution.HOT}),
    "lifting": (
        r"\bjack\b|vehicle on|\bhoist|from below|\bmounts\b|under the (engine|vehicle|sump)",
        {Caution.LIFTING},
    ),
    "heavy": (
        r"\bhoist|crankshaft out|camshaft out|lift the engine|engine out|between centres"
        r"|heads? (on|off)\b|flywheel|gearbox",
        {Caution.HEAVY},
    ),
    "running": (
        r"\bidle\b|idling|\bstart (it|and|the engine|cold)|\brevs\b|engine running|runs? briefly"
        r"|while it runs|\brun (it|two|the engine|warm|at)\b|first fire",
        {Caution.ROTATING, Caution.HOT, Caution.EXHAUST},
    ),
    "cranking": (
        r"cranking|cranked|\bcrank (it|a few|not|at most|in|into|ten|without)\b",
        {Caution.ROTATING, Caution.FIRE},
    ),
    "drill": (r"\bdrill\b|priming (tool|rod)", {Caution.PRIMING, Caution.EYES}),
    "solvent": (
        r"solvent|\bpetrol\b(?! (engine|boat))|gasket remover|cleaning fluid"
        r"|\bwash(ed|es|ing)?\b",
        {Caution.SOLVENT},
    ),
    "air": (
        r"\bblow|blown|\bair\b|pressure (tank|pot)|regulated tank|hand pump|bubble|known pressure"
        r"|cap's (pressure|figure)|test pressure",
        {Caution.PRESSURE},
    ),
    "chips": (
        r"\bblow|blown|compressed air|low air|\bgrind|\bdrill\b|splash",
        {Caution.EYES},
    ),
    "hand-turning": (
        r"turn\w* (the engine|the crank|it)\b[^|;:]*by hand|(crank|quarter turn)[^|;:]*by hand"
        r"|two (full )?(turns|revolutions)",
        {Caution.HAND_TURN},
    ),
    "filter cutting": (
        r"cut (it |the |a )?(filter|open)|filter[^|;:]*\bcut\b|filter cutter|pleats",
        {Caution.SHARP},
    ),
    "injection": (r"injector|injection|union nut|leak-off", {Caution.INJECTION}),
    "ignition": (r"plug lead|(earth one|coil) lead|coils on the plugs", {Caution.IGNITION}),
    "heat": (r"\bweld|\bbraz|\bflame|heater|\btorch|\bany heat\b", {Caution.FIRE}),
    "battery": (r"\bstarter|alternator|\bsender\b", {Caution.BATTERY}),
    "waste": (r"\bdrain (oil|hot|a little|the oil|through)|drained|filter off", {Caution.WASTE}),
    "used oil": (
        r"between the fingers|drained|filter off|drain (hot|the oil|a little)",
        {Caution.USED_OIL},
    ),
    "old gaskets": (
        r"dry scraping|old (sealer and )?gasket|gasket and sealer off|before scraping",
        {Caution.ASBESTOS},
    ),
    "boat": (r"\bboat\b", {Caution.BOAT}),
    "tractor": (r"tractors?\b", {Caution.TRACTOR}),
}

#: words that sound like a hazard and are none, and why; struck out before looking
HARMLESS_WORDS = {
    r"hot soapy water": "no hotter than for dishes",
    r"rated for hot oil": "says which hose to take",
    r"clear of (fan, belts and )?exhaust": "says where a hose is led, on an engine that stands",
    r"drill shanks?": "a drill's smooth end as a gauge, in the hand",
    r"crank not turned": "a thing left undone",
    r"idling for hours": "tells of the past",
    r"(no|before) grinding": "a thing left undone, or another shop's",
    r"blow-by": "gas past the rings, a name",
    r"it blows less": "the breather, felt by hand",
    r"oil blown around": "a stain, looked at",
    r"hammer blow": "a knock, no air",
    r"wipe or blow": "stands in 'do not wipe or blow'",
    r"blower": "a boat's fan, run to be safe",
    r"no air tools": "a thing left undone",
    r"the open air": "out of doors",
    r"air the crankcase": "vapour, warned of as fire",
    r"air side": "a turbocharger's, a name",
    r"in the air": "held free of everything",
    r"slowly in air": "cools by itself",
    r"it is drawing air": "what the pump does, a sign",
    r"no air leak": "what a tight joint does",
    r"warm air": "a gentle heater",
    r"wash marks": "a sign of wear, looked at",
    r"no washing": "a thing left undone",
    r"(no|never a) flame": "a thing left undone",
    r"(card|paper) under the engine": "laid there by hand from the side",
    r"oiled cloth and roll it between the fingers": "new oil on a clean cloth",
    r"no cranking": "a thing left undone",
    r"first two turns": "of a thread",
    r"boat: sea cock": "names where the water is shut, on a boat at rest",
    r"blow through hose and trap": "by mouth",
    r"ask the grinder": "a person",
}
HARMLESS = re.compile("|".join(HARMLESS_WORDS))

#: (id, hazard): why it needs no caution of its own there
EXCEPTIONS: dict[tuple[str, str], str] = {
    ("check_the_bypass_in_the_head", "spring"): "captive in the head, only pressed with a pick",
    ("auxiliary_shaft_clearance_fitted", "lifting"): "a jack shaft in the block, no jack",
    ("piston_jets_cleared", "spring"): "a jet's own little valve, not taken apart",
    ("cam_and_lifters_together", "spring"): "valve springs are only looked at",
    ("right_pump", "spring"): "a pump is chosen, nothing is opened",
    ("prime_and_watch_the_front", "spring"): "tensioners are only watched, the cover is off",
    ("listen_with_stethoscope", "heavy"): "flywheel noise is ruled out by ear",
    ("cooling_tested_tight", "heavy"): "the heads are on already",
    ("rear_plugs_in", "heavy"): "a bare block: the flywheel is not on yet",
    ("pump_turns_freely", "heat"): "felt again after somebody has welded",
    ("pickup_gap_checked_again", "heat"): "measured again after somebody has welded",
    ("sump_washed", "heat"): "baffles that came welded in",
    ("sump_sound", "heat"): "fittings that came welded in",
    ("wiggle_the_harness", "battery"): "the gauge must be live to be seen to jump",
    ("cranked_to_pressure", "battery"): "it is the battery that cranks it",
    ("blasted_parts_washed", "solvent"): "soapy water carries grit away",
    ("two_reliefs_in_place", "heavy"): "the flywheel end of an engine, a place",
    ("jet_valves_shut", "spring"): "a jet's own little valve, not taken apart",
    ("watch_its_feed", "injection"): "a two-stroke's oil pump, at no pressure that cuts",
    ("injection_oil_bled", "injection"): "a two-stroke's oil pump, at no pressure that cuts",
    ("level_for_splash", "chips"): "a way of oiling, the engine stands",
    ("filter_right_one", "old gaskets"): "the rubber ring of a filter",
}


def needs(tree: dict[Access, Opening], place: Access) -> set[Access]:
    """The place and everything that must be open for it."""
    return {place}.union(*(needs(tree, n) for n in tree[place].needs))


@cache
def trees() -> tuple[dict[Access, Opening], ...]:
    return tuple(openings_for(lambda f, o=layout: f in o.has) for layout in BOOK.layouts.values())  # type: ignore[misc]


@cache
def on_the_way(place: Access) -> frozenset[Caution]:
    """What a person is warned of on the way to a place, whatever the layout."""
    ways = ({c for p in needs(tree, place) for c in tree[p].cautions} for tree in trees())
    return frozenset(set.intersection(*ways))


def everything() -> Iterator[Said]:
    for i in BOOK.inspections.values():
        words = (i.says, *i.steps, i.destroys, i.keep, *i.tools)
        yield Said(i.id, joined(words), frozenset(i.cautions), on_the_way(i.access))
    by_text: dict[tuple[str, frozenset[Caution]], Said] = {}
    for opening in (o for tree in trees() for o in tree.values()):
        words = (opening.says, opening.destroys, opening.keep, *opening.ready, *opening.tools)
        way = on_the_way(opening.access)
        said = Said(opening.access.value, joined(words), frozenset(opening.cautions), way)
        by_text[said.text, said.cautions] = said
    yield from by_text.values()
    for task in BOOK.tasks.values():
        yield Said(task.id, joined((task.says, *task.how)), frozenset(task.cautions))


def joined(words: tuple[str, ...], harmless: re.Pattern[str] = HARMLESS) -> str:
    return harmless.sub("", " | ".join(w for w in words if w).lower())


SAID = list(everything())


def lacking(said: Said, hazard: str) -> set[Caution]:
    """The cautions that a hazard named here calls for and that are not there."""
    pattern, wanted = HAZARDS[hazard]
    if not re.search(pattern, said.text):
        return set()
    return wanted - said.cautions - (said.way & MET_ON_THE_WAY)


@pytest.mark.parametrize("hazard", HAZARDS)
def test_a_hazard_has_its_caution_beside_it(hazard: str) -> None:
    bare = {
        s.id: sorted(lacking(s, hazard))
        for s in SAID
        if lacking(s, hazard) and (s.id, hazard) not in EXCEPTIONS
    }
    assert not bare


@pytest.mark.parametrize("hazard", HAZARDS)
def test_the_walk_meets_every_hazard(hazard: str) -> None:
    """A pattern that matches nothing guards nothing."""
    assert sum(bool(re.search(HAZARDS[hazard][0], s.text)) for s in SAID) >= 2


def test_every_exception_is_still_one() -> None:
    by_id: dict[str, list[Said]] = {}
    for said in SAID:
        by_id.setdefault(said.id, []).append(said)
    idle = [(i, h) for i, h in EXCEPTIONS if not any(lacking(s, h) for s in by_id.get(i, ()))]
    assert not idle


@pytest.mark.parametrize("words", HARMLESS_WORDS)
def test_each_harmless_wording_is_still_needed(words: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Without it some text would lack a caution; an entry no text needs any more must go."""
    assert HARMLESS_WORDS[words]
    rest = re.compile("|".join(w for w in HARMLESS_WORDS if w != words))
    plain, own = joined, re.compile(words)

    def kept(said: tuple[str, ...]) -> str:
        text = " | ".join(w for w in said if w).lower()
        return plain(said, rest) if own.search(text) else ""  # a text without it lacks no more

    monkeypatch.setitem(globals(), "joined", kept)
    bare = [
        (s.id, h)
        for s in everything()
        for h in HAZARDS
        if lacking(s, h) and (s.id, h) not in EXCEPTIONS
    ]
    assert bare


def test_no_caution_is_named_twice() -> None:
    named = {i.id: i.cautions for i in BOOK.inspections.values()}
    named |= {t.id: t.cautions for t in BOOK.tasks.values()}
    assert not [id_ for id_, cautions in named.items() if len(set(cautions)) < len(cautions)]


# ------------------------------------------------------------------------------ a running engine

#: a step in which the engine is started or runs
RUNS = re.compile(
    r"\bstart (it|and|the engine|cold)\b|^start,|\bidle\b(?! speed below)|\brevs\b|engine running"
    r"|\brun (it|briefly|two minutes|at the speed)\b|while it runs|\b[0-9]{4} rpm\b"
)
GUARD = "only if there is no stop alarm"


@every(BOOK.inspections.values(), lambda i: i.id)
def test_a_check_that_runs_the_engine_says_so(check: Inspection) -> None:
    if check.needs_running:
        assert set(RUNNING) <= set(check.cautions)
        return
    loose = [s for s in check.steps if RUNS.search(s.lower()) and GUARD not in s]
    assert not loose


def test_tasks_of_a_running_engine_warn_of_it() -> None:
    for task in BOOK.tasks.values():
        if task.phase is Phase.FIRST_START:
            assert {*RUNNING, Caution.FIRE} <= set(task.cautions), task.id


# ------------------------------------------------------------------------------ openings

#: what must be shown before each step of dismantling
BEFORE_OPENING = {
    Access.GAUGE_PORT: {Caution.HOT, Caution.BATTERY},
    Access.DRAINED: {Caution.HOT, Caution.USED_OIL, Caution.WASTE},
    Access.FILTER_OFF: {Caution.HOT, Caution.USED_OIL, Caution.WASTE},
    Access.FILTER_CUT: {Caution.SHARP, Caution.USED_OIL, Caution.WASTE},
    Access.RELIEF_CAP_OFF: {Caution.SPRING, Caution.EYES},
    Access.ENGINE_EASED: {Caution.LIFTING, Caution.HEAVY},
    Access.SUMP_OFF: {Caution.LIFTING, Caution.BATTERY, Caution.ASBESTOS, Caution.WASTE},
    Access.PUMP_OFF: {Caution.ASBESTOS},
    Access.FRONT_COVER_OFF: {Caution.SPRING, Caution.BATTERY},
    Access.PUMP_RELIEF_OUT: {Caution.SPRING, Caution.EYES},
    Access.FLYWHEEL_OFF: {Caution.HEAVY, Caution.LIFTING, Caution.BATTERY, Caution.ASBESTOS},
    Access.CRANK_OUT: {Caution.HEAVY},
    Access.CAM_OUT: {Caution.HEAVY},
}


@pytest.mark.parametrize("place", BEFORE_OPENING, ids=str)
def test_every_layout_warns_before_it_is_opened(place: Access) -> None:
    for tree in trees():
        assert BEFORE_OPENING[place] <= set(tree[place].cautions)


def test_the_battery_comes_first_where_the_sump_comes_off() -> None:
    for tree in trees():
        assert tree[Access.SUMP_OFF].cautions[0] is Caution.BATTERY


def test_the_spring_is_held_covered_and_let_out_slowly() -> None:
    (wording,) = CAUTIONS[Caution.SPRING]
    says = wording.says
    for words in ("deep socket", "eye protection", "cloth", "release slowly", "face away"):
        assert words in says
    assert len(says) < 200

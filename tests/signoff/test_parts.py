"""Parts lists: every repair finds what it uses up, once, with what to measure before ordering."""

from __future__ import annotations

import re
from collections import Counter
from pathlib import Path
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.inference.chaining import Facts, Observation, infer
from diagnose.signoff.parts import OUTSIDE_IN, Needed, parts_list
from knowledge import contents_work
from knowledge.access import OPENINGS, openings_for
from knowledge.book import the_book
from knowledge.engines.features import (
    CHAIN_TENSIONERS,
    DRY_SUMP,
    PRESSED_PICKUP,
    PUMP_ON_CHAIN,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    STRESSED_SUMP,
    VEE_ENGINE,
    WATER_COOLED,
    WINDAGE_TRAY,
)
from knowledge.model import Cause, Finding, Kind, State
from knowledge.sources import PUMP_MAKER_SHAFTS_SCREENS, TRUCK_SERVICE_1994
from knowledge.work import Access, Layout, Part
from tests.support.command_line import ROOT, call
from tests.support.every import every

BOOK = the_book()
PARTS = list(BOOK.parts.values())
FEATURES = [f for f in BOOK.findings.values() if f.kind is Kind.LAYOUT]

#: causes that call for no part of their own, and why
WITHOUT = {
    "idle_too_slow": "adjusted with a trusted counter",
    "oil_level_high": "oil is only taken out; what brought it there is a cause of its own",
    "oil_hot_normal": "no fault",
    "oil_cold_normal": "no fault",
    "relief_debris": "cleaned; the place's own washer and lock close it",
    "relief_return_plugged": "the passage is opened; the place's own parts close it",
    "foreign_body_in_sump": "taken out and cleaned; the place's own parts close it",
    "oil_tap_shut": "opened and marked; nothing is renewed",
    "not_in_the_book": "not known yet",
}
#: what to have ready that is no part: it catches, labels, wipes, guards or carries
HANDLING = re.compile(
    r"bag|label|rag|cloth|jar|tray|gloves|paper|wood|clean cover|clean wrap|tags|clean plugs"
)
#: one line of the openings that is two parts
TWO_IN_ONE = {"front and rear main seals": ("front seal", "rear main seal")}

#: what the openings name for every engine, and the feature without which there is none
ONLY_WHERE = {
    "coolant": WATER_COOLED,
    "tensioner seals": CHAIN_TENSIONERS,
    "new pickup, if its tube is pressed in": PRESSED_PICKUP,
    "new tray nuts or locks": WINDAGE_TRAY,
    "intake or valley gasket set": VEE_ENGINE,
    "coolant, if it runs through the manifold": VEE_ENGINE,
}


def nobody_said(_: Finding) -> None:
    return None


def engine(has: tuple[Finding, ...] = (), lacks: tuple[Finding, ...] = ()) -> dict[Finding, State]:
    return {**dict.fromkeys(lacks, State.ABSENT), **dict.fromkeys(has, State.PRESENT)}


def ids(needed: tuple[Needed, ...]) -> list[str]:
    return [n.part.id for n in needed]


def group(one: Needed, causes: set[Cause], places: set[Access]) -> int:
    """0 for the causes, 1 for closing, 2 for what every repair uses."""
    if causes & set(one.part.for_causes):
        return 0
    return 1 if places & set(one.part.for_places) else 2


# the words themselves


def test_every_cause_that_takes_parts_has_one() -> None:
    having = {c.id for p in PARTS for c in p.for_causes}
    bare = set(BOOK.causes) - having - set(WITHOUT)
    assert not bare, (
        f"no part names {sorted(bare)}: add each to for_causes of a part in knowledge/parts, "
        "or here to WITHOUT with the reason"
    )
    assert not having & set(WITHOUT)
    assert set(WITHOUT) <= set(BOOK.causes)
    for cause in BOOK.causes.values():
        assert not (cause.no_fault and cause.id in having), cause.id


def without_part(state: dict[Finding, State]) -> list[str]:
    """Causes this engine can have whose every part its features rule out."""
    facts = Facts({f: Observation(s) for f, s in state.items()})
    barred = infer(BOOK.statements, facts).excluded
    possible = [c for c in BOOK.causes.values() if c.id not in WITHOUT and c not in barred]
    return [
        c.id
        for c in possible
        if not any(c in n.part.for_causes for n in parts_list((c,), (), state.get, BOOK))
    ]


@every(BOOK.layouts.values(), lambda layout: layout.id)
def test_every_cause_a_layout_can_have_finds_its_part(layout: Layout) -> None:
    """No feature takes away the last part of a cause that the layout leaves possible."""
    assert not without_part(engine(layout.has, layout.lacks))


@every(PARTS, lambda p: p.id)
def test_part_is_whole(part: Part) -> None:
    """Words, quantity and source; used somewhere; nothing named twice or against itself."""
    assert re.fullmatch(r"[a-z][a-z0-9_]*", part.id)
    for text in (part.says, part.quantity):
        assert text
        assert not text.endswith(".")
    for text in (part.measure_first, part.note):
        assert not text.endswith(".")
    assert part.source.title
    assert part.source.trust
    assert part.for_causes or part.for_places or part.always
    for row in (part.for_causes, part.for_places, part.only_with, part.not_with):
        assert len(set(row)) == len(row)
    assert not set(part.only_with) & set(part.not_with)
    for feature in (*part.only_with, *part.not_with):
        assert feature.kind is Kind.LAYOUT


def test_references_are_words_of_the_book() -> None:
    for part in PARTS:
        assert all(BOOK.causes.get(c.id) is c for c in part.for_causes), part.id
        assert all(BOOK.findings.get(f.id) is f for f in (*part.only_with, *part.not_with)), part.id


def test_ids_are_used_once_over_the_book() -> None:
    """A part is called like nothing else, so a person's word means one thing."""
    kinds = (
        "causes", "conditions", "findings", "measures", "limits", "inspections", "layouts",
        "links", "rules", "profiles", "dimensions", "tasks",
    )  # fmt: skip
    for kind in kinds:
        assert not set(BOOK.parts) & set(getattr(BOOK, kind)), kind
    assert not set(BOOK.parts) & {a.value for a in Access}


def test_no_two_parts_read_alike() -> None:
    doubled = [says for says, n in Counter(p.says for p in PARTS).items() if n > 1]
    assert not doubled


def test_every_file_of_parts_is_listed() -> None:
    """No file of parts is missing from the list of contents."""
    files = {p for p in (ROOT / "knowledge").rglob("*.py") if "= Part(" in p.read_text("utf-8")}
    assert files == {Path(str(m.__file__)) for m in contents_work.PARTS}


# what the openings say must be ready is on the list that closes them


def closers(place: Access, state: dict[Finding, State]) -> list[str]:
    found = parts_list((), (place,), state.get, BOOK)
    return [n.part.says.removeprefix("new ") for n in found]


def listed(ready: str, says: list[str]) -> bool:
    return ready.removeprefix("new ") in says


@pytest.mark.parametrize("layout", [None, *BOOK.layouts.values()], ids=str)
def test_what_the_openings_want_ready_is_listed(layout: Layout | None) -> None:
    """On a typical engine and on every layout, under the same name."""
    tree = openings_for(lambda f: f in layout.has) if layout else OPENINGS
    state = engine(layout.has, layout.lacks) if layout else {}
    for place, opening in tree.items():
        says = closers(place, state)
        for ready in opening.ready:
            if HANDLING.search(ready) and not listed(ready, says):
                continue
            feature = ONLY_WHERE.get(ready)
            if feature and state.get(feature) is State.ABSENT:
                assert not listed(ready, says), f"{place}: {ready}"
                continue
            for name in TWO_IN_ONE.get(ready, (ready,)):
                assert listed(name, says), f"{place}: {name} not among {says}"


PART = re.compile(r"gasket|bolt|seal|washer|o-ring|\bnuts?\b|\bpins?\b|shell|filter cartridge")


def test_no_part_is_taken_for_handling_material() -> None:
    """What passes for handling is no gasket, bolt, seal, washer or nut; of these all are listed."""
    handled = {
        (ready, listed(ready, closers(opening.access, {})))
        for opening in OPENINGS.values()
        for ready in opening.ready
        if HANDLING.search(ready)
    }
    assert len(handled) >= 15
    tags = re.compile(r"(tags|labelled tray) for (every|the) shells?|bag and label for")
    parts = {r for r, there in handled if PART.search(tags.sub("", r)) and not there}
    assert not parts
    assert any(PART.search(r) and there for r, there in handled), "some part is named beside it"


# what the sources say is always renewed


def test_a_pressed_pickup_taken_off_is_renewed() -> None:
    """Its press fit is gone once it was drawn."""
    name = "pressed_new_pickup"
    assert BOOK.parts[name].source is TRUCK_SERVICE_1994
    assert name in ids(parts_list((), (Access.PICKUP_OFF,), engine((PRESSED_PICKUP,)).get, BOOK))
    off = engine(lacks=(PRESSED_PICKUP,))
    assert name not in ids(parts_list((), (Access.PICKUP_OFF,), off.get, BOOK))


def test_a_new_pump_takes_a_new_drive_shaft() -> None:
    """Where a shaft from the distributor turns it; a chain-driven one takes its chain."""
    shaft = BOOK.parts["pump_drive_shaft"]
    assert shaft.source is PUMP_MAKER_SHAFTS_SCREENS
    assert set(BOOK.parts["oil_pump"].for_causes) <= set(shaft.for_causes)
    causes = (BOOK.causes["pump_debris_lock"],)
    turned = engine((PUMP_ON_DISTRIBUTOR_SHAFT,), (PUMP_ON_CHAIN,))
    chained = engine((PUMP_ON_CHAIN,), (PUMP_ON_DISTRIBUTOR_SHAFT,))
    assert {"oil_pump", "pump_drive_shaft"} <= set(ids(parts_list(causes, (), turned.get, BOOK)))
    chain = ids(parts_list(causes, (), chained.get, BOOK))
    assert "pump_chain" in chain
    assert "pump_drive_shaft" not in chain


@pytest.mark.parametrize(
    ("cause", "words"),
    [
        ("bearing_wear_mains", "journal bore undersize stamped"),
        ("bearing_wear_rods", "crankpin bore undersize stamped"),
        ("bearing_spun", "bore"),
        ("relief_spring_weak_broken", "free length wire"),
        ("sender_faulty", "thread resistance"),
        ("pickup_tube_loose", "tube diameter"),
        ("pump_drive_slip", "slot hex length"),
        ("shaft_seal_leak", "shaft diameter"),
        ("gallery_plug_missing", "bore thread depth"),
        ("gauge_line_leak", "tube diameter length thread"),
        ("dipstick_wrong", "measured fill"),
    ],
)
def test_the_list_names_what_to_measure_before_ordering(cause: str, words: str) -> None:
    first = " ".join(p.measure_first for p in PARTS if BOOK.causes[cause] in p.for_causes)
    for word in words.split():
        assert word in first, f"{cause}: {word}"


# lists


def test_causes_come_first_then_closing_then_what_all_need() -> None:
    causes = (BOOK.causes["pump_gear_wear"],)
    opened = (Access.DRAINED, Access.SUMP_OFF, Access.PUMP_OFF)
    found = ids(parts_list(causes, opened, nobody_said, BOOK))
    assert found.index("oil_pump") < found.index("sump_gasket_set")
    assert {"drain_plug_washer", "new_oil", "new_filter"} <= set(found)
    assert found[-1] == "new_filter"


def test_what_closes_comes_from_outside_in() -> None:
    """Places in the order they were reached, which is the order of the tree of access."""
    for place, opening in OPENINGS.items():
        assert all(OUTSIDE_IN.index(n) < OUTSIDE_IN.index(place) for n in opening.needs), place
    found = ids(parts_list((), tuple(Access), nobody_said, BOOK))
    for first, later in (
        ("sender_washer", "drain_plug_washer"),
        ("drain_plug_washer", "valve_cover_gasket"),
        ("valve_cover_gasket", "sump_gasket_set"),
        ("sump_gasket_set", "suction_ring"),
        ("suction_ring", "front_cover_gasket_set"),
        ("front_cover_gasket_set", "bearing_bolts"),
        ("bearing_bolts", "cam_plug_and_bolts"),
    ):
        assert found.index(first) < found.index(later), f"{first} after {later}"


def test_nothing_opened_and_nothing_found_calls_for_nothing() -> None:
    assert not parts_list((), (), nobody_said, BOOK)
    assert not parts_list((), (Access.OUTSIDE,), nobody_said, BOOK)


def test_a_part_for_cause_and_place_is_listed_under_its_cause() -> None:
    cause = BOOK.causes["suction_joint_air_leak"]
    found = parts_list((cause,), (Access.PICKUP_OFF,), nobody_said, BOOK)
    [ring] = [n for n in found if n.part.id == "suction_ring"]
    assert ring.because == (cause.says,)


def test_features_choose_between_parts_that_do_the_same() -> None:
    valley = (Access.VALLEY_OPEN,)
    assert "side_cover_gasket" not in ids(parts_list((), valley, engine((VEE_ENGINE,)).get, BOOK))
    inline = ids(parts_list((), valley, engine(lacks=(VEE_ENGINE,)).get, BOOK))
    assert "side_cover_gasket" in inline
    assert "intake_gasket_set" not in inline
    eased = (Access.ENGINE_EASED,)
    tractor = ids(parts_list((), eased, engine((STRESSED_SUMP,)).get, BOOK))
    assert "frame_bolts" in tractor
    assert "mount_bolts" not in tractor
    dry = ids(parts_list((), (Access.PICKUP_OFF,), engine((DRY_SUMP,)).get, BOOK))
    assert "tank_seals" in dry
    assert "suction_ring" not in dry


CAUSES = st.sets(st.sampled_from(list(BOOK.causes.values())), max_size=6)
PLACES = st.sets(st.sampled_from(list(Access)), max_size=8)
STATES = st.dictionaries(st.sampled_from(FEATURES), st.sampled_from(list(State)), max_size=12)


@given(CAUSES, PLACES, STATES)
def test_any_list_holds(
    causes: set[Cause], places: set[Access], state: dict[Finding, State]
) -> None:
    """No doubles, in order, every line with its reason, features kept to, nothing left out."""
    found = parts_list(causes, places, state.get, BOOK)
    assert len(set(ids(found))) == len(found)
    order = [group(n, causes, places) for n in found]
    assert order == sorted(order)
    for one in found:
        assert one.because
        assert len(set(one.because)) == len(one.because)
        assert not any(state.get(f) is State.PRESENT for f in one.part.not_with)
        if one.part.only_with:
            assert any(state.get(f) is not State.ABSENT for f in one.part.only_with)
    left = [p for p in PARTS if p.id not in ids(found)]
    for part in left:
        wanted = causes & set(part.for_causes) or places & set(part.for_places)
        barred = any(state.get(f) is State.PRESENT for f in part.not_with)
        lacking = part.only_with and all(state.get(f) is State.ABSENT for f in part.only_with)
        assert not wanted or barred or lacking, part.id


@given(CAUSES, PLACES, STATES, st.randoms(use_true_random=False))
def test_order_of_asking_changes_nothing(
    causes: set[Cause], places: set[Access], state: dict[Finding, State], dice: Random
) -> None:
    """The same job gives the same list, in whatever order it was entered."""
    first = parts_list(tuple(causes), tuple(places), state.get, BOOK)
    shuffled, opened = list(causes), list(places)
    dice.shuffle(shuffled)
    dice.shuffle(opened)
    assert parts_list(shuffled, opened, state.get, BOOK) == first


@given(CAUSES, PLACES, STATES, CAUSES, PLACES)
def test_more_causes_or_places_never_take_a_part_away(
    causes: set[Cause],
    places: set[Access],
    state: dict[Finding, State],
    more: set[Cause],
    further: set[Access],
) -> None:
    fewer = ids(parts_list(causes, places, state.get, BOOK))
    all_of_it = ids(parts_list(causes | more, places | further, state.get, BOOK))
    assert set(fewer) <= set(all_of_it)


def test_a_parts_note_is_on_every_form(tmp_path: Path) -> None:
    note = BOOK.parts["new_filter"].note
    case, page = ROOT / "cases" / "petrel.toml", tmp_path / "a.html"
    assert call("signoff", case, "--html", page).code == 0
    shown = [
        call("signoff", case, *form).out for form in (("--all",), ("--markdown",), ("--json",))
    ]
    for text in (*shown, page.read_text("utf-8")):
        assert note in " ".join(text.split())


def test_the_second_change_is_not_counted_twice() -> None:
    """Its filter is the second of the new filters, its oil a line of its own."""
    second, both = BOOK.parts["second_oil_and_filter"], BOOK.parts["new_filter"]
    assert set(second.for_causes) <= set(both.for_causes)
    assert "1 for the change that follows" in both.quantity
    assert "filter" not in second.quantity

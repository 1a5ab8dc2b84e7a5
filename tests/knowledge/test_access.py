"""The access tree: every opening can be reached on every layout, and no two wait for each other."""

import pytest

from knowledge import access
from knowledge.cautions import CAUTIONS, DEFERS_TO
from knowledge.engines import layouts
from knowledge.engines.features import (
    OVERHEAD_CAM,
    PUMP_ON_CRANK_NOSE,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    PUMP_ON_SKEW_GEAR,
    PUMP_OUTSIDE,
    RELIEF_OUTSIDE,
    STRESSED_SUMP,
    TILTS,
)
from knowledge.model import Finding, all_in
from knowledge.work import Access, Caution, Layout

LAYOUTS = all_in(layouts.__name__, Layout)


def way_to(
    tree: dict[Access, access.Opening], goal: Access, above: tuple[Access, ...] = ()
) -> set[Access]:
    """Everything that must be open for the goal, itself included."""
    assert goal not in above, f"{goal} waits for itself: {above}"
    return {goal}.union(*(way_to(tree, n, (*above, goal)) for n in tree[goal].needs))


@pytest.mark.parametrize("layout", LAYOUTS, ids=lambda layout: layout.id)
def test_a_layout_does_not_both_have_and_lack(layout: Layout) -> None:
    assert not set(layout.has) & set(layout.lacks)


def test_oil_is_sampled_before_it_is_drained() -> None:
    assert Access.OIL_SAMPLE in way_to(access.OPENINGS, Access.SUMP_OFF)


def tree_with(*features: Finding) -> dict[Access, access.Opening]:
    """The tree of an engine that has just these features."""
    return access.openings_for(lambda f: f in features)


def test_crank_nose_pump_comes_off_without_the_sump() -> None:
    way = way_to(tree_with(PUMP_ON_CRANK_NOSE), Access.PUMP_OFF)
    assert Access.FRONT_COVER_OFF in way
    assert Access.SUMP_OFF not in way


def test_outside_pump_comes_off_without_sump_or_front_cover() -> None:
    way = way_to(tree_with(PUMP_OUTSIDE), Access.PUMP_COVER_OFF)
    assert not way & {Access.SUMP_OFF, Access.FRONT_COVER_OFF}


def test_relief_valve_inside_the_pump_waits_for_the_pump() -> None:
    assert Access.FRONT_COVER_OFF in way_to(tree_with(PUMP_ON_CRANK_NOSE), Access.RELIEF_CAP_OFF)
    outside = tree_with(PUMP_ON_CRANK_NOSE, RELIEF_OUTSIDE)
    assert way_to(outside, Access.RELIEF_CAP_OFF) == {Access.OUTSIDE, Access.RELIEF_CAP_OFF}


def test_sump_in_a_hull_waits_for_the_mounts() -> None:
    assert Access.ENGINE_EASED in way_to(tree_with(TILTS), Access.SUMP_OFF)


def test_stressed_sump_waits_for_the_front_end_on_stands() -> None:
    tree = tree_with(PUMP_OUTSIDE, TILTS, STRESSED_SUMP)
    hull = tree_with(PUMP_OUTSIDE, TILTS)
    assert Access.ENGINE_EASED in way_to(tree, Access.SUMP_OFF)
    assert Access.SUMP_OFF not in way_to(tree, Access.PUMP_OFF) | way_to(tree, Access.PICKUP_OFF)
    assert "axle" in tree[Access.ENGINE_EASED].says
    for place in (Access.ENGINE_EASED, Access.SUMP_OFF):
        assert Caution.LIFTING in tree[place].cautions
        assert tree[place].minutes_in_place > hull[place].minutes_in_place
    plain = access.OPENINGS[Access.SUMP_OFF]
    assert hull[Access.SUMP_OFF].minutes_in_place > plain.minutes_in_place


@pytest.mark.parametrize("layout", LAYOUTS, ids=lambda layout: layout.id)
def test_every_opening_says_what_to_have_ready(layout: Layout) -> None:
    for opening in access.openings_for(lambda f: f in layout.has).values():
        assert opening.ready, opening.access
        assert opening.tools, opening.access
        assert len(set(opening.ready)) == len(opening.ready)
        assert len(set(opening.cautions)) == len(opening.cautions), opening.access


def test_no_opening_takes_longer_on_a_stand_than_in_place() -> None:
    for opening in access.OPENINGS.values():
        assert opening.minutes_in_place >= opening.minutes_on_stand, opening.access


def test_inexperience_and_little_space_lengthen_the_minutes() -> None:
    assert access.EXPERIENCE["practised"] == 1.0
    assert access.EXPERIENCE["first_time"] > access.EXPERIENCE["practised"]
    assert access.CROWDED == 2.0


def test_every_caution_is_worded_and_every_deferral_named_once() -> None:
    assert set(CAUTIONS) == set(Caution)
    assert all(CAUTIONS.values())
    assert all(w.says and w.source for wordings in CAUTIONS.values() for w in wordings)
    assert len({d.id for d in DEFERS_TO}) == len(DEFERS_TO) == 11


def test_an_overhead_cam_engine_has_no_distributor_to_lift_for_its_pump() -> None:
    """Only where nothing says that one drives the pump."""
    plain = tree_with()[Access.DISTRIBUTOR_OUT].says
    assert tree_with(OVERHEAD_CAM)[Access.DISTRIBUTOR_OUT].says.startswith("if an auxiliary shaft")
    for driven in (PUMP_ON_DISTRIBUTOR_SHAFT, PUMP_ON_SKEW_GEAR):
        assert tree_with(OVERHEAD_CAM, driven)[Access.DISTRIBUTOR_OUT].says == plain

"""Options of a plan: access, minutes, and what must come first."""

from __future__ import annotations

import pytest

from diagnose.inference.elimination import posterior
from diagnose.planning.access_tree import AccessTree, CyclicAccessError, Pace
from diagnose.planning.choosing import Chooser
from diagnose.planning.options import PlanState
from diagnose.planning.outcome_tables import OutcomeTables, StackedTables
from diagnose.planning.precedence import Precedence
from diagnose.planning.single_cause import (
    single_cause_model,
)
from knowledge.access import OPENINGS, Opening, openings_for
from knowledge.book import the_book
from knowledge.model import Finding
from knowledge.work import Access, Inspection, Layout
from tests.support.planning_examples import NOBODY
from tests.support.situations import mixed, taken

BOOK = the_book()


# -------------------------------------------------------------------------- access and safety


def options_of(
    seed: int, may_run: bool, opened: frozenset[Access] = frozenset()
) -> tuple[AccessTree, list[tuple[Inspection, tuple[Opening, ...], float, tuple[Finding, ...]]]]:
    case = taken(mixed(seed))
    table = single_cause_model(case.network, posterior(case.network, case.evidence).marginal)
    tree = AccessTree(OPENINGS)
    checks = tuple(i for i in BOOK.inspections.values() if may_run or not i.needs_running)
    chooser = Chooser(OutcomeTables(table), tree, checks, Precedence(frozenset()))
    now = PlanState(table.weight, frozenset(case.facts.observations), opened)
    return tree, [(o.inspection, o.way, o.minutes, o.findings) for o in chooser.options(now)]


@pytest.mark.parametrize("seed", range(5))
def test_an_option_answers_open_questions_at_its_full_cost(seed: int) -> None:
    reported = set(taken(mixed(seed)).facts.observations)
    tree, options = options_of(seed, may_run=True)
    assert options
    for inspection, way, minutes, findings in options:
        assert findings
        assert not reported & set(findings)
        assert minutes == max(inspection.minutes, 1.0) + sum(o.minutes_in_place for o in way)
        assert tree.may_do(inspection, ())


@pytest.mark.parametrize("layout", BOOK.layouts.values(), ids=lambda layout: layout.id)
def test_paths_open_everything_needed_in_order(layout: Layout) -> None:
    """On every layout, from outside and from half-open: what an opening needs comes before it."""
    tree = AccessTree(openings_for(lambda f: f in layout.has))
    half_open = {Access.OUTSIDE, Access.OIL_SAMPLE, Access.DRAINED}
    for opened in (set[Access](), {Access.OUTSIDE}, half_open):
        for access in Access:
            assert_in_order(tree.way(access, opened), access, opened)


def assert_in_order(way: tuple[Opening, ...] | None, goal: Access, opened: set[Access]) -> None:
    assert way is not None
    is_open = set(opened)
    for opening in way:
        assert opening.access not in is_open, "nothing is opened twice"
        assert set(opening.needs) <= is_open
        is_open.add(opening.access)
    assert goal in is_open


@pytest.mark.parametrize("layout", BOOK.layouts.values(), ids=lambda layout: layout.id)
def test_covers_are_a_tree_with_the_right_minutes(layout: Layout) -> None:
    """Going up the covers and adding their minutes gives at most the minutes of the whole way."""
    tree = AccessTree(openings_for(lambda f: f in layout.has))
    covers = tree.covers(frozenset())
    for place in tree.places:
        way = tree.way(place) or ()
        total, at = 0.0, place
        while True:
            cover = covers[at]
            total += cover.minutes
            if cover.place is None:
                break
            at = cover.place
        assert total == pytest.approx(tree.opening_minutes(way))


def test_an_opening_that_cannot_be_reached_is_named() -> None:
    tree = AccessTree({a: o for a, o in OPENINGS.items() if a is not Access.DRAINED})
    with pytest.raises(CyclicAccessError, match="drained"):
        tree.way(Access.SUMP_OFF)
    circle = {
        Access.DRAINED: Opening(Access.DRAINED, "", (Access.SUMP_OFF,), 1, 1, NOBODY),
        Access.SUMP_OFF: Opening(Access.SUMP_OFF, "", (Access.DRAINED,), 1, 1, NOBODY),
    }
    with pytest.raises(CyclicAccessError, match="->"):
        AccessTree(circle).way(Access.SUMP_OFF)


def test_pace() -> None:
    stand = AccessTree(OPENINGS, Pace(on_stand=True))
    slow = AccessTree(OPENINGS, Pace(factor=3.0))
    closing = AccessTree(OPENINGS, Pace(closing=0.8))
    plain = AccessTree(OPENINGS)
    way = plain.way(Access.CAP_OFF) or ()
    assert stand.opening_minutes(way) == sum(o.minutes_on_stand for o in way)
    assert slow.opening_minutes(way) == pytest.approx(3 * plain.opening_minutes(way))
    assert closing.opening_minutes(way) == pytest.approx(1.8 * plain.opening_minutes(way))
    running = next(i for i in BOOK.inspections.values() if i.needs_running)
    assert plain.may_do(running, ())
    assert not stand.may_do(running, ())


def test_gains_are_what_adds_come_to() -> None:
    """Two ways to the same figure: cause by cause, and the rise of the sum of squares."""
    _, options = options_of(1, may_run=True)
    case = taken(mixed(1))
    table = single_cause_model(case.network, posterior(case.network, case.evidence).marginal)
    outcome_tables = OutcomeTables(table)
    views = [
        v for i, *_ in options if (v := outcome_tables.view(i, frozenset(case.facts.observations)))
    ]
    stack = StackedTables.of(views)
    joint = [v.rows * table.weight for v in views]
    squares = [sum(float((r**2).sum() / r.sum()) for r in j if r.sum() > 0) for j in joint]
    before = float((table.weight**2).sum())
    assert stack.gains(table.weight) == pytest.approx([s - before for s in squares], abs=1e-12)
    total = stack.adds(table.weight) @ (table.weight * (1 - table.weight))
    assert (total >= stack.gains(table.weight) - 1e-9).all(), "only what is clipped may differ"

"""Planning by hand and by brute force: simulated jobs, lost evidence, what a check is worth."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise, permutations, product

import numpy as np
import pytest

from diagnose.inference.network import Network
from diagnose.planning.access_tree import AccessTree, Pace
from diagnose.planning.choosing import Chooser
from diagnose.planning.options import Choice, Option, PlanState
from diagnose.planning.outcome_tables import OutcomeTables, StackedTables
from diagnose.planning.precedence import Precedence
from diagnose.planning.sequence import PlannedCheck, planned_sequence
from diagnose.planning.simulation import PlanEstimate, simulate
from diagnose.planning.single_cause import SingleCauseModel, single_cause_model
from knowledge.access import OPENINGS, Opening
from knowledge.access.precedence import BEFORE, FIRST_OF, Before
from knowledge.model import Finding
from knowledge.work import Access, Inspection
from tests.support.every import every
from tests.support.planning_examples import NOBODY, OUTSIDE, check, finding, table_of

# -------------------------------------------------------------------------------- simulated jobs


def simulated(
    table: SingleCauseModel,
    minutes: Sequence[float],
    names: Sequence[str],
    until: float,
    jobs: int = 20_000,
) -> PlanEstimate:
    """Checks of one sign each, in that order, on simulated jobs."""
    outcome_tables, links = OutcomeTables(table), []
    plan_state = PlanState(table.weight, frozenset(), frozenset())
    for i, (name, time) in enumerate(zip(names, minutes, strict=True)):
        view = outcome_tables.view(check(f"i{i}", time, finding(name)), ())
        assert view is not None
        choice = Choice(Option(view, (), time, time), (), 0.0, time, 0.0)
        links.append(PlannedCheck(choice, plan_state, 1.0, 0.0, ()))
    return simulate(links, table, table.weight, until, jobs)


def test_three_signs_of_nine_in_ten() -> None:
    """Even odds, signs right nine times in ten, asked for 0.95: two that agree settle it."""
    shows = dict.fromkeys("abc", (0.9, 0.1))
    found = simulated(table_of((0.5, 0.5), **shows), (10, 20, 30), "abc", 0.95)
    assert found.found_by == pytest.approx((0.0, 0.82, 0.82), abs=0.01)
    assert found.found == found.found_by[-1]
    assert found.right == pytest.approx(0.81 / 0.82, abs=0.005)
    assert found.expected == pytest.approx(0.82 * 30 + 0.18 * 60, abs=0.4)
    assert found.worst == 60


def test_signs_of_different_worth_as_every_outcome_summed() -> None:
    """Three causes and three signs: all eight ways they can come out, weighed and added up."""
    weight, until, minutes = (0.5, 0.3, 0.2), 0.8, (5.0, 15.0, 40.0)
    shows = {"a": (0.7, 0.2, 0.1), "b": (0.5, 0.9, 0.2), "c": (0.3, 0.1, 0.95)}
    expected, by, right = 0.0, [0.0, 0.0, 0.0], 0.0
    for cause, signs in product(range(3), product((True, False), repeat=3)):
        chance, belief, settled = weight[cause], list(weight), False
        for name, there in zip("abc", signs, strict=True):
            chance *= shows[name][cause] if there else 1 - shows[name][cause]
        for i, (name, there) in enumerate(zip("abc", signs, strict=True)):
            belief = [b * (p if there else 1 - p) for b, p in zip(belief, shows[name], strict=True)]
            if not settled:
                if i == 0:
                    spent = 0.0
                spent += minutes[i]
                if max(belief) >= until * sum(belief):
                    settled = True
                    right += chance * (belief.index(max(belief)) == cause)
            by[i] += chance * settled
        expected += chance * spent
    found = simulated(table_of(weight, **shows), minutes, "abc", until)
    assert found.found_by == pytest.approx(by, abs=0.012)
    assert found.right == pytest.approx(right / by[-1], abs=0.015)
    assert found.expected == pytest.approx(expected, abs=0.6)


def test_a_sign_seen_twice_counts_once() -> None:
    """Seen again at another check it is the same sign: still nine in ten, not 0.988."""
    table = table_of((0.5, 0.5), a=(0.9, 0.1))
    assert simulated(table, (1, 1), "aa", 0.95).found == 0.0


def test_causes_are_drawn_by_their_weight() -> None:
    """A finding without information leaves the likelier cause named, right as often as it is so."""
    found = simulated(table_of((0.7, 0.3), a=(0.4, 0.4)), (1,), "a", 0.65, jobs=1000)
    assert found.right == pytest.approx(0.7, abs=0.002), "drawn as even as can be"
    assert found.found_by == (1.0,)


def test_no_plan_takes_no_time_and_finds_nothing() -> None:
    found = simulated(table_of((0.7, 0.3)), (), "", 0.65)
    assert (found.expected, found.worst, found.found, found.right) == (0.0, 0.0, 0.0, 0.0)
    assert found.found_by == ()


# ------------------------------------------------------------------------------------ spoiling


def option_at(way: Sequence[Opening], inspection: Inspection) -> Option:
    shown_one = replace(inspection, reveals=(finding("a"),))
    view = OutcomeTables(table_of((1.0,), a=(0.5,))).view(shown_one, ())
    assert view is not None
    return Option(replace(view, inspection=inspection), tuple(way), 1.0, 1.0)


@every(BEFORE, lambda b: f"{b.check.id}-{b.opening.value}")
def test_spoilt_checks_are_those_of_the_book(line: Before) -> None:
    """By that opening, where the engine has nothing that lifts the line; by no closed engine.

    What only says where to open is never too late.
    """
    plain = Precedence(frozenset())
    assert plain.too_late(line.check, frozenset({line.opening, Access.OUTSIDE})) is line.spoilt
    assert not plain.too_late(line.check, frozenset())
    others = {b.opening for b in BEFORE if b.check is line.check}
    assert not plain.too_late(line.check, frozenset(set(Access) - others))
    same = [b for b in BEFORE if b.check is line.check and b.opening is line.opening]
    for lifted in line.not_with:
        still = any(lifted not in b.not_with for b in same)
        assert (
            Precedence(frozenset({lifted})).too_late(line.check, frozenset({line.opening})) is still
        )


@pytest.mark.parametrize("features", [(), *{b.not_with[:1] for b in BEFORE if b.not_with}])
def test_what_comes_first_is_named_outermost_first(features: tuple[Finding, ...]) -> None:
    """Each opening's lines in the order of the openings, then what goes before the check itself."""
    later = FIRST_OF[0].then[0]
    way = [OPENINGS[a] for a in (Access.SUMP_OFF, Access.DRAINED)]
    expected = [
        (b.check, b.why)
        for opening in way
        for b in BEFORE
        if b.opening is opening.access and not set(features) & set(b.not_with)
    ]
    expected += [(f.check, f.why) for f in FIRST_OF if later in f.then]
    assert list(Precedence(frozenset(features)).before(option_at(way, later))) == expected


# ------------------------------------------------------------------------- what a check is worth


def random_views(seed: int) -> tuple[SingleCauseModel, StackedTables, list[list[list[float]]]]:
    """Views of checks of several signs, and their rows as plain numbers."""
    rng = np.random.default_rng(seed)
    weight = rng.dirichlet(np.ones(5))
    signs = {f"f{i}": tuple(rng.uniform(0.02, 0.98, 5)) for i in range(6)}
    table = table_of(tuple(weight), **signs)
    outcome_tables = OutcomeTables(table)
    parts = (("f0",), ("f1", "f2"), ("f3", "f4", "f5"))
    views = [
        outcome_tables.view(check(f"i{i}", 1, *map(finding, p)), ()) for i, p in enumerate(parts)
    ]
    known = [v for v in views if v is not None]
    return table, StackedTables.of(known), [v.rows.tolist() for v in known]


@pytest.mark.parametrize("seed", range(5))
def test_adds_and_shows_cause_by_cause(seed: int) -> None:
    """Bayes' rule outcome by outcome, in loops: the doubt taken away, and what is seen of it."""
    table, stack, rows = random_views(seed)
    weight = table.weight.tolist()
    adds, shows = stack.adds(table.weight), stack.shows(table.weight)
    for v, outcomes in enumerate(rows):
        for c, before in enumerate(weight):
            named, seen = 0.0, 0.0
            for k, row in enumerate(outcomes):
                after = row[c] * before / sum(p * w for p, w in zip(row, weight, strict=True))
                named += row[c] * after
                if k < len(outcomes) - 1:
                    seen += row[c] * max(0.0, (after - before) / (1 - before))
            assert adds[v, c] == pytest.approx(max(0.0, (named - before) / (1 - before)))
            assert shows[v, c] == pytest.approx(seen)


def test_an_impossible_outcome_has_no_value() -> None:
    """A sign that no cause ever shows: no gain, and no number that is none."""
    table = table_of((0.6, 0.4), a=(0.0, 0.0))
    view = OutcomeTables(table).view(check("i", 1, finding("a")), ())
    assert view is not None
    stack = StackedTables.of([view])
    assert stack.gains(table.weight) == pytest.approx([0.0])
    assert stack.adds(table.weight) == pytest.approx(np.zeros((1, 2)))
    assert stack.shows(table.weight) == pytest.approx(np.zeros((1, 2)))


def test_a_certain_cause_has_nearly_all_the_weight() -> None:
    """Odds of 999 to one beside even odds; a cause out of the question is left out."""
    net = Network({"a": 0.1, "b": 0.1, "c": 0.1}, {})
    table = single_cause_model(net, {"a": 1.0, "b": 0.5, "c": 0.001})
    assert table.causes == ("a", "b")
    assert table.weight == pytest.approx([0.999, 0.001])


# ---------------------------------------------------------------------------------- the choice


def begun(table: SingleCauseModel, *opened: Access) -> PlanState:
    return PlanState(table.weight, frozenset(), frozenset({Access.OUTSIDE, *opened}))


@pytest.mark.parametrize("factor", [0.5, 1.0, 1.5, 3.0])
def test_a_check_takes_longer_without_experience(factor: float) -> None:
    tree = AccessTree(OPENINGS, Pace(factor=factor))
    assert tree.check_minutes(check("i", 8)) == 8 * factor
    assert tree.check_minutes(check("i", 0.25)) == 1.0


def test_spoilt_and_done_checks_are_no_options() -> None:
    """Every check the book says is lost, once the opening that loses it stands open."""
    for line in (b for b in BEFORE if b.spoilt):
        sign = line.check.reveals[0].id
        table = table_of((0.5, 0.5), **{sign: (0.9, 0.1)})
        tree = AccessTree(OPENINGS)
        chooser = Chooser(OutcomeTables(table), tree, (line.check,), Precedence(frozenset()))
        assert not chooser.options(begun(table, line.opening)), line.check.id
        now = begun(table)
        if tree.may_do(line.check, now.opened):
            assert len(chooser.options(now)) == 1
            assert not chooser.options(replace(now, done=frozenset({line.check})))


def test_a_check_that_shows_nothing_hides_none_behind_it() -> None:
    """Checks of nothing known, done, unreachable or already answered leave the rest as options."""
    table = table_of((0.5, 0.5), a=(0.9, 0.1), b=(0.9, 0.1))
    good, done = check("good", 2, finding("a")), check("done", 2, finding("a"))
    dull, answered_one = check("dull", 2, finding("unknown")), check("answered", 2, finding("b"))
    inside = check("inside", 2, finding("a"), at=Access.SUMP_OFF)
    now = replace(begun(table), done=frozenset({done}), answered=frozenset(answered_one.reveals))
    for order in permutations((good, done, dull, answered_one, inside)):
        chooser = Chooser(OutcomeTables(table), OUTSIDE, order, Precedence(frozenset()))
        assert [o.inspection for o in chooser.options(now)] == [good]


def test_behind_a_cover_new_findings_come_first() -> None:
    """A sign of the first cause is looked for at the drain: in the sump the other cause comes first.

    Alone, the first cause's second sign would pay more.
    """
    table = table_of((0.48, 0.4, 0.12), a=(0.9, 0, 0), b=(0.9, 0, 0), c=(0, 0.9, 0))
    drain = check("drain", 1, finding("a"), at=Access.DRAINED)
    same = check("same", 1, finding("b"), at=Access.SUMP_OFF)
    other = check("other", 1.1, finding("c"), at=Access.SUMP_OFF)
    drained = Opening(Access.DRAINED, "", (), 100, 100, NOBODY)
    sump = Opening(Access.SUMP_OFF, "", (Access.DRAINED,), 1, 1, NOBODY)
    tree = AccessTree({o.access: o for o in (drained, sump)})
    now = PlanState(table.weight, frozenset(), frozenset())

    def block(*checks: Inspection) -> tuple[Inspection, ...]:
        chooser = Chooser(OutcomeTables(table), tree, checks, Precedence(frozenset()))
        choice = chooser.choose(now, deep=False)
        assert choice is not None
        return choice.block

    assert block(same, other) == (same, other)
    assert block(drain, same, other) == (drain, other, same)


def test_of_two_checks_alike_the_first_given_is_taken() -> None:
    """The same plan every time: ties as the book gives them, one step ahead and two."""
    table = table_of((0.5, 0.5), a=(0.9, 0.1), b=(0.9, 0.1))
    alike = (check("one", 2, finding("a")), check("other", 2, finding("b")))
    for checks, deep in product(permutations(alike), (False, True)):
        chooser = Chooser(OutcomeTables(table), OUTSIDE, checks, Precedence(frozenset()))
        choice = chooser.choose(begun(table), deep=deep)
        assert choice is not None
        assert choice.option.inspection is checks[0]


def test_a_dearer_follow_up_that_pays_better_counts() -> None:
    """By hand: two minutes part one cause from two, three minutes more part those two.

    Odds 35, 35 and 30 in a hundred. The first check lifts the sum of squares from 0.335 to 0.65;
    seven times in ten the second lifts it from a half to one: 0.5 / 3 is more than 0.315 / 2.
    """
    table = table_of((0.35, 0.35, 0.30), a=(0, 0, 1), b=(1, 0, 0))
    checks = (check("first", 2, finding("a")), check("second", 3, finding("b")))
    chooser = Chooser(OutcomeTables(table), OUTSIDE, checks, Precedence(frozenset()), 0.999999)
    choice = chooser.choose(begun(table))
    assert choice is not None
    assert choice.option.inspection is checks[0]
    assert choice.value == pytest.approx((0.315 + 0.7 * 0.5) / (2 + 0.7 * 3))
    assert planned_sequence(chooser, begun(table))[0].choice.value == choice.value


def test_a_check_that_would_be_lost_comes_first_where_it_pays_half() -> None:
    """A sender behind which the gauge port is: looked at first from half the choice's worth on."""
    look = next(b.check for b in BEFORE if b.check.id == "look_at_the_sender")
    sign = look.reveals[0]
    tree = AccessTree(OPENINGS)
    port = check("at_the_port", 10, finding("a"), at=Access.GAUGE_PORT)
    seen = set()
    for strength in np.linspace(0.02, 0.98, 49):
        table = table_of((0.5, 0.5), a=(0.95, 0.05), **{sign.id: (float(strength), 0.0)})
        chooser = Chooser(OutcomeTables(table), tree, (port, look), Precedence(frozenset()))
        choice = chooser.choose(begun(table), deep=False)
        assert choice is not None
        # what each adds to the sum of squares, 0.5 before, for a minute
        dear = 0.405 / (
            10 + tree.opening_minutes(tree.way(Access.GAUGE_PORT, {Access.OUTSIDE}) or ())
        )
        rest = 1 - strength / 2
        squares = strength / 2 + (0.25 * (1 - strength) ** 2 + 0.25) / rest
        cheap = (squares - 0.5) / look.minutes
        first = cheap >= dear / 2
        assert choice.option.inspection is (look if first else port)
        assert bool(choice.evidence) is bool(dear / 2 <= cheap <= dear)
        seen.add((first, bool(choice.evidence)))
    assert len(seen) == 3, "too little, half as much, and more"


# ------------------------------------------------------------------------------------ the line


@pytest.mark.parametrize("seed", range(3))
def test_the_line_keeps_its_accounts(seed: int) -> None:
    """What each check names is taken off what is left; its outcomes are Bayes' rule, and all."""
    table, _, _ = random_views(seed)
    checks = [check(f"i{i}", 3.0 + i, finding(f"f{i}")) for i in range(6)]
    chooser = Chooser(OutcomeTables(table), OUTSIDE, tuple(checks), Precedence(frozenset()), 0.95)
    line = planned_sequence(chooser, begun(table))
    assert line[0].left == 1.0
    assert len({link.choice.option.inspection.id for link in line}) == len(line) > 2
    for link, following in pairwise(line):
        assert following.left == pytest.approx(link.left - link.named)
        assert following.plan_state.minutes == link.plan_state.minutes + link.choice.option.minutes
    for link in line:
        assert math.fsum(o.chance for o in link.outcomes) == pytest.approx(1.0)
        yes = np.asarray(table.shows[link.choice.option.findings[0].id]) * link.plan_state.weight
        assert link.outcomes[0].chance == pytest.approx(float(yes.sum()))
        assert link.outcomes[0].weight == pytest.approx(yes / yes.sum())
        for o in link.outcomes:
            assert o.settles is bool(o.weight.max() >= 0.95)
            if o.settles or o.chance < 0.1:
                assert o.then is None


def test_only_a_likely_outcome_is_followed() -> None:
    """A sign seen seven times in a hundred has no way on worked out; its absence has."""
    table = table_of((0.5, 0.5), a=(0.1, 0.04), b=(0.9, 0.1))
    checks = (check("rare", 1, finding("a")), check("telling", 500, finding("b")))
    chooser = Chooser(OutcomeTables(table), OUTSIDE, checks, Precedence(frozenset()), 0.95)
    seen, not_seen = planned_sequence(chooser, begun(table))[0].outcomes
    assert seen.chance == pytest.approx(0.07)
    assert not seen.settles
    assert seen.then is None
    assert not_seen.then is checks[1]

"""Checks that must come before evidence is lost: every line can be kept on every layout."""

from __future__ import annotations

import networkx as nx
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.bookcheck.access import binding, predecessors
from diagnose.bookcheck.shapes import Whole
from knowledge.access import openings_for
from knowledge.access.precedence import BEFORE, FIRST_OF, Before
from knowledge.book import the_book
from knowledge.engines.features import PUMP_ON_CRANK_NOSE, PUMP_OUTSIDE
from knowledge.model import Finding, Kind
from knowledge.work import Access, Inspection
from tests.knowledge.test_access import way_to
from tests.support.every import every
from tests.support.examples import examples

BOOK = the_book()
WHOLE = Whole(BOOK)
CHECKS = tuple(BOOK.inspections.values())
LAYOUTS = tuple(BOOK.layouts.values())
FEATURES = tuple(f for f in BOOK.findings.values() if f.kind is Kind.LAYOUT)
Node = Access | str


def graph_of(
    has: set[Finding], checks: tuple[Inspection, ...] = CHECKS, running: bool = False
) -> nx.DiGraph[Node]:
    """Places and checks, an arrow from what comes first."""
    tree = openings_for(lambda f: f in has)
    first = predecessors(WHOLE, tree, has, checks, running)
    graph: nx.DiGraph[Node] = nx.DiGraph()
    graph.add_nodes_from(Access)
    graph.add_edges_from((before, node) for node, befores in first.items() for before in befores)
    return graph


def all_has() -> list[tuple[str, set[Finding]]]:
    """Each layout as known, and the typical tree where nothing is known."""
    return [(layout.id, set(layout.has)) for layout in LAYOUTS]


@every(BEFORE, lambda b: f"{b.check.id}-{b.opening}")
def test_a_line_names_what_the_book_holds(line: Before) -> None:
    assert BOOK.inspections[line.check.id] is line.check
    assert line.opening in Access
    assert set(line.not_with) <= set(BOOK.findings.values())
    assert line.why
    assert line.source.title
    assert not line.why.endswith(".")


def test_first_of_names_what_the_book_holds() -> None:
    for line in FIRST_OF:
        assert line.then
        assert line.why
        assert line.source.title
        for check in (line.check, *line.then):
            assert BOOK.inspections[check.id] is check
        assert line.check not in line.then
        assert len(set(line.then)) == len(line.then), line.check.id


def test_no_line_is_written_twice() -> None:
    opened = [(b.check.id, b.opening) for b in BEFORE]
    assert len(set(opened)) == len(opened)
    firsts = [(f.check.id, t.id) for f in FIRST_OF for t in f.then]
    assert len(set(firsts)) == len(firsts)


@settings(max_examples=examples(150), deadline=None)
@given(st.sets(st.sampled_from(FEATURES)))
def test_an_odd_engine_has_an_order_too(has: set[Finding]) -> None:
    """Features may be entered in any combination."""
    graph = graph_of(has, running=True)
    assert nx.is_directed_acyclic_graph(graph), nx.find_cycle(graph)


@pytest.mark.parametrize("features", [PUMP_OUTSIDE, PUMP_ON_CRANK_NOSE], ids=lambda f: f.id)
def test_a_pump_reached_from_outside_does_not_wait_for_the_sump(features: Finding) -> None:
    """No look from below holds up a pump, a strainer or a pump cover that is reached without it."""
    tree = openings_for(lambda f: f is features)
    graph = graph_of({features})
    for place in (Access.PUMP_OFF, Access.PUMP_COVER_OFF):
        before = {n for n in nx.ancestors(graph, place) if isinstance(n, Access)}
        assert Access.SUMP_OFF not in before
        assert Access.DRAINED in way_to(tree, place) & before


@settings(max_examples=examples(200), deadline=None)
@given(
    st.sampled_from(all_has()),
    st.sets(st.sampled_from(CHECKS), min_size=1, max_size=30),
    st.randoms(use_true_random=False),
)
def test_any_plan_can_be_sorted(
    engine: tuple[str, set[Finding]], wanted: set[Inspection], order: st.DataObject
) -> None:
    """Whatever checks are wanted, in whatever order given, one order keeps every line."""
    shuffled = sorted(wanted, key=lambda c: c.id)
    order.shuffle(shuffled)  # type: ignore[attr-defined]
    has = engine[1]
    graph = graph_of(has, tuple(shuffled))
    place = {node: i for i, node in enumerate(nx.topological_sort(graph))}
    for check in shuffled:
        assert place[check.access] < place[check.id]
    for line in binding(BEFORE, has, wanted):
        assert place[line.check.id] < place[line.opening]
    for first in FIRST_OF:
        for later in first.then:
            if {first.check, later} <= wanted:
                assert place[first.check.id] < place[later.id]


@pytest.mark.parametrize("access", Access)
def test_checks_of_one_place_can_be_sorted(access: Access) -> None:
    here = [c for c in CHECKS if c.access is access]
    graph: nx.DiGraph[str] = nx.DiGraph()
    graph.add_nodes_from(c.id for c in here)
    graph.add_edges_from(
        (f.check.id, t.id) for f in FIRST_OF if f.check in here for t in f.then if t in here
    )
    assert nx.is_directed_acyclic_graph(graph), nx.find_cycle(graph)


def order_in(graph: nx.DiGraph[Node], first: Node, later: Node) -> bool:
    return nx.has_path(graph, first, later)


@pytest.mark.parametrize(
    ("first", "later"),
    [
        ("read_the_stick", Access.DRAINED),
        ("look_at_the_drain", Access.DRAINED),
        ("look_at_the_filter", Access.FILTER_OFF),
        ("twist_the_pickup", Access.PICKUP_OFF),
        ("measure_pickup_gap", Access.PICKUP_OFF),
        ("look_at_the_screen", Access.PICKUP_OFF),
        ("measure_crank_end_float", Access.CAP_OFF),
        ("see_the_distributor_seat", Access.DISTRIBUTOR_OUT),
        ("strobe_the_timing", Access.DISTRIBUTOR_OUT),
        ("watch_the_rotor_cranked", Access.DRAINED),
        ("watch_the_rotor_cranked", Access.FILTER_OFF),
        ("spin_the_pump_by_drill", Access.PUMP_COVER_OFF),
        ("turn_the_key_and_look", Access.ENGINE_EASED),
        ("turn_the_key_and_look", Access.CRANK_OUT),
        ("swing_the_gauge_by_its_lead", Access.CRANK_OUT),
        ("look_at_sender_and_wire", Access.GAUGE_PORT),
        ("catch_sump_contents", "look_at_the_screen"),
        ("catch_sump_contents", "turn_engine_watch_pump"),
        ("look_up_at_the_bottom_end", "turn_crank_past_tray"),
        ("look_at_the_tray", "turn_crank_past_tray"),
        ("look_at_the_pump_joint", Access.PUMP_COVER_OFF),
        ("look_into_the_opened_pump", "measure_gear_end_clearance"),
        ("pull_the_relief_valve", "drop_test_the_plunger"),
        ("pull_the_relief_valve", "bench_test_relief"),
        ("lift_one_cap", "lay_plastic_thread"),
        ("lift_one_cap", "measure_journals_and_seats"),
        ("cut_the_filter_open", "sort_what_the_filter_held"),
        ("fit_a_direct_gauge", "try_the_right_grade"),
        ("send_an_oil_sample", "try_the_right_grade"),
        ("fit_a_direct_gauge", "fill_over_the_mark"),
        ("send_an_oil_sample", "fill_over_the_mark"),
    ],
)
def test_the_trades_hard_rules_hold(first: Node, later: Node) -> None:
    """The shop's own list of what comes before what, on a common V8."""
    has = set(BOOK.layouts["distributor_v8"].has)
    graph = graph_of(has, running=True)
    assert order_in(graph, first, later)


def test_everything_in_the_open_sump_waits_for_the_catch() -> None:
    """Nothing else at the open sump is done before its contents are bagged."""
    graph = graph_of(set())
    for check in CHECKS:
        if check.access is Access.SUMP_OFF and check.id != "catch_sump_contents":
            assert order_in(graph, "catch_sump_contents", check.id), check.id

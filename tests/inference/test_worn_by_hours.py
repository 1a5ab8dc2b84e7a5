"""Wear is one root: what hours of running wear together is supported and denied together.

Common practice, no source: an engine whose mains are worn has worn rods and a worn pump as well,
and clearances measured wide at several places mean wear by hours rather than one bad journal.
"""

from __future__ import annotations

from functools import cache

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.inference import causegraph
from diagnose.inference.chaining import Facts, InferenceResult, Observation, infer
from diagnose.inference.elimination import posterior, prior_marginals
from diagnose.inference.network import SEEN, SEEN_NOT_THERE
from diagnose.planning.single_cause import single_cause_model
from knowledge.book import the_book
from knowledge.circuit.conditions import WORN_BY_HOURS
from knowledge.history import findings as history
from knowledge.model import Cause, Finding, State

BOOK = the_book()
FED = [
    link.child.id
    for link in infer(BOOK.statements, Facts()).links
    if link.parent is WORN_BY_HOURS and isinstance(link.child, Cause)
]
MAINS, RODS = "bearing_wear_mains", "bearing_wear_rods"
SIX_PSI = """
[[reading]]
no = 1
when = 2026-01-01
rpm = "700 rpm"
oil = "90 C"
pressure = "6 psi"
"""
MEASURED = """
[[finding]]
no = {no}
when = 2026-01-01
what = "{what}"
value = "{value}"
"""
WIDE_MAINS = MEASURED.format(no=2, what="main_clearance", value="0.0045 in")
WIDE_RODS = MEASURED.format(no=3, what="rod_clearance", value="0.004 in")


SEEN_THERE = """
[[finding]]
no = {no}
when = 2026-01-01
what = "{what}"
state = "present"
"""
OVAL = SEEN_THERE.format(no=4, what="journal_not_true")
REBUILT = SEEN_THERE.format(no=5, what="freshly_rebuilt")


@cache
def diagnosed(*entries: str) -> Diagnosis:
    """A V8 with these entries."""
    engine = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
    return Diagnosis(BOOK, from_text(engine + "".join(entries), None, BOOK))


def chance(answer: Diagnosis, cause: str) -> float:
    return answer.inference.posterior.marginal[cause]


def test_mains_and_rods_measured_wide_lead() -> None:
    """6 psi at hot idle, mains 0.0045 in, rods 0.004 in: wear of both, not one rough journal."""
    answer = diagnosed(SIX_PSI, WIDE_MAINS, WIDE_RODS)
    assert {r.cause.id for r in answer.ranking[:2]} == {MAINS, RODS}
    assert chance(answer, "journal_finish") < min(chance(answer, MAINS), chance(answer, RODS)) / 2
    assert answer.inference.belief(WORN_BY_HOURS.id) > 0.3


def test_journals_that_hours_wore_oval_are_worn_bearings() -> None:
    """Mains 0.0045 in on oval journals, rods sound: wear, in an engine nobody has just built."""
    sound = MEASURED.format(no=3, what="rod_clearance", value="0.002 in")
    old = diagnosed(SIX_PSI, WIDE_MAINS, sound, OVAL)
    assert old.ranking[0].cause.id == MAINS
    assert chance(old, MAINS) > 3 * chance(old, "journal_finish")
    fresh = diagnosed(SIX_PSI, WIDE_MAINS, sound, OVAL, REBUILT)
    assert fresh.ranking[0].cause.id == "journal_finish"


@pytest.mark.parametrize(("cause", "other"), [(MAINS, WIDE_RODS), (RODS, WIDE_MAINS)])
def test_each_clearance_supports_the_other_bearing(cause: str, other: str) -> None:
    own = WIDE_MAINS if cause == MAINS else WIDE_RODS
    alone, both = diagnosed(SIX_PSI, own), diagnosed(SIX_PSI, own, other)
    assert chance(both, cause) > 1.2 * chance(alone, cause)
    finding = "rod_clearance_too_wide" if cause == MAINS else "main_clearance_too_wide"
    (weight,) = [w for w in both.reasons.for_cause(cause) if w.what == finding]
    assert weight.decibans > 1.0
    assert chance(diagnosed(SIX_PSI, other), cause) > 3 * chance(diagnosed(SIX_PSI), cause)


def after(*facts: tuple[Finding, State]) -> InferenceResult:
    return infer(BOOK.statements, Facts({f: Observation(s) for f, s in facts}))


def before_evidence(conclusions: InferenceResult) -> dict[str, float]:
    graph = causegraph.build(BOOK.causes, conclusions)
    return prior_marginals(causegraph.as_network(graph))


def test_in_an_ordinary_engine_each_cause_is_as_common_as_its_rate() -> None:
    """The root takes its part of the rate, and the rest stays with the cause."""
    found = before_evidence(after())
    total = sum(c.rate.value for c in BOOK.causes.values())
    for cause in BOOK.causes.values():
        right = causegraph.EXPECTED_CAUSES * cause.rate.value / total
        assert found[cause.id] == pytest.approx(right, rel=1e-9)
    network = causegraph.as_network(causegraph.build(BOOK.causes, after()))
    assert network.fed == set(FED)
    assert all(network.prior[c] < found[c] for c in FED)


def test_mileage_raises_all_wear_together_and_a_rebuild_resets_it() -> None:
    ordinary = before_evidence(after())
    worn = before_evidence(after((history.HIGH_MILEAGE, State.PRESENT)))
    fresh = before_evidence(after((history.FRESHLY_REBUILT, State.PRESENT)))
    for cause in FED:
        assert worn[cause] > 1.3 * ordinary[cause], cause
    assert worn[MAINS] > 1.7 * ordinary[MAINS]
    for cause in (MAINS, RODS, "pump_gear_wear"):
        assert fresh[cause] < 0.5 * ordinary[cause], cause


def test_a_cause_this_engine_cannot_have_is_not_fed() -> None:
    """The graph of every layout builds, and an excluded cause is not in it."""
    for layout in BOOK.layouts.values():
        conclusions = after(
            *((f, State.PRESENT) for f in layout.has), *((f, State.ABSENT) for f in layout.lacks)
        )
        graph = causegraph.build(BOOK.causes, conclusions)
        assert not {c.id for c in conclusions.excluded} & set(graph)
        own = {c for c in FED if c in graph}
        assert BOOK.causes.keys() & set(graph.successors(WORN_BY_HOURS.id)) == own


def test_a_cause_rarer_on_an_engine_is_less_often_brought_about_by_hours() -> None:
    """A shop's factor of a half halves the prior and the root's strength."""
    whole = causegraph.build(BOOK.causes, after())
    half = causegraph.build(BOOK.causes, after(), {MAINS: 0.5})
    edges = [g.edges[WORN_BY_HOURS.id, MAINS]["strength"] for g in (whole, half)]
    assert edges[1] == pytest.approx(edges[0] / 2)
    ratio = {
        c: prior_marginals(causegraph.as_network(half))[c]
        / prior_marginals(causegraph.as_network(whole))[c]
        for c in (MAINS, "oil_level_low")
    }
    assert ratio[MAINS] / ratio["oil_level_low"] == pytest.approx(0.5)


def test_the_planner_knows_the_root_from_the_cause() -> None:
    """P(worn by hours | this cause and no other of those it feeds), exactly."""
    network = causegraph.as_network(causegraph.build(BOOK.causes, after()))
    table = single_cause_model(network, prior_marginals(network))
    for i, cause in enumerate(table.causes):
        others = dict.fromkeys(network.fed - {cause}, SEEN_NOT_THERE)
        found = posterior(network, {**others, cause: SEEN}).marginal[WORN_BY_HOURS.id]
        assert table.shows[WORN_BY_HOURS.id][i] == pytest.approx(found, abs=1e-12)
    given = table.shows[WORN_BY_HOURS.id]
    assert given.max() > 100 * given.min()

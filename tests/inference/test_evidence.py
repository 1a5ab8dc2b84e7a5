"""Which findings become evidence: each observation counts once, unknown findings never."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from diagnose.inference.chaining import Facts, Observation, infer
from diagnose.inference.evidence import gather, likelihood_of
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Likelihood
from diagnose.library import parse_case
from diagnose.reasoning.case_inference import CaseInference
from knowledge.book import the_book
from knowledge.model import Finding, Kind, State
from knowledge.pressure.patterns import GAUGE_READS_LOW
from knowledge.rule_api import Conclusions, Known, Rule, is_absent, is_present
from tests.support.examples import one_in
from tests.support.situations import CASES, situation

BOOK = the_book()
A, B, C, D = [f for f in BOOK.findings.values() if f.kind is Kind.SEEN][:4]
THERE, NOT_THERE = Observation(State.PRESENT), Observation(State.ABSENT)
Body = Callable[[Known], Conclusions]


def rule(name: str, body: Body) -> Rule:
    """A rule with any examples."""
    return replace(next(iter(BOOK.rules.values())), id=name, does=body)


def follows(premise: Finding, conclusion: Finding, sure: float = 1.0) -> Rule:
    """The one follows from the other."""

    def body(known: Known) -> Conclusions:
        if known.has(premise):
            yield is_present(conclusion, sure)

    return rule(f"{premise.id}-{conclusion.id}", body)


def evidence_of(
    rules: list[Rule], observations: dict[Finding, Observation], linked: set[Finding]
) -> dict[str, Likelihood]:
    """The evidence, where the graph holds only these findings."""
    return gather(observations, infer(rules, Facts(observations)), {f.id for f in linked})


def test_a_report_as_likelihoods() -> None:
    """Pearl's virtual evidence: an unsure report is a ratio, not a mixture."""
    assert likelihood_of(THERE) == SEEN
    assert likelihood_of(NOT_THERE) == SEEN_NOT_THERE
    assert likelihood_of(Observation(State.PRESENT, 0.75)) == Likelihood(0.25, 0.75)
    assert likelihood_of(Observation(State.ABSENT, 0.75)) == Likelihood(0.75, 0.25)


def test_what_follows_from_evidence_is_no_evidence_itself() -> None:
    assert evidence_of([follows(A, B)], {A: THERE}, {A, B}) == {A.id: SEEN}


def test_what_follows_from_a_report_outside_the_graph_is_evidence() -> None:
    """A finding outside the graph counts through what follows from it."""
    assert evidence_of([follows(A, B, 0.8)], {A: THERE}, {B}) == {B.id: Likelihood.of(0.8)}


@pytest.mark.parametrize("linked", [{A, B, C, D}, {A, D}, {A, C, D}])
def test_one_report_is_counted_once_along_a_chain(linked: set[Finding]) -> None:
    """B from A, C from B, D from C: A is evidence, so none of the others is."""
    chain = [follows(A, B), follows(B, C), follows(C, D)]
    assert evidence_of(chain, {A: THERE}, linked) == {A.id: SEEN}


def test_along_a_chain_the_first_in_the_graph_is_the_evidence() -> None:
    chain = [follows(A, B), follows(B, C, 0.9), follows(C, D)]
    assert evidence_of(chain, {A: THERE}, {C, D}) == {C.id: Likelihood.of(0.9)}


def test_a_question_answered_no_is_no_premise() -> None:
    """ "A or B, so C": A reported absent is evidence itself and does not remove C, which B gave."""

    def either(known: Known) -> Conclusions:
        if known.has(A) or known.has(B):
            yield is_present(C)

    found = evidence_of([rule("either", either)], {A: NOT_THERE, B: THERE}, {A, C})
    assert found == {A.id: SEEN_NOT_THERE, C.id: SEEN}


def test_a_finding_derived_both_ways_is_no_evidence() -> None:
    def denies(known: Known) -> Conclusions:
        if known.has(B):
            yield is_absent(C)

    assert evidence_of([follows(A, C), rule("denies", denies)], {A: THERE, B: THERE}, {C}) == {}


def test_the_surer_of_two_derivations_counts() -> None:
    rules = [follows(A, C, 0.7), follows(B, C, 0.9)]
    assert evidence_of(rules, {A: THERE, B: THERE}, {C}) == {C.id: Likelihood.of(0.9)}


def test_a_report_overrides_what_is_derived() -> None:
    assert evidence_of([follows(A, B)], {A: THERE, B: NOT_THERE}, {B}) == {B.id: SEEN_NOT_THERE}


@pytest.mark.parametrize("name", one_in(6, list(CASES)))
def test_only_findings_of_the_graph_are_evidence(name: str) -> None:
    """Never layout or history, never a cause or condition, never what says nothing."""
    case = situation(name)
    for id_, seen in case.evidence.items():
        assert BOOK.findings[id_].kind is Kind.SEEN
        assert case.graph.nodes[id_]["layer"] == "finding"
        assert seen.if_absent != seen.if_present or seen == Likelihood.of(0.5)


SAID_LOW = """
schema = 1
[[behaviour]]
no = 1
shows = "low"
during = ["at speed"]
[[reading]]
no = 2
rpm = "idle"
oil = "hot"
pressure = "14 psi"
"""


def test_what_was_reported_outranks_a_typical_figure() -> None:
    """14 psi is enough at idle on most engines; a person who says it is low knows this one."""
    reading_alone = SAID_LOW[: SAID_LOW.index("[[behaviour]]")]
    reading_alone += SAID_LOW[SAID_LOW.index("[[reading]]") :]
    found = [
        CaseInference(BOOK, parse_case(text)).evidence[GAUGE_READS_LOW.id]
        for text in (SAID_LOW, reading_alone)
    ]
    assert found[0].there
    assert not found[1].there

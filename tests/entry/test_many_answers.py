"""A person who answers every question of every check keeps the answer: nothing said is dropped."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.reasoning import case_inference
from knowledge.book import the_book
from tests.support.command_line import ROOT
from tests.support.examples import one_in
from tests.support.three_jobs import A, C, WholeJob, finding_entry

BOOK = the_book()
CASES = sorted((ROOT / "cases").glob("*.toml"))


def answered(job: WholeJob, checks: int) -> Diagnosis:
    """The job after so many checks, each answered whole: "no" to all that its owner has not."""
    text, no = job.facts, 20
    for _ in range(checks):
        choice = Diagnosis(BOOK, from_text(text, None, BOOK)).next_check
        assert choice is not None
        for finding in choice.inspection.reveals:
            if f'"{finding.id}"' not in text:
                no += 1
                state = "present" if finding.id in job.seen else "absent"
                text += finding_entry(no, finding.id, state)
    return Diagnosis(BOOK, from_text(text, None, BOOK))


@pytest.mark.parametrize(("job", "says"), [(A, "needle_flickers"), (C, "gauge_reads_low")])
def test_what_was_said_first_still_counts(job: WholeJob, says: str) -> None:
    """After seven checks, some fifty answers, most of them "no"."""
    answer = answered(job, 7)
    assert len(answer.inference.evidence) > 45
    assert answer.inference.left_out == ()
    assert says in answer.inference.evidence
    assert answer.next_check is not None


@pytest.mark.own_diagnoses
@pytest.mark.parametrize("path", one_in(3, CASES), ids=lambda p: p.stem)
def test_an_absence_without_its_inhibitors_is_close(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where the sum is small enough to compute both ways: a few points, and the same leader."""
    exact = Diagnosis(BOOK, load(path, BOOK)).inference
    assert exact.ranking
    monkeypatch.setattr(case_inference, "MOST_ENTRIES", 0)
    close = Diagnosis(BOOK, load(path, BOOK)).inference
    assert len(close.network.inhibitors) < len(exact.network.inhibitors)
    # the order of a sum is a good guess, so fewer inhibitors may cost a little more
    assert close.posterior.effort <= exact.posterior.effort * 1.25
    assert {r.cause.id: r.probability for r in close.ranking} == pytest.approx(
        {r.cause.id: r.probability for r in exact.ranking}, abs=0.04
    )
    assert close.ranking[0].cause is exact.ranking[0].cause

"""The cause "a big outside leak, place not found yet" stands for every leak until one is found."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

BOOK = the_book()
LEAK = "external_leak_major"


def diagnosis(*findings: str) -> Diagnosis:
    """The diagnosis of an engine of unknown layout with these findings, '-' before an absent one."""
    text = 'schema = 1\n[engine]\nlayout = "unknown"\n'
    for no, finding in enumerate(findings, 1):
        state = "absent" if finding.startswith("-") else "present"
        text += f'[[finding]]\nno = {no}\nwhat = "{finding.lstrip("-")}"\nstate = "{state}"\n'
    return Diagnosis(BOOK, from_text(text, None, BOOK))


@pytest.mark.parametrize("sight", ["oil_seen_outside", "oil_on_the_ground", "oil_loss_fast"])
def test_seen_oil_puts_it_first_with_the_figure_of_all_leaks(sight: str) -> None:
    """Its figure is the probability that oil leaves the engine, whatever leaks."""
    answer = diagnosis("gauge_reads_zero", "fell_suddenly", sight)
    first = answer.ranking[0]
    assert first.cause.id == LEAK
    assert first.probability == pytest.approx(answer.inference.belief("oil_escaping"))
    assert first.probability > 2 * answer.inference.posterior.marginal[LEAK]


@pytest.mark.parametrize(
    ("place", "cause"),
    [
        ("filler_cap_found_off", "filler_cap_off"),
        ("drain_plug_found_loose", "drain_plug_out"),
        ("oil_line_found_broken", "oil_line_leak"),
    ],
)
def test_a_place_found_takes_its_place(place: str, cause: str) -> None:
    answer = diagnosis("gauge_reads_zero", "oil_seen_outside", "oil_loss_fast", place)
    assert answer.ranking[0].cause.id == cause
    shown = {row.cause.id: row.probability for row in answer.ranking}
    assert shown[LEAK] == pytest.approx(answer.inference.posterior.marginal[LEAK])


@pytest.mark.parametrize(
    "facts", [["engine_runs_normally"], ["needle_follows_loads"], ["-oil_seen_outside"]]
)
def test_without_a_sign_of_lost_oil_it_is_one_leak_among_others(facts: list[str]) -> None:
    answer = diagnosis(*facts)
    shown = {row.cause.id: row.probability for row in answer.ranking}
    assert shown[LEAK] == pytest.approx(answer.inference.posterior.marginal[LEAK])

"""A relief valve called bad points to the valve; the word does not choose how it is bad."""

from __future__ import annotations

from functools import cache

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

BOOK = the_book()
FOUND = """
[[finding]]
no = {no}
when = 2026-01-01
what = "{what}"
state = "present"
"""
FAMILY = (
    "relief_stuck_open",
    "relief_bore_scored",
    "relief_spring_weak_broken",
    "relief_debris",
    "relief_hunting",
)


@cache
def chances(*findings: str) -> dict[str, float]:
    """The posterior of each cause of a V8 with these findings."""
    entries = "".join(FOUND.format(no=n, what=f) for n, f in enumerate(findings, 1))
    text = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n' + entries
    answer = Diagnosis(BOOK, from_text(text, None, BOOK))
    return dict(answer.inference.posterior.marginal)


@pytest.mark.parametrize("cause", FAMILY)
def test_every_way_of_being_bad_gains(cause: str) -> None:
    before = chances("low_at_all_speeds")
    assert chances("low_at_all_speeds", "relief_found_bad")[cause] > 2 * before[cause]


def test_the_valve_leads_and_no_way_is_settled() -> None:
    found = chances("gauge_reads_low", "relief_found_bad")
    family = {c: p for c, p in found.items() if c.startswith("relief_")}
    assert max(found, key=lambda c: found[c] if c in BOOK.causes else 0.0) in family
    assert max(family.values()) < 0.6


def test_what_was_seen_of_it_decides() -> None:
    found = chances("low_at_all_speeds", "relief_found_bad", "relief_spring_short_or_broken")
    assert found["relief_spring_weak_broken"] > 0.9

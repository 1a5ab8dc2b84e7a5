"""A sight that defines a cause is hardly ever there without it."""

from __future__ import annotations

from functools import cache

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.model import ALWAYS, Cause, Finding, Stage
from knowledge.rule_api import LinkGroup

BOOK = the_book()
#: sights that a cause always leads to and that do not define it, and why (judgement)
NOT_DEFINING = {
    "seal_or_gasket_wet": "most old engines seep somewhere and lose nothing by it",
    "sender_leaks_oil": "a sender that weeps loses no oil to speak of",
    "sump_dented": "most dents are nowhere near the pickup",
    "filter_seat_leaks": "many filters weep a little, and few of them lose the pressure",
    "feed_not_seen": "looked for where no gauge is; what a pressure engine shows there says little",
    "idle_below_spec": "many engines idle a little slowly and hold their pressure",
}


@cache
def defining() -> dict[Finding, tuple[str, ...]]:
    """Causes by the looked-for finding that each of them always leads to."""
    found: dict[Finding, tuple[str, ...]] = {}
    for group in BOOK.statements:
        for link in group.links if isinstance(group, LinkGroup) else ():
            child, parent = link.child, link.parent
            if not isinstance(child, Finding) or child.stage is Stage.KNOWN:
                continue
            if isinstance(parent, Cause) and link.strength is ALWAYS:
                found[child] = (*found.get(child, ()), parent.id)
    return found


@cache
def priors() -> dict[str, float]:
    """The prior of every cause on an engine of which nothing is known."""
    answer = Diagnosis(BOOK, from_text('schema = 1\n[engine]\nlayout = "unknown"\n', None, BOOK))
    return {row.cause.id: row.prior for row in answer.ranking}


@pytest.mark.parametrize("finding", defining(), ids=lambda f: f.id)
def test_background_stands_below_a_third_of_the_prior(finding: Finding) -> None:
    prior = max(priors().get(cause, 0.0) for cause in defining()[finding])
    below = finding.background.value < prior / 3
    assert below is (finding.id not in NOT_DEFINING), NOT_DEFINING.get(finding.id, "")


@pytest.mark.parametrize("layout", ["distributor_v8", "small_diesel"])
def test_measured_mains_name_the_mains(layout: str) -> None:
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n'
    for no, word in enumerate(("gauge_reads_low", "main_clearance_too_wide"), 1):
        text += f'[[finding]]\nno = {no}\nwhat = "{word}"\nstate = "present"\n'
    first = Diagnosis(BOOK, from_text(text, None, BOOK)).ranking[0]
    assert first.cause.id == "bearing_wear_mains"
    assert first.probability > 10 * first.prior


def test_many_sights_are_held_to_it() -> None:
    assert len(defining()) >= 40
    assert set(NOT_DEFINING) <= {finding.id for finding in defining()}

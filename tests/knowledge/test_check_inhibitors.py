"""``diagnose check``: it finds what is wrong with inhibitors, and with roots that feed causes."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from diagnose.bookcheck.duplicates import duplicates, strengths
from diagnose.bookcheck.examples import ExampleRunner, of_statement
from diagnose.bookcheck.names import names
from diagnose.bookcheck.shapes import Result, Whole
from diagnose.bookcheck.sources import sources
from diagnose.inference import causegraph
from diagnose.inference.chaining import Facts, infer
from knowledge.book import the_book
from knowledge.circuit.conditions import OIL_SHORT, WORN_BY_HOURS
from knowledge.model import MOSTLY, Cause, Finding, Rate, Station
from knowledge.pressure.patterns import FELL_SUDDENLY, NEEDLE_FLICKERS
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import JUDGEMENT
from knowledge.stations.relief.causes import RELIEF_DEBRIS, RELIEF_STUCK_CLOSED

BOOK = the_book()
BULGED, HOURS = "bulged_was_over_pressure", "hours_wear_everything_together"
NOWHERE = Finding(id="somewhere_else", station=Station.OIL, says="s", asks="s?", source=JUDGEMENT)


def group(**changed: Any) -> InhibitorGroup:
    """The inhibitors of a filter that bulged, with some fields changed."""
    return replace(BOOK.inhibitors[BULGED], **changed)


def inhibited_by(weighed: Any, cause: Cause = RELIEF_DEBRIS) -> InhibitorGroup:
    """The same with one inhibitor only."""
    return group(inhibited_by={cause: weighed})


def having(changed: InhibitorGroup) -> Whole:
    """The book with that group."""
    return Whole(replace(BOOK, inhibitors={**BOOK.inhibitors, changed.id: changed}))


def worn(**changed: Any) -> Whole:
    """The book with the root of wear changed."""
    condition = replace(WORN_BY_HOURS, **changed)
    hours = replace(BOOK.links[HOURS], links=(), parent=condition)
    conditions = {**BOOK.conditions, condition.id: condition}
    return Whole(replace(BOOK, conditions=conditions, links={**BOOK.links, HOURS: hours}))


def oil_short_with_a_rate() -> Whole:
    condition = replace(OIL_SHORT, rate=Rate.RARE)
    return Whole(replace(BOOK, conditions={**BOOK.conditions, condition.id: condition}))


BROKEN: list[tuple[Callable[[Whole], Result], Callable[[], Whole], str]] = [
    (names, lambda: having(group(child=NOWHERE)), "names somewhere_else"),
    (
        sources,
        lambda: having(inhibited_by((MOSTLY, None))),
        f"inhibitors: {BULGED}: relief_debris to filter_bulged: no source",
    ),
    (
        strengths,
        lambda: having(inhibited_by((0.4, JUDGEMENT))),
        "relief_debris inhibits filter_bulged: 0.4 is not on the scale",
    ),
    (
        strengths,
        lambda: having(group(child=NOWHERE)),
        "relief_debris inhibits somewhere_else, which nothing leads to",
    ),
    (
        strengths,
        lambda: worn(rate=None),
        "worn_by_hours leads to the cause bearing_wear_mains and has no rate on the scale",
    ),
    (
        strengths,
        lambda: worn(rate=Rate.VERY_COMMON),
        "worn_by_hours alone brings about more of bearing_wear_mains than its rate allows",
    ),
    (strengths, oil_short_with_a_rate, "conditions: oil_short has a rate and feeds no cause"),
    (
        duplicates,
        lambda: having(group(id="again")),
        f"relief_debris inhibits filter_bulged in more than one place: again, {BULGED}",
    ),
    (
        duplicates,
        lambda: having(group(id="again", child=FELL_SUDDENLY)),
        "relief_debris both leads to fell_suddenly and inhibits it: chip_under_the_ball, again",
    ),
]


@pytest.mark.parametrize(("check", "broken", "fault"), BROKEN, ids=[f for *_, f in BROKEN])
def test_each_fault_is_found(
    check: Callable[[Whole], Result], broken: Callable[[], Whole], fault: str
) -> None:
    faults = check(broken()).faults
    assert any(fault in f for f in faults), faults[:5]
    assert not any(fault in f for f in check(Whole(BOOK)).faults)


def test_a_graph_cannot_hold_a_link_and_an_inhibitor_of_one_pair() -> None:
    both = having(group(id="again", child=FELL_SUDDENLY)).book
    with pytest.raises(ValueError, match="relief_debris both leads to fell_suddenly"):
        causegraph.build(both.causes, infer(both.statements, Facts()))


def test_what_nothing_leads_to_is_not_in_the_graph() -> None:
    book = having(group(child=NOWHERE)).book
    assert NOWHERE.id not in causegraph.build(book.causes, infer(book.statements, Facts()))


def test_a_group_holds_inhibitors_of_one_end() -> None:
    with pytest.raises(ValueError, match="give a parent"):
        group(parent=RELIEF_DEBRIS)
    with pytest.raises(ValueError, match="give a parent"):
        group(inhibited_by={})


FLICKERS = example(NEEDLE_FLICKERS)


@pytest.mark.parametrize(
    ("broken", "fault"),
    [
        (lambda: group(says="No sentence"), "first line is not the sentence"),
        (lambda: group(matches=()), "no example of a match"),
        (lambda: group(non_matches=()), "no example of a non-match"),
        (lambda: group(matches=(FLICKERS,)), "match 1 holds none of the findings"),
        (lambda: group(matches=(FLICKERS,)), "no match holds what relief_debris inhibits"),
        (
            lambda: inhibited_by((MOSTLY, JUDGEMENT), RELIEF_STUCK_CLOSED),
            "match 1 leaves relief_stuck_closed as probable",
        ),
        (
            lambda: group(non_matches=group().matches),
            "non-match 1 is as improbable as the matches",
        ),
    ],
)
def test_faults_of_examples_are_found(broken: Callable[[], InhibitorGroup], fault: str) -> None:
    """Each broken group has its fault; the same group unbroken has none."""
    found = list(of_statement(broken(), ExampleRunner(BOOK)))
    assert any(fault in f for f in found), found
    assert not list(of_statement(group(), ExampleRunner(BOOK)))

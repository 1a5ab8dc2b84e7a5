"""Findings that a rebuilder reads together name the cause he puts first (common practice)."""

from __future__ import annotations

import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from tests.support.trade_answers import case_text

BOOK = the_book()
DATA = Path(__file__).parents[1] / "data" / "known_combinations.toml"
EVERY: list[dict[str, Any]] = tomllib.loads(DATA.read_text("utf-8"))["combination"]
WITH_ANSWER = [c for c in EVERY if "answers" in c]
FEWEST_SURE, FEWEST_FIRST = 0.75, 0.9  #: of the combinations


def marked(combinations: list[dict[str, Any]], *flaws: str) -> list[Any]:
    """The combinations as parameters; those with one of these flaws must fail."""
    found = []
    for c in combinations:
        reason = next((c[flaw] for flaw in flaws if flaw in c), "")
        marks = [pytest.mark.xfail(reason=reason, strict=True)] if reason else []
        found.append(pytest.param(c, id=c["id"], marks=marks))
    return found


@cache
def diagnosis(text: str) -> Diagnosis:
    return Diagnosis(BOOK, from_text(text, None, BOOK))


@pytest.mark.parametrize("combination", marked(EVERY, "missed"))
def test_answer_of_the_trade_comes_first(combination: dict[str, Any]) -> None:
    """One of the trade's answers leads; what tempts, but is wrong, does not."""
    first, *others = [row.cause.id for row in diagnosis(case_text(combination)).ranking[:3]]
    if "not_first" in combination:
        assert first not in combination["not_first"]
    elif combination["sure"]:
        assert first in combination["answers"]
    else:
        assert set(combination["answers"]) & {first, *others}


@pytest.mark.parametrize("combination", marked(WITH_ANSWER, "missed", "unsure"))
def test_answer_is_as_sure_as_the_trade_is(combination: dict[str, Any]) -> None:
    answer = diagnosis(case_text(combination))
    ranked = {row.cause.id: row.probability for row in answer.ranking}
    state = answer.inference.posterior.marginal.get(combination.get("state", ""), 0.0)
    together = sum(ranked.get(a, 0.0) for a in combination["answers"])
    assert max(together, state) >= combination["sure"]
    assert next(iter(ranked)) in combination["answers"] or not combination["sure"]


def test_words_are_those_of_the_book() -> None:
    for combination in EVERY:
        assert {fact.lstrip("-") for fact in combination["facts"]} <= set(BOOK.findings)
        asked = combination.get("answers", []) + combination.get("not_first", [])
        assert asked
        assert set(asked) <= set(BOOK.causes)
        assert combination.get("state", "bearings_damaged") in BOOK.conditions


def test_most_are_known() -> None:
    assert len(EVERY) >= 100
    missed = sum("missed" in c for c in EVERY)
    unsure = sum("unsure" in c for c in EVERY)
    assert len(EVERY) - missed >= FEWEST_FIRST * len(EVERY)
    assert len(EVERY) - missed - unsure >= FEWEST_SURE * len(EVERY)

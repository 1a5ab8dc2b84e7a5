"""Twenty classic complaints: the trade's first answers are among the tool's (common practice)."""

from __future__ import annotations

import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

BOOK = the_book()
DATA = Path(__file__).parent / "data" / "classic_complaints.toml"
COMPLAINTS: list[dict[str, Any]] = tomllib.loads(DATA.read_text("utf-8"))["complaint"]
NUMBERS = range(1, len(COMPLAINTS) + 1)


@cache
def first_five(number: int) -> tuple[str, ...]:
    """Ids of the five causes the tool ranks first."""
    complaint = COMPLAINTS[number - 1]
    has = ", ".join(f'"{feature}"' for feature in complaint.get("has", ()))
    text = f'schema = 1\n[engine]\nlayout = "{complaint["engine"]}"\nhas = [{has}]\n'
    for no, fact in enumerate(complaint["facts"], 1):
        state = "absent" if fact.startswith("-") else "present"
        text += f'[[finding]]\nno = {no}\nwhat = "{fact.lstrip("-")}"\nstate = "{state}"\n'
    answer = Diagnosis(BOOK, from_text(text, None, BOOK))
    return tuple(row.cause.id for row in answer.ranking[:5])


def shared(number: int) -> int:
    """How many of the trade's first three answers are among the tool's first five."""
    return len(set(COMPLAINTS[number - 1]["trade"][:3]) & set(first_five(number)))


def is_right(number: int) -> bool:
    """Two of the trade's first three in the tool's five; the tool's first in the trade's five."""
    return shared(number) >= 2 and first_five(number)[0] in COMPLAINTS[number - 1]["trade"]


def test_twenty_complaints_of_known_words() -> None:
    assert len(COMPLAINTS) == 20
    for complaint in COMPLAINTS:
        assert {fact.lstrip("-") for fact in complaint["facts"]} <= set(BOOK.findings)
        assert set(complaint["trade"]) <= set(BOOK.causes)
        assert 3 <= len(complaint["trade"]) <= 5


@pytest.mark.parametrize("number", NUMBERS)
def test_none_is_off(number: int) -> None:
    """At least one of the trade's first three answers is among the tool's first five."""
    assert shared(number) >= 1, first_five(number)


def test_seventeen_are_right() -> None:
    right = [number for number in NUMBERS if is_right(number)]
    assert len(right) >= 17, f"right: {right}"

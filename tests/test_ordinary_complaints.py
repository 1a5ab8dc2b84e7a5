"""Ordinary complaints: the trade's first answers are among the tool's (common practice)."""

from __future__ import annotations

import json
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

BOOK = the_book()
DATA = Path(__file__).parent / "data" / "ordinary_complaints.toml"
COMPLAINTS: list[dict[str, Any]] = tomllib.loads(DATA.read_text("utf-8"))["complaint"]
NUMBERS = range(1, len(COMPLAINTS) + 1)
ASIDE = [number for number in NUMBERS if COMPLAINTS[number - 1].get("aside")]
DEVELOPED = [number for number in NUMBERS if number not in ASIDE]
TABLES = ("reading", "behaviour", "trial", "earlier")


def case_text(complaint: dict[str, Any]) -> str:
    """Return the complaint as the text of a case file."""
    lines = ["schema = 1", "[engine]", f'layout = "{complaint["engine"]}"']
    lines.append(f"has = {json.dumps(complaint.get('has', []))}")
    no = 0
    for fact in complaint["facts"]:
        no += 1
        state = "absent" if fact.startswith("-") else "present"
        lines += ["[[finding]]", f"no = {no}", f'what = "{fact.lstrip("-")}"', f'state = "{state}"']
    for table in TABLES:
        for entry in complaint.get(table, ()):
            no += 1
            lines += [f"[[{table}]]", f"no = {no}"]
            lines += [f"{key} = {json.dumps(value)}" for key, value in entry.items()]
    return "\n".join(lines) + "\n"


@cache
def diagnosed(number: int) -> Diagnosis:
    """Diagnose one complaint."""
    return Diagnosis(BOOK, from_text(case_text(COMPLAINTS[number - 1]), None, BOOK))


def first_five(number: int) -> tuple[str, ...]:
    """Ids of the five causes the tool ranks first."""
    return tuple(row.cause.id for row in diagnosed(number).ranking[:5])


def shared(number: int) -> int:
    """How many of the trade's first three answers are among the tool's first five."""
    return len(set(COMPLAINTS[number - 1]["trade"][:3]) & set(first_five(number)))


def is_right(number: int) -> bool:
    """Two of the trade's first three in the tool's five; the tool's first in the trade's list."""
    return shared(number) >= 2 and first_five(number)[0] in COMPLAINTS[number - 1]["trade"]


def test_every_second_complaint_is_kept_aside() -> None:
    assert len(COMPLAINTS) >= 40
    assert abs(len(DEVELOPED) - len(ASIDE)) <= 2
    for complaint in COMPLAINTS:
        assert {fact.lstrip("-") for fact in complaint["facts"]} <= set(BOOK.findings)
        assert set(complaint["trade"]) <= set(BOOK.causes)
        assert 3 <= len(complaint["trade"]) <= 5


@pytest.mark.parametrize("number", DEVELOPED)
def test_none_is_off(number: int) -> None:
    """At least one of the trade's first three answers is among the tool's first five."""
    assert shared(number) >= 1, first_five(number)


@pytest.mark.parametrize(
    ("half", "least", "most_off"),
    [
        pytest.param(DEVELOPED, 18, 0, id="developed"),
        pytest.param(
            ASIDE,
            15,
            0,
            id="aside",
            marks=pytest.mark.xfail(
                strict=True,
                reason="one fresh build, good cold and low hot, is taken for a wrong pump gasket, as "
                "slip, wide clearances and less delivery fit its readings almost alike: 14",
            ),
        ),
    ],
)
def test_most_are_right(half: list[int], least: int, most_off: int) -> None:
    right = [number for number in half if is_right(number)]
    off = [number for number in half if shared(number) == 0]
    assert len(right) >= least, f"{len(right)} right of {len(half)}"
    assert len(off) <= most_off, f"{len(off)} off"

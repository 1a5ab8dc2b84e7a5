"""Trials and findings in a few words: the lists are sound, and enough of each is read.

``data/trials_said.toml`` says one thing that was tried and what came of it in many ways,
``data/findings_said.toml`` a finding in a few words. Every tenth is tried by default.
"""

from __future__ import annotations

import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.reports.words import Result
from tests.support.readers import by_tell
from tests.support.stated_facts import follow, in_tables

DATA = Path(__file__).parents[1] / "data"
#: least share that is read: what is reached
LEAST_TRIALS, LEAST_FINDINGS = 0.92, 0.92
STEPS = [10, pytest.param(1, marks=pytest.mark.long)]


@cache
def trials() -> list[dict[str, Any]]:
    """The texts with a trial, each with the trials and results it states."""
    found: list[dict[str, Any]] = tomllib.loads((DATA / "trials_said.toml").read_text("utf-8"))[
        "trial"
    ]
    return found


@cache
def findings() -> list[tuple[str, str]]:
    """Each finding with a phrase for it."""
    listed = tomllib.loads((DATA / "findings_said.toml").read_text("utf-8"))
    return [(finding, phrase) for finding, phrases in listed.items() for phrase in phrases]


def test_the_lists_are_of_the_book() -> None:
    """Every id is of the book, every result a word of reports, and no text stands there twice."""
    book = the_book()
    results = {r.value for r in Result}
    assert {f for f, _ in findings()} <= book.findings.keys()
    stated = [tuple(s) for each in trials() for s in each["states"]]
    assert {t for t, _ in stated} <= book.trials.keys()
    assert {r for _, r in stated} <= results
    assert len({each["text"] for each in trials()}) == len(trials())


@pytest.mark.parametrize("step", STEPS)
def test_enough_trials_are_read(step: int) -> None:
    """All trials of a text with their results, and no other."""
    some = trials()[::step]
    right = sum(_trials_in(each["text"]) == [tuple(s) for s in each["states"]] for each in some)
    print(f"{right} of {len(some)}")
    assert right / len(some) >= LEAST_TRIALS


def _trials_in(text: str) -> list[tuple[str, str]]:
    facts = read(f"low oil pressure at idle. {text}", the_book()).facts
    return sorted((f.name, f.state) for f in facts if f.table == "trial")


@pytest.mark.parametrize("step", STEPS)
def test_enough_findings_are_read(step: int) -> None:
    """The finding of a phrase is stated or follows by the rules."""
    some = findings()[::step]
    right = sum(_states(phrase, finding) for finding, phrase in some)
    print(f"{right} of {len(some)}")
    assert right / len(some) >= LEAST_FINDINGS


def _states(phrase: str, finding: str) -> bool:
    seen = follow(in_tables(by_tell(f"Low oil pressure. {phrase}")))
    return (finding, "present") in seen

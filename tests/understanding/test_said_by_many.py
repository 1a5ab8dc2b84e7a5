"""How much is read of what many kinds of people would write for each finding, trial and work, all kept back.

``data/findings_kept_back.toml`` and ``data/trials_kept_back.toml`` were written from the book's lists alone;
nothing was changed for them. Every twentieth is tried by default, every fifth of trials and work.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.model import State
from knowledge.reports.words import Result
from tests.support.readers import by_tell
from tests.support.stated_facts import follow, in_tables

BOOK = the_book()
DATA = Path(__file__).parents[1] / "data"
STEPS = [20, pytest.param(1, marks=pytest.mark.long)]
FEW_STEPS = [5, pytest.param(1, marks=pytest.mark.long)]
#: least share that is read, and most of which the contrary is read: what is reached, less a few for chance
LEAST_FINDINGS, LEAST_TRIALS, LEAST_WORK = 0.45, 0.48, 0.75
MOST_CONTRARY = 0.04


@cache
def listed(name: str) -> dict[str, Any]:
    found: dict[str, Any] = tomllib.loads((DATA / f"{name}_kept_back.toml").read_text("utf-8"))
    return found


def findings() -> Iterator[tuple[str, str, str]]:
    """Each finding with "present" or "absent" and a text that says so."""
    for finding, states in listed("findings").items():
        for state, texts in states.items():
            yield from ((finding, state, text) for text in texts)


def test_the_lists_are_of_the_book() -> None:
    assert {f for f, _, _ in findings()} <= BOOK.findings.keys()
    assert {s for _, s, _ in findings()} == {s.value for s in State}
    trials, work = listed("trials")["trial"], listed("trials")["work"]
    assert {t for each in trials for t, _ in each["states"]} <= BOOK.trials.keys()
    assert {r for each in trials for _, r in each["states"]} <= {r.value for r in Result}
    assert {w for each in work for w in each["states"]} <= BOOK.areas.keys()


@pytest.mark.parametrize("step", STEPS)
def test_findings(step: int) -> None:
    """The finding is stated, follows by the rules, or is a feature of the engine."""
    some = list(findings())[::step]
    read_as = [_state(text, finding) for finding, _, text in some]
    right = sum(is_ == state for is_, (_, state, _) in zip(read_as, some, strict=True))
    contrary = sum(is_ not in ("", state) for is_, (_, state, _) in zip(read_as, some, strict=True))
    print(f"{right} of {len(some)}, contrary {contrary}")
    assert right / len(some) >= LEAST_FINDINGS
    assert contrary / len(some) <= MOST_CONTRARY


def _state(text: str, finding: str) -> str:
    """Whether a text says that a finding is there or not; empty for neither."""
    tables: Mapping[str, Any] = by_tell(f"Low oil pressure. {text}")
    if finding in tables.get("engine", {}).get("has", []):
        return State.PRESENT.value
    seen = {s.finding: s.state for s in follow(in_tables(tables))}
    return seen.get(finding, "")


@pytest.mark.parametrize("step", FEW_STEPS)
def test_trials(step: int) -> None:
    """All trials of a text with their results, and no other."""
    some = listed("trials")["trial"][::step]
    right = sum(_trials(each["text"]) == sorted(map(tuple, each["states"])) for each in some)
    print(f"{right} of {len(some)}")
    assert right / len(some) >= LEAST_TRIALS


def _trials(text: str) -> list[tuple[str, str]]:
    facts = read(f"Low oil pressure at idle. {text}", BOOK).facts
    return sorted((f.name, f.state) for f in facts if f.table == "trial")


@pytest.mark.parametrize("step", FEW_STEPS)
def test_work(step: int) -> None:
    """The work before the trouble is among what is read of the text."""
    some = listed("trials")["work"][::step]
    right = sum(set(each["states"]) <= _work(each["text"]) for each in some)
    print(f"{right} of {len(some)}")
    assert right / len(some) >= LEAST_WORK


def _work(text: str) -> set[str]:
    facts = read(f"Low oil pressure at idle. {text}", BOOK).facts
    return {f.name for f in facts if f.table == "earlier"} | {"nothing"}

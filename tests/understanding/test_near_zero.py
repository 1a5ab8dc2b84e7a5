"""Pressure that is said to be next to nothing at idle: low, with a figure close to zero."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

#: the words, the facts that must be read, those that must not
SAID: tuple[tuple[str, tuple[str, ...], tuple[str, ...]], ...] = (
    (
        "gauge drops to almost nothing when it idles after a long run",
        ("reading 1 to 5 psi idle, late in a run", "behaviour low idle, late in a run"),
        ("behaviour none idle, late in a run",),
    ),
    (
        "gauge drops to almost nothing when it idles after a long run, 45 when i throttle up",
        ("reading 1 to 5 psi idle, late in a run",),
        ("reading 1 to 5 psi cruise, late in a run",),
    ),
    (
        "needle barely off the peg at hot idle",
        ("reading 1 to 5 psi hot, idle", "behaviour low idle, hot"),
        (),
    ),
    (
        "pressure near zero at idle once warm",
        ("reading 1 to 5 psi hot, idle", "behaviour low idle, hot"),
        ("behaviour none idle, hot",),
    ),
    (
        "hardly any oil pressure at tickover, about 4 psi",
        ("reading about 4 psi idle",),
        ("reading 1 to 5 psi idle",),
    ),
    (
        "there is next to nothing on the dipstick, oil pressure good at idle",
        ("finding dipstick_dry present",),
        ("reading 1 to 5 psi idle",),
    ),
    (
        "gauge on zero at hot idle, the leak is next to nothing",
        ("behaviour none idle, hot",),
        ("reading 1 to 5 psi hot, idle",),
    ),
)


@pytest.mark.parametrize(("words", "wanted", "unwanted"), SAID, ids=[c[0] for c in SAID])
def test_next_to_nothing(words: str, wanted: tuple[str, ...], unwanted: tuple[str, ...]) -> None:
    """What is wanted is among the facts, what is unwanted is not."""
    found = {fact.short for fact in read(words, the_book()).facts}
    assert set(wanted) <= found, found
    assert not set(unwanted) & found


@pytest.mark.parametrize(
    ("words", "slow"),
    [
        ("My engine has 0 psi at start after an oil change and then gradually rises", True),
        ("no pressure on the gauge at startup then it slowly comes up to 40", True),
        ("zero at startup. It eventually builds to 50.", True),
        ("no oil pressure on cold start, takes a while to come up", True),
        ("no pressure at start but comes up when I rev it", False),
        ("no pressure at start and it never comes up", False),
        ("no pressure at start, would it come up later?", False),
    ],
)
def test_missing_at_the_start_and_then_there(words: str, slow: bool) -> None:
    """It is slow to build, and no reading of nothing; with revs, or never, it is not."""
    shows = {f.fields.get("shows") for f in read(words, the_book()).facts}
    assert ("slow to build" in shows) is slow
    assert ("none" in shows) is not slow

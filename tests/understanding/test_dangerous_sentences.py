"""Negations, questions, fears, plans, other engines: nothing dangerous is read into them."""

from __future__ import annotations

import pytest

from tests.support.readers import by_lookup, by_tell
from tests.support.sentences import Dangerous, dangerous
from tests.support.stated_facts import Tables, follow


def test_none_is_lost_or_twice() -> None:
    """Each forbids something, and what must be read makes a case."""
    assert len({d.text for d in dangerous()}) == len(dangerous()) >= 132
    for each in dangerous():
        assert each.never, each.text
        follow(each.must)


@pytest.mark.parametrize("sentence", dangerous(), ids=lambda d: d.text[:40])
def test_nothing_is_misread(sentence: Dangerous) -> None:
    """Nothing forbidden is read, nor follows from what is read."""
    assert not sentence.misread_by(by_tell)


def test_what_must_be_read_is_read() -> None:
    """A reader that reads nothing is no answer to danger: most of what is plainly said is found."""
    asked = [d for d in dangerous() if d.must]
    missed = {d.text: [str(f) for f in d.missed_by(by_tell)] for d in asked}
    assert sum(not m for m in missed.values()) >= 0.5 * len(asked), missed


def test_lookup_alone_misreads_many() -> None:
    """The list can catch a reader: words without grammar fail on a quarter or more."""
    assert sum(bool(d.misread_by(by_lookup)) for d in dangerous()) >= 15


def test_what_was_forbidden_is_noticed() -> None:
    """As a finding, as what follows from a behaviour, as a figure, as anything of a kind."""

    def misread(never: dict[str, str], tables: Tables) -> bool:
        return bool(Dangerous("x", (never,)).misread_by(lambda text: tables))

    lamp = {"behaviour": [{"shows": "lamp"}]}
    assert misread({"present": "lamp_comes_on"}, lamp)
    assert misread({"shows": "lamp"}, lamp)
    assert not misread({"absent": "lamp_comes_on"}, lamp)
    assert not misread({"present": "gauge_reads_zero"}, lamp)
    figure = {"reading": [{"pressure": "4 bar", "rpm": "idle"}]}
    assert misread({"pressure": "58 psi"}, figure)
    assert not misread({"pressure": "60 psi"}, figure)
    assert misread({"reading": "any"}, figure)
    tried = {"trial": [{"what": "new_pump", "result": "no difference"}]}
    assert misread({"trial": "new_pump"}, tried)
    assert not misread({"trial": "new_sender"}, tried)

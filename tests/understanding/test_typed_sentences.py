"""Sentences as people type them: the list is sound, and enough of it is read, and read right.

``python -m tests.studies.reading`` prints precision and recall by kind of fact.
"""

from __future__ import annotations

from functools import cache

from knowledge.book import the_book
from knowledge.reports.words import Circumstance, Course, Shows, Since
from tests.support.agreement import Outcome, total
from tests.support.every import every
from tests.support.readers import by_lookup, by_tell
from tests.support.sentences import Sentence, typed
from tests.support.stated_facts import Tables, follow, in_tables

#: least precision and recall of what is developed on, all kinds together: what is reached;
#: the aim is 0.90 and 0.80
LEAST_PRECISION, LEAST_RECALL = 0.88, 0.80


@cache
def read(text: str) -> Tables:
    """What the reader makes of a text; each is read once."""
    return by_tell(text)


@cache
def outcomes() -> tuple[tuple[Sentence, Outcome], ...]:
    """What the reader makes of each sentence that is developed on."""
    return tuple((s, s.read_by(read)) for s in typed() if not s.kept_back)


def test_a_third_is_kept_back() -> None:
    """Every third of 150."""
    assert [s.kept_back for s in typed()] == [False, False, True] * 50
    assert len({s.text for s in typed()}) == 150


@every(typed(), lambda s: s.text[:40])
def test_the_facts_stated_make_a_case(sentence: Sentence) -> None:
    """Every id and word is of the book, and what may be read too."""
    book = the_book()
    follow(sentence.states)
    words = {w.value for kind in (Shows, Circumstance, Course, Since) for w in kind} | {"reading"}
    ids = book.findings.keys() | book.measures.keys() | book.trials.keys() | book.areas.keys()
    assert sentence.states
    assert sentence.may <= ids | words


def test_lookup_alone_reads_a_third() -> None:
    """What the reader is compared with: typing the words into ``lookup``."""
    found = total(s.read_by(by_lookup) for s in typed() if not s.kept_back).all
    assert 0.2 < found.precision < 0.5
    assert 0.2 < found.recall < 0.5


def test_enough_is_read_and_it_is_right() -> None:
    """Precision and recall over all kinds of fact."""
    found = total(o for _, o in outcomes()).all
    print(f"precision {found.precision:.0%}, recall {found.recall:.0%}")
    assert found.precision >= LEAST_PRECISION
    assert found.recall >= LEAST_RECALL


def test_every_text_read_makes_a_case() -> None:
    """Whatever is read can be written to a case file, the part kept back as well."""
    for sentence in typed():
        follow(in_tables(read(sentence.text)))

"""Sentences about every station: the list is sound, and its first half is read, and read right.

``python -m tests.studies.reading`` prints the figures of both halves.
"""

from __future__ import annotations

from knowledge.book import the_book
from knowledge.reports.words import Circumstance, Course, Shows, Since
from tests.support.agreement import total
from tests.support.every import every
from tests.support.readers import by_tell
from tests.support.sentences import Sentence, by_station
from tests.support.stated_facts import follow, in_tables

#: least precision and recall of the half that is developed on, all kinds together: what is reached
LEAST_PRECISION, LEAST_RECALL = 0.94, 0.94


def test_nearly_half_is_kept_back() -> None:
    """The second part of the list; no text stands in it twice."""
    kept = [s.kept_back for s in by_station()]
    assert kept == sorted(kept)
    assert sum(kept) >= 0.45 * len(kept)
    assert len({s.text for s in by_station()}) == len(kept)


@every(by_station(), lambda s: s.text[:40])
def test_the_facts_stated_make_a_case(sentence: Sentence) -> None:
    """Every id and word is of the book, and what may be read too."""
    book = the_book()
    follow(sentence.states)
    words = {w.value for kind in (Shows, Circumstance, Course, Since) for w in kind} | {"reading"}
    words |= {"hot or cold"}
    ids = book.findings.keys() | book.measures.keys() | book.trials.keys() | book.areas.keys()
    assert sentence.states
    assert sentence.may <= ids | words


def test_enough_is_read_and_it_is_right() -> None:
    """Precision and recall over all kinds of fact."""
    found = total(s.read_by(by_tell) for s in by_station() if not s.kept_back).all
    print(f"precision {found.precision:.0%}, recall {found.recall:.0%}")
    assert found.precision >= LEAST_PRECISION
    assert found.recall >= LEAST_RECALL


def test_every_text_read_makes_a_case() -> None:
    """Whatever is read can be written to a case file, the part kept back as well."""
    for sentence in by_station():
        follow(in_tables(by_tell(sentence.text)))

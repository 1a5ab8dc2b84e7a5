"""Short reports as people write them: the list is sound, and enough of it is read, and read right.

``python -m tests.studies.reading`` prints the figures of the part kept back as well.
"""

from __future__ import annotations

import pytest

from knowledge.book import the_book
from knowledge.reports.words import Circumstance, Course, Shows, Since
from tests.support.agreement import total
from tests.support.every import every
from tests.support.readers import by_tell
from tests.support.sentences import Sentence, reports
from tests.support.stated_facts import follow, in_tables

#: least precision and recall of what is developed on, all kinds together: what is reached
LEAST_PRECISION, LEAST_RECALL = 0.86, 0.76


def test_a_third_is_kept_back() -> None:
    """A third or nearly so; no text stands in the list twice."""
    kept = sum(s.kept_back for s in reports())
    assert 0.3 <= kept / len(reports()) <= 0.34
    assert len({s.text for s in reports()}) == len(reports())


@every(reports()[::4], lambda s: s.text[:40])
def test_the_facts_stated_make_a_case(report: Sentence) -> None:
    """Every id and word is of the book, and what may be read too."""
    book = the_book()
    follow(report.states)
    words = {w.value for kind in (Shows, Circumstance, Course, Since) for w in kind} | {"reading"}
    ids = book.findings.keys() | book.measures.keys() | book.trials.keys() | book.areas.keys()
    assert report.states
    assert report.may <= ids | words


@pytest.mark.parametrize("step", [4, pytest.param(1, marks=pytest.mark.long)])
def test_enough_is_read_and_it_is_right(step: int) -> None:
    """Precision and recall over all kinds of fact, of every fourth report and of all."""
    developed = [s for s in reports() if not s.kept_back]
    found = total(s.read_by(by_tell) for s in developed[::step]).all
    print(f"precision {found.precision:.0%}, recall {found.recall:.0%}")
    assert found.precision >= LEAST_PRECISION
    assert found.recall >= LEAST_RECALL


@every(reports()[::8], lambda s: s.text[:40])
def test_what_is_read_makes_a_case(report: Sentence) -> None:
    """Whatever is read can be written to a case file, the part kept back as well."""
    follow(in_tables(by_tell(report.text)))

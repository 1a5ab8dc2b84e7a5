"""Owners' stories of ``data/story_texts_*.toml``: the lists are sound, and reading them makes cases.

``python -m tests.studies.reading`` prints how much of them is read, and how much of that is right.
"""

from __future__ import annotations

from knowledge.book import the_book
from knowledge.reports.words import Circumstance, Course, Onset, Shows, Since
from tests.support.every import every
from tests.support.readers import by_tell
from tests.support.sentences import Sentence, owner_stories
from tests.support.stated_facts import follow, in_tables


def test_no_story_stands_twice() -> None:
    """No text stands in the lists twice."""
    assert owner_stories()
    assert len({s.text for s in owner_stories()}) == len(owner_stories())


@every(owner_stories(), lambda s: s.text[:40])
def test_the_facts_stated_make_a_case(story: Sentence) -> None:
    """Every id and word is of the book, and what may be read too."""
    book = the_book()
    follow(story.states)
    kinds = (Shows, Circumstance, Onset, Course, Since)
    words = {w.value for kind in kinds for w in kind} | {"reading"}
    ids = book.findings.keys() | book.measures.keys() | book.trials.keys() | book.areas.keys()
    assert story.states
    assert story.may <= ids | words


@every(owner_stories()[::4], lambda s: s.text[:40])
def test_what_is_read_makes_a_case(story: Sentence) -> None:
    """Whatever is read can be written to a case file."""
    follow(in_tables(by_tell(story.text)))

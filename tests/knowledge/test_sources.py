"""Sources: how far each may be trusted, by what it is and by where it was read."""

from __future__ import annotations

import re

from knowledge import sources
from knowledge.book import the_book
from knowledge.model import Source, all_in
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from tests.support.every import every

ALL = all_in(sources.__name__, Source)
MARKS = {"practice", "judgement", "memory"}
STRONG, COPY, MEDIUM, WEAK = "strong", "strong, read in a copy", "medium", "weak"
ADDRESS = re.compile(r"https?://[^\s/]+/\S+|https://www\.dtnatechlit\.com \(\d+\)")
#: a page, table, paragraph or figure of a named manual, or a standard by its number
PAGE = re.compile(
    r"\bpp?\.? ?\d|\bWP \d|\bTable \d|\bpara(graph)?s? \d|\bch\. ?\d|\bitem \d|\b1-S\d+|"
    r"\b(SAE J|ISO |ASTM )\d"
)
#: hosts that hold copies of makers' and official manuals
COPIES = re.compile(
    r"scribd|charm\.li|myvehicle\.help|saturn\.team|tpub\.com|manualslib|manualshelf|manualshive|"
    r"easymanua|yumpu|issuu|autorepairshq|lemon-manuals|alloemmanuals|carmanualsonline|nsndepot|"
    r"catengine|dieselmechanic|zatonevkredit|diesel-data"
)
#: pages where anybody writes
ANYBODY = re.compile(r"forum|/threads?[/.]|showthread|viewtopic|view_post|2carpros|experts123")


def ids(source: Source) -> str:
    return source.key


@every(ALL, ids)
def test_a_source_says_how_far_it_is_trusted(source: Source) -> None:
    assert source.trust in {STRONG, COPY, MEDIUM, WEAK, *MARKS}
    assert source.title[-1] not in ".,;"


@every([s for s in ALL if s.trust not in {WEAK, *MARKS}], ids)
def test_what_nobody_can_look_up_is_weak(source: Source) -> None:
    """More than weak needs an address with a page, a page of a manual, or a standard's number."""
    own = {sources.PHYSICS, sources.CIRCUIT_MODEL}  # the book's equations and its own calculation
    assert source in own or ADDRESS.search(source.title) or PAGE.search(source.title)


@every(ALL, ids)
def test_a_copy_says_that_it_is_one(source: Source) -> None:
    """A maker's text on somebody else's pages is not the maker's own."""
    if COPIES.search(source.title):
        assert source.trust != STRONG


@every(ALL, ids)
def test_what_anybody_may_write_is_weak(source: Source) -> None:
    if ANYBODY.search(source.title.lower()):
        assert source.trust == WEAK


def test_keys_are_unique() -> None:
    assert len({s.key for s in ALL}) == len(ALL)


def test_an_idea_is_marked_as_such() -> None:
    """Its own key, the title of where it was read, and a trust that is no source's."""
    idea = idea_from(sources.TRUCK_SERVICE_1994)
    assert idea is idea_from(sources.TRUCK_SERVICE_1994)
    assert idea.key == f"{sources.TRUCK_SERVICE_1994.key}*"
    assert idea.title.startswith("judgement, the idea from: ")
    assert sources.TRUCK_SERVICE_1994.title in idea.title
    assert idea.trust == "in part"


def test_an_idea_comes_from_a_source() -> None:
    """Never from a mark: what rests on judgement alone says so."""
    book = the_book()
    used = [
        *(w.source for w in book.findings.values()),
        *(w.source for w in book.causes.values()),
        *(w.source for w in book.conditions.values()),
        *(w.source for w in book.inspections.values()),
        *(w.source for w in book.rules.values()),
        *(w.source for w in book.tasks.values()),
        *(w.source for w in book.parts.values()),
        *(w.source for w in book.layouts.values()),
        *(link.source for group in book.links.values() for link in group.links),
    ]
    ideas = {s for s in used if s.trust == "in part"}
    assert ideas
    marks = {f"{s.key}*" for s in ALL if s.trust in MARKS}
    assert not {s.key for s in ideas} & marks
    assert {COMMON_PRACTICE, JUDGEMENT} <= set(used)

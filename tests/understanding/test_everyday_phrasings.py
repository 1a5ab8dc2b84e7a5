"""Everyday phrasings find the word meant, in the published list and in the one kept back."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import pytest

from diagnose.lookup.finder import KINDS, Finder, words_of
from diagnose.lookup.tokens import OTHER_NAMES, joined, stem, tokens
from knowledge.book import the_book
from knowledge.synonyms import ALIKE, IDLE, PHRASES

DATA = Path(__file__).parents[1] / "data" / "everyday_phrasings.toml"
LISTS: dict[str, list[dict[str, Any]]] = tomllib.loads(DATA.read_text("utf-8"))
BOOK = the_book()
FINDER = Finder(BOOK)
FIRST = 3  #: a right answer must be among so many
#: found in the first three before lookup was mended for the first list, and never for the second
BEFORE = {"phrasing": 89, "kept_back": 28, "reported": 5}
AT_LEAST = {"phrasing": 98, "kept_back": 33, "reported": 30}  #: as many as are found today


def found(phrasing: dict[str, Any]) -> bool:
    """Whether a right answer stands among the first."""
    hits = FINDER.find(phrasing["typed"], how_many=FIRST)
    return any(hit.word.id in phrasing["answers"] for hit in hits)


@pytest.mark.parametrize("name", LISTS)
def test_everyday_phrasings_find_the_expected_word(name: str) -> None:
    """Tells the share before the mending and now."""
    phrasings = LISTS[name]
    missed = [p["typed"] for p in phrasings if not found(p)]
    hits = len(phrasings) - len(missed)
    line = f"{name}: {BEFORE[name]} of {len(phrasings)} before the mending, {hits} now"
    print(line)
    assert hits >= AT_LEAST[name], f"{line}; not found: {missed}"


def test_the_lists_are_whole() -> None:
    """A hundred and seventy, none twice, each with what was hoped and ids of the book."""
    every = [p for phrasings in LISTS.values() for p in phrasings]
    assert {name: len(phrasings) for name, phrasings in LISTS.items()} == {
        "phrasing": 100,
        "kept_back": 40,
        "reported": 30,
    }
    assert len({p["typed"] for p in every}) == len(every)
    ids = {word.id for kind in KINDS for word in words_of(BOOK, kind)}
    for phrasing in every:
        assert phrasing["hoped"], phrasing["typed"]
        lost = set(phrasing["answers"]) - ids
        assert phrasing["answers"], phrasing["typed"]
        assert not lost, f"{phrasing['typed']}: not in the book: {lost}"
        assert len(phrasing["answers"]) <= 16, f"{phrasing['typed']}: too many answers to be strict"


def test_no_answer_is_a_special_case() -> None:
    """No phrasing is written out as an entry of the word lists, save a part's plain name."""
    typed = {p["typed"] for phrasings in LISTS.values() for p in phrasings if " " in p["typed"]}
    assert not typed & (set(PHRASES) | set(ALIKE))


def test_every_other_name_leads_to_a_word_of_the_book() -> None:
    """The second word of each pair is in use, else it would hide the first."""
    assert not sorted(k for k, word in OTHER_NAMES.items() if word not in FINDER.known)
    for text in PHRASES.values():
        assert set(tokens(text)) <= FINDER.known, text


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("the pick-up came loose", "pickup loose"),
        ("Rocker cover gaskets leaking", "valve cover gasket leaks"),
        ("big ends worn", "rod bearing wear"),
        ("petrol in the oil", "gas in oil"),
        ("oil pan", "sump"),
        ("won't drop", "does not drop"),
        ("clogged strainer", "blocked screen"),
        ("earth strap", "ground strap"),
        ("filled with 20W-50", "fill 10w40"),
        ("on a hillside", "on slopes"),
    ],
)
def test_two_ways_of_saying_one_thing(one: str, other: str) -> None:
    known = FINDER.known
    a, b = (set(joined(tokens(t), known)) - {"come"} for t in (one, other))
    assert a == b


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("gauge sinks as it warms", "good_cold_low_hot"),
        ("lamp flickers in turns and when I brake hard", "falls_in_a_manoeuvre"),
        ("wrong oil", "viscosity_too_low"),
        ("mains set too wide when rebuilt", "bearing_wrong_size"),
    ],
)
def test_what_owners_say_on_the_telephone_comes_first(typed: str, meant: str) -> None:
    assert FINDER.find(typed, how_many=1)[0].word.id == meant


def test_words_of_questions_say_nothing() -> None:
    assert tokens("what is it that the") == []
    assert not IDLE & set(ALIKE)
    assert tokens("25 psi at 2000 rpm") == ["rpm"]


@pytest.mark.parametrize("word", ["leak", "blocked", "bearing", "ring", "spring", "speed", "seal"])
def test_a_stem_is_its_own_stem(word: str) -> None:
    assert stem(stem(word)) == stem(word) == word

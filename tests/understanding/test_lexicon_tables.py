"""Tables of the lexicon, and short words and helping verbs inside its phrases."""

from __future__ import annotations

from importlib import import_module
from pkgutil import iter_modules

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.lexicon import described as described_package
from knowledge.lexicon import sights as package
from knowledge.lexicon.described import tables as described
from knowledge.lexicon.described.beside import BESIDE
from knowledge.lexicon.meant.must_name import NEEDS, OF_THE_PRESSURE
from knowledge.lexicon.sights import tables

SAID = {
    "oil pressure does not come up": "behaviour none",
    "the pressure would not come up": "behaviour none",
    "oil pressure did not come up": "behaviour none",
    "the oil light will not go off": "behaviour lamp",
    "oil pressure does not settle": "behaviour unsteady",
    "oil pressure doesn't settle": "behaviour unsteady",
    "oil pressure does not rise with the revs": "finding capped_low present",
    "pressure hardly goes up when I rev it": "finding capped_low present",
    "pressure came back as soon as I eased off": "finding back_when_slowed present",
    "the needle jumps every time the fan cuts in": "finding needle_follows_loads present",
    "tapping the dash makes the needle jump": "finding tap_frees_needle present",
    "front gallery plug was left out": "finding gallery_plug_found_missing present",
    "the capillary is pinched": "finding gauge_line_kinked present",
}
#: what is said, and what it does not say
NOT_SAID = {
    "the light does not flicker": "behaviour unsteady",
    "oil pressure does not drop": "behaviour low",
    "cooler line kinked behind the bulkhead": "finding gauge_line_kinked present",
    "driving home the oil light came on": "finding ran_on_without_pressure present",
    "the gauge showed nothing on a drive home": "finding oil_on_the_ground absent",
}


def test_each_finding_stands_in_one_file_of_sights() -> None:
    """Phrases of one finding in two files would hide each other."""
    modules = [
        import_module(f"{package.__name__}.{module.name}")
        for module in iter_modules(package.__path__)
    ]
    for name, gathered in (
        ("PHRASES", tables.SIGHTS),
        ("PHRASES_ABSENT", tables.SIGHTS_ABSENT),
        ("GROUPS", tables.TOGETHER),
        ("GROUPS_ABSENT", tables.TOGETHER_ABSENT),
    ):
        ids = [finding for module in modules for finding in getattr(module, name, ())]
        assert sorted(ids) == sorted(gathered)


def test_each_described_finding_stands_in_one_file() -> None:
    """Nor do groups of described parts hide each other; each is a finding of the book."""
    modules = [
        import_module(f"{described_package.__name__}.{module.name}")
        for module in iter_modules(described_package.__path__)
    ]
    for name, gathered in (("THERE", described.DESCRIBED), ("ABSENT", described.DESCRIBED_ABSENT)):
        ids = [finding for module in modules for finding in getattr(module, name, ())]
        assert sorted(ids) == sorted(gathered)
        assert set(ids) <= the_book().findings.keys()
    beside = {f.removeprefix("-") for f in BESIDE} | {f for those in BESIDE.values() for f in those}
    assert beside <= the_book().findings.keys()


@pytest.mark.parametrize("text", SAID)
def test_short_words_are_read(text: str) -> None:
    """The fact is among those read."""
    assert SAID[text] in [f.short for f in read(text, the_book()).facts]


@pytest.mark.parametrize("text", NOT_SAID)
def test_near_misses_are_not(text: str) -> None:
    """The fact is not among those read."""
    assert NOT_SAID[text] not in [f.short for f in read(text, the_book()).facts]


#: words that stand in any sentence; none of them says what a finding is about
ANY_SENTENCE = frozenset(
    [
        "a",
        "an",
        "the",
        "my",
        "our",
        "your",
        "his",
        "her",
        "its",
        "their",
        "this",
        "that",
        "these",
        "those",
        "it",
        "she",
        "he",
        "we",
        "they",
        "i",
        "you",
        "me",
        "us",
        "them",
        "in",
        "on",
        "at",
        "of",
        "to",
        "from",
        "for",
        "with",
        "by",
        "into",
        "onto",
        "out",
        "off",
        "over",
        "under",
        "up",
        "down",
        "through",
        "before",
        "after",
        "since",
        "until",
        "till",
        "when",
        "while",
        "as",
        "if",
        "and",
        "or",
        "but",
        "then",
        "than",
        "so",
        "is",
        "was",
        "are",
        "were",
        "be",
        "been",
        "being",
        "am",
        "has",
        "have",
        "had",
        "do",
        "does",
        "did",
        "done",
        "will",
        "would",
        "can",
        "could",
        "should",
        "may",
        "must",
        "not",
        "no",
        "never",
        "one",
        "two",
        "three",
        "four",
        "other",
        "another",
        "same",
        "all",
        "both",
        "each",
        "every",
        "any",
        "some",
        "only",
        "just",
        "very",
        "really",
        "quite",
        "so",
        "too",
        "also",
        "still",
        "again",
        "always",
        "ever",
        "now",
        "go",
        "goes",
        "going",
        "gone",
        "went",
        "come",
        "comes",
        "came",
        "coming",
        "get",
        "gets",
        "got",
        "getting",
        "put",
        "make",
        "makes",
        "made",
        "gave",
        "keep",
        "kept",
        "left",
        "run",
        "runs",
        "ran",
        "see",
        "saw",
        "look",
        "looks",
        "said",
        "says",
        "good",
        "fine",
        "well",
        "ok",
        "normal",
        "right",
        "bad",
        "better",
        "more",
        "less",
        "much",
        "most",
        "many",
        "few",
        "lot",
        "bit",
        "little",
        "day",
        "days",
        "year",
        "years",
        "time",
        "times",
        "week",
        "weeks",
        "month",
        "months",
        "hour",
        "hours",
        "minute",
        "minutes",
        "seconds",
        "first",
        "last",
        "next",
    ]
)
#: findings of the whole engine and of its past: nothing else need be named
OF_ALL_IT_IS = frozenset(
    [
        "freshly_rebuilt",
        "stopped_with_loss_of_power",
        "high_mileage",
        "stood_long",
        "idles_long",
        "known_for_model",
        "engine_runs_normally",
    ]
)


def _says_anything(phrase: str) -> bool:
    """Whether words that stand in any sentence are enough for a phrase."""
    needed = [p for p in phrase.split() if p != ".." and not p.endswith("?")]
    return all(ANY_SENTENCE & {w.lstrip("=") for w in piece.split("|")} for piece in needed)


def test_a_phrase_of_small_words_needs_more() -> None:
    """A finding that "it was bad" can say is read only where the text names what "it" is."""
    loose = {
        finding
        for table in (tables.SIGHTS, tables.SIGHTS_ABSENT)
        for finding, phrases in table.items()
        if any(_says_anything(phrase) for phrase in phrases)
    }
    assert loose - NEEDS.keys() - OF_THE_PRESSURE.keys() == OF_ALL_IT_IS


def test_a_phrase_is_loose_where_all_that_carries_it_is_optional() -> None:
    """The rule above sees a group of words that may all be left out."""
    assert _says_anything("it was|is bad")
    assert _says_anything("sender? it was|is bad")
    assert not _says_anything("sender was|is bad")
    assert not _says_anything("sender .. bad")

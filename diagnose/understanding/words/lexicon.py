"""The lexicon, ready to be matched; built once, when the first text is read."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from functools import cached_property, lru_cache
from typing import TypeVar

from diagnose.lookup.tokens import tokens as lookup_tokens
from diagnose.understanding.words.groups import Groups
from diagnose.understanding.words.phrases import Phrases
from diagnose.understanding.words.spelling import LexiconSpelling
from diagnose.understanding.words.text import stemmed
from knowledge.book import Book
from knowledge.lexicon.described import tables as described
from knowledge.lexicon.engine import features as engine_features
from knowledge.lexicon.engine import traits
from knowledge.lexicon.engine.traits import Trait
from knowledge.lexicon.shows import (
    beside_pressure,
    courses,
    in_order,
    instruments_named,
    near_zero,
    ports,
    since,
    speeds,
    test_gauge_says,
)
from knowledge.lexicon.shows import tables as shows
from knowledge.lexicon.shows.test_gauge_says import Verdict
from knowledge.lexicon.sights import exceptions, looked_at
from knowledge.lexicon.sights import tables as sights
from knowledge.lexicon.sights.no_finding import NO_FINDING
from knowledge.lexicon.stance import figures_of_speech, stance, stance_words
from knowledge.lexicon.things import states, substances
from knowledge.lexicon.things import tables as things
from knowledge.lexicon.things.thing import State, Substance, Thing
from knowledge.lexicon.values import quantities as values
from knowledge.lexicon.work import actions, areas
from knowledge.lexicon.work import tables as work
from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.model import Finding, Kind
from knowledge.reports.words import (
    Circumstance,
    Course,
    Done,
    Hands,
    Onset,
    Result,
    Shows,
    Since,
    Speed,
)

#: stems of negations; phrases with one are left to the lexicon
_NEGATIONS = frozenset(("no", "not", "never", "none"))
_LEAST_STEMS = 2  #: of a phrase of the book; one word alone means too many things


Value = TypeVar("Value")


class Lexicon:
    """Every phrase by its role, and the book whose entries the phrases name."""

    def __init__(self, book: Book) -> None:
        self.book = book
        self.shows: Phrases[Shows] = Phrases(shows.SHOWS)
        self.bare: Phrases[Shows] = Phrases(shows.BARE)
        self.of_the_gauge: Phrases[Shows] = Phrases(shows.OF_THE_GAUGE)
        self.comes_slowly = _any_of(beside_pressure.COMES_SLOWLY)
        self.came_back = _any_of(beside_pressure.CAME_BACK)
        self.hearsay = _any_of(stance_words.HEARSAY)
        self.figures_of_speech = _any_of(figures_of_speech.FIGURES_OF_SPEECH)
        self.upstream = _any_of(ports.UPSTREAM)
        self.downstream = _any_of(ports.DOWNSTREAM)
        self.well_until = _any_of(in_order.WELL_UNTIL)
        self.well_before_that = _any_of(in_order.WELL_BEFORE_THAT)
        self.as_low_before = _any_of(in_order.AS_LOW_BEFORE)
        self.low_before = _any_of(in_order.LOW_BEFORE)
        self.was_well = _any_of(in_order.WAS_WELL)
        self.otherwise = _any_of(beside_pressure.OTHERWISE)
        self.near_zero = _any_of(near_zero.NEAR_ZERO)
        self.instrument = _any_of(instruments_named.INSTRUMENT)
        self.direct = _any_of(instruments_named.DIRECT)
        self.panel: Phrases[str] = Phrases({"panel": instruments_named.PANEL})
        self.own = _any_of(instruments_named.OWN)
        self.verdicts: Phrases[Verdict] = Phrases(test_gauge_says.VERDICTS)
        self.during: Phrases[Circumstance] = Phrases(shows.DURING)
        self.speed: Phrases[Speed] = Phrases(speeds.SPEED)
        self.any_heat = _any_of(speeds.ANY_HEAT)
        self.onset: Phrases[Onset] = Phrases(courses.ONSET)
        self.course: Phrases[Course] = Phrases(courses.COURSE)
        self.since: Phrases[Since] = Phrases(since.SINCE)
        self.actions: Phrases[Done] = Phrases(actions.ACTIONS)
        self.parts: Phrases[PartWorked] = Phrases({part: part.names for part in work.PARTS})
        self.trials: Phrases[str] = Phrases(work.TRIALS)
        self.areas: Phrases[str] = Phrases({**areas.AREAS, "": areas.NO_WORK})
        self.opened = _any_of(actions.OPENED_AND_FOUND)
        self.nothing_done = _any_of(actions.NOTHING_DONE)
        self.results: Phrases[Result] = Phrases(work.RESULTS)
        self.hands: Phrases[Hands] = Phrases(actions.HANDS)
        self.traits: Phrases[Trait] = Phrases(traits.TRAITS)
        self.features: Phrases[str] = Phrases(traits.FEATURE_WORDS | engine_features.BUILD_WORDS)
        self.oil_in_it = _any_of(traits.OIL_IN_IT)
        self.sights: Phrases[str] = Phrases(sights.SIGHTS)
        self.values: Phrases[str] = Phrases(values.VALUES)
        self.bare_values: Phrases[str] = Phrases(values.BARE)
        self.short_values: Phrases[str] = Phrases(
            {k: v for k, (v, _) in values.BARE_OF_PART.items()}
        )
        self.shared_values: Phrases[str] = Phrases({"both": values.SHARED[0]})
        self.vague_values: Phrases[str] = Phrases({k: v for k, (v, _) in values.VAGUE.items()})
        self.value_parts: Phrases[str] = Phrases(values.PARTS)
        self.sights_absent: Phrases[str] = Phrases(sights.SIGHTS_ABSENT)
        self.sights_nothing = _any_of(NO_FINDING)
        self.groups = Groups(described.TOGETHER, described.TOGETHER_ABSENT)
        self.things: Phrases[Thing] = Phrases({t: t.names for t in things.THINGS})
        self.states: Phrases[State] = Phrases(states.STATES)
        self.all_fine = _any_of(looked_at.ALL_FINE)
        self.nothing_wrong = _any_of(in_order.NOTHING_WRONG)
        self.substances: Phrases[Substance] = Phrases(substances.SUBSTANCES)
        self.supposed = _any_of(stance.SUPPOSED)
        self.asks = _any_of(stance.ASKS)
        self.guessed = _any_of(stance.GUESSED)
        self.named = _any_of(stance.NAMED)
        self.feared = _any_of(stance.FEARED)
        self.other = _any_of(stance.OTHER_ENGINE)
        self.other_side = _any_of(stance.OTHER_SIDE)
        self.other_pressure = _any_of(stance.OTHER_PRESSURE)
        self.this = _any_of(stance.THIS_ENGINE)
        self.usually = _any_of(stance.USUALLY)
        self.until = _any_of(stance.UNTIL)
        self.hedges: Phrases[float] = Phrases(stance.HEDGES)
        self.no_negation = _any_of(stance.NO_NEGATION)

    @cached_property
    def later(self) -> dict[str, tuple[Thing, ...]]:
        """Short names, by their stem: the things they may mean once the family was named."""
        found: dict[str, list[Thing]] = {}
        for thing in things.THINGS:
            for name in thing.later:
                found.setdefault(stemmed(name), []).append(thing)
        return {name: tuple(those) for name, those in found.items()}

    @cached_property
    def also(self) -> dict[str, list[tuple[tuple[str, ...], Finding]]]:
        """Phrases of the book's findings as stems in their order, by the first of them."""
        found: dict[str, list[tuple[tuple[str, ...], Finding]]] = {}
        for finding in self.book.findings.values():
            if finding.kind is Kind.LAYOUT or finding.id in exceptions.NOT_BY_THE_BOOK:
                continue
            if finding in self.book.shown_by_trial:
                continue
            for phrase in finding.also:
                stems = tuple(s for s in map(book_stem, words_of(phrase)) if s)
                plain = not any(c.isdigit() for c in phrase) and not _NEGATIONS & set(stems)
                if plain and len(stems) >= _LEAST_STEMS:
                    found.setdefault(stems[0], []).append((stems, finding))
        return found

    @cached_property
    def named_by(self) -> dict[str, frozenset[str]]:
        """The stems of all words by which the lexicon names a finding, by its id."""
        found: dict[str, set[str]] = {}
        for table in (
            sights.SIGHTS,
            sights.SIGHTS_ABSENT,
            described.TOGETHER,
            described.TOGETHER_ABSENT,
        ):
            for id_, texts in table.items():
                words = (re.findall(r"[^\W_]+", text.partition(" - ")[0]) for text in texts)
                found.setdefault(id_, set()).update(stemmed(w) for each in words for w in each)
        return {id_: frozenset(words) for id_, words in found.items()}

    @cached_property
    def spelling(self) -> LexiconSpelling:
        """Right spellings: the words of every role, and of the book's phrases."""
        words: set[str] = set(stance.NEGATION)
        for each in vars(self).values():
            if isinstance(each, Phrases | Groups):
                words |= each.words
        for group in self.also.values():
            for stems, _ in group:
                words.update(stems)
        return LexiconSpelling(words)


def _any_of(texts: Iterable[str]) -> Phrases[bool]:
    """Phrases that all say the same one thing."""
    return Phrases({True: tuple(texts)})


def _joined(*tables: Mapping[Value, tuple[str, ...]]) -> Phrases[Value]:
    """The phrases of several tables; a meaning that stands in more than one has those of all."""
    meanings = dict.fromkeys(value for table in tables for value in table)
    return Phrases({m: tuple(p for t in tables for p in t.get(m, ())) for m in meanings})


def words_of(phrase: str) -> list[str]:
    """The words of a phrase of the book, in lower case."""
    return re.findall(r"[^\W_]+", phrase.lower().replace("'s ", " ").replace("'", ""))


@lru_cache(maxsize=20_000)
def book_stem(word: str) -> str:
    """The stem the book's phrases are compared by; empty for a word without weight."""
    if word == "oil":  # it tells what a phrase is about
        return word
    found = lookup_tokens(word)
    return found[0] if len(found) == 1 else ""

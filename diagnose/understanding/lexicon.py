"""The lexicon, ready to be matched; built once, when the first text is read."""

from __future__ import annotations

import re
from functools import cached_property, lru_cache

from diagnose.lookup.tokens import tokens as lookup_tokens
from diagnose.understanding.groups import Groups
from diagnose.understanding.phrases import Phrases
from diagnose.understanding.spelling import LexiconSpelling
from diagnose.understanding.text import stemmed
from knowledge.book import Book
from knowledge.lexicon import (
    beginnings,
    checked,
    circumstances,
    circumstances_more,
    courses,
    engine,
    engine_features,
    figures_of_speech,
    instruments_named,
    noises,
    parts,
    ports,
    pressure,
    pressure_words,
    results,
    results_more,
    shows_everyday,
    shows_more,
    shows_said,
    sights,
    sights_kinds,
    speeds,
    stance,
    stance_words,
    states,
    states_more,
    substances,
    things,
    together,
    trials_rare,
    values,
    well,
    work,
    work_more,
)
from knowledge.lexicon.engine import Trait
from knowledge.lexicon.parts_model import PartWorked
from knowledge.lexicon.states import State, Substance, Thing
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


class Lexicon:
    """Every phrase by its role, and the book whose entries the phrases name."""

    def __init__(self, book: Book) -> None:
        self.book = book
        said = {
            k: v
            + shows_said.SHOWS_SAID.get(k, ())
            + shows_more.SHOWS_MORE.get(k, ())
            + shows_everyday.SHOWS_EVERYDAY.get(k, ())
            for k, v in pressure.SHOWS.items()
        }
        self.shows: Phrases[Shows] = Phrases({**said, **noises.NOISES_SAID})
        self.bare: Phrases[Shows] = Phrases(
            {k: v + shows_more.BARE_MORE.get(k, ()) for k, v in pressure.BARE.items()}
        )
        self.of_the_gauge: Phrases[Shows] = Phrases(shows_everyday.OF_THE_GAUGE)
        self.came_back: Phrases[bool] = Phrases({True: pressure_words.CAME_BACK})
        self.hearsay: Phrases[bool] = Phrases({True: stance_words.HEARSAY})
        self.figures_of_speech: Phrases[bool] = Phrases({True: figures_of_speech.FIGURES_OF_SPEECH})
        self.upstream: Phrases[bool] = Phrases({True: ports.UPSTREAM})
        self.downstream: Phrases[bool] = Phrases({True: ports.DOWNSTREAM})
        self.well_until: Phrases[bool] = Phrases({True: well.WELL_UNTIL})
        self.well_before_that: Phrases[bool] = Phrases({True: well.WELL_BEFORE_THAT})
        self.as_low_before: Phrases[bool] = Phrases({True: well.AS_LOW_BEFORE})
        self.low_before: Phrases[bool] = Phrases({True: well.LOW_BEFORE})
        self.was_well: Phrases[bool] = Phrases({True: well.WAS_WELL})
        self.otherwise: Phrases[bool] = Phrases({True: pressure_words.OTHERWISE})
        self.instrument: Phrases[bool] = Phrases({True: pressure.INSTRUMENT})
        self.direct: Phrases[bool] = Phrases({True: instruments_named.DIRECT})
        self.panel: Phrases[str] = Phrases({"panel": instruments_named.PANEL})
        self.own: Phrases[bool] = Phrases({True: instruments_named.OWN})
        self.during: Phrases[Circumstance] = Phrases(
            {
                k: v + circumstances_more.DURING_MORE.get(k, ())
                for k, v in circumstances.DURING.items()
            }
        )
        self.speed: Phrases[Speed] = Phrases(speeds.SPEED)
        self.any_heat: Phrases[bool] = Phrases({True: speeds.ANY_HEAT})
        self.onset: Phrases[Onset] = Phrases(courses.ONSET)
        self.course: Phrases[Course] = Phrases(courses.COURSE)
        self.since: Phrases[Since] = Phrases(beginnings.SINCE)
        self.actions: Phrases[Done] = Phrases(work.ACTIONS)
        self.parts: Phrases[PartWorked] = Phrases(_parts())
        often, rare = work.TRIALS, trials_rare.TRIALS_RARE
        self.trials: Phrases[str] = Phrases(
            {id_: (*often.get(id_, ()), *rare.get(id_, ())) for id_ in (often | rare)}
        )
        self.areas: Phrases[str] = Phrases(
            {
                **work_more.AREAS_MORE,
                **{k: v + work_more.AREAS_MORE.get(k, ()) for k, v in work.AREAS.items()},
                "": work_more.NO_WORK,
            }
        )
        self.opened: Phrases[bool] = Phrases({True: work.OPENED_AND_FOUND})
        self.nothing_done: Phrases[bool] = Phrases({True: work_more.NOTHING_DONE})
        more = results_more.RESULTS_MORE
        self.results: Phrases[Result] = Phrases(
            {r: said + more.get(r, ()) for r, said in results.RESULTS.items()}
        )
        self.hands: Phrases[Hands] = Phrases(results.HANDS)
        self.traits: Phrases[Trait] = Phrases(engine.TRAITS)
        self.features: Phrases[str] = Phrases(engine.FEATURE_WORDS | engine_features.BUILD_WORDS)
        self.oil_in_it: Phrases[bool] = Phrases({True: engine.OIL_IN_IT})
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
        self.sights_nothing: Phrases[bool] = Phrases({True: sights.SIGHTS_NOTHING})
        self.groups = Groups(together.TOGETHER, together.TOGETHER_ABSENT)
        self.things: Phrases[Thing] = Phrases({t: t.names for t in things.THINGS})
        self.states: Phrases[State] = Phrases(
            {s: said + states_more.STATES_MORE.get(s, ()) for s, said in states.STATES.items()}
        )
        self.all_fine: Phrases[bool] = Phrases({True: checked.ALL_FINE})
        self.nothing_wrong: Phrases[bool] = Phrases({True: well.NOTHING_WRONG})
        self.substances: Phrases[Substance] = Phrases(substances.SUBSTANCES)
        self.supposed: Phrases[bool] = Phrases({True: stance.SUPPOSED})
        self.asks: Phrases[bool] = Phrases({True: stance.ASKS})
        self.guessed: Phrases[bool] = Phrases({True: stance.GUESSED})
        self.named: Phrases[bool] = Phrases({True: stance.NAMED})
        self.feared: Phrases[bool] = Phrases({True: stance.FEARED})
        self.other: Phrases[bool] = Phrases({True: stance.OTHER_ENGINE})
        self.other_side: Phrases[bool] = Phrases({True: stance.OTHER_SIDE})
        self.other_pressure: Phrases[bool] = Phrases({True: stance.OTHER_PRESSURE})
        self.this: Phrases[bool] = Phrases({True: stance.THIS_ENGINE})
        self.usually: Phrases[bool] = Phrases({True: stance.USUALLY})
        self.until: Phrases[bool] = Phrases({True: stance.UNTIL})
        self.hedges: Phrases[float] = Phrases(stance.HEDGES)
        self.no_negation: Phrases[bool] = Phrases({True: stance.NO_NEGATION})

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
            if finding.kind is Kind.LAYOUT or finding.id in sights_kinds.NOT_BY_THE_BOOK:
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
            together.TOGETHER,
            together.TOGETHER_ABSENT,
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


def _parts() -> dict[PartWorked, tuple[str, ...]]:
    return {part: part.names for part in parts.PARTS}


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

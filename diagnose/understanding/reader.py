"""Read a text: run every rule, correct what they read by the rest of it, list what is left over."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from diagnose.understanding.pressures.agreed import agreed_on_high, on_the_test_gauge
from diagnose.understanding.pressures.called_little import (
    called_little,
    fine_at_times,
    some_at_least,
)
from diagnose.understanding.pressures.fixed_speed import at_its_speed
from diagnose.understanding.pressures.gauge_on_test import by_a_second_gauge
from diagnose.understanding.pressures.near_zero import with_near_zero
from diagnose.understanding.pressures.no_pressures import has_another_unit
from diagnose.understanding.pressures.on_trial import without_trial_pressures
from diagnose.understanding.pressures.printed import printed_pressures
from diagnose.understanding.pressures.readings import readings
from diagnose.understanding.pressures.rows import fell_in_steps
from diagnose.understanding.pressures.two_gauges import two_gauges
from diagnose.understanding.pressures.two_ports import two_ports, without_upstream
from diagnose.understanding.pressures.two_stations import two_stations
from diagnose.understanding.sentences.paragraph import Paragraph
from diagnose.understanding.sentences.stance import UNTRUE
from diagnose.understanding.shows.behaviours import behaviours
from diagnose.understanding.shows.came_back import came_back
from diagnose.understanding.shows.came_slowly import came_slowly
from diagnose.understanding.shows.warned import silent_alarms
from diagnose.understanding.sights.checked import checked_parts
from diagnose.understanding.sights.engine import cylinders, engine_kind, main_bearings
from diagnose.understanding.sights.excepted import without_empty_denials
from diagnose.understanding.sights.foreign_parts import without_foreign_parts
from diagnose.understanding.sights.hose_ends import without_ends_of_hoses
from diagnose.understanding.sights.meant_otherwise import without_other_meanings
from diagnose.understanding.sights.mended import without_cured, without_mended
from diagnose.understanding.sights.needs_words import without_unnamed
from diagnose.understanding.sights.of_parts import without_words_of_parts
from diagnose.understanding.sights.old_oil import without_old_oil
from diagnose.understanding.sights.said_by_behaviour import without_what_shows_says
from diagnose.understanding.sights.sights import sights
from diagnose.understanding.sights.superseded import (
    each_once,
    once_of_pressure,
    without_denials_of_what_shows,
    without_measured,
    without_opposites,
    without_spoiled,
    without_what_is_of_others,
    without_wider,
)
from diagnose.understanding.sights.things import parts_and_places
from diagnose.understanding.sights.together import together
from diagnose.understanding.values.drained import drained, without_what_it_holds
from diagnose.understanding.values.grade_wanted import by_the_grades
from diagnose.understanding.values.measured import measured
from diagnose.understanding.values.oils import (
    against_the_book,
    oil_in_use,
    thinner_than_before,
    without_thicker,
)
from diagnose.understanding.words.amounts import amounts
from diagnose.understanding.words.commas import with_now, with_points, with_what_follows
from diagnose.understanding.words.facts import Fact, Reader, Span, Understanding
from diagnose.understanding.words.lexicon import Lexicon
from diagnose.understanding.words.speakers import without_strangers
from diagnose.understanding.work.before_work import began_with_work
from diagnose.understanding.work.borrowed import borrowed_parts
from diagnose.understanding.work.earlier import earlier_work, well_at_first
from diagnose.understanding.work.helped import without_what_helped
from diagnose.understanding.work.work import trials
from knowledge.book import Book, made_once
from knowledge.lexicon.engine.traits import FEATURES, FEATURES_ALONE
from knowledge.lexicon.shows.in_order import PRAISE
from knowledge.lexicon.things.states import WELL_STATES
from knowledge.lexicon.words.fillers import FILLERS, LEADING
from knowledge.synonyms import FAINT, IDLE

Correction = Callable[[list[Fact], Paragraph], list[Fact]]

LONGEST = 10_000  #: characters that are read
RULES: tuple[Reader, ...] = (
    engine_kind,
    cylinders,
    main_bearings,
    oil_in_use,
    thinner_than_before,
    against_the_book,
    printed_pressures,
    readings,
    behaviours,
    fell_in_steps,
    trials,
    earlier_work,
    well_at_first,
    two_gauges,
    two_stations,
    two_ports,
    parts_and_places,
    checked_parts,
    sights,
    together,
    measured,
    drained,
    borrowed_parts,
)


def _alone(correct: Callable[[list[Fact]], list[Fact]]) -> Correction:
    """A correction that looks at nothing but the facts."""
    return lambda facts, _: correct(facts)


#: these take out or change what the rest of the text makes otherwise, in this order: each sees
#: what those before it left
CORRECTIONS: tuple[Correction, ...] = (
    without_words_of_parts,
    _alone(without_denials_of_what_shows),
    without_ends_of_hoses,
    without_upstream,
    _alone(without_what_is_of_others),
    without_mended,
    without_other_meanings,
    without_foreign_parts,
    without_empty_denials,
    without_trial_pressures,
    without_what_it_holds,
    _alone(without_measured),
    without_wider,
    _alone(without_spoiled),
    _alone(without_opposites),
    by_the_grades,
    _alone(without_thicker),
    _alone(once_of_pressure),
    _alone(without_cured),
    some_at_least,
    _alone(fine_at_times),
    without_old_oil,
    silent_alarms,
    without_unnamed,
    called_little,
    with_near_zero,
    by_a_second_gauge,
    agreed_on_high,
    on_the_test_gauge,
    came_back,
    came_slowly,
    _alone(without_what_helped),
    began_with_work,
    _alone(without_what_shows_says),
    at_its_speed,
)
_LONGEST_NAME = 4  #: words and numbers of an engine's name
#: features that are said of what engine it is
_OF_THE_ENGINE = frozenset((*FEATURES.values(), *FEATURES_ALONE.values()))
_FILLERS = IDLE | FAINT | FILLERS  #: carry no statement by themselves


lexicon_of = made_once(Lexicon)  #: the lexicon for a book


def read(text: str, book: Book) -> Understanding:
    """What a text states; at most ``LONGEST`` characters are read, the rest is left over.

    Nothing is guessed: each fact names the words it came from, and every word of weight that no
    fact came from is among ``unread``.
    """
    paragraph = _paragraph(text, book)
    found = [fact for rule in RULES for fact in rule.read(paragraph)]
    for correct in CORRECTIONS:
        found = correct(found, paragraph)
    facts = tuple(sorted(each_once(found), key=_place))
    spans = [s for f in facts for s in f.spans]
    named = [s for f in facts if f.table == "layout" or f.name in _OF_THE_ENGINE for s in f.spans]
    unread = [
        piece
        for piece in _left_over(paragraph, [*spans, *_opened(paragraph, spans)])
        if not _is_a_name(paragraph, piece, named)
    ]
    if text[LONGEST:].strip():
        unread.append((LONGEST, len(text)))
    return Understanding(text, facts, tuple(unread))


def _place(fact: Fact) -> tuple[int, str, Span, str, str]:
    """Where a fact stands in an answer: as in the text, bearings of one name by their number."""
    (first, last), where = fact.spans[0], str(fact.fields.get("where", ""))
    return first, where, (first, last), fact.table, fact.name


def _paragraph(text: str, book: Book) -> Paragraph:
    """As much of a text as is read, without strangers' lines, its decimal commas as points."""
    lexicon = lexicon_of(book)
    own = without_strangers(text[:LONGEST], lexicon.spelling.knows)
    return Paragraph(with_what_follows(with_now(with_points(own))), lexicon)


def without_unit(text: str, book: Book) -> str:
    """The first figure of a text that counts what is no unit, with that word; empty: none does.

    >>> from knowledge.book import the_book
    >>> without_unit("oil pressure 5 apples", the_book()), without_unit("oil pressure 5", the_book())
    ('5 apples', '')
    """
    for line in _paragraph(text, book).lines:
        for i, token in enumerate(line.tokens):
            if token.kinds == {"number"} and has_another_unit(line, i):
                return f"{token.word} {line.word(i + 1)}"
    return ""


def states(text: str, book: Book) -> bool:
    """Whether a text says anything of this engine that is not asked, planned or feared."""
    lines = _paragraph(text, book).lines
    return any(not s & UNTRUE for line in lines for s in line.stances.of)


def praises(text: str, book: Book) -> bool:
    """Whether a text says of a part only that it is as it should be.

    >>> from knowledge.book import the_book
    >>> praises("caps all in order", the_book()), praises("caps right, one loose", the_book())
    (True, False)
    """
    lines = _paragraph(text, book).lines
    states = {m.value for x in lines for m in x.find(x.lexicon.states) if not x.denied(m)}
    words = {t.word for line in lines for t in line.tokens}
    return bool(words & PRAISE or states & WELL_STATES) and states <= WELL_STATES


def values_in(text: str, book: Book) -> list[str]:
    """Every figure with a unit, whatever it is of: "12 thou", as a case file writes it."""
    paragraph = _paragraph(text, book)
    every = (a for line in paragraph.lines for a in amounts(paragraph.text, line.tokens))
    return [t for a in every for t in a.texts]


def _opened(paragraph: Paragraph, spans: list[Span]) -> Iterable[Span]:
    """The words that lead to what was seen: "pulled the valve and found"; used where it was read."""
    for line in paragraph.lines:
        for mark in line.stated(line.lexicon.opened):
            if any(
                line.tokens[mark.first].start <= b and a <= line.tokens[-1].end for a, b in spans
            ):
                yield from line.span([mark])


def _is_a_name(paragraph: Paragraph, piece: Span, named: list[Span]) -> bool:
    """Whether a piece is the name of the engine: words that say nothing here, straight before its kind."""
    if not any(0 <= first - piece[1] <= 1 for first, _ in named):
        return False
    tokens = [t for line in paragraph.lines for t in line.tokens if piece[0] <= t.start < piece[1]]
    spelling = paragraph.lexicon.spelling
    return len(tokens) <= _LONGEST_NAME and all(
        t.kinds == {"number"} or t.is_mark or not (t.is_figure or spelling.knows(t.word))
        for t in tokens
    )


def _left_over(paragraph: Paragraph, spans: Iterable[Span]) -> Iterable[Span]:
    """Runs of words that no fact came from, where one of them carries meaning."""
    covered = sorted(spans)
    for line in paragraph.lines:
        run: list[Span] = []
        weighty = False
        words = (*line.find(line.lexicon.things), *line.lexicon.traits.find_each(line.tokens))
        named = {k for m in words for k in range(m.first, m.last)}
        used = [t for t in line.tokens if any(a <= t.start < b for a, b in covered)]
        spare = _FILLERS | LEADING if used else _FILLERS
        for k, token in enumerate(line.tokens):
            if any(a <= token.start and token.end <= b for a, b in covered):
                if weighty:
                    yield run[0][0], run[-1][1]
                run, weighty = [], False
            elif not token.is_mark:
                run.append((token.start, token.end))
                bare = k in named or bool({token.word, token.stem} & spare)
                weighty = weighty or (not bare and len(token.word) > 1)
        if weighty:
            yield run[0][0], run[-1][1]

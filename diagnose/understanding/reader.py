"""Read a text: run every rule, drop what is said twice, and list what is left over."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable

from diagnose.understanding.amounts import amounts
from diagnose.understanding.before_work import began_with_work
from diagnose.understanding.behaviours import behaviours
from diagnose.understanding.borrowed import borrowed_parts
from diagnose.understanding.called_little import called_little, fine_at_times, some_at_least
from diagnose.understanding.came_back import came_back
from diagnose.understanding.checked import checked_parts
from diagnose.understanding.commas import with_now, with_points
from diagnose.understanding.confirmed import confirmed_directly
from diagnose.understanding.drained import drained
from diagnose.understanding.earlier import earlier_work, well_at_first
from diagnose.understanding.engine import cylinders, engine_kind
from diagnose.understanding.excepted import without_empty_denials
from diagnose.understanding.facts import Fact, Reader, Span, Understanding
from diagnose.understanding.fixed_speed import at_its_speed
from diagnose.understanding.foreign_parts import without_foreign_parts
from diagnose.understanding.froth import without_frothy_drinks
from diagnose.understanding.hose_ends import without_ends_of_hoses
from diagnose.understanding.lexicon import Lexicon
from diagnose.understanding.meant_otherwise import without_other_meanings
from diagnose.understanding.measured import measured
from diagnose.understanding.mended import without_cured, without_mended
from diagnose.understanding.needs_words import without_unnamed
from diagnose.understanding.of_parts import without_words_of_parts
from diagnose.understanding.oils import against_the_book, oil_in_use, thinner_than_before
from diagnose.understanding.old_oil import without_old_oil
from diagnose.understanding.on_trial import without_trial_pressures
from diagnose.understanding.paragraph import Paragraph
from diagnose.understanding.printed import printed_pressures
from diagnose.understanding.readings import readings
from diagnose.understanding.rows import fell_in_steps
from diagnose.understanding.sights import sights
from diagnose.understanding.sizes import has_another_unit
from diagnose.understanding.speakers import without_strangers
from diagnose.understanding.springs_compared import SAID_BY_SPRINGS
from diagnose.understanding.stance import UNTRUE
from diagnose.understanding.things import parts_and_places
from diagnose.understanding.together import together
from diagnose.understanding.two_gauges import two_gauges
from diagnose.understanding.two_ports import two_ports, without_upstream
from diagnose.understanding.two_stations import two_stations
from diagnose.understanding.warned import silent_alarms
from diagnose.understanding.work import trials
from knowledge.book import Book, made_once
from knowledge.lexicon.engine import FEATURES, FEATURES_ALONE
from knowledge.lexicon.fillers import FILLERS, LEADING
from knowledge.lexicon.narrower import NARROWER
from knowledge.lexicon.pressure_words import (
    FINDING_OF,
)
from knowledge.lexicon.some_of_them import OF_SEVERAL, SOUND_ALL
from knowledge.reports.words import Shows
from knowledge.synonyms import FAINT, IDLE

LONGEST = 10_000  #: characters that are read
RULES: tuple[Reader, ...] = (
    engine_kind,
    cylinders,
    oil_in_use,
    thinner_than_before,
    against_the_book,
    printed_pressures,
    readings,
    behaviours,
    fell_in_steps,
    trials,
    confirmed_directly,
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
#: what words for the speed of a reading say as well
_OF_A_READING = frozenset(["worked_hard"])
_LONGEST_NAME = 4  #: words and numbers of an engine's name
#: features that are said of what engine it is
_OF_THE_ENGINE = frozenset((*FEATURES.values(), *FEATURES_ALONE.values()))
#: of these the one that is read first holds; figures are read before words
_OPPOSITES = {
    "panel_reads_too_low": "panel_reads_too_high",
    "panel_reads_too_high": "panel_reads_too_low",
}
#: not read where what it needs is denied: one that was stopped at once did not run long
_NEEDS = {"ran_long_without_distress": "ran_on_without_pressure"}
#: not read where one of these is there too: "no loud noise, then it died" is no sound engine
_SPOILED = {
    "engine_runs_normally": frozenset(["stopped_with_loss_of_power", "engine_seized", "knock"])
}
_FILLERS = IDLE | FAINT | FILLERS  #: carry no statement by themselves


lexicon_of = made_once(Lexicon)  #: the lexicon for a book


def read(text: str, book: Book) -> Understanding:
    """What a text states; at most ``LONGEST`` characters are read, the rest is left over.

    Nothing is guessed: each fact names the words it came from, and every word of weight that no
    fact came from is among ``unread``.
    """
    paragraph = _paragraph(text, book)
    found = [fact for rule in RULES for fact in rule.read(paragraph)]
    found = _without_denials_of_what_shows(without_words_of_parts(found, paragraph))
    found = without_upstream(without_ends_of_hoses(found, paragraph), paragraph)
    found = without_mended(_without_what_is_of_others(found), paragraph)
    found = without_foreign_parts(without_other_meanings(found, paragraph), paragraph)
    found = without_trial_pressures(without_empty_denials(found, paragraph), paragraph)
    found = _without_opposites(_without_wider(_without_measured(found), paragraph))
    found = fine_at_times(some_at_least(without_cured(_once_of_pressure(found)), paragraph))
    found = silent_alarms(
        without_frothy_drinks(without_old_oil(found, paragraph), paragraph), paragraph
    )
    found = without_unnamed(found, paragraph)
    found = came_back([*found, *called_little(paragraph, found)], paragraph)
    found = at_its_speed(began_with_work(found, paragraph), paragraph)
    facts = tuple(sorted(_once(found), key=_place))
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
    return Paragraph(with_now(with_points(own)), lexicon)


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


def values_in(text: str, book: Book) -> list[str]:
    """Every figure with a unit, whatever it is of: "12 thou", as a case file writes it."""
    paragraph = _paragraph(text, book)
    every = (a for line in paragraph.lines for a in amounts(paragraph.text, line.tokens))
    return [t for a in every for t in a.texts]


def _without_measured(facts: list[Fact]) -> list[Fact]:
    """Without readings and sights in the words of a measured value, which says it in figures.

    "relief opens at 45 psi" is no reading, "pickup 1/4 in off the pan" no pickup off the pan.
    """
    taken = [s for f in facts if "value" in f.fields and f.table != "limit" for s in f.spans]
    read = [s for f in facts if f.table == "reading" for s in f.spans]
    facts = [f for f in facts if f.name not in _OF_A_READING or not _within(f, read)]
    pressures = {str(f.fields["pressure"]) for f in facts if f.table == "reading"}
    if len(pressures) > 1:  # "sits at 15 psi at idle, at 2000 rpm its 45"
        facts = [f for f in facts if f.name != "needle_stuck_at_one_value"]
    return [
        f
        for f in facts
        if "value" in f.fields
        or f.table not in ("reading", "finding")
        or (f.name in SAID_BY_SPRINGS and not _within(f, taken))
        or not any(a < d and c < b for a, b in f.spans for c, d in taken)
    ]


def _within(fact: Fact, spans: list[Span]) -> bool:
    """Whether the words of a fact are all words of others: "20 psi flat out" is no hard work."""
    return all(any(c <= a and b <= d for c, d in spans) for a, b in fact.spans)


def _without_wider(facts: list[Fact], paragraph: Paragraph) -> list[Fact]:
    """Without findings that only name by some of its words what their sentence says more closely.

    "the sender weeps oil" is no oil on the outside of the engine.
    """
    ends = [line.tokens[-1].end for line in paragraph.lines]
    wider: dict[int, set[str]] = {}
    for fact in facts:
        if fact.table == "finding" and "state" in fact.fields:
            absent = "-" if fact.fields["state"] == "absent" else ""
            names = NARROWER.get(f"{absent}{fact.fields['what']}", ())
            wider.setdefault(bisect_left(ends, fact.spans[0][1]), set()).update(names)
    return [
        f
        for f in facts
        if f.table != "finding"
        or f.fields["what"] not in wider.get(bisect_left(ends, f.spans[0][1]), ())
    ]


def _without_opposites(facts: list[Fact]) -> list[Fact]:
    """Without findings that words say where figures say the opposite."""
    said = [f.name for f in facts if f.fields.get("state") == "present"]
    denied = {f.name for f in facts if f.fields.get("state") == "absent"}
    there = {*said, *(str(f.fields["shows"]) for f in facts if "shows" in f.fields)}
    facts = [
        f
        for f in facts
        if _NEEDS.get(f.name) not in denied
        and not (f.state == "present" and there & _SPOILED.get(f.name, frozenset()))
    ]
    return [
        f
        for f in facts
        if f.name not in _OPPOSITES
        or _OPPOSITES[f.name] not in said
        or said.index(f.name) < said.index(_OPPOSITES[f.name])
    ]


def _once_of_pressure(facts: list[Fact]) -> list[Fact]:
    """Without "runs as usual" in the words that say so of the pressure: "checked it, it was fine"."""
    normal = [s for f in facts if f.fields.get("shows") == Shows.NORMAL.value for s in f.spans]
    return [f for f in facts if f.name != "engine_runs_normally" or not _within(f, normal)]


def _without_what_is_of_others(facts: list[Fact]) -> list[Fact]:
    """Without "sound" of some parts of a kind where others of that kind were found bad.

    "one and two look lovely, five is wiped": the shells are wiped, and are not as they should be.
    """
    seen = {f.name for f in facts if f.fields.get("state") == "present"}
    return [
        f
        for f in facts
        if not (f.fields.get("state") == "absent" and f.name in seen and f.name in OF_SEVERAL)
        and not (f.fields.get("state") == "present" and seen & SOUND_ALL.get(f.name, frozenset()))
    ]


def _without_denials_of_what_shows(facts: list[Fact]) -> list[Fact]:
    """Without findings denied that show all the same: "the light came on; it is out now and stays out"."""
    shown = {
        FINDING_OF.get(s) for s in Shows if any(f.fields.get("shows") == s.value for f in facts)
    }
    return [f for f in facts if f.fields.get("state") != "absent" or f.name not in shown]


def _once(facts: Iterable[Fact]) -> list[Fact]:
    """Facts said twice are one, at both places; of two that contradict each other, the surer."""
    kept: dict[tuple[str, str], Fact] = {}
    for fact in facts:
        about = (fact.table, str(sorted(fact.fields.items(), key=str)))
        if "what" in fact.fields:
            about = (fact.table, f"{fact.name} {fact.fields.get('where', '')}")
        if fact.table == "layout":
            about = ("layout", "")
        old = kept.get(about)
        if old is None or (fact.fields != old.fields and _weight(fact) > _weight(old)):
            kept[about] = fact
        elif fact.fields == old.fields:
            spans = tuple(sorted({*old.spans, *fact.spans}))
            kept[about] = Fact(old.table, old.fields, spans, max(old.sure, fact.sure))
    return list(kept.values())


def _weight(fact: Fact) -> tuple[float, int, int]:
    return fact.sure, len(fact.fields), max(b - a for a, b in fact.spans)


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

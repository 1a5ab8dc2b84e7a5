"""Findings and values given to ``record`` in words: what they say, or what they may mean.

The words are read as ``tell`` reads them. Where nothing is read, the nearest findings or measures
are candidates for the person to choose from; none of them is ever taken unasked.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from diagnose.case.case import Case
from diagnose.case.schema import LONGEST
from diagnose.entry.after_repair import is_of_the_repaired, of_the_repaired
from diagnose.entry.answers import ANSWERS
from diagnose.entry.candidates import MOST, Candidate, candidates
from diagnose.entry.fitted_values import values_as_fitted
from diagnose.entry.proofs_in_words import proofs_in_words
from diagnose.entry.put_right import GONE, gone_since, without
from diagnose.entry.repair_work import (
    as_done,
    done_in_words,
    may_be_the_repair,
    of_this_repair,
    tasks_meant,
)
from diagnose.entry.taken_back import entries_taken_back
from diagnose.errors import UsageError, plain
from diagnose.ids import normal_id
from diagnose.understanding.corrected import without_corrections
from diagnose.understanding.reader import read, states, values_in, without_unit
from diagnose.understanding.words.facts import Fact, Understanding
from diagnose.ways import Way, to
from knowledge.book import Book
from knowledge.units import DIMENSIONS
from knowledge.work import Task

#: words that leave nothing out where no other is left over
_SMALL = frozenset(
    [
        *("a", "an", "the", "it", "its", "is", "was", "there", "that", "this", "maybe", "perhaps"),
        *("probably", "under", "on", "in", "at", "of", "off", "with", "from", "and", "i", "we"),
    ]
)
_FEWER = 4  #: candidates named in a message


@dataclass(frozen=True, slots=True)
class Spoken:
    """What one phrase says: facts, the words each came from, and what nothing was made of."""

    text: str
    facts: tuple[Fact, ...]
    words: tuple[str, ...]  #: of each fact
    left: tuple[str, ...] = ()
    layout: Fact | None = None  #: how the engine is built, which no entry holds
    layout_words: str = ""
    withdraws: tuple[int, ...] = ()  #: the entries that the words take back
    printed: tuple[str, ...] = ()  #: a line for each figure of the maker, which no entry holds

    @property
    def of_the_engine(self) -> tuple[Fact, ...]:
        """All that may change how the engine of a case is built."""
        return self.facts if self.layout is None else (*self.facts, self.layout)


@dataclass(frozen=True, slots=True)
class Choice:
    """A phrase nothing was read of, and what it may mean, likeliest first."""

    text: str
    candidates: tuple[Candidate, ...]
    values: tuple[str, ...] = ()  #: figures with a unit in it


@dataclass(frozen=True, slots=True)
class Resolved:
    """What phrases come to."""

    spoken: tuple[Spoken, ...]
    left_out: tuple[str, ...]  #: a line for what no entry was made of, chosen or not
    unclear: tuple[str, ...]  #: a line for each phrase that nothing can be recorded of


class NotChosenError(UsageError):
    """The person wants none of what a phrase may mean."""


Choose = Callable[[Choice], int | None]  #: the place of the candidate meant; None: none of them


def is_words(text: str, book: Book) -> bool:
    """Whether a text is words to be read, not an id with its value.

    >>> from knowledge.book import the_book
    >>> [is_words(t, the_book()) for t in ("mains 4.5 thou", "main_clearance=4.5 thou", "no_such=1")]
    [True, False, False]
    """
    name, equals, _ = text.partition("=")
    wanted = normal_id(name)
    if not wanted or not any(c.isalpha() for c in name) or text.strip().lower() in ANSWERS:
        return False
    spaced = " " in name.strip()
    if not (spaced and not equals) and (
        wanted in book.retired or any(wanted in ids for ids in _ids(book))
    ):
        return False
    if spaced:
        return True
    return not equals and name.strip().isalpha() and bool(read(text, book).facts)


def _ids(book: Book) -> Iterator[Mapping[str, object]]:
    yield from (book.findings, book.measures, book.tasks, book.trials, book.causes)


def resolve(
    texts: Sequence[str],
    book: Book,
    choose: Choose | None = None,
    case: Case | None = None,
    repaired: bool = False,
) -> Resolved:
    """Read phrases; ``choose`` decides where one is ambiguous.

    ``case``: what they are said of; ``repaired``: after the repair.
    """
    found: list[Spoken] = []
    unclear: list[str] = []
    left_out: list[str] = []
    for text in texts:
        try:
            found.append(_phrase(text, book, choose, case, repaired))
            left_out += found[-1].printed
        except NotChosenError as fault:
            left_out.append(str(fault))
        except UsageError as fault:
            unclear.append(str(fault))
    return Resolved(tuple(found), tuple(left_out), tuple(unclear))


def _phrase(
    text: str, book: Book, choose: Choose | None, case: Case | None, repaired: bool
) -> Spoken:
    """One phrase. Raises UsageError where it says nothing that can be recorded."""
    _refuse_no_phrase(text)
    understanding = read(text, book)
    if case is not None:
        understanding = values_as_fitted(understanding, case, book, repaired)
        understanding = of_the_repaired(understanding, case, book, repaired)
        if repaired:
            if done := proofs_in_words(understanding, case, book):
                return _of_tasks(text, done)
            understanding = of_this_repair(understanding)
        mended = gone_since(understanding, case, book, repaired)
        if mended:
            if repaired and (done := done_in_words(understanding, case, book)):
                return _of_tasks(text, done)
            rest = without(understanding, mended)
            if not rest.facts:
                return _chosen_task(text, tasks_meant(text, case, book, MOST), choose, GONE)
            left = tuple(f"'{plain(understanding.words(f))}': {GONE}" for f in mended)
            return replace(_of_facts(text, rest.facts, None, rest, book), printed=left)
        if may_be_the_repair(understanding, case, book):
            if done := done_in_words(understanding, case, book):
                return _of_tasks(text, done)
            understanding = of_this_repair(understanding)
            if not understanding.facts and (offered := tasks_meant(text, case, book, MOST)):
                return _chosen_task(text, offered, choose)
    facts = [f for f in understanding.facts if f.table not in ("layout", "oil")]
    layout = next((f for f in understanding.facts if f.table == "layout"), None)
    limits = [f for f in facts if f.table == "limit"]
    facts = [f for f in facts if f.table != "limit"]
    for fact in facts:
        if fact.table == "engine":
            raise UsageError(_of_the_engine(text, fact, book))
    if limits and not facts:
        raise UsageError(_of_the_book(text, limits[0], book))
    gone = entries_taken_back(text, case, book) if case is not None else ()
    if facts:
        spoken = _of_facts(text, facts, layout, understanding, book)
        printed = tuple(_of_the_book(understanding.words(f), f, book) for f in limits)
        return replace(spoken, printed=printed, withdraws=gone)
    if gone:
        return Spoken(text, (), (), withdraws=gone)
    if named := _by_id(text, book):
        return named
    if layout is not None:
        return Spoken(text, (), (), layout=layout)
    if understanding.facts:
        raise UsageError(_of_the_oil(text, understanding.facts[0], case))
    return _chosen(text, book, choose)


def _of_tasks(text: str, done: Sequence[Fact]) -> Spoken:
    """Work of the repair: each task with its words, which keep a torque or a count."""
    return Spoken(text, tuple(done), tuple(text[a:b].strip() for f in done for a, b in f.spans))


def _chosen_task(
    text: str, tasks: Sequence[Task], choose: Choose | None, otherwise: str = ""
) -> Spoken:
    """The task that the person chose of those a phrase may mean. Raises UsageError for none.

    ``otherwise``: why nothing is recorded where there is none to choose.
    """
    if otherwise and (choose is None or not tasks):
        ticks = "; ".join(f"{t.says} [{t.id}=done]" for t in tasks[:_FEWER])
        hint = f"; to tick what was done: {ticks}" if ticks else ""
        raise UsageError(f"'{plain(text)}': {otherwise}{hint}")
    meant = tuple(Candidate(t.id, t.says, f"{t.id}=done", as_done(t, text)) for t in tasks)
    return _of_choice(text, Choice(text, meant), choose)


def _refuse_no_phrase(text: str) -> None:
    if len(text) > LONGEST:
        raise UsageError(f"'{plain(text)}': {len(text):,} characters, at most {LONGEST:,}")
    if text != text.encode("utf-8", "replace").decode("utf-8"):
        raise UsageError(f"'{plain(text)}' is no UTF-8 text")


def _of_facts(
    text: str,
    facts: Sequence[Fact],
    layout: Fact | None,
    understanding: Understanding,
    book: Book,
) -> Spoken:
    """A phrase that states something; no word of it is lost."""
    left = _not_read(without_corrections(understanding, book))
    first, *others = (understanding.words(f) for f in facts)
    says_what_was_done = any(map(is_of_the_repaired, facts))
    if not others or says_what_was_done:
        first = " ".join(text.split())
    elif left:
        first = f"{first}; said: {text}"
    words = "" if layout is None else understanding.words(layout)
    return Spoken(text, tuple(facts), (first, *others), left, layout, words)


def _by_id(text: str, book: Book) -> Spoken | None:
    """A phrase that is the id of a finding. Raises UsageError for that of a measure."""
    wanted = normal_id(text)
    if wanted in book.findings:
        given = Fact("finding", {"what": wanted, "state": "present"}, ((0, len(text)),))
        return Spoken(text, (given,), (text,))
    if wanted in book.measures:
        right = DIMENSIONS[book.measures[wanted].dimension].spellings[0]
        raise UsageError(f"'{plain(text)}': give its value too, like '{plain(text)} {right}'")
    return None


def _chosen(text: str, book: Book, choose: Choose | None) -> Spoken:
    """What the person chose of what a phrase may mean. Raises UsageError where it is nothing."""
    if not states(text, book):
        raise UsageError(
            f"'{plain(text)}': a question, a plan or of another engine; say what was seen"
        )
    if strange := without_unit(text, book):
        figure, unit = strange.split()
        raise UsageError(
            f"'{plain(text)}': no unit is called '{plain(unit)}'; write it like {figure} psi"
        )
    return _of_choice(
        text, Choice(text, candidates(text, book), tuple(values_in(text, book))), choose
    )


def _of_choice(text: str, choice: Choice, choose: Choose | None) -> Spoken:
    """What the person takes of a choice. Raises UsageError where it is nothing."""
    if choose is None or not choice.candidates:
        raise UsageError(_refusal(choice))
    place = choose(choice)
    if place is None:
        raise NotChosenError(f"'{plain(text)}': none of these; nothing is saved of it")
    return Spoken(text, (choice.candidates[place].fact,), (text,))


def _not_read(understanding: Understanding) -> tuple[str, ...]:
    """What nothing was made of, and the words for a layout or the oil, which no entry holds."""
    named = [f for f in understanding.facts if f.table in ("layout", "oil")]
    layouts = [understanding.words(f) for f in named]
    pieces = [p for p in understanding.not_understood if not set(p.lower().split()) <= _SMALL]
    return (*pieces, *layouts)


def _of_the_oil(text: str, fact: Fact, case: Case | None) -> str:
    if case is not None and case.engine.oil == fact.value:
        return (
            f"'{plain(text)}': {fact.value} is in the case already; if the manual asks for it, "
            "write oil_grade_as_manual=yes"
        )
    return f"'{plain(text)}': the oil in it; {to(Way.OIL, grade=fact.value)}"


def only_the_kind(spoken: Sequence[Spoken]) -> list[str]:
    """What is wrong with phrases that say only how the engine is built, where no entry is made."""
    return [
        f"'{plain(s.text)}': how the engine is made; {to(Way.LAYOUT, layout=s.layout.value)}"
        for s in spoken
        if s.layout is not None and not s.facts
    ]


def _of_the_engine(text: str, fact: Fact, book: Book) -> str:
    says = book.quantities[fact.name].says
    if fact.name not in book.dimensions:
        return f"'{plain(text)}': {says}; a case has no entry for it, {to(Way.NO_ENTRY)}"
    return (
        f"'{plain(text)}': {says} is part of how the engine is made; "
        f"{to(Way.DIMENSION, name=fact.name, value=str(fact.value))}"
    )


def _of_the_book(text: str, fact: Fact, book: Book) -> str:
    says = f"{book.limits[fact.name].says}, {fact.value}"
    return f"'{plain(text)}': {says}, is its maker's figure; {to(Way.BEGIN_CARD)}"


def _refusal(choice: Choice) -> str:
    said = f"'{plain(choice.text)}'"
    if not choice.candidates and choice.values:
        return f"{said}: nothing that is measured can be {choice.values[0]}"
    if not choice.candidates:
        return f"{said}: not understood; {to(Way.OTHER_WORDS)}"
    offered = choice.candidates[:_FEWER]
    listed = "; ".join(f"{c.says} [{c.typed}]" for c in offered)
    return (
        f"{said}: not clear; it may mean: {listed}. Write the one you mean, like {offered[0].typed}"
    )

"""Everything that one ``record`` gives as entries of a case; all that is wrong is found at once."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import partial
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.case.units import units_of
from diagnose.case.writing import Appended, NewEntry, append_by
from diagnose.entry.after_repair import is_of_the_repaired
from diagnose.entry.answered_again import answered_again
from diagnose.entry.behaviours import parse_behaviour
from diagnose.entry.conflicts import kind_of, repeated, stands
from diagnose.entry.details import Details
from diagnose.entry.earlier import parse_earlier
from diagnose.entry.engine_said import engine_change, recorded_features, write_engine
from diagnose.entry.facts import TaskInput, parse_fact
from diagnose.entry.fitted_values import fitted
from diagnose.entry.new_entry import (
    behaviour_entry,
    earlier_entry,
    fact_entry,
    reading_entry,
    spoken_entry,
)
from diagnose.entry.readings import parse_reading
from diagnose.entry.repair_work import REPAIR
from diagnose.entry.sheets import READING, FilledBlank
from diagnose.entry.spoken import Choose, Spoken, is_words, only_the_kind, resolve
from diagnose.entry.withdrawing import withdrawal
from diagnose.errors import UsageError, plain
from diagnose.understanding.words.facts import Fact
from diagnose.ways import Way, to
from knowledge.book import Book

_ALL_STAND = "sheet: every line is in the case already"
MOST_FAULTS = 40  #: shown at once; nobody corrects more in one go


@dataclass(frozen=True, slots=True, kw_only=True)
class Input:
    """What a person gives in one go."""

    facts: Sequence[str] = ()  #: "needle_flickers=yes", or words: "mains 4.5 thou"
    readings: Sequence[str] = ()  #: "700 rpm 95 C 8 psi"
    behaviours: Sequence[str] = ()  #: "low during hot, idle only gradual"
    earlier: Sequence[str] = ()  #: "oil pump renewed 2 weeks before"
    blanks: Sequence[FilledBlank] = ()  #: of a filled-in sheet
    withdraw: Sequence[int] = ()  #: numbers of entries that no longer stand
    details: Details = field(default_factory=Details)
    repaired: bool = False  #: readings are of the engine after the repair
    choose: Choose | None = None  #: decides what ambiguous words mean; without it they are refused


@dataclass(frozen=True, slots=True)
class _Understood:
    """What the facts of an input hold, once their words are read."""

    by_id: Sequence[str]  #: "needle_flickers=yes"
    spoken: Sequence[Spoken] = ()
    faults: Sequence[str] = ()
    left_out: Sequence[str] = ()  #: a line for each phrase of which nothing was chosen
    unclear: Sequence[str] = ()  #: a line for each phrase that nothing can be recorded of


def record(path: Path, book: Book, given: Input) -> Appended:
    """Append everything to a case file or, where anything is wrong, nothing.

    A sheet keeps its good lines: those that are wrong are named in ``refused``, and so is a phrase
    that is not clear beside others that are. Lines that say what stands in the case already are
    not written again.

    Raises UsageError with all that is wrong, one fault a line; NoCaseError, BadCaseError,
    CannotWriteError.
    """
    reports = (*given.readings, *given.behaviours, *given.earlier)
    if not (given.facts or reports or given.withdraw or given.blanks):
        raise UsageError(_nothing())
    case = load(path, book) if given.facts or given.choose else None  # first: is it a case?
    understood = _understood(given, book, case)
    made: list[_Made] = []

    def make(case: Case) -> Sequence[NewEntry]:
        made.append(_made(given, understood, case, book))
        return made[-1].entries

    kinds = only_the_kind(understood.spoken)
    if kinds and len(kinds) == len(given.facts) and not (reports or given.withdraw or given.blanks):
        case = load(path, book)
        nothing = Appended(case, case, ())
        return with_engine(nothing, path, book, understood.spoken, given.details.by)
    try:
        saved = append_by(path, book, make)
    except UsageError as error:
        refused = made[-1].refused if made else ()
        lines = [
            *refused,
            str(error),
            *(["nothing is saved"] if len(understood.unclear) > 1 else []),
        ]
        raise UsageError("\n".join(lines)) from None
    saved = with_engine(saved, path, book, understood.spoken, given.details.by)
    return replace(
        saved,
        left_out=tuple(understood.left_out),
        refused=(*made[-1].refused, *saved.refused),
        unclear=tuple(understood.unclear),
        stood=made[-1].stood,
    )


def with_engine(
    saved: Appended, path: Path, book: Book, spoken: Sequence[Spoken], by: str
) -> Appended:
    """The same, with what of the words was not read.

    The engine is replaced where the words say another than the case has.
    """
    facts = [fact for each in spoken for fact in each.of_the_engine]
    was = saved.before.layout
    recorded = recorded_features(saved.before)
    change = engine_change(was, facts, book, recorded)
    layout = next((s.layout.value for s in spoken if s.layout and not s.facts), None)
    now = change.now.id if change else layout
    if now is not None and now != was.id:
        after = write_engine(path, book, now, facts=facts, by=by)
        saved = replace(saved, after=after, engine_was=was)
    return replace(saved, not_read=tuple(_not_read(spoken, saved.engine_was is not None)))


def _not_read(spoken: Sequence[Spoken], engine_replaced: bool) -> Iterator[str]:
    for each in spoken:
        for piece in each.left:
            if not engine_replaced or piece != each.layout_words:
                yield piece


@dataclass(frozen=True, slots=True)
class Taken:
    """What an input comes to in a case that is not changed."""

    entries: tuple[NewEntry, ...]
    spoken: tuple[Spoken, ...] = ()


def taken(given: Input, case: Case, book: Book) -> Taken:
    """Everything as entries for ``case``; none where all that is said is how the engine is built.

    Raises UsageError with all that is wrong, one fault a line.
    """
    read = _understood(given, book, case)
    kinds = only_the_kind(read.spoken)
    if kinds and len(kinds) == len(given.facts):
        return Taken((), tuple(read.spoken))
    faults = [*read.faults, *read.unclear, *read.left_out]
    made = _made(given, replace(read, faults=faults, left_out=(), unclear=()), case, book)
    if made.refused:
        raise UsageError("\n".join(made.refused))
    return Taken(made.entries, tuple(read.spoken))


def new_entries(given: Input, case: Case, book: Book) -> tuple[NewEntry, ...]:
    """Everything as entries for ``case``, which is not changed.

    Raises UsageError with all that is wrong, one fault a line; how the engine is built is no entry.
    """
    found = taken(given, case, book)
    if faults := only_the_kind(found.spoken):
        raise UsageError("\n".join(faults))
    return found.entries


def _is_of_the_repair(fact: Fact) -> bool:
    """Whether a fact is work of this repair, or a reading after it."""
    return is_of_the_repaired(fact) or fact.fields.get("at") == REPAIR or fact.table == "work"


@dataclass(frozen=True, slots=True)
class _Made:
    """The entries to write, the faults of a sheet's lines, how many lines stand already."""

    entries: tuple[NewEntry, ...]
    refused: tuple[str, ...]
    stood: int


def _made(given: Input, understood: _Understood, case: Case, book: Book) -> _Made:
    """As ``new_entries``, with the words read; the good lines of a sheet are kept.

    Raises UsageError where anything else is wrong, or no line of a sheet is right.
    """
    spoken = understood.spoken
    given = replace(given, facts=understood.by_id)
    wrong_details = given.details.faults()
    details = given.details if not wrong_details else Details(where=given.details.where)
    faults = [*understood.faults, *wrong_details, *_replaces_faults(given, spoken, case)]
    if given.repaired and not (
        given.facts or given.readings or any(map(_is_of_the_repair, _facts(spoken)))
    ):
        faults.append(
            f"{to(Way.REPAIRED)}: no pressure, no measured value and no task of the sign-off in "
            "it; give one, like '28 psi at hot idle', 'pump end clearance .003' or, with a lamp "
            "only, 'lamp out at once after a night, stays out hot, no leaks'"
        )
    gone = (*given.withdraw, *(no for each in spoken for no in each.withdraws))
    attempts: list[tuple[Callable[[], NewEntry], str]] = [
        *(
            (partial(_typed_fact, text, book, case, details, given.repaired), "")
            for text in given.facts
        ),
        *((partial(_typed_reading, text, details, given.repaired), "") for text in given.readings),
        *((partial(_typed_behaviour, text, details), "") for text in given.behaviours),
        *((partial(_typed_earlier, text, book, details), "") for text in given.earlier),
        *(
            (partial(spoken_entry, fact, words, case, book, details), "")
            for each in spoken
            for fact, words in zip(each.facts, each.words, strict=True)
        ),
        *((partial(_blank, blank, book, case, details), blank.place) for blank in given.blanks),
        *((partial(withdrawal, no, case, details), "") for no in dict.fromkeys(gone)),
    ]
    entries, refused = _attempted(attempts, faults)
    if faults or not entries:
        raise UsageError(
            "\n".join(dict.fromkeys([*faults, *refused, *understood.unclear, *understood.left_out]))
            or _nothing()
        )
    new = tuple(e for e in entries if not (e.place and stands(e, case)))
    if not new:
        raise UsageError("\n".join(refused) or _ALL_STAND)
    texts = [*(each.text for each in spoken), given.details.note]
    again = answered_again(new, case, book, texts, details)
    return _Made((*new, *again), refused, len(entries) - len(new))


def _facts(spoken: Sequence[Spoken]) -> list[Fact]:
    return [fact for each in spoken for fact in each.facts]


def _attempted(
    attempts: Sequence[tuple[Callable[[], NewEntry], str]], faults: list[str]
) -> tuple[list[NewEntry], tuple[str, ...]]:
    """The entries that can be made, and what is wrong with lines of a sheet.

    So is what words say twice. What is wrong with anything else is added to ``faults``. Raises UsageError for very many faults.
    """
    entries: list[NewEntry] = []
    refused: list[str] = []
    for attempt, place in attempts:
        try:
            entries.append(replace(attempt(), place=place))
        except UsageError as error:
            (refused if place else faults).append(f"{place}: {error}" if place else str(error))
        if len(faults) + len(refused) > MOST_FAULTS:
            raise UsageError("\n".join([*dict.fromkeys(faults + refused), "and perhaps more"]))
    for fault, twice in repeated(entries):
        (refused if all(e.place or e.said for e in twice) else faults).append(fault)
        entries = [e for e in entries if e not in twice]
    return entries, tuple(dict.fromkeys(refused))


def _understood(given: Input, book: Book, case: Case | None) -> _Understood:
    """Tell what was typed by id from words, and read the words."""
    words = [text for text in given.facts if is_words(text, book)]
    typed = [text for text in given.facts if text not in words]
    read = resolve(words, book, given.choose, case, given.repaired)
    return _Understood(typed, read.spoken, left_out=read.left_out, unclear=read.unclear)


def _nothing() -> str:
    return f"nothing to record; write for instance {to(Way.EXAMPLE)}"


def _typed_fact(
    text: str, book: Book, case: Case, details: Details, repaired: bool = False
) -> NewEntry:
    fact = parse_fact(text, book, units_of(case))
    if repaired and not isinstance(fact := fitted(fact, case, book), TaskInput):
        raise UsageError(f"{to(Way.REPAIRED)}: '{plain(text)}' is no measured value")
    return fact_entry(fact, case, details)


def _typed_reading(text: str, details: Details, repaired: bool = False) -> NewEntry:
    details.refuse_place("a reading")
    reading = parse_reading(text)
    return reading_entry(replace(reading, at="start") if repaired else reading, details)


def _typed_earlier(text: str, book: Book, details: Details) -> NewEntry:
    return earlier_entry(parse_earlier(text, book), details)


def _typed_behaviour(text: str, details: Details) -> NewEntry:
    return behaviour_entry(parse_behaviour(text), details)


def _blank(blank: FilledBlank, book: Book, case: Case, details: Details) -> NewEntry:
    """One filled blank as an entry; its place on the engine goes before that of the command."""
    if blank.fault:
        raise UsageError(blank.fault)
    if blank.id.lower() == READING:
        return _typed_reading(blank.value, replace(details, where=blank.where))
    there = replace(details, where=blank.where or details.where)
    return _typed_fact(f"{blank.id}={blank.value}", book, case, there)


def _replaces_faults(given: Input, spoken: Sequence[Spoken], case: Case) -> list[str]:
    """What is wrong with the number of the entry to correct."""
    number = given.details.replaces
    if number is None:
        return []
    if given.blanks:
        return ["replaces: not with a sheet; its lines correct earlier entries by themselves"]
    said = _facts(spoken)
    one = (*given.facts, *said, *given.readings, *given.behaviours, *given.earlier)
    if len(one) != 1:
        return ["replaces: corrects one entry, and so goes with one finding, reading or behaviour"]
    old = case.standing.get(number)
    if old is None:
        return [f"replaces: no entry {number} stands in this case"]
    kind = kind_of(old)
    kinds = {
        "reading": bool(given.readings),
        "behaviour": bool(given.behaviours),
        "baseline": False,
        "earlier": bool(given.earlier),
    }
    if said:
        kinds[kind] = said[0].table == kind
    if not kinds.get(kind, bool(given.facts)):
        return [f"replaces: entry {number} is a {kind}; only another {kind} corrects it"]
    return []

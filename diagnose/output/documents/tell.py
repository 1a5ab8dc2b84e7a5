"""The documents of ``tell``: what was understood, and what that makes of the case in a minute."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from diagnose.case.looks import said
from diagnose.case.schema import ReadingEntry
from diagnose.diagnosis import Diagnosis
from diagnose.entry.telling import Account
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.alarms import AlarmNotice, alarm_notices
from diagnose.output.documents.reported import (
    behaviour_sentence,
    earlier_sentence,
    trial_sentence,
)
from diagnose.understanding.facts import Fact
from knowledge.book import Book
from knowledge.reports.shapes import Behaviour, EarlierWork, TrialMade
from knowledge.reports.words import Circumstance, Course, Done, Hands, Onset, Result, Shows, Since
from knowledge.units import DIMENSIONS, parse

PLACES, CHECKS = 3, 3  #: shown after a text


@dataclass(frozen=True, kw_only=True)
class UnderstoodFact:
    """One fact, and the words it came from."""

    fact: str  #: id of the book, or what shows, or "reading"
    kind: str  #: the table it is written into
    state: str  #: present, absent, the result of a trial, what was done; may be empty
    value: str  #: of a reading, or the layout; may be empty
    when: str  #: may be empty
    words: str
    sure: float  #: 0.5 to 1
    number: int = field(metadata=NOT_IN_JSON)
    says: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class AccountDocument:
    """What was understood of a text."""

    understood: tuple[UnderstoodFact, ...]
    not_understood: tuple[str, ...]


@dataclass(frozen=True, kw_only=True)
class LikelyPlace:
    """A root cause among the likeliest."""

    id: str
    says: str
    probability: float


@dataclass(frozen=True, kw_only=True)
class CheckFirst:
    """A check worth doing first."""

    inspection: str
    says: str
    minutes: float  #: hands-on, with the openings


@dataclass(frozen=True, kw_only=True)
class MinuteDocument:
    """A minute's answer: run on or stop, where it probably is, what to look at."""

    case: str
    may_run: bool
    alarms: tuple[AlarmNotice, ...]
    places: tuple[LikelyPlace, ...]
    checks: tuple[CheckFirst, ...]


@dataclass(frozen=True, kw_only=True)
class TellDocument:
    """Everything ``tell`` answers."""

    understood: tuple[UnderstoodFact, ...]
    not_understood: tuple[str, ...]
    answer: MinuteDocument


def account_document(account: Account, book: Book) -> AccountDocument:
    """Build the document of what was understood; nothing is written yet."""
    read = account.understanding
    return AccountDocument(
        understood=tuple(
            UnderstoodFact(
                fact=fact.name,
                kind=fact.table,
                state=fact.state,
                value=fact.value,
                when=fact.when,
                words=read.words(fact),
                sure=fact.sure,
                number=number,
                says=_says(fact, book),
            )
            for number, fact in account.kept
        ),
        not_understood=read.not_understood,
    )


def minute_document(diagnosis: Diagnosis, path: str) -> MinuteDocument:
    """Build a minute's answer on a case."""
    choice = diagnosis.next_check
    options = (choice.option, *choice.runners_up) if choice else ()
    checks: dict[str, CheckFirst] = {}
    for option in options:
        check = option.inspection
        minutes = option.minutes
        checks.setdefault(
            check.id, CheckFirst(inspection=check.id, says=check.says, minutes=minutes)
        )
    return MinuteDocument(
        case=path,
        may_run=diagnosis.may_run,
        alarms=alarm_notices(diagnosis),
        places=tuple(
            LikelyPlace(id=r.cause.id, says=r.cause.says, probability=r.probability)
            for r in diagnosis.ranking[:PLACES]
        ),
        checks=tuple(checks.values())[:CHECKS],
    )


def tell_document(account: AccountDocument, answer: MinuteDocument) -> TellDocument:
    """Build the whole answer."""
    return TellDocument(
        understood=account.understood, not_understood=account.not_understood, answer=answer
    )


def _says(fact: Fact, book: Book) -> str:
    """The fact as a plain sentence without a full stop."""
    fields = fact.fields
    match fact.table:
        case "layout":
            return f"engine: {book.layouts[str(fields['layout'])].says}"
        case "finding" if "value" in fields:
            where = f", {fields['where']}" if "where" in fields else ""
            return f"{book.measures[str(fields['what'])].says}{where}: {fields['value']}"
        case "finding":
            finding = book.findings[str(fields["what"])]
            absent = fields["state"] == "absent"
            says = (finding.denies or f"not: {finding.says}") if absent else finding.says
            return says if fact.sure == 1.0 else f"{says} (perhaps)"
        case "reading":
            entry = ReadingEntry.model_validate({"no": 1, **fields})
            direct = ", on a trusted gauge" if fields.get("gauge") == "direct" else ""
            return f"reading: {said(entry)}{direct}"
        case "behaviour":
            return behaviour_sentence(_behaviour(fact))
        case "trial":
            kind = book.trials[str(fields["what"])]
            return trial_sentence(TrialMade(kind, Result(str(fields["result"]))))
        case _:
            return earlier_sentence(_work(fact, book))


def _listed(fact: Fact, key: str) -> Sequence[str]:
    value = fact.fields.get(key)
    return value if isinstance(value, list) else ()


def _behaviour(fact: Fact) -> Behaviour:
    fields = fact.fields
    onset, since = fields.get("onset"), fields.get("since")
    return Behaviour(
        Shows(str(fields["shows"])),
        frozenset(Circumstance(c) for c in _listed(fact, "during")),
        frozenset(Circumstance(c) for c in _listed(fact, "never")),
        bool(fields.get("only")),
        Onset(str(onset)) if onset else None,
        frozenset(Course(c) for c in _listed(fact, "course")),
        Since(str(since)) if since else None,
        gauge=str(fields.get("gauge") or "panel"),
    )


def _work(fact: Fact, book: Book) -> EarlierWork:
    fields = fact.fields
    before = str(fields.get("before") or "")
    seconds = 0.0 if before == "straight before" else None
    if before and seconds is None:
        seconds = parse(before, DIMENSIONS["time"])
    done, hands = fields.get("done"), fields.get("hands")
    return EarlierWork(
        book.areas[str(fields["what"])],
        Done(str(done)) if done else None,
        seconds,
        Hands(str(hands)) if hands else None,
    )

"""The documents of ``tell``: what was understood, and what that makes of the case in a minute."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from diagnose.diagnosis import Diagnosis
from diagnose.entry.known import Known, next_check
from diagnose.entry.telling import Account
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.alarms import AlarmNotice, few_alarm_notices, run_verdict
from diagnose.output.documents.facts import engine_sentence, fact_sentence
from diagnose.output.documents.good_readings import good_readings, nothing_else_said
from diagnose.output.documents.next_checks import checks_afterwards, first_step
from diagnose.output.documents.reasons import is_confirmed
from diagnose.output.documents.stations import LikelyStation, likely_stations, stands_out
from diagnose.reasoning.check_planner import A_DAY
from knowledge.book import Book
from knowledge.engines.layouts import UNKNOWN

NO_NUMBERS: Mapping[int, int] = {}
PLACES, CHECKS = 3, 3  #: shown after a text
DAMAGED = 0.9  #: damage as likely is named before its cause (judgement)
UNLIKELY = 0.05  #: below it the first cause is none to look for, beside good readings (judgement)


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
    instead: str = field(default="", metadata=NOT_IN_JSON)  #: the engine that is given up, and its


@dataclass(frozen=True, kw_only=True)
class LikelyPlace:
    """A root cause among the likeliest, or damage that has followed."""

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
    verdict: str = field(metadata=NOT_IN_JSON)  #: whether it may run, in a sentence; may be empty
    alarms: tuple[AlarmNotice, ...]
    damage: tuple[LikelyPlace, ...] = field(metadata=NOT_IN_JSON)  #: nearly certain by now
    places: tuple[LikelyPlace, ...]
    stations: tuple[LikelyStation, ...]
    stands_out: bool  #: whether the first of the places is likely enough to be named
    known: bool = field(metadata=NOT_IN_JSON)  #: whether anything is known of the trouble
    first_step: str = field(default="", metadata=NOT_IN_JSON)  #: before any check; may be empty
    checks: tuple[CheckFirst, ...]
    #: whether no check tells more: then the checks are what to look at before it is put right
    to_be_mended: bool = field(metadata=NOT_IN_JSON)
    within_limits: tuple[str, ...]  #: readings that keep their limits, where nothing is alarming
    nothing_amiss: bool  #: good readings, nothing else, and no cause is likely at all
    numbers: Mapping[int, int] = field(metadata=NOT_IN_JSON)  #: of entries, by those of the facts
    next: str  #: the command that helps most now: "ask" where much is not known, else "review"


@dataclass(frozen=True, kw_only=True)
class TellDocument:
    """Everything ``tell`` answers."""

    understood: tuple[UnderstoodFact, ...]
    not_understood: tuple[str, ...]
    answer: MinuteDocument


def account_document(account: Account, book: Book) -> AccountDocument:
    """Build the document of what was understood; nothing is written yet."""
    read = account.understanding
    change = account.engine_change(book)
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
                says=fact_sentence(fact, book),
            )
            for number, fact in account.kept
        ),
        not_understood=read.not_understood,
        instead="" if change is None else engine_sentence(change),
    )


def minute_document(
    diagnosis: Diagnosis, path: str, numbers: Mapping[int, int] = NO_NUMBERS
) -> MinuteDocument:
    """Build a minute's answer on a case; what ``ask`` asks by word is none of its checks.

    ``numbers``: the entry of each fact that was saved, by the number it was shown with.
    """
    checks = _checks(diagnosis)
    good = good_readings(diagnosis.case) if not diagnosis.alarms else ()
    unlikely = diagnosis.ranking[0].probability < UNLIKELY
    return MinuteDocument(
        case=path,
        numbers=numbers,
        may_run=diagnosis.may_run,
        verdict=run_verdict(diagnosis),
        alarms=few_alarm_notices(diagnosis),
        damage=tuple(
            LikelyPlace(id=state.id, says=state.says, probability=p)
            for state, p in diagnosis.reasons.damage
            if p >= DAMAGED
        ),
        places=tuple(
            LikelyPlace(id=r.cause.id, says=r.cause.says, probability=r.probability)
            for r in diagnosis.ranking[:PLACES]
        ),
        stations=likely_stations(diagnosis),
        stands_out=stands_out(diagnosis),
        known=bool(diagnosis.inference.evidence),
        first_step=first_step(diagnosis),
        checks=checks or _beforehand(diagnosis),
        to_be_mended=not checks,
        within_limits=good,
        nothing_amiss=bool(good) and nothing_else_said(diagnosis.case) and unlikely,
        next="ask" if checks and _lacks_the_ground(diagnosis) else "review",
    )


def _checks(diagnosis: Diagnosis) -> tuple[CheckFirst, ...]:
    """The best checks, each place of the engine once; empty where none tells more."""
    if is_confirmed(diagnosis) or (choice := next_check(diagnosis)) is None:
        return ()
    known, every = Known.of(diagnosis), (choice.option, *choice.runners_up)
    options = tuple(o for o in every if o.inspection.waits_minutes < A_DAY) or every
    checks: dict[str, CheckFirst] = {}
    for option in options:
        check = option.inspection
        says = known.left_of(check)
        checks.setdefault(
            check.id, CheckFirst(inspection=check.id, says=says, minutes=option.minutes)
        )
    return tuple(checks.values())[:CHECKS]


def _beforehand(diagnosis: Diagnosis) -> tuple[CheckFirst, ...]:
    """What to look at before the cause is put right."""
    return tuple(
        CheckFirst(inspection=c.inspection, says=c.says, minutes=c.minutes)
        for c in checks_afterwards(diagnosis)[:CHECKS]
    )


def _lacks_the_ground(diagnosis: Diagnosis) -> bool:
    """Whether the layout or a pressure is missing, which ``ask`` asks for."""
    case = diagnosis.case
    return case.layout is UNKNOWN or not case.readings


def tell_document(account: AccountDocument, answer: MinuteDocument) -> TellDocument:
    """Build the whole answer."""
    return TellDocument(
        understood=account.understood, not_understood=account.not_understood, answer=answer
    )

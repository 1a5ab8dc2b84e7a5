"""The documents of ``tell``: what was understood, and what that makes of the case in a minute."""

from __future__ import annotations

from dataclasses import dataclass, field
from math import prod

from diagnose.case_inference import Ranked
from diagnose.diagnosis import Diagnosis
from diagnose.entry.telling import Account
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.alarms import AlarmNotice, few_alarm_notices
from diagnose.output.documents.facts import fact_sentence
from diagnose.output.documents.interview import LEAST_LIKELY
from knowledge.book import Book
from knowledge.engines.layouts import UNKNOWN
from knowledge.model import Station

PLACES, CHECKS = 3, 3  #: shown after a text
#: a stretch of the oil's path in the words of the trade
STATION_SAYS = {
    Station.INSTRUMENT: "gauge, sender and wiring",
    Station.OIL: "the oil itself",
    Station.SUCTION: "pickup and sump",
    Station.PUMP: "pump and its drive",
    Station.RELIEF: "relief valve",
    Station.DELIVERY: "filter, cooler and oilways",
    Station.BEARINGS: "bearings",
    Station.TOPEND: "top end",
    Station.ASSEMBLY: "how it was put together",
    Station.LEAKS: "leaks outside",
}


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
class LikelyStation:
    """A stretch of the oil's path: how likely any cause of it is there, and the likeliest of them."""

    station: str
    says: str
    probability: float
    cause: str  #: what it says, without its explanation


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
    stations: tuple[LikelyStation, ...]
    stands_out: bool  #: whether the first of the places is likely enough to be named
    checks: tuple[CheckFirst, ...]
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
        alarms=few_alarm_notices(diagnosis),
        places=tuple(
            LikelyPlace(id=r.cause.id, says=r.cause.says, probability=r.probability)
            for r in diagnosis.ranking[:PLACES]
        ),
        stations=_stations(diagnosis),
        stands_out=bool(diagnosis.ranking) and diagnosis.ranking[0].probability >= LEAST_LIKELY,
        checks=tuple(checks.values())[:CHECKS],
        next="ask" if _lacks_the_ground(diagnosis) else "review",
    )


def _stations(diagnosis: Diagnosis) -> tuple[LikelyStation, ...]:
    """The likeliest stretches; their causes are taken as independent. No fault is no place."""
    causes: dict[Station, list[Ranked]] = {}
    for ranked in diagnosis.ranking:
        if not ranked.cause.no_fault:
            causes.setdefault(ranked.cause.station, []).append(ranked)
    found = [
        LikelyStation(
            station=station.value,
            says=STATION_SAYS[station],
            probability=1.0 - prod(1.0 - r.probability for r in those),
            cause=those[0].cause.says.partition(":")[0],
        )
        for station, those in causes.items()
        if station in STATION_SAYS
    ]
    return tuple(sorted(found, key=lambda s: -s.probability)[:PLACES])


def _lacks_the_ground(diagnosis: Diagnosis) -> bool:
    """Whether the layout or a pressure is missing, which ``ask`` asks for."""
    case = diagnosis.case
    return case.layout is UNKNOWN or not case.readings


def tell_document(account: AccountDocument, answer: MinuteDocument) -> TellDocument:
    """Build the whole answer."""
    return TellDocument(
        understood=account.understood, not_understood=account.not_understood, answer=answer
    )

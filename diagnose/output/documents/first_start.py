"""The document of ``signoff --start``: pressures predicted, what to watch, what was read."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from diagnose.case.case import Case, GaugeReading
from diagnose.diagnosis import Diagnosis
from diagnose.output.as_json import NOT_IN_JSON, key
from diagnose.output.documents.cautions import cautions, short_cautions
from diagnose.output.documents.named import Named, named
from diagnose.output.documents.signoff_items import SignoffItem, signoff_item
from diagnose.output.documents.start_table import StartTable, reading_head, start_table
from diagnose.output.scale import Scale, scale_of
from diagnose.signoff.judging import Verdict
from diagnose.signoff.lamp import is_by_lamp
from diagnose.signoff.sheet import BEFORE_START, Item, Signoff
from diagnose.signoff.start import Compared, FirstStart, stopped_by
from knowledge.pressure.quantities import STOP_IDLE_PRESSURE, STOP_RUNNING_PRESSURE
from knowledge.units import PSI
from knowledge.work import Caution, Phase

UNPREDICTED = "no pressure is predicted: no oil circuit in figures for this kind of engine"
REOPENED = 10  #: causes listed where the diagnosis is open again
#: of every first start, whatever was opened
ALWAYS = (Caution.EXHAUST, Caution.ROTATING, Caution.HOT, Caution.FIRE, Caution.BOAT)
#: K and Pa: a reading such as one writes down
EXAMPLE_HEAT, EXAMPLE = 293.15, 55 * PSI


@dataclass(frozen=True, kw_only=True)
class PredictedPressure:
    """The gallery pressure [Pa] of the repaired engine: mean, and nine engines in ten."""

    rpm: float
    oil_kelvin: float
    low: float
    mean: float = field(metadata=key("middle"))
    high: float


@dataclass(frozen=True, kw_only=True)
class StartReading:
    """A reading of the first start beside what was predicted; pressures [Pa]."""

    no: int
    says: str = field(metadata=NOT_IN_JSON)  #: when it was read, as it was given
    rpm: float
    pressure: float
    low: float | None  #: predicted, with ``high``; None where nothing is
    high: float | None
    below: bool
    above: bool
    stop: str  #: why the engine must be stopped; empty where it need not


@dataclass(frozen=True, kw_only=True)
class ReopenedCause:
    """A cause of what the repaired engine shows."""

    cause: str
    probability: float
    says: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class FirstStartDocument:
    """Everything ``signoff --start`` answers."""

    predicted: tuple[PredictedPressure, ...]
    fitted: tuple[str, ...]  #: quantities set by measured values of tasks
    left: tuple[str, ...]  #: findings deliberately not put right
    read: tuple[StartReading, ...]
    reopened: tuple[ReopenedCause, ...]  #: empty where nothing reads less than predicted
    title: str = field(metadata=NOT_IN_JSON)
    path: str = field(metadata=NOT_IN_JSON)  #: of the case file, as typed
    table: StartTable | None = field(metadata=NOT_IN_JSON)  #: None: no circuit in figures
    by_lamp: bool = field(metadata=NOT_IN_JSON)  #: the engine has a lamp, and no gauge was read
    unpredicted: str = field(metadata=NOT_IN_JSON)  #: why no pressure is predicted; may be empty
    stops: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: when to stop, where none is predicted
    read_says: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: each reading, in a sentence
    blocking: tuple[Named, ...] = field(metadata=NOT_IN_JSON)  #: tasks that forbid the start
    cautions: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    care: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: the cautions in a few words each
    watch: tuple[SignoffItem, ...] = field(metadata=NOT_IN_JSON)  #: limits of the first start
    look_at: str = field(metadata=NOT_IN_JSON)  #: next check where it is reopened; may be empty
    #: an oil temperature and a pressure such as one writes down
    example: str = field(metadata=NOT_IN_JSON)


def first_start_document(start: FirstStart | None, sheet: Signoff, path: str) -> FirstStartDocument:
    """Build the document of a first start; ``path``: the case file as typed.

    ``start``: None where the engine has no circuit in figures: no pressure is predicted, the stop
    limits and what to watch stay.
    """
    case, watch = sheet.answer.case, sheet.of([Phase.FIRST_START])
    kinds = [*ALWAYS, *(c for i in watch for c in i.task.cautions)]
    scale, again = scale_of(case), start.reopened if start else None
    table = start_table(start) if start else None
    return FirstStartDocument(
        predicted=tuple(
            PredictedPressure(
                rpm=e.rpm,
                oil_kelvin=e.temperature,
                low=e.pressure.low,
                mean=e.pressure.mean,
                high=e.pressure.high,
            )
            for e in (start.expected if start else ())
        ),
        fitted=start.fitted if start else (),
        left=start.left if start else (),
        read=tuple(_readings(start, case)),
        reopened=_reopened(again),
        title=case.job.title,
        path=path,
        table=table,
        by_lamp=is_by_lamp(case, sheet.places),
        unpredicted="" if start else f"{UNPREDICTED} ({case.layout.says})",
        stops=() if start else tuple(_stops(case, scale)),
        read_says=table.read if table else tuple(_alone_in_words(case, scale)),
        blocking=named([i.task for i in sheet.blocking if _holds(i)]) + _asked(sheet),
        cautions=tuple(cautions(kinds, sheet.answer)),
        care=tuple(short_cautions(kinds, sheet.answer)),
        watch=tuple(signoff_item(i, sheet) for i in watch),
        look_at=_look_at(again),
        example=f"{scale.heat(EXAMPLE_HEAT)} {scale.one(EXAMPLE)}",
    )


def _when(read: GaugeReading) -> str:
    """When a reading was taken, in the words it was given in: "cold, idle", "2000 rpm"."""
    entry = read.entry
    words = ", ".join(filter(None, (entry.oil, entry.rpm, *entry.during, entry.coolant)))
    return words or f"{read.reading.rpm:.0f} rpm"


def _reading(read: GaugeReading, stop: str, compared: Compared | None = None) -> StartReading:
    """A reading; ``compared``: with what was predicted, None where nothing is."""
    return StartReading(
        no=read.entry.no,
        says=_when(read),
        rpm=read.reading.rpm,
        pressure=read.reading.pressure,
        low=compared.predicted.low if compared else None,
        high=compared.predicted.high if compared else None,
        below=bool(compared and compared.below),
        above=bool(compared and compared.above),
        stop=stop,
    )


def _readings(start: FirstStart | None, case: Case) -> Iterator[StartReading]:
    if start is None:
        yield from (_reading(read, stopped_by(case, read)) for read in case.start_readings)
    else:
        yield from (_reading(one.read, one.stop, one) for one in start.compared)


def _alone_in_words(case: Case, scale: Scale) -> Iterator[str]:
    for read in case.start_readings:
        stop = stopped_by(case, read)
        then = f"STOP THE ENGINE ({stop})" if stop else "above the stop limits"
        yield f"{reading_head(read.reading, scale)}: {then}"


def _stops(case: Case, scale: Scale) -> Iterator[str]:
    """The pressures below which the engine is stopped; a general figure says so."""
    for limit, where in ((STOP_IDLE_PRESSURE, "idling"), (STOP_RUNNING_PRESSURE, "from 2000 rpm")):
        whose = "" if limit in case.limits else " (a general figure: enter yours)"
        yield f"{where}, below {scale.one(case.limit(limit))}{whose}"


def _asked(sheet: Signoff) -> tuple[Named, ...]:
    """The question which parts the engine has, where tasks before the start depend on it."""
    if not sheet.asked_before_start:
        return ()
    parts = "; ".join(part.says for part in sheet.asks)
    which = "whether it has" if len(sheet.asks) == 1 else "which of these it has:"
    return (Named(id="parts_it_has", says=f"say {which} {parts}"),)


def _holds(item: Item) -> bool:
    """Whether the engine must not be started, or not again, before the task is settled."""
    return item.task.phase in BEFORE_START or item.judged.verdict is Verdict.FAILED


def _reopened(answer: Diagnosis | None) -> tuple[ReopenedCause, ...]:
    ranking = answer.ranking[:REOPENED] if answer else ()
    return tuple(
        ReopenedCause(cause=r.cause.id, probability=r.probability, says=r.cause.says)
        for r in ranking
    )


def _look_at(answer: Diagnosis | None) -> str:
    choice = answer.next_check if answer else None
    return choice.option.inspection.says if choice else ""

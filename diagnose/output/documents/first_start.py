"""The document of ``signoff --start``: pressures predicted, what to watch, what was read."""

from __future__ import annotations

from dataclasses import dataclass, field

from diagnose.diagnosis import Diagnosis
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.cautions import cautions, short_cautions
from diagnose.output.documents.named import Named, named
from diagnose.output.documents.signoff_items import BEFORE_START, SignoffItem, signoff_item
from diagnose.output.documents.start_table import StartTable, start_table
from diagnose.output.scale import scale_of
from diagnose.signoff.judging import Verdict
from diagnose.signoff.sheet import Item, Signoff
from diagnose.signoff.start import FirstStart
from knowledge.units import PSI
from knowledge.work import Caution, Phase

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
    mean: float = field(metadata={"key": "middle"})
    high: float


@dataclass(frozen=True, kw_only=True)
class StartReading:
    """A reading of the first start beside what was predicted; pressures [Pa]."""

    no: int
    rpm: float
    pressure: float
    low: float
    high: float
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
    table: StartTable = field(metadata=NOT_IN_JSON)
    blocking: tuple[Named, ...] = field(metadata=NOT_IN_JSON)  #: tasks that forbid the start
    cautions: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    care: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: the cautions in a few words each
    watch: tuple[SignoffItem, ...] = field(metadata=NOT_IN_JSON)  #: limits of the first start
    look_at: str = field(metadata=NOT_IN_JSON)  #: next check where it is reopened; may be empty
    example: str = field(
        metadata=NOT_IN_JSON
    )  #: an oil temperature and a pressure such as one writes down


def first_start_document(start: FirstStart, sheet: Signoff, path: str) -> FirstStartDocument:
    """Build the document of a first start; ``path``: the case file as typed."""
    watch = sheet.of([Phase.FIRST_START])
    kinds = [*ALWAYS, *(c for i in watch for c in i.task.cautions)]
    scale = scale_of(start.case)
    return FirstStartDocument(
        predicted=tuple(
            PredictedPressure(
                rpm=e.rpm,
                oil_kelvin=e.temperature,
                low=e.pressure.low,
                mean=e.pressure.mean,
                high=e.pressure.high,
            )
            for e in start.expected
        ),
        fitted=tuple(start.fitted),
        left=tuple(start.left),
        read=tuple(
            StartReading(
                no=c.read.entry.no,
                rpm=c.read.reading.rpm,
                pressure=c.read.reading.pressure,
                low=c.predicted.low,
                high=c.predicted.high,
                below=c.below,
                above=c.above,
                stop=c.stop,
            )
            for c in start.compared
        ),
        reopened=_reopened(start.reopened),
        title=start.case.job.title,
        path=path,
        table=start_table(start),
        blocking=named(i.task for i in sheet.blocking if _holds(i)),
        cautions=tuple(cautions(kinds, sheet.answer)),
        care=tuple(short_cautions(kinds, sheet.answer)),
        watch=tuple(signoff_item(i, sheet) for i in watch),
        look_at=_look_at(start.reopened),
        example=f"{scale.heat(EXAMPLE_HEAT)} {scale.one(EXAMPLE)}",
    )


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

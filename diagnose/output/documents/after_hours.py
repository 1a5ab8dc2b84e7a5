"""The document of ``signoff --after``: what is looked at again after hours of running."""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import groupby

from diagnose.case.case import Case
from diagnose.case.mended import mended
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.named import UNTITLED
from diagnose.output.documents.signoff_items import SignoffItem, signoff_item
from diagnose.output.lines import percent
from diagnose.output.scale import scale_of
from diagnose.signoff.sheet import Item, Signoff
from knowledge.figures import HOUR
from knowledge.reassembly.later import LEAST_OF_FIRST_START
from knowledge.units import PRESSURE, PSI

EXAMPLE = 24 * PSI  #: Pa: a pressure such as one writes down


@dataclass(frozen=True, kw_only=True)
class LaterLook:
    """What is looked at after so many hours."""

    hours: float
    items: tuple[SignoffItem, ...]
    compared: tuple[str, ...]  #: each pressure beside that of the first start

    @property
    def open(self) -> tuple[SignoffItem, ...]:
        """What is not recorded yet."""
        return tuple(i for i in self.items if i.open)


@dataclass(frozen=True, kw_only=True)
class LaterDocument:
    """Everything ``signoff --after`` answers."""

    case: str | None
    title: str
    after_hours: float | None  #: how long it has run; None: all that will come
    started: bool  #: whether hot idle of the first start is recorded
    looks: tuple[LaterLook, ...]
    path: str = field(metadata=NOT_IN_JSON)
    example: str = field(metadata=NOT_IN_JSON)  #: a pressure in the job's unit

    @property
    def name(self) -> str:
        """The title, or that there is none."""
        return self.title or UNTITLED


def later_document(sheet: Signoff, path: str, after: float | None = None) -> LaterDocument:
    """Build the document of what is due ``after`` so many seconds of running; None: all."""
    case = sheet.answer.case
    return LaterDocument(
        case=str(case.path) if case.path else None,
        title=case.job.title,
        after_hours=None if after is None else after / HOUR,
        started=mended(case).hot_idle is not None,
        looks=later_looks(sheet, after),
        path=path,
        example=scale_of(case).one(EXAMPLE),
    )


def later_looks(sheet: Signoff, after: float | None = None) -> tuple[LaterLook, ...]:
    """What is due after so many seconds of running, by the hour; None: all."""
    due = [i for i in sheet.later if after is None or i.task.due <= after]
    return tuple(
        LaterLook(
            hours=seconds / HOUR,
            items=tuple(signoff_item(i, sheet) for i in items),
            compared=tuple(filter(None, (_compared(i, sheet.answer.case) for i in items))),
        )
        for seconds, group in groupby(due, lambda i: i.task.due)
        if (items := list(group))
    )


def _compared(item: Item, case: Case) -> str:
    """A later pressure beside that of the first start; empty where either is missing."""
    first, scale = mended(case).hot_idle, scale_of(case)
    now = next((w.value for w in reversed(item.worked) if w.value is not None), None)
    if now is None or not first or item.task.dimension != PRESSURE.id:
        return ""
    text = f"{scale.one(now)} against {scale.one(first)} at the first start"
    if now >= LEAST_OF_FIRST_START * first:
        return f"{text}: holds"
    return f"{text}: {percent(1 - now / first)} lower, find the reason before you run it on"

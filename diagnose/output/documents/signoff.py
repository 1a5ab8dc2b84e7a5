"""The document of ``signoff``: the tasks in assembly order, parts, and the first start."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import groupby
from typing import TYPE_CHECKING

from diagnose.bearings.table import bearings_of
from diagnose.case.case import Case
from diagnose.errors import UsageError
from diagnose.output.as_json import NOT_IN_JSON, only
from diagnose.output.documents.alarms import AlarmNotice, alarm_notices
from diagnose.output.documents.bearings import order_rows
from diagnose.output.documents.cautions import deferrals
from diagnose.output.documents.job_end import ended
from diagnose.output.documents.named import UNTITLED, Named, named
from diagnose.output.documents.signoff_items import (
    PHASES,
    SignoffItem,
    count_in_words,
    signoff_item,
)
from diagnose.output.documents.used_parts import UsedPartEntry, used_parts
from diagnose.signoff.parts import Needed
from diagnose.signoff.sheet import Signoff
from knowledge.history.findings import FRESHLY_REBUILT
from knowledge.model import State
from knowledge.work import Phase

if TYPE_CHECKING:
    from diagnose.circuit.settings import Setting
    from diagnose.output.documents.start_table import StartTable


@dataclass(frozen=True, kw_only=True)
class NeededPart:
    """A part or consumable, and why it is needed."""

    id: str
    says: str
    quantity: str
    measure_first: str
    note: str
    because: tuple[str, ...]


@dataclass(frozen=True, kw_only=True)
class SignoffPhase:
    """The tasks of one phase of the work."""

    number: int
    says: str
    items: tuple[SignoffItem, ...]

    @property
    def cautions(self) -> tuple[str, ...]:
        """The cautions of all tasks, each once."""
        return tuple(dict.fromkeys(c for i in self.items for c in i.cautions))


@dataclass(frozen=True, kw_only=True)
class SignoffDocument:
    """Everything ``signoff`` answers."""

    case: str | None  #: path of the case file
    title: str
    layout: str
    causes: tuple[Named, ...] = field(metadata=only("id"))
    found: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: the faults seen or measured
    opened: tuple[str, ...]
    blocking: tuple[str, ...] = field(metadata={"key": "in_the_way"})  #: ids of tasks
    items: tuple[SignoffItem, ...]
    parts: tuple[NeededPart, ...]
    orders: tuple[str, ...]  #: shells for the bearings that were measured, until they are fitted
    used_parts: tuple[UsedPartEntry, ...]  #: reuse, rework or renew
    path: str = field(metadata=NOT_IN_JSON)  #: of the case file, as typed
    closed: str = field(metadata=NOT_IN_JSON)  #: how it ended; empty while not repaired
    over: bool = field(metadata=NOT_IN_JSON)  #: the job is closed
    engine: str = field(metadata=NOT_IN_JSON)
    alarms: tuple[AlarmNotice, ...] = field(metadata=NOT_IN_JSON)
    count: str = field(metadata=NOT_IN_JSON)  #: how far it is
    start: StartTable | None = field(metadata=NOT_IN_JSON)  #: pressures to expect
    held_up: int = field(metadata=NOT_IN_JSON)  #: tasks that forbid the first start
    asks: tuple[Named, ...] = field(metadata=only("id"))  #: parts it may have, with tasks of them
    asked_first: bool = field(metadata=NOT_IN_JSON)  #: that is to be said before the first start
    started: bool = field(metadata=NOT_IN_JSON)  #: the repaired engine has run
    deferrals: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: what takes precedence over it
    #: the whole engine was just rebuilt, and its whole sheet is not asked for
    rebuilt: bool = field(default=False, metadata=NOT_IN_JSON)

    @property
    def name(self) -> str:
        """The title, or that there is none."""
        return self.title or UNTITLED

    @property
    def causes_say(self) -> str:
        """The causes in words."""
        if self.causes or not self.found:
            return " and ".join(c.says for c in self.causes) or "none is confirmed yet"
        return f"not confirmed yet; found: {'; '.join(self.found)}"

    @property
    def question(self) -> str:
        """Which of the parts nobody spoke of the engine has; empty where none is in question."""
        if not self.asks:
            return ""
        names = "; ".join(f"{a.says} [{a.id}]" for a in self.asks)
        if len(self.asks) == 1:
            return f"Does it have {names}? Say yes or no; yes adds its tasks"
        return f"Does it have any of these? Say yes or no; yes adds its tasks: {names}"

    def phases(self, *, open_only: bool = False) -> Iterator[SignoffPhase]:
        """Yield the phases of the work; ``open_only``: with tasks that are not settled only."""
        items = [i for i in self.items if i.unsettled or not open_only]
        for phase, group in groupby(items, lambda i: i.phase):
            number = list(Phase).index(phase) + 1
            yield SignoffPhase(number=number, says=PHASES[phase], items=tuple(group))


def signoff_document(
    sheet: Signoff, needed: Sequence[Needed], path: str, *, start: StartTable | None = None
) -> SignoffDocument:
    """Build the document of a sign-off; ``path``: the case file as typed."""
    case = sheet.answer.case
    return SignoffDocument(
        case=str(case.path) if case.path else None,
        title=case.job.title,
        layout=case.layout.id,
        causes=named(sheet.causes),
        found=tuple(fault.says for fault in sheet.answer.found.proved),
        opened=tuple(sorted(a.value for a in sheet.places)),
        blocking=tuple(i.task.id for i in sheet.blocking),
        items=tuple(signoff_item(i, sheet) for i in sheet.items),
        parts=tuple(
            NeededPart(
                id=n.part.id,
                says=n.part.says,
                quantity=n.part.quantity,
                measure_first=n.part.measure_first,
                note=n.part.note,
                because=tuple(n.because),
            )
            for n in needed
        ),
        orders=_shells_to_order(case),
        used_parts=used_parts(sheet.answer),
        path=path,
        closed=ended(case, len(sheet.before_start)),
        over=case.closed is not None,
        engine=case.layout.says,
        alarms=alarm_notices(sheet.answer),
        count=count_in_words(sheet),
        start=start,
        held_up=len(sheet.before_start),
        asks=named(() if case.closed else sheet.asks),
        asked_first=sheet.asked_before_start,
        started=sheet.has_run,
        deferrals=deferrals(),
        rebuilt=not (sheet.whole or case.closed) and _just_rebuilt(case),
    )


def _just_rebuilt(case: Case) -> bool:
    """Whether the job says that the engine was rebuilt before the trouble began."""
    seen = [r.observation for r in case.finding_records if r.finding is FRESHLY_REBUILT]
    return any(o is not None and o.state is State.PRESENT for o in seen)


def _shells_to_order(case: Case) -> tuple[str, ...]:
    """The orders that the measured bearings come to; none once bearings are measured as fitted."""
    if not case.bearings.found or case.bearings.fitted:
        return ()
    found = bearings_of(case)
    return tuple(row.brief for order in found.orders.values() for row in order_rows(order, found))


def start_expected(
    sheet: Signoff, settings: Sequence[Setting] = (), left: Sequence[str] = ()
) -> StartTable | None:
    """Return the pressures to expect at first start; loads the physics.

    None where the case has no circuit, or nothing was open. Raises UsageError where ``settings``
    or ``left`` ask for them and there is no circuit.
    """
    asked = bool(settings or left)
    if not (asked or sheet.of([Phase.FIRST_START, Phase.RUN_IN])):
        return None
    from diagnose.output.documents.start_table import start_table
    from diagnose.signoff.start import first_start

    try:
        return start_table(first_start(sheet.answer.case, sheet.answer.book, settings, left))
    except UsageError:
        if asked:
            raise
        return None

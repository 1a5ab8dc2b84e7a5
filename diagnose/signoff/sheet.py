"""The sign-off of one case: the tasks it calls for, in the order of the work, and how they stand."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from functools import cached_property

from diagnose.case.case import Case, TaskRecord
from diagnose.diagnosis import Diagnosis
from diagnose.reasoning.seen_on_engine import is_sure, taken_together
from diagnose.signoff.from_readings import read_already
from diagnose.signoff.judging import EngineFigures, Judged, Verdict, judged
from diagnose.signoff.lamp import is_out_of_place
from diagnose.signoff.one_speed import has_one_speed
from diagnose.signoff.since_repair import measured_since
from diagnose.teardown.loose_ends import DueTask, follow_up
from knowledge.applying import applies, surely_applies
from knowledge.model import Cause, Finding
from knowledge.reassembly.by_lamp import BEFORE_IT_FIRES
from knowledge.reassembly.first_start import PRESSURE_AT_HOT_IDLE, PRESSURE_HOT_AT_2000
from knowledge.reassembly.left_out import is_left_out
from knowledge.reassembly.scope import ALWAYS, called_for_after, called_for_within
from knowledge.work import Access, Hold, Phase, Task

BEFORE_START = tuple(p for p in Phase if p not in (Phase.FIRST_START, Phase.RUN_IN, Phase.LATER))
MORE_LIKELY = 0.5  #: from here on a cause that was found is more likely than not
#: verdicts of work that was really done
SEEN_TO = (Verdict.PASSED, Verdict.BORDERLINE, Verdict.FAILED)


@dataclass(frozen=True, slots=True)
class Item:
    """One task of the sheet."""

    task: Task
    why: str  #: why this repair calls for it
    judged: Judged
    worked: tuple[TaskRecord, ...]  #: one for each place on the engine

    @property
    def blocks(self) -> bool:
        """Whether no work may go on before it is done."""
        verdict = self.judged.verdict
        if self.task.hold is Hold.STOP:
            return verdict in (Verdict.OPEN, Verdict.FAILED)
        return self.task.holds_if_failed and verdict is Verdict.FAILED


@dataclass(frozen=True)
class Signoff:
    """The tasks that this engine and this repair call for."""

    answer: Diagnosis
    until: float
    opened: frozenset[Access] = frozenset()  #: besides what the case shows
    whole: bool = False  #: the whole engine is being built

    @cached_property
    def places(self) -> frozenset[Access]:
        """What has been open."""
        places = self.answer.planner.opened | self.opened
        if self.answer.case.bearings.fitted:
            places |= self.answer.planner.tree.closure(Access.CAP_OFF)
        return places

    @cached_property
    def causes(self) -> tuple[Cause, ...]:
        """The causes the repair is for: as closed, else as found."""
        closed = self.answer.case.closed
        if closed is not None:
            return closed.causes
        ranking = self.answer.ranking
        likely = tuple(r.cause for r in ranking if r.probability >= self.until)
        if likely:  # a second fault that was found is put right too
            also = (
                r.cause for r in ranking if r.shown and MORE_LIKELY <= r.probability < self.until
            )
            return (*likely, *also)
        if not ranking:
            return ()
        known = self.answer.inference
        return taken_together(known) if is_sure(known, self.until) else ()

    @property
    def items(self) -> tuple[Item, ...]:
        """The tasks up to the end of the job, in the order of the work."""
        return tuple(i for i in self._surely if i.task.phase is not Phase.LATER)

    @cached_property
    def maybe(self) -> tuple[Item, ...]:
        """Tasks of parts that nobody said whether this engine has, and that none was done of."""
        return tuple(i for i in self._every if i not in self._surely)

    @cached_property
    def asks(self) -> tuple[Finding, ...]:
        """The parts of these tasks: whether the engine has them is one question."""
        state = self.answer.case.known_features.get
        unknown = (f for i in self.maybe for f in i.task.only_with if state(f) is None)
        return tuple(dict.fromkeys(unknown))

    @property
    def asked_before_start(self) -> bool:
        """Whether that must be answered before the engine is started, or runs on."""
        return any(i.blocks and i.task.phase in BEFORE_START for i in self.maybe)

    @property
    def has_run(self) -> bool:
        """Whether the repaired engine was started: read, or seen to at its first start."""
        done = {i.task for i in self.of([Phase.FIRST_START]) if i.judged.verdict in SEEN_TO}
        return bool(self.answer.case.start_readings or done - BEFORE_IT_FIRES)

    @property
    def later(self) -> tuple[Item, ...]:
        """What is looked at again after hours of running, soonest first."""
        later = [i for i in self._surely if i.task.phase is Phase.LATER]
        return tuple(sorted(later, key=lambda i: i.task.due))

    @cached_property
    def _surely(self) -> tuple[Item, ...]:
        state = self.answer.case.known_features.get
        return tuple(i for i in self._every if i.worked or surely_applies(i.task, state))

    @cached_property
    def _every(self) -> tuple[Item, ...]:
        case = self.answer.case
        due = {d.task: d for d in follow_up(self.answer)}
        worked: dict[Task, list[TaskRecord]] = {}
        for w in case.task_records:
            worked.setdefault(w.task, []).append(w)
        read = read_already(case, was_open=bool(self.places) or self.whole)
        found = []
        for phase in Phase:
            for task in self.answer.book.tasks.values():
                why = self.called_for(task, due) if task.phase is phase else ""
                if why:
                    mine = tuple(worked.get(task, ())) or tuple(filter(None, [read.get(task)]))
                    mine = mine or measured_since(task, case)
                    found.append(Item(task, why, _worst(task, mine, case), mine))
        return tuple(found)

    def called_for(self, task: Task, due: dict[Task, DueTask]) -> str:
        """Why the task is called for; empty where it is not. ``due``: what the findings call for."""
        if task.phase is Phase.CLEANING:
            found = due.get(task)
            return ", ".join(f.says for f in found.because[:2]) if found else ""
        state = self.answer.case.known_features.get
        if not applies(task, state) or is_left_out(task, state):
            return ""
        if has_one_speed(self.answer.case):
            if task is PRESSURE_AT_HOT_IDLE:
                return ""
            if task is PRESSURE_HOT_AT_2000:  # what it shows there stands for idle as well
                return self._reason(task) or self._reason(PRESSURE_AT_HOT_IDLE)
        if is_out_of_place(task, self.answer.case, self.places, self.causes):
            return ""
        return self._reason(task)

    def _reason(self, task: Task) -> str:
        """Why a task that fits the engine is called for; empty where it is not."""
        if self.whole:
            return "the whole engine is built"
        cause = next((c for c in self.causes if c in task.guards), None)
        if cause is not None:
            return f"guards against {cause.says}"
        opened = self.places & (frozenset() if task.phase in ALWAYS else called_for_within(task))
        if opened:
            return f"opened: {', '.join(sorted(a.value for a in opened))}"
        if task.phase in ALWAYS and self.places & called_for_after(task):
            return "the engine has been open"
        return ""

    @property
    def blocking(self) -> tuple[Item, ...]:
        """The tasks that must be done before any further work."""
        return tuple(i for i in self.items if i.blocks)

    @property
    def before_start(self) -> tuple[Item, ...]:
        """The tasks that must be done before the engine is started."""
        return tuple(i for i in self.blocking if i.task.phase in BEFORE_START)

    def of(self, phases: Collection[Phase]) -> tuple[Item, ...]:
        """The items of some phases."""
        return tuple(i for i in self.items if i.task.phase in phases)


_GRAVEST = (Verdict.FAILED, Verdict.BORDERLINE, Verdict.LEFT_OUT, Verdict.PASSED, Verdict.OPEN)


def _worst(task: Task, worked: tuple[TaskRecord, ...], case: Case) -> Judged:
    """Judge a task done in several places by its worst result."""
    engine = EngineFigures.of(case)
    every = [judged(task, w, engine) for w in worked or (None,)]
    return min(every, key=lambda j: _GRAVEST.index(j.verdict))

"""What a job still lacks before it can be closed."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from diagnose.case.mended import reads_as_when_sound
from diagnose.diagnosis import Diagnosis
from diagnose.signoff.judging import Verdict
from diagnose.signoff.nothing_wrong import SUSPECT, of_no_fault, readings_are_good
from diagnose.signoff.sheet import Signoff
from diagnose.teardown.loose_ends import loose_ends
from diagnose.ways import Way, to
from knowledge.model import Cause
from knowledge.work import Task

MOST_NAMED = 3


@dataclass(frozen=True, slots=True)
class Obstacle:
    """Why a job should not be closed quietly, and where more is said of it."""

    says: str
    see: Way | None = None

    @property
    def said(self) -> str:
        """In one line, with where to look."""
        return f"{self.says} ({to(self.see)})" if self.see else self.says


def obstacles(answer: Diagnosis, until: float) -> tuple[str, ...]:
    """Why the job should not be closed quietly, each in one line."""
    return tuple(each.said for each in open_points(answer, until))


def open_points(
    answer: Diagnosis, until: float, causes: Sequence[Cause] = ()
) -> tuple[Obstacle, ...]:
    """Why the job should not be closed quietly; ``causes``: those it is to be closed with."""
    if of_no_fault(causes):
        return tuple(_against_no_fault(answer))
    ends = loose_ends(answer, until)
    found = []
    if not ends.confirmed:
        top = next((r for r in answer.ranking if not r.cause.no_fault), answer.ranking[0])
        seen = "" if top.probability < until else ", but nobody has seen it on the engine"
        leads = f"{top.cause.says} leads with {100 * top.probability:.0f} %"
        found.append(Obstacle(f"no cause is confirmed: {leads}{seen}"))
    if ends.pressure_closed is False and not reads_as_when_sound(answer.case):
        found.append(Obstacle("some of the missing pressure is not explained", Way.BUDGET))
    sheet = Signoff(answer, until)
    due = [d.task for d in ends.open_tasks if d.task not in {i.task for i in sheet.maybe}]
    if due:
        found.append(Obstacle(f"debris or damage not followed up: {_some(due)}"))
    held = [i.task for i in sheet.blocking if i.task not in due]
    if held:
        found.append(Obstacle(f"sign-off not finished: {_some(held)}"))
    if sheet.asks:
        parts = "; ".join(f.says for f in sheet.asks)
        which = (
            "whether the engine has" if len(sheet.asks) == 1 else "which of these the engine has:"
        )
        found.append(Obstacle(f"not said {which} {parts}"))
    failed = [i.task for i in sheet.items if i.judged.verdict is Verdict.FAILED]
    failed = [task for task in failed if task not in held]
    if failed:
        found.append(Obstacle(f"sign-off failed: {_some(failed)}"))
    if falls_short(answer):
        less = "the first start read less than was predicted"
        found.append(Obstacle(less, Way.FIRST_START))
    return tuple(found)


def _against_no_fault(answer: Diagnosis) -> Iterator[Obstacle]:
    """Why nothing wrong is not the whole answer."""
    for found in answer.found_faults:
        yield Obstacle(f"found: {found.fault.says}")
    for alarm in answer.alarms[:1]:
        yield Obstacle(f"a warning stands: {alarm.says}")
    if not readings_are_good(answer):
        yield Obstacle(
            "hot idle and 2000 rpm or more are not both recorded, or a reading is below its limit"
        )
    top = answer.ranking[0]
    if not top.cause.no_fault and top.probability >= SUSPECT:
        yield Obstacle(f"{top.cause.says} leads with {100 * top.probability:.0f} %")


def falls_short(answer: Diagnosis) -> bool:
    """Whether the repaired engine shows less than it should; loads the physics where it was read."""
    if not answer.case.start_readings:
        return False
    from diagnose.signoff.start import predicted_start, stopped_by

    start = predicted_start(answer.case, answer.book)
    if start is None:
        return any(stopped_by(answer.case, read) for read in answer.case.start_readings)
    return any(c.below or c.stop for c in start.compared)


def _some(tasks: Sequence[Task]) -> str:
    """The first of the tasks, and how many more."""
    more = len(tasks) - MOST_NAMED
    named = "; ".join(task.says for task in tasks[:MOST_NAMED])
    return f"{named}; and {more} more" if more > 0 else named

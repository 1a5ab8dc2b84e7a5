"""How a job ended, in words: what the mended engine shows, what it was, what was done."""

from __future__ import annotations

from diagnose.case.case import Case
from diagnose.case.mended import mended, works_again
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.report_entries import closing
from diagnose.output.scale import scale_of
from diagnose.planning.choosing import SURE
from diagnose.signoff.lamp import was_never_read
from diagnose.signoff.nothing_wrong import of_no_fault
from diagnose.signoff.sheet import Signoff


def ended_of(diagnosis: Diagnosis) -> str:
    """Return the end of the job; a repair that is not signed off yet is called none."""
    says = ended(diagnosis.case, held_up(diagnosis))
    return f"{says} {not_finished(Signoff(diagnosis, SURE))}".rstrip()


def not_finished(sheet: Signoff) -> str:
    """Return what a job that was closed for a reason leaves undone before the engine may start.

    Empty where the engine has run since, or nothing forbids its start.
    """
    closed, left = sheet.answer.case.closed, len(sheet.before_start)
    if closed is None or not closed.entry.reason or sheet.has_run or not left:
        return ""
    tasks = (
        "1 task before the first start is"
        if left == 1
        else f"{left} tasks before the first start are"
    )
    return f"Do not start the engine: {tasks} still open."


def held_up(diagnosis: Diagnosis) -> int:
    """How many open tasks forbid the first start of an engine that shows good pressure already."""
    if diagnosis.case.closed is not None or not works_again(diagnosis.case):
        return 0
    sheet = Signoff(diagnosis, SURE)
    return len(sheet.before_start) + sheet.asked_before_start


def may_close(diagnosis: Diagnosis) -> bool:
    """Whether the engine is right again, nothing is left before its start, and the job is open."""
    case = diagnosis.case
    return case.closed is None and works_again(case) and not held_up(diagnosis)


def _reads(case: Case, hot_idle: float | None) -> str:
    """What the mended engine shows: at hot idle, else at the speed it was read last."""
    one = scale_of(case).one
    if hot_idle is not None:
        return f"{one(hot_idle)} at hot idle"
    last = case.start_readings[-1].reading
    return f"{one(last.pressure)} at {last.rpm:.0f} rpm"


def ended(case: Case, held_up: int = 0) -> str:
    """Return the end of the job in two or three sentences; empty while it is not repaired.

    ``held_up``: open tasks that forbid the first start.
    """
    end, shows = closing(case), mended(case)
    if end is None:
        if not works_again(case):
            return ""
        reads = _reads(case, shows.hot_idle)
        if held_up:
            return (
                f"Reads {reads} after the work, but is not signed off: "
                f"{held_up} {'task' if held_up == 1 else 'tasks'} left before the first start."
            )
        return f"Repaired: {reads}. The job is still open."
    head = f"Closed {end.day}".rstrip()
    was = end.causes or "no cause named"
    done = f" {end.heads_remedy}: {end.remedy.rstrip('.')}." if end.remedy else ""
    if case.closed is not None and of_no_fault(case.closed.causes) and not shows.broken:
        return f"{head}, no fault found: {was}.{done}"
    if shows.hot_idle is None and not shows.broken and was_never_read(case):
        return f"{head}: {was}.{done} The lamp is its only instrument."
    if shows.hot_idle is None and not shows.broken:
        no = "No hot idle pressure of the repaired engine is recorded."
        return f"{head}: {was}.{done} {no}"
    idle = ""
    if shows.hot_idle is not None:
        idle = f"{scale_of(case).one(shows.hot_idle)} at hot idle"
    if shows.broken:
        broken = "; ".join(limit.says for limit in shows.broken)
        return (
            f"{head}, but the repaired engine breaks a limit ({broken}): {idle}. It was: "
            f"{was}.{done}"
        )
    return f"{head}: repaired, {idle}. It was: {was}.{done}"

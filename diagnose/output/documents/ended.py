"""How a job ended, in words: what the mended engine shows, what it was, what was done."""

from __future__ import annotations

from diagnose.case.case import Case
from diagnose.case.mended import mended, works_again
from diagnose.output.documents.report_entries import closing
from diagnose.output.scale import scale_of


def ended(case: Case) -> str:
    """Return the end of the job in two or three sentences; empty while it is not repaired."""
    end, shows = closing(case), mended(case)
    if end is None:
        if shows.hot_idle is None or not works_again(case):
            return ""
        return f"Repaired: {scale_of(case).one(shows.hot_idle)} at hot idle. The job is still open."
    head = f"Closed {end.day}".rstrip()
    was = end.causes or "no cause named"
    done = f" Done: {end.remedy.rstrip('.')}." if end.remedy else ""
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

"""A case in one line: for a folder of them; imported by ``cli`` only."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from diagnose.diagnosis import Diagnosis
from diagnose.output.as_json import SCHEMA
from diagnose.output.lines import clean, columns, percent, width
from knowledge.model import Severity

FILE, CAUSE = 18, 22  #: columns that are kept for them; a longer cause takes what it needs
NOTHING = "nothing left to look at"


def data(answer: Diagnosis) -> dict[str, Any]:
    """The likeliest cause, what forbids running, and the next check; keys are only ever added."""
    first, choice = answer.ranking[0], answer.next_check
    return {
        "schema": SCHEMA,
        "case": str(answer.case.path) if answer.case.path else None,
        "title": answer.case.job.title,
        "cause": first.cause.id,
        "says": first.cause.says,
        "probability": first.probability,
        "may_run": answer.may_run,
        "alarms": [{"severity": a.severity.value, "says": a.says} for a in answer.alarms],
        "next": choice.option.inspection.id if choice else None,
    }


def unread(path: str, faults: Sequence[str]) -> dict[str, Any]:
    """The same of a file that could not be reviewed."""
    return {"schema": SCHEMA, "case": path, "faults": list(faults)}


def line(glance: Mapping[str, Any], name: str, longest: int) -> str:
    """File, STOP or care, likelihood and cause, next check, in one line of the screen.

    ``longest``: columns of the longest file name, which sets where the rest begins.
    """
    flag = "" if glance["may_run"] else "STOP"
    if not flag and any(a["severity"] == Severity.CARE.value for a in glance["alarms"]):
        flag = "care"
    room = min(longest, FILE)
    file, likely = _cut(name, room), percent(glance["probability"])
    file += " " * (room - columns(file))
    start = f"{file}  {flag:4}  {likely:>6}  {glance['cause']:{CAUSE}}  "
    return start + _cut(glance["next"] or NOTHING, max(4, width() - columns(start)))


def summary(told: int, stops: int, unread: int, missed: int | None, checked: int) -> str:
    """What a folder came to, in a sentence; ``missed`` only where expectations were checked."""
    parts = [f"{_cases(told)} reviewed", f"{stops} with a stop"]
    if unread:
        parts.append(f"{unread} could not be read")
    if missed is not None:
        parts.append(f"{checked} checked, {missed} not as expected")
    return "; ".join(parts) + "."


def _cases(many: int) -> str:
    return f"{many:,} case{'' if many == 1 else 's'}"


def _cut(text: str, room: int) -> str:
    """So much of the text as fits, with a mark where it was longer."""
    text = clean(text)
    if columns(text) <= room:
        return text
    while columns(text) > room - 1:
        text = text[:-1]
    return text + "…"

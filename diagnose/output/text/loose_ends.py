"""Loose ends as lines for a terminal: what to answer before anything is put together."""

from __future__ import annotations

from collections.abc import Iterable

from diagnose.output.documents.loose_ends import FollowUp, LooseEndsNotice
from diagnose.output.lines import as_typed, labelled, percent, wrapped

MARKS = {"": "[ ]", "done": "[x]", "failed": "[!]", "skipped": "[-]"}  #: by state of a task


def loose_ends_lines(ends: LooseEndsNotice, path: str) -> list[str]:
    """Render the notice once a cause is confirmed, or debris or damage was found."""
    if not ends.shown:
        return []
    lines = ["Before you put anything together"]
    if ends.confirmed:
        lines += labelled("cause", ends.causes, 2, 12)
        lines += labelled("remedy", ends.remedy, 2, 12)
    if ends.unexplained and ends.confirmed:
        lines += wrapped("not explained by it; find out why, or say why it does not matter:", 2)
        for finding in ends.unexplained:
            lines += wrapped(f"- {finding}", 4, 6)
    if ends.pressure:
        lines += labelled("pressure", ends.pressure, 2, 12)
    for damage in ends.damage:
        lines += labelled("damage", f"{damage.says} ({percent(damage.probability)})", 2, 12)
    if ends.follow:
        lines += wrapped("follow up what was found:", 2)
        for because, tasks in ends.follow_by_finding:
            lines += wrapped(f"because {because}", 4, 6)
            for task in tasks:
                lines += _task(task)
        first = next((t for t in ends.follow if t.open), ends.follow[0]).task
        lines.append(f"  tick off with: diagnose record {as_typed(path)} {first}=done")
    return lines


def comes_first_lines(deferrals: Iterable[str]) -> list[str]:
    """Render what goes before anything this tool says."""
    lines = ["These come first"]
    for text in deferrals:
        lines += wrapped(f"- {text}", 2, 4)
    return lines


def _task(task: FollowUp) -> list[str]:
    note = f" ({task.note})" if task.note else ""
    return wrapped(f"{MARKS[task.state]} {task.says}{note}: `{task.task}`", 6, 10)

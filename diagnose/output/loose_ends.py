"""Is the root cause closed: what must be answered before anything is put together, as text."""

from __future__ import annotations

from diagnose.diagnosis import Diagnosis
from diagnose.output import teardown_words as words
from diagnose.output.lines import as_typed, labelled, percent, wrapped
from diagnose.teardown.loose_ends import DueTask, LooseEnds


def loose_ends(answer: Diagnosis, ends: LooseEnds, path: str) -> list[str]:
    """The list, once something is confirmed, or debris or damage was found."""
    if not (ends.confirmed or ends.follow):
        return []
    lines = ["Before anything is put together"]
    causes = " and ".join(c.says for c in ends.causes)
    if ends.confirmed:
        lines += labelled("cause", causes, 2, 12)
        lines += labelled("remedy", "; ".join(c.remedy for c in ends.causes), 2, 12)
    if ends.unexplained and ends.confirmed:
        lines += wrapped("not explained by it; find out why, or say why it does not matter:", 2)
        for finding in ends.unexplained:
            lines += wrapped(f"- {finding.says} [{finding.id}]", 4, 6)
    if line := words.pressure(answer, ends):
        lines += labelled("pressure", line, 2, 12)
    for condition, chance in ends.damage:
        lines += labelled("damage", f"{condition.says} ({percent(chance)})", 2, 12)
    if ends.follow:
        lines += wrapped("what was found must be followed:", 2)
        for because, dues in words.found_by(ends):
            lines += wrapped(f"because {because}", 4, 6)
            for due in dues:
                lines += _due(due)
        task = next((d.task.id for d in ends.follow if d.open), ends.follow[0].task.id)
        lines.append(f"  tick off with: diagnose record {as_typed(path)} {task}=done")
    return lines


def _due(due: DueTask) -> list[str]:
    mark, note = "[ ]", ""
    if due.worked is not None:
        state = due.worked.entry.state or "done"
        mark = {"done": "[x]", "failed": "[!]"}.get(state, "[-]")
        note = f" ({due.worked.entry.note})" if due.worked.entry.note else ""
    return wrapped(f"{mark} {due.task.says}{note}: `{due.task.id}`", 6, 10)

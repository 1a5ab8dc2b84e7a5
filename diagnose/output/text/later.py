"""What ``signoff --after`` prints: what is due after so many hours of running, and how it stands."""

from __future__ import annotations

from diagnose.output.documents.after_hours import LaterDocument, LaterLook
from diagnose.output.lines import as_typed, wrapped


def later_text(document: LaterDocument) -> str:
    """Return the looks that are due, what they compare with, and what to type next."""
    name = as_typed(document.path)
    lines = [*wrapped(f"Checks after the first start: {document.name}"), ""]
    if not document.looks:
        lines += wrapped("Nothing is due: the engine was not opened, or has not run an hour yet.")
        return "\n".join(lines)
    if not document.started:
        lines += wrapped(
            "No hot idle pressure of the first start is recorded: nothing to compare with."
        )
    for look in document.looks:
        lines += [*_look(look), ""]
    waiting = [i for look in document.looks for i in look.open]
    if waiting:
        first = waiting[0]
        value = f'"{document.example}"' if first.measured else "done"
        lines.append(f"Next: diagnose record {name} {first.task}={value}")
    else:
        lines += wrapped(f"All of it is recorded. The engine's history: diagnose report {name}")
    lines.append("Stop the engine if the pressure is below its limit or it knocks.")
    return "\n".join(lines)


def _look(look: LaterLook) -> list[str]:
    lines = [f"After {look.hours:.0f} h"]
    for item in look.items:
        lines += wrapped(f"[{item.mark}] {item.says} [{item.task}]", 2, 6)
        if item.open:
            lines += wrapped(item.how[0], 6, 6)
        else:
            lines += wrapped(item.stands, 6, 6)
        if item.failed:
            lines += wrapped(f"then: {item.remedy}", 6, 8)
    for text in look.compared:
        lines += wrapped(text, 6, 8)
    return lines

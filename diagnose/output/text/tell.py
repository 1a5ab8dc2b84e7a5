"""What ``tell`` prints: numbered facts with their words, what is left over, a minute's answer."""

from __future__ import annotations

from diagnose.output.documents.tell import AccountDocument, MinuteDocument
from diagnose.output.lines import as_typed, percent, wrapped
from diagnose.output.text.alarms import alarm_lines


def told_lines(document: AccountDocument) -> list[str]:
    """Return each fact with its number and the words it came from, then what is left over."""
    lines = []
    for fact in document.understood:
        lines += wrapped(f"{fact.number:3}  {fact.says}", 0, 5)
        lines += wrapped(f"“{fact.words}”", 7, 8)
    if not document.understood:
        lines.append("Nothing of it was understood.")
    if document.not_understood:
        pieces = "; ".join(f"“{piece}”" for piece in document.not_understood)
        lines += wrapped(f"Not understood: {pieces}", 0, 7)
    return lines


def minute_lines(document: MinuteDocument) -> list[str]:
    """Return alarms, then three lines: run or stop, where it probably is, what to check."""
    lines = alarm_lines(document.alarms)
    run = "It may run on while you look." if document.may_run else "Stop the engine; do not run it."
    places = "; ".join(f"{p.says} ({percent(p.probability)})" for p in document.places)
    checks = "; ".join(f"{c.says} ({c.minutes:.0f} min)" for c in document.checks)
    name = as_typed(document.case)
    lines += wrapped(run, 0, 2)
    lines += wrapped(f"Likeliest: {places}", 0, 2)
    if checks:
        lines += wrapped(f"Check first: {checks}", 0, 2)
    next_ = f"diagnose review {name}"
    return lines + wrapped(f"saved in {name}. Next: {next_}", 0, 2, whole=[name, next_])

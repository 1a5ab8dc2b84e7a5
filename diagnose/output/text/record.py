"""What ``record`` and ``close`` print: what was saved, and what to do next."""

from __future__ import annotations

from diagnose.entry.spoken import Choice
from diagnose.output.documents.record import CloseDocument, RecordDocument
from diagnose.output.lines import as_typed, headed, wrapped
from diagnose.output.text.alarms import alarm_lines


def record_text(document: RecordDocument) -> str:
    """Return each entry with its number, alarms that are new with it, and what to do next."""
    name = as_typed(document.path)
    lines = []
    for number, says in document.entries.items():
        taken = " (no unit typed: taken as this)" if number in document.units_taken else ""
        lines.append(f"{number:4}  {says}{taken}")
        for more in (document.meanings.get(number), document.verdicts.get(number)):
            lines += wrapped(more, 6, 8) if more else []
    if document.repaired:
        lines += wrapped(_of_the_repaired(document.repaired, name))
    if document.before_it:
        lines += wrapped(_before_the_trouble(document.before_it, name))
    if document.of_repair:
        lines += wrapped(_of_this_repair(document.of_repair, name))
    for number, found in document.in_place_of_found.items():
        lines += wrapped(_in_place_of_found(number, found, name))
    for number, found in document.unfitting.items():
        lines += wrapped(
            f"This does not fit entry {number}, {found}. If that one was wrong: diagnose record "
            f"{name} --withdraw {number}",
            whole=[f"--withdraw {number}"],
        )
    if document.beside_found:
        lines += wrapped(
            "Taken as measured after the repair; the value that was found stays beside it."
        )
    if document.engine:
        lines += wrapped(document.engine[:1].upper() + document.engine[1:])
    if document.not_read:
        pieces = "; ".join(f"“{piece}”" for piece in document.not_read)
        lines += wrapped(f"Not understood, kept in the note: {pieces}", 0, 2)
    if document.stood:
        lines.append(f"{document.stood} more lines of the sheet were in the case already")
    lines += alarm_lines(document.alarms)
    if document.plan_since:
        since = f"--since {document.plan_since}"
        lines.append(f"what it changes in the plan: diagnose teardown {name} {since}")
    if document.refused:
        some = "line is" if document.refused == 1 else "lines are"
        again = "see below; correct them and record them again"
        lines.append(f"{document.refused} {some} wrong and not saved: {again}")
    if document.unclear:
        some = "phrase is" if document.unclear == 1 else "phrases are"
        lines.append(f"{document.unclear} {some} not clear and not saved: see below")
    next_ = f"signoff {name} --start" if document.repaired else f"review {name}"
    lines.append(f"saved in {name}; {document.last_number} entries. Next: diagnose {next_}")
    return "\n".join(lines)


def _of_the_repaired(numbers: tuple[int, ...], name: str) -> str:
    """Say that readings are not evidence of the fault, and how to take that back."""
    undone = " ".join(f"--withdraw {number}" for number in numbers)
    return (
        "Taken as readings of the repaired engine: they count at sign-off, not as signs of the "
        f"fault. If that is wrong: diagnose record {name} {undone}"
    )


def _before_the_trouble(numbers: tuple[int, ...], name: str) -> str:
    """Say that work counts as a possible cause, and what to do if it is the repair."""
    undone = " ".join(f"--withdraw {number}" for number in numbers)
    return (
        "Taken as work before the trouble, which may have caused it. If it is the repair: diagnose "
        f"record {name} {undone}; then say it again with --after-repair"
    )


def _of_this_repair(numbers: tuple[int, ...], name: str) -> str:
    """Say that work is no evidence, and what to do if it was done before the trouble."""
    undone = " ".join(f"--withdraw {number}" for number in numbers)
    return (
        "Taken as work of this repair, no cause of the trouble. If it was before it: diagnose "
        f"record {name} {undone}; then say it with its time, like 2 months before"
    )


def _in_place_of_found(number: int, found: str, name: str) -> str:
    """Say how to keep the value that was found beside that of the repaired part."""
    return (
        f"{number} takes the place of the value that was found. If it was measured after the "
        f"repair: diagnose record {name} {found}; then say the new one with --after-repair"
    )


def choice_lines(choice: Choice) -> list[str]:
    """Return what a phrase may mean, numbered from 1."""
    lines = wrapped(f"“{choice.text}” may mean:", 0, 2)
    for number, each in enumerate(choice.candidates, 1):
        lines += headed(f"{number:2}. ", f"{each.says} [{each.id}]")
    return lines


def close_text(document: CloseDocument) -> str:
    """Return the end of a job, with what was open all the same."""
    name = as_typed(document.path)
    lines = wrapped("closed: " + " and ".join(document.causes))
    if document.before:
        lines += wrapped(f"in place of {document.before}; it stays in the file", 2, 4)
    if document.reason:
        lines += wrapped(f"although: {document.reason}", 2, 4)
    lines += wrapped(
        f"saved in {name}. The shop's memory: diagnose history", whole=[name, "diagnose history"]
    )
    return "\n".join(lines)

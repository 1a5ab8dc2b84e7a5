"""``signoff`` on a terminal: the tasks in assembly order, with limits, verdicts and blanks."""

from __future__ import annotations

from diagnose.output.documents.signoff import SignoffDocument, SignoffPhase
from diagnose.output.documents.signoff_items import SignoffItem
from diagnose.output.lines import as_typed, headed, labelled, together, wrapped
from diagnose.output.text.loose_ends import comes_first_lines


def signoff_text(document: SignoffDocument, *, open_only: bool = False) -> str:
    """Render the sheet as text; ``open_only``: without what is settled, and without parts."""
    phases = document.phases(open_only=open_only)
    return together(
        [
            _head(document),
            _standing(document),
            _used(document) if not open_only else [],
            _parts(document) if not open_only else [],
            *(block for phase in phases for block in _phase(phase)),
            _filling_in(document),
            comes_first_lines(document.deferrals),
        ]
    )


def _head(document: SignoffDocument) -> list[str]:
    lines = wrapped(f"Sign-off: {document.name}")
    lines += wrapped(f"Engine: {document.engine}", 0, 8)
    lines += wrapped(f"Cause: {document.causes_say}", 0, 8)
    return lines + (wrapped(document.closed, 0, 2) if document.closed else [])


def whole_engine_lines(document: SignoffDocument) -> list[str]:
    """Where every fit of an engine stands that was just rebuilt."""
    command = f"diagnose signoff {as_typed(document.path)} --whole-engine"
    text = f"The whole engine was just rebuilt. Every fit and torque of it, to check: {command}"
    return wrapped(text, 0, 2, [command])


def _standing(document: SignoffDocument) -> list[str]:
    if document.rebuilt and not document.items:
        return whole_engine_lines(document)
    if not document.items:
        command = f"diagnose signoff {as_typed(document.path)} --opened sump_off"
        return wrapped(
            "Nothing opened so far needs a fit check. If you opened more than the case shows, "
            f"add it: {command}",
            whole=[command],
        )
    lines = wrapped(f"{document.count}.")
    lines += whole_engine_lines(document) if document.rebuilt else []
    lines += wrapped(document.question, 0, 2) if document.question else []
    for item in document.items:
        if item.failed:
            lines += wrapped(f"FAILED: {item.says}: {item.stands}", 2, 4)
            if item.remedy:
                lines += wrapped(f"remedy: {item.remedy}", 4, 6)
    for item in document.items:
        if item.left_out:
            lines += wrapped(f"left out: {item.says}: {item.because}", 2, 4)
    return lines


def _used(document: SignoffDocument) -> list[str]:
    if not document.used_parts:
        return []
    lines = ["Used parts: reuse, rework or renew"]
    for each in document.used_parts:
        why = f": {'; '.join(each.because[:2])}" if each.because else ""
        lines += wrapped(f"{each.fate or 'look':6} {each.part}{why}", 2, 9)
        lines += wrapped(f"{each.how} ({each.source})", 9, 9)
    return lines


def _parts(document: SignoffDocument) -> list[str]:
    if not document.parts:
        return []
    lines = ["Parts and consumables"]
    for part in document.parts:
        lines += wrapped(f"- {part.says}, {part.quantity}", 2, 4)
        if part.measure_first:
            lines += wrapped(f"before ordering: {part.measure_first}", 4, 6)
        if part.note:
            lines += wrapped(f"note: {part.note}", 4, 6)
    return lines


def _phase(phase: SignoffPhase) -> list[list[str]]:
    lines = [f"{phase.number}  {phase.says}"]
    for caution in phase.cautions:
        lines += wrapped(f"caution: {caution}", 2, 4)
    items = [_item(i, f"{phase.number}.{n}") for n, i in enumerate(phase.items, 1)]
    return [lines, *items]


def _item(item: SignoffItem, number: str) -> list[str]:
    lines = headed(f"  [{item.mark}] {number}  ", f"{item.says} [{item.task}]")
    if not item.sound:
        for step in item.how:
            lines += wrapped(f"- {step}", 6, 8)
    for limit in item.limits:
        lines += wrapped(limit, 6, 8)
    if item.open:
        hold = "" if item.stops else "; may wait, with a note"
        lines += wrapped(f"{item.blank}{hold}", 6, 8)
        lines += wrapped(f"called for: {item.why}", 6, 8)
        if not item.measured:
            lines += wrapped(f"source: {item.source}", 6, 8)
        return lines
    lines += wrapped(item.stands, 6, 8)
    if not item.sound and item.remedy:
        lines += labelled("remedy", item.remedy, 6, 14)
    return lines


def _filling_in(document: SignoffDocument) -> list[str]:
    first = next((i for i in document.items if i.open), None)
    if first is None:
        return []
    name, example = as_typed(document.path), '"0.002 in"' if first.measured else "done"
    return [
        "Write each down as it is done, or fill in a sheet:",
        f"  diagnose record {name} {first.task}={example}",
        f"  diagnose signoff {name} --markdown > signoff.md",
        f"  diagnose record {name} --sheet signoff.md",
        "What the gauge should show:",
        f"  diagnose signoff {name} --start",
    ]

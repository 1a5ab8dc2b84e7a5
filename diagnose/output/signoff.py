"""What ``signoff`` prints: the checks in assembly order, with limits, verdicts and blanks."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from diagnose.output import signoff_words as words
from diagnose.output.documents.cautions import cautions, deferrals
from diagnose.output.documents.limits import source_title
from diagnose.output.lines import as_typed, headed, labelled, together, wrapped
from diagnose.signoff.judging import UNSETTLED, Verdict
from diagnose.signoff.parts import Needed
from diagnose.signoff.sheet import Item, Signoff
from knowledge.work import Hold, Phase


def signoff(sheet: Signoff, needed: Sequence[Needed], path: str, open_only: bool = False) -> str:
    """The whole sheet as text."""
    items = [i for i in sheet.items if not open_only or i.judged.verdict in UNSETTLED]
    groups = [(p, list(g)) for p, g in groupby(items, lambda i: i.task.phase)]
    return together(
        [
            _head(sheet),
            _standing(sheet, path),
            _parts(needed) if not open_only else [],
            *(block for phase, group in groups for block in _phase(phase, group, sheet)),
            _filling_in(sheet, path),
            ["This sheet gives way to", *(x for d in deferrals() for x in wrapped(f"- {d}", 2, 4))],
        ]
    )


def _head(sheet: Signoff) -> list[str]:
    case = sheet.answer.case
    lines = wrapped(f"Sign-off: {case.job.title or 'case without a title'}")
    lines += wrapped(f"Engine: {case.layout.says}", 0, 8)
    causes = " and ".join(c.says for c in sheet.causes) or "none is confirmed yet"
    lines += wrapped(f"Cause: {causes}", 0, 8)
    return lines


def _standing(sheet: Signoff, path: str) -> list[str]:
    if not sheet.items:
        command = f"diagnose signoff {as_typed(path)} --opened sump_off"
        return wrapped(
            "Nothing that was opened calls for a fit check. If more was opened than the case shows, "
            f"say so: {command}",
            whole=[command],
        )
    lines = wrapped(words.count(sheet) + ".")
    failed = [i for i in sheet.items if i.judged.verdict is Verdict.FAILED]
    for item in failed:
        lines += wrapped(f"FAILED: {item.task.says}: {words.verdict(item)}", 2, 4)
        if item.task.remedy:
            lines += wrapped(f"remedy: {item.task.remedy}", 4, 6)
    left = [i for i in sheet.items if i.judged.verdict is Verdict.LEFT_OUT]
    for item in left:
        lines += wrapped(f"left out: {item.task.says}: {item.judged.because}", 2, 4)
    return lines


def _parts(needed: Sequence[Needed]) -> list[str]:
    if not needed:
        return []
    lines = ["Parts and consumables"]
    for one in needed:
        lines += wrapped(f"- {one.part.says}, {one.part.quantity}", 2, 4)
        if one.part.measure_first:
            lines += wrapped(f"before ordering: {one.part.measure_first}", 4, 6)
        if one.part.note:
            lines += wrapped(f"note: {one.part.note}", 4, 6)
    return lines


def _phase(phase: Phase, items: Sequence[Item], sheet: Signoff) -> list[list[str]]:
    number = list(Phase).index(phase) + 1
    lines = [f"{number}  {words.PHASES[phase]}"]
    kinds = [c for i in items for c in i.task.cautions]
    for caution in cautions(kinds, sheet.answer):
        lines += wrapped(f"caution: {caution}", 2, 4)
    return [lines, *(_item(i, f"{number}.{n}", sheet) for n, i in enumerate(items, 1))]


def _item(item: Item, number: str, sheet: Signoff) -> list[str]:
    task = item.task
    lines = headed(f"  {words.MARKS[item.judged.verdict]} {number}  ", f"{task.says} [{task.id}]")
    settled = item.judged.verdict in (Verdict.PASSED, Verdict.LEFT_OUT)
    if not settled:
        for step in task.how:
            lines += wrapped(f"- {step}", 6, 8)
    for limit in words.limits(item, sheet):
        lines += wrapped(limit, 6, 8)
    if item.judged.verdict is Verdict.OPEN:
        hold = "" if task.hold is Hold.STOP else "; may wait, with a note"
        lines += wrapped(f"{words.blank(item)}{hold}", 6, 8)
        lines += wrapped(f"called for: {item.why}", 6, 8)
        if not task.dimension:
            lines += wrapped(f"source: {source_title(task.source)}", 6, 8)
    else:
        lines += wrapped(words.verdict(item), 6, 8)
    if item.judged.verdict in (Verdict.FAILED, Verdict.BORDERLINE) and task.remedy:
        lines += labelled("remedy", task.remedy, 6, 14)
    return lines


def _filling_in(sheet: Signoff, path: str) -> list[str]:
    first = next((i for i in sheet.items if i.judged.verdict is Verdict.OPEN), None)
    if first is None:
        return []
    name = as_typed(path)
    example = "done" if not first.task.dimension else '"0.002 in"'
    return [
        "Write each down as it is done, or fill in a sheet:",
        f"  diagnose record {name} {first.task.id}={example}",
        f"  diagnose signoff {name} --markdown > signoff.md",
        f"  diagnose record {name} --sheet signoff.md",
        "What the gauge should show:",
        f"  diagnose signoff {name} --start",
    ]

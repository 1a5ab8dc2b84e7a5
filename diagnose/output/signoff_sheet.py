"""The sign-off as a Markdown sheet to fill in, as TOML blanks, and as data for ``--json``."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import Any

from diagnose.output import signoff_words as words
from diagnose.output.documents.cautions import cautions, deferrals
from diagnose.output.lines import as_typed
from diagnose.output.markdown.blanks import BLANK, one_line
from diagnose.signoff.judging import Verdict
from diagnose.signoff.parts import Needed
from diagnose.signoff.sheet import Item, Signoff


def markdown(sheet: Signoff, needed: Sequence[Needed], path: str) -> str:
    """Every blank is a line that begins with its id in backquotes and a colon."""
    title = one_line(sheet.answer.case.job.title) or "case without a title"
    lines = [f"# Sign-off sheet: {title}", "", f"{words.count(sheet)}.", ""]
    lines += [
        "Write done, failed or a measured value with its unit after the colon. What is left out "
        "needs its reason: record it by itself with skipped and a note. "
        f"Then: `diagnose record {as_typed(path)} --sheet` and the name of this file.",
        "",
    ]
    if needed:
        lines += ["## Parts and consumables", ""]
        for one in needed:
            first = f"; before ordering: {one.part.measure_first}" if one.part.measure_first else ""
            note = f"; {one.part.note}" if one.part.note else ""
            lines.append(f"- [ ] {one.part.says}, {one.part.quantity}{first}{note}")
        lines.append("")
    for phase, group in groupby(sheet.items, lambda i: i.task.phase):
        items = list(group)
        lines += [f"## {words.PHASES[phase]}", ""]
        kinds = [c for i in items for c in i.task.cautions]
        for caution in cautions(kinds, sheet.answer):
            lines += [f"> caution: {caution}", ">"]
        for item in items:
            lines += ["", *_item(item, sheet)]
        lines.append("")
    lines += ["## This sheet gives way to", "", *(f"- {d}" for d in deferrals())]
    return "\n".join(lines)


def _item(item: Item, sheet: Signoff) -> Iterator[str]:
    yield f"### {item.task.says}"
    yield ""
    yield from (f"{i}. {step}" for i, step in enumerate(item.task.how, 1))
    yield ""
    yield from (f"- {limit}" for limit in words.limits(item, sheet))
    if item.judged.verdict is Verdict.OPEN:
        yield f"- `{item.task.id}`: {BLANK} · {words.blank(item)}"
    else:
        yield f"- {words.MARKS[item.judged.verdict]} {words.verdict(item)}"


def blanks(sheet: Signoff) -> str:
    """Every open task as a key of a TOML file, in the order of the work."""
    lines = ["# done, failed, or a measured value with its unit", ""]
    for phase, group in groupby(sheet.items, lambda i: i.task.phase):
        lines.append(f"# {words.PHASES[phase]}")
        for item in group:
            if item.judged.verdict is Verdict.OPEN:
                lines.append(f'{item.task.id} = ""  # {item.task.says}')
    return "\n".join(lines)


def data(sheet: Signoff, needed: Sequence[Needed]) -> dict[str, Any]:
    """Everything the sheet says; keys are only ever added."""
    case = sheet.answer.case
    return {
        "case": str(case.path) if case.path else None,
        "title": case.job.title,
        "layout": case.layout.id,
        "causes": [c.id for c in sheet.causes],
        "opened": sorted(a.value for a in sheet.places),
        "in_the_way": [i.task.id for i in sheet.blocking],
        "items": [_item_data(i, sheet) for i in sheet.items],
        "parts": [
            {
                "id": n.part.id,
                "says": n.part.says,
                "quantity": n.part.quantity,
                "measure_first": n.part.measure_first,
                "note": n.part.note,
                "because": list(n.because),
            }
            for n in needed
        ],
    }


def _item_data(item: Item, sheet: Signoff) -> dict[str, Any]:
    return {
        "task": item.task.id,
        "says": item.task.says,
        "phase": item.task.phase.value,
        "hold": item.task.hold.value,
        "why": item.why,
        "verdict": item.judged.verdict.value,
        "because": item.judged.because,
        "limits": list(words.limits(item, sheet)),
        "held": [
            {
                "low": h.band.low,
                "high": h.band.high,
                "fits": h.fits,
                "near": h.near,
                "source": h.band.source.key,
            }
            for h in item.judged.held
        ],
        "values": [w.entry.value or w.entry.state for w in item.worked],
        "remedy": item.task.remedy,
        "cautions": cautions(item.task.cautions, sheet.answer),
    }

"""The sign-off as a page: fit checks in assembly order, sources side by side, the first start."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby, zip_longest
from typing import TYPE_CHECKING, Any

from diagnose.errors import UsageError
from diagnose.output import signoff_words as words
from diagnose.output.documents.cautions import cautions, deferrals
from diagnose.output.documents.limits import source_title, usual_units
from diagnose.output.html.page import rendered
from diagnose.output.lines import as_typed, clean
from diagnose.signoff.judging import OWN, UNSETTLED, Verdict, bands_of, figures
from diagnose.signoff.parts import Needed
from diagnose.signoff.sheet import Item, Signoff
from knowledge.book import Book
from knowledge.work import Hold, Phase

if TYPE_CHECKING:
    from diagnose.circuit.settings import Setting
    from diagnose.output.documents.start_table import StartTable

AFTER = (Phase.FIRST_START, Phase.RUN_IN)


def signoff_page(
    sheet: Signoff,
    needed: Sequence[Needed],
    path: str,
    book: Book,
    settings: Sequence[Setting] = (),
    left: Sequence[str] = (),
    *,
    open_only: bool = False,
) -> str:
    """The whole page; ``settings`` and ``left`` bear on the first start. Raises UsageError."""
    case = sheet.answer.case
    items = [i for i in sheet.items if not open_only or i.judged.verdict in UNSETTLED]
    phases = list(_phases(sheet, items))
    rows = [r for p in phases for r in p["rows"]]
    return rendered(
        "signoff.html",
        name=clean(case.job.title).strip() or "case without a title",
        layout=case.layout.says,
        answer=sheet.answer,
        causes=" and ".join(c.says for c in sheet.causes) or "none is confirmed yet",
        count=words.count(sheet),
        path=as_typed(path),
        phases=phases,
        failed=[r for r in rows if r["state"] is Verdict.FAILED],
        left_out=[r for r in rows if r["state"] is Verdict.LEFT_OUT],
        needed=() if open_only else needed,
        start=_start(sheet, book, settings, left),
        held_up=sum(i.task.phase not in AFTER for i in sheet.blocking),
        deferrals=deferrals(),
    )


def _phases(sheet: Signoff, shown: Sequence[Item]) -> Iterator[dict[str, Any]]:
    for phase, group in groupby(shown, lambda i: i.task.phase):
        items = list(group)
        number = list(Phase).index(phase) + 1
        yield {
            "number": number,
            "says": words.PHASES[phase],
            "cautions": cautions([c for i in items for c in i.task.cautions], sheet.answer),
            "done": sum(i.judged.verdict is not Verdict.OPEN for i in items),
            "held": sum(i.blocks for i in items),
            "rows": [_row(i, f"{number}.{n}", sheet) for n, i in enumerate(items, 1)],
        }


def _row(item: Item, number: str, sheet: Signoff) -> dict[str, Any]:
    task, state = item.task, item.judged.verdict
    sound = state in (Verdict.PASSED, Verdict.LEFT_OUT)
    return {
        "number": number,
        "id": task.id,
        "says": task.says,
        "how": () if sound else task.how,
        "dimension": task.dimension,
        "unit": usual_units(task.dimension) if task.dimension else "",
        "bands": list(_bands(item, sheet)),
        "open": state is Verdict.OPEN,
        "sound": sound,
        "state": state,
        "stop": task.hold is Hold.STOP,
        "why": item.why,
        "source": source_title(task.source),
        "mark": words.MARKS[state][1].strip(),
        "verdict": words.verdict(item),
        "because": item.judged.because,
        "remedy": task.remedy,
    }


def _bands(item: Item, sheet: Signoff) -> Iterator[dict[str, str]]:
    """What each source accepts, the one used first, and whether the value fits it."""
    task = item.task
    if not task.dimension:
        return
    unit = words.unit_used(item, sheet.answer.case)
    bands = bands_of(task, dict(sheet.answer.case.limits))
    for band, found in zip_longest(bands, item.judged.held):
        yield {
            "source": source_title(band.source),
            "accepts": figures(band, task, unit),
            "says": "" if band.source is OWN else band.says,
            "held": ("fits" if found.fits else "does not fit") if found else "",
        }


def _start(
    sheet: Signoff, book: Book, settings: Sequence[Setting], left: Sequence[str]
) -> StartTable | None:
    """The pressures to expect; None where the case has no circuit, or nothing was open."""
    asked = bool(settings or left)
    if not (asked or sheet.of(AFTER)):
        return None
    from diagnose.output.documents.start_table import start_table
    from diagnose.signoff.start import first_start

    case = sheet.answer.case
    try:
        start = first_start(case, book, settings, left)
    except UsageError:
        if asked:
            raise
        return None
    return start_table(start)

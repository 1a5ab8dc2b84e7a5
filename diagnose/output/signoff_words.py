"""The sentences of a sign-off, the same on a terminal, on paper and on a page."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.case.case import Case
from diagnose.output.documents.limits import source_title
from diagnose.output.scale import scale_of
from diagnose.signoff.judging import OWN, Verdict, bands_of, figures
from diagnose.signoff.sheet import Item, Signoff
from knowledge.units import DIMENSIONS, unit_in
from knowledge.work import Hold, Phase

MARKS = {
    Verdict.OPEN: "[ ]",
    Verdict.PASSED: "[x]",
    Verdict.BORDERLINE: "[~]",
    Verdict.FAILED: "[!]",
    Verdict.LEFT_OUT: "[-]",
}
PHASES = {
    Phase.CLEANING: "What was found is followed",
    Phase.BEARINGS: "Block, plugs and bearings",
    Phase.PUMP: "The pump on the bench",
    Phase.RELIEF: "Relief valve",
    Phase.DRIVE: "Pump mounted, drive and distributor",
    Phase.TRAY: "Windage tray and what turns",
    Phase.SUMP: "Pickup and sump",
    Phase.PRIMING: "Filled and primed",
    Phase.FIRST_START: "First start",
    Phase.RUN_IN: "Run-in and sign-off",
}


def unit_used(item: Item, case: Case) -> str | None:
    """The unit the person wrote, if any; a pressure goes by the case's readings."""
    texts = [w.entry.value for w in item.worked if w.entry.value]
    if texts:
        return unit_in(texts[-1], DIMENSIONS[item.task.dimension])
    return scale_of(case).unit if item.task.dimension == "pressure" else None


def limits(item: Item, signoff: Signoff) -> Iterator[str]:
    """What each source accepts, the one used first; the engine's own figure before all."""
    task = item.task
    if not task.dimension:
        return
    unit = unit_used(item, signoff.answer.case)
    for i, band in enumerate(bands_of(task, dict(signoff.answer.case.limits))):
        says = f" ({band.says})" if band.says and band.source is not OWN else ""
        word = "limit" if i == 0 else "another source"
        yield f"{word}: {figures(band, task, unit)}{says}; {source_title(band.source)}"


def blank(item: Item) -> str:
    """What belongs into the blank."""
    dimension = item.task.dimension
    if not dimension:
        return "done, failed, or skipped with a note"
    examples = " or ".join(f"'{s}'" for s in DIMENSIONS[dimension].spellings[:2])
    return f"a value with its unit, like {examples}"


def verdict(item: Item) -> str:
    """How the task stands, in words."""
    values = ", ".join(
        (w.entry.value or w.entry.state or "") + (f" at {w.entry.where}" if w.entry.where else "")
        for w in item.worked
    )
    text = item.judged.verdict.value
    if item.judged.verdict is Verdict.OPEN:
        return "open" + (
            "; nothing further until it is done" if item.task.hold is Hold.STOP else ""
        )
    because = f": {item.judged.because}" if item.judged.because else ""
    return f"{values}: {text}{because}" if item.task.dimension else f"{text}{because}"


def count(signoff: Signoff) -> str:
    """How far the sheet is."""
    items = signoff.items
    done = sum(i.judged.verdict is not Verdict.OPEN for i in items)
    held = len(signoff.blocking)
    failed = sum(i.judged.verdict is Verdict.FAILED for i in items)
    told = f"; {failed} failed" if failed else ""
    return f"{done} of {len(items)} seen to{told}; {held} still stand in the way"

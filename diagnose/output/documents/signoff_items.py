"""The tasks of a sign-off: limits with their sources, the verdict, what belongs into the blank."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from enum import StrEnum
from itertools import zip_longest

from diagnose.case.case import Case
from diagnose.case.units import units_of
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.cautions import cautions, short_cautions
from diagnose.output.documents.limits import source_title, usual_units
from diagnose.signoff.judging import (
    NO_FIGURE,
    OWN,
    UNSETTLED,
    EngineFigures,
    Verdict,
    bands_of,
    clock,
    figures,
)
from diagnose.signoff.sheet import BEFORE_START, Item, Signoff
from knowledge.units import DIMENSIONS, LENGTH, PRESSURE, TIME, TORQUE, show, unit_in
from knowledge.work import Band, Hold, Phase

MARKS = {
    Verdict.OPEN: " ",
    Verdict.PASSED: "x",
    Verdict.BORDERLINE: "~",
    Verdict.FAILED: "!",
    Verdict.LEFT_OUT: "-",
}
PHASES = {
    Phase.CLEANING: "Clean-up after the failure",
    Phase.BEARINGS: "Block, plugs and bearings",
    Phase.PUMP: "The pump on the bench",
    Phase.RELIEF: "Relief valve",
    Phase.DRIVE: "Pump mounted, drive and distributor",
    Phase.TRAY: "Windage tray and what turns",
    Phase.SUMP: "Pickup and sump",
    Phase.PRIMING: "Filled and primed",
    Phase.FIRST_START: "First start",
    Phase.RUN_IN: "Run-in and sign-off",
    Phase.LATER: "After hours of running",
}


@dataclass(frozen=True, kw_only=True)
class HeldFigure:
    """A value compared with what one source accepts; SI units."""

    low: float | None
    high: float | None
    fits: bool
    near: bool  #: within the measuring error of an end
    source: str  #: its key


@dataclass(frozen=True, kw_only=True)
class Accepted:
    """What one source accepts, and whether the value fits it, in words."""

    accepts: str  #: with whose figure it is, where it is another engine's
    says: str  #: for which engine or practice it holds; may be empty
    source: str
    held: str  #: empty where no value is recorded


class Whose(StrEnum):
    """Whose figure a limit is, as it stands before it."""

    CARD = "this engine"
    DECIDING = "limit"
    OTHER_SOURCE = "another source"
    OTHER_ENGINE = "printed for another engine or use"


@dataclass(frozen=True, kw_only=True)
class LimitLine:
    """What one source accepts of a task, in words."""

    whose: Whose
    accepts: str
    says: str = ""  #: for which engine or practice it holds
    source: str = ""

    @property
    def whole(self) -> str:
        """With its source: "limit: at least 10 psi (hot); a workshop manual"."""
        says = f" ({self.says})" if self.says else ""
        source = f"; {self.source}" if self.source else ""
        return f"{self.whose}: {self.accepts}{says}{source}"

    @property
    def brief(self) -> str:
        """What it accepts, and whose figure it is where it does not decide."""
        return self.accepts if self.whose is Whose.DECIDING else f"{self.whose}: {self.accepts}"


@dataclass(frozen=True, kw_only=True)
class SignoffItem:
    """A task, how it stands, and its limits; texts may be empty."""

    task: str
    says: str
    phase: Phase
    hold: Hold
    why: str  #: why this repair calls for it
    verdict: Verdict
    because: str
    limits: tuple[str, ...]  #: of each source, the one used first
    held: tuple[HeldFigure, ...]
    values: tuple[str | None, ...]  #: as recorded, one for each place on the engine
    remedy: str
    cautions: tuple[str, ...]
    care: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: the cautions in a few words each
    how: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    accepted: tuple[Accepted, ...] = field(metadata=NOT_IN_JSON)
    #: what the figure used first accepts, without its source; empty where there is no limit
    deciding: str = field(metadata=NOT_IN_JSON)
    measured: bool = field(metadata=NOT_IN_JSON)  #: a value with a unit is wanted
    unit: str = field(metadata=NOT_IN_JSON)  #: the usual units
    blank: str = field(metadata=NOT_IN_JSON)  #: what belongs into the blank
    example: str = field(metadata=NOT_IN_JSON)  #: what may be recorded for it
    source: str = field(metadata=NOT_IN_JSON)
    mark: str = field(metadata=NOT_IN_JSON)  #: one character
    stands: str = field(metadata=NOT_IN_JSON)  #: values and verdict in words
    blocks: bool = field(metadata=NOT_IN_JSON)  #: nothing further may be done before it

    @property
    def open(self) -> bool:
        """Whether nothing is recorded yet."""
        return self.verdict is Verdict.OPEN

    @property
    def before_start(self) -> bool:
        """Whether it comes before the engine is started."""
        return self.phase in BEFORE_START

    @property
    def sound(self) -> bool:
        """Whether it passed, or was left out with a reason."""
        return self.verdict in (Verdict.PASSED, Verdict.LEFT_OUT)

    @property
    def failed(self) -> bool:
        """Whether it failed."""
        return self.verdict is Verdict.FAILED

    @property
    def borderline(self) -> bool:
        """Whether it is within its measuring error of a limit."""
        return self.verdict is Verdict.BORDERLINE

    @property
    def left_out(self) -> bool:
        """Whether it was left out with a reason."""
        return self.verdict is Verdict.LEFT_OUT

    @property
    def unsettled(self) -> bool:
        """Whether it is open, failed or borderline."""
        return self.verdict in UNSETTLED

    @property
    def stops(self) -> bool:
        """Whether nothing further may be done until it is done."""
        return self.hold is Hold.STOP


def signoff_item(item: Item, sheet: Signoff) -> SignoffItem:
    """Build the item of one task."""
    task, case = item.task, sheet.answer.case
    limits = limit_lines(item, case)
    return SignoffItem(
        task=task.id,
        says=task.says,
        phase=task.phase,
        hold=task.hold,
        why=item.why,
        verdict=item.judged.verdict,
        because=item.judged.because,
        limits=tuple(line.whole for line in limits),
        held=tuple(
            HeldFigure(
                low=h.band.low,
                high=h.band.high,
                fits=h.fits,
                near=h.near,
                source=h.band.source.key,
            )
            for h in item.judged.compared
        ),
        values=tuple(w.entry.value or w.entry.state for w in item.worked),
        remedy=task.remedy,
        cautions=tuple(cautions(task.cautions, sheet.answer)),
        care=tuple(short_cautions(task.cautions, sheet.answer)),
        how=task.how,
        accepted=tuple(_accepted(item, case)),
        deciding=limits[0].brief if limits else "",
        measured=bool(task.dimension),
        unit=usual_units(task.dimension) if task.dimension else "",
        blank=_what_to_write(item, case),
        example=f'"{_spellings(item, case)[0]}"' if task.dimension else "done",
        source=source_title(task.source),
        mark=MARKS[item.judged.verdict],
        stands=verdict_in_words(item),
        blocks=item.blocks,
    )


def _unit_used(item: Item, case: Case) -> str | None:
    """The unit the person wrote, here or last in the job; None where no figure has one."""
    texts = [w.entry.value for w in item.worked if w.entry.value]
    if texts:
        return unit_in(texts[-1], DIMENSIONS[item.task.dimension])
    for value in case.own_figures.get(item.task.id, ()):
        return value.unit
    if DIMENSIONS[item.task.dimension] is TIME:
        return None  # seconds of one task are no unit for the hours of another
    return units_of(case).of(DIMENSIONS[item.task.dimension])


INSIDE, DIGITS = 0.8, 2  #: of an example: its share of the limit, its significant digits
_ANGLE = "deg"  #: in a torque that ends with a turn by angle


def limit_lines(item: Item, case: Case) -> tuple[LimitLine, ...]:
    """What each source accepts; the engine's own figure first, then the one used."""
    return tuple(_limit_lines(item, case))


def _limit_lines(item: Item, case: Case) -> Iterator[LimitLine]:
    task = item.task
    for value in case.own_figures.get(task.id, ()):
        if not task.dimension or _ANGLE in value.text:  # a figure alone would leave the turn out
            yield LimitLine(whose=Whose.CARD, accepts=f"{value.figure.says} {value.text}")
    if not task.dimension:
        return
    unit = _unit_used(item, case)
    deciding, others = bands_of(task, EngineFigures.of(case))
    if not deciding and task.bands:
        yield LimitLine(whose=Whose.DECIDING, accepts=NO_FIGURE)
    for i, band in enumerate((*deciding, *others)):
        whose = Whose.DECIDING if deciding and i == 0 else Whose.OTHER_SOURCE
        if i >= len(deciding):
            whose = Whose.OTHER_ENGINE
        yield LimitLine(
            whose=whose,
            accepts=figures(band, task, unit),
            says="" if band.source is OWN else band.says,
            source=source_title(band.source),
        )


def _accepted(item: Item, case: Case) -> Iterator[Accepted]:
    task = item.task
    if not task.dimension:
        return
    unit = _unit_used(item, case)
    deciding, others = bands_of(task, EngineFigures.of(case))
    if not deciding and task.bands:
        yield Accepted(accepts=NO_FIGURE, says="", source="", held="")
    bands = zip_longest((*deciding, *others), item.judged.compared)
    for i, (band, found) in enumerate(bands):
        foreign = f"{Whose.OTHER_ENGINE}: " if i >= len(deciding) else ""
        yield Accepted(
            accepts=foreign + figures(band, task, unit),
            says="" if band.source is OWN else band.says,
            source=source_title(band.source),
            held=("fits" if found.fits else "does not fit") if found else "",
        )


def _what_to_write(item: Item, case: Case) -> str:
    task = item.task
    if not task.dimension:
        return "done, failed, or skipped with a note"
    examples = " or ".join(f"'{s}'" for s in _spellings(item, case)[:2])
    return f"{task.value} with its unit, like {examples}"


def _spellings(item: Item, case: Case) -> tuple[str, ...]:
    """Figures of a measured task as people write them: what fits, in the job's unit first."""
    task, dimension = item.task, DIMENSIONS[item.task.dimension]
    fitting = next(filter(None, map(_within, bands_of(task, EngineFigures.of(case))[0])), None)
    if dimension is TIME and fitting is not None and not task.like:
        return (show(fitting, dimension, clock(fitting), DIGITS),)
    if task.like or fitting is None or dimension not in (LENGTH, PRESSURE, TORQUE):
        return task.like or dimension.spellings
    used = _unit_used(item, case)
    usual = [unit_in(text, dimension) for text in dimension.spellings]
    units = dict.fromkeys(u for u in (used, *usual) if u)
    return tuple(show(fitting, dimension, unit, DIGITS) for unit in units)


def _within(band: Band) -> float | None:
    """A value that fits well inside what a source accepts, SI; None where no figure tells."""
    if band.low and band.high:
        return (band.low + band.high) / 2
    return band.high * INSIDE if band.high else band.low / INSIDE if band.low else None


def verdict_in_words(item: Item) -> str:
    """Say how the task stands: values, verdict and why."""
    values = ", ".join(
        (w.entry.value or w.entry.state or "") + (f" at {w.entry.where}" if w.entry.where else "")
        for w in item.worked
    )
    text = item.judged.verdict.value
    if item.judged.verdict is Verdict.OPEN:
        return "open; may be left with a note" if item.task.hold is Hold.NOTE else "open"
    because = f": {item.judged.because}" if item.judged.because else ""
    return f"{values}: {text}{because}" if item.task.dimension else f"{text}{because}"


def count_in_words(sheet: Signoff) -> str:
    """Say how far the sheet is."""
    items = sheet.items
    done = sum(i.judged.verdict is not Verdict.OPEN for i in items)
    failed = sum(i.judged.verdict is Verdict.FAILED for i in items)
    wrong = f"; {failed} failed" if failed else ""
    return f"{done} of {len(items)} seen to{wrong}; {len(sheet.blocking)} still prevent closing"

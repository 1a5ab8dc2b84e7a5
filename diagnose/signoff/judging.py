"""What a measured value of a task comes to, beside every source; never an average of them."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from enum import StrEnum
from functools import partial

from diagnose.case.card_text import CardValue
from diagnose.case.case import Case, TaskRecord
from diagnose.signoff.limits_in_unit import read_in, shown_as_read
from knowledge.card import Form
from knowledge.figures import EITHER_SIDE
from knowledge.limits import Figure, Limit, Side
from knowledge.model import Finding, Source
from knowledge.pressure.quantities import HOT_RUNNING_PRESSURE, STOP_RUNNING_PRESSURE
from knowledge.units import DIMENSIONS, TIME, show, unit_in
from knowledge.work import Band, Task

TWELVE = 12.0  #: inch-pounds in a foot-pound


class Verdict(StrEnum):
    """What has become of a task."""

    OPEN = "open"
    PASSED = "passed"
    BORDERLINE = "borderline"
    FAILED = "failed"
    LEFT_OUT = "left out"


#: what still wants somebody's eye
UNSETTLED = (Verdict.OPEN, Verdict.FAILED, Verdict.BORDERLINE)


@dataclass(frozen=True, slots=True)
class Comparison:
    """A value compared with one source's figures."""

    band: Band
    fits: bool
    near: bool  #: within the measuring error of an end


@dataclass(frozen=True, slots=True)
class Judged:
    """A verdict and why, in words."""

    verdict: Verdict
    because: str
    compared: tuple[Comparison, ...] = ()


NO_FIGURE = "no figure for this engine: enter yours"
OWN = Source("own", "this engine's own figure")


def no_feature(feature: Finding) -> bool:
    """Know no feature of the engine."""
    return False


@dataclass(frozen=True, slots=True, kw_only=True)
class EngineFigures:
    """What is known of one engine to judge its values by; figures in SI."""

    limits: Mapping[Limit, float] = field(default_factory=dict)  #: its own
    usual: Mapping[Limit, Figure] = field(default_factory=dict)  #: of its layout and sizes
    has: Callable[[Finding], bool] = no_feature  #: whether it is known to have a feature
    on_card: Mapping[str, Sequence[CardValue]] = field(default_factory=dict)  #: by id of the task
    sizes: Mapping[str, float] = field(default_factory=dict)  #: of its parts, by id

    @classmethod
    def of(cls, case: Case) -> EngineFigures:
        """Of the engine of a case."""
        return cls(
            limits=case.limits,
            usual=case.usual_limits,
            has=case.has,
            on_card=case.own_figures,
            sizes=case.sizes,
        )


NOTHING_KNOWN = EngineFigures()


def usual_band(task: Task, usual: Mapping[Limit, Figure]) -> Band | None:
    """What is typical of this layout or of its sizes, where that is known for this task."""
    low, high = task.limits
    figures = [usual.get(limit) if limit else None for limit in (low, high)]
    known = [figure for figure in figures if figure is not None]
    if not known:
        return None
    ends = [
        figure.value if figure else limit.typical if limit else None
        for figure, limit in zip(figures, (low, high), strict=True)
    ]
    return Band(low=ends[0], high=ends[1], source=known[0].source, says=known[0].says)


def card_band(task: Task, on_card: Sequence[CardValue]) -> Band | None:
    """What the engine's card accepts for this task, SI; None where the card says nothing of it.

    One figure alone of a torque or setting stands for a band either side of it; where only a wear
    limit is printed, that is the widest.
    """
    value = next((v for v in on_card if v.figure.dimension == task.dimension), None)
    if value is None:
        return None
    low, high = value.low, value.high if value.high is not None else value.worn
    if value.figure.form is Form.NOMINAL and low is not None and low == high:
        low, high = (1 - EITHER_SIDE) * low, (1 + EITHER_SIDE) * low
    return Band(low=low, high=high, source=OWN, says=OWN.title)


def own_band(task: Task, engine: EngineFigures) -> Band | None:
    """The engine's own figures from the case, where it has any for this task."""
    limits = engine.limits
    low, high = task.limits
    ends = [limits.get(limit) if limit else None for limit in (low, high)]
    if low is STOP_RUNNING_PRESSURE and HOT_RUNNING_PRESSURE in limits:
        ends[0] = max(limits[HOT_RUNNING_PRESSURE], ends[0] or 0.0)
    if low is high and low is not None and low.side is Side.NOMINAL and ends[0] is not None:
        ends = [(1 - EITHER_SIDE) * ends[0], (1 + EITHER_SIDE) * ends[0]]
    if ends == [None, None]:
        return None
    printed = [limit.printed(engine.has) if limit else () for limit in (low, high)]
    usual = [each[0].value if each else None for each in printed]
    return Band(
        low=ends[0] if ends[0] is not None else usual[0],
        high=ends[1] if ends[1] is not None else usual[1],
        source=OWN,
        says=OWN.title,
    )


def bands_of(task: Task, engine: EngineFigures) -> tuple[tuple[Band, ...], tuple[Band, ...]]:
    """What may decide, the first before the others, and what was printed for other engines.

    First come the engine's own figures, from its card or the case, then those of its layout or
    sizes, those for its kind and those for no kind in particular.
    """
    own = card_band(task, engine.on_card.get(task.id, ())) or own_band(task, engine)
    first = own, usual_band(task, engine.usual)
    of_size = {id(b): b.of_size.holds(engine.sizes) if b.of_size else None for b in task.bands}
    fitting = [b for b in task.bands if b.fits(engine.has) and of_size[id(b)] is not False]
    kind = [b for b in fitting if b.only_with or of_size[id(b)]]
    general = [b for b in fitting if b not in kind]
    others = tuple(b for b in task.bands if b not in fitting)
    return (*(band for band in first if band), *kind, *general), others


def judged(task: Task, worked: TaskRecord | None, engine: EngineFigures) -> Judged:
    """What was recorded of a task, judged. Without a value, the person's own word."""
    if worked is None:
        return Judged(Verdict.OPEN, "")
    if worked.value is None:
        return _by_word(worked)
    bands, others = bands_of(task, engine)
    dimension = DIMENSIONS[task.dimension]
    unit = unit_in(worked.entry.value or "", dimension)
    compared = tuple(
        replace(compare(worked.value, read_in(band, dimension, unit), task.spread), band=band)
        for band in (*bands, *others)
    )
    if not bands:
        return _by_none(task, worked, compared)
    first = bands[0]
    by_size = first.of_size is not None and first.of_size.holds(engine.sizes) is True
    alone = first.source is OWN or (by_size and task.dimension == "torque")
    return _by_value(task, worked, compared, len(bands), alone)


def _by_none(task: Task, worked: TaskRecord, compared: tuple[Comparison, ...]) -> Judged:
    """No source prints a figure for this kind of engine."""
    if twelve := off_by_twelve(task, worked, compared):
        return Judged(Verdict.FAILED, twelve, compared)
    says = NO_FIGURE
    if compared:
        fits = "fits" if compared[0].fits else "is outside"
        says += f"; it {fits} {_name_of(compared[0].band)}"
    return Judged(Verdict.BORDERLINE, says, compared)


def _by_word(worked: TaskRecord) -> Judged:
    note = worked.entry.note
    match worked.entry.state:
        case "failed":
            return Judged(Verdict.FAILED, note)
        case "skipped":
            return Judged(Verdict.LEFT_OUT, note)
        case _:
            return Judged(Verdict.PASSED, note)


def _ends_of(band: Band) -> tuple[float, float]:
    """Both ends of a band; an open one is infinite."""
    low = -float("inf") if band.low is None else band.low
    return low, float("inf") if band.high is None else band.high


def _fits(value: float, band: Band) -> bool:
    """Whether the value lies in the band; on an end it does, however it was rounded."""
    low, high = _ends_of(band)
    slack = 1e-9 * abs(value)
    return low - slack <= value <= high + slack


def compare(value: float, band: Band, spread: float) -> Comparison:
    """A value with one band, all SI; ``spread``: the measuring error, one standard deviation."""
    low, high = _ends_of(band)
    fits = _fits(value, band)
    error = min(spread, (high - low) / 4)  # a band as narrow as the error would leave nothing sound
    near = min(abs(value - low), abs(value - high)) < error
    return Comparison(band, fits, near)


def _by_value(
    task: Task, worked: TaskRecord, compared: tuple[Comparison, ...], deciding: int, alone: bool
) -> Judged:
    """Judge by the first band, which may decide ``alone``.

    Else the other ``deciding`` ones are named, and those printed for one engine keep a value from
    failing, as the engine may be that one; the rest are only shown.
    """
    first, others = compared[0], compared[1:deciding]
    if twelve := off_by_twelve(task, worked, compared):
        return Judged(Verdict.FAILED, twelve, compared)
    if first.fits:
        if first.near:
            return Judged(
                Verdict.BORDERLINE,
                "within the measuring error of the limit: measure again another way",
                compared,
            )
        against = [c for c in others if not c.fits]
        says = f"; {_name_of(against[0].band)} would refuse it" if against and not alone else ""
        return Judged(Verdict.PASSED, f"fits {_name_of(first.band)}{says}", compared)
    if first.near:
        return Judged(
            Verdict.BORDERLINE,
            "just outside, within the measuring error: measure again another way",
            compared,
        )
    of_one = [c for c in compared[deciding:] if c.band.of_one]
    agrees = [c for c in (*others, *of_one) if c.fits]
    if agrees and not alone:
        return Judged(
            Verdict.BORDERLINE,
            f"outside {_name_of(first.band)}, but fits {_name_of(agrees[0].band)}: sources differ, "
            "the engine maker's figure decides",
            compared,
        )
    return Judged(Verdict.FAILED, f"outside {_name_of(first.band)}", compared)


def _name_of(band: Band) -> str:
    return band.says or band.source.title


def off_by_twelve(task: Task, worked: TaskRecord, compared: tuple[Comparison, ...]) -> str:
    """A torque that would fit if inch-pounds and foot-pounds had been mixed up; else empty."""
    if task.dimension != "torque" or worked.value is None or any(c.fits for c in compared):
        return ""
    dimension = DIMENSIONS["torque"]
    for factor, missed in ((TWELVE, "little"), (1.0 / TWELVE, "much")):
        meant = next((c for c in compared if _fits(worked.value * factor, c.band)), None)
        if meant is None:
            continue
        written = worked.entry.value or ""
        unit = unit_in(written, dimension) or "N·m"
        right = show(worked.value * factor, dimension, unit)
        return (
            f"{written} is twelve times too {missed}: {right} would fit {_name_of(meant.band)}; "
            "look whether in-lb and lb-ft were mixed up"
        )
    return ""


def clock(seconds: float) -> str:
    """The unit in which a person says such a time."""
    return "s" if seconds < 120 else "min" if seconds < 7200 else "h"


def figures(band: Band, task: Task, unit: str | None = None) -> str:
    """A band in words.

    The unit the person used, else the dimension's first.
    """
    dimension = DIMENSIONS[task.dimension]
    if unit is None and dimension is TIME:
        unit = clock(max(e for e in (band.low, band.high) if e is not None))
    figure = partial(shown_as_read, dimension=dimension, unit=unit)
    low = None if band.low is None else figure(band.low)
    high = None if band.high is None else figure(band.high)
    if low is not None and high is not None:
        return f"{low} to {high}"
    return f"at least {low}" if low is not None else f"at most {high}"

"""What a measured value of a task comes to, beside every source; never an average of them."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import TypeAlias

from diagnose.case.card_text import CardValue
from diagnose.case.case import Case, TaskRecord
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
class Held:
    """A value held against one source's figures."""

    band: Band
    fits: bool
    near: bool  #: within the measuring error of an end


@dataclass(frozen=True, slots=True)
class Judged:
    """A verdict and why, in words."""

    verdict: Verdict
    because: str
    held: tuple[Held, ...] = ()


NO_FIGURE = "no figure for this engine: enter yours"
OWN = Source("own", "this engine's own figure")
NOTHING: Mapping[Limit, Figure] = MappingProxyType({})
NO_SIZES: Mapping[str, float] = MappingProxyType({})


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


Features: TypeAlias = Callable[[Finding], bool]  #: whether the engine is known to have a feature


def no_feature(feature: Finding) -> bool:
    """Know no feature of the engine."""
    return False


def card_band(task: Task, own: Sequence[CardValue]) -> Band | None:
    """What the engine's card accepts for this task, SI; None where the card says nothing of it.

    One figure alone of a torque or setting stands for a band either side of it; where only a wear
    limit is printed, that is the widest.
    """
    value = next((v for v in own if v.figure.dimension == task.dimension), None)
    if value is None:
        return None
    low, high = value.low, value.high if value.high is not None else value.worn
    if value.figure.form is Form.NOMINAL and low is not None and low == high:
        low, high = (1 - EITHER_SIDE) * low, (1 + EITHER_SIDE) * low
    return Band(low=low, high=high, source=OWN, says=OWN.title)


def own_band(task: Task, limits: dict[Limit, float], has: Features = no_feature) -> Band | None:
    """The engine's own figures from the case, where it has any for this task."""
    low, high = task.limits
    ends = [limits.get(limit) if limit else None for limit in (low, high)]
    if low is STOP_RUNNING_PRESSURE and HOT_RUNNING_PRESSURE in limits:
        ends[0] = max(limits[HOT_RUNNING_PRESSURE], ends[0] or 0.0)
    if low is high and low is not None and low.side is Side.NOMINAL and ends[0] is not None:
        ends = [(1 - EITHER_SIDE) * ends[0], (1 + EITHER_SIDE) * ends[0]]
    if ends == [None, None]:
        return None
    printed = [limit.printed(has) if limit else () for limit in (low, high)]
    usual = [each[0].value if each else None for each in printed]
    return Band(
        low=ends[0] if ends[0] is not None else usual[0],
        high=ends[1] if ends[1] is not None else usual[1],
        source=OWN,
        says="this engine's own figure",
    )


def bands_of(
    task: Task,
    limits: dict[Limit, float],
    usual: Mapping[Limit, Figure] = NOTHING,
    has: Features = no_feature,
    own: Sequence[CardValue] = (),
    sizes: Mapping[str, float] = NO_SIZES,
) -> tuple[tuple[Band, ...], tuple[Band, ...]]:
    """What may decide, the first before the others, and what was printed for other engines.

    First come the engine's own figures, from its card or the case, then those of its layout or
    sizes, those for its kind and those for no kind in particular. ``has`` tells which features the
    engine is known to have; ``own``: what its card says for this task; ``sizes``: of its parts, SI.
    """
    first = card_band(task, own) or own_band(task, limits, has), usual_band(task, usual)
    of_size = {id(b): b.of_size.holds(sizes) if b.of_size else None for b in task.bands}
    fitting = [b for b in task.bands if b.fits(has) and of_size[id(b)] is not False]
    kind = [b for b in fitting if b.only_with or of_size[id(b)]]
    general = [b for b in fitting if b not in kind]
    others = tuple(b for b in task.bands if b not in fitting)
    return (*(band for band in first if band), *kind, *general), others


def judged(
    task: Task,
    worked: TaskRecord | None,
    limits: dict[Limit, float],
    usual: Mapping[Limit, Figure] = NOTHING,
    has: Features = no_feature,
    own: Sequence[CardValue] = (),
    sizes: Mapping[str, float] = NO_SIZES,
) -> Judged:
    """What was recorded of a task, judged. Without a value, the person's own word.

    ``limits``: the engine's own figures; ``usual``: those typical of its layout and sizes, SI;
    ``has``: whether the engine is known to have a feature; ``own``: what its card says; ``sizes``:
    of its parts by id, SI.
    """
    if worked is None:
        return Judged(Verdict.OPEN, "")
    if worked.value is None:
        return _by_word(worked)
    bands, others = bands_of(task, limits, usual, has, own, sizes)
    held = tuple(_held(worked.value, band, task.spread) for band in (*bands, *others))
    if not bands:
        return _by_none(task, worked, held)
    first = bands[0]
    by_size = first.of_size is not None and first.of_size.holds(sizes) is True
    alone = first.source is OWN or (by_size and task.dimension == "torque")
    return _by_value(task, worked, held, len(bands), alone)


def judged_in(case: Case, task: Task, worked: TaskRecord | None) -> Judged:
    """A task record of a case, judged by what is known of the case's engine."""
    own = case.own_figures.get(task.id, ())
    known = (dict(case.limits), case.usual_limits, case.has, own, case.sizes)
    return judged(task, worked, *known)


def bands_in(case: Case, task: Task) -> tuple[tuple[Band, ...], tuple[Band, ...]]:
    """As ``bands_of``, by what is known of the case's engine."""
    own = case.own_figures.get(task.id, ())
    return bands_of(task, dict(case.limits), case.usual_limits, case.has, own, case.sizes)


def _by_none(task: Task, worked: TaskRecord, held: tuple[Held, ...]) -> Judged:
    """No source prints a figure for this kind of engine."""
    if twelve := off_by_twelve(task, worked, held):
        return Judged(Verdict.FAILED, twelve, held)
    says = NO_FIGURE
    if held:
        fits = "fits" if held[0].fits else "is outside"
        says += f"; it {fits} {_named(held[0].band)}"
    return Judged(Verdict.BORDERLINE, says, held)


def _by_word(worked: TaskRecord) -> Judged:
    note = worked.entry.note
    match worked.entry.state:
        case "failed":
            return Judged(Verdict.FAILED, note)
        case "skipped":
            return Judged(Verdict.LEFT_OUT, note)
        case _:
            return Judged(Verdict.PASSED, note)


def _ends(band: Band) -> tuple[float, float]:
    """Both ends of a band; an open one is infinite."""
    low = -float("inf") if band.low is None else band.low
    return low, float("inf") if band.high is None else band.high


def _fits(value: float, band: Band) -> bool:
    """Whether the value lies in the band; on an end it does, however it was rounded."""
    low, high = _ends(band)
    slack = 1e-9 * abs(value)
    return low - slack <= value <= high + slack


def _held(value: float, band: Band, spread: float) -> Held:
    low, high = _ends(band)
    fits = _fits(value, band)
    error = min(spread, (high - low) / 4)  # a band as narrow as the error would leave nothing sound
    near = min(abs(value - low), abs(value - high)) < error
    return Held(band, fits, near)


def _by_value(
    task: Task, worked: TaskRecord, held: tuple[Held, ...], deciding: int, alone: bool
) -> Judged:
    """Judge by the first band, which may decide ``alone``.

    Else the other ``deciding`` ones are named, and those printed for one engine keep a value from
    failing, as the engine may be that one; the rest are only shown.
    """
    first, others = held[0], held[1:deciding]
    if twelve := off_by_twelve(task, worked, held):
        return Judged(Verdict.FAILED, twelve, held)
    if first.fits:
        if first.near:
            return Judged(
                Verdict.BORDERLINE,
                "within the measuring error of the limit: measure again another way",
                held,
            )
        against = [h for h in others if not h.fits]
        says = f"; {_named(against[0].band)} would refuse it" if against and not alone else ""
        return Judged(Verdict.PASSED, f"fits {_named(first.band)}{says}", held)
    if first.near:
        return Judged(
            Verdict.BORDERLINE,
            "just outside, within the measuring error: measure again another way",
            held,
        )
    of_one = [h for h in held[deciding:] if h.band.of_one]
    agrees = [h for h in (*others, *of_one) if h.fits]
    if agrees and not alone:
        return Judged(
            Verdict.BORDERLINE,
            f"outside {_named(first.band)}, but fits {_named(agrees[0].band)}: sources differ, "
            "the engine maker's figure decides",
            held,
        )
    return Judged(Verdict.FAILED, f"outside {_named(first.band)}", held)


def _named(band: Band) -> str:
    return band.says or band.source.title


def off_by_twelve(task: Task, worked: TaskRecord, held: tuple[Held, ...]) -> str:
    """A torque that would fit if inch-pounds and foot-pounds had been mixed up; else empty."""
    if task.dimension != "torque" or worked.value is None or any(h.fits for h in held):
        return ""
    dimension = DIMENSIONS["torque"]
    for factor, missed in ((TWELVE, "little"), (1.0 / TWELVE, "much")):
        meant = next((h for h in held if _fits(worked.value * factor, h.band)), None)
        if meant is None:
            continue
        written = worked.entry.value or ""
        unit = unit_in(written, dimension) or "N·m"
        right = show(worked.value * factor, dimension, unit)
        return (
            f"{written} is twelve times too {missed}: {right} would fit {_named(meant.band)}; "
            "look whether in-lb and lb-ft were mixed up"
        )
    return ""


def _clock(seconds: float) -> str:
    """The unit in which a person says such a time."""
    return "s" if seconds < 120 else "min" if seconds < 7200 else "h"


def figures(band: Band, task: Task, unit: str | None = None) -> str:
    """A band in words.

    The unit the person used, else the dimension's first.
    """
    dimension = DIMENSIONS[task.dimension]
    if unit is None and dimension is TIME:
        unit = _clock(max(e for e in (band.low, band.high) if e is not None))
    low = None if band.low is None else show(band.low, dimension, unit)
    high = None if band.high is None else show(band.high, dimension, unit)
    if low is not None and high is not None:
        return f"{low} to {high}"
    return f"at least {low}" if low is not None else f"at most {high}"

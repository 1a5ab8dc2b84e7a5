"""What is wrong with a bearing, and how sure its readings make that."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from enum import Enum
from statistics import median

from diagnose.bearings.targets import Target, group_of, standard_journal
from diagnose.case.bearings import MEASURES, form_limit
from diagnose.case.case import Case, MeasuredBearing
from diagnose.fits.bearing import (
    Clearance,
    Form,
    Kind,
    Place,
    Readings,
    Way,
    clearances,
    form_of,
    slip_in,
)
from diagnose.fits.shells import TOLERANCE
from knowledge.judging import sure_beyond
from knowledge.limits import Limit
from knowledge.stations.bearings import quantities, sizes

SURE, UNSURE = 0.95, 0.05  #: between them a value sits at its limit (judgement)
FEWEST_OF_FAMILY = 3


class Flag(Enum):
    """What can be wrong with a bearing, the gravest first."""

    IMPOSSIBLE = "impossible"  #: readings that do not go together
    SLIP = "slip_of_the_pen"  #: a diameter with a wrong digit or unit
    NO_ROOM = "no_room_for_new_shells"
    BELOW_LAST = "below_last_undersize"
    GRIND = "grind"
    OVER = "over_limit"
    TIGHT = "too_tight"
    BORE_SIZE = "bore_out_of_size"
    BORE_OVAL = "bore_oval"
    BORE_TAPER = "bore_tapered"
    BELL_MOUTH = "bore_bell_mouthed"
    AT_LIMIT = "at_limit"
    FAMILY = "out_of_family"
    DISAGREE = "readings_disagree"
    JOURNAL_OVAL = "journal_oval"
    JOURNAL_TAPER = "journal_tapered"
    CRUSH = "crush_out"
    SPREAD = "spread_out"


RANK: Mapping[Flag, int] = {flag: i for i, flag in enumerate(Flag)}


@dataclass(frozen=True, slots=True)
class Mark:
    """One thing that is wrong: the value [m], what it is compared with [m], and how sure."""

    flag: Flag
    value: float = 0.0
    limit: float = 0.0
    sure: float = 1.0
    least: bool = False  #: the limit is the least it may be, not the most


@dataclass(frozen=True, slots=True)
class Judged:
    """One bearing with its clearance, its form and what is wrong with it."""

    place: Place
    measured: MeasuredBearing
    clearances: tuple[Clearance, ...]  #: by each way measured, the most exact first
    journal: Form | None
    bore: Form | None
    marks: tuple[Mark, ...]

    @property
    def clearance(self) -> Clearance | None:
        """The most exact clearance."""
        return self.clearances[0] if self.clearances else None

    @property
    def rank(self) -> int:
        """The gravest of its marks; more than any where there is none."""
        return min((RANK[m.flag] for m in self.marks), default=len(RANK))

    def has(self, *flags: Flag) -> bool:
        """Whether it has one of these marks."""
        return any(m.flag in flags for m in self.marks)

    def with_mark(self, mark: Mark) -> Judged:
        """The same with a further mark, once."""
        if self.has(mark.flag):
            return self
        return replace(self, marks=_sorted([*self.marks, mark]))


def judge(
    case: Case, bearings: Mapping[Place, MeasuredBearing], targets: Mapping[Kind, Target | None]
) -> tuple[Judged, ...]:
    """Judge each bearing by itself and among its kind, in the order of the engine."""
    alone = [_judged(case, place, b, targets.get(place.kind)) for place, b in bearings.items()]
    return tuple(_among(one, alone) for one in alone)


def _judged(case: Case, place: Place, bearing: MeasuredBearing, target: Target | None) -> Judged:
    r = bearing.readings
    if slip := _slip(case, place.kind, r):
        strip = replace(bearing, readings=replace(r, bore=(), inside=(), journal=()))
        marks = [*_clearance_marks(strip, target), Mark(Flag.SLIP, *slip)]
        return Judged(place, bearing, clearances(strip.readings), None, None, _sorted(marks))
    journal, bore = form_of(r.journal), form_of(r.bore)
    marks = [*_clearance_marks(bearing, target), *_journal_marks(case, journal)]
    marks += _bore_marks(case, bore, form_of(r.inside))
    marks += _size_marks(bore, group_of(case, place.kind).new_bore)
    marks += _fit_marks(r.crush, r.spread)
    return Judged(place, bearing, clearances(r), journal, bore, _sorted(marks))


def _slip(case: Case, kind: Kind, r: Readings) -> tuple[float, float] | None:
    """A diameter that cannot be [m], and what it stands beside; None where all can be."""
    journal, new = form_of(r.journal), standard_journal(case, kind)
    if (slip := slip_in(r)) or journal is None or new is None:
        return slip
    low, high = min(new) - sizes.MOST_UNDER_NEW, max(new) + sizes.MOST_OVER_NEW
    return None if low <= journal.mean <= high else (journal.mean, max(new))


def _sorted(marks: list[Mark]) -> tuple[Mark, ...]:
    return tuple(sorted(marks, key=lambda m: RANK[m.flag]))


def _clearance_marks(bearing: MeasuredBearing, target: Target | None) -> Iterator[Mark]:
    found = clearances(bearing.readings)
    if not found:
        return
    best = found[0]
    low, high = MEASURES[bearing.place.kind].quantity.plausible
    if not low <= best.value <= high:
        yield Mark(Flag.IMPOSSIBLE, best.value, low if best.value < low else high)
        return
    for other in found[1:]:
        apart = 2 * (best.error**2 + other.error**2) ** 0.5
        if abs(best.value - other.value) > apart:
            yield Mark(Flag.DISAGREE, best.value, other.value)
            break
    if target is None:
        return
    over = sure_beyond(best.value, target.most, best.error)
    tight = sure_beyond(target.least, best.value, best.error)
    if over >= SURE:
        yield Mark(Flag.OVER, best.value, target.most, over)
    elif tight >= SURE:
        yield Mark(Flag.TIGHT, best.value, target.least, tight)
    elif _as_wanted(best, target):
        return
    elif over > UNSURE:
        yield Mark(Flag.AT_LIMIT, best.value, target.most, over)
    elif tight > UNSURE:
        yield Mark(Flag.AT_LIMIT, best.value, target.least, tight, least=True)


def _as_wanted(clearance: Clearance, target: Target) -> bool:
    """Whether a clearance is what is wanted here, however near a limit that is."""
    return target.low <= clearance.value <= target.high


def _journal_marks(case: Case, form: Form | None) -> Iterator[Mark]:
    if form is None:
        return
    error = sizes.JOURNAL_ERROR * 2**0.5  # of a difference of two readings
    oval, taper = quantities.MOST_JOURNAL_OVAL, quantities.MOST_JOURNAL_TAPER
    yield from _past(case, Flag.JOURNAL_OVAL, form.oval, oval, error)
    bent = max((abs(v) for v in (form.taper, form.waist) if v is not None), default=None)
    yield from _past(case, Flag.JOURNAL_TAPER, bent, taper, error)


def _bore_marks(case: Case, bore: Form | None, inside: Form | None) -> Iterator[Mark]:
    """Out of round counts without shells only: their walls are thinner towards the joint."""
    along = bore or inside
    if along is None:
        return
    error = sizes.BORE_ERROR * 2**0.5
    if bore is not None:
        yield from _past(case, Flag.BORE_OVAL, bore.oval, quantities.MOST_BORE_OVAL, error)
    most = quantities.MOST_BORE_TAPER
    bent = None if along.waist is None else abs(along.waist)
    yield from _past(case, Flag.BELL_MOUTH, bent, most, error)
    yield from _past(case, Flag.BORE_TAPER, along.taper, most, error)


def _size_marks(bore: Form | None, new: tuple[float, ...]) -> Iterator[Mark]:
    """A housing surely larger or smaller than when new: its shells lose their grip, or are pinched."""
    if bore is None or len(new) < 2:
        return
    low, high = min(new), max(new)
    large = sure_beyond(bore.mean, high, sizes.BORE_ERROR)
    small = sure_beyond(low, bore.mean, sizes.BORE_ERROR)
    if max(large, small) >= SURE:
        yield Mark(Flag.BORE_SIZE, bore.mean, high if large > small else low, max(large, small))


def _past(
    case: Case, flag: Flag, value: float | None, limit: Limit, error: float
) -> Iterator[Mark]:
    if value is None:
        return
    most = form_limit(case, limit)
    if value > most + TOLERANCE:
        yield Mark(flag, value, most, sure_beyond(value, most, error))


def _fit_marks(crush: tuple[float, ...], spread: tuple[float, ...]) -> Iterator[Mark]:
    for flag, values, (low, high) in (
        (Flag.CRUSH, crush, sizes.CRUSH),
        (Flag.SPREAD, spread, sizes.SPREAD),
    ):
        for value in values:
            if not low - TOLERANCE <= value <= high + TOLERANCE:
                small = value < low
                yield Mark(flag, value, low if small else high, least=small)
                break


def _among(one: Judged, every: list[Judged]) -> Judged:
    """Mark a bearing that is far from the middle of all of its kind."""
    best = one.clearance
    if best is None or one.has(Flag.IMPOSSIBLE, Flag.SLIP):
        return one
    family = [
        other.clearance.value
        for other in every
        if other.place.kind is one.place.kind
        and other.clearance is not None
        and not other.has(Flag.IMPOSSIBLE, Flag.SLIP)
    ]
    if len(family) < FEWEST_OF_FAMILY:
        return one
    middle = median(family)
    if abs(best.value - middle) <= sizes.FAMILY + 2 * best.error + TOLERANCE:
        return one
    return one.with_mark(Mark(Flag.FAMILY, best.value, middle))


def by_strip(one: Judged) -> bool:
    """Whether its clearance rests on a gauge strip alone."""
    return one.clearance is not None and one.clearance.way is Way.STRIP

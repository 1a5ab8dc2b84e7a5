"""The shells to order for each bearing, and how far journals are ground for them."""

from __future__ import annotations

from dataclasses import dataclass, replace
from statistics import fmean

from diagnose.bearings.before_ordering import Hold, crank_was_ground, hold_of
from diagnose.bearings.judging import Flag, Judged, Mark
from diagnose.bearings.targets import Target, group_of, standard_journal
from diagnose.case.case import Case
from diagnose.fits.bearing import Kind, Place, error_of, mean_leak
from diagnose.fits.shells import (
    TOLERANCE,
    Pair,
    best_pair,
    clearance_with,
    ground_to,
    ground_undersize,
    is_rare,
    pairs,
)
from knowledge.stations.bearings import sizes
from knowledge.stations.bearings.sizes import Undersize
from knowledge.units import LENGTH, MM, unit_named

DOUBT = 2.0  #: errors of a reading that may only be in the reading: nineteen in twenty are within


@dataclass(frozen=True, slots=True)
class Choice:
    """The shells for one bearing and the clearance they give [m]."""

    place: Place
    pair: Pair
    clearance: float
    reached: bool  #: whether that is the clearance wanted
    journal: float | None = None  #: diameter to grind this journal to [m]; None: as it is


@dataclass(frozen=True, slots=True)
class Alternative:
    """All bearings of a kind with equal shells of one size, and the clearance that leaks as much."""

    kind: Kind
    undersize: float  #: m
    clearance: float  #: m


@dataclass(frozen=True, slots=True)
class Order:
    """What to order for the bearings of one kind."""

    kind: Kind
    choices: tuple[Choice, ...]
    ground: float | None = None  #: undersize all are ground to [m]; None: no grinding
    journals: tuple[float, float] | None = None  #: by the maker's sizes, after grinding [m]
    grind: tuple[float, float] | None = None  #: diameters that give every bore what is wanted [m]
    by_maker: tuple[Place, ...] = ()  #: ground to the maker's sizes: walls of new shells not known
    needs_standard: bool = False  #: a journal must be ground, and what it was new is not known
    old_shells: bool = False  #: worked out from shells that may be worn
    unclear: tuple[Place, ...] = ()  #: too wide, and shell or journal may be what is worn
    undersizes: tuple[Undersize, ...] = ()  #: of which it was chosen
    alternatives: tuple[Alternative, ...] = ()  #: on the journals as they are
    worn: tuple[float, float] | None = None  #: ground only as the crank is away: below new [m]
    held: tuple[Hold, tuple[Place, ...]] | None = None  #: why nothing is ordered yet, of which

    @property
    def unusual(self) -> bool:
        """Whether a shell of the order is made for some engines only."""
        rare = [u.size for u in self.undersizes if not u.usual]
        ordered = [s for c in self.choices for s in (c.pair.thin, c.pair.thick)]
        return any(abs(s - r) <= TOLERANCE for s in ordered for r in rare)


def order_for(
    case: Case, kind: Kind, judged: tuple[Judged, ...], target: Target | None
) -> tuple[Order | None, tuple[Judged, ...]]:
    """Choose shells for one kind; return the order and the bearings with marks of grinding."""
    if target is None:
        return None, judged
    mine = [j for j in judged if j.place.kind is kind and _can_be_fitted(j)]
    grind = {j.place for j in mine if j.has(Flag.JOURNAL_OVAL, Flag.JOURNAL_TAPER)}
    fine, ground = undersizes(case, kind, mine)
    hold = hold_of(case, kind, mine)
    if hold is not None and mine:
        sent = tuple(j.with_mark(Mark(Flag.GRIND)) if j.place in grind else j for j in judged)
        return Order(kind, (), held=(hold, tuple(j.place for j in mine)), undersizes=fine), sent
    choices: list[Choice] = []
    no_room: dict[Place, float] = {}  #: what the nearest shells would leave [m]
    unclear = tuple(j.place for j in mine if _may_be_shell(case, j, target))
    for j in mine:
        choice = None if j.place in unclear else _fitted(case, j, target, fine, ground)
        if choice is not None and choice.clearance <= TOLERANCE:
            no_room[j.place] = choice.clearance
            continue
        if choice is not None and choice.clearance > target.most + TOLERANCE:
            grind.add(j.place)  # no shell brings it within the limit
        if choice is not None:
            choices.append(choice)
    marked = tuple(j.with_mark(Mark(Flag.GRIND)) if j.place in grind else j for j in judged)
    marked = tuple(
        j.with_mark(Mark(Flag.NO_ROOM, no_room[j.place])) if j.place in no_room else j
        for j in marked
    )
    if grind:
        return _ground(case, kind, marked, target, ground)
    worn = any(not _sized(case, j) for j in mine)
    if not choices and not unclear:
        return None, marked
    order = Order(
        kind,
        tuple(choices),
        old_shells=worn,
        unclear=unclear,
        undersizes=fine,
        alternatives=_alternatives(kind, choices, fine, _least_fitted(mine)),
    )
    return order, marked


def ground_too(
    case: Case, order: Order, judged: tuple[Judged, ...], target: Target
) -> tuple[Order, tuple[Judged, ...]]:
    """Grind worn journals with those of another kind, as the crank goes to the grinder anyway.

    The order as it was, where standard shells do on the journals or what was new is not known.
    """
    standard = standard_journal(case, order.kind)
    fine = [c.place for c in order.choices if c.pair.thick > TOLERANCE]
    if standard is None or not fine:
        return order, judged
    mine = [j for j in judged if j.place.kind is order.kind and j.journal is not None]
    below = [standard[0] - j.journal.mean for j in mine if j.journal is not None]
    if not below or max(below) <= TOLERANCE:
        return order, judged
    sent = tuple(j.with_mark(Mark(Flag.GRIND)) if j.place in fine else j for j in judged)
    _, coarse = undersizes(case, order.kind, mine)
    ground, marked = _ground(case, order.kind, sent, target, coarse)
    if not ground.choices:
        return order, judged
    return replace(ground, worn=(max(min(below), 0.0), max(below))), marked


def _least_fitted(judged: list[Judged]) -> float:
    """The least undersize of the shells that are in [m]: what the crank was ground to."""
    return min((j.measured.readings.undersize for j in judged), default=0.0)


def _alternatives(
    kind: Kind, choices: list[Choice], fine: tuple[Undersize, ...], base: float
) -> tuple[Alternative, ...]:
    """The size the crank is ground to, and each usual one a little beyond, in every bearing."""
    found = []
    steps = (0.0, *(u.size for u in fine if u.usual))
    for size in (base + step for step in steps) if choices else ():
        gaps = [c.clearance + c.pair.undersize - size for c in choices]
        if min(gaps) > 0.0:
            found.append(Alternative(kind, size, mean_leak(gaps)))
    return tuple(found)


def _may_be_shell(case: Case, one: Judged, target: Target) -> bool:
    """Whether a bearing is too wide and nothing tells a worn shell from a worn journal."""
    if not one.has(Flag.OVER, Flag.AT_LIMIT) or one.clearance is None:
        return False
    tight = one.clearance.value < target.low
    return not tight and not _sized(case, one) and one.journal is None


def _can_be_fitted(one: Judged) -> bool:
    return not one.has(Flag.IMPOSSIBLE, Flag.SLIP, Flag.NO_ROOM, Flag.DISAGREE)


def undersizes(
    case: Case, kind: Kind, judged: list[Judged]
) -> tuple[tuple[Undersize, ...], tuple[Undersize, ...]]:
    """The undersizes that need no grinding, and those of ground journals.

    The case's own list where it has one, else what is usually made, inch or metric as measured.
    """
    given = group_of(case, kind).sizes
    if given:
        mark = sizes.CLEAN_UP_SOURCE
        own = [Undersize(u, mark) for u in given]
        return (
            tuple(u for u in own if u.size <= sizes.MOST_FINE),
            tuple(u for u in own if u.size > sizes.MOST_FINE),
        )
    if any(is_metric(j) for j in judged):
        return sizes.FINE_METRIC, sizes.GROUND_METRIC
    return sizes.FINE_INCH, sizes.GROUND_INCH


def is_metric(one: Judged) -> bool:
    """Whether a bearing was measured in millimetres."""
    named = unit_named(one.measured.unit or one.measured.fine_unit, LENGTH)
    return named is not None and named.factor == MM


def _sized(case: Case, one: Judged) -> bool:
    """Whether the clearance with new standard shells follows from bore, journal and new wall."""
    return bool(one.bore and one.journal and group_of(case, one.place.kind).new_shell)


def _as_standard(case: Case, one: Judged, target: Target) -> tuple[float, float] | None:
    """A clearance [m] with new shells, and the undersize [m] of the shells it holds for.

    From housing bore, wall of a new shell and journal; else from what the journal has worn, new
    shells on a new journal giving what is wanted; else as measured.
    """
    if _sized(case, one) and one.bore and one.journal:
        wall = fmean(group_of(case, one.place.kind).new_shell)
        across = fmean(place[0] for place in one.measured.readings.bore)
        return across - 2 * wall - one.journal.mean, 0.0
    if one.clearance is None:
        return None
    fitted = one.measured.readings.undersize
    standard = standard_journal(case, one.place.kind)
    if one.has(Flag.OVER, Flag.AT_LIMIT) and one.journal is not None and standard is not None:
        worn = max(sum(standard) / 2 - fitted - one.journal.mean, 0.0)
        return min((target.low + target.high) / 2 + worn, one.clearance.value), fitted
    return one.clearance.value, fitted


def _fitted(
    case: Case,
    one: Judged,
    target: Target,
    fine: tuple[Undersize, ...],
    ground: tuple[Undersize, ...],
) -> Choice | None:
    """The best shells on the journal as it is; the nearest where none reaches the band.

    ``ground``: undersizes of ground journals, one of which this may be already.
    """
    start = _as_standard(case, one, target)
    if start is None:
        return None
    measured, fitted = start
    base = one.measured.readings.undersize
    same = Pair(base, base)
    as_is = clearance_with(measured, fitted, same)
    stays = Choice(one.place, same, as_is, True)
    near = DOUBT * (one.clearance.error if one.clearance else error_of(2, alike=True))
    good = target.low - near <= as_is <= target.high + near  # the readings tell no better
    if good and one.clearance is not None:
        return stays
    rare = [base + u.size for u in fine if not u.usual]
    choice = pairs([base, *(base + u.size for u in fine)])
    band = (target.low, target.high)
    pair = best_pair(measured, fitted, band, choice, rare)
    if pair is None and (crank_was_ground(case) or (not base and _sized(case, one))):
        choice = (*choice, *(Pair(u.size, u.size) for u in ground if u.size > base))
        pair = best_pair(measured, fitted, band, choice, rare)
    if good and (pair is None or pair.mixed or is_rare(pair, rare)):
        return stays
    if pair is not None:
        return Choice(one.place, pair, clearance_with(measured, fitted, pair), True)
    middle = (target.low + target.high) / 2
    pair = min(
        (p for p in choice if not p.mixed and not is_rare(p, rare)),
        key=lambda p: abs(clearance_with(measured, fitted, p) - middle),
    )
    return Choice(one.place, pair, clearance_with(measured, fitted, pair), False)


def _ground(
    case: Case,
    kind: Kind,
    judged: tuple[Judged, ...],
    target: Target,
    ground: tuple[Undersize, ...],
) -> tuple[Order, tuple[Judged, ...]]:
    """Grind all journals of a kind to the undersize that the worst of them needs."""
    mine = [j for j in judged if j.place.kind is kind and _can_be_fitted(j)]
    middle = (target.low + target.high) / 2
    new = {j.place: _new_journal(case, j, middle) for j in mine}
    if any(new[j.place] is None for j in mine if j.has(Flag.GRIND)):
        return Order(kind, (), needs_standard=True, undersizes=ground), judged
    offered = [u.size for u in ground]
    needed = {
        j.place: ground_undersize(j.journal.least, size, offered)
        for j in mine
        if j.journal is not None and (size := new[j.place]) is not None
    }
    lost = {place for place, size in needed.items() if size is None}
    marked = tuple(j.with_mark(Mark(Flag.BELOW_LAST)) if j.place in lost else j for j in judged)
    undersize = max((s for s in needed.values() if s is not None), default=None)
    if undersize is None:
        return Order(kind, (), undersizes=ground), marked
    each = {
        j.place: ground_to(size, undersize)
        for j in mine
        if j.place not in lost and (size := new[j.place]) is not None
    }
    half = (target.high - target.low) / 2
    sized = {j.place for j in mine if _sized(case, j)}
    grind = _one_size(  # where the walls of new shells are not known, the maker's own sizes
        [(a - half, b + half) if p in sized else (a, b) for p, (a, b) in each.items()]
    )
    pair = Pair(undersize, undersize)
    choices = [
        Choice(place, pair, middle + own - size, True, size)
        for place, ends in each.items()
        for own in [sum(ends) / 2]
        for size in [sum(grind) / 2 if grind else own]
    ]
    standard = standard_journal(case, kind)
    journals = ground_to(standard, undersize) if standard else None
    order = Order(
        kind,
        tuple(choices),
        undersize,
        journals,
        grind=grind,
        by_maker=tuple(p for p in each if p not in sized),
        undersizes=ground,
    )
    return order, marked


def _one_size(fitting: list[tuple[float, float]]) -> tuple[float, float] | None:
    """Least and most diameter [m] that suits every bore; None where no one size does.

    ``fitting``: least and most that suits each.
    """
    low, high = max(ends[0] for ends in fitting), min(ends[1] for ends in fitting)
    return (low, high) if low <= high + TOLERANCE else None


def _new_journal(case: Case, one: Judged, middle: float) -> tuple[float, float] | None:
    """The standard journal for this bore: what gives the clearance wanted, else the maker's."""
    if _sized(case, one):
        wall = fmean(group_of(case, one.place.kind).new_shell)
        across = fmean(place[0] for place in one.measured.readings.bore)
        return (across - 2 * wall - middle,) * 2
    return standard_journal(case, one.place.kind)

"""The bearings of a case judged as a whole, with what to order and what to do next."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from math import inf

from diagnose.bearings.before_ordering import Hold
from diagnose.bearings.judging import Flag, Judged, by_strip, judge
from diagnose.bearings.orders import Choice, Order, ground_too, order_for
from diagnose.bearings.pressure import Option, Pressures, pressures
from diagnose.bearings.targets import Target, target_of, use_of
from diagnose.case.bearing_counts import count_of, each_measured
from diagnose.case.case import Case, MeasuredBearing
from diagnose.circuit.after_repair import as_it_runs
from diagnose.fits.bearing import Kind, Place, Way, mean_leak
from knowledge.stations.bearings.sizes import Use


class Step(Enum):
    """What to do next, the first that applies."""

    MEASURE = "measure"
    CAPS = "caps_in_their_places"
    LINE = "bores_in_line"
    CHECK = "check_readings"
    MICROMETER = "settle_with_micrometers"
    MISSING = "measure_the_rest"
    SHELL_BACKS = "read_shell_backs"
    JOURNAL = "measure_journals"
    STANDARD = "enter_new_journal"
    CRANK = "another_crank"
    BORES = "have_bores_resized"
    GRIND = "grind"
    SHELLS = "order_shells"
    SOUND = "nothing_to_order"
    FITTED = "measure_as_fitted"
    REFIT = "refit"
    SIGN_OFF = "sign_off"


@dataclass(frozen=True, slots=True)
class Bearings:
    """All bearings of a case: measured, judged, ordered."""

    case: Case
    use: Use
    found: tuple[Judged, ...]
    fitted: tuple[Judged, ...]  #: measured with the new parts
    missing: tuple[Place, ...]  #: of the engine, without a clearance and sizes to work it out from
    counts: Mapping[Kind, int | None]
    targets: Mapping[Kind, Target | None]
    orders: Mapping[Kind, Order]
    pressures: Pressures
    next_step: Step
    next_places: tuple[Place, ...] = ()  #: the bearings the next step is about

    @property
    def shown(self) -> tuple[Judged, ...]:
        """One line per bearing: as fitted where that was measured, else as found."""
        built = {j.place for j in self.fitted if j.clearance}
        found = [j for j in self.found if not any(b.covers(j.place) for b in built)]
        return tuple(sorted([*found, *(j for j in self.fitted if j.clearance)], key=_in_order))

    @property
    def by_sizes(self) -> Mapping[Place, Choice]:
        """What to order for those without a clearance: it follows from bore, journal and shell."""
        return _by_sizes(self.found, self.orders)

    @property
    def as_if_new(self) -> tuple[Judged, ...]:
        """Those counted as found that measure as wanted, shells in, although new shells are known.

        They may have been measured with the new ones in.
        """
        return tuple(j for j in self.found if self._is_as_if_new(j))

    def _is_as_if_new(self, one: Judged) -> bool:
        best, target = one.clearance, self.targets.get(one.place.kind)
        group = self.case.bearings.groups.get(one.place.kind)
        if best is None or target is None or group is None or not group.new_shell:
            return False
        return best.way is not Way.PARTS and target.low <= best.value <= target.high


def _in_order(one: Judged) -> Place:
    return one.place


def bearings_of(
    case: Case,
    *,
    counts: Mapping[Kind, int | None] | None = None,
    with_pressure: bool = True,
) -> Bearings:
    """Judge the bearings of a case.

    ``counts``: how many of each kind the engine has, where the case does not say or is wrong.
    ``with_pressure``: also solve the oil circuit.
    """
    targets = {kind: target_of(case, kind) for kind in Kind}
    given = counts or {}
    counts = {k: count_of(case, k) if given.get(k) is None else given[k] for k in Kind}
    found = judge(case, _without_empty(case, case.bearings.found, counts), targets)
    fitted = judge(case, _without_empty(case, case.bearings.fitted, counts), targets)
    orders: dict[Kind, Order] = {}
    built = [j for j in fitted if j.clearance is not None]
    for kind in Kind:
        order, found = order_for(case, kind, found, targets[kind])
        done = all(any(b.place.covers(j.place) for b in built) for j in found if _of(kind, j))
        if order is not None and not done:
            orders[kind] = order
    if any(o.ground is not None for o in orders.values()):
        for kind, order in orders.items():
            target = targets[kind]
            if order.ground is None and target is not None:
                orders[kind], found = ground_too(case, order, found, target)
    known = {j.place for j in (*found, *fitted) if j.clearance is not None}
    known |= set(_by_sizes(found, orders))
    looked_at = {j.place for j in found}
    missing = tuple(
        p
        for p in every_place(case, counts)
        if (p.number or p in looked_at) and not any(k.covers(p) for k in known)
    )
    step, places = _next(found, fitted, missing, orders)
    if step in (Step.SHELLS, Step.SHELL_BACKS) and _is_sound(found):
        step, places, orders = Step.SOUND, (), {}
    options = _options(found, built, orders, targets) if with_pressure else []
    if case.start_readings and built:
        options = options[:1] and [Option("as fitted and running since", {})]
    return Bearings(
        case=case,
        use=use_of(case),
        found=found,
        fitted=fitted,
        missing=missing,
        counts=counts,
        targets=targets,
        orders=orders,
        pressures=pressures(as_it_runs(case) if built else case, options),
        next_step=step,
        next_places=places,
    )


def _by_sizes(found: tuple[Judged, ...], orders: Mapping[Kind, Order]) -> dict[Place, Choice]:
    """The shells for each bearing that has no clearance of its own."""
    measured = {j.place for j in found if j.clearance is not None}
    return {c.place: c for o in orders.values() for c in o.choices if c.place not in measured}


def _of(kind: Kind, one: Judged) -> bool:
    return one.place.kind is kind


def _without_empty(
    case: Case, bearings: Mapping[Place, MeasuredBearing], counts: Mapping[Kind, int | None]
) -> dict[Place, MeasuredBearing]:
    """Without the one figure for all others of a kind where there are no others."""
    named = Counter(p.kind for p in bearings if p.number)
    return {
        p: b
        for p, b in bearings.items()
        if p.number or not (named[p.kind] >= (counts[p.kind] or inf) or each_measured(case, p.kind))
    }


def every_place(case: Case, counts: Mapping[Kind, int | None]) -> tuple[Place, ...]:
    """Every bearing of the engine, in order: as many as it has, and all that were measured."""
    places = {*case.bearings.found, *case.bearings.fitted}
    for kind, count in counts.items():
        places |= {Place(kind, n) for n in range(1, (count or 0) + 1)}
    return tuple(sorted(places, key=lambda p: (list(Kind).index(p.kind), p.number)))


def _options(
    found: tuple[Judged, ...],
    built: Sequence[Judged],
    orders: Mapping[Kind, Order],
    targets: Mapping[Kind, Target | None],
) -> list[Option]:
    """As found, as fitted, with the order, and at both ends of what is wanted."""
    measured = {k for k in Kind if any(j.place.kind is k and j.clearance for j in found)}
    if not measured:
        return []
    options = [Option("as found", {})]
    gaps = {k: [j.clearance.value for j in built if j.clearance and _of(k, j)] for k in Kind}
    if built:
        leaks = {k: mean_leak([max(g, 0.0) for g in each]) for k, each in gaps.items() if each}
        options.append(Option("as fitted", leaks))
    ordered = {
        kind: mean_leak([max(c.clearance, 0.0) for c in order.choices])
        for kind, order in orders.items()
        if order.choices and kind in measured
    }
    if ordered:
        options.append(Option("with this order", ordered))
    wanted = {k: t for k, t in targets.items() if t is not None and k in measured}
    if wanted:
        options.append(Option("all at the tight end", {k: t.low for k, t in wanted.items()}))
        options.append(Option("all at the wide end", {k: t.high for k, t in wanted.items()}))
    others = [a for order in orders.values() for a in order.alternatives]
    options += [Option(f"all {a.kind.plural}", {a.kind: a.clearance}, a) for a in others]
    return options


def _is_sound(found: Sequence[Judged]) -> bool:
    """Whether every bearing was measured with its shells in, as wanted: nothing is to be ordered."""
    return bool(found) and all(
        j.clearance is not None and j.clearance.way is not Way.PARTS and not j.marks for j in found
    )


#: what a bore is resized for
RESIZE = (Flag.BORE_SIZE, Flag.BORE_OVAL, Flag.BORE_TAPER, Flag.BELL_MOUTH)


def _next(
    found: tuple[Judged, ...],
    fitted: tuple[Judged, ...],
    missing: tuple[Place, ...],
    orders: Mapping[Kind, Order],
) -> tuple[Step, tuple[Place, ...]]:
    """The first thing that is left to do, and the bearings it is about."""
    measured = [j for j in (*found, *fitted) if j.clearance is not None]

    def marked(every: tuple[Judged, ...], *flags: Flag) -> tuple[Place, ...]:
        return tuple(j.place for j in every if j.has(*flags))

    wrong = marked(found, Flag.NO_ROOM, Flag.SLIP) or marked(fitted, Flag.SLIP)
    if wrong:
        return Step.CHECK, wrong
    if not measured and not _by_sizes(found, orders):
        return Step.MEASURE, missing
    if fitted:
        return _after_fitting(found, fitted, missing)
    unclear = tuple(
        j.place for j in found if j.has(Flag.AT_LIMIT) and by_strip(j) and not j.has(Flag.GRIND)
    )
    worn = tuple(p for order in orders.values() for p in order.unclear)
    needs = tuple(j.place for j in found if j.has(Flag.GRIND) and _unsized(orders, j))
    steps = (
        (Step.CAPS, held_by(orders, Hold.CAPS)),
        (Step.LINE, held_by(orders, Hold.BORES)),
        (Step.CHECK, marked(found, Flag.IMPOSSIBLE, Flag.DISAGREE)),
        (Step.MISSING, missing),
        (Step.SHELL_BACKS, held_by(orders, Hold.SHELL_BACKS)),
        (Step.JOURNAL, worn),
        (Step.MICROMETER, unclear),
        (Step.STANDARD, needs),
        (Step.CRANK, marked(found, Flag.BELOW_LAST)),
        (Step.BORES, marked(found, *RESIZE)),
        (Step.GRIND, marked(found, Flag.GRIND)),
    )
    for step, places in steps:
        if places:
            return step, places
    return Step.SHELLS, tuple(j.place for j in found)


def held_by(orders: Mapping[Kind, Order], hold: Hold) -> tuple[Place, ...]:
    """The bearings whose shells wait for this."""
    return tuple(p for o in orders.values() if o.held and o.held[0] is hold for p in o.held[1])


def _unsized(orders: Mapping[Kind, Order], one: Judged) -> bool:
    order = orders.get(one.place.kind)
    return order is not None and order.needs_standard


def _after_fitting(
    found: tuple[Judged, ...], fitted: tuple[Judged, ...], missing: tuple[Place, ...]
) -> tuple[Step, tuple[Place, ...]]:
    """With new parts in: those out of limits, else those not measured yet, else the sign-off."""
    wrong = tuple(j.place for j in fitted if j.marks)
    if wrong:
        return Step.REFIT, wrong
    built = {j.place for j in fitted if j.clearance is not None}
    every = {*missing, *(j.place for j in found)}
    left = tuple(sorted(p for p in every if not any(b.covers(p) for b in built)))
    return (Step.FITTED, left) if left else (Step.SIGN_OFF, ())

"""The bearings of a case: ``[[bearing]]`` entries put together, and what they make known.

A clearance stands in the file once: as a reading of a bearing, or as a measured finding. Whichever
it is, the table of bearings and everything that uses measured clearances has it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from statistics import fmean
from typing import Any

from diagnose.case.bearing_counts import count_of
from diagnose.case.bearing_values import (
    FIELDS,
    FieldError,
    along,
    count_in,
    grid_of,
    place_of,
    unit_of,
    wrong_count,
)
from diagnose.case.case import (
    BearingGroup,
    BearingTable,
    Case,
    FindingRecord,
    MeasuredBearing,
    Measurement,
    TaskRecord,
)
from diagnose.case.file_faults import Faults
from diagnose.case.schema import BearingEntry, Checked, FindingEntry, WorkEntry
from diagnose.errors import nearest, plain
from diagnose.fits.bearing import (
    Clearance,
    Grid,
    Kind,
    Place,
    Readings,
    clearances,
    form_of,
    slip_in,
)
from diagnose.inference.chaining import Observation
from knowledge.book import Book
from knowledge.judging import sure_beyond
from knowledge.limits import Limit
from knowledge.model import Measure, Quantity, Stage, State
from knowledge.stations.bearings import sizes
from knowledge.stations.bearings.findings_measured import (
    JOURNAL_NOT_TRUE,
    MEASURED_MAIN_CLEARANCE,
    MEASURED_ROD_CLEARANCE,
)
from knowledge.stations.bearings.quantities import (
    MAIN_DIAMETER,
    MOST_BORE_OVAL,
    MOST_BORE_TAPER,
    MOST_JOURNAL_OVAL,
    MOST_JOURNAL_TAPER,
    ROD_DIAMETER,
)
from knowledge.stations.bearings.tasks import MAIN_CLEARANCE_FITTED, ROD_CLEARANCE_FITTED
from knowledge.units import INCH, LENGTH, MM, show, unit_named
from knowledge.work import Task

DIAMETERS: Mapping[Kind, Quantity] = {Kind.MAIN: MAIN_DIAMETER, Kind.ROD: ROD_DIAMETER}
MEASURES: Mapping[Kind, Measure] = {
    Kind.MAIN: MEASURED_MAIN_CLEARANCE,
    Kind.ROD: MEASURED_ROD_CLEARANCE,
}
TASKS: Mapping[Kind, Task] = {Kind.MAIN: MAIN_CLEARANCE_FITTED, Kind.ROD: ROD_CLEARANCE_FITTED}
SURELY_NOT_TRUE = 0.95  #: a journal counts as out of true from this probability (judgement)
_JOURNAL_LIMITS = (MOST_JOURNAL_OVAL, MOST_JOURNAL_TAPER)
_BORE_LIMITS = (MOST_BORE_OVAL, MOST_BORE_TAPER)
ON_CARD = "journal_out_of_round"  #: the figure of a card
_FINE = ("strip", "wanted", "crush")  #: their unit is that of a clearance
_SIZES = ("bore", "inside", "journal", "new_journal", "new_bore")


@dataclass(slots=True)
class _Gathered:
    """Fields given so far for one bearing or group, the last of each."""

    texts: dict[str, str] = field(default_factory=dict)
    grids: dict[str, Grid] = field(default_factory=dict)
    use: str = ""
    count: int = 0
    last: BearingEntry | None = None

    def flat(self, name: str) -> tuple[float, ...]:
        """The figures of a field, in order."""
        return tuple(v for place in self.grids.get(name, ()) for v in place)


Key = tuple[Place | Kind, bool]


def bearing_table(entries: Iterable[Checked[BearingEntry]], faults: Faults) -> BearingTable:
    """The bearings as their entries give them; what cannot be is added to ``faults``."""
    gathered: dict[Key, _Gathered] = {}
    for each in sorted(entries, key=lambda e: e.table.no):
        place = _place(each, faults)
        if place is not None:
            key = (place, each.table.at == "build" and isinstance(place, Place))
            _gather(each, place, gathered.setdefault(key, _Gathered()), faults)
    groups = {k: g for (k, _), g in gathered.items() if isinstance(k, Kind)}
    return BearingTable(
        found=_bearings(gathered, groups, False),
        fitted=_bearings(gathered, groups, True),
        groups={kind: _group(g) for kind, g in groups.items()},
    )


def _place(each: Checked[BearingEntry], faults: Faults) -> Place | Kind | None:
    if "what" in each.broken:
        return None
    place = place_of(each.table.what)
    if place is None:
        near = nearest(each.table.what, ("main 1", "rod 1", "mains", "rods"))
        right = near or " Write main 1, rod 1, mains or rods."
        faults.add(f"{each.where}: no such bearing '{plain(each.table.what, 40)}'.{right}")
    return place


def _gather(
    each: Checked[BearingEntry], place: Place | Kind, into: _Gathered, faults: Faults
) -> None:
    entry = each.table
    for name, rule in FIELDS.items():
        text = getattr(entry, name)
        if text is None:
            continue
        if not (rule.each if isinstance(place, Place) else rule.group):
            right = "mains or rods" if isinstance(place, Place) else f"one bearing, {place.value} 1"
            faults.add(f"{each.where}: {name} ({rule.says}) is of {right}")
            continue
        try:
            into.grids[name] = grid_of(name, text)
            into.texts[name] = text
        except FieldError as fault:
            faults.add(f"{each.where}: {name}: {fault}")
    into.use = entry.use or into.use
    if entry.count is not None:
        count = count_in(entry.count)
        if count is None or isinstance(place, Place):
            faults.add(f"{each.where}: count: {wrong_count(entry.count, place)}")
        into.count = count or into.count
    into.last = entry


def _bearings(
    gathered: Mapping[Key, _Gathered], groups: Mapping[Kind, _Gathered], fitted: bool
) -> dict[Place, MeasuredBearing]:
    """The bearings found or fitted, by place; what their group gives fills in."""
    found = {}
    for (place, built), own in gathered.items():
        if built is fitted and isinstance(place, Place):
            group = groups.get(place.kind, _Gathered()) if not fitted else _Gathered()
            if fitted:  # the housing is the same unless it was measured again
                as_found = gathered.get((place, False), _Gathered())
                own.grids.setdefault("bore", as_found.grids.get("bore", ()))
            found[place] = _bearing(place, own, group)
    return dict(sorted(found.items()))


def _bearing(place: Place, own: _Gathered, group: _Gathered) -> MeasuredBearing:
    def flat(name: str) -> tuple[float, ...]:
        return own.flat(name) or group.flat(name)

    readings = Readings(
        bore=own.grids.get("bore", ()),
        inside=own.grids.get("inside", ()),
        journal=own.grids.get("journal", ()),
        shell=flat("shell"),
        strip=own.flat("strip"),
        crush=flat("crush"),
        spread=flat("spread"),
        undersize=(flat("undersize") or (0.0,))[0],
    )
    texts = {**group.texts, **own.texts}
    unit, fine = _unit(_SIZES, texts), _unit(_FINE, texts)
    return MeasuredBearing(place, readings, own.last, unit, fine or unit, texts)


def _unit(names: Iterable[str], texts: Mapping[str, str]) -> str:
    """The unit of the first of these fields that was given."""
    return next((u for n in names if (u := unit_of(texts.get(n, "")))), "")


def _group(own: _Gathered) -> BearingGroup:
    names = ("new_journal", "new_bore", "new_shell", "wanted", "sizes")
    flat: dict[str, Any] = {name: own.flat(name) for name in names}
    return BearingGroup(**flat, use=own.use, count=own.count, texts=dict(own.texts))


def journal_sizes(table: BearingTable) -> dict[str, float]:
    """The diameter of main journals and crankpins [m] by quantity id: as new, else the largest."""
    found = {}
    for kind, quantity in DIAMETERS.items():
        group = table.groups.get(kind)
        mine = [b.readings for p, b in table.found.items() if p.kind is kind]
        means = [f.mean for r in mine if (f := form_of(r.journal)) and slip_in(r) is None]
        if group is not None and group.new_journal:
            found[quantity.id] = fmean(group.new_journal)
        elif means:
            found[quantity.id] = max(means)
    return found


# --------------------------------------------------------------------- one value, known everywhere
def fitted_clearances(case: Case) -> tuple[Measurement, ...]:
    """The clearances measured with the new parts, as measured values."""
    best = ((b, _best(b)) for b in case.bearings.fitted.values())
    return tuple(_measurement(b, c) for b, c in best if c)


def with_clearances(case: Case, book: Book) -> Case:
    """The case with every clearance in its table of bearings, and those of the table measured."""
    if not case.bearings.found and not case.bearings.fitted and not _recorded_anywhere(case):
        return case
    own = {p: c for p, b in case.bearings.found.items() if (c := _best(b))}
    built = {p: c for p, b in case.bearings.fitted.items() if (c := _best(b))}
    measured = [m for m in case.measurements if _place_measured(m, case) not in own]
    works = [w for w in case.task_records if _place_worked(w, case) not in built]
    measured += [_measurement(case.bearings.found[p], c) for p, c in own.items()]
    works += [_task_record(case.bearings.fitted[p], c) for p, c in built.items()]
    found = dict(case.bearings.found)
    for m in case.measurements:
        place = _place_measured(m, case)
        if place is not None and place not in own:
            found[place] = _recorded(place, found.get(place), m.value, m.entry.value or "")
    fitted = dict(case.bearings.fitted)
    for w in case.task_records:
        place = _place_worked(w, case)
        if place is not None and place not in built and w.value is not None:
            fitted[place] = _recorded(place, fitted.get(place), w.value, w.entry.value or "")
    table = replace(
        case.bearings, found=dict(sorted(found.items())), fitted=dict(sorted(fitted.items()))
    )
    records = (*case.finding_records, *_not_true(case, book))
    return replace(
        case,
        measurements=tuple(measured),
        task_records=tuple(works),
        finding_records=records,
        bearings=table,
    )


def _best(bearing: MeasuredBearing) -> Clearance | None:
    """The most exact clearance of a bearing; None without one that can be."""
    found = next(iter(clearances(bearing.readings)), None)
    low, high = MEASURES[bearing.place.kind].quantity.plausible
    return found if found is not None and low <= found.value <= high else None


def _recorded_anywhere(case: Case) -> bool:
    return any(_place_measured(m, case) for m in case.measurements) or any(
        _place_worked(w, case) for w in case.task_records
    )


def _place_measured(m: Measurement, case: Case) -> Place | None:
    kind = next((k for k, measure in MEASURES.items() if measure is m.measure), None)
    return _of_kind(m.entry.where, kind, case)


def _place_worked(w: TaskRecord, case: Case) -> Place | None:
    kind = next((k for k, task in TASKS.items() if task is w.task), None)
    return _of_kind(w.entry.where, kind, case)


def _of_kind(where: str, kind: Kind | None, case: Case) -> Place | None:
    """The bearing of this kind that a place on the engine names: "main 3", "3" alone, "front main".

    All of them where it names none.
    """
    if kind is None:
        return None
    if not where.strip() or place_of(where) is kind:
        return Place(kind, 0)
    if (named := along(where, kind, count_of(case, kind))) is not None:
        return named
    text = where.strip().lower().removeprefix("no.").removeprefix("no ").removeprefix("#").strip()
    place = place_of(f"{kind.value} {text}" if text.isdecimal() else where)
    return place if isinstance(place, Place) and place.kind is kind else None


def _recorded(
    place: Place, old: MeasuredBearing | None, value: float, text: str
) -> MeasuredBearing:
    """A bearing with a clearance that stands as a finding or task; taken as by gauge strip."""
    bearing = old or MeasuredBearing(place, Readings(), None)
    unit = unit_of(text)
    return replace(
        bearing,
        readings=replace(bearing.readings, strip=(value,)),
        fine_unit=unit or bearing.fine_unit,
        texts={**bearing.texts, "strip": text},
    )


def _measurement(bearing: MeasuredBearing, clearance: Clearance) -> Measurement:
    measure = MEASURES[bearing.place.kind]
    learned = bearing.entry.learned if bearing.entry else None
    made = FindingEntry(what=measure.id, learned=learned, **_as_entered(bearing, clearance))
    return Measurement(made, measure, clearance.value, Stage(learned or "opened"))


def _task_record(bearing: MeasuredBearing, clearance: Clearance) -> TaskRecord:
    task = TASKS[bearing.place.kind]
    made = WorkEntry(what=task.id, **_as_entered(bearing, clearance))
    return TaskRecord(made, task, clearance.value)


def _as_entered(bearing: MeasuredBearing, clearance: Clearance) -> dict[str, Any]:
    """A clearance as the fields of an entry: those of the bearing's own, its value and place."""
    entry = bearing.entry or BearingEntry(no=1, what=bearing.place.says)
    return {
        **{name: getattr(entry, name) for name in ("no", "when", "by", "note")},
        "value": shown(clearance.value, bearing.fine_unit),
        "where": bearing.place.says,
    }


def shown(value: float, unit: str, finer: int = 0) -> str:
    """A length with the decimals it was measured to: 0.0001 in, 0.1 thou or 0.001 mm.

    ``finer``: so many more.

    >>> shown(53.3e-6, "in"), shown(53.3e-6, "thou"), shown(53.3e-6, "mm")
    ('0.0021 in', '2.1 thou', '0.053 mm')
    """
    named = unit_named(unit, LENGTH) if unit else None
    factor = named.factor if named else INCH
    name = named.names[0] if named else "in"
    decimals = (4 if factor == INCH else 3 if factor == MM else 1) + finer
    if factor not in (INCH, MM, INCH * 1e-3):
        return show(value, LENGTH, name, digits=6)
    text = f"{value / factor:.{decimals}f}"
    return f"{text.removeprefix('-') if float(text) == 0 else text} {name}"


def form_limit(case: Case, limit: Limit) -> float:
    """The most a journal or bore may be out of true [m]: the engine's own figure first.

    A card has one figure for journals, out of round or tapered; a bore's figure for one form
    goes before another engine's for the other.
    """
    if limit in _BORE_LIMITS and limit not in case.limits:
        own = [case.limits[other] for other in _BORE_LIMITS if other in case.limits]
        if own:
            return own[0]
    card = case.card.values.get(ON_CARD) if case.card else None
    if limit in _JOURNAL_LIMITS and limit not in case.limits and card and card.high is not None:
        return card.high
    return case.limit(limit)


def _not_true(case: Case, book: Book) -> list[FindingRecord]:
    """The finding that a journal is not true, where readings leave no doubt and nobody said so."""
    if any(r.finding is JOURNAL_NOT_TRUE for r in case.finding_records):
        return []
    if JOURNAL_NOT_TRUE.id not in book.findings:
        return []
    for bearing in case.bearings.found.values():
        form = form_of(bearing.readings.journal)
        entry = bearing.entry
        if form is None or entry is None or slip_in(bearing.readings):
            continue
        error = sizes.JOURNAL_ERROR * 2**0.5  # of a difference of two readings
        for off, limit in zip((form.oval, form.taper), _JOURNAL_LIMITS, strict=True):
            sure = 0.0 if off is None else sure_beyond(off, form_limit(case, limit), error)
            if sure >= SURELY_NOT_TRUE:
                made = FindingEntry(
                    no=entry.no,
                    when=entry.when,
                    by=entry.by,
                    what=JOURNAL_NOT_TRUE.id,
                    state="present",
                    sure=round(sure, 2),
                    where=bearing.place.says,
                )
                seen = Observation(State.PRESENT, sure)
                stage = Stage(entry.learned or JOURNAL_NOT_TRUE.stage)
                return [FindingRecord(made, JOURNAL_NOT_TRUE, seen, stage)]
    return []

"""The document of ``bearings``: clearances, what is wrong, what to order, what to do next."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from diagnose.bearings.judging import Judged
from diagnose.bearings.orders import Choice, Order
from diagnose.bearings.pressure import Option
from diagnose.bearings.table import Bearings
from diagnose.bearings.targets import Target
from diagnose.case.bearings import shown
from diagnose.circuit.band import Band
from diagnose.fits.bearing import Clearance, Place
from diagnose.output.as_json import IF_GIVEN, NOT_IN_JSON
from diagnose.output.documents.bearing_notes import (
    grinding,
    held,
    in_doubt,
    instruments,
    made_sizes,
    notes,
)
from diagnose.output.documents.bearing_steps import next_lines
from diagnose.output.documents.bearing_verdicts import count_said, verdict
from diagnose.output.documents.bearing_words import (
    SIGMAS,
    figure,
    named_places,
    of_mark,
    shell,
    shells,
    units_for,
    units_of,
)
from diagnose.output.documents.limits import source_title
from diagnose.output.documents.named import UNTITLED
from diagnose.output.documents.other_size import other_size
from diagnose.output.scale import scale_of
from knowledge.model import Source
from knowledge.units import PSI, TEMPERATURE, show


@dataclass(frozen=True, kw_only=True)
class BearingRow:
    """One bearing, lengths in mm; ``None``: not measured."""

    bearing: str
    stage: str  #: found, or fitted with the new parts
    clearance_mm: float | None
    error_mm: float | None  #: one standard deviation
    way: str | None
    journal_mm: float | None
    journal_oval_mm: float | None
    journal_taper_mm: float | None
    bore_oval_mm: float | None
    bore_taper_mm: float | None
    flags: tuple[str, ...]
    says: tuple[str, ...]  #: what is wrong, in full
    clearance: str = field(metadata=NOT_IN_JSON)  #: with its error, in the unit typed
    oval: str = field(metadata=NOT_IN_JSON)
    taper: str = field(metadata=NOT_IN_JSON)
    verdict: str = field(metadata=NOT_IN_JSON)  #: in a few words
    rank: int = field(metadata=NOT_IN_JSON)
    arithmetic: tuple[str, ...] = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class AdviceRow:
    """What one source wants of the clearance."""

    low_mm: float | None
    high_mm: float | None
    says: str
    source: str
    key: str = field(metadata=NOT_IN_JSON)
    band: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class TargetRow:
    """The clearance wanted of one kind [mm], its limits, every source side by side."""

    kind: str
    low_mm: float
    high_mm: float
    least_mm: float
    most_mm: float
    says: str
    source: str
    advice: tuple[AdviceRow, ...]
    line: str = field(metadata=NOT_IN_JSON)
    brief: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class OrderRow:
    """Shells for some bearings [mm]; ``journal_mm``: what to grind each to."""

    bearings: tuple[str, ...]
    undersizes_mm: tuple[float, float]  #: of both shells
    clearance_mm: tuple[float, float]  #: least and most of what they give
    reached: bool  #: whether that is what is wanted
    journal_mm: tuple[float, ...] | None = field(metadata=IF_GIVEN)
    journals_between_mm: tuple[float, float] | None = field(metadata=IF_GIVEN)
    says: str = field(metadata=NOT_IN_JSON)
    brief: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class PressureRow:
    """Hot idle pressure of one choice [psi]."""

    choice: str
    psi: Band
    figure: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class BearingsDocument:
    """Everything ``bearings`` answers."""

    case: str | None
    title: str
    bearings: tuple[BearingRow, ...]
    missing: tuple[str, ...]
    targets: tuple[TargetRow, ...]
    orders: tuple[OrderRow, ...]
    notes: tuple[str, ...]
    unclear: tuple[str, ...]  #: bearings too wide of which shell or journal may be worn
    held: tuple[str, ...]  #: what to settle before any shell of a kind is ordered
    hot_idle: tuple[PressureRow, ...]
    hot_idle_at: str
    other_size: str  #: that those pressures are of another engine; may be empty
    next_step: str
    next: tuple[str, ...]  #: a sentence, then what to type
    count: str = field(metadata=NOT_IN_JSON)  #: how many were measured or follow from sizes
    grinding: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    made_sizes: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    instruments: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    doubt: str = field(metadata=NOT_IN_JSON)  #: which may be of the new shells; empty: none


def bearings_document(found: Bearings, path: str) -> BearingsDocument:
    """Build the document of a case's bearings; ``path``: of the case, for commands."""
    case = found.case
    rows = [_row(one, found) for one in found.shown]
    pressures = found.pressures
    scale = scale_of(case)
    return BearingsDocument(
        case=str(case.path) if case.path else None,
        title=case.job.title.strip() or UNTITLED,
        bearings=tuple(rows),
        missing=tuple(p.says for p in found.missing),
        targets=tuple(_target(t, found) for t in found.targets.values() if t is not None),
        orders=tuple(r for order in found.orders.values() for r in order_rows(order, found)),
        notes=tuple(notes(found)),
        unclear=tuple(p.says for o in found.orders.values() for p in o.unclear),
        held=tuple(held(found)),
        hot_idle=tuple(
            PressureRow(
                choice=_choice_in_words(row.option, found),
                psi=Band(
                    *(round(p / PSI, 1) for p in (row.band.low, row.band.mean, row.band.high))
                ),
                figure=scale.range(row.band),
            )
            for row in pressures.rows
        ),
        hot_idle_at=(
            f"{pressures.rpm:.0f} rpm, oil {show(pressures.temperature, TEMPERATURE)}"
            if pressures.rows
            else ""
        ),
        other_size=other_size(case) if pressures.rows else "",
        next_step=found.next_step.value,
        next=next_lines(found, path),
        count=count_said(found),
        grinding=tuple(grinding(found)),
        made_sizes=tuple(made_sizes(found)),
        instruments=tuple(instruments(found)),
        doubt=in_doubt(found),
    )


def _choice_in_words(option: Option, found: Bearings) -> str:
    """A choice in words, shells by their size."""
    if option.shells is None:
        return option.says
    size, _ = units_for(option.shells.kind, found)
    return f"{option.says} {shell(option.shells.undersize, size)}"


def _mm(value: float | None) -> float | None:
    return None if value is None else round(value * 1e3, 5)


def _row(one: Judged, found: Bearings) -> BearingRow:
    size, fine = units_of(one, found)
    best, journal, bore = one.clearance, one.journal, one.bore
    return BearingRow(
        bearing=one.place.says,
        stage="fitted" if one in found.fitted else "found",
        clearance_mm=_mm(best.value if best else None),
        error_mm=_mm(best.error if best else None),
        way=best.way.value if best else None,
        journal_mm=_mm(journal.mean if journal else None),
        journal_oval_mm=_mm(journal.oval if journal else None),
        journal_taper_mm=_mm(journal.taper if journal else None),
        bore_oval_mm=_mm(bore.oval if bore else None),
        bore_taper_mm=_mm(bore.taper if bore else None),
        flags=tuple(m.flag.value for m in one.marks),
        says=tuple(of_mark(m, fine, long=True) for m in one.marks),
        clearance=_with_error(best, fine) if best else "",
        oval=_or_dash(journal.oval if journal else None, size),
        taper=_or_dash(journal.taper if journal else None, size),
        verdict=verdict(one, found, fine),
        rank=one.rank,
        arithmetic=tuple(_arithmetic(one, size, fine)),
    )


def _with_error(best: Clearance, unit: str) -> str:
    value, name = shown(best.value, unit).split(" ", 1)
    return f"{value} ±{figure(SIGMAS * best.error, unit)} {name}"


def _or_dash(value: float | None, unit: str) -> str:
    return "-" if value is None else figure(value, unit)


def _adds_up(clearance: Clearance, unit: str) -> bool:
    """Whether the steps, rounded as they are shown, give the clearance as it is shown."""
    parts = sum(s.sign * float(figure(s.value, unit)) for s in clearance.steps)
    return abs(parts - float(figure(clearance.value, unit))) < 1e-6


def _arithmetic(one: Judged, size: str, fine: str) -> Iterator[str]:
    """Line by line: every way it was measured, and the form of journal and bore."""
    for each in one.clearances:
        unit = size if len(each.steps) > 1 else fine
        finer = 0 if unit != fine or _adds_up(each, unit) else 1
        sum_ = " ".join(
            f"{'- ' if s.sign < 0 else ''}{s.says} {figure(s.value, unit, finer)}"
            for s in each.steps
        )
        yield f"{each.way.value}: {sum_} = {_with_error(each, fine)}"
        if each.most - each.least > 1e-9:
            yield f"along it {figure(each.least, fine)} to {shown(each.most, fine)}"
    for name, form in (("journal", one.journal), ("bore", one.bore)):
        if form is not None:
            parts = [
                f"{label} {figure(value, size)}"
                for label, value in (
                    ("out of round", form.oval),
                    ("end to end", form.taper),
                    ("ends over middle", form.waist),
                )
                if value is not None
            ]
            yield f"{name} {figure(form.least, size)} to {shown(form.most, size)}" + "".join(
                f", {p}" for p in parts
            )
    yield from (of_mark(m, fine, long=True) for m in one.marks)


def _source(source: Source | None) -> str:
    return "this engine's own figure" if source is None else source_title(source)


def _target(target: Target, found: Bearings) -> TargetRow:
    size, fine = units_for(target.kind, found)
    band = f"{figure(target.low, fine)} to {shown(target.high, fine)}"
    own = "this engine's limit" if target.own_limit else "usual limit"
    said = target.says
    if target.source is not None and target.diameter is not None:
        kind = "" if target.of_this_engine else "usual "
        said += f", {kind}journal {shown(target.diameter, size)}"
    return TargetRow(
        kind=target.kind.plural,
        low_mm=round(target.low * 1e3, 5),
        high_mm=round(target.high * 1e3, 5),
        least_mm=round(target.least * 1e3, 5),
        most_mm=round(target.most * 1e3, 5),
        says=target.says,
        source=_source(target.source),
        advice=tuple(
            AdviceRow(
                low_mm=_mm(a.low),
                high_mm=_mm(a.high),
                says=a.says,
                source=_source(a.source),
                key=a.source.key if a.source else "case",
                band=_band(a.low, a.high, fine),
            )
            for a in target.advice
        ),
        line=f"{target.kind.plural} {band} ({said}); {own} {shown(target.most, fine)}",
        brief=f"{target.kind.plural} {band}, limit {figure(target.most, fine)}",
    )


def _band(low: float | None, high: float | None, unit: str) -> str:
    if low is None:
        return "open" if high is None else f"to {shown(high, unit)}"
    if high is None:
        return f"from {shown(low, unit)}"
    return f"{figure(low, unit)} to {shown(high, unit)}"


def order_rows(order: Order, found: Bearings) -> Iterator[OrderRow]:
    """One row for each pair of shells, the commonest first."""
    by_pair: dict[tuple[float, float], list[Choice]] = {}
    for choice in order.choices:
        key = (round(choice.pair.thin, 9), round(choice.pair.thick, 9))
        by_pair.setdefault(key, []).append(choice)
    size, fine = units_for(order.kind, found)
    for choices in sorted(by_pair.values(), key=len, reverse=True):
        yield _order_row(order, choices, size, fine)


def _order_row(order: Order, choices: list[Choice], size: str, fine: str) -> OrderRow:
    pair = choices[0].pair
    gaps = [c.clearance for c in choices]
    journals = [c.journal for c in choices if c.journal is not None]
    who = f"{named_places(c.place for c in choices)}: "
    says, brief = who + shells(pair, order.kind, size), who + shells(pair, order.kind, size, True)
    ends = f"; gives {_spread(gaps, fine)}"
    if not all(c.reached for c in choices):
        ends += ", the nearest available"
    if journals:
        to = _journals(choices, size)
        if order.grind is not None:
            to += f" ({figure(order.grind[0], size)} to {figure(order.grind[1], size)})"
        ends = f", journals ground to {to}{ends}"
    return OrderRow(
        bearings=tuple(c.place.says for c in choices),
        undersizes_mm=(round(pair.thin * 1e3, 5), round(pair.thick * 1e3, 5)),
        clearance_mm=(round(min(gaps) * 1e3, 5), round(max(gaps) * 1e3, 5)),
        reached=all(c.reached for c in choices),
        journal_mm=tuple(round(j * 1e3, 5) for j in journals) or None,
        journals_between_mm=_ends_in_mm(order.grind),
        says=says + ends,
        brief=brief + ends,
    )


def _ends_in_mm(ends: tuple[float, float] | None) -> tuple[float, float] | None:
    return (round(ends[0] * 1e3, 5), round(ends[1] * 1e3, 5)) if ends else None


def _journals(choices: list[Choice], unit: str) -> str:
    """The diameter each journal is ground to, alike ones together."""
    by_size: dict[str, list[Place]] = {}
    for c in choices:
        if c.journal is not None:
            by_size.setdefault(shown(c.journal, unit), []).append(c.place)
    if len(by_size) == 1:
        return next(iter(by_size))
    return ", ".join(f"{size} ({named_places(p)})" for size, p in by_size.items())


def _spread(values: list[float], unit: str) -> str:
    low, high = figure(min(values), unit), shown(max(values), unit)
    return high if high.split()[0] == low else f"{low} to {high}"

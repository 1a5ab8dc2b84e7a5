"""The oil's part of ``sizing``: what each grade gives, and the thinnest that does; SI units."""

from __future__ import annotations

from dataclasses import dataclass, field

from diagnose.case.units import JobUnits, units_of
from diagnose.circuit.band import Band
from diagnose.circuit.deviations import OIL_GRADE, oil_grade, why_wrong
from diagnose.circuit.oil_choice import OilChoice
from diagnose.circuit.sizing import Sizing
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.thicker_oil import until_repaired, what_it_gives
from diagnose.output.scale import Scale
from knowledge.pressure.quantities import STOP_IDLE_PRESSURE
from knowledge.units import LENGTH, show

VERY_HOT = 383.15  #: K: 110 °C, oil on a hot day at work


@dataclass(frozen=True, kw_only=True)
class SizingOil:
    """One grade: pressures [Pa], and the share of plausible engines that it is enough for."""

    grade: str
    in_it: bool
    right: bool  #: the grade that should be in it, where another is
    idle: Band
    speed: Band
    cold: Band
    chance: float
    pump_fills_cold: bool
    row: tuple[str, ...] = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class SizingOilNeed:
    """The thinnest grade that does with mains and rods so much wider [m], oil so hot [K]."""

    wider: float
    oil_temperature: float
    grade: str | None
    idle: Band | None
    clearance: str = field(metadata=NOT_IN_JSON)  #: as shown
    cell: str = field(metadata=NOT_IN_JSON)


def sizing_oil(oil: OilChoice, scale: Scale) -> SizingOil:
    """Build the line of one grade."""
    cold = scale.one(oil.cold.mean) + ("" if oil.pump_fills_cold else "; pump not filled")
    return SizingOil(
        grade=oil.grade,
        in_it=oil.in_it,
        right=oil.right,
        idle=oil.idle,
        speed=oil.speed,
        cold=oil.cold,
        chance=oil.chance,
        pump_fills_cold=oil.pump_fills_cold,
        row=(
            f"{oil.grade}{' (in it)' if oil.in_it else ' (right)' if oil.right else ''}",
            scale.ends(oil.idle),
            scale.ends(oil.speed),
            cold,
        ),
    )


def oil_needs(found: Sizing, scale: Scale) -> tuple[SizingOilNeed, ...]:
    """Build the table of the thinnest grades."""
    units = units_of(found.case)
    return tuple(
        SizingOilNeed(
            wider=n.wider,
            oil_temperature=n.temperature,
            grade=n.grade,
            idle=n.idle,
            clearance=_wider_in_words(n.wider, units),
            cell=f"{n.grade} {scale.figure(n.idle.mean)}" if n.grade and n.idle else "none",
        )
        for n in found.needs
    )


def _wider_in_words(si: float, units: JobUnits) -> str:
    if si == 0.0:
        return "as they are"
    return f"{'+' if si > 0 else '-'}{show(abs(si), LENGTH, units.shown_in(LENGTH), 2)}"


@dataclass(frozen=True, slots=True)
class UntilRepaired:
    """What the next thicker oil does until the repair; both empty where none is needed."""

    whole: str = ""
    brief: str = ""  #: the same in one sentence


def until_the_repair(found: Sizing, scale: Scale) -> UntilRepaired:
    """Say what the next thicker oil does until the repair."""
    if found.thicker is None:
        return UntilRepaired()
    has, gets = found.thicker
    stop = found.case.limit(STOP_IDLE_PRESSURE)
    at = f"{found.target.rpm:.0f} rpm hot as it leaks now"
    wanted, wrong = found.target.pressure, found.forecast.found
    return UntilRepaired(
        whole=until_repaired(gets.grade, at, has.idle, gets.idle, wanted, stop, wrong, scale),
        brief=what_it_gives(gets.grade, "idle", has.idle, gets.idle, wanted, scale),
    )


def thinnest_in_words(found: Sizing, scale: Scale) -> str:
    """The thinnest grade that keeps the pressure as hot as it was, and hotter."""
    pressure, thinnest = scale.one(found.target.pressure), found.thinnest
    hotter = next(n for n in found.needs if n.wider == 0.0 and n.temperature == VERY_HOT)
    after = "Thinnest" if found.leaking is None else "With leaks put right, thinnest"
    says = (
        f"{after} that keeps {pressure} in nine engines of ten: {thinnest.grade if thinnest else 'none'} at "
        f"{scale.heat(found.hot)}, {hotter.grade or 'none'} at {scale.heat(VERY_HOT)}"
    )
    if wrong := next((d for d in found.forecast.found if d.id == OIL_GRADE), None):
        why = why_wrong(found.case, oil_grade(found.case))
        return f"{says}. {wrong.found} in it: {why}"
    maker = found.case.card.oil_grade if found.case.card else ""
    return f"{says}; the maker's is {maker}" if maker else f"{says}; the maker's grade comes first"

"""The document of ``sizing``: pump, relief, spring and oil chosen with figures; SI units."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from diagnose.case.units import JobUnits, units_of
from diagnose.circuit.band import Band
from diagnose.circuit.forecast import HORSEPOWER
from diagnose.circuit.pump_supply import MARGIN, Supply
from diagnose.circuit.sizing import AS_IT_IS, NOW, PUMP, RELIEF, RIGHT, Choice, Sizing
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.documents.other_size import other_size
from diagnose.output.documents.relief_spring import SizingSpring, SpringUnits, spring_document
from diagnose.output.documents.sizing_oil import (
    SizingOil,
    SizingOilNeed,
    oil_needs,
    sizing_oil,
    thinnest_in_words,
    until_the_repair,
)
from diagnose.output.lines import as_typed
from diagnose.output.scale import Scale, scale_of
from knowledge.units import CC, TORQUE, show

LITRE_A_MINUTE = 1e-3 / 60  #: m3/s
BRANCHES = {
    "mains": "main bearings",
    "rods": "rod bearings",
    "cams": "cam bearings",
    "lifters": "lifter bores",
    "jets": "jets and metering holes",
    "other": "what is not listed",
    "open_orifice": "an open hole",
    "hydrodynamic": "what turning journals carry out",
}
NAMED = {
    NOW: "as it leaks now",
    RIGHT: "leaks put right",
    AS_IT_IS: "as it is",
    RELIEF: "relief {setting}",
    PUMP: "pump {more}",
}
LEAKS_MUCH = 0.8  #: of the pressure without leaks, from which down they come first
TOO_WIDE = 0.5  #: from this share of the oil on, one branch is named alone


@dataclass(frozen=True, kw_only=True)
class SizingSupply:
    """Flow the pump delivers and the engine takes at the pressure wanted [m3/s]; shares 0 to 1."""

    delivers: Band
    takes: Band
    slips: Band
    spare: Band
    chance: float
    enough: bool | None  #: None: plausible engines differ
    taken_by: dict[str, float]
    least_pump: Band  #: [m3 a turn]
    this_pump: float
    bleeds: bool
    says: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class SizingChoice:
    """One choice: pressures [Pa], power and heat [W], torque [N·m], cavitation from [rpm]."""

    id: str
    relief_setting: float
    displacement: float
    larger: float
    idle: Band
    speed: Band
    cold: Band
    power: Band
    relief_heat: Band
    torque: Band
    fills_to: Band | None
    fills_to_cold: Band | None
    row: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: as shown


@dataclass(frozen=True, kw_only=True)
class SizingDocument:
    """Everything ``sizing`` answers."""

    case: str | None
    title: str
    target_rpm: float
    target_pressure: float
    oil_hot: float  #: K
    oil_cold: float
    speed: float  #: rpm
    fits: bool  #: whether the circuit agrees with the readings
    pump: SizingSupply
    as_it_leaks: SizingSupply | None
    leak_first: str  #: why no other pump comes first; empty where the pump alone decides
    choices: tuple[SizingChoice, ...]
    oils: tuple[SizingOil, ...]
    thinnest_oil: str | None
    oil_needs: tuple[SizingOilNeed, ...]
    spring: SizingSpring
    wanted: str = field(metadata=NOT_IN_JSON)
    heads: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: of the table of choices
    oil_heads: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    need_heads: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    relief_at_idle: str = field(metadata=NOT_IN_JSON)
    oil_says: str = field(metadata=NOT_IN_JSON)
    other_size: str  #: that its figures are of another engine; may be empty
    oil_until: str  #: whether thicker oil carries it until the repair; empty where none is needed
    oil_gives: str  #: the same in one sentence
    unit: str = field(metadata=NOT_IN_JSON)  #: of pressure
    record: str = field(metadata=NOT_IN_JSON)  #: writes a bench test down
    do_next: str  #: what to do next
    next_command: str  #: and the command for it
    #: whether that command shows this document whole
    next_is_whole: bool = field(metadata=NOT_IN_JSON)


def sizing_document(found: Sizing) -> SizingDocument:
    """Build the document."""
    scale, units, case = scale_of(found.case), units_of(found.case), found.case
    heat = scale.heat
    until = until_the_repair(found, scale)
    at = f"{found.target.rpm:.0f} rpm, oil {heat(found.hot)}"
    pressure = scale.one(found.target.pressure)
    thinnest = found.thinnest
    path = as_typed(str(case.path or "CASE"))
    spring = spring_document(found.spring, scale, SpringUnits.of(case, found.spring))
    following = _next(found, spring, path)
    return SizingDocument(
        case=str(case.path) if case.path else None,
        title=case.job.title,
        target_rpm=found.target.rpm,
        target_pressure=found.target.pressure,
        oil_hot=found.hot,
        oil_cold=found.cold,
        speed=found.speed,
        fits=found.forecast.fits,
        pump=_supply(found.supply, pressure),
        as_it_leaks=_supply(found.now, pressure) if found.now else None,
        leak_first=_leak_first(found),
        choices=tuple(_choice(c, scale, units) for c in found.choices),
        oils=tuple(sizing_oil(o, scale) for o in found.oils),
        thinnest_oil=thinnest.grade if thinnest else None,
        oil_needs=oil_needs(found, scale),
        spring=spring,
        wanted=f"Wanted: {pressure} at {at}",
        heads=(
            f"{found.target.rpm:.0f} rpm",
            f"{found.speed:.0f} rpm",
            "power",
            "relief",
            "drive",
            "fills to",
        ),
        oil_heads=(
            f"{found.target.rpm:.0f} rpm",
            f"{found.speed:.0f} rpm",
            f"at pump, {heat(found.cold)}",
        ),
        need_heads=tuple(heat(n.temperature) for n in found.needs[:4]),
        relief_at_idle=_at_idle(found.choices, scale),
        oil_says=thinnest_in_words(found, scale),
        other_size=other_size(case),
        oil_until=until.whole,
        oil_gives=until.brief,
        unit=scale.unit,
        record=f'diagnose record {path} relief_opens_at="{scale.one(found.spring.opens_found or found.spring.setting)}"',
        do_next=following.says,
        next_command=following.command,
        next_is_whole=following.is_whole,
    )


@dataclass(frozen=True, slots=True)
class _Step:
    """What to do next, and the command for it."""

    says: str
    command: str
    is_whole: bool = False  #: whether the command shows this document whole


def _next(found: Sizing, spring: SizingSpring, path: str) -> _Step:
    by = {c.id: c for c in found.choices}
    whole = f"diagnose sizing {path} --full"
    if any(b.verdict == "failed" for b in spring.bench):
        return _Step("set the relief spring and test it again", whole, is_whole=True)
    if NOW in by and by[NOW].idle.mean < LEAKS_MUCH * by[RIGHT].idle.mean:
        return _Step("find what leaks", f"diagnose review {path}")
    if found.supply.enough is not True:
        return _Step(
            "measure the bearings, and bring them right first", f"diagnose bearings {path}"
        )
    return _Step("bench-test the relief valve", whole, is_whole=True)


def _supply(supply: Supply, pressure: str) -> SizingSupply:
    word = {True: "enough", False: "not enough", None: "doubtful"}[supply.enough]
    spare = supply.spare
    much = (
        f"{100 * spare.mean:.0f} % to spare"
        if spare.mean >= 0
        else f"{-100 * spare.mean:.0f} % too little"
    )
    first, share = next(iter(supply.by_branch.items()))
    least = _least_pump(supply)
    says = (
        f"{word}. It delivers {_litres(supply.delivers)} l/min at {pressure}, of which the engine "
        f"takes {_litres(supply.takes)}: {much} ({100 * spare.low:.0f} to {100 * spare.high:.0f}). "
        f"{least}"
    )
    if supply.bleeds:
        says += " The relief valve is open there already: no pump gets past it."
    elif supply.enough is not True or share >= TOO_WIDE:
        says += f" Most goes through {BRANCHES[first]} ({100 * share:.0f} %)"
        says += "." if supply.enough else ": put clearances right before any pump."
    return SizingSupply(
        delivers=supply.delivers,
        takes=supply.takes,
        slips=supply.slips,
        spare=spare,
        chance=supply.chance,
        enough=supply.enough,
        taken_by=supply.by_branch,
        least_pump=supply.least_pump,
        this_pump=supply.this_pump,
        bleeds=supply.bleeds,
        says=says,
    )


MOST_OF_A_PUMP = 2.0  #: times its own: no larger one goes where it sits (judgement)


def _leak_first(found: Sizing) -> str:
    """Where it leaks besides: whether a bigger pump would hold the pressure, and what it cures."""
    now = found.now
    if now is None or now.enough is True or found.supply.enough is False:
        return ""
    if now.none_does:
        return (
            "That is with the leaks put right. As it leaks now no pump has such a margin: put the "
            "leak right first."
        )
    if now.least_pump.high > MOST_OF_A_PUMP * now.this_pump:
        return (
            "That is with the leaks put right. As it leaks now the same margin takes "
            f"{now.least_pump.high / now.this_pump:.0f} times the pump, which treats a symptom: put "
            "the leak right first."
        )
    return (
        "That is with the leaks put right. As it leaks now the same margin takes a pump of "
        f"{now.least_pump.high / CC:.1f} cm3, which treats a symptom: put the leak right first."
    )


def _least_pump(supply: Supply) -> str:
    """The pump with the usual margin in nearly all plausible engines, beside this one."""
    if supply.none_does:
        return "Not even ten times the pump would do."
    least, own = (v / CC for v in (supply.least_pump.high, supply.this_pump))
    margin = f"{100 * MARGIN:.0f} % to spare"
    if own < least and supply.enough:
        return (
            f"With its {own:.1f} cm3 a turn the worst engines of its kind have less than {margin}; "
            f"they need {least:.1f}."
        )
    return f"Least pump with {margin}: {least:.1f} cm3 a turn; this one {own:.1f}."


def _litres(flow: Band) -> str:
    low, mean, high = (q / LITRE_A_MINUTE for q in (flow.low, flow.mean, flow.high))
    return f"{mean:.1f} ({low:.1f} to {high:.1f})"


def _choice(choice: Choice, scale: Scale, units: JobUnits) -> SizingChoice:
    fills = f"{round(choice.fills_to.low, -2):.0f}" if choice.fills_to else "any"
    return SizingChoice(
        id=choice.id,
        relief_setting=choice.relief_setting,
        displacement=choice.displacement,
        larger=choice.larger,
        idle=choice.idle,
        speed=choice.speed,
        cold=choice.cold,
        power=choice.power,
        relief_heat=choice.relief_heat,
        torque=choice.torque,
        fills_to=choice.fills_to,
        fills_to_cold=choice.fills_to_cold,
        row=(
            NAMED[choice.id].format(
                setting=scale.one(choice.relief_setting),
                more=f"{100 * (choice.larger - 1):+.0f} %",
            ),
            scale.ends(choice.idle),
            scale.ends(choice.speed),
            _power(choice.power.mean, scale),
            f"{round(choice.relief_heat.mean, -1):.0f} W",
            _torque(choice.torque.mean, units),
            fills,
        ),
    )


def _power(watts: float, scale: Scale) -> str:
    return f"{watts / HORSEPOWER:.2f} hp" if scale.unit == "psi" else f"{watts:.0f} W"


def _torque(si: float, units: JobUnits) -> str:
    return show(si, TORQUE, units.shown_in(TORQUE), 2)


def _at_idle(choices: Sequence[Choice], scale: Scale) -> str:
    """What the other setting does at hot idle."""
    by = {c.id: c for c in choices}
    without = by[RIGHT] if RIGHT in by else by[AS_IT_IS]
    more = by[RELIEF].idle.mean - without.idle.mean
    if abs(more) < scale.least:
        return "At idle the relief is shut: a higher setting adds nothing there."
    if more < 0:
        return f"A lower setting takes {scale.one(-more)} at idle."
    return f"A higher setting adds {scale.one(more)} at idle."

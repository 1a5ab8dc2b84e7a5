"""What a person asks of plan, forecast and sign-off, as typed: certainty, changes, target, places."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from diagnose.case.units import units_of
from diagnose.errors import UsageError, nearest, plain
from diagnose.ids import normal_id
from diagnose.planning.access_tree import AccessTree
from knowledge.reports.when import oil_from_coolant
from knowledge.units import PRESSURE, SPEED, TEMPERATURE, TIME, UnitError, parse
from knowledge.work import Access

if TYPE_CHECKING:  # loads the hydraulics
    from diagnose.case.case import Case
    from diagnose.circuit.fixes import Planned
    from diagnose.circuit.forecast import Target
    from diagnose.circuit.pressure_law import At
    from diagnose.circuit.settings import Setting
    from diagnose.circuit.sizing import Wanted

LEAST_SURE, MOST_SURE = 0.5, 0.99
COLDEST_OIL, HOTTEST_OIL = 243.15, 433.15  #: K
_SURE = re.compile(r"(?:confident\s*=\s*)?([0-9.]+)\s*(%?)")
_AT = re.compile(r"\s*(idle|\S+\s*(?:rpm|rev/min|r/min|revs))[\s,]+(hot|cold|.+?)\s*", re.I)
_COOLANT = re.compile(r"(?:coolant|water)\s+", re.I)
_TARGET = re.compile(r"^\s*(?:(\S+\s*(?:rpm|rev/min|r/min|revs))\s+)?(.+?)\s*$", re.I)


def parse_certainty(text: str) -> float:
    """A probability from 0.5 to 0.99.

    >>> parse_certainty("confident=0.9"), parse_certainty("90 %")
    (0.9, 0.9)

    Raises UsageError.
    """
    found = _SURE.fullmatch(text.strip())
    try:
        value = float(found[1]) / (100 if found[2] else 1) if found else -1.0
    except ValueError:
        value = -1.0
    if not LEAST_SURE <= value <= MOST_SURE:
        raise UsageError(f"until: '{plain(text, 30)}'; write confident=0.9, from 0.5 to 0.99")
    return value


def parse_changes(texts: Sequence[str]) -> list[Setting]:
    """What a repair changes, "main_clearance=0.0025 in" or "oil=15W-40".

    Raises UsageError, also where one thing is set twice.
    """
    from diagnose.circuit.settings import setting

    settings = [setting(text) for text in texts]
    ids = [s.id for s in settings]
    repeated = {id_ for id_ in ids if ids.count(id_) > 1}
    if repeated:
        raise UsageError(f"--set: {min(repeated)} is set more than once")
    return settings


def parse_fixes(texts: Sequence[str], case: Case) -> list[Planned]:
    """What a repair puts right, "relief" or "mains=0.002"; values in the job's units.

    Raises UnknownFixError for a name that no repair has; UsageError, also where one is named twice.
    """
    from diagnose.circuit.fixes import planned

    plans = [planned(text, units_of(case).names) for text in texts]
    ids = [p.id for p in plans]
    repeated = {id_ for id_ in ids if ids.count(id_) > 1}
    if repeated:
        raise UsageError(f"--fix: {min(repeated)} is named more than once")
    return plans


def parse_target(text: str, case: Case) -> Target:
    """A hot pressure wanted: "25 psi" at the engine's idle speed, or "2500 rpm 40 psi".

    The target's speed is in rpm, its pressure in Pa. Raises UsageError.
    """
    from diagnose.circuit.forecast import Target

    found = _TARGET.match(text)
    speed, pressure = found.groups() if found else (None, text)
    try:
        rpm = parse(speed, SPEED) if speed else case.idle_speed
        wanted = parse(pressure, PRESSURE)
    except UnitError as error:
        raise UsageError(f"--target: {error}") from None
    if not (100 <= rpm <= 15_000 and 0 < wanted <= 2e6):
        raise UsageError("--target: write it like '25 psi' or '2500 rpm 40 psi'")
    return Target(rpm, wanted, "wanted")


def parse_wanted(
    *,
    relief: str = "",
    pump: str = "",
    oils: Sequence[str] = (),
    hot: str = "",
    cold: str = "",
    plunger: str = "",
    springs: Sequence[str] = (),
) -> Wanted:
    """What is to be compared: a relief setting "70 psi", a pump "+25 %" or "26 cm3", oils, heats.

    ``plunger``: the relief's, "12.7 mm"; ``springs``: its spring in hand, "11.2 lbf at 1.75 in".

    Empty texts stand for the usual steps. Raises UsageError, each naming its option.
    """
    from diagnose.circuit.relief_spring import parse_plunger, parse_spring_tests
    from diagnose.circuit.settings import setting
    from diagnose.circuit.sizing import Wanted

    def asked(option: str, change: str) -> Setting:
        try:
            return setting(change)
        except UsageError as error:
            said = re.sub(r"^--set(?: \w+)?: ", "", str(error))
            raise UsageError(f"{option}: {said}") from None

    new = asked("--relief", f"relief_setting={relief}") if relief else None
    if new is not None and (new.added or new.relative):
        raise UsageError("--relief: write the setting itself, like '70 psi'")
    return Wanted(
        relief=new.value if new else None,
        pump=asked("--pump", f"pump_displacement={pump}") if pump else None,
        oils=tuple(asked("--oil", f"oil={grade}").text for grade in oils),
        hot=_oil_heat("--hot", hot),
        cold=_oil_heat("--cold", cold),
        plunger=parse_plunger(plunger) if plunger else None,
        springs=parse_spring_tests(springs),
    )


def _oil_heat(option: str, text: str) -> float | None:
    """An oil temperature [K] as typed; None where none was. Raises UsageError."""
    if not text:
        return None
    try:
        heat = parse(text, TEMPERATURE)
    except UnitError as error:
        raise UsageError(f"{option}: {error}") from None
    if not COLDEST_OIL <= heat <= HOTTEST_OIL:
        raise UsageError(f"{option}: oil from -30 to 160 °C")
    return heat


def parse_at(text: str, case: Case) -> At:
    """A state to predict: "1200 rpm 95 C", "idle hot", "2500 rpm cold", "idle coolant 90 C".

    Idle is the engine's own speed, hot the oil temperature of the case's hot idle (else 90 °C),
    cold 20 °C; from the coolant's temperature the oil's follows with a spread. Speed in rpm,
    temperature in K. Raises UsageError.
    """
    from diagnose.circuit.operating_points import COLD_START, hot_of
    from diagnose.circuit.pressure_law import At

    found = _AT.fullmatch(text)
    if found is None:
        raise UsageError(f"--at: '{plain(text, 40)}'; write it like '1200 rpm 95 C' or 'idle hot'")
    speed, oil = (part.lower() for part in found.groups())
    of_coolant = _COOLANT.match(oil)
    try:
        rpm = case.idle_speed if speed == "idle" else parse(found[1], SPEED)
        given = found[2][of_coolant.end() :] if of_coolant else found[2]
        heat = {"hot": hot_of(case), "cold": COLD_START}.get(oil) or parse(given, TEMPERATURE)
    except UnitError as error:
        raise UsageError(f"--at: {error}") from None
    if not (100 <= rpm <= 15_000 and COLDEST_OIL <= heat <= HOTTEST_OIL):
        raise UsageError("--at: speeds from 100 to 15,000 rpm, oil from -30 to 160 °C")
    if of_coolant:
        behind = oil_from_coolant(heat)
        return At(rpm, behind.mean, temperature_spread=behind.sd)
    return At(rpm, heat)


def parse_running_time(text: str) -> float | None:
    """A running time in s; None for "all" that is looked at later.

    >>> parse_running_time("10 h"), parse_running_time("10h"), parse_running_time("all")
    (36000.0, 36000.0, None)

    Raises UsageError.
    """
    if text.strip().lower() == "all":
        return None
    try:
        seconds = parse(text, TIME)
    except UnitError:
        seconds = -1.0
    if seconds < 0:
        raise UsageError(f"--after: '{plain(text, 30)}'; write it like '10 h', or 'all'")
    return seconds


def parse_places(texts: Sequence[str], tree: AccessTree) -> frozenset[Access]:
    """Places of the engine that were open, with what must be open before them.

    ``texts`` may hold several ids with commas between. Raises UsageError.
    """
    known = {place.value: place for place in tree.places}
    found: frozenset[Access] = frozenset()
    for id_ in each_id(texts):
        if id_ not in known:
            raise UsageError(
                f"--opened: no place '{plain(id_, 40)}'.{nearest(id_, known)} "
                f"One of {', '.join(known)}"
            )
        found |= tree.closure(known[id_])
    return found


def each_id(texts: Sequence[str]) -> Iterator[str]:
    """Every id in ``texts``, which may hold several with commas between, as the book writes it."""
    for part in (part for text in texts for part in text.split(",")):
        yield normal_id(part)

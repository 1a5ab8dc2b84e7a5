"""Planned repairs in trade words: what ``--fix`` names, and what it does to the engine as found."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType

import numpy as np

from diagnose.circuit.as_read import AsRead
from diagnose.circuit.deviations import Deviation
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS, NAMES, CircuitParameter
from diagnose.circuit.settings import Setting, setting, value_of
from diagnose.circuit.unlisted_loss import SUCTION, kinds_of
from diagnose.errors import UsageError, nearest_word, plain
from diagnose.hydraulics.engine import Engine
from knowledge.circuit.fixes import FIX_NAMES, OIL, PUMP, SHIM, Fix
from knowledge.stations.suction.quantities import SCREEN_OPEN_SHARE
from knowledge.units import FRACTION, LENGTH, UnitError, parse, pointed, unit_in

_ALIKE = 0.7  #: how alike two names are that are mixed up
_BARE = re.compile(r"\d*\.?\d+")
NO_UNITS: Mapping[str, str] = MappingProxyType({})
MANY_DECIMALS = 3  #: from so many on a length without a unit is in inches (common practice)


class UnknownFixError(UsageError):
    """No repair has this name."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Planned:
    """A repair as asked for: a fix, the value it is set to, or a quantity by its own name."""

    fix: Fix | None
    text: str  #: the value as typed, with its unit; empty: as it should be
    setting: Setting | None

    @property
    def id(self) -> str:
        """The name of the fix or quantity."""
        return self.fix.id if self.fix else self.setting.id if self.setting else ""

    def rights(self, state: AsRead) -> tuple[Deviation, ...]:
        """Return the findings that it puts right."""
        return rights_of(self.fix, wrong(state)) if self.fix else ()


def rights_of(fix: Fix, found: Iterable[Deviation]) -> tuple[Deviation, ...]:
    """Return the findings that a fix puts right; the wrong oil has no quantity of its own."""
    ids = {q.id for q in fix.rights}
    return tuple(
        d
        for d in found
        if d.id in ids
        or (d.parameter is not None and d.parameter.id in ids)
        or (fix is OIL and d.parameter is None)
    )


def wrong(state: AsRead) -> tuple[Deviation, ...]:
    """Return what was found but for gaps no wider than on a sound engine: nobody would undo those."""
    return tuple(d for d in state.found if not _is_tight(d, state))


def _is_tight(found: Deviation, state: AsRead) -> bool:
    parameter = found.parameter
    if parameter is None or not parameter.gap:
        return False
    made, sound = (parameter.read(e) for e in (found.apply(state.sound), state.sound))
    return bool(np.median(np.asarray(made)) <= np.median(np.asarray(sound)))


def closed_by(fix: Fix, state: AsRead) -> frozenset[str]:
    """Return the kinds of loss nobody has found that it closes, where nothing was measured there.

    What was only seen may be worse than it looked: the loss is then taken to be that.
    """
    if state.loss is None or any(not d.assumed for d in rights_of(fix, state.found)):
        return frozenset()
    return kinds_of(fix.closes)


def repaired(state: AsRead, plans: Sequence[Planned]) -> Engine:
    """Return the engines as found with every repair made, in the order given."""
    fixes = [p.fix for p in plans if p.fix]
    closed = frozenset[str]().union(*(closed_by(f, state) for f in fixes))
    put_right = {d.id for p in plans for d in p.rights(state)}
    engine = state.engine(put_right=put_right, closed=closed)
    if SUCTION in closed and SCREEN_OPEN_SHARE.id in put_right:
        engine = replace(engine, screen_open_share=state.sound.screen_open_share)
    for plan in plans:
        if plan.setting is not None:
            engine = plan.setting.applied_to(engine)
    return engine


def planned(text: str, units: Mapping[str, str] = NO_UNITS) -> Planned:
    """Parse one ``--fix NAME`` or ``--fix NAME=VALUE``.

    ``units``: the job's unit of each dimension, by its id, tried first for a value without one.

    >>> planned("mains=0.002").text, planned("mains=0.05").text, planned("relief=60").text
    ('0.002 in', '0.05 mm', '60 psi')

    Raises UnknownFixError for no such name, UsageError for a value that cannot be.
    """
    name, equals, typed = (part.strip() for part in pointed(text).partition("="))
    wanted = _plain(name)
    fix = next((f for n, f in FIX_NAMES.items() if _plain(n) == wanted), None)
    if fix is None:
        quantity = next((p for n, p in NAMES.items() if _plain(n) == wanted), None)
        if quantity is not None and typed:
            return Planned(fix=None, text=typed, setting=setting(f"{quantity.id}={typed}"))
        ids = {_plain(n): f.id for n, f in FIX_NAMES.items()}
        near = nearest_word(wanted, ids, _ALIKE)
        ask = f" Did you mean '{ids[near]}'?" if near else ""
        raise UnknownFixError(f"--fix: no repair is called '{plain(name, 40)}'.{ask}")
    if equals and not typed:
        raise UsageError(f"--fix {fix.id}=: the value is missing")
    if not typed:
        if fix is SHIM:
            raise UsageError("--fix shim: write how thick, as shim=1 mm")
        return Planned(fix=fix, text="", setting=None)
    return _with_value(fix, typed, units)


def parameter_of(fix: Fix) -> CircuitParameter | None:
    """Return what a value of the fix is set on."""
    return CIRCUIT_PARAMETERS[fix.sets.id] if fix.sets else None


def _with_value(fix: Fix, typed: str, units: Mapping[str, str]) -> Planned:
    if fix is OIL:
        return Planned(fix=fix, text=typed, setting=setting(f"oil={typed}"))
    parameter = parameter_of(fix)
    if parameter is None:
        raise UsageError(f"--fix {fix.id}: takes no value; write --fix {fix.id}")
    if fix is PUMP and _is_share(typed):
        typed = typed if typed[0] in "+-" else f"+{typed}"
    if _BARE.fullmatch(typed):
        typed = _in_likely_unit(fix, parameter, typed, units)
    made = value_of(parameter, typed, f"--fix {fix.id}")
    if not (made.relative or made.added or fix.least <= made.value <= fix.most):
        raise UsageError(_out_of_range(fix, parameter, typed))
    return Planned(fix=fix, text=typed, setting=made)


def _out_of_range(fix: Fix, parameter: CircuitParameter, typed: str) -> str:
    """What is wrong with a value nobody would set, and the unit in which it could be right."""
    unit = unit_in(typed, parameter.dimension)
    low, high = (parameter.shown(v, unit) for v in (fix.least, fix.most))
    says = f"--fix {fix.id}: '{plain(typed)}' cannot be; write a value from {low} to {high}"
    figure = typed.removesuffix(unit or "").strip()
    if other := next(iter(_units_for(fix, parameter, figure, _usual_units(parameter))), ""):
        says += f". Did you mean {figure} {other}?"
    return says


def _usual_units(parameter: CircuitParameter) -> list[str]:
    return [s.split(" ", 1)[1] for s in parameter.dimension.spellings if " " in s]


def _units_for(
    fix: Fix, parameter: CircuitParameter, figure: str, tried: Iterable[str]
) -> Iterator[str]:
    """The units in which a workshop would set this figure."""
    for unit in tried:
        try:
            value = parse(f"{figure} {unit}", parameter.dimension)
        except UnitError:
            continue
        if fix.least <= value <= fix.most:
            yield unit


def _in_likely_unit(
    fix: Fix, parameter: CircuitParameter, typed: str, units: Mapping[str, str]
) -> str:
    """Return a bare figure with the first unit in which a workshop would set it."""
    usual = _usual_units(parameter)
    own = units.get(parameter.dimension.id)
    tried = [own, *usual] if own else usual
    if parameter.dimension is LENGTH and len(typed.partition(".")[2]) >= MANY_DECIMALS:
        tried = ["in", *tried]
    for unit in _units_for(fix, parameter, typed, tried):
        return f"{typed} {unit}"
    low, high = (parameter.shown(v, own) for v in (fix.least, fix.most))
    raise UsageError(
        f"--fix {fix.id}: '{plain(typed)}' cannot be; write a value from {low} to {high}"
    )


def _is_share(typed: str) -> bool:
    try:
        parse(typed, FRACTION)
    except UnitError:
        return False
    return True


def _plain(name: str) -> str:
    return " ".join(name.lower().replace("-", " ").replace("_", " ").split())

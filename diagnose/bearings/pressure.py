"""What choices of clearance give in hot idle pressure, on the case's engine as it was found.

The one module of ``bearings`` that uses the oil circuit.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from diagnose.bearings.orders import Alternative
from diagnose.case.case import Case
from diagnose.circuit.as_read import as_read
from diagnose.circuit.band import Band
from diagnose.circuit.deviations import deviations, sound_engines
from diagnose.circuit.forecast import ENGINES, SEED
from diagnose.circuit.operating_points import points_of
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.errors import UsageError
from diagnose.fits.bearing import Kind
from diagnose.hydraulics.circuit import solve
from diagnose.ways import Way, to

PARAMETERS: Mapping[Kind, str] = {Kind.MAIN: "main_clearance", Kind.ROD: "rod_clearance"}


@dataclass(frozen=True, slots=True)
class Option:
    """A choice by name: the clearance of each kind [m]; a kind left out stays as it is."""

    says: str
    clearances: Mapping[Kind, float]
    shells: Alternative | None = None  #: of which it is


@dataclass(frozen=True, slots=True)
class Pressure:
    """What an option gives at hot idle [Pa]: mean and middle 90 % of plausible engines."""

    option: Option
    band: Band


@dataclass(frozen=True, slots=True)
class Pressures:
    """Hot idle pressure of each option; ``why_not`` where it cannot be computed."""

    rows: tuple[Pressure, ...] = ()
    rpm: float = 0.0
    temperature: float = 0.0  #: K
    why_not: str = ""


def pressures(case: Case, options: Sequence[Option]) -> Pressures:
    """Compute the hot idle pressure of each option, everything else as the case has it.

    The engine before is that of ``forecast``.
    """
    if not options:
        return Pressures()
    rng = np.random.default_rng(SEED)
    try:
        sound = sound_engines(case, ENGINES, rng)
    except UsageError as fault:
        return Pressures(why_not=str(fault))
    state = as_read(case, sound, deviations(case, ENGINES, rng), rng)
    if not state.fits:
        why_not = f"the engine as found does not show what was read; {to(Way.FORECAST)}"
        return Pressures(why_not=why_not)
    as_found, heat = state.engine(), points_of(case)[0].temperature
    idle = case.idle_speed
    rows = []
    for option in options:
        engine = as_found
        for kind, clearance in option.clearances.items():
            engine = CIRCUIT_PARAMETERS[PARAMETERS[kind]].apply(engine, clearance)
        shown = np.asarray(solve(engine, np.array([idle]), heat).gallery_pressure)
        rows.append(Pressure(option, Band.of(shown[:, 0])))
    return Pressures(tuple(rows), idle, heat)

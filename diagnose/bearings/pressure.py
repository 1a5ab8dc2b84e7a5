"""What choices of clearance give in hot idle pressure, on the case's engine as it was found.

The one module of ``bearings`` that uses the oil circuit.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from diagnose.bearings.orders import Alternative
from diagnose.case.case import Case
from diagnose.circuit.band import Band
from diagnose.circuit.forecast import forecast, predict
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.errors import UsageError
from diagnose.fits.bearing import Kind
from knowledge.book import Book

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


def pressures(case: Case, book: Book, options: Sequence[Option]) -> Pressures:
    """Compute the hot idle pressure of each option, everything else as the case has it."""
    if not options:
        return Pressures()
    try:
        found = forecast(case, book, ())
    except UsageError as fault:
        return Pressures(why_not=str(fault))
    idle = float(found.speeds[0])
    rows = []
    for option in options:
        engine = found.before.engine
        for kind, clearance in option.clearances.items():
            engine = CIRCUIT_PARAMETERS[PARAMETERS[kind]].apply(engine, clearance)
        state = predict(engine, np.array([idle]), found.hot_temperature).hot
        rows.append(Pressure(option, Band.of(np.asarray(state.gallery_pressure)[:, 0])))
    return Pressures(tuple(rows), idle, found.hot_temperature)

"""Oil grades beside each other: the pressure each gives, and the thinnest that does."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from diagnose.circuit.band import Band
from diagnose.circuit.forecast import Target
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.circuit.pump_supply import FILLS, MOST_OF_THEM
from diagnose.circuit.settings import with_oil
from diagnose.hydraulics.circuit import State, solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.ranges import FloatArray

GRADES = ("0W-20", "5W-30", "10W-30", "10W-40", "15W-40", "20W-50", "25W-60")
STRAIGHT = "SAE 50"  #: what old engines are run on, compared beside them


@dataclass(frozen=True, slots=True)
class RunAt:
    """Where choices are compared: speeds [rpm], oil temperatures [K]."""

    idle: float
    speed: float
    hot: float
    cold: float


@dataclass(frozen=True, slots=True, kw_only=True)
class OilChoice:
    """One oil grade and the pressures it gives [Pa]."""

    grade: str
    in_it: bool  #: the oil that is in the engine, or assumed
    right: bool  #: the grade that should be in it, where another is
    idle: Band
    speed: Band
    cold: Band  #: cold start, at the pump
    chance: float  #: share of plausible engines that meet the pressure wanted at hot idle
    pump_fills_cold: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class OilNeed:
    """The thinnest grade that does at a clearance and an oil temperature."""

    wider: float  #: mains and rods, m on the diameter
    temperature: float  #: K
    grade: str | None  #: None: no grade does
    idle: Band | None


def oil_choices(
    engine: Engine, own: str, right: str, asked: Sequence[str], target: Target, at: RunAt
) -> tuple[OilChoice, ...]:
    """The grades asked for, else the usual ones, and the engine's ``own`` and ``right``, thinnest first.

    Its own is the oil that is in it, as the engine's readings have it; the others are fresh.
    """
    grades = {own, right, *(asked or (*GRADES, STRAIGHT))}
    return tuple(
        sorted(
            (
                replace(
                    _oil(engine if g == own else with_oil(engine, g), g, own, target, at),
                    right=g == right and g != own,
                )
                for g in grades
            ),
            key=lambda o: (o.idle.mean, o.cold.mean),
        )
    )


def _oil(engine: Engine, grade: str, own: str, target: Target, at: RunAt) -> OilChoice:
    hot: State = solve(engine, np.array([at.idle, at.speed]), at.hot)
    cold = solve(engine, at.idle, at.cold)
    idle = column(hot.gallery_pressure, 0)
    return OilChoice(
        grade=grade,
        in_it=grade == own,
        right=False,
        idle=Band.of(idle),
        speed=Band.of(column(hot.gallery_pressure, 1)),
        cold=Band.of(np.asarray(cold.pump_pressure)),
        chance=float(np.mean(idle >= target.pressure)),
        pump_fills_cold=float(np.mean(np.asarray(cold.fill_share) >= FILLS)) > 0.5,
    )


WIDER = (-0.5e-3 * 0.0254, 0.0, 0.5e-3 * 0.0254, 1.0e-3 * 0.0254)  #: m: half a thou, one
HEATS = (353.15, 368.15, 383.15, 398.15)  #: K: 80, 95, 110, 125 °C


def oil_needs(engine: Engine, target: Target) -> tuple[OilNeed, ...]:
    """The thinnest grade that meets the target, by clearance of mains and rods and by heat."""
    main, rod = (CIRCUIT_PARAMETERS[name] for name in ("main_clearance", "rod_clearance"))
    found = []
    for wider in WIDER:
        other = engine
        for each in (main, rod):
            other = each.apply(other, np.asarray(each.read(engine)) + wider)
        by_grade = [
            np.asarray(solve(with_oil(other, g), target.rpm, np.array(HEATS)).gallery_pressure)
            for g in GRADES
        ]
        for i, heat in enumerate(HEATS):
            does = next(
                (
                    (g, p[:, i])
                    for g, p in zip(GRADES, by_grade, strict=True)
                    if np.mean(p[:, i] >= target.pressure) >= MOST_OF_THEM
                ),
                None,
            )
            found.append(
                OilNeed(
                    wider=wider,
                    temperature=heat,
                    grade=does[0] if does else None,
                    idle=Band.of(does[1]) if does else None,
                )
            )
    return tuple(found)


def column(values: object, at: int) -> FloatArray:
    """One speed of an array ``(engines, speeds)`` as a column."""
    return np.asarray(values)[:, at : at + 1]

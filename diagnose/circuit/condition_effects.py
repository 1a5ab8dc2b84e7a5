"""What each hidden condition does to the circuit, by severity.

A severity is a number
or an array from 0 (the sound engine, or nearly) to 1; the scales are judgement, set so that
0.3 is about where a gauge begins to show it and 1 about the worst that engines still run with.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np

from diagnose.case.units import JobUnits
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import PETROL, diluted
from diagnose.hydraulics.ranges import Floats
from knowledge.circuit import conditions as c
from knowledge.model import Condition
from knowledge.units import LENGTH, PRESSURE

Apply = Callable[[Engine, Floats], Engine]
MM = 1e-3
SAMPLE_PUMP = 10.4e-6  #: m3 per crank turn, of the engine the scales were set on


@dataclass(frozen=True, slots=True, kw_only=True)
class Fault:
    """One condition in the hydraulic model."""

    condition: Condition
    says: str  #: what is being varied
    unit: str  #: unit its severity is stated in
    apply: Apply  #: the engine with it, at a severity 0 to 1
    #: the severity on this (sound) engine in words, in the units of the job
    show: Callable[[Engine, float, JobUnits], str]


def _size(engine: Engine) -> Floats:
    """Return the pump's volume for each crank turn over the sample engine's: scales holes."""
    return engine.pump_displacement * engine.pump_drive_ratio / SAMPLE_PUMP


def _times(s: Floats, at_one: float) -> Floats:
    """Return a factor that grows evenly in the logarithm from 1 to ``at_one``."""
    return np.asarray(np.exp(np.log(at_one) * np.asarray(s)))


def _median(value: Floats) -> float:
    """Return the median of a value that may be an array."""
    return float(np.median(np.asarray(value)))


# ------------------------------------------------------------------------------ bearings


def _wide(e: Engine, s: Floats) -> Engine:
    k = 1 + 1.3 * np.asarray(s)
    return replace(
        e,
        mains=tuple(replace(g, clearance_diametral=g.clearance_diametral * k) for g in e.mains),
        rods=tuple(replace(g, clearance_diametral=g.clearance_diametral * k) for g in e.rods),
        cams=tuple(
            replace(g, clearance_diametral=g.clearance_diametral * (1 + (k - 1) / 2))
            for g in e.cams
        ),
    )


def _wide_shown(e: Engine, s: float, units: JobUnits) -> str:
    worn = _wide(e, s)
    main, rod = (
        units.show(_median(g[0].clearance_diametral), LENGTH, 2) for g in (worn.mains, worn.rods)
    )
    return f"mains {main}, rods {rod} on the diameter"


# ----------------------------------------------------------------------------------- oil


def _share(s: Floats) -> Floats:
    return 0.15 * np.asarray(s)


def _thin(e: Engine, s: Floats) -> Engine:
    return replace(e, oil=replace(diluted(e.oil, _share(s), PETROL), rho15=e.oil.rho15))


def _thin_shown(e: Engine, s: float, _: JobUnits) -> str:
    thin = _median(_thin(e, s).oil.kv100) * 1e6
    return f"{thin:.0f} cSt at 100 C, as with {100 * float(_share(s)):.0f} % of petrol in it"


def _thick(e: Engine, s: Floats) -> Engine:
    k = _times(s, 3.0)
    oil = e.oil
    return replace(e, oil=replace(oil, kv40=oil.kv40 * k**1.25, kv100=oil.kv100 * k))


def _thick_shown(e: Engine, s: float, _: JobUnits) -> str:
    return f"{_median(_thick(e, s).oil.kv100) * 1e6:.0f} cSt at 100 C"


def _air(s: Floats) -> Floats:
    return 0.5 * np.asarray(s)


def _aerated(e: Engine, s: Floats) -> Engine:
    return replace(e, air_fraction=_air(s))


# ------------------------------------------------------------------------------- suction


SCREEN, LEFT_OPEN = 1.5e-3, 0.04  #: m2 of the sample engine; its share from which blocking shows


def _screen(s: Floats) -> Floats:
    return LEFT_OPEN * _times(s, 0.15)


def _throttled(e: Engine, s: Floats) -> Engine:
    return replace(e, screen_area=SCREEN * _size(e), screen_open_share=_screen(s))


def throttling_begins(engine: Engine) -> Floats:
    """Return the open share of this engine's own screen from which a gauge begins to show it."""
    return LEFT_OPEN * SCREEN * _size(engine) / np.asarray(engine.screen_area)


def _air_leak(e: Engine, s: Floats) -> Floats:
    return (3.0 * MM * np.asarray(s)) ** 2 * np.pi / 4 * _size(e)


def _sucks_air(e: Engine, s: Floats) -> Engine:
    return replace(e, suction_leak_area=_air_leak(e, s))


# ---------------------------------------------------------------------------------- pump


def _slips(e: Engine, s: Floats) -> Engine:
    k = 1 + 1.5 * np.asarray(s)
    return replace(
        e,
        pump_tip_clearance=e.pump_tip_clearance * k,
        pump_end_clearance=e.pump_end_clearance * k,
    )


def _slips_shown(e: Engine, s: float, units: JobUnits) -> str:
    worn = _slips(e, s)
    end, tip = (
        units.show(_median(gap), LENGTH, 2)
        for gap in (worn.pump_end_clearance, worn.pump_tip_clearance)
    )
    return f"end float {end}, tip to body {tip}"


def _delivered(s: Floats) -> Floats:
    return 1 - 0.7 * np.asarray(s)


def _delivers_less(e: Engine, s: Floats) -> Engine:
    return replace(e, pump_displacement=e.pump_displacement * _delivered(s))


# -------------------------------------------------------------------------------- relief


def _seat(e: Engine, s: Floats) -> Floats:
    return 14e-6 * np.asarray(s) * _size(e)


def _bleeds(e: Engine, s: Floats) -> Engine:
    return replace(e, relief_seat_leak=_seat(e, s))


def _caps(e: Engine, s: Floats) -> Engine:
    return replace(e, relief_setting=e.relief_setting * (1 - 0.75 * np.asarray(s)))


def _holds(e: Engine, s: Floats) -> Engine:
    return replace(e, relief_setting=e.relief_setting * (1 + 1.5 * np.asarray(s)))


def _opens_at(change: Apply) -> Callable[[Engine, float, JobUnits], str]:
    return lambda e, s, units: (
        f"opens at {units.show(_median(change(e, s).relief_setting), PRESSURE, 2)}"
    )


# ------------------------------------------------------------------------------ delivery


def _hole(e: Engine, s: Floats) -> Floats:
    return 6.0 * MM * np.asarray(s) * np.sqrt(_size(e))


def _open(e: Engine, s: Floats) -> Engine:
    return replace(e, open_orifice_area=np.pi / 4 * _hole(e, s) ** 2)


def _narrow(s: Floats) -> Floats:
    return _times(s, 0.22)


def _restricted(e: Engine, s: Floats) -> Engine:
    return replace(e, passage_diameter=e.passage_diameter * _narrow(s))


_LIST = (
    Fault(
        condition=c.CLEARANCES_WIDE,
        says="main, rod and cam bearing clearance",
        unit="in",
        apply=_wide,
        show=_wide_shown,
    ),
    Fault(condition=c.OIL_THIN, says="viscosity", unit="cSt", apply=_thin, show=_thin_shown),
    Fault(condition=c.OIL_THICK, says="viscosity", unit="cSt", apply=_thick, show=_thick_shown),
    Fault(
        condition=c.OIL_AERATED,
        says="air in the oil drawn",
        unit="%",
        apply=_aerated,
        show=lambda e, s, _: f"{100 * float(_air(s)):.0f} % air by volume",
    ),
    Fault(
        condition=c.PUMP_SLIP,
        says="gaps inside the pump",
        unit="in",
        apply=_slips,
        show=_slips_shown,
    ),
    Fault(
        condition=c.DELIVERY_REDUCED,
        says="what the pump displaces",
        unit="%",
        apply=_delivers_less,
        show=lambda e, s, _: f"{100 * float(_delivered(s)):.0f} % of its displacement",
    ),
    Fault(
        condition=c.RELIEF_BLEEDS,
        says="opening left at the valve's seat",
        unit="mm2",
        apply=_bleeds,
        show=lambda e, s, _: f"{_median(_seat(e, s)) * 1e6:.1f} mm2 open under a sound spring",
    ),
    Fault(
        condition=c.RELIEF_CAPS_LOW,
        says="relief setting",
        unit="psi",
        apply=_caps,
        show=_opens_at(_caps),
    ),
    Fault(
        condition=c.RELIEF_HOLDS_HIGH,
        says="relief setting",
        unit="psi",
        apply=_holds,
        show=_opens_at(_holds),
    ),
    Fault(
        condition=c.OPEN_LEAK_INSIDE,
        says="an open hole behind the gallery",
        unit="mm",
        apply=_open,
        show=lambda e, s, _: f"a hole of {_median(_hole(e, s)) / MM:.1f} mm",
    ),
    Fault(
        condition=c.SUCTION_THROTTLED,
        says="screen left open",
        unit="%",
        apply=_throttled,
        show=lambda e, s, _: f"{100 * float(_screen(s)):.2g} % of the screen open",
    ),
    Fault(
        condition=c.AIR_IN_SUCTION,
        says="hole above the oil in the suction",
        unit="mm",
        apply=_sucks_air,
        show=lambda e, s, _: (
            f"a hole of {2 * np.sqrt(_median(_air_leak(e, s)) / np.pi) / MM:.1f} mm"
        ),
    ),
    Fault(
        condition=c.FLOW_RESTRICTED,
        says="bore between pump and gallery",
        unit="mm",
        apply=_restricted,
        show=lambda e, s, _: f"as narrow as {_median(e.passage_diameter * _narrow(s)) / MM:.1f} mm",
    ),
)
FAULTS: dict[str, Fault] = {f.condition.id: f for f in _LIST}

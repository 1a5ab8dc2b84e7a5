"""Oil circuits of common layouts in figures: plausible dimensions, no engine in particular.

Every figure has its mark: judgement of what is typical, or common practice. A case states what it
knows better under ``[engine.dimensions]``; pressures known good calibrate the rest.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TypeAlias

from knowledge.engines.dimensions import CIRCUIT
from knowledge.model import Source
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.units import CC, INCH, MM, PSI

Number: TypeAlias = tuple[float, Source]
Specified: TypeAlias = tuple[float, float, float, float]  #: rpm, oil K, least Pa, usual Pa


@dataclass(frozen=True, slots=True, eq=False)
class Profile:
    """One circuit: figures by name (SI, with their mark) and the pressures it is known by."""

    id: str
    says: str
    layouts: tuple[str, ...]
    oil_grade: str
    numbers: Mapping[str, Number]
    specified: tuple[Specified, ...]
    source: Source

    def __repr__(self) -> str:
        return f"<profile {self.id}>"


def _marked(sources: Mapping[str, Source], **numbers: float) -> dict[str, Number]:
    """Figures with their marks; one that is named nowhere in ``sources`` is own judgement."""
    unknown = (numbers.keys() | sources.keys()) - CIRCUIT.keys()
    if unknown or CIRCUIT.keys() - numbers.keys():
        raise ValueError(f"no such, or missing: {unknown | (CIRCUIT.keys() - numbers.keys())}")
    return {name: (value, sources.get(name, JUDGEMENT)) for name, value in numbers.items()}


def but(base: Profile, sources: Mapping[str, Source], **changed: float) -> dict[str, Number]:
    """Return the figures of another profile with some replaced."""
    marks = {k: s for k, (_, s) in base.numbers.items() if k not in changed}
    return _marked({**marks, **sources}, **{k: v for k, (v, _) in base.numbers.items()} | changed)


def pressures(*rows: tuple[float, float, float, float]) -> tuple[Specified, ...]:
    """Rows of rpm, °C, least psi, usual psi in SI."""
    return tuple((n, t + 273.15, low * PSI, usual * PSI) for n, t, low, usual in rows)


#: dimensions that are habits of the trade; every other one is judgement
_HABITS = {"pickup_gap": COMMON_PRACTICE, "pump_drive_ratio": COMMON_PRACTICE}
DISTRIBUTOR_V8 = Profile(
    id="distributor_v8",
    says="wet-sump pushrod V8 of 5 to 6 litres, gear pump at half speed, hydraulic lifters",
    layouts=("distributor_v8", "distributor_v8_solid", "marine_petrol_v8", "crank_nose_v8"),
    oil_grade="10W-40",
    numbers=_marked(
        _HABITS,
        main_count=5,
        main_diameter=3.0 * INCH,
        main_length=0.90 * INCH,
        main_groove=0.16 * INCH,
        main_clearance=0.0025 * INCH,
        main_eccentricity=0.8,
        main_feed=0.8,
        rod_count=8,
        rod_diameter=2.10 * INCH,
        rod_length=0.78 * INCH,
        rod_hole=3 / 16 * INCH,
        rod_clearance=0.0025 * INCH,
        rod_eccentricity=0.8,
        rod_feed=0.7,
        crank_entry_radius=38.1 * MM,
        crank_exit_radius=61 * MM,
        cam_count=5,
        cam_diameter=1.87 * INCH,
        cam_length=0.75 * INCH,
        cam_hole=3 / 16 * INCH,
        cam_bearing_clearance=0.003 * INCH,
        lifter_count=16,
        lifter_diameter=0.842 * INCH,
        lifter_land=0.45 * INCH,
        lifter_clearance=0.0015 * INCH,
        jet_count=16,
        jet_diameter=0.4 * MM,
        jet_opens=0.0,
        pump_displacement=20.8 * CC,
        pump_drive_ratio=0.5,
        pump_gear_diameter=38 * MM,
        pump_gear_length=1.2 * INCH,
        pump_tip_land=4.5 * MM,
        pump_side_clearance=0.0035 * INCH,
        pump_end_clearance=0.004 * INCH,
        relief_setting=50 * PSI,
        relief_plunger=12.7 * MM,
        relief_rate=4e3,
        relief_port=9 * MM,
        filter_drop=9e3,
        filter_bypass=83e3,
        passage_diameter=11 * MM,
        passage_k=6.0,
        pickup_gap=9.5 * MM,
        pickup_rim=65 * MM,
        pickup_tube=19 * MM,
        pickup_tube_length=250 * MM,
        film_rise=22.0,
        other_leak=0.4,
    ),
    specified=pressures((700, 95, 10, 30), (2000, 95, 20, 50), (3000, 95, 30, 53)),
    source=JUDGEMENT,
)
LARGE_V8 = Profile(
    id="large_v8",
    says="large pushrod V8 of 7 litres and more, long gear pump at half speed",
    layouts=(),
    oil_grade="15W-40",
    numbers=but(
        DISTRIBUTOR_V8,
        {"pump_displacement": COMMON_PRACTICE},
        main_diameter=2.75 * INCH,
        main_length=1.0 * INCH,
        rod_diameter=2.2 * INCH,
        rod_length=0.85 * INCH,
        lifter_clearance=0.0018 * INCH,
        jet_diameter=0.5 * MM,
        pump_displacement=31 * CC,
        pump_gear_diameter=42 * MM,
        pump_gear_length=38 * MM,
        relief_setting=58 * PSI,
        relief_port=11 * MM,
        filter_drop=7e3,
        passage_diameter=12.5 * MM,
        film_rise=30.0,
        other_leak=1.0,
    ),
    specified=pressures((700, 95, 10, 35), (2500, 95, 25, 58), (5000, 95, 50, 65)),
    source=JUDGEMENT,
)
SKEW_GEAR_FOUR = Profile(
    id="skew_gear_four",
    says="classic pushrod four of about 1.8 litres, gear pump on a skew gear, solid tappets",
    layouts=("skew_gear_four", "skew_gear_six", "unknown"),
    oil_grade="20W-50",
    numbers=but(
        DISTRIBUTOR_V8,
        _HABITS,
        main_diameter=2.1 * INCH,
        main_length=1.1 * INCH,
        main_clearance=0.002 * INCH,
        rod_count=4,
        rod_diameter=1.88 * INCH,
        rod_length=0.9 * INCH,
        rod_clearance=0.002 * INCH,
        crank_entry_radius=27 * MM,
        crank_exit_radius=60 * MM,
        cam_count=3,
        lifter_count=0,
        jet_count=1,
        jet_diameter=1.8 * MM,
        pump_displacement=14 * CC,
        pump_gear_diameter=34 * MM,
        pump_gear_length=28 * MM,
        pump_end_clearance=0.004 * INCH,
        passage_diameter=9.5 * MM,
        pickup_rim=60 * MM,
        pickup_tube=15 * MM,
        film_rise=25.0,
        other_leak=1.5,
    ),
    specified=pressures((700, 85, 12, 28), (2500, 85, 35, 52), (3500, 85, 40, 53)),
    source=JUDGEMENT,
)
CRANK_NOSE_FOUR = Profile(
    id="crank_nose_four",
    says="overhead-cam four of about 1.8 litres, gerotor on the crank nose, hydraulic tappets",
    layouts=(
        "crank_nose_gerotor_ohc",
        "crank_nose_pump_four",
        "turbo_ohc_four",
        "chain_driven_pump_four",
        "overhead_cam_four",
    ),
    oil_grade="5W-30",
    numbers=but(
        DISTRIBUTOR_V8,
        {"pickup_gap": COMMON_PRACTICE},
        main_diameter=52 * MM,
        main_length=18 * MM,
        main_groove=4 * MM,
        main_clearance=0.045 * MM,
        rod_count=4,
        rod_diameter=45 * MM,
        rod_length=18 * MM,
        rod_hole=4 * MM,
        rod_clearance=0.045 * MM,
        crank_entry_radius=26 * MM,
        crank_exit_radius=62 * MM,
        cam_count=10,
        cam_diameter=26 * MM,
        cam_length=17 * MM,
        cam_hole=3 * MM,
        cam_bearing_clearance=0.055 * MM,
        lifter_count=16,
        lifter_diameter=31 * MM,
        lifter_land=8 * MM,
        lifter_clearance=0.035 * MM,
        jet_count=5,
        jet_diameter=1.1 * MM,
        pump_displacement=10.4 * CC,
        pump_drive_ratio=1.0,
        pump_gear_diameter=45 * MM,
        pump_gear_length=11 * MM,
        pump_tip_land=4 * MM,
        pump_side_clearance=0.11 * MM,
        pump_end_clearance=0.08 * MM,
        relief_setting=60 * PSI,
        relief_port=10 * MM,
        passage_diameter=11 * MM,
        pickup_tube=20 * MM,
        film_rise=20.0,
        other_leak=1.2,
    ),
    specified=pressures((750, 80, 12, 28), (3000, 80, 49, 62)),
    source=JUDGEMENT,
)
SMALL_DIESEL = Profile(
    id="small_diesel",
    says="small diesel of 1 to 1.5 litres, rotor pump off the gear train",
    layouts=("small_diesel", "generator_diesel", "marine_diesel"),
    oil_grade="15W-40",
    numbers=but(
        DISTRIBUTOR_V8,
        _HABITS,
        main_count=4,
        main_diameter=52 * MM,
        main_length=22 * MM,
        main_groove=4 * MM,
        main_clearance=0.066 * MM,
        rod_count=3,
        rod_diameter=44 * MM,
        rod_length=20 * MM,
        rod_hole=4.5 * MM,
        rod_clearance=0.055 * MM,
        crank_entry_radius=26 * MM,
        crank_exit_radius=58 * MM,
        cam_count=1,
        cam_diameter=36 * MM,
        lifter_count=0,
        jet_count=1,
        jet_diameter=1.5 * MM,
        pump_displacement=9.5 * CC,
        pump_drive_ratio=0.7,
        pump_gear_diameter=40 * MM,
        pump_gear_length=16 * MM,
        pump_side_clearance=0.10 * MM,
        pump_end_clearance=0.09 * MM,
        relief_setting=48 * PSI,
        relief_port=8 * MM,
        passage_diameter=9 * MM,
        pickup_rim=55 * MM,
        pickup_tube=15 * MM,
        film_rise=20.0,
        other_leak=1.6,
    ),
    specified=pressures((900, 85, 10, 28), (2600, 85, 30, 50)),
    source=JUDGEMENT,
)
TRACTOR_DIESEL = Profile(
    id="tractor_diesel",
    says="tractor or truck diesel of about 4 litres, gear-train pump, low speeds",
    layouts=("tractor_diesel", "heavy_diesel"),
    oil_grade="15W-40",
    numbers=but(
        DISTRIBUTOR_V8,
        _HABITS,
        main_diameter=76 * MM,
        main_length=36 * MM,
        main_groove=5 * MM,
        main_clearance=0.105 * MM,
        rod_count=4,
        rod_diameter=63.5 * MM,
        rod_length=36 * MM,
        rod_hole=6 * MM,
        rod_clearance=0.085 * MM,
        crank_entry_radius=38 * MM,
        crank_exit_radius=80 * MM,
        cam_count=3,
        cam_diameter=50 * MM,
        lifter_count=0,
        jet_count=1,
        jet_diameter=2.2 * MM,
        pump_displacement=36 * CC,
        pump_drive_ratio=0.7,
        pump_gear_diameter=48 * MM,
        pump_gear_length=36 * MM,
        pump_side_clearance=0.12 * MM,
        pump_end_clearance=0.11 * MM,
        relief_setting=52 * PSI,
        relief_plunger=15 * MM,
        relief_port=11 * MM,
        filter_drop=6e3,
        passage_diameter=13 * MM,
        pickup_rim=80 * MM,
        pickup_tube=22 * MM,
        pickup_tube_length=350 * MM,
        film_rise=15.0,
        other_leak=4.0,
    ),
    specified=pressures((750, 85, 12, 32), (2000, 85, 35, 54)),
    source=JUDGEMENT,
)
AIR_COOLED_FLAT_FOUR = Profile(
    id="air_cooled_flat_four",
    says="air-cooled flat four of about 1.6 litres, gear pump on the cam nose, oil cooler",
    layouts=("air_cooled_flat_four", "small_air_cooled", "generator_petrol"),
    oil_grade="30",
    numbers=but(
        DISTRIBUTOR_V8,
        _HABITS,
        main_count=4,
        main_diameter=55 * MM,
        main_length=22 * MM,
        main_groove=4 * MM,
        main_clearance=0.085 * MM,
        rod_count=4,
        rod_diameter=55 * MM,
        rod_length=22 * MM,
        rod_hole=5 * MM,
        rod_clearance=0.065 * MM,
        crank_entry_radius=27 * MM,
        crank_exit_radius=58 * MM,
        cam_count=3,
        cam_diameter=25 * MM,
        cam_length=20 * MM,
        cam_hole=4 * MM,
        cam_bearing_clearance=0.05 * MM,
        lifter_count=8,
        lifter_diameter=19 * MM,
        lifter_land=14 * MM,
        lifter_clearance=0.045 * MM,
        jet_count=8,
        jet_diameter=0.5 * MM,
        pump_displacement=15 * CC,
        pump_gear_diameter=35 * MM,
        pump_gear_length=24 * MM,
        pump_side_clearance=0.11 * MM,
        pump_end_clearance=0.10 * MM,
        relief_setting=42 * PSI,
        relief_port=8 * MM,
        filter_drop=12e3,
        passage_diameter=9 * MM,
        pickup_rim=60 * MM,
        pickup_tube=14 * MM,
        film_rise=20.0,
        other_leak=2.0,
    ),
    specified=pressures((850, 90, 7, 15), (2500, 90, 25, 42)),
    source=JUDGEMENT,
)

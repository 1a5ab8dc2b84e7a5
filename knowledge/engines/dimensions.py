"""What of an engine's oil circuit a profile states and a case may state better, by name.

Imported by ``profiles``, ``book`` and ``case``. Every clearance is on the diameter, as the
workshop measures it; where a gap is a single one (tooth tip to body) its name says so.
"""

from __future__ import annotations

from dataclasses import dataclass

from knowledge.model import Source
from knowledge.sources import JUDGEMENT
from knowledge.units import INCH, PSI

MM, CC = 1e-3, 1e-6


@dataclass(frozen=True, slots=True, eq=False)
class Dimensioned:
    """One figure of the circuit: id, meaning, dimension and plausible range (SI)."""

    id: str
    says: str
    dimension: str
    plausible: tuple[float, float]
    source: Source = JUDGEMENT  #: of what can be

    def __repr__(self) -> str:
        return f"<dimension {self.id}>"


def _lengths(low: float, high: float, **named: str) -> tuple[Dimensioned, ...]:
    return tuple(
        Dimensioned(id=id_, says=says, dimension="length", plausible=(low, high))
        for id_, says in named.items()
    )


def _numbers(low: float, high: float, **named: str) -> tuple[Dimensioned, ...]:
    return tuple(
        Dimensioned(id=id_, says=says, dimension="count", plausible=(low, high))
        for id_, says in named.items()
    )


_CLEARANCES = _lengths(
    0.0003 * INCH,
    0.03 * INCH,
    main_clearance="main bearing clearance, on the diameter",
    rod_clearance="rod bearing clearance, on the diameter",
    cam_bearing_clearance="cam bearing clearance, on the diameter",
    lifter_clearance="lifter in its bore, on the diameter",
    pump_end_clearance="end float of the pump's gears or rotors",
    pump_side_clearance="gap between tooth tip and pump body, one side",
)
_SIZES = _lengths(
    1 * MM,
    300 * MM,
    main_diameter="main journal diameter",
    main_length="main bearing length, groove included",
    main_groove="width of the groove in a main bearing",
    rod_diameter="crankpin diameter",
    rod_length="rod bearing length",
    rod_hole="oil hole in the crankpin, diameter",
    cam_diameter="cam journal diameter",
    cam_length="cam bearing length",
    cam_hole="oil hole of a cam bearing, diameter",
    lifter_diameter="lifter diameter",
    lifter_land="length of one sealing land of a lifter",
    crank_entry_radius="where oil enters the crank, from its axis",
    crank_exit_radius="where oil leaves at the crankpin, from the axis",
    pump_gear_diameter="pump gear diameter over the teeth",
    pump_gear_length="pump gear length",
    pump_tip_land="all sealing tips of the pump in series",
    relief_plunger="relief valve plunger diameter",
    relief_port="width of the port the relief plunger uncovers",
    passage_diameter="bore of the passage from pump to gallery",
    pickup_rim="pickup rim diameter",
    pickup_tube="bore of the pickup tube",
)
_SMALL = _lengths(
    0.1 * MM,
    60 * MM,
    jet_diameter="metering or jet hole diameter",
    pickup_gap="gap from pickup rim to sump floor",
)
_LONG = _lengths(20 * MM, 2.0, pickup_tube_length="length of the pickup tube")
_COUNTS = _numbers(
    0.0,
    40.0,
    main_count="main bearings",
    rod_count="rod bearings",
    cam_count="cam bearings",
    lifter_count="lifters fed with oil",
    jet_count="metering or jet holes",
    passage_k="loss coefficients of the passage, summed",
)
_SHARES = _numbers(
    0.01,
    1.5,
    main_eccentricity="share of its clearance a main journal lies off centre",
    main_feed="share of a full groove a main bearing's groove feeds",
    rod_eccentricity="share of its clearance a crankpin lies off centre",
    rod_feed="share of its turn the crankpin's hole faces a wide gap",
    pump_drive_ratio="pump turns for each crank turn",
)
_OTHERS = (
    Dimensioned(
        id="pump_displacement",
        says="what the pump moves a turn",
        dimension="volume",
        plausible=(0.5 * CC, 500 * CC),
    ),
    Dimensioned(
        id="relief_setting",
        says="relief valve opens at",
        dimension="pressure",
        plausible=(5 * PSI, 200 * PSI),
    ),
    Dimensioned(
        id="relief_rate",
        says="relief spring rate in newtons a metre",
        dimension="count",
        plausible=(100.0, 1e5),
    ),
    Dimensioned(
        id="filter_bypass",
        says="filter bypass opens at",
        dimension="pressure",
        plausible=(2 * PSI, 100 * PSI),
    ),
    Dimensioned(
        id="filter_drop",
        says="clean filter's drop at 12 l/min of oil of 12 mPa s",
        dimension="pressure",
        plausible=(0.0, 3e5),
    ),
    Dimensioned(
        id="jet_opens", says="piston jets open at", dimension="pressure", plausible=(0.0, 60 * PSI)
    ),
    Dimensioned(
        id="film_rise",
        says="bearing film above gallery, kelvins",
        dimension="count",
        plausible=(0.0, 80.0),
    ),
    Dimensioned(
        id="other_leak",
        says="what leaks and is not listed, in litres a minute at 100 kPa and 12 mPa s",
        dimension="count",
        plausible=(0.0, 60.0),
    ),
)
DIMENSIONED: dict[str, Dimensioned] = {
    d.id: d for d in (*_CLEARANCES, *_SIZES, *_SMALL, *_LONG, *_COUNTS, *_SHARES, *_OTHERS)
}

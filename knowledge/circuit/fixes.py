"""Repairs of the oil circuit in trade words: what each puts right, where, with what and how long.

Imported by ``diagnose.circuit``, ``diagnose.signoff``, ``diagnose.output`` and ``diagnose.serve``.
Minutes are those of the work itself, once the place is open, and ranges are what a workshop sets:
both judgement.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from knowledge.circuit import conditions as c
from knowledge.model import Cause, Condition, Quantity, Source
from knowledge.sources import JUDGEMENT
from knowledge.stations.bearings import causes as bearings
from knowledge.stations.bearings.quantities import MAIN_CLEARANCE, ROD_CLEARANCE
from knowledge.stations.delivery import causes as delivery
from knowledge.stations.delivery import causes_galleries as galleries
from knowledge.stations.delivery.quantities import COOLER_OPEN_SHARE, FILTER_BLOCKED, OPEN_HOLE
from knowledge.stations.oil import causes as oil
from knowledge.stations.oil import causes_contamination as contamination
from knowledge.stations.oil.quantities import FUEL_SHARE, VISCOSITY_AT_100C
from knowledge.stations.pump import causes as pump
from knowledge.stations.pump.quantities import (
    PUMP_COVER_HOLLOW,
    PUMP_DISPLACEMENT,
    PUMP_END_CLEARANCE,
    PUMP_SIDE_CLEARANCE,
)
from knowledge.stations.relief import causes as relief
from knowledge.stations.relief.quantities import RELIEF_SEAT_GAP, RELIEF_SETTING, RELIEF_SHIM
from knowledge.stations.suction import causes as suction
from knowledge.stations.suction import causes_sump as sump
from knowledge.stations.suction.quantities import PICKUP_GAP, PICKUP_TUBE, SCREEN_OPEN_SHARE
from knowledge.stations.topend import causes as topend
from knowledge.stations.topend import causes_feeds as feeds
from knowledge.stations.topend.quantities import CAM_BEARING_CLEARANCE, LIFTER_CLEARANCE, OPEN_JET
from knowledge.units import INCH, MM, PSI
from knowledge.work import Access


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Fix:
    """A repair that changes the pressure.

    ``rights``: what it brings back to where it should be, each with the cause whose parts that
    takes; ``sets``: the quantity that a value is for, ``least`` to ``most`` [SI]. It may close a
    loss nobody has found where that acts like one of ``closes``. It is done at the first of
    ``places`` that the engine has.
    """

    id: str
    says: str  #: what is done, without a value
    also: tuple[str, ...] = ()  #: other words for it
    rights: Mapping[Quantity, Cause] = field(default_factory=dict)
    sets: Quantity | None = None
    least: float = 0.0
    most: float = 0.0
    closes: tuple[Condition, ...] = ()
    places: tuple[Access, ...] = ()
    minutes: float = 0.0
    symptom: bool = False  #: raises the pressure without closing a leak
    source: Source = JUDGEMENT

    def __repr__(self) -> str:
        return f"<fix {self.id}>"


MAINS = Fix(
    id="mains",
    says="new main bearing shells",
    also=("main", "main bearings", "main shells", "main_clearance"),
    rights={MAIN_CLEARANCE: bearings.BEARING_WEAR_MAINS},
    sets=MAIN_CLEARANCE,
    least=0.0005 * INCH,
    most=0.008 * INCH,
    closes=(c.CLEARANCES_WIDE,),
    places=(Access.CAP_OFF,),
    minutes=120,
)
RODS = Fix(
    id="rods",
    says="new rod bearing shells",
    also=("rod", "rod bearings", "big ends", "big end", "rod shells", "rod_clearance"),
    rights={ROD_CLEARANCE: bearings.BEARING_WEAR_RODS},
    sets=ROD_CLEARANCE,
    least=0.0005 * INCH,
    most=0.008 * INCH,
    closes=(c.CLEARANCES_WIDE,),
    places=(Access.CAP_OFF,),
    minutes=120,
)
CAM_BEARINGS = Fix(
    id="cams",
    says="new cam bearings",
    also=("cam", "cam bearings", "camshaft", "cam_bearing_clearance"),
    rights={CAM_BEARING_CLEARANCE: topend.CAM_BEARING_WEAR},
    sets=CAM_BEARING_CLEARANCE,
    least=0.001 * INCH,
    most=0.012 * INCH,
    closes=(c.CLEARANCES_WIDE,),
    places=(Access.CAM_OUT,),
    minutes=90,
)
LIFTERS = Fix(
    id="lifters",
    says="lifter bores put right",
    also=("lifter", "tappets", "lifter bores", "lifter_clearance"),
    rights={LIFTER_CLEARANCE: topend.LIFTER_BORE_LEAK},
    sets=LIFTER_CLEARANCE,
    least=0.0005 * INCH,
    most=0.006 * INCH,
    closes=(c.CLEARANCES_WIDE,),
    places=(Access.VALLEY_OPEN, Access.VALVE_COVER_OFF),
    minutes=90,
)
PUMP = Fix(
    id="pump",
    says="new oil pump",
    also=("oil pump", "new pump", "pump gears", "pump_displacement", "bigger pump"),
    rights={
        PUMP_END_CLEARANCE: pump.PUMP_COVER_SCORED,
        PUMP_COVER_HOLLOW: pump.PUMP_COVER_SCORED,
        PUMP_SIDE_CLEARANCE: pump.PUMP_GEAR_WEAR,
        PUMP_DISPLACEMENT: pump.PUMP_GEAR_WEAR,
    },
    sets=PUMP_DISPLACEMENT,
    least=0.5e-6,
    most=500e-6,
    closes=(c.PUMP_SLIP, c.DELIVERY_REDUCED),
    places=(Access.PUMP_OFF, Access.FRONT_COVER_OFF, Access.PUMP_COVER_OFF),
    minutes=30,
)
COVER = Fix(
    id="cover",
    says="pump cover lapped flat",
    also=("pump cover", "end float", "end clearance", "pump_end_clearance"),
    rights={
        PUMP_END_CLEARANCE: pump.PUMP_COVER_SCORED,
        PUMP_COVER_HOLLOW: pump.PUMP_COVER_SCORED,
    },
    sets=PUMP_END_CLEARANCE,
    least=0.0005 * INCH,
    most=0.015 * INCH,
    closes=(c.PUMP_SLIP,),
    places=(Access.PUMP_COVER_OFF,),
    minutes=45,
)
RELIEF = Fix(
    id="relief",
    says="relief valve put right",
    also=("relief valve", "spring", "relief spring", "seat", "relief_setting", "relief_pressure"),
    rights={
        RELIEF_SEAT_GAP: relief.RELIEF_DEBRIS,
        RELIEF_SETTING: relief.RELIEF_SPRING_WEAK_BROKEN,
    },
    sets=RELIEF_SETTING,
    least=20 * PSI,
    most=120 * PSI,
    closes=(c.RELIEF_BLEEDS, c.RELIEF_CAPS_LOW),
    places=(Access.RELIEF_CAP_OFF, Access.PUMP_RELIEF_OUT),
    minutes=30,
)
SHIM = Fix(
    id="shim",
    says="relief spring shimmed",
    also=("shims", "washer", "relief_shim", "relief_washer"),
    sets=RELIEF_SHIM,
    least=0.1 * MM,
    most=6 * MM,
    places=(Access.RELIEF_CAP_OFF, Access.PUMP_RELIEF_OUT),
    minutes=15,
    symptom=True,
)
OIL = Fix(
    id="oil",
    says="fresh oil of the right grade",
    also=("oil change", "fresh oil", "grade", "fuel", "viscosity"),
    rights={
        FUEL_SHARE: contamination.FUEL_DILUTION,
        VISCOSITY_AT_100C: oil.VISCOSITY_TOO_LOW,
    },
    closes=(c.OIL_THIN,),
    places=(Access.DRAINED,),
    minutes=10,
)
OIL_FILTER = Fix(
    id="filter",
    says="new oil filter",
    also=("oil filter", "filter_blocked"),
    rights={FILTER_BLOCKED: delivery.FILTER_BLOCKED},
    places=(Access.FILTER_OFF,),
    minutes=5,
)
COOLER = Fix(
    id="cooler",
    says="oil cooler and its hoses cleared or renewed",
    also=("oil cooler", "cooler hose", "oil hose", "hoses", "cooler line"),
    rights={COOLER_OPEN_SHARE: delivery.OIL_COOLER_BLOCKED},
    places=(Access.DRAINED,),
    minutes=45,
)
PICKUP = Fix(
    id="pickup",
    says="pickup and screen put right",
    also=("screen", "strainer", "pick-up", "suction", "pickup_gap", "gap"),
    rights={
        PICKUP_GAP: sump.PICKUP_CLEARANCE_TIGHT,
        SCREEN_OPEN_SHARE: suction.PICKUP_SCREEN_BLOCKED,
        PICKUP_TUBE: suction.PICKUP_TUBE_CRACKED,
    },
    sets=PICKUP_GAP,
    least=3 * MM,
    most=25 * MM,
    closes=(c.SUCTION_THROTTLED,),
    places=(Access.PICKUP_OFF, Access.SUMP_OFF),
    minutes=20,
)
PLUG = Fix(
    id="plug",
    says="the open plug closed",
    also=("gallery plug", "plugs", "hole", "open_hole", "leak inside"),
    rights={OPEN_HOLE: galleries.GALLERY_PLUG_MISSING},
    closes=(c.OPEN_LEAK_INSIDE,),
    places=(Access.PLUGS_OUT, Access.FRONT_COVER_OFF, Access.SUMP_OFF),
    minutes=30,
)
JETS = Fix(
    id="jets",
    says="piston jets all fitted, their valves shut",
    also=("jet", "piston jets", "piston jet", "oil squirters", "open_jet"),
    rights={OPEN_JET: feeds.PISTON_JET_OPEN},
    places=(Access.SUMP_OFF,),
    minutes=40,
)
LEAK = Fix(
    id="leak",
    says="faults not found yet",
    also=("rest", "unfound", "unlisted_leak"),
    closes=(
        c.CLEARANCES_WIDE,
        c.PUMP_SLIP,
        c.DELIVERY_REDUCED,
        c.RELIEF_BLEEDS,
        c.RELIEF_CAPS_LOW,
        c.SUCTION_THROTTLED,
        c.OPEN_LEAK_INSIDE,
    ),
)
ALL = (
    RELIEF,
    OIL,
    OIL_FILTER,
    COOLER,
    PICKUP,
    COVER,
    PUMP,
    RODS,
    MAINS,
    CAM_BEARINGS,
    LIFTERS,
    PLUG,
    JETS,
    LEAK,
    SHIM,
)
FIXES = {f.id: f for f in ALL}
FIX_NAMES = {name: f for f in ALL for name in (f.id, *f.also)}

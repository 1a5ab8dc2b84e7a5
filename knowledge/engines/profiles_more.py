"""More oil circuits of common layouts in figures: overhead-cam vee, in-line six diesel, flat six.

As in ``profiles``: plausible dimensions, no engine in particular.
"""

from __future__ import annotations

from knowledge.engines.profiles import (
    AIR_COOLED_FLAT_FOUR,
    CRANK_NOSE_FOUR,
    TRACTOR_DIESEL,
    Profile,
    but,
    pressures,
)
from knowledge.sources import COMMON_PRACTICE, FROM_MEMORY, JUDGEMENT
from knowledge.units import CC, INCH, MM, PSI

OVERHEAD_CAM_VEE = Profile(
    id="overhead_cam_vee",
    says="overhead-cam V6 or V8 of 3 to 4.5 litres, gerotor on the crank nose, hydraulic tappets",
    layouts=("overhead_cam_vee",),
    oil_grade="5W-30",
    numbers=but(
        CRANK_NOSE_FOUR,
        {"main_diameter": FROM_MEMORY, "rod_diameter": FROM_MEMORY},
        main_count=4,
        main_diameter=64 * MM,
        main_length=20 * MM,
        rod_count=6,
        rod_diameter=52 * MM,
        cam_count=16,
        lifter_count=24,
        jet_count=8,
        pump_displacement=15 * CC,
        pump_gear_diameter=60 * MM,
        pump_gear_length=12 * MM,
        filter_drop=8e3,
        passage_diameter=13 * MM,
        pickup_tube=22 * MM,
    ),
    specified=pressures((700, 80, 10, 28), (2000, 80, 43, 58), (3200, 80, 50, 63)),
    source=JUDGEMENT,
)
INLINE_SIX_DIESEL = Profile(
    id="inline_six_diesel",
    says="in-line six diesel of 5 to 7 litres, rotor pump off the gear train, piston cooling jets",
    layouts=("inline_six_diesel",),
    oil_grade="15W-40",
    numbers=but(
        TRACTOR_DIESEL,
        {"main_diameter": FROM_MEMORY, "rod_diameter": FROM_MEMORY},
        main_count=7,
        main_diameter=83 * MM,
        main_length=30 * MM,
        rod_count=6,
        rod_diameter=69 * MM,
        rod_length=32 * MM,
        crank_entry_radius=41 * MM,
        crank_exit_radius=94 * MM,
        cam_count=7,
        cam_diameter=54 * MM,
        jet_count=6,
        jet_diameter=1.2 * MM,
        pump_displacement=55 * CC,
        pump_gear_diameter=60 * MM,
        pump_gear_length=34 * MM,
        relief_setting=65 * PSI,
        relief_port=13 * MM,
        passage_diameter=17 * MM,
        pickup_tube=28 * MM,
        other_leak=5.0,
    ),
    specified=pressures((750, 90, 10, 30), (2300, 90, 30, 62)),
    source=JUDGEMENT,
)
FLAT_SIX = Profile(
    id="flat_six",
    says="air-cooled flat six of 8 to 9 litres, gear pump in the accessory case, oil cooler",
    layouts=("flat_six",),
    oil_grade="50",
    numbers=but(
        AIR_COOLED_FLAT_FOUR,
        {
            "main_diameter": FROM_MEMORY,
            "rod_diameter": FROM_MEMORY,
            "pump_drive_ratio": COMMON_PRACTICE,
        },
        main_count=4,
        main_diameter=2.375 * INCH,
        main_length=36 * MM,
        main_clearance=0.0028 * INCH,
        rod_count=6,
        rod_diameter=2.25 * INCH,
        rod_length=30 * MM,
        rod_clearance=0.0030 * INCH,
        crank_entry_radius=30 * MM,
        crank_exit_radius=56 * MM,
        cam_count=4,
        lifter_count=12,
        jet_count=12,
        jet_diameter=0.6 * MM,
        pump_displacement=25 * CC,
        pump_gear_diameter=44 * MM,
        pump_gear_length=26 * MM,
        relief_setting=68 * PSI,
        relief_port=11 * MM,
        passage_diameter=12 * MM,
        pickup_tube=19 * MM,
        other_leak=2.0,
    ),
    specified=pressures((700, 85, 15, 35), (2400, 85, 55, 70)),
    source=JUDGEMENT,
)

"""Engine oil grades: what SAE J300 fixes, and the viscosity index assumed where it fixes nothing.

A grade fixes a band of viscosity at 100 °C and the least viscosity under shear at 150 °C. It never
fixes the viscosity at 40 °C: that comes from the product's sheet or, failing it, from an assumed
viscosity index. Imported by ``hydraulics.oil``, ``circuit``, ``case.card`` and ``case.resolving``.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from knowledge import sources
from knowledge.model import Source
from knowledge.sources import FROM_MEMORY
from knowledge.units import PSI

MM2_S = 1e-6  #: one mm2/s, a centistoke, in m2/s
MPA_S = 1e-3  #: one mPa·s, a centipoise, in Pa·s


@dataclass(frozen=True, slots=True)
class HotGrade:
    """The number after the W.

    Viscosity at 100 °C [m2/s] from least up to, not including, most, and the least viscosity at
    150 °C and a million per second [Pa·s].
    """

    name: str
    kv100_least: float
    kv100_most: float
    hths_least: float
    source: Source = sources.SAE_J300

    @property
    def kv100_middle(self) -> float:
        """Middle of the band [m2/s].

        >>> round(HOT_GRADES["40"].kv100_middle * 1e6, 2)
        14.4
        """
        return (self.kv100_least + self.kv100_most) / 2


@dataclass(frozen=True, slots=True)
class WinterGrade:
    """The number before the W.

    Most viscosity when cranked and when pumped cold [Pa·s at K], least viscosity at 100 °C [m2/s],
    and the viscosity index assumed for oils of this class.
    """

    name: str
    cranking_most: float
    cranking_temperature: float
    pumping_most: float
    pumping_temperature: float
    kv100_least: float
    assumed_vi: float
    source: Source = sources.SAE_J300
    vi_source: Source = FROM_MEMORY


@dataclass(frozen=True, slots=True)
class Grade:
    """One grade as printed on the can; ``winter`` is None for a straight grade."""

    hot: HotGrade
    winter: WinterGrade | None = None

    @property
    def assumed_vi(self) -> float:
        """Viscosity index where the sheet gives none (from memory of what is sold)."""
        return self.winter.assumed_vi if self.winter else STRAIGHT_VI

    @property
    def hths_least(self) -> float:
        """Least viscosity at 150 °C under shear [Pa·s]; SAE 40 has two, by its winter class."""
        light = self.hot.name == "40" and self.winter and self.winter.name in {"0W", "5W", "10W"}
        return 3.5 * MPA_S if light else self.hot.hths_least


STRAIGHT_VI = 100.0  #: assumed viscosity index of a straight grade (from memory)


def _hot(name: str, least: float, most: float, hths: float) -> HotGrade:
    return HotGrade(name, least * MM2_S, most * MM2_S, hths * MPA_S)


def _winter(
    name: str, ccs: float, at: float, mrv: float, mrv_at: float, kv100: float, vi: float
) -> WinterGrade:
    return WinterGrade(
        name, ccs * MPA_S, at + 273.15, mrv * MPA_S, mrv_at + 273.15, kv100 * MM2_S, vi
    )


HOT_GRADES = {
    g.name: g
    for g in (
        # name, KV100 from and up to [mm2/s], least HTHS [mPa·s]
        _hot("8", 4.0, 6.1, 1.7),
        _hot("12", 5.0, 7.1, 2.0),
        _hot("16", 6.1, 8.2, 2.3),
        _hot("20", 6.9, 9.3, 2.6),
        _hot("30", 9.3, 12.5, 2.9),
        _hot("40", 12.5, 16.3, 3.7),  # 3.5 with 0W, 5W and 10W
        _hot("50", 16.3, 21.9, 3.7),
        _hot("60", 21.9, 26.1, 3.7),
    )
}
WINTER_GRADES = {
    g.name: g
    for g in (
        # name, most cranking [mPa·s] at °C, most pumping [mPa·s] at °C, least KV100, assumed VI
        _winter("0W", 6200, -35, 60000, -40, 3.8, 175),
        _winter("5W", 6600, -30, 60000, -35, 3.8, 165),
        _winter("10W", 7000, -25, 60000, -30, 4.1, 155),
        _winter("15W", 7000, -20, 60000, -25, 5.6, 138),
        _winter("20W", 9500, -15, 60000, -20, 5.6, 122),
        _winter("25W", 13000, -10, 60000, -15, 9.3, 110),
    )
}
REYN = PSI  #: one lbf·s/in2 in Pa·s is one lbf/in2 in Pa, times a second
#: straight grades by Seireg and Dandage's closed form: mu0 [Pa·s] and b [°F]; Shigley, Mechanical
#: Engineering Design, Table 12-1
SEIREG_DANDAGE = {
    "10": (0.0158e-6 * REYN, 1157.5),
    "20": (0.0136e-6 * REYN, 1271.6),
    "30": (0.0141e-6 * REYN, 1360.0),
    "40": (0.0121e-6 * REYN, 1474.4),
    "50": (0.0170e-6 * REYN, 1509.6),
    "60": (0.0187e-6 * REYN, 1564.0),
}
_GRADE = re.compile(r"^(?:SAE)?\s*(?:(\d+W)[\s-]*)?(\d+)$", re.I)


def grade_named(text: str) -> Grade:
    """The grade as printed on the can, ignoring case and blanks.

    >>> grade_named("SAE 10w40").winter.name
    '10W'
    >>> grade_named("30").winter is None
    True
    >>> grade_named("10W-45")
    Traceback (most recent call last):
    ...
    ValueError: '10W-45' is no SAE J300 grade; write it like 10W-40, 5W-30 or 30

    Raises ValueError for a grade SAE J300 does not define.
    """
    found = _GRADE.match(text.strip())
    winter, hot = found.groups() if found else (None, None)
    if hot not in HOT_GRADES or (winter and winter.upper() not in WINTER_GRADES):
        raise ValueError(
            f"'{text.strip()[:40]}' is no SAE J300 grade; write it like 10W-40, 5W-30 or 30"
        )
    return Grade(HOT_GRADES[hot], WINTER_GRADES[winter.upper()] if winter else None)

"""Which questions of ``ask`` a story, figures of the gauge or reports have answered already."""

from __future__ import annotations

from diagnose.case.reports import AT_ONCE
from diagnose.diagnosis import Diagnosis
from diagnose.entry.known import Known
from knowledge.model import Gauge, Reading
from knowledge.questions.essentials import KNOCK, SAFETY, SAFETY_KNOCK, SAFETY_ZERO, ZERO
from knowledge.questions.groups import COURSE, FLICKER, HEAT, OCCASION, SPEED, START
from knowledge.questions.shapes import Menu
from knowledge.reports.words import LOSSES, Circumstance, Shows

IDLE_AT_MOST, SPEED_AT_LEAST = 1150.0, 1500.0  #: rev/min
COLD_AT_MOST = 313.0  #: kelvin
_TROUBLE = LOSSES | {Shows.UNSTEADY}
_AT_SPEEDS = {
    "idle": frozenset({Circumstance.IDLE}),
    "speed": frozenset({Circumstance.SPEED, Circumstance.OFF_IDLE}),
}
_AT_HEATS = {
    "cold": frozenset({Circumstance.COLD}),
    "hot": frozenset(
        {Circumstance.HOT, Circumstance.WARMING, Circumstance.MINUTES, Circumstance.LATE}
    ),
}
_OCCASIONS = frozenset(
    {
        *(Circumstance.BENDS, Circumstance.BRAKING, Circumstance.ACCELERATING),
        *(Circumstance.SLOPE, Circumstance.SEAWAY, Circumstance.ROUGH_ROAD, Circumstance.WET),
        *(Circumstance.MINUTES, Circumstance.LATE, Circumstance.AFTER_REST),
        *(Circumstance.LOW_LEVEL, Circumstance.RANDOM, Circumstance.HARD_RUN),
    }
)


def is_said(menu: Menu, diagnosis: Diagnosis) -> bool:
    """Whether readings and reports of a case say what a question of ``GROUPS`` asks."""
    case = diagnosis.case
    behaviours = [record.behaviour for record in case.behaviours]
    trouble = [b for b in behaviours if b.shows in _TROUBLE]
    if menu is SPEED or menu is HEAT:
        there = {at for r in case.readings for at in (_speed(r.reading), _heat(r.reading))}
        named = frozenset(
            when for b in behaviours if b.shows in {*_TROUBLE, Shows.NORMAL} for when in b.during
        )
        wanted = _AT_SPEEDS if menu is SPEED else _AT_HEATS
        return all(at in there or named & words for at, words in wanted.items())
    if menu is OCCASION:
        return any(b.during & _OCCASIONS for b in trouble)
    if menu is FLICKER:
        return any(b.shows is Shows.UNSTEADY and b.during for b in behaviours)
    if menu is START:
        return any(b.shows is Shows.SLOW for b in behaviours)
    if menu is COURSE:
        at_once = any(e.entry.before in AT_ONCE for e in case.earlier)
        return at_once or any(b.onset or b.since for b in trouble)
    return False


def safety_left(diagnosis: Diagnosis) -> Menu | None:
    """What of the safety question nobody has answered.

    None where zero or a knock is known, or both are known not to be there. A pressure that was read
    says that the gauge does not read zero.
    """
    known = Known.of(diagnosis)
    if known.any_of(SAFETY.findings):
        return None
    answered = {f for f in SAFETY.findings if f in known.states or f in known.asked}
    if any(r.reading.pressure > 0 for r in diagnosis.case.readings):
        answered.add(ZERO)
    elif known.has("lamp_only") or _by_the_lamp_alone(diagnosis):
        answered.add(ZERO)  # there is no gauge that could read zero
    left = [f for f in SAFETY.findings if f not in answered]
    menus = {(ZERO, KNOCK): SAFETY, (ZERO,): SAFETY_ZERO, (KNOCK,): SAFETY_KNOCK}
    return menus.get(tuple(left))


def _by_the_lamp_alone(diagnosis: Diagnosis) -> bool:
    """Whether all that was said of the pressure is what a lamp does, and no gauge is known of."""
    trouble = [b.behaviour for b in diagnosis.case.behaviours if not b.behaviour.is_noise]
    lamp = [b.shows is Shows.LAMP or b.gauge is Gauge.LAMP for b in trouble]
    gauged = diagnosis.case.readings or Known.of(diagnosis).any_of(
        ("direct_gauge", "electric_gauge")
    )
    return bool(lamp) and all(lamp) and not gauged


def is_cold(reading: Reading) -> bool:
    """Whether a reading is known to be of cold oil."""
    return reading.oil_temperature is not None and reading.oil_temperature <= COLD_AT_MOST


def _speed(reading: Reading) -> str:
    if is_cold(reading):
        return ""
    if reading.rpm <= IDLE_AT_MOST:
        return "idle"
    return "speed" if reading.rpm >= SPEED_AT_LEAST else ""


def _heat(reading: Reading) -> str:
    return "cold" if is_cold(reading) else "hot"

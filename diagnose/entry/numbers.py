"""Several pressures typed in one line: "5 40 60 psi", or "5 psi at hot idle, 60 cold"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from diagnose.entry.readings import ReadingInput, parse_reading
from diagnose.errors import UsageError
from knowledge.model import Reading
from knowledge.units import PRESSURE, PSI, pointed, unit_named

_NUMBER = re.compile(r"\d{1,4}(?:\.\d{1,2})?")
_NOT_KNOWN = ("-", "?", "x", "d", "--")
_PIECES = re.compile(r"[,;](?!\d)|\band\b")
_FIGURE = re.compile(r"(?<![\w.])(\d{1,3}(?:\.\d+)?)(?![\w.])")
USUAL_UNIT = "psi"
_IDLE, _HALF = 1150.0, 0.5  #: rpm up to which it idles; share of its pressure (judgement)


@dataclass(frozen=True, slots=True)
class Slot:
    """A speed and an oil temperature, in words of a case file, at which pressure is asked."""

    id: str
    says: str
    rpm: str
    oil: str
    like: str  #: a pressure in psi as an example

    def example(self, unit: str) -> str:
        """The example in another unit of pressure.

        >>> HOT_IDLE.example("psi"), HOT_IDLE.example("bar"), HOT_IDLE.example("kPa")
        ('12', '0.8', '83')
        """
        named = unit_named(unit, PRESSURE)
        if named is None or named.factor == PSI:
            return self.like
        figure = float(self.like) * PSI / named.factor
        return f"{figure:.1f}" if figure < 10 else f"{figure:.0f}"


HOT_IDLE = Slot("hot_idle", "hot idle", "idle", "hot", "12")
AT_SPEED = Slot("at_speed", "2000 rpm hot", "2000 rpm", "hot", "40")
COLD = Slot("cold", "a cold start", "fast idle", "cold", "60")
SLOTS = (HOT_IDLE, AT_SPEED, COLD)


@dataclass(frozen=True, slots=True)
class Readings:
    """Readings given in one answer."""

    given: tuple[ReadingInput, ...]


def doubtful(given: Readings, known: Sequence[Reading]) -> str:
    """Figures far below what was read at idle, as words to be agreed to; else empty.

    A bare number may be a slip, or meant for another question.
    """
    idle = [r.pressure for r in known if r.rpm <= _IDLE and r.pressure > 0]
    new = [(r, r.in_si()) for r in given.given]
    idle += [si.pressure for _, si in new if si.rpm <= _IDLE and si.pressure > 0]
    if not any(si.rpm > _IDLE and idle and si.pressure < _HALF * max(idle) for _, si in new):
        return ""
    return ", ".join(f"{r.pressure} at {r.rpm} {r.oil}".strip() for r, _ in new)


def parse_numbers(line: str, slots: tuple[Slot, ...], usual: str = USUAL_UNIT) -> Readings | None:
    """Pressures in the order of the slots, or readings in words; None where it is neither.

    Bare numbers are in the ``usual`` unit.

    >>> [r.pressure for r in parse_numbers("5 - 60", SLOTS).given]
    ['5 psi', '60 psi']
    >>> [(r.rpm, r.pressure) for r in parse_numbers("5 at idle", SLOTS).given]
    [('idle', '5 psi')]
    """
    line = pointed(line)
    readings = _in_order(line, slots, usual)
    if readings is None:
        readings = _in_words(line, usual)
    if readings is None:
        return None
    try:
        for reading in readings:
            reading.in_si()
    except UsageError:
        return None
    return Readings(readings)


def _in_order(line: str, slots: tuple[Slot, ...], usual: str) -> tuple[ReadingInput, ...] | None:
    tokens = re.sub(r"(?<=\d)(?=[a-z])", " ", line.lower().replace("/", " ")).split()
    tokens = [t.strip(",;") for t in tokens]
    units = {t for t in tokens if unit_named(t, PRESSURE)}
    tokens = [t for t in tokens if t not in units]
    if len(units) > 1:
        return None
    unit = min(units, default=usual)
    if len(tokens) != len(slots):
        return None
    if not all(_NUMBER.fullmatch(t) or t in _NOT_KNOWN for t in tokens):
        return None
    return tuple(
        ReadingInput(rpm=slot.rpm, oil=slot.oil, pressure=f"{token} {unit}")
        for token, slot in zip(tokens, slots, strict=True)
        if token not in _NOT_KNOWN
    )


def _in_words(line: str, usual: str) -> tuple[ReadingInput, ...] | None:
    found = []
    for piece in filter(str.strip, _PIECES.split(line)):
        try:
            reading = parse_reading(_with_unit(piece, usual))
        except UsageError:
            return None
        if not (reading.rpm or reading.oil or reading.coolant or reading.during):
            return None  # nobody said when
        found.append(replace(reading, pressure=_completed(reading.pressure, usual)))
    return tuple(found) or None


def _with_unit(piece: str, usual: str) -> str:
    """A piece whose only figure has no unit, with the usual one."""
    bare = _FIGURE.findall(piece)
    if len(bare) != 1 or any(unit_named(w, PRESSURE) for w in piece.lower().split()):
        return piece
    return _FIGURE.sub(rf"\1 {usual}", piece)


def _completed(pressure: str, usual: str) -> str:
    return f"{pressure} {usual}" if _NUMBER.fullmatch(pressure.strip()) else pressure

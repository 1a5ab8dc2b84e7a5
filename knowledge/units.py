"""Units of input and output: a closed table, case-insensitive; SI inside.

Imported by input parsing and output; imports nothing of ours. A general units library that was
tried read ``95 C`` as coulomb and ``4,2 bar`` as 42 bar; here a unit outside the table is refused
with three right spellings, and so is a comma that may mean tenths or thousands.
"""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache

_NUMBER = re.compile(
    r"^\s*([+-]?(?:(?:\d+\s+)?\d+/\d+(?!\.|\d|e[+-]?\d)|(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?))\s*(.*?)\s*$",
    re.I,
)
_COMMA = re.compile(r"(?<![\d.,])(\d+),(\d+)(?![\d.,])")
_THOUSANDS = 3  #: digits behind a comma that may part thousands
_LONGEST = 100  #: characters; a real quantity is far shorter


@dataclass(frozen=True, slots=True)
class Unit:
    """One way to write a quantity: ``si = value * factor + offset``."""

    names: tuple[str, ...]
    factor: float
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Dimension:
    """A kind of quantity, its SI unit, its units (first is preferred), three right spellings."""

    id: str
    si: str
    units: tuple[Unit, ...]
    spellings: tuple[str, str, str]


PSI = 6894.757293168361
INCH = 0.0254
THOU = INCH * 1e-3
MM = 1e-3
CC = 1e-6  #: m3
LBF = 4.4482216152605
GALLON_US = 3.785411784e-3
QUART_US = GALLON_US / 4
QUART_IMP = 4.54609e-3 / 4
PRESSURE = Dimension(
    "pressure",
    "Pa",
    (
        Unit(("psi", "lb/in2", "lbf/in2", "psig", "pounds"), PSI),
        Unit(("bar", "bars"), 1e5),
        Unit(("kpa",), 1e3),
        Unit(("mpa",), 1e6),
        Unit(("pa",), 1.0),
        Unit(("kg/cm2", "kgf/cm2", "kp/cm2"), 98066.5),
    ),
    ("8 psi", "0.55 bar", "55 kPa"),
)
ZERO_CELSIUS = 273.15  #: K at 0 °C
TEMPERATURE = Dimension(
    "temperature",
    "K",
    (
        Unit(("c", "°c", "degc", "deg c", "celsius"), 1.0, ZERO_CELSIUS),
        Unit(("f", "°f", "degf", "deg f", "fahrenheit"), 5 / 9, ZERO_CELSIUS - 32 * 5 / 9),
        Unit(("k", "kelvin"), 1.0),
    ),
    ("95 C", "203 F", "368 K"),
)
LENGTH = Dimension(
    "length",
    "m",
    (
        Unit(("in", "inch", "inches", '"'), INCH),
        Unit(("mm",), 1e-3),
        Unit(("thou", "mil"), INCH * 1e-3),
        Unit(("um", "µm", "micron", "microns"), 1e-6),
        Unit(("m",), 1.0),
        Unit(("cm",), 1e-2),
    ),
    ("0.0045 in", "0.11 mm", "4.5 thou"),
)
METRIC_LENGTHS = ("mm", "um", "m", "cm")
SPEED = Dimension(
    "speed",
    "rpm",
    (Unit(("rpm", "rev/min", "r/min", "revs"), 1.0),),
    ("700 rpm", "2500 rev/min", "850 r/min"),
)


def _pounds(preferred: str, arm: str) -> tuple[str, ...]:
    """Return every usual spelling of a torque unit, in either order, the preferred first.

    >>> _pounds("in·lb", "in")[:3]
    ('in·lb', 'lb·in', 'lb-in')
    >>> "ft-lbs" in _pounds("lb·ft", "ft") and "lbf ft" in _pounds("lb·ft", "ft")
    True
    """
    written = (
        sign.join(order)
        for pound in ("lb", "lbf", "lbs")
        for order in ((pound, arm), (arm, pound))
        for sign in ("·", "-", " ", ".", "")
    )
    return tuple(dict.fromkeys((preferred, *written)))


TORQUE = Dimension(
    "torque",
    "N·m",
    (
        Unit(("n·m", "nm", "n.m", "n m", "n-m", "newton metre", "newton metres"), 1.0),
        Unit(
            (*_pounds("lb·ft", "ft"), "foot pounds", "foot-pounds", "pound feet", "pound-feet"),
            LBF * 0.3048,
        ),
        Unit(
            (*_pounds("in·lb", "in"), "inch pounds", "inch-pounds", "pound inches", "pound-inches"),
            LBF * INCH,
        ),
        Unit(("kgf·m", "kgm", "kgf m", "mkg"), 9.80665),
    ),
    ("20 N·m", "15 lb-ft", "106 in-lb"),
)
VOLUME = Dimension(
    "volume",
    "m3",
    (
        Unit(("l", "litre", "litres", "liter", "liters"), 1e-3),
        Unit(("ml", "cc", "cm3"), 1e-6),
        Unit(("qt", "quart", "quarts", "us qt"), QUART_US),
        Unit(("imp qt",), QUART_IMP),
        Unit(("imp pt",), QUART_IMP / 2),
        Unit(("imp gal",), QUART_IMP * 4),
        Unit(("pt", "pint", "pints"), QUART_US / 2),
        Unit(("gal", "us gal", "gallon", "gallons"), GALLON_US),
    ),
    ("4.5 l", "5 qt", "500 ml"),
)
TIME = Dimension(
    "time",
    "s",
    (
        Unit(("s", "sec", "second", "seconds"), 1.0),
        Unit(("min", "minute", "minutes"), 60.0),
        Unit(("h", "hour", "hours"), 3600.0),
        Unit(("day", "days"), 86_400.0),
        Unit(("week", "weeks"), 604_800.0),
        Unit(("month", "months"), 2_629_746.0),  # a twelfth of the Gregorian year
        Unit(("year", "years"), 31_556_952.0),
    ),
    ("10 s", "2 min", "1 h"),
)
FRACTION = Dimension(
    "fraction",
    "1",
    (Unit(("%", "percent", "per cent"), 0.01), Unit(("ppm",), 1e-6)),
    ("5 %", "30 percent", "120 ppm"),
)
VISCOSITY = Dimension(
    "viscosity",
    "m2/s",
    (Unit(("cst", "mm2/s"), 1e-6), Unit(("m2/s",), 1.0)),
    ("14.4 cSt", "14.4 mm2/s", "0.0000144 m2/s"),
)
RESISTANCE = Dimension(
    "resistance",
    "ohm",
    (Unit(("ohm", "ohms", "ω"), 1.0), Unit(("kohm", "kω"), 1e3)),
    ("103 ohm", "33 ohms", "0.24 kohm"),
)
FORCE = Dimension(
    "force",
    "N",
    (Unit(("n", "newton"), 1.0), Unit(("lbf", "lb", "lbs"), LBF), Unit(("kgf", "kg"), 9.80665)),
    ("50 N", "11 lbf", "5 kgf"),
)
ANGLE = Dimension(
    "angle",
    "deg",
    (Unit(("deg", "°", "degrees", "degree"), 1.0),),
    ("15 deg", "15 degrees", "15°"),
)
COUNT = Dimension("count", "1", (Unit(("", "pcs", "off"), 1.0),), ("7", "7 off", "7 pcs"))
DIMENSIONS = {
    d.id: d
    for d in (
        PRESSURE,
        TEMPERATURE,
        LENGTH,
        SPEED,
        TORQUE,
        VOLUME,
        TIME,
        FRACTION,
        VISCOSITY,
        RESISTANCE,
        FORCE,
        ANGLE,
        COUNT,
    )
}


class UnitError(ValueError):
    """The text is no quantity of the dimension; the message gives right spellings."""


def parse(text: str, dimension: Dimension) -> float:
    """``text`` in the dimension's SI unit.

    >>> round(parse("8 psi", PRESSURE))
    55158
    >>> round(parse("95 C", TEMPERATURE), 2)
    368.15
    >>> parse("3/8 in", LENGTH) == 0.375 * 0.0254
    True
    >>> parse("1 1/4 in", LENGTH) == 1.25 * 0.0254
    True

    >>> round(parse("0,55 bar", PRESSURE)), parse("1,500 rpm", SPEED)
    (55000, 1500.0)

    Raises UnitError for an unknown unit, a missing one, or a comma that may mean two things.
    """
    number, name = _split(_without_comma(text, dimension))
    unit = unit_named(name, dimension)
    figure = _with_fraction(number) if number and unit is not None else None
    if figure is None or unit is None:
        raise UnitError(_refusal(text, dimension))
    value = figure * unit.factor + unit.offset
    if not abs(value) < 1e16:
        raise UnitError(_refusal(text, dimension))
    return value


def pointed(text: str) -> str:
    """A text with a point for each comma that can only be a decimal one; as long as before.

    >>> pointed("1,5 bar at 1,500 rpm"), pointed("5,40,60 psi"), pointed("0,045 mm")
    ('1.5 bar at 1,500 rpm', '5,40,60 psi', '0.045 mm')
    """

    def point(found: re.Match[str]) -> str:
        whole, part = found[1], found[2]
        either = len(part) == _THOUSANDS and whole.strip("0")
        return found[0] if either else f"{whole}.{part}"

    return _COMMA.sub(point, text)


def _without_comma(text: str, dimension: Dimension) -> str:
    """The text of one quantity without a comma, where it is clear what that means.

    With three digits behind it it parts thousands of revolutions; a length has no thousands.
    """
    clear = pointed(text) if len(text) <= _LONGEST else text
    if dimension is SPEED:
        return _COMMA.sub(r"\1\2", clear)
    return _COMMA.sub(r"\1.\2", clear) if dimension is LENGTH else clear


def _with_fraction(number: str) -> float | None:
    """A number as typed, with its fraction if it has one; None where that is no fraction."""
    top, _, bottom = number.partition("/")
    if not bottom:
        return float(top)
    whole, _, part = " ".join(top.split()).rpartition(" ")
    if not float(bottom):
        return None
    share = float(part) / float(bottom)
    if not whole:
        return share
    if share >= 1.0:  # "1 11/4" is a typing error of unknown meaning
        return None
    return float(whole) - share if whole.startswith("-") else float(whole) + share


def _split(text: str) -> tuple[str, str]:
    """Number and unit as typed; both empty where there is no number, or a comma in it."""
    found = _NUMBER.match(text) if len(text) <= _LONGEST and "," not in text else None
    return (found[1], found[2]) if found else ("", "")


def unit_in(text: str, dimension: Dimension) -> str | None:
    """The name of the unit that ``text`` uses.

    >>> unit_in("0.3 mm", LENGTH)
    'mm'
    """
    name = _split(_without_comma(text, dimension))[1]
    return name if unit_named(name, dimension) else None


def unit_named(name: str, dimension: Dimension) -> Unit | None:
    """The dimension's unit of that name, ignoring case, doubled blanks and kinds of sign.

    >>> unit_named("KG/cm²", PRESSURE) is unit_named("kg/cm2", PRESSURE)
    True
    """
    wanted = _folded(name)
    for unit in dimension.units:
        if any(wanted == _folded(n) for n in unit.names):
            return unit
    return None


@lru_cache(1024)
def _folded(name: str) -> str:
    """One spelling of a unit's name."""
    return " ".join(unicodedata.normalize("NFKC", name).lower().replace("⋅", "·").split())


def show(si: float, dimension: Dimension, name: str | None = None, digits: int = 3) -> str:
    """``si`` in the named unit, or the dimension's first.

    >>> show(55158.06, PRESSURE)
    '8 psi'
    >>> show(0.0001143, LENGTH)
    '0.0045 in'
    >>> show(2500, SPEED)
    '2500 rpm'
    """
    unit = (unit_named(name, dimension) if name else None) or dimension.units[0]
    value = (si - unit.offset) / unit.factor
    label = name if name and unit_named(name, dimension) else unit.names[0]
    label = {"c": "C", "f": "F", "n·m": "N·m", "cst": "cSt", "n": "N"}.get(label, label)
    return f"{_figure(value, digits)} {label}".strip()


def _figure(value: float, digits: int) -> str:
    """Format with so many significant digits, without an exponent.

    >>> _figure(2500.0, 3)
    '2500'
    """
    text = f"{value:.{digits}g}"
    return f"{Decimal(text):f}" if "e" in text and 1e-9 < abs(value) < 1e12 else text


def _refusal(text: str, dimension: Dimension) -> str:
    a, b, c = dimension.spellings
    typed = " ".join("".join(c if c.isprintable() else " " for c in text[:80]).split())[:40]
    comma = ", without a comma" if re.search(r"\d,\d", typed) else ""
    return f"'{typed}' is no {dimension.id} here; write it like {a}, {b} or {c}{comma}"

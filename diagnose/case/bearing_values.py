"""Values of a ``[[bearing]]`` as text: what each field holds, and its numbers in metres."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from diagnose.errors import plain
from diagnose.fits.bearing import Grid, Kind, Place
from knowledge.stations.bearings import sizes
from knowledge.units import LENGTH, UnitError, parse, show, unit_named

MOST_BEARINGS = 40  #: of one kind
_PLACE = re.compile(
    r"(?:no\.?\s*|#)?(\d{1,2})?\s*"
    r"(mains?|rods?|big[ -]?ends?|crank ?pins?)(?:\s+bearings?)?\s*(?:no\.?\s*|#)?(\d{1,2})?",
    re.IGNORECASE,
)
_NUMBERS = re.compile(r"\s*((?:[-+\d./]|(?<=\d)e-?\d|\s)*?)\s*([^\d\s./+-].*)?")
_COMMA = re.compile(r"(?<![\d.,])(\d+),(\d+)(?![\d.,])")  #: decimal: no part has thousands of mm
_TO = re.compile(r"(?<=\d)\s*(?:to|[-\u2013])\s*(?=[\d.])")  #: "1.5 to 3 thou": from end to end
#: how many figures stand for which places along the part, with one or two angles at each
_SHAPES: Mapping[int, tuple[int, ...]] = {1: (1,), 2: (1, 1), 3: (1, 1, 1), 4: (2, 2), 6: (2, 2, 2)}


@dataclass(frozen=True, slots=True)
class Field:
    """What one field of a ``[[bearing]]`` holds."""

    says: str
    plausible: tuple[float, float]  #: m
    most: int  #: figures
    least: int = 1  #: figures
    each: bool = True  #: of one bearing
    group: bool = False  #: of all mains or all rods
    grid: bool = False  #: readings of a diameter


FIELDS: Mapping[str, Field] = {
    "bore": Field("housing bore without shells", sizes.PLAUSIBLE_SIZE, 6, grid=True),
    "inside": Field("bore with the shells in", sizes.PLAUSIBLE_SIZE, 6, grid=True),
    "journal": Field("journal", sizes.PLAUSIBLE_SIZE, 6, grid=True),
    "shell": Field("wall of upper and lower shell", sizes.PLAUSIBLE_SHELL, 2, group=True),
    "strip": Field("clearance by gauge strip", sizes.PLAUSIBLE_STRIP, 3),
    "crush": Field("height of a shell above the joint", sizes.PLAUSIBLE_CRUSH, 2, group=True),
    "spread": Field("width of a loose shell over its bore", sizes.PLAUSIBLE_SPREAD, 2, group=True),
    "undersize": Field(
        "undersize of the shells measured", sizes.PLAUSIBLE_UNDERSIZE, 1, group=True
    ),
    "new_journal": Field("journal when new", sizes.PLAUSIBLE_SIZE, 2, each=False, group=True),
    "new_bore": Field("housing bore when new", sizes.PLAUSIBLE_SIZE, 2, each=False, group=True),
    "new_shell": Field(
        "wall of a standard shell", sizes.PLAUSIBLE_SHELL, 2, each=False, group=True
    ),
    "wanted": Field(
        "clearance wanted", sizes.PLAUSIBLE_CLEARANCE, 2, least=2, each=False, group=True
    ),
    "sizes": Field("undersizes available", sizes.PLAUSIBLE_UNDERSIZE, 12, each=False, group=True),
}


class FieldError(ValueError):
    """A text that is no value of its field; the message says what is right."""


def place_of(text: str) -> Place | Kind | None:
    """The bearing, or all of a kind, that a text names; None where it names none.

    >>> place_of("main 3"), place_of("no 3 main"), place_of("rods"), place_of("lower shell")
    (Place(kind=<Kind.MAIN: 'main'>, number=3), Place(kind=<Kind.MAIN: 'main'>, number=3), <Kind.ROD: 'rod'>, None)
    """
    found = _PLACE.fullmatch(text.strip())
    if not found:
        return None
    kind = Kind.MAIN if found[2].lower().startswith("main") else Kind.ROD
    digits = found[1] or found[3]
    if digits is None:
        return kind
    number = int(digits)
    both = found[1] and found[3]
    return Place(kind, number) if not both and 1 <= number <= MOST_BEARINGS else None


_FRONT, _REAR = ("front",), ("rear", "back", "flywheel end")
_MIDDLE = ("centre", "center", "middle")


def along(text: str, kind: Kind, count: int | None) -> Place | None:
    """The bearing that a place along the crank names; ``count``: how many of its kind there are.

    >>> along("front main", Kind.MAIN, None), along("rear main", Kind.MAIN, 3)
    (Place(kind=<Kind.MAIN: 'main'>, number=1), Place(kind=<Kind.MAIN: 'main'>, number=3))
    >>> along("centre main", Kind.MAIN, 3), along("rear main", Kind.MAIN, None)
    (Place(kind=<Kind.MAIN: 'main'>, number=2), None)
    """
    said = " ".join(text.lower().split())
    for end in (" bearing", f" {kind.value}s", f" {kind.value}"):
        said = said.removesuffix(end)
    if said in _FRONT:
        return Place(kind, 1)
    if said in _REAR and count:
        return Place(kind, count)
    if said in _MIDDLE and count and count % 2:
        return Place(kind, count // 2 + 1)
    return None


def count_in(text: str) -> int | None:
    """How many bearings a text says; None where it says no such number.

    >>> count_in("4"), count_in("four"), count_in("99")
    (4, None, None)
    """
    number = int(text) if text.strip().isdecimal() and len(text.strip()) <= 2 else 0
    return number if 1 <= number <= MOST_BEARINGS else None


def wrong_count(text: str, place: Place | Kind) -> str:
    """What is wrong with a count that cannot be, or that is of one bearing."""
    if isinstance(place, Place):
        return f"of all {place.kind.plural}, not of {place.says}"
    return f"'{plain(text, 20)}' is no number from 1 to {MOST_BEARINGS}"


def numbers_and_unit(text: str) -> tuple[list[list[str]], str]:
    """The figures of a text, those joined by '/' together, and the unit behind them.

    >>> numbers_and_unit("2.4480/2.4478 2.4479 in")
    ([['2.4480', '2.4478'], ['2.4479']], 'in')
    >>> numbers_and_unit("1.5 to 3 thou")
    ([['1.5'], ['3']], 'thou')
    """
    plain_text = _TO.sub(" ", _COMMA.sub(r"\1.\2", text))
    found = _NUMBERS.fullmatch(plain_text) if len(text) <= 200 else None
    if not found or not found[1]:
        return [], ""
    return [[n for n in group.split("/") if n] for group in found[1].split()], found[2] or ""


def unit_of(text: str) -> str:
    """The unit of length a text is written in, as typed; empty where it has none.

    >>> unit_of("2.4480 2.4478 in")
    'in'
    """
    name = numbers_and_unit(text)[1].strip()
    return name if unit_named(name, LENGTH) else ""


def grid_of(name: str, text: str) -> Grid:
    """The figures of a field [m], by place along the part and angle. Raises FieldError."""
    field = FIELDS[name]
    groups, unit = numbers_and_unit(text)
    flat = [n for group in groups for n in group]
    if not flat:
        raise FieldError(
            f"'{plain(text, 40)}' is no length here; write it like {_LIKE[field.grid]}"
        )
    try:
        values = [[parse(f"{n} {unit}", LENGTH) for n in group] for group in groups]
    except UnitError as error:
        raise FieldError(str(error)) from None
    low, high = field.plausible
    for value in (v for group in values for v in group):
        if not low <= value <= high:
            raise FieldError(_out_of_range(field, value, unit))
    if len(flat) > field.most:
        raise FieldError(f"{len(flat)} figures; at most {field.most}")
    if len(flat) < field.least:
        raise FieldError("one figure; write the least and the most")
    return _shaped(values, field)


def _shaped(values: list[list[float]], field: Field) -> Grid:
    """Figures as places and angles. Raises FieldError where they are neither."""
    flat = [v for group in values for v in group]
    if not field.grid:
        return (tuple(flat),)
    if any(len(group) > 1 for group in values):
        if len({len(group) for group in values}) > 1 or len(values[0]) > 2 or len(values) > 3:
            raise FieldError("write the same one or two angles at each of one to three places")
        return tuple(tuple(group) for group in values)
    if len(flat) not in _SHAPES:
        raise FieldError(
            f"{len(flat)} figures; 1, 2 (front, rear), 3 (front, middle, rear), 4 or 6 (each "
            "place in line with the load, then across)"
        )
    grid, at = [], 0
    for angles in _SHAPES[len(flat)]:
        grid.append(tuple(flat[at : at + angles]))
        at += angles
    return tuple(grid)


DIGITS = 6  #: of a figure that is repeated as it was typed
NO_POINT = 1000  #: a whole figure from here on may lack its decimal point


def _out_of_range(field: Field, value: float, unit: str) -> str:
    """What is wrong with a value that cannot be, and the unit in which it could be right."""
    low, high = field.plausible
    shown = show(value, LENGTH, unit, DIGITS)
    figure = float(shown.split()[0])
    ends = f"{show(low, LENGTH, unit)} to {show(high, LENGTH, unit)}"
    says = f"{shown} cannot be the {field.says}; expected {ends}."
    shifted = [value / by for by in (10, 100, 1000) if low <= value / by <= high]
    if figure.is_integer() and figure >= NO_POINT and len(shifted) == 1:
        return f"{says} Did you mean {show(shifted[0], LENGTH, unit, DIGITS)}?"
    near = [
        name
        for name, factor in (("thou", 25.4e-6), ("in", 25.4e-3), ("mm", 1e-3))
        if low <= figure * factor <= high
        and unit_named(unit, LENGTH) is not unit_named(name, LENGTH)
    ]
    if not near:
        return says
    return f"{says} Did you mean {show(figure, LENGTH, 'm', DIGITS).split()[0]} {near[0]}?"


_LIKE = {
    True: "2.4482 2.4481 2.4480 2.4480 in, or 62.18 mm",
    False: "0.0021 in, 2.1 thou or 0.053 mm",
}

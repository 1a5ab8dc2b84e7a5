"""Figures typed without a unit."""

from __future__ import annotations

import re

from diagnose.case.units import JobUnits
from knowledge.model import Measure
from knowledge.units import (
    COUNT,
    DIMENSIONS,
    LENGTH,
    PRESSURE,
    Dimension,
    UnitError,
    parse,
    pointed,
)
from knowledge.work import Task

NO_UNITS = JobUnits({})  #: of a job that has no figure yet
_BARE = re.compile(r"[+-]?(?:\d+(?:\.\d*)?|\.\d+)")
#: thousandths of an inch: nobody reads a millimetre so fine
_FINE = re.compile(r"[+-]?0?\.(?:\d{4,5}|00\d)")
#: units a bare figure may be in where the job has none yet, if only one of them can be right
_USUAL = {LENGTH: ("in", "mm", "thou"), PRESSURE: ("psi", "bar")}


def with_unit(text: str, word: Measure | Task, units: JobUnits) -> str:
    """A bare figure with the unit of the job, or with the one usual unit in which it can be.

    Any other text as it is: a figure without a unit that may be several things is refused by the
    parser.

    >>> from knowledge.book import the_book
    >>> clearance = the_book().measures["main_clearance"]
    >>> with_unit("0.0045", clearance, NO_UNITS), with_unit("4.5", clearance, NO_UNITS)
    ('0.0045 in', '4.5 thou')
    >>> with_unit("0.11", clearance, JobUnits({"length": "mm"}))
    '0.11 mm'
    """
    figure, dimension = pointed(text.strip()), DIMENSIONS.get(word.dimension)
    if dimension is None or dimension is COUNT or not _BARE.fullmatch(figure):
        return text
    if dimension is LENGTH and _FINE.fullmatch(figure):
        return f"{figure} in"
    used = units.of(dimension)
    if used is not None and _possible(figure, used, word, dimension):
        return f"{figure} {used}"
    if _range(word) is None:
        return text
    others = [u for u in _USUAL.get(dimension, ()) if _possible(figure, u, word, dimension)]
    return f"{figure} {others[0]}" if len(others) == 1 else text


def _possible(figure: str, unit: str, word: Measure | Task, dimension: Dimension) -> bool:
    try:
        value = parse(f"{figure} {unit}", dimension)
    except UnitError:
        return False
    ends = _range(word)
    return ends is None or ends[0] <= value <= ends[1]


def _range(word: Measure | Task) -> tuple[float, float] | None:
    """What can be real, SI; None where nothing is known of it."""
    if isinstance(word, Measure):
        return word.plausible
    return word.measures.plausible if word.measures else None

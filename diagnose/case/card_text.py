"""Figures of an engine's card as manuals print them: "0.0010 to 0.0025 in, limit 0.0035 in"."""

from __future__ import annotations

import re
from dataclasses import dataclass

from diagnose.case.file_faults import Faults, bounds_in_words
from diagnose.errors import plain
from knowledge.card import CardFigure, Form
from knowledge.units import DIMENSIONS, Dimension, UnitError, parse, unit_in, unit_named

_NUMBER = r"[+-]?(?:\d+\s+\d+/\d+|\d+/\d+|\d+(?:\.\d*)?|\.\d+)"
_TO = re.compile(r"\s+to\s+|\s+-\s+|(?<=[\d\x22])-(?=[\d.])|\s*[–—…]\s*|\s*\.\.+\s*", re.IGNORECASE)
_EITHER_WAY = re.compile(r"\s*(?:±|\+/-|\+-)\s*")
_MOST = re.compile(r"(?:at most|up to|max(?:imum)?\.?|no more than|not over|under)\s+(.+)", re.I)
_LEAST = re.compile(r"(?:at least|min(?:imum)?\.?|no less than|not under|over)\s+(.+)", re.I)
_WORN = re.compile(
    r"(?P<fit>.*?)(?:[,;]\s*|\s+|^)(?:(?:wear|service|worn|worn out)?\s*limit|worn(?: out)?(?: at)?)"
    r"\s+(?P<worn>.+)",
    re.IGNORECASE,
)
_ANGLE = re.compile(r"\s*(?:\+|plus|then)\s*(\d+(?:\.\d*)?)\s*(?:deg(?:rees?)?|°)\s*$", re.I)
LONGEST = 100  #: characters; a real figure is far shorter


@dataclass(frozen=True, slots=True, kw_only=True)
class CardValue:
    """A figure as typed and in SI.

    ``low`` to ``high`` as fitted, None where it is open; ``worn``: the wear limit, where it is
    printed; ``unit``: as typed, else the card's; ``unit_typed``: whether ``text`` has it.
    """

    figure: CardFigure
    text: str
    low: float | None
    high: float | None
    worn: float | None = None
    unit: str | None = None
    unit_typed: bool = False

    @property
    def written(self) -> str:
        """As typed, with the card's unit where none was; a turn by angle stays behind it."""
        if self.unit_typed or not self.unit:
            return self.text
        turn = _ANGLE.search(self.text) if self.figure.dimension == "torque" else None
        end = turn.start() if turn else len(self.text)
        return f"{self.text[:end]} {self.unit}{self.text[end:]}"

    @property
    def middle(self) -> float | None:
        """The middle of what is fitted; None where one end is open."""
        if self.low is None or self.high is None:
            return None
        return 0.5 * (self.low + self.high)


_ONLY = {"speed": "rpm"}  #: the unit of dimensions that a workshop writes in one unit only


def card_value(
    text: str, figure: CardFigure, usual_unit: str | None, where: str, faults: Faults
) -> CardValue | None:
    """Read a figure of the card; None and a fault where that cannot be.

    ``usual_unit``: taken where none is typed.
    """
    try:
        value = _read(text, figure, usual_unit or _ONLY.get(figure.dimension))
    except UnitError as error:
        faults.add(f"{where}: {error}")
        return None
    dimension = DIMENSIONS[figure.dimension]
    low, high = figure.plausible
    for each in (value.low, value.high, value.worn):
        if each is not None and not low <= each <= high:
            bounds = bounds_in_words((low, min(high, 1e12)), dimension, f"1 {value.unit}")
            faults.add(f"{where}: '{plain(text)}' cannot be the {figure.says}; {bounds}")
            return None
    return value


def _read(text: str, figure: CardFigure, usual_unit: str | None) -> CardValue:
    typed = " ".join(text.split())
    if not typed or len(typed) > LONGEST:
        raise UnitError(_like(text, figure))
    dimension = DIMENSIONS[figure.dimension]
    fit, worn_text = typed, ""
    if found := _WORN.fullmatch(typed):
        fit, worn_text = found["fit"].strip(), found["worn"]
    if figure.dimension == "torque":
        fit = _ANGLE.sub("", fit)
    worn_unit = unit_in(worn_text, dimension) if worn_text else None
    ends = _fitted_ends(fit, figure, worn_unit or usual_unit) if fit else _Ends()
    typed_unit = ends.unit or worn_unit
    unit = typed_unit or usual_unit
    worn = _figure_in(worn_text, dimension, unit) if worn_text else None
    low, high = ends.low, ends.high
    if low is not None and high is not None and low > high:
        raise UnitError(f"'{plain(text)}': the smaller figure comes first")
    if worn is not None and high is not None and worn < high:
        raise UnitError(f"'{plain(text)}': the wear limit is within the fit of a new one")
    return CardValue(
        figure=figure,
        text=typed,
        low=low,
        high=high,
        worn=worn,
        unit=unit,
        unit_typed=typed_unit is not None,
    )


@dataclass(frozen=True, slots=True)
class _Ends:
    """Both ends of what is fitted, SI, None where it is open; the unit that was typed."""

    low: float | None = None
    high: float | None = None
    unit: str | None = None


def _fitted_ends(text: str, figure: CardFigure, usual_unit: str | None) -> _Ends:
    """Read what is fitted. Raises UnitError."""
    dimension = DIMENSIONS[figure.dimension]
    for between in (_EITHER_WAY, _TO):
        parts = between.split(text)
        if len(parts) == 2 and all(parts):
            typed = unit_in(parts[1], dimension) or unit_in(parts[0], dimension)
            unit = typed or usual_unit
            first, second = (_figure_in(part, dimension, unit) for part in parts)
            if between is _TO:
                return _Ends(first, second, typed)
            off = second - _figure_in("0", dimension, unit)
            return _Ends(first - off, first + off, typed)
    if found := _MOST.fullmatch(text):
        most = _figure_in(found[1], dimension, usual_unit)
        return _Ends(high=most, unit=unit_in(found[1], dimension))
    if found := _LEAST.fullmatch(text):
        least = _figure_in(found[1], dimension, usual_unit)
        return _Ends(low=least, unit=unit_in(found[1], dimension))
    value, unit = _figure_in(text, dimension, usual_unit), unit_in(text, dimension)
    match figure.form:
        case Form.FITTED:
            raise UnitError(
                f"'{plain(text)}' may be a fit or a limit; write a range like {_examples(figure)}"
            )
        case Form.LEAST:
            return _Ends(low=value, unit=unit)
        case Form.MOST:
            return _Ends(high=value, unit=unit)
        case Form.NOMINAL:
            return _Ends(value, value, unit)


def _figure_in(text: str, dimension: Dimension, unit: str | None) -> float:
    """One figure in SI, in ``unit`` where it has none. Raises UnitError."""
    bare = re.fullmatch(_NUMBER, text.strip()) is not None
    if bare and unit:
        text = f"{text.strip()} {unit}"
    elif bare and dimension.id != "count":
        first, *_, last = dimension.spellings
        raise UnitError(f"'{plain(text)}' has no unit; write it like {first} or {last}")
    return parse(text, dimension)


def _like(text: str, figure: CardFigure) -> str:
    return f"'{plain(text, 40)}' is no figure; write it like {_examples(figure)}"


def _examples(figure: CardFigure) -> str:
    first, second, _ = DIMENSIONS[figure.dimension].spellings
    if figure.form is not Form.FITTED:
        return f"{first} or {second}"
    return "'0.0010 to 0.0025 in', 'at most 0.0035 in' or '0.02 to 0.06 mm, limit 0.09 mm'"


def is_unit(name: str, dimension: Dimension) -> bool:
    """Whether a unit of the dimension has that name."""
    return unit_named(name, dimension) is not None

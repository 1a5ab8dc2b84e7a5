"""Values of all bearings in a row: "mains 2.5 3 2.5 2.8 3.2 thou" are those of mains 1 to 5."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import NamedTuple

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.values.values_named import Name, says_nothing
from diagnose.understanding.words.amounts import Amount, in_millimetres
from diagnose.understanding.words.phrases import Mark

LEAST = 4  #: figures in a row that are one bearing each; fewer may be places of one
_LEAD = 3  #: words from the name to the first figure
_BETWEEN = frozenset([",", "/", "and", "&", ";"])
_FIGURES = frozenset(["number", "length"])


class Cell(NamedTuple):
    """One value of a row: whose, the number of its bearing from 1, its text and its token."""

    name: Name
    number: int
    text: str
    at: int
    led_by: tuple[Mark[object], ...] = ()  #: the words that give the number


def in_a_row(line: Line, every: list[Amount], names: list[Name]) -> Iterator[Cell]:
    """The values of each bearing that stand in a row behind the name of their kind."""
    for name in names:
        cells = _figures_behind(line, name)
        if len(cells) < LEAST:
            continue
        said = [a.texts[-1] for a in every if a.first <= cells[-1] < a.last]
        unit = said[0].rpartition(" ")[2] if said else ""
        values = [line.tokens[k].value for k in cells]
        if unit == "in" and any(v.isdecimal() for v in values):
            continue  # "1 .002, 2 .003" names the bearings
        for number, k in enumerate(cells, 1) if unit else ():
            value = line.tokens[k].value
            yield Cell(name, number, value if " " in value else f"{value} {unit}", k)


def metric(cell: Cell, every: list[Amount]) -> Cell:
    """A value of a row, in millimetres where it is a bare decimal that no bearing has in inches."""
    amount = next((a for a in every if a.first <= cell.at < a.last), None)
    if amount is None:
        return cell
    (text,) = in_millimetres(replace(amount, texts=(cell.text,)), cell.name.quantity)
    return cell._replace(text=text)


def _figures_behind(line: Line, name: Name) -> list[int]:
    """The places of the figures that follow a name and one another."""
    found: list[int] = []
    for k in range(name.mark.last, len(line.tokens)):
        token = line.tokens[k]
        if token.is_figure and token.kinds <= _FIGURES:
            found.append(k)
        elif (found and token.word not in _BETWEEN) or (
            not found and (k - name.mark.last >= _LEAD or not _leads(line, k))
        ):
            break
    return found


def _leads(line: Line, at: int) -> bool:
    return line.word(at) == ":" or says_nothing(line, at)

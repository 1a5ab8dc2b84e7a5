"""Read pressures of two stations of one engine: "flybridge gauge 10 psi, wheelhouse gauge 45 psi"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from diagnose.understanding.pressures.pressures import value_at
from diagnose.understanding.pressures.stations_named import station_of
from diagnose.understanding.pressures.unitless import psi_of
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.phrases import Mark
from knowledge.units import PSI

_SHOWS = 6  #: words from the name of a station to the figure
_LIMIT = "panel_error"  #: the limit of a gauge's difference from a trusted one


@dataclass(frozen=True, slots=True)
class _At:
    """A pressure that a station shows [psi], and where it is said."""

    station: str
    pressure: float
    line: Line
    first: int
    last: int


@reader(
    {
        "flybridge gauge 10 psi, wheelhouse gauge 45 psi at the same time": [
            "finding second_instrument_disagrees present",
            "finding gauges_at_two_stations present",
        ],
        "Flybridge says 10 psi. The downstairs gauge says 45 psi.": [
            "finding second_instrument_disagrees present",
            "finding gauges_at_two_stations present",
        ],
        "upper station 10 psi, lower station 45 psi": [
            "finding second_instrument_disagrees present",
            "finding gauges_at_two_stations present",
        ],
        "Flybridge gauge says 10, wheelhouse gauge 45 at the same time": [
            "finding second_instrument_disagrees present",
            "finding gauges_at_two_stations present",
        ],
        "upper helm gauge says 10, lower helm says 45": [
            "finding second_instrument_disagrees present",
            "finding gauges_at_two_stations present",
        ],
        "downstairs 45, upstairs 10": [
            "finding second_instrument_disagrees present",
            "finding gauges_at_two_stations present",
        ],
        "10 psi at the upper helm, 45 psi at the lower helm": [
            "finding second_instrument_disagrees present",
            "finding gauges_at_two_stations present",
        ],
        "flybridge gauge 44 psi, wheelhouse gauge 45 psi": [
            "finding gauges_at_two_stations present"
        ],
        "flybridge gauge 10 psi, and 45 psi when cold": [],
        "lower oil pressure 10 psi, upper hose 45 psi": [],
    }
)
def two_stations(paragraph: Paragraph) -> Iterator[Fact]:
    """Two stations with a pressure each; they disagree where no two right gauges can differ so."""
    said = [at for line in paragraph.lines for at in _pressures(line)]
    for a, b in combinations(said, 2):
        if a.station == b.station:
            continue
        spans = tuple(s for at in (a, b) for s in at.line.span([Mark(True, at.first, at.last)]))
        most = a.line.lexicon.book.limits[_LIMIT].typical / PSI
        if abs(a.pressure - b.pressure) > most:
            yield Fact(
                "finding", {"what": "second_instrument_disagrees", "state": "present"}, spans
            )
        yield Fact("finding", {"what": "gauges_at_two_stations", "state": "present"}, spans)
        return


def _psi(line: Line, at: int) -> list[float]:
    """The pressures of a figure [psi] that may be one."""
    sure = "pressure" in line.tokens[at].kinds or value_at(line, at, "psi", spoken_of=True)
    return psi_of(line, at) if sure else []


def _pressures(line: Line) -> Iterator[_At]:
    """Each station that is named with the pressure it shows."""
    for n, token in enumerate(line.tokens):
        for mark in station_of(line, Mark(token.value, n, n + 1)):
            near, far = min(mark.last, n + 1), max(mark.first, n)
            apart = any(t.is_mark for t in line.tokens[near:far]) or far - near >= _SHOWS
            if not apart and token.kinds & {"pressure", "number"} and (figures := _psi(line, n)):
                yield _At(mark.value.says, figures[0], line, mark.first, mark.last)

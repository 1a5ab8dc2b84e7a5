"""The stations of one engine that a sentence names, as "flybridge" or "lower helm"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.instruments_named import GAUGES, STATION_SIDES, STATION_WORDS, STATIONS


@dataclass(frozen=True, slots=True)
class StationName:
    """What a person calls a station."""

    says: str


def stations_named(line: Line) -> Iterator[Mark[StationName]]:
    """Each station that is named, with the word for panel or gauge behind it."""
    words = [t.word for t in line.tokens]
    after = 0
    for k, word in enumerate(words):
        then = words[k + 1] if k + 1 < len(words) else ""
        side = word in STATION_SIDES and then in STATION_WORDS | GAUGES
        if k < after or not (side or word in STATIONS):
            continue
        after = k + 1
        while after < len(words) and words[after] in STATION_WORDS | GAUGES:
            after += 1
        yield Mark(StationName(word), k, after)


def beside_each_other(line: Line) -> bool:
    """Whether two stations are named."""
    return len({m.value.says for m in stations_named(line)}) > 1


def station_of(line: Line, figure: Mark[str]) -> list[Mark[StationName]]:
    """The station whose gauge shows a figure: named before it, or behind where figures lead."""
    named = list(stations_named(line))
    if not named:
        return []
    if any("pressure" in t.kinds for t in line.tokens[: named[0].first]):
        behind = [m for m in named if m.first >= figure.last]
        return behind[:1] if len(named) > 1 else []
    return [m for m in named if m.last <= figure.first][-1:]

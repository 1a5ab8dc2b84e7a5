"""What shows, and when: the words of every subject, put together."""

from __future__ import annotations

from typing import TypeVar

from knowledge.lexicon.shows import (
    lamp,
    noises,
    pressure_high,
    pressure_low,
    pressure_none,
    pressure_normal,
    pressure_slow,
    pressure_unsteady,
    when_hot_or_later,
    when_moving,
    when_running,
)
from knowledge.reports.words import Circumstance, Shows

Key = TypeVar("Key")


def _gathered(*tables: dict[Key, tuple[str, ...]]) -> dict[Key, tuple[str, ...]]:
    """One table of all; a key stands in one file only."""
    return {key: said for table in tables for key, said in table.items()}


#: what shows, by what is said
SHOWS: dict[Shows, tuple[str, ...]] = _gathered(
    pressure_none.SHOWS,
    pressure_low.SHOWS,
    pressure_high.SHOWS,
    pressure_unsteady.SHOWS,
    lamp.SHOWS,
    pressure_slow.SHOWS,
    pressure_normal.SHOWS,
    noises.SHOWS,
)
#: the same where a clause begins so, in a text that speaks of the pressure: "drops when hot"
BARE: dict[Shows, tuple[str, ...]] = _gathered(
    pressure_none.BARE,
    pressure_low.BARE,
    pressure_unsteady.BARE,
    lamp.BARE,
    pressure_normal.BARE,
)
#: the same of "it", where gauge, pressure or lamp was named last
OF_THE_GAUGE: dict[Shows, tuple[str, ...]] = _gathered(
    pressure_none.OF_THE_GAUGE,
    pressure_low.OF_THE_GAUGE,
    pressure_high.OF_THE_GAUGE,
    pressure_unsteady.OF_THE_GAUGE,
    lamp.OF_THE_GAUGE,
    pressure_slow.OF_THE_GAUGE,
)
#: when it shows, by the words for it; where two fit equally well, the first holds
DURING: dict[Circumstance, tuple[str, ...]] = _gathered(
    when_running.DURING,
    when_hot_or_later.DURING,
    when_moving.DURING,
)

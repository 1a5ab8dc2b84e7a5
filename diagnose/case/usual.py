"""What each reading usually was: the pressure known of the sound engine at that speed and heat."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

from knowledge.model import Reading
from knowledge.pressure.gauge import at_pump, is_bound, of_one_state


def with_usual(readings: Sequence[Reading], sound: Iterable[Reading]) -> list[Reading]:
    """The readings, each with the usual pressure at its speed and heat where one is known.

    ``sound``: readings of the sound engine. A reading that names its usual pressure names it for
    every other at the same speed and heat as well, on whatever gauge. The last known counts.
    """
    known = [*sound, *_named(readings)]
    return [_completed(reading, known) for reading in readings]


def _named(readings: Iterable[Reading]) -> Iterator[Reading]:
    """The usual pressures that readings name, as readings of the sound engine."""
    for reading in readings:
        if reading.usual is not None:
            yield replace(reading, pressure=reading.usual, usual=None)


def _completed(reading: Reading, known: Sequence[Reading]) -> Reading:
    if reading.usual is not None or at_pump(reading):
        return reading
    for sound in reversed(known):
        if not (is_bound(sound) or at_pump(sound)) and of_one_state(reading, sound):
            return replace(reading, usual=sound.pressure)
    return reading

"""Which part a name means, and whether the part itself did what the words say."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.meant.beside_what_shows import DROPPED
from knowledge.lexicon.work.beside_work import NOT_THE_ENGINE
from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Done

_PUMP, _THE = "pump", frozenset(["the", "a", "my", "its", "this", "that", "new"])
_GASKETS = frozenset(["gasket", "seal", "o-ring", "oring", "hose"])
_WAS = frozenset(["was", "is", "were", "been", "got", "has", "had"])


def same_pump(
    line: Line, part: Mark[PartWorked], parts: Sequence[Mark[PartWorked]], pump: PartWorked | None
) -> Mark[PartWorked]:
    """What "the pump" is: the fuel pump, where that was named before it.

    ``pump``: the one that the sentence before names.
    """
    bare = part.last - part.first == 1 and line.word(part.first) == _PUMP
    if not bare or line.word(part.first - 1) not in _THE:
        return part
    meant = [*pumps(line, (p for p in parts if p.last <= part.first)), part.value]
    if len(meant) == 1 and pump is not None:
        return Mark(pump, part.first, part.last)
    return Mark(meant[-2] if len(meant) > 1 else part.value, part.first, part.last)


def pumps(line: Line, parts: Iterable[Mark[PartWorked]]) -> list[PartWorked]:
    """The parts of a sentence in whose names a pump stands."""
    return [p.value for p in parts if _PUMP in line.words(p.first, p.last)]


def did_so_itself(line: Line, at: int, part: Mark[PartWorked]) -> bool:
    """Whether a word behind a part says what it did: "the gauge dropped", "the gasket blown out"."""
    word = line.word(at)
    if word == "blown" and line.word(part.last - 1) in _GASKETS:
        return True
    if word in ("opens", "opening") and part.value.area == "cooling_system":
        return True  # "the moment the thermostat opens"
    return word == "blew" or (word in DROPPED and part.value.area == "instrument")


def rebuilt_another(line: Line, mark: Mark[str]) -> bool:
    """Whether what was rebuilt is no engine: "carb rebuilt last summer"."""
    at = mark.first - 1
    while line.word(at) in _WAS:
        at -= 1
    return mark.value == "whole_engine" and line.word(at) in NOT_THE_ENGINE


def is_a_place(line: Line, action: Mark[Done]) -> bool:
    """Whether it says which of two, and where that is: "the new one on the filter head"."""
    one = line.word(action.last - 1) == "new" and line.word(action.last) == "one"
    return one and line.word(action.last + 1) in ("on", "in", "at")


def is_a_tool(line: Line, part: Mark[PartWorked]) -> bool:
    """Whether something was done with it: "poked it out with a bit of wire"."""
    at = part.first - 1
    while line.word(at) in (
        "a",
        "some",
        "bit",
        "of",
        "piece",
        "thin",
        "stiff",
        "copper",
        "welding",
    ):
        at -= 1
    return line.tokens[part.first].stem == "wire" and line.word(at) in ("with", "using")

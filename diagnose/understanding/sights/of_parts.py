"""Drop what single words of a part's state would say by themselves of the engine or the pressure."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.understanding.sentences.paragraph import Paragraph
from diagnose.understanding.sights.things import Pair, pairs
from diagnose.understanding.words.facts import Fact, is_inside

#: said of the engine or of the pressure, in words that are a state of a part as well
_OF_THE_WHOLE = frozenset(
    [
        "engine_seized",
        "hard_to_turn",
        "high_mileage",
        "maker_calls_it_normal",
        "stopped_with_loss_of_power",
    ]
)


def without_words_of_parts(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """Without findings that a longer statement on a part takes back or means otherwise.

    "relief valve seized open" is no seized engine, "strainer within spec" no word on the reading;
    "gallery plugs: no fault found" is no plug that was found missing.
    """
    states = [
        span
        for pair in pairs(paragraph)
        if len(pair.marks) > 1 and not _of_the_engine(pair)
        for span in pair.line.span([pair.said_by])
    ]
    sound = [(f.name, f.hull) for f in facts if f.is_absent]
    return [
        f
        for f in facts
        if not f.is_present
        or (
            not (f.name in _OF_THE_WHOLE and f.is_within(states))
            and not any(f.name == name and is_inside(f.hull, [hull]) for name, hull in sound)
        )
    ]


def _of_the_engine(pair: Pair) -> bool:
    """Whether a state is said of all the engine: "the engine seized"."""
    said = {pair.line.word(k) for m in pair.marks for k in range(m.first, m.last)}
    return bool(said & {"engine", "motor"})

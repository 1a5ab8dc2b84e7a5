"""What a warning makes of a text: alarms that stayed silent, and driving on where none was seen."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from diagnose.understanding.facts import Fact, Span
from diagnose.understanding.paragraph import Paragraph
from knowledge.lexicon.other_things import PRESSURES, WARNS
from knowledge.lexicon.pressure_words import DAMAGE
from knowledge.reports.words import Shows

_NOTHING_WARNED, _LAMP = "nothing_warned", "lamp_comes_on"
#: what an alarm should have warned of
_HARM = {Shows.KNOCK.value, Shows.LOST_POWER.value, Shows.NO_START.value}
#: what somebody does, or does not do, who sees a warning
_REACTIONS = frozenset(["ran_on_without_pressure", "ran_long_without_distress"])
#: say by themselves that an engine was stopped: "I shut it down straight away"
_SHUTS = frozenset(
    ["shut", "killed", "switched", "off", "down", "engine", "motor", "towed", "dared", "dare"]
)
_RUINED = frozenset(["engine_seized", "stopped_with_loss_of_power", "bearing_knock"])


def silent_alarms(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, with "the alarm never sounded" as an alarm that is silent where no damage is said."""
    words = {t.word for line in paragraph.lines for t in line.tokens}
    harmed = bool(words & DAMAGE) or any(
        f.fields.get("shows") in _HARM or (f.name in _RUINED and f.state == "present")
        for f in facts
    )
    if harmed:
        return list(facts)
    silent = {"what": _LAMP, "state": "absent"}
    return [replace(f, fields=silent) if f.name == _NOTHING_WARNED else f for f in facts]


def after_a_warning(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, without driving on or stopping at once where the text names nothing to stop for.

    "drove it home from the seller" and "stopped in the village" are no such thing.
    """
    words = {t.word for line in paragraph.lines for t in line.tokens}
    shown = any(f.table in ("behaviour", "reading") for f in facts)
    if shown or words & (PRESSURES | WARNS | DAMAGE):
        return list(facts)
    shut = [(t.start, t.end) for line in paragraph.lines for t in line.tokens if t.word in _SHUTS]
    return [f for f in facts if f.name not in _REACTIONS or _holds(f, shut)]


def _holds(fact: Fact, words: Sequence[Span]) -> bool:
    """Whether one of these words is among those of a fact."""
    return any(a <= first and last <= b for a, b in fact.spans for first, last in words)

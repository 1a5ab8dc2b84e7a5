"""Alarms that stayed silent: whether damage came all the same, or they had no reason to sound."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from diagnose.understanding.sentences.paragraph import Paragraph
from diagnose.understanding.words.facts import Fact
from knowledge.lexicon.shows.beside_pressure import DAMAGE
from knowledge.reports.words import Shows

_NOTHING_WARNED, _LAMP = "nothing_warned", "lamp_comes_on"
#: what an alarm should have warned of
_HARM = {Shows.KNOCK.value, Shows.LOST_POWER.value, Shows.NO_START.value}
_RUINED = frozenset(["engine_seized", "stopped_with_loss_of_power", "bearing_knock"])


def silent_alarms(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, with "the alarm never sounded" as an alarm that is silent where no damage is said."""
    words = {t.word for line in paragraph.lines for t in line.tokens}
    harmed = bool(words & DAMAGE) or any(
        f.fields.get("shows") in _HARM or (f.name in _RUINED and f.is_present) for f in facts
    )
    if harmed:
        return list(facts)
    silent = {"what": _LAMP, "state": "absent"}
    return [replace(f, fields=silent) if f.name == _NOTHING_WARNED else f for f in facts]

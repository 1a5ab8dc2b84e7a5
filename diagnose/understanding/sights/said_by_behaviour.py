"""Take back findings that what gauge or lamp shows says already, with when or since when."""

from __future__ import annotations

from collections.abc import Iterable

from diagnose.understanding.words.facts import Fact
from knowledge.lexicon.meant.said_by_behaviour import SAID_BY_BEHAVIOUR

_ANY = "*"
_HOT, _COLD = frozenset(["hot", "warming up"]), frozenset(["cold"])


def without_what_shows_says(facts: list[Fact]) -> list[Fact]:
    """The facts without findings that a behaviour of the same text says by itself.

    "lost oil pressure all of a sudden" is a behaviour with its onset, no finding besides.
    """
    shown = [f for f in facts if f.table == "behaviour"]
    return [f for f in facts if not (_is_finding(f) and _says(f.name, shown))]


def _is_finding(fact: Fact) -> bool:
    return fact.table == "finding" and not fact.is_absent


def _says(finding: str, shown: Iterable[Fact]) -> bool:
    if finding == "good_cold_low_hot":
        when = [frozenset(_words(f, "during")) for f in shown]
        return any(w & _HOT for w in when) and any(w & _COLD for w in when)
    return any(
        bool(set(_words(f, field)) & words) or (_ANY in words and bool(_words(f, field)))
        for field, words in SAID_BY_BEHAVIOUR.get(finding, ())
        for f in shown
    )


def _words(fact: Fact, field: str) -> list[str]:
    said = fact.fields.get(field, "")
    if isinstance(said, list):
        return said
    return [said] if isinstance(said, str) and said else []

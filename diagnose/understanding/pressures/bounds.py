"""How a pressure is bounded, and what beside it is none of its own: "never above 25", "12 at most"."""

from __future__ import annotations

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.values.beside_numbers import (
    ABOUT,
    MOST,
    NEVER,
    OR_LESS,
    OR_MORE,
    OVER,
    REACHES,
    UNDER,
)
from knowledge.reports.words import Shows

_HARDLY = frozenset(["hardly", "barely", "scarcely"])


def bounded(line: Line, i: int, value: str) -> tuple[int, str]:
    """The first token of a pressure with its bound, and the pressure as a case file writes it."""
    if "of the dial" in value:
        return i, value
    after = (line.word(i + 1), line.word(i + 2))
    if after[0] == "or" and after[1] in OR_LESS:
        return i, f"under {value}"
    if after[0] == "or" and after[1] in OR_MORE:
        return i, f"over {value}"
    words = [line.word(k) for k in range(max(0, i - 5), i)]
    start = i - len(words)
    for back, word in enumerate(reversed(words), 1):
        at = i - back
        if line.tokens[at].is_figure or line.tokens[at].is_mark:
            break
        if word in REACHES and (never := _not_before(line, start, at)) is not None:
            return never, f"under {value}"
        never = next((k for k in range(start, at) if line.word(k) in NEVER), None)
        if word in OVER and back <= 2:
            return (never, f"never above {value}") if never is not None else (at, f"over {value}")
        if word in UNDER and back <= 2:
            return (never, f"never below {value}") if never is not None else (at, f"under {value}")
        if word in MOST and back <= 3:
            return at, f"at most {value}"
        if word in ABOUT and back == 1 and " to " not in value and value != "0":
            return at, f"about {value}"
    if (bound := _never_goes(line, i)) is not None:
        return i, f"{bound} {value}"
    if after[0] in ("max", "maximum", "tops") or after in (("at", "most"), ("at", "best")):
        return i, f"at most {value}"
    return i, value


def _never_goes(line: Line, i: int) -> str | None:
    """The bound said behind a pressure: "10 psi and never goes above"; None where there is none."""
    rest = [line.word(k) for k in range(i + 1, min(i + 9, len(line.tokens)))]
    at = next((k for k, w in enumerate(rest[:4]) if w in NEVER), None)
    if at is None:
        return None
    for k, word in enumerate(rest[at + 1 : at + 4], at + 1):
        ends = (rest[k + 1 : k + 2] or [""])[0] in (
            "",
            ",",
            "it",
            "that",
            "this",
            "at",
            "and",
            "than",
        )
        if word in OVER and ends:
            return "never above"
    return None


def _not_before(line: Line, first: int, at: int) -> int | None:
    """The "not" straight before a word, at most one word between; None where there is none."""
    near = range(max(first, at - 2), at)
    return next((k for k in near if line.word(k) in NEVER | {"even", "not"}), None)


def hardly(line: Line, i: int) -> bool:
    """Whether "hardly" is all that denies a pressure, which then was read: "hardly reads 10"."""
    return any(line.word(k) in _HARDLY for k in range(i - 3, i))


def of_alarm(line: Line, head: Mark[object], mark: Mark[object]) -> bool:
    """Whether a lamp or an alarm shows in the clause of a mark, not the pressure: "20, light on at idle"."""
    clause = line.clause(mark.first)
    inside = clause.first <= head.first < clause.last
    shown = line.find(line.lexicon.shows)
    alarms = (Shows.LAMP, Shows.UNSTEADY, Shows.TRIPS)
    last = clause.last if head.first < clause.first else mark.first  # "1 bar, below 1000 it beeps"
    return not inside and any(clause.first <= m.first < last for m in shown if m.value in alarms)

"""How long an engine is said to have run well: "fine for 35,000 miles", "ran great for two years"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from datetime import date

from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Clause, Sentence, Token, clause_at
from knowledge.lexicon.work.beside_work import ABOUT, HOURS_A_WEEK, MILES_A_WEEK, RAN_WELL

_WELL_BEFORE = 6  #: words from "fine" to its figure
_ABOUT_MOST = 3  #: words between "for" and its figure
_DATE = 5  #: words of a clause that is a date: "about three weeks ago"
_OLDEST = 120  #: years that work on an engine is old
RUN_IN = 25.0  #: hours of running after which work is no longer just before (judgement)
_AT_ONCE = 200.0  #: miles after which work is no longer just before (judgement)
#: long times said without a number, as a case file writes them
WITHOUT_NUMBER = {"years": "3 years", "months": "3 months", "weeks": "3 weeks", "ages": "3 years"}
_DENIES = frozenset(["not", "never", "no"])


def ran_well(tokens: Sequence[Token]) -> Iterator[Mark[str]]:
    """Each stretch of service in a sentence, its length as a case file writes it: "2 years"."""
    for k, token in enumerate(tokens):
        if token.word != "for":
            continue
        at = k + 1
        while at < min(len(tokens) - 1, k + 1 + _ABOUT_MOST) and tokens[at].word in ABOUT:
            at += 1
        length = _length(tokens[at]) if at < len(tokens) else ""
        first = min((n for n in _before(tokens, k) if tokens[n].word in RAN_WELL), default=None)
        if length and first is not None:
            yield Mark(length, first, at + 1)


def _before(tokens: Sequence[Token], k: int) -> list[int]:
    """The words shortly before a place, back to a mark; none where one of them denies."""
    found: list[int] = []
    for n in range(k - 1, max(0, k - _WELL_BEFORE) - 1, -1):
        if tokens[n].is_mark:
            break
        if tokens[n].word in _DENIES:
            return []
        found.append(n)
    return found


def _length(token: Token) -> str:
    """The time of service that a figure says; empty where it is minutes or a run-in."""
    if "distance" in token.kinds:
        driven = driven_in(token)
        return "" if driven == "straight before" else driven
    if "time" not in token.kinds:
        return WITHOUT_NUMBER.get(token.word, "")
    amount, _, unit = token.value.partition(" ")
    hours = unit == "h" and float(amount) >= RUN_IN
    return token.value if hours or unit in ("days", "weeks", "months", "years") else ""


def driven_in(distance: Token) -> str:
    """The time in which a distance is driven, as a case file writes it: "500 miles" is 2 weeks."""
    number = re.search(r"[\d,.]+", distance.word)
    miles = float(number[0].replace(",", "").rstrip(".") or 0) if number else 1.0
    if re.search(r"\d\s*k(?!m)", distance.word):
        miles *= 1000
    if "km" in distance.word or "kilom" in distance.word:
        miles /= 1.6
    if miles < _AT_ONCE:
        return "straight before"
    return _calendar(miles / MILES_A_WEEK)


def run_in(time: Token) -> str:
    """The time that hours of running take: "200 hours ago" on an engine's meter is 9 months."""
    amount, _, unit = time.value.partition(" ")
    if unit != "h" or float(amount) < RUN_IN:
        return time.value
    return _calendar(float(amount) / HOURS_A_WEEK)


def years_since(tokens: Sequence[Token], k: int) -> str:
    """How long ago a year or ten years were that "in" leads to: "in 1995", "back in the 80s"."""
    before = [t.word for t in tokens[max(0, k - 2) : k]]
    if not before or "in" not in before or before[-1] not in ("in", "the"):
        return ""
    word = tokens[k].word.replace("'", "")
    year = re.fullmatch(r"(19|20)?(\d)(\d)(s?)", word)
    if year is None or not (year[1] or year[4]) or (before[-1] == "the") is not bool(year[4]):
        return ""
    century = int(year[1] or ("20" if year[2] in "012" else "19")) * 100
    ago = date.today().year - (century + int(year[2] + year[3]))
    return f"{ago} years" if 0 < ago < _OLDEST else ""


def _calendar(weeks: float) -> str:
    for unit, length in (("years", 52.0), ("months", 4.3), ("weeks", 1.0)):
        if weeks >= length:
            return f"{weeks / length:.0f} {unit}"
    return f"{max(1.0, weeks * 7):.0f} days"


def dated_from(sentence: Sentence, clause: Clause) -> int:
    """Where the date of a clause begins: in the one before it, "three weeks ago | I had it done"."""
    if not clause.first:
        return clause.first
    before = clause_at(sentence.clauses, clause.first - 1)
    words = [t.word for t in sentence.tokens[before.first : before.last] if not t.is_mark]
    dated = len(words) <= _DATE and words[-1:] == ["ago"]
    return before.first if dated else clause.first

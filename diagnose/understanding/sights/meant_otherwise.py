"""Drop findings that words beside them mean otherwise: "the AC compressor seized" is no engine."""

from __future__ import annotations

from collections.abc import Iterable

from diagnose.understanding.sentences.paragraph import Line, Paragraph, places_of
from diagnose.understanding.words.facts import Fact
from knowledge.lexicon.meant.otherwise import (
    ALSO_ELSEWHERE,
    DONE_THEN,
    ITS_OWN,
    LAST,
    LEADS_ON,
    MONTHS,
    OF_ANOTHER_SYSTEM,
    OTHER_OWNERS,
    PAST,
    PAST_TIMES,
    PUT_RIGHT,
    STILL,
    Otherwise,
)
from knowledge.lexicon.meant.tables import OTHERWISE

_LEAD = 2  #: words before a part, and of its name, in which stands whose it is


def without_other_meanings(facts: Iterable[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts without those that the words beside them mean otherwise, or that are long past."""
    return [
        f
        for f in facts
        if f.table not in ("finding", "behaviour") or not _is_otherwise(f, paragraph)
    ]


def _is_otherwise(fact: Fact, paragraph: Paragraph) -> bool:
    absent = fact.is_absent
    shows = fact.fields.get("shows")
    key = f"={shows}" if shows else f"-{fact.name}" if absent else fact.name
    cases = OTHERWISE.get(key, ())
    mended = not absent and fact.name in PUT_RIGHT
    elsewhere = not absent and fact.name in ALSO_ELSEWHERE
    if not cases and not mended and not elsewhere:
        return False
    for line in paragraph.lines:
        places = places_of(fact, line)
        if places:
            return (
                any(_fits(case, line, places) for case in cases)
                or (mended and _is_past(line, places))
                or (elsewhere and _is_of_another(line, places))
            )
    return False


def _words(line: Line, places: Iterable[int]) -> set[str]:
    """The words in some places, and their kinds: "@minutes"."""
    those = [line.tokens[k] for k in places if 0 <= k < len(line.tokens)]
    return {t.word for t in those} | {f"@{kind}" for t in those for kind in t.kinds}


def _clauses(line: Line, places: list[int]) -> set[str]:
    """The words of every clause that a finding has words in."""
    return {w for k in places for w in _words(line, range(*_ends(line, k)))}


def _ends(line: Line, at: int) -> tuple[int, int]:
    clause = line.clause(at)
    return clause.first, clause.last


def _fits(case: Otherwise, line: Line, places: list[int]) -> bool:
    """Whether all that a case asks is so in a sentence."""
    within = _words(line, range(places[0], places[-1] + 1))
    every = _words(line, range(len(line.tokens)))
    behind = _behind(line, places[-1] + 1)
    return (
        (not case.said or bool(within & case.said))
        and (not case.beside or bool(_clauses(line, places) & case.beside))
        and (not case.then or behind in case.then)
        and (not case.anywhere or bool(every & case.anywhere))
        and (not case.also or bool(every & case.also))
        and not every & case.unless
    )


def _behind(line: Line, at: int) -> str:
    """The word in a place, or that behind "of" there: "3 litres of water"."""
    word = line.word(at + 1) if line.word(at) == "of" else line.word(at)
    return word.partition(" ")[0]


def _is_past(line: Line, places: list[int]) -> bool:
    """Whether the clause says that it was so in a year that is over, and not that it is so now."""
    words = _clauses(line, places)
    if words & STILL:
        return False
    first, last = _ends(line, places[-1])
    past = any(line.word(k) in LAST and line.word(k + 1) in PAST_TIMES for k in range(first, last))
    return past or bool(words & PAST) or _put_right_then(line, last)


def _put_right_then(line: Line, at: int) -> bool:
    """Whether the next clause says when it was put right: "sludge on the screen, cleaned in August"."""
    if at >= len(line.tokens):
        return False
    first, last = _ends(line, at)
    words = [line.word(k) for k in range(first, last)]
    while words and words[0] in LEADS_ON:
        words = words[1:]
    return words[:1] != [] and words[0] in DONE_THEN and bool(set(words) & (MONTHS | {"ago"}))


def _is_of_another(line: Line, places: list[int]) -> bool:
    """Whether a part is said to be of another system: "water pump shaft snapped"."""
    if _words(line, range(len(line.tokens))) & ITS_OWN:
        return False
    first = places[0]
    lead = _words(line, range(max(line.clause(first).first, first - _LEAD), first + _LEAD))
    within = _words(line, range(first, places[-1] + 1))
    return bool(lead & OTHER_OWNERS or within & OF_ANOTHER_SYSTEM)

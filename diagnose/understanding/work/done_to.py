"""Which action of a sentence was done to one of its parts, by what stands between them."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.put_on import COPULA, PUT, says_where_to
from diagnose.understanding.work.which_part import did_so_itself
from knowledge.lexicon.values.quantities import ORDINALS
from knowledge.lexicon.words.word_sets import set_of as _set
from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Done

FAR, _PASSIVE = 4, 3  #: words between an action and its part, before it or after
#: say that a part is new, in front of it only
NEW = frozenset(
    [
        "new",
        "brand",
        "another",
        "different",
        "second",
        "third",
        "fresh",
        "replacement",
        "spare",
        "borrowed",
        "reproduction",
        "repro",
    ]
)
#: before an action behind its part: "the pump has just been replaced"
_BEFORE_PASSIVE = _set("was is been has were got just already had and have all also both out apart")
_ONTO = _set("across under over through behind against around onto into up down on")
_CHECKS = frozenset(
    ["checked", "tested", "verified", "compared", "confirmed", "checking", "measured"]
)
_ALL = frozenset(["all", "both", "also", "brand"])
_DASHES, _NEAR = frozenset(["-", "–", "—", ":", "(", "/"]), 3
#: between a part and what was done to it: "the sender that I replaced"
_RELATIVE = frozenset(["that", "which", "i", "we", "ive", "he", "they", "id", "only", "newly"])
_WORKS, _ARTICLES = frozenset(["rebuild", "overhaul"]), frozenset(["the", "a", "my", "its", "this"])


def action_on(
    line: Line, part: Mark[PartWorked], actions: list[Mark[Done]], parts: list[Mark[PartWorked]]
) -> Mark[Done] | None:
    """The action that is nearest of those done to a part; None where none is."""
    best: Mark[Done] | None = None
    for action in actions:
        if _is_done_to(line, action, part, parts):
            near = len(_places_between(action, part))
            best = action if best is None or near < line.distance(best, part) else best
    return best


def _places_between(action: Mark[Done], part: Mark[PartWorked]) -> range:
    if action.first < part.first:
        return range(action.last, part.first)
    return range(part.last, action.first)


def _is_done_to(
    line: Line, action: Mark[Done], part: Mark[PartWorked], parts: list[Mark[PartWorked]]
) -> bool:
    """Whether an action is done to a part by what stands between them."""
    between, behind = _places_between(action, part), action.first > part.first
    marks = {line.word(k) for k in between if line.tokens[k].is_mark}
    if marks and not (behind and marks <= _DASHES and len(between) < _NEAR):
        return False
    if action.first == part.last and did_so_itself(line, action.first, part):
        return False
    if any(p is not part and p.first in between for p in parts):
        return False
    if says_where_to(line, action, part, parts):
        return False
    if len(between) > (_PASSIVE if behind else FAR):
        return False
    words = {line.word(k) for k in between}
    if behind and line.word(action.first) in NEW and not _ends_new(line, action, part, words):
        return False
    led = words
    if _relative(line, action, words) and not _has_object(line, action, parts):
        led = words - _RELATIVE
    if behind and led - _DASHES - _BEFORE_PASSIVE:
        return False
    return not _goes_to_another(line, action, part, led)


def _ends_new(line: Line, action: Mark[Done], part: Mark[PartWorked], words: set[str]) -> bool:
    """Whether "new" behind a part is said of it: "the pump is new", "pump and filter all new"."""
    ends = action.last in (line.clause(part.first).last, len(line.tokens))
    ends = ends or line.tokens[action.last].is_mark
    return bool(words & COPULA) or (ends and words <= _ALL)


def _goes_to_another(
    line: Line, action: Mark[Done], part: Mark[PartWorked], words: set[str]
) -> bool:
    """Whether the words between lead to another thing: "changed to 5w30 and the gauge reads low"."""
    between, before = _places_between(action, part), action.first < part.first
    if line.word(action.last - 1) in ORDINALS and words & _ARTICLES:
        return True  # "second trip the lifters rattled"
    if words & {"but", "then", "when", "still", "reads", "same"}:
        return True
    if "and" in words and any("grade" in line.tokens[k].kinds for k in between):
        return True
    if before and line.word(action.last) in ("it", "them") and part.value.area == "oil_change":
        return True  # "cleaned it and the oil stopped blowing out"
    if _of_the_engine(line, action, part, words):
        return True  # "since the rebuild gauge reads high"
    if before and line.word(action.first) in PUT and words & _ONTO:
        return True  # "put a straightedge across the pump"
    if line.word(action.first) in NEW and _of_a_check(line, action):
        return True
    return before and "with" in words and action.value is Done.REBUILT  # "with standard bearings"


def _of_the_engine(
    line: Line, action: Mark[Done], part: Mark[PartWorked], between: set[str]
) -> bool:
    """Whether "the rebuild" names work on the engine, and the part begins what is said next."""
    noun = line.word(action.first) in _WORKS and line.word(action.first - 1) in _ARTICLES
    return noun and action.first < part.first and not between & {"of", "on"}


def _relative(line: Line, action: Mark[Done], words: set[str]) -> bool:
    """Whether "that I", "which they" or the like leads to an action behind a part."""
    return bool(words & {"i", "we", "ive", "id", "that", "which", "they"}) and line.word(
        action.first
    ).endswith(("ed", "lt"))


def _has_object(line: Line, action: Mark[Done], parts: Sequence[Mark[PartWorked]]) -> bool:
    """Whether what follows an action is what it was done to."""
    after = range(action.last, action.last + _NEAR)
    return any(p.first in after for p in parts) or line.word(action.last) in (
        "the",
        "a",
        "it",
        "my",
    )


def _of_a_check(line: Line, action: Mark[Done]) -> bool:
    """Whether it names what was checked with: "checked with a second gauge"."""
    clause = line.clause(action.first)
    said = line.words(clause.first, action.first)
    return bool(said & _CHECKS) and "with" in said

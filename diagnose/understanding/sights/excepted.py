"""Denials that deny nothing: with an exception, of what nobody knew, of what was to be prevented."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise

from diagnose.understanding.sentences.paragraph import Line, Paragraph, places_of
from diagnose.understanding.words.facts import Fact
from knowledge.lexicon.stance.stance import NEGATION
from knowledge.lexicon.words.joints import UNTIL
from knowledge.lexicon.words.word_sets import set_of as _set

#: behind what is denied; what comes then is so after all
_EXCEPT = _set("except excepting bar barring save besides")
_EXCEPT_PAIRS = frozenset((("apart", "from"), ("aside", "from"), ("other", "than")))
#: an exception that is no trouble: "no metal except the usual fine paste"
_HARMLESS = _set("usual normal fine paste fuzz fuzzy dust few-hairs expected gearbox axle diff")
_AS_FAR = 3  #: words between what is denied and the exception
#: nobody knew it, so it was so: "no idea that it leaked"; behind a verb of seeing: of one only
_UNAWARE = frozenset(
    (
        *(("no", w) for w in ("idea", "clue", "inkling", "notion")),
        *(
            (n, w)
            for n in ("didnt", "not", "never", "without")
            for w in _set(
                "know knew known knowing realise realised realising realize realized realizing"
            )
        ),
    )
)
_ANY = _set("any anything if whether why what where how")
_IT = _set("it they that")
_PREVENTED = _set("couldnt cant cannot wouldnt wont didnt doesnt dont could would not")
_NEGATION = frozenset(NEGATION)
#: findings that deny by their words
_DENIALS = frozenset(["nothing_warned"])
_WHO = _set("i we he she they the my a it")


def without_empty_denials(facts: Iterable[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts without findings that a sentence only seems to deny.

    "no leaks except a drip at the sump", "I had no idea that it leaked", "parked nose down so it
    couldn't leak" do not say that nothing leaks.
    """
    return [
        f
        for f in facts
        if f.table != "finding"
        or not (f.is_absent or f.name in _DENIALS)
        or not any(_says_nothing(line, f) for line in paragraph.lines)
    ]


def _says_nothing(line: Line, fact: Fact) -> bool:
    places = places_of(fact, line)
    return bool(places) and (
        _has_exception(line, places)
        or _was_unknown(line, places)
        or _is_prevented(line, places)
        or _was_so_until(line, places)
    )


def _has_exception(line: Line, places: list[int]) -> bool:
    for k in range(places[0], min(places[-1] + 1 + _AS_FAR, len(line.tokens))):
        pair = (line.word(k), line.word(k + 1))
        if pair in _EXCEPT_PAIRS or pair[0] in _EXCEPT:
            behind = line.words(k + 1, len(line.tokens))
            return not behind & _HARMLESS
    return False


def _was_unknown(line: Line, places: list[int]) -> bool:
    first = line.clause(places[0]).first
    said = [line.word(k) for k in range(first, places[-1] + 1)]
    for at, pair in enumerate(pairwise(said)):
        if pair in _UNAWARE:
            rest = said[at + 2 :]
            return not set(rest) & (_ANY | _NEGATION)
    return False


def _was_so_until(line: Line, places: list[int]) -> bool:
    """Whether it is so since somebody did something: "never came on until I changed the filter"."""
    behind = range(places[-1] + 1, min(places[-1] + 1 + _AS_FAR, len(line.tokens)))
    until = next((k for k in behind if line.word(k) in UNTIL), None)
    return until is not None and line.word(until + 1) in _WHO


def _is_prevented(line: Line, places: list[int]) -> bool:
    """Whether "so (that) it couldn't" stands before the words, or at their head."""
    for k in range(max(0, places[0] - 5), places[0] + 1):
        at = k + 1 if line.word(k + 1) != "that" else k + 2
        if line.word(k) == "so" and line.word(at) in _IT and line.word(at + 1) in _PREVENTED:
            return True
    return False

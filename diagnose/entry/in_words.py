"""Answers in a person's own words to a question with numbered choices, yes and no, or figures.

A sentence answers no question by one word that stands somewhere in it: it is an answer where the
words of a choice are most of it, or where its first words are one; what else it says is to be read.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from diagnose.entry.answers import Answer
from diagnose.entry.numbers import Readings
from diagnose.entry.picking import Picked, Reply
from diagnose.entry.questions import (
    CheckQuestion,
    ChoiceQuestion,
    EngineQuestion,
    FindingQuestion,
    NumbersQuestion,
    Question,
    Said,
    TrialQuestion,
    TriedQuestion,
)
from diagnose.entry.trials import TrialInput
from diagnose.lookup.tokens import tokens

STORY_WORDS = 5  #: from so many on, words that answer no choice are a story
_SHORT = 6  #: words of an answer that begins with yes or no
_HEDGES = re.compile(
    r"\b(?:about|around|roughly|approx|approximately|maybe|perhaps|probably|number|no\.|option"
    r"|choice|i|think|it's|its|it|is|say|just)\b|~",
    re.I,
)
_YES = frozenset(["yes", "yeah", "yep", "yup", "aye", "sure", "definitely", "certainly"])
_NO = frozenset(["no", "nope", "nah", "never", "not"])
_NOT_DONE = frozenset(["not", "no", "never", "nobody", "none", "nothing", "haven't", "hasn't"])
_UNSURE = frozenset(["idea", "sure", "know", "certain", "tell", "remember", "say", "checked"])
_DENIED = frozenset(["not", "no", "never", "without"])  #: as tokens
_ASKS = frozenset(["whats", "what's", "hows", "how's", "wheres", "where's", "whos", "huh"])
_ASKS_HOW = (
    *(["what", w] for w in ("is", "are", "does", "do")),
    *(["how", w] for w in ("do", "can", "would", "does")),
    *(["where", w] for w in ("is", "do", "are")),
)
_MOST = 0.5  #: share of the tokens of a sentence that its choices must have
_CLAUSES = re.compile(r"\s*(?:[,;:.!?]+(?=\s|$)|\b(?:and|but|because|although|though)\b)\s*", re.I)
#: behind "no" and "yes" where these answer; any other word is what there is none of
_GOES_ON = frozenset(
    [
        *("it", "its", "it's", "they", "there", "that", "i", "i've", "we", "you", "he", "she"),
        *("not", "never", "nothing", "none", "nobody", "but", "and", "only", "just", "never"),
        *("does", "doesn't", "is", "isn't", "did", "didn't", "has", "hasn't", "sir", "way"),
    ]
)


@dataclass(frozen=True, slots=True)
class Heard:
    """What a line says in answer to a question, and the words of it that are still to be read."""

    answer: Said | None
    rest: str


def heard(question: Question, line: str) -> Heard:
    """What a line of words says at a question that took no number or letter of it."""
    said = answer_in_words(question, line)
    if not is_story(line):
        return Heard(said, "" if said is not None else line)
    if said is not None and _is_most(question, said, line):
        return Heard(said, "")
    first, *others = _CLAUSES.split(line, maxsplit=1)
    if others and first and not is_story(first):
        read = question.read(first)
        picked = isinstance(read, Answer | Picked) and read not in (Picked(None), Answer("unknown"))
        answer = read if picked else answer_in_words(question, first)
        if answer is not None and not isinstance(answer, Reply):
            return Heard(answer, others[0])
    return Heard(None, line)


def answer_in_words(question: Question, line: str) -> Said | None:
    """What words say in answer to a question that took no number or letter of them; None: nothing.

    Nothing is taken that may mean two of the choices.
    """
    bare = " ".join(_HEDGES.sub(" ", line).split())
    if bare and bare != line and (answer := _plainly(question, bare)) is not None:
        return answer
    words = re.findall(r"[a-z']+", line.lower().replace("’", "'"))
    if not words:
        return None
    match question:
        case FindingQuestion():
            return _yes_or_no(words)
        case TrialQuestion() | CheckQuestion() | TriedQuestion() if _is_not_done(words):
            if isinstance(question, TrialQuestion):
                return TrialInput(question.trial, None)
            return Picked(() if isinstance(question, TriedQuestion) else None)
        case ChoiceQuestion():
            phrases = [(c.says, *c.also) for c in question.choices]
            return _places(line, phrases, question.menu.many, _alone(question))
        case EngineQuestion() | CheckQuestion() | TriedQuestion():
            many = not isinstance(question, EngineQuestion)
            return _places(line, [(says,) for says in question.says], many)
    return None


def _is_most(question: Question, said: Said, line: str) -> bool:
    """Whether the words of the choices that were taken are most of a line."""
    if not isinstance(said, Picked) or not said.places:
        return True
    match question:
        case ChoiceQuestion():
            phrases = [
                p for i in said.places for c in [question.choices[i]] for p in (c.says, *c.also)
            ]
        case EngineQuestion() | CheckQuestion() | TriedQuestion():
            phrases = [question.says[i] for i in said.places]
        case _:
            return True
    words = tokens(line)
    named = {token for phrase in phrases for token in tokens(phrase)}
    return sum(word in named for word in words) >= _MOST * len(words)


def asks_back(line: str) -> bool:
    """Whether a line asks what the question means, and answers nothing: "whats a knock".

    >>> asks_back("whats a knock"), asks_back("what it did before"), asks_back("a knock")
    (True, False, False)
    """
    words = re.findall(r"[a-z']+", line.lower().replace("’", "'"))
    asked = bool(words) and (words[0] in _ASKS or words[:2] in _ASKS_HOW)
    return asked and (len(words) < STORY_WORDS or line.rstrip().endswith("?"))


def is_story(line: str) -> bool:
    """Whether a line is long enough to tell what the engine does."""
    return len(re.findall(r"[A-Za-z']+", line)) >= STORY_WORDS


def taken_as(question: Question, said: Said) -> str:
    """What an answer in words was taken for, as the question has it."""
    match question, said:
        case (
            (ChoiceQuestion() | EngineQuestion() | CheckQuestion() | TriedQuestion()),
            Picked(places=tuple() as places),
        ):
            return " and ".join(question.says[place] for place in places) or "none of these"
        case CheckQuestion(), Picked():
            return "not done"
        case FindingQuestion(), Answer():
            return {"present": "yes", "absent": "no"}.get(said.state, "don't know")
        case TrialQuestion(), TrialInput(result=None):
            return "not tried"
    return ""


def _plainly(question: Question, line: str) -> Said | None:
    """What a line says by the question's own reading: numbers, or a figure."""
    if not any(c.isdigit() for c in line) or not isinstance(
        question, ChoiceQuestion | EngineQuestion | NumbersQuestion
    ):
        return None
    answer = question.read(line)
    return answer if isinstance(answer, Picked | Readings) else None


def _yes_or_no(words: Sequence[str]) -> Answer | None:
    """A short answer that begins with yes or no; "no idea" is neither."""
    if len(words) > _SHORT or words[0] not in _YES | _NO:
        return None
    if words[0] == "no" and len(words) >= STORY_WORDS and words[1] not in _GOES_ON:
        return None  # "no gauge on this one" denies a gauge
    if _UNSURE & set(words[1:]):
        return Answer("unknown") if words[0] in _NO else None
    return Answer("present" if words[0] in _YES else "absent")


def _is_not_done(words: Sequence[str]) -> bool:
    """Whether a short answer says that nothing was done."""
    return len(words) <= _SHORT and words[0] in _NOT_DONE and not _UNSURE & set(words)


def _alone(question: ChoiceQuestion) -> frozenset[int]:
    """Places of choices that say that none of the others is true."""
    return frozenset(i for i, c in enumerate(question.choices) if not c.there)


def _places(
    line: str, phrases: Sequence[Sequence[str]], many: bool, alone: frozenset[int] = frozenset()
) -> Picked | None:
    """The choices a line names; None where it names none, or several where one is wanted."""
    said = frozenset(tokens(line))
    plain = " ".join(line.lower().split())
    found: dict[int, frozenset[str]] = {}
    for place, each in enumerate(phrases):
        if plain in each:
            return Picked((place,))
        fitting = [_shared(said, frozenset(tokens(phrase))) for phrase in each]
        best = max(fitting, key=len, default=frozenset())
        if best:
            found[place] = best
    # a choice whose words are all among those of a closer one is not meant
    kept = [p for p, own in found.items() if not any(own < other for other in found.values())]
    one = len(kept) == 1
    if not kept or (not one and (not many or alone & set(kept))):
        return None
    return Picked(tuple(kept))


def _shared(said: frozenset[str], phrase: frozenset[str]) -> frozenset[str]:
    """Tokens that a line and a phrase share, where one of them holds all of the other."""
    if not phrase - _DENIED or said & _DENIED != phrase & _DENIED:
        return frozenset()
    return said & phrase if phrase <= said or (said <= phrase and said) else frozenset()

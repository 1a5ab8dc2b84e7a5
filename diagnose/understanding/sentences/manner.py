"""Words that only look like a doubt or a plan: "maybe 5 psi", "can be levered", "it would drop"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Sentence, Token, clause_at
from knowledge.lexicon.meant.beside_what_shows import AT_THE_PIN, MOVED_OFF, MOVES
from knowledge.lexicon.stance.stance import NEGATION, SHARES, WOULD
from knowledge.lexicon.stance.stance_words import (
    ALL_THE_SAME,
    ASIDES,
    ASKS_OF,
    BINDS,
    CAME_THEN,
    CAUSES,
    DID_THEN,
    FOR_LONG,
    GOOD_ENGINE,
    HAD_NO_MORE,
    HANDS,
    ID,
    IN_VAIN,
    INSTRUMENTS,
    KNOWN_WHY,
    LOOKED_FOR,
    MEANS,
    MOVES_SO,
    OF_OIL,
    REASONS,
    REFUSES,
    REFUSING,
    SHOULD_BE,
    TURNS_LITTLE,
    WARMTH,
    WEEKS,
    WHAT_ASKS,
)
from knowledge.lexicon.words.joints import UNTIL
from knowledge.reports.words import Shows

#: fears that a reason may follow
FEARS = frozenset(["worried", "afraid", "scared", "nervous", "paranoid", "worry"])
_BY_HAND = 4  #: words behind what was done to a part in which it is said with what
_BEFORE_A_MONTH = frozenset(["in", "since", "last", "this", "of", "until", "by", "late", "early"])
_NEAR_PIN = 4  #: words behind "moved" that may name the end of the scale
_TO_CAUSE, _NEAR_CAUSE = 3, 4  #: words from "what" to "cause", and from there to what shows
_HAS = frozenset(
    ["has", "had", "have", "hasnt", "hadnt", "never", "always", "not", "just", "only", "also"]
)
_DONE, _IT_HAS = frozenset(["done", "doing"]), frozenset(["its", "thats"])
_TROUBLE = _IT_HAS | {"it", "this", "that", "which"}
_BEHIND = 5  #: words in which it is said for how long


def is_able(tokens: Sequence[Token], mark: Mark[object]) -> bool:
    """Whether "can be" says what a part lets be done to it: "can be levered back and forth"."""
    done = tokens[mark.last].word if mark.last < len(tokens) else ""
    by_hand = [t.word for t in tokens[mark.last + 1 : mark.last + _BY_HAND]]
    could = tokens[mark.first].word == "could" and "by" in by_hand and HANDS & set(by_hand)
    return (tokens[mark.first].word == "can" or bool(could)) and done.endswith("ed")


AS_NEW = frozenset(["new", "brand", "glass", "mirrors"])


def is_of_amount(tokens: Sequence[Token], hedge: Mark[float]) -> bool:
    """Whether a doubt is of how much, when or what name: "maybe 5 psi", "what looks like sealer"."""
    after = tokens[hedge.last : hedge.last + 2]
    if after and after[0].is_figure:
        return True
    if tokens[hedge.first].word == "may" and tokens[hedge.first - 1].word in _BEFORE_A_MONTH:
        return True  # "rebuilt in May"
    if hedge.first and tokens[hedge.first - 1].word == "what":
        return True
    words = [t.word for t in after]
    if words and words[0] in AS_NEW and tokens[hedge.last - 1].word == "like":
        return True  # "the shells look like new"
    return words[:1] in (["half"], ["quarter"]) or (
        len(words) > 1 and words[0] == "a" and words[1] in SHARES
    )


def is_habit(sentence: Sentence, mark: Mark[bool]) -> bool:
    """Whether "would" tells what an instrument did again and again: "the gauge would drop"."""
    tokens = sentence.tokens
    if len(mark) > 1 or tokens[mark.first].word != "would" or sentence.asks or not mark.first:
        return False
    shown = tokens[mark.first - 1].word in INSTRUMENTS
    after = [t.word for t in tokens[mark.last : mark.last + 2]]
    refused = len(after) > 1 and after[0] in ("not", "never")
    if refused and after[1] in REFUSES and tokens[mark.first - 1].word in REFUSING:
        return not any(t.word in ("if", "unless") for t in tokens)  # "the light would not go out"
    little = (
        len(after) > 1 and after[0] in TURNS_LITTLE and after[1] in REFUSES | {"rotate", "spin"}
    )
    if little and tokens[mark.first - 1].word in REFUSING:
        return True  # "the pump would only turn a few degrees"
    if tokens[mark.first - 1].word == "it" and tokens[mark.first - 2].word in ("before", "until"):
        return bool(after) and after[0] in BINDS
    does = bool(after) and after[0] in MOVES_SO
    return shown and does and not any(t.word in ("if", "unless") for t in tokens)


def is_neglect(tokens: Sequence[Token], mark: Mark[bool]) -> bool:
    """Whether what was not done was not done for long, or never shown: "never had more"."""
    behind = [t.word for t in tokens[mark.last : mark.last + _BEHIND]]
    had = tokens[mark.last - 1].word == "had" and behind[:1] and behind[0] in HAD_NO_MORE
    return tokens[mark.first].word in NEGATION and bool(had or set(behind) & FOR_LONG)


def as_it_should(tokens: Sequence[Token], mark: Mark[bool]) -> bool:
    """Whether "should" only says that it is right: "the pressure is where it should be"."""
    behind = tokens[mark.last].word if mark.last < len(tokens) else ""
    if tokens[mark.first].word == "recommended" and behind in OF_OIL:
        return True  # "went back to the recommended oil"
    if len(mark) > 1 or tokens[mark.first].word not in SHOULD_BE or mark.first < 2:
        return False
    lead, who = (tokens[k].word for k in (mark.first - 2, mark.first - 1))
    return lead in ("where", "as", "like", "than", "what") and who in (
        "it",
        "they",
        "that",
        "i",
        "you",
        "we",
    )


def searched_in_vain(tokens: Sequence[Token]) -> tuple[int, int]:
    """From a verb of checking to "found nothing": what stands between was looked for in vain."""
    words = [t.word for t in tokens]
    first = next((k for k, word in enumerate(words) if word in LOOKED_FOR), len(words))
    for k in range(first + 1, len(words) - 1):
        if (words[k], words[k + 1]) in IN_VAIN:
            return first, k
    return 0, 0


def is_past_week(sentence: Sentence, mark: Mark[bool]) -> bool:
    """Whether "next week" tells what came then: "next week same fault", "it was back next week"."""
    words = [t.word for t in sentence.tokens]
    clause = clause_at(sentence.clauses, mark.first)
    said = set(words[clause.first : clause.last])
    return words[mark.first] == "next" and words[mark.last - 1] in WEEKS and bool(said & CAME_THEN)


def is_aside(tokens: Sequence[Token], mark: Mark[bool]) -> bool:
    """Whether it only leads to what is stated: "I should add", "was worried because"."""
    first, after = tokens[mark.first].word, [t.word for t in tokens[mark.last : mark.last + 1]]
    if first in ("would", "should", "must"):
        return bool(ASIDES & set(after))
    if first in ID and tokens[mark.last - 1].word.endswith(("ed", "lt")):
        return True  # "I'd changed the oil": I had
    if first == "thought":
        return after in (["nothing"], ["little"])
    return first in FEARS and bool(REASONS & set(after))


def stated_again(tokens: Sequence[Token], mark: Mark[bool], last: int) -> int:
    """The end of what is feared or thought: "I thought it was the gauge and kept going"."""
    for k in range(mark.last, last - 1):
        follows = tokens[k].word in ("and", "so") and tokens[k + 1].word in DID_THEN
        if follows or tokens[k].word in UNTIL:
            return k
    return last


def known_why(tokens: Sequence[Token]) -> Iterator[int]:
    """The places of "why" behind which it is stated: "does anyone know why it drops?"."""
    for k, token in enumerate(tokens[:-1]):
        before = {t.word for t in tokens[max(0, k - _BEHIND) : k]}
        if token.word == "why" and before & KNOWN_WHY and tokens[k + 1].word not in WOULD:
            yield k


def asked_cause(tokens: Sequence[Token], shows: Sequence[Mark[Shows]]) -> Iterator[int]:
    """The places of what shows, of which only the cause is asked.

    "What would cause low oil pressure at idle?", "why would the light flicker when hot?".
    """
    for k, token in enumerate(tokens[:-1]):
        if token.word in ASKS_OF and tokens[k + 1].word == "that":
            at = k + 2 if {t.word for t in tokens[max(0, k - 2) : k]} & {"it", "this"} else None
        elif token.word in WHAT_ASKS:
            after = [t.word for t in tokens[k + 1 : k + 1 + _TO_CAUSE]]
            at = next((k + 2 + n for n, word in enumerate(after) if word in CAUSES), None)
        else:
            at = k + 2 if token.word == "why" and tokens[k + 1].word in WOULD else None
        if at is not None:
            yield from (m.first for m in shows if at <= m.first <= at + _NEAR_CAUSE)


def moved_from(tokens: Sequence[Token], mark: Mark[Shows]) -> bool:
    """Whether a needle only did not move from what it showed: "25 psi, it never moved off that"."""
    words = [t.word for t in tokens[mark.first : mark.last]]
    behind = [t.word for t in tokens[mark.last : mark.last + _NEAR_PIN]]
    leads = bool(MOVED_OFF & {words[-1], *behind[:1]})
    return leads and bool(MOVES & set(words)) and not AT_THE_PIN & set(behind)


def does_so(tokens: Sequence[Token], action: Mark[object]) -> bool:
    """Whether "done" is what the trouble does: "it has done this before", "it hasn't done it since"."""
    words = [t.word for t in tokens]
    at = action.first - 1
    while at > 0 and words[at] in _HAS:
        at -= 1
    said = {words[k] for k in range(action.first, action.last)}
    far = at < action.first - 1 or words[at] in _IT_HAS
    return at >= 0 and bool(said & _DONE) and far and words[at] in _TROUBLE


def did_it_again(sentence: Sentence, mark: Mark[bool]) -> bool:
    """Whether "did it again" says that the trouble came back."""
    after = [t.word for t in sentence.tokens[mark.first : mark.first + 4]]
    said = after[:1] in (["did"], ["does"]) and after[1:2] in (["it"], ["this"], ["that"])
    how = bool({"again", "once", "twice"} & set(after)) or bool(ALL_THE_SAME & set(after[2:3]))
    return not sentence.asks and said and how


def meaning_asked(sentence: Sentence) -> int | None:
    """Where a question begins that asks what follows: "so that means I have a bad sender?"."""
    words = [t.word for t in sentence.tokens]
    at = next((k for k, w in enumerate(words) if w in MEANS), None)
    if (
        not sentence.asks
        or at is None
        or "what" in words[:at]
        or words[at + 1 : at + 2] == ["when"]
    ):
        return None
    return at


def says_how_warm(tokens: Sequence[Token], mark: Mark[Shows]) -> bool:
    """Whether "normal" is said of the heat, "good" of another engine: "up to normal running heat"."""
    last, behind = tokens[mark.last - 1].word, [t.word for t in tokens[mark.last : mark.last + 2]]
    if last == "normal":
        return bool(WARMTH & set(behind))
    return last == "good" and len(mark) == 1 and bool(GOOD_ENGINE & set(behind[:1]))

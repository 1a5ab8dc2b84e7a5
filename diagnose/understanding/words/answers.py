"""Questions with the answers to them, and answers by themselves, made plain statements.

In a thread of messages the words that were asked are half of what is stated: "Any metal? None", "leaks:
no", "No the stick is dry". A negation that only answers must not deny what stands behind it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.understanding.words.text import Sentence, Token, sentence_of
from knowledge.lexicon.stance.stance import NEGATION
from knowledge.lexicon.stance.stance_words import AUXILIARIES
from knowledge.lexicon.words.answers import (
    ASKING,
    ASKING_OF_WORK,
    ASKING_WHAT,
    BEING,
    LABELS,
    LOOKED_FOR,
    NAMED,
    NO,
    NO_MORE,
    NO_QUESTION_OF_FACT,
    NOT,
    OWN_SUBJECT,
    SAVE,
    STATES_ITSELF,
    TOPICS,
    YES,
)

_LONGEST = 12  #: words of a question whose words its answer makes stated
_NAME, _SHORT = 4, 8  #: words of a question that only names a thing, and of the answer to it
_HEAD = 6  #: words before the colon of "metal in the filter: no"
_SETS_OFF = frozenset([":", "-", "–", "—"])
_BY_LENGTH = sorted((*ASKING, *ASKING_OF_WORK), key=lambda lead: -len(lead.split()))
_OF_WORK = frozenset(ASKING_OF_WORK)


def answered(cut: Sequence[Sentence]) -> list[Sentence]:
    """The sentences of a text, a question joined with its answer where that makes a statement."""
    plain = list(_each_plain(cut))
    found: list[Sentence] = []
    waiting: Sentence | None = None
    for sentence in plain:
        if waiting is not None:
            found += [waiting] if sentence.asks else _joined(waiting, sentence)
            waiting = sentence if sentence.asks else None
            if waiting is None:
                continue
        elif sentence.asks:
            waiting = sentence
        else:
            found.append(sentence)
    return found + ([waiting] if waiting is not None else [])


def _each_plain(cut: Sequence[Sentence]) -> Iterator[Sentence]:
    """The sentences without labels, each answer apart, each "no" before what it denies."""
    asked = False
    for sentence in cut:
        tokens = _without_label(sentence.tokens, asked)
        tokens = list(_with_heads_denied(_answer_apart(tokens)))
        asked = sentence.asks
        if tokens:
            same = tokens == list(sentence.tokens)
            yield sentence if same else sentence_of(tokens, sentence.asks)


def _without_label(tokens: Sequence[Token], asked: bool) -> list[Token]:
    """Tokens without "Q:", "A2.", "@dave" before them, and the "A" straight behind a question."""
    words = [t.word for t in tokens[:3]]
    if words[:1] == ["@"]:
        return list(tokens[2:])
    if words[:1] == ["a"] and asked:
        return list(tokens[2:] if words[1:2] == [":"] else tokens[1:])
    if words and words[0] in LABELS and words[0] != "a":
        if tokens[1:2] and tokens[1].word in (":", ")", "-"):
            return list(tokens[2:])
        if words[0][0] == "q":
            return list(tokens[1:])
    return list(tokens)


def _answer_apart(tokens: list[Token]) -> list[Token]:
    """Tokens with a comma behind a "no" that only answers: "No it's electric" denies nothing."""
    words = [t.word for t in tokens[:3]]
    for k in range(len(tokens) - 2, 0, -1):
        if (
            tokens[k].word == "no" and tokens[k + 1].word in OWN_SUBJECT
        ):  # "at idle no the stick is dry"
            tokens = [
                *tokens[:k],
                _comma(tokens[k]),
                tokens[k],
                _comma(tokens[k + 1]),
                *tokens[k + 1 :],
            ]
    if len(words) < 3 or words[0] not in NO or tokens[1].is_mark:
        return tokens
    named = words[1] in NAMED and words[2] in BEING
    if not (words[1] in STATES_ITSELF or named):
        return tokens
    return [tokens[0], _comma(tokens[1]), *tokens[1:]]


def _comma(before: Token) -> Token:
    """A comma of no width before a token."""
    return Token(before.start, before.start, ",", ",", frozenset({"mark"}))


def _with_heads_denied(tokens: list[Token]) -> list[Token]:
    """Tokens with the "no" of "leaks: no, smoke: no" before what it denies."""
    out: list[Token] = []
    place = 0
    while place < len(tokens) and tokens[place].is_mark:
        place += 1
    out += tokens[:place]
    first = place  #: where in ``out`` the part of a list begins that is read now
    while place < len(tokens):
        token = tokens[place]
        behind = tokens[place + 1 : place + 2]
        if (
            token.word in _SETS_OFF
            and behind
            and behind[0].word in NO | {"nothing"}
            and _ends(tokens, place + 2)
            and _is_looked_for(out[first:])
        ):
            at = out[first].start
            out.insert(first, Token(at, at, "no", "no"))
            place += 2
            continue
        out.append(token)
        place += 1
        if (token.is_mark and token.word in (",", ":")) or token.word == "and":
            first = len(out)
    return out


def _ends(tokens: Sequence[Token], at: int) -> bool:
    """Whether no more of weight stands before the next comma."""
    for token in tokens[at:]:
        if token.is_mark:
            return True
        if token.word not in NO_MORE:
            return False
    return True


def _is_looked_for(head: Sequence[Token]) -> bool:
    """Whether words name what one looks or listens for."""
    words = [t.word for t in head]
    plain = not any(t.is_mark or t.is_figure or t.word in NEGATION for t in head)
    return bool(words) and len(words) <= _HEAD and plain and bool(LOOKED_FOR & set(words))


def _joined(question: Sentence, answer: Sentence) -> list[Sentence]:
    """A question and what answers it: as statements where the answer says yes, no or what."""
    if (parts := _last_clause_asks(question, answer)) is not None:
        return parts
    said = [t for t in question.tokens if not t.is_mark]
    words = [t.word for t in said]
    if len(words) > _LONGEST or len(question.clauses) > 1 or NO_QUESTION_OF_FACT & set(words):
        return [question, answer]
    lead = answer.tokens[0].word
    denies = lead in NO | NOT and _ends(answer.tokens, 1)
    if (lead in YES or denies) and (content := _content(said, lead in YES)):
        if lead in YES:
            return [sentence_of([*content, *answer.tokens[1:]], False)]
        rest = [t.word for t in answer.tokens if not t.is_mark and t.word not in NO | NOT | NO_MORE]
        if any(t.word in NEGATION for t in content) or (rest[:1] and rest[0] in SAVE):
            return [question, answer]  # "Any noise? Not really, just tappets"
        return [*_denied(content), *_rest(answer)]
    if len(words) <= _NAME and len(answer.tokens) <= _SHORT:
        name = said[len(_lead(words, ASKING_WHAT)) :]
        if name and all(t.word in TOPICS for t in name) and not answer.tokens[0].is_mark:
            at = answer.tokens[0].start
            colon = Token(at, at, ":", ":", frozenset({"mark"}))
            return [sentence_of([*name, colon, *answer.tokens], False)]
    return [question, answer]


def _last_clause_asks(question: Sentence, answer: Sentence) -> list[Sentence] | None:
    """What is stated before the question and what the answer makes of it; None: nothing is.

    "Gauge bounces, oil low? no it is full" states that the gauge bounces.
    """
    if len(question.clauses) < 2 or _lead([t.word for t in question.tokens], _BY_LENGTH):
        return None
    if question.tokens[0].word in AUXILIARIES:
        return None
    last = question.clauses[-1].first
    tail = sentence_of(question.tokens[last:], True)
    joined = _joined(tail, answer)
    if joined == [tail, answer]:
        return None
    return [sentence_of(question.tokens[:last], False), *joined]


def _content(said: Sequence[Token], affirmed: bool) -> Sequence[Token]:
    """What a question asks after, without the words that ask; empty where it asks for an opinion."""
    words = [t.word for t in said]
    if words and words[0] in LABELS:
        words, said = words[1:], said[1:]
    lead = _lead(words, _BY_LENGTH)
    if " ".join(lead) in _OF_WORK and not affirmed:
        return ()
    return said[len(lead) :]


def _lead(words: Sequence[str], leads: Sequence[str]) -> list[str]:
    """The words of the first of these phrases that a question begins with."""
    for each in leads:
        lead = each.split()
        if list(words[: len(lead)]) == lead:
            return lead
    return []


def _denied(content: Sequence[Token]) -> list[Sentence]:
    at = content[0].start
    return [sentence_of([Token(at, at, "no", "no"), *content], False)]


def _rest(answer: Sentence) -> list[Sentence]:
    """What an answer says besides "no": "no, runs clean"."""
    tokens = list(answer.tokens[1:])
    while tokens and (tokens[0].is_mark or tokens[0].word in NO | NOT):
        tokens = tokens[1:]
    if not tokens or all(t.is_mark or t.word in NO_MORE for t in tokens):
        return []
    return [sentence_of(tokens, False)]

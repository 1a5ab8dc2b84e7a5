"""What the negations of a sentence reach: "no leaks, smoke or noise"."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from diagnose.understanding.words.lexicon import Lexicon
from diagnose.understanding.words.text import Sentence, Token, clause_at
from knowledge.lexicon.stance.stance import ENDS_NEGATION, NEGATION
from knowledge.lexicon.stance.stance_words import AUXILIARIES, CANNOT, NONE_ARE, SUBJECTS, WARNED_BY
from knowledge.lexicon.words.openings import DOING, LEADS_TO_DONE, WITH_OBJECT
from knowledge.reports.words import LOSSES, Result

_NEGATION = frozenset(NEGATION)
_OF_NOUNS = frozenset(["no", "none", "without", "zero"])
_REACH, _LONG = 8, 20  #: words that a negation reaches in a clause longer than this
JOINS = frozenset(["and", "with", "plus", "&", "also", "then", ","])


def denied(sentence: Sentence, lexicon: Lexicon) -> Iterator[tuple[int, int]]:
    """What each negation reaches: to the end of its clause, and over a list closed by "or"."""
    tokens = sentence.tokens
    false = {k for m in lexicon.no_negation.find(tokens) for k in range(m.first, m.last)}
    made_none = (m for m in lexicon.results.find(tokens) if m.value is Result.NO_DIFFERENCE)
    ends = {k: m.last for m in made_none for k in range(m.first, m.last) if len(m) > 1}
    own = _own_negations(sentence, lexicon)
    for i, token in enumerate(tokens):
        if token.word not in _NEGATION or i in false or token.is_figure:
            continue
        after = tokens[i + 1].word if i + 1 < len(tokens) else ""
        if token.word == "none" and _runs_on(sentence, i) and after not in NONE_ARE:
            continue  # "3 minutes with none diesel 4 cylinder"
        last = min(clause_at(sentence.clauses, i).last, ends.get(i, len(tokens)))
        last = next((k for k in range(i + 1, last) if _stops(tokens, i, k, own)), last)
        if last - i <= _REACH and i not in own:
            last = _list_end(sentence, last)
        yield i + 1, min(last, i + 1 + _REACH) if _runs_on(sentence, i) else last


def _stops(tokens: Sequence[Token], negation: int, at: int, own: Mapping[int, int]) -> bool:
    """Whether what a negation reaches ends at a place."""
    word = tokens[negation].word
    return (
        (negation in own and at >= own[negation] and tokens[at].word in JOINS)
        or tokens[at].word in ENDS_NEGATION
        or (word in CANNOT and _or_it_warns(tokens, at))
        or (word in _OF_NOUNS and (_begins(tokens, at) or _something_done(tokens, negation, at)))
    )


def _or_it_warns(tokens: Sequence[Token], at: int) -> bool:
    """Whether "or" says what comes of it otherwise: "cannot rev it past 2000 or the light comes on"."""
    return tokens[at].word == "or" and any(t.word in WARNED_BY for t in tokens[at + 1 : at + 4])


def _own_negations(sentence: Sentence, lexicon: Lexicon) -> dict[int, int]:
    """Negations that are part of what is stated, "no pressure", each with the end of its phrase.

    What is joined to one is stated as well: "no pressure and knocking".
    """
    tokens = sentence.tokens
    lost = [m for m in lexicon.shows.find(tokens) if m.value in LOSSES]
    said = [*lost, *lexicon.sights.find(tokens)]
    return {k: m.last for m in said for k in range(m.first, m.last) if tokens[k].word in _NEGATION}


def _begins(tokens: Sequence[Token], at: int) -> bool:
    """Whether a statement begins at a word: "no drip on the ground it does blow smoke"."""
    after = tokens[at + 1].word if at + 1 < len(tokens) else ""
    return tokens[at].word in SUBJECTS and after in AUXILIARIES


def _something_done(tokens: Sequence[Token], negation: int, at: int) -> bool:
    """Whether a thing done with its object, or a grade, begins there: "no rattles put a new switch on"."""
    if at <= negation + 1 or tokens[at - 1].word in LEADS_TO_DONE:
        return False
    if "grade" in tokens[at].kinds:
        return True
    after = tokens[at + 1].word if at + 1 < len(tokens) else ""
    return tokens[at].word in DOING and after in WITH_OBJECT


def _runs_on(sentence: Sentence, at: int) -> bool:
    """Whether a clause is so long that it holds several statements: text without punctuation."""
    clause = clause_at(sentence.clauses, at)
    return clause.last - clause.first > _LONG


def _list_end(sentence: Sentence, last: int) -> int:
    """The end of "no leaks, smoke or noise": short clauses up to one that begins or holds "or"."""
    tokens = sentence.tokens
    for clause in sentence.clauses:
        if clause.first < last:
            continue
        words = [t.word for t in tokens[clause.first : clause.last] if not t.is_mark]
        if len(words) > 4 or any(t.is_figure for t in tokens[clause.first : clause.last]):
            break
        if set(words) & {"or", "nor"}:
            return clause.last
    return last

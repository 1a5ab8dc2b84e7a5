"""How each word of a sentence is meant: stated, denied, supposed, guessed, of another engine."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Flag, auto

from diagnose.understanding.conditions import conditions, of_no_fact
from diagnose.understanding.lexicon import Lexicon
from diagnose.understanding.manner import (
    as_it_should,
    asked_cause,
    did_it_again,
    is_able,
    is_aside,
    is_habit,
    is_neglect,
    is_of_amount,
    is_past_week,
    known_why,
    meaning_asked,
    searched_in_vain,
    stated_again,
)
from diagnose.understanding.other_systems import of_other_systems
from diagnose.understanding.others import of_others
from diagnose.understanding.phrases import Mark
from diagnose.understanding.taken_back import taken_back
from diagnose.understanding.text import Clause, Sentence, Token, clause_at
from diagnose.understanding.usual import usual_spans
from knowledge.lexicon.stance import (
    DO,
    ENDS_NEGATION,
    GOES_ON,
    NEGATION,
    RESULT_BEGINS,
    SAYS_WHAT_IT_READS,
    SEEN,
)
from knowledge.lexicon.stance_words import (
    ANYBODY,
    AUXILIARIES,
    CANNOT,
    ENDS_HEARSAY,
    HAS_DONE,
    JUDGES,
    NONE_ARE,
    SUBJECTS,
    WARNED_BY,
    WHAT_WAS,
    WORK_ENDS,
    WORK_LEADS,
)
from knowledge.reports.words import LOSSES, Result, Shows


class Stance(Flag):
    """How a word is meant; nothing: it is stated."""

    STATED = 0
    DENIED = auto()
    SUPPOSED = auto()  #: asked, planned, feared, conditional
    GUESSED = auto()  #: the person's opinion of the cause
    ELSEWHERE = auto()  #: of another engine, or of what a manual says
    USUAL = auto()  #: as it was when nothing was wrong


UNTRUE = Stance.SUPPOSED | Stance.ELSEWHERE
_NEGATION = frozenset(NEGATION)
_OF_NOUNS = frozenset(["no", "none", "without", "zero"])
_REACH, _LONG = 8, 20  #: words that a negation reaches in a clause longer than this
_HEAD = 7  #: words from "what" to the colon before a list
_SHORT_QUESTION = 7  #: words of a question without a verb
_WHY = frozenset(["why", "how"])
_JOINS = frozenset(["and", "with", "plus", "&", "also", "then", ","])


@dataclass(frozen=True, slots=True)
class Stances:
    """The stance of each token of a sentence, and how sure each is, 0 to 1."""

    of: tuple[Stance, ...]
    sure: tuple[float, ...]

    def at(self, mark: Mark[object]) -> Stance:
        """The stance of a phrase: that of its tokens together, denial by its first only."""
        found = Stance.STATED
        for k in range(mark.first, mark.last):
            found |= self.of[k] & ~Stance.DENIED
        return found | (self.of[mark.first] & Stance.DENIED)

    def surety(self, mark: Mark[object]) -> float:
        """How sure the person is of it."""
        return min(self.sure[mark.first : mark.last], default=1.0)


def stances(
    sentence: Sentence,
    lexicon: Lexicon,
    elsewhere: bool,
    side: str = "",
    theirs: bool = False,
) -> Stances:
    """The stances of a sentence.

    ``elsewhere``: the one before was of another engine; ``side``: that of two engines which is this one;
    ``theirs``: "my dad's tractor" is.
    """
    tokens, clauses = sentence.tokens, sentence.clauses
    of = [Stance.STATED] * len(tokens)
    sure = [1.0] * len(tokens)
    for mark in (*lexicon.supposed.find(tokens), *lexicon.feared.find(tokens)):
        if (
            is_habit(sentence, mark)
            or is_neglect(tokens, mark)
            or is_aside(tokens, mark)
            or is_past_week(sentence, mark)
            or _in_a_result(sentence, lexicon, mark)
        ):
            continue
        if as_it_should(tokens, mark) or _only_unless(tokens, lexicon, mark):
            continue
        last = stated_again(tokens, mark, _run_end(sentence, mark.first))
        _set(of, mark.first, last, Stance.SUPPOSED)
    reads = any(t.word in SAYS_WHAT_IT_READS for t in tokens)  # "stick says its over full??"
    short = sentence.asks and len(clauses) == 1 and len(tokens) <= _SHORT_QUESTION
    if short and not reads and not _judged_from(tokens, 0):
        _set(of, 0, len(tokens), Stance.SUPPOSED)  # "Oil leak somewhere?"
    if (asked := meaning_asked(sentence)) is not None:
        _set(of, asked, len(tokens), Stance.SUPPOSED)
    for mark in _questions(sentence, lexicon):
        last = len(tokens) if sentence.asks else _end(clauses, mark.first)
        _set(of, _judged_from(tokens, mark.first), last, Stance.SUPPOSED)
    for first, last in of_no_fact(sentence):
        _set(of, first, last, Stance.SUPPOSED)
    for first, last in conditions(sentence, any(s & Stance.SUPPOSED for s in of)):
        _set(of, first, last, Stance.SUPPOSED)
    _set(of, *searched_in_vain(tokens), Stance.SUPPOSED)
    for why in (*known_why(tokens), *asked_cause(tokens, lexicon.shows.find(tokens))):
        for k in range(why, _end(clauses, why)):
            of[k] &= ~Stance.SUPPOSED
    for mark in lexicon.guessed.find(tokens):
        if is_able(tokens, mark):
            continue
        _set(of, mark.first, _past_colon(sentence, mark.first), Stance.GUESSED)
    for mark in lexicon.hearsay.find(tokens):
        ends = (k for k in range(mark.last, len(tokens)) if tokens[k].word in ENDS_HEARSAY)
        _set(of, mark.first, next(ends, len(tokens)), Stance.SUPPOSED)
    if not any(t.word in SEEN for t in tokens):
        for mark in lexicon.named.find(tokens):
            _set(of, mark.first, _past_colon(sentence, mark.first), Stance.GUESSED)
    for first, last in usual_spans(sentence, lexicon):
        _set(of, first, last, Stance.USUAL)
    for mark in lexicon.until.find(tokens):
        if _of_a_run(tokens, mark):
            continue
        clause = clause_at(clauses, mark.first)
        _set(of, clause.first, _run_end(sentence, mark.first), Stance.USUAL)
    for mark in lexicon.other_pressure.find(tokens):
        if mark.last < len(tokens) and tokens[mark.last].word in ("pump", "pad"):
            continue  # "fitted a vacuum pump"
        last = _past_figures(sentence, _past_colon(sentence, mark.first))
        _set(of, mark.first, last, Stance.ELSEWHERE)
    for hedge in lexicon.hedges.find(tokens):
        if is_of_amount(tokens, hedge) or is_able(tokens, hedge):
            continue
        clause = clause_at(clauses, hedge.first)
        for k in range(clause.first, clause.last):
            sure[k] = min(sure[k], hedge.value)
    _deny(sentence, lexicon, of)
    for first, last in of_others(sentence, lexicon, elsewhere, side, theirs):
        _set(of, first, last, Stance.ELSEWHERE)
    for first, last in of_other_systems(sentence):
        _set(of, first, last, Stance.ELSEWHERE)
    for mark in lexicon.figures_of_speech.find(tokens):
        _set(of, mark.first, mark.last, Stance.ELSEWHERE)
    for first, last, _ in taken_back(sentence):
        _set(of, first, last, Stance.SUPPOSED)
    return Stances(tuple(of), tuple(sure))


def _only_unless(tokens: Sequence[Token], lexicon: Lexicon, mark: Mark[bool]) -> bool:
    """Whether "unless" says what ends a trouble: "no pressure unless I prime it"."""
    if tokens[mark.first].word != "unless":
        return False
    shown = lexicon.shows.find(tokens[: mark.first])
    return any(m.value in LOSSES or m.value is Shows.SLOW for m in shown)


def _of_a_run(tokens: Sequence[Token], until: Mark[bool]) -> bool:
    """Whether "until" ends a stretch of each run: "fine until about 20 minutes on the road"."""
    near = tokens[until.last : until.last + 2]
    short = any(t.kinds & {"minutes", "seconds", "rpm", "temperature"} for t in near)
    return short and not any(t.word == "ago" for t in tokens[until.last : until.last + 4])


def _past_colon(sentence: Sentence, at: int) -> int:
    """The end of a clause, and of the next where a colon leads to it: "my guess: the pump"."""
    last = _end(sentence.clauses, at)
    if last < len(sentence.tokens) and sentence.tokens[last - 1].word == ":":
        return _end(sentence.clauses, last)
    return last


def _past_figures(sentence: Sentence, last: int) -> int:
    """The end of the clauses that only go on with figures: "compression: 150, 148, 152 and 90"."""
    for clause in sentence.clauses:
        words = sentence.tokens[clause.first : clause.last]
        if clause.first == last and all(t.kinds or t.word in _JOINS for t in words):
            last = clause.last
    return last


def _questions(sentence: Sentence, lexicon: Lexicon) -> list[Mark[bool]]:
    """Phrases that begin a clause as a question does; "why is it low" states that it is low."""
    begins = {c.first for c in sentence.clauses} | {
        c.first + 1
        for c in sentence.clauses
        if sentence.tokens[c.first].word in ("and", "but", "so", "or", "also", "just")
    }
    asked = [
        Mark(True, k, k + 1)
        for k in sorted(begins)
        if sentence.asks and k < len(sentence.tokens) and sentence.tokens[k].word in AUXILIARIES
    ]
    return asked + [
        m
        for m in lexicon.asks.find(sentence.tokens)
        if (m.first in begins or _after_if(sentence, m.first))
        and sentence.tokens[m.first].word not in _WHY
        and not _what_was(sentence, m)
        and not _goes_on_with_has(sentence, m)
        and not _did_work(sentence, lexicon, m.first)
        and not did_it_again(sentence, m)
        and not _in_a_result(sentence, lexicon, m)
    ]


def _judged_from(tokens: Sequence[Token], asks: int) -> int:
    """Where a question begins: behind the figure of "is 15 psi at hot idle too low?", a reading."""
    if tokens[asks].word != "is" or not any(
        "pressure" in t.kinds for t in tokens[asks + 1 : asks + 2]
    ):
        return asks
    return next((k for k in range(asks + 3, len(tokens)) if tokens[k].word in JUDGES), asks)


def _what_was(sentence: Sentence, mark: Mark[bool]) -> bool:
    """Whether "what" begins what was: "what used to be 40 is 20", "what I've done so far: ..."."""
    after = [t.word for t in sentence.tokens[mark.first + 1 : mark.first + 3]]
    what = sentence.tokens[mark.first].word == "what"
    heads_a_list = any(t.word == ":" for t in sentence.tokens[mark.first : mark.first + _HEAD])
    was = any(w in WHAT_WAS or (heads_a_list and w in HAS_DONE) for w in after[:1])
    was = was or after in (["happens", "is"], ["happened", "is"])
    return what and not sentence.asks and was


def _goes_on_with_has(sentence: Sentence, mark: Mark[bool]) -> bool:
    """Whether "has" goes on about what was named: "it misfires and has the oil light on".

    Nobody asks "has a cooler" either.
    """
    has = sentence.tokens[mark.first].word in ("has", "have")
    after = sentence.tokens[mark.first + 1 : mark.first + 2]
    goes_on = mark.first > 0 or any(t.word in ("a", "an", "the", "no", "two") for t in after)
    return has and goes_on and not sentence.asks and not ANYBODY & _words(sentence, mark)


def _words(sentence: Sentence, mark: Mark[bool]) -> set[str]:
    return {t.word for t in sentence.tokens[mark.first : mark.last]}


def _did_work(sentence: Sentence, lexicon: Lexicon, at: int) -> bool:
    """Whether "did" says what was done: "did the head gasket last week"; no verb follows."""
    tokens = sentence.tokens
    if tokens[at].word != "did" or sentence.asks:
        return False
    for part in (
        *lexicon.parts.find(tokens),
        *lexicon.areas.find(tokens),
        *lexicon.trials.find(tokens),
    ):
        lead = (tokens[k].word for k in range(at + 1, part.first))
        if part.last > at + 1 and all(w in WORK_LEADS for w in lead):
            after = tokens[part.last] if part.last < len(tokens) else None
            if after is None or after.is_mark or after.is_figure or after.word in WORK_ENDS:
                return True
            if any(p.first == part.last for p in lexicon.parts.find(tokens)):
                return True  # "did the points plugs and battery"
    return False


def _in_a_result(sentence: Sentence, lexicon: Lexicon, mark: Mark[bool]) -> bool:
    """Whether the words begin what came of a trial: "did the trick", "never had trouble since"."""
    if sentence.asks or sentence.tokens[mark.first].word not in RESULT_BEGINS:
        return False
    results = lexicon.results.find(sentence.tokens)
    return any(
        r.first <= mark.first and mark.last <= r.last and len(r) > len(mark) for r in results
    )


def _after_if(sentence: Sentence, at: int) -> bool:
    """Whether the clause begins with "if", as "if I overfill it does that hurt" does."""
    return sentence.tokens[clause_at(sentence.clauses, at).first].word == "if"


def _deny(sentence: Sentence, lexicon: Lexicon, of: list[Stance]) -> None:
    """Set what negations reach: to the end of the clause, and over a list closed by "or"."""
    tokens, clauses = sentence.tokens, sentence.clauses
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
        last = min(_end(clauses, i), ends.get(i, len(tokens)))
        for k in range(i + 1, last):
            joined = i in own and k >= own[i] and tokens[k].word in _JOINS
            if (
                joined
                or tokens[k].word in ENDS_NEGATION
                or (token.word in CANNOT and _or_it_warns(tokens, k))
                or (token.word in _OF_NOUNS and _begins(tokens, k))
            ):
                last = k
                break
        if last - i <= _REACH and i not in own:
            last = _list_end(sentence, last)
        _set(of, i + 1, min(last, i + 1 + _REACH) if _runs_on(sentence, i) else last, Stance.DENIED)


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


def _run_end(sentence: Sentence, at: int) -> int:
    """The end of a clause and of those after it that go on with it ("or ...", "then ...")."""
    last = _end(sentence.clauses, at)
    for clause in sentence.clauses:
        if clause.first == last and sentence.tokens[clause.first].word in GOES_ON | DO:
            last = clause.last
    return last


def _end(clauses: Sequence[Clause], at: int) -> int:
    return clause_at(clauses, at).last


def _set(of: list[Stance], first: int, last: int, stance: Stance) -> None:
    for k in range(first, last):
        of[k] |= stance

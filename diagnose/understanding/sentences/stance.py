"""How each word of a sentence is meant: stated, denied, supposed, guessed, of another engine."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from enum import Flag, auto

from diagnose.understanding.sentences.asked import asked, in_a_result
from diagnose.understanding.sentences.conditions import conditions, of_no_fact
from diagnose.understanding.sentences.manner import (
    as_it_should,
    asked_cause,
    is_able,
    is_aside,
    is_habit,
    is_neglect,
    is_of_amount,
    is_past_week,
    known_why,
    searched_in_vain,
    stated_again,
)
from diagnose.understanding.sentences.negations import JOINS, denied
from diagnose.understanding.sentences.other_systems import of_other_systems
from diagnose.understanding.sentences.others import of_others
from diagnose.understanding.sentences.taken_back import taken_back
from diagnose.understanding.sentences.usual import usual_spans
from diagnose.understanding.words.lexicon import Lexicon
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Clause, Sentence, Token, clause_at
from knowledge.lexicon.stance.stance import DO, GOES_ON, SEEN
from knowledge.lexicon.stance.stance_words import ENDS_HEARSAY
from knowledge.reports.words import LOSSES, Shows


class Stance(Flag):
    """How a word is meant; nothing: it is stated."""

    STATED = 0
    DENIED = auto()
    SUPPOSED = auto()  #: asked, planned, feared, conditional
    GUESSED = auto()  #: the person's opinion of the cause
    ELSEWHERE = auto()  #: of another engine, or of what a manual says
    USUAL = auto()  #: as it was when nothing was wrong


UNTRUE = Stance.SUPPOSED | Stance.ELSEWHERE


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
    of = [Stance.STATED] * len(sentence.tokens)
    _suppose(sentence, lexicon, of)
    _set_all(of, _guessed(sentence, lexicon), Stance.GUESSED)
    _set_all(of, _usual(sentence, lexicon), Stance.USUAL)
    _set_all(of, denied(sentence, lexicon), Stance.DENIED)
    _set_all(of, _of_other_things(sentence, lexicon), Stance.ELSEWHERE)
    _set_all(of, of_others(sentence, lexicon, elsewhere, side, theirs), Stance.ELSEWHERE)
    return Stances(tuple(of), tuple(_sureties(sentence, lexicon)))


def _suppose(sentence: Sentence, lexicon: Lexicon, of: list[Stance]) -> None:
    """Set what is asked, planned, feared, heard or taken back; a cause that is known is stated."""
    tokens = sentence.tokens
    _set_all(of, _feared(sentence, lexicon), Stance.SUPPOSED)
    _set_all(of, asked(sentence, lexicon), Stance.SUPPOSED)
    _set_all(of, of_no_fact(sentence), Stance.SUPPOSED)
    supposed = any(s & Stance.SUPPOSED for s in of)
    _set_all(of, conditions(sentence, supposed), Stance.SUPPOSED)
    _set_all(of, [searched_in_vain(tokens)], Stance.SUPPOSED)
    for why in (*known_why(tokens), *asked_cause(tokens, lexicon.shows.find(tokens))):
        for k in range(why, _end(sentence.clauses, why)):
            of[k] &= ~Stance.SUPPOSED
    for mark in lexicon.hearsay.find(tokens):
        ends = (k for k in range(mark.last, len(tokens)) if tokens[k].word in ENDS_HEARSAY)
        _set_all(of, [(mark.first, next(ends, len(tokens)))], Stance.SUPPOSED)
    _set_all(of, ((first, last) for first, last, _ in taken_back(sentence)), Stance.SUPPOSED)


def _feared(sentence: Sentence, lexicon: Lexicon) -> Iterator[tuple[int, int]]:
    """What is planned, hoped or feared."""
    tokens = sentence.tokens
    for mark in (*lexicon.supposed.find(tokens), *lexicon.feared.find(tokens)):
        stated = (
            is_habit(sentence, mark)
            or is_neglect(tokens, mark)
            or is_aside(tokens, mark)
            or is_past_week(sentence, mark)
            or in_a_result(sentence, lexicon, mark)
            or as_it_should(tokens, mark)
            or _only_unless(tokens, lexicon, mark)
        )
        if not stated:
            yield mark.first, stated_again(tokens, mark, _run_end(sentence, mark.first))


def _guessed(sentence: Sentence, lexicon: Lexicon) -> Iterator[tuple[int, int]]:
    """What the person takes for the cause; no guess where he saw it."""
    tokens = sentence.tokens
    guesses = [m for m in lexicon.guessed.find(tokens) if not is_able(tokens, m)]
    if not any(t.word in SEEN for t in tokens):
        guesses += lexicon.named.find(tokens)
    yield from ((m.first, _past_colon(sentence, m.first)) for m in guesses)


def _usual(sentence: Sentence, lexicon: Lexicon) -> Iterator[tuple[int, int]]:
    """What was so when nothing was wrong."""
    tokens = sentence.tokens
    yield from usual_spans(sentence, lexicon)
    for mark in lexicon.until.find(tokens):
        if not _of_a_run(tokens, mark):
            first = clause_at(sentence.clauses, mark.first).first
            last = _run_end(sentence, mark.first)
            ends = (k for k in range(mark.last, last) if tokens[k].word == "when")
            yield first, next(ends, last)  # "no trouble until last week when the light came on"


def _of_other_things(sentence: Sentence, lexicon: Lexicon) -> Iterator[tuple[int, int]]:
    """What is of another pressure or system, or of nothing: a figure of speech."""
    tokens = sentence.tokens
    for mark in lexicon.other_pressure.find(tokens):
        if mark.last < len(tokens) and tokens[mark.last].word in ("pump", "pad"):
            continue  # "fitted a vacuum pump"
        yield mark.first, _past_figures(sentence, _past_colon(sentence, mark.first))
    yield from of_other_systems(sentence)
    yield from ((m.first, m.last) for m in lexicon.figures_of_speech.find(tokens))


def _sureties(sentence: Sentence, lexicon: Lexicon) -> list[float]:
    """How sure each word is said to be; a hedge is of its whole clause."""
    tokens = sentence.tokens
    sure = [1.0] * len(tokens)
    for hedge in lexicon.hedges.find(tokens):
        if is_of_amount(tokens, hedge) or is_able(tokens, hedge):
            continue
        clause = clause_at(sentence.clauses, hedge.first)
        for k in range(clause.first, clause.last):
            sure[k] = min(sure[k], hedge.value)
    return sure


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
        if clause.first == last and all(t.kinds or t.word in JOINS for t in words):
            last = clause.last
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


def _set_all(of: list[Stance], spans: Iterable[tuple[int, int]], stance: Stance) -> None:
    for first, last in spans:
        for k in range(first, last):
            of[k] |= stance

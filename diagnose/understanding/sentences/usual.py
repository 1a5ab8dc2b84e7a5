"""Which words of a sentence are of the time when nothing was wrong: "used to be 60 and 25 hot"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.understanding.words.lexicon import Lexicon
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.service import ran_well
from diagnose.understanding.words.text import Clause, Sentence, Token, clause_at
from knowledge.lexicon.stance.stance_words import BEFORE_ALL, RETURNED, WORKS
from knowledge.lexicon.values.beside_numbers import ABOUT, SAYS, TODAY
from knowledge.lexicon.work.beside_results import WAS
from knowledge.reports.words import Circumstance, Shows

#: what comes after is of the present
_NOW = frozenset(["now", "but", "currently", "today", "and"])
#: what stands before these in the clause is of that time as well
_BACK = frozenset(["before", "prior"])
#: end a clause of few words that says what was
_ONCE = frozenset(["before", "previously", "originally", "formerly", "beforehand"])
_SHORT = 6
#: before "normal pressure", which then is what it usually was
_LEADS = frozenset(["the", "and", "but", "where", "my", "our"])
_BESIDE = 5  #: words from a pressure to what it was
#: before a figure of now
_IT_IS = frozenset(
    [
        "and",
        "but",
        "then",
        "so",
        "it",
        "its",
        "is",
        "we",
        "i",
        "ive",
        "have",
        "got",
        "get",
        "only",
        "at",
        "just",
        "down",
        "to",
    ]
)
#: after "and": what was goes on
_STILL_THEN = frozenset(
    ["never", "under", "over", "above", "below", "about", "around", "up", "hold"]
)


def usual_spans(sentence: Sentence, lexicon: Lexicon) -> Iterator[tuple[int, int]]:
    """The first token, and the one behind the last, of each run of words of an earlier time."""
    tokens, clauses = sentence.tokens, sentence.clauses
    wrong = any(m.value is not Shows.NORMAL for m in lexicon.shows.find(tokens))
    when = lexicon.during.find(tokens)
    begins_so = " ".join(t.word for t in tokens[:2]) in BEFORE_ALL
    if len(clauses) > 1 and begins_so and not wrong:  # "Before: 0.6 bar, knocking" is the fault
        begins = (c.first for c in clauses if tokens[c.first].word in TODAY)
        yield 0, next(begins, len(tokens))
    for mark in lexicon.usually.find(tokens):
        if _is_manner(tokens, mark):
            continue
        if tokens[mark.first].is_figure and tokens[mark.first].word.isalpha():
            mark = Mark(mark.value, mark.first + 1, mark.last)  # "my straight eight normally shows"
        if RETURNED & {t.word for t in tokens[max(0, mark.first - 3) : mark.first]}:
            continue  # "went back to the usual 45"
        if [t.word for t in tokens[max(0, mark.first - 1) : mark.first + 1]] == ["a", "normal"]:
            continue  # "cold it was a normal 40"
        last = clause_at(clauses, mark.first).last
        if any(tokens[k].is_figure for k in range(mark.first, mark.last)):
            last = _list_of_figures(tokens, mark.last, last)  # "from the usual 45 to 30"
        elif last < len(tokens) and tokens[last - 1].word == ":":
            last = clause_at(clauses, last).last  # "normal for this engine: 45"
        now = next((k for k in range(mark.last, last) if _is_of_now(tokens, k, last)), last)
        if now == last:
            whole = clause_at(clauses, mark.first).last
            listed = _listed_on(sentence, when, mark.first, whole)
            now = listed if listed > whole else now
        back = tokens[mark.first].word in _BACK
        first = _listed_before(tokens, clauses, mark.first) if back else mark.first
        yield first, now
    yield from ((m.first, m.last) for m in ran_well(tokens))
    for clause in clauses:
        words = tokens[clause.first : clause.last]
        if len(words) > 1 and words[0].word == "was" and _may_be_read(words[1]):
            yield clause.first, _listed_on(sentence, when, clause.first, clause.last)
        if (at := _was_beside(tokens, clause)) is not None:
            yield at, clause.last
        if (at := _was_then(sentence, clause)) is not None:
            yield at, _listed_on(sentence, when, at, clause.last)
        if _ends_before(words):
            yield clause.first, clause.last


def _list_of_figures(tokens: Sequence[Token], first: int, last: int) -> int:
    """The end of what is usual behind its first figure: "normal is 60 cold and 25 hot"."""
    end = first
    for k in range(first, last):
        if tokens[k].word == "and" and not _is_of_now(tokens, k, last):
            end = min(k + 2, last)
        elif tokens[k].word in _NOW or (tokens[k].word == "to" and k == first):
            break
    return end


def _listed_on(
    sentence: Sentence, when: Sequence[Mark[Circumstance]], first: int, last: int
) -> int:
    """The end of a list of what was usual: "used to be 60 cold and 30 hot", with "now" behind it.

    A comma alone lists only what is of another heat or speed: "used to be 60 cold, 30 hot".
    """
    tokens, clauses = sentence.tokens, sentence.clauses
    if not any(tokens[k].is_figure for k in range(first, last)):
        return last

    def states(begin: int, end: int) -> set[Circumstance]:
        return {m.value for m in when if begin <= m.first and m.last <= end}

    while last + 1 < len(tokens):
        behind = clause_at(clauses, last)
        joined = tokens[last].word == "and"
        said = tokens[last + joined : behind.last]
        if not said or not said[0].is_figure or not _may_be_read(said[0]):
            break
        now = next((k for k in range(last + 1, behind.last) if tokens[k].word in _NOW), behind.last)
        if now < behind.last and not any(t.is_figure for t in tokens[now : behind.last]):
            break  # "used to be 60 and 30 now"
        here, there = states(first, last), states(last, now)
        if not joined and not (here and there and not here & there):
            break
        last = now
        if now < behind.last:
            break  # "normally 45 cruising and 25 at idle now it reads 30"
    return last


def _listed_before(tokens: Sequence[Token], clauses: Sequence[Clause], at: int) -> int:
    """The start of what is said to be of "before": "20 at idle and 50 at speed before the work"."""
    first = clause_at(clauses, at).first
    if first and tokens[first].word == "and" and tokens[first + 1].is_figure:
        earlier = clause_at(clauses, first - 1)
        figures = [t for t in tokens[earlier.first : earlier.last] if t.is_figure]
        if figures and not any(t.word in _NOW for t in tokens[earlier.first : earlier.last]):
            return earlier.first
    return first


def _is_of_now(tokens: Sequence[Token], at: int, last: int) -> bool:
    """Whether the words from here are of the present; "60 at speed and 25 at idle" is one list."""
    after = tokens[at + 1] if at + 1 < last else None
    goes_on = after is not None and (after.word in _STILL_THEN or after.is_figure)
    if tokens[at].word != "and" or not goes_on:
        return tokens[at].word in _NOW
    return any(t.word in _NOW for t in tokens[at + 1 : last])


def _is_manner(tokens: Sequence[Token], mark: Mark[bool]) -> bool:
    """Whether "normally" says how a thing works, not what it once showed: "works normally"."""
    before = tokens[mark.first - 1] if mark.first else None
    if before and any(t.word == "pressure" for t in tokens[mark.first : mark.last]):
        return not (before.is_mark or before.word in _LEADS)  # "it has normal pressure of 40"
    if mark.first and tokens[mark.first].word == "normal" and tokens[mark.last - 1].is_figure:
        return tokens[mark.first - 1].word in ("is", "its")  # "when warm is normal 3 bar"
    if mark.last < len(tokens) and tokens[mark.last - 1].word == "always":
        return tokens[mark.last].word == "where"  # "was always where it should be"
    if len(mark) > 1 or not mark.first or tokens[mark.first - 1].word not in WORKS:
        return False
    after = tokens[mark.last : mark.last + 3]
    return not any(t.is_figure for t in after)


def _ends_before(words: Sequence[Token]) -> bool:
    """Whether a clause is no more than a figure and "before": "12 at idle now, 40 before"."""
    said = [t for t in words if not t.is_mark]
    figures = [t for t in said if t.is_figure and _may_be_read(t)]
    ends = bool(said) and said[-1].word in _ONCE
    compared = any(t.word == "than" for t in said)
    return ends and bool(figures) and len(said) <= _SHORT and not compared


def _may_be_read(token: Token) -> bool:
    """Whether a number may be one that a gauge showed: "was 45", not "was a litre low"."""
    return token.is_figure and "volume" not in token.kinds


def _was_beside(tokens: Sequence[Token], clause: Clause) -> int | None:
    """Where "was 25" stands straight behind a pressure of now: "hot idle 10 psi was 25"."""
    for k in range(clause.first + 1, clause.last - 1):
        if tokens[k].word != "was" or not _may_be_read(tokens[k + 1]):
            continue
        before = tokens[max(clause.first, k - _BESIDE) : k]
        if any("pressure" in t.kinds for t in before) or _two_pressures(
            tokens[k - 1], tokens[k + 1]
        ):
            return k
    return None


def _two_pressures(now: Token, then: Token) -> bool:
    """Whether the figures on both sides of "was" may be pressures: "at 1400 rpm 2.6 was 4.5"."""
    bare = all(t.kinds <= {"number", "pressure", "range"} and t.is_figure for t in (now, then))
    return bare and not any(t.word.startswith((".", "0.0")) for t in (now, then))


def _says_now(tokens: Sequence[Token], clause: Clause) -> bool:
    """Whether a clause begins with "now", or says "now" or "today" of a figure: "and is 35 now"."""
    words = tokens[clause.first : clause.last]
    if any(t.word in TODAY for t in words[:2]):
        return True
    at = next((k for k, t in enumerate(words) if _may_be_read(t)), None)
    if at is None or not {t.word for t in words[:at]} <= _IT_IS | ABOUT | SAYS | TODAY:
        return False
    led = any(t.word in TODAY for t in words[:at])
    return led or any(t.word in TODAY for t in words[at + 1 :])


def _was_then(sentence: Sentence, clause: Clause) -> int | None:
    """Where a clause says what was, if a later one says what is now: "it was 50 hot, now 25"."""
    tokens = sentence.tokens
    later = [c for c in sentence.clauses if c.first >= clause.last]
    if not any(_says_now(tokens, c) for c in later):
        return None
    for k in range(clause.first, clause.last - 1):
        figure = k + 1
        while figure < clause.last and tokens[figure].word in ABOUT | SAYS | {"at"}:
            figure += 1
        if tokens[k].word in WAS and figure < clause.last and _may_be_read(tokens[figure]):
            return k
    return None

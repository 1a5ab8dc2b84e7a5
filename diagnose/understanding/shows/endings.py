"""Read when what shows is gone again, and that it shows at no other time."""

from __future__ import annotations

from itertools import pairwise

from diagnose.understanding.sentences.paragraph import Line, over_months
from diagnose.understanding.shows.heads import Head
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import jobs
from knowledge.lexicon.shows.beside_pressure import (
    AT_ONCE,
    AWAY,
    BEFORE_GONE,
    COMES_BACK,
    DOES_SO,
    FADES,
    FALLS,
    GOES,
    GONE_THEN,
    HALE,
    HALF_WAY,
    HAPPENED,
    IT_IS,
    LIMITS,
    NOT_THERE,
    PASSED,
    PICKS_UP,
    REVVED,
    RUNS,
    SHOWN_SAME,
    SLOWLY,
    STEADIES,
    STOPS_THEN,
    THEN_ENDS,
    TIMES,
    WHEN_WORDS,
)
from knowledge.lexicon.words.joints import UNTIL
from knowledge.reports.words import NOISES, Circumstance, Course, Onset, Shows, Since

_BEFORE = 3  #: words between "only" and what it limits
_ASKED = 2  #: sentences from what shows to when, "When?" between them
_NOT = frozenset(["not", "wont", "doesnt", "didnt", "never", "wouldnt", "refuses", "isnt"])
_UNTIL_THEN = frozenset(["gone", "for"])
_LAMPS = frozenset([Shows.LAMP, Shows.UNSTEADY])
_QUIET = frozenset(["quiet", "silent", "gone", "none", "absent"])
#: a lamp is out; what stands before that, and between that and when
_OUT = frozenset(["out", "off", "extinguished", "extinguishes", "absent"])
_IS_OUT = frozenset(
    ["and", "but", "then", "is", "was", "stays", "stayed", "remains", "always", "then"]
)
_THEN = frozenset(["again", "at", "when", "once", "as", "soon", "with", "a", "of", "touch"])
_GONE = 3  #: words between "goes away" and when
_LED_BY = 2  #: words before a circumstance that begins a clause
_LASTING = 9  #: words between what shows and for how long


def set_lengths(line: Line, heads: list[Head]) -> None:
    """Set how long a noise lasts: "rattles at start, gone in a few seconds", "for a minute"."""
    for k, token in enumerate(line.tokens):
        before = [h for h in heads if h.mark.last <= k and h.mark.value in NOISES]
        if not token.kinds & TIMES or not before or before[-1].lasts:
            continue
        said = range(line.clause(k).first, k)
        gone = next((i for i in said if line.word(i) in _UNTIL_THEN), -1)
        if gone >= before[-1].mark.last and k - gone <= _GONE:
            before[-1].lasts = token.value
            before[-1].used.append((line, Mark(True, gone, k + 1)))


def set_only(heads: list[Head]) -> None:
    """Set that it shows at no other time: "drops above 4000, fine below"."""
    for line in dict.fromkeys(h.line for h in heads):
        own = [h for h in heads if h.line is line and h.is_pressure]
        for mark in line.stated(line.lexicon.otherwise):
            before = [h for h in own if h.mark.last <= mark.first and h.during]
            if before and not any(h.mark.overlaps(mark) for h in own):
                before[-1].only = True
                before[-1].used.append((line, mark))


def ends_then(line: Line, head: Mark[Shows], mark: Mark[object]) -> bool:
    """Whether it is gone then: "goes away after a minute", "goes out on the straight"."""
    if _gone_behind(line, head, mark) or _well_after_rest(line, head, mark):
        return True
    begins = line.clause(mark.first).first
    if begins and line.word(begins) in WHEN_WORDS:
        begins = line.clause(begins - 1).first  # "picks up | when I pull away"
    first = max(begins, mark.first - _GONE, head.last)
    words = [line.word(k) for k in range(first, mark.first)]
    if line.word(first - 1) in _NOT or set(words) & _NOT:
        return False  # "won't go out when revved"
    gone = any(a in GOES and b in AWAY for a, b in pairwise(words)) or set(words) & STOPS_THEN
    if head.value in _LAMPS and (_is_out(line, head, mark) or _goes(words, mark)):
        return True
    if head.value in NOISES and _is_out(line, head, mark, _QUIET):
        return True
    if head.value in NOISES and any(a in FADES and b in AWAY for a, b in pairwise(words)):
        return True
    if head.value in NOISES | {Shows.NORMAL}:
        return bool(gone) and head.value is not Shows.NORMAL
    back = any(a in COMES_BACK and b == "back" for a, b in pairwise(words))
    since = [line.word(k) for k in range(max(begins, head.last), mark.first)]
    back = back or any(pair in PICKS_UP for pair in pairwise(since))
    return bool(gone) or back or bool(set(words) & STEADIES)


def _well_after_rest(line: Line, head: Mark[Shows], mark: Mark[object]) -> bool:
    """Whether a rest ended it: "light on until it cools", "let it cool, restarted and it was fine"."""
    if mark.value is not Circumstance.AFTER_REST or mark.first < head.last:
        return False
    if line.word(mark.first) in UNTIL or any(
        line.word(k) in UNTIL for k in range(head.last, mark.first)
    ):
        return True
    behind = [line.word(k) for k in range(mark.last, len(line.tokens))]
    return any(a in IT_IS and b in HALE for a, b in pairwise(behind))


def _gone_behind(line: Line, head: Mark[Shows], mark: Mark[object]) -> bool:
    """Whether the words behind it say that it is gone then: "at idle the knock is absent".

    Also "knocks when hot, cold it is gone".
    """
    if head.value not in NOISES:
        return False
    leads = mark.last <= head.first  # "at idle, or out of gear, the knock is absent"
    beside = all(line.word(k) in (",", "the", "a", "its") for k in range(mark.last, head.first))
    if leads and not beside and any(m.last <= mark.first for m in line.find(line.lexicon.shows)):
        return False  # "a knock under load, when I speed up the knock disappears"
    last = line.clause(head.first if leads else mark.first).last
    behind = head.last if leads else mark.last
    words = [line.word(k) for k in range(behind, last)]
    if not leads and (line.clause(mark.first).first < mark.first or not words):
        return False
    while words and words[0] in BEFORE_GONE:
        words = words[1:]
    words = [w for w in words if any(c.isalpha() for c in w)]
    if len(words) == 1:
        return words[0] in GONE_THEN | STOPS_THEN
    return tuple(words) in NOT_THERE or (len(words) == 2 and words[0] in GOES and words[1] in AWAY)


def _goes(words: list[str], mark: Mark[object]) -> bool:
    """Whether it is said to go after a time: "lamp on at start, goes after 5 seconds"."""
    return mark.value in PASSED and bool(words) and words[-1] in GOES


def _is_out(
    line: Line, head: Mark[Shows], mark: Mark[object], words: frozenset[str] = _OUT
) -> bool:
    """Whether it is said to be gone then: "light on at idle, out above 1200", "noisy hot, quiet cold"."""
    at = mark.first - 1
    while at > head.last and line.word(at) in _THEN:
        at -= 1
    if line.words(at - 3, at) & _NOT:
        return False  # "won't go out when revved"
    if line.word(at - 1) in ("and", "&") and line.word(at - 2) == "on":
        return False  # "blinks on and off at idle"
    leads = line.tokens[at - 1].is_mark or line.word(at - 1) in _IS_OUT
    return at > head.last and line.word(at) in words and leads


def _only(line: Line, at: int) -> bool:
    """Whether "only" limits when, and not how much: "only 20 psi when hot"."""
    behind = line.tokens[at + 1 : at + 2]
    return line.word(at) == "only" and not any(t.is_figure for t in behind)


def fell_slowly(head: Head) -> bool:
    """Whether it fell over months, or by some of it: "lost gradually over two years", "lost 15 lb"."""
    behind = head.line.tokens[head.mark.last :][:1]
    if head.mark.value is Shows.LOST and behind and "pressure" in behind[0].kinds:
        return True
    if head.mark.value is Shows.LOST and head.onset != Onset.SUDDEN.value:
        said = {t.word for t in head.line.tokens} & SLOWLY
        return bool(said) and over_months(head.line, head.mark.first)
    return head.mark.value is Shows.FALLING and over_months(head.line, head.mark.first)


def falls_with_revs(head: Head) -> bool:
    """Whether it is seen to fall as the engine is revved."""
    if head.mark.value is not Shows.LOW or head.during != [Circumstance.SPEED.value]:
        return False
    said = head.line.words(head.mark.first, head.mark.last)
    when = {
        line.word(k)
        for line, mark in head.used
        if mark.value is Circumstance.SPEED
        for k in range(mark.first, mark.last)
    }
    return bool(said & FALLS) and bool(when & REVVED)


def fine_until(line: Line, mark: Mark[object], heads: list[Head]) -> Head | None:
    """The pressure that is fine until then, and so low then: "fine until it gets hot"."""
    led = line.word(mark.first) in UNTIL
    ended = [
        h
        for h in heads
        if h.mark.value is Shows.NORMAL and h.mark.last <= mark.first
        if isinstance(mark.value, Circumstance) and (led or _until_between(line, h.mark, mark))
    ]
    return ended[-1] if ended else None


def from_then(until: Mark[object]) -> Mark[object]:
    """When it is so from "until" on: "fine till it warms up", which is cold, is low when hot."""
    if until.value is Circumstance.COLD:
        return Mark(Circumstance.HOT, until.first, until.last)
    return until


def ended_by(line: Line, head: Mark[Shows], mark: Mark[object]) -> bool:
    """Whether it is over then: "fine until I brake", "fine for ten minutes, then the light comes on"."""
    return _until_between(line, head, mark) or (
        head.value is Shows.NORMAL and _lasts_then(line, mark)
    )


def _until_between(line: Line, head: Mark[Shows], mark: Mark[object]) -> bool:
    """Whether "until" stands between what shows and a circumstance."""
    between = range(head.last, mark.first)
    return isinstance(mark.value, Circumstance) and any(line.word(k) in UNTIL for k in between)


def _lasts_then(line: Line, mark: Mark[object]) -> bool:
    """Whether a time of running is how long it lasts, and "then" leads on: "for ten minutes, then"."""
    if mark.value not in (Circumstance.MINUTES, Circumstance.LATE):
        return False
    lasts = any(line.word(k) == "for" for k in range(mark.first - 1, mark.last))
    behind = line.words(mark.last - 1, mark.last + 3)
    return lasts and bool(behind & THEN_ENDS)


def only_then(line: Line, mark: Mark[object]) -> bool:
    """Whether it shows at no other time: "only at idle", "it only does this when hot"."""
    begins = line.clause(mark.first).first
    near = range(max(begins, mark.first - _BEFORE), mark.first + 1)
    if any(_only(line, k) for k in (*near, mark.last)):
        return True
    led = (k for k in range(begins, mark.first) if line.word(k) == "only")
    return any(line.words(at + 1, mark.first) <= DOES_SO for at in led)


def limits_when(line: Line, first: int, last: int) -> bool:
    """Whether words only limit when it shows: "but only", "but it does this mostly"."""
    words = line.words(first, last)
    return bool(words & LIMITS) and words <= LIMITS | DOES_SO


def says_only_when(line: Line, before: Line) -> bool:
    """Whether a sentence behind what shows says when, and no more: "Low pressure. On a hot idle." """
    said = {k for m in line.circumstances for k in range(m.first, m.last)}
    rest = {t.word for k, t in enumerate(line.tokens) if k not in said and not t.is_mark}
    return bool(said) and rest <= DOES_SO | LIMITS and 0 < line.number - before.number <= _ASKED


def lasts_for(line: Line, head: Mark[Shows], mark: Mark[object]) -> bool:
    """Whether a time says how long it showed, not when: "lost all pressure for a minute"."""
    if mark.value not in PASSED or head.value is Shows.NORMAL or mark.first < head.last:
        return False
    at = mark.first if line.word(mark.first) == "for" else mark.first - 1
    if line.word(at) != "for" or line.word(at - 1) in RUNS:
        return False
    between = [line.word(k) for k in range(head.last, at)]
    return len(between) <= _LASTING and not set(between) & (RUNS | WHEN_WORDS)


def at_once_then(line: Line, head: Mark[Shows], mark: Mark[object]) -> bool:
    """Whether it is there at once then: "takes 10 seconds hot, from cold it's instant"."""
    clause = line.clause(mark.first)
    if head.value is not Shows.SLOW or clause.first <= head.first < clause.last:
        return False
    said = [line.word(k) for k in range(clause.first, clause.last)]
    pairs = {f"{a} {b}" for a, b in pairwise(said)}
    return bool((set(said) | pairs) & AT_ONCE)


def shown_elsewhere(line: Line, head: Mark[Shows], mark: Mark[object]) -> bool:
    """Whether the clause of a circumstance says where the needle is then: "half way at speed"."""
    clause = line.clause(mark.first)
    if head.value is Shows.NORMAL or clause.first <= head.first < clause.last:
        return False
    words = [
        line.word(k)
        for k in range(mark.last, min(clause.last + 1, len(line.tokens)))
        if not line.tokens[k].is_mark
    ]
    if head.value in _LAMPS and any(a in _OUT and b in ("it", "she") for a, b in pairwise(words)):
        return True  # "light on at idle, blip the throttle and out it goes"
    return bool(line.words(clause.first, clause.last) & HALF_WAY)


def of_what_was_before(line: Line, head: Mark[Shows], mark: Mark[object]) -> bool:
    """Whether it is of what happened once: "ran out of oil on the motorway, pressure is now low"."""
    clause, own = line.clause(mark.first), line.clause(head.first)
    if clause.last > own.first or mark.first - clause.first <= _LED_BY:
        return False
    said = line.words(own.first, own.last)
    happened = line.words(clause.first, mark.first)
    return bool(said & {"now", "since"}) and bool(happened & HAPPENED)


def not_by_itself(line: Line, mark: Mark[object]) -> bool:
    """Whether what came back is the trouble, or came of work: "then back where it was".

    Nor did it stand: "since I bought it three years ago".
    """
    if mark.value is Course.RETURNS:
        clause = line.clause(mark.first)
        said = line.words(clause.first, mark.first)
        return "same" in said and bool(said & SHOWN_SAME)  # "same reading every time"
    if mark.value is Since.STANDING and line.word(mark.last) == "ago":
        return line.tokens[mark.last - 1].is_figure
    if mark.value is not Course.RECOVERED:
        return False
    after, then = line.word(mark.last), line.word(mark.last + 1)
    if after == "where" or (after == "to" and then in ("square", "where", "how")):
        return True
    return any(j.last <= mark.first and j.trial and not j.begins_it for j in jobs(line))


def turned(line: Line, head: Mark[Shows], mark: Mark[object]) -> bool:
    """Whether "but" stands between what shows and a circumstance, which then is of something else."""
    between = (
        range(head.last, mark.first) if head.first < mark.first else range(mark.last, head.first)
    )
    turns = [k for k in between if line.word(k) in ("but", "however", "although", "though")]
    leads = turns and head.first > mark.first and line.word(turns[-1]) == "however"
    if leads and all(line.tokens[k].is_mark for k in range(mark.last, turns[-1])):
        return False  # "when hot however it drops"
    return bool(turns) and not limits_when(line, turns[-1] + 1, mark.first)

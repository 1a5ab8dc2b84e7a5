"""How parts, states and substances stand together in a sentence: joined, listed, of one another."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.when_moving import NOT_THE_WEATHER
from knowledge.lexicon.sights.looked_at import LOOKED
from knowledge.lexicon.sights.split_crankcase import CASE_WORDS, SPLIT_BY
from knowledge.lexicon.stance.stance import NEGATION
from knowledge.lexicon.things.thing import State, Thing
from knowledge.lexicon.words.joints import (
    ACTORS,
    ARTICLES,
    BEFORE_PART,
    BLOWN,
    DEEDS,
    EXCEPT,
    FOUND_SO,
    JOINS,
    LINKS,
    NO_NOUN,
    OF_A_KIND,
    OF_IT,
    OFF_IT,
    OPENINGS,
    OUTSIDE,
    PANS,
    PARTS_OF,
    PIPES,
    POURS,
    SEALS,
    SEEMING,
    SOME,
    STOPS,
    TAKEN_OUT,
    UNDOES,
    UNDONE,
)
from knowledge.lexicon.work.beside_work import DONE_TO, HELPING, SAVE, SAVE_FROM, UNTOUCHED

_IN, _OR = (
    frozenset(["in", "on"]),
    frozenset(["or", "nor"]),
)  #: "no metal in the pan or on the screen"
#: states of a part that is not where it belongs, or no longer does what it is there for
NOT_IN_PLACE = frozenset(
    [
        State.ABSENT,
        State.CAME_OFF,
        State.LOOSE,
        State.PUSHED_OUT,
        State.LEAKING,
        State.BROKEN,
        State.SHORT,
        State.UNPLUGGED,
        State.STRIPPED,
    ]
)
_OF_PART = 2  #: most words between a part and what it is part of

#: before the oil that a part holds, and should
_FRESH = frozenset(["clean", "fresh", "new", "good", "nice"])


def head_of(line: Line, part: Mark[Thing], before: Sequence[Mark[Thing]]) -> Mark[Thing] | None:
    """The part that another belongs to: "the bypass valve of the filter head"."""
    for other in before:
        words = [line.word(k) for k in range(other.last, part.first)]
        if 0 < len(words) <= _OF_PART and words[0] in PARTS_OF and set(words[1:]) <= ARTICLES:
            return other
    return None


def acted(line: Line, state: Mark[object], gap: Sequence[str]) -> bool:
    """Whether it is what somebody did: "Loosened the filter"."""
    first = line.word(state.first)
    begins = state.first == line.clause(state.first).first or line.word(state.first - 1) in ACTORS
    return begins and (first.endswith("ed") or first in DEEDS) and bool(ARTICLES & set(gap))


def by_hand(line: Line, at: int) -> bool:
    """Whether somebody put the oil there: "squirted oil into the pump"."""
    begins = at == line.clause(at).first or line.word(at - 1) in ACTORS
    return begins and line.word(at) in POURS


def _a_length(line: Line, at: int) -> bool:
    """Whether how long or far something went stands at a place."""
    return at < len(line.tokens) and (
        line.tokens[at].is_figure or line.word(at) in ("a", "about", "only")
    )


def _full_of_oil(line: Line, mark: Mark[object]) -> bool:
    """Whether a part is full of what it should hold: "the filter was full of oil"."""
    after = [line.word(k) for k in range(mark.last, mark.last + 3) if line.word(k) not in _FRESH]
    return line.word(mark.last - 1) in ("of", "with") and after[:1] == ["oil"]


def is_no_state(
    line: Line, mark: Mark[object], meanings: Collection[State], parts: Sequence[Mark[Thing]]
) -> bool:
    """Whether the words are of another side, of some only, of a deed, or a hole that belongs there.

    "the cover was dripping wet inside", "pan is dry, filter is dry", "bearings fine except number 6",
    "cracked the filter loose", "through the filter hole".
    """
    if is_opening(line, mark):
        return True
    if parts and opened_case(line, Mark(True, min(parts[0].first, mark.first), mark.last)):
        return True
    if State.BROKEN in meanings and (line.word(mark.last - 1), line.word(mark.last)) == (
        "break",
        "in",
    ):
        return True  # "for cam break in"
    if line.word(mark.first) == "wet" and line.word(mark.last) in NOT_THE_WEATHER:
        return True  # "wet clutch"
    if line.word(mark.last) in OF_A_KIND and line.word(mark.first - 1) in ("a", "an"):
        return True  # "the filter is a good brand"
    if State.TIGHT in meanings and _one_is_loose(line, mark):
        return True  # "main caps torqued, one at half torque"
    if State.FINE in meanings and line.word(mark.last) == "for" and _a_length(line, mark.last + 1):
        return True  # "new pump, good for ten miles"
    if State.BLOCKED in meanings and _full_of_oil(line, mark):
        return True
    if State.LEAKING in meanings and "inside" in (line.word(mark.last), line.word(mark.last + 1)):
        return True
    words = {t.word for t in line.tokens}
    if {State.DRY, State.EMPTY} & set(meanings) and words & OUTSIDE:
        return any(line.words(p.first, p.last) & PANS for p in parts)
    undone = (
        len(mark) == 1
        and line.word(mark.first) in UNDONE
        and line.word(mark.first - 1) not in FOUND_SO
    )
    if undone and any(p.value.family in PIPES for p in parts[:1]):
        return True  # "pipe disconnected at the block: strong squirt of oil"
    if (line.word(mark.last - 1), line.word(mark.last)) == ("order", "to"):
        return True  # "took the pump off in order to look"
    if line.word(mark.last - 1) in ("blown", "blew") and line.word(mark.last) in BLOWN:
        return True  # "pipe blown through with air"
    if State.FINE in meanings and {line.word(k) for k in (mark.last, mark.last + 1)} & EXCEPT:
        return True
    return State.LOOSE in meanings and any(line.word(p.first - 2) in UNDOES for p in parts[:1])


def is_word_of(thing: Mark[Thing], state: Mark[object]) -> bool:
    """Whether a word that names no part of the pressure is one of a state's: "has a ring in it"."""
    within = state.first <= thing.first and thing.last <= state.last
    return within and thing.value.family == "other" and len(state) > len(thing)


def joined(line: Line, first: int, last: int, most: int) -> bool:
    """Whether nothing between two places cuts them apart."""
    between = range(first, last)
    return len(between) <= most and not any(
        line.tokens[k].is_mark or (line.word(k) in STOPS and not _seems_to_be(line, k))
        for k in between
    )


def _seems_to_be(line: Line, at: int) -> bool:
    """Whether "to" belongs to "found to be", "appears to have"."""
    words = (line.word(at), line.word(at + 1))
    return line.word(at - 1) in SEEMING and words in (("to", "be"), ("to", "have"))


def listed(
    line: Line, part: Mark[Thing], row: Sequence[Mark[Thing]], backwards: bool
) -> Iterator[Mark[Thing]]:
    """The other parts of a list that ends (or begins) with one."""
    at = part
    nearest = row[-2] if backwards and len(row) > 1 else None
    for other in reversed(row) if backwards else row:
        if other is part:
            continue
        ends = (other.last, at.first) if backwards else (at.last, other.first)
        words = line.words(*ends)
        places = words - _IN if words & _OR and "oil" not in words else words
        if not words or not places <= JOINS:
            return
        if backwards and other is nearest and not words - {",", "the", "oil"}:
            return  # "metal under the ball, cover scored"
        if not backwards and "and" in words and line.clause(other.first) != line.clause(at.first):
            return  # "no oil on the stick, and the belly was black"
        yield other
        at = other


def sealed_with(line: Line, sealer: Mark[object]) -> bool:
    """Whether it is what a joint was put together with: "resealed the sump with silicone".

    Nor does sealer "on the sump rail" lie inside, unless it came off: "bits of silicone on ...".
    """
    clause = line.clause(sealer.first)
    rails = ("sump", "pan", "oilpan", "rail", "flange", "joint", "joints")
    after = [line.word(k) for k in range(sealer.last, sealer.last + 4)]
    if after[:1] == ["on"] and any(w in rails for w in after):
        return line.word(sealer.first - 1) != "of" or line.word(sealer.first - 2) not in OFF_IT
    return any(line.word(k) in SEALS for k in range(clause.first, sealer.first))


def linked(line: Line, part: Mark[Thing], state: Mark[object]) -> bool:
    """Whether only words like "was" and "all" stand between a part and "good"."""
    ends = (part.last, state.first) if part.last <= state.first else (state.last, part.first)
    words = line.words(*ends)
    if line.words(0, part.first) & TAKEN_OUT:
        words -= OF_IT  # "pulled the relief spring and it's fine"
    return words <= (LINKS if part.last <= state.first else BEFORE_PART | {"with", "found"})


def is_no_find(line: Line, thing: Mark[Thing]) -> bool:
    """Whether "fine" is of what is left of a part, or of the engine with a new one.

    "rest of the pump looks ok", "fitted a new pump and it was fine".
    """
    before = [line.word(k) for k in range(thing.first - 3, thing.first)]
    new = before[-1:] == ["new"] and line.word(thing.last) == "and"
    return new or bool({"rest", "remainder"} & set(before))


def is_opening(line: Line, mark: Mark[object]) -> bool:
    """Whether a hole is one that belongs there: "through the filter hole"."""
    return line.word(mark.first) in ("hole", "holes") and line.word(mark.first - 1) in OPENINGS


def looked_for(line: Line, at: int) -> bool:
    """Whether a sentence says before a word that things of a list were checked."""
    return line.word(at + 1) in ("and", ",") and any(line.word(k) in LOOKED for k in range(at))


def untouched(line: Line, part: Mark[object]) -> bool:
    """Whether a part of a list is said to be left as it was: "new rings, mains not touched"."""
    before = part.first - 1
    while line.word(before) in ARTICLES:
        before -= 1
    if line.word(before) in SAVE or (line.word(before), line.word(before - 1)) in SAVE_FROM:
        return True  # "new everything bar the crank"
    at = part.last
    while line.word(at) in HELPING:
        at += 1
    return line.word(at) in UNTOUCHED or (
        line.word(at) in NEGATION and line.word(at + 1) in DONE_TO | {"been"}
    )


def ends_there(line: Line, state: Mark[object]) -> bool:
    """Whether no noun follows that the state may be said of: not in "worn timing chain"."""
    at = state.last
    if line.word(at - 1) in ("of", "with"):
        return True  # "full of metal"
    token = line.tokens[at] if at < line.clause(state.first).last else None
    return token is None or token.is_mark or token.is_figure or token.word in NO_NOUN


def ends_behind(line: Line, state: Mark[object], part: Mark[Thing]) -> bool:
    """Whether "normal", "in order" ends what is said of a part before it: not "in order to clean it"."""
    return part.last <= state.first and line.word(state.last) != "to" and ends_there(line, state)


def gone_only(thing: Thing) -> tuple[str, ...]:
    """The findings of a thing that say no more than that it is not where it belongs."""
    gone = (*thing.shows.get(State.ABSENT, ()), *thing.shows.get(State.CAME_OFF, ()))
    harmed = {f for s, those in thing.shows.items() if s not in NOT_IN_PLACE for f in those}
    return tuple(f for f in dict.fromkeys(gone) if f not in harmed)


def alike(marks: Sequence[Mark[State]]) -> Iterator[tuple[Mark[object], list[State]]]:
    """Each run of words that names states, with all it may mean."""
    spans: dict[tuple[int, int], list[State]] = {}
    for mark in marks:
        spans.setdefault((mark.first, mark.last), []).append(mark.value)
    for (first, last), states in spans.items():
        yield Mark(True, first, last), states


def opened_case(line: Line, mark: Mark[object]) -> bool:
    """Whether a crankcase was taken apart at its joint: "cases split again", no "split by the rod"."""
    words = [line.word(k) for k in range(mark.first, mark.last)]
    return (
        words[-1:] == ["split"]
        and bool(CASE_WORDS & set(words))
        and line.word(mark.last) not in SPLIT_BY
    )


def _one_is_loose(line: Line, tight: Mark[object]) -> bool:
    """Whether one of several parts that are called tight is called loose behind that."""
    for mark in line.find_alike(line.lexicon.states):
        clause = line.clause(mark.first)
        before = line.words(clause.first, mark.first)
        if mark.value is State.LOOSE and mark.first >= tight.last and before & SOME:
            return True
    return False

"""Read lists of what was looked at and found as it should be: "checked the pump and the relief, fine"."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.sentences.manner import searched_in_vain
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.parts_named import named_things
from knowledge.lexicon.sights.looked_at import ALSO_LOOKED_AT, LOOKED, LOOKED_AT, NOT_ALL
from knowledge.lexicon.things.thing import State, Thing
from knowledge.lexicon.words.joints import STOPS

_APART = 4  #: most words from one thing of the list to the next, or to the outcome
_SHORT = 6  #: words of a sentence that says no more than the outcome
_UNTRUE = Stance.SUPPOSED | Stance.ELSEWHERE | Stance.USUAL | Stance.GUESSED
_Looked = Mark[Thing] | Mark[str]


@reader(
    {
        "I checked the pump and the relief valve and found nothing": [
            "finding pump_found_sound present",
            "finding relief_found_bad absent",
            "finding relief_found_stuck absent",
            "finding relief_seat_scored absent",
        ],
        "checked the connections, leaks and the oil level. All fine": [
            "finding sender_connector_loose absent",
            "finding oil_seen_outside absent",
            "finding level_correct present",
        ],
        "relief valve and pickup tube all checked, nothing wrong": [
            "finding relief_found_bad absent",
            "finding relief_found_stuck absent",
            "finding relief_seat_scored absent",
            "finding screen_blocked absent",
            "finding pickup_tube_crack_seen absent",
        ],
        "checked the pump and the relief valve, both fine but the pickup is loose": [],
        "checked the pump and found nothing but metal": [],
        "going to check the pump and the relief valve": [],
        "checked the pump and found the relief valve stuck": [],
        "have you checked the pump, all fine?": [],
    }
)
def checked_parts(paragraph: Paragraph) -> Iterator[Fact]:
    """Findings that a list of things that were looked at rules out, or says are there."""
    lines = paragraph.lines
    for line, after in zip(lines, (*lines[1:], None), strict=False):
        verb = next((k for k in range(len(line.tokens)) if _looked(line, k)), None)
        if verb is None or not _is_said(line, verb):
            continue
        outcome, own = _outcome(line), True
        if outcome is None and after is not None and len(after.tokens) <= _SHORT:
            outcome, own = _outcome(after), False
        if outcome is None:
            continue
        end = outcome.first if own else len(line.tokens)
        for thing in _list(line, verb, end, own):
            for what, there in _fine(thing):
                state = "present" if there else "absent"
                spans = line.span([thing, outcome] if own else [thing])
                yield Fact("finding", {"what": what, "state": state}, spans)


def _is_said(line: Line, verb: int) -> bool:
    """Whether it is said that somebody looked, and not planned or asked."""
    first, last = searched_in_vain(line.tokens)
    stance = line.stances.of[verb]
    if first <= verb < last:
        stance &= ~Stance.SUPPOSED  # nothing is stated of what was looked for
    return not stance & (_UNTRUE | Stance.DENIED)


def _looked(line: Line, at: int) -> bool:
    """Whether a word says that something was looked at."""
    word = line.word(at)
    return word in LOOKED and (word not in LOOKED_AT or line.word(at + 1) in LOOKED_AT[word])


def _outcome(line: Line) -> Mark[bool] | None:
    """The words that all was well, where nothing takes them back."""
    found = [m for m in line.find(line.lexicon.all_fine) if line.word(m.last) not in NOT_ALL]
    stated = [m for m in found if not line.stances.at(m) & _UNTRUE]
    last = stated[-1] if stated else None
    if last is None or NOT_ALL & line.words(last.last, len(line.tokens)):
        return None
    return last


def _list(line: Line, verb: int, end: int, own: bool) -> list[_Looked]:
    """The things of the list that the outcome is said of, no word between that parts them."""
    things: list[_Looked] = [*named_things(line)]
    for k in range(len(line.tokens)):
        place = Mark(line.word(k), k, k + 1)
        if place.value in ALSO_LOOKED_AT and not any(t.overlaps(place) for t in things):
            things.append(place)
    behind = sorted((t for t in things if verb < t.first and t.last <= end), key=lambda t: t.first)
    before = sorted((t for t in things if t.last <= verb), key=lambda t: t.first)
    row = behind or before
    stops = [verb + 1 if behind else row[0].first if row else 0, *(t.last for t in row)]
    starts = [*(t.first for t in row), end if own and behind else (row[-1].last if row else 0)]
    apart = zip(stops, starts, strict=True)
    if not row or any(b - a > _APART or _parts(line, a, b) for a, b in apart):
        return []
    return row


def _parts(line: Line, first: int, last: int) -> bool:
    """Whether a word between two places begins another statement, or names what was seen."""
    between = range(first, last)
    seen = any(m.first in between for m in line.find(line.lexicon.states))
    return seen or any(line.word(k) in STOPS for k in between)


def _fine(thing: _Looked) -> Iterator[tuple[str, bool]]:
    """The findings of a thing that is as it should be."""
    value = thing.value
    if isinstance(value, str):
        yield ALSO_LOOKED_AT[value]
        return
    yield from ((f, True) for f in value.shows.get(State.FINE, ()))
    yield from ((f, False) for f in value.rules_out.get(State.FINE, ()))

"""Find which action a sentence says was done to which part: the work that ``jobs`` are made of."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from diagnose.understanding.sentences.manner import does_so
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.done_to import FAR, NEW, action_on
from diagnose.understanding.work.joining import untouched
from diagnose.understanding.work.put_on import COPULA, PUT, put_in, taken_off
from diagnose.understanding.work.which_part import is_a_place, is_a_tool, same_pump
from knowledge.lexicon.values.quantities import ORDINALS
from knowledge.lexicon.work.beside_work import (
    FITTINGS,
    FOR_A_TEST,
    FOUND_SO,
    JOINED_TO,
    NAMES_ANOTHER,
    NO_WORK_BEHIND,
    NOT_OIL,
    NUMBERED,
    SAYS_OF_IT,
)
from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Done

_NAMED = frozenset(["it", "them", "one", "ones", "that", "this", "these", "those"])
#: after "new", in place of the name of a part: "a new set", "the new one"
_IN_PLACE = frozenset(["one", "ones", "set", "bit", "unit", "item", "piece", "part", "length"])
#: before "it replaced"
_LET = frozenset(["had", "got", "have", "having", "getting"])
#: done to get at a part, before what is done to it
_TO_GET_AT_IT = (Done.REFITTED, Done.OPENED)
#: work that may have begun the trouble, though it was no trial
_LEAVES_TRACES = (Done.RENEWED, Done.REBUILT, Done.REFITTED, Done.OPENED)
_PLAIN_LEADS = frozenset(["the", "a", "an", "my", "new", "another", "other"])
_JOINS = frozenset([",", "and", "&", "+", "plus", "or", "then"])
_LEADS_IN = frozenset(
    ["and", "so", "then", "but", "i", "we", ",", "all", "was", "just", "finally", "once"]
)
_IN_A_ROW = frozenset(["its", "the", "a", "both", "oil", "my", "new", "twice"])
#: may be part of a result: "no change", "changed nothing"
_CHANGES = frozenset(["change", "changed", "changes"])
_PLACED = frozenset(["on", "against", "into", "onto", "behind", "inside", "in", "at"])
_HABITUAL = frozenset(["always", "never"])  #: "it has always done it"
#: after an action that names no object
_NO_OBJECT = frozenset(
    ["up", "out", "off", "down", "and", "then", "again", "with", "back", "in", "through", "over"]
)
_BEFORE_NEW = (Done.CLEANED, Done.ADJUSTED)  #: tried of a part that is renewed after it
_SHOWS_ONLY = frozenset(["other_gauge"])
WITH = frozenset(["with", "from", "by"])  #: between a result and the part that brought it


class Work(NamedTuple):
    """An action on a part: the words for it, the trial and the area of earlier work it may be."""

    marks: tuple[Mark[object], ...]
    done: Done
    trial: str | None
    area: str | None


def paired(
    line: Line,
    last: Mark[PartWorked] | None,
    noun: str = "",
    pump: PartWorked | None = None,
) -> Iterator[Work]:
    """Actions with the part each is done to; in a list one action goes on to every part.

    ``last``: the part that "it" may mean, of the sentence before; ``noun``: the last word of its name;
    ``pump``: the pump named there, which "the pump" is then.
    """
    actions = [a for a in line.find(line.lexicon.actions) if not _is_no_action(line, a)]
    parts = [
        p
        for p in line.find(line.lexicon.parts)
        if not any(a.first <= p.first and p.last <= a.last for a in actions)
        and not names_another(line, p)
        and not is_a_tool(line, p)
        and not untouched(line, p)
    ]
    parts = [same_pump(line, p, parts, pump) for p in parts]
    done = _done_to(line, parts, actions)
    pairs = [(a, p) for p, a in zip(parts, done, strict=True) if a is not None]
    for action, part in pairs:
        yield from _work(line, action, part)
    for action, part in _named_before(line, actions, parts, last, noun):
        if not any(action.overlaps(a) or _is_the_same(action, part, a, p) for a, p in pairs):
            yield from _work_on_it(line, action, part, parts)


def _is_no_action(line: Line, action: Mark[Done]) -> bool:
    """Whether the words for an action are none here: "no change", "done to the bearings"."""
    first, last, after = line.word(action.first), line.word(action.last - 1), line.word(action.last)
    before, behind = line.word(action.first - 1), line.word(action.last + 1)
    results = line.find(line.lexicon.results)
    return (
        (first in _CHANGES and any(r.overlaps(action) for r in results))
        or (first == "change" and after in ("in", "on"))
        or (first in ORDINALS and after in NUMBERED)
        or first == "thirds"
        or (first == "stuck" and before in FOUND_SO)
        or (first == "fitting" and before in FITTINGS)
        or bool({after, behind} & NO_WORK_BEHIND)
        or (last in JOINED_TO and after in ("to", "solid"))
        or (last, after) == ("done", "to")
        or is_a_place(line, action)
    )


def _done_to(
    line: Line, parts: list[Mark[PartWorked]], actions: list[Mark[Done]]
) -> list[Mark[Done] | None]:
    """What was done to each part; None where nothing was."""
    done = [
        action_on(line, p, actions, parts)
        or taken_off(line, p)
        or put_in(line, p)
        or _result_with(line, p)
        for p in parts
    ]
    for k in range(1, len(parts)):
        if line.word(parts[k].last) in SAYS_OF_IT:
            continue  # "replaced the pump, gauge now reads less"
        if done[k] is None and _in_a_row(line, parts[k - 1], parts[k]):
            done[k] = _carried(line, parts[k], done[k - 1])
    for k in range(len(parts) - 2, -1, -1):  # "sender, gauge and filter all replaced"
        after = done[k + 1]
        if done[k] is None and after is not None and after.first > parts[k + 1].first:
            done[k] = after if _in_a_row(line, parts[k], parts[k + 1]) else None
        elif done[k] is None and after is not None and _both_new(line, parts[k], parts[k + 1]):
            done[k] = after
    return done


def _carried(line: Line, part: Mark[PartWorked], action: Mark[Done] | None) -> Mark[Done] | None:
    """The action of the part before in a list; a part with "a" was renewed: "valve cleaned and a sender"."""
    if action is None:
        return None
    fits = action.value not in _BEFORE_NEW or action.value in part.value.trials
    if fits or line.word(action.first) == "set" or line.word(part.first - 1) not in ("a", "an"):
        return action
    return Mark(Done.RENEWED, part.first - 1, part.first)


def _both_new(line: Line, part: Mark[PartWorked], after: Mark[PartWorked]) -> bool:
    """Whether a sentence begins with a part and a new one: "o-rings on the tubes and a new pump"."""
    first = part.first == 0 or (part.first == 1 and line.word(0) in _PLAIN_LEADS)
    new = NEW & line.words(part.last, after.first + 1)
    return first and bool(new) and _in_a_row(line, part, after)


def _work(line: Line, action: Mark[Done], part: Mark[PartWorked]) -> Iterator[Work]:
    """An action on a part that the sentence names, if it is a trial or leaves traces."""
    worked = part.value
    trial = worked.trials.get(action.value)
    area = worked.area if worked.area_if in (None, action.value) else None
    if trial in _SHOWS_ONLY and (line.word(action.first) in PUT or _for_a_test(line, part)):
        area = None  # "put a gauge on it"
    if trial is not None or (area is not None and action.value in _LEAVES_TRACES):
        near = action if line.distance(action, part) <= FAR else part
        yield Work((near, part), action.value, trial, area)


def _is_the_same(
    action: Mark[Done], part: Mark[PartWorked], other: Mark[Done], on: Mark[PartWorked]
) -> bool:
    """Whether work on "it" was named with the part: not "cleaned it, no change, fitted a new one"."""
    goes_on = action.value is Done.RENEWED and other.value in _BEFORE_NEW
    return on is part and other.value not in _TO_GET_AT_IT and not goes_on


def _work_on_it(
    line: Line, action: Mark[Done], part: Mark[PartWorked], parts: list[Mark[PartWorked]]
) -> Iterator[Work]:
    """An action on a part that was named before, if it is a trial or work of an area."""
    worked = part.value
    trial = worked.trials.get(action.value)
    renews = action.value in (Done.RENEWED, Done.REBUILT, Done.CLEANED)
    in_place = line.word(action.last - 1) in _IN_PLACE
    if in_place or (trial is None and _of_the_last(line, action, parts)):
        renews = False
    area = worked.area if renews and worked.area_if in (None, action.value) else None
    if trial or area:
        yield Work((action,), action.value, trial, area)


def _for_a_test(line: Line, part: Mark[PartWorked]) -> bool:
    """Whether a gauge was there to look only: "screwed in a test gauge", "on two different gauges"."""
    near = line.words(part.first - 3, part.last)
    return bool(near & FOR_A_TEST)


def _named_before(
    line: Line,
    actions: list[Mark[Done]],
    parts: list[Mark[PartWorked]],
    last: Mark[PartWorked] | None,
    noun: str,
) -> Iterator[tuple[Mark[Done], Mark[PartWorked]]]:
    """Actions on "it" or "them", with the part named last: "screen was clogged, cleaned it".

    ``last``: the part that the sentence before named last.
    """
    for action in actions:
        before = may_be_it(
            [p for p in parts if p.last <= action.first and not _holds_the_oil(line, p)]
        )
        before = [p for p in before if not _is_where(line, p)] or before
        after, ahead = line.word(action.last), line.word(action.first - 1)
        if ahead in _HABITUAL or does_so(line.tokens, action):
            continue
        again = noun if not before else line.word(before[-1].last - 1)
        new = line.word(action.last - 1) in NEW
        if after in _NAMED or (new and (after in _IN_PLACE or after == again)):
            end = action.last + 1
            if after not in ("it", "them") and _of_a_spare(line, action, end):
                continue
        elif _of_the_last(line, action, parts) or (
            any(line.word(k) in _NAMED for k in range(action.first, action.last))
            or (ahead in _NAMED and line.word(action.first - 2) in _LET)
            or (ahead in COPULA and line.word(action.first - 2) in _NAMED)
            or _goes_on(line, action, parts)
        ):
            end = action.last
        else:
            continue
        if before:
            yield Mark(action.value, action.first, end), before[-1]
        elif last is not None and (last.value.area != "oil_change" or after in _NAMED):
            yield Mark(action.value, action.first, end), last


def _of_the_last(line: Line, action: Mark[Done], parts: Sequence[Mark[PartWorked]]) -> bool:
    """Whether an action begins its clause and names no object: "Cleaned out and refitted"."""
    clause = line.clause(action.first)
    lead = line.words(clause.first, action.first)
    own = [p for p in parts if clause.first <= p.first < clause.last]
    if lead - _LEADS_IN or any(not WITH & line.words(p.first - 3, p.first) for p in own):
        return False
    if not line.word(action.first).endswith(("ed", "lt", "ew")):
        return False
    after = line.word(action.last)
    return action.last >= clause.last or line.tokens[action.last].is_mark or after in _NO_OBJECT


def _of_a_spare(line: Line, action: Mark[Done], end: int) -> bool:
    """Whether "the new one" is compared or described: "shorter than the new one", "new one is 46"."""
    return (
        line.word(action.first - 1) in ("the", "than", "a")
        and (line.word(action.first - 2) in ("than", "as", "to", "like", "and", "of"))
    ) or line.word(end) in COPULA | {"reads", "measures", "has", "was"}


def _goes_on(line: Line, action: Mark[Done], parts: Sequence[Mark[PartWorked]]) -> bool:
    """Whether it is said of the part before: "the turbo let go last month and was replaced"."""
    clause = line.clause(action.first)
    own = any(clause.first <= p.first < action.last and p.last > clause.first for p in parts)
    near = {line.word(action.first - 2), line.word(action.first - 3)}
    return (
        line.word(action.first - 1) in COPULA
        and "and" in near
        and not (own and line.word(action.first - 2) != "and")
    )


def _result_with(line: Line, part: Mark[PartWorked]) -> Mark[Done] | None:
    """The word between a result and a part that was renewed: "no change with the filter"."""
    at = part.first - 1
    while line.word(at) in _PLAIN_LEADS:
        at -= 1
    shown = part.value.trials.get(Done.RENEWED) in _SHOWS_ONLY and line.word(at) == "from"
    if line.word(at) not in WITH or shown:
        return None
    after = any(r.last == at for r in line.find(line.lexicon.results))
    return Mark(Done.RENEWED, at, at + 1) if after else None


def names_another(line: Line, mark: Mark[object]) -> bool:
    """Whether the next word makes it another thing: "oil pressure", "to switch off"."""
    after = line.word(mark.last)
    if line.word(mark.first) in ("picked", "picks", "picking"):
        return True  # "picked up 10 psi"
    if line.tokens[mark.first].stem == "top" and after in NOT_OIL:
        return True  # "topping up coolant"
    return after in NAMES_ANOTHER.get(line.tokens[mark.last - 1].stem, frozenset())


def _holds_the_oil(line: Line, part: Mark[PartWorked]) -> bool:
    """Whether a part is only where the oil is: "20w50 in the sump, changed it last month"."""
    at = part.first - 1 if line.word(part.first - 1) != "the" else part.first - 2
    return line.word(at) == "in" and at > 0 and "grade" in line.tokens[at - 1].kinds


def _is_where(line: Line, part: Mark[PartWorked]) -> bool:
    """Whether a part only says where something was: "the wire was rubbed through on the block"."""
    at = part.first - 1 if line.word(part.first - 1) in ("the", "a", "my") else part.first
    return line.word(at - 1) in _PLACED


def may_be_it(parts: list[Mark[PartWorked]]) -> list[Mark[PartWorked]]:
    """The parts that "it" may mean: not the oil that leaks from one."""
    return [p for p in parts if p.value.area != "oil_change"] or parts


def _in_a_row(line: Line, a: Mark[PartWorked], b: Mark[PartWorked]) -> bool:
    """Whether two parts stand in one list."""
    between = line.words(a.last, b.first)
    return bool(between & _JOINS) and between <= _JOINS | _IN_A_ROW

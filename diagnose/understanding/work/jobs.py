"""Find work in a sentence: which action on which part, what came of it, how long ago."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from diagnose.understanding.sentences.paragraph import Line, reads_a_value
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.service import (
    WITHOUT_NUMBER,
    dated_from,
    driven_in,
    ran_well,
    run_in,
    years_since,
)
from diagnose.understanding.work.pairing import WITH, may_be_it, names_another, paired
from diagnose.understanding.work.part_of_work import by_themselves
from diagnose.understanding.work.put_on import only_put_back
from diagnose.understanding.work.which_part import pumps, rebuilt_another
from knowledge.lexicon.words.joints import UNTIL_DONE
from knowledge.lexicon.work.beside_work import (
    A_CAUSE,
    BY_DRILL_SHOWN,
    DRILLED,
    EVEN,
    FOUND_IT,
    OIL_POURED,
    OTHER_CIRCUITS,
    OTHER_FILTERS,
    SENDERS,
    TO_GET_IN,
    TRYING,
)
from knowledge.reports.words import Done, Shows, Since

_SOON = 4  #: words after a part in which it is said to be on the way
_LEAD = 6  #: words between "since" and the work
_SINCE = frozenset(["since", "after", "following"])
_NO_SPEED = frozenset(["hot", "warm", "pressure", "psi", "gauge"])  #: in a phrase of the idle
_BEGAN = frozenset(["began", "started", "begun", "happened", "appeared"])
_THEN_IT = (("thats", "when"), ("was", "when"), ("is", "when"))
_DAY, _THAT_DAY = frozenset(["day", "week", "moment", "minute"]), frozenset(["the", "same", "very"])
_AGO = frozenset(["ago", "before", "back", "earlier", "later", "previously", "since", "after"])
_UNTIMED = {"day": "1 days", "days": "3 days", "morning": "1 days"}
_UNTIMED |= {"week": "1 weeks", "month": "1 months", **WITHOUT_NUMBER}
_DAYS = frozenset(
    [
        "yesterday",
        "saturday",
        "sunday",
        "monday",
        "tuesday",
        "wednesday",
        "thursday",
        "friday",
        "weekend",
    ]
)
_OF_TODAY = frozenset(["morning", "afternoon", "lunchtime"])
_HABIT = frozenset(["every", "regularly", "religiously", "annually", "yearly"])
_KEEPS = frozenset(["have", "has", "got", "had", "keep", "carry", "threw", "with"])
_ZERO = frozenset(
    ["zero", "0", "nil"]
)  #: shown by a gauge, no age: "gauge zero since the oil change"
_RECENT = frozenset(["recently", "recent", "lately"])
_LAST = {"week": "1 weeks", "month": "1 months", "year": "1 years", "summer": "1 years"}
_LAST |= {"winter": "1 years", "season": "1 years", "fall": "1 years", "spring": "1 years"}
_AND, _AND_FILTER = frozenset(["and", "&", "+", "/", "plus"]), 3
_JUST = frozenset(["just", "freshly", "newly"])
_TRIED = frozenset(["tried", "already", "twice"])
_LISTS = frozenset(["tried"])  #: said of all work that is named after it
_WANTED = frozenset(["needed", "required", "wanted", "due", "next", "needs"])
_COMING = frozenset(
    [
        *("order", "ordered", "way", "coming", "post", "arriving", "arrives", "arrive", "shelf"),
        *("cupboard", "drawer", "box", "packaging", "lies", "costs", "cost"),
    ]
)
#: said of such work or such parts in general: "oil changes are cheap"
_IN_GENERAL = frozenset(["cheap", "rare", "expensive", "dear", "scarce"])
_DOUBTED = 0.75  #: work less sure than this was not done


@dataclass(frozen=True, slots=True)
class Job:
    """One piece of work: the trial and the area it may be, and the marks it was read from."""

    line: Line
    marks: tuple[Mark[object], ...]
    done: Done | None
    trial: str | None
    area: str | None
    put_back: bool = False  #: an overhaul of a part that went back in

    @property
    def first(self) -> int:
        """Its first token."""
        return min(m.first for m in self.marks)

    @property
    def last(self) -> int:
        """The token after its last."""
        return max(m.last for m in self.marks)

    @property
    def whole(self) -> Mark[object]:
        """Everything from its first word to its last."""
        return Mark(True, self.first, self.last)

    @property
    def begins_it(self) -> bool:
        """Whether the trouble is said to have begun with it: "since the rebuild"."""
        return bool(self.lead)

    @property
    def lead(self) -> tuple[Mark[object], ...]:
        """The "since" or "after" before it, or with which it begins."""
        own = self.line.word(self.first) in _SINCE and self.last > self.first + 1
        if own and self.line.word(self.first - 1) not in EVEN:
            return (Mark(True, self.first, self.first + 1),)
        for k in range(self.first - 1, max(-1, self.first - 1 - _LEAD), -1):
            token = self.line.tokens[k]
            if token.is_mark:
                break
            if token.word == "when" and self.line.word(k - 1) in _BEGAN:
                return (Mark(True, k - 1, k + 1),)  # "it began when I swapped the sump"
            if token.word in _DAY and self.line.word(k - 1) in _THAT_DAY:
                return (Mark(True, k - 1, k + 1),)  # "the day the new pump went in"
            if token.word in _SINCE:
                if self.line.word(k - 1) in EVEN or self._is_search(k + 1):
                    break  # "low even after a new pump", "after trying three gauges"
                before = self.line.tokens[k - 1]
                aged = before.kinds & {"time", "distance", "number"} and before.word not in _ZERO
                if k and aged:
                    break  # its age: "1300 hours since the overhaul"
                return (Mark(True, k, k + 1),)
        return ()

    def _is_search(self, at: int) -> bool:
        """Whether work looked for the cause: "after trying two senders", "found the fault after ..."."""
        words = {t.word for t in self.line.tokens}
        return self.line.word(at) in TRYING or bool(words & FOUND_IT and words & A_CAUSE)

    @property
    def before_it(self) -> range:
        """The places shortly before it."""
        return range(max(0, self.first - _LEAD), self.first)

    @property
    def ended_it(self) -> bool:
        """Whether "until" leads to it from a trouble: "no pressure until I primed the pump"."""
        at = next((k for k in self.before_it if self.line.word(k) in UNTIL_DONE), None)
        if at is None:
            return False
        shown = self.line.find(self.line.lexicon.shows)
        return any(
            m.last <= at and m.value is not Shows.NORMAL and not self.line.denied(m) for m in shown
        )

    @property
    def then_now(self) -> tuple[Mark[object], ...]:
        """The "and now" behind it, where its clause ends: "cover off for a seal, now it is low"."""
        last = self.line.clause(self.last - 1).last
        for k in dict.fromkeys((self.last, self.last + 1, last - 1)):
            if (self.line.word(k), self.line.word(k + 1)) in (("and", "now"), (",", "now")):
                return (Mark(True, k, k + 2),)
        for k in range(self.last, self.last + _SOON):
            began = {self.line.word(i) for i in range(k + 2, k + 2 + _SOON)} & _BEGAN
            if (self.line.word(k), self.line.word(k + 1)) in _THEN_IT and began:
                return (Mark(True, k, k + 2),)  # "and that's when it all started"
        return ()

    @property
    def tried(self) -> bool:
        """Whether it is said to have been tried."""
        clause = self.line.clause(self.first)
        listed = any(self.line.word(k) in _LISTS for k in range(self.first))
        near = range(max(clause.first, self.first - _SOON), min(clause.last, self.last + _SOON))
        return listed or any(self.line.word(k) in _TRIED for k in near)

    @property
    def since(self) -> Since:
        """What the trouble is then said to be since."""
        if self.area == "storage":
            return Since.STANDING
        return Since.OIL_CHANGE if self.area in ("oil_change", "filter_change") else Since.WORK

    def before(self) -> tuple[str, tuple[Mark[object], ...]]:
        """How long before the trouble, as a case file writes it, and the words for it."""
        clause = self.line.clause(self.first)
        last = max(clause.last, self.line.clause(self.last - 1).last)
        for k in range(
            dated_from(self.line.sentence, clause), min(last + 3, len(self.line.tokens))
        ):
            token = self.line.tokens[k]
            timed = "time" in token.kinds and "seconds" not in token.kinds
            if timed and self.line.word(k + 1) in _AGO:
                return run_in(token), (Mark(True, k, k + 2),)
            if "distance" in token.kinds and self.line.word(k + 1) in _AGO:
                return driven_in(token), (Mark(True, k, k + 2),)
            if token.word in _UNTIMED and self.line.word(k + 1) in _AGO:
                return _UNTIMED[token.word], (Mark(True, k, k + 2),)
            years = years_since(self.line.tokens, k)
            if years:
                return years, (Mark(True, k - 1, k + 1),)
            if token.word == "this" and self.line.word(k + 1) in _OF_TODAY:
                return "1 days", (Mark(True, k, k + 2),)
            if token.word in _DAYS:
                return "2 days", (Mark(True, k, k + 1),)
            if token.word in _RECENT:
                return "1 months", (Mark(True, k, k + 1),)
            if token.word == "last" and self.line.word(k + 1) in _LAST:
                return _LAST[self.line.word(k + 1)], (Mark(True, k, k + 2),)
        if self.lead:
            return "straight before", self.lead
        if self.then_now:
            return "straight before", self.then_now
        for k in range(max(clause.first, self.first - 3), self.last):
            if self.line.word(k) in _JUST:
                return "straight before", (Mark(True, k, k + 1),)
        return "", ()


def served(job: Job, lines: Iterable[Line]) -> tuple[Line, Mark[str]] | None:
    """How long the engine ran well after work, in these sentences of it; None where unsaid."""
    for line in lines:
        for mark in ran_well(line.tokens):
            if line is not job.line or mark.first >= job.last:
                return line, mark
    return None


def jobs(line: Line, before: Line | None = None) -> list[Job]:
    """The work a sentence states, in its order; what is planned, asked or denied is left out.

    ``before``: the sentence before it, for "cleaned it".
    """
    every = before.find(line.lexicon.parts) if before is not None else []
    named = may_be_it(every)
    noun = before.word(named[0].last - 1) if before is not None and named else ""
    pump = pumps(before, every)[-1:] if before is not None else []
    last = named[0] if named else None
    found = [Job(line, *w) for w in paired(line, last, noun, *pump)]
    for role, is_trial in ((line.lexicon.trials, True), (line.lexicon.areas, False)):
        for mark in line.stated(role):
            if names_another(line, mark) or (not is_trial and rebuilt_another(line, mark)):
                continue
            kept: str | None = None
            made: str | None = None
            if any(j.first < mark.last and mark.first < j.last for j in found):
                same = next(j for j in found if j.first < mark.last and mark.first < j.last)
                longer = len(mark) > same.last - same.first
                longer = longer or (len(mark) == len(same.whole) and mark.value != same.area)
                if is_trial and len(mark) < same.last - same.first and not _refines(mark, same):
                    continue
                if not is_trial and (not longer or any(m.last == mark.first for m in same.marks)):
                    continue  # "pump rebuilt with a kit" is no rebuilt engine
                found.remove(same)
                kept = same.area if is_trial else None
                made = same.trial if same.area in (None, mark.value) else None
            if not mark.value:
                continue
            trial = mark.value if is_trial else made or _trial_of(mark.value)
            area = kept if is_trial else mark.value
            if is_trial and mark.value == "right_oil":
                area = "oil_change"
            found.append(Job(line, (mark,), _done(line, mark, area), trial, area))
    found = by_themselves(found)
    found += [_and_filter(j) for j in found if j.area == "oil_change" and _names_filter(j)]
    found = [j for j in found if not only_put_back(j.line, j.whole, j.area, found)]
    return sorted((j for j in found if _states(j)), key=lambda j: j.first)


def names_a_grade(job: Job) -> bool:
    """Whether it names a grade of oil and nothing that was done."""
    inside = job.line.tokens[job.first : job.last]
    return len(inside) == 1 and "grade" in inside[0].kinds


def _names_filter(job: Job) -> bool:
    """Whether work on the oil is work on the filter as well: "changed the oil and filter"."""
    inside = range(job.first + 1, min(job.last + _AND_FILTER, len(job.line.tokens)))
    at = next((k for k in inside if job.line.word(k) in ("filter", "filters")), None)
    if at is not None and job.line.word(at - 1) in OTHER_FILTERS:
        return False
    return at is not None and bool(job.line.words(at - 3, at) & _AND)


def _and_filter(job: Job) -> Job:
    return Job(job.line, job.marks, Done.RENEWED, job.trial and "new_filter", "filter_change")


def _refines(mark: Mark[str], job: Job) -> bool:
    """Whether a trial names the part of a piece of work more closely: "put thicker oil in"."""
    part = job.marks[-1]
    return len(job.marks) > 1 and len(mark) > len(part) and mark.last == part.last


def _trial_of(area: str) -> str | None:
    """The trial that work of an area is, where it had a result."""
    return {
        "whole_engine": "engine_rebuilt",
        "oil_change": "right_oil",
        "oil_added": "topped_up",
        "filter_change": "new_filter",
        "oil_pump": "new_pump",
    }.get(area)


def _done(line: Line, mark: Mark[str], area: str | None) -> Done | None:
    if area == "whole_engine":
        return Done.REBUILT
    if area in ("oil_change", "filter_change", "other_engine", "oil_pump", "turbo"):
        return Done.RENEWED
    actions = [m for m in line.find(line.lexicon.actions) if m.overlaps(mark)]
    if area == "machine_shop" and actions and actions[0].value is Done.REFITTED:
        return None  # "the plugs were pulled by the machine shop"
    return actions[0].value if actions else None


def _after_a_result(job: Job) -> bool:
    """Whether the negation before it is that of a result: "no difference with a new filter"."""
    line = job.line
    return any(
        r.last <= job.first <= r.last + _LEAD and WITH & line.words(r.last, job.first)
        for r in line.find(line.lexicon.results)
    )


def _says_where(job: Job) -> bool:
    """Whether it tells where a gauge is: "a gauge screwed in by the filter"."""
    line = job.line
    if job.area == "instrument" and line.word(job.first) in ("gauge", "gage"):
        return any(d.first == job.first for d in line.find(line.lexicon.direct))
    part = next((m for m in job.marks if line.word(m.last - 1) == "filter"), None)
    gauge = any(line.word(k) in ("gauge", "gage") for k in range(job.first))
    near = part is not None and line.word(part.first - 2) in ("by", "at", "near", "beside")
    return near and gauge


def _of_another_circuit(job: Job) -> bool:
    """Whether a sender or switch is that of something else: "new headlight switch"."""
    line = job.line
    return any(
        line.word(m.last - 1) in SENDERS and line.word(m.first - 1) in OTHER_CIRCUITS
        for m in job.marks
    )


def _as_due(job: Job) -> bool:
    """Whether it is said that it was done when due: "oil changed by the book"."""
    behind = [job.line.word(k) for k in range(job.last, job.last + 3)]
    return behind[:2] in (["on", "time"], ["on", "schedule"]) or behind == ["by", "the", "book"]


def _states(job: Job) -> bool:
    mark = job.whole
    if _says_where(job) or _of_another_circuit(job):
        return False
    if job.area == "storage" and reads_a_value(job.line, mark):
        return False  # "it sat at 45 for years"
    words = {t.word for t in job.line.tokens}
    inside = job.line.words(mark.first, mark.last)
    after = job.line.tokens[mark.last : mark.last + 1]
    poured = job.trial == "topped_up" and job.line.word(mark.last - 1) == "of" and after
    if poured and not (after[0].is_figure or after[0].word in OIL_POURED):
        return False  # "put 1 litre of something in"
    before = job.line.words(0, mark.first)
    if job.area == "whole_engine" and {"back", "together"} <= inside and before & TO_GET_IN:
        return False  # "pulled the distributor, spun the pump, put it back together"
    if job.trial == "idle_raised" and inside & _NO_SPEED:
        return False  # "brought hot idle from 5 up to 9"
    if job.trial == "distributor_refitted" and words & DRILLED:
        return False  # it was out of the way of the drill
    if job.trial == "pump_primed" and "drill" in inside and words & BY_DRILL_SHOWN:
        return False  # the drill showed what the pump makes
    if job.line.words(mark.last, mark.last + _SOON) & _COMING:
        return False  # "new sender is on the way"
    if job.line.word(mark.last) in ("are", "is") and job.line.word(mark.last + 1) in _IN_GENERAL:
        return False
    if job.line.word(mark.first) == "spare" and _KEEPS & job.line.words(
        max(0, mark.first - 2), mark.first
    ):
        return False  # "I have a spare pump"
    if job.line.word(mark.last) in _HABIT or _as_due(job):
        return False  # "oil changed every 250 hours"
    if job.line.word(mark.last) in _WANTED or job.line.stances.surety(mark) < _DOUBTED:
        return False
    stance = job.line.stances.at(mark)
    if job.ended_it:
        return True  # "no pressure until I primed the pump"
    if job.line.word(job.first) in WITH or _after_a_result(job):
        stance &= ~Stance.DENIED  # "no change with the filter"
    return not stance & (Stance.SUPPOSED | Stance.ELSEWHERE | Stance.GUESSED | Stance.DENIED)
